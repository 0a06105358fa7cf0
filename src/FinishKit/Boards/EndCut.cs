using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>How one course is cut where it meets the edge. <see cref="EndCuts.Schedule(EndCutJob)"/> makes it.</summary>
/// <remarks>
/// The saw angle is from square, and positive where the long point is at the upper line, whichever end the edge is at: a board and its mirror image have the same angle.
/// </remarks>
public sealed class EndCut
{
    private readonly EndCutPlace _place;
    private readonly EndCutNumbers _numbers;
    private readonly double? _before;

    internal EndCut(EndCutPlace place, EndCutNumbers numbers, EndCut? before, double tolerance)
    {
        _place = place;
        _numbers = numbers;
        _before = before?._numbers.SawAngle;
        NeedsScribe = Gap > tolerance || Wood > tolerance;
        ServesSetBack = NeedsScribe && Grid.Snap((_numbers.Gap + _numbers.Wood) / 2) <= tolerance;
    }

    /// <summary>Which course it is, the lowest being 1.</summary>
    public int Course => _place.Course;

    /// <summary>Height of its lower line.</summary>
    public Length LowerLine => Door.Millimetres(_place.LowerLine);

    /// <summary>Height of its upper line.</summary>
    public Length UpperLine => Door.Millimetres(_place.UpperLine);

    /// <summary>Angle of the cut from square: positive where the long point is at the upper line.</summary>
    public Angle SawAngle => Door.Radians(_numbers.SawAngle);

    /// <summary>Saw angle less that of the course fitted before; null for the first.</summary>
    public Angle? Change => _before is { } before ? Door.Radians(_numbers.SawAngle - before) : null;

    /// <summary>From the datum to the cut at the lower line.</summary>
    public Length LengthAtLowerLine => Door.Millimetres(Grid.Snap(_place.LowerLength));

    /// <summary>From the datum to the cut at the upper line.</summary>
    public Length LengthAtUpperLine => Door.Millimetres(Grid.Snap(_place.UpperLength));

    /// <summary>Where the cut meets the lower line, on the scale of the edge's offsets and the datum.</summary>
    public Length OffsetAtLowerLine => Door.Millimetres(_place.Offset(Lower));

    /// <summary>Where the cut meets the upper line, on the scale of the edge's offsets and the datum.</summary>
    public Length OffsetAtUpperLine => Door.Millimetres(_place.Offset(Upper));

    /// <summary>Where its long point is, on the scale of the edge's offsets and the datum.</summary>
    public Length LongPointOffset => Door.Millimetres(_place.Offset(Math.Max(Lower, Upper)));

    /// <summary>The greater of the two lengths.</summary>
    public Length LongPoint => Door.Millimetres(Math.Max(Lower, Upper));

    /// <summary>The less of the two lengths.</summary>
    public Length ShortPoint => Door.Millimetres(Math.Min(Lower, Upper));

    /// <summary>Height of the line where the long point is; null where the cut is square.</summary>
    public Length? LongPointAt => Lower == Upper ? null : Lower > Upper ? LowerLine : UpperLine;

    /// <summary>Height of the line where the short point is; null where the cut is square.</summary>
    public Length? ShortPointAt => Lower == Upper ? null : Lower > Upper ? UpperLine : LowerLine;

    /// <summary>Long point of the whole board, with what is hidden beyond the upper line: the length to cut it from.</summary>
    public Length BoardLongPoint => Door.Millimetres(Math.Max(Lower, Hidden));

    /// <summary>Short point of the whole board, with what is hidden beyond the upper line. Not above 0 where the cut runs out past the square end.</summary>
    public Length BoardShortPoint => Door.Millimetres(Math.Min(Lower, Hidden));

    /// <summary>Greatest gap between the cut and the edge, square to the cut, between the two lines.</summary>
    public Length GapLeft => Door.Millimetres(Gap);

    /// <summary>Height of the greatest gap; null where there is none.</summary>
    public Length? GapLeftAt => Gap > 0 ? Door.Millimetres(Grid.Snap(_place.GapHeight)) : null;

    /// <summary>Greatest distance by which the cut stands past the edge, square to the cut, between the two lines.</summary>
    public Length WoodInTheWay => Door.Millimetres(Wood);

    /// <summary>Height where most wood is in the way; null where none is.</summary>
    public Length? WoodInTheWayAt => Wood > 0 ? Door.Millimetres(Grid.Snap(_place.WoodHeight)) : null;

    /// <summary>Whether gap or wood in the way is more than the tolerance: a straight cut on the chord does not serve.</summary>
    public bool NeedsScribe { get; }

    /// <summary>How far to move the cut toward the datum, square to it and without turning it, so that gap and wood in the way are alike; negative is away from the datum.</summary>
    public Length SetBack => Door.Millimetres(Grid.Snap((_numbers.Wood - _numbers.Gap) / 2));

    /// <summary>The gap, and the wood in the way, of the cut so moved.</summary>
    public Length LeftWhenSetBack => Door.Millimetres(Grid.Snap((_numbers.Gap + _numbers.Wood) / 2));

    /// <summary>Whether a straight cut on the chord does not serve, but one so moved does.</summary>
    public bool ServesSetBack { get; }

    internal EndCutPlace Place => _place;

    /// <summary>By which two cuts are the same, on the grid; the saw angle follows from lines and lengths.</summary>
    internal (int Course, (double Lower, double Upper) Lines, (double Lower, double Upper, double Hidden) Lengths, (double Lower, double Upper) Offsets, (double Gap, double Wood) Left) Amounts =>
        (Course, (Grid.Snap(_place.LowerLine), Grid.Snap(_place.UpperLine)), (Lower, Upper, Hidden), (_place.Offset(Lower), _place.Offset(Upper)), (Gap, Wood));

    internal double Gap => Grid.Snap(_numbers.Gap);

    internal double Wood => Grid.Snap(_numbers.Wood);

    /// <summary>The cut as flat figures.</summary>
    /// <returns>Course, its lines, saw angle and change (absent for the first), lengths, long and short point of the visible face and of the board, gap, wood in the way, set-back and what it leaves, and whether it needs a scribe (1 or 0).</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures =
        [
            new("course", Course, string.Empty), new("lower-line", _place.LowerLine, "mm"), new("upper-line", _place.UpperLine, "mm"),
            new("saw-angle", Door.Degrees(SawAngle), "deg"),
        ];
        if (Change is { } change)
        {
            figures.Add(new Figure("change", Door.Degrees(change), "deg"));
        }

        figures.Add(new Figure("length-at-lower-line", Lower, "mm"));
        figures.Add(new Figure("length-at-upper-line", Upper, "mm"));
        figures.Add(new Figure("long-point", Math.Max(Lower, Upper), "mm"));
        figures.Add(new Figure("short-point", Math.Min(Lower, Upper), "mm"));
        figures.Add(new Figure("board-long-point", Math.Max(Lower, Hidden), "mm"));
        figures.Add(new Figure("board-short-point", Math.Min(Lower, Hidden), "mm"));
        figures.Add(new Figure("gap-left", Gap, "mm"));
        figures.Add(new Figure("wood-in-the-way", Wood, "mm"));
        figures.Add(new Figure("set-back", Door.Millimetres(SetBack), "mm"));
        figures.Add(new Figure("left-when-set-back", Door.Millimetres(LeftWhenSetBack), "mm"));
        figures.Add(new Figure("needs-scribe", NeedsScribe ? 1 : 0, string.Empty));
        return figures;
    }

    /// <summary>Course, angle, points and what is left, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string points = LongPointAt is null ? $"square at {Print.Mm(Lower)}" : $"{Print.Round(Door.Degrees(SawAngle), 2)}° from square, long point {Print.Mm(Math.Max(Lower, Upper))} at the {(Lower > Upper ? "lower" : "upper")} line, short point {Print.Mm(Math.Min(Lower, Upper))}";
        return $"course {Print.Number(Course)}: {points}; gap {Print.Mm(Gap)}, wood in the way {Print.Mm(Wood)}{(NeedsScribe ? ", scribe" : string.Empty)}";
    }

    private double Lower => Grid.Snap(_place.LowerLength);

    private double Upper => Grid.Snap(_place.UpperLength);

    private double Hidden => Grid.Snap(_numbers.HiddenLength);
}
