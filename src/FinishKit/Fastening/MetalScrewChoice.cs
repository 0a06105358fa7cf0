using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Which tapping screw fixes a panel to thin metal, and what it holds: what <see cref="MetalScrew.Choose(MetalScrewJob)"/> answers.</summary>
/// <remarks><see cref="MetalScrew.Choose(MetalScrewJob)"/> makes one.</remarks>
public sealed class MetalScrewChoice
{
    private readonly MetalScrewNumbers _numbers;

    internal MetalScrewChoice(MetalScrewJob job, MetalScrewNumbers numbers, List<MetalScrewLength> tried)
    {
        Job = job;
        _numbers = numbers;
        Tried = [.. tried];
        Chosen = tried.Find(static screw => screw.MayBeDriven);
        if (!double.IsNaN(numbers.Strength))
        {
            MetalHold = new SheetHold(isPullOver: false, numbers.Metal.Least, numbers.Diameter, numbers.Strength);
        }

        Findings = MetalScrewFindings.Of(this, numbers);
        DefaultsUsed = MetalScrewFindings.Defaults(job, numbers, Shown.Span);
    }

    /// <summary>What was asked.</summary>
    public MetalScrewJob Job { get; }

    /// <summary>The shortest length that may be driven, or null: then <see cref="Findings"/> says why.</summary>
    public MetalScrewLength? Chosen { get; }

    /// <summary>Every stocked length, shortest first.</summary>
    public IReadOnlyList<MetalScrewLength> Tried { get; }

    /// <summary>What must be beyond the metal: the pitches asked and the point.</summary>
    public Length NeededBeyondMetal => Door.Millimetres(_numbers.NeededBeyond);

    /// <summary>The clearance that the worst case must keep.</summary>
    public Length RequiredClearance => Door.Millimetres(_numbers.Required);

    /// <summary>The greatest actual length that keeps that clearance in the worst case; null where none over 0 does.</summary>
    public Length? LongestClear => _numbers.LongestClear > 0 ? Door.Millimetres(_numbers.LongestClear) : null;

    /// <summary>The least actual length that has the thread beyond the metal in the worst case.</summary>
    public Length ShortestThatHolds => Door.Millimetres(_numbers.ShortestThatHolds);

    /// <summary>What the metal holds at its least thickness; null without its strength.</summary>
    public SheetHold? MetalHold { get; }

    /// <summary>What one screw may be loaded with along its axis: the lesser of what the metal and the head hold, the head only where it was given; null without the metal's strength.</summary>
    public Force? Hold => MetalHold is { } metal ? Door.Newtons(double.IsNaN(_numbers.Head) ? metal.AllowableNewtons : Math.Min(metal.AllowableNewtons, _numbers.Head)) : null;

    /// <summary>Drill for the pilot hole: the one given, or a published one; null where the screw is not listed.</summary>
    public Length? PilotHole => double.IsNaN(_numbers.PilotHole) ? null : Door.Millimetres(_numbers.PilotHole);

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem => Findings.Count > 0 && Findings[0].Severity == Severity.Problem;

    /// <summary>What a person should know, gravest first.</summary>
    /// <remarks>
    /// Codes: <c>fastening-metal-head-through</c>, <c>fastening-metal-none-fits</c>, <c>fastening-metal-part-thread</c>, <c>fastening-metal-strips</c>, <c>fastening-metal-look-behind</c>,
    /// <c>fastening-metal-head-unknown</c>, <c>fastening-metal-hold-unknown</c>, <c>fastening-metal-pilot-hole</c>, <c>fastening-metal-swarf</c>, and those of <see cref="SheetHold"/>.
    /// </remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The defaults that the answer rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    /// <summary>The length to speak of: the one chosen, else the longest that stays clear, else the shortest.</summary>
    private MetalScrewLength Shown
    {
        get
        {
            MetalScrewLength shown = Tried[0];
            foreach (MetalScrewLength screw in Tried)
            {
                shown = screw.StaysClear ? screw : shown;
            }

            return Chosen ?? shown;
        }
    }

    /// <summary>How the figures of the length chosen, else of the longest that stays clear, else of the shortest follow. What the metal holds, <see cref="MetalHold"/> explains.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        MetalScrew.Solve(_numbers, Shown.Span, recorder);
        return recorder.ToWorkings($"{Print.Mm(Shown.Span.Nominal)} screw through a panel into metal");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Whether one was chosen (1 or 0), the worst severity, how many were tried; then length, thread beyond and clearance of the one chosen, or else spoken of; hold and pilot hole where known.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        MetalScrewLength shown = Shown;
        List<Figure> figures =
        [
            new("chosen", Chosen is null ? 0 : 1, string.Empty),
            new("worst-severity", (int)Findings[0].Severity, string.Empty),
            new("tried", Tried.Count, string.Empty),
            new("length", shown.Span.Nominal, "mm"),
            new("beyond-metal", Door.Millimetres(shown.BeyondMetal), "mm"),
            new("worst-beyond-metal", Door.Millimetres(shown.WorstBeyondMetal), "mm"),
            new("needed-beyond-metal", _numbers.NeededBeyond, "mm"),
            new("clearance", Door.Millimetres(shown.Clearance), "mm"),
            new("worst-clearance", Door.Millimetres(shown.WorstClearance), "mm"),
            new("required-clearance", _numbers.Required, "mm"),
            new("shortest-that-holds", _numbers.ShortestThatHolds, "mm"),
        ];
        if (LongestClear is { } longest)
        {
            figures.Add(new Figure("longest-clear", Door.Millimetres(longest), "mm"));
        }

        if (Hold is { } hold)
        {
            figures.Add(new Figure("hold", Door.Newtons(hold), "N"));
        }

        if (PilotHole is { } hole)
        {
            figures.Add(new Figure("pilot-hole", Door.Millimetres(hole), "mm"));
        }

        return figures;
    }

    /// <summary>The choice in a line, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Chosen is null ? $"none. {Findings[0].Message}" : Chosen.ToString();
}
