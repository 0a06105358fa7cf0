using System;
using System.Collections.Generic;
using System.Linq;
using Xunit;

namespace FinishKit.Tests.Furring;

/// <summary>
/// The search held against every arrangement there is, on runs of 10 to 40 nm: place by place and kind by kind. The runs are drawn so
/// that each way of being at the edge is common, and it is counted that they are.
/// </summary>
public sealed class StripBruteForce
{
    private const int Runs = 2400;
    private static readonly StripPreference[] s_preferences = [StripPreference.OnRibs, StripPreference.FewestStrips];

    [Fact]
    public void The_layout_is_the_best_of_all_arrangements()
    {
        Random random = new(20261125);
        int infeasible = 0, met = 0, ties = 0, onRibs = 0, offRibs = 0, longTies = 0;
        for (int i = 0; i < Runs; i++)
        {
            (SmallRun run, IReadOnlyList<StripOracle.Arrangement> all) = Draw(random, i % 10);
            bool isMet = false, isTied = false;
            foreach (StripPreference preference in s_preferences)
            {
                StripLayout layout = StripSpacing.Space(run.ToRun(preference));
                if (all.Count == 0)
                {
                    AssertInfeasible(run, layout);
                    continue;
                }

                StripOracle.Arrangement best = StripOracle.Best(all, preference);
                Assert.True(layout.IsFeasible, run + ": a way was missed.");
                Assert.True(
                    best.Strips.SequenceEqual(layout.Strips.Select(static strip => (SmallRun.Nm(strip.Position), strip.Kind))),
                    $"{run}, {preference}: best is {string.Join(" ", best.Strips)}, found {string.Join(" ", layout.Strips.Select(static strip => (SmallRun.Nm(strip.Position), strip.Kind)))}.");
                Assert.Equal(best.Largest, SmallRun.Nm(layout.LargestBay));
                isMet |= best.Largest == run.LargestBay;
                int first = StripOracle.FirstCriterion(best, preference);
                int tied = all.Count(other => StripOracle.FirstCriterion(other, preference) == first);
                isTied |= tied > 1;
                longTies += tied > 20 ? 1 : 0;
                onRibs += best.OnRibs;
                offRibs += best.OffRibs;
            }

            (infeasible, met, ties) = (infeasible + (all.Count == 0 ? 1 : 0), met + (isMet ? 1 : 0), ties + (isTied ? 1 : 0));
        }

        Assert.True(infeasible >= Runs / 4, $"{infeasible} infeasible.");
        Assert.True(met >= Runs / 4, $"{met} with the largest bay exactly met.");
        Assert.True(ties >= Runs / 4, $"{ties} with ties on the first criterion.");
        Assert.True(longTies > 100 && onRibs > 500 && offRibs > 500, $"{longTies} long ties, {onRibs} on ribs, {offRibs} off.");
    }

    /// <summary>Draws until the run is of the kind wanted: 0 to 2 infeasible, 3 to 5 a largest bay exactly met, 6 to 8 a tie, 9 whatever comes.</summary>
    private static (SmallRun Run, IReadOnlyList<StripOracle.Arrangement> All) Draw(Random random, int wanted)
    {
        while (true)
        {
            SmallRun run = SmallRun.Random(random);
            IReadOnlyList<StripOracle.Arrangement> all = StripOracle.All(run);
            if (wanted switch
            {
                < 3 => all.Count == 0,
                < 6 => all.Count > 0 && s_preferences.Any(preference => StripOracle.Best(all, preference) is var best && best.Largest == run.LargestBay && best.Chosen > 0),
                < 9 => all.Count > 1 && s_preferences.Any(preference => StripOracle.FirstCriterion(StripOracle.Best(all, preference), preference) is var first && all.Count(other => StripOracle.FirstCriterion(other, preference) == first) > 1),
                _ => true,
            })
            {
                return (run, all);
            }
        }
    }

    private static void AssertInfeasible(SmallRun run, StripLayout layout)
    {
        Assert.False(layout.IsFeasible, run + ": a way was found where there is none.");
        Assert.Equal(0, layout.ChosenCount);
        Assert.Contains(layout.Findings, static finding => finding is { Code: "furring-bay-infeasible", Severity: Severity.Problem });
        int bay = run.LargestBay + 1;
        while (StripOracle.All(run with { LargestBay = bay }).Count == 0)
        {
            bay++;
        }

        Assert.True(bay == SmallRun.Nm(layout.SmallestFeasibleBay!.Value), $"{run}: bays of {bay} can be had, said was {layout.SmallestFeasibleBay}.");
    }
}
