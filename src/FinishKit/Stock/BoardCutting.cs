using System;
using System.Collections.Generic;
using System.Threading;

namespace FinishKit;

/// <summary>Which boards to buy, and what to cut from each, so that pieces of given lengths cost least.</summary>
public static class BoardCutting
{
    internal const int MostParts = 2000;
    internal const int MostPieces = 10_000;
    internal const int MostStock = 20;
    internal const int MostOffcuts = 100;
    internal const int LongestName = 100;

    /// <summary>A cutting plan of least cost; of those found one with little waste, and of these one with few set-ups.</summary>
    /// <param name="job">The pieces, the boards, and whatever differs from the defaults.</param>
    /// <param name="progress">Told now and then how much of the effort is used, 0 to 1; null for nobody.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>Every board with its pieces, what to buy, the cost, the least that any plan costs, and findings.</returns>
    /// <remarks>
    /// <para>Formula: n pieces p of one board need sum(p) + (n - 1) k of its usable length, the board less two trims (an offcut on hand is not trimmed); of a remainder a kerf is lost, and what is over is offcut, kept where it is long enough. Cost: packs bought times their price. No plan costs less than boards that hold, for every set of part values found, the value of all parts.</para>
    /// <para>Validity: straight cross cuts. The cost is proven least where <see cref="CuttingPlan.Proven"/> says so, as workshop jobs nearly always are; waste and set-ups are improved, not proven.</para>
    /// <para>Source: stock-cutting (derived); default-mitre-kerf, default-end-trim, default-least-offcut (common practice).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The job, its list or an entry is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <exception cref="OperationCanceledException">The search was cancelled; no part of a plan is returned.</exception>
    /// <example><code>
    /// CuttingJob job = new([new BoardPart(Mm(1820), 4), new BoardPart(Mm(560), 7)], [new StockBoard(Mm(2438), 9.80m)]);
    /// CuttingPlan plan = BoardCutting.Cut(job);
    /// int boards = plan.Boards.Count;      // 5: 1820 and 560 from each of four, with 22.4 over (2408 less 2380 and two kerfs); 3 x 560 from the fifth
    /// decimal cost = plan.Cost;            // 49.00, and plan.Proven: four boards do not hold 11,200 mm
    /// </code></example>
    public static CuttingPlan Cut(CuttingJob job, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        CuttingNumbers numbers = CuttingNumbers.Read(job, nameof(job), null)!;
        cancellation.ThrowIfCancellationRequested();
        CuttingEffort effort = new(numbers.Effort, progress, cancellation);
        CuttingSolution solution = CuttingSolution.Find(numbers, effort);
        progress?.Report(1);
        return new CuttingPlan(job, numbers, solution);
    }

    /// <summary>All problems with a job; nothing is thrown.</summary>
    /// <param name="job">The job.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(CuttingJob job)
    {
        List<InputProblem> problems = [];
        CuttingNumbers.Read(job, nameof(job), problems);
        return problems;
    }

    /// <summary>The one formula body: what becomes of the boards' length.</summary>
    internal static double SolveLengths<TTrace>(double boards, double trims, double pieces, double kerfs, double kept, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("B", boards, "mm", Sources.BoardCutting, meaning: "length of all boards taken");
        trace.Given("T", trims, "mm", Sources.BoardCutting, meaning: "trimmed off their ends");
        trace.Given("P", pieces, "mm", Sources.BoardCutting, meaning: "length of all pieces");
        trace.Given("K", kerfs, "mm", Sources.BoardCutting, meaning: "taken by the saw between and behind pieces");
        trace.Given("O", kept, "mm", Sources.BoardCutting, meaning: "offcuts long enough to keep");
        double scrap = trace.Step("S", nameof(scrap), boards - trims - pieces - kerfs - kept, "mm", Sources.BoardCutting);
        return trace.Step("W", "waste", trims + kerfs + scrap, "mm", Sources.BoardCutting);
    }
}
