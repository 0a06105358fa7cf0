using System;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>Foam-backed cloth against cloth with foam of its own, for the same panels: what <see cref="WrapComparison"/> needs to know. All prices are in one currency.</summary>
/// <remarks>Nothing is checked here: <see cref="WrapComparison.CheckCompare"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record WrapChoice
{
    /// <summary>An empty choice for an object initialiser.</summary>
    public WrapChoice()
    {
    }

    /// <summary>A choice with every default.</summary>
    /// <param name="backedArea">Foam-backed cloth to buy.</param>
    /// <param name="backedPrice">Its price a square metre.</param>
    /// <param name="clothArea">Cloth without foam to buy.</param>
    /// <param name="clothPrice">Its price a square metre.</param>
    /// <param name="foamArea">Foam to buy.</param>
    /// <param name="foamPrice">Its price a square metre.</param>
    [SetsRequiredMembers]
    public WrapChoice(Area backedArea, decimal backedPrice, Area clothArea, decimal clothPrice, Area foamArea, decimal foamPrice)
    {
        BackedArea = backedArea;
        BackedPrice = backedPrice;
        ClothArea = clothArea;
        ClothPrice = clothPrice;
        FoamArea = foamArea;
        FoamPrice = foamPrice;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="backedArea">Foam-backed cloth to buy.</param>
    /// <param name="backedPrice">Its price a square metre.</param>
    /// <param name="clothArea">Cloth without foam to buy.</param>
    /// <param name="clothPrice">Its price a square metre.</param>
    /// <param name="foamArea">Foam to buy.</param>
    /// <param name="foamPrice">Its price a square metre.</param>
    /// <param name="backedExtras">See <see cref="BackedExtras"/>.</param>
    /// <param name="separateExtras">See <see cref="SeparateExtras"/>.</param>
    /// <param name="panels">See <see cref="Panels"/>.</param>
    /// <param name="backedHours">See <see cref="BackedHours"/>.</param>
    /// <param name="separateHours">See <see cref="SeparateHours"/>.</param>
    [SetsRequiredMembers]
    public WrapChoice(
        Area backedArea,
        decimal backedPrice,
        Area clothArea,
        decimal clothPrice,
        Area foamArea,
        decimal foamPrice,
        decimal backedExtras = 0,
        decimal separateExtras = 0,
        int panels = 1,
        TimeSpan? backedHours = null,
        TimeSpan? separateHours = null)
        : this(backedArea, backedPrice, clothArea, clothPrice, foamArea, foamPrice)
    {
        BackedExtras = backedExtras;
        SeparateExtras = separateExtras;
        Panels = panels;
        BackedHours = backedHours;
        SeparateHours = separateHours;
    }

    /// <summary>Foam-backed cloth to buy, waste included, 0 to 500 m².</summary>
    public required Area BackedArea { get; init; }

    /// <summary>Its price a square metre, 0 to 100,000 with at most four decimals.</summary>
    public required decimal BackedPrice { get; init; }

    /// <summary>Cloth without foam to buy, waste included, 0 to 500 m².</summary>
    public required Area ClothArea { get; init; }

    /// <summary>Its price a square metre, 0 to 100,000 with at most four decimals.</summary>
    public required decimal ClothPrice { get; init; }

    /// <summary>Foam to buy, waste included, 0 to 500 m².</summary>
    public required Area FoamArea { get; init; }

    /// <summary>Its price a square metre, 0 to 100,000 with at most four decimals.</summary>
    public required decimal FoamPrice { get; init; }

    /// <summary>What else foam-backed cloth takes, adhesive above all, in money, 0 to 100,000 with at most four decimals.</summary>
    public decimal BackedExtras { get; init; }

    /// <summary>What else separate foam takes, a second bond above all, in money, 0 to 100,000 with at most four decimals.</summary>
    public decimal SeparateExtras { get; init; }

    /// <summary>Panels, 1 to 1000; the default hours are for each.</summary>
    public int Panels { get; init; } = 1;

    /// <summary>Hours of work on all panels with foam-backed cloth, 0 to 10,000 h. Default 45 minutes a panel (judgement).</summary>
    public TimeSpan? BackedHours { get; init; }

    /// <summary>Hours of work on all panels with separate foam, 0 to 10,000 h. Default 65 minutes a panel (judgement).</summary>
    public TimeSpan? SeparateHours { get; init; }

    private ((double, decimal, double, decimal), (double, decimal, decimal, decimal), (int, TimeSpan?, TimeSpan?)) Key => (
        (Door.SquareMillimetres(BackedArea), BackedPrice, Door.SquareMillimetres(ClothArea), ClothPrice),
        (Door.SquareMillimetres(FoamArea), FoamPrice, BackedExtras, SeparateExtras),
        (Panels, BackedHours, SeparateHours));

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(WrapChoice? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Panels and areas, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Number(Panels)} panels: foam-backed cloth {M2(BackedArea)}, or cloth {M2(ClothArea)} and foam {M2(FoamArea)}";

    private static string M2(Area area) => Print.Round(Door.SquareMillimetres(area) / 1e6, 3) + " m²";
}
