using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Whether a sheet follows a wall: what <see cref="PanelBend.Judge(BendCase)"/> answers.</summary>
/// <remarks><see cref="PanelBend.Judge(BendCase)"/> makes one.</remarks>
public sealed class BendVerdict
{
    private readonly PanelBendQuestions _questions;
    private readonly BendQuestion _question;
    private readonly BendNumbers _numbers;
    private readonly BendNumbers? _along;
    private readonly DoubleBow _bow;

    internal BendVerdict(BendCase panel, in PanelBendQuestions questions, ArcRows? rows)
    {
        Panel = panel;
        _questions = questions;
        BendQuestion question = _question = questions.Around;
        _bow = questions.Bow;
        _numbers = question.Solve(default(Silent));
        _along = questions.Along?.Solve(default(Silent));
        Follows = questions.Passes;
        OtherGrainFollows = questions.TurnedPasses;
        List<Finding> findings = [];
        PanelFindings.AddTooTight(panel.Sheet, question, _numbers, questions.Turned?.Solve(default(Silent)), OtherGrainFollows, findings);
        PanelFindings.AddBow(questions, _along, findings);
        PanelFindings.AddDouble(_bow, findings);
        PanelFindings.AddRows(question, _numbers, rows, panel.Backing, findings);
        PanelFindings.AddReach(questions.Reach, findings);
        PanelFindings.AddLimit(question.Limit, findings);
        PanelFindings.AddWorking(findings);
        Findings = Finding.GravestFirst(findings);
        List<DefaultUsed> defaults = [];
        if (question.Limit.FactorIsDefault)
        {
            defaults.Add(question.Limit.DefaultFactorUsed);
        }

        if (panel.Rows is null && !question.IsFlat && question.RatioSource == Sources.WorstRows)
        {
            defaults.Add(new DefaultUsed(new Figure("curvature-ratio", ArcRows.WorstRatio, string.Empty), Sources.WorstRows));
        }

        DefaultsUsed = [.. defaults];
    }

    /// <summary>What was asked.</summary>
    public BendCase Panel { get; }

    /// <summary>
    /// Whether the sheet's most bent place is no tighter than <see cref="MinimumRadius"/> allows, dry, around the curve and, with the figures of that direction, along its axis;
    /// three rows at least hold it, within the reach of the formula; and double curvature is within its limit.
    /// </summary>
    public bool Follows { get; }

    /// <summary>Radius of the arc through the sheet's middle, without sign; null where the surface is flat.</summary>
    public Length? MiddleRadius => Mm(_numbers.Middle);

    /// <summary>Greatest curvature of the sheet over that of the arc; 0 where the surface is flat or only two rows hold it.</summary>
    public double CurvatureRatio => _question.IsFlat ? 0 : _question.Ratio;

    /// <summary>The tightest radius that the sheet takes anywhere, to its middle: the one that must pass. Null where it stays straight.</summary>
    public Length? PeakRadius => Mm(_numbers.Peak);

    /// <summary>The elastic limit with its factor.</summary>
    public Length ElasticRadius => Door.Millimetres(Grid.Snap(_numbers.Elastic));

    /// <summary>The published radius given, or null.</summary>
    public Length? PublishedRadius => Mm(_question.Limit.Published);

    /// <summary>The radius that must not be undercut: the greater of the two.</summary>
    public Length MinimumRadius => Door.Millimetres(Grid.Snap(_numbers.Minimum));

    /// <summary>Which of the two governs.</summary>
    public BendBasis Governs => _question.Limit.Basis;

    /// <summary>Peak radius over minimum radius: at least 1 where it passes; null where the sheet stays straight.</summary>
    public double? Margin => double.IsNaN(_numbers.Margin) ? null : _numbers.Margin;

    /// <summary>The tightest radius that the sheet takes along the axis of the curve, to its middle; null where the surface is straight that way.</summary>
    public Length? BowPeakRadius => _along is { } along ? Mm(along.Peak) : null;

    /// <summary>The radius that must not be undercut along the axis; null where the surface is straight that way.</summary>
    public Length? BowMinimumRadius => _along is { } along ? Mm(along.Minimum) : null;

    /// <summary>Where the sheet came from a table: whether it would follow with its grain turned, both ways; else null.</summary>
    public bool? OtherGrainFollows { get; }

    /// <summary>How much of what double curvature may take is taken; null where the surface is straight one way. Over 1 is refused.</summary>
    public double? DoubleCurvatureShare => _bow.Asked ? _bow.Share : null;

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: whether it does not follow.</summary>
    public bool HasProblem => !Follows;

    /// <summary>What a person should know about the verdict, gravest first.</summary>
    /// <remarks>
    /// Codes: <c>panels-bend-too-tight</c>, <c>panels-bow-too-tight</c>, <c>panels-double-curvature</c>, <c>panels-not-held</c>, <c>panels-bay-too-long</c>, <c>panels-bow-figures</c>,
    /// <c>panels-bay-not-shallow</c>, <c>panels-bend-factor-low</c>, <c>panels-rows-unknown</c>, <c>panels-published-condition</c>, <c>panels-allowable-strength</c>, <c>panels-bend-dry</c>, <c>panels-cutting-dust</c>.
    /// </remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The defaults that the verdict rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    /// <summary>How the verdict comes about, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        _question.Solve(recorder);
        _questions.Along?.Solve(recorder);
        if (_bow.Asked)
        {
            _bow.Solve(recorder);
        }

        return recorder.ToWorkings("Sheet bent onto a wall");
    }

    /// <summary>The verdict as flat figures.</summary>
    /// <returns>Follows (1 or 0), the worst severity as the number of its enumeration, minimum, elastic and published radius, curvature ratio, radii and margin where the sheet is bent, and the same along the axis where it bows.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures =
        [
            new("follows", Follows ? 1 : 0, string.Empty),
            PanelFindings.Worst(Findings),
            new("minimum-radius", Door.Millimetres(MinimumRadius), "mm"),
            new("elastic-radius", Door.Millimetres(ElasticRadius), "mm"),
            new("curvature-ratio", CurvatureRatio, string.Empty),
        ];
        PanelFindings.AddFigure(figures, "published-radius", _question.Limit.Published, "mm");
        PanelFindings.AddFigure(figures, "middle-radius", _numbers.Middle, "mm");
        PanelFindings.AddFigure(figures, "peak-radius", _numbers.Peak, "mm");
        PanelFindings.AddFigure(figures, "margin", _numbers.Margin, string.Empty);
        if (_along is { } along)
        {
            PanelFindings.AddFigure(figures, "bow-peak-radius", along.Peak, "mm");
            PanelFindings.AddFigure(figures, "bow-minimum-radius", along.Minimum, "mm");
            PanelFindings.AddFigure(figures, "bow-margin", along.Margin, string.Empty);
        }

        if (_bow.Asked)
        {
            figures.Add(new Figure("double-curvature-share", _bow.Share, string.Empty));
        }

        return figures;
    }

    /// <summary>Verdict with radii and basis, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string limit = $"{Print.MmUp(_numbers.Minimum)} ({PanelFindings.Words(_question.Limit)})";
        return double.IsNaN(_numbers.Peak)
            ? $"{PanelFindings.SheetWords(Panel.Sheet)} stays straight{(Follows ? string.Empty : " and does not follow")}; may be bent to {limit}"
            : $"{PanelFindings.SheetWords(Panel.Sheet)} {(Follows ? "follows" : "does not follow")}: peaks at {Print.Mm(_numbers.Peak)}, may be bent to {limit}";
    }

    private static Length? Mm(double millimetres) => double.IsNaN(millimetres) ? null : Door.Millimetres(Grid.Snap(millimetres));
}
