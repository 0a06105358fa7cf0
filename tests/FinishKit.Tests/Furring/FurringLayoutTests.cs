using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Furring;

/// <summary>Faces worked by hand, what must hold for every face, and input that is refused.</summary>
public sealed class FurringLayoutTests
{
    private static readonly Dictionary<string, (FurringFace Face, string[] Paths)> s_bad = new(StringComparer.Ordinal)
    {
        ["length under 100"] = (Wall() with { FaceLength = Mm(99.999999) }, ["face.FaceLength"]),
        ["girth over 100 m"] = (Wall() with { Girth = Mm(100000.000001) }, ["face.Girth"]),
        ["bay under 10"] = (Wall() with { LargestBay = Mm(9.999999) }, ["face.LargestBay"]),
        ["an opening past the face"] = (Wall() with { Openings = [new(Mm(1), Mm(3400.000001), Mm(1), Mm(2))] }, ["face.Openings[0].ToU"]),
        ["an opening turned round"] = (Wall() with { Openings = [new(Mm(2), Mm(2), Mm(1), Mm(2))] }, ["face.Openings[0].ToU"]),
        ["openings over each other"] = (Wall() with { Openings = [new(Mm(1), Mm(100), Mm(1), Mm(100)), new(Mm(99.999999), Mm(200), Mm(50), Mm(150))] }, ["face.Openings[1]"]),
        ["a break at the foot"] = (Wall() with { Breaks = [new(Mm(0), Angle.FromDegrees(9))] }, ["face.Breaks[0].V"]),
        ["two breaks at one height"] = (Wall() with { Breaks = [new(Mm(500), Angle.FromDegrees(9)), new(Mm(500), Angle.FromDegrees(8))] }, ["face.Breaks[1].V"]),
        ["a stop turned round"] = (Wall() with { Stops = [new(Mm(20), Mm(10), Mm(100))] }, ["face.Stops[0].ToU"]),
        ["a rib of no width"] = (Wall() with { Ribs = [new(Mm(20), Mm(0))] }, ["face.Ribs[0].Width"]),
        ["a rail null"] = (Wall() with { Rails = [null!] }, ["face.Rails[0]"]),
        ["a joint past the face"] = (Wall() with { ButtJoints = [Mm(3400.000001)] }, ["face.ButtJoints[0]"]),
        ["enums"] = (Wall() with { Joint = (JointStrip)2, BreakStrips = (BreakStrips)4, Preference = (StripPreference)2, Surface = (Surface)2 }, ["face.BreakStrips", "face.Joint", "face.Preference", "face.Surface"]),
        ["least distance under a strip"] = (Wall() with { LeastDistance = Mm(39.999999) }, ["face.LeastDistance"]),
    };

    public static TheoryData<string> BadFaces() => [.. s_bad.Keys];

    [Theory]
    [MemberData(nameof(BadFaces))]
    public void Bad_input_is_named_by_its_path(string name)
    {
        (FurringFace face, string[] paths) = s_bad[name];
        Assert.Equal(paths, FurringLayout.Check(face).Select(static problem => problem.Parameter));
        Assert.Equal(paths[0], Assert.ThrowsAny<ArgumentException>(() => FurringLayout.LayOut(face)).ParamName);
    }

    [Fact]
    public void Example()
    {
        #region example: FurringLayout.LayOut
        FurringFace wall = new(Mm(3400), Mm(994), Mm(475))
        {
            Openings = [new(Mm(500), Mm(1400), Mm(230), Mm(610))],
            Ribs = [new(Mm(480), Mm(50)), new(Mm(1420), Mm(50)), new(Mm(1960), Mm(50)), new(Mm(2700), Mm(50))],
            Rails = [new(Mm(20), Mm(40)), new(Mm(200), Mm(40)), new(Mm(642), Mm(40)), new(Mm(974), Mm(40))],
        };
        FurringPlan plan = FurringLayout.LayOut(wall);
        int strips = plan.UprightCount;                     // 9 strips up the girth
        double trimmers = plan.TrimmerLength.Millimeters;   // 1800: head and sill, 900 each
        #endregion

        // By hand. Fixed: ends 40/2 = 20 and 3400 - 20 = 3380; jambs 500 - 20 = 480 and 1400 + 20 = 1420. No bay may be over 475.
        // 20 to 480 is 460: none. 480 to 1420 is 940 = 2 x 470: one between, at 950 (no rib there).
        // 1420 to 3380 is 1960 and takes at least 5 bays (4 x 475 = 1900), so four strips. The ribs at 1960 and 2700 are free.
        //   By both ribs: 540 takes one between, 740 one, 680 one: three off ribs and two on them.
        //   By 1960 alone: 540 takes one, 1420 (2 x 475 = 950, 3 x 475 = 1425) two: three off and one on.
        //   By 2700 alone: 1280 takes two, 680 one: three off and one on.  By neither: four off.
        // Three off is the least; of those four strips in all beat five. By 1960 the bays are 270, 270 and three of 1420/3 = 473.33; by
        // 2700 three of 1280/3 = 426.67 and 340, 340, so that the largest of the whole wall is the 470 beside the window: less than
        // 473.33. So 1846.67, 2273.33, 2700 and 3040: nine strips in all.
        Assert.Equal([20, 480, 950, 1420, 1846.666667, 2273.333333, 2700, 3040, 3380], plan.Spacing.Strips.Select(static strip => Math.Round(strip.Position.Millimeters, 6)), static (one, other) => Math.Abs(one - other) < 2e-6);
        Assert.Equal((9, 1800.0), (strips, trimmers));
    }

    /// <summary>
    /// By hand, without the break: eight strips of 994; those at 950 and 2330 keep 230 - 40 = 190 under the windows and 994 - 650 = 344
    /// over them; four trimmers, twice 900 and twice 700. 8 x 994 + 2 x 534 = 9020; 3200.
    /// </summary>
    [Fact]
    public void The_demo_wall_without_its_break_is_as_by_hand()
    {
        FurringPlan plan = FurringLayout.LayOut(Wall() with { Breaks = [] });
        Assert.Equal([20, 480, 950, 1420, 1690, 1960, 2330, 2700, 3060, 3380], plan.Spacing.Strips.Select(static strip => strip.Position.Millimeters));
        Assert.Equal((10, 9020.0, 3200.0, 0.0, 12220.0), (plan.UprightCount, plan.UprightLength.Millimeters, plan.TrimmerLength.Millimeters, plan.BreakLength.Millimeters, plan.RunningLength.Millimeters));
    }

    /// <summary>
    /// By hand, with the break of 9.5° at 642 (that of 3.5° at 200 ends no course). Strips along it take 602 to 642 and 642 to 682. Eight
    /// strips of 602 + 312; two of 190 + 312: 8316. Head trimmers have 642 - 610 = 32. The lower strip is interrupted by both
    /// windows: 500 + 580 + 720 = 1800; the upper one is whole: 3400.
    /// </summary>
    [Fact]
    public void The_demo_wall_with_its_break_is_as_by_hand()
    {
        FurringPlan plan = FurringLayout.LayOut(Wall());
        Assert.Equal((8316.0, 3200.0, 5200.0), (plan.UprightLength.Millimeters, plan.TrimmerLength.Millimeters, plan.BreakLength.Millimeters));
        Assert.Equal([40, 32, 40, 32], plan.Pieces.Where(static piece => piece.Role == StripRole.Trimmer).Select(static piece => piece.Width.Millimeters));
        Assert.Equal([500, 580, 720, 3400], plan.Pieces.Where(static piece => piece.Role == StripRole.Break).Select(static piece => piece.Length.Millimeters));
        Assert.Equal(2, plan.Findings.Count(static finding => finding.Code == "furring-trimmer-narrowed"));
        Assert.Equal(28, plan.Pieces.Count); // 20 uprights, 4 trimmers, 4 along the break
    }

    /// <summary>By hand: no bay of 20, 520, 1000, 1480, 1920, 2400, 2860, 3280 is over 500; eight strips of 1500 and two trimmers of 400 with nothing behind.</summary>
    [Fact]
    public void A_ceiling_with_a_vent_is_as_by_hand()
    {
        FurringPlan plan = FurringLayout.LayOut(new FurringFace(Mm(3300), Mm(1500), Mm(500))
        {
            Surface = Surface.Ceiling,
            Openings = [new(Mm(1500), Mm(1900), Mm(550), Mm(950))],
            Ribs = [.. new[] { 40, 520, 1000, 1480, 1920, 2400, 2860, 3260 }.Select(static at => new ShellMember(Mm(at), Mm(60)))],
        });
        Assert.Equal((8, 12000.0, 800.0), (plan.UprightCount, plan.UprightLength.Millimeters, plan.TrimmerLength.Millimeters));
        Assert.Equal(2, plan.Findings.Count(static finding => finding.Code == "furring-nothing-behind"));
        Assert.False(plan.HasProblem);
        Assert.Equal([0, 1, 2, 3, 4, 5, 6, 7], plan.Pieces.Take(8).Select(static piece => piece.BearsAlong));
        Assert.Equal(7, plan.Pieces[0].Fixings.Count); // 1500 - 2 x 25 = 1450: six bays of at most 250
    }

    /// <summary>By hand: 20 and 500 start at the furniture line, 700 each; 980, 1620 and 1980 are whole; 1300 keeps 800 - 540 = 260. No sill at the foot.</summary>
    [Fact]
    public void A_door_down_to_the_foot_has_no_sill_and_strips_start_at_furniture()
    {
        FurringPlan plan = FurringLayout.LayOut(new FurringFace(Mm(2000), Mm(800), Mm(500)) { Openings = [new(Mm(1000), Mm(1600), Mm(0), Mm(500))], Stops = [new(Mm(0), Mm(900), Mm(100))] });
        Assert.Equal((4060.0, 600.0), (plan.UprightLength.Millimeters, plan.TrimmerLength.Millimeters));
        Assert.Equal(100, plan.Pieces[0].StartV.Millimeters);
        Assert.Contains(plan.Findings, static finding => finding.Code == "furring-strip-unsupported");
    }

    /// <summary>By hand: slope 0.1; length 1000 sqrt(1.01) + 40 x 0.1; cut at atan 0.1.</summary>
    [Fact]
    public void A_leaning_edge_has_a_leaning_strip_cut_to_its_angle()
    {
        FurringPlan plan = FurringLayout.LayOut(new FurringFace(Mm(1000), Mm(1000), Mm(2000)) { RearAtHead = Mm(900) });
        FurringPiece end = plan.Pieces[1];
        Assert.Equal(1008.987562, end.Length.Millimeters, 6);
        Assert.Equal(5.7105931375, end.EndAngle.Degrees, 8);
        Assert.Equal(1000 - (20 * Math.Sqrt(1.01)), end.StartU.Millimeters, 6);
    }

    /// <summary>200 x 400³/(48 E I) with I = 40 x 15³/12 = 11,250: 2.6337 for E 9000 and 2.6936 for E 8800; the limit is 400/150 = 2.6667.</summary>
    [Theory]
    [InlineData(9000, false)]
    [InlineData(8800, true)]
    public void A_strip_between_two_rails_is_a_beam(double elasticity, bool isTooFlexible)
    {
        FurringPlan plan = FurringLayout.LayOut(new FurringFace(Mm(300), Mm(500), Mm(300))
        {
            Rails = [new(Mm(50), Mm(40)), new(Mm(450), Mm(40))],
            StripSection = new BeamSection(Mm(40), Mm(15), Pressure.FromMegapascals(elasticity)) { Grade = SectionGrade.DesignValues, BendingStrength = Pressure.FromMegapascals(13) },
        });
        Finding[] flexible = [.. plan.Findings.Where(static finding => finding.Code == "furring-strip-too-flexible")];
        Assert.Equal(isTooFlexible ? 2 : 0, flexible.Length);
        Finding weak = plan.Findings.First(static finding => finding.Code == "furring-strip-too-weak"); // 200 x 400/4 / 1500 = 13.333 MPa
        Assert.Equal(13.3333, weak.Values.Single(static figure => figure.Name == "stress").Value, 3);
        if (isTooFlexible)
        {
            Assert.Equal(2.6936, flexible[0].Values.Single(static figure => figure.Name == "deflection").Value, 4);
            Assert.Equal(15.0503, flexible[0].Values.Single(static figure => figure.Name == "thickness-needed").Value, 3); // 15 x (2.6936/2.6667)^(1/3)
        }
    }

    [Fact]
    public void A_mirrored_face_has_the_mirrored_lengths_and_boards_up_the_girth_the_turned_ones()
    {
        FurringFace wall = Wall() with { Breaks = [], RearAtHead = null };
        FurringPlan plan = FurringLayout.LayOut(wall);
        FurringPlan mirrored = FurringLayout.LayOut(wall with
        {
            Openings = [.. wall.Openings.Select(static o => new FaceOpening(Mm(3400) - o.ToU, Mm(3400) - o.FromU, o.FromV, o.ToV))],
            Ribs = [.. wall.Ribs.Select(static rib => rib with { Centre = Mm(3400) - rib.Centre })],
        });
        FurringPlan turned = FurringLayout.LayOut(wall with
        {
            FaceLength = wall.Girth,
            Girth = wall.FaceLength,
            Boards = BoardDirection.UpTheGirth,
            Openings = [.. wall.Openings.Select(static o => new FaceOpening(o.FromV, o.ToV, o.FromU, o.ToU))],
            Ribs = wall.Rails,
            Rails = wall.Ribs,
        });
        Assert.Equal((plan.UprightLength, plan.TrimmerLength, plan.Pieces.Count), (mirrored.UprightLength, mirrored.TrimmerLength, mirrored.Pieces.Count));
        Assert.Equal(plan.Pieces.Select(static p => (p.StartU, p.StartV, p.EndU, p.EndV, p.Length)), turned.Pieces.Select(static p => (p.StartV, p.StartU, p.EndV, p.EndU, p.Length)));
        Assert.Equal(plan.Findings.Select(static finding => finding.Code), turned.Findings.Select(static finding => finding.Code));
        Assert.Equal(plan.Pieces.SelectMany(static p => p.Fixings).Select(static f => (f.U, f.V, f.Rib)), turned.Pieces.SelectMany(static p => p.Fixings).Select(static f => (f.V, f.U, f.Rail)));
    }

    [Fact]
    public void Inches_lay_out_as_millimetres_do() => Assert.Equal(
        FurringLayout.LayOut(new FurringFace(Mm(2540), Mm(1016), Mm(406.4)) { Openings = [new(Mm(508), Mm(1016), Mm(254), Mm(508))] }).Figures(),
        FurringLayout.LayOut(new FurringFace(Inch(100), Inch(40), Inch(16)) { Openings = [new(Inch(20), Inch(40), Inch(10), Inch(20))] }).Figures());

    [Fact]
    public void Workings_add_up() => WorkingsCheck.Recompute(FurringLayout.LayOut(Wall()).Explain());

    private static FurringFace Wall() => new(Mm(3400), Mm(994), Mm(475))
    {
        Openings = [new(Mm(500), Mm(1400), Mm(230), Mm(610)), new(Mm(1980), Mm(2680), Mm(230), Mm(610))],
        Breaks = [new(Mm(200), Angle.FromDegrees(3.5)), new(Mm(642), Angle.FromDegrees(9.5))],
        Ribs = [.. new[] { (30, 60), (480, 50), (950, 40), (1420, 50), (1960, 50), (2330, 40), (2700, 50), (3060, 40), (3370, 60) }.Select(static rib => new ShellMember(Mm(rib.Item1), Mm(rib.Item2)))],
        Rails = [.. new[] { 20, 200, 642, 974 }.Select(static at => new ShellMember(Mm(at), Mm(40)))],
    };

    [Fact]
    public void A_long_span_between_short_ones_is_weakest_over_a_support()
    {
        // Rails at 80, 100, 600 and 620: spans of 20, 500 and 20. The short ones hold the long one nearly as a clamp would, where a load at a
        // third gives 4/27 = 0.148 P L over the support and 0.125 P L at most under a load in the middle (derived).
        BeamSection weak = new(Mm(40), Mm(15), Pressure.FromMegapascals(10_000)) { BendingStrength = Pressure.FromMegapascals(1), Grade = SectionGrade.DesignValues };
        FurringFace face = new(Mm(300), Mm(700), Mm(1000)) { StripSection = weak, Rails = [new(Mm(80), Mm(18)), new(Mm(100), Mm(18)), new(Mm(600), Mm(18)), new(Mm(620), Mm(18))] };
        BeamExtremes beam = ContinuousBeam.UnderPointLoad(new Beam(weak, [Mm(20), Mm(500), Mm(20)]), Force.FromNewtons(200));
        Assert.Contains(beam.StressPlace.Millimeters, new[] { 20, 520.0 });
        Finding broken = FurringLayout.LayOut(face).Findings.First(static finding => finding.Code == "furring-strip-too-weak");
        Assert.Equal(beam.Stress.Megapascals, broken.Values.Single(static value => value.Name == "stress").Value, 1e-6 * beam.Stress.Megapascals);
    }
}
