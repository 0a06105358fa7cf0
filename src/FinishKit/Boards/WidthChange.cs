using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>A width of wood at two moisture contents: what <see cref="BoardMovement.OfWidth(Length, DimensionalChangeCoefficient, double, double)"/> answers. The default value is no wood.</summary>
public readonly struct WidthChange : IEquatable<WidthChange>
{
    private readonly double _width, _change;

    internal WidthChange(double width, in DimensionalChangeCoefficient coefficient, double fromMoisture, double toMoisture)
    {
        _width = width;
        Coefficient = coefficient;
        FromMoisture = fromMoisture;
        ToMoisture = toMoisture;
        _change = BoardMovement.Solve(width, coefficient, fromMoisture, toMoisture, default(Silent));
    }

    /// <summary>Width at the first moisture content.</summary>
    public Length Width => Door.Millimetres(_width);

    /// <summary>How much the wood moves.</summary>
    public DimensionalChangeCoefficient Coefficient { get; }

    /// <summary>Moisture content before, in percent.</summary>
    public double FromMoisture { get; }

    /// <summary>Moisture content after, in percent.</summary>
    public double ToMoisture { get; }

    /// <summary>What the width gains, negative where it shrinks.</summary>
    public Length Change => Door.Millimetres(Grid.Snap(_change));

    /// <summary>Width at the second moisture content.</summary>
    public Length WidthAfter => Door.Millimetres(Grid.Snap(_width + _change));

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: never, for a width.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "Every result has it; a later finding may be a problem.")]
    public bool HasProblem => false;

    /// <summary>What a person should know, those of the coefficient too; put together on reading.</summary>
    /// <remarks>Codes: <c>boards-movement-outside-range</c>, and those of <see cref="DimensionalChangeCoefficient.Findings"/>.</remarks>
    public IReadOnlyList<Finding> Findings => Coefficient.IsNone ? [] : BoardMovement.OutsideRange(Math.Min(FromMoisture, ToMoisture), Math.Max(FromMoisture, ToMoisture)) is { } outside
        ? [outside, .. Coefficient.Findings]
        : Coefficient.Findings;

    /// <summary>Those of the coefficient; put together on reading.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed => Coefficient.DefaultsUsed;

    private (double, DimensionalChangeCoefficient, double, double) Key => (_width, Coefficient, FromMoisture, ToMoisture);

    /// <summary>Whether width, wood and moisture agree.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree.</returns>
    public static bool operator ==(WidthChange left, WidthChange right) => left.Equals(right);

    /// <summary>Whether width, wood or moisture differ.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if one differs.</returns>
    public static bool operator !=(WidthChange left, WidthChange right) => !left.Equals(right);

    /// <summary>How the change follows, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        BoardMovement.Solve(_width, Coefficient, FromMoisture, ToMoisture, recorder);
        return recorder.ToWorkings("Change of width");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Width, coefficient, both moisture contents in percent, change, width after.</returns>
    public IReadOnlyList<Figure> Figures() =>
    [
        new("width", _width, "mm"),
        new("coefficient", Coefficient.Value, "1/%"),
        new("moisture-before", FromMoisture, "%"),
        new("moisture-after", ToMoisture, "%"),
        new("change", Grid.Snap(_change), "mm"),
        new("width-after", Grid.Snap(_width + _change), "mm"),
    ];

    /// <inheritdoc/>
    public bool Equals(WidthChange other) => Key.Equals(other.Key);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is WidthChange other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Width, moisture and change, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Mm(_width)} of wood from {Print.Round(FromMoisture, 3)} to {Print.Round(ToMoisture, 3)}% {(_change < 0 ? "shrinks" : "swells")} by {Print.Mm(Math.Abs(_change))}";
}
