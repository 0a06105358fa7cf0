using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>From which end the courses go up.</summary>
public enum FittingOrder
{
    /// <summary>The lowest course first.</summary>
    FromBottom = 0,

    /// <summary>The highest course first.</summary>
    FromTop = 1,
}

/// <summary>Courses that end at an edge: what <see cref="EndCuts"/> needs to know.</summary>
/// <remarks>Nothing is checked here: <see cref="EndCuts.Check(EndCutJob)"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record EndCutJob
{
    private readonly IReadOnlyList<Length> _courseLines = null!;

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="edge">The edge at which the courses end.</param>
    /// <param name="courseLines">Heights of the lines between courses, with the bottom of the lowest and the top of the highest.</param>
    /// <param name="datum">Where the other ends of the boards are.</param>
    [SetsRequiredMembers]
    public EndCutJob(MeasuredEdge edge, IReadOnlyList<Length> courseLines, Length datum)
    {
        Edge = edge;
        CourseLines = courseLines;
        Datum = datum;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="edge">The edge at which the courses end.</param>
    /// <param name="courseLines">Heights of the lines between courses, with the bottom of the lowest and the top of the highest.</param>
    /// <param name="datum">Where the other ends of the boards are.</param>
    /// <param name="order">See <see cref="Order"/>.</param>
    /// <param name="underTrim">See <see cref="UnderTrim"/>.</param>
    /// <param name="scribeTolerance">See <see cref="ScribeTolerance"/>.</param>
    /// <param name="hiddenWidth">See <see cref="HiddenWidth"/>.</param>
    [SetsRequiredMembers]
    public EndCutJob(
        MeasuredEdge edge,
        IReadOnlyList<Length> courseLines,
        Length datum,
        FittingOrder order = FittingOrder.FromBottom,
        bool underTrim = false,
        Length? scribeTolerance = null,
        Length? hiddenWidth = null)
        : this(edge, courseLines, datum)
    {
        Order = order;
        UnderTrim = underTrim;
        ScribeTolerance = scribeTolerance;
        HiddenWidth = hiddenWidth;
    }

    /// <summary>Makes one by its members.</summary>
    public EndCutJob()
    {
    }

    /// <summary>The edge at which the courses end, at the rear or at the front of the boards.</summary>
    public required MeasuredEdge Edge { get; init; }

    /// <summary>
    /// Heights of the lines between courses, lowest first: n + 1 lines for n courses, 2 to 501, each within the edge's heights and 1 mm or more above the one before. Courses touch: the visible face
    /// of each runs from line to line. Those of a face are <see cref="CoursePlan.LinesAtFront"/> and <see cref="CoursePlan.LinesAtRear"/>.
    /// </summary>
    public required IReadOnlyList<Length> CourseLines
    {
        get => _courseLines;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _courseLines = Lists.Keep(value, EndCuts.MostLines);
    }

    /// <summary>
    /// Where the other, square ends of the boards are, on the scale of the edge's offsets, -1 km to 1 km: on one side of the edge at every course line. Where it is less than the edge's offset the edge is at the rear of the boards,
    /// where it is more at their front.
    /// </summary>
    public required Length Datum { get; init; }

    /// <summary>From which end the courses go up. From the bottom unless said.</summary>
    public FittingOrder Order { get; init; }

    /// <summary>Whether a trim covers the ends: then they need be less exact.</summary>
    public bool UnderTrim { get; init; }

    /// <summary>How much gap or wood in the way a straight cut may leave, 0 to 100 mm, exactly met is met; null for 0.5 mm, or 2 mm under a trim, common practice.</summary>
    public Length? ScribeTolerance { get; init; }

    /// <summary>How far each board goes on beyond its upper line, hidden: its tongue or lap, 0 to 200 mm. None unless said.</summary>
    public Length? HiddenWidth { get; init; }

    private (double, FittingOrder, bool, double?, double?) Key => (
        Door.Millimetres(Datum), Order, UnderTrim, ScribeTolerance is { } tolerance ? Door.Millimetres(tolerance) : null, HiddenWidth is { } hidden ? Door.Millimetres(hidden) : null);

    /// <summary>Whether every member is of equal amount, whatever its unit, the lines are the same in the same order, and the edge is one and the same.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(EndCutJob? other) =>
        other is not null && Key.Equals(other.Key) && ReferenceEquals(Edge, other.Edge) && Lists.Same(CourseLines, other.CourseLines, EndCuts.MostLines);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Number of courses, their edge and the datum, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number((CourseLines?.Count ?? 1) - 1)} courses from {Print.Mm(Door.Millimetres(Datum))} to an {Edge?.ToString() ?? "edge"}";
}
