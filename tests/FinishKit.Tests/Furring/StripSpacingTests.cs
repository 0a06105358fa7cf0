using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Furring;

/// <summary>Strips worked by hand, findings, and input that is refused.</summary>
public sealed class StripSpacingTests
{
    private static readonly Dictionary<string, (StripRun Run, string[] Paths)> s_bad = new(StringComparer.Ordinal)
    {
        ["run 0"] = (Good() with { RunLength = Mm(0) }, ["run.RunLength"]),
        ["run over a kilometre"] = (Good() with { RunLength = Mm(1000000.000001) }, ["run.RunLength"]),
        ["a fixed strip past the end"] = (Good() with { FixedPositions = [Mm(20), Mm(3400.000001)] }, ["run.FixedPositions[1]"]),
        ["a fixed strip before the start"] = (Good() with { FixedPositions = [Mm(-0.000001), Mm(3400)] }, ["run.FixedPositions[0]"]),
        ["one fixed strip"] = (Good() with { FixedPositions = [Mm(20)] }, ["run.FixedPositions"]),
        ["1001 fixed strips"] = (Good() with { FixedPositions = [.. Enumerable.Repeat(Mm(20), 1001)] }, ["run.FixedPositions"]),
        ["no fixed strips"] = (Good() with { FixedPositions = null! }, ["run.FixedPositions"]),
        ["bay 0"] = (Good() with { LargestBay = Mm(0) }, ["run.LargestBay"]),
        ["more than 10,000 bays"] = (Good() with { LargestBay = Mm(0.339999) }, ["run.LargestBay"]),
        ["bay in an undefined unit"] = (Good() with { LargestBay = new Length(1, (LengthUnit)999) }, ["run.LargestBay"]),
        ["ribs null"] = (Good() with { Ribs = null! }, ["run.Ribs"]),
        ["a rib null"] = (Good() with { Ribs = [new(Mm(20), Mm(20)), null!] }, ["run.Ribs[1]"]),
        ["1001 ribs"] = (Good() with { Ribs = [.. Enumerable.Repeat(new RibLine(Mm(20), Mm(20)), 1001)] }, ["run.Ribs"]),
        ["half-width negative"] = (Good() with { Ribs = [new(Mm(20), Mm(-0.000001))] }, ["run.Ribs[0].HalfWidth"]),
        ["half-width over a metre"] = (Good() with { Ribs = [new(Mm(20), Mm(1000.000001))] }, ["run.Ribs[0].HalfWidth"]),
        ["rib in an undefined unit"] = (Good() with { Ribs = [new(new Length(1, (LengthUnit)999), Mm(20))] }, ["run.Ribs[0].Centre"]),
        ["least distance 0"] = (Good() with { LeastDistance = Mm(0) }, ["run.LeastDistance"]),
        ["preference not named"] = (Good() with { Preference = (StripPreference)2 }, ["run.Preference"]),
        ["all at once"] = (new StripRun(Mm(-1), [Mm(-1), Mm(5)], Mm(0)) { Ribs = [null!], LeastDistance = Mm(-1), Preference = (StripPreference)(-1) },
            ["run.RunLength", "run.FixedPositions[0]", "run.LargestBay", "run.Ribs[0]", "run.LeastDistance", "run.Preference"]),
    };

    public static TheoryData<string> BadRuns() => [.. s_bad.Keys];

    [Theory]
    [MemberData(nameof(BadRuns))]
    public void Bad_input_is_named_by_its_path(string name)
    {
        (StripRun run, string[] paths) = s_bad[name];
        Assert.Equal(paths, StripSpacing.Check(run).Select(static problem => problem.Parameter));
        Assert.Equal(paths[0], Assert.ThrowsAny<ArgumentException>(() => StripSpacing.Space(run)).ParamName);
    }

    [Fact]
    public void The_ends_of_every_range_are_taken()
    {
        Assert.Empty(StripSpacing.Check(Good() with { LargestBay = Mm(0.34) })); // 3400/10,000
        Assert.Empty(StripSpacing.Check(new StripRun(Mm(1e6), [Mm(0), Mm(1e6)], Mm(1e6)) { Ribs = [new RibLine(Mm(-1e6), Mm(1000))], LeastDistance = Mm(1e6) }));
        for (int nanometres = 1; nanometres < 200; nanometres++)
        {
            Assert.Empty(StripSpacing.Check(new StripRun(Mm(nanometres / 100.0), [Mm(0), Mm(0)], Mm(nanometres / 1e6)))); // exactly 10,000 bays, whatever the doubles say
        }

        StripLayout many = StripSpacing.Space(new StripRun(Mm(1e6), [Mm(0), Mm(1e6)], Mm(100)));
        Assert.Equal((9999, 100.0), (many.ChosenCount, many.LargestBay.Millimeters));
    }

    /// <summary>
    /// The invented van's left wall, by hand. Fixed: ends half a strip in (20, 3380), window jambs at 480, 1420, 1960, 2700. Bays up to
    /// 475. 20-480: 460. 480-1420: 940, the rib at 950 halves it. 1420-1960: 540, no rib between, one strip in the middle, 1690.
    /// 1960-2700: 740, the rib at 2330 halves it. 2700-3380: 680, the rib at 3060: 360 and 320. The ribs at 30 and 3370 are 60 wide: the
    /// end strips bear on them.
    /// </summary>
    [Theory]
    [InlineData(StripPreference.OnRibs)]
    [InlineData(StripPreference.FewestStrips)]
    public void The_wall_of_a_van_takes_one_strip_more_than_ribs_and_jambs(StripPreference preference)
    {
        StripLayout layout = StripSpacing.Space(Van() with { Preference = preference });
        Assert.Equal([20, 480, 950, 1420, 1690, 1960, 2330, 2700, 3060, 3380], layout.Strips.Select(static strip => strip.Position.Millimeters));
        Assert.Equal([460, 470, 470, 270, 270, 370, 370, 360, 320.0], layout.Bays.Select(static bay => bay.Millimeters));
        Assert.Equal([0, 1, 2, 3, null, 4, 5, 6, 7, 8], layout.Strips.Select(static strip => strip.Rib));
        Assert.Equal((6, 4, 3, 1, 470.0), (layout.FixedCount, layout.ChosenCount, layout.OnRibCount, layout.OffRibCount, layout.LargestBay.Millimeters));
        Finding note = Assert.Single(layout.Findings);
        Assert.Equal(("furring-strips-off-ribs", Severity.Note), (note.Code, note.Severity));
        Assert.Contains("1690 mm", note.Message, StringComparison.Ordinal);
        Assert.False(layout.HasProblem);
        Assert.Equal(new Figure("least-distance", 40, "mm"), Assert.Single(layout.DefaultsUsed).Figure);
    }

    /// <summary>
    /// 0 to 1000 with bays up to 500 and ribs at 400 and 800. On ribs: 400 and 800 leave 400, 400, 200: two strips, none off. Fewest: one
    /// strip does, and only at 500: off ribs.
    /// </summary>
    [Fact]
    public void The_preferences_differ_where_ribs_ask_for_more_strips()
    {
        StripRun run = new(Mm(1000), [Mm(0), Mm(1000)], Mm(500)) { Ribs = [new(Mm(400), Mm(20)), new(Mm(800), Mm(20))] };
        Assert.Equal([0, 400, 800, 1000.0], StripSpacing.Space(run).Strips.Select(static strip => strip.Position.Millimeters));
        Assert.Equal([0, 500, 1000.0], StripSpacing.Space(run with { Preference = StripPreference.FewestStrips }).Strips.Select(static strip => strip.Position.Millimeters));
    }

    /// <summary>A nanometre over two bays of 500 takes a third; the smaller bays come first: 333.333333, then twice 333.333334.</summary>
    [Fact]
    public void A_bay_exactly_met_is_met_and_a_nanometre_more_is_not()
    {
        Assert.Equal(1, StripSpacing.Space(new StripRun(Mm(1001), [Mm(0), Mm(1000)], Mm(500))).ChosenCount);
        StripLayout over = StripSpacing.Space(new StripRun(Mm(1001), [Mm(0), Mm(1000.000001)], Mm(500)));
        Assert.Equal([0, 333.333333, 666.666667, 1000.000001], over.Strips.Select(static strip => strip.Position.Millimeters));
    }

    /// <summary>
    /// The largest bay counts over the whole run. 0-900 on bays up to 500 with ribs at 420 and 450: the middle one. Beside a bay of 490
    /// that is fixed anyway, the squares decide in the first part, not the largest bay; the answer is the same 450.
    /// Leftmost decides between ribs at 430 and 470, which mirror each other: 430.
    /// </summary>
    [Fact]
    public void Ties_go_by_largest_bay_then_squares_then_leftmost()
    {
        Assert.Equal(450, At(new StripRun(Mm(2000), [Mm(0), Mm(900)], Mm(500)), 420, 450));
        Assert.Equal(450, At(new StripRun(Mm(2000), [Mm(0), Mm(900), Mm(1390)], Mm(500)), 420, 450));
        Assert.Equal(430, At(new StripRun(Mm(2000), [Mm(0), Mm(900)], Mm(500)), 470, 430));

        static double At(StripRun run, double left, double right) =>
            StripSpacing.Space(run with { Ribs = [new(Mm(left), Mm(10)), new(Mm(right), Mm(10))] }).Strips[1].Position.Millimeters;
    }

    /// <summary>A jamb at 470 bears on the rib at 480 ± 25, so that rib takes no strip, though one at 480 would be 10 away only. From 470 to 1000: 530, one off ribs.</summary>
    [Fact]
    public void A_rib_under_a_fixed_strip_takes_no_other()
    {
        StripRun run = new(Mm(1000), [Mm(0), Mm(470), Mm(1000)], Mm(500)) { Ribs = [new(Mm(480), Mm(25))], LeastDistance = Mm(5) };
        StripLayout layout = StripSpacing.Space(run);
        Assert.Equal([0, 470, 735, 1000.0], layout.Strips.Select(static strip => strip.Position.Millimeters));
        Assert.Equal(0, layout.Strips[1].Rib);

        // Out of the jamb's reach it might take a strip at 480, but 520 would be left and ask for one off ribs all the same.
        Assert.Equal(1, StripSpacing.Space(run with { Ribs = [new(Mm(480), Mm(9.999999))] }).ChosenCount);

        // A rib at 600 that the jamb does not reach serves.
        Assert.Equal([0, 470, 600, 1000.0], StripSpacing.Space(run with { Ribs = [new(Mm(600), Mm(25))] }).Strips.Select(static strip => strip.Position.Millimeters));
    }

    /// <summary>70 with bays up to 50 and strips 40 apart: two bays of 35 are too near, one of 70 too large. One bay of 70 is the smallest that can be had.</summary>
    [Fact]
    public void Where_no_strip_fits_the_smallest_bay_that_can_be_had_is_named()
    {
        StripLayout layout = StripSpacing.Space(new StripRun(Mm(200), [Mm(0), Mm(70), Mm(170)], Mm(50)));
        Assert.False(layout.IsFeasible);
        Assert.True(layout.HasProblem);
        Assert.Equal(70, layout.SmallestFeasibleBay!.Value.Millimeters);
        Assert.Equal("furring-bay-infeasible", layout.Findings[0].Code);
        Assert.Contains(new Figure("smallest-feasible-bay", 70, "mm"), layout.Findings[0].Values);
        Assert.Equal([0, 70, 170.0], layout.Strips.Select(static strip => strip.Position.Millimeters));
        Assert.True(StripSpacing.Space(new StripRun(Mm(200), [Mm(0), Mm(70), Mm(170)], Mm(70))).IsFeasible);
    }

    [Fact]
    public void Fixed_strips_too_close_are_a_caution_and_nothing_more()
    {
        StripLayout layout = StripSpacing.Space(new StripRun(Mm(1000), [Mm(0), Mm(39.999999), Mm(1000), Mm(500)], Mm(500)));
        Finding close = layout.Findings[0];
        Assert.Equal(("furring-fixed-too-close", Severity.Caution), (close.Code, close.Severity));
        Assert.Contains(new Figure("distance", 39.999999, "mm"), close.Values);
        Assert.True(layout.IsFeasible);
        Assert.DoesNotContain(StripSpacing.Space(new StripRun(Mm(1000), [Mm(0), Mm(40), Mm(500), Mm(1000)], Mm(500))).Findings, static finding => finding.Code == "furring-fixed-too-close");
    }

    [Fact]
    public void Ribs_that_no_strip_bears_on_are_a_caution()
    {
        StripRun run = new(Mm(1000), [Mm(0), Mm(1000)], Mm(1000)) { Ribs = [new(Mm(500), Mm(20))] };
        Assert.Equal(["furring-none-on-rib", "furring-strips-off-ribs"], StripSpacing.Space(run).Findings.Select(static finding => finding.Code));
        Assert.Empty(StripSpacing.Space(run with { Ribs = [new(Mm(20), Mm(20)), new(Mm(980), Mm(20))] }).Findings); // exactly in reach
        Assert.Equal(["furring-strips-off-ribs"], StripSpacing.Space(run with { Ribs = [] }).Findings.Select(static finding => finding.Code));
    }

    [Fact]
    public void Space()
    {
        #region example: StripSpacing.Space
        RibLine[] ribs = [new(Mm(480), Mm(25)), new(Mm(950), Mm(20))];
        StripLayout layout = StripSpacing.Space(new StripRun(Mm(1960), [Mm(20), Mm(1420), Mm(1940)], Mm(475)) { Ribs = ribs });
        int strips = layout.Strips.Count;                   // 6: at 20, on the ribs at 480 and 950, at 1420, off ribs at 1680, at 1940
        double bay = layout.LargestBay.Millimeters;         // 470
        #endregion
        Assert.Equal(6, strips);
        Assert.Equal([20, 480, 950, 1420, 1680, 1940.0], layout.Strips.Select(static strip => strip.Position.Millimeters));
        Assert.Equal(470, bay);
    }

    [Fact]
    public void Example_with_plain_parameters()
    {
        #region example: StripSpacing.Space(four parameters)
        StripLayout wall = StripSpacing.Space(Mm(1960), [Mm(20), Mm(1940)], Mm(475), [new(Mm(480), Mm(25)), new(Mm(950), Mm(20))]);
        int chosen = wall.ChosenCount;                      // 4: on both ribs, and two between 950 and 1940
        #endregion

        // 950 to 1940 is 990: three bays of 330. Without the ribs 1920 would take four strips, all off ribs.
        Assert.Equal(4, chosen);
        Assert.Equal([20, 480, 950, 1280, 1610, 1940.0], wall.Strips.Select(static strip => strip.Position.Millimeters));
    }

    [Fact]
    public void Runs_are_equal_by_amount()
    {
        StripRun metres = new(Length.FromMeters(3.4), [Length.FromCentimeters(2), Length.FromMeters(3.38)], Mm(475)) { Ribs = [new(Length.FromCentimeters(48), Mm(25))] };
        StripRun millimetres = new(Mm(3400), [Mm(20), Mm(3380)], Mm(475)) { Ribs = [new(Mm(480), Mm(25))] };
        Assert.Equal(millimetres, metres);
        Assert.Equal(millimetres.GetHashCode(), metres.GetHashCode());
        Assert.NotEqual(millimetres, metres with { Ribs = [new(Mm(480), Mm(24))] });
        Assert.NotEqual(millimetres, metres with { FixedPositions = [Mm(20), Mm(3379)] });
        Assert.NotEqual(millimetres, metres with { LeastDistance = Mm(40) });
    }

    [Fact]
    public void A_host_can_make_a_layout_but_not_one_out_of_order()
    {
        StripRun run = Good();
        PlacedStrip left = new(Mm(20), StripKind.Fixed, null), right = new(Mm(400), StripKind.OnRib, 0);
        Assert.Equal(380, new StripLayout(run, [left, right], null, [], []).LargestBay.Millimeters);
        Assert.Equal("strips[1]", Assert.ThrowsAny<ArgumentException>(() => new StripLayout(run, [right, left], null, [], [])).ParamName);
        Assert.Equal("strips", Assert.ThrowsAny<ArgumentException>(() => new StripLayout(run, [left], null, [], [])).ParamName);
        Assert.Equal("strips[1]", Assert.ThrowsAny<ArgumentException>(() => new StripLayout(run, [left, null!], null, [], [])).ParamName);
    }

    internal static StripRun Good() => new(Mm(3400), [Mm(20), Mm(3380)], Mm(475));

    internal static StripRun Van() => new(Mm(3400), [Mm(20), Mm(480), Mm(1420), Mm(1960), Mm(2700), Mm(3380)], Mm(475))
    {
        Ribs = [new(Mm(30), Mm(30)), new(Mm(480), Mm(25)), new(Mm(950), Mm(20)), new(Mm(1420), Mm(25)), new(Mm(1960), Mm(25)), new(Mm(2330), Mm(20)), new(Mm(2700), Mm(25)), new(Mm(3060), Mm(20)), new(Mm(3370), Mm(30))],
    };
}
