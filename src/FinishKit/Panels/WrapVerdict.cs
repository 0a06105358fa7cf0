using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;

namespace FinishKit;

/// <summary>Which of two ways of wrapping costs less.</summary>
public enum WrapAdvantage
{
    /// <summary>Neither: they cost the same.</summary>
    Neither = 0,

    /// <summary>Foam-backed cloth.</summary>
    FoamBacked = 1,

    /// <summary>Cloth with foam of its own.</summary>
    SeparateFoam = 2,
}

/// <summary>Foam-backed cloth against separate foam: what <see cref="WrapComparison.Compare"/> answers. The default value compares nothing with nothing.</summary>
public readonly struct WrapVerdict : IEquatable<WrapVerdict>
{
    private const long BackedMinutes = 45, SeparateMinutes = 65;

    private readonly WrapAmounts _amounts;
    private readonly TimeSpan _backedHours, _separateHours;
    private readonly bool _backedIsDefault, _separateIsDefault;

    internal WrapVerdict(WrapChoice choice)
    {
        _amounts = new WrapAmounts(choice);
        (double backed, double separate) = WrapComparison.SolveMaterials(_amounts, default(Silent));
        (BackedMaterials, SeparateMaterials) = (Round(backed), Round(separate));
        _backedIsDefault = choice.BackedHours is null;
        _separateIsDefault = choice.SeparateHours is null;
        _backedHours = choice.BackedHours ?? TimeSpan.FromTicks(choice.Panels * BackedMinutes * TimeSpan.TicksPerMinute);
        _separateHours = choice.SeparateHours ?? TimeSpan.FromTicks(choice.Panels * SeparateMinutes * TimeSpan.TicksPerMinute);
        bool isAtOneRate = _backedHours != _separateHours && BackedMaterials.CompareTo(SeparateMaterials) * _separateHours.CompareTo(_backedHours) >= 0;
        BreakEvenRate = isAtOneRate
            ? Round(WrapComparison.SolveRate((double)BackedMaterials, (double)SeparateMaterials, _backedHours.TotalHours, _separateHours.TotalHours, default(Silent)))
            : null;
    }

    /// <summary>Materials with foam-backed cloth, rounded to a ten-thousandth.</summary>
    public decimal BackedMaterials { get; }

    /// <summary>Materials with separate foam, rounded to a ten-thousandth.</summary>
    public decimal SeparateMaterials { get; }

    /// <summary>Hours with foam-backed cloth.</summary>
    public TimeSpan BackedHours => _backedHours;

    /// <summary>Hours with separate foam.</summary>
    public TimeSpan SeparateHours => _separateHours;

    /// <summary>Money an hour at which both cost the same, rounded to a ten-thousandth: 0 where the materials cost the same and the hours differ. Null where one way is cheaper at every rate, or both cost the same at every rate.</summary>
    public decimal? BreakEvenRate { get; }

    /// <summary>Which is cheaper at labour rates above the break-even rate; where there is none, at every rate above 0.</summary>
    public WrapAdvantage CheaperAbove => Side(_backedHours.CompareTo(_separateHours)) is var hours && hours != WrapAdvantage.Neither && BreakEvenRate is not null ? hours : CheaperMaterials;

    /// <summary>Which is cheaper at labour rates below the break-even rate, that is where labour costs little: the one with the cheaper materials.</summary>
    public WrapAdvantage CheaperBelow => BreakEvenRate is null ? CheaperAbove : CheaperMaterials;

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: never, for a comparison.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "Every result has it; a later finding may be a problem.")]
    public bool HasProblem => false;

    /// <summary>What a person should know; put together on reading.</summary>
    /// <remarks>Codes: <c>panels-compare-hours-judged</c>.</remarks>
    public IReadOnlyList<Finding> Findings => _backedIsDefault || _separateIsDefault
        ?
        [
            new Finding(
                "panels-compare-hours-judged",
                Severity.Note,
                $"Hours were not given for both ways and are judgement: {Print.Round(_backedHours.TotalHours, 2)} h with foam-backed cloth, {Print.Round(_separateHours.TotalHours, 2)} h with separate foam. Time one panel each way before you trust the rate.",
                [new("backed-hours", _backedHours.TotalHours, "h"), new("separate-hours", _separateHours.TotalHours, "h")],
                WrapComparison.HoursSource),
        ]
        : [];

    /// <summary>The hours where none were given; put together on reading.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed
    {
        get
        {
            List<DefaultUsed> defaults = [];
            if (_backedIsDefault)
            {
                defaults.Add(new DefaultUsed(new Figure("backed-hours", _backedHours.TotalHours, "h"), WrapComparison.HoursSource));
            }

            if (_separateIsDefault)
            {
                defaults.Add(new DefaultUsed(new Figure("separate-hours", _separateHours.TotalHours, "h"), WrapComparison.HoursSource));
            }

            return [.. defaults];
        }
    }

    private WrapAdvantage CheaperMaterials => BackedMaterials == SeparateMaterials ? WrapAdvantage.Neither : Side(BackedMaterials.CompareTo(SeparateMaterials));

    private (decimal, decimal, TimeSpan, TimeSpan, bool, bool) Key => (BackedMaterials, SeparateMaterials, _backedHours, _separateHours, _backedIsDefault, _separateIsDefault);

    /// <summary>Whether materials and hours agree.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree.</returns>
    public static bool operator ==(WrapVerdict left, WrapVerdict right) => left.Equals(right);

    /// <summary>Whether materials or hours differ.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if one differs.</returns>
    public static bool operator !=(WrapVerdict left, WrapVerdict right) => !left.Equals(right);

    /// <summary>How materials and rate follow, step by step; the rate where there is one.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        WrapComparison.SolveMaterials(_amounts, recorder);
        if (BreakEvenRate is not null)
        {
            WrapComparison.SolveRate((double)BackedMaterials, (double)SeparateMaterials, _backedHours.TotalHours, _separateHours.TotalHours, recorder);
        }

        return recorder.ToWorkings("Foam-backed cloth against separate foam");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Materials and hours of both, the break-even rate where there is one, and which is cheaper above and below it as the number of the enumeration.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures =
        [
            new("backed-materials", (double)BackedMaterials, string.Empty),
            new("separate-materials", (double)SeparateMaterials, string.Empty),
            new("backed-hours", _backedHours.TotalHours, "h"),
            new("separate-hours", _separateHours.TotalHours, "h"),
        ];
        if (BreakEvenRate is { } rate)
        {
            figures.Add(new("break-even-rate", (double)rate, "1/h"));
        }

        figures.Add(new("cheaper-above", (int)CheaperAbove, string.Empty));
        figures.Add(new("cheaper-below", (int)CheaperBelow, string.Empty));
        return [.. figures];
    }

    /// <inheritdoc/>
    public bool Equals(WrapVerdict other) => Key.Equals(other.Key);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is WrapVerdict other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Materials, hours and rate, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string costs = $"foam-backed {CuttingPlan.Money(BackedMaterials)} and {Print.Round(_backedHours.TotalHours, 2)} h, separate {CuttingPlan.Money(SeparateMaterials)} and {Print.Round(_separateHours.TotalHours, 2)} h: ";
        return costs + (BreakEvenRate is { } rate ? $"equal at {CuttingPlan.Money(rate)} an hour, above that {Words(CheaperAbove)}"
            : CheaperAbove == WrapAdvantage.Neither ? "equal at every rate" : $"{Words(CheaperAbove)} at every rate");
    }

    private static WrapAdvantage Side(int order) => order < 0 ? WrapAdvantage.FoamBacked : order > 0 ? WrapAdvantage.SeparateFoam : WrapAdvantage.Neither;

    private static string Words(WrapAdvantage advantage) => advantage == WrapAdvantage.FoamBacked ? "foam-backed cloth is cheaper" : "separate foam is cheaper";

    private static decimal Round(double amount) => decimal.Round((decimal)amount, 4, MidpointRounding.AwayFromZero);
}
