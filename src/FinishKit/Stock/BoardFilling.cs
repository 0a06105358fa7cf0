using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>Plans made board by board, without looking back: quick, and often already the best.</summary>
internal sealed class BoardFilling
{
    private const int MostFillNodes = 600;

    private readonly CuttingProblem _problem;
    private readonly CuttingEffort _effort;
    private readonly int[] _counts, _best;

    internal BoardFilling(CuttingProblem problem, CuttingEffort effort)
    {
        (_problem, _effort) = (problem, effort);
        _counts = new int[problem.Sizes.Length];
        _best = new int[problem.Sizes.Length];
    }

    /// <summary>The greatest part first, each into the board that it fills most; null where the boards are too few.</summary>
    internal List<CuttingPattern>? BestFit(int[] demand, int[] boards, int fewest = 0)
    {
        int all = 0;
        foreach (int count in boards)
        {
            all += count;
        }

        List<long> rooms = [];
        List<int> kinds = [];
        List<int[]> counts = [];
        int[] left = (int[])boards.Clone();
        int steps = 0;
        for (int size = 0; size < demand.Length; size++)
        {
            long length = _problem.Sizes[size];
            for (int piece = 0; piece < demand[size]; piece++)
            {
                int best = -1;
                for (int board = 0; board < rooms.Count; board++)
                {
                    if (rooms[board] >= length && (best < 0 || rooms[board] < rooms[best]))
                    {
                        best = board;
                    }
                }

                steps += rooms.Count + 1;
                int kind = -1;
                for (int other = 0; other < left.Length; other++)
                {
                    if (left[other] > 0 && _problem.Capacity[other] >= length && (best < 0 || _problem.Capacity[other] < rooms[best])
                        && (kind < 0 || _problem.Capacity[other] < _problem.Capacity[kind]))
                    {
                        kind = other;
                    }
                }

                if (kind >= 0 && (best < 0 || fewest == 0))
                {
                    left[kind]--;
                    best = rooms.Count;
                    rooms.Add(_problem.Capacity[kind]);
                    kinds.Add(kind);
                    counts.Add(new int[demand.Length]);
                }
                else if (best < 0)
                {
                    _effort.Spend(steps);
                    return null;
                }

                rooms[best] -= length;
                counts[best][size]++;
            }
        }

        _effort.Spend(steps);
        List<CuttingPattern> plan = [];
        for (int board = 0; board < rooms.Count; board++)
        {
            plan.Add(CuttingPattern.Of(kinds[board], counts[board]));
        }

        return plan;
    }

    /// <summary>
    /// Board by board: the greatest part that is left, with what fills its board best. The kind is the one that costs least for the
    /// length it holds then, or of boards bought already the one that wastes least. What no board is left for stays in <paramref name="rest"/>.
    /// </summary>
    internal List<CuttingPattern> FillOneByOne(int[] demand, int[] boards, bool byPrice, out int[] rest)
    {
        rest = (int[])demand.Clone();
        int[] left = (int[])boards.Clone();
        List<CuttingPattern> plan = [];
        for (int size = 0; size < rest.Length; size++)
        {
            while (rest[size] > 0)
            {
                CuttingPattern? best = null;
                double least = double.PositiveInfinity;
                for (int kind = 0; kind < left.Length; kind++)
                {
                    if (left[kind] == 0 || _problem.Capacity[kind] < _problem.Sizes[size])
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
                    break;
                }

                left[best.Kind]--;
                plan.Add(best);
                for (int i = 0; i < best.Sizes.Length; i++)
                {
                    rest[best.Sizes[i]] -= best.Counts[i];
                }
            }
        }

        return plan;
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
                if (_problem.Capacity[kind] >= length && used[kind] < _problem.MostPacks(kind) * _problem.Pack[kind]
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
                int have = rest[depth] - (depth == first ? 1 : 0);
                if (have > 0 && room >= _problem.Sizes[depth])
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

            if (least == 0 || nodes > MostFillNodes)
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

        _effort.Spend(nodes);
        return capacity - least;
    }
}
