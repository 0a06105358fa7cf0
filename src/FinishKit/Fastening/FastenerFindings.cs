using System;
using System.Collections.Generic;
using System.Globalization;

namespace FinishKit;

/// <summary>What a person should know about a fastener, gravest first. The codes are listed in docs/findings.md.</summary>
internal static class FastenerFindings
{
    /// <summary>About one length, stocked or not.</summary>
    internal static IReadOnlyList<Finding> Of(StackNumbers stack, FastenerCandidate candidate)
    {
        List<Finding> findings = [];
        AddHeadThrough(findings, stack);
        AddNothingHolds(findings, stack);
        if (candidate.Tip == TipVerdict.Reaches)
        {
            findings.Add(new Finding(
                "fastening-tip-reaches",
                Severity.Problem,
                candidate.TipReason,
                [new("worst-clearance", Mm(candidate.WorstClearance), "mm"), new("required-clearance", stack.Required, "mm"), new("touch-chance", candidate.TouchChance, string.Empty)],
                Sources.FastenerStack));
        }

        // Where nothing holds, that says it already, and the bite asked may be 0.
        if (candidate.Hold == BiteVerdict.TooLittle && stack.Furring >= 0)
        {
            findings.Add(new Finding(
                "fastening-bite-too-little",
                Severity.Problem,
                $"{Print.Mm(Mm(candidate.Length.Nominal))} bites {Print.Mm(Mm(candidate.WorstBite))} in the worst case, under the least bite of {Print.Mm(stack.LeastBite)}.",
                [new("worst-bite", Mm(candidate.WorstBite), "mm"), new("least-bite", stack.LeastBite, "mm")],
                Sources.FastenerStack));
        }

        AddAccepted(findings, stack, candidate, otherSafe: false);
        AddSurroundings(findings, stack);
        return Finding.GravestFirst(findings);
    }

    /// <summary>About the choice among a series.</summary>
    internal static IReadOnlyList<Finding> Of(FastenerJob job, StackNumbers stack, List<FastenerCandidate> candidates, FastenerCandidate? chosen, FastenerCandidate? labelTrap)
    {
        List<Finding> findings = [];
        AddHeadThrough(findings, stack);
        AddNothingHolds(findings, stack);
        if (chosen is null && !stack.HeadGoesThrough)
        {
            findings.Add(NoneChosen(job, stack, candidates));
        }

        if (chosen is not null)
        {
            AddAccepted(findings, stack, chosen, candidates.Exists(static candidate => candidate.Tip == TipVerdict.Safe));
        }

        if (labelTrap is not null)
        {
            findings.Add(new Finding(
                "fastening-label-thickness",
                Severity.Caution,
                $"By the labels of the sheets {Print.Mm(Mm(labelTrap.Length.Nominal))} fasteners would be safe against {stack.BehindWords} and would be chosen; as the sheets really are they are not safe. {labelTrap.TipReason}",
                [new("length", Mm(labelTrap.Length.Nominal), "mm"), new("worst-clearance", Mm(labelTrap.WorstClearance), "mm")],
                Sources.FastenerStack));
        }

        AddSurroundings(findings, stack);
        return Finding.GravestFirst(findings);
    }

    /// <summary>What a caution or a note says of a length that may be driven.</summary>
    private static void AddAccepted(List<Finding> findings, StackNumbers stack, FastenerCandidate candidate, bool otherSafe)
    {
        if (candidate.Tip == TipVerdict.Marginal)
        {
            findings.Add(new Finding(
                "fastening-marginal",
                Severity.Caution,
                $"{(otherSafe ? "No stocked length is both safe and deep enough. " : string.Empty)}{candidate.TipReason} Measure the actual furring and set depth before you drive any.",
                [new("worst-clearance", Mm(candidate.WorstClearance), "mm"), new("required-clearance", stack.Required, "mm"), new("touch-chance", candidate.TouchChance, string.Empty)],
                FastenerDefaults.MarginalSource));
        }

        if (candidate.Tip >= TipVerdict.Marginal && candidate.ExpectedHits > stack.HitsLimit)
        {
            findings.Add(new Finding(
                "fastening-hits-expected",
                Severity.Caution,
                $"Over {stack.Count.ToString(CultureInfo.InvariantCulture)} fasteners {Print.Small(candidate.ExpectedHits)} are expected to touch {stack.BehindWords}, more than {Print.Small(stack.HitsLimit)}; the chance of one or more is {Print.Small(candidate.AnyHitChance)}.",
                [new("expected-hits", candidate.ExpectedHits, string.Empty), new("hits-limit", stack.HitsLimit, string.Empty), new("any-hit-chance", candidate.AnyHitChance, string.Empty)],
                Sources.JobHits));
        }

        if (stack.Required < FastenerDefaults.Clearance(stack.Behind))
        {
            double usual = FastenerDefaults.Clearance(stack.Behind);
            findings.Add(new Finding(
                "fastening-clearance-lowered",
                Severity.Caution,
                $"The clearance asked against {stack.BehindWords}, {Print.Mm(stack.Required)}, is less than the usual {Print.Mm(usual)}.",
                [new("required-clearance", stack.Required, "mm"), new("usual-clearance", usual, "mm")],
                FastenerDefaults.ClearanceSource));
        }

        if (candidate.Hold == BiteVerdict.Bites && !candidate.ReachesTarget)
        {
            findings.Add(new Finding(
                "fastening-bite-under-target",
                Severity.Note,
                $"{Print.Mm(Mm(candidate.Length.Nominal))} bites {Print.Mm(Mm(candidate.Bite))} at nominal sizes, under the {Print.Mm(stack.TargetBite)} aimed for; the worst case keeps the least bite of {Print.Mm(stack.LeastBite)}.",
                [new("bite", Mm(candidate.Bite), "mm"), new("target-bite", stack.TargetBite, "mm"), new("worst-bite", Mm(candidate.WorstBite), "mm")],
                FastenerDefaults.TargetBiteSource));
        }
    }

    private static Finding NoneChosen(FastenerJob job, StackNumbers stack, List<FastenerCandidate> candidates)
    {
        FastenerCandidate? longestSafe = candidates.FindLast(static candidate => candidate.Tip == TipVerdict.Safe);
        FastenerCandidate shown = longestSafe ?? candidates[0];
        string why = longestSafe is not null
            ? $"the longest one safe against {stack.BehindWords}, {Print.Mm(Mm(shown.Length.Nominal))}, bites {Print.Mm(Mm(shown.WorstBite))} in the worst case and {Print.Mm(stack.LeastBite)} are asked"
            : $"even the shortest, {Print.Mm(Mm(shown.Length.Nominal))}, falls {Print.Mm(Grid.Snap(stack.Required - Mm(shown.WorstClearance)))} short of the clearance asked against {stack.BehindWords}";
        return new Finding(
            longestSafe is null ? "fastening-none-safe" : "fastening-none-bites",
            Severity.Problem,
            $"No stocked {job.Series.Name} is both safe against {stack.BehindWords} and deep enough: {why}.",
            [
                new("length", Mm(shown.Length.Nominal), "mm"), new("worst-clearance", Mm(shown.WorstClearance), "mm"), new("required-clearance", stack.Required, "mm"),
                new("worst-bite", Mm(shown.WorstBite), "mm"), new("least-bite", stack.LeastBite, "mm"),
            ],
            Sources.FastenerStack);
    }

    private static void AddHeadThrough(List<Finding> findings, StackNumbers stack)
    {
        if (stack.HeadGoesThrough)
        {
            double set = stack.SetDepth.Greatest, thinnest = stack.Through[0].Least;
            findings.Add(new Finding(
                "fastening-head-through",
                Severity.Problem,
                $"A head set {Print.Mm(set)} deep goes through the first layer ({stack.Names[0]}), which may be as thin as {Print.Mm(thinnest)}: nothing may be driven like that.",
                [new("set-depth", set, "mm"), new("thinnest", thinnest, "mm")],
                Sources.FastenerStack));
        }
    }

    private static void AddNothingHolds(List<Finding> findings, StackNumbers stack)
    {
        if (Array.IndexOf(stack.Holds, true) < 0)
        {
            findings.Add(new Finding("fastening-nothing-holds", Severity.Problem, "No layer holds the fastener: say which does.", [], Sources.FastenerStack));
        }
    }

    private static void AddSurroundings(List<Finding> findings, StackNumbers stack)
    {
        if (stack.Behind != BehindKind.RibMetal)
        {
            string advice = stack.Behind == BehindKind.OuterSkin ? "Measure it again where the fasteners go" : "Find it, mark it, and move or guard it if you can";
            findings.Add(new Finding(
                "fastening-cavity-depth",
                Severity.Caution,
                $"Clearance is counted to {stack.BehindWords} at the depth that was measured, the least certain figure here. {advice}.",
                [new("depth-behind", stack.Gap.Nominal, "mm"), new("depth-behind-least", stack.Gap.Least, "mm")],
                Sources.Given));
        }

        findings.Add(new Finding(
            "fastening-look-behind",
            Severity.Note,
            "The figures know only what was entered. Before driving anything, find and mark wiring, gas, fuel and brake lines, tanks and airbags; follow local codes and the vehicle maker's bodybuilder guidance.",
            []));
    }

    private static double Mm(UnitsNet.Length length) => Door.Millimetres(length);
}
