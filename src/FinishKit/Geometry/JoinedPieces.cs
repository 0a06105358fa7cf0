namespace FinishKit;

/// <summary>Two pieces at a joint, read: directions of length 1. The other is known by its face; where the faces lie in one plane by its axis.</summary>
internal readonly struct JoinedPieces(Direction face, Direction axis, Direction other, bool areOnePlane)
{
    internal Direction Face { get; } = face;

    internal Direction Axis { get; } = axis;

    internal Direction Other { get; } = other;

    internal bool AreOnePlane { get; } = areOnePlane;
}
