using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>
/// Which circle a curved surface follows, from what a person measures: a straightedge laid on it (the chord) and the gap under
/// its middle (the rise); and the ways back.
/// </summary>
/// <remarks>
/// Rise, radius and angle are signed: positive where the surface is hollow to the room, negative where it bulges into it. A flat
/// surface has no radius and curvature 0. Chord and arc length are positive. An arc may go past a half circle: then its rise is
/// greater than half its chord.
/// </remarks>
public static class Arc
{
    private static readonly Allowed s_length = new(Allowed.OneStep, 1e6, "mm");
    private static readonly Allowed s_signed = new(-1e6, 1e6, "mm");
    private static readonly Allowed s_halfAngle = new(-179, 179, "deg");

    /// <summary>The arc through the ends and the middle of a straightedge's gap.</summary>
    /// <param name="chord">Length of the straightedge that touches at both ends [length], more than 0 up to 1 km.</param>
    /// <param name="rise">Gap under its middle [length], positive where hollow to the room, -1 km to 1 km.</param>
    /// <returns>The arc; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: R = c²/(8 s) + s/2; half-angle = 2 atan(2 s/c); arc length = 2 R half-angle.</para>
    /// <para>Validity: any rise, also past a half circle (rise over half the chord); the surface is taken as one circle between the ends.</para>
    /// <para>Source: geometry-circle (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    /// <exception cref="ArgumentException">A length is in an undefined unit.</exception>
    /// <example><code>
    /// CircularArc band = Arc.FromChordAndRise(Mm(300), Mm(2));
    /// Length? radius = band.Radius;                       // 5626 mm
    /// Length? least = band.LeastRadius(Mm(0.5));          // 4501.25 mm: half a millimetre more rise
    /// Length? most = band.GreatestRadius(Mm(0.5));        // 7500.75 mm: half a millimetre less
    /// Length edge = band.StraightedgeFor(Mm(0.5), 0.1)!.Value; // 497.206 mm holds the radius within 10%
    /// </code></example>
    public static CircularArc FromChordAndRise(Length chord, Length rise)
    {
        double c = Door.Millimetres(chord, nameof(chord), s_length, null);
        double s = Door.Millimetres(rise, nameof(rise), s_signed, null);
        return Solve(c, s, default(Silent), riseWasRead: true);
    }

    /// <summary>All problems with the input of <see cref="FromChordAndRise(Length, Length)"/>; nothing is thrown.</summary>
    /// <param name="chord">As there.</param>
    /// <param name="rise">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckFromChordAndRise(Length chord, Length rise)
    {
        List<InputProblem> problems = [];
        Door.Millimetres(chord, nameof(chord), s_length, problems);
        Door.Millimetres(rise, nameof(rise), s_signed, problems);
        return problems;
    }

    /// <summary>The arc of a known circle over a chord: what gap a straightedge should show.</summary>
    /// <param name="chord">Chord [length], more than 0 up to 1 km, at most twice the radius.</param>
    /// <param name="radius">Radius [length], positive where hollow to the room; -1 km to 1 km, not 0.</param>
    /// <param name="pastHalfCircle">Take the longer of the two arcs over the chord.</param>
    /// <returns>The arc; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: s = h/(R + sqrt(R² - h)) with h = c²/4, for the longer arc s = R + sqrt(R² - h); then as from chord and rise.</para>
    /// <para>Validity: chord at most twice the radius.</para>
    /// <para>Source: geometry-circle (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    /// <exception cref="ArgumentException">A length is in an undefined unit.</exception>
    /// <example><code>
    /// CircularArc bow = Arc.FromChordAndRadius(Mm(1000), Mm(5012.5));
    /// Length gap = bow.Rise;                              // 25 mm
    /// </code></example>
    public static CircularArc FromChordAndRadius(Length chord, Length radius, bool pastHalfCircle = false)
    {
        (double c, double r) = ReadChordAndRadius(chord, radius, null);
        double size = Math.Abs(r);
        double halfChordSquared = c * c / 4;
        double root = Math.Sqrt(Math.Max(0, (size * size) - halfChordSquared));
        double rise = pastHalfCircle ? size + root : halfChordSquared / (size + root);
        return Solve(c, r < 0 ? -rise : rise, default(Silent));
    }

    /// <summary>All problems with the input of <see cref="FromChordAndRadius(Length, Length, bool)"/>; nothing is thrown.</summary>
    /// <param name="chord">As there.</param>
    /// <param name="radius">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckFromChordAndRadius(Length chord, Length radius)
    {
        List<InputProblem> problems = [];
        ReadChordAndRadius(chord, radius, problems);
        return problems;
    }

    /// <summary>The arc of a known circle with a known rise: how long a straightedge shows that gap.</summary>
    /// <param name="rise">Rise [length], -1 km to 1 km, not 0, of the radius' sign, less than twice the radius.</param>
    /// <param name="radius">Radius [length], positive where hollow to the room; -1 km to 1 km, not 0.</param>
    /// <returns>The arc; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: c = 2 sqrt(s (2 R - s)); then as from chord and rise.</para>
    /// <para>Validity: rise and radius of one sign, rise less than twice the radius.</para>
    /// <para>Source: geometry-circle (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    /// <exception cref="ArgumentException">A length is in an undefined unit.</exception>
    /// <example><code>
    /// CircularArc bow = Arc.FromRiseAndRadius(Mm(50), Mm(3625));
    /// Length straightedge = bow.Chord;                    // 1200 mm
    /// </code></example>
    public static CircularArc FromRiseAndRadius(Length rise, Length radius)
    {
        (double s, double r) = ReadRiseAndRadius(rise, radius, null);
        return Solve(2 * Math.Sqrt(s * ((2 * r) - s)), s, default(Silent));
    }

    /// <summary>All problems with the input of <see cref="FromRiseAndRadius(Length, Length)"/>; nothing is thrown.</summary>
    /// <param name="rise">As there.</param>
    /// <param name="radius">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckFromRiseAndRadius(Length rise, Length radius)
    {
        List<InputProblem> problems = [];
        ReadRiseAndRadius(rise, radius, problems);
        return problems;
    }

    /// <summary>The arc over a chord that turns by a known angle.</summary>
    /// <param name="chord">Chord [length], more than 0 up to 1 km.</param>
    /// <param name="halfAngle">Half the angle the arc turns through [angle], positive where hollow to the room, -179° to 179°.</param>
    /// <returns>The arc; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: s = (c/2) tan(half-angle/2); then as from chord and rise.</para>
    /// <para>Validity: half-angle within ±179°.</para>
    /// <para>Source: geometry-circle (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is in an undefined unit.</exception>
    /// <example><code>
    /// CircularArc half = Arc.FromChordAndHalfAngle(Mm(2000), Angle.FromDegrees(90));
    /// Length? radius = half.Radius;                       // 1000 mm: a half circle
    /// </code></example>
    public static CircularArc FromChordAndHalfAngle(Length chord, Angle halfAngle)
    {
        double c = Door.Millimetres(chord, nameof(chord), s_length, null);
        double angle = Door.Radians(halfAngle, nameof(halfAngle), s_halfAngle, null);
        return Solve(c, c / 2 * Math.Tan(angle / 2), default(Silent));
    }

    /// <summary>All problems with the input of <see cref="FromChordAndHalfAngle(Length, Angle)"/>; nothing is thrown.</summary>
    /// <param name="chord">As there.</param>
    /// <param name="halfAngle">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckFromChordAndHalfAngle(Length chord, Angle halfAngle)
    {
        List<InputProblem> problems = [];
        Door.Millimetres(chord, nameof(chord), s_length, problems);
        Door.Radians(halfAngle, nameof(halfAngle), s_halfAngle, problems);
        return problems;
    }

    /// <summary>The arc of a known length over a chord: a flexible tape along the surface and a straightedge across it.</summary>
    /// <param name="chord">Chord [length], more than 0 up to 1 km.</param>
    /// <param name="arcLength">Length along the surface [length], more than 0 up to 1 km, from the chord up to 100 times it.</param>
    /// <param name="bulging">The surface bulges into the room: rise and radius come out negative.</param>
    /// <returns>The arc; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: sin(half-angle)/half-angle = c/l, solved by Newton's method; then as from chord and half-angle.</para>
    /// <para>Validity: arc length from the chord up to 100 times the chord. Poorly conditioned for shallow arcs: 1 mm of arc length on 1000 mm is 19 mm of rise.</para>
    /// <para>Source: geometry-circle (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    /// <exception cref="ArgumentException">A length is in an undefined unit.</exception>
    /// <example><code>
    /// CircularArc bow = Arc.FromChordAndArcLength(Mm(2000), Mm(3141.592654));
    /// Length gap = bow.Rise;                              // 1000 mm: a half circle
    /// </code></example>
    public static CircularArc FromChordAndArcLength(Length chord, Length arcLength, bool bulging = false)
    {
        (double c, double l) = ReadChordAndArcLength(chord, arcLength, null);
        double rise = c / 2 * Math.Tan(HalfAngleOf(c / l) / 2);
        return Solve(c, bulging ? -rise : rise, default(Silent));
    }

    /// <summary>All problems with the input of <see cref="FromChordAndArcLength(Length, Length, bool)"/>; nothing is thrown.</summary>
    /// <param name="chord">As there.</param>
    /// <param name="arcLength">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckFromChordAndArcLength(Length chord, Length arcLength)
    {
        List<InputProblem> problems = [];
        ReadChordAndArcLength(chord, arcLength, problems);
        return problems;
    }

    /// <summary>The arc of a known length on a known circle.</summary>
    /// <param name="radius">Radius [length], positive where hollow to the room; -1 km to 1 km, not 0.</param>
    /// <param name="arcLength">Length along the surface [length], more than 0 up to 1 km, less than 358/360 of the full circle.</param>
    /// <returns>The arc; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: half-angle = l/(2 R); c = 2 R sin(half-angle); then as from chord and half-angle.</para>
    /// <para>Validity: arc length up to 358/360 of the circumference.</para>
    /// <para>Source: geometry-circle (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    /// <exception cref="ArgumentException">A length is in an undefined unit.</exception>
    /// <example><code>
    /// CircularArc band = Arc.FromRadiusAndArcLength(Mm(2216), Mm(352));
    /// Length chord = band.Chord;                          // 351.63 mm
    /// </code></example>
    public static CircularArc FromRadiusAndArcLength(Length radius, Length arcLength)
    {
        (double r, double l) = ReadRadiusAndArcLength(radius, arcLength, null);
        double halfAngle = l / (2 * Math.Abs(r));
        double c = 2 * Math.Abs(r) * Math.Sin(halfAngle);
        double rise = c / 2 * Math.Tan(halfAngle / 2);
        return Solve(c, r < 0 ? -rise : rise, default(Silent));
    }

    /// <summary>All problems with the input of <see cref="FromRadiusAndArcLength(Length, Length)"/>; nothing is thrown.</summary>
    /// <param name="radius">As there.</param>
    /// <param name="arcLength">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckFromRadiusAndArcLength(Length radius, Length arcLength)
    {
        List<InputProblem> problems = [];
        ReadRadiusAndArcLength(radius, arcLength, problems);
        return problems;
    }

    /// <summary>The one formula body, for the numbers and for the workings.</summary>
    internal static CircularArc Solve<TTrace>(double chord, double rise, TTrace trace, bool riseWasRead = false)
        where TTrace : struct, ITrace
    {
        trace.Given("c", chord, "mm", Sources.Given);
        trace.Given("s", rise, "mm", Sources.Given);
        if (rise == 0)
        {
            double flatLength = trace.Step("l", nameof(flatLength), chord, "mm", Sources.Circle);
            return new CircularArc(chord, rise, 0, 0, flatLength, riseWasRead);
        }

        double radius = trace.Step("R", nameof(radius), (chord * chord / (8 * rise)) + (rise / 2), "mm", Sources.Circle);
        double halfAngle = trace.Step("theta", nameof(halfAngle), 2 * Math.Atan(2 * rise / chord), "rad", Sources.Circle);
        double arcLength = trace.Step("l", nameof(arcLength), 2 * radius * halfAngle, "mm", Sources.Circle);
        return new CircularArc(chord, rise, radius, halfAngle, arcLength, riseWasRead);
    }

    /// <summary>The half-angle whose sine over itself is <paramref name="chordOverArc"/>: Newton's method from above, where the function is convex.</summary>
    private static double HalfAngleOf(double chordOverArc)
    {
        if (chordOverArc >= 1)
        {
            return 0;
        }

        // sin x = k x. Start: the series 1 - x²/6 is below sin x/x, so its root lies below the true one; the step is safe from there.
        double angle = Math.Sqrt(6 * (1 - chordOverArc));
        for (int i = 0; i < 60; i++)
        {
            double next = angle - ((Math.Sin(angle) - (chordOverArc * angle)) / (Math.Cos(angle) - chordOverArc));
            if (Math.Abs(next - angle) <= 1e-15 * angle)
            {
                return next;
            }

            angle = next;
        }

        return angle;
    }

    private static (double Chord, double Radius) ReadChordAndRadius(Length chord, Length radius, List<InputProblem>? problems)
    {
        double r = ReadRadius(radius, problems);
        double c = Door.Millimetres(chord, nameof(chord), s_length, problems);
        if (c > 2 * Math.Abs(r))
        {
            Door.Report(new InputProblem(nameof(chord), Print.Number(c) + " mm", $"at most twice the radius, {Print.Number(2 * Math.Abs(r))} mm", isRange: true), problems);
        }

        return (c, r);
    }

    private static (double Rise, double Radius) ReadRiseAndRadius(Length rise, Length radius, List<InputProblem>? problems)
    {
        double r = ReadRadius(radius, problems);
        double s = Door.Millimetres(rise, nameof(rise), s_signed, problems);
        if (!double.IsNaN(r) && !double.IsNaN(s) && (s == 0 || s < 0 != r < 0 || Math.Abs(s) >= 2 * Math.Abs(r)))
        {
            Door.Report(new InputProblem(nameof(rise), Print.Number(s) + " mm", $"of the radius' sign, not 0, less than twice the radius, {Print.Number(2 * r)} mm", isRange: true), problems);
        }

        return (s, r);
    }

    private static (double Chord, double ArcLength) ReadChordAndArcLength(Length chord, Length arcLength, List<InputProblem>? problems)
    {
        double c = Door.Millimetres(chord, nameof(chord), s_length, problems);
        double l = Door.Millimetres(arcLength, nameof(arcLength), s_length, problems);
        if (l < c || l > 100 * c)
        {
            Door.Report(new InputProblem(nameof(arcLength), Print.Number(l) + " mm", $"the chord, {Print.Number(c)} mm, up to 100 times it", isRange: true), problems);
        }

        return (c, l);
    }

    private static (double Radius, double ArcLength) ReadRadiusAndArcLength(Length radius, Length arcLength, List<InputProblem>? problems)
    {
        double r = ReadRadius(radius, problems);
        double l = Door.Millimetres(arcLength, nameof(arcLength), s_length, problems);
        double most = 2 * Math.PI * Math.Abs(r) * (358.0 / 360);
        if (l > most)
        {
            Door.Report(new InputProblem(nameof(arcLength), Print.Number(l) + " mm", $"at most 358/360 of the circle, {Print.Mm(most)}", isRange: true), problems);
        }

        return (r, l);
    }

    private static double ReadRadius(Length radius, List<InputProblem>? problems)
    {
        double r = Door.Millimetres(radius, nameof(radius), s_signed, problems);
        if (r == 0)
        {
            Door.Report(new InputProblem(nameof(radius), "0 mm", "-1000000 to 1000000 mm, not 0", isRange: true), problems);
        }

        return r;
    }
}
