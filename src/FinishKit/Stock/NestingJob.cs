using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>How pieces are cut out of a sheet.</summary>
public enum SheetCutting
{
    /// <summary>By a table, panel or track saw: every cut goes from one edge of what is being cut to the other.</summary>
    Sawn = 0,

    /// <summary>By a router or jigsaw, which may stop and turn anywhere.</summary>
    Routed = 1,
}

/// <summary>Rectangular pieces of one size that are to be cut from sheets.</summary>
public sealed record SheetPart
{
    private readonly IReadOnlyList<MeasuredPoint>? _outline;

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="length">Along the sheet's length, which is along its grain.</param>
    /// <param name="width">Across it.</param>
    /// <param name="count">How many.</param>
    /// <param name="mayTurn">Whether a piece may lie turned by a quarter, its grain then across.</param>
    [SetsRequiredMembers]
    public SheetPart(Length length, Length width, int count, bool mayTurn)
    {
        Length = length;
        Width = width;
        Count = count;
        MayTurn = mayTurn;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="length">Along the sheet's length, which is along its grain.</param>
    /// <param name="width">Across it.</param>
    /// <param name="count">How many.</param>
    /// <param name="mayTurn">Whether a piece may lie turned by a quarter, its grain then across.</param>
    /// <param name="outline">See <see cref="Outline"/>.</param>
    /// <param name="name">See <see cref="Name"/>.</param>
    [SetsRequiredMembers]
    public SheetPart(Length length, Length width, int count, bool mayTurn, IReadOnlyList<MeasuredPoint>? outline = null, string? name = null)
        : this(length, width, count, mayTurn)
    {
        Outline = outline;
        Name = name;
    }

    /// <summary>Makes one by its members.</summary>
    public SheetPart()
    {
    }

    /// <summary>Along the sheet's length, which is along its grain, 1 mm to 10 m. Of a shape that is no rectangle the length of the rectangle round it.</summary>
    public required Length Length { get; init; }

    /// <summary>Across the sheet's length, 1 mm to 10 m.</summary>
    public required Length Width { get; init; }

    /// <summary>How many, 1 to 10,000.</summary>
    public required int Count { get; init; }

    /// <summary>Whether a piece may lie turned by a quarter: its grain, nap or stretch then runs across.</summary>
    public required bool MayTurn { get; init; }

    /// <summary>
    /// Corners of a piece that is no rectangle, in order either way round, 3 to 200: how far along the length and how far across from the
    /// corner of the rectangle round it, whose four sides they touch. Null for the rectangle. The piece is nested by the rectangle; what
    /// lies between counts as waste. Of a sawn layout it is cut afterwards. All outlines of a job have 100,000 corners at most.
    /// </summary>
    public IReadOnlyList<MeasuredPoint>? Outline
    {
        get => _outline;
        init => _outline = value is null ? null : Lists.Keep(value, SheetOutline.MostCorners);
    }

    /// <summary>What the person at the saw calls it, at most 100 characters; null for none.</summary>
    public string? Name { get; init; }

    private (double, double, int, bool, string?) Key => (Door.Millimetres(Length), Door.Millimetres(Width), Count, MayTurn, Name);

    /// <summary>Whether every member is of equal amount, whatever its unit, and the outlines have the same corners in the same order.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(SheetPart? other) => other is not null
        && Key.Equals(other.Key)
        && ((Outline is null && other.Outline is null) || Lists.Same(Outline, other.Outline, SheetOutline.MostCorners, static (left, right) => left == right));

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Count, size and name, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Number(Count)} of {Print.Round(Door.Millimetres(Length), 3)} x {Print.Mm(Door.Millimetres(Width))}{(MayTurn ? " either way" : string.Empty)}{(Name is null ? string.Empty : " " + Name)}";
}

/// <summary>Sheets of one size that can be bought.</summary>
public sealed record StockSheet
{
    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="length">Along its grain.</param>
    /// <param name="width">Across its grain.</param>
    /// <param name="price">Price of one, in whatever currency all prices of the job are in.</param>
    [SetsRequiredMembers]
    public StockSheet(Length length, Length width, decimal price)
    {
        Length = length;
        Width = width;
        Price = price;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="length">Along its grain.</param>
    /// <param name="width">Across its grain.</param>
    /// <param name="price">Price of one, in whatever currency all prices of the job are in.</param>
    /// <param name="available">See <see cref="Available"/>.</param>
    [SetsRequiredMembers]
    public StockSheet(Length length, Length width, decimal price, int? available = null)
        : this(length, width, price)
    {
        Available = available;
    }

    /// <summary>Makes one by its members.</summary>
    public StockSheet()
    {
    }

    /// <summary>Along the grain of its face, whichever side is the longer, 10 mm to 10 m.</summary>
    public required Length Length { get; init; }

    /// <summary>Across the grain of its face, 10 mm to 10 m.</summary>
    public required Length Width { get; init; }

    /// <summary>Price of one, 0 to 1,000,000 with at most four decimals, in whatever currency all prices of the job are in. 0: bought already, used wherever that saves money.</summary>
    public required decimal Price { get; init; }

    /// <summary>Sheets that can be had, 0 to 10,000; null for as many as it takes.</summary>
    public int? Available { get; init; }

    private (double, double, decimal, int?) Key => (Door.Millimetres(Length), Door.Millimetres(Width), Price, Available);

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(StockSheet? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Size and price, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"sheet of {Print.Round(Door.Millimetres(Length), 3)} x {Print.Mm(Door.Millimetres(Width))} at {CuttingPlan.Money(Price)}{(Available is { } available ? $", {Print.Number(available)} to be had" : string.Empty)}";
}

/// <summary>Offcuts of sheets of one size that are on hand and cost nothing.</summary>
public sealed record SheetOffcut
{
    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="length">Along its grain: nothing is trimmed off it.</param>
    /// <param name="width">Across its grain.</param>
    [SetsRequiredMembers]
    public SheetOffcut(Length length, Length width)
    {
        Length = length;
        Width = width;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="length">Along its grain: nothing is trimmed off it.</param>
    /// <param name="width">Across its grain.</param>
    /// <param name="count">See <see cref="Count"/>.</param>
    [SetsRequiredMembers]
    public SheetOffcut(Length length, Length width, int count = 1)
        : this(length, width)
    {
        Count = count;
    }

    /// <summary>Makes one by its members.</summary>
    public SheetOffcut()
    {
    }

    /// <summary>Along the grain of its face, whichever side is the longer, 10 mm to 10 m: nothing is trimmed off it.</summary>
    public required Length Length { get; init; }

    /// <summary>Across the grain of its face, 10 mm to 10 m: nothing is trimmed off it.</summary>
    public required Length Width { get; init; }

    /// <summary>How many there are, 1 to 1000.</summary>
    public int Count { get; init; } = 1;

    private (double, double, int) Key => (Door.Millimetres(Length), Door.Millimetres(Width), Count);

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(SheetOffcut? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Count and size, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Count)} offcuts of {Print.Round(Door.Millimetres(Length), 3)} x {Print.Mm(Door.Millimetres(Width))}";
}

/// <summary>Pieces to be cut from sheets: what <see cref="SheetNesting"/> needs to know.</summary>
/// <remarks>
/// Nothing is checked here: <see cref="SheetNesting.Check"/> reports all problems, and the calculating method throws the first.
/// </remarks>
public sealed record NestingJob
{
    private readonly IReadOnlyList<SheetPart> _parts = [];
    private readonly IReadOnlyList<StockSheet> _stock = [];
    private readonly IReadOnlyList<SheetOffcut>? _offcuts;

    /// <summary>An empty job for an object initialiser.</summary>
    public NestingJob()
    {
    }

    /// <summary>A job with every default; one that is routed needs its <see cref="Kerf"/> too.</summary>
    /// <param name="parts">The pieces.</param>
    /// <param name="stock">The sheets that can be bought.</param>
    /// <param name="cutting">Saw or router.</param>
    [SetsRequiredMembers]
    public NestingJob(IReadOnlyList<SheetPart> parts, IReadOnlyList<StockSheet> stock, SheetCutting cutting)
    {
        Parts = parts;
        Stock = stock;
        Cutting = cutting;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="parts">The pieces.</param>
    /// <param name="stock">The sheets that can be bought.</param>
    /// <param name="cutting">Saw or router.</param>
    /// <param name="offcuts">See <see cref="Offcuts"/>.</param>
    /// <param name="kerf">See <see cref="Kerf"/>.</param>
    /// <param name="trim">See <see cref="Trim"/>.</param>
    /// <param name="leastOffcutLength">See <see cref="LeastOffcutLength"/>.</param>
    /// <param name="leastOffcutWidth">See <see cref="LeastOffcutWidth"/>.</param>
    /// <param name="effort">See <see cref="Effort"/>.</param>
    [SetsRequiredMembers]
    public NestingJob(
        IReadOnlyList<SheetPart> parts,
        IReadOnlyList<StockSheet> stock,
        SheetCutting cutting,
        IReadOnlyList<SheetOffcut>? offcuts = null,
        Length? kerf = null,
        Length? trim = null,
        Length? leastOffcutLength = null,
        Length? leastOffcutWidth = null,
        int? effort = null)
        : this(parts, stock, cutting)
    {
        Offcuts = offcuts;
        Kerf = kerf;
        Trim = trim;
        LeastOffcutLength = leastOffcutLength;
        LeastOffcutWidth = leastOffcutWidth;
        Effort = effort;
    }

    /// <summary>The pieces, 1 to 2000 kinds, 10,000 pieces at most.</summary>
    public required IReadOnlyList<SheetPart> Parts
    {
        get => _parts;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _parts = Lists.Keep(value, SheetNesting.MostParts);
    }

    /// <summary>The sheets that can be bought, 1 to 20 kinds. To use nothing but <see cref="Offcuts"/>, one kind of which 0 are <see cref="StockSheet.Available"/>.</summary>
    public required IReadOnlyList<StockSheet> Stock
    {
        get => _stock;
        init => _stock = Lists.Keep(value, SheetNesting.MostStock);
    }

    /// <summary>Saw or router.</summary>
    public required SheetCutting Cutting { get; init; }

    /// <summary>Offcuts on hand, 0 to 100 kinds; null for none. They cost nothing, so they are used wherever that saves a sheet.</summary>
    public IReadOnlyList<SheetOffcut>? Offcuts
    {
        get => _offcuts;
        init => _offcuts = value is null ? null : Lists.Keep(value, SheetNesting.MostOffcuts);
    }

    /// <summary>Width of the saw cut or of the router's path, 0 to 20 mm. Default of a saw 2.4 mm (common practice); a router has none, its bit's width must be given.</summary>
    public Length? Kerf { get; init; }

    /// <summary>What is cut off each edge of a bought sheet first, its kerf included, 0 to 200 mm, so that at least 1 mm is left. Default 5 mm (common practice).</summary>
    public Length? Trim { get; init; }

    /// <summary>Least longer side of a piece left over that is worth keeping, 1 mm to 10 m. Default 400 mm (judgement).</summary>
    public Length? LeastOffcutLength { get; init; }

    /// <summary>Least shorter side of a piece left over that is worth keeping, 1 mm to 10 m. Default 100 mm (judgement).</summary>
    public Length? LeastOffcutWidth { get; init; }

    /// <summary>Steps of search at most, 1 to 2,000,000,000: the same job stops at the same place on every machine. Default 200,000,000, a few seconds where nothing is proven before. A first layout and a first bound are made whatever the effort, and a filling of a sheet that is begun is finished. That layout may leave pieces where sheets are limited, though they go on them.</summary>
    public int? Effort { get; init; }

    private (double?, double?, double?, double?, int?, SheetCutting) Key => (
        Kerf is { } kerf ? Door.Millimetres(kerf) : null,
        Trim is { } trim ? Door.Millimetres(trim) : null,
        LeastOffcutLength is { } length ? Door.Millimetres(length) : null,
        LeastOffcutWidth is { } width ? Door.Millimetres(width) : null,
        Effort,
        Cutting);

    /// <summary>Whether every member is of equal amount, whatever its unit, and the lists hold the same in the same order.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(NestingJob? other) => other is not null
        && Key.Equals(other.Key)
        && Lists.Same(Parts, other.Parts, SheetNesting.MostParts, Equals)
        && Lists.Same(Stock, other.Stock, SheetNesting.MostStock, Equals)
        && ((Offcuts is null && other.Offcuts is null) || Lists.Same(Offcuts, other.Offcuts, SheetNesting.MostOffcuts, Equals));

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>How many kinds of pieces and sheets, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Parts?.Count ?? 0)} kinds of pieces from {Print.Number(Stock?.Count ?? 0)} kinds of sheets, {(Cutting == SheetCutting.Sawn ? "sawn" : "routed")}";
}
