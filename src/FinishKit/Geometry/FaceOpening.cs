using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>A window, door or vent in a face: a rectangle that has no finish.</summary>
public sealed record FaceOpening
{
    /// <summary>Makes one by its members.</summary>
    public FaceOpening()
    {
    }

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="fromU">Its front.</param>
    /// <param name="toU">Its rear.</param>
    /// <param name="fromV">Its lower edge.</param>
    /// <param name="toV">Its upper edge.</param>
    [SetsRequiredMembers]
    public FaceOpening(Length fromU, Length toU, Length fromV, Length toV)
    {
        FromU = fromU;
        ToU = toU;
        FromV = fromV;
        ToV = toV;
    }

    /// <summary>Its front, within the face.</summary>
    public required Length FromU { get; init; }

    /// <summary>Its rear, more than its front, within the face.</summary>
    public required Length ToU { get; init; }

    /// <summary>Its lower edge, within the face.</summary>
    public required Length FromV { get; init; }

    /// <summary>Its upper edge, more than its lower one, within the face.</summary>
    public required Length ToV { get; init; }

    private (double, double, double, double) Key => (Door.Millimetres(FromU), Door.Millimetres(ToU), Door.Millimetres(FromV), Door.Millimetres(ToV));

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(FaceOpening? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Its two ranges, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"u {Print.Number(Door.Millimetres(FromU))} to {Print.Mm(Door.Millimetres(ToU))}, v {Print.Number(Door.Millimetres(FromV))} to {Print.Mm(Door.Millimetres(ToV))}";
}
