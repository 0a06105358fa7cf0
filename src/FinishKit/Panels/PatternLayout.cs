using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Where a piece of cloth starts in the pattern.</summary>
/// <remarks><see cref="PatternMatch.Lay"/> makes them.</remarks>
public sealed class PatternPiece
{
    internal PatternPiece(CoverPiece piece, long offsetAcross, long offsetAlong, long extra)
    {
        Piece = piece;
        (AcrossNm, AlongNm) = (offsetAcross, offsetAlong);
        Extra = WrapPlan.Mm(extra);
    }

    /// <summary>The piece.</summary>
    public CoverPiece Piece { get; }

    /// <summary>Across the roll: from the motif line before it to the piece's front edge (its lower one where the roll runs along the row), 0 up to the repeat.</summary>
    public Length OffsetAcross => WrapPlan.Mm(AcrossNm);

    /// <summary>Along the roll: from the motif line before it to the piece's lower edge (its front one where the roll runs along the row), 0 up to the repeat.</summary>
    public Length OffsetAlong => WrapPlan.Mm(AlongNm);

    /// <summary>Cloth skipped before it when pieces are cut one after another along the roll, front to rear.</summary>
    public Length Extra { get; }

    internal long AcrossNm { get; }

    internal long AlongNm { get; }

    /// <summary>Name and offsets, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Piece.Name}: starts {Print.Mm(Grid.Millimetres(AcrossNm))} into the repeat across, {Print.Mm(Grid.Millimetres(AlongNm))} along, {Print.Mm(Door.Millimetres(Extra))} skipped";
}

/// <summary>A row's pieces laid on a pattern: what <see cref="PatternMatch.Lay"/> answers.</summary>
public sealed class PatternLayout
{
    private readonly long _length, _plain;
    private readonly bool _runsAlong;

    internal PatternLayout(PatternJob job)
    {
        Job = job;
        _runsAlong = job.Plan.Build.RunsAlong;
        long repeatAlong = Grid.Nanometres(Door.Millimetres(job.RepeatAlong)), end = 0, plain = 0;
        List<PatternPiece> pieces = [];
        List<CoverPiece> blocks = [];
        for (int i = 0; i < job.Plan.Panels.Count; i++)
        {
            CoverPiece piece = job.Plan.ClothPieces[i];
            (long offsetAcross, long blockAcross) = Solve(i, isAlong: false, default(Silent));
            (long offsetAlong, long blockAlong) = Solve(i, isAlong: true, default(Silent));
            long extra = repeatAlong == 0 ? 0 : Rest(offsetAlong - end, repeatAlong);
            end += extra + piece.AlongNm;
            plain += piece.AlongNm;
            pieces.Add(new PatternPiece(piece, offsetAcross, offsetAlong, extra));
            blocks.Add(new CoverPiece(piece.Name, blockAcross, blockAlong, piece.Arrow, isTurnable: false));
        }

        (_length, _plain) = (end, plain);
        Pieces = [.. pieces];
        Blocks = [.. blocks];
        Findings = Find();
    }

    /// <summary>The job.</summary>
    public PatternJob Job { get; }

    /// <summary>The pieces, front to rear.</summary>
    public IReadOnlyList<PatternPiece> Pieces { get; }

    /// <summary>Whole repeats that hold each piece from the start of a repeat: packed on the roll at sums of other blocks they keep the match, not turned.</summary>
    public IReadOnlyList<CoverPiece> Blocks { get; }

    /// <summary>Length of roll with the pieces cut one after another, front to rear, from the start of a repeat.</summary>
    public Length LengthInOrder => WrapPlan.Mm(_length);

    /// <summary>The same length without regard to the pattern.</summary>
    public Length LengthWithoutPattern => WrapPlan.Mm(_plain);

    /// <summary>What matching takes of it: the extras.</summary>
    public Length Waste => WrapPlan.Mm(_length - _plain);

    /// <summary>What a person should know, gravest first.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: a piece passes the roll's edge.</summary>
    public bool HasProblem => Findings.Count > 0 && Findings[0].Severity >= Severity.Problem;

    /// <summary>How the offsets of the pieces follow, across the roll and then along it, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        for (int i = 0; i < Pieces.Count; i++)
        {
            Solve(i, isAlong: false, recorder);
            Solve(i, isAlong: true, recorder);
        }

        return recorder.ToWorkings("Pattern over a row of panels");
    }

    /// <summary>The layout as flat figures.</summary>
    /// <returns>Pieces, length in order, without pattern, waste, its share, and the worst severity as the number of its enumeration (0 too where there is no finding).</returns>
    public IReadOnlyList<Figure> Figures() =>
    [
        new("pieces", Pieces.Count, string.Empty),
        new("length-in-order", Grid.Millimetres(_length), "mm"),
        new("length-without-pattern", Grid.Millimetres(_plain), "mm"),
        new("waste", Grid.Millimetres(_length - _plain), "mm"),
        new("waste-share", (double)(_length - _plain) / _length, string.Empty),
        new("worst-severity", Findings.Count == 0 ? 0 : (int)Findings[0].Severity, string.Empty),
    ];

    /// <summary>Pieces, length and waste, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Pieces.Count)} pieces in {Print.Mm(Grid.Millimetres(_length))} of roll, {Print.Mm(Grid.Millimetres(_length - _plain))} of it to match the pattern";

    private static long Rest(long value, long repeat) => ((value % repeat) + repeat) % repeat;

    private (long Offset, long Block) Solve<TTrace>(int panel, bool isAlong, TTrace trace)
        where TTrace : struct, ITrace
    {
        WrapPlan plan = Job.Plan;
        WrappedPanel at = plan.Panels[panel];
        bool isUpright = isAlong != _runsAlong;
        long start, motif, size;
        if (isUpright)
        {
            long gap = Grid.Nanometres(plan.Numbers.Make.Gap);
            start = gap + at.Upright.FirstGrowth - at.Upright.FirstReach;
            motif = gap + (at.HeightNm / 2);
            size = at.Upright.Cloth;
        }
        else
        {
            start = at.StartNm + at.Sides.FirstGrowth - at.Sides.FirstReach;
            motif = Job.CentredOnPanel is { } centre ? plan.Panels[centre].StartNm + (plan.Panels[centre].FinishedNm / 2) : plan.Numbers.OpeningWidth / 2;
            size = at.Sides.Cloth;
        }

        long repeat = Grid.Nanometres(Door.Millimetres(isAlong ? Job.RepeatAlong : Job.RepeatAcross));
        long whole = repeat == 0 ? 0 : (start - motif - Rest(start - motif, repeat)) / repeat;
        int index = (2 * panel) + (isAlong ? 2 : 1);
        (double offset, double block) = PatternMatch.Solve(Grid.Millimetres(start), Grid.Millimetres(motif), Grid.Millimetres(repeat), Grid.Millimetres(size), whole, index, trace);
        return (Grid.Nanometres(offset), Grid.Nanometres(block));
    }

    private IReadOnlyList<Finding> Find()
    {
        List<Finding> findings = [];
        double repeatAlong = Door.Millimetres(Job.RepeatAlong), repeatAcross = Door.Millimetres(Job.RepeatAcross);
        if (Job.RollWidth is { } given)
        {
            double roll = Door.Millimetres(given), widest = 0;
            string name = string.Empty;
            foreach (PatternPiece piece in Pieces)
            {
                if (Grid.Millimetres(piece.AcrossNm + piece.Piece.AcrossNm) is var needed && needed > widest)
                {
                    (widest, name) = (needed, piece.Piece.Name);
                }
            }

            if (widest > roll)
            {
                findings.Add(new Finding(
                    "panels-pattern-wider-than-roll",
                    Severity.Problem,
                    $"From the start of a repeat at the selvedge the piece {name} needs {Print.Mm(widest)} of the roll's {Print.Mm(roll)}: centre the pattern elsewhere, make the panel narrower, or run the roll the other way.",
                    [new("needed-width", widest, "mm"), new("roll-width", roll, "mm")],
                    PatternMatch.Matching));
            }
        }

        if (Job.Plan.Build.Nap is NapDirection.Unknown or NapDirection.None && repeatAlong + repeatAcross > 0)
        {
            findings.Add(new Finding(
                "panels-pattern-no-arrow",
                Severity.Caution,
                $"The cloth was given no arrow: its pattern is laid with the roll running {(_runsAlong ? "along the van" : "up the panels")}, and a pattern locks the pieces whatever the nap.",
                []));
        }

        if (repeatAlong > 0)
        {
            findings.Add(new Finding(
                "panels-pattern-extra",
                Severity.Note,
                $"Matching takes {Print.Mm(Grid.Millimetres(_length - _plain))} more of the roll than the pieces are long, and up to another {Print.Mm(repeatAlong)} where the roll does not begin with a repeat.",
                [new("waste", Grid.Millimetres(_length - _plain), "mm"), new("repeat-along", repeatAlong, "mm")],
                PatternMatch.Matching));
        }

        return Finding.GravestFirst(findings);
    }
}
