using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// All rectangles on a given number of sheets of one size, where little may be wasted: of the <see cref="SheetBlocks"/> that all but fill a
/// sheet so many are chosen, with no rectangle in two of them, that the rest goes on the last sheet. A block is built from pairs, so cuts
/// from edge to edge take it apart. More and more waste is allowed until there are too many blocks.
/// </summary>
internal sealed class SheetBlockSearch
{
    /// <summary>Waste that a block may have, as a part of it: at first, by how much more each time, and at most.</summary>
    private const double FirstShare = 0.003, ShareStep = 1.35, MostShare = 0.06;

    /// <summary>Blocks at most, for all sheets and for the last one.</summary>
    private const int MostBlocks = 30_000, MostLastBlocks = 2000;

    /// <summary>Blocks put on sheets before more waste is allowed.</summary>
    private const int MostChoices = 100_000;

    private const int TightTries = 10;

    /// <summary>What the tables for the last sheet take, in blocks looked at.</summary>
    private const int LastSteps = 500;

    private readonly SheetKinds _kinds;
    private readonly PieceFields _fields;
    private readonly long _width, _height;
    private readonly int _sheets;
    private readonly double _sheetArea, _rounding, _slack;
    private readonly CuttingEffort _effort;
    private readonly SheetTightSearch? _tight;
    private readonly PieceCounts _bias;
    private readonly int[] _order;
    private readonly HashSet<PieceCounts> _tried = [];
    private readonly List<int> _chosen = [];
    private List<int>[] _full = [];
    private SheetBlocks _blocks = null!;
    private double _share = FirstShare;
    private long _until;
    private int _choices;

    internal SheetBlockSearch(SheetKinds kinds, long width, long height, int sheets, bool sawn, CuttingEffort effort)
    {
        (_kinds, _fields, _width, _height, _sheets, _effort) = (kinds, new PieceFields(kinds.Count), width, height, sheets, effort);
        _sheetArea = (double)width * height;

        // Areas in steps may be too large to be exact.
        _rounding = 1e-12 * _sheetArea;
        _slack = (_sheetArea + _rounding) * sheets;
        for (int kind = 0; kind < kinds.Kinds; kind++)
        {
            _slack -= kinds.Count[kind] * kinds.Area[kind];
        }

        // For the last sheet alone, where it need not come apart by straight cuts.
        _tight = sawn ? null : new SheetTightSearch(kinds, width, height, 1, effort);
        _order = SheetKinds.By(kinds.Area);
        if (_fields.Go)
        {
            _bias = _fields.Bias(kinds.Count);
        }
    }

    /// <summary>Whether nothing is left to look at.</summary>
    internal bool IsThrough => !_fields.Go || _slack < 0 || _share > MostShare;

    /// <summary>A layout; null where none is found until so much effort is used.</summary>
    internal List<FilledSheet>? Find(long until)
    {
        _until = until;
        for (; !IsThrough && _effort.Used < until; _share *= ShareStep)
        {
            _blocks = new SheetBlocks(_kinds, _fields, _kinds.Count, _width, _height, _share, _slack);
            bool isBuilt = _blocks.Build(MostBlocks, _effort, until);
            if (!isBuilt && _blocks.Count <= MostBlocks)
            {
                return null;
            }

            SortFull();
            _choices = 0;
            if (Choose(_sheets - 1, default, default, 0, _slack) is { } found)
            {
                return found;
            }

            // Broken off: again in a longer turn.
            if (_effort.Used >= until)
            {
                return null;
            }

            if (!isBuilt)
            {
                _share = double.MaxValue;
            }
        }

        return null;
    }

    /// <summary>For each kind the blocks with it that fill a sheet but for what may be wasted, the fullest first, each set of rectangles once.</summary>
    private void SortFull()
    {
        _full = new List<int>[_kinds.Kinds];
        for (int kind = 0; kind < _full.Length; kind++)
        {
            _full[kind] = [];
        }

        HashSet<PieceCounts> known = [];
        double[] area = new double[_blocks.Count];
        for (int block = 0; block < area.Length; block++)
        {
            area[block] = _blocks[block].Area;
        }

        foreach (int block in SheetKinds.By(area))
        {
            if (_sheetArea - area[block] > _slack)
            {
                break;
            }

            if (!known.Add(_blocks[block].Pieces))
            {
                continue;
            }

            for (int kind = 0; kind < _full.Length; kind++)
            {
                if (_fields.Count(_blocks[block].Pieces, kind) > 0)
                {
                    _full[kind].Add(block);
                }
            }
        }
    }

    /// <summary>The largest rectangle that has no place yet: in one of the full blocks, or on the last sheet.</summary>
    private List<FilledSheet>? Choose(int sheets, PieceCounts placed, PieceCounts aside, double asideArea, double slack)
    {
        if (sheets == 0)
        {
            return FillLast(placed);
        }

        PieceCounts gone = placed + aside;
        int at = 0;
        while (at < _order.Length && _fields.Count(gone, _order[at]) == _kinds.Count[_order[at]])
        {
            at++;
        }

        // All that is left fits on the last sheet: a sheet less than thought of.
        if (at == _order.Length)
        {
            return FillLast(placed);
        }

        int kind = _order[at];
        _effort.Spend(1 + _full[kind].Count);
        foreach (int block in _full[kind])
        {
            double waste = _sheetArea - _blocks[block].Area;
            if (waste > slack || !_fields.Fit(gone, _blocks[block].Pieces, _bias))
            {
                continue;
            }

            if (_effort.Used >= _until || ++_choices > MostChoices)
            {
                return null;
            }

            _chosen.Add(block);
            if (Choose(sheets - 1, placed + _blocks[block].Pieces, aside, asideArea, slack - waste) is { } found)
            {
                return found;
            }

            _chosen.RemoveAt(_chosen.Count - 1);
        }

        return asideArea + _kinds.Area[kind] <= _sheetArea && _effort.Used < _until && _choices <= MostChoices
            ? Choose(sheets, placed, aside + _fields.One(kind), asideArea + _kinds.Area[kind], slack)
            : null;
    }

    private List<FilledSheet>? FillLast(PieceCounts placed)
    {
        if (_tried.Contains(placed))
        {
            return null;
        }

        // All on sheets already: one fewer than was sought.
        if (placed.Equals(_fields.Of(_kinds.Count)))
        {
            return _chosen.ConvertAll(_blocks.Lay);
        }

        int[] pool = (int[])_kinds.Count.Clone();
        double area = 0;
        for (int kind = 0; kind < pool.Length; kind++)
        {
            pool[kind] -= _fields.Count(placed, kind);
            area += pool[kind] * _kinds.Area[kind];
        }

        FilledSheet? last = LastOfBlocks(pool, area) ?? _tight?.FillOne(pool, _sheetArea - area + _rounding, TightTries, _until);
        if (last is not null)
        {
            return [.. _chosen.ConvertAll(_blocks.Lay), last];
        }

        if (_effort.Used < _until)
        {
            _tried.Add(placed);
        }

        return null;
    }

    private FilledSheet? LastOfBlocks(int[] pool, double area)
    {
        double waste = _sheetArea - area + _rounding;
        PieceCounts all = _fields.Of(pool);
        for (int times = 1; times <= 3; times += 2)
        {
            _effort.Spend(LastSteps);
            SheetBlocks blocks = new(_kinds, _fields, pool, _width, _height, 1.5 * times * waste / _sheetArea, waste);
            blocks.Build(MostLastBlocks, _effort, _until);
            for (int block = 0; block < blocks.Count; block++)
            {
                if (blocks[block].Pieces.Equals(all))
                {
                    return blocks.Lay(block);
                }
            }
        }

        return null;
    }
}
