using System;
using System.Collections.Generic;
using System.Linq;
using FinishKit.Tests.Contracts;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>Rivet nuts: grip with its paint, thread shared, clearance, each at its limit; rows against the reference table.</summary>
public sealed class RivetNutTests
{
    private static readonly RivetNutJob s_job = FixingSamples.NutJob;

    [Fact]
    public void Fit()
    {
        #region example: RivetNut.Fit
        RivetNutSize maker = new("round M5", Mm(5), Mm(7), Mm(0.5), Mm(3));
        RivetNutJob job = new([new Layer(Mm(6.5)) { Name = "panel" }], Mm(1), Behind.Skin(Mm(30)), maker, Mm(5), Mm(12), [Mm(16), Mm(20), Mm(25)]) { Paint = Mm(0.2), Flange = Mm(1) };
        RivetNutFit fit = RivetNut.Fit(job);
        bool grips = fit.GripFits;                          // 1.2 mm is within 0.5 to 3
        double screw = fit.Chosen!.Length.Millimeters;      // 20: at worst its thread fills 5 to 12; 16 would share 4
        #endregion
        Assert.True(grips);
        Assert.Equal(1.2, fit.Grip.Millimeters, 1e-9);
        Assert.Equal(20, screw);
        Assert.Equal(7, fit.Chosen.WorstEngagement.Millimeters, 1e-9); // 0 + 20 - 0.5 - 6.5 = 13, cut at 12, less 5
        Assert.Equal(4, fit.Tried[0].WorstEngagement.Millimeters, 1e-9); // 16 - 0.5 - 6.5 = 9, less 5
        Assert.Equal(17.2, fit.Chosen.WorstClearance.Millimeters, 1e-9); // 1 + 1.2 + 30 less 1 + 20 + 0.5 - 6.5 = 15
        WorkingsCheck.Recompute(fit.Explain());
    }

    [Theory]
    [InlineData(0.3, 0.2, 0, true)] // exactly the least
    [InlineData(0.299999, 0.2, 0, false)]
    [InlineData(1, 0.5, 1.5, true)] // exactly the most
    [InlineData(1, 0.5, 1.500001, false)]
    [InlineData(3, 0, 0, true)]
    [InlineData(2.9, 0.2, 0, false)] // the bare metal alone would have fitted
    public void The_grip_counts_paint_and_mating_sheet(double metal, double paint, double mating, bool fits)
    {
        RivetNutFit fit = RivetNut.Fit(s_job with { Metal = Mm(metal), Paint = Mm(paint), MatingSheet = Mm(mating) });
        Assert.Equal(fits, fit.GripFits);
        Assert.Equal(!fits, Codes(fit).Contains("fastening-rivet-grip"));
        Assert.Equal(fits, fit.Chosen is not null);
    }

    [Fact]
    public void The_grip_is_judged_at_its_thinnest_and_at_its_thickest()
    {
        Assert.True(RivetNut.Fit(s_job with { Metal = TolerancedLength.PlusMinus(Mm(2.5), Mm(0.5)) }).GripFits);
        Assert.False(RivetNut.Fit(s_job with { Metal = TolerancedLength.PlusMinus(Mm(2.5), Mm(0.6)) }).GripFits);
        Assert.False(RivetNut.Fit(s_job with { Metal = TolerancedLength.PlusMinus(Mm(1), Mm(0.6)) }).GripFits);
    }

    [Fact]
    public void Thread_exactly_enough_and_clearance_exactly_kept_are_enough()
    {
        // 16 shares 4 at worst: 0.8 of a diameter of 5.
        Assert.Equal(16, RivetNut.Fit(s_job with { Engagement = 0.8 }).Chosen!.Length.Millimeters);
        Assert.Equal(20, RivetNut.Fit(s_job with { Engagement = 0.800001 }).Chosen!.Length.Millimeters);

        // 20 reaches 15 of the 1 + 30 at worst.
        Assert.NotNull(RivetNut.Fit(s_job with { RequiredClearance = Mm(16) }).Chosen);
        Assert.Null(RivetNut.Fit(s_job with { RequiredClearance = Mm(16.000001) }).Chosen);
    }

    [Fact]
    public void The_nut_itself_must_stay_clear_too()
    {
        // 16 reaches 11 only, the nut 12: of 1 + 11 = 12 nothing is left.
        RivetNutFit touching = RivetNut.Fit(s_job with { Engagement = 0.8, Behind = Behind.Skin(Mm(11)), RequiredClearance = Mm(0) });
        Assert.Equal(0, touching.Tried[0].WorstClearance.Millimeters, 1e-9);
        Assert.Null(touching.Chosen);
        Assert.Equal("fastening-rivet-none-fits", touching.Findings[0].Code);
        Assert.NotNull(RivetNut.Fit(s_job with { Engagement = 0.8, Behind = Behind.Skin(Mm(11.000001)), RequiredClearance = Mm(0) }).Chosen);
    }

    [Fact]
    public void A_nut_that_does_not_go_in_is_a_problem()
    {
        // Of 1 + 30 to the skin 5 are to stay: 26.
        Assert.Equal(false, RivetNut.Fit(s_job with { UnsetDepth = Mm(26.000001) }).GoesIn);
        Assert.Contains("fastening-rivet-no-room", Codes(RivetNut.Fit(s_job with { UnsetDepth = Mm(26.000001) })));
        Assert.Null(RivetNut.Fit(s_job with { UnsetDepth = Mm(26.000001) }).Chosen);
        Assert.Equal(true, RivetNut.Fit(s_job with { UnsetDepth = Mm(26) }).GoesIn);
        Assert.Null(RivetNut.Fit(s_job).GoesIn);

        // Touching never does, whatever is asked.
        Assert.Equal(false, RivetNut.Fit(s_job with { UnsetDepth = Mm(31), RequiredClearance = Mm(0) }).GoesIn);
        Assert.Equal(true, RivetNut.Fit(s_job with { UnsetDepth = Mm(30.999999), RequiredClearance = Mm(0) }).GoesIn);
    }

    /// <summary>1 of flange, 1 of metal, 0.2 of paint, a wire 22 behind: 24.2. A nut 24.1 deep before it is set would pass the wire by 0.1.</summary>
    [Fact]
    public void A_nut_that_is_pushed_past_a_wire_keeps_the_clearance_too()
    {
        RivetNutJob job = s_job with { Paint = Mm(0.2), Flange = Mm(1), Behind = Behind.Wire(Mm(22)) };
        RivetNutFit near = RivetNut.Fit(job with { UnsetDepth = Mm(24.1) });
        Assert.Equal(false, near.GoesIn);
        Assert.Null(near.Chosen);
        Finding finding = near.Findings[0];
        Assert.Equal("fastening-rivet-no-room", finding.Code);
        Assert.Equal(0.1, finding.Values.Single(static v => v.Name == "clearance").Value, 1e-9);
        Assert.Equal(10, finding.Values.Single(static v => v.Name == "required-clearance").Value);
        Assert.Equal(16, RivetNut.Fit(job with { UnsetDepth = Mm(14.2), Engagement = 0.8 }).Chosen!.Length.Millimeters); // exactly 10 left; 16 reaches 11 at worst, the set nut 12
    }

    [Fact]
    public void A_nut_whose_depth_before_setting_is_not_known_is_a_caution_unless_metal_is_behind()
    {
        const string Unknown = "fastening-rivet-unset-unknown";
        Assert.Equal(Severity.Caution, Assert.Single(RivetNut.Fit(s_job).Findings, static f => f.Code == Unknown).Severity);
        Assert.Contains(Unknown, Codes(RivetNut.Fit(s_job with { Behind = Behind.Wire(Mm(30)) })));
        Assert.DoesNotContain(Unknown, Codes(RivetNut.Fit(s_job with { Behind = new Behind(BehindKind.RibMetal, Mm(30)) })));
        Assert.DoesNotContain(Unknown, Codes(RivetNut.Fit(s_job with { UnsetDepth = Mm(16) })));
    }

    /// <summary>Setting draws a nut together: none is shallower before.</summary>
    [Fact]
    public void A_nut_shallower_before_it_is_set_than_after_is_refused()
    {
        Assert.Empty(RivetNut.Check(s_job with { UnsetDepth = Mm(12) }));
        Assert.Equal("job.UnsetDepth", Assert.Single(RivetNut.Check(s_job with { UnsetDepth = Mm(11.999999) })).Parameter);
        Assert.Equal("job.UnsetDepth", Assert.Single(RivetNut.Check(s_job with { UnsetDepth = Mm(0) })).Parameter);
    }

    /// <summary>By hand: M5 by 0.8 is 5 - 0.5196 = 4.4804 at its pitch diameter; half of pi 4.4804 x 7 is 49.264 mm2; 300/1.73205 = 173.205 MPa: 8532.8 N strip it, a third is 2844.3.</summary>
    [Fact]
    public void The_thread_of_the_nut_holds_a_third_of_what_strips_it()
    {
        RivetNutJob job = s_job with { Pitch = Mm(0.8), NutStrength = Pressure.FromMegapascals(300) };
        RivetNutFit fit = RivetNut.Fit(job);
        Assert.Equal(7, fit.Chosen!.WorstEngagement.Millimeters, 1e-9); // 20 - 0.5 - 6.5 = 13, cut at 12, less 5
        Assert.Equal(2844.3, fit.ThreadHold!.Value.Newtons, 0.1);
        Assert.Null(fit.Hold); // what holds the nut in the sheet is not known by that
        Assert.Contains("fastening-rivet-hold-unknown", Codes(fit));
        WorkingsCheck.Recompute(fit.Explain());

        // The lesser of the two counts, and it is said where that is the thread.
        RivetNutFit weak = RivetNut.Fit(job with { NutHold = Force.FromNewtons(2845) }), strong = RivetNut.Fit(job with { NutHold = Force.FromNewtons(2844) });
        Assert.Equal(2844.3, weak.Hold!.Value.Newtons, 0.1);
        Assert.Equal(2844, strong.Hold!.Value.Newtons);
        Assert.Equal(Severity.Caution, Assert.Single(weak.Findings, static finding => finding.Code == "fastening-rivet-thread-strips").Severity);
        Assert.DoesNotContain("fastening-rivet-thread-strips", Codes(strong));

        // The shorter screw shares 4 of 7.
        Assert.Equal(2844.3 * 4 / 7, RivetNut.Fit(job with { Engagement = 0.8 }).ThreadHold!.Value.Newtons, 0.1);
        Assert.Null(RivetNut.Fit(s_job).ThreadHold);
        Assert.Equal("job.Pitch", Assert.Single(RivetNut.Check(job with { Pitch = null })).Parameter);
        Assert.Empty(RivetNut.Check(job with { NutStrength = null }));
        Assert.Equal(["thread-safety-factor"], fit.DefaultsUsed.Select(static used => used.Figure.Name).Except(RivetNut.Fit(s_job).DefaultsUsed.Select(static used => used.Figure.Name)));
        Assert.Equal("job.Pitch", Assert.Single(RivetNut.Check(job with { Pitch = Mm(5) })).Parameter);
    }

    [Fact]
    public void What_is_from_memory_or_not_known_is_said()
    {
        Assert.Contains("fastening-rivet-from-memory", Codes(RivetNut.Fit(s_job with { Nut = RivetNutSize.All[3] })));
        Assert.DoesNotContain("fastening-rivet-from-memory", Codes(RivetNut.Fit(s_job with { Nut = RivetNutSize.All[0] })));
        Assert.DoesNotContain("fastening-rivet-from-memory", Codes(RivetNut.Fit(s_job)));
        Assert.All(new[] { "fastening-rivet-paint", "fastening-rivet-hold-unknown", "fastening-rivet-look-behind", "fastening-metal-swarf" }, code => Assert.Contains(code, Codes(RivetNut.Fit(s_job))));
        string swarf = RivetNut.Fit(s_job).Findings.Single(static finding => finding.Code == "fastening-metal-swarf").Message;
        Assert.All(new[] { "vacuum the swarf, also out of the cavity", "prime the edge", "let the primer dry before the fixing goes in" }, words => Assert.Contains(words, swarf, StringComparison.Ordinal));
        Assert.Empty(RivetNut.Fit((RivetNutJob)GoodValues.Of(typeof(RivetNutJob))).DefaultsUsed);
        Assert.Equal(5, RivetNut.Fit(s_job).DefaultsUsed.Count);
    }

    /// <summary>One row was read in a copy; the others are from memory, and say so (tables-fasteners.csv).</summary>
    [Fact]
    public void Rows_are_those_of_the_reference_table_and_keep_their_tags()
    {
        Assert.Equal(SourceReading.Copy, RivetNutSize.All[0].Source.Reading);
        Assert.All(RivetNutSize.All.Skip(1), static nut => Assert.Equal(SourceReading.Memory, nut.Source.Reading));
        string table = Repository.Read("tests", "FinishKit.Tests", "Reference", "tables-fasteners.csv");
        foreach ((string thread, string hole, string grips) in new[] { ("M4", "6.0", "0.5-2.0 (std), 2.0-3.5 mm"), ("M5", "7.0", "0.5-3.0, 3.0-5.5 mm"), ("M6", "9.0", "0.5-3.0, 3.0-5.5 mm"), ("M8", "11.0", "0.5-3.0, 3.0-5.5 mm") })
        {
            Assert.Contains($"\"rivet nut, round ribbed body\",{thread},,hole {hole} mm,\"grip {grips}\",,MEMORY", table, StringComparison.Ordinal);
            RivetNutSize[] rows = [.. RivetNutSize.All.Where(nut => nut.Name.StartsWith("round " + thread, StringComparison.Ordinal))];
            Assert.Equal(2, rows.Length);
            double[] numbers = [.. grips.Replace(" (std)", string.Empty, StringComparison.Ordinal).Replace(" mm", string.Empty, StringComparison.Ordinal).Split('-', ',').Select(static n => double.Parse(n, System.Globalization.CultureInfo.InvariantCulture))];
            Assert.Equal(numbers, new[] { rows[0].LeastGrip.Millimeters, rows[0].MostGrip.Millimeters, rows[1].LeastGrip.Millimeters, rows[1].MostGrip.Millimeters });
            Assert.All(rows, row => Assert.Equal(double.Parse(hole, System.Globalization.CultureInfo.InvariantCulture), row.Hole.Millimeters));
        }

        Assert.Equal((3.0, 5.6, 0.5, 1.5), (RivetNutSize.All[0].Thread.Millimeters, RivetNutSize.All[0].Hole.Millimeters, RivetNutSize.All[0].LeastGrip.Millimeters, RivetNutSize.All[0].MostGrip.Millimeters));
    }

    [Fact]
    public void All_problems_are_reported_at_once()
    {
        IReadOnlyList<InputProblem> problems = RivetNut.Check(s_job with { Metal = Mm(11), ThreadTo = Mm(5), Screws = [Mm(20), Mm(20)], Engagement = 0 });
        Assert.Equal(["job.Metal", "job.ThreadTo", "job.Screws[1]", "job.Engagement"], problems.Select(static p => p.Parameter));
        Assert.Throws<ArgumentOutOfRangeException>(() => RivetNut.Fit(s_job with { Metal = Mm(11) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RivetNutSize("a nut", Mm(5), Mm(5), Mm(0), Mm(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RivetNutSize("a nut", Mm(5), Mm(7), Mm(1), Mm(0.9)));
    }

    private static IEnumerable<string> Codes(RivetNutFit fit) => fit.Findings.Select(static f => f.Code);
}
