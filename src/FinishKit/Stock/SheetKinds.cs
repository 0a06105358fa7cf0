using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// Rectangles of several kinds and sheets of several sizes in whole steps. A rectangle is counted with a kerf to its right and one above
/// it, and so is the sheet: n pieces side by side have n - 1 kerfs, and sum(w) + (n - 1) k is no more than W exactly when sum(w + k) is
/// no more than W + k.
/// </summary>
internal sealed class SheetKinds
{
    internal SheetKinds(long[] width, long[] height, bool[] turns, int[] count)
    {
        (Width, Height, Turns, Count) = (width, height, turns, count);
        Area = new double[width.Length];
        for (int kind = 0; kind < width.Length; kind++)
        {
            Area[kind] = (double)width[kind] * height[kind];
            Pieces += count[kind];
        }
    }

    internal int Kinds => Width.Length;

    internal long[] Width { get; }

    internal long[] Height { get; }

    /// <summary>Whether it may be turned by a quarter.</summary>
    internal bool[] Turns { get; }

    internal int[] Count { get; }

    internal double[] Area { get; }

    internal int Pieces { get; }

    internal long WidthOf(in SheetPlace place) => place.Turned ? Height[place.Kind] : Width[place.Kind];

    internal long HeightOf(in SheetPlace place) => place.Turned ? Width[place.Kind] : Height[place.Kind];

    internal bool Goes(int kind, long width, long height) =>
        (Width[kind] <= width && Height[kind] <= height) || (Turns[kind] && Height[kind] <= width && Width[kind] <= height);

    /// <summary>Kinds by a key, the greatest first, equal ones in their own order.</summary>
    internal static int[] By(double[] key)
    {
        int[] order = new int[key.Length];
        for (int i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        Array.Sort(order, (left, right) => key[left] != key[right] ? key[right].CompareTo(key[left]) : left.CompareTo(right));
        return order;
    }

    /// <summary>The orders that fillings start from: by area, longer side, height and shorter side.</summary>
    internal int[][] Orders()
    {
        double[] longer = new double[Kinds], shorter = new double[Kinds], height = new double[Kinds];
        for (int kind = 0; kind < Kinds; kind++)
        {
            longer[kind] = Math.Max(Width[kind], Height[kind]);
            shorter[kind] = Math.Min(Width[kind], Height[kind]);
            height[kind] = Height[kind];
        }

        return [By(Area), By(longer), By(height), By(shorter)];
    }
}

/// <summary>The sizes of sheets: the bought ones, then those on hand. A price of 0 is for what is there already.</summary>
internal sealed class SheetSizes
{
    internal SheetSizes(long[] width, long[] height, long[] price, int[] limit) => (Width, Height, Price, Limit) = (width, height, price, limit);

    internal int Count => Width.Length;

    internal long[] Width { get; }

    internal long[] Height { get; }

    internal long[] Price { get; }

    internal int[] Limit { get; }
}

/// <summary>Where a rectangle lies on a sheet, from its lower left corner.</summary>
internal readonly struct SheetPlace
{
    internal SheetPlace(int kind, bool turned, long x, long y) => (Kind, Turned, X, Y) = (kind, turned, x, y);

    internal int Kind { get; }

    internal bool Turned { get; }

    internal long X { get; }

    internal long Y { get; }
}

/// <summary>What lies on one sheet.</summary>
internal sealed class FilledSheet
{
    internal List<SheetPlace> Places { get; } = [];

    /// <summary>Area of its rectangles, kerfs included.</summary>
    internal double Area { get; set; }

    internal int Size { get; set; }
}

/// <summary>Chance that is the same on every machine (xorshift, Marsaglia).</summary>
internal struct RepeatableChance
{
    private ulong _state;

    internal RepeatableChance(ulong seed) => _state = seed;

    /// <summary>0 up to one less than the bound.</summary>
    internal int Below(int bound)
    {
        _state ^= _state << 13;
        _state ^= _state >> 7;
        _state ^= _state << 17;
        return (int)((_state >> 11) % (ulong)bound);
    }
}
