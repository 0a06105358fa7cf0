using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>Retention by worked examples, its verdicts at their limits, its defaults, and what it refuses.</summary>
public sealed class RetentionTests
{
    private const double G = 9.80665;

    [Fact]
    public void A_load_that_is_an_exact_multiple_of_the_capacity_takes_exactly_so_many()
    {
        // 10 kg at 1 g: 98.0665 N; fasteners of a tenth of it: ten, not eleven.
        RetentionCount ten = Retention.FastenersNeeded(Mass.FromKilograms(10), Supplied(G), 1);
        Assert.Equal(10, ten.Fasteners);
        Assert.Equal(1, ten.Utilisation!.Value, 1e-9);
        Assert.Equal(1, ten.MassPerFastener!.Value.Kilograms, 1e-12);
        Assert.Equal(11, Retention.FastenersNeeded(Mass.FromKilograms(10.000001), Supplied(G), 1).Fasteners);
    }

    [Fact]
    public void The_default_acceleration_is_said_and_marked()
    {
        RetentionCount board = Retention.FastenersNeeded(Mass.FromKilograms(2), Supplied(30));
        Assert.Equal(58.8399, board.Load.Newtons, 1e-9); // 2 · 3 · 9.80665
        Assert.Equal(2, board.Fasteners);
        Assert.Equal(58.8399 / 60, board.Utilisation!.Value, 1e-12);
        Assert.Equal(["acceleration", "design-factor"], board.DefaultsUsed.Select(d => d.Figure.Name));
        DefaultUsed used = board.DefaultsUsed[0];
        Assert.Equal(("acceleration", 3.0, SourceKind.Judgement), (used.Figure.Name, used.Figure.Value, used.Source.Kind));
        Assert.Equal(["fastening-adhesive-not-counted", "fastening-retention-road-only"], board.Findings.Select(f => f.Code));
        Assert.All(board.Findings, finding => Assert.Equal(Severity.Note, finding.Severity));
        Assert.Equal(["design-factor"], Retention.FastenersNeeded(Mass.FromKilograms(2), Supplied(30), 3).DefaultsUsed.Select(d => d.Figure.Name));
        Assert.Empty(default(RetentionCount).DefaultsUsed);
    }

    [Theory]
    [InlineData(0.5, "less than a rough road asks for")]
    [InlineData(1.99, "less than a rough road asks for")]
    [InlineData(2, "stands for a rough road")]
    [InlineData(5, "stands for a rough road")]
    [InlineData(5.01, "more than a rough road asks for")]
    [InlineData(20, "more than a rough road asks for")]
    public void No_acceleration_is_taken_for_a_crash(double g, string words)
    {
        Finding count = Assert.Single(Retention.FastenersNeeded(Mass.FromKilograms(2), Supplied(30), g).Findings, f => f.Code == "fastening-retention-road-only");
        Finding result = Assert.Single(Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(2), Supplied(30)) { Acceleration = g }).Findings, f => f.Code == "fastening-retention-road-only");
        Assert.Equal(count.Message, result.Message);
        Assert.Contains(words, count.Message, StringComparison.Ordinal);
        Assert.EndsWith("Nothing here says what holds in a crash.", count.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("default", count.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Less_than_gravity_does_not_hold_what_hangs()
    {
        Finding light = Assert.Single(Retention.FastenersNeeded(Mass.FromKilograms(12), Supplied(30), 0.99).Findings, f => f.Code == "fastening-retention-under-gravity");
        Assert.Equal(Severity.Caution, light.Severity);
        Assert.Equal(117.6798, Assert.Single(light.Values, v => v.Name == "load-at-rest").Value, 1e-9); // 12 · 9.80665
        Assert.Contains("fastening-retention-under-gravity", Codes(Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(12), Supplied(30)) { Acceleration = 0.5 }).Findings));
        Assert.DoesNotContain("fastening-retention-under-gravity", Codes(Retention.FastenersNeeded(Mass.FromKilograms(12), Supplied(30), 1).Findings));
    }

    [Fact]
    public void An_average_ultimate_load_is_not_taken_for_a_load_to_put_on()
    {
        // 54.12 · 0.5^2.5 · 1.6 · 30 = 459.223 N pulled it out on average: 150 N would take one, but of a fifth of it, 91.8447 N, it takes two.
        RetentionCount count = Retention.FastenersNeeded(Mass.FromKilograms(150 / (3 * G)), Withdrawal.HandbookNail(new(0.5), Mm(1.6), Mm(30)));
        Assert.Equal(2, count.Fasteners);
        Assert.Equal(0.2, count.DesignFactor);
        Assert.Equal(91.8447, count.DesignCapacity.Newtons, 0.00005);
        Assert.Equal(1, Retention.FastenersNeeded(Mass.FromKilograms(150 / (3 * G)), Supplied(459.22)).Fasteners);
    }

    [Fact]
    public void The_plain_question_refuses_smooth_nails_by_Eurocode5_too()
    {
        WithdrawalCapacity nail = Withdrawal.Eurocode5SmoothNail(new CharacteristicDensity(350), Mm(1.6), Mm(25));
        RetentionCount count = Retention.FastenersNeeded(Mass.FromKilograms(2), nail);
        Assert.True(count.HasProblem);
        Assert.Null(count.Fasteners);
        Assert.Equal(0, count.DesignCapacity.Newtons);
        Assert.Equal(nail, count.PerFastener);
        Assert.Equal(("fastening-eurocode5-permanent-load", Severity.Problem), (count.Findings[0].Code, count.Findings[0].Severity));
        Assert.DoesNotContain("fastening-eurocode5-short-term-only", Codes(count.Findings)); // the problem says it already
    }

    [Fact]
    public void The_gravest_finding_stands_first()
    {
        // The board's own caution and notes come before the capacity's problem as they are put together.
        WithdrawalCapacity shallow = Withdrawal.Eurocode5SmoothNail(new CharacteristicDensity(350), Mm(1.6), Mm(12));
        RetentionResult result = Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(0), shallow) { PermanentLoad = false, Acceleration = 0.5 });
        Assert.True(result.HasProblem);
        Assert.Equal(
            ["fastening-eurocode5-penetration-none", "fastening-retention-under-gravity", "fastening-eurocode5-short-term-only", "fastening-adhesive-not-counted", "fastening-retention-road-only"],
            Codes(result.Findings));
    }

    [Fact]
    public void A_design_factor_that_was_applied_is_not_asked_for_again()
    {
        HungMass ultimate = new(Mass.FromKilograms(2), Withdrawal.HandbookNail(new(0.5), Mm(1.6), Mm(30)));
        HungMass characteristic = new(Mass.FromKilograms(2), Withdrawal.Eurocode5Screw(new(350), Mm(6), Mm(40), Angle.FromDegrees(90)));
        string[] codes = ["fastening-ultimate-not-design", "fastening-characteristic-not-design"];
        foreach (HungMass hung in new[] { ultimate, characteristic })
        {
            Assert.Empty(Codes(Retention.FastenersNeeded(hung).Findings).Intersect(codes));
            Assert.Empty(Codes(Retention.FastenersNeeded(hung with { DesignFactor = 0.3 }).Findings).Intersect(codes));
            Assert.Empty(Codes(Retention.FastenersNeeded(hung.Mass, hung.PerFastener).Findings).Intersect(codes));
            Assert.Single(Codes(Retention.FastenersNeeded(hung with { DesignFactor = 1 }).Findings).Intersect(codes)); // nothing was taken off
        }
    }

    [Fact]
    public void Messages_say_against_what_and_count_one_fastener_as_one()
    {
        HungMass board = new(Mass.FromKilograms(12), Supplied(40)) { Fasteners = 1 };
        Assert.Equal(
            "1 fastener of 40 N each (supplied) does not hold 353.04 N (12 kg at 3 g): it takes 9, 8 more.",
            Assert.Single(Retention.FastenersNeeded(board).Findings, f => f.Code == "fastening-retention-short").Message);
        Assert.StartsWith(
            "3 fasteners of 20 N each (0.5 of 40 N, supplied) do not hold 253.04 N (12 kg at 3 g, less 100 N on adhesive)",
            Retention.FastenersNeeded(board with { Fasteners = 3, DesignFactor = 0.5, AdhesiveStrength = Pressure.FromKilopascals(10), AdhesiveArea = Area.FromSquareCentimeters(100) }).Findings[0].Message,
            StringComparison.Ordinal);
        Assert.Equal("29.42 N (1 kg at 3 g) on 1 fastener of 80.74 N each (NDS reference design value)", Retention.FastenersNeeded(Mass.FromKilograms(1), Withdrawal.NdsNail(new(0.5), Mm(1.6), Mm(30))).ToString());
        Assert.Equal(
            "29.42 N (1 kg at 3 g), which fasteners of 0 N each (Eurocode 5 under a permanent load) do not hold",
            Retention.FastenersNeeded(Mass.FromKilograms(1), Withdrawal.Eurocode5SmoothNail(new CharacteristicDensity(350), Mm(1.6), Mm(25))).ToString());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1e-5)] // 29.4 N on fasteners of 0.00001 N: 2.9 million
    public void A_fastener_that_holds_next_to_nothing_is_a_problem_and_not_an_exception(double newtons)
    {
        RetentionCount none = Retention.FastenersNeeded(Mass.FromKilograms(1), Supplied(newtons));
        Assert.Null(none.Fasteners);
        Assert.Null(none.MassPerFastener);
        Assert.Null(none.Utilisation);
        Assert.True(none.HasProblem);
        Assert.Equal(("fastening-no-capacity", Severity.Problem), (none.Findings[0].Code, none.Findings[0].Severity));
    }

    [Fact]
    public void A_million_fasteners_are_the_most()
    {
        Assert.Equal(1_000_000, Retention.FastenersNeeded(Mass.FromKilograms(1000), Supplied(0.00980665), 1).Fasteners); // 9806.65 N
        Assert.Null(Retention.FastenersNeeded(Mass.FromKilograms(1000.001), Supplied(0.00980665), 1).Fasteners);
    }

    [Fact]
    public void No_mass_takes_no_fasteners()
    {
        RetentionCount none = Retention.FastenersNeeded(Mass.FromKilograms(0), Supplied(0));
        Assert.Equal(0, none.Fasteners);
        Assert.Equal(0, none.Utilisation);
        Assert.False(none.HasProblem);
        Assert.Empty(default(RetentionCount).Findings);
        Assert.Equal(0, default(RetentionCount).Fasteners);
    }

    [Theory] // basis, capacity of one in N, and the design load of it
    [InlineData(WithdrawalBasis.NdsReferenceDesign, 1)]
    [InlineData(WithdrawalBasis.HandbookAverageUltimate, 0.2)]
    [InlineData(WithdrawalBasis.Eurocode5Characteristic, 0.46153846153846)] // 0.6/1.3, from memory
    [InlineData(WithdrawalBasis.Supplied, 1)]
    public void Each_basis_has_its_design_factor_and_says_so(WithdrawalBasis basis, double factor)
    {
        WithdrawalCapacity one = basis switch
        {
            WithdrawalBasis.NdsReferenceDesign => Withdrawal.NdsNail(new(0.5), Mm(1.6), Mm(30)),
            WithdrawalBasis.HandbookAverageUltimate => Withdrawal.HandbookNail(new(0.5), Mm(1.6), Mm(30)),
            WithdrawalBasis.Eurocode5Characteristic => Withdrawal.Eurocode5Screw(new(350), Mm(6), Mm(40), Angle.FromDegrees(90)),
            _ => WithdrawalCapacity.Supplied(Force.FromNewtons(50)),
        };
        RetentionResult result = Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(5), one));
        Assert.Equal(factor, result.DesignFactor, 1e-12);
        Assert.Equal(one.Force.Newtons * factor, result.DesignCapacity.Newtons, 1e-9);
        Assert.Equal(["acceleration", "design-factor"], result.DefaultsUsed.Select(d => d.Figure.Name));
        if (basis == WithdrawalBasis.Eurocode5Characteristic)
        {
            Assert.Equal(SourceReading.Memory, result.DefaultsUsed[1].Source.Reading);
        }

        RetentionResult own = Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(5), one) { DesignFactor = 0.5, Acceleration = 2 });
        Assert.Empty(own.DefaultsUsed);
        Assert.Equal(one.Force.Newtons * 0.5, own.DesignCapacity.Newtons, 1e-9);
        Assert.Equal(5 * 2 * G, own.Load.Newtons, 1e-9);
    }

    [Fact]
    public void A_default_plywood_factor_is_among_the_defaults()
    {
        WithdrawalCapacity one = WithdrawalCapacity.Supplied(Force.FromNewtons(50));
        Assert.Equal(["acceleration", "design-factor", "plywood-factor"], Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(5), one.InPlywood())).DefaultsUsed.Select(d => d.Figure.Name));
        Assert.Equal(["acceleration", "design-factor"], Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(5), one.InPlywood(0.7))).DefaultsUsed.Select(d => d.Figure.Name));
    }

    [Fact]
    public void Smooth_nails_do_not_hang_a_board_by_Eurocode5()
    {
        WithdrawalCapacity nail = Withdrawal.Eurocode5SmoothNail(new CharacteristicDensity(350), Mm(1.6), Mm(25));
        Assert.False(nail.HasProblem);
        RetentionResult hung = Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(2), nail) { Fasteners = 100 });
        Assert.True(hung.HasProblem);
        Assert.False(hung.Holds);
        Assert.Null(hung.FastenersNeeded);
        Assert.Null(hung.Utilisation);
        Assert.Equal(0, hung.DesignCapacity.Newtons);
        Assert.Single(hung.Findings, finding => finding.Code == "fastening-eurocode5-permanent-load" && finding.Severity == Severity.Problem);

        RetentionResult gust = Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(2), nail) { PermanentLoad = false });
        Assert.False(gust.HasProblem);
        Assert.Equal(2, gust.FastenersNeeded); // 20e-6 · 350² · 1.6 · 25 · 0.6/1.3 = 45.23 N against 58.84 N

        WithdrawalCapacity refused = Withdrawal.Eurocode5SmoothNail(new Eurocode5Nail(new(350), Mm(1.6), Mm(3), Mm(12), Mm(25)));
        Assert.Single(Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(2), refused)).Findings, finding => finding.Code == "fastening-eurocode5-permanent-load");
    }

    [Theory]
    [InlineData(9, true)]
    [InlineData(8, false)]
    public void Fasteners_that_are_there_hold_or_do_not(int there, bool holds)
    {
        // 12 kg at 3 g is 353.0394 N; over 40 N it takes 8.83, so nine.
        RetentionResult result = Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(12), WithdrawalCapacity.Supplied(Force.FromNewtons(40))) { Fasteners = there });
        Assert.Equal(holds, result.Holds);
        Assert.Equal(!holds, result.HasProblem);
        Assert.Equal(there, result.FastenersGiven);
        Assert.Equal(353.0394 / (40 * there), result.Utilisation!.Value, 1e-12);
        Assert.Equal(12.0 / there, result.MassPerFastener!.Value.Kilograms, 1e-12);
        Finding? finding = result.Findings.SingleOrDefault(f => f.Code == "fastening-retention-short");
        Assert.Equal(!holds, finding is not null);
    }

    [Fact]
    public void Adhesive_counts_only_with_a_strength()
    {
        HungMass board = new() { Mass = Mass.FromKilograms(12), PerFastener = WithdrawalCapacity.Supplied(Force.FromNewtons(40)), Acceleration = 3 };
        RetentionResult without = Retention.FastenersNeeded(board);
        Assert.Equal(9, without.FastenersNeeded);
        Assert.Equal(Severity.Note, Assert.Single(without.Findings, f => f.Code == "fastening-adhesive-not-counted").Severity);

        // 0.01 N/mm² on 100 cm² holds 100 N; 253.0394 N over 40 N is 6.33.
        RetentionResult with = Retention.FastenersNeeded(board with { AdhesiveStrength = Pressure.FromKilopascals(10), AdhesiveArea = Area.FromSquareCentimeters(100) });
        Assert.Equal(100, with.AdhesiveCapacity.Newtons, 1e-9);
        Assert.Equal(253.0394, with.CarriedByFasteners.Newtons, 1e-9);
        Assert.Equal(7, with.FastenersNeeded);
        Assert.Equal(Severity.Caution, Assert.Single(with.Findings, f => f.Code == "fastening-adhesive-counted").Severity);
        Assert.DoesNotContain("fastening-adhesive-not-counted", Codes(with.Findings));

        RetentionResult glued = Retention.FastenersNeeded(board with { AdhesiveStrength = Pressure.FromMegapascals(1), AdhesiveArea = Area.FromSquareMillimeters(400), RunLength = Mm(1000) });
        Assert.Equal(0, glued.FastenersNeeded);
        Assert.True(glued.Holds);
        Assert.Null(glued.Spacing);
        Assert.Null(glued.FastenersPerRow);
        Assert.Null(glued.MassPerFastener);
        Assert.Equal(0, glued.Utilisation);
    }

    [Theory]
    [InlineData(3000, 1, 9, 333.333333)] // nine in one row; rounded down on the grid so that nine fit
    [InlineData(3000, 2, 5, 600)] // five and four
    [InlineData(3000, 9, 1, 3000)]
    [InlineData(3000, 20, 1, 3000)]
    public void Spacing_is_the_run_over_the_fasteners_of_a_row(double run, int rows, int perRow, double spacing)
    {
        RetentionResult result = Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(12), WithdrawalCapacity.Supplied(Force.FromNewtons(40))) { RunLength = Mm(run), Rows = rows });
        Assert.Equal(perRow, result.FastenersPerRow);
        Assert.Equal(spacing, result.Spacing!.Value.Millimeters);
    }

    [Fact]
    public void A_group_of_screws_holds_less_than_its_parts_by_Eurocode5()
    {
        // One screw: 2865.8184 · 0.6/1.3 = 1322.685 N. 1000 kg at 3 g: 29419.95 N, 22.2426 screws; ^(1/0.9) = 31.39: 32.
        WithdrawalCapacity screw = Withdrawal.Eurocode5Screw(new CharacteristicDensity(350), Mm(6), Mm(40), Angle.FromDegrees(90));
        RetentionResult result = Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(1000), screw));
        Assert.Equal(32, result.FastenersNeeded);
        Assert.Equal(22.2426 / Math.Exp(0.9 * Math.Log(32)), result.Utilisation!.Value, 1e-5);
        Finding group = Assert.Single(result.Findings, f => f.Code == "fastening-screw-group");
        Assert.Equal(Math.Exp(0.9 * Math.Log(32)), group.Values[1].Value, 1e-9);
        Assert.DoesNotContain("fastening-screw-group", Codes(Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(10), screw)).Findings));
    }

    [Fact]
    public void What_the_capacity_has_to_say_is_handed_on()
    {
        WithdrawalCapacity shortNail = Withdrawal.NdsNail(new(0.5), Mm(1.6), Mm(5)).InPlywood();
        List<string> codes = Codes(Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(2), shortNail)).Findings);
        Assert.Contains("fastening-nds-penetration-short", codes);
        Assert.Contains("fastening-plywood-factor", codes);
        Assert.True(Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(2), Withdrawal.Eurocode5SmoothNail(new CharacteristicDensity(350), Mm(1.6), Mm(12))) { PermanentLoad = false }).HasProblem);
    }

    [Fact]
    public void Steps_recompute()
    {
        WithdrawalCapacity screw = Withdrawal.Eurocode5Screw(new CharacteristicDensity(350), Mm(6), Mm(40), Angle.FromDegrees(90));
        WithdrawalCapacity nail = Withdrawal.Eurocode5SmoothNail(new CharacteristicDensity(350), Mm(1.6), Mm(25));
        HungMass board = new(Mass.FromKilograms(12), WithdrawalCapacity.Supplied(Force.FromNewtons(40)));
        HungMass[] all =
        [
            board, board with { Fasteners = 7 }, board with { DesignFactor = 0.3, Acceleration = 2.5 }, board with { PerFastener = screw, Mass = Mass.FromKilograms(700) },
            board with { PerFastener = screw, Fasteners = 4 }, board with { PerFastener = nail }, board with { PerFastener = nail, PermanentLoad = false },
            board with { PerFastener = Withdrawal.HandbookNail(new(0.5), Mm(1.6), Mm(20)) }, board with { Mass = Mass.FromKilograms(0) },
            board with { AdhesiveStrength = Pressure.FromKilopascals(10), AdhesiveArea = Area.FromSquareCentimeters(100) },
            board with { AdhesiveStrength = Pressure.FromMegapascals(10), AdhesiveArea = Area.FromSquareCentimeters(100) },
        ];
        foreach (HungMass hung in all)
        {
            WorkingsCheck.Recompute(Retention.FastenersNeeded(hung).Explain());
        }

        WorkingsCheck.Recompute(Retention.FastenersNeeded(Mass.FromKilograms(12), Supplied(40)).Explain());
        WorkingsCheck.Recompute(Retention.FastenersNeeded(Mass.FromKilograms(12), Supplied(0)).Explain());
    }

    [Fact]
    public void Figures_are_flat()
    {
        RetentionResult result = Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(12), WithdrawalCapacity.Supplied(Force.FromNewtons(40))) { Fasteners = 10, RunLength = Mm(3000) });
        (string, double)[] expected =
        [
            ("mass", 12), ("acceleration", 3), ("load", 353.0394), ("adhesive-capacity", 0), ("carried-by-fasteners", 353.0394), ("design-factor", 1), ("capacity", 40),
            ("fasteners-needed", 9), ("fasteners-given", 10), ("mass-per-fastener", 1.2), ("utilisation", 0.8825985), ("fasteners-per-row", 10), ("spacing", 300),
        ];
        Assert.Equal(expected, result.Figures().Select(f => (f.Name, Math.Round(f.Value, 9))));
        (string, double)[] plain = [("mass", 12), ("acceleration", 3), ("load", 353.0394), ("design-factor", 1), ("capacity", 40), ("fasteners-needed", 9), ("mass-per-fastener", 1.333333333), ("utilisation", 0.980665)];
        Assert.Equal(plain, Retention.FastenersNeeded(Mass.FromKilograms(12), Supplied(40)).Figures().Select(f => (f.Name, Math.Round(f.Value, 9))));
    }

    [Fact]
    public void Text_does_not_follow_the_threads_culture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            HungMass hung = new(Mass.FromKilograms(12.5), WithdrawalCapacity.Supplied(Force.FromNewtons(40.5))) { Fasteners = 9 };
            Assert.Equal("12.5 kg on fasteners of 40.5 N, supplied", hung.ToString());
            Assert.Equal("367.75 N (12.5 kg at 3 g) on fasteners of 40.5 N each (supplied): 10 needed, 9 there: does not hold", Retention.FastenersNeeded(hung).ToString());
            Assert.Equal("367.75 N (12.5 kg at 3 g) on 10 fasteners of 40.5 N each (supplied)", Retention.FastenersNeeded(Mass.FromKilograms(12.5), Supplied(40.5)).ToString());
            Assert.Equal("367.75 N (12.5 kg at 3 g), which fasteners of 0 N each (supplied) do not hold", Retention.FastenersNeeded(Mass.FromKilograms(12.5), Supplied(0)).ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Answers_are_equal_by_their_figures()
    {
        RetentionCount one = Retention.FastenersNeeded(Mass.FromKilograms(12), Supplied(40));
        RetentionCount grams = Retention.FastenersNeeded(Mass.FromGrams(12000), WithdrawalCapacity.Supplied(Force.FromKilonewtons(0.04)));
        Assert.True(one == grams);
        Assert.Equal(one.GetHashCode(), grams.GetHashCode());
        Assert.True(one != Retention.FastenersNeeded(Mass.FromKilograms(12), Supplied(41)));
        Assert.True(one != Retention.FastenersNeeded(Mass.FromKilograms(13), Supplied(40)));
        Assert.True(one != Retention.FastenersNeeded(Mass.FromKilograms(12), Supplied(40), 4));
        Assert.False(one.Equals((object)12));
    }

    [Fact]
    public void Impossible_input_is_named_all_at_once()
    {
        Assert.Equal(["mass", "acceleration"], Retention.CheckFastenersNeeded(Mass.FromKilograms(-1), default(WithdrawalCapacity), 0).Select(p => p.Parameter));
        Assert.Equal("mass", Assert.Throws<ArgumentOutOfRangeException>(() => Retention.FastenersNeeded(Mass.FromKilograms(10_000.1), Supplied(1))).ParamName);
        Assert.Equal("acceleration", Assert.Throws<ArgumentException>(() => Retention.FastenersNeeded(Mass.FromKilograms(1), Supplied(1), double.NaN)).ParamName);
        HungMass bad = new(new Mass(1, (MassUnit)999), default)
        {
            Acceleration = 101,
            DesignFactor = 0,
            Fasteners = 0,
            RunLength = Mm(0),
            Rows = 0,
            AdhesiveStrength = new Pressure(1, (PressureUnit)999),
            AdhesiveArea = Area.FromSquareMeters(101),
        };
        Assert.Equal(
            ["hung.Mass", "hung.Acceleration", "hung.DesignFactor", "hung.Fasteners", "hung.RunLength", "hung.Rows", "hung.AdhesiveStrength", "hung.AdhesiveArea"],
            Retention.CheckFastenersNeeded(bad).Select(p => p.Parameter));
        Assert.Equal("hung.Mass", Assert.Throws<ArgumentException>(() => Retention.FastenersNeeded(bad)).ParamName);
        Assert.Equal("hung", Assert.Throws<ArgumentNullException>(() => Retention.FastenersNeeded(null!)).ParamName);
        Assert.True(Assert.Single(Retention.CheckFastenersNeeded(null!)).IsMissing);
        HungMass board = new(Mass.FromKilograms(1), default);
        Assert.Equal("hung.AdhesiveArea", Assert.Single(Retention.CheckFastenersNeeded(board with { AdhesiveStrength = Pressure.FromMegapascals(1) })).Parameter);
        Assert.Equal("hung.AdhesiveStrength", Assert.Single(Retention.CheckFastenersNeeded(board with { AdhesiveArea = Area.FromSquareMillimeters(1) })).Parameter);
        Assert.Empty(Retention.CheckFastenersNeeded(board));
        Assert.Empty(Retention.CheckFastenersNeeded(Mass.FromKilograms(10_000), Supplied(1e6), 100));
    }

    [Fact]
    public void A_default_used_needs_a_source() =>
        Assert.Equal("source", Assert.Throws<ArgumentNullException>(() => new DefaultUsed(default, null!)).ParamName);

    private static WithdrawalCapacity Supplied(double newtons) => WithdrawalCapacity.Supplied(Force.FromNewtons(newtons));

    private static List<string> Codes(IEnumerable<Finding> findings) => [.. findings.Select(finding => finding.Code)];
}
