using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Sizes of wrapped panels: from the opening to finished size, ply, foam and cloth, and from a ply that is there to the opening it suits.</summary>
public static class PanelWrap
{
    internal const int MostPanels = 200;
    internal const int MostWindows = 100;

    /// <summary>Plans a row of wrapped panels for an opening.</summary>
    /// <param name="job">The opening, what the panels are made of, how many there are, and windows in them.</param>
    /// <returns>Every panel with its sizes and cut-outs, the pieces of foam and cloth, and findings.</returns>
    /// <remarks>
    /// <para>Formula: finished w = (W - 2 gap - (k - 1) joint)/k, or what is left between joints given by their middles; at each wrapped edge, with s the squeezed foam (0 where the foam is trimmed flush): ply = w less cloth + s; foam = ply + ply thickness where foam goes round; cloth = ply + s + foam + ply thickness + s + turn-under. A window's cut-out in the ply is larger by cloth + s at each edge, and the cloth is cut the reach from there inward, or half of the cut-out's shorter side where that is less: then it is a slit.</para>
    /// <para>Validity: flat panels with square corners, or bent ones measured along the ply's face. The cloth's own thickness at its bends, and its stretch, are left out: the turn-under takes them up.</para>
    /// <para>Source: wrap-sizes (derived), wrap-cuts (derived); default-foam, default-turn-under, default-joint-reveal (common practice); default-wrap-gap, default-squeezed-foam, wrap-cut-stop (judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The job, its build, or a window is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// WrapBuild build = new(Mm(6.5), Mm(1)) { Nap = NapDirection.TowardBottom, Stretch = ClothStretch.BothWays };
    /// WrapPlan plan = PanelWrap.Plan(new WrapJob(Mm(1000), Mm(600), build));
    /// Length finished = plan.Panels[0].FinishedWidth;     // 997: a gap of 1.5 at each edge
    /// Length ply = plan.Panels[0].PlyWidth;               // 995: 1 of cloth at each edge, the foam is trimmed flush
    /// Length cloth = plan.Panels[0].ClothWidth;           // 1084: 3 of foam, 6.5 of ply, 35 turned under at each edge
    /// </code></example>
    public static WrapPlan Plan(WrapJob job)
    {
        WrapNumbers numbers = WrapNumbers.Read(job, nameof(job), null)!;
        return new WrapPlan(numbers);
    }

    /// <summary>All problems with a job; nothing is thrown.</summary>
    /// <param name="job">The job.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckPlan(WrapJob job)
    {
        List<InputProblem> problems = [];
        WrapNumbers.Read(job, nameof(job), problems);
        return problems;
    }

    /// <summary>The opening that plies suit which are there already, with everything else as for <see cref="Plan"/>.</summary>
    /// <param name="plyWidths">Widths of the plies [length], front to rear, 10 mm to 50 m each, 1 to 200.</param>
    /// <param name="plyHeight">Their height [length], 10 mm to 50 m.</param>
    /// <param name="build">What the panels are made of.</param>
    /// <returns>The same plan as from the opening, without windows; <see cref="WrapPlan.OpeningWidth"/> and <see cref="WrapPlan.OpeningHeight"/> are the answer.</returns>
    /// <remarks>
    /// <para>Formula: finished = ply + cloth + squeezed foam at each wrapped edge; opening = sum of the finished widths + (k - 1) joint + 2 gap. The inverse of the plan, exact to the nanometre.</para>
    /// <para>Validity: as for the plan.</para>
    /// <para>Source: wrap-sizes (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The list or the build is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// WrapPlan suits = PanelWrap.FromPly([Mm(600), Mm(600)], Mm(400), new WrapBuild(Mm(6.5), Mm(1)));
    /// Length width = suits.OpeningWidth;                  // 1208.5: 2 x 602 + 1.5 between + 2 x 1.5
    /// </code></example>
    public static WrapPlan FromPly(IReadOnlyList<Length> plyWidths, Length plyHeight, WrapBuild build)
    {
        WrapNumbers numbers = WrapNumbers.Read(plyWidths, plyHeight, build, null)!;
        return new WrapPlan(numbers);
    }

    /// <summary>All problems with the input of <see cref="FromPly"/>; nothing is thrown.</summary>
    /// <param name="plyWidths">As there.</param>
    /// <param name="plyHeight">As there.</param>
    /// <param name="build">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckFromPly(IReadOnlyList<Length> plyWidths, Length plyHeight, WrapBuild build)
    {
        List<InputProblem> problems = [];
        WrapNumbers.Read(plyWidths, plyHeight, build, problems);
        return problems;
    }

    /// <summary>The one formula body for the width that each panel of a row has of its opening.</summary>
    internal static double SolveShare<TTrace>(WrapMake make, double opening, double panels, TTrace trace)
        where TTrace : struct, ITrace
    {
        double gap = make.Gap, joint = make.Joint;
        trace.Given("W", opening, "mm", Sources.Given, meaning: "width of the opening");
        trace.Given("e", gap, "mm", make.GapSource, meaning: "gap at each edge of the opening");
        trace.Given("j", joint, "mm", make.JointSource, meaning: "joint between panels");
        trace.Given("k", panels, string.Empty, Sources.Given, meaning: "panels in the row");
        return trace.Step("w", "finished", (opening - (2 * gap) - ((panels - 1) * joint)) / panels, "mm", WrapDefaults.Sizes, 1);
    }

    /// <summary>The same for the first panel where the middle of its joint was given.</summary>
    internal static double SolveFirst<TTrace>(WrapMake make, double middle, TTrace trace)
        where TTrace : struct, ITrace
    {
        double gap = make.Gap, joint = make.Joint;
        trace.Given("m", middle, "mm", Sources.Given, meaning: "middle of the first joint, from the front of the opening");
        trace.Given("e", gap, "mm", make.GapSource, meaning: "gap at each edge of the opening");
        trace.Given("j", joint, "mm", make.JointSource, meaning: "joint between panels");
        return trace.Step("w", "finished", middle - (joint / 2) - gap, "mm", WrapDefaults.Sizes, 1);
    }

    /// <summary>The same up the panels, where there is one.</summary>
    internal static double SolveHeight<TTrace>(WrapMake make, double opening, TTrace trace)
        where TTrace : struct, ITrace
    {
        double gap = make.Gap;
        trace.Given("H", opening, "mm", Sources.Given, meaning: "height of the opening");
        trace.Given("e", gap, "mm", make.GapSource, meaning: "gap at each edge of the opening");
        return trace.Step("w", "finished", opening - (2 * gap), "mm", WrapDefaults.Sizes, 2);
    }

    /// <summary>The one formula body for the width of the opening that finished widths fill, joints and gaps with them. The first is known as w_1.</summary>
    internal static double SolveOpening<TTrace>(WrapMake make, long[] row, TTrace trace)
        where TTrace : struct, ITrace
    {
        double gap = make.Gap, joint = make.Joint, panels = row.Length, finished = Grid.Millimetres(row[0]);
        double sum = trace.Step("S", nameof(sum), finished, "mm", WrapDefaults.Sizes, 1);
        for (int i = 1; i < row.Length; i++)
        {
            double next = Grid.Millimetres(row[i]);
            trace.Given("b", next, "mm", WrapDefaults.Sizes, i + 1, "finished width of the next panel");
            sum = trace.Step("S", nameof(sum), sum + next, "mm", WrapDefaults.Sizes, i + 1);
        }

        trace.Given("e", gap, "mm", make.GapSource, meaning: "gap at each edge of the opening");
        trace.Given("j", joint, "mm", make.JointSource, meaning: "joint between panels");
        trace.Given("k", panels, string.Empty, Sources.Given, meaning: "panels in the row");
        return trace.Step("W", "opening", sum + ((panels - 1) * joint) + (2 * gap), "mm", WrapDefaults.Sizes);
    }

    /// <summary>The same for its height. The finished height is known as w_2.</summary>
    internal static double SolveOpeningHeight<TTrace>(WrapMake make, double finished, TTrace trace)
        where TTrace : struct, ITrace
    {
        double gap = make.Gap;
        trace.Given("e", gap, "mm", make.GapSource, meaning: "gap at each edge of the opening");
        return trace.Step("H", "opening", finished + (2 * gap), "mm", WrapDefaults.Sizes);
    }

    /// <summary>
    /// The one formula body for the sizes across a panel one way, from the finished size, which the caller's workings know by that name, or from a ply that is there.
    /// Edges are numbered from <paramref name="index"/> + 1.
    /// </summary>
    internal static SideNumbers SolveSide<TTrace>(WrapMake make, double size, bool isPly, EdgeWrap first, EdgeWrap last, int index, TTrace trace)
        where TTrace : struct, ITrace
    {
        int side = (index / 2) + 1;
        double finished = size, ply = size;
        if (isPly)
        {
            trace.Given("P", ply, "mm", Sources.Given, side, side == 1 ? "width of the ply" : "height of the ply");
        }

        (double firstGrowth, double firstFoam, double firstReach) = SolveEdge(make, first, index + 1, (nameof(firstGrowth), nameof(firstFoam), nameof(firstReach)), trace);
        (double lastGrowth, double lastFoam, double lastReach) = SolveEdge(make, last, index + 2, (nameof(lastGrowth), nameof(lastFoam), nameof(lastReach)), trace);
        if (isPly)
        {
            finished = trace.Step("w", nameof(finished), ply + firstGrowth + lastGrowth, "mm", WrapDefaults.Sizes, side);
        }
        else
        {
            ply = trace.Step("P", nameof(ply), finished - firstGrowth - lastGrowth, "mm", WrapDefaults.Sizes, side);
        }

        double foam = make.HasFoamOfItsOwn ? trace.Step("F", nameof(foam), ply + firstFoam + lastFoam, "mm", WrapDefaults.Sizes, side) : 0;
        double cloth = trace.Step("C", nameof(cloth), ply + firstReach + lastReach, "mm", WrapDefaults.Sizes, side);
        return new SideNumbers
        {
            Finished = Grid.Nanometres(finished),
            Ply = Grid.Nanometres(ply),
            Foam = Grid.Nanometres(foam),
            Cloth = Grid.Nanometres(cloth),
            FirstGrowth = Grid.Nanometres(firstGrowth),
            FirstReach = Grid.Nanometres(firstReach),
            LastReach = Grid.Nanometres(lastReach),
        };
    }

    /// <summary>The one formula body for a window.</summary>
    internal static WindowCuts SolveWindow<TTrace>(WrapMake make, WindowNumbers window, TTrace trace)
        where TTrace : struct, ITrace
    {
        EdgeWrap wrap = make.Build.AtWindows;
        double width = Grid.Snap(window.ToU - window.FromU), height = Grid.Snap(window.ToV - window.FromV), radius = window.Radius;
        trace.Given("a", width, "mm", Sources.Given, meaning: "width of the window as seen");
        trace.Given("b", height, "mm", Sources.Given, meaning: "height of the window as seen");
        trace.Given("r", radius, "mm", Sources.Given, meaning: "radius of its corners as seen");
        (double growth, double foamReach, double reach) = SolveEdge(make, wrap, 5, (nameof(growth), nameof(foamReach), nameof(reach)), trace);
        double plyWidth = trace.Step("A", nameof(plyWidth), width + (2 * growth), "mm", WrapDefaults.Sizes);
        double plyHeight = trace.Step("B", nameof(plyHeight), height + (2 * growth), "mm", WrapDefaults.Sizes);
        double plyRadius = trace.Step("R", nameof(plyRadius), radius + growth, "mm", WrapDefaults.Cuts);
        double foamWidth = 0, foamHeight = 0;
        if (make.HasFoamOfItsOwn)
        {
            foamWidth = trace.Step("F_a", nameof(foamWidth), Math.Max(0, plyWidth - (2 * foamReach)), "mm", WrapDefaults.Sizes);
            foamHeight = trace.Step("F_b", nameof(foamHeight), Math.Max(0, plyHeight - (2 * foamReach)), "mm", WrapDefaults.Sizes);
        }

        // The same on all four sides, so that the cuts at 45 degrees meet the ply's corners: a slit too ends as far from its ends as from its long edges.
        double tab = trace.Step("b_t", nameof(tab), Math.Min(reach, Math.Min(plyWidth, plyHeight) / 2), "mm", WrapDefaults.Cuts);
        double clothWidth = trace.Step("C_a", nameof(clothWidth), plyWidth - (2 * tab), "mm", WrapDefaults.Cuts);
        double clothHeight = trace.Step("C_b", nameof(clothHeight), plyHeight - (2 * tab), "mm", WrapDefaults.Cuts);
        WindowCuts cuts = new()
        {
            IsWrapped = wrap != EdgeWrap.Unwrapped,
            Growth = Grid.Nanometres(growth),
            PlyWidth = Grid.Nanometres(plyWidth),
            PlyHeight = Grid.Nanometres(plyHeight),
            PlyRadius = Grid.Nanometres(plyRadius),
            FoamWidth = Grid.Nanometres(foamWidth),
            FoamHeight = Grid.Nanometres(foamHeight),
            ClothWidth = Grid.Nanometres(clothWidth),
            ClothHeight = Grid.Nanometres(clothHeight),
        };
        if (wrap == EdgeWrap.Unwrapped)
        {
            return cuts;
        }

        double turnUnder = make.TurnUnder, stop = WrapDefaults.CutStop, spacing = WrapDefaults.ReliefSpacing;
        double strip = trace.Step("u_s", nameof(strip), tab - (reach - turnUnder), "mm", WrapDefaults.Cuts);
        trace.Given("x", stop, "mm", WrapDefaults.CutRule, meaning: "where a cut stops short of the ply");
        trace.Given("y", spacing, "mm", WrapDefaults.CutRule, meaning: "greatest distance of cuts round a corner");
        double relief = trace.Step("l", nameof(relief), Math.Max(0, (tab * Math.Sqrt(2)) - (plyRadius * (Math.Sqrt(2) - 1)) - stop), "mm", WrapDefaults.Cuts);
        double round = trace.Step("q", nameof(round), Math.PI / 2 * plyRadius / spacing, string.Empty, WrapDefaults.Cuts);
        double reliefs = trace.Step("n", nameof(reliefs), 1 + (2 * Grid.CeilingOfRatio(Math.Max(0, round - 1), 2)), string.Empty, WrapDefaults.CutRule);
        return cuts with { Strip = Grid.Nanometres(strip), Relief = Grid.Nanometres(relief), ReliefsPerCorner = (int)reliefs };
    }

    /// <summary>The one formula body for the triangle cut off the cloth at a corner, in nanometres.</summary>
    internal static long SolveCorner<TTrace>(WrapMake make, double firstReach, double lastReach, TTrace trace)
        where TTrace : struct, ITrace
    {
        double stop = WrapDefaults.CutStop, turnUnder = make.TurnUnder;
        trace.Given("d_u", firstReach, "mm", WrapDefaults.Sizes, meaning: "reach of the cloth beyond the ply on one side of the corner");
        trace.Given("d_v", lastReach, "mm", WrapDefaults.Sizes, meaning: "reach on the other");
        trace.Given("u", turnUnder, "mm", make.TurnUnderSource, meaning: "turn-under");
        trace.Given("x", stop, "mm", WrapDefaults.CutRule, meaning: "where a cut stops short of the ply");
        double around = trace.Step("h", nameof(around), Math.Max(firstReach, lastReach) - turnUnder, "mm", WrapDefaults.Cuts);
        double leg = trace.Step("L", nameof(leg), Math.Max(0, firstReach + lastReach - (Math.Sqrt(2) * (around + stop))), "mm", WrapDefaults.Cuts);
        return Grid.Nanometres(leg);
    }

    /// <summary>What an edge adds outside the ply, how far foam and cloth reach beyond the ply's edge. The names are those under which the caller's formulas know them.</summary>
    private static (double Growth, double Foam, double Reach) SolveEdge<TTrace>(WrapMake make, EdgeWrap wrap, int index, (string Growth, string Foam, string Reach) names, TTrace trace)
        where TTrace : struct, ITrace
    {
        if (wrap == EdgeWrap.Unwrapped)
        {
            trace.Given("g", 0, "mm", WrapDefaults.Sizes, index, "added at an edge that is not wrapped", names.Growth);
            trace.Given("p", 0, "mm", WrapDefaults.Sizes, index, "foam beyond the ply there", names.Foam);
            trace.Given("d", 0, "mm", WrapDefaults.Sizes, index, "cloth beyond the ply there", names.Reach);
            return (0, 0, 0);
        }

        bool isRound = make.IsFoamRound(wrap);
        double squeezed = isRound ? make.Squeezed : 0, cloth = make.Cloth, foam = make.Foam, thickness = make.Ply, turnUnder = make.TurnUnder;
        trace.Given("c", cloth, "mm", Sources.Given, meaning: "thickness of the cloth");
        trace.Given("f", foam, "mm", make.FoamSource, meaning: "thickness of the foam");
        trace.Given("t", thickness, "mm", Sources.Given, meaning: "thickness of the ply");
        trace.Given("u", turnUnder, "mm", make.TurnUnderSource, meaning: "turn-under");
        trace.Given("s", squeezed, "mm", isRound ? make.SqueezedSource : WrapDefaults.Sizes, index, isRound ? "squeezed foam at the edge" : "no foam at the edge: it is trimmed flush");
        double growth = trace.Step("g", names.Growth, cloth + squeezed, "mm", WrapDefaults.Sizes, index);
        double beyond = 0;
        if (isRound && !make.Build.IsFoamBacked)
        {
            beyond = trace.Step("p", names.Foam, thickness, "mm", WrapDefaults.Sizes, index);
        }
        else
        {
            trace.Given("p", beyond, "mm", WrapDefaults.Sizes, index, "foam beyond the ply at the edge", names.Foam);
        }

        double reach = trace.Step("d", names.Reach, squeezed + foam + thickness + squeezed + turnUnder, "mm", WrapDefaults.Sizes, index);
        return (growth, beyond, reach);
    }
}
