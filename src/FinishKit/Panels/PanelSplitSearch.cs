using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>A split: level joints from foot to top, and for each course between them the upright ones, ends of the wall included.</summary>
internal sealed record PanelSplitFound(int Panels, List<long> Levels, List<List<long>> Uprights);

/// <summary>What a search came to: the best split, whether no other has fewer panels, and whether its effort ended before it did.</summary>
internal readonly record struct PanelSplitAnswer(PanelSplitFound? Split, bool Proven, bool IsCutShort);

/// <summary>Shortest paths over level joints, each step the shortest path over the upright joints of the course between them.</summary>
/// <remarks>
/// First over the places of rows of panels as large as can be, then over plain places, then over all: where the effort ends, the best of
/// what was gone through stands. Places are finite though metal is not: in any split every joint can be pushed to the front or down, one after the other, until it
/// stands at an end of what its metal and the openings leave, where an opening just covers the panel behind it, at the least size from
/// the joint before or at a sheet's size from the joint after; no panel is added by that. So those places suffice.
/// </remarks>
internal sealed class PanelSplitSearch
{
    /// <summary>Places beyond which no more are tried. Walls as vans have them need a tenth.</summary>
    private const int MostUprights = 150;
    private const int MostLevels = 60;

    private readonly PanelSplitNumbers _wall;
    private readonly CuttingEffort _effort;
    private readonly long _until;
    private readonly List<PanelPlace> _upright, _level;
    private readonly bool[] _mayLevel;
    private readonly long[] _edges;
    private readonly Dictionary<(int Foot, int Top, long Width), CourseFound?> _known = [];

    private PanelSplitSearch(PanelSplitNumbers wall, PlaceChoice choice, CuttingEffort effort, long until)
    {
        (_wall, _effort, _until) = (wall, effort, until);
        List<PanelSpan> u = [], v = [];
        SortedSet<long> edges = [];
        foreach (PanelBox box in wall.Openings)
        {
            u.Add(new PanelSpan(box.U0, box.U1));
            v.Add(new PanelSpan(box.V0, box.V1));
            edges.Add(box.V0);
            edges.Add(box.V1);
        }

        _edges = [.. edges];
        bool isWhole = true;
        _upright = Places(wall, wall.Ribs, wall.Length, u, wall.Widths(), choice, MostUprights, isShort: true, ref isWhole);
        _level = Places(wall, wall.Rails, wall.Girth, v, wall.Heights(), choice, MostLevels, isShort: false, ref isWhole);
        IsWhole = isWhole;
        _mayLevel = new bool[_level.Count];
        for (int i = 0; i < _level.Count; i++)
        {
            _mayLevel[i] = MayPart(_level[i], v);
        }
    }

    /// <summary>Which places of joints are taken.</summary>
    private enum PlaceChoice
    {
        /// <summary>Those of rows of panels as large as can be, and of even ones: few, to have something in hand.</summary>
        Rows,

        /// <summary>Middles of metal and edges of openings.</summary>
        Plain,

        /// <summary>Both, and all others that can spare a panel.</summary>
        All,
    }

    /// <summary>Whether all places that can matter were taken.</summary>
    private bool IsWhole { get; }

    /// <summary>Whether the effort ended before the search did.</summary>
    private bool IsCutShort { get; set; }

    /// <summary>The best split, null where none will do, and whether it is proven that no other has fewer panels.</summary>
    /// <param name="wall">The wall.</param>
    /// <param name="effort">Counts the steps.</param>
    /// <param name="until">How many may be counted when this ends.</param>
    /// <param name="anyWillDo">Whether the first split found is enough.</param>
    internal static PanelSplitAnswer Solve(PanelSplitNumbers wall, CuttingEffort effort, long until, bool anyWillDo = false)
    {
        double bound = PanelSplit.Bound(wall, 0, default(Silent));
        PanelSplitFound? best = null;
        foreach (PlaceChoice choice in new[] { PlaceChoice.Rows, PlaceChoice.Plain, PlaceChoice.All })
        {
            PanelSplitSearch search = new(wall, choice, effort, until);
            PanelSplitFound? split = search.Solve();
            if (search.IsCutShort)
            {
                return new PanelSplitAnswer(best, best is not null && best.Panels <= bound, true);
            }

            // Of as many panels those of plain places are better; those of all places are the best there are.
            best = choice == PlaceChoice.All || (split is not null && !(best?.Panels < split.Panels)) ? split : best;
            bool isLeast = split is not null && split.Panels <= bound;
            if ((isLeast && choice != PlaceChoice.Rows) || (anyWillDo && best is not null))
            {
                return new PanelSplitAnswer(best, isLeast, false);
            }

            if (choice == PlaceChoice.All && search.IsWhole && wall.HasNoThinPost())
            {
                return search.Prove(best);
            }
        }

        return new PanelSplitAnswer(best, false, false);
    }

    /// <summary>Where a mass bounds panels, other places may matter: what holds without that bound holds with it.</summary>
    private PanelSplitAnswer Prove(PanelSplitFound? split)
    {
        if (double.IsNaN(_wall.MostMass))
        {
            return new PanelSplitAnswer(split, true, false);
        }

        PanelSplitSearch search = new(_wall with { MostMass = double.NaN }, PlaceChoice.All, _effort, _until);
        PanelSplitFound? light = search.Solve();
        return new PanelSplitAnswer(split, !search.IsCutShort && (light is null || light.Panels == split?.Panels), search.IsCutShort);
    }

    /// <summary>Null where none will do, or where the effort ends.</summary>
    private PanelSplitFound? Solve()
    {
        int last = _level.Count - 1;
        Cost?[] best = new Cost?[_level.Count];
        int[] from = new int[_level.Count];
        List<long>[] courses = new List<long>[_level.Count];
        best[0] = default(Cost);
        for (int j = 1; j <= last; j++)
        {
            int first = j - 1;
            while (first > 0 && !_level[first].Must)
            {
                first--;
            }

            // Low ones first: what they reach shows that many others need not be tried.
            for (int i = first; i < j && _mayLevel[j]; i++)
            {
                if (IsSpent())
                {
                    return null;
                }

                _effort.Spend(1);
                if (best[i] is { } below && !(best[j] is { } reached && below.Panels > reached.Panels) && Course(_level[i].At, _level[j].At) is { } course)
                {
                    Cost sum = below.Plus(course.Cost).Plus(new Cost(0, _level[j].IsPlain ? 0 : 1, 0));
                    if (best[j] is not { } known || sum.IsLess(known))
                    {
                        (best[j], from[j], courses[j]) = (sum, i, course.Joints);
                    }
                }
            }
        }

        if (best[last] is not { } least)
        {
            return null;
        }

        List<long> levels = [];
        List<List<long>> uprights = [];
        for (int j = last; j > 0; j = from[j])
        {
            levels.Insert(0, _level[j].At);
            uprights.Insert(0, courses[j]);
        }

        levels.Insert(0, 0);
        return new PanelSplitFound(least.Panels, levels, uprights);
    }

    /// <summary>The best upright joints of a course. Without a mass to keep, they depend on its height only through what fits and what openings it meets: those are known after the first.</summary>
    private CourseFound? Course(long v0, long v1)
    {
        PanelBox all = _wall.Between(0, _wall.Length, v0, v1);
        long height = all.V1 - all.V0;
        if (height <= 0)
        {
            return null;
        }

        long width = height >= _wall.Least || height == _wall.Girth ? _wall.WidthFor(height) : -1;

        CourseFound? found;
        if (double.IsNaN(_wall.MostMass))
        {
            // Joints are held off openings by their middles, panels are cut by openings to their edges.
            (int, int, long) key = ((Rank(v0, false) * 1000) + Rank(all.V0, false), (Rank(v1, true) * 1000) + Rank(all.V1, true), width);
            if (!_known.TryGetValue(key, out found))
            {
                found = Joints(v0, v1, width);

                // Cut short it is no answer, but then there is none of this search.
                _known.Add(key, found);
            }
        }
        else
        {
            found = Joints(v0, v1, width);
        }

        if (found is not { } course)
        {
            return null;
        }

        return course with { Cost = course.Cost.Plus(new Cost(0, 0, course.Cost.Panels * Square(height))) };
    }

    private bool IsSpent() => IsCutShort |= _effort.Used >= _until;

    /// <summary>How many edges of openings lie below, or at.</summary>
    private int Rank(long v, bool isTop)
    {
        int rank = 0;
        while (rank < _edges.Length && (isTop ? _edges[rank] < v : _edges[rank] <= v))
        {
            rank++;
        }

        return rank;
    }

    private CourseFound? Joints(long v0, long v1, long width)
    {
        List<PanelSpan> passed = [];
        List<PanelBox> met = [];
        PanelBox all = _wall.Between(0, _wall.Length, v0, v1);
        foreach (PanelBox box in _wall.Openings)
        {
            if (box.V0 < v1 && box.V1 > v0)
            {
                passed.Add(new PanelSpan(box.U0, box.U1));
                met.Add(box);
            }
        }

        int count = _upright.Count, last = count - 1;
        double heaviest = _wall.HeaviestArea();
        bool isWeighed = !double.IsPositiveInfinity(heaviest);

        // Of each place: where the panel before it ends and the one behind it begins, whether those lie in openings, and the net area up to there.
        long[] ends = new long[count], begins = new long[count];
        bool[] endsOpen = new bool[count], beginsOpen = new bool[count];
        double[] areaTo = new double[count], areaFrom = new double[count];
        for (int i = 0; i < count; i++)
        {
            ends[i] = _wall.Between(0, _upright[i].At, v0, v1).U1;
            begins[i] = _wall.Between(_upright[i].At, _wall.Length, v0, v1).U0;
            endsOpen[i] = IsIn(met, all, ends[i] - 1);
            beginsOpen[i] = IsIn(met, all, begins[i]);
            (areaTo[i], areaFrom[i]) = isWeighed ? (AreaTo(met, all, ends[i]), AreaTo(met, all, begins[i])) : (0, 0);
        }

        Cost[] best = new Cost[count];
        bool[] isReached = new bool[count];
        int[] from = new int[count];
        isReached[0] = true;
        _effort.Spend(count * (1 + met.Count));
        for (int j = 1; j <= last; j++)
        {
            if (IsSpent())
            {
                return null;
            }

            if (!MayPart(_upright[j], passed))
            {
                continue;
            }

            int moved = _upright[j].IsPlain ? 0 : 1, steps = 0;
            for (int i = j - 1; i >= 0; i--)
            {
                steps++;
                long wide = ends[j] - begins[i];
                bool isTooLarge = wide > width || (isWeighed && IsHeavy(areaTo[j] - areaFrom[i], begins[i], ends[j]));
                if (isReached[i] && wide > 0 && !(isReached[j] && best[i].Panels > best[j].Panels))
                {
                    bool isOpen = beginsOpen[i] && endsOpen[j] && _wall.NetArea(all with { U0 = begins[i], U1 = ends[j] }) == 0;
                    steps += beginsOpen[i] && endsOpen[j] ? _wall.Openings.Length : 0;
                    if (isOpen || (!isTooLarge && (wide >= _wall.Least || wide == _wall.Length)))
                    {
                        Cost sum = best[i].Plus(isOpen ? new Cost(0, moved, 0) : new Cost(1, moved, Square(wide)));
                        if (!isReached[j] || sum.IsLess(best[j]))
                        {
                            (best[j], from[j], isReached[j]) = (sum, i, true);
                        }
                    }
                }

                // Further to the front panels are only larger; what lies in openings may still be.
                if (_upright[i].Must || (isTooLarge && !endsOpen[j]))
                {
                    break;
                }
            }

            _effort.Spend(steps);
        }

        if (!isReached[last])
        {
            return null;
        }

        List<long> joints = [];
        for (int j = last; j > 0; j = from[j])
        {
            joints.Insert(0, _upright[j].At);
        }

        joints.Insert(0, 0);
        return new CourseFound(best[last], joints);

        // Differences of sums are off by rounding: near the limit the panel itself is asked.
        bool IsHeavy(double area, long u0, long u1) => (Math.Abs(area - heaviest) < 0.01 ? _wall.NetArea(all with { U0 = u0, U1 = u1 }) : area) > heaviest;
    }

    /// <summary>In square micrometres: over the largest wall their sum stays under 1e18.</summary>
    private static long Square(long nanometres) => nanometres / 1000 * (nanometres / 1000);

    /// <summary>Net area of a course from the wall's front.</summary>
    private static double AreaTo(List<PanelBox> met, PanelBox course, long u)
    {
        PanelBox part = course with { U1 = u };
        double area = part.Area;
        foreach (PanelBox opening in met)
        {
            area -= opening.Cut(part).Area;
        }

        return area;
    }

    /// <summary>Whether the nanometre behind a place lies in an opening at the foot of a course: all of a panel that lies in openings does.</summary>
    private static bool IsIn(List<PanelBox> met, PanelBox course, long u)
    {
        foreach (PanelBox opening in met)
        {
            if (opening.U0 <= u && opening.U1 > u && opening.V0 <= course.V0 && opening.V1 > course.V0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a joint keeps off the edges of openings that it passes, or runs along them. Ends of the wall and lines that must part always do.</summary>
    private bool MayPart(PanelPlace place, List<PanelSpan> passed)
    {
        foreach (PanelSpan opening in passed)
        {
            if (!place.Must && (IsNear(opening.From, place.At, _wall) || IsNear(opening.To, place.At, _wall)))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsNear(long edge, long at, PanelSplitNumbers wall) => edge != at && Math.Abs(edge - at) < wall.Corner;

    /// <summary>Where joints may lie, both ends of the wall included. The plain ones: the middle of each metal wide enough, and edges of openings within its reach. With room for more, all that can spare a panel; those of rows of panels as large as can be before the others.</summary>
    private static List<PanelPlace> Places(PanelSplitNumbers wall, PanelLine[] lines, long end, List<PanelSpan> openings, long[] sizes, PlaceChoice choice, int most, bool isShort, ref bool isWhole)
    {
        SortedDictionary<long, PanelPlace> places = new() { [0] = new(0, true, true), [end] = new(end, true, true) };
        List<PanelSpan> metal = [];
        HashSet<long> rows = [];
        bool isOver = false;
        foreach (PanelLine line in lines)
        {
            long slack = wall.Slack(line);
            if (line.MustSplit)
            {
                Add(line.Position, isPlain: true, must: true);
            }
            else if (slack >= 0)
            {
                metal.Add(new PanelSpan(line.Position - slack, line.Position + slack));
            }
        }

        long before = wall.Reveal / 2, after = wall.Reveal - before;
        if (choice != PlaceChoice.Plain)
        {
            AddRows();
            most += rows.Count;
        }

        if (choice == PlaceChoice.Rows)
        {
            return [.. places.Values];
        }

        foreach (PanelLine line in lines)
        {
            if (wall.Slack(line) >= 0)
            {
                Add(line.Position, isPlain: true);
            }
        }

        foreach (PanelSpan opening in openings)
        {
            AddOnMetal(opening.From, isPlain: true);
            AddOnMetal(opening.To, isPlain: true);
        }

        if (choice == PlaceChoice.Plain)
        {
            return [.. places.Values];
        }

        foreach (PanelSpan on in metal)
        {
            Add(on.From, isPlain: false);
            Add(on.To, isPlain: false);
        }

        foreach (PanelSpan opening in openings)
        {
            foreach (long edge in new[] { opening.From, opening.To })
            {
                AddOnMetal(edge - wall.Corner, isPlain: false);
                AddOnMetal(edge + wall.Corner, isPlain: false);
                AddOnMetal(edge - after, isPlain: false);
                AddOnMetal(edge + before, isPlain: false);
            }
        }

        // From each of them a sheet's size, again and again, toward the front and toward the rear; and the least size, which is wanted
        // twice running only where two such panels are no single one, and there for level joints alone, as courses have joints of their own.
        // Those from the ends and from where panels must part come first, if all cannot be tried.
        List<long> starts = [], fixedStarts = [];
        foreach (PanelPlace place in places.Values)
        {
            // What is there for the rows alone matters to no other.
            if (!rows.Contains(place.At))
            {
                (place.Must ? fixedStarts : starts).Add(place.At);
            }
        }

        long least = Math.Max(wall.Least, 1), shortest = long.MaxValue;
        foreach (long size in sizes)
        {
            shortest = Math.Min(shortest, size);
        }

        int times = isShort && (2 * least) + wall.Reveal <= shortest ? 1 : int.MaxValue;
        foreach (List<long> of in new[] { fixedStarts, starts })
        {
            foreach (int way in new[] { 1, -1 })
            {
                Follow(of, way, sizes, int.MaxValue);
                Follow(of, way, least > 1 ? [least, 1] : [least], times);
            }
        }

        isWhole &= !isOver;
        return [.. places.Values];

        void Follow(List<long> of, int way, long[] steps, int count)
        {
            HashSet<long> seen = [.. of];
            List<long> front = of;
            for (; count > 0 && front.Count > 0 && !isOver; count--)
            {
                List<long> next = [];
                foreach (long at in front)
                {
                    foreach (long step in steps)
                    {
                        // At an end of the wall half a reveal is wanted, between joints a whole one; under the least size, what lies in an opening.
                        long to = at + (way * (step + (at == 0 ? before : at == end ? after : wall.Reveal)));
                        if (IsOnMetal(to) && (step >= least || IsOpen(at, to)) && seen.Add(to))
                        {
                            Add(to, isPlain: false);
                            next.Add(to);
                        }
                    }
                }

                front = next;
            }
        }

        // Rows of panels, each as large as the metal lets it be, and rows of even ones: from the front and from the rear, and where openings are about also such as keep off them all.
        void AddRows()
        {
            List<long> musts = [];
            foreach (PanelPlace place in places.Values)
            {
                if (place.Must)
                {
                    musts.Add(place.At);
                }
            }

            List<long> stops = [];
            foreach (PanelSpan on in metal)
            {
                stops.Add(on.From);
                stops.Add(on.To);
            }

            foreach (PanelSpan opening in openings)
            {
                stops.AddRange([opening.From, opening.To, opening.From - wall.Corner, opening.From + wall.Corner, opening.To - wall.Corner, opening.To + wall.Corner]);
            }

            stops.RemoveAll(stop => !IsOnMetal(stop));

            // A square as heavy as can be handled is no worse a guess than another: the other side is not known here.
            List<long> greatest = [.. sizes];
            if (Math.Sqrt(wall.HeaviestArea()) is double side && side * 1e6 < end)
            {
                greatest.Insert(0, Grid.Nanometres(Math.Floor(side)));
            }

            foreach (bool keepsOff in new[] { true, false })
            {
                List<long> open = stops.FindAll(stop => !keepsOff || IsOff(stop));
                foreach (long size in greatest)
                {
                    long count = (end + wall.Reveal + size + wall.Reveal - 1) / (size + wall.Reveal), even = (end - ((count - 1) * wall.Reveal) + count - 1) / count;
                    foreach (long wide in new[] { size, even })
                    {
                        AddRow(wide, 1, keepsOff, open, musts);
                        AddRow(wide, -1, keepsOff, open, musts);
                    }
                }
            }
        }

        void AddRow(long size, int way, bool keepsOff, List<long> stops, List<long> musts)
        {
            List<long> row = [];
            long start = way > 0 ? 0 : end, goal = end - start, at = start;
            while (size > 0)
            {
                long reach = at + (way * (size + (at == 0 ? before : at == end ? after : wall.Reveal))), next = at;
                if (Math.Abs(goal - at) - (at == start ? 0 : way > 0 ? after : before) <= size)
                {
                    reach = goal;
                }

                foreach (long must in musts)
                {
                    reach = way * (must - at) > 0 && way * (reach - must) > 0 ? must : reach;
                }

                if (reach == goal)
                {
                    break;
                }

                if (musts.Contains(reach) || (IsOnMetal(reach) && (!keepsOff || IsOff(reach))))
                {
                    next = reach;
                }
                else
                {
                    foreach (long stop in stops)
                    {
                        next = way * (stop - next) > 0 && way * (reach - stop) >= 0 ? stop : next;
                    }
                }

                if (next == at || row.Count == most)
                {
                    return;
                }

                row.Add(next);
                at = next;
            }

            row.RemoveAll(places.ContainsKey);
            if (rows.Count + row.Count <= most)
            {
                foreach (long place in row)
                {
                    rows.Add(place);
                    places.Add(place, new PanelPlace(place, false, false));
                }
            }
        }

        bool IsOff(long at) => openings.TrueForAll(opening => !IsNear(opening.From, at, wall) && !IsNear(opening.To, at, wall));

        bool IsOpen(long one, long other) => openings.Exists(opening => opening.From <= Math.Min(one, other) + after && Math.Max(one, other) - before <= opening.To);

        bool IsOnMetal(long at) => at > 0 && at < end && metal.Exists(on => on.From <= at && at <= on.To);

        void AddOnMetal(long at, bool isPlain)
        {
            if (IsOnMetal(at))
            {
                Add(at, isPlain);
            }
        }

        void Add(long at, bool isPlain, bool must = false)
        {
            if (!isPlain && places.Count > most && !places.ContainsKey(at))
            {
                isOver = true;
            }
            else if (at > 0 && at < end)
            {
                rows.Remove(at);
                places[at] = places.TryGetValue(at, out PanelPlace known) ? new(at, isPlain || known.IsPlain, must || known.Must) : new(at, isPlain, must);
            }
        }
    }

    /// <summary>Where a joint may lie: whether at the middle of its metal or along an opening, and whether panels must part there.</summary>
    private readonly record struct PanelPlace(long At, bool IsPlain, bool Must);

    private readonly record struct PanelSpan(long From, long To);

    private readonly record struct CourseFound(Cost Cost, List<long> Joints);

    /// <summary>Panels, then joints off the middle of their metal, then the sum of squared sizes.</summary>
    private readonly struct Cost(int panels, int moved, long squares)
    {
        internal int Panels { get; } = panels;

        private int Moved { get; } = moved;

        private long Squares { get; } = squares;

        internal Cost Plus(Cost other) => new(Panels + other.Panels, Moved + other.Moved, Squares + other.Squares);

        internal bool IsLess(Cost other) => Panels != other.Panels ? Panels < other.Panels : Moved != other.Moved ? Moved < other.Moved : Squares < other.Squares;
    }
}
