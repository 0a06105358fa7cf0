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
        LinesAtFront = LinesUnder(courses, numbers.Front);
        LinesAtRear = LinesUnder(courses, numbers.Rear);
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

    /// <summary>
    /// The lines that an edge at the front is asked about by <see cref="EndCuts"/>: as <see cref="Lines"/>, up to the head there, rising, one more than the courses that have an end there. Courses that
    /// run out under the head before are left out, and so are such of less than 1 mm there.
    /// </summary>
    public IReadOnlyList<Length> LinesAtFront { get; }

    /// <summary>The lines that an edge at the rear is asked about by <see cref="EndCuts"/>, as <see cref="LinesAtFront"/>.</summary>
    public IReadOnlyList<Length> LinesAtRear { get; }

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

    /// <summary>What is to be jointed, for <see cref="JointJob"/>: each course from end to end, or in parts where openings take all of its width.</summary>
    /// <param name="oneEnd">The end cuts where the courses meet an edge, its offsets being u: there the runs end at the long points. Null where they end with the face.</param>
    /// <param name="otherEnd">The same at the other end of the face.</param>
    /// <returns>
    /// The runs from the foot up, then from the front. The lowest course is 1; each is called by its number, with a letter from the front where there are several: 4A, 4B. Each says what it starts and ends at,
    /// <see cref="JointRun.StartsAt"/> and <see cref="JointRun.EndsAt"/>. It ends at the long point of what openings and head leave of the course there; a course that runs out under the head ends where the head
    /// crosses its lower line. A part that lies beyond an edge is left out. No gap is taken off at the ends: <see cref="JointJob.EndGap"/> says how much is to be left there.
    /// </returns>
    /// <exception cref="ArgumentException">The end cuts are not those between the lines of this plan at their end, <see cref="LinesAtFront"/> or <see cref="LinesAtRear"/>; or both are of one end.</exception>
    /// <example><code>
    /// CoursePlan courses = CourseLayout.LayOut(new CourseFace(Mm(3400), Mm(356), BoardCover.TongueAndGroove(Mm(97), Mm(9), Mm(1)))
    /// {
    ///     Openings = [new FaceOpening(Mm(500), Mm(1400), Mm(60), Mm(300))],
    ///     Rule = CourseRule.WholeAtFoot,
    /// });
    /// MeasuredEdge rear = EdgeCurve.Straight(new(Mm(0), Mm(3400)), new(Mm(356), Mm(3364.4)));
    /// EndCutSchedule ends = EndCuts.Schedule(new EndCutJob(rear, courses.LinesAtRear, datum: Mm(0)));
    /// IReadOnlyList&lt;JointRun&gt; runs = courses.Runs(ends);  // 1: 0 to 3400; 2A: 0 to 500, 2B: 1400 to 3391.1; 3A, 3B; 4
    /// Angle saw = runs[2].EndsAt!.Cut!.SawAngle;          // -5.711 degrees: 2B ends at the edge, its long point below
    /// bool isJamb = runs[1].EndsAt!.Kind == RunEndKind.Opening; // 2A at the window
    /// </code></example>
    public IReadOnlyList<JointRun> Runs(EndCutSchedule? oneEnd = null, EndCutSchedule? otherEnd = null)
    {
        RequireLines(oneEnd, nameof(oneEnd));
        RequireLines(otherEnd, nameof(otherEnd));
        if (oneEnd is not null && otherEnd is not null && oneEnd.IsEdgeAtRear == otherEnd.IsEdgeAtRear)
        {
            string end = oneEnd.IsEdgeAtRear ? "rear" : "front";
            throw new InputProblem(nameof(otherEnd), $"end cuts at the {end}", $"end cuts at the other end, as those of {nameof(oneEnd)} are at the {end} (a datum on the far side of the edge makes it the other end)", isRange: false).ToException();
        }

        CourseEdge? one = oneEnd is null ? null : new CourseEdge(oneEnd), other = otherEnd is null ? null : new CourseEdge(otherEnd);
        bool isOneAtRear = one?.IsAtRear ?? !(other?.IsAtRear ?? false);
        return [.. new CourseRuns(this, _numbers, isOneAtRear ? other : one, isOneAtRear ? one : other).All()];
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

    /// <summary>The last line is the head; lower edges less than a course below it have no line of their own.</summary>
    private static IReadOnlyList<Length> LinesUnder(List<BoardCourse> courses, long head)
    {
        List<Length> lines = [courses[0].LowerLine];
        for (int i = 1; i < courses.Count && head - courses[i].Lower >= Grid.Nanometres(EndCuts.LeastCourse); i++)
        {
            lines.Add(courses[i].LowerLine);
        }

        lines.Add(Door.Millimetres(Grid.Millimetres(head)));
        return [.. lines];
    }

    private void RequireLines(EndCutSchedule? ends, string parameter)
    {
        if (ends is null)
        {
            return;
        }

        (IReadOnlyList<Length> lines, string name, string end) = ends.IsEdgeAtRear ? (LinesAtRear, nameof(LinesAtRear), "rear") : (LinesAtFront, nameof(LinesAtFront), "front");
        bool isSame = ends.Lines.Count == lines.Count;
        for (int i = 0; isSame && i < lines.Count; i++)
        {
            isSame = ends.Lines[i] == Door.Millimetres(lines[i]);
        }

        if (!isSame)
        {
            throw new InputProblem(
                parameter,
                $"{Print.Number(ends.Courses.Count)} courses from {Print.Number(ends.Lines[0])} to {Print.Mm(ends.Lines[ends.Lines.Count - 1])} at the {end}",
                $"end cuts between this plan's {name}, of the {Print.Number(lines.Count - 1)} courses from {Print.Number(Door.Millimetres(lines[0]))} to {Print.Mm(Door.Millimetres(lines[lines.Count - 1]))} that have an end there",
                isRange: false).ToException();
        }
    }
}
