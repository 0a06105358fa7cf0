using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>How far a fastener's tip stops short of what is behind, at exact sizes: what <see cref="FastenerLength.TipClearance"/> answers.</summary>
public readonly struct TipClearance : IEquatable<TipClearance>
{
    private readonly double _depth, _length, _setDepth, _angle, _tipDepth, _clearance;

    internal TipClearance(double depth, double length, double setDepth, double angle, double tipDepth, double clearance)
    {
        _depth = depth;
        _length = length;
        _setDepth = setDepth;
        _angle = angle;
        _tipDepth = tipDepth;
        _clearance = clearance;
    }

    /// <summary>Depth of the tip below the surface where the head seats, along the face normal.</summary>
    public Length TipDepth => Door.Millimetres(Grid.Snap(_tipDepth));

    /// <summary>From the tip to what is behind, along the face normal; negative where it would be past it.</summary>
    public Length Clearance => Door.Millimetres(Grid.Snap(_clearance));

    /// <summary>Whether the tip touches or passes what is behind.</summary>
    public bool Touches => Grid.Snap(_clearance) <= 0 && _length > 0;

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem => Touches;

    /// <summary>Code <c>fastening-tip-touches</c> where it does; put together on reading.</summary>
    public IReadOnlyList<Finding> Findings => Touches
        ?
        [
            new Finding(
                "fastening-tip-touches",
                Severity.Problem,
                $"At exact sizes the tip of a {Print.Mm(_length)} fastener lies {Print.Mm(_tipDepth)} deep and {(Grid.Snap(_clearance) == 0 ? "touches" : $"is {Print.Mm(-_clearance)} past")} what is {Print.Mm(_depth)} behind the surface.",
                [new("clearance", Clearance.Millimeters, "mm"), new("tip-depth", TipDepth.Millimeters, "mm"), new("depth-behind", _depth, "mm")],
                Sources.FastenerStack),
        ]
        : [];

    /// <summary>Whether all numbers agree.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree on the 1 nm grid.</returns>
    public static bool operator ==(TipClearance left, TipClearance right) => left.Equals(right);

    /// <summary>Whether a number differs.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they differ on the 1 nm grid.</returns>
    public static bool operator !=(TipClearance left, TipClearance right) => !left.Equals(right);

    /// <summary>How the clearance follows, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        FastenerLength.SolveTip(_depth, _length, _setDepth, _angle, recorder);
        return recorder.ToWorkings("Clearance of a fastener's tip");
    }

    /// <summary>The result as flat figures.</summary>
    /// <returns>Tip depth and clearance in mm.</returns>
    public IReadOnlyList<Figure> Figures() => [new("tip-depth", TipDepth.Millimeters, "mm"), new("clearance", Clearance.Millimeters, "mm")];

    /// <inheritdoc/>
    public bool Equals(TipClearance other) => _depth.Equals(other._depth) && _length.Equals(other._length) && _setDepth.Equals(other._setDepth)
        && _angle.Equals(other._angle) && Grid.Snap(_clearance).Equals(Grid.Snap(other._clearance));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is TipClearance other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((_depth.GetHashCode() * 397) ^ _length.GetHashCode() ^ (_setDepth.GetHashCode() * 31) ^ _angle.GetHashCode());

    /// <summary>Clearance and tip depth in millimetres, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"clearance {Print.Mm(_clearance)}, tip {Print.Mm(_tipDepth)} deep";
}
