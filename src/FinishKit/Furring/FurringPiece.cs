using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>What a strip of a face is for.</summary>
public enum StripRole
{
    /// <summary>Chosen, so that no bay is too large.</summary>
    Between = 0,

    /// <summary>At an end of the face, or at a furniture line.</summary>
    End = 1,

    /// <summary>Beside an opening.</summary>
    Jamb = 2,

    /// <summary>Under a butt joint of the boards.</summary>
    Joint = 3,

    /// <summary>Head or sill of an opening, between its jambs.</summary>
    Trimmer = 4,

    /// <summary>Along a break that ends a course.</summary>
    Break = 5,
}

/// <summary>Where a piece is fixed to the shell.</summary>
public sealed class ShellFixing
{
    internal ShellFixing(double u, double v, double packer, int? rib, int? rail)
    {
        U = Door.Millimetres(Grid.Snap(u));
        V = Door.Millimetres(Grid.Snap(v));
        Packer = Door.Millimetres(packer);
        Rib = rib;
        Rail = rail;
    }

    /// <summary>Its place along the van.</summary>
    public Length U { get; }

    /// <summary>Its place up the girth.</summary>
    public Length V { get; }

    /// <summary>Thickness of the packer under the strip there: the member's setback.</summary>
    public Length Packer { get; }

    /// <summary>Which rib of the face's list; null if on a rail.</summary>
    public int? Rib { get; }

    /// <summary>Which rail of the face's list; null if on a rib.</summary>
    public int? Rail { get; }

    /// <summary>Place and packer, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"u {Print.Mm(U.Millimeters)}, v {Print.Mm(V.Millimeters)}, packer {Print.Mm(Packer.Millimeters)}";
}

/// <summary>One piece of strip, with its ends, its bearing and its fixings.</summary>
public sealed class FurringPiece
{
    private readonly FaceNumbers _face;
    private readonly double _s0;
    private readonly double _t0;
    private readonly double _s1;
    private readonly double _t1;
    private readonly bool _isAcross;
    private readonly double _lean;
    private readonly double _startSlope;
    private readonly double _endSlope;
    private List<Hold>? _holds;
    private IReadOnlyList<ShellFixing>? _fixings;

    internal FurringPiece(FaceNumbers face, StripRole role, double width, double s0, double t0, double s1, double t1, bool isAcross, double lean, double startSlope, double endSlope, bool startLands, bool endLands)
    {
        _face = face;
        Role = role;
        WidthMm = width;
        (_s0, _t0, _s1, _t1) = (Grid.Snap(s0), Grid.Snap(t0), Grid.Snap(s1), Grid.Snap(t1));
        _isAcross = isAcross;
        _lean = lean;
        _startSlope = startSlope;
        _endSlope = endSlope;
        StartLands = startLands;
        EndLands = endLands;
        double along = isAcross ? _s1 - _s0 : (_t1 - _t0) * Math.Sqrt(1 + (lean * lean));

        // A leaning strip cut level, or a straight one cut to a leaning edge: half the width's share at each slanted end.
        LengthMm = Grid.Snap(along + (lean != 0 ? width * Math.Abs(lean) : SlantedLength()));
    }

    /// <summary>What it is for.</summary>
    public StripRole Role { get; }

    /// <summary>Its width; less than the strips' where it had to be ripped to the room there is.</summary>
    public Length Width => Door.Millimetres(WidthMm);

    /// <summary>Its length from long point to long point.</summary>
    public Length Length => Door.Millimetres(LengthMm);

    /// <summary>Start of its centre line, along the van.</summary>
    public Length StartU => Door.Millimetres(_face.IsTurned ? _t0 : _s0);

    /// <summary>Start of its centre line, up the girth.</summary>
    public Length StartV => Door.Millimetres(_face.IsTurned ? _s0 : _t0);

    /// <summary>End of its centre line, along the van.</summary>
    public Length EndU => Door.Millimetres(_face.IsTurned ? _t1 : _s1);

    /// <summary>End of its centre line, up the girth.</summary>
    public Length EndV => Door.Millimetres(_face.IsTurned ? _s1 : _t1);

    /// <summary>How far the cut at its start is from square, without sign.</summary>
    public Angle StartAngle => Door.Radians(Math.Atan(Math.Abs(_lean != 0 ? _lean : _startSlope)));

    /// <summary>How far the cut at its end is from square, without sign.</summary>
    public Angle EndAngle => Door.Radians(Math.Atan(Math.Abs(_lean != 0 ? _lean : _endSlope)));

    /// <summary>Whether its start butts against a strip across, or a jamb, which counts as a support.</summary>
    public bool StartLands { get; }

    /// <summary>Whether its end butts against a strip across, or a jamb, which counts as a support.</summary>
    public bool EndLands { get; }

    /// <summary>Its fixings to the shell, from its start on.</summary>
    public IReadOnlyList<ShellFixing> Fixings => _fixings ??= MakeFixings();

    /// <summary>The member it lies along: a rib under strips up the girth, a rail under strips along the van; its place in the face's list, null if none.</summary>
    public int? BearsAlong
    {
        get
        {
            foreach (Hold hold in Holds)
            {
                if (hold.IsAlong)
                {
                    return hold.Index;
                }
            }

            return null;
        }
    }

    internal double WidthMm { get; }

    internal double LengthMm { get; }

    internal bool IsAcross => _isAcross;

    internal bool IsLeaning => _lean != 0;

    internal double S0 => _s0;

    internal double T0 => _t0;

    internal double S1 => _s1;

    internal double T1 => _t1;

    /// <summary>Its four corners in turn.</summary>
    internal (double S, double T)[] Corners()
    {
        double half = WidthMm / 2 * (_isAcross ? 1 : Math.Sqrt(1 + (_lean * _lean))), start = half * _startSlope, end = half * _endSlope;
        return _isAcross
            ? [(_s0 - start, _t0 - half), (_s1 - end, _t1 - half), (_s1 + end, _t1 + half), (_s0 + start, _t0 + half)]
            : [(_s0 - half, _t0 - start), (_s0 + half, _t0 + start), (_s1 + half, _t1 + end), (_s1 - half, _t1 - end)];
    }

    internal double Run => _isAcross ? _s1 - _s0 : _t1 - _t0;

    /// <summary>Sorted along the piece, places from its start.</summary>
    internal List<Hold> Holds => _holds ??= FindHolds();

    /// <summary>What it is for, its centre line and length, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Mm(LengthMm)} x {Print.Mm(WidthMm)}, u {Print.Mm(StartU.Millimeters)} to {Print.Mm(EndU.Millimeters)}, v {Print.Mm(StartV.Millimeters)} to {Print.Mm(EndV.Millimeters)}";

    /// <summary>Extent of the longer of the two edges over the centre line.</summary>
    private double SlantedLength()
    {
        double start = WidthMm / 2 * _startSlope, end = WidthMm / 2 * _endSlope;
        return Math.Max(-start, start) + Math.Max(-end, end);
    }

    /// <summary>Members it runs along and those it crosses.</summary>
    private List<Hold> FindHolds()
    {
        List<Hold> holds = [];
        MemberSet along = _isAcross ? _face.Across : _face.Along, across = _isAcross ? _face.Along : _face.Across;
        double low = _isAcross ? _t0 : Math.Min(_s0, _s1), high = _isAcross ? _t0 : Math.Max(_s0, _s1), start = _isAcross ? _s0 : _t0, end = _isAcross ? _s1 : _t1;
        List<(double From, double To)> covered = [];
        for (int i = along.First(low); !along.IsPast(i, high); i++)
        {
            MemberNumbers member = along.All[i];
            double from = Math.Max(start, member.From), to = Math.Min(end, member.To);
            if (_lean == 0)
            {
                if (Grid.Snap(Math.Abs(low - member.Centre)) > member.Half)
                {
                    continue;
                }
            }
            else
            {
                double one = start + ((member.Centre - member.Half - _s0) / _lean), other = start + ((member.Centre + member.Half - _s0) / _lean);
                from = Grid.Snap(Math.Max(from, Math.Min(one, other)));
                to = Grid.Snap(Math.Min(to, Math.Max(one, other)));
            }

            if (to > from && !covered.Exists(range => range.From <= from && to <= range.To))
            {
                covered.Add((from, to));
                AddAlong(holds, member, from - start, to - start);
            }
        }

        for (int i = across.First(start); !across.IsPast(i, end); i++)
        {
            MemberNumbers member = across.All[i];
            double from = Math.Max(start, member.Centre - member.Half), to = Math.Min(end, member.Centre + member.Half), at = (from + to) / 2;
            double side = _isAcross ? _t0 : _lean == 0 ? _s0 : _s0 + (_lean * (at - start));
            if (to > from && start <= member.Centre && member.Centre <= end && member.From <= side && side <= member.To && !covered.Exists(range => range.From <= at && at <= range.To))
            {
                holds.Add(new Hold(Grid.Snap(at - start), member.Setback, member.Index, isAlong: false));
            }
        }

        holds.Sort(static (one, other) => one.At != other.At ? one.At.CompareTo(other.At) : one.Index.CompareTo(other.Index));
        return holds;
    }

    private void AddAlong(List<Hold> holds, in MemberNumbers member, double from, double to)
    {
        double first = from + FurringDefaults.EndDistance, last = to - FurringDefaults.EndDistance;
        if (first >= last)
        {
            holds.Add(new Hold(Grid.Snap((from + to) / 2), member.Setback, member.Index, isAlong: true));
            return;
        }

        int bays = (int)Grid.CeilingOfRatio(last - first, _face.FixingSpacing);
        for (int i = 0; i <= bays; i++)
        {
            holds.Add(new Hold(Grid.Snap(first + ((last - first) * i / bays)), member.Setback, member.Index, isAlong: true));
        }
    }

    private IReadOnlyList<ShellFixing> MakeFixings()
    {
        List<Hold> holds = Holds;
        ShellFixing[] fixings = new ShellFixing[holds.Count];
        for (int i = 0; i < fixings.Length; i++)
        {
            Hold hold = holds[i];
            double s = _isAcross ? _s0 + hold.At : _s0 + (_lean * hold.At), t = _isAcross ? _t0 : _t0 + hold.At;
            bool isRib = hold.IsAlong == (_isAcross == _face.IsTurned);
            fixings[i] = _face.IsTurned
                ? new ShellFixing(t, s, hold.Setback, isRib ? hold.Index : null, isRib ? null : hold.Index)
                : new ShellFixing(s, t, hold.Setback, isRib ? hold.Index : null, isRib ? null : hold.Index);
        }

        return [.. fixings];
    }
}

/// <summary>A place where a member of the shell holds a piece, from the piece's start.</summary>
internal readonly struct Hold(double at, double setback, int index, bool isAlong)
{
    internal double At { get; } = at;

    internal double Setback { get; } = setback;

    internal int Index { get; } = index;

    internal bool IsAlong { get; } = isAlong;
}
