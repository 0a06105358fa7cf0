using System.Collections.Generic;
using System.Globalization;

namespace FinishKit;

/// <summary>What a person should know about a choice of fastener, gravest first. The codes are listed in docs/findings.md.</summary>
internal static class FastenerFindings
{
    private const string MeasureFirst = "Measure the actual furring and set depth before you drive any.";

    internal static IReadOnlyList<Finding> Of(
        FastenerJob job, StackNumbers stack, List<FastenerCandidate> candidates, FastenerCandidate? chosen, List<Remedy> remedies, FastenerCandidate? labelTrap)
    {
        List<Finding> findings = [];
        if (chosen is null)
        {
            findings.Add(NoneChosen(job, stack, candidates, remedies));
        }

        if (HeadThrough(stack) is { } headThrough)
        {
            findings.Add(headThrough);
        }

        if (chosen is { Tip: TipVerdict.Marginal })
        {
            findings.Add(new Finding(
                "fastening-marginal",
                Severity.Caution,
                $"No stocked length is both safe and deep enough. {chosen.TipReason} {MeasureFirst}{InWords(remedies)}",
                TipFigures(stack, chosen),
                FastenerDefaults.MarginalSource));
        }

        if (chosen is not null && chosen.ExpectedHits > stack.HitsLimit)
        {
            findings.Add(HitsExpected(stack, chosen));
        }

        if (labelTrap is not null)
        {
            findings.Add(new Finding(
                "fastening-label-thickness",
                Severity.Caution,
                $"By the labels of the sheets {Print.Mm(Mm(labelTrap.Length.Nominal))} fasteners would be safe; at actual thickness they are not. {labelTrap.TipReason}",
                [new("length", Mm(labelTrap.Length.Nominal), "mm"), new("worst-clearance", Mm(labelTrap.WorstClearance), "mm")],
                Sources.FastenerStack));
        }

        if (stack.Behind != BehindKind.RibMetal)
        {
            findings.Add(CavityService(stack));
        }

        if (chosen is { ReachesTarget: false })
        {
            findings.Add(BiteUnderTarget(stack, chosen));
        }

        findings.Add(LookBehind());
        return findings;
    }

    /// <summary>What a person should know about one length tried, stocked or not.</summary>
    internal static IReadOnlyList<Finding> Of(StackNumbers stack, FastenerCandidate candidate)
    {
        List<Finding> findings = [];
        if (candidate.Tip == TipVerdict.Reaches)
        {
            findings.Add(new Finding("fastening-reaches", Severity.Problem, candidate.TipReason, TipFigures(stack, candidate), Sources.FastenerStack));
        }

        if (candidate.Hold == BiteVerdict.TooLittle)
        {
            findings.Add(new Finding(
                "fastening-bite-too-little",
                Severity.Problem,
                $"{Print.Mm(Mm(candidate.Length.Nominal))} bites {Print.Mm(Mm(candidate.WorstBite))} in the worst case; {Print.Mm(stack.LeastBite)} are asked.",
                [new("worst-bite", Mm(candidate.WorstBite), "mm"), new("least-bite", stack.LeastBite, "mm"), new("bite", Mm(candidate.Bite), "mm")],
                Sources.FastenerStack));
        }

        if (HeadThrough(stack) is { } headThrough)
        {
            findings.Add(headThrough);
        }

        if (candidate.Tip == TipVerdict.Marginal)
        {
            findings.Add(new Finding("fastening-marginal", Severity.Caution, $"{candidate.TipReason} {MeasureFirst}", TipFigures(stack, candidate), FastenerDefaults.MarginalSource));
        }

        if (candidate.Tip != TipVerdict.Reaches && candidate.ExpectedHits > stack.HitsLimit)
        {
            findings.Add(HitsExpected(stack, candidate));
        }

        if (stack.Behind != BehindKind.RibMetal)
        {
            findings.Add(CavityService(stack));
        }

        if (candidate is { ReachesTarget: false, Hold: BiteVerdict.Bites })
        {
            findings.Add(BiteUnderTarget(stack, candidate));
        }

        findings.Add(LookBehind());
        return findings;
    }

    /// <summary>Whether the deepest set goes through the thinnest first layer.</summary>
    internal static bool HeadGoesThrough(StackNumbers stack) => stack.SetDepth.Greatest >= stack.Through[0].Least;

    private static Finding HitsExpected(StackNumbers stack, FastenerCandidate candidate) => new(
        "fastening-hits-expected",
        Severity.Caution,
        $"Over {stack.Count.ToString(CultureInfo.InvariantCulture)} fasteners {Print.Small(candidate.ExpectedHits)} are expected to touch {stack.BehindWords}, more than {Print.Small(stack.HitsLimit)}; the chance of one or more is {Print.Small(candidate.AnyHitChance)}.",
        [new("expected-hits", candidate.ExpectedHits, string.Empty), new("hits-limit", stack.HitsLimit, string.Empty), new("any-hit-chance", candidate.AnyHitChance, string.Empty)],
        Sources.JobHits);

    private static Finding CavityService(StackNumbers stack) => new(
        "fastening-cavity-service",
        Severity.Caution,
        $"Clearance is counted to {stack.BehindWords} at the depth that was measured; that depth is the least certain figure here. Find it, mark it, and move or guard it if you can.",
        [new("depth-behind", stack.Gap.Nominal, "mm"), new("depth-behind-least", stack.Gap.Least, "mm")],
        FastenerDefaults.ClearanceSource);

    private static Finding BiteUnderTarget(StackNumbers stack, FastenerCandidate candidate) => new(
        "fastening-bite-under-target",
        Severity.Note,
        $"{Print.Mm(Mm(candidate.Length.Nominal))} bites {Print.Mm(Mm(candidate.Bite))} at nominal sizes, under the {Print.Mm(stack.TargetBite)} aimed for; the worst case keeps the least bite of {Print.Mm(stack.LeastBite)}.",
        [new("bite", Mm(candidate.Bite), "mm"), new("target-bite", stack.TargetBite, "mm"), new("worst-bite", Mm(candidate.WorstBite), "mm")],
        FastenerDefaults.TargetBiteSource);

    private static Finding LookBehind() => new(
        "fastening-look-behind",
        Severity.Note,
        "The figures know only what was entered. Before driving anything, find and mark wiring, gas, fuel and brake lines, tanks and airbags; follow local codes and the vehicle maker's bodybuilder guidance.",
        []);

    private static Figure[] TipFigures(StackNumbers stack, FastenerCandidate candidate) =>
        [new("worst-clearance", Mm(candidate.WorstClearance), "mm"), new("required-clearance", stack.Required, "mm"), new("touch-chance", candidate.TouchChance, string.Empty)];

    private static Finding NoneChosen(FastenerJob job, StackNumbers stack, List<FastenerCandidate> candidates, List<Remedy> remedies)
    {
        FastenerCandidate shortest = candidates[0];
        FastenerCandidate? longestSafe = candidates.FindLast(static candidate => candidate.Tip == TipVerdict.Safe);
        string why = longestSafe is not null
            ? $"the longest safe one, {Print.Mm(Mm(longestSafe.Length.Nominal))}, bites {Print.Mm(Mm(longestSafe.WorstBite))} in the worst case and {Print.Mm(stack.LeastBite)} are asked"
            : $"even the shortest, {Print.Mm(Mm(shortest.Length.Nominal))}, falls {Print.Mm(Grid.Snap(stack.Required - Mm(shortest.WorstClearance)))} short of the clearance asked against {stack.BehindWords}";
        FastenerCandidate shown = longestSafe ?? shortest;
        return new Finding(
            longestSafe is null ? "fastening-none-safe" : "fastening-none-bites",
            Severity.Problem,
            $"No stocked {job.Series.Name} may be driven: {why}.{InWords(remedies)}",
            [
                new("length", Mm(shown.Length.Nominal), "mm"), new("worst-clearance", Mm(shown.WorstClearance), "mm"), new("required-clearance", stack.Required, "mm"),
                new("worst-bite", Mm(shown.WorstBite), "mm"), new("least-bite", stack.LeastBite, "mm"),
            ],
            Sources.FastenerStack);
    }

    private static Finding? HeadThrough(StackNumbers stack)
    {
        double set = stack.SetDepth.Greatest, thinnest = stack.Through[0].Least;
        return !HeadGoesThrough(stack)
            ? null
            : new Finding(
                "fastening-head-through",
                Severity.Problem,
                $"A head set {Print.Mm(set)} deep goes through {stack.Names[0]}, which may be as thin as {Print.Mm(thinnest)}.",
                [new("set-depth", set, "mm"), new("thinnest", thinnest, "mm")],
                Sources.FastenerStack);
    }

    private static string InWords(List<Remedy> remedies)
    {
        string words = string.Empty;
        foreach (Remedy remedy in remedies)
        {
            words += " " + remedy.Text;
        }

        return words;
    }

    private static double Mm(UnitsNet.Length length) => Door.Millimetres(length);
}
