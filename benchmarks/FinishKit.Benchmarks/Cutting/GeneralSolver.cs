using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.Linq;
using FinishKit.Tests.Stock;
using Google.OrTools.Sat;

namespace FinishKit.Benchmarks.Cutting;

/// <summary>
/// CP-SAT on the plain model: for each board how many of each part, and whether it is taken; boards of a kind are taken in order; the
/// start is the first-fit-decreasing plan. One thread. No more boards of a kind are offered than first fit decreasing takes of it for all
/// pieces that it is long enough for, or than the cost of the start pays: no best plan takes more.
/// </summary>
internal sealed class GeneralSolver
{
    private readonly CpModel _model = new();

    internal GeneralSolver(PackingInstance instance)
    {
        int[] sizes = [.. instance.Items.Select(item => item.Length + instance.Kerf)], counts = [.. instance.Items.Select(static item => item.Count)];
        int[] capacities = [.. instance.Stock.Select(board => board.Length + instance.Kerf)], prices = [.. instance.Stock.Select(static board => board.Price)];
        List<(int Kind, List<int> Parts)> start = FirstFit.Pack(sizes, counts, capacities, prices);
        FirstFitCost = start.Sum(board => (long)prices[board.Kind]);
        List<IntVar> all = [];
        List<long> costs = [];
        List<(IntVar Count, int Part)> cuts = [];
        for (int kind = 0; kind < capacities.Length; kind++)
        {
            int[] fitting = [.. counts.Select((count, part) => sizes[part] <= capacities[kind] ? count : 0)];
            List<List<int>> hints = [.. start.Where(board => board.Kind == kind).Select(static board => board.Parts)];
            int boards = Math.Max(hints.Count, (int)Math.Min(FirstFit.Pack(sizes, fitting, [capacities[kind]], [1]).Count, FirstFitCost / prices[kind]));
            BoolVar? before = null;
            for (int b = 0; b < boards; b++)
            {
                BoolVar used = _model.NewBoolVar(string.Create(CultureInfo.InvariantCulture, $"u{kind}_{b}"));
                _model.AddHint(used, b < hints.Count);
                List<IntVar> own = [];
                List<long> weights = [];
                for (int part = 0; part < sizes.Length; part++)
                {
                    int most = Math.Min(counts[part], capacities[kind] / sizes[part]);
                    if (most > 0)
                    {
                        IntVar count = _model.NewIntVar(0, most, string.Create(CultureInfo.InvariantCulture, $"x{kind}_{b}_{part}"));
                        _model.AddHint(count, b < hints.Count ? hints[b].Count(p => p == part) : 0);
                        own.Add(count);
                        weights.Add(sizes[part]);
                        cuts.Add((count, part));
                    }
                }

                _model.Add(LinearExpr.WeightedSum(own, weights) <= (capacities[kind] * (LinearExpr)used));
                if (before is not null)
                {
                    _model.AddImplication(used, before);
                }

                before = used;
                all.Add(used);
                costs.Add(prices[kind]);
            }
        }

        foreach (IGrouping<int, (IntVar Count, int Part)> part in cuts.GroupBy(static cut => cut.Part))
        {
            _model.Add(LinearExpr.Sum(part.Select(static cut => cut.Count)) == counts[part.Key]);
        }

        _model.Minimize(LinearExpr.WeightedSum(all, costs));
    }

    internal long FirstFitCost { get; }

    /// <summary>
    /// Solves until it is proven, the time is up, or a plan costs no more than the target (null: none). It is not told the target: it is
    /// stopped from outside, as nobody knows the least cost beforehand. The seconds are those of the solver alone, without building the
    /// model, to the plan that reached the target.
    /// </summary>
    /// <param name="limit">Seconds at most.</param>
    /// <param name="target">The cost to reach, or null: until it is proven.</param>
    /// <param name="keepsStart">
    /// Without the solver's own breaking of symmetries, which turns the first-fit plan into one that its simplified model does not allow;
    /// it then has to find it again, and takes many times as long to a cost that the start has already.
    /// </param>
    internal (long? Cost, bool IsProven, double Seconds) Solve(double limit, long? target, bool keepsStart)
    {
        using CpSolver solver = new() { StringParameters = string.Create(CultureInfo.InvariantCulture, $"num_workers:1,max_time_in_seconds:{limit}{(keepsStart ? ",symmetry_level:0" : string.Empty)}") };
        using Watch watch = new(target);
        CpSolverStatus status = solver.Solve(_model, watch);
        bool found = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible;
        return (found ? (long)Math.Round(solver.ObjectiveValue) : null, status == CpSolverStatus.Optimal, watch.Reached ?? watch.Elapsed);
    }

    private sealed class Watch(long? target) : CpSolverSolutionCallback
    {
        private readonly Stopwatch _watch = Stopwatch.StartNew();

        internal double? Reached { get; private set; }

        internal double Elapsed => _watch.Elapsed.TotalSeconds;

        public override void OnSolutionCallback()
        {
            if (target is { } cost && ObjectiveValue() <= cost + 0.5)
            {
                Reached ??= Elapsed;
                StopSearch();
            }
        }
    }
}
