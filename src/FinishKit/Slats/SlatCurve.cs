using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>
/// How straight slats sit side by side on battens that follow a curve: how much each turns, whether it stands hollow or rocks, and
/// what becomes of the gap at the face.
/// </summary>
/// <remarks>Radius as everywhere: positive where the surface is hollow to the room, negative where it bulges into it, null where it is flat. The slats run square to the curve.</remarks>
public static class SlatCurve
{
    private static readonly Allowed s_radius = new(-1e6, 1e6, "mm");
    private static readonly Allowed s_slat = new(5, 1000, "mm");
    private static readonly Allowed s_thickness = new(Allowed.OneStep, 1000, "mm");
    private static readonly Allowed s_gap = new(0, 1000, "mm");
    private static readonly Allowed s_standOff = new(0, 1000, "mm");

    /// <summary>How slats of one size sit on a curve.</summary>
    /// <param name="radius">Radius of the battens' surface [length], positive where hollow to the room, -1 km to 1 km, and at least slat width and gap together; null where flat.</param>
    /// <param name="slatWidth">Width of a slat [length], 5 mm to 1 m.</param>
    /// <param name="slatThickness">Thickness of a slat [length], more than 0 up to 1 m.</param>
    /// <param name="gap">Gap at the back, between neighbouring back edges [length], 0 to 1 m.</param>
    /// <returns>Turn, hollow or rock, gap at the face and bevel; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: hollow: turn = 2 asin(w/2R) + 2 asin(g/2R), hollow under the slat R - sqrt(R² - w²/4), gap at the face g - 2 t sin(turn/2);
    /// bulging: r = sqrt(R² + w²/4), turn = 2 atan(w/2R) + 2 asin(g/2r), rock r - R, gap at the face g + 2 t sin(turn/2). Bevel turn/2.
    /// Both differences are computed without cancellation.</para>
    /// <para>Validity: rigid square slats; on a hollow they rest on their back edges, on a bulge they touch along their middle. The face gap is held against 6 to 10 mm; <see cref="SlatCount.OnCurve"/> holds it against the run's own range.</para>
    /// <para>Source: slats-on-curve (derived); default-slat-gap (common practice).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    /// <exception cref="ArgumentException">A length is in an undefined unit.</exception>
    /// <example><code>
    /// SlatFit slat = SlatCurve.Fit(Mm(1500), Mm(40), Mm(12), Mm(8)); // hollow to the room
    /// Length face = slat.GapAtFace;                       // 7.616 mm
    /// Length hollow = slat.Hollow;                        // 0.133 mm under the middle
    /// Angle bevel = slat.Bevel;                           // 0.917 degrees on each edge keep 8 mm at the face
    /// </code></example>
    public static SlatFit Fit(Length? radius, Length slatWidth, Length slatThickness, Length gap) => Read(radius, slatWidth, slatThickness, gap, null);

    /// <summary>All problems with the input of <see cref="Fit(Length?, Length, Length, Length)"/>; nothing is thrown.</summary>
    /// <param name="radius">As there.</param>
    /// <param name="slatWidth">As there.</param>
    /// <param name="slatThickness">As there.</param>
    /// <param name="gap">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckFit(Length? radius, Length slatWidth, Length slatThickness, Length gap)
    {
        List<InputProblem> problems = [];
        Read(radius, slatWidth, slatThickness, gap, problems);
        return problems;
    }

    /// <summary>The widest slat that stands off a curve by no more than an amount: hollow under its middle, or rock at its edges.</summary>
    /// <param name="radius">Radius of the battens' surface [length], positive where hollow to the room, -1 km to 1 km, not 0; null where flat.</param>
    /// <param name="standOff">Greatest hollow or rock [length], 0 to 1 m, less than the radius.</param>
    /// <returns>Its width, rounded down to the 1 nm grid, 0 where nothing may stand off; null where the surface is flat, so that any width sits flat.</returns>
    /// <remarks>
    /// <para>Formula: hollow: w = 2 sqrt(h (2 R - h)); bulging: w = 2 sqrt(h (2 R + h)).</para>
    /// <para>Validity: rigid slats; stand-off less than the radius.</para>
    /// <para>Source: slats-on-curve (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    /// <exception cref="ArgumentException">A length is in an undefined unit.</exception>
    /// <example><code>
    /// Length? widest = SlatCurve.WidestSlat(Mm(3625), Mm(0.5)); // 120.412 mm
    /// </code></example>
    public static Length? WidestSlat(Length? radius, Length standOff)
    {
        (double r, double h) = ReadStandOff(radius, standOff, null);
        double size = Math.Abs(r);
        double other = r > 0 ? (2 * size) - h : (2 * size) + h;
        return r == 0 ? null : Door.Millimetres(Grid.SnapDown(2 * Math.Sqrt(h * other)));
    }

    /// <summary>All problems with the input of <see cref="WidestSlat(Length?, Length)"/>; nothing is thrown.</summary>
    /// <param name="radius">As there.</param>
    /// <param name="standOff">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckWidestSlat(Length? radius, Length standOff)
    {
        List<InputProblem> problems = [];
        ReadStandOff(radius, standOff, problems);
        return problems;
    }

    /// <summary>Slats of a run, of which width and gap are known to be good.</summary>
    internal static SlatFit Fit(Length? radius, double slatWidth, Length slatThickness, double gap, (double Least, double Greatest) range)
    {
        double r = ReadRadius(radius, slatWidth + gap, null);
        double t = Door.Millimetres(slatThickness, nameof(slatThickness), s_thickness, null);
        return new SlatFit(r, slatWidth, t, gap, range, false);
    }

    /// <summary>The one formula body, for the numbers and for the workings. A radius of 0 stands for flat.</summary>
    internal static SlatFitNumbers Solve<TTrace>(double radius, double slatWidth, double slatThickness, double gapAtBack, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("w", slatWidth, "mm", Sources.Given);
        trace.Given("t", slatThickness, "mm", Sources.Given);
        trace.Given("g", gapAtBack, "mm", Sources.Given);
        double gapAtFace;
        if (radius == 0)
        {
            gapAtFace = trace.Step("g_face", nameof(gapAtFace), gapAtBack, "mm", Sources.SlatsOnCurve);
            return new SlatFitNumbers(0, 0, gapAtFace, slatWidth);
        }

        double size = Math.Abs(radius);
        trace.Given("R", size, "mm", Sources.Given, meaning: radius > 0 ? "radius, hollow to the room" : "radius, bulging into the room");
        double turn, bevel, faceWidth;
        if (radius > 0)
        {
            double hollow = trace.Step("h", nameof(hollow), slatWidth * slatWidth / 4 / (size + Math.Sqrt((size * size) - (slatWidth * slatWidth / 4))), "mm", Sources.SlatsOnCurve);
            turn = trace.Step("delta", nameof(turn), (2 * Math.Asin(slatWidth / (2 * size))) + (2 * Math.Asin(gapAtBack / (2 * size))), "rad", Sources.SlatsOnCurve);
            gapAtFace = trace.Step("g_face", nameof(gapAtFace), gapAtBack - (2 * slatThickness * Math.Sin(turn / 2)), "mm", Sources.SlatsOnCurve);
            bevel = trace.Step("beta", nameof(bevel), turn / 2, "rad", Sources.SlatsOnCurve);
            faceWidth = trace.Step("w_face", nameof(faceWidth), slatWidth - (2 * slatThickness * Math.Tan(bevel)), "mm", Sources.SlatsOnCurve);
            return new SlatFitNumbers(turn, hollow, gapAtFace, faceWidth);
        }

        double edgeRadius = trace.Step("r", nameof(edgeRadius), Math.Sqrt((size * size) + (slatWidth * slatWidth / 4)), "mm", Sources.SlatsOnCurve);
        double rock = trace.Step("h", nameof(rock), slatWidth * slatWidth / 4 / (size + edgeRadius), "mm", Sources.SlatsOnCurve);
        turn = trace.Step("delta", nameof(turn), (2 * Math.Atan(slatWidth / (2 * size))) + (2 * Math.Asin(gapAtBack / (2 * edgeRadius))), "rad", Sources.SlatsOnCurve);
        gapAtFace = trace.Step("g_face", nameof(gapAtFace), gapAtBack + (2 * slatThickness * Math.Sin(turn / 2)), "mm", Sources.SlatsOnCurve);
        bevel = trace.Step("beta", nameof(bevel), turn / 2, "rad", Sources.SlatsOnCurve);
        faceWidth = trace.Step("w_face", nameof(faceWidth), slatWidth + (2 * slatThickness * Math.Tan(bevel)), "mm", Sources.SlatsOnCurve);
        return new SlatFitNumbers(turn, rock, gapAtFace, faceWidth);
    }

    private static SlatFit Read(Length? radius, Length slatWidth, Length slatThickness, Length gap, List<InputProblem>? problems)
    {
        double w = Door.Millimetres(slatWidth, nameof(slatWidth), s_slat, problems);
        double t = Door.Millimetres(slatThickness, nameof(slatThickness), s_thickness, problems);
        double g = Door.Millimetres(gap, nameof(gap), s_gap, problems);
        double r = ReadRadius(radius, w + g, problems);
        return problems is { Count: > 0 } ? default : new SlatFit(r, w, t, g, (SlatDefaults.LeastGap, SlatDefaults.GreatestGap), true);
    }

    /// <summary>The radius; 0 for flat.</summary>
    private static double ReadRadius(Length? radius, double least, List<InputProblem>? problems)
    {
        if (radius is not { } given)
        {
            return 0;
        }

        double r = Door.Millimetres(given, nameof(radius), s_radius, problems);
        if (r == 0 || Math.Abs(r) < least)
        {
            Door.Report(new InputProblem(nameof(radius), Print.Number(r) + " mm", $"-1000000 to 1000000 mm, {Print.Number(least)} mm (slat width and gap) or more either way", isRange: true), problems);
        }

        return r;
    }

    private static (double Radius, double StandOff) ReadStandOff(Length? radius, Length standOff, List<InputProblem>? problems)
    {
        double h = Door.Millimetres(standOff, nameof(standOff), s_standOff, problems);
        if (radius is not { } given)
        {
            return (0, h);
        }

        double r = Door.Millimetres(given, nameof(radius), s_radius, problems);
        if (r == 0 || Math.Abs(r) <= h)
        {
            Door.Report(new InputProblem(nameof(radius), Print.Number(r) + " mm", $"-1000000 to 1000000 mm, more than the stand-off, {Print.Number(h)} mm, either way", isRange: true), problems);
        }

        return (r, h);
    }
}

/// <summary>What the formulas give: stand-off is the hollow or the rock.</summary>
internal readonly struct SlatFitNumbers(double turn, double standOff, double gapAtFace, double faceWidth)
{
    internal double Turn { get; } = turn;

    internal double StandOff { get; } = standOff;

    internal double GapAtFace { get; } = gapAtFace;

    internal double FaceWidth { get; } = faceWidth;
}
