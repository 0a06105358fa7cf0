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

    private readonly List<int>[] _order;

    private JointChoices(List<JointCourse> courses, long[] sizes, long kerf)
    {
        (Courses, Sizes, Kerf) = (courses, sizes, kerf);
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
    }

    internal List<JointCourse> Courses { get; }

    /// <summary>Every length that a piece can have, with a kerf, in nanometres, the greatest first.</summary>
    internal long[] Sizes { get; }

    internal long Kerf { get; }

    /// <summary>Whether of some course a sample of ways is here only.</summary>
    internal bool IsSample { get; }

    internal int Splits { get; }

    internal static JointChoices Of(JointNumbers job, RunSplits?[] ways, long[] strips, int stagger)
    {
        List<JointCourse> courses = JointCourse.Of(job, ways, strips, stagger);
        long kerf = job.Cutting.Kerf;
        HashSet<long> different = [];
        foreach (JointCourse course in courses)
        {
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

        long[] sizes = [.. different];
        Array.Sort(sizes, static (left, right) => right.CompareTo(left));
        Dictionary<long, int> index = [];
        for (int i = 0; i < sizes.Length; i++)
        {
            index[sizes[i]] = i;
        }

        foreach (JointCourse course in courses)
        {
            foreach (JointSplit split in course.Splits)
            {
                // What no board is long enough for is not cut, whatever else is chosen.
                split.Sizes = Array.ConvertAll(Array.FindAll(split.Lengths, length => length <= job.Longest), length => index[length + kerf]);
            }
        }

        return new JointChoices(courses, sizes, kerf);
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

    /// <summary>No choice has more pieces of a size.</summary>
    internal int[] MostDemand()
    {
        int[] most = new int[Sizes.Length], own = new int[Sizes.Length], greatest = new int[Sizes.Length];
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

    /// <summary>For every course and way the least value of it and all that follows; <see cref="None"/> where nothing goes with it.</summary>
    internal long[][] ToGo(long[] values, CuttingEffort effort)
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

            for (int s = 0; s < splits.Length; s++)
            {
                foreach (int size in splits[s].Sizes)
                {
                    own[s] += values[size];
                }

                if (next is not null)
                {
                    int after = Next(c, s, next, effort);
                    own[s] = after < 0 || next[after] >= None ? None : own[s] + next[after];
                }
            }

            effort.Spend(splits.Length);
        }

        Sort(0, least[0]);
        return least;
    }

    /// <summary>The cheapest choice by the values that <see cref="ToGo"/> was last asked for; null where there is none.</summary>
    internal int[]? Cheapest(long[][] toGo, CuttingEffort effort)
    {
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
