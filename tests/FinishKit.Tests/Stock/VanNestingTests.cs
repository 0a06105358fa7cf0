using System;
using System.Collections.Generic;
using System.Linq;
using Xunit;

namespace FinishKit.Tests.Stock;

/// <summary>Jobs of van size (Reference/van2d-dev.jsonl), the fewest sheets found by other programs, where pieces may lie anywhere: layouts checked piece by piece, routed and sawn.</summary>
public class VanNestingTests(VanNestingTests.Plans plans, ITestOutputHelper output) : IClassFixture<VanNestingTests.Plans>
{
    [Fact]
    public void There_are_130_jobs_on_sheets_of_two_sizes()
    {
        Assert.Equal(130, plans.All.Count);
        Assert.Equal(79, plans.All.Count(static entry => entry.Instance is { Length: 2440, Width: 1220, Kerf: 3 }));
        Assert.Equal(51, plans.All.Count(static entry => entry.Instance is { Length: 1525, Width: 1525, Kerf: 3 }));
    }

    [Fact]
    public void Every_piece_is_placed_once_and_every_sawn_sheet_can_be_sawn()
    {
        foreach ((NestingInstance _, NestingPlan routed, NestingPlan sawn) in plans.All)
        {
            NestingCheck.Holds(routed);
            NestingCheck.Holds(sawn);
            Assert.False(routed.HasProblem || sawn.HasProblem);
        }
    }

    [Fact]
    public void Routed_no_layout_takes_more_sheets_than_the_best_known()
    {
        Assert.Empty(plans.All.Where(static entry => entry.Routed.Sheets.Count > entry.Instance.Best).Select(Words));

        // Nor fewer than what is proven, nor is the bound above what was found.
        Assert.Empty(plans.All.Where(static entry => entry.Routed.Sheets.Count < entry.Instance.Least || entry.Routed.LeastSheets > entry.Instance.Best).Select(Words));
    }

    [Fact]
    public void Routed_nine_of_ten_are_proven()
    {
        int proven = plans.All.Count(static entry => entry.Routed.Proven);
        output.WriteLine($"{proven} of {plans.All.Count} proven");
        output.WriteLine(string.Join(Environment.NewLine, plans.All.Where(static entry => !entry.Routed.Proven).Select(Words)));

        Assert.True(proven >= 0.9 * plans.All.Count, $"{proven} of {plans.All.Count}");
        Assert.All(plans.All, static entry => Assert.Equal(entry.Routed.Proven, entry.Routed.LeastSheets == entry.Routed.Sheets.Count));
    }

    [Fact]
    public void Sawn_takes_at_most_three_in_a_hundred_sheets_more_on_average()
    {
        int routed = plans.All.Sum(static entry => entry.Routed.Sheets.Count), sawn = plans.All.Sum(static entry => entry.Sawn.Sheets.Count);
        output.WriteLine($"{routed} sheets routed, {sawn} sawn, {100.0 * (sawn - routed) / routed:0.00}% more");
        foreach ((NestingInstance instance, NestingPlan one, NestingPlan other) in plans.All)
        {
            output.WriteLine($"{instance.Name}: best known {instance.Best}, routed {one.Sheets.Count}, sawn {other.Sheets.Count}, gap {100.0 * (other.Sheets.Count - one.Sheets.Count) / one.Sheets.Count:0.0}%");
        }

        Assert.True(sawn <= 1.03 * routed, $"{sawn} of {routed}");
    }

    private static string Words((NestingInstance Instance, NestingPlan Routed, NestingPlan Sawn) entry) =>
        $"{entry.Instance.Name}: {entry.Routed.Sheets.Count} sheets, {entry.Routed.LeastSheets} at least; best known {entry.Instance.Best}, {entry.Instance.Least} at least";

    /// <summary>All layouts, made once.</summary>
    public sealed class Plans
    {
        internal IReadOnlyList<(NestingInstance Instance, NestingPlan Routed, NestingPlan Sawn)> All { get; } = [.. NestingSets.Van().Select(static instance => (instance,
            SheetNesting.Nest(instance.Job(SheetCutting.Routed) with { Effort = 30_000_000 }),
            SheetNesting.Nest(instance.Job(SheetCutting.Sawn) with { Effort = 30_000_000 })))];
    }
}
