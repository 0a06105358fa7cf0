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
        EndCutSchedule ends = EndCuts.Schedule(new EndCutJob(rear, courses.Lines, datum: Mm(0)));
        IReadOnlyList<JointRun> runs = courses.Runs(ends);  // 1: 0 to 3400; 2A: 0 to 500, 2B: 1400 to 3391.1; 3A, 3B; 4
        #endregion

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

    private static EndCutSchedule Ends(CoursePlan courses, MeasuredPoint lower, MeasuredPoint upper, double datum) => EndCuts.Schedule(new EndCutJob(EdgeCurve.Straight(lower, upper), courses.Lines, Mm(datum)));

    private static IEnumerable<(string Name, int Course, double Start, double End)> Flat(IEnumerable<JointRun> runs) => runs.Select(static run => (run.Name!, run.Course, run.Start.Millimeters, run.End.Millimeters));
}
