using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Furring;

/// <summary>What must hold for strips over any run. Ribs at whole bays, on fixed strips and past the ends are built in.</summary>
[Properties(MaxTest = 500)]
public sealed class StripProperties
{
    [Property]
    public void Bays_keep_the_largest_and_the_least_and_add_up(PositiveInt seed)
    {
        StripRun run = new StripTrial(seed.Get).Run;
        StripLayout layout = StripSpacing.Space(run);
        long[] strips = [.. run.FixedPositions.Select(StripTrial.Nm).Order()];
        Assert.Equal(strips[^1] - strips[0], layout.Bays.Sum(StripTrial.Nm));
        Assert.Equal(strips, layout.Strips.Where(static strip => strip.Kind == StripKind.Fixed).Select(static strip => StripTrial.Nm(strip.Position)));
        Assert.Equal(layout.Strips.Count - 1, layout.Bays.Count);
        Assert.Equal(layout.Bays.Max(StripTrial.Nm), StripTrial.Nm(layout.LargestBay));
        if (!layout.IsFeasible)
        {
            Assert.Equal(0, layout.ChosenCount);
            return;
        }

        Assert.True(StripTrial.Nm(layout.LargestBay) <= StripTrial.Nm(run.LargestBay));
        long least = StripTrial.Nm(run.LeastDistance ?? Mm(40));
        for (int i = 0; i < layout.Bays.Count; i++)
        {
            Assert.True(StripTrial.Nm(layout.Bays[i]) >= least || (layout.Strips[i].Kind == StripKind.Fixed && layout.Strips[i + 1].Kind == StripKind.Fixed));
        }
    }

    [Property]
    public void Every_strip_bears_on_the_nearest_rib_in_reach_and_chosen_ones_on_free_ribs_only(PositiveInt seed)
    {
        StripRun run = new StripTrial(seed.Get).Run;
        foreach (PlacedStrip strip in StripSpacing.Space(run).Strips)
        {
            long at = StripTrial.Nm(strip.Position);
            int? nearest = run.Ribs.Select(static (rib, index) => (rib, index)).Where(entry => Away(entry.rib) <= StripTrial.Nm(entry.rib.HalfWidth))
                .OrderBy(entry => Away(entry.rib)).ThenBy(static entry => entry.index).Select(static entry => (int?)entry.index).FirstOrDefault();
            Assert.Equal(nearest, strip.Rib);
            if (strip.Kind == StripKind.OnRib)
            {
                Assert.Contains(run.Ribs, rib => StripTrial.Nm(rib.Centre) == at && run.FixedPositions.All(other => Math.Abs(StripTrial.Nm(other) - at) > StripTrial.Nm(rib.HalfWidth)));
            }

            long Away(RibLine rib) => Math.Abs(StripTrial.Nm(rib.Centre) - at);
        }
    }

    [Property]
    public void A_mirrored_run_scores_the_same(PositiveInt seed)
    {
        StripRun run = new StripTrial(seed.Get).Run;
        long length = StripTrial.Nm(run.RunLength);
        Assert.Equal(StripTrial.Scores(StripSpacing.Space(run)), StripTrial.Scores(StripSpacing.Space(StripTrial.Moved(run, at => length - at))));
    }

    [Property]
    public void A_shifted_run_has_its_strips_shifted(PositiveInt seed, NonNegativeInt by)
    {
        StripRun run = new StripTrial(seed.Get).Run;
        long shift = by.Get * 1234567L % 10_000_000_000;
        StripLayout before = StripSpacing.Space(run), after = StripSpacing.Space(StripTrial.Moved(run, at => at + shift) with { RunLength = StripTrial.At(StripTrial.Nm(run.RunLength) + shift) });
        Assert.Equal(before.Strips.Select(strip => (StripTrial.Nm(strip.Position) + shift, strip.Kind, strip.Rib)), after.Strips.Select(static strip => (StripTrial.Nm(strip.Position), strip.Kind, strip.Rib)));
    }

    /// <summary>Twice the size has the same counts; the largest bay doubles, or is a nanometre less where the half of it was not on the grid.</summary>
    [Property]
    public void A_run_of_twice_the_size_has_the_same_counts(PositiveInt seed)
    {
        StripRun run = new StripTrial(seed.Get).Run;
        StripRun twice = StripTrial.Moved(run, static at => 2 * at) with { RunLength = Twice(run.RunLength), LargestBay = Twice(run.LargestBay), LeastDistance = Twice(run.LeastDistance ?? Mm(40)) };
        twice = twice with { Ribs = [.. twice.Ribs.Select(static rib => rib with { HalfWidth = Twice(rib.HalfWidth) })] };
        (int Chosen, int OffRibs, long Largest, decimal Squares) one = StripTrial.Scores(StripSpacing.Space(run)), two = StripTrial.Scores(StripSpacing.Space(twice));
        Assert.Equal((one.Chosen, one.OffRibs), (two.Chosen, two.OffRibs));
        Assert.InRange(two.Largest, (2 * one.Largest) - 1, 2 * one.Largest);

        static Length Twice(Length length) => StripTrial.At(2 * StripTrial.Nm(length));
    }

    [Property]
    public void Another_rib_never_takes_more_strips_off_ribs(PositiveInt seed)
    {
        StripTrial trial = new(seed.Get);
        StripRun run = trial.Run with { Preference = StripPreference.OnRibs };
        Assert.True(StripSpacing.Space(run with { Ribs = [.. run.Ribs, trial.AnotherRib] }).OffRibCount <= StripSpacing.Space(run).OffRibCount);
    }

    [Property]
    public void A_larger_bay_never_takes_more_strips(PositiveInt seed, PositiveInt micrometres)
    {
        StripRun run = new StripTrial(seed.Get).Run with { Preference = StripPreference.FewestStrips };
        StripLayout narrow = StripSpacing.Space(run), wide = StripSpacing.Space(run with { LargestBay = StripTrial.At(StripTrial.Nm(run.LargestBay) + (micrometres.Get % 200_000 * 1000L)) });
        Assert.True(!narrow.IsFeasible || (wide.IsFeasible && wide.ChosenCount <= narrow.ChosenCount));
    }

    /// <summary>The smallest bay that is said to be feasible is so, and a nanometre less is not.</summary>
    [Property]
    public void The_smallest_feasible_bay_is_feasible_and_the_next_smaller_is_not(PositiveInt seed, PositiveInt least)
    {
        StripRun run = new StripTrial(seed.Get).Run;
        run = run with { LeastDistance = StripTrial.At((StripTrial.Nm(run.LargestBay) / 2) + (least.Get * 7919L % StripTrial.Nm(run.LargestBay))) };
        StripLayout layout = StripSpacing.Space(run);
        if (layout.SmallestFeasibleBay is { } bay)
        {
            Assert.True(StripTrial.Nm(bay) > StripTrial.Nm(run.LargestBay));
            Assert.True(StripSpacing.Space(run with { LargestBay = bay }).IsFeasible);
            Assert.Equal(bay, StripSpacing.Space(run with { LargestBay = StripTrial.At(StripTrial.Nm(bay) - 1) }).SmallestFeasibleBay!.Value, static (left, right) => StripTrial.Nm(left) == StripTrial.Nm(right));
        }
    }

    /// <summary>On long runs with many ribs: all edges looked at, in plain order, for counts, largest bay and squares.</summary>
    [Property(MaxTest = 150)]
    public void A_plain_search_over_all_edges_finds_no_better(PositiveInt seed)
    {
        StripRun run = new StripTrial(seed.Get, mostRibs: 120).Run;
        foreach (StripPreference preference in new[] { StripPreference.OnRibs, StripPreference.FewestStrips })
        {
            StripLayout layout = StripSpacing.Space(run with { Preference = preference });
            if (layout.IsFeasible)
            {
                Assert.Equal(PlainSearch.Best(run, preference), StripTrial.Scores(layout));
            }
        }
    }

    [Property(MaxTest = 100)]
    public void Every_step_of_the_workings_recomputes(PositiveInt seed)
    {
        StripLayout layout = StripSpacing.Space(new StripTrial(seed.Get).Run);
        Workings workings = layout.Explain();
        WorkingsCheck.Recompute(workings);
        Assert.Equal(layout.LargestBay.Millimeters, workings.Steps.Last(static step => step.Value.Name.StartsWith("B_", StringComparison.Ordinal)).Value.Value, 1e-6);
    }

    /// <summary>Shortest path on all three scores at once would be wrong (the largest bay does not add up), so one pass each, over every pair of nodes.</summary>
    private static class PlainSearch
    {
        internal static (int Chosen, int OffRibs, long Largest, decimal Squares) Best(StripRun run, StripPreference preference)
        {
            long[] strips = [.. run.FixedPositions.Select(StripTrial.Nm).Order()];
            (long At, bool IsFixed)[] nodes =
            [
                .. strips.Select(static at => (at, true)).Concat(run.Ribs.Where(rib => strips.All(strip => Math.Abs(strip - StripTrial.Nm(rib.Centre)) > StripTrial.Nm(rib.HalfWidth)))
                    .Select(static rib => StripTrial.Nm(rib.Centre)).Where(at => at > strips[0] && at < strips[^1]).Distinct().Select(static at => (at, false))).OrderBy(static node => node.Item1),
            ];
            long largest = StripTrial.Nm(run.LargestBay), least = StripTrial.Nm(run.LeastDistance ?? Mm(40));
            var counts = new (int First, int Second)?[nodes.Length];
            counts[0] = (0, 0);
            Pass<(int, int)>((p, q, k) => counts[p] is { } before ? Add(before, k, nodes[q].IsFixed) : null, (q, next) => counts[q] = counts[q] is { } old && old.CompareTo(next) <= 0 ? old : next);

            long?[] bays = new long?[nodes.Length];
            bays[0] = 0;
            Pass<long>((p, q, k) => IsTight(p, q, k) && bays[p] is { } before ? Math.Max(before, Bay(p, q, k)) : null, (q, next) => bays[q] = Math.Min(bays[q] ?? long.MaxValue, next));

            decimal?[] squares = new decimal?[nodes.Length];
            squares[0] = 0;
            Pass<decimal>((p, q, k) => IsTight(p, q, k) && Bay(p, q, k) <= bays[^1] && squares[p] is { } before ? before + Squares(p, q, k) : null, (q, next) => squares[q] = Math.Min(squares[q] ?? decimal.MaxValue, next));

            (int first, int second) = counts[^1]!.Value;
            return preference == StripPreference.OnRibs ? (second, first, bays[^1]!.Value, squares[^1]!.Value) : (first, second, bays[^1]!.Value, squares[^1]!.Value);

            void Pass<T>(Func<int, int, int, T?> edge, Action<int, T> keep)
                where T : struct
            {
                for (int q = 1; q < nodes.Length; q++)
                {
                    for (int p = q - 1; p >= 0; p--)
                    {
                        long distance = nodes[q].At - nodes[p].At;
                        int k = 0;
                        while (distance > largest * (k + 1L))
                        {
                            k++;
                        }

                        if ((distance >= least * (k + 1L) || (k == 0 && nodes[p].IsFixed && nodes[q].IsFixed)) && edge(p, q, k) is { } next)
                        {
                            keep(q, next);
                        }

                        if (nodes[p].IsFixed)
                        {
                            break;
                        }
                    }
                }
            }

            (int, int) Add((int First, int Second) before, int k, bool isFixed)
            {
                int rib = isFixed ? 0 : 1;
                return preference == StripPreference.OnRibs ? (before.First + k, before.Second + k + rib) : (before.First + k + rib, before.Second + k);
            }

            bool IsTight(int p, int q, int k) => counts[p] is { } before && Add(before, k, nodes[q].IsFixed) == counts[q];

            long Bay(int p, int q, int k) => (nodes[q].At - nodes[p].At + k) / (k + 1);

            decimal Squares(int p, int q, int k)
            {
                decimal sum = 0;
                long left = nodes[q].At - nodes[p].At;
                for (int bays = k + 1; bays > 0; bays--)
                {
                    long bay = left / bays;
                    sum += (decimal)bay * bay;
                    left -= bay;
                }

                return sum;
            }
        }
    }
}
