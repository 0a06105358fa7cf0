using System.Collections.Generic;

namespace FinishKit;

/// <summary>What a person should know about a screw into thin metal.</summary>
internal static class MetalScrewFindings
{
    private const string LookWords = "Wires, gas, fuel, brake and water lines, airbags, belt anchorages, tanks and glass may lie behind or beside the place: look from the other side or with a probe before drilling, use a depth stop, and follow local codes and the vehicle maker's bodybuilder guidance.";

    internal static IReadOnlyList<Finding> Of(MetalScrewChoice choice, MetalScrewNumbers job)
    {
        List<Finding> findings = [];
        AddNone(choice, job, findings);
        if (choice.Job.Screws.IsPartThreaded)
        {
            findings.Add(new Finding(
                "fastening-metal-part-thread",
                Severity.Caution,
                $"{choice.Job.Screws.Name} is not threaded up to the head: of a wood screw about a third, under the head, is smooth, and whether the thread lies in the metal is not looked at. The figures are for a screw threaded all along: take a tapping screw.",
                [],
                MetalDefaults.ThreadAllAlong));
        }

        if (job.Metal.Least < job.Pitch)
        {
            findings.Add(new Finding(
                "fastening-metal-strips",
                Severity.Caution,
                $"The metal is down to {Print.Mm(job.Metal.Least)}, less than one pitch of {Print.Mm(job.Pitch)}: less than a whole turn of thread is in it and it strips easily. Tighten by hand or with the clutch at its least, never twice into the same hole, or use a rivet nut.",
                [new("metal", job.Metal.Least, "mm"), new("pitch", job.Pitch, "mm")],
                MetalDefaults.ThinSheet));
        }

        findings.Add(new Finding(
            "fastening-metal-look-behind",
            Severity.Caution,
            $"The figures know only {job.BehindWords} at the depth given. " + LookWords,
            [new("least-distance", job.Gap.Least, "mm")]));
        AddHold(choice, job, findings);
        AddHole(choice.Job.PilotHole is not null, choice, findings);
        findings.Add(Swarf());
        return Finding.GravestFirst(findings);
    }

    /// <summary>Said of every hole in the shell.</summary>
    internal static Finding Swarf() => new(
        "fastening-metal-swarf",
        Severity.Note,
        "Drilling leaves swarf and a bare edge, and both rust: catch and vacuum the swarf, also out of the cavity, prime the edge, and let the primer dry before the fixing goes in.",
        [],
        MetalDefaults.BareMetal);

    internal static IReadOnlyList<DefaultUsed> Defaults(MetalScrewJob job, MetalScrewNumbers numbers, in TolerancedLength.Span shown)
    {
        List<DefaultUsed> used = [];
        Add(job.SetDepth is null, new("set-depth", 0.5, "mm"), MetalDefaults.SetDepthSource);
        Add(job.SetDepth is null, new("set-depth-deviation", 0.5, "mm"), MetalDefaults.SetDepthSource);
        Add(job.LengthTolerance is null && !numbers.TolerancedBySeries, new("length-tolerance", numbers.ToleranceOf(shown.Nominal), "mm"), MetalDefaults.TappingLength);
        Add(job.ThreadsBeyond is null, new("threads-beyond", MetalDefaults.ThreadsBeyond, string.Empty), MetalDefaults.ThreadsSource);
        Add(job.Point is null, new("point", numbers.Point, "mm"), MetalDefaults.PointSource);
        Add(job.RequiredClearance is null, new("required-clearance", numbers.Required, "mm"), FastenerDefaults.ClearanceSource);
        Add(job.PilotHole is null && !double.IsNaN(numbers.PilotHole), new("pilot-hole", numbers.PilotHole, "mm"), MetalDefaults.Drills);
        return [.. used];

        void Add(bool taken, Figure figure, Source source)
        {
            if (taken)
            {
                used.Add(new DefaultUsed(figure, source));
            }
        }
    }

    private static void AddNone(MetalScrewChoice choice, MetalScrewNumbers job, List<Finding> findings)
    {
        if (job.HeadGoesThrough)
        {
            findings.Add(new Finding(
                "fastening-metal-head-through",
                Severity.Problem,
                $"A head set {Print.Mm(job.SetDepth.Greatest)} deep goes through {job.Names[0]} of {Print.Mm(job.Through[0].Least)}: nothing would be held.",
                [new("set-depth", job.SetDepth.Greatest, "mm"), new("thickness", job.Through[0].Least, "mm")],
                MetalDefaults.ScrewSum));
            return;
        }

        if (choice.Chosen is not null)
        {
            return;
        }

        double least = job.ShortestThatHolds, most = job.LongestClear;
        string why = least > most
            ? $"no length can do both: the stack and what is behind leave {Print.Mm(least - most)} too little"
            : "a length in between, tolerance included, is not stocked";
        findings.Add(new Finding(
            "fastening-metal-none-fits",
            Severity.Problem,
            $"No stocked screw passes the metal by {Print.Mm(job.NeededBeyond)} and stays {Print.Mm(job.Required)} clear of {job.BehindWords} in the worst case: it takes {Print.Mm(least)} or more for the thread and {(most > 0 ? Print.Mm(most) + " or less" : "less than nothing")} for the clearance; {why}.",
            [new("shortest-that-holds", least, "mm"), new("longest-clear", most, "mm")],
            MetalDefaults.ScrewSum));
    }

    private static void AddHold(MetalScrewChoice choice, MetalScrewNumbers job, List<Finding> findings)
    {
        if (choice.MetalHold is not { } metal)
        {
            findings.Add(new Finding("fastening-metal-hold-unknown", Severity.Note, "Without the metal's tensile strength nothing is said about what the screw holds.", [], MetalDefaults.Aisi));
            return;
        }

        findings.AddRange(metal.Findings);
        if (double.IsNaN(job.Head))
        {
            findings.Add(new Finding(
                "fastening-metal-head-unknown",
                Severity.Caution,
                $"The {Print.Round(metal.AllowableNewtons, 2)} N are what the metal holds. What the panel holds under the head was not given, and thin ply often gives first: take it from a trial, or put a washer under the head.",
                [new("metal-hold", metal.AllowableNewtons, "N")],
                MetalDefaults.Aisi));
        }
    }

    private static void AddHole(bool given, MetalScrewChoice choice, List<Finding> findings)
    {
        if (given)
        {
            return;
        }

        findings.Add(new Finding(
            "fastening-metal-pilot-hole",
            Severity.Note,
            choice.PilotHole is { } hole
                ? $"A pilot hole of {Print.Mm(Door.Millimetres(hole))} is what a seller of such screws recommends for light metal; thin soft sheet may ask for a smaller one. Drive one into a scrap of the same sheet first."
                : "No pilot hole is listed for this thread: take the screw maker's, and drive one into a scrap of the same sheet first.",
            choice.PilotHole is { } listed ? [new("pilot-hole", Door.Millimetres(listed), "mm")] : [],
            MetalDefaults.Drills));
    }
}
