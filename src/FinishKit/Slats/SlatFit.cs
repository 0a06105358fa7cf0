using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>How slats sit on a curve: what <see cref="SlatCurve.Fit(Length?, Length, Length, Length)"/> answers. The default value is no slat.</summary>
public readonly struct SlatFit : IEquatable<SlatFit>
{
    private readonly double _radius, _slatWidth, _slatThickness, _gapAtBack, _leastGap, _greatestGap;
    private readonly bool _rangeIsDefault;
    private readonly SlatFitNumbers _numbers;

    internal SlatFit(double radius, double slatWidth, double slatThickness, double gapAtBack, (double Least, double Greatest) range, bool rangeIsDefault)
    {
        _radius = radius;
        _slatWidth = slatWidth;
        _slatThickness = slatThickness;
        _gapAtBack = gapAtBack;
        (_leastGap, _greatestGap) = range;
        _rangeIsDefault = rangeIsDefault;
        _numbers = SlatCurve.Solve(radius, slatWidth, slatThickness, gapAtBack, default(Silent));
    }

    /// <summary>Radius of the battens' surface, positive where hollow to the room; null where flat.</summary>
    public Length? Radius => _radius == 0 ? null : Door.Millimetres(_radius);

    /// <summary>Width of a slat.</summary>
    public Length SlatWidth => Door.Millimetres(_slatWidth);

    /// <summary>Thickness of a slat.</summary>
    public Length SlatThickness => Door.Millimetres(_slatThickness);

    /// <summary>Gap between neighbouring back edges.</summary>
    public Length GapAtBack => Door.Millimetres(_gapAtBack);

    /// <summary>Gap between neighbouring face edges: less than at the back on a hollow, more on a bulge. Negative where the faces would have to pass through each other.</summary>
    public Length GapAtFace => Door.Millimetres(FaceGap);

    /// <summary>Angle that each slat turns from the one before; never negative.</summary>
    public Angle Turn => Door.Radians(_numbers.Turn);

    /// <summary>On a hollow: the space under the middle of a slat, which rests on its edges. Else 0.</summary>
    public Length Hollow => Door.Millimetres(_radius > 0 ? Grid.Snap(_numbers.StandOff) : 0);

    /// <summary>On a bulge: how far each back edge of a slat stands off the battens' surface, while its middle touches. Else 0.</summary>
    public Length Rock => Door.Millimetres(_radius < 0 ? Grid.Snap(_numbers.StandOff) : 0);

    /// <summary>Bevel of each edge, from square, that keeps the gap at the back all through the thickness: on a hollow it narrows the face, on a bulge it narrows the back of wider stock.</summary>
    public Angle Bevel => Door.Radians(_numbers.Turn / 2);

    /// <summary>Width at the face of a slat so bevelled, its back as wide as <see cref="SlatWidth"/>; null where the bevels would meet before the face.</summary>
    public Length? BevelledFaceWidth => Grid.Snap(_numbers.FaceWidth) is var width && width > 0 ? Door.Millimetres(width) : null;

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: the slats close at the face.</summary>
    public bool HasProblem => _radius > 0 && FaceGap <= 0;

    /// <summary>Whether the slats close at the face, or gape out of the range; put together on reading.</summary>
    /// <remarks>Codes: <c>slats-face-closed</c>, <c>slats-face-gap-out-of-range</c>.</remarks>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            if (HasProblem)
            {
                return [Closed];
            }

            return FaceGap >= _leastGap && FaceGap <= _greatestGap ? [] : [OutOfRange];
        }
    }

    /// <summary>The range of gaps where none was given; put together on reading.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed => _rangeIsDefault
        ? [new DefaultUsed(new Figure("least-gap", _leastGap, "mm"), SlatDefaults.Gap), new DefaultUsed(new Figure("greatest-gap", _greatestGap, "mm"), SlatDefaults.Gap)]
        : [];

    private double FaceGap => Grid.Snap(_numbers.GapAtFace);

    private Finding Closed
    {
        get
        {
            // The thickness at which the gap at the face is just 0.
            double thickness = Grid.Snap(_gapAtBack / (2 * Math.Sin(_numbers.Turn / 2)));
            List<Figure> values = [new("gap-at-face", FaceGap, "mm"), new("gap-at-back", _gapAtBack, "mm")];
            string thinner = string.Empty, bevelled = string.Empty;
            if (thickness > 0)
            {
                thinner = $"slats thinner than {Print.Mm(thickness)} stay open";
                values.Add(new Figure("closing-thickness", thickness, "mm"));
            }

            if (BevelledFaceWidth is not null)
            {
                double angle = Door.Degrees(Bevel);
                bevelled = $"a bevel of {Print.Round(angle, 2)} degrees on each edge keeps the gap at the back all through";
                values.Add(new Figure("bevel", angle, "deg"));
            }

            string cure = thinner.Length > 0 && bevelled.Length > 0 ? $"{thinner}, or {bevelled}"
                : thinner.Length + bevelled.Length > 0 ? thinner + bevelled
                : "neither thinner slats nor a bevel help; leave a gap at the back";
            return new Finding(
                "slats-face-closed",
                Severity.Problem,
                $"On a hollow of radius {Print.Mm(_radius)} slats of {Print.Mm(_slatWidth)} x {Print.Mm(_slatThickness)} with {Print.Mm(_gapAtBack)} at the back close at the face ({Print.Mm(FaceGap)}): {cure}.",
                [.. values],
                Sources.SlatsOnCurve);
        }
    }

    private Finding OutOfRange => new(
        "slats-face-gap-out-of-range",
        Severity.Caution,
        $"The gap at the face is {Print.Mm(FaceGap)}, with {Print.Mm(_gapAtBack)} at the back: out of the range of {Print.Number(_leastGap)} to {Print.Mm(_greatestGap)}.",
        [new("gap-at-face", FaceGap, "mm"), new("gap-at-back", _gapAtBack, "mm"), new("least-gap", _leastGap, "mm"), new("greatest-gap", _greatestGap, "mm"), new("bevel", Door.Degrees(Bevel), "deg")],
        _rangeIsDefault ? SlatDefaults.Gap : Sources.Given);

    /// <summary>Whether curve, slat, gap and range agree.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree.</returns>
    public static bool operator ==(SlatFit left, SlatFit right) => left.Equals(right);

    /// <summary>Whether curve, slat, gap or range differ.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if one differs.</returns>
    public static bool operator !=(SlatFit left, SlatFit right) => !left.Equals(right);

    /// <summary>How turn, stand-off, face gap and bevel follow, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        SlatCurve.Solve(_radius, _slatWidth, _slatThickness, _gapAtBack, recorder);
        return recorder.ToWorkings(_radius == 0 ? "Slats on a flat surface" : _radius > 0 ? "Slats on a hollow" : "Slats on a bulge");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Radius (absent where flat), slat, gaps at back and face, turn, hollow, rock and bevel, and the face of a bevelled slat where it has one.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures = [];
        if (_radius != 0)
        {
            figures.Add(new Figure("radius", _radius, "mm"));
        }

        figures.Add(new Figure("slat-width", _slatWidth, "mm"));
        figures.Add(new Figure("slat-thickness", _slatThickness, "mm"));
        figures.Add(new Figure("gap-at-back", _gapAtBack, "mm"));
        figures.Add(new Figure("gap-at-face", FaceGap, "mm"));
        figures.Add(new Figure("turn", Door.Degrees(Turn), "deg"));
        figures.Add(new Figure("hollow", Door.Millimetres(Hollow), "mm"));
        figures.Add(new Figure("rock", Door.Millimetres(Rock), "mm"));
        figures.Add(new Figure("bevel", Door.Degrees(Bevel), "deg"));
        if (BevelledFaceWidth is { } width)
        {
            figures.Add(new Figure("bevelled-face-width", Door.Millimetres(width), "mm"));
        }

        return figures;
    }

    /// <inheritdoc/>
    public bool Equals(SlatFit other) => Key.Equals(other.Key);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is SlatFit other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    private (double, double, double, double, double, double, bool) Key => (_radius, _slatWidth, _slatThickness, _gapAtBack, _leastGap, _greatestGap, _rangeIsDefault);

    /// <summary>Slat, curve and gaps, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string surface = _radius == 0 ? "flat" : (_radius > 0 ? "hollow" : "bulge") + " of radius " + Print.Mm(Math.Abs(_radius));
        return $"slats of {Print.Mm(_slatWidth)} x {Print.Mm(_slatThickness)}, {surface}: gap {Print.Mm(_gapAtBack)} at the back, {Print.Mm(FaceGap)} at the face";
    }
}
