using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>A rectangle of a sheet in nanometres from its corner as bought.</summary>
internal readonly struct SheetRegion
{
    internal SheetRegion(long left, long bottom, long right, long top) => (Left, Bottom, Right, Top) = (left, bottom, right, top);

    internal long Left { get; }

    internal long Bottom { get; }

    internal long Right { get; }

    internal long Top { get; }

    internal long Length => Right - Left;

    internal long Width => Top - Bottom;
}

/// <summary>
/// The order of cuts that takes pieces out of a sheet, each from edge to edge of what is on the saw, and what is left over. Regions here
/// end a kerf beyond their wood, as pieces do, so that a region is cut without remainder where piece and region end together.
/// </summary>
internal sealed class SheetCuts
{
    private readonly long _kerf;

    private SheetCuts(long kerf) => _kerf = kerf;

    internal List<SheetCut> Cuts { get; } = [];

    /// <summary>Rectangles of wood in which no piece lies.</summary>
    internal List<SheetRegion> Left { get; } = [];

    internal static SheetCuts Of(in SheetKind sheet, List<SheetRegion> pieces, long kerf)
    {
        SheetCuts cuts = new(kerf);
        long right = sheet.Length, top = sheet.Width, trim = sheet.Trim;
        if (trim > 0)
        {
            // The long edges first: they are what the sheet then lies against.
            long near = Math.Max(0, trim - kerf);
            cuts.Add(true, near, 0, right, near, true);
            cuts.Add(true, top - trim, 0, right, top - (2 * trim), true);
            cuts.Add(false, near, trim, top - trim, near, true);
            cuts.Add(false, right - trim, trim, top - trim, right - (2 * trim), true);
        }

        cuts.Part(new SheetRegion(trim, trim, right - trim + kerf, top - trim + kerf), pieces);
        return cuts;
    }

    private void Add(bool isAlong, long position, long from, long to, long size, bool isTrim = false) => Cuts.Add(new SheetCut(Cuts.Count + 1, isAlong, isTrim, position, from, to, size));

    /// <summary>Cuts until every piece is out; a list of what is still to be cut, so that a sheet of thousands of pieces is no deep recursion.</summary>
    private void Part(in SheetRegion whole, List<SheetRegion> all)
    {
        Stack<(SheetRegion Region, List<SheetRegion> Pieces)> open = new();
        open.Push((whole, all));
        while (open.Count > 0)
        {
            (SheetRegion region, List<SheetRegion> pieces) = open.Pop();
            if (pieces.Count == 0)
            {
                if (region.Length > _kerf && region.Width > _kerf)
                {
                    Left.Add(new SheetRegion(region.Left, region.Bottom, region.Right - _kerf, region.Top - _kerf));
                }

                continue;
            }

            long right = 0, top = 0;
            foreach (SheetRegion piece in pieces)
            {
                (right, top) = (Math.Max(right, piece.Right), Math.Max(top, piece.Top));
            }

            // What no piece lies on comes off whole, the larger first.
            long beside = region.Right - right, above = region.Top - top;
            if (beside > 0 || above > 0)
            {
                bool isAlong = (double)above * region.Length >= (double)beside * region.Width;
                Cut(open, region, isAlong, [(isAlong ? top : right, pieces)]);
                continue;
            }

            if (pieces.Count == 1 && pieces[0].Left == region.Left && pieces[0].Bottom == region.Bottom)
            {
                continue;
            }

            // The longer cuts first where there are any: they leave less to hold.
            bool longer = region.Length >= region.Width;
            List<(long End, List<SheetRegion> Pieces)> strips = Strips(region, pieces, longer);
            if (strips.Count == 0)
            {
                longer = !longer;
                strips = Strips(region, pieces, longer);
            }

            if (strips.Count == 0)
            {
                throw new InvalidOperationException("A sawn sheet cannot be sawn.");
            }

            Cut(open, region, longer, strips);
        }
    }

    /// <summary>What lies between the lines across the region that go through no piece, each with where it ends; none where there is no such line.</summary>
    private static List<(long End, List<SheetRegion> Pieces)> Strips(in SheetRegion region, List<SheetRegion> pieces, bool isAlong)
    {
        List<SheetRegion> sorted = [.. pieces];
        sorted.Sort((one, other) => isAlong ? Order(one.Bottom, other.Bottom, one.Left, other.Left) : Order(one.Left, other.Left, one.Bottom, other.Bottom));
        List<(long End, List<SheetRegion> Pieces)> strips = [];
        List<SheetRegion> strip = [];
        long reach = isAlong ? region.Bottom : region.Left;
        foreach (SheetRegion piece in sorted)
        {
            long start = isAlong ? piece.Bottom : piece.Left;
            if (start >= reach && strip.Count > 0)
            {
                strips.Add((reach, strip));
                strip = [];
            }

            // Wood that no piece lies on.
            if (start > reach)
            {
                strips.Add((start, []));
            }

            strip.Add(piece);
            reach = Math.Max(reach, isAlong ? piece.Top : piece.Right);
        }

        // The last ends where the region does.
        strips.Add((reach, strip));
        return strips.Count == 1 ? [] : strips;

        static int Order(long one, long other, long thenOne, long thenOther) => one != other ? one.CompareTo(other) : thenOne.CompareTo(thenOther);
    }

    /// <summary>The saw takes the kerf before the end of each strip, one after the other; then the strips are cut on.</summary>
    private void Cut(Stack<(SheetRegion Region, List<SheetRegion> Pieces)> open, in SheetRegion region, bool isAlong, List<(long End, List<SheetRegion> Pieces)> strips)
    {
        long start = isAlong ? region.Bottom : region.Left, end = isAlong ? region.Top : region.Right;
        long from = isAlong ? region.Left : region.Bottom, to = (isAlong ? region.Right : region.Top) - _kerf;
        List<(SheetRegion, List<SheetRegion>)> cut = [];
        foreach ((long stop, List<SheetRegion> pieces) in strips)
        {
            if (stop < end)
            {
                // Less than a kerf of wood before a piece: the saw takes all of it.
                long position = Math.Max(start, stop - _kerf);
                Add(isAlong, position, from, to, position - start);
            }

            cut.Add((Between(region, start, stop, isAlong), pieces));
            start = stop;
        }

        if (start < end)
        {
            cut.Add((Between(region, start, end, isAlong), []));
        }

        for (int i = cut.Count - 1; i >= 0; i--)
        {
            open.Push(cut[i]);
        }

        static SheetRegion Between(in SheetRegion whole, long first, long last, bool along) =>
            along ? new SheetRegion(whole.Left, first, whole.Right, last) : new SheetRegion(first, whole.Bottom, last, whole.Top);
    }
}

/// <summary>The largest rectangles that are left between pieces that a router cuts.</summary>
internal static class SheetGaps
{
    /// <summary>With more pieces on a sheet gaps are too small to look for.</summary>
    private const int MostPieces = 120;

    private const int Most = 3;

    internal static List<SheetRegion> Of(in SheetKind sheet, List<SheetRegion> pieces, long kerf)
    {
        List<SheetRegion> found = [];
        if (pieces.Count > MostPieces)
        {
            return found;
        }

        SheetRegion whole = new(sheet.Trim, sheet.Trim, sheet.Length - sheet.Trim + kerf, sheet.Width - sheet.Trim + kerf);
        List<SheetRegion> taken = [.. pieces];
        while (found.Count < Most)
        {
            SheetRegion best = Largest(whole, taken);
            if (best.Length <= kerf || best.Width <= kerf)
            {
                break;
            }

            taken.Add(best);
            found.Add(new SheetRegion(best.Left, best.Bottom, best.Right - kerf, best.Top - kerf));
        }

        return found;
    }

    private static SheetRegion Largest(in SheetRegion whole, List<SheetRegion> taken)
    {
        SheetRegion best = new(0, 0, 0, 0);
        double bestArea = 0;
        List<long> starts = [whole.Left], ends = [whole.Right];
        foreach (SheetRegion region in taken)
        {
            starts.Add(region.Right);
            ends.Add(region.Left);
        }

        List<SheetRegion> byHeight = [.. taken];
        byHeight.Sort(static (left, right) => left.Bottom.CompareTo(right.Bottom));
        foreach (long start in starts)
        {
            foreach (long end in ends)
            {
                if (end <= start || (double)(end - start) * whole.Width <= bestArea)
                {
                    continue;
                }

                long reach = whole.Bottom;
                foreach (SheetRegion region in byHeight)
                {
                    if (region.Left < end && region.Right > start)
                    {
                        Look(start, end, reach, region.Bottom);
                        reach = Math.Max(reach, region.Top);
                    }
                }

                Look(start, end, reach, whole.Top);
            }
        }

        return best;

        void Look(long start, long end, long bottom, long top)
        {
            double area = (double)(end - start) * (top - bottom);
            if (top > bottom && area > bestArea)
            {
                (best, bestArea) = (new SheetRegion(start, bottom, end, top), area);
            }
        }
    }
}
