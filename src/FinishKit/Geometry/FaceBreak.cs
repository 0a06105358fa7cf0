using System;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>A line along the van where the lean of a face changes.</summary>
public sealed record FaceBreak
{
    /// <summary>Makes one by its members.</summary>
    public FaceBreak()
    {
    }

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="v">Where it is, up the girth.</param>
    /// <param name="leanChange">By how much the lean changes.</param>
    [SetsRequiredMembers]
    public FaceBreak(Length v, Angle leanChange)
    {
        V = v;
        LeanChange = leanChange;
    }

    /// <summary>Where it is, up the girth, within the face and more than 0.</summary>
    public required Length V { get; init; }

    /// <summary>By how much the lean changes, -90° to 90°; positive where the face is hollow to the room, so that it leans further in above the break.</summary>
    public required Angle LeanChange { get; init; }

    private (double, double) Key => (Door.Millimetres(V), Door.Degrees(LeanChange));

    /// <summary>Whether both members are of equal amount, whatever their units.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(FaceBreak? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Place and change, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"break at {Print.Mm(Door.Millimetres(V))}, {Print.Number(Door.Degrees(LeanChange))}°";
}

/// <summary>Which breaks end a course: strips and boards go by the same rule.</summary>
internal static class BreakRule
{
    /// <summary>In degrees.</summary>
    internal const double Default = 4;

    internal static readonly Source Source = Source.Judgement("default-break-limit", "a change of lean of more than 4° ends a course, 3° to 6°");

    /// <summary>Whether a change is more than the limit, both in degrees; a billionth of a degree is the noise of changing units.</summary>
    internal static bool IsExceeded(double change, double limit) => Math.Abs(change) - limit > 1e-9;
}
