using System;

namespace FinishKit;

/// <summary>
/// The slope of each fit at every measured height. Written out here, not taken from the numerics library: that one silently extrapolates,
/// knows no edge of two points, and three fits with one shape can be compared piece by piece.
/// </summary>
internal static class EdgeSlopes
{
    internal static CubicPiece[] Pieces(double[] heights, double[] offsets, EdgeFit fit)
    {
        int count = heights.Length;
        double[] lengths = new double[count - 1], chords = new double[count - 1];
        for (int i = 0; i < count - 1; i++)
        {
            lengths[i] = heights[i + 1] - heights[i];
            chords[i] = (offsets[i + 1] - offsets[i]) / lengths[i];
        }

        double[]? slopes = count == 2 || fit == EdgeFit.Linear ? null : fit == EdgeFit.ShapePreserving ? ShapePreserving(lengths, chords) : NaturalCubic(lengths, chords);
        CubicPiece[] pieces = new CubicPiece[count - 1];
        for (int i = 0; i < count - 1; i++)
        {
            pieces[i] = new CubicPiece(heights[i], heights[i + 1], offsets[i], offsets[i + 1], slopes?[i] ?? chords[i], slopes?[i + 1] ?? chords[i]);
        }

        return pieces;
    }

    /// <summary>Fritsch and Butland: inside, the harmonic mean of the neighbouring chords, the shorter one weighing more; at the ends a parabola through three points, held back where it would turn.</summary>
    private static double[] ShapePreserving(double[] lengths, double[] chords)
    {
        int last = lengths.Length;
        double[] slopes = new double[last + 1];
        for (int i = 1; i < last; i++)
        {
            double below = chords[i - 1], above = chords[i];
            if ((below > 0 && above > 0) || (below < 0 && above < 0))
            {
                double weightBelow = (2 * lengths[i]) + lengths[i - 1], weightAbove = lengths[i] + (2 * lengths[i - 1]);
                slopes[i] = (weightBelow + weightAbove) / ((weightBelow / below) + (weightAbove / above));
            }
        }

        slopes[0] = AtEnd(lengths[0], lengths[1], chords[0], chords[1]);
        slopes[last] = AtEnd(lengths[last - 1], lengths[last - 2], chords[last - 1], chords[last - 2]);
        return slopes;
    }

    private static double AtEnd(double length, double nextLength, double chord, double nextChord)
    {
        double slope = ((((2 * length) + nextLength) * chord) - (length * nextChord)) / (length + nextLength);
        if (Math.Sign(slope) != Math.Sign(chord))
        {
            return 0;
        }

        return Math.Sign(chord) != Math.Sign(nextChord) && Math.Abs(slope) > Math.Abs(3 * chord) ? 3 * chord : slope;
    }

    /// <summary>Curvature continuous at every point and 0 at both ends: a tridiagonal system whose diagonal outweighs its row, solved downward and back.</summary>
    private static double[] NaturalCubic(double[] lengths, double[] chords)
    {
        int last = lengths.Length;
        double[] diagonal = new double[last + 1], above = new double[last + 1], slopes = new double[last + 1];
        diagonal[0] = 2;
        above[0] = 1;
        slopes[0] = 3 * chords[0];
        for (int i = 1; i <= last; i++)
        {
            double below = i < last ? 1 / lengths[i - 1] : 1;
            above[i] = i < last ? 1 / lengths[i] : 0;
            double middle = i < last ? 2 * (below + above[i]) : 2;
            double right = i < last ? 3 * ((chords[i - 1] * below) + (chords[i] * above[i])) : 3 * chords[last - 1];
            double factor = below / diagonal[i - 1];
            diagonal[i] = middle - (factor * above[i - 1]);
            slopes[i] = right - (factor * slopes[i - 1]);
        }

        slopes[last] /= diagonal[last];
        for (int i = last - 1; i >= 0; i--)
        {
            slopes[i] = (slopes[i] - (above[i] * slopes[i + 1])) / diagonal[i];
        }

        return slopes;
    }
}
