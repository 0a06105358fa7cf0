using System;
using System.Linq;
using Xunit;
using static FinishKit.Measure;
using static FinishKit.Tests.Stock.NestingTests;

namespace FinishKit.Tests.Stock;

/// <summary>What is left of a routed sheet: worked by hand, and against trying every rectangle.</summary>
public sealed class SheetRemnantTests
{
    /// <summary>
    /// Squares of 50 and a kerf of 2.4 take 52.4: of 2430 + 2.4 go 46 in a row (2410.4), of 1210 + 2.4 go 23 rows (1205.2). Up to 138 lie in
    /// three rows, 157.2, above which 1210 - 157.2 = 1052.8 is left over the whole 2430; beside the third row, between the second and what is
    /// kept, only 50 are. Of 1058 nothing is left that is 100 wide.
    /// </summary>
    [Theory]
    [InlineData(120, 1)]
    [InlineData(121, 1)]
    [InlineData(138, 1)]
    [InlineData(1058, 0)]
    public void However_many_pieces_what_they_leave_is_kept(int pieces, int kept)
    {
        NestingPlan plan = SheetNesting.Nest(new NestingJob([Part(50, 50, pieces)], [Sheet(2440, 1220, 38m)], SheetCutting.Routed) { Kerf = Mm(2.4) });
        NestingCheck.Holds(plan);
        NestedSheet sheet = Assert.Single(plan.Sheets);
        Assert.Equal(Enumerable.Repeat((2430.0, 1052.8), kept), sheet.Kept.Select(static remnant => (remnant.Length.Millimeters, remnant.Width.Millimeters)));
        Assert.Equal(kept * 2430 * 1052.8, plan.KeptArea.SquareMillimeters, 3);
    }

    /// <summary>
    /// Three of 760 x 300 on 850 x 1000, one above the other: beside them 90 x 1000 = 90,000, too narrow to keep; above them the whole 850 x 100 =
    /// 85,000. The larger is not looked at, or it would cut 90 off the other.
    /// </summary>
    [Fact]
    public void A_sliver_takes_nothing_off_what_is_worth_keeping()
    {
        NestingJob job = new([Part(760, 300, 3)], [Sheet(850, 1000, 1m)], SheetCutting.Routed) { Kerf = Mm(0), Trim = Mm(0) };
        NestingPlan plan = SheetNesting.Nest(job);
        NestingCheck.Holds(plan);
        Assert.Equal([(850, 100)], plan.Sheets[0].Kept.Select(static kept => (kept.Length.Millimeters, kept.Width.Millimeters)));
        Assert.Equal(850 * 100, plan.KeptArea.SquareMillimeters, 6);

        // Where 90 is enough the larger comes first, and 760 x 100 is left of the other.
        NestingPlan narrow = SheetNesting.Nest(job with { LeastOffcutWidth = Mm(90) });
        NestingCheck.Holds(narrow);
        Assert.Equal([(90, 1000), (760, 100)], narrow.Sheets[0].Kept.Select(static kept => (kept.Length.Millimeters, kept.Width.Millimeters)));
    }

    /// <summary>The first that is kept is the largest rectangle worth keeping that there is, by trying every left, right, lower and upper side.</summary>
    [Fact]
    public void The_first_kept_is_the_largest_there_is()
    {
        Random random = new(1213);
        int compared = 0;
        for (int trial = 0; trial < 60; trial++)
        {
            double kerf = random.Next(0, 70) / 10.0, trim = random.Next(0, 100) / 10.0;
            SheetPart[] parts = [.. Enumerable.Range(0, random.Next(2, 14)).Select(_ => new SheetPart(Mm(random.Next(2000, 20000) / 20.0), Mm(random.Next(2000, 10000) / 20.0), 1, random.Next(0, 2) == 0))];
            NestingPlan plan = SheetNesting.Nest(new NestingJob(parts, [Sheet(1525, 1220, 30m)], SheetCutting.Routed) { Kerf = Mm(kerf), Trim = Mm(trim), Effort = 20_000 });
            NestingCheck.Holds(plan);
            foreach (NestedSheet sheet in plan.Sheets)
            {
                double largest = Largest(sheet, NestingCheck.Nm(Mm(kerf)), NestingCheck.Nm(Mm(trim)));
                Assert.Equal(largest, sheet.Kept.Count == 0 ? 0 : (double)NestingCheck.Nm(sheet.Kept[0].Length) * NestingCheck.Nm(sheet.Kept[0].Width));
                compared++;
            }
        }

        Assert.True(compared > 60, $"{compared} compared");
    }

    private static double Largest(NestedSheet sheet, long kerf, long trim)
    {
        Box[] pieces = [.. sheet.Pieces.Select(static piece => new Box(NestingCheck.Nm(piece.Along), NestingCheck.Nm(piece.Across), NestingCheck.Nm(piece.Along) + NestingCheck.Nm(piece.Length), NestingCheck.Nm(piece.Across) + NestingCheck.Nm(piece.Width)))];
        long right = NestingCheck.Nm(sheet.Length) - trim, top = NestingCheck.Nm(sheet.Width) - trim;
        long[] lefts = [trim, .. pieces.Select(box => box.Right + kerf)], rights = [right, .. pieces.Select(box => box.Left - kerf)];
        long[] bottoms = [trim, .. pieces.Select(box => box.Top + kerf)], tops = [top, .. pieces.Select(box => box.Bottom - kerf)];
        double largest = 0;
        foreach ((long left, long end) in lefts.SelectMany(left => rights.Select(end => (left, end))))
        {
            foreach ((long bottom, long head) in bottoms.SelectMany(bottom => tops.Select(head => (bottom, head))))
            {
                long longer = Math.Max(end - left, head - bottom), shorter = Math.Min(end - left, head - bottom);
                double area = (double)longer * shorter;
                if (longer >= 400_000_000 && shorter >= 100_000_000 && area > largest && pieces.All(box => box.Left >= end + kerf || box.Right + kerf <= left || box.Bottom >= head + kerf || box.Top + kerf <= bottom))
                {
                    largest = area;
                }
            }
        }

        return largest;
    }

    /// <summary>10,000 pieces on a sheet, and everything from 1 mm on is kept: it ends.</summary>
    [Fact]
    public void Of_many_pieces_what_is_left_is_found_in_time()
    {
        Random random = new(31);
        System.Diagnostics.Stopwatch clock = System.Diagnostics.Stopwatch.StartNew();
        SheetPart[] parts = [.. Enumerable.Range(0, 2000).Select(_ => new SheetPart(Mm(random.Next(20_000_000, 70_000_000) / 1e6), Mm(random.Next(20_000_000, 70_000_000) / 1e6), 5, mayTurn: true))];
        NestingPlan plan = SheetNesting.Nest(new NestingJob(parts, [Sheet(10_000, 10_000, 1m)], SheetCutting.Routed) { Kerf = Mm(0.1), LeastOffcutLength = Mm(1), LeastOffcutWidth = Mm(1), Effort = 1000 });
        Assert.Equal(3, plan.Sheets[0].Kept.Count);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(60), $"{clock.Elapsed}");
        TestContext.Current.TestOutputHelper?.WriteLine($"{clock.Elapsed}: {plan}, {string.Join("; ", plan.Sheets[0].Kept)}");
    }
}
