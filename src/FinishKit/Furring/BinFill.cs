using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// Pieces with a kerf between them laid into bins of one size. A piece is counted with a kerf and so is the bin: n pieces have n - 1
/// kerfs, and sum(p) + (n - 1) k is no more than C exactly when sum(p + k) is no more than C + k.
/// </summary>
internal static class BinFill
{
    /// <summary>First fit, the largest first; of equal ones the first comes first. Each bin lists its pieces by their place in the list.</summary>
    internal static List<List<int>> FirstFitDecreasing(IReadOnlyList<long> pieces, long size, long kerf)
    {
        int[] order = new int[pieces.Count];
        for (int i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        Array.Sort(order, (left, right) => pieces[left] != pieces[right] ? pieces[right].CompareTo(pieces[left]) : left.CompareTo(right));
        List<List<int>> bins = [];
        List<long> left = [];
        foreach (int piece in order)
        {
            long needed = pieces[piece] + kerf;
            int bin = left.FindIndex(room => room >= needed);
            if (bin < 0)
            {
                bin = bins.Count;
                bins.Add([]);
                left.Add(size + kerf);
            }

            bins[bin].Add(piece);
            left[bin] -= needed;
        }

        return bins;
    }

    /// <summary>
    /// So many bins at least. For each a up to half a bin: a piece over half shares its bin with no other such piece, and one that leaves
    /// less than a with none of a or more; what does not fit beside the rest needs bins of its own. And of the pieces from any size up, a
    /// bin holds no more than of the smallest of these.
    /// </summary>
    internal static int LeastBins(IReadOnlyList<long> pieces, long size, long kerf)
    {
        long bin = size + kerf;
        long[] sorted = new long[pieces.Count];
        for (int i = 0; i < sorted.Length; i++)
        {
            sorted[i] = pieces[i] + kerf;
        }

        Array.Sort(sorted);
        long[] sums = new long[sorted.Length + 1];
        for (int i = 0; i < sorted.Length; i++)
        {
            sums[i + 1] = sums[i] + sorted[i];
        }

        int overHalf = FirstOver(sorted, bin / 2);
        long most = (sums[sorted.Length] + bin - 1) / bin;
        for (int i = 0; i <= overHalf && i < sorted.Length; i++)
        {
            // Pieces from i on, up to half a bin, and those over half that leave room for the smallest of these.
            long smallest = i < overHalf ? sorted[i] : 0;
            int alone = FirstOver(sorted, bin - smallest);
            long beside = ((alone - overHalf) * bin) - (sums[alone] - sums[overHalf]);
            long rest = i < overHalf ? Math.Max(0, sums[overHalf] - sums[i] - beside) : 0;
            most = Math.Max(most, sorted.Length - overHalf + ((rest + bin - 1) / bin));
        }

        for (int i = 0, end = 0; i < sorted.Length; i++)
        {
            while (end < sorted.Length && sums[end + 1] - sums[i] <= bin)
            {
                end++;
            }

            int inOne = Math.Max(1, end - i);
            most = Math.Max(most, (sorted.Length - i + inOne - 1) / inOne);
        }

        return (int)most;
    }

    /// <summary>How many of the sorted pieces are no more than <paramref name="limit"/>.</summary>
    private static int FirstOver(long[] sorted, long limit)
    {
        int low = 0, high = sorted.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = sorted[middle] <= limit ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
