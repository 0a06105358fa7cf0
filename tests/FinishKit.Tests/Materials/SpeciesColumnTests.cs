using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using UnitsNet.Units;
using Xunit;

namespace FinishKit.Tests.Materials;

/// <summary>Stiffness, strength, shrinkage and movement of every species against the reference table, value and tag.</summary>
public sealed class SpeciesColumnTests
{
    public static TheoryData<string> Species() => [.. ReferenceTable.Read("tables-species.csv").Select(row => row["species"])];

    [Theory]
    [MemberData(nameof(Species))]
    public void Every_column_is_the_reference_ones_and_no_tag_is_better(string name)
    {
        IReadOnlyDictionary<string, string> row = ReferenceTable.Read("tables-species.csv").Single(r => r["species"] == name);
        WoodSpecies species = WoodSpecies.Named(Own(name));
        Assert.Equal(row.Number("MOE_MPa_12pct"), species.Elasticity!.Value.Megapascals);
        Assert.Equal(row["MOR_MPa_12pct"].Length > 0 ? row.Number("MOR_MPa_12pct") : null, species.BendingStrength?.Megapascals);
        Assert.Equal(row.Number("shrink_R_pct"), species.RadialShrinkage);
        Assert.Equal(row.Number("shrink_T_pct"), species.TangentialShrinkage);
        Assert.Equal(row.Number("shrink_start_MC_pct"), species.ShrinkageStart);
        Assert.Equal(row.Number("C_R_per_pctMC"), species.RadialMovement);
        Assert.Equal(row.Number("C_T_per_pctMC"), species.TangentialMovement);

        string strength = row["strength_tag"];
        Assert.Equal(strength == "CONFIRMED" ? SourceReading.Copy : SourceReading.Memory, species.ElasticitySource!.Reading);
        Assert.Equal(species.BendingStrength is null ? null : strength == "CONFIRMED" || strength.Contains("MOR CONFIRMED", StringComparison.Ordinal) ? SourceReading.Copy : SourceReading.Memory, species.BendingStrengthSource?.Reading);
        Assert.Equal(row["shrink_tag"] == "CONFIRMED" ? SourceReading.Copy : SourceReading.Memory, species.ShrinkageSource!.Reading);
        Assert.Equal(row["coef_tag"] == "CONFIRMED" ? SourceReading.Copy : SourceReading.Memory, species.MovementSource!.Reading);
    }

    [Fact]
    public void Rows_read_on_the_page_say_so() => Assert.Equal( // the list of check-values.md, section 8: a copy still
        ["old growth redwood", "ponderosa pine", "red pine", "shortleaf pine", "slash pine", "sugar pine", "western white pine", "young growth redwood"],
        WoodSpecies.All.Where(s => s.ElasticitySource!.Note?.Contains("on the page", StringComparison.Ordinal) == true).Select(s => s.Name).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Species))]
    public void Movement_follows_from_shrinkage_where_the_reference_says_so(string name)
    {
        // DERIVED: shrinkage S from 30% to 0, size taken at 10%: C = S/(3000 - 20 S); from 22%: S/(2200 - 12 S). Five decimals are printed.
        IReadOnlyDictionary<string, string> row = ReferenceTable.Read("tables-species.csv").Single(r => r["species"] == name);
        WoodSpecies species = WoodSpecies.Named(Own(name));
        bool follows = Follows(species.RadialShrinkage!.Value, species.ShrinkageStart!.Value, species.RadialMovement!.Value) && Follows(species.TangentialShrinkage!.Value, species.ShrinkageStart!.Value, species.TangentialMovement!.Value);
        Assert.Equal(row["coef_reproduces_from_shrinkage"] == "yes", follows);
    }

    [Theory]
    [InlineData("M1_white_ash", "white ash")]
    [InlineData("M1_yellow_birch", "yellow birch")]
    [InlineData("M1_beech", "American beech")]
    [InlineData("M1_quaking_aspen", "quaking aspen")]
    [InlineData("M1_walnut", "black walnut")]
    public void M1_movement_is_the_published_one(string id, string name)
    {
        // CONFIRMED: Wood Handbook tables 4-3 and 13-5, both ends published.
        IReadOnlyDictionary<string, string> check = ReferenceTable.CheckValue(id);
        Assert.Equal("CONFIRMED", check["tag"]);
        double[] expected = [.. check["expected"].Split(" / ").Select(text => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture))];
        WoodSpecies species = WoodSpecies.Named(name);
        Assert.Equal(expected[0], species.RadialMovement!.Value);
        Assert.Equal(expected[1], species.TangentialMovement!.Value);
        Assert.Equal(expected[0], Movement(species.RadialShrinkage!.Value, 30), 5e-6);
        Assert.Equal(expected[1], Movement(species.TangentialShrinkage!.Value, 30), 5e-6);
    }

    [Fact]
    public void Every_M1_row_is_tested() => Assert.Equal(5, ReferenceTable.Read("check-values.csv").Count(row => row["id"].StartsWith("M1_", StringComparison.Ordinal)));

    [Fact]
    public void Callers_own_figures_are_checked_and_may_be_left_out()
    {
        SpecificGravityAt12 gravity = new(0.5);
        WoodSpecies plain = new("own", true, gravity);
        Assert.Null(plain.Elasticity);
        Assert.Null(plain.MovementSource);
        Assert.Equal("Elasticity", Assert.Throws<ArgumentOutOfRangeException>(() => new WoodSpecies("own", true, gravity) { Elasticity = Pressure.FromMegapascals(0.5) }).ParamName);
        Assert.Equal("BendingStrength", Assert.Throws<ArgumentException>(() => new WoodSpecies("own", true, gravity) { BendingStrength = new Pressure(50, (PressureUnit)999) }).ParamName);
        Assert.Equal("ShrinkageStart", Assert.Throws<ArgumentOutOfRangeException>(() => new WoodSpecies("own", true, gravity) { ShrinkageStart = 0.3 }).ParamName);
        Assert.Equal("RadialMovement", Assert.Throws<ArgumentOutOfRangeException>(() => new WoodSpecies("own", true, gravity) { RadialMovement = 0.169 }).ParamName);
    }

    private static double Movement(double shrinkage, double start) => start == 30 ? shrinkage / (3000 - (20 * shrinkage)) : shrinkage / (2200 - (12 * shrinkage));

    private static bool Follows(double shrinkage, double start, double printed) => Math.Abs(Movement(shrinkage, start) - printed) <= 5.001e-6;

    private static string Own(string name) => name switch
    {
        "Yellow-poplar" => "yellow-poplar",
        "Cedar, yellow (Alaska)" => "yellow cedar",
        "Douglas-fir, coast" => "coast Douglas-fir",
        _ when name.StartsWith("Oak, red", StringComparison.Ordinal) => "northern red oak",
        _ => WoodSpecies.Named(name.Split(", ")[1] + " " + name.Split(", ")[0]).Name,
    };
}
