using System;
using System.Linq;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Boards;

/// <summary>Courses worked by hand.</summary>
public sealed class CourseLayoutTests
{
    private static readonly BoardCover s_board = BoardCover.SquareEdged(Mm(89), Mm(0));
    private static readonly FaceOpening[] s_windows = [new(Mm(500), Mm(1400), Mm(230), Mm(610)), new(Mm(1980), Mm(2680), Mm(230), Mm(610))];
    private static readonly FaceBreak[] s_breaks = [new(Mm(200), Angle.FromDegrees(3.5)), new(Mm(642), Angle.FromDegrees(9.5))];

    [Fact]
    public void LayOut()
    {
        #region example: CourseLayout.LayOut
        BoardCover board = BoardCover.SquareEdged(Mm(89), Mm(0));
        FaceOpening window = new(Mm(500), Mm(1400), Mm(230), Mm(610));
        CoursePlan plan = CourseLayout.LayOut(new CourseFace(Mm(3400), Mm(994), board) { Openings = [window] });
        double offset = plan.Bands[0].Offset.Millimeters;   // 55: the first joint lies 55 mm above the foot
        double narrowest = plan.NarrowestPiece!.Value.Millimeters; // 49, at the head
        double held = plan.Guaranteed.Millimeters;          // 46, though the set-out be 3 mm off
        #endregion

        // By hand, everything modulo 89: foot 0, sill 230 = 52, window head 610 = 76, head 994 = 15. A joint from 52 up to 76 is at least 52
        // above the foot's joint; within 3 mm of 52 it would leave a sliver under the sill, so 55; then the head keeps 15 + 89 - 55 = 49, less 3 is 46.
        Assert.Equal(55, offset);
        Assert.Equal(49, narrowest);
        Assert.Equal(46, held);
        Assert.Equal(12, plan.Courses.Count); // 55, ten of 89, 49
        Assert.Equal(10, plan.WholeCount);
        Assert.Equal([55, 89, 89, 89, 89, 89, 89, 89, 89, 89, 89, 49], plan.Courses.Select(static course => course.RipWidth.Millimeters));
        Assert.Equal([0, 55, 144, 233, 322, 411, 500, 589, 678, 767, 856, 945, 994], plan.Lines.Select(static line => line.Millimeters));
    }

    /// <summary>The demo wall, breaks ignored: 994 = 11 x 89 + 15, and ten whole boards leave 104, two of 52.</summary>
    [Fact]
    public void A_plain_start_leaves_15_and_balanced_ends_52()
    {
        CourseFace wall = new(Mm(3400), Mm(994), s_board) { Rule = CourseRule.WholeAtFoot };
        CoursePlan plain = CourseLayout.LayOut(wall);
        Assert.Equal(15, plain.NarrowestPiece!.Value.Millimeters);
        Assert.Equal(15, plain.Courses[^1].RipWidth.Millimeters);
        Assert.True(plain.Courses[0].IsWhole);
        Assert.True(plain.Courses[^1] is { IsCutAbove: true, IsCutBelow: false });
        Assert.Equal(0, plain.Guaranteed.Millimeters); // the foot's joint just above the foot leaves a sliver there

        CoursePlan head = CourseLayout.LayOut(wall with { Rule = CourseRule.WholeAtHead });
        Assert.Equal(15, head.Bands[0].Offset.Millimeters);
        Assert.True(head.Courses[0] is { IsCutBelow: true, IsCutAbove: false } && head.Courses[0].RipWidth.Millimeters == 15);
        Assert.True(head.Courses[^1].IsWhole);

        CoursePlan balanced = CourseLayout.LayOut(wall with { Rule = CourseRule.Balanced });
        Assert.Equal(52, balanced.NarrowestPiece!.Value.Millimeters);
        Assert.Equal([52, 52], new[] { balanced.Courses[0], balanced.Courses[^1] }.Select(static course => course.RipWidth.Millimeters));
        Assert.Equal(49, balanced.Guaranteed.Millimeters);

        CoursePlan best = CourseLayout.LayOut(wall with { Rule = CourseRule.BestOffset });
        Assert.Equal(52, best.Bands[0].Offset.Millimeters);
        Assert.Equal(49, best.Guaranteed.Millimeters);
    }

    /// <summary>
    /// The demo wall with its breaks: 3.5 degrees at 200 is run over, 9.5 at 642 ends a course. Between window head and break 32 mm are left,
    /// whatever the offset; the others are at their best with 55 at the foot: above the sill's joint (52 modulo 89), and the break (19) keeps 53, less 3 is 50.
    /// </summary>
    [Fact]
    public void Between_window_head_and_break_32_are_left_whatever_the_offset()
    {
        CoursePlan plan = CourseLayout.LayOut(new CourseFace(Mm(3400), Mm(994), s_board) { Openings = s_windows, Breaks = s_breaks });
        Assert.Equal([642, 994], plan.Bands.Select(static band => band.ToV.Millimeters));
        Assert.Equal(55, plan.Bands[0].Offset.Millimeters);
        Assert.Equal(32, plan.Bands[0].Guaranteed.Millimeters);
        Assert.Equal(32, plan.NarrowestPiece!.Value.Millimeters);
        Finding narrow = Assert.Single(plan.Findings, static finding => finding.Code == "boards-course-narrow-between-edges");
        Assert.Equal(32, narrow.Values.Single(static value => value.Name == "width").Value);
        Assert.Equal(610, narrow.Values.Single(static value => value.Name == "height").Value);
        Assert.Equal(2, narrow.Values.Single(static value => value.Name == "pieces").Value); // over each window
        Assert.DoesNotContain(plan.Findings, static finding => finding.Code == "boards-course-narrow");

        // The upper band: 352 = 3 x 89 + 85. Equal ends of 87 would be a knife edge: 2 mm off there is a sliver, and 85 to 89 is too little for 3 mm either
        // way. So half of 85 at either end, 42.5, less 3 is 39.5.
        Assert.Equal(42.5, plan.Bands[1].Offset.Millimeters);
        Assert.Equal(39.5, plan.Bands[1].Guaranteed.Millimeters);
        Assert.Contains(plan.Findings, static finding => finding.Code == "boards-course-narrow-if-off");

        // Bevels at the break, half of 9.5 degrees, and nowhere else.
        Assert.Equal([4.75], plan.Courses.Select(static course => course.BevelAbove.Degrees).Where(static bevel => bevel != 0));
        Assert.Equal([4.75], plan.Courses.Select(static course => course.BevelBelow.Degrees).Where(static bevel => bevel != 0));
        BoardCourse below = plan.Courses.Last(static course => course.Band == 0), above = plan.Courses.First(static course => course.Band == 1);
        Assert.Equal((642, 4.75), (below.UpperLine.Millimeters, below.BevelAbove.Degrees));
        Assert.Equal((642, 4.75), (above.LowerLine.Millimeters, above.BevelBelow.Degrees));
        Assert.Contains(642, plan.Lines.Select(static line => line.Millimeters));

        // 144 to 233 lies over the break at 200: 44.5 · tan 1.75° = 1.3596.
        Finding off = Assert.Single(plan.Findings, static finding => finding.Code == "boards-break-stands-off");
        Assert.Equal(1.3596, off.Values.Single(static value => value.Name == "stand-off").Value, 1e-4);
        Assert.Equal([false, true], plan.Breaks.Select(static line => line.EndsCourse));
    }

    /// <summary>Half of 9.5° is 4.75°, and tan 4.75° = 0.0830936 (by another program): 1.055 mm for a board 12.7 thick.</summary>
    [Fact]
    public void In_a_hollow_boards_are_ripped_wider_than_their_faces_and_on_a_ridge_not()
    {
        CourseFace wall = new(Mm(3400), Mm(994), s_board) { Breaks = s_breaks };
        Finding wider = Assert.Single(CourseLayout.LayOut(wall).Findings, static finding => finding.Code == "boards-bevel-rip-wider");
        Assert.Equal(Severity.Note, wider.Severity);
        Assert.Equal([642, 4.75], wider.Values.Take(2).Select(static value => value.Value));
        Assert.Equal(0.0830936, wider.Values[2].Value, 5e-8);

        CoursePlan ridge = CourseLayout.LayOut(wall with { Breaks = [s_breaks[0], new(Mm(642), Angle.FromDegrees(-9.5))] });
        Assert.DoesNotContain(ridge.Findings, static finding => finding.Code == "boards-bevel-rip-wider");
        Assert.Equal(-4.75, ridge.Courses.Last(static course => course.Band == 0).BevelAbove.Degrees);
        Assert.Equal(-4.75, ridge.Courses.First(static course => course.Band == 1).BevelBelow.Degrees);
        Assert.DoesNotContain(CourseLayout.LayOut(wall with { RunThroughBreaks = true }).Findings, static finding => finding.Code == "boards-bevel-rip-wider");
    }

    /// <summary>Breaks at 1 and 2.5 with a gap of 2: bands of 1 and 1.5 take no board, and nothing is promised of them.</summary>
    /// <summary>Under each of two windows apart 1 mm: two strips. Under two that stand side by side: one.</summary>
    [Fact]
    public void Bare_strips_count_by_their_place_along_the_van_too()
    {
        CourseFace wall = new(Mm(3400), Mm(994), BoardCover.SquareEdged(Mm(89), Mm(2))) { Openings = [new(Mm(500), Mm(1400), Mm(1), Mm(610)), new(Mm(1980), Mm(2680), Mm(1), Mm(610))] };
        Assert.Equal(2, Strips(wall));
        Assert.Equal(1, Strips(wall with { Openings = [new(Mm(500), Mm(900), Mm(1), Mm(610)), new(Mm(900), Mm(1400), Mm(1), Mm(610))] }));

        static double Strips(CourseFace face) => Assert.Single(CourseLayout.LayOut(face).Findings, static finding => finding.Code == "boards-course-bare-strip").Values.Single(static value => value.Name == "strips").Value;
    }

    [Fact]
    public void A_band_no_higher_than_a_gap_takes_no_board_and_is_said()
    {
        CourseFace wall = new(Mm(3400), Mm(993.5), BoardCover.SquareEdged(Mm(89), Mm(2))) { Breaks = [new(Mm(1), Angle.FromDegrees(5)), new(Mm(2.5), Angle.FromDegrees(5))], Rule = CourseRule.Balanced };
        CoursePlan plan = CourseLayout.LayOut(wall);
        Assert.Equal([0, 0], plan.Bands.Take(2).Select(static band => band.Guaranteed.Millimeters));
        Assert.Equal([0, 0], plan.Bands.Take(2).Select(static band => band.BestGuaranteed.Millimeters));
        Assert.Contains("no piece", plan.Bands[0].ToString(), StringComparison.Ordinal);

        // The plan speaks of the band that has boards: 991 with 2 of gap more is 993, 83 over ten covers; (83 + 91)/2 = 87 at the foot, a gap less is 85, less 3 of error 82; the same at the head.
        Assert.Equal(plan.Bands[2].Guaranteed.Millimeters, plan.Guaranteed.Millimeters);
        Assert.Equal(82, plan.Guaranteed.Millimeters);
        Finding bare = Assert.Single(plan.Findings, static finding => finding.Code == "boards-course-bare-strip");
        Assert.Equal(Severity.Note, bare.Severity);
        Assert.Equal([("strips", 2.0), ("width", 1.0), ("height", 0.0), ("from-front", 0.0), ("gap", 2.0)], bare.Values.Select(static value => (value.Name, value.Value)));

        // At 2.000001 there is room for a hair of a board.
        Assert.DoesNotContain(CourseLayout.LayOut(wall with { Breaks = [new(Mm(2.000001), Angle.FromDegrees(5))] }).Findings, static finding => finding.Code == "boards-course-bare-strip");
        Assert.Contains(CourseLayout.LayOut(wall with { Breaks = [new(Mm(2), Angle.FromDegrees(5))] }).Findings, static finding => finding.Code == "boards-course-bare-strip");
        Assert.DoesNotContain(CourseLayout.LayOut(wall with { Breaks = [] }).Findings, static finding => finding.Code == "boards-course-bare-strip");
    }

    /// <summary>The break at 642 bounds the strip over the window; without it the face has none to run through.</summary>
    [Fact]
    public void Only_where_a_break_bounds_a_strip_is_running_through_it_a_remedy()
    {
        CoursePlan wall = CourseLayout.LayOut(new CourseFace(Mm(3400), Mm(994), s_board) { Openings = s_windows, Breaks = s_breaks });
        CoursePlan low = CourseLayout.LayOut(new CourseFace(Mm(3400), Mm(60), s_board) { LeastCourse = Mm(61) });
        Assert.Contains("let the courses run through the break", Narrow(wall).Message, StringComparison.Ordinal);
        Assert.DoesNotContain("break", Narrow(low).Message, StringComparison.Ordinal);

        static Finding Narrow(CoursePlan plan) => Assert.Single(plan.Findings, static finding => finding.Code == "boards-course-narrow-between-edges");
    }

    [Fact]
    public void Each_band_has_its_own_rule_and_courses_run_through_where_asked()
    {
        CourseFace wall = new(Mm(3400), Mm(994), s_board) { Breaks = s_breaks, BandRules = [CourseRule.WholeAtFoot, CourseRule.WholeAtHead] };
        CoursePlan plan = CourseLayout.LayOut(wall);
        Assert.Equal([0, 85], plan.Bands.Select(static band => band.Offset.Millimeters)); // 352 = 3 x 89 + 85
        Assert.Equal([CourseRule.WholeAtFoot, CourseRule.WholeAtHead], plan.Bands.Select(static band => band.Rule));
        Assert.Equal(19, plan.Courses.Last(static course => course.Band == 0).RipWidth.Millimeters); // 642 = 7 x 89 + 19

        CoursePlan through = CourseLayout.LayOut(wall with { RunThroughBreaks = true, BandRules = [], Rule = CourseRule.WholeAtFoot });
        Assert.Single(through.Bands);
        Assert.All(through.Courses, static course => Assert.Equal((0, 0), (course.BevelAbove.Degrees, course.BevelBelow.Degrees)));
        Finding[] off = [.. through.Findings.Where(static finding => finding.Code == "boards-break-stands-off")];
        Assert.Equal([200, 642], off.Select(static finding => finding.Values.Single(static value => value.Name == "height").Value));
        Assert.Equal(3.6977, off[1].Values.Single(static value => value.Name == "stand-off").Value, 1e-4); // 44.5 · tan 4.75°, tan = 0.0830936

        // On a joint nothing stands off.
        Assert.DoesNotContain(CourseLayout.LayOut(wall with { BandRules = [], Rule = CourseRule.WholeAtFoot, Breaks = [new(Mm(178), Angle.FromDegrees(3.5))] }).Findings, static finding => finding.Code == "boards-break-stands-off");

        // Nor where only an opening lies over the break.
        CourseFace blind = wall with { BandRules = [], Rule = CourseRule.WholeAtFoot, Breaks = [s_breaks[0]], Openings = [new(Mm(0), Mm(3400), Mm(190), Mm(210))] };
        Assert.DoesNotContain(CourseLayout.LayOut(blind).Findings, static finding => finding.Code == "boards-break-stands-off");
    }

    [Fact]
    public void A_knife_edge_is_only_taken_where_there_is_no_error()
    {
        // Modulo 89: joint on the sill (52) leaves 52 at the foot and 52 at the head, exactly; 3 mm off it leaves nothing under the sill.
        CourseFace wall = new(Mm(3400), Mm(994), s_board) { Openings = [s_windows[0]], SetOutError = Mm(0) };
        CoursePlan plan = CourseLayout.LayOut(wall);
        Assert.Equal(52, plan.Bands[0].Offset.Millimeters);
        Assert.Equal(52, plan.Guaranteed.Millimeters);
        Assert.Equal(52, plan.NarrowestPiece!.Value.Millimeters);
    }

    [Fact]
    public void An_opening_at_foot_or_head_leaves_one_sided_edges()
    {
        // Furniture to 300 over the rear half, a vent from 800 to the head in front: free are 0..800 in front, 300..994 behind.
        CourseFace wall = new(Mm(2000), Mm(994), s_board) { Openings = [new(Mm(0), Mm(1000), Mm(800), Mm(994)), new(Mm(1000), Mm(2000), Mm(0), Mm(300))] };
        CoursePlan plan = CourseLayout.LayOut(wall);

        // Modulo 89: up from 0 and from 300 = 33, down from 800 = 88 and from 994 = 15. A joint o between 15 and 33 keeps o over the foot, 56 + o over the
        // furniture, 88 - o under the vent, 104 - o at the head: at most 30, three before 33, less 3 is 27. Between 33 and 88 it keeps o - 33 and 88 - o: 27.5, less
        // 3 is 24.5. Below 15: o and 15 - o. So 30.
        Assert.Equal(30, plan.Bands[0].Offset.Millimeters);
        Assert.Equal(27, plan.Guaranteed.Millimeters);
        Assert.Equal(30, plan.NarrowestPiece!.Value.Millimeters);
        Finding narrow = Assert.Single(plan.Findings, static finding => finding.Code == "boards-course-narrow");
        Assert.Contains("no offset does better", narrow.Message, StringComparison.Ordinal);
        Assert.Equal(27, narrow.Values.Single(static value => value.Name == "best-guaranteed").Value);
    }

    [Fact]
    public void A_joint_with_a_gap_takes_it_from_between_boards_only()
    {
        // Face 89, gap 2, cover 91. Eleven boards and ten gaps fill 999 exactly.
        BoardCover board = BoardCover.SquareEdged(Mm(89), Mm(2));
        CoursePlan whole = CourseLayout.LayOut(new CourseFace(Mm(3400), Mm(999), board) { Rule = CourseRule.WholeAtFoot });
        Assert.Equal(11, whole.Courses.Count);
        Assert.All(whole.Courses, static course => Assert.True(course.IsWhole && course.RipWidth.Millimeters == 89));
        Assert.Equal(999, whole.Courses[^1].UpperLine.Millimeters);
        Assert.Equal(91, whole.Lines[1].Millimeters);
        Assert.Equal(0, CourseLayout.LayOut(whole.Face with { Rule = CourseRule.Balanced }).Bands[0].Offset.Millimeters);

        // 1018 leaves 19 more: a gap and a piece of 17 at the head. Balanced: ten whole boards and eleven gaps are 912, so 106 are left: 53 at either end.
        CourseFace more = new(Mm(3400), Mm(1018), board) { Rule = CourseRule.WholeAtFoot };
        Assert.Equal(17, CourseLayout.LayOut(more).Courses[^1].RipWidth.Millimeters);
        CoursePlan balanced = CourseLayout.LayOut(more with { Rule = CourseRule.Balanced });
        Assert.Equal([53, 53], new[] { balanced.Courses[0], balanced.Courses[^1] }.Select(static course => course.RipWidth.Millimeters));
        Assert.Equal(0, CourseLayout.LayOut(more with { Rule = CourseRule.WholeAtHead }).Courses[^1].RipWidth.Millimeters - 89);
    }

    /// <summary>Girths 994, 980, 970: the head comes down by 24 over the length, and the last course is tapered.</summary>
    [Fact]
    public void A_tapering_face_tapers_its_last_course()
    {
        CourseFace wall = new(Mm(3400), Mm(980), s_board) { GirthAtFront = Mm(994), GirthAtRear = Mm(970) };
        CoursePlan plan = CourseLayout.LayOut(wall);
        BoardCourse last = plan.Courses[^1];

        // The head stands at every height from 970 to 994, modulo 89 from 80 to 15: no joint may come to lie there. A joint o from 18 up to 77 keeps
        // o over the foot and 80 - o under the head where it is lowest: 40 either way, less 3 is 37.
        Assert.Equal(40, plan.Bands[0].Offset.Millimeters);
        Assert.Equal(37, plan.Guaranteed.Millimeters);
        Assert.True(last is { IsTapered: true, IsWhole: false, IsCutAbove: true });

        // Its lower line is 40 + 10 x 89 = 930.
        Assert.Equal((64, 50, 40), (last.WidthAtFront.Millimeters, last.WidthHalfWay.Millimeters, last.WidthAtRear.Millimeters));
        Assert.Equal(64, last.RipWidth.Millimeters);
        Assert.Equal(994, plan.Lines[^1].Millimeters);
        Assert.Equal(2, last.Pieces.Count); // the head turns half way along
        Assert.Equal((1700, 64, 50), (last.Pieces[0].ToU.Millimeters, last.Pieces[0].GreatestWidth.Millimeters, last.Pieces[0].LeastWidth.Millimeters));
        Assert.Contains(plan.Findings, static finding => finding.Code == "boards-course-narrow-if-off" && finding.Values.Single(static value => value.Name == "width").Value == 37);
        Assert.DoesNotContain(plan.Findings, static finding => finding.Code is "boards-course-narrow" or "boards-course-runs-out");
    }

    /// <summary>Where the head falls by more than a cover a course runs out whatever the offset: the ends of the head alone are looked at then.</summary>
    [Fact]
    public void A_head_that_falls_by_more_than_a_cover_has_a_course_that_runs_out()
    {
        CourseFace wall = new(Mm(2000), Mm(500), s_board) { GirthAtFront = Mm(560), GirthAtRear = Mm(440) };
        CoursePlan plan = CourseLayout.LayOut(wall);
        Assert.Equal(0, plan.Guaranteed.Millimeters);

        // Modulo 89: 560 = 26, 500 = 55, 440 = 84. A joint o from 29 to 55 keeps o over the foot and 55 - o half way: 29 (three past 26) keeps 26, less 3 is 23.
        // From 58 to 84 it keeps 84 - o, the same 23 at most; below 26 it keeps 13 - 3; past 84 there is no room for 3 either way. Of equals the smaller.
        Assert.Equal(29, plan.Bands[0].Offset.Millimeters);
        Finding off = Assert.Single(plan.Findings, static finding => finding.Code == "boards-course-runs-out");
        Assert.Equal(Severity.Caution, off.Severity);

        // The joint at 29 + 5 x 89 = 474 meets the head 26/60 down the rear half.
        CoursePiece runsOut = Assert.Single(plan.Courses.SelectMany(static course => course.Pieces), static piece => piece.LeastWidth.Millimeters == 0);
        Assert.Equal((1000, 1433.333333, 474, 26), (runsOut.FromU.Millimeters, runsOut.ToU.Millimeters, runsOut.FromV.Millimeters, runsOut.GreatestWidth.Millimeters));
        Assert.Equal((86, 26, 0), (plan.Courses[^1].WidthAtFront.Millimeters, plan.Courses[^1].WidthHalfWay.Millimeters, plan.Courses[^1].WidthAtRear.Millimeters));
    }

    [Fact]
    public void Windows_whose_heights_overlap_pair_up()
    {
        // One above the other in the rear, with 60 between; beside the lower one a higher one in front. No pair but the rear's makes a narrow strip.
        CourseFace wall = new(Mm(3000), Mm(900), s_board)
        {
            Openings = [new(Mm(1500), Mm(2000), Mm(100), Mm(400)), new(Mm(1400), Mm(1900), Mm(430), Mm(700)), new(Mm(200), Mm(800), Mm(405), Mm(700))],
        };
        CoursePlan plan = CourseLayout.LayOut(wall);
        Finding narrow = Assert.Single(plan.Findings, static finding => finding.Code == "boards-course-narrow-between-edges");
        Assert.Equal((30, 400, 1500, 1900), (Value("width"), Value("height"), Value("from-front"), Value("to-front")));
        Assert.Equal(1, Value("pieces"));

        double Value(string name) => narrow.Values.Single(value => value.Name == name).Value;
    }

    [Fact]
    public void Slivers_name_the_best_that_can_be_had()
    {
        CourseFace wall = new(Mm(3400), Mm(994), s_board) { Rule = CourseRule.WholeAtFoot };
        Finding narrow = Assert.Single(CourseLayout.LayOut(wall).Findings, static finding => finding.Code == "boards-course-narrow");
        Assert.Equal((15, 905 + 74, 40, 52, 49), (Value("width"), Value("height"), Value("least-course"), Value("best-offset"), Value("best-guaranteed")));

        // A limit exactly met is met; a third of the cover is the default where it is more than 40.
        Assert.DoesNotContain(CourseLayout.LayOut(wall with { LeastCourse = Mm(15) }).Findings, static finding => finding.Code == "boards-course-narrow");
        Assert.Contains(CourseLayout.LayOut(wall with { LeastCourse = Mm(15.000001) }).Findings, static finding => finding.Code == "boards-course-narrow");
        Assert.Equal(40, CourseLayout.LayOut(wall).LeastCourse.Millimeters);
        Assert.Equal(45, CourseLayout.LayOut(wall with { Board = BoardCover.SquareEdged(Mm(135), Mm(0)) }).LeastCourse.Millimeters);

        double Value(string name) => narrow.Values.Single(value => value.Name == name).Value;
    }

    /// <summary>The head keeps 15, less 3 is 12. The foot's own board, set to it on purpose, is no reason for the note.</summary>
    [Fact]
    public void An_error_is_a_note_where_it_makes_a_piece_too_narrow()
    {
        CourseFace wall = new(Mm(3400), Mm(994), s_board) { LeastCourse = Mm(12) };
        foreach (CourseRule rule in new[] { CourseRule.WholeAtFoot, CourseRule.WholeAtHead })
        {
            Assert.DoesNotContain(CourseLayout.LayOut(wall with { Rule = rule }).Findings, static finding => finding.Code == "boards-course-narrow-if-off");
            Finding off = Assert.Single(CourseLayout.LayOut(wall with { Rule = rule, LeastCourse = Mm(12.000001) }).Findings, static finding => finding.Code == "boards-course-narrow-if-off");
            Assert.Equal(Severity.Note, off.Severity);
            Assert.Equal(12, off.Values.Single(static value => value.Name == "width").Value);
        }

        // Boards that fill the height alone are set to both ends; but a sill on a joint is there by chance.
        CourseFace full = new(Mm(3400), Mm(890), s_board) { Rule = CourseRule.Balanced };
        Assert.DoesNotContain(CourseLayout.LayOut(full).Findings, static finding => finding.Code == "boards-course-narrow-if-off");
        Finding sill = Assert.Single(CourseLayout.LayOut(full with { Openings = [new(Mm(500), Mm(1400), Mm(178), Mm(445))] }).Findings, static finding => finding.Code == "boards-course-narrow-if-off");
        Assert.Equal(0, sill.Values.Single(static value => value.Name == "width").Value);
    }

    [Fact]
    public void Defaults_are_named_with_their_basis()
    {
        CourseFace wall = new(Mm(3400), Mm(994), s_board) { Breaks = s_breaks };
        Assert.Equal(["set-out-error 3 mm", "least-course 40 mm", "break-limit 4 deg"], CourseLayout.LayOut(wall).DefaultsUsed.Select(static used => used.Figure.ToString()));
        Assert.Equal([SourceKind.Judgement, SourceKind.CommonPractice, SourceKind.Judgement], CourseLayout.LayOut(wall).DefaultsUsed.Select(static used => used.Source.Kind));
        Assert.Empty(CourseLayout.LayOut(wall with { SetOutError = Mm(2), LeastCourse = Mm(50), BreakLimit = Angle.FromDegrees(5) }).DefaultsUsed);
    }

    [Fact]
    public void A_face_lower_than_a_board_takes_one_piece()
    {
        CourseFace low = new(Mm(3400), Mm(60), s_board);
        foreach (CourseRule rule in Enum.GetValues<CourseRule>())
        {
            CoursePlan plan = CourseLayout.LayOut(low with { Rule = rule, LeastCourse = Mm(61) });
            Assert.Equal(60, Assert.Single(plan.Courses).RipWidth.Millimeters);
            Assert.Contains(plan.Findings, static finding => finding.Code == "boards-course-narrow-between-edges");
        }
    }

    [Fact]
    public void An_opening_over_the_whole_face_leaves_no_piece()
    {
        CoursePlan plan = CourseLayout.LayOut(new CourseFace(Mm(1000), Mm(500), s_board) { Openings = [new(Mm(0), Mm(1000), Mm(0), Mm(500))] });
        Assert.Null(plan.NarrowestPiece);
        Assert.All(plan.Courses, static course => Assert.Empty(course.Pieces));
        Assert.Equal("6 courses, 0 whole, no piece", plan.ToString()); // 500 = 5 x 89 + 55
        Assert.Equal((0, 0), (plan.WholeCount, plan.Guaranteed.Millimeters));
        Assert.DoesNotContain(plan.Figures(), static figure => figure.Name is "narrowest-piece" or "guaranteed");
    }

    [Fact]
    public void Impossible_faces_are_refused_with_all_problems()
    {
        CourseFace wall = new(Mm(3400), Mm(994), s_board);
        Refused(wall with { Openings = [new(Mm(500), Mm(3401), Mm(230), Mm(610))] }, "face.Openings[0].ToU");
        Refused(wall with { Openings = [new(Mm(500), Mm(1400), Mm(230), Mm(994.000001))] }, "face.Openings[0].ToV");
        Refused(wall with { Openings = [new(Mm(500), Mm(500), Mm(230), Mm(610))] }, "face.Openings[0].ToU");
        Refused(wall with { Openings = [new(Mm(500), Mm(1400), Mm(610), Mm(610))] }, "face.Openings[0].ToV");
        Refused(wall with { Openings = [s_windows[0], new(Mm(1399), Mm(1500), Mm(609), Mm(700))] }, "face.Openings[1]");
        Taken(wall with { Openings = [s_windows[0], new(Mm(1400), Mm(1500), Mm(600), Mm(700)), new(Mm(500), Mm(1400), Mm(610), Mm(994))] });
        Refused(wall with { GirthAtRear = Mm(900), Openings = [new(Mm(1700), Mm(2550), Mm(230), Mm(947.000001))] }, "face.Openings[0].ToV"); // 994 - 94/2 at three quarters
        Taken(wall with { GirthAtRear = Mm(900), Openings = [new(Mm(1700), Mm(2550), Mm(230), Mm(947))] });
        Refused(wall with { GirthAtFront = Mm(1100), GirthAtRear = Mm(1100), Openings = [new(Mm(1000), Mm(2400), Mm(230), Mm(1000))] }, "face.Openings[0].ToV"); // lowest half way
        Refused(wall with { Breaks = [s_breaks[1], s_breaks[0]] }, "face.Breaks[1].V");
        Refused(wall with { Breaks = [s_breaks[0], s_breaks[0]] }, "face.Breaks[1].V");
        Refused(wall with { Breaks = [new(Mm(994), Angle.FromDegrees(5))] }, "face.Breaks[0].V");
        Refused(wall with { GirthAtFront = Mm(642), Breaks = s_breaks }, "face.Breaks[1].V");
        Refused(wall with { Breaks = s_breaks, BandRules = [CourseRule.Balanced] }, "face.BandRules");
        Refused(wall with { Breaks = s_breaks, RunThroughBreaks = true, BandRules = [CourseRule.Balanced, CourseRule.Balanced] }, "face.BandRules");
        Refused(wall with { Breaks = s_breaks, BreakLimit = Angle.FromDegrees(-1), BandRules = [CourseRule.Balanced, CourseRule.Balanced] }, "face.BreakLimit"); // how many bands there are is not known then
        Refused(wall with { Breaks = s_breaks, BandRules = [CourseRule.Balanced, (CourseRule)9] }, "face.BandRules[1]");
        Taken(wall with { Breaks = s_breaks, RunThroughBreaks = true, BandRules = [CourseRule.Balanced] });
        Refused(wall with { Girth = Mm(89_000.000001) }, "face.Board");
        Taken(wall with { Girth = Mm(89_000) });
        Refused(wall with { Openings = [.. Enumerable.Range(0, 101).Select(static i => new FaceOpening(Mm(i), Mm(i + 1), Mm(1), Mm(2)))] }, "face.Openings");
        Refused(wall with { Breaks = [.. Enumerable.Range(1, 101).Select(static i => new FaceBreak(Mm(i), Angle.FromDegrees(1)))] }, "face.Breaks");
        Assert.Equal(
            ["face.GirthAtRear", "face.SetOutError", "face.LeastCourse", "face.BreakLimit", "face.Rule"],
            CourseLayout.Check(wall with { GirthAtRear = Mm(9), SetOutError = Mm(101), LeastCourse = Mm(1001), BreakLimit = Angle.FromDegrees(91), Rule = (CourseRule)7 }).Select(static problem => problem.Parameter));
    }

    [Fact]
    public void Faces_are_equal_by_amount()
    {
        CourseFace wall = new(Mm(3400), Mm(994), s_board) { Openings = s_windows, Breaks = s_breaks, BandRules = [CourseRule.Balanced, CourseRule.BestOffset], SetOutError = Mm(2) };
        CourseFace same = new(Length.FromMeters(3.4), Length.FromCentimeters(99.4), BoardCover.SquareEdged(Length.FromCentimeters(8.9), Mm(0))) { Openings = s_windows, Breaks = s_breaks, BandRules = [CourseRule.Balanced, CourseRule.BestOffset], SetOutError = Length.FromMeters(0.002) };
        Assert.Equal(wall, same);
        Assert.Equal(wall.GetHashCode(), same.GetHashCode());
        Assert.All(
            new[] { wall with { FaceLength = Mm(3401) }, wall with { Girth = Mm(995) }, wall with { GirthAtFront = Mm(994) }, wall with { GirthAtRear = Mm(994) }, wall with { Board = BoardCover.SquareEdged(Mm(89), Mm(1)) }, wall with { Openings = [] }, wall with { Breaks = [] }, wall with { BandRules = [] }, wall with { BandRules = [CourseRule.Balanced, CourseRule.Balanced] }, wall with { Rule = CourseRule.WholeAtHead }, wall with { RunThroughBreaks = true }, wall with { BreakLimit = Angle.FromDegrees(4) }, wall with { SetOutError = null }, wall with { LeastCourse = Mm(40) } },
            other => Assert.NotEqual(wall, other));
    }

    private static void Refused(CourseFace face, string parameter)
    {
        InputProblem problem = Assert.Single(CourseLayout.Check(face));
        Assert.Equal(parameter, problem.Parameter);
        Assert.Equal(parameter, Assert.ThrowsAny<ArgumentException>(() => CourseLayout.LayOut(face)).ParamName);
    }

    private static void Taken(CourseFace face)
    {
        Assert.Empty(CourseLayout.Check(face));
        Assert.NotEmpty(CourseLayout.LayOut(face).Courses);
    }
}
