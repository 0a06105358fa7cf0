using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Boards;

/// <summary>From courses and their end cuts to the runs that are jointed, and the gap that is left at their ends.</summary>
public sealed class CourseRunsTests
{
    private static readonly BoardCover s_square = BoardCover.SquareEdged(Mm(89), Mm(0));
    private static readonly BoardCover s_board = BoardCover.TongueAndGroove(Mm(97), Mm(9), Mm(1)); // a joint every 89

    [Fact]
    public void Runs()
    {
        #region example: CoursePlan.Runs
        CoursePlan courses = CourseLayout.LayOut(new CourseFace(Mm(3400), Mm(356), BoardCover.TongueAndGroove(Mm(97), Mm(9), Mm(1)))
        {
            Openings = [new FaceOpening(Mm(500), Mm(1400), Mm(60), Mm(300))],
            Rule = CourseRule.WholeAtFoot,
        });
        MeasuredEdge rear = EdgeCurve.Straight(new(Mm(0), Mm(3400)), new(Mm(356), Mm(3364.4)));
        EndCutSchedule ends = EndCuts.Schedule(new EndCutJob(rear, courses.LinesAtRear, datum: Mm(0)));
        IReadOnlyList<JointRun> runs = courses.Runs(ends);  // 1: 0 to 3400; 2A: 0 to 500, 2B: 1400 to 3391.1; 3A, 3B; 4
        Angle saw = runs[2].EndsAt!.Cut!.SawAngle;          // -5.711 degrees: 2B ends at the edge, its long point below
        bool isJamb = runs[1].EndsAt!.Kind == RunEndKind.Opening; // 2A at the window
        #endregion

        Assert.Equal(-5.710593, saw.Degrees, 6); // atan 0.1
        Assert.True(isJamb);

        // 0.1 in for each 1 up: at 89, 178 and 267 the edge has come in by 8.9, 17.8 and 26.7. The window leaves 60 of course 1 and 56 of course 4.
        Assert.Equal([("1", 1, 0, 3400), ("2A", 2, 0, 500), ("2B", 2, 1400, 3391.1), ("3A", 3, 0, 500), ("3B", 3, 1400, 3382.2), ("4", 4, 0, 3373.3)], Flat(runs));
        Assert.Equal([("1", 1, 0, 3400), ("2A", 2, 0, 500), ("2B", 2, 1400, 3400), ("3A", 3, 0, 500), ("3B", 3, 1400, 3400), ("4", 4, 0, 3400)], Flat(courses.Runs()));

        // Lengths counted from the middle, and courses listed from the top, are the same wall.
        Assert.Equal(Flat(runs), Flat(courses.Runs(EndCuts.Schedule(new EndCutJob(rear, courses.Lines, Mm(1700)) { Order = FittingOrder.FromTop }))));
        Assert.Equal([3391.1, 3382.2, 3391.1], new[] { ends.Courses[1].OffsetAtLowerLine, ends.Courses[1].OffsetAtUpperLine, ends.Courses[1].LongPointOffset }.Select(static offset => offset.Millimeters));

        // And they are what is asked for.
        Assert.Empty(BoardJoints.Check(new JointJob(runs, [Mm(1700)], [new StockBoard(Mm(2438), 9.80m)])));
    }

    /// <summary>A front edge that goes back to the rear as it rises, 0.5 for each 1 up, with a rear edge that comes forward: long points at the lower lines of both.</summary>
    [Fact]
    public void Both_ends_may_be_cut_in_either_order()
    {
        CoursePlan courses = Courses(178);
        EndCutSchedule front = Ends(courses, new(Mm(0), Mm(10)), new(Mm(178), Mm(99)), datum: 3400), rear = Ends(courses, new(Mm(0), Mm(3390)), new(Mm(178), Mm(3372.2)), datum: 0);
        (string, int, double, double)[] expected = [("1", 1, 10, 3390), ("2", 2, 54.5, 3381.1)];
        Assert.Equal(expected, Flat(courses.Runs(front, rear)));
        Assert.Equal(expected, Flat(courses.Runs(rear, front)));
        Assert.Equal([54.5, 99, 54.5], new[] { front.Courses[1].OffsetAtLowerLine, front.Courses[1].OffsetAtUpperLine, front.Courses[1].LongPointOffset }.Select(static offset => offset.Millimeters));

        // An edge beyond the face makes no board longer than the face.
        EndCutSchedule beyond = Ends(courses, new(Mm(0), Mm(3500)), new(Mm(178), Mm(3350)), datum: 0); // at 89: 3425
        Assert.Equal([("1", 1, 0, 3400), ("2", 2, 0, 3400.0)], Flat(courses.Runs(beyond)));
        Assert.Equal([(RunEndKind.Face, null), (RunEndKind.Face, 2)], courses.Runs(beyond).Select(static run => (run.EndsAt!.Kind, run.EndsAt.Cut?.Course))); // 3350 at 178 takes a corner off course 2
    }

    [Fact]
    public void What_lies_beyond_an_edge_is_no_run_and_a_course_without_a_piece_has_none()
    {
        // Course 1 keeps what is before the window, and behind it up to 2900 - 0; the edge at course 2 is at 2811, within the window.
        CoursePlan courses = Courses(178, new FaceOpening(Mm(1000), Mm(2850), Mm(0), Mm(178)));
        EndCutSchedule rear = Ends(courses, new(Mm(0), Mm(2900)), new(Mm(178), Mm(2722)), datum: 0);
        Assert.Equal([("1A", 1, 0, 1000), ("1B", 1, 2850, 2900), ("2", 2, 0, 1000.0)], Flat(courses.Runs(rear)));

        // To the edge exactly is nothing; a nanometre is a run, for which the joints then cut nothing.
        courses = Courses(178, new FaceOpening(Mm(1000), Mm(2900), Mm(0), Mm(178)));
        Assert.Equal(["1", "2"], courses.Runs(rear).Select(static run => run.Name));
        courses = Courses(178, new FaceOpening(Mm(1000), Mm(2899.999999), Mm(0), Mm(178)));
        Assert.Equal(["1A", "1B", "2"], courses.Runs(rear).Select(static run => run.Name));
        JointLayout layout = BoardJoints.Choose(new JointJob(courses.Runs(rear), [], [new StockBoard(Mm(3000), 1)]));
        Assert.Equal(["1A", "2"], layout.Runs.Select(static run => run.Name));
        Assert.Contains("1B from 2900 to 2900 mm", Assert.Single(layout.Findings, static finding => finding.Code == "boards-joint-run-bare").Message, StringComparison.Ordinal);

        courses = Courses(178, new FaceOpening(Mm(0), Mm(3400), Mm(0), Mm(89)));
        Assert.Equal(["2"], courses.Runs().Select(static run => run.Name));
    }

    /// <summary>Behind the window 10 mm are left of course 1 and 1.1 of course 2 (the edge comes in 0.1 for each 1 up); 3 off at both ends leave 4, and nothing.</summary>
    [Fact]
    public void A_sliver_beside_a_window_is_said_and_the_rest_is_cut()
    {
        CoursePlan courses = Courses(178, new FaceOpening(Mm(1000), Mm(3390), Mm(0), Mm(178)));
        IReadOnlyList<JointRun> runs = courses.Runs(Ends(courses, new(Mm(0), Mm(3400)), new(Mm(178), Mm(3382.2)), datum: 0));
        Assert.Equal([("1A", 1, 0, 1000), ("1B", 1, 3390, 3400), ("2A", 2, 0, 1000), ("2B", 2, 3390, 3391.1)], Flat(runs));
        JointJob job = new([runs[3], runs[0], runs[1], runs[2]], [], [new StockBoard(Mm(2438), 9.80m)]) { EndGap = Mm(3) };
        Assert.Empty(BoardJoints.Check(job));
        JointLayout layout = BoardJoints.Choose(job);
        Assert.Equal([("1A", 1, 994.0), ("1B", 2, 4), ("2A", 3, 994)], layout.Runs.Select(static run => (run.Name, run.Run, Assert.Single(run.Pieces).Millimeters)));
        Assert.Equal(3, layout.Cutting.Boards.Sum(static board => board.Pieces.Count));
        Assert.False(layout.HasProblem);
        Finding bare = Assert.Single(layout.Findings, static finding => finding.Code == "boards-joint-run-bare");
        Assert.Equal(Severity.Caution, bare.Severity);
        Assert.Contains("2B from 3390 to 3391.1 mm", bare.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(BoardJoints.Choose(job with { Runs = [runs[0], runs[1], runs[2]] }).Findings, static finding => finding.Code == "boards-joint-run-bare");

        // Without names they count along the course, the sliver with them.
        layout = BoardJoints.Choose(job with { Runs = [new JointRun(2, Mm(500), Mm(900)), new JointRun(2, Mm(0), Mm(5)), new JointRun(3, Mm(0), Mm(900))] });
        Assert.Equal(["course 2, run 2", "course 3"], layout.Runs.Select(static run => run.Name));
        Assert.Contains("course 2, run 1 from 0 to 5 mm", Assert.Single(layout.Findings, static finding => finding.Code == "boards-joint-run-bare").Message, StringComparison.Ordinal);
    }

    /// <summary>Of a face of 88 the board keeps 60 to 88 up to u = 1000, and 0 to 40 from there: no edge in common.</summary>
    [Fact]
    public void Pieces_that_meet_at_a_corner_only_are_two_boards()
    {
        FaceOpening low = new(Mm(500), Mm(1000), Mm(0), Mm(60));
        Assert.Equal([("1A", 1, 0, 1000), ("1B", 1, 1000, 3400.0)], Flat(Courses(89, low, new(Mm(1000), Mm(1500), Mm(40), Mm(89))).Runs()));

        // From 60 up on the one side and up to 60 on the other is a corner too; a nanometre more is an edge.
        Assert.Equal([("1A", 1, 0, 1000), ("1B", 1, 1000, 3400.0)], Flat(Courses(89, low, new(Mm(1000), Mm(1500), Mm(60), Mm(89))).Runs()));
        Assert.Equal([("1", 1, 0, 3400.0)], Flat(Courses(89, low, new(Mm(1000), Mm(1500), Mm(60.000001), Mm(89))).Runs()));

        // An upper board to 1000 and a lower one from 500, one above the other for 500: one run.
        Assert.Equal([("1", 1, 0, 3400.0)], Flat(Courses(89, new(Mm(0), Mm(500), Mm(0), Mm(60)), new(Mm(500), Mm(1000), Mm(40), Mm(60)), new(Mm(1000), Mm(1500), Mm(40), Mm(89))).Runs()));
    }

    [Fact]
    public void Thirty_windows_side_by_side_have_thirty_one_names()
    {
        FaceOpening[] windows = [.. Enumerable.Range(0, 30).Select(static i => new FaceOpening(Mm(100 + (100 * i)), Mm(150 + (100 * i)), Mm(0), Mm(89)))];
        JointRun[] runs = [.. Courses(89, windows).Runs()];
        Assert.Equal(31, runs.Length);
        Assert.Equal(["1A", "1Z", "1AA", "1EE"], new[] { 0, 25, 26, 30 }.Select(i => runs[i].Name));
        Assert.Equal(31, runs.Select(static run => run.Name).Distinct().Count());
    }

    /// <summary>3400 long, 994 high at the front and half way, less at the rear; square-edged boards of 89. The rear edge comes in 0.05 for each 1 up.</summary>
    [Theory]

    // Modulo 89: 994 is 15, 970 is 80. Offsets between 15 and 80 keep every joint off the head: foot o, head 80 - o at the rear; best 40. The last line 40 + 10 x 89 = 930; its course is 64 wide at the front, 40 at the rear.
    [InlineData(970, CourseRule.BestOffset, 40, 12, 3353.5, null)] // 3400 - 0.05 x 930

    // 940 is 50: foot o, head 50 - o, best 25; the last line 25 + 890 = 915.
    [InlineData(940, CourseRule.BestOffset, 25, 12, 3354.25, null)] // 3400 - 0.05 x 915

    // Whole at the foot: lines 89 k, the last course from 979. The head falls from 994 half way (1700) to 970: at 979 it is 1700 + 15/24 x 1700 from the front.
    [InlineData(970, CourseRule.WholeAtFoot, 89, 11, 3355.5, 2762.5)] // 3400 - 0.05 x 890
    [InlineData(940, CourseRule.WholeAtFoot, 89, 11, 3355.5, 2172.222222)] // 1700 + 15/54 x 1700
    public void A_wall_whose_head_tapers_goes_from_courses_to_joints(double rearGirth, CourseRule rule, double second, int reach, double end, double? runsOut)
    {
        CoursePlan courses = Tapered(994, rearGirth, rule);
        Assert.Equal([0, second, .. Enumerable.Range(1, 10).Select(k => second + (89.0 * k)), 994], courses.Lines.Select(static line => line.Millimeters));
        Assert.Equal(courses.Lines, courses.LinesAtFront);
        Assert.Equal([.. courses.Lines.Take(reach), Mm(rearGirth)], courses.LinesAtRear);

        MeasuredEdge edge = EdgeCurve.Straight(new(Mm(0), Mm(3400)), new(Mm(rearGirth), Mm(3400 - (0.05 * rearGirth))));
        EndCutSchedule ends = EndCuts.Schedule(new EndCutJob(edge, courses.LinesAtRear, Mm(0)));
        IReadOnlyList<JointRun> runs = courses.Runs(ends);
        Assert.Equal(Enumerable.Range(1, 12), runs.Select(static run => run.Course));
        for (int i = 0; i < reach; i++)
        {
            Assert.Equal((0, 3400 - (0.05 * courses.Lines[i].Millimeters)), (runs[i].Start.Millimeters, runs[i].End.Millimeters), Close);
            Assert.Equal((RunEndKind.Face, null, RunEndKind.Edge), (runs[i].StartsAt!.Kind, runs[i].StartsAt!.Cut, runs[i].EndsAt!.Kind));
            Assert.Same(ends.Courses[i], runs[i].EndsAt!.Cut);
        }

        // The highest course at the edge is cut on the chord up to the head there, at the same 2.862 degrees, long below.
        EndCut top = ends.Courses[reach - 1];
        Assert.Equal((rearGirth, end, -2.862405), (top.UpperLine.Millimeters, runs[reach - 1].End.Millimeters, Math.Round(top.SawAngle.Degrees, 6)));
        if (runsOut is { } tip)
        {
            Assert.Equal((0, tip), (runs[11].Start.Millimeters, runs[11].End.Millimeters));
            Assert.Equal((RunEndKind.Head, null), (runs[11].EndsAt!.Kind, runs[11].EndsAt!.Cut));
            Assert.Contains(courses.Findings, static finding => finding.Code == "boards-course-runs-out");
        }

        // And on to joints: 3 off at both ends.
        JointLayout layout = BoardJoints.Choose(new JointJob(runs, [Mm(600), Mm(1100), Mm(1700), Mm(2300), Mm(2800)], [new StockBoard(Mm(2438), 9.80m)]) { EndGap = Mm(3) });
        Assert.False(layout.HasProblem);
        Assert.Equal(runs.Select(static run => Math.Round(run.End.Millimeters - 6, 6)), layout.Runs.Select(static run => Math.Round(run.Pieces.Sum(static piece => piece.Millimeters), 6)));
        Assert.Equal(RunEndKind.Edge, layout.Job.Runs[layout.Runs[0].Run].EndsAt!.Kind);
    }

    /// <summary>Whole at the foot, so that the last course starts at 979, wherever the head is.</summary>
    [Fact]
    public void A_course_runs_out_under_the_head_at_either_end_and_in_the_middle()
    {
        // Highest half way: front 940, 54 more half way: 979 at 39/54 x 1700; rear 970: 1700 + 15/24 x 1700.
        CoursePlan high = Tapered(940, 970, CourseRule.WholeAtFoot);
        Assert.Equal((13, 12, 12), (high.Lines.Count, high.LinesAtFront.Count, high.LinesAtRear.Count));
        Assert.Equal((940, 970), (high.LinesAtFront[^1].Millimeters, high.LinesAtRear[^1].Millimeters));
        EndCutSchedule front = EndCuts.Schedule(new EndCutJob(EdgeCurve.Straight(new(Mm(0), Mm(0)), new(Mm(940), Mm(47))), high.LinesAtFront, Mm(3400)));
        EndCutSchedule rear = EndCuts.Schedule(new EndCutJob(EdgeCurve.Straight(new(Mm(0), Mm(3400)), new(Mm(970), Mm(3351.5))), high.LinesAtRear, Mm(0)));
        JointRun[] runs = [.. high.Runs(rear, front)];
        Assert.Equal([("11", 11, 44.5, 3355.5), ("12", 12, 1227.777778, 2762.5)], Flat(runs).Skip(10)); // 0.05 x 890 off both ends of course 11
        Assert.Equal((RunEndKind.Edge, RunEndKind.Edge), (runs[10].StartsAt!.Kind, runs[10].EndsAt!.Kind));
        Assert.Equal((940, 970), (runs[10].StartsAt!.Cut!.UpperLine.Millimeters, runs[10].EndsAt!.Cut!.UpperLine.Millimeters));
        Assert.Equal((RunEndKind.Head, RunEndKind.Head), (runs[11].StartsAt!.Kind, runs[11].EndsAt!.Kind));

        // Rising to the rear all along, 970, 982, 994: 979 at 9/12 x 1700. All courses end at the rear.
        CoursePlan rising = CourseLayout.LayOut(new CourseFace(Mm(3400), Mm(982), s_square) { GirthAtFront = Mm(970), GirthAtRear = Mm(994), Rule = CourseRule.WholeAtFoot });
        Assert.Equal(rising.Lines, rising.LinesAtRear);
        Assert.Equal(("12", 12, 1275, 3400), Flat(rising.Runs()).Last());
        Assert.Equal((RunEndKind.Head, RunEndKind.Face), (rising.Runs()[^1].StartsAt!.Kind, rising.Runs()[^1].EndsAt!.Kind));

        // Lowest half way, 994, 970, 994: two boards, to 15/24 x 1700 and from 3400 less that.
        CoursePlan low = CourseLayout.LayOut(new CourseFace(Mm(3400), Mm(970), s_square) { GirthAtFront = Mm(994), GirthAtRear = Mm(994), Rule = CourseRule.WholeAtFoot });
        Assert.Equal([("12A", 12, 0, 1062.5), ("12B", 12, 2337.5, 3400)], Flat(low.Runs()).Skip(11));
        Assert.Equal([RunEndKind.Face, RunEndKind.Head, RunEndKind.Head, RunEndKind.Face], low.Runs().Skip(11).SelectMany(static run => new[] { run.StartsAt!.Kind, run.EndsAt!.Kind }));
    }

    [Theory]
    [InlineData(978.999999, 11)] // below the line
    [InlineData(979, 11)] // at it
    [InlineData(979.5, 11)]
    [InlineData(979.999999, 11)]
    [InlineData(980, 12)] // a millimetre is a course
    public void A_course_of_less_than_a_millimetre_at_an_end_has_no_line_there(double rearGirth, int reach)
    {
        CoursePlan courses = Tapered(994, rearGirth, CourseRule.WholeAtFoot);
        Assert.Equal(reach + 1, courses.LinesAtRear.Count);
        EndCutJob job = new(EdgeCurve.Straight(new(Mm(0), Mm(3400)), new(Mm(1000), Mm(3350))), courses.LinesAtRear, Mm(0));
        Assert.Empty(EndCuts.Check(job));
        JointRun last = courses.Runs(EndCuts.Schedule(job))[^1];
        Assert.Equal(12, last.Course);
        if (rearGirth > 979)
        {
            // It goes to the edge, which goes on straight: 3400 - 0.05 x 979.
            Assert.Equal((3351.05, RunEndKind.Edge, reach), (last.End.Millimeters, last.EndsAt!.Kind, last.EndsAt.Cut!.Course));
        }
        else if (rearGirth == 979)
        {
            // It would run out at 3400: before that it is at the edge.
            Assert.Equal((3351.05, RunEndKind.Edge), (last.End.Millimeters, last.EndsAt!.Kind));
            Assert.Equal((3400, RunEndKind.Head), (courses.Runs()[^1].End.Millimeters, courses.Runs()[^1].EndsAt!.Kind));
        }
        else
        {
            Assert.Equal(RunEndKind.Edge, last.EndsAt!.Kind); // it runs out 0.1 mm before 3400, beyond the edge
        }

        // A face that does not taper: 0.5 mm over eleven boards.
        CoursePlan level = CourseLayout.LayOut(new CourseFace(Mm(3400), Mm(979.5), s_square) { Rule = CourseRule.WholeAtFoot });
        Assert.Equal((13, 12, 12), (level.Lines.Count, level.LinesAtFront.Count, level.LinesAtRear.Count));
    }

    /// <summary>The edge is at 3375.08 at the lower line of the course, 356, and at 3368.85 at its upper, 445; the jamb at 3373.</summary>
    [Fact]
    public void A_jamb_that_the_edge_crosses_within_a_course_is_a_jamb_with_a_corner_off()
    {
        CoursePlan courses = Courses(445, new FaceOpening(Mm(3373), Mm(3400), Mm(356), Mm(445)));
        EndCutSchedule ends = Ends(courses, new(Mm(0), Mm(3400)), new(Mm(1000), Mm(3330)), datum: 0);
        IReadOnlyList<JointRun> runs = courses.Runs(ends);
        Assert.Equal([("4", 4, 0, 3381.31), ("5", 5, 0, 3373.0)], Flat(runs).Skip(3)); // 3400 - 0.07 x 267
        Assert.Equal((RunEndKind.Edge, RunEndKind.Opening), (runs[3].EndsAt!.Kind, runs[4].EndsAt!.Kind));
        Assert.Same(ends.Courses[4], runs[4].EndsAt!.Cut);
        Assert.Equal(4.15, 3373 - runs[4].EndsAt!.Cut!.OffsetAtUpperLine.Millimeters, 6); // stands in the edge
        Assert.Equal("at an opening, a corner off: " + ends.Courses[4], runs[4].EndsAt!.ToString());

        // A jamb that the edge does not reach is square; one behind its long point is none; where both are at one place the edge cuts.
        Assert.Null(Last(3368.85).Cut);
        Assert.Equal(RunEndKind.Opening, Last(3368.85).Kind);
        Assert.NotNull(Last(3368.850001).Cut);
        Assert.Equal(RunEndKind.Opening, Last(3375.079999).Kind);
        Assert.Equal(RunEndKind.Edge, Last(3375.08).Kind);
        Assert.Equal(RunEndKind.Edge, Last(3376).Kind);

        RunEnd Last(double jamb) => Courses(445, new FaceOpening(Mm(jamb), Mm(3400), Mm(356), Mm(445))).Runs(ends)[^1].EndsAt!;
    }

    /// <summary>Of a course from 0 to 89 the edge comes in 0.1, or goes out 0.1, for each 1 up; the run ends at the long point of what openings leave.</summary>
    [Theory]
    [InlineData(0, 60, 3394, 3358.9)] // the part above: at 60, at 89
    [InlineData(30, 89, 3400, 3353)] // the part below: at 0, at 30
    [InlineData(30, 60, 3400, 3358.9)] // both
    public void A_part_above_or_below_an_opening_ends_at_its_own_long_point(double from, double to, double comingIn, double goingOut)
    {
        foreach ((double behind, double front, double rear) in new[] { (3400.0, 2000.0, 3400.0), (1400, 1000, 1400) })
        {
            CoursePlan courses = Courses(178, new FaceOpening(Mm(front), Mm(behind), Mm(from), Mm(to)));
            bool isAtEdge = rear == 3400;
            JointRun[] runs = [.. courses.Runs(Ends(courses, new(Mm(0), Mm(3400)), new(Mm(178), Mm(3382.2)), 0))];
            Assert.Equal([("1", 1, 0, isAtEdge ? comingIn : 3400), ("2", 2, 0, 3391.1)], Flat(runs));
            runs = [.. courses.Runs(Ends(courses, new(Mm(0), Mm(3350)), new(Mm(178), Mm(3367.8)), 0))];
            Assert.Equal([("1", 1, 0, isAtEdge ? goingOut : 3358.9), ("2", 2, 0, 3367.8)], Flat(runs));
            Assert.All(runs, static run => Assert.Equal(RunEndKind.Edge, run.EndsAt!.Kind));
        }
    }

    /// <summary>The edge comes in by 0.1, 0.1 and 0.100001 for each 1 up: two surveys that say the same, and one that says otherwise by 89 nm at the second line.</summary>
    [Fact]
    public void The_same_edge_surveyed_twice_gives_equal_runs_and_a_host_can_make_their_ends()
    {
        CoursePlan courses = Courses(178);
        JointRun[] once = [.. courses.Runs(Ends(courses, new(Mm(0), Mm(3400)), new(Mm(178), Mm(3382.2)), 0))];
        JointRun[] twice = [.. courses.Runs(Ends(courses, new(Mm(0), Length.FromCentimeters(340)), new(Length.FromCentimeters(17.8), Mm(3382.2)), 0))];
        JointRun[] other = [.. courses.Runs(Ends(courses, new(Mm(0), Mm(3400)), new(Mm(178), Mm(3382.199822)), 0))];
        Assert.NotSame(once[0].EndsAt!.Cut, twice[0].EndsAt!.Cut);
        Assert.Equal(once, twice);
        Assert.Equal(once.Select(static run => run.EndsAt!.GetHashCode()), twice.Select(static run => run.EndsAt!.GetHashCode()));
        Assert.NotEqual(once[0].EndsAt, once[1].EndsAt); // courses 1 and 2
        Assert.NotEqual(once[0].EndsAt, other[0].EndsAt);
        Assert.NotEqual(once[0].EndsAt, once[0].StartsAt);

        EndCut cut = once[1].EndsAt!.Cut!;
        Assert.Equal(once[1].EndsAt, new RunEnd(RunEndKind.Edge, twice[1].EndsAt!.Cut));
        Assert.Equal(once[1].StartsAt, new RunEnd(RunEndKind.Face));
        Assert.NotEqual(new RunEnd(RunEndKind.Face), new RunEnd(RunEndKind.Face, cut));
        Assert.NotEqual(new RunEnd(RunEndKind.Opening, cut), new RunEnd(RunEndKind.Face, cut));
        Assert.Equal("kind", Assert.Throws<ArgumentOutOfRangeException>(() => new RunEnd((RunEndKind)4, cut)).ParamName);
        Assert.Equal("kind", Assert.Throws<ArgumentOutOfRangeException>(static () => new RunEnd((RunEndKind)(-1))).ParamName);
        Assert.Equal("cut", Assert.Throws<ArgumentNullException>(static () => new RunEnd(RunEndKind.Edge)).ParamName);
    }

    [Fact]
    public void Two_edges_at_one_end_are_refused()
    {
        CoursePlan courses = Courses(178);
        EndCutSchedule rear = Ends(courses, new(Mm(0), Mm(3400)), new(Mm(178), Mm(3390)), datum: 0), front = Ends(courses, new(Mm(0), Mm(10)), new(Mm(178), Mm(20)), datum: 3400);
        foreach ((EndCutSchedule ends, string end) in new[] { (rear, "rear"), (front, "front") })
        {
            ArgumentException refused = Assert.Throws<ArgumentException>(() => courses.Runs(ends, ends));
            Assert.Equal("otherEnd", refused.ParamName);
            Assert.Contains($"end cuts at the {end}", refused.Message, StringComparison.Ordinal);
        }

        Assert.Equal(2, courses.Runs(rear, front).Count);
    }

    [Fact]
    public void End_cuts_up_to_the_highest_head_are_refused_at_the_low_end()
    {
        CoursePlan courses = Tapered(994, 940, CourseRule.WholeAtFoot);
        EndCutSchedule guessed = EndCuts.Schedule(new EndCutJob(EdgeCurve.Straight(new(Mm(0), Mm(3400)), new(Mm(994), Mm(3350))), courses.Lines, Mm(0)));
        ArgumentException refused = Assert.Throws<ArgumentException>(() => courses.Runs(null, guessed));
        Assert.Equal("otherEnd", refused.ParamName);
        Assert.Contains("12 courses from 0 to 994 mm at the rear", refused.Message, StringComparison.Ordinal);
        Assert.Contains("this plan's LinesAtRear, of the 11 courses from 0 to 940 mm", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_end_equals_one_of_the_same_kind_with_the_same_cut()
    {
        CoursePlan courses = Courses(178);
        EndCutSchedule ends = Ends(courses, new(Mm(0), Mm(3400)), new(Mm(178), Mm(3390)), datum: 0);
        IReadOnlyList<JointRun> one = courses.Runs(ends), two = courses.Runs(ends);
        Assert.Equal(one, two);
        Assert.Equal(one.Select(static run => run.GetHashCode()), two.Select(static run => run.GetHashCode()));
        Assert.NotEqual(one[0].EndsAt, one[1].EndsAt);
        Assert.NotEqual(one[0].EndsAt, one[0].StartsAt);
        Assert.NotEqual(one[0], one[0] with { EndsAt = null });
        Assert.NotEqual(one[0], one[0] with { StartsAt = one[0].EndsAt });
        Assert.False(one[0].EndsAt!.Equals((object)"at the edge"));
        Assert.Equal("at the end of the face", one[0].StartsAt!.ToString());
        Assert.StartsWith("at the edge, course 1: ", one[0].EndsAt!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void End_cuts_of_another_plan_are_refused()
    {
        CoursePlan courses = Courses(178), fewer = Courses(89), other = Courses(177);
        foreach (CoursePlan strange in new[] { fewer, other })
        {
            EndCutSchedule ends = Ends(strange, new(Mm(0), Mm(3400)), new(Mm(200), Mm(3390)), datum: 0);
            Assert.Equal("oneEnd", Assert.Throws<ArgumentException>(() => courses.Runs(ends)).ParamName);
            Assert.Equal("otherEnd", Assert.Throws<ArgumentException>(() => courses.Runs(null, ends)).ParamName);
        }
    }

    /// <summary>3600 less 3 at both ends is 3594: a joint at 1200 leaves 1197 and 2397, and boards start at 3.</summary>
    [Fact]
    public void The_gap_is_left_at_both_ends_of_every_run()
    {
        JointJob job = new([new JointRun(1, Mm(0), Mm(3600)), new JointRun(3, Mm(100), Mm(2515)), new JointRun(3, Mm(2515), Mm(3000))], [Mm(1200)], [new StockBoard(Mm(2438), 9.80m)]) { EndGap = Mm(3) };
        JointLayout layout = BoardJoints.Choose(job);
        Assert.Equal([(3, 3597.0), (103, 2512.0), (2518, 2997.0)], layout.Runs.Select(static run => (run.Start.Millimeters, run.End.Millimeters)));
        Assert.Equal([1197, 2397], layout.Runs[0].Pieces.Select(static piece => piece.Millimeters));

        // 2415 is more than the 2408 that can be used; without two gaps of 3.5 it is that.
        Assert.Single(BoardJoints.Choose(job).Runs[1].Joints);
        Assert.Empty(BoardJoints.Choose(job with { EndGap = Mm(3.5) }).Runs[1].Joints);
        Assert.Single(BoardJoints.Choose(job with { EndGap = Mm(3.499999) }).Runs[1].Joints);
        WorkingsCheck.Recompute(layout.Explain());
        Assert.NotEqual(job, job with { EndGap = Mm(4) });
    }

    /// <summary>The same wall with the gaps taken off by hand.</summary>
    [Fact]
    public void A_gap_is_as_good_as_shorter_runs()
    {
        Random random = new(4);
        for (int trial = 0; trial < 60; trial++)
        {
            double gap = random.Next(1, 40) / 4.0;
            (double Start, double End)[] runs = [.. Enumerable.Range(0, random.Next(1, 7)).Select(_ => (random.Next(0, 300) / 2.0, 2000.0 + random.Next(0, 2000)))];
            Length[] strips = [.. Enumerable.Range(1, 8).Select(static i => Mm(i * 430))];
            StockBoard[] stock = [new StockBoard(Mm(2438), 9.80m), new StockBoard(Mm(3048), 12.60m)];
            JointLayout one = BoardJoints.Choose(new JointJob([.. runs.Select(static (run, i) => new JointRun(i, Mm(run.Start), Mm(run.End)))], strips, stock) { EndGap = Mm(gap) });
            JointLayout two = BoardJoints.Choose(new JointJob([.. runs.Select((run, i) => new JointRun(i, Mm(run.Start + gap), Mm(run.End - gap)))], strips, stock));
            Assert.Equal(two.Runs.Select(static run => run.ToString()), one.Runs.Select(static run => run.ToString()));
            Assert.Equal((two.Cost, two.LeastCost, two.Cutting.ToString()), (one.Cost, one.LeastCost, one.Cutting.ToString()));
        }
    }

    [Theory]
    [InlineData(-0.000001, "job.EndGap")]
    [InlineData(0, null)]
    [InlineData(100, null)]
    [InlineData(100.000001, "job.EndGap")]
    public void A_gap_is_0_to_100_mm(double gap, string? refused) =>
        Assert.Equal(refused is null ? [] : [refused], BoardJoints.Check(new JointJob([new JointRun(1, Mm(0), Mm(500))], [], [new StockBoard(Mm(2438), 9.80m)]) { EndGap = Mm(gap) }).Select(static problem => problem.Parameter));

    [Fact]
    public void Gaps_leave_a_millimetre_of_a_run_and_let_runs_of_a_course_meet()
    {
        JointJob job = new([new JointRun(1, Mm(0), Mm(7)), new JointRun(1, Mm(7), Mm(20))], [], [new StockBoard(Mm(2438), 9.80m)]) { EndGap = Mm(3) };
        Assert.Equal([0, 1], BoardJoints.Choose(job).Runs.Select(static run => run.Run));
        Assert.Equal([1], BoardJoints.Choose(job with { EndGap = Mm(3.000001) }).Runs.Select(static run => run.Run));

        // Where nothing at all is left to board it is the job that is wrong.
        InputProblem problem = Assert.Single(BoardJoints.Check(job with { Runs = [job.Runs[0]], EndGap = Mm(3.000001) }));
        Assert.Equal("job.Runs[0].End", problem.Parameter);
        Assert.Contains("3.000001 mm taken off at both ends", problem.Allowed, StringComparison.Ordinal);
        problem = Assert.Single(BoardJoints.Check(job with { Runs = [new JointRun(1, Mm(0), Mm(7)), new JointRun(1, Mm(6.999999), Mm(20))] }));
        Assert.Equal(("job.Runs[1].Start", "6.999999 mm"), (problem.Parameter, problem.Value));
        Assert.StartsWith("7 mm or more", problem.Allowed, StringComparison.Ordinal);
    }

    private static CoursePlan Courses(double girth, params FaceOpening[] openings) => CourseLayout.LayOut(new CourseFace(Mm(3400), Mm(girth), s_board) { Openings = openings, Rule = CourseRule.WholeAtFoot });

    private static CoursePlan Tapered(double front, double rear, CourseRule rule) => CourseLayout.LayOut(new CourseFace(Mm(3400), Mm(994), s_square) { GirthAtFront = Mm(front), GirthAtRear = Mm(rear), Rule = rule });

    private static bool Close((double Start, double End) one, (double Start, double End) other) => Math.Abs(one.Start - other.Start) < 1e-6 && Math.Abs(one.End - other.End) < 1e-6;

    private static EndCutSchedule Ends(CoursePlan courses, MeasuredPoint lower, MeasuredPoint upper, double datum) => EndCuts.Schedule(new EndCutJob(EdgeCurve.Straight(lower, upper), courses.Lines, Mm(datum)));

    private static IEnumerable<(string Name, int Course, double Start, double End)> Flat(IEnumerable<JointRun> runs) => runs.Select(static run => (run.Name!, run.Course, run.Start.Millimeters, run.End.Millimeters));
}
