using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace FinishKit.Tests.Stock;

/// <summary>What is wrong with a plan, worked out anew from the pieces on its boards in whole units of the set.</summary>
internal static class CutCheck
{
    internal static IReadOnlyList<string> Faults(PackingInstance instance, CuttingPlan plan) =>
        [.. Faults(instance, [.. plan.Boards.Select(board => (board.Index, Units(instance, board.Length), Pieces(instance, board)))], plan.Cost), .. OwnFigures(instance, plan)];

    /// <summary>The boards as kind, length and the pieces' part, start and length.</summary>
    internal static IEnumerable<string> Faults(PackingInstance instance, IReadOnlyList<(int Kind, long Length, IReadOnlyList<(int Part, long Start, long Length)> Pieces)> boards, decimal claimed)
    {
        int[] cut = new int[instance.Items.Count];
        decimal cost = 0;
        foreach ((int kind, long length, IReadOnlyList<(int Part, long Start, long Length)> pieces) in boards)
        {
            cost += instance.Stock[kind].Price;
            if (length != instance.Stock[kind].Length)
            {
                yield return $"a board of kind {kind} is {length} long";
            }

            long free = 0;
            foreach ((int part, long start, long own) in pieces)
            {
                cut[part]++;
                if (own != instance.Items[part].Length)
                {
                    yield return $"a piece of part {part} is {own} long";
                }

                if (start < free)
                {
                    yield return $"a piece starts at {start}, before the saw cut that ends at {free}";
                }

                free = start + own + instance.Kerf;
            }

            // By where they lie, and by their sum: n pieces and n - 1 saw cuts.
            long needed = pieces.Sum(static piece => piece.Length) + ((pieces.Count - 1) * (long)instance.Kerf);
            if (pieces.Count == 0 || needed > instance.Stock[kind].Length || free - instance.Kerf > instance.Stock[kind].Length)
            {
                yield return $"{pieces.Count} pieces need {needed} of a board of {instance.Stock[kind].Length}";
            }
        }

        for (int part = 0; part < cut.Length; part++)
        {
            if (cut[part] != instance.Items[part].Count)
            {
                yield return $"{cut[part]} of part {part} instead of {instance.Items[part].Count}";
            }
        }

        if (cost != claimed)
        {
            yield return $"the boards cost {cost}, not {claimed}";
        }
    }

    private static IEnumerable<string> OwnFigures(PackingInstance instance, CuttingPlan plan)
    {
        for (int kind = 0; kind < instance.Stock.Count; kind++)
        {
            int used = plan.Boards.Count(board => board.Index == kind);
            if (plan.Purchases.Where(bought => bought.Stock == kind).Sum(static bought => bought.BoardsBought) != used)
            {
                yield return $"bought is not what is cut of kind {kind}";
            }
        }

        if (plan.HasProblem || plan.Uncut.Count > 0)
        {
            yield return "pieces are left";
        }

        if (plan.LeastCost is not { } least || least > plan.Cost || plan.Proven != (least == plan.Cost))
        {
            yield return $"a least cost of {plan.LeastCost} beside a cost of {plan.Cost}";
        }
    }

    private static List<(int Part, long Start, long Length)> Pieces(PackingInstance instance, CutBoard board) =>
        [.. board.Pieces.Select(piece => (piece.Part, Units(instance, piece.Start), Units(instance, piece.Length)))];

    private static long Units(PackingInstance instance, Length length)
    {
        double units = length.Millimeters / instance.Unit;
        return Math.Abs(units - Math.Round(units)) < 1e-6 ? (long)Math.Round(units) : throw new InvalidOperationException($"{length} is not a whole number of units.");
    }
}
