using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>The kerfs of a bend: what <see cref="KerfBend.Plan(KerfedPanel)"/> answers.</summary>
/// <remarks><see cref="KerfBend.Plan(KerfedPanel)"/> makes one.</remarks>
public sealed class KerfPlan
{
    private readonly KerfQuestion _question;
    private readonly KerfNumbers _numbers;

    internal KerfPlan(KerfedPanel panel, in KerfQuestion question)
    {
        Panel = panel;
        _question = question;
        _numbers = KerfBend.Solve(question, default(Silent));
        Length[] marks = new Length[_numbers.Kerfs];
        for (int i = 0; i < marks.Length; i++)
        {
            marks[i] = Door.Millimetres(Grid.Snap((i + 0.5) * _numbers.Spacing));
        }

        Marks = [.. marks];
        Findings = FindAll();
        List<DefaultUsed> defaults = [];
        if (panel.DepthError is null)
        {
            defaults.Add(new DefaultUsed(new Figure("depth-error", KerfDefaults.DepthError, "mm"), KerfDefaults.DepthErrorSource));
        }

        if (question.WebLimit is { FactorIsDefault: true } limit)
        {
            defaults.Add(limit.DefaultFactorUsed);
        }

        DefaultsUsed = [.. defaults];
    }

    /// <summary>What was asked.</summary>
    public KerfedPanel Panel { get; }

    /// <summary>Depth of a kerf at the nominal thickness: what the stop is set to.</summary>
    public Length Depth => Mm(_numbers.Depth);

    /// <summary>Number of kerfs.</summary>
    public int Kerfs => _numbers.Kerfs;

    /// <summary>Distance from the middle of one kerf to the middle of the next, on the flat sheet.</summary>
    public Length Spacing => Mm(_numbers.Spacing);

    /// <summary>Middles of the kerfs on the flat sheet, from where the bend begins, ascending: half a spacing in from either end of it.</summary>
    public IReadOnlyList<Length> Marks { get; }

    /// <summary>Length of flat sheet that the bend takes.</summary>
    public Length HingeArc => Mm(_numbers.HingeArc);

    /// <summary>Wood between two kerfs.</summary>
    public Length Rib => Mm(_numbers.Rib);

    /// <summary>The angle at which a kerf's sides meet, cut to <see cref="Depth"/>.</summary>
    public Angle ClosingTurn => Door.Radians(_numbers.Closing);

    /// <summary>The angle at which the sides of a kerf meet that is too deep by the error of the depth: what the kerfs are counted by.</summary>
    public Angle LeastClosingTurn => Door.Radians(_numbers.LeastClosing);

    /// <summary>The angle that each kerf turns by: no more than <see cref="LeastClosingTurn"/>.</summary>
    public Angle Turn => Door.Radians(_numbers.Turn);

    /// <summary>The angle that all kerfs together could turn beyond what is asked before they are shut, all of them too deep by the error of the depth.</summary>
    public Angle SpareTurn => Door.Radians(System.Math.Max(0, (_numbers.Kerfs * _numbers.LeastClosing) - _question.Bend));

    /// <summary>What the mouth of a kerf cut to <see cref="Depth"/> stays open by when the panel is bent; 0 where it closes.</summary>
    public Length GapLeft => Mm(_numbers.GapLeft);

    /// <summary>Whether kerfs cut to <see cref="Depth"/> close fully: their sides meet when the panel is bent.</summary>
    public bool ClosesFully => Grid.Snap(_numbers.GapLeft) == 0;

    /// <summary>How far the middle of a flat piece lies inside the circle through its ends: what is seen and felt on the outer face.</summary>
    public Length FacetHeight => Mm(_numbers.FacetHeight);

    /// <summary>What the cut face becomes shorter by, over all kerfs.</summary>
    public Length Shortening => Mm(_numbers.Shortening);

    /// <summary>What is left under a kerf where the sheet is thinnest and the cut deepest; not above 0 where it cuts through.</summary>
    public Length LeastWeb => Door.Millimetres(_question.LeastWeb);

    /// <summary>What is left under a kerf where the sheet is thickest and the cut shallowest.</summary>
    public Length GreatestWeb => Door.Millimetres(_question.GreatestWeb);

    /// <summary>
    /// Settings of the depth stop that leave 1 to 3 mm under every kerf, and with which these kerfs reach the bend before they shut, whatever the sheet's thickness and the error of the depth within
    /// their limits; null where none does.
    /// </summary>
    public TolerancedLength? StopDepths => Stop is var (shallowest, deepest) && shallowest <= deepest ? TolerancedLength.Between(Door.Millimetres(shallowest), Door.Millimetres(deepest)) : null;

    /// <summary>Radius that the web bends to where it turns within the width of a kerf.</summary>
    public Length WebRadius => Mm(_numbers.WebRadius);

    /// <summary>The radius that the web should not undercut by its own stiffness and strength; null where they were not given.</summary>
    public Length? WebMinimumRadius => double.IsNaN(_numbers.WebLimit) ? null : Mm(_numbers.WebLimit);

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: the web may be cut through, or nothing is left between the kerfs.</summary>
    public bool HasProblem => Findings[0].Severity == Severity.Problem;

    /// <summary>What a person should know about the plan, gravest first.</summary>
    /// <remarks>
    /// Codes: <c>panels-kerf-cut-through</c>, <c>panels-kerf-no-rib</c>, <c>panels-kerf-web-out</c>, <c>panels-kerf-rib-thin</c>, <c>panels-kerf-web-strains</c>, <c>panels-kerf-weak</c>, <c>panels-kerf-saw</c>,
    /// <c>panels-kerf-stays-open</c>, <c>panels-kerf-facets</c>, <c>panels-cutting-dust</c>; with a web sheet <c>panels-bend-factor-low</c>, <c>panels-allowable-strength</c>, <c>panels-bend-dry</c>.
    /// </remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The defaults that the plan rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    /// <summary>What the web and the number of kerfs both allow; the first over the second where there is none.</summary>
    private (double Shallowest, double Deepest) Stop => (_question.WebStop.Shallowest, System.Math.Min(_question.WebStop.Deepest, Grid.SnapDown(_numbers.Reach - _question.DepthError)));

    /// <summary>How the plan comes about, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        KerfBend.Solve(_question, recorder);
        return recorder.ToWorkings("Sheet bent by kerfs");
    }

    /// <summary>The plan as flat figures.</summary>
    /// <returns>Kerfs, depth, spacing, hinge arc, rib, turns in degrees, gap, facet height, shortening, webs, web radius, and stop depths and least web radius where there are any.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures =
        [
            new("kerfs", _numbers.Kerfs, string.Empty),
            PanelFindings.Worst(Findings),
            new("depth", Grid.Snap(_numbers.Depth), "mm"),
            new("spacing", Grid.Snap(_numbers.Spacing), "mm"),
            new("hinge-arc", Grid.Snap(_numbers.HingeArc), "mm"),
            new("rib", Grid.Snap(_numbers.Rib), "mm"),
            new("closing-turn", Door.Degrees(ClosingTurn), "deg"),
            new("least-closing-turn", Door.Degrees(LeastClosingTurn), "deg"),
            new("turn", Door.Degrees(Turn), "deg"),
            new("spare-turn", Door.Degrees(SpareTurn), "deg"),
            new("gap-left", Grid.Snap(_numbers.GapLeft), "mm"),
            new("facet-height", Grid.Snap(_numbers.FacetHeight), "mm"),
            new("shortening", Grid.Snap(_numbers.Shortening), "mm"),
            new("least-web", _question.LeastWeb, "mm"),
            new("greatest-web", _question.GreatestWeb, "mm"),
            new("web-radius", Grid.Snap(_numbers.WebRadius), "mm"),
        ];
        PanelFindings.AddFigure(figures, "web-minimum-radius", _numbers.WebLimit, "mm");
        (double shallowest, double deepest) = Stop;
        if (shallowest <= deepest)
        {
            figures.Add(new Figure("stop-shallowest", shallowest, "mm"));
            figures.Add(new Figure("stop-deepest", deepest, "mm"));
        }

        return figures;
    }

    /// <summary>Kerfs, depth, spacing and facets, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(_numbers.Kerfs)} kerfs {Print.Mm(_numbers.Depth)} deep, {Print.Mm(_numbers.Spacing)} apart over {Print.Mm(_numbers.HingeArc)}; facets of {Print.Mm(_numbers.FacetHeight)}";

    private static Length Mm(double millimetres) => Door.Millimetres(Grid.Snap(millimetres));

    private IReadOnlyList<Finding> FindAll()
    {
        List<Finding> findings = [];
        AddWeb(findings);
        AddRib(findings);
        if (_numbers.WebLimit > _numbers.WebRadius)
        {
            findings.Add(new Finding(
                "panels-kerf-web-strains",
                Severity.Caution,
                $"Over the width of a kerf the web bends to {Print.Mm(_numbers.WebRadius)}; by its own stiffness and strength it takes {Print.MmUp(_numbers.WebLimit)}. Dry it cracks or is crushed: leave less, bend a face ply across its grain, wet or heat the outer face, and bend a trial piece first.",
                [new("web-radius", Grid.Snap(_numbers.WebRadius), "mm"), new("web-minimum-radius", Grid.Snap(_numbers.WebLimit), "mm")],
                Sources.BendElastic));
        }

        findings.Add(new Finding(
            "panels-kerf-weak",
            Severity.Caution,
            "A kerfed panel has the strength of its web only and does not hold its shape by itself: kerfs go on the inside of the curve, are filled with glue when it is bent, and the panel is fixed or backed along its curve before anything leans on it.",
            [],
            KerfDefaults.InsideSource));
        findings.Add(new Finding(
            "panels-kerf-saw",
            Severity.Caution,
            $"A groove is cut with less of the saw's guard than a cut through, and toward the end the sheet bends under the hand: use a depth stop and a guided saw, support the sheet flat, and set the stop to {Print.Mm(_numbers.Depth)} on a trial piece of the same sheet.",
            [new("depth", Grid.Snap(_numbers.Depth), "mm")],
            KerfDefaults.Geometry));
        if (!ClosesFully)
        {
            findings.Add(new Finding(
                "panels-kerf-stays-open",
                Severity.Note,
                $"The number is rounded up{(_question.DepthError > 0 ? $", and for kerfs {Print.Mm(_question.DepthError)} too deep" : string.Empty)}, so those of the depth asked for stay open by {Print.Mm(_numbers.GapLeft)} at their mouths: they do not stop the bend by themselves, a former gives the curve, and the glue has to fill them.",
                [new("gap-left", Grid.Snap(_numbers.GapLeft), "mm"), new("spare-turn", Door.Degrees(SpareTurn), "deg")],
                KerfDefaults.Geometry));
        }

        findings.Add(new Finding(
            "panels-kerf-facets",
            Severity.Note,
            $"The outer face is a row of flats {Print.Mm(_numbers.Spacing)} wide that stand {Print.Mm(_numbers.FacetHeight)} off the curve: they show under paint and thin cloth. More and narrower kerfs make them smaller.",
            [new("facet-height", Grid.Snap(_numbers.FacetHeight), "mm"), new("spacing", Grid.Snap(_numbers.Spacing), "mm")],
            KerfDefaults.Geometry));
        if (_question.WebLimit is { } limit)
        {
            PanelFindings.AddLimit(limit, findings);
        }

        PanelFindings.AddWorking(findings);
        return Finding.GravestFirst(findings);
    }

    private string StopWords()
    {
        (double shallowest, double deepest) = _question.WebStop;
        if (shallowest > deepest)
        {
            // The thickest sheet is cut deepest then, and a deeper kerf shuts sooner.
            double needed = _question.KerfsAt(_question.DepthFromOuterFace);
            return "No setting keeps it within 1 to 3 mm: sort the sheets by thickness, or set the saw from the outer face."
                + (needed > _numbers.Kerfs
                    ? $" Set so, the thickest sheet is cut up to {Print.Mm(Grid.Snap(_question.DepthFromOuterFace + _question.DepthError))} deep and these {Print.Number(_numbers.Kerfs)} kerfs are shut before it is bent: that takes {Print.Number(needed)} kerfs, {Print.Mm(Grid.Snap(_numbers.HingeArc / needed))} apart."
                    : string.Empty);
        }

        double reach = Stop.Deepest;
        if (shallowest > reach)
        {
            return $"A stop set between {Print.Mm(shallowest)} and {Print.Mm(deepest)} keeps it within 1 to 3 mm, but there these {Print.Number(_numbers.Kerfs)} kerfs are shut before the panel is bent: it asks for {Print.Number(_question.KerfsAt(shallowest))} kerfs or more. Plan again with a web of {Print.Mm(_question.Thickness - shallowest)} or less.";
        }

        // Down to the micrometre: a deeper setting would be one too many.
        return reach < deepest
            ? $"A stop set between {Print.Mm(shallowest)} and {Print.Mm(System.Math.Floor((reach * 1000) + 1e-6) / 1000)} keeps it within 1 to 3 mm and lets these kerfs reach the bend; set deeper, they are shut before it and their webs are pried open."
            : $"A stop set between {Print.Mm(shallowest)} and {Print.Mm(deepest)} keeps it within 1 to 3 mm.";
    }

    private void AddWeb(List<Finding> findings)
    {
        string stop = StopWords();
        Figure[] values = [new("least-web", _question.LeastWeb, "mm"), new("greatest-web", _question.GreatestWeb, "mm")];
        if (_question.LeastWeb <= 0)
        {
            findings.Add(new Finding(
                "panels-kerf-cut-through",
                Severity.Problem,
                $"Where the sheet is thinnest and the cut deepest the web is {Print.Mm(_question.LeastWeb)}: the saw cuts through. {stop}",
                values,
                KerfDefaults.Geometry));
        }
        else if (_question.LeastWeb < KerfDefaults.LeastWeb || _question.GreatestWeb > KerfDefaults.GreatestWeb)
        {
            findings.Add(new Finding(
                "panels-kerf-web-out",
                Severity.Caution,
                $"The web is {Print.Mm(_question.LeastWeb)} to {Print.Mm(_question.GreatestWeb)} over the limits of thickness and depth, and 1 to 3 mm are usual: a thinner one tears, a thicker one does not bend. {stop}",
                values,
                KerfDefaults.WebSource));
        }
    }

    private void AddRib(List<Finding> findings)
    {
        double rib = Grid.Snap(_numbers.Rib);
        if (rib <= 0)
        {
            findings.Add(new Finding(
                "panels-kerf-no-rib",
                Severity.Problem,
                $"Kerfs {Print.Mm(_numbers.Spacing)} apart and {Print.Mm(_question.Kerf)} wide leave no wood between them: take a larger radius or a thinner sheet.",
                [new("rib", rib, "mm"), new("spacing", Grid.Snap(_numbers.Spacing), "mm")],
                KerfDefaults.Geometry));
        }
        else if (rib < KerfDefaults.LeastRib)
        {
            findings.Add(new Finding(
                "panels-kerf-rib-thin",
                Severity.Caution,
                $"Only {Print.Mm(rib)} of wood stand between two kerfs: less than 3 mm break off while they are cut.",
                [new("rib", rib, "mm")],
                KerfDefaults.RibSource));
        }
    }
}
