using System.Collections.Generic;

namespace FinishKit;

/// <summary>What a person should know about a rivet nut in thin metal.</summary>
internal static class RivetNutFindings
{
    internal static IReadOnlyList<Finding> Of(RivetNutFit fit, RivetNutNumbers job)
    {
        List<Finding> findings = [];
        RivetNutSize nut = fit.Job.Nut;
        if (!fit.GripFits)
        {
            findings.Add(new Finding(
                "fastening-rivet-grip",
                Severity.Problem,
                $"The nut clamps {Print.Number(nut.LeastGripMm)} to {Print.Mm(nut.MostGripMm)}; metal, paint and mating sheet come to {Print.Number(job.LeastGrip)} to {Print.Mm(job.MostGrip)}: it would spin, or not bulge behind the metal. Take one of another grip.",
                [new("least-grip", nut.LeastGripMm, "mm"), new("most-grip", nut.MostGripMm, "mm"), new("thinnest", job.LeastGrip, "mm"), new("thickest", job.MostGrip, "mm")],
                MetalDefaults.NutGrip));
        }

        if (fit.GoesIn == false)
        {
            findings.Add(new Finding(
                "fastening-rivet-no-room",
                Severity.Problem,
                $"Before it is set the nut is {Print.Mm(job.Unset)} deep and there are {Print.Mm(job.Room)} to {job.BehindWords}: pushed in it {(job.UnsetClearance > 0 ? $"comes within {Print.Mm(job.UnsetClearance)}, where {Print.Mm(job.Required)} are asked" : "touches")}.",
                [new("unset-depth", job.Unset, "mm"), new("room", job.Room, "mm"), new("clearance", job.UnsetClearance, "mm"), new("required-clearance", job.Required, "mm")],
                MetalDefaults.NutSum));
        }

        if (job.HeadGoesThrough)
        {
            findings.Add(new Finding(
                "fastening-rivet-head-through",
                Severity.Problem,
                $"A head set {Print.Mm(job.SetDepth.Greatest)} deep goes through {job.FirstName} of {Print.Mm(job.FirstLeast)}: nothing would be held.",
                [new("set-depth", job.SetDepth.Greatest, "mm"), new("thickness", job.FirstLeast, "mm")],
                MetalDefaults.NutSum));
        }
        else if (!Exists(fit.Tried))
        {
            RivetNutScrew shown = fit.Shown;
            findings.Add(new Finding(
                "fastening-rivet-none-fits",
                Severity.Problem,
                $"No stocked screw shares {Print.Mm(job.Needed)} of thread with the nut and stays {Print.Mm(job.Required)} clear of {job.BehindWords} in the worst case. {shown}. The nut itself ends {Print.Mm(job.Room - job.To)} short of it.",
                [new("needed-engagement", job.Needed, "mm"), new("worst-engagement", Door.Millimetres(shown.WorstEngagement), "mm"), new("worst-clearance", Door.Millimetres(shown.WorstClearance), "mm"), new("nut-clearance", Grid.Snap(job.Room - job.To), "mm")],
                MetalDefaults.NutSum));
        }

        findings.Add(new Finding(
            "fastening-rivet-look-behind",
            Severity.Caution,
            $"The figures know only {job.BehindWords} at the depth given. Wires, gas, fuel, brake and water lines, airbags, belt anchorages, tanks and glass may lie behind or beside the place: look first, use a depth stop, and follow local codes and the vehicle maker's bodybuilder guidance.",
            [new("least-distance", job.Gap.Least, "mm")]));
        if (fit.ThreadN < job.Hold)
        {
            findings.Add(new Finding(
                "fastening-rivet-thread-strips",
                Severity.Caution,
                $"The nut was given to hold {Print.Round(job.Hold, 2)} N in this metal; the {Print.Mm(fit.Shown.SharedMm)} of thread that it shares with a {Print.Mm(fit.Shown.Mm)} screw in the worst case may be loaded with {Print.Round(fit.ThreadN, 2)} N, a third of what strips it: that counts. A longer screw, or a nut of stronger metal, holds more.",
                [new("thread-hold", fit.ThreadN, "N"), new("nut-hold", job.Hold, "N"), new("worst-engagement", fit.Shown.SharedMm, "mm")],
                MetalDefaults.NutThread));
        }

        if (double.IsNaN(job.Unset) && job.BehindKind != BehindKind.RibMetal)
        {
            findings.Add(new Finding(
                "fastening-rivet-unset-unknown",
                Severity.Caution,
                $"How deep the nut is before it is set was not given. It is deeper than when set, and whether it can be pushed in {Print.Mm(job.Required)} clear of {job.BehindWords}, {Print.Mm(job.Room)} from its flange, is not looked at.",
                [new("room", job.Room, "mm"), new("required-clearance", job.Required, "mm")],
                MetalDefaults.NutSum));
        }

        if (nut.Source.Reading == SourceReading.Memory)
        {
            findings.Add(new Finding("fastening-rivet-from-memory", Severity.Caution, $"Hole and grip of {nut.Name} are from memory, and makers differ: take the figures of the nut that is bought.", [new("hole", Door.Millimetres(nut.Hole), "mm")], nut.Source));
        }

        if (double.IsNaN(job.Hold))
        {
            findings.Add(new Finding("fastening-rivet-hold-unknown", Severity.Note, "What the nut holds in this metal was not given: take it from its maker or from a trial. The strength of the thread in the nut is not what pulls it out of thin metal.", [], MetalDefaults.NutSum));
        }

        if (fit.Job.Paint is null)
        {
            findings.Add(new Finding("fastening-rivet-paint", Severity.Note, "No paint was given: the grip is to include the paint of both sides, old and new.", [], MetalDefaults.NutGrip));
        }

        findings.Add(MetalScrewFindings.Swarf());
        return Finding.GravestFirst(findings);
    }

    internal static IReadOnlyList<DefaultUsed> Defaults(RivetNutJob job, RivetNutNumbers numbers)
    {
        List<DefaultUsed> used = [];
        Add(job.SetDepth is null, new("set-depth", 0.5, "mm"), MetalDefaults.SetDepthSource);
        Add(job.SetDepth is null, new("set-depth-deviation", 0.5, "mm"), MetalDefaults.SetDepthSource);
        Add(job.LengthTolerance is null, new("length-tolerance", MetalDefaults.ScrewTolerance, "mm"), MetalDefaults.ScrewToleranceSource);
        Add(job.Engagement is null, new("engagement", MetalDefaults.NutEngagement, string.Empty), MetalDefaults.NutEngagementSource);
        Add(job.RequiredClearance is null, new("required-clearance", numbers.Required, "mm"), FastenerDefaults.ClearanceSource);
        Add(!double.IsNaN(numbers.Strength), new("thread-safety-factor", MetalDefaults.SafetyFactor, string.Empty), MetalDefaults.NutThreadSafety);
        return [.. used];

        void Add(bool taken, Figure figure, Source source)
        {
            if (taken)
            {
                used.Add(new DefaultUsed(figure, source));
            }
        }
    }

    private static bool Exists(IReadOnlyList<RivetNutScrew> tried)
    {
        foreach (RivetNutScrew screw in tried)
        {
            if (screw.MayBeDriven)
            {
                return true;
            }
        }

        return false;
    }
}
