using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>What is done at an edge of a panel.</summary>
public enum EdgeWrap
{
    /// <summary>Nothing: foam and cloth end flush with the ply, whose edge shows.</summary>
    Unwrapped = 0,

    /// <summary>The cloth goes round onto the back; the foam is trimmed flush with the ply.</summary>
    FoamTrimmed = 1,

    /// <summary>Foam and cloth go round; the foam ends at the back of the ply, the cloth goes on onto the back.</summary>
    FoamRound = 2,
}

/// <summary>Which way the cloth's nap lies, or the arrow that its maker prints along the roll, on the hung panel.</summary>
public enum NapDirection
{
    /// <summary>Not known: taken as if the cloth had one, with a finding.</summary>
    Unknown = 0,

    /// <summary>Toward the top.</summary>
    TowardTop = 1,

    /// <summary>Toward the bottom.</summary>
    TowardBottom = 2,

    /// <summary>Toward the front.</summary>
    TowardFront = 3,

    /// <summary>Toward the rear.</summary>
    TowardRear = 4,

    /// <summary>The cloth looks the same every way.</summary>
    None = 5,
}

/// <summary>Which way a cloth stretches.</summary>
public enum ClothStretch
{
    /// <summary>Not known: pieces are not turned, with a finding.</summary>
    Unknown = 0,

    /// <summary>Mostly along the roll.</summary>
    AlongRoll = 1,

    /// <summary>Mostly across the roll.</summary>
    AcrossRoll = 2,

    /// <summary>The same both ways.</summary>
    BothWays = 3,

    /// <summary>Hardly at all.</summary>
    None = 4,
}

/// <summary>What wrapped panels are made of and how their edges are treated.</summary>
/// <remarks>Nothing is checked here: <see cref="PanelWrap"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record WrapBuild
{
    /// <summary>Makes one by its members.</summary>
    public WrapBuild()
    {
    }

    /// <summary>Makes one with every default.</summary>
    /// <param name="plyThickness">Thickness of the ply as measured.</param>
    /// <param name="clothThickness">Thickness of the cloth, drawn tight; of foam-backed cloth without its foam.</param>
    [SetsRequiredMembers]
    public WrapBuild(Length plyThickness, Length clothThickness)
    {
        PlyThickness = plyThickness;
        ClothThickness = clothThickness;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="plyThickness">Thickness of the ply as measured.</param>
    /// <param name="clothThickness">Thickness of the cloth, drawn tight; of foam-backed cloth without its foam.</param>
    /// <param name="foamThickness">See <see cref="FoamThickness"/>.</param>
    /// <param name="squeezedFoam">See <see cref="SqueezedFoam"/>.</param>
    /// <param name="turnUnder">See <see cref="TurnUnder"/>.</param>
    /// <param name="edgeGap">See <see cref="EdgeGap"/>.</param>
    /// <param name="joint">See <see cref="Joint"/>.</param>
    /// <param name="front">See <see cref="Front"/>.</param>
    /// <param name="rear">See <see cref="Rear"/>.</param>
    /// <param name="top">See <see cref="Top"/>.</param>
    /// <param name="bottom">See <see cref="Bottom"/>.</param>
    /// <param name="atJoints">See <see cref="AtJoints"/>.</param>
    /// <param name="atWindows">See <see cref="AtWindows"/>.</param>
    /// <param name="isFoamBacked">See <see cref="IsFoamBacked"/>.</param>
    /// <param name="nap">See <see cref="Nap"/>.</param>
    /// <param name="stretch">See <see cref="Stretch"/>.</param>
    [SetsRequiredMembers]
    public WrapBuild(
        Length plyThickness,
        Length clothThickness,
        Length? foamThickness = null,
        Length? squeezedFoam = null,
        Length? turnUnder = null,
        Length? edgeGap = null,
        Length? joint = null,
        EdgeWrap front = EdgeWrap.FoamTrimmed,
        EdgeWrap rear = EdgeWrap.FoamTrimmed,
        EdgeWrap top = EdgeWrap.FoamTrimmed,
        EdgeWrap bottom = EdgeWrap.FoamTrimmed,
        EdgeWrap atJoints = EdgeWrap.FoamTrimmed,
        EdgeWrap atWindows = EdgeWrap.FoamTrimmed,
        bool isFoamBacked = false,
        NapDirection nap = NapDirection.Unknown,
        ClothStretch stretch = ClothStretch.Unknown)
        : this(plyThickness, clothThickness)
    {
        FoamThickness = foamThickness;
        SqueezedFoam = squeezedFoam;
        TurnUnder = turnUnder;
        EdgeGap = edgeGap;
        Joint = joint;
        Front = front;
        Rear = rear;
        Top = top;
        Bottom = bottom;
        AtJoints = atJoints;
        AtWindows = atWindows;
        IsFoamBacked = isFoamBacked;
        Nap = nap;
        Stretch = stretch;
    }

    /// <summary>Thickness of the ply as measured, 1 to 50 mm.</summary>
    public required Length PlyThickness { get; init; }

    /// <summary>Thickness of the cloth, drawn tight, more than 0 up to 10 mm; of foam-backed cloth without its foam.</summary>
    public required Length ClothThickness { get; init; }

    /// <summary>Thickness of the foam on the face, 0 (none) to 50 mm. Default 3 mm (common practice).</summary>
    public Length? FoamThickness { get; init; }

    /// <summary>Thickness to which foam is squeezed where it goes round an edge, 0 up to that of the foam. Default half of the foam (judgement).</summary>
    public Length? SqueezedFoam { get; init; }

    /// <summary>Cloth on the back, 10 to 500 mm. Default 35 mm (common practice).</summary>
    public Length? TurnUnder { get; init; }

    /// <summary>What is left between panels and each edge of the opening, 0 to 100 mm. Default 1.5 mm (judgement).</summary>
    public Length? EdgeGap { get; init; }

    /// <summary>What is left between neighbouring panels, 0 to 100 mm. Default 1.5 mm (common practice).</summary>
    public Length? Joint { get; init; }

    /// <summary>The row's front edge. Default: cloth round, foam trimmed flush.</summary>
    public EdgeWrap Front { get; init; } = EdgeWrap.FoamTrimmed;

    /// <summary>The row's rear edge. Default: cloth round, foam trimmed flush.</summary>
    public EdgeWrap Rear { get; init; } = EdgeWrap.FoamTrimmed;

    /// <summary>The upper edges. Default: cloth round, foam trimmed flush.</summary>
    public EdgeWrap Top { get; init; } = EdgeWrap.FoamTrimmed;

    /// <summary>The lower edges. Default: cloth round, foam trimmed flush.</summary>
    public EdgeWrap Bottom { get; init; } = EdgeWrap.FoamTrimmed;

    /// <summary>Edges at joints between panels. Default: cloth round, foam trimmed flush.</summary>
    public EdgeWrap AtJoints { get; init; } = EdgeWrap.FoamTrimmed;

    /// <summary>Edges of windows in a panel. Default: cloth round, foam trimmed flush.</summary>
    public EdgeWrap AtWindows { get; init; } = EdgeWrap.FoamTrimmed;

    /// <summary>Whether the foam comes bonded to the cloth: then it goes round every wrapped edge, and there are no pieces of foam.</summary>
    public bool IsFoamBacked { get; init; }

    /// <summary>Which way the nap, or the roll's arrow, lies on the panel. Default: unknown, with a finding.</summary>
    public NapDirection Nap { get; init; }

    /// <summary>Which way the cloth stretches. Default: unknown, with a finding. A cloth without a nap is laid so that the greater stretch runs up the panels, round a wall's curve.</summary>
    public ClothStretch Stretch { get; init; }

    /// <summary>Whether the roll runs along the van, not up the panels: with the nap, or without one so that the cloth stretches more up the panels.</summary>
    internal bool RunsAlong => Nap is NapDirection.TowardFront or NapDirection.TowardRear || (Nap == NapDirection.None && Stretch == ClothStretch.AcrossRoll);

    /// <summary>Whether the cloth stretches more along the van than up the panels.</summary>
    internal bool StretchesAlong => Stretch == (RunsAlong ? ClothStretch.AlongRoll : ClothStretch.AcrossRoll);

    private ((double, double, double?, double?), (double?, double?, double?), (EdgeWrap, EdgeWrap, EdgeWrap, EdgeWrap, EdgeWrap, EdgeWrap), (bool, NapDirection, ClothStretch)) Key => (
        (Door.Millimetres(PlyThickness), Door.Millimetres(ClothThickness), Mm(FoamThickness), Mm(SqueezedFoam)),
        (Mm(TurnUnder), Mm(EdgeGap), Mm(Joint)),
        (Front, Rear, Top, Bottom, AtJoints, AtWindows),
        (IsFoamBacked, Nap, Stretch));

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(WrapBuild? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Ply, foam and cloth, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"ply of {Print.Mm(Door.Millimetres(PlyThickness))}, {(IsFoamBacked ? "foam-backed cloth" : "foam and cloth")} of {Print.Mm(Door.Millimetres(ClothThickness))}";

    private static double? Mm(Length? length) => length is { } given ? Door.Millimetres(given) : null;
}

/// <summary>A window, vent or hatch that a wrapped panel leaves open: a rectangle as it is seen, its edges wrapped.</summary>
public sealed record PanelWindow
{
    /// <summary>Makes one by its members.</summary>
    public PanelWindow()
    {
    }

    /// <summary>Makes one with square corners.</summary>
    /// <param name="opening">Where it is, from the front and lower edge of the opening that the panels fill.</param>
    [SetsRequiredMembers]
    public PanelWindow(FaceOpening opening) => Opening = opening;

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="opening">Where it is, from the front and lower edge of the opening that the panels fill.</param>
    /// <param name="cornerRadius">See <see cref="CornerRadius"/>.</param>
    [SetsRequiredMembers]
    public PanelWindow(FaceOpening opening, Length cornerRadius = default)
        : this(opening)
    {
        CornerRadius = cornerRadius;
    }

    /// <summary>Where it is, from the front and lower edge of the opening that the panels fill; each side 1 mm or more.</summary>
    public required FaceOpening Opening { get; init; }

    /// <summary>Radius of its corners as seen, 0 up to half of its shorter side.</summary>
    public Length CornerRadius { get; init; }

    private (FaceOpening?, double) Key => (Opening, Door.Millimetres(CornerRadius));

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(PanelWindow? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Its two ranges, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"window at {Opening}";
}
