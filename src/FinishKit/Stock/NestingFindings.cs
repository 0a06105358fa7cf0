using System.Collections.Generic;

namespace FinishKit;

/// <summary>What a person should know about a nesting plan.</summary>
internal static class NestingFindings
{
    private const int MostNamed = 3;

    internal static IReadOnlyList<Finding> Of(NestingPlan plan, NestingNumbers job, int smallCuts)
    {
        List<Finding> findings = [];
        int tooLarge = 0, tooFew = 0;
        foreach (UnplacedPart part in plan.Unplaced)
        {
            tooLarge += part.IsTooLarge ? part.Count : 0;
            tooFew += part.IsTooLarge ? 0 : part.Count;
        }

        if (tooLarge > 0)
        {
            findings.Add(new Finding(
                "stock-part-too-large",
                Severity.Problem,
                $"{Print.Number(tooLarge)} {(tooLarge == 1 ? "piece goes" : "pieces go")} on no sheet there is, trimmed, the grain as asked: {Named(plan, true)}. Split {(tooLarge == 1 ? "it" : "them")} where a joint can be fixed, let {(tooLarge == 1 ? "it" : "them")} turn, or buy larger sheets.",
                [new("pieces", tooLarge, string.Empty)],
                Sources.SheetNesting));
        }

        if (tooFew > 0)
        {
            findings.Add(new Finding(
                "stock-too-few-sheets",
                Severity.Problem,
                $"For {Print.Number(tooFew)} {(tooFew == 1 ? "piece" : "pieces")} no room was found, {Named(plan, false)}: there are too few sheets, or no way was found to place all on them.",
                [new("pieces", tooFew, string.Empty)],
                Sources.SheetNesting));
        }

        if (plan.LeastCost is { } least && !plan.Proven)
        {
            findings.Add(new Finding(
                "stock-sheets-not-proven",
                Severity.Note,
                $"The layout costs {CuttingPlan.Money(plan.Cost)}; that nothing cheaper exists is not proven, {CuttingPlan.Money(least)} is the least it could be, {Print.Round(100 * plan.Gap!.Value, 2)}% less.",
                [new("cost", (double)plan.Cost, string.Empty), new("least-cost", (double)least, string.Empty), new("gap", plan.Gap!.Value, string.Empty)],
                Sources.SheetNesting));
        }

        int turned = 0;
        foreach (NestedSheet sheet in plan.Sheets)
        {
            foreach (NestedPiece piece in sheet.Pieces)
            {
                turned += piece.IsTurned ? 1 : 0;
            }
        }

        if (turned > 0)
        {
            findings.Add(new Finding(
                "stock-piece-turned",
                Severity.Note,
                $"{Print.Number(turned)} {(turned == 1 ? "piece lies" : "pieces lie")} with the grain across, as the job allows. Mark {(turned == 1 ? "it" : "each")} before cutting: a sheet is stiffer and bends less easily round a curve along its face grain.",
                [new("pieces", turned, string.Empty)]));
        }

        if (smallCuts > 0)
        {
            findings.Add(new Finding(
                "stock-small-at-the-saw",
                Severity.Caution,
                $"{Print.Number(smallCuts)} {(smallCuts == 1 ? "cut has" : "cuts have")} wood on the saw that is shorter than {Print.Mm(NestingDefaults.LeastLongAtTheSaw)} or narrower than {Print.Mm(NestingDefaults.LeastWideAtTheSaw)}, or less than that between fence and blade. Do not hold such wood by hand at fence or stop: use a push block, a sled or clamps, or cut it by hand.",
                [new("cuts", smallCuts, string.Empty), new("least-long", NestingDefaults.LeastLongAtTheSaw, "mm"), new("least-wide", NestingDefaults.LeastWideAtTheSaw, "mm")],
                NestingDefaults.SmallAtTheSawSource));
        }

        if (plan.Sheets.Count > 0)
        {
            findings.Add(new Finding(
                "stock-sheet-cutting",
                Severity.Note,
                job.IsSawn
                    ? "Measure a sheet, its squareness too, before the first cut: sizes as sold vary by millimetres, and the layout takes them as given. Trim along a rail, or with the sheet against the fence so that the strip comes off beyond the blade, never between fence and blade. Support both sides of each cut. Dust of wood and glue is harmful: extract it and wear a mask."
                    : "Measure a sheet, its squareness too, before the first cut: sizes as sold vary by millimetres, and the layout takes them as given. Leave tabs so that no piece comes loose under the bit. Dust of wood and glue is harmful: extract it and wear a mask.",
                []));
        }

        return Finding.GravestFirst(findings);
    }

    /// <summary>The first few of the pieces that are not placed, by count, size and name.</summary>
    private static string Named(NestingPlan plan, bool isTooLarge)
    {
        List<string> named = [];
        int more = 0;
        foreach (UnplacedPart part in plan.Unplaced)
        {
            if (part.IsTooLarge != isTooLarge)
            {
                continue;
            }

            if (named.Count < MostNamed)
            {
                named.Add($"{Print.Number(part.Count)} of {part.Size}");
            }
            else
            {
                more += part.Count;
            }
        }

        return string.Join(", ", named) + (more > 0 ? $" and {Print.Number(more)} more" : string.Empty);
    }
}
