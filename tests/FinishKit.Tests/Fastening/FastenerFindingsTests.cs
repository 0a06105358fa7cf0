using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>Every finding in a case that raises it and in one next to it that does not. Sums by hand beside each; nail ±0.79375 up to one inch, ±1.5875 above.</summary>
public sealed class FastenerFindingsTests
{
    /// <summary>The shortest brad, 15.875 ± 0.79375, in 12.7 + 3: 15.7 - 1.5 - 16.66875 = -2.46875, which is 2.96875 short of 0.5; in 12.7 + 15.875 it is safe.</summary>
    [Fact]
    public void None_safe()
    {
        FastenerChoice choice = Choose(Job(12.7, 3));
        Finding finding = Single(choice, "fastening-none-safe");
        Assert.Null(choice.Chosen);
        Assert.Equal(Severity.Problem, finding.Severity);
        Assert.Equal(15.875, Value(finding, "length"));
        Assert.Equal(-2.46875, Value(finding, "worst-clearance"));
        Assert.Equal(0.5, Value(finding, "required-clearance"));
        Assert.Contains("2.969 mm short", finding.Message, StringComparison.Ordinal);
        Assert.Contains(choice.Remedies[0].Text, finding.Message, StringComparison.Ordinal);
        Assert.Empty(choice.Figures());
        Assert.Null(choice.NextLonger);
        Assert.Contains(finding.Message, choice.ToString(), StringComparison.Ordinal);
        None(Choose(Job(12.7, 15.875)), "fastening-none-safe");
    }

    /// <summary>Under a 60 mm board the longest brad, 50.8, ends in the board: safe and no bite. With 20 mm of board it bites.</summary>
    [Fact]
    public void None_bites()
    {
        FastenerChoice choice = Choose(Job(60, 15));
        Finding finding = Single(choice, "fastening-none-bites");
        Assert.Null(choice.Chosen);
        Assert.Equal(Severity.Problem, finding.Severity);
        Assert.Equal(FastenerSeries.Brad18.Lengths.Max(static length => length.Millimeters), Value(finding, "length"), 1e-9);
        Assert.Equal(0, Value(finding, "worst-bite"));
        Assert.Equal(7.5, Value(finding, "least-bite"));
        None(choice, "fastening-none-safe");
        None(Choose(Job(20, 40)), "fastening-none-bites");
    }

    /// <summary>The demo van's nail is marginal; with set exactly 1 and ply exactly 15.1 the worst case is 1.4 - 0.79375 = 0.60625 and safe.</summary>
    [Fact]
    public void Marginal()
    {
        FastenerChoice choice = Choose(Demo());
        Finding finding = Single(choice, "fastening-marginal");
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Equal(-0.39375, Value(finding, "worst-clearance"));
        Assert.Equal(choice.Chosen!.TouchChance, Value(finding, "touch-chance"));
        Assert.NotEmpty(choice.Remedies);

        // A 19.05 brad is safe here (27.3 - 1.5 - 19.84375 = 5.95625) and bites too little (18.75625 - 12.7 = 6.05625 of 7.5): the sentence must not say that none is safe.
        Assert.Equal((TipVerdict.Safe, BiteVerdict.TooLittle), (choice.Candidates[1].Tip, choice.Candidates[1].Hold));
        Assert.StartsWith("No stocked length is both safe and deep enough. 25.4 mm is marginal", finding.Message, StringComparison.Ordinal);
        None(Choose(Demo() with { Layers = [Mm(12.7), Mm(15.1)], SetDepth = Mm(1) }), "fastening-marginal");
    }

    /// <summary>The longest safe is asked: a marginal one is not taken for it.</summary>
    [Fact]
    public void The_longest_safe_takes_no_marginal_one()
    {
        FastenerChoice choice = Choose(Demo() with { Preference = FastenerPreference.LongestSafe, LeastBite = Mm(12) });
        Assert.Null(choice.Chosen);
        Assert.True(choice.HasProblem);
        None(choice, "fastening-marginal");
    }

    /// <summary>3.8919e-5 a nail: 200 expect 0.0078, 10,000 expect 0.389; the limit exactly met is no caution, the next double below is.</summary>
    [Fact]
    public void Hits_expected()
    {
        None(Choose(Demo() with { Count = 200 }), "fastening-hits-expected");
        FastenerChoice choice = Choose(Demo() with { Count = 10_000 });
        Finding finding = Single(choice, "fastening-hits-expected");
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Equal(0.38919, Value(finding, "expected-hits"), 0.00005);
        Assert.Equal(0.1, Value(finding, "hits-limit"));
        Assert.Equal(choice.Chosen!.AnyHitChance, Value(finding, "any-hit-chance"));
        double hits = choice.Chosen!.ExpectedHits;
        None(Choose(Demo() with { Count = 10_000, HitsLimit = hits }), "fastening-hits-expected");
        Single(Choose(Demo() with { Count = 10_000, HitsLimit = Math.BitDecrement(hits) }), "fastening-hits-expected");
    }

    /// <summary>By the label 12.7 + 15 - 0.5 - 26.19375 = 1.00625, by the sheet's least 14.2 only 0.20625. An 18 mm sheet is safe either way, and furring without a label has no trap.</summary>
    [Fact]
    public void Label_thickness()
    {
        FastenerJob job = new([Mm(12.7), Layer.Furring(SheetGoods.Birch15)], Behind.Metal, FastenerSeries.Brad18) { SetDepth = Mm(0.5) };
        Finding finding = Single(Choose(job), "fastening-label-thickness");
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Equal(25.4, Value(finding, "length"));
        Assert.Equal(0.20625, Value(finding, "worst-clearance"));
        None(Choose(job with { Layers = [Mm(12.7), Layer.Furring(SheetGoods.Birch15.Thickness)] }), "fastening-label-thickness");
        None(Choose(job with { SetDepth = Mm(2) }), "fastening-label-thickness"); // -0.49375 by the label too
    }

    [Theory]
    [InlineData(BehindKind.OuterSkin, "the outer skin")]
    [InlineData(BehindKind.Wire, "a wire")]
    [InlineData(BehindKind.Pipe, "a pipe")]
    [InlineData(BehindKind.Tank, "a tank")]
    public void Cavity_service(BehindKind kind, string words)
    {
        TolerancedLength depth = TolerancedLength.PlusMinus(Mm(45), Mm(3), DeviationScope.Each);
        Finding finding = Single(Choose(Job(12.7, 15) with { Behind = new Behind(kind, depth) }), "fastening-cavity-service");
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
        Assert.Equal(45, Value(finding, "depth-behind"));
        Assert.Equal(42, Value(finding, "depth-behind-least"));
        None(Choose(Job(12.7, 15) with { Behind = Behind.MetalAt(depth) }), "fastening-cavity-service");
    }

    /// <summary>25.4 in 12.7 + 15.875 at set 1 bites 26.4 - 12.7 = 13.7: over the 12.5 of 10 diameters, under 13.700001.</summary>
    [Fact]
    public void Bite_under_target()
    {
        FastenerJob job = Job(12.7, 15.875);
        None(Choose(job), "fastening-bite-under-target");
        None(Choose(job with { TargetBite = Mm(13.7) }), "fastening-bite-under-target");
        Finding finding = Single(Choose(job with { TargetBite = Mm(13.700001) }), "fastening-bite-under-target");
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal(13.7, Value(finding, "bite"));
        Assert.Equal(13.700001, Value(finding, "target-bite"));
        Assert.Equal(12.40625, Value(finding, "worst-bite")); // 0.5 + 24.60625 - 12.7
    }

    /// <summary>Set at most 1.5: a first layer that may be 1.5 is gone through, one of 1.500001 is not.</summary>
    [Fact]
    public void Head_through()
    {
        Finding finding = Single(Choose(Job(1.5, 40)), "fastening-head-through");
        Assert.Equal(Severity.Problem, finding.Severity);
        Assert.Equal(1.5, Value(finding, "set-depth"));
        Assert.Equal(1.5, Value(finding, "thinnest"));
        None(Choose(Job(1.500001, 40)), "fastening-head-through");
        Single(Choose(Job(1.6, 40) with { Layers = [TolerancedLength.PlusMinus(Mm(1.6), Mm(0.1)), Mm(40)] }), "fastening-head-through");
    }

    [Fact]
    public void Look_behind_stands_last_on_every_choice_and_not_on_the_plain_sum()
    {
        foreach (FastenerChoice choice in new[] { Choose(Job(12.7, 15.875)), Choose(Job(12.7, 3)), Choose(Demo()) })
        {
            Assert.Equal("fastening-look-behind", choice.Findings[^1].Code);
            Assert.Equal(Severity.Note, choice.Findings[^1].Severity);
            Single(choice, "fastening-look-behind");
        }

        Assert.DoesNotContain(FastenerLength.TipClearance(Mm(20), Mm(25), Mm(0), Angle.FromDegrees(0)).Findings, static finding => finding.Code == "fastening-look-behind");
    }

    /// <summary>25.4 deep exactly touches; a nanometre more room does not; 24.4 is 1.5 mm past at set 0.5.</summary>
    [Fact]
    public void Tip_touches()
    {
        TipClearance touch = FastenerLength.TipClearance(Mm(25.9), Mm(25.4), Mm(0.5), Angle.FromDegrees(0));
        Finding finding = Assert.Single(touch.Findings);
        Assert.True(touch.HasProblem);
        Assert.True(touch.Touches);
        Assert.Equal("fastening-tip-touches", finding.Code);
        Assert.Equal(Severity.Problem, finding.Severity);
        Assert.Equal(0, Value(finding, "clearance"));
        Assert.Equal(25.9, Value(finding, "tip-depth"));
        Assert.Contains("and touches what is 25.9 mm behind", finding.Message, StringComparison.Ordinal);
        TipClearance clear = FastenerLength.TipClearance(Mm(25.900001), Mm(25.4), Mm(0.5), Angle.FromDegrees(0));
        Assert.Empty(clear.Findings);
        Assert.False(clear.HasProblem);
        Assert.Contains("is 1.5 mm past", Assert.Single(FastenerLength.TipClearance(Mm(24.4), Mm(25.4), Mm(0.5), Angle.FromDegrees(0)).Findings).Message, StringComparison.Ordinal);
        Assert.False(default(TipClearance).Touches);
    }

    /// <summary>Two problems, cautions and notes on one job.</summary>
    [Fact]
    public void The_gravest_stand_first()
    {
        FastenerChoice choice = Choose(Job(1.2, 5) with { Behind = Behind.Wire(Mm(0)) });
        Assert.Equal(["fastening-none-safe", "fastening-head-through", "fastening-cavity-service", "fastening-look-behind"], choice.Findings.Select(static finding => finding.Code));
        Assert.True(choice.HasProblem);
    }

    [Property(Arbitrary = [typeof(FastenerArbitraries)], MaxTest = 500)]
    public void Severity_never_rises_along_the_findings(FastenerTrial trial)
    {
        FastenerChoice choice = FastenerLength.Choose(trial.Job);
        for (int i = 1; i < choice.Findings.Count; i++)
        {
            Assert.True(choice.Findings[i].Severity <= choice.Findings[i - 1].Severity);
        }

        Assert.Equal(choice.Findings.Any(static finding => finding.Severity == Severity.Problem), choice.HasProblem);
        Assert.Equal(choice.Findings.Count, choice.Findings.Select(static finding => finding.Code).Distinct().Count());
    }

    /// <summary>Thin furring: thicker furring, an angle, and another series are all tried; each in words that name its figures.</summary>
    [Fact]
    public void Remedies_are_named_in_words_and_figures()
    {
        FastenerJob job = Job(12.7, 12.7) with { SetDepth = Mm(0.5), LeastBite = Mm(3), TargetBite = Mm(12) };
        FastenerChoice choice = Choose(job with { Behind = Behind.Skin(Mm(0)), RequiredClearance = Mm(8) });
        Assert.Null(choice.Chosen);
        FurringRemedy furring = Assert.Single(choice.Remedies.OfType<FurringRemedy>());

        // 25.4 is the shortest that reaches 12 mm in deep furring: 25.9 - 12.7 = 13.2. Worst clearance 25.4 - 26.69375 = -1.29375; 12.7 + 8 + 1.29375 = 21.99375.
        Assert.Equal(25.4, furring.Fastener.Millimeters, 1e-9);
        Assert.Equal(21.99375, furring.Least.Millimeters);
        Assert.Contains("21.994 mm", furring.Text, StringComparison.Ordinal);
        Assert.Equal(21.99375, furring.Figures().Single(static figure => figure.Name == "least-furring").Value);

        // cos A = (25.4 - 0.5 - 8)/26.19375 = 0.645192, A = 49.8199 by a script; the least bite asked is 3.
        DriveAngleRemedy lean = Assert.Single(choice.Remedies.OfType<DriveAngleRemedy>());
        Assert.Equal(49.8199, lean.Angle.Degrees, 0.0001);
        Assert.Contains("50 degrees", lean.Text, StringComparison.Ordinal);
        Assert.Equal(lean.Angle.Degrees, lean.Figures().Single(static figure => figure.Name == "drive-angle").Value);
    }

    /// <summary>7 + 9: the shortest brad, 15.875, has 16 - 1.5 - 16.66875 = -2.16875; a 12.7 pin 16 - 1.5 - 13.49375 = 1.00625, and bites (11.90625 + 0.5) - 7 = 5.40625, over 6 x 0.64.</summary>
    [Fact]
    public void A_shorter_series_is_a_remedy()
    {
        FastenerJob job = Job(7, 9);
        FastenerChoice choice = Choose(job);
        Assert.Null(choice.Chosen);
        SeriesRemedy other = Assert.Single(choice.Remedies.OfType<SeriesRemedy>());
        Assert.Equal(FastenerSeries.Pin23.Name, other.Series.Name);
        Assert.Equal(12.7, other.Fastener.Millimeters, 1e-9);
        Assert.Equal(FastenerLength.Choose(job with { Series = FastenerSeries.Pin23 }).Chosen!.ToString(), other.Outcome.ToString());
        Assert.Contains(other.Series.Name, other.Text, StringComparison.Ordinal);
        Assert.Equal(12.7, other.Figures().Single(static figure => figure.Name == "fastener").Value, 1e-9);
        Assert.Empty(Choose(job with { OtherSeries = [FastenerSeries.Brad18] }).Remedies.OfType<SeriesRemedy>()); // the job's own is no other
        Assert.Empty(Choose(job with { OtherSeries = [] }).Remedies.OfType<SeriesRemedy>());
    }

    [Fact]
    public void Defaults_taken_are_named_and_only_those()
    {
        FastenerJob job = Job(12.7, 15.875);
        Assert.Equal(
            [("set-depth", 1), ("required-clearance", 0.5), ("least-bite", 7.5), ("target-bite", 12.5), ("marginal-chance", 1e-4), ("hits-limit", 0.1)],
            Choose(job).DefaultsUsed.Select(static used => (used.Figure.Name, used.Figure.Value)));
        Assert.Equal(5, Choose(job with { Behind = Behind.Skin(Mm(50)) }).DefaultsUsed[1].Figure.Value);
        foreach (Behind behind in new[] { Behind.Wire(Mm(50)), Behind.Pipe(Mm(50)), Behind.Tank(Mm(50)) })
        {
            Assert.Equal(10, Choose(job with { Behind = behind }).DefaultsUsed[1].Figure.Value);
        }

        Assert.Empty(Choose(job with { SetDepth = Mm(1), RequiredClearance = Mm(0.5), LeastBite = Mm(7.5), TargetBite = Mm(12.5), MarginalChance = 1e-4, HitsLimit = 0.1 }).DefaultsUsed);
    }

    [Fact]
    public void Figures_are_named_and_agree_with_the_result()
    {
        FastenerChoice choice = Choose(Demo());
        FastenerCandidate chosen = choice.Chosen!;
        Assert.Equal(chosen.Figures(), choice.Figures());
        Dictionary<string, double> figures = choice.Figures().ToDictionary(static figure => figure.Name, static figure => figure.Value);
        Assert.Equal(25.4, figures["length"]);
        Assert.Equal(chosen.TipDepth.Millimeters, figures["tip-depth"]);
        Assert.Equal(1.4, figures["clearance"]);
        Assert.Equal(-0.39375, figures["worst-clearance"]);
        Assert.Equal(chosen.RootSumSquareClearance.Millimeters, figures["root-sum-square-clearance"]);
        Assert.Equal(0.5, figures["required-clearance"]);
        Assert.Equal(chosen.TouchChance, figures["touch-chance"]);
        Assert.Equal(chosen.ExpectedHits, figures["expected-hits"]);
        Assert.Equal(chosen.AnyHitChance, figures["any-hit-chance"]);
        Assert.Equal(13.7, figures["bite"]);
        Assert.Equal(12.40625, figures["worst-bite"]);
        Assert.Equal(7.5, figures["least-bite"]);
        Assert.Equal(12.5, figures["target-bite"]);
        Assert.Equal(13, figures.Count);
    }

    [Fact]
    public void Sentences_say_against_what_and_at_which_tolerance()
    {
        Assert.Equal(
            "25.4 mm is marginal against the metal of a rib: 1.4 mm clear at nominal sizes, in the worst case it is 0.394 mm past; 0.5 mm asked, chance of touching 3.89E-05.",
            Choose(Demo()).Chosen!.TipReason);
        Assert.Equal(
            "31.75 mm reaches the metal of a rib: 4.95 mm past at nominal sizes, in the worst case it is 7.538 mm past; 0.5 mm asked, chance of touching 1.",
            FastenerLength.Evaluate(Demo(), Mm(31.75)).TipReason); // 4.95 + 0.5 + 0.5 + 1.5875 = 7.5375, half away from zero
        Assert.StartsWith("19.05 mm is safe against a wire: ", FastenerLength.Evaluate(Job(12.7, 15) with { Behind = Behind.Wire(Mm(20)) }, Mm(19.05)).TipReason, StringComparison.Ordinal);
    }

    private static FastenerJob Job(double board, double furring) => new([Mm(board), Mm(furring)], Behind.Metal, FastenerSeries.Brad18);

    private static FastenerJob Demo() => new([Mm(12.7), TolerancedLength.PlusMinus(Mm(15.1), Mm(0.5))], Behind.Metal, FastenerSeries.Brad18);

    private static FastenerChoice Choose(FastenerJob job) => FastenerLength.Choose(job);

    private static Finding Single(FastenerChoice choice, string code) => Assert.Single(choice.Findings, finding => finding.Code == code);

    private static void None(FastenerChoice choice, string code) => Assert.DoesNotContain(choice.Findings, finding => finding.Code == code);

    private static double Value(Finding finding, string name) => finding.Values.Single(figure => figure.Name == name).Value;
}
