using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>A sheet to be bent onto a wall: what <see cref="PanelBend.Judge(BendCase)"/> needs to know.</summary>
/// <remarks>Nothing is checked here: <see cref="PanelBend.CheckJudge(BendCase)"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record BendCase
{
    private readonly IReadOnlyList<Length>? _rows;

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="wallRadius">Radius of the surface at the sheet's back; null where flat.</param>
    [SetsRequiredMembers]
    public BendCase(BentSheet sheet, Length? wallRadius)
    {
        Sheet = sheet;
        WallRadius = wallRadius;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="wallRadius">Radius of the surface at the sheet's back; null where flat.</param>
    /// <param name="rows">See <see cref="Rows"/>.</param>
    /// <param name="backing">See <see cref="Backing"/>.</param>
    /// <param name="bowAlong">See <see cref="BowAlong"/>.</param>
    /// <param name="girth">See <see cref="Girth"/>.</param>
    /// <param name="width">See <see cref="Width"/>.</param>
    [SetsRequiredMembers]
    public BendCase(
        BentSheet sheet,
        Length? wallRadius,
        IReadOnlyList<Length>? rows = null,
        SheetBacking backing = SheetBacking.StripsAtRows,
        Length? bowAlong = null,
        Length? girth = null,
        Length? width = null)
        : this(sheet, wallRadius)
    {
        Rows = rows;
        Backing = backing;
        BowAlong = bowAlong;
        Girth = girth;
        Width = width;
    }

    /// <summary>Makes one by its members.</summary>
    public BendCase()
    {
    }

    /// <summary>The sheet, with the figures of the direction around the curve.</summary>
    public required BentSheet Sheet { get; init; }

    /// <summary>Radius of the surface at the sheet's back: positive where hollow to the room (more than the thickness), negative where it bulges into it, -1 km to 1 km, not 0; null where flat.</summary>
    public required Length? WallRadius { get; init; }

    /// <summary>
    /// Positions of the rows of fixings on the flat sheet, from one edge around the curve: 2 to 50, ascending, at least 1 mm apart, 0 to
    /// 100 m; null: taken as the worst there are, which peak at 1.5 times the curvature of the arc.
    /// </summary>
    public IReadOnlyList<Length>? Rows
    {
        get => _rows;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _rows = value is null ? null : Lists.Keep(value, ArcRows.MostRows);
    }

    /// <summary>What the sheet lies on. Default: strips at the rows.</summary>
    public SheetBacking Backing { get; init; }

    /// <summary>
    /// Radius of the surface the other way, along the axis of the curve: positive where hollow (more than the thickness), -1 km to 1 km, not 0; null where straight. Judged as a bend
    /// of its own, with the sheet's figures of that direction where its table is known. Needs <see cref="Girth"/> and <see cref="Width"/>.
    /// </summary>
    public Length? BowAlong { get; init; }

    /// <summary>Size of the sheet around the curve, 1 mm to 100 m; for double curvature.</summary>
    public Length? Girth { get; init; }

    /// <summary>Size of the sheet along the axis of the curve, 1 mm to 100 m; for double curvature.</summary>
    public Length? Width { get; init; }

    private (BentSheet, double?, SheetBacking, double?, double?, double?) Key => (Sheet, Mm(WallRadius), Backing, Mm(BowAlong), Mm(Girth), Mm(Width));

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(BendCase? other) => other is not null && Key.Equals(other.Key) && Lists.Same(Rows, other.Rows, ArcRows.MostRows);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Sheet and radius, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Sheet} on {PanelFindings.Surface(WallRadius is { } radius ? Door.Millimetres(radius) : double.NaN)}";

    private static double? Mm(Length? length) => length is { } given ? Door.Millimetres(given) : null;
}
