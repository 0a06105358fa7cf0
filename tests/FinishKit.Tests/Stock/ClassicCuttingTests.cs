#if !NETSTANDARD_BUILD
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Xunit;

namespace FinishKit.Tests.Stock;

/// <summary>
/// Published bin-packing sets with known optimum. They are other people's data and not in this repository: the tests run where the
/// folder is (see DEVELOPERS.md) and are skipped, with the reason, where it is not. On one build only, since they take a minute or more.
/// </summary>
[Trait("Time", "long")]
public class ClassicCuttingTests(ITestOutputHelper output)
{
    [Fact]
    public void Falkenauer_Scholl_and_Schwerin_are_optimal_on_99_of_100_and_proven_on_97()
    {
        string[] sets = ["1d-falkenauer-u", "1d-falkenauer-t", "1d-scholl-1", "1d-scholl-2", "1d-scholl-3", "1d-schwerin"];
        Tally all = new();
        foreach (string set in sets)
        {
            all.Add(Cut(set));
        }

        Assert.Equal(54 + 53 + 480 + 320 + 7 + 133, all.Instances);
        Assert.True(all.Optimal >= 0.99 * all.Instances, $"optimal: {all.Optimal} of {all.Instances}");
        Assert.True(all.Proven >= 0.97 * all.Instances, $"proven: {all.Proven} of {all.Instances}");
    }

    /// <summary>How many come out optimal is reported as it comes (docs/benchmarks.md).</summary>
    [Theory]
    [InlineData("1d-hard28", 19)]
    [InlineData("1d-waescher", 11)]
    public void Hard_sets_give_valid_plans_and_sound_bounds(string set, int instances) => Assert.Equal(instances, Cut(set).Instances);

    private Tally Cut(string set)
    {
        string? folder = PackingSets.Folder();
        Assert.SkipWhen(folder is null, PackingSets.Missing);
        Tally tally = new();
        List<string> faults = [], unsettled = [];
        foreach (PackingInstance instance in PackingSets.Classic(folder!, set))
        {
            CuttingPlan plan = BoardCutting.Cut(instance.Job(), cancellation: TestContext.Current.CancellationToken);
            CuttingProof proof = new(instance, plan);
            unsettled.AddRange(proof.Unsettled.Select(question => $"{instance.Name}: {question}"));
            faults.AddRange(CutCheck.Faults(instance, plan).Concat(proof.Faults).Select(fault => $"{instance.Name}: {fault}"));
            if (plan.LeastCost > instance.Best || plan.Cost < instance.Best || proof.LeastCost != plan.LeastCost)
            {
                faults.Add(string.Create(CultureInfo.InvariantCulture, $"{instance.Name}: cost {plan.Cost}, least {plan.LeastCost}, by its proof {proof.LeastCost}, known optimum {instance.Best}"));
            }

            tally.Instances++;
            tally.Optimal += plan.Cost == instance.Best ? 1 : 0;
            tally.Proven += plan.Proven ? 1 : 0;
        }

        Assert.Empty(faults);
        output.WriteLine($"{set}: {tally.Instances} instances, {tally.Optimal} optimal, {tally.Proven} proven{string.Concat(unsettled.Select(static question => "; not checked: " + question))}");
        return tally;
    }

    private sealed class Tally
    {
        internal int Instances { get; set; }

        internal int Optimal { get; set; }

        internal int Proven { get; set; }

        internal void Add(Tally other)
        {
            Instances += other.Instances;
            Optimal += other.Optimal;
            Proven += other.Proven;
        }
    }
}
#endif
