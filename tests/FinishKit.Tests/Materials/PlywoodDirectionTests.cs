using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Materials;

/// <summary>Plywood by direction and published bending radii, row by row.</summary>
public sealed class PlywoodDirectionTests
{
    private const string Along = "fm_k_along_MPa", Across = "fm_k_across_MPa";

    public static TheoryData<string> Birch() => [.. ReferenceTable.Read("tables-plywood-finnish-birch.csv").Select(row => row["nominal_mm"])];

    public static TheoryData<int> Radii() => [.. Enumerable.Range(0, ReferenceTable.Read("tables-bend-radius.csv").Count)];

    [Theory]
    [MemberData(nameof(Birch))]
    public void Birch_has_the_reference_figures(string nominal)
    {
        // MEMORY: Handbook of Finnish Plywood, chapter 3.
        IReadOnlyDictionary<string, string> row = BirchRow(nominal);
        Assert.Contains("MEMORY (table)", row["tag"], StringComparison.Ordinal);
        SheetGoods sheet = SheetGoods.Named(nominal + " mm birch plywood sanded");
        PlywoodBending bending = sheet.Bending!;
        Assert.Equal((int)row.Number("plies"), sheet.Plies!.Value);
        Assert.Equal(row.Number("mean_mm"), bending.MeanThickness.Millimeters);
        Assert.Equal(row.Number("E_mean_along_MPa"), bending.ElasticityAlong.Megapascals);
        Assert.Equal(row.Number("E_mean_across_MPa"), bending.ElasticityAcross.Megapascals);
        Assert.Equal(row.Number(Along), bending.StrengthAlong.Megapascals);
        Assert.Equal(row.Number(Across), bending.StrengthAcross.Megapascals);
        Assert.Equal(PlywoodStrengthBasis.Characteristic, bending.StrengthBasis);
        Assert.Equal((SourceKind.Published, SourceReading.Memory), (bending.Source.Kind, bending.Source.Reading));

        // Unsanded sheets are thicker by an unknown share: the sanded figures would take them round too tight a curve.
        Assert.Null(SheetGoods.Named(nominal + " mm birch plywood unsanded").Bending);
    }

    [Theory]
    [MemberData(nameof(Birch))]
    public void A_layered_beam_gives_the_reference_figures(string nominal)
    {
        // DERIVED: plies of 17500 and 70 MPa along their grain and nothing across it, 1.4 mm inside, faces making up the mean thickness.
        IReadOnlyDictionary<string, string> row = BirchRow(nominal);
        PlywoodBending bending = SheetGoods.Named(nominal + " mm birch plywood sanded").Bending!;
        int plies = (int)row.Number("plies");
        double t = bending.MeanThickness.Millimeters, face = (t - ((plies - 2) * 1.4)) / 2, bottom = -t / 2, along = 0, across = 0;
        for (int ply = 0; ply < plies; ply++)
        {
            double top = bottom + (ply == 0 || ply == plies - 1 ? face : 1.4);
            double inertia = ((top * top * top) - (bottom * bottom * bottom)) / 3;
            along += ply % 2 == 0 ? inertia : 0;
            across += ply % 2 == 0 ? 0 : inertia;
            bottom = top;
        }

        double whole = t * t * t / 12;
        double eAlong = 17500 * along / whole, eAcross = 17500 * across / whole;
        double fAlong = 70 * along / whole, fAcross = 70 * across / whole * t / (t - (2 * face));
        Assert.Equal(row.Number("model_E_along"), eAlong, 0.051);
        Assert.Equal(row.Number("model_E_across"), eAcross, 0.051);
        Assert.Equal(row.Number("model_fm_along"), fAlong, 0.0051);
        Assert.Equal(row.Number("model_fm_across"), fAcross, 0.0051);
        Assert.Equal(eAlong, bending.ElasticityAlong.Megapascals, 0.51);
        Assert.Equal(eAcross, bending.ElasticityAcross.Megapascals, 0.51);
        Assert.Equal(fAlong, bending.StrengthAlong.Megapascals, 0.051);
        Assert.Equal(fAcross, bending.StrengthAcross.Megapascals, 0.051);
    }

    [Theory]
    [MemberData(nameof(Birch))]
    public void Radius_at_the_strength_is_the_reference_one(string nominal)
    {
        // DERIVED from MEMORY: R = E t/(2 f), printed to the millimetre.
        IReadOnlyDictionary<string, string> row = BirchRow(nominal);
        PlywoodBending bending = SheetGoods.Named(nominal + " mm birch plywood sanded").Bending!;
        double t = bending.MeanThickness.Millimeters;
        Assert.Equal(row.Number("R_at_fm_along_mm(E t/2f)"), bending.ElasticityAlong.Megapascals * t / (2 * bending.StrengthAlong.Megapascals), 0.51);
        Assert.Equal(row.Number("R_at_fm_across_mm"), bending.ElasticityAcross.Megapascals * t / (2 * bending.StrengthAcross.Megapascals), 0.51);
    }

    [Fact]
    public void B21_birch_of_6_5_mm_across()
    {
        Assert.Equal("MEMORY", ReferenceTable.CheckValue("B21")["tag"]);
        PlywoodBending bending = SheetGoods.Birch6.Bending!;
        Assert.Equal(ReferenceTable.CheckValue("B21").Number("expected"), bending.ElasticityAcross.Megapascals * bending.MeanThickness.Millimeters / (2 * bending.StrengthAcross.Megapascals), 0.6);
    }

    [Fact]
    public void B22_layered_beam_of_6_5_mm()
    {
        Assert.Equal("DERIVED", ReferenceTable.CheckValue("B22")["tag"]);
        string[] expected = ReferenceTable.CheckValue("B22")["expected"].Split(" / ");
        Assert.Equal(double.Parse(expected[0], CultureInfo.InvariantCulture), SheetGoods.Birch6.Bending!.ElasticityAlong.Megapascals, 1);
        Assert.Equal(double.Parse(expected[1], CultureInfo.InvariantCulture), SheetGoods.Birch6.Bending!.ElasticityAcross.Megapascals, 1);
    }

    [Theory]
    [InlineData("3/8 in", 0.375, 66_000, 3600, 250, 54)]
    [InlineData("7/16 in", 0.4375, 86_000, 5200, 320, 64)]
    [InlineData("15/32 in", 0.46875, 125_000, 8100, 370, 92)]
    [InlineData("19/32 in", 0.59375, 250_000, 18_000, 625, 150)]
    [InlineData("23/32 in", 0.71875, 440_000, 29_500, 845, 225)]
    public void Softwood_gives_back_the_section_capacities(string label, double t, double eiAlong, double eiAcross, double fsAlong, double fsAcross)
    {
        // MEMORY: Panel Design Specification, tables 4A and 4B, 3-ply; lb-in²/ft and lb-in/ft on a strip of 12 in. 1 psi = 0.006894757293 MPa.
        PlywoodBending bending = SheetGoods.Named(label + " plywood PS 1 unsanded").Bending!;
        Assert.Equal(t * 25.4, bending.MeanThickness.Millimeters, 1e-9);
        double psi = 0.006894757293, inertia = t * t * t, modulus = 2 * t * t; // 12 t³/12, 12 t²/6
        Assert.Equal(eiAlong, bending.ElasticityAlong.Megapascals / psi * inertia, 2e-4 * eiAlong);
        Assert.Equal(eiAcross, bending.ElasticityAcross.Megapascals / psi * inertia, 2e-4 * eiAcross);
        Assert.Equal(fsAlong, bending.StrengthAlong.Megapascals / psi * modulus, 2e-4 * fsAlong);
        Assert.Equal(fsAcross, bending.StrengthAcross.Megapascals / psi * modulus, 2e-4 * fsAcross);
        Assert.Equal(PlywoodStrengthBasis.AllowableDesign, bending.StrengthBasis);
        Assert.Equal(SourceReading.Memory, bending.Source.Reading);
        Assert.Contains("allowable", bending.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Only_what_has_a_basis_has_bending_figures() => Assert.Equal(15, SheetGoods.All.Count(sheet => sheet.Bending is not null)); // ten birch, five PS 1

    [Theory]
    [MemberData(nameof(Radii))]
    public void Published_radius_is_the_reference_one(int index)
    {
        // CONFIRMED, each read in a copy; the order of the aircraft columns is inferred.
        IReadOnlyDictionary<string, string> row = ReferenceTable.Read("tables-bend-radius.csv")[index];
        Assert.Equal("CONFIRMED", row["tag"]);
        bool softwood = row["series"].StartsWith("APA", StringComparison.Ordinal);
        string condition = row["direction_condition"];
        BendGrain grain = condition.StartsWith("across", StringComparison.Ordinal) || condition.Contains("col 2", StringComparison.Ordinal) ? BendGrain.AlongTheAxis : BendGrain.AroundTheCurve;
        string[] radius = row["radius_published"].Split(' ');
        double expected = double.Parse(radius[0], CultureInfo.InvariantCulture) * (radius[1] == "ft" ? 304.8 : 25.4);
        PublishedBendingRadius found = Assert.Single(PublishedBendingRadius.All, r => (r.Series == BendingRadiusSeries.SoftwoodPlywood) == softwood && r.Grain == grain
            && (r.Condition == BendCondition.HotSoaked) == condition.StartsWith("hot", StringComparison.Ordinal) && Math.Abs(r.Thickness.Millimeters - row.Number("thickness_mm")) < 0.06
            && r.Plies == (row["plies"].Length == 0 ? null : (int)row.Number("plies")));
        Assert.Equal(expected, found.Radius.Millimeters, 1e-9);
        Assert.Equal(SourceReading.Copy, found.Source.Reading);
        Assert.Same(found, PublishedBendingRadius.For(found.Series, found.Thickness, found.Grain, found.Condition, found.Plies));
        Assert.Equal(softwood ? row["thickness_nominal"] : row["thickness_nominal"][..^3], softwood ? FormatInches(found.Thickness).Replace(" in", string.Empty, StringComparison.Ordinal).Trim('"') : found.Thickness.Inches.ToString("0.000", CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Every_published_radius_is_in_the_reference() => Assert.Equal(ReferenceTable.Read("tables-bend-radius.csv").Count, PublishedBendingRadius.All.Count);

    [Theory]
    [InlineData("B_1/4", 0.25)]
    [InlineData("B_3/8", 0.375)]
    [InlineData("B_5/8", 0.625)]
    [InlineData("B_3/4", 0.75)]
    public void B_softwood_radius_in_feet(string id, double inches)
    {
        Assert.Equal("CONFIRMED", ReferenceTable.CheckValue(id)["tag"]);
        double[] feet = [.. ReferenceTable.CheckValue(id)["expected"].Split(" / ").Select(text => double.Parse(text, CultureInfo.InvariantCulture))];
        Assert.Equal(feet[0] * 304.8, PublishedBendingRadius.For(BendingRadiusSeries.SoftwoodPlywood, Inch(inches), BendGrain.AlongTheAxis, BendCondition.DryCold)!.Radius.Millimeters, 1e-9);
        Assert.Equal(feet[1] * 304.8, PublishedBendingRadius.For(BendingRadiusSeries.SoftwoodPlywood, Inch(inches), BendGrain.AroundTheCurve, BendCondition.DryCold)!.Radius.Millimeters, 1e-9);
    }

    [Fact]
    public void B10_aircraft_plywood_of_an_eighth()
    {
        Assert.Equal("12.0 / 7.1", ReferenceTable.CheckValue("B10")["expected"]); // CONFIRMED, engineersedge.com
        Assert.Equal(12.0 * 25.4, PublishedBendingRadius.For(BendingRadiusSeries.AircraftPlywood, Inch(0.125), BendGrain.AroundTheCurve, BendCondition.DryCold, 3)!.Radius.Millimeters, 1e-9);
        Assert.Equal(7.1 * 25.4, PublishedBendingRadius.For(BendingRadiusSeries.AircraftPlywood, Inch(0.125), BendGrain.AlongTheAxis, BendCondition.DryCold, 3)!.Radius.Millimeters, 1e-9);
    }

    [Fact]
    public void A_sheet_between_rows_takes_the_thicker_one_and_beyond_the_table_none()
    {
        Assert.Equal(8 * 304.8, PublishedBendingRadius.For(BendingRadiusSeries.SoftwoodPlywood, Mm(12.700001), BendGrain.AlongTheAxis, BendCondition.DryCold)!.Radius.Millimeters, 1e-9);
        Assert.Equal(6 * 304.8, PublishedBendingRadius.For(BendingRadiusSeries.SoftwoodPlywood, Mm(12.7), BendGrain.AlongTheAxis, BendCondition.DryCold)!.Radius.Millimeters, 1e-9);
        Assert.Null(PublishedBendingRadius.For(BendingRadiusSeries.SoftwoodPlywood, Mm(19.050001), BendGrain.AlongTheAxis, BendCondition.DryCold));
        Assert.Null(PublishedBendingRadius.For(BendingRadiusSeries.SoftwoodPlywood, Mm(6), BendGrain.AlongTheAxis, BendCondition.HotSoaked));
        Assert.Equal(17 * 25.4, PublishedBendingRadius.For(BendingRadiusSeries.AircraftPlywood, Inch(0.156), BendGrain.AroundTheCurve, BendCondition.DryCold, 5)!.Radius.Millimeters, 1e-9); // the 5-ply row, 0.160 in
    }

    /// <summary>AC 43.13-1B by its rows: for 0.180 in the next of 3 plies is 0.185 in with 20 in, the next of 5 plies 0.190 in with 21 in; over 0.185 in there are 5 plies only.</summary>
    [Theory]
    [InlineData(0.180, 3, 20.0)]
    [InlineData(0.180, 5, 21.0)]
    [InlineData(0.180, null, 21.0)]
    [InlineData(0.156, null, 20.0)]
    [InlineData(0.200, null, 27.0)]
    [InlineData(0.200, 3, null)]
    [InlineData(0.180, 7, null)]
    public void Rows_are_not_mixed_over_numbers_of_plies(double inches, int? plies, double? radius)
    {
        PublishedBendingRadius? row = PublishedBendingRadius.For(BendingRadiusSeries.AircraftPlywood, Inch(inches), BendGrain.AroundTheCurve, BendCondition.DryCold, plies);
        Assert.Equal(radius, row?.Radius.Inches is { } found ? System.Math.Round(found, 9) : null);
        Assert.Equal(24 * 25.4, PublishedBendingRadius.For(BendingRadiusSeries.SoftwoodPlywood, Mm(6), BendGrain.AlongTheAxis, BendCondition.DryCold, 3)!.Radius.Millimeters, 1e-9);
        Assert.Equal("plies", Assert.Throws<System.ArgumentOutOfRangeException>(static () => PublishedBendingRadius.For(BendingRadiusSeries.AircraftPlywood, Inch(0.1), BendGrain.AlongTheAxis, BendCondition.DryCold, 0)).ParamName);
    }

    [Fact]
    public void The_stiff_way_wants_the_greater_radius() => Assert.All(PublishedBendingRadius.All.Where(r => r.Grain == BendGrain.AroundTheCurve), stiff => Assert.True(
        stiff.Radius.Millimeters > PublishedBendingRadius.For(stiff.Series, stiff.Thickness, BendGrain.AlongTheAxis, stiff.Condition, stiff.Plies)!.Radius.Millimeters));

    private static IReadOnlyDictionary<string, string> BirchRow(string nominal) => ReferenceTable.Read("tables-plywood-finnish-birch.csv").Single(row => row["nominal_mm"] == nominal);
}
