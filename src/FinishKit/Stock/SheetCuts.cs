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

    private void Part(in SheetRegion region, List<SheetRegion> pieces)
    {
        if (pieces.Count == 0)
        {
            if (region.Length > _kerf && region.Width > _kerf)
            {
                Left.Add(new SheetRegion(region.Left, region.Bottom, region.Right - _kerf, region.Top - _kerf));
            }

            return;
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
            Cut(region, pieces, isAlong, isAlong ? top : right);
            return;
        }

        if (pieces.Count == 1 && pieces[0].Left == region.Left && pieces[0].Bottom == region.Bottom)
        {
            return;
        }

        // The longer cut first where there is one: it leaves less to hold.
        bool longer = region.Length >= region.Width;
        if (Place(region, pieces, longer) is { } first)
        {
            Cut(region, pieces, longer, first);
        }
        else if (Place(region, pieces, !longer) is { } other)
        {
            Cut(region, pieces, !longer, other);
        }
        else
        {
            throw new InvalidOperationException("A sawn sheet cannot be sawn.");
        }
    }

    /// <summary>The first line across the region that goes through no piece.</summary>
    private static long? Place(in SheetRegion region, List<SheetRegion> pieces, bool isAlong)
    {
        List<(long Start, long End)> spans = pieces.ConvertAll(piece => isAlong ? (piece.Bottom, piece.Top) : (piece.Left, piece.Right));
        spans.Sort();
        long reach = isAlong ? region.Bottom : region.Left, end = isAlong ? region.Top : region.Right;

        // A region may begin with wood that no piece lies on.
        if (spans[0].Start > reach)
        {
            return spans[0].Start;
        }

        foreach ((long start, long stop) in spans)
        {
            if (start >= reach && reach > (isAlong ? region.Bottom : region.Left))
            {
                return reach;
            }

            reach = Math.Max(reach, stop);
        }

        return reach < end ? reach : null;
    }

    /// <summary>The saw takes the kerf before the given place; what lies before it is kept, what lies beyond is cut on.</summary>
    private void Cut(in SheetRegion region, List<SheetRegion> pieces, bool isAlong, long place)
    {
        long start = isAlong ? region.Bottom : region.Left;
        long from = isAlong ? region.Left : region.Bottom, to = (isAlong ? region.Right : region.Top) - _kerf;
        Add(isAlong, place - _kerf, from, to, place - _kerf - start);
        List<SheetRegion> near = [], far = [];
        foreach (SheetRegion piece in pieces)
        {
            ((isAlong ? piece.Top : piece.Right) <= place ? near : far).Add(piece);
        }

        Part(isAlong ? new SheetRegion(region.Left, region.Bottom, region.Right, place) : new SheetRegion(region.Left, region.Bottom, place, region.Top), near);
        Part(isAlong ? new SheetRegion(region.Left, place, region.Right, region.Top) : new SheetRegion(place, region.Bottom, region.Right, region.Top), far);
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
