using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>Boards side by side over the seasons: what <see cref="BoardMovement"/> needs to know.</summary>
/// <remarks>Nothing is checked here: <see cref="BoardMovement.CheckOverSeason(BoardMovementJob)"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record BoardMovementJob
{
    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="board">Profile, width and gap of the boards, as they are when fitted.</param>
    /// <param name="coefficient">How much their wood moves across the grain.</param>
    [SetsRequiredMembers]
    public BoardMovementJob(BoardCover board, DimensionalChangeCoefficient coefficient)
    {
        Board = board;
        Coefficient = coefficient;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="board">Profile, width and gap of the boards, as they are when fitted.</param>
    /// <param name="coefficient">How much their wood moves across the grain.</param>
    /// <param name="boards">See <see cref="Boards"/>.</param>
    /// <param name="fittingMoisture">See <see cref="FittingMoisture"/>.</param>
    /// <param name="driestMoisture">See <see cref="DriestMoisture"/>.</param>
    /// <param name="wettestMoisture">See <see cref="WettestMoisture"/>.</param>
    /// <param name="leastGap">See <see cref="LeastGap"/>.</param>
    /// <param name="endGap">See <see cref="EndGap"/>.</param>
    /// <param name="leastCovered">See <see cref="LeastCovered"/>.</param>
    [SetsRequiredMembers]
    public BoardMovementJob(
        BoardCover board,
        DimensionalChangeCoefficient coefficient,
        int boards = 1,
        double? fittingMoisture = null,
        double? driestMoisture = null,
        double? wettestMoisture = null,
        Length? leastGap = null,
        Length? endGap = null,
        Length? leastCovered = null)
        : this(board, coefficient)
    {
        Boards = boards;
        FittingMoisture = fittingMoisture;
        DriestMoisture = driestMoisture;
        WettestMoisture = wettestMoisture;
        LeastGap = leastGap;
        EndGap = endGap;
        LeastCovered = leastCovered;
    }

    /// <summary>Makes one by its members.</summary>
    public BoardMovementJob()
    {
    }

    /// <summary>Profile, width, and the gap that is left, all as they are when fitted. A gap of 0 means boards pushed tight.</summary>
    public required BoardCover Board { get; init; }

    /// <summary>How much the wood moves across the grain: of a species, from a shrinkage, or supplied.</summary>
    public required DimensionalChangeCoefficient Coefficient { get; init; }

    /// <summary>How many boards lie side by side, 1 to 1000: for what they move together.</summary>
    public int Boards { get; init; } = 1;

    /// <summary>Moisture content when fitted, in percent, 0 to 30; null for 9, common practice.</summary>
    public double? FittingMoisture { get; init; }

    /// <summary>Moisture content at the dry end of the season, in percent, 0 to 30; null for 6, judgement.</summary>
    public double? DriestMoisture { get; init; }

    /// <summary>Moisture content at the wet end of the season, in percent, from the driest up to 30; null for 16, judgement.</summary>
    public double? WettestMoisture { get; init; }

    /// <summary>Gap that is left at a joint even where swelling asks for less, 0 to 100 mm; null for 1 mm, common practice.</summary>
    public Length? LeastGap { get; init; }

    /// <summary>Gap left at each end of a board, 0 to 100 mm; null for 3 mm, common practice.</summary>
    public Length? EndGap { get; init; }

    /// <summary>How much of tongue or lap must stay covered at the dry end, 0 to 100 mm, exactly met is met; null asks only that some of it does.</summary>
    public Length? LeastCovered { get; init; }

    private (BoardCover, DimensionalChangeCoefficient, int, double?, double?, double?, double?, double?, double?) Key => (
        Board, Coefficient, Boards, FittingMoisture, DriestMoisture, WettestMoisture, Millimetres(LeastGap), Millimetres(EndGap), Millimetres(LeastCovered));

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(BoardMovementJob? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Boards, wood and moisture, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Board?.ToString() ?? "boards"}, {Coefficient}, fitted at {Print.Number(FittingMoisture ?? MovementDefaults.FittingMoisture)}%, season {Print.Number(DriestMoisture ?? MovementDefaults.DriestMoisture)} to {Print.Number(WettestMoisture ?? MovementDefaults.WettestMoisture)}%";

    private static double? Millimetres(Length? length) => length is { } given ? Door.Millimetres(given) : null;
}
