using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>What a person should know about a cutting plan.</summary>
internal static class CuttingFindings
{
    internal static IReadOnlyList<Finding> Of(CuttingPlan plan, CuttingNumbers job)
    {
        List<Finding> findings = [];
        int tooLong = 0, tooFew = 0;
        double longest = 0;
        foreach (UncutPart part in plan.Uncut)
        {
            tooLong += part.IsTooLong ? part.Count : 0;
            tooFew += part.IsTooLong ? 0 : part.Count;
            longest = part.IsTooLong ? Math.Max(longest, Door.Millimetres(part.Length)) : longest;
        }

        if (tooLong > 0)
        {
            long usable = 0;
            foreach (BoardKind board in job.Boards)
            {
                usable = Math.Max(usable, board.Available / board.Pack > 0 ? board.Usable : 0);
            }

            findings.Add(new Finding(
                "stock-part-too-long",
                Severity.Problem,
                $"{Print.Number(tooLong)} {(tooLong == 1 ? "piece is" : "pieces are")} longer than any board allows: {Print.Mm(longest)} at most is asked, and {Print.Mm(Grid.Millimetres(usable))} of the longest board there is can be used. Join {(tooLong == 1 ? "it" : "them")} from shorter pieces over a strip, or buy longer boards.",
                [new("pieces", tooLong, string.Empty), new("longest", longest, "mm"), new("usable", Grid.Millimetres(usable), "mm")],
                Sources.BoardCutting));
        }

        if (tooFew > 0)
        {
            findings.Add(new Finding(
                "stock-too-few-boards",
                Severity.Problem,
                $"For {Print.Number(tooFew)} {(tooFew == 1 ? "piece" : "pieces")} no board was left: there are too few, or no way was found to cut all from them.",
                [new("pieces", tooFew, string.Empty)],
                Sources.BoardCutting));
        }

        if (plan.LeastCost is { } least && !plan.Proven)
        {
            findings.Add(new Finding(
                "stock-cost-not-proven",
                Severity.Note,
                $"The plan costs {CuttingPlan.Money(plan.Cost)}; that nothing cheaper exists is not proven, {CuttingPlan.Money(least)} is the least it could be, {Print.Round(100 * plan.Gap!.Value, 2)}% less.",
                [new("cost", (double)plan.Cost, string.Empty), new("least-cost", (double)least, string.Empty), new("gap", plan.Gap!.Value, string.Empty)],
                Sources.BoardCutting));
        }

        AddTightBoards(plan, job, findings);
        AddSpare(plan, job, findings);
        return Finding.GravestFirst(findings);
    }

    /// <summary>A board that is used up to the last kerf forgives nothing: one a little short, or one cut a little long, loses a piece.</summary>
    private static void AddTightBoards(CuttingPlan plan, CuttingNumbers job, List<Finding> findings)
    {
        int tight = 0;
        foreach (CutBoard board in plan.Boards)
        {
            tight += board.RemainderInNanometres <= job.Kerf ? 1 : 0;
        }

        if (tight > 0)
        {
            findings.Add(new Finding(
                "stock-board-tight",
                Severity.Note,
                $"{Print.Number(tight)} {(tight == 1 ? "board is" : "boards are")} used up to the last {Print.Mm(Grid.Millimetres(job.Kerf))} or less. Measure {(tight == 1 ? "it" : "each")} before the first cut, and cut {(tight == 1 ? "its" : "the")} pieces one by one, not by adding up marks.",
                [new("boards", tight, string.Empty), new("kerf", Grid.Millimetres(job.Kerf), "mm")]));
        }
    }

    /// <summary>A spare is a board over in a pack, or one on hand (price 0) that the plan leaves and that is long enough for the longest piece cut.</summary>
    private static void AddSpare(CuttingPlan plan, CuttingNumbers job, List<Finding> findings)
    {
        long used = 0, there = 0, longest = 0;
        foreach (CutBoard board in plan.Boards)
        {
            longest = Math.Max(longest, Grid.Nanometres(Door.Millimetres(board.Pieces[0].Length)));
            used += board.IsOffcut ? 0 : 1;
            there += board.IsOffcut ? 0 : 1;
        }

        foreach (BoardPurchase purchase in plan.Purchases)
        {
            there += purchase.BoardsBought - purchase.BoardsUsed;
        }

        bool someOnHand = false;
        for (int kind = 0; kind < job.StockKinds; kind++)
        {
            if (job.Boards[kind].Price == 0 && job.Boards[kind].Usable >= longest)
            {
                someOnHand = true;
                there += job.Boards[kind].Available / job.Boards[kind].Pack * (long)job.Boards[kind].Pack;
            }
        }

        foreach (CutBoard board in plan.Boards)
        {
            bool isCounted = !board.IsOffcut && job.Boards[board.Index].Price == 0 && job.Boards[board.Index].Usable >= longest;
            there -= isCounted ? 1 : 0;
        }

        long asked = used + (long)Grid.CeilingOfRatio(CuttingDefaults.Spare * used, 1);
        if (used > 0 && there < asked)
        {
            findings.Add(new Finding(
                "stock-no-spare",
                Severity.Note,
                $"The plan has too few boards to spare for a split, a knot in the wrong place or a wrong cut: about {Print.Number(asked - there)} more than the {Print.Number(there)} {(someOnHand ? "bought or on hand" : "bought")} {(asked - there == 1 ? "is" : "are")} usual.",
                [new("boards", there, string.Empty), new("spare", asked - there, string.Empty)],
                CuttingDefaults.SpareSource));
        }
    }
}
