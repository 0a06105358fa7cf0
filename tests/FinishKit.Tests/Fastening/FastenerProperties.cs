using System;
using System.Linq;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>What must hold for every job. The edge of each rule is built into the input: drawn at random it would never be hit.</summary>
[Properties(Arbitrary = [typeof(FastenerArbitraries)], MaxTest = 1000)]
public sealed class FastenerProperties
{
    private const double OneStep = 1e-6;

    [Property]
    public void A_worst_clearance_exactly_as_asked_is_safe_and_a_nanometre_less_is_not(FastenerTrial trial)
    {
        FastenerJob job = WithWorst(trial, 0.5, out double worst);
        FastenerCandidate exact = FastenerTrial.Try(job with { RequiredClearance = Mm(worst) }, trial.Fastener);
        FastenerCandidate short1 = FastenerTrial.Try(job with { RequiredClearance = Mm(Math.Round(worst + OneStep, 6)) }, trial.Fastener);
        Assert.Equal(worst, exact.WorstClearance.Millimeters);
        Assert.Equal(TipVerdict.Safe, exact.Tip);
        Assert.NotEqual(TipVerdict.Safe, short1.Tip);

        // The same edge from the other side: the clearance changes, not what is asked.
        FastenerJob asked = job with { RequiredClearance = Mm(worst) };
        Assert.Equal(TipVerdict.Safe, FastenerTrial.Try(FastenerTrial.WithGap(asked, OneStep), trial.Fastener).Tip);
        if (job.Behind.Distance.Least.Millimeters > 0)
        {
            Assert.NotEqual(TipVerdict.Safe, FastenerTrial.Try(FastenerTrial.WithGap(asked, -OneStep), trial.Fastener).Tip);
        }
    }

    /// <summary>With no clearance asked, exact contact in the worst case is still not safe; a nanometre clear is.</summary>
    [Property]
    public void Contact_is_not_safe_even_where_no_clearance_is_asked(FastenerTrial trial)
    {
        // The gap or, where that is not enough, the head's depth takes the worst clearance to 0.
        FastenerJob job = WithWorst(trial, 0, out double worst) with { RequiredClearance = Mm(0) };
        double closed = Math.Min(worst, job.Behind.Distance.Least.Millimeters);
        FastenerJob contact = FastenerTrial.WithGap(job, -closed) with { SetDepth = FastenerTrial.Shifted(job.SetDepth ?? Default(), worst - closed) };
        FastenerCandidate at = FastenerTrial.Try(contact, trial.Fastener), clear = FastenerTrial.Try(FastenerTrial.WithGap(contact, OneStep), trial.Fastener);
        Assert.Equal(0, at.WorstClearance.Millimeters);
        Assert.NotEqual(TipVerdict.Safe, at.Tip);
        Assert.Equal(OneStep, clear.WorstClearance.Millimeters);
        Assert.Equal(TipVerdict.Safe, clear.Tip);
    }

    [Property]
    public void A_worst_bite_exactly_as_asked_bites_and_a_nanometre_less_does_not(FastenerTrial trial)
    {
        double worst = trial.Candidate.WorstBite.Millimeters, bite = trial.Candidate.Bite.Millimeters;

        // In nothing that holds it never bites, though 0 is asked.
        BiteVerdict expected = FastenerTrial.Furring(trial.Job) < 0 ? BiteVerdict.TooLittle : BiteVerdict.Bites;
        Assert.Equal(expected, FastenerTrial.Try(trial.Job with { LeastBite = Mm(worst) }, trial.Fastener).Hold);
        Assert.Equal(BiteVerdict.TooLittle, FastenerTrial.Try(trial.Job with { LeastBite = Mm(Math.Round(worst + OneStep, 6)) }, trial.Fastener).Hold);
        Assert.True(FastenerTrial.Try(trial.Job with { TargetBite = Mm(bite) }, trial.Fastener).ReachesTarget);
        Assert.False(FastenerTrial.Try(trial.Job with { TargetBite = Mm(Math.Round(bite + OneStep, 6)) }, trial.Fastener).ReachesTarget);
    }

    /// <summary>The default: 6 diameters in the worst case, 10 to aim for; a nanometre of furring less or of board more falls short.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.5)]
    [InlineData(1.25)]
    public void Six_diameters_exactly_bite_and_ten_exactly_reach_the_target(double set)
    {
        foreach (FastenerSeries series in FastenerSeries.Nails)
        {
            // Tip at set + 24 (worst) and set + 25 (nominal) below the surface.
            double shank = series.Shank.Millimeters, six = Math.Round(set + 24 - (6 * shank), 6), ten = Math.Round(set + 25 - (10 * shank), 6);
            TolerancedLength nail = TolerancedLength.PlusMinus(Mm(25), Mm(1));
            FastenerCandidate At(double board) => FastenerTrial.Try(new FastenerJob([Mm(Math.Round(board, 6)), Mm(40)], Behind.Metal, series) { SetDepth = Mm(set) }, nail);
            Assert.Equal(BiteVerdict.Bites, At(six).Hold);
            Assert.Equal(BiteVerdict.TooLittle, At(six + OneStep).Hold);
            Assert.True(At(ten).ReachesTarget);
            Assert.False(At(ten + OneStep).ReachesTarget);
        }
    }

    /// <summary>Nominal clearance exactly 0 may be marginal, a nanometre past may not; the chance exactly at the limit may, the next double below may not.</summary>
    [Property]
    public void Marginal_ends_at_the_chance_asked_and_at_nominal_contact(FastenerTrial trial)
    {
        FastenerJob job = WithWorst(trial, 0, out _) with { Behind = Behind.Metal };
        FastenerCandidate before = FastenerTrial.Try(job, trial.Fastener);

        // Near three sigma the chance is small but not nothing.
        TolerancedLength gap = Mm(Math.Round(Math.Max(0, -0.05 - before.RootSumSquareClearance.Millimeters), 6));
        job = job with { Behind = Behind.MetalAt(gap), RequiredClearance = Mm(100) };
        FastenerCandidate near = FastenerTrial.Try(job, trial.Fastener);
        double chance = near.TouchChance;
        if (chance is <= 0 or > 0.01 || near.Clearance.Millimeters < 0)
        {
            return;
        }

        FastenerCandidate at = FastenerTrial.Try(job with { MarginalChance = chance }, trial.Fastener);
        Assert.Equal(TipVerdict.Marginal, at.Tip);
        Assert.Equal(TipVerdict.Reaches, FastenerTrial.Try(job with { MarginalChance = Math.BitDecrement(chance) }, trial.Fastener).Tip);
        foreach (BehindKind kind in new[] { BehindKind.OuterSkin, BehindKind.Wire, BehindKind.Pipe, BehindKind.Tank })
        {
            FastenerJob other = job with { MarginalChance = chance, Behind = job.Behind with { Kind = kind } };
            Assert.Equal(TipVerdict.Reaches, FastenerTrial.Try(other, trial.Fastener).Tip);
        }
    }

    /// <summary>Layers whose tolerances lie on the thick side: the chance of touching is small where the nominal clearance is nothing.</summary>
    [Fact]
    public void Nominal_contact_may_be_marginal_and_a_nanometre_past_reaches()
    {
        FastenerCandidate At(double room) => FastenerTrial.Try(
            new FastenerJob([Mm(10), new TolerancedLength(Mm(room), Mm(0), Mm(3))], Behind.Metal, FastenerSeries.Brad18) { SetDepth = Mm(0), MarginalChance = 0.01 }, Mm(25));
        FastenerCandidate contact = At(15);
        Assert.Equal(0, contact.Clearance.Millimeters);
        Assert.Equal(1.3498980316e-3, contact.TouchChance, 1e-12); // three sigma, tabled
        Assert.Equal(TipVerdict.Marginal, contact.Tip);
        Assert.Equal(TipVerdict.Reaches, At(14.999999).Tip);
    }

    [Property]
    public void Without_spread_contact_touches_and_a_nanometre_clear_does_not(FastenerTrial trial)
    {
        FastenerJob job = Exact(trial.Job);
        TolerancedLength nail = trial.Fastener.Nominal;
        double clearance = FastenerTrial.Try(job, nail).Clearance.Millimeters;
        double gap = job.Behind.Distance.Nominal.Millimeters, closed = Math.Min(gap, clearance);

        // The gap gives what it has; the head goes deeper by the rest.
        FastenerJob contact = FastenerTrial.WithGap(job, -closed) with { SetDepth = Mm(Math.Round(job.SetDepth!.Value.Nominal.Millimeters + clearance - closed, 6)) };
        FastenerCandidate at = FastenerTrial.Try(contact, nail), clear = FastenerTrial.Try(FastenerTrial.WithGap(contact, OneStep), nail);
        Assert.Equal(0, at.Clearance.Millimeters);
        Assert.Equal(1, at.TouchChance);
        Assert.Equal(1, at.AnyHitChance);
        Assert.Equal(0, clear.TouchChance);
        Assert.Equal(0, clear.AnyHitChance);
    }

    [Property]
    public void A_longer_fastener_is_never_safer_and_never_bites_less(FastenerTrial trial, byte more)
    {
        FastenerCandidate shorter = trial.Candidate, longer = FastenerTrial.Try(trial.Job, FastenerTrial.Shifted(trial.Fastener, more / 40.0));
        AssertNeverSafer(shorter, longer);
        Assert.True(longer.Bite.Millimeters >= shorter.Bite.Millimeters);
        Assert.True(longer.WorstBite.Millimeters >= shorter.WorstBite.Millimeters);
    }

    [Property]
    public void A_longer_stocked_length_is_never_safer(FastenerTrial trial)
    {
        FastenerChoice choice = FastenerLength.Choose(trial.Job);
        for (int i = 1; i < choice.Candidates.Count; i++)
        {
            AssertNeverSafer(choice.Candidates[i - 1], choice.Candidates[i]);
        }
    }

    [Property]
    public void Any_thicker_layer_is_never_less_safe(FastenerTrial trial, byte more)
    {
        int index = trial.Seed % trial.Job.Layers.Count;
        Layer layer = trial.Job.Layers[index];
        Layer thicker = layer with
        {
            Thickness = FastenerTrial.Shifted(layer.Thickness, more / 40.0),
            Compressed = layer.Compressed is { } compressed ? FastenerTrial.Shifted(compressed, more / 40.0) : null,
        };
        AssertNeverSafer(FastenerTrial.Try(FastenerTrial.WithLayer(trial.Job, index, thicker), trial.Fastener), trial.Candidate);
    }

    [Property]
    public void A_deeper_set_is_never_safer(FastenerTrial trial, byte more)
    {
        FastenerJob deeper = trial.Job with { SetDepth = FastenerTrial.Shifted(trial.Job.SetDepth ?? Default(), more / 100.0) };
        AssertNeverSafer(trial.Candidate, FastenerTrial.Try(deeper, trial.Fastener));
    }

    [Property]
    public void More_asked_is_never_safer(FastenerTrial trial, byte more)
    {
        double asked = trial.Candidate.RequiredClearance.Millimeters;
        FastenerCandidate stricter = FastenerTrial.Try(trial.Job with { RequiredClearance = Mm(Math.Round(asked + (more / 100.0), 6)) }, trial.Fastener);
        Assert.True(stricter.Tip <= trial.Candidate.Tip);
        Assert.Equal(trial.Candidate.WorstClearance.Millimeters, stricter.WorstClearance.Millimeters);
    }

    /// <summary>64ths of an inch have six decimals in millimetres: both ways of writing meet exactly.</summary>
    [Property]
    public void Inches_and_millimetres_give_the_same_figures(byte board, byte ply, byte nail, byte deviation)
    {
        double[] sixtyFourths = [16 + (board % 64), 16 + (ply % 64), 32 + (nail % 100), deviation % 8];
        FastenerJob Job(Func<double, Length> length) => new(
            [TolerancedLength.PlusMinus(length(sixtyFourths[0]), length(sixtyFourths[3])), length(sixtyFourths[1])], Behind.MetalAt(length(5)), FastenerSeries.Brad18)
        {
            SetDepth = TolerancedLength.PlusMinus(length(3), length(2)),
            RequiredClearance = length(1),
            LeastBite = length(20),
            TargetBite = length(30),
        };
        FastenerJob metric = Job(static n => Mm(n * 25.4 / 64)), inch = Job(static n => Length.FromInches(n / 64)), feet = Job(static n => Length.FromFeet(n / 768));
        FastenerCandidate expected = FastenerTrial.Try(metric, Mm(sixtyFourths[2] * 25.4 / 64));
        Assert.Equal(expected.Figures(), FastenerTrial.Try(inch, Length.FromInches(sixtyFourths[2] / 64)).Figures());
        Assert.Equal(expected.Figures(), FastenerTrial.Try(feet, Length.FromFeet(sixtyFourths[2] / 768)).Figures());
        Assert.Equal(expected.Tip, FastenerTrial.Try(inch, Length.FromInches(sixtyFourths[2] / 64)).Tip);
    }

    [Property]
    public void What_a_layer_gains_and_the_gap_loses_leaves_the_clearance(FastenerTrial trial, byte more)
    {
        int index = trial.Seed % trial.Job.Layers.Count;
        Layer layer = trial.Job.Layers[index];
        Layer thicker = layer with
        {
            Thickness = FastenerTrial.Shifted(layer.Thickness, more / 40.0),
            Compressed = layer.Compressed is { } compressed ? FastenerTrial.Shifted(compressed, more / 40.0) : null,
        };
        FastenerJob wide = FastenerTrial.WithGap(trial.Job, more / 40.0);
        AssertSameTip(FastenerTrial.Try(wide, trial.Fastener), FastenerTrial.Try(FastenerTrial.WithLayer(trial.Job, index, thicker), trial.Fastener));
    }

    [Property]
    public void A_head_set_deeper_by_what_the_gap_gains_leaves_the_clearance(FastenerTrial trial, byte more)
    {
        FastenerJob moved = FastenerTrial.WithGap(trial.Job, more / 100.0) with { SetDepth = FastenerTrial.Shifted(trial.Job.SetDepth ?? Default(), more / 100.0) };
        AssertSameTip(trial.Candidate, FastenerTrial.Try(moved, trial.Fastener));
    }

    [Property]
    public void Order_of_the_layers_between_does_not_matter_for_the_tip(FastenerTrial trial)
    {
        FastenerJob job = trial.Job;
        Layer[] layers = [.. job.Layers.Select((layer, i) => layer with { Holds = FastenerTrial.Holds(job, i) })];
        if (layers.Length < 3)
        {
            return;
        }

        Array.Reverse(layers, 1, layers.Length - 2);
        FastenerCandidate turned = FastenerTrial.Try(job with { Layers = layers }, trial.Fastener);
        AssertSameTip(trial.Candidate, turned);
        if (layers[1..^1].All(static layer => layer.Holds == false))
        {
            Assert.Equal(trial.Candidate.Bite.Millimeters, turned.Bite.Millimeters, OneStep);
            Assert.Equal(trial.Candidate.WorstBite.Millimeters, turned.WorstBite.Millimeters, OneStep);
        }
    }

    [Property]
    public void The_longest_safe_length_keeps_exactly_the_clearance_asked(FastenerTrial trial)
    {
        Length? longest = FastenerLength.LongestSafe(trial.Job);
        if (longest is not { } length)
        {
            Assert.NotEqual(TipVerdict.Safe, FastenerTrial.Try(trial.Job, Mm(OneStep)).Tip);
            return;
        }

        FastenerCandidate at = FastenerTrial.Try(trial.Job, length);
        Assert.Equal(TipVerdict.Safe, at.Tip);
        double kept = Math.Max(OneStep, at.RequiredClearance.Millimeters);
        Assert.Equal(kept, at.WorstClearance.Millimeters, OneStep * 1.01);

        // At an angle a nanometre of length is less of depth: cos 60° is a half.
        double more = trial.Job.DriveAngle.Degrees == 0 ? OneStep : 3 * OneStep;
        Assert.NotEqual(TipVerdict.Safe, FastenerTrial.Try(trial.Job, Mm(Math.Round(length.Millimeters + more, 6))).Tip);
        if (trial.Job.DriveAngle.Degrees == 0)
        {
            Assert.Equal(kept, at.WorstClearance.Millimeters);
        }
    }

    [Property]
    public void Furring_as_the_remedy_says_makes_the_length_safe_and_biting_and_a_nanometre_less_does_not(FastenerTrial trial)
    {
        Length fastener = trial.Fastener.Nominal;
        int furring = FastenerTrial.Furring(trial.Job);
        FastenerJob job = trial.Job with { Sheets = [] };
        if (furring < 0 || FastenerLength.ThinnestFurring(job, fastener) is not { } remedy)
        {
            return;
        }

        TolerancedLength given = job.Layers[furring].Thickness;
        FastenerCandidate At(double nominal) => FastenerLength.Evaluate(FastenerTrial.WithFurring(job, new TolerancedLength(Mm(nominal), given.Lower, given.Upper, given.Scope)), fastener);
        FastenerCandidate at = At(remedy.Least.Millimeters);
        Assert.Equal((TipVerdict.Safe, BiteVerdict.Bites), (at.Tip, at.Hold));
        Assert.Equal(at.Figures(), remedy.Outcome.Figures());
        if (Math.Round(remedy.Least.Millimeters - OneStep + Math.Min(0, given.Lower.Millimeters), 6) >= OneStep)
        {
            FastenerCandidate thinner = At(Math.Round(remedy.Least.Millimeters - OneStep, 6));
            Assert.NotEqual((TipVerdict.Safe, BiteVerdict.Bites), (thinner.Tip, thinner.Hold));
        }
        else
        {
            // Only where the furring cannot be thinner than its own tolerance lets it.
            Assert.Equal(OneStep, remedy.Least.Millimeters + given.Lower.Millimeters, 1.01e-6);
        }
    }

    /// <summary>60° that do exactly are a remedy; a nanometre less of room is none. Room and length are built so that the cosine asked is a half.</summary>
    [Property]
    public void Sixty_degrees_exactly_are_still_a_remedy(byte board, byte ply, byte asked)
    {
        double first = Math.Round(6 + (board / 100.0), 6), second = Math.Round(6 + (ply / 100.0), 6), required = asked / 1000.0, room = first + second - 0.5 - Math.Max(required, OneStep); // 0 asked: still not to touch
        FastenerJob job = new([Mm(first), Mm(second)], Behind.Metal, FastenerSeries.Brad18) { SetDepth = Mm(0.5), RequiredClearance = Mm(required) };
        TolerancedLength nail = Mm(Math.Round(room * 2, 6));
        FastenerJob at60 = job with { DriveAngle = Angle.FromDegrees(60) };
        Assert.Equal(TipVerdict.Safe, FastenerTrial.Try(at60, nail).Tip);
        DriveAngleRemedy? remedy = FastenerRemedies.DriveAngle(StackNumbers.Read(job, "job", null)!, nail);
        Assert.NotNull(remedy);
        Assert.Equal(60, remedy.Least.Degrees, 1e-5);
        Assert.Equal(60, remedy.Angle.Degrees);
        Assert.Equal(TipVerdict.Safe, remedy.Outcome.Tip);
        Assert.Null(FastenerRemedies.DriveAngle(StackNumbers.Read(job, "job", null)!, Mm(Math.Round((room * 2) + 0.00001, 6))));
    }

    [Property]
    public void Marginal_is_only_toward_the_metal_of_a_rib(FastenerTrial trial)
    {
        foreach (FastenerCandidate candidate in FastenerLength.Choose(trial.Job).Candidates)
        {
            Assert.True(candidate.Tip != TipVerdict.Marginal || candidate.Behind == BehindKind.RibMetal);
        }
    }

    /// <summary>Also with a first layer that the head may go through: sizes from under to over the deepest set.</summary>
    [Property]
    public void What_is_chosen_may_be_driven_and_has_no_problem(FastenerTrial trial, byte first, bool thin)
    {
        FastenerJob job = thin ? FastenerTrial.WithLayer(trial.Job, 0, trial.Job.Layers[0] with { Thickness = Mm((first + 1) / 100.0) }) : trial.Job;
        FastenerChoice choice = FastenerLength.Choose(job);
        double deepest = (job.SetDepth ?? Default()).Greatest.Millimeters;
        bool through = deepest >= job.Layers[0].Thickness.Least.Millimeters;
        Assert.All(choice.Candidates, candidate => Assert.Equal(through, candidate.HeadGoesThrough));
        Assert.All(choice.Candidates, candidate => Assert.Equal(candidate.Findings.Any(static finding => finding.Severity == Severity.Problem), candidate.HasProblem));
        Assert.All(choice.Candidates, candidate => Assert.Equal(candidate.MayBeDriven, !candidate.HasProblem));
        if (through)
        {
            Assert.Null(choice.Chosen);
            Assert.Equal("fastening-head-through", choice.Findings[0].Code);
            Assert.All(choice.Candidates, static candidate => Assert.Equal("fastening-head-through", candidate.Findings[0].Code));
            Assert.All(choice.Candidates, static candidate => Assert.False(candidate.MayBeDriven));
        }

        if (choice.Chosen is { } chosen)
        {
            Assert.True(chosen.MayBeDriven);
            Assert.DoesNotContain(choice.Findings, static finding => finding.Severity == Severity.Problem);
        }
        else
        {
            Assert.True(choice.HasProblem);
        }
    }

    [Property]
    public void Every_text_that_says_safe_says_against_what(FastenerTrial trial)
    {
        FastenerChoice choice = FastenerLength.Choose(trial.Job);
        string words = trial.Job.Behind.Kind switch
        {
            BehindKind.Wire => "a wire",
            BehindKind.Pipe => "a pipe",
            BehindKind.Tank => "a tank",
            BehindKind.OuterSkin => "the outer skin",
            _ => "the metal of a rib",
        };
        foreach (string text in new[]
        {
            choice.Findings.Select(static finding => finding.Message),
            choice.Candidates.SelectMany(static candidate => candidate.Findings.Select(static finding => finding.Message)),
            choice.Candidates.Select(static candidate => candidate.TipReason),
            choice.Remedies.Select(static remedy => remedy.Text),
            choice.Remedies.SelectMany(static remedy => remedy.Outcome.Findings.Select(static finding => finding.Message)),
            [choice.ToString()],
        }.SelectMany(static texts => texts))
        {
            Assert.True(!text.Contains("safe", StringComparison.OrdinalIgnoreCase) || text.Contains("against " + words, StringComparison.Ordinal), text);
        }

        // The remedies stand beside the findings, not in them.
        Assert.All(choice.Findings, finding => Assert.All(choice.Remedies, remedy => Assert.DoesNotContain(remedy.Text, finding.Message, StringComparison.Ordinal)));
    }

    /// <summary>A tip that stays clear in the worst case, though short of what is asked, does not reach.</summary>
    [Property]
    public void A_tip_that_stays_clear_comes_too_near_and_one_that_touches_reaches(FastenerTrial trial)
    {
        foreach (FastenerCandidate candidate in FastenerLength.Choose(trial.Job).Candidates.Where(static candidate => candidate.Tip == TipVerdict.Reaches))
        {
            bool clear = candidate.WorstClearance.Millimeters > 0;
            Assert.Equal(clear, candidate.TipReason.Contains(" comes too near ", StringComparison.Ordinal));
            Assert.Equal(!clear, candidate.TipReason.Contains(" reaches ", StringComparison.Ordinal));
        }
    }

    [Property]
    public void Figures_always_have_the_same_names(FastenerTrial trial)
    {
        FastenerChoice choice = FastenerLength.Choose(trial.Job);
        string[] candidate =
        [
            "may-be-driven", "tip-verdict", "bite-verdict", "count", "shank", "length", "side-shift", "tip-depth", "clearance", "worst-clearance", "root-sum-square-clearance", "required-clearance",
            "touch-chance", "expected-hits", "any-hit-chance", "bite", "worst-bite", "least-bite", "target-bite",
        ];
        Assert.Equal(candidate, trial.Candidate.Figures().Select(static figure => figure.Name));
        Assert.Equal(["chosen", "worst-severity", "candidates", .. candidate], choice.Figures().Select(static figure => figure.Name));
        Assert.Equal([choice.Chosen is null ? 0 : 1, (int)choice.Findings.Max(static finding => finding.Severity), choice.Candidates.Count], choice.Figures().Take(3).Select(static figure => figure.Value));
    }

    [Property]
    public void What_reaches_or_does_not_bite_is_never_chosen(FastenerTrial trial)
    {
        FastenerChoice choice = FastenerLength.Choose(trial.Job);
        if (choice.Chosen is { } chosen)
        {
            Assert.NotEqual(TipVerdict.Reaches, chosen.Tip);
            Assert.Equal(BiteVerdict.Bites, chosen.Hold);
            Assert.True(chosen.Tip == TipVerdict.Safe || choice.Findings.Any(static finding => finding.Code == "fastening-marginal"));
            Assert.Equal(chosen.Tip == TipVerdict.Safe, choice.Remedies.Count == 0 && !choice.Findings.Any(static finding => finding.Code == "fastening-marginal"));
        }
        else
        {
            Assert.True(choice.HasProblem);
        }
    }

    [Property]
    public void Every_remedy_makes_its_fastener_safe_and_lets_it_bite(FastenerTrial trial)
    {
        foreach (Remedy remedy in FastenerLength.Choose(trial.Job).Remedies)
        {
            Assert.Equal(TipVerdict.Safe, remedy.Outcome.Tip);
            Assert.Equal(BiteVerdict.Bites, remedy.Outcome.Hold);
            Assert.True(remedy.Outcome.MayBeDriven);
            Assert.Equal(remedy.Fastener.Millimeters, remedy.Outcome.Length.Nominal.Millimeters, 1e-9);
        }
    }

    [Property]
    public void Expected_hits_are_count_times_chance_and_any_hit_is_no_likelier(FastenerTrial trial)
    {
        FastenerCandidate candidate = trial.Candidate;
        Assert.Equal(trial.Job.Count * candidate.TouchChance, candidate.ExpectedHits);

        // The integral over the batch ends at nine sigmas: what lies beyond is under 1e-18.
        Assert.InRange(candidate.AnyHitChance, (candidate.TouchChance * (1 - 1e-6)) - 1e-18, Math.Min(1, candidate.ExpectedHits * (1 + 1e-6)) + 1e-300);
    }

    [Property]
    public void One_fastener_hits_with_its_own_chance(FastenerTrial trial)
    {
        FastenerCandidate candidate = FastenerTrial.Try(trial.Job with { Count = 1 }, trial.Fastener);
        Assert.True(Math.Abs(candidate.TouchChance - candidate.AnyHitChance) <= (1e-6 * candidate.TouchChance) + 1e-15);
    }

    private static TolerancedLength Default() => TolerancedLength.PlusMinus(Mm(1), Mm(0.5), DeviationScope.Each);

    /// <summary>The trial's job with a gap at which the worst clearance is at least so much, and that clearance.</summary>
    private static FastenerJob WithWorst(FastenerTrial trial, double least, out double worst)
    {
        FastenerJob job = FastenerTrial.WithGap(trial.Job, Math.Max(0, least - trial.Candidate.WorstClearance.Millimeters));
        worst = FastenerTrial.Try(job, trial.Fastener).WorstClearance.Millimeters;
        return job;
    }

    private static FastenerJob Exact(FastenerJob job) => job with
    {
        Layers = [.. job.Layers.Select(static layer => layer with { Thickness = layer.Thickness.Nominal, Compressed = layer.Compressed?.Nominal })],
        Behind = job.Behind with { Distance = job.Behind.Distance.Nominal },
        SetDepth = (job.SetDepth ?? Default()).Nominal,
    };

    private static void AssertNeverSafer(FastenerCandidate safer, FastenerCandidate other)
    {
        Assert.True(other.Clearance.Millimeters <= safer.Clearance.Millimeters);
        Assert.True(other.WorstClearance.Millimeters <= safer.WorstClearance.Millimeters);
        Assert.True(other.Tip <= safer.Tip);
        Assert.True(other.TouchChance >= safer.TouchChance || safer.TouchChance >= 0.5);
    }

    private static void AssertSameTip(FastenerCandidate expected, FastenerCandidate actual)
    {
        Assert.Equal(expected.Clearance.Millimeters, actual.Clearance.Millimeters, OneStep * 1.01);
        Assert.Equal(expected.WorstClearance.Millimeters, actual.WorstClearance.Millimeters, OneStep * 1.01);
        Assert.Equal(expected.RootSumSquareClearance.Millimeters, actual.RootSumSquareClearance.Millimeters, OneStep * 1.01);
        Assert.True(Math.Abs(expected.TouchChance - actual.TouchChance) <= 1e-9 * expected.TouchChance);
    }
}
