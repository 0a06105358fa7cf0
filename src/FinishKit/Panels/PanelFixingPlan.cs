using System;
using System.Collections.Generic;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>One row of a panel with its fixings.</summary>
public sealed class PanelFixingRow
{
    internal PanelFixingRow(PanelFixingNumbers job, int row, double perLength, int count, bool holds, bool isByStrength)
    {
        (_, double spacing, double greatest) = PanelFixings.Solve(job, row, count, default(Silent));
        PositionMm = job.Positions[row];
        LoadPerLength = new ForcePerLength(perLength, ForcePerLengthUnit.NewtonPerMillimeter);
        Load = Door.Newtons(perLength * job.Width);
        Holds = holds;
        IsByStrength = isByStrength;
        OnlyBears = job.Pulls[row] <= 0;
        SpacingMm = spacing;
        Greatest = greatest;
        Length[] positions = new Length[count];
        for (int i = 0; i < count; i++)
        {
            positions[i] = Door.Millimetres(Grid.Snap(count == 1 ? job.Width / 2 : job.Edge + (i * spacing)));
        }

        Positions = [.. positions];
    }

    /// <summary>The row's place, from the panel's edge, square to it.</summary>
    public Length Position => Door.Millimetres(PositionMm);

    /// <summary>What the row holds per length: its pull where it pulls, and its share of the mass.</summary>
    public ForcePerLength LoadPerLength { get; }

    /// <summary>The same over the whole row.</summary>
    public Force Load { get; }

    /// <summary>Places of the fixings along the row, from the panel's other edge.</summary>
    public IReadOnlyList<Length> Positions { get; }

    /// <summary>Distance between them; null where there is one only.</summary>
    public Length? Spacing => Positions.Count == 1 ? null : Door.Millimetres(Grid.Snap(SpacingMm));

    /// <summary>What the hardest-worked of them holds at the most: its stretch of the row, or what a stiff panel brings to it where that is more.</summary>
    public Force GreatestLoad => Door.Newtons(Greatest);

    /// <summary>Whether that is no more than one fixing may be loaded with. Where it is not, no number 20 mm or more apart does, and the places are those of the greatest spacing.</summary>
    public bool Holds { get; }

    /// <summary>Whether strength asks for more fixings than the greatest spacing does.</summary>
    public bool IsByStrength { get; }

    internal bool OnlyBears { get; }

    internal double PositionMm { get; }

    internal double SpacingMm { get; }

    internal double Greatest { get; }

    /// <summary>Place, number and load, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"row at {Print.Mm(PositionMm)}: {Print.Number(Positions.Count)} fixings{(Positions.Count > 1 ? ", " + Print.Mm(SpacingMm) + " apart" : string.Empty)}, up to {Print.Round(Greatest, 2)} N each{(Holds ? string.Empty : ": does not hold")}";
}

/// <summary>The fixings of a panel, row by row: what <see cref="PanelFixings.Place(PanelFixingJob)"/> answers.</summary>
/// <remarks><see cref="PanelFixings.Place(PanelFixingJob)"/> makes one.</remarks>
public sealed class PanelFixingPlan
{
    private readonly PanelFixingNumbers _numbers;

    internal PanelFixingPlan(PanelFixingJob job, PanelFixingNumbers numbers, PanelFixingRow[] rows)
    {
        Job = job;
        _numbers = numbers;
        Rows = [.. rows];
        Findings = FindingsOf(job, numbers, rows);
        List<DefaultUsed> used = [];
        Add(job.GreatestSpacing is null, new("greatest-spacing", PanelFixingDefaults.Spacing, "mm"), PanelFixingDefaults.SpacingSource);
        Add(job.EdgeDistance is null, new("edge-distance", PanelFixingDefaults.Edge, "mm"), PanelFixingDefaults.EdgeSource);
        Add(numbers.Mass > 0 && job.Acceleration is null, new("acceleration", Retention.RoadAcceleration, "g"), Sources.RoadAcceleration);

        // Named where it decides: two places would be too near, or more fixings would have to be.
        bool isAlone = numbers.Run < PanelFixingDefaults.LeastSpacing;
        Add(isAlone ? numbers.Run > 0 : !Holds, new("least-spacing", PanelFixingDefaults.LeastSpacing, "mm"), PanelFixingDefaults.LeastSpacingSource);
        DefaultsUsed = [.. used];

        void Add(bool taken, Figure figure, Source source)
        {
            if (taken)
            {
                used.Add(new DefaultUsed(figure, source));
            }
        }
    }

    /// <summary>What was asked.</summary>
    public PanelFixingJob Job { get; }

    /// <summary>Every row with its fixings, in order.</summary>
    public IReadOnlyList<PanelFixingRow> Rows { get; }

    /// <summary>All fixings together.</summary>
    public int Count
    {
        get
        {
            int count = 0;
            foreach (PanelFixingRow row in Rows)
            {
                count += row.Positions.Count;
            }

            return count;
        }
    }

    /// <summary>Whether every row holds at the load that one fixing may have: steady, on the road, not in a crash.</summary>
    public bool Holds
    {
        get
        {
            foreach (PanelFixingRow row in Rows)
            {
                if (!row.Holds)
                {
                    return false;
                }
            }

            return true;
        }
    }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem => Findings[0].Severity == Severity.Problem;

    /// <summary>What a person should know, gravest first.</summary>
    /// <remarks>Codes: <c>panels-fixings-too-weak</c>, <c>panels-fixings-under-gravity</c>, <c>panels-fixings-look-behind</c>, <c>panels-fixings-one-in-row</c>, <c>panels-fixings-row-bears</c>, <c>panels-fixings-road-only</c>.</remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The defaults that the answer rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    private int Hardest
    {
        get
        {
            int hardest = 0;
            for (int i = 1; i < Rows.Count; i++)
            {
                hardest = Rows[i].Greatest > Rows[hardest].Greatest ? i : hardest;
            }

            return hardest;
        }
    }

    /// <summary>How the load of the hardest-worked fixing follows.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        PanelFixings.Solve(_numbers, Hardest, Rows[Hardest].Positions.Count, recorder);
        return recorder.ToWorkings($"Fixings of the row at {Print.Mm(Rows[Hardest].PositionMm)}");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Whether all rows hold (1 or 0), the worst severity, rows, fixings in all and in the fullest row, load of the hardest-worked fixing and what one may have.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        int most = 0;
        foreach (PanelFixingRow row in Rows)
        {
            most = Math.Max(most, row.Positions.Count);
        }

        return
        [
            new("holds", Holds ? 1 : 0, string.Empty),
            PanelFindings.Worst(Findings),
            new("rows", Rows.Count, string.Empty),
            new("fixings", Count, string.Empty),
            new("most-in-row", most, string.Empty),
            new("greatest-load", Rows[Hardest].Greatest, "N"),
            new("hold", _numbers.Hold, "N"),
        ];
    }

    /// <summary>Number and verdict, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Count)} fixings in {Print.Number(Rows.Count)} rows, up to {Print.Round(Rows[Hardest].Greatest, 2)} of {Print.Number(_numbers.Hold)} N each: {(Holds ? "holds" : "does not hold")}";

    private static IReadOnlyList<Finding> FindingsOf(PanelFixingJob job, PanelFixingNumbers numbers, PanelFixingRow[] rows)
    {
        List<Finding> findings = [];
        int bearing = 0;
        foreach (PanelFixingRow row in rows)
        {
            bearing += row.OnlyBears ? 1 : 0;
            if (!row.Holds)
            {
                findings.Add(new Finding(
                    "panels-fixings-too-weak",
                    Severity.Problem,
                    $"The row at {Print.Mm(row.PositionMm)} pulls with {Print.Round(Door.NewtonsPerMillimetre(row.LoadPerLength), 4)} N/mm, and no number of fixings of {Print.Number(numbers.Hold)} N, {Print.Number(PanelFixingDefaults.LeastSpacing)} mm apart or more and {Print.Mm(numbers.Edge)} from the edge, holds it: stronger fixings, less bend, or outer fixings nearer the edge.",
                    [new("position", row.PositionMm, "mm"), new("load-per-length", Door.NewtonsPerMillimetre(row.LoadPerLength), "N/mm"), new("hold", numbers.Hold, "N"), new("least-spacing", PanelFixingDefaults.LeastSpacing, "mm")],
                    PanelFixingDefaults.LeastSpacingSource));
            }
        }

        if (numbers.Mass > 0 && numbers.Acceleration < 1)
        {
            findings.Add(new Finding("panels-fixings-under-gravity", Severity.Caution, $"{Print.Number(numbers.Acceleration)} g is less than gravity, which is to be part of it where a mass hangs.", [new("acceleration", numbers.Acceleration, "g")], Sources.RetentionLoad));
        }

        findings.Add(new Finding(
            "panels-fixings-look-behind",
            Severity.Caution,
            "The places follow from loads alone: at each one look for wires, gas, fuel, brake and water lines, airbags, belt anchorages and glass, and for metal, before drilling.",
            []));
        if (rows[0].Positions.Count == 1)
        {
            findings.Add(new Finding("panels-fixings-one-in-row", Severity.Note, $"Rows of {Print.Mm(numbers.Width)} leave no two places {Print.Mm(numbers.Edge)} from the edges and {Print.Number(PanelFixingDefaults.LeastSpacing)} mm apart: one fixing in the middle, about which the panel can turn.", [new("width", numbers.Width, "mm"), new("edge-distance", numbers.Edge, "mm"), new("least-spacing", PanelFixingDefaults.LeastSpacing, "mm")], PanelFixingDefaults.LeastSpacingSource));
        }

        if (bearing > 0)
        {
            findings.Add(new Finding("panels-fixings-row-bears", Severity.Note, $"{Print.Number(bearing)} of {Print.Number(rows.Length)} rows are not pulled by the bend; they are fixed all the same, against rattling and what hangs.", [new("rows-bearing", bearing, string.Empty)], PanelFixingDefaults.Share));
        }

        if (numbers.Mass > 0)
        {
            findings.Add(new Finding("panels-fixings-road-only", Severity.Note, $"{Print.Number(numbers.Acceleration)} g, gravity included{(job.Acceleration is null ? ", the library's default for a rough road" : string.Empty)}. Nothing here says what holds in a crash.", [new("acceleration", numbers.Acceleration, "g")], Sources.RoadAcceleration));
        }

        return Finding.GravestFirst(findings);
    }
}
