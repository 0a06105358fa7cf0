using System;
using System.Collections.Generic;
using System.Threading;

namespace FinishKit;

/// <summary>How much of a roll of cloth, foam or film to buy, and where on it the pieces lie.</summary>
public static class RollCutting
{
    internal const int MostParts = 500;
    internal const int MostPieces = 10_000;
    internal const int LongestName = 100;

    /// <summary>A layout that takes as little length of the roll as is found.</summary>
    /// <param name="job">The pieces, the roll, and whatever differs from the defaults.</param>
    /// <param name="progress">Told now and then how much of the effort is used, 0 to 1; null for nobody.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>Every piece with its place, the length taken, the length to buy, the least that any layout takes, what goes on no roll of that width, and findings.</returns>
    /// <remarks>
    /// <para>Formula: pieces lie g apart; n side by side need sum(w) + (n - 1) g of the roll's width less two selvedges. No layout is shorter than the longest piece, nor than the sum of f(w) times the length over all pieces, for every dual feasible function f of the width; f = w / W gives the area.</para>
    /// <para>Validity: rectangles laid square to the roll, cut by shears or knife, which may stop and turn anywhere.</para>
    /// <para>Source: stock-nesting (derived); stock-dual-feasible (from memory).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The job, its list or an entry is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <exception cref="OperationCanceledException">The search was cancelled; no part of a layout is returned.</exception>
    /// <example><code>
    /// RollJob job = new([new RollPart(Mm(1100), Mm(900), 2, mayTurn: false), new RollPart(Mm(700), Mm(480), 3, mayTurn: false)], Mm(1400));
    /// RollPlan plan = RollCutting.Cut(job);
    /// double length = plan.Length.Millimeters;   // 2200: the wide two one behind the other, the three others (2100) beside them, 900 + 480 across
    /// bool proven = plan.Proven;                 // true: the wide two never go side by side
    /// </code></example>
    public static RollPlan Cut(RollJob job, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        RollNumbers numbers = RollNumbers.Read(job, nameof(job), null)!;
        cancellation.ThrowIfCancellationRequested();
        CuttingEffort effort = new(numbers.Effort, progress, cancellation);
        RollPlan plan = new(job, numbers, effort);
        progress?.Report(1);
        return plan;
    }

    /// <summary>All problems with a job; nothing is thrown.</summary>
    /// <param name="job">The job.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(RollJob job)
    {
        List<InputProblem> problems = [];
        RollNumbers.Read(job, nameof(job), problems);
        return problems;
    }

    /// <summary>The one formula body: how much of the cloth is used.</summary>
    internal static double SolveUse<TTrace>(double length, double width, double pieces, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("L", length, "mm", Sources.SheetNesting, meaning: "length of the roll taken");
        trace.Given("W", width, "mm", Sources.SheetNesting, meaning: "width of the roll, selvedges included");
        trace.Given("P", pieces, "mm2", Sources.SheetNesting, meaning: "area of all pieces cut");
        double area = trace.Step("A", nameof(area), length * width, "mm2", Sources.SheetNesting);
        return trace.Step("U", "part of the cloth that is used", pieces / Math.Max(area, 1), string.Empty, Sources.SheetNesting);
    }
}
