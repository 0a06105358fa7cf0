using System;

namespace FinishKit;

/// <summary>A direction in space by three numbers, in any right-handed axes: u along the van, out into the room, up, for example. Its length does not matter.</summary>
/// <remarks>Stored as given; the calculator checks it.</remarks>
public readonly struct Direction : IEquatable<Direction>
{
    /// <summary>A direction.</summary>
    /// <param name="x">Along the first axis.</param>
    /// <param name="y">Along the second.</param>
    /// <param name="z">Along the third.</param>
    public Direction(double x, double y, double z)
    {
        X = x;
        Y = y;
        Z = z;
    }

    /// <summary>Along the first axis.</summary>
    public double X { get; }

    /// <summary>Along the second axis.</summary>
    public double Y { get; }

    /// <summary>Along the third axis.</summary>
    public double Z { get; }

    /// <summary>Whether all three numbers agree.</summary>
    /// <param name="left">One direction.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if so.</returns>
    public static bool operator ==(Direction left, Direction right) => left.Equals(right);

    /// <summary>Whether a number differs.</summary>
    /// <param name="left">One direction.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if so.</returns>
    public static bool operator !=(Direction left, Direction right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(Direction other) => (X, Y, Z).Equals((other.X, other.Y, other.Z));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Direction other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (X, Y, Z).GetHashCode();

    /// <summary>The three numbers, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"({Print.Number(X)}, {Print.Number(Y)}, {Print.Number(Z)})";

    internal double Size => Math.Sqrt(Dot(this));

    internal double Dot(Direction other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    internal Direction Plus(double times, Direction other) => new(X + (times * other.X), Y + (times * other.Y), Z + (times * other.Z));

    internal Direction Unit() => new(X / Size, Y / Size, Z / Size);
}
