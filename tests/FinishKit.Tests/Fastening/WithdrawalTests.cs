using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>Withdrawal by worked examples, its findings at their limits, and what it refuses.</summary>
public sealed class WithdrawalTests
{
    private static readonly OvendrySpecificGravity s_ovendry = new(0.5);
    private static readonly SpecificGravityAt12 s_at12 = new(0.5);
    private static readonly CharacteristicDensity s_c24 = new(350);

    [Theory]
    [InlineData(1.6)]
    [InlineData(1.2)]
    [InlineData(2.03)]
    [InlineData(3.7)]
    public void Nds_nail_of_exactly_six_diameters_needs_no_word(double shank)
    {
        Assert.Empty(Withdrawal.NdsNail(s_ovendry, Mm(shank), Mm(6 * shank)).Findings);
        Assert.Empty(Withdrawal.NdsWoodScrew(s_ovendry, Mm(shank), Mm(6 * shank)).Findings);
        Finding finding = Assert.Single(Withdrawal.NdsNail(s_ovendry, Mm(shank), Mm((6 * shank) - 1e-6)).Findings);
        Assert.Equal(("fastening-nds-penetration-short", Severity.Caution), (finding.Code, finding.Severity));
        Assert.Equal(6 * shank, ValueOf(finding, "least-penetration"), 1e-6);
        Assert.Single(Withdrawal.NdsWoodScrew(s_ovendry, Mm(shank), Mm((6 * shank) - 1e-6)).Findings);
    }

    [Fact]
    public void Nds_six_diameters_met_in_inches_are_met_in_millimetres() =>
        Assert.Empty(Withdrawal.NdsNail(s_ovendry, Length.FromInches(0.0625), Mm(9.525)).Findings); // 6 · 1.5875

    [Fact]
    public void Nds_lag_screw_asks_four_diameters()
    {
        Assert.Empty(Withdrawal.NdsLagScrew(s_ovendry, Mm(10), Mm(40)).Findings);
        Finding finding = Assert.Single(Withdrawal.NdsLagScrew(s_ovendry, Mm(10), Mm(39.999999)).Findings);
        Assert.Equal("fastening-nds-penetration-short", finding.Code);
        Assert.Equal(40, ValueOf(finding, "least-penetration"));
    }

    [Fact]
    public void A_short_nail_still_has_its_value() =>
        Assert.Equal(26.9118, Withdrawal.NdsNail(s_ovendry, Mm(1.6), Mm(10)).Force.Newtons, 0.00005); // 80.73546/3, of 30 mm

    [Fact]
    public void No_penetration_holds_nothing_but_has_a_value_per_length()
    {
        WithdrawalCapacity nail = Withdrawal.NdsNail(s_ovendry, Mm(1.6), Mm(0));
        Assert.Equal(0, nail.Force.Newtons);
        Assert.Equal(2.69118, nail.PerLength!.Value.NewtonsPerMillimeter, 0.000005);
    }

    [Fact]
    public void A_handbook_value_says_that_it_is_no_design_value()
    {
        WithdrawalCapacity[] all = [Withdrawal.HandbookNail(s_at12, Mm(2), Mm(20)), Withdrawal.HandbookWoodScrew(s_at12, Mm(4), Mm(20)), Withdrawal.HandbookLagScrew(s_at12, Mm(8), Mm(40))];
        foreach (WithdrawalCapacity hold in all)
        {
            Assert.Equal(WithdrawalBasis.HandbookAverageUltimate, hold.Basis);
            Finding finding = Assert.Single(hold.Findings);
            Assert.Equal(("fastening-ultimate-not-design", Severity.Note), (finding.Code, finding.Severity));
            Assert.Equal(hold.Force.Newtons / 5, ValueOf(finding, "one-fifth"), 1e-9);
            Assert.False(hold.HasProblem);
        }
    }

    [Theory]
    [InlineData(2.5)]
    [InlineData(1.6)]
    [InlineData(1.5875)] // 1/16 in
    [InlineData(3.1)]
    public void Eurocode5_nail_holds_nothing_at_eight_diameters_and_all_at_twelve(double shank)
    {
        WithdrawalCapacity none = Withdrawal.Eurocode5SmoothNail(s_c24, Mm(shank), Mm(8 * shank));
        Assert.Equal(0, none.Force.Newtons);
        Assert.True(none.HasProblem);
        Assert.Equal(["fastening-eurocode5-penetration-none", "fastening-eurocode5-short-term-only", "fastening-characteristic-not-design"], Codes(none));

        WithdrawalCapacity little = Withdrawal.Eurocode5SmoothNail(s_c24, Mm(shank), Mm((8 * shank) + 1e-6));
        Assert.InRange(little.Force.Newtons, double.Epsilon, 1e-3);
        Assert.False(little.HasProblem);
        Assert.Equal(["fastening-eurocode5-short-term-only", "fastening-eurocode5-penetration-short", "fastening-characteristic-not-design"], Codes(little));

        Assert.Contains("fastening-eurocode5-penetration-short", Codes(Withdrawal.Eurocode5SmoothNail(s_c24, Mm(shank), Mm((12 * shank) - 1e-6))));
        WithdrawalCapacity all = Withdrawal.Eurocode5SmoothNail(s_c24, Mm(shank), Mm(12 * shank));
        Assert.Equal(["fastening-eurocode5-short-term-only", "fastening-characteristic-not-design"], Codes(all));
        Assert.Equal(2.45 * shank * 12 * shank, all.Force.Newtons, 1e-9);
    }

    [Fact]
    public void Eurocode5_has_no_withdrawal_for_a_brad_in_thin_furring()
    {
        // 25.4 mm brad of 1.6 through 12.7 board: 12.7 mm in the furring, 7.9 d.
        WithdrawalCapacity brad = Withdrawal.Eurocode5SmoothNail(s_c24, Mm(1.6), Mm(12.7));
        Assert.True(brad.HasProblem);
        Assert.Equal(0, brad.Force.Newtons);
    }

    [Theory]
    [InlineData(40, 245)] // 20e-6 · 350² · 2.5 = 6.125 N/mm; · 40: the point governs
    [InlineData(60, 287.875)] // 6.125 · 12 + 8.575 · 5² = 73.5 + 214.375: the head governs under 367.5
    public void Eurocode5_nail_pulls_out_at_the_point_or_through_at_the_head(double pointPenetration, double newtons) =>
        Assert.Equal(newtons, Withdrawal.Eurocode5SmoothNail(new Eurocode5Nail(s_c24, Mm(2.5), Mm(5), Mm(12), Mm(pointPenetration)) { PermanentLoad = false }).Force.Newtons, 1e-9);

    [Fact]
    public void Eurocode5_short_penetration_cuts_the_head_side_too()
    {
        // Headless pin: f_head d² = 8.575 · 6.25 = 53.59375 governs over 153.125 at the point; at 10 d half of it is left.
        Eurocode5Nail pin = new(s_c24, Mm(2.5), Mm(2.5), Mm(0), Mm(25)) { PermanentLoad = false };
        Assert.Equal(26.796875, Withdrawal.Eurocode5SmoothNail(pin).Force.Newtons, 1e-9);
    }

    [Fact]
    public void Eurocode5_refuses_a_smooth_nail_for_a_permanent_load()
    {
        Eurocode5Nail nail = new() { Density = s_c24, Shank = Mm(2.5), HeadDiameter = Mm(5), HeadSideThickness = Mm(20), PointPenetration = Mm(40) }; // permanent unless said otherwise: what hangs in a van hangs there for good
        WithdrawalCapacity refused = Withdrawal.Eurocode5SmoothNail(nail);
        Assert.Equal(0, refused.Force.Newtons);
        Assert.True(refused.HasProblem);
        Assert.Equal(Severity.Problem, Assert.Single(refused.Findings, finding => finding.Code == "fastening-eurocode5-permanent-load").Severity);
        Assert.False(Withdrawal.Eurocode5SmoothNail(nail with { PermanentLoad = false }).HasProblem);
    }

    [Fact]
    public void Eurocode5_plain_smooth_nail_is_for_short_terms_and_says_so()
    {
        WithdrawalCapacity nail = Withdrawal.Eurocode5SmoothNail(s_c24, Mm(2.5), Mm(30));
        Assert.False(nail.HasProblem);
        Assert.Equal(183.75, nail.Force.Newtons, 1e-9); // 2.45 · 2.5 · 30, as for a load that is not permanent
        Finding caution = Assert.Single(nail.Findings, finding => finding.Code == "fastening-eurocode5-short-term-only");
        Assert.Equal(Severity.Caution, caution.Severity);
        Assert.Contains("183.75 N", caution.Message, StringComparison.Ordinal);

        // Who says that the load is not permanent has answered.
        Eurocode5Nail members = new(s_c24, Mm(2.5), Mm(5), Mm(20), Mm(30)) { PermanentLoad = false };
        Assert.DoesNotContain("fastening-eurocode5-short-term-only", Codes(Withdrawal.Eurocode5SmoothNail(members)));
        Assert.DoesNotContain("fastening-eurocode5-short-term-only", Codes(Withdrawal.Eurocode5SmoothNail(members with { PermanentLoad = true })));
    }

    [Theory]
    [InlineData(1.5875)]
    [InlineData(2.5)]
    [InlineData(2.87)]
    [InlineData(3.1)]
    public void Predrilling_is_asked_below_its_thickness_and_not_from_it_on(double shank)
    {
        Eurocode5Nail nail = new(s_c24, Mm(shank), Mm(2 * shank), Mm(100), Mm(30));
        Length limit = Withdrawal.Eurocode5SmoothNail(nail).PredrillBelow!.Value;
        Assert.DoesNotContain("fastening-eurocode5-predrill", Codes(Withdrawal.Eurocode5SmoothNail(nail with { HeadSideThickness = limit })));
        Assert.Contains("fastening-eurocode5-predrill", Codes(Withdrawal.Eurocode5SmoothNail(nail with { HeadSideThickness = Mm(limit.Millimeters - 1e-6) })));
    }

    [Fact]
    public void A_lag_screws_least_thread_has_its_own_place_in_the_source()
    {
        Source lag = Withdrawal.NdsLagScrew(s_ovendry, Mm(10), Mm(30)).Findings[0].Source!, nail = Withdrawal.NdsNail(s_ovendry, Mm(10), Mm(30)).Findings[0].Source!;
        Assert.Equal(("NDS-2018", SourceReading.Copy), (lag.Id, lag.Reading));
        Assert.Contains("4 D", lag.Place, StringComparison.Ordinal);
        Assert.Contains("4 D", lag.Note, StringComparison.Ordinal);
        Assert.DoesNotContain("6 D", lag.Place + lag.Note, StringComparison.Ordinal);
        Assert.Contains("6 D", nail.Place, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(17.5, null, false)]
    [InlineData(17.499999, null, true)]
    [InlineData(18.0, 17.5, false)]
    [InlineData(18.0, 12.0, true)]
    [InlineData(15.0, 12.0, true)]
    [InlineData(12.0, 15.0, true)]
    public void Eurocode5_asks_for_predrilling_below_a_thickness(double headSide, double? holding, bool asked)
    {
        Eurocode5Nail nail = new(s_c24, Mm(2.5), Mm(5), Mm(headSide), Mm(30)) { HoldingThickness = holding is { } t ? Mm(t) : null };
        Finding? finding = Withdrawal.Eurocode5SmoothNail(nail).Findings.SingleOrDefault(f => f.Code == "fastening-eurocode5-predrill");
        Assert.Equal(asked, finding is not null);
        if (finding is not null)
        {
            Assert.Equal(Math.Min(headSide, holding ?? headSide), ValueOf(finding, "thickness"));
        }
    }

    [Fact]
    public void Eurocode5_predrilling_of_a_thick_nail_in_dense_wood() =>
        Assert.Equal(111, Withdrawal.Eurocode5SmoothNail(new CharacteristicDensity(600), Mm(8), Mm(100)).PredrillBelow!.Value.Millimeters, 1e-9); // (13 · 8 - 30) · 600/400, over 7 · 8

    [Theory]
    [InlineData(6, 36, 90, "")]
    [InlineData(12, 72, 30, "")]
    [InlineData(5.999999, 36, 90, "fastening-eurocode5-screw-diameter")]
    [InlineData(12.000001, 80, 90, "fastening-eurocode5-screw-diameter")]
    [InlineData(6, 35.999999, 90, "fastening-eurocode5-screw-penetration-short")]
    [InlineData(6, 36, 29.99, "fastening-eurocode5-screw-angle")]
    public void Eurocode5_screw_outside_its_range_has_a_value_and_a_caution(double diameter, double penetration, double angle, string code)
    {
        WithdrawalCapacity screw = Withdrawal.Eurocode5Screw(s_c24, Mm(diameter), Mm(penetration), Angle.FromDegrees(angle));
        Assert.True(screw.Force.Newtons > 0);
        Assert.False(screw.HasProblem);
        string[] expected = code.Length == 0 ? ["fastening-characteristic-not-design"] : [code, "fastening-characteristic-not-design"];
        Assert.Equal(expected, Codes(screw));
    }

    [Fact]
    public void Eurocode5_screw_along_the_grain_holds_less_by_a_sixth()
    {
        double across = Withdrawal.Eurocode5Screw(s_c24, Mm(8), Mm(60), Angle.FromDegrees(90)).Force.Newtons;
        Assert.Equal(across / 1.2, Withdrawal.Eurocode5Screw(s_c24, Mm(8), Mm(60), Angle.FromDegrees(0)).Force.Newtons, 1e-9);
        Assert.Equal(across / 1.05, Withdrawal.Eurocode5Screw(s_c24, Mm(8), Mm(60), Angle.FromDegrees(60)).Force.Newtons, 1e-9); // 1.2/4 + 3/4
    }

    [Fact]
    public void Eurocode5_screw_over_eight_millimetres_counts_whole() =>
        Assert.Equal( // 0.52 · 10^-0.5 · 60^-0.1 · 350^0.8 · 10 · 60, k_d = 1
            0.52 / Math.Sqrt(10) * Math.Exp(-0.1 * Math.Log(60)) * Math.Exp(0.8 * Math.Log(350)) * 600,
            Withdrawal.Eurocode5Screw(s_c24, Mm(10), Mm(60), Angle.FromDegrees(90)).Force.Newtons,
            1e-8);

    [Fact]
    public void Plywood_holds_a_share_and_says_whose_figure_it_is()
    {
        WithdrawalCapacity solid = Withdrawal.NdsNail(s_ovendry, Mm(1.6), Mm(30));
        Finding own = Assert.Single(solid.InPlywood().Findings);
        Assert.Equal(("fastening-plywood-factor", Severity.Note, SourceKind.Judgement), (own.Code, own.Severity, own.Source!.Kind));
        Finding supplied = Assert.Single(solid.InPlywood(0.7).Findings);
        Assert.Equal(SourceKind.Supplied, supplied.Source!.Kind);
        Assert.Equal(0.7 * solid.Force.Newtons, solid.InPlywood(0.7).Force.Newtons, 1e-9);
        Assert.Equal(0.7 * solid.PerLength!.Value.NewtonsPerMillimeter, solid.InPlywood(0.7).PerLength!.Value.NewtonsPerMillimeter, 1e-12);
        Assert.Equal(solid.InPlywood(0.7), solid.InPlywood().InPlywood(0.7));
        Assert.Null(solid.PlywoodFactor);
        Assert.Equal(0.7, solid.InPlywood(0.7).PlywoodFactor);
        Assert.Equal(40, WithdrawalCapacity.Supplied(Force.FromNewtons(50)).InPlywood().Force.Newtons);
    }

    [Fact]
    public void Plywood_holds_the_point_and_not_the_head()
    {
        WithdrawalCapacity head = Withdrawal.Eurocode5SmoothNail(new Eurocode5Nail(s_c24, Mm(2.5), Mm(5), Mm(12), Mm(100)) { PermanentLoad = false });
        Assert.Equal(287.875, head.InPlywood(0.5).Force.Newtons, 1e-9); // 0.5 · 612.5 at the point is still more than the head's 287.875
        Assert.Equal(122.5, head.InPlywood(0.2).Force.Newtons, 1e-9); // 0.2 · 612.5
    }

    [Fact]
    public void A_supplied_capacity_is_the_callers()
    {
        WithdrawalCapacity own = WithdrawalCapacity.Supplied(Force.FromKilonewtons(0.12));
        Assert.Equal(120, own.Force.Newtons);
        Assert.Equal(WithdrawalBasis.Supplied, own.Basis);
        Assert.Null(own.PerLength);
        Assert.Null(own.Penetration);
        Assert.Null(own.PenetrationInDiameters);
        Assert.Null(own.PredrillBelow);
        Assert.Empty(own.Findings);
        Assert.Equal("120 N, supplied", own.ToString());
        Assert.Equal([new Figure("force", 120, "N")], own.Figures());
        Assert.Equal(default, WithdrawalCapacity.Supplied(Force.FromNewtons(0)));
    }

    [Fact]
    public void Each_method_names_its_basis()
    {
        Assert.Equal(WithdrawalBasis.NdsReferenceDesign, Withdrawal.NdsNail(s_ovendry, Mm(2), Mm(20)).Basis);
        Assert.Equal(WithdrawalBasis.NdsReferenceDesign, Withdrawal.NdsWoodScrew(s_ovendry, Mm(2), Mm(20)).Basis);
        Assert.Equal(WithdrawalBasis.NdsReferenceDesign, Withdrawal.NdsLagScrew(s_ovendry, Mm(2), Mm(20)).Basis);
        Assert.Equal(WithdrawalBasis.Eurocode5Characteristic, Withdrawal.Eurocode5SmoothNail(s_c24, Mm(2), Mm(20)).Basis);
        Assert.Equal(WithdrawalBasis.Eurocode5Characteristic, Withdrawal.Eurocode5Screw(s_c24, Mm(6), Mm(40), Angle.FromDegrees(90)).Basis);
    }

    [Fact]
    public void Inch_and_millimetre_input_are_one()
    {
        WithdrawalCapacity inch = Withdrawal.NdsNail(s_ovendry, Length.FromInches(0.0625), Length.FromInches(1));
        WithdrawalCapacity millimetre = Withdrawal.NdsNail(s_ovendry, Mm(1.5875), Mm(25.4));
        Assert.Equal(millimetre, inch);
        Assert.True(inch == millimetre);
        Assert.Equal(millimetre.GetHashCode(), inch.GetHashCode());
        Assert.Equal(millimetre.Force.Newtons, inch.Force.Newtons);
        Assert.True(inch != Withdrawal.NdsNail(s_ovendry, Mm(1.5875), Mm(25.400001)));
        Assert.True(inch != Withdrawal.NdsWoodScrew(s_ovendry, Mm(1.5875), Mm(25.4)));
        Assert.False(inch.Equals((object)"25.4"));
    }

    [Fact]
    public void Every_figure_of_a_nail_with_its_members()
    {
        // 6.125 N/mm; 25 mm is 10 d: half of min(0.8 · 153.125; 287.875) = 122.5.
        IReadOnlyList<Figure> figures = Withdrawal.Eurocode5SmoothNail(new Eurocode5Nail(s_c24, Mm(2.5), Mm(5), Mm(12), Mm(25)) { PermanentLoad = false }).InPlywood().Figures();
        Assert.Equal(["force", "force-per-length", "penetration", "penetration-in-diameters", "short-penetration-factor", "predrill-below", "plywood-factor"], figures.Select(f => f.Name));
        double[] expected = [61.25, 4.9, 25, 10, 0.5, 17.5, 0.8];
        for (int i = 0; i < expected.Length; i++)
        {
            Assert.Equal(expected[i], figures[i].Value, 1e-9);
        }
    }

    [Fact]
    public void Text_does_not_follow_the_threads_culture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            WithdrawalCapacity nail = Withdrawal.Eurocode5SmoothNail(s_c24, Mm(2.5), Mm(25));
            Assert.Equal("76.56 N, Eurocode 5 characteristic value", nail.ToString());
            Assert.Contains("10 diameters", nail.Findings[1].Message, StringComparison.Ordinal);
            Assert.Contains("counts 0.5 of", nail.Findings[1].Message, StringComparison.Ordinal);
            Assert.Equal("smooth nail 2.5 mm, head 5.1 mm, through 12 mm, point 25.4 mm deep, 350 kg/m3, permanent load", new Eurocode5Nail(s_c24, Mm(2.5), Mm(5.1), Mm(12), Length.FromInches(1)).ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Every_method_explains_itself_in_steps_that_recompute()
    {
        Eurocode5Nail nail = new(s_c24, Mm(2.5), Mm(5), Mm(12), Mm(25)) { PermanentLoad = false };
        WithdrawalCapacity[] all =
        [
            Withdrawal.NdsNail(s_ovendry, Mm(1.6), Mm(30)), Withdrawal.NdsWoodScrew(s_ovendry, Mm(4), Mm(25)), Withdrawal.NdsLagScrew(s_ovendry, Mm(8), Mm(25)),
            Withdrawal.HandbookNail(s_at12, Mm(1.6), Mm(30)), Withdrawal.HandbookWoodScrew(s_at12, Mm(4), Mm(25)), Withdrawal.HandbookLagScrew(s_at12, Mm(8), Mm(25)),
            Withdrawal.Eurocode5SmoothNail(s_c24, Mm(2.5), Mm(19)), Withdrawal.Eurocode5SmoothNail(s_c24, Mm(2.5), Mm(25)), Withdrawal.Eurocode5SmoothNail(s_c24, Mm(2.5), Mm(40)),
            Withdrawal.Eurocode5SmoothNail(nail), Withdrawal.Eurocode5SmoothNail(nail with { PermanentLoad = true }),
            Withdrawal.Eurocode5Screw(s_c24, Mm(7), Mm(40), Angle.FromDegrees(35)), Withdrawal.Eurocode5Screw(s_c24, Mm(10), Mm(80), Angle.FromDegrees(90)),
        ];
        foreach (WithdrawalCapacity hold in all)
        {
            foreach (WithdrawalCapacity wood in new[] { hold, hold.InPlywood(0.75) })
            {
                Workings workings = wood.Explain();
                WorkingsCheck.Recompute(workings);
                Assert.Equal(("F", wood.Force.Newtons), (workings.Steps[^1].Value.Name, workings.Steps[^1].Value.Value));
            }
        }

        WorkingsCheck.Recompute(WithdrawalCapacity.Supplied(Force.FromNewtons(50)).InPlywood().Explain());
    }

    [Fact]
    public void Workings_name_the_basis_of_the_coefficient()
    {
        string text = Withdrawal.NdsNail(s_ovendry, Mm(1.6), Mm(30)).Explain().ToText();
        Assert.Contains("k = 1380 * 4.4482216152605 / (25.4 * 25.4)", text, StringComparison.Ordinal);
        Assert.Contains("W = k * G^2.5 * D", text, StringComparison.Ordinal);
        Assert.Contains("read in a copy", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plywood_factor_of_the_librarys_is_marked_as_judgement_in_the_workings()
    {
        WithdrawalCapacity solid = Withdrawal.NdsNail(s_ovendry, Mm(1.6), Mm(30));
        Assert.Contains("default, judgement", solid.InPlywood().Explain().ToText(), StringComparison.Ordinal);
        Assert.DoesNotContain("default, judgement", solid.InPlywood(0.7).Explain().ToText(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.0999, 1.6, 30, "specificGravity")]
    [InlineData(1.3001, 1.6, 30, "specificGravity")]
    [InlineData(double.NaN, 1.6, 30, "specificGravity")]
    [InlineData(0.5, 0, 30, "shank")]
    [InlineData(0.5, 20.000001, 30, "shank")]
    [InlineData(0.5, 1.6, -0.000001, "penetration")]
    [InlineData(0.5, 1.6, 500.000001, "penetration")]
    public void Impossible_input_is_named(double specificGravity, double shank, double penetration, string parameter)
    {
        ArgumentException thrown = Assert.ThrowsAny<ArgumentException>(() => Withdrawal.NdsNail(new(specificGravity), Mm(shank), Mm(penetration)));
        Assert.Equal(parameter, thrown.ParamName);
        Assert.Equal(parameter, Assert.Single(Withdrawal.CheckNdsNail(new(specificGravity), Mm(shank), Mm(penetration))).Parameter);
        Assert.Equal(parameter, Assert.Single(Withdrawal.CheckHandbookNail(new(specificGravity), Mm(shank), Mm(penetration))).Parameter);
        string thread = parameter == "penetration" ? "threadPenetration" : parameter;
        Assert.Equal(thread, Assert.Single(Withdrawal.CheckNdsWoodScrew(new(specificGravity), Mm(shank), Mm(penetration))).Parameter);
        Assert.Equal(thread, Assert.Single(Withdrawal.CheckNdsLagScrew(new(specificGravity), Mm(shank), Mm(penetration))).Parameter);
        Assert.Equal(thread, Assert.Single(Withdrawal.CheckHandbookWoodScrew(new(specificGravity), Mm(shank), Mm(penetration))).Parameter);
        Assert.Equal(thread, Assert.Single(Withdrawal.CheckHandbookLagScrew(new(specificGravity), Mm(shank), Mm(penetration))).Parameter);
        Assert.Equal(thread, Assert.ThrowsAny<ArgumentException>(() => Withdrawal.NdsLagScrew(new(specificGravity), Mm(shank), Mm(penetration))).ParamName);
    }

    [Theory]
    [InlineData(0.1, 20, 500)]
    [InlineData(1.3, 0.000001, 0)]
    public void The_ends_of_every_range_are_in_it(double specificGravity, double shank, double penetration)
    {
        Assert.Empty(Withdrawal.CheckNdsNail(new(specificGravity), Mm(shank), Mm(penetration)));
        Assert.True(Withdrawal.NdsNail(new(specificGravity), Mm(shank), Mm(penetration)).Force.Newtons >= 0);
    }

    [Fact]
    public void All_problems_are_reported_at_once()
    {
        Length undefined = new(1, (LengthUnit)999);
        Assert.Equal(["specificGravity", "shank", "penetration"], Withdrawal.CheckNdsNail(default, undefined, Mm(-1)).Select(p => p.Parameter));
        Assert.Equal(["density", "shank", "pointPenetration"], Withdrawal.CheckEurocode5SmoothNail(default, undefined, Mm(-1)).Select(p => p.Parameter));
        Assert.Equal(
            ["density", "threadDiameter", "threadPenetration", "angleToGrain"],
            Withdrawal.CheckEurocode5Screw(new(99.9), Mm(0), Mm(0), Angle.FromDegrees(90.1)).Select(p => p.Parameter));
        Eurocode5Nail nail = new(new(1300.1), undefined, Mm(61), Mm(-1), Mm(501)) { HoldingThickness = Mm(0) };
        Assert.Equal(
            ["nail.Density", "nail.Shank", "nail.HeadDiameter", "nail.HeadSideThickness", "nail.PointPenetration", "nail.HoldingThickness"],
            Withdrawal.CheckEurocode5SmoothNail(nail).Select(p => p.Parameter));
        Assert.Equal("nail.Density", Assert.Throws<ArgumentOutOfRangeException>(() => Withdrawal.Eurocode5SmoothNail(nail)).ParamName);
        Assert.Equal("nail.HeadDiameter", Assert.Single(Withdrawal.CheckEurocode5SmoothNail(new Eurocode5Nail(s_c24, Mm(2.5), Mm(2.4), Mm(12), Mm(30)))).Parameter);
        Assert.Empty(Withdrawal.CheckEurocode5SmoothNail(new Eurocode5Nail(s_c24, Mm(2.5), Mm(2.5), Mm(0), Mm(30))));
    }

    [Fact]
    public void Missing_and_odd_input_is_refused()
    {
        Assert.Equal("nail", Assert.Throws<ArgumentNullException>(() => Withdrawal.Eurocode5SmoothNail(null!)).ParamName);
        Assert.True(Assert.Single(Withdrawal.CheckEurocode5SmoothNail(null!)).IsMissing);
        Assert.Equal("screws", Assert.Throws<ArgumentOutOfRangeException>(() => Withdrawal.Eurocode5EffectiveScrews(0)).ParamName);
        Assert.Single(Withdrawal.CheckEurocode5EffectiveScrews(10_001));
        Assert.Empty(Withdrawal.CheckEurocode5EffectiveScrews(10_000));
        Assert.Equal(1, Withdrawal.Eurocode5EffectiveScrews(1));
        WithdrawalCapacity solid = Withdrawal.NdsNail(s_ovendry, Mm(1.6), Mm(30));
        foreach (double factor in new[] { 0, -1, 1.0001, double.NaN })
        {
            Assert.Equal("factor", Assert.ThrowsAny<ArgumentException>(() => solid.InPlywood(factor)).ParamName);
            Assert.Single(WithdrawalCapacity.CheckInPlywood(factor));
        }

        Assert.Empty(WithdrawalCapacity.CheckInPlywood(1));
        Assert.Equal("force", Assert.Throws<ArgumentOutOfRangeException>(() => WithdrawalCapacity.Supplied(Force.FromNewtons(-1))).ParamName);
        Assert.Equal("force", Assert.Throws<ArgumentException>(() => WithdrawalCapacity.Supplied(new Force(1, (ForceUnit)999))).ParamName);
        Assert.Single(WithdrawalCapacity.CheckSupplied(Force.FromNewtons(1_000_001)));
    }

    [Fact]
    public void A_finding_is_a_full_sentence_with_its_source()
    {
        WithdrawalCapacity[] all =
        [
            Withdrawal.NdsNail(s_ovendry, Mm(1.6), Mm(5)).InPlywood(), Withdrawal.NdsLagScrew(s_ovendry, Mm(8), Mm(5)), Withdrawal.HandbookNail(s_at12, Mm(1.6), Mm(5)),
            Withdrawal.Eurocode5SmoothNail(new Eurocode5Nail(s_c24, Mm(2.5), Mm(5), Mm(12), Mm(10))),
            Withdrawal.Eurocode5SmoothNail(s_c24, Mm(2.5), Mm(25)), Withdrawal.Eurocode5Screw(s_c24, Mm(4), Mm(5), Angle.FromDegrees(0)),
        ];
        foreach (Finding finding in all.SelectMany(hold => hold.Findings))
        {
            Assert.EndsWith(".", finding.Message, StringComparison.Ordinal);
            Assert.NotNull(finding.Source);
            Assert.NotEmpty(finding.Values);
            Assert.StartsWith("fastening-", finding.Code, StringComparison.Ordinal);
        }
    }

    private static List<string> Codes(WithdrawalCapacity hold) => [.. hold.Findings.Select(finding => finding.Code)];

    private static double ValueOf(Finding finding, string name) => Assert.Single(finding.Values, value => value.Name == name).Value;
}
