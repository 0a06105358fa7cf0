using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>An edge: its offset and slope at every height between its lowest and highest point. <see cref="EdgeCurve"/> makes one.</summary>
public sealed class MeasuredEdge
{
    /// <summary>A thousandth of a step of the grid: differences below it are rounding, and must not decide between equal heights.</summary>
    private const double Noise = 1e-9;

    private readonly double[] _heights, _offsets;
    private readonly EdgePiece[] _pieces;
    private readonly EdgeFit? _fit;
    private readonly double _limit, _difference, _differenceAt;
    private readonly bool _limitIsDefault;
    private readonly Allowed _range;

    private MeasuredEdge(double[] heights, double[] offsets, EdgePiece[] pieces, EdgeFit? fit, double limit, bool limitIsDefault)
    {
        _heights = heights;
        _offsets = offsets;
        _pieces = pieces;
        _fit = fit;
        _limit = limit;
        _limitIsDefault = limitIsDefault;
        _range = new Allowed(heights[0], heights[heights.Length - 1], "mm");
        (_difference, _differenceAt) = fit is null ? (0, heights[0]) : Farthest();
        List<MeasuredPoint> points = new(heights.Length);
        for (int i = 0; i < heights.Length; i++)
        {
            points.Add(new MeasuredPoint(Door.Millimetres(heights[i]), Door.Millimetres(offsets[i])));
        }

        Points = [.. points];
        Findings = Finding.GravestFirst(Find());
    }

    /// <summary>The points that the edge goes through, lowest first: height, and offset.</summary>
    public IReadOnlyList<MeasuredPoint> Points { get; }

    /// <summary>How the edge runs between its points; null where it is known to be straight or an arc.</summary>
    public EdgeFit? Fit => _fit;

    /// <summary>Height of the lowest point: nothing is said below it.</summary>
    public Length Lowest => Door.Millimetres(_range.Least);

    /// <summary>Height of the highest point: nothing is said above it.</summary>
    public Length Highest => Door.Millimetres(_range.Most);

    /// <summary>Radius of an edge on an arc, positive where its middle lies farther to the rear than the chord; null for any other edge.</summary>
    public Length? Radius => Curvature == 0 ? null : Door.Millimetres(Grid.Snap(1 / Curvature));

    /// <summary>Greatest difference at one height between the three curves through the points; 0 for two points, null where the edge is known to be straight or an arc.</summary>
    public Length? GreatestDifference => _fit is null ? null : Door.Millimetres(Grid.Snap(_difference));

    /// <summary>The height where the curves differ most, and where one more measurement tells most; the lowest of equals. Null where they do not differ.</summary>
    public Length? GreatestDifferenceAt => Grid.Snap(_difference) > 0 ? Door.Millimetres(Grid.Snap(_differenceAt)) : null;

    /// <summary>What should be known about the edge, gravest first.</summary>
    /// <remarks>Codes: <c>geometry-edge-curves-differ</c>, <c>geometry-edge-two-points</c>.</remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem => Findings.Count > 0 && Findings[0].Severity >= Severity.Problem;

    /// <summary>The defaults taken because the caller gave no figure of their own.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed => _limitIsDefault ? [new DefaultUsed(new Figure("difference-limit", _limit, "mm"), EdgeDefaults.DifferenceLimitSource)] : [];

    private double Curvature => _pieces[0] is ArcPiece arc ? arc.Solve(default(Silent)).Curvature : 0;

    /// <summary>The offset of the edge at a height.</summary>
    /// <param name="height">The height [length], from <see cref="Lowest"/> to <see cref="Highest"/>: nothing is extrapolated.</param>
    /// <returns>The offset.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height is below the lowest or above the highest point.</exception>
    /// <exception cref="ArgumentException">The height is in an undefined unit.</exception>
    public Length OffsetAt(Length height) => Door.Millimetres(Grid.Snap(At(Door.Millimetres(height, nameof(height), _range, null))));

    /// <summary>How far the edge leans from the plumb line at a height: positive where its offset grows upward. At a corner, that of the piece above.</summary>
    /// <param name="height">The height [length], from <see cref="Lowest"/> to <see cref="Highest"/>: nothing is extrapolated.</param>
    /// <returns>The angle, between -90° and 90°; its tangent is the change of offset over the change of height.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height is below the lowest or above the highest point.</exception>
    /// <exception cref="ArgumentException">The height is in an undefined unit.</exception>
    public Angle SlopeAt(Length height)
    {
        double v = Door.Millimetres(height, nameof(height), _range, null);
        return Door.Radians(Math.Atan(PieceAt(v).SlopeAt(v)));
    }

    /// <summary>How the three curves follow from the points around the height where they differ most, or how the arc follows from its ends and rise, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        if (_pieces[0] is ArcPiece arc)
        {
            arc.Solve(recorder);
            return recorder.ToWorkings(Curvature == 0 ? "Straight edge" : "Edge on an arc");
        }

        Work(recorder);
        return recorder.ToWorkings("Linear (1), shape-preserving (2) and natural cubic (3) edge through measured points");
    }

    /// <summary>The edge as flat figures.</summary>
    /// <returns>Number of points; fit, as the number of its enumeration, and greatest difference with its height (absent where the edge is known to be straight or an arc, the height also where there is no difference); lowest and highest height, offsets there; radius (of an arc).</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures = [new("points", _heights.Length, string.Empty)];
        if (_fit is { } fit)
        {
            figures.Add(new Figure("fit", (int)fit, string.Empty));
        }

        figures.Add(new Figure("lowest", _range.Least, "mm"));
        figures.Add(new Figure("highest", _range.Most, "mm"));
        figures.Add(new Figure("offset-at-lowest", _offsets[0], "mm"));
        figures.Add(new Figure("offset-at-highest", _offsets[_offsets.Length - 1], "mm"));
        if (_fit is not null)
        {
            figures.Add(new Figure("greatest-difference", Grid.Snap(_difference), "mm"));
        }

        if (Grid.Snap(_difference) > 0)
        {
            figures.Add(new Figure("greatest-difference-at", Grid.Snap(_differenceAt), "mm"));
        }

        if (Curvature != 0)
        {
            figures.Add(new Figure("radius", Grid.Snap(1 / Curvature), "mm"));
        }

        return figures;
    }

    /// <summary>Heights, kind of curve, and what is in doubt, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string kind = _fit switch
        {
            EdgeFit.Linear => "straight from point to point",
            EdgeFit.ShapePreserving => "shape-preserving",
            EdgeFit.NaturalCubic => "natural cubic",
            _ => Curvature == 0 ? "straight" : $"arc of radius {Print.Mm(1 / Curvature)}",
        };
        string doubt = _fit is null ? string.Empty : $", through {Print.Number(_heights.Length)} points; curves differ by up to {Print.Mm(_difference)}";
        return $"edge from {Print.Number(_range.Least)} to {Print.Mm(_range.Most)}, {kind}{doubt}";
    }

    internal static MeasuredEdge OfPoints(double[] heights, double[] offsets, EdgeFit fit, double limit, bool limitIsDefault) =>
        new(heights, offsets, EdgeSlopes.Pieces(heights, offsets, fit), fit, limit, limitIsDefault);

    internal static MeasuredEdge OfArc(double from, double to, double lowerOffset, double upperOffset, double rise) =>
        new([from, to], [lowerOffset, upperOffset], [new ArcPiece(from, to, lowerOffset, upperOffset, rise)], null, 0, false);

    /// <summary>The heights that a course line may have.</summary>
    internal Allowed Range => _range;

    /// <summary>What its offsets rest on.</summary>
    internal Source Basis => _fit is null ? EdgeDefaults.Exact : EdgeDefaults.Curve;

    /// <summary>The offset at a height within the range, not rounded.</summary>
    internal double At(double height) => PieceAt(height).OffsetAt(height);

    /// <summary>
    /// Where between two heights the edge lies farthest beyond its own chord and farthest short of it; the lower height, and nothing, where it never does.
    /// Exact: ends, joints, and where the edge runs parallel to the chord, in closed form.
    /// </summary>
    internal ((double Height, double Size) Beyond, (double Height, double Size) Short) OffChord(double lower, double upper)
    {
        double start = At(lower), slope = (At(upper) - start) / (upper - lower);
        List<double> heights = [];
        int last = IndexAt(upper);
        for (int i = IndexAt(lower); i <= last; i++)
        {
            heights.Add(_pieces[i].From);
            _pieces[i].AddWhereSlopeIs(slope, heights);
        }

        (double Height, double Size) beyond = (lower, 0), below = (lower, 0);
        foreach (double height in heights)
        {
            if (height <= lower || height >= upper)
            {
                continue;
            }

            double off = At(height) - (start + (slope * (height - lower)));
            beyond = off > beyond.Size + Noise ? (height, off) : beyond;
            below = -off > below.Size + Noise ? (height, -off) : below;
        }

        return (beyond, below);
    }

    /// <summary>The height between two, both included, where the offset times a sign is greatest; the lowest of equals. Exact as <see cref="OffChord"/> is.</summary>
    internal double FarthestOver(double lower, double upper, int sign)
    {
        List<double> heights = [upper];
        int last = IndexAt(upper);
        for (int i = IndexAt(lower); i <= last; i++)
        {
            heights.Add(_pieces[i].From);
            _pieces[i].AddWhereSlopeIs(0, heights);
        }

        double at = lower;
        heights.Sort();
        foreach (double height in heights)
        {
            at = height > lower && height <= upper && sign * At(height) > (sign * At(at)) + Noise ? height : at;
        }

        return at;
    }

    private EdgePiece PieceAt(double height) => _pieces[IndexAt(height)];

    /// <summary>The piece that a height lies on; at a joint the upper one, at the top the last.</summary>
    private int IndexAt(double height)
    {
        int low = 0, high = _pieces.Length - 1;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (_pieces[middle].From <= height)
            {
                low = middle;
            }
            else
            {
                high = middle - 1;
            }
        }

        return low;
    }

    private CubicPiece[] Pieces(EdgeFit fit) => EdgeSlopes.Pieces(_heights, _offsets, fit);

    /// <summary>The greatest difference of two of the three curves, exactly: each difference is a cubic on each piece.</summary>
    private (double Size, double Height) Farthest()
    {
        CubicPiece[][] curves = [Pieces(EdgeFit.Linear), Pieces(EdgeFit.ShapePreserving), Pieces(EdgeFit.NaturalCubic)];
        double size = 0, at = _heights[0];
        List<double> heights = [];
        for (int i = 0; i < _pieces.Length; i++)
        {
            for (int one = 0; one < curves.Length; one++)
            {
                for (int other = 0; other < one; other++)
                {
                    heights.Clear();
                    curves[one][i].AddWhereSlopesMeet(curves[other][i], heights);
                    heights.Sort();
                    foreach (double height in heights)
                    {
                        double difference = Math.Abs(curves[one][i].OffsetAt(height) - curves[other][i].OffsetAt(height));
                        (size, at) = difference > size + Noise ? (difference, height) : (size, at);
                    }
                }
            }
        }

        return (size, at);
    }

    /// <summary>The three curves at the height where they differ most, and their difference.</summary>
    private void Work<TTrace>(TTrace trace)
        where TTrace : struct, ITrace
    {
        int piece = IndexAt(_differenceAt);
        double height = _difference > 0 ? _differenceAt : (_heights[piece] + _heights[piece + 1]) / 2;
        double linear = Pieces(EdgeFit.Linear)[piece].Work(height, trace, 1, nameof(linear));
        double shapePreserving = Pieces(EdgeFit.ShapePreserving)[piece].Work(height, trace, 2, nameof(shapePreserving));
        double naturalCubic = Pieces(EdgeFit.NaturalCubic)[piece].Work(height, trace, 3, nameof(naturalCubic));
        trace.Step("e", "difference", Math.Max(Math.Max(linear, shapePreserving), naturalCubic) - Math.Min(Math.Min(linear, shapePreserving), naturalCubic), "mm", EdgeDefaults.Curve);
    }

    private List<Finding> Find()
    {
        List<Finding> findings = [];
        if (_fit is null)
        {
            return findings;
        }

        if (_heights.Length == 2)
        {
            findings.Add(new Finding(
                "geometry-edge-two-points",
                Severity.Note,
                $"Two points make a straight edge whatever lies between them: measure a third at {Print.Mm((_heights[0] + _heights[1]) / 2)}.",
                [new("points", 2, string.Empty), new("measure-at", Grid.Snap((_heights[0] + _heights[1]) / 2), "mm")],
                EdgeDefaults.Curve));
        }

        if (Grid.Snap(_difference) > _limit)
        {
            int piece = IndexAt(_differenceAt);
            findings.Add(new Finding(
                "geometry-edge-curves-differ",
                Severity.Caution,
                $"Between the heights {Print.Number(_heights[piece])} and {Print.Mm(_heights[piece + 1])} the curves through the points differ by up to {Print.Mm(_difference)}, more than {Print.Mm(_limit)}. Measure the edge at {Print.Mm(_differenceAt)} too.",
                [
                    new("greatest-difference", Grid.Snap(_difference), "mm"), new("measure-at", Grid.Snap(_differenceAt), "mm"), new("difference-limit", _limit, "mm"),
                    new("linear-offset", Grid.Snap(Pieces(EdgeFit.Linear)[piece].OffsetAt(_differenceAt)), "mm"),
                    new("shape-preserving-offset", Grid.Snap(Pieces(EdgeFit.ShapePreserving)[piece].OffsetAt(_differenceAt)), "mm"),
                    new("natural-cubic-offset", Grid.Snap(Pieces(EdgeFit.NaturalCubic)[piece].OffsetAt(_differenceAt)), "mm"),
                ],
                _limitIsDefault ? EdgeDefaults.DifferenceLimitSource : Sources.Given));
        }

        return findings;
    }
}
