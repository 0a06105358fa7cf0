using System;
using System.Collections.Generic;
using System.Globalization;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>The calculator against slower ways to the same answer, written here without its formulas.</summary>
[Properties(Arbitrary = [typeof(FastenerArbitraries)], MaxTest = 2000)]
public sealed class FastenerOracles
{
    private const double OneStep = 1.01e-6;

    [Property]
    public void The_worst_clearance_is_the_least_of_all_corners_of_the_tolerances(FastenerTrial trial)
    {
        double worst = double.PositiveInfinity;
        foreach (double[] sizes in Corners(trial, static layer => layer.Compressed ?? layer.Thickness))
        {
            worst = Math.Min(worst, Clearance(trial, sizes));
        }

        Assert.Equal(worst, trial.Candidate.WorstClearance.Millimeters, OneStep);
    }

    [Property]
    public void The_worst_bite_is_the_least_of_all_corners_of_the_tolerances(FastenerTrial trial)
    {
        double worst = double.PositiveInfinity;
        foreach (double[] sizes in Corners(trial, static layer => layer.Thickness))
        {
            worst = Math.Min(worst, Bite(trial, sizes));
        }

        Assert.Equal(worst, trial.Candidate.WorstBite.Millimeters, OneStep);
    }

    [Property(MaxTest = 300)]
    public void No_sizes_inside_the_tolerances_are_worse_than_the_worst_case(FastenerTrial trial)
    {
        FastenerCandidate candidate = trial.Candidate;
        Random random = new(trial.Seed);
        for (int i = 0; i < 50; i++)
        {
            double Share(int term) => random.NextDouble();
            Assert.True(Clearance(trial, Sizes(trial, static layer => layer.Compressed ?? layer.Thickness, Share)) >= candidate.WorstClearance.Millimeters - OneStep);
            Assert.True(Bite(trial, Sizes(trial, static layer => layer.Thickness, Share)) >= candidate.WorstBite.Millimeters - OneStep);
        }
    }

    [Property]
    public void Nominal_clearance_bite_and_depth_are_those_of_nominal_sizes(FastenerTrial trial)
    {
        FastenerCandidate candidate = trial.Candidate;
        double[] squeezed = Sizes(trial, static layer => layer.Compressed ?? layer.Thickness, null), free = Sizes(trial, static layer => layer.Thickness, null);
        Assert.Equal(Clearance(trial, squeezed), candidate.Clearance.Millimeters, OneStep);
        Assert.Equal(Bite(trial, free), candidate.Bite.Millimeters, OneStep);
        Assert.Equal(free[^2] + (free[^1] * Cosine(trial.Job)), candidate.TipDepth.Millimeters, OneStep);
    }

    [Property]
    public void The_chance_of_touching_is_the_tail_of_a_normal_distribution_of_its_own(FastenerTrial trial)
    {
        FastenerCandidate candidate = trial.Candidate;
        (double mean, double batch, double own) = Spread(trial);
        double sigma = Math.Sqrt(batch + own);
        double expected = sigma == 0 ? (Math.Round(mean, 6) <= 0 ? 1 : 0) : NormalTail.Below(-mean / sigma);
        AssertClose(expected, candidate.TouchChance, 1e-9, 1e-300);
        Assert.Equal(mean - (3 * sigma), candidate.RootSumSquareClearance.Millimeters, OneStep);
    }

    [Property(MaxTest = 300)]
    public void The_chance_of_any_hit_is_the_integral_over_the_batch(FastenerTrial trial)
    {
        (double mean, double batch, double own) = Spread(trial);
        double expected = ChanceOfAny(mean, Math.Sqrt(batch), Math.Sqrt(own), trial.Job.Count);
        AssertClose(expected, trial.Candidate.AnyHitChance, 1e-6, 1e-12);
    }

    public static TheoryData<double, int> RatiosAndCounts()
    {
        TheoryData<double, int> data = [];
        foreach (double ratio in new[] { 0.001, 0.003, 0.01, 0.03, 0.1, 0.3, 1, 3, 10, 100, 1000 })
        {
            foreach (int count in new[] { 1, 2, 10, 200, 5000, 100_000 })
            {
                data.Add(ratio, count);
            }
        }

        return data;
    }

    /// <summary>Own sigma over batch sigma from a thousandth to a thousand.</summary>
    [Theory]
    [MemberData(nameof(RatiosAndCounts))]
    public void The_chance_of_any_hit_holds_from_all_batch_to_all_own(double ratio, int count)
    {
        foreach (double z in new[] { -3, -0.5, 0, 0.7, 2, 3, 4, 5, 6, 6.9 })
        {
            // The mean lies z whole sigmas clear.
            double batch = 0.3, own = batch * ratio, mean = z * Math.Sqrt((batch * batch) + (own * own));
            double expected = ChanceOfAny(mean, batch, own, count);
            AssertClose(expected, FastenerLength.ChanceOfAny(mean, batch, own, count), 1e-6, 1e-12);
        }
    }

    /// <summary>Where only one kind of spread exists the integral has a closed form: one draw, or n independent ones.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(40)]
    [InlineData(100_000)]
    public void The_chance_of_any_hit_is_one_draw_or_n_independent_ones_at_the_ends(int count)
    {
        foreach (double z in new[] { -2.0, 0, 1, 3, 5, 7 })
        {
            double one = NormalTail.Below(-z);
            AssertClose(one, FastenerLength.ChanceOfAny(z * 0.2, 0.2, 0, count), 1e-9, 0);
            AssertClose(AnyOf(one, count), FastenerLength.ChanceOfAny(z * 0.2, 0, 0.2, count), 1e-9, 0);
        }

        Assert.Equal(1, FastenerLength.ChanceOfAny(0, 0, 0, count));
        Assert.Equal(0, FastenerLength.ChanceOfAny(1e-6, 0, 0, count));
    }

    /// <summary>The rule text, over the verdicts: shortest safe that reaches the target; else longest safe that bites; else the same among the marginal; longest safe only, where that is asked.</summary>
    [Property]
    public void The_choice_follows_the_rule_text(FastenerTrial trial)
    {
        FastenerChoice choice = FastenerLength.Choose(trial.Job);
        FastenerCandidate? expected = null;
        if (trial.Job.Preference == FastenerPreference.LongestSafe)
        {
            expected = Extreme(choice, c => Safe(c) && Bites(c), longest: true);
        }
        else
        {
            expected = Extreme(choice, c => Safe(c) && Bites(c) && Target(c), longest: false)
                ?? Extreme(choice, c => Safe(c) && Bites(c), longest: true)
                ?? Extreme(choice, c => Marginal(c) && Bites(c) && Target(c), longest: false)
                ?? Extreme(choice, c => Marginal(c) && Bites(c), longest: true);
        }

        Assert.Same(expected, choice.Chosen);
        Assert.Equal(trial.Job.Series.Lengths.Count, choice.Candidates.Count);

        bool Safe(FastenerCandidate c) => c.WorstClearance.Millimeters >= c.RequiredClearance.Millimeters && c.WorstClearance.Millimeters > 0;
        bool Bites(FastenerCandidate c) => FastenerTrial.Furring(trial.Job) >= 0 && c.WorstBite.Millimeters >= c.LeastBite.Millimeters;
        bool Target(FastenerCandidate c) => c.Bite.Millimeters >= c.TargetBite.Millimeters;
        bool Marginal(FastenerCandidate c) => !Safe(c) && c.Behind == BehindKind.RibMetal && c.Clearance.Millimeters >= 0 && c.TouchChance <= (trial.Job.MarginalChance ?? 1e-4);
    }

    [Property(MaxTest = 500)]
    public void The_thinnest_furring_is_what_bisection_finds(FastenerTrial trial)
    {
        int furring = FastenerTrial.Furring(trial.Job);
        Length fastener = Mm(trial.Fastener.Nominal.Millimeters);
        if (furring < 0)
        {
            Assert.Null(FastenerLength.ThinnestFurring(trial.Job, fastener));
            return;
        }

        FastenerJob job = FastenerTrial.WithLayer(trial.Job, furring, trial.Job.Layers[furring] with { Compressed = null }) with { Sheets = [] };
        TolerancedLength given = job.Layers[furring].Thickness;
        bool Does(long nanometres) => FastenerLength.Evaluate(FastenerTrial.WithFurring(job, new TolerancedLength(Mm(nanometres / 1e6), given.Lower, given.Upper, given.Scope)), fastener) is { Tip: TipVerdict.Safe, Hold: BiteVerdict.Bites };

        // From the thinnest that its own deviation lets it be to a metre.
        long tooThin = (long)Math.Round(-given.Lower.Millimeters * 1e6), enough = 1_000_000_000;
        FurringRemedy? remedy = FastenerLength.ThinnestFurring(job, fastener);
        if (!Does(enough))
        {
            // However thick, it is too short to bite.
            Assert.Null(remedy);
            return;
        }

        while (enough - tooThin > 1)
        {
            long middle = (enough + tooThin) / 2;
            (tooThin, enough) = Does(middle) ? (tooThin, middle) : (middle, enough);
        }

        Assert.NotNull(remedy);
        Assert.Equal(enough / 1e6, remedy.Least.Millimeters, OneStep);
        Assert.Null(remedy.Sheet);
    }

    [Property(MaxTest = 500)]
    public void The_next_sheet_is_the_thinnest_of_all_that_do(FastenerTrial trial)
    {
        if (FastenerTrial.Furring(trial.Job) < 0)
        {
            return;
        }

        Length fastener = Mm(trial.Fastener.Nominal.Millimeters);
        FastenerJob job = trial.Job with { Sheets = SheetGoods.All };
        SheetGoods? thinnest = null;
        foreach (SheetGoods sheet in SheetGoods.All)
        {
            bool does = FastenerLength.Evaluate(FastenerTrial.WithFurring(job, sheet.Thickness), fastener) is { Tip: TipVerdict.Safe, Hold: BiteVerdict.Bites };
            if (does && (thinnest is null || sheet.Thickness.Nominal.Millimeters < thinnest.Thickness.Nominal.Millimeters))
            {
                thinnest = sheet;
            }
        }

        FurringRemedy? remedy = FastenerLength.ThinnestFurring(job, fastener);
        Assert.Same(thinnest, remedy?.Sheet);
        if (thinnest is not null)
        {
            Assert.NotNull(remedy);
            Assert.Equal(FastenerLength.Evaluate(FastenerTrial.WithFurring(job, thinnest.Thickness), fastener).ToString(), remedy.Outcome.ToString());
        }
    }

    [Property(MaxTest = 500)]
    public void The_least_angle_is_what_bisection_finds(FastenerTrial trial)
    {
        Length fastener = Mm(trial.Fastener.Nominal.Millimeters);
        bool Safe(double degrees) => FastenerLength.Evaluate(trial.Job with { DriveAngle = Angle.FromDegrees(degrees) }, fastener).Tip == TipVerdict.Safe;
        DriveAngleRemedy? remedy = FastenerLength.LeastDriveAngle(trial.Job, fastener);
        if (!Safe(60) || trial.Job.Behind.Kind != BehindKind.RibMetal)
        {
            // To the side of anything but a rib nobody measured what is there.
            Assert.Null(remedy);
            return;
        }

        double low = 0, high = 60;
        while (!Safe(0) && high - low > 1e-9)
        {
            double middle = (low + high) / 2;
            (low, high) = Safe(middle) ? (low, middle) : (middle, high);
        }

        high = Safe(0) ? 0 : high;
        Assert.NotNull(remedy);
        Assert.Equal(TipVerdict.Safe, remedy.Outcome.Tip);
        Assert.True(Safe(remedy.Least.Degrees));
        Assert.True(Safe(remedy.Angle.Degrees));
        Assert.Equal(Math.Ceiling(remedy.Least.Degrees), remedy.Angle.Degrees);
        Assert.Equal(FastenerLength.Evaluate(trial.Job with { DriveAngle = remedy.Angle }, fastener).Figures(), remedy.Outcome.Figures());

        // Half a nanometre on the grid of the clearance is dA = 0.5e-6/(L sin A); near square that is a good deal.
        double grid = high == 0 ? 0 : Math.Min(0.05, 1e-6 / (trial.Fastener.Nominal.Millimeters * Math.Sin(high * Math.PI / 180)) * 180 / Math.PI);
        Assert.InRange(remedy.Least.Degrees, high - 1e-9, high + 2e-6 + grid);
    }

    private static FastenerCandidate? Extreme(FastenerChoice choice, Func<FastenerCandidate, bool> fits, bool longest)
    {
        FastenerCandidate? found = null;
        foreach (FastenerCandidate candidate in choice.Candidates)
        {
            if (fits(candidate) && (found is null || (candidate.Length.Nominal.Millimeters > found.Length.Nominal.Millimeters == longest)))
            {
                found = candidate;
            }
        }

        return found;
    }

    private static double Cosine(FastenerJob job) => Math.Cos(job.DriveAngle.Degrees * Math.PI / 180);

    /// <summary>Layers, then gap, set depth, length; each at lower + share x (upper - lower), or nominal without shares.</summary>
    private static double[] Sizes(FastenerTrial trial, Func<Layer, TolerancedLength> thickness, Func<int, double>? share)
    {
        List<TolerancedLength> terms = [];
        foreach (Layer layer in trial.Job.Layers)
        {
            terms.Add(thickness(layer));
        }

        terms.Add(trial.Job.Behind.Distance);
        terms.Add(SetDepth(trial.Job));
        terms.Add(trial.Fastener);
        double[] sizes = new double[terms.Count];
        for (int i = 0; i < sizes.Length; i++)
        {
            double lower = terms[i].Lower.Millimeters, upper = terms[i].Upper.Millimeters;
            sizes[i] = terms[i].Nominal.Millimeters + (share is null ? 0 : lower + (share(i) * (upper - lower)));
        }

        return sizes;
    }

    private static TolerancedLength SetDepth(FastenerJob job) => job.SetDepth ?? new TolerancedLength(Mm(1), Mm(-0.5), Mm(0.5), DeviationScope.Each);

    private static IEnumerable<double[]> Corners(FastenerTrial trial, Func<Layer, TolerancedLength> thickness)
    {
        int terms = trial.Job.Layers.Count + 3;
        for (int corner = 0; corner < 1 << terms; corner++)
        {
            int at = corner;
            yield return Sizes(trial, thickness, term => (at >> term) & 1);
        }
    }

    private static double Clearance(FastenerTrial trial, double[] sizes)
    {
        double room = 0;
        for (int i = 0; i < sizes.Length - 2; i++)
        {
            room += sizes[i];
        }

        return room - sizes[^2] - (sizes[^1] * Cosine(trial.Job));
    }

    /// <summary>Wood that holds above the tip less wood that holds above the head, along the shank.</summary>
    private static double Bite(FastenerTrial trial, double[] sizes)
    {
        double head = sizes[^2], tip = head + (Math.Max(0, sizes[^1]) * Cosine(trial.Job));
        return (HoldingAbove(tip) - HoldingAbove(head)) / Cosine(trial.Job);

        double HoldingAbove(double depth)
        {
            double left = depth, holding = 0;
            for (int i = 0; i < trial.Job.Layers.Count && left > 0; i++)
            {
                holding += FastenerTrial.Holds(trial.Job, i) ? Math.Min(left, sizes[i]) : 0;
                left -= sizes[i];
            }

            return holding;
        }
    }

    /// <summary>Mean clearance at the middle of each tolerance; variances shared by the batch and each fastener's own.</summary>
    private static (double Mean, double Batch, double Own) Spread(FastenerTrial trial)
    {
        double mean = Clearance(trial, Sizes(trial, static layer => layer.Compressed ?? layer.Thickness, static _ => 0.5)), batch = 0, own = 0;
        foreach (Layer layer in trial.Job.Layers)
        {
            Add(layer.Compressed ?? layer.Thickness, 1);
        }

        Add(trial.Job.Behind.Distance, 1);
        Add(SetDepth(trial.Job), 1);
        Add(trial.Fastener, Cosine(trial.Job));
        return (mean, batch, own);

        void Add(TolerancedLength term, double share)
        {
            double sigma = share * (term.Upper.Millimeters - term.Lower.Millimeters) / 6;
            if (term.Scope == DeviationScope.Batch)
            {
                batch += sigma * sigma;
            }
            else
            {
                own += sigma * sigma;
            }
        }
    }

    /// <summary>Plain trapezoids over the batch deviation, fine against the narrower of the two spreads.</summary>
    private static double ChanceOfAny(double mean, double batch, double own, int count)
    {
        if (own == 0)
        {
            return batch == 0 ? (Math.Round(mean, 6) <= 0 ? 1 : 0) : NormalTail.Below(-mean / batch);
        }

        if (batch == 0)
        {
            return AnyOf(NormalTail.Below(-mean / own), count);
        }

        double step = Math.Min(0.005, own / batch / 20), sum = 0;
        for (double z = -12; z <= 12; z += step)
        {
            double touch = -(mean + (batch * z)) / own;
            sum += touch < -40 ? 0 : Math.Exp(-z * z / 2) * (touch > 9 ? 1 : AnyOf(NormalTail.Below(touch), count));
        }

        return Math.Min(1, sum * step / Math.Sqrt(2 * Math.PI));
    }

    /// <summary>1 - (1 - p)^n without loss: log1p by its atanh series, expm1 by sinh.</summary>
    private static double AnyOf(double chance, int count)
    {
        if (chance > 0.1)
        {
            return 1 - Math.Pow(1 - chance, count);
        }

        double y = chance / (2 - chance), term = y, log = 0;
        for (int k = 1; k < 40; k += 2)
        {
            log -= 2 * term / k;
            term *= y * y;
        }

        double half = count * log / 2;
        return half < -300 ? 1 : -2 * Math.Sinh(half) * Math.Exp(half);
    }

    private static void AssertClose(double expected, double actual, double relative, double floor) =>
        Assert.True(
            Math.Abs(expected - actual) <= (relative * Math.Abs(expected)) + floor,
            string.Format(CultureInfo.InvariantCulture, "expected {0:R}, was {1:R}", expected, actual));
}

/// <summary>The normal distribution by the power series near the middle and a continued fraction in the tails, apart from the library's.</summary>
internal static class NormalTail
{
    internal static double Below(double z)
    {
        double x = Math.Abs(z), density = Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI), tail;
        if (x < 3)
        {
            double term = x, sum = x;
            for (int n = 1; n < 200; n++)
            {
                term *= x * x / ((2 * n) + 1);
                sum += term;
            }

            tail = 0.5 - (density * sum);
        }
        else
        {
            double below = x;
            for (int n = 400; n > 0; n--)
            {
                below = x + (n / below);
            }

            tail = density / below;
        }

        return z < 0 ? tail : 1 - tail;
    }
}
