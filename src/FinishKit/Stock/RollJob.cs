using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>Rectangular pieces of one size that are to be cut from a roll of cloth, foam or film.</summary>
public sealed record RollPart
{
    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="along">Along the roll: the way its nap, pattern or stretch is counted by.</param>
    /// <param name="across">Across the roll.</param>
    /// <param name="count">How many.</param>
    /// <param name="mayTurn">Whether a piece may lie turned by a quarter.</param>
    [SetsRequiredMembers]
    public RollPart(Length along, Length across, int count, bool mayTurn)
    {
        Along = along;
        Across = across;
        Count = count;
        MayTurn = mayTurn;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="along">Along the roll: the way its nap, pattern or stretch is counted by.</param>
    /// <param name="across">Across the roll.</param>
    /// <param name="count">How many.</param>
    /// <param name="mayTurn">Whether a piece may lie turned by a quarter.</param>
    /// <param name="name">See <see cref="Name"/>.</param>
    [SetsRequiredMembers]
    public RollPart(Length along, Length across, int count, bool mayTurn, string? name = null)
        : this(along, across, count, mayTurn)
    {
        Name = name;
    }

    /// <summary>Makes one by its members.</summary>
    public RollPart()
    {
    }

    /// <summary>Along the roll, 1 mm to 20 m.</summary>
    public required Length Along { get; init; }

    /// <summary>Across the roll, 1 mm to 20 m.</summary>
    public required Length Across { get; init; }

    /// <summary>How many, 1 to 1000.</summary>
    public required int Count { get; init; }

    /// <summary>Whether a piece may lie turned by a quarter: not with a nap, a pattern, or a stretch that is wanted one way.</summary>
    public required bool MayTurn { get; init; }

    /// <summary>What the person with the shears calls it, at most 100 characters; null for none.</summary>
    public string? Name { get; init; }

    private (double, double, int, bool, string?) Key => (Door.Millimetres(Along), Door.Millimetres(Across), Count, MayTurn, Name);

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(RollPart? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Count, size and name, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Number(Count)} of {Print.Round(Door.Millimetres(Along), 3)} along x {Print.Mm(Door.Millimetres(Across))} across{(MayTurn ? " either way" : string.Empty)}{(Name is null ? string.Empty : " " + Name)}";
}

/// <summary>Pieces to be cut from a roll: what <see cref="RollCutting"/> needs to know.</summary>
/// <remarks>
/// Nothing is checked here: <see cref="RollCutting.Check"/> reports all problems, and the calculating method throws the first.
/// </remarks>
public sealed record RollJob
{
    private readonly IReadOnlyList<RollPart> _parts = [];

    /// <summary>An empty job for an object initialiser.</summary>
    public RollJob()
    {
    }

    /// <summary>A job with every default.</summary>
    /// <param name="parts">The pieces.</param>
    /// <param name="width">Width of the roll.</param>
    [SetsRequiredMembers]
    public RollJob(IReadOnlyList<RollPart> parts, Length width)
    {
        Parts = parts;
        Width = width;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="parts">The pieces.</param>
    /// <param name="width">Width of the roll.</param>
    /// <param name="selvedge">See <see cref="Selvedge"/>.</param>
    /// <param name="between">See <see cref="Between"/>.</param>
    /// <param name="soldBy">See <see cref="SoldBy"/>.</param>
    /// <param name="effort">See <see cref="Effort"/>.</param>
    [SetsRequiredMembers]
    public RollJob(IReadOnlyList<RollPart> parts, Length width, Length? selvedge = null, Length? between = null, Length? soldBy = null, int? effort = null)
        : this(parts, width)
    {
        Selvedge = selvedge;
        Between = between;
        SoldBy = soldBy;
        Effort = effort;
    }

    /// <summary>The pieces, 1 to 500 kinds, 10000 pieces at most. What does not go across the roll is not cut, and a finding says so.</summary>
    public required IReadOnlyList<RollPart> Parts
    {
        get => _parts;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _parts = Lists.Keep(value, RollCutting.MostParts);
    }

    /// <summary>Width of the roll, selvedges included, 10 mm to 20 m.</summary>
    public required Length Width { get; init; }

    /// <summary>What cannot be used along each edge of the roll, 0 to 200 mm, so that at least 1 mm is left. Default 0: the width is given without it.</summary>
    public Length? Selvedge { get; init; }

    /// <summary>Room between pieces, 0 to 100 mm. Default 0: shears take nothing.</summary>
    public Length? Between { get; init; }

    /// <summary>The roll is sold by so much; the length to buy is rounded up to it. 1 mm to 10 m. Null: any length.</summary>
    public Length? SoldBy { get; init; }

    /// <summary>Steps of search at most, 1 to 2,000,000,000: the same job stops at the same place on every machine. Default 50,000,000, a second or so where nothing is proven before. A first layout and a first bound are made whatever the effort, and a filling that is begun is finished.</summary>
    public int? Effort { get; init; }

    private (double, double?, double?, double?, int?) Key => (
        Door.Millimetres(Width),
        Selvedge is { } selvedge ? Door.Millimetres(selvedge) : null,
        Between is { } between ? Door.Millimetres(between) : null,
        SoldBy is { } sold ? Door.Millimetres(sold) : null,
        Effort);

    /// <summary>Whether every member is of equal amount, whatever its unit, and the lists hold the same in the same order.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(RollJob? other) => other is not null && Key.Equals(other.Key) && Lists.Same(Parts, other.Parts, RollCutting.MostParts, Equals);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>How many kinds of pieces and the roll's width, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Parts?.Count ?? 0)} kinds of pieces from a roll {Print.Mm(Door.Millimetres(Width))} wide";
}
