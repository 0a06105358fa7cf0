using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>Plans made board by board, without looking back: quick, and often already the best.</summary>
internal sealed class BoardFilling
{
    private const int MostFillNodes = 600;
    private const int LeastFillNodes = 60;

    /// <summary>Of boards on hand only the shortest few that do are looked at for a part.</summary>
    private const int MostOnHand = 10;

    private readonly CuttingProblem _problem;
    private readonly CuttingEffort _effort;
    private readonly int[] _counts, _best;
    private readonly int[] _shortestFirst;
    private readonly int _mostNodes;
    private readonly long _fillNodes;

    internal BoardFilling(CuttingProblem problem, CuttingEffort effort)
    {
        (_problem, _effort) = (problem, effort);
        _counts = new int[problem.Sizes.Length];
        _best = new int[problem.Sizes.Length];

        _shortestFirst = new int[problem.Kinds];
        for (int kind = 0; kind < problem.Kinds; kind++)
        {
            _shortestFirst[kind] = kind;
        }

        Array.Sort(_shortestFirst, (left, right) => problem.Capacity[left] != problem.Capacity[right] ? problem.Capacity[left].CompareTo(problem.Capacity[right]) : left.CompareTo(right));

        // So much for a board, whatever the kinds that are tried for it.
        _mostNodes = Math.Max(LeastFillNodes, MostFillNodes / problem.Kinds);

        // The last way down of a board's filling may go by every size once more.
        int onHand = Array.FindAll(problem.Price, static price => price == 0).Length;
        _fillNodes = (problem.Kinds - onHand + Math.Min(onHand, MostOnHand)) * (_mostNodes + (long)problem.Sizes.Length + (problem.Sizes.Length / 16) + 1);
    }

    /// <summary>The greatest part first, each into the board that it fills most; null where the boards are too few, or the effort for it.</summary>
    /// <param name="demand">The parts.</param>
    /// <param name="boards">The boards.</param>
    /// <param name="isLazy">Whether a board is begun only where no begun one has room; else wherever a whole one is filled more.</param>
    internal List<CuttingPattern>? BestFit(int[] demand, int[] boards, bool isLazy)
    {
        List<CuttingPattern> plan = [];
        return Fit((int[])demand.Clone(), (int[])boards.Clone(), isLazy, true, _effort.Left, plan) ? plan : null;
    }

    /// <summary>Nodes that <see cref="FillOneByOne"/> takes at most.</summary>
    internal long MostNodes => _problem.Pieces * _fillNodes;

    /// <summary>The plan that is made whatever the effort: as by <see cref="BestFit"/>. What no board is left for stays in <paramref name="rest"/>.</summary>
    internal List<CuttingPattern> FirstPlan(int[] demand, int[] boards, out int[] rest)
    {
        rest = (int[])demand.Clone();
        List<CuttingPattern> plan = [];
        Fit(rest, (int[])boards.Clone(), true, false, long.MaxValue, plan);
        return plan;
    }

    /// <summary>
    /// Board by board: the greatest part that is left, with what fills its board best. The kind is the one that costs least for the
    /// length it holds then, or of boards bought already the one that wastes least. Where the effort runs out the rest is laid by
    /// <see cref="BestFit"/>, for which enough is kept back. What no board is left for, or no effort, stays in <paramref name="rest"/>.
    /// </summary>
    /// <param name="demand">The parts.</param>
    /// <param name="boards">The boards.</param>
    /// <param name="byPrice">Whether the kind is chosen by price.</param>
    /// <param name="rest">What is not cut.</param>
    /// <param name="isFirst">Whether there is no other plan, so that it is made whatever the effort.</param>
    internal List<CuttingPattern> FillOneByOne(int[] demand, int[] boards, bool byPrice, out int[] rest, bool isFirst = false)
    {
        rest = (int[])demand.Clone();
        int[] left = (int[])boards.Clone();
        List<CuttingPattern> plan = [];
        long pieces = 0;
        foreach (int count in rest)
        {
            pieces += count;
        }

        for (int size = 0; size < rest.Length; size++)
        {
            while (rest[size] > 0)
            {
                if (_effort.Left < _problem.FitNodes(pieces) + _fillNodes)
                {
                    Fit(rest, left, true, false, isFirst ? long.MaxValue : _effort.Left, plan);
                    return plan;
                }

                CuttingPattern? best = null;
                double least = double.PositiveInfinity;
                int onHand = 0;
                foreach (int kind in _shortestFirst)
                {
                    if (left[kind] == 0 || _problem.Capacity[kind] < _problem.Sizes[size] || (_problem.Price[kind] == 0 && ++onHand > MostOnHand))
                    {
                        continue;
                    }

                    long filled = Fill(rest, size, _problem.Capacity[kind]);
                    double price = (double)_problem.Price[kind] / _problem.Pack[kind];
                    double measure = byPrice && price > 0 ? 1 + (price / filled) : (_problem.Capacity[kind] - filled) / (double)_problem.Capacity[kind];
                    if (measure < least)
                    {
                        least = measure;
                        best = CuttingPattern.Of(kind, _best);
                    }
                }

                if (best is null)
                {
                    // Nor will there be a board for the next of it.
                    pieces -= rest[size];
                    break;
                }

                left[best.Kind]--;
                plan.Add(best);
                pieces -= best.Pieces;
                best.TakeFrom(rest);
            }
        }

        return plan;
    }

    /// <summary>Takes parts from <paramref name="rest"/> and boards from <paramref name="left"/> into the plan; false where parts stay.</summary>
    private bool Fit(int[] rest, int[] left, bool isLazy, bool isWhole, long mostSteps, List<CuttingPattern> plan)
    {
        // Begun boards in order of their room; of equal ones the one begun first.
        List<(long Room, int Board)> begun = [];
        List<int> kinds = [];
        List<int[]> counts = [];
        long steps = 0;
        bool isAll = true, isOver = false;
        for (int size = 0; size < rest.Length && !isOver; size++)
        {
            long length = _problem.Sizes[size];
            while (rest[size] > 0)
            {
                isOver = steps + 8 + left.Length + ((begun.Count + 1) / 32) > mostSteps;
                int at = begun.BinarySearch((length, -1));
                at = at < 0 ? ~at : at;
                bool fits = at < begun.Count;
                int kind = -1;
                for (int other = 0; other < left.Length && !(fits && isLazy); other++)
                {
                    if (left[other] > 0 && _problem.Capacity[other] >= length && (!fits || _problem.Capacity[other] < begun[at].Room)
                        && (kind < 0 || _problem.Capacity[other] < _problem.Capacity[kind]))
                    {
                        kind = other;
                    }
                }

                if (isOver || (!fits && kind < 0))
                {
                    isAll = false;
                    break;
                }

                long room;
                int board;
                if (kind >= 0)
                {
                    left[kind]--;
                    (room, board) = (_problem.Capacity[kind], kinds.Count);
                    kinds.Add(kind);
                    counts.Add(new int[rest.Length]);
                }
                else
                {
                    (room, board) = begun[at];
                    begun.RemoveAt(at);
                }

                rest[size]--;
                counts[board][size]++;
                int next = begun.BinarySearch((room - length, board));
                begun.Insert(~next, (room - length, board));
                steps += 8 + left.Length + (begun.Count / 32);
            }

            if (!isAll && isWhole)
            {
                break;
            }
        }

        _effort.Spend(steps);
        if (isOver)
        {
            _effort.End();
        }

        if (!isAll && isWhole)
        {
            return false;
        }

        for (int board = 0; board < kinds.Count; board++)
        {
            plan.Add(CuttingPattern.Of(kinds[board], counts[board]));
        }

        return isAll;
    }

    /// <summary>Moves what each bought board holds to the cheapest kind that holds it, as far as there are boards.</summary>
    internal void Cheapen(List<CuttingPattern> plan)
    {
        int[] used = new int[_problem.Kinds];
        foreach (CuttingPattern pattern in plan)
        {
            used[pattern.Kind]++;
        }

        for (int i = 0; i < plan.Count; i++)
        {
            CuttingPattern pattern = plan[i];
            long length = 0;
            for (int k = 0; k < pattern.Sizes.Length; k++)
            {
                length += pattern.Counts[k] * _problem.Sizes[pattern.Sizes[k]];
            }

            int best = pattern.Kind;
            for (int kind = 0; kind < _problem.Kinds; kind++)
            {
                if (_problem.Capacity[kind] >= length && used[kind] < _problem.MostBoards(kind)
                    && _problem.Price[kind] * _problem.Pack[best] < _problem.Price[best] * _problem.Pack[kind])
                {
                    best = kind;
                }
            }

            if (best != pattern.Kind)
            {
                used[pattern.Kind]--;
                used[best]++;
                plan[i] = new CuttingPattern(best, pattern.Sizes, pattern.Counts);
            }
        }
    }

    /// <summary>Length of the fullest filling found with one part at least of the given size and none greater; its counts are in <see cref="_best"/>.</summary>
    private long Fill(int[] rest, int first, long capacity)
    {
        Array.Clear(_counts, 0, _counts.Length);
        Array.Clear(_best, 0, _best.Length);
        long room = capacity - _problem.Sizes[first], least = long.MaxValue;
        _counts[first] = 1;
        int nodes = 0, depth = first, last = rest.Length - 1;
        while (last > first && rest[last] == 0)
        {
            last--;
        }

        // Depth first, as many as fit of each size in turn.
        while (true)
        {
            for (; depth < rest.Length && room >= _problem.Sizes[last]; depth++)
            {
                nodes++;
                if (room < _problem.Sizes[depth])
                {
                    depth = FirstWithin(room, depth + 1) - 1;
                    continue;
                }

                int have = rest[depth] - (depth == first ? 1 : 0);
                if (have > 0)
                {
                    int most = (int)Math.Min(have, room / _problem.Sizes[depth]);
                    _counts[depth] += most;
                    room -= most * _problem.Sizes[depth];
                }
            }

            if (room < least)
            {
                least = room;
                Array.Copy(_counts, _best, _counts.Length);
            }

            if (least == 0 || nodes > _mostNodes)
            {
                break;
            }

            for (depth = Math.Min(depth, rest.Length) - 1; depth >= first && _counts[depth] == (depth == first ? 1 : 0); depth--)
            {
            }

            if (depth < first)
            {
                break;
            }

            _counts[depth]--;
            room += _problem.Sizes[depth];
            depth++;
        }

        _effort.Spend(nodes + (_counts.Length / 16));
        return capacity - least;
    }

    /// <summary>The greatest size from a place on that there is room for.</summary>
    private int FirstWithin(long room, int from)
    {
        int low = from, high = _problem.Sizes.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = _problem.Sizes[middle] <= room ? (low, middle) : (middle + 1, high);
        }

        return low;
    }
}
