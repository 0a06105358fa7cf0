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
    /// <returns>Share of what is taken, strain, whether the sheet takes each bend by itself, and the largest panel and smallest second radius that are taken.</returns>
    /// <remarks>
    /// <para>Formula: b the shorter side, strain at its edges b²/(12 R1 R2), half of it of the other sign at the middle; share taken the greater of b⁴/(16 R1 R2 t²) (product of the rises b²/(8 R) over t²/4) and
    /// 10 E b²/(12 f R1 R2) (stretch against a tenth of the strength); so b up to the lesser of (16 R1 R2 t²)^(1/4) and sqrt(12 f R1 R2/(10 E)), and R2 from the greatest of b⁴/(16 R1 t²), 10 E b²/(12 f R1) and the least radius of the bend that way. Each
    /// radius, to the sheet's middle, must be no less than the sheet's least that way, F E t/(2 f) or a published one.</para>
    /// <para>Validity: a strip much longer than wide, its edges free to draw in; of a panel nearly square the strain is less (b²/(32 R1 R2) at the rim of a disc). Radii large against the panel.
    /// E and f are those of the direction whose E/f is the greater. Each bend is held against the surface alone: rows of fixings bend a sheet up to 1.5 times as much, which is for
    /// <see cref="PanelBend.Judge(BendCase)"/>. More than half round is a problem, more than once round is refused.</para>
    /// <para>Source: double-strain, bend-membrane, bend-elastic (derived); bend-double-limit, default-bend-factor, default-bend-factor-allowable (default, judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="panel"/> or its sheet is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the sheet goes more than once round.</exception>
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
    internal static BowNumbers Solve<TTrace>(in DoubleBow bow, double wall, in BendQuestion alongAxis, TTrace trace)
        where TTrace : struct, ITrace
    {
        // To the surface: a hollow one lies half a thickness outside the sheet's middle, a bulging one inside.
        double leastBend = alongAxis.Limit.Minimum + ((alongAxis.Bulges ? -1 : 1) * alongAxis.Limit.Thickness / 2);
        double share = bow.Solve(trace);

        // Named as there: the workings go on with its values.
        double radius = Math.Abs(wall), along = Math.Abs(bow.Bow), shorterSide = bow.Side, thickness = bow.Limit.Thickness, stretchElasticity = bow.Limit.Elasticity, stretchStrength = bow.Limit.Strength;
        double edgeStrain, largestByRise, largestByStretch, largestSide, smallestAlong;
        edgeStrain = trace.Step("epsilon", nameof(edgeStrain), shorterSide * shorterSide / (12 * radius * along), string.Empty, DoubleDefaults.EdgeStrain);
        largestByRise = trace.Step("b_r", nameof(largestByRise), Math.Sqrt(4 * thickness * Math.Sqrt(radius * along)), "mm", Sources.DoubleCurvature);
        largestByStretch = trace.Step("b_s", nameof(largestByStretch), Math.Sqrt(12 * stretchStrength * radius * along / (10 * stretchElasticity)), "mm", Sources.DoubleCurvature);
        largestSide = trace.Step("b_max", nameof(largestSide), Math.Min(largestByRise, largestByStretch), "mm", Sources.DoubleCurvature);
        trace.Given("R_2_b", leastBend, "mm", Sources.BendElastic, meaning: "least radius of the bend along the axis, to the surface");
        double flatEnough;
        flatEnough = trace.Step("R_2_s", nameof(flatEnough), Math.Max(shorterSide * shorterSide * shorterSide * shorterSide / (16 * radius * thickness * thickness), 10 * stretchElasticity * shorterSide * shorterSide / (12 * stretchStrength * radius)), "mm", Sources.DoubleCurvature);
        smallestAlong = trace.Step("R_2_min", nameof(smallestAlong), Math.Max(flatEnough, leastBend), "mm", Sources.DoubleCurvature);
        return new BowNumbers(share, wall < 0 == bow.Bow < 0 ? -edgeStrain : edgeStrain, largestSide, smallestAlong);
    }

    private static BowedPanelVerdict? Read(BowedPanel panel, List<InputProblem>? problems)
    {
        BendLimit around = BendLimit.Read(panel.Sheet, s_sheet, problems);
        int before = problems?.Count ?? 0;
        double wall = BendLimit.ReadWall(panel.Around, around.Thickness, "panel.Around", problems), bow = BendLimit.ReadWall(panel.Along, around.Thickness, "panel.Along", problems);
        double girth = Door.Millimetres(panel.Girth, "panel.Girth", ArcRows.Girth, problems), width = Door.Millimetres(panel.Width, "panel.Width", ArcRows.Girth, problems);
        if ((problems?.Count ?? 0) == before)
        {
            CheckTurn(girth, wall, around.Thickness, "panel.Girth", problems);
            CheckTurn(width, bow, around.Thickness, "panel.Width", problems);
        }

        if (problems is not null)
        {
            return null;
        }

        BentSheet? other = PanelBend.OtherWay(panel.Sheet);
        BendLimit along = other is null ? around.WithoutPublished() : BendLimit.Read(other, s_sheet, null);
        DoubleBowQuestions questions = new(
            new DoubleBow(around, along, wall, bow, Math.Min(girth, width)),
            new BendQuestion(around, wall, 1, Sources.HoldDownRows),
            new BendQuestion(along, bow, 1, Sources.HoldDownRows),
            girth,
            width);
        return new BowedPanelVerdict(panel, questions, wall, other is not null);
    }

    /// <summary>A sheet that goes more than once round a circle lies on itself.</summary>
    private static void CheckTurn(double size, double wall, double thickness, string name, List<InputProblem>? problems)
    {
        double turn = Grid.Snap(2 * Math.PI * (Math.Abs(wall) + ((wall < 0 ? 1 : -1) * thickness / 2)));
        if (size > turn)
        {
            Door.Report(new InputProblem(name, Print.Number(size) + " mm", $"no more than once round the curve, {Print.Number(turn)} mm at the sheet's middle", isRange: true), problems);
        }
    }
}

/// <summary>All that is asked of a sheet that bows both ways: both bends at once, each by itself on the surface alone, and how far each goes round.</summary>
internal readonly struct DoubleBowQuestions(in DoubleBow bow, in BendQuestion around, in BendQuestion along, double girth, double width)
{
    internal DoubleBow Bow { get; } = bow;

    internal BendQuestion Around { get; } = around;

    internal BendQuestion Along { get; } = along;

    internal ArcReach ReachAround => new(double.NaN, girth, Around.Solve(default(Silent)).Middle);

    internal ArcReach ReachAlong => new(double.NaN, width, Along.Solve(default(Silent)).Middle);

    internal bool Passes => Bow.Passes && Around.Solve(default(Silent)).Passes && Along.Solve(default(Silent)).Passes && !ReachAround.IsOutside && !ReachAlong.IsOutside;
}

/// <summary>What came out, in mm; the strain positive where the edges are stretched.</summary>
internal readonly struct BowNumbers(double share, double edgeStrain, double largestSide, double smallestAlong)
{
    internal double Share { get; } = share;

    internal double EdgeStrain { get; } = edgeStrain;

    internal double LargestSide { get; } = largestSide;

    internal double SmallestAlong { get; } = smallestAlong;
}
