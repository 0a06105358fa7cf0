using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Materials;

/// <summary>Plywood from its plies: the handbook's table, hand examples, and the section summed up in thin slices.</summary>
[Properties(MaxTest = 200, EndSize = 1_000_000)]
public sealed class LayeredPlyTests
{
    public static TheoryData<double, int> Birch() => [.. ReferenceTable.Read("tables-plywood-finnish-birch.csv").Select(static row => (row.Number("mean_mm"), (int)row.Number("plies")))];

    [Fact]
    public void InBending()
    {
        #region example: LayeredPly.InBending
        LayUpBending ply = LayeredPly.InBending(PlyLayUp.Birch(Mm(6.4), 5));
        Pressure stiff = ply.ElasticityAlong;               // 12737 MPa with the face grain, 4763 across it
        BentSheet easy = BentSheet.Of(ply.ToSheet("my ply"), BendGrain.AlongTheAxis);
        Length least = PanelBend.MinimumRadius(easy).Minimum; // 1050 mm
        #endregion
        Assert.Equal(12737.3, stiff.Megapascals, 0.05); // 17500 (6.4³ - 4.2³ + 1.4³)/6.4³
        Assert.Equal(4762.7, ply.ElasticityAcross.Megapascals, 0.05);
        Assert.Equal((9843.75, 7656.25), (Math.Round(ply.StretchElasticityAlong.Megapascals, 6), Math.Round(ply.StretchElasticityAcross.Megapascals, 6))); // 17500 · 3.6/6.4 and 2.8/6.4
        Assert.Equal(1050, least.Millimeters, 1e-5); // twice 17500/(2 · 70) (6.4 - 2.2)
        Assert.Equal("my ply", ply.ToSheet("my ply").Name);
        Assert.Equal(5, ply.ToSheet("my ply").Plies);
        Assert.Equal(2, ply.WeakestPlyAcross!.Value + ply.WeakestPlyAlong!.Value + 1); // plies 1 and 0
    }

    /// <summary>Handbook of Finnish Plywood, birch, sanded, from memory: every stiffness to the MPa and every strength to a tenth.</summary>
    [Theory]
    [MemberData(nameof(Birch))]
    public void Birch_plies_give_the_handbooks_table_from_memory(double mean, int plies)
    {
        var row = ReferenceTable.Read("tables-plywood-finnish-birch.csv").Single(row => row.Number("mean_mm") == mean);
        LayUpBending ply = LayeredPly.InBending(PlyLayUp.Birch(Mm(mean), plies));
        Assert.Equal(row.Number("E_mean_along_MPa"), Math.Round(ply.ElasticityAlong.Megapascals));
        Assert.Equal(row.Number("E_mean_across_MPa"), Math.Round(ply.ElasticityAcross.Megapascals));
        Assert.Equal(row.Number("fm_k_along_MPa"), Math.Round(ply.StrengthAlong!.Value.Megapascals, 1));
        Assert.Equal(row.Number("fm_k_across_MPa"), Math.Round(ply.StrengthAcross!.Value.Megapascals, 1));

        // The table of sheets in the library has the same, where it has the sheet.
        if (SheetGoods.Birch.FirstOrDefault(sheet => sheet.Bending is { } known && known.MeanThickness.Millimeters == mean) is { Bending: { } bending })
        {
            Assert.Equal(bending.ElasticityAlong.Megapascals, Math.Round(ply.ElasticityAlong.Megapascals));
            Assert.Equal(bending.StrengthAcross.Megapascals, Math.Round(ply.StrengthAcross.Value.Megapascals, 1));
            Assert.Equal(plies, SheetGoods.Birch.First(sheet => sheet.Bending == bending).Plies ?? plies);
        }
    }

    /// <summary>Figures fitted to a table that is remembered are no better known than the table: sheet and bending figures say so, and so does whatever is bent with them.</summary>
    [Fact]
    public void What_is_from_memory_stays_from_memory()
    {
        LayUpBending ply = LayeredPly.InBending(PlyLayUp.Birch(Mm(6.4), 5));
        SheetGoods sheet = ply.ToSheet("my ply");
        Assert.All(new[] { ply.LayUp.Source!, ply.Bending!.Source, sheet.Source, sheet.Bending!.Source, BentSheet.Of(sheet, BendGrain.AlongTheAxis).Source! }, static source =>
        {
            Assert.Equal((SourceKind.Published, SourceReading.Memory), (source.Kind, source.Reading));
            Assert.EndsWith("(from memory)", source.ToString(), StringComparison.Ordinal);
        });
        Assert.Equal(SheetGoods.Birch6.Bending!.Source.Reading, sheet.Bending.Source.Reading);
        Finding memory = ply.Findings.Single(static finding => finding.Code == "materials-ply-memory");
        Assert.Equal(Severity.Note, memory.Severity);
        Assert.Same(ply.LayUp.Source, memory.Source);
    }

    /// <summary>A source given with the lay-up goes with the sheet, as weak as it is; what was read in the publication itself is derived once it is worked on, and names it; the caller's own is derived.</summary>
    [Fact]
    public void The_basis_of_the_plies_goes_with_the_sheet_and_is_never_improved_on()
    {
        PlyLayUp plain = new([new Veneer(Mm(2), PlyDirection.Along), new Veneer(Mm(2), PlyDirection.Across), new Veneer(Mm(2), PlyDirection.Along)], MPa(12_000), MPa(60));
        foreach (Source weak in new[]
        {
            Source.Published("a", "Plies", "A mill", 2020, "page 1", SourceReading.Copy), Source.Published("b", "Plies", "A mill", 2020, "page 1", SourceReading.Memory),
            Source.Judgement("c", "as stiff as birch"), Source.CommonPractice("d", "as stiff as birch"), Source.Supplied("my own test"),
        })
        {
            LayUpBending ply = LayeredPly.InBending(plain with { Source = weak });
            Assert.Same(weak, ply.Bending!.Source);
            Assert.Same(weak, ply.ToSheet("x").Source);
            Assert.Equal(weak.Reading == SourceReading.Memory, ply.Findings.Any(static finding => finding.Code == "materials-ply-memory"));
        }

        Source original = LayeredPly.InBending(plain with { Source = Source.Published("e", "Plies as tested", "A mill", 2020, "page 1", SourceReading.Original) }).ToSheet("x").Source;
        Assert.Equal((SourceKind.Derived, "lay-up-bending"), (original.Kind, original.Id));
        Assert.Contains("Plies as tested", original.ToString(), StringComparison.Ordinal);
        Assert.Equal((SourceKind.Derived, "lay-up-bending"), (LayeredPly.InBending(plain).ToSheet("x").Source.Kind, LayeredPly.InBending(plain).Bending!.Source.Id));
    }

    [Fact]
    public void The_table_has_ten_rows_of_birch() => Assert.Equal(10, Birch().Count);

    [Fact]
    public void Check_value_B22_derived()
    {
        LayUpBending ply = LayeredPly.InBending(PlyLayUp.Birch(Mm(6.4), 5));
        Assert.Equal(ReferenceTable.CheckValue("B22")["expected"], FormattableString.Invariant($"{ply.ElasticityAlong.Megapascals:0} / {ply.ElasticityAcross.Megapascals:0}"));
    }

    /// <summary>
    /// Two plies of 2 mm, one each way. Along, only the first counts: its own middle at 1, E I = 12000 · 2³/12 = 8000 N mm, E = 12 · 8000/64 = 1500, of f 60 at 1 mm the curvature is
    /// 60/12000 = 0.005, f = 6 · 8000 · 0.005/16 = 15. Across the same, the axis at 3.
    /// </summary>
    [Fact]
    public void Two_plies_worked_by_hand()
    {
        LayUpBending ply = LayeredPly.InBending(new PlyLayUp([new Veneer(Mm(2), PlyDirection.Along), new Veneer(Mm(2), PlyDirection.Across)], MPa(12_000), MPa(60)));
        Assert.Equal((1500.0, 1500.0), (Math.Round(ply.ElasticityAlong.Megapascals, 6), Math.Round(ply.ElasticityAcross.Megapascals, 6)));
        Assert.Equal((15.0, 15.0), (Math.Round(ply.StrengthAlong!.Value.Megapascals, 6), Math.Round(ply.StrengthAcross!.Value.Megapascals, 6)));
        Assert.Equal((1.0, 3.0), (ply.NeutralAxisAlong!.Value.Millimeters, ply.NeutralAxisAcross!.Value.Millimeters));
        Assert.False(ply.IsBalanced);
        Assert.Equal(["materials-ply-unbalanced", "materials-ply-face-across", "materials-ply-model"], ply.Findings.Select(static finding => finding.Code));
        Assert.Equal(1, ply.Findings[0].Values.Single().Value); // 1 mm off the middle at 2
    }

    /// <summary>
    /// Cross ratio 0.5, one ply along of 2 mm under one across of 2 mm, E 1000: axis (2 · 1 + 1 · 3)/3 = 5/3; E I = 1000 (2/3 + 2 · 4/9) + 500 (2/3 + 2 · 16/9) = 1555.6 + 2111.1 = 3666.7; E = 687.5.
    /// Of f 10 along: 10/(1000 · 5/3) = 0.006; of 1 across: 1/(500 · 7/3) = 0.000857 is less.
    /// </summary>
    [Fact]
    public void A_cross_ratio_worked_by_hand()
    {
        PlyLayUp layUp = new([new Veneer(Mm(2), PlyDirection.Along), new Veneer(Mm(2), PlyDirection.Across)], MPa(1000), MPa(10)) { CrossRatio = 0.5 };
        LayUpBending ply = LayeredPly.InBending(layUp), cracked = LayeredPly.InBending(layUp with { CrossStrength = MPa(1) });
        Assert.Equal(5 / 3.0, ply.NeutralAxisAlong!.Value.Millimeters, 1e-6);
        Assert.Equal(687.5, ply.ElasticityAlong.Megapascals, 1e-6);
        Assert.Equal(6 * 3666.666667 * 0.006 / 16, ply.StrengthAlong!.Value.Megapascals, 1e-6);
        Assert.Equal(6 * 3666.666667 / (500 * 7 / 3.0) / 16, cracked.StrengthAlong!.Value.Megapascals, 1e-6);
        Assert.Equal((0, 1), (ply.WeakestPlyAlong, cracked.WeakestPlyAlong));
        Assert.Contains(ply.Findings, static finding => finding.Code == "materials-ply-cross-strength");
        Assert.DoesNotContain(cracked.Findings, static finding => finding.Code == "materials-ply-cross-strength");
        Assert.Empty(ply.DefaultsUsed);
        Assert.Equal("default-ply-cross", LayeredPly.InBending(layUp with { CrossRatio = null }).DefaultsUsed.Single().Source.Id);
    }

    [Fact]
    public void Plies_all_one_way_have_no_figures_the_other()
    {
        LayUpBending ply = LayeredPly.InBending(new PlyLayUp([new Veneer(Mm(3), PlyDirection.Along)], MPa(12_000), MPa(60)));
        Assert.Equal((12_000.0, 60.0), (ply.ElasticityAlong.Megapascals, ply.StrengthAlong!.Value.Megapascals));
        Assert.Equal(0, ply.ElasticityAcross.Megapascals);
        Assert.Null(ply.StrengthAcross);
        Assert.Null(ply.NeutralAxisAcross);
        Assert.Null(ply.Bending);
        Assert.Null(ply.ToSheet("one way").Bending);
        Assert.Contains(ply.Findings, static finding => finding.Code == "materials-ply-one-way");
        Assert.DoesNotContain(ply.Findings, static finding => finding.Code == "materials-ply-unbalanced");
    }

    /// <summary>Plies with figures of their own: a soft core of E 5000 and f 100 in faces of 10,000 and 50 reaches 100/(5000 · 1) = 0.02, the faces 50/(10000 · 2) = 0.0025.</summary>
    [Fact]
    public void A_ply_may_have_figures_of_its_own()
    {
        Veneer face = new(Mm(1), PlyDirection.Along);
        LayUpBending ply = LayeredPly.InBending(new PlyLayUp([face, new Veneer(Mm(2), PlyDirection.Along) { Elasticity = MPa(5000), BendingStrength = MPa(100) }, face], MPa(10_000), MPa(50)));
        double stiffness = (10_000 * (64 - 8) / 12.0) + (5000 * 8 / 12.0);
        Assert.Equal(12 * stiffness / 64, ply.ElasticityAlong.Megapascals, 1e-6);
        Assert.Equal(6 * stiffness * 0.0025 / 16, ply.StrengthAlong!.Value.Megapascals, 1e-6);
        Assert.Equal(0, ply.WeakestPlyAlong);
    }

    /// <summary>Another way round: the section summed up in 4000 slices, each with the stiffness of the ply it lies in; the strength by searching the slices.</summary>
    [Property]
    public void The_section_summed_up_in_slices_agrees(PositiveInt seed)
    {
        PlyLayUp layUp = Random(seed.Get, out double ratio);
        LayUpBending ply = LayeredPly.InBending(layUp);
        foreach (PlyDirection way in new[] { PlyDirection.Along, PlyDirection.Across })
        {
            (double elasticity, double strength) = Slices(layUp, ratio, way);
            double own = (way == PlyDirection.Along ? ply.ElasticityAlong : ply.ElasticityAcross).Megapascals;
            Assert.Equal(elasticity, own, (1e-5 * elasticity) + 1e-9);
            double? limit = (way == PlyDirection.Along ? ply.StrengthAlong : ply.StrengthAcross)?.Megapascals;
            Assert.Equal(double.IsNaN(strength), limit is null);
            if (limit is { } known)
            {
                Assert.Equal(strength, known, 5e-3 * strength);
            }
        }

        WorkingsCheck.Recompute(ply.Explain());
    }

    [Property]
    public void The_same_counted_from_the_other_face_is_the_same_sheet_and_its_size_does_not_matter(PositiveInt seed)
    {
        PlyLayUp layUp = Random(seed.Get, out _);
        LayUpBending one = LayeredPly.InBending(layUp), mirrored = LayeredPly.InBending(layUp with { Veneers = [.. layUp.Veneers.Reverse()] });
        LayUpBending twice = LayeredPly.InBending(layUp with { Veneers = [.. layUp.Veneers.Select(static ply => ply with { Thickness = Mm(2 * ply.Thickness.Millimeters) })] });
        LayUpBending turned = LayeredPly.InBending(layUp with { Veneers = [.. layUp.Veneers.Select(static ply => ply with { Direction = ply.Direction == PlyDirection.Along ? PlyDirection.Across : PlyDirection.Along })] });
        LayUpBending stiffer = LayeredPly.InBending(layUp with { Elasticity = MPa(2 * layUp.Elasticity.Megapascals), BendingStrength = MPa(3 * layUp.BendingStrength.Megapascals) });
        Near(one.ElasticityAlong, mirrored.ElasticityAlong, 1);
        Near(one.ElasticityAlong, twice.ElasticityAlong, 1);
        Near(one.ElasticityAlong, turned.ElasticityAcross, 1);
        Near(one.ElasticityAcross, stiffer.ElasticityAcross, 0.5);
        if (one.StrengthAlong is { } strength)
        {
            Near(strength, mirrored.StrengthAlong!.Value, 1);
            Near(strength, twice.StrengthAlong!.Value, 1);
            Near(strength, turned.StrengthAcross!.Value, 1);
            Near(strength, stiffer.StrengthAlong!.Value, 1 / 3.0);
        }

        // No sheet is stiffer than its plies; and all plies of one direction are worth no less than what is turned out of it.
        Assert.True(one.ElasticityAlong.Megapascals <= layUp.Elasticity.Megapascals * (1 + 1e-9));
        Assert.Equal(one.IsBalanced, layUp.Veneers.SequenceEqual(layUp.Veneers.Reverse()));

        static void Near(Pressure expected, Pressure actual, double times) => Assert.Equal(expected.Megapascals, times * actual.Megapascals, (1e-7 * expected.Megapascals) + 1e-9);
    }

    [Fact]
    public void All_problems_are_reported_at_once()
    {
        PlyLayUp bad = new([new Veneer(Mm(0), (PlyDirection)7), null!, new Veneer(Mm(51), PlyDirection.Along) { Elasticity = MPa(0), BendingStrength = MPa(2000) }], MPa(0), MPa(0)) { CrossRatio = 2, CrossStrength = MPa(0), StrengthBasis = (PlywoodStrengthBasis)9 };
        Assert.Equal(
            ["layUp.Elasticity", "layUp.BendingStrength", "layUp.StrengthBasis", "layUp.CrossRatio", "layUp.CrossStrength", "layUp.Veneers[0].Thickness", "layUp.Veneers[0].Direction", "layUp.Veneers[1]", "layUp.Veneers[2].Thickness", "layUp.Veneers[2].Elasticity", "layUp.Veneers[2].BendingStrength"],
            LayeredPly.CheckInBending(bad).Select(static problem => problem.Parameter));
        Assert.Equal(["layUp.Veneers"], LayeredPly.CheckInBending(new PlyLayUp([.. Enumerable.Repeat(new Veneer(Mm(50), PlyDirection.Along), 5)], MPa(9000), MPa(50))).Select(static problem => problem.Parameter));
        Assert.Equal("thickness", Assert.Throws<ArgumentOutOfRangeException>(static () => PlyLayUp.Birch(Mm(4.2), 5)).ParamName);
        Assert.Equal("plies", Assert.Throws<ArgumentOutOfRangeException>(static () => PlyLayUp.Birch(Mm(6.4), 4)).ParamName);
    }

    [Fact]
    public void Lay_ups_compare_by_amount() => Assert.Equal(PlyLayUp.Birch(Mm(25.4), 17), PlyLayUp.Birch(Length.FromInches(1), 17));

    private static Pressure MPa(double value) => Pressure.FromMegapascals(value);

    /// <summary>1 to 12 plies of 0.1 to 4 mm, every third balanced, every other with a cross ratio.</summary>
    private static PlyLayUp Random(int seed, out double ratio)
    {
        Random random = new(seed);
        List<Veneer> plies = [.. Enumerable.Range(0, random.Next(1, 7)).Select(_ => new Veneer(Mm(random.Next(100, 4000) / 1000.0), random.Next(2) == 0 ? PlyDirection.Along : PlyDirection.Across))];
        if (random.Next(3) == 0)
        {
            plies.AddRange([.. plies.AsEnumerable().Reverse()]);
        }

        ratio = random.Next(2) == 0 ? 0 : random.Next(1, 100) / 1000.0;
        return new PlyLayUp(plies, MPa(random.Next(2000, 20_000)), MPa(random.Next(20, 100))) { CrossRatio = ratio == 0 ? null : ratio };
    }

    private static (double Elasticity, double Strength) Slices(PlyLayUp layUp, double ratio, PlyDirection way)
    {
        double whole = layUp.Veneers.Sum(static ply => ply.Thickness.Millimeters), sum = 0, first = 0;
        List<(double Z, double Dz, double E, bool Counts)> slices = [];
        double lower = 0;
        foreach (Veneer ply in layUp.Veneers)
        {
            const int Count = 600;
            double dz = ply.Thickness.Millimeters / Count, e = layUp.Elasticity.Megapascals * (ply.Direction == way ? 1 : ratio);
            for (int i = 0; i < Count; i++)
            {
                slices.Add((lower + ((i + 0.5) * dz), dz, e, ply.Direction == way));
            }

            lower += ply.Thickness.Millimeters;
        }

        foreach ((double z, double dz, double e, _) in slices)
        {
            sum += e * dz;
            first += e * dz * z;
        }

        if (sum == 0)
        {
            return (0, double.NaN);
        }

        double axis = first / sum, stiffness = slices.Sum(slice => slice.E * slice.Dz * Math.Pow(slice.Z - axis, 2));
        double[] far = [.. slices.Where(static slice => slice.Counts).Select(slice => Math.Abs(slice.Z - axis) + (slice.Dz / 2))];
        double strength = far.Length == 0 ? double.NaN : 6 * stiffness * layUp.BendingStrength.Megapascals / (layUp.Elasticity.Megapascals * far.Max()) / (whole * whole);
        return (12 * stiffness / Math.Pow(whole, 3), strength);
    }
}
