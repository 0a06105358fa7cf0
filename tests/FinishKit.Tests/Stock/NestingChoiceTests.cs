using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Stock;

/// <summary>What is used of limited stock, of offcuts on hand and of several sizes, and how the last aims are followed.</summary>
public class NestingChoiceTests(ITestOutputHelper output)
{
    /// <summary>Eight pieces of 2.1 m2 that lie on one sheet of 3.0 m2 must do so where there is only this one.</summary>
    [Fact]
    public void The_only_sheet_is_used()
    {
        NestingJob job = new([.. new[] { (1024, 324), (587, 369), (954, 497), (692, 455), (1073, 350), (448, 570), (405, 534), (765, 261) }.Select(static size => new SheetPart(Mm(size.Item1), Mm(size.Item2), 1, mayTurn: false))], [new StockSheet(Mm(2440), Mm(1220), 38m) { Available = 1 }], SheetCutting.Routed) { Kerf = Mm(6), Effort = 1_000_000 };
        NestingPlan plan = SheetNesting.Nest(job);
        NestingCheck.Holds(plan);
        Assert.False(plan.HasProblem);
        Assert.True(plan.Proven);
        Assert.Equal(38m, plan.Cost);
    }

    /// <summary>Four equal pieces round a hole, two of them turned: a + b is the side of the sheet, b over a third of it. In rows and a column only three go.</summary>
    [Theory]
    [InlineData(1000, 640, 360, 1)]
    [InlineData(1220, 800, 420, 2)]
    [InlineData(1000, 650, 350, 3)]
    public void Equal_pieces_lie_round_a_hole(double side, double a, double b, int sheets)
    {
        NestingJob job = new([new SheetPart(Mm(a), Mm(b), 4 * sheets, mayTurn: true)], [new StockSheet(Mm(side), Mm(side), 38m)], SheetCutting.Routed) { Kerf = Mm(0), Trim = Mm(0), Effort = 20_000_000 };
        NestingPlan plan = SheetNesting.Nest(job);
        NestingCheck.Holds(plan);
        Assert.Equal(sheets, plan.Sheets.Count);
    }

    /// <summary>As many sheets as a plan without limit takes are enough.</summary>
    [Theory]
    [InlineData(SheetCutting.Routed)]
    [InlineData(SheetCutting.Sawn)]
    public void A_limit_that_is_just_enough_is_met(SheetCutting cutting)
    {
        Random random = new(41);
        int short1 = 0, tried = 0;
        for (int trial = 0; trial < 120; trial++)
        {
            NestingJob job = Filled(random, cutting, random.Next(1, 4) * 0.82) with { Effort = 1_000_000 };
            NestingPlan free = SheetNesting.Nest(job);
            NestingPlan limited = SheetNesting.Nest(job with { Stock = [job.Stock[0] with { Available = free.Sheets.Count }] });
            NestingCheck.Holds(limited);
            tried++;
            short1 += limited.HasProblem ? 1 : 0;
            Assert.True(limited.HasProblem || limited.Cost <= free.Cost, $"{free}; {limited}");

            // What is left over goes on no sheet that was left unused.
            Assert.True(!limited.HasProblem || limited.Sheets.Count == free.Sheets.Count, $"{limited}");
        }

        output.WriteLine($"{short1} of {tried} short");
        Assert.True(short1 <= 1, $"{short1} of {tried}");
    }

    /// <summary>Too few sheets by proof: as much area as goes is placed. The eight are 3.5 m2.</summary>
    [Fact]
    public void Where_there_are_too_few_sheets_little_is_left_over()
    {
        (int Length, int Width)[] sizes = [(480, 679), (1014, 435), (1003, 614), (575, 622), (687, 552), (949, 540), (905, 485), (412, 502)];
        NestingJob job = new([.. sizes.Select(static size => new SheetPart(Mm(size.Length), Mm(size.Width), 1, mayTurn: false))], [new StockSheet(Mm(2440), Mm(1220), 38m) { Available = 1 }], SheetCutting.Routed) { Kerf = Mm(6), Effort = 2_000_000 };
        NestingPlan plan = SheetNesting.Nest(job);
        NestingCheck.Holds(plan);
        Assert.True(plan.HasProblem);
        double placed = plan.Sheets.Sum(static sheet => sheet.Pieces.Sum(static piece => piece.Length.Millimeters * piece.Width.Millimeters));
        output.WriteLine($"{plan}: {placed / 1e6} m2");

        // By hand: three below (1003 x 614, 687 x 552, 575 x 622: 2277 wide with two kerfs) and two above (1014 x 435, 905 x 485: 1925 wide, up to 1119 with a kerf): 2.23 m2.
        Assert.True(placed >= (1003 * 614) + (687 * 552) + (575 * 622) + (1014 * 435) + (905 * 485), $"{placed}");
    }

    /// <summary>The plan without offcuts stands whatever lies in the corner.</summary>
    [Fact]
    public void Offcuts_on_hand_do_not_make_it_dearer()
    {
        NestingJob job = new(
            [Locked(1283, 657), Locked(407, 846), Locked(974, 743, 2), Locked(1181, 458, 2), Locked(1136, 768, 3), Locked(754, 343, 3)],
            [new StockSheet(Mm(2440), Mm(1220), 38m)],
            SheetCutting.Sawn)
        { Effort = 5_000_000 };
        NestingPlan bought = SheetNesting.Nest(job), onHand = SheetNesting.Nest(job with { Offcuts = [new SheetOffcut(Mm(900), Mm(500)) { Count = 2 }, new SheetOffcut(Mm(1400), Mm(300))] });
        NestingCheck.Holds(onHand);
        Assert.Equal(114m, bought.Cost);
        Assert.True(onHand.Cost <= 114m, $"{onHand}");
    }

    /// <summary>By hand: 9 x 6 and 2 x 9 (turned or not) side by side on 8 x 9 of the sheet, 9 x 4 and 7 x 5 on the offcut.</summary>
    [Fact]
    public void A_sheet_and_an_offcut_hold_four_pieces()
    {
        NestingJob job = new(
            [new SheetPart(Mm(7), Mm(5), 1, mayTurn: false), new SheetPart(Mm(9), Mm(6), 1, mayTurn: true), new SheetPart(Mm(9), Mm(4), 1, mayTurn: true), new SheetPart(Mm(2), Mm(9), 1, mayTurn: true)],
            [new StockSheet(Mm(10), Mm(11), 1.48m)],
            SheetCutting.Routed)
        { Kerf = Mm(0), Trim = Mm(1), Offcuts = [new SheetOffcut(Mm(10), Mm(10))], Effort = 1_000_000 };
        NestingPlan plan = SheetNesting.Nest(job);
        NestingCheck.Holds(plan);
        Assert.Equal(1.48m, plan.Cost);
    }

    /// <summary>Three sizes to choose from hardly ever cost more than one of them alone: the effort is shared.</summary>
    [Theory]
    [InlineData(SheetCutting.Routed)]
    [InlineData(SheetCutting.Sawn)]
    public void More_sizes_hardly_ever_cost_more(SheetCutting cutting)
    {
        StockSheet[] stock = [new StockSheet(Mm(2440), Mm(1220), 38m), new StockSheet(Mm(3050), Mm(1525), 61.5m), new StockSheet(Mm(1525), Mm(1525), 33.25m)];
        Random random = new(5);
        int dearer = 0;
        for (int trial = 0; trial < 60; trial++)
        {
            NestingJob job = Filled(random, cutting, 1 + (2.5 * random.NextDouble())) with { Effort = 4_000_000 };
            decimal alone = stock.Min(sheet => SheetNesting.Nest(job with { Stock = [sheet] }).Cost);
            NestingPlan all = SheetNesting.Nest(job with { Stock = stock });
            NestingCheck.Holds(all);
            dearer += all.Cost > alone ? 1 : 0;
        }

        output.WriteLine($"{dearer} of 60 dearer");
        Assert.True(dearer <= 4, $"{dearer} of 60");
    }

    /// <summary>
    /// Twelve sizes, more than are tried alone: those that cost least for their area are, wherever they stand in the job. The last is the cheapest by area, and what it costs alone
    /// bounds what all cost; of the routed jobs one is cheapest on it and nothing else.
    /// </summary>
    [Theory]
    [InlineData(SheetCutting.Routed)]
    [InlineData(SheetCutting.Sawn)]
    public void The_cheapest_of_twelve_sizes_is_tried_alone_though_it_comes_last(SheetCutting cutting)
    {
        StockSheet[] stock = [.. Enumerable.Range(0, 12).Select(static i => Rated(1500 + (130 * i), 1000 + (47 * i), i == 11 ? 12.0m : 12.6m + (0.1m * ((i * 5) % 11))))];
        Random random = new(12);
        int dearer = 0, only = 0;
        for (int trial = 0; trial < 30; trial++)
        {
            NestingJob job = Filled(random, cutting, 2.5 + (2 * random.NextDouble()));
            NestingPlan last = SheetNesting.Nest(job with { Stock = [stock[11]], Effort = 300_000 }), all = SheetNesting.Nest(job with { Stock = stock, Effort = 4_000_000 });
            NestingCheck.Holds(all);
            dearer += all.Cost > last.Cost ? 1 : 0;
            only += all.Cost == last.Cost && all.Sheets.All(static sheet => sheet.Index == 11) ? 1 : 0;
            output.WriteLine($"{trial}: {all} {string.Join(", ", all.Purchases.Select(static buy => $"{buy.Count} of {buy.Stock}"))}; the last alone {last.Cost}");
        }

        Assert.True(dearer == 0, $"{dearer} of 30 dearer than the last size alone");
        Assert.True(only > 0 || cutting == SheetCutting.Sawn, $"{only} of the last size only");

        static StockSheet Rated(double length, double width, decimal rate) => new(Mm(length), Mm(width), decimal.Round((decimal)(length * width / 1e6) * rate, 2));
    }

    /// <summary>By hand: one piece of 500 x 300 costs 38 whichever is bought; 2440 x 1220 is 2.977 m2, 2500 x 1250 is 3.125.</summary>
    [Theory]
    [InlineData(SheetCutting.Routed)]
    [InlineData(SheetCutting.Sawn)]
    public void Of_sheets_at_one_price_the_smaller_is_bought(SheetCutting cutting)
    {
        StockSheet large = new(Mm(2500), Mm(1250), 38m), small = new(Mm(2440), Mm(1220), 38m);
        foreach (StockSheet[] stock in new[] { [large, small], new[] { small, large } })
        {
            NestingPlan plan = SheetNesting.Nest(new NestingJob([Locked(500, 300)], stock, cutting) { Kerf = Mm(3) });
            Assert.Equal(2440, Assert.Single(plan.Sheets).Length.Millimeters);
        }

        // As large as it has to be: 2440 less twice 5 is less than 2431.
        Assert.Equal(2500, Assert.Single(SheetNesting.Nest(new NestingJob([Locked(2431, 300)], [small, large], cutting) { Kerf = Mm(3) }).Sheets).Length.Millimeters);

        // Only one of the smaller: the second piece gets the larger.
        Assert.Equal([1220, 1250], SheetNesting.Nest(new NestingJob([Locked(2000, 1000, 2)], [large, small with { Available = 1 }], cutting) { Kerf = Mm(3) }).Sheets.Select(static sheet => sheet.Width.Millimeters).Order());
    }

    /// <summary>The pieces of a sheet by themselves, with one sheet of a smaller size at the same price: hardly ever is there a layout that the exchange, which is shorter than that search, did not find: 12 of 379 routed and 5 of 391 sawn when it was made, 62 of 429 and 49 of 437 without it.</summary>
    [Theory]
    [InlineData(SheetCutting.Routed, 15)]
    [InlineData(SheetCutting.Sawn, 8)]
    public void What_lies_on_a_sheet_hardly_ever_goes_on_a_smaller_one_of_the_same_price(SheetCutting cutting, int most)
    {
        StockSheet[] stock = [new(Mm(2500), Mm(1250), 38m), new(Mm(2440), Mm(1220), 38m), new(Mm(2000), Mm(1000), 38m)];
        Random random = new(77);
        int tried = 0, missed = 0, kept = 0;
        for (int trial = 0; trial < 120; trial++)
        {
            NestingJob job = Filled(random, cutting, 0.5 + (3 * random.NextDouble())) with { Effort = 1_000_000, Stock = stock };
            NestingPlan plan = SheetNesting.Nest(job);
            NestingCheck.Holds(plan);
            foreach (NestedSheet sheet in plan.Sheets)
            {
                kept += sheet.Index > 0 ? 1 : 0;
                for (int smaller = sheet.Index + 1; smaller < stock.Length; smaller++)
                {
                    SheetPart[] own = [.. sheet.Pieces.GroupBy(static piece => piece.Part).Select(group => job.Parts[group.Key] with { Count = group.Count() })];
                    tried++;
                    missed += SheetNesting.Nest(job with { Effort = 100_000, Stock = [stock[smaller] with { Available = 1 }], Parts = own }).HasProblem ? 0 : 1;
                }
            }
        }

        output.WriteLine($"{missed} of {tried} missed, {kept} on a smaller sheet");
        Assert.True(tried > 200 && kept > 20, $"{tried} tried, {kept} on a smaller sheet");
        Assert.True(missed <= most, $"{missed} of {tried} would go on a smaller sheet");
    }

    /// <summary>Three pieces on two sheets at 38, proven at once; one large sheet at 120 would hold them, which is no reason to go on.</summary>
    [Fact]
    public void A_dearer_sheet_that_holds_all_does_not_keep_it_searching()
    {
        NestingPlan plan = SheetNesting.Nest(new NestingJob([Locked(1000, 1000, 3)], [new StockSheet(Mm(2440), Mm(1220), 38m), new StockSheet(Mm(3050), Mm(2050), 120m)], SheetCutting.Sawn));
        Assert.Equal(76m, plan.Cost);
        Assert.True(plan.Proven);
        Assert.True(plan.Nodes < 100_000, $"{plan.Nodes} nodes");
    }

    /// <summary>A bought sheet that is half empty is gathered, though the offcut beside it has less on it: alone it keeps as much.</summary>
    [Fact]
    public void The_sheet_with_most_room_left_is_gathered()
    {
        SheetPart[] parts = [Locked(403, 285), Locked(357, 387), Locked(478, 478), Locked(287, 485), Locked(557, 235)];
        NestingJob job = new(parts, [new StockSheet(Mm(2440), Mm(1220), 38m)], SheetCutting.Sawn);
        NestingPlan alone = SheetNesting.Nest(job), beside = SheetNesting.Nest(job with { Parts = [Locked(2435, 60), .. parts], Offcuts = [new SheetOffcut(Mm(2440), Mm(65))] });
        Assert.Equal(2, beside.Sheets.Count);
        output.WriteLine($"{Largest(alone)} and {Largest(beside)} m2");
        Assert.True(Largest(beside) >= 0.98 * Largest(alone), $"{Largest(alone)} and {Largest(beside)}");
    }

    /// <summary>The last aim is followed where the cost is not proven and the effort runs out.</summary>
    [Fact]
    public void The_emptiest_sheet_is_gathered_without_a_proof()
    {
        Random random = new(9);
        int gathered = 0, tried = 0;
        while (tried < 10)
        {
            NestingJob job = Filled(random, SheetCutting.Sawn, 2.4) with { Effort = 2_000_000 };
            NestingPlan plan = SheetNesting.Nest(job);
            if (plan.Proven)
            {
                continue;
            }

            // The pieces of the emptiest sheet by themselves: proven, and gathered with all of the effort.
            NestedSheet emptiest = plan.Sheets.OrderBy(static sheet => sheet.Pieces.Sum(static piece => piece.Length.Millimeters * piece.Width.Millimeters)).First();
            NestingPlan alone = SheetNesting.Nest(job with { Parts = [.. emptiest.Pieces.GroupBy(static piece => piece.Part).Select(group => job.Parts[group.Key] with { Count = group.Count() })] });
            tried++;
            gathered += Largest(emptiest) >= 0.95 * Largest(alone) ? 1 : 0;
        }

        output.WriteLine($"{gathered} of {tried}");
        Assert.True(gathered >= 8, $"{gathered} of {tried}");
    }

    /// <summary>Sizes by the hundred do not overrun a small effort.</summary>
    [Fact]
    public void Bounds_keep_to_the_effort()
    {
        Random random = new(3);
        NestingJob job = new(
            [.. Enumerable.Range(0, 200).Select(_ => new SheetPart(Mm(random.Next(100, 900)), Mm(random.Next(100, 900)), 1, mayTurn: true))],
            [.. Enumerable.Range(0, 20).Select(static i => new StockSheet(Mm(2000 + (37 * i)), Mm(1000 + (29 * i)), 30m + i))],
            SheetCutting.Routed)
        { Kerf = Mm(6), Offcuts = [.. Enumerable.Range(0, 100).Select(static i => new SheetOffcut(Mm(500 + (7 * i)), Mm(400 + (3 * i))))], Effort = 1000 };
        NestingPlan plan = SheetNesting.Nest(job);
        Assert.True(plan.Nodes < 15_000_000, $"{plan.Nodes} nodes");
    }

    private static SheetPart Locked(double length, double width, int count = 1) => new(Mm(length), Mm(width), count, mayTurn: false);

    private static double Largest(NestingPlan plan) => plan.Sheets.Max(Largest);

    private static double Largest(NestedSheet sheet) => sheet.Kept.Select(static kept => kept.Length.Meters * kept.Width.Meters).DefaultIfEmpty().Max();

    private static NestingJob Filled(Random random, SheetCutting cutting, double sheets)
    {
        List<SheetPart> parts = [];
        for (double area = 0; area < sheets * 2440 * 1220;)
        {
            SheetPart part = new(Mm(random.Next(250, 1200)), Mm(random.Next(250, 700)), 1, random.Next(0, 2) == 0);
            parts.Add(part);
            area += part.Length.Millimeters * part.Width.Millimeters;
        }

        return new NestingJob(parts, [new StockSheet(Mm(2440), Mm(1220), 38m)], cutting) { Kerf = Mm(3) };
    }
}
