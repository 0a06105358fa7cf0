using System;
using System.Linq;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Panels;

/// <summary>Minimum radii against the reference table, verdicts by hand, double curvature, what is allocated.</summary>
public sealed class PanelBendTests
{
    private static readonly SheetGoods s_ply6 = new("6.5 mm ply", Mm(6.5), Mm(6.4), "ply")
    {
        Bending = new PlywoodBending(Mm(6.4), Pressure.FromMegapascals(12737), Pressure.FromMegapascals(4763), Pressure.FromMegapascals(50.9), Pressure.FromMegapascals(29)),
    };

    private static bool s_problem;

    /// <summary>Handbook of Finnish Plywood, birch, sanded (figures from memory); the radii at the strength are derived and printed to the millimetre.</summary>
    [Theory]
    [InlineData(3.6, 65.9, 10.6, 16471, 1029, 450, 175)]
    [InlineData(6.4, 50.9, 29.0, 12737, 4763, 801, 526)]
    [InlineData(9.2, 45.6, 32.1, 11395, 6105, 1149, 875)]
    [InlineData(12.0, 42.9, 33.2, 10719, 6781, 1499, 1225)]
    [InlineData(14.8, 41.3, 33.8, 10316, 7184, 1848, 1573)]
    [InlineData(17.6, 40.2, 34.1, 10048, 7452, 2200, 1923)]
    public void At_factor_1_the_radius_is_that_of_the_handbooks_strength_from_memory(double mean, double strengthAlong, double strengthAcross, double along, double across, double radiusAlong, double radiusAcross)
    {
        BendRadius stiff = PanelBend.MinimumRadius(Sheet(mean, along, strengthAlong) with { Factor = 1 }), easy = PanelBend.MinimumRadius(Sheet(mean, across, strengthAcross) with { Factor = 1 });
        Assert.Equal(radiusAlong, stiff.Minimum.Millimeters, 0.5);
        Assert.Equal(radiusAcross, easy.Minimum.Millimeters, 0.5);
        Assert.Equal(2 * stiff.Elastic.Millimeters, PanelBend.MinimumRadius(Sheet(mean, along, strengthAlong)).Elastic.Millimeters, 2e-6);
    }

    [Fact]
    public void Check_value_B21_from_memory()
    {
        var row = ReferenceTable.CheckValue("B21");
        Assert.Equal("MEMORY", row["tag"]);
        Assert.Equal(525.6, PanelBend.MinimumRadius(BentSheet.Of(s_ply6, BendGrain.AlongTheAxis) with { Factor = 1 }).Elastic.Millimeters, 0.6);
    }

    /// <summary>Check value B22 (derived): five plies of 1.4 mm inside, E 17,500 by ply: of t³ = 6.4³ the plies along and across take their shares.</summary>
    [Fact]
    public void Stiffness_of_check_value_B22_follows_from_its_plies_derived()
    {
        // Plies at 1.1 + 1.4 + 1.4 + 1.4 + 1.1: along are the faces and the core, across the two between.
        double whole = Math.Pow(6.4, 3), crossing = Math.Pow(4.2, 3) - Math.Pow(1.4, 3), along = 17500 * (whole - crossing) / whole, across = 17500 * crossing / whole;
        Assert.Equal(12737, along, 1.0);
        Assert.Equal(4763, across, 1.0);
        Assert.Equal(125 * 6.4, PanelBend.MinimumRadius(Sheet(6.4, along, 70 * (whole - crossing) / whole) with { Factor = 1 }).Minimum.Millimeters, 1e-6); // 17500/(2 · 70) t
    }

    /// <summary>The demo van's upper band: R 2216, three rows, (2216 - 3.2)/1.5 = 1475.2 against 12737 · 6.4/50.9 = 1601.5 and 4763 · 6.4/29 = 1051.1.</summary>
    [Fact]
    public void The_upper_band_takes_the_grain_along_the_axis_only()
    {
        BendVerdict stiff = Band(BendGrain.AroundTheCurve), easy = Band(BendGrain.AlongTheAxis);
        Assert.Equal((false, true), (stiff.Follows, easy.Follows));
        Assert.Equal(1475.2, stiff.PeakRadius!.Value.Millimeters, 1e-6);
        Assert.Equal(1601.5, stiff.MinimumRadius.Millimeters, 0.05);
        Assert.Equal(1051.1, easy.MinimumRadius.Millimeters, 0.05);
        Assert.Equal(0.921, stiff.Margin!.Value, 0.0005);
        Assert.Equal(1.403, easy.Margin!.Value, 0.0005);
        Assert.Equal((true, false), (stiff.OtherGrainFollows, easy.OtherGrainFollows));
        Finding problem = stiff.Findings[0];
        Assert.Equal(("panels-bend-too-tight", Severity.Problem), (problem.Code, problem.Severity));
        Assert.Contains("With its face grain turned it follows", problem.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(easy.Findings, static finding => finding.Severity > Severity.Note);
        Assert.Equal(["bend-factor"], easy.DefaultsUsed.Select(static used => used.Figure.Name));

        static BendVerdict Band(BendGrain grain) => PanelBend.Judge(new BendCase(BentSheet.Of(s_ply6, grain), Mm(2216)) { Rows = BentSheet.EqualRows(Mm(352), 3) });
    }

    /// <summary>Rows unknown, four equal rows, two, a bulging wall on strips and all over: 1.5, 1.2, 0, 1.5, 1.</summary>
    [Fact]
    public void The_middle_and_the_rows_decide_the_radius_that_must_pass()
    {
        BendCase wall = new(Sheet(6, 5000, 30), Mm(2003));
        Assert.Equal(2000 / 1.5, PanelBend.Judge(wall).PeakRadius!.Value.Millimeters, 1e-6);
        Assert.Contains(PanelBend.Judge(wall).Findings, static finding => finding.Code == "panels-rows-unknown");
        Assert.Equal(2000 / 1.2, PanelBend.Judge(wall with { Rows = BentSheet.EqualRows(Mm(900), 4) }).PeakRadius!.Value.Millimeters, 1e-6);
        Assert.Null(PanelBend.Judge(wall with { Rows = BentSheet.EqualRows(Mm(900), 2) }).PeakRadius);
        Assert.Equal(2003 + 3, PanelBend.Judge(wall with { WallRadius = Mm(-2003), Backing = SheetBacking.AllOver }).PeakRadius!.Value.Millimeters, 1e-6);
        Assert.Equal(2006 / 1.5, PanelBend.Judge(wall with { WallRadius = Mm(-2003) }).PeakRadius!.Value.Millimeters, 1e-6);
        BendVerdict flat = PanelBend.Judge(wall with { WallRadius = null });
        Assert.Null(flat.PeakRadius);
        Assert.True(flat.Follows);
        Assert.Equal(0, flat.CurvatureRatio);
    }

    /// <summary>5000 · 6/30 = 1000; over three rows that is a wall of 1500 at the middle, 1503 at the back.</summary>
    [Fact]
    public void A_limit_exactly_met_is_met()
    {
        BentSheet sheet = Sheet(6, 5000, 30);
        Assert.True(PanelBend.Judge(new BendCase(sheet, Mm(1503))).Follows);
        Assert.False(PanelBend.Judge(new BendCase(sheet, Mm(1502.999))).Follows);
    }

    [Fact]
    public void The_greater_of_elastic_and_published_radius_governs()
    {
        BentSheet sheet = Sheet(6, 5000, 30);
        BendRadius less = PanelBend.MinimumRadius(sheet with { PublishedRadius = Mm(999) }), more = PanelBend.MinimumRadius(sheet with { PublishedRadius = Inch(60) });
        Assert.Equal((BendBasis.ElasticLimit, 1000.0), (less.Governs, less.Minimum.Millimeters));
        Assert.Equal((BendBasis.PublishedRadius, 1524.0), (more.Governs, more.Minimum.Millimeters));
        Assert.Equal(1000.0, more.Elastic.Millimeters);
        BendVerdict wall = PanelBend.Judge(new BendCase(sheet with { PublishedRadius = Inch(60), PublishedSource = Source.CommonPractice("rule-of-thumb", "no tighter than five feet") }, Mm(2003)));
        Assert.False(wall.Follows);
        Assert.Equal(("panels-bend-too-tight", "rule-of-thumb"), (wall.Findings[0].Code, wall.Findings[0].Source!.Id));
        Assert.Contains(wall.Findings, static finding => finding.Code == "panels-published-condition" && finding.Message.Contains("governs", StringComparison.Ordinal));
        Assert.Null(PanelBend.MinimumRadius(sheet).Published);
    }

    /// <summary>The table's row for 6.4 mm is that of 1/4 in; for 6.5 that of the next thicker one, 5/16 in: 6 ft with the grain around, read in a copy.</summary>
    [Fact]
    public void A_row_of_a_published_table_is_taken_when_it_is_asked_for_and_fits()
    {
        BentSheet sheet = BentSheet.Of(s_ply6, BendGrain.AroundTheCurve) with { Factor = 1 };
        PublishedBendingRadius row = PublishedBendingRadius.For(BendingRadiusSeries.SoftwoodPlywood, sheet.Thickness, BendGrain.AroundTheCurve, BendCondition.DryCold)!;
        BendRadius radius = PanelBend.MinimumRadius(sheet.WithPublished(row));
        Assert.Equal((BendBasis.PublishedRadius, row.Radius.Millimeters), (radius.Governs, radius.Minimum.Millimeters));
        Assert.Equal(1828.8, radius.Minimum.Millimeters, 1e-6);
        Assert.Contains(radius.Findings, finding => finding.Code == "panels-published-condition" && finding.Source == row.Source);
        Assert.Null(PanelBend.MinimumRadius(sheet).Published); // never by itself
        Assert.Equal("row", Assert.Throws<ArgumentException>(() => BentSheet.Of(s_ply6, BendGrain.AlongTheAxis).WithPublished(row)).ParamName);
        Assert.Equal("row", Assert.Throws<ArgumentException>(() => (sheet with { Thickness = Mm(9) }).WithPublished(row)).ParamName);
        PublishedBendingRadius soaked = PublishedBendingRadius.All.First(static any => any is { Condition: BendCondition.HotSoaked, Grain: BendGrain.AroundTheCurve });
        Assert.Contains("dry", Assert.Throws<ArgumentException>(() => (sheet with { Thickness = Mm(1) }).WithPublished(soaked)).Message, StringComparison.Ordinal);
    }

    /// <summary>8629 · 9.525/(2 · 6.129) = 6705 without a further factor (allowable strength, from memory).</summary>
    [Fact]
    public void An_allowable_strength_gets_no_second_factor()
    {
        BentSheet softwood = Sheet(9.525, 8629, 6.129) with { StrengthBasis = PlywoodStrengthBasis.AllowableDesign };
        BendRadius radius = PanelBend.MinimumRadius(softwood);
        Assert.Equal(6705, radius.Elastic.Millimeters, 0.5);
        Assert.Equal((1.0, "default-bend-factor-allowable"), (radius.DefaultsUsed.Single().Figure.Value, radius.DefaultsUsed.Single().Source.Id));
        Assert.Contains(radius.Findings, static finding => finding.Code == "panels-allowable-strength");
        Assert.DoesNotContain(radius.Findings, static finding => finding.Code == "panels-bend-factor-low");
        Assert.Equal(PlywoodStrengthBasis.AllowableDesign, BentSheet.Of(SheetGoods.Named("3/8 in plywood PS 1 unsanded"), BendGrain.AlongTheAxis).StrengthBasis);
    }

    /// <summary>The table's own sheets agree with the demo van's figures.</summary>
    [Fact]
    public void Sheets_of_the_table_carry_their_figures()
    {
        Assert.Equal(1601.509, PanelBend.MinimumRadius(BentSheet.Of(SheetGoods.Birch6, BendGrain.AroundTheCurve)).Minimum.Millimeters, 0.0005);
        Assert.Equal(3696.775, PanelBend.MinimumRadius(BentSheet.Of(SheetGoods.Birch15, BendGrain.AroundTheCurve)).Minimum.Millimeters, 0.0005);
    }

    [Fact]
    public void A_factor_under_the_usual_is_a_caution()
    {
        BentSheet sheet = Sheet(6, 5000, 30);
        Assert.Contains(PanelBend.MinimumRadius(sheet with { Factor = 1.49 }).Findings, static finding => finding.Code == "panels-bend-factor-low");
        Assert.DoesNotContain(PanelBend.MinimumRadius(sheet with { Factor = 1.5 }).Findings, static finding => finding.Code == "panels-bend-factor-low");
        Assert.Empty(PanelBend.MinimumRadius(sheet with { Factor = 1.5 }).DefaultsUsed);
    }

    /// <summary>
    /// The demo van's band bows along too, R 57,800: over 352 mm it rises 7 around and 0.268 along: 1.87 of 10.24 mm², 0.183; the stretch takes 1.027 of 5.09 MPa, 0.202, by the figures with the grain. The same on R 5000 along: 6.99 · 3.10 = 21.7
    /// of 10.24 is 2.1 times too much; the stretch, 11.87 of 5.09 MPa, 2.33 times.
    /// </summary>
    [Fact]
    public void Double_curvature_is_refused_beyond_the_limit_and_says_why()
    {
        BendCase band = new(BentSheet.Of(s_ply6, BendGrain.AlongTheAxis), Mm(2216)) { Rows = BentSheet.EqualRows(Mm(352), 3), BowAlong = Mm(57_800), Girth = Mm(352), Width = Mm(1200) };
        BendVerdict faint = PanelBend.Judge(band), strong = PanelBend.Judge(band with { BowAlong = Mm(-5000) }), none = PanelBend.Judge(band with { BowAlong = null });
        Assert.Equal(12737 * 352.0 * 352 / (12 * 2216.0 * 57_800) / 5.09, faint.DoubleCurvatureShare!.Value, 1e-9);
        Assert.Equal(0.202, faint.DoubleCurvatureShare.Value, 0.0005);
        Assert.True(faint.Follows);
        Assert.Null(none.DoubleCurvatureShare);
        Assert.False(strong.Follows);
        Assert.Equal(2.332, strong.DoubleCurvatureShare!.Value, 0.0005);
        Assert.Equal("panels-double-curvature", strong.Findings[0].Code);
        Assert.Equal(["panel.Girth", "panel.Width"], PanelBend.CheckJudge(band with { Girth = null, Width = null }).Select(static problem => problem.Parameter));
        WorkingsCheck.Recompute(strong.Explain());

        // A thick narrow piece does not buckle; there the stretch decides: 12737 · 100²/(12 · 1000 · 1000) = 10.6 of 5.09 MPa.
        BendVerdict thick = PanelBend.Judge(new BendCase(Sheet(30, 12737, 50.9), Mm(1000)) { BowAlong = Mm(1000), Girth = Mm(100), Width = Mm(100) });
        Assert.Equal(12737 * 100.0 * 100 / (12 * 1000.0 * 1000) / 5.09, thick.DoubleCurvatureShare!.Value, 1e-9);
    }

    /// <summary>
    /// A sheet that cannot pass the arc has departure and slope 0 at every held row but the edges', so its outer bay is a beam propped at the edge and clamped at the
    /// row: from w'' = 1 - M x/a, w(0) = w(a) = w'(a) = 0 follows M = 1.5, whatever lies between. (2000 - 3.2)/1.5 = 1331.2, under the 1601.5 allowed.
    /// </summary>
    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(9)]
    public void A_hollow_surface_behind_the_whole_sheet_bends_it_as_the_worst_rows_do(int rows)
    {
        BendVerdict wall = PanelBend.Judge(new BendCase(Sheet(6.4, 12737, 50.9), Mm(2000)) { Rows = BentSheet.EqualRows(Mm(351), rows), Backing = SheetBacking.AllOver });
        Assert.Equal(1.5, wall.CurvatureRatio);
        Assert.Equal(1996.8 / 1.5, wall.PeakRadius!.Value.Millimeters, 1e-6);
        Assert.False(wall.Follows);
        Assert.Equal("panels-bend-too-tight", wall.Findings[0].Code);
        WorkingsCheck.Recompute(wall.Explain());
    }

    /// <summary>Allowed along the axis 1601.5 (12737 · 6.4/50.9): (300 - 3.2)/1.5 = 198 and (500 - 3.2)/1.5 = 331 are far under it; 57,800 is not.</summary>
    [Fact]
    public void A_bow_along_the_axis_is_a_bend_too()
    {
        BendCase easy = new(BentSheet.Of(s_ply6, BendGrain.AlongTheAxis), null) { BowAlong = Mm(300), Girth = Mm(400), Width = Mm(1000) };
        BendVerdict flat = PanelBend.Judge(easy), strip = PanelBend.Judge(easy with { WallRadius = Mm(20_000), BowAlong = Mm(500), Girth = Mm(20) });
        foreach (BendVerdict verdict in new[] { flat, strip })
        {
            Assert.False(verdict.Follows);
            Assert.True(verdict.HasProblem);
            Assert.Equal(("panels-bow-too-tight", Severity.Problem), (verdict.Findings[0].Code, verdict.Findings[0].Severity));
            WorkingsCheck.Recompute(verdict.Explain());
        }

        Assert.Equal(1601.509, Value(strip, "minimum-radius"), 0.0005);
        Assert.Equal(496.8 / 1.5, Value(strip, "peak-radius"), 1e-6);
        Assert.True(PanelBend.Judge(easy with { BowAlong = Mm(57_800) }).Follows);

        // Limits met: (R - 3.2)/1.5 against 1601.509... on a hollow; a bulging surface under the whole sheet bends it as itself.
        double least = 12737 * 6.4 / 50.9;
        Assert.True(PanelBend.Judge(easy with { BowAlong = Mm((least * 1.5) + 3.2001) }).Follows);
        Assert.False(PanelBend.Judge(easy with { BowAlong = Mm((least * 1.5) + 3.1999) }).Follows);
        Assert.True(PanelBend.Judge(easy with { BowAlong = Mm(-least + 3.1999), Backing = SheetBacking.AllOver }).Follows);
        Assert.False(PanelBend.Judge(easy with { BowAlong = Mm(-least + 3.2001), Backing = SheetBacking.AllOver }).Follows);

        static double Value(BendVerdict verdict, string name) => verdict.Findings[0].Values.Single(value => value.Name == name).Value;
    }

    /// <summary>Without a table only the figures around the curve are known: 1000 for E 5000, t 6, f 30. They stand for the other way, and the verdict says so.</summary>
    [Fact]
    public void Where_the_other_direction_is_not_known_the_given_figures_stand_for_it_with_a_caution()
    {
        BendCase panel = new(Sheet(6, 5000, 30), Mm(20_000)) { BowAlong = Mm(1503), Girth = Mm(20), Width = Mm(1000), Rows = BentSheet.EqualRows(Mm(20), 3) };
        Assert.Contains(PanelBend.Judge(panel).Findings, static finding => finding is { Code: "panels-bow-figures", Severity: Severity.Caution });
        Assert.True(PanelBend.Judge(panel).Follows);
        Assert.False(PanelBend.Judge(panel with { BowAlong = Mm(1502.9) }).Follows);
        Assert.DoesNotContain(PanelBend.Judge(panel with { Sheet = BentSheet.Of(s_ply6, BendGrain.AlongTheAxis) }).Findings, static finding => finding.Code == "panels-bow-figures");
        Assert.DoesNotContain(PanelBend.Judge(panel with { BowAlong = null }).Findings, static finding => finding.Code == "panels-bow-figures");
    }

    [Theory]
    [InlineData(2003)]
    [InlineData(100_000)]
    [InlineData(-2003)]
    public void Two_rows_do_not_make_a_sheet_follow(double radius)
    {
        BendVerdict two = PanelBend.Judge(new BendCase(Sheet(6, 5000, 30), Mm(radius)) { Rows = BentSheet.EqualRows(Mm(400), 2) });
        Assert.False(two.Follows);
        Assert.True(two.HasProblem);
        Assert.Equal(("panels-not-held", Severity.Problem), (two.Findings[0].Code, two.Findings[0].Severity));
        Assert.DoesNotContain(two.Findings, static finding => finding.Code == "panels-bend-too-tight");
        Assert.True(PanelBend.Judge(two.Panel with { WallRadius = null }).Follows);
        Assert.Null(PanelBend.Judge(two.Panel with { WallRadius = null }).PeakRadius);
    }

    /// <summary>0.3 mm of E 5000 and f 30 may go to 50; R 100 at the back is 99.85 at the middle. A bay of 99.85 is the radius, π times it is 313.7.</summary>
    [Fact]
    public void Bays_over_the_radius_and_sheets_over_half_a_circle_are_refused()
    {
        BendCase pipe = new(Sheet(0.3, 5000, 30), Mm(100)) { Rows = [Mm(0), Mm(5000), Mm(10_000)] };
        BendVerdict wild = PanelBend.Judge(pipe);
        Assert.False(wild.Follows);
        Assert.Equal(("panels-bay-too-long", Severity.Problem), (wild.Findings[0].Code, wild.Findings[0].Severity));
        Assert.True(PanelBend.Judge(pipe with { Rows = [Mm(0), Mm(99.85), Mm(199.7)] }).Follows);
        Assert.False(PanelBend.Judge(pipe with { Rows = [Mm(0), Mm(99.9), Mm(199.7)] }).Follows);
        Finding caution = PanelBend.Judge(pipe with { Rows = [Mm(0), Mm(90), Mm(180)] }).Findings.Single(static finding => finding.Code == "panels-bay-not-shallow");
        Assert.Contains("not known", caution.Message, StringComparison.Ordinal);
        Assert.True(PanelBend.Judge(pipe with { Rows = BentSheet.EqualRows(Mm(313.6), 11) }).Follows);
        Assert.False(PanelBend.Judge(pipe with { Rows = BentSheet.EqualRows(Mm(313.8), 11) }).Follows);
        Assert.False(PanelBend.Judge(pipe with { Rows = null, Girth = Mm(313.8) }).Follows);
        Assert.True(PanelBend.Judge(pipe with { Rows = null, Girth = Mm(313.6) }).Follows);
    }

    /// <summary>
    /// Around R 1600 and along R 2000, bulging and under the whole sheet. As laid the grain goes along the axis: 1603.2 of 1051.1 around and 2003.2 of 1601.5 along. Turned
    /// 1603.2 of 1601.5 and 2003.2 of 1051.1: both pass. Along R 1500 the sheet as laid fails, and turned it passes around and along.
    /// </summary>
    [Fact]
    public void The_other_grain_is_judged_both_ways()
    {
        BendCase panel = new(BentSheet.Of(s_ply6, BendGrain.AlongTheAxis), Mm(-1600)) { Backing = SheetBacking.AllOver, BowAlong = Mm(-2000), Girth = Mm(100), Width = Mm(1000) };
        BendVerdict both = PanelBend.Judge(panel), turned = PanelBend.Judge(panel with { BowAlong = Mm(-1500) }), neither = PanelBend.Judge(panel with { WallRadius = Mm(-1500), BowAlong = Mm(-1500) });
        Assert.Equal((true, true), (both.Follows, both.OtherGrainFollows));
        Assert.Equal((false, true), (turned.Follows, turned.OtherGrainFollows));
        Assert.Equal((false, false), (neither.Follows, neither.OtherGrainFollows));
    }

    /// <summary>Along the axis E/f is 4763/29 = 164, around 12737/50.9 = 250: whichever way the sheet lies, the greater decides the stretch. 400²/(12 · 3000 · 3000) · 250 · 10.</summary>
    [Fact]
    public void The_stretch_is_held_against_the_direction_that_takes_less_of_it()
    {
        SheetGoods thick = new("thick", Mm(60), Mm(60), "ply") { Bending = new PlywoodBending(Mm(60), Pressure.FromMegapascals(12737), Pressure.FromMegapascals(4763), Pressure.FromMegapascals(50.9), Pressure.FromMegapascals(29)) };
        foreach (BendGrain grain in new[] { BendGrain.AlongTheAxis, BendGrain.AroundTheCurve })
        {
            BendVerdict verdict = PanelBend.Judge(new BendCase(BentSheet.Of(thick, grain), Mm(3000)) { BowAlong = Mm(3000), Girth = Mm(400), Width = Mm(400) });
            Assert.Equal(12737 * 400.0 * 400 / (12 * 3000.0 * 3000) / 5.09, verdict.DoubleCurvatureShare!.Value, 1e-9);
            WorkingsCheck.Recompute(verdict.Explain());
        }
    }

    /// <summary>20/49 = 0.41 mm apart is what no calculator takes; 49/49 is 1 mm.</summary>
    [Fact]
    public void Equal_rows_are_at_least_a_millimetre_apart()
    {
        Assert.Equal("girth", Assert.Throws<ArgumentOutOfRangeException>(static () => BentSheet.EqualRows(Mm(20), 50)).ParamName);
        Assert.Equal(50, BentSheet.EqualRows(Mm(49), 50).Count);
        Assert.Empty(PanelBend.CheckJudge(new BendCase(Sheet(6, 5000, 30), Mm(2003)) { Rows = BentSheet.EqualRows(Mm(49), 50) }));
    }

    [Fact]
    public void Radii_compare_by_their_figures()
    {
        BentSheet sheet = Sheet(25.4, 5000, 30);
        BendRadius one = PanelBend.MinimumRadius(sheet), same = PanelBend.MinimumRadius(sheet with { Thickness = Length.FromInches(1), Elasticity = Pressure.FromGigapascals(5) }), other = PanelBend.MinimumRadius(sheet with { Factor = 2.5 });
        Assert.True(one == same);
        Assert.True(one.Equals((object)same));
        Assert.Equal(one.GetHashCode(), same.GetHashCode());
        Assert.True(one != other);
        Assert.False(one.Equals("a radius"));
        Assert.Equal(sheet, sheet with { Thickness = Length.FromInches(1) });
        Assert.Equal("no sheet", default(BendRadius).ToString());
    }

    [Fact]
    public void A_minimum_radius_allocates_nothing()
    {
        BentSheet sheet = Sheet(6.4, 12737, 50.9) with { Factor = 1.2, PublishedRadius = Mm(610) };
        for (int i = 0; i < 64; i++)
        {
            s_problem = PanelBend.MinimumRadius(sheet).HasProblem;
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1024; i++)
        {
            s_problem |= PanelBend.MinimumRadius(sheet).Minimum.Value < 0;
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static BentSheet Sheet(double thickness, double elasticity, double strength) => new(Mm(thickness), Pressure.FromMegapascals(elasticity), Pressure.FromMegapascals(strength));
}
