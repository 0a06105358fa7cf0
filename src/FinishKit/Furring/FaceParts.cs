using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>A window, door or vent in a face: a rectangle that has no finish and is framed on its four sides.</summary>
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

    /// <summary>By how much the lean changes, -90° to 90°, either sign.</summary>
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

/// <summary>A piece of furniture that covers the foot of a face: no finish and no strips below its line.</summary>
public sealed record FurnitureStop
{
    /// <summary>Makes one by its members.</summary>
    public FurnitureStop()
    {
    }

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="fromU">Where it begins.</param>
    /// <param name="toU">Where it ends.</param>
    /// <param name="v">The line that the finish starts from.</param>
    [SetsRequiredMembers]
    public FurnitureStop(Length fromU, Length toU, Length v)
    {
        FromU = fromU;
        ToU = toU;
        V = v;
    }

    /// <summary>Where it begins, along the van, within the face.</summary>
    public required Length FromU { get; init; }

    /// <summary>Where it ends, more than where it begins, within the face.</summary>
    public required Length ToU { get; init; }

    /// <summary>The line that the finish starts from, up the girth, more than 0, within the face.</summary>
    public required Length V { get; init; }

    private (double, double, double) Key => (Door.Millimetres(FromU), Door.Millimetres(ToU), Door.Millimetres(V));

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(FurnitureStop? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Range and line, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"furniture u {Print.Number(Door.Millimetres(FromU))} to {Print.Mm(Door.Millimetres(ToU))}, up to v {Print.Mm(Door.Millimetres(V))}";
}

/// <summary>A pressed-steel member of the shell that strips are fixed to: a rib up the girth, or a rail along the van.</summary>
public sealed record ShellMember
{
    /// <summary>Makes one by its members.</summary>
    public ShellMember()
    {
    }

    /// <summary>Makes one that runs across the whole face, flush with the others.</summary>
    /// <param name="centre">Its middle.</param>
    /// <param name="width">Its usable width.</param>
    [SetsRequiredMembers]
    public ShellMember(Length centre, Length width)
    {
        Centre = centre;
        Width = width;
    }

    /// <summary>Its middle, -100 to 100 m: of a rib along the van, of a rail up the girth.</summary>
    public required Length Centre { get; init; }

    /// <summary>Its usable width, more than 0 up to 1 m: a strip bears on it whose centre line is within half of it from its middle.</summary>
    public required Length Width { get; init; }

    /// <summary>Where it begins along its own run, -100 to 100 m; null for the edge of the face. A rib cut by a window is given twice.</summary>
    public Length? From { get; init; }

    /// <summary>Where it ends along its own run, no less than where it begins, -100 to 100 m; null for the edge of the face.</summary>
    public Length? To { get; init; }

    /// <summary>How far it lies behind the plane of the strips' backs, 0 to 1 m: the thickness of the packers on it.</summary>
    public Length Setback { get; init; }

    private (double, double, double?, double?, double) Key => (
        Door.Millimetres(Centre), Door.Millimetres(Width), From is { } from ? Door.Millimetres(from) : null, To is { } to ? Door.Millimetres(to) : null, Door.Millimetres(Setback));

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(ShellMember? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Middle and width, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"member at {Print.Mm(Door.Millimetres(Centre))}, {Print.Mm(Door.Millimetres(Width))} wide";
}
