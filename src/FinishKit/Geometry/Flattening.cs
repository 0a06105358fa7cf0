using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>The line or plane that a furred surface can follow with every point touched or packed out, and the packer at each.</summary>
/// <remarks>
/// Points are read off a string (for a line) or a flat reference (for a plane) on the room's side, outward: greater is farther from the room. The
/// answer lies on the room's side of every point or touches it; a packer fills what is between, measured along the offset.
/// </remarks>
public static class Flattening
{
    internal const int MostOnLine = 200, MostOnPlane = 60;

    /// <summary>Points closer than this are one place: no tilt is to be had from them.</summary>
    private const double LeastSpread = 1;

    private static readonly Allowed s_countOnLine = new(2, MostOnLine, "points");
    private static readonly Allowed s_countOnPlane = new(3, MostOnPlane, "points");
    private static readonly Allowed s_place = new(-1e5, 1e5, "mm");
    private static readonly Allowed s_offset = new(-1e4, 1e4, "mm");
    private static readonly Allowed s_least = new(0, 100, "mm");
    private static readonly Allowed s_step = new(Allowed.OneStep, 100, "mm");

    /// <summary>The straight line along a row of points, a rail or a strip over ribs.</summary>
    /// <param name="points">The points, 2 to 200 in any order, not all within 1 mm along; along within -100 m to 100 m, offsets within -10 m to 10 m.</param>
    /// <param name="aim">What is kept least: the total, or the greatest packing.</param>
    /// <param name="leastPacking">Packing that every point gets at least, a tape or a pad [length], 0 to 100 mm; null for none.</param>
    /// <param name="packerStep">Thickness that packers come in, to round up to [length], more than 0 up to 100 mm; null leaves packings as they are.</param>
    /// <returns>The line, and the packer at each point.</returns>
    /// <remarks>
    /// <para>Formula: packing p = x - x0 - b (s - s0) + least, with (s0, x0) a point it touches. Least of sum p, or of max p, over all lines with p at the least or more everywhere. Either is least
    /// at the slope through some two of the points, so all of these are tried: exact. Of equals the one that is less by the other aim, then the first pair.</para>
    /// <para>Validity: slopes small enough that a packer square to the string is as thick as one square to the line (1% at 8°; beyond, <c>geometry-packers-steep</c> says by how much).</para>
    /// <para>Source: geometry-packers (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are too few or too many points, they are all in one place, or a value is outside its range.</exception>
    /// <exception cref="ArgumentException">A length is in an undefined unit, or the aim is none of the two.</exception>
    /// <example><code>
    /// PackedLine rail = Flattening.Line([new(Mm(0), Mm(20)), new(Mm(400), Mm(26)), new(Mm(800), Mm(24)), new(Mm(1200), Mm(26))], packerStep: Mm(1.5));
    /// Length atFirstRib = rail.Points[1].Packing;         // 4 mm: 26 - 22, the line goes from 20 to 26
    /// Length made = rail.Points[1].Stocked!.Value;        // 4.5 mm: three packers
    /// Length total = rail.Total;                          // 4 mm: the other three touch
    /// </code></example>
    public static PackedLine Line(IReadOnlyList<MeasuredPoint> points, FlatteningAim aim = FlatteningAim.LeastTotal, Length? leastPacking = null, Length? packerStep = null)
    {
        (double[][] places, double least, double? step) = ReadLine(points, aim, leastPacking, packerStep, null);
        return new PackedLine(places[0], places[1], PackingSearch.Line(places[0], places[1], aim), aim, least, step);
    }

    /// <summary>All problems with the input of <see cref="Line(IReadOnlyList{MeasuredPoint}, FlatteningAim, Length?, Length?)"/>; nothing is thrown.</summary>
    /// <param name="points">As there.</param>
    /// <param name="aim">As there.</param>
    /// <param name="leastPacking">As there.</param>
    /// <param name="packerStep">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckLine(IReadOnlyList<MeasuredPoint> points, FlatteningAim aim = FlatteningAim.LeastTotal, Length? leastPacking = null, Length? packerStep = null)
    {
        List<InputProblem> problems = [];
        ReadLine(points, aim, leastPacking, packerStep, problems);
        return problems;
    }

    /// <summary>The plane over points of a face.</summary>
    /// <param name="points">The points, 3 to 60 in any order, not all within 1 mm of one line; places within -100 m to 100 m, offsets within -10 m to 10 m.</param>
    /// <param name="aim">What is kept least: the total, or the greatest packing.</param>
    /// <param name="leastPacking">Packing that every point gets at least, a tape or a pad [length], 0 to 100 mm; null for none.</param>
    /// <param name="packerStep">Thickness that packers come in, to round up to [length], more than 0 up to 100 mm; null leaves packings as they are.</param>
    /// <returns>The plane, and the packer at each point.</returns>
    /// <remarks>
    /// <para>Formula: packing p = x - x0 - a (u - u0) - b (v - v0) + least, with (u0, v0, x0) a point it touches. The total is least at the tilt through some three of the points; the greatest packing there or at
    /// one along two pairs of them, so all of these are tried: exact. Of equals the one that is less by the other aim, then the first.</para>
    /// <para>Validity: as for a line; a flat face. Some 60 points are 1.5 million tilts, done in well under a second.</para>
    /// <para>Source: geometry-packers (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are too few or too many points, or a value is outside its range.</exception>
    /// <exception cref="ArgumentException">The points lie on one line, a length is in an undefined unit, or the aim is none of the two.</exception>
    /// <example><code>
    /// PackedPlane face = Flattening.Plane([new(Mm(0), Mm(0), Mm(20)), new(Mm(1000), Mm(0), Mm(22)), new(Mm(0), Mm(500), Mm(21)), new(Mm(1000), Mm(500), Mm(26))]);
    /// Length corner = face.Points[3].Packing;             // 3 mm: 26 - (20 + 2 + 1), the other three touch
    /// Length reference = face.OffsetAt(Mm(500), Mm(250)); // 21.5 mm
    /// </code></example>
    public static PackedPlane Plane(IReadOnlyList<SurfacePoint> points, FlatteningAim aim = FlatteningAim.LeastTotal, Length? leastPacking = null, Length? packerStep = null)
    {
        (double[][] places, double least, double? step) = ReadPlane(points, aim, leastPacking, packerStep, null);
        return new PackedPlane(places[0], places[1], places[2], PackingSearch.Plane(places[0], places[1], places[2], aim), aim, least, step);
    }

    /// <summary>All problems with the input of <see cref="Plane(IReadOnlyList{SurfacePoint}, FlatteningAim, Length?, Length?)"/>; nothing is thrown.</summary>
    /// <param name="points">As there.</param>
    /// <param name="aim">As there.</param>
    /// <param name="leastPacking">As there.</param>
    /// <param name="packerStep">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckPlane(IReadOnlyList<SurfacePoint> points, FlatteningAim aim = FlatteningAim.LeastTotal, Length? leastPacking = null, Length? packerStep = null)
    {
        List<InputProblem> problems = [];
        ReadPlane(points, aim, leastPacking, packerStep, problems);
        return problems;
    }

    private static (double[][] Places, double Least, double? Step) ReadLine(IReadOnlyList<MeasuredPoint> points, FlatteningAim aim, Length? leastPacking, Length? packerStep, List<InputProblem>? problems)
    {
        double[][] places = [[], []];
        if (Counts(points, s_countOnLine, problems))
        {
            places = [new double[points.Count], new double[points.Count]];
            double low = double.PositiveInfinity, high = double.NegativeInfinity;
            for (int i = 0; i < points.Count; i++)
            {
                places[0][i] = Door.Millimetres(points[i].Along, new Name(nameof(points), i, ".Along"), s_place, problems);
                places[1][i] = Door.Millimetres(points[i].Offset, new Name(nameof(points), i, ".Offset"), s_offset, problems);
                low = Math.Min(low, places[0][i]);
                high = Math.Max(high, places[0][i]);
            }

            if (Grid.Snap(high - low) < LeastSpread)
            {
                Door.Report(new InputProblem(nameof(points), $"within {Print.Mm(high - low)} along", $"points {Print.Number(LeastSpread)} mm apart or more", isRange: true), problems);
            }
        }

        (double least, double? step) = ReadPackers(aim, leastPacking, packerStep, problems);
        return (places, least, step);
    }

    private static (double[][] Places, double Least, double? Step) ReadPlane(IReadOnlyList<SurfacePoint> points, FlatteningAim aim, Length? leastPacking, Length? packerStep, List<InputProblem>? problems)
    {
        double[][] places = [[], [], []];
        if (Counts(points, s_countOnPlane, problems))
        {
            places = [new double[points.Count], new double[points.Count], new double[points.Count]];
            for (int i = 0; i < points.Count; i++)
            {
                places[0][i] = Door.Millimetres(points[i].U, new Name(nameof(points), i, ".U"), s_place, problems);
                places[1][i] = Door.Millimetres(points[i].V, new Name(nameof(points), i, ".V"), s_place, problems);
                places[2][i] = Door.Millimetres(points[i].Offset, new Name(nameof(points), i, ".Offset"), s_offset, problems);
            }

            // Not a number where a place was refused: that is reported already.
            if (WidthOf(places[0], places[1]) < LeastSpread)
            {
                Door.Report(
                    new InputProblem(nameof(points), "on one line in u and v", $"three points or more that are not all within {Print.Number(LeastSpread)} mm of one line; for a row of points ask for the line", isRange: false), problems);
            }
        }

        (double least, double? step) = ReadPackers(aim, leastPacking, packerStep, problems);
        return (places, least, step);
    }

    private static bool Counts<T>(IReadOnlyList<T> points, Allowed allowed, List<InputProblem>? problems)
    {
        if (Door.IsMissing(points, new Name(nameof(points)), "a list of points", problems))
        {
            return false;
        }

        if (allowed.Holds(points.Count))
        {
            return true;
        }

        Door.Report(new InputProblem(nameof(points), Print.Number(points.Count) + " points", allowed.ToString(), isRange: true), problems);
        return false;
    }

    private static (double Least, double? Step) ReadPackers(FlatteningAim aim, Length? leastPacking, Length? packerStep, List<InputProblem>? problems)
    {
        if (aim is not (FlatteningAim.LeastTotal or FlatteningAim.LeastGreatest))
        {
            Door.Report(new InputProblem(nameof(aim), FormattableString.Invariant($"{(int)aim}"), "least total or least greatest", isRange: false), problems);
        }

        double least = leastPacking is { } given ? Door.Millimetres(given, nameof(leastPacking), s_least, problems) : 0;
        double? step = packerStep is { } size ? Door.Millimetres(size, nameof(packerStep), s_step, problems) : null;
        return (least, step);
    }

    /// <summary>The greatest distance of a point from the line through the two that are farthest apart.</summary>
    private static double WidthOf(double[] u, double[] v)
    {
        double farthest = -1;
        (int one, int other) = (0, 0);
        for (int i = 0; i < u.Length; i++)
        {
            for (int j = i + 1; j < u.Length; j++)
            {
                double apart = ((u[j] - u[i]) * (u[j] - u[i])) + ((v[j] - v[i]) * (v[j] - v[i]));
                if (apart > farthest)
                {
                    (farthest, one, other) = (apart, i, j);
                }
            }
        }

        double width = 0;
        for (int i = 0; i < u.Length && farthest > 0; i++)
        {
            width = Math.Max(width, Math.Abs(((u[other] - u[one]) * (v[i] - v[one])) - ((v[other] - v[one]) * (u[i] - u[one]))) / Math.Sqrt(farthest));
        }

        return Grid.Snap(width);
    }
}
