using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.Linq;
using Google.OrTools.Sat;

namespace FinishKit.Benchmarks.Nesting;

/// <summary>
/// CP-SAT on the plain model of rectangles on sheets of one size: for each rectangle its place, whether it is turned and its sheet; on
/// each sheet no overlap in two dimensions, and no more area than it has; sheets are taken in order, and rectangle i lies on one of the
/// first i. The start is <see cref="Shelves"/>, whose sheets are all that are offered. One thread.
/// </summary>
internal sealed class GeneralNester
{
    private readonly CpModel _model = new();

    internal GeneralNester(IReadOnlyList<(long W, long H, bool Turns)> items, long width, long height)
    {
        List<(int Sheet, long X, long Y, bool Turned)> start = Shelves.Pack(items, width, height);
        Start = start.Max(static place => place.Sheet) + 1;

        // Numbered so that the start keeps the order: rectangles by their sheet.
        int[] order = [.. Enumerable.Range(0, items.Count).OrderBy(i => start[i].Sheet)];
        BoolVar[] used = [.. Enumerable.Range(0, Start).Select(sheet => _model.NewBoolVar(string.Create(CultureInfo.InvariantCulture, $"u{sheet}")))];
        NoOverlap2dConstraint[] apart = [.. used.Select(_ => _model.AddNoOverlap2D())];
        List<IntVar>[] on = [.. used.Select(static _ => new List<IntVar>())];
        List<long>[] areas = [.. used.Select(static _ => new List<long>())];
        for (int n = 0; n < order.Length; n++)
        {
            (long w, long h, bool turns) = items[order[n]];
            (int sheet, long x, long y, bool isTurned) = start[order[n]];
            bool straight = w <= width && h <= height, either = turns && straight && h <= width && w <= height && w != h;
            string name = n.ToString(CultureInfo.InvariantCulture);
            IntVar left = _model.NewIntVar(0, width, "x" + name), right = _model.NewIntVar(0, width, "a" + name);
            IntVar bottom = _model.NewIntVar(0, height, "y" + name), top = _model.NewIntVar(0, height, "b" + name);
            _model.AddHint(left, x);
            _model.AddHint(bottom, y);
            BoolVar turn = _model.NewBoolVar("t" + name);
            if (!either)
            {
                _model.Add(turn == (straight ? 0 : 1));
            }

            _model.AddHint(turn, isTurned);
            LinearExpr wide = w + ((h - w) * turn), high = h + ((w - h) * turn);
            _model.Add(right == left + wide);
            _model.Add(top == bottom + high);
            List<ILiteral> choices = [];
            for (int s = 0; s < Start && s <= n; s++)
            {
                BoolVar here = _model.NewBoolVar(string.Create(CultureInfo.InvariantCulture, $"p{n}_{s}"));
                _model.AddHint(here, s == sheet);
                _model.AddImplication(here, used[s]);
                choices.Add(here);
                on[s].Add(here);
                areas[s].Add(w * h);
                apart[s].AddRectangle(
                    _model.NewOptionalIntervalVar(left, wide, right, here, string.Create(CultureInfo.InvariantCulture, $"h{n}_{s}")),
                    _model.NewOptionalIntervalVar(bottom, high, top, here, string.Create(CultureInfo.InvariantCulture, $"v{n}_{s}")));
            }

            _model.AddExactlyOne(choices);
        }

        for (int s = 0; s < Start; s++)
        {
            _model.AddHint(used[s], 1);
            _model.Add(LinearExpr.WeightedSum(on[s], areas[s]) <= (width * height * (LinearExpr)used[s]));
            if (s > 0)
            {
                _model.AddImplication(used[s], used[s - 1]);
            }
        }

        _model.Minimize(LinearExpr.Sum(used));
    }

    /// <summary>Sheets of the start.</summary>
    internal int Start { get; }

    /// <summary>Solves until it is proven, the time is up, or a layout has no more sheets than the target. The seconds are the solver's alone, without building the model.</summary>
    internal (int? Sheets, bool IsProven, double Seconds) Solve(double limit, int target, bool keepsStart = true)
    {
        using CpSolver solver = new() { StringParameters = string.Create(CultureInfo.InvariantCulture, $"num_workers:1,max_time_in_seconds:{limit}{(keepsStart ? ",symmetry_level:0" : string.Empty)}") };
        using Watch watch = new(target);
        CpSolverStatus status = solver.Solve(_model, watch);
        bool found = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible;
        return (found ? (int)System.Math.Round(solver.ObjectiveValue) : null, status == CpSolverStatus.Optimal, watch.Reached ?? watch.Elapsed);
    }

    private sealed class Watch(int target) : CpSolverSolutionCallback
    {
        private readonly Stopwatch _watch = Stopwatch.StartNew();

        internal double? Reached { get; private set; }

        internal double Elapsed => _watch.Elapsed.TotalSeconds;

        public override void OnSolutionCallback()
        {
            if (ObjectiveValue() <= target + 0.5)
            {
                Reached ??= Elapsed;
                StopSearch();
            }
        }
    }
}
