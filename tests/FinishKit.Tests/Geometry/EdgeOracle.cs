using System;
using System.Linq;
using MathNet.Numerics.Interpolation;

namespace FinishKit.Tests.Geometry;

/// <summary>Edges computed in another way than the library does, in millimetres.</summary>
internal static class EdgeOracle
{
    internal static Func<double, double> Curve(double[] heights, double[] offsets, EdgeFit fit) => fit switch
    {
        EdgeFit.NaturalCubic when heights.Length > 2 => Natural(heights, offsets),

        // Another library's curve of the same kind.
        EdgeFit.ShapePreserving when heights.Length > 2 => CubicSpline.InterpolatePchip(heights, offsets).Interpolate,
        _ => height => Linear(heights, offsets, height),
    };

    /// <summary>In decimal arithmetic, straight from the two-point form.</summary>
    internal static double Linear(double[] heights, double[] offsets, double height)
    {
        int i = Enumerable.Range(0, heights.Length - 1).First(i => height <= heights[i + 1]);
        decimal v = (decimal)height, va = (decimal)heights[i], vb = (decimal)heights[i + 1], ua = (decimal)offsets[i], ub = (decimal)offsets[i + 1];
        return (double)(((ua * (vb - v)) + (ub * (v - va))) / (vb - va));
    }

    /// <summary>The natural spline by its second derivatives: a full matrix, Gauss with pivots.</summary>
    internal static Func<double, double> Natural(double[] v, double[] u)
    {
        int n = v.Length;
        double[][] a = [.. Enumerable.Range(0, n).Select(_ => new double[n + 1])];
        a[0][0] = a[n - 1][n - 1] = 1;
        for (int i = 1; i < n - 1; i++)
        {
            double below = v[i] - v[i - 1], above = v[i + 1] - v[i];
            a[i][i - 1] = below / 6;
            a[i][i] = (below + above) / 3;
            a[i][i + 1] = above / 6;
            a[i][n] = ((u[i + 1] - u[i]) / above) - ((u[i] - u[i - 1]) / below);
        }

        double[] second = Solve(a, n);
        return height =>
        {
            int i = Enumerable.Range(0, n - 1).First(i => height <= v[i + 1]);
            double h = v[i + 1] - v[i], left = v[i + 1] - height, right = height - v[i];
            return (second[i] * left * left * left / (6 * h)) + (second[i + 1] * right * right * right / (6 * h))
                + (((u[i] / h) - (second[i] * h / 6)) * left) + (((u[i + 1] / h) - (second[i + 1] * h / 6)) * right);
        };
    }

    /// <summary>The circle over a chord by its centre: radius (positive where the middle lies at greater offset), and offset at a height.</summary>
    internal static (double Radius, Func<double, double> OffsetAt) Circle(double va, double ua, double vb, double ub, double rise)
    {
        double chord = Math.Sqrt(((vb - va) * (vb - va)) + ((ub - ua) * (ub - ua)));
        double radius = ((chord * chord / 4) + (rise * rise)) / (2 * rise);
        double across = (vb - va) / chord, along = -(ub - ua) / chord; // the normal of the chord, toward greater offset
        double centreV = ((va + vb) / 2) - ((radius - rise) * along), centreU = ((ua + ub) / 2) - ((radius - rise) * across);
        return (radius, height => centreU + (Math.Sign(radius) * Math.Sqrt((radius * radius) - ((height - centreV) * (height - centreV)))));
    }

    private static double[] Solve(double[][] a, int n)
    {
        for (int column = 0; column < n; column++)
        {
            int pivot = Enumerable.Range(column, n - column).MaxBy(row => Math.Abs(a[row][column]));
            for (int k = 0; k <= n; k++)
            {
                (a[column][k], a[pivot][k]) = (a[pivot][k], a[column][k]);
            }

            for (int row = 0; row < n; row++)
            {
                double factor = row == column ? 0 : a[row][column] / a[column][column];
                for (int k = column; factor != 0 && k <= n; k++)
                {
                    a[row][k] -= factor * a[column][k];
                }
            }
        }

        return [.. Enumerable.Range(0, n).Select(i => a[i][n] / a[i][i])];
    }
}
