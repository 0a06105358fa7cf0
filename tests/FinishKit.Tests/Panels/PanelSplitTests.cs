using System;
using System.Collections.Generic;
using System.Linq;
using FinishKit.Tests.Contracts;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Panels;

/// <summary>Walls split into panels: worked examples, every subset of joints tried on small walls, areas counted square by square, and mirrors.</summary>
public sealed class PanelSplitTests
{
    private static readonly PanelWall s_plain = new(Mm(3400), Mm(800), Mm(2440), Mm(1220)) { Ribs = [new(Mm(950), Mm(60)), new(Mm(1700), Mm(60)), new(Mm(2330), Mm(60))] };

    [Fact]
    public void Split()
    {
        #region example: PanelSplit.Split
        PanelWall wall = new(Mm(3400), Mm(800), Mm(2440), Mm(1220)) { Ribs = [new(Mm(950), Mm(60)), new(Mm(1700), Mm(60)), new(Mm(2330), Mm(60))] };
        PanelSplitPlan plan = PanelSplit.Split(wall);
        int panels = plan.Panels.Count;                     // 2, meeting on the rib at 1700, which is more even than 950 or 2330
        double width = plan.Panels[0].Width.Millimeters;    // 1699.25: half the reveal less
        #endregion
        Assert.Equal(2, panels);
        Assert.Equal(1699.25, width);
        Assert.Equal(1700, Assert.Single(plan.Joints).Place.Millimeters);
        Assert.Equal(1, plan.LeastByArea); // 3400 · 800 over 2440 · 1220: 0.91
        Assert.Equal(2 * 1699.25 * 800, plan.NetArea.SquareMillimeters, 1e-3);
        WorkingsCheck.Recompute(plan.Explain());
    }

    /// <summary>Two panels where the area asks for one, so the search has to prove it. A post of 1.5, just the reveal, is swallowed by a joint as a thinner one is; one of a nanometre more is not.</summary>
    [Theory]
    [InlineData(501, false)]
    [InlineData(501.5, false)]
    [InlineData(501.500001, true)]
    public void A_post_as_narrow_as_the_reveal_leaves_nothing_proven(double next, bool proven)
    {
        PanelSplitPlan plan = PanelSplit.Split(s_plain with { Openings = [new FaceOpening(Mm(300), Mm(500), Mm(200), Mm(600)), new FaceOpening(Mm(next), Mm(700), Mm(200), Mm(600))] });
        Assert.Equal((2, 1, proven), (plan.Panels.Count, plan.LeastByArea, plan.Proven));
    }

    [Fact]
    public void Grain_that_runs_up_the_wall_asks_for_narrower_panels()
    {
        // 1220 at most: with joints at 950, 1700, 2330 the panels are 950, 750, 630, 1070; 950 to 2330 is too wide, 2330 to 3400 is not.
        PanelSplitPlan plan = PanelSplit.Split(s_plain with { Grain = PanelGrainDirection.AlongV });
        Assert.Equal(4, plan.Panels.Count);
        Assert.All(plan.Panels, static panel => Assert.False(panel.GrainAlongU));
        Assert.Equal(2, PanelSplit.Split(s_plain with { Grain = PanelGrainDirection.Either }).Panels.Count);
        Assert.Equal("panels-split-none", PanelSplit.Split(s_plain with { Grain = PanelGrainDirection.AlongV, Ribs = [new(Mm(1700), Mm(60))] }).Findings[0].Code);
    }

    [Fact]
    public void A_panel_exactly_as_large_as_the_sheet_or_as_heavy_as_can_be_handled_will_do()
    {
        PanelWall exact = s_plain with { SheetLength = Mm(1699.25) };
        Assert.Equal(2, PanelSplit.Split(exact).Panels.Count);
        Assert.Equal(3, PanelSplit.Split(exact with { SheetLength = Mm(1699.249999) }).Panels.Count);

        // 1.69925 by 0.8 m at 5 kg: 6.797 kg.
        PanelWall heavy = s_plain with { SquareMetreMass = Mass.FromKilograms(5), MostMass = Mass.FromKilograms(6.797) };
        Assert.Equal(2, PanelSplit.Split(heavy).Panels.Count);
        Assert.Equal(6.797, PanelSplit.Split(heavy).Panels[0].Mass!.Value.Kilograms, 1e-9);
        Assert.Equal(3, PanelSplit.Split(heavy with { MostMass = Mass.FromKilograms(6.7969) }).Panels.Count);
        Assert.Equal(3, PanelSplit.Split(s_plain with { MostLength = Mm(1699) }).Panels.Count);
    }

    [Fact]
    public void Metal_too_narrow_for_two_panels_takes_no_joint_unless_they_must_part_there()
    {
        // 15 + 15 + 1.5.
        PanelWall wall = s_plain with { Ribs = [new(Mm(1700), Mm(31.499998)), new(Mm(2000), Mm(31.5))] };
        Assert.Equal(2000, Assert.Single(PanelSplit.Split(wall).Joints).Place.Millimeters);
        Assert.Contains("panels-split-narrow-metal", PanelSplit.Split(wall).Findings.Select(static f => f.Code));
        PanelSplitPlan forced = PanelSplit.Split(wall with { Ribs = [new(Mm(1700), Mm(20)) { MustSplit = true }] });
        Assert.Equal(1700, Assert.Single(forced.Joints).Place.Millimeters);
        Assert.Contains("panels-split-forced-off-metal", forced.Findings.Select(static f => f.Code));
        Assert.Equal(2, PanelSplit.Split(s_plain with { SheetLength = Mm(3400), Ribs = [new(Mm(1700), Mm(60)) { MustSplit = true }] }).Panels.Count);
    }

    [Fact]
    public void A_joint_runs_along_an_openings_edge_or_stays_off_it()
    {
        // The opening's edge at 1690 is within 60/2 - 15 - 0.75 = 14.25 of the rib's middle: the joint moves there, as 10 mm beside it is too near.
        PanelWall wall = s_plain with { Ribs = [new(Mm(1700), Mm(60))], Openings = [new FaceOpening(Mm(900), Mm(1690), Mm(200), Mm(600))] };
        PanelSplitPlan plan = PanelSplit.Split(wall);
        Assert.Equal(1690, Assert.Single(plan.Joints).Place.Millimeters);
        FaceOpening cut = Assert.Single(plan.Panels[0].CutOuts);
        Assert.Equal(1689.25, cut.ToU.Millimeters); // the panel ends there, half the reveal short
        Assert.Empty(plan.Panels[1].CutOuts);

        // With 59 mm of metal or less it does not reach the edge at 1685.
        Assert.False(PanelSplit.Split(wall with { Openings = [new FaceOpening(Mm(900), Mm(1685), Mm(200), Mm(600))], Ribs = [new(Mm(1700), Mm(61.4))] }).IsSplit);
        Assert.True(PanelSplit.Split(wall with { Openings = [new FaceOpening(Mm(900), Mm(1685), Mm(200), Mm(600))], Ribs = [new(Mm(1700), Mm(61.5))] }).IsSplit);
        Assert.True(PanelSplit.Split(wall with { CornerDistance = Mm(10) }).IsSplit);
    }

    [Fact]
    public void What_lies_in_an_opening_altogether_is_no_panel()
    {
        // A door from rib to rib over the whole girth.
        PanelSplitPlan plan = PanelSplit.Split(s_plain with { Openings = [new FaceOpening(Mm(950), Mm(2330), Mm(0), Mm(800))] });
        Assert.Equal([949.25, 3400], plan.Panels.Select(static panel => panel.ToU.Millimeters)); // half the reveal short of the joint
        Assert.Contains("panels-split-falls-apart", PanelSplit.Split(s_plain with { Openings = [new FaceOpening(Mm(1000), Mm(1200), Mm(0), Mm(800))] }).Findings.Select(static f => f.Code));
    }

    [Fact]
    public void Each_default_taken_is_named()
    {
        Assert.Equal(["reveal", "landing", "corner-distance", "least-panel"], PanelSplit.Split(s_plain).DefaultsUsed.Select(static d => d.Figure.Name));
        Assert.Empty(PanelSplit.Split((PanelWall)GoodValues.Of(typeof(PanelWall))).DefaultsUsed);
    }

    /// <summary>
    /// Joints at middles and along edges only: every subset of level ones, and for each course every subset of upright ones, by rules written afresh in
    /// whole millimetres. The search may spare a panel elsewhere on the metal (PanelSplitMetalTests), and is as even where it does not.
    /// Areas counted square by square; the mirrored wall.
    /// </summary>
    [Fact]
    public void On_small_walls_no_split_is_better_areas_add_up_and_the_mirror_is_as_good()
    {
        Random random = new(20261125);
        int split = 0, none = 0, several = 0, skipped = 0, spared = 0;
        for (int round = 0; round < 400; round++)
        {
            Small small = Small.Draw(random);
            PanelSplitPlan plan = PanelSplit.Split(small.Wall(mirrored: false)), mirror = PanelSplit.Split(small.Wall(mirrored: true));
            (int Panels, long Squares)? best = small.Best();
            Assert.True(plan.IsSplit || best is null);
            Assert.Equal(plan.IsSplit, mirror.IsSplit);
            if (!plan.IsSplit)
            {
                none++;
                continue;
            }

            Assert.Equal((plan.Panels.Count, plan.Panels.Sum(Squares)), (mirror.Panels.Count, mirror.Panels.Sum(Squares)));
            Assert.True(plan.Panels.Count >= plan.LeastByArea);
            Assert.Equal(small.Uncovered(plan), plan.NetArea.SquareMillimeters, 1e-6);
            split++;
            if (best is not { } found || plan.Panels.Count < found.Panels)
            {
                spared++;
                continue;
            }

            Assert.Equal(found, (plan.Panels.Count, plan.Panels.Sum(Squares)));
            several += plan.Panels.Count > 2 ? 1 : 0;
            skipped += plan.Joints.Count > 0 && small.Openings.Count > 0 ? 1 : 0;
        }

        Assert.True(split > 80 && none > 80 && several > 30 && skipped > 20 && spared > 5, $"{split} split, {none} not, {several} in more than two, {skipped} with joints and openings, {spared} better off middle and edge.");
    }

    [Fact]
    public void All_problems_are_reported_at_once()
    {
        IReadOnlyList<InputProblem> problems = PanelSplit.Check(s_plain with
        {
            Openings = [new FaceOpening(Mm(100), Mm(300), Mm(100), Mm(300)), new FaceOpening(Mm(200), Mm(400), Mm(200), Mm(400)), new FaceOpening(Mm(10), Mm(5), Mm(0), Mm(10))],
            Ribs = [new(Mm(3401), Mm(10))],
            Grain = (PanelGrainDirection)7,
            MostMass = Mass.FromKilograms(10),
        });
        Assert.Equal(["wall.Grain", "wall.Openings[1]", "wall.Openings[2].ToU", "wall.Ribs[0].Position", "wall.SquareMetreMass"], problems.Select(static p => p.Parameter));
        Assert.Throws<ArgumentOutOfRangeException>(() => PanelSplit.Split(s_plain with { Length = Mm(5) }));
        Assert.Equal(["wall.Effort"], PanelSplit.Check(s_plain with { Effort = 999 }).Select(static p => p.Parameter));
        Assert.Equal(["wall.Effort"], PanelSplit.Check(s_plain with { Effort = 2_000_000_001 }).Select(static p => p.Parameter));
        Assert.Empty(PanelSplit.Check(s_plain with { Effort = 1000 }));
    }

    private static long Squares(WallPanel panel) => (long)Math.Round((panel.Width.Millimeters * panel.Width.Millimeters) + (panel.Height.Millimeters * panel.Height.Millimeters));

    /// <summary>A wall of a few hundred whole millimetres, reveal 2, with the rules written out a second time.</summary>
    private sealed record Small(int Length, int Girth, int Along, int Across, PanelGrainDirection Grain, List<(int Place, int Metal, bool Must)> Ribs, List<(int Place, int Metal, bool Must)> Rails, List<(int U0, int U1, int V0, int V1)> Openings, int Corner, int Least, int MostArea)
    {
        internal static Small Draw(Random random)
        {
            int length = random.Next(100, 400), girth = random.Next(60, 200);
            List<(int, int, int, int)> openings = [];
            if (random.Next(3) > 0)
            {
                int u = random.Next(0, length - 20), v = random.Next(0, girth - 20);
                openings.Add((u, Math.Min(length, u + random.Next(10, 150)), random.Next(4) == 0 ? 0 : v, random.Next(4) == 0 ? girth : Math.Min(girth, v + random.Next(10, 80))));
                openings.RemoveAll(static o => o.Item4 <= o.Item3);
            }

            List<(int, int, bool)> ribs = [.. Enumerable.Range(0, random.Next(1, 5)).Select(_ => (random.Next(0, length + 1), 2 * random.Next(4, 20), random.Next(8) == 0))];
            List<(int, int, bool)> rails = [.. Enumerable.Range(0, random.Next(0, 3)).Select(_ => (random.Next(0, girth + 1), 2 * random.Next(4, 20), random.Next(8) == 0))];
            return new Small(length, girth, random.Next(80, 300), random.Next(60, 200), (PanelGrainDirection)random.Next(3), ribs, rails, openings, random.Next(0, 20), random.Next(0, 30), random.Next(3) == 0 ? random.Next(5000, 30_000) : 10_000_000);
        }

        internal PanelWall Wall(bool mirrored)
        {
            int Turn(int u) => mirrored ? Length - u : u;
            PanelWall wall = new(Mm(Length), Mm(Girth), Mm(Along), Mm(Across))
            {
                Grain = Grain,
                Ribs = [.. Ribs.Select(r => new PanelJointLine(Mm(Turn(r.Place)), Mm(r.Metal)) { MustSplit = r.Must })],
                Rails = [.. Rails.Select(static r => new PanelJointLine(Mm(r.Place), Mm(r.Metal)) { MustSplit = r.Must })],
                Openings = [.. Openings.Select(o => new FaceOpening(Mm(Math.Min(Turn(o.U0), Turn(o.U1))), Mm(Math.Max(Turn(o.U0), Turn(o.U1))), Mm(o.V0), Mm(o.V1)))],
                Reveal = Mm(2),
                Landing = Mm(5),
                CornerDistance = Mm(Corner),
                LeastPanel = Mm(Least),
            };
            return MostArea < 10_000_000 ? wall with { SquareMetreMass = Mass.FromKilograms(1000), MostMass = Mass.FromKilograms(MostArea / 1000.0) } : wall;
        }

        internal (int Panels, long Squares)? Best()
        {
            (int, long)? best = null;
            List<(int Place, bool Must)> levels = Candidates(Rails, Girth, static o => (o.V0, o.V1)), uprights = Candidates(Ribs, Length, static o => (o.U0, o.U1));
            foreach (int[] level in Subsets(levels))
            {
                if (level.Any(y => Openings.Any(o => Near(y, o.V0) || Near(y, o.V1))))
                {
                    continue;
                }

                int[] ends = [0, .. level, Girth];
                (int Panels, long Squares)? sum = (0, 0);
                for (int i = 0; i + 1 < ends.Length && sum is not null; i++)
                {
                    sum = Course(ends[i], ends[i + 1], uprights) is { } course ? (sum.Value.Panels + course.Panels, sum.Value.Squares + course.Squares) : null;
                }

                best = sum is { } s && (best is not { } b || s.CompareTo(b) < 0) ? s : best;
            }

            return best;
        }

        /// <summary>Square millimetres that neither opening nor gap takes, counted one by one; gaps from the joints of the plan.</summary>
        internal int Uncovered(PanelSplitPlan plan)
        {
            int count = 0;
            for (int u = 0; u < Length; u++)
            {
                for (int v = 0; v < Girth; v++)
                {
                    bool gap = plan.Joints.Any(j => j.IsUpright
                        ? Math.Abs(u + 0.5 - j.Place.Millimeters) < 1 && v + 0.5 > j.From.Millimeters && v + 0.5 < j.To.Millimeters
                        : Math.Abs(v + 0.5 - j.Place.Millimeters) < 1);
                    count += gap || Openings.Any(o => u >= o.U0 && u < o.U1 && v >= o.V0 && v < o.V1) ? 0 : 1;
                }
            }

            return count;
        }

        private (int Panels, long Squares)? Course(int v0, int v1, List<(int Place, bool Must)> uprights)
        {
            (int, long)? best = null;
            foreach (int[] joints in Subsets(uprights))
            {
                if (joints.Any(x => Openings.Any(o => o.V0 < v1 && o.V1 > v0 && (Near(x, o.U0) || Near(x, o.U1)))))
                {
                    continue;
                }

                int[] ends = [0, .. joints, Length];
                int panels = 0;
                long squares = 0;
                bool good = true;
                for (int i = 0; i + 1 < ends.Length; i++)
                {
                    int a = ends[i] == 0 ? 0 : ends[i] + 1, b = ends[i + 1] == Length ? Length : ends[i + 1] - 1, c = v0 == 0 ? 0 : v0 + 1, d = v1 == Girth ? Girth : v1 - 1, w = b - a, h = d - c;
                    if (w <= 0 || h <= 0)
                    {
                        good = false;
                        break;
                    }

                    int net = (w * h) - Openings.Sum(o => Math.Max(0, Math.Min(b, o.U1) - Math.Max(a, o.U0)) * Math.Max(0, Math.Min(d, o.V1) - Math.Max(c, o.V0)));
                    if (net == 0)
                    {
                        continue;
                    }

                    bool fits = (Grain != PanelGrainDirection.AlongV && w <= Along && h <= Across) || (Grain != PanelGrainDirection.AlongU && h <= Along && w <= Across);
                    good &= fits && net <= MostArea && (w >= Least || w == Length) && (h >= Least || h == Girth);
                    panels++;
                    squares += (w * (long)w) + (h * (long)h);
                }

                best = good && (best is not { } known || (panels, squares).CompareTo(known) < 0) ? (panels, squares) : best;
            }

            return best;
        }

        private bool Near(int place, int edge) => place != edge && Math.Abs(place - edge) < Corner;

        private List<(int Place, bool Must)> Candidates(List<(int Place, int Metal, bool Must)> lines, int end, Func<(int U0, int U1, int V0, int V1), (int, int)> range)
        {
            Dictionary<int, bool> places = [];
            foreach ((int place, int metal, bool must) in lines)
            {
                if (must || metal >= 12)
                {
                    places[place] = must || places.GetValueOrDefault(place);
                    foreach ((int from, int to) in Openings.Select(range))
                    {
                        foreach (int edge in new[] { from, to })
                        {
                            if (!must && 2 * Math.Abs(edge - place) <= metal - 12)
                            {
                                places[edge] = places.GetValueOrDefault(edge);
                            }
                        }
                    }
                }
            }

            return [.. places.Where(p => p.Key > 0 && p.Key < end).OrderBy(static p => p.Key).Select(static p => (p.Key, p.Value))];
        }

        /// <summary>Every choice that holds all places where panels must part.</summary>
        private static IEnumerable<int[]> Subsets(List<(int Place, bool Must)> places)
        {
            for (int set = 0; set < 1 << places.Count; set++)
            {
                if (Enumerable.Range(0, places.Count).All(i => !places[i].Must || (set >> i & 1) == 1))
                {
                    yield return [.. Enumerable.Range(0, places.Count).Where(i => (set >> i & 1) == 1).Select(i => places[i].Place)];
                }
            }
        }
    }
}
