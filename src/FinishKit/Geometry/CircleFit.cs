using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>Which circle a surface follows, from three or more measured points, and how sure that is.</summary>
/// <remarks>
/// Points are read off a straightedge or string on the room's side, outward: a greater offset is farther from the room. The radius is positive where the surface is hollow to the room: where the centre lies on the room's side (at a lesser offset) of the
/// middle of the points. Every point counts alike.
/// </remarks>
public static class CircleFit
{
    internal const int MostPoints = 1000;

    private static readonly Allowed s_count = new(3, MostPoints, "points");
    private static readonly Allowed s_place = new(-1e6, 1e6, "mm");

    /// <summary>The circle that comes nearest to the points: the least sum of squared distances, measured square to the circle.</summary>
    /// <param name="points">The points, 3 to 1000, three different ones at least, each within -1 km to 1 km either way; order does not matter.</param>
    /// <returns>The circle, or the straight line where the points show no curvature beyond their scatter.</returns>
    /// <remarks>
    /// <para>Formula: least sum of (|p - c| - R)² over centre c and radius R; rms = sqrt(sum/n); scatter s = sqrt(sum/(n - 3)); standard error of the curvature is s times the root of its entry of (JᵀJ)⁻¹, that of R the same times R².</para>
    /// <para>Validity: points of one circle, read with independent errors of one size. Flat where the rise of the circle over the points is under half a step of the grid, or its curvature no more than its standard error.</para>
    /// <para>Source: geometry-circle-fit (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are too few, too many or too few different points, or one is outside the range.</exception>
    /// <exception cref="ArgumentException">A length is in an undefined unit.</exception>
    /// <example><code>
    /// FittedCircle bow = CircleFit.Through([new(Mm(0), Mm(20)), new(Mm(500), Mm(45)), new(Mm(1000), Mm(20))]);
    /// Length? radius = bow.Radius;                        // 5012.5 mm, hollow to the room
    /// Length? error = bow.RadiusStandardError;            // null: three points always lie on a circle
    /// </code></example>
    public static FittedCircle Through(IReadOnlyList<MeasuredPoint> points)
    {
        (double[] along, double[] offset) = Read(points, null);
        return CircleThroughPoints.Fit(along, offset);
    }

    /// <summary>All problems with the input of <see cref="Through(IReadOnlyList{MeasuredPoint})"/>; nothing is thrown.</summary>
    /// <param name="points">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(IReadOnlyList<MeasuredPoint> points)
    {
        List<InputProblem> problems = [];
        Read(points, problems);
        return problems;
    }

    private static (double[] Along, double[] Offset) Read(IReadOnlyList<MeasuredPoint> points, List<InputProblem>? problems)
    {
        if (Door.IsMissing(points, new Name(nameof(points)), "a list of points", problems))
        {
            return ([], []);
        }

        int count = points.Count;
        if (!s_count.Holds(count))
        {
            Door.Report(new InputProblem(nameof(points), Print.Number(count) + " points", s_count.ToString(), isRange: true), problems);
            return ([], []);
        }

        double[] along = new double[count], offset = new double[count];
        bool isRead = true;
        for (int i = 0; i < count; i++)
        {
            along[i] = Door.Millimetres(points[i].Along, new Name(nameof(points), i, ".Along"), s_place, problems);
            offset[i] = Door.Millimetres(points[i].Offset, new Name(nameof(points), i, ".Offset"), s_place, problems);
            isRead &= !double.IsNaN(along[i] + offset[i]);
        }

        HashSet<(double, double)> places = [];
        for (int i = 0; i < count; i++)
        {
            places.Add((along[i], offset[i]));
        }

        if (isRead && places.Count < 3)
        {
            Door.Report(new InputProblem(nameof(points), Print.Number(places.Count) + " different points", "3 different points or more", isRange: true), problems);
        }

        return (along, offset);
    }
}
