using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>A course of boards, or one of its parts where openings interrupt it: a straight run that is boarded from end to end.</summary>
public sealed record JointRun
{
    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="course">Number of its course.</param>
    /// <param name="start">Where it starts.</param>
    /// <param name="end">Where it ends.</param>
    [SetsRequiredMembers]
    public JointRun(int course, Length start, Length end)
    {
        Course = course;
        Start = start;
        End = end;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="course">Number of its course.</param>
    /// <param name="start">Where it starts.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="name">See <see cref="Name"/>.</param>
    /// <param name="startsAt">See <see cref="StartsAt"/>.</param>
    /// <param name="endsAt">See <see cref="EndsAt"/>.</param>
    [SetsRequiredMembers]
    public JointRun(int course, Length start, Length end, string? name = null, RunEnd? startsAt = null, RunEnd? endsAt = null)
        : this(course, start, end)
    {
        Name = name;
        StartsAt = startsAt;
        EndsAt = endsAt;
    }

    /// <summary>Makes one by its members.</summary>
    public JointRun()
    {
    }

    /// <summary>Number of its course, 0 to 10,000. Courses whose numbers differ by 1 are neighbours; runs of one number are one course, and must not overlap.</summary>
    public required int Course { get; init; }

    /// <summary>Where it starts along the wall, at its long point, -100 to 100 m; <see cref="JointJob.EndGap"/> is left there.</summary>
    public required Length Start { get; init; }

    /// <summary>Where it ends, at its long point, up to 100 m; beyond the start, and with the gaps at both ends taken off 20 m beyond it at most (under 1 mm it takes no board, and one run at least must take one); <see cref="JointJob.EndGap"/> is left there.</summary>
    public required Length End { get; init; }

    /// <summary>What the person at the saw calls it, at most 80 characters; null for its course's number.</summary>
    public string? Name { get; init; }

    /// <summary>What it starts at, as <see cref="CoursePlan.Runs"/> says it; null where nothing is said. Joints and boards do not depend on it.</summary>
    public RunEnd? StartsAt { get; init; }

    /// <summary>What it ends at, as <see cref="StartsAt"/>.</summary>
    public RunEnd? EndsAt { get; init; }

    private (int, double, double, string?) Key => (Course, Door.Millimetres(Start), Door.Millimetres(End), Name);

    /// <summary>Whether every member is of equal amount, whatever its unit, and the ends lie at the same.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(JointRun? other) => other is not null && Key.Equals(other.Key) && Equals(StartsAt, other.StartsAt) && Equals(EndsAt, other.EndsAt);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Course, start and end, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Name ?? "course " + Print.Number(Course)} from {Print.Number(Door.Millimetres(Start))} to {Print.Mm(Door.Millimetres(End))}";
}

/// <summary>Courses to be jointed and cut: what <see cref="BoardJoints"/> needs to know.</summary>
/// <remarks>
/// Nothing is checked here: <see cref="BoardJoints.Check"/> reports all problems, and the calculating method throws the first.
/// </remarks>
public sealed record JointJob
{
    private readonly IReadOnlyList<JointRun> _runs = [];
    private readonly IReadOnlyList<Length> _strips = [];
    private readonly IReadOnlyList<StockBoard> _stock = [];
    private readonly IReadOnlyList<BoardOffcut>? _offcuts;

    /// <summary>An empty job for an object initialiser.</summary>
    public JointJob()
    {
    }

    /// <summary>A job with every default.</summary>
    /// <param name="runs">The courses.</param>
    /// <param name="strips">Where boards may butt.</param>
    /// <param name="stock">The boards that can be bought.</param>
    [SetsRequiredMembers]
    public JointJob(IReadOnlyList<JointRun> runs, IReadOnlyList<Length> strips, IReadOnlyList<StockBoard> stock)
    {
        Runs = runs;
        Strips = strips;
        Stock = stock;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="runs">The courses.</param>
    /// <param name="strips">Where boards may butt.</param>
    /// <param name="stock">The boards that can be bought.</param>
    /// <param name="offcuts">See <see cref="Offcuts"/>.</param>
    /// <param name="endGap">See <see cref="EndGap"/>.</param>
    /// <param name="stagger">See <see cref="Stagger"/>.</param>
    /// <param name="shortestPiece">See <see cref="ShortestPiece"/>.</param>
    /// <param name="kerf">See <see cref="Kerf"/>.</param>
    /// <param name="endTrim">See <see cref="EndTrim"/>.</param>
    /// <param name="leastOffcut">See <see cref="LeastOffcut"/>.</param>
    /// <param name="effort">See <see cref="Effort"/>.</param>
    [SetsRequiredMembers]
    public JointJob(
        IReadOnlyList<JointRun> runs,
        IReadOnlyList<Length> strips,
        IReadOnlyList<StockBoard> stock,
        IReadOnlyList<BoardOffcut>? offcuts = null,
        Length endGap = default,
        int? stagger = null,
        Length? shortestPiece = null,
        Length? kerf = null,
        Length? endTrim = null,
        Length? leastOffcut = null,
        int? effort = null)
        : this(runs, strips, stock)
    {
        Offcuts = offcuts;
        EndGap = endGap;
        Stagger = stagger;
        ShortestPiece = shortestPiece;
        Kerf = kerf;
        EndTrim = endTrim;
        LeastOffcut = leastOffcut;
        Effort = effort;
    }

    /// <summary>The courses, 1 to 200 runs in any order.</summary>
    public required IReadOnlyList<JointRun> Runs
    {
        get => _runs;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _runs = Lists.Keep(value, BoardJoints.MostRuns);
    }

    /// <summary>Middles of the strips on which boards may butt, 0 to 200 of them, each beyond the one before, -100 to 100 m. They serve every course.</summary>
    public required IReadOnlyList<Length> Strips
    {
        get => _strips;
        init => _strips = Lists.Keep(value, BoardJoints.MostStrips);
    }

    /// <summary>The boards that can be bought, 1 to 20 kinds.</summary>
    public required IReadOnlyList<StockBoard> Stock
    {
        get => _stock;
        init => _stock = Lists.Keep(value, BoardCutting.MostStock);
    }

    /// <summary>Offcuts on hand, 0 to 100 kinds; null for none.</summary>
    public IReadOnlyList<BoardOffcut>? Offcuts
    {
        get => _offcuts;
        init => _offcuts = value is null ? null : Lists.Keep(value, BoardCutting.MostOffcuts);
    }

    /// <summary>Gap left at both ends of every run, 0 to 100 mm: the boards are that much shorter. None unless said; <see cref="SeasonMovement.EndGap"/> is one.</summary>
    public Length EndGap { get; init; }

    /// <summary>How far joints of neighbouring courses are apart at least, counted in strips, 0 to 20: of the strips under two such joints the numbers differ by this or more. 0: anywhere; 1: not on one strip. Default 2 (common practice).</summary>
    public int? Stagger { get; init; }

    /// <summary>Shortest piece of a jointed run, 1 mm to 20 m. A run that is left whole may be shorter. Default 600 mm (common practice).</summary>
    public Length? ShortestPiece { get; init; }

    /// <summary>Width of the saw cut, 0 to 20 mm. Default 2.8 mm (common practice).</summary>
    public Length? Kerf { get; init; }

    /// <summary>What is cut off each end of a bought board first, its kerf included, 0 to 500 mm, so that at least 1 mm is left. Default 15 mm (common practice).</summary>
    public Length? EndTrim { get; init; }

    /// <summary>Shortest offcut worth keeping, 1 mm to 20 m; what is shorter is waste. Default 400 mm (common practice).</summary>
    public Length? LeastOffcut { get; init; }

    /// <summary>Nodes of search at most, 1000 to 2,000,000,000: the same job stops at the same place on every machine. Default 20,000,000; a quarter of it, 1000 at least, is for the cutting plan. Never more are used but for a first cutting plan, as said at <see cref="CuttingJob.Effort"/>. What is found out before the search is not counted and reports no progress: which joints the job allows, the first choice of them and the length of boards that every choice needs, and what would help where none keep what is asked (<see cref="JointLayout.StripToAdd"/>, <see cref="JointLayout.BoardToBuy"/>). It has limits of its own (ways of dividing looked at, jobs tried): seconds at the most.</summary>
    public int? Effort { get; init; }

    private (double, int?, double?, double?, double?, double?, int?) Key => (Door.Millimetres(EndGap), Stagger, Of(ShortestPiece), Of(Kerf), Of(EndTrim), Of(LeastOffcut), Effort);

    /// <summary>Whether every member is of equal amount, whatever its unit, and the lists hold the same in the same order.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(JointJob? other) => other is not null
        && Key.Equals(other.Key)
        && Lists.Same(Runs, other.Runs, BoardJoints.MostRuns, Equals)
        && Lists.Same(Strips, other.Strips, BoardJoints.MostStrips)
        && Lists.Same(Stock, other.Stock, BoardCutting.MostStock, Equals)
        && ((Offcuts is null && other.Offcuts is null) || Lists.Same(Offcuts, other.Offcuts, BoardCutting.MostOffcuts, Equals));

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>How many runs, strips and kinds of boards, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Number(Runs?.Count ?? 0)} runs over {Print.Number(Strips?.Count ?? 0)} strips from {Print.Number(Stock?.Count ?? 0)} kinds of boards";

    private static double? Of(Length? length) => length is { } own ? Door.Millimetres(own) : null;
}
