using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Panels;

/// <summary>Wrapped panels worked by hand, refused input, findings, and what holds for every job.</summary>
[Properties(MaxTest = 300, EndSize = 1_000_000)]
public sealed class WrapTests
{
    private static readonly WrapBuild s_build = new(Mm(6.5), Mm(1)) { Nap = NapDirection.TowardBottom, Stretch = ClothStretch.BothWays };

    private static readonly WrapJob s_windowed = new(Mm(1200), Mm(600), s_build) { Windows = [Window(500, 900, 200, 400, 70)] };

    private static readonly Dictionary<string, (WrapJob Job, string[] Paths)> s_bad = new(StringComparer.Ordinal)
    {
        ["opening too narrow"] = (s_windowed with { OpeningWidth = Mm(19.999999) }, ["job.OpeningWidth"]),
        ["opening too high"] = (s_windowed with { OpeningHeight = Mm(50_000.000001) }, ["job.OpeningHeight"]),
        ["no build"] = (s_windowed with { Build = null! }, ["job.Build"]),
        ["ply too thin"] = (s_windowed with { Build = s_build with { PlyThickness = Mm(0.999999) } }, ["job.Build.PlyThickness"]),
        ["no cloth"] = (s_windowed with { Build = s_build with { ClothThickness = Mm(0) } }, ["job.Build.ClothThickness"]),
        ["foam in an undefined unit"] = (s_windowed with { Build = s_build with { FoamThickness = new Length(1, (LengthUnit)999) } }, ["job.Build.FoamThickness"]),
        ["foam squeezed to more"] = (s_windowed with { Build = s_build with { SqueezedFoam = Mm(3.000001) } }, ["job.Build.SqueezedFoam"]),
        ["turn-under too short"] = (s_windowed with { Build = s_build with { TurnUnder = Mm(9.999999) } }, ["job.Build.TurnUnder"]),
        ["no such edge"] = (s_windowed with { Build = s_build with { AtJoints = (EdgeWrap)3 } }, ["job.Build.AtJoints"]),
        ["no panels"] = (s_windowed with { Panels = 0 }, ["job.Panels"]),
        ["too many panels for the width"] = (s_windowed with { Panels = 100 }, ["job.OpeningWidth"]),
        ["101 windows"] = (s_windowed with { Windows = [.. Enumerable.Repeat(Window(1, 2, 1, 2, 0), 101)] }, ["job.Windows"]),
        ["a window null"] = (s_windowed with { Windows = [null!] }, ["job.Windows[0]"]),
        ["a window nowhere"] = (s_windowed with { Windows = [new PanelWindow(null!)] }, ["job.Windows[0].Opening"]),
        ["a window turned round"] = (s_windowed with { Windows = [Window(900, 500, 200, 400, 0)] }, ["job.Windows[0].Opening.ToU"]),
        ["joints that go back"] = (s_windowed with { Joints = [Mm(1000), Mm(900)] }, ["job.Joints[1]"]),
        ["a joint at the front"] = (s_windowed with { Joints = [Mm(12)] }, ["job.Joints[0]"]), // 12 - 0.75 - 1.5 - 2 = 7.75 of ply
        ["a joint at the rear"] = (s_windowed with { Joints = [Mm(600), Mm(1190)] }, ["job.Joints[1]"]),
        ["joints and another number of panels"] = (s_windowed with { Joints = [Mm(600)], Panels = 3 }, ["job.Panels"]),
        ["200 joints"] = (s_windowed with { Joints = [.. Enumerable.Repeat(Mm(600), 200)] }, ["job.Joints"]),
        ["a window over another"] = (s_windowed with { Windows = [Window(500, 900, 200, 400, 0), Window(899.999999, 1000, 399.999999, 500, 0)] }, ["job.Windows[1]"]),
        ["the same window twice"] = (s_windowed with { Windows = [Window(100, 900, 100, 500, 0), Window(100, 900, 100, 500, 0)] }, ["job.Windows[1]"]),
        ["corners too round"] = (s_windowed with { Windows = [Window(500, 900, 200, 400, 100.000001)] }, ["job.Windows[0].CornerRadius"]),
        ["all at once"] = (
            new WrapJob(Mm(1), Mm(1), new WrapBuild(Mm(0), Mm(0)) { FoamThickness = Mm(-1), Nap = (NapDirection)6, Stretch = (ClothStretch)(-1) }) { Panels = -1, Windows = [Window(-1, 1, 0, 1, 0)] },
            ["job.OpeningWidth", "job.OpeningHeight", "job.Build.PlyThickness", "job.Build.ClothThickness", "job.Build.FoamThickness", "job.Build.Nap", "job.Build.Stretch", "job.Panels", "job.Windows[0].Opening.FromU"]),
    };

    public static TheoryData<string> BadJobs() => [.. s_bad.Keys];

    [Theory]
    [MemberData(nameof(BadJobs))]
    public void Bad_input_is_named_by_its_path(string name)
    {
        (WrapJob job, string[] paths) = s_bad[name];
        Assert.Equal(paths, PanelWrap.CheckPlan(job).Select(static problem => problem.Parameter));
        Assert.Equal(paths[0], Assert.ThrowsAny<ArgumentException>(() => PanelWrap.Plan(job)).ParamName);
    }

    /// <summary>
    /// From the row to what is nested and cut: (3000 - 2 x 1.5 - 2 x 1.5)/3 = 998 less 2 x 1 of cloth, and 600 - 3 - 2: ply of 996 by 595, its grain along the van or up;
    /// cloth of 996 + 89 across and 595 + 89 along a roll that runs up, the other way round on one that runs along the van.
    /// </summary>
    [Fact]
    public void Pieces_go_to_sheet_and_roll_with_their_names()
    {
        WrapPlan plan = PanelWrap.Plan(new WrapJob(Mm(3000), Mm(600), s_build) { Panels = 3 });
        WrappedPanel second = plan.Panels[1];
        Assert.Equal(new SheetPart(Mm(996), Mm(595), 1, mayTurn: false) { Name = "panel 2" }, second.ToSheetPart(PanelGrainDirection.AlongU));
        Assert.Equal(new SheetPart(Mm(595), Mm(996), 1, mayTurn: false) { Name = "panel 2" }, second.ToSheetPart(PanelGrainDirection.AlongV));
        Assert.Equal(new SheetPart(Mm(996), Mm(595), 1, mayTurn: true) { Name = "panel 2" }, second.ToSheetPart(PanelGrainDirection.Either));
        Assert.Equal("grain", Assert.ThrowsAny<ArgumentException>(() => second.ToSheetPart((PanelGrainDirection)3)).ParamName);
        Assert.StartsWith("panel 2: finished", second.ToString(), StringComparison.Ordinal);

        // Roll parts are along first.
        Assert.Equal(new RollPart(Mm(684), Mm(1085), 1, mayTurn: false) { Name = "cloth 2" }, plan.ClothPieces[1].ToRollPart());
        Assert.Equal(new RollPart(Mm(595), Mm(996), 1, mayTurn: true) { Name = "foam 2" }, plan.FoamPieces[1].ToRollPart());
        WrapPlan along = PanelWrap.Plan(new WrapJob(Mm(3000), Mm(600), s_build with { Nap = NapDirection.TowardRear }) { Panels = 3 });
        Assert.Equal(new RollPart(Mm(1085), Mm(684), 1, mayTurn: false) { Name = "cloth 2" }, along.ClothPieces[1].ToRollPart());
    }

    /// <summary>By hand: 1000 - 2 x 1.5 = 997; less 2 x 1 = 995; the cloth goes 3 + 6.5 + 35 = 44.5 beyond the ply at each edge: 1084. Height 600: 597, 595, 684.</summary>
    [Fact]
    public void A_plain_panel()
    {
        #region example: PanelWrap.Plan
        WrapBuild build = new(Mm(6.5), Mm(1)) { Nap = NapDirection.TowardBottom, Stretch = ClothStretch.BothWays };
        WrapPlan plan = PanelWrap.Plan(new WrapJob(Mm(1000), Mm(600), build));
        Length finished = plan.Panels[0].FinishedWidth;     // 997: a gap of 1.5 at each edge
        Length ply = plan.Panels[0].PlyWidth;               // 995: 1 of cloth at each edge, the foam is trimmed flush
        Length cloth = plan.Panels[0].ClothWidth;           // 1084: 3 of foam, 6.5 of ply, 35 turned under at each edge
        #endregion
        Assert.Equal((997, 995, 1084), (finished.Millimeters, ply.Millimeters, cloth.Millimeters));
        WrappedPanel panel = plan.Panels[0];
        Assert.Equal((597, 595, 684), (panel.FinishedHeight.Millimeters, panel.PlyHeight.Millimeters, panel.ClothHeight.Millimeters));
        Assert.Equal((995, 595), (panel.FoamWidth.Millimeters, panel.FoamHeight.Millimeters));
        Assert.Equal(997 * 597, plan.FaceArea.SquareMillimeters);
        Assert.Equal(1084 * 684, plan.ClothArea.SquareMillimeters);
        Assert.Equal((1084 * 684) + (995 * 595), plan.BondedArea.SquareMillimeters);
        Assert.Equal([595, 595, 995, 995], plan.WrappedEdges.Select(static edge => edge.Millimeters));
        Assert.Equal(71.3223305, panel.CornerCut!.Value.Millimeters, 1e-6); // 44.5 + 44.5 - 1.4142135624 (9.5 + 3)
        Assert.Equal(["foam-thickness", "turn-under", "edge-gap"], plan.DefaultsUsed.Select(static used => used.Figure.Name)); // no joint, and no foam goes round an edge
        Assert.Equal(["panels-wrap-flammability", "panels-wrap-corners"], plan.Findings.Select(static finding => finding.Code));
        WorkingsCheck.Recompute(plan.Explain());
    }

    /// <summary>By hand: foam 4 squeezed to 1.5 round the front: 1 + 1.5 outside the ply; foam 6.5 more; cloth 1.5 + 4 + 6.5 + 1.5 + 30 = 43.5. The rear is left raw.</summary>
    [Fact]
    public void Foam_round_an_edge_and_an_edge_left_raw()
    {
        WrapBuild build = s_build with { FoamThickness = Mm(4), SqueezedFoam = Mm(1.5), TurnUnder = Mm(30), EdgeGap = Mm(2), Front = EdgeWrap.FoamRound, Rear = EdgeWrap.Unwrapped };
        WrappedPanel panel = PanelWrap.Plan(new WrapJob(Mm(504), Mm(304), build)).Panels[0];
        Assert.Equal(500, panel.FinishedWidth.Millimeters);
        Assert.Equal(497.5, panel.PlyWidth.Millimeters);
        Assert.Equal(504, panel.FoamWidth.Millimeters);
        Assert.Equal(541, panel.ClothWidth.Millimeters);
        Assert.Null((PanelWrap.Plan(new WrapJob(Mm(504), Mm(304), build with { Top = EdgeWrap.Unwrapped, Bottom = EdgeWrap.Unwrapped })).Panels[0]).CornerCut);
    }

    /// <summary>By hand: foam-backed cloth takes its foam round every edge: 1 + 1.5 outside the ply, 1.5 + 3 + 6.5 + 1.5 + 35 = 47.5 of cloth beyond it, and no piece of foam.</summary>
    [Fact]
    public void Foam_backed_cloth_has_no_pieces_of_foam()
    {
        WrapPlan plan = PanelWrap.Plan(new WrapJob(Mm(1000), Mm(600), s_build with { IsFoamBacked = true }));
        Assert.Equal((992, 1087, 0), (plan.Panels[0].PlyWidth.Millimeters, plan.Panels[0].ClothWidth.Millimeters, plan.Panels[0].FoamWidth.Millimeters));
        Assert.Empty(plan.FoamPieces);
        Assert.Equal(plan.ClothArea.SquareMillimeters, plan.BondedArea.SquareMillimeters);
        WorkingsCheck.Recompute(plan.Explain());
    }

    /// <summary>
    /// By hand: the cut-out is 1 larger all round, 402 x 202 with corners of 71; the ply starts 2.5 behind the opening's front, so it lies 500 - 1 - 2.5 = 496.5
    /// behind the ply's front. The cloth is cut 44.5 further in: 313 x 113, which lies 496.5 + 44.5 + 44.5 = 585.5 behind the cloth's front. Relief:
    /// 44.5 x 1.41421356 - 71 x 0.41421356 - 3 = 30.523341; a corner is 1.570796 x 71 = 111.5 round, 5.58 times 20: seven cuts.
    /// </summary>
    [Fact]
    public void A_panel_with_a_window()
    {
        WrapPlan plan = PanelWrap.Plan(s_windowed);
        WindowCutOut window = Assert.Single(plan.Panels[0].Windows);
        Assert.Equal((402, 202, 71), (window.PlyWidth.Millimeters, window.PlyHeight.Millimeters, window.PlyRadius.Millimeters));
        Assert.Equal((496.5, 196.5), (window.PlyFromFront.Millimeters, window.PlyFromBottom.Millimeters));
        Assert.Equal((402, 202), (window.FoamWidth.Millimeters, window.FoamHeight.Millimeters));
        Assert.Equal((313, 113), (window.ClothWidth.Millimeters, window.ClothHeight.Millimeters));
        Assert.Equal((585.5, 285.5), (window.ClothFromFront.Millimeters, window.ClothFromBottom.Millimeters));
        Assert.Equal(35, window.Strip.Millimeters);
        Assert.Equal(30.523341, window.ReliefCut.Millimeters, 1e-6);
        Assert.Equal(7, window.ReliefCutsPerCorner);
        Assert.Equal((1197 * 597) - (400 * 200) + ((4 - Math.PI) * 4900), plan.FaceArea.SquareMillimeters, 1e-6);
        Assert.Equal([595, 595, 1195, 1195, 202, 402, 202, 402], plan.WrappedEdges.Select(static edge => edge.Millimeters));
        Assert.False(plan.HasProblem);
        WorkingsCheck.Recompute(plan.Explain());
    }

    /// <summary>
    /// By hand: 200 x 60 is 202 x 62 in the ply, and half of 62 is less than the 44.5 that the cloth would be cut further in. So the slit ends 31 from the ply's
    /// ends too: 202 - 62 = 140 long, 496.5 + 44.5 + 31 = 572 behind the cloth's front. From there 31 x 1.41421356 = 43.840620 to the corner, less 1 x 0.41421356 for its
    /// round of 1 and 3: 40.426407. On the back lie 31 - 9.5 = 21.5.
    /// </summary>
    [Fact]
    public void A_window_too_small_for_a_piece_to_be_cut_out_has_a_slit_that_ends_as_far_from_its_ends_as_from_its_edges()
    {
        WrapPlan plan = PanelWrap.Plan(s_windowed with { Windows = [Window(500, 700, 200, 260, 0)] });
        WindowCutOut slit = plan.Panels[0].Windows[0];
        Assert.Equal((140, 0), (slit.ClothWidth.Millimeters, slit.ClothHeight.Millimeters));
        Assert.Equal((572, 272), (slit.ClothFromFront.Millimeters, slit.ClothFromBottom.Millimeters)); // 196.5 + 44.5 + 31
        Assert.Equal(40.426407, slit.ReliefCut.Millimeters, 1e-6);
        Assert.Equal(21.5, slit.Strip.Millimeters);
        WorkingsCheck.Recompute(plan.Explain());
    }

    /// <summary>Walked on the ply: from each corner of what is cut out of the cloth the cut goes out at 45 degrees, and 3 further lies the ply's corner, or the middle of its round.</summary>
    [Theory]
    [InlineData(400, 200, 0)]
    [InlineData(400, 200, 70)]
    [InlineData(200, 60, 0)] // slits from here on
    [InlineData(60, 200, 0)]
    [InlineData(200, 60, 30)]
    [InlineData(60, 60, 0)]
    [InlineData(60, 60, 30)]
    [InlineData(87, 87, 5)]
    [InlineData(87.5, 86.5, 5)]
    public void Relief_cuts_point_at_the_corners_of_the_ply_and_stop_3_short(double width, double height, double radius)
    {
        WindowCutOut hole = PanelWrap.Plan(s_windowed with { Windows = [Window(500, 500 + width, 200, 200 + height, radius)] }).Panels[0].Windows[0];
        double clothU = hole.ClothFromFront.Millimeters - 44.5, clothV = hole.ClothFromBottom.Millimeters - 44.5; // the cloth begins 44.5 before the ply
        Assert.True(hole.ReliefCut.Millimeters > 0);
        foreach ((int u, int v) in new[] { (0, 0), (1, 0), (0, 1), (1, 1) })
        {
            (double outU, double outV) = ((2 * u) - 1, (2 * v) - 1);
            double reach = (hole.ReliefCut.Millimeters + 3) / Math.Sqrt(2), round = hole.PlyRadius.Millimeters * (1 - (1 / Math.Sqrt(2)));
            Assert.Equal(hole.PlyFromFront.Millimeters + (u * hole.PlyWidth.Millimeters) - (outU * round), clothU + (u * hole.ClothWidth.Millimeters) + (outU * reach), 2e-6);
            Assert.Equal(hole.PlyFromBottom.Millimeters + (v * hole.PlyHeight.Millimeters) - (outV * round), clothV + (v * hole.ClothHeight.Millimeters) + (outV * reach), 2e-6);
        }
    }

    [Fact]
    public void A_window_has_no_opening_in_foam_that_is_not_there()
    {
        Assert.Equal((0, 0), Foam(s_build with { IsFoamBacked = true }));
        Assert.Equal((0, 0), Foam(s_build with { FoamThickness = Mm(0) }));
        Assert.Equal((402, 202), Foam(s_build));

        static (double, double) Foam(WrapBuild build)
        {
            WrapPlan plan = PanelWrap.Plan(s_windowed with { Build = build });
            WorkingsCheck.Recompute(plan.Explain());
            return (plan.Panels[0].Windows[0].FoamWidth.Millimeters, plan.Panels[0].Windows[0].FoamHeight.Millimeters);
        }
    }

    /// <summary>
    /// Nothing wrapped: the ply begins 1.5 behind the opening's front, so a window at 51.5 leaves just the 50 that may be left. With everything wrapped the cut-outs of windows at
    /// 200 to 400 and 403 to 600 end at 401 and begin at 402: a post of 1.
    /// </summary>
    [Fact]
    public void A_tongue_of_ply_beside_a_window_or_between_two_is_a_caution()
    {
        WrapBuild raw = s_build with { Front = EdgeWrap.Unwrapped, Rear = EdgeWrap.Unwrapped, Top = EdgeWrap.Unwrapped, Bottom = EdgeWrap.Unwrapped, AtWindows = EdgeWrap.Unwrapped };
        Assert.Null(Narrow(Of(raw, Window(51.5, 300, 200, 400, 0))));
        Assert.Equal((1, 49.999999), Narrow(Of(raw, Window(51.499999, 300, 200, 400, 0))));
        Assert.Equal((1, 0.000001), Narrow(Of(raw, Window(1.500001, 300, 200, 400, 0))));
        Assert.Equal((2, 10), Narrow(Of(raw, Window(500, 1188.5, 11.5, 400, 0)))); // 1198.5 - 1188.5; 11.5 - 1.5
        Assert.Equal((1, 1), Narrow(Of(s_build, Window(200, 400, 200, 400, 0), Window(403, 600, 200, 400, 0))));
        Assert.Null(Narrow(Of(s_build, Window(200, 400, 200, 400, 0), Window(452, 600, 200, 400, 0)))); // 451 - 401
        Assert.Equal((1, 49.999999), Narrow(Of(s_build, Window(200, 400, 200, 400, 0), Window(451.999999, 600, 200, 400, 0))));

        // Corner to corner: cut-outs with rounds of 1 about (400, 200) and (403, 203): 3 x 1.41421356 - 2 = 2.242641.
        Assert.Equal((1, 2.242641), Narrow(Of(s_build, Window(200, 400, 100, 200, 0), Window(403, 600, 203, 400, 0))));

        static (double, double)? Narrow(WrapPlan plan) => plan.Findings.SingleOrDefault(static finding => finding.Code == "panels-wrap-ply-narrow") is { Severity: Severity.Caution } found ? (found.Values[0].Value, found.Values[1].Value) : null;
    }

    [Fact]
    public void Windows_whose_cut_outs_meet_have_no_ply_between_them()
    {
        Assert.Equal("panels-wrap-windows-meet", Of(s_build, Window(200, 400, 200, 400, 0), Window(402, 600, 200, 400, 0)).Findings[0].Code); // both at 401
        WrapPlan touching = Of(s_build with { AtWindows = EdgeWrap.Unwrapped }, Window(200, 400, 200, 400, 0), Window(400, 600, 200, 400, 0));
        Assert.True(touching.HasProblem);
        Assert.Equal("panels-wrap-windows-meet", touching.Findings[0].Code);
        Assert.False(Of(s_build, Window(200, 400, 200, 400, 0), Window(402.000001, 600, 200, 400, 0)).HasProblem);
        Assert.False(Of(s_build, Window(200, 400, 200, 400, 0), Window(1002, 1100, 200, 400, 0)).HasProblem);
    }

    /// <summary>35 from both sides: 70 of ply between two windows are just enough. What lies corner to corner is not under both.</summary>
    [Fact]
    public void Turn_unders_of_two_windows_may_lie_on_each_other()
    {
        Assert.Null(Overlap(Window(200, 400, 200, 400, 0), Window(472, 700, 200, 400, 0))); // 471 - 401
        Assert.Equal((1, 69.999999), Overlap(Window(200, 400, 200, 400, 0), Window(471.999999, 700, 200, 400, 0)));
        Assert.Equal((1, 1), Overlap(Window(200, 400, 200, 400, 0), Window(403, 700, 300, 450, 0)));
        Assert.Equal((1, 1), Overlap(Window(300, 700, 100, 250, 0), Window(200, 400, 253, 400, 0)));
        Assert.Null(Overlap(Window(200, 400, 100, 200, 0), Window(403, 700, 203, 400, 0)));
        Assert.Null(Overlap(Window(200, 400, 200, 260, 0), Window(445, 700, 200, 260, 0))); // 31 - 9.5 = 21.5 from each: 43, and 444 - 401
        Assert.Equal((1, 42.999999), Overlap(Window(200, 400, 200, 260, 0), Window(444.999999, 700, 200, 260, 0)));

        static (double, double)? Overlap(params PanelWindow[] windows) => Of(s_build, windows).Findings.SingleOrDefault(static finding => finding.Code == "panels-wrap-turn-unders-overlap") is { } found ? (found.Values[0].Value, found.Values[1].Value) : null;
    }

    private static WrapPlan Of(WrapBuild build, params PanelWindow[] windows) => PanelWrap.Plan(s_windowed with { Build = build, Windows = windows });

    /// <summary>Foam round the window's edge: 2.5 outside, cut-out 405 x 205; the foam reaches 6.5 in: 392 x 192.</summary>
    [Fact]
    public void A_window_with_foam_round_its_edge()
    {
        WindowCutOut window = PanelWrap.Plan(s_windowed with { Build = s_build with { AtWindows = EdgeWrap.FoamRound } }).Panels[0].Windows[0];
        Assert.Equal((405, 205), (window.PlyWidth.Millimeters, window.PlyHeight.Millimeters));
        Assert.Equal((392, 192), (window.FoamWidth.Millimeters, window.FoamHeight.Millimeters));
        Assert.Equal((310, 110), (window.ClothWidth.Millimeters, window.ClothHeight.Millimeters)); // 405 - 2 x 47.5
    }

    /// <summary>Half of a cut-out of h is h/2, of which 9.5 go down foam and ply: 35 are left on the back where h is 89, the window 87 high.</summary>
    [Fact]
    public void A_small_window_leaves_less_cloth_than_the_turn_under()
    {
        Assert.DoesNotContain(Small(87).Findings, static finding => finding.Code.StartsWith("panels-wrap-strip", StringComparison.Ordinal));
        WrapPlan less = Small(86.999998);
        Assert.Equal(34.999999, less.Panels[0].Windows[0].Strip.Millimeters);
        Assert.Equal(Severity.Caution, less.Findings.Single(static finding => finding.Code == "panels-wrap-strip-short").Severity);
        Assert.Equal(0, less.Panels[0].Windows[0].ClothHeight.Millimeters);
        Assert.Contains(Small(17.000002).Findings, static finding => finding.Code == "panels-wrap-strip-short"); // 9.500001 less 9.5
        WrapPlan none = Small(17);
        Assert.Equal("panels-wrap-strip-none", none.Findings[0].Code);
        Assert.True(none.HasProblem);
        Assert.DoesNotContain(Small(17, EdgeWrap.Unwrapped).Findings, static finding => finding.Code.StartsWith("panels-wrap-strip", StringComparison.Ordinal));

        static WrapPlan Small(double height, EdgeWrap at = EdgeWrap.FoamTrimmed) => PanelWrap.Plan(s_windowed with { Build = s_build with { AtWindows = at }, Windows = [Window(500, 900, 200, 200 + height, 0)] });
    }

    /// <summary>The ply starts 2.5 behind the opening's front, a window's cut-out 1 before the window: at 3.5 no ply is left, a nanometre further it is.</summary>
    [Fact]
    public void A_window_needs_ply_all_round_in_one_panel()
    {
        Assert.Equal("panels-wrap-window-not-inside", At(3.5).Findings[0].Code);
        Assert.Empty(At(3.5).Panels[0].Windows);
        Assert.Single(At(3.500001).Panels[0].Windows);
        Assert.Contains(At(3.500001).Findings, static finding => finding.Code == "panels-wrap-turn-unders-overlap");
        Assert.Equal("panels-wrap-window-not-inside", PanelWrap.Plan(s_windowed with { Panels = 2 }).Findings[0].Code); // 500 to 900 over the joint at 600

        static WrapPlan At(double u) => PanelWrap.Plan(s_windowed with { Windows = [Window(u, u + 300, 200, 400, 0)] });
    }

    /// <summary>By hand: (1806 - 2 x 1.5 - 2 x 1.5)/3 = 600 each; they start at 1.5, 603 and 1204.5; ply 598, cloth 598 + 89 = 687.</summary>
    [Fact]
    public void A_row_of_three_panels_with_joints()
    {
        WrapPlan plan = PanelWrap.Plan(new WrapJob(Mm(1806), Mm(500), s_build) { Panels = 3 });
        Assert.Equal([1.5, 603, 1204.5], plan.Panels.Select(static panel => panel.Start.Millimeters));
        Assert.All(plan.Panels, static panel => Assert.Equal((600, 598, 687), (panel.FinishedWidth.Millimeters, panel.PlyWidth.Millimeters, panel.ClothWidth.Millimeters)));
        Assert.Equal(["cloth 1: 687 across x 584 mm along the roll", "cloth 2: 687 across x 584 mm along the roll", "cloth 3: 687 across x 584 mm along the roll"], plan.ClothPieces.Select(static piece => piece.ToString()));
        Assert.All(plan.FoamPieces, static piece => Assert.True(piece.IsTurnable));
        Assert.Equal(12, plan.Findings.Single(static finding => finding.Code == "panels-wrap-corners").Values[0].Value);

        // Joint edges treated otherwise: the outer panels have one of them, the middle one two.
        WrapPlan raw = PanelWrap.Plan(new WrapJob(Mm(1806), Mm(500), s_build with { AtJoints = EdgeWrap.Unwrapped }) { Panels = 3 });
        Assert.Equal([599, 600, 599], raw.Panels.Select(static panel => panel.PlyWidth.Millimeters));
        Assert.Equal([643.5, 600, 643.5], raw.Panels.Select(static panel => panel.ClothWidth.Millimeters));
    }

    /// <summary>By hand: joints of 1.5 at 950 and 2330 of 3379: 949.25 - 1.5 = 947.75, 2329.25 - 950.75 = 1378.5, 3377.5 - 2330.75 = 1046.75. A window at 2440 lies 2440 - 1 - 2331.75 = 107.25 behind the third ply's front.</summary>
    [Fact]
    public void Panels_between_joints_are_as_wide_as_the_joints_make_them()
    {
        WrapPlan plan = PanelWrap.Plan(new WrapJob(Mm(3379), Mm(352), s_build) { Joints = [Mm(950), Mm(2330)], Windows = [Window(2440, 2620, 110, 250, 12)] });
        Assert.Equal([947.75, 1378.5, 1046.75], plan.Panels.Select(static panel => panel.FinishedWidth.Millimeters));
        Assert.Equal([1.5, 950.75, 2330.75], plan.Panels.Select(static panel => panel.Start.Millimeters));
        Assert.Equal([945.75, 1376.5, 1044.75], plan.Panels.Select(static panel => panel.PlyWidth.Millimeters));
        WindowCutOut hole = Assert.Single(plan.Panels[2].Windows);
        Assert.Equal((107.25, 106.5), (hole.PlyFromFront.Millimeters, hole.PlyFromBottom.Millimeters));
        Assert.Equal(3379, plan.OpeningWidth.Millimeters);
        WorkingsCheck.Recompute(plan.Explain());
        Assert.Equal(947.75, plan.Explain().Steps.Single(static step => step.Value.Name == "w_1").Value.Value);
        Assert.Equal(PanelWrap.Plan(new WrapJob(Mm(1806), Mm(500), s_build) { Panels = 3 }).Figures(), PanelWrap.Plan(new WrapJob(Mm(1806), Mm(500), s_build) { Joints = [Mm(602.25), Mm(1203.75)] }).Figures()); // 1.5 + 600 + 0.75
        Assert.NotEqual(s_windowed with { Joints = [Mm(600)] }, s_windowed with { Joints = [Mm(601)] });
        Assert.Equal(s_windowed with { Joints = [Mm(25.4)] }, s_windowed with { Joints = [Inch(1)] });
    }

    /// <summary>By hand: 1000 high with a level joint at 500 is 0 to 499.25 and 500.75 to 1000; the gap of 1.5 is left at the foot and the head: 497.75 each. A window from 600 up lies 600 - 500.75 - 1 - 1 = 97.25 above the upper ply's edge.</summary>
    [Fact]
    public void A_split_wall_is_wrapped_course_by_course()
    {
        PanelSplitPlan one = PanelSplit.Split(new PanelWall(Mm(3379), Mm(352), Mm(1390), Mm(1242)) { Ribs = [new PanelJointLine(Mm(950), Mm(31.5)), new PanelJointLine(Mm(2330), Mm(31.5))] });
        WrapPlan row = PanelWrap.Plan(WrapJob.From(one, s_build));
        Assert.Equal([947.75, 1378.5, 1046.75], row.Panels.Select(static panel => panel.FinishedWidth.Millimeters));

        PanelSplitPlan two = PanelSplit.Split(new PanelWall(Mm(1000), Mm(1000), Mm(1200), Mm(600)) { Rails = [new PanelJointLine(Mm(500), Mm(31.5))], Openings = [new FaceOpening(Mm(300), Mm(700), Mm(600), Mm(900))] });
        WrapBuild build = s_build with { AtJoints = EdgeWrap.Unwrapped, Joint = Mm(3) };
        WrapPlan lower = PanelWrap.Plan(WrapJob.From(two, build)), upper = PanelWrap.Plan(WrapJob.From(two, s_build, 1));
        Assert.Equal((497.75, 497.75), (lower.Panels[0].FinishedHeight.Millimeters, upper.Panels[0].FinishedHeight.Millimeters));
        Assert.Equal((496.75, 1.5), (lower.Panels[0].PlyHeight.Millimeters, lower.Build.Joint!.Value.Millimeters)); // raw along the joint
        Assert.Empty(lower.Panels[0].Windows);
        Assert.Equal(97.25, Assert.Single(upper.Panels[0].Windows).PlyFromBottom.Millimeters);
        Assert.False(upper.HasProblem);

        Assert.Equal("course", Assert.Throws<ArgumentOutOfRangeException>(() => WrapJob.From(two, s_build, 2)).ParamName);
        Assert.Equal("split", Assert.Throws<ArgumentException>(() => WrapJob.From(PanelSplit.Split(new PanelWall(Mm(3000), Mm(352), Mm(1390), Mm(1242))), s_build)).ParamName);
        Assert.Equal("build", Assert.Throws<ArgumentNullException>(() => WrapJob.From(two, null!)).ParamName);
    }

    [Fact]
    public void FromPly()
    {
        #region example: PanelWrap.FromPly
        WrapPlan suits = PanelWrap.FromPly([Mm(600), Mm(600)], Mm(400), new WrapBuild(Mm(6.5), Mm(1)));
        Length width = suits.OpeningWidth;                  // 1208.5: 2 x 602 + 1.5 between + 2 x 1.5
        #endregion
        Assert.Equal((1208.5, 405), (width.Millimeters, suits.OpeningHeight.Millimeters));
        Assert.Equal(["plyWidths[1]", "plyHeight", "build"], PanelWrap.CheckFromPly([Mm(600), Mm(9)], Mm(-1), null!).Select(static problem => problem.Parameter));
    }

    [Fact]
    public void Nap_and_stretch_say_how_a_piece_lies_on_the_roll_and_whether_it_may_be_turned()
    {
        Assert.Equal((false, 1084, 684), Piece(NapDirection.TowardTop, ClothStretch.BothWays));
        Assert.Equal((false, 684, 1084), Piece(NapDirection.TowardRear, ClothStretch.BothWays));
        Assert.Equal((false, 684, 1084), Piece(NapDirection.TowardFront, ClothStretch.None));
        Assert.Equal((false, 1084, 684), Piece(NapDirection.Unknown, ClothStretch.BothWays));
        Assert.Equal((false, 1084, 684), Piece(NapDirection.None, ClothStretch.AlongRoll));
        Assert.Equal((false, 684, 1084), Piece(NapDirection.None, ClothStretch.AcrossRoll)); // the greater stretch up the panel, as round a curve
        Assert.Equal((false, 1084, 684), Piece(NapDirection.None, ClothStretch.Unknown));
        Assert.Equal((true, 1084, 684), Piece(NapDirection.None, ClothStretch.BothWays));
        Assert.Equal((true, 1084, 684), Piece(NapDirection.None, ClothStretch.None));
        WrapPlan unknown = PanelWrap.Plan(new WrapJob(Mm(1000), Mm(600), new WrapBuild(Mm(6.5), Mm(1))));
        Assert.Contains(unknown.Findings, static finding => finding is { Code: "panels-wrap-nap-unknown", Severity: Severity.Caution });
        Assert.Contains(unknown.Findings, static finding => finding is { Code: "panels-wrap-stretch-unknown", Severity: Severity.Note });

        static (bool, double, double) Piece(NapDirection nap, ClothStretch stretch)
        {
            CoverPiece piece = PanelWrap.Plan(new WrapJob(Mm(1000), Mm(600), s_build with { Nap = nap, Stretch = stretch })).ClothPieces[0];
            Assert.Equal(nap, piece.Arrow);
            return (piece.IsTurnable, piece.Across.Millimeters, piece.Along.Millimeters);
        }
    }

    [Theory]
    [InlineData(NapDirection.TowardTop, ClothStretch.AlongRoll, false)]
    [InlineData(NapDirection.TowardTop, ClothStretch.AcrossRoll, true)]
    [InlineData(NapDirection.TowardRear, ClothStretch.AlongRoll, true)]
    [InlineData(NapDirection.TowardRear, ClothStretch.AcrossRoll, false)]
    [InlineData(NapDirection.Unknown, ClothStretch.AcrossRoll, true)]
    [InlineData(NapDirection.None, ClothStretch.AlongRoll, false)]
    [InlineData(NapDirection.None, ClothStretch.AcrossRoll, false)]
    [InlineData(NapDirection.TowardRear, ClothStretch.BothWays, false)]
    public void A_nap_that_lays_the_greater_stretch_along_the_van_is_noted(NapDirection nap, ClothStretch stretch, bool noted)
    {
        WrapPlan plan = PanelWrap.Plan(new WrapJob(Mm(1000), Mm(600), s_build with { Nap = nap, Stretch = stretch }));
        Assert.Equal(noted, plan.Findings.Any(static finding => finding is { Code: "panels-wrap-stretch-along-van", Severity: Severity.Note }));
    }

    /// <summary>A default is listed where a size rests on it, and nowhere else.</summary>
    [Fact]
    public void Defaults_that_are_not_used_are_not_listed()
    {
        WrapJob job = new(Mm(1206), Mm(600), s_build);
        Assert.Equal(["foam-thickness", "turn-under", "edge-gap", "joint"], Listed(job with { Panels = 2 }));
        Assert.Equal(["foam-thickness", "squeezed-foam", "turn-under", "edge-gap"], Listed(job with { Build = s_build with { Top = EdgeWrap.FoamRound } }));
        Assert.Equal(["foam-thickness", "squeezed-foam", "turn-under", "edge-gap"], Listed(job with { Build = s_build with { IsFoamBacked = true } }));
        Assert.Equal(["turn-under", "edge-gap"], Listed(job with { Build = s_build with { FoamThickness = Mm(0), Top = EdgeWrap.FoamRound } })); // half of nothing

        // At joints and windows only where there are any.
        WrapBuild round = s_build with { AtJoints = EdgeWrap.FoamRound }, windows = s_build with { AtWindows = EdgeWrap.FoamRound };
        Assert.DoesNotContain("squeezed-foam", Listed(job with { Build = round }));
        Assert.Contains("squeezed-foam", Listed(job with { Build = round, Panels = 2 }));
        Assert.DoesNotContain("squeezed-foam", Listed(job with { Build = windows }));
        Assert.Contains("squeezed-foam", Listed(job with { Build = windows, Windows = [Window(200, 500, 200, 400, 0)] }));

        // Nothing is turned under where nothing is wrapped.
        WrapBuild raw = s_build with { Front = EdgeWrap.Unwrapped, Rear = EdgeWrap.Unwrapped, Top = EdgeWrap.Unwrapped, Bottom = EdgeWrap.Unwrapped };
        Assert.Equal(["foam-thickness", "edge-gap"], Listed(job with { Build = raw }));
        Assert.Contains("turn-under", Listed(job with { Build = raw, Windows = [Window(200, 500, 200, 400, 0)] }));

        static string[] Listed(WrapJob job) => [.. PanelWrap.Plan(job).DefaultsUsed.Select(static used => used.Figure.Name)];
    }

    /// <summary>By hand: plies of 600 and 800, 1 of cloth at each edge: 602 and 802, 1.5 between and at the ends: 1408.5. 400 + 2 + 3 = 405. No share: (1408.5 - 4.5)/2 = 702 is neither's.</summary>
    [Fact]
    public void From_plies_the_workings_add_up_and_from_an_opening_the_share_is_the_width()
    {
        WrapPlan plan = PanelWrap.FromPly([Mm(600), Mm(800)], Mm(400), s_build);
        Workings back = plan.Explain();
        WorkingsCheck.Recompute(back);
        Assert.DoesNotContain(back.Steps, static step => step.Value.Value == 702);
        Assert.Equal(602, Assert.Single(back.Steps, static step => step.Value.Name == "w_1").Value.Value);
        Assert.False(back.Steps.Single(static step => step.Value.Name == "w_1").IsGiven);
        Assert.True(back.Steps.Single(static step => step.Value.Name == "P_1").IsGiven);
        Assert.Equal(1408.5, back.Steps.Single(static step => step.Value.Name == "W").Value.Value);
        Assert.False(back.Steps.Single(static step => step.Value.Name == "W").IsGiven);
        Assert.Equal(405, back.Steps.Single(static step => step.Value.Name == "H").Value.Value);

        Workings there = PanelWrap.Plan(new WrapJob(Mm(1408.5), Mm(405), s_build) { Panels = 2 }).Explain();
        WorkingsCheck.Recompute(there);
        WorkingStep share = there.Steps.Single(static step => step.Value.Name == "w_1"), ply = there.Steps.Single(static step => step.Value.Name == "P_1");
        Assert.Equal((false, 702, 700), (share.IsGiven, share.Value.Value, ply.Value.Value));
        Assert.Contains(share.Value, ply.Inputs);
        Assert.False(there.Steps.Single(static step => step.Value.Name == "w_2").IsGiven); // 405 - 3
    }

    [Fact]
    public void Raw_edges_are_named()
    {
        WrapPlan plan = PanelWrap.Plan(new WrapJob(Mm(1806), Mm(500), s_build with { Rear = EdgeWrap.Unwrapped, AtJoints = EdgeWrap.Unwrapped }) { Panels = 3 });
        Assert.Contains("not wrapped: rear, joint.", plan.Findings.Single(static finding => finding.Code == "panels-wrap-edges-raw").Message, StringComparison.Ordinal);
    }

    /// <summary>Finished widths, joints and gaps make the opening, to the nanometre, and the plies lead back to it.</summary>
    [Property]
    public void The_row_fills_the_opening_and_its_plies_lead_back_to_it(PositiveInt seed)
    {
        WrapJob job = Job(new Random(seed.Get));
        WrapPlan plan = PanelWrap.Plan(job);
        long Nm(Length length) => (long)Math.Round(length.Millimeters * 1e6);
        long gap = Nm(job.Build.EdgeGap!.Value), joint = Nm(job.Build.Joint!.Value);
        Assert.Equal(Nm(job.OpeningWidth), (2 * gap) + ((job.Panels - 1) * joint) + plan.Panels.Sum(panel => Nm(panel.FinishedWidth)));
        for (int i = 1; i < plan.Panels.Count; i++)
        {
            Assert.Equal(joint, Nm(plan.Panels[i].Start) - Nm(plan.Panels[i - 1].Start) - Nm(plan.Panels[i - 1].FinishedWidth));
            Assert.InRange(Math.Abs(Nm(plan.Panels[i].FinishedWidth) - Nm(plan.Panels[0].FinishedWidth)), 0, 1);
        }

        WrapPlan back = PanelWrap.FromPly([.. plan.Panels.Select(static panel => panel.PlyWidth)], plan.Panels[0].PlyHeight, job.Build);
        Assert.Equal(Nm(job.OpeningWidth), Nm(back.OpeningWidth));
        Assert.Equal(Nm(job.OpeningHeight), Nm(back.OpeningHeight));
        Assert.Equal(plan.Panels.Select(static panel => panel.ToString()), back.Panels.Select(static panel => panel.ToString()));
        WorkingsCheck.Recompute(plan.Explain());
    }

    /// <summary>Every size from a section drawn at the edge: the cloth's path is walked, piece by piece, and the finished edge is where it lies outermost.</summary>
    [Property]
    public void Sizes_agree_with_a_path_walked_round_the_edge(PositiveInt seed)
    {
        WrapJob job = Job(new Random(seed.Get)) with { Panels = 1 };
        WrapBuild build = job.Build;
        WrappedPanel panel = PanelWrap.Plan(job).Panels[0];
        double foam = build.FoamThickness!.Value.Millimeters, squeezed = build.SqueezedFoam!.Value.Millimeters;
        (double width, double cloth, double foamWidth) = (panel.PlyWidth.Millimeters, panel.PlyWidth.Millimeters, panel.PlyWidth.Millimeters);
        foreach (EdgeWrap edge in new[] { build.Front, build.Rear })
        {
            if (edge == EdgeWrap.Unwrapped)
            {
                continue;
            }

            double outside = edge == EdgeWrap.FoamRound || build.IsFoamBacked ? squeezed : 0;
            (double X, double Y)[] path = [(0, foam + build.PlyThickness.Millimeters), (outside, foam + build.PlyThickness.Millimeters), (outside, 0), (0, 0), (-build.TurnUnder!.Value.Millimeters, 0)];
            cloth += path.Zip(path[1..]).Sum(static leg => Math.Abs(leg.First.X - leg.Second.X) + Math.Abs(leg.First.Y - leg.Second.Y));
            width += path.Max(static point => point.X) + build.ClothThickness.Millimeters;
            foamWidth += edge == EdgeWrap.FoamRound ? build.PlyThickness.Millimeters : 0;
        }

        Assert.Equal(cloth, panel.ClothWidth.Millimeters, 1e-6);
        Assert.Equal(width, panel.FinishedWidth.Millimeters, 1e-6);
        Assert.Equal(build.IsFoamBacked || foam == 0 ? 0 : foamWidth, panel.FoamWidth.Millimeters, 1e-6);
    }

    [Property]
    public void The_cloth_covers_the_face_and_grows_with_foam_and_turn_under(PositiveInt seed)
    {
        Random random = new(seed.Get);
        WrapJob job = Job(random);
        WrapPlan plan = PanelWrap.Plan(job);
        Assert.True(plan.ClothArea.SquareMillimeters >= plan.FaceArea.SquareMillimeters - 1e-3);
        double more = 1 + random.Next(50);
        WrapPlan wider = PanelWrap.Plan(job with { Build = job.Build with { TurnUnder = Mm(job.Build.TurnUnder!.Value.Millimeters + more) } });
        WrapPlan thicker = PanelWrap.Plan(job with { Build = job.Build with { FoamThickness = Mm(Math.Min(50, job.Build.FoamThickness!.Value.Millimeters + more)) } });
        WrapPlan softer = PanelWrap.Plan(job with { Build = job.Build with { SqueezedFoam = Mm(job.Build.FoamThickness!.Value.Millimeters) } });
        for (int i = 0; i < plan.Panels.Count; i++)
        {
            Assert.True(wider.Panels[i].ClothWidth.Millimeters >= plan.Panels[i].ClothWidth.Millimeters);
            Assert.Equal(wider.Panels[i].PlyWidth.Millimeters, plan.Panels[i].PlyWidth.Millimeters);
            Assert.True(thicker.Panels[i].ClothWidth.Millimeters >= plan.Panels[i].ClothWidth.Millimeters);
            Assert.True(thicker.Panels[i].PlyWidth.Millimeters <= plan.Panels[i].PlyWidth.Millimeters);
            Assert.True(softer.Panels[i].ClothHeight.Millimeters >= plan.Panels[i].ClothHeight.Millimeters);
            Assert.True(softer.Panels[i].PlyHeight.Millimeters <= plan.Panels[i].PlyHeight.Millimeters);
        }
    }

    /// <summary>Front and rear changed over, and the windows with them: the same panels in reverse.</summary>
    [Property]
    public void A_mirrored_job_has_the_mirrored_plan(PositiveInt seed)
    {
        Random random = new(seed.Get);
        WrapJob job = Job(random);
        int k = job.Panels;
        double width = (2 * job.Build.EdgeGap!.Value.Millimeters) + ((k - 1) * job.Build.Joint!.Value.Millimeters) + (k * (320 + random.Next(400))); // whole: no nanometre to share
        double u = random.Next(10, 180), v = random.Next(10, 100);
        job = job with { OpeningWidth = Mm(width), OpeningHeight = Mm(400 + random.Next(100)), Windows = [Window(u, u + 120, v, v + 120, 20)] };
        WrapJob mirror = job with { Build = job.Build with { Front = job.Build.Rear, Rear = job.Build.Front }, Windows = [Window(width - u - 120, width - u, v, v + 120, 20)] };
        WrapPlan one = PanelWrap.Plan(job), other = PanelWrap.Plan(mirror);
        Assert.Equal(one.Findings.Select(static finding => finding.Code), other.Findings.Select(static finding => finding.Code));
        for (int i = 0; i < k; i++)
        {
            WrappedPanel left = one.Panels[i], right = other.Panels[k - 1 - i];
            Assert.Equal((left.PlyWidth.Millimeters, left.ClothWidth.Millimeters, left.FoamWidth.Millimeters), (right.PlyWidth.Millimeters, right.ClothWidth.Millimeters, right.FoamWidth.Millimeters));
            Assert.Equal(left.Windows.Count, right.Windows.Count);
            for (int w = 0; w < left.Windows.Count; w++)
            {
                Assert.Equal(left.PlyWidth.Millimeters, left.Windows[w].PlyFromFront.Millimeters + left.Windows[w].PlyWidth.Millimeters + right.Windows[w].PlyFromFront.Millimeters, 2e-6);
                Assert.Equal(left.ClothWidth.Millimeters, left.Windows[w].ClothFromFront.Millimeters + left.Windows[w].ClothWidth.Millimeters + right.Windows[w].ClothFromFront.Millimeters, 4e-6);
            }
        }
    }

    [Fact]
    public void Units_do_not_matter()
    {
        WrapPlan inches = PanelWrap.Plan(new WrapJob(Inch(40), Inch(20), new WrapBuild(Inch("1/4"), Inch("1/32"))));
        WrapPlan millimetres = PanelWrap.Plan(new WrapJob(Mm(1016), Mm(508), new WrapBuild(Mm(6.35), Mm(0.79375))));
        Assert.Equal(millimetres.Figures(), inches.Figures());
        Assert.Equal(new WrapJob(Inch(40), Inch(20), new WrapBuild(Inch("1/4"), Inch("1/32"))), new WrapJob(Mm(1016), Mm(508), new WrapBuild(Mm(6.35), Mm(0.79375))));
        Assert.NotEqual(s_windowed, s_windowed with { Windows = [Window(500, 900, 200, 400, 71)] });
        Assert.Equal(s_windowed, s_windowed with { Windows = [Window(500, 900, 200, 400, 70)] });
    }

    private static PanelWindow Window(double fromU, double toU, double fromV, double toV, double radius) => new(new FaceOpening(Mm(fromU), Mm(toU), Mm(fromV), Mm(toV))) { CornerRadius = Mm(radius) };

    private static WrapJob Job(Random random)
    {
        double foam = random.Next(4) == 0 ? 0 : Math.Round(random.Next(1, 600) / 64.0 * 2.54, 6);
        EdgeWrap Edge() => (EdgeWrap)random.Next(3);
        WrapBuild build = new(Mm(1 + (random.Next(20_000_000) / 1e6)), Mm(0.1 + (random.Next(9_900_000) / 1e6)))
        {
            FoamThickness = Mm(foam),
            SqueezedFoam = Mm(random.Next(3) == 0 ? 0 : Math.Round(foam / 2, 6)),
            TurnUnder = Mm(10 + (random.Next(60_000_000) / 1e6)),
            EdgeGap = Mm(random.Next(5_000_000) / 1e6),
            Joint = Mm(random.Next(5_000_000) / 1e6),
            Front = Edge(),
            Rear = Edge(),
            Top = Edge(),
            Bottom = Edge(),
            AtJoints = Edge(),
            IsFoamBacked = random.Next(3) == 0,
        };
        return new WrapJob(Mm(1500 + (random.Next(2_000_000_000) / 1e6)), Mm(300 + (random.Next(1_000_000_000) / 1e6)), build) { Panels = random.Next(1, 8) };
    }
}
