using System.Collections.Generic;

namespace FinishKit;

/// <summary>What a person should know about spaced strips.</summary>
internal static class StripFindings
{
    /// <summary>So many places are written out in a sentence.</summary>
    private const int MostWritten = 12;

    internal static IReadOnlyList<Finding> Of(StripNumbers run, IReadOnlyList<PlacedStrip> strips, long? smallestFeasible)
    {
        List<Finding> findings = [];
        double least = Grid.Millimetres(run.LeastDistance);
        if (smallestFeasible is { } nanometres)
        {
            double allowed = Grid.Millimetres(run.LargestBay), feasible = Grid.Millimetres(nanometres);
            findings.Add(new Finding(
                "furring-bay-infeasible",
                Severity.Problem,
                $"No strips were chosen: strips at least {Print.Mm(least)} apart leave a bay of more than {Print.Mm(allowed)} somewhere. Bays up to {Print.MmUp(feasible)} can be had.",
                [new("largest-bay-allowed", allowed, "mm"), new("least-distance", least, "mm"), new("smallest-feasible-bay", feasible, "mm")],
                Sources.StripSpacing));
        }

        AddTooClose(findings, run, least);
        AddOffRibs(findings, run, strips);
        return Finding.GravestFirst(findings);
    }

    private static void AddTooClose(List<Finding> findings, StripNumbers run, double least)
    {
        int pairs = 0, closest = 0;
        for (int i = 1; i < run.Fixed.Length; i++)
        {
            long distance = run.Fixed[i] - run.Fixed[i - 1];
            pairs += distance < run.LeastDistance ? 1 : 0;
            closest = closest == 0 || distance < run.Fixed[closest] - run.Fixed[closest - 1] ? i : closest;
        }

        if (pairs > 0)
        {
            double left = Grid.Millimetres(run.Fixed[closest - 1]), distance = Grid.Millimetres(run.Fixed[closest] - run.Fixed[closest - 1]);
            findings.Add(new Finding(
                "furring-fixed-too-close",
                Severity.Caution,
                $"{(pairs == 1 ? "Two fixed strips are" : $"{Print.Number(pairs)} pairs of fixed strips are")} less than {Print.Mm(least)} apart; the closest, from {Print.Mm(left)} on, {Print.Mm(distance)}. Take one away, or make one strip of them.",
                [new("pairs", pairs, string.Empty), new("position", left, "mm"), new("distance", distance, "mm"), new("least-distance", least, "mm")],
                Sources.StripSpacing));
        }
    }

    private static void AddOffRibs(List<Finding> findings, StripNumbers run, IReadOnlyList<PlacedStrip> strips)
    {
        List<double> off = [];
        foreach (PlacedStrip strip in strips)
        {
            if (strip.Rib is null)
            {
                off.Add(Door.Millimetres(strip.Position));
            }
        }

        if (off.Count == strips.Count && run.RibCentres.Length > 0)
        {
            findings.Add(new Finding(
                "furring-none-on-rib",
                Severity.Caution,
                $"No strip bears on any of the {Print.Number(run.RibCentres.Length)} ribs: look at where ribs and fixed strips were measured from.",
                [new("strips", strips.Count, string.Empty), new("ribs", run.RibCentres.Length, string.Empty)],
                Sources.StripSpacing));
        }

        if (off.Count > 0)
        {
            string places = string.Join(", ", off.GetRange(0, System.Math.Min(off.Count, MostWritten)).ConvertAll(Print.Mm));
            findings.Add(new Finding(
                "furring-strips-off-ribs",
                Severity.Note,
                $"{(off.Count == 1 ? "One strip bears" : $"{Print.Number(off.Count)} strips bear")} on no rib, at {places}{(off.Count > MostWritten ? " and on" : string.Empty)}: fix {(off.Count == 1 ? "it" : "them")} to rails or in another way.",
                [new("strips", off.Count, string.Empty), new("first-position", off[0], "mm"), new("last-position", off[off.Count - 1], "mm")],
                Sources.StripSpacing));
        }
    }
}
