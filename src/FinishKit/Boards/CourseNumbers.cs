using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>An opening in whole nanometres.</summary>
internal readonly struct CourseOpening(long u0, long u1, long v0, long v1)
{
    internal long U0 { get; } = u0;

    internal long U1 { get; } = u1;

    internal long V0 { get; } = v0;

    internal long V1 { get; } = v1;

    internal bool Overlaps(in CourseOpening other) => U0 < other.U1 && other.U0 < U1 && V0 < other.V1 && other.V0 < V1;
}

/// <summary>A break: where, by how many degrees, whether it ends a course.</summary>
internal readonly struct CourseBreakLine(long v, double change, bool ends)
{
    internal long V { get; } = v;

    internal double Change { get; } = change;

    internal bool Ends { get; } = ends;
}

/// <summary>A face as the search sees it: whole nanometres, openings by their lower edges.</summary>
internal sealed class CourseNumbers
{
    private const double Longest = 1e5;
    private const int MostCourses = 1000;

    private static readonly Allowed s_extent = new(100, Longest, "mm");
    private static readonly Allowed s_girth = new(10, Longest, "mm");
    private static readonly Allowed s_change = new(-90, 90, "°");
    private static readonly Allowed s_limit = new(0, 90, "°");
    private static readonly Allowed s_error = new(0, 100, "mm");
    private static readonly Allowed s_least = new(0, 1000, "mm");

    internal long Length { get; private set; }

    internal long Front { get; private set; }

    internal long Middle { get; private set; }

    internal long Rear { get; private set; }

    internal long Cover { get; private set; }

    internal long Gap { get; private set; }

    /// <summary>What shows of a whole board.</summary>
    internal long Face => Cover - Gap;

    internal long Error { get; private set; }

    internal long Least { get; private set; }

    /// <summary>In degrees.</summary>
    internal double Limit { get; private set; } = BreakRule.Default;

    internal CourseOpening[] Openings { get; private set; } = [];

    internal CourseBreakLine[] Breaks { get; private set; } = [];

    /// <summary>One for each band.</summary>
    internal CourseRule[] Rules { get; private set; } = [];

    internal long LeastGirth => Math.Min(Front, Math.Min(Middle, Rear));

    internal long MostGirth => Math.Max(Front, Math.Max(Middle, Rear));

    internal bool IsTapered => LeastGirth != MostGirth;

    /// <summary>Where the girth may turn: half way along.</summary>
    internal long HalfWay => Length / 2;

    /// <summary>Null where there is a problem.</summary>
    internal static CourseNumbers? Read(CourseFace face, string path, List<InputProblem>? problems)
    {
        if (Door.IsMissing(face, new Name(path), "a face", problems))
        {
            return null;
        }

        int before = problems?.Count ?? 0;
        CourseNumbers n = new();
        double length = Door.Millimetres(face.FaceLength, path + ".FaceLength", s_extent, problems);
        double middle = Door.Millimetres(face.Girth, path + ".Girth", s_girth, problems);
        double front = face.GirthAtFront is { } atFront ? Door.Millimetres(atFront, path + ".GirthAtFront", s_girth, problems) : middle;
        double rear = face.GirthAtRear is { } atRear ? Door.Millimetres(atRear, path + ".GirthAtRear", s_girth, problems) : middle;
        bool noBoard = Door.IsMissing(face.Board, new Name(path + ".Board"), "what a board covers", problems);
        n.ReadRest(face, path, problems);
        if (noBoard || double.IsNaN(length + middle + front + rear))
        {
            return null; // what lies within the face cannot be judged
        }

        (n.Length, n.Front, n.Middle, n.Rear) = (Grid.Nanometres(length), Grid.Nanometres(front), Grid.Nanometres(middle), Grid.Nanometres(rear));
        (n.Cover, n.Gap) = (Grid.Nanometres(face.Board.CoverMm), Grid.Nanometres(face.Board.GapMm));
        if (n.Cover * MostCourses < n.MostGirth)
        {
            Door.Report(new InputProblem(path + ".Board", face.Board.ToString(), "a cover of at least a thousandth of the girth, " + Print.Number(Grid.Millimetres(n.MostGirth) / MostCourses) + " mm", isRange: true), problems);
        }

        n.Least = face.LeastCourse is null ? Math.Max(Grid.Nanometres(CourseDefaults.LeastCourse), n.Cover / 3) : n.Least;
        n.ReadOpenings(face, path, problems);
        n.ReadBreaks(face, path, problems);
        return (problems?.Count ?? 0) > before ? null : n;
    }

    /// <summary>Height of the head at a place along the van, to the nearest nanometre.</summary>
    internal long GirthAt(long u) => 2 * u <= Length
        ? Front + (long)Math.Round((decimal)(Middle - Front) * (2 * u) / Length)
        : Middle + (long)Math.Round((decimal)(Rear - Middle) * ((2 * u) - Length) / Length);

    private long LeastGirthOver(long u0, long u1)
    {
        long least = Math.Min(GirthAt(u0), GirthAt(u1));
        return u0 < HalfWay && HalfWay < u1 ? Math.Min(least, Middle) : least;
    }

    /// <summary>A list's length where it may be read.</summary>
    private static int Count<T>(IReadOnlyList<T> list, string path, string words, int most, List<InputProblem>? problems)
    {
        if (Door.IsMissing(list, new Name(path), words, problems))
        {
            return 0;
        }

        if (list.Count <= most)
        {
            return list.Count;
        }

        Door.Report(new InputProblem(path, Print.Number(list.Count) + " entries", words, isRange: true), problems);
        return 0;
    }

    private static void ReadRule(CourseRule rule, string path, List<InputProblem>? problems)
    {
        if (rule is < CourseRule.BestOffset or > CourseRule.WholeAtHead)
        {
            Door.Report(new InputProblem(path, Print.Number((int)rule), "one of BestOffset, Balanced, WholeAtFoot, WholeAtHead", isRange: true), problems);
        }
    }

    /// <summary>What does not depend on the extent of the face.</summary>
    private void ReadRest(CourseFace face, string path, List<InputProblem>? problems)
    {
        double error = face.SetOutError is { } off ? Door.Millimetres(off, path + ".SetOutError", s_error, problems) : CourseDefaults.SetOutError;
        Error = double.IsNaN(error) ? 0 : Grid.Nanometres(error);
        double least = face.LeastCourse is { } width ? Door.Millimetres(width, path + ".LeastCourse", s_least, problems) : 0;
        Least = double.IsNaN(least) ? 0 : Grid.Nanometres(least);
        Limit = face.BreakLimit is { } limit ? Door.Number(Door.Degrees(limit), path + ".BreakLimit", s_limit, problems) : BreakRule.Default;
        ReadRule(face.Rule, path + ".Rule", problems);
    }

    private void ReadOpenings(CourseFace face, string path, List<InputProblem>? problems)
    {
        string name = path + ".Openings";
        int count = Count(face.Openings, name, "at most 100 openings", CourseFace.MostParts, problems);
        Allowed u = new(0, Grid.Millimetres(Length), "mm"), v = new(0, Grid.Millimetres(MostGirth), "mm");
        List<CourseOpening> openings = new(count);
        for (int i = 0; i < count; i++)
        {
            Name at = new(name, i);
            if (FaceOpening.Read(face.Openings[i], at, u, v, problems) is not { } read)
            {
                continue;
            }

            CourseOpening box = new(Grid.Nanometres(read.U0), Grid.Nanometres(read.U1), Grid.Nanometres(read.V0), Grid.Nanometres(read.V1));
            long head = LeastGirthOver(box.U0, box.U1);
            if (box.V1 > head)
            {
                Door.Report(new InputProblem(at.Then(".ToV").ToString(), Print.Number(read.V1) + " mm", "at most the girth there, " + Print.Number(Grid.Millimetres(head)) + " mm", isRange: true), problems);
                continue;
            }

            if (openings.Exists(other => other.Overlaps(box)))
            {
                Door.Report(new InputProblem(at.ToString(), face.Openings[i].ToString(), "over no other opening", isRange: true), problems);
            }

            openings.Add(box);
        }

        openings.Sort(static (one, other) => one.V0 != other.V0 ? one.V0.CompareTo(other.V0) : one.U0.CompareTo(other.U0));
        Openings = [.. openings];
    }

    private void ReadBreaks(CourseFace face, string path, List<InputProblem>? problems)
    {
        string name = path + ".Breaks";
        int before = problems?.Count ?? 0;
        int count = Count(face.Breaks, name, "at most 100 breaks", CourseFace.MostParts, problems);
        Allowed inside = new(Allowed.OneStep, Grid.Millimetres(LeastGirth - 1), "mm", "more than 0, less than the girth where it is least, " + Print.Number(Grid.Millimetres(LeastGirth)) + " mm");
        List<CourseBreakLine> breaks = new(count);
        int ending = 0;
        for (int i = 0; i < count; i++)
        {
            Name at = new(name, i);
            FaceBreak line = face.Breaks[i];
            if (Door.IsMissing(line, at, "a break", problems))
            {
                continue;
            }

            double v = Door.Millimetres(line.V, at.Then(".V"), inside, problems);
            double change = Door.Number(Door.Degrees(line.LeanChange), at.Then(".LeanChange"), s_change, problems);
            if (double.IsNaN(v + change))
            {
                continue;
            }

            if (breaks.Count > 0 && Grid.Nanometres(v) <= breaks[breaks.Count - 1].V)
            {
                Door.Report(new InputProblem(at.Then(".V").ToString(), Print.Number(v) + " mm", "higher than the break before it, " + Print.Number(Grid.Millimetres(breaks[breaks.Count - 1].V)) + " mm", isRange: true), problems);
                continue;
            }

            bool ends = !face.RunThroughBreaks && BreakRule.IsExceeded(change, Limit);
            ending += ends ? 1 : 0;
            breaks.Add(new CourseBreakLine(Grid.Nanometres(v), change, ends));
        }

        Breaks = [.. breaks];
        ReadRules(face, path, (problems?.Count ?? 0) == before && !double.IsNaN(Limit) ? ending + 1 : null, problems);
    }

    /// <summary>Without a known number of bands only the rules themselves are read.</summary>
    private void ReadRules(CourseFace face, string path, int? bands, List<InputProblem>? problems)
    {
        string name = path + ".BandRules";
        int count = Count(face.BandRules, name, "no rule, or one for each band", CourseFace.MostParts + 1, problems);
        for (int i = 0; i < count; i++)
        {
            ReadRule(face.BandRules[i], new Name(name, i).ToString(), problems);
        }

        if (bands is not { } known)
        {
            return;
        }

        if (count > 0 && count != known)
        {
            Door.Report(new InputProblem(name, Print.Number(count) + " rules", "no rule, or one for each band: " + Print.Number(known), isRange: true), problems);
        }

        Rules = new CourseRule[known];
        for (int i = 0; i < known; i++)
        {
            Rules[i] = count == known ? face.BandRules[i] : face.Rule;
        }
    }
}
