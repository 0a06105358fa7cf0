using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>A board across a break: what <see cref="CourseBreaks.Judge(Length, Angle, Angle?)"/> answers. The default value is no board on a face without a break.</summary>
public readonly struct CourseBreak : IEquatable<CourseBreak>
{
    private readonly double _boardWidth, _leanChange, _limit, _standOff, _halfAngle;
    private readonly bool _limitIsDefault;

    internal CourseBreak(double boardWidth, double leanChange, double limit, bool limitIsDefault)
    {
        _boardWidth = boardWidth;
        _leanChange = leanChange;
        _limit = limit;
        _limitIsDefault = limitIsDefault;
        (_standOff, _halfAngle) = CourseBreaks.Solve(boardWidth, leanChange, default(Silent));
    }

    /// <summary>Width of the board.</summary>
    public Length BoardWidth => Door.Millimetres(_boardWidth);

    /// <summary>Change of lean, positive where the face is hollow to the room.</summary>
    public Angle LeanChange => Degrees(_leanChange);

    /// <summary>Change above which a break ends a course.</summary>
    public Angle Limit => Degrees(_limit);

    /// <summary>How far a board that ran over the break would stand off with the break under its middle: on a hollow under its middle, on a ridge at each edge.</summary>
    public Length StandOff => Door.Millimetres(Grid.Snap(_standOff));

    /// <summary>Whether the break ends a course.</summary>
    public bool EndsCourse => BreakRule.IsExceeded(_leanChange, _limit);

    /// <summary>
    /// Where the course ends: the bevel of the edges that meet there, from square, half the change. Positive in a hollow, where the back comes out wider than the face by
    /// thickness times tan(bevel); negative on a ridge, where the face is the wider. 0 where a board runs over.
    /// </summary>
    public Angle Bevel => Door.Radians(EndsCourse ? _halfAngle : 0);

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: never, for a break.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "Every result has it; a later finding may be a problem.")]
    public bool HasProblem => false;

    /// <summary>Where a board runs over the break: how far it stands off; put together on reading.</summary>
    /// <remarks>Codes: <c>boards-break-stands-off</c>.</remarks>
    public IReadOnlyList<Finding> Findings => EndsCourse || Grid.Snap(_standOff) == 0 ? [] : [StandsOff(null)];

    /// <summary>The limit where none was given; put together on reading.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed => _limitIsDefault ? [new DefaultUsed(new Figure("break-limit", _limit, "deg"), BreakRule.Source)] : [];

    private (double, double, double, bool) Key => (_boardWidth, _leanChange, _limit, _limitIsDefault);

    /// <summary>Whether board, change and limit agree.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree.</returns>
    public static bool operator ==(CourseBreak left, CourseBreak right) => left.Equals(right);

    /// <summary>Whether board, change or limit differ.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if one differs.</returns>
    public static bool operator !=(CourseBreak left, CourseBreak right) => !left.Equals(right);

    /// <summary>How stand-off and bevel follow, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        CourseBreaks.Solve(_boardWidth, _leanChange, recorder);
        return recorder.ToWorkings("Board across a break");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Board, change and limit in degrees, whether the course ends (1 or 0), stand-off of a board that runs over, bevel.</returns>
    public IReadOnlyList<Figure> Figures() =>
    [
        new("board-width", _boardWidth, "mm"),
        new("lean-change", _leanChange, "deg"),
        new("break-limit", _limit, "deg"),
        new("ends-course", EndsCourse ? 1 : 0, string.Empty),
        new("stand-off", Grid.Snap(_standOff), "mm"),
        new("bevel", Door.Degrees(Bevel), "deg"),
    ];

    /// <inheritdoc/>
    public bool Equals(CourseBreak other) => Key.Equals(other.Key);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CourseBreak other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Change, and what it does, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => EndsCourse
        ? $"a break of {Print.Number(_leanChange)}° ends the course, bevel {Print.Round(Door.Degrees(Bevel), 3)}°"
        : $"a board of {Print.Mm(_boardWidth)} over a break of {Print.Number(_leanChange)}° stands off {Print.Mm(_standOff)}";

    /// <summary>The finding, with the place on the face where there is one.</summary>
    internal Finding StandsOff(double? v)
    {
        List<Figure> values = [new("stand-off", Grid.Snap(_standOff), "mm"), new("board-width", _boardWidth, "mm"), new("lean-change", _leanChange, "deg")];
        string place = string.Empty;
        if (v is { } height)
        {
            values.Add(new Figure("height", height, "mm"));
            place = $" at {Print.Mm(height)}";
        }

        string where = _leanChange < 0 ? "each edge" : "the middle";
        return new Finding(
            "boards-break-stands-off",
            Severity.Caution,
            $"A board of {Print.Mm(_boardWidth)} over the break of {Print.Round(Math.Abs(_leanChange), 3)}°{place} stands off up to {Print.Mm(_standOff)} at {where}: narrower boards, packing, or a course that ends there.",
            [.. values],
            Sources.CourseBreak);
    }

    private static Angle Degrees(double degrees) => new(degrees, UnitsNet.Units.AngleUnit.Degree);
}
