using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>What holds a sheet to a curve: the pull at each row of fixings, how tightly the sheet bends at its tightest, how far it stands off between rows.</summary>
/// <remarks>
/// The sheet is flat by nature and is a beam on supports displaced to the arc. On a hollow wall with three rows the middle one pulls,
/// the edges only bear, and the sheet bends half as tight again as the wall. On a bulging wall the edges pull.
/// </remarks>
public static class HoldDown
{
    internal const double DefaultEdgeLift = 0.5;

    private const string CaseWords = "a sheet with its rows of fixings";
    private const int MostEqualRows = 12;

    private static readonly Allowed s_girth = new(1, 1e5, "mm");
    private static readonly Allowed s_fixings = new(1, 10_000, string.Empty);
    private static readonly Allowed s_force = new(1e-6, 1e6, "N");
    private static readonly Allowed s_lift = new(Allowed.OneStep, 1000, "mm");
    private static readonly BentSheetNames s_panelSheet = new("panel.Sheet"), s_sheet = new("sheet");

    /// <summary>Pull at each row, greatest curvature, and stand-off of a sheet held to an arc.</summary>
    /// <param name="panel">Sheet, surface, rows and width.</param>
    /// <returns>The answer.</returns>
    /// <remarks>
    /// <para>Formula: three moments with supports displaced by s (L - s)/(2 R_m); pull per width = E t³/12 over R_m times the change of the moments' slope;
    /// peak radius = R_m over the greatest moment ratio. Three equal rows at a: pull 3 E I/(R a), ratio 1.5, stand-off a²/(27 R). A bulging
    /// surface under the whole sheet: the edge pull F and its lift l²/(6 R), l = E I/(R F); an edge d beyond the outer row stands off by d l/(2 R) + d²/(2 R) more.</para>
    /// <para>Validity: small rise. Against the exact elastic curve of three rows: at bays of 0.2 R the curvature is within 0.3% and the pull within 1.6%,
    /// at 0.4 R within 1% and 6.5%, low or high by how the edges bear. Rows lie on one true circle, hold both ways, and give by the hundredths
    /// of a millimetre that the sheet needs along its girth. Fixings are counted with a row's pull shared evenly, the least there can be. Beyond 0.4 R the error is not known; a bay over R, or a girth over half a circle, is a problem. A hollow
    /// surface behind the whole sheet is refused: what its fixings pull is not known.</para>
    /// <para>Source: bend-hold-down, bend-stiffness, bend-edge-lift, bend-elastic (derived); default-bend-factor, default-bend-factor-allowable, default-edge-lift (default, judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="panel"/>, its sheet or its rows are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit or of an undefined kind, both edge pull and edge lift are given, or a hollow surface is behind the whole sheet.</exception>
    /// <example><code>
    /// BentSheet sheet = new(Mm(6), Pressure.FromMegapascals(5000), Pressure.FromMegapascals(30));
    /// HoldDownResult band = HoldDown.OnArc(new HoldDownCase(sheet, Mm(2003), BentSheet.EqualRows(Mm(400), 3), Mm(1000)));
    /// Length? peak = band.PeakRadius;                     // 1333.333 mm: 2000 at the middle over 1.5
    /// Force pull = band.GreatestPull;                     // 675 N over 1 m: 3 E I/(R a) = 3 · 90000/(2000 · 200) N/mm
    /// Length off = band.StandOff;                         // 0.741 mm into the room: 200²/(27 · 2000)
    /// </code></example>
    public static HoldDownResult OnArc(HoldDownCase panel)
    {
        Door.IsMissing(panel, new Name(nameof(panel)), CaseWords, null);
        return new HoldDownResult(panel, Read(panel, null));
    }

    /// <summary>All problems with the input of <see cref="OnArc(HoldDownCase)"/>; nothing is thrown.</summary>
    /// <param name="panel">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckOnArc(HoldDownCase panel)
    {
        List<InputProblem> problems = [];
        if (!Door.IsMissing(panel, new Name(nameof(panel)), CaseWords, problems))
        {
            Read(panel, problems);
        }

        return problems;
    }

    /// <summary>How few equal rows of fixings, on strips, let a sheet follow a wall.</summary>
    /// <param name="sheet">The sheet, with the figures of the direction around the curve.</param>
    /// <param name="wallRadius">Radius of the surface at the sheet's back [length], positive where hollow to the room, -1000000 to 1000000 mm, not 0; null where flat.</param>
    /// <returns>The least number from 3 to 12, and every number tried.</returns>
    /// <remarks>
    /// <para>Formula: for each number the greatest moment ratio k of equal rows; it passes where R_m/k is no less than the minimum radius. The girth cancels.</para>
    /// <para>Validity: as for rows on an arc. More rows are not always better: three peak at 1.5, four at 1.2, five at 1.286, many near 1.268.</para>
    /// <para>Source: bend-hold-down, bend-elastic (derived); default-bend-factor, default-bend-factor-allowable (default, judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="sheet"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit, or the grain is undefined.</exception>
    /// <example><code>
    /// BentSheet stiff = new(Mm(6.4), Pressure.FromMegapascals(12737), Pressure.FromMegapascals(50.9));
    /// int? rows = HoldDown.LeastEqualRows(stiff, Mm(2216)).Rows; // 4: (2216 - 3.2)/1.2 = 1844 passes 1602, 1475 with three does not
    /// </code></example>
    public static RowsSearch LeastEqualRows(BentSheet sheet, Length? wallRadius)
    {
        (BendLimit limit, double wall) = Read(sheet, wallRadius, null);
        List<RowsTried> tried = [];
        for (int rows = 3; rows <= MostEqualRows; rows++)
        {
            BendQuestion question = new(limit, wall, EqualRatio(rows), Sources.HoldDownRows);
            tried.Add(new RowsTried(rows, question, question.Solve(default(Silent))));
        }

        return new RowsSearch(sheet, limit, wall, tried);
    }

    /// <summary>All problems with the input of <see cref="LeastEqualRows(BentSheet, Length?)"/>; nothing is thrown.</summary>
    /// <param name="sheet">As there.</param>
    /// <param name="wallRadius">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckLeastEqualRows(BentSheet sheet, Length? wallRadius)
    {
        List<InputProblem> problems = [];
        Read(sheet, wallRadius, problems);
        return problems;
    }

    private static double EqualRatio(int rows)
    {
        double[] positions = new double[rows];
        for (int i = 0; i < rows; i++)
        {
            positions[i] = 100.0 * i;
        }

        return new ArcRows(positions).Ratio;
    }

    private static (BendLimit Limit, double Wall) Read(BentSheet sheet, Length? wallRadius, List<InputProblem>? problems)
    {
        BendLimit limit = BendLimit.Read(sheet, s_sheet, problems);
        return (limit, BendLimit.ReadWall(wallRadius, limit.Thickness, nameof(wallRadius), problems));
    }

    private static HeldSheet Read(HoldDownCase panel, List<InputProblem>? problems)
    {
        BendLimit limit = BendLimit.Read(panel.Sheet, s_panelSheet, problems);
        double wall = BendLimit.ReadWall(panel.WallRadius, limit.Thickness, "panel.WallRadius", problems);
        double[]? positions = ArcRows.Read(panel.Rows, "panel.Rows", problems);
        double width = Door.Millimetres(panel.Width, "panel.Width", s_girth, problems);
        double girth = panel.Girth is { } around ? Door.Millimetres(around, "panel.Girth", s_girth, problems) : double.NaN;
        if (positions is not null && girth < positions[positions.Length - 1])
        {
            Door.Report(new InputProblem("panel.Girth", Print.Number(girth) + " mm", $"at least the position of the last row, {Print.Number(positions[positions.Length - 1])} mm", isRange: true), problems);
        }

        BendLimit.CheckBacking(panel.Backing, "panel.Backing", problems);
        int fixings = panel.FixingsPerRow is { } n && !double.IsNaN(Door.Number(n, "panel.FixingsPerRow", s_fixings, problems)) ? n : 0;
        double capacity = panel.FixingCapacity is { } force ? Door.Newtons(force, "panel.FixingCapacity", s_force, problems) : double.NaN;
        double pull = panel.EdgePull is { } edge ? Door.Newtons(edge, "panel.EdgePull", s_force, problems) : double.NaN;
        double lift = panel.EdgeLift is { } off ? Door.Millimetres(off, "panel.EdgeLift", s_lift, problems) : double.NaN;
        if (panel.EdgePull is not null && panel.EdgeLift is not null)
        {
            Door.Report(new InputProblem("panel.EdgeLift", "given besides EdgePull", "one of the two, or neither", isRange: false), problems);
        }

        if (wall > 0 && panel.Backing == SheetBacking.AllOver)
        {
            // Tangent at each row, the sheet bears just beside it and pries on the fixings: how near decides the pull, and nobody knows it.
            Door.Report(new InputProblem("panel.Backing", "AllOver on a hollow surface", "StripsAtRows there: what fixings pull against a surface close behind them is not known; PanelBend.Judge takes AllOver", isRange: false), problems);
        }

        ArcRows? rows = positions is null ? null : new ArcRows(positions);
        return new HeldSheet(limit, wall, rows!, width, girth)
        {
            Backing = panel.Backing,
            Fixings = fixings,
            Capacity = capacity,
            EdgePull = pull,
            EdgeLift = double.IsNaN(lift) ? DefaultEdgeLift : lift,
            LiftIsDefault = panel.EdgeLift is null && panel.EdgePull is null,
        };
    }
}

/// <summary>A hold-down case as plain numbers in mm and N; NaN stands for what was not given.</summary>
internal readonly struct HeldSheet(in BendLimit limit, double wall, ArcRows rows, double width, double girth)
{
    internal BendLimit Limit { get; } = limit;

    internal double Wall { get; } = wall;

    internal ArcRows Rows { get; } = rows;

    internal double Width { get; } = width;

    internal double Girth { get; } = girth;

    internal SheetBacking Backing { get; init; }

    internal int Fixings { get; init; }

    internal double Capacity { get; init; }

    internal double EdgePull { get; init; }

    internal double EdgeLift { get; init; }

    internal bool LiftIsDefault { get; init; }

    internal bool IsFlat => double.IsNaN(Wall);

    /// <summary>A bulging surface under the whole sheet: only the edges are asked.</summary>
    internal bool OnBulge => Wall < 0 && Backing == SheetBacking.AllOver;

    /// <summary>Half the girth between the outer rows: from the crown to an edge.</summary>
    internal double Half => (Rows.Position(Rows.RowCount - 1) - Rows.Position(0)) / 2;

    /// <summary>The longest bay, or what lifts at an edge of a bulging surface, and the girth, against the radius.</summary>
    internal ArcReach Reach(in EdgeNumbers edge) => new(OnBulge ? edge.Length : Rows.LongestBay, double.IsNaN(Girth) ? Rows.End : Girth, Middle);

    internal double Middle => IsFlat ? double.NaN : Math.Abs(Wall) + ((Wall < 0 ? 1 : -1) * Limit.Thickness / 2);

    /// <summary>Pull per width at each edge of a sheet on a bulging surface, how far the edge lifts, the length that lifts, and the greatest curvature ratio.</summary>
    internal EdgeNumbers Edge<TTrace>(TTrace trace)
        where TTrace : struct, ITrace
    {
        double stiffness = Limit.Stiffness, middle = Middle, half = Half, edgePull, edgeLift, liftedLength, edgeRatio = 1;
        trace.Given("D", stiffness, "N mm", Sources.SheetStiffness, meaning: "stiffness per width");
        trace.Given("R_m", middle, "mm", Sources.BendElastic, meaning: "radius of the sheet's middle");
        trace.Given("h", half, "mm", Sources.Given, meaning: "half the girth between the edge rows");
        if (double.IsNaN(EdgePull))
        {
            edgeLift = EdgeLift;
            trace.Given("y", edgeLift, "mm", LiftIsDefault ? Sources.EdgeLiftLimit : Sources.Given, meaning: "lift of the edge");
            liftedLength = trace.Step("l", nameof(liftedLength), Math.Min(half, Math.Sqrt(6 * middle * edgeLift)), "mm", Sources.EdgeLift);
            if (liftedLength < half)
            {
                edgePull = trace.Step("F", nameof(edgePull), stiffness / (middle * liftedLength), "N/mm", Sources.EdgeLift);
            }
            else
            {
                edgePull = trace.Step("F", nameof(edgePull), Math.Max(0, 3 * stiffness / (half * half * half) * ((half * half / (2 * middle)) - edgeLift)), "N/mm", Sources.EdgeLift);
                edgeRatio = trace.Step("k", nameof(edgeRatio), edgePull * half * middle / stiffness, string.Empty, Sources.EdgeLift);
                edgeLift = trace.Step("y_max", nameof(edgeLift), Math.Min(edgeLift, half * half / (2 * middle)), "mm", Sources.EdgeLift);
            }

            return new EdgeNumbers(edgePull, edgeLift, liftedLength, edgeRatio, EdgeSlope(edgePull, liftedLength));
        }

        double pull = EdgePull, width = Width;
        trace.Given("P", pull, "N", Sources.Given, meaning: "pull on an edge");
        trace.Given("w", width, "mm", Sources.Given);
        edgePull = trace.Step("F", nameof(edgePull), pull / width, "N/mm", Sources.EdgeLift);
        liftedLength = trace.Step("l", nameof(liftedLength), Math.Min(half, stiffness / (middle * edgePull)), "mm", Sources.EdgeLift);
        if (liftedLength < half)
        {
            edgeLift = trace.Step("y", nameof(edgeLift), liftedLength * liftedLength / (6 * middle), "mm", Sources.EdgeLift);
        }
        else
        {
            edgeLift = trace.Step("y", nameof(edgeLift), (half * half / (2 * middle)) - (edgePull * half * half * half / (3 * stiffness)), "mm", Sources.EdgeLift);
            edgeRatio = trace.Step("k", nameof(edgeRatio), edgePull * half * middle / stiffness, string.Empty, Sources.EdgeLift);
        }

        return new EdgeNumbers(edgePull, edgeLift, liftedLength, edgeRatio, EdgeSlope(edgePull, liftedLength));
    }

    /// <summary>Slope off the arc at an edge row: the curvature missing, summed over what lifts.</summary>
    private double EdgeSlope(double pull, double length) =>
        length < Half ? length / (2 * Middle) : (Half / Middle) - (pull * Half * Half / (2 * Limit.Stiffness));

    /// <summary>The greatest pull and the furthest stand-off from what the three-moment equations gave.</summary>
    internal void ExplainRows<TTrace>(TTrace trace, int pullRow, BeamPlace off)
        where TTrace : struct, ITrace
    {
        double stiffness = Limit.Stiffness, middle = Middle, width = Width, sign = Wall < 0 ? -1 : 1, momentBefore = 0, momentAfter = 0, spanBefore = 0, spanAfter = 0, slopeBefore = 0, slopeAfter = 0, momentHere = Rows.Moment(pullRow);
        trace.Given("D", stiffness, "N mm", Sources.SheetStiffness, meaning: "stiffness per width");
        trace.Given("R_m", middle, "mm", Sources.BendElastic, meaning: "radius of the sheet's middle");
        trace.Given("w", width, "mm", Sources.Given, meaning: "width along the axis");
        trace.Given("m", momentHere, string.Empty, Sources.HoldDownRows, meaning: "moment ratio at the row that pulls most, by the three-moment equations");
        if (pullRow > 0)
        {
            (momentBefore, spanBefore) = (Rows.Moment(pullRow - 1), Rows.Span(pullRow - 1));
            trace.Given("m_before", momentBefore, string.Empty, Sources.HoldDownRows, meaning: "moment ratio at the row before");
            trace.Given("l_before", spanBefore, "mm", Sources.Given, meaning: "bay before");
            slopeBefore = trace.Step("n_before", nameof(slopeBefore), (momentHere - momentBefore) / spanBefore, "1/mm", Sources.HoldDownRows);
        }
        else
        {
            slopeBefore = trace.Step("n_before", nameof(slopeBefore), 0, "1/mm", Sources.HoldDownRows);
        }

        if (pullRow < Rows.RowCount - 1)
        {
            (momentAfter, spanAfter) = (Rows.Moment(pullRow + 1), Rows.Span(pullRow));
            trace.Given("m_after", momentAfter, string.Empty, Sources.HoldDownRows, meaning: "moment ratio at the row after");
            trace.Given("l_after", spanAfter, "mm", Sources.Given, meaning: "bay after");
            slopeAfter = trace.Step("n_after", nameof(slopeAfter), (momentHere - momentAfter) / spanAfter, "1/mm", Sources.HoldDownRows);
        }
        else
        {
            slopeAfter = trace.Step("n_after", nameof(slopeAfter), 0, "1/mm", Sources.HoldDownRows);
        }

        trace.Given("c", sign, string.Empty, Sources.HoldDownRows, meaning: "1 where hollow, -1 where bulging");
        trace.Step("N", "pull", sign * stiffness / middle * (slopeBefore + slopeAfter) * width, "N", Sources.HoldDownRows);
        if (off.Value == 0)
        {
            return;
        }

        double leftMoment = Rows.Moment(off.Span), rightMoment = Rows.Moment(off.Span + 1), bay = Rows.Span(off.Span), place = off.Distance;
        trace.Given("m_l", leftMoment, string.Empty, Sources.HoldDownRows, meaning: "moment ratio at the row left of the furthest stand-off");
        trace.Given("m_r", rightMoment, string.Empty, Sources.HoldDownRows, meaning: "moment ratio at the row right of it");
        trace.Given("l", bay, "mm", Sources.Given, meaning: "bay of the furthest stand-off");
        trace.Given("x", place, "mm", Sources.HoldDownRows, meaning: "its distance from the left row");
        trace.Step("y", "departure", sign * place * (bay - place) * (((leftMoment - 1) * ((2 * bay) - place)) + ((rightMoment - 1) * (bay + place))) / (6 * bay * middle), "mm", Sources.HoldDownRows);
    }
}

/// <summary>What holds an edge on a bulging surface: pull per width, lift, the length that lifts, greatest curvature over that of the arc.</summary>
internal readonly struct EdgeNumbers(double pull, double lift, double length, double ratio, double slope)
{
    internal double Pull { get; } = pull;

    internal double Lift { get; } = lift;

    internal double Length { get; } = length;

    internal double Ratio { get; } = ratio;

    /// <summary>How far a free edge a distance beyond the row stands off: it goes straight on.</summary>
    internal double Beyond(double distance, double middle) => Lift + (distance * slope) + (distance * distance / (2 * middle));
}
