using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;

namespace FinishKit;

/// <summary>
/// What share of its size wood gains across the grain for each percent of moisture content: what <see cref="DimensionalChange"/> answers.
/// The default value is no coefficient; what moves boards refuses it.
/// </summary>
public readonly struct DimensionalChangeCoefficient : IEquatable<DimensionalChangeCoefficient>
{
    private static readonly Allowed s_coefficient = new(0, 0.05, string.Empty);

    private readonly Kind _kind;
    private readonly WoodSpecies? _wood;
    private readonly double _shrinkage, _start, _takenAt;
    private readonly bool _startIsDefault, _takenAtIsDefault;

    internal DimensionalChangeCoefficient(double shrinkage, double start, double takenAt, bool startIsDefault, bool takenAtIsDefault)
    {
        _kind = Kind.Shrinkage;
        _shrinkage = shrinkage;
        _start = start;
        _takenAt = takenAt;
        _startIsDefault = startIsDefault;
        _takenAtIsDefault = takenAtIsDefault;
        Value = DimensionalChange.Solve(shrinkage, start, takenAt, Sources.Given, default(Silent));
    }

    internal DimensionalChangeCoefficient(double shrinkage, WoodSpecies wood, WoodGrain grain, double? start)
        : this(shrinkage, start ?? DimensionalChange.DefaultStart, Math.Min(DimensionalChange.DefaultTakenAt, start ?? DimensionalChange.DefaultStart), start is null, true)
    {
        _wood = wood;
        Grain = grain;
    }

    internal DimensionalChangeCoefficient(double movement, WoodSpecies wood, WoodGrain grain)
    {
        _kind = Kind.Species;
        _wood = wood;
        Grain = grain;
        Value = movement;
    }

    private DimensionalChangeCoefficient(double value)
    {
        _kind = Kind.Supplied;
        Value = value;
    }

    private enum Kind
    {
        None = 0,
        Supplied = 1,
        Shrinkage = 2,
        Species = 3,
    }

    /// <summary>Share of the size gained for each percent of moisture content.</summary>
    public double Value { get; }

    /// <summary>Which way the rings lie; unknown too where the coefficient is not that of a species.</summary>
    public WoodGrain Grain { get; }

    /// <summary>What the coefficient rests on.</summary>
    public Source Source => _kind switch
    {
        Kind.Species => _wood!.MovementSource ?? _wood.Source,
        Kind.Shrinkage => DimensionalChange.FromShrinkageSource,
        _ => Sources.Given,
    };

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: never, for a coefficient.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "Every result has it; a later finding may be a problem.")]
    public bool HasProblem => false;

    /// <summary>Whether the grain of a species had to be taken as tangential; put together on reading.</summary>
    /// <remarks>Codes: <c>materials-grain-unknown</c>.</remarks>
    public IReadOnlyList<Finding> Findings => IsGrainTaken
        ? [new Finding("materials-grain-unknown", Severity.Note, $"How {_wood!.Name} is sawn is not known: it is taken as flat-sawn, which moves most, by {Print.Round(100 * Value, 3)}% of the width for each percent of moisture content.", [new("coefficient", Value, "1/%")], DimensionalChange.UnknownGrain)]
        : [];

    /// <summary>Start of shrinkage, moisture of the size, and grain where none was given; put together on reading.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed
    {
        get
        {
            List<DefaultUsed> used = [];
            if (_startIsDefault)
            {
                used.Add(new DefaultUsed(new Figure("shrinkage-start", _start, "%"), DimensionalChange.ShrinkageStart));
            }

            if (_takenAtIsDefault)
            {
                used.Add(new DefaultUsed(new Figure("size-taken-at", _takenAt, "%"), DimensionalChange.ShrinkageStart));
            }

            if (IsGrainTaken)
            {
                used.Add(new DefaultUsed(new Figure("coefficient", Value, "1/%"), DimensionalChange.UnknownGrain));
            }

            return [.. used];
        }
    }

    internal bool IsNone => _kind == Kind.None;

    private bool IsGrainTaken => _wood is not null && Grain == WoodGrain.Unknown;

    private (Kind, WoodSpecies?, WoodGrain, double, double, double) Key => (_kind, _wood, Grain, Value, _start, _takenAt);

    /// <summary>Whether value and what it rests on agree.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree.</returns>
    public static bool operator ==(DimensionalChangeCoefficient left, DimensionalChangeCoefficient right) => left.Equals(right);

    /// <summary>Whether value or what it rests on differ.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if one differs.</returns>
    public static bool operator !=(DimensionalChangeCoefficient left, DimensionalChangeCoefficient right) => !left.Equals(right);

    /// <summary>A coefficient of the caller's own.</summary>
    /// <param name="coefficient">Share of the size for each percent of moisture content, 0 to 0.05.</param>
    /// <returns>The coefficient; nothing is allocated.</returns>
    /// <exception cref="ArgumentException">The number is outside its range or not a number.</exception>
    public static DimensionalChangeCoefficient Supplied(double coefficient) => new(Door.Number(coefficient, nameof(coefficient), s_coefficient, null));

    /// <summary>How the coefficient follows, and what it means in percent, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        if (_kind == Kind.Shrinkage)
        {
            DimensionalChange.Solve(_shrinkage, _start, _takenAt, _wood is null ? Sources.Given : _wood.ShrinkageSource ?? _wood.Source, recorder);
        }
        else
        {
            Quote(Value, Source, recorder);
        }

        return recorder.ToWorkings("Dimensional change coefficient");
    }

    private static void Quote<TTrace>(double coefficient, Source source, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("C", coefficient, "1/%", source, meaning: "dimensional change coefficient");
        trace.Step("p", "changePerPercent", 100 * coefficient, "%", DimensionalChange.FromShrinkageSource);
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>The coefficient, and the change of size in percent for each percent of moisture content.</returns>
    public IReadOnlyList<Figure> Figures() => [new("coefficient", Value, "1/%"), new("change-per-percent", 100 * Value, "%")];

    /// <inheritdoc/>
    public bool Equals(DimensionalChangeCoefficient other) => Key.Equals(other.Key);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is DimensionalChangeCoefficient other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>The change for each percent, and of what, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Round(100 * Value, 4)}% of the size for each percent of moisture content" + (_wood is null ? string.Empty : $", {_wood.Name}, {(Grain == WoodGrain.Radial ? "quarter-sawn" : "flat-sawn")}");
}
