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
        Assert.NotEmpty(choice.Remedies);
        Assert.All(choice.Remedies, remedy => Assert.DoesNotContain(remedy.Text, finding.Message, StringComparison.Ordinal));
        Assert.Contains("safe against the metal of a rib", finding.Message, StringComparison.Ordinal);
        Assert.Equal([("chosen", 0), ("worst-severity", (double)Severity.Problem), ("candidates", FastenerSeries.Brad18.Lengths.Count)], choice.Figures().Take(3).Select(static figure => (figure.Name, figure.Value)));
        Assert.Equal(choice.Candidates[0].Figures(), choice.Figures().Skip(3)); // none is safe: the shortest is shown
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
        Assert.Contains("the longest one safe against the metal of a rib, 50.8 mm, bites 0 mm", finding.Message, StringComparison.Ordinal);
        Assert.All(choice.Remedies, remedy => Assert.DoesNotContain(remedy.Text, finding.Message, StringComparison.Ordinal));
        Assert.Equal(choice.Candidates[^1].Figures(), choice.Figures().Skip(3)); // the longest safe one is shown
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
        Assert.All(choice.Remedies, remedy => Assert.DoesNotContain(remedy.Text, finding.Message, StringComparison.Ordinal));

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
        None(Choose(job with { Layers = [Mm(12.7), Layer.Furring(SheetGoods.Birch18)] }), "fastening-label-thickness");
    }

    /// <summary>Sheets labelled 15 that are 14.2 at their least: with the middle at the label no one was misled, whatever the limits; a nanometre beside it the label is to blame.</summary>
    [Fact]
    public void Label_thickness_needs_a_middle_beside_the_label()
    {
        FastenerJob Job(double middle) => new(
            [Mm(12.7), Layer.Furring(new SheetGoods("test sheet", Mm(15), TolerancedLength.Between(Mm(14.2), Mm((2 * middle) - 14.2)), "test"))], Behind.Metal, FastenerSeries.Brad18)
        { SetDepth = Mm(0.5) };
        Assert.Equal(15, Job(15).Layers[1].Thickness.Nominal.Millimeters, 1e-9);
        None(Choose(Job(15)), "fastening-label-thickness");
        Assert.Equal(0.20625, Value(Single(Choose(Job(15.000001)), "fastening-label-thickness"), "worst-clearance"));
    }

    /// <summary>Safe as it is with a millimetre of gap: 27.9 - 0.5 - 26.19375 = 1.20625; an off-size sheet alone is no trap.</summary>
    [Fact]
    public void Label_thickness_needs_the_labelled_length_to_be_unsafe()
    {
        FastenerJob job = new([Mm(12.7), Layer.Furring(SheetGoods.Birch15)], Behind.MetalAt(Mm(1)), FastenerSeries.Brad18) { SetDepth = Mm(0.5) };
        Assert.Equal(1.20625, Choose(job).Chosen!.WorstClearance.Millimeters);
        None(Choose(job), "fastening-label-thickness");
        Single(Choose(job with { Behind = Behind.Metal }), "fastening-label-thickness");
    }

    /// <summary>The usual clearances: 0.5 to the metal of a rib, 5 to the outer skin, 10 to the rest. As usual is no caution; a nanometre less is, on the choice and on a candidate.</summary>
    [Theory]
    [InlineData(BehindKind.RibMetal, 0.5, "the metal of a rib")]
    [InlineData(BehindKind.OuterSkin, 5, "the outer skin")]
    [InlineData(BehindKind.Wire, 10, "a wire")]
    [InlineData(BehindKind.Pipe, 10, "a pipe")]
    [InlineData(BehindKind.Tank, 10, "a tank")]
    public void Clearance_lowered(BehindKind kind, double usual, string words)
    {
        FastenerJob job = Job(12.7, 15) with { Behind = new Behind(kind, Mm(50)) };
        None(Choose(job), "fastening-clearance-lowered");
        None(Choose(job with { RequiredClearance = Mm(usual) }), "fastening-clearance-lowered");
        FastenerChoice choice = Choose(job with { RequiredClearance = Mm(usual - 0.000001) });
        Finding finding = Single(choice, "fastening-clearance-lowered");
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Contains("against " + words, finding.Message, StringComparison.Ordinal);
        Assert.Equal(usual, Value(finding, "usual-clearance"));
        Assert.Equal(usual - 0.000001, Value(finding, "required-clearance"), 1e-9);
        Assert.Contains(choice.Chosen!.Findings, static finding => finding.Code == "fastening-clearance-lowered");
    }

    /// <summary>A tape or a void last does not hold; where nothing else is there that could, the choice says so and takes none.</summary>
    [Fact]
    public void Nothing_holds()
    {
        // No bite is asked, and still a fastener in nothing is not one that may be driven.
        FastenerChoice choice = Choose(new FastenerJob([new Layer(Mm(12.7)) { Holds = false }, Layer.Void(Mm(20))], Behind.Metal, FastenerSeries.Brad18) { LeastBite = Mm(0), TargetBite = Mm(0) });
        Assert.Null(choice.Chosen);
        Assert.Empty(choice.Remedies);
        Assert.All(choice.Candidates, static candidate => Assert.True(candidate is { HasProblem: true, MayBeDriven: false, Hold: BiteVerdict.TooLittle }));
        Assert.All(choice.Candidates, static candidate => Assert.DoesNotContain(candidate.Findings, static finding => finding.Code == "fastening-bite-too-little"));
        Finding finding = Single(choice, "fastening-nothing-holds");
        Assert.Equal(Severity.Problem, finding.Severity);
        Assert.All(choice.Candidates, static candidate => Assert.Contains(candidate.Findings, static finding => finding.Code == "fastening-nothing-holds"));
        None(Choose(new FastenerJob([Mm(12.7), Layer.Void(Mm(20))], Behind.Metal, FastenerSeries.Brad18)), "fastening-nothing-holds");
        None(Choose(Job(12.7, 15)), "fastening-nothing-holds");
    }

    /// <summary>31.75 reaches (4.95 past the metal of the demo van); 15.875 is safe and bites 0.5 + 15.08125 - 12.7 = 2.88125 of 7.5.</summary>
    [Fact]
    public void A_candidate_says_what_is_wrong_with_it()
    {
        FastenerCandidate reaches = FastenerLength.Evaluate(Demo(), Mm(31.75)), shallow = FastenerLength.Evaluate(Demo(), Mm(15.875)), good = FastenerLength.Evaluate(Job(12.7, 15.875), Mm(25.4));
        Finding tip = Assert.Single(reaches.Findings, static finding => finding.Code == "fastening-tip-reaches"), bite = Assert.Single(shallow.Findings, static finding => finding.Code == "fastening-bite-too-little");
        Assert.Equal(Severity.Problem, tip.Severity);
        Assert.Equal(reaches.TipReason, tip.Message);
        Assert.Equal(-7.5375, Value(tip, "worst-clearance"));
        Assert.Equal(0.5, Value(tip, "required-clearance"));
        Assert.Equal(reaches.TouchChance, Value(tip, "touch-chance"));
        Assert.DoesNotContain(reaches.Findings, static finding => finding.Code == "fastening-bite-too-little");
        Assert.Equal(Severity.Problem, bite.Severity);
        Assert.Equal(2.88125, Value(bite, "worst-bite"));
        Assert.Equal(7.5, Value(bite, "least-bite"));
        Assert.DoesNotContain(shallow.Findings, static finding => finding.Code == "fastening-tip-reaches");
        Assert.True(reaches.HasProblem && shallow.HasProblem && !good.HasProblem);
        Assert.Equal(["fastening-look-behind"], good.Findings.Select(static finding => finding.Code));
    }

    /// <summary>25.4 sin 30° = 12.7; square, 0.</summary>
    [Fact]
    public void The_side_shift_is_length_times_sine()
    {
        Assert.Equal(12.7, FastenerLength.Evaluate(Demo() with { DriveAngle = Angle.FromDegrees(30) }, Mm(25.4)).SideShift.Millimeters, 1e-9);
        Assert.Equal(0, FastenerLength.Evaluate(Demo(), Mm(25.4)).SideShift.Millimeters);
    }

    /// <summary>A value nobody set is never the favourable one.</summary>
    [Fact]
    public void A_forgotten_value_is_the_worst()
    {
        Assert.Equal((0, 1, 2), ((int)TipVerdict.Reaches, (int)TipVerdict.Marginal, (int)TipVerdict.Safe));
        Assert.Equal((0, 1), ((int)BiteVerdict.TooLittle, (int)BiteVerdict.Bites));
        Assert.Equal((0, 1, 2, 3, 4), ((int)BehindKind.Wire, (int)BehindKind.Pipe, (int)BehindKind.Tank, (int)BehindKind.OuterSkin, (int)BehindKind.RibMetal));
        Assert.Equal((TipVerdict.Reaches, BiteVerdict.TooLittle, BehindKind.Wire), (default(TipVerdict), default(BiteVerdict), default(BehindKind)));

        // And a wire asks the most clearance and takes no marginal fastener.
        Assert.Equal(10, FastenerLength.Evaluate(Demo() with { Behind = new Behind(default, Mm(0)) }, Mm(25.4)).RequiredClearance.Millimeters);
        Assert.Equal(TipVerdict.Reaches, FastenerLength.Evaluate(Demo() with { Behind = new Behind(default, Mm(0)) }, Mm(25.4)).Tip);
    }

    [Theory]
    [InlineData(BehindKind.OuterSkin, "the outer skin", "Measure it again where the fasteners go.")]
    [InlineData(BehindKind.Wire, "a wire", "Find it, mark it, and move or guard it if you can.")]
    [InlineData(BehindKind.Pipe, "a pipe", "Find it, mark it, and move or guard it if you can.")]
    [InlineData(BehindKind.Tank, "a tank", "Find it, mark it, and move or guard it if you can.")]
    public void Cavity_depth(BehindKind kind, string words, string advice)
    {
        TolerancedLength depth = TolerancedLength.PlusMinus(Mm(45), Mm(3), DeviationScope.Each);
        Finding finding = Single(Choose(Job(12.7, 15) with { Behind = new Behind(kind, depth) }), "fastening-cavity-depth");
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Contains("counted to " + words, finding.Message, StringComparison.Ordinal);
        Assert.EndsWith(advice, finding.Message, StringComparison.Ordinal);
        Assert.Equal(45, Value(finding, "depth-behind"));
        Assert.Equal(42, Value(finding, "depth-behind-least"));
        None(Choose(Job(12.7, 15) with { Behind = Behind.MetalAt(depth) }), "fastening-cavity-depth");
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
        FastenerChoice through = Choose(Job(1.5, 40));
        Finding finding = Single(through, "fastening-head-through");
        Assert.Same(finding, through.Findings[0]);
        Assert.Null(through.Chosen);
        Assert.Empty(through.Remedies);
        Assert.All(through.Candidates, static candidate => Assert.True(candidate.HeadGoesThrough && !candidate.MayBeDriven && candidate.HasProblem));
        Assert.Contains(through.Candidates, static candidate => candidate is { Tip: TipVerdict.Safe, Hold: BiteVerdict.Bites }); // it is the head alone
        Assert.NotNull(Choose(Job(1.500001, 40)).Chosen);
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
        FastenerJob nothing = Job(12.7, 5) with { Layers = [Mm(12.7), new Layer(Mm(5)) { Holds = false }], Behind = Behind.Wire(Mm(0)), RequiredClearance = Mm(9) };
        FastenerChoice choice = Choose(nothing);
        Assert.Equal(["fastening-nothing-holds", "fastening-none-safe", "fastening-cavity-depth", "fastening-look-behind"], choice.Findings.Select(static finding => finding.Code));
        Assert.True(choice.HasProblem);
        FastenerCandidate candidate = FastenerLength.Evaluate(nothing with { Layers = [Mm(1.2), new Layer(Mm(5)) { Holds = false }] }, Mm(25.4));
        Assert.Equal(
            ["fastening-head-through", "fastening-nothing-holds", "fastening-tip-reaches", "fastening-clearance-lowered", "fastening-cavity-depth", "fastening-look-behind"],
            candidate.Findings.Select(static finding => finding.Code).Where(static code => code != "fastening-bite-too-little"));

        // Where the head goes through, no length is spoken of: the figures mean nothing.
        Assert.Equal(["fastening-head-through", "fastening-cavity-depth", "fastening-look-behind"], Choose(Job(1.2, 5) with { Behind = Behind.Wire(Mm(0)) }).Findings.Select(static finding => finding.Code));
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
        FastenerJob job = new([Mm(12.7), Layer.Furring(Mm(12.7))], Behind.Metal, FastenerSeries.Brad18) { SetDepth = Mm(0.5), LeastBite = Mm(3), TargetBite = Mm(12), RequiredClearance = Mm(8), MarginalChance = 0 };
        FastenerChoice choice = Choose(job);
        Assert.Null(choice.Chosen);
        FurringRemedy furring = Assert.Single(choice.Remedies.OfType<FurringRemedy>());

        // 25.4 is the shortest that reaches 12 mm in deep furring: 25.9 - 12.7 = 13.2. Worst clearance 25.4 - 26.69375 = -1.29375; 12.7 + 8 + 1.29375 = 21.99375.
        Assert.Equal(25.4, furring.Fastener.Millimeters, 1e-9);
        Assert.Equal(21.99375, furring.Least.Millimeters);
        Assert.StartsWith("With furring of 21.994 mm or more, ", furring.Text, StringComparison.Ordinal);
        Assert.Contains("25.4 mm fasteners are safe against the metal of a rib in the worst case", furring.Text, StringComparison.Ordinal);
        Assert.StartsWith("With strip of ", Choose(job with { Layers = [Mm(12.7), new Layer(Mm(12.7)) { Name = "strip" }] }).Remedies[0].Text, StringComparison.Ordinal);
        Assert.Equal(21.99375, furring.Figures().Single(static figure => figure.Name == "least-furring").Value);

        // cos A = (25.4 - 0.5 - 8)/26.19375 = 0.645192, A = 49.8199 by a script; the least bite asked is 3.
        DriveAngleRemedy lean = Assert.Single(choice.Remedies.OfType<DriveAngleRemedy>());
        Assert.Equal(49.8199, lean.Least.Degrees, 0.0001);
        Assert.Equal(50, lean.Angle.Degrees);
        Assert.Contains("50 degrees", lean.Text, StringComparison.Ordinal);
        Assert.Contains("safe against the metal of a rib", lean.Text, StringComparison.Ordinal);
        Assert.Equal(["fastener", "least-drive-angle", "drive-angle", "side-shift"], lean.Figures().Select(static figure => figure.Name));
        Assert.Equal([lean.Least.Degrees, 50], lean.Figures().Skip(1).Take(2).Select(static figure => figure.Value));

        // At 50, not at the least: 25.4 sin 50° = 19.457529; worst bite 24.60625 - 12.2/cos 50° = 5.626405.
        Assert.Equal(19.457529, lean.Figures()[3].Value, 1e-6);
        Assert.Equal(5.6264, lean.Outcome.WorstBite.Millimeters, 0.0001);
        Assert.Equal(FastenerLength.Evaluate(job with { DriveAngle = Angle.FromDegrees(50) }, Mm(25.4)).Figures(), lean.Outcome.Figures());
    }

    /// <summary>The tip moves to the side, and only a rib is known to be there too.</summary>
    [Theory]
    [InlineData(BehindKind.OuterSkin)]
    [InlineData(BehindKind.Wire)]
    [InlineData(BehindKind.Pipe)]
    [InlineData(BehindKind.Tank)]
    public void No_angle_is_offered_toward_anything_but_a_rib(BehindKind kind)
    {
        FastenerJob job = Job(12.7, 12.7) with { SetDepth = Mm(0.5), LeastBite = Mm(3), TargetBite = Mm(12), RequiredClearance = Mm(8), MarginalChance = 0 };
        Assert.NotNull(FastenerLength.LeastDriveAngle(job, Mm(25.4)));
        FastenerJob other = job with { Behind = new Behind(kind, Mm(0)) };
        Assert.Null(FastenerLength.LeastDriveAngle(other, Mm(25.4)));
        Assert.Empty(Choose(other).Remedies.OfType<DriveAngleRemedy>());
        Assert.NotEmpty(Choose(other).Remedies.OfType<FurringRemedy>());
    }

    /// <summary>
    /// 25.4 ± 0.79375 under 20 of board, set 0.5: safe behind 7.19375 of furring or more (20 + t - 26.69375 >= 0.5); of bite there are at most
    /// 25.10625 - 20 = 5.10625, whatever the furring. A least bite of 5.10625 is reached at 7.19375, a nanometre more at no thickness.
    /// Driven from a board of 12.7, 12.40625 of bite is full: 12.40625 asked wants furring of 12.40625 at its least, more than the tip wants where a gap is behind.
    /// </summary>
    [Fact]
    public void The_thinnest_furring_also_lets_the_length_bite()
    {
        FastenerJob job = Job(20, 3) with { SetDepth = Mm(0.5), Sheets = [] };
        Assert.Equal(7.19375, FastenerLength.ThinnestFurring(job with { LeastBite = Mm(5.10625) }, Mm(25.4))!.Least.Millimeters);
        Assert.Null(FastenerLength.ThinnestFurring(job with { LeastBite = Mm(5.106251) }, Mm(25.4)));
        Assert.Equal(12.40625, FastenerLength.ThinnestFurring(Job(12.7, 3) with { SetDepth = Mm(0.5), Sheets = [], Behind = Behind.MetalAt(Mm(30)), LeastBite = Mm(12.40625) }, Mm(25.4))!.Least.Millimeters);
        Assert.Equal(4, FastenerLength.ThinnestFurring(Job(12.7, 3) with { SetDepth = Mm(0.5), Sheets = [], Behind = Behind.MetalAt(Mm(30)), LeastBite = Mm(4) }, Mm(25.4))!.Least.Millimeters);
    }

    /// <summary>
    /// 7 + 14: the shortest 16 ga nail, 25.4, is 21 - 1 - 25.4 = -5.4 past. 18 ga, the next thinner: 15.875 has 21 - 1.5 - 16.66875 = 2.83125
    /// and bites 0.5 + 15.08125 - 7 = 8.58125 of 7.5; 19.05 has 21 - 1.5 - 19.84375 = -0.34375. The 21 ga pin of 15.875 would do too, but holds less.
    /// </summary>
    [Fact]
    public void The_next_thinner_series_that_does_is_a_remedy()
    {
        FastenerJob job = new([Mm(7), Mm(14)], Behind.Metal, FastenerSeries.Finish16);
        FastenerChoice choice = Choose(job);
        Assert.Null(choice.Chosen);
        SeriesRemedy other = Assert.Single(choice.Remedies.OfType<SeriesRemedy>());
        Assert.Equal(FastenerSeries.Brad18.Name, other.Series.Name);
        Assert.Equal(15.875, other.Fastener.Millimeters, 1e-9);
        Assert.Equal(FastenerLength.Choose(job with { Series = FastenerSeries.Brad18 }).Chosen!.ToString(), other.Outcome.ToString());
        Assert.Contains(other.Series.Name, other.Text, StringComparison.Ordinal);
        Assert.Contains("safe against the metal of a rib in the worst case and bites 8.581 mm", other.Text, StringComparison.Ordinal);
        Assert.Equal(["fastener", "shank"], other.Figures().Select(static figure => figure.Name));
        Assert.Equal([15.875, 1.25], other.Figures().Select(static figure => figure.Value));

        // In whatever order they are listed the thickest thinner one; its own, thicker ones and other kinds are none.
        Assert.Same(FastenerSeries.Brad18, Assert.Single(Choose(job with { OtherSeries = [FastenerSeries.Brad18, FastenerSeries.Pin21] }).Remedies.OfType<SeriesRemedy>()).Series);
        Assert.Same(FastenerSeries.Brad18, Assert.Single(Choose(job with { OtherSeries = [FastenerSeries.Pin21, FastenerSeries.Brad18] }).Remedies.OfType<SeriesRemedy>()).Series);
        Assert.Same(FastenerSeries.Pin21, Assert.Single(Choose(job with { OtherSeries = [FastenerSeries.Pin21] }).Remedies.OfType<SeriesRemedy>()).Series);
        FastenerSeries thick = new("thick", FastenerKind.SmoothNail, Mm(1.61), [Mm(15.875)]), screw = new("thin screw", FastenerKind.WoodScrew, Mm(1.25), [Mm(15.875)]);
        Assert.NotNull(Choose(job with { Series = screw }).Chosen); // it would do
        Assert.Empty(Choose(job with { OtherSeries = [FastenerSeries.Finish16, thick, screw] }).Remedies.OfType<SeriesRemedy>());
        Assert.Empty(Choose(job with { OtherSeries = [] }).Remedies.OfType<SeriesRemedy>());
    }

    /// <summary>7 + 9: the shortest brad, 15.875, has 16 - 1.5 - 16.66875 = -2.16875. A 12.7 headless pin would be safe (1.00625) and bite (5.40625 of 3.84), but has no head to hold the board.</summary>
    [Fact]
    public void A_headless_series_is_no_remedy_for_one_with_heads()
    {
        FastenerJob job = Job(7, 9);
        Assert.NotNull(Choose(job with { Series = FastenerSeries.Pin23 }).Chosen);
        FastenerChoice choice = Choose(job);
        Assert.Null(choice.Chosen);
        Assert.Empty(choice.Remedies.OfType<SeriesRemedy>());
        Assert.True(FastenerSeries.Pin23.IsHeadless);

        // For a headless job it is one.
        FastenerSeries headless = new("thick headless", FastenerKind.SmoothNail, Mm(1.25), [Mm(15.875)]) { IsHeadless = true };
        Assert.Same(FastenerSeries.Pin23, Assert.Single(Choose(job with { Series = headless, OtherSeries = [FastenerSeries.Pin23] }).Remedies.OfType<SeriesRemedy>()).Series);
    }

    [Fact]
    public void Defaults_taken_are_named_and_only_those()
    {
        FastenerJob job = Job(12.7, 15.875);
        Assert.Equal(
            [("set-depth", 1), ("set-depth-deviation", 0.5), ("required-clearance", 0.5), ("least-bite", 7.5), ("target-bite", 12.5), ("marginal-chance", 1e-4), ("hits-limit", 0.1)],
            Choose(job).DefaultsUsed.Select(static used => (used.Figure.Name, used.Figure.Value)));
        Assert.Equal(5, Choose(job with { Behind = Behind.Skin(Mm(50)) }).DefaultsUsed[2].Figure.Value);
        foreach (Behind behind in new[] { Behind.Wire(Mm(50)), Behind.Pipe(Mm(50)), Behind.Tank(Mm(50)) })
        {
            Assert.Equal(10, Choose(job with { Behind = behind }).DefaultsUsed[2].Figure.Value);
        }

        Assert.Empty(Choose(job with { SetDepth = Mm(1), RequiredClearance = Mm(0.5), LeastBite = Mm(7.5), TargetBite = Mm(12.5), MarginalChance = 1e-4, HitsLimit = 0.1 }).DefaultsUsed);

        // 45 degrees only where the way of nailing gave them.
        BoardProfile board = BoardProfile.TongueAndGroove(Mm(12.7), Mm(4), Mm(4));
        FastenerJob strip = new([Mm(15)], Behind.Metal, FastenerSeries.Brad18);
        DefaultUsed angle = Assert.Single(Choose(strip.ThroughBoard(board, Nailing.BlindThroughTongue)).DefaultsUsed, static used => used.Figure.Name == "drive-angle");
        Assert.Equal(new Figure("drive-angle", 45, "deg"), angle.Figure);
        Assert.DoesNotContain(Choose(strip.ThroughBoard(board, Nailing.BlindThroughTongue, Angle.FromDegrees(45))).DefaultsUsed, static used => used.Figure.Name == "drive-angle");
        Assert.DoesNotContain(Choose(strip.ThroughBoard(board, Nailing.Face)).DefaultsUsed, static used => used.Figure.Name == "drive-angle");
    }

    [Fact]
    public void Figures_are_named_and_agree_with_the_result()
    {
        FastenerChoice choice = Choose(Demo());
        FastenerCandidate chosen = choice.Chosen!;
        Assert.Equal(chosen.Figures(), choice.Figures().Skip(3));
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
        Assert.Equal((1, (double)Severity.Caution, FastenerSeries.Brad18.Lengths.Count), (figures["chosen"], figures["worst-severity"], figures["candidates"]));
        Assert.Equal((1, 1, 1), (figures["may-be-driven"], figures["tip-verdict"], figures["bite-verdict"])); // marginal, and it bites
        Assert.Equal((1, 1.25, 0), (figures["count"], figures["shank"], figures["side-shift"]));
        Assert.Equal(22, figures.Count);
    }

    [Fact]
    public void Sentences_say_against_what_and_at_which_tolerance()
    {
        Assert.Equal(
            "25.4 mm is marginal against the metal of a rib: 1.4 mm clear at nominal sizes, in the worst case it is 0.394 mm past (tolerances: layer ± 0.5, set depth ± 0.5, fastener ± 0.794); 0.5 mm asked, chance of touching 3.89E-05.",
            Choose(Demo()).Chosen!.TipReason);
        Assert.Equal(
            "31.75 mm reaches the metal of a rib: 4.95 mm past at nominal sizes, in the worst case it is 7.538 mm past (tolerances: layer ± 0.5, set depth ± 0.5, fastener ± 1.588); 0.5 mm asked, chance of touching 1.",
            FastenerLength.Evaluate(Demo(), Mm(31.75)).TipReason); // 4.95 + 0.5 + 0.5 + 1.5875 = 7.5375, half away from zero
        Assert.StartsWith("19.05 mm is safe against a wire: ", FastenerLength.Evaluate(Job(12.7, 15) with { Behind = Behind.Wire(Mm(20)) }, Mm(19.05)).TipReason, StringComparison.Ordinal);

        // 27.7 + 8 - 1.5 - 26.19375 = 8.00625 clear of a wire, 10 asked; a gap's own tolerance is named too.
        Assert.StartsWith(
            "25.4 mm comes too near a wire: 9.3 mm clear at nominal sizes, in the worst case it stays 8.006 mm clear (tolerances: set depth ± 0.5, fastener ± 0.794); 10 mm asked",
            FastenerLength.Evaluate(Job(12.7, 15) with { Behind = Behind.Wire(Mm(8)) }, Mm(25.4)).TipReason,
            StringComparison.Ordinal);
        Assert.Contains("(tolerances: gap ± 1, set depth ± 0.5, fastener ± 0.794)", FastenerLength.Evaluate(Job(12.7, 15) with { Behind = Behind.Wire(TolerancedLength.PlusMinus(Mm(8), Mm(1))) }, Mm(25.4)).TipReason, StringComparison.Ordinal);
        Assert.Contains("(no tolerance entered)", FastenerTrial.Try(Job(12.7, 15) with { SetDepth = Mm(1) }, Mm(25.4)).TipReason, StringComparison.Ordinal);

        // Nothing asked, and exactly touching in the worst case: it reaches.
        Assert.StartsWith("25 mm reaches a wire: ", FastenerTrial.Try(Job(10, 15) with { Behind = Behind.Wire(Mm(0)), SetDepth = Mm(0), RequiredClearance = Mm(0) }, Mm(25)).TipReason, StringComparison.Ordinal);
    }

    private static FastenerJob Job(double board, double furring) => new([Mm(board), Mm(furring)], Behind.Metal, FastenerSeries.Brad18);

    private static FastenerJob Demo() => new([Mm(12.7), TolerancedLength.PlusMinus(Mm(15.1), Mm(0.5))], Behind.Metal, FastenerSeries.Brad18);

    private static FastenerChoice Choose(FastenerJob job) => FastenerLength.Choose(job);

    private static Finding Single(FastenerChoice choice, string code) => Assert.Single(choice.Findings, finding => finding.Code == code);

    private static void None(FastenerChoice choice, string code) => Assert.DoesNotContain(choice.Findings, finding => finding.Code == code);

    private static double Value(Finding finding, string name) => finding.Values.Single(figure => figure.Name == name).Value;
}
