using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>Which way a panel's grain (or nap, or pattern) is to run. The value 0 leaves no choice.</summary>
public enum PanelGrainDirection
{
    /// <summary>Along the van, with u.</summary>
    AlongU = 0,

    /// <summary>Up the girth, with v.</summary>
    AlongV = 1,

    /// <summary>Either way.</summary>
    Either = 2,
}

/// <summary>A line with metal behind it where two panels may meet: a rib for upright joints, a rail or a break for level ones.</summary>
public sealed record PanelJointLine
{
    /// <summary>Makes one by its members.</summary>
    public PanelJointLine()
    {
    }

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="position">Middle of the metal: u of a rib, v of a rail.</param>
    /// <param name="metalWidth">Width of metal that fixings can reach.</param>
    [SetsRequiredMembers]
    public PanelJointLine(Length position, Length metalWidth)
    {
        Position = position;
        MetalWidth = metalWidth;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="position">Middle of the metal: u of a rib, v of a rail.</param>
    /// <param name="metalWidth">Width of metal that fixings can reach.</param>
    /// <param name="mustSplit">See <see cref="MustSplit"/>.</param>
    [SetsRequiredMembers]
    public PanelJointLine(Length position, Length metalWidth, bool mustSplit = false)
        : this(position, metalWidth)
    {
        MustSplit = mustSplit;
    }

    /// <summary>Middle of the metal: u of a rib, v of a rail; within the wall.</summary>
    public required Length Position { get; init; }

    /// <summary>Width of metal that fixings can reach, 0 to 1 m.</summary>
    public required Length MetalWidth { get; init; }

    /// <summary>Whether panels must part here, at the middle of the metal whatever is near, as at a sharp break or a seam that moves.</summary>
    public bool MustSplit { get; init; }

    private (double, double, bool) Key => (Door.Millimetres(Position), Door.Millimetres(MetalWidth), MustSplit);

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(PanelJointLine? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Place and width, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Mm(Door.Millimetres(Position))}, {Print.Mm(Door.Millimetres(MetalWidth))} wide";
}

/// <summary>A wall to be split into panels: what <see cref="PanelSplit.Split"/> needs to know.</summary>
/// <remarks>Nothing is checked here: <see cref="PanelSplit.Check"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record PanelWall
{
    internal const int MostLines = 50;
    internal const int MostOpenings = 20;

    private readonly IReadOnlyList<FaceOpening> _openings = [];
    private readonly IReadOnlyList<PanelJointLine> _ribs = [], _rails = [];

    /// <summary>Makes one by its members.</summary>
    public PanelWall()
    {
    }

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="length">Length along u.</param>
    /// <param name="girth">Girth along v.</param>
    /// <param name="sheetLength">Greatest size of a finished panel along the sheet's grain.</param>
    /// <param name="sheetWidth">Greatest size of a finished panel across the sheet's grain.</param>
    [SetsRequiredMembers]
    public PanelWall(Length length, Length girth, Length sheetLength, Length sheetWidth)
    {
        Length = length;
        Girth = girth;
        SheetLength = sheetLength;
        SheetWidth = sheetWidth;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="length">Length along u.</param>
    /// <param name="girth">Girth along v.</param>
    /// <param name="sheetLength">Size of the sheet along its grain.</param>
    /// <param name="sheetWidth">Size of the sheet across its grain.</param>
    /// <param name="grain">See <see cref="Grain"/>.</param>
    /// <param name="openings">See <see cref="Openings"/>. Null for none.</param>
    /// <param name="ribs">See <see cref="Ribs"/>. Null for none.</param>
    /// <param name="rails">See <see cref="Rails"/>. Null for none.</param>
    /// <param name="reveal">See <see cref="Reveal"/>.</param>
    /// <param name="landing">See <see cref="Landing"/>.</param>
    /// <param name="cornerDistance">See <see cref="CornerDistance"/>.</param>
    /// <param name="leastPanel">See <see cref="LeastPanel"/>.</param>
    /// <param name="mostLength">See <see cref="MostLength"/>.</param>
    /// <param name="squareMetreMass">See <see cref="SquareMetreMass"/>.</param>
    /// <param name="mostMass">See <see cref="MostMass"/>.</param>
    /// <param name="effort">See <see cref="Effort"/>.</param>
    [SetsRequiredMembers]
    public PanelWall(
        Length length,
        Length girth,
        Length sheetLength,
        Length sheetWidth,
        PanelGrainDirection grain = PanelGrainDirection.AlongU,
        IReadOnlyList<FaceOpening>? openings = null,
        IReadOnlyList<PanelJointLine>? ribs = null,
        IReadOnlyList<PanelJointLine>? rails = null,
        Length? reveal = null,
        Length? landing = null,
        Length? cornerDistance = null,
        Length? leastPanel = null,
        Length? mostLength = null,
        Mass? squareMetreMass = null,
        Mass? mostMass = null,
        int? effort = null)
        : this(length, girth, sheetLength, sheetWidth)
    {
        Grain = grain;
        Openings = openings ?? [];
        Ribs = ribs ?? [];
        Rails = rails ?? [];
        Reveal = reveal;
        Landing = landing;
        CornerDistance = cornerDistance;
        LeastPanel = leastPanel;
        MostLength = mostLength;
        SquareMetreMass = squareMetreMass;
        MostMass = mostMass;
        Effort = effort;
    }

    /// <summary>Length along u, front to rear, 10 mm to 20 m.</summary>
    public required Length Length { get; init; }

    /// <summary>Girth along v, upward, 10 mm to 20 m.</summary>
    public required Length Girth { get; init; }

    /// <summary>Greatest size of a finished panel along the grain that a sheet gives, 10 mm to 20 m: the sheet, trim taken off, and for wrapped panels what the wrap adds at two edges put on, as the ply under it is that much smaller.</summary>
    public required Length SheetLength { get; init; }

    /// <summary>Greatest size of a finished panel across the grain, reckoned as <see cref="SheetLength"/> is, 10 mm to 20 m.</summary>
    public required Length SheetWidth { get; init; }

    /// <summary>Which way the panels' grain is to run.</summary>
    public PanelGrainDirection Grain { get; init; }

    /// <summary>Windows, doors and vents, at most 20, within the wall and none over another. Default: none.</summary>
    public IReadOnlyList<FaceOpening> Openings { get => _openings; init => _openings = Lists.Keep(value, MostOpenings); }

    /// <summary>Metal for upright joints, at most 50. Default: none.</summary>
    public IReadOnlyList<PanelJointLine> Ribs { get => _ribs; init => _ribs = Lists.Keep(value, MostLines); }

    /// <summary>Metal for level joints, rails and breaks, at most 50. Default: none.</summary>
    public IReadOnlyList<PanelJointLine> Rails { get => _rails; init => _rails = Lists.Keep(value, MostLines); }

    /// <summary>Gap between panels, 0 to 50 mm; null for 1.5 mm (common practice).</summary>
    public Length? Reveal { get; init; }

    /// <summary>Metal under each of two panels that meet, 0 to 200 mm; null for 15 mm (judgement).</summary>
    public Length? Landing { get; init; }

    /// <summary>How near a joint may run to an opening's edge, except along it, 0 to 1 m; null for 50 mm (judgement).</summary>
    public Length? CornerDistance { get; init; }

    /// <summary>Least width and height of a panel, 0 to 2 m; null for 150 mm (judgement). A wall narrower than that is taken as it is.</summary>
    public Length? LeastPanel { get; init; }

    /// <summary>Greatest width or height that can be handled, 10 mm to 20 m; null for no limit. Of wrapped panels also what the roll takes: its usable width less what the cloth is larger than the panel, see <see cref="WrappedPanel.ClothWidth"/>.</summary>
    public Length? MostLength { get; init; }

    /// <summary>Mass of one square metre of finished panel, 0.01 to 1000 kg: kilograms per square metre, given as the mass of that one square metre, and not the mass of any panel; null leaves masses out.</summary>
    public Mass? SquareMetreMass { get; init; }

    /// <summary>Greatest mass of a panel that can be handled, 0.01 to 1000 kg; needs <see cref="SquareMetreMass"/>; null for no limit.</summary>
    public Mass? MostMass { get; init; }

    /// <summary>Steps of search at most, 1000 to 2,000,000,000: the same wall stops at the same place on every machine. Default 20,000,000, a second or so where nothing is proven before. A course that is begun is finished: some 12,000 steps more on the largest wall.</summary>
    public int? Effort { get; init; }

    private (double, double, double, double, PanelGrainDirection, int?) Key => (Door.Millimetres(Length), Door.Millimetres(Girth), Door.Millimetres(SheetLength), Door.Millimetres(SheetWidth), Grain, Effort);

    private (double?, double?, double?, double?, double?, double?, double?) More => (
        Mm(Reveal), Mm(Landing), Mm(CornerDistance), Mm(LeastPanel), Mm(MostLength), Kg(SquareMetreMass), Kg(MostMass));

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(PanelWall? other) => other is not null && Key.Equals(other.Key) && More.Equals(other.More)
        && Lists.Same(Openings, other.Openings, MostOpenings, Equals) && Lists.Same(Ribs, other.Ribs, MostLines, Equals) && Lists.Same(Rails, other.Rails, MostLines, Equals);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Key.GetHashCode() * 397) ^ More.GetHashCode());

    /// <summary>Size and sheet, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"wall of {Print.Number(Door.Millimetres(Length))} by {Print.Mm(Door.Millimetres(Girth))}, sheets of {Print.Number(Door.Millimetres(SheetLength))} by {Print.Mm(Door.Millimetres(SheetWidth))}";

    private static double? Mm(Length? length) => length is { } given ? Door.Millimetres(given) : null;

    private static double? Kg(Mass? mass) => mass is { } given ? Door.Kilograms(given) : null;
}
