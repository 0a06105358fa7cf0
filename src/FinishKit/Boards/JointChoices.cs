using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// All choices of joints over all courses. Neighbouring courses alone restrict each other, so that for any values of pieces the cheapest
/// choice is a shortest path: from the last course back, for every way of dividing a course the least value from there on.
/// </summary>
internal sealed class JointChoices
{
    internal const long None = long.MaxValue / 4;

    /// <summary>Of a sample, so many sizes of pieces that were not looked at are told apart at most.</summary>
    private const int MostSizes = 400;

    private readonly List<int>[] _order;
    private readonly RunSplits?[] _ways;
    private readonly Dictionary<long, int> _index = [];

    private JointChoices(List<JointCourse> courses, RunSplits?[] ways, long[] sizes, bool areAllSizes, long kerf)
    {
        (Courses, _ways, Sizes, Kerf) = (courses, ways, sizes, kerf);
        for (int i = 0; i < sizes.Length; i++)
        {
            _index[sizes[i]] = i;
        }

        _order = new List<int>[courses.Count];
        for (int c = 0; c < _order.Length; c++)
        {
            _order[c] = [];
            IsSample |= courses[c].IsSample;
            Splits += courses[c].Splits.Length;
            for (int s = 0; s < courses[c].Splits.Length; s++)
            {
                _order[c].Add(s);
            }
        }

        AreRunsFree = IsSample && areAllSizes;
        AreSizesKnown = !IsSample || areAllSizes;
    }

    internal List<JointCourse> Courses { get; }

    /// <summary>Every length that a piece can have, with a kerf, in nanometres, the greatest first.</summary>
    internal long[] Sizes { get; }

    internal long Kerf { get; }

    /// <summary>Whether of some course a sample of ways is here only.</summary>
    internal bool IsSample { get; }

    /// <summary>Whether every length that a piece can have is among the sizes, that of what was not looked at too.</summary>
    internal bool AreSizesKnown { get; }

    /// <summary>Whether what is needed is that of each run by itself, over all its ways and without a stagger: no more than what any choice needs, looked at or not.</summary>
    internal bool AreRunsFree { get; }

    /// <summary>Parts that do not restrict each other where it comes to what is needed: chains of neighbouring courses, or runs.</summary>
    internal int Parts => AreRunsFree ? _ways.Length : Chains;

    private int Chains
    {
        get
        {
            int chains = 0;
            foreach (JointCourse course in Courses)
            {
                chains += course.IsLinked ? 0 : 1;
            }

            return chains;
        }
    }

    internal int Splits { get; }

    internal static JointChoices Of(JointNumbers job, RunSplits?[] ways, long[] strips, int stagger)
    {
        List<JointCourse> courses = JointCourse.Of(job, ways, strips, stagger);
        long kerf = job.Cutting.Kerf;
        HashSet<long> different = [];
        bool isSample = false;
        foreach (JointCourse course in courses)
        {
            isSample |= course.IsSample;
            foreach (JointSplit split in course.Splits)
            {
                foreach (long length in split.Lengths)
                {
                    if (length <= job.Longest)
                    {
                        different.Add(length + kerf);
                    }
                }
            }
        }

        HashSet<long> all = [.. different];
        bool areAll = isSample && AddAll(ways, all, kerf);
        long[] sizes = areAll ? [.. all] : [.. different];
        Array.Sort(sizes, static (left, right) => right.CompareTo(left));
        JointChoices choices = new(courses, ways, sizes, areAll, kerf);
        foreach (JointCourse course in courses)
        {
            foreach (JointSplit split in course.Splits)
            {
                // What no board is long enough for is not cut, whatever else is chosen.
                split.Sizes = Array.ConvertAll(Array.FindAll(split.Lengths, length => length <= job.Longest), length => choices._index[length + kerf]);
            }
        }

        return choices;
    }

    /// <summary>How many pieces of each size a choice has.</summary>
    internal int[] Demand(int[] choice)
    {
        int[] demand = new int[Sizes.Length];
        for (int c = 0; c < choice.Length; c++)
        {
            foreach (int size in Courses[c].Splits[choice[c]].Sizes)
            {
                demand[size]++;
            }
        }

        return demand;
    }

    /// <summary>No choice has more pieces of a size, nor more in all.</summary>
    internal int[] MostDemand()
    {
        int[] most = new int[Sizes.Length], own = new int[Sizes.Length], greatest = new int[Sizes.Length];
        if (IsSample)
        {
            // Nor one that was not looked at.
            for (int i = 0; i < most.Length; i++)
            {
                foreach (RunSplits? run in _ways)
                {
                    most[i] += run is null ? 1 : (int)Math.Min(BoardJoints.MostJoints + 1, AreSizesKnown ? run.Length / Math.Max(1, Sizes[i] - Kerf) : long.MaxValue);
                }
            }

            return most;
        }

        foreach (JointCourse course in Courses)
        {
            foreach (JointSplit split in course.Splits)
            {
                foreach (int size in split.Sizes)
                {
                    greatest[size] = Math.Max(greatest[size], ++own[size]);
                }

                foreach (int size in split.Sizes)
                {
                    own[size] = 0;
                }
            }

            foreach (JointSplit split in course.Splits)
            {
                foreach (int size in split.Sizes)
                {
                    most[size] += greatest[size];
                    greatest[size] = 0;
                }
            }
        }

        return most;
    }

    internal int Joints(int[] choice)
    {
        int joints = 0;
        for (int c = 0; c < choice.Length; c++)
        {
            joints += Courses[c].Splits[choice[c]].Joints;
        }

        return joints;
    }

    /// <summary>For every course and way the least value of it and all that follows, <see cref="None"/> where nothing goes with it; null where the effort was spent first.</summary>
    internal long[][]? ToGo(long[] values, CuttingEffort effort)
    {
        long[][] least = new long[Courses.Count][];
        for (int c = Courses.Count - 1; c >= 0; c--)
        {
            JointSplit[] splits = Courses[c].Splits;
            long[] own = least[c] = new long[splits.Length];
            long[]? next = c + 1 < Courses.Count ? least[c + 1] : null;
            if (next is not null)
            {
                Sort(c + 1, next);
            }

            if (!effort.TrySpend(splits.Length))
            {
                return null;
            }

            for (int s = 0; s < splits.Length; s++)
            {
                foreach (int size in splits[s].Sizes)
                {
                    own[s] += values[size];
                }

                if (next is not null)
                {
                    if (effort.Left < next.Length / 4)
                    {
                        effort.End();
                        return null;
                    }

                    int after = Next(c, s, next, effort);
                    own[s] = after < 0 || next[after] >= None ? None : own[s] + next[after];
                }
            }
        }

        Sort(0, least[0]);
        return least;
    }

    /// <summary>The cheapest choice by the values that <see cref="ToGo"/> was last asked for; null where there is none, or the effort was spent first.</summary>
    internal int[]? Cheapest(long[][]? toGo, CuttingEffort effort)
    {
        if (toGo is null || effort.Left < Splits / 4)
        {
            effort.End();
            return null;
        }

        int[] choice = new int[Courses.Count];
        for (int c = 0; c < choice.Length; c++)
        {
            choice[c] = c == 0 ? _order[0][0] : Next(c - 1, choice[c - 1], toGo[c], effort);
            if (choice[c] < 0 || toGo[c][choice[c]] >= None)
            {
                return null;
            }
        }

        return choice;
    }

    /// <summary>What every choice needs of a value; the sizes of the parts that need so little. Null where the effort was spent first.</summary>
    internal long? Needed(long[] values, long[][] toGo, CuttingEffort effort, out int[][]? parts)
    {
        parts = null;
        if (!AreRunsFree)
        {
            int[]? choice = Cheapest(toGo, effort);
            parts = choice is null ? null : PartsOf(choice);
            return Least(toGo, 0);
        }

        long needed = 0;
        parts = new int[_ways.Length][];
        List<long> pieces = [];
        for (int run = 0; run < _ways.Length; run++)
        {
            if (!effort.TrySpend(BoardJoints.MostJoints * (long)(_ways[run]!.Strips + 2) * (_ways[run]!.Strips + 2) / 8))
            {
                return null;
            }

            needed += _ways[run]!.Least(length => values[_index[length + Kerf]], pieces);
            parts[run] = [.. pieces.ConvertAll(length => _index[length + Kerf])];
        }

        return needed;
    }

    /// <summary>Length and a kerf for each piece that every choice needs: that of the fewest joints, of what was not looked at too.</summary>
    internal long NeededLength()
    {
        long needed = 0;
        foreach (RunSplits? run in _ways)
        {
            needed += run is null ? 0 : run.Length + ((run.Fewest + 1) * Kerf);
        }

        return needed;
    }

    /// <summary>The sizes of each part of a choice.</summary>
    internal int[][] PartsOf(int[] choice)
    {
        List<int>[] parts = new List<int>[Parts];
        int chain = -1;
        for (int c = 0; c < choice.Length; c++)
        {
            JointSplit split = Courses[c].Splits[choice[c]];
            chain += Courses[c].IsLinked ? 0 : 1;
            for (int i = 0, at = 0; i < split.ByRun.Length; i++)
            {
                int part = AreRunsFree ? Courses[c].Runs[i] : chain;
                int end = AreRunsFree ? at + split.ByRun[i].Length + 1 : split.Sizes.Length;
                parts[part] ??= [];
                for (; at < end; at++)
                {
                    parts[part].Add(split.Sizes[at]);
                }
            }
        }

        return Array.ConvertAll(parts, static part => part.ToArray());
    }

    internal static long Least(long[][] toGo, int course)
    {
        long least = None;
        foreach (long value in toGo[course])
        {
            least = Math.Min(least, value);
        }

        return least;
    }

    /// <summary>Whether a way goes with what a choice has before and after it.</summary>
    internal bool Goes(int[] choice, int course, int split)
    {
        JointSplit own = Courses[course].Splits[split];
        return (!Courses[course].IsLinked || own.GoesWith(Courses[course - 1].Splits[choice[course - 1]]))
            && (course + 1 == choice.Length || !Courses[course + 1].IsLinked || own.GoesWith(Courses[course + 1].Splits[choice[course + 1]]));
    }

    /// <summary>Adds what pieces of any way of any run may measure; false where that is too much.</summary>
    private static bool AddAll(RunSplits?[] ways, HashSet<long> sizes, long kerf)
    {
        foreach (RunSplits? run in ways)
        {
            if (run is null || !run.AddLengths(sizes, kerf, MostSizes))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Of the next course the cheapest way that goes with this one; -1 where none does.</summary>
    private int Next(int course, int split, long[] values, CuttingEffort effort)
    {
        List<int> order = _order[course + 1];
        if (!Courses[course + 1].IsLinked)
        {
            return order[0];
        }

        JointSplit own = Courses[course].Splits[split];
        for (int i = 0; i < order.Count && values[order[i]] < None; i++)
        {
            if (own.GoesWith(Courses[course + 1].Splits[order[i]]))
            {
                effort.Spend(i / 4);
                return order[i];
            }
        }

        effort.Spend(order.Count / 4);
        return -1;
    }

    // Equal ones by number: the order must not hang on the sort's habits.
    private void Sort(int course, long[] values) =>
        _order[course].Sort((left, right) => values[left] != values[right] ? values[left].CompareTo(values[right]) : left.CompareTo(right));
}
