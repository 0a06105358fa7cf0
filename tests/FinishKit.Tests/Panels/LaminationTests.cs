using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Panels;

/// <summary>Layers over a form: the builders' rule, hand examples, and stresses in thin slices before and after the form.</summary>
[Properties(MaxTest = 200, EndSize = 1_000_000)]
public sealed class LaminationTests
{
    private static readonly BentSheet s_veneer = new(Mm(3), Pressure.FromMegapascals(12_000), Pressure.FromMegapascals(60));

    [Fact]
    public void ToRadius()
    {
        #region example: Lamination.ToRadius
        BentSheet thin = new(Mm(3), Pressure.FromMegapascals(12000), Pressure.FromMegapascals(60));
        LaminationResult arch = Lamination.ToRadius(LaminatedBend.Of(thin, 4, Mm(800)));
        Length? form = arch.FormRadius;                     // 750 mm: 4 layers give back a sixteenth
        bool takesIt = arch.Passes;                         // true: 600 mm are allowed, the inner layer takes 745.5
        #endregion
        Assert.Equal(750, form!.Value.Millimeters, 1e-6);
        Assert.True(takesIt);
        Assert.Equal((600.0, 745.5, 0), (arch.LayerMinimumRadius.Millimeters, arch.LayerRadius!.Value.Millimeters, arch.GoverningLayer));
        Assert.Equal((744.0, 756.0), (arch.InsideFormRadius!.Value.Millimeters, arch.OutsideFormRadius!.Value.Millimeters));
        Assert.Equal(604.5, arch.SmallestFormRadius.Millimeters, 1e-6);
        Assert.Equal(604.5 * 16 / 15, arch.SmallestRadius!.Value.Millimeters, 1e-5);
    }

    [Fact]
    public void OnForm()
    {
        #region example: Lamination.OnForm
        BentSheet veneer = new(Mm(3), Pressure.FromMegapascals(12000), Pressure.FromMegapascals(60));
        LaminationResult off = Lamination.OnForm(LaminatedBend.Of(veneer, 2, Mm(900)));
        Length? radius = off.Radius;                        // 1200 mm: two layers give back a quarter of the curvature
        #endregion
        Assert.Equal(1200, radius!.Value.Millimeters, 1e-6);
    }

    [Fact]
    public void Compare()
    {
        #region example: Lamination.Compare
        BentSheet six = new(Mm(6.4), Pressure.FromMegapascals(12737), Pressure.FromMegapascals(50.9));
        BentSheet twelve = new(Mm(12), Pressure.FromMegapascals(10719), Pressure.FromMegapascals(42.9));
        LayersComparison two = Lamination.Compare(new LayersOrSheet(six, 2, twelve, Mm(3818)) { Rows = BentSheet.EqualRows(Mm(1516), 3) });
        bool layersFollow = two.LayersFollow;               // true: 1602 mm are allowed, 2539 taken
        bool sheetFollows = two.SheetFollows;               // false: 2998 mm are allowed, 2541 taken
        #endregion
        Assert.Equal((true, false), (layersFollow, sheetFollows));
        Assert.Equal((3818 - 9.6) / 1.5, two.LayerPeakRadius!.Value.Millimeters, 1e-6);
        Assert.Equal((3818 - 6) / 1.5, two.SheetPeakRadius!.Value.Millimeters, 1e-6);
        Assert.Equal(2998, two.SheetMinimumRadius.Millimeters, 0.5); // 10719 · 12/42.9
        Assert.Equal(2 * 12737 * 262.144 / (10719 * 1728), two.LooseStiffnessRatio, 1e-12);
        Assert.Equal(4 * two.LooseStiffnessRatio, two.GluedStiffnessRatio, 1e-12);
        Assert.Equal(12.8 / 12, two.MassRatio, 1e-12);
        Assert.Null(two.LayersSquareMetreMass);
    }

    /// <summary>A builders' rule, read in a copy: of 3 in of camber in 4 layers 3/16 in is lost, in 8 layers 3/64 in. Camber over one chord goes with the curvature.</summary>
    [Fact]
    public void Check_value_B30_read_in_a_copy()
    {
        double expected = ReferenceTable.CheckValue("B30").Number("expected");
        Assert.Equal(expected, 3 * Lamination.OnForm(LaminatedBend.Of(s_veneer, 4, Mm(9000))).SpringBack, 1e-12);
        Assert.Equal(3 / 64.0, 3 * Lamination.OnForm(LaminatedBend.Of(s_veneer, 8, Mm(9000))).SpringBack, 1e-12);
    }

    /// <summary>Derived: R off the form over that on it is 1.333, 1.125, 1.0667, 1.0286 and 1.0159 for 2, 3, 4, 6 and 8 layers.</summary>
    [Theory]
    [InlineData(2, 1.333)]
    [InlineData(3, 1.125)]
    [InlineData(4, 1.0667)]
    [InlineData(6, 1.0286)]
    [InlineData(8, 1.0159)]
    public void Ratios_of_the_check_values_derived(int layers, double ratio) =>
        Assert.Equal(ratio, Lamination.OnForm(LaminatedBend.Of(s_veneer, layers, Mm(2000))).Radius!.Value.Millimeters / 2000, 0.0005);

    [Fact]
    public void One_layer_springs_back_altogether()
    {
        LaminationResult wanted = Lamination.ToRadius(LaminatedBend.Of(s_veneer, 1, Mm(2000))), formed = Lamination.OnForm(LaminatedBend.Of(s_veneer, 1, Mm(2000)));
        Assert.Equal((1.0, 1.0), (wanted.SpringBack, formed.SpringBack));
        Assert.Null(wanted.FormRadius);
        Assert.Null(formed.Radius);
        Assert.Null(wanted.SmallestRadius);
        Assert.Equal(2000, formed.FormRadius!.Value.Millimeters);
        Assert.All(new[] { wanted, formed }, static result => Assert.Equal("panels-lamination-one-layer", result.Findings[0].Code));
        Assert.All(new[] { wanted, formed }, static result => Assert.True(result.HasProblem));

        // A skin on a thick core: 0.001 of 20 mm leave all but a ten-thousandth: s = (t³ + T³)/(t + T)³ for one stuff.
        double skin = Lamination.OnForm(new LaminatedBend([s_veneer with { Thickness = Mm(0.001) }, s_veneer with { Thickness = Mm(20) }], Mm(90_000))).SpringBack;
        Assert.Equal((1e-9 + 8000) / Math.Pow(20.001, 3), skin, 1e-10);
    }

    /// <summary>Three layers of 2, 3 and 4 mm of one stuff: (8 + 27 + 64)/9³.</summary>
    [Fact]
    public void Unequal_layers_go_by_the_sum_of_cubes_over_the_cube_of_the_sum()
    {
        LaminationResult result = Lamination.ToRadius(new LaminatedBend([s_veneer with { Thickness = Mm(4) }, s_veneer, s_veneer with { Thickness = Mm(2) }], Mm(1000)));
        Assert.Equal(99 / 729.0, result.SpringBack, 1e-12);
        Assert.Equal(630 / 729.0 * 1000, result.FormRadius!.Value.Millimeters, 1e-6);

        // The thick layer lies inside: 2 · 12000 · 4/120 = 800, and its middle 4.5 - 2 inside that of all.
        Assert.Equal((0, 800.0), (result.GoverningLayer, result.LayerMinimumRadius.Millimeters));
        Assert.Equal(802.5, result.SmallestFormRadius.Millimeters, 1e-6);
        Assert.True(result.Passes); // 864.2 on the form
        LaminationResult turned = Lamination.ToRadius(new LaminatedBend([s_veneer with { Thickness = Mm(2) }, s_veneer, s_veneer with { Thickness = Mm(4) }], Mm(1000)));
        Assert.Equal((2, 797.5), (turned.GoverningLayer, turned.SmallestFormRadius.Millimeters));
    }

    /// <summary>A form of 604.5 is just taken, 604.499 is not; what is allowed may be a published radius or have another factor.</summary>
    [Fact]
    public void A_limit_exactly_met_is_met()
    {
        Assert.True(Lamination.OnForm(LaminatedBend.Of(s_veneer, 4, Mm(604.5))).Passes);
        LaminationResult tight = Lamination.OnForm(LaminatedBend.Of(s_veneer, 4, Mm(604.499999)));
        Assert.False(tight.Passes);
        Assert.Equal("panels-lamination-too-tight", tight.Findings[0].Code);
        Assert.True(Lamination.OnForm(LaminatedBend.Of(s_veneer with { Factor = 1 }, 4, Mm(304.5))).Passes);
        Assert.False(Lamination.OnForm(LaminatedBend.Of(s_veneer with { PublishedRadius = Mm(700) }, 4, Mm(604.5))).Passes);
        Assert.Equal(["bend-factor", "stretch-ratio"], tight.DefaultsUsed.Select(static used => used.Figure.Name));
        Assert.Contains(tight.Findings, static finding => finding.Code == "panels-lamination-formula" && finding.Message.Contains("unreliable", StringComparison.Ordinal) && finding.Source!.Reading == SourceReading.Copy);
    }

    [Fact]
    public void Plywood_layers_without_a_stretch_ratio_are_named()
    {
        LaminatedBend ply = LaminatedBend.Of(BentSheet.Of(SheetGoods.Birch6, BendGrain.AlongTheAxis), 3, Mm(3000));
        Assert.Contains(Lamination.ToRadius(ply).Findings, static finding => finding.Code == "panels-lamination-ply");
        Assert.DoesNotContain(Lamination.ToRadius(ply with { StretchRatio = 1.6 }).Findings, static finding => finding.Code == "panels-lamination-ply");
        Assert.DoesNotContain(Lamination.ToRadius(LaminatedBend.Of(s_veneer, 3, Mm(3000))).Findings, static finding => finding.Code == "panels-lamination-ply");
    }

    /// <summary>
    /// Two layers of 6.5 mm birch with the grain around against 12 mm: 2 · 12737 · 6.4³/(10719 · 12³) = 0.36053 loose; glued 4 times that, 1.4421, as solid layers, but with the plies' own
    /// r = 9843.75/12737 = 0.77285 only 1 + 3 r = 3.3185 times it, 1.1964.
    /// </summary>
    [Fact]
    public void Glued_plywood_without_a_stretch_ratio_is_named_in_the_comparison()
    {
        LayersOrSheet choice = new(BentSheet.Of(SheetGoods.Birch6, BendGrain.AroundTheCurve), 2, BentSheet.Of(SheetGoods.Birch12, BendGrain.AroundTheCurve), Mm(3818));
        LayersComparison unknown = Lamination.Compare(choice), known = Lamination.Compare(choice with { StretchRatio = 9843.75 / 12_737 });
        Assert.Equal((0.36053, 1.4421, 1.1964), (Math.Round(unknown.LooseStiffnessRatio, 5), Math.Round(unknown.GluedStiffnessRatio, 4), Math.Round(known.GluedStiffnessRatio, 4)));
        Finding named = unknown.Findings.Single(static finding => finding.Code == "panels-lamination-ply");
        Assert.Equal(Severity.Caution, named.Severity);
        Assert.Contains("1.442", named.Message, StringComparison.Ordinal);
        Assert.Contains(unknown.DefaultsUsed, static used => used is { Figure: { Name: "stretch-ratio", Value: 1 }, Source.Id: "default-stretch-ratio" });
        Assert.DoesNotContain(known.Findings, static finding => finding.Code == "panels-lamination-ply");
        Assert.DoesNotContain(known.DefaultsUsed, static used => used.Figure.Name == "stretch-ratio");

        // Solid layers have that ratio: it is a default, and no caution.
        LayersComparison solid = Lamination.Compare(new LayersOrSheet(s_veneer, 2, s_veneer with { Thickness = Mm(6) }, Mm(3818)));
        Assert.DoesNotContain(solid.Findings, static finding => finding.Code == "panels-lamination-ply");
        Assert.Contains(solid.DefaultsUsed, static used => used.Figure.Name == "stretch-ratio");
        Assert.Equal(1, solid.GluedStiffnessRatio, 1e-12); // two glued of 3 mm are one of 6
    }

    /// <summary>What belongs to a least radius is said of layer and sheet, and once where it is the same.</summary>
    [Fact]
    public void Factor_strength_and_published_radius_of_the_sheet_are_named_too()
    {
        LayersOrSheet choice = new(s_veneer, 2, s_veneer with { Thickness = Mm(6) }, Mm(3818));
        Assert.Equal(["panels-bend-factor-low"], Codes(choice with { Sheet = choice.Sheet with { Factor = 1 } }));
        Assert.Equal(["panels-bend-factor-low"], Codes(choice with { Layer = choice.Layer with { Factor = 1 }, Sheet = choice.Sheet with { Factor = 1 } }));
        Assert.Equal(["panels-bend-factor-low", "panels-bend-factor-low"], Codes(choice with { Layer = choice.Layer with { Factor = 1.25 }, Sheet = choice.Sheet with { Factor = 1 } }));
        Assert.Equal(["panels-allowable-strength"], Codes(choice with { Sheet = choice.Sheet with { StrengthBasis = PlywoodStrengthBasis.AllowableDesign } }));
        Assert.Equal(["panels-published-condition"], Codes(choice with { Sheet = choice.Sheet with { PublishedRadius = Mm(700) } }));
        Assert.Empty(Codes(choice));
        Assert.Single(Lamination.Compare(choice).Findings, static finding => finding.Code == "panels-bend-dry");

        static string[] Codes(LayersOrSheet asked) => [.. Lamination.Compare(asked).Findings.Select(static finding => finding.Code).Where(static code => code is "panels-bend-factor-low" or "panels-allowable-strength" or "panels-published-condition")];
    }

    /// <summary>Of the layers over a form the thick one governs (2 · 12000 · 4/120 = 800); the thin one's factor of 1 is named all the same, and every default that a layer rests on.</summary>
    [Fact]
    public void What_layers_that_do_not_govern_rest_on_is_named()
    {
        BentSheet thick = s_veneer with { Thickness = Mm(4) }, thin = s_veneer with { Thickness = Mm(2) };
        LaminationResult low = Lamination.ToRadius(new LaminatedBend([thick, thin with { Factor = 1 }], Mm(2000)));
        Assert.Equal(0, low.GoverningLayer);
        Assert.Single(low.Findings, static finding => finding.Code == "panels-bend-factor-low");
        Assert.Equal(["default-bend-factor", "default-stretch-ratio"], low.DefaultsUsed.Select(static used => used.Source.Id));
        LaminationResult both = Lamination.ToRadius(new LaminatedBend([thick, thin with { StrengthBasis = PlywoodStrengthBasis.AllowableDesign }, thin], Mm(2000)) { StretchRatio = 1 });
        Assert.Equal(["default-bend-factor", "default-bend-factor-allowable"], both.DefaultsUsed.Select(static used => used.Source.Id));
        Assert.Single(both.Findings, static finding => finding.Code == "panels-allowable-strength");
        Assert.Single(both.Findings, static finding => finding.Code == "panels-bend-dry");
    }

    /// <summary>What is a mass per area says so in its name: nobody is to add it up as a panel's.</summary>
    [Fact]
    public void A_mass_of_a_square_metre_says_so_in_its_name()
    {
        string[] masses = [.. typeof(LayersComparison).GetProperties().Where(static property => property.PropertyType == typeof(Mass?)).Select(static property => property.Name)];
        Assert.Equal(2, masses.Length);
        Assert.All(masses, static name => Assert.Contains("SquareMetre", name, StringComparison.Ordinal));
    }

    /// <summary>The demo van's ceiling, R 3818 under three rows: 15 and 12 mm fail at 2540, two of 6.5 follow. Masses at 680 kg/m3: 8.704 and 10.064 kg.</summary>
    [Theory]
    [InlineData("15 mm birch plywood sanded", false, 3697, 10.064)]
    [InlineData("12 mm birch plywood sanded", false, 2998, 8.16)]
    [InlineData("9 mm birch plywood sanded", true, 2299, 6.256)]
    public void Two_thin_layers_follow_where_one_thick_sheet_does_not(string name, bool follows, double allowed, double mass)
    {
        LayersOrSheet choice = new(BentSheet.Of(SheetGoods.Birch6, BendGrain.AroundTheCurve), 2, BentSheet.Of(SheetGoods.Named(name), BendGrain.AroundTheCurve), Mm(3818)) { Rows = BentSheet.EqualRows(Mm(1516), 3), Density = Density.FromKilogramsPerCubicMeter(680) };
        LayersComparison result = Lamination.Compare(choice);
        Assert.Equal((true, follows), (result.LayersFollow, result.SheetFollows));
        Assert.Equal(allowed, result.SheetMinimumRadius.Millimeters, 0.5);
        Assert.Equal(2540, result.SheetPeakRadius!.Value.Millimeters, 2.5);
        Assert.Equal(mass, result.SheetSquareMetreMass!.Value.Kilograms, 1e-9);
        Assert.Equal(8.704, result.LayersSquareMetreMass!.Value.Kilograms, 1e-9);
        Assert.Equal(follows ? 0 : 1, result.Findings.Count(static finding => finding.Code == "panels-layers-sheet-fails"));

        // Each is what the bend calculator says of it alone.
        Assert.Equal(PanelBend.Judge(new BendCase(choice.Sheet, Mm(3818)) { Rows = choice.Rows }).Follows, result.SheetFollows);
        Assert.Equal(PanelBend.Judge(new BendCase(choice.Layer, Mm(3818 - 6.4)) { Rows = choice.Rows }).PeakRadius!.Value.Millimeters, result.LayerPeakRadius!.Value.Millimeters);
        Assert.Equal(PanelBend.Judge(new BendCase(choice.Layer, Mm(-3818)) { Rows = choice.Rows }).PeakRadius!.Value.Millimeters, Lamination.Compare(choice with { WallRadius = Mm(-3818) }).LayerPeakRadius!.Value.Millimeters);
        Assert.True(Lamination.Compare(choice with { WallRadius = Mm(900) }).HasProblem);
        Assert.True(Lamination.Compare(choice with { Rows = BentSheet.EqualRows(Mm(1516), 2) }).HasProblem);
        LayersComparison flat = Lamination.Compare(choice with { WallRadius = null });
        Assert.Equal((true, true), (flat.LayersFollow, flat.SheetFollows));
        Assert.Null(flat.LayerPeakRadius);
        Assert.Equal("panels-layers-fail", Lamination.Compare(choice with { Layer = choice.Sheet, Sheet = choice.Layer, WallRadius = Mm(3200) }).Findings[0].Code);
    }

    /// <summary>
    /// Another way round: every layer in slices. On the form a slice is strained by its distance from its own layer's middle; off it the whole turns back about an axis, by what makes force and
    /// moment of all slices none (two equations). The curvature lost over that of the form is the spring-back; nowhere is the stress of equal layers more than an eighth over that on the form (the slices see it to a quarter of a percent).
    /// </summary>
    [Property]
    public void Stresses_in_slices_agree(PositiveInt seed)
    {
        Random random = new(seed.Get);
        int count = random.Next(1, 9);
        bool equal = random.Next(2) == 0;
        BentSheet[] layers = [.. Enumerable.Range(0, count).Select(_ => new BentSheet(Mm(random.Next(10, 80) / 10.0), Pressure.FromMegapascals(random.Next(1000, 20_000)), Pressure.FromMegapascals(60)))];
        if (equal)
        {
            Array.Fill(layers, layers[0]);
        }

        List<(double Z, double Dz, double E, double Own)> slices = [];
        double lower = 0;
        foreach (BentSheet layer in layers)
        {
            double t = layer.Thickness.Millimeters;
            for (int i = 0; i < 400; i++)
            {
                double z = (i + 0.5) * t / 400;
                slices.Add((lower + z, t / 400, layer.Elasticity.Megapascals, z - (t / 2)));
            }

            lower += t;
        }

        (double back, double worst) = Release(slices);
        LaminationResult result = Lamination.OnForm(new LaminatedBend(layers, Mm(50_000)));
        Assert.Equal(back, result.SpringBack, 2e-5 * back);
        Assert.True(!equal || worst <= 1.125 * 1.002, $"{worst} times the stress on the form.");
        WorkingsCheck.Recompute(result.Explain());
    }

    /// <summary>The same for plywood, ply by ply: the layers' stiffness in bending and in stretching come from the lay-up.</summary>
    [Theory]
    [InlineData(2, BendGrain.AroundTheCurve, 0.3013)]
    [InlineData(2, BendGrain.AlongTheAxis, 0.1717)]
    [InlineData(5, BendGrain.AroundTheCurve, 0.0512)]
    public void Plywood_layers_in_slices_agree(int count, BendGrain grain, double expected)
    {
        LayUpBending ply = LayeredPly.InBending(PlyLayUp.Birch(Mm(6.4), 5));
        double ratio = grain == BendGrain.AroundTheCurve ? ply.StretchElasticityAlong.Megapascals / ply.ElasticityAlong.Megapascals : ply.StretchElasticityAcross.Megapascals / ply.ElasticityAcross.Megapascals;
        List<(double Z, double Dz, double E, double Own)> slices = [];
        double lower = 0;
        for (int n = 0; n < count; n++)
        {
            double inLayer = 0;
            foreach (Veneer veneer in ply.LayUp.Veneers)
            {
                for (int i = 0; i < 200; i++)
                {
                    double dz = veneer.Thickness.Millimeters / 200, z = inLayer + ((i + 0.5) * dz);
                    slices.Add((lower + z, dz, veneer.Direction == PlyDirection.Along == (grain == BendGrain.AroundTheCurve) ? 17_500 : 0, z - 3.2));
                }

                inLayer += veneer.Thickness.Millimeters;
            }

            lower += 6.4;
        }

        double back = Lamination.OnForm(LaminatedBend.Of(BentSheet.Of(ply.ToSheet("ply"), grain), count, Mm(50_000)) with { StretchRatio = ratio }).SpringBack;
        Assert.Equal(Release(slices).Back, back, 1e-5);
        Assert.Equal(expected, back, 0.00005);
    }

    [Property]
    public void There_and_back_and_more_layers_spring_back_less(PositiveInt seed)
    {
        Random random = new(seed.Get);
        BentSheet layer = new(Mm(random.Next(5, 80) / 10.0), Pressure.FromMegapascals(random.Next(1000, 20_000)), Pressure.FromMegapascals(60));
        int count = random.Next(2, 50);
        double radius = random.Next(2000, 900_000);
        LaminatedBend bend = LaminatedBend.Of(layer, count, Mm(radius)) with { StretchRatio = random.Next(2) == 0 ? null : random.Next(5, 300) / 100.0 };
        LaminationResult there = Lamination.ToRadius(bend), back = Lamination.OnForm(bend with { Radius = there.FormRadius!.Value });
        Assert.Equal(radius, back.Radius!.Value.Millimeters, 1e-5);
        Assert.Equal(there.SmallestFormRadius, back.SmallestFormRadius);
        LaminationResult more = Lamination.ToRadius(LaminatedBend.Of(layer, count + (count < 50 ? 1 : 0), Mm(radius)) with { StretchRatio = bend.StretchRatio });
        Assert.True(more.SpringBack <= there.SpringBack && more.FormRadius!.Value.Millimeters >= there.FormRadius.Value.Millimeters && there.FormRadius.Value.Millimeters < radius);

        // Twice the size; mirrored layers; layers split into unequal ones of the same stuff go the general way and meet the rule.
        LaminationResult twice = Lamination.ToRadius(bend with { Layers = [.. bend.Layers.Select(static one => one with { Thickness = Mm(2 * one.Thickness.Millimeters) })], Radius = Mm(Math.Min(1e6, 2 * radius)) });
        Assert.Equal(there.SpringBack, twice.SpringBack, 1e-12);
        Assert.Equal(2 * there.SmallestFormRadius.Millimeters, twice.SmallestFormRadius.Millimeters, 1e-5);
        IReadOnlyList<BentSheet> mixed = [.. bend.Layers.Take(count - 1), layer with { Thickness = Mm(layer.Thickness.Millimeters + 0.000001) }];
        Assert.Equal(there.SpringBack, Lamination.ToRadius(bend with { Layers = mixed }).SpringBack, 1e-5);
        Assert.Equal(Lamination.ToRadius(bend with { Layers = mixed }).SpringBack, Lamination.ToRadius(bend with { Layers = [.. mixed.Reverse()] }).SpringBack, 1e-10);
    }

    [Fact]
    public void Many_layers_keep_nearly_all_of_the_bend() =>
        Assert.Equal(1 / 2500.0, 1 - (Lamination.ToRadius(LaminatedBend.Of(s_veneer with { Thickness = Mm(0.5) }, 50, Mm(2000))).FormRadius!.Value.Millimeters / 2000), 1e-9);

    [Fact]
    public void All_problems_are_reported_at_once()
    {
        LaminatedBend bad = new([null!, s_veneer with { Thickness = Mm(0), Factor = 11 }], Mm(0)) { StretchRatio = 0 };
        Assert.Equal(["bend.Radius", "bend.StretchRatio", "bend.Layers[0]", "bend.Layers[1].Thickness", "bend.Layers[1].Factor"], Lamination.CheckToRadius(bad).Select(static problem => problem.Parameter));
        Assert.Equal(["bend.Layers"], Lamination.CheckOnForm(new LaminatedBend([], Mm(100))).Select(static problem => problem.Parameter));
        Assert.Equal("layers", Assert.Throws<ArgumentOutOfRangeException>(static () => LaminatedBend.Of(s_veneer, 51, Mm(100))).ParamName);
        LayersOrSheet choice = new(null!, 1, s_veneer with { Thickness = Mm(0) }, Mm(0)) { Rows = [Mm(1)], StretchRatio = 21, Density = Density.FromKilogramsPerCubicMeter(1) };
        Assert.Equal(["choice.Layer", "choice.Sheet.Thickness", "choice.Layers", "choice.WallRadius", "choice.Rows", "choice.StretchRatio", "choice.Density"], Lamination.CheckCompare(choice).Select(static problem => problem.Parameter));
        Assert.Equal(["choice.WallRadius"], Lamination.CheckCompare(new LayersOrSheet(s_veneer, 10, s_veneer, Mm(30))).Select(static problem => problem.Parameter));
        Assert.Equal(LaminatedBend.Of(s_veneer, 2, Mm(25.4)), LaminatedBend.Of(s_veneer, 2, Length.FromInches(1)));
    }

    private static (double Back, double Worst) Release(List<(double Z, double Dz, double E, double Own)> slices)
    {
        // Strain off the form, for curvature 1 on it: own - (a + b z); force and moment none.
        double a0 = 0, a1 = 0, a2 = 0, f0 = 0, f1 = 0;
        foreach ((double z, double dz, double e, double own) in slices)
        {
            a0 += e * dz;
            a1 += e * dz * z;
            a2 += e * dz * z * z;
            f0 += e * dz * own;
            f1 += e * dz * z * own;
        }

        double determinant = (a0 * a2) - (a1 * a1), a = ((f0 * a2) - (f1 * a1)) / determinant, b = ((a0 * f1) - (a1 * f0)) / determinant;
        double formed = slices.Max(static slice => Math.Abs(slice.E * slice.Own)), left = slices.Max(slice => Math.Abs(slice.E * (slice.Own - a - (b * slice.Z))));
        return (b, left / formed);
    }
}
