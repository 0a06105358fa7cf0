using System.Collections.Generic;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>One length of machine screw tried in a rivet nut.</summary>
public sealed class RivetNutScrew
{
    private readonly RivetNutNumbers _job;
    private readonly RivetNutSum _sum;

    internal RivetNutScrew(RivetNutNumbers job, double length, in RivetNutSum sum)
    {
        _job = job;
        _sum = sum;
        Mm = length;
    }

    /// <summary>The length.</summary>
    public Length Length => Door.Millimetres(Mm);

    /// <summary>Thread that screw and nut share with every tolerance against you.</summary>
    public Length WorstEngagement => Door.Millimetres(_sum.Shared);

    /// <summary>From the tip, or from the nut's end where that is deeper, to what is behind, with every tolerance against you.</summary>
    public Length WorstClearance => Door.Millimetres(_sum.Clearance);

    /// <summary>Whether the shared thread is enough.</summary>
    public bool ThreadHolds => _sum.Shared >= _job.Needed;

    /// <summary>Whether tip and nut keep the clearance asked and do not touch what is behind.</summary>
    public bool StaysClear => _sum.Clearance >= _job.Required && _sum.Clearance > 0;

    /// <summary>Both, and the head stays on the panel.</summary>
    public bool MayBeDriven => ThreadHolds && StaysClear && !_job.HeadGoesThrough;

    internal double Mm { get; }

    internal double SharedMm => _sum.Shared;

    /// <summary>Length and the two verdicts, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Mm(Mm)} screw: {Print.Mm(_sum.Shared)} of thread shared in the worst case, {Print.Mm(_job.Needed)} asked: {(ThreadHolds ? "holds" : "too short")}; {Print.Mm(_sum.Clearance)} clear of {_job.BehindWords} in the worst case, {Print.Mm(_job.Required)} asked: {(StaysClear ? "stays clear" : "comes too near")}";
}

/// <summary>Whether a rivet nut suits, and which screw goes into it: what <see cref="RivetNut.Fit(RivetNutJob)"/> answers.</summary>
/// <remarks><see cref="RivetNut.Fit(RivetNutJob)"/> makes one.</remarks>
public sealed class RivetNutFit
{
    private readonly RivetNutNumbers _numbers;

    internal RivetNutFit(RivetNutJob job, RivetNutNumbers numbers, List<RivetNutScrew> tried)
    {
        Job = job;
        _numbers = numbers;
        Tried = [.. tried];
        Chosen = GripFits && GoesIn != false ? tried.Find(static screw => screw.MayBeDriven) : null;
        Findings = RivetNutFindings.Of(this, numbers);
        DefaultsUsed = RivetNutFindings.Defaults(job, numbers);
    }

    /// <summary>What was asked.</summary>
    public RivetNutJob Job { get; }

    /// <summary>What the nut clamps at nominal sizes: metal, paint and mating sheet.</summary>
    public Length Grip => Door.Millimetres(_numbers.Grip);

    /// <summary>Whether all of that, at its thinnest and at its thickest, is within the nut's grip.</summary>
    public bool GripFits => _numbers.LeastGrip >= Job.Nut.LeastGripMm && _numbers.MostGrip <= Job.Nut.MostGripMm;

    /// <summary>Whether the nut, pushed in before it is set, keeps the clearance asked and does not touch what is behind; null where its depth was not given.</summary>
    public bool? GoesIn => double.IsNaN(_numbers.Unset) ? null : _numbers.UnsetClearance >= _numbers.Required && _numbers.UnsetClearance > 0;

    /// <summary>Hole for the nut.</summary>
    public Length Hole => Job.Nut.Hole;

    /// <summary>The shortest length that may be driven, or null: then <see cref="Findings"/> says why.</summary>
    public RivetNutScrew? Chosen { get; }

    /// <summary>Every stocked length, shortest first.</summary>
    public IReadOnlyList<RivetNutScrew> Tried { get; }

    /// <summary>Thread that screw and nut must share.</summary>
    public Length NeededEngagement => Door.Millimetres(_numbers.Needed);

    /// <summary>The clearance that the worst case must keep.</summary>
    public Length RequiredClearance => Door.Millimetres(_numbers.Required);

    /// <summary>What one nut may be loaded with in this metal: what was given, or what its thread bears (<see cref="ThreadHold"/>) where that is known and less; null where none was given.</summary>
    public Force? Hold => double.IsNaN(_numbers.Hold) ? null : new Force(HoldN, ForceUnit.Newton);

    /// <summary>What the thread of the nut may be loaded with along its axis by the thread shared in the worst case with the screw chosen, or else spoken of: a third of what strips it, and not what holds the nut in the sheet; null without pitch and strength.</summary>
    public Force? ThreadHold => double.IsNaN(ThreadN) ? null : new Force(ThreadN, ForceUnit.Newton);

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem => Findings[0].Severity == Severity.Problem;

    /// <summary>What a person should know, gravest first.</summary>
    /// <remarks>
    /// Codes: <c>fastening-rivet-grip</c>, <c>fastening-rivet-no-room</c>, <c>fastening-rivet-head-through</c>, <c>fastening-rivet-none-fits</c>, <c>fastening-rivet-look-behind</c>,
    /// <c>fastening-rivet-thread-strips</c>, <c>fastening-rivet-unset-unknown</c>, <c>fastening-rivet-from-memory</c>, <c>fastening-rivet-hold-unknown</c>, <c>fastening-rivet-paint</c>, <c>fastening-metal-swarf</c>.
    /// </remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The defaults that the answer rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    internal double ThreadN => double.IsNaN(_numbers.Strength) ? double.NaN : RivetNut.SolveThread(Job.Nut.ThreadMm, _numbers.Pitch, Shown.SharedMm, _numbers.Strength, default(Silent));

    private double HoldN => ThreadN < _numbers.Hold ? ThreadN : _numbers.Hold;

    /// <summary>The length to speak of: the one chosen, else the longest that stays clear, else the shortest.</summary>
    internal RivetNutScrew Shown
    {
        get
        {
            RivetNutScrew shown = Tried[0];
            foreach (RivetNutScrew screw in Tried)
            {
                shown = screw.StaysClear ? screw : shown;
            }

            return Chosen ?? shown;
        }
    }

    /// <summary>How the worst cases of the screw chosen, else of the longest that stays clear, else of the shortest follow.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        RivetNut.Solve(_numbers, Shown.Mm, recorder);
        if (!double.IsNaN(_numbers.Strength))
        {
            RivetNut.SolveThread(Job.Nut.ThreadMm, _numbers.Pitch, Shown.SharedMm, _numbers.Strength, recorder);
        }

        return recorder.ToWorkings($"{Print.Mm(Shown.Mm)} screw in a rivet nut");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Whether one was chosen and the grip fits (1 or 0), the worst severity, grip, hole; then length, shared thread and clearance of the one chosen, or else spoken of; hold, and hold of the thread, where known.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures =
        [
            new("chosen", Chosen is null ? 0 : 1, string.Empty),
            new("worst-severity", (int)Findings[0].Severity, string.Empty),
            new("grip-fits", GripFits ? 1 : 0, string.Empty),
            new("grip", _numbers.Grip, "mm"),
            new("hole", Door.Millimetres(Hole), "mm"),
            new("length", Shown.Mm, "mm"),
            new("worst-engagement", Door.Millimetres(Shown.WorstEngagement), "mm"),
            new("needed-engagement", _numbers.Needed, "mm"),
            new("worst-clearance", Door.Millimetres(Shown.WorstClearance), "mm"),
            new("required-clearance", _numbers.Required, "mm"),
        ];
        if (!double.IsNaN(_numbers.Hold))
        {
            figures.Add(new Figure("hold", HoldN, "N"));
        }

        if (!double.IsNaN(_numbers.Strength))
        {
            figures.Add(new Figure("thread-hold", ThreadN, "N"));
        }

        return figures;
    }

    /// <summary>The answer in a line, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Chosen is null ? $"{Job.Nut.Name}: none. {Findings[0].Message}" : $"{Job.Nut.Name}: {Chosen}";
}
