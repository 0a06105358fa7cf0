using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// All rectangles on a given number of sheets of one size, where little may be wasted: sheet after sheet is filled from the bottom up,
/// always the lowest gap, with a rectangle or with waste, and turned back from where more is wasted than may be. A sheet may waste half as
/// much again as its even share of what is left to waste; the last one all of it.
/// </summary>
internal sealed class SheetTightSearch
{
    /// <summary>Rectangles laid and taken up again for one sheet before its order is drawn anew.</summary>
    private const int MostNodes = 2000;

    /// <summary>Fillings of a further sheet before the one before it is given up.</summary>
    private const int Tries = 20;

    private const double Share = 1.5;

    private readonly SheetKinds _kinds;
    private readonly long _width, _height;
    private readonly int _all;
    private readonly double _slack;
    private readonly CuttingEffort _effort;
    private readonly int[] _pool;
    private readonly long[][] _x, _y;
    private readonly int[] _count;
    private readonly List<SheetPlace> _places = [];
    private readonly List<FilledSheet> _sheets = [];
    private RepeatableChance _chance = new(0xD1B54A32D192ED03);
    private int[] _order = [];
    private long _shortest, _nodes, _mostNodes, _steps;
    private double _mostWaste;
    private long _until;
    private int _left;

    internal SheetTightSearch(SheetKinds kinds, long width, long height, int sheets, CuttingEffort effort)
    {
        (_kinds, _width, _height, _all, _effort) = (kinds, width, height, sheets, effort);
        _pool = (int[])kinds.Count.Clone();
        _slack = (double)width * height * sheets * (1 + 1e-12);
        for (int kind = 0; kind < kinds.Kinds; kind++)
        {
            _slack -= kinds.Count[kind] * kinds.Area[kind];
        }

        int levels = kinds.Pieces + 1;
        _count = new int[levels];
        _x = new long[levels][];
        _y = new long[levels][];
        for (int level = 0; level < levels; level++)
        {
            // Each rectangle adds two gaps at most.
            (_x[level], _y[level]) = (new long[(2 * levels) + 2], new long[(2 * levels) + 2]);
        }
    }

    /// <summary>A layout; null where none is found until so much effort is used.</summary>
    internal List<FilledSheet>? Find(long until)
    {
        _until = until;
        while (_slack >= 0 && _effort.Used < _until)
        {
            Array.Copy(_kinds.Count, _pool, _pool.Length);
            _sheets.Clear();
            if (Fill(_all, _slack, 1))
            {
                return [.. _sheets];
            }
        }

        return null;
    }

    /// <summary>One sheet with all of a pool; null where that is not found.</summary>
    internal FilledSheet? FillOne(int[] pool, double slack, int tries, long until)
    {
        _until = until;
        Array.Copy(pool, _pool, pool.Length);
        _sheets.Clear();
        return Fill(1, slack, tries) ? _sheets[0] : null;
    }

    private bool Fill(int sheets, double slack, int tries)
    {
        for (int t = 0; t < tries && _effort.Used < _until; t++)
        {
            double waste = Dive(sheets == 1 ? slack : Math.Min(slack, Share * slack / sheets), sheets == 1);
            if (waste < 0)
            {
                continue;
            }

            FilledSheet sheet = new();
            foreach (SheetPlace place in _places)
            {
                sheet.Places.Add(place);
                sheet.Area += _kinds.Area[place.Kind];
            }

            _sheets.Add(sheet);
            if (sheets == 1 || _left == 0 || Fill(sheets - 1, slack - waste, Tries))
            {
                return true;
            }

            _sheets.RemoveAt(_sheets.Count - 1);
            foreach (SheetPlace place in sheet.Places)
            {
                _pool[place.Kind]++;
            }
        }

        return false;
    }

    /// <summary>One sheet in a new order, with waste of at most so much; what it wastes, or less than 0 where that was not found.</summary>
    private double Dive(double mostWaste, bool isLast)
    {
        (_mostWaste, _nodes, _shortest, _left) = (mostWaste, 0, long.MaxValue, 0);
        _places.Clear();
        List<int> kinds = [];
        for (int kind = 0; kind < _pool.Length; kind++)
        {
            if (_pool[kind] > 0)
            {
                kinds.Add(kind);
                _left += _pool[kind];
                _shortest = Math.Min(_shortest, Math.Min(_kinds.Width[kind], _kinds.Height[kind]));
            }
        }

        _mostNodes = Math.Min(MostNodes, (_until - _effort.Used) / (2 * Math.Max(1, kinds.Count)));

        // The larger ones first, roughly: the small ones fill what is left at the end.
        _order = [.. kinds];
        Array.Sort(Array.ConvertAll(_order, kind => -_kinds.Area[kind] * (60 + _chance.Below(181))), _order);

        (_count[0], _x[0][0], _x[0][1], _y[0][0]) = (1, 0, _width, 0);
        double waste = Place(0, 0, isLast);
        _effort.Spend(_steps + 1);
        _steps = 0;
        return waste;
    }

    private double Place(int level, double waste, bool isLast)
    {
        long[] x = _x[level], y = _y[level];
        while (true)
        {
            if (++_nodes > _mostNodes)
            {
                return -1;
            }

            int at = 0;
            for (int i = 1; i < _count[level]; i++)
            {
                at = y[i] < y[at] ? i : at;
            }

            long floor = y[at], room = _height - floor, gap = x[at + 1] - x[at];
            if (room == 0 || _left == 0)
            {
                return isLast && _left > 0 ? -1 : waste;
            }

            long left = at == 0 ? room : y[at - 1] - floor, right = at == _count[level] - 1 ? room : y[at + 1] - floor;
            bool toLeft = left >= right;
            _steps += 2 * _order.Length;

            // What fills the gap first.
            for (int pass = 0; pass < 2; pass++)
            {
                foreach (int kind in _order)
                {
                    for (int turn = 0; turn < (_pool[kind] == 0 ? 0 : _kinds.Turns[kind] ? 2 : 1); turn++)
                    {
                        long width = turn == 1 ? _kinds.Height[kind] : _kinds.Width[kind], height = turn == 1 ? _kinds.Width[kind] : _kinds.Height[kind];
                        long beside = gap - width, above = room - height;
                        if (beside < 0 || above < 0 || (beside == 0) != (pass == 0))
                        {
                            continue;
                        }

                        // What nothing goes into any more.
                        double lost = above < _shortest ? (double)above * width : 0;
                        lost += beside < _shortest ? (double)beside * Math.Min(height, toLeft ? right : left) : 0;
                        if (waste + lost > _mostWaste)
                        {
                            continue;
                        }

                        long start = toLeft ? x[at] : x[at + 1] - width;
                        _pool[kind]--;
                        _left--;
                        _places.Add(new SheetPlace(kind, turn == 1, start, floor));
                        Raise(level, at, start, width, floor + height);
                        double found = Place(level + 1, waste, isLast);
                        if (found >= 0)
                        {
                            return found;
                        }

                        _places.RemoveAt(_places.Count - 1);
                        _pool[kind]++;
                        _left++;
                        if (_nodes > _mostNodes)
                        {
                            return -1;
                        }
                    }
                }
            }

            long rise = Math.Min(left, right);
            waste += (double)rise * gap;
            if (waste > _mostWaste)
            {
                return -1;
            }

            y[at] += rise;
            Join(level);
        }
    }

    /// <summary>The gaps of the next level: those of this one, with a rectangle on one of them.</summary>
    private void Raise(int level, int at, long start, long width, long top)
    {
        long[] x = _x[level], y = _y[level], nextX = _x[level + 1], nextY = _y[level + 1];
        int count = 0;
        for (int i = 0; i < _count[level]; i++)
        {
            if (i != at)
            {
                Add(x[i], y[i]);
                continue;
            }

            if (start > x[i])
            {
                Add(x[i], y[i]);
            }

            Add(start, top);
            if (start + width < x[i + 1])
            {
                Add(start + width, y[i]);
            }
        }

        nextX[count] = _width;
        _count[level + 1] = count;

        void Add(long from, long floor)
        {
            if (count == 0 || nextY[count - 1] != floor)
            {
                (nextX[count], nextY[count]) = (from, floor);
                count++;
            }
        }
    }

    private void Join(int level)
    {
        long[] x = _x[level], y = _y[level];
        int count = 0;
        for (int i = 0; i < _count[level]; i++)
        {
            if (count == 0 || y[count - 1] != y[i])
            {
                (x[count], y[count]) = (x[i], y[i]);
                count++;
            }
        }

        x[count] = _width;
        _count[level] = count;
    }
}
