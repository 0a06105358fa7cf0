using System.Collections.Generic;
using System.Globalization;

namespace FinishKit;

/// <summary>What a person should know about a choice of fastener, gravest first. The codes are listed on the fastening page.</summary>
internal static class FastenerFindings
{
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
                $"No stocked length is both safe and deep enough. {chosen.TipReason} Measure the actual furring and set depth before you drive any.{InWords(remedies)}",
                [new("worst-clearance", Mm(chosen.WorstClearance), "mm"), new("required-clearance", stack.Required, "mm"), new("touch-chance", chosen.TouchChance, string.Empty)],
                FastenerDefaults.MarginalSource));
        }

        if (chosen is not null && chosen.ExpectedHits > stack.HitsLimit)
        {
            findings.Add(new Finding(
                "fastening-hits-expected",
                Severity.Caution,
                $"Over {stack.Count.ToString(CultureInfo.InvariantCulture)} fasteners {Print.Small(chosen.ExpectedHits)} are expected to touch {stack.BehindWords}, more than {Print.Small(stack.HitsLimit)}; the chance of one or more is {Print.Small(chosen.AnyHitChance)}.",
                [new("expected-hits", chosen.ExpectedHits, string.Empty), new("hits-limit", stack.HitsLimit, string.Empty), new("any-hit-chance", chosen.AnyHitChance, string.Empty)],
                Sources.JobHits));
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
            findings.Add(new Finding(
                "fastening-cavity-service",
                Severity.Caution,
                $"Clearance is counted to {stack.BehindWords} at the depth that was measured; that depth is the least certain figure here. Find it, mark it, and move or guard it if you can.",
                [new("depth-behind", stack.Gap.Nominal, "mm"), new("depth-behind-least", stack.Gap.Least, "mm")],
                FastenerDefaults.ClearanceSource));
        }

        if (chosen is { ReachesTarget: false })
        {
            findings.Add(new Finding(
                "fastening-bite-under-target",
                Severity.Note,
                $"{Print.Mm(Mm(chosen.Length.Nominal))} bites {Print.Mm(Mm(chosen.Bite))} at nominal sizes, under the {Print.Mm(stack.TargetBite)} aimed for; the worst case keeps the least bite of {Print.Mm(stack.LeastBite)}.",
                [new("bite", Mm(chosen.Bite), "mm"), new("target-bite", stack.TargetBite, "mm"), new("worst-bite", Mm(chosen.WorstBite), "mm")],
                FastenerDefaults.TargetBiteSource));
        }

        findings.Add(new Finding(
            "fastening-look-behind",
            Severity.Note,
            "The figures know only what was entered. Before driving anything, find and mark wiring, gas, fuel and brake lines, tanks and airbags; follow local codes and the vehicle maker's bodybuilder guidance.",
            []));
        return findings;
    }

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
        return set < thinnest
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
