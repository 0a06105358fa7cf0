using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Panels;

/// <summary>Rows on an arc against closed forms, hand solutions, another solver and the exact elastic curve.</summary>
public sealed class HoldDownTests
{
    /// <summary>E I = 5000 · 6³/12 = 90,000 N mm² per mm; R 2000 at the middle of a wall of 2003.</summary>
    private static readonly BentSheet s_sheet = new(Mm(6), Pressure.FromMegapascals(5000), Pressure.FromMegapascals(30));

    [Fact]
    public void Three_equal_rows_give_the_closed_forms()
    {
        HoldDownResult held = On(0, 200, 400);
        Assert.Equal(3 * 90_000.0 / (2000 * 200) * 500, held.Rows[1].Pull.Newtons, 1e-9);
        Assert.Equal(3 * 90_000.0 / (2000 * 200), held.Rows[1].PullPerWidth.NewtonsPerMillimeter, 1e-12);
        Assert.Equal(-held.Rows[1].Pull.Newtons / 2, held.Rows[0].Pull.Newtons, 1e-9);
        Assert.Equal([true, false, true], held.Rows.Select(static row => row.OnlyBears));
        Assert.Equal(1.5, held.CurvatureRatio, 1e-12);
        Assert.Equal(1.5 / 2000, held.GreatestCurvature.InverseMillimeters, 1e-15);
        Assert.Equal(200, held.GreatestCurvatureAt!.Value.Millimeters);
        Assert.Equal(2000 / 1.5, held.PeakRadius!.Value.Millimeters, 1e-6);
        Assert.Equal(200.0 * 200 / (27 * 2000), held.StandOff.Millimeters, 1e-6);
        Assert.Equal(200.0 / 3, held.StandOffAt!.Value.Millimeters, 1e-5);
        Assert.Equal(0, held.PastArc.Millimeters);
        Assert.Null(held.PastArcAt);
        Assert.Equal(200, held.GreatestPullAt!.Value.Millimeters);
        Assert.Null(held.LiftedLength);
    }

    /// <summary>
    /// By hand, bays a: four rows 5 M = 6: 1.2, the middle bay 0.2 tighter than the arc throughout: 0.2 a²/8 = a²/40 past it. Five rows: 4 M + N = 6, 2 M + 4 N = 6:
    /// 9/7 and 6/7; the middle row's pull is -2 (9/7 - 6/7) = -6/7: it only bears.
    /// </summary>
    [Fact]
    public void Four_and_five_equal_rows_are_as_worked_by_hand()
    {
        HoldDownResult four = On(0, 200, 400, 600), five = On(0, 200, 400, 600, 800);
        Assert.Equal(1.2, four.CurvatureRatio, 1e-12);
        Assert.Equal(1.2 * 90_000 / (2000 * 200) * 500, four.Rows[1].Pull.Newtons, 1e-9);
        Assert.Equal(200.0 * 200 / (40 * 2000), four.PastArc.Millimeters, 1e-6);
        Assert.Equal(300, four.PastArcAt!.Value.Millimeters, 1e-5);
        Assert.Contains(four.Findings, static finding => finding.Code == "panels-past-arc");
        Assert.Equal(9.0 / 7, five.CurvatureRatio, 1e-12);
        Assert.Equal(200, five.GreatestCurvatureAt!.Value.Millimeters);
        Assert.Equal(-6.0 / 7 * 90_000 / (2000 * 200) * 500, five.Rows[2].Pull.Newtons, 1e-9);
        Assert.True(five.Rows[2].OnlyBears);
        Assert.Contains(five.Findings, static finding => finding.Code == "panels-row-only-bears" && finding.Values[0].Value == 1);
        Assert.DoesNotContain(four.Findings, static finding => finding.Code == "panels-row-only-bears");
    }

    [Theory]
    [InlineData("0 150 400")]
    [InlineData("20 120 300 700")]
    [InlineData("0 50 300 350 600")]
    [InlineData("0 400 450 500 900 1000")]
    [InlineData("0 100 200 300 400 500 600")]
    public void Unequal_rows_agree_with_another_solver(string text)
    {
        double[] rows = [.. text.Split(' ').Select(static number => double.Parse(number, System.Globalization.CultureInfo.InvariantCulture))];
        SplineOracle oracle = new(rows);
        HoldDownResult held = On(rows);
        double ratio = 0, room = 0, past = 0, at = 0;
        for (int i = 0; i <= 20_000; i++)
        {
            double s = rows[0] + ((rows[^1] - rows[0]) * i / 20_000);
            (ratio, at) = oracle.Curvature(s) > ratio + 1e-9 ? (oracle.Curvature(s), s) : (ratio, at);
            (room, past) = (Math.Min(room, oracle.Departure(s)), Math.Max(past, oracle.Departure(s)));
        }

        Assert.All(Enumerable.Range(0, rows.Length), i => Assert.Equal(oracle.Force(i) * 90_000 / 2000 * 500, held.Rows[i].Pull.Newtons, 1e-6));
        Assert.Equal(ratio, held.CurvatureRatio, 1e-3);
        Assert.Equal(at, held.GreatestCurvatureAt!.Value.Millimeters, 0.1);
        Assert.Equal(-room / 2000, held.StandOff.Millimeters, 2e-6);
        Assert.Equal(past / 2000, held.PastArc.Millimeters, 2e-6);
        Assert.Equal(oracle.Departure(held.StandOffAt!.Value.Millimeters) / 2000, -held.StandOff.Millimeters, 1e-6);
        WorkingsCheck.Recompute(held.Explain());
    }

    /// <summary>
    /// Small rise against the exact curve (shooting, in the tests only). With edges that bear square to the wall the formula is high by 0.04, 0.17 and 0.7% in
    /// curvature and 0.4, 1.5 and 6.4% in pull; with edges pressed the way the middle pulls it is low by 0.06, 0.23 and 0.92%, and 0.2, 0.9 and 3.5%.
    /// </summary>
    [Theory]
    [InlineData(0.1, 0.001, 0.005)]
    [InlineData(0.2, 0.003, 0.016)]
    [InlineData(0.4, 0.01, 0.065)]
    public void Three_rows_agree_with_the_elastic_curve_within_the_stated_error(double share, double curvatureError, double pullError)
    {
        HoldDownResult held = On(0, 2000 * share, 4000 * share);
        double curvature = held.CurvatureRatio, pull = held.Rows[1].Pull.Newtons / 500 / 90_000 * 2000 * 2000, off = held.StandOff.Millimeters / 2000;
        var sliding = ElasticaOracle.ThreeRows(share, ElasticaOracle.EdgeForce.SquareToTheWall);
        var parallel = ElasticaOracle.ThreeRows(share, ElasticaOracle.EdgeForce.AlongTheMiddlesPull);
        Assert.InRange(curvature / sliding.Curvature, 1, 1 + curvatureError);
        Assert.InRange(curvature / parallel.Curvature, 1 - curvatureError, 1);
        Assert.InRange(pull / sliding.Pull, 1, 1 + pullError);
        Assert.InRange(pull / parallel.Pull, 1 - pullError, 1);
        Assert.InRange(off / sliding.StandOff, 1 - pullError, 1 + pullError);
        Assert.InRange(off / parallel.StandOff, 1 - pullError, 1 + pullError);
    }

    [Fact]
    public void A_bulging_wall_on_strips_is_the_mirror_of_a_hollow_one()
    {
        HoldDownResult hollow = On(0, 200, 400, 600), bulging = HoldDown.OnArc(new HoldDownCase(s_sheet, Mm(-1997), [Mm(0), Mm(200), Mm(400), Mm(600)], Mm(500)));
        Assert.Equal(hollow.Rows.Select(static row => -row.Pull.Newtons), bulging.Rows.Select(static row => row.Pull.Newtons), new Near(1e-9));
        Assert.Equal([false, true, true, false], bulging.Rows.Select(static row => row.OnlyBears));
        Assert.Equal(hollow.CurvatureRatio, bulging.CurvatureRatio);
        Assert.Equal(hollow.StandOff.Millimeters, bulging.PastArc.Millimeters, 1e-6);
        Assert.Equal(hollow.PastArc.Millimeters, bulging.StandOff.Millimeters, 1e-6);
        WorkingsCheck.Recompute(bulging.Explain());
    }

    /// <summary>
    /// R 2000 at the middle, E I 90,000: 0.9 N/mm lift the last 90,000/(2000 · 0.9) = 50 mm by 50²/12,000 = 0.2083. A lift of 0.5 takes
    /// sqrt(6 · 2000 · 0.5) = 77.46 mm: 90,000/(2000 · 77.46) = 0.58095 N/mm.
    /// </summary>
    [Fact]
    public void On_a_bulging_surface_the_edges_pull_and_lift()
    {
        HoldDownCase panel = new(s_sheet, Mm(-1997), BentSheet.EqualRows(Mm(800), 5), Mm(500)) { Backing = SheetBacking.AllOver };
        HoldDownResult pulled = HoldDown.OnArc(panel with { EdgePull = Force.FromNewtons(450) }), usual = HoldDown.OnArc(panel);
        Assert.Equal(50, pulled.LiftedLength!.Value.Millimeters, 1e-6);
        Assert.Equal(2500.0 / 12_000, pulled.StandOff.Millimeters, 1e-6);
        Assert.Equal([450, 0, 0, 0, 450], pulled.Rows.Select(static row => row.Pull.Newtons), new Near(1e-9));
        Assert.Equal(1, pulled.CurvatureRatio);
        Assert.Equal(2000, pulled.PeakRadius!.Value.Millimeters, 1e-6);
        Assert.Equal(0, pulled.PastArc.Millimeters);
        Assert.Equal(0.5, usual.StandOff.Millimeters);
        Assert.Equal(90_000 / (2000 * Math.Sqrt(6000)) * 500, usual.GreatestPull.Newtons, 1e-6);
        Assert.Equal(["bend-factor", "edge-lift"], usual.DefaultsUsed.Select(static used => used.Figure.Name));
        Assert.Equal(0.01, HoldDown.OnArc(panel with { EdgePull = HoldDown.OnArc(panel with { EdgeLift = Mm(0.01) }).GreatestPull }).StandOff.Millimeters, 1e-6);
        Assert.Contains(usual.Findings, static finding => finding.Code == "panels-edge-lifts" && finding.Message.Contains("No finite pull", StringComparison.Ordinal));
        WorkingsCheck.Recompute(pulled.Explain());
        WorkingsCheck.Recompute(usual.Explain());
    }

    /// <summary>
    /// A pull too faint to lay the sheet down: it touches at the crown only and each half is a cantilever: lift 400²/4000 - F 400³/(3 · 90,000). With 0.1 N/mm
    /// 40 - 23.70 = 16.30, curvature there 0.1 · 400 · 2000/90,000 = 0.889 of the arc's.
    /// </summary>
    [Fact]
    public void A_faint_pull_leaves_the_sheet_on_the_crown()
    {
        HoldDownCase panel = new(s_sheet, Mm(-1997), BentSheet.EqualRows(Mm(800), 3), Mm(500)) { Backing = SheetBacking.AllOver };
        HoldDownResult faint = HoldDown.OnArc(panel with { EdgePull = Force.FromNewtons(50) });
        Assert.Equal(40 - (0.1 * 6.4e7 / 270_000), faint.StandOff.Millimeters, 1e-6);
        Assert.Equal(0.1 * 400 * 2000 / 90_000, faint.CurvatureRatio, 1e-12);
        Assert.Equal(400, faint.LiftedLength!.Value.Millimeters);
        HoldDownResult back = HoldDown.OnArc(panel with { EdgeLift = faint.StandOff });
        Assert.Equal(50, back.GreatestPull.Newtons, 1e-4);
        HoldDownResult loose = HoldDown.OnArc(panel with { EdgeLift = Mm(90) });
        Assert.Equal(0, loose.GreatestPull.Newtons);
        Assert.Equal(40, loose.StandOff.Millimeters, 1e-6);
        Assert.All(new[] { faint, back, loose }, static result => WorkingsCheck.Recompute(result.Explain()));
        Assert.Equal("panel.EdgeLift", Assert.Throws<ArgumentException>(() => HoldDown.OnArc(panel with { EdgeLift = Mm(1), EdgePull = Force.FromNewtons(1) })).ParamName);
    }

    [Fact]
    public void A_flat_surface_asks_for_nothing()
    {
        HoldDownResult flat = HoldDown.OnArc(new HoldDownCase(s_sheet, null, BentSheet.EqualRows(Mm(400), 3), Mm(500)));
        Assert.True(flat.Follows);
        Assert.Null(flat.PeakRadius);
        Assert.Equal(0, flat.GreatestCurvature.InverseMillimeters);
        Assert.All(flat.Rows, static row => Assert.Equal(0, row.Pull.Newtons));
        Assert.DoesNotContain(flat.Findings, static finding => finding.Severity > Severity.Note);
        HoldDownResult two = On(0, 400);
        Assert.Equal(0, two.CurvatureRatio);
        Assert.Equal(400.0 * 400 / (8 * 2000), two.StandOff.Millimeters, 1e-6); // the arc's own rise
        Assert.Contains(two.Findings, static finding => finding.Code == "panels-not-held");
    }

    /// <summary>675 N over 1 m with fixings of 100 N: 7; six pull 112.5 each and are too few. 675 over 7 exactly met is met.</summary>
    [Fact]
    public void Fixings_follow_from_their_capacity()
    {
        HoldDownCase panel = new(s_sheet, Mm(2003), BentSheet.EqualRows(Mm(400), 3), Mm(1000)) { FixingCapacity = Force.FromNewtons(100) };
        HoldDownResult asked = HoldDown.OnArc(panel), six = HoldDown.OnArc(panel with { FixingsPerRow = 6 }), seven = HoldDown.OnArc(panel with { FixingsPerRow = 7, FixingCapacity = Force.FromNewtons(675.0 / 7) });
        Assert.Equal((7, 0), (asked.FixingsNeededPerRow, asked.Rows[0].FixingsNeeded));
        Assert.Equal(112.5, six.Rows[1].PullPerFixing!.Value.Newtons, 1e-9);
        Assert.Null(six.Rows[0].PullPerFixing);
        Assert.True(six.HasProblem);
        Assert.Equal(7, six.Findings.Single(static finding => finding.Code == "panels-fixings-pull-out").Values.Single(static value => value.Name == "fixings-needed").Value);
        Assert.False(seven.HasProblem);
        Assert.Contains(HoldDown.OnArc(panel with { FixingCapacity = null }).Findings, static finding => finding.Code == "panels-fixing-capacity-unknown");
        Assert.Contains(HoldDown.OnArc(panel with { FixingCapacity = Force.FromNewtons(1e-5) }).Findings, static finding => finding is { Code: "panels-fixings-pull-out", Severity: Severity.Problem });
        Assert.Contains(asked.Findings, static finding => finding.Code == "panels-springs-back");
        Assert.Contains(asked.Findings, static finding => finding.Code == "panels-look-behind");
    }

    /// <summary>
    /// 675 N over 1 m is 0.675 N/mm. Seven fixings, the outer two 25 mm in, stand 950/6 = 158.3 mm apart, and an inner one has 0.675 · 158.3 = 106.9 N of the row, not 675/7 = 96.4: what is shared evenly is
    /// the least there can be, and the answer says so.
    /// </summary>
    [Fact]
    public void Fixings_counted_by_an_even_share_say_so()
    {
        HoldDownCase panel = new(s_sheet, Mm(2003), BentSheet.EqualRows(Mm(400), 3), Mm(1000)) { FixingCapacity = Force.FromNewtons(100) };
        HoldDownResult asked = HoldDown.OnArc(panel), given = HoldDown.OnArc(panel with { FixingsPerRow = 7 }), six = HoldDown.OnArc(panel with { FixingsPerRow = 6 });
        foreach (HoldDownResult result in new[] { asked, given })
        {
            Finding shared = result.Findings.Single(static finding => finding.Code == "panels-fixings-shared");
            Assert.Equal(Severity.Caution, shared.Severity);
            Assert.Contains("at the least", shared.Message, StringComparison.Ordinal);
            Assert.Contains("PanelFixings", shared.Message, StringComparison.Ordinal);
            Assert.Equal(7, shared.Values.Single(static value => value.Name == "fixings-needed").Value);
        }

        Assert.Contains("7 at the least", six.Findings.Single(static finding => finding.Code == "panels-fixings-pull-out").Message, StringComparison.Ordinal);
        Assert.DoesNotContain(six.Findings, static finding => finding.Code == "panels-fixings-shared");
        Assert.DoesNotContain(HoldDown.OnArc(panel with { FixingCapacity = null }).Findings, static finding => finding.Code == "panels-fixings-shared");
        Assert.DoesNotContain(HoldDown.OnArc(panel with { WallRadius = null }).Findings, static finding => finding.Code == "panels-fixings-shared");
    }

    /// <summary>Three rows a = 200: the slope at the edge leaves the arc by a/(4 R) outward; 100 mm on: 100 · 200/8000 + 100²/4000 = 5 mm.</summary>
    [Fact]
    public void An_edge_beyond_the_last_row_leaves_the_arc()
    {
        HoldDownCase panel = new(s_sheet, Mm(2003), [Mm(100), Mm(300), Mm(500)], Mm(500));
        Assert.Equal(5, Off(HoldDown.OnArc(panel)), 1e-9);
        Assert.Equal(5, Off(HoldDown.OnArc(panel with { Rows = BentSheet.EqualRows(Mm(400), 3), Girth = Mm(500) })), 1e-9);
        Assert.DoesNotContain(HoldDown.OnArc(panel with { Rows = BentSheet.EqualRows(Mm(400), 3), Girth = Mm(400) }).Findings, static finding => finding.Code == "panels-overhang");
        Assert.Equal("panel.Girth", Assert.Throws<ArgumentOutOfRangeException>(() => HoldDown.OnArc(panel with { Girth = Mm(499) })).ParamName);

        static double Off(HoldDownResult result) => result.Findings.Single(static finding => finding.Code == "panels-overhang").Values[0].Value;
    }

    /// <summary>
    /// A hollow surface behind the whole sheet keeps its slope at a row, so that the sheet bears just beside it and pries on the fixings: by how much depends on how near.
    /// </summary>
    [Fact]
    public void What_fixings_pull_on_a_hollow_surface_behind_the_whole_sheet_is_not_answered()
    {
        HoldDownCase panel = new(s_sheet, Mm(2003), BentSheet.EqualRows(Mm(600), 4), Mm(500)) { Backing = SheetBacking.AllOver };
        Assert.Equal("panel.Backing", Assert.Throws<ArgumentException>(() => HoldDown.OnArc(panel)).ParamName);
        Assert.Equal("panel.Backing", Assert.Single(HoldDown.CheckOnArc(panel)).Parameter);
        Assert.Empty(HoldDown.CheckOnArc(panel with { WallRadius = Mm(-2003) }));
        Assert.Empty(HoldDown.CheckOnArc(panel with { WallRadius = null }));
    }

    /// <summary>
    /// R 1003 at the middle, half the girth between the outer rows 100, a lift of 0.5 there: l = sqrt(6 · 1003 · 0.5) = 54.854, the slope off the arc at the row l/(2 · 1003). The edge,
    /// 100 further: 0.5 + 100 · 54.854/2006 + 100²/2006 = 0.5 + 2.7345 + 4.9850 = 8.2195.
    /// </summary>
    [Fact]
    public void An_edge_beyond_the_last_row_stands_off_a_bulging_surface_too()
    {
        HoldDownCase panel = new(s_sheet, Mm(-1000), [Mm(100), Mm(200), Mm(300)], Mm(500)) { Backing = SheetBacking.AllOver, Girth = Mm(400) };
        double length = Math.Sqrt(6 * 1003 * 0.5);
        Assert.Equal(0.5 + (100 * length / 2006) + (10_000.0 / 2006), Off(panel), 1e-9);
        Assert.Equal(8.2195, Off(panel), 0.0001);

        // A faint pull leaves the halves as cantilevers: F 0.02 N/mm, slope 100/1003 - 0.02 · 100²/(2 · 90,000), lift 100²/2006 - 0.02 · 100³/(3 · 90,000).
        double slope = (100.0 / 1003) - (0.02 * 10_000 / 180_000), lift = (10_000.0 / 2006) - (0.02 * 1e6 / 270_000);
        Assert.Equal(lift + (100 * slope) + (10_000.0 / 2006), Off(panel with { EdgePull = Force.FromNewtons(10) }), 1e-9);
        Assert.DoesNotContain(HoldDown.OnArc(panel with { Rows = BentSheet.EqualRows(Mm(400), 3) }).Findings, static finding => finding.Code == "panels-overhang");

        static double Off(HoldDownCase panel) => HoldDown.OnArc(panel).Findings.Single(static finding => finding.Code == "panels-overhang").Values[0].Value;
    }

    [Fact]
    public void Figures_carry_the_worst_severity_and_the_edge()
    {
        Assert.Equal(2, Worst(On(0, 400).Figures()));
        Assert.Equal(1, Worst(On(0, 200, 400).Figures()));
        Assert.Equal(0, Worst(HoldDown.OnArc(new HoldDownCase(s_sheet, null, BentSheet.EqualRows(Mm(400), 3), Mm(500))).Figures()));
        Assert.Equal((0, 1), (Worst(PanelBend.MinimumRadius(s_sheet).Figures()), Worst(PanelBend.MinimumRadius(s_sheet with { Factor = 1 }).Figures())));
        Assert.Equal((0, 2), (Worst(HoldDown.LeastEqualRows(s_sheet, Mm(2003)).Figures()), Worst(HoldDown.LeastEqualRows(s_sheet, Mm(500)).Figures())));
        Assert.Equal(1, Worst(PanelBend.Judge(new BendCase(s_sheet with { Factor = 1 }, Mm(2003))).Figures()));
        HoldDownResult over = On(100, 300, 500);
        Assert.Equal(5, over.EdgeOffArc.Millimeters, 1e-6);
        Assert.Equal(over.EdgeOffArc.Millimeters, over.Figures().Single(static figure => figure.Name == "edge-off-arc").Value);
        Assert.Equal(0, On(0, 200, 400).EdgeOffArc.Millimeters);

        static double Worst(IReadOnlyList<Figure> figures) => figures.Single(static figure => figure.Name == "worst-severity").Value;
    }

    [Fact]
    public void Two_rows_and_wide_bays_hold_nothing_to_an_arc()
    {
        HoldDownResult two = On(0, 400), wide = On(0, 2001, 4002), half = On(0, 400, 800, 1200, 1600, 2000, 2400, 2800, 3200, 3600, 4000, 4400, 4800, 5200, 5600, 6000, 6284);
        Assert.Equal(("panels-not-held", Severity.Problem), (two.Findings[0].Code, two.Findings[0].Severity));
        Assert.Equal("panels-bay-too-long", wide.Findings[0].Code);
        Assert.Equal("panels-bay-too-long", half.Findings[0].Code); // π · 2000 = 6283.2
        Assert.All(new[] { two, wide, half }, static result => Assert.True(!result.Follows && result.HasProblem));
        Assert.True(On(0, 2000, 4000).Follows);
    }

    [Fact]
    public void A_bay_over_two_fifths_of_the_radius_is_outside_the_formula()
    {
        Assert.Contains(On(0, 801, 1602).Findings, static finding => finding.Code == "panels-bay-not-shallow");
        Assert.DoesNotContain(On(0, 800, 1600).Findings, static finding => finding.Code == "panels-bay-not-shallow");
    }

    [Fact]
    public void A_sheet_that_cannot_take_its_peak_is_a_problem_of_the_hold_down_too()
    {
        HoldDownResult tight = HoldDown.OnArc(new HoldDownCase(s_sheet, Mm(1502), BentSheet.EqualRows(Mm(400), 3), Mm(500)));
        Assert.False(tight.Follows);
        Assert.True(tight.HasProblem);
        Assert.Equal("panels-bend-too-tight", tight.Findings[0].Code);
        Assert.True(On(0, 200, 400).Follows);
    }

    /// <summary>By hand: 1.5, 1.2, 9/7, then 1.263, 1.269, ...: four is the least there is; what four do not hold, no number does.</summary>
    [Fact]
    public void Four_equal_rows_are_the_gentlest()
    {
        RowsSearch search = HoldDown.LeastEqualRows(s_sheet, Mm(1203));
        Assert.Equal(4, search.Rows); // 1200/1.2 = 1000 exactly
        Assert.Equal(Enumerable.Range(3, 10), search.Tried.Select(static tried => tried.Rows));
        Assert.Equal(1.2, search.Tried[1].CurvatureRatio, 1e-12);
        Assert.Equal(9.0 / 7, search.Tried[2].CurvatureRatio, 1e-12);
        Assert.Equal(24.0 / 19, search.Tried[3].CurvatureRatio, 1e-12); // 4 M + N = 6, M + 5 N = 6
        Assert.All(search.Tried.Skip(1), static tried => Assert.InRange(tried.CurvatureRatio, 1.2 - 1e-12, 1.3));
        Assert.Equal(3, HoldDown.LeastEqualRows(s_sheet, Mm(1503)).Rows);
        RowsSearch none = HoldDown.LeastEqualRows(s_sheet, Mm(1202.9));
        Assert.Null(none.Rows);
        Assert.True(none.HasProblem);
        Assert.Equal("panels-bend-too-tight", none.Findings[0].Code);
        Assert.Equal(3, HoldDown.LeastEqualRows(s_sheet, null).Rows);
        WorkingsCheck.Recompute(none.Explain());
        Assert.Contains("no number of equal rows up to 12", none.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0", "panel.Rows")]
    [InlineData("0 0.5 400", "panel.Rows[1]")]
    [InlineData("0 300 200", "panel.Rows[2]")]
    [InlineData("0 300 100001", "panel.Rows[2]")]
    public void Rows_ascend_and_are_two_at_least(string text, string parameter)
    {
        Length[] rows = [.. text.Split(' ').Select(static number => Mm(double.Parse(number, System.Globalization.CultureInfo.InvariantCulture)))];
        Assert.Equal(parameter, HoldDown.CheckOnArc(new HoldDownCase(s_sheet, Mm(2003), rows, Mm(500)))[0].Parameter);
    }

    [Fact]
    public void All_problems_are_reported_at_once()
    {
        HoldDownCase bad = new(s_sheet with { Factor = 0.5, Thickness = Mm(0) }, Mm(0), [Mm(5)], Mm(0)) { FixingsPerRow = 0, EdgeLift = Mm(0), Backing = (SheetBacking)7 };
        Assert.Equal(
            ["panel.Sheet.Thickness", "panel.Sheet.Factor", "panel.WallRadius", "panel.Rows", "panel.Width", "panel.Backing", "panel.FixingsPerRow", "panel.EdgeLift"],
            HoldDown.CheckOnArc(bad).Select(static problem => problem.Parameter));
        Assert.Equal("panel.WallRadius", Assert.Throws<ArgumentOutOfRangeException>(() => HoldDown.OnArc(new HoldDownCase(s_sheet, Mm(6), [Mm(0), Mm(5)], Mm(9)))).ParamName); // hollow tighter than the sheet is thick
    }

    private static HoldDownResult On(params double[] rows) => HoldDown.OnArc(new HoldDownCase(s_sheet, Mm(2003), [.. rows.Select(static row => Mm(row))], Mm(500)));

    private sealed class Near(double error) : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) <= error;

        public int GetHashCode(double value) => 0;
    }
}
