using System.Collections.Generic;
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

    /// <summary>Its bounds in millimetres, each within what is allowed and both ranges rising; null where there is a problem.</summary>
    internal static (double U0, double U1, double V0, double V1)? Read(FaceOpening? opening, Name at, Allowed u, Allowed v, List<InputProblem>? problems)
    {
        if (Door.IsMissing(opening, at, "an opening", problems))
        {
            return null;
        }

        double u0 = Door.Millimetres(opening!.FromU, at.Then(".FromU"), u, problems), u1 = Door.Millimetres(opening.ToU, at.Then(".ToU"), u, problems);
        double v0 = Door.Millimetres(opening.FromV, at.Then(".FromV"), v, problems), v1 = Door.Millimetres(opening.ToV, at.Then(".ToV"), v, problems);
        return double.IsNaN(u0 + u1 + v0 + v1) || !Door.Rises(u0, u1, at.Then(".ToU"), problems) || !Door.Rises(v0, v1, at.Then(".ToV"), problems) ? null : (u0, u1, v0, v1);
    }
}
