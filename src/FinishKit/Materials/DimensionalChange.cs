using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>The dimensional change coefficient of wood: what share of its size a board gains across the grain for each percent of moisture content.</summary>
public static class DimensionalChange
{
    internal const double DefaultStart = 30, DefaultTakenAt = 10;

    internal static readonly Source FromShrinkageSource = Source.Derived("dimensional-change", "Dimensional change coefficient from shrinkage", "from moisture s to 0 the size falls in a straight line by S percent of the green size; the slope S/(100 s) over the size 1 - S (s - r)/(100 s) at moisture r is S/(100 s - S (s - r)): S/(3000 - 20 S) for s = 30 and r = 10");

    internal static readonly Source ShrinkageStart = Source.Derived("shrinkage-start", "Moisture at which shrinkage starts, and at which a coefficient's size is taken", "with 30% and 10% the coefficients of the Wood Handbook's table 13-5 follow from the shrinkages of its table 4-3 to the last printed digit, but those of commercial groups and those of a few cedars and redwood, which start at 22%");

    internal static readonly Source UnknownGrain = Source.Judgement("default-grain", "where the grain is not known a board is taken as flat-sawn: it then moves tangentially, which is more");

    private static readonly Allowed s_shrinkage = new(0, 30, "%");
    private static readonly Allowed s_start = new(10, 60, "%");
    private static readonly Allowed s_takenAt = new(0, 60, "%");

    /// <summary>The coefficient that follows from the shrinkage between green and ovendry.</summary>
    /// <param name="shrinkage">Shrinkage from green to ovendry in percent of the green size, 0 to 30.</param>
    /// <param name="shrinkageStart">Moisture content at which shrinkage starts, in percent, 10 to 60; null for 30.</param>
    /// <param name="takenAt">Moisture content at which the size is taken that the coefficient is a share of, in percent, 0 to 60, not above the start; null for 10.</param>
    /// <returns>The coefficient; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: C = S/(100 s - S (s - r)), S the shrinkage in percent, s its start, r the moisture of the size; with s = 30 and r = 10, C = S/(3000 - 20 S).</para>
    /// <para>Validity: the size falls in a straight line from the start of shrinkage to ovendry. Used on a size taken at another moisture than r the answer is off by the share that the wood moves between the two, a few percent of the movement.</para>
    /// <para>Source: dimensional-change, shrinkage-start (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="ArgumentException">A number is not a number.</exception>
    /// <example><code>
    /// DimensionalChangeCoefficient ash = DimensionalChange.FromShrinkage(7.8); // white ash, tangential
    /// double share = ash.Value;                           // 0.00274 of the size for each percent of moisture content
    /// </code></example>
    public static DimensionalChangeCoefficient FromShrinkage(double shrinkage, double? shrinkageStart = null, double? takenAt = null) => Read(shrinkage, shrinkageStart, takenAt, null);

    /// <summary>All problems with the input of <see cref="FromShrinkage(double, double?, double?)"/>; nothing is thrown.</summary>
    /// <param name="shrinkage">As there.</param>
    /// <param name="shrinkageStart">As there.</param>
    /// <param name="takenAt">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckFromShrinkage(double shrinkage, double? shrinkageStart = null, double? takenAt = null)
    {
        List<InputProblem> problems = [];
        Read(shrinkage, shrinkageStart, takenAt, problems);
        return problems;
    }

    /// <summary>The coefficient of a species across the width of a board.</summary>
    /// <param name="wood">The species. Its movement is taken where it has one, else the coefficient that follows from its shrinkage.</param>
    /// <param name="grain">Which way the rings lie; tangential where it is not known.</param>
    /// <returns>The coefficient; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: the movement of the species; without one, that of <see cref="FromShrinkage(double, double?, double?)"/> from its shrinkage and start of shrinkage.</para>
    /// <para>Validity: printed coefficients are for 6 to 14% moisture content; a board that is neither flat-sawn nor quarter-sawn moves by an amount between the two.</para>
    /// <para>Source: FPL-GTR-190 (read in a copy or from memory, row by row: see the species); dimensional-change (derived); default-grain (judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="wood"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The grain is undefined.</exception>
    /// <exception cref="ArgumentException">The species has neither movement nor shrinkage in that direction.</exception>
    /// <example><code>
    /// DimensionalChangeCoefficient flat = DimensionalChange.OfWood(WoodSpecies.Named("eastern white pine"), WoodGrain.Tangential);
    /// double share = flat.Value;                          // 0.00212 of the size for each percent of moisture content
    /// </code></example>
    public static DimensionalChangeCoefficient OfWood(WoodSpecies wood, WoodGrain grain = WoodGrain.Unknown) => Read(wood, grain, null);

    /// <summary>All problems with the input of <see cref="OfWood(WoodSpecies, WoodGrain)"/>; nothing is thrown.</summary>
    /// <param name="wood">As there.</param>
    /// <param name="grain">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckOfWood(WoodSpecies wood, WoodGrain grain = WoodGrain.Unknown)
    {
        List<InputProblem> problems = [];
        Read(wood, grain, problems);
        return problems;
    }

    /// <summary>The one formula body, for the numbers and for the workings.</summary>
    internal static double Solve<TTrace>(double shrinkage, double start, double takenAt, Source source, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("S", shrinkage, "%", source, meaning: "shrinkage from green to ovendry");
        trace.Given("s", start, "%", ShrinkageStart, meaning: "moisture content at which shrinkage starts");
        trace.Given("r", takenAt, "%", ShrinkageStart, meaning: "moisture content at which the size is taken");
        double coefficient = trace.Step("C", nameof(coefficient), shrinkage / ((100 * start) - (shrinkage * (start - takenAt))), "1/%", FromShrinkageSource);
        return coefficient;
    }

    private static DimensionalChangeCoefficient Read(double shrinkage, double? shrinkageStart, double? takenAt, List<InputProblem>? problems)
    {
        double amount = Door.Number(shrinkage, nameof(shrinkage), s_shrinkage, problems);
        double start = shrinkageStart is { } s ? Door.Number(s, nameof(shrinkageStart), s_start, problems) : DefaultStart;
        double taken = takenAt is { } r ? Door.Number(r, nameof(takenAt), s_takenAt, problems) : DefaultTakenAt;
        if (taken > start)
        {
            Door.Report(new InputProblem(nameof(takenAt), Print.Number(taken) + " %", $"0 to {Print.Number(start)} %, where shrinkage starts", isRange: true), problems);
        }

        return problems is { Count: > 0 } ? default : new DimensionalChangeCoefficient(amount, start, taken, shrinkageStart is null, takenAt is null);
    }

    private static DimensionalChangeCoefficient Read(WoodSpecies wood, WoodGrain grain, List<InputProblem>? problems)
    {
        bool isMissing = Door.IsMissing(wood, new Name(nameof(wood)), "a species", problems);
        if (grain is not (WoodGrain.Unknown or WoodGrain.Tangential or WoodGrain.Radial))
        {
            Door.Report(new InputProblem(nameof(grain), grain.ToString("D"), $"{nameof(WoodGrain.Unknown)}, {nameof(WoodGrain.Tangential)} or {nameof(WoodGrain.Radial)}", isRange: true), problems);
        }
        else if (!isMissing && Movement(wood, grain) is null && Shrinkage(wood, grain) is null)
        {
            Door.Report(new InputProblem(nameof(wood), "a species without movement and shrinkage in that direction", "one that has either", isRange: false), problems);
        }

        return problems is { Count: > 0 } ? default
            : Movement(wood, grain) is { } movement ? new DimensionalChangeCoefficient(movement, wood, grain)
            : new DimensionalChangeCoefficient(Shrinkage(wood, grain)!.Value, wood, grain, wood.ShrinkageStart);
    }

    private static double? Movement(WoodSpecies wood, WoodGrain grain) => grain == WoodGrain.Radial ? wood.RadialMovement : wood.TangentialMovement;

    private static double? Shrinkage(WoodSpecies wood, WoodGrain grain) => grain == WoodGrain.Radial ? wood.RadialShrinkage : wood.TangentialShrinkage;
}
