using System;
using System.Linq;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Beams;

/// <summary>The largest bay: by hand, and the way back through the beam it comes from.</summary>
public sealed class BoardSpanTests
{
    private static readonly BeamSection s_knotty = new(Mm(89), Mm(12.7), Pressure.FromMegapascals(8900)) { BendingStrength = Pressure.FromMegapascals(65) };

    [Fact]
    public void The_demo_vans_board()
    {
        BayLimit bay = BoardSpan.LargestBay(s_knotty);
        Assert.Equal(475.4, bay.ByDeflection!.Value.Millimeters, 0.05); // by hand, see the example
        Assert.Equal(937, bay.ByStress!.Value.Millimeters, 0.5); // Z = 89 · 12.7²/6 = 2392.5; 16.25 · 2392.5/(0.2074 · 200) = 937
        Assert.Equal(16.25, bay.AllowedStress!.Value.Megapascals); // 65/4
        Assert.Equal(3, bay.Deflection.Millimeters, 1e-6);
        Assert.Equal(["stiffness-factor", "strength-divisor", "point-load", "spans", "deflection-limit", "deflection-ratio", "cap"], bay.DefaultsUsed.Select(static used => used.Figure.Name));
        Assert.Equal(["beams-one-carries"], bay.Findings.Select(static finding => finding.Code));
    }

    [Fact]
    public void A_ceiling_board_is_held_by_the_cap()
    {
        BayLimit bay = BoardSpan.LargestBay(s_knotty, Surface.Ceiling);
        Assert.Equal((500, BayGovernor.Cap), (bay.LargestBay.Millimeters, bay.Governs));
        Assert.Equal(599, bay.ByDeflection!.Value.Millimeters, 0.5); // 475.4 · 2^(1/3) = 599.0, over 450 where 3 mm is the smaller limit
    }

    [Fact]
    public void A_stiff_but_weak_board_is_held_by_stress()
    {
        BeamSection weak = new(Mm(100), Mm(20), Pressure.FromMegapascals(12000)) { BendingStrength = Pressure.FromMegapascals(8) };
        BayLimit bay = BoardSpan.LargestBay(new BayQuestion(weak) { PointLoad = Force.FromNewtons(300), Spans = 1 });
        Assert.Equal(BayGovernor.Stress, bay.Governs);
        Assert.Equal(177.78, bay.LargestBay.Millimeters, 0.005); // M = P L/4: 2 · 6666.67 · 4/300
        Assert.Equal(2, bay.Stress.Megapascals, 1e-6);
    }

    [Fact]
    public void A_uniform_load_by_hand()
    {
        // One span, E I = 10,000 · 100 · 12³/12 = 1.44e8: 5/384 w L⁴ = 2 E I gives L = (2 · 1.44e8 · 384/(5 · 0.5))^(1/4); the 150th: (384 E I/(5 · 150 · 0.5))^(1/3)
        BeamSection board = new(Mm(100), Mm(12), Pressure.FromMegapascals(10000)) { Grade = SectionGrade.ClearBoard };
        BayQuestion question = new(board) { PointLoad = Force.FromNewtons(0), UniformLoad = ForcePerLength.FromNewtonsPerMillimeter(0.5), Spans = 1, DeflectionLimit = Mm(2), Cap = Mm(2000) };
        BayLimit bay = BoardSpan.LargestBay(question);
        Assert.Equal(Math.Pow(2 * 1.44e8 * 384 / 2.5, 0.25), bay.LargestBay.Millimeters, 1e-5);
        Assert.Equal("beams-strength-unknown", bay.Findings[0].Code);
        Assert.Null(bay.ByStress);
    }

    [Fact]
    public void Without_any_load_the_cap_is_all_there_is()
    {
        BayLimit bay = BoardSpan.LargestBay(new BayQuestion(s_knotty) { PointLoad = Force.FromNewtons(0) });
        Assert.Equal((500, BayGovernor.Cap), (bay.LargestBay.Millimeters, bay.Governs));
        Assert.Null(bay.ByDeflection);
        Assert.Null(bay.ByStress);
    }

    [Fact]
    public void A_bay_nobody_would_build_is_a_problem()
    {
        BayLimit bay = BoardSpan.LargestBay(s_knotty with { Thickness = Mm(2) });
        Assert.True(bay.HasProblem);
        Assert.Equal("beams-bay-impractical", bay.Findings[0].Code);
    }

    [Property(EndSize = 60_000)]
    public void The_bay_it_names_keeps_the_limits_exactly(ushort width, ushort thickness, byte elasticity, byte spans, ushort load)
    {
        BeamSection section = new(Mm(20 + (width % 200)), Mm(4 + (thickness % 300 / 10.0)), Pressure.FromMegapascals(4000 + (40 * elasticity))) { BendingStrength = Pressure.FromMegapascals(30 + (elasticity / 4.0)) };
        BayQuestion question = new(section) { Spans = 1 + (spans % 5), PointLoad = Force.FromNewtons(20 + (load % 400)), Cap = Mm(3000) };
        BayLimit bay = BoardSpan.LargestBay(question);
        double length = bay.LargestBay.Millimeters;
        BeamExtremes worst = ContinuousBeam.UnderPointLoad(new Beam(section, [.. Enumerable.Repeat(bay.LargestBay, question.Spans!.Value)]), question.PointLoad!.Value);
        double limit = Math.Min(3, length / 150);
        Assert.True(worst.Deflection.Millimeters <= limit + 2e-6, $"{worst.Deflection.Millimeters} over {limit}");
        Assert.True(worst.Stress.Megapascals <= worst.AllowedStress!.Value.Megapascals * (1 + 1e-6));
        double slack = Math.Min((limit - worst.Deflection.Millimeters) / limit, 1 - (worst.Stress.Megapascals / worst.AllowedStress!.Value.Megapascals));
        Assert.True(bay.Governs == BayGovernor.Cap || slack < 1e-5, $"{bay}: {slack} to spare");
        Assert.Equal(worst.Deflection.Millimeters, bay.Deflection.Millimeters, 2e-6);
        Assert.Equal(worst.Stress.Megapascals, bay.Stress.Megapascals, 1e-6 * bay.Stress.Megapascals);
        WorkingsCheck.Recompute(bay.Explain());
    }

    [Property(EndSize = 60_000)]
    public void Thicker_stiffer_and_less_loaded_boards_span_further(ushort width, ushort thickness, ushort load, bool inches)
    {
        BeamSection section = new(Mm(20 + (width % 200)), Mm(4 + (thickness % 200 / 10.0)), Pressure.FromMegapascals(9000)) { BendingStrength = Pressure.FromMegapascals(60) };
        BayQuestion question = new(section) { PointLoad = Force.FromNewtons(20 + (load % 400)), Cap = Mm(100_000) };
        double bay = Bay(question);
        Assert.True(Bay(question with { Section = section with { Thickness = Mm(section.Thickness.Millimeters + 0.5) } }) > bay);
        Assert.True(Bay(question with { Section = section with { Width = Mm(section.Width.Millimeters + 1) } }) > bay);
        Assert.True(Bay(question with { Section = section with { Grade = SectionGrade.ClearBoard } }) > bay);
        Assert.True(Bay(question with { PointLoad = Force.FromNewtons(question.PointLoad!.Value.Newtons + 1) }) < bay);
        Assert.True(Bay(question with { Spans = 1 }) < bay); // a load on a simple span bends it more
        Assert.True(Bay(question with { DeflectionRatio = 300 }) <= bay);
        if (inches)
        {
            BeamSection same = section with { Width = Length.FromInches(section.Width.Millimeters / 25.4), Thickness = Length.FromInches(section.Thickness.Millimeters / 25.4) };
            Assert.Equal(bay, Bay(question with { Section = same }));
        }

        // A load and a width that grow alike change nothing: deflection and stress go with P/b.
        Assert.Equal(bay, Bay(question with { PointLoad = Force.FromNewtons(question.PointLoad!.Value.Newtons * 2), Section = section with { Width = Mm(section.Width.Millimeters * 2) } }), 2e-6);

        static double Bay(BayQuestion question) => BoardSpan.LargestBay(question).LargestBay.Millimeters;
    }

    [Fact]
    public void A_plywood_strip_is_taken_from_its_row()
    {
        SheetGoods sheet = new("a sheet", Mm(15), Mm(14.8), "a family")
        {
            Bending = new PlywoodBending(Mm(14.8), Pressure.FromMegapascals(10316), Pressure.FromMegapascals(7184), Pressure.FromMegapascals(41.3), Pressure.FromMegapascals(33.8)),
        };
        BeamSection along = BeamSection.OfPlywood(Mm(40), sheet, SpanGrain.AlongTheSpan), across = BeamSection.OfPlywood(Mm(40), sheet, SpanGrain.AcrossTheSpan);
        Assert.Equal((14.8, 10316, 41.3), (along.Thickness.Millimeters, along.Elasticity.Megapascals, along.BendingStrength!.Value.Megapascals));
        Assert.Equal((7184, 33.8), (across.Elasticity.Megapascals, across.BendingStrength!.Value.Megapascals));
        Assert.Equal(SectionGrade.Plywood, along.Grade);
        Assert.Throws<ArgumentException>(() => BeamSection.OfPlywood(Mm(40), new SheetGoods("bare", Mm(15), Mm(15), "a family"), SpanGrain.AlongTheSpan));
    }

    [Fact]
    public void A_board_is_taken_from_its_species()
    {
        BeamSection pine = BeamSection.OfBoard(Mm(89), Mm(12.7), WoodSpecies.Named("ponderosa pine"));
        Assert.Equal((8900, 65, SectionGrade.KnottyBoard), (pine.Elasticity.Megapascals, pine.BendingStrength!.Value.Megapascals, pine.Grade)); // Wood Handbook table 5-3a, read in a copy
        Assert.Equal(475.4, BoardSpan.LargestBay(pine).LargestBay.Millimeters, 0.05);
        Assert.Throws<ArgumentException>(() => BeamSection.OfBoard(Mm(89), Mm(12.7), new WoodSpecies("a wood", false, new SpecificGravityAt12(0.4))));
        Assert.Throws<ArgumentOutOfRangeException>(() => BeamSection.OfBoard(Mm(89), Mm(12.7), WoodSpecies.Named("ponderosa pine"), SectionGrade.Plywood));
    }

    [Fact]
    public void A_softwood_sheet_with_design_values_is_not_divided_again()
    {
        SheetGoods sheet = SheetGoods.All.First(static sheet => sheet.Bending is { StrengthBasis: PlywoodStrengthBasis.AllowableDesign });
        Assert.Equal(SectionGrade.DesignValues, BeamSection.OfPlywood(Mm(40), sheet, SpanGrain.AlongTheSpan).Grade);
    }

    [Fact]
    public void It_allocates_nothing()
    {
        BayQuestion question = new(s_knotty) { UniformLoad = ForcePerLength.FromNewtonsPerMillimeter(0.1) };
        bool problem = false;
        for (int i = 0; i < 64; i++)
        {
            problem |= BoardSpan.LargestBay(s_knotty).HasProblem | BoardSpan.LargestBay(question).HasProblem;
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1024; i++)
        {
            problem |= BoardSpan.LargestBay(s_knotty).HasProblem | BoardSpan.LargestBay(question).HasProblem;
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.False(problem);
    }
}
