using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// Every way of dividing one run: sets of strips to butt on, all pieces within the longest board and none shorter than the shortest
/// piece, with the fewest joints or one more. Counted first, and handed out by number, so that no list of them need be kept.
/// </summary>
internal sealed class RunSplits
{
    private const long Endless = 1L << 50;

    private readonly long[] _places;
    private readonly int _first;
    private readonly long[][] _ways;
    private readonly long _longest, _shortest;

    // Plenty: length of the boards of which there are enough. A run no longer than that stays whole.
    internal RunSplits(long start, long end, long[] strips, long longest, long plenty, long shortest)
    {
        (_longest, _shortest) = (longest, shortest);
        int from = 0, to = strips.Length;
        while (from < to && strips[from] <= start)
        {
            from++;
        }

        while (to > from && strips[to - 1] >= end)
        {
            to--;
        }

        _first = from;
        _places = new long[to - from + 2];
        _places[0] = start;
        Array.Copy(strips, from, _places, 1, to - from);
        _places[_places.Length - 1] = end;
        if (end - start <= plenty)
        {
            _ways = [];
            Count = 1;
            return;
        }

        int last = _places.Length - 1;
        _ways = new long[BoardJoints.MostJoints + 1][];
        for (int joints = 0; joints < _ways.Length; joints++)
        {
            long[] ways = _ways[joints] = new long[last];
            for (int i = 0; i < last; i++)
            {
                if (joints == 0)
                {
                    ways[i] = (i == 0 ? end - start <= longest : IsPiece(i, last)) ? 1 : 0;
                    continue;
                }

                for (int k = i + 1; k < last && _places[k] - _places[i] <= longest; k++)
                {
                    ways[i] = Math.Min(Endless, ways[i] + (IsPiece(i, k) ? _ways[joints - 1][k] : 0));
                }
            }
        }

        Fewest = Array.FindIndex(_ways, static ways => ways[0] > 0);
        if (Fewest < 0)
        {
            return;
        }

        Most = Math.Min(BoardJoints.MostJoints, FewestFrom(plenty) + 1);
        for (int joints = Fewest; joints <= Most; joints++)
        {
            Count = Math.Min(Endless, Count + _ways[joints][0]);
        }
    }

    /// <summary>The fewest joints; -1 where no way is allowed.</summary>
    internal int Fewest { get; }

    internal int Most { get; }

    internal long Count { get; }

    /// <summary>The strips of one way, from 0 to <see cref="Count"/>; fewest joints first, then from the start.</summary>
    internal int[] At(long number)
    {
        if (_ways.Length == 0)
        {
            return [];
        }

        int joints = Fewest;
        while (number >= _ways[joints][0])
        {
            number -= _ways[joints++][0];
        }

        int[] strips = new int[joints];
        for (int at = 0, i = 0; at < strips.Length; at++)
        {
            int k = i + 1;
            for (; ; k++)
            {
                long ways = IsPiece(i, k) ? _ways[joints - 1 - at][k] : 0;
                if (number < ways)
                {
                    break;
                }

                number -= ways;
            }

            strips[at] = _first + k - 1;
            i = k;
        }

        return strips;
    }

    private bool IsPiece(int from, int to) => _places[to] - _places[from] >= _shortest && _places[to] - _places[from] <= _longest;

    /// <summary>The fewest joints where every piece is to come from boards of which there are enough; the fewest there are where that cannot be.</summary>
    private int FewestFrom(long plenty)
    {
        int[] fewest = new int[_places.Length];
        for (int i = 1; i < fewest.Length; i++)
        {
            fewest[i] = int.MaxValue;
            for (int k = i - 1; k >= 0 && _places[i] - _places[k] <= plenty; k--)
            {
                if (fewest[k] < int.MaxValue && _places[i] - _places[k] >= _shortest)
                {
                    fewest[i] = Math.Min(fewest[i], fewest[k] + 1);
                }
            }
        }

        int pieces = fewest[fewest.Length - 1];
        return pieces == int.MaxValue ? Fewest : pieces - 1;
    }
}

/// <summary>One way of dividing all runs of a course.</summary>
internal sealed class JointSplit
{
    internal JointSplit(int[][] byRun, long[] lengths, int strips, int stagger)
    {
        (ByRun, Lengths) = (byRun, lengths);
        On = new ulong[(strips + 63) / 64];
        Near = new ulong[On.Length];
        foreach (int[] joints in byRun)
        {
            Joints += joints.Length;
            foreach (int strip in joints)
            {
                On[strip >> 6] |= 1UL << (strip & 63);
                for (int near = Math.Max(0, strip - stagger + 1); near < Math.Min(strips, strip + stagger); near++)
                {
                    Near[near >> 6] |= 1UL << (near & 63);
                }
            }
        }
    }

    /// <summary>The strips of each run, in the course's order.</summary>
    internal int[][] ByRun { get; }

    /// <summary>Lengths of all pieces.</summary>
    internal long[] Lengths { get; }

    internal int Joints { get; }

    /// <summary>For each piece which of the candidate sizes it is.</summary>
    internal int[] Sizes { get; set; } = [];

    private ulong[] On { get; }

    /// <summary>Strips too near to one of the joints for a neighbouring course.</summary>
    private ulong[] Near { get; }

    internal bool GoesWith(JointSplit neighbour)
    {
        for (int i = 0; i < On.Length; i++)
        {
            if ((On[i] & neighbour.Near[i]) != 0)
            {
                return false;
            }
        }

        return true;
    }
}

/// <summary>A course with every way of dividing it, or an even sample where there are too many.</summary>
internal sealed class JointCourse
{
    private JointCourse(int[] runs, JointSplit[] splits, bool isLinked, bool isSample) => (Runs, Splits, IsLinked, IsSample) = (runs, splits, isLinked, isSample);

    internal int[] Runs { get; }

    internal JointSplit[] Splits { get; }

    /// <summary>Whether the course before it is its neighbour.</summary>
    internal bool IsLinked { get; }

    internal bool IsSample { get; }

    /// <summary>By course; ways: for each run of the job.</summary>
    internal static List<JointCourse> Of(JointNumbers job, RunSplits?[] ways, long[] strips, int stagger)
    {
        List<List<int>> byCourse = [];
        foreach (int run in job.Order)
        {
            if (byCourse.Count == 0 || job.Runs[byCourse[byCourse.Count - 1][0]].Course != job.Runs[run].Course)
            {
                byCourse.Add([]);
            }

            byCourse[byCourse.Count - 1].Add(run);
        }

        int most = Math.Min(BoardJoints.MostSplits, (int)Math.Sqrt(4e7 / byCourse.Count));
        List<JointCourse> courses = [];
        for (int c = 0; c < byCourse.Count; c++)
        {
            bool isLinked = c > 0 && job.Runs[byCourse[c][0]].Course == job.Runs[byCourse[c - 1][0]].Course + 1;
            courses.Add(Of(job, byCourse[c], ways, strips, stagger, most, isLinked));
        }

        return courses;
    }

    private static JointCourse Of(JointNumbers job, List<int> runs, RunSplits?[] ways, long[] strips, int stagger, int most, bool isLinked)
    {
        // A run without a way is left whole.
        long[] all = new long[runs.Count], taken = new long[runs.Count];
        for (int i = 0; i < all.Length; i++)
        {
            all[i] = taken[i] = ways[runs[i]]?.Count ?? 1;
        }

        bool isSample = false;
        while (Product(taken) > most)
        {
            isSample = true;
            int greatest = 0;
            for (int i = 1; i < taken.Length; i++)
            {
                greatest = taken[i] > taken[greatest] ? i : greatest;
            }

            taken[greatest] = taken[greatest] > 2L * most ? most : (taken[greatest] + 1) / 2;
        }

        List<JointSplit> splits = [];
        int[][] chosen = new int[all.Length][];
        Combine(0);
        return new JointCourse([.. runs], [.. splits], isLinked, isSample);

        void Combine(int at)
        {
            if (at == all.Length)
            {
                List<long> lengths = [];
                for (int i = 0; i < all.Length; i++)
                {
                    long from = job.Runs[runs[i]].Start;
                    foreach (int strip in chosen[i])
                    {
                        lengths.Add(strips[strip] - from);
                        from = strips[strip];
                    }

                    lengths.Add(job.Runs[runs[i]].End - from);
                }

                splits.Add(new JointSplit((int[][])chosen.Clone(), [.. lengths], strips.Length, stagger));
                return;
            }

            for (long i = 0; i < taken[at]; i++)
            {
                // Evenly over all, without a product that overflows.
                chosen[at] = ways[runs[at]]?.At(taken[at] == all[at] ? i : (long)((decimal)i * all[at] / taken[at])) ?? [];
                Combine(at + 1);
            }
        }
    }

    private static decimal Product(long[] counts)
    {
        decimal product = 1;
        foreach (long count in counts)
        {
            product = Math.Min(1e12m, product * count);
        }

        return product;
    }
}
