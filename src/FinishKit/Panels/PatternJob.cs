using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>Wrapped panels of a cloth with a pattern: what <see cref="PatternMatch"/> needs to know.</summary>
/// <remarks>Nothing is checked here: <see cref="PatternMatch.CheckLay"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record PatternJob
{
    /// <summary>An empty job for an object initialiser.</summary>
    public PatternJob()
    {
    }

    /// <summary>A job with the pattern centred on the row's middle.</summary>
    /// <param name="plan">The row of panels.</param>
    /// <param name="repeatAlong">Repeat of the pattern along the roll.</param>
    /// <param name="repeatAcross">Repeat across the roll.</param>
    [SetsRequiredMembers]
    public PatternJob(WrapPlan plan, Length repeatAlong, Length repeatAcross)
    {
        Plan = plan;
        RepeatAlong = repeatAlong;
        RepeatAcross = repeatAcross;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="plan">The row of panels.</param>
    /// <param name="repeatAlong">Repeat of the pattern along the roll.</param>
    /// <param name="repeatAcross">Repeat across the roll.</param>
    /// <param name="centredOnPanel">See <see cref="CentredOnPanel"/>.</param>
    /// <param name="rollWidth">See <see cref="RollWidth"/>.</param>
    [SetsRequiredMembers]
    public PatternJob(WrapPlan plan, Length repeatAlong, Length repeatAcross, int? centredOnPanel = null, Length? rollWidth = null)
        : this(plan, repeatAlong, repeatAcross)
    {
        CentredOnPanel = centredOnPanel;
        RollWidth = rollWidth;
    }

    /// <summary>The row of panels.</summary>
    public required WrapPlan Plan { get; init; }

    /// <summary>Repeat of the pattern along the roll, 0 (nothing to match that way) to 5 m.</summary>
    public required Length RepeatAlong { get; init; }

    /// <summary>Repeat across the roll, 0 (nothing to match that way) to 5 m.</summary>
    public required Length RepeatAcross { get; init; }

    /// <summary>The panel on whose middle the pattern is centred, from 0 at the front; null for the middle of the row.</summary>
    public int? CentredOnPanel { get; init; }

    /// <summary>Usable width of the roll, 10 mm to 10 m; null where it is not to be checked.</summary>
    public Length? RollWidth { get; init; }

    private (WrapPlan?, double, double, int?, double?) Key => (Plan, Door.Millimetres(RepeatAlong), Door.Millimetres(RepeatAcross), CentredOnPanel, RollWidth is { } width ? Door.Millimetres(width) : null);

    /// <summary>Whether the plan is the same one and every other member of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(PatternJob? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>The repeats, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"a pattern that repeats every {Print.Mm(Door.Millimetres(RepeatAlong))} along the roll, {Print.Mm(Door.Millimetres(RepeatAcross))} across";
}
