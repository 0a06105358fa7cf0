using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Stock;

/// <summary>Cutting worked by hand, findings, refused input, and jobs of hostile size.</summary>
public sealed class BoardCuttingTests
{
    private static readonly Dictionary<string, (CuttingJob Job, string[] Paths)> s_bad = new(StringComparer.Ordinal)
    {
        ["no parts"] = (Good() with { Parts = [] }, ["job.Parts"]),
        ["parts null"] = (Good() with { Parts = null! }, ["job.Parts"]),
        ["2001 parts"] = (Good() with { Parts = [.. Enumerable.Repeat(new BoardPart(Mm(40), 1), 2001)] }, ["job.Parts"]),
        ["a part null"] = (Good() with { Parts = [null!] }, ["job.Parts[0]"]),
        ["part too short"] = (Good() with { Parts = [new BoardPart(Mm(0.999999), 1)] }, ["job.Parts[0].Length"]),
        ["part too long"] = (Good() with { Parts = [new BoardPart(Mm(20000.000001), 1)] }, ["job.Parts[0].Length"]),
        ["part in an undefined unit"] = (Good() with { Parts = [new BoardPart(new Length(1, (LengthUnit)999), 1)] }, ["job.Parts[0].Length"]),
        ["none of a part"] = (Good() with { Parts = [new BoardPart(Mm(40), 0)] }, ["job.Parts[0].Count"]),
        ["a name too long"] = (Good() with { Parts = [new BoardPart(Mm(40), 1) { Name = new string('x', 101) }] }, ["job.Parts[0].Name"]),
        ["10,001 pieces"] = (Good() with { Parts = [new BoardPart(Mm(40), 10_000), new BoardPart(Mm(50), 1)] }, ["job.Parts"]),
        ["no boards"] = (Good() with { Stock = [] }, ["job.Stock"]),
        ["21 boards"] = (Good() with { Stock = [.. Enumerable.Repeat(new StockBoard(Mm(2438), 1m), 21)] }, ["job.Stock"]),
        ["a board null"] = (Good() with { Stock = [null!] }, ["job.Stock[0]"]),
        ["board too short"] = (Good() with { Stock = [new StockBoard(Mm(9.999999), 1m)] }, ["job.Stock[0].Length"]),
        ["a price below nothing"] = (Good() with { Stock = [new StockBoard(Mm(2438), -0.01m)] }, ["job.Stock[0].Price"]),
        ["a price too high"] = (Good() with { Stock = [new StockBoard(Mm(2438), 1_000_000.0001m)] }, ["job.Stock[0].Price"]),
        ["a price too fine"] = (Good() with { Stock = [new StockBoard(Mm(2438), 1.00001m)] }, ["job.Stock[0].Price"]),
        ["the greatest price there is"] = (Good() with { Stock = [new StockBoard(Mm(2438), decimal.MaxValue)] }, ["job.Stock[0].Price"]),
        ["a pack of none"] = (Good() with { Stock = [new StockBoard(Mm(2438), 1m) { Pack = 0 }] }, ["job.Stock[0].Pack"]),
        ["fewer than no boards"] = (Good() with { Stock = [new StockBoard(Mm(2438), 1m) { Available = -1 }] }, ["job.Stock[0].Available"]),
        ["101 offcuts"] = (Good() with { Offcuts = [.. Enumerable.Repeat(new BoardOffcut(Mm(500)), 101)] }, ["job.Offcuts"]),
        ["an offcut null"] = (Good() with { Offcuts = [null!] }, ["job.Offcuts[0]"]),
        ["none of an offcut"] = (Good() with { Offcuts = [new BoardOffcut(Mm(500)) { Count = 0 }] }, ["job.Offcuts[0].Count"]),
        ["kerf too wide"] = (Good() with { Kerf = Mm(20.000001) }, ["job.Kerf"]),
        ["trim takes the board"] = (Good() with { EndTrim = Mm(499.6), Stock = [new StockBoard(Mm(1000), 1m)] }, ["job.EndTrim"]),
        ["offcuts of nothing kept"] = (Good() with { LeastOffcut = Mm(0) }, ["job.LeastOffcut"]),
        ["no effort"] = (Good() with { Effort = 0 }, ["job.Effort"]),
        ["all at once"] = (new CuttingJob([new BoardPart(Mm(0), -1)], [new StockBoard(Mm(0), -1m) { Pack = -1 }]) { Kerf = Mm(-1), EndTrim = Mm(-1), LeastOffcut = Mm(-1), Effort = -1 },
            ["job.Parts[0].Length", "job.Parts[0].Count", "job.Stock[0].Length", "job.Stock[0].Pack", "job.Stock[0].Price", "job.Kerf", "job.EndTrim", "job.LeastOffcut", "job.Effort"]),
    };

    public static TheoryData<string> BadJobs() => [.. s_bad.Keys];

    [Theory]
    [MemberData(nameof(BadJobs))]
    public void Bad_input_is_named_by_its_path(string name)
    {
        (CuttingJob job, string[] paths) = s_bad[name];
        Assert.Equal(paths, BoardCutting.Check(job).Select(static problem => problem.Parameter));
        Assert.Equal(paths[0], Assert.ThrowsAny<ArgumentException>(() => BoardCutting.Cut(job)).ParamName);
    }

    [Fact]
    public void Cut()
    {
        #region example: BoardCutting.Cut
        CuttingJob job = new([new BoardPart(Mm(1820), 4), new BoardPart(Mm(560), 7)], [new StockBoard(Mm(2438), 9.80m)]);
        CuttingPlan plan = BoardCutting.Cut(job);
        int boards = plan.Boards.Count;      // 5: 1820 and 560 from each of four, with 22.4 over (2408 less 2380 and two kerfs); 3 x 560 from the fifth
        decimal cost = plan.Cost;            // 49.00, and plan.Proven: four boards do not hold 11,200 mm
        #endregion
        Assert.Equal((5, 49.00m, true), (boards, cost, plan.Proven));
        CuttingCheck.Holds(plan);
        Assert.Equal(22.4, plan.Boards[0].Offcut.Millimeters);

        // 2408 - 3 x 560 - 3 x 2.8 = 719.6, longer than 400: kept. Waste: 5 x 30 trim, 4 x 5.6 + 8.4 kerf, 4 x 22.4 offcut.
        Assert.Equal(719.6, plan.KeptOffcuts.Millimeters);
        Assert.Equal(150 + 22.4 + 8.4 + 89.6, plan.Waste.Millimeters, 6);
        Assert.Equal(2, plan.SetUps);
        Assert.Equal(["kerf", "end-trim", "least-offcut"], plan.DefaultsUsed.Select(static used => used.Figure.Name));
        Assert.Equal(["stock-no-spare"], plan.Findings.Select(static finding => finding.Code));
        WorkingsCheck.Recompute(plan.Explain());
    }

    /// <summary>n pieces and n - 1 kerfs exactly fill a board: 3 x 798.1333.. would not be whole, so 3 x 800 + 2 x 3 = 2406; a nanometre less of board is one board more.</summary>
    [Fact]
    public void A_board_exactly_filled_is_filled_and_a_nanometre_less_is_not()
    {
        CuttingJob job = new([new BoardPart(Mm(800), 3)], [new StockBoard(Mm(2406), 5m)]) { Kerf = Mm(3), EndTrim = Mm(0) };
        CuttingPlan full = BoardCutting.Cut(job);
        CutBoard board = Assert.Single(full.Boards);
        Assert.Equal((0, 6), (board.Offcut.Millimeters, board.Kerfs.Millimeters));
        Assert.Contains("stock-board-tight", full.Findings.Select(static finding => finding.Code));
        Assert.Equal(2, BoardCutting.Cut(job with { Stock = [new StockBoard(Mm(2405.999999), 5m)] }).Boards.Count);

        // Up to a kerf behind the last piece goes with the saw; a nanometre more is offcut.
        Assert.Equal((0, 9), Rest(2409));
        Assert.Equal((0.000001, 9), Rest(2409.000001));

        (double, double) Rest(double length)
        {
            CutBoard cut = BoardCutting.Cut(job with { Stock = [new StockBoard(Mm(length), 5m)] }).Boards[0];
            return (cut.Offcut.Millimeters, cut.Kerfs.Millimeters);
        }
    }

    /// <summary>
    /// Six of 51, 27 and 26 and twelve of 23 fill nine boards of 100: six of 51 + 26 + 23, three of 27 + 27 + 23 + 23, 900 in all. First fit takes eleven.
    /// </summary>
    [Fact]
    public void A_plan_that_first_fit_misses_is_found_and_proven()
    {
        BoardPart[] parts = [new(Mm(51), 6), new(Mm(27), 6), new(Mm(26), 6), new(Mm(23), 12)];
        CuttingPlan plan = BoardCutting.Cut(new CuttingJob(parts, [new StockBoard(Mm(100), 1m)]) { Kerf = Mm(0), EndTrim = Mm(0) });
        Assert.Equal((9, true, 2), (plan.Boards.Count, plan.Proven, plan.SetUps));
    }

    /// <summary>
    /// Two of 1400 go on two boards of 2000 for 2 x 7 = 14, or on one of 3000 (2800 and a kerf of 3) for 12. Three: 12 + 7 = 19. With one
    /// offcut of 1400 on hand two cost 7: one is cut from it.
    /// </summary>
    [Fact]
    public void Boards_are_mixed_and_offcuts_used_where_that_saves_money()
    {
        CuttingJob job = new([new BoardPart(Mm(1400), 2)], [new StockBoard(Mm(2000), 7m), new StockBoard(Mm(3000), 12m)]) { Kerf = Mm(3), EndTrim = Mm(0) };
        Assert.Equal(12m, Cost(job));
        Assert.Equal(19m, Cost(job with { Parts = [new BoardPart(Mm(1400), 3)] }));
        CuttingPlan plan = BoardCutting.Cut(job with { Offcuts = [new BoardOffcut(Mm(1400))] });
        Assert.Equal(7m, plan.Cost);
        Assert.True(plan.Boards[0].IsOffcut);
        Assert.Equal(0, plan.Boards[0].Trim.Millimeters);

        // Only one of 3000 to be had: three then take 12 + 7; sold by twos at 24, four cost 24, and three too (21 for three of 2000).
        Assert.Equal(12m + 14m, Cost(job with { Parts = [new BoardPart(Mm(1400), 4)], Stock = [new StockBoard(Mm(2000), 7m), new StockBoard(Mm(3000), 12m) { Available = 1 }] }));
        StockBoard[] packed = [new(Mm(2000), 7m), new(Mm(3000), 20m) { Pack = 2 }];
        Assert.Equal(20m, Cost(job with { Parts = [new BoardPart(Mm(1400), 4)], Stock = packed }));
        Assert.Equal(20m, Cost(job with { Parts = [new BoardPart(Mm(1400), 3)], Stock = packed }));
        Assert.Equal(14m, Cost(job with { Stock = packed }));

        // A pack that goes beyond what is to be had is not to be had.
        Assert.Equal(21m, Cost(job with { Parts = [new BoardPart(Mm(1400), 3)], Stock = [packed[0], packed[1] with { Available = 1 }] }));

        static decimal Cost(CuttingJob job)
        {
            CuttingPlan plan = BoardCutting.Cut(job);
            CuttingCheck.Holds(plan);
            Assert.True(plan.Proven);
            return plan.Cost;
        }
    }

    /// <summary>1500 and 500 on each of two boards of 2000 leave nothing to keep; of equal cost is 1500 alone and 500 + 500 + ...: with 900, 900, 1000, 300 two boards of 2000, either 900 + 900 and 1000 + 300 (200 and 700 over) or 1000 + 900 and 900 + 300 (100 and 800 over): the second keeps more.</summary>
    [Fact]
    public void Of_equal_cost_the_plan_with_less_waste_is_taken()
    {
        CuttingJob job = new([new BoardPart(Mm(900), 2), new BoardPart(Mm(1000), 1), new BoardPart(Mm(300), 1)], [new StockBoard(Mm(2000), 7m)]) { Kerf = Mm(0), EndTrim = Mm(0) };
        CuttingPlan plan = BoardCutting.Cut(job);
        Assert.Equal((14m, 800, 100), (plan.Cost, plan.KeptOffcuts.Millimeters, plan.Waste.Millimeters));
    }

    [Fact]
    public void Parts_too_long_and_boards_too_few_are_problems_and_the_rest_is_cut()
    {
        CuttingPlan longPart = BoardCutting.Cut(Good() with { Parts = [new BoardPart(Mm(2408), 1), new BoardPart(Mm(2408.000001), 2)] });
        CuttingCheck.Holds(longPart);
        Assert.Equal((1, 2, true), (longPart.Uncut[0].Part, longPart.Uncut[0].Count, longPart.Uncut[0].IsTooLong));
        Assert.Equal(("stock-part-too-long", Severity.Problem), (longPart.Findings[0].Code, longPart.Findings[0].Severity));
        Assert.Contains(new Figure("usable", 2408, "mm"), longPart.Findings[0].Values);
        Assert.Single(longPart.Boards);
        CuttingPlan few = BoardCutting.Cut(Good() with { Parts = [new BoardPart(Mm(1300), 5)], Stock = [new StockBoard(Mm(2438), 9.8m) { Available = 3 }] });
        CuttingCheck.Holds(few);
        Assert.Equal((2, false), (few.Uncut[0].Count, few.Uncut[0].IsTooLong));
        Assert.Equal(("stock-too-few-boards", Severity.Problem), (few.Findings[0].Code, few.Findings[0].Severity));
        Assert.Null(few.LeastCost);
        Assert.Null(few.Gap);
        Assert.False(few.Proven);
        Assert.Equal(3, few.Boards.Count);
    }

    /// <summary>10,000 parts of 2000 lengths that have no step in common, on twenty kinds of boards: a plan, and how far it may be off.</summary>
    [Theory]
    [InlineData(1, 1.002)]
    [InlineData(20, 1.02)]
    public void A_large_job_is_cut_within_its_effort(int kinds, double mostOverBound)
    {
        Random random = new(17);
        BoardPart[] parts = [.. Enumerable.Range(0, 2000).Select(_ => new BoardPart(Mm(random.Next(50_000_000, 2_000_000_000) / 1e6), 5))];
        StockBoard[] stock = [.. Enumerable.Range(0, kinds).Select(i => new StockBoard(Mm(2438 + (173.123457 * i)), 9.8m + (0.73m * i)))];
        CuttingPlan plan = BoardCutting.Cut(new CuttingJob(parts, stock) { Effort = 20_000_000 });
        CuttingCheck.Holds(plan);
        Assert.False(plan.HasProblem);
        Assert.True(plan.Cost <= (decimal)mostOverBound * plan.LeastCost, $"{plan}");
        Assert.InRange(plan.Nodes, 1, 20_000_000);

        // Effort for next to nothing: a first plan is made all the same, and said to be no more than that.
        foreach (int effort in new[] { 1000, 2_000_000 })
        {
            CuttingPlan quick = BoardCutting.Cut(plan.Job with { Effort = effort });
            CuttingCheck.Holds(quick);
            Assert.False(quick.HasProblem);
            Assert.True(quick.Cost <= 1.02m * quick.LeastCost && quick.LeastCost <= plan.Cost, $"{quick}");
        }
    }

    /// <summary>One offcut that holds no part, or one, moves the bound by next to nothing: a value that it holds in full is no worse for it.</summary>
    [Theory]
    [InlineData(1, 40, 1.002)]
    [InlineData(20, 40, 1.02)]
    [InlineData(1, 60, 1.002)]
    [InlineData(20, 60, 1.02)]
    public void An_offcut_on_hand_leaves_the_bound_of_a_large_job_as_good(int kinds, double offcut, double mostOverBound)
    {
        Random random = new(17);
        BoardPart[] parts = [.. Enumerable.Range(0, 2000).Select(_ => new BoardPart(Mm(random.Next(50_000_000, 2_000_000_000) / 1e6), 5))];
        StockBoard[] stock = [.. Enumerable.Range(0, kinds).Select(i => new StockBoard(Mm(2438 + (173.123457 * i)), 9.8m + (0.73m * i)))];
        CuttingPlan plan = BoardCutting.Cut(new CuttingJob(parts, stock) { Effort = 20_000_000, Offcuts = [new BoardOffcut(Mm(offcut))] });
        CuttingCheck.Holds(plan);
        Assert.True(plan.Cost <= (decimal)mostOverBound * plan.LeastCost, $"{plan}");
    }

    /// <summary>Of three of 2500 none goes on a board of 2438; the 500 does. A cost of one board for a job that is not done is least of nothing.</summary>
    [Fact]
    public void Nothing_is_proven_while_pieces_are_not_cut()
    {
        CuttingPlan plan = BoardCutting.Cut(new CuttingJob([new BoardPart(Mm(2500), 3), new BoardPart(Mm(500), 1)], [new StockBoard(Mm(2438), 10m)]));
        Assert.Equal((10m, 3), (plan.Cost, plan.Uncut[0].Count));
        Assert.False(plan.Proven);
        Assert.Equal((null, null), (plan.LeastCost, plan.Gap));
        Assert.DoesNotContain(plan.Figures(), static figure => figure.Name is "proven" or "gap" or "least-cost");
    }

    /// <summary>Three on hand in packs of four are no pack: nothing to spare of the three bought, and 10% of three is one.</summary>
    [Fact]
    public void Boards_on_hand_are_spares_by_whole_packs()
    {
        StockBoard packs = new(Mm(2438), 0m) { Available = 3, Pack = 4 };
        CuttingPlan plan = BoardCutting.Cut(new CuttingJob([new BoardPart(Mm(1000), 6)], [packs, new StockBoard(Mm(2438), 9m)]));
        Assert.Equal((3, 27m), (plan.Boards.Count, plan.Cost));
        Assert.Equal(1, Assert.Single(plan.Findings, static finding => finding.Code == "stock-no-spare").Values.Single(static figure => figure.Name == "spare").Value);
    }

    /// <summary>Six of 1000, two to a board of 2438: three boards. A tenth of three is one to spare: seven of ten on hand are left, of three none. Of boards on hand that hold no 1000 none counts.</summary>
    [Theory]
    [InlineData(10, 0)]
    [InlineData(4, 0)]
    [InlineData(3, 1)]
    [InlineData(null, 0)]
    public void What_is_on_hand_is_not_bought_and_is_a_spare(int? onHand, int lacking)
    {
        StockBoard board = new(Mm(2438), 0m) { Available = onHand };
        CuttingPlan plan = BoardCutting.Cut(new CuttingJob([new BoardPart(Mm(1000), 6)], [board, new StockBoard(Mm(900), 0m) { Available = 5 }, new StockBoard(Mm(3000), 9m)]));
        CuttingCheck.Holds(plan);
        Assert.Equal((3, 0m), (plan.Boards.Count, plan.Cost));
        Assert.Empty(plan.Purchases);
        Assert.Equal(lacking, plan.Findings.Where(static finding => finding.Code == "stock-no-spare").SelectMany(static finding => finding.Values).Where(static figure => figure.Name == "spare").Sum(static figure => figure.Value));
        Assert.Equal(0, plan.Figures().Single(static figure => figure.Name == "bought").Value);
    }

    /// <summary>Parts of a millimetre, parts of a nanometre more than half a board, boards on hand without end: each ends.</summary>
    [Fact]
    public void Hostile_sizes_end()
    {
        CuttingPlan tiny = BoardCutting.Cut(new CuttingJob([new BoardPart(Mm(1), 10_000)], [new StockBoard(Mm(20_000), 1m)]) { Kerf = Mm(0) });
        Assert.Equal((1, true), (tiny.Boards.Count, tiny.Proven));
        CuttingPlan half = BoardCutting.Cut(new CuttingJob([new BoardPart(Mm(1204.000001), 10_000)], [new StockBoard(Mm(2438), 1m)]) { Kerf = Mm(0) });
        Assert.Equal((10_000, true), (half.Boards.Count, half.Proven));
        CuttingPlan exact = BoardCutting.Cut(new CuttingJob([new BoardPart(Mm(1204), 10_000)], [new StockBoard(Mm(2438), 1m)]) { Kerf = Mm(0) });
        Assert.Equal((5000, true), (exact.Boards.Count, exact.Proven));
        BoardPart[] near = [.. Enumerable.Range(0, 400).Select(static i => new BoardPart(Mm(333.333333 - (i * 1e-6)), 25))];
        CuttingPlan thirds = BoardCutting.Cut(new CuttingJob(near, [new StockBoard(Mm(1000), 1m), new StockBoard(Mm(1333.3), 1.3m), new StockBoard(Mm(3000), 0m) { Available = 100 }]) { Kerf = Mm(0), EndTrim = Mm(0), Effort = 5_000_000, Offcuts = [.. Enumerable.Range(0, 100).Select(static i => new BoardOffcut(Mm(300 + i)) { Count = 1000 })] });
        CuttingCheck.Holds(thirds);
        Assert.False(thirds.HasProblem);
        foreach (int effort in new[] { 1000, 100_000, 3_000_000 })
        {
            // Of so many kinds each board filled as well as can be once took hundreds of millions of nodes, whatever the effort.
            CuttingPlan quick = BoardCutting.Cut(thirds.Job with { Effort = effort });
            CuttingCheck.Holds(quick);
            Assert.False(quick.HasProblem);

            // Boards for 1000 pieces of the 10,000: as much as goes is cut.
            CuttingPlan few = BoardCutting.Cut(thirds.Job with { Effort = effort, Offcuts = null, Stock = [new StockBoard(Mm(3000), 1m) { Available = 100 }, new StockBoard(Mm(1000), 1m) { Available = 40 }] });
            CuttingCheck.Holds(few);
            Assert.True(few.HasProblem);
            Assert.Equal(140, few.Boards.Count);
        }
    }

    [Fact]
    public void Jobs_are_equal_by_amount()
    {
        CuttingJob job = Good();
        Assert.Equal(job, Good() with { Parts = [new BoardPart(Length.FromCentimeters(182), 4), new BoardPart(Length.FromMeters(0.64), 7)] });
        Assert.NotEqual(job, Good() with { Kerf = Mm(3) });
        Assert.NotEqual(job, Good() with { Parts = [new BoardPart(Mm(1820), 4)] });
        Assert.Equal(job.GetHashCode(), Good().GetHashCode());
    }

    private static CuttingJob Good() => new([new BoardPart(Mm(1820), 4), new BoardPart(Mm(640), 7)], [new StockBoard(Mm(2438), 9.80m)]);
}
