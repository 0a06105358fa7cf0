using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>Shortest paths over level joints, each step the shortest path over the upright joints of the course between them.</summary>
internal sealed class PanelSplitSearch(PanelSplitNumbers wall)
{
    private readonly List<(long Place, bool Must)> _upright = Places(wall, wall.Ribs, wall.Length, static box => (box.U0, box.U1));
    private readonly List<(long Place, bool Must)> _level = Places(wall, wall.Rails, wall.Girth, static box => (box.V0, box.V1));

    /// <summary>Joints of the best split: level ones from foot to top, and for each course between them the upright ones; null where none will do.</summary>
    internal (List<long> Levels, List<List<long>> Uprights)? Solve()
    {
        int last = _level.Count - 1;
        Cost?[] best = new Cost?[_level.Count];
        int[] from = new int[_level.Count];
        List<long>[] courses = new List<long>[_level.Count];
        best[0] = default(Cost);
        for (int j = 1; j <= last; j++)
        {
            if (!MayPart(_level[j].Place, wall.Girth, static box => (box.V0, box.V1), static _ => true))
            {
                continue;
            }

            for (int i = j - 1; i >= 0; i--)
            {
                if (best[i] is { } below && Course(_level[i].Place, _level[j].Place) is { } course && (best[j] is not { } known || below.Plus(course.Cost).IsLess(known)))
                {
                    (best[j], from[j], courses[j]) = (below.Plus(course.Cost), i, course.Joints);
                }

                if (_level[i].Must)
                {
                    break;
                }
            }
        }

        if (best[last] is null)
        {
            return null;
        }

        List<long> levels = [];
        List<List<long>> uprights = [];
        for (int j = last; j > 0; j = from[j])
        {
            levels.Insert(0, _level[j].Place);
            uprights.Insert(0, courses[j]);
        }

        levels.Insert(0, 0);
        return (levels, uprights);
    }

    private (Cost Cost, List<long> Joints)? Course(long v0, long v1)
    {
        int last = _upright.Count - 1;
        Cost?[] best = new Cost?[_upright.Count];
        int[] from = new int[_upright.Count];
        best[0] = default(Cost);
        for (int j = 1; j <= last; j++)
        {
            if (!MayPart(_upright[j].Place, wall.Length, static box => (box.U0, box.U1), box => box.V0 < v1 && box.V1 > v0))
            {
                continue;
            }

            for (int i = j - 1; i >= 0; i--)
            {
                if (best[i] is { } before && PanelCost(wall.Between(_upright[i].Place, _upright[j].Place, v0, v1)) is { } panel && (best[j] is not { } known || before.Plus(panel).IsLess(known)))
                {
                    (best[j], from[j]) = (before.Plus(panel), i);
                }

                if (_upright[i].Must)
                {
                    break;
                }
            }
        }

        if (best[last] is not { } least)
        {
            return null;
        }

        List<long> joints = [];
        for (int j = last; j > 0; j = from[j])
        {
            joints.Insert(0, _upright[j].Place);
        }

        joints.Insert(0, 0);
        return (least, joints);
    }

    /// <summary>What a panel costs: nothing where all of it lies in openings; null where it cannot be.</summary>
    private Cost? PanelCost(PanelBox panel)
    {
        if (panel.IsEmpty)
        {
            return null;
        }

        double net = wall.NetArea(panel);
        if (net == 0)
        {
            return default(Cost);
        }

        // Squares of nanometres need 30 digits over a whole wall: decimal holds 28, so whole tenths of a micrometre are squared.
        decimal width = (panel.U1 - panel.U0) / 100, height = (panel.V1 - panel.V0) / 100;
        return wall.IsPanel(panel, net) ? new Cost(1, (width * width) + (height * height)) : null;
    }

    /// <summary>Whether a joint keeps off the edges of openings that it passes, or runs along them. The ends of the wall always part.</summary>
    private bool MayPart(long place, long end, Func<PanelBox, (long From, long To)> range, Func<PanelBox, bool> passes)
    {
        if (place == end)
        {
            return true;
        }

        foreach (PanelBox opening in wall.Openings)
        {
            (long from, long to) = range(opening);
            if (passes(opening) && (IsNear(from) || IsNear(to)))
            {
                return false;
            }
        }

        return true;

        bool IsNear(long edge) => edge != place && Math.Abs(edge - place) < wall.Corner;
    }

    /// <summary>Where joints may lie, both ends of the wall included: the middle of each metal wide enough, and edges of openings within its reach.</summary>
    private static List<(long Place, bool Must)> Places(PanelSplitNumbers wall, PanelLine[] lines, long end, Func<PanelBox, (long From, long To)> range)
    {
        SortedDictionary<long, bool> places = new() { [0] = true, [end] = true };
        foreach (PanelLine line in lines)
        {
            long slack = wall.Slack(line);
            if (slack < 0 && !line.MustSplit)
            {
                continue;
            }

            Add(line.Position, line.MustSplit);
            foreach (PanelBox opening in wall.Openings)
            {
                (long from, long to) = range(opening);
                if (!line.MustSplit && Math.Abs(from - line.Position) <= slack)
                {
                    Add(from, must: false);
                }

                if (!line.MustSplit && Math.Abs(to - line.Position) <= slack)
                {
                    Add(to, must: false);
                }
            }
        }

        List<(long, bool)> sorted = [];
        foreach (KeyValuePair<long, bool> place in places)
        {
            sorted.Add((place.Key, place.Value));
        }

        return sorted;

        void Add(long place, bool must)
        {
            if (place > 0 && place < end)
            {
                places[place] = must || (places.TryGetValue(place, out bool before) && before);
            }
        }
    }

    /// <summary>Panels, then the sum of their squared sizes.</summary>
    private readonly struct Cost(int panels, decimal squares)
    {
        private int Panels { get; } = panels;

        private decimal Squares { get; } = squares;

        internal Cost Plus(Cost other) => new(Panels + other.Panels, Squares + other.Squares);

        internal bool IsLess(Cost other) => Panels != other.Panels ? Panels < other.Panels : Squares < other.Squares;
    }
}
