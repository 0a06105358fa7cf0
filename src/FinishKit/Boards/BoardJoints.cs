using System;
using System.Collections.Generic;
using System.Threading;

namespace FinishKit;

/// <summary>Where courses that are longer than the boards are butted, chosen together with what is cut from which board, so that the boards cost least.</summary>
public static class BoardJoints
{
    internal const int MostRuns = 200;
    internal const int MostStrips = 200;
    internal const int MostJoints = 9;
    internal const int MostSplits = 2000;
    internal const int LongestName = 80;

    /// <summary>The joints of every course and the cutting plan of all pieces, of least cost together; of those found one with few joints.</summary>
    /// <param name="job">The courses, the strips, the boards, and whatever differs from the defaults.</param>
    /// <param name="progress">Told now and then how much of the effort is used, 0 to 1; null for nobody.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>The joints and pieces of every run, the cutting plan, the least that any choice of joints costs, and findings.</returns>
    /// <remarks>
    /// <para>Formula: a run of length a with gaps g at its ends takes boards of l = a - 2 g, which with C what can be used of the longest board ask for f = ceiling(l / C) - 1 joints at least. A run is left whole where a board is long enough, or has joints on strips so that no piece is shorter than the shortest nor longer than the longest board; joints of neighbouring courses lie on strips whose numbers differ by the stagger or more. Least cost: for any values of pieces the boards must hold the value of the cheapest choice of joints, a shortest path over the courses.</para>
    /// <para>Validity: square butts on the middle of a strip, straight courses, nine joints a run at most. A run of which the gaps at its ends leave less than 1 mm takes no board, which is a finding. The cost is proven least, over all such joints and all plans, where <see cref="JointLayout.Proven"/> says so; where a course has more than 2000 ways of being divided (fewer where there are more than ten courses) those with the fewest joints are looked at and a sample of the next, and the least cost is for all of them nevertheless.</para>
    /// <para>Source: boards-joints, stock-cutting (derived); default-joint-stagger, default-shortest-piece, default-joint-strip, default-mitre-kerf, default-end-trim, default-least-offcut (common practice).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The job, its list or an entry is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <exception cref="OperationCanceledException">The search was cancelled; no part of a layout is returned.</exception>
    /// <example><code>
    /// JointRun[] courses = [new(1, Mm(0), Mm(3600)), new(2, Mm(0), Mm(3600)), new(3, Mm(0), Mm(3600))];
    /// JointLayout wall = BoardJoints.Choose(new JointJob(courses, [Mm(600), Mm(1200), Mm(1800), Mm(2400), Mm(3000)], [new StockBoard(Mm(2438), 9.80m)]));
    /// int boards = wall.Cutting.Boards.Count;      // 5: a joint at 1200 and one at 2400 in turn, and 2 x 1200 and a kerf are 2402.8 of 2408; joints at 1800 would take 6
    /// decimal cost = wall.Cost;                    // 49.00, and wall.Proven: four boards do not hold 10,800 mm
    /// </code></example>
    public static JointLayout Choose(JointJob job, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        JointNumbers numbers = JointNumbers.Read(job, nameof(job), null)!;
        cancellation.ThrowIfCancellationRequested();
        CuttingEffort rulesEffort = new(long.MaxValue, null, cancellation);
        JointRules rules = JointRules.Find(numbers, rulesEffort);
        long? strip = rules.AreKept ? null : rules.StripToAdd(numbers, rulesEffort);
        long? board = rules.AreKept ? null : rules.BoardToBuy(numbers, rulesEffort);

        JointSearch search = new(rules.Choices, numbers.Cutting, numbers.Effort - PlanEffort(numbers), rulesEffort, progress, cancellation);
        search.Run();
        int[][] joints = new int[numbers.Runs.Length][];
        for (int c = 0; c < search.Best.Length; c++)
        {
            JointCourse course = rules.Choices.Courses[c];
            for (int i = 0; i < course.Runs.Length; i++)
            {
                joints[course.Runs[i]] = course.Splits[search.Best[c]].ByRun[i];
            }
        }

        JointedRun[] runs = Lay(job, numbers, rules, joints);
        CuttingPlan plan = BoardCutting.Cut(PartsOf(job, numbers, runs), null, cancellation);
        progress?.Report(1);
        decimal? least = rules.AreKept && plan.LeastCost is not null && plan.Uncut.Count == 0 ? Math.Min(plan.Cost, (decimal)(search.LeastCost * search.Money) / CuttingNumbers.PriceSteps) : null;
        return new JointLayout(job, numbers, rules, runs, plan, least, search.Nodes + plan.Nodes, strip, board);
    }

    /// <summary>All problems with a job; nothing is thrown.</summary>
    /// <param name="job">The job.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(JointJob job)
    {
        List<InputProblem> problems = [];
        JointNumbers.Read(job, nameof(job), problems);
        return problems;
    }

    /// <summary>The one formula body: joints that a length alone asks for.</summary>
    internal static double SolveFewest<TTrace>(double along, double gap, double usable, int joints, int run, TTrace trace)
        where TTrace : struct, ITrace
    {
        // What is the same for every run is said once, at the first.
        if (run == 1)
        {
            trace.Given("g", gap, "mm", Sources.Given, meaning: "gap left at each end");
            trace.Given("C", usable, "mm", Sources.BoardJoints, meaning: "usable length of the longest board");
        }

        trace.Given("a", along, "mm", Sources.Given, run, "length of the run from long point to long point");
        trace.Given("j", joints, string.Empty, Sources.BoardJoints, run, "joints chosen");
        double length = trace.Step("l", nameof(length), along - (2 * gap), "mm", Sources.BoardJoints, run);
        double fewest = trace.Step("f", nameof(fewest), Grid.CeilingOfRatio(length, usable) - 1, string.Empty, Sources.BoardJoints, run);
        return trace.Step("m", "moreThanLengthAsks", joints - fewest, string.Empty, Sources.BoardJoints, run);
    }

    /// <summary>The job's name for a run, else that of its course, with a number from the start where the course has several.</summary>
    internal static string NameOf(JointJob job, int run)
    {
        JointRun own = job.Runs[run];
        int before = 0, all = 0;
        for (int i = 0; i < job.Runs.Count && own.Name is null; i++)
        {
            double ahead = Door.Millimetres(own.Start) - Door.Millimetres(job.Runs[i].Start);
            bool isSame = job.Runs[i].Course == own.Course;
            all += isSame ? 1 : 0;
            before += isSame && (ahead > 0 || (ahead == 0 && i < run)) ? 1 : 0;
        }

        return own.Name ?? $"course {Print.Number(own.Course)}{(all > 1 ? ", run " + Print.Number(before + 1) : string.Empty)}";
    }

    private static JointedRun[] Lay(JointJob job, JointNumbers numbers, JointRules rules, int[][] joints)
    {
        JointedRun[] runs = new JointedRun[joints.Length];
        for (int run = 0; run < runs.Length; run++)
        {
            (int course, long start, long end) = numbers.Runs[run];
            List<ButtJoint> butts = [];
            List<long> pieces = [];
            long from = start;
            foreach (int strip in joints[run])
            {
                butts.Add(new ButtJoint(strip, numbers.Strips[strip]));
                pieces.Add(numbers.Strips[strip] - from);
                from = numbers.Strips[strip];
            }

            pieces.Add(end - from);
            runs[run] = new JointedRun(numbers.JobRuns[run], course, NameOf(job, numbers.JobRuns[run]), start, end, butts, pieces, rules.Ways[run] is { } ways ? ways.Fewest : null);
        }

        return runs;
    }

    /// <summary>What is kept for the plan.</summary>
    private static int PlanEffort(JointNumbers numbers) => Math.Max(1000, numbers.Effort / 4);

    private static CuttingJob PartsOf(JointJob job, JointNumbers numbers, JointedRun[] runs)
    {
        List<BoardPart> parts = [];
        foreach (JointedRun run in runs)
        {
            for (int i = 0; i < run.Pieces.Count; i++)
            {
                parts.Add(new BoardPart(run.Pieces[i], 1) { Name = run.Pieces.Count == 1 ? run.Name : $"{run.Name}, piece {Print.Number(i + 1)}" });
            }
        }

        return new CuttingJob(parts, job.Stock) { Offcuts = job.Offcuts, Kerf = job.Kerf, EndTrim = job.EndTrim, LeastOffcut = job.LeastOffcut, Effort = PlanEffort(numbers) };
    }
}
