using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// Values of rectangles of which a sheet, whatever lies on it, holds only so much. A function f of lengths is dual feasible where lengths
/// that go side by side never have values of more than 1 together; the product of one of the width and one of the height is then a value
/// of which a sheet holds at most 1 (Fekete and Schepers). What may be turned has the lesser of its two values.
/// </summary>
internal static class SheetBounds
{
    private const double FinestScale = 1e12;

    /// <summary>What so many pieces are worth on as many sheets stays below this, and so does every sum.</summary>
    private const double MostValue = 8e18;
    private const int MostSmall = 200;
    private const int MostKept = 12;

    /// <summary>The strongest values tried, that of the area among them.</summary>
    internal static List<PartValues> Values(SheetKinds kinds, SheetSizes sizes, CuttingEffort effort)
    {
        double scale = Math.Min(FinestScale, Math.Floor(MostValue / ((double)kinds.Pieces * kinds.Pieces * sizes.Count)));

        // A sheet on which no piece goes holds nothing, whatever its area.
        bool[] holds = new bool[sizes.Count];
        for (int size = 0; size < holds.Length; size++)
        {
            for (int kind = 0; kind < kinds.Kinds && !holds[size]; kind++)
            {
                holds[size] = kinds.Goes(kind, sizes.Width[size], sizes.Height[size]);
            }
        }

        List<(PartValues Proof, double Cost)> kept = [];
        HashSet<(long, long)> tried = [];
        long wide = 0, high = 0;
        for (int size = 0; size < sizes.Count; size++)
        {
            (wide, high) = (Math.Max(wide, sizes.Width[size]), Math.Max(high, sizes.Height[size]));
        }

        Try(wide, high);
        for (int size = 0; size < sizes.Count; size++)
        {
            Try(sizes.Width[size], sizes.Height[size]);
        }

        PartValues area = Proof([Fraction(kinds, kinds.Width, wide)], [Fraction(kinds, kinds.Height, high)], wide, high, true);
        List<PartValues> proofs = [area];
        foreach ((PartValues proof, double _) in kept)
        {
            proofs.Add(proof);
        }

        return proofs;

        void Try(long width, long height)
        {
            // The greatest size is always looked at.
            if ((tried.Count > 0 && effort.IsSpent) || !tried.Add((width, height)))
            {
                return;
            }

            List<double[]> onWidth = Functions(kinds, width), onHeight = width == height ? onWidth : Functions(kinds, height);
            effort.Spend((long)onWidth.Count * onHeight.Count * kinds.Kinds / 4);
            foreach (double[] f in onWidth)
            {
                foreach (double[] g in onHeight)
                {
                    double needed = 0;
                    for (int kind = 0; kind < kinds.Kinds; kind++)
                    {
                        needed += kinds.Count[kind] * Least(kinds, kind, width, height, f, g);
                    }

                    double cost = LeastCost(needed, width, height);
                    if (kept.Count < (sizes.Count == 1 ? 1 : MostKept) || cost > kept[kept.Count - 1].Cost)
                    {
                        Keep(Proof([f], [g], width, height, false), cost);
                    }
                }
            }
        }

        void Keep(PartValues proof, double cost)
        {
            int at = kept.Count;
            while (at > 0 && kept[at - 1].Cost < cost)
            {
                at--;
            }

            kept.Insert(at, (proof, cost));
            if (kept.Count > (sizes.Count == 1 ? 1 : MostKept))
            {
                kept.RemoveAt(kept.Count - 1);
            }
        }

        // What the value asks for costs at least, sheets that cost nothing used first.
        double LeastCost(double needed, long width, long height)
        {
            double rate = double.PositiveInfinity;
            for (int size = 0; size < sizes.Count; size++)
            {
                double most = !holds[size] ? 0 : sizes.Width[size] <= width && sizes.Height[size] <= height ? 1 : needed;
                if (sizes.Price[size] == 0)
                {
                    needed -= Math.Min(needed, most * sizes.Limit[size]);
                }
                else if (holds[size])
                {
                    rate = Math.Min(rate, sizes.Price[size] / most);
                }
            }

            return needed <= 0 ? 0 : double.IsInfinity(rate) ? needed : needed * rate;
        }

        PartValues Proof(double[][] f, double[][] g, long width, long height, bool isArea)
        {
            long[] values = new long[kinds.Kinds], most = new long[sizes.Count];
            long needed = 0;
            for (int kind = 0; kind < values.Length; kind++)
            {
                // Rounded down, one step more than rounding can be wrong.
                double value = isArea ? kinds.Area[kind] / ((double)width * height) : Least(kinds, kind, width, height, f[0], g[0]);
                values[kind] = Math.Max(0, (long)Math.Floor(value * scale) - 1);
                needed += values[kind] * kinds.Count[kind];
            }

            for (int size = 0; size < most.Length; size++)
            {
                bool goesIn = sizes.Width[size] <= width && sizes.Height[size] <= height;
                most[size] = !holds[size] ? 0 : isArea ? (long)Math.Ceiling((double)sizes.Width[size] * sizes.Height[size] / ((double)width * height) * scale) + 1 : goesIn ? (long)scale : needed;
            }

            return new PartValues(values, most, needed);
        }
    }

    /// <summary>How long a sheet of given width must be: every value of widths times the lengths.</summary>
    internal static double LeastLength(SheetKinds kinds, long width)
    {
        double least = 0;
        foreach (double[] f in Functions(kinds, width))
        {
            double needed = 0;
            for (int kind = 0; kind < kinds.Kinds; kind++)
            {
                double straight = f[2 * kind] * kinds.Height[kind], turned = f[(2 * kind) + 1] * kinds.Width[kind];
                bool goesStraight = kinds.Width[kind] <= width, goesTurned = kinds.Turns[kind] && kinds.Height[kind] <= width;
                needed += kinds.Count[kind] * (!goesTurned ? straight : !goesStraight ? turned : Math.Min(straight, turned));
            }

            least = Math.Max(least, needed * (1 - 1e-13));
        }

        return least;
    }

    private static double[] Fraction(SheetKinds kinds, long[] lengths, long whole)
    {
        double[] values = new double[2 * kinds.Kinds];
        for (int kind = 0; kind < kinds.Kinds; kind++)
        {
            values[2 * kind] = lengths[kind] / (double)whole;
        }

        return values;
    }

    private static double Least(SheetKinds kinds, int kind, long width, long height, double[] f, double[] g)
    {
        double straight = f[2 * kind] * g[(2 * kind) + 1];
        if (!kinds.Turns[kind])
        {
            return straight;
        }

        bool goesStraight = kinds.Width[kind] <= width && kinds.Height[kind] <= height;
        bool goesTurned = kinds.Height[kind] <= width && kinds.Width[kind] <= height;
        double turned = f[(2 * kind) + 1] * g[2 * kind];
        return !goesTurned ? straight : !goesStraight ? turned : Math.Min(straight, turned);
    }

    /// <summary>Dual feasible functions, each as its value of every kind's width (even places) and height (odd places) on a length; what is longer than it counts nothing.</summary>
    private static List<double[]> Functions(SheetKinds kinds, long length)
    {
        int n = kinds.Kinds;
        SortedSet<long> sizes = [];
        for (int kind = 0; kind < n; kind++)
        {
            Add(kinds.Width[kind]);
            Add(kinds.Height[kind]);
        }

        List<long> thresholds = [.. sizes];
        int most = n <= MostSmall ? 80 : 12;
        int stride = Math.Max(1, (thresholds.Count + most - 1) / most);
        List<double[]> all = [Of(size => size / (double)length)];
        for (int i = 0; i < thresholds.Count; i += stride)
        {
            long e = thresholds[i], times = length / e;

            // All or nothing beyond a threshold: what is more than the length less e leaves no room for e or more.
            all.Add(Of(size => size > length - e ? 1 : size < e ? 0 : size / (double)length));

            // By how many of e go: what goes beside a size of more than half the length is taken off.
            all.Add(Of(size => 2 * size > length ? 1 - ((length - size) / e / (double)times) : 2 * size == length ? 0.5 : size / e / (double)times));
        }

        // Rounded down to k parts, where (k + 1) sizes are not the length itself.
        for (int k = 1; k <= 6; k++)
        {
            decimal parts = k;
            all.Add(Of(size => (parts + 1) * size % length == 0 ? size / (double)length : (double)(decimal.Floor((parts + 1) * size / length) / parts)));
        }

        return WithoutLesser(all);

        void Add(long size)
        {
            if (size < length)
            {
                foreach (long threshold in new[] { size, length - size })
                {
                    if (2 * threshold <= length)
                    {
                        sizes.Add(threshold);
                    }
                }
            }
        }

        double[] Of(Func<long, double> value)
        {
            double[] values = new double[2 * n];
            for (int kind = 0; kind < n; kind++)
            {
                values[2 * kind] = kinds.Width[kind] <= length ? value(kinds.Width[kind]) : 0;
                values[(2 * kind) + 1] = kinds.Height[kind] <= length ? value(kinds.Height[kind]) : 0;
            }

            return values;
        }
    }

    private static List<double[]> WithoutLesser(List<double[]> all)
    {
        List<double[]> kept = [];
        foreach (double[] values in all)
        {
            if (!kept.Exists(other => IsNowhereMore(values, other)))
            {
                kept.Add(values);
            }
        }

        return kept;
    }

    private static bool IsNowhereMore(double[] values, double[] other)
    {
        for (int i = 0; i < values.Length; i++)
        {
            if (values[i] > other[i])
            {
                return false;
            }
        }

        return true;
    }
}
