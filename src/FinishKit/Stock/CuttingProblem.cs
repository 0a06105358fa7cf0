using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// Parts and boards in whole steps. A part is counted with a kerf and so is the board: n pieces have n - 1 kerfs, and
/// sum(p) + (n - 1) k is no more than C exactly when sum(p + k) is no more than C + k.
/// </summary>
internal sealed class CuttingProblem
{
    // Each size of part once, the greatest first. A price of 0 is for what is on hand.
    internal CuttingProblem(long[] sizes, int[] demand, long[] capacity, long[] price, int[] pack, int[] limit)
    {
        (Sizes, Demand, Capacity, Price, Pack, Limit) = (sizes, demand, capacity, price, pack, limit);
        foreach (int count in demand)
        {
            Pieces += count;
        }
    }

    internal long[] Sizes { get; }

    internal int[] Demand { get; }

    internal long[] Capacity { get; }

    internal long[] Price { get; }

    internal int[] Pack { get; }

    internal int[] Limit { get; }

    internal int Pieces { get; }

    internal int Kinds => Capacity.Length;

    /// <summary>More packs than this are never needed. Where a last pack would be broken by the limit, there is none.</summary>
    internal int MostPacks(int kind) => Math.Min(Limit[kind] / Pack[kind], (Pieces + Pack[kind] - 1) / Pack[kind]);

    /// <summary>Boards that can be had, in whole packs.</summary>
    internal int MostBoards(int kind) => MostPacks(kind) * Pack[kind];

    /// <summary>Nodes that a plan takes at most which is made without looking back, see <see cref="BoardFilling.Fit"/>; the documentation of <see cref="CuttingJob.Effort"/> and <see cref="JointJob.Effort"/> states it.</summary>
    internal long FirstPlanNodes => FitNodes(Pieces);

    internal long FitNodes(long pieces) => (pieces * (8 + Kinds)) + (pieces * pieces / 64);

    internal long CostOf(int[] boards)
    {
        long cost = 0;
        for (int kind = 0; kind < boards.Length; kind++)
        {
            cost += Price[kind] * ((boards[kind] + Pack[kind] - 1) / Pack[kind]);
        }

        return cost;
    }
}

/// <summary>One board of a kind and what is cut from it, as counts of sizes: (size index, count), the greatest size first.</summary>
internal sealed class CuttingPattern
{
    internal CuttingPattern(int kind, int[] sizes, int[] counts) => (Kind, Sizes, Counts) = (kind, sizes, counts);

    internal int Kind { get; }

    internal int[] Sizes { get; }

    internal int[] Counts { get; }

    /// <summary>The row whose surplus or slack this stands for, where it is no pattern at all.</summary>
    internal int Surplus { get; set; }

    internal int Pieces
    {
        get
        {
            int pieces = 0;
            foreach (int count in Counts)
            {
                pieces += count;
            }

            return pieces;
        }
    }

    internal static CuttingPattern Of(int kind, int[] counts)
    {
        int different = 0;
        foreach (int count in counts)
        {
            different += count > 0 ? 1 : 0;
        }

        int[] sizes = new int[different], own = new int[different];
        for (int i = 0, at = 0; i < counts.Length; i++)
        {
            if (counts[i] > 0)
            {
                (sizes[at], own[at++]) = (i, counts[i]);
            }
        }

        return new CuttingPattern(kind, sizes, own);
    }

    internal bool Fits(int[] demand)
    {
        for (int i = 0; i < Sizes.Length; i++)
        {
            if (demand[Sizes[i]] < Counts[i])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Half of what this and another board of the kind hold; null where that is not whole, or the kind is another.</summary>
    internal CuttingPattern? Half(CuttingPattern other)
    {
        if (Kind != other.Kind)
        {
            return null;
        }

        List<int> sizes = [], counts = [];
        for (int i = 0, k = 0; i < Sizes.Length || k < other.Sizes.Length;)
        {
            int size = i == Sizes.Length ? other.Sizes[k] : k == other.Sizes.Length ? Sizes[i] : Math.Min(Sizes[i], other.Sizes[k]);
            int count = (i < Sizes.Length && Sizes[i] == size ? Counts[i++] : 0) + (k < other.Sizes.Length && other.Sizes[k] == size ? other.Counts[k++] : 0);
            if (count % 2 != 0)
            {
                return null;
            }

            sizes.Add(size);
            counts.Add(count / 2);
        }

        return new CuttingPattern(Kind, [.. sizes], [.. counts]);
    }

    /// <summary>The kind, and the sizes of which it holds an odd number: two patterns make halves where theirs are the same.</summary>
    internal string OddKey()
    {
        char[] key = new char[1 + Sizes.Length];
        key[0] = (char)Kind;
        int length = 1;
        for (int i = 0; i < Sizes.Length; i++)
        {
            if (Counts[i] % 2 != 0)
            {
                key[length++] = (char)Sizes[i];
            }
        }

        return new string(key, 0, length);
    }

    internal int TimesIn(int[] demand, int[] boards)
    {
        int times = boards[Kind];
        for (int i = 0; i < Sizes.Length; i++)
        {
            times = Math.Min(times, demand[Sizes[i]] / Counts[i]);
        }

        return times;
    }

    internal long Length(long[] lengths)
    {
        long length = 0;
        for (int i = 0; i < Sizes.Length; i++)
        {
            length += Counts[i] * lengths[Sizes[i]];
        }

        return length;
    }

    internal void TakeFrom(int[] demand)
    {
        for (int i = 0; i < Sizes.Length; i++)
        {
            demand[Sizes[i]] -= Counts[i];
        }
    }

    internal void AddTo(int[] demand)
    {
        for (int i = 0; i < Sizes.Length; i++)
        {
            demand[Sizes[i]] += Counts[i];
        }
    }

    /// <summary>Equal for patterns that are cut alike from boards of one kind.</summary>
    internal string Key()
    {
        char[] key = new char[1 + (2 * Sizes.Length)];
        key[0] = (char)Kind;
        for (int i = 0; i < Sizes.Length; i++)
        {
            key[1 + (2 * i)] = (char)Sizes[i];
            key[2 + (2 * i)] = (char)Counts[i];
        }

        return new string(key);
    }

    /// <summary>One order of patterns for every machine: by kind, then by what is cut.</summary>
    internal static int Compare(CuttingPattern left, CuttingPattern right)
    {
        int order = left.Kind.CompareTo(right.Kind);
        for (int i = 0; order == 0 && i < left.Sizes.Length && i < right.Sizes.Length; i++)
        {
            order = left.Sizes[i].CompareTo(right.Sizes[i]);
            order = order != 0 ? order : right.Counts[i].CompareTo(left.Counts[i]);
        }

        return order != 0 ? order : left.Sizes.Length.CompareTo(right.Sizes.Length);
    }
}

/// <summary>
/// A value for each part, and the most value that one board of each kind can hold. Whatever is cut, the boards taken must hold the
/// value of all parts: sum over kinds (boards x most) is at least sum over sizes (demand x value). Every lower bound rests on these.
/// </summary>
internal sealed class PartValues
{
    internal PartValues(long[] values, long[] most, int[] demand)
    {
        (Values, Most) = (values, most);
        for (int i = 0; i < values.Length; i++)
        {
            Needed += values[i] * demand[i];
        }
    }

    /// <summary>Where the parts are not settled: what is needed at least, whichever are cut.</summary>
    internal PartValues(long[] values, long[] most, long needed) => (Values, Most, Needed) = (values, most, needed);

    internal long[] Values { get; }

    internal long[] Most { get; }

    internal long Needed { get; }
}

/// <summary>Counts work, so that the same input stops at the same place on every machine.</summary>
internal sealed class CuttingEffort
{
    private readonly System.Threading.CancellationToken _cancellation;
    private readonly IProgress<double>? _progress;
    private readonly long _all;
    private long _nextLook = Look;
    private bool _isOver;

    private const long Look = 20_000;

    internal CuttingEffort(long all, IProgress<double>? progress, System.Threading.CancellationToken cancellation) => (_all, _progress, _cancellation) = (all, progress, cancellation);

    internal long Used { get; private set; }

    internal bool IsSpent => _isOver || Used >= _all;

    internal long Left => _isOver ? 0 : Math.Max(0, _all - Used);

    /// <summary>Spends what a step takes, if so much is left; else the search is over: nothing is spent beyond the effort.</summary>
    internal bool TrySpend(long nodes)
    {
        if (nodes > Left)
        {
            End();
            return false;
        }

        Spend(nodes);
        return true;
    }

    /// <summary>What is left does not do for the next step.</summary>
    internal void End() => _isOver = true;

    internal void Spend(long nodes)
    {
        Used += nodes;
        if (Used >= _nextLook)
        {
            _nextLook = Used + Look;
            _cancellation.ThrowIfCancellationRequested();
            _progress?.Report(Math.Min(1, Used / (double)_all));
        }
    }
}
