using System.Collections.Generic;
using System.Linq;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>Every step of the workings recomputed from its printed formula, and the last steps against the result.</summary>
[Properties(Arbitrary = [typeof(FastenerArbitraries)], MaxTest = 60)]
public sealed class FastenerWorkings
{
    [Property]
    public void A_candidate_explains_its_own_figures(FastenerTrial trial)
    {
        FastenerCandidate candidate = trial.Candidate;
        Workings workings = candidate.Explain();
        WorkingsCheck.Recompute(workings);
        double Last(string symbol) => workings.Steps.Last(step => step.Value.Name == symbol).Value.Value;
        double First(string symbol) => workings.Steps.First(step => step.Value.Name == symbol).Value.Value;
        Assert.Equal(candidate.Clearance.Millimeters, Last("c"), 1e-6);
        Assert.Equal(candidate.TipDepth.Millimeters, First("d"), 1e-6);
        Assert.Equal(candidate.WorstClearance.Millimeters, Last("c_min"), 1e-6);
        Assert.Equal(candidate.TouchChance, Last("P"));
        Assert.Equal(candidate.ExpectedHits, Last("h"));
        Assert.Equal(candidate.WorstBite.Millimeters, Last("p_min"), 1e-6);
        Assert.All(workings.Steps, static step => Assert.False(string.IsNullOrEmpty(step.Source.Id)));
    }

    [Property]
    public void A_choice_explains_the_one_chosen_or_the_longest_safe_or_the_shortest(FastenerTrial trial)
    {
        FastenerChoice choice = FastenerLength.Choose(trial.Job);
        Workings workings = choice.Explain();
        WorkingsCheck.Recompute(workings);
        Assert.Equal((choice.Chosen ?? choice.Candidates.LastOrDefault(static candidate => candidate.Tip == TipVerdict.Safe) ?? choice.Candidates[0]).Explain().ToText(), workings.ToText());
    }

    [Theory]
    [InlineData(28.575, 25.4, 0.5, 0)]
    [InlineData(25.4, 25.4, 0.5, 0)]
    [InlineData(32, 25, 0, 30)]
    [InlineData(17.3, 31.75, 1.25, 47.7)]
    public void The_plain_sum_explains_itself(double depth, double fastener, double set, double degrees)
    {
        TipClearance tip = FastenerLength.TipClearance(Mm(depth), Mm(fastener), Mm(set), Angle.FromDegrees(degrees));
        Workings workings = tip.Explain();
        WorkingsCheck.Recompute(workings);
        Assert.Equal(tip.Clearance.Millimeters, workings.Steps[^1].Value.Value, 1e-6);
        Assert.Equal("c", workings.Steps[^1].Value.Name);
    }

    [Fact]
    public void Workings_name_each_layer_and_what_its_thickness_rests_on()
    {
        FastenerJob job = new([Layer.Board(Mm(12.7)), Layer.Furring(SheetGoods.Birch15)], Behind.Metal, FastenerSeries.Brad18);
        IReadOnlyList<WorkingStep> steps = FastenerLength.Evaluate(job, Mm(25.4)).Explain().Steps;
        Assert.Equal("board", steps.First(static step => step.Value.Name == "t_1").Meaning);
        WorkingStep furring = steps.First(static step => step.Value.Name == "t_2");
        Assert.Equal("furring", furring.Meaning);
        Assert.Equal(SheetGoods.Birch15.Source.ToString(), furring.Source.ToString());
        Assert.Equal("default-set-depth", steps.First(static step => step.Value.Name == "s").Source.Id);
        Assert.NotEqual("default-set-depth", FastenerLength.Evaluate(job with { SetDepth = Mm(1) }, Mm(25.4)).Explain().Steps.First(static step => step.Value.Name == "s").Source.Id);
    }
}
