using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>A piece of an edge between two heights, in millimetres: its offset, its slope, and where that slope is a given one.</summary>
internal abstract class EdgePiece(double from, double to)
{
    internal double From { get; } = from;

    internal double To { get; } = to;

    internal abstract double OffsetAt(double height);

    /// <summary>Change of offset over change of height.</summary>
    internal abstract double SlopeAt(double height);

    /// <summary>Adds every height strictly inside the piece where the slope is the one given, in closed form.</summary>
    internal abstract void AddWhereSlopeIs(double slope, List<double> heights);

    /// <summary>Adds a height if it lies strictly inside.</summary>
    protected void AddInside(double height, List<double> heights)
    {
        if (height > From && height < To)
        {
            heights.Add(height);
        }
    }
}

/// <summary>The cubic through two points with given slopes there.</summary>
internal sealed class CubicPiece : EdgePiece
{
    private readonly double _lowerOffset, _upperOffset, _lowerSlope, _upperSlope, _square, _cube;

    internal CubicPiece(double from, double to, double lowerOffset, double upperOffset, double lowerSlope, double upperSlope)
        : base(from, to)
    {
        _lowerOffset = lowerOffset;
        _upperOffset = upperOffset;
        _lowerSlope = lowerSlope;
        _upperSlope = upperSlope;
        (_square, _cube) = Coefficients(default(Silent), 0);
    }

    internal override double OffsetAt(double height) => Offset(height, _square, _cube, default(Silent), 0, "offset");

    internal override double SlopeAt(double height)
    {
        double x = height - From;
        return _lowerSlope + (x * ((2 * _square) + (3 * _cube * x)));
    }

    internal override void AddWhereSlopeIs(double slope, List<double> heights) => AddRoots(3 * _cube, 2 * _square, _lowerSlope - slope, heights);

    /// <summary>Adds the heights where this cubic and another on the same piece have the same slope.</summary>
    internal void AddWhereSlopesMeet(CubicPiece other, List<double> heights) =>
        AddRoots(3 * (_cube - other._cube), 2 * (_square - other._square), _lowerSlope - other._lowerSlope, heights);

    /// <summary>The offset at a height, step by step; the value is known to later formulas by the name given.</summary>
    internal double Work<TTrace>(double height, TTrace trace, int index, string name)
        where TTrace : struct, ITrace
    {
        (double square, double cube) = Coefficients(trace, index);
        return Offset(height, square, cube, trace, index, name);
    }

    /// <summary>The one formula body: the coefficients behind the slope at the lower point.</summary>
    private (double Square, double Cube) Coefficients<TTrace>(TTrace trace, int index)
        where TTrace : struct, ITrace
    {
        double from = From, to = To, lowerOffset = _lowerOffset, upperOffset = _upperOffset, lowerSlope = _lowerSlope, upperSlope = _upperSlope;
        if (index <= 1)
        {
            trace.Given("v_a", from, "mm", Sources.Given, meaning: "height measured below");
            trace.Given("v_b", to, "mm", Sources.Given, meaning: "height measured above");
            trace.Given("u_a", lowerOffset, "mm", Sources.Given, meaning: "offset measured below");
            trace.Given("u_b", upperOffset, "mm", Sources.Given, meaning: "offset measured above");
        }

        trace.Given("m_a", lowerSlope, string.Empty, EdgeDefaults.Curve, index, "slope at the point below");
        trace.Given("m_b", upperSlope, string.Empty, EdgeDefaults.Curve, index, "slope at the point above");
        double length = trace.Step("h", nameof(length), to - from, "mm", EdgeDefaults.Curve);
        double chordSlope = trace.Step("d", nameof(chordSlope), (upperOffset - lowerOffset) / length, string.Empty, EdgeDefaults.Curve);
        double square = trace.Step("q", nameof(square), ((3 * chordSlope) - (2 * lowerSlope) - upperSlope) / length, "1/mm", EdgeDefaults.Curve, index);
        double cube = trace.Step("c", nameof(cube), (lowerSlope + upperSlope - (2 * chordSlope)) / (length * length), "1/mm2", EdgeDefaults.Curve, index);
        return (square, cube);
    }

    private double Offset<TTrace>(double height, double square, double cube, TTrace trace, int index, string name)
        where TTrace : struct, ITrace
    {
        double lowerOffset = _lowerOffset, lowerSlope = _lowerSlope, from = From;
        trace.Given("v", height, "mm", Sources.Given, meaning: "height asked for");
        double above = trace.Step("x", nameof(above), height - from, "mm", EdgeDefaults.Curve);
        return trace.Step("u", name, lowerOffset + (above * (lowerSlope + (above * (square + (cube * above))))), "mm", EdgeDefaults.Curve, index);
    }

    /// <summary>Roots of a x² + b x + c, x from the lower end. A double root is no extreme and may be missed.</summary>
    private void AddRoots(double a, double b, double c, List<double> heights)
    {
        double under = (b * b) - (4 * a * c);
        if (!(under >= 0))
        {
            return;
        }

        // Never the difference of two nearly equal numbers; a quotient by 0 lies nowhere and is left out.
        double q = -(b + ((b < 0 ? -1 : 1) * Math.Sqrt(under))) / 2;
        AddInside(From + (q / a), heights);
        AddInside(From + (c / q), heights);
    }
}

/// <summary>
/// Part of a circle, or a straight line where the curvature is 0, between two points. On a circle the sine of the angle to the plumb line
/// changes evenly with height, so that offset and slope need no centre, which runs to infinity as the arc becomes flat.
/// </summary>
internal sealed class ArcPiece : EdgePiece
{
    private readonly double _lowerOffset, _upperOffset, _rise, _chordSlope, _sine, _curvature;

    internal ArcPiece(double from, double to, double lowerOffset, double upperOffset, double rise)
        : base(from, to)
    {
        _lowerOffset = lowerOffset;
        _upperOffset = upperOffset;
        _rise = rise;
        _chordSlope = (upperOffset - lowerOffset) / (to - from);
        (double angle, _curvature) = Solve(default(Silent));
        _sine = Math.Sin(angle);
    }

    internal override double OffsetAt(double height)
    {
        // A straight edge may lean as far as it likes, where a cosine out of the sine would lose its digits.
        if (_curvature == 0)
        {
            return _lowerOffset + ((height - From) * _chordSlope);
        }

        double sine = SineAt(height);
        return _lowerOffset + ((height - From) * (_sine + sine) / (Cosine(_sine) + Cosine(sine)));
    }

    internal override double SlopeAt(double height)
    {
        double sine = SineAt(height);
        return _curvature == 0 ? _chordSlope : sine / Cosine(sine);
    }

    internal override void AddWhereSlopeIs(double slope, List<double> heights)
    {
        if (_curvature != 0)
        {
            AddInside(From + ((_sine - (slope / Math.Sqrt(1 + (slope * slope)))) / _curvature), heights);
        }
    }

    /// <summary>Angle to the plumb line at the lower end, and curvature, positive where the middle lies at a greater offset than the chord.</summary>
    internal (double Angle, double Curvature) Solve<TTrace>(TTrace trace)
        where TTrace : struct, ITrace
    {
        double from = From, to = To, lowerOffset = _lowerOffset, upperOffset = _upperOffset, rise = _rise;
        trace.Given("v_a", from, "mm", Sources.Given, meaning: "height of the lower point");
        trace.Given("v_b", to, "mm", Sources.Given, meaning: "height of the upper point");
        trace.Given("u_a", lowerOffset, "mm", Sources.Given, meaning: "offset of the lower point");
        trace.Given("u_b", upperOffset, "mm", Sources.Given, meaning: "offset of the upper point");
        double chordAngle = trace.Step("phi", nameof(chordAngle), Math.Atan((upperOffset - lowerOffset) / (to - from)), "rad", EdgeDefaults.Exact);
        if (rise == 0)
        {
            return (chordAngle, 0);
        }

        trace.Given("s", rise, "mm", Sources.Given, meaning: "rise over the chord");
        double chord = trace.Step("c", nameof(chord), Math.Sqrt(Math.Pow(to - from, 2) + Math.Pow(upperOffset - lowerOffset, 2)), "mm", EdgeDefaults.Exact);
        double radius = trace.Step("R", nameof(radius), (chord * chord / (8 * rise)) + (rise / 2), "mm", Sources.Circle);
        double halfAngle = trace.Step("theta", nameof(halfAngle), 2 * Math.Atan(2 * rise / chord), "rad", Sources.Circle);
        double lowerAngle = trace.Step("alpha_a", nameof(lowerAngle), chordAngle + halfAngle, "rad", EdgeDefaults.Exact);
        trace.Step("alpha_b", "upperAngle", chordAngle - halfAngle, "rad", EdgeDefaults.Exact);
        double curvature = trace.Step("k", nameof(curvature), 1 / radius, "1/mm", EdgeDefaults.Exact);
        return (lowerAngle, curvature);
    }

    private static double Cosine(double sine) => Math.Sqrt(1 - (sine * sine));

    private double SineAt(double height) => _sine - (_curvature * (height - From));
}
