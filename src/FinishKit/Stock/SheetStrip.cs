using System;

namespace FinishKit;

/// <summary>
/// All rectangles on one sheet of given width that is as short as can be found: for a length a little less than the best so far an order
/// is sought by which all go on, one small change after the other, kept where no less area goes on than before. A change is an exchange in
/// the order, another rule, or a kind that is tried turned first.
/// </summary>
internal sealed class SheetStrip
{
    private const int Patience = 300;

    private readonly SheetKinds _kinds;
    private readonly long _width;
    private readonly CuttingEffort _effort;
    private readonly SheetFilling _filling;
    private RepeatableChance _chance = new(0x9E3779B97F4A7C15);
    private long _steps;

    internal SheetStrip(SheetKinds kinds, long width, CuttingEffort effort)
    {
        (_kinds, _width, _effort) = (kinds, width, effort);
        _filling = new SheetFilling(kinds, kinds.Pieces);
        Least = Bound();
    }

    internal FilledSheet Best { get; private set; } = new();

    /// <summary>How long the sheet of the best plan is.</summary>
    internal long Length { get; private set; } = long.MaxValue;

    /// <summary>No plan is shorter.</summary>
    internal long Least { get; }

    internal void Run()
    {
        int[][] orders = _kinds.Orders();
        int[]? first = null;
        int firstRule = 0;
        foreach (int[] order in orders)
        {
            for (int rule = 0; rule < 3; rule++)
            {
                FilledSheet sheet = Fill(order, rule, long.MaxValue / 4);
                long length = Reach(sheet);
                if (length < Length)
                {
                    (Best, Length, first, firstRule) = (sheet, length, order, rule);
                }

                if (Length <= Least || _effort.IsSpent)
                {
                    return;
                }
            }
        }

        Shorten(first!, firstRule, orders);
    }

    private void Shorten(int[] order, int rule, int[][] orders)
    {
        int[] current = (int[])order.Clone(), next = new int[current.Length];
        long step = Math.Max(1, (Length - Least) / 4);
        double area = 0;
        int failed = 0;
        int[] turning = Array.FindAll(order, kind => _kinds.Turns[kind]);
        bool[] turns = new bool[_kinds.Kinds], nextTurns = new bool[_kinds.Kinds];
        while (!_effort.IsSpent)
        {
            long target = Math.Max(Least, Length - step);
            Array.Copy(current, next, next.Length);
            int nextRule = _chance.Below(8) == 0 ? _chance.Below(3) : rule;
            int swaps = 1 + _chance.Below(3);
            for (int i = 0; i < swaps && next.Length > 1; i++)
            {
                int a = _chance.Below(next.Length), b = _chance.Below(next.Length);
                (next[a], next[b]) = (next[b], next[a]);
            }

            Array.Copy(turns, nextTurns, turns.Length);
            if (turning.Length > 0 && _chance.Below(2) == 0)
            {
                int kind = turning[_chance.Below(turning.Length)];
                nextTurns[kind] = !nextTurns[kind];
            }

            _filling.TurnFirst = nextTurns;
            FilledSheet sheet = Fill(next, nextRule, target);
            if (sheet.Places.Count == _kinds.Pieces)
            {
                (Best, Length, area, failed) = (sheet, Reach(sheet), 0, 0);
                if (Length <= Least)
                {
                    return;
                }

                (current, next, rule, turns, nextTurns) = (next, current, nextRule, nextTurns, turns);
                step = Math.Max(1, Math.Min(step, (Length - Least) / 4));
            }
            else if (sheet.Area >= area)
            {
                failed = sheet.Area > area ? 0 : failed + 1;
                (current, next, rule, area, turns, nextTurns) = (next, current, nextRule, sheet.Area, nextTurns, turns);
            }
            else
            {
                failed++;
            }

            if (failed > Patience)
            {
                // A smaller step, or from another beginning.
                (failed, area) = (0, 0);
                step = Math.Max(1, step / 2);
                if (_chance.Below(2) == 0)
                {
                    current = (int[])orders[_chance.Below(orders.Length)].Clone();
                    rule = _chance.Below(3);
                    Array.Clear(turns, 0, turns.Length);
                }
            }
        }
    }

    private FilledSheet Fill(int[] order, int rule, long height)
    {
        int[] pool = (int[])_kinds.Count.Clone();
        FilledSheet sheet = _filling.Fill(pool, order, (FillRule)rule, _width, height);
        _effort.Spend(_filling.Steps - _steps + 1);
        _steps = _filling.Steps;
        return sheet;
    }

    private long Reach(FilledSheet sheet)
    {
        long reach = 0;
        foreach (SheetPlace place in sheet.Places)
        {
            reach = Math.Max(reach, place.Y + _kinds.HeightOf(place));
        }

        return reach;
    }

    /// <summary>The longest piece, and what the pieces ask for by any dual feasible value of their widths.</summary>
    private long Bound()
    {
        long longest = 0;
        for (int kind = 0; kind < _kinds.Kinds; kind++)
        {
            long straight = _kinds.Width[kind] <= _width ? _kinds.Height[kind] : long.MaxValue;
            long turned = _kinds.Turns[kind] && _kinds.Height[kind] <= _width ? _kinds.Width[kind] : long.MaxValue;
            longest = Math.Max(longest, Math.Min(straight, turned));
        }

        return Math.Max(longest, (long)Math.Ceiling(SheetBounds.LeastLength(_kinds, _width) - 1e-6));
    }
}
