using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Threading;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Stock;

/// <summary>Cutting from a roll: by hand, against trying everything, refused input, and what holds for every job.</summary>
public sealed class RollTests(ITestOutputHelper output)
{
    private static readonly Dictionary<string, (RollJob Job, string[] Paths)> s_bad = new(StringComparer.Ordinal)
    {
        ["no parts"] = (Good() with { Parts = [] }, ["job.Parts"]),
        ["parts null"] = (Good() with { Parts = null! }, ["job.Parts"]),
        ["501 parts"] = (Good() with { Parts = [.. Enumerable.Repeat(Part(40, 50), 501)] }, ["job.Parts"]),
        ["a part null"] = (Good() with { Parts = [null!] }, ["job.Parts[0]"]),
        ["part too short"] = (Good() with { Parts = [Part(0.999999, 50)] }, ["job.Parts[0].Along"]),
        ["part too long"] = (Good() with { Parts = [Part(20000.000001, 50)] }, ["job.Parts[0].Along"]),
        ["part too narrow"] = (Good() with { Parts = [Part(50, 0.999999)] }, ["job.Parts[0].Across"]),
        ["part too wide"] = (Good() with { Parts = [Part(50, 20000.000001)] }, ["job.Parts[0].Across"]),
        ["none of a part"] = (Good() with { Parts = [Part(40, 50, 0)] }, ["job.Parts[0].Count"]),
        ["too many of a part"] = (Good() with { Parts = [Part(40, 50, 1001)] }, ["job.Parts[0].Count"]),
        ["10001 pieces"] = (Good() with { Parts = [.. Enumerable.Repeat(Part(40, 50, 1000), 10), Part(40, 51)] }, ["job.Parts"]),
        ["a name too long"] = (Good() with { Parts = [Part(40, 50) with { Name = new string('x', 101) }] }, ["job.Parts[0].Name"]),
        ["roll too narrow"] = (Good() with { Width = Mm(9.999999), Parts = [Part(5, 5)] }, ["job.Width"]),
        ["roll too wide"] = (Good() with { Width = Mm(20000.000001) }, ["job.Width"]),
        ["selvedge too wide"] = (Good() with { Selvedge = Mm(200.000001) }, ["job.Selvedge"]),
        ["selvedge takes the roll"] = (Good() with { Selvedge = Mm(49.6), Width = Mm(100) }, ["job.Selvedge"]),
        ["too much between"] = (Good() with { Between = Mm(100.000001) }, ["job.Between"]),
        ["sold by nothing"] = (Good() with { SoldBy = Mm(0) }, ["job.SoldBy"]),
        ["no effort"] = (Good() with { Effort = 0 }, ["job.Effort"]),
        ["all at once"] = (new RollJob([Part(0, 0, -1)], Mm(0)) { Selvedge = Mm(-1), Between = Mm(-1), SoldBy = Mm(-1), Effort = -1 },
            ["job.Width", "job.Selvedge", "job.Between", "job.SoldBy", "job.Effort", "job.Parts[0].Along", "job.Parts[0].Across", "job.Parts[0].Count"]),
    };

    public static TheoryData<string> BadJobs() => [.. s_bad.Keys];

    [Theory]
    [MemberData(nameof(BadJobs))]
    public void Bad_input_is_named_by_its_path(string name)
    {
        (RollJob job, string[] paths) = s_bad[name];
        Assert.Equal(paths, RollCutting.Check(job).Select(static problem => problem.Parameter));
        Assert.Equal(paths[0], Assert.ThrowsAny<ArgumentException>(() => RollCutting.Cut(job)).ParamName);
    }

    [Fact]
    public void Cut()
    {
        #region example: RollCutting.Cut
        RollJob job = new([new RollPart(Mm(1100), Mm(900), 2, mayTurn: false), new RollPart(Mm(700), Mm(480), 3, mayTurn: false)], Mm(1400));
        RollPlan plan = RollCutting.Cut(job);
        double length = plan.Length.Millimeters;   // 2200: the wide two one behind the other, the three others (2100) beside them, 900 + 480 across
        bool proven = plan.Proven;                 // true: the wide two never go side by side
        #endregion
        Assert.Equal((2200, true), (length, proven));
        RollCheck.Holds(plan);
        Assert.Equal(2200, plan.LengthToBuy.Millimeters);

        // 2 x 0.99 + 3 x 0.336 = 2.988 of 2.2 x 1.4 = 3.08 m2.
        Assert.Equal(2.988 / 3.08, plan.Used, 9);
        Assert.Equal(["stock-roll-no-spare"], plan.Findings.Select(static finding => finding.Code));
        WorkingsCheck.Recompute(plan.Explain());
    }

    /// <summary>900 + 480 = 1380 across: with 20 between them a roll of 1400 just does, with selvedges of 5 one of 1410; a nanometre more and the narrow three lie behind.</summary>
    [Fact]
    public void Room_between_and_selvedges_count_to_the_nanometre()
    {
        // One behind the other: 2 x 1100 and 20 between them; the narrow ones 3 x 700 + 40 = 2140 beside.
        Assert.Equal(2220, Length(Good() with { Between = Mm(20) }));

        // Not beside: 2220, 20, and two of 480 side by side (980 of 1400) with one more behind: 2220 + 20 + 700 + 20 + 700.
        Assert.Equal(2220 + 20.000001 + 0.000001 + 1420.000001, Length(Good() with { Between = Mm(20.000001) }), 6);
        Assert.Equal(2220, Length(Good() with { Between = Mm(20), Width = Mm(1410), Selvedge = Mm(5) }));
        Assert.NotEqual(2220, Length(Good() with { Between = Mm(20), Width = Mm(1410), Selvedge = Mm(5.000001) }));
        RollPlan sold = RollCutting.Cut(Good() with { SoldBy = Mm(500) });
        RollCheck.Holds(sold);
        Assert.Equal(2500, sold.LengthToBuy.Millimeters);
        Assert.Equal(2200, RollCutting.Cut(Good() with { SoldBy = Mm(100) }).LengthToBuy.Millimeters);
        Assert.Equal(2300, RollCutting.Cut(Good() with { SoldBy = Mm(100), Parts = [Part(1100.000001, 900, 2)] }).LengthToBuy.Millimeters);

        static double Length(RollJob job)
        {
            RollPlan plan = RollCutting.Cut(job with { Effort = 1_000_000 });
            RollCheck.Holds(plan);
            return plan.Length.Millimeters;
        }
    }

    /// <summary>Two of 300 along and 1500 across do not go across 1400; turned they lie side by side, 1500 along.</summary>
    [Fact]
    public void A_piece_turns_only_where_it_may()
    {
        RollPlan plan = RollCutting.Cut(Good() with { Parts = [Part(300, 1500, 2, true)] });
        RollCheck.Holds(plan);
        Assert.Equal((1500, true), (plan.Length.Millimeters, plan.Proven));
        Assert.All(plan.Pieces, static piece => Assert.True(piece.IsTurned));
        RollPlan locked = RollCutting.Cut(Good() with { Parts = [Part(300, 1500, 2)] });
        RollCheck.Holds(locked);
        Assert.Equal(2, Assert.Single(locked.TooWide).Count);
    }

    /// <summary>A piece is as wide as what can be used of the roll, or a nanometre wider; one that may turn goes if either side does.</summary>
    [Fact]
    public void A_piece_that_does_not_go_across_is_named_and_the_rest_is_cut()
    {
        RollJob job = Good() with { Selvedge = Mm(10), Parts = [Part(1100, 900), Part(50, 1380.000001, 3) with { Name = "a headliner" }, Part(1380.000001, 1500, 1, true), Part(1500, 1380, 1, true)] };
        RollPlan plan = RollCutting.Cut(job);
        RollCheck.Holds(plan);
        Assert.Equal([(1, 3), (2, 1)], plan.TooWide.Select(static part => (part.Part, part.Count)));
        Assert.Equal([0, 3], plan.Pieces.Select(static piece => piece.Part).Order());
        Assert.Equal(2600, plan.Length.Millimeters); // 1100 and 1500: 900 and 1380 do not go side by side, nor 1500 across
        Assert.Equal((true, false), (plan.HasProblem, plan.Proven));
        Finding wide = plan.Findings[0];
        Assert.Equal(("stock-roll-too-wide", Severity.Problem), (wide.Code, wide.Severity));
        Assert.Equal([4, 1380], wide.Values.Select(static value => value.Value));
        Assert.StartsWith("4 pieces do not go across the 1380 mm of the roll that can be used, and are not cut: 50 along x 1380.000001 mm across a headliner, ", wide.Message, StringComparison.Ordinal);
        Assert.Empty(RollCutting.Check(job));
        Assert.Empty(RollCutting.Cut(job with { Parts = [Part(50, 1380, 3)] }).TooWide);

        // Turning is named only where it would help: not for what may turn already, nor for what is too large both ways.
        Assert.EndsWith("Join them with a seam, let them turn where nap and stretch allow it, or buy a wider roll.", wide.Message, StringComparison.Ordinal);
        Assert.All([Part(1500, 1600, 1, true), Part(1380.000001, 1600)], large =>
            Assert.EndsWith("Join it with a seam, or buy a wider roll.", RollCutting.Cut(job with { Parts = [large] }).Findings[0].Message, StringComparison.Ordinal));
        Assert.Contains("let it turn", RollCutting.Cut(job with { Parts = [Part(1380, 1600)] }).Findings[0].Message, StringComparison.Ordinal);

        // The rest is cut as if it were all there is, in the job's own numbers.
        RollPlan rest = RollCutting.Cut(job with { Parts = [job.Parts[0], job.Parts[3]] });
        Assert.Equal((rest.Length, rest.LeastLength, rest.Used, rest.Nodes), (plan.Length, plan.LeastLength, plan.Used, plan.Nodes));

        // Nothing goes across: nothing is bought.
        RollPlan none = RollCutting.Cut(job with { Parts = [job.Parts[1]], SoldBy = Mm(100) });
        Assert.Empty(none.Pieces);
        Assert.Equal((0, 0, 0, 0, 0, false), (none.Length.Millimeters, none.LeastLength.Millimeters, none.LengthToBuy.Millimeters, none.Used, none.Gap, none.Proven));
        Assert.Equal("0 mm of the roll, not all pieces cut", none.ToString()[..36]);
        WorkingsCheck.Recompute(none.Explain());
    }

    /// <summary>
    /// A locked piece takes its own length, though turned it would take less; of two that may turn, 500 along and 750 across of 1400 or the other way
    /// round, side by side they take 750: no bound may count them one behind the other, 1000, because 750 is more than half of the roll.
    /// </summary>
    [Fact]
    public void The_bound_knows_what_may_turn()
    {
        RollPlan locked = RollCutting.Cut(Good() with { Parts = [Part(1000, 300)] });
        Assert.Equal((1000, 1000, true), (locked.Length.Millimeters, locked.LeastLength.Millimeters, locked.Proven));
        RollPlan turned = RollCutting.Cut(Good() with { Parts = [Part(500, 750, 2, true)], Effort = 100_000 });
        RollCheck.Holds(turned);
        Assert.Equal(750, turned.Length.Millimeters);
        Assert.True(turned.LeastLength.Millimeters <= 750);
    }

    /// <summary>
    /// On 100: one of 90 x 90 and two 50 along by 80 across lie alone, 190. Two of 60 x 60 leave 40 beside them for two 70 along by 30 across: one square at the left from 0, a strip
    /// at the right from 0 to 70, behind it the other square from 70 to 130, and the other strip at the left from 60 to 130. That is 320, where squares and strips in lanes take 330.
    /// </summary>
    [Fact]
    public void Pieces_are_moved_until_no_shorter_layout_is_found()
    {
        RollPlan plan = RollCutting.Cut(new RollJob([Part(60, 60, 2), Part(50, 80, 2), Part(70, 30, 2), Part(90, 90)], Mm(100)) { Effort = 100_000 });
        RollCheck.Holds(plan);
        Assert.Equal(320, plan.Length.Millimeters);
    }

    /// <summary>
    /// On a roll of 10 pieces of 5 x 6, 5 x 4 and 3 x 3 that may turn. 6 + 4 across leave the square behind 5: 8. Both turned take 5 + 5 across, 6 and 4 along,
    /// and the square goes behind the shorter: 4 + 3 = 7. Both have to be tried turned first.
    /// </summary>
    [Fact]
    public void Pieces_are_tried_turned_first_too()
    {
        RollPlan plan = RollCutting.Cut(new RollJob([Part(5, 6, 1, true), Part(5, 4, 1, true), Part(3, 3, 1, true)], Mm(10)) { Effort = 100_000 });
        RollCheck.Holds(plan);
        Assert.Equal(7, plan.Length.Millimeters);
        string turned = plan.Findings.Single(static finding => finding.Code == "stock-roll-piece-turned").Message;
        Assert.StartsWith("2 pieces lie across the roll", turned, StringComparison.Ordinal);

        // A roll may be of foam: it is not said to have a nap.
        Assert.Contains("foam and film without a direction do not mind", turned, StringComparison.Ordinal);
    }

    /// <summary>One to five pieces in whole millimetres against trying everything: never shorter than possible, the bound never above it, always as short.</summary>
    [Fact]
    public void Small_jobs_are_as_short_as_trying_everything()
    {
        Random random = new(815);
        int best = 0, proven = 0;
        const int All = 500;
        List<string> faults = [];
        for (int trial = 0; trial < All; trial++)
        {
            int width = random.Next(40, 100), between = random.Next(0, 4);
            List<RollPart> parts = [];
            for (int left = random.Next(1, 6); left > 0; left--)
            {
                int across = random.Next(0, 2) == 0 ? ((width - between) / 2) + random.Next(-1, 2) : random.Next(5, width + 1);
                parts.Add(Part(random.Next(5, 90), across, 1, random.Next(0, 2) == 0));
            }

            RollPlan plan = RollCutting.Cut(new RollJob(parts, Mm(width + 4)) { Between = Mm(between), Selvedge = Mm(2), Effort = 200_000 }, cancellation: TestContext.Current.CancellationToken);
            RollCheck.Holds(plan);
            long least = new NestingOracle([.. parts.Select(part => ((long)part.Across.Millimeters + between, (long)part.Along.Millimeters + between, part.MayTurn))], sawn: false).LeastLength(width + between) - between;
            if (plan.Length.Millimeters < least || plan.LeastLength.Millimeters > least)
            {
                faults.Add($"{trial}: {plan}, {least} possible");
            }

            best += plan.Length.Millimeters == least ? 1 : 0;
            proven += plan.Proven ? 1 : 0;
        }

        output.WriteLine($"{best} of {All} as short as possible, {proven} proven");
        Assert.Empty(faults);
        Assert.True(best == All && proven >= 0.4 * All, $"{best} of {All} as short as possible, {proven} proven");
    }

    [Property(MaxTest = 100)]
    public void Every_piece_is_cut_once_and_lies_clear_of_the_others(uint seed)
    {
        RollPlan plan = RollCutting.Cut(Large(new Random((int)seed)));
        RollCheck.Holds(plan);
        Assert.True(plan.Nodes <= 200_000 + 50_000, $"{plan.Nodes} nodes");
        WorkingsCheck.Recompute(plan.Explain());
    }

    /// <summary>The same twice, under another culture and in other units; twice as large where all lengths are doubled.</summary>
    [Property(MaxTest = 30)]
    public void The_same_job_gives_the_same_layout(uint seed)
    {
        RollJob job = Large(new Random((int)seed));
        RollPlan plan = RollCutting.Cut(job);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("ar-SA");
            Assert.Equal(Text(plan), Text(RollCutting.Cut(Large(new Random((int)seed)))));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.Equal(Text(plan), Text(RollCutting.Cut(job with
        {
            Parts = [.. job.Parts.Select(static part => part with { Along = Length.FromInches(part.Along.Millimeters / 25.4), Across = Length.FromFeet(part.Across.Millimeters / 304.8) })],
            Width = Length.FromMeters(job.Width.Millimeters / 1000),
        })));
        RollPlan twice = RollCutting.Cut(job with
        {
            Parts = [.. job.Parts.Select(static part => part with { Along = Mm(2 * part.Along.Millimeters), Across = Mm(2 * part.Across.Millimeters) })],
            Width = Mm(2 * job.Width.Millimeters),
            Selvedge = Mm(2 * job.Selvedge!.Value.Millimeters),
            Between = Mm(2 * job.Between!.Value.Millimeters),
        });
        Assert.Equal((2 * plan.Length.Millimeters, plan.Nodes), (twice.Length.Millimeters, twice.Nodes));

        static string Text(RollPlan plan) => string.Join("\n", [plan.ToString(), .. plan.Pieces.Select(static piece => piece.ToString()), .. plan.Figures().Select(static figure => figure.ToString()), .. plan.Findings.Select(static finding => finding.Message)]);
    }

    [Fact]
    public void Progress_grows_and_ends_at_one_and_cancelling_throws()
    {
        Random random = new(6);
        RollJob job = new([.. Enumerable.Range(0, 40).Select(_ => new RollPart(Mm(random.Next(20_000, 900_000) / 1000.0), Mm(random.Next(20_000, 900_000) / 1000.0), 2, mayTurn: true))], Mm(1400)) { Effort = 2_000_000 };
        List<double> told = [];
        RollCutting.Cut(job, new Told(told.Add), TestContext.Current.CancellationToken);
        Assert.True(told.Count > 3);
        Assert.Equal(told.Order(), told);
        Assert.Equal(1, told[^1]);
        using CancellationTokenSource source = new();
        Assert.Throws<OperationCanceledException>(() => RollCutting.Cut(job, new Told(_ => source.Cancel()), source.Token));
    }

    /// <summary>10000 pieces of 500 sizes that have no step in common: done within the effort, and no longer than a tenth over the bound.</summary>
    [Fact]
    public void A_large_job_is_cut_within_its_effort()
    {
        Random random = new(8);
        RollPart[] parts = [.. Enumerable.Range(0, 500).Select(_ => new RollPart(Mm(random.Next(20_000_000, 900_000_000) / 1e6), Mm(random.Next(20_000_000, 900_000_000) / 1e6), 20, random.Next(0, 2) == 0))];
        RollPlan plan = RollCutting.Cut(new RollJob(parts, Mm(1400.0000007)) { Between = Mm(0.000001), Effort = 20_000_000 });
        RollCheck.Holds(plan);
        Assert.True(plan.Gap < 0.1, $"{plan}");
        Assert.True(plan.Nodes < 40_000_000, $"{plan.Nodes} nodes");
        output.WriteLine($"{plan}, gap {plan.Gap}, {plan.Nodes} steps");
    }

    [Fact]
    public void Jobs_are_equal_by_amount()
    {
        Assert.Equal(Good(), Good() with { Width = Length.FromMeters(1.4) });
        Assert.NotEqual(Good(), Good() with { SoldBy = Mm(100) });
        Assert.NotEqual(Good(), Good() with { Parts = [Part(1100, 900, 2, true)] });
        Assert.Equal(Good().GetHashCode(), Good().GetHashCode());
    }

    private static RollJob Large(Random random) => new(
        [.. Enumerable.Range(0, random.Next(3, 20)).Select(i => new RollPart(Mm(random.Next(1000, 40000) / 20.0), Mm(random.Next(1000, 27000) / 20.0), random.Next(1, 5), random.Next(0, 2) == 0) { Name = i % 3 == 0 ? $"piece {i}" : null })],
        Mm(1400))
    {
        Selvedge = Mm(random.Next(0, 50) / 4.0),
        Between = Mm(random.Next(0, 40) / 4.0),
        SoldBy = random.Next(0, 2) == 0 ? Mm(100) : null,
        Effort = 200_000,
    };

    private static RollPart Part(double along, double across, int count = 1, bool mayTurn = false) => new(Mm(along), Mm(across), count, mayTurn);

    private static RollJob Good() => new([Part(1100, 900, 2), Part(700, 480, 3)], Mm(1400));

    private sealed class Told(Action<double> tell) : IProgress<double>
    {
        public void Report(double value) => tell(value);
    }
}
