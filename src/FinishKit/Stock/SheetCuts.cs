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
    private static readonly long s_leastLong = Grid.Nanometres(NestingDefaults.LeastLongAtTheSaw), s_leastWide = Grid.Nanometres(NestingDefaults.LeastWideAtTheSaw);

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

    /// <summary>Cuts whose wood, or what is between fence and blade, is small.</summary>
    internal int Small { get; private set; }

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
                long along = to - from, across = end - _kerf - start;
                Small += Math.Max(along, across) < s_leastLong || Math.Min(along, Math.Min(across, position - start)) < s_leastWide ? 1 : 0;
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

/// <summary>
/// The largest rectangles worth keeping that are left between pieces that a router cuts. Kept up is the list of all free rectangles that
/// cannot grow: each piece cuts those that it lies on into up to four. What is too small to keep is dropped at once, as nothing within
/// it is large enough either, so that the list stays short however many pieces there are.
/// </summary>
internal sealed class SheetGaps
{
    private const int Most = 3;

    private readonly long _kerf;
    private readonly Func<long, long, bool> _isWorthKeeping;
    private readonly List<SheetRegion> _free = [], _parts = [], _beside = [];

    private SheetGaps(long kerf, Func<long, long, bool> isWorthKeeping) => (_kerf, _isWorthKeeping) = (kerf, isWorthKeeping);

    internal static List<SheetRegion> Of(in SheetKind sheet, List<SheetRegion> pieces, long kerf, Func<long, long, bool> isWorthKeeping)
    {
        SheetGaps gaps = new(kerf, isWorthKeeping);
        gaps._parts.Add(new SheetRegion(sheet.Trim, sheet.Trim, sheet.Length - sheet.Trim + kerf, sheet.Width - sheet.Trim + kerf));
        gaps.Join();
        foreach (SheetRegion piece in pieces)
        {
            gaps.Take(piece);
        }

        List<SheetRegion> found = [];
        while (found.Count < Most && gaps._free.Count > 0)
        {
            SheetRegion best = gaps.Largest();
            gaps.Take(best);
            found.Add(new SheetRegion(best.Left, best.Bottom, best.Right - kerf, best.Top - kerf));
        }

        return found;
    }

    /// <summary>Of equal ones the nearest to the sheet's corner, whatever the order of the list.</summary>
    private SheetRegion Largest()
    {
        SheetRegion best = _free[0];
        foreach (SheetRegion region in _free)
        {
            int order = Area(region).CompareTo(Area(best));
            order = order != 0 ? order : best.Left.CompareTo(region.Left);
            order = order != 0 ? order : best.Bottom.CompareTo(region.Bottom);
            order = order != 0 ? order : region.Right.CompareTo(best.Right);
            best = order > 0 ? region : best;
        }

        return best;

        double Area(in SheetRegion region) => (double)(region.Length - _kerf) * (region.Width - _kerf);
    }

    private void Take(in SheetRegion piece)
    {
        _parts.Clear();
        _beside.Clear();
        for (int i = _free.Count - 1; i >= 0; i--)
        {
            SheetRegion free = _free[i];
            if (free.Left > piece.Right || free.Right < piece.Left || free.Bottom > piece.Top || free.Top < piece.Bottom)
            {
                continue;
            }

            if (free.Left >= piece.Right || free.Right <= piece.Left || free.Bottom >= piece.Top || free.Top <= piece.Bottom)
            {
                _beside.Add(free);
                continue;
            }

            _free[i] = _free[_free.Count - 1];
            _free.RemoveAt(_free.Count - 1);
            _parts.Add(new SheetRegion(free.Left, free.Bottom, piece.Left, free.Top));
            _parts.Add(new SheetRegion(piece.Right, free.Bottom, free.Right, free.Top));
            _parts.Add(new SheetRegion(free.Left, free.Bottom, free.Right, piece.Bottom));
            _parts.Add(new SheetRegion(free.Left, piece.Top, free.Right, free.Top));
        }

        Join();
    }

    /// <summary>Parts that are worth keeping and lie in no other join the free ones. A part lies against the piece, so what it may lie in does too.</summary>
    private void Join()
    {
        _parts.RemoveAll(part => part.Length <= _kerf || part.Width <= _kerf || !_isWorthKeeping(part.Length - _kerf, part.Width - _kerf));
        for (int i = 0; i < _parts.Count; i++)
        {
            SheetRegion part = _parts[i];
            bool isWithin = _beside.Exists(other => IsWithin(part, other));
            for (int k = 0; k < _parts.Count && !isWithin; k++)
            {
                // Of two alike the first stays.
                isWithin = k != i && IsWithin(part, _parts[k]) && (k < i || !IsWithin(_parts[k], part));
            }

            if (!isWithin)
            {
                _free.Add(part);
            }
        }

        static bool IsWithin(in SheetRegion one, in SheetRegion other) => one.Left >= other.Left && one.Right <= other.Right && one.Bottom >= other.Bottom && one.Top <= other.Top;
    }
}
