using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>A job of jointing in whole nanometres.</summary>
internal sealed class JointNumbers
{
    private const double LongestRun = 20_000;

    private static readonly Allowed s_place = new(-100_000, 100_000, "mm");
    private static readonly Allowed s_piece = new(1, LongestRun, "mm");
    private static readonly Allowed s_gap = new(0, 100, "mm");
    private static readonly Allowed s_course = new(0, 10_000, string.Empty);
    private static readonly Allowed s_stagger = new(0, 20, string.Empty);
    private static readonly Allowed s_effort = new(1000, 2_000_000_000, string.Empty);

    private JointNumbers(JointJob job, CuttingNumbers cutting, (int Course, long Start, long End)[] all, double shortest)
    {
        Cutting = cutting;
        Stagger = job.Stagger ?? JointDefaults.Stagger;
        Shortest = Grid.Nanometres(shortest);
        Effort = job.Effort ?? JointDefaults.Effort;
        Strips = new long[job.Strips.Count];
        for (int i = 0; i < Strips.Length; i++)
        {
            Strips[i] = Grid.Nanometres(Door.Millimetres(job.Strips[i]));
        }

        List<int> boarded = [], bare = [];
        for (int i = 0; i < all.Length; i++)
        {
            (IsBare(all[i]) ? bare : boarded).Add(i);
        }

        JobRuns = [.. boarded];
        Bare = [.. bare];
        Runs = new (int, long, long)[JobRuns.Length];
        for (int i = 0; i < Runs.Length; i++)
        {
            Runs[i] = all[JobRuns[i]];
        }

        Order = Sorted(Runs);
        foreach (BoardKind board in cutting.Boards)
        {
            int count = board.Available / board.Pack;
            Longest = Math.Max(Longest, count > 0 ? board.Usable : 0);
        }
    }

    /// <summary>What boards fill: without the gaps at the ends, and without the runs that take no board.</summary>
    internal (int Course, long Start, long End)[] Runs { get; }

    /// <summary>Which of the job's runs each of them is.</summary>
    internal int[] JobRuns { get; }

    /// <summary>Those of the job's runs that their gaps leave less than a piece of.</summary>
    internal int[] Bare { get; }

    /// <summary>The runs by course, then by start.</summary>
    internal int[] Order { get; }

    internal long[] Strips { get; }

    internal int Stagger { get; }

    internal long Shortest { get; }

    internal int Effort { get; }

    internal CuttingNumbers Cutting { get; }

    /// <summary>Usable length of the longest board there is; 0 where there is none.</summary>
    internal long Longest { get; }

    /// <summary>Null where there is a problem.</summary>
    internal static JointNumbers? Read(JointJob job, string path, List<InputProblem>? problems)
    {
        if (Door.IsMissing(job, new Name(path), "a job", problems))
        {
            return null;
        }

        int before = problems?.Count ?? 0;
        double gap = Door.Millimetres(job.EndGap, new Name(path + ".EndGap"), s_gap, problems);
        (int, long, long)[] runs = ReadRuns(job, gap, path, problems);
        ReadStrips(job, path, problems);

        // Boards, offcuts and the saw as for any cutting, under this job's own names.
        CuttingJob cut = new([new BoardPart(Door.Millimetres(100), 1)], job.Stock) { Offcuts = job.Offcuts, Kerf = job.Kerf, EndTrim = job.EndTrim, LeastOffcut = job.LeastOffcut };
        CuttingNumbers? cutting = CuttingNumbers.Read(cut, path, problems);

        // The effort is not: jointing shares it between two searches and asks for more.
        if (job.Effort is { } effort)
        {
            Door.Number(effort, path + ".Effort", s_effort, problems);
        }

        if (job.Stagger is { } stagger)
        {
            Door.Number(stagger, path + ".Stagger", s_stagger, problems);
        }

        double shortest = job.ShortestPiece is { } own ? Door.Millimetres(own, new Name(path + ".ShortestPiece"), s_piece, problems) : JointDefaults.ShortestPiece;
        return (problems?.Count ?? 0) > before ? null : new JointNumbers(job, cutting!, runs, shortest);
    }

    /// <summary>Without the gaps at the ends.</summary>
    private static (int Course, long Start, long End)[] ReadRuns(JointJob job, double endGap, string path, List<InputProblem>? problems)
    {
        string name = path + ".Runs";
        if (IsNoList(job.Runs, name, 1, BoardJoints.MostRuns, "1 to 200 runs", " runs", problems))
        {
            return [];
        }

        // A gap that is refused takes nothing off, so that the runs are not refused for it.
        long gap = double.IsNaN(endGap) ? 0 : Grid.Nanometres(endGap);

        (int, long, long)[] runs = new (int, long, long)[job.Runs.Count];
        bool isGood = true;
        for (int i = 0; i < runs.Length; i++)
        {
            JointRun run = job.Runs[i];
            Name at = new(name, i);
            if (Door.IsMissing(run, at, "a run", problems))
            {
                isGood = false;
                continue;
            }

            double course = Door.Number(run.Course, at.Then(".Course"), s_course, problems);
            double start = Door.Millimetres(run.Start, at.Then(".Start"), s_place, problems);
            double end = Door.Millimetres(run.End, at.Then(".End"), s_place, problems);
            if (run.Name is { Length: > BoardJoints.LongestName } text)
            {
                Door.Report(new InputProblem(at.Then(".Name").ToString(), Print.Number(text.Length) + " characters", "at most 80 characters", isRange: true), problems);
            }

            if (double.IsNaN(course + start + end))
            {
                isGood = false;
                continue;
            }

            runs[i] = (run.Course, Grid.Nanometres(start) + gap, Grid.Nanometres(end) - gap);
            if (end <= start || Grid.Millimetres(runs[i].Item3 - runs[i].Item2) > LongestRun)
            {
                isGood = false;
                ReportEnd(at, run, gap, problems);
            }
        }

        // A sliver beside a window takes no board and is said in a finding; a wall of nothing but slivers is no wall.
        if (isGood && Array.TrueForAll(runs, IsBare))
        {
            isGood = false;
            for (int i = 0; i < runs.Length; i++)
            {
                ReportEnd(new Name(name, i), job.Runs[i], gap, problems);
            }
        }

        if (!isGood)
        {
            return runs;
        }

        int[] order = Sorted(runs);
        for (int i = 1; i < order.Length; i++)
        {
            (int course, long _, long end) = runs[order[i - 1]];
            if (runs[order[i]].Item1 == course && runs[order[i]].Item2 - gap < end + gap)
            {
                Door.Report(new InputProblem(new Name(name, order[i]).Then(".Start").ToString(), Print.Number(Grid.Millimetres(runs[order[i]].Item2 - gap)) + " mm", $"{Print.Number(Grid.Millimetres(end + gap))} mm or more, where the run before it in course {Print.Number(course)} ends", isRange: true), problems);
            }
        }

        return runs;
    }

    private static bool IsBare((int Course, long Start, long End) run) => run.End - run.Start < JointRules.LeastPiece;

    private static void ReportEnd(Name at, JointRun run, long gap, List<InputProblem>? problems) =>
        Door.Report(new InputProblem(at.Then(".End").ToString(), Print.Number(Door.Millimetres(run.End)) + " mm", $"1 mm to 20 m beyond the start, which is {Print.Number(Door.Millimetres(run.Start))} mm{(gap > 0 ? $", with {Print.Number(Grid.Millimetres(gap))} mm taken off at both ends" : string.Empty)}", isRange: true), problems);

    private static void ReadStrips(JointJob job, string path, List<InputProblem>? problems)
    {
        string name = path + ".Strips";
        if (IsNoList(job.Strips, name, 0, BoardJoints.MostStrips, "at most 200 strips", " strips", problems))
        {
            return;
        }

        double before = double.NegativeInfinity;
        for (int i = 0; i < job.Strips.Count; i++)
        {
            double place = Door.Millimetres(job.Strips[i], new Name(name, i), s_place, problems);
            if (place <= before)
            {
                Door.Report(new InputProblem(new Name(name, i).ToString(), Print.Number(place) + " mm", $"beyond the strip before it, at {Print.Number(before)} mm", isRange: true), problems);
            }

            before = double.IsNaN(place) ? before : place;
        }
    }

    private static bool IsNoList<T>(IReadOnlyList<T> list, string name, int least, int most, string words, string unit, List<InputProblem>? problems)
    {
        if (Door.IsMissing(list, new Name(name), words, problems))
        {
            return true;
        }

        if (list.Count >= least && list.Count <= most)
        {
            return false;
        }

        Door.Report(new InputProblem(name, Print.Number(list.Count) + unit, words, isRange: true), problems);
        return true;
    }

    private static int[] Sorted((int Course, long Start, long End)[] runs)
    {
        int[] order = new int[runs.Length];
        for (int i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        Array.Sort(order, (left, right) => runs[left].Course != runs[right].Course ? runs[left].Course.CompareTo(runs[right].Course)
            : runs[left].Start != runs[right].Start ? runs[left].Start.CompareTo(runs[right].Start) : left.CompareTo(right));
        return order;
    }
}
