using System;

namespace FinishKit;

/// <summary>
/// The pattern of greatest value for a board: a bounded knapsack, by branch and bound over sizes in order of value per length, and by
/// dynamic programming where that takes long and the board is short in steps.
/// </summary>
internal sealed class PatternPricing
{
    private const int MostNodes = 20_000;
    private const long MostCells = 40_000_000;

    private readonly long[] _sizes;
    private readonly CuttingEffort _effort;
    private readonly long _mostNodes;
    private readonly int[] _order, _taken, _best, _worthiest;
    private readonly double[] _ratio;
    private long[] _values = [];
    private int[] _demand = [];
    private int _count;
    private long _shortest;

    // Most nodes: of a search to the end, where a table would be too large.
    internal PatternPricing(long[] sizes, CuttingEffort effort, long mostNodes = long.MaxValue)
    {
        (_sizes, _effort, _mostNodes) = (sizes, effort, mostNodes);
        _order = new int[sizes.Length];
        _taken = new int[sizes.Length];
        _best = new int[sizes.Length];
        _ratio = new double[sizes.Length];
        _worthiest = new int[sizes.Length];
    }

    /// <summary>Sets what each size is worth and how many there are.</summary>
    internal void Prepare(long[] values, int[] demand)
    {
        (_values, _demand, _count) = (values, demand, 0);
        for (int i = 0; i < _sizes.Length; i++)
        {
            if (values[i] > 0 && demand[i] > 0)
            {
                _order[_count] = i;
                _ratio[_count++] = -((double)values[i] / _sizes[i]);
            }
        }

        // Equal ratios by index: the order must not hang on the sort's habits.
        for (int i = 1; i < _count; i++)
        {
            int size = _order[i];
            double ratio = _ratio[i];
            int at = i - 1;
            for (; at >= 0 && _ratio[at] > ratio; at--)
            {
                (_order[at + 1], _ratio[at + 1]) = (_order[at], _ratio[at]);
            }

            (_order[at + 1], _ratio[at + 1]) = (size, ratio);
        }

        for (int i = 0; i < _count; i++)
        {
            _ratio[i] = -_ratio[i];
        }

        // For the last part of a board: which of those no longer than a size is worth most.
        int worthiest = -1;
        for (int i = _sizes.Length - 1; i >= 0; i--)
        {
            if (values[i] > 0 && demand[i] > 0)
            {
                _shortest = worthiest < 0 ? _sizes[i] : _shortest;
                worthiest = worthiest < 0 || values[i] > values[worthiest] ? i : worthiest;
            }

            _worthiest[i] = worthiest;
        }
    }

    /// <summary>
    /// The most value above <paramref name="floor"/> and its counts by size; <paramref name="floor"/> itself and no counts where nothing is
    /// above it; null where the search was cut short: with counts where it had found some above the floor by then, without where the effort
    /// is spent.
    /// </summary>
    internal long? Best(long capacity, long floor, out int[]? counts, bool toTheEnd = true)
    {
        counts = null;
        if (_count == 0)
        {
            return Math.Max(floor, 0);
        }

        long? best = Branch(capacity, floor, MostNodes, out bool isFound);
        if (best is null && isFound && !toTheEnd)
        {
            counts = (int[])_best.Clone();
            return null;
        }

        if (best is null)
        {
            long units = 0;
            for (int i = 0; i < _count; i++)
            {
                for (int left = _demand[_order[i]], part = 1; left > 0; left -= part, part *= 2)
                {
                    units++;
                }
            }

            bool isTable = units <= MostCells / (capacity + 1) && TableNodes(units, capacity) <= _effort.Left;
            best = isTable ? Table(capacity, floor, (int)units, out isFound) : Branch(capacity, floor, _mostNodes, out isFound);
        }

        if (best is not null && isFound)
        {
            counts = (int[])_best.Clone();
        }

        return best;
    }

    private long? Branch(long capacity, long floor, long mostNodes, out bool isFound)
    {
        isFound = false;
        long best = floor, value = 0, room = capacity, nodes = 0, spent = 0;

        // One way down goes by every size at most.
        long left = _effort.Left - _count;
        if (left < 0)
        {
            _effort.End();
            return null;
        }

        Array.Clear(_taken, 0, _count);
        int depth = 0;
        while (true)
        {
            // Down: as many of each as fit, as long as the rest could still beat the best.
            bool isLast = false;
            int worth = -1;
            for (; depth < _count; depth++)
            {
                nodes++;
                if (room < 2 * _shortest)
                {
                    isLast = true;
                    break;
                }

                if (value + (long)(room * _ratio[depth]) + 1 <= best)
                {
                    break;
                }

                int size = _order[depth];
                long most = Math.Min(_demand[size], room / _sizes[size]);
                _taken[depth] = (int)most;
                value += most * _values[size];
                room -= most * _sizes[size];
            }

            if (isLast && room >= _shortest)
            {
                worth = Last(depth, room);
                value += worth >= 0 ? _values[worth] : 0;
            }

            if (value > best)
            {
                best = value;
                isFound = true;
                Array.Clear(_best, 0, _best.Length);
                for (int i = 0; i < depth; i++)
                {
                    _best[_order[i]] = _taken[i];
                }

                if (worth >= 0)
                {
                    _best[worth]++;
                }
            }

            value -= worth >= 0 ? _values[worth] : 0;
            if (nodes > mostNodes || nodes > left)
            {
                _effort.Spend(nodes - spent);
                if (nodes > left)
                {
                    _effort.End();
                }

                return null;
            }

            if (nodes - spent > 10_000)
            {
                _effort.Spend(nodes - spent);
                spent = nodes;
            }

            // Back to the last size taken: one less of it.
            for (depth--; depth >= 0 && _taken[depth] == 0; depth--)
            {
            }

            if (depth < 0)
            {
                _effort.Spend(nodes - spent);
                return best;
            }

            int last = _order[depth];
            _taken[depth]--;
            value -= _values[last];
            room += _sizes[last];
            depth++;
            if (depth < _count)
            {
                Array.Clear(_taken, depth, _count - depth);
            }
        }
    }

    /// <summary>The size worth most that there is room for once, and of which one is left beside what is taken; -1 if there is none.</summary>
    private int Last(int depth, long room)
    {
        int low = 0, high = _sizes.Length - 1;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = _sizes[middle] <= room ? (low, middle) : (middle + 1, high);
        }

        int worth = _worthiest[low];
        if (worth < 0 || Left(worth) > 0)
        {
            return worth;
        }

        worth = -1;
        for (int i = low; i < _sizes.Length; i++)
        {
            if (_values[i] > 0 && (worth < 0 || _values[i] > _values[worth]) && Left(i) > 0)
            {
                worth = i;
            }
        }

        return worth;

        int Left(int size)
        {
            int left = _demand[size];
            for (int i = 0; i < depth && left > 0; i++)
            {
                left -= _order[i] == size ? _taken[i] : 0;
            }

            return left;
        }
    }

    private static long TableNodes(long units, long capacity) => units * (capacity + 1) / 16;

    private long? Table(long capacity, long floor, int units, out bool isFound)
    {
        isFound = false;
        int width = (int)capacity + 1;
        long[] most = new long[width];
        int[] unitSize = new int[units], unitCount = new int[units];
        uint[][] taken = new uint[units][];
        int unit = 0;
        for (int i = 0; i < _count; i++)
        {
            int size = _order[i];
            for (int left = _demand[size], part = 1; left > 0; part *= 2)
            {
                int count = Math.Min(part, left);
                left -= count;
                (unitSize[unit], unitCount[unit]) = (size, count);
                long weight = count * _sizes[size], worth = count * _values[size];
                uint[] bits = taken[unit++] = new uint[(width + 31) / 32];
                if (weight > capacity)
                {
                    continue;
                }

                for (int room = (int)capacity; room >= weight; room--)
                {
                    long with = most[room - weight] + worth;
                    if (with > most[room])
                    {
                        most[room] = with;
                        bits[room >> 5] |= 1u << (room & 31);
                    }
                }
            }
        }

        _effort.Spend(TableNodes(units, capacity));
        if (most[capacity] <= floor)
        {
            return floor;
        }

        isFound = true;
        Array.Clear(_best, 0, _best.Length);
        int at = (int)capacity;
        for (int i = unit - 1; i >= 0; i--)
        {
            if ((taken[i][at >> 5] & (1u << (at & 31))) != 0)
            {
                _best[unitSize[i]] += unitCount[i];
                at -= (int)(unitCount[i] * _sizes[unitSize[i]]);
            }
        }

        return most[capacity];
    }
}
