using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>
/// The circle that comes nearest to measured points: what <see cref="CircleFit"/> answers. Signed: radius, curvature and rise are
/// positive where the surface is hollow to the room.
/// </summary>
public sealed class FittedCircle
{
    /// <summary>What a person reads an offset to; a point is not doubted for less.</summary>
    private const double ReadingError = 0.5;

    /// <summary>A point is doubted from this many times the scatter of the others.</summary>
    private const double DoubtedFrom = 4;

    private readonly Numbers _numbers;

    internal FittedCircle(Numbers numbers, double[] residuals)
    {
        _numbers = numbers;
        List<Length> lengths = new(residuals.Length);
        foreach (double residual in residuals)
        {
            lengths.Add(Door.Millimetres(Grid.Snap(residual)));
        }

        Residuals = [.. lengths];
        GreatestResidual = residuals[numbers.Worst];
        Findings = Finding.GravestFirst(Find());
    }

    /// <summary>Centre of the circle, in the coordinates of the points; null where flat.</summary>
    public MeasuredPoint? Centre => IsFlat ? null : new MeasuredPoint(Door.Millimetres(Grid.Snap(_numbers.CentreAlong)), Door.Millimetres(Grid.Snap(_numbers.CentreOffset)));

    /// <summary>Radius; null where flat: the points show no curvature, or none beyond its standard error.</summary>
    public Length? Radius => IsFlat ? null : Door.Millimetres(Grid.Snap(1 / _numbers.Curvature));

    /// <summary>One over the radius; 0 where flat.</summary>
    public ReciprocalLength Curvature => ReciprocalLength.FromInverseMillimeters(_numbers.Curvature);

    /// <summary>The arc of the circle over the two points farthest apart: what a straightedge of that length would show. Never more than a half circle.</summary>
    public CircularArc OverChord
    {
        get
        {
            double size = Math.Abs(_numbers.Curvature);
            double rise = size == 0 ? 0 : CircleThroughPoints.RiseOver(_numbers.Chord, 1 / size);
            return Arc.Solve(_numbers.Chord, _numbers.Curvature < 0 ? -rise : rise, default(Silent));
        }
    }

    /// <summary>Root of the mean squared residual, divisor n.</summary>
    public Length RootMeanSquare => Door.Millimetres(Grid.Snap(Math.Sqrt(_numbers.Squares / _numbers.Count)));

    /// <summary>Standard error of the radius, from the scatter of the points with divisor n - 3; null for three points and where flat.</summary>
    public Length? RadiusStandardError => IsFlat || double.IsNaN(_numbers.CurvatureError) ? null : Door.Millimetres(Grid.Snap(RadiusError));

    /// <summary>Standard error of the curvature; null for three points.</summary>
    public ReciprocalLength? CurvatureStandardError => double.IsNaN(_numbers.CurvatureError) ? null : ReciprocalLength.FromInverseMillimeters(_numbers.CurvatureError);

    /// <summary>Distance of each point from the circle, in the order given: positive where the point lies farther from the room than the circle.</summary>
    public IReadOnlyList<Length> Residuals { get; }

    /// <summary>Which point has the greatest residual, whatever its sign; the first of equals.</summary>
    public int FarthestPoint => _numbers.Worst;

    /// <summary>What should be known about the fit, gravest first.</summary>
    /// <remarks>Codes: <c>geometry-fit-flat</c>, <c>geometry-fit-radius-uncertain</c>, <c>geometry-fit-point-off</c>, <c>geometry-fit-three-points</c>.</remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem => Findings.Count > 0 && Findings[0].Severity >= Severity.Problem;

    private bool IsFlat => _numbers.Curvature == 0;

    private double GreatestResidual { get; }

    private double RadiusError => _numbers.CurvatureError / (_numbers.Curvature * _numbers.Curvature);

    /// <summary>How radius, scatter and standard error follow from the fitted curvature and the residuals, step by step. The fit itself is a search.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        Work(_numbers, recorder);
        return recorder.ToWorkings("Circle through measured points");
    }

    /// <summary>The fit as flat figures.</summary>
    /// <returns>Number of points, curvature, radius and centre (absent where flat), chord, rise, root mean square, greatest residual and its point, standard errors (absent where there are none).</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures = [new("points", _numbers.Count, string.Empty), new("curvature", _numbers.Curvature, "1/mm")];
        if (!IsFlat)
        {
            figures.Add(new Figure("radius", Grid.Snap(1 / _numbers.Curvature), "mm"));
            figures.Add(new Figure("centre-along", Grid.Snap(_numbers.CentreAlong), "mm"));
            figures.Add(new Figure("centre-offset", Grid.Snap(_numbers.CentreOffset), "mm"));
        }

        figures.Add(new Figure("chord", Grid.Snap(_numbers.Chord), "mm"));
        figures.Add(new Figure("rise", OverChord.Rise.Value, "mm"));
        figures.Add(new Figure("root-mean-square", RootMeanSquare.Value, "mm"));
        figures.Add(new Figure("greatest-residual", Grid.Snap(GreatestResidual), "mm"));
        figures.Add(new Figure("farthest-point", _numbers.Worst, string.Empty));
        if (!double.IsNaN(_numbers.CurvatureError))
        {
            figures.Add(new Figure("curvature-standard-error", _numbers.CurvatureError, "1/mm"));
            if (!IsFlat)
            {
                figures.Add(new Figure("radius-standard-error", Grid.Snap(RadiusError), "mm"));
            }
        }

        return figures;
    }

    /// <summary>Radius, its standard error and the root mean square, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string scatter = $"root mean square {Print.Mm(Math.Sqrt(_numbers.Squares / _numbers.Count))} of {Print.Number(_numbers.Count)} points";
        return IsFlat ? "flat, " + scatter
            : double.IsNaN(_numbers.CurvatureError) ? $"radius {Print.Mm(1 / _numbers.Curvature)}, {scatter}"
            : $"radius {Print.Mm(1 / _numbers.Curvature)}, standard error {Print.Mm(RadiusError)}, {scatter}";
    }

    private static void Work<TTrace>(Numbers numbers, TTrace trace)
        where TTrace : struct, ITrace
    {
        double count = numbers.Count, squares = numbers.Squares;
        trace.Given("n", count, string.Empty, Sources.Given, meaning: "number of points");
        trace.Given("Q", squares, "mm2", Sources.CircleFit, meaning: "least sum of squared residuals");
        trace.Step("e_rms", "rootMeanSquare", Math.Sqrt(squares / count), "mm", Sources.CircleFit);
        if (numbers.Curvature == 0)
        {
            return;
        }

        double curvature = numbers.Curvature;
        trace.Given("k", curvature, "1/mm", Sources.CircleFit, meaning: "curvature at that least sum");
        trace.Step("R", "radius", 1 / curvature, "mm", Sources.CircleFit);
        if (!double.IsNaN(numbers.CurvatureError))
        {
            double entry = numbers.Spread;
            trace.Given("g", entry, "1/mm4", Sources.CircleFit, meaning: "entry of the inverse normal matrix for the curvature");
            double scatter = trace.Step("s", nameof(scatter), Math.Sqrt(squares / (count - 3)), "mm", Sources.CircleFit);
            double curvatureError = trace.Step("s_k", nameof(curvatureError), scatter * Math.Sqrt(entry), "1/mm", Sources.CircleFit);
            trace.Step("s_R", "radiusStandardError", curvatureError / (curvature * curvature), "mm", Sources.CircleFit);
        }
    }

    private List<Finding> Find()
    {
        List<Finding> findings = [];
        Figure points = new("points", _numbers.Count, string.Empty);
        if (_numbers.Count == 3)
        {
            findings.Add(new Finding("geometry-fit-three-points", Severity.Note, "Three points always lie on a circle or a line: nothing tells how well they were measured. Measure a fourth.", [points], Sources.CircleFit));
        }

        if (IsFlat)
        {
            findings.Add(new Finding(
                "geometry-fit-flat",
                Severity.Caution,
                $"Over {Print.Mm(_numbers.Chord)} the points show no curvature beyond their scatter of {Print.Mm(Math.Sqrt(_numbers.Squares / _numbers.Count))}; the surface is taken as flat.",
                [points, new("chord", _numbers.Chord, "mm"), new("root-mean-square", Math.Sqrt(_numbers.Squares / _numbers.Count), "mm")],
                Sources.CircleFit));
        }
        else if (RadiusError > 0.1 * Math.Abs(1 / _numbers.Curvature))
        {
            findings.Add(new Finding(
                "geometry-fit-radius-uncertain",
                Severity.Caution,
                $"The radius of {Print.Mm(1 / _numbers.Curvature)} has a standard error of {Print.Mm(RadiusError)}, more than a tenth of it. Measure more points, or over a greater length.",
                [points, new("radius", 1 / _numbers.Curvature, "mm"), new("radius-standard-error", RadiusError, "mm")],
                Sources.CircleFit));
        }

        // The residual against what the other points scatter: the square of a point over its share is what leaving it out takes from the sum.
        int parameters = IsFlat ? 2 : 3;
        double size = Math.Abs(GreatestResidual);
        double others = _numbers.Count - parameters - 1;
        if (others >= 2 && size > ReadingError && _numbers.Freedom > 1e-9)
        {
            double without = Math.Max(0, _numbers.Squares - (size * size / _numbers.Freedom));
            if (size * size / _numbers.Freedom > DoubtedFrom * DoubtedFrom * without / others)
            {
                findings.Add(new Finding(
                    "geometry-fit-point-off",
                    Severity.Caution,
                    $"Point {Print.Number(_numbers.Worst)} (counted from 0), at {Print.Mm(_numbers.WorstAlong)} with an offset of {Print.Mm(_numbers.WorstOffset)}, lies {Print.Mm(size)} off, more than {Print.Number(DoubtedFrom)} times what the others scatter. Measure it again.",
                    [new("farthest-point", _numbers.Worst, string.Empty), new("greatest-residual", GreatestResidual, "mm"), new("scatter-without-it", Math.Sqrt(without / others), "mm")],
                    Sources.PointOff));
            }
        }

        return findings;
    }

    internal readonly struct Numbers(
        int count, double curvature, double centreAlong, double centreOffset, double chord, double squares, double spread, double curvatureError, int worst, double freedom, double worstAlong, double worstOffset)
    {
        internal int Count { get; } = count;

        internal double Curvature { get; } = curvature;

        internal double CentreAlong { get; } = centreAlong;

        internal double CentreOffset { get; } = centreOffset;

        internal double Chord { get; } = chord;

        internal double Squares { get; } = squares;

        internal double Spread { get; } = spread;

        internal double CurvatureError { get; } = curvatureError;

        internal int Worst { get; } = worst;

        internal double Freedom { get; } = freedom;

        internal double WorstAlong { get; } = worstAlong;

        internal double WorstOffset { get; } = worstOffset;
    }
}
