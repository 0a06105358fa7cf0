using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>How the end of every board is cut where courses meet an edge that leans or bows: saw angle, long and short point, and what a straight cut leaves.</summary>
public static class EndCuts
{
    internal const int MostLines = 501;

    /// <summary>Height of the thinnest course: lower ones are a slip.</summary>
    internal const double LeastCourse = 1;

    private static readonly Allowed s_count = new(2, MostLines, "lines");
    private static readonly Allowed s_place = new(-1e6, 1e6, "mm");
    private static readonly Allowed s_tolerance = new(0, 100, "mm");
    private static readonly Allowed s_hidden = new(0, 200, "mm");

    /// <summary>The end cut of every course, in the order of fitting.</summary>
    /// <param name="job">Edge, course lines, datum, order and tolerance.</param>
    /// <returns>The schedule.</returns>
    /// <remarks>
    /// <para>Formula: r is the length from the datum to the edge at a height; saw angle = atan((r_b - r_a)/(v_b - v_a)) between the course's lines; long point = max(r_a, r_b), short point = min(r_a, r_b);
    /// gap = greatest of (r - chord) cos(angle), wood in the way = greatest of (chord - r) cos(angle). Set-back = (wood - gap)/2.</para>
    /// <para>Validity: courses on one flat band, their lines square to the heights; lengths run to the edge itself, without a gap at the ends.</para>
    /// <para>Source: end-cut-chord (derived); default-scribe-tolerance, default-saw-reach (common practice).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="job"/>, its edge or its lines are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A length is in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// MeasuredEdge rear = EdgeCurve.OnArc(new(Mm(0), Mm(3400)), new(Mm(994), Mm(3352)), Mm(11.75));
    /// EndCutSchedule ends = EndCuts.Schedule(new EndCutJob(rear, [Mm(0), Mm(89), Mm(178), Mm(267)], datum: Mm(20)));
    /// EndCut second = ends.Courses[1];
    /// Angle saw = second.SawAngle;                        // -0.785°: the long point is at the lower line
    /// Angle change = second.Change!.Value;                // -0.484° from the course below
    /// Length longPoint = second.LongPoint;                // 3379.532 mm from the datum
    /// Length gap = second.GapLeft;                        // 0.094 mm: a straight cut serves
    /// </code></example>
    public static EndCutSchedule Schedule(EndCutJob job)
    {
        Door.IsMissing(job, new Name(nameof(job)), "courses that end at an edge", null);
        return new EndCutSchedule(job, Read(job, null));
    }

    /// <summary>All problems with the input of <see cref="Schedule(EndCutJob)"/>; nothing is thrown.</summary>
    /// <param name="job">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(EndCutJob job)
    {
        List<InputProblem> problems = [];
        if (!Door.IsMissing(job, new Name(nameof(job)), "courses that end at an edge", problems))
        {
            Read(job, problems);
        }

        return problems;
    }

    /// <summary>The one formula body of a course, for the numbers and for the workings.</summary>
    internal static EndCutNumbers Solve<TTrace>(EndCutPlace place, TTrace trace)
        where TTrace : struct, ITrace
    {
        int index = place.Course;
        double lowerLine = place.LowerLine, upperLine = place.UpperLine, lowerLength = place.LowerLength, upperLength = place.UpperLength;
        trace.Given("v_a", lowerLine, "mm", Sources.Given, index, "height of the lower line");
        trace.Given("v_b", upperLine, "mm", Sources.Given, index, "height of the upper line");
        trace.Given("r_a", lowerLength, "mm", place.EdgeBasis, index, "from the datum to the edge at the lower line");
        trace.Given("r_b", upperLength, "mm", place.EdgeBasis, index, "from the datum to the edge at the upper line");
        double chordSlope = trace.Step("m", nameof(chordSlope), (upperLength - lowerLength) / (upperLine - lowerLine), string.Empty, EndCutDefaults.EndCut, index);
        double sawAngle = trace.Step("beta", nameof(sawAngle), Math.Atan(chordSlope), "rad", EndCutDefaults.EndCut, index);
        double hiddenWidth = place.HiddenWidth;
        double hiddenLength = upperLength;
        if (hiddenWidth > 0)
        {
            trace.Given("h", hiddenWidth, "mm", Sources.Given, meaning: "hidden width beyond the upper line");
            hiddenLength = trace.Step("r_h", nameof(hiddenLength), upperLength + (hiddenWidth * chordSlope), "mm", EndCutDefaults.EndCut, index);
        }

        double gap = 0, wood = 0;
        if (place.GapSize > 0)
        {
            double gapHeight = place.GapHeight, gapLength = place.GapLength;
            trace.Given("v_g", gapHeight, "mm", EndCutDefaults.EndCut, index, "height where the edge lies farthest beyond the chord");
            trace.Given("r_g", gapLength, "mm", place.EdgeBasis, index, "from the datum to the edge there");
            gap = trace.Step("g", nameof(gap), (gapLength - (lowerLength + (chordSlope * (gapHeight - lowerLine)))) * Math.Cos(sawAngle), "mm", EndCutDefaults.EndCut, index);
        }

        if (place.WoodSize > 0)
        {
            double woodHeight = place.WoodHeight, woodLength = place.WoodLength;
            trace.Given("v_w", woodHeight, "mm", EndCutDefaults.EndCut, index, "height where the edge lies farthest short of the chord");
            trace.Given("r_w", woodLength, "mm", place.EdgeBasis, index, "from the datum to the edge there");
            wood = trace.Step("w", nameof(wood), (lowerLength + (chordSlope * (woodHeight - lowerLine)) - woodLength) * Math.Cos(sawAngle), "mm", EndCutDefaults.EndCut, index);
        }

        return new EndCutNumbers(sawAngle, hiddenLength, gap, wood);
    }

    private static EndCutPlaces Read(EndCutJob job, List<InputProblem>? problems)
    {
        MeasuredEdge? edge = Door.IsMissing(job.Edge, new Name("job.Edge"), "an edge", problems) ? null : job.Edge;
        double[] lines = ReadLines(job, edge?.Range, problems);
        double datum = Door.Millimetres(job.Datum, "job.Datum", s_place, problems);
        if (job.Order is not (FittingOrder.FromBottom or FittingOrder.FromTop))
        {
            Door.Report(new InputProblem("job.Order", job.Order.ToString("D"), $"{nameof(FittingOrder.FromBottom)} or {nameof(FittingOrder.FromTop)}", isRange: true), problems);
        }

        double tolerance = job.ScribeTolerance is { } t ? Door.Millimetres(t, "job.ScribeTolerance", s_tolerance, problems)
            : job.UnderTrim ? EndCutDefaults.ScribeToleranceUnderTrim : EndCutDefaults.ScribeTolerance;
        double hidden = job.HiddenWidth is { } h ? Door.Millimetres(h, "job.HiddenWidth", s_hidden, problems) : 0;
        if (problems is not { Count: > 0 })
        {
            double least = double.PositiveInfinity, most = double.NegativeInfinity;
            foreach (double line in lines)
            {
                double offset = Grid.Snap(edge!.At(line));
                least = Math.Min(least, offset);
                most = Math.Max(most, offset);
            }

            if (datum >= least && datum <= most)
            {
                Door.Report(
                    new InputProblem("job.Datum", Print.Number(datum) + " mm", $"on one side of the edge, which lies at {Print.Number(least)} to {Print.Number(most)} mm at the course lines", isRange: true), problems);
            }

            return new EndCutPlaces(lines, datum, datum < least, tolerance, hidden);
        }

        return default;
    }

    private static double[] ReadLines(EndCutJob job, Allowed? range, List<InputProblem>? problems)
    {
        Name name = new("job.CourseLines");
        if (Door.IsMissing(job.CourseLines, name, "a list of heights", problems))
        {
            return [];
        }

        int count = job.CourseLines.Count;
        if (!s_count.Holds(count))
        {
            Door.Report(new InputProblem(name.ToString(), Print.Number(count) + " lines", s_count.ToString(), isRange: true), problems);
            return [];
        }

        double[] lines = new double[count];
        for (int i = 0; i < count; i++)
        {
            lines[i] = Door.Millimetres(job.CourseLines[i], new Name("job.CourseLines", i), range ?? s_place, problems);
            if (i > 0 && Grid.Snap(lines[i] - lines[i - 1]) < LeastCourse)
            {
                Door.Report(
                    new InputProblem(new Name("job.CourseLines", i).ToString(), Print.Number(lines[i]) + " mm", $"{Print.Number(LeastCourse)} mm or more above the line before, {Print.Number(lines[i - 1])} mm", isRange: true), problems);
            }
        }

        return lines;
    }
}

/// <summary>What was read from a job.</summary>
internal readonly struct EndCutPlaces(double[] lines, double datum, bool isAtRear, double tolerance, double hiddenWidth)
{
    internal double[] Lines { get; } = lines;

    internal double Datum { get; } = datum;

    internal bool IsAtRear { get; } = isAtRear;

    internal double Tolerance { get; } = tolerance;

    internal double HiddenWidth { get; } = hiddenWidth;
}

/// <summary>One course as it meets the edge: heights, and lengths from the datum. With the edge at the front everything is its mirror image, so that only lengths appear.</summary>
internal readonly struct EndCutPlace
{
    private readonly double _datum;
    private readonly bool _isAtRear;

    internal EndCutPlace(MeasuredEdge edge, EndCutPlaces places, int course)
    {
        (Course, _datum, _isAtRear) = (course, places.Datum, places.IsAtRear);
        EdgeBasis = edge.Basis;
        LowerLine = places.Lines[course - 1];
        UpperLine = places.Lines[course];
        HiddenWidth = places.HiddenWidth;
        LowerLength = Length(edge, places, LowerLine);
        UpperLength = Length(edge, places, UpperLine);
        ((double Height, double Size) beyond, (double Height, double Size) below) = edge.OffChord(LowerLine, UpperLine);
        ((GapHeight, GapSize), (WoodHeight, WoodSize)) = places.IsAtRear ? (beyond, below) : (below, beyond);
        GapLength = Length(edge, places, GapHeight);
        WoodLength = Length(edge, places, WoodHeight);
        LeastAt = edge.FarthestOver(LowerLine, UpperLine, places.IsAtRear ? -1 : 1);
        LeastLength = Length(edge, places, LeastAt);
    }

    internal int Course { get; }

    internal Source EdgeBasis { get; }

    internal double LowerLine { get; }

    internal double UpperLine { get; }

    internal double HiddenWidth { get; }

    internal double LowerLength { get; }

    internal double UpperLength { get; }

    internal double GapHeight { get; }

    internal double GapLength { get; }

    internal double GapSize { get; }

    internal double WoodHeight { get; }

    internal double WoodLength { get; }

    internal double WoodSize { get; }

    /// <summary>Where between the lines, both included, the edge comes nearest to the datum, or farthest past it.</summary>
    internal double LeastAt { get; }

    /// <summary>The length there; not above 0 where the edge crosses the datum.</summary>
    internal double LeastLength { get; }

    /// <summary>Where a length from the datum ends, on the scale of the edge's offsets.</summary>
    internal double Offset(double length) => Grid.Snap(_isAtRear ? _datum + length : _datum - length);

    private static double Length(MeasuredEdge edge, EndCutPlaces places, double height) => places.IsAtRear ? edge.At(height) - places.Datum : places.Datum - edge.At(height);
}

/// <summary>What comes out for one course; lengths in millimetres, the angle in radians.</summary>
internal readonly struct EndCutNumbers(double sawAngle, double hiddenLength, double gap, double wood)
{
    internal double SawAngle { get; } = sawAngle;

    internal double HiddenLength { get; } = hiddenLength;

    internal double Gap { get; } = gap;

    internal double Wood { get; } = wood;
}
