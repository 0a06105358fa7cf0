using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>What a person should know about a wall split into panels.</summary>
internal static class PanelSplitFindings
{
    internal static IReadOnlyList<Finding> Of(PanelSplitPlan plan, PanelSplitNumbers wall, bool isCutShort, CuttingEffort effort)
    {
        List<Finding> findings = [];
        if (!plan.IsSplit)
        {
            findings.Add(None(plan, wall, isCutShort, effort));
        }
        else if (!plan.Proven)
        {
            findings.Add(new Finding(
                "panels-split-not-proven",
                Severity.Note,
                $"{Print.Number(plan.Panels.Count)} panels are the fewest found; that no split has fewer is not proven, the area asks for {Print.Number(plan.LeastByArea)} at least.{(isCutShort ? " " + Spent(wall) + " may find fewer." : string.Empty)}",
                [new("panels", plan.Panels.Count, string.Empty), new("least-by-area", plan.LeastByArea, string.Empty)],
                PanelSplitDefaults.Split));
        }

        int apart = 0;
        foreach (WallPanel panel in plan.Panels)
        {
            apart += panel.FallsApart ? 1 : 0;
        }

        if (apart > 0)
        {
            findings.Add(new Finding("panels-split-falls-apart", Severity.Caution, $"An opening crosses {Print.Number(apart)} of the panels from edge to edge: each is two pieces, or more, cut from one rectangle.", [new("panels", apart, string.Empty)], PanelSplitDefaults.Split));
        }

        AddTongues(findings, plan, wall);
        AddForced(findings, wall);
        int narrow = 0, forced = 0;
        Count(wall, wall.Ribs, ref narrow, ref forced);
        Count(wall, wall.Rails, ref narrow, ref forced);
        double least = ((2 * wall.Landing) + wall.Reveal) / 1e6;
        if (forced > 0)
        {
            findings.Add(new Finding("panels-split-forced-off-metal", Severity.Caution, $"Panels must part on {Print.Number(forced)} lines whose metal is under the {Print.Mm(least)} that two panels need: put metal or ply behind the joint.", [new("lines", forced, string.Empty), new("metal-needed", least, "mm")], PanelSplitDefaults.LandingSource));
        }

        if (narrow > 0)
        {
            findings.Add(new Finding("panels-split-narrow-metal", Severity.Note, $"{Print.Number(narrow)} lines have less than the {Print.Mm(least)} of metal that two panels need and take no joint.", [new("lines", narrow, string.Empty), new("metal-needed", least, "mm")], PanelSplitDefaults.LandingSource));
        }

        findings.Add(new Finding("panels-split-look-behind", Severity.Note, "The split knows metal and openings only: wires, pipes, airbags, belt anchorages and what must stay reachable are to be looked at apart, before panels are cut and fixed.", []));
        return Finding.GravestFirst(findings);
    }

    internal static IReadOnlyList<DefaultUsed> Defaults(PanelWall wall)
    {
        List<DefaultUsed> used = [];
        Add(wall.Reveal is null, new("reveal", PanelSplitDefaults.Reveal, "mm"), PanelSplitDefaults.RevealSource);
        Add(wall.Landing is null, new("landing", PanelSplitDefaults.Landing, "mm"), PanelSplitDefaults.LandingSource);
        Add(wall.CornerDistance is null, new("corner-distance", PanelSplitDefaults.CornerDistance, "mm"), PanelSplitDefaults.CornerSource);
        Add(wall.LeastPanel is null, new("least-panel", PanelSplitDefaults.LeastPanel, "mm"), PanelSplitDefaults.LeastSource);
        return [.. used];

        void Add(bool taken, Figure figure, Source source)
        {
            if (taken)
            {
                used.Add(new DefaultUsed(figure, source));
            }
        }
    }

    private static string Spent(PanelSplitNumbers wall) => $"The search ended with the {Print.Number(wall.Effort)} steps of its effort: more";

    /// <summary>Which of the limits alone stands in the way: each is lifted by itself, with an even share of the effort left.</summary>
    private static Finding None(PanelSplitPlan plan, PanelSplitNumbers wall, bool isCutShort, CuttingEffort effort)
    {
        int limits = 5;
        bool isUnsure = isCutShort;
        List<Figure> values = [new("length", wall.Length / 1e6, "mm"), new("girth", wall.Girth / 1e6, "mm"), new("sheet-length", wall.SheetLength / 1e6, "mm"), new("sheet-width", wall.SheetWidth / 1e6, "mm")];
        List<string> lifts = [];
        Lift(!double.IsNaN(wall.MostMass), wall with { MostMass = double.NaN }, new("most-mass", wall.MostMass, "kg"), $"the greatest mass of {Print.Number(wall.MostMass)} kg");
        Lift(wall.Corner > 0, wall with { Corner = 0 }, new("corner-distance", wall.Corner / 1e6, "mm"), $"the distance of {Print.Mm(wall.Corner / 1e6)} that joints keep off openings");
        Lift(wall.Most < Math.Max(wall.Length, wall.Girth), wall with { Most = Math.Max(wall.Length, wall.Girth) }, new("most-length", wall.Most / 1e6, "mm"), $"the greatest size of {Print.Mm(wall.Most / 1e6)} that can be handled");
        Lift(wall.Least > 0, wall with { Least = 0 }, new("least-panel", wall.Least / 1e6, "mm"), $"the least size of {Print.Mm(wall.Least / 1e6)}");
        Lift(wall.Grain != PanelGrainDirection.Either, wall with { Grain = PanelGrainDirection.Either }, new("grain", (int)wall.Grain, string.Empty), "the grain direction");
        string tried = plan.Proven ? "No joints on the metal given split" : "No joints that were tried split";
        string spent = isCutShort ? " " + Spent(wall) + " may find one." : string.Empty;
        string help = lifts.Count > 0 ? $"What stands in the way is {string.Join(", or ", lifts)}: without that alone it can be split."
            : isUnsure ? "Which limit stands in the way was not found within the effort: larger sheets, or a strip of metal or ply fixed across between ribs for a joint."
            : "No single limit stands in the way: larger sheets, or a strip of metal or ply fixed across between ribs for a joint.";
        return new Finding(
            "panels-split-none",
            Severity.Problem,
            $"{tried} the wall of {Print.Number(wall.Length / 1e6)} by {Print.Mm(wall.Girth / 1e6)} into panels that fit a sheet of {Print.Number(wall.SheetLength / 1e6)} by {Print.Mm(wall.SheetWidth / 1e6)} in the grain direction wanted, within the sizes and mass that can be handled.{spent} {help}",
            values,
            PanelSplitDefaults.Split);

        void Lift(bool isSet, PanelSplitNumbers without, Figure limit, string words)
        {
            long until = effort.Used + (effort.Left / limits--);
            if (!isSet)
            {
                return;
            }

            PanelSplitAnswer answer = PanelSplitSearch.Solve(without, effort, until, anyWillDo: true);
            isUnsure |= answer.IsCutShort;
            if (answer.Split is not null)
            {
                values.Add(limit);
                lifts.Add(words);
            }
        }
    }

    /// <summary>Ply narrower than joints keep off openings: between an opening and its panel's edge, counted to the joint's middle as joints are, and between openings.</summary>
    private static void AddTongues(List<Finding> findings, PanelSplitPlan plan, PanelSplitNumbers wall)
    {
        int tongues = 0;
        long narrowest = long.MaxValue, before = wall.Reveal / 2, after = wall.Reveal - before;
        foreach (WallPanel panel in plan.Panels)
        {
            PanelBox box = panel.Box;
            for (int i = 0; i < panel.CutBoxes.Length; i++)
            {
                PanelBox cut = panel.CutBoxes[i];
                Look(cut.U0 - box.U0, box.U0 == 0 ? 0 : after);
                Look(box.U1 - cut.U1, box.U1 == wall.Length ? 0 : before);
                Look(cut.V0 - box.V0, box.V0 == 0 ? 0 : after);
                Look(box.V1 - cut.V1, box.V1 == wall.Girth ? 0 : before);
                for (int j = 0; j < i; j++)
                {
                    PanelBox both = cut.Cut(panel.CutBoxes[j]);
                    if (both.V1 > both.V0)
                    {
                        Look(both.U0 - both.U1, 0);
                    }
                    else if (both.U1 > both.U0)
                    {
                        Look(both.V0 - both.V1, 0);
                    }
                }
            }
        }

        if (tongues > 0)
        {
            findings.Add(new Finding(
                "panels-split-tongue",
                Severity.Caution,
                $"{Print.Number(tongues)} tongues of ply beside openings are narrower than {Print.Mm(wall.Corner / 1e6)}, the narrowest {Print.Mm(narrowest / 1e6)}: such breaks in sawing or fixing. Cut it away, or let the opening's trim and its frame hold it.",
                [new("tongues", tongues, string.Empty), new("least-width", narrowest / 1e6, "mm"), new("width-wanted", wall.Corner / 1e6, "mm")],
                PanelSplitDefaults.CornerSource));
        }

        void Look(long width, long toJoint)
        {
            if (width > 0 && width + toJoint < wall.Corner)
            {
                tongues++;
                narrowest = Math.Min(narrowest, width);
            }
        }
    }

    /// <summary>Lines where panels must part nearer to an opening's edge than joints keep.</summary>
    private static void AddForced(List<Finding> findings, PanelSplitNumbers wall)
    {
        int lines = 0;
        long nearest = long.MaxValue;
        Look(wall.Ribs, wall.Length, static box => (box.U0, box.U1));
        Look(wall.Rails, wall.Girth, static box => (box.V0, box.V1));
        if (lines > 0)
        {
            findings.Add(new Finding(
                "panels-split-forced-by-opening",
                Severity.Caution,
                $"Panels must part on {Print.Number(lines)} lines nearer to an opening's edge than {Print.Mm(wall.Corner / 1e6)}, the nearest {Print.Mm(nearest / 1e6)}: the narrow ply beside it needs metal or ply behind it, or the opening's trim over it.",
                [new("lines", lines, string.Empty), new("least-distance", nearest / 1e6, "mm"), new("distance-wanted", wall.Corner / 1e6, "mm")],
                PanelSplitDefaults.CornerSource));
        }

        void Look(PanelLine[] all, long end, Func<PanelBox, (long From, long To)> range)
        {
            foreach (PanelLine line in all)
            {
                long near = long.MaxValue;
                foreach (PanelBox opening in wall.Openings)
                {
                    (long from, long to) = range(opening);
                    near = line.Position == from || line.Position == to ? near : Math.Min(near, Math.Min(Math.Abs(line.Position - from), Math.Abs(line.Position - to)));
                }

                if (line.MustSplit && line.Position > 0 && line.Position < end && near < wall.Corner)
                {
                    lines++;
                    nearest = Math.Min(nearest, near);
                }
            }
        }
    }

    private static void Count(PanelSplitNumbers wall, PanelLine[] lines, ref int narrow, ref int forced)
    {
        foreach (PanelLine line in lines)
        {
            if (wall.Slack(line) < 0)
            {
                narrow += line.MustSplit ? 0 : 1;
                forced += line.MustSplit ? 1 : 0;
            }
        }
    }
}
