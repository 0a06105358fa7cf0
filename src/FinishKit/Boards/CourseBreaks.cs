using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>What a line where the lean of a face changes does to a board that lies along it and across it: how far the board stands off, and whether a course has to end there.</summary>
public static class CourseBreaks
{
    private static readonly Allowed s_width = new(Allowed.OneStep, 1000, "mm");
    private static readonly Allowed s_change = new(-90, 90, "°");
    private static readonly Allowed s_limit = new(0, 90, "°");

    /// <summary>Whether a break ends a course, and how far a board that runs over it stands off.</summary>
    /// <param name="boardWidth">Width of the board, what lies on the face [length], more than 0 up to 1 m.</param>
    /// <param name="leanChange">Change of lean [angle], -90° to 90°, positive where the face is hollow to the room.</param>
    /// <param name="limit">Change above which a break ends a course [angle], 0° to 90°; exactly met does not end it. Null for 4°, judgement.</param>
    /// <returns>Stand-off, whether the course ends, and the bevel if so; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: stand-off h = w/2 tan(|delta|/2), where the break lies under the middle of the board; bevel delta/2, with the sign of delta.</para>
    /// <para>Validity: a rigid board, flat bands, the break under the board's middle, where it is worst: elsewhere a board stands off less. On a hollow it rests on its two edges and h is the space under its middle; on a ridge it rests on the break and each edge stands off h.</para>
    /// <para>Source: boards-break (derived); default-break-limit (judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is in an undefined unit.</exception>
    /// <example><code>
    /// CourseBreak lower = CourseBreaks.Judge(Mm(89), Angle.FromDegrees(3.5));
    /// bool ends = lower.EndsCourse;                       // false: up to 4 degrees a board runs over it
    /// Length standOff = lower.StandOff;                   // 1.36 mm
    /// CourseBreak upper = CourseBreaks.Judge(Mm(135), Angle.FromDegrees(9.5));
    /// Angle bevel = upper.Bevel;                          // the course ends, its edge bevelled by 4.75 degrees
    /// </code></example>
    public static CourseBreak Judge(Length boardWidth, Angle leanChange, Angle? limit = null) => Read(boardWidth, leanChange, limit, null);

    /// <summary>All problems with the input of <see cref="Judge(Length, Angle, Angle?)"/>; nothing is thrown.</summary>
    /// <param name="boardWidth">As there.</param>
    /// <param name="leanChange">As there.</param>
    /// <param name="limit">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(Length boardWidth, Angle leanChange, Angle? limit = null)
    {
        List<InputProblem> problems = [];
        Read(boardWidth, leanChange, limit, problems);
        return problems;
    }

    /// <summary>The one formula body, for the numbers and for the workings.</summary>
    internal static (double StandOff, double Bevel) Solve<TTrace>(double boardWidth, double leanChange, TTrace trace)
        where TTrace : struct, ITrace
    {
        double change = leanChange * (Math.PI / 180);
        trace.Given("w", boardWidth, "mm", Sources.Given);
        trace.Given("delta", change, "rad", Sources.Given, meaning: leanChange < 0 ? "change of lean at a ridge" : "change of lean in a hollow");
        double bevel = trace.Step("beta", nameof(bevel), change / 2, "rad", Sources.CourseBreak);
        double standOff = trace.Step("h", nameof(standOff), boardWidth / 2 * Math.Tan(Math.Abs(bevel)), "mm", Sources.CourseBreak);
        return (standOff, bevel);
    }

    private static CourseBreak Read(Length boardWidth, Angle leanChange, Angle? limit, List<InputProblem>? problems)
    {
        double width = Door.Millimetres(boardWidth, nameof(boardWidth), s_width, problems);
        double change = Door.Number(Door.Degrees(leanChange), nameof(leanChange), s_change, problems);
        double most = limit is { } given ? Door.Number(Door.Degrees(given), nameof(limit), s_limit, problems) : BreakRule.Default;
        return problems is { Count: > 0 } ? default : new CourseBreak(width, change, most, limit is null);
    }
}
