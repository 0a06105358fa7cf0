using System;

namespace FinishKit;

/// <summary>
/// The fit behind <see cref="CircleFit"/>, in plain numbers. The circle is described by its curvature k, its distance d0 from one of the
/// points and the direction f of its normal there: a straight line is then the ordinary case k = 0, where centre and radius run to infinity.
/// Levenberg-Marquardt in three unknowns is written out here: MathNet's works on its matrices, whose linear algebra provider is chosen
/// per process and machine, and the same points must give the same digits everywhere.
/// </summary>
internal static class CircleThroughPoints
{
    private const int MostSteps = 300;

    internal static FittedCircle Fit(double[] along, double[] offset)
    {
        int count = along.Length;

        // The origin is the point nearest the middle, so that the circle passes close by it; the unit is the reach of the points.
        double middleX = Mean(along), middleY = Mean(offset);
        int origin = 0;
        for (int i = 1; i < count; i++)
        {
            if (Squared(along[i] - middleX, offset[i] - middleY) < Squared(along[origin] - middleX, offset[origin] - middleY))
            {
                origin = i;
            }
        }

        double scale = 0;
        double[] x = new double[count], y = new double[count];
        for (int i = 0; i < count; i++)
        {
            x[i] = along[i] - along[origin];
            y[i] = offset[i] - offset[origin];
            scale = Math.Max(scale, Math.Sqrt(Squared(x[i], y[i])));
        }

        for (int i = 0; i < count; i++)
        {
            x[i] /= scale;
            y[i] /= scale;
        }

        double[] line = Line(x, y);
        double[] best = Improve(x, y, Bent(x, y, line));
        foreach (double[] start in new[] { line, Algebraic(x, y) })
        {
            double[] other = Improve(x, y, start);
            if (Sum(x, y, other) < Sum(x, y, best))
            {
                best = other;
            }
        }

        double chord = LongestChord(x, y) * scale;
        double curvature = Math.Abs(best[0]) / scale;
        double squares = Sum(x, y, best) * scale * scale;
        double spread = CurvatureEntry(x, y, best) / Math.Pow(scale, 4); // of (JᵀJ)⁻¹, 1/mm^4
        double curvatureError = count > 3 ? Math.Sqrt(squares / (count - 3) * spread) : double.NaN;
        double rise = curvature == 0 ? 0 : RiseOver(chord, 1 / curvature);
        bool isFlat = rise < 0.5e-6 || !(spread < double.PositiveInfinity) || curvatureError >= curvature;
        double[] fitted = isFlat ? line : best;

        double normalX = Math.Cos(fitted[2]), normalY = Math.Sin(fitted[2]);
        double centreX = double.NaN, centreY = double.NaN, sign;
        if (isFlat)
        {
            curvature = 0;
            squares = Sum(x, y, line) * scale * scale;
            sign = normalY < 0 || (normalY == 0 && normalX < 0) ? -1 : 1;
            curvatureError = count > 3 && spread < double.PositiveInfinity ? curvatureError : double.NaN;
        }
        else
        {
            double reach = -(1 + (fitted[0] * fitted[1])) / fitted[0] * scale;
            centreX = along[origin] + (reach * normalX);
            centreY = offset[origin] + (reach * normalY);
            sign = centreY <= middleY ? 1 : -1; // hollow: the centre is on the room's side
            sign *= fitted[0] < 0 ? -1 : 1; // a distance is positive outside where the curvature is
        }

        double[] residuals = new double[count];
        int worst = 0;
        for (int i = 0; i < count; i++)
        {
            residuals[i] = sign * Distance(x[i], y[i], fitted) * scale;
            worst = Math.Abs(residuals[i]) > Math.Abs(residuals[worst]) ? i : worst;
        }

        double freedom = Leverage(x, y, fitted, worst, isFlat);
        bool isHollow = isFlat || centreY <= middleY;
        return new FittedCircle(new FittedCircle.Numbers(
            count, isHollow ? curvature : -curvature, centreX, centreY, chord, squares, spread, curvatureError, worst, freedom, along[worst], offset[worst]), residuals);
    }

    /// <summary>Rise of a circle over a chord; one a hair longer than the diameter is the diameter.</summary>
    internal static double RiseOver(double chord, double radius)
    {
        double half = Math.Min(chord / 2, radius);
        return half * half / (radius + Math.Sqrt((radius * radius) - (half * half)));
    }

    private static double Mean(double[] values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value;
        }

        return sum / values.Length;
    }

    private static double Squared(double x, double y) => (x * x) + (y * y);

    /// <summary>Signed distance from a circle (k, d0, f): 2 P/(1 + sqrt(1 + 2 k P)), which is P for a line.</summary>
    private static double Distance(double x, double y, double[] circle)
    {
        double p = Power(x, y, circle);
        return 2 * p / (1 + Math.Sqrt(Math.Max(0, 1 + (2 * circle[0] * p))));
    }

    private static double Power(double x, double y, double[] circle)
    {
        double k = circle[0], d = circle[1];
        double outward = (x * Math.Cos(circle[2])) + (y * Math.Sin(circle[2]));
        return (k * Squared(x, y) / 2) + ((1 + (k * d)) * outward) + (d * (1 + (k * d / 2)));
    }

    private static double Sum(double[] x, double[] y, double[] circle)
    {
        double sum = 0;
        for (int i = 0; i < x.Length; i++)
        {
            double distance = Distance(x[i], y[i], circle);
            sum += distance * distance;
        }

        return double.IsNaN(sum) ? double.PositiveInfinity : sum;
    }

    /// <summary>Derivatives of the distance by k, d0 and f. S = 1 + k dist is how far the point is from the centre, over the radius.</summary>
    private static void Gradient(double x, double y, double[] circle, double[] gradient)
    {
        double k = circle[0], d = circle[1], cos = Math.Cos(circle[2]), sin = Math.Sin(circle[2]);
        double outward = (x * cos) + (y * sin), sideways = (y * cos) - (x * sin);
        double distance = Distance(x, y, circle);
        double s = Math.Max(1e-9, 1 + (k * distance));
        gradient[0] = ((Squared(x, y) / 2) + (d * outward) + (d * d / 2) - (distance * distance / 2)) / s;
        gradient[1] = ((k * outward) + 1 + (k * d)) / s;
        gradient[2] = (1 + (k * d)) * sideways / s;
    }

    /// <summary>The straight line of least squared distance.</summary>
    private static double[] Line(double[] x, double[] y)
    {
        double mx = Mean(x), my = Mean(y), xx = 0, yy = 0, xy = 0;
        for (int i = 0; i < x.Length; i++)
        {
            xx += (x[i] - mx) * (x[i] - mx);
            yy += (y[i] - my) * (y[i] - my);
            xy += (x[i] - mx) * (y[i] - my);
        }

        double normal = (Math.Atan2(2 * xy, xx - yy) / 2) + (Math.PI / 2);
        return [0, -((mx * Math.Cos(normal)) + (my * Math.Sin(normal))), normal];
    }

    /// <summary>The line bent by the parabola through the points: the start for shallow arcs.</summary>
    private static double[] Bent(double[] x, double[] y, double[] line)
    {
        double cos = Math.Cos(line[2]), sin = Math.Sin(line[2]), n = x.Length;
        double u1 = 0, u2 = 0, u3 = 0, u4 = 0, v0 = 0, v1 = 0, v2 = 0;
        for (int i = 0; i < x.Length; i++)
        {
            double u = (y[i] * cos) - (x[i] * sin), v = (x[i] * cos) + (y[i] * sin);
            u1 += u;
            u2 += u * u;
            u3 += u * u * u;
            u4 += u * u * u * u;
            v0 += v;
            v1 += u * v;
            v2 += u * u * v;
        }

        double[]? parabola = Solve(n, u1, u2, u2, u3, u4, v0, v1, v2);
        return parabola is null ? line : [-2 * parabola[2], -parabola[0], line[2]];
    }

    /// <summary>The circle of least squared power, (x² + y² + B x + C y + D): the start for arcs that go far round.</summary>
    private static double[] Algebraic(double[] x, double[] y)
    {
        double n = x.Length, sx = 0, sy = 0, xx = 0, yy = 0, xy = 0, z0 = 0, zx = 0, zy = 0;
        for (int i = 0; i < x.Length; i++)
        {
            double z = Squared(x[i], y[i]);
            sx += x[i];
            sy += y[i];
            xx += x[i] * x[i];
            yy += y[i] * y[i];
            xy += x[i] * y[i];
            z0 += z;
            zx += z * x[i];
            zy += z * y[i];
        }

        double[]? found = Solve(n, sx, sy, xx, xy, yy, -z0, -zx, -zy);
        if (found is null)
        {
            return Line(x, y);
        }

        double cx = -found[1] / 2, cy = -found[2] / 2, square = Squared(cx, cy) - found[0];
        if (!(square > 0))
        {
            return Line(x, y);
        }

        // The normal at the origin points away from the centre; the distance of the origin from the circle is positive outside.
        double radius = Math.Sqrt(square), away = Math.Sqrt(Squared(cx, cy));
        return [1 / radius, away - radius, Math.Atan2(-cy, -cx)];
    }

    /// <summary>Levenberg-Marquardt from a start until the steps are rounding noise.</summary>
    private static double[] Improve(double[] x, double[] y, double[] start)
    {
        double[] circle = start, gradient = new double[3];
        double sum = Sum(x, y, circle), damping = 1e-4;
        for (int step = 0; step < MostSteps && damping < 1e12; step++)
        {
            double a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, ra = 0, rb = 0, rc = 0;
            for (int i = 0; i < x.Length; i++)
            {
                Gradient(x[i], y[i], circle, gradient);
                double distance = Distance(x[i], y[i], circle);
                a += gradient[0] * gradient[0];
                b += gradient[0] * gradient[1];
                c += gradient[0] * gradient[2];
                d += gradient[1] * gradient[1];
                e += gradient[1] * gradient[2];
                f += gradient[2] * gradient[2];
                ra -= gradient[0] * distance;
                rb -= gradient[1] * distance;
                rc -= gradient[2] * distance;
            }

            double[]? move = Solve(a * (1 + damping), b, c, d * (1 + damping), e, f * (1 + damping), ra, rb, rc);
            if (move is null)
            {
                damping = Math.Max(damping, 1e-12) * 10;
                continue;
            }

            double[] next = [circle[0] + move[0], circle[1] + move[1], circle[2] + move[2]];
            double nextSum = Sum(x, y, next);
            if (nextSum <= sum)
            {
                bool isDone = Math.Abs(move[0]) <= 1e-15 * (1 + Math.Abs(next[0])) && Math.Abs(move[1]) <= 1e-15 && Math.Abs(move[2]) <= 1e-15;
                circle = next;
                sum = nextSum;
                damping /= 10;
                if (isDone)
                {
                    break;
                }
            }
            else
            {
                damping = Math.Max(damping, 1e-12) * 10;
            }
        }

        return circle;
    }

    private static double CurvatureEntry(double[] x, double[] y, double[] circle)
    {
        double[] column = Solve(Normal(x, y, circle), [1, 0, 0]) ?? [double.PositiveInfinity];
        return column[0] > 0 ? column[0] : double.PositiveInfinity;
    }

    /// <summary>How much of a point's error shows in its residual: 1 less its leverage. A line has no curvature to give way with.</summary>
    private static double Leverage(double[] x, double[] y, double[] circle, int point, bool isFlat)
    {
        double[] gradient = new double[3];
        Gradient(x[point], y[point], circle, gradient);
        double[] normal = Normal(x, y, circle);
        if (isFlat)
        {
            gradient[0] = normal[1] = normal[2] = 0;
        }

        double[]? answer = Solve(normal, gradient);
        return answer is null ? 0 : Math.Max(0, 1 - (gradient[0] * answer[0]) - (gradient[1] * answer[1]) - (gradient[2] * answer[2]));
    }

    /// <summary>The upper triangle of JᵀJ, row by row.</summary>
    private static double[] Normal(double[] x, double[] y, double[] circle)
    {
        double[] normal = new double[6], gradient = new double[3];
        for (int i = 0; i < x.Length; i++)
        {
            Gradient(x[i], y[i], circle, gradient);
            for (int row = 0, at = 0; row < 3; row++)
            {
                for (int column = row; column < 3; column++)
                {
                    normal[at++] += gradient[row] * gradient[column];
                }
            }
        }

        return normal;
    }

    private static double[]? Solve(double[] m, double[] right) => Solve(m[0], m[1], m[2], m[3], m[4], m[5], right[0], right[1], right[2]);

    /// <summary>A symmetric system of three by elimination of its positive definite matrix; null where it is singular.</summary>
    private static double[]? Solve(double a, double b, double c, double d, double e, double f, double r0, double r1, double r2)
    {
        double b1 = b / a, c1 = c / a;
        double d1 = d - (b * b1), e1 = e - (c * b1);
        double e2 = e1 / d1, f2 = f - (c * c1) - (e1 * e2);
        if (!(a > 0) || !(d1 > 1e-14 * d) || !(f2 > 1e-14 * f))
        {
            return null;
        }

        double s1 = r1 - (b1 * r0);
        double z = (r2 - (c1 * r0) - (e2 * s1)) / f2;
        double y = (s1 / d1) - (e2 * z);
        return [(r0 / a) - (b1 * y) - (c1 * z), y, z];
    }

    private static double LongestChord(double[] x, double[] y)
    {
        double longest = 0;
        for (int i = 0; i < x.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                longest = Math.Max(longest, Squared(x[i] - x[j], y[i] - y[j]));
            }
        }

        return Math.Sqrt(longest);
    }
}
