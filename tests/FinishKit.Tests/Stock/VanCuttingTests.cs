using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Xunit;

namespace FinishKit.Tests.Stock;

/// <summary>Jobs of van size (Reference/van1d-dev.jsonl), their best costs found by other programs: plans checked piece by piece, proofs recomputed.</summary>
public class VanCuttingTests(VanCuttingTests.Plans plans) : IClassFixture<VanCuttingTests.Plans>
{
    // Boards of 100; 2 of 60 and 3 of 40 are 240 long; nothing is lost to the saw.
    private static readonly PackingInstance s_small = new("by hand", "small", 0, 3, true, [(100, 1)], [(60, 2), (40, 3)]);

    [Fact]
    public void There_are_66_jobs_with_one_length_and_64_with_three_priced_lengths()
    {
        Assert.Equal(66, plans.All.Count(static pair => !pair.Instance.IsMixed));
        Assert.Equal(64, plans.All.Count(static pair => pair.Instance is { IsMixed: true, Stock.Count: 3 }));
    }

    [Fact]
    public void Every_piece_is_cut_once_and_no_board_is_over_filled() =>
        Assert.Empty(plans.All.SelectMany(static pair => CutCheck.Faults(pair.Instance, pair.Plan).Select(fault => $"{pair.Instance.Name}: {fault}")));

    [Fact]
    public void With_one_length_every_plan_is_proven_and_as_good_as_the_known_best() =>
        Assert.Empty(plans.All.Where(static pair => !pair.Instance.IsMixed && (!pair.Plan.Proven || pair.Plan.Cost != pair.Instance.Best)).Select(Words));

    [Fact]
    public void With_priced_lengths_no_plan_is_dearer_than_the_best_known_or_cheaper_than_a_proven_best()
    {
        Assert.Empty(plans.All.Where(static pair => pair.Plan.Cost > pair.Instance.Best).Select(Words));
        Assert.Empty(plans.All.Where(static pair => pair.Instance.IsBestProven && pair.Plan.Cost < pair.Instance.Best).Select(Words));
        Assert.Empty(plans.All.Where(static pair => pair.Plan.LeastCost > pair.Instance.Best).Select(Words));
    }

    [Fact]
    public void With_priced_lengths_nine_of_ten_are_proven_and_the_rest_within_a_hundredth()
    {
        (PackingInstance Instance, CuttingPlan Plan)[] mixed = [.. plans.All.Where(static pair => pair.Instance.IsMixed)];
        Assert.True(mixed.Count(static pair => pair.Plan.Proven) >= 0.9 * mixed.Length, string.Join(Environment.NewLine, mixed.Where(static pair => !pair.Plan.Proven).Select(Words)));
        Assert.Empty(mixed.Where(static pair => pair.Plan.Gap > 0.01).Select(Words));
    }

    [Fact]
    public void Every_proof_holds_when_it_is_recomputed()
    {
        // Many proofs rest on more than one valuation: else half of the check were idle.
        Assert.True(plans.All.Count(static pair => pair.Plan.Valuations.Count > 1) >= 60);
        List<string> faults = [];
        foreach ((PackingInstance instance, CuttingPlan plan) in plans.All)
        {
            CuttingProof proof = new(instance, plan);
            faults.AddRange(proof.Faults.Concat(proof.Unsettled).Select(fault => $"{instance.Name}: {fault}"));
            if (proof.LeastCost != plan.LeastCost)
            {
                faults.Add($"{instance.Name}: the proof gives {proof.LeastCost}, the plan says {plan.LeastCost}");
            }
        }

        Assert.Empty(faults);
    }

    /// <summary>
    /// Few pieces with lengths that do not go together, so that boards may hold the value of the parts and the parts cannot be cut from them
    /// all the same. A proof then rests on a search: rare even here, and none of the jobs of van size needs one.
    /// </summary>
    [Fact]
    public void Plans_and_proofs_of_small_awkward_jobs_hold()
    {
        List<string> faults = [];
        int searched = 0, mixed = 0;
        for (int seed = 0; seed < 2000; seed++)
        {
            PackingInstance instance = Awkward(new Random(seed));
            CuttingPlan plan = BoardCutting.Cut(instance.Job(), cancellation: TestContext.Current.CancellationToken);
            CuttingProof proof = new(instance, plan);
            faults.AddRange(CutCheck.Faults(instance, plan).Concat(proof.Faults).Concat(proof.Unsettled).Select(fault => $"{seed}: {fault}"));
            if (!plan.Proven || proof.LeastCost != plan.LeastCost)
            {
                faults.Add(string.Create(CultureInfo.InvariantCulture, $"{seed}: cost {plan.Cost}, least {plan.LeastCost}, by its proof {proof.LeastCost}"));
            }

            searched += plan.SearchedInVain.Count > 0 ? 1 : 0;
            mixed += instance.IsMixed ? 1 : 0;
        }

        Assert.Empty(faults);
        Assert.True(searched >= 1 && mixed >= 500, $"{searched} with a search, {mixed} with several kinds");
    }

    /// <summary>Two boards of 132 hold 2 of 44, 3 of 33 and 6 of 12 by length and by the linear programme (Fieldhouse's example, from memory), and yet three are needed: worked by the check's own search.</summary>
    [Fact]
    public void Two_boards_that_hold_the_length_are_not_enough()
    {
        PackingInstance instance = new("by hand", "gap", 0, 3, true, [(132, 1)], [(44, 2), (33, 3), (12, 6)]);
        CuttingPlan plan = BoardCutting.Cut(instance.Job(), cancellation: TestContext.Current.CancellationToken);
        Assert.Empty(CutCheck.Faults(instance, plan));
        Assert.Equal(3, plan.Cost);
        Assert.True(plan.Proven);
        CuttingProof proof = new(instance, plan);
        Assert.Empty(proof.Faults);
        Assert.Equal(3, proof.LeastCost);
        Assert.Empty(new CuttingProof(instance, [([44, 33, 12], [132], 259)], [[2]]).Faults);
    }

    [Fact]
    public void The_recomputed_proof_is_that_of_a_small_job_by_hand()
    {
        // Lengths as values: 240 need three boards of 100.
        CuttingProof proof = new(s_small, [([60, 40], [100], 240)], []);
        Assert.Empty(proof.Faults);
        Assert.Equal(3, proof.LeastCost);

        // Three are enough (60 + 40 twice, 40): that they were searched in vain is false, and without a proof nothing costs nothing.
        Assert.NotEmpty(new CuttingProof(s_small, [([60, 40], [100], 240)], [[3]]).Faults);
        Assert.Equal(0, new CuttingProof(s_small, [], []).LeastCost);

        // 5 of 34 are 170 long, less than two boards, but two of them fill a board: two boards are searched in vain, and three are not.
        PackingInstance thirds = new("by hand", "thirds", 0, 3, true, [(100, 1)], [(34, 5)]);
        CuttingProof vain = new(thirds, [([34], [100], 170)], [[2]]);
        Assert.Empty(vain.Faults);
        Assert.Equal(3, vain.LeastCost);
        Assert.NotEmpty(new CuttingProof(thirds, [([34], [100], 170)], [[3]]).Faults);

        // The saw cut: 50 + 50 fill a board of 100 only where nothing is lost.
        PackingInstance halves = new("by hand", "halves", 1, 2, true, [(100, 1)], [(50, 2)]);
        Assert.Empty(new CuttingProof(halves, [([1], [1], 2)], []).Faults);
        Assert.NotEmpty(new CuttingProof(halves with { Kerf = 0 }, [([1], [1], 2)], []).Faults);
    }

    [Theory]
    [InlineData(60, 40, 99, 240)] // a board holds 100
    [InlineData(60, 41, 100, 243)] // a board holds 101
    [InlineData(60, 40, 100, 241)] // the parts are worth 240
    [InlineData(60, -1, 100, 117)] // a part worth less than nothing
    public void A_false_valuation_is_found(long first, long second, long most, long needed) =>
        Assert.NotEmpty(new CuttingProof(s_small, [([first, second], [most], needed)], []).Faults);

    [Fact]
    public void A_bad_plan_is_found()
    {
        PackingInstance sawn = s_small with { Kerf = 2, Items = [(58, 1), (40, 2)] };
        (int, long, IReadOnlyList<(int, long, long)>) good = (0, 100, [(0, 0, 58), (1, 60, 40)]), last = (0, 100, [(1, 0, 40)]);
        Assert.Empty(CutCheck.Faults(sawn, [good, last], 2));
        Assert.NotEmpty(CutCheck.Faults(sawn, [good, last], 1)); // costs 2
        Assert.NotEmpty(CutCheck.Faults(sawn, [good], 1)); // a piece is missing
        Assert.NotEmpty(CutCheck.Faults(sawn, [good, last, last], 3)); // one too many
        Assert.NotEmpty(CutCheck.Faults(sawn, [good, (0, 101, last.Item3)], 2)); // a board that is not sold
        Assert.NotEmpty(CutCheck.Faults(sawn, [good, (0, 100, [])], 2)); // nothing on it
        Assert.NotEmpty(CutCheck.Faults(sawn, [(0, 100, [(0, 0, 58), (1, 58, 40)]), last], 2)); // no room for the saw
        Assert.NotEmpty(CutCheck.Faults(sawn, [(0, 100, [(0, 0, 58), (1, 60, 39)]), last], 2)); // short
        Assert.NotEmpty(CutCheck.Faults(sawn with { Kerf = 3 }, [(0, 100, [(0, 0, 58), (1, 61, 40)]), last], 2)); // 101 of a board of 100
    }

    private static PackingInstance Awkward(Random random)
    {
        List<(int Length, int Price)> stock = [];
        int kinds = random.Next(1, 4);
        for (int kind = 0; kind < kinds; kind++)
        {
            int length = random.Next(60, 200);
            stock.Add((length, kinds == 1 ? 1 : (length * 3) + random.Next(0, 40)));
        }

        Dictionary<int, int> items = [];
        int parts = random.Next(2, 7), longest = stock.Max(static board => board.Length);
        for (int part = 0; part < parts; part++)
        {
            items[random.Next(longest / 12, longest / 2)] = random.Next(1, 7);
        }

        return new PackingInstance("random", "awkward", random.Next(0, 3), 0, false, stock, [.. items.Select(static item => (item.Key, item.Value))]);
    }

    private static string Words((PackingInstance Instance, CuttingPlan Plan) pair) => string.Create(
        CultureInfo.InvariantCulture,
        $"{pair.Instance.Name}: {pair.Plan}, least {pair.Plan.LeastCost}, best known {pair.Instance.Best}{(pair.Instance.IsBestProven ? " proven" : string.Empty)}, {pair.Plan.Nodes} nodes");

    /// <summary>The plans, made once.</summary>
    public sealed class Plans
    {
        internal IReadOnlyList<(PackingInstance Instance, CuttingPlan Plan)> All { get; } = [.. PackingSets.Van().Select(static instance => (instance, BoardCutting.Cut(instance.Job())))];
    }
}
