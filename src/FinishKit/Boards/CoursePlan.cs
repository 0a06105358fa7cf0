using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>The courses of a face: what <see cref="CourseLayout.LayOut"/> answers.</summary>
public sealed class CoursePlan
{
    private readonly CourseNumbers _numbers;

    internal CoursePlan(CourseFace face, CourseNumbers numbers, List<CourseBand> bands, List<BoardCourse> courses)
    {
        Face = face;
        _numbers = numbers;
        Bands = [.. bands];
        Courses = [.. courses];
        Length[] lines = new Length[courses.Count + 1];
        long? narrowest = null;
        for (int i = 0; i < courses.Count; i++)
        {
            lines[i] = courses[i].LowerLine;
            WholeCount += courses[i].IsWhole && courses[i].Pieces.Count > 0 ? 1 : 0;
            foreach (CoursePiece piece in courses[i].Pieces)
            {
                narrowest = narrowest is { } before ? Math.Min(before, piece.Cut.Least) : piece.Cut.Least;
            }
        }

        lines[courses.Count] = Door.Millimetres(Grid.Millimetres(numbers.MostGirth));
        Lines = [.. lines];
        NarrowestPiece = narrowest is { } least ? Door.Millimetres(Grid.Millimetres(least)) : null;
        Length? guaranteed = null;
        CourseBreak[] breaks = new CourseBreak[numbers.Breaks.Length];
        for (int i = 0; i < breaks.Length; i++)
        {
            breaks[i] = new CourseBreak(Grid.Millimetres(numbers.Face), numbers.Breaks[i].Change, numbers.Limit, face.BreakLimit is null);
        }

        Breaks = [.. breaks];
        foreach (CourseBand band in bands)
        {
            if (band.HasPieces && (guaranteed is not { } before || Door.Millimetres(band.Guaranteed) < Door.Millimetres(before)))
            {
                guaranteed = band.Guaranteed;
            }
        }

        Guaranteed = guaranteed ?? Door.Millimetres(0);
        Findings = CourseFindings.Of(this, numbers);
    }

    /// <summary>The face.</summary>
    public CourseFace Face { get; }

    /// <summary>The bands between breaks that end a course, from the foot up; one where none does.</summary>
    public IReadOnlyList<CourseBand> Bands { get; }

    /// <summary>The courses, from the foot up.</summary>
    public IReadOnlyList<BoardCourse> Courses { get; }

    /// <summary>
    /// The heights between which the courses lie, rising, one more than courses: the lower face edge of each, then the head where it is highest.
    /// The gap of a joint lies just below its line.
    /// </summary>
    public IReadOnlyList<Length> Lines { get; }

    /// <summary>Each break of the face, as a whole board would meet it; where courses run through, those over the limit too are run over.</summary>
    public IReadOnlyList<CourseBreak> Breaks { get; }

    /// <summary>The narrowest piece as set out; null where openings leave no piece at all.</summary>
    public Length? NarrowestPiece { get; }

    /// <summary>The narrowest piece there may be while the set-out is off by up to the error either way, over all bands where a board goes; 0 where none goes anywhere.</summary>
    public Length Guaranteed { get; }

    /// <summary>Width under which a piece is a finding.</summary>
    public Length LeastCourse => Door.Millimetres(Grid.Millimetres(_numbers.Least));

    /// <summary>How many courses are whole boards all along, openings left aside; those of which openings leave nothing are not counted.</summary>
    public int WholeCount { get; }

    /// <summary>What a person should know, gravest first.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem
    {
        get
        {
            foreach (Finding finding in Findings)
            {
                if (finding.Severity >= Severity.Problem)
                {
                    return true;
                }
            }

            return false;
        }
    }

    /// <summary>The defaults it rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed
    {
        get
        {
            List<DefaultUsed> defaults = [];
            if (Face.SetOutError is null)
            {
                defaults.Add(new DefaultUsed(new Figure("set-out-error", CourseDefaults.SetOutError, "mm"), CourseDefaults.ErrorSource));
            }

            if (Face.LeastCourse is null)
            {
                defaults.Add(new DefaultUsed(new Figure("least-course", Grid.Millimetres(_numbers.Least), "mm"), CourseDefaults.LeastSource));
            }

            if (Breaks.Count > 0 && Face.BreakLimit is null)
            {
                defaults.Add(new DefaultUsed(new Figure("break-limit", BreakRule.Default, "deg"), BreakRule.Source));
            }

            return [.. defaults];
        }
    }

    /// <summary>How the lines and widths of the courses follow from the offset of each band.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        (double, double) board = (Grid.Millimetres(_numbers.Cover), Grid.Millimetres(_numbers.Gap));
        int first = 0;
        for (int i = 0; i < Courses.Count; i++)
        {
            CourseBand band = Bands[Courses[i].Band];
            first = i > 0 && Courses[i - 1].Band == Courses[i].Band ? first : i;
            (double, double) edges = (Grid.Millimetres(band.Numbers.Foot), Grid.Millimetres(band.Numbers.MostHead));
            CourseLayout.Edges(edges, Grid.Millimetres(band.OffsetNm), board, i - first + CourseLayout.FirstNumber(band.OffsetNm, _numbers.Gap), recorder, i + 1);
        }

        return recorder.ToWorkings("Courses of a face");
    }

    /// <summary>The plan as flat figures.</summary>
    /// <returns>Counts of bands, courses and whole ones, narrowest piece as set out and guaranteed (both absent where there is none), least course, set-out error, offset of the first band.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures =
        [
            new("bands", Bands.Count, string.Empty),
            new("courses", Courses.Count, string.Empty),
            new("whole-courses", WholeCount, string.Empty),
            new("cover", Grid.Millimetres(_numbers.Cover), "mm"),
            new("first-offset", Grid.Millimetres(Bands[0].OffsetNm), "mm"),
            new("set-out-error", Grid.Millimetres(_numbers.Error), "mm"),
            new("least-course", Grid.Millimetres(_numbers.Least), "mm"),
        ];
        if (NarrowestPiece is { } narrowest)
        {
            figures.Add(new Figure("narrowest-piece", narrowest.Millimeters, "mm"));
            figures.Add(new Figure("guaranteed", Guaranteed.Millimeters, "mm"));
        }

        return [.. figures];
    }

    /// <summary>Counts and the narrowest piece in a line, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Number(Courses.Count)} courses, {Print.Number(WholeCount)} whole{(NarrowestPiece is { } narrowest ? $", narrowest piece {Print.Mm(narrowest.Millimeters)}, at least {Print.Mm(Guaranteed.Millimeters)} if the set-out is {Print.Mm(Grid.Millimetres(_numbers.Error))} off" : ", no piece")}";
}
