using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.Linq;
using System.Runtime.InteropServices;
using System.Threading;
using FinishKit.Tests.Stock;
using Google.OrTools.Sat;

namespace FinishKit.Benchmarks.Cutting;

/// <summary>
/// <see cref="BoardCutting"/> beside a general solver in one run, printed as the tables of docs/benchmarks.md. A stopwatch serves: what is
/// compared lies a factor of tens and more apart, and the solver takes seconds. Warm; the best of several runs of either.
/// </summary>
internal static class CuttingComparison
{
    private const int MostRuns = 7;
    private const double RunsWithin = 0.3;
    private const string LastOfSix = "1d-schwerin";

    private static readonly (string Set, string Published)[] s_classic =
    [
        ("1d-falkenauer-u", "100 %"), ("1d-falkenauer-t", "100 %"), ("1d-scholl-1", "93 % (1-3)"), ("1d-scholl-2", "93 % (1-3)"),
        ("1d-scholl-3", "93 % (1-3)"), (LastOfSix, "100 %"), ("1d-hard28", "86 %"), ("1d-waescher", "18 %"),
    ];

    /// <summary>Arguments: seconds the general solver has at most (10), instances of each classic set it gets (3; 0: none), "rows" for every instance, "symmetry" for van-sized jobs with the solver's own breaking of symmetries.</summary>
    internal static void Run(string[] args)
    {
        double limit = args.Length > 0 ? double.Parse(args[0], CultureInfo.InvariantCulture) : 10;
        int sample = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 3;
        bool rows = args.Contains("rows"), keepsStart = !args.Contains("symmetry");
        Stopwatch all = Stopwatch.StartNew();
        Line($"FinishKit {typeof(BoardCutting).Assembly.GetName().Version}, OR-Tools {typeof(CpModel).Assembly.GetName().Version}, {RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} processors; general solver: one thread, {limit} s at most.");
        IReadOnlyList<PackingInstance> van = PackingSets.Van();
        WarmUp(van);
        Van(van, limit, keepsStart, rows);
        if (PackingSets.Folder() is { } folder)
        {
            Classic(folder, limit, sample, rows);
        }
        else
        {
            Line($"{Environment.NewLine}{PackingSets.Missing}");
        }

        Line($"{Environment.NewLine}Whole run: {all.Elapsed.TotalMinutes:0.0} min.");
    }

    /// <summary>Until the code is compiled as it will stay, and the native library is loaded.</summary>
    private static void WarmUp(IReadOnlyList<PackingInstance> van)
    {
        Stopwatch watch = Stopwatch.StartNew();
        do
        {
            foreach (PackingInstance instance in van)
            {
                BoardCutting.Cut(instance.Job());
            }

            // On one core the compiler gets to work only while nothing else does.
            Thread.Sleep(100);
        }
        while (watch.Elapsed.TotalSeconds < 20);

        new GeneralSolver(van[0]).Solve(1, null, true);
    }

    private static void Van(IReadOnlyList<PackingInstance> instances, double limit, bool keepsStart, bool rows)
    {
        List<Pair> pairs = [];
        foreach (PackingInstance instance in instances)
        {
            (CuttingPlan plan, double own) = Measure(instance);
            GeneralSolver general = new(instance);
            (bool reached, long? cost, double theirs) = Reach(general, limit, (long)plan.Cost, keepsStart);
            pairs.Add(new Pair(instance, plan, own, ToCost(instance, plan.Cost), general.FirstFitCost, cost, reached, theirs));
            if (cost < plan.Cost)
            {
                Line($"{instance.Name}: the general solver found {cost}, FinishKit {plan.Cost}.");
            }
        }

        Line($"""

            Van-sized jobs. FinishKit: all of `BoardCutting.Cut`, proof and tidying included, and with the least effort (a power of 4 of nodes) that reaches the cost. CP-SAT: until it reaches the cost.

            | jobs | number | as good as listed | better | proven | with proof, median ms | worst ms | to the cost, median ms | worst ms | CP-SAT median ms | CP-SAT worst ms | not reached in {limit:0} s | ratio of times to the cost, median | least | ratio with the proof, median | least |
            |---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|
            """);
        Group("one length, first fit is best", pairs.Where(static pair => !pair.Instance.IsMixed && pair.FirstFit == pair.Plan.Cost));
        Group("one length, first fit is not best", pairs.Where(static pair => !pair.Instance.IsMixed && pair.FirstFit > pair.Plan.Cost));
        Group("three priced lengths, first fit is best", pairs.Where(static pair => pair.Instance.IsMixed && pair.FirstFit == pair.Plan.Cost));
        Group("three priced lengths, first fit is not best", pairs.Where(static pair => pair.Instance.IsMixed && pair.FirstFit > pair.Plan.Cost));
        Group("all", pairs);
        string[] open = [.. pairs.Where(static pair => !pair.Plan.Proven).Select(static pair => string.Create(CultureInfo.InvariantCulture, $"{pair.Instance.Name} ({pair.Plan.Cost}, {pair.Plan.LeastCost} at least)"))];
        string[] better = [.. pairs.Where(static pair => pair.Plan.Cost < pair.Instance.Best).Select(static pair => string.Create(CultureInfo.InvariantCulture, $"{pair.Instance.Name} ({pair.Plan.Cost}, {pair.Instance.Best} listed)"))];
        Line($"""

            - Times to the cost: at least 100 times faster on {pairs.Count(static pair => pair.Ratio >= 100)} of {pairs.Count}; below that: {pairs.Count(static pair => pair.Ratio < 100 && pair.FirstFit == pair.Plan.Cost)} where first fit is best, {pairs.Count(static pair => pair.Ratio < 100 && pair.FirstFit > pair.Plan.Cost)} where it is not. Where first fit is not best, the least ratio is {pairs.Where(static pair => pair.FirstFit > pair.Plan.Cost).Min(static pair => pair.Ratio):0.0}.
            - Not proven: {(open.Length == 0 ? "none" : string.Join(", ", open))}. Better than listed: {(better.Length == 0 ? "none" : string.Join(", ", better))}.
            """);
        if (rows)
        {
            Line($"{Environment.NewLine}| job | pieces | cost | listed | least | nodes | ms | first fit | CP-SAT | CP-SAT ms | ratio |{Environment.NewLine}|---|---|---|---|---|---|---|---|---|---|---|");
            foreach (Pair pair in pairs)
            {
                Line($"| {pair.Instance.Name} | {pair.Instance.Pieces} | {pair.Plan.Cost} | {pair.Instance.Best} | {pair.Plan.LeastCost} | {pair.Plan.Nodes} | {pair.Own * 1e3:0.000} | {pair.FirstFit} | {pair.Cost} | {pair.Theirs * 1e3:0.0} | {pair.Ratio:0} |");
            }
        }
    }

    private static void Group(string name, IEnumerable<Pair> group)
    {
        List<Pair> pairs = [.. group];
        if (pairs.Count == 0)
        {
            return;
        }

        // Where the general solver did not get there its time, and so the ratio, is the limit: in truth it is more.
        Line($"| {name} | {pairs.Count} | {pairs.Count(static pair => pair.Plan.Cost <= pair.Instance.Best)} | {pairs.Count(static pair => pair.Plan.Cost < pair.Instance.Best)} | {pairs.Count(static pair => pair.Plan.Proven)} | {Median(pairs, static pair => pair.Own) * 1e3:0.00} | {pairs.Max(static pair => pair.Own) * 1e3:0.0} | {Median(pairs, static pair => pair.ToCost) * 1e3:0.00} | {pairs.Max(static pair => pair.ToCost) * 1e3:0.0} | {Median(pairs, static pair => pair.Theirs) * 1e3:0} | {pairs.Max(static pair => pair.Theirs) * 1e3:0} | {pairs.Count(static pair => !pair.IsReached)} | {Median(pairs, static pair => pair.Ratio):0} | {pairs.Min(static pair => pair.Ratio):0.0} | {Median(pairs, static pair => pair.RatioWithProof):0} | {pairs.Min(static pair => pair.RatioWithProof):0.0} |");
    }

    private static void Classic(string folder, double limit, int sample, bool rows)
    {
        List<string> table = [], each = [];
        List<(PackingInstance Instance, CuttingPlan Plan, double Seconds)> six = [];
        foreach ((string set, string published) in s_classic)
        {
            IReadOnlyList<PackingInstance> instances = PackingSets.Classic(folder, set);
            List<(PackingInstance Instance, CuttingPlan Plan, double Seconds)> own = [];
            foreach (PackingInstance instance in instances)
            {
                (CuttingPlan plan, double seconds) = Measure(instance);
                own.Add((instance, plan, seconds));
                each.Add(string.Create(CultureInfo.InvariantCulture, $"| {instance.Name} | {plan.Cost} | {instance.Best} | {plan.LeastCost} | {plan.Nodes} | {seconds * 1e3:0.00} |"));
            }

            // Evenly through the set, in its own order.
            int number = Math.Min(sample, instances.Count), optimal = 0, proven = 0, ours = 0;
            for (int i = 0; i < number; i++)
            {
                (PackingInstance instance, CuttingPlan plan, _) = own[((2 * i) + 1) * instances.Count / (2 * number)];
                (long? cost, bool isProven, _) = new GeneralSolver(instance).Solve(limit, null, false);
                optimal += cost == instance.Best ? 1 : 0;
                proven += isProven ? 1 : 0;
                ours += plan.Cost == instance.Best && plan.Proven ? 1 : 0;
            }

            string tried = number == 0 ? "- | - | - | -" : string.Create(CultureInfo.InvariantCulture, $"{number} | {ours} | {optimal} | {proven}");
            table.Add(Row(set[3..], own, tried, published));
            six.AddRange(own);
            if (set == LastOfSix)
            {
                table.Add(Row("these six together", six, "- | - | - | -", "-"));
            }
        }

        Line($"""

            Classic sets. Of each, CP-SAT got {sample} instances, {limit:0} s each, spread evenly through the set in its own order: from 0, instance i of n stands at (2i + 1) / 2n of it.

            | set | instances | optimal | proven | boards | bound | known least | nodes, median | ms, median | ms, worst | sample | proven optimal in it | CP-SAT optimal | CP-SAT proven | arc-flow, a minute, published |
            |---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|
            {string.Join(Environment.NewLine, table)}
            """);
        if (rows)
        {
            Line($"{Environment.NewLine}| instance | boards | known least | bound | nodes | ms |{Environment.NewLine}|---|---|---|---|---|---|{Environment.NewLine}{string.Join(Environment.NewLine, each)}");
        }
    }

    private static string Row(string set, List<(PackingInstance Instance, CuttingPlan Plan, double Seconds)> own, string tried, string published) => string.Create(
        CultureInfo.InvariantCulture,
        $"| {set} | {own.Count} | {own.Count(static run => run.Plan.Cost == run.Instance.Best)} | {own.Count(static run => run.Plan.Proven)} | {own.Sum(static run => run.Plan.Cost)} | {own.Sum(static run => run.Plan.LeastCost ?? 0)} | {own.Sum(static run => run.Instance.Best)} | {Median(own, static run => run.Plan.Nodes):0} | {Median(own, static run => run.Seconds) * 1e3:0.0} | {own.Max(static run => run.Seconds) * 1e3:0} | {tried} | {published} |");

    private static (CuttingPlan Plan, double Seconds) Measure(PackingInstance instance) => Measure(instance.Job());

    private static (CuttingPlan Plan, double Seconds) Measure(CuttingJob job)
    {
        CuttingPlan plan = BoardCutting.Cut(job);
        double best = double.PositiveInfinity;
        Stopwatch all = Stopwatch.StartNew();
        for (int run = 0; run < MostRuns && (run == 0 || all.Elapsed.TotalSeconds < RunsWithin); run++)
        {
            long start = Stopwatch.GetTimestamp();
            BoardCutting.Cut(job);
            best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalSeconds);
        }

        return (plan, best);
    }

    /// <summary>Time to reach the cost without proving it: with the least effort, a power of 4 of nodes, that yields it. As long as for the proof where none less does.</summary>
    private static double ToCost(PackingInstance instance, decimal cost)
    {
        for (int effort = 1; effort < 1_000_000_000; effort *= 4)
        {
            CuttingJob job = instance.Job() with { Effort = effort };
            if (BoardCutting.Cut(job).Cost == cost)
            {
                return Measure(job).Seconds;
            }
        }

        return Measure(instance).Seconds;
    }

    private static (bool IsReached, long? Cost, double Seconds) Reach(GeneralSolver general, double limit, long target, bool keepsStart)
    {
        (bool reached, long? least, double best) = (false, null, limit);
        Stopwatch all = Stopwatch.StartNew();
        for (int run = 0; run < MostRuns && (run == 0 || all.Elapsed.TotalSeconds < RunsWithin); run++)
        {
            (long? cost, _, double seconds) = general.Solve(limit, target, keepsStart);
            least = least is { } before && before < cost ? before : cost ?? least;
            if (cost <= target)
            {
                (reached, best) = (true, Math.Min(best, seconds));
            }
        }

        return (reached, least, best);
    }

    private static double Median<T>(IEnumerable<T> items, Func<T, double> value)
    {
        double[] sorted = [.. items.Select(value).Order()];
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }

    private static void Line(FormattableString text) => Console.WriteLine(FormattableString.Invariant(text));

    private sealed record Pair(PackingInstance Instance, CuttingPlan Plan, double Own, double ToCost, long FirstFit, long? Cost, bool IsReached, double Theirs)
    {
        /// <summary>Of times to reach the same cost, by either.</summary>
        internal double Ratio => Theirs / ToCost;

        /// <summary>Of the solver's time to reach the cost to FinishKit's for the whole plan, proof and tidying included.</summary>
        internal double RatioWithProof => Theirs / Own;
    }
}
