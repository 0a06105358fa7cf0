using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>A sheet held to an arc by rows of fixings: what <see cref="HoldDown.OnArc(HoldDownCase)"/> needs to know.</summary>
/// <remarks>Nothing is checked here: <see cref="HoldDown.CheckOnArc(HoldDownCase)"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record HoldDownCase
{
    private readonly IReadOnlyList<Length> _rows = [];

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="wallRadius">Radius of the surface at the sheet's back; null where flat.</param>
    /// <param name="rows">Positions of the rows on the flat sheet, from one edge around the curve.</param>
    /// <param name="width">Size of the sheet along the axis of the curve.</param>
    [SetsRequiredMembers]
    public HoldDownCase(BentSheet sheet, Length? wallRadius, IReadOnlyList<Length> rows, Length width)
    {
        Sheet = sheet;
        WallRadius = wallRadius;
        Rows = rows;
        Width = width;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="wallRadius">Radius of the surface at the sheet's back; null where flat.</param>
    /// <param name="rows">Positions of the rows on the flat sheet, from one edge around the curve.</param>
    /// <param name="width">Size of the sheet along the axis of the curve.</param>
    /// <param name="girth">See <see cref="Girth"/>.</param>
    /// <param name="backing">See <see cref="Backing"/>.</param>
    /// <param name="fixingsPerRow">See <see cref="FixingsPerRow"/>.</param>
    /// <param name="fixingCapacity">See <see cref="FixingCapacity"/>.</param>
    /// <param name="edgePull">See <see cref="EdgePull"/>.</param>
    /// <param name="edgeLift">See <see cref="EdgeLift"/>.</param>
    [SetsRequiredMembers]
    public HoldDownCase(
        BentSheet sheet,
        Length? wallRadius,
        IReadOnlyList<Length> rows,
        Length width,
        Length? girth = null,
        SheetBacking backing = SheetBacking.StripsAtRows,
        int? fixingsPerRow = null,
        Force? fixingCapacity = null,
        Force? edgePull = null,
        Length? edgeLift = null)
        : this(sheet, wallRadius, rows, width)
    {
        Girth = girth;
        Backing = backing;
        FixingsPerRow = fixingsPerRow;
        FixingCapacity = fixingCapacity;
        EdgePull = edgePull;
        EdgeLift = edgeLift;
    }

    /// <summary>Makes one by its members.</summary>
    public HoldDownCase()
    {
    }

    /// <summary>The sheet, with the figures of the direction around the curve.</summary>
    public required BentSheet Sheet { get; init; }

    /// <summary>Radius of the surface at the sheet's back: positive where hollow to the room (more than the thickness), negative where it bulges into it, -1 km to 1 km, not 0; null where flat.</summary>
    public required Length? WallRadius { get; init; }

    /// <summary>
    /// Positions of the rows on the flat sheet, from one edge around the curve: 2 to 50, ascending, at least 1 mm apart, 0 to 100 m. Fixings
    /// or strips hold there both ways. <see cref="BentSheet.EqualRows(Length, int)"/> makes equal ones.
    /// </summary>
    public required IReadOnlyList<Length> Rows
    {
        get => _rows;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _rows = Lists.Keep(value, ArcRows.MostRows);
    }

    /// <summary>Size of the sheet along the axis of the curve, 1 mm to 100 m: a row's pull is that per width times it.</summary>
    public required Length Width { get; init; }

    /// <summary>Size of the sheet around the curve, up to 100 m, from the last row on; null: the sheet ends at its last row.</summary>
    public Length? Girth { get; init; }

    /// <summary>What the sheet lies on. Default: strips at the rows. A hollow surface behind the whole sheet is refused: what fixings pull there is not known.</summary>
    public SheetBacking Backing { get; init; }

    /// <summary>Fixings in each row, 1 to 10,000; null where that is the question.</summary>
    public int? FixingsPerRow { get; init; }

    /// <summary>What one fixing holds along its axis for good, in this sheet and in what it is driven into, more than 0 up to 1 MN; null where not known.</summary>
    public Force? FixingCapacity { get; init; }

    /// <summary>Pull on each edge over the whole width, more than 0 up to 1 MN. Counts only on a bulging surface under the whole sheet; there it asks how far the edge lifts.</summary>
    public Force? EdgePull { get; init; }

    /// <summary>How far an edge may lift, more than 0 up to 1 m; null for 0.5 mm (judgement). Counts only on a bulging surface under the whole sheet, without <see cref="EdgePull"/>.</summary>
    public Length? EdgeLift { get; init; }

    private (BentSheet, double?, double, double?, SheetBacking, int?, double?, double?, double?) Key => (
        Sheet, Mm(WallRadius), Door.Millimetres(Width), Mm(Girth), Backing, FixingsPerRow, N(FixingCapacity), N(EdgePull), Mm(EdgeLift));

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(HoldDownCase? other) => other is not null && Key.Equals(other.Key) && Lists.Same(Rows, other.Rows, ArcRows.MostRows);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Sheet, radius and rows, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Sheet} on {PanelFindings.Surface(WallRadius is { } radius ? Door.Millimetres(radius) : double.NaN)}, {Print.Number(Rows?.Count ?? 0)} rows";

    private static double? Mm(Length? length) => length is { } given ? Door.Millimetres(given) : null;

    private static double? N(Force? force) => force is { } given ? Door.Newtons(given) : null;
}
