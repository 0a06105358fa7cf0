using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>A piece that is no rectangle: its corners in order, from the corner of the rectangle round it.</summary>
internal static class SheetOutline
{
    internal const int MostCorners = 200;

    private const string Words = "3 to 200 corners";

    /// <summary>Area by the shoelace formula, whichever way round the corners go [mm2].</summary>
    internal static double Area(IReadOnlyList<MeasuredPoint> corners)
    {
        double twice = 0;
        for (int i = 0; i < corners.Count; i++)
        {
            (double x, double y) = At(corners, i);
            (double nextX, double nextY) = At(corners, (i + 1) % corners.Count);
            twice += (x * nextY) - (nextX * y);
        }

        return Math.Abs(twice) / 2;
    }

    /// <summary>The corners lie in the rectangle, touch each of its sides, and no two sides of the piece meet but neighbours at their corner.</summary>
    internal static void Check(IReadOnlyList<MeasuredPoint> corners, double length, double width, Name path, List<InputProblem>? problems)
    {
        string name = path.ToString();
        if (corners.Count < 3 || corners.Count > MostCorners)
        {
            Door.Report(new InputProblem(name, Print.Number(corners.Count) + " corners", Words, isRange: true), problems);
            return;
        }

        if (double.IsNaN(length + width))
        {
            return;
        }

        Allowed along = new(0, length, "mm"), across = new(0, width, "mm");
        long[] x = new long[corners.Count], y = new long[corners.Count];
        long left = long.MaxValue, right = 0, bottom = long.MaxValue, top = 0;
        for (int i = 0; i < x.Length; i++)
        {
            Name at = new(name, i);
            double atX = Door.Millimetres(corners[i].Along, at.Then(".Along"), along, problems);
            double atY = Door.Millimetres(corners[i].Offset, at.Then(".Offset"), across, problems);
            if (double.IsNaN(atX + atY))
            {
                return;
            }

            (x[i], y[i]) = (Grid.Nanometres(atX), Grid.Nanometres(atY));
            (left, right, bottom, top) = (Math.Min(left, x[i]), Math.Max(right, x[i]), Math.Min(bottom, y[i]), Math.Max(top, y[i]));
        }

        if (left != 0 || bottom != 0 || right != Grid.Nanometres(length) || top != Grid.Nanometres(width))
        {
            Door.Report(new InputProblem(name, $"corners from {Mm(left)} to {Mm(right)} mm along and {Mm(bottom)} to {Mm(top)} mm across", $"such that they touch each side of the {Print.Number(length)} x {Print.Number(width)} mm round them", isRange: false), problems);
            return;
        }

        for (int i = 0; i < x.Length; i++)
        {
            for (int k = i + 1; k < x.Length; k++)
            {
                bool areNeighbours = k == i + 1 || (i == 0 && k == x.Length - 1);
                if (areNeighbours ? FoldsBack(x, y, i, k) : Meet(x, y, i, k))
                {
                    Door.Report(new InputProblem(name, $"sides {Print.Number(i)} and {Print.Number(k)} that meet or fold back", "an outline whose sides meet only where one follows the other", isRange: false), problems);
                    return;
                }
            }
        }

        static string Mm(long nanometres) => Print.Number(Grid.Millimetres(nanometres));
    }

    private static (double X, double Y) At(IReadOnlyList<MeasuredPoint> corners, int at) => (Grid.Snap(Door.Millimetres(corners[at].Along)), Grid.Snap(Door.Millimetres(corners[at].Offset)));

    /// <summary>1 where the point lies to the left of the line from the first to the second, -1 to the right, 0 on it.</summary>
    private static int Side(long[] x, long[] y, int from, int to, int point)
    {
        long dx = x[to] - x[from], dy = y[to] - y[from], px = x[point] - x[from], py = y[point] - y[from];
        double one = (double)dx * py, other = (double)dy * px, difference = one - other;

        // Products of ten digits by ten are more than a double holds: where that could matter they are compared to the last digit.
        return Math.Abs(difference) > 1e-15 * (Math.Abs(one) + Math.Abs(other)) ? Math.Sign(difference) : ((decimal)dx * py).CompareTo((decimal)dy * px);
    }

    private static bool Meet(long[] x, long[] y, int one, int other)
    {
        int a = one, b = one + 1, c = other, d = (other + 1) % x.Length;
        if (Math.Max(x[a], x[b]) < Math.Min(x[c], x[d]) || Math.Max(x[c], x[d]) < Math.Min(x[a], x[b]) || Math.Max(y[a], y[b]) < Math.Min(y[c], y[d]) || Math.Max(y[c], y[d]) < Math.Min(y[a], y[b]))
        {
            return false;
        }

        int p = Side(x, y, a, b, c), q = Side(x, y, a, b, d), r = Side(x, y, c, d, a), s = Side(x, y, c, d, b);
        return (p * q < 0 && r * s < 0)
            || (p == 0 && IsBetween(x, y, a, b, c)) || (q == 0 && IsBetween(x, y, a, b, d)) || (r == 0 && IsBetween(x, y, c, d, a)) || (s == 0 && IsBetween(x, y, c, d, b));
    }

    /// <summary>Neighbouring sides share a corner and nothing else.</summary>
    private static bool FoldsBack(long[] x, long[] y, int one, int other)
    {
        // The corner they share, and the far ends.
        int at = other == one + 1 ? other : one, before = (at + x.Length - 1) % x.Length, after = (at + 1) % x.Length;
        double dot = ((double)(x[before] - x[at]) * (x[after] - x[at])) + ((double)(y[before] - y[at]) * (y[after] - y[at]));
        return (x[before] == x[at] && y[before] == y[at]) || (x[after] == x[at] && y[after] == y[at]) || (Side(x, y, before, at, after) == 0 && dot > 0);
    }

    private static bool IsBetween(long[] x, long[] y, int a, int b, int point) =>
        x[point] >= Math.Min(x[a], x[b]) && x[point] <= Math.Max(x[a], x[b]) && y[point] >= Math.Min(y[a], y[b]) && y[point] <= Math.Max(y[a], y[b]);
}
