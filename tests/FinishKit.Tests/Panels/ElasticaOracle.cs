using System;
using System.Linq;

namespace FinishKit.Tests.Panels;

/// <summary>
/// The exact elastic curve of an inextensible sheet of stiffness 1 pressed into a circle of radius 1 at its middle, the edges on the
/// circle at a girth of a: half of it, by Runge-Kutta and Newton's method (shooting). theta'' follows from a constant force at the edge.
/// </summary>
internal static class ElasticaOracle
{
    /// <summary>How an edge is pressed: square to the wall (it slides), or the way the middle pulls.</summary>
    internal enum EdgeForce
    {
        SquareToTheWall,
        AlongTheMiddlesPull,
    }

    /// <summary>Curvature at the middle, the middle's pull, and the furthest stand-off into the room.</summary>
    internal static (double Curvature, double Pull, double StandOff) ThreeRows(double a, EdgeForce edge)
    {
        double lean = edge == EdgeForce.SquareToTheWall ? a : 0;
        double[] x = [1.5, 1.5 / a, a];
        for (int round = 0; round < 30; round++)
        {
            double[] miss = Miss(x);
            if (miss.Max(Math.Abs) < 1e-13)
            {
                double[] end = Shoot(x, lean, out double off);
                return (x[0], 2 * x[1] * Math.Cos(lean), off + (0 * end[0]));
            }

            double[][] system = [.. miss.Select(m => new double[] { 0, 0, 0, -m })];
            for (int j = 0; j < 3; j++)
            {
                double step = 1e-7 * Math.Max(1, x[j]);
                double[] moved = [.. x];
                moved[j] += step;
                double[] there = Miss(moved);
                for (int i = 0; i < 3; i++)
                {
                    system[i][j] = (there[i] - miss[i]) / step;
                }
            }

            double[] change = SplineOracle.Solve(system);
            x = [.. x.Zip(change, static (value, by) => value + by)];
        }

        throw new InvalidOperationException("The shooting did not end.");

        double[] Miss(double[] guess)
        {
            double[] end = Shoot(guess, lean, out _);
            return [end[0] - Math.Sin(a), end[1] - (1 - Math.Cos(a)), end[3]];
        }
    }

    /// <summary>From the middle, tangent to the circle, to the edge: x, y, angle, curvature.</summary>
    private static double[] Shoot(double[] guess, double lean, out double standOff)
    {
        const int Steps = 400;
        (double fx, double fy, double h) = (-guess[1] * Math.Sin(lean), guess[1] * Math.Cos(lean), guess[2] / Steps);
        double[] y = [0, 0, 0, guess[0]];
        standOff = 0;
        for (int i = 0; i < Steps; i++)
        {
            double[] a = Slope(y), b = Slope(Along(y, a, h / 2)), c = Slope(Along(y, b, h / 2)), d = Slope(Along(y, c, h));
            y = [.. Enumerable.Range(0, 4).Select(k => y[k] + (h / 6 * (a[k] + (2 * b[k]) + (2 * c[k]) + d[k])))];
            standOff = Math.Max(standOff, 1 - Math.Sqrt((y[0] * y[0]) + ((1 - y[1]) * (1 - y[1]))));
        }

        return y;

        double[] Slope(double[] at) => [Math.Cos(at[2]), Math.Sin(at[2]), at[3], (fx * Math.Sin(at[2])) - (fy * Math.Cos(at[2]))];

        static double[] Along(double[] from, double[] slope, double by) => [.. from.Zip(slope, (value, rise) => value + (rise * by))];
    }
}
