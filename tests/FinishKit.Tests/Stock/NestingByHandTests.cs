using System;
using System.Collections.Generic;
using System.Linq;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Stock;

/// <summary>Small jobs worked by hand, one for each thing that a layout may get wrong without any sum or overlap being off.</summary>
public sealed class NestingByHandTests
{
    /// <summary>Two of 400 x 300 and one offcut of that size: the other costs a sheet. With two offcuts nothing is bought.</summary>
    [Theory]
    [InlineData(1, 5)]
    [InlineData(2, 0)]
    public void An_offcut_is_used_as_often_as_it_is_there(int count, int cost)
    {
        NestingPlan plan = Nest(Job([Part(400, 300, 2)], Sheet(1000, 500, 5)) with { Offcuts = [new SheetOffcut(Mm(400), Mm(300)) { Count = count }] });
        Assert.Equal((cost, true), ((int)plan.Cost, plan.Proven));
        Assert.True(plan.Sheets.Count(static sheet => sheet.IsOffcut) <= count);
    }

    /// <summary>A sheet is trimmed by 5, an offcut is not: a piece of its size goes on it, at its corner.</summary>
    [Fact]
    public void An_offcut_is_not_trimmed()
    {
        NestingPlan plan = Nest(Job([Part(400, 300)], Sheet(1000, 500, 5)) with { Trim = Mm(5), Offcuts = [new SheetOffcut(Mm(400), Mm(300))] });
        NestedSheet offcut = Assert.Single(plan.Sheets);
        Assert.Equal((true, 0m), (offcut.IsOffcut, plan.Cost));
        Assert.Equal((0, 0), (offcut.Pieces[0].Along.Millimeters, offcut.Pieces[0].Across.Millimeters));
        Assert.Empty(offcut.Cuts);
    }

    /// <summary>What is on hand comes first: 700 x 400 on the offcut, 900 x 400 on the sheet; one is bought, at 5.</summary>
    [Fact]
    public void Offcuts_come_first_and_are_not_bought()
    {
        NestingPlan plan = Nest(Job([Part(900, 400), Part(700, 400)], Sheet(1000, 500, 5)) with { Offcuts = [new SheetOffcut(Mm(700), Mm(400))] });
        Assert.Equal([true, false], plan.Sheets.Select(static sheet => sheet.IsOffcut));
        Assert.Equal((2.0, 1.0, 5.0), (Figure(plan, "sheets"), Figure(plan, "bought"), Figure(plan, "cost")));
    }

    /// <summary>1000 x 1000 less 850 x 1000: a strip 150 along and 1000 across. Its longer side is the one across.</summary>
    [Fact]
    public void A_remnant_is_measured_by_its_longer_side_whichever_way_it_lies()
    {
        NestedSheet sheet = Assert.Single(Nest(Job([Part(850, 1000)], Sheet(1000, 1000, 5))).Sheets);
        SheetRemnant left = Assert.Single(sheet.Kept);
        Assert.Equal((850, 0, 150, 1000), (left.Along.Millimeters, left.Across.Millimeters, left.Length.Millimeters, left.Width.Millimeters));
    }

    /// <summary>2500 x 900 goes on the dearer sheet only: 26, and that one is named.</summary>
    [Fact]
    public void The_price_is_that_of_the_sheet_bought()
    {
        NestingPlan plan = Nest(Job([Part(2500, 900)], Sheet(2000, 1000, 20), Sheet(3000, 1000, 26)));
        SheetPurchase bought = Assert.Single(plan.Purchases);
        Assert.Equal((26m, 26m, 1, 26m, 1), (plan.Cost, bought.Cost, bought.Stock, bought.Sheet.Price, bought.Count));
    }

    [Fact]
    public void A_sheet_that_costs_nothing_is_not_bought()
    {
        NestingPlan plan = Nest(Job([Part(900, 400)], Sheet(1000, 500, 0)));
        Assert.Empty(plan.Purchases);
        Assert.Equal((1, 0m, true), (plan.Sheets.Count, plan.Cost, plan.Proven));
        Assert.Equal(0, Figure(plan, "bought"));
    }

    /// <summary>One piece goes on no sheet: nothing is said of what all of them cost at least, though the other is placed.</summary>
    [Fact]
    public void With_a_piece_too_large_there_is_no_least_cost()
    {
        NestingPlan plan = SheetNesting.Nest(Job([Part(300, 900), Part(300, 300)], Sheet(1000, 500, 5)));
        NestingCheck.Holds(plan);
        Assert.Equal((1, true, null, null, false), (plan.Sheets.Count, plan.HasProblem, plan.LeastCost, plan.LeastSheets, plan.Proven));
    }

    /// <summary>A sheet of 100 x 100 at 1 holds no piece of 900 x 900, and 81 of them do not either: 10 is the least, and proven.</summary>
    [Fact]
    public void A_sheet_on_which_no_piece_goes_proves_nothing()
    {
        NestingPlan plan = Nest(Job([Part(900, 900)], Sheet(100, 100, 1), Sheet(1000, 1000, 10)));
        Assert.Equal((10m, 10m, true), (plan.Cost, plan.LeastCost, plan.Proven));
    }

    /// <summary>Two of 1000 x 500 on one sheet at 10 or on two at 5: the same money, so the one.</summary>
    [Theory]
    [InlineData(SheetCutting.Sawn)]
    [InlineData(SheetCutting.Routed)]
    public void Of_equal_cost_the_fewer_sheets(SheetCutting cutting)
    {
        NestingPlan plan = Nest(Job([Part(1000, 500, 2)], Sheet(1000, 500, 5), Sheet(1000, 1000, 10)) with { Cutting = cutting });
        Assert.Equal((10m, true, 1), (plan.Cost, plan.Proven, plan.Sheets.Count));
        plan = Nest(Job([Part(1000, 250, 12)], Sheet(1000, 500, 5), Sheet(1000, 1000, 10), Sheet(1000, 1500, 15)) with { Cutting = cutting });
        Assert.Equal((30m, true, 2), (plan.Cost, plan.Proven, plan.Sheets.Count)); // two of 1500 hold 12 x 250
    }

    /// <summary>61 x 50 takes 61 of the 103 and leaves no room for another; turned, two take 100, and neither fills the sheet's width of 63.</summary>
    [Theory]
    [InlineData(SheetCutting.Sawn)]
    [InlineData(SheetCutting.Routed)]
    public void Pieces_that_go_straight_are_turned_where_more_of_them_go_so(SheetCutting cutting)
    {
        NestingPlan plan = Nest(Job([Part(61, 50, 2) with { MayTurn = true }], Sheet(103, 63, 5)) with { Cutting = cutting });
        Assert.Equal((1, true), (plan.Sheets.Count, plan.Proven));
        Assert.All(plan.Sheets[0].Pieces, static piece => Assert.True(piece.IsTurned));
    }

    /// <summary>Four of 500 x 250 on 1003 x 503, kerf 3: the cut along, 1003 long, comes before those across, 250 long; upright sheets the other way round.</summary>
    [Fact]
    public void The_longer_cut_comes_first()
    {
        NestedSheet sheet = Nest(Job([Part(500, 250, 4)], Sheet(1003, 503, 5)) with { Kerf = Mm(3) }).Sheets[0];
        Assert.Equal([(1, true, 0.0, 1003.0, 250.0), (2, false, 0, 250, 500), (3, false, 253, 503, 500)], sheet.Cuts.Select(static cut => (cut.Number, cut.IsAlongLength, cut.Start.Millimeters, cut.End.Millimeters, cut.Size.Millimeters)));
        sheet = Nest(Job([Part(250, 500, 4)], Sheet(503, 1003, 5)) with { Kerf = Mm(3) }).Sheets[0];
        Assert.Equal([false, true, true], sheet.Cuts.Select(static cut => cut.IsAlongLength));
    }

    /// <summary>Five of 1200 x 600: nine cuts for the four on a sheet (four trims, the end, the strip, the middle, both halves), six for the one.</summary>
    [Fact]
    public void Figures_count_sheets_and_cuts()
    {
        NestingPlan plan = Nest(new NestingJob([Part(1200, 600, 5)], [Sheet(2440, 1220, 40)], SheetCutting.Sawn));
        Assert.Equal((2.0, 2.0, 15.0, 80.0, 0.0), (Figure(plan, "sheets"), Figure(plan, "bought"), Figure(plan, "cuts"), Figure(plan, "cost"), Figure(plan, "unplaced")));
        Assert.Equal(5 * 1200 * 600, Figure(plan, "pieces-area"));
    }

    /// <summary>
    /// 60 x 40, two of 10 x 10, two of 30 x 30 and 20 x 40 go on 60 of a sheet's 100: the first over the whole 60, above it 20 x 40 beside two of 30 x 30
    /// one above the other (20 + 30 = 50, 40 + 30 + 30 = 100) and the small ones in the 10 that are left. So 40 x 100 stay in one piece.
    /// </summary>
    [Fact]
    public void What_is_left_of_a_sheet_stays_in_one_piece()
    {
        NestingPlan plan = Nest(Job([Part(60, 40), Part(10, 10, 2), Part(30, 30, 2), Part(20, 40)], Sheet(100, 100, 5)) with { LeastOffcutLength = Mm(10), LeastOffcutWidth = Mm(10), Effort = 100_000 });
        SheetRemnant largest = Assert.Single(plan.Sheets).Kept[0];
        Assert.True(largest.Length.Millimeters * largest.Width.Millimeters >= 4000, $"{largest}");
    }

    /// <summary>One sheet of 1000 x 500 is to be had and holds one of 600 x 400; three lack.</summary>
    [Fact]
    public void Pieces_that_lack_a_sheet_are_counted_and_named()
    {
        NestingPlan plan = SheetNesting.Nest(Job([Part(600, 400, 3), Part(600, 399)], Sheet(1000, 500, 5) with { Available = 1 }));
        NestingCheck.Holds(plan);
        Assert.Equal(("stock-too-few-sheets", 3.0), (plan.Findings[0].Code, plan.Findings[0].Values[0].Value));
        Assert.StartsWith("For 3 pieces no room was found, ", plan.Findings[0].Message, StringComparison.Ordinal);
        Assert.All(plan.Unplaced, part => Assert.Contains($"{part.Count} of 600 x {(part.Part == 0 ? 400 : 399)} mm", plan.Findings[0].Message, StringComparison.Ordinal));
    }

    /// <summary>A triangle of 600 x 400 / 2, either way round and begun at any corner.</summary>
    [Fact]
    public void An_outline_has_one_area_whichever_way_round()
    {
        MeasuredPoint[] corners = [At(600, 0), At(600, 400), At(0, 400)];
        for (int first = 0; first < 3; first++)
        {
            MeasuredPoint[] turned = [.. corners[first..], .. corners[..first]];
            Assert.Equal(120_000, Outlined(turned).PiecesArea.SquareMillimeters, 6);
            Assert.Equal(120_000, Outlined([.. Enumerable.Reverse(turned)]).PiecesArea.SquareMillimeters, 6);
        }
    }

    /// <summary>Each touches three sides of 600 x 400 and not the fourth, or comes back on itself.</summary>
    [Fact]
    public void An_outline_that_is_none_is_refused()
    {
        Assert.True(IsRefused(At(0, 0), At(600, 0), At(600, 390), At(0, 390)));
        Assert.True(IsRefused(At(0, 10), At(600, 10), At(600, 400), At(0, 400)));
        Assert.True(IsRefused(At(0, 0), At(590, 0), At(590, 400), At(0, 400)));
        Assert.True(IsRefused(At(10, 0), At(600, 0), At(600, 400), At(10, 400)));
        Assert.True(IsRefused(At(0, 0), At(600, 400), At(300, 200))); // there and back
        Assert.True(IsRefused(At(0, 0), At(600, 0), At(600, 400), At(300, 0), At(0, 400))); // a corner on the first side
        Assert.False(IsRefused(At(0, 0), At(600, 0), At(600, 400), At(300, 0.000001), At(0, 400)));
        Assert.False(IsRefused(Teeth(200)));
        Assert.True(IsRefused(Teeth(201)));

        static bool IsRefused(params MeasuredPoint[] corners) =>
            SheetNesting.Check(Job([Part(600, 400) with { Outline = corners }], Sheet(1000, 500, 5))) is { Count: > 0 } problems && Assert.Single(problems).Parameter == "job.Parts[0].Outline";

        static MeasuredPoint[] Teeth(int corners) =>
            [At(0, 0), At(600, 0), At(600, 400), .. Enumerable.Range(1, corners - 4).Select(static i => At(600 - (2.5 * i), i % 2 == 0 ? 200 : 300)), At(0, 400)];
    }

    private static NestingPlan Outlined(IReadOnlyList<MeasuredPoint> corners) => Nest(Job([Part(600, 400) with { Outline = corners }], Sheet(1000, 500, 5)));

    private static MeasuredPoint At(double along, double across) => new(Mm(along), Mm(across));

    /// <summary>No kerf and no trim, so that the hand has less to add.</summary>
    private static NestingJob Job(IReadOnlyList<SheetPart> parts, params StockSheet[] stock) => new(parts, stock, SheetCutting.Sawn) { Kerf = Mm(0), Trim = Mm(0), Effort = 1_000_000 };

    private static SheetPart Part(double length, double width, int count = 1) => NestingTests.Part(length, width, count);

    private static StockSheet Sheet(double length, double width, decimal price) => NestingTests.Sheet(length, width, price);

    private static NestingPlan Nest(NestingJob job)
    {
        NestingPlan plan = SheetNesting.Nest(job);
        NestingCheck.Holds(plan);
        Assert.False(plan.HasProblem);
        return plan;
    }

    private static double Figure(NestingPlan plan, string name) => plan.Figures().Single(figure => string.Equals(figure.Name, name, StringComparison.Ordinal)).Value;
}
