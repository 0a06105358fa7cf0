using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>What a person should know about wrapped panels.</summary>
internal static class WrapFindings
{
    internal static IReadOnlyList<Finding> Of(WrapPlan plan, WrapNumbers numbers, List<int> astray)
    {
        List<Finding> findings = [];
        foreach (int window in astray)
        {
            WindowNumbers at = numbers.Windows[window];
            findings.Add(new Finding(
                "panels-wrap-window-not-inside",
                Severity.Problem,
                $"No panel holds the window at u {Print.Number(at.FromU)} to {Print.Mm(at.ToU)}, v {Print.Number(at.FromV)} to {Print.Mm(at.ToV)} with ply left on all four sides: move a joint, or end the panels at its edges.",
                [new("window", window, string.Empty), new("from-front", at.FromU, "mm"), new("to-front", at.ToU, "mm"), new("from-bottom", at.FromV, "mm"), new("to-bottom", at.ToV, "mm")],
                WrapDefaults.Sizes));
        }

        AddStrips(findings, plan, numbers.Make);
        AddTurnUnders(findings, plan, numbers);
        AddTongues(findings, plan);
        AddCloth(findings, plan.Build);
        AddEdges(findings, plan, numbers.Make);
        findings.Add(new Finding(
            "panels-wrap-flammability",
            Severity.Caution,
            "Cloth, foam and adhesive burn. In the United States 49 CFR 571.302 holds headlinings and trim panels within 13 mm of the occupants' air to a burn rate of at most 102 mm a minute, and layers bonded together are tested together: a certificate of the cloth alone does not say it of the panel. Other countries have rules of their own; keep wrapped panels clear of heaters, flues and burners.",
            [new("greatest-burn-rate", 102, "mm/min"), new("depth", 13, "mm")],
            WrapDefaults.Flammability));
        return Finding.GravestFirst(findings);
    }

    private static void AddStrips(List<Finding> findings, WrapPlan plan, WrapMake make)
    {
        foreach (WrappedPanel panel in plan.Panels)
        {
            foreach (WindowCutOut window in panel.Windows)
            {
                double strip = Grid.Millimetres(window.Cuts.Strip);
                if (!window.Cuts.IsWrapped || window.Cuts.Strip >= Grid.Nanometres(make.TurnUnder))
                {
                    continue;
                }

                List<Figure> values = [new("window", window.Window, string.Empty), new("panel", panel.Index, string.Empty), new("strip", strip, "mm"), new("turn-under", make.TurnUnder, "mm")];
                findings.Add(window.Cuts.Strip > 0
                    ? new Finding(
                        "panels-wrap-strip-short",
                        Severity.Caution,
                        $"Window {Print.Number(window.Window)} leaves cloth for {Print.Mm(strip)} on the back, under the turn-under of {Print.Mm(make.TurnUnder)}: glue it all over, or face the edge with a strip of its own.",
                        [.. values],
                        WrapDefaults.Cuts)
                    : new Finding(
                        "panels-wrap-strip-none",
                        Severity.Problem,
                        $"Window {Print.Number(window.Window)} is too small: the cloth cut from it does not get round the edge onto the back. Line its edge with a strip of its own, a ring or a trim.",
                        [.. values],
                        WrapDefaults.Cuts));
            }
        }
    }

    /// <summary>Ply beside a window, and between two, that is so narrow that it breaks; no ply between two at all.</summary>
    private static void AddTongues(List<Finding> findings, WrapPlan plan)
    {
        long enough = Grid.Nanometres(PanelSplitDefaults.CornerDistance), least = long.MaxValue;
        int places = 0;
        foreach (WrappedPanel panel in plan.Panels)
        {
            for (int i = 0; i < panel.Windows.Count; i++)
            {
                WindowCutOut window = panel.Windows[i];
                Look(window.FromFrontNm);
                Look(panel.Sides.Ply - window.ToFrontNm);
                Look(window.FromBottomNm);
                Look(panel.Upright.Ply - window.ToBottomNm);
                for (int k = 0; k < i; k++)
                {
                    long between = Between(panel.Windows[k], window);
                    Look(between);
                    if (between <= 0)
                    {
                        findings.Add(new Finding(
                            "panels-wrap-windows-meet",
                            Severity.Problem,
                            $"No ply is left between windows {Print.Number(panel.Windows[k].Window)} and {Print.Number(window.Window)}: their cut-outs, larger than what is seen by what wraps their edges, meet. Make one opening of them, or move them apart.",
                            [new("window", panel.Windows[k].Window, string.Empty), new("other-window", window.Window, string.Empty), new("panel", panel.Index, string.Empty), new("ply-between", Grid.Millimetres(between), "mm")],
                            WrapDefaults.Sizes));
                    }
                }
            }
        }

        if (places > 0)
        {
            findings.Add(new Finding(
                "panels-wrap-ply-narrow",
                Severity.Caution,
                $"At {Print.Number(places)} {(places == 1 ? "place" : "places")} beside or between windows less than {Print.Mm(PanelSplitDefaults.CornerDistance)} of ply is left, {Print.Mm(Grid.Millimetres(least))} at the least: a tongue so narrow breaks when it is cut, wrapped or fixed. Move the window or the joint, end the panel at the window, or glue a backing behind it.",
                [new("places", places, string.Empty), new("ply-left", Grid.Millimetres(least), "mm"), new("asked", PanelSplitDefaults.CornerDistance, "mm")],
                PanelSplitDefaults.CornerSource));
        }

        void Look(long ply)
        {
            if (ply > 0 && ply < enough)
            {
                places++;
                least = Math.Min(least, ply);
            }
        }
    }

    /// <summary>Least ply between two cut-outs, corner to corner where they do not face each other: from the middles of their rounds, less both radii.</summary>
    private static long Between(WindowCutOut one, WindowCutOut other)
    {
        double rounds = one.Cuts.PlyRadius + other.Cuts.PlyRadius;
        double u = Math.Max(0, rounds + Apart(one.FromFrontNm, one.ToFrontNm, other.FromFrontNm, other.ToFrontNm));
        double v = Math.Max(0, rounds + Apart(one.FromBottomNm, one.ToBottomNm, other.FromBottomNm, other.ToBottomNm));
        return (long)Math.Round(Math.Sqrt((u * u) + (v * v)) - rounds);
    }

    /// <summary>From the one's end to the other's beginning, whichever lies first; negative where they lie beside each other.</summary>
    private static long Apart(long from, long to, long otherFrom, long otherTo) => Math.Max(otherFrom - to, from - otherTo);

    /// <summary>Where two turn-unders lie on each other the back stands proud of its fixings.</summary>
    private static void AddTurnUnders(List<Finding> findings, WrapPlan plan, WrapNumbers numbers)
    {
        long turn = Grid.Nanometres(numbers.Make.TurnUnder);
        int places = 0;
        long least = long.MaxValue;
        foreach (WrappedPanel panel in plan.Panels)
        {
            long front = Turn(numbers.FrontOf(panel.Index)), rear = Turn(numbers.RearOf(panel.Index)), bottom = Turn(plan.Build.Bottom), top = Turn(plan.Build.Top);
            Look(panel.Sides.Ply, front, rear);
            Look(panel.Upright.Ply, bottom, top);
            for (int i = 0; i < panel.Windows.Count; i++)
            {
                WindowCutOut window = panel.Windows[i];
                long around = window.Cuts.Turned;
                Look(window.FromFrontNm, front, around);
                Look(panel.Sides.Ply - window.ToFrontNm, rear, around);
                Look(window.FromBottomNm, bottom, around);
                Look(panel.Upright.Ply - window.ToBottomNm, top, around);
                for (int k = 0; k < i; k++)
                {
                    // Cut-outs that face each other; corner to corner the cloth is cut away.
                    WindowCutOut other = panel.Windows[k];
                    long u = Apart(window.FromFrontNm, window.ToFrontNm, other.FromFrontNm, other.ToFrontNm), v = Apart(window.FromBottomNm, window.ToBottomNm, other.FromBottomNm, other.ToBottomNm);
                    if ((u > 0 && v < 0) || (v > 0 && u < 0))
                    {
                        Look(Math.Max(u, v), around, other.Cuts.Turned);
                    }
                }
            }
        }

        if (places > 0)
        {
            findings.Add(new Finding(
                "panels-wrap-turn-unders-overlap",
                Severity.Caution,
                $"Turn-unders lie on each other at {Print.Number(places)} {(places == 1 ? "place" : "places")}, the ply there being {Print.Mm(Grid.Millimetres(least))} wide at the least: trim them so that they meet, or the back stands proud.",
                [new("places", places, string.Empty), new("ply-between", Grid.Millimetres(least), "mm"), new("turn-under", numbers.Make.TurnUnder, "mm")],
                WrapDefaults.Sizes));
        }

        long Turn(EdgeWrap wrap) => wrap == EdgeWrap.Unwrapped ? 0 : turn;

        void Look(long ply, long one, long other)
        {
            if (one + other > ply)
            {
                places++;
                least = Math.Min(least, ply);
            }
        }
    }

    private static void AddCloth(List<Finding> findings, WrapBuild build)
    {
        if (build.Nap == NapDirection.Unknown)
        {
            findings.Add(new Finding(
                "panels-wrap-nap-unknown",
                Severity.Caution,
                "Which way the nap lies was not given: the pieces are taken with the roll running up the panels, and none may be turned. Stroke the cloth, or hold it to the light, before the first cut.",
                []));
        }

        if (build.Stretch == ClothStretch.Unknown)
        {
            findings.Add(new Finding(
                "panels-wrap-stretch-unknown",
                Severity.Note,
                "Which way the cloth stretches was not given: no piece may be turned. On a curved panel the greater stretch goes round the curve.",
                []));
        }

        if (build.StretchesAlong)
        {
            findings.Add(new Finding(
                "panels-wrap-stretch-along-van",
                Severity.Note,
                $"With the roll running {(build.RunsAlong ? "along the van" : "up the panels")} the cloth stretches more along the van than up the panels: round a curve of the wall it gives less, and is harder to draw down without folds. Try it on an offcut.",
                []));
        }
    }

    private static void AddEdges(List<Finding> findings, WrapPlan plan, WrapMake make)
    {
        WrapBuild build = plan.Build;
        List<string> raw = [];
        Add(build.Front, "front");
        Add(build.Rear, "rear");
        Add(build.Top, "upper");
        Add(build.Bottom, "lower");
        if (plan.Panels.Count > 1)
        {
            Add(build.AtJoints, "joint");
        }

        if (raw.Count > 0)
        {
            findings.Add(new Finding(
                "panels-wrap-edges-raw",
                Severity.Note,
                $"Edges that are not wrapped: {string.Join(", ", raw)}. Cover them with a trim, or seal ply, foam and cloth there.",
                [new("edges", raw.Count, string.Empty)]));
        }

        int corners = 0;
        foreach (WrappedPanel panel in plan.Panels)
        {
            corners += WrapPlan.CornerReaches(plan.Numbers, panel.Index, panel.Sides, panel.Upright).Count;
        }

        if (corners > 0)
        {
            double pleat = Grid.Snap(3 * make.Cloth);
            findings.Add(new Finding(
                "panels-wrap-corners",
                Severity.Note,
                $"{Print.Number(corners)} corners: a pleat lays three thicknesses of cloth, {Print.Mm(pleat)}, on the back; where that holds the panel off, cut the triangle off the cloth.",
                [new("corners", corners, string.Empty), new("pleat-thickness", pleat, "mm")],
                WrapDefaults.Cuts));
        }

        void Add(EdgeWrap wrap, string name)
        {
            if (wrap == EdgeWrap.Unwrapped)
            {
                raw.Add(name);
            }
        }
    }
}
