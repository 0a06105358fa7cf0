#if !NETSTANDARD_BUILD
using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Xunit;

namespace FinishKit.Tests.Stock;

/// <summary>
/// Published sets of rectangles with best known values. They are other people's data and not in this repository: the tests run where the
/// folder is (see DEVELOPERS.md) and are skipped, with the reason, where it is not. On one build only, since they take minutes.
/// </summary>
[Trait("Time", "long")]
public class ClassicNestingTests(ITestOutputHelper output)
{
    /// <summary>Ten classes of bins, pieces as they lie or free to turn, class by class.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Bins_nine_of_ten_are_at_the_best_known(bool turning)
    {
        string? folder = PackingSets.Folder();
        Assert.SkipWhen(folder is null, PackingSets.Missing);
        List<string> faults = [];
        Dictionary<string, (int Instances, int AtBest, int Proven, int Sheets, int Best)> classes = new(StringComparer.Ordinal);
        foreach ((NestingInstance oriented, NestingInstance free) in NestingSets.BinPacking(folder!))
        {
            NestingInstance instance = turning ? free : oriented;
            NestingPlan plan = SheetNesting.Nest(instance.Job(SheetCutting.Routed) with { Effort = 10_000_000 }, cancellation: TestContext.Current.CancellationToken);
            NestingCheck.Holds(plan);
            if (plan.Sheets.Count < instance.Least || plan.LeastSheets > instance.Best)
            {
                faults.Add(string.Create(CultureInfo.InvariantCulture, $"{instance.Name}: {plan.Sheets.Count} sheets, {plan.LeastSheets} least; best known {instance.Best}, {instance.Least} least"));
            }

            string set = instance.Name[..8];
            (int instances, int atBest, int proven, int sheets, int best) = classes.GetValueOrDefault(set);
            classes[set] = (instances + 1, atBest + (plan.Sheets.Count <= instance.Best ? 1 : 0), proven + (plan.Proven ? 1 : 0), sheets + plan.Sheets.Count, best + instance.Best);
        }

        foreach ((string set, (int instances, int atBest, int proven, int sheets, int best)) in classes)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{set}{(turning ? ", turning" : string.Empty)}: {instances} instances, {atBest} at best, {proven} proven, {sheets} sheets, {best} best known"));
        }

        Assert.Empty(faults);
        int all = classes.Values.Sum(static set => set.Instances), good = classes.Values.Sum(static set => set.AtBest);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{good} of {all} at best"));
        Assert.Equal(330, all);
        Assert.True(good >= 0.9 * all, $"{good} of {all}");
    }

    [Theory]
    [InlineData("2d-strip-ht-c", 14, true)]
    [InlineData("2d-strip-burke", 8, true)]
    [InlineData("2d-strip-ht-c", 14, false)]
    [InlineData("2d-strip-burke", 8, false)]
    public void Strips_are_three_in_a_hundred_over_the_best_on_average(string set, int some, bool mayTurn)
    {
        string? folder = PackingSets.Folder();
        Assert.SkipWhen(folder is null, PackingSets.Missing);
        List<double> gaps = [];
        foreach (StripInstance instance in NestingSets.Strips(folder!, set))
        {
            RollPlan plan = RollCutting.Cut(instance.Job(mayTurn) with { Effort = 30_000_000 }, cancellation: TestContext.Current.CancellationToken);
            RollCheck.Holds(plan);

            // The sets' best is a perfect fit: no layout is shorter.
            Assert.True(instance.Gap(plan) > -1e-9 && plan.LeastLength.Millimeters <= instance.Best + 1e-6, $"{instance.Name}: {plan}");
            gaps.Add(instance.Gap(plan));
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{instance.Name}: {plan.Length.Millimeters}, best {instance.Best}, gap {100 * gaps[^1]:0.00}%"));
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{set}: {gaps.Count} instances, mean gap {100 * gaps.Average():0.00}%"));
        Assert.Equal(some, gaps.Count);
        Assert.True(gaps.Average() <= 0.03, $"{gaps.Average()}");
    }
}
#endif
