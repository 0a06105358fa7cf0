using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.Linq;
using System.Runtime.InteropServices;
using System.Threading;
using FinishKit.Tests.Stock;
using Google.OrTools.Sat;

namespace FinishKit.Benchmarks.Nesting;

/// <summary><see cref="SheetNesting"/> and <see cref="RollCutting"/> beside a general solver in one run, printed as the tables of docs/benchmarks.md. Warm; the best of several runs of either.</summary>
internal static class NestingComparison
{
    private const int MostRuns = 5;
    private const double RunsWithin = 0.3;

    /// <summary>Arguments: seconds the general solver has at most (10), effort for each classic instance (50,000,000; 0: none), "rows" for every instance, "symmetry" for the solver's own breaking of symmetries.</summary>
    internal static void Run(string[] args)
    {
        double limit = args.Length > 0 ? double.Parse(args[0], CultureInfo.InvariantCulture) : 10;
        int effort = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 50_000_000;
        bool rows = args.Contains("rows"), keepsStart = !args.Contains("symmetry");
        Stopwatch all = Stopwatch.StartNew();
        Line($"FinishKit {typeof(SheetNesting).Assembly.GetName().Version}, OR-Tools {typeof(CpModel).Assembly.GetName().Version}, {RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} processors; general solver: one thread, {limit} s at most.");
        IReadOnlyList<NestingInstance> van = NestingSets.Van();
        WarmUp(van);
        Van(van, limit, rows, keepsStart);
        if (PackingSets.Folder() is { } folder && effort > 0)
        {
            Classic(folder, effort);
        }

        Line($"{Environment.NewLine}Whole run: {all.Elapsed.TotalMinutes:0.0} min.");
    }

    private static void WarmUp(IReadOnlyList<NestingInstance> van)
    {
        Stopwatch watch = Stopwatch.StartNew();
        do
        {
            foreach (NestingInstance instance in van)
            {
                SheetNesting.Nest(instance.Job(SheetCutting.Routed) with { Effort = 200_000 });
            }

            // On one core the compiler gets to work only while nothing else does.
            Thread.Sleep(100);
        }
        while (watch.Elapsed.TotalSeconds < 20);

        new GeneralNester([(10, 10, false)], 20, 20).Solve(1, 1);
    }

    private static void Van(IReadOnlyList<NestingInstance> instances, double limit, bool rows, bool keepsStart)
    {
        List<Pair> pairs = [];
        foreach (NestingInstance instance in instances)
        {
            (NestingPlan plan, double own) = Measure(instance.Job(SheetCutting.Routed));
            (NestingPlan bySaw, double sawnSeconds) = Measure(instance.Job(SheetCutting.Sawn));
            double toCount = ToCount(instance, plan.Sheets.Count);
            GeneralNester general = new(instance.Inflated(), instance.Length + instance.Kerf, instance.Width + instance.Kerf);
            (bool reached, int? theirs, double seconds) = Reach(general, limit, plan.Sheets.Count, keepsStart);
            pairs.Add(new Pair(instance, plan, own, toCount, bySaw, sawnSeconds, general.Start, theirs, reached, seconds));
        }

        Line($"""

            Van-sized jobs, routed. FinishKit: all of `SheetNesting.Nest`, proof included, and with the least effort (a power of 4 of steps) that reaches the count. CP-SAT: until it reaches that count.

            | jobs | number | as few as listed | fewer | proven | all, median ms | worst ms | to the count, median ms | worst ms | CP-SAT median ms | CP-SAT worst ms | not reached in {limit:0} s | ratio of times to the count, median | least | at least 100 |
            |---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|
            """);
        Group("shelves are best", pairs.Where(static pair => pair.Start == pair.Plan.Sheets.Count));
        Group("shelves are not best", pairs.Where(static pair => pair.Start > pair.Plan.Sheets.Count));
        Group("all", pairs);
        int routed = pairs.Sum(static pair => pair.Plan.Sheets.Count), sawn = pairs.Sum(static pair => pair.Sawn.Sheets.Count);
        string[] open = [.. pairs.Where(static pair => pair.Plan.LeastSheets < pair.Plan.Sheets.Count).Select(static pair => string.Create(CultureInfo.InvariantCulture, $"{pair.Instance.Name} ({pair.Plan.Sheets.Count}, {pair.Plan.LeastSheets} at least)"))];
        string[] more = [.. pairs.Where(static pair => pair.Plan.Sheets.Count > pair.Instance.Best).Select(static pair => pair.Instance.Name)];
        string[] gaps = [.. pairs.Where(static pair => pair.Sawn.Sheets.Count > pair.Plan.Sheets.Count).Select(static pair => string.Create(CultureInfo.InvariantCulture, $"{pair.Instance.Name} ({pair.Sawn.Sheets.Count} to {pair.Plan.Sheets.Count})"))];
        Line($"""

            - Routed {routed} sheets, listed {pairs.Sum(static pair => pair.Instance.Best)}; sawn {sawn}, {100.0 * (sawn - routed) / routed:0.00}% more (median {Median(pairs, static pair => pair.SawnSeconds) * 1e3:0.00} ms). More when sawn: {(gaps.Length == 0 ? "none" : string.Join(", ", gaps))}.
            - More than listed: {(more.Length == 0 ? "none" : string.Join(", ", more))}. Not proven: {(open.Length == 0 ? "none" : string.Join(", ", open))}.
            """);
        if (rows)
        {
            Line($"{Environment.NewLine}| job | pieces | sheets | listed | least | steps | ms | to the count ms | sawn | shelves | CP-SAT | CP-SAT ms | ratio |{Environment.NewLine}|---|---|---|---|---|---|---|---|---|---|---|---|---|");
            foreach (Pair pair in pairs)
            {
                Line($"| {pair.Instance.Name} | {pair.Instance.Pieces} | {pair.Plan.Sheets.Count} | {pair.Instance.Best} | {pair.Plan.LeastSheets} | {pair.Plan.Nodes} | {pair.Own * 1e3:0.00} | {pair.ToCount * 1e3:0.00} | {pair.Sawn.Sheets.Count} | {pair.Start} | {pair.Theirs} | {pair.Seconds * 1e3:0.0} | {pair.Ratio:0} |");
            }
        }
    }

    private static void Group(string name, IEnumerable<Pair> group)
    {
        List<Pair> pairs = [.. group];
        if (pairs.Count > 0)
        {
            // Where the general solver did not get there its time, and so the ratio, is the limit: in truth it is more.
            Line($"| {name} | {pairs.Count} | {pairs.Count(static pair => pair.Plan.Sheets.Count <= pair.Instance.Best)} | {pairs.Count(static pair => pair.Plan.Sheets.Count < pair.Instance.Best)} | {pairs.Count(static pair => pair.Plan.LeastSheets == pair.Plan.Sheets.Count)} | {Median(pairs, static pair => pair.Own) * 1e3:0.00} | {pairs.Max(static pair => pair.Own) * 1e3:0} | {Median(pairs, static pair => pair.ToCount) * 1e3:0.00} | {pairs.Max(static pair => pair.ToCount) * 1e3:0} | {Median(pairs, static pair => pair.Seconds) * 1e3:0} | {pairs.Max(static pair => pair.Seconds) * 1e3:0} | {pairs.Count(static pair => !pair.IsReached)} | {Median(pairs, static pair => pair.Ratio):0} | {pairs.Min(static pair => pair.Ratio):0.0} | {pairs.Count(static pair => pair.Ratio >= 100)} |");
        }
    }

    private static void Classic(string folder, int effort)
    {
        Line($"""

            Classic bin-packing classes (Berkey and Wang, Martello and Vigo), routed, {effort} steps at most. Best: best known.

            | class | instances | oriented: sheets | best | at best | proven | may turn: sheets | best | at best | proven | median ms |
            |---|---|---|---|---|---|---|---|---|---|---|
            """);
        List<(NestingInstance Instance, NestingPlan Fixed, NestingPlan Turning, double Seconds)> all = [];
        foreach (IGrouping<string, (NestingInstance Fixed, NestingInstance Turning)> group in NestingSets.BinPacking(folder).GroupBy(static pair => pair.Fixed.Name[..8]))
        {
            List<(NestingInstance Instance, NestingPlan Fixed, NestingPlan Turning, double Seconds)> own = [];
            int best = 0, bestTurning = 0, at = 0, atTurning = 0;
            foreach ((NestingInstance straight, NestingInstance turning) in group)
            {
                long start = Stopwatch.GetTimestamp();
                NestingPlan one = SheetNesting.Nest(straight.Job(SheetCutting.Routed) with { Effort = effort });
                double seconds = Stopwatch.GetElapsedTime(start).TotalSeconds;
                NestingPlan two = SheetNesting.Nest(turning.Job(SheetCutting.Routed) with { Effort = effort });
                own.Add((straight, one, two, seconds));
                (best, bestTurning) = (best + straight.Best, bestTurning + turning.Best);
                (at, atTurning) = (at + (one.Sheets.Count <= straight.Best ? 1 : 0), atTurning + (two.Sheets.Count <= turning.Best ? 1 : 0));
            }

            all.AddRange(own);
            Line($"| {group.Key} | {own.Count} | {own.Sum(static run => run.Fixed.Sheets.Count)} | {best} | {at} | {own.Count(static run => run.Fixed.LeastSheets == run.Fixed.Sheets.Count)} | {own.Sum(static run => run.Turning.Sheets.Count)} | {bestTurning} | {atTurning} | {own.Count(static run => run.Turning.LeastSheets == run.Turning.Sheets.Count)} | {Median(own, static run => run.Seconds) * 1e3:0.00} |");
        }

        Line($"""

            Strips (Hopper and Turton C, Burke), `RollCutting`, {effort} steps at most; the optimum is known by construction.

            | set | instances | oriented: mean gap % | worst | at optimum | may turn: mean gap % | worst | at optimum |
            |---|---|---|---|---|---|---|---|
            """);
        foreach (string set in new[] { "2d-strip-ht-c", "2d-strip-burke" })
        {
            List<double> straight = [], turning = [];
            foreach (StripInstance strip in NestingSets.Strips(folder, set))
            {
                straight.Add(strip.Gap(RollCutting.Cut(strip.Job(false) with { Effort = effort })));
                turning.Add(strip.Gap(RollCutting.Cut(strip.Job(true) with { Effort = effort })));
            }

            Line($"| {set[3..]} | {straight.Count} | {100 * straight.Average():0.00} | {100 * straight.Max():0.00} | {straight.Count(static gap => gap < 1e-9)} | {100 * turning.Average():0.00} | {100 * turning.Max():0.00} | {turning.Count(static gap => gap < 1e-9)} |");
        }
    }

    private static (NestingPlan Plan, double Seconds) Measure(NestingJob job)
    {
        NestingPlan plan = SheetNesting.Nest(job);
        double best = double.PositiveInfinity;
        Stopwatch all = Stopwatch.StartNew();
        for (int run = 0; run < MostRuns && (run == 0 || all.Elapsed.TotalSeconds < RunsWithin); run++)
        {
            long start = Stopwatch.GetTimestamp();
            SheetNesting.Nest(job);
            best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalSeconds);
        }

        return (plan, best);
    }

    /// <summary>Time to reach the count without proving it: with the least effort, a power of 4 of steps, that yields it.</summary>
    private static double ToCount(NestingInstance instance, int sheets)
    {
        for (int effort = 1; effort < 1_000_000_000; effort *= 4)
        {
            NestingJob job = instance.Job(SheetCutting.Routed) with { Effort = effort };
            if (SheetNesting.Nest(job).Sheets.Count == sheets)
            {
                return Measure(job).Seconds;
            }
        }

        return Measure(instance.Job(SheetCutting.Routed)).Seconds;
    }

    private static (bool IsReached, int? Sheets, double Seconds) Reach(GeneralNester general, double limit, int target, bool keepsStart)
    {
        (bool reached, int? least, double best) = (false, null, limit);
        Stopwatch all = Stopwatch.StartNew();
        for (int run = 0; run < MostRuns && (run == 0 || all.Elapsed.TotalSeconds < RunsWithin); run++)
        {
            (int? sheets, _, double seconds) = general.Solve(limit, target, keepsStart);
            least = least is { } before && before < sheets ? before : sheets ?? least;
            if (sheets <= target)
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

    private sealed record Pair(NestingInstance Instance, NestingPlan Plan, double Own, double ToCount, NestingPlan Sawn, double SawnSeconds, int Start, int? Theirs, bool IsReached, double Seconds)
    {
        internal double Ratio => Seconds / ToCount;
    }
}
