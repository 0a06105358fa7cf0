using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>
/// An arc of a circle: what <see cref="Arc"/> answers. Signed: rise, radius, angle and curvature are positive where the surface is
/// hollow to the room. The default value is an arc of no length.
/// </summary>
public readonly struct CircularArc : IEquatable<CircularArc>
{
    /// <summary>What a person reads a gap under a straightedge to.</summary>
    private const double DefaultRiseError = 0.5;

    private static readonly Allowed s_riseError = new(0, 1e3, "mm");
    private static readonly Allowed s_share = new(0.001, 1, string.Empty);

    private readonly double _chord, _rise, _radius, _halfAngle, _arcLength;
    private readonly bool _riseWasRead;

    internal CircularArc(double chord, double rise, double radius, double halfAngle, double arcLength, bool riseWasRead)
    {
        _riseWasRead = riseWasRead;
        _chord = chord;
        _rise = rise;
        _radius = radius;
        _halfAngle = halfAngle;
        _arcLength = arcLength;
    }

    /// <summary>Straight distance between the ends.</summary>
    public Length Chord => Door.Millimetres(Grid.Snap(_chord));

    /// <summary>Greatest distance of the arc from its chord; negative where the surface bulges into the room.</summary>
    public Length Rise => Door.Millimetres(Grid.Snap(_rise));

    /// <summary>Radius; null where the surface is flat.</summary>
    public Length? Radius => _rise == 0 ? null : Door.Millimetres(Grid.Snap(_radius));

    /// <summary>One over the radius; 0 where the surface is flat.</summary>
    public ReciprocalLength Curvature => ReciprocalLength.FromInverseMillimeters(_rise == 0 ? 0 : 1 / _radius);

    /// <summary>Half the angle the arc turns through: from the middle to an end, seen from the centre.</summary>
    public Angle HalfAngle => Door.Radians(_halfAngle);

    /// <summary>Length along the arc.</summary>
    public Length ArcLength => Door.Millimetres(Grid.Snap(_arcLength));

    /// <summary>Whether the arc is longer than a half circle.</summary>
    public bool IsPastHalfCircle => 2 * Math.Abs(_rise) > _chord;

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: never, for an arc.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "Every result has it; a later finding may be a problem.")]
    public bool HasProblem => false;

    /// <summary>Where the rise was read: what half a millimetre of it does to the radius, in words and figures; put together on reading.</summary>
    /// <remarks>Codes: <c>geometry-radius-uncertain</c>, <c>geometry-flat-within-reading</c>.</remarks>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            double size = Math.Abs(_rise);
            double most = GreatestRadius(DefaultRiseError);
            if (!_riseWasRead)
            {
                return [];
            }

            if (size <= DefaultRiseError)
            {
                return
                [
                    new Finding(
                        "geometry-flat-within-reading",
                        Severity.Caution,
                        $"A rise of {Print.Mm(_rise)} is within half a millimetre of flat, so the surface may be flat: a straightedge of {Print.Mm(_chord)} is too short to tell its radius.",
                        [new("rise", _rise, "mm"), new("chord", _chord, "mm"), new("rise-error", DefaultRiseError, "mm"), new("least-radius", LeastRadius(DefaultRiseError), "mm")],
                        Sources.ReadingError),
                ];
            }

            if (Math.Abs(most) <= 1.1 * Math.Abs(_radius))
            {
                return [];
            }

            double straightedge = StraightedgeFor(DefaultRiseError, 0.1);
            string cure = double.IsNaN(straightedge)
                ? "No straightedge holds it within 10%: the circle is too small."
                : $"A straightedge of {Print.Mm(Math.Ceiling(straightedge))} or longer holds the radius within 10%.";
            return
            [
                new Finding(
                    "geometry-radius-uncertain",
                    Severity.Caution,
                    $"Half a millimetre of rise moves the radius of {Print.Mm(_radius)} between {Print.Mm(LeastRadius(DefaultRiseError))} and {Print.Mm(most)}. {cure}",
                    [
                        new("radius", _radius, "mm"), new("rise-error", DefaultRiseError, "mm"), new("least-radius", LeastRadius(DefaultRiseError), "mm"),
                        new("greatest-radius", most, "mm"), .. double.IsNaN(straightedge) ? Array.Empty<Figure>() : [new("straightedge", straightedge, "mm")],
                    ],
                    Sources.ReadingError),
            ];
        }
    }

    /// <summary>Whether chord and rise agree.</summary>
    /// <param name="left">One arc.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree on the 1 nm grid.</returns>
    public static bool operator ==(CircularArc left, CircularArc right) => left.Equals(right);

    /// <summary>Whether chord or rise differ.</summary>
    /// <param name="left">One arc.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they differ on the 1 nm grid.</returns>
    public static bool operator !=(CircularArc left, CircularArc right) => !left.Equals(right);

    /// <summary>The radius if the rise was really greater by the reading error.</summary>
    /// <param name="riseError">How far off the reading of the rise may be [length], 0 to 1 m.</param>
    /// <returns>The tightest radius that fits the reading, of the arc's sign; null where the surface is flat and the error 0.</returns>
    /// <exception cref="ArgumentException"><paramref name="riseError"/> is outside its range or in an undefined unit.</exception>
    public Length? LeastRadius(Length riseError)
    {
        double radius = LeastRadius(Door.Millimetres(riseError, nameof(riseError), s_riseError, null));
        return double.IsNaN(radius) ? null : Door.Millimetres(Grid.Snap(radius));
    }

    /// <summary>The radius if the rise was really less by the reading error.</summary>
    /// <param name="riseError">How far off the reading of the rise may be [length], 0 to 1 m.</param>
    /// <returns>The widest radius that fits the reading, of the arc's sign; null where the surface may be flat.</returns>
    /// <exception cref="ArgumentException"><paramref name="riseError"/> is outside its range or in an undefined unit.</exception>
    public Length? GreatestRadius(Length riseError)
    {
        double radius = GreatestRadius(Door.Millimetres(riseError, nameof(riseError), s_riseError, null));
        return double.IsNaN(radius) ? null : Door.Millimetres(Grid.Snap(radius));
    }

    /// <summary>The shortest straightedge on this circle whose reading holds the radius within a share of itself.</summary>
    /// <param name="riseError">How far off the reading of the rise may be [length], 0 to 1 m.</param>
    /// <param name="share">The share, 0.001 to 1: 0.1 for within 10%.</param>
    /// <returns>The chord; null where the surface is flat or no chord up to the diameter is long enough.</returns>
    /// <remarks>
    /// <para>Formula: the rise that does it is e (2 (1 + q) R + e)/(2 q R + 2 e); c = 2 sqrt(s (2 R - s)).</para>
    /// <para>Source: geometry-circle (derived: the radius at rise s - e set equal to (1 + q) R).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">An argument is outside its range or in an undefined unit.</exception>
    public Length? StraightedgeFor(Length riseError, double share)
    {
        double error = Door.Millimetres(riseError, nameof(riseError), s_riseError, null);
        double straightedge = StraightedgeFor(error, Door.Number(share, nameof(share), s_share, null));
        return double.IsNaN(straightedge) ? null : Door.Millimetres(Grid.SnapUp(straightedge));
    }

    /// <summary>How the arc follows from its chord and rise, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        Arc.Solve(_chord, _rise, recorder);
        return recorder.ToWorkings("Arc from chord and rise");
    }

    /// <summary>The arc as flat figures.</summary>
    /// <returns>Chord, rise, radius (absent where flat), curvature, half-angle in degrees, arc length.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures = [new("chord", Chord.Millimeters, "mm"), new("rise", Rise.Millimeters, "mm")];
        if (Radius is { } radius)
        {
            figures.Add(new Figure("radius", radius.Millimeters, "mm"));
        }

        figures.Add(new Figure("curvature", Curvature.InverseMillimeters, "1/mm"));
        figures.Add(new Figure("half-angle", HalfAngle.Degrees, "deg"));
        figures.Add(new Figure("arc-length", ArcLength.Millimeters, "mm"));
        return figures;
    }

    /// <inheritdoc/>
    public bool Equals(CircularArc other) => Chord.Value.Equals(other.Chord.Value) && Rise.Value.Equals(other.Rise.Value) && Grid.Snap(_radius).Equals(Grid.Snap(other._radius));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CircularArc other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Grid.Snap(_chord).GetHashCode() * 397) ^ Grid.Snap(_rise).GetHashCode());

    /// <summary>Chord, rise and radius in millimetres, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => _rise == 0
        ? $"chord {Print.Mm(_chord)}, flat"
        : $"chord {Print.Mm(_chord)}, rise {Print.Mm(_rise)}, radius {Print.Mm(_radius)}";

    /// <summary>The radius is least for the half circle: rise equal to half the chord.</summary>
    private double LeastRadius(double error)
    {
        double low = Math.Max(0, Math.Abs(_rise) - error), high = Math.Abs(_rise) + error;
        double rise = Math.Min(Math.Max(_chord / 2, low), high);
        return rise == 0 ? double.NaN : (_rise < 0 ? -1 : 1) * RadiusAt(rise);
    }

    private double GreatestRadius(double error)
    {
        double low = Math.Abs(_rise) - error, high = Math.Abs(_rise) + error;
        return low <= 0 ? double.NaN : (_rise < 0 ? -1 : 1) * Math.Max(RadiusAt(low), RadiusAt(high));
    }

    private double RadiusAt(double rise) => (_chord * _chord / (8 * rise)) + (rise / 2);

    private double StraightedgeFor(double error, double share)
    {
        double size = Math.Abs(_radius);
        double rise = error * ((2 * (1 + share) * size) + error) / (2 * ((share * size) + error));
        return _rise == 0 || rise > size ? double.NaN : 2 * Math.Sqrt(rise * ((2 * size) - rise));
    }
}
