using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>Boards and steel shell along the grain: what <see cref="BoardMovement.AlongTheGrain(Length, double, double, double)"/> answers. The default value is no board.</summary>
public readonly struct LengthMovement : IEquatable<LengthMovement>
{
    private readonly double _length;
    private readonly LengthNumbers _numbers;

    internal LengthMovement(double length, double warming, double fromMoisture, double toMoisture)
    {
        _length = length;
        Warming = warming;
        FromMoisture = fromMoisture;
        ToMoisture = toMoisture;
        _numbers = BoardMovement.SolveLength(length, warming, fromMoisture, toMoisture, default(Silent));
    }

    /// <summary>Length along the grain.</summary>
    public Length Length => Door.Millimetres(_length);

    /// <summary>How much warmer both get, in kelvin.</summary>
    public double Warming { get; }

    /// <summary>Moisture content before, in percent.</summary>
    public double FromMoisture { get; }

    /// <summary>Moisture content after, in percent.</summary>
    public double ToMoisture { get; }

    /// <summary>What the steel grows.</summary>
    public Length SteelGrowth => Door.Millimetres(Grid.Snap(_numbers.Steel));

    /// <summary>What the wood grows by heat.</summary>
    public Length WoodGrowthByHeat => Door.Millimetres(Grid.Snap(_numbers.Heat));

    /// <summary>What the wood grows by moisture, negative where it dries.</summary>
    public Length WoodGrowthByMoisture => Door.Millimetres(Grid.Snap(_numbers.Moisture));

    /// <summary>By how much the gaps at both ends together open, negative where they close.</summary>
    public Length EndsOpenBy => Door.Millimetres(Opening);

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: never, along the grain.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "Every result has it; a later finding may be a problem.")]
    public bool HasProblem => false;

    /// <summary>What the ends need; put together on reading.</summary>
    /// <remarks>Codes: <c>boards-movement-ends-close</c>, <c>boards-movement-ends-open</c>.</remarks>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            Figure[] values = [new("ends-open-by", Opening, "mm"), new("length", _length, "mm"), new("end-gap", MovementDefaults.EndGap, "mm")];
            if (-Opening > 2 * MovementDefaults.EndGap)
            {
                return [new Finding("boards-movement-ends-close", Severity.Caution, $"A board of {Print.Mm(_length)} outgrows the shell by {Print.Mm(-Opening)}, more than two end gaps of {Print.Number(MovementDefaults.EndGap)} mm: leave more, or fit it at another moisture.", values, MovementDefaults.Ends)];
            }

            return Opening <= 0 ? [] : [new Finding("boards-movement-ends-open", Severity.Note, $"The shell outgrows a board of {Print.Mm(_length)} by {Print.Mm(Opening)}, over both ends together: cover the ends with a trim, or fill them with a bead that stays elastic.", values, MovementDefaults.EndsOpen)];
        }
    }

    /// <summary>The end gap against which the movement is held; put together on reading.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "Every result that uses defaults has it.")]
    public IReadOnlyList<DefaultUsed> DefaultsUsed => [new DefaultUsed(new Figure("end-gap", MovementDefaults.EndGap, "mm"), MovementDefaults.Ends)];

    private double Opening => Grid.Snap(_numbers.Opening);

    private (double, double, double, double) Key => (_length, Warming, FromMoisture, ToMoisture);

    /// <summary>Whether length, warming and moisture agree.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree.</returns>
    public static bool operator ==(LengthMovement left, LengthMovement right) => left.Equals(right);

    /// <summary>Whether length, warming or moisture differ.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if one differs.</returns>
    public static bool operator !=(LengthMovement left, LengthMovement right) => !left.Equals(right);

    /// <summary>How both movements follow, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        BoardMovement.SolveLength(_length, Warming, FromMoisture, ToMoisture, recorder);
        return recorder.ToWorkings("Boards and steel along the grain");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Length, warming in kelvin, both moisture contents in percent, growth of steel, of wood by heat and by moisture, opening of both ends.</returns>
    public IReadOnlyList<Figure> Figures() =>
    [
        new("length", _length, "mm"),
        new("warming", Warming, "K"),
        new("moisture-before", FromMoisture, "%"),
        new("moisture-after", ToMoisture, "%"),
        new("steel-growth", Grid.Snap(_numbers.Steel), "mm"),
        new("wood-growth-by-heat", Grid.Snap(_numbers.Heat), "mm"),
        new("wood-growth-by-moisture", Grid.Snap(_numbers.Moisture), "mm"),
        new("ends-open-by", Opening, "mm"),
    ];

    /// <inheritdoc/>
    public bool Equals(LengthMovement other) => Key.Equals(other.Key);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is LengthMovement other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Length, and what the ends do, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Mm(_length)} along the grain, {Print.Round(Warming, 3)} K warmer, from {Print.Round(FromMoisture, 3)} to {Print.Round(ToMoisture, 3)}%: the ends {(Opening < 0 ? "close" : "open")} by {Print.Mm(Math.Abs(Opening))} in all";
}
