using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>How many rectangles of each kind, in fields of two words, so that two of them are added and compared in one step.</summary>
internal readonly struct PieceCounts : IEquatable<PieceCounts>
{
    internal PieceCounts(ulong low, ulong high) => (Low, High) = (low, high);

    internal ulong Low { get; }

    internal ulong High { get; }

    public static PieceCounts operator +(PieceCounts one, PieceCounts other) => new(one.Low + other.Low, one.High + other.High);

    public bool Equals(PieceCounts other) => Low == other.Low && High == other.High;

    public override bool Equals(object? obj) => obj is PieceCounts other && Equals(other);

    public override int GetHashCode() => unchecked((int)((Low ^ (Low >> 29) ^ (High * 0x9E3779B97F4A7C15)) >> 17) + (int)High);
}

/// <summary>The fields of <see cref="PieceCounts"/>: for each kind as many bits as its count takes, and one above that shows where there are more.</summary>
internal sealed class PieceFields
{
    private readonly int[] _shift, _bits;

    internal PieceFields(int[] count)
    {
        (_shift, _bits) = (new int[count.Length], new int[count.Length]);
        int at = 0;
        ulong low = 0, high = 0;
        for (int kind = 0; kind < count.Length; kind++)
        {
            int bits = 1;
            while (count[kind] >> (bits - 1) > 0)
            {
                bits++;
            }

            // No field over the border of the words.
            at = at < 64 && at + bits > 64 ? 64 : at;
            (_shift[kind], _bits[kind]) = (at, bits);
            at += bits;
            if (at > 128)
            {
                return;
            }

            PieceCounts guard = Shifted(kind, 1UL << (bits - 1));
            (low, high) = (low | guard.Low, high | guard.High);
        }

        (Go, Guard) = (true, new PieceCounts(low, high));
    }

    /// <summary>Whether two words hold them.</summary>
    internal bool Go { get; }

    private PieceCounts Guard { get; }

    internal PieceCounts One(int kind) => Shifted(kind, 1);

    internal int Count(PieceCounts counts, int kind) =>
        (int)((_shift[kind] < 64 ? counts.Low >> _shift[kind] : counts.High >> (_shift[kind] - 64)) & ((1UL << _bits[kind]) - 1));

    internal PieceCounts Of(int[] count)
    {
        PieceCounts all = default;
        for (int kind = 0; kind < count.Length; kind++)
        {
            all += Shifted(kind, (ulong)count[kind]);
        }

        return all;
    }

    /// <summary>What is added so that the guard of a kind shows more than there are.</summary>
    internal PieceCounts Bias(int[] count)
    {
        PieceCounts bias = default;
        for (int kind = 0; kind < count.Length; kind++)
        {
            bias += Shifted(kind, (1UL << (_bits[kind] - 1)) - 1 - (ulong)count[kind]);
        }

        return bias;
    }

    internal bool Fit(PieceCounts one, PieceCounts other, PieceCounts bias) =>
        ((one.Low + other.Low + bias.Low) & Guard.Low) == 0 && ((one.High + other.High + bias.High) & Guard.High) == 0;

    private PieceCounts Shifted(int kind, ulong value) => _shift[kind] < 64 ? new PieceCounts(value << _shift[kind], 0) : new PieceCounts(0, value << (_shift[kind] - 64));
}

/// <summary>One rectangle, or two blocks side by side or one above the other.</summary>
internal readonly struct SheetBlock
{
    internal SheetBlock(long width, long height, double area, PieceCounts pieces, int one, int other, bool isBeside)
    {
        (Width, Height, Area, Pieces) = (width, height, area, pieces);
        (One, Other, IsBeside) = (one, other, isBeside);
    }

    internal long Width { get; }

    internal long Height { get; }

    /// <summary>Area of its rectangles.</summary>
    internal double Area { get; }

    internal PieceCounts Pieces { get; }

    /// <summary>The block to the left or below; of a single rectangle its kind.</summary>
    internal int One { get; }

    /// <summary>The block to the right or above; of a single rectangle -1 as it lies, -2 turned.</summary>
    internal int Other { get; }

    internal bool IsBeside { get; }
}

/// <summary>
/// Every block that can be built from a pool of rectangles, pair by pair, while little of it is waste.
/// </summary>
internal sealed class SheetBlocks
{
    private const int Buckets = 512;

    /// <summary>How much longer one of two sides that meet may be, as a multiple of the waste.</summary>
    private const double Unlike = 3;

    private readonly SheetKinds _kinds;
    private readonly PieceFields _fields;
    private readonly long _width, _height;
    private readonly double _share, _mostWaste;
    private readonly PieceCounts _bias;
    private readonly List<SheetBlock> _blocks = [];
    private readonly List<int> _before = [];
    private readonly Dictionary<PieceCounts, int> _last = [];
    private readonly List<int>?[] _byWidth = new List<int>?[Buckets + 1], _byHeight = new List<int>?[Buckets + 1];
    private readonly long _least = long.MaxValue;
    private long _walked;

    /// <summary>Blocks of one rectangle; later ones may waste a share of themselves and no more than an area.</summary>
    internal SheetBlocks(SheetKinds kinds, PieceFields fields, int[] pool, long width, long height, double share, double mostWaste)
    {
        (_kinds, _fields, _width, _height, _share, _mostWaste) = (kinds, fields, width, height, share, mostWaste);
        _bias = fields.Bias(pool);
        for (int kind = 0; kind < pool.Length; kind++)
        {
            if (pool[kind] == 0)
            {
                continue;
            }

            _least = Math.Min(_least, Math.Min(kinds.Width[kind], kinds.Height[kind]));
            Offer(kinds.Width[kind], kinds.Height[kind], kinds.Area[kind], fields.One(kind), kind, -1, false);
            if (kinds.Turns[kind])
            {
                Offer(kinds.Height[kind], kinds.Width[kind], kinds.Area[kind], fields.One(kind), kind, -2, false);
            }
        }
    }

    internal int Count => _blocks.Count;

    internal SheetBlock this[int block] => _blocks[block];

    /// <summary>Builds on; false where there were too many blocks or the effort was used first.</summary>
    internal bool Build(int most, CuttingEffort effort, long until)
    {
        for (int i = 0; i < _blocks.Count; i++)
        {
            if (_blocks.Count > most || effort.Used >= until)
            {
                return false;
            }

            SheetBlock block = _blocks[i];
            Insert(ref _byWidth[(int)(block.Width * Buckets / _width)], i, block.Height, false);
            Insert(ref _byHeight[(int)(block.Height * Buckets / _height)], i, block.Width, true);
            effort.Spend(1 + Join(i, block, true) + Join(i, block, false) + _walked);
            _walked = 0;
        }

        return true;
    }

    /// <summary>The rectangles of a block on a sheet.</summary>
    internal FilledSheet Lay(int block)
    {
        FilledSheet sheet = new() { Area = _blocks[block].Area };
        Stack<(int Block, long X, long Y)> open = new();
        open.Push((block, 0, 0));
        while (open.Count > 0)
        {
            (int at, long x, long y) = open.Pop();
            SheetBlock part = _blocks[at];
            if (part.Other < 0)
            {
                sheet.Places.Add(new SheetPlace(part.One, part.Other == -2, x, y));
                continue;
            }

            SheetBlock one = _blocks[part.One];
            open.Push((part.Other, part.IsBeside ? x + one.Width : x, part.IsBeside ? y : y + one.Height));
            open.Push((part.One, x, y));
        }

        return sheet;
    }

    /// <summary>A block with every one before it that is nearly as high, or as wide; how many were looked at.</summary>
    private long Join(int at, in SheetBlock block, bool isBeside)
    {
        // Across: the side that the two share; along: the one that is added up.
        double across = isBeside ? block.Height : block.Width, allAcross = isBeside ? _height : _width;
        long room = isBeside ? _width - block.Width : _height - block.Height;
        if (room < _least)
        {
            return 0;
        }

        int bucket = (int)(across / (1 + (Unlike * _share)) * Buckets / allAcross);
        int last = (int)Math.Min(Buckets, across * (1 + (Unlike * _share)) * Buckets / allAcross);
        List<int>?[] buckets = isBeside ? _byHeight : _byWidth;
        long looked = 0;
        for (; bucket <= last; bucket++)
        {
            if (buckets[bucket] is not { } others)
            {
                continue;
            }

            foreach (int other in others)
            {
                looked++;
                SheetBlock partner = _blocks[other];
                if ((isBeside ? partner.Width : partner.Height) > room)
                {
                    break;
                }

                if (!_fields.Fit(block.Pieces, partner.Pieces, _bias))
                {
                    continue;
                }

                long width = isBeside ? block.Width + partner.Width : Math.Max(block.Width, partner.Width);
                long height = isBeside ? Math.Max(block.Height, partner.Height) : block.Height + partner.Height;
                Offer(width, height, block.Area + partner.Area, block.Pieces + partner.Pieces, at, other, isBeside);
            }
        }

        return looked;
    }

    /// <summary>Sorted by the side that is added up: what is too long ends the search for a partner.</summary>
    private void Insert(ref List<int>? bucket, int block, long along, bool isWidth)
    {
        bucket ??= [];
        int low = 0, high = bucket.Count;
        while (low < high)
        {
            int middle = (low + high) / 2;
            SheetBlock other = _blocks[bucket[middle]];
            (low, high) = (isWidth ? other.Width : other.Height) <= along ? (middle + 1, high) : (low, middle);
        }

        bucket.Insert(low, block);
    }

    private void Offer(long width, long height, double area, PieceCounts pieces, int one, int other, bool isBeside)
    {
        double whole = (double)width * height, waste = whole - area;
        if (width > _width || height > _height || waste > _mostWaste || waste > _share * whole)
        {
            return;
        }

        // Another of the same rectangles that is no larger does as well.
        int last = _last.TryGetValue(pieces, out int found) ? found : -1;
        for (int same = last; same >= 0; same = _before[same])
        {
            _walked++;
            if (_blocks[same].Width <= width && _blocks[same].Height <= height)
            {
                return;
            }
        }

        _last[pieces] = _blocks.Count;
        _before.Add(last);
        _blocks.Add(new SheetBlock(width, height, area, pieces, one, other, isBeside));
    }
}
