using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using UnitsNet;
using Xunit;

namespace FinishKit.Tests.Stock;

/// <summary>A rectangle in whole nanometres.</summary>
internal readonly record struct Box(long Left, long Bottom, long Right, long Top)
{
    internal double Area => (double)(Right - Left) * (Top - Bottom);
}

/// <summary>Whether a nesting plan is what it says, recomputed from the job in whole nanometres: nothing here is shared with the library.</summary>
internal static class NestingCheck
{
    internal static long Nm(Length length) => (long)Math.Round(length.Millimeters * 1e6);

    internal static void Holds(NestingPlan plan)
    {
        NestingJob job = plan.Job;
        long kerf = Nm(job.Kerf ?? Length.FromMillimeters(2.4)), trim = Nm(job.Trim ?? Length.FromMillimeters(5));
        long leastLength = Nm(job.LeastOffcutLength ?? Length.FromMillimeters(400)), leastWidth = Nm(job.LeastOffcutWidth ?? Length.FromMillimeters(100));
        int[] left = [.. job.Parts.Select(static part => part.Count)], bought = new int[job.Stock.Count], onHand = new int[job.Offcuts?.Count ?? 0];
        double sheetsArea = 0, piecesArea = 0, keptArea = 0;
        int last = -1;
        foreach (NestedSheet sheet in plan.Sheets)
        {
            (long length, long width) = sheet.IsOffcut ? (Nm(job.Offcuts![sheet.Index].Length), Nm(job.Offcuts[sheet.Index].Width)) : (Nm(job.Stock[sheet.Index].Length), Nm(job.Stock[sheet.Index].Width));
            long edge = sheet.IsOffcut ? 0 : trim;
            (sheet.IsOffcut ? onHand : bought)[sheet.Index]++;
            int place = sheet.IsOffcut ? sheet.Index : onHand.Length + sheet.Index;
            Assert.True(place >= last, "Sheets are not in their order.");
            last = place;
            Assert.Equal((length, width), (Nm(sheet.Length), Nm(sheet.Width)));
            Assert.NotEmpty(sheet.Pieces);
            sheetsArea += (double)length * width;
            List<Box> pieces = [], kept = [];
            foreach (NestedPiece piece in sheet.Pieces)
            {
                SheetPart part = job.Parts[piece.Part];
                (long along, long across) = piece.IsTurned ? (Nm(part.Width), Nm(part.Length)) : (Nm(part.Length), Nm(part.Width));
                Assert.True(part.MayTurn || !piece.IsTurned, $"{piece} may not turn");
                Assert.Equal((along, across, part.Name), (Nm(piece.Length), Nm(piece.Width), piece.Name));
                pieces.Add(new Box(Nm(piece.Along), Nm(piece.Across), Nm(piece.Along) + along, Nm(piece.Across) + across));
                left[piece.Part]--;
                piecesArea += part.Outline is { } corners ? Polygon(corners) * 1e12 : (double)along * across;
            }

            foreach (SheetRemnant remnant in sheet.Kept)
            {
                Box box = new(Nm(remnant.Along), Nm(remnant.Across), Nm(remnant.Along) + Nm(remnant.Length), Nm(remnant.Across) + Nm(remnant.Width));
                long longer = Math.Max(Nm(remnant.Length), Nm(remnant.Width)), shorter = Math.Min(Nm(remnant.Length), Nm(remnant.Width));
                Assert.True(longer >= leastLength && shorter >= leastWidth, $"{remnant} is not worth keeping");
                kept.Add(box);
                keptArea += box.Area;
            }

            Assert.Equal(kept.OrderByDescending(static box => box.Area).Select(static box => box.Area), kept.Select(static box => box.Area));
            Box inside = new(edge, edge, length - edge, width - edge);
            Assert.Empty(Faults([.. pieces, .. kept], inside, kerf));
            if (job.Cutting == SheetCutting.Routed)
            {
                Assert.Empty(sheet.Cuts);
                Assert.True(kept.Count <= 3);
                Assert.True(kept.Count == 3 || pieces.Count > 60 || !CanKeepMore([.. pieces, .. kept], inside, kerf, leastLength, leastWidth), $"{sheet}: more is left that is worth keeping");
                continue;
            }

            Assert.True(IsGuillotine(pieces, kerf), $"{sheet} cannot be sawn");
            Assert.Empty(Replay(sheet, length, width, edge, kerf, pieces, kept));
        }

        foreach (UnplacedPart part in plan.Unplaced)
        {
            Assert.True(part.Count > 0);
            left[part.Part] -= part.Count;
            Assert.Equal(!Goes(job, job.Parts[part.Part], trim), part.IsTooLarge);
        }

        Assert.All(left, static count => Assert.Equal(0, count));
        Assert.All(onHand.Select((count, i) => (count, i)), offcut => Assert.True(offcut.count <= job.Offcuts![offcut.i].Count, "More offcuts than there are."));
        decimal cost = 0;
        for (int i = 0; i < bought.Length; i++)
        {
            Assert.True(bought[i] <= (job.Stock[i].Available ?? int.MaxValue), "More sheets than there are.");
            cost += bought[i] * job.Stock[i].Price;
            SheetPurchase[] purchases = [.. plan.Purchases.Where(purchase => purchase.Stock == i)];
            Assert.Equal(job.Stock[i].Price == 0 ? 0 : bought[i], purchases.Sum(static purchase => purchase.Count));
            Assert.Equal(bought[i] * job.Stock[i].Price, purchases.Sum(static purchase => purchase.Cost));
        }

        Assert.Equal(cost, plan.Cost);
        Near(sheetsArea, plan.SheetsArea);
        Near(piecesArea, plan.PiecesArea);
        Near(keptArea, plan.KeptArea);
        Near(sheetsArea - piecesArea - keptArea, plan.Waste);
        Assert.Equal(plan.Unplaced.Count > 0, plan.HasProblem);
        Assert.Equal(plan.Unplaced.Count > 0, plan.LeastCost is null);
        Assert.Equal(plan.Unplaced.Count > 0, plan.LeastSheets is null);
        Assert.True(plan.LeastCost is null || plan.LeastCost <= plan.Cost, $"{plan.LeastCost} least, {plan.Cost}");
        Assert.True(plan.LeastSheets is null || plan.LeastSheets <= plan.Sheets.Count, $"{plan.LeastSheets} least, {plan.Sheets.Count}");
        Assert.Equal(plan.LeastCost == plan.Cost, plan.Proven);
        Assert.Equal(plan.LeastCost is null, plan.Gap is null);
        Assert.Equal(plan.LeastCost is null || plan.Cost == 0 ? 0 : (double)(1 - (plan.LeastCost.Value / plan.Cost)), plan.Gap ?? 0, 9);
        Assert.True(plan.Sheets.Count == 0 || plan.Nodes > 0);
        ValuesAddUp(plan, kerf, trim);

        void Near(double squareNanometres, Area area) => Assert.True(Math.Abs((squareNanometres / 1e12) - area.SquareMillimeters) <= 1e-9 * (1 + (sheetsArea / 1e12)), $"{squareNanometres / 1e12} mm2, {area}");
    }

    /// <summary>Pieces that stand out, or are nearer to each other than a kerf both ways.</summary>
    internal static IEnumerable<string> Faults(IReadOnlyList<Box> boxes, Box inside, long kerf)
    {
        foreach (Box box in boxes)
        {
            if (box.Left < inside.Left || box.Bottom < inside.Bottom || box.Right > inside.Right || box.Top > inside.Top || box.Right <= box.Left || box.Top <= box.Bottom)
            {
                yield return $"{box} is not within {inside}";
            }
        }

        Box[] sorted = [.. boxes.OrderBy(static box => box.Left)];
        for (int i = 0; i < sorted.Length; i++)
        {
            for (int j = i + 1; j < sorted.Length && sorted[j].Left < sorted[i].Right + kerf; j++)
            {
                // Side by side in length: a kerf apart in width then.
                if (sorted[j].Bottom < sorted[i].Top + kerf && sorted[i].Bottom < sorted[j].Top + kerf)
                {
                    yield return $"{sorted[i]} and {sorted[j]} are too near";
                }
            }
        }
    }

    /// <summary>Whether the least that is worth keeping still goes somewhere, one way or the other. If it does, it does so pushed to the left and down until it meets an edge or a rectangle.</summary>
    internal static bool CanKeepMore(IReadOnlyList<Box> boxes, Box inside, long kerf, long leastLength, long leastWidth)
    {
        (long longer, long shorter) = (Math.Max(leastLength, leastWidth), leastWidth);
        long[] lefts = [inside.Left, .. boxes.Select(box => box.Right + kerf)], bottoms = [inside.Bottom, .. boxes.Select(box => box.Top + kerf)];
        return lefts.Any(left => bottoms.Any(bottom => Goes(new Box(left, bottom, left + longer, bottom + shorter)) || Goes(new Box(left, bottom, left + shorter, bottom + longer))));

        bool Goes(Box least) => least.Right <= inside.Right && least.Top <= inside.Top
            && boxes.All(box => box.Left >= least.Right + kerf || box.Right + kerf <= least.Left || box.Bottom >= least.Top + kerf || box.Top + kerf <= least.Bottom);
    }

    /// <summary>Whether cuts from edge to edge part all pieces: in one direction or the other they fall into groups a kerf apart, and so on within each group.</summary>
    internal static bool IsGuillotine(IReadOnlyList<Box> pieces, long kerf)
    {
        if (pieces.Count <= 1)
        {
            return true;
        }

        foreach (bool isAlong in new[] { false, true })
        {
            List<List<Box>> groups = [];
            long reach = 0;
            foreach (Box piece in pieces.OrderBy(piece => isAlong ? piece.Bottom : piece.Left))
            {
                if (groups.Count == 0 || (isAlong ? piece.Bottom : piece.Left) >= reach + kerf)
                {
                    groups.Add([]);
                }

                groups[^1].Add(piece);
                reach = Math.Max(reach, isAlong ? piece.Top : piece.Right);
            }

            if (groups.Count > 1)
            {
                return groups.TrueForAll(group => IsGuillotine(group, kerf));
            }
        }

        return false;
    }

    /// <summary>Cuts the sheet by its list of cuts: each goes through exactly one of the rectangles there are, from edge to edge, and in the end each piece and each remnant is one of them.</summary>
    internal static IEnumerable<string> Replay(NestedSheet sheet, long length, long width, long trim, long kerf, IReadOnlyList<Box> pieces, IReadOnlyList<Box> kept)
    {
        List<Box> there = [new Box(0, 0, length, width)];
        int number = 0;
        foreach (SheetCut cut in sheet.Cuts)
        {
            long position = Nm(cut.Position), start = Nm(cut.Start), end = Nm(cut.End);
            bool along = cut.IsAlongLength;
            if (cut.Number != ++number || cut.IsTrim != (trim > 0 && number <= 4))
            {
                yield return $"{cut} is number {number}";
            }

            int[] through = [.. Enumerable.Range(0, there.Count).Where(i => along
                ? there[i].Left == start && there[i].Right == end && there[i].Bottom <= position && position < there[i].Top
                : there[i].Bottom == start && there[i].Top == end && there[i].Left <= position && position < there[i].Right)];
            if (through.Length != 1)
            {
                yield return $"{cut} goes through {through.Length} rectangles";
                yield break;
            }

            Box box = there[through[0]];
            there.RemoveAt(through[0]);
            long from = along ? box.Bottom : box.Left, to = along ? box.Top : box.Right;
            if (Nm(cut.Size) != position - from)
            {
                yield return $"{cut} is {position - from} nm from the edge";
            }

            // A cut at the very edge takes no more than a kerf off, up to the first piece or what is left after trimming.
            long beyond = position > from ? position + kerf : cut.IsTrim ? trim : pieces.Where(piece => piece.Left >= box.Left && piece.Right <= box.Right && piece.Bottom >= box.Bottom && piece.Top <= box.Top).Min(piece => along ? piece.Bottom : piece.Left);
            if (beyond - from > kerf && position == from)
            {
                yield return $"{cut} takes {beyond - from} nm";
            }

            if (position > from)
            {
                there.Add(along ? box with { Top = position } : box with { Right = position });
            }

            if (beyond < to)
            {
                there.Add(along ? box with { Bottom = beyond } : box with { Left = beyond });
            }
        }

        HashSet<Box> made = [.. there];
        foreach (Box box in pieces.Concat(kept))
        {
            if (!made.Remove(box))
            {
                yield return $"{box} is not cut out";
            }
        }
    }

    /// <summary>The cheapest sheets, and the fewest, that hold every value: by trying all numbers of each kind. Null where a plan has no proof.</summary>
    internal static (decimal Cost, int Sheets)? LeastByValues(NestingPlan plan)
    {
        NestingJob job = plan.Job;
        int pieces = job.Parts.Sum(static part => part.Count), kinds = job.Stock.Count + (job.Offcuts?.Count ?? 0);
        int[] counts = new int[kinds];
        decimal leastCost = decimal.MaxValue;
        int leastSheets = int.MaxValue;
        Try(0);
        return leastCost == decimal.MaxValue ? null : (leastCost, leastSheets);

        void Try(int kind)
        {
            if (kind < kinds)
            {
                int most = Math.Min(pieces, kind < job.Stock.Count ? job.Stock[kind].Available ?? int.MaxValue : job.Offcuts![kind - job.Stock.Count].Count);
                for (counts[kind] = 0; counts[kind] <= most; counts[kind]++)
                {
                    Try(kind + 1);
                }

                counts[kind] = 0;
                return;
            }

            if (plan.Valuations.All(value => Held(value) >= value.Needed))
            {
                leastCost = Math.Min(leastCost, job.Stock.Select((sheet, i) => counts[i] * sheet.Price).Sum());
                leastSheets = Math.Min(leastSheets, counts.Sum());
            }
        }

        BigInteger Held(PartValuation value)
        {
            BigInteger held = 0;
            for (int i = 0; i < kinds; i++)
            {
                held += (BigInteger)counts[i] * (i < job.Stock.Count ? value.MostOfStock[i] : value.MostOfOffcuts[i - job.Stock.Count]);
            }

            return held;
        }
    }

    /// <summary>Area under each side, those toward the start taken off.</summary>
    private static double Polygon(IReadOnlyList<MeasuredPoint> corners)
    {
        double area = 0;
        for (int i = 0; i < corners.Count; i++)
        {
            MeasuredPoint to = corners[(i + 1) % corners.Count];
            area += (to.Along.Millimeters - corners[i].Along.Millimeters) * (to.Offset.Millimeters + corners[i].Offset.Millimeters) / 2;
        }

        return Math.Abs(area);
    }

    private static bool Goes(NestingJob job, SheetPart part, long trim)
    {
        return job.Stock.Any(sheet => sheet.Available != 0 && On(part, Nm(sheet.Length) - (2 * trim), Nm(sheet.Width) - (2 * trim))) || (job.Offcuts ?? []).Any(offcut => On(part, Nm(offcut.Length), Nm(offcut.Width)));
    }

    private static bool On(SheetPart part, long length, long width) =>
        (Nm(part.Length) <= length && Nm(part.Width) <= width) || (part.MayTurn && Nm(part.Width) <= length && Nm(part.Length) <= width);

    /// <summary>Each valuation counts all pieces; the first never gives a piece more than its share of a sheet's area, kerfs counted, sheets counted in whole steps.</summary>
    private static void ValuesAddUp(NestingPlan plan, long kerf, long trim)
    {
        NestingJob job = plan.Job;
        SheetPart[] going = [.. job.Parts.Where(part => Goes(job, part, trim))];
        if (going.Length == 0)
        {
            Assert.Empty(plan.Valuations);
            return;
        }

        BigInteger step = going.Aggregate(BigInteger.Zero, (step, part) => BigInteger.GreatestCommonDivisor(BigInteger.GreatestCommonDivisor(step, Nm(part.Length) + kerf), Nm(part.Width) + kerf));
        foreach (PartValuation value in plan.Valuations)
        {
            BigInteger needed = 0;
            for (int i = 0; i < job.Parts.Count; i++)
            {
                Assert.True(value.Values[i] >= 0);
                needed += (BigInteger)value.Values[i] * job.Parts[i].Count;
            }

            Assert.Equal(needed, value.Needed);
            Assert.Equal(job.Stock.Count, value.MostOfStock.Count);
            Assert.Equal(job.Offcuts?.Count ?? 0, value.MostOfOffcuts.Count);
        }

        PartValuation area = plan.Valuations[0];
        for (int i = 0; i < job.Parts.Count; i++)
        {
            BigInteger piece = (Nm(job.Parts[i].Length) + kerf) * (BigInteger)(Nm(job.Parts[i].Width) + kerf);
            for (int j = 0; j < job.Stock.Count; j++)
            {
                if (!going.Any(part => On(part, Nm(job.Stock[j].Length) - (2 * trim), Nm(job.Stock[j].Width) - (2 * trim))))
                {
                    Assert.All(plan.Valuations, value => Assert.Equal(0, value.MostOfStock[j]));
                    continue;
                }

                BigInteger whole = (Nm(job.Stock[j].Length) - (2 * trim) + kerf) / step * step * ((Nm(job.Stock[j].Width) - (2 * trim) + kerf) / step * step);
                Assert.True(area.Values[i] * whole <= area.MostOfStock[j] * piece, $"part {i} counts more of sheet {j} than its area");

                // And it is not so little that it is no area: a billionth less at most.
                Assert.True(area.Values[i] == 0 || (area.Values[i] + 2) * 1.000000002 * (double)whole >= (area.MostOfStock[j] - 2) * (double)piece || whole.IsZero, $"part {i} counts less of sheet {j} than its area");
            }
        }
    }
}
