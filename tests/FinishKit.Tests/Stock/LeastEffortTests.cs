using System;
using System.Linq;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Stock;

/// <summary>With an effort of one step there is a first plan all the same; its bound is none that a better plan goes below. More effort takes no more than that and itself.</summary>
public class LeastEffortTests
{
    [Fact]
    public void Boards_are_cut()
    {
        int dearer = 0;
        foreach (PackingInstance instance in PackingSets.Van())
        {
            CuttingPlan plan = BoardCutting.Cut(instance.Job() with { Effort = 1 });
            CuttingCheck.Holds(plan);
            Assert.False(plan.HasProblem);
            Assert.True(plan.LeastCost <= instance.Best, instance.Name);
            dearer += plan.Cost > instance.Best ? 1 : 0;
        }

        // The search is for something.
        Assert.InRange(dearer, 20, 129);
    }

    /// <summary>Two boards of 1000 hold 400, 300 and 300 each; the greatest first leaves a 300, and with no effort that is not looked at again.</summary>
    [Fact]
    public void Limited_boards_may_need_more()
    {
        CuttingJob job = new([new BoardPart(Mm(400), 2), new BoardPart(Mm(300), 4)], [new StockBoard(Mm(1000), 5m) { Available = 2 }]) { Kerf = Mm(0), EndTrim = Mm(0), Effort = 1 };
        CuttingPlan plan = BoardCutting.Cut(job);
        CuttingCheck.Holds(plan);
        Assert.True(plan.HasProblem);
        Assert.False(plan.Proven);
        CuttingPlan whole = BoardCutting.Cut(job with { Effort = 10_000 });
        Assert.False(whole.HasProblem);
        Assert.Equal(10m, whole.Cost);
    }

    [Theory]
    [InlineData(SheetCutting.Routed)]
    [InlineData(SheetCutting.Sawn)]
    public void Sheets_are_nested(SheetCutting cutting)
    {
        int more = 0;
        foreach (NestingInstance instance in NestingSets.Van())
        {
            NestingPlan plan = SheetNesting.Nest(instance.Job(cutting) with { Effort = 1 });
            NestingCheck.Holds(plan);
            Assert.False(plan.HasProblem);
            Assert.True(plan.LeastSheets <= instance.Best, instance.Name);
            more += plan.Sheets.Count > instance.Best ? 1 : 0;
            foreach (int effort in new[] { 20_000, 500_000 })
            {
                NestingPlan longer = SheetNesting.Nest(instance.Job(cutting) with { Effort = effort });
                Assert.True(longer.Nodes <= effort + plan.Nodes, $"{instance.Name}: {longer.Nodes} of {effort}, {plan.Nodes} for the first");
                Assert.True(longer.Sheets.Count <= plan.Sheets.Count, instance.Name);
            }
        }

        Assert.InRange(more, 20, 129);
    }

    [Fact]
    public void Cloth_is_cut()
    {
        Random random = new(12);
        int shorter = 0;
        for (int trial = 0; trial < 50; trial++)
        {
            RollJob job = new([.. Enumerable.Range(0, random.Next(5, 20)).Select(_ => new RollPart(Mm(random.Next(20, 1400)), Mm(random.Next(20, 1400)), random.Next(1, 4), random.Next(2) == 0))], Mm(1400));
            RollPlan plan = RollCutting.Cut(job with { Effort = 1 }), longer = RollCutting.Cut(job with { Effort = 500_000 });
            RollCheck.Holds(plan);
            Assert.False(plan.HasProblem);
            Assert.True(plan.LeastLength <= longer.Length && plan.Length >= longer.Length, $"{plan}; {longer}");
            Assert.True(longer.Nodes <= 500_000 + plan.Nodes, $"{longer.Nodes}, {plan.Nodes} for the first");
            shorter += longer.Length < plan.Length ? 1 : 0;
        }

        Assert.InRange(shorter, 10, 50);
    }
}
