using System;
using System.Collections.Generic;
using System.Threading;

namespace FinishKit;

/// <summary>Which sheets to buy, and where on them rectangular pieces lie, so that they cost least.</summary>
public static class SheetNesting
{
    internal const int MostParts = 2000;
    internal const int MostPieces = 10_000;
    internal const int MostCorners = 100_000;
    internal const int MostStock = 20;
    internal const int MostOffcuts = 100;
    internal const int LongestName = 100;

    /// <summary>A layout of least cost as far as it is found; of those one on few sheets, with what is left over in one large piece.</summary>
    /// <param name="job">The pieces, the sheets, saw or router, and whatever differs from the defaults.</param>
    /// <param name="progress">Told now and then how much of the effort is used, 0 to 1; null for nobody.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>Every sheet with its pieces and, for a saw, its cuts in order; what to buy, the cost, the least that any layout costs, and findings.</returns>
    /// <remarks>
    /// <para>Formula: a piece of a x b takes (a + k) x (b + k) of a sheet that counts as (L - 2 t + k) x (W - 2 t + k), so that a kerf k lies between neighbours and none at the trimmed edge; an offcut on hand is not trimmed. No layout costs less than sheets that hold, for every set of piece values tried, the value of all pieces; the area is one such value, products of dual feasible functions of length and width are others.</para>
    /// <para>Validity: rectangles laid square to the sheet. A sawn layout is one that cuts from edge to edge can take apart, in any number of stages. The cost is proven least where <see cref="NestingPlan.Proven"/> says so; the bound allows for a router's layouts, so a sawn one may be the best and not proven.</para>
    /// <para>Source: stock-nesting (derived); stock-dual-feasible (from memory); default-rip-kerf, default-sheet-trim (common practice), default-least-sheet-offcut, default-small-at-the-saw (judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The job, its list or an entry is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <exception cref="OperationCanceledException">The search was cancelled; no part of a layout is returned.</exception>
    /// <example><code>
    /// NestingJob job = new([new SheetPart(Mm(1200), Mm(600), 4, mayTurn: false), new SheetPart(Mm(900), Mm(350), 3, mayTurn: true)], [new StockSheet(Mm(2440), Mm(1220), 38.00m)], SheetCutting.Sawn);
    /// NestingPlan plan = SheetNesting.Nest(job);
    /// int sheets = plan.Sheets.Count;      // 2: four of 1200 x 600 fill the first (2 x 1200 + 2.4 of 2430, 2 x 600 + 2.4 of 1210)
    /// decimal cost = plan.Cost;            // 76.00, and plan.Proven: one sheet of 2.9403 m2 does not hold 3.825 m2
    /// </code></example>
    public static NestingPlan Nest(NestingJob job, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        NestingNumbers numbers = NestingNumbers.Read(job, nameof(job), null)!;
        cancellation.ThrowIfCancellationRequested();
        CuttingEffort effort = new(numbers.Effort, progress, cancellation);
        SheetSolution solution = SheetSolution.Find(numbers, effort);
        progress?.Report(1);
        return new NestingPlan(job, numbers, solution);
    }

    /// <summary>All problems with a job; nothing is thrown.</summary>
    /// <param name="job">The job.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(NestingJob job)
    {
        List<InputProblem> problems = [];
        NestingNumbers.Read(job, nameof(job), problems);
        return problems;
    }

    /// <summary>The one formula body: what becomes of the sheets' area.</summary>
    internal static double SolveAreas<TTrace>(double sheets, double pieces, double kept, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("A", sheets, "mm2", Sources.SheetNesting, meaning: "area of all sheets taken");
        trace.Given("P", pieces, "mm2", Sources.SheetNesting, meaning: "area of all pieces");
        trace.Given("O", kept, "mm2", Sources.SheetNesting, meaning: "pieces left over that are worth keeping");
        return trace.Step("W", "waste", sheets - pieces - kept, "mm2", Sources.SheetNesting);
    }
}
