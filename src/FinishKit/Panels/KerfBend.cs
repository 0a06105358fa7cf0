using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>How many kerfs bend a sheet round a curve, how deep and how far apart, what is left under them, and whether they close.</summary>
public static class KerfBend
{
    private const string CaseWords = "a sheet to be kerfed";

    private static readonly Allowed s_radius = new(Allowed.OneStep, 1e5, "mm");
    private static readonly Allowed s_bend = new(0.1, 360, "°");
    private static readonly Allowed s_thickness = new(Allowed.OneStep, 200, "mm");
    private static readonly Allowed s_kerf = new(0.2, 20, "mm");
    private static readonly Allowed s_error = new(0, 10, "mm");
    private static readonly BentSheetNames s_web = new("panel.WebSheet");

    /// <summary>The kerfs of a bend.</summary>
    /// <param name="panel">Sheet, curve, web and saw.</param>
    /// <returns>Number, depth and places of the kerfs, the facets, and what is left of the sheet.</returns>
    /// <remarks>
    /// <para>Formula: depth d = t - w; a kerf closes at 2 atan(k/(2 d)); one that is e too deep at 2 atan(k/(2 (d + e))); kerfs n = ceiling(angle over the latter); hinge arc L = angle (R - w); spacing L/n; each turns by angle/n; facet height
    /// (R - w)(1 - cos(angle/(2 n))); shortening of the cut face angle times d; gap left at a kerf's mouth k cos(angle/(2 n)) - 2 d sin(angle/(2 n)); the web bends to k n/angle over a kerf;
    /// these kerfs reach the bend down to a depth of k/(2 tan(angle/(2 n))).</para>
    /// <para>Validity: kerfs on the inside of the curve, square to it, of one depth; the web turns within the kerf and the wood between stays flat. The hinges are taken on the circle: n straight
    /// pieces of that length lie on one wider by (angle/(2 n))²/6 of it, under 0.1% up to 8° a kerf.</para>
    /// <para>Source: kerf-geometry (derived); default-kerf-web (common practice); default-kerf-depth-error, default-kerf-rib (default, judgement); KERF-INSIDE (read in a copy); bend-elastic (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="panel"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit, or of an undefined kind.</exception>
    /// <example><code>
    /// KerfPlan corner = KerfBend.Plan(new KerfedPanel(Mm(300), Angle.FromDegrees(90), Mm(18), Mm(3), Mm(3.2)));
    /// int kerfs = corner.Kerfs;                           // 8: a kerf 15 mm deep closes at 12.2 degrees, 0.3 deeper at 11.9
    /// Length spacing = corner.Spacing;                    // 58.316 mm over 466.527 mm
    /// Length facet = corner.FacetHeight;                  // 1.43 mm: seen on the face
    /// </code></example>
    public static KerfPlan Plan(KerfedPanel panel)
    {
        Door.IsMissing(panel, new Name(nameof(panel)), CaseWords, null);
        return new KerfPlan(panel, Read(panel, null));
    }

    /// <summary>All problems with the input of <see cref="Plan(KerfedPanel)"/>; nothing is thrown.</summary>
    /// <param name="panel">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckPlan(KerfedPanel panel)
    {
        List<InputProblem> problems = [];
        if (!Door.IsMissing(panel, new Name(nameof(panel)), CaseWords, problems))
        {
            Read(panel, problems);
        }

        return problems;
    }

    /// <summary>The one formula body, for the numbers and for the workings.</summary>
    internal static KerfNumbers Solve<TTrace>(in KerfQuestion question, TTrace trace)
        where TTrace : struct, ITrace
    {
        double radius = question.Radius, angle = question.Bend, thickness = question.Thickness, web = question.Web, kerf = question.Kerf;
        trace.Given("R", radius, "mm", Sources.Given, meaning: "radius of the outer face");
        trace.Given("theta", angle, "rad", Sources.Given);
        trace.Given("t", thickness, "mm", Sources.Given);
        trace.Given("w", web, "mm", Sources.Given);
        trace.Given("k", kerf, "mm", Sources.Given, meaning: "width of a kerf");
        double depthError = question.DepthError;
        trace.Given("e", depthError, "mm", question.ErrorIsDefault ? KerfDefaults.DepthErrorSource : Sources.Given, meaning: "how far the depth may be off");
        double depth, closing, leastClosing, kerfs, turn, reach, hingeRadius, hingeArc, spacing, rib, facetHeight, shortening, gapLeft, webRadius;
        depth = trace.Step("d", nameof(depth), thickness - web, "mm", KerfDefaults.Geometry);
        closing = trace.Step("phi", nameof(closing), 2 * Math.Atan(kerf / (2 * depth)), "rad", KerfDefaults.Geometry);

        // A kerf that is shut before the panel is bent is pried open at its web: the deepest must not be.
        leastClosing = trace.Step("phi_e", nameof(leastClosing), 2 * Math.Atan(kerf / (2 * (depth + depthError))), "rad", KerfDefaults.Geometry);
        kerfs = trace.Step("n", nameof(kerfs), Grid.CeilingOfRatio(angle, leastClosing), string.Empty, KerfDefaults.Geometry);
        turn = trace.Step("delta", nameof(turn), angle / kerfs, "rad", KerfDefaults.Geometry);
        reach = trace.Step("d_n", nameof(reach), kerf / (2 * Math.Tan(turn / 2)), "mm", KerfDefaults.Geometry);
        hingeRadius = trace.Step("R_h", nameof(hingeRadius), radius - web, "mm", KerfDefaults.Geometry);
        hingeArc = trace.Step("L", nameof(hingeArc), angle * hingeRadius, "mm", KerfDefaults.Geometry);
        spacing = trace.Step("p", nameof(spacing), hingeArc / kerfs, "mm", KerfDefaults.Geometry);
        rib = trace.Step("r", nameof(rib), spacing - kerf, "mm", KerfDefaults.Geometry);
        facetHeight = trace.Step("h", nameof(facetHeight), hingeRadius * (1 - Math.Cos(turn / 2)), "mm", KerfDefaults.Geometry);
        shortening = trace.Step("s", nameof(shortening), angle * depth, "mm", KerfDefaults.Geometry);
        gapLeft = trace.Step("g", nameof(gapLeft), Math.Max(0, (kerf * Math.Cos(turn / 2)) - (2 * depth * Math.Sin(turn / 2))), "mm", KerfDefaults.Geometry);
        webRadius = trace.Step("R_w", nameof(webRadius), kerf / turn, "mm", KerfDefaults.Geometry);
        return new KerfNumbers(depth, closing, (int)kerfs, turn, hingeArc, spacing, rib, facetHeight)
        {
            LeastClosing = leastClosing,
            Reach = reach,
            Shortening = shortening,
            GapLeft = gapLeft,
            WebRadius = webRadius,
            WebLimit = question.WebLimit is { } limit ? BendQuestion.SolveMinimum(limit, trace) : double.NaN,
        };
    }

    private static KerfQuestion Read(KerfedPanel panel, List<InputProblem>? problems)
    {
        double radius = Door.Millimetres(panel.OuterRadius, "panel.OuterRadius", s_radius, problems);
        double bend = Door.Radians(panel.Bend, "panel.Bend", s_bend, problems);
        TolerancedLength.Span thickness = panel.Thickness.Read(new Name("panel.Thickness"), s_thickness, problems);
        if (thickness.Least <= 0)
        {
            Door.Report(new InputProblem("panel.Thickness", Print.Number(thickness.Least) + " mm at its least", s_thickness.ToString(), isRange: true), problems);
        }

        double web = Door.Millimetres(panel.Web, "panel.Web", s_thickness, problems);
        if (web >= thickness.Nominal)
        {
            Door.Report(new InputProblem("panel.Web", Print.Number(web) + " mm", $"less than the thickness, {Print.Number(thickness.Nominal)} mm", isRange: true), problems);
        }

        double kerf = Door.Millimetres(panel.Kerf, "panel.Kerf", s_kerf, problems);
        if (radius <= thickness.Nominal)
        {
            Door.Report(new InputProblem("panel.OuterRadius", Print.Number(radius) + " mm", $"more than the thickness, {Print.Number(thickness.Nominal)} mm", isRange: true), problems);
        }

        double error = panel.DepthError is { } given ? Door.Millimetres(given, "panel.DepthError", s_error, problems) : KerfDefaults.DepthError;
        BendLimit? limit = null;
        if (panel.WebSheet is not null)
        {
            // Its own thickness is not used, so it is not looked at: the web's takes its place.
            limit = BendLimit.Read(panel.WebSheet with { Thickness = double.IsNaN(web) ? Door.Millimetres(1) : panel.Web, PublishedRadius = null }, s_web, problems);
        }

        return new KerfQuestion(radius, bend, thickness, web, kerf, error, limit) { ErrorIsDefault = panel.DepthError is null };
    }
}

/// <summary>A kerfed sheet as plain numbers.</summary>
internal readonly struct KerfQuestion(double radius, double bend, in TolerancedLength.Span thickness, double web, double kerf, double depthError, BendLimit? webLimit)
{
    internal double Radius { get; } = radius;

    internal double Bend { get; } = bend;

    internal double Thickness { get; } = thickness.Nominal;

    internal double LeastThickness { get; } = thickness.Least;

    internal double GreatestThickness { get; } = thickness.Greatest;

    internal double Web { get; } = web;

    internal double Kerf { get; } = kerf;

    internal double DepthError { get; } = depthError;

    internal bool ErrorIsDefault { get; init; }

    internal BendLimit? WebLimit { get; } = webLimit;

    /// <summary>What is left under a kerf cut too deep into the thinnest sheet.</summary>
    internal double LeastWeb => Grid.Snap(Web + (LeastThickness - Thickness) - DepthError);

    internal double GreatestWeb => Grid.Snap(Web + (GreatestThickness - Thickness) + DepthError);

    /// <summary>The shallowest and the deepest setting that keep the web within what is usual on every sheet; the first over the second where there is none.</summary>
    internal (double Shallowest, double Deepest) WebStop => (
        Grid.Snap(Math.Max(Allowed.OneStep, GreatestThickness - KerfDefaults.GreatestWeb + DepthError)), Grid.Snap(LeastThickness - KerfDefaults.LeastWeb - DepthError));

    /// <summary>The kerfs that a setting of the stop asks for.</summary>
    internal double KerfsAt(double stop) => Grid.CeilingOfRatio(Bend, 2 * Math.Atan(Kerf / (2 * (stop + DepthError))));

    /// <summary>How deep the thickest sheet is cut by a saw set from the outer face, which leaves the web whatever the thickness; the error of the depth not in it.</summary>
    internal double DepthFromOuterFace => Grid.Snap(GreatestThickness - Web);
}

/// <summary>What came out, in mm and rad.</summary>
internal readonly struct KerfNumbers(double depth, double closing, int kerfs, double turn, double hingeArc, double spacing, double rib, double facetHeight)
{
    internal double Depth { get; } = depth;

    internal double Closing { get; } = closing;

    internal int Kerfs { get; } = kerfs;

    internal double Turn { get; } = turn;

    internal double HingeArc { get; } = hingeArc;

    internal double Spacing { get; } = spacing;

    internal double Rib { get; } = rib;

    internal double FacetHeight { get; } = facetHeight;

    /// <summary>The turn at which the sides of a kerf meet that is too deep by the error of the depth.</summary>
    internal double LeastClosing { get; init; }

    /// <summary>The greatest depth from which so many kerfs still reach the bend.</summary>
    internal double Reach { get; init; }

    internal double Shortening { get; init; }

    internal double GapLeft { get; init; }

    internal double WebRadius { get; init; }

    /// <summary>The web's own least radius; NaN where its figures are not known.</summary>
    internal double WebLimit { get; init; }
}
