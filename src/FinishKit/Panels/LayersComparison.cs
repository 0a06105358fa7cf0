using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Thin layers against one thick sheet: what <see cref="Lamination.Compare(LayersOrSheet)"/> answers.</summary>
/// <remarks><see cref="Lamination.Compare(LayersOrSheet)"/> makes one.</remarks>
public sealed class LayersComparison
{
    private readonly ComparisonQuestion _question;
    private readonly BendNumbers _layer, _sheet;
    private readonly double _loose, _glued;

    internal LayersComparison(LayersOrSheet choice, in ComparisonQuestion question)
    {
        Choice = choice;
        _question = question;
        _layer = question.Layer.Solve(default(Silent));
        _sheet = question.Sheet.Solve(default(Silent));
        (_loose, _glued) = question.Solve(default(Silent));
        bool reaches = !question.Reach.IsOutside;
        LayersFollow = _layer.Passes && reaches;
        SheetFollows = _sheet.Passes && reaches;
        Findings = FindAll();
        List<DefaultUsed> defaults = [];
        PanelFindings.AddFactors([question.Layer.Limit, question.Sheet.Limit], defaults);
        if (question.RatioIsDefault)
        {
            defaults.Add(LaminationDefaults.StretchRatioUsed);
        }

        if (question.Rows is null && !question.Sheet.IsFlat)
        {
            defaults.Add(new DefaultUsed(new Figure("curvature-ratio", ArcRows.WorstRatio, string.Empty), Sources.WorstRows));
        }

        DefaultsUsed = [.. defaults];
    }

    /// <summary>What was asked.</summary>
    public LayersOrSheet Choice { get; }

    /// <summary>Whether every layer follows the surface.</summary>
    public bool LayersFollow { get; }

    /// <summary>Whether the one sheet follows the surface.</summary>
    public bool SheetFollows { get; }

    /// <summary>Thickness of all layers.</summary>
    public Length LayersThickness => Door.Millimetres(Grid.Snap(_question.Thickness));

    /// <summary>Thickness of the one sheet.</summary>
    public Length SheetThickness => Door.Millimetres(Grid.Snap(_question.Sheet.Limit.Thickness));

    /// <summary>The radius that a layer should not undercut, to its middle.</summary>
    public Length LayerMinimumRadius => Door.Millimetres(Grid.Snap(_layer.Minimum));

    /// <summary>The radius that the sheet should not undercut, to its middle.</summary>
    public Length SheetMinimumRadius => Door.Millimetres(Grid.Snap(_sheet.Minimum));

    /// <summary>The tightest radius that a layer takes; null where they stay straight.</summary>
    public Length? LayerPeakRadius => Mm(_layer.Peak);

    /// <summary>The tightest radius that the sheet takes; null where it stays straight.</summary>
    public Length? SheetPeakRadius => Mm(_sheet.Peak);

    /// <summary>Bending stiffness of loose layers, which slide on each other, over that of the sheet.</summary>
    public double LooseStiffnessRatio => _loose;

    /// <summary>Bending stiffness of layers glued all over, over that of the sheet; of plywood without <see cref="LayersOrSheet.StretchRatio"/> that of solid layers, and a caution says so.</summary>
    public double GluedStiffnessRatio => _glued;

    /// <summary>Mass of the layers over that of the sheet, both of one density: the ratio of their thicknesses.</summary>
    public double MassRatio => _question.Thickness / _question.Sheet.Limit.Thickness;

    /// <summary>Mass of a square metre of all layers, glue not counted; null where no density was given.</summary>
    public Mass? LayersSquareMetreMass => Kilograms(_question.Thickness);

    /// <summary>Mass of a square metre of the sheet; null where no density was given.</summary>
    public Mass? SheetSquareMetreMass => Kilograms(_question.Sheet.Limit.Thickness);

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: neither follows.</summary>
    public bool HasProblem => !LayersFollow && !SheetFollows;

    /// <summary>What a person should know, gravest first.</summary>
    /// <remarks>
    /// Codes: <c>panels-layers-neither</c>, <c>panels-bay-too-long</c>, <c>panels-layers-fail</c>, <c>panels-bay-not-shallow</c>, <c>panels-bend-factor-low</c>, <c>panels-layers-sheet-fails</c>, <c>panels-lamination-ply</c>, <c>panels-layers-slide</c>, <c>panels-rows-unknown</c>,
    /// <c>panels-published-condition</c>, <c>panels-allowable-strength</c>, <c>panels-bend-dry</c>, <c>panels-cutting-dust</c>.
    /// </remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The defaults that the comparison rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    /// <summary>How the radii of a layer, then those of the sheet, and the stiffnesses come about, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        _question.Layer.Solve(recorder);
        _question.Sheet.Solve(recorder);
        _question.Solve(recorder);
        return recorder.ToWorkings("Thin layers against one thick sheet");
    }

    /// <summary>The comparison as flat figures.</summary>
    /// <returns>Which follow (1 or 0), thicknesses, least radii, stiffness and mass ratios, and peak radii and masses of a square metre where there are any.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures =
        [
            new("layers-follow", LayersFollow ? 1 : 0, string.Empty),
            new("sheet-follows", SheetFollows ? 1 : 0, string.Empty),
            PanelFindings.Worst(Findings),
            new("layers-thickness", Door.Millimetres(LayersThickness), "mm"),
            new("sheet-thickness", Door.Millimetres(SheetThickness), "mm"),
            new("layer-minimum-radius", Door.Millimetres(LayerMinimumRadius), "mm"),
            new("sheet-minimum-radius", Door.Millimetres(SheetMinimumRadius), "mm"),
            new("loose-stiffness-ratio", _loose, string.Empty),
            new("glued-stiffness-ratio", _glued, string.Empty),
            new("mass-ratio", MassRatio, string.Empty),
        ];
        PanelFindings.AddFigure(figures, "layer-peak-radius", _layer.Peak, "mm");
        PanelFindings.AddFigure(figures, "sheet-peak-radius", _sheet.Peak, "mm");
        if (!double.IsNaN(_question.Density))
        {
            figures.Add(new Figure("layers-mass", _question.Density * _question.Thickness / 1000, "kg/m2"));
            figures.Add(new Figure("sheet-mass", _question.Density * _question.Sheet.Limit.Thickness / 1000, "kg/m2"));
        }

        return figures;
    }

    /// <summary>Which follow, and their thicknesses, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Number(_question.Count)} layers, {Print.Mm(_question.Thickness)}, {(LayersFollow ? "follow" : "do not follow")}; one sheet, {Print.Mm(_question.Sheet.Limit.Thickness)}, {(SheetFollows ? "follows" : "does not follow")}";

    private static Length? Mm(double millimetres) => double.IsNaN(millimetres) ? null : Door.Millimetres(Grid.Snap(millimetres));

    private Mass? Kilograms(double thickness) => double.IsNaN(_question.Density) ? null : new Mass(_question.Density * thickness / 1000, UnitsNet.Units.MassUnit.Kilogram);

    private static string Peak(in BendNumbers numbers) => double.IsNaN(numbers.Peak) ? "nothing holds it to the curve" : $"{Print.Mm(numbers.Peak)} taken, {Print.MmUp(numbers.Minimum)} allowed";

    private IReadOnlyList<Finding> FindAll()
    {
        List<Finding> findings = [];
        Figure[] values = [new("layer-minimum-radius", Grid.Snap(_layer.Minimum), "mm"), new("sheet-minimum-radius", Grid.Snap(_sheet.Minimum), "mm")];
        if (HasProblem)
        {
            findings.Add(new Finding("panels-layers-neither", Severity.Problem, $"Neither follows: a layer, {Peak(_layer)}; the sheet, {Peak(_sheet)}. Take thinner layers, the grain along the axis, or more rows.", values, Sources.BendElastic));
        }
        else if (!LayersFollow)
        {
            findings.Add(new Finding("panels-layers-fail", Severity.Caution, $"The layers do not follow ({Peak(_layer)}), though the one sheet does ({Peak(_sheet)}).", values, Sources.BendElastic));
        }
        else if (!SheetFollows)
        {
            findings.Add(new Finding("panels-layers-sheet-fails", Severity.Note, $"The layers follow ({Peak(_layer)}), and the one sheet does not ({Peak(_sheet)}).", values, Sources.BendElastic));
        }

        PanelFindings.AddReach(_question.Reach, findings);
        if (_question.Rows is null && !_question.Sheet.IsFlat)
        {
            PanelFindings.AddRows(_question.Sheet, _sheet, null, SheetBacking.StripsAtRows, findings);
        }

        findings.Add(new Finding(
            "panels-layers-slide",
            Severity.Note,
            $"Loose layers are {Print.Round(_loose, 3)} times as stiff as the sheet, glued all over {Print.Round(_glued, 3)} times. They are bent one after another, each fixed on the one behind it, and the glue does not count until it has cured.",
            [new("loose-stiffness-ratio", _loose, string.Empty), new("glued-stiffness-ratio", _glued, string.Empty)],
            Sources.SheetStiffness));
        if (_question.RatioIsUnknown)
        {
            findings.Add(new Finding(
                "panels-lamination-ply",
                Severity.Caution,
                $"The layers are plywood, which is not as stiff in stretching as in bending: {Print.Round(_glued, 3)} times the sheet's stiffness, glued, is that of solid layers. Give the stretch ratio; the plies of the sheet give it.",
                [new("glued-stiffness-ratio", _glued, string.Empty)],
                LaminationDefaults.StretchRatio));
        }

        PanelFindings.AddLimits([_question.Layer.Limit, _question.Sheet.Limit], findings);
        PanelFindings.AddWorking(findings);
        return Finding.GravestFirst(findings);
    }
}
