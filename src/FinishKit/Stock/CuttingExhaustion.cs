using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// Every way of cutting the parts from given boards, as far as it matters: the greatest part left must be on some board; a board that
/// holds another part is not left with room for it; and boards may waste no more value than they have over, by any set of part values.
/// </summary>
internal sealed class CuttingExhaustion
{
    private const int MostWays = 20_000;
    private const int MostMemory = 200_000;

    private readonly CuttingProblem _problem;
    private readonly IReadOnlyList<PartValues> _values;
    private readonly CuttingEffort _effort;
    private readonly int[] _demand, _boards;
    private readonly long[] _over;
    private readonly double[][] _ratios;
    private readonly HashSet<string> _failed = new(StringComparer.Ordinal);
    private readonly List<CuttingPattern> _taken = [];
    private long _limit;

    internal CuttingExhaustion(CuttingProblem problem, int[] boards, IReadOnlyList<PartValues> values, CuttingEffort effort)
    {
        (_problem, _values, _effort) = (problem, values, effort);
        (_demand, _boards) = ((int[])problem.Demand.Clone(), (int[])boards.Clone());
        _over = new long[values.Count];
        _ratios = new double[values.Count][];
        for (int k = 0; k < values.Count; k++)
        {
            _over[k] = -values[k].Needed;
            for (int kind = 0; kind < boards.Length; kind++)
            {
                _over[k] += boards[kind] * values[k].Most[kind];
            }

            // The most value per length of this size and smaller ones.
            _ratios[k] = new double[problem.Sizes.Length + 1];
            for (int size = problem.Sizes.Length - 1; size >= 0; size--)
            {
                _ratios[k][size] = Math.Max(_ratios[k][size + 1], (double)values[k].Values[size] / problem.Sizes[size]);
            }
        }
    }

    internal List<CuttingPattern>? Plan { get; private set; }

    /// <summary>True: found. False: there is none. Null: not known within the limit.</summary>
    internal bool? Search(long limit)
    {
        _limit = limit;
        foreach (long over in _over)
        {
            if (over < 0)
            {
                return false;
            }
        }

        return Place();
    }

    private bool? Place()
    {
        int first = 0;
        while (first < _demand.Length && _demand[first] == 0)
        {
            first++;
        }

        if (first == _demand.Length)
        {
            Plan = [.. _taken];
            return true;
        }

        if (_limit <= 0 || _effort.IsSpent)
        {
            return null;
        }

        string key = Key();
        if (_failed.Contains(key))
        {
            return false;
        }

        bool isWhole = true;
        List<(CuttingPattern Pattern, long Lost)> ways = [];
        for (int kind = 0; kind < _boards.Length; kind++)
        {
            if (_boards[kind] > 0 && _problem.Capacity[kind] >= _problem.Sizes[first])
            {
                isWhole &= AddWays(kind, first, ways);
            }
        }

        ways.Sort(static (left, right) => left.Lost != right.Lost ? left.Lost.CompareTo(right.Lost) : CuttingPattern.Compare(left.Pattern, right.Pattern));
        foreach ((CuttingPattern pattern, long _) in ways)
        {
            Move(pattern, 1);
            _taken.Add(pattern);
            bool? found = Place();
            if (found == true)
            {
                return true;
            }

            _taken.RemoveAt(_taken.Count - 1);
            Move(pattern, -1);
            isWhole &= found == false;
            if (found is null && (_limit <= 0 || _effort.IsSpent))
            {
                return null;
            }
        }

        if (isWhole && _failed.Count < MostMemory)
        {
            _failed.Add(key);
        }

        return isWhole ? false : null;
    }

    private string Key()
    {
        char[] key = new char[_demand.Length + _boards.Length];
        for (int i = 0; i < _demand.Length; i++)
        {
            key[i] = (char)_demand[i];
        }

        for (int i = 0; i < _boards.Length; i++)
        {
            key[_demand.Length + i] = (char)_boards[i];
        }

        return new string(key);
    }

    private void Move(CuttingPattern pattern, int times)
    {
        _boards[pattern.Kind] -= times;
        for (int i = 0; i < pattern.Sizes.Length; i++)
        {
            _demand[pattern.Sizes[i]] -= times * pattern.Counts[i];
        }

        for (int k = 0; k < _values.Count; k++)
        {
            _over[k] -= times * Lost(pattern, k);
        }
    }

    private long Lost(CuttingPattern pattern, int k)
    {
        long lost = _values[k].Most[pattern.Kind];
        for (int i = 0; i < pattern.Sizes.Length; i++)
        {
            lost -= pattern.Counts[i] * _values[k].Values[pattern.Sizes[i]];
        }

        return lost;
    }

    /// <summary>False where there are more ways than are listed.</summary>
    private bool AddWays(int kind, int first, List<(CuttingPattern Pattern, long Lost)> ways)
    {
        int[] counts = new int[_demand.Length];
        long[] lacking = new long[_values.Count];
        for (int k = 0; k < lacking.Length; k++)
        {
            // What a pattern must hold at least.
            lacking[k] = _values[k].Most[kind] - _over[k];
        }

        int before = ways.Count;
        return Add(first, _problem.Capacity[kind]);

        bool Add(int size, long room)
        {
            if (_limit <= 0 || !_effort.TrySpend(1))
            {
                return false;
            }

            _limit--;
            while (size < counts.Length && _demand[size] == 0)
            {
                size++;
            }

            for (int k = 0; k < lacking.Length; k++)
            {
                if (lacking[k] > 0 && lacking[k] > (long)(room * _ratios[k][size]) + 1)
                {
                    return true;
                }
            }

            if (size == counts.Length)
            {
                for (int i = first; i < counts.Length; i++)
                {
                    if (_demand[i] > counts[i] && _problem.Sizes[i] <= room)
                    {
                        return true;
                    }
                }

                for (int k = 0; k < lacking.Length; k++)
                {
                    if (lacking[k] > 0)
                    {
                        return true;
                    }
                }

                if (ways.Count - before >= MostWays)
                {
                    return false;
                }

                CuttingPattern pattern = CuttingPattern.Of(kind, counts);
                ways.Add((pattern, Lost(pattern, 0)));
                return true;
            }

            int most = (int)Math.Min(_demand[size], room / _problem.Sizes[size]);
            bool isWhole = true;
            for (int count = most; count >= (size == first ? 1 : 0) && isWhole; count--)
            {
                counts[size] = count;
                for (int k = 0; k < lacking.Length; k++)
                {
                    lacking[k] -= count * _values[k].Values[size];
                }

                isWhole = Add(size + 1, room - (count * _problem.Sizes[size]));
                for (int k = 0; k < lacking.Length; k++)
                {
                    lacking[k] += count * _values[k].Values[size];
                }
            }

            counts[size] = 0;
            return isWhole;
        }
    }
}
