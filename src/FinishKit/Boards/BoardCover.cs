using System;
using UnitsNet;

namespace FinishKit;

/// <summary>
/// What a board covers of a face once it hangs beside its neighbours: how far apart the joints lie, how much of the board shows,
/// and what tongue or lap takes. How thick it is where a nail goes through is a question for <see cref="BoardProfile"/>.
/// </summary>
/// <remarks>
/// Face = width - tongue or lap; cover = face + gap; still covered = tongue or lap - gap. The gap is the joint as it shows at the face:
/// the reveal of a shiplap board, a square-edged board's distance from the next.
/// </remarks>
public sealed class BoardCover : IEquatable<BoardCover>
{
    private static readonly Allowed s_width = new(10, 1000, "mm");
    private static readonly Allowed s_gap = new(0, 100, "mm");

    private readonly double _width, _hidden, _gap;

    private BoardCover(string name, double width, double hidden, double gap)
    {
        Name = name;
        _width = width;
        _hidden = hidden;
        _gap = gap;
    }

    /// <summary>What the profile is called.</summary>
    public string Name { get; }

    /// <summary>Width over all, as it lies in the rack: with its tongue, or with both laps.</summary>
    public Length Width => Door.Millimetres(_width);

    /// <summary>What of the width goes into or under the next board when closed tight: the tongue, or the lap; 0 of a square-edged board.</summary>
    public Length Hidden => Door.Millimetres(_hidden);

    /// <summary>The joint as it shows at the face, 0 where boards are pushed tight.</summary>
    public Length Gap => Door.Millimetres(_gap);

    /// <summary>What shows of a board, without the gap: its width less the tongue or lap.</summary>
    public Length Face => Door.Millimetres(FaceMm);

    /// <summary>From one joint to the next: what shows, and one gap.</summary>
    public Length Cover => Door.Millimetres(CoverMm);

    /// <summary>How far a tongue stays in its groove, or a front lap over a back lap, with the gap as it is; 0 of a square-edged board.</summary>
    public Length StillCovered => Door.Millimetres(_hidden > 0 ? Grid.Snap(_hidden - _gap) : 0);

    /// <summary>
    /// What shows of a first board whose groove or front lap is ripped off to leave a square edge: its face less the depth of groove or lap.
    /// Where a trim covers the edge the groove or lap may stay, and the first board keeps its whole face.
    /// </summary>
    public Length SquaredFirstFace => Door.Millimetres(Grid.Snap(FaceMm - _hidden));

    /// <summary>What a last board of whole face loses: its tongue or back lap, which has no neighbour to go into. Its face stays whole.</summary>
    public Length LostAtLast => Hidden;

    internal double FaceMm => Grid.Snap(_width - _hidden);

    internal double GapMm => _gap;

    internal double CoverMm => Grid.Snap(_width - _hidden + _gap);

    /// <summary>A square-edged board.</summary>
    /// <param name="width">Its width [length], 10 mm to 1 m.</param>
    /// <param name="gap">Gap between neighbours at the face [length], 0 to 100 mm, less than the width.</param>
    /// <returns>What it covers: width and gap.</returns>
    /// <exception cref="ArgumentException">A length is outside its range or in an undefined unit.</exception>
    public static BoardCover SquareEdged(Length width, Length gap)
    {
        double w = Door.Millimetres(width, nameof(width), s_width, null);
        double g = Door.Millimetres(gap, nameof(gap), s_gap, null);
        Require(g < w, nameof(gap), g, "less than the width, ", w);
        return new BoardCover("square-edged", w, 0, g);
    }

    /// <summary>A shiplap board: each board's front lap, at its face, lies over the back lap of the one before.</summary>
    /// <param name="width">Its width over both laps [length], 10 mm to 1 m.</param>
    /// <param name="lap">Width of a lap [length], more than 0, less than half the width.</param>
    /// <param name="reveal">Gap between neighbours at the face [length], 0 or more, less than the lap so that some of it stays covered.</param>
    /// <returns>What it covers: width less lap, and the reveal.</returns>
    /// <exception cref="ArgumentException">A length is outside its range or in an undefined unit.</exception>
    public static BoardCover Shiplap(Length width, Length lap, Length reveal) => Joined("shiplap", width, (lap, nameof(lap)), (reveal, nameof(reveal)));

    /// <summary>A tongue-and-groove board.</summary>
    /// <param name="width">Its width with the tongue [length], 10 mm to 1 m.</param>
    /// <param name="tongue">Depth of the tongue, and of the groove [length], more than 0, less than half the width.</param>
    /// <param name="gap">Gap between neighbours at the face [length], 0 or more, less than the tongue so that some of it stays in the groove.</param>
    /// <returns>What it covers: width less tongue, and the gap.</returns>
    /// <exception cref="ArgumentException">A length is outside its range or in an undefined unit.</exception>
    /// <example><code>
    /// BoardCover board = BoardCover.TongueAndGroove(Mm(97), Mm(8), Mm(1));
    /// Length shows = board.Face;                          // 89 mm
    /// Length cover = board.Cover;                         // 90 mm from joint to joint
    /// Length held = board.StillCovered;                   // 7 mm of tongue in the groove
    /// </code></example>
    public static BoardCover TongueAndGroove(Length width, Length tongue, Length gap) => Joined("tongue-and-groove", width, (tongue, nameof(tongue)), (gap, nameof(gap)));

    /// <summary>Whether profile, width, tongue or lap, and gap are equal.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(BoardCover? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as BoardCover);

    /// <inheritdoc/>
    public override int GetHashCode() => (_width, _hidden, _gap).GetHashCode();

    /// <summary>Profile, face and cover, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name} board of {Print.Number(_width)} mm, face {Print.Number(FaceMm)} mm, cover {Print.Number(CoverMm)} mm";

    private (string, double, double, double) Key => (Name, _width, _hidden, _gap);

    private static BoardCover Joined(string name, Length width, (Length Value, string Name) hidden, (Length Value, string Name) gap)
    {
        double w = Door.Millimetres(width, nameof(width), s_width, null);
        double h = Door.Millimetres(hidden.Value, hidden.Name, new Allowed(Allowed.OneStep, 500, "mm"), null);
        double g = Door.Millimetres(gap.Value, gap.Name, s_gap, null);
        Require(2 * h < w, hidden.Name, h, "more than 0, less than half the width, ", w / 2);
        Require(g < h, gap.Name, g, $"less than the {hidden.Name}, ", h);
        return new BoardCover(name, w, h, g);
    }

    private static void Require(bool holds, string parameter, double value, string allowed, double than)
    {
        if (!holds)
        {
            throw new InputProblem(parameter, Print.Number(value) + " mm", allowed + Print.Number(than) + " mm", isRange: true).ToException();
        }
    }
}
