using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>Which way the boards of a face run; the strips under them run square to it.</summary>
public enum BoardDirection
{
    /// <summary>Boards along the van, strips up the girth.</summary>
    AlongTheVan = 0,

    /// <summary>Boards up the girth, strips along the van.</summary>
    UpTheGirth = 1,
}

/// <summary>Which breaks get strips along them.</summary>
public enum BreakStrips
{
    /// <summary>A strip on both sides of every break that ends a course.</summary>
    BothSides = 0,

    /// <summary>A strip on both sides of every break, and all of them end a course.</summary>
    EveryBreak = 1,

    /// <summary>One strip, below every break that ends a course.</summary>
    OneSide = 2,

    /// <summary>No strips; other strips are still cut at breaks that end a course.</summary>
    None = 3,
}

/// <summary>How two board ends are carried where they butt.</summary>
public enum JointStrip
{
    /// <summary>One wide strip.</summary>
    Wide = 0,

    /// <summary>Two strips beside each other.</summary>
    Doubled = 1,
}

/// <summary>A face that is to be furred: what <see cref="FurringLayout"/> needs to know. u runs along the van from front to rear, v up the girth.</summary>
/// <remarks>Nothing is checked here: <see cref="FurringLayout.Check"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record FurringFace
{
    internal const int MostParts = 100;
    internal const int MostJoints = 200;
    internal const int MostMembers = 1000;

    private readonly IReadOnlyList<FaceOpening> _openings = [];
    private readonly IReadOnlyList<FaceBreak> _breaks = [];
    private readonly IReadOnlyList<FurnitureStop> _stops = [];
    private readonly IReadOnlyList<ShellMember> _ribs = [];
    private readonly IReadOnlyList<ShellMember> _rails = [];
    private readonly IReadOnlyList<Length> _joints = [];

    /// <summary>An empty face for an object initialiser.</summary>
    public FurringFace()
    {
    }

    /// <summary>A plain rectangle with every default.</summary>
    /// <param name="faceLength">Its extent along the van.</param>
    /// <param name="girth">Its extent up the girth.</param>
    /// <param name="largestBay">Largest distance between neighbouring strips.</param>
    [SetsRequiredMembers]
    public FurringFace(Length faceLength, Length girth, Length largestBay)
    {
        FaceLength = faceLength;
        Girth = girth;
        LargestBay = largestBay;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="faceLength">Its extent along the van.</param>
    /// <param name="girth">Its extent up the girth.</param>
    /// <param name="largestBay">Largest distance between neighbouring strips.</param>
    /// <param name="boards">See <see cref="Boards"/>.</param>
    /// <param name="frontAtFoot">See <see cref="FrontAtFoot"/>.</param>
    /// <param name="frontAtHead">See <see cref="FrontAtHead"/>.</param>
    /// <param name="rearAtFoot">See <see cref="RearAtFoot"/>.</param>
    /// <param name="rearAtHead">See <see cref="RearAtHead"/>.</param>
    /// <param name="openings">See <see cref="Openings"/>. Null for none.</param>
    /// <param name="breaks">See <see cref="Breaks"/>. Null for none.</param>
    /// <param name="stops">See <see cref="Stops"/>. Null for none.</param>
    /// <param name="ribs">See <see cref="Ribs"/>. Null for none.</param>
    /// <param name="rails">See <see cref="Rails"/>. Null for none.</param>
    /// <param name="buttJoints">See <see cref="ButtJoints"/>. Null for none.</param>
    /// <param name="joint">See <see cref="Joint"/>.</param>
    /// <param name="jointWidth">See <see cref="JointWidth"/>.</param>
    /// <param name="breakStrips">See <see cref="BreakStrips"/>.</param>
    /// <param name="breakLimit">See <see cref="BreakLimit"/>.</param>
    /// <param name="stripSection">See <see cref="StripSection"/>.</param>
    /// <param name="fixingSpacing">See <see cref="FixingSpacing"/>.</param>
    /// <param name="leastDistance">See <see cref="LeastDistance"/>.</param>
    /// <param name="preference">See <see cref="Preference"/>.</param>
    /// <param name="surface">See <see cref="Surface"/>.</param>
    /// <param name="pointLoad">See <see cref="PointLoad"/>.</param>
    [SetsRequiredMembers]
    public FurringFace(
        Length faceLength,
        Length girth,
        Length largestBay,
        BoardDirection boards = BoardDirection.AlongTheVan,
        Length? frontAtFoot = null,
        Length? frontAtHead = null,
        Length? rearAtFoot = null,
        Length? rearAtHead = null,
        IReadOnlyList<FaceOpening>? openings = null,
        IReadOnlyList<FaceBreak>? breaks = null,
        IReadOnlyList<FurnitureStop>? stops = null,
        IReadOnlyList<ShellMember>? ribs = null,
        IReadOnlyList<ShellMember>? rails = null,
        IReadOnlyList<Length>? buttJoints = null,
        JointStrip joint = JointStrip.Wide,
        Length? jointWidth = null,
        BreakStrips breakStrips = BreakStrips.BothSides,
        Angle? breakLimit = null,
        BeamSection? stripSection = null,
        Length? fixingSpacing = null,
        Length? leastDistance = null,
        StripPreference preference = StripPreference.OnRibs,
        Surface surface = Surface.Wall,
        Force? pointLoad = null)
        : this(faceLength, girth, largestBay)
    {
        Boards = boards;
        FrontAtFoot = frontAtFoot;
        FrontAtHead = frontAtHead;
        RearAtFoot = rearAtFoot;
        RearAtHead = rearAtHead;
        Openings = openings ?? [];
        Breaks = breaks ?? [];
        Stops = stops ?? [];
        Ribs = ribs ?? [];
        Rails = rails ?? [];
        ButtJoints = buttJoints ?? [];
        Joint = joint;
        JointWidth = jointWidth;
        BreakStrips = breakStrips;
        BreakLimit = breakLimit;
        StripSection = stripSection;
        FixingSpacing = fixingSpacing;
        LeastDistance = leastDistance;
        Preference = preference;
        Surface = surface;
        PointLoad = pointLoad;
    }

    /// <summary>Its extent along the van, 100 mm to 100 m.</summary>
    public required Length FaceLength { get; init; }

    /// <summary>Its extent up the girth, 100 mm to 100 m.</summary>
    public required Length Girth { get; init; }

    /// <summary>Largest distance between neighbouring strips, centre to centre, 10 mm to 100 m; exactly met is met. It follows from the boards' span.</summary>
    public required Length LargestBay { get; init; }

    /// <summary>Which way the boards run.</summary>
    public BoardDirection Boards { get; init; }

    /// <summary>u of the front edge at v = 0, 0 to half the length; null for 0.</summary>
    public Length? FrontAtFoot { get; init; }

    /// <summary>u of the front edge at the full girth, 0 to half the length; null for 0.</summary>
    public Length? FrontAtHead { get; init; }

    /// <summary>u of the rear edge at v = 0, half to the whole length; null for the length.</summary>
    public Length? RearAtFoot { get; init; }

    /// <summary>u of the rear edge at the full girth, half to the whole length; null for the length.</summary>
    public Length? RearAtHead { get; init; }

    /// <summary>Windows, doors and vents, at most 100, none over another.</summary>
    public IReadOnlyList<FaceOpening> Openings { get => _openings; init => _openings = Lists.Keep(value, MostParts); }

    /// <summary>Lines where the lean changes, at most 100, each at another height.</summary>
    public IReadOnlyList<FaceBreak> Breaks { get => _breaks; init => _breaks = Lists.Keep(value, MostParts); }

    /// <summary>Furniture along the foot, at most 100.</summary>
    public IReadOnlyList<FurnitureStop> Stops { get => _stops; init => _stops = Lists.Keep(value, MostParts); }

    /// <summary>Members up the girth, at most 1000.</summary>
    public IReadOnlyList<ShellMember> Ribs { get => _ribs; init => _ribs = Lists.Keep(value, MostMembers); }

    /// <summary>Members along the van, at most 1000.</summary>
    public IReadOnlyList<ShellMember> Rails { get => _rails; init => _rails = Lists.Keep(value, MostMembers); }

    /// <summary>Where boards butt, along the boards, at most 200, each within the face.</summary>
    public IReadOnlyList<Length> ButtJoints { get => _joints; init => _joints = Lists.Keep(value, MostJoints); }

    /// <summary>How board ends are carried where they butt.</summary>
    public JointStrip Joint { get; init; }

    /// <summary>Width of a wide strip where boards butt, the strip's width to 1 m. Default 70 mm (common practice), or the strip's width if that is more.</summary>
    public Length? JointWidth { get; init; }

    /// <summary>Which breaks get strips.</summary>
    public BreakStrips BreakStrips { get; init; }

    /// <summary>Lean change above which a break ends a course, 0° to 90°. Default 4° (judgement).</summary>
    public Angle? BreakLimit { get; init; }

    /// <summary>The strips' section: its width 5 to 500 mm. Default 40 mm of 15 mm birch plywood, face grain along the strip (common practice).</summary>
    public BeamSection? StripSection { get; init; }

    /// <summary>Largest distance between fixings along a member, 10 mm to 10 m. Default 250 mm (common practice).</summary>
    public Length? FixingSpacing { get; init; }

    /// <summary>Least distance between neighbouring strips of which one is chosen, centre to centre, the strip's width to 100 m. Default: so that no strips overlap.</summary>
    public Length? LeastDistance { get; init; }

    /// <summary>What the strips are to be good at first.</summary>
    public StripPreference Preference { get; init; }

    /// <summary>What the face is: it decides the default load.</summary>
    public Surface Surface { get; init; }

    /// <summary>Point load on a strip, 0 to 100,000 N. Default 200 N on a wall, 100 N on a ceiling (judgement).</summary>
    public Force? PointLoad { get; init; }

    private (double, double, double, BoardDirection, JointStrip, BreakStrips, (StripPreference, Surface)) Key => (
        Door.Millimetres(FaceLength), Door.Millimetres(Girth), Door.Millimetres(LargestBay), Boards, Joint, BreakStrips, (Preference, Surface));

    private (double?, double?, double?, double?, double?, double?, (double?, double?, double?)) OptionalKey => (
        Mm(FrontAtFoot), Mm(FrontAtHead), Mm(RearAtFoot), Mm(RearAtHead), Mm(JointWidth), Mm(FixingSpacing),
        (Mm(LeastDistance), BreakLimit is { } limit ? Door.Degrees(limit) : null, PointLoad is { } load ? Door.Newtons(load) : null));

    /// <summary>Whether every member is of equal amount, whatever its unit, and the lists hold the same in the same order.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(FurringFace? other) => other is not null && Key.Equals(other.Key) && OptionalKey.Equals(other.OptionalKey) && Equals(StripSection, other.StripSection)
        && Lists.Same(Openings, other.Openings, MostMembers, Equals) && Lists.Same(Breaks, other.Breaks, MostMembers, Equals) && Lists.Same(Stops, other.Stops, MostMembers, Equals) && Lists.Same(Ribs, other.Ribs, MostMembers, Equals) && Lists.Same(Rails, other.Rails, MostMembers, Equals)
        && Lists.Same(ButtJoints, other.ButtJoints, MostMembers);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Extents, largest bay, and how many openings, ribs and rails there are, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"face of {Print.Number(Door.Millimetres(FaceLength))} x {Print.Mm(Door.Millimetres(Girth))}, bays up to {Print.Mm(Door.Millimetres(LargestBay))}, {Print.Number(Openings?.Count ?? 0)} openings, {Print.Number(Ribs?.Count ?? 0)} ribs, {Print.Number(Rails?.Count ?? 0)} rails";

    private static double? Mm(Length? length) => length is { } given ? Door.Millimetres(given) : null;
}
