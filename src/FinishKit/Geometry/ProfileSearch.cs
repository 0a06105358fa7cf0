using System;

namespace FinishKit;

/// <summary>
/// The exact search behind <see cref="ProfileBreaks"/>. Sums of squares are compared in whole millionths of a square millimetre, so
/// that equal ones are equal and a tie is decided by rule, not by rounding.
/// </summary>
internal static class ProfileSearch
{
    private const double StepsPerSquareMillimetre = 1e6;

    internal static long Steps(double squareMillimetres) => (long)Math.Round(squareMillimetres * StepsPerSquareMillimetre);

    /// <summary>The stations at which bands begin and end, first and last included, with the least sum of squares plus penalties; of equals fewer bands, then the lowest first break, and so on up.</summary>
    internal static int[] Least(double[] heights, double[] offsets, long penalty)
    {
        int last = heights.Length - 1;
        long[] cost = new long[last + 1];
        int[] bands = new int[last + 1], next = new int[last + 1];

        // From the top down: what is best above a station is known before anything below it needs it.
        for (int from = last - 1; from >= 0; from--)
        {
            RunningLine line = new(heights[from], offsets[from]);
            for (int to = from + 1; to <= last; to++)
            {
                line.Add(heights[to], offsets[to]);
                long total = Steps(line.Squares) + penalty + cost[to];
                int count = 1 + bands[to];
                if (next[from] == 0 || total < cost[from] || (total == cost[from] && count < bands[from]))
                {
                    (cost[from], bands[from], next[from]) = (total, count, to);
                }
            }
        }

        return Follow(bands[0], (from, _) => next[from]);
    }

    /// <summary>The same for a given number of bands.</summary>
    internal static int[] Least(double[] heights, double[] offsets, int bands)
    {
        int last = heights.Length - 1;
        long[][] cost = new long[bands + 1][];
        int[][] next = new int[bands + 1][];
        for (int count = 0; count <= bands; count++)
        {
            cost[count] = new long[last + 1];
            next[count] = new int[last + 1];
        }

        for (int from = last - 1; from >= 0; from--)
        {
            RunningLine line = new(heights[from], offsets[from]);
            for (int to = from + 1; to <= last; to++)
            {
                line.Add(heights[to], offsets[to]);
                long squares = Steps(line.Squares);

                // So many bands are left above that station: none at the top, at most one a station.
                for (int above = to == last ? 0 : 1; above < bands && above <= last - to; above++)
                {
                    int count = above + 1;
                    long total = squares + cost[above][to];
                    if (next[count][from] == 0 || total < cost[count][from])
                    {
                        (cost[count][from], next[count][from]) = (total, to);
                    }
                }
            }
        }

        return Follow(bands, (from, left) => next[left][from]);
    }

    private static int[] Follow(int bands, Func<int, int, int> next)
    {
        int[] ends = new int[bands + 1];
        for (int band = 0; band < bands; band++)
        {
            ends[band + 1] = next(ends[band], bands - band);
        }

        return ends;
    }

    /// <summary>A least-squares line that grows by a station at a time. No large sums are subtracted: what a station adds is a square.</summary>
    private struct RunningLine(double height, double offset)
    {
        private double _height = height, _offset = offset, _spread, _product;
        private int _count = 1;

        internal double Squares { get; private set; }

        internal void Add(double height, double offset)
        {
            double rise = height - _height, outward = offset - _offset, share = 1.0 / (_count + 1);
            if (_count > 1)
            {
                double miss = outward - (_product / _spread * rise);
                Squares += miss * miss / (1 + (1.0 / _count) + (rise * rise / _spread));
            }

            _spread += rise * rise * _count * share;
            _product += rise * outward * _count * share;
            _height += rise * share;
            _offset += outward * share;
            _count++;
        }
    }
}
