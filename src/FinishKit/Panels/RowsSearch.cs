using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>How few equal rows let a sheet follow a wall: what <see cref="HoldDown.LeastEqualRows(BentSheet, Length?)"/> answers.</summary>
/// <remarks><see cref="HoldDown.LeastEqualRows(BentSheet, Length?)"/> makes one.</remarks>
public sealed class RowsSearch
{
    private readonly BendLimit _limit;
    private readonly double _wall;
    private readonly RowsTried _shown;

    internal RowsSearch(BentSheet sheet, in BendLimit limit, double wall, List<RowsTried> tried)
    {
        Sheet = sheet;
        _limit = limit;
        _wall = wall;
        Tried = [.. tried];
        RowsTried best = tried[0];
        foreach (RowsTried one in tried)
        {
            if (one.Passes && Rows is null)
            {
                Rows = one.Rows;
                best = one;
            }
            else if (Rows is null && one.CurvatureRatio < best.CurvatureRatio)
            {
                best = one;
            }
        }

        _shown = best;
        List<Finding> findings = [];
        PanelFindings.AddTooTight(sheet, best.Question, best.Numbers, null, null, findings);
        PanelFindings.AddLimit(limit, findings);
        Findings = Finding.GravestFirst(findings);
        DefaultsUsed = limit.FactorIsDefault ? [limit.DefaultFactorUsed] : [];
    }

    /// <summary>The sheet.</summary>
    public BentSheet Sheet { get; }

    /// <summary>The least number of equal rows, 3 to 12, with which the sheet follows; null where none does. A flat surface asks for the least tried.</summary>
    public int? Rows { get; }

    /// <summary>Every number tried, 3 to 12.</summary>
    public IReadOnlyList<RowsTried> Tried { get; }

    /// <summary>The radius that the sheet must not undercut.</summary>
    public Length MinimumRadius => Door.Millimetres(Grid.Snap(_limit.Minimum));

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: whether no number will do.</summary>
    public bool HasProblem => Rows is null;

    /// <summary>What a person should know about the answer, gravest first.</summary>
    /// <remarks>Codes: <c>panels-bend-too-tight</c>, <c>panels-bend-factor-low</c>, <c>panels-published-condition</c>, <c>panels-allowable-strength</c>, <c>panels-bend-dry</c>.</remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The defaults that the answer rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    /// <summary>How the peak radius of the number found, or of the best there is, comes about.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        _shown.Question.Solve(recorder);
        return recorder.ToWorkings("Sheet held to a wall by " + Print.Number(_shown.Rows) + " equal rows");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>The worst severity as the number of its enumeration; rows where some will do; minimum radius, curvature ratio and peak radius of that number, or of the best there is.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures = [PanelFindings.Worst(Findings), new("minimum-radius", Door.Millimetres(MinimumRadius), "mm"), new("curvature-ratio", _shown.CurvatureRatio, string.Empty)];
        PanelFindings.AddFigure(figures, "peak-radius", _shown.Numbers.Peak, "mm");
        PanelFindings.AddFigure(figures, "rows", Rows ?? double.NaN, string.Empty);
        return figures;
    }

    /// <summary>The number, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Rows is { } rows
        ? $"{Print.Number(rows)} equal rows hold {PanelFindings.SheetWords(Sheet)} to {PanelFindings.Surface(_wall)}"
        : $"no number of equal rows up to {Print.Number(Tried[Tried.Count - 1].Rows)} lets {PanelFindings.SheetWords(Sheet)} follow {PanelFindings.Surface(_wall)}";
}

/// <summary>One number of equal rows tried.</summary>
public sealed class RowsTried
{
    internal RowsTried(int rows, in BendQuestion question, in BendNumbers numbers)
    {
        Rows = rows;
        Question = question;
        Numbers = numbers;
    }

    /// <summary>How many rows.</summary>
    public int Rows { get; }

    /// <summary>Greatest curvature of the sheet over that of the arc.</summary>
    public double CurvatureRatio => Question.Ratio;

    /// <summary>The tightest radius that the sheet takes; null where the surface is flat.</summary>
    public Length? PeakRadius => double.IsNaN(Numbers.Peak) ? null : Door.Millimetres(Grid.Snap(Numbers.Peak));

    /// <summary>Whether that is no less than the minimum radius.</summary>
    public bool Passes => Numbers.Passes;

    internal BendQuestion Question { get; }

    internal BendNumbers Numbers { get; }

    /// <summary>Rows and peak radius, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Rows)} rows: {(double.IsNaN(Numbers.Peak) ? "flat" : "peaks at " + Print.Mm(Numbers.Peak))}, {(Passes ? "passes" : "too tight")}";
}
