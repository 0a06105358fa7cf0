using System;
using UnitsNet;

namespace FinishKit;

/// <summary>A point of a face as it is measured: where on the face, and outward from a flat reference on the room's side.</summary>
/// <remarks>Stored as given; the calculator checks it.</remarks>
public readonly struct SurfacePoint : IEquatable<SurfacePoint>
{
    /// <summary>A point.</summary>
    /// <param name="u">Along the van [length].</param>
    /// <param name="v">Up the girth [length].</param>
    /// <param name="offset">From the reference outward to the surface [length].</param>
    public SurfacePoint(Length u, Length v, Length offset)
    {
        U = u;
        V = v;
        Offset = offset;
    }

    /// <summary>Along the van.</summary>
    public Length U { get; }

    /// <summary>Up the girth.</summary>
    public Length V { get; }

    /// <summary>From the reference outward to the surface; greater is farther from the room.</summary>
    public Length Offset { get; }

    /// <summary>Whether two points are in one place.</summary>
    /// <param name="left">One point.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree on the 1 nm grid.</returns>
    public static bool operator ==(SurfacePoint left, SurfacePoint right) => left.Equals(right);

    /// <summary>Whether two points are in different places.</summary>
    /// <param name="left">One point.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they differ on the 1 nm grid.</returns>
    public static bool operator !=(SurfacePoint left, SurfacePoint right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(SurfacePoint other) => Key.Equals(other.Key);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is SurfacePoint other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>The three lengths in millimetres, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"({Print.Mm(Key.U)}, {Print.Mm(Key.V)}, {Print.Mm(Key.Offset)})";

    private (double U, double V, double Offset) Key => (Door.Millimetres(U), Door.Millimetres(V), Door.Millimetres(Offset));
}
