using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>The answer to a job of nesting in whole steps.</summary>
internal sealed class SheetSolution
{
    private SheetSolution(SheetKinds kinds, List<int>[] partsOf, bool[] isTooLarge, long step)
    {
        (Kinds, PartsOf, IsTooLarge, Step) = (kinds, partsOf, isTooLarge, step);
    }

    internal SheetKinds Kinds { get; }

    /// <summary>For each kind of rectangle the parts of the job that are of it.</summary>
    internal List<int>[] PartsOf { get; }

    /// <summary>For each part of the job, whether no sheet is large enough for it.</summary>
    internal bool[] IsTooLarge { get; }

    /// <summary>Nanometres in a step.</summary>
    internal long Step { get; }

    /// <summary>Sheets that there are, with what lies on them.</summary>
    internal List<FilledSheet> Sheets { get; } = [];

    /// <summary>Pieces of each kind that no sheet is left for.</summary>
    internal int[] Unplaced { get; private set; } = [];

    /// <summary>In price steps; null where pieces are left over.</summary>
    internal long? LeastCost { get; private set; }

    /// <summary>No plan has fewer sheets; null where pieces are left over.</summary>
    internal int? LeastSheets { get; private set; }

    internal IReadOnlyList<PartValues> Proofs { get; private set; } = [];

    internal long Nodes { get; private set; }

    internal static SheetSolution Find(NestingNumbers job, CuttingEffort effort)
    {
        SheetSolution solution = Sort(job);
        SheetKinds kinds = solution.Kinds;
        solution.Unplaced = new int[kinds.Kinds];
        if (kinds.Kinds == 0)
        {
            return solution;
        }

        long money = 0;
        foreach (SheetKind sheet in job.Sheets)
        {
            money = Grid.CommonDivisor(money, sheet.Price);
        }

        money = Math.Max(1, money);
        SheetSizes sizes = new(
            Array.ConvertAll(job.Sheets, sheet => (sheet.UsableLength + job.Kerf) / solution.Step),
            Array.ConvertAll(job.Sheets, sheet => (sheet.UsableWidth + job.Kerf) / solution.Step),
            Array.ConvertAll(job.Sheets, sheet => sheet.Price / money),
            Array.ConvertAll(job.Sheets, static sheet => sheet.Available));
        List<PartValues> proofs = SheetBounds.Values(kinds, sizes, effort);
        long leastCost = Least(kinds, sizes, sizes.Price, proofs, effort);
        long leastSheets = Least(kinds, sizes, Array.ConvertAll(sizes.Price, static _ => 1L), proofs, effort);
        SheetSearch search = new(kinds, sizes, job.IsSawn, effort);
        search.Run(leastCost, LeastAtCost(kinds, sizes, leastCost, leastSheets, proofs, effort));
        search.TakeSmaller();
        search.Gather();
        bool isShort = search.IsShort || Array.Exists(solution.IsTooLarge, static large => large);
        foreach (FilledSheet sheet in search.Best)
        {
            if (sheet.Size < sizes.Count)
            {
                solution.Sheets.Add(sheet);
                continue;
            }

            foreach (SheetPlace place in sheet.Places)
            {
                solution.Unplaced[place.Kind]++;
            }
        }

        solution.LeastCost = isShort ? null : leastCost * money;
        solution.LeastSheets = isShort ? null : (int)leastSheets;
        (solution.Proofs, solution.Nodes) = (proofs, effort.Used);
        return solution;
    }

    /// <summary>The fewest sheets that hold every value and cost so much; where that is not found the fewest at any cost.</summary>
    private static int LeastAtCost(SheetKinds kinds, SheetSizes sizes, long leastCost, long leastSheets, List<PartValues> proofs, CuttingEffort effort)
    {
        // A sheet more is a little dearer: no plan has more sheets than pieces.
        long share = kinds.Pieces + 1L;
        long both = leastCost < long.MaxValue / (2 * share) ? Least(kinds, sizes, Array.ConvertAll(sizes.Price, price => (price * share) + 1), proofs, effort) : long.MaxValue;
        long least = both / share == leastCost ? Math.Max(leastSheets, both % share) : leastSheets;
        return (int)Math.Min(int.MaxValue, least);
    }

    /// <summary>The cheapest sheets that hold every value.</summary>
    private static long Least(SheetKinds kinds, SheetSizes sizes, long[] price, List<PartValues> proofs, CuttingEffort effort)
    {
        int[] packs = new int[sizes.Count];
        for (int size = 0; size < packs.Length; size++)
        {
            packs[size] = 1;
        }

        CuttingProblem problem = new([1], [kinds.Pieces], new long[sizes.Count], price, packs, sizes.Limit);
        BoardChoice choice = new(problem, proofs, [], [], long.MaxValue, effort);
        choice.Find();
        return choice.Least;
    }

    /// <summary>Parts of one size and freedom are one kind; what is too large for every sheet is left out.</summary>
    private static SheetSolution Sort(NestingNumbers job)
    {
        Dictionary<(long, long, bool), int> known = [];
        List<long> lengths = [], widths = [];
        List<bool> turns = [];
        List<int> counts = [];
        List<List<int>> parts = [];
        bool[] isTooLarge = new bool[job.Parts.Length];
        long step = 0;
        for (int i = 0; i < job.Parts.Length; i++)
        {
            SheetPartNumbers part = job.Parts[i];
            isTooLarge[i] = !Array.Exists(job.Sheets, sheet => sheet.Available > 0 && Goes(part, sheet));
            if (isTooLarge[i])
            {
                continue;
            }

            bool turns1 = part.MayTurn && part.Length != part.Width;
            if (!known.TryGetValue((part.Length, part.Width, turns1), out int kind))
            {
                kind = counts.Count;
                known.Add((part.Length, part.Width, turns1), kind);
                lengths.Add(part.Length + job.Kerf);
                widths.Add(part.Width + job.Kerf);
                turns.Add(turns1);
                counts.Add(0);
                parts.Add([]);
                step = Grid.CommonDivisor(Grid.CommonDivisor(step, part.Length + job.Kerf), part.Width + job.Kerf);
            }

            counts[kind] += part.Count;
            parts[kind].Add(i);
        }

        step = Math.Max(1, step);

        // Rectangles come in whole steps, so what a sheet has beyond its last step holds nothing.
        return new SheetSolution(
            new SheetKinds([.. lengths.ConvertAll(length => length / step)], [.. widths.ConvertAll(width => width / step)], [.. turns], [.. counts]),
            [.. parts],
            isTooLarge,
            step);
    }

    private static bool Goes(in SheetPartNumbers part, in SheetKind sheet) =>
        (part.Length <= sheet.UsableLength && part.Width <= sheet.UsableWidth)
        || (part.MayTurn && part.Width <= sheet.UsableLength && part.Length <= sheet.UsableWidth);
}
