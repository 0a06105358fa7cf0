using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Staples along one edge.</summary>
/// <remarks><see cref="PanelStaples.SetOut"/> makes them.</remarks>
public sealed class StapledEdge
{
    internal StapledEdge(double length, int count, double distance)
    {
        Length = Door.Millimetres(length);
        Count = count;
        Distance = Door.Millimetres(Grid.Snap(distance));
    }

    /// <summary>Length of the edge.</summary>
    public Length Length { get; }

    /// <summary>Staples along it.</summary>
    public int Count { get; }

    /// <summary>From staple to staple; the first and the last stand half of that from the ends.</summary>
    public Length Distance { get; }

    /// <summary>Staples and distance, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Count)} staples {Print.Mm(Door.Millimetres(Distance))} apart along {Print.Mm(Door.Millimetres(Length))}";
}

/// <summary>Staples of wrapped panels: what <see cref="PanelStaples.SetOut"/> answers.</summary>
public sealed class StaplePlan
{
    private readonly StapleNumbers _numbers;
    private readonly double _depth, _left, _leastDepth, _longest;

    internal StaplePlan(StapleJob job, StapleNumbers numbers)
    {
        Job = job;
        _numbers = numbers;
        (_depth, _left, _leastDepth, _longest) = PanelStaples.SolveLeg(numbers, default(Silent));
        List<StapledEdge> edges = [];
        for (int i = 0; i < numbers.Edges.Length; i++)
        {
            (double count, double distance) = PanelStaples.SolveEdge(numbers.Edges[i], numbers.Spacing, i + 1, default(Silent));
            edges.Add(new StapledEdge(numbers.Edges[i], (int)count, distance));
            Count += (int)count;
        }

        Edges = [.. edges];
        Findings = Find();
        List<DefaultUsed> defaults = [];
        Add(job.UnderCrown, "under-crown", numbers.Under, AdhesiveDefaults.CrownSource);
        Add(job.Spacing, "staple-spacing", numbers.Spacing, AdhesiveDefaults.SpacingSource);
        Add(job.Margin, "margin", numbers.Margin, AdhesiveDefaults.MarginSource);
        Add(job.LeastBite, "least-bite", numbers.LeastBite, AdhesiveDefaults.BiteSource);
        DefaultsUsed = [.. defaults];

        void Add(Length? given, string name, double value, Source source)
        {
            if (given is null)
            {
                defaults.Add(new DefaultUsed(new Figure(name, value, "mm"), source));
            }
        }
    }

    /// <summary>The job.</summary>
    public StapleJob Job { get; }

    /// <summary>Each edge, in the job's order.</summary>
    public IReadOnlyList<StapledEdge> Edges { get; }

    /// <summary>Staples of all edges.</summary>
    public int Count { get; }

    /// <summary>How deep the legs go into the ply at most, foam under the crown squeezed to nothing; negative where they do not reach it.</summary>
    public Length Depth => Door.Millimetres(_depth);

    /// <summary>How deep they go at least, the foam under the crown in the way: what the bite is held against. As <see cref="Depth"/> where there is none.</summary>
    public Length LeastDepth => Door.Millimetres(_leastDepth);

    /// <summary>Ply left before the point where it is thinnest; 0 or less: the point comes through.</summary>
    public Length LeftBeforePoint => Door.Millimetres(_left);

    /// <summary>The longest leg that keeps the margin; null where none both keeps it and bites: glue only.</summary>
    public Length? LongestLeg => IsGlueOnly ? null : Door.Millimetres(_longest);

    /// <summary>What a person should know, gravest first.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: a leg comes through the ply or too near to its face.</summary>
    public bool HasProblem => _left < _numbers.Margin || _left <= 0;

    /// <summary>The defaults taken because the job gave no figure of its own.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    private bool IsGlueOnly => Grid.Snap(_numbers.LeastPly - _numbers.Margin - _numbers.Foam) < _numbers.LeastBite;

    /// <summary>How depth, what is left before the point and the staples of each edge follow, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        PanelStaples.SolveLeg(_numbers, recorder);
        for (int i = 0; i < _numbers.Edges.Length; i++)
        {
            PanelStaples.SolveEdge(_numbers.Edges[i], _numbers.Spacing, i + 1, recorder);
        }

        return recorder.ToWorkings("Staples along turned-under edges");
    }

    /// <summary>The plan as flat figures.</summary>
    /// <returns>Staples, the worst severity as the number of its enumeration (0 too where there is no finding), leg, depth and least depth, ply left before the point, longest leg where there is one, and whether only glue will do (1 or 0).</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures =
        [
            new("staples", Count, string.Empty),
            new("worst-severity", Findings.Count == 0 ? 0 : (int)Findings[0].Severity, string.Empty),
            new("leg", _numbers.Leg, "mm"),
            new("depth", _depth, "mm"),
            new("least-depth", _leastDepth, "mm"),
            new("left-before-point", _left, "mm"),
            new("glue-only", IsGlueOnly ? 1 : 0, string.Empty),
        ];
        if (!IsGlueOnly)
        {
            figures.Add(new("longest-leg", _longest, "mm"));
        }

        return [.. figures];
    }

    /// <summary>Staples and what is left before the point, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Count)} staples of {Print.Mm(_numbers.Leg)}, {Print.Mm(_left)} of the thinnest ply before the point";

    private IReadOnlyList<Finding> Find()
    {
        List<Finding> findings = [];
        List<Figure> values = [new("leg", _numbers.Leg, "mm"), new("depth", _depth, "mm"), new("least-depth", _leastDepth, "mm"), new("left-before-point", _left, "mm"), new("margin", _numbers.Margin, "mm"), new("least-bite", _numbers.LeastBite, "mm")];
        if (!IsGlueOnly)
        {
            values.Add(new("longest-leg", _longest, "mm"));
        }

        string foam = _numbers.Foam > 0 ? $", the foam under the crown nothing for the one and {Print.Mm(_numbers.Foam)} for the other" : string.Empty;
        string cure = IsGlueOnly ? $"No leg both keeps the margin of {Print.Mm(_numbers.Margin)} and goes {Print.Mm(_numbers.LeastBite)} into this ply{foam}: glue only." : $"Legs of {Print.Mm(_longest)} or less keep the margin of {Print.Mm(_numbers.Margin)}.";
        if (_left <= 0)
        {
            findings.Add(new Finding(
                "panels-staple-through",
                Severity.Problem,
                $"Legs of {Print.Mm(_numbers.Leg)} go {Print.Mm(_depth)} deep and come through the ply where it is thinnest, {Print.Mm(_numbers.LeastPly)}. {cure}",
                [.. values],
                AdhesiveDefaults.Staples));
        }
        else if (_left < _numbers.Margin)
        {
            findings.Add(new Finding(
                "panels-staple-near-face",
                Severity.Problem,
                $"Legs of {Print.Mm(_numbers.Leg)} leave {Print.Mm(_left)} of the ply where it is thinnest, {Print.Mm(_numbers.LeastPly)}, before the point. {cure}",
                [.. values],
                AdhesiveDefaults.Staples));
        }

        if (_leastDepth < _numbers.LeastBite)
        {
            findings.Add(new Finding(
                "panels-staple-short",
                Severity.Caution,
                $"Legs of {Print.Mm(_numbers.Leg)} go {Print.Mm(Math.Max(0, _leastDepth))} into the ply{(_numbers.Foam > 0 ? " where the foam under the crown stays" : string.Empty)}, under the {Print.Mm(_numbers.LeastBite)} asked. {cure}",
                [.. values],
                AdhesiveDefaults.Staples));
        }

        if (Job.UnderCrown is null)
        {
            double most = Grid.Snap(_leastDepth - _numbers.LeastBite);
            findings.Add(new Finding(
                "panels-staple-under-crown-unknown",
                Severity.Note,
                $"What lies between crown and ply was not given, and nothing is counted: every millimetre of cloth and foam there is one less in the ply. {(most >= 0 ? $"With more than {Print.Mm(most)} under the crown the legs go less deep than the {Print.Mm(_numbers.LeastBite)} asked." : "The legs go less deep than asked even so.")}",
                [new("least-bite", _numbers.LeastBite, "mm"), new("most-under-crown", Math.Max(0, most), "mm")],
                AdhesiveDefaults.CrownSource));
        }

        findings.Add(new Finding(
            "panels-staple-not-counted",
            Severity.Note,
            "The point is held against the face of the ply at its thinnest as given. Tolerance of the legs, and a crown driven into the ply, are not counted: try the gun on an offcut. Staples rust where it condenses; stainless ones do not.",
            []));
        return Finding.GravestFirst(findings);
    }
}
