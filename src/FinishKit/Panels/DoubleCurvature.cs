using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>Whether a flat sheet takes a surface that bows both ways, and how large a panel or how tight a second bow it takes.</summary>
/// <remarks>
/// <see cref="PanelBend.Judge(BendCase)"/> holds the same limit, together with both bends and the rows; here it is turned round, to find the panel.
/// </remarks>
public static class DoubleCurvature
{
    private const string CaseWords = "a sheet on a surface that bows both ways";

    private static readonly BentSheetNames s_sheet = new("panel.Sheet");

    /// <summary>Judges a sheet on a surface that bows both ways.</summary>
    /// <param name="panel">Sheet, both radii, both sizes.</param>
    /// <returns>Share of what is taken, strain, and the largest panel and smallest second radius that are taken.</returns>
    /// <remarks>
    /// <para>Formula: b the shorter side, strain at its edges b²/(12 R1 R2), half of it of the other sign at the middle; share taken the greater of b⁴/(16 R1 R2 t²) (product of the rises b²/(8 R) over t²/4) and
    /// 10 E b²/(12 f R1 R2) (stretch against a tenth of the strength); so b up to the lesser of (16 R1 R2 t²)^(1/4) and sqrt(12 f R1 R2/(10 E)), and R2 from the greater of b⁴/(16 R1 t²) and 10 E b²/(12 f R1).</para>
    /// <para>Validity: a strip much longer than wide, its edges free to draw in; of a panel nearly square the strain is less (b²/(32 R1 R2) at the rim of a disc). Radii large against the panel.
    /// E and f are those of the direction whose E/f is the greater. The bends themselves are not judged here.</para>
    /// <para>Source: double-strain, bend-membrane (derived); bend-double-limit (default, judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="panel"/> or its sheet is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit, or the grain is undefined.</exception>
    /// <example><code>
    /// BentSheet ply = BentSheet.Of(SheetGoods.Birch6, BendGrain.AlongTheAxis);
    /// BowedPanelVerdict band = DoubleCurvature.Judge(new BowedPanel(ply, Mm(2216), Mm(57_800), Mm(352), Mm(3400)));
    /// double share = band.Share;                          // 0.202 of what is taken
    /// Length widest = band.LargestShorterSide;            // 538 mm
    /// Length tightest = band.SmallestAlong;               // 11,660 mm the other way
    /// </code></example>
    public static BowedPanelVerdict Judge(BowedPanel panel)
    {
        Door.IsMissing(panel, new Name(nameof(panel)), CaseWords, null);
        return Read(panel, null)!;
    }

    /// <summary>All problems with the input of <see cref="Judge(BowedPanel)"/>; nothing is thrown.</summary>
    /// <param name="panel">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckJudge(BowedPanel panel)
    {
        List<InputProblem> problems = [];
        if (!Door.IsMissing(panel, new Name(nameof(panel)), CaseWords, problems))
        {
            Read(panel, problems);
        }

        return problems;
    }

    /// <summary>The one formula body, for the numbers and for the workings: the share as a bent panel has it, then what is taken.</summary>
    internal static BowNumbers Solve<TTrace>(in DoubleBow bow, double wall, TTrace trace)
        where TTrace : struct, ITrace
    {
        double share = bow.Solve(trace);

        // Named as there: the workings go on with its values.
        double radius = Math.Abs(wall), along = Math.Abs(bow.Bow), shorterSide = bow.Side, thickness = bow.Limit.Thickness, stretchElasticity = bow.Limit.Elasticity, stretchStrength = bow.Limit.Strength;
        double edgeStrain, largestByRise, largestByStretch, largestSide, smallestAlong;
        edgeStrain = trace.Step("epsilon", nameof(edgeStrain), shorterSide * shorterSide / (12 * radius * along), string.Empty, DoubleDefaults.EdgeStrain);
        largestByRise = trace.Step("b_r", nameof(largestByRise), Math.Sqrt(4 * thickness * Math.Sqrt(radius * along)), "mm", Sources.DoubleCurvature);
        largestByStretch = trace.Step("b_s", nameof(largestByStretch), Math.Sqrt(12 * stretchStrength * radius * along / (10 * stretchElasticity)), "mm", Sources.DoubleCurvature);
        largestSide = trace.Step("b_max", nameof(largestSide), Math.Min(largestByRise, largestByStretch), "mm", Sources.DoubleCurvature);
        smallestAlong = trace.Step("R_2_min", nameof(smallestAlong), Math.Max(shorterSide * shorterSide * shorterSide * shorterSide / (16 * radius * thickness * thickness), 10 * stretchElasticity * shorterSide * shorterSide / (12 * stretchStrength * radius)), "mm", Sources.DoubleCurvature);
        return new BowNumbers(share, wall < 0 == bow.Bow < 0 ? -edgeStrain : edgeStrain, largestSide, smallestAlong);
    }

    private static BowedPanelVerdict? Read(BowedPanel panel, List<InputProblem>? problems)
    {
        BendLimit around = BendLimit.Read(panel.Sheet, s_sheet, problems);
        double wall = BendLimit.ReadWall(panel.Around, around.Thickness, "panel.Around", problems), bow = BendLimit.ReadWall(panel.Along, around.Thickness, "panel.Along", problems);
        double girth = Door.Millimetres(panel.Girth, "panel.Girth", ArcRows.Girth, problems), width = Door.Millimetres(panel.Width, "panel.Width", ArcRows.Girth, problems);
        if (problems is not null)
        {
            return null;
        }

        BentSheet? other = PanelBend.OtherWay(panel.Sheet);
        BendLimit along = other is null ? around : BendLimit.Read(other, s_sheet, null);
        return new BowedPanelVerdict(panel, new DoubleBow(around, along, wall, bow, Math.Min(girth, width)), wall, other is not null);
    }
}

/// <summary>What came out, in mm; the strain positive where the edges are stretched.</summary>
internal readonly struct BowNumbers(double share, double edgeStrain, double largestSide, double smallestAlong)
{
    internal double Share { get; } = share;

    internal double EdgeStrain { get; } = edgeStrain;

    internal double LargestSide { get; } = largestSide;

    internal double SmallestAlong { get; } = smallestAlong;
}
