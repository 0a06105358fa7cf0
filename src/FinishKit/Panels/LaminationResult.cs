using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Layers over a form: what <see cref="Lamination.ToRadius(LaminatedBend)"/> and <see cref="Lamination.OnForm(LaminatedBend)"/> answer.</summary>
/// <remarks>They make one. Radii are to the middle of all layers unless said otherwise.</remarks>
public sealed class LaminationResult
{
    private readonly LaminationQuestion _question;
    private readonly LaminationNumbers _numbers;
    private readonly bool _isForm;

    internal LaminationResult(LaminatedBend bend, LaminationQuestion question, bool isForm)
    {
        Bend = bend;
        _question = question;
        _isForm = isForm;
        _numbers = Lamination.Solve(question, isForm, default(Silent));
        Findings = FindAll();
        List<DefaultUsed> defaults = [];
        PanelFindings.AddFactors(question.Layers, defaults);

        // One layer loses all whatever it does in stretching.
        if (question.RatioIsDefault && question.Layers.Length > 1)
        {
            defaults.Add(LaminationDefaults.StretchRatioUsed);
        }

        DefaultsUsed = [.. defaults];
    }

    /// <summary>What was asked.</summary>
    public LaminatedBend Bend { get; }

    /// <summary>Share of the curvature that is lost when the layers come off the form: 1/n² for n equal ones, 1 for one.</summary>
    public double SpringBack => _numbers.SpringBack;

    /// <summary>Thickness of all layers.</summary>
    public Length Thickness => Door.Millimetres(Grid.Snap(_numbers.Thickness));

    /// <summary>Radius on the form; null where no form gives the wanted radius: one layer goes straight again.</summary>
    public Length? FormRadius => Mm(_numbers.Form);

    /// <summary>Radius of the face of a form that lies inside the curve; null where there is none.</summary>
    public Length? InsideFormRadius => _numbers.Form - (_numbers.Thickness / 2) is var radius && radius > 0 ? Mm(radius) : null;

    /// <summary>Radius of the face of a form that lies outside the curve; null where there is none.</summary>
    public Length? OutsideFormRadius => Mm(_numbers.Form + (_numbers.Thickness / 2));

    /// <summary>Radius off the form; null where the layers go straight again.</summary>
    public Length? Radius => Mm(_numbers.Final);

    /// <summary>The smallest radius on a form that every layer takes.</summary>
    public Length SmallestFormRadius => Door.Millimetres(Grid.SnapUp(_numbers.SmallestForm));

    /// <summary>The smallest radius off a form that every layer takes; null where the layers go straight again.</summary>
    public Length? SmallestRadius => _numbers.IsFlat ? null : Door.Millimetres(Grid.SnapUp(_numbers.SmallestForm / (1 - _numbers.SpringBack)));

    /// <summary>The layer that allows least, counted from 0 at the inside.</summary>
    public int GoverningLayer => _numbers.Governs;

    /// <summary>The radius that this layer has on the form, to its own middle; null where there is no form.</summary>
    public Length? LayerRadius => Mm(_numbers.LayerRadius);

    /// <summary>The radius that this layer should not undercut, to its own middle.</summary>
    public Length LayerMinimumRadius => Door.Millimetres(Grid.Snap(_numbers.LayerMinimum));

    /// <summary>Whether there is a form and every layer takes it, dry.</summary>
    public bool Passes => _numbers.Passes && !_numbers.IsFlat;

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: a layer is bent too tight, or all springs back.</summary>
    public bool HasProblem => !Passes;

    /// <summary>What a person should know, gravest first.</summary>
    /// <remarks>
    /// Codes: <c>panels-lamination-one-layer</c>, <c>panels-lamination-too-tight</c>, <c>panels-lamination-formula</c>, <c>panels-lamination-ply</c>, <c>panels-lamination-glue</c>, <c>panels-bend-factor-low</c>,
    /// <c>panels-published-condition</c>, <c>panels-allowable-strength</c>, <c>panels-bend-dry</c>, <c>panels-cutting-dust</c>.
    /// </remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The defaults that the answer rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    /// <summary>How the answer comes about, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        Lamination.Solve(_question, _isForm, recorder);
        return recorder.ToWorkings("Layers glued over a form");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Layers, thickness, spring-back, passes (1 or 0), the smallest form, the governing layer and its least radius, and the radii that there are.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures =
        [
            new("layers", _question.Layers.Length, string.Empty),
            PanelFindings.Worst(Findings),
            new("passes", Passes ? 1 : 0, string.Empty),
            new("thickness", Door.Millimetres(Thickness), "mm"),
            new("spring-back", _numbers.SpringBack, string.Empty),
            new("smallest-form-radius", Door.Millimetres(SmallestFormRadius), "mm"),
            new("governing-layer", _numbers.Governs, string.Empty),
            new("layer-minimum-radius", Door.Millimetres(LayerMinimumRadius), "mm"),
        ];
        PanelFindings.AddFigure(figures, "form-radius", _numbers.Form, "mm");
        PanelFindings.AddFigure(figures, "radius", _numbers.Final, "mm");
        PanelFindings.AddFigure(figures, "layer-radius", _numbers.LayerRadius, "mm");
        return figures;
    }

    /// <summary>Layers, form and radius, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => double.IsNaN(_numbers.Final)
        ? $"{Print.Number(_question.Layers.Length)} layers go straight again"
        : $"{Print.Number(_question.Layers.Length)} layers on a form of {Print.Mm(_numbers.Form)} come off at {Print.Mm(_numbers.Final)}{(Passes ? string.Empty : ", which they do not take")}";

    private static Length? Mm(double millimetres) => double.IsNaN(millimetres) ? null : Door.Millimetres(Grid.Snap(millimetres));

    private IReadOnlyList<Finding> FindAll()
    {
        List<Finding> findings = [];
        if (_numbers.IsFlat)
        {
            findings.Add(new Finding(
                "panels-lamination-one-layer",
                Severity.Problem,
                "All of the bend springs back: one layer, or one beside which the others are nothing, goes straight again off the form. Take two layers or more.",
                [new("spring-back", _numbers.SpringBack, string.Empty)],
                LaminationDefaults.SpringBack));
        }

        BendLimit governing = _question.Layers[_numbers.Governs];
        if (!double.IsNaN(_numbers.Form) && !_numbers.Passes)
        {
            findings.Add(new Finding(
                "panels-lamination-too-tight",
                Severity.Problem,
                $"On a form of {Print.Mm(_numbers.Form)} layer {Print.Number(_numbers.Governs + 1)} from the inside, {Print.Mm(governing.Thickness)} thick, is bent tighter than it takes: {Print.MmUp(_numbers.LayerMinimum)} to its middle is allowed ({PanelFindings.Words(governing)}). No form under {Print.MmUp(_numbers.SmallestForm)} serves: take thinner layers.",
                [new("form-radius", Grid.Snap(_numbers.Form), "mm"), new("smallest-form-radius", Door.Millimetres(SmallestFormRadius), "mm"), new("layer-minimum-radius", Grid.Snap(_numbers.LayerMinimum), "mm")],
                Sources.BendElastic));
        }

        if (!double.IsNaN(_numbers.Final))
        {
            findings.Add(new Finding(
                "panels-lamination-formula",
                Severity.Caution,
                $"Off the form {Print.Round(_numbers.SpringBack * 100, 2)}% of the curvature is lost, from {Print.Mm(_numbers.Form)} to {Print.Mm(_numbers.Final)}. That is elastic theory and a boatbuilders' rule; one woodworker's page calls all such formulas unreliable: glue, moisture and creep shift it either way. Make a trial piece before the form.",
                [new("spring-back", _numbers.SpringBack, string.Empty), new("form-radius", Grid.Snap(_numbers.Form), "mm"), new("radius", Grid.Snap(_numbers.Final), "mm")],
                LaminationDefaults.CamberRule));
        }

        if (_question.RatioIsUnknown && !_numbers.IsFlat)
        {
            findings.Add(new Finding(
                "panels-lamination-ply",
                Severity.Caution,
                "A layer is plywood, which is not as stiff in stretching as in bending: the spring-back worked here is that of solid layers. Give the stretch ratio; the plies of the sheet give it.",
                [new("spring-back", _numbers.SpringBack, string.Empty)],
                LaminationDefaults.SpringBack));
        }

        findings.Add(new Finding(
            "panels-lamination-glue",
            Severity.Caution,
            "The layers hold their shape by the glue alone: take one that sets hard and does not creep, clamp them everywhere from the middle out, and leave them on the form until it has cured. Mind its vapour, and skin contact.",
            [],
            LaminationDefaults.Glue));
        PanelFindings.AddLimits(_question.Layers, findings);
        PanelFindings.AddWorking(findings);
        return Finding.GravestFirst(findings);
    }
}
