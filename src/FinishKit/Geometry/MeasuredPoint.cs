using System;
using UnitsNet;

namespace FinishKit;

/// <summary>A point as it is measured: along a string, straightedge or plumb line, and across from it.</summary>
/// <remarks>
/// Which way an offset counts is said by the calculator that takes it: for surfaces outward from a string on the room's side, so that one hollow to the room has
/// its greatest offset in the middle; for edges along the courses toward the rear. Stored as given; the calculator checks it.
/// </remarks>
public readonly struct MeasuredPoint : IEquatable<MeasuredPoint>
{
    /// <summary>A point.</summary>
    /// <param name="along">Where along the string [length].</param>
    /// <param name="offset">From the string across to the point [length], as the calculator says.</param>
    public MeasuredPoint(Length along, Length offset)
    {
        Along = along;
        Offset = offset;
    }

    /// <summary>Where along the string.</summary>
    public Length Along { get; }

    /// <summary>From the string across to the point; which way counts as greater the calculator says.</summary>
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
