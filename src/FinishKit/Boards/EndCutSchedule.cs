using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>The end cut of every course that meets an edge: what <see cref="EndCuts"/> answers.</summary>
public sealed class EndCutSchedule
{
    private readonly EndCutPlaces _places;

    internal EndCutSchedule(EndCutJob job, EndCutPlaces places)
    {
        Job = job;
        _places = places;
        int count = places.Lines.Length - 1;
        List<EndCut> cuts = new(count);
        for (int i = 1; i <= count; i++)
        {
            EndCutPlace place = new(job.Edge, places, job.Order == FittingOrder.FromTop ? count + 1 - i : i);
            cuts.Add(new EndCut(place, EndCuts.Solve(place, default(Silent)), i == 1 ? null : cuts[i - 2], places.Tolerance));
        }

        Courses = [.. cuts];
        Findings = Finding.GravestFirst(Find());
    }

    /// <summary>What was asked.</summary>
    public EndCutJob Job { get; }

    /// <summary>The cut of every course, in the order of fitting.</summary>
    public IReadOnlyList<EndCut> Courses { get; }

    /// <summary>Whether the edge is at the rear of the boards; else it is at their front.</summary>
    public bool IsEdgeAtRear => _places.IsAtRear;

    /// <summary>How much gap or wood in the way a straight cut may leave.</summary>
    public Length ScribeTolerance => Door.Millimetres(_places.Tolerance);

    /// <summary>What a person should know, those of the edge too, gravest first.</summary>
    /// <remarks>Codes: <c>boards-end-crosses-datum</c>, <c>boards-end-runs-out</c>, <c>boards-end-scribe</c>, <c>boards-end-saw-angle</c>, <c>boards-look-behind</c>, and those of <see cref="MeasuredEdge.Findings"/>.</remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem => Findings.Count > 0 && Findings[0].Severity >= Severity.Problem;

    /// <summary>The defaults taken because the caller gave no figure of their own, those of the edge too.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed => Job.ScribeTolerance is null
        ? [new DefaultUsed(new Figure("scribe-tolerance", _places.Tolerance, "mm"), EndCutDefaults.Tolerance), .. Job.Edge.DefaultsUsed]
        : Job.Edge.DefaultsUsed;

    /// <summary>The lines between which the courses lie, in millimetres.</summary>
    internal IReadOnlyList<double> Lines => _places.Lines;

    /// <summary>How the cut of every course follows, in the order of fitting, step by step.</summary>
    /// <returns>The workings; symbols carry the number of the course.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        foreach (EndCut cut in Courses)
        {
            EndCuts.Solve(cut.Place, recorder);
        }

        return recorder.ToWorkings($"End cuts of {Print.Number(Courses.Count)} courses");
    }

    /// <summary>The schedule as flat figures; each course has its own.</summary>
    /// <returns>Number of courses, how many need a scribe, least and greatest saw angle, greatest change from course to course (absent for one course), longest long point of a board, shortest short point of a visible face, greatest gap and wood in the way, tolerance.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        double least = double.PositiveInfinity, most = double.NegativeInfinity, change = 0, longest = double.NegativeInfinity, shortest = double.PositiveInfinity;
        foreach (EndCut cut in Courses)
        {
            double angle = Door.Degrees(cut.SawAngle);
            least = Math.Min(least, angle);
            most = Math.Max(most, angle);
            change = Math.Max(change, cut.Change is { } step ? Math.Abs(Door.Degrees(step)) : 0);
            longest = Math.Max(longest, Door.Millimetres(cut.BoardLongPoint));
            shortest = Math.Min(shortest, Door.Millimetres(cut.ShortPoint));
        }

        List<Figure> figures =
        [
            new("courses", Courses.Count, string.Empty), new("courses-to-scribe", ToScribe(), string.Empty),
            new("least-saw-angle", least, "deg"), new("greatest-saw-angle", most, "deg"),
        ];
        if (Courses.Count > 1)
        {
            figures.Add(new Figure("greatest-change", change, "deg"));
        }

        figures.Add(new Figure("longest-board", longest, "mm"));
        figures.Add(new Figure("shortest-short-point", shortest, "mm"));
        figures.Add(new Figure("greatest-gap-left", Worst(static cut => cut.Gap).Gap, "mm"));
        figures.Add(new Figure("greatest-wood-in-the-way", Worst(static cut => cut.Wood).Wood, "mm"));
        figures.Add(new Figure("scribe-tolerance", _places.Tolerance, "mm"));
        return figures;
    }

    /// <summary>Every course on a line, in the order of fitting, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        List<string> lines = new(Courses.Count);
        foreach (EndCut cut in Courses)
        {
            lines.Add(cut.ToString());
        }

        return string.Join("\n", lines);
    }

    private int ToScribe()
    {
        int count = 0;
        foreach (EndCut cut in Courses)
        {
            count += cut.NeedsScribe ? 1 : 0;
        }

        return count;
    }

    /// <summary>The course where a size is greatest; the first of equals.</summary>
    private EndCut Worst(Func<EndCut, double> size)
    {
        EndCut worst = Courses[0];
        foreach (EndCut cut in Courses)
        {
            worst = size(cut) > size(worst) ? cut : worst;
        }

        return worst;
    }

    private List<Finding> Find()
    {
        List<Finding> findings = [];
        EndCut shortest = Worst(static cut => -Door.Millimetres(cut.BoardShortPoint));
        if (Door.Millimetres(shortest.BoardShortPoint) <= 0)
        {
            findings.Add(new Finding(
                "boards-end-runs-out",
                Severity.Problem,
                $"The cut of course {Print.Number(shortest.Course)} runs out past the square end before it has crossed the board: over what is hidden beyond the upper line its short point would be {Print.Mm(Door.Millimetres(shortest.BoardShortPoint))}.",
                [new("course", shortest.Course, string.Empty), new("board-short-point", Door.Millimetres(shortest.BoardShortPoint), "mm")],
                EndCutDefaults.EndCut));
        }

        EndCut crossed = Worst(static cut => -cut.Place.LeastLength);
        double left = Grid.Snap(crossed.Place.LeastLength), height = Grid.Snap(crossed.Place.LeastAt);
        if (left <= 0)
        {
            findings.Add(new Finding(
                "boards-end-crosses-datum",
                Severity.Problem,
                $"Between the lines of course {Print.Number(crossed.Course)} the edge comes up to the datum: at {Print.Mm(height)} it lies {Print.Mm(-left)} past it, and no board is left there. Move the datum, or measure that part of the edge again.",
                [new("course", crossed.Course, string.Empty), new("height", height, "mm"), new("length", left, "mm")],
                EndCutDefaults.EndCut));
        }

        AddScribe(findings);
        EndCut steepest = Worst(static cut => Math.Abs(Door.Degrees(cut.SawAngle)));
        double steep = Door.Degrees(steepest.SawAngle);
        if (Math.Abs(steep) > CutDefaults.SawTurns + 1e-9)
        {
            findings.Add(new Finding(
                "boards-end-saw-angle",
                Severity.Caution,
                $"The cut of course {Print.Number(steepest.Course)} is {Print.Round(Math.Abs(steep), 2)}° from square, more than the {Print.Number(CutDefaults.SawTurns)}° that a mitre saw usually turns.",
                [new("course", steepest.Course, string.Empty), new("saw-angle", steep, "deg"), new("saw-angle-limit", CutDefaults.SawTurns, "deg")],
                CutDefaults.SawReach));
        }

        findings.Add(LookBehind.Note);
        findings.AddRange(Job.Edge.Findings);
        return findings;
    }

    private void AddScribe(List<Finding> findings)
    {
        int scribed = ToScribe(), served = 0;
        if (scribed == 0)
        {
            return;
        }

        foreach (EndCut cut in Courses)
        {
            served += cut.ServesSetBack ? 1 : 0;
        }

        EndCut gap = Worst(static cut => cut.Gap), wood = Worst(static cut => cut.Wood);
        List<string> left = [];
        List<Figure> values = [new("courses-to-scribe", scribed, string.Empty), new("courses-served-by-set-back", served, string.Empty), new("scribe-tolerance", _places.Tolerance, "mm")];
        if (gap.Gap > 0)
        {
            left.Add($"a gap of up to {Print.Mm(gap.Gap)} (course {Print.Number(gap.Course)})");
            values.Add(new Figure("greatest-gap-left", gap.Gap, "mm"));
            values.Add(new Figure("course-of-greatest-gap", gap.Course, string.Empty));
        }

        if (wood.Wood > 0)
        {
            left.Add($"up to {Print.Mm(wood.Wood)} of wood in the way (course {Print.Number(wood.Course)})");
            values.Add(new Figure("greatest-wood-in-the-way", wood.Wood, "mm"));
            values.Add(new Figure("course-of-most-wood", wood.Course, string.Empty));
        }

        string remedy = served == 0 ? "Scribe them, or cover the ends with a trim." : $"Scribe them, or cover the ends with a trim; {Print.Number(served)} of them serve with the straight cut moved as its set-back says.";
        findings.Add(new Finding(
            "boards-end-scribe",
            Severity.Caution,
            $"A straight cut does not serve on {Print.Number(scribed)} of {Print.Number(Courses.Count)} courses: it leaves {string.Join(" and ", left)}; {Print.Mm(_places.Tolerance)} is allowed. {remedy}",
            [.. values],
            Job.ScribeTolerance is null ? EndCutDefaults.Tolerance : Sources.Given));
    }
}
