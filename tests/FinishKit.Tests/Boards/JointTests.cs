#pragma warning disable xUnit1051 // the calls are the two-line ones that a host writes; a test of its own cancels
using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Boards;

/// <summary>Joints worked by hand, findings and remedies, refused input.</summary>
public sealed class JointTests
{
    private static readonly Dictionary<string, (JointJob Job, string[] Paths)> s_bad = new(StringComparer.Ordinal)
    {
        ["no runs"] = (Good() with { Runs = [] }, ["job.Runs"]),
        ["runs null"] = (Good() with { Runs = null! }, ["job.Runs"]),
        ["201 runs"] = (Good() with { Runs = [.. Enumerable.Range(0, 201).Select(static i => new JointRun(i, Mm(0), Mm(100)))] }, ["job.Runs"]),
        ["a run null"] = (Good() with { Runs = [null!] }, ["job.Runs[0]"]),
        ["course below 0"] = (Good() with { Runs = [new JointRun(-1, Mm(0), Mm(100))] }, ["job.Runs[0].Course"]),
        ["course over 10,000"] = (Good() with { Runs = [new JointRun(10_001, Mm(0), Mm(100))] }, ["job.Runs[0].Course"]),
        ["start too far"] = (Good() with { Runs = [new JointRun(1, Mm(-100_000.000001), Mm(-99_000))] }, ["job.Runs[0].Start"]),
        ["run too short"] = (Good() with { Runs = [new JointRun(1, Mm(5), Mm(5.999999))] }, ["job.Runs[0].End"]),
        ["run too long"] = (Good() with { Runs = [new JointRun(1, Mm(0), Mm(20_000.000001))] }, ["job.Runs[0].End"]),
        ["run backwards"] = (Good() with { Runs = [new JointRun(1, Mm(100), Mm(0))] }, ["job.Runs[0].End"]),
        ["run in an undefined unit"] = (Good() with { Runs = [new JointRun(1, Mm(0), new Length(1, (LengthUnit)999))] }, ["job.Runs[0].End"]),
        ["name too long"] = (Good() with { Runs = [new JointRun(1, Mm(0), Mm(100)) { Name = new string('x', 81) }] }, ["job.Runs[0].Name"]),
        ["runs of a course overlap"] = (Good() with { Runs = [new JointRun(1, Mm(500), Mm(900)), new JointRun(1, Mm(0), Mm(500.000001))] }, ["job.Runs[0].Start"]),
        ["strips null"] = (Good() with { Strips = null! }, ["job.Strips"]),
        ["201 strips"] = (Good() with { Strips = [.. Enumerable.Range(0, 201).Select(static i => Mm(i))] }, ["job.Strips"]),
        ["strips at one place"] = (Good() with { Strips = [Mm(600), Mm(600)] }, ["job.Strips[1]"]),
        ["strips not in order"] = (Good() with { Strips = [Mm(600), Mm(500), Mm(550)] }, ["job.Strips[1]"]),
        ["no boards"] = (Good() with { Stock = [] }, ["job.Stock"]),
        ["board too short"] = (Good() with { Stock = [new StockBoard(Mm(9.999999), 1)] }, ["job.Stock[0].Length"]),
        ["offcut null"] = (Good() with { Offcuts = [null!] }, ["job.Offcuts[0]"]),
        ["stagger below 0"] = (Good() with { Stagger = -1 }, ["job.Stagger"]),
        ["stagger over 20"] = (Good() with { Stagger = 21 }, ["job.Stagger"]),
        ["shortest piece of nothing"] = (Good() with { ShortestPiece = Mm(0.999999) }, ["job.ShortestPiece"]),
        ["too little effort"] = (Good() with { Effort = 999 }, ["job.Effort"]),
        ["effort of nothing"] = (Good() with { Effort = 1 }, ["job.Effort"]),
        ["too much effort"] = (Good() with { Effort = 2_000_000_001 }, ["job.Effort"]),
        ["trim takes the board"] = (Good() with { Stock = [new StockBoard(Mm(30), 1)] }, ["job.EndTrim"]),
        ["all at once"] = (new JointJob([new JointRun(-1, Mm(0), Mm(0))], [Mm(1e9)], [null!]) { Stagger = -1, ShortestPiece = Mm(-1), Kerf = Mm(-1), Effort = 999 },
            ["job.Runs[0].Course", "job.Strips[0]", "job.Stock[0]", "job.Kerf", "job.Effort", "job.Stagger", "job.ShortestPiece"]),
    };

    public static TheoryData<string> BadJobs() => [.. s_bad.Keys];

    [Theory]
    [MemberData(nameof(BadJobs))]
    public void Bad_input_is_named_by_its_path(string name)
    {
        (JointJob job, string[] paths) = s_bad[name];
        Assert.Equal(paths, BoardJoints.Check(job).Select(static problem => problem.Parameter));
        Assert.Equal(paths[0], Assert.ThrowsAny<ArgumentException>(() => BoardJoints.Choose(job)).ParamName);
    }

    /// <summary>Runs of one course may meet, and a nanometre more of board than a run needs spares it the joint.</summary>
    [Fact]
    public void Limits_exactly_met_are_met()
    {
        Assert.Empty(BoardJoints.Check(Good() with { Runs = [new JointRun(1, Mm(0), Mm(500)), new JointRun(1, Mm(500), Mm(501))] }));
        Assert.Equal(0, BoardJoints.Choose(Good() with { Runs = [new JointRun(1, Mm(0), Mm(2408))] }).Joints);
        Assert.Equal(1, BoardJoints.Choose(Good() with { Runs = [new JointRun(1, Mm(0), Mm(2408.000001))] }).Joints);

        Assert.All([1000, 2_000_000_000], static effort => Assert.Empty(BoardJoints.Check(Good() with { Effort = effort })));

        // A joint at 600 leaves 2408: both limits met. A nanometre more and only 1200 to 2400 serve.
        JointJob one = Good() with { Runs = [new JointRun(1, Mm(0), Mm(3008))], Strips = [Mm(600)] };
        Assert.Equal([600, 2408.0], BoardJoints.Choose(one).Runs[0].Pieces.Select(static piece => piece.Millimeters));
        Assert.True(BoardJoints.Choose(one with { ShortestPiece = Mm(600.000001) }).HasProblem);
        Assert.True(BoardJoints.Choose(one with { Runs = [new JointRun(1, Mm(0), Mm(3008.000001))] }).HasProblem);
    }

    [Fact]
    public void Choose()
    {
        #region example: BoardJoints.Choose
        JointRun[] courses = [new(1, Mm(0), Mm(3600)), new(2, Mm(0), Mm(3600)), new(3, Mm(0), Mm(3600))];
        JointLayout wall = BoardJoints.Choose(new JointJob(courses, [Mm(600), Mm(1200), Mm(1800), Mm(2400), Mm(3000)], [new StockBoard(Mm(2438), 9.80m)]));
        int boards = wall.Cutting.Boards.Count;      // 5: a joint at 1200 and one at 2400 in turn, and 2 x 1200 and a kerf are 2402.8 of 2408; joints at 1800 would take 6
        decimal cost = wall.Cost;                    // 49.00, and wall.Proven: four boards do not hold 10,800 mm
        #endregion
        Assert.Equal((5, 49.00m, 49.00m, true), (boards, cost, wall.LeastCost, wall.Proven));
        Assert.Equal((3, 0.0), (wall.Joints, wall.Gap));
        Assert.All(wall.Runs, static run => Assert.Equal([1200, 2400.0], run.Pieces.Select(static piece => piece.Millimeters).Order()));
        Assert.NotEqual(wall.Runs[0].Joints[0].Strip, wall.Runs[1].Joints[0].Strip);
        Assert.Equal(wall.Runs[0].Joints[0].Strip, wall.Runs[2].Joints[0].Strip);
        Assert.Equal([1, 3], wall.JointStrips);
        Assert.Equal(["course 1, piece 1", "course 1, piece 2", "course 2, piece 1"], wall.Cutting.Job.Parts.Take(3).Select(static part => part.Name));
        Assert.Equal(["boards-joint-strip-wide", "boards-look-behind", "stock-no-spare"], wall.Findings.Select(static finding => finding.Code));
        Assert.Equal(["stagger", "shortest-piece", "kerf", "end-trim", "least-offcut"], wall.DefaultsUsed.Select(static used => used.Figure.Name));
        WorkingsCheck.Recompute(wall.Explain());
    }

    /// <summary>
    /// Two courses of 2000, joints at 900, 1000 or 1100, boards of 1010 at 10 and 1200 at 11, no kerf. At 1000 twice: four boards of 1010, 40.
    /// A stagger of 1 forbids that: 900 and 1100 of one course and two of 1000 are 10 + 11 + 20 = 41. With 2 there remain 900 and 1100 twice, 42.
    /// </summary>
    [Fact]
    public void What_the_stagger_costs()
    {
        JointJob job = new([new JointRun(7, Mm(0), Mm(2000)), new JointRun(8, Mm(0), Mm(2000))], [Mm(900), Mm(1000), Mm(1100)], [new StockBoard(Mm(1010), 10), new StockBoard(Mm(1200), 11)]) { Kerf = Mm(0), EndTrim = Mm(0) };
        Assert.Equal([40m, 41m, 42m], new[] { 0, 1, 2 }.Select(stagger => BoardJoints.Choose(job with { Stagger = stagger }).Cost));
        Assert.All([0, 1, 2], stagger => Assert.True(BoardJoints.Choose(job with { Stagger = stagger }).Proven));

        // Courses that are no neighbours do not restrict each other.
        Assert.Equal(40m, BoardJoints.Choose(job with { Stagger = 3, Runs = [job.Runs[0], job.Runs[1] with { Course = 9 }] }).Cost);
        Assert.True(BoardJoints.Choose(job with { Stagger = 3 }).HasProblem);
    }

    /// <summary>
    /// A course of 3000 with joints at 1000, 1500 and 2000, boards of 2000 at 10, of 1000 at 3: with one joint 2000 + 1000 is 13, 1500 twice 20;
    /// with one more, three of 1000 at 9.
    /// </summary>
    [Fact]
    public void One_joint_more_is_taken_where_it_saves_money()
    {
        JointJob job = new([new JointRun(1, Mm(0), Mm(3000))], [Mm(1000), Mm(1500), Mm(2000)], [new StockBoard(Mm(2000), 10), new StockBoard(Mm(1000), 3)]) { Kerf = Mm(0), EndTrim = Mm(0) };
        JointLayout layout = BoardJoints.Choose(job);
        Assert.Equal((2, 9m, true), (layout.Joints, layout.Cost, layout.Proven));
        Assert.Equal(1, layout.Runs[0].FewestJoints);

        // At 5 apiece it does not: 15 against 15 with one joint, and fewer joints are better.
        layout = BoardJoints.Choose(job with { Stock = [new StockBoard(Mm(2000), 10), new StockBoard(Mm(1000), 5)] });
        Assert.Equal((1, 15m, true), (layout.Joints, layout.Cost, layout.Proven));
    }

    /// <summary>
    /// Eight courses of 3400, strips every 340. Boards of 2438 alone: eleven hold 26,488 mm of 27,200, so twelve, 117.60. With boards of 3658 at 16.90 (3628 can
    /// be used) every course could be whole, at 135.20. Cheaper than 117.60 is at the least one such and ten of 2438, 114.90: of less cost are 6 and 3, 5 and 3,
    /// 4 and 4, 3 and 5, 8 and 2, 9 and 1 or 11 and none, which hold no more than 26,548 mm, kerfs counted. In lengths of a strip's distance a course is ten
    /// and a board of 2438 holds seven: 7 + 3, 5 + 5, 3 + 4 + 3 and 4 + 2 + 4 fill ten boards with seven courses.
    /// </summary>
    [Fact]
    public void Boards_that_need_no_joints_take_no_joints_away()
    {
        JointRun[] courses = [.. Enumerable.Range(0, 8).Select(static i => new JointRun(i, Mm(0), Mm(3400)))];
        JointJob job = new(courses, [.. Enumerable.Range(1, 9).Select(static i => Mm(i * 340))], [new StockBoard(Mm(2438), 9.80m)]);
        JointLayout one = BoardJoints.Choose(job);
        Assert.Equal((117.60m, true), (one.Cost, one.Proven));
        JointLayout two = BoardJoints.Choose(job with { Stock = [.. job.Stock, new StockBoard(Mm(3658), 16.90m)] });
        Assert.InRange(two.Cost, 114.90m, 117.60m);
        Assert.True(two.LeastCost <= 114.90m || two.Cost == two.LeastCost);

        // The page's own example: five of 2438 are 49.00; one of 4267 at 25 and two of 2438 hold 9061 mm of 10,800.
        JointLayout page = BoardJoints.Choose(Good() with { Runs = [.. Good().Runs, new JointRun(3, Mm(0), Mm(3600))], Stock = [.. Good().Stock, new StockBoard(Mm(4267), 25)] });
        Assert.Equal((49.00m, true), (page.Cost, page.Proven));

        // At 16.33, two of 4267 hold a whole course and a piece of 600 each, and one of 2438 what is left of the third: 42.46. Four of 2438, or one of 4267 and
        // two of 2438, hold under 10,800 mm.
        page = BoardJoints.Choose(page.Job with { Stock = [.. Good().Stock, new StockBoard(Mm(4267), 16.33m)] });
        Assert.Equal((42.46m, 2, true), (page.Cost, page.Joints, page.Proven));
    }

    /// <summary>
    /// Two boards of 2000 and two of 1800, of which 1970 and 1770 can be used, for courses of 1811, 1788 and 1854: whole ones need three of 2000. With joints at
    /// 528, 528 and 528, 1017, 1498 the pieces are 528 + 1283, 528 + 1260 and 528 + 489 + 481 + 356, of 5453 mm: one of 2000 and two of 1800, 29.58, hold 5510.
    /// </summary>
    [Fact]
    public void Where_boards_are_few_joints_are_found_that_they_suffice_for()
    {
        JointJob job = new([new JointRun(1, Mm(0), Mm(1811)), new JointRun(2, Mm(0), Mm(1788)), new JointRun(3, Mm(0), Mm(1854))], [Mm(528), Mm(1017), Mm(1498)],
            [new StockBoard(Mm(2000), 12.48m) { Available = 2 }, new StockBoard(Mm(1800), 8.55m) { Available = 2 }])
        { Stagger = 0, ShortestPiece = Mm(300) };
        JointLayout layout = BoardJoints.Choose(job);
        Assert.False(layout.HasProblem);
        Assert.Equal((29.58m, true), (layout.Cost, layout.Proven));
        Assert.Equal(29.58m, JointTrial.BruteForce(job, out bool _, out int _));
    }

    /// <summary>A strip half a millimetre from the end makes no piece: no board cuts one under 1 mm.</summary>
    [Fact]
    public void A_strip_at_the_very_end_of_a_run_makes_no_piece()
    {
        JointJob job = new([new JointRun(1, Mm(0), Mm(2408.4))], [Mm(0.5)], [new StockBoard(Mm(2438), 9.80m)]);
        Assert.Empty(BoardJoints.Check(job));
        JointLayout layout = BoardJoints.Choose(job);
        Assert.Contains("1 mm to 2408 mm", Assert.Single(layout.Findings, static finding => finding.Code == "boards-joint-none").Message, StringComparison.Ordinal);
        Assert.Empty(layout.Runs[0].Joints);

        // A millimetre is one.
        layout = BoardJoints.Choose(job with { Strips = [Mm(1)] });
        Assert.Equal([1, 2407.4], layout.Runs[0].Pieces.Select(static piece => piece.Millimeters));
        Assert.Equal(["boards-joint-none", "boards-joint-piece-short"], layout.Findings.Where(static finding => finding.Severity > Severity.Note).Select(static finding => finding.Code));
    }

    /// <summary>20 m from boards of 1829 take eleven joints at the least (1799 can be used); strips every 400 mm are in reach of each other.</summary>
    [Fact]
    public void Why_a_run_cannot_be_jointed_is_told_apart()
    {
        JointJob job = new([new JointRun(1, Mm(0), Mm(20_000))], [.. Enumerable.Range(1, 49).Select(static i => Mm(i * 400))], [new StockBoard(Mm(1829), 7.40m)]);
        Assert.Contains("more than 9 joints", None(job), StringComparison.Ordinal);
        Assert.DoesNotContain("no strips", None(job), StringComparison.Ordinal);
        Assert.False(BoardJoints.Choose(job with { Stock = [new StockBoard(BoardJoints.Choose(job).BoardToBuy!.Value, 9)] }).HasProblem);

        // A gap between strips as well: more joints would not help.
        Assert.Contains("no strips", None(job with { Strips = [.. job.Strips.Where(static strip => strip.Millimeters is < 4100 or > 5900)] }), StringComparison.Ordinal);

        // None to be had of any kind, or not a whole pack: strips are not to blame.
        foreach (StockBoard board in new[] { new StockBoard(Mm(2438), 9.80m) { Available = 0 }, new StockBoard(Mm(2438), 9.80m) { Available = 3, Pack = 4 } })
        {
            Assert.Contains("no board is to be had", None(Good() with { Stock = [board] }), StringComparison.Ordinal);
            Assert.DoesNotContain("strips in reach", None(Good() with { Stock = [board] }), StringComparison.Ordinal);
        }

        static string None(JointJob job) => Assert.Single(BoardJoints.Choose(job).Findings, static finding => finding.Code == "boards-joint-none").Message;
    }

    /// <summary>Both courses have the one joint at 1500. A stagger of 2 needs another strip; boards of 3000 need no joint, 3030 with two trims.</summary>
    [Fact]
    public void Where_the_stagger_cannot_be_kept_the_remedies_make_it_possible()
    {
        JointJob job = Good() with { Runs = [new JointRun(1, Mm(0), Mm(3000)), new JointRun(2, Mm(0), Mm(3000))], Strips = [Mm(300), Mm(1500), Mm(2700)] };
        JointLayout layout = BoardJoints.Choose(job);
        Assert.Equal(["boards-joint-none", "boards-joint-close"], layout.Findings.Where(static finding => finding.Severity > Severity.Note).Select(static finding => finding.Code));
        Assert.Null(layout.LeastCost);
        Assert.False(layout.Proven);
        Assert.Empty(layout.Cutting.Uncut);
        Assert.Contains(new Figure("nearest", 0, string.Empty), layout.Findings[1].Values);
        Assert.Equal(3030, layout.BoardToBuy!.Value.Millimeters);
        Assert.False(BoardJoints.Choose(job with { Stock = [.. job.Stock, new StockBoard(layout.BoardToBuy.Value, 20)] }).HasProblem);

        // One more strip is one apart at most where a piece can end; so none is promised.
        Assert.Null(layout.StripToAdd);
        layout = BoardJoints.Choose(job with { Stagger = 1 });
        Assert.True(layout.HasProblem);
        Assert.False(BoardJoints.Choose(job with { Stagger = 1, Strips = [.. job.Strips.Append(layout.StripToAdd!.Value).OrderBy(static strip => strip.Millimeters)] }).HasProblem);
    }

    /// <summary>A strip at 500 alone for 2800: the rest of 2300 fits the board, the 500 is short. The only one at 100: nothing fits.</summary>
    [Fact]
    public void A_piece_too_short_and_a_run_out_of_reach_are_told_apart()
    {
        JointJob job = Good() with { Runs = [new JointRun(1, Mm(0), Mm(2800)), new JointRun(5, Mm(0), Mm(400))], Strips = [Mm(500)] };
        JointLayout layout = BoardJoints.Choose(job);
        Assert.Equal(["boards-joint-none", "boards-joint-piece-short"], layout.Findings.Where(static finding => finding.Severity > Severity.Note).Select(static finding => finding.Code));
        Assert.Contains(layout.Findings, static finding => finding.Code == "boards-joint-run-short");
        Assert.Equal([500, 2300.0], layout.Runs[0].Pieces.Select(static piece => piece.Millimeters));
        JointLayout mended = BoardJoints.Choose(job with { Strips = [Mm(500), layout.StripToAdd!.Value] });
        Assert.False(mended.HasProblem);

        layout = BoardJoints.Choose(job with { Strips = [Mm(100)] });
        Assert.Equal(["boards-joint-none", "stock-part-too-long"], layout.Findings.Where(static finding => finding.Severity > Severity.Note).Select(static finding => finding.Code));
        Assert.Equal(2800, Assert.Single(layout.Runs[0].Pieces).Millimeters);
        Assert.Null(layout.Runs[0].FewestJoints);
        Assert.NotNull(layout.StripToAdd);
    }

    [Fact]
    public void Jobs_are_equal_by_amount_and_give_the_same_layout_in_every_unit()
    {
        JointJob metres = new([new JointRun(1, Length.FromMeters(0), Length.FromMeters(3.6))], [Length.FromCentimeters(120), Length.FromInches(96)], [new StockBoard(Length.FromMeters(2.438), 9.80m)]) { Stagger = 1, ShortestPiece = Length.FromMeters(0.6) };
        JointJob millimetres = new([new JointRun(1, Mm(0), Mm(3600))], [Mm(1200), Mm(2438.4)], [new StockBoard(Mm(2438), 9.80m)]) { Stagger = 1, ShortestPiece = Mm(600) };
        Assert.Equal(millimetres, metres);
        Assert.Equal(millimetres.GetHashCode(), metres.GetHashCode());
        Assert.NotEqual(millimetres, metres with { Stagger = 2 });
        Assert.NotEqual(millimetres, metres with { Strips = [Mm(1200)] });
        Assert.NotEqual(millimetres, metres with { Runs = [new JointRun(2, Mm(0), Mm(3600))] });
        Assert.NotEqual(millimetres, metres with { Offcuts = [] });
        Assert.Equal(JointProperties.Written(BoardJoints.Choose(millimetres)), JointProperties.Written(BoardJoints.Choose(metres)));
    }

    [Fact]
    public void A_search_can_be_cancelled_and_tells_how_far_it_is()
    {
        using CancellationTokenSource source = new();
        source.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => BoardJoints.Choose(Good(), null, source.Token));
        Told told = new();
        BoardJoints.Choose(Good(), told, CancellationToken.None);
        Assert.Equal(1, told.Last);
        Assert.InRange(told.Greatest, 0, 1);
    }

    /// <summary>Cancelled from its own progress in mid-search, which is not a matter of time: at the next look it throws, and tells no more.</summary>
    [Fact]
    public void A_search_under_way_is_cancelled_at_the_next_look()
    {
        // The sixth of these walls takes well over a million nodes.
        Random random = new(1849);
        JointJob job = JointTrial.Wall(random);
        for (int i = 1; i < 6; i++)
        {
            job = JointTrial.Wall(random);
        }

        List<double> all = [];
        BoardJoints.Choose(job, new Teller(all.Add));
        Assert.Equal(all.Order(), all);
        Assert.True(all.Count > 20, $"told {all.Count} times");
        foreach (int at in new[] { 1, 7, all.Count - 2 })
        {
            using CancellationTokenSource source = new();
            List<double> told = [];
            Teller teller = new(value =>
            {
                told.Add(value);
                if (told.Count == at)
                {
                    source.Cancel();
                }
            });
            Assert.Throws<OperationCanceledException>(() => BoardJoints.Choose(job, teller, source.Token));
            Assert.Equal(all.Take(at), told);
        }
    }

    /// <summary>3600 with 3 at both ends: boards of 3594, which of 2408 ask for a joint. 2414 so is 2408 and asks for none; a thousandth less of gap at each end, and it does.</summary>
    [Fact]
    public void The_gap_at_the_ends_is_among_the_workings()
    {
        JointJob job = Good() with { Runs = [new JointRun(1, Mm(0), Mm(3600)), new JointRun(2, Mm(0), Mm(2414))], EndGap = Mm(3) };
        JointLayout layout = BoardJoints.Choose(job);
        Workings workings = layout.Explain();
        WorkingsCheck.Recompute(workings);
        Assert.Equal([3600, 2414.0], Values(workings, "a"));
        Assert.Equal([3.0], Values(workings, "g")); // what is the same for every run is said once
        Assert.Equal([2408.0], Values(workings, "C"));
        Assert.Equal([3594, 2408.0], Values(workings, "l"));
        Assert.Equal([1, 0.0], Values(workings, "f"));
        Assert.Equal(layout.Runs.Select(static run => run.Pieces.Sum(static piece => piece.Millimeters)), Values(workings, "l"));
        workings = BoardJoints.Choose(job with { EndGap = Mm(2.999) }).Explain();
        WorkingsCheck.Recompute(workings);
        Assert.Equal([1, 1.0], Values(workings, "f"));

        static IEnumerable<double> Values(Workings workings, string symbol) => workings.Steps.Where(step => step.Value.Name.TrimEnd('0', '1', '2', '_') == symbol).Select(static step => step.Value.Value);
    }

    /// <summary>Boards are sold up to 20 m: of 19,970 and two trims of 15, which is the longest run that they can do whole. A nanometre more and there is none to buy.</summary>
    [Fact]
    public void No_board_is_named_that_is_longer_than_boards_are()
    {
        JointJob job = Good() with { Runs = [new JointRun(1, Mm(0), Mm(19_970))], Strips = [] };
        Length longest = BoardJoints.Choose(job).BoardToBuy!.Value;
        Assert.Equal(20_000, longest.Millimeters);
        Assert.False(BoardJoints.Choose(job with { Stock = [new StockBoard(longest, 90)] }).HasProblem);

        JointLayout none = BoardJoints.Choose(job with { Runs = [new JointRun(1, Mm(0), Mm(19_970.000001))] });
        Assert.Null(none.BoardToBuy);
        Finding finding = Assert.Single(none.Findings, static finding => finding.Code == "boards-joint-none");
        Assert.Contains("no boards of 20000 mm or less were found to do", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(finding.Values, static figure => figure.Name == "board-to-buy");

        // A strip at 5000: the rest of 15,000 is a piece. With none under 6000 asked there is no joint.
        JointJob jointed = job with { Runs = [new JointRun(1, Mm(0), Mm(20_000))], Strips = [Mm(5000)] };
        Assert.Equal(15_030, BoardJoints.Choose(jointed).BoardToBuy!.Value.Millimeters);
        Assert.Null(BoardJoints.Choose(jointed with { ShortestPiece = Mm(6000) }).BoardToBuy);
    }

    internal static JointJob Good() => new([new JointRun(1, Mm(0), Mm(3600)), new JointRun(2, Mm(0), Mm(3600))], [Mm(600), Mm(1200), Mm(1800), Mm(2400), Mm(3000)], [new StockBoard(Mm(2438), 9.80m)]);

    private sealed class Teller(Action<double> tell) : IProgress<double>
    {
        public void Report(double value) => tell(value);
    }

    private sealed class Told : IProgress<double>
    {
        internal double Last { get; private set; }

        internal double Greatest { get; private set; }

        public void Report(double value) => (Last, Greatest) = (value, Math.Max(value, Greatest));
    }
}
