using System.Collections.Generic;

namespace FinishKit;

/// <summary>What a person should know about a wall split into panels.</summary>
internal static class PanelSplitFindings
{
    internal static IReadOnlyList<Finding> Of(PanelSplitPlan plan, PanelSplitNumbers wall)
    {
        List<Finding> findings = [];
        if (!plan.IsSplit)
        {
            findings.Add(new Finding(
                "panels-split-none",
                Severity.Problem,
                $"No joints on the metal given split the wall of {Print.Number(wall.Length / 1e6)} by {Print.Mm(wall.Girth / 1e6)} into panels that fit a sheet of {Print.Number(wall.SheetLength / 1e6)} by {Print.Mm(wall.SheetWidth / 1e6)} in the grain direction wanted, within the sizes and mass that can be handled: larger sheets, the other grain, or a strip of metal or ply fixed across between ribs for a joint.",
                [new("length", wall.Length / 1e6, "mm"), new("girth", wall.Girth / 1e6, "mm"), new("sheet-length", wall.SheetLength / 1e6, "mm"), new("sheet-width", wall.SheetWidth / 1e6, "mm")],
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
