using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Threading;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Stock;

/// <summary>What holds for every job of cutting, and the least cost against trying everything.</summary>
public sealed class BoardCuttingProperties
{
    /// <summary>A few pieces, so that everything can be tried: lengths that often just fit, a kerf or none, packs, limits, boards on hand.</summary>
    internal static CuttingJob Small(Random random)
    {
        int kerf = random.Next(0, 4), kinds = random.Next(1, 4);
        List<StockBoard> stock = [];
        for (int i = 0; i < kinds; i++)
        {
            stock.Add(new StockBoard(Mm(1000 + (random.Next(0, 8) * 100)), random.Next(0, 12) == 0 ? 0 : random.Next(3, 20))
            {
                Pack = random.Next(0, 3) == 0 ? random.Next(2, 4) : 1,
                Available = random.Next(0, 3) == 0 ? random.Next(0, 6) : null,
            });
        }

        List<BoardPart> parts = [];
        for (int left = random.Next(1, 8); left > 0;)
        {
            // Parts of a board, so that two or three fill it exactly, kerfs and all; and others.
            long board = (long)stock[random.Next(0, kinds)].Length.Millimeters;
            int share = random.Next(1, 5);
            long length = random.Next(0, 2) == 0 ? Math.Max(1, ((board - ((share - 1) * kerf)) / share) - random.Next(0, 2)) : random.Next(50, (int)board);
            int count = Math.Min(left, random.Next(1, 4));
            parts.Add(new BoardPart(Mm(length), count));
            left -= count;
        }

        return new CuttingJob(parts, stock)
        {
            Kerf = Mm(kerf),
            EndTrim = Mm(random.Next(0, 3) == 0 ? 5 : 0),
            Offcuts = random.Next(0, 3) == 0 ? [new BoardOffcut(Mm(random.Next(100, 900))) { Count = random.Next(1, 3) }] : null,
        };
    }

    internal static CuttingJob Large(Random random)
    {
        List<BoardPart> parts = [];
        for (int left = random.Next(10, 150); left > 0;)
        {
            int count = Math.Min(left, random.Next(1, 9));
            parts.Add(new BoardPart(Mm(random.Next(800, 48000) / 20.0), count) { Name = parts.Count % 3 == 0 ? $"part {parts.Count}" : null });
            left -= count;
        }

        StockBoard[] stock = [new(Mm(2438), 9.8m), new(Mm(3048), 12.6m) { Pack = random.Next(1, 4) }, new(Mm(3658), 14.95m) { Available = random.Next(1, 30) }];
        return new CuttingJob(parts, random.Next(0, 2) == 0 ? stock[..1] : stock)
        {
            Kerf = Mm(random.Next(0, 40) / 10.0),
            LeastOffcut = Mm(random.Next(200, 600)),
            Offcuts = random.Next(0, 2) == 0 ? [new BoardOffcut(Mm(700)) { Count = 2 }, new BoardOffcut(Mm(1234.5))] : null,
            Effort = 3_000_000,
        };
    }

    /// <summary>Every small job is proven, and the cost is that of trying everything; where nothing can be cut whole, pieces are named.</summary>
    [Fact]
    public void Cost_of_small_jobs_is_the_least_of_all()
    {
        Random random = new(4711);
        int possible = 0, dearerThanFirstFit = 0, packs = 0;
        for (int trial = 0; trial < 700; trial++)
        {
            CuttingJob job = Small(random);
            CuttingPlan plan = BoardCutting.Cut(job);
            CuttingCheck.Holds(plan);
            decimal? least = CuttingCheck.Least(job);
            if (least is null)
            {
                Assert.True(plan.HasProblem, $"trial {trial}: {job}");
                continue;
            }

            possible++;
            packs += plan.Purchases.Any(static purchase => purchase.BoardsBought > purchase.BoardsUsed) ? 1 : 0;
            dearerThanFirstFit += plan.Valuations.Count > 1 ? 1 : 0;
            Assert.False(plan.HasProblem, $"trial {trial}: {least} is possible");
            Assert.True(least == plan.Cost && least == plan.LeastCost, $"trial {trial}: {least} is possible, {plan} ({plan.LeastCost}): {string.Join(", ", job.Parts)}; {string.Join(", ", job.Stock)}; {string.Join(", ", job.Offcuts ?? [])}; kerf {job.Kerf}, trim {job.EndTrim}");
            Assert.True(plan.Proven);
        }

        // The hard part is there: most can be cut, some with a broken pack.
        Assert.True(possible > 400, $"{possible} possible");
        Assert.True(packs > 40, $"{packs} with boards over in a pack");
        Assert.True(dearerThanFirstFit > 100, $"{dearerThanFirstFit}");
    }

    [Property]
    public void Every_part_is_cut_once_and_lengths_and_money_add_up(uint seed)
    {
        CuttingPlan plan = BoardCutting.Cut(Large(new Random((int)(seed & int.MaxValue))));
        CuttingCheck.Holds(plan);
        Assert.InRange(plan.Nodes, 1, 3_000_000);
    }

    /// <summary>Whatever the effort, it is not exceeded but for a first plan (see <see cref="CuttingCheck.MostNodes"/>); the plan is whole and its bound holds.</summary>
    [Fact]
    public void No_effort_is_exceeded()
    {
        Random random = new(77);
        int spent = 0, firstOnly = 0;
        for (int trial = 0; trial < 400; trial++)
        {
            CuttingJob job = trial % 4 == 0 ? Hard() : Large(random);
            CuttingPlan plan = BoardCutting.Cut(job with { Effort = (int)(1000 * Math.Pow(3000, random.NextDouble())) });
            CuttingCheck.Holds(plan);
            spent += !plan.Proven && plan.Nodes > 0.9 * plan.Job.Effort ? 1 : 0;
            firstOnly += plan.Nodes > plan.Job.Effort ? 1 : 0;
        }

        Assert.True(spent > 80 && firstOnly > 10, $"{spent} spent, {firstOnly} with a first plan beyond it");
    }

    /// <summary>The same plan twice, and under a culture with other signs and separators.</summary>
    [Property(MaxTest = 40)]
    public void The_same_job_gives_the_same_plan(uint seed)
    {
        string first = Text(Large(new Random((int)seed)));
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("ar-SA");
            Assert.Equal(first, Text(Large(new Random((int)seed))));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        static string Text(CuttingJob job)
        {
            CuttingPlan plan = BoardCutting.Cut(job);
            return string.Join("\n", [plan.ToString(), .. plan.Boards.Select(static board => $"{board} {board.SetUp} {board.Index} {string.Join(' ', board.Pieces.Select(static piece => piece.Part.ToString(CultureInfo.InvariantCulture)))}"), .. plan.Figures().Select(static figure => figure.ToString()), .. plan.Findings.Select(static finding => finding.Message)]);
        }
    }

    /// <summary>Parts asked in another order, one by one instead of by count, or in inches cost the same.</summary>
    [Property(MaxTest = 60)]
    public void Order_count_and_unit_do_not_matter(uint seed)
    {
        Random random = new((int)seed);
        CuttingJob job = Large(random);
        CuttingPlan plan = BoardCutting.Cut(job);
        BoardPart[] singly = [.. job.Parts.SelectMany(static part => Enumerable.Repeat(part with { Count = 1 }, part.Count)).OrderBy(_ => random.Next())];
        AssertSame(job with { Parts = singly });
        AssertSame(job with
        {
            Parts = [.. job.Parts.Select(static part => part with { Length = Length.FromInches(part.Length.Millimeters / 25.4) })],
            Stock = [.. job.Stock.Select(static board => board with { Length = Length.FromMeters(board.Length.Millimeters / 1000) })],
        });

        void AssertSame(CuttingJob other)
        {
            CuttingPlan same = BoardCutting.Cut(other);
            Assert.Equal(plan.Cost, same.Cost);
            Assert.Equal(plan.LeastCost, same.LeastCost);
            Assert.Equal(plan.Waste.Millimeters, same.Waste.Millimeters, 6);
            Assert.Equal(plan.SetUps, same.SetUps);
        }
    }

    /// <summary>All lengths twice as long: the same boards. All prices three times as high: three times the cost.</summary>
    [Property(MaxTest = 60)]
    public void Lengths_and_prices_scale(uint seed)
    {
        CuttingJob job = Large(new Random((int)seed)) with { EndTrim = Mm(10) };
        CuttingPlan plan = BoardCutting.Cut(job);
        CuttingPlan twice = BoardCutting.Cut(job with
        {
            Parts = [.. job.Parts.Select(static part => part with { Length = Mm(2 * part.Length.Millimeters) })],
            Stock = [.. job.Stock.Select(static board => board with { Length = Mm(2 * board.Length.Millimeters) })],
            Offcuts = job.Offcuts?.Select(static offcut => offcut with { Length = Mm(2 * offcut.Length.Millimeters) }).ToArray(),
            Kerf = Mm(2 * job.Kerf!.Value.Millimeters),
            EndTrim = Mm(20),
            LeastOffcut = Mm(2 * job.LeastOffcut!.Value.Millimeters),
        });
        Assert.Equal(plan.Cost, twice.Cost);
        Assert.Equal(2 * plan.Waste.Millimeters, twice.Waste.Millimeters, 6);
        CuttingPlan dear = BoardCutting.Cut(job with { Stock = [.. job.Stock.Select(static board => board with { Price = 3 * board.Price })] });
        Assert.Equal(3 * plan.Cost, dear.Cost);
        Assert.Equal(3 * plan.LeastCost, dear.LeastCost);
    }

    /// <summary>A wider kerf, one part more or one offcut less never cost less, where both costs are proven.</summary>
    [Property(MaxTest = 60)]
    public void Asking_more_never_costs_less(uint seed)
    {
        Random random = new((int)seed);
        CuttingJob job = Small(random);
        CuttingPlan plan = BoardCutting.Cut(job);
        foreach (CuttingJob more in new[]
        {
            job with { Kerf = Mm(job.Kerf!.Value.Millimeters + 1) },
            job with { Parts = [.. job.Parts, new BoardPart(Mm(300), 1)] },
            job with { Offcuts = null },
            job with { EndTrim = Mm(job.EndTrim!.Value.Millimeters + 7) },
            job with { Stock = [.. job.Stock.Select(static board => board with { Length = Mm(board.Length.Millimeters - 60) })] },
        })
        {
            CuttingPlan other = BoardCutting.Cut(more);
            if (!plan.HasProblem && !other.HasProblem)
            {
                Assert.True(plan.Proven && other.Proven);
                Assert.True(other.Cost >= plan.Cost, $"{other.Cost} for more, {plan.Cost} before");
            }
        }
    }

    [Fact]
    public void Progress_grows_and_ends_at_one_and_cancelling_throws()
    {
        CuttingJob job = Hard();
        List<double> told = [];
        BoardCutting.Cut(job with { Effort = 1_000_000 }, new Told(told.Add), TestContext.Current.CancellationToken);
        Assert.True(told.Count > 3);
        Assert.Equal(told.Order(), told);
        Assert.Equal(1, told[^1]);
        using CancellationTokenSource source = new();
        Assert.Throws<OperationCanceledException>(() => BoardCutting.Cut(job, new Told(_ => source.Cancel()), source.Token));
    }

    /// <summary>Triples that fill a board to the last nanometre: long to search.</summary>
    private static CuttingJob Hard()
    {
        Random random = new(5);
        List<BoardPart> parts = [];
        for (int i = 0; i < 60; i++)
        {
            double first = random.Next(380_000, 490_000) / 1000.0, second = random.Next(250_000, (int)((1000 - first) * 500)) / 1000.0;
            parts.Add(new BoardPart(Mm(first), 1));
            parts.Add(new BoardPart(Mm(second), 1));
            parts.Add(new BoardPart(Mm(Math.Round(1000 - first - second, 6)), 1));
        }

        return new CuttingJob(parts, [new StockBoard(Mm(1000), 1m)]) { Kerf = Mm(0), EndTrim = Mm(0) };
    }

    private sealed class Told(Action<double> tell) : IProgress<double>
    {
        public void Report(double value) => tell(value);
    }
}
