using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>Fills one sheet so that a saw can cut it: each rectangle goes into the corner of a free one, and two cuts from edge to edge part the rest.</summary>
internal sealed class SheetSawing
{
    private readonly SheetKinds _kinds;
    private readonly List<(long X, long Y, long W, long H)> _free = [];

    internal SheetSawing(SheetKinds kinds) => _kinds = kinds;

    internal const int Styles = 24;

    /// <summary>Rectangles looked at.</summary>
    internal long Steps { get; private set; }

    /// <summary>Takes what it places out of the pool.</summary>
    /// <param name="pool">How many of each kind are left.</param>
    /// <param name="order">Kinds, the first preferred.</param>
    /// <param name="style">0 to 23: how it chooses.</param>
    /// <param name="width">Width.</param>
    /// <param name="height">Height.</param>
    internal FilledSheet Fill(int[] pool, int[] order, int style, long width, long height)
    {
        int split = style % 6, fit = style / 6 % 2;
        bool byPiece = style / 12 == 0;
        FilledSheet sheet = new();
        _free.Clear();
        _free.Add((0, 0, width, height));
        if (byPiece)
        {
            foreach (int kind in order)
            {
                while (pool[kind] > 0 && Choose(kind, fit, out int at, out bool turned))
                {
                    Put(sheet, pool, kind, turned, at, split);
                }
            }

            return sheet;
        }

        while (_free.Count > 0)
        {
            int at = _free.Count - 1;
            (long _, long _, long w, long h) = _free[at];
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
                    long pw = turn == 0 ? _kinds.Width[kind] : _kinds.Height[kind], ph = turn == 0 ? _kinds.Height[kind] : _kinds.Width[kind];
                    if (pw <= w && ph <= h)
                    {
                        long score = fit == 0 ? (pw == w ? 1 : 0) + (ph == h ? 1 : 0) : split % 2 == 0 ? ph : pw;
                        if (score > bestScore)
                        {
                            (best, turned, bestScore) = (kind, turn == 1, score);
                        }
                    }
                }
            }

            if (best < 0)
            {
                _free.RemoveAt(at);
                continue;
            }

            Put(sheet, pool, best, turned, at, split);
        }

        return sheet;
    }

    private bool Choose(int kind, int fit, out int best, out bool turned)
    {
        (best, turned) = (-1, false);
        long bestScore = long.MaxValue;
        double bestArea = double.MaxValue;
        Steps += _free.Count;
        for (int turn = 0; turn < (_kinds.Turns[kind] ? 2 : 1); turn++)
        {
            long pw = turn == 0 ? _kinds.Width[kind] : _kinds.Height[kind], ph = turn == 0 ? _kinds.Height[kind] : _kinds.Width[kind];
            for (int i = 0; i < _free.Count; i++)
            {
                (long _, long _, long w, long h) = _free[i];
                if (pw > w || ph > h)
                {
                    continue;
                }

                long score = Math.Min(w - pw, h - ph);
                double area = (double)w * h;
                bool better = fit == 0 ? score < bestScore || (score == bestScore && area < bestArea) : area < bestArea || (area == bestArea && score < bestScore);
                if (better)
                {
                    (best, turned, bestScore, bestArea) = (i, turn == 1, score, area);
                }
            }
        }

        return best >= 0;
    }

    private void Put(FilledSheet sheet, int[] pool, int kind, bool turned, int at, int split)
    {
        (long x, long y, long w, long h) = _free[at];
        _free.RemoveAt(at);
        long pw = turned ? _kinds.Height[kind] : _kinds.Width[kind], ph = turned ? _kinds.Width[kind] : _kinds.Height[kind];
        pool[kind]--;
        sheet.Places.Add(new SheetPlace(kind, turned, x, y));
        sheet.Area += _kinds.Area[kind];
        long right = w - pw, top = h - ph;
        bool across = split switch
        {
            0 => right <= top,
            1 => right > top,
            2 => (double)right * ph <= (double)top * pw,
            3 => (double)right * ph > (double)top * pw,
            4 => true,
            _ => false,
        };

        // Across: the rest above runs over the whole width.
        (long X, long Y, long W, long H) a = across ? (x + pw, y, right, ph) : (x + pw, y, right, h);
        (long X, long Y, long W, long H) b = across ? (x, y + ph, w, top) : (x, y + ph, pw, top);
        bool aSmaller = (double)a.W * a.H <= (double)b.W * b.H;
        Add(aSmaller ? b : a);
        Add(aSmaller ? a : b);
    }

    private void Add((long X, long Y, long W, long H) rest)
    {
        if (rest.W > 0 && rest.H > 0)
        {
            _free.Add(rest);
        }
    }
}
