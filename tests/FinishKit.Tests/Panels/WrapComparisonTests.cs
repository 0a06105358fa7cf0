using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;

namespace FinishKit.Tests.Panels;

/// <summary>Foam-backed cloth against separate foam.</summary>
[Properties(MaxTest = 500, EndSize = 1_000_000)]
public sealed class WrapComparisonTests
{
    private static bool s_problem;

    /// <summary>By hand: 8 x 30 = 240; 8 x 18 + 7 x 6 + 14 = 200; nine panels take 9 x 20 minutes = 3 hours more: 40/3.</summary>
    [Fact]
    public void Compare()
    {
        #region example: WrapComparison.Compare
        WrapChoice choice = new(Area.FromSquareMeters(8), 30m, Area.FromSquareMeters(8), 18m, Area.FromSquareMeters(7), 6m) { Panels = 9, SeparateExtras = 14m };
        WrapVerdict verdict = WrapComparison.Compare(choice);
        decimal backed = verdict.BackedMaterials;           // 240
        decimal separate = verdict.SeparateMaterials;       // 200: 144 + 42 + 14
        decimal? rate = verdict.BreakEvenRate;              // 13.3333: 40 for 3 hours, 9 x 20 minutes
        WrapAdvantage above = verdict.CheaperAbove;         // foam-backed cloth
        #endregion
        Assert.Equal((240m, 200m, 13.3333m, WrapAdvantage.FoamBacked), (backed, separate, rate, above));
        Assert.Equal(WrapAdvantage.SeparateFoam, verdict.CheaperBelow);
        Assert.Equal((6.75, 9.75), (verdict.BackedHours.TotalHours, verdict.SeparateHours.TotalHours));
        Assert.All(verdict.DefaultsUsed, static used => Assert.Equal(SourceKind.Judgement, used.Source.Kind));
        Assert.Equal("panels-compare-hours-judged", Assert.Single(verdict.Findings).Code);
        Assert.Equal("foam-backed 240.00 and 6.75 h, separate 200.00 and 9.75 h: equal at 13.3333 an hour, above that foam-backed cloth is cheaper", verdict.ToString());
        WorkingsCheck.Recompute(verdict.Explain());
    }

    [Theory]
    [InlineData(240, 5, 200, 7, 20.0, WrapAdvantage.FoamBacked, WrapAdvantage.SeparateFoam)] // 40 for 2 hours
    [InlineData(200, 7, 240, 5, 20.0, WrapAdvantage.SeparateFoam, WrapAdvantage.FoamBacked)]
    [InlineData(200, 5, 240, 7, null, WrapAdvantage.FoamBacked, WrapAdvantage.FoamBacked)] // less of both
    [InlineData(240, 7, 200, 5, null, WrapAdvantage.SeparateFoam, WrapAdvantage.SeparateFoam)]
    [InlineData(200, 5, 240, 5, null, WrapAdvantage.FoamBacked, WrapAdvantage.FoamBacked)] // the same hours
    [InlineData(240, 5, 200, 5, null, WrapAdvantage.SeparateFoam, WrapAdvantage.SeparateFoam)]
    [InlineData(200, 5, 200, 7, 0.0, WrapAdvantage.FoamBacked, WrapAdvantage.Neither)] // the same materials
    [InlineData(200, 7, 200, 5, 0.0, WrapAdvantage.SeparateFoam, WrapAdvantage.Neither)]
    [InlineData(200, 5, 200, 5, null, WrapAdvantage.Neither, WrapAdvantage.Neither)]
    [InlineData(0, 0, 0, 0, null, WrapAdvantage.Neither, WrapAdvantage.Neither)]
    public void Every_case_has_its_answer(int backed, int backedHours, int separate, int separateHours, double? rate, WrapAdvantage above, WrapAdvantage below)
    {
        WrapVerdict verdict = WrapComparison.Compare(Extras(backed, backedHours, separate, separateHours));
        Assert.Equal(rate, (double?)verdict.BreakEvenRate);
        Assert.Equal((above, below), (verdict.CheaperAbove, verdict.CheaperBelow));
        Assert.Empty(verdict.Findings);
        Assert.Empty(verdict.DefaultsUsed);
        WorkingsCheck.Recompute(verdict.Explain());
    }

    /// <summary>Totals at rates on either side of the one that was found, by whole numbers, say the same.</summary>
    [Property]
    public void Totals_at_any_rate_say_the_same(PositiveInt seed)
    {
        Random random = new(seed.Get);
        int backed = random.Next(50), separate = random.Next(50), backedHours = random.Next(8), separateHours = random.Next(8);
        WrapVerdict verdict = WrapComparison.Compare(Extras(backed, backedHours, separate, separateHours));
        for (int tenths = 1; tenths < 600; tenths++)
        {
            int order = ((10 * backed) + (tenths * backedHours)).CompareTo((10 * separate) + (tenths * separateHours));
            WrapAdvantage cheaper = order < 0 ? WrapAdvantage.FoamBacked : order > 0 ? WrapAdvantage.SeparateFoam : WrapAdvantage.Neither;
            if (verdict.BreakEvenRate is { } rate && Math.Abs((tenths / 10m) - rate) <= 0.0001m)
            {
                continue;
            }

            Assert.Equal(cheaper, verdict.BreakEvenRate is { } at && tenths / 10m < at ? verdict.CheaperBelow : verdict.CheaperAbove);
        }

        if (verdict.BreakEvenRate is { } found)
        {
            Assert.Equal((double)(backed + (found * backedHours)), (double)(separate + (found * separateHours)), 1e-3);
        }
    }

    [Fact]
    public void All_problems_are_reported_at_once()
    {
        Area good = Area.FromSquareMeters(1);
        WrapChoice bad = new(Area.FromSquareMeters(-1), -1m, Area.FromSquareMeters(501), 0.00001m, good, decimal.MaxValue) { Panels = 0, BackedHours = TimeSpan.MinValue, SeparateHours = TimeSpan.MaxValue, BackedExtras = -1m };
        Assert.Equal(
            ["choice.BackedArea", "choice.BackedPrice", "choice.ClothArea", "choice.ClothPrice", "choice.FoamPrice", "choice.BackedExtras", "choice.Panels", "choice.BackedHours", "choice.SeparateHours"],
            WrapComparison.CheckCompare(bad).Select(static problem => problem.Parameter));
        Assert.Equal("choice", Assert.Throws<ArgumentNullException>(() => WrapComparison.Compare(null!)).ParamName);
    }

    [Fact]
    public void It_allocates_nothing()
    {
        WrapChoice choice = Extras(240, 5, 200, 7);
        for (int i = 0; i < 64; i++)
        {
            s_problem = WrapComparison.Compare(choice).HasProblem;
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1024; i++)
        {
            s_problem |= WrapComparison.Compare(choice).BreakEvenRate > 1;
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void Answers_compare_by_materials_and_hours()
    {
        Assert.True(WrapComparison.Compare(Extras(240, 5, 200, 7)) == WrapComparison.Compare(Extras(240, 5, 200, 7)));
        Assert.True(WrapComparison.Compare(Extras(240, 5, 200, 7)) != WrapComparison.Compare(Extras(240, 5, 200, 8)));
        Assert.NotEqual(Extras(240, 5, 200, 7), Extras(240, 5, 201, 7));
    }

    private static WrapChoice Extras(int backed, int backedHours, int separate, int separateHours) => new(Area.FromSquareMeters(0), 0m, Area.FromSquareMeters(0), 0m, Area.FromSquareMeters(0), 0m)
    {
        BackedExtras = backed,
        SeparateExtras = separate,
        BackedHours = TimeSpan.FromHours(backedHours),
        SeparateHours = TimeSpan.FromHours(separateHours),
    };
}
