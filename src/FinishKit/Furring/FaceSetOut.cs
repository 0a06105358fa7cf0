using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>A strip's centre line from edge to edge: its place at t = 0 and at the far end, and its width.</summary>
internal readonly struct StripLine(double at0, double at1, double width, StripRole role)
{
    internal double At0 { get; } = at0;

    internal double At1 { get; } = at1;

    internal double Width { get; } = width;

    internal StripRole Role { get; } = role;
}

/// <summary>Sets out the strips of a face: s across the strips, t along them.</summary>
internal sealed class FaceSetOut
{
    private const double Least = Allowed.OneStep;

    private readonly FaceNumbers _face;
    private readonly BreakStrips _sides;
    private readonly List<StripLine> _lines = [];
    private readonly List<FurringPiece> _pieces = [];
    private readonly List<FaceNote> _notes = [];
    private readonly double[] _sill;
    private readonly double[] _head;
    private readonly List<(double From, double To)> _blocks = [];
    private readonly double[] _reach;
    private readonly List<double> _meets = [];
    private StripLine _front;
    private StripLine _rear;
    private readonly bool[] _isTaken = new bool[2];

    internal FaceSetOut(FaceNumbers face, BreakStrips sides)
    {
        _face = face;
        _sides = sides;
        _sill = new double[face.Openings.Length];
        _head = new double[face.Openings.Length];
        _reach = new double[face.Openings.Length];
        for (int i = 0; i < _reach.Length; i++)
        {
            _reach[i] = Math.Max(i == 0 ? 0 : _reach[i - 1], face.Openings[i].S1);
        }
    }

    internal FurringPlan Plan(FurringFace face)
    {
        AddEnds();
        AddJambs();
        AddJoints();
        if (_face.IsTurned)
        {
            AddBreakLines();
        }

        SortLines();
        StripLayout spacing = Space(face);
        foreach (PlacedStrip strip in spacing.Strips)
        {
            if (strip.Kind != StripKind.Fixed)
            {
                double at = Door.Millimetres(strip.Position);
                _lines.Add(new StripLine(at, at, _face.Width, StripRole.Between));
            }
        }

        _lines.Sort(static (one, other) => one.At0 != other.At0 ? one.At0.CompareTo(other.At0) : one.At1.CompareTo(other.At1));
        SizeTrimmers();
        int uprights = 0;
        for (int i = 0; i < _lines.Count; i++)
        {
            int before = _pieces.Count;
            AddUpright(_lines[i]);
            uprights += _pieces.Count > before ? 1 : 0;
        }

        AddTrimmers();
        if (!_face.IsTurned)
        {
            AddBreakStrips();
        }

        return new FurringPlan(face, _face, spacing, _pieces.ToArray(), _notes, uprights);
    }

    /// <summary>The first opening that may reach past a place; those before it end at or before it.</summary>
    private int FirstOpening(double past)
    {
        int low = 0, high = _reach.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = _reach[middle] < past ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    /// <summary>A leaning edge: its place at a height.</summary>
    private static double On(double at0, double at1, double share) => at0 == at1 ? at0 : at0 + ((at1 - at0) * share);

    private void AddEnds()
    {
        (double low0, double low1, double high0, double high1) = _face.IsTurned ? (0, 0, _face.S, _face.S) : (_face.Front0, _face.Front1, _face.Rear0, _face.Rear1);
        double lowInset = Inset(low0, low1), highInset = Inset(high0, high1);
        _lines.Add(new StripLine(Grid.Snap(low0 + lowInset), Grid.Snap(low1 + lowInset), _face.Width, StripRole.End));
        _lines.Add(new StripLine(Grid.Snap(high0 - highInset), Grid.Snap(high1 - highInset), _face.Width, StripRole.End));
        (_front, _rear) = (_lines[0], _lines[1]);
    }

    /// <summary>Half a strip square to the edge, measured along s.</summary>
    private double Inset(double at0, double at1)
    {
        double slope = (at1 - at0) / _face.T;
        return _face.Width / 2 * Math.Sqrt(1 + (slope * slope));
    }

    private void AddJambs()
    {
        foreach (FaceBox opening in _face.Openings)
        {
            AddJamb(opening, opening.S0, -1);
            AddJamb(opening, opening.S1, 1);
        }
    }

    /// <summary>The strip beside an opening. Where another opening or the edge leaves no room for two strips, one takes the whole gap.</summary>
    private void AddJamb(in FaceBox opening, double edge, int side)
    {
        int end = side < 0 ? 0 : 1;
        bool straight = _face.IsTurned || (side < 0 ? _face.Front0 == _face.Front1 : _face.Rear0 == _face.Rear1);
        double limit = _face.IsTurned ? (side < 0 ? 0 : _face.S) : side < 0 ? Math.Max(On(_face.Front0, _face.Front1, opening.T0 / _face.T), On(_face.Front0, _face.Front1, opening.T1 / _face.T))
            : Math.Min(On(_face.Rear0, _face.Rear1, opening.T0 / _face.T), On(_face.Rear0, _face.Rear1, opening.T1 / _face.T));
        bool atEdge = true;
        foreach (FaceBox other in _face.Openings)
        {
            double facing = side < 0 ? other.S1 : other.S0;
            if (other.T0 < opening.T1 && opening.T0 < other.T1 && (facing - edge) * side >= 0 && (limit - facing) * side >= 0)
            {
                limit = facing;
                atEdge = false;
            }
        }

        double gap = Grid.Snap((limit - edge) * side), width = _face.Width;
        if (gap >= 2 * width)
        {
            _lines.Add(Line(edge + (side * width / 2), width, StripRole.Jamb));
            return;
        }

        if (gap > 0)
        {
            _notes.Add(new FaceNote(FaceNoteKind.Gap, (edge + limit) / 2, (opening.T0 + opening.T1) / 2, gap));
        }

        if (atEdge && !straight)
        {
            _lines.Add(Line(edge + (side * width / 2), width, StripRole.Jamb));
        }
        else if (gap > 0)
        {
            if (atEdge)
            {
                // Of several openings near one edge the nearest decides; the others have their finding.
                if (!_isTaken[end] || gap < _lines[end].Width)
                {
                    _lines[end] = Line((edge + limit) / 2, gap, StripRole.End);
                    _isTaken[end] = true;
                }
            }
            else
            {
                _lines.Add(Line((edge + limit) / 2, gap, StripRole.Jamb));
            }
        }
    }

    private StripLine Line(double at, double width, StripRole role) => new(Grid.Snap(Math.Max(0, Math.Min(_face.S, at))), Grid.Snap(Math.Max(0, Math.Min(_face.S, at))), width, role);

    private void AddJoints()
    {
        bool doubled = _face.IsDoubled;
        foreach (double joint in _face.Joints)
        {
            if (doubled)
            {
                _lines.Add(Within(joint - (_face.Width / 2), _face.Width));
                _lines.Add(Within(joint + (_face.Width / 2), _face.Width));
            }
            else
            {
                _lines.Add(Within(joint, _face.JointWidth));
            }
        }
    }

    /// <summary>A joint strip does not stand over the edge of the face.</summary>
    private StripLine Within(double at, double width) => Line(Math.Max(width / 2, Math.Min(_face.S - (width / 2), at)), width, StripRole.Joint);

    /// <summary>Breaks and furniture lines that run the same way as the strips are fixed places for them.</summary>
    private void AddBreakLines()
    {
        double half = _face.Width / 2;
        foreach (double line in _face.Breaks)
        {
            if (_sides != BreakStrips.None)
            {
                _lines.Add(Line(line - half, _face.Width, StripRole.Break));
            }

            if (_sides is BreakStrips.BothSides or BreakStrips.EveryBreak)
            {
                _lines.Add(Line(line + half, _face.Width, StripRole.Break));
            }
        }

        foreach (FaceBox stop in _face.Stops)
        {
            if (stop.S1 + _face.Width < _face.S)
            {
                _lines.Add(Line(stop.S1 + half, _face.Width, StripRole.End));
            }
        }
    }

    /// <summary>From low to high; of two at one place the wider stays.</summary>
    private void SortLines()
    {
        _lines.Sort(static (one, other) => one.At0 != other.At0 ? one.At0.CompareTo(other.At0) : one.At1 != other.At1 ? one.At1.CompareTo(other.At1) : other.Width.CompareTo(one.Width));
        int kept = 0;
        for (int i = 0; i < _lines.Count; i++)
        {
            if (kept == 0 || _lines[i].At0 != _lines[kept - 1].At0 || _lines[i].At1 != _lines[kept - 1].At1)
            {
                _lines[kept++] = _lines[i];
            }
        }

        _lines.RemoveRange(kept, _lines.Count - kept);
    }

    private StripLayout Space(FurringFace face)
    {
        double widest = _face.Width;
        foreach (StripLine line in _lines)
        {
            widest = Math.Max(widest, line.Width);
        }

        // A chosen strip keeps clear of the widest of the fixed ones, unless the caller has said what is enough.
        _face.WidenLeastDistance(widest);
        Length[] fixedPositions = new Length[Math.Max(2, _lines.Count)];
        for (int i = 0; i < fixedPositions.Length; i++)
        {
            StripLine line = _lines[Math.Min(i, _lines.Count - 1)];

            // Of a leaning strip the place that is furthest from the others: bays hold at every height.
            fixedPositions[i] = Door.Millimetres(line.At0 + line.At1 < _face.S ? Math.Min(line.At0, line.At1) : Math.Max(line.At0, line.At1));
        }

        MemberNumbers[] members = _face.Along.All;
        RibLine[] ribs = new RibLine[members.Length];
        for (int i = 0; i < ribs.Length; i++)
        {
            ribs[i] = new RibLine(Door.Millimetres(members[i].Centre), Door.Millimetres(members[i].Half));
        }

        return StripSpacing.Space(new StripRun(Door.Millimetres(_face.S), fixedPositions, Door.Millimetres(_face.Bay))
        {
            Ribs = ribs,
            LeastDistance = Door.Millimetres(_face.LeastDistance),
            Preference = face.Preference,
        });
    }

    /// <summary>How much room there is for a trimmer on each side of every opening: a strip's width, or up to what is there already.</summary>
    private void SizeTrimmers()
    {
        for (int i = 0; i < _face.Openings.Length; i++)
        {
            _sill[i] = TrimmerWidth(i, -1);
            _head[i] = TrimmerWidth(i, 1);
        }
    }

    private double TrimmerWidth(int index, int side)
    {
        FaceBox opening = _face.Openings[index];
        double width = _face.Width, edge = side < 0 ? opening.T0 : opening.T1;
        double room = _face.IsTurned ? EndRoom(opening, side) : side < 0 ? edge : _face.T - edge;
        for (int i = FirstOpening(opening.S0); i < _face.Openings.Length && _face.Openings[i].S0 < opening.S1; i++)
        {
            FaceBox other = _face.Openings[i];
            double gap = side < 0 ? edge - other.T1 : other.T0 - edge;
            if (opening.S0 < other.S1 && gap >= 0 && gap < 2 * width)
            {
                room = Math.Min(room, gap / 2);
            }
        }

        foreach (FaceBox stop in _face.Stops)
        {
            if (stop.T0 < edge && edge < stop.T1 && stop.S0 <= opening.S0 && opening.S1 <= stop.S1)
            {
                return 0; // behind furniture all along
            }

            double gap = side < 0 ? edge - stop.T1 : stop.T0 - edge;
            if (stop.S0 < opening.S1 && opening.S0 < stop.S1 && gap > 0)
            {
                room = Math.Min(room, gap);
            }
        }

        if (!_face.IsTurned)
        {
            for (int i = 0; i < _face.Breaks.Length; i++)
            {
                double gap = side < 0 ? edge - _face.Breaks[i] : _face.Breaks[i] - edge;
                double near = side < 0 ? BreakAbove(i) : BreakBelow(i), beyond = side < 0 ? BreakBelow(i) : BreakAbove(i);
                if (gap > 0)
                {
                    // A strip along the break that would reach into the opening is interrupted by it; one that would not stays.
                    room = Math.Min(room, gap >= near ? gap - near : gap);
                }
                else if (gap == 0 && beyond > 0)
                {
                    room = 0; // the strip along the break is the trimmer
                }
            }
        }

        double sized = Grid.Snap(Math.Max(0, Math.Min(width, room)));
        if (sized > 0 && sized < width)
        {
            _notes.Add(new FaceNote(FaceNoteKind.Narrowed, (opening.S0 + opening.S1) / 2, edge, sized));
        }

        return sized;
    }

    private double EndRoom(in FaceBox opening, int side) => side < 0
        ? opening.T0 - Math.Max(On(_face.Front0, _face.Front1, opening.S0 / _face.S), On(_face.Front0, _face.Front1, opening.S1 / _face.S))
        : Math.Min(On(_face.Rear0, _face.Rear1, opening.S0 / _face.S), On(_face.Rear0, _face.Rear1, opening.S1 / _face.S)) - opening.T1;

    private void AddUpright(in StripLine line)
    {
        double half = HalfAcross(line), low = Math.Min(line.At0, line.At1) - half, high = Math.Max(line.At0, line.At1) + half;
        _blocks.Clear();
        _meets.Clear();
        for (int i = FirstOpening(low); i < _face.Openings.Length && _face.Openings[i].S0 < high; i++)
        {
            FaceBox opening = _face.Openings[i];

            // A leaning strip is held against an opening, its head and sill at their own height.
            double foot = On(line.At0, line.At1, (opening.T0 - _sill[i]) / _face.T), top = On(line.At0, line.At1, (opening.T1 + _head[i]) / _face.T);
            double at0 = Math.Min(foot, top) - half, at1 = Math.Max(foot, top) + half;
            if (at0 + Least / 2 < opening.S1 && opening.S0 + Least / 2 < at1)
            {
                _blocks.Add((opening.T0 - _sill[i], opening.T1 + _head[i]));
            }
        }

        foreach (FaceBox stop in _face.Stops)
        {
            if (stop.S0 + Least / 2 < high && low + Least / 2 < stop.S1)
            {
                _blocks.Add((stop.T0, stop.T1));
            }
        }

        if (!_face.IsTurned)
        {
            for (int i = 0; i < _face.Breaks.Length; i++)
            {
                _blocks.Add((_face.Breaks[i] - BreakBelow(i), _face.Breaks[i] + BreakAbove(i)));
            }
        }

        AddLeaning(line);
        double from = 0, to = _face.T, startSlope = 0, endSlope = 0;
        if (_face.IsTurned)
        {
            from = On(_face.Front0, _face.Front1, line.At0 / _face.S);
            to = On(_face.Rear0, _face.Rear1, line.At0 / _face.S);
            startSlope = (_face.Front1 - _face.Front0) / _face.S;
            endSlope = (_face.Rear1 - _face.Rear0) / _face.S;
        }

        _blocks.Sort(static (one, other) => one.From.CompareTo(other.From));
        double cursor = from;
        bool landed = false;
        foreach ((double start, double end) in _blocks)
        {
            if (Math.Min(start, to) - cursor > Least / 2)
            {
                AddPiece(line, cursor, Math.Min(start, to), landed, true, cursor == from ? startSlope : 0, start < to ? 0 : endSlope);
            }

            if (end >= cursor)
            {
                cursor = end;
                landed = true;
            }
        }

        if (to - cursor > Least / 2)
        {
            AddPiece(line, cursor, to, landed, false, cursor == from ? startSlope : 0, endSlope);
        }
    }

    /// <summary>Half of a line's width, measured along s.</summary>
    private double HalfAcross(in StripLine line)
    {
        double slope = (line.At1 - line.At0) / _face.T;
        return line.Width / 2 * Math.Sqrt(1 + (slope * slope));
    }

    /// <summary>A straight strip ends where it meets the inner side of a leaning end strip.</summary>
    private void AddLeaning(in StripLine line)
    {
        if (line.At0 != line.At1)
        {
            return;
        }

        AddLeaning(_front, line.At0 - (line.Width / 2), 1);
        AddLeaning(_rear, line.At0 + (line.Width / 2), -1);
    }

    private void AddLeaning(in StripLine end, double edge, int side)
    {
        double in0 = end.At0 + (side * HalfAcross(end)), in1 = end.At1 + (side * HalfAcross(end));
        double over0 = (in0 - edge) * side, over1 = (in1 - edge) * side;
        if (end.At0 == end.At1 || (over0 <= Least / 2 && over1 <= Least / 2))
        {
            return;
        }

        double meets = Grid.Snap(_face.T * over0 / (over0 - over1));
        (double, double) block = over0 > Least / 2 && over1 > Least / 2 ? (0, _face.T) : over0 > over1 ? (0, meets) : (meets, _face.T);
        _blocks.Add(block);
        if (block.Item2 - block.Item1 < _face.T)
        {
            _meets.Add(meets);
        }
    }

    private void AddPiece(in StripLine line, double from, double to, bool startLands, bool endLands, double startSlope, double endSlope)
    {
        double s0 = On(line.At0, line.At1, from / _face.T), s1 = On(line.At0, line.At1, to / _face.T);
        double slope = (line.At1 - line.At0) / _face.T;

        // What the opening or furniture line at an end holds: trimmers and strips along breaks do, furniture and bare openings are not known to.
        FurringPiece piece = new(_face, line.Role, line.Width, s0, from, s1, to, false, slope, startSlope, endSlope, startLands && IsTimber(from, s0, -1), endLands && IsTimber(to, s1, 1));
        _pieces.Add(piece);
    }

    /// <summary>Whether a strip across lies beyond an end: a trimmer, or a strip along a break.</summary>
    private bool IsTimber(double t, double s, int side)
    {
        if (_meets.Contains(t))
        {
            return true; // butts against a leaning end strip
        }

        for (int i = FirstOpening(s); i < _face.Openings.Length && _face.Openings[i].S0 <= s; i++)
        {
            FaceBox opening = _face.Openings[i];
            bool meets = side > 0 ? _sill[i] > 0 && Math.Abs(opening.T0 - _sill[i] - t) < Least : _head[i] > 0 && Math.Abs(opening.T1 + _head[i] - t) < Least;
            if (meets && opening.S0 <= s && s <= opening.S1)
            {
                return true;
            }
        }

        for (int i = 0; !_face.IsTurned && i < _face.Breaks.Length; i++)
        {
            double line = _face.Breaks[i];
            if (side > 0 ? BreakBelow(i) > 0 && Math.Abs(line - BreakBelow(i) - t) < Least : BreakAbove(i) > 0 && Math.Abs(line + BreakAbove(i) - t) < Least)
            {
                return true;
            }
        }

        return false;
    }

    private void AddTrimmers()
    {
        for (int i = 0; i < _face.Openings.Length; i++)
        {
            FaceBox opening = _face.Openings[i];
            AddTrimmer(opening, opening.T0 - (_sill[i] / 2), _sill[i]);
            AddTrimmer(opening, opening.T1 + (_head[i] / 2), _head[i]);
        }
    }

    private void AddTrimmer(in FaceBox opening, double at, double width)
    {
        if (width <= 0)
        {
            return;
        }

        // Furniture that stands before the opening takes its part of the trimmer.
        _blocks.Clear();
        foreach (FaceBox stop in _face.Stops)
        {
            if (stop.T0 + Least / 2 < at + (width / 2) && at - (width / 2) + Least / 2 < stop.T1)
            {
                _blocks.Add((stop.S0, stop.S1));
            }
        }

        _blocks.Sort(static (one, other) => one.From.CompareTo(other.From));
        double cursor = opening.S0;
        foreach ((double start, double end) in _blocks)
        {
            AddTrimmer(opening, cursor, Math.Min(start, opening.S1), at, width);
            cursor = Math.Max(cursor, end);
        }

        AddTrimmer(opening, cursor, opening.S1, at, width);
    }

    private void AddTrimmer(in FaceBox opening, double from, double to, double at, double width)
    {
        if (to - from > Least / 2)
        {
            _pieces.Add(new FurringPiece(_face, StripRole.Trimmer, width, from, at, to, at, true, 0, 0, 0, from == opening.S0 && from > 0, to == opening.S1 && to < _face.S));
        }
    }

    private double BreakBelow(int index)
    {
        if (_sides == BreakStrips.None)
        {
            return 0;
        }

        double floor = index == 0 ? 0 : _face.Breaks[index - 1] + BreakAbove(index - 1);
        return Grid.Snap(Math.Min(_face.Width, Math.Max(0, _face.Breaks[index] - floor)));
    }

    private double BreakAbove(int index)
    {
        if (_sides is BreakStrips.None or BreakStrips.OneSide)
        {
            return 0;
        }

        double ceiling = index + 1 < _face.Breaks.Length ? _face.Breaks[index + 1] : _face.T;
        return Grid.Snap(Math.Min(_face.Width, ceiling - _face.Breaks[index]));
    }

    private void AddBreakStrips()
    {
        for (int i = 0; i < _face.Breaks.Length; i++)
        {
            AddBreakStrip(_face.Breaks[i] - BreakBelow(i), _face.Breaks[i]);
            AddBreakStrip(_face.Breaks[i], _face.Breaks[i] + BreakAbove(i));
        }
    }

    private void AddBreakStrip(double low, double high)
    {
        double width = Grid.Snap(high - low), at = (low + high) / 2;
        if (width <= 0)
        {
            return;
        }

        _blocks.Clear();
        foreach (FaceBox opening in _face.Openings)
        {
            if (opening.T0 < high && low < opening.T1)
            {
                _blocks.Add((opening.S0, opening.S1));
            }
        }

        foreach (FaceBox stop in _face.Stops)
        {
            if (stop.T1 > low)
            {
                _blocks.Add((stop.S0, stop.S1));
            }
        }

        _blocks.Sort(static (one, other) => one.From.CompareTo(other.From));
        double from = On(_face.Front0, _face.Front1, at / _face.T), to = On(_face.Rear0, _face.Rear1, at / _face.T), cursor = from;
        double startSlope = (_face.Front1 - _face.Front0) / _face.T, endSlope = (_face.Rear1 - _face.Rear0) / _face.T;
        foreach ((double start, double end) in _blocks)
        {
            if (Math.Min(start, to) - cursor > Least / 2)
            {
                _pieces.Add(new FurringPiece(_face, StripRole.Break, width, cursor, at, Math.Min(start, to), at, true, 0, cursor == from ? startSlope : 0, start < to ? 0 : endSlope, false, false));
            }

            cursor = Math.Max(cursor, end);
        }

        if (to - cursor > Least / 2)
        {
            _pieces.Add(new FurringPiece(_face, StripRole.Break, width, cursor, at, to, at, true, 0, cursor == from ? startSlope : 0, endSlope, false, false));
        }
    }
}

/// <summary>What was met while setting out.</summary>
internal enum FaceNoteKind
{
    /// <summary>No room for two strips.</summary>
    Gap,

    /// <summary>A trimmer ripped narrower.</summary>
    Narrowed,
}

/// <summary>One of these, where it is and how much is left.</summary>
internal readonly struct FaceNote(FaceNoteKind kind, double s, double t, double size)
{
    internal FaceNoteKind Kind { get; } = kind;

    internal double S { get; } = s;

    internal double T { get; } = t;

    internal double Size { get; } = size;
}
