using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

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

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="centre">Its middle.</param>
    /// <param name="width">Its usable width.</param>
    /// <param name="from">See <see cref="From"/>.</param>
    /// <param name="to">See <see cref="To"/>.</param>
    /// <param name="setback">See <see cref="Setback"/>.</param>
    [SetsRequiredMembers]
    public ShellMember(Length centre, Length width, Length? from = null, Length? to = null, Length setback = default)
        : this(centre, width)
    {
        From = from;
        To = to;
        Setback = setback;
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
