using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>A sheet on a surface that bows both ways: what <see cref="DoubleCurvature.Judge(BowedPanel)"/> answers.</summary>
/// <remarks><see cref="DoubleCurvature.Judge(BowedPanel)"/> makes one.</remarks>
public sealed class BowedPanelVerdict
{
    private readonly DoubleBow _bow;
    private readonly double _wall;
    private readonly BowNumbers _numbers;

    internal BowedPanelVerdict(BowedPanel panel, in DoubleBow bow, double wall, bool otherIsKnown)
    {
        Panel = panel;
        _bow = bow;
        _wall = wall;
        _numbers = DoubleCurvature.Solve(bow, wall, default(Silent));
        Findings = FindAll(otherIsKnown);
    }

    /// <summary>What was asked.</summary>
    public BowedPanel Panel { get; }

    /// <summary>Whether the sheet takes both curvatures at once, within the limits of buckling and stretch. Each bend by itself is for <see cref="PanelBend"/> to judge.</summary>
    public bool Passes => _bow.Passes;

    /// <summary>How much is taken of what may be: by buckling or by stretch, the greater. Over 1 is refused.</summary>
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

    /// <summary>The greatest shorter side that is taken on these radii, rounded down.</summary>
    public Length LargestShorterSide => Door.Millimetres(Grid.SnapDown(_numbers.LargestSide));

    /// <summary>The smallest radius the other way, without sign, that a panel of this size takes beside the first curve, rounded up.</summary>
    public Length SmallestAlong => Door.Millimetres(Grid.SnapUp(_numbers.SmallestAlong));

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: whether it is refused.</summary>
    public bool HasProblem => !Passes;

    /// <summary>What a person should know, gravest first.</summary>
    /// <remarks>Codes: <c>panels-double-curvature</c>, <c>panels-double-smaller</c>, <c>panels-double-figures</c>, <c>panels-double-edges</c>, <c>panels-double-limit</c>, <c>panels-cutting-dust</c>.</remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>How the verdict comes about, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        DoubleCurvature.Solve(_bow, _wall, recorder);
        return recorder.ToWorkings("Sheet on a surface that bows both ways");
    }

    /// <summary>The verdict as flat figures.</summary>
    /// <returns>Passes (1 or 0), share, strains, the shorter side with its rises, and the largest side and smallest second radius that are taken.</returns>
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
        new("largest-shorter-side", Door.Millimetres(LargestShorterSide), "mm"),
        new("smallest-along", Door.Millimetres(SmallestAlong), "mm"),
    ];

    /// <summary>Verdict, share and what is taken, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{(Passes ? "takes both bows" : "does not take both bows")}: {Print.Round(Share, 3)} of what may be; {Print.Mm(_bow.Side)} wide, up to {Print.Mm(Door.Millimetres(LargestShorterSide))} is taken";

    private IReadOnlyList<Finding> FindAll(bool otherIsKnown)
    {
        List<Finding> findings = [];
        PanelFindings.AddDouble(_bow, findings);
        if (!Passes)
        {
            findings.Add(new Finding(
                "panels-double-smaller",
                Severity.Caution,
                $"On these radii a panel is taken whose shorter side is {Print.Mm(System.Math.Floor(_numbers.LargestSide * 1000) / 1000)} at most; a panel of this size where the other radius is {Print.MmUp(_numbers.SmallestAlong)} or more.",
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
            "The limits of double curvature are judgement, for a sheet much longer than wide. Each bend by itself, with its rows, is another question; try the sheet on the wall before cutting others.",
            [new("double-curvature-share", Share, string.Empty)],
            Sources.DoubleCurvature));
        PanelFindings.AddWorking(findings);
        return Finding.GravestFirst(findings);
    }
}
