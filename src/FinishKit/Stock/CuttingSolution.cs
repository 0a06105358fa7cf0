using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>The answer to a job in whole steps: patterns by size, and what could not be cut.</summary>
internal sealed class CuttingSolution
{
    private CuttingSolution(List<long> lengths, List<CuttingPattern> patterns, int[] uncut, bool[] isTooLong, long? leastCost, IReadOnlyList<PartValues> proofs, IReadOnlyList<int[]> exhausted, long nodes)
    {
        (Lengths, Patterns, Uncut, IsTooLong, LeastCost, Proofs, Exhausted, Nodes) = (lengths, patterns, uncut, isTooLong, leastCost, proofs, exhausted, nodes);
    }

    /// <summary>Each length of part that fits some board once, the greatest first.</summary>
    internal List<long> Lengths { get; }

    internal List<CuttingPattern> Patterns { get; }

    /// <summary>Pieces of each length of <see cref="Lengths"/> that no board is left for.</summary>
    internal int[] Uncut { get; }

    /// <summary>For each part of the job, whether it is longer than every board there is.</summary>
    internal bool[] IsTooLong { get; }

    /// <summary>In price steps; null where pieces are left for which there is no board.</summary>
    internal long? LeastCost { get; }

    internal IReadOnlyList<PartValues> Proofs { get; }

    internal IReadOnlyList<int[]> Exhausted { get; }

    internal long Nodes { get; }

    internal bool IsShort => Array.Exists(Uncut, static count => count > 0);

    internal static CuttingSolution Find(CuttingNumbers job, CuttingEffort effort)
    {
        long longest = 0;
        foreach (BoardKind board in job.Boards)
        {
            longest = Math.Max(longest, board.Available / board.Pack > 0 ? board.Usable : 0);
        }

        bool[] isTooLong = Array.ConvertAll(job.Parts, part => part.Length > longest);
        SortedDictionary<long, int> counts = new(Comparer<long>.Create(static (left, right) => right.CompareTo(left)));
        for (int i = 0; i < job.Parts.Length; i++)
        {
            if (!isTooLong[i])
            {
                counts.TryGetValue(job.Parts[i].Length, out int before);
                counts[job.Parts[i].Length] = before + job.Parts[i].Count;
            }
        }

        List<long> lengths = [.. counts.Keys];
        if (lengths.Count == 0)
        {
            return new CuttingSolution(lengths, [], [], isTooLong, 0, [], [], 0);
        }

        long[] sizes = [.. lengths.ConvertAll(length => length + job.Kerf)];
        long step = 0, money = 0;
        foreach (long size in sizes)
        {
            step = Grid.CommonDivisor(step, size);
        }

        foreach (BoardKind board in job.Boards)
        {
            money = Grid.CommonDivisor(money, board.Price);
        }

        // Pieces come in whole steps, so what a board has beyond its last step holds nothing.
        money = Math.Max(1, money);
        CuttingProblem problem = new(
            Array.ConvertAll(sizes, size => size / step),
            [.. counts.Values],
            Array.ConvertAll(job.Boards, board => (board.Usable + job.Kerf) / step),
            Array.ConvertAll(job.Boards, board => board.Price / money),
            Array.ConvertAll(job.Boards, static board => board.Pack),
            Array.ConvertAll(job.Boards, static board => board.Available));
        CuttingSearch search = new(problem, effort);
        search.Run();
        int[] uncut = new int[sizes.Length];
        List<CuttingPattern> plan = search.Plan ?? search.AsMuchAsThereIs(out uncut);
        plan = new CuttingTidy(problem, job.Boards, sizes, job.Kerf, job.LeastOffcut, effort).Tidy(plan);
        return new CuttingSolution(lengths, plan, uncut, isTooLong, search.Plan is null ? null : search.LeastCost * money, search.Proofs, search.Exhausted, effort.Used);
    }
}
