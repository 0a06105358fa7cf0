using System;
using System.Collections.Generic;
using System.Linq;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>What one length tried says of itself. 12.7 and 15.875 mm, set 0.5 mm exactly: 28.075 mm of way; clearance asked 0.5 mm.</summary>
public sealed class CandidateFindings
{
    private static readonly FastenerJob s_job = new([Mm(12.7), Mm(15.875)], Behind.Metal, FastenerSeries.Brad18) { SetDepth = Mm(0.5), TargetBite = Mm(7.5) };

    [Fact]
    public void A_safe_length_that_bites_says_only_to_look_behind()
    {
        FastenerCandidate nail = FastenerLength.Evaluate(s_job, Mm(25.4)); // worst 28.075 - 26.194 = 1.881
        Assert.Equal(["fastening-look-behind"], Codes(nail));
        Assert.False(nail.HasProblem);
    }

    [Fact]
    public void A_length_that_reaches_is_a_problem_with_its_figures()
    {
        FastenerCandidate nail = FastenerLength.Evaluate(s_job, Mm(31.75)); // 28.075 - 31.75 - 1.5875 = -5.2625
        Finding finding = nail.Findings[0];
        Assert.Equal(("fastening-tip-reaches", Severity.Problem, nail.TipReason), (finding.Code, finding.Severity, finding.Message));
        Assert.Contains(new Figure("worst-clearance", -5.2625, "mm"), finding.Values);
        Assert.True(nail.HasProblem);
    }

    [Fact]
    public void A_length_that_bites_too_little_is_a_problem()
    {
        FastenerCandidate nail = FastenerLength.Evaluate(s_job, Mm(15.875)); // 0.5 + 15.875 - 0.79375 - 12.7 = 2.88125; 6 · 1.25 asked
        Assert.Equal(["fastening-bite-too-little", "fastening-look-behind"], Codes(nail));
        Assert.Equal("15.875 mm bites 2.881 mm in the worst case, under the least bite of 7.5 mm.", nail.Findings[0].Message);
        Assert.True(nail.HasProblem);
    }

    [Fact]
    public void A_head_that_goes_through_is_a_problem_of_every_length()
    {
        FastenerCandidate nail = FastenerLength.Evaluate(s_job with { Layers = [Mm(2), Mm(40)], SetDepth = Mm(2) }, Mm(25.4));
        Assert.Equal(["fastening-head-through", "fastening-look-behind"], Codes(nail));
        Assert.True(nail.HasProblem);
        Assert.False(FastenerLength.Evaluate(s_job with { Layers = [Mm(2), Mm(40)], SetDepth = Mm(1.999999) }, Mm(25.4)).HasProblem);
    }

    [Fact]
    public void A_marginal_length_is_a_caution_and_a_cavity_another()
    {
        FastenerJob tight = s_job with { Layers = [Mm(12.7), Mm(14.2)] }; // 26.4 of way: 1 clear at nominal, 0.206 in the worst case, 0.5 asked
        FastenerCandidate marginal = FastenerLength.Evaluate(tight, Mm(25.4));
        Assert.Equal(["fastening-marginal", "fastening-look-behind"], Codes(marginal));
        Assert.False(marginal.HasProblem);
        Assert.Equal("fastening-tip-reaches", Codes(FastenerLength.Evaluate(tight with { Behind = Behind.Wire(Mm(0)) }, Mm(25.4))).First());
        Assert.Contains("fastening-cavity-depth", Codes(FastenerLength.Evaluate(tight with { Behind = Behind.Wire(Mm(40)) }, Mm(25.4))));
    }

    [Fact]
    public void Many_hits_and_a_short_bite_are_said()
    {
        // Way of 1 mm more or less, batch: sigma of the furring 1/3; mean 1 clear, so about 1 in 740 touches; marginal allowed up to 1 in 100.
        FastenerJob many = s_job with { Layers = [Mm(12.7), TolerancedLength.PlusMinus(Mm(14.2), Mm(1))], MarginalChance = 0.01, Count = 1000, TargetBite = Mm(14) };
        Assert.Equal(["fastening-marginal", "fastening-hits-expected", "fastening-bite-under-target", "fastening-look-behind"], Codes(FastenerLength.Evaluate(many, Mm(25.4))));
        Assert.DoesNotContain("fastening-hits-expected", Codes(FastenerLength.Evaluate(many with { Count = 1 }, Mm(25.4))));
    }

    [Fact]
    public void A_remedy_speaks_for_the_length_it_makes_safe()
    {
        FurringRemedy furring = FastenerLength.ThinnestFurring(s_job, Mm(31.75))!;
        Assert.Equal(Codes(furring.Outcome), furring.Findings.Select(static finding => finding.Code));
        Assert.False(furring.HasProblem);
        Assert.Equal(furring.Outcome.Explain().ToText(), furring.Explain().ToText());

        // 15.875 ends 2.881 mm behind the board in the worst case, however thick the furring: no remedy, rather than one with a problem.
        Assert.Null(FastenerLength.ThinnestFurring(s_job, Mm(15.875)));
    }

    [Fact]
    public void A_choice_of_the_hosts_own_prints_whatever_it_holds()
    {
        FastenerChoice empty = new(s_job, [], null, [], [], []);
        Assert.StartsWith("18 ga brad: none.", empty.ToString(), StringComparison.Ordinal);
        Assert.Empty(empty.Explain().Steps);
        Finding note = new("test-note", Severity.Note, "A note.", []), problem = new("test-problem", Severity.Problem, "A problem.", []);
        Assert.True(new FastenerChoice(s_job, [], null, [], [note, problem], []).HasProblem);
    }

    [Fact]
    public void A_deviation_that_nobody_shares_is_refused()
    {
        // Counted in neither variance it would make the chance of touching nothing.
        TolerancedLength lost = new(Mm(15.875), Mm(-1), Mm(1), (DeviationScope)2);
        Assert.Equal("job.Layers[1].Thickness.Scope", Assert.Single(FastenerLength.Check(s_job with { Layers = [Mm(12.7), lost] })).Parameter);
        Assert.Equal("scope", Assert.Throws<ArgumentOutOfRangeException>(() => TolerancedLength.PlusMinus(Mm(1), Mm(0), (DeviationScope)2)).ParamName);
        Assert.Equal("scope", Assert.Throws<ArgumentOutOfRangeException>(() => TolerancedLength.Between(Mm(1), Mm(2), (DeviationScope)2)).ParamName);
    }

    [Theory]
    [InlineData(1000, true)]
    [InlineData(1000.000001, false)]
    public void A_deviation_may_be_a_metre_and_no_more(double millimetres, bool isTaken)
    {
        TolerancedLength one = new(Mm(2000), Mm(-millimetres), Mm(0));
        Exception? read = Record.Exception(() => one.Least), made = Record.Exception(() => TolerancedLength.PlusMinus(Mm(2000), Mm(millimetres))), between = Record.Exception(() => TolerancedLength.Between(Mm(0), Mm(2 * millimetres)));
        Assert.All(new[] { read, made, between }, exception => Assert.Equal(isTaken, exception is null));
    }

    private static IEnumerable<string> Codes(FastenerCandidate candidate) => candidate.Findings.Select(static finding => finding.Code);

    [Fact]
    public void A_remedy_never_prints_less_furring_than_it_needs()
    {
        FastenerCandidate outcome = FastenerLength.Evaluate(new FastenerJob([Mm(12.7), Mm(18)], Behind.Metal, FastenerSeries.Brad18), Mm(25.4));
        Assert.Contains("of 15.001 mm or more", new FurringRemedy(Mm(25.4), Mm(15.000001), null, outcome).Text, StringComparison.Ordinal);
        Assert.Contains("of 15.494 mm or more", new FurringRemedy(Mm(25.4), Mm(15.494), null, outcome).Text, StringComparison.Ordinal);
    }
}
