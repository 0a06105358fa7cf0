using System;

namespace FinishKit;

/// <summary>What an end of a run lies at.</summary>
public enum RunEndKind
{
    /// <summary>The edge whose end cuts were given: cut to its angle.</summary>
    Edge = 0,

    /// <summary>A head that slopes: the course runs out under it, to a long point at its lower line.</summary>
    Head = 1,

    /// <summary>An opening: its jamb.</summary>
    Opening = 2,

    /// <summary>The front or the rear of the face.</summary>
    Face = 3,
}

/// <summary>What an end of a run lies at, and the cut that belongs to it. <see cref="CoursePlan.Runs"/> says it of every run.</summary>
public sealed class RunEnd : IEquatable<RunEnd>
{
    /// <summary>Makes one, for a host that has kept its runs or takes them from elsewhere.</summary>
    /// <param name="kind">What it lies at.</param>
    /// <param name="cut">The end cut of its course, of <see cref="EndCuts"/>; not null at an edge.</param>
    /// <exception cref="ArgumentNullException">The end lies at the edge, and no cut is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The kind is undefined.</exception>
    public RunEnd(RunEndKind kind, EndCut? cut = null)
    {
        if (kind is < RunEndKind.Edge or > RunEndKind.Face)
        {
            throw new InputProblem(nameof(kind), Print.Number((int)kind), "Edge, Head, Opening or Face", isRange: true).ToException();
        }

        if (kind == RunEndKind.Edge)
        {
            Door.IsMissing(cut, new Name(nameof(cut)), "the end cut of the course, as the end lies at the edge", null);
        }

        Kind = kind;
        Cut = cut;
    }

    /// <summary>What it lies at; the edge too where its long point comes to lie exactly at an opening or at the end of the face.</summary>
    public RunEndKind Kind { get; }

    /// <summary>
    /// The end cut of its course: always at an edge; elsewhere where the run ends before the edge's long point but the edge takes a corner off it; else null. Where the course runs out under the head
    /// before it has a line at that end, the cut of the highest course that has one: the edge goes on straight.
    /// </summary>
    public EndCut? Cut { get; }

    /// <summary>
    /// Whether it lies at the same, with a cut of equal amounts: course, lines, lengths from the datum and where they end, what is hidden, gap and wood in the way. So the same edge surveyed twice gives equal ends; the
    /// change from the course fitted before and the tolerance of the scribe do not count.
    /// </summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(RunEnd? other) => other is not null && Kind == other.Kind && Equals(Cut?.Amounts, other.Cut?.Amounts);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as RunEnd);

    /// <inheritdoc/>
    public override int GetHashCode() => (Kind, Cut?.Amounts).GetHashCode();

    /// <summary>What it lies at and the cut, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string place = Kind switch
        {
            RunEndKind.Edge => "at the edge",
            RunEndKind.Head => "under the head",
            RunEndKind.Opening => "at an opening",
            _ => "at the end of the face",
        };
        return Cut is null ? place : $"{place}, {(Kind == RunEndKind.Edge ? string.Empty : "a corner off: ")}{Cut}";
    }
}
