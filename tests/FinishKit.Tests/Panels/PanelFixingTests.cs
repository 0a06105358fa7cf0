using System;
using System.Collections.Generic;
using System.Linq;
using FinishKit.Tests.Contracts;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Panels;

/// <summary>Fixings of a panel: worked examples, and against counting up from two for many rows, where the panel is solved by the turns over its fixings.</summary>
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
        int middle = plan.Rows[1].Positions.Count;          // 9: 950/8 = 118.75 mm apart, 88.0 N on the second; of 8 it would hold 101.4
        int edge = plan.Rows[0].Positions.Count;            // 5: nothing pulls, 237.5 mm apart under the cap of 250
        #endregion
        Assert.Equal(9, middle);
        Assert.Equal(5, edge);
        Assert.Equal(19, plan.Count);
        Assert.Equal(88.0421, plan.Rows[1].GreatestLoad.Newtons, 1e-4); // by elimination in another program; its 8 give 101.3688
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
        Assert.Equal([5, 9, 5], plan.Rows.Select(static row => row.Positions.Count));
        Assert.Contains("panels-fixings-row-bears", plan.Findings.Select(static f => f.Code));
    }

    [Fact]
    public void A_hung_mass_is_shared_by_the_girth_that_each_row_holds()
    {
        // Rows at 0, 200, 400 of 420: to half way 100, 200, 120 of it; as supports of a beam 75.25, 248.5, 96.25, for over the middle one is
        // -4950: 800 M - 200 · 20²/2 = -200³/2. The greater counts: 100, 248.5, 120. 4.2 kg at 3 g: 0.01 kg to each mm of girth.
        PanelFixingPlan plan = PanelFixings.Place(s_job with { HungMass = Mass.FromKilograms(4.2), Girth = Mm(420) });
        Assert.Equal(1 * 3 * G, plan.Rows[0].Load.Newtons, 1e-9);
        Assert.Equal((2.485 * 3 * G) + 675, plan.Rows[1].Load.Newtons, 1e-9);
        Assert.Equal(1.2 * 3 * G, plan.Rows[2].Load.Newtons, 1e-9); // what presses is not counted against it
        Assert.Equal(["greatest-spacing", "edge-distance", "acceleration"], plan.DefaultsUsed.Select(static d => d.Figure.Name));
        Assert.Contains("panels-fixings-road-only", plan.Findings.Select(static f => f.Code));
        Assert.Contains("panels-fixings-under-gravity", PanelFixings.Place(s_job with { HungMass = Mass.FromKilograms(1), Acceleration = 0.9 }).Findings.Select(static f => f.Code));
        WorkingsCheck.Recompute(plan.Explain());
    }

    /// <summary>Three moments by hand, load 1 N/mm: 3 fixings 250 apart, 25 from the edges: M at the ends -312.5, in the middle (-31250 + 625)/4; 250 + (15312.5 - 625)/250 = 308.75. The others the same way.</summary>
    [Theory]
    [InlineData(2, 25, 150)] // carried by statics alone: half of 300
    [InlineData(3, 25, 308.75)]
    [InlineData(4, 25, 273.5)] // M₁ = (-31250 + 312.5)/5 = -6187.5; 250 + (6187.5 - 312.5)/250
    [InlineData(5, 25, 283.571429)] // M₁ = -23125/3.5, M₂ = (-31250 - 2 M₁)/4
    [InlineData(3, 0, 312.5)] // 5/8 of 500, as in every table of beams
    [InlineData(4, 0, 275)] // 1.1 of 250, as there
    public void An_inner_fixing_is_counted_with_what_a_stiff_panel_brings_to_it(int fixings, double edge, double newtons)
    {
        PanelFixingRow row = Assert.Single(PanelFixings.Place(One(1, (250 * (fixings - 1)) + (2 * edge), 1000) with { EdgeDistance = Mm(edge) }).Rows);
        Assert.Equal(fixings, row.Positions.Count);
        Assert.Equal(newtons, row.GreatestLoad.Newtons, 1e-6);
    }

    [Fact]
    public void An_outer_fixing_is_counted_with_what_a_long_overhang_pries()
    {
        // 50 beyond 5 fixings 50 apart: M₀ = -1250, M₀ + 4 M₁ + M₂ = -1250, 2 M₁ + 4 M₂ = -1250: 3.5 M₁ = 312.5, M₁ = 89.2857.
        PanelFixingRow row = Assert.Single(PanelFixings.Place(One(1, 300, 10_000) with { EdgeDistance = Mm(50), GreatestSpacing = Mm(50) }).Rows);
        Assert.Equal(5, row.Positions.Count);
        Assert.Equal(75 + ((89.285714 + 1250) / 50), row.GreatestLoad.Newtons, 1e-6); // half way to the neighbour it would be 75
    }

    /// <summary>
    /// What overhangs hangs free like what is between two fixings, so it is no longer than those are apart at most: 250 by default. One alone in the middle of 519 overhangs by 259.5; of 500, by 250. Two are as
    /// far as 250 off the edges of 520, 20 apart.
    /// </summary>
    [Theory]
    [InlineData(1900, 1000, false)]
    [InlineData(2000, 990, false)]
    [InlineData(1900, 250, true)]
    [InlineData(1900, 250.000001, false)]
    [InlineData(519, 250, false)]
    [InlineData(500.000002, 250, false)]
    [InlineData(500, 250, true)]
    [InlineData(520, 250, true)]
    public void No_panel_overhangs_by_more_than_fixings_are_apart(double width, double edge, bool taken)
    {
        PanelFixingJob job = One(0.1, width, 200) with { EdgeDistance = Mm(edge) };
        Assert.Equal(taken ? [] : ["job.EdgeDistance"], PanelFixings.Check(job).Select(static problem => problem.Parameter));
        Assert.Equal("job.EdgeDistance", Assert.Single(PanelFixings.Check(One(0.1, 1900, 200) with { EdgeDistance = Mm(41), GreatestSpacing = Mm(40) })).Parameter);
        if (!taken)
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => PanelFixings.Place(job));
        }
    }

    [Fact]
    public void Between_rows_a_hung_mass_is_shared_as_a_stiff_panel_shares_it()
    {
        // Three rows, the outer ones at the edges: the middle one carries 5/8, not a half. 1 kg at 1 g.
        PanelRow[] rows = [new(Mm(0), default), new(Mm(200), default), new(Mm(400), default)];
        PanelFixingJob hung = new(rows, Mm(1000), Force.FromNewtons(1000)) { HungMass = Mass.FromKilograms(1), Acceleration = 1 };
        Assert.Equal([0.25 * G, 0.625 * G, 0.25 * G], PanelFixings.Place(hung).Rows.Select(static row => row.Load.Newtons), Near);

        // Two rows, one at the edge, the other 300 off it, of 420: moments about the first give the second 420 · 210/300 = 294 of 420, more than 420 - 150.
        PanelFixingJob two = hung with { Rows = [new(Mm(0), default), new(Mm(300), default)], Girth = Mm(420) };
        Assert.Equal([150 * G / 420, 0.7 * G], PanelFixings.Place(two).Rows.Select(static row => row.Load.Newtons), Near);
        Assert.Equal(G, Assert.Single(PanelFixings.Place(hung with { Rows = [new(Mm(30), default)], Girth = Mm(400) }).Rows).Load.Newtons, 1e-9);
        WorkingsCheck.Recompute(PanelFixings.Place(two).Explain());
    }

    [Fact]
    public void A_load_exactly_held_is_held()
    {
        // 3 apart by 500, at the edges: the middle one holds 5/8 of 0.4 · 1000 = 250 N.
        PanelFixingJob exact = One(0.4, 1000, 250) with { EdgeDistance = Mm(0), GreatestSpacing = Mm(500) };
        Assert.Equal(3, Assert.Single(PanelFixings.Place(exact).Rows).Positions.Count);
        Assert.Equal(4, Assert.Single(PanelFixings.Place(exact with { Hold = Force.FromNewtons(249.999) }).Rows).Positions.Count);
        Assert.Equal(4, Assert.Single(PanelFixings.Place(exact with { GreatestSpacing = Mm(499.999999) }).Rows).Positions.Count);
    }

    [Fact]
    public void A_narrow_panel_gets_one_in_the_middle()
    {
        PanelFixingPlan plan = PanelFixings.Place(s_job with { Width = Mm(50) });
        Assert.All(plan.Rows, static row => Assert.Equal(25, Assert.Single(row.Positions).Millimeters));
        Assert.Contains("panels-fixings-one-in-row", plan.Findings.Select(static f => f.Code));
        Assert.Equal(0.675 * 50, plan.Rows[1].GreatestLoad.Newtons, 1e-9);
        Assert.DoesNotContain("least-spacing", plan.DefaultsUsed.Select(static d => d.Figure.Name)); // the edges alone leave no two places
        Assert.False(PanelFixings.Place(s_job with { Width = Mm(50), Hold = Force.FromNewtons(33) }).Holds);
    }

    /// <summary>Two places nearer than 20 mm are no two places: 25 from both edges and 20 between take 70.</summary>
    [Theory]
    [InlineData(50.001, 1)]
    [InlineData(60, 1)]
    [InlineData(69.999999, 1)]
    [InlineData(70, 2)]
    public void No_two_fixings_are_nearer_than_20_mm(double width, int fixings)
    {
        PanelFixingPlan plan = PanelFixings.Place(s_job with { Width = Mm(width) });
        Assert.All(plan.Rows, row => Assert.Equal(fixings, row.Positions.Count));
        Assert.Equal(fixings == 1, plan.Findings.Any(static f => f.Code == "panels-fixings-one-in-row"));
        Assert.Equal(fixings == 1, plan.DefaultsUsed.Any(static d => d.Figure == new Figure("least-spacing", 20, "mm")));
        Assert.Equal(width / 2, plan.Rows[0].Positions.Average(static p => p.Millimeters), 1e-6);
    }

    [Fact]
    public void The_greatest_spacing_is_kept_whatever_the_panel_and_never_asks_for_less_than_the_least()
    {
        // 100 m less 2 · 25 by 40: 2498.75, so 2499 spaces.
        PanelFixingRow longest = Assert.Single(PanelFixings.Place(One(0, 100_000, 100) with { GreatestSpacing = Mm(40) }).Rows);
        Assert.Equal(2500, longest.Positions.Count);
        Assert.True(longest.Spacing!.Value.Millimeters <= 40);

        // A pull that asks for more than a thousand gets them: the second of very many holds s(1 + (2 - sqrt(3))/2) = 1.133975 s, 35 N at 30.865 mm: 3239.9 of those.
        PanelFixingRow strong = Assert.Single(PanelFixings.Place(One(1, 100_000, 35) with { EdgeDistance = Mm(0) }).Rows);
        Assert.True(strong.Holds);
        Assert.Equal(3241, strong.Positions.Count);

        Assert.Equal("job.GreatestSpacing", Assert.Single(PanelFixings.Check(s_job with { GreatestSpacing = Mm(39.999999) })).Parameter);
        for (int width = 70; width < 400; width++)
        {
            PanelFixingRow row = Assert.Single(PanelFixings.Place(One(0, width, 100) with { GreatestSpacing = Mm(40) }).Rows);
            Assert.InRange(row.Spacing!.Value.Millimeters, 20, 40);
        }
    }

    [Fact]
    public void Fixings_that_no_practical_number_makes_hold_are_a_problem()
    {
        // The outer ones, 25 from the edge, hold 33.75 N at the least, 31 to the row; more of them pry harder. By elimination in another program.
        Assert.False(PanelFixings.Place(s_job with { Hold = Force.FromNewtons(33.74) }).Holds);
        PanelFixingPlan weak = PanelFixings.Place(s_job with { Hold = Force.FromNewtons(10) });
        Assert.True(weak.HasProblem);
        Assert.Equal("panels-fixings-too-weak", weak.Findings[0].Code);
        Assert.Equal([true, false, true], weak.Rows.Select(static row => row.Holds));
        Assert.Contains(new Figure("least-spacing", 20, "mm"), weak.DefaultsUsed.Select(static d => d.Figure));
        PanelFixingPlan strong = PanelFixings.Place(s_job with { Hold = Force.FromNewtons(33.76) });
        Assert.True(strong.Holds);
        Assert.DoesNotContain("least-spacing", strong.DefaultsUsed.Select(static d => d.Figure.Name)); // it did not decide
    }

    /// <summary>The oracle counts up, and takes for each fixing the greater of its stretch of row, from the places themselves, and its reaction, from the turns over the fixings.</summary>
    [Fact]
    public void Over_many_rows_the_number_is_the_least_that_holds()
    {
        Random random = new(77);
        int byStrength = 0, bySpacing = 0, none = 0, alone = 0;
        for (int round = 0; round < 3000; round++)
        {
            double width = random.Next(60, 3000), edge = random.Next(0, 60), cap = random.Next(70, 400), hold = random.Next(5, 300), pull = random.Next(-100, 1500) / 1000.0;
            PanelFixingRow row = Assert.Single(PanelFixings.Place(new PanelFixingJob([new(Mm(10), ForcePerLength.FromNewtonsPerMillimeter(pull))], Mm(width), Force.FromNewtons(hold)) { EdgeDistance = Mm(edge), GreatestSpacing = Mm(cap) }).Rows);
            if (width - (2 * edge) < 20)
            {
                Assert.Equal(width / 2, Assert.Single(row.Positions).Millimeters, 1e-6);
                alone++;
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

        Assert.True(byStrength > 300 && bySpacing > 300 && none > 100 && alone > 10, $"{byStrength} by strength, {bySpacing} by spacing, {none} not at all, {alone} alone.");
    }

    [Fact]
    public void All_problems_are_reported_at_once()
    {
        IReadOnlyList<InputProblem> problems = PanelFixings.Check(s_job with { Rows = [new(Mm(10), default), new(Mm(10.5), ForcePerLength.FromNewtonsPerMillimeter(1001))], Width = Mm(0.5), Hold = Force.FromNewtons(0), Girth = Mm(10) });
        Assert.Equal(["job.Rows[1].Pull", "job.Rows[1].Position", "job.Width", "job.Hold", "job.Girth"], problems.Select(static p => p.Parameter));
        Assert.Throws<ArgumentOutOfRangeException>(() => PanelFixings.Place(s_job with { Hold = Force.FromNewtons(0) }));
    }

    /// <summary>The same of the rows of a panel: unequal bays, and edges beyond the outer rows.</summary>
    [Fact]
    public void Over_many_panels_no_row_is_given_less_of_the_mass_than_either_rule_says()
    {
        Random random = new(78);
        int byBeam = 0, byHalves = 0;
        for (int round = 0; round < 500; round++)
        {
            double[] places = new double[random.Next(1, 7)];
            double at = random.Next(0, 80);
            for (int i = 0; i < places.Length; i++)
            {
                places[i] = at;
                at += random.Next(20, 600);
            }

            double girth = places[^1] + random.Next(0, 80);
            PanelFixingJob job = new([.. places.Select(static place => new PanelRow(Mm(place), default))], Mm(900), Force.FromNewtons(1e5)) { Girth = Mm(girth), HungMass = Mass.FromKilograms(7), Acceleration = 2 };
            PanelFixingPlan plan = PanelFixings.Place(job);
            double[] reactions = girth > 0 ? Reactions(places, girth) : [1];
            for (int i = 0; i < places.Length; i++)
            {
                double halves = girth > 0 ? Halves(places, girth, i) : 1;
                Assert.Equal(7 * 2 * G * Math.Max(halves, reactions[i]) / (girth > 0 ? girth : 1), plan.Rows[i].Load.Newtons, 1e-6);
                byBeam += reactions[i] > halves + 1e-6 ? 1 : 0;
                byHalves += halves > reactions[i] + 1e-6 ? 1 : 0;
            }
        }

        Assert.True(byBeam > 200 && byHalves > 200, $"{byBeam} by the beam, {byHalves} by halves.");
    }

    private static PanelFixingJob One(double pull, double width, double hold) => new([new(Mm(10), ForcePerLength.FromNewtonsPerMillimeter(pull))], Mm(width), Force.FromNewtons(hold));

    private static bool Near(double one, double other) => Math.Abs(one - other) < 1e-8;

    private static double Greatest(double width, double edge, double perLength, int count)
    {
        double[] places = [.. Enumerable.Range(0, count).Select(i => edge + (i * (width - (2 * edge)) / (count - 1)))];
        double[] reactions = Reactions(places, width);
        return perLength * Enumerable.Range(0, count).Max(i => Math.Max(reactions[i], Halves(places, width, i)));
    }

    /// <summary>What lies nearer to one place than to any other, of 0 to the end.</summary>
    private static double Halves(double[] places, double end, int i) =>
        (i == places.Length - 1 ? end : (places[i] + places[i + 1]) / 2) - (i == 0 ? 0 : (places[i - 1] + places[i]) / 2);

    /// <summary>
    /// Reactions of a beam from 0 to the end under 1 N/mm. Unknown are the turns over its supports, with E I = 1 (the code solves for
    /// moments): a bay's end moments are 2/l (2 turn + other turn) less or more l²/12, those of a joint balance.
    /// </summary>
    private static double[] Reactions(double[] places, double end)
    {
        int n = places.Length;
        if (n == 1)
        {
            return [end];
        }

        double before = places[0], after = end - places[n - 1];
        double[] diagonal = new double[n], beside = new double[n], right = new double[n], turns = new double[n], reactions = new double[n];
        for (int i = 0; i < n - 1; i++)
        {
            double bay = places[i + 1] - places[i];
            diagonal[i] += 4 / bay;
            diagonal[i + 1] += 4 / bay;
            beside[i] = 2 / bay;
            right[i] += bay * bay / 12;
            right[i + 1] -= bay * bay / 12;
        }

        right[0] -= before * before / 2;
        right[n - 1] += after * after / 2;
        for (int i = 1; i < n; i++)
        {
            double share = beside[i - 1] / diagonal[i - 1];
            diagonal[i] -= share * beside[i - 1];
            right[i] -= share * right[i - 1];
        }

        for (int i = n - 1; i >= 0; i--)
        {
            turns[i] = (right[i] - (i < n - 1 ? beside[i] * turns[i + 1] : 0)) / diagonal[i];
        }

        reactions[0] += before;
        reactions[n - 1] += after;
        for (int i = 0; i < n - 1; i++)
        {
            double bay = places[i + 1] - places[i], both = 6 / bay * (turns[i] + turns[i + 1]);
            reactions[i] += (bay / 2) - (both / bay);
            reactions[i + 1] += (bay / 2) + (both / bay);
        }

        return reactions;
    }
}
