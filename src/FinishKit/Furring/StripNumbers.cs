using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>A run as the search sees it: whole nanometres, sorted.</summary>
internal sealed class StripNumbers
{
    private const double LongestRun = 1e6;

    /// <summary>No more bays than this over a run, so that nothing grows without bound.</summary>
    private const int MostBays = 10_000;

    private static readonly Allowed s_length = new(Allowed.OneStep, LongestRun, "mm");
    private static readonly Allowed s_centre = new(-LongestRun, LongestRun, "mm");
    private static readonly Allowed s_halfWidth = new(0, 1000, "mm");
    private static readonly Allowed s_somewhere = new(0, LongestRun, "mm");

    private StripNumbers(long[] fixedPositions, long[] ribCentres, long[] ribHalfWidths, int[] ribIndices, long largestBay, long leastDistance)
    {
        Fixed = fixedPositions;
        RibCentres = ribCentres;
        RibHalfWidths = ribHalfWidths;
        RibIndices = ribIndices;
        LargestBay = largestBay;
        LeastDistance = leastDistance;
        foreach (long halfWidth in ribHalfWidths)
        {
            WidestHalf = Math.Max(WidestHalf, halfWidth);
        }
    }

    /// <summary>Fixed strips, rising.</summary>
    internal long[] Fixed { get; }

    /// <summary>Middles of the ribs, rising.</summary>
    internal long[] RibCentres { get; }

    internal long[] RibHalfWidths { get; }

    /// <summary>Where each of the sorted ribs stands in the caller's list.</summary>
    internal int[] RibIndices { get; }

    internal long LargestBay { get; }

    internal long LeastDistance { get; }

    /// <summary>The widest of the half-widths: nothing farther from a strip needs to be looked at.</summary>
    private long WidestHalf { get; }

    /// <summary>Null where there is a problem.</summary>
    internal static StripNumbers? Read(StripRun run, string path, List<InputProblem>? problems)
    {
        if (Door.IsMissing(run, new Name(path), "a run", problems))
        {
            return null;
        }

        int before = problems?.Count ?? 0;
        double length = Door.Millimetres(run.RunLength, new Name(Member(path, nameof(run.RunLength))), s_length, problems);
        long[] fixedPositions = ReadFixed(run, path, double.IsNaN(length) ? s_somewhere : new Allowed(0, length, "mm"), problems);
        double bay = Door.Millimetres(run.LargestBay, new Name(Member(path, nameof(run.LargestBay))), s_length, problems);
        if (!double.IsNaN(bay + length) && Grid.Nanometres(bay) * MostBays < Grid.Nanometres(length))
        {
            Door.Report(new InputProblem(Member(path, nameof(run.LargestBay)), Print.Number(bay) + " mm", "no less than a ten-thousandth of the run, " + Print.Number(length / MostBays) + " mm", isRange: true), problems);
        }

        (long[] centres, long[] halfWidths, int[] indices) = ReadRibs(run, path, problems);
        double least = run.LeastDistance is { } given ? Door.Millimetres(given, new Name(Member(path, nameof(run.LeastDistance))), s_length, problems) : StripDefaults.LeastDistance;
        if (run.Preference is not (StripPreference.OnRibs or StripPreference.FewestStrips))
        {
            Door.Report(new InputProblem(Member(path, nameof(run.Preference)), Print.Number((int)run.Preference), "one of OnRibs, FewestStrips", isRange: true), problems);
        }

        return (problems?.Count ?? 0) > before ? null : new StripNumbers(fixedPositions, centres, halfWidths, indices, Grid.Nanometres(bay), Grid.Nanometres(least));
    }

    /// <summary>The rib that a strip bears on, as the caller counts them: of several the one whose middle is nearest, of those as near the first; null if none.</summary>
    internal int? BearsOn(long position)
    {
        int at = Array.BinarySearch(RibCentres, position);
        at = at < 0 ? ~at : at;
        int found = -1;
        long nearest = long.MaxValue;
        for (int i = at - 1; i >= 0 && position - RibCentres[i] <= WidestHalf; i--)
        {
            Consider(i, position - RibCentres[i]);
        }

        for (int i = at; i < RibCentres.Length && RibCentres[i] - position <= WidestHalf; i++)
        {
            Consider(i, RibCentres[i] - position);
        }

        return found < 0 ? null : found;

        void Consider(int i, long away)
        {
            if (away <= RibHalfWidths[i] && (away < nearest || (away == nearest && RibIndices[i] < found)))
            {
                nearest = away;
                found = RibIndices[i];
            }
        }
    }

    /// <summary>Whether a fixed strip bears on a rib, so that it takes no other.</summary>
    internal bool IsTaken(int rib)
    {
        long centre = RibCentres[rib];
        int at = Array.BinarySearch(Fixed, centre);
        if (at >= 0)
        {
            return true;
        }

        at = ~at;
        return (at > 0 && centre - Fixed[at - 1] <= RibHalfWidths[rib]) || (at < Fixed.Length && Fixed[at] - centre <= RibHalfWidths[rib]);
    }

    /// <summary>The path of a member; without a path the plain parameter of the same name.</summary>
    private static string Member(string path, string member) => path.Length == 0 ? char.ToLowerInvariant(member[0]) + member.Substring(1) : path + "." + member;

    private static long[] ReadFixed(StripRun run, string path, Allowed allowed, List<InputProblem>? problems)
    {
        string name = Member(path, nameof(run.FixedPositions));
        const string Words = "2 to 1000 positions";
        if (Door.IsMissing(run.FixedPositions, new Name(name), Words, problems))
        {
            return [];
        }

        int count = run.FixedPositions.Count;
        if (count is < 2 or > StripSpacing.MostListed)
        {
            Door.Report(new InputProblem(name, Print.Number(count) + " positions", Words, isRange: true), problems);
            return [];
        }

        long[] positions = new long[count];
        for (int i = 0; i < count; i++)
        {
            double position = Door.Millimetres(run.FixedPositions[i], new Name(name, i), allowed, problems);
            positions[i] = double.IsNaN(position) ? 0 : Grid.Nanometres(position);
        }

        Array.Sort(positions);
        return positions;
    }

    private static (long[] Centres, long[] HalfWidths, int[] Indices) ReadRibs(StripRun run, string path, List<InputProblem>? problems)
    {
        string name = Member(path, nameof(run.Ribs));
        const string Words = "at most 1000 ribs";
        if (Door.IsMissing(run.Ribs, new Name(name), Words, problems))
        {
            return ([], [], []);
        }

        int count = run.Ribs.Count;
        if (count > StripSpacing.MostListed)
        {
            Door.Report(new InputProblem(name, Print.Number(count) + " ribs", Words, isRange: true), problems);
            return ([], [], []);
        }

        long[] centres = new long[count], halfWidths = new long[count];
        int[] indices = new int[count];
        bool rising = true;
        for (int i = 0; i < count; i++)
        {
            RibLine rib = run.Ribs[i];
            Name at = new(name, i);
            if (Door.IsMissing(rib, at, "a rib", problems))
            {
                continue;
            }

            double centre = Door.Millimetres(rib.Centre, at.Then(".Centre"), s_centre, problems);
            double half = Door.Millimetres(rib.HalfWidth, at.Then(".HalfWidth"), s_halfWidth, problems);
            centres[i] = double.IsNaN(centre) ? 0 : Grid.Nanometres(centre);
            halfWidths[i] = double.IsNaN(half) ? 0 : Grid.Nanometres(half);
            indices[i] = i;
            rising &= i == 0 || centres[i - 1] <= centres[i];
        }

        if (!rising)
        {
            long[] keys = (long[])centres.Clone();
            Array.Sort(keys, indices);
            (centres, halfWidths) = (keys, Array.ConvertAll(indices, i => halfWidths[i]));
        }

        return (centres, halfWidths, indices);
    }
}
