using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Numerics;
using System.Threading;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Stock;

/// <summary>What holds for every job of nesting, and small jobs against trying everything.</summary>
public sealed class NestingProperties(ITestOutputHelper output)
{
    /// <summary>One to five pieces in whole millimetres, many of them shares of a sheet that just fit or just do not.</summary>
    internal static NestingJob Small(Random random)
    {
        int kerf = random.Next(0, 4), kinds = random.Next(1, 3);
        List<StockSheet> stock = [];
        for (int i = 0; i < kinds; i++)
        {
            stock.Add(new StockSheet(Mm(random.Next(40, 120)), Mm(random.Next(40, 120)), random.Next(0, 10) == 0 ? 0 : random.Next(3, 20)) { Available = random.Next(0, 3) == 0 ? random.Next(0, 5) : null });
        }

        List<SheetPart> parts = [];
        for (int left = random.Next(1, 6); left > 0;)
        {
            StockSheet sheet = stock[random.Next(0, kinds)];
            int count = Math.Min(left, random.Next(1, 3));
            parts.Add(new SheetPart(Mm(Share((int)sheet.Length.Millimeters)), Mm(Share((int)sheet.Width.Millimeters)), count, random.Next(0, 2) == 0));
            left -= count;
        }

        return new NestingJob(parts, stock, random.Next(0, 2) == 0 ? SheetCutting.Sawn : SheetCutting.Routed)
        {
            Kerf = Mm(kerf),
            Trim = Mm(random.Next(0, 3) == 0 ? 2 : 0),
            Offcuts = random.Next(0, 4) == 0 ? [new SheetOffcut(Mm(random.Next(20, 80)), Mm(random.Next(20, 80))) { Count = random.Next(1, 3) }] : null,
            LeastOffcutLength = Mm(20),
            LeastOffcutWidth = Mm(5),
            Effort = 300_000,
        };

        int Share(int side) => random.Next(0, 3) switch
        {
            0 => Math.Max(1, ((side - (kerf * 2)) / 3 * random.Next(1, 3)) - random.Next(0, 2)),
            1 => Math.Max(1, ((side - kerf) / 2) + random.Next(-1, 2)),
            _ => random.Next(5, side),
        };
    }

    internal static NestingJob Large(Random random)
    {
        List<SheetPart> parts = [];
        for (int left = random.Next(5, 60); left > 0;)
        {
            int count = Math.Min(left, random.Next(1, 7));
            double length = random.Next(1000, 30000) / 20.0, width = random.Next(800, 16000) / 20.0;
            parts.Add(new SheetPart(Mm(length), Mm(width), count, random.Next(0, 2) == 0) { Name = parts.Count % 3 == 0 ? $"part {parts.Count}" : null, Outline = random.Next(0, 4) == 0 ? [new(Mm(0), Mm(0)), new(Mm(length), Mm(0)), new(Mm(length / 2), Mm(width)), new(Mm(0), Mm(width))] : null });
            left -= count;
        }

        StockSheet[] stock = [new(Mm(2440), Mm(1220), 38m), new(Mm(3050), Mm(1525), 61.5m) { Available = random.Next(0, 4) }, new(Mm(1525), Mm(1525), 33.25m)];
        return new NestingJob(parts, random.Next(0, 2) == 0 ? stock[..1] : stock, random.Next(0, 2) == 0 ? SheetCutting.Sawn : SheetCutting.Routed)
        {
            Kerf = Mm(random.Next(0, 70) / 10.0),
            Trim = Mm(random.Next(0, 100) / 10.0),
            LeastOffcutLength = Mm(random.Next(100, 600)),
            LeastOffcutWidth = Mm(random.Next(50, 200)),
            Offcuts = random.Next(0, 2) == 0 ? [new SheetOffcut(Mm(700), Mm(650)) { Count = 2 }, new SheetOffcut(Mm(1234.5), Mm(300))] : null,
            Effort = 300_000,
        };
    }

    /// <summary>
    /// Small jobs against trying everything: never better than possible, the bound never above what is possible with a router, the values
    /// never more on a sheet than they say, the least cost that which the values give; and nearly always as good as possible.
    /// </summary>
    [Fact]
    public void Small_jobs_are_as_good_as_trying_everything_and_their_proofs_hold()
    {
        Random random = new(4711);
        int possible = 0, best = 0, sawn = 0, sawnDearer = 0, proven = 0, mixed = 0, unplaced = 0;
        List<string> faults = [];
        for (int trial = 0; trial < 1500; trial++)
        {
            NestingJob job = Small(random);
            NestingPlan plan = SheetNesting.Nest(job, cancellation: TestContext.Current.CancellationToken);
            NestingCheck.Holds(plan);
            IReadOnlyList<(long, long, decimal, int)> sheets = Sheets(job);
            (long, long, bool)[] pieces = [.. job.Parts.SelectMany(part => Enumerable.Repeat(((long)part.Length.Millimeters + Kerf(job), (long)part.Width.Millimeters + Kerf(job), part.MayTurn), part.Count))];
            NestingOracle routed = new(pieces, sawn: false), oracle = job.Cutting == SheetCutting.Sawn ? new(pieces, sawn: true) : routed;
            faults.AddRange(Overvalued(plan, routed, sheets).Select(fault => $"{trial}: {fault}"));
            (decimal Cost, int Sheets)? least = oracle.Least(sheets), leastRouted = routed.Least(sheets);
            if (least is null)
            {
                if (!plan.HasProblem)
                {
                    faults.Add($"{trial}: placed what cannot be");
                }

                continue;
            }

            possible++;
            mixed += sheets.Count > 1 ? 1 : 0;
            sawn += job.Cutting == SheetCutting.Sawn ? 1 : 0;
            sawnDearer += least.Value.Cost > leastRouted!.Value.Cost ? 1 : 0;
            if (plan.HasProblem)
            {
                output.WriteLine($"{trial}: {least} is possible, {plan}");
                unplaced++;
                continue;
            }

            if (plan.Cost < least.Value.Cost || plan.Sheets.Count < least.Value.Sheets || plan.LeastCost > leastRouted.Value.Cost || plan.LeastSheets > leastRouted.Value.Sheets || NestingCheck.LeastByValues(plan) != (plan.LeastCost, plan.LeastSheets))
            {
                faults.Add($"{trial}: {plan}, {plan.LeastSheets} sheets least; possible {least}, routed {leastRouted}; by values {NestingCheck.LeastByValues(plan)}");
            }

            proven += plan.Proven ? 1 : 0;
            best += plan.Cost == least.Value.Cost ? 1 : 0;
            if (plan.Cost > least.Value.Cost)
            {
                output.WriteLine($"{trial}: {least} is possible, {plan}: {string.Join("; ", job.Parts)} from {string.Join("; ", job.Stock)} {string.Join("; ", job.Offcuts ?? [])} kerf {job.Kerf} trim {job.Trim} {job.Cutting}");
            }
        }

        output.WriteLine($"{possible} possible, {best} at the least cost, {proven} proven, {sawn} sawn of which {sawnDearer} cost more than routed");
        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
        Assert.True(possible > 900 && mixed > 400 && sawn > 400 && sawnDearer >= 3, $"{possible} possible, {mixed} mixed, {sawn} sawn, {sawnDearer} dearer");
        Assert.True(unplaced == 0, $"{unplaced} that can be placed are not");
        Assert.True(best >= 0.99 * possible, $"{best} of {possible}");
        Assert.True(proven >= 0.85 * possible, $"{proven} of {possible} proven");
    }

    /// <summary>Two kinds of sheets, one or two of each, and mostly more pieces than go on them: no piece is left over that goes on a sheet that is left.</summary>
    [Theory]
    [InlineData(SheetCutting.Routed)]
    [InlineData(SheetCutting.Sawn)]
    public void No_sheet_is_left_that_a_piece_left_over_goes_on(SheetCutting cutting)
    {
        Random random = new(191);
        int left = 0, unused = 0;
        for (int trial = 0; trial < 1500; trial++)
        {
            StockSheet[] stock = [.. Enumerable.Range(0, 2).Select(_ => new StockSheet(Mm(random.Next(40, 120)), Mm(random.Next(40, 120)), random.Next(3, 20)) { Available = random.Next(1, 3) })];
            SheetPart[] parts = [.. Enumerable.Range(0, random.Next(2, 7)).Select(_ => new SheetPart(Mm(random.Next(20, 100)), Mm(random.Next(20, 100)), 1, random.Next(2) == 0))];
            NestingPlan plan = SheetNesting.Nest(new NestingJob(parts, stock, cutting) { Kerf = Mm(1), Trim = Mm(0), Effort = 100_000 }, cancellation: TestContext.Current.CancellationToken);
            NestingCheck.Holds(plan);
            left += plan.Unplaced.Any(static part => !part.IsTooLarge) ? 1 : 0;
            foreach (StockSheet sheet in stock.Where((sheet, kind) => plan.HasProblem && plan.Sheets.Count(used => used.Index == kind) < sheet.Available))
            {
                unused++;
                Assert.All(plan.Unplaced, piece => Assert.False(Goes(parts[piece.Part], sheet), $"{trial}: {piece}, {sheet} is left, {plan}"));
            }
        }

        output.WriteLine($"{left} with pieces left, {unused} kinds of sheets left beside them");
        Assert.True(left > 300 && unused > 100, $"{left} with pieces left, {unused} kinds of sheets left beside them");

        static bool Goes(SheetPart part, StockSheet sheet)
        {
            (double a, double b, double l, double w) = (part.Length.Millimeters, part.Width.Millimeters, sheet.Length.Millimeters, sheet.Width.Millimeters);
            return (a <= l && b <= w) || (part.MayTurn && b <= l && a <= w);
        }
    }

    [Property(MaxTest = 150)]
    public void Every_part_is_placed_once_and_areas_and_money_add_up(uint seed)
    {
        NestingPlan plan = SheetNesting.Nest(Large(new Random((int)seed)));
        NestingCheck.Holds(plan);
        Assert.True(plan.Nodes <= 300_000 + 150_000, $"{plan.Nodes} nodes");
        WorkingsCheck.Recompute(plan.Explain());
    }

    /// <summary>The same layout twice, under a culture with other signs and separators, and asked for in inches and metres.</summary>
    [Property(MaxTest = 40)]
    public void The_same_job_gives_the_same_layout(uint seed)
    {
        NestingJob job = Large(new Random((int)seed));
        string first = Text(SheetNesting.Nest(job));
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("ar-SA");
            Assert.Equal(first, Text(SheetNesting.Nest(Large(new Random((int)seed)))));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.Equal(first, Text(SheetNesting.Nest(job with
        {
            Parts = [.. job.Parts.Select(static part => part with { Length = Length.FromInches(part.Length.Millimeters / 25.4), Width = Length.FromFeet(part.Width.Millimeters / 304.8) })],
            Kerf = Length.FromInches(job.Kerf!.Value.Millimeters / 25.4),
            Trim = Length.FromMeters(job.Trim!.Value.Millimeters / 1000),
        })));
    }

    /// <summary>All lengths twice as long: the same layout twice as large. All prices three times as high: three times the cost. Pieces one by one: the same cost.</summary>
    [Property(MaxTest = 40)]
    public void Lengths_and_prices_scale(uint seed)
    {
        NestingJob job = Large(new Random((int)seed)) with { Offcuts = null };
        NestingPlan plan = SheetNesting.Nest(job);
        NestingPlan twice = SheetNesting.Nest(job with
        {
            Parts = [.. job.Parts.Select(static part => part with { Length = Twice(part.Length), Width = Twice(part.Width), Outline = part.Outline is { } outline ? [.. outline.Select(static corner => new MeasuredPoint(Twice(corner.Along), Twice(corner.Offset)))] : null })],
            Stock = [.. job.Stock.Select(static sheet => sheet with { Length = Twice(sheet.Length), Width = Twice(sheet.Width) })],
            Kerf = Twice(job.Kerf!.Value),
            Trim = Twice(job.Trim!.Value),
            LeastOffcutLength = Twice(job.LeastOffcutLength!.Value),
            LeastOffcutWidth = Twice(job.LeastOffcutWidth!.Value),
        });
        NestingCheck.Holds(twice);
        Assert.Equal((plan.Cost, plan.LeastCost, plan.Sheets.Count, plan.LeastSheets, plan.Nodes), (twice.Cost, twice.LeastCost, twice.Sheets.Count, twice.LeastSheets, twice.Nodes));
        Assert.Equal(4 * plan.Waste.SquareMillimeters, twice.Waste.SquareMillimeters, 1);
        NestingPlan dear = SheetNesting.Nest(job with { Stock = [.. job.Stock.Select(static sheet => sheet with { Price = 3 * sheet.Price })] });
        Assert.Equal((3 * plan.Cost, 3 * plan.LeastCost, plan.Sheets.Count), (dear.Cost, dear.LeastCost, dear.Sheets.Count));
        NestingPlan singly = SheetNesting.Nest(job with { Parts = [.. job.Parts.SelectMany(static part => Enumerable.Repeat(part with { Count = 1 }, part.Count))] });
        Assert.Equal((plan.Cost, plan.LeastCost, plan.Sheets.Count), (singly.Cost, singly.LeastCost, singly.Sheets.Count));

        static Length Twice(Length length) => Mm(2 * length.Millimeters);
    }

    /// <summary>In the opposite order the layout may be another, but the bounds are the same and neither is broken.</summary>
    [Property(MaxTest = 40)]
    public void The_order_of_parts_does_not_touch_the_bound(uint seed)
    {
        NestingJob job = Large(new Random((int)seed));
        NestingPlan plan = SheetNesting.Nest(job), mirrored = SheetNesting.Nest(job with { Parts = [.. job.Parts.Reverse()] });
        NestingCheck.Holds(mirrored);
        if (!plan.HasProblem && !mirrored.HasProblem)
        {
            Assert.Equal((plan.LeastCost, plan.LeastSheets), (mirrored.LeastCost, mirrored.LeastSheets));
            Assert.True(!(plan.Proven && mirrored.Proven) || plan.Cost == mirrored.Cost);
        }
    }

    /// <summary>A wider kerf, one piece more, one offcut less or the grain locked never cost less, where both costs are proven.</summary>
    [Fact]
    public void Asking_more_never_costs_less()
    {
        Random random = new(99);
        int compared = 0;
        for (int trial = 0; trial < 150; trial++)
        {
            NestingJob job = Small(random);
            NestingPlan plan = SheetNesting.Nest(job, cancellation: TestContext.Current.CancellationToken);
            foreach (NestingJob more in new[]
            {
                job with { Kerf = Mm(job.Kerf!.Value.Millimeters + 1) },
                job with { Parts = [.. job.Parts, NestingTests.Part(30, 20)] },
                job with { Offcuts = null },
                job with { Trim = Mm(job.Trim!.Value.Millimeters + 1) },
                job with { Parts = [.. job.Parts.Select(static part => part with { MayTurn = false })] },
                job with { Stock = [.. job.Stock.Select(static sheet => sheet with { Length = Mm(sheet.Length.Millimeters - 7) })] },
            })
            {
                NestingPlan other = SheetNesting.Nest(more, cancellation: TestContext.Current.CancellationToken);
                if (plan.Proven && other.Proven)
                {
                    compared++;
                    Assert.True(other.Cost >= plan.Cost, $"trial {trial}: {other.Cost} for more, {plan.Cost} before");
                }
            }
        }

        Assert.True(compared > 300, $"{compared}");
    }

    [Fact]
    public void Progress_grows_and_ends_at_one_and_cancelling_throws()
    {
        NestingJob job = Hard();
        List<double> told = [];
        SheetNesting.Nest(job with { Effort = 1_000_000 }, new Told(told.Add), TestContext.Current.CancellationToken);
        Assert.True(told.Count > 3);
        Assert.Equal(told.Order(), told);
        Assert.Equal(1, told[^1]);
        using CancellationTokenSource source = new();
        Assert.Throws<OperationCanceledException>(() => SheetNesting.Nest(job, new Told(_ => source.Cancel()), source.Token));
        Assert.Throws<OperationCanceledException>(() => SheetNesting.Nest(job, null, new CancellationToken(true)));
    }

    private static NestingJob Hard()
    {
        Random random = new(5);
        return new NestingJob([.. Enumerable.Range(0, 60).Select(_ => new SheetPart(Mm(random.Next(300_000, 900_000) / 1000.0), Mm(random.Next(200_000, 600_000) / 1000.0), 2, mayTurn: true))], [NestingTests.Sheet(2440, 1220, 38m)], SheetCutting.Sawn);
    }

    private static long Kerf(NestingJob job) => (long)job.Kerf!.Value.Millimeters;

    private static IReadOnlyList<(long, long, decimal, int)> Sheets(NestingJob job)
    {
        long extra = Kerf(job) - (2 * (long)job.Trim!.Value.Millimeters);
        return [.. job.Stock.Select(sheet => ((long)sheet.Length.Millimeters + extra, (long)sheet.Width.Millimeters + extra, sheet.Price, sheet.Available ?? int.MaxValue)),
            .. (job.Offcuts ?? []).Select(offcut => ((long)offcut.Length.Millimeters + Kerf(job), (long)offcut.Width.Millimeters + Kerf(job), 0m, offcut.Count))];
    }

    /// <summary>Sets of pieces that go on a sheet and are worth more than a valuation says it holds.</summary>
    private static IEnumerable<string> Overvalued(NestingPlan plan, NestingOracle oracle, IReadOnlyList<(long Length, long Width, decimal, int)> sheets)
    {
        int[] part = [.. plan.Job.Parts.SelectMany(static (part, i) => Enumerable.Repeat(i, part.Count))];
        for (int set = 1; set < 1 << part.Length; set++)
        {
            for (int sheet = 0; sheet < sheets.Count; sheet++)
            {
                foreach (PartValuation value in plan.Valuations)
                {
                    BigInteger worth = Enumerable.Range(0, part.Length).Where(piece => (set & (1 << piece)) != 0).Aggregate(BigInteger.Zero, (sum, piece) => sum + value.Values[part[piece]]);
                    long most = sheet < plan.Job.Stock.Count ? value.MostOfStock[sheet] : value.MostOfOffcuts[sheet - plan.Job.Stock.Count];
                    if (worth > most && oracle.Fits(set, sheets[sheet].Length, sheets[sheet].Width))
                    {
                        yield return $"set {set} is worth {worth} and goes on sheet {sheet}, of {most}";
                    }
                }
            }
        }
    }

    private static string Text(NestingPlan plan) => string.Join("\n",
    [
        plan.ToString(),
        .. plan.Sheets.Select(static sheet => $"{sheet} {string.Join(' ', sheet.Pieces)} {string.Join(' ', sheet.Cuts)} {string.Join(' ', sheet.Kept)}"),
        .. plan.Valuations.Select(static value => string.Join(' ', value.Values.Select(static one => one.ToString(CultureInfo.InvariantCulture)))),
        .. plan.Figures().Select(static figure => figure.ToString()),
        .. plan.Findings.Select(static finding => finding.Message),
    ]);

    private sealed class Told(Action<double> tell) : IProgress<double>
    {
        public void Report(double value) => tell(value);
    }
}
