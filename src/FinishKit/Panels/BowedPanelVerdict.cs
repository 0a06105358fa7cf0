using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>A sheet on a surface that bows both ways: what <see cref="DoubleCurvature.Judge(BowedPanel)"/> answers.</summary>
/// <remarks><see cref="DoubleCurvature.Judge(BowedPanel)"/> makes one.</remarks>
public sealed class BowedPanelVerdict
{
    private readonly DoubleBowQuestions _questions;
    private readonly DoubleBow _bow;
    private readonly double _wall;
    private readonly BowNumbers _numbers;
    private readonly BendNumbers _around, _along;

    internal BowedPanelVerdict(BowedPanel panel, in DoubleBowQuestions questions, double wall, bool otherIsKnown)
    {
        Panel = panel;
        _questions = questions;
        _bow = questions.Bow;
        _wall = wall;
        _numbers = DoubleCurvature.Solve(_bow, wall, questions.Along, default(Silent));
        _around = questions.Around.Solve(default(Silent));
        _along = questions.Along.Solve(default(Silent));
        Passes = questions.Passes;
        Findings = FindAll(otherIsKnown);
        List<DefaultUsed> defaults = [];
        PanelFindings.AddFactors([questions.Around.Limit, questions.Along.Limit], defaults);
        DefaultsUsed = [.. defaults];
    }

    /// <summary>What was asked.</summary>
    public BowedPanel Panel { get; }

    /// <summary>
    /// Whether the sheet takes both curvatures at once, within the limits of buckling and stretch, goes no more than half round either, and takes each bend by itself: the surface alone bends it no tighter than
    /// its least radius that way. Rows of fixings bend it up to 1.5 times as much: with them each bend is for <see cref="PanelBend"/> to judge.
    /// </summary>
    public bool Passes { get; }

    /// <summary>How much of what double curvature may take is taken: by buckling or by stretch, the greater; bends by themselves aside. Over 1 is refused.</summary>
    public double Share => _numbers.Share;

    /// <summary>Whether the surface is hollow or bulging both ways: a bowl. Else a saddle.</summary>
    public bool IsBowl => _numbers.EdgeStrain < 0;

    /// <summary>Strain along the edges of the longer sides: positive where they are stretched (a saddle), negative where they are squeezed (a bowl).</summary>
    public double EdgeStrain => _numbers.EdgeStrain;

    /// <summary>Strain along the middle line: half of that at the edges, of the other sign.</summary>
    public double MiddleStrain => -_numbers.EdgeStrain / 2;

    /// <summary>The shorter side of the sheet: what decides.</summary>
    public Length ShorterSide => Door.Millimetres(Grid.Snap(_bow.Side));

    /// <summary>Rise of the first curve over the shorter side.</summary>
    public Length RiseAround => Door.Millimetres(Grid.Snap(_bow.RiseAround));

    /// <summary>Rise of the other curve over the shorter side.</summary>
    public Length RiseAlong => Door.Millimetres(Grid.Snap(_bow.RiseAlong));

    /// <summary>Radius of the first curve to the sheet's middle, without sign.</summary>
    public Length AroundMiddleRadius => Door.Millimetres(Grid.Snap(_around.Middle));

    /// <summary>The radius that the sheet should not undercut there.</summary>
    public Length AroundMinimumRadius => Door.Millimetres(Grid.Snap(_around.Minimum));

    /// <summary>Radius of the other curve to the sheet's middle, without sign.</summary>
    public Length AlongMiddleRadius => Door.Millimetres(Grid.Snap(_along.Middle));

    /// <summary>The radius that the sheet should not undercut there, by the figures of that direction; by those of the first where they are not known.</summary>
    public Length AlongMinimumRadius => Door.Millimetres(Grid.Snap(_along.Minimum));

    /// <summary>The greatest shorter side that buckling and stretch allow on these radii, rounded down; none is taken where a bend by itself is too tight.</summary>
    public Length LargestShorterSide => Door.Millimetres(Grid.SnapDown(_numbers.LargestSide));

    /// <summary>The smallest radius the other way, without sign, that a panel of this size takes beside the first curve (if it takes that), rounded up: by buckling, by stretch or by the bend itself.</summary>
    public Length SmallestAlong => Door.Millimetres(Grid.SnapUp(_numbers.SmallestAlong));

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: whether it does not pass.</summary>
    public bool HasProblem => !Passes;

    /// <summary>What a person should know, gravest first.</summary>
    /// <remarks>
    /// Codes: <c>panels-double-bend-too-tight</c>, <c>panels-double-curvature</c>, <c>panels-bay-too-long</c>, <c>panels-double-smaller</c>, <c>panels-double-figures</c>, <c>panels-bend-factor-low</c>, <c>panels-double-edges</c>,
    /// <c>panels-double-limit</c>, <c>panels-allowable-strength</c>, <c>panels-published-condition</c>, <c>panels-bend-dry</c>, <c>panels-cutting-dust</c>.
    /// </remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The defaults that the verdict rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    /// <summary>How the verdict comes about, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        _questions.Around.Solve(recorder);
        _questions.Along.Solve(recorder);
        DoubleCurvature.Solve(_bow, _wall, _questions.Along, recorder);
        return recorder.ToWorkings("Sheet on a surface that bows both ways");
    }

    /// <summary>The verdict as flat figures.</summary>
    /// <returns>Passes (1 or 0), share, strains, the shorter side with its rises, both radii to the middle with the least ones, and the largest side and smallest second radius that are taken.</returns>
    public IReadOnlyList<Figure> Figures() =>
    [
        new("passes", Passes ? 1 : 0, string.Empty),
        PanelFindings.Worst(Findings),
        new("double-curvature-share", Share, string.Empty),
        new("edge-strain", EdgeStrain, string.Empty),
        new("middle-strain", MiddleStrain, string.Empty),
        new("shorter-side", Door.Millimetres(ShorterSide), "mm"),
        new("rise-around", Door.Millimetres(RiseAround), "mm"),
        new("rise-along", Door.Millimetres(RiseAlong), "mm"),
        new("around-middle-radius", Door.Millimetres(AroundMiddleRadius), "mm"),
        new("around-minimum-radius", Door.Millimetres(AroundMinimumRadius), "mm"),
        new("along-middle-radius", Door.Millimetres(AlongMiddleRadius), "mm"),
        new("along-minimum-radius", Door.Millimetres(AlongMinimumRadius), "mm"),
        new("largest-shorter-side", Door.Millimetres(LargestShorterSide), "mm"),
        new("smallest-along", Door.Millimetres(SmallestAlong), "mm"),
    ];

    /// <summary>Verdict, share and what is taken, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{(Passes ? "takes both bows" : _around.IsTooTight || _along.IsTooTight ? "is bent tighter than it takes" : "does not take both bows")}: stretch and buckling {Print.Round(Share, 3)} of what may be; {Print.Mm(_bow.Side)} wide, by them up to {Print.Mm(Door.Millimetres(LargestShorterSide))} is taken";

    private static void AddBend(in BendQuestion question, in BendNumbers numbers, string way, List<Finding> findings)
    {
        if (!numbers.IsTooTight)
        {
            return;
        }

        findings.Add(new Finding(
            "panels-double-bend-too-tight",
            Severity.Problem,
            $"{way}, on {PanelFindings.Surface(question.Wall)}, the sheet is bent to {Print.Mm(numbers.Middle)} at its middle; by itself it takes {Print.MmUp(numbers.Minimum)} that way ({PanelFindings.Words(question.Limit)}), and rows of fixings bend it up to 1.5 times as much. No narrower panel helps: take a thinner sheet, or the grain the other way where that is allowed.",
            [new("middle-radius", Grid.Snap(numbers.Middle), "mm"), new("minimum-radius", Grid.Snap(numbers.Minimum), "mm")],
            question.Limit.Basis == BendBasis.PublishedRadius ? question.Limit.PublishedSource : Sources.BendElastic));
    }

    private IReadOnlyList<Finding> FindAll(bool otherIsKnown)
    {
        List<Finding> findings = [];
        AddBend(_questions.Around, _around, "Around the first curve", findings);
        AddBend(_questions.Along, _along, "The other way", findings);
        PanelFindings.AddDouble(_bow, findings);
        PanelFindings.AddReach(_questions.ReachAround, findings);
        PanelFindings.AddReach(_questions.ReachAlong, findings);
        if (!_bow.Passes)
        {
            findings.Add(new Finding(
                "panels-double-smaller",
                Severity.Caution,
                $"On these radii buckling and stretch allow a panel whose shorter side is {Print.Mm(System.Math.Floor(_numbers.LargestSide * 1000) / 1000)} at most; a panel of this size where the other radius is {Print.MmUp(_numbers.SmallestAlong)} or more.",
                [new("largest-shorter-side", Door.Millimetres(LargestShorterSide), "mm"), new("smallest-along", Door.Millimetres(SmallestAlong), "mm")],
                Sources.DoubleCurvature));
        }

        if (!otherIsKnown)
        {
            findings.Add(new Finding(
                "panels-double-figures",
                Severity.Caution,
                "Stiffness and strength of the other direction are not known: those given stand for both. Take a sheet that carries both.",
                [],
                Sources.BendElastic));
        }

        findings.Add(new Finding(
            "panels-double-edges",
            Severity.Note,
            IsBowl
                ? $"The surface is a bowl: the edges of the longer sides are squeezed by {Print.Round(-_numbers.EdgeStrain * 1e6, 1)} millionths, and what does not go in shows as waves between their fixings."
                : $"The surface is a saddle: the edges of the longer sides are stretched by {Print.Round(_numbers.EdgeStrain * 1e6, 1)} millionths and the middle is squeezed by half of it, so the middle bulges and drums.",
            [new("edge-strain", _numbers.EdgeStrain, string.Empty)],
            DoubleDefaults.EdgeStrain));
        findings.Add(new Finding(
            "panels-double-limit",
            Severity.Note,
            "The limits of double curvature are judgement, for a sheet much longer than wide. Each bend is held against the surface alone; with its rows, which bend a sheet up to 1.5 times as much, it is another question. Try the sheet on the wall before cutting others.",
            [new("double-curvature-share", Share, string.Empty)],
            Sources.DoubleCurvature));
        PanelFindings.AddLimits([_questions.Around.Limit, _questions.Along.Limit], findings);
        PanelFindings.AddWorking(findings);
        return Finding.GravestFirst(findings);
    }
}
