using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Panels;

/// <summary>Sheets on surfaces that bow both ways: the demo van, hand examples, circles of latitude on a ball, and the inverses.</summary>
[Properties(MaxTest = 300, EndSize = 1_000_000)]
public sealed class DoubleCurvatureTests
{
    private static readonly BentSheet s_plain = new(Mm(6), Pressure.FromMegapascals(10_000), Pressure.FromMegapascals(50));

    [Fact]
    public void Judge()
    {
        #region example: DoubleCurvature.Judge
        BentSheet ply = BentSheet.Of(SheetGoods.Birch6, BendGrain.AlongTheAxis);
        BowedPanelVerdict band = DoubleCurvature.Judge(new BowedPanel(ply, Mm(2216), Mm(57_800), Mm(352), Mm(3400)));
        double share = band.Share;                          // 0.202 of what is taken
        Length widest = band.LargestShorterSide;            // 538 mm
        Length tightest = band.SmallestAlong;               // 11,660 mm the other way
        #endregion
        Assert.Equal(10 * 12737 * 352.0 * 352 / (12 * 50.9 * 2216 * 57_800), share, 1e-12);
        Assert.Equal(0.202, share, 0.0005);
        Assert.Equal(538, widest.Millimeters, 0.5); // fourth root of 16 · 2216 · 57,800 · 6.4² = 8.394e10
        Assert.Equal(share * 57_800, tightest.Millimeters, 1e-4);
        Assert.Equal(11_660, tightest.Millimeters, 0.5);
        Assert.True(band.Passes);
        Assert.True(band.IsBowl);
    }

    /// <summary>
    /// R 2000 and 3000, 600 wide, 6 thick, E/f 200: rises 22.5 and 15, 337.5 of 9 mm² is 37.5; stretch 10 · 200 · 360,000/(12 · 6,000,000) = 10. Taken: b⁴ = 16 · 6e6 · 36, b = 242.46;
    /// b² = 12 · 6e6/2000, b = 189.74; R2 = 37.5 · 3000 = 112,500. Strain 360,000/(72e6) = 0.005.
    /// </summary>
    [Fact]
    public void Worked_by_hand()
    {
        BowedPanelVerdict bowl = DoubleCurvature.Judge(new BowedPanel(s_plain, Mm(2000), Mm(3000), Mm(2400), Mm(600))), saddle = DoubleCurvature.Judge(new BowedPanel(s_plain, Mm(2000), Mm(-3000), Mm(600), Mm(2400)));
        foreach (BowedPanelVerdict each in new[] { bowl, saddle })
        {
            Assert.Equal(37.5, each.Share, 1e-9);
            Assert.Equal((22.5, 15.0, 600.0), (each.RiseAround.Millimeters, each.RiseAlong.Millimeters, each.ShorterSide.Millimeters));
            Assert.Equal(189.736659, each.LargestShorterSide.Millimeters, 2e-6);
            Assert.Equal(112_500, each.SmallestAlong.Millimeters, 1e-5);
            Assert.False(each.Passes);
            Assert.Equal(["panels-double-curvature", "panels-double-smaller", "panels-double-figures", "panels-double-edges", "panels-double-limit", "panels-bend-dry", "panels-cutting-dust"], each.Findings.Select(static finding => finding.Code));
            WorkingsCheck.Recompute(each.Explain());
        }

        Assert.Equal((-0.005, 0.0025), (Math.Round(bowl.EdgeStrain, 12), Math.Round(bowl.MiddleStrain, 12)));
        Assert.Equal((0.005, -0.0025), (Math.Round(saddle.EdgeStrain, 12), Math.Round(saddle.MiddleStrain, 12)));
        Assert.Equal((true, false), (bowl.IsBowl, saddle.IsBowl));
        Assert.True(DoubleCurvature.Judge(new BowedPanel(s_plain, Mm(-2000), Mm(-3000), Mm(600), Mm(2400))).IsBowl);
        Assert.Contains("waves", bowl.Findings[3].Message, StringComparison.Ordinal);
        Assert.Contains("drums", saddle.Findings[3].Message, StringComparison.Ordinal);
    }

    /// <summary>
    /// Another way round, on a ball of R 1000: a fibre y off the equator has the length cos(y/R) of the equator's; laid flat all are as long as each other. The mean comes off, for no force over the strip.
    /// Of a saddle: on the inside of a ring the same circles grow by (R - ρ cos(y/ρ))/(R - ρ).
    /// </summary>
    [Theory]
    [InlineData(40)]
    [InlineData(100)]
    public void Circles_on_a_ball_and_inside_a_ring_agree(double width)
    {
        const int Fibres = 20_000;
        double[] ball = [.. Enumerable.Range(0, Fibres).Select(i => Math.Cos(Place(i) / 1000))];
        double[] ring = [.. Enumerable.Range(0, Fibres).Select(i => (3000 - (1000 * Math.Cos(Place(i) / 1000))) / 2000)]; // curvatures 1/1000 and 1/2000, one each way
        BowedPanelVerdict bowl = DoubleCurvature.Judge(new BowedPanel(s_plain, Mm(1000), Mm(1000), Mm(width), Mm(500))), saddle = DoubleCurvature.Judge(new BowedPanel(s_plain, Mm(1000), Mm(-2000), Mm(width), Mm(500)));
        Assert.Equal(1, (ball[^1] - ball.Average()) / bowl.EdgeStrain, 0.001);
        Assert.Equal(1, (ball[Fibres / 2] - ball.Average()) / bowl.MiddleStrain, 0.001);
        Assert.Equal(1, (ring[^1] - ring.Average()) / saddle.EdgeStrain, 0.001);
        Assert.Equal(1, (ring[Fibres / 2] - ring.Average()) / saddle.MiddleStrain, 0.001);

        double Place(int i) => (((i + 0.5) / Fibres) - 0.5) * width;
    }

    [Property]
    public void What_is_taken_is_taken_and_no_more(PositiveInt seed)
    {
        BowedPanel panel = Random(seed.Get);
        BowedPanelVerdict verdict = DoubleCurvature.Judge(panel);
        double side = verdict.LargestShorterSide.Millimeters, second = verdict.SmallestAlong.Millimeters;
        if (side is > 1.1 and < 9e4)
        {
            Assert.True(DoubleCurvature.Judge(panel with { Girth = Mm(side), Width = Longest(panel.Along) }).Share <= 1 + 1e-9);
            Assert.True(DoubleCurvature.Judge(panel with { Girth = Longest(panel.Around), Width = Mm(side * 1.0001) }).Share > 1);
        }

        if (second is > 300 and < 1e6)
        {
            double sign = Math.Sign(panel.Along.Millimeters);
            BowedPanelVerdict met = DoubleCurvature.Judge(Fitting(panel with { Along = Mm(sign * second) })), missed = DoubleCurvature.Judge(Fitting(panel with { Along = Mm(sign * second * 0.9999) }));
            if (new[] { met, missed }.All(each => Math.Min(each.Panel.Girth.Millimeters, each.Panel.Width.Millimeters) == Math.Min(panel.Girth.Millimeters, panel.Width.Millimeters)))
            {
                Assert.True(met.Share <= 1 + 1e-9 && met.AlongMiddleRadius.Millimeters >= met.AlongMinimumRadius.Millimeters);
                Assert.True(missed.Share > 1 || missed.AlongMiddleRadius.Millimeters < missed.AlongMinimumRadius.Millimeters);
                Assert.False(missed.Passes);
            }
        }

        // What passes is within share, bends and half a turn; each by the reader's own sum.
        double t = panel.Sheet.Thickness.Millimeters, least = panel.Sheet.Elasticity.Megapascals * t / panel.Sheet.BendingStrength.Megapascals;
        double around = Middle(panel.Around), along = Middle(panel.Along);
        Assert.Equal(
            Math.Min(panel.Girth.Millimeters, panel.Width.Millimeters) <= side * (1 + 1e-9) && Math.Min(around, along) >= least - 1e-6 && panel.Girth.Millimeters <= (Math.PI * around) + 1e-6 && panel.Width.Millimeters <= (Math.PI * along) + 1e-6,
            verdict.Passes);
        Assert.Equal((Math.Round(around, 6), Math.Round(along, 6)), (verdict.AroundMiddleRadius.Millimeters, verdict.AlongMiddleRadius.Millimeters));
        WorkingsCheck.Recompute(verdict.Explain());

        double Middle(Length radius) => Math.Abs(radius.Millimeters) + ((radius.Millimeters < 0 ? 1 : -1) * t / 2);

        static Length Longest(Length radius) => Mm(Math.Min(1e5, 6 * (Math.Abs(radius.Millimeters) - 20)));

        static BowedPanel Fitting(BowedPanel panel) => panel with { Width = Mm(Math.Min(panel.Width.Millimeters, Longest(panel.Along).Millimeters)) };
    }

    /// <summary>The bend calculator's share is the same; either radius may come first; a larger panel and a tighter bow take more; twice the size takes the same.</summary>
    [Property]
    public void It_agrees_with_the_bend_and_with_itself(PositiveInt seed)
    {
        BowedPanel panel = Random(seed.Get);
        BowedPanelVerdict verdict = DoubleCurvature.Judge(panel);
        BendVerdict bend = PanelBend.Judge(new BendCase(panel.Sheet, panel.Around) { BowAlong = panel.Along, Girth = panel.Girth, Width = panel.Width });
        Assert.Equal(bend.DoubleCurvatureShare, verdict.Share);
        Assert.Equal(bend.Findings.Any(static finding => finding.Code == "panels-double-curvature"), verdict.Findings.Any(static finding => finding.Code == "panels-double-curvature"));
        Assert.Equal(bend.MinimumRadius, verdict.AroundMinimumRadius);
        Assert.Equal(bend.BowMinimumRadius!.Value, verdict.AlongMinimumRadius);
        Assert.False(bend.Follows && !verdict.Passes && panel.Width.Millimeters <= Math.PI * verdict.AlongMiddleRadius.Millimeters); // what rows allow the surface allows
        Assert.Equal(!verdict.Passes, verdict.HasProblem);
        Near(DoubleCurvature.Judge(panel with { Around = panel.Along, Along = panel.Around, Girth = panel.Width, Width = panel.Girth }).Share);
        Near(DoubleCurvature.Judge(new BowedPanel(panel.Sheet with { Thickness = Mm(2 * panel.Sheet.Thickness.Millimeters) }, Twice(panel.Around), Twice(panel.Along), Twice(panel.Girth), Twice(panel.Width))).Share);
        Assert.True(DoubleCurvature.Judge(panel with { Girth = Twice(panel.Girth), Width = Twice(panel.Width) }).Share > verdict.Share);
        Assert.True(DoubleCurvature.Judge(panel with { Along = Twice(panel.Along) }).Share < verdict.Share);

        static Length Twice(Length length) => Mm(2 * length.Millimeters);

        void Near(double share) => Assert.Equal(verdict.Share, share, 1e-9 * verdict.Share);
    }

    /// <summary>
    /// 6.5 mm birch along the axis takes 4763 · 6.4/29 = 1051 mm, the other way 12737 · 6.4/50.9 = 1602. R 300 is 296.8 to its middle: however narrow the panel, it breaks there. R 500 the other way (503.2 where
    /// it bulges) breaks it too. Two bends, two problems.
    /// </summary>
    [Fact]
    public void A_bend_that_the_sheet_does_not_take_by_itself_is_a_problem()
    {
        BowedPanel panel = new(BentSheet.Of(SheetGoods.Birch6, BendGrain.AlongTheAxis), Mm(300), Mm(500_000), Mm(400), Mm(50));
        BowedPanelVerdict one = DoubleCurvature.Judge(panel), both = DoubleCurvature.Judge(panel with { Along = Mm(-500) });
        Assert.True(one.Share < 0.01);
        Assert.False(one.Passes);
        Assert.True(one.HasProblem);
        Finding tight = Assert.Single(one.Findings, static finding => finding.Severity == Severity.Problem);
        Assert.Equal("panels-double-bend-too-tight", tight.Code);
        Assert.Equal(296.8, tight.Values.Single(static value => value.Name == "middle-radius").Value, 1e-9);
        Assert.Equal(1051, tight.Values.Single(static value => value.Name == "minimum-radius").Value, 0.5);
        Assert.DoesNotContain("takes both bows", one.ToString(), StringComparison.Ordinal);
        Finding[] two = [.. both.Findings.Where(static finding => finding.Code == "panels-double-bend-too-tight")];
        Assert.Equal([296.8, 503.2], two.Select(static finding => finding.Values.Single(static value => value.Name == "middle-radius").Value).Select(static value => Math.Round(value, 6)));
        Assert.Equal(1602, two[1].Values.Single(static value => value.Name == "minimum-radius").Value, 0.5);
        WorkingsCheck.Recompute(both.Explain());

        // The same sheet with its grain around the curve: 1602 there, 1051 along.
        Finding[] turned = [.. DoubleCurvature.Judge(panel with { Sheet = BentSheet.Of(SheetGoods.Birch6, BendGrain.AroundTheCurve), Along = Mm(-500) }).Findings.Where(static finding => finding.Code == "panels-double-bend-too-tight")];
        Assert.Equal([1602, 1051], turned.Select(static finding => Math.Round(finding.Values.Single(static value => value.Name == "minimum-radius").Value)));
    }

    /// <summary>s_plain takes 2 · 10000 · 6/100 = 1200: hollow R 1203 is just taken, bulging R 1197 too; a micrometre less is not. A factor of 1 makes it 600, and is named; a published radius is of one grain.</summary>
    [Fact]
    public void A_least_radius_exactly_met_is_met()
    {
        BowedPanel panel = new(s_plain, Mm(1203), Mm(-1197), Mm(50), Mm(100));
        Assert.True(DoubleCurvature.Judge(panel).Passes);
        Assert.False(DoubleCurvature.Judge(panel with { Around = Mm(1202.999) }).Passes);
        Assert.False(DoubleCurvature.Judge(panel with { Along = Mm(-1196.999) }).Passes);
        BowedPanelVerdict bold = DoubleCurvature.Judge(panel with { Sheet = s_plain with { Factor = 1 }, Around = Mm(603) });
        Assert.True(bold.Passes);
        Assert.Contains(bold.Findings, static finding => finding.Code == "panels-bend-factor-low");
        BowedPanel published = panel with { Sheet = s_plain with { PublishedRadius = Mm(1300) } };
        Assert.Single(DoubleCurvature.Judge(published).Findings, static finding => finding.Code == "panels-double-bend-too-tight");
        Assert.True(DoubleCurvature.Judge(published with { Around = Mm(1303) }).Passes);
    }

    /// <summary>Round 1200 to the middle: half a circle is 3769.9 long, a whole one 7539.8. Over half the formulas say nothing; over a whole turn there is no such sheet.</summary>
    [Fact]
    public void A_sheet_more_than_half_round_is_a_problem_and_more_than_once_round_is_refused()
    {
        BowedPanel panel = new(s_plain, Mm(1203), Mm(500_000), Mm(3769), Mm(50));
        Assert.True(DoubleCurvature.Judge(panel).Passes);
        BowedPanelVerdict over = DoubleCurvature.Judge(panel with { Girth = Mm(3770) });
        Assert.Contains(over.Findings, static finding => finding is { Code: "panels-bay-too-long", Severity: Severity.Problem });
        Assert.False(over.Passes);
        Assert.Equal(["panel.Girth"], DoubleCurvature.CheckJudge(panel with { Girth = Mm(7540) }).Select(static problem => problem.Parameter));
        Assert.Equal(["panel.Width"], DoubleCurvature.CheckJudge(panel with { Around = panel.Along, Along = Mm(-1197), Girth = Mm(50), Width = Mm(7540) }).Select(static problem => problem.Parameter));
        Assert.Empty(DoubleCurvature.CheckJudge(panel with { Girth = Mm(7539) }));
        Assert.Equal("panel.Girth", Assert.Throws<ArgumentOutOfRangeException>(() => DoubleCurvature.Judge(new BowedPanel(BentSheet.Of(SheetGoods.Birch6, BendGrain.AlongTheAxis), Mm(300), Mm(500_000), Mm(2000), Mm(50)))).ParamName);
    }

    [Fact]
    public void A_sheet_of_a_table_knows_both_directions()
    {
        BowedPanel panel = new(BentSheet.Of(SheetGoods.Birch6, BendGrain.AlongTheAxis), Mm(2216), Mm(5000), Mm(352), Mm(3400));
        Assert.DoesNotContain(DoubleCurvature.Judge(panel).Findings, static finding => finding.Code == "panels-double-figures");
        Assert.Equal(DoubleCurvature.Judge(panel).Share, DoubleCurvature.Judge(panel with { Sheet = BentSheet.Of(SheetGoods.Birch6, BendGrain.AroundTheCurve) }).Share);
        Assert.Equal(2.33, DoubleCurvature.Judge(panel).Share, 0.005); // 10 · 12737 · 352²/(12 · 50.9 · 2216 · 5000)
    }

    [Fact]
    public void All_problems_are_reported_at_once()
    {
        BowedPanel bad = new(s_plain with { Thickness = Mm(0) }, Mm(0), Mm(2e6), Mm(0), Mm(2e5));
        Assert.Equal(["panel.Sheet.Thickness", "panel.Around", "panel.Along", "panel.Girth", "panel.Width"], DoubleCurvature.CheckJudge(bad).Select(static problem => problem.Parameter));
        Assert.Equal(["panel.Around", "panel.Along"], DoubleCurvature.CheckJudge(new BowedPanel(s_plain, Mm(6), Mm(5), Mm(100), Mm(100))).Select(static problem => problem.Parameter));
        Assert.Equal(new BowedPanel(s_plain, Mm(25.4), Mm(90), Mm(10), Mm(10)), new BowedPanel(s_plain, Length.FromInches(1), Mm(90), Mm(10), Mm(10)));
    }

    private static BowedPanel Random(int seed)
    {
        Random random = new(seed);
        BentSheet sheet = new(Mm(random.Next(10, 200) / 10.0), Pressure.FromMegapascals(random.Next(1000, 15_000)), Pressure.FromMegapascals(random.Next(10, 80)));
        Length around = Radius(), along = Radius();
        return new BowedPanel(sheet, around, along, Size(around), Size(along));

        // Twice as large it still goes no more than once round.
        Length Size(Length radius) => Mm(random.Next(50, (int)Math.Min(4000, 3 * (Math.Abs(radius.Millimeters) - 20))));

        Length Radius() => Mm(Math.Round(Math.Pow(10, 2.5 + (2.5 * random.NextDouble())), 3) * (random.Next(2) == 0 ? 1 : -1));
    }
}
