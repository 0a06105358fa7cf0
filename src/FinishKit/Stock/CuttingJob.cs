using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>Pieces of one length that are to be cut from boards.</summary>
public sealed record BoardPart
{
    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="length">Length of each, long point to long point.</param>
    /// <param name="count">How many.</param>
    [SetsRequiredMembers]
    public BoardPart(Length length, int count)
    {
        Length = length;
        Count = count;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="length">Length of each, long point to long point.</param>
    /// <param name="count">How many.</param>
    /// <param name="name">See <see cref="Name"/>.</param>
    [SetsRequiredMembers]
    public BoardPart(Length length, int count, string? name = null)
        : this(length, count)
    {
        Name = name;
    }

    /// <summary>Makes one by its members.</summary>
    public BoardPart()
    {
    }

    /// <summary>Length of each, long point to long point, 1 mm to 20 m.</summary>
    public required Length Length { get; init; }

    /// <summary>How many, 1 to 10,000.</summary>
    public required int Count { get; init; }

    /// <summary>What the person at the saw calls it, at most 100 characters; null for none.</summary>
    public string? Name { get; init; }

    private (double, int, string?) Key => (Door.Millimetres(Length), Count, Name);

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(BoardPart? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Count, length and name, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Count)} of {Print.Mm(Door.Millimetres(Length))}{(Name is null ? string.Empty : " " + Name)}";
}

/// <summary>Boards of one length that can be bought.</summary>
public sealed record StockBoard
{
    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="length">Length as sold.</param>
    /// <param name="price">Price of a pack, of one board unless <see cref="Pack"/> says more, in whatever currency all prices of the job are in.</param>
    [SetsRequiredMembers]
    public StockBoard(Length length, decimal price)
    {
        Length = length;
        Price = price;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="length">Length as sold.</param>
    /// <param name="price">Price of a pack, of one board unless <see cref="Pack"/> says more, in whatever currency all prices of the job are in.</param>
    /// <param name="pack">See <see cref="Pack"/>.</param>
    /// <param name="available">See <see cref="Available"/>.</param>
    [SetsRequiredMembers]
    public StockBoard(Length length, decimal price, int pack = 1, int? available = null)
        : this(length, price)
    {
        Pack = pack;
        Available = available;
    }

    /// <summary>Makes one by its members.</summary>
    public StockBoard()
    {
    }

    /// <summary>Length as sold, 10 mm to 20 m.</summary>
    public required Length Length { get; init; }

    /// <summary>Price of a pack, 0 to 1,000,000 with at most four decimals, in whatever currency all prices of the job are in. 0: bought already, used wherever that saves money.</summary>
    public required decimal Price { get; init; }

    /// <summary>Boards to a pack, 1 to 1000; packs are not broken.</summary>
    public int Pack { get; init; } = 1;

    /// <summary>Boards that can be had, 0 to 10,000; null for as many as it takes. Of a last pack that would go beyond it nothing can be had.</summary>
    public int? Available { get; init; }

    private (double, decimal, int, int?) Key => (Door.Millimetres(Length), Price, Pack, Available);

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(StockBoard? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Length, pack and price, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"board of {Print.Mm(Door.Millimetres(Length))} at {CuttingPlan.Money(Price)}{(Pack == 1 ? string.Empty : $" for {Print.Number(Pack)}")}{(Available is { } available ? $", {Print.Number(available)} to be had" : string.Empty)}";
}

/// <summary>Offcuts of one length that are on hand and cost nothing.</summary>
public sealed record BoardOffcut
{
    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="length">Its sound length: nothing is trimmed off it.</param>
    [SetsRequiredMembers]
    public BoardOffcut(Length length) => Length = length;

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="length">Its sound length: nothing is trimmed off it.</param>
    /// <param name="count">See <see cref="Count"/>.</param>
    [SetsRequiredMembers]
    public BoardOffcut(Length length, int count = 1)
        : this(length)
    {
        Count = count;
    }

    /// <summary>Makes one by its members.</summary>
    public BoardOffcut()
    {
    }

    /// <summary>Its sound length, 10 mm to 20 m: nothing is trimmed off it.</summary>
    public required Length Length { get; init; }

    /// <summary>How many there are, 1 to 1000.</summary>
    public int Count { get; init; } = 1;

    private (double, int) Key => (Door.Millimetres(Length), Count);

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(BoardOffcut? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Count and length, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Count)} offcuts of {Print.Mm(Door.Millimetres(Length))}";
}

/// <summary>Pieces to be cut from boards: what <see cref="BoardCutting"/> needs to know.</summary>
/// <remarks>
/// Nothing is checked here: <see cref="BoardCutting.Check"/> reports all problems, and the calculating method throws the first.
/// </remarks>
public sealed record CuttingJob
{
    private readonly IReadOnlyList<BoardPart> _parts = [];
    private readonly IReadOnlyList<StockBoard> _stock = [];
    private readonly IReadOnlyList<BoardOffcut>? _offcuts;

    /// <summary>An empty job for an object initialiser.</summary>
    public CuttingJob()
    {
    }

    /// <summary>A job with every default.</summary>
    /// <param name="parts">The pieces.</param>
    /// <param name="stock">The boards that can be bought.</param>
    [SetsRequiredMembers]
    public CuttingJob(IReadOnlyList<BoardPart> parts, IReadOnlyList<StockBoard> stock)
    {
        Parts = parts;
        Stock = stock;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="parts">The pieces.</param>
    /// <param name="stock">The boards that can be bought.</param>
    /// <param name="offcuts">See <see cref="Offcuts"/>.</param>
    /// <param name="kerf">See <see cref="Kerf"/>.</param>
    /// <param name="endTrim">See <see cref="EndTrim"/>.</param>
    /// <param name="leastOffcut">See <see cref="LeastOffcut"/>.</param>
    /// <param name="effort">See <see cref="Effort"/>.</param>
    [SetsRequiredMembers]
    public CuttingJob(
        IReadOnlyList<BoardPart> parts,
        IReadOnlyList<StockBoard> stock,
        IReadOnlyList<BoardOffcut>? offcuts = null,
        Length? kerf = null,
        Length? endTrim = null,
        Length? leastOffcut = null,
        int? effort = null)
        : this(parts, stock)
    {
        Offcuts = offcuts;
        Kerf = kerf;
        EndTrim = endTrim;
        LeastOffcut = leastOffcut;
        Effort = effort;
    }

    /// <summary>The pieces, 1 to 2000 kinds, 10,000 pieces at most.</summary>
    public required IReadOnlyList<BoardPart> Parts
    {
        get => _parts;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _parts = Lists.Keep(value, BoardCutting.MostParts);
    }

    /// <summary>The boards that can be bought, 1 to 20 kinds.</summary>
    public required IReadOnlyList<StockBoard> Stock
    {
        get => _stock;
        init => _stock = Lists.Keep(value, BoardCutting.MostStock);
    }

    /// <summary>Offcuts on hand, 0 to 100 kinds; null for none. They cost nothing, so they are used wherever that saves a board.</summary>
    public IReadOnlyList<BoardOffcut>? Offcuts
    {
        get => _offcuts;
        init => _offcuts = value is null ? null : Lists.Keep(value, BoardCutting.MostOffcuts);
    }

    /// <summary>Width of the saw cut, 0 to 20 mm. Default 2.8 mm (common practice).</summary>
    public Length? Kerf { get; init; }

    /// <summary>What is cut off each end of a bought board first, its kerf included, 0 to 500 mm, so that at least 1 mm is left. Default 15 mm (common practice).</summary>
    public Length? EndTrim { get; init; }

    /// <summary>Shortest offcut worth keeping, 1 mm to 20 m; what is shorter is waste. Default 400 mm (common practice).</summary>
    public Length? LeastOffcut { get; init; }

    /// <summary>Nodes of search at most, 1 to 2,000,000,000: the same job stops at the same place on every machine. Default 100,000,000, a few seconds at worst where nothing is proven before. Never more are used but for a first plan, made without looking back: it is made whatever the effort, and where it takes more, nothing else is. For n pieces and k kinds of boards and offcuts that is n (8 + k + n/64) nodes at most. Where boards are limited it may leave pieces, though they go on them.</summary>
    public int? Effort { get; init; }

    private (double?, double?, double?, int?) Key => (
        Kerf is { } kerf ? Door.Millimetres(kerf) : null, EndTrim is { } trim ? Door.Millimetres(trim) : null, LeastOffcut is { } least ? Door.Millimetres(least) : null, Effort);

    /// <summary>Whether every member is of equal amount, whatever its unit, and the lists hold the same in the same order.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(CuttingJob? other) => other is not null
        && Key.Equals(other.Key)
        && Lists.Same(Parts, other.Parts, BoardCutting.MostParts, Equals)
        && Lists.Same(Stock, other.Stock, BoardCutting.MostStock, Equals)
        && ((Offcuts is null && other.Offcuts is null) || Lists.Same(Offcuts, other.Offcuts, BoardCutting.MostOffcuts, Equals));

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>How many kinds of pieces and boards, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Parts?.Count ?? 0)} kinds of pieces from {Print.Number(Stock?.Count ?? 0)} kinds of boards";
}
