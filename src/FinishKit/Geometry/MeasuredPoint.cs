using System;
using UnitsNet;

namespace FinishKit;

/// <summary>A point of a surface as it is measured: along a string, straightedge or plumb line, and from it to the surface.</summary>
/// <remarks>
/// The string is on the room's side and the offset is measured outward from it, so that a surface hollow to the room has its greatest
/// offset in the middle. Stored as given; the calculator checks it.
/// </remarks>
public readonly struct MeasuredPoint : IEquatable<MeasuredPoint>
{
    /// <summary>A point.</summary>
    /// <param name="along">Where along the string [length].</param>
    /// <param name="offset">From the string outward to the surface [length].</param>
    public MeasuredPoint(Length along, Length offset)
    {
        Along = along;
        Offset = offset;
    }

    /// <summary>Where along the string.</summary>
    public Length Along { get; }

    /// <summary>From the string outward to the surface; greater is farther from the room.</summary>
    public Length Offset { get; }

    /// <summary>Whether two points are in one place.</summary>
    /// <param name="left">One point.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree on the 1 nm grid.</returns>
    public static bool operator ==(MeasuredPoint left, MeasuredPoint right) => left.Equals(right);

    /// <summary>Whether two points are in different places.</summary>
    /// <param name="left">One point.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they differ on the 1 nm grid.</returns>
    public static bool operator !=(MeasuredPoint left, MeasuredPoint right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(MeasuredPoint other) => Door.Millimetres(Along).Equals(Door.Millimetres(other.Along)) && Door.Millimetres(Offset).Equals(Door.Millimetres(other.Offset));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is MeasuredPoint other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Door.Millimetres(Along).GetHashCode() * 397) ^ Door.Millimetres(Offset).GetHashCode());

    /// <summary>Both lengths in millimetres, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"({Print.Mm(Door.Millimetres(Along))}, {Print.Mm(Door.Millimetres(Offset))})";
}
