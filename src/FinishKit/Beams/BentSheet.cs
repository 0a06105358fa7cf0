using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>Which of two radii decides how far a sheet bends.</summary>
public enum BendBasis
{
    /// <summary>The elastic limit: stiffness, thickness and strength.</summary>
    ElasticLimit = 0,

    /// <summary>A published minimum radius.</summary>
    PublishedRadius = 1,
}

/// <summary>What a bent sheet lies on.</summary>
public enum SheetBacking
{
    /// <summary>Strips at the rows of fixings, nothing between them: a van's furring.</summary>
    StripsAtRows = 0,

    /// <summary>A rigid surface of the full curve everywhere, that the sheet cannot pass: a solid former, a skin.</summary>
    AllOver = 1,
}

/// <summary>
/// A sheet as it is bent round one curve: thickness, and stiffness and strength in the direction around the curve, and what may be
/// made of them.
/// </summary>
/// <remarks>Nothing is checked here: the calculators that bend it do.</remarks>
public sealed record BentSheet
{
    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="thickness">Thickness that the other figures belong to.</param>
    /// <param name="elasticity">Mean modulus of elasticity in bending, in the direction around the curve.</param>
    /// <param name="bendingStrength">Characteristic bending strength in that direction.</param>
    [SetsRequiredMembers]
    public BentSheet(Length thickness, Pressure elasticity, Pressure bendingStrength)
    {
        Thickness = thickness;
        Elasticity = elasticity;
        BendingStrength = bendingStrength;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="thickness">Thickness that the other figures belong to.</param>
    /// <param name="elasticity">Mean modulus of elasticity in bending, in the direction around the curve.</param>
    /// <param name="bendingStrength">Characteristic bending strength in that direction.</param>
    /// <param name="strengthBasis">See <see cref="StrengthBasis"/>.</param>
    /// <param name="factor">See <see cref="Factor"/>.</param>
    /// <param name="publishedRadius">See <see cref="PublishedRadius"/>.</param>
    /// <param name="publishedSource">See <see cref="PublishedSource"/>.</param>
    /// <param name="grain">See <see cref="Grain"/>.</param>
    /// <param name="name">See <see cref="Name"/>.</param>
    /// <param name="source">See <see cref="Source"/>.</param>
    [SetsRequiredMembers]
    public BentSheet(
        Length thickness,
        Pressure elasticity,
        Pressure bendingStrength,
        PlywoodStrengthBasis strengthBasis = PlywoodStrengthBasis.Characteristic,
        double? factor = null,
        Length? publishedRadius = null,
        Source? publishedSource = null,
        BendGrain? grain = null,
        string? name = null,
        Source? source = null)
        : this(thickness, elasticity, bendingStrength)
    {
        StrengthBasis = strengthBasis;
        Factor = factor;
        PublishedRadius = publishedRadius;
        PublishedSource = publishedSource;
        Grain = grain;
        Name = name;
        Source = source;
    }

    /// <summary>Makes one by its members.</summary>
    public BentSheet()
    {
    }

    /// <summary>Thickness that the other figures belong to, more than 0 up to 200 mm.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Mean modulus of elasticity in bending, in the direction around the curve, 1 to 100,000 MPa.</summary>
    public required Pressure Elasticity { get; init; }

    /// <summary>Bending strength in that direction, characteristic unless <see cref="StrengthBasis"/> says otherwise, 0.1 to 1000 MPa.</summary>
    public required Pressure BendingStrength { get; init; }

    /// <summary>What <see cref="BendingStrength"/> is. Default: characteristic.</summary>
    public PlywoodStrengthBasis StrengthBasis { get; init; }

    /// <summary>
    /// Factor on the elastic radius, 1 to 10; null for 2 on a characteristic strength (judgement, 1.5 to 3; at 1 one sheet in twenty breaks at
    /// once), for 1 on an allowable one, which has a factor in it already.
    /// </summary>
    public double? Factor { get; init; }

    /// <summary>
    /// A published minimum radius for this sheet, this grain and its condition (dry, as it is bent), to the sheet's middle, more than 0
    /// up to 1 km; null for none. The library takes none by itself: a table of softwood plywood says nothing about birch.
    /// </summary>
    public Length? PublishedRadius { get; init; }

    /// <summary>Where <see cref="PublishedRadius"/> is from; null: the caller's own.</summary>
    public Source? PublishedSource { get; init; }

    /// <summary>Which way the face grain runs, for words only: the figures are those of the direction around the curve. Null where there is no grain.</summary>
    public BendGrain? Grain { get; init; }

    /// <summary>What it is called, for words; null for "sheet".</summary>
    public string? Name { get; init; }

    /// <summary>Where stiffness and strength are from; null: the caller's own.</summary>
    public Source? Source { get; init; }

    /// <summary>The sheet of the table it was made from, so that its other grain can be tried.</summary>
    internal SheetGoods? Goods { get; init; }

    private (double, double, double, PlywoodStrengthBasis, double?, double?, BendGrain?, string?) Key => (
        Door.Millimetres(Thickness), Door.Megapascals(Elasticity), Door.Megapascals(BendingStrength), StrengthBasis, Factor, PublishedRadius is { } radius ? Door.Millimetres(radius) : null, Grain, Name);

    /// <summary>A plywood sheet bent with its face grain one way or the other.</summary>
    /// <param name="sheet">The sheet; it must carry <see cref="SheetGoods.Bending"/>.</param>
    /// <param name="grain">Which way its face grain runs.</param>
    /// <returns>The sheet at the thickness that its bending figures belong to.</returns>
    /// <exception cref="System.ArgumentNullException"><paramref name="sheet"/> is null or has no bending figures.</exception>
    /// <exception cref="System.ArgumentException"><paramref name="grain"/> is no member of the enumeration.</exception>
    public static BentSheet Of(SheetGoods sheet, BendGrain grain)
    {
        Door.IsMissing(sheet, new Name(nameof(sheet)), "a sheet", null);
        Door.IsMissing(sheet.Bending, new Name(nameof(sheet)).Then(".Bending"), "bending figures of the sheet", null);
        BendLimit.CheckGrain(grain, nameof(grain), null);
        PlywoodBending bending = sheet.Bending!;
        return (grain == BendGrain.AroundTheCurve
            ? new BentSheet(bending.MeanThickness, bending.ElasticityAlong, bending.StrengthAlong)
            : new BentSheet(bending.MeanThickness, bending.ElasticityAcross, bending.StrengthAcross)) with
        {
            StrengthBasis = bending.StrengthBasis,
            Grain = grain,
            Name = sheet.Name,
            Source = bending.Source,
            Goods = sheet,
        };
    }

    /// <summary>The same sheet with a row of a published table as its published radius. Whether the table is of this sheet's wood is yours to say by asking.</summary>
    /// <param name="row">The row; <see cref="PublishedBendingRadius.For"/> finds the one of the next thickness up.</param>
    /// <returns>The sheet.</returns>
    /// <exception cref="System.ArgumentNullException"><paramref name="row"/> is null.</exception>
    /// <exception cref="System.ArgumentException">The row is for hot-soaked sheets (nothing here counts wetting), for the other grain, or for a thinner sheet.</exception>
    public BentSheet WithPublished(PublishedBendingRadius row)
    {
        Door.IsMissing(row, new Name(nameof(row)), "a row of a table of bending radii", null);
        string? wrong = row.Condition != BendCondition.DryCold ? "a sheet bent dry and cold: wetting is not counted"
            : Grain is { } grain && grain != row.Grain ? "the sheet's own grain"
            : Door.Millimetres(Thickness) > Door.Millimetres(row.Thickness) ? $"a sheet at least as thick, {Print.Mm(Door.Millimetres(Thickness))}"
            : null;
        if (wrong is not null)
        {
            Door.Report(new InputProblem(nameof(row), "for " + row, wrong, isRange: false), null);
        }

        return this with { PublishedRadius = row.Radius, PublishedSource = row.Source };
    }

    /// <summary>Rows of fixings at equal distances, the outer two at the sheet's edges.</summary>
    /// <param name="girth">Size of the sheet around the curve [length], 1 mm to 100 m, and at least 1 mm for each bay.</param>
    /// <param name="rows">How many rows, 2 to 50.</param>
    /// <returns>Their positions from one edge, on the flat sheet, ascending.</returns>
    /// <exception cref="System.ArgumentException">A value is outside its range or the length in an undefined unit.</exception>
    public static System.Collections.Generic.IReadOnlyList<Length> EqualRows(Length girth, int rows)
    {
        double length = Door.Millimetres(girth, nameof(girth), ArcRows.Girth, null);
        Door.Number(rows, nameof(rows), ArcRows.Count, null);
        Length[] positions = new Length[rows];
        for (int i = 0; i < rows; i++)
        {
            positions[i] = Door.Millimetres(Grid.Snap(length * i / (rows - 1)));
            if (i > 0 && Door.Millimetres(positions[i]) < Grid.Snap(Door.Millimetres(positions[i - 1]) + 1))
            {
                Door.Report(new InputProblem(nameof(girth), Print.Number(length) + " mm", $"at least 1 mm for each of the {Print.Number(rows - 1)} bays", isRange: true), null);
            }
        }

        return [.. positions];
    }

    /// <summary>Whether every figure is of equal amount, whatever its unit; sources aside.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(BentSheet? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Name, thickness, stiffness, strength and grain, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Name ?? "sheet"}, {Print.Mm(Door.Millimetres(Thickness))}, E {Print.Number(Door.Megapascals(Elasticity))} MPa, f {Print.Number(Door.Megapascals(BendingStrength))} MPa{BendLimit.GrainWords(Grain)}";
}
