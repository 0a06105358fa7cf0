using System.Collections.Generic;
using System.Linq;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Slats;

/// <summary>Spreads worked by hand, and the demo van's ceiling. Gaps of 6 to 10 mm: common practice, no published source.</summary>
public sealed class SlatSpreadTests
{
    /// <summary>
    /// The demo van: chord 1506, rise 75 in front: R = 1506²/600 + 37.5 = 3817.56, arc 2 R 2 atan(150/1506) = 1515.94. Rear 1440, 68: 1448.55.
    /// 32 slats: (1515.94 - 1280)/31 = 7.61 and 168.55/31 = 5.44; 31: 275.94/30 = 9.20 and 208.55/30 = 6.95.
    /// </summary>
    [Fact]
    public void Of_the_demo_vans_ceiling_31_slats_serve_both_ends_and_32_do_not()
    {
        CircularArc front = Arc.FromChordAndRise(Mm(1506), Mm(75)), rear = Arc.FromChordAndRise(Mm(1440), Mm(68));
        SlatChoice both = SlatSpread.Spread(new SlatRun(front.ArcLength, Mm(40)) { Stations = [rear.ArcLength] });
        Assert.Equal(31, both.Recommended!.Count);
        Assert.Equal(9.20, both.Recommended.Gaps[0].Millimeters, 0.005);
        Assert.Equal(6.95, both.Recommended.Gaps[1].Millimeters, 0.005);
        SlatCount more = both.Counts.Single(static count => count.Count == 32);
        Assert.False(more.ServesEveryStation);
        Assert.Equal(7.61, more.Gaps[0].Millimeters, 0.005);
        Assert.Equal(5.44, more.Gaps[1].Millimeters, 0.005);

        // On 10 mm slats in front: 2 x 10 x sin((40 + 7.61)/7635) = 0.1247 less at the face.
        Assert.Equal(7.49, more.OnCurve(front.Radius, Mm(10)).GapAtFace.Millimeters, 0.005);
        Assert.Equal(32, SlatSpread.Spread(new SlatRun(front.ArcLength, Mm(40))).Recommended!.Count); // in front alone 7.61 is nearest to 8
    }

    [Fact]
    public void Coverage_is_slats_over_width()
    {
        SlatCount count = SlatSpread.Spread(Mm(1000), Mm(40), Mm(6), Mm(10)).Recommended!;
        Assert.Equal(21, count.Count); // (1000 + 8)/48 = 21: 160/20 = 8 exactly
        Assert.Equal(8, count.Gaps[0].Millimeters);
        Assert.Equal(0.84, count.Coverages[0], 12);
    }

    /// <summary>21 closed slats of 40 have gaps of exactly 8 over 1000. A nanometre less of width and 8 is too much to ask; a nanometre more and 8 is too little to allow.</summary>
    [Theory]
    [InlineData(1000, 1)]
    [InlineData(999.999999, 0)]
    [InlineData(1000.000001, 0)]
    public void A_limit_exactly_met_is_met(double width, int numbers) => Assert.Equal(numbers, SlatSpread.Spread(Mm(width), Mm(40), Mm(8), Mm(8)).Counts.Count);

    /// <summary>Closed 1000: 20 slats 200/19 = 10.53, 21: 8, 22: 120/21 = 5.71. Open: 20 slats 200/21 = 9.52, 21: 160/22 = 7.27, 22: 120/23 = 5.22; 7.27 is nearer 8.</summary>
    [Theory]
    [InlineData(SlatEnds.Closed, "21", 8, 0)]
    [InlineData(SlatEnds.Open, "20 21", 7.272727, 7.272727)]
    public void Ends_closed_and_open(SlatEnds ends, string numbers, double gap, double firstEdge)
    {
        SlatChoice choice = SlatSpread.Spread(new SlatRun(Mm(1000), Mm(40)) { Ends = ends });
        Assert.Equal(numbers, string.Join(" ", choice.Counts.Select(static count => count.Count)));
        Assert.Equal(21, choice.Recommended!.Count);
        Assert.Equal(gap, choice.Recommended.Gaps[0].Millimeters);
        Assert.Equal(firstEdge, choice.Recommended.SetOut().Marks[0].Exact.Millimeters);
        Assert.Equal(1000 - firstEdge - 40, choice.Recommended.SetOut().Marks[20].Exact.Millimeters, 1e-6);
    }

    /// <summary>Open 120, slats of 20: 3 slats 60/4 = 15, 4 slats 40/5 = 8. The middle of 8 to 15 is 11.5, 3.5 from both.</summary>
    [Fact]
    public void Of_two_numbers_as_near_the_middle_the_fewer_is_taken()
    {
        SlatChoice choice = SlatSpread.Spread(new SlatRun(Mm(120), Mm(20)) { Ends = SlatEnds.Open, LeastGap = Mm(8), GreatestGap = Mm(15) });
        Assert.Equal([3, 4], choice.Counts.Select(static count => count.Count));
        Assert.Equal(3, choice.Recommended!.Count);
    }

    /// <summary>31 slats over 1500: pitch 1460/30 = 48.6667: 0, 48.67, 97.33, 146 ... 1460, on whole millimetres 0, 49, 97, 146. Rounded from slat to slat at 49 the last would be at 1470.</summary>
    [Fact]
    public void Set_out_is_rounded_once_from_each_exact_place()
    {
        SlatSetOut setOut = SlatSpread.Spread(Mm(1500), Mm(40), Mm(6), Mm(10)).Recommended!.SetOut();
        Assert.Equal([0, 49, 97, 146, 195, 243], setOut.Marks.Take(6).Select(static mark => mark.Mark.Millimeters));
        Assert.Equal(1460, setOut.Marks[30].Mark.Millimeters);
        Assert.Equal(0.333333, setOut.GreatestError.Millimeters);
        Assert.Equal(1500, setOut.Width.Millimeters);
    }

    /// <summary>Two slats of 10 over 30.5: the second at 20.5, which goes to 21, half away from the left end (half to even would be 20); on sixteenths 20.5/1.5875 = 12.91 to 13 x 1.5875 = 20.6375.</summary>
    [Theory]
    [InlineData(SetOutStep.WholeMillimetre, 21, 0.5)]
    [InlineData(SetOutStep.SixteenthInch, 20.6375, 0.1375)]
    public void A_half_goes_away_from_the_left_end(SetOutStep step, double mark, double error)
    {
        SlatSetOut setOut = SlatSpread.Spread(new SlatRun(Mm(30.5), Mm(10)) { LeastGap = Mm(10), GreatestGap = Mm(11), RoundTo = step }).Recommended!.SetOut();
        Assert.Equal(mark, setOut.Marks[1].Mark.Millimeters);
        Assert.Equal(error, setOut.GreatestError.Millimeters);
    }

    /// <summary>Widths 1000 and 960, mean 980: 20 slats of 40 closed leave 180/19 = 9.4737, 21 leave 140/20 = 7: 1 from 8, where 20 are 1.47 off. End slats 40 + 10 and 40 - 10.</summary>
    [Fact]
    public void End_slats_take_the_taper_and_the_gap_stays()
    {
        SlatChoice choice = SlatSpread.Spread(new SlatRun(Mm(1000), Mm(40)) { Stations = [Mm(960)], Taper = SlatTaper.EndSlatsTapered });
        SlatCount count = choice.Recommended!;
        Assert.Equal(21, count.Count);
        Assert.Equal([7, 7], count.Gaps.Select(static gap => gap.Millimeters));
        Assert.Equal([50, 30], count.EndSlats.Select(static slat => slat.Millimeters));
        Assert.Equal(1 - (140 / 1000.0), count.Coverages[0], 12);
        Assert.Equal(1 - (140 / 960.0), count.Coverages[1], 12);
        Assert.Equal([0, 57, 104], count.SetOut(0).Marks.Take(3).Select(static mark => mark.Exact.Millimeters));
        Assert.Equal([0, 37, 84], count.SetOut(1).Marks.Take(3).Select(static mark => mark.Exact.Millimeters));
        Assert.Equal(930, count.SetOut(1).Marks[20].Exact.Millimeters);
        Assert.Equal(["slats-end-slat-wide", "slats-look-behind"], choice.Findings.Select(static finding => finding.Code));
    }

    /// <summary>1000 and 915: end slats 40 - 21.25 = 18.75, under 20. Mean 957.5: 20 slats leave 157.5/19 = 8.289.</summary>
    [Fact]
    public void An_end_slat_narrower_than_half_is_a_caution()
    {
        SlatRun run = new(Mm(1000), Mm(40)) { Stations = [Mm(915)], Taper = SlatTaper.EndSlatsTapered };
        Finding narrow = SlatSpread.Spread(run).Findings[0];
        Assert.Equal(("slats-end-slat-narrow", Severity.Caution), (narrow.Code, narrow.Severity));
        Assert.Contains(new Figure("least-end-slat", 18.75, "mm"), narrow.Values);
        Assert.DoesNotContain(SlatSpread.Spread(run with { Stations = [Mm(920)] }).Findings, static finding => finding.Code == "slats-end-slat-narrow"); // 20 is half of 40
    }

    /// <summary>1000 and 840: 80 on each side is twice the slat, 40 - 40 = 0.</summary>
    [Fact]
    public void A_taper_that_leaves_nothing_of_the_end_slats_is_a_problem()
    {
        SlatRun run = new(Mm(1000), Mm(40)) { Stations = [Mm(840)], Taper = SlatTaper.EndSlatsTapered };
        SlatChoice none = SlatSpread.Spread(run);
        Assert.True(none.HasProblem);
        Assert.Equal("slats-taper-too-much", none.Findings[0].Code);
        Assert.Null(none.Remedy!.LeastGap);

        // The mean of 920 takes 19 slats of (920 - 180)/19 = 38.9 to (920 - 108)/19 = 42.736842; more than 40 leaves something of the end slats.
        Assert.Equal(19, none.Remedy.Nearest.Count);
        Assert.Equal((40.000001, 42.736842), (none.Remedy.LeastSlatWidth!.Value.Millimeters, none.Remedy.GreatestSlatWidth!.Value.Millimeters));
        Assert.False(SlatSpread.Spread(run with { Stations = [Mm(840.000002)] }).HasProblem); // a nanometre of slat is left
    }

    /// <summary>
    /// 1516 and 1400: 31 slats 276/30 = 9.2 and 160/30 = 5.333 (0.667 out); 30: 316/29 = 10.897 (0.897 out) and 6.897; 32: 7.613 and 3.871.
    /// 31 serve with slats of (1516 - 300)/31 = 39.225807 to (1400 - 180)/31 = 39.354838, or gaps of 5.333333 to 10.
    /// </summary>
    [Fact]
    public void Where_none_serves_the_nearest_and_the_remedies_are_given()
    {
        SlatRun run = new(Mm(1516), Mm(40)) { Stations = [Mm(1400)] };
        SlatChoice none = SlatSpread.Spread(run);
        Assert.True(none.HasProblem);
        Assert.Null(none.Recommended);
        Finding finding = none.Findings[0];
        Assert.Equal(("slats-none-fits", Severity.Problem), (finding.Code, finding.Severity));
        SlatRemedy remedy = none.Remedy!;
        Assert.Equal(31, remedy.Nearest.Count);
        Assert.Equal([9.2, 5.333333], remedy.Nearest.Gaps.Select(static gap => gap.Millimeters));
        Assert.Equal((39.225807, 39.354838), (remedy.LeastSlatWidth!.Value.Millimeters, remedy.GreatestSlatWidth!.Value.Millimeters));
        Assert.Equal((5.333333, 10), (remedy.LeastGap!.Value.Millimeters, remedy.GreatestGap!.Value.Millimeters));
        Assert.Equal("31 slats of 39.226 to 39.354 mm serve at the gaps asked; a gap of 5.333 to 10 mm takes 31 of the slats given; with both end slats tapered 31 slats serve every station.", remedy.Text);
        Assert.Equal(31, remedy.CountWithEndSlatsTapered); // mean 1458: 30 slats 258/29 = 8.897, 31: 218/30 = 7.267, nearer 8 by 0.733 to 0.897
    }

    /// <summary>30 mm do not hold two slats of 40: the nearest is two, with a gap of -50, and no range of gaps helps; slats of (30 - 10)/2 = 10 to (30 - 6)/2 = 12 would.</summary>
    [Fact]
    public void A_face_too_narrow_for_the_slats()
    {
        SlatChoice none = SlatSpread.Spread(Mm(30), Mm(40), Mm(6), Mm(10));
        Assert.Empty(none.Counts);
        Assert.Equal(-50, none.Remedy!.Nearest.Gaps[0].Millimeters);
        Assert.Null(none.Remedy.LeastGap);
        Assert.Equal((10, 12), (none.Remedy.LeastSlatWidth!.Value.Millimeters, none.Remedy.GreatestSlatWidth!.Value.Millimeters));
        Assert.Equal("station", Assert.ThrowsAny<System.ArgumentException>(() => none.Remedy.Nearest.OnCurve(null, Mm(10))).ParamName);
    }

    [Fact]
    public void The_defaults_taken_are_named()
    {
        SlatRun run = new(Mm(1000), Mm(40));
        Assert.Equal(["least-gap 6 mm", "greatest-gap 10 mm"], SlatSpread.Spread(run).DefaultsUsed.Select(static used => used.Figure.ToString()));
        Assert.Empty(SlatSpread.Spread(run with { LeastGap = Mm(6), GreatestGap = Mm(10) }).DefaultsUsed);
        Assert.Equal(["greatest-gap 10 mm"], SlatSpread.Spread(run with { LeastGap = Mm(6) }).DefaultsUsed.Select(static used => used.Figure.ToString()));
    }

    [Fact]
    public void Each_check_names_what_is_wrong()
    {
        SlatRun run = new(Mm(1000), Mm(40));
        IReadOnlyList<InputProblem> problems = SlatSpread.CheckSpread(new SlatRun(Mm(0), Mm(4)) { LeastGap = Mm(-1), Stations = [Mm(10), Mm(0)], Ends = (SlatEnds)7 });
        Assert.Equal(["run.Width", "run.SlatWidth", "run.LeastGap", "run.Ends", "run.Stations[1]"], problems.Select(static problem => problem.Parameter));
        Assert.Equal("run.LeastGap", Assert.Single(SlatSpread.CheckSpread(run with { LeastGap = Mm(11) })).Parameter); // over the default greatest
        Assert.Equal("run.GreatestGap", Assert.Single(SlatSpread.CheckSpread(run with { GreatestGap = Mm(5) })).Parameter);
        Assert.Equal("greatestGap", Assert.Single(SlatSpread.CheckSpread(Mm(1000), Mm(40), Mm(8), Mm(7))).Parameter);
        Assert.Empty(SlatSpread.CheckSpread(run with { Stations = [.. Enumerable.Repeat(Mm(900), 50)] }));
        Assert.Equal("run.Stations", Assert.Single(SlatSpread.CheckSpread(run with { Stations = [.. Enumerable.Repeat(Mm(900), 51)] })).Parameter);
    }

    [Fact]
    public void Runs_are_equal_by_amount()
    {
        SlatRun run = new(Mm(1016), Mm(25.4)) { Stations = [Mm(508)] }, inches = new(Inch(40), Inch(1)) { Stations = [Inch(20)] };
        Assert.Equal(run, inches);
        Assert.Equal(run.GetHashCode(), inches.GetHashCode());
        Assert.NotEqual(run, inches with { Stations = [Inch(21)] });
        Assert.NotEqual(run, inches with { Stations = null });
        Assert.Equal(run with { Stations = null }, run with { Stations = [] });
    }

    /// <summary>The largest face a caller may ask for: 100 m of 5 mm slats at no gap, 20,000 of them, and 51 stations.</summary>
    [Fact]
    public void The_largest_run_is_exact()
    {
        SlatRun largest = new(Mm(100_000), Mm(5)) { LeastGap = Mm(0), GreatestGap = Mm(1000), Stations = [.. Enumerable.Repeat(Mm(99_999.999999), 50)], Taper = SlatTaper.EndSlatsTapered };
        SlatChoice choice = SlatSpread.Spread(largest);
        Assert.Equal(19_999, choice.Counts[^1].Count); // at 20,000 the mean gap is negative by 50/51 nm over 19,999
        SlatSetOut setOut = choice.Counts[^1].SetOut(50);
        Assert.Equal(19_999, setOut.Marks.Count);
        Assert.True(setOut.GreatestError.Millimeters <= 0.5);
        SlatChoice tight = SlatSpread.Spread(largest with { LeastGap = Mm(1000) });
        Assert.Null(tight.Recommended); // 101,000/1005 is no whole number
        Assert.Equal(101, tight.Remedy!.Nearest.Count); // (100,000 - 505)/100 = 994.95 misses 1000 by 5.05; 100: 99,500/99 = 1005.0505
    }
}
