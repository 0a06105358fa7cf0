using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>Where the courses of a boarded face fall, which boards are to be ripped and how wide, and whether a sliver is left at any edge.</summary>
public static class CourseLayout
{
    /// <summary>The courses of a face, band by band from the foot up.</summary>
    /// <param name="face">The face: extents, what a board covers, openings, breaks, rules, and whatever differs from the defaults.</param>
    /// <returns>Every course with its lines, the width to rip and its pieces; the bands with their offsets; findings.</returns>
    /// <remarks>
    /// <para>Formula: lower edges of boards lie at foot + o + k c, each board shows c - g. Best offset: of all o from 0 to c the one with the greatest width that every piece keeps while the set-out is off by up to d either way; pieces cut by edges on both sides count with their true width but, as no offset widens them, do not hide the others; of equals the smallest. Balanced: o = (r + c)/2 with r the rest of the height by the cover.</para>
    /// <para>Validity: boards parallel to a straight foot; openings are rectangles; v runs over the surface that the boards' faces lie in. Exact on whole nanometres for up to 1000 courses, 100 openings and 100 breaks, without search effort: for a given width each edge forbids one arc of offsets, and the greatest width is found by halving.</para>
    /// <para>Source: boards-courses (derived); boards-break (derived); default-least-course (common practice); default-set-out-error (judgement); default-break-limit (judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The face, its board, a list or an entry is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit, or entries do not fit to each other; the parameter is named by its path.</exception>
    /// <example><code>
    /// BoardCover board = BoardCover.SquareEdged(Mm(89), Mm(0));
    /// FaceOpening window = new(Mm(500), Mm(1400), Mm(230), Mm(610));
    /// CoursePlan plan = CourseLayout.LayOut(new CourseFace(Mm(3400), Mm(994), board) { Openings = [window] });
    /// double offset = plan.Bands[0].Offset.Millimeters;   // 55: the first joint lies 55 mm above the foot
    /// double narrowest = plan.NarrowestPiece!.Value.Millimeters; // 49, at the head
    /// double held = plan.Guaranteed.Millimeters;          // 46, though the set-out be 3 mm off
    /// </code></example>
    public static CoursePlan LayOut(CourseFace face)
    {
        CourseNumbers numbers = CourseNumbers.Read(face, nameof(face), null)!;
        List<CourseBand> bands = [];
        List<BoardCourse> courses = [];
        long foot = 0;
        double changeBelow = 0;
        foreach (CourseBreakLine line in numbers.Breaks)
        {
            if (line.Ends)
            {
                Add(line.V, line.Change);
            }
        }

        Add(null, 0);
        return new CoursePlan(face, numbers, bands, courses);

        void Add(long? head, double changeAbove)
        {
            CourseBand band = SetOut(numbers, foot, head, numbers.Rules[bands.Count]);
            AddCourses(courses, numbers, band, bands.Count, (changeBelow, changeAbove));
            bands.Add(band);
            foot = head ?? 0;
            changeBelow = changeAbove;
        }
    }

    /// <summary>All problems with a face; nothing is thrown.</summary>
    /// <param name="face">The face.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(CourseFace face)
    {
        List<InputProblem> problems = [];
        CourseNumbers.Read(face, nameof(face), problems);
        return problems;
    }

    /// <summary>The one formula body, for the numbers and for the workings: the face edges of one course.</summary>
    internal static (double Lower, double Upper) Edges<TTrace>((double Foot, double Head) band, double offset, (double Cover, double Gap) board, double number, TTrace trace, int index = -1)
        where TTrace : struct, ITrace
    {
        double foot = band.Foot, head = band.Head, cover = board.Cover, gap = board.Gap;
        trace.Given("B", foot, "mm", Sources.Given, index, "foot of the band");
        trace.Given("T", head, "mm", Sources.Given, index, "head of the band where it is highest");
        trace.Given("o", offset, "mm", Sources.CourseLayout, index, "offset of the band");
        trace.Given("c", cover, "mm", Sources.Given, index, "cover");
        trace.Given("g", gap, "mm", Sources.Given, index, "gap of a joint");
        trace.Given("k", number, string.Empty, Sources.CourseLayout, index, "boards below, counted from the offset");
        double line = trace.Step("l", nameof(line), foot + offset + (number * cover), "mm", Sources.CourseLayout, index);
        double lower = trace.Step("a", nameof(lower), Math.Max(foot, line), "mm", Sources.CourseLayout, index);
        double upper = trace.Step("b", nameof(upper), Math.Min(head, line + cover - gap), "mm", Sources.CourseLayout, index);
        trace.Step("w", "ripWidth", upper - lower, "mm", Sources.CourseLayout, index);
        return (lower, upper);
    }

    /// <summary>The number of the first board of a band: the one below the offset where it shows anything.</summary>
    internal static int FirstNumber(long offset, long gap) => offset > gap ? -1 : 0;

    private static CourseBand SetOut(CourseNumbers numbers, long foot, long? head, CourseRule rule)
    {
        CourseBandNumbers band = new(numbers, foot, head);
        CourseOffset offsets = new(band, numbers.Cover, numbers.Gap);
        long best = CourseOffset.Best(band, numbers.Cover, numbers.Gap, numbers.Error);
        long chosen = rule switch
        {
            CourseRule.Balanced => Balanced(band.MiddleHead - foot + numbers.Gap, numbers),
            CourseRule.WholeAtFoot => 0,
            CourseRule.WholeAtHead => (band.MostHead - foot + numbers.Gap) % numbers.Cover,
            _ => best,
        };
        return new CourseBand(band, rule, (chosen, offsets.Narrowest(chosen, numbers.Error)), (best, offsets.Narrowest(best, numbers.Error)))
        {
            HasPieces = offsets.HasPieces,
            Movable = offsets.NarrowestMovable(
                chosen,
                numbers.Error,
                rule == CourseRule.WholeAtFoot || (rule == CourseRule.Balanced && chosen == 0) ? foot : null,
                rule == CourseRule.WholeAtHead || (rule == CourseRule.Balanced && chosen == 0) ? band.MostHead : null),
        };
    }

    /// <summary>Whole boards alone where they leave no more than a gap, one piece where there is no room for more; an odd nanometre goes to the head.</summary>
    private static long Balanced(long height, CourseNumbers numbers)
    {
        long rest = height % numbers.Cover;
        return rest <= numbers.Gap || height < numbers.Cover ? 0 : (rest + numbers.Cover) / 2;
    }

    private static void AddCourses(List<BoardCourse> courses, CourseNumbers numbers, CourseBand band, int index, (double Below, double Above) change)
    {
        CourseBandNumbers at = band.Numbers;
        (double, double) edges = (Grid.Millimetres(at.Foot), Grid.Millimetres(at.MostHead)), board = (Grid.Millimetres(numbers.Cover), Grid.Millimetres(numbers.Gap));
        bool tapers = at.Head != at.MostHead;
        int first = FirstNumber(band.OffsetNm, numbers.Gap);
        for (int number = first; at.Foot + band.OffsetNm + (number * numbers.Cover) < at.MostHead; number++)
        {
            (double from, double to) = Edges(edges, Grid.Millimetres(band.OffsetNm), board, number, default(Silent));
            (long lower, long upper) = (Grid.Nanometres(from), Grid.Nanometres(to));
            long line = at.Foot + band.OffsetNm + (number * numbers.Cover);
            (long front, long middle, long rear) = tapers ? (Width(numbers.Front), Width(numbers.Middle), Width(numbers.Rear)) : (upper - lower, upper - lower, upper - lower);
            courses.Add(new BoardCourse(
                index,
                (lower, upper),
                (front, middle, rear),
                (line < at.Foot, line + numbers.Face > at.Head),
                (number == first ? change.Below / 2 : 0, line + numbers.Cover >= at.MostHead ? change.Above / 2 : 0),
                CourseCutting.Pieces(at, (lower, upper), numbers.Gap, numbers.HalfWay),
                front != middle || middle != rear));

            long Width(long head) => Math.Max(0, Math.Min(head, upper) - lower);
        }
    }
}
