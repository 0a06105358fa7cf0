using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// Every way of dividing one run: whole where a board is that long, or sets of strips to butt on with all pieces within the longest board
/// and none shorter than the shortest piece. Counted first, and handed out by number, so that no list of them need be kept.
/// </summary>
internal sealed class RunSplits
{
    private const long Endless = 1L << 50;

    private readonly long[] _places;
    private readonly int _first;
    private readonly long[][] _ways;
    private readonly long _longest, _shortest;

    internal RunSplits(long start, long end, long[] strips, long longest, long shortest)
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

        // Of so many joints, no more than go into the run: most runs take few.
        int last = _places.Length - 1;
        int most = (int)Math.Min(Math.Min(BoardJoints.MostJoints, last - 1), ((end - start) / shortest) - 1);
        _ways = new long[Math.Max(0, most) + 1][];
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
        foreach (long[] ways in _ways)
        {
            Count = Math.Min(Endless, Count + ways[0]);
        }
    }

    /// <summary>The fewest joints; -1 where no way is allowed.</summary>
    internal int Fewest { get; }

    internal long Count { get; }

    internal int Strips => _places.Length - 2;

    internal long Length => _places[_places.Length - 1] - _places[0];

    /// <summary>Adds the lengths of all pieces of all ways, with a kerf; false where there are more than so many then.</summary>
    internal bool AddLengths(HashSet<long> lengths, long kerf, int most)
    {
        int last = _places.Length - 1;
        if (_ways[0][0] > 0)
        {
            lengths.Add(Length + kerf);
        }

        for (int i = 0; i < last; i++)
        {
            for (int k = i + 1; k <= last && lengths.Count <= most; k++)
            {
                if (IsPiece(i, k))
                {
                    lengths.Add(_places[k] - _places[i] + kerf);
                }
            }
        }

        return lengths.Count <= most;
    }

    /// <summary>Whether more joints than are allowed would do.</summary>
    internal bool AreJointsTooFew()
    {
        bool[] reached = new bool[_places.Length];
        reached[0] = true;
        for (int i = 1; i < reached.Length; i++)
        {
            for (int k = i - 1; k >= 0 && _places[i] - _places[k] <= _longest && !reached[i]; k--)
            {
                reached[i] = reached[k] && IsPiece(k, i);
            }
        }

        return Count == 0 && reached[reached.Length - 1];
    }

    /// <summary>How many of the first ways are taken, where so many are; of the last number of joints that can be taken in part only, an even sample.</summary>
    internal long Number(long taken, long index)
    {
        long before = 0;
        foreach (long[] ways in _ways)
        {
            if (before + ways[0] > taken)
            {
                return index < before ? index : before + (long)((decimal)(index - before) * ways[0] / (taken - before));
            }

            before += ways[0];
        }

        return index;
    }

    /// <summary>The least value of all ways, with what each piece is worth; the pieces of the way that has it.</summary>
    internal long Least(Func<long, long> worth, List<long> pieces)
    {
        pieces.Clear();
        int last = _places.Length - 1;
        long[][] least = new long[_ways.Length][];
        for (int joints = 0; joints < least.Length; joints++)
        {
            least[joints] = new long[last];
            for (int i = last - 1; i >= 0; i--)
            {
                least[joints][i] = _ways[joints][i] == 0 ? JointChoices.None : joints == 0 ? worth(_places[last] - _places[i]) : JointChoices.None;
                for (int k = i + 1; joints > 0 && _ways[joints][i] > 0 && k < last && _places[k] - _places[i] <= _longest; k++)
                {
                    if (IsPiece(i, k) && _ways[joints - 1][k] > 0)
                    {
                        least[joints][i] = Math.Min(least[joints][i], worth(_places[k] - _places[i]) + least[joints - 1][k]);
                    }
                }
            }
        }

        int best = Fewest;
        for (int joints = Fewest; joints < least.Length; joints++)
        {
            best = least[joints][0] < least[best][0] ? joints : best;
        }

        for (int joints = best, i = 0; joints > 0; joints--)
        {
            int k = i + 1;
            while (!IsPiece(i, k) || _ways[joints - 1][k] == 0 || worth(_places[k] - _places[i]) + least[joints - 1][k] != least[joints][i])
            {
                k++;
            }

            pieces.Add(_places[k] - _places[i]);
            i = k;
        }

        long covered = 0;
        foreach (long piece in pieces)
        {
            covered += piece;
        }

        pieces.Add(_places[last] - _places[0] - covered);
        return least[best][0];
    }

    /// <summary>The strips of one way, from 0 to <see cref="Count"/>; fewest joints first, then from the start.</summary>
    internal int[] At(long number)
    {
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

/// <summary>A course with every way of dividing it; where there are too many, those with the fewest joints and an even sample of the next.</summary>
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
                chosen[at] = ways[runs[at]] is { } own ? own.At(own.Number(taken[at], i)) : [];
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
