using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Furring;

/// <summary>Strips over a bow: the demo van's ceiling by hand, the remedies, the pull.</summary>
public sealed class BentStripTests
{
    /// <summary>Birch plywood, handbook figures from memory: mean thickness, E along/across, f along/across.</summary>
    private static readonly SheetGoods s_ply6 = Ply("6.5", 6.4, 12737, 4763, 50.9, 29.0), s_ply9 = Ply("9", 9.2, 11395, 6105, 45.6, 32.1),
        s_ply12 = Ply("12", 12.0, 10719, 6781, 42.9, 33.2), s_ply15 = Ply("15", 14.8, 10316, 7184, 41.3, 33.8);

    private static readonly IReadOnlyList<Length> s_rows = BentSheet.EqualRows(Mm(1516), 3);

    [Fact]
    public void Judge()
    {
        #region example: BentStrip.Judge
        PlywoodBending figures = new(Mm(14.8), Pressure.FromMegapascals(10316), Pressure.FromMegapascals(7184), Pressure.FromMegapascals(41.3), Pressure.FromMegapascals(33.8));
        SheetGoods ply = new("15 mm ply", Mm(15), Mm(14.8), "ply") { Bending = figures };
        BentStripResult strip = BentStrip.Judge(new BentStripCase(ply, Mm(3818), BentSheet.EqualRows(Mm(1516), 3)));
        Length? peak = strip.PeakRadius;                    // 2540.4 mm: (3818 - 7.4)/1.5
        bool follows = strip.Follows;                       // false: 3696.775 mm are allowed
        #endregion
        Assert.Equal(2540.4, peak!.Value.Millimeters, 1e-6);
        Assert.False(follows);
        Assert.Equal(3696.775, strip.MinimumRadius.Millimeters, 0.0005); // 10316 · 14.8/41.3
    }

    /// <summary>The demo van's ceiling, R 3818 under three rows, worked by hand: E t/f against (3818 - t/2)/1.5.</summary>
    [Theory]
    [InlineData(15, false, 3696.8, 2540.4)]
    [InlineData(12, false, 2998.3, 2541.3)]
    [InlineData(9, true, 2299.0, 2542.3)]
    [InlineData(6, true, 1601.5, 2543.2)]
    public void The_ceiling_takes_9_mm_strips_and_no_thicker(int label, bool follows, double allowed, double peak)
    {
        SheetGoods sheet = label switch { 15 => s_ply15, 12 => s_ply12, 9 => s_ply9, _ => s_ply6 };
        BentStripResult strip = BentStrip.Judge(new BentStripCase(sheet, Mm(3818), s_rows) { Alternatives = [s_ply6, s_ply9, s_ply12, s_ply15] });
        Assert.Equal(follows, strip.Follows);
        Assert.Equal(follows, !strip.HasProblem);
        Assert.Equal(allowed, strip.MinimumRadius.Millimeters, 0.05);
        Assert.Equal(peak, strip.PeakRadius!.Value.Millimeters, 0.05);
        Assert.Equal(peak / allowed, strip.Margin!.Value, 1e-4);
        Assert.Equal(!follows, strip.Findings.Any(static finding => finding.Code == "furring-strip-bend-too-tight"));
        Assert.Equal(follows, strip.Remedies.Count == 0);
    }

    /// <summary>
    /// Grain turned: 7184 · 14.8/33.8 = 3145.7, no. Thickest single sheet: 9. Layers nearest to 14.8: 14.8/6.4 = 2.3, two of 6.5; 14.8/9.2 = 1.6, two of 9;
    /// of 12 and 15 two would be asked and fail alone. The layer nearest the room lies on the other: back at 3818 - 6.4 and 3818 - 9.2.
    /// </summary>
    [Fact]
    public void A_strip_that_is_too_stiff_gets_a_thinner_one_or_layers()
    {
        BentStripResult strip = BentStrip.Judge(new BentStripCase(s_ply15, Mm(3818), s_rows) { Alternatives = [s_ply6, s_ply9, s_ply12, SheetGoods.MetricSoldByInch[0], s_ply15] });
        Assert.Equal(["9 mm ply x 1", "6.5 mm ply x 2", "9 mm ply x 2"], strip.Remedies.Select(static remedy => $"{remedy.Sheet.Name} x {remedy.Layers}"));
        BentStripRemedy two = strip.Remedies[1];
        Assert.Equal(12.8, two.Thickness.Millimeters);
        Assert.Equal((3818 - 6.4 - 3.2) / 1.5, two.PeakRadius!.Value.Millimeters, 1e-6);
        Assert.Equal(1601.509, two.MinimumRadius.Millimeters, 0.0005);
        Assert.Equal(BendGrain.AroundTheCurve, two.Grain);
        Assert.Contains("2 layers of 6.5 mm ply", two.ToString(), StringComparison.Ordinal);
        Assert.Equal(new Figure("layers", 2, string.Empty), two.Figures()[0]);
        Assert.Contains("9 mm ply", strip.Findings[0].Message, StringComparison.Ordinal);
        Assert.Contains("None of the sheets", BentStrip.Judge(new BentStripCase(s_ply15, Mm(3818), s_rows) { Alternatives = [] }).Findings[0].Message, StringComparison.Ordinal);
    }

    /// <summary>On a bow of R 5000: along 3697 against (5000 - 7.4)/1.5 = 3328 fails; across 3146 passes.</summary>
    [Fact]
    public void Turning_the_grain_is_the_first_remedy()
    {
        BentStripRemedy turned = BentStrip.Judge(new BentStripCase(s_ply15, Mm(5000), s_rows) { Alternatives = [] }).Remedies.Single();
        Assert.Equal((BendGrain.AlongTheAxis, 1, "15 mm ply"), (turned.Grain, turned.Layers, turned.Sheet.Name));
        Assert.Equal(3145.657, turned.MinimumRadius.Millimeters, 0.0005);
    }

    /// <summary>A bulging bow bends the layer at the back most: (3000 + 3.2)/1.5 = 2002.1 whatever lies on it.</summary>
    [Fact]
    public void On_a_bulging_bow_the_layer_at_the_back_governs()
    {
        BentStripResult strip = BentStrip.Judge(new BentStripCase(s_ply15, Mm(-3000), s_rows) { Alternatives = [s_ply6] });
        Assert.All(strip.Remedies, static remedy => Assert.Equal(3003.2 / 1.5, remedy.PeakRadius!.Value.Millimeters, 1e-6));
        Assert.Equal([1, 2], strip.Remedies.Select(static remedy => remedy.Layers));
        Assert.Equal(3007.4 / 1.5, strip.PeakRadius!.Value.Millimeters, 1e-6);
    }

    /// <summary>3 E I/(R a): I = 40 · 9.2³/12 = 2595.6 mm⁴; 3 · 11395 · 2595.6/(3813.4 · 758) = 30.70 N.</summary>
    [Fact]
    public void The_middle_fixing_pulls_as_a_panel_of_the_strips_width_would()
    {
        BentStripResult strip = BentStrip.Judge(new BentStripCase(s_ply9, Mm(3818), s_rows));
        Assert.Equal(30.70, strip.GreatestPull.Newtons, 0.005);
        Assert.Equal([true, false, true], strip.Rows.Select(static row => row.OnlyBears));
        HoldDownResult panel = HoldDown.OnArc(new HoldDownCase(BentSheet.Of(s_ply9, BendGrain.AroundTheCurve), Mm(3818), s_rows, Mm(40)));
        Assert.Equal(panel.GreatestPull.Newtons, strip.GreatestPull.Newtons, 1e-9);
        Assert.Equal(["bend-factor", "strip-width"], strip.DefaultsUsed.Select(static used => used.Figure.Name));
        Assert.Equal(2 * strip.GreatestPull.Newtons, BentStrip.Judge(strip.Strip with { Width = Mm(80) }).GreatestPull.Newtons, 1e-9);
        WorkingsCheck.Recompute(strip.Explain());
        Assert.Equal(strip.GreatestPull.Newtons, strip.Explain().Steps[^1].Value.Value, 1e-9);
    }

    /// <summary>The table's own birch: turned, 15 mm fails; 9 is the thickest; four of 4, two of 6.5 and two of 9 in layers.</summary>
    [Fact]
    public void By_default_birch_of_the_table_is_looked_in()
    {
        BentStripResult strip = BentStrip.Judge(new BentStripCase(SheetGoods.Birch15, Mm(3818), s_rows));
        Assert.Equal(["9 mm x 1", "4 mm x 4", "6.5 mm x 2", "9 mm x 2"], strip.Remedies.Select(static remedy => $"{remedy.Sheet.Name.Split(" birch")[0]} x {remedy.Layers}"));
    }

    [Fact]
    public void A_straight_strip_and_one_on_two_fixings_are_not_bent()
    {
        BentStripResult straight = BentStrip.Judge(new BentStripCase(s_ply15, null, s_rows)), two = BentStrip.Judge(new BentStripCase(s_ply15, Mm(3818), BentSheet.EqualRows(Mm(1516), 2)));
        Assert.True(straight.Follows);
        Assert.Null(straight.PeakRadius);
        Assert.Equal(0, straight.GreatestPull.Newtons);
        Assert.Null(two.PeakRadius);
        Assert.Equal(("furring-strip-not-held", Severity.Problem), (two.Findings[0].Code, two.Findings[0].Severity));
        Assert.True(!two.Follows && two.HasProblem);
        Assert.Empty(two.Remedies);
        Assert.DoesNotContain(straight.Findings, static finding => finding.Severity > Severity.Note);
    }

    /// <summary>R 3818 less half of 9.2 is 3813.4: a bay of that is the last, and π times it, 11,980, the last girth. Other sheets do not help.</summary>
    [Fact]
    public void Bays_over_the_radius_and_strips_over_half_a_circle_are_refused()
    {
        BentStripResult wide = Of(0, 3814, 7628), half = Of([.. Enumerable.Range(0, 13).Select(static i => i * 1000.0)]);
        foreach (BentStripResult result in new[] { wide, half })
        {
            Assert.True(!result.Follows && result.HasProblem);
            Assert.Equal("furring-strip-bay-too-long", result.Findings[0].Code);
            Assert.Empty(result.Remedies);
        }

        Assert.True(Of(0, 3813, 7626).Follows);
        Assert.Contains(Of(0, 3813, 7626).Findings, static finding => finding.Code == "furring-strip-bay-not-shallow" && finding.Message.Contains("not known", StringComparison.Ordinal));
        Assert.True(Of([.. Enumerable.Range(0, 12).Select(static i => i * 1000.0)]).Follows);

        static BentStripResult Of(params double[] rows) => BentStrip.Judge(new BentStripCase(s_ply9, Mm(3818), [.. rows.Select(static row => Mm(row))]));
    }

    /// <summary>30.70 N at the middle: fixings of 10 N take 4; three hold 30 and are too few; of 30.7 N less a little it takes 2.</summary>
    [Fact]
    public void Fixings_are_held_against_the_pull()
    {
        BentStripCase strip = new(s_ply9, Mm(3818), s_rows);
        BentStripResult unknown = BentStrip.Judge(strip), asked = BentStrip.Judge(strip with { FixingCapacity = Force.FromNewtons(10) });
        BentStripResult three = BentStrip.Judge(strip with { FixingCapacity = Force.FromNewtons(10), FixingsPerPlace = 3 }), four = BentStrip.Judge(three.Strip with { FixingsPerPlace = 4 });
        Assert.Contains(unknown.Findings, static finding => finding is { Code: "furring-strip-fixing-capacity-unknown", Severity: Severity.Caution });
        Assert.Null(unknown.FixingsNeededPerPlace);
        Assert.Equal((4, 4, 0), (asked.FixingsNeededPerPlace, asked.Rows[1].FixingsNeeded, asked.Rows[0].FixingsNeeded));
        Assert.DoesNotContain(asked.Findings, static finding => finding.Code is "furring-strip-fixing-capacity-unknown" or "furring-strip-fixings-pull-out");
        Assert.Equal(("furring-strip-fixings-pull-out", Severity.Problem), (three.Findings[0].Code, three.Findings[0].Severity));
        Assert.True(three.HasProblem && three.Follows);
        Assert.False(four.HasProblem);
        Assert.Equal(four.GreatestPull.Newtons / 4, four.Rows[1].PullPerFixing!.Value.Newtons, 1e-9);
        Assert.True(BentStrip.Judge(strip with { FixingCapacity = Force.FromNewtons(1e-6) }).HasProblem);
        Assert.Equal(0, BentStrip.Judge(strip with { BowRadius = null }).FixingsNeededPerPlace);
        Assert.Equal(["strip.FixingsPerPlace", "strip.FixingCapacity"], BentStrip.Check(strip with { FixingsPerPlace = 0, FixingCapacity = Force.FromNewtons(0) }).Select(static problem => problem.Parameter));
        Assert.NotEqual(strip, asked.Strip);
    }

    [Fact]
    public void Cases_with_the_same_alternatives_are_equal()
    {
        BentStripCase one = new(s_ply15, Mm(3818), s_rows) { Alternatives = [s_ply6, s_ply9] }, same = one with { Alternatives = new List<SheetGoods> { s_ply6, s_ply9 } };
        Assert.Equal(one, same);
        Assert.Equal(one.GetHashCode(), same.GetHashCode());
        Assert.NotEqual(one, one with { Alternatives = [s_ply9, s_ply6] });
        Assert.NotEqual(one, one with { Alternatives = [s_ply6] });
        Assert.NotEqual(one, one with { Alternatives = null });
    }

    [Fact]
    public void Figures_carry_the_worst_severity()
    {
        Assert.Equal(2, Worst(new BentStripCase(s_ply15, Mm(3818), s_rows)));
        Assert.Equal(1, Worst(new BentStripCase(s_ply9, Mm(3818), s_rows)));
        Assert.Equal(0, Worst(new BentStripCase(s_ply9, null, s_rows)));

        static double Worst(BentStripCase strip) => BentStrip.Judge(strip).Figures().Single(static figure => figure.Name == "worst-severity").Value;
    }

    [Fact]
    public void A_sheet_without_bending_figures_is_refused()
    {
        SheetGoods bare = new("bare", Mm(15), Mm(15), "bare");
        Assert.Equal("strip.Sheet.Bending", Assert.Single(BentStrip.Check(new BentStripCase(bare, Mm(3818), s_rows))).Parameter);
        Assert.Equal("sheet.Bending", Assert.Throws<ArgumentNullException>(() => BentSheet.Of(bare, BendGrain.AlongTheAxis)).ParamName);
    }

    private static SheetGoods Ply(string label, double mean, double along, double across, double strengthAlong, double strengthAcross) => new(label + " mm ply", Mm(mean), Mm(mean), "ply")
    {
        Bending = new PlywoodBending(Mm(mean), Pressure.FromMegapascals(along), Pressure.FromMegapascals(across), Pressure.FromMegapascals(strengthAlong), Pressure.FromMegapascals(strengthAcross)),
    };
}
