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
        double left = length, right = 0, bottom = width, top = 0;
        for (int i = 0; i < corners.Count; i++)
        {
            Name at = new(name, i);
            double x = Grid.Snap(Door.Millimetres(corners[i].Along, at.Then(".Along"), along, problems));
            double y = Grid.Snap(Door.Millimetres(corners[i].Offset, at.Then(".Offset"), across, problems));
            if (double.IsNaN(x + y))
            {
                return;
            }

            (left, right, bottom, top) = (Math.Min(left, x), Math.Max(right, x), Math.Min(bottom, y), Math.Max(top, y));
        }

        if (left != 0 || bottom != 0 || right != Grid.Snap(length) || top != Grid.Snap(width))
        {
            Door.Report(new InputProblem(name, $"corners from {Print.Number(left)} to {Print.Number(right)} mm along and {Print.Number(bottom)} to {Print.Number(top)} mm across", $"such that they touch each side of the {Print.Number(length)} x {Print.Number(width)} mm round them", isRange: false), problems);
            return;
        }

        for (int i = 0; i < corners.Count; i++)
        {
            for (int k = i + 1; k < corners.Count; k++)
            {
                bool areNeighbours = k == i + 1 || (i == 0 && k == corners.Count - 1);
                if (areNeighbours ? FoldsBack(corners, i, k) : Meet(corners, i, k))
                {
                    Door.Report(new InputProblem(name, $"sides {Print.Number(i)} and {Print.Number(k)} that meet or fold back", "an outline whose sides meet only where one follows the other", isRange: false), problems);
                    return;
                }
            }
        }
    }

    private static (double X, double Y) At(IReadOnlyList<MeasuredPoint> corners, int at) => (Grid.Snap(Door.Millimetres(corners[at].Along)), Grid.Snap(Door.Millimetres(corners[at].Offset)));

    /// <summary>More than 0 where the third lies to the left of the line from the first to the second.</summary>
    private static double Side((double X, double Y) from, (double X, double Y) to, (double X, double Y) point) => ((to.X - from.X) * (point.Y - from.Y)) - ((to.Y - from.Y) * (point.X - from.X));

    private static bool Meet(IReadOnlyList<MeasuredPoint> corners, int one, int other)
    {
        (double X, double Y) a = At(corners, one), b = At(corners, one + 1), c = At(corners, other), d = At(corners, (other + 1) % corners.Count);
        double p = Side(a, b, c), q = Side(a, b, d), r = Side(c, d, a), s = Side(c, d, b);
        if (((p > 0 && q < 0) || (p < 0 && q > 0)) && ((r > 0 && s < 0) || (r < 0 && s > 0)))
        {
            return true;
        }

        return (p == 0 && IsBetween(a, b, c)) || (q == 0 && IsBetween(a, b, d)) || (r == 0 && IsBetween(c, d, a)) || (s == 0 && IsBetween(c, d, b));
    }

    /// <summary>Neighbouring sides share a corner and nothing else.</summary>
    private static bool FoldsBack(IReadOnlyList<MeasuredPoint> corners, int one, int other)
    {
        // The corner they share, and the far ends.
        int shared = other == one + 1 ? other : one;
        (double X, double Y) at = At(corners, shared), before = At(corners, (shared + corners.Count - 1) % corners.Count), after = At(corners, (shared + 1) % corners.Count);
        double dot = ((before.X - at.X) * (after.X - at.X)) + ((before.Y - at.Y) * (after.Y - at.Y));
        return before == at || after == at || (Side(before, at, after) == 0 && dot > 0);
    }

    private static bool IsBetween((double X, double Y) a, (double X, double Y) b, (double X, double Y) point) =>
        point.X >= Math.Min(a.X, b.X) && point.X <= Math.Max(a.X, b.X) && point.Y >= Math.Min(a.Y, b.Y) && point.Y <= Math.Max(a.Y, b.Y);
}
