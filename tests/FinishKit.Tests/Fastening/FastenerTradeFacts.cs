using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>
/// Cases a shop knows, worked by hand. The trade facts are common practice, no published source. The nail's ±1/32 in up to one inch
/// is from memory (ASTM F1667); normal tails by a script of their own (math.erfc).
/// </summary>
public sealed class FastenerTradeFacts
{
    private static readonly Length s_nail = Mm(25.4);

    /// <summary>12.7 + 15.875 - 0.5 - 25.4 = 2.675; worst 28.575 - 0.5 - 26.19375 = 1.88125, 0.5 asked. Common practice, no published source.</summary>
    [Fact]
    public void A_25_mm_nail_stays_short_of_the_metal_behind_16_mm_furring()
    {
        FastenerCandidate nail = FastenerLength.Evaluate(Job(Mm(15.875)), s_nail);
        Assert.Equal(2.675, nail.Clearance.Millimeters);
        Assert.Equal(25.9, nail.TipDepth.Millimeters);
        Assert.Equal(1.88125, nail.WorstClearance.Millimeters);
        Assert.Equal(TipVerdict.Safe, nail.Tip);
    }

    /// <summary>12.7 + 12.7 - 0.5 - 25.4 = -0.5; worst -0.5 - 0.79375. Common practice, no published source.</summary>
    [Fact]
    public void The_same_nail_reaches_the_metal_behind_13_mm_furring()
    {
        FastenerCandidate nail = FastenerLength.Evaluate(Job(Mm(12.7)), s_nail);
        Assert.Equal(-0.5, nail.Clearance.Millimeters);
        Assert.Equal(-1.29375, nail.WorstClearance.Millimeters);
        Assert.Equal(TipVerdict.Reaches, nail.Tip);
    }

    /// <summary>
    /// A 15 mm birch sheet is 14.2 to 15.6: middle 14.9, ±0.7. Clearance 12.7 + 14.9 - 25.9 = 1.7; worst 26.9 - 0.5 - 26.19375 = 0.20625 under
    /// 0.5; variance (1.4/6)² + (1.5875/6)² = 0.0544444 + 0.0700043 = 0.1244488, sigma 0.352773, z 4.81896, tail 7.2153e-7: marginal.
    /// </summary>
    [Fact]
    public void A_15_mm_birch_sheet_at_its_actual_size_makes_it_marginal()
    {
        FastenerCandidate nail = FastenerLength.Evaluate(Job(TolerancedLength.Between(Mm(14.2), Mm(15.6))), s_nail);
        Assert.Equal(1.7, nail.Clearance.Millimeters);
        Assert.Equal(0.20625, nail.WorstClearance.Millimeters);
        Assert.Equal(7.2153e-7, nail.TouchChance, 0.001e-7);
        Assert.Equal(TipVerdict.Marginal, nail.Tip);
    }

    /// <summary>Set 1 ± 0.5 besides: clearance 1.2; worst 26.9 - 1.5 - 26.19375 = -0.79375; variance 0.1244488 + (1/6)² = 0.1522265, z 3.07564, tail 1.0502e-3: more than 1 in 10,000.</summary>
    [Fact]
    public void With_the_default_set_depth_it_reaches()
    {
        FastenerCandidate nail = FastenerLength.Evaluate(Job(TolerancedLength.Between(Mm(14.2), Mm(15.6))) with { SetDepth = null }, s_nail);
        Assert.Equal(1.2, nail.Clearance.Millimeters);
        Assert.Equal(-0.79375, nail.WorstClearance.Millimeters);
        Assert.Equal(1.0502e-3, nail.TouchChance, 0.0001e-3);
        Assert.Equal(TipVerdict.Reaches, nail.Tip);
    }

    /// <summary>
    /// PS 1 unsanded 5/8 in: ±1/32 in, 15.09 to 16.66, middle 15.875 ± 0.785. Clearance 2.675; worst 12.7 + 15.09 - 0.5 - 26.19375 = 1.09625: safe.
    /// Set 1 ± 0.5: clearance 2.175; worst 27.79 - 1.5 - 26.19375 = 0.09625 under 0.5; variance (1.57/6)² + 0.0700043 + 0.0277778 = 0.1662516,
    /// z 5.33429, tail 4.7960e-8: marginal.
    /// </summary>
    [Fact]
    public void Unsanded_construction_ply_is_safe_at_half_a_millimetre_and_marginal_at_the_default_set()
    {
        FastenerJob job = Job(TolerancedLength.Between(Mm(15.09), Mm(16.66)));
        FastenerCandidate shallow = FastenerLength.Evaluate(job, s_nail), deep = FastenerLength.Evaluate(job with { SetDepth = null }, s_nail);
        Assert.Equal(2.675, shallow.Clearance.Millimeters);
        Assert.Equal(1.09625, shallow.WorstClearance.Millimeters);
        Assert.Equal(TipVerdict.Safe, shallow.Tip);
        Assert.Equal(2.175, deep.Clearance.Millimeters);
        Assert.Equal(0.09625, deep.WorstClearance.Millimeters);
        Assert.Equal(4.7960e-8, deep.TouchChance, 0.001e-8);
        Assert.Equal(TipVerdict.Marginal, deep.Tip);
    }

    /// <summary>
    /// The demo van: 12.7 + 15.1 - 1 - 25.4 = 1.4. Ply ± 0.5, set ± 0.5, nail ± 0.79375: worst 1.4 - 1.79375 = -0.39375; variance
    /// (1/6)² + (1/6)² + (1.5875/6)² = 0.1255599, sigma 0.354344, z 3.95096, tail 3.8919e-5; 200 x that = 0.0078. 31.75: 27.8 - 32.75 = -4.95.
    /// </summary>
    [Fact]
    public void The_demo_van_takes_the_25_mm_nail_as_marginal_with_few_hits_expected()
    {
        FastenerJob job = new([Mm(12.7), TolerancedLength.PlusMinus(Mm(15.1), Mm(0.5))], Behind.Metal, FastenerSeries.Brad18) { Count = 200 };
        FastenerCandidate nail = FastenerLength.Evaluate(job, s_nail), longer = FastenerLength.Evaluate(job, Mm(31.75));
        Assert.Equal(1.4, nail.Clearance.Millimeters);
        Assert.Equal(-0.39375, nail.WorstClearance.Millimeters);
        Assert.Equal(3.8919e-5, nail.TouchChance, 0.0005e-5);
        Assert.Equal(0.0078, nail.ExpectedHits, 0.00005);
        Assert.Equal(TipVerdict.Marginal, nail.Tip);
        Assert.Equal(-4.95, longer.Clearance.Millimeters);
        Assert.Equal(TipVerdict.Reaches, longer.Tip);
        Assert.Equal(25.4, FastenerLength.Choose(job).Chosen!.Length.Nominal.Millimeters);
    }

    /// <summary>Board 12, strip 20, 1.6 mm nail: 6 x 1.6 = 9.6 of bite is reached by 12 + 9.6 = 21.6 and not by a nanometre less (derived; NDS minimum read in a copy).</summary>
    [Fact]
    public void Six_diameters_of_a_16_gauge_nail_behind_a_12_mm_board_ask_21_6_mm()
    {
        FastenerJob job = new([Mm(12), Mm(20)], Behind.Metal, FastenerSeries.Finish16) { SetDepth = Mm(0) };
        Assert.Equal(1.6, job.Series.Shank.Millimeters, 1e-9);
        FastenerCandidate just = FastenerTrial.Try(job, Mm(21.6)), under = FastenerTrial.Try(job, Mm(21.599999));
        Assert.Equal(9.6, just.WorstBite.Millimeters);
        Assert.Equal(6, just.WorstBiteDiameters, 1e-12);
        Assert.Equal(BiteVerdict.Bites, just.Hold);
        Assert.Equal(9.599999, under.WorstBite.Millimeters);
        Assert.Equal(BiteVerdict.TooLittle, under.Hold);
    }

    /// <summary>The blow-through limit 12 + 20 = 32 less 1 mm asked leaves 31, so that the 31.2 of full Eurocode bite (12 + 12 x 1.6) do not fit (derived).</summary>
    [Fact]
    public void Twelve_diameters_do_not_fit_under_the_blow_through_limit()
    {
        FastenerJob job = new([Mm(12), Mm(20)], Behind.Metal, FastenerSeries.Finish16) { SetDepth = Mm(0), RequiredClearance = Mm(1) };
        Assert.Equal(31, FastenerLength.LongestSafe(job)!.Value.Millimeters);
        Assert.Equal(TipVerdict.Safe, FastenerTrial.Try(job, Mm(31)).Tip);
        Assert.NotEqual(TipVerdict.Safe, FastenerTrial.Try(job, Mm(31.2)).Tip);
    }

    /// <summary>Nothing asked: 12 + 20 touches exactly and is not safe; a nanometre less is the longest that is.</summary>
    [Fact]
    public void The_longest_safe_length_does_not_touch_even_where_no_clearance_is_asked()
    {
        FastenerJob job = new([Mm(12), Mm(20)], Behind.Metal, FastenerSeries.Finish16) { SetDepth = Mm(0), RequiredClearance = Mm(0) };
        Assert.Equal(31.999999, FastenerLength.LongestSafe(job)!.Value.Millimeters);
        Assert.Equal(TipVerdict.Safe, FastenerTrial.Try(job, Mm(31.999999)).Tip);
        Assert.NotEqual(TipVerdict.Safe, FastenerTrial.Try(job, Mm(32)).Tip);
    }

    /// <summary>25 cos 30° = 21.6506 deep; through 12 mm the shank spends 12/cos 30° = 13.8564 and leaves 11.1436 in the strip (derived).</summary>
    [Fact]
    public void A_25_mm_nail_at_30_degrees_goes_21_65_deep_and_leaves_11_14_in_the_strip()
    {
        FastenerJob job = new([Mm(12), Mm(20)], Behind.Metal, FastenerSeries.Finish16) { SetDepth = Mm(0), DriveAngle = Angle.FromDegrees(30) };
        FastenerCandidate nail = FastenerTrial.Try(job, Mm(25));
        Assert.Equal(21.650635, nail.TipDepth.Millimeters, 1e-6);
        Assert.Equal(11.143594, nail.Bite.Millimeters, 1e-6);
        Assert.Equal(10.349365, nail.Clearance.Millimeters, 1e-6); // 32 - 21.650635
        TipClearance plain = FastenerLength.TipClearance(Mm(32), Mm(25), Mm(0), Angle.FromDegrees(30));
        Assert.Equal(21.650635, plain.TipDepth.Millimeters, 1e-6);
        Assert.Equal(10.349365, plain.Clearance.Millimeters, 1e-6);
    }

    /// <summary>Tongue 4, shoulder 4, strip 15 at 45°: depth 1 + 25.4 x 0.7071068 = 18.960512; room 23, clearance 4.039488; shank in the strip (18.960512 - 8)/0.7071068 = 15.500505.</summary>
    [Fact]
    public void A_blind_nail_passes_tongue_and_shoulder_at_45_degrees()
    {
        BoardProfile board = BoardProfile.TongueAndGroove(Mm(12.7), Mm(4), Mm(4));
        FastenerJob job = new FastenerJob([Mm(15)], Behind.Metal, FastenerSeries.Brad18).ThroughBoard(board, Nailing.BlindThroughTongue);
        FastenerCandidate nail = FastenerLength.Evaluate(job, s_nail);
        Assert.Equal(18.960512, nail.TipDepth.Millimeters, 1e-6);
        Assert.Equal(4.039488, nail.Clearance.Millimeters, 1e-6);
        Assert.Equal(15.500505, nail.Bite.Millimeters, 1e-6);
    }

    /// <summary>A 3 mm mat that squeezes to 1: 12.7 + 1 + 15 - 0.5 - 25.4 = 2.8 of clearance, but only 25.9 - 15.7 = 10.2 of bite.</summary>
    [Fact]
    public void A_mat_counts_squeezed_for_clearance_and_free_for_bite()
    {
        FastenerJob job = new([Mm(12.7), Layer.Compressible("mat", Mm(3), Mm(1)), Mm(15)], Behind.Metal, FastenerSeries.Brad18) { SetDepth = Mm(0.5) };
        FastenerCandidate nail = FastenerLength.Evaluate(job, s_nail);
        Assert.Equal(2.8, nail.Clearance.Millimeters);
        Assert.Equal(10.2, nail.Bite.Millimeters);
    }

    private static FastenerJob Job(TolerancedLength ply) => new([Mm(12.7), ply], Behind.Metal, FastenerSeries.Brad18) { SetDepth = Mm(0.5) };
}
