using System;
using System.Collections.Generic;
using System.Linq;
using FinishKit.Tests.Contracts;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Panels;

/// <summary>Fixings of a panel: worked examples, and against counting up from two for many rows.</summary>
public sealed class PanelFixingTests
{
    private const double G = 9.80665;

    private static readonly PanelFixingJob s_job = FixingSamples.Fixings;

    [Fact]
    public void Place()
    {
        #region example: PanelFixings.Place
        PanelRow[] rows = [new(Mm(0), ForcePerLength.FromNewtonsPerMillimeter(0)), new(Mm(200), ForcePerLength.FromNewtonsPerMillimeter(0.675)), new(Mm(400), ForcePerLength.FromNewtonsPerMillimeter(0))];
        PanelFixingPlan plan = PanelFixings.Place(new PanelFixingJob(rows, Mm(1000), Force.FromNewtons(100)));
        int middle = plan.Rows[1].Positions.Count;          // 8: 950/7 = 135.7 mm apart, 91.6 N each inside; 7 would hold 106.9
        int edge = plan.Rows[0].Positions.Count;            // 5: nothing pulls, 237.5 mm apart under the cap of 250
        #endregion
        Assert.Equal(8, middle);
        Assert.Equal(5, edge);
        Assert.Equal(18, plan.Count);
        Assert.Equal(0.675 * 950 / 7, plan.Rows[1].GreatestLoad.Newtons, 1e-9);
        Assert.Equal([25, 262.5, 500, 737.5, 975], plan.Rows[0].Positions.Select(static p => p.Millimeters));
        Assert.True(plan.Rows[1].IsByStrength && !plan.Rows[0].IsByStrength && plan.Holds);
        WorkingsCheck.Recompute(plan.Explain());
    }

    [Fact]
    public void The_rows_of_a_sheet_held_to_an_arc_are_taken_over()
    {
        // 3 E I/(R a) = 3 · 90000/(2000 · 200) = 0.675 N/mm at the middle; the edges bear.
        BentSheet sheet = new(Mm(6), Pressure.FromMegapascals(5000), Pressure.FromMegapascals(30));
        HoldDownResult held = HoldDown.OnArc(new HoldDownCase(sheet, Mm(2003), BentSheet.EqualRows(Mm(400), 3), Mm(1000)));
        PanelFixingPlan plan = PanelFixings.Place(PanelFixingJob.From(held, Force.FromNewtons(100)));
        Assert.Equal([5, 8, 5], plan.Rows.Select(static row => row.Positions.Count));
        Assert.Contains("panels-fixings-row-bears", plan.Findings.Select(static f => f.Code));
    }

    [Fact]
    public void A_hung_mass_is_shared_by_the_girth_that_each_row_holds()
    {
        // Rows at 0, 200, 400 of 420: 100, 200, 120 of it. 4.2 kg at 3 g over 1000: 10 g to each mm of girth.
        PanelFixingPlan plan = PanelFixings.Place(s_job with { HungMass = Mass.FromKilograms(4.2), Girth = Mm(420) });
        Assert.Equal(1 * 3 * G, plan.Rows[0].Load.Newtons, 1e-9);
        Assert.Equal((2 * 3 * G) + 675, plan.Rows[1].Load.Newtons, 1e-9);
        Assert.Equal(1.2 * 3 * G, plan.Rows[2].Load.Newtons, 1e-9); // what presses is not counted against it
        Assert.Equal(["greatest-spacing", "edge-distance", "acceleration"], plan.DefaultsUsed.Select(static d => d.Figure.Name));
        Assert.Contains("panels-fixings-road-only", plan.Findings.Select(static f => f.Code));
        Assert.Contains("panels-fixings-under-gravity", PanelFixings.Place(s_job with { HungMass = Mass.FromKilograms(1), Acceleration = 0.9 }).Findings.Select(static f => f.Code));
        WorkingsCheck.Recompute(plan.Explain());
    }

    [Fact]
    public void A_load_exactly_held_is_held()
    {
        // 4 apart by 250: inside 0.4 · 250 = 100 N.
        PanelFixingJob exact = new([new(Mm(0), ForcePerLength.FromNewtonsPerMillimeter(0.4))], Mm(1000), Force.FromNewtons(100)) { EdgeDistance = Mm(0) };
        Assert.Equal(5, Assert.Single(PanelFixings.Place(exact).Rows).Positions.Count);
        Assert.Equal(6, Assert.Single(PanelFixings.Place(exact with { Hold = Force.FromNewtons(99.999) }).Rows).Positions.Count);
        Assert.Equal(6, Assert.Single(PanelFixings.Place(exact with { GreatestSpacing = Mm(249.999999) }).Rows).Positions.Count);
    }

    [Fact]
    public void A_narrow_panel_gets_one_in_the_middle()
    {
        PanelFixingPlan plan = PanelFixings.Place(s_job with { Width = Mm(50) });
        Assert.All(plan.Rows, static row => Assert.Equal(25, Assert.Single(row.Positions).Millimeters));
        Assert.Contains("panels-fixings-one-in-row", plan.Findings.Select(static f => f.Code));
        Assert.Equal(0.675 * 50, plan.Rows[1].GreatestLoad.Newtons, 1e-9);
        Assert.Equal(2, PanelFixings.Place(s_job with { Width = Mm(50.001) }).Rows[0].Positions.Count);
        Assert.False(PanelFixings.Place(s_job with { Width = Mm(50), Hold = Force.FromNewtons(33) }).Holds);
    }

    [Fact]
    public void Fixings_that_no_practical_number_makes_hold_are_a_problem()
    {
        // 20 mm apart each would hold 13.5 N inside; the outer ones more: 0.675 · (25 + 10).
        Assert.False(PanelFixings.Place(s_job with { Hold = Force.FromNewtons(23) }).Holds);
        PanelFixingPlan weak = PanelFixings.Place(s_job with { Hold = Force.FromNewtons(10) });
        Assert.True(weak.HasProblem);
        Assert.Equal("panels-fixings-too-weak", weak.Findings[0].Code);
        Assert.Equal([true, false, true], weak.Rows.Select(static row => row.Holds));
        Assert.True(PanelFixings.Place(s_job with { Hold = Force.FromNewtons(24) }).Holds);
    }

    /// <summary>The oracle counts up, and adds each fixing's stretch of row from the places themselves.</summary>
    [Fact]
    public void Over_many_rows_the_number_is_the_least_that_holds()
    {
        Random random = new(77);
        int byStrength = 0, bySpacing = 0, none = 0;
        for (int round = 0; round < 3000; round++)
        {
            double width = random.Next(60, 3000), edge = random.Next(0, 60), cap = random.Next(50, 400), hold = random.Next(5, 300), pull = random.Next(-100, 1500) / 1000.0;
            PanelFixingRow row = Assert.Single(PanelFixings.Place(new PanelFixingJob([new(Mm(10), ForcePerLength.FromNewtonsPerMillimeter(pull))], Mm(width), Force.FromNewtons(hold)) { EdgeDistance = Mm(edge), GreatestSpacing = Mm(cap) }).Rows);
            if (width <= 2 * edge)
            {
                Assert.Equal(width / 2, Assert.Single(row.Positions).Millimeters, 1e-6);
                continue;
            }

            int least = 2, most = (int)((width - (2 * edge)) / 20) + 1;
            while ((width - (2 * edge)) / (least - 1) > cap + 1e-9)
            {
                least++;
            }

            int first = least;
            while (Greatest(width, edge, Math.Max(0, pull), least) > hold + 1e-6 && least <= most)
            {
                least++;
            }

            if (least > most && least > first)
            {
                Assert.False(row.Holds);
                none++;
                continue;
            }

            bool holds = Greatest(width, edge, Math.Max(0, pull), least) <= hold + 1e-6;
            Assert.Equal(holds, row.Holds);
            if (holds)
            {
                Assert.Equal(least, row.Positions.Count);
                Assert.Equal(edge, row.Positions[0].Millimeters, 1e-6);
                Assert.Equal(width - edge, row.Positions[^1].Millimeters, 1e-5);
                Assert.Equal(Greatest(width, edge, Math.Max(0, pull), least), row.GreatestLoad.Newtons, 1e-6);
                byStrength += least > first ? 1 : 0;
                bySpacing += least > first ? 0 : 1;
            }
        }

        Assert.True(byStrength > 300 && bySpacing > 300 && none > 100, $"{byStrength} by strength, {bySpacing} by spacing, {none} not at all.");
    }

    [Fact]
    public void All_problems_are_reported_at_once()
    {
        IReadOnlyList<InputProblem> problems = PanelFixings.Check(s_job with { Rows = [new(Mm(10), default), new(Mm(10.5), ForcePerLength.FromNewtonsPerMillimeter(1001))], Width = Mm(0.5), Hold = Force.FromNewtons(0), Girth = Mm(10) });
        Assert.Equal(["job.Rows[1].Pull", "job.Rows[1].Position", "job.Width", "job.Hold", "job.Girth"], problems.Select(static p => p.Parameter));
        Assert.Throws<ArgumentOutOfRangeException>(() => PanelFixings.Place(s_job with { Hold = Force.FromNewtons(0) }));
    }

    private static double Greatest(double width, double edge, double perLength, int count)
    {
        double[] places = [.. Enumerable.Range(0, count).Select(i => edge + (i * (width - (2 * edge)) / (count - 1)))];
        double greatest = 0;
        for (int i = 0; i < count; i++)
        {
            double from = i == 0 ? 0 : (places[i - 1] + places[i]) / 2, to = i == count - 1 ? width : (places[i] + places[i + 1]) / 2;
            greatest = Math.Max(greatest, perLength * (to - from));
        }

        return greatest;
    }
}
