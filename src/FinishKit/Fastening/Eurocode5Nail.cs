using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>
/// A smooth nail through a head-side member into the member that holds its point, as Eurocode 5 asks about it. What it asks of
/// the caller has no honest default, except that the load is permanent, as what hangs in a van mostly is.
/// </summary>
public sealed record Eurocode5Nail
{
    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="density">Characteristic density of both members; where they differ, the lower.</param>
    /// <param name="shank">Diameter of the shank.</param>
    /// <param name="headDiameter">Diameter of the head.</param>
    /// <param name="headSideThickness">Thickness of the member under the head that the shank goes through.</param>
    /// <param name="pointPenetration">Length of shank in the member that holds the point, tip included.</param>
    [SetsRequiredMembers]
    public Eurocode5Nail(CharacteristicDensity density, Length shank, Length headDiameter, Length headSideThickness, Length pointPenetration)
    {
        Density = density;
        Shank = shank;
        HeadDiameter = headDiameter;
        HeadSideThickness = headSideThickness;
        PointPenetration = pointPenetration;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="density">Characteristic density of both members; where they differ, the lower.</param>
    /// <param name="shank">Diameter of the shank.</param>
    /// <param name="headDiameter">Diameter of the head.</param>
    /// <param name="headSideThickness">Thickness of the member under the head that the shank goes through.</param>
    /// <param name="pointPenetration">Length of shank in the member that holds the point, tip included.</param>
    /// <param name="holdingThickness">See <see cref="HoldingThickness"/>.</param>
    /// <param name="permanentLoad">See <see cref="PermanentLoad"/>.</param>
    [SetsRequiredMembers]
    public Eurocode5Nail(
        CharacteristicDensity density,
        Length shank,
        Length headDiameter,
        Length headSideThickness,
        Length pointPenetration,
        Length? holdingThickness = null,
        bool permanentLoad = true)
        : this(density, shank, headDiameter, headSideThickness, pointPenetration)
    {
        HoldingThickness = holdingThickness;
        PermanentLoad = permanentLoad;
    }

    /// <summary>Makes one by its members.</summary>
    public Eurocode5Nail()
    {
    }

    /// <summary>Characteristic density of both members, 100 to 1300 kg/m3; where they differ, the lower.</summary>
    public required CharacteristicDensity Density { get; init; }

    /// <summary>Diameter of the shank, more than 0 up to 20 mm.</summary>
    public required Length Shank { get; init; }

    /// <summary>Diameter of the head, from the shank's up to 60 mm; the shank's own for a pin without a head.</summary>
    public required Length HeadDiameter { get; init; }

    /// <summary>Thickness of the member under the head that the shank goes through, 0 to 500 mm.</summary>
    public required Length HeadSideThickness { get; init; }

    /// <summary>Length of shank in the member that holds the point, tip included, 0 to 500 mm.</summary>
    public required Length PointPenetration { get; init; }

    /// <summary>Thickness of the member that holds the point, more than 0 up to 500 mm; null leaves it out of the question whether to predrill.</summary>
    public Length? HoldingThickness { get; init; }

    /// <summary>
    /// Whether the load along the nail is permanent or long-term: a board hung under a ceiling. True unless said otherwise, as for
    /// <see cref="HungMass.PermanentLoad"/>. Eurocode 5 then gives a smooth nail nothing.
    /// </summary>
    public bool PermanentLoad { get; init; } = true;

    private (CharacteristicDensity, double, double, double, double, double?, bool) Key => (Density, Door.Millimetres(Shank), Door.Millimetres(HeadDiameter), Door.Millimetres(HeadSideThickness), Door.Millimetres(PointPenetration), HoldingThickness is { } holding ? Door.Millimetres(holding) : null, PermanentLoad);

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(Eurocode5Nail? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>The nail in millimetres, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"smooth nail {Print.Mm(Door.Millimetres(Shank))}, head {Print.Mm(Door.Millimetres(HeadDiameter))}, through {Print.Mm(Door.Millimetres(HeadSideThickness))}, point {Print.Mm(Door.Millimetres(PointPenetration))} deep, {Density}{(PermanentLoad ? ", permanent load" : string.Empty)}";
}
