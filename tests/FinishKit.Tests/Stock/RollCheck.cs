using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using UnitsNet;
using Xunit;

namespace FinishKit.Tests.Stock;

/// <summary>Whether a plan for a roll is what it says, recomputed from the job in whole nanometres.</summary>
internal static class RollCheck
{
    internal static void Holds(RollPlan plan)
    {
        RollJob job = plan.Job;
        long width = Nm(job.Width), selvedge = Nm(job.Selvedge ?? Length.Zero), between = Nm(job.Between ?? Length.Zero), sold = Nm(job.SoldBy ?? Length.Zero), length = Nm(plan.Length), least = Nm(plan.LeastLength), buy = Nm(plan.LengthToBuy);
        int[] left = [.. job.Parts.Select(static part => part.Count)];
        List<Box> boxes = [];
        double area = 0;
        BigInteger counted = 0;
        long longest = 0;
        foreach (RollPiece piece in plan.Pieces)
        {
            RollPart part = job.Parts[piece.Part];
            left[piece.Part]--;
            Assert.True(part.MayTurn || !piece.IsTurned, $"{piece} may not turn");
            (long along, long across) = piece.IsTurned ? (Nm(part.Across), Nm(part.Along)) : (Nm(part.Along), Nm(part.Across));
            Assert.Equal((along, across, part.Name), (Nm(piece.Along), Nm(piece.Across), piece.Name));
            boxes.Add(new Box(Nm(piece.FromEdge), Nm(piece.FromEnd), Nm(piece.FromEdge) + across, Nm(piece.FromEnd) + along));
            area += (double)along * across;
            counted += (BigInteger)(along + between) * (across + between);
            long usable = width - (2 * selvedge);
            longest = Math.Max(longest, part.MayTurn && Math.Max(Nm(part.Along), Nm(part.Across)) <= usable ? Math.Min(Nm(part.Along), Nm(part.Across)) : part.MayTurn ? Math.Min(Nm(part.Across) <= usable ? Nm(part.Along) : long.MaxValue, Nm(part.Along) <= usable ? Nm(part.Across) : long.MaxValue) : Nm(part.Along));
        }

        // What is left over does not go across, whichever way it may lie.
        Assert.Equal(left.Select(static (count, part) => (part, count)).Where(static entry => entry.count > 0), plan.TooWide.Select(static part => (part.Part, part.Count)));
        Assert.All(plan.TooWide, part => Assert.True(Nm(part.Across) > width - (2 * selvedge) && (!job.Parts[part.Part].MayTurn || Nm(part.Along) > width - (2 * selvedge)), $"{part} goes across"));
        Assert.Equal(plan.TooWide.Count > 0, plan.HasProblem);
        Assert.Equal(plan.HasProblem, plan.Findings.Any(static finding => finding.Code == "stock-roll-too-wide" && finding.Severity == Severity.Problem));
        if (plan.Pieces.Count == 0)
        {
            return;
        }

        Assert.Empty(NestingCheck.Faults(boxes, new Box(selvedge, 0, width - selvedge, length), between));
        Assert.Equal(boxes.Max(static box => box.Top), length);
        Assert.Equal(boxes.Select(static box => (box.Bottom, box.Left)).Order(), boxes.Select(static box => (box.Bottom, box.Left)));

        // The bound is at least the longest piece and the area, a room counted to each piece; rounding takes a billionth at most.
        Assert.True(least >= longest && least <= length, $"{least} least, {longest} the longest, {length}");
        BigInteger byArea = (counted / (width - (2 * selvedge) + between)) - between;
        Assert.True(least >= byArea - (long)(1e-9 * length) - 2, $"{least} least, {byArea} by area");
        Assert.Equal(least == length && !plan.HasProblem, plan.Proven);
        Assert.Equal((length - least) / (double)length, plan.Gap, 12);
        Assert.True(buy >= length && (sold == 0 ? buy == length : buy % sold == 0 && buy - sold < length), $"{buy} to buy of {length}, sold by {sold}");
        Assert.Equal(area / 1e12, plan.PiecesArea.SquareMillimeters, 1e-9 * area / 1e12);
        Assert.Equal(area / ((double)length * width), plan.Used, 9);
        Assert.Equal(boxes.Count > 0 && plan.Pieces.Any(static piece => piece.IsTurned), plan.Findings.Any(static finding => finding.Code == "stock-roll-piece-turned"));
        Assert.Equal(least != length, plan.Findings.Any(static finding => finding.Code == "stock-roll-not-proven"));
        Assert.Equal(sold == 0, plan.Findings.Any(static finding => finding.Code == "stock-roll-no-spare"));
    }

    private static long Nm(Length length) => NestingCheck.Nm(length);
}
