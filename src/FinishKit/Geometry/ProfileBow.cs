using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>Neighbouring bands that turn the same way and that one arc fits as well: a bow that was cut into bands.</summary>
internal readonly struct ProfileBow
{
    /// <summary>Three stations always lie on an arc and a fourth is soon near it: fewer tell nothing.</summary>
    private const int LeastStations = 5;

    private ProfileBow(int first, int last, double arcSquares, double bandSquares) => (First, Last, ArcSquares, BandSquares) = (first, last, arcSquares, bandSquares);

    /// <summary>Its first band.</summary>
    internal int First { get; }

    /// <summary>Its last band.</summary>
    internal int Last { get; }

    /// <summary>Sum of squared residuals of the arc.</summary>
    internal double ArcSquares { get; }

    /// <summary>The same of the bands together.</summary>
    internal double BandSquares { get; }

    /// <summary>From the foot up, each as long as an arc serves: its squares and one penalty are no more than those of its bands with one for each.</summary>
    internal static List<ProfileBow> Find(double[] heights, double[] offsets, IReadOnlyList<ProfileBand> bands, IReadOnlyList<ProfileBreak> breaks, double penalty)
    {
        List<ProfileBow> bows = [];
        for (int first = 0; first < breaks.Count;)
        {
            ProfileBow? bow = null;
            double squares = bands[first].Line.Squares;
            for (int last = first + 1; last < bands.Count && Math.Sign(breaks[last - 1].Change) == Math.Sign(breaks[first].Change); last++)
            {
                squares += bands[last].Line.Squares;
                (int from, int to) = (bands[first].FirstStation, bands[last].LastStation);
                double arc = to - from + 1 < LeastStations ? double.PositiveInfinity : Squares(heights, offsets, from, to);
                if (arc + penalty > squares + (penalty * (last - first + 1)))
                {
                    break;
                }

                bow = new ProfileBow(first, last, arc, squares);
            }

            if (bow is { } found)
            {
                bows.Add(found);
            }

            first = bow?.Last ?? first + 1;
        }

        return bows;
    }

    /// <summary>Sum of squared residuals of the least-squares parabola, which a shallow arc is: by polynomials that are orthogonal over the stations.</summary>
    private static double Squares(double[] heights, double[] offsets, int first, int last)
    {
        int count = last - first + 1;
        double meanHeight = 0, meanOffset = 0;
        for (int i = first; i <= last; i++)
        {
            meanHeight += heights[i] / count;
            meanOffset += offsets[i] / count;
        }

        double second = 0, third = 0;
        for (int i = first; i <= last; i++)
        {
            double rise = heights[i] - meanHeight;
            second += rise * rise;
            third += rise * rise * rise;
        }

        double linear = 0, bent = 0, size = 0;
        for (int i = first; i <= last; i++)
        {
            double rise = heights[i] - meanHeight, bend = Bend(rise);
            linear += rise * (offsets[i] - meanOffset) / second;
            bent += bend * (offsets[i] - meanOffset);
            size += bend * bend;
        }

        double squares = 0;
        for (int i = first; i <= last; i++)
        {
            double rise = heights[i] - meanHeight, residual = offsets[i] - meanOffset - (linear * rise) - (bent / size * Bend(rise));
            squares += residual * residual;
        }

        return squares;

        double Bend(double rise) => (rise * rise) - (third / second * rise) - (second / count);
    }
}
