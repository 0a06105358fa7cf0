using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>Whether a sheet bends round a curve: the radius it must not undercut, the radius it really takes, and which basis governs.</summary>
/// <remarks>
/// A sheet held at rows does not take the radius of the wall: it is tighter at the rows and flatter between. What must pass is the
/// peak radius. The wall's radius is that of the surface at the sheet's back; it is carried to the sheet's middle.
/// </remarks>
public static class PanelBend
{
    private const string CaseWords = "a sheet on a wall";

    private static readonly BentSheetNames s_sheet = new("sheet"), s_panelSheet = new("panel.Sheet");

    /// <summary>The tightest radius a sheet may be bent to, to its middle.</summary>
    /// <param name="sheet">The sheet, with the figures of the direction around the curve.</param>
    /// <returns>The radius and its basis; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: elastic R = F E t/(2 f); with a published radius the greater of the two.</para>
    /// <para>Validity: dry, at room temperature, bent once and left so; no wetting, steam or heat is counted. F is 2 unless given, 1 for an allowable strength.</para>
    /// <para>Source: bend-elastic (derived); default-bend-factor, default-bend-factor-allowable (default, judgement); stiffness, strength and a published radius are the sheet's.</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="sheet"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range.</exception>
    /// <exception cref="ArgumentException">A figure is not a number or in an undefined unit, or the grain is undefined.</exception>
    /// <example><code>
    /// BentSheet stiff = new(Mm(6.4), Pressure.FromMegapascals(12737), Pressure.FromMegapascals(50.9)) { Grain = BendGrain.AroundTheCurve };
    /// Length least = PanelBend.MinimumRadius(stiff).Minimum; // 1601.509 mm: twice the 800.754 at which one in twenty breaks
    /// </code></example>
    public static BendRadius MinimumRadius(BentSheet sheet) => new(BendLimit.Read(sheet, s_sheet, null));

    /// <summary>All problems with the input of <see cref="MinimumRadius(BentSheet)"/>; nothing is thrown.</summary>
    /// <param name="sheet">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckMinimumRadius(BentSheet sheet)
    {
        List<InputProblem> problems = [];
        BendLimit.Read(sheet, s_sheet, problems);
        return problems;
    }

    /// <summary>Whether a sheet follows a wall, by the radius at its most bent place.</summary>
    /// <param name="panel">The sheet, the wall, the rows that hold it.</param>
    /// <returns>The verdict.</returns>
    /// <remarks>
    /// <para>Formula: the middle's radius is R - t/2 on a hollow surface, |R| + t/2 on a bulging one; the peak radius is that over the greatest
    /// curvature ratio k of the rows (three rows of any spacing 1.5, four equal ones 1.2, two 0; unknown rows 1.5; a surface behind the whole sheet 1 where it
    /// bulges and 1.5 where it is hollow); the sheet follows where the peak radius is no less than the minimum radius. Along the axis the same with the
    /// figures of the other direction, k 1.5, or 1 on a bulging surface under the whole sheet.</para>
    /// <para>Validity: three rows at least, on one true circle, bays up to 0.4 of the radius (there the peak is about 1% off; beyond, it is not known how much; over the
    /// radius itself, or over half a circle, nothing follows). Double curvature: refused where the product of the rises over the shorter side is over t²/4, or the
    /// stretch E b²/(12 R1 R2) over a tenth of the strength, E and f those of the direction whose E/f is the greater.</para>
    /// <para>Source: bend-elastic, bend-hold-down, bend-worst-rows, bend-backed-hollow, bend-edge-lift, bend-membrane (derived); default-bend-factor, default-bend-factor-allowable, bend-double-limit (default, judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="panel"/> or its sheet is null, or <see cref="BendCase.BowAlong"/> is given without the sheet's sizes.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit, or of an undefined kind.</exception>
    /// <example><code>
    /// BentSheet easy = new(Mm(6.4), Pressure.FromMegapascals(4763), Pressure.FromMegapascals(29)) { Grain = BendGrain.AlongTheAxis };
    /// BendVerdict band = PanelBend.Judge(new BendCase(easy, Mm(2216)) { Rows = BentSheet.EqualRows(Mm(352), 3) });
    /// Length? peak = band.PeakRadius;                     // 1475.2 mm: (2216 - 3.2)/1.5
    /// bool follows = band.Follows;                        // true: 1051.145 mm are allowed
    /// </code></example>
    public static BendVerdict Judge(BendCase panel)
    {
        Door.IsMissing(panel, new Name(nameof(panel)), CaseWords, null);
        (BendQuestion question, ArcRows? rows, double bow, double girth, double width) = Read(panel, null);
        BendLimit around = question.Limit;
        BentSheet? other = OtherWay(panel.Sheet);
        BendLimit along = other is null ? around.WithoutPublished() : BendLimit.Read(other, s_sheet, null);
        (double ratio, Source source) = ArcRows.RatioOf(null, bow < 0, panel.Backing);
        bool liesOnBulge = question.Bulges && panel.Backing == SheetBacking.AllOver;
        PanelBendQuestions questions = new(
            question,
            double.IsNaN(bow) ? null : new BendQuestion(along, bow, ratio, source),
            new DoubleBow(around, along, question.Wall, bow, Math.Min(girth, width)),
            new ArcReach(liesOnBulge || rows is null ? double.NaN : rows.LongestBay, !double.IsNaN(girth) ? girth : rows?.End ?? double.NaN, question.Solve(default(Silent)).Middle))
        {
            AlongIsKnown = other is not null,
            Turned = other is null || panel.Sheet.PublishedRadius is not null ? null : question.With(along),
            TurnedAlong = double.IsNaN(bow) ? null : new BendQuestion(around, bow, ratio, source),
        };
        return new BendVerdict(panel, questions, rows);
    }

    /// <summary>All problems with the input of <see cref="Judge(BendCase)"/>; nothing is thrown.</summary>
    /// <param name="panel">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckJudge(BendCase panel)
    {
        List<InputProblem> problems = [];
        if (!Door.IsMissing(panel, new Name(nameof(panel)), CaseWords, problems))
        {
            Read(panel, problems);
        }

        return problems;
    }

    /// <summary>The same question with the sheet's grain turned; null where its other figures are not known, or a published radius is of this grain.</summary>
    internal static BendQuestion? Turned(BentSheet sheet, in BendQuestion question) =>
        sheet.PublishedRadius is null && OtherWay(sheet) is { } turned ? question.With(BendLimit.Read(turned, s_sheet, null)) : null;

    /// <summary>The same sheet bent the other way, without a published radius; null where the table of its figures is not known or they were changed.</summary>
    internal static BentSheet? OtherWay(BentSheet sheet)
    {
        if (sheet.Goods is not { } goods || sheet.Grain is not { } grain)
        {
            return null;
        }

        BentSheet same = BentSheet.Of(goods, grain) with { Factor = sheet.Factor, Name = sheet.Name, PublishedRadius = sheet.PublishedRadius };
        return same.Equals(sheet) ? BentSheet.Of(goods, grain == BendGrain.AlongTheAxis ? BendGrain.AroundTheCurve : BendGrain.AlongTheAxis) with { Factor = sheet.Factor } : null;
    }

    private static (BendQuestion Question, ArcRows? Rows, double Bow, double Girth, double Width) Read(BendCase panel, List<InputProblem>? problems)
    {
        BendLimit limit = BendLimit.Read(panel.Sheet, s_panelSheet, problems);
        double wall = BendLimit.ReadWall(panel.WallRadius, limit.Thickness, "panel.WallRadius", problems);
        double[]? positions = panel.Rows is null ? null : ArcRows.Read(panel.Rows, "panel.Rows", problems);
        BendLimit.CheckBacking(panel.Backing, "panel.Backing", problems);
        double girth = panel.Girth is { } around ? Door.Millimetres(around, "panel.Girth", ArcRows.Girth, problems) : double.NaN;
        double width = panel.Width is { } along ? Door.Millimetres(along, "panel.Width", ArcRows.Girth, problems) : double.NaN;
        double bow = double.NaN;
        if (panel.BowAlong is { } radius)
        {
            bow = BendLimit.ReadWall(radius, limit.Thickness, "panel.BowAlong", problems);
            Door.IsMissing(panel.Girth, new Name("panel.Girth"), "the sheet's size around the curve, where BowAlong is given", problems);
            Door.IsMissing(panel.Width, new Name("panel.Width"), "the sheet's size along the axis, where BowAlong is given", problems);
        }

        ArcRows? rows = positions is null ? null : new ArcRows(positions);
        (double ratio, Source source) = ArcRows.RatioOf(rows, wall < 0, panel.Backing);
        return (new BendQuestion(limit, wall, ratio, source), rows, bow, girth, width);
    }
}

/// <summary>All that is asked of a sheet on a wall: the bend around the curve and along its axis, both at once, and how far it reaches round.</summary>
internal readonly struct PanelBendQuestions(in BendQuestion around, BendQuestion? along, in DoubleBow bow, in ArcReach reach)
{
    internal BendQuestion Around { get; } = around;

    /// <summary>The bend along the axis, with the figures of the other direction; null where the surface is straight that way.</summary>
    internal BendQuestion? Along { get; } = along;

    /// <summary>Whether those figures are the sheet's own; else those around the curve stand for them.</summary>
    internal bool AlongIsKnown { get; init; }

    internal DoubleBow Bow { get; } = bow;

    internal ArcReach Reach { get; } = reach;

    /// <summary>The bend around the curve with the grain turned; null where that is not known.</summary>
    internal BendQuestion? Turned { get; init; }

    /// <summary>The bend along the axis then.</summary>
    internal BendQuestion? TurnedAlong { get; init; }

    internal bool Passes => Holds(Around, Along);

    /// <summary>Whether it would pass with its grain turned; null where that is not known. Stretch and reach are the same either way.</summary>
    internal bool? TurnedPasses => Turned is { } turned ? Holds(turned, TurnedAlong) : null;

    private bool Holds(in BendQuestion around, BendQuestion? along) =>
        around.Solve(default(Silent)).Passes && (along is not { } other || other.Solve(default(Silent)).Passes) && Bow.Passes && !Reach.IsOutside;
}

/// <summary>Curvature in two directions: what forcing a flat sheet to it asks.</summary>
internal readonly struct DoubleBow(in BendLimit around, in BendLimit along, double wall, double bow, double side)
{
    private readonly double _thickness = around.Thickness;

    /// <summary>The direction that takes less stretch: the stretch is along the long side, and which that is depends on the cut.</summary>
    private readonly BendLimit _limit = around.Elasticity / around.Strength >= along.Elasticity / along.Strength ? around : along;

    /// <summary>Whether both curvatures were given and neither is none.</summary>
    internal bool Asked => !double.IsNaN(wall) && !double.IsNaN(bow);

    /// <summary>Figures of the direction that takes less stretch.</summary>
    internal BendLimit Limit => _limit;

    internal double Bow => bow;

    internal double Side => side;

    internal double RiseAround => side * side / (8 * Math.Abs(wall));

    internal double RiseAlong => side * side / (8 * Math.Abs(bow));

    /// <summary>Stretch at the edges times stiffness, in MPa.</summary>
    internal double Stress => _limit.Elasticity * side * side / (12 * Math.Abs(wall) * Math.Abs(bow));

    /// <summary>Share of what is allowed that is taken up: by buckling, by stretch, the greater.</summary>
    internal double Share => Solve(default(Silent));

    internal bool Passes => !Asked || Share <= 1 + 1e-9;

    internal double Solve<TTrace>(TTrace trace)
        where TTrace : struct, ITrace
    {
        double radius = Math.Abs(wall), along = Math.Abs(bow), shorterSide = side, thickness = _thickness, stretchElasticity = _limit.Elasticity, stretchStrength = _limit.Strength;
        trace.Given("R", radius, "mm", Sources.Given, meaning: "radius around the curve");
        trace.Given("R_2", along, "mm", Sources.Given, meaning: "radius along the axis");
        trace.Given("b", shorterSide, "mm", Sources.Given);
        trace.Given("t", thickness, "mm", _limit.Source);
        trace.Given("E_s", stretchElasticity, "MPa", _limit.Source, meaning: "of the direction that takes less stretch");
        trace.Given("f_s", stretchStrength, "MPa", _limit.Source, meaning: "of the same direction");
        double riseAround, riseAlong, stretchStress, shareTaken;
        riseAround = trace.Step("f_1", nameof(riseAround), shorterSide * shorterSide / (8 * radius), "mm", Sources.MembraneStrain);
        riseAlong = trace.Step("f_2", nameof(riseAlong), shorterSide * shorterSide / (8 * along), "mm", Sources.MembraneStrain);
        stretchStress = trace.Step("sigma_m", nameof(stretchStress), stretchElasticity * shorterSide * shorterSide / (12 * radius * along), "MPa", Sources.MembraneStrain);
        shareTaken = trace.Step("u", nameof(shareTaken), Math.Max(riseAround * riseAlong / (thickness * thickness / 4), stretchStress / (stretchStrength / 10)), string.Empty, Sources.DoubleCurvature);
        return shareTaken;
    }
}
