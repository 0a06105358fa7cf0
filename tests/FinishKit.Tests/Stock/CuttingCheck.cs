using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using Xunit;

namespace FinishKit.Tests.Stock;

/// <summary>Whether a cutting plan is what it says, recomputed from the job in whole nanometres, and what the least cost is, by trying everything.</summary>
internal static class CuttingCheck
{
    internal static long Nm(Length length) => (long)Math.Round(length.Millimeters * 1e6);

    /// <summary>Every part cut exactly once or named as not cut, no board over-filled, and lengths and money add up.</summary>
    internal static void Holds(CuttingPlan plan)
    {
        CuttingJob job = plan.Job;
        long kerf = Nm(job.Kerf ?? Length.FromMillimeters(2.8)), trim = Nm(job.EndTrim ?? Length.FromMillimeters(15)), least = Nm(job.LeastOffcut ?? Length.FromMillimeters(400));
        int[] left = [.. job.Parts.Select(static part => part.Count)];
        int[] bought = new int[job.Stock.Count], onHand = new int[job.Offcuts?.Count ?? 0];
        long boards = 0, pieces = 0, kept = 0;
        HashSet<string> ways = [];
        foreach (CutBoard board in plan.Boards)
        {
            long length = Nm(board.IsOffcut ? job.Offcuts![board.Index].Length : job.Stock[board.Index].Length), at = board.IsOffcut ? 0 : trim;
            (board.IsOffcut ? onHand : bought)[board.Index]++;
            Assert.Equal(length, Nm(board.Length));
            Assert.NotEmpty(board.Pieces);
            foreach (CutPiece piece in board.Pieces)
            {
                Assert.Equal(at, Nm(piece.Start));
                Assert.Equal(Nm(job.Parts[piece.Part].Length), Nm(piece.Length));
                Assert.Equal(job.Parts[piece.Part].Name, piece.Name);
                left[piece.Part]--;
                pieces += Nm(piece.Length);
                at += Nm(piece.Length) + kerf;
            }

            // Behind the last piece: up to a kerf goes with the saw, the rest is offcut.
            long remainder = length - (board.IsOffcut ? 0 : trim) - (at - kerf);
            Assert.True(remainder >= 0, $"{board} is over-filled by {-remainder} nm");
            Assert.Equal(Math.Max(0, remainder - kerf), Nm(board.Offcut));
            Assert.Equal(((board.Pieces.Count - 1) * kerf) + Math.Min(kerf, remainder), Nm(board.Kerfs));
            Assert.Equal(length, Nm(board.Trim) + Nm(board.Kerfs) + Nm(board.Offcut) + board.Pieces.Sum(static piece => Nm(piece.Length)));
            Assert.Equal(Nm(board.Offcut) >= least, board.IsOffcutKept);
            boards += length;
            kept += board.IsOffcutKept ? Nm(board.Offcut) : 0;
            ways.Add($"{board.IsOffcut} {board.Index} {string.Join(' ', board.Pieces.Select(static piece => Nm(piece.Length)))}");
        }

        foreach (UncutPart part in plan.Uncut)
        {
            Assert.Equal(Nm(job.Parts[part.Part].Length), Nm(part.Length));
            left[part.Part] -= part.Count;
        }

        Assert.All(left, static count => Assert.Equal(0, count));
        Assert.All(onHand.Select((count, i) => (count, i)), offcut => Assert.InRange(offcut.count, 0, job.Offcuts![offcut.i].Count));
        decimal cost = 0;
        for (int i = 0; i < bought.Length; i++)
        {
            int packs = (bought[i] + job.Stock[i].Pack - 1) / job.Stock[i].Pack;
            Assert.True(packs * job.Stock[i].Pack <= (job.Stock[i].Available ?? int.MaxValue), "More boards than there are.");
            cost += packs * job.Stock[i].Price;

            // What costs nothing is on hand and not bought.
            bool isBought = job.Stock[i].Price > 0;
            Assert.Equal(isBought ? bought[i] : 0, plan.Purchases.Where(purchase => purchase.Stock == i).Sum(static purchase => purchase.BoardsUsed));
            Assert.Equal(isBought ? packs : 0, plan.Purchases.Where(purchase => purchase.Stock == i).Sum(static purchase => purchase.Packs));
        }

        Assert.Equal(cost, plan.Cost);
        Assert.Equal(boards, Nm(plan.BoardsLength));
        Assert.Equal(pieces, Nm(plan.PiecesLength));
        Assert.Equal(kept, Nm(plan.KeptOffcuts));
        Assert.Equal(boards - pieces - kept, Nm(plan.Waste));
        Assert.Equal(ways.Count, plan.SetUps);
        Assert.Equal(plan.Boards.Select(static board => board.SetUp).Distinct().Count(), plan.SetUps);
        Assert.True(plan.LeastCost is null || plan.LeastCost <= plan.Cost);
        Assert.True(plan.Nodes <= MostNodes(job), $"{plan.Nodes} nodes, {MostNodes(job)} allowed");
        Assert.Equal(plan.Uncut.Count > 0, plan.HasProblem);
        Assert.False(plan.HasProblem && (plan.Proven || plan.LeastCost is not null || plan.Gap is not null), "A least cost for pieces that are not cut.");
    }

    /// <summary>The effort, or what a first plan takes at most where that is more: n (8 + k + n/64) for n pieces and k kinds of boards and offcuts.</summary>
    internal static long MostNodes(CuttingJob job)
    {
        long n = job.Parts.Sum(static part => (long)part.Count), k = job.Stock.Count + (job.Offcuts?.Count ?? 0);
        return Math.Max(job.Effort ?? 100_000_000, (n * (8 + k)) + (n * n / 64));
    }

    /// <summary>The least cost of cutting a few parts, or null where it cannot be done: all numbers of boards, the cheapest first, and for each all ways to share the parts among them.</summary>
    internal static decimal? Least(CuttingJob job)
    {
        long kerf = Nm(job.Kerf ?? Length.FromMillimeters(2.8)), trim = Nm(job.EndTrim ?? Length.FromMillimeters(15));
        long[] pieces = [.. job.Parts.SelectMany(static part => Enumerable.Repeat(Nm(part.Length), part.Count))];
        Assert.True(pieces.Length <= 8);
        int all = 1 << pieces.Length;
        long[] needed = new long[all];
        for (int set = 1; set < all; set++)
        {
            needed[set] = -kerf;
            for (int i = 0; i < pieces.Length; i++)
            {
                needed[set] += (set & (1 << i)) != 0 ? pieces[i] + kerf : 0;
            }
        }

        List<long> onHand = [.. (job.Offcuts ?? []).SelectMany(static offcut => Enumerable.Repeat(Nm(offcut.Length), offcut.Count))];
        bool[] start = new bool[all];
        start[0] = true;
        foreach (long length in onHand)
        {
            start = With(start, length);
        }

        List<(decimal Cost, int[] Counts)> choices = [(0, [])];
        foreach (StockBoard board in job.Stock)
        {
            List<(decimal, int[])> longer = [];
            foreach ((decimal cost, int[] counts) in choices)
            {
                for (int packs = 0; (packs - 1) * board.Pack < pieces.Length && packs * board.Pack <= (board.Available ?? int.MaxValue); packs++)
                {
                    longer.Add((cost + (packs * board.Price), [.. counts, packs * board.Pack]));
                }
            }

            choices = longer;
        }

        foreach ((decimal cost, int[] counts) in choices.OrderBy(static choice => choice.Cost))
        {
            bool[] cut = start;
            for (int kind = 0; kind < counts.Length; kind++)
            {
                for (int i = 0; i < Math.Min(counts[kind], pieces.Length); i++)
                {
                    cut = With(cut, Nm(job.Stock[kind].Length) - (2 * trim));
                }
            }

            if (cut[all - 1])
            {
                return cost;
            }
        }

        return null;

        // Sets of pieces that can be cut with one board more.
        bool[] With(bool[] before, long usable)
        {
            bool[] then = (bool[])before.Clone();
            for (int set = 0; set < all; set++)
            {
                for (int more = ~set & (all - 1); before[set] && more > 0; more = (more - 1) & ~set)
                {
                    then[set | more] |= needed[more] <= usable;
                }
            }

            return then;
        }
    }
}
