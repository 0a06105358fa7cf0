using System;

namespace FinishKit;

/// <summary>How one filling picks among the rectangles that go into a gap.</summary>
internal enum FillRule
{
    /// <summary>The first of the order.</summary>
    Order,

    /// <summary>One that fills the gap's width or reaches a neighbour's height, then the first of the order.</summary>
    Fit,

    /// <summary>The widest that goes, then the first of the order.</summary>
    Widest,
}

/// <summary>Fills one sheet from the bottom up: always the lowest gap, there the rectangle that a rule picks.</summary>
internal sealed class SheetFilling
{
    private readonly SheetKinds _kinds;
    private readonly long[] _x, _y;
    private int _count;

    internal SheetFilling(SheetKinds kinds, int pieces)
    {
        _kinds = kinds;
        _x = new long[(2 * pieces) + 4];
        _y = new long[(2 * pieces) + 4];
    }

    /// <summary>Rectangles looked at.</summary>
    internal long Steps { get; private set; }

    /// <summary>Takes what it places out of the pool.</summary>
    internal FilledSheet Fill(int[] pool, int[] order, FillRule rule, long width, long height)
    {
        FilledSheet sheet = new();
        (_count, _x[0], _y[0], _x[1]) = (1, 0, 0, width);
        while (true)
        {
            int at = 0;
            for (int i = 1; i < _count; i++)
            {
                at = _y[i] < _y[at] ? i : at;
            }

            long floor = _y[at], room = height - floor, gap = _x[at + 1] - _x[at];
            if (room <= 0)
            {
                return sheet;
            }

            long left = at == 0 ? room : _y[at - 1] - floor, right = at == _count - 1 ? room : _y[at + 1] - floor;
            int best = -1;
            bool turned = false;
            long bestScore = -1;
            Steps += order.Length;
            foreach (int kind in order)
            {
                if (pool[kind] == 0)
                {
                    continue;
                }

                for (int turn = 0; turn < (_kinds.Turns[kind] ? 2 : 1); turn++)
                {
                    long w = turn == 0 ? _kinds.Width[kind] : _kinds.Height[kind], h = turn == 0 ? _kinds.Height[kind] : _kinds.Width[kind];
                    if (w > gap || h > room)
                    {
                        continue;
                    }

                    long score = rule switch
                    {
                        FillRule.Order => 0,
                        FillRule.Widest => w,
                        _ => (w == gap ? (h == left ? 2 : 0) + (h == right ? 2 : 0) + 3 : h == left || h == right ? 2 : 0),
                    };
                    if (score > bestScore)
                    {
                        (best, turned, bestScore) = (kind, turn == 1, score);
                    }
                }

                if (best >= 0 && rule == FillRule.Order)
                {
                    break;
                }
            }

            if (best < 0)
            {
                Raise(at, height);
                continue;
            }

            long width1 = turned ? _kinds.Height[best] : _kinds.Width[best], height1 = turned ? _kinds.Width[best] : _kinds.Height[best];
            // Against the neighbour whose height it meets, else the higher one.
            bool toLeft = height1 == left || (height1 != right && left >= right);
            long x = toLeft ? _x[at] : _x[at + 1] - width1;
            pool[best]--;
            sheet.Places.Add(new SheetPlace(best, turned, x, floor));
            sheet.Area += _kinds.Area[best];
            Place(at, x, width1, floor + height1);
        }
    }

    private void Place(int at, long x, long width, long top)
    {
        long start = _x[at], end = _x[at + 1], floor = _y[at];
        bool fillsAll = width == end - start;
        if (fillsAll)
        {
            _y[at] = top;
        }
        else
        {
            for (int i = _count; i > at; i--)
            {
                (_x[i + 1], _y[i]) = (_x[i], _y[i - 1]);
            }

            _count++;
            if (x == start)
            {
                (_x[at + 1], _y[at], _y[at + 1]) = (x + width, top, floor);
            }
            else
            {
                (_x[at + 1], _y[at], _y[at + 1]) = (x, floor, top);
                at++;
            }
        }

        Join(at);
    }

    /// <summary>A gap that nothing goes into is given up, up to its lower neighbour.</summary>
    private void Raise(int at, long height)
    {
        long left = at == 0 ? height : _y[at - 1], right = at == _count - 1 ? height : _y[at + 1];
        _y[at] = Math.Min(left, right);
        Join(at);
    }

    private void Join(int at)
    {
        if (at < _count - 1 && _y[at + 1] == _y[at])
        {
            Remove(at + 1);
        }

        if (at > 0 && _y[at - 1] == _y[at])
        {
            Remove(at);
        }
    }

    private void Remove(int at)
    {
        for (int i = at; i < _count; i++)
        {
            _x[i] = _x[i + 1];
            _y[i] = i + 1 < _count ? _y[i + 1] : 0;
        }

        _count--;
    }
}
