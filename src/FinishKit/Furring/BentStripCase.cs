using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>A furring strip bent round a bow: what <see cref="BentStrip.Judge(BentStripCase)"/> needs to know.</summary>
/// <remarks>Nothing is checked here: <see cref="BentStrip.Check(BentStripCase)"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record BentStripCase
{
    private readonly IReadOnlyList<Length> _rows = [];
    private readonly IReadOnlyList<SheetGoods>? _alternatives;

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="sheet">The sheet that the strip is ripped from.</param>
    /// <param name="bowRadius">Radius of the surface at the strip's back; null where straight.</param>
    /// <param name="rows">Positions of the fixings along the flat strip, from one end.</param>
    [SetsRequiredMembers]
    public BentStripCase(SheetGoods sheet, Length? bowRadius, IReadOnlyList<Length> rows)
    {
        Sheet = sheet;
        BowRadius = bowRadius;
        Rows = rows;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="sheet">The sheet that the strip is ripped from.</param>
    /// <param name="bowRadius">Radius of the surface at the strip's back; null where straight.</param>
    /// <param name="rows">Positions of the fixings along the flat strip, from one end.</param>
    /// <param name="grain">See <see cref="Grain"/>.</param>
    /// <param name="width">See <see cref="Width"/>.</param>
    /// <param name="factor">See <see cref="Factor"/>.</param>
    /// <param name="alternatives">See <see cref="Alternatives"/>.</param>
    /// <param name="fixingsPerPlace">See <see cref="FixingsPerPlace"/>.</param>
    /// <param name="fixingCapacity">See <see cref="FixingCapacity"/>.</param>
    [SetsRequiredMembers]
    public BentStripCase(
        SheetGoods sheet,
        Length? bowRadius,
        IReadOnlyList<Length> rows,
        BendGrain grain = BendGrain.AroundTheCurve,
        Length? width = null,
        double? factor = null,
        IReadOnlyList<SheetGoods>? alternatives = null,
        int? fixingsPerPlace = null,
        Force? fixingCapacity = null)
        : this(sheet, bowRadius, rows)
    {
        Grain = grain;
        Width = width;
        Factor = factor;
        Alternatives = alternatives;
        FixingsPerPlace = fixingsPerPlace;
        FixingCapacity = fixingCapacity;
    }

    /// <summary>Makes one by its members.</summary>
    public BentStripCase()
    {
    }

    /// <summary>The sheet that the strip is ripped from; it must carry <see cref="SheetGoods.Bending"/>.</summary>
    public required SheetGoods Sheet { get; init; }

    /// <summary>Radius of the surface at the strip's back: positive where hollow to the room (more than the thickness), negative where it bulges into it, -1 km to 1 km, not 0; null where straight.</summary>
    public required Length? BowRadius { get; init; }

    /// <summary>Positions of the fixings along the flat strip, from one end: 2 to 50, ascending, at least 1 mm apart, 0 to 100 m. <see cref="BentSheet.EqualRows(Length, int)"/> makes equal ones.</summary>
    public required IReadOnlyList<Length> Rows
    {
        get => _rows;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _rows = Lists.Keep(value, ArcRows.MostRows);
    }

    /// <summary>Which way the face grain runs. Default: around the curve, along the strip, as strips ripped along a sheet have it.</summary>
    public BendGrain Grain { get; init; }

    /// <summary>Width of the strip, 1 mm to 1 m; null for 40 mm (common practice).</summary>
    public Length? Width { get; init; }

    /// <summary>Factor on the elastic radius, 1 to 10; null for 2 (judgement, 1.5 to 3), or 1 where the sheet's strength is an allowable one.</summary>
    public double? Factor { get; init; }

    /// <summary>Sheets to look in for one that follows, at most 200, those without bending figures passed over; null for birch plywood.</summary>
    public IReadOnlyList<SheetGoods>? Alternatives
    {
        get => _alternatives;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _alternatives = Lists.Keep(value, BentStrip.MostAlternatives);
    }

    /// <summary>Fixings at each place, 1 to 10,000; null where that is the question.</summary>
    public int? FixingsPerPlace { get; init; }

    /// <summary>What one fixing holds along its axis for good, in this strip and in what it is driven into, more than 0 up to 1 MN; null where not known.</summary>
    public Force? FixingCapacity { get; init; }

    private (SheetGoods, double?, BendGrain, double?, double?, int?, double?) Key =>
        (Sheet, Mm(BowRadius), Grain, Mm(Width), Factor, FixingsPerPlace, FixingCapacity is { } force ? Door.Newtons(force) : null);

    /// <summary>Whether every member is of equal amount, whatever its unit; of the alternatives, whether they are the same sheets in the same order.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(BentStripCase? other) => other is not null && Key.Equals(other.Key) && Lists.Same(Rows, other.Rows, ArcRows.MostRows) && Lists.Same(Alternatives, other.Alternatives, BentStrip.MostAlternatives, Equals);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Sheet, radius and fixings, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"strip of {Sheet?.Name}{BendLimit.GrainWords(Grain)}, {(BowRadius is { } radius ? "bow of " + Print.Mm(Door.Millimetres(radius)) : "straight")}, {Print.Number(Rows?.Count ?? 0)} fixings";

    private static double? Mm(Length? length) => length is { } given ? Door.Millimetres(given) : null;
}
