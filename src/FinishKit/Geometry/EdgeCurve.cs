using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Which way an edge runs, from its offsets measured at a few heights; and an edge that is known to be straight or an arc.</summary>
/// <remarks>
/// A point's Along is its height v up the plumb line or string, its Offset the distance u of the edge. Offsets may count from any line
/// across the courses, and are greater farther to the rear. Nothing is said beyond the lowest and the highest point.
/// </remarks>
public static class EdgeCurve
{
    internal const int MostPoints = 200;

    /// <summary>Nearer heights are a slip, and would let a reading error of half a millimetre tilt the edge by more than 25 degrees.</summary>
    internal const double LeastSpacing = 1;

    private static readonly Allowed s_count = new(2, MostPoints, "points");
    private static readonly Allowed s_place = new(-1e6, 1e6, "mm");
    private static readonly Allowed s_limit = new(0, 1000, "mm");

    /// <summary>The greatest lean of an arc at its ends; past a quarter turn it would have two offsets at one height.</summary>
    private const double MostLean = 89;

    /// <summary>The edge through measured points, and how far the three curves through them differ.</summary>
    /// <param name="points">Height and offset of each point, 2 to 200, in any order, each within -1 km to 1 km, heights 1 mm or more apart.</param>
    /// <param name="fit">How the edge runs between the points; shape-preserving unless said.</param>
    /// <param name="differenceLimit">How far the curves may differ without a finding [length], 0 to 1 m; null for 1 mm, a judgement.</param>
    /// <returns>The edge.</returns>
    /// <remarks>
    /// <para>Formula: on each piece u = u_a + m_a x + q x² + c x³, x the height over its lower point, q = (3 d - 2 m_a - m_b)/h, c = (m_a + m_b - 2 d)/h², d the chord's slope, h its height; linear: m = d;
    /// shape-preserving: m = (w₁ + w₂)/(w₁/d₁ + w₂/d₂) with w₁ = 2 h₂ + h₁, w₂ = h₂ + 2 h₁, 0 where d₁ and d₂ differ in sign, at the ends ((2 h₁ + h₂) d₁ - h₁ d₂)/(h₁ + h₂), held back where it would turn; natural: m such that the second derivative is continuous and 0 at the ends.</para>
    /// <para>Validity: an edge with one offset at each height; between the points any curve is a guess, and the difference of three honest ones shows how good.</para>
    /// <para>Source: edge-curve (derived); default-edge-difference (judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are too few or too many points, two at one height, or a value is outside its range.</exception>
    /// <exception cref="ArgumentException">A length is in an undefined unit.</exception>
    /// <example><code>
    /// MeasuredEdge rear = EdgeCurve.Through([new(Mm(0), Mm(3400)), new(Mm(400), Mm(3392)), new(Mm(800), Mm(3369))]);
    /// Length offset = rear.OffsetAt(Mm(600));             // 3382.829 mm
    /// Length doubt = rear.GreatestDifference!.Value;      // 2.35 mm, so there is a finding:
    /// Length also = rear.GreatestDifferenceAt!.Value; // measure at 581.036 mm too
    /// </code></example>
    public static MeasuredEdge Through(IReadOnlyList<MeasuredPoint> points, EdgeFit fit = EdgeFit.ShapePreserving, Length? differenceLimit = null)
    {
        (double[] heights, double[] offsets, double limit) = Read(points, fit, differenceLimit, null);
        return MeasuredEdge.OfPoints(heights, offsets, fit, limit, differenceLimit is null);
    }

    /// <summary>All problems with the input of <see cref="Through(IReadOnlyList{MeasuredPoint}, EdgeFit, Length?)"/>; nothing is thrown.</summary>
    /// <param name="points">As there.</param>
    /// <param name="fit">As there.</param>
    /// <param name="differenceLimit">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckThrough(IReadOnlyList<MeasuredPoint> points, EdgeFit fit = EdgeFit.ShapePreserving, Length? differenceLimit = null)
    {
        List<InputProblem> problems = [];
        Read(points, fit, differenceLimit, problems);
        return problems;
    }

    /// <summary>A straight edge between two points, exactly.</summary>
    /// <param name="lower">Height and offset of its lower end, each within -1 km to 1 km.</param>
    /// <param name="upper">Height and offset of its upper end, each within -1 km to 1 km, 1 mm or more above the lower.</param>
    /// <returns>The edge.</returns>
    /// <remarks>
    /// <para>Formula: u = u_a + (v - v_a) tan phi, phi = atan((u_b - u_a)/(v_b - v_a)).</para>
    /// <para>Validity: an edge known to be straight; two points do not show it.</para>
    /// <para>Source: edge-exact (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range, or the upper point is not above the lower.</exception>
    /// <exception cref="ArgumentException">A length is in an undefined unit.</exception>
    /// <example><code>
    /// MeasuredEdge jamb = EdgeCurve.Straight(new(Mm(0), Mm(1400)), new(Mm(900), Mm(1415.75)));
    /// Angle lean = jamb.SlopeAt(Mm(450));                 // 1.003°: 15.75 in 900
    /// </code></example>
    public static MeasuredEdge Straight(MeasuredPoint lower, MeasuredPoint upper)
    {
        (double from, double to, double lowerOffset, double upperOffset) = Read(lower, upper, null);
        return MeasuredEdge.OfArc(from, to, lowerOffset, upperOffset, 0);
    }

    /// <summary>All problems with the input of <see cref="Straight(MeasuredPoint, MeasuredPoint)"/>; nothing is thrown.</summary>
    /// <param name="lower">As there.</param>
    /// <param name="upper">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckStraight(MeasuredPoint lower, MeasuredPoint upper)
    {
        List<InputProblem> problems = [];
        Read(lower, upper, problems);
        return problems;
    }

    /// <summary>An edge on an arc of a circle between two points, exactly: a string from end to end, and the gap at its middle.</summary>
    /// <param name="lower">Height and offset of its lower end, each within -1 km to 1 km.</param>
    /// <param name="upper">Height and offset of its upper end, each within -1 km to 1 km, 1 mm or more above the lower.</param>
    /// <param name="rise">Greatest distance of the arc from the string between its ends [length], -1 km to 1 km, positive where the edge lies farther to the rear than the string; 0 is straight. At no end may the arc lean 89° or more from the plumb line.</param>
    /// <returns>The edge.</returns>
    /// <remarks>
    /// <para>Formula: R = c²/(8 s) + s/2 over the chord c; the angle to the plumb line is phi + theta at the lower end, theta = 2 atan(2 s/c), and its sine falls by 1/R per millimetre of height; u = u_a + (v - v_a)(sin a + sin b)/(cos a + cos b) between angles a and b.</para>
    /// <para>Validity: an edge known to be one circle; the fit of a circle to more points tells how well that holds.</para>
    /// <para>Source: edge-exact, geometry-circle (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range, the upper point is not above the lower, or the arc leans too far.</exception>
    /// <exception cref="ArgumentException">A length is in an undefined unit.</exception>
    /// <example><code>
    /// MeasuredEdge pillar = EdgeCurve.OnArc(new(Mm(0), Mm(3400)), new(Mm(994), Mm(3352)), Mm(11.75));
    /// Length? radius = pillar.Radius;                     // 10,541.407 mm
    /// Length middle = pillar.OffsetAt(Mm(497));           // 3387.764 mm
    /// </code></example>
    public static MeasuredEdge OnArc(MeasuredPoint lower, MeasuredPoint upper, Length rise)
    {
        (double from, double to, double lowerOffset, double upperOffset) = Read(lower, upper, null);
        return MeasuredEdge.OfArc(from, to, lowerOffset, upperOffset, ReadRise(rise, from, to, lowerOffset, upperOffset, null));
    }

    /// <summary>All problems with the input of <see cref="OnArc(MeasuredPoint, MeasuredPoint, Length)"/>; nothing is thrown.</summary>
    /// <param name="lower">As there.</param>
    /// <param name="upper">As there.</param>
    /// <param name="rise">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckOnArc(MeasuredPoint lower, MeasuredPoint upper, Length rise)
    {
        List<InputProblem> problems = [];
        (double from, double to, double lowerOffset, double upperOffset) = Read(lower, upper, problems);
        ReadRise(rise, from, to, lowerOffset, upperOffset, problems);
        return problems;
    }

    private static (double[] Heights, double[] Offsets, double Limit) Read(IReadOnlyList<MeasuredPoint> points, EdgeFit fit, Length? differenceLimit, List<InputProblem>? problems)
    {
        bool isMissing = Door.IsMissing(points, new Name(nameof(points)), "a list of points", problems);
        int count = isMissing ? 0 : points.Count;
        if (!isMissing && !s_count.Holds(count))
        {
            Door.Report(new InputProblem(nameof(points), Print.Number(count) + " points", s_count.ToString(), isRange: true), problems);
            count = 0;
        }

        double[] heights = new double[count], offsets = new double[count];
        int[] given = new int[count];
        for (int i = 0; i < count; i++)
        {
            given[i] = i;
            heights[i] = Door.Millimetres(points[i].Along, new Name(nameof(points), i, ".Along"), s_place, problems);
            offsets[i] = Door.Millimetres(points[i].Offset, new Name(nameof(points), i, ".Offset"), s_place, problems);
        }

        double[] byHeight = (double[])heights.Clone();
        Array.Sort(heights, offsets);
        Array.Sort(byHeight, given);
        for (int i = 1; i < count; i++)
        {
            if (Grid.Snap(heights[i] - heights[i - 1]) < LeastSpacing)
            {
                // Named is the one that was given later.
                int later = Math.Max(given[i], given[i - 1]), earlier = Math.Min(given[i], given[i - 1]);
                bool isUpperLater = later == given[i];
                Door.Report(
                    new InputProblem(
                        new Name(nameof(points), later, ".Along").ToString(),
                        Print.Number(isUpperLater ? heights[i] : heights[i - 1]) + " mm",
                        $"a height {Print.Number(LeastSpacing)} mm or more from every other; {nameof(points)}[{Print.Number(earlier)}] is at {Print.Number(isUpperLater ? heights[i - 1] : heights[i])} mm",
                        isRange: true),
                    problems);
            }
        }

        if (fit is not (EdgeFit.Linear or EdgeFit.ShapePreserving or EdgeFit.NaturalCubic))
        {
            Door.Report(new InputProblem(nameof(fit), fit.ToString("D"), $"{nameof(EdgeFit.Linear)}, {nameof(EdgeFit.ShapePreserving)} or {nameof(EdgeFit.NaturalCubic)}", isRange: true), problems);
        }

        double limit = differenceLimit is { } most ? Door.Millimetres(most, nameof(differenceLimit), s_limit, problems) : EdgeDefaults.DifferenceLimit;
        return (heights, offsets, limit);
    }

    private static (double From, double To, double LowerOffset, double UpperOffset) Read(MeasuredPoint lower, MeasuredPoint upper, List<InputProblem>? problems)
    {
        double from = Door.Millimetres(lower.Along, nameof(lower) + ".Along", s_place, problems);
        double lowerOffset = Door.Millimetres(lower.Offset, nameof(lower) + ".Offset", s_place, problems);
        double to = Door.Millimetres(upper.Along, nameof(upper) + ".Along", s_place, problems);
        double upperOffset = Door.Millimetres(upper.Offset, nameof(upper) + ".Offset", s_place, problems);
        if (Grid.Snap(to - from) < LeastSpacing)
        {
            Door.Report(new InputProblem(nameof(upper) + ".Along", Print.Number(to) + " mm", $"{Print.Number(LeastSpacing)} mm or more above the lower point at {Print.Number(from)} mm", isRange: true), problems);
        }

        return (from, to, lowerOffset, upperOffset);
    }

    private static double ReadRise(Length rise, double from, double to, double lowerOffset, double upperOffset, List<InputProblem>? problems)
    {
        double s = Door.Millimetres(rise, nameof(rise), s_place, problems);
        double across = upperOffset - lowerOffset, up = to - from;
        double lean = (Math.Abs(Math.Atan2(across, up)) + (2 * Math.Abs(Math.Atan(2 * s / Math.Sqrt((across * across) + (up * up)))))) * (180 / Math.PI);
        if (s != 0 && lean >= MostLean)
        {
            Door.Report(
                new InputProblem(nameof(rise), Print.Number(s) + " mm", $"a rise with which the arc leans less than {Print.Number(MostLean)}° from the plumb line at both ends; it would lean {Print.Round(lean, 1)}°", isRange: true), problems);
        }

        return s;
    }
}
