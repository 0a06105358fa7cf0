using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;

namespace FinishKit.Tests.Stock;

/// <summary>
/// What a few rectangles need, by trying everything, in whole units and with the kerf counted in. A layout can be pushed left and down
/// until each piece touches the edge or another piece; the pieces can then be laid one after the other so that what a piece rests on is
/// there before it. So it is enough to try every order, every turn, and the edges of pieces laid before as places.
/// </summary>
internal sealed class NestingOracle
{
    private readonly (long Width, long Height, bool MayTurn)[] _pieces;
    private readonly bool _sawn;
    private readonly Dictionary<(int Set, long Width, long Height), bool> _known = [];

    internal NestingOracle(IReadOnlyList<(long Width, long Height, bool MayTurn)> pieces, bool sawn) => (_pieces, _sawn) = ([.. pieces], sawn);

    private int All => (1 << _pieces.Length) - 1;

    /// <summary>Whether a set of pieces goes on a sheet.</summary>
    internal bool Fits(int set, long width, long height)
    {
        if (set == 0)
        {
            return true;
        }

        if (_known.TryGetValue((set, width, height), out bool known))
        {
            return known;
        }

        long area = Members(set).Sum(piece => _pieces[piece].Width * _pieces[piece].Height);
        bool fits = area <= width * height && Members(set).All(piece => Goes(piece, width, height)) && (BitOperations.PopCount((uint)set) == 1 || (_sawn ? Sawn(set, width, height) : Laid(set, width, height)));
        return _known[(set, width, height)] = fits;
    }

    /// <summary>The least length of a strip of given width on which all pieces lie.</summary>
    internal long LeastLength(long width)
    {
        long best = _pieces.Sum(static piece => Math.Max(piece.Width, piece.Height)) + 1;
        List<(long X, long Y, long Right, long Top)> there = [];
        Lay(All, width, 0, ref best, false, there);
        return best;
    }

    /// <summary>The least cost, and the fewest sheets, for all pieces: null where they do not go on the sheets there are.</summary>
    internal (decimal Cost, int Sheets)? Least(IReadOnlyList<(long Width, long Height, decimal Price, int Available)> sheets)
    {
        // By numbers of sheets of each kind: which sets go on them.
        decimal? cost = null;
        int? fewest = null;
        int[] counts = new int[sheets.Count];
        Try(0);
        return cost is null ? null : (cost.Value, fewest!.Value);

        void Try(int kind)
        {
            if (kind < sheets.Count)
            {
                for (counts[kind] = 0; counts[kind] <= Math.Min(sheets[kind].Available, _pieces.Length) && counts.Sum() <= _pieces.Length; counts[kind]++)
                {
                    Try(kind + 1);
                }

                counts[kind] = 0;
                return;
            }

            decimal price = counts.Select((count, i) => count * sheets[i].Price).Sum();
            if ((cost is null || price < cost || counts.Sum() < fewest) && Holds())
            {
                cost = cost is null ? price : Math.Min(cost.Value, price);
                fewest = fewest is null ? counts.Sum() : Math.Min(fewest.Value, counts.Sum());
            }
        }

        bool Holds()
        {
            bool[] held = new bool[All + 1];
            held[0] = true;
            for (int kind = 0; kind < sheets.Count; kind++)
            {
                for (int i = 0; i < counts[kind]; i++)
                {
                    bool[] then = [.. held];
                    for (int set = 0; set <= All; set++)
                    {
                        for (int more = ~set & All; held[set] && more > 0; more = (more - 1) & ~set)
                        {
                            then[set | more] |= Fits(more, sheets[kind].Width, sheets[kind].Height);
                        }
                    }

                    held = then;
                }
            }

            return held[All];
        }
    }

    private IEnumerable<int> Members(int set) => Enumerable.Range(0, _pieces.Length).Where(piece => (set & (1 << piece)) != 0);

    private bool Goes(int piece, long width, long height) =>
        (_pieces[piece].Width <= width && _pieces[piece].Height <= height) || (_pieces[piece].MayTurn && _pieces[piece].Height <= width && _pieces[piece].Width <= height);

    private bool Laid(int set, long width, long height)
    {
        // What a smaller set does not do, a larger one does not either.
        if (Members(set).Any(piece => !Fits(set & ~(1 << piece), width, height)))
        {
            return false;
        }

        long best = height + 1;
        return Lay(set, width, 0, ref best, true, []);
    }

    /// <summary>Lays the rest lower than the best so far: the least height there is, or the first found where that is enough.</summary>
    private bool Lay(int rest, long width, long top, ref long best, bool isFirstEnough, List<(long X, long Y, long Right, long Top)> there)
    {
        if (rest == 0)
        {
            best = top;
            return true;
        }

        bool found = false;
        foreach (int piece in Members(rest))
        {
            for (int turn = 0; turn < (_pieces[piece].MayTurn ? 2 : 1); turn++)
            {
                long w = turn == 0 ? _pieces[piece].Width : _pieces[piece].Height, h = turn == 0 ? _pieces[piece].Height : _pieces[piece].Width;
                foreach (long x in there.Select(static box => box.Right).Append(0).Distinct().ToArray())
                {
                    foreach (long y in there.Select(static box => box.Top).Append(0).Distinct().ToArray())
                    {
                        long newTop = Math.Max(top, y + h);
                        if (x + w > width || newTop >= best || there.Exists(box => box.X < x + w && box.Right > x && box.Y < y + h && box.Top > y))
                        {
                            continue;
                        }

                        there.Add((x, y, x + w, y + h));
                        found |= Lay(rest & ~(1 << piece), width, newTop, ref best, isFirstEnough, there);
                        there.RemoveAt(there.Count - 1);
                        if (found && isFirstEnough)
                        {
                            return true;
                        }
                    }
                }
            }
        }

        return found;
    }

    /// <summary>Some cut from edge to edge parts the set in two that each go on their part.</summary>
    private bool Sawn(int set, long width, long height)
    {
        for (int near = (set - 1) & set; near > 0; near = (near - 1) & set)
        {
            long? x = First(near, wide => Fits(near, wide, height), width);
            if (x is { } wide && wide < width && Fits(set & ~near, width - wide, height))
            {
                return true;
            }

            long? y = First(near, high => Fits(near, width, high), height);
            if (y is { } high && high < height && Fits(set & ~near, width, height - high))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The least of the sums of sides on which the set goes.</summary>
    private long? First(int set, Func<long, bool> fits, long most)
    {
        SortedSet<long> sums = [0];
        foreach (int piece in Members(set))
        {
            foreach (long sum in sums.ToArray())
            {
                sums.Add(sum + _pieces[piece].Width);
                if (_pieces[piece].MayTurn)
                {
                    sums.Add(sum + _pieces[piece].Height);
                }
            }
        }

        long[] lengths = [.. sums.Where(sum => sum > 0 && sum <= most)];
        int low = 0, high = lengths.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = fits(lengths[middle]) ? (low, middle) : (middle + 1, high);
        }

        return low < lengths.Length ? lengths[low] : null;
    }
}
