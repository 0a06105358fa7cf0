using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>Where the courses of a band start.</summary>
public enum CourseRule
{
    /// <summary>Where the narrowest piece, against every edge, stays widest though the set-out be off.</summary>
    BestOffset = 0,

    /// <summary>Equal pieces at foot and head, half a board or more each.</summary>
    Balanced = 1,

    /// <summary>A whole board at the foot; what is left goes to the head.</summary>
    WholeAtFoot = 2,

    /// <summary>A whole board at the head, where the face is highest; what is left goes to the foot.</summary>
    WholeAtHead = 3,
}

/// <summary>A face to be covered with boards along the van: what <see cref="CourseLayout"/> needs to know. u runs along the van from front to rear, v up the girth.</summary>
/// <remarks>
/// v is measured over the surface that the boards' faces will lie in. On a surface a distance t behind it a hollow of delta lies t tan(delta/2) farther from its neighbours either way, a ridge
/// as much nearer. Nothing is checked here: <see cref="CourseLayout.Check"/> reports all problems, and the calculating method throws the first.
/// </remarks>
public sealed record CourseFace
{
    internal const int MostParts = 100;

    private readonly IReadOnlyList<FaceOpening> _openings = [];
    private readonly IReadOnlyList<FaceBreak> _breaks = [];
    private readonly IReadOnlyList<CourseRule> _bandRules = [];

    /// <summary>An empty face for an object initialiser.</summary>
    public CourseFace()
    {
    }

    /// <summary>A plain rectangle with every default.</summary>
    /// <param name="faceLength">Its extent along the van.</param>
    /// <param name="girth">Its extent up the girth.</param>
    /// <param name="board">What a board covers.</param>
    [SetsRequiredMembers]
    public CourseFace(Length faceLength, Length girth, BoardCover board)
    {
        FaceLength = faceLength;
        Girth = girth;
        Board = board;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="faceLength">Its extent along the van.</param>
    /// <param name="girth">Its extent up the girth.</param>
    /// <param name="board">What a board covers.</param>
    /// <param name="girthAtFront">See <see cref="GirthAtFront"/>.</param>
    /// <param name="girthAtRear">See <see cref="GirthAtRear"/>.</param>
    /// <param name="openings">See <see cref="Openings"/>. Null for none.</param>
    /// <param name="breaks">See <see cref="Breaks"/>. Null for none.</param>
    /// <param name="breakLimit">See <see cref="BreakLimit"/>.</param>
    /// <param name="runThroughBreaks">See <see cref="RunThroughBreaks"/>.</param>
    /// <param name="rule">See <see cref="Rule"/>.</param>
    /// <param name="bandRules">See <see cref="BandRules"/>. Null for none.</param>
    /// <param name="setOutError">See <see cref="SetOutError"/>.</param>
    /// <param name="leastCourse">See <see cref="LeastCourse"/>.</param>
    [SetsRequiredMembers]
    public CourseFace(
        Length faceLength,
        Length girth,
        BoardCover board,
        Length? girthAtFront = null,
        Length? girthAtRear = null,
        IReadOnlyList<FaceOpening>? openings = null,
        IReadOnlyList<FaceBreak>? breaks = null,
        Angle? breakLimit = null,
        bool runThroughBreaks = false,
        CourseRule rule = CourseRule.BestOffset,
        IReadOnlyList<CourseRule>? bandRules = null,
        Length? setOutError = null,
        Length? leastCourse = null)
        : this(faceLength, girth, board)
    {
        GirthAtFront = girthAtFront;
        GirthAtRear = girthAtRear;
        Openings = openings ?? [];
        Breaks = breaks ?? [];
        BreakLimit = breakLimit;
        RunThroughBreaks = runThroughBreaks;
        Rule = rule;
        BandRules = bandRules ?? [];
        SetOutError = setOutError;
        LeastCourse = leastCourse;
    }

    /// <summary>Its extent along the van, 100 mm to 100 m.</summary>
    public required Length FaceLength { get; init; }

    /// <summary>Its extent up the girth, less the gaps to leave at foot and head, 10 mm to 100 m and at most 1000 covers; where it changes along the van, half way.</summary>
    public required Length Girth { get; init; }

    /// <summary>What a board covers.</summary>
    public required BoardCover Board { get; init; }

    /// <summary>Girth at the front, as <see cref="Girth"/>; null for the same.</summary>
    public Length? GirthAtFront { get; init; }

    /// <summary>Girth at the rear, as <see cref="Girth"/>; null for the same.</summary>
    public Length? GirthAtRear { get; init; }

    /// <summary>Windows, doors, vents and furniture, at most 100, none over another, each within the face.</summary>
    public IReadOnlyList<FaceOpening> Openings { get => _openings; init => _openings = Lists.Keep(value, MostParts); }

    /// <summary>Lines where the lean changes, at most 100, rising, within the face where its girth is least.</summary>
    public IReadOnlyList<FaceBreak> Breaks { get => _breaks; init => _breaks = Lists.Keep(value, MostParts); }

    /// <summary>Lean change above which a break ends a course, 0° to 90°. Default 4° (judgement).</summary>
    public Angle? BreakLimit { get; init; }

    /// <summary>Whether courses run on through every break, whatever its change.</summary>
    public bool RunThroughBreaks { get; init; }

    /// <summary>Where the courses start, in every band that has no rule of its own.</summary>
    public CourseRule Rule { get; init; }

    /// <summary>A rule for each band between breaks that end a course, from the foot up; empty where <see cref="Rule"/> goes for all.</summary>
    public IReadOnlyList<CourseRule> BandRules { get => _bandRules; init => _bandRules = Lists.Keep(value, MostParts + 1); }

    /// <summary>By how much the set-out may be off either way, 0 to 100 mm. Default 3 mm (judgement); 0 for the knife edge.</summary>
    public Length? SetOutError { get; init; }

    /// <summary>Width under which a piece is a finding, 0 to 1 m. Default the greater of 40 mm and a third of the cover (common practice).</summary>
    public Length? LeastCourse { get; init; }

    private (double, double, double?, double?, double?, bool, (CourseRule, double?, double?)) Key => (
        Door.Millimetres(FaceLength), Door.Millimetres(Girth), Mm(GirthAtFront), Mm(GirthAtRear), BreakLimit is { } limit ? Door.Degrees(limit) : null, RunThroughBreaks, (Rule, Mm(SetOutError), Mm(LeastCourse)));

    /// <summary>Whether every member is of equal amount, whatever its unit, and the lists hold the same in the same order.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(CourseFace? other) => other is not null && Key.Equals(other.Key) && Equals(Board, other.Board)
        && Lists.Same(Openings, other.Openings, MostParts, Equals) && Lists.Same(Breaks, other.Breaks, MostParts, Equals) && Lists.Same(BandRules, other.BandRules, MostParts + 1, static (one, two) => one == two);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Extents, board, and how many openings and breaks there are, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"face of {Print.Number(Door.Millimetres(FaceLength))} x {Print.Mm(Door.Millimetres(Girth))}, {Board?.ToString() ?? "no board"}, {Print.Number(Openings?.Count ?? 0)} openings, {Print.Number(Breaks?.Count ?? 0)} breaks";

    private static double? Mm(Length? length) => length is { } given ? Door.Millimetres(given) : null;
}
