using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Why a strip is where it is.</summary>
public enum StripKind
{
    /// <summary>Chosen, and at no rib's middle.</summary>
    OffRib = 0,

    /// <summary>There whatever else: an end, a jamb, a butt joint.</summary>
    Fixed = 1,

    /// <summary>Chosen, at the middle of a rib.</summary>
    OnRib = 2,
}

/// <summary>A strip in its place.</summary>
public sealed class PlacedStrip
{
    private static readonly Allowed s_position = new(0, 1e6, "mm");
    private static readonly Allowed s_rib = new(0, StripSpacing.MostListed - 1, string.Empty);

    /// <summary>Makes one.</summary>
    /// <param name="position">Its centre line along the run [length], 0 to 1 km.</param>
    /// <param name="kind">Why it is there.</param>
    /// <param name="rib">Which rib of the run's list it bears on, 0 to 999; null if none.</param>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit.</exception>
    public PlacedStrip(Length position, StripKind kind, int? rib)
    {
        Position = Door.Millimetres(Door.Millimetres(position, nameof(position), s_position, null));
        if (kind is < StripKind.OffRib or > StripKind.OnRib)
        {
            throw new InputProblem(nameof(kind), Print.Number((int)kind), "one of OffRib, Fixed, OnRib", isRange: true).ToException();
        }

        if (rib is { } index)
        {
            Door.Number(index, nameof(rib), s_rib, null);
        }

        Kind = kind;
        Rib = rib;
    }

    /// <summary>Its centre line along the run.</summary>
    public Length Position { get; }

    /// <summary>Why it is there.</summary>
    public StripKind Kind { get; }

    /// <summary>Which rib of the run's list it bears on; also of a strip that is there for another reason, within a rib's half-width. Null if none.</summary>
    public int? Rib { get; }

    /// <summary>Place, kind and rib, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string kind = Kind switch
        {
            StripKind.Fixed => "fixed",
            StripKind.OnRib => "on a rib",
            _ => "off ribs",
        };
        string bearing = Rib is { } rib ? $"bears on rib {Print.Number(rib)}" : "bears on none";
        return $"{Print.Number(Position.Millimeters)} mm, {kind}, {bearing}";
    }
}

/// <summary>Where the strips of a run go: what <see cref="StripSpacing.Space(StripRun)"/> answers.</summary>
public sealed class StripLayout
{
    private const string StripWords = "2 to 13,000 strips from left to right";
    private const int MostStrips = 13_000;
    private const string ListWords = "at most 200 entries";
    private const int MostListed = 200;

    private static readonly Allowed s_bay = new(0, 1e6, "mm");

    private readonly double[] _positions;

    /// <summary>Makes a result; hosts may build their own for tests.</summary>
    /// <param name="run">The run.</param>
    /// <param name="strips">The strips from left to right, 2 to 13,000.</param>
    /// <param name="smallestFeasibleBay">Null where strips could be spaced; else the smallest largest bay with which they could [length].</param>
    /// <param name="findings">What a person should know, gravest first.</param>
    /// <param name="defaultsUsed">The defaults taken.</param>
    /// <exception cref="ArgumentNullException">An argument other than <paramref name="smallestFeasibleBay"/> is null.</exception>
    /// <exception cref="ArgumentException">A list has too few or too many entries, a strip is missing or left of the one before it, or a length is outside its range or in an undefined unit.</exception>
    public StripLayout(StripRun run, IReadOnlyList<PlacedStrip> strips, Length? smallestFeasibleBay, IReadOnlyList<Finding> findings, IReadOnlyList<DefaultUsed> defaultsUsed)
    {
        Run = run ?? throw new ArgumentNullException(nameof(run));
        Strips = Copy(strips, nameof(strips), 2, MostStrips, StripWords);
        SmallestFeasibleBay = smallestFeasibleBay is { } bay ? Door.Millimetres(Door.Millimetres(bay, nameof(smallestFeasibleBay), s_bay, null)) : null;
        Findings = Copy(findings, nameof(findings), 0, MostListed, ListWords);
        DefaultsUsed = Copy(defaultsUsed, nameof(defaultsUsed), 0, MostListed, ListWords);
        _positions = new double[Strips.Count];
        for (int i = 0; i < _positions.Length; i++)
        {
            Name name = new(nameof(strips), i);
            Door.IsMissing(Strips[i], name, "a strip", null);
            _positions[i] = Door.Millimetres(Strips[i].Position);
            if (i > 0 && _positions[i] < _positions[i - 1])
            {
                throw new InputProblem(name.ToString(), Print.Mm(_positions[i]), "no less than the strip before it", isRange: true).ToException();
            }

            FixedCount += Strips[i].Kind == StripKind.Fixed ? 1 : 0;
            OnRibCount += Strips[i].Kind == StripKind.OnRib ? 1 : 0;
        }

        Length[] bays = new Length[_positions.Length - 1];
        for (int i = 0; i < bays.Length; i++)
        {
            bays[i] = Door.Millimetres(Grid.Snap(_positions[i + 1] - _positions[i]));
        }

        Bays = [.. bays];
        LargestBay = Door.Millimetres(Grid.Snap(Solve(default(Silent))));
    }

    /// <summary>The run.</summary>
    public StripRun Run { get; }

    /// <summary>What the strips are good at first.</summary>
    public StripPreference Preference => Run.Preference;

    /// <summary>Whether strips could be spaced. If not, <see cref="Strips"/> holds the fixed ones only and <see cref="Findings"/> says why.</summary>
    public bool IsFeasible => SmallestFeasibleBay is null;

    /// <summary>Where strips could not be spaced: the smallest largest bay with which they could, at the same least distance; else null.</summary>
    public Length? SmallestFeasibleBay { get; }

    /// <summary>The strips from left to right, fixed ones included.</summary>
    public IReadOnlyList<PlacedStrip> Strips { get; }

    /// <summary>The distances between neighbouring strips, centre to centre, from left to right: one fewer than strips.</summary>
    public IReadOnlyList<Length> Bays { get; }

    /// <summary>The largest of the bays there are.</summary>
    public Length LargestBay { get; }

    /// <summary>How many strips are fixed.</summary>
    public int FixedCount { get; }

    /// <summary>How many strips were chosen, on ribs and off.</summary>
    public int ChosenCount => Strips.Count - FixedCount;

    /// <summary>How many strips were chosen at the middle of a rib.</summary>
    public int OnRibCount { get; }

    /// <summary>How many strips were chosen off ribs.</summary>
    public int OffRibCount => ChosenCount - OnRibCount;

    /// <summary>What a person should know, gravest first.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem
    {
        get
        {
            foreach (Finding finding in Findings)
            {
                if (finding.Severity >= Severity.Problem)
                {
                    return true;
                }
            }

            return false;
        }
    }

    /// <summary>The defaults taken because the run gave no figure of its own.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    /// <summary>How bays and counts follow from the strips' places.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        Solve(recorder);
        return recorder.ToWorkings("Bays between strips");
    }

    /// <summary>The layout as flat figures.</summary>
    /// <returns>Whether strips could be spaced (1 or 0), the worst severity as the number of its enumeration (0 too where there is no finding), counts, largest bay found and allowed, smallest bay; where strips could not be spaced, the smallest largest bay with which they could.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        double smallest = double.MaxValue;
        foreach (Length bay in Bays)
        {
            smallest = Math.Min(smallest, bay.Millimeters);
        }

        List<Figure> figures =
        [
            new("feasible", IsFeasible ? 1 : 0, string.Empty),
            new("worst-severity", Findings.Count == 0 ? 0 : (int)Findings[0].Severity, string.Empty),
            new("fixed", FixedCount, string.Empty),
            new("chosen", ChosenCount, string.Empty),
            new("on-ribs", OnRibCount, string.Empty),
            new("off-ribs", OffRibCount, string.Empty),
            new("largest-bay", LargestBay.Millimeters, "mm"),
            new("smallest-bay", smallest, "mm"),
        ];
        if (Door.Millimetres(Run.LargestBay) is var allowed && !double.IsNaN(allowed) && !double.IsInfinity(allowed))
        {
            figures.Add(new Figure("largest-bay-allowed", allowed, "mm"));
        }

        if (SmallestFeasibleBay is { } feasible)
        {
            figures.Add(new Figure("smallest-feasible-bay", feasible.Millimeters, "mm"));
        }

        return [.. figures];
    }

    /// <summary>Counts and the largest bay in a line, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => SmallestFeasibleBay is { } feasible
        ? $"no strips chosen; bays up to {Print.Mm(feasible.Millimeters)} could be had"
        : $"{Print.Number(Strips.Count)} strips, {Print.Number(FixedCount)} fixed, {Print.Number(OnRibCount)} on ribs, {Print.Number(OffRibCount)} off; largest bay {Print.Mm(LargestBay.Millimeters)}";

    /// <summary>The one formula body, for the number and for the workings: the largest bay.</summary>
    private double Solve<TTrace>(TTrace trace)
        where TTrace : struct, ITrace
    {
        double strips = _positions.Length, fixedStrips = FixedCount, onRibs = OnRibCount;
        trace.Given("n", strips, string.Empty, Sources.StripSpacing, meaning: "strips");
        trace.Given("n_f", fixedStrips, string.Empty, Sources.Given, meaning: "fixed strips");
        trace.Given("n_r", onRibs, string.Empty, Sources.StripSpacing, meaning: "strips chosen on ribs");
        double chosen = trace.Step("n_c", nameof(chosen), strips - fixedStrips, string.Empty, Sources.StripSpacing);
        trace.Step("n_o", "offRibs", chosen - onRibs, string.Empty, Sources.StripSpacing);
        double before = _positions[0], largestBay = 0;
        trace.Given("x", before, "mm", Sources.StripSpacing, 1, "first strip");
        trace.Given("B", largestBay, "mm", Sources.StripSpacing, 1, "no bay yet");
        for (int i = 1; i < _positions.Length; i++)
        {
            double position = _positions[i];
            trace.Given("x", position, "mm", Sources.StripSpacing, i + 1, "next strip");
            double bay = trace.Step("b", nameof(bay), position - before, "mm", Sources.StripSpacing, i);
            largestBay = trace.Step("B", nameof(largestBay), Math.Max(largestBay, bay), "mm", Sources.StripSpacing, i + 1);
            before = position;
            trace.Given("x", before, "mm", Sources.StripSpacing, i + 1, "that strip is the one before the next");
        }

        return largestBay;
    }

    /// <summary>A list may claim any number.</summary>
    private static IReadOnlyList<T> Copy<T>(IReadOnlyList<T> list, string parameter, int least, int most, string words)
    {
        Door.IsMissing(list, new Name(parameter), words, null);
        if (list.Count < least || list.Count > most)
        {
            Door.Report(new InputProblem(parameter, Print.Number(list.Count) + " entries", words, isRange: true), null);
        }

        return [.. list];
    }
}
