using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Whether a strip follows a bow: what <see cref="BentStrip.Judge(BentStripCase)"/> answers.</summary>
/// <remarks><see cref="BentStrip.Judge(BentStripCase)"/> makes one.</remarks>
public sealed class BentStripResult
{
    private readonly BendQuestion _question;
    private readonly BendNumbers _numbers;
    private readonly ArcRows _rows;
    private readonly HeldStrip _held;
    private readonly ArcReach _reach;
    private readonly double _pull;

    internal BentStripResult(BentStripCase strip, in BendQuestion question, ArcRows rows, in HeldStrip held, in ArcReach reach, List<BentStripRemedy> remedies)
    {
        Strip = strip;
        _question = question;
        _numbers = question.Solve(default(Silent));
        _rows = rows;
        _held = held;
        _reach = reach;
        double scale = question.IsFlat ? 0 : question.Limit.Stiffness / _numbers.Middle * (question.Bulges ? -1 : 1);
        RowPull[] pulls = new RowPull[rows.RowCount];
        for (int i = 0; i < pulls.Length; i++)
        {
            pulls[i] = new RowPull(rows.Position(i), scale * rows.Pull(i), held.Width, held.Capacity, held.Fixings);
            if (pulls[i].Newtons > _pull)
            {
                _pull = pulls[i].Newtons;
                FixingsNeededPerPlace = pulls[i].FixingsNeeded;
            }
        }

        Rows = [.. pulls];
        if (_pull == 0)
        {
            FixingsNeededPerPlace = 0;
        }

        Remedies = [.. remedies];
        Findings = FindAll();
        List<DefaultUsed> defaults = [];
        if (question.Limit.FactorIsDefault)
        {
            defaults.Add(question.Limit.DefaultFactorUsed);
        }

        if (strip.Width is null)
        {
            defaults.Add(new DefaultUsed(new Figure("strip-width", BentStrip.DefaultWidth, "mm"), Sources.StripWidth));
        }

        DefaultsUsed = [.. defaults];
    }

    /// <summary>What was asked.</summary>
    public BentStripCase Strip { get; }

    /// <summary>Whether the strip's most bent place is no tighter than <see cref="MinimumRadius"/> allows, dry, and three fixings at least hold it, within the reach of the formula.</summary>
    public bool Follows => _numbers.Passes && !_reach.IsOutside;

    /// <summary>The tightest radius that the strip takes, to its middle: the one that must pass. Null where it stays straight.</summary>
    public Length? PeakRadius => double.IsNaN(_numbers.Peak) ? null : Door.Millimetres(Grid.Snap(_numbers.Peak));

    /// <summary>The radius that the strip must not undercut: the elastic limit with its factor.</summary>
    public Length MinimumRadius => Door.Millimetres(Grid.Snap(_numbers.Minimum));

    /// <summary>Greatest curvature of the strip over that of the arc; 0 where it stays straight.</summary>
    public double CurvatureRatio => _question.IsFlat ? 0 : _question.Ratio;

    /// <summary>Peak radius over minimum radius; null where the strip stays straight.</summary>
    public double? Margin => double.IsNaN(_numbers.Margin) ? null : _numbers.Margin;

    /// <summary>Every fixing place with its pull over the strip's width, in order.</summary>
    public IReadOnlyList<RowPull> Rows { get; }

    /// <summary>The greatest pull of a fixing place; zero where none pulls.</summary>
    public Force GreatestPull => Door.Newtons(_pull);

    /// <summary>Fixings of the place that needs most, at the capacity given; 0 where none pulls; null without a capacity or where no practical number holds.</summary>
    public int? FixingsNeededPerPlace { get; }

    /// <summary>
    /// What follows instead: the grain turned, the thickest single sheet, then layers that come nearest to the strip's thickness. Empty where
    /// the strip follows, where nothing looked at does, or where the fixings are at fault.
    /// </summary>
    public IReadOnlyList<BentStripRemedy> Remedies { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: it does not follow, or its fixings do not hold it.</summary>
    public bool HasProblem => Findings[0].Severity == Severity.Problem;

    /// <summary>What a person should know about the verdict, gravest first.</summary>
    /// <remarks>Codes: <c>furring-strip-bend-too-tight</c>, <c>furring-strip-not-held</c>, <c>furring-strip-bay-too-long</c>, <c>furring-strip-fixings-pull-out</c>, <c>furring-strip-bay-not-shallow</c>, <c>furring-strip-bend-factor-low</c>, <c>furring-strip-fixing-capacity-unknown</c>, <c>furring-strip-springs-back</c>, <c>furring-strip-allowable-strength</c>, <c>furring-strip-bend-dry</c>.</remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The defaults that the verdict rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    private string SheetWords => Strip.Sheet.Name + BendLimit.GrainWords(Strip.Grain);

    /// <summary>How the radii and, where the strip is bent, the greatest pull come about, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        _question.Solve(recorder);
        ExplainPull(recorder);
        return recorder.ToWorkings("Strip bent round a bow");
    }

    /// <summary>The verdict as flat figures.</summary>
    /// <returns>Follows (1 or 0), the worst severity as the number of its enumeration, minimum radius, curvature ratio, greatest pull, width; peak radius and margin where the strip is bent; fixings needed where their capacity is known.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures =
        [
            new("follows", Follows ? 1 : 0, string.Empty),
            new("worst-severity", (int)Findings[0].Severity, string.Empty),
            new("minimum-radius", Door.Millimetres(MinimumRadius), "mm"),
            new("curvature-ratio", CurvatureRatio, string.Empty),
            new("greatest-pull", _pull, "N"),
            new("strip-width", _held.Width, "mm"),
        ];
        if (PeakRadius is { } peak)
        {
            figures.Add(new Figure("peak-radius", Door.Millimetres(peak), "mm"));
            figures.Add(new Figure("margin", _numbers.Margin, string.Empty));
        }

        if (FixingsNeededPerPlace is { } needed)
        {
            figures.Add(new Figure("fixings-needed", needed, string.Empty));
        }

        return figures;
    }

    /// <summary>Verdict with radii, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => double.IsNaN(_numbers.Peak)
        ? $"strip of {SheetWords} stays straight{(Follows ? string.Empty : " and does not follow")}; may be bent to {Print.MmUp(_numbers.Minimum)}"
        : $"strip of {SheetWords} {(Follows ? "follows" : "does not follow")}: peaks at {Print.Mm(_numbers.Peak)}, may be bent to {Print.MmUp(_numbers.Minimum)}";

    private void ExplainPull<TTrace>(TTrace trace)
        where TTrace : struct, ITrace
    {
        if (_question.IsFlat)
        {
            return;
        }

        int row = 0;
        for (int i = 1; i < Rows.Count; i++)
        {
            row = Rows[i].Newtons > Rows[row].Newtons * (1 + 1e-12) ? i : row;
        }

        double width = _held.Width, shear = (_question.Bulges ? -1 : 1) * _rows.Pull(row);
        trace.Given("w", width, "mm", Strip.Width is null ? Sources.StripWidth : Sources.Given, meaning: "width of the strip");
        trace.Given("n", shear, "1/mm", Sources.HoldDownRows, meaning: "pull of the fixing that pulls most for stiffness and curvature 1, by the three-moment equations");
        double elasticity = _question.Limit.Elasticity, thickness = _question.Limit.Thickness, middle = _numbers.Middle;
        trace.Step("N", "pull", elasticity * thickness * thickness * thickness / 12 * width / middle * shear, "N", Sources.SheetStiffness);
    }

    private IReadOnlyList<Finding> FindAll()
    {
        List<Finding> findings = [];
        if (_numbers.IsTooTight)
        {
            string cure = _reach.IsOutside ? "With fixings so placed no other sheet is looked for." : Remedies.Count == 0 ? "None of the sheets looked at follows." : Remedies[0].Text;
            findings.Add(new Finding(
                "furring-strip-bend-too-tight",
                Severity.Problem,
                $"A strip of {SheetWords} is bent to {Print.Mm(_numbers.Peak)} at its tightest ({Print.Round(_question.Ratio, 3)} times the curvature of the bow); allowed is {Print.MmUp(_numbers.Minimum)} (elastic limit times {Print.Number(_question.Limit.Factor)}). {cure}",
                [new("peak-radius", _numbers.Peak, "mm"), new("minimum-radius", _numbers.Minimum, "mm"), new("curvature-ratio", _question.Ratio, string.Empty), new("margin", _numbers.Margin, string.Empty)],
                Sources.BendElastic));
        }

        if (!_numbers.IsHeld)
        {
            findings.Add(new Finding(
                "furring-strip-not-held",
                Severity.Problem,
                "Two fixings leave the strip straight between them: it does not follow the bow. Three are the least.",
                [new("rows", 2, string.Empty)],
                Sources.HoldDownRows));
        }

        if (_reach.IsOutside)
        {
            findings.Add(new Finding("furring-strip-bay-too-long", Severity.Problem, _reach.Message, _reach.Values, Sources.HoldDownRows));
        }
        else if (_reach.IsNotShallow)
        {
            findings.Add(new Finding("furring-strip-bay-not-shallow", Severity.Caution, _reach.Message, _reach.Values, Sources.HoldDownRows));
        }
        if (_question.Limit.FactorIsLow)
        {
            findings.Add(new Finding(
                "furring-strip-bend-factor-low",
                Severity.Caution,
                $"A factor of {Print.Number(_question.Limit.Factor)} on the elastic radius is less than the usual 1.5 to 3: at 1 one strip in twenty breaks while it is bent, and the rest stay near it for good.",
                [new("bend-factor", _question.Limit.Factor, string.Empty)],
                Sources.BendFactor));
        }

        if (_question.Limit.IsAllowable)
        {
            findings.Add(new Finding(
                "furring-strip-allowable-strength",
                Severity.Note,
                "The bending strength is an allowable design value, with a factor for loads in it: the elastic radius is further on the safe side than one by a characteristic strength.",
                [new("minimum-radius", _numbers.Minimum, "mm")],
                Sources.BendFactorOfAllowable));
        }

        if (_pull > 0)
        {
            AddFixings(findings);
            findings.Add(new Finding(
                "furring-strip-springs-back",
                Severity.Caution,
                $"The strip stays bent by force: a fixing place pulls up to {Print.Round(_pull, 2)} N for good, besides what hangs on it. Its fixings must hold that in the stock behind; released, the strip springs straight.",
                [new("greatest-pull", _pull, "N")],
                Sources.HoldDownRows));
        }

        findings.Add(new Finding(
            "furring-strip-bend-dry",
            Severity.Note,
            "The strip is taken as bent dry; wetting and steam are not counted. Knots, voids and joints at the tightest place break sooner: bend a trial strip. Cutting makes fine dust: extract it.",
            [],
            Sources.BendElastic));
        return Finding.GravestFirst(findings);
    }

    private void AddFixings(List<Finding> findings)
    {
        double capacity = _held.Capacity;
        if (double.IsNaN(capacity))
        {
            findings.Add(new Finding(
                "furring-strip-fixing-capacity-unknown",
                Severity.Caution,
                $"A fixing place pulls up to {Print.Round(_pull, 2)} N for good, and what one fixing holds was not given: too few, too short or in thin stock they pull out. Thin metal needs fixings made for it.",
                [new("greatest-pull", _pull, "N")],
                Sources.HoldDownRows));
            return;
        }

        double needed = Grid.CeilingOfRatio(_pull, capacity);
        if (_held.Fixings > 0 && needed > _held.Fixings)
        {
            findings.Add(new Finding(
                "furring-strip-fixings-pull-out",
                Severity.Problem,
                $"{Print.Number(_held.Fixings)} fixings of {Print.Small(capacity)} N at a place hold {Print.Small(_held.Fixings * capacity)} N; the bend alone pulls {Print.Round(_pull, 2)} N. It takes {Print.Number(needed)}, or a thinner strip.",
                [new("fixings", _held.Fixings, string.Empty), new("fixings-needed", needed, string.Empty), new("capacity", capacity, "N"), new("greatest-pull", _pull, "N")],
                Sources.HoldDownRows));
        }
        else if (_held.Fixings == 0 && FixingsNeededPerPlace is null)
        {
            findings.Add(new Finding(
                "furring-strip-fixings-pull-out",
                Severity.Problem,
                $"No practical number of fixings of {Print.Small(capacity)} N holds the {Print.Round(_pull, 2)} N that a place pulls.",
                [new("capacity", capacity, "N"), new("greatest-pull", _pull, "N")],
                Sources.HoldDownRows));
        }
    }
}

/// <summary>What follows the bow instead: another sheet, a turned grain, or thin layers bent one on another.</summary>
public sealed class BentStripRemedy
{
    private readonly double _thickness;
    private readonly BendNumbers _numbers;

    internal BentStripRemedy(SheetGoods sheet, BendGrain grain, int layers, double thickness, in BendNumbers numbers)
    {
        Sheet = sheet;
        Grain = grain;
        Layers = layers;
        _thickness = thickness;
        _numbers = numbers;
    }

    /// <summary>The sheet to rip from.</summary>
    public SheetGoods Sheet { get; }

    /// <summary>Which way its face grain runs.</summary>
    public BendGrain Grain { get; }

    /// <summary>How many layers, each bent alone on the one behind it.</summary>
    public int Layers { get; }

    /// <summary>Thickness of all layers.</summary>
    public Length Thickness => Door.Millimetres(Grid.Snap(Layers * _thickness));

    /// <summary>The tightest radius that a layer takes.</summary>
    public Length? PeakRadius => double.IsNaN(_numbers.Peak) ? null : Door.Millimetres(Grid.Snap(_numbers.Peak));

    /// <summary>The radius that a layer must not undercut.</summary>
    public Length MinimumRadius => Door.Millimetres(Grid.Snap(_numbers.Minimum));

    /// <summary>The change in a sentence, invariant.</summary>
    public string Text => Layers == 1
        ? $"{Sheet.Name}{BendLimit.GrainWords(Grain)}, follows: {Print.MmUp(_numbers.Minimum)} is allowed, {Print.Mm(_numbers.Peak)} taken."
        : $"{Print.Number(Layers)} layers of {Sheet.Name}{BendLimit.GrainWords(Grain)}, together {Print.Mm(Layers * _thickness)}, follow, bent one on another: {Print.MmUp(_numbers.Minimum)} is allowed, {Print.Mm(_numbers.Peak)} taken.";

    /// <summary>The change as flat figures.</summary>
    /// <returns>Layers, thickness of all, minimum radius, peak radius.</returns>
    public IReadOnlyList<Figure> Figures() =>
        [new("layers", Layers, string.Empty), new("thickness", Door.Millimetres(Thickness), "mm"), new("minimum-radius", Door.Millimetres(MinimumRadius), "mm"), new("peak-radius", Grid.Snap(_numbers.Peak), "mm")];

    /// <summary>The same as <see cref="Text"/>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Text;
}
