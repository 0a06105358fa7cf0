using System;
using System.Collections.Generic;
using System.Linq;
using FinishKit.Tests.Geometry;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Boards;

/// <summary>End cuts by hand, facts of the trade, and what is refused. No expected value is the program's own.</summary>
public sealed class EndCutTests
{
    /// <summary>Chords of the circle of radius 10,541.407 by its centre, in fifty digits, by a script of its own.</summary>
    [Fact]
    public void Schedule()
    {
        #region example: EndCuts.Schedule
        MeasuredEdge rear = EdgeCurve.OnArc(new(Mm(0), Mm(3400)), new(Mm(994), Mm(3352)), Mm(11.75));
        EndCutSchedule ends = EndCuts.Schedule(new EndCutJob(rear, [Mm(0), Mm(89), Mm(178), Mm(267)], datum: Mm(20)));
        EndCut second = ends.Courses[1];
        Angle saw = second.SawAngle;                        // -0.785°: the long point is at the lower line
        Angle change = second.Change!.Value;                // -0.484° from the course below
        Length longPoint = second.LongPoint;                // 3379.532 mm from the datum
        Length gap = second.GapLeft;                        // 0.094 mm: a straight cut serves
        #endregion
        Assert.Equal(-0.7847950147313798, saw.Degrees, 1e-9);
        Assert.Equal(-0.4837697616440178, change.Degrees, 1e-9);
        Assert.Equal(3379.532400, longPoint.Millimeters, 1e-6);
        Assert.Equal(89, second.LongPointAt!.Value.Millimeters);
        Assert.Equal(3378.313268, second.ShortPoint.Millimeters, 1e-6);
        Assert.Equal(178, second.ShortPointAt!.Value.Millimeters);
        Assert.Equal(0.093945, gap.Millimeters, 1e-6);
        Assert.Equal(0, second.WoodInTheWay.Millimeters);
        Assert.Null(second.WoodInTheWayAt);
        Assert.True(ends.IsEdgeAtRear);
        Assert.Equal("boards-look-behind", Assert.Single(ends.Findings).Code);
        Assert.Equal("scribe-tolerance 0.5 mm", Assert.Single(ends.DefaultsUsed).Figure.ToString());
    }

    /// <summary>
    /// Common practice, no published source: at a van's rear pillar neighbouring courses differ by about half a degree. By hand: with 89 mm of cover that is a radius of 89/0.0087266 = 10,199 mm,
    /// and a gap of 89²/(8 · 10,199) = 0.097 mm.
    /// </summary>
    [Fact]
    public void Neighbouring_courses_on_a_van_like_edge_differ_by_half_a_degree_and_a_straight_cut_serves()
    {
        double half = 445, radius = 10_200, rise = radius - Math.Sqrt((radius * radius) - (half * half));
        MeasuredEdge pillar = EdgeCurve.OnArc(new(Mm(0), Mm(3400)), new(Mm(2 * half), Mm(3400)), Mm(rise));
        Assert.Equal(radius, pillar.Radius!.Value.Millimeters, 1e-2);
        EndCutSchedule ends = EndCuts.Schedule(new EndCutJob(pillar, [.. Enumerable.Range(0, 11).Select(static i => Mm(89 * i))], Mm(0)));
        Assert.All(ends.Courses.Skip(1), static cut => Assert.Equal(-0.5, cut.Change!.Value.Degrees, 0.005));
        Assert.All(ends.Courses, static cut => Assert.Equal(0.10, cut.GapLeft.Millimeters, 0.005));
        Assert.DoesNotContain(ends.Courses, static cut => cut.NeedsScribe || cut.Wood > 0);
    }

    /// <summary>Judged, not measured: about 0.5° a course of 89 mm, 0.75° of 135 mm, on the demo van's rear edge, whichever smooth curve is drawn, and a straight cut serves.</summary>
    [Theory]
    [InlineData(89, 0.5)]
    [InlineData(135, 0.75)]
    public void The_demo_vans_rear_edge_turns_as_the_trade_says(double cover, double change)
    {
        foreach (EdgeFit fit in new[] { EdgeFit.ShapePreserving, EdgeFit.NaturalCubic })
        {
            MeasuredEdge rear = EdgeCurve.Through(EdgeCurveTests.DemoRear, fit);
            EndCutSchedule ends = EndCuts.Schedule(new EndCutJob(rear, [.. Enumerable.Range(0, (int)(994 / cover) + 1).Select(i => Mm(cover * i))], Mm(0)));
            double[] changes = [.. ends.Courses.Skip(1).Select(static cut => -cut.Change!.Value.Degrees)];
            Assert.Equal(change, changes.Average(), 0.1 * change);
            Assert.All(changes, each => Assert.InRange(each, 0.5 * change, 1.5 * change));
            Assert.All(ends.Courses, static cut => Assert.False(cut.NeedsScribe));
            Assert.All(ends.Courses, static cut => Assert.Equal(0, cut.Wood, 1e-6)); // the edge bows outward all the way
        }
    }

    /// <summary>By hand: a corner 0.5 mm out of a plumb chord leaves exactly 0.5 of gap, and a step of the grid more is too much. Seen from the other side it is wood in the way.</summary>
    [Theory]
    [InlineData(0.5, false)]
    [InlineData(0.500001, true)]
    [InlineData(0.4, false)]
    [InlineData(-0.5, false)]
    [InlineData(-0.500001, true)]
    public void A_tolerance_exactly_met_is_met(double corner, bool scribed)
    {
        MeasuredEdge edge = EdgeCurve.Through([new(Mm(0), Mm(1000)), new(Mm(50), Mm(1000 + corner)), new(Mm(100), Mm(1000))], EdgeFit.Linear);
        foreach (double datum in new double[] { 0, 2000 })
        {
            EndCut cut = EndCuts.Schedule(new EndCutJob(edge, [Mm(0), Mm(100)], Mm(datum))).Courses[0];
            bool isGap = corner > 0 == (datum == 0);
            Assert.Equal(isGap ? Math.Abs(corner) : 0, cut.GapLeft.Millimeters);
            Assert.Equal(isGap ? 0 : Math.Abs(corner), cut.WoodInTheWay.Millimeters);
            Assert.Equal(50, (isGap ? cut.GapLeftAt : cut.WoodInTheWayAt)!.Value.Millimeters);
            Assert.Equal(scribed, cut.NeedsScribe);
            Assert.Equal(0, cut.SawAngle.Degrees);
            Assert.Null(cut.LongPointAt);
            Assert.Equal(1000, cut.LongPoint.Millimeters);

            // Moved by half of it, half is left on either side.
            Assert.Equal((isGap ? -1 : 1) * Math.Abs(corner) / 2, cut.SetBack.Millimeters, 1e-6);
            Assert.Equal(Math.Abs(corner) / 2, cut.LeftWhenSetBack.Millimeters, 1e-6);
            Assert.Equal(scribed, cut.ServesSetBack);
        }
    }

    /// <summary>By hand: 1 mm of gap moved by half leaves 0.5 on either side, which is just met.</summary>
    [Theory]
    [InlineData(1, true)]
    [InlineData(1.000002, false)]
    public void A_set_back_that_leaves_the_tolerance_serves(double corner, bool serves)
    {
        MeasuredEdge edge = EdgeCurve.Through([new(Mm(0), Mm(1000)), new(Mm(50), Mm(1000 + corner)), new(Mm(100), Mm(1000))], EdgeFit.Linear);
        EndCut cut = EndCuts.Schedule(new EndCutJob(edge, [Mm(0), Mm(100)], Mm(0))).Courses[0];
        Assert.True(cut.NeedsScribe);
        Assert.Equal(serves, cut.ServesSetBack);
    }

    /// <summary>Square to the cut, not along the board: a chord at 45° with the corner 10 along the board off it leaves 10 cos 45° = 7.071.</summary>
    [Fact]
    public void What_is_left_is_measured_square_to_the_cut()
    {
        MeasuredEdge edge = EdgeCurve.Through([new(Mm(0), Mm(1000)), new(Mm(50), Mm(1060)), new(Mm(100), Mm(1100))], EdgeFit.Linear);
        EndCutSchedule ends = EndCuts.Schedule(new EndCutJob(edge, [Mm(0), Mm(100)], Mm(0)));
        EndCut cut = ends.Courses[0];
        Assert.Equal(45, cut.SawAngle.Degrees, 1e-9);
        Assert.Equal(7.071068, cut.GapLeft.Millimeters, 1e-6);
        Finding scribe = Assert.Single(ends.Findings, static finding => finding.Code.StartsWith("boards-end-", StringComparison.Ordinal)); // 45° is in reach
        Assert.Equal("boards-end-scribe", scribe.Code);
        Assert.Equal(Severity.Caution, scribe.Severity);
        Assert.Equal(7.071068, scribe.Values.Single(static value => value.Name == "greatest-gap-left").Value);
        Assert.Equal(0, scribe.Values.Single(static value => value.Name == "courses-served-by-set-back").Value);
        Assert.Equal("A straight cut does not serve on 1 of 1 courses: it leaves a gap of up to 7.071 mm (course 1); 0.5 mm is allowed. Scribe them, or cover the ends with a trim.", scribe.Message);
        Assert.DoesNotContain(scribe.Values, static value => value.Name == "course-of-most-wood");
        Assert.Equal("edge-curve", ends.Explain().Steps.Single(static step => step.Value.Name == "r_a_1").Source.Id);
        Assert.Equal(SourceKind.CommonPractice, scribe.Source!.Kind);
        Assert.False(ends.HasProblem);
    }

    [Fact]
    public void Under_a_trim_two_millimetres_do()
    {
        MeasuredEdge edge = EdgeCurve.Through([new(Mm(0), Mm(1000)), new(Mm(50), Mm(1002)), new(Mm(100), Mm(1000))], EdgeFit.Linear);
        EndCutJob seen = new(edge, [Mm(0), Mm(100)], Mm(0)), covered = seen with { UnderTrim = true };
        Assert.True(EndCuts.Schedule(seen).Courses[0].NeedsScribe);
        Assert.False(EndCuts.Schedule(covered).Courses[0].NeedsScribe);
        Assert.Equal(2, EndCuts.Schedule(covered).ScribeTolerance.Millimeters);
        Assert.Equal(2, EndCuts.Schedule(covered).DefaultsUsed[0].Figure.Value);
        EndCutSchedule own = EndCuts.Schedule(covered with { ScribeTolerance = Mm(1.5) });
        Assert.True(own.Courses[0].NeedsScribe);
        Assert.DoesNotContain(own.DefaultsUsed, static used => used.Figure.Name == "scribe-tolerance");
        Finding finding = Assert.Single(own.Findings, static finding => finding.Code == "boards-end-scribe");
        Assert.Equal(SourceKind.Supplied, finding.Source!.Kind);
        Assert.Contains("1 of them serve with the straight cut moved", finding.Message, StringComparison.Ordinal); // 1 mm either way
    }

    /// <summary>By hand: 10 in 100 over a tongue of 6 is 0.6 more.</summary>
    [Theory]
    [InlineData(10, 1010, 1010.6, 1000)]
    [InlineData(-10, 1000, 1000, 989.4)]
    public void What_is_hidden_beyond_the_upper_line_lengthens_or_shortens_the_board(double across, double longPoint, double boardLong, double boardShort)
    {
        MeasuredEdge edge = EdgeCurve.Straight(new(Mm(0), Mm(1000)), new(Mm(100), Mm(1000 + across)));
        EndCut cut = EndCuts.Schedule(new EndCutJob(edge, [Mm(0), Mm(100)], Mm(0)) { HiddenWidth = Mm(6) }).Courses[0];
        Assert.Equal(longPoint, cut.LongPoint.Millimeters, 1e-6);
        Assert.Equal(boardLong, cut.BoardLongPoint.Millimeters, 1e-6);
        Assert.Equal(boardShort, cut.BoardShortPoint.Millimeters, 1e-6);
        EndCut plain = EndCuts.Schedule(new EndCutJob(edge, [Mm(0), Mm(100)], Mm(0))).Courses[0];
        Assert.Equal(plain.LongPoint.Millimeters, plain.BoardLongPoint.Millimeters);
    }

    /// <summary>By hand: 120 in 100 down from 120.5; at 99.5 there are 1.1 left, and 6.5 further 1.1 - 7.8 = -6.7. atan 1.2 = 50.19°.</summary>
    [Fact]
    public void A_cut_that_runs_out_past_the_square_end_is_a_problem()
    {
        MeasuredEdge edge = EdgeCurve.Straight(new(Mm(0), Mm(120.5)), new(Mm(100), Mm(0.5)));
        EndCutJob job = new(edge, [Mm(0), Mm(99.5)], Mm(0)) { HiddenWidth = Mm(6.5) };
        EndCutSchedule ends = EndCuts.Schedule(job);
        Assert.True(ends.HasProblem);
        Assert.Equal(["boards-end-runs-out", "boards-end-saw-angle", "boards-look-behind"], ends.Findings.Select(static finding => finding.Code));
        Assert.Equal(("default-saw-reach", 50), (ends.Findings[1].Source!.Id, ends.Findings[1].Values.Single(static value => value.Name == "saw-angle-limit").Value));
        Assert.Equal(-6.7, ends.Findings[0].Values.Single(static value => value.Name == "board-short-point").Value, 1e-6);
        Assert.Contains("50.19° from square", ends.Findings[1].Message, StringComparison.Ordinal);
        Assert.False(EndCuts.Schedule(job with { HiddenWidth = null }).HasProblem);
    }

    /// <summary>50 mm past the datum half way up, 100 before it at both lines: no straight cut or scribe leaves a board there. A step of the grid before the datum it is a scribe, however deep.</summary>
    [Theory]
    [InlineData(-50, true)]
    [InlineData(0, true)]
    [InlineData(0.000001, false)]
    public void An_edge_that_crosses_the_datum_between_lines_is_a_problem(double middle, bool crosses)
    {
        foreach (int side in new[] { 1, -1 })
        {
            MeasuredEdge edge = EdgeCurve.Through([new(Mm(0), Mm(side * 100)), new(Mm(50), Mm(side * middle)), new(Mm(100), Mm(side * 100)), new(Mm(200), Mm(side * 100))], EdgeFit.Linear);
            EndCutSchedule ends = EndCuts.Schedule(new EndCutJob(edge, [Mm(0), Mm(100), Mm(200)], Mm(0)));
            Assert.Equal(side > 0, ends.IsEdgeAtRear);
            Assert.Equal(crosses, ends.HasProblem);
            Assert.Contains(ends.Findings, static finding => finding.Code == "boards-end-scribe");
            if (crosses)
            {
                Assert.Equal("boards-end-crosses-datum", ends.Findings[0].Code);
                Assert.Equal([1, 50, middle], ends.Findings[0].Values.Select(static value => value.Value));
            }
        }
    }

    /// <summary>The least length need not lie where most wood is in the way: on a chord that rises 100 in 100 it lies nearer to the lower line.</summary>
    [Fact]
    public void The_least_length_is_looked_for_along_the_whole_course()
    {
        MeasuredEdge edge = EdgeCurve.Through([.. Enumerable.Range(0, 11).Select(static i => new MeasuredPoint(Mm(10 * i), Mm(1 + (10 * i) - (3 * i * (10 - i)))))], EdgeFit.Linear);
        Finding crosses = EndCuts.Schedule(new EndCutJob(edge, [Mm(0), Mm(100)], Mm(0))).Findings[0];
        Assert.Equal("boards-end-crosses-datum", crosses.Code);

        // 1 + 30 - 63 = -32 at t = 0.3, 1 + 40 - 72 = -31 at 0.4; the wood is greatest at 0.5, where 1 + 50 - 75 = -24.
        Assert.Equal([1, 30, -32], crosses.Values.Select(static value => value.Value));
    }

    /// <summary>What is in doubt about the edge is in doubt about its cuts.</summary>
    [Fact]
    public void Findings_and_defaults_of_the_edge_are_handed_on()
    {
        MeasuredEdge rear = EdgeCurve.Through([new(Mm(0), Mm(3400)), new(Mm(400), Mm(3392)), new(Mm(800), Mm(3369))]);
        EndCutSchedule ends = EndCuts.Schedule(new EndCutJob(rear, [Mm(0), Mm(89), Mm(178)], Mm(0)));
        Assert.Equal(["geometry-edge-curves-differ", "boards-look-behind"], ends.Findings.Select(static finding => finding.Code));
        Assert.Equal(["scribe-tolerance", "difference-limit"], ends.DefaultsUsed.Select(static used => used.Figure.Name));
    }

    public static TheoryData<string, string, string> Refused() => new()
    {
        { "edge", "job.Edge", "null" },
        { "no lines", "job.CourseLines", "null" },
        { "one line", "job.CourseLines", "2 to 501 lines" },
        { "many lines", "job.CourseLines", "502 lines" },
        { "down", "job.CourseLines[1]", "1 mm or more above the line before, 100 mm" },
        { "twice", "job.CourseLines[2]", "1 mm or more above the line before, 189 mm" },
        { "below", "job.CourseLines[0]", "0 to 994 mm" },
        { "above", "job.CourseLines[2]", "0 to 994 mm" },
        { "unit", "job.CourseLines[1]", "undefined unit 999" },
        { "datum", "job.Datum", "on one side of the edge, which lies at" },
        { "far datum", "job.Datum", "-1000000 to 1000000 mm" },
        { "order", "job.Order", "FromBottom or FromTop" },
        { "tolerance", "job.ScribeTolerance", "0 to 100 mm" },
        { "hidden", "job.HiddenWidth", "0 to 200 mm" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void Impossible_jobs_are_refused_by_name(string what, string parameter, string words)
    {
        EndCutJob good = new(EdgeCurve.Through(EdgeCurveTests.DemoRear), [Mm(100), Mm(189), Mm(278)], Mm(0));
        Assert.Empty(EndCuts.Check(good));
        EndCutJob bad = what switch
        {
            "edge" => good with { Edge = null! },
            "no lines" => good with { CourseLines = null! },
            "one line" => good with { CourseLines = [Mm(100)] },
            "many lines" => good with { CourseLines = [.. Enumerable.Range(0, 502).Select(static i => Mm(i))] },
            "down" => good with { CourseLines = [Mm(100), Mm(50), Mm(278)] },
            "twice" => good with { CourseLines = [Mm(100), Mm(189), Mm(189.999999)] },
            "below" => good with { CourseLines = [Mm(-0.000001), Mm(189), Mm(278)] },
            "above" => good with { CourseLines = [Mm(100), Mm(189), Mm(994.000001)] },
            "unit" => good with { CourseLines = [Mm(100), new Length(1, (LengthUnit)999), Mm(278)] },
            "datum" => good with { Datum = Mm(3398) },
            "far datum" => good with { Datum = Mm(1e7) },
            "order" => good with { Order = (FittingOrder)2 },
            "tolerance" => good with { ScribeTolerance = Mm(100.000001) },
            _ => good with { HiddenWidth = Mm(-0.000001) },
        };
        IReadOnlyList<InputProblem> problems = EndCuts.Check(bad);
        Assert.Equal(parameter, problems[0].Parameter);
        Assert.Contains(words, problems[0].Message, StringComparison.Ordinal);
        Assert.Equal(parameter, Assert.ThrowsAny<ArgumentException>(() => EndCuts.Schedule(bad)).ParamName);
    }

    [Fact]
    public void All_problems_come_at_once()
    {
        EndCutJob bad = new(null!, [Mm(5), Mm(5)], Mm(1e7)) { Order = (FittingOrder)9, ScribeTolerance = Mm(-1), HiddenWidth = Mm(1000) };
        Assert.Equal(["job.Edge", "job.CourseLines[1]", "job.Datum", "job.Order", "job.ScribeTolerance", "job.HiddenWidth"], EndCuts.Check(bad).Select(static problem => problem.Parameter));
        Assert.Equal("job", Assert.Single(EndCuts.Check(null!)).Parameter);
        Assert.Throws<ArgumentNullException>(() => EndCuts.Schedule(null!));
    }

    /// <summary>The datum may lie a step of the grid before the edge, not on it; a course line at the very end of the edge is within it.</summary>
    [Fact]
    public void Limits_of_the_input_are_met()
    {
        MeasuredEdge edge = EdgeCurve.Straight(new(Mm(0), Mm(1000)), new(Mm(100), Mm(1100)));
        EndCutJob job = new(edge, [Mm(0), Mm(1), Mm(100)], Mm(999.999999));
        Assert.Empty(EndCuts.Check(job));
        Assert.Equal(1e-6, EndCuts.Schedule(job).Courses[0].ShortPoint.Millimeters, 1e-9);
        Assert.Equal("job.Datum", Assert.Single(EndCuts.Check(job with { Datum = Mm(1000) })).Parameter);
        Assert.Equal("job.Datum", Assert.Single(EndCuts.Check(job with { Datum = Mm(1100) })).Parameter);
        Assert.False(EndCuts.Schedule(job with { Datum = Mm(1100.000001) }).IsEdgeAtRear);
    }

    [Fact]
    public void Jobs_compare_by_amount()
    {
        MeasuredEdge edge = EdgeCurve.Straight(new(Mm(0), Mm(1000)), new(Mm(100), Mm(1100)));
        EndCutJob one = new(edge, [Mm(0), Mm(50.8)], Mm(25.4)) { HiddenWidth = Mm(6.35) }, other = new() { Edge = edge, CourseLines = [Mm(0), Inch(2)], Datum = Inch(1), HiddenWidth = Inch(0.25) };
        Assert.Equal(one, other);
        Assert.Equal(one.GetHashCode(), other.GetHashCode());
        Assert.NotEqual(one, other with { CourseLines = [Mm(0), Inch(1)] });
        Assert.NotEqual(one, other with { UnderTrim = true });
        Assert.NotEqual(one, other with { Order = FittingOrder.FromTop });
        Assert.NotEqual(one, other with { ScribeTolerance = Mm(0.5) });
        Assert.NotEqual(one, other with { HiddenWidth = null });
        Assert.NotEqual(one, other with { Datum = Mm(0) });
        Assert.NotEqual(one, other with { Edge = EdgeCurve.Straight(new(Mm(0), Mm(1000)), new(Mm(100), Mm(1100))) });
    }

    [Fact]
    public void A_schedule_reads_as_a_cut_list()
    {
        MeasuredEdge rear = EdgeCurve.Straight(new(Mm(0), Mm(1000)), new(Mm(200), Mm(990)));
        EndCutSchedule ends = EndCuts.Schedule(new EndCutJob(rear, [Mm(0), Mm(100), Mm(200)], Mm(0)) { Order = FittingOrder.FromTop });

        // atan 0.05 = 2.8624°; 5 in 100.
        Assert.Equal(
            "course 2: -2.86° from square, long point 995 mm at the lower line, short point 990 mm; gap 0 mm, wood in the way 0 mm\n"
            + "course 1: -2.86° from square, long point 1000 mm at the lower line, short point 995 mm; gap 0 mm, wood in the way 0 mm",
            ends.ToString());
        Assert.Equal(
            ["courses 2", "courses-to-scribe 0", "least-saw-angle -2.862405226 deg", "greatest-saw-angle -2.862405226 deg", "greatest-change 0 deg", "longest-board 1000 mm", "shortest-short-point 990 mm", "greatest-gap-left 0 mm", "greatest-wood-in-the-way 0 mm", "scribe-tolerance 0.5 mm"],
            ends.Figures().Select(static figure => figure.ToString()));
        Assert.Equal("2 courses from 0 mm to an edge from 0 to 200 mm, straight", ends.Job.ToString());
        WorkingsCheck.Recompute(ends.Explain());
        Assert.All(ends.Courses, static cut => Assert.All(cut.Figures(), static figure => Assert.True(double.IsFinite(figure.Value) && figure.Name.Length > 0)));
    }

    /// <summary>As many courses as are allowed, on an edge of as many points as are allowed.</summary>
    [Fact]
    public void The_greatest_schedule_is_made()
    {
        MeasuredEdge edge = EdgeCurve.Through([.. Enumerable.Range(0, 200).Select(static i => new MeasuredPoint(Mm(100 * i), Mm(5000 + (i % 7))))], EdgeFit.NaturalCubic);
        EndCutSchedule ends = EndCuts.Schedule(new EndCutJob(edge, [.. Enumerable.Range(0, 501).Select(static i => Mm(39 * i))], Mm(0)) { ScribeTolerance = Mm(0.05) });
        Assert.Equal(500, ends.Courses.Count);
        Assert.Contains(ends.Findings, static finding => finding.Code == "boards-end-scribe");
    }
}
