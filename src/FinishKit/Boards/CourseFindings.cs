using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>What a person should know about courses.</summary>
internal static class CourseFindings
{
    internal static IReadOnlyList<Finding> Of(CoursePlan plan, CourseNumbers numbers)
    {
        List<Finding> findings = [];
        for (int i = 0; i < plan.Bands.Count; i++)
        {
            AddNarrow(findings, plan, numbers, i);
        }

        AddRunsOut(findings, plan);
        AddBreaks(findings, plan, numbers);
        AddBevels(findings, plan, numbers);
        AddBare(findings, plan, numbers);
        findings.Add(LookBehind.Note);
        return Finding.GravestFirst(findings);
    }

    private static void AddNarrow(List<Finding> findings, CoursePlan plan, CourseNumbers numbers, int index)
    {
        CourseBand band = plan.Bands[index];
        CoursePiece? movable = null, between = null;
        int movables = 0, betweens = 0;
        foreach (BoardCourse course in plan.Courses)
        {
            if (course.Band != index)
            {
                continue;
            }

            foreach (CoursePiece piece in course.Pieces)
            {
                if (piece.Cut.Least >= numbers.Least || IsRunningOut(piece))
                {
                    continue;
                }

                if (piece.IsBetweenEdges)
                {
                    betweens++;
                    between = between is null || piece.Cut.Least < between.Cut.Least ? piece : between;
                }
                else
                {
                    movables++;
                    movable = movable is null || piece.Cut.Least < movable.Cut.Least ? piece : movable;
                }
            }
        }

        double least = Grid.Millimetres(numbers.Least), error = Grid.Millimetres(numbers.Error);
        if (between is not null)
        {
            (long from, long to) = (between.Cut.V0, Math.Max(between.Cut.V1AtFront, between.Cut.V1AtRear));
            bool isAtBreak = Array.Exists(numbers.Breaks, line => line.Ends && (line.V == from || line.V == to));
            findings.Add(new Finding(
                "boards-course-narrow-between-edges",
                Severity.Caution,
                $"{Pieces(betweens)} narrower than {Print.Mm(least)} whatever the offset, cut by edges on both sides: {between}. Move an edge, {(isAtBreak ? "let the courses run through the break, " : string.Empty)}or cover the place with trim.",
                [.. Where(between, betweens, least)],
                Sources.CourseLayout));
        }

        if (movable is not null)
        {
            string best = band.OffsetNm == Grid.Nanometres(Door.Millimetres(band.BestOffset))
                ? $"no offset does better than this one, which guarantees {Print.Mm(band.Guaranteed.Millimeters)}"
                : $"the best offset, {Print.Mm(band.BestOffset.Millimeters)}, guarantees {Print.Mm(band.BestGuaranteed.Millimeters)}";
            findings.Add(new Finding(
                "boards-course-narrow",
                Severity.Caution,
                $"{Pieces(movables)} narrower than {Print.Mm(least)}, the narrowest {movable}; {best} with a set-out {Print.Mm(error)} off.",
                [.. Where(movable, movables, least), new("best-offset", band.BestOffset.Millimeters, "mm"), new("best-guaranteed", band.BestGuaranteed.Millimeters, "mm"), new("set-out-error", error, "mm")],
                Sources.CourseLayout));
        }
        else if (band.HasPieces && band.Movable < numbers.Least)
        {
            double movableWidth = Grid.Millimetres(band.Movable);
            findings.Add(new Finding(
                "boards-course-narrow-if-off",
                Severity.Note,
                $"If the set-out of the band from {Print.Mm(band.FromV.Millimeters)} is {Print.Mm(error)} off, a piece may come out {Print.Mm(movableWidth)} wide, under {Print.Mm(least)}: check the first lines with care.",
                [new("height", band.FromV.Millimeters, "mm"), new("width", movableWidth, "mm"), new("least-course", least, "mm"), new("set-out-error", error, "mm")],
                Sources.CourseLayout));
        }
    }

    private static void AddRunsOut(List<Finding> findings, CoursePlan plan)
    {
        CoursePiece? first = null;
        int count = 0;
        foreach (BoardCourse course in plan.Courses)
        {
            foreach (CoursePiece piece in course.Pieces)
            {
                first ??= IsRunningOut(piece) ? piece : null;
                count += IsRunningOut(piece) ? 1 : 0;
            }
        }

        if (first is not null)
        {
            findings.Add(new Finding(
                "boards-course-runs-out",
                Severity.Caution,
                $"{(count == 1 ? "A tapered piece runs" : $"{Print.Number(count)} tapered pieces run")} out to nothing: {first}. Courses parallel to the foot cannot follow the head there: end the piece where it is still wide enough to fix, or cover it with trim.",
                [new("pieces", count, string.Empty), new("from-front", first.FromU.Millimeters, "mm"), new("to-front", first.ToU.Millimeters, "mm"), new("height", first.FromV.Millimeters, "mm"), new("greatest-width", first.GreatestWidth.Millimeters, "mm")],
                Sources.CourseLayout));
        }
    }

    private static void AddBreaks(List<Finding> findings, CoursePlan plan, CourseNumbers numbers)
    {
        foreach (CourseBreakLine line in numbers.Breaks)
        {
            if (line.Ends || line.Change == 0)
            {
                continue;
            }

            foreach (BoardCourse course in plan.Courses)
            {
                if (course.Lower < line.V && line.V < course.Upper && Covers(course, line.V))
                {
                    double width = Grid.Millimetres(course.Upper - course.Lower);
                    findings.Add(new CourseBreak(width, line.Change, numbers.Limit, limitIsDefault: false).StandsOff(Grid.Millimetres(line.V)));
                }
            }
        }
    }

    /// <summary>In a hollow the backs of the boards that meet are wider than their faces, which is what the plan knows; on a ridge they are narrower, and the rip width does.</summary>
    private static void AddBevels(List<Finding> findings, CoursePlan plan, CourseNumbers numbers)
    {
        int band = 0;
        foreach (CourseBreakLine line in numbers.Breaks)
        {
            if (!line.Ends)
            {
                continue;
            }

            if (line.Change > 0 && (plan.Bands[band].HasPieces || plan.Bands[band + 1].HasPieces))
            {
                double height = Grid.Millimetres(line.V), bevel = line.Change / 2, wider = Math.Tan(bevel * (Math.PI / 180));
                findings.Add(new Finding(
                    "boards-bevel-rip-wider",
                    Severity.Note,
                    $"In the hollow at {Print.Mm(height)} edges are bevelled by {Print.Round(bevel, 3)}° from square, and the backs of the boards come out wider than their faces: rip each wider by {Print.Round(wider, 4)} times its thickness at that edge.",
                    [new("height", height, "mm"), new("bevel", bevel, "deg"), new("wider-per-thickness", wider, string.Empty)],
                    Sources.CourseBreak));
            }

            band++;
        }
    }

    /// <summary>Strips no wider than the gap of a joint take no board.</summary>
    private static void AddBare(List<Finding> findings, CoursePlan plan, CourseNumbers numbers)
    {
        HashSet<(long, long, long)> ends = [];
        int strips = 0;
        (CourseColumn Column, CourseFree Free)? first = null;
        foreach (CourseBand band in plan.Bands)
        {
            foreach (CourseColumn column in band.Numbers.Columns)
            {
                foreach (CourseFree free in column.Free)
                {
                    long head = Math.Max(free.ToAtFront, free.ToAtRear);
                    if (head - free.From > numbers.Gap)
                    {
                        continue;
                    }

                    // A strip that goes on from the column before is the same one.
                    strips += ends.Contains((column.From, free.From, head)) ? 0 : 1;
                    ends.Add((column.To, free.From, head));
                    first ??= (column, free);
                }
            }
        }

        if (first is { } bare)
        {
            double width = Grid.Millimetres(Math.Max(bare.Free.ToAtFront, bare.Free.ToAtRear) - bare.Free.From), from = Grid.Millimetres(bare.Free.From), gap = Grid.Millimetres(numbers.Gap);
            findings.Add(new Finding(
                "boards-course-bare-strip",
                Severity.Note,
                $"{(strips == 1 ? "A strip is" : Print.Number(strips) + " strips are")} no wider than the gap of a joint, {Print.Mm(gap)}, and {(strips == 1 ? "stays" : "stay")} bare: the first, {Print.Mm(width)} wide, lies from {Print.Mm(from)} up, {Print.Mm(Grid.Millimetres(bare.Column.From))} from the front.",
                [new("strips", strips, string.Empty), new("width", width, "mm"), new("height", from, "mm"), new("from-front", Grid.Millimetres(bare.Column.From), "mm"), new("gap", gap, "mm")],
                Sources.CourseLayout));
        }
    }

    private static bool Covers(BoardCourse course, long v)
    {
        foreach (CoursePiece piece in course.Pieces)
        {
            if (piece.Cut.V0 < v && v < Math.Max(piece.Cut.V1AtFront, piece.Cut.V1AtRear))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsRunningOut(CoursePiece piece) => piece.Cut.Least == 0;

    private static string Pieces(int count) => count == 1 ? "A piece is" : Print.Number(count) + " pieces are";

    private static IEnumerable<Figure> Where(CoursePiece piece, int count, double least) =>
    [
        new("pieces", count, string.Empty),
        new("width", piece.LeastWidth.Millimeters, "mm"),
        new("from-front", piece.FromU.Millimeters, "mm"),
        new("to-front", piece.ToU.Millimeters, "mm"),
        new("height", piece.FromV.Millimeters, "mm"),
        new("least-course", least, "mm"),
    ];
}
