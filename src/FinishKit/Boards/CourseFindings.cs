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
        findings.Add(new Finding(
            "boards-look-behind",
            Severity.Note,
            "The figures know only widths and heights: find wiring, pipes, fuel and brake lines, airbags and belt anchorages before fixing, choose fasteners by the whole stack, and keep clear of the saw's dust.",
            []));
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
            findings.Add(new Finding(
                "boards-course-narrow-between-edges",
                Severity.Caution,
                $"{Pieces(betweens)} narrower than {Print.Mm(least)} whatever the offset, cut by edges on both sides: {between}. Move an edge, let the courses run through the break, or cover the place with trim.",
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
        else if (band.Movable < numbers.Least)
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
