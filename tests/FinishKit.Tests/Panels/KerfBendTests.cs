using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Panels;

/// <summary>Kerfs: the derived check values, hand examples, and a strip of flat pieces folded at its hinges.</summary>
[Properties(MaxTest = 300, EndSize = 1_000_000)]
public sealed class KerfBendTests
{
    private static readonly KerfedPanel s_corner = new(Mm(300), Angle.FromDegrees(90), Mm(18), Mm(3), Mm(3.2));

    [Fact]
    public void Plan()
    {
        #region example: KerfBend.Plan
        KerfPlan corner = KerfBend.Plan(new KerfedPanel(Mm(300), Angle.FromDegrees(90), Mm(18), Mm(3), Mm(3.2)));
        int kerfs = corner.Kerfs;                           // 8: a kerf 15 mm deep closes at 12.2 degrees, 0.3 deeper at 11.9
        Length spacing = corner.Spacing;                    // 58.316 mm over 466.527 mm
        Length facet = corner.FacetHeight;                  // 1.43 mm: seen on the face
        #endregion
        Assert.Equal(8, kerfs);
        Assert.Equal(297 * Math.PI / 16, spacing.Millimeters, 1e-6);
        Assert.Equal(1.43, facet.Millimeters, 0.005); // 297 (1 - cos 5.625°), cos 5.625° = 0.99518473
        Assert.Equal(297 * (1 - 0.99518473), facet.Millimeters, 1e-5);
        Assert.Equal(12.2, corner.ClosingTurn.Degrees, 0.05);
        Assert.Equal(11.94, corner.LeastClosingTurn.Degrees, 0.005); // 2 atan(3.2/30.6)
        Assert.Equal((3.2 * 0.99518473) - (30 * 0.09801714), corner.GapLeft.Millimeters, 1e-6);
        Assert.Equal(3.2 / 0.19634954, corner.WebRadius.Millimeters, 1e-5);
    }

    /// <summary>
    /// Derived, section 5 of the check values: N there is theta d/k, rounded up. A kerf that closes about the middle of its bottom turns by 2 atan(k/(2 d)), less than k/d by (k/d)²/12 of it:
    /// 7.391, 7.169 and 6.298 instead of 7.363, 7.140 and 6.283, and the same kerfs.
    /// </summary>
    [Theory]
    [InlineData(300, 90, 18, 3.2, 3, 23.562, 7.363, 8, 466.53, 58.32, 7.391)]
    [InlineData(150, 90, 12, 2.2, 2, 15.708, 7.140, 8, 232.48, 29.06, 7.169)]
    [InlineData(600, 60, 18, 2.5, 3, 15.708, 6.283, 7, 625.18, 89.31, 6.298)]
    public void Check_values_derived(double radius, double angle, double thickness, double kerf, double web, double shortening, double byRatio, int kerfs, double hingeArc, double spacing, double byTurn)
    {
        KerfPlan plan = KerfBend.Plan(new KerfedPanel(Mm(radius), Angle.FromDegrees(angle), Mm(thickness), Mm(web), Mm(kerf)));
        Assert.Equal(shortening, plan.Shortening.Millimeters, 0.0005);
        Assert.Equal(kerfs, plan.Kerfs);
        Assert.Equal(hingeArc, plan.HingeArc.Millimeters, 0.005);
        Assert.Equal(spacing, plan.Spacing.Millimeters, 0.005);
        Assert.Equal(byRatio, plan.Shortening.Millimeters / kerf, 0.0005);
        Assert.Equal(byTurn, angle / plan.ClosingTurn.Degrees, 0.0005);
        Assert.False(plan.ClosesFully);
    }

    /// <summary>Depth 5: 2 atan(k/10) = 30° for k = 10 tan 15° = 2.679491924; three of them make 90° and close, where the depth is met.</summary>
    [Fact]
    public void Kerfs_that_come_out_even_close_fully()
    {
        KerfedPanel even = new(Mm(100), Angle.FromDegrees(90), Mm(7), Mm(2), Mm(2.679492)) { DepthError = Mm(0) };
        KerfPlan plan = KerfBend.Plan(even);
        Assert.Equal(3, plan.Kerfs);
        Assert.Equal(0, plan.GapLeft.Millimeters, 2e-6);
        KerfPlan one = KerfBend.Plan(even with { Bend = Angle.FromDegrees(89.9999) });
        Assert.Equal(3, one.Kerfs);
        Assert.Equal(4, KerfBend.Plan(even with { Bend = Angle.FromDegrees(90.001) }).Kerfs);
        Assert.True(plan.ClosesFully); // within the grid: the kerf is 0.08 nm over
        Assert.DoesNotContain(plan.Findings, static finding => finding.Code == "panels-kerf-stays-open");
    }

    /// <summary>
    /// The same kerfs 0.3 too deep close at 2 atan(2.679492/10.6) = 28.372°, three of them at 85.1°: short of 90 they are shut, and what bends them on pries their webs open. It takes four, whose
    /// deepest could turn 4 · 28.372 - 90 = 23.49° more.
    /// </summary>
    [Fact]
    public void Kerfs_are_counted_where_they_are_cut_too_deep()
    {
        KerfPlan plan = KerfBend.Plan(new KerfedPanel(Mm(100), Angle.FromDegrees(90), Mm(7), Mm(2), Mm(2.679492)));
        Assert.Equal(4, plan.Kerfs);
        Assert.Equal(23.49, plan.SpareTurn.Degrees, 0.005);
        Assert.Equal(30, plan.ClosingTurn.Degrees, 1e-5);
    }

    /// <summary>
    /// 18 by 90° round 300, web 3, kerf 3.2: 8 kerfs of 11.25°. A kerf that still turns by that is 3.2/(2 tan 5.625°) = 16.245 deep at most, so a stop that may cut 0.3 deeper stands at 15.945 at most;
    /// at 16.7, where the web would still be 1 mm, they shut at 8 · 10.75 = 86°. From 18 - 3 + 0.3 = 15.3 on the web is 3 mm at most.
    /// </summary>
    [Fact]
    public void The_stop_ends_where_the_kerfs_would_shut_before_the_bend()
    {
        KerfPlan plan = KerfBend.Plan(s_corner);
        Assert.Equal(8, plan.Kerfs);
        Assert.Equal((15.3, 15.945072), (plan.StopDepths!.Value.Least.Millimeters, plan.StopDepths.Value.Greatest.Millimeters));
        Assert.True(Reach(plan.StopDepths.Value.Greatest.Millimeters + 0.3) >= 90);
        Assert.True(Reach(plan.StopDepths.Value.Greatest.Millimeters + 0.301) < 90);
        Finding web = plan.Findings.Single(static finding => finding.Code == "panels-kerf-web-out");
        Assert.Contains("15.3 mm and 15.945 mm", web.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("16.7 mm", web.Message, StringComparison.Ordinal);

        static double Reach(double depth) => 8 * 2 * Math.Atan(3.2 / (2 * depth)) * 180 / Math.PI;
    }

    /// <summary>
    /// A web of 5 mm: 13 deep, 13.3 at most, 7 kerfs. They reach 90° to 3.2/(2 tan 6.429°) - 0.3 = 13.9; for a web of 3 the stop stands at 15.3 or more, and there 90/11.71 ask for 8.
    /// </summary>
    [Fact]
    public void A_stop_that_asks_for_more_kerfs_is_no_stop_for_these()
    {
        KerfPlan plan = KerfBend.Plan(s_corner with { Web = Mm(5) });
        Assert.Equal(7, plan.Kerfs);
        Assert.Null(plan.StopDepths);
        Assert.Contains("8 kerfs", plan.Findings.Single(static finding => finding.Code == "panels-kerf-web-out").Message, StringComparison.Ordinal);
        Assert.DoesNotContain(plan.Figures(), static figure => figure.Name == "stop-deepest");
    }

    /// <summary>
    /// 17.9 ± 0.8 by 95° round 300, web 3, kerf 3.2: counted at 14.9 + 0.3 = 15.2 deep, where a kerf shuts at 12.02°: 8. A stop would stand from 18.7 - 3 + 0.3 = 16.0 to 17.1 - 1 - 0.3 = 15.8: none. Set from the
    /// outer face, the thickest sheet is cut 18.7 - 3 + 0.3 = 16.0 deep: 2 atan(3.2/32) = 11.42°, 8 of them 91.4°, 9 of them 102.8°, over 297 · 1.658063 = 492.445, 54.716 apart. Of a bend
    /// of 90° the eight reach it on every sheet, and nothing is added.
    /// </summary>
    [Fact]
    public void A_saw_set_from_the_outer_face_takes_the_kerfs_of_the_thickest_sheet()
    {
        KerfedPanel sheet = s_corner with { Bend = Angle.FromDegrees(95), Thickness = TolerancedLength.PlusMinus(Mm(17.9), Mm(0.8)) };
        KerfPlan plan = KerfBend.Plan(sheet);
        Assert.Equal(8, plan.Kerfs);
        Assert.Null(plan.StopDepths);
        string words = plan.Findings.Single(static finding => finding.Code == "panels-kerf-web-out").Message;
        Assert.Contains("set the saw from the outer face. Set so, the thickest sheet is cut up to 16 mm deep and these 8 kerfs are shut before it is bent: that takes 9 kerfs, 54.716 mm apart.", words, StringComparison.Ordinal);
        KerfPlan held = KerfBend.Plan(sheet with { Bend = Angle.FromDegrees(90) });
        Assert.Equal(8, held.Kerfs);
        Assert.EndsWith("or set the saw from the outer face.", held.Findings.Single(static finding => finding.Code == "panels-kerf-web-out").Message, StringComparison.Ordinal);
    }

    /// <summary>Whatever the depth within its error, the kerfs reach the bend before they shut; one kerf fewer would not at the deepest.</summary>
    [Property]
    public void At_any_depth_within_the_error_the_kerfs_reach_the_bend(PositiveInt seed)
    {
        KerfedPanel panel = Random(seed.Get);
        double error = seed.Get % 7 / 10.0, deepest = panel.Thickness.Nominal.Millimeters - panel.Web.Millimeters + error;
        KerfPlan plan = KerfBend.Plan(panel with { DepthError = Mm(error) });
        Assert.True(plan.Kerfs * Closing(deepest) >= panel.Bend.Radians * (1 - 1e-8));
        Assert.True((plan.Kerfs - 1) * Closing(deepest) < panel.Bend.Radians);
        Assert.Equal((plan.Kerfs * Closing(deepest)) - panel.Bend.Radians, plan.SpareTurn.Radians, 1e-8 * panel.Bend.Radians);
        if (plan.StopDepths is { } stop)
        {
            Assert.True(plan.Kerfs * Closing(stop.Greatest.Millimeters + error) >= panel.Bend.Radians * (1 - 1e-8));
            Assert.True(panel.Thickness.Nominal.Millimeters - stop.Greatest.Millimeters - error >= 1 - 1e-6);
        }

        double Closing(double depth) => 2 * Math.Atan(panel.Kerf.Millimeters / (2 * depth));
    }

    /// <summary>At a factor of 1 one web in twenty breaks; an allowable strength is named as for any bent sheet.</summary>
    [Fact]
    public void The_webs_factor_and_strength_are_named_as_those_of_any_bent_sheet()
    {
        BentSheet ply = new(Mm(1), Pressure.FromMegapascals(17_500), Pressure.FromMegapascals(70));
        Assert.Contains(KerfBend.Plan(s_corner with { WebSheet = ply with { Factor = 1 } }).Findings, static finding => finding is { Code: "panels-bend-factor-low", Severity: Severity.Caution });
        Assert.Contains(KerfBend.Plan(s_corner with { WebSheet = ply with { StrengthBasis = PlywoodStrengthBasis.AllowableDesign } }).Findings, static finding => finding.Code == "panels-allowable-strength");
        Assert.DoesNotContain(KerfBend.Plan(s_corner with { WebSheet = ply }).Findings, static finding => finding.Code is "panels-bend-factor-low" or "panels-allowable-strength");
    }

    /// <summary>
    /// 18 ± 0.4, web 2, depth off by 0.3: 1.3 to 2.7. Stop from 18.4 - 3 + 0.3 = 15.7 to 17.6 - 1 - 0.3 = 16.3: nine kerfs of 10° reach to 3.2/(2 tan 5°) - 0.3 = 17.99. With no error of the depth there are
    /// eight, and they reach to 3.2/(2 tan 5.625°) = 16.245, short of 17.6 - 1.
    /// </summary>
    [Fact]
    public void The_web_between_its_limits_and_the_settings_of_the_stop()
    {
        KerfedPanel sheet = s_corner with { Thickness = TolerancedLength.PlusMinus(Mm(18), Mm(0.4)), Web = Mm(2) };
        KerfPlan plan = KerfBend.Plan(sheet);
        Assert.Equal((1.3, 2.7, 16.0), (plan.LeastWeb.Millimeters, plan.GreatestWeb.Millimeters, plan.Depth.Millimeters));
        Assert.Equal((15.7, 16.3), (plan.StopDepths!.Value.Least.Millimeters, plan.StopDepths.Value.Greatest.Millimeters));
        Assert.DoesNotContain(plan.Findings, static finding => finding.Code is "panels-kerf-web-out" or "panels-kerf-cut-through");
        Assert.Equal("default-kerf-depth-error", plan.DefaultsUsed.Single().Source.Id);
        KerfPlan thin = KerfBend.Plan(sheet with { Web = Mm(1.69) }), met = KerfBend.Plan(sheet with { Web = Mm(1.7) }), thick = KerfBend.Plan(sheet with { Web = Mm(2.31) }), through = KerfBend.Plan(sheet with { Web = Mm(0.7) });
        Assert.Contains(thin.Findings, static finding => finding.Code == "panels-kerf-web-out");
        Assert.DoesNotContain(met.Findings, static finding => finding.Code == "panels-kerf-web-out");
        Assert.Contains(thick.Findings, static finding => finding.Code == "panels-kerf-web-out");
        Assert.False(thin.HasProblem);
        Assert.Equal("panels-kerf-cut-through", through.Findings[0].Code);
        Assert.True(through.HasProblem);
        Assert.Contains("15.7 mm and 16.3 mm", through.Findings[0].Message, StringComparison.Ordinal);
        Assert.Null(KerfBend.Plan(sheet with { DepthError = Mm(1) }).StopDepths);
        KerfPlan exact = KerfBend.Plan(sheet with { DepthError = Mm(0) });
        Assert.Equal((9, 8), (plan.Kerfs, exact.Kerfs));
        Assert.Equal((15.4, 16.245072), (exact.StopDepths!.Value.Least.Millimeters, exact.StopDepths.Value.Greatest.Millimeters));
    }

    /// <summary>A web of 3 mm, E 17,500 and f 70, takes 2 · 17500 · 3/140 = 750; the kerf bends it to 16.3. With the sheet's own thickness of 1 it would be 250.</summary>
    [Fact]
    public void The_webs_own_bend_is_held_against_its_figures()
    {
        BentSheet ply = new(Mm(1), Pressure.FromMegapascals(17_500), Pressure.FromMegapascals(70)) { PublishedRadius = Mm(5000) };
        KerfPlan plan = KerfBend.Plan(s_corner with { WebSheet = ply });
        Assert.Equal(750, plan.WebMinimumRadius!.Value.Millimeters, 1e-6);
        Finding strains = plan.Findings.Single(static finding => finding.Code == "panels-kerf-web-strains");
        Assert.Equal(Severity.Caution, strains.Severity);
        Assert.Null(KerfBend.Plan(s_corner).WebMinimumRadius);

        // 2 · 10 · 3/(2 · 10) = 3 is less than 16.3.
        Assert.DoesNotContain(KerfBend.Plan(s_corner with { WebSheet = new BentSheet(Mm(1), Pressure.FromMegapascals(10), Pressure.FromMegapascals(10)) }).Findings, static finding => finding.Code == "panels-kerf-web-strains");
        WorkingsCheck.Recompute(plan.Explain());
    }

    [Fact]
    public void Wood_between_kerfs()
    {
        Assert.DoesNotContain(KerfBend.Plan(s_corner).Findings, static finding => finding.Code is "panels-kerf-rib-thin" or "panels-kerf-no-rib");
        KerfPlan near = KerfBend.Plan(s_corner with { OuterRadius = Mm(30) }), gone = KerfBend.Plan(s_corner with { OuterRadius = Mm(18.5), Kerf = Mm(12), Bend = Angle.FromDegrees(60) });
        Assert.Equal((27 * Math.PI / 2 / 8) - 3.2, near.Rib.Millimeters, 1e-6);
        Assert.Contains(near.Findings, static finding => finding.Code == "panels-kerf-rib-thin");
        Assert.True(gone.HasProblem, gone.ToString());
        Assert.Equal("panels-kerf-no-rib", gone.Findings[0].Code);
    }

    [Fact]
    public void Marks_lie_half_a_spacing_in_and_a_spacing_apart()
    {
        KerfPlan plan = KerfBend.Plan(s_corner);
        double p = 297 * Math.PI / 16;
        Assert.Equal(8, plan.Marks.Count);
        Assert.Equal(p / 2, plan.Marks[0].Millimeters, 1e-6);
        Assert.Equal(7.5 * p, plan.Marks[7].Millimeters, 1e-6);
        Assert.Equal(plan.HingeArc.Millimeters, plan.Marks[7].Millimeters + (p / 2), 2e-6);
    }

    /// <summary>
    /// Another way round: a row of flat pieces is folded in the plane, hinge by hinge. It must end in the direction asked for, on a circle through the hinges as wide as asked but for the second order;
    /// the corners of each kerf's mouth are carried along, and their distance is the gap.
    /// </summary>
    [Property]
    public void A_folded_strip_agrees(PositiveInt seed)
    {
        KerfedPanel panel = Random(seed.Get);
        KerfPlan plan = KerfBend.Plan(panel);
        double d = plan.Depth.Millimeters, k = panel.Kerf.Millimeters, turn = panel.Bend.Radians / plan.Kerfs, p = plan.Spacing.Millimeters;
        double heading = 0, x = 0, y = 0;
        (double X, double Y) first = default, second = default, last = default;
        for (int i = 0; i < plan.Kerfs; i++)
        {
            double length = i == 0 ? plan.Marks[0].Millimeters : plan.Marks[i].Millimeters - plan.Marks[i - 1].Millimeters;
            x += length * Math.Cos(heading);
            y += length * Math.Sin(heading);
            double next = heading + turn;
            (double X, double Y) before = (x - (k / 2 * Math.Cos(heading)) - (d * Math.Sin(heading)), y - (k / 2 * Math.Sin(heading)) + (d * Math.Cos(heading)));
            (double X, double Y) after = (x + (k / 2 * Math.Cos(next)) - (d * Math.Sin(next)), y + (k / 2 * Math.Sin(next)) + (d * Math.Cos(next)));
            Assert.Equal(Math.Sqrt(Math.Pow(after.X - before.X, 2) + Math.Pow(after.Y - before.Y, 2)), plan.GapLeft.Millimeters, 1e-5);
            first = i == 0 ? (x, y) : first;
            second = i == 1 ? (x, y) : second;
            last = (x, y);
            heading = next;
        }

        Assert.Equal(panel.Bend.Radians, heading, 1e-9);
        if (plan.Kerfs > 1)
        {
            // The circle through two neighbouring hinges, turned by one kerf.
            double circle = Math.Sqrt(Math.Pow(second.X - first.X, 2) + Math.Pow(second.Y - first.Y, 2)) / (2 * Math.Sin(turn / 2)), wanted = panel.OuterRadius.Millimeters - panel.Web.Millimeters;
            Assert.InRange(circle, wanted * (1 - 1e-6), wanted * (1 + (turn * turn / 20)));
            Assert.InRange(plan.FacetHeight.Millimeters, circle * (1 - Math.Cos(turn / 2)) * (1 - (turn * turn / 20)) - 1e-6, (circle * (1 - Math.Cos(turn / 2))) + 1e-6);

            // All hinges lie on it: the first and the last stand on the chord of all turns between them.
            double chord = Math.Sqrt(Math.Pow(last.X - first.X, 2) + Math.Pow(last.Y - first.Y, 2));
            Assert.Equal(2 * circle * Math.Abs(Math.Sin((plan.Kerfs - 1) * turn / 2)), chord, (1e-6 * circle) + 1e-5);
            Assert.Equal(2 * circle * Math.Sin(turn / 2), p, 2e-6);
        }

        WorkingsCheck.Recompute(plan.Explain());
    }

    [Property]
    public void Twice_the_size_is_the_same_plan_twice_as_large(PositiveInt seed)
    {
        KerfedPanel panel = Random(seed.Get);
        KerfPlan one = KerfBend.Plan(panel), two = KerfBend.Plan(panel with { OuterRadius = Twice(panel.OuterRadius), Thickness = Twice(panel.Thickness.Nominal), Web = Twice(panel.Web), Kerf = Twice(panel.Kerf), DepthError = Mm(0.6) });
        Assert.Equal(one.Kerfs, two.Kerfs);
        Assert.Equal(2 * one.Spacing.Millimeters, two.Spacing.Millimeters, 3e-6);
        Assert.Equal(2 * one.FacetHeight.Millimeters, two.FacetHeight.Millimeters, 3e-6);
        Assert.Equal(2 * one.GapLeft.Millimeters, two.GapLeft.Millimeters, 3e-6);

        static Length Twice(Length length) => Mm(2 * length.Millimeters);
    }

    [Property]
    public void A_wider_kerf_and_a_thicker_web_take_no_more_kerfs_and_a_larger_angle_no_fewer(PositiveInt seed)
    {
        KerfedPanel panel = Random(seed.Get);
        KerfPlan plan = KerfBend.Plan(panel);
        Assert.True(KerfBend.Plan(panel with { Kerf = Mm(panel.Kerf.Millimeters * 1.5) }).Kerfs <= plan.Kerfs);
        Assert.True(KerfBend.Plan(panel with { Web = Mm((panel.Web.Millimeters + panel.Thickness.Nominal.Millimeters) / 2) }).Kerfs <= plan.Kerfs);
        Assert.True(KerfBend.Plan(panel with { Bend = Angle.FromDegrees(panel.Bend.Degrees * 1.3) }).Kerfs >= plan.Kerfs);
        Assert.True(KerfBend.Plan(panel with { OuterRadius = Mm(panel.OuterRadius.Millimeters * 2) }).FacetHeight.Millimeters >= plan.FacetHeight.Millimeters);

        // Never fewer than by the ratio of width to depth.
        Assert.True(plan.Kerfs >= (panel.Bend.Radians * plan.Depth.Millimeters / panel.Kerf.Millimeters) - 1e-6);
    }

    [Fact]
    public void All_problems_are_reported_at_once()
    {
        KerfedPanel bad = new(Mm(0), Angle.FromDegrees(0), Mm(0), Mm(0), Mm(0.1)) { DepthError = Mm(-1), WebSheet = new BentSheet(Mm(0), Pressure.FromMegapascals(0), Pressure.FromMegapascals(0)) };
        Assert.Equal(
            ["panel.OuterRadius", "panel.Bend", "panel.Thickness", "panel.Web", "panel.Kerf", "panel.DepthError", "panel.WebSheet.Elasticity", "panel.WebSheet.BendingStrength"],
            KerfBend.CheckPlan(bad).Select(static problem => problem.Parameter));
        Assert.Equal(["panel.Web"], KerfBend.CheckPlan(s_corner with { Web = Mm(18) }).Select(static problem => problem.Parameter));
        Assert.Equal(["panel.OuterRadius"], KerfBend.CheckPlan(s_corner with { OuterRadius = Mm(18) }).Select(static problem => problem.Parameter));
        Assert.Equal(["panel.Thickness"], KerfBend.CheckPlan(s_corner with { Thickness = TolerancedLength.PlusMinus(Mm(18), Mm(18)) }).Select(static problem => problem.Parameter));
        Assert.Equal(s_corner, s_corner with { Kerf = Length.FromCentimeters(0.32) });
    }

    private static KerfedPanel Random(int seed)
    {
        Random random = new(seed);
        double thickness = random.Next(40, 300) / 10.0, web = thickness * random.Next(5, 60) / 100.0;
        double kerf = Math.Min(10, Math.Max(0.5, (thickness - web) * random.Next(5, 40) / 100.0));
        return new KerfedPanel(Mm(thickness + random.Next(1, 2000)), Angle.FromDegrees(random.Next(1, 2700) / 10.0), Mm(thickness), Mm(Math.Round(web, 3)), Mm(Math.Round(kerf, 3)));
    }
}
