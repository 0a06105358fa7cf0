using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Stock;

/// <summary>Nesting worked by hand, findings, refused input, and jobs of hostile size.</summary>
public sealed class NestingTests
{
    private static readonly Dictionary<string, (NestingJob Job, string[] Paths)> s_bad = new(StringComparer.Ordinal)
    {
        ["no parts"] = (Good() with { Parts = [] }, ["job.Parts"]),
        ["parts null"] = (Good() with { Parts = null! }, ["job.Parts"]),
        ["2001 parts"] = (Good() with { Parts = [.. Enumerable.Repeat(Part(40, 50), 2001)] }, ["job.Parts"]),
        ["a part null"] = (Good() with { Parts = [null!] }, ["job.Parts[0]"]),
        ["part too short"] = (Good() with { Parts = [Part(0.999999, 50)] }, ["job.Parts[0].Length"]),
        ["part too long"] = (Good() with { Parts = [Part(10000.000001, 50)] }, ["job.Parts[0].Length"]),
        ["part too narrow"] = (Good() with { Parts = [Part(50, 0.999999)] }, ["job.Parts[0].Width"]),
        ["part in an undefined unit"] = (Good() with { Parts = [new SheetPart(new Length(1, (LengthUnit)999), Mm(50), 1, mayTurn: true)] }, ["job.Parts[0].Length"]),
        ["none of a part"] = (Good() with { Parts = [Part(40, 50, 0)] }, ["job.Parts[0].Count"]),
        ["two corners"] = (Good() with { Parts = [Part(40, 50) with { Outline = [new(Mm(0), Mm(0)), new(Mm(40), Mm(50))] }] }, ["job.Parts[0].Outline"]),
        ["a name too long"] = (Good() with { Parts = [Part(40, 50) with { Name = new string('x', 101) }] }, ["job.Parts[0].Name"]),
        ["10,001 pieces"] = (Good() with { Parts = [Part(40, 50, 10_000), Part(50, 50)] }, ["job.Parts"]),
        ["no sheets"] = (Good() with { Stock = [] }, ["job.Stock"]),
        ["21 sheets"] = (Good() with { Stock = [.. Enumerable.Repeat(Sheet(2440, 1220, 1m), 21)] }, ["job.Stock"]),
        ["a sheet null"] = (Good() with { Stock = [null!] }, ["job.Stock[0]"]),
        ["sheet too narrow"] = (Good() with { Stock = [Sheet(2440, 9.999999, 1m)], Trim = Mm(0) }, ["job.Stock[0].Width"]),
        ["sheet too long"] = (Good() with { Stock = [Sheet(10000.000001, 1220, 1m)] }, ["job.Stock[0].Length"]),
        ["a price below nothing"] = (Good() with { Stock = [Sheet(2440, 1220, -0.01m)] }, ["job.Stock[0].Price"]),
        ["a price too high"] = (Good() with { Stock = [Sheet(2440, 1220, 1_000_000.0001m)] }, ["job.Stock[0].Price"]),
        ["a price too fine"] = (Good() with { Stock = [Sheet(2440, 1220, 1.00001m)] }, ["job.Stock[0].Price"]),
        ["the greatest price there is"] = (Good() with { Stock = [Sheet(2440, 1220, decimal.MaxValue)] }, ["job.Stock[0].Price"]),
        ["fewer than no sheets"] = (Good() with { Stock = [Sheet(2440, 1220, 1m) with { Available = -1 }] }, ["job.Stock[0].Available"]),
        ["101 offcuts"] = (Good() with { Offcuts = [.. Enumerable.Repeat(new SheetOffcut(Mm(500), Mm(500)), 101)] }, ["job.Offcuts"]),
        ["an offcut null"] = (Good() with { Offcuts = [null!] }, ["job.Offcuts[0]"]),
        ["none of an offcut"] = (Good() with { Offcuts = [new SheetOffcut(Mm(500), Mm(400)) { Count = 0 }] }, ["job.Offcuts[0].Count"]),
        ["an offcut too narrow"] = (Good() with { Offcuts = [new SheetOffcut(Mm(500), Mm(9))] }, ["job.Offcuts[0].Width"]),
        ["neither saw nor router"] = (Good() with { Cutting = (SheetCutting)2 }, ["job.Cutting"]),
        ["kerf too wide"] = (Good() with { Kerf = Mm(20.000001) }, ["job.Kerf"]),
        ["trim too wide"] = (Good() with { Trim = Mm(200.000001) }, ["job.Trim"]),
        ["trim takes the sheet"] = (Good() with { Trim = Mm(49.6), Stock = [Sheet(1000, 100, 1m)] }, ["job.Trim"]),
        ["offcuts of nothing kept"] = (Good() with { LeastOffcutLength = Mm(0), LeastOffcutWidth = Mm(0.5) }, ["job.LeastOffcutLength", "job.LeastOffcutWidth"]),
        ["no effort"] = (Good() with { Effort = 0 }, ["job.Effort"]),
        ["endless effort"] = (Good() with { Effort = 2_000_000_001 }, ["job.Effort"]),
        ["all at once"] = (new NestingJob([Part(0, 0, -1)], [Sheet(0, 0, -1m)], (SheetCutting)(-1)) { Kerf = Mm(-1), Trim = Mm(-1), LeastOffcutLength = Mm(-1), LeastOffcutWidth = Mm(-1), Effort = -1 },
            ["job.Parts[0].Length", "job.Parts[0].Width", "job.Parts[0].Count", "job.Stock[0].Length", "job.Stock[0].Width", "job.Stock[0].Price", "job.Cutting", "job.Kerf", "job.Trim", "job.LeastOffcutLength", "job.LeastOffcutWidth", "job.Effort"]),
    };

    public static TheoryData<string> BadJobs() => [.. s_bad.Keys];

    [Theory]
    [MemberData(nameof(BadJobs))]
    public void Bad_input_is_named_by_its_path(string name)
    {
        (NestingJob job, string[] paths) = s_bad[name];
        Assert.Equal(paths, SheetNesting.Check(job).Select(static problem => problem.Parameter));
        Assert.Equal(paths[0], Assert.ThrowsAny<ArgumentException>(() => SheetNesting.Nest(job)).ParamName);
    }

    [Fact]
    public void Nest()
    {
        #region example: SheetNesting.Nest
        NestingJob job = new([new SheetPart(Mm(1200), Mm(600), 4, mayTurn: false), new SheetPart(Mm(900), Mm(350), 3, mayTurn: true)], [new StockSheet(Mm(2440), Mm(1220), 38.00m)], SheetCutting.Sawn);
        NestingPlan plan = SheetNesting.Nest(job);
        int sheets = plan.Sheets.Count;      // 2: four of 1200 x 600 fill the first (2 x 1200 + 2.4 of 2430, 2 x 600 + 2.4 of 1210)
        decimal cost = plan.Cost;            // 76.00, and plan.Proven: one sheet of 2.9403 m2 does not hold 3.825 m2
        #endregion
        Assert.Equal((2, 76.00m, true, 2), (sheets, cost, plan.Proven, plan.LeastSheets));
        NestingCheck.Holds(plan);
        Assert.Equal(4 * 1200 * 600, plan.Sheets[0].Pieces.Where(static piece => piece.Part == 0).Sum(static piece => piece.Length.Millimeters * piece.Width.Millimeters));
        Assert.Equal(4, plan.Sheets[0].Pieces.Count);
        Assert.Equal(["kerf", "trim", "least-offcut-length", "least-offcut-width"], plan.DefaultsUsed.Select(static used => used.Figure.Name));
        Assert.Equal("stock-sheet-cutting", plan.Findings[^1].Code);
        WorkingsCheck.Recompute(plan.Explain());
    }

    /// <summary>
    /// One piece of 1000 x 600 on 2440 x 1220, trim 5, kerf 2.4: 2430 x 1210 can be used. Beside it 2430 - 1000 - 2.4 = 1427.6 x 1210 are
    /// left, above it 1000 x (1210 - 600 - 2.4 = 607.6); the other way round 2430 x 607.6 = 1.476 m2 is less than 1427.6 x 1210 = 1.727.
    /// </summary>
    [Fact]
    public void Cuts_and_remnants_of_one_piece_are_those_worked_by_hand()
    {
        NestingPlan plan = SheetNesting.Nest(Good() with { Parts = [Part(1000, 600)] });
        NestingCheck.Holds(plan);
        NestedSheet sheet = Assert.Single(plan.Sheets);
        (bool, bool, double, double, double, double)[] expected =
        [
            (true, true, 2.6, 0, 2440, 2.6), (true, true, 1215, 0, 2440, 1210), (false, true, 2.6, 5, 1215, 2.6), (false, true, 2435, 5, 1215, 2430),
            (false, false, 1005, 5, 1215, 1000), (true, false, 605, 5, 1005, 600),
        ];
        Assert.Equal(expected, sheet.Cuts.Select(static cut => (cut.IsAlongLength, cut.IsTrim, cut.Position.Millimeters, cut.Start.Millimeters, cut.End.Millimeters, cut.Size.Millimeters)));
        (double, double, double, double)[] left = [(1007.4, 5, 1427.6, 1210), (5, 607.4, 1000, 607.6)];
        Assert.Equal(left, Kept(sheet));
        Assert.Equal((1427.6 * 1210) + (1000 * 607.6), plan.KeptArea.SquareMillimeters, 3);

        // A router leaves the same; what is too small is not kept.
        Assert.Equal(left, Kept(SheetNesting.Nest(Good() with { Parts = [Part(1000, 600)], Cutting = SheetCutting.Routed, Kerf = Mm(2.4) }).Sheets[0]));
        Assert.Single(SheetNesting.Nest(Good() with { Parts = [Part(1000, 600)], LeastOffcutLength = Mm(1000.000001) }).Sheets[0].Kept);
        Assert.Single(SheetNesting.Nest(Good() with { Parts = [Part(1000, 600)], LeastOffcutWidth = Mm(607.600001) }).Sheets[0].Kept);
        Assert.Equal(2, SheetNesting.Nest(Good() with { Parts = [Part(1000, 600)], LeastOffcutWidth = Mm(607.6), LeastOffcutLength = Mm(1000) }).Sheets[0].Kept.Count);

        static IEnumerable<(double, double, double, double)> Kept(NestedSheet sheet) => sheet.Kept.Select(static kept => (kept.Along.Millimeters, kept.Across.Millimeters, kept.Length.Millimeters, kept.Width.Millimeters));
    }

    /// <summary>2 x 498.5 and a kerf of 3 are 1000; a nanometre less of sheet is one sheet more. So for width.</summary>
    [Theory]
    [InlineData(SheetCutting.Sawn)]
    [InlineData(SheetCutting.Routed)]
    public void A_sheet_exactly_filled_is_filled_and_a_nanometre_less_is_not(SheetCutting cutting)
    {
        NestingJob job = new([Part(498.5, 248.5, 4)], [Sheet(1000, 500, 5m)], cutting) { Kerf = Mm(3), Trim = Mm(0) };
        NestingPlan full = SheetNesting.Nest(job);
        NestingCheck.Holds(full);
        Assert.Equal((1, true), (full.Sheets.Count, full.Proven));
        Assert.Equal(cutting == SheetCutting.Sawn ? 3 : 0, full.Sheets[0].Cuts.Count);
        foreach (StockSheet less in new[] { Sheet(999.999999, 500, 5m), Sheet(1000, 499.999999, 5m) })
        {
            NestingPlan two = SheetNesting.Nest(job with { Stock = [less] });
            NestingCheck.Holds(two);
            Assert.Equal((2, true), (two.Sheets.Count, two.Proven));
        }

        // Trimmed by 7 all round, a sheet 14 longer and wider does it.
        Assert.Single(SheetNesting.Nest(job with { Stock = [Sheet(1014, 514, 5m)], Trim = Mm(7) }).Sheets);
        Assert.Equal(2, SheetNesting.Nest(job with { Stock = [Sheet(1014, 513.999999, 5m)], Trim = Mm(7) }).Sheets.Count);
    }

    /// <summary>Four of 60 x 40 round a square of 20 fill 100 x 100, and no cut from edge to edge parts them: a saw needs two sheets.</summary>
    [Fact]
    public void A_pinwheel_can_be_routed_and_not_sawn()
    {
        NestingJob job = new([Part(60, 40, 2), Part(40, 60, 2), Part(20, 20)], [Sheet(100, 100, 3m)], SheetCutting.Routed) { Kerf = Mm(0), Trim = Mm(0), Effort = 200_000 };
        NestingPlan routed = SheetNesting.Nest(job);
        NestingCheck.Holds(routed);
        Assert.Equal((1, 3m), (routed.LeastSheets, routed.LeastCost));
        Box[] pinwheel = [new(0, 0, 60, 40), new(60, 0, 100, 60), new(40, 60, 100, 100), new(0, 40, 40, 100), new(40, 40, 60, 60)];
        Assert.Empty(NestingCheck.Faults(pinwheel, new(0, 0, 100, 100), 0));
        NestingPlan sawn = SheetNesting.Nest(job with { Cutting = SheetCutting.Sawn });
        NestingCheck.Holds(sawn);
        Assert.Equal((2, 3m, false, 0.5), (sawn.Sheets.Count, sawn.LeastCost, sawn.Proven, sawn.Gap));
        Assert.Equal(["stock-small-at-the-saw", "stock-sheets-not-proven"], sawn.Findings.Take(2).Select(static finding => finding.Code)); // all of it is narrower than 100
    }

    /// <summary>Three of 60 x 60 have little more area than one sheet of 100 x 100, but no two go on one: three sheets, and proven so.</summary>
    [Fact]
    public void A_proof_may_rest_on_more_than_area()
    {
        NestingPlan plan = SheetNesting.Nest(new NestingJob([Part(60, 60, 3)], [Sheet(100, 100, 7m)], SheetCutting.Sawn) { Kerf = Mm(0), Trim = Mm(0) });
        NestingCheck.Holds(plan);
        Assert.Equal((3, 21m, true), (plan.Sheets.Count, plan.LeastCost, plan.Proven));
        Assert.Equal((21m, 3), NestingCheck.LeastByValues(plan));
        Assert.True(plan.Valuations.Count > 1);
    }

    [Fact]
    public void A_piece_turns_only_where_it_may()
    {
        NestingJob job = new([Part(300, 900) with { MayTurn = true }], [Sheet(1000, 400, 5m)], SheetCutting.Sawn);
        NestingPlan turned = SheetNesting.Nest(job);
        NestingCheck.Holds(turned);
        NestedPiece piece = Assert.Single(turned.Sheets[0].Pieces);
        Assert.Equal((true, 900, 300), (piece.IsTurned, piece.Length.Millimeters, piece.Width.Millimeters));
        Assert.Contains("stock-piece-turned", turned.Findings.Select(static finding => finding.Code));
        NestingPlan locked = SheetNesting.Nest(job with { Parts = [Part(300, 900)] });
        NestingCheck.Holds(locked);
        Assert.Empty(locked.Sheets);
        Assert.True(Assert.Single(locked.Unplaced).IsTooLarge);
        Assert.Equal(("stock-part-too-large", Severity.Problem), (locked.Findings[0].Code, locked.Findings[0].Severity));

        // The message says which: the first three kinds, and how many pieces more.
        NestingPlan many = SheetNesting.Nest(job with { Parts = [Part(300, 900, 2) with { Name = "door" }, Part(300, 390, 1), Part(300, 901), Part(300, 902), Part(300, 903, 4), Part(300, 904, 3)] });
        Assert.Contains("11 pieces go on no sheet there is, trimmed, the grain as asked: 2 of 300 x 900 mm door, 1 of 300 x 901 mm, 1 of 300 x 902 mm and 7 more. ", many.Findings[0].Message, StringComparison.Ordinal);
        Assert.Equal(("door", 0, 2), (many.Unplaced[0].Name, many.Unplaced[0].Part, many.Unplaced[0].Count));
    }

    /// <summary>One of 1400 x 900 goes on a sheet of 2000 x 1000 at 20, two on one of 3000 x 1000 at 26 (2800 and a kerf of 3).</summary>
    [Fact]
    public void Sheets_are_mixed_and_offcuts_used_where_that_saves_money()
    {
        NestingJob job = new([Part(1400, 900, 2)], [Sheet(2000, 1000, 20m), Sheet(3000, 1000, 26m)], SheetCutting.Sawn) { Kerf = Mm(3), Trim = Mm(0) };
        Assert.Equal(26m, Cost(job));
        Assert.Equal(46m, Cost(job with { Parts = [Part(1400, 900, 3)] }));
        Assert.Equal(20m, Cost(job with { Offcuts = [new SheetOffcut(Mm(1400), Mm(900))] }));
        Assert.Equal(0m, Cost(job with { Offcuts = [new SheetOffcut(Mm(1400), Mm(900)) { Count = 2 }] }));
        Assert.Equal(26m, Cost(job with { Offcuts = [new SheetOffcut(Mm(1399.999999), Mm(900)) { Count = 2 }] }));

        // With one large sheet to be had four take 26 + 2 x 20; that 60 does not do is not proven by values.
        NestingPlan one = SheetNesting.Nest(job with { Parts = [Part(1400, 900, 4)], Stock = [Sheet(2000, 1000, 20m), Sheet(3000, 1000, 26m) with { Available = 1 }], Effort = 1_000_000 });
        NestingCheck.Holds(one);
        Assert.Equal((66m, 60m), (one.Cost, one.LeastCost));
        Assert.Equal(one.LeastCost, NestingCheck.LeastByValues(one)!.Value.Cost);
        Assert.Equal(20m, Cost(job with { Stock = [Sheet(2000, 1000, 20m), Sheet(2000, 1000, 0m) with { Available = 1 }] }));

        // A sheet that is trimmed is not an offcut that is not.
        Assert.Equal(40m, Cost(job with { Trim = Mm(98.6), Parts = [Part(1400, 800, 2)] }));
        Assert.Equal(26m, Cost(job with { Trim = Mm(98.5), Parts = [Part(1400, 803, 2)] }));

        static decimal Cost(NestingJob job)
        {
            NestingPlan plan = SheetNesting.Nest(job);
            NestingCheck.Holds(plan);
            Assert.True(plan.Proven, plan.ToString());
            return plan.Cost;
        }
    }

    [Fact]
    public void What_is_no_rectangle_is_nested_by_its_rectangle_and_counted_by_its_area()
    {
        NestingPlan plan = SheetNesting.Nest(Good() with { Parts = [Part(500, 400, 3) with { Outline = [new(Mm(0), Mm(0)), new(Mm(500), Mm(0)), new(Mm(0), Mm(400))] }] });
        NestingCheck.Holds(plan);
        Assert.Equal(300_000, plan.PiecesArea.SquareMillimeters, 6);
        Assert.Equal(plan.SheetsArea.SquareMillimeters - 300_000 - plan.KeptArea.SquareMillimeters, plan.Waste.SquareMillimeters, 3);
    }

    [Fact]
    public void Too_few_sheets_is_a_problem_and_the_rest_is_placed()
    {
        NestingPlan few = SheetNesting.Nest(Good() with { Parts = [Part(1300, 700, 5)], Stock = [Sheet(2440, 1220, 38m) with { Available = 3 }], Effort = 100_000 });
        NestingCheck.Holds(few);
        Assert.Equal((2, false), (few.Unplaced[0].Count, few.Unplaced[0].IsTooLarge));
        Assert.Equal(("stock-too-few-sheets", Severity.Problem), (few.Findings[0].Code, few.Findings[0].Severity));
        Assert.Null(few.LeastCost);
        Assert.Null(few.Gap);
        Assert.False(few.Proven);
        Assert.Equal(3, few.Sheets.Count);
        NestingPlan none = SheetNesting.Nest(Good() with { Stock = [Sheet(2440, 1220, 38m) with { Available = 0 }] });
        NestingCheck.Holds(none);
        Assert.Empty(none.Sheets);
    }

    /// <summary>A kerf wider than the trim: the trimming cut runs half beside the sheet.</summary>
    [Fact]
    public void A_kerf_may_be_wider_than_the_trim()
    {
        NestingPlan plan = SheetNesting.Nest(Good() with { Kerf = Mm(6), Trim = Mm(2) });
        NestingCheck.Holds(plan);
        Assert.Equal((0, 0), (plan.Sheets[0].Cuts[0].Position.Millimeters, plan.Sheets[0].Cuts[0].Size.Millimeters));
    }

    /// <summary>10,000 pieces of 2000 sizes that have no step in common, on twenty kinds of sheets, with and without offcuts: a layout, and how far it may be off.</summary>
    [Theory]
    [InlineData(SheetCutting.Sawn, 1, 0, 1.25)]
    [InlineData(SheetCutting.Routed, 1, 0, 1.25)]
    [InlineData(SheetCutting.Sawn, 20, 100, 1.6)]
    [InlineData(SheetCutting.Routed, 20, 100, 1.6)]
    public void A_large_job_is_nested_within_its_effort(SheetCutting cutting, int kinds, int offcuts, double mostOverBound)
    {
        Random random = new(17);
        SheetPart[] parts = [.. Enumerable.Range(0, 2000).Select(_ => new SheetPart(Mm(random.Next(50_000_000, 1_200_000_000) / 1e6), Mm(random.Next(50_000_000, 800_000_000) / 1e6), 5, random.Next(0, 2) == 0))];
        StockSheet[] stock = [.. Enumerable.Range(0, kinds).Select(i => new StockSheet(Mm(2440 + (73.123457 * i)), Mm(1220 + (31.712389 * i)), 38m + (3.73m * i)))];
        SheetOffcut[] onHand = [.. Enumerable.Range(0, offcuts).Select(static i => new SheetOffcut(Mm(300 + (7.000001 * i)), Mm(300 + i)) { Count = 3 })];
        NestingPlan plan = SheetNesting.Nest(new NestingJob(parts, stock, cutting) { Kerf = Mm(2.4), Effort = 5_000_000, Offcuts = onHand });
        NestingCheck.Holds(plan);
        Assert.False(plan.HasProblem);
        Assert.True(plan.Cost <= (decimal)mostOverBound * plan.LeastCost, $"{plan}");
        Assert.True(plan.Nodes < 250_000_000, $"{plan.Nodes} nodes");
        TestContext.Current.TestOutputHelper?.WriteLine($"{plan}, {plan.Nodes} steps");
    }

    /// <summary>Thousands of pieces on a sheet, pieces a nanometre too large to go twice, sheets that cost nothing without end: each ends, on a small stack.</summary>
    [Fact]
    public void Hostile_sizes_end()
    {
        Exception? thrown = null;
        Thread thread = new(
            () => thrown = Record.Exception(() =>
            {
                // A row of 10,000 on one sheet: as many cuts.
                NestingPlan row = SheetNesting.Nest(new NestingJob([Part(1, 10, 10_000)], [Sheet(10_000, 10, 1m)], SheetCutting.Sawn) { Kerf = Mm(0), Trim = Mm(0) });
                Assert.Equal((1, true, 9999), (row.Sheets.Count, row.Proven, row.Sheets[0].Cuts.Count));
                NestingCheck.Holds(row);
                NestingPlan half = SheetNesting.Nest(new NestingJob([Part(500.000001, 500.000001, 10_000)], [Sheet(1000, 1000, 1m)], SheetCutting.Routed) { Kerf = Mm(0), Trim = Mm(0) });
                Assert.Equal((10_000, true), (half.Sheets.Count, half.Proven));
                NestingPlan exact = SheetNesting.Nest(new NestingJob([Part(500, 500, 10_000)], [Sheet(1000, 1000, 1m)], SheetCutting.Sawn) { Kerf = Mm(0), Trim = Mm(0) });
                Assert.Equal((2500, true), (exact.Sheets.Count, exact.Proven));

                // What all pieces are worth, on as many sheets, is more than a whole number holds unless it is seen to: here nothing has to be bought.
                NestingPlan free = SheetNesting.Nest(new NestingJob([Part(1000, 1000, 9500)], [Sheet(1000, 1000, 1m), Sheet(1000, 2000, 0m) with { Available = 10_000 }], SheetCutting.Routed) { Kerf = Mm(0), Trim = Mm(0), Effort = 1_000_000 });
                NestingCheck.Holds(free);
                Assert.Equal((0m, true), (free.Cost, free.Proven));
            }),
            512 * 1024);
        thread.Start();
        thread.Join();
        Assert.Null(thrown);
    }

    /// <summary>Small pieces of two sizes that leave a ragged edge, and pieces that each take a sheet of their own: the effort is what it takes, not a multiple of it.</summary>
    [Theory]
    [InlineData(5.000001, 7.0000003, 200, 100)]
    [InlineData(505.000001, 707.0000003, 1000, 900)]
    public void Effort_bounds_the_time_of_awkward_jobs(double one, double other, double length, double width)
    {
        System.Diagnostics.Stopwatch clock = System.Diagnostics.Stopwatch.StartNew();
        NestingPlan plan = SheetNesting.Nest(new NestingJob([new SheetPart(Mm(one), Mm(other), 4999, mayTurn: true), new SheetPart(Mm(one + 1.1), Mm(one + 0.7), 5001, mayTurn: true)], [Sheet(length, width, 1m)], SheetCutting.Routed) { Kerf = Mm(0), Trim = Mm(0), Effort = 5_000_000 });
        NestingCheck.Holds(plan);
        Assert.False(plan.HasProblem);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(60), $"{clock.Elapsed}");
    }

    [Fact]
    public void Jobs_are_equal_by_amount()
    {
        NestingJob job = Good();
        Assert.Equal(job, Good() with { Parts = [new SheetPart(Length.FromCentimeters(120), Length.FromMeters(0.6), 3, mayTurn: false)] });
        Assert.NotEqual(job, Good() with { Kerf = Mm(3) });
        Assert.NotEqual(job, Good() with { Cutting = SheetCutting.Routed });
        Assert.NotEqual(job, Good() with { Parts = [Part(1200, 600, 3) with { MayTurn = true }] });
        Assert.NotEqual(job, Good() with { Offcuts = [new SheetOffcut(Mm(500), Mm(400))] });
        Assert.Equal(job.GetHashCode(), Good().GetHashCode());
    }

    /// <summary>The checks find what is wrong: overlaps, a kerf too little, a layout no saw can cut, a cut that stops short.</summary>
    [Fact]
    public void A_bad_layout_is_found()
    {
        Box sheet = new(0, 0, 100, 100);
        Assert.Empty(NestingCheck.Faults([new(0, 0, 50, 50), new(53, 0, 100, 50)], sheet, 3));
        Assert.NotEmpty(NestingCheck.Faults([new(0, 0, 50, 50), new(52, 0, 100, 50)], sheet, 3));
        Assert.NotEmpty(NestingCheck.Faults([new(0, 0, 50, 50), new(20, 20, 30, 30)], sheet, 0));
        Assert.NotEmpty(NestingCheck.Faults([new(60, 0, 101, 50)], sheet, 0));
        Box[] pinwheel = [new(0, 0, 60, 40), new(60, 0, 100, 60), new(40, 60, 100, 100), new(0, 40, 40, 100)];
        Assert.False(NestingCheck.IsGuillotine(pinwheel, 0));
        Assert.True(NestingCheck.IsGuillotine(pinwheel[..3], 0));
        Assert.False(NestingCheck.IsGuillotine([new(0, 0, 50, 50), new(52, 0, 100, 50)], 3));
        NestedSheet good = SheetNesting.Nest(new NestingJob([Part(60, 100), Part(37, 100)], [Sheet(100, 100, 1m)], SheetCutting.Sawn) { Kerf = Mm(3), Trim = Mm(0) }).Sheets[0];
        Box[] pieces = [.. good.Pieces.Select(static piece => new Box(Nm(piece.Along), Nm(piece.Across), Nm(piece.Along) + Nm(piece.Length), Nm(piece.Across) + Nm(piece.Width)))];
        Assert.Empty(NestingCheck.Replay(good, 100_000_000, 100_000_000, 0, 3_000_000, pieces, []));
        Assert.NotEmpty(NestingCheck.Replay(good, 100_000_000, 100_000_000, 0, 2_999_999, pieces, []));
        Assert.NotEmpty(NestingCheck.Replay(good, 100_000_000, 101_000_000, 0, 3_000_000, pieces, []));
        Assert.NotEmpty(NestingCheck.Replay(good, 100_000_000, 100_000_000, 0, 3_000_000, [.. pieces, new(0, 0, 1, 1)], []));

        static long Nm(Length length) => NestingCheck.Nm(length);
    }

    internal static SheetPart Part(double length, double width, int count = 1) => new(Mm(length), Mm(width), count, mayTurn: false);

    internal static StockSheet Sheet(double length, double width, decimal price) => new(Mm(length), Mm(width), price);

    private static NestingJob Good() => new([Part(1200, 600, 3)], [Sheet(2440, 1220, 38m)], SheetCutting.Sawn);
}
