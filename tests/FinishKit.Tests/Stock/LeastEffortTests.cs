using System;
using System.Linq;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Stock;

/// <summary>With an effort of one step there is a whole plan all the same, the first; its bound is none that a better plan goes below.</summary>
public class LeastEffortTests
{
    [Fact]
    public void Boards_are_cut()
    {
        foreach (PackingInstance instance in PackingSets.Van())
        {
            CuttingPlan plan = BoardCutting.Cut(instance.Job() with { Effort = 1 });
            CuttingCheck.Holds(plan);
            Assert.False(plan.HasProblem);
            Assert.True(plan.LeastCost <= instance.Best && plan.Cost >= plan.LeastCost, instance.Name);
        }
    }

    [Theory]
    [InlineData(SheetCutting.Routed)]
    [InlineData(SheetCutting.Sawn)]
    public void Sheets_are_nested(SheetCutting cutting)
    {
        foreach (NestingInstance instance in NestingSets.Van())
        {
            NestingPlan plan = SheetNesting.Nest(instance.Job(cutting) with { Effort = 1 });
            NestingCheck.Holds(plan);
            Assert.False(plan.HasProblem);
            Assert.True(plan.LeastSheets <= instance.Best && plan.Sheets.Count >= plan.LeastSheets, instance.Name);
        }
    }

    [Fact]
    public void Cloth_is_cut()
    {
        Random random = new(12);
        for (int trial = 0; trial < 50; trial++)
        {
            RollJob job = new([.. Enumerable.Range(0, random.Next(1, 20)).Select(_ => new RollPart(Mm(random.Next(20, 1400)), Mm(random.Next(20, 1400)), random.Next(1, 4), random.Next(2) == 0))], Mm(1400));
            RollPlan plan = RollCutting.Cut(job with { Effort = 1 }), longer = RollCutting.Cut(job with { Effort = 500_000 });
            RollCheck.Holds(plan);
            Assert.False(plan.HasProblem);
            Assert.True(plan.LeastLength <= longer.Length && plan.Length >= longer.Length, $"{plan}; {longer}");
        }
    }
}
