using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// Chooses strips exactly, on whole nanometres. Nodes are the fixed strips and the middles of the free ribs; an edge joins two
/// neighbouring strips of that kind, with the strips off ribs between them.
/// </summary>
/// <remarks>
/// <para>An edge over a distance d carries k = ceiling(d/S) - 1 strips off ribs, spread equally, the smaller bays first. Fewer would
/// leave a bay over S. More would never do better: putting k of them in their place keeps every bay at S or less, and at the least distance
/// or more, and has fewer strips. Equal bays have at once the smallest largest bay and the least sum of squares.</para>
/// <para>A shortest path gives the counts; every path must pass all fixed nodes. Only edges on which the counts stay least go on;
/// of those only paths with the smallest largest bay, over the whole run; of those the least sum of squares; of those the leftmost.</para>
/// </remarks>
internal sealed class StripSolver
{
    /// <summary>The first criterion counts in steps of this, the second in ones; neither count comes near it.</summary>
    private const long First = 1L << 32;

    private readonly StripNumbers _run;
    private readonly long _ribCost;
    private readonly long[] _at;
    private readonly bool[] _isFixed;
    private readonly int _nodes;

    // The edges on which counts stay least, by the node they lead to.
    private readonly int[] _edgesOf;
    private int[] _from = new int[32];
    private int[] _offRibs = new int[32];
    private int _edges;

    private StripSolver(StripNumbers run, StripPreference preference)
    {
        _run = run;
        _ribCost = preference == StripPreference.OnRibs ? 1 : First;
        int most = run.Fixed.Length + run.RibCentres.Length;
        _at = new long[most];
        _isFixed = new bool[most];
        _nodes = FillNodes();
        _edgesOf = new int[_nodes + 1];
    }

    /// <summary>A strip off ribs counts once in the first criterion and once in the second, whatever the preference.</summary>
    private static long OffRibCost => First + 1;

    /// <summary>
    /// The smallest largest bay that can be had: without ribs every division into n bays is possible for which n least distances fit,
    /// and ribs take none of them away. A bay between two fixed strips may be of any size.
    /// </summary>
    internal static long SmallestLargestBay(StripNumbers run)
    {
        long smallest = 0;
        for (int i = 1; i < run.Fixed.Length; i++)
        {
            long distance = run.Fixed[i] - run.Fixed[i - 1];
            long bays = Math.Max(1, distance / run.LeastDistance);
            smallest = Math.Max(smallest, (distance + bays - 1) / bays);
        }

        return smallest;
    }

    /// <summary>
    /// Whether strips can be spaced at all. The number of bays that the largest bay asks for must not be more than the least distance
    /// leaves room for.
    /// </summary>
    internal static bool IsFeasible(StripNumbers run)
    {
        for (int i = 1; i < run.Fixed.Length; i++)
        {
            long distance = run.Fixed[i] - run.Fixed[i - 1];
            long offRibs = OffRibs(distance, run.LargestBay);
            if (offRibs > 0 && distance < run.LeastDistance * (offRibs + 1))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Every strip from left to right, of a run that is feasible.</summary>
    internal static List<(long Position, StripKind Kind)> Solve(StripNumbers run, StripPreference preference)
    {
        StripSolver solver = new(run, preference);
        solver.FindLeastCounts();
        return solver.Leftmost(solver.LeastSquares(solver.SmallestLargest()));
    }

    private static long OffRibs(long distance, long largestBay) => distance <= largestBay ? 0 : (distance - 1) / largestBay;

    private static long LargestOf(long distance, int bays) => (distance + bays - 1) / bays;

    /// <summary>Sum of the squares of equal bays, floor and ceiling mixed: n f² + r (2 f + 1). It may pass what 64 bits hold, never what a decimal holds.</summary>
    private static decimal SquaresOf(long distance, int bays)
    {
        long small = distance / bays, larger = distance % bays;
        return ((decimal)bays * small * small) + ((decimal)larger * ((2 * small) + 1));
    }

    private int FillNodes()
    {
        int nodes = 0, rib = 0;
        long before = 0;
        foreach (long strip in _run.Fixed)
        {
            for (; rib < _run.RibCentres.Length && _run.RibCentres[rib] < strip; rib++)
            {
                // Ribs before the first strip, those that a fixed strip bears on, and a second one at the same place take none.
                long centre = _run.RibCentres[rib];
                if (nodes > 0 && centre > _at[nodes - 1] && !_run.IsTaken(rib) && MayServe(before, centre, strip))
                {
                    _at[nodes++] = centre;
                }
            }

            _isFixed[nodes] = true;
            _at[nodes++] = strip;
            before = strip;
        }

        return nodes;
    }

    /// <summary>
    /// Whether a strip on a rib between two fixed ones can be one of the fewest strips. So few are always enough as the strips off ribs
    /// alone would be, so where there must be more of them with the rib, it is passed over.
    /// </summary>
    private bool MayServe(long before, long rib, long after) =>
        _ribCost != First || OffRibs(rib - before, _run.LargestBay) + 1 + OffRibs(after - rib, _run.LargestBay) <= OffRibs(after - before, _run.LargestBay);

    /// <summary>Shortest path on the two counts; keeps every edge that lies on one to the node it leads to.</summary>
    /// <remarks>
    /// Which nodes before q need a look? Let p lie before r, and let going on from p past r cost more than the least cost at r (r's own
    /// strip not counted for p). Then no edge from p to a node q at r + m or beyond is needed. For with k(p, q) the strips off
    /// ribs between p and q, k(p, q) is at least k(p, r) + k(r, q), since ceiling(x + y) is at least ceiling(x) + ceiling(y) - 1. So the
    /// edge costs at least what p past r costs plus k(r, q) strips, more than the least cost at r plus the edge from r to q. That edge is
    /// feasible: with k = 0 it is m long or longer; with k of 1 or more it is longer than k S, at least 2 k m, at least (k + 1) m. The
    /// second step needs m no more than S/2, so with a larger m every node back to the last fixed strip is looked at.
    /// </remarks>
    private void FindLeastCounts()
    {
        long largest = _run.LargestBay, least = _run.LeastDistance;
        bool prunes = least <= largest - least;
        long[] cost = new long[_nodes], past = new long[_nodes], lastUse = new long[_nodes];
        int[] open = new int[_nodes];
        int count = 1;
        lastUse[0] = long.MaxValue;
        for (int q = 1; q < _nodes; q++)
        {
            long here = _at[q], best = long.MaxValue, own = _isFixed[q] ? 0 : _ribCost;
            int kept = 0;
            for (int i = 0; i < count; i++)
            {
                int p = open[i];
                if (here >= lastUse[p])
                {
                    continue;
                }

                open[kept] = p;
                long distance = here - _at[p], offRibs = OffRibs(distance, largest);
                past[kept++] = cost[p] + (offRibs * OffRibCost);
                if (IsEdge(p, q, distance, offRibs))
                {
                    best = Math.Min(best, past[kept - 1] + own);
                }
            }

            count = kept;
            cost[q] = best;
            if (best != long.MaxValue)
            {
                for (int i = 0; i < count; i++)
                {
                    int p = open[i];
                    long distance = here - _at[p], offRibs = OffRibs(distance, largest);
                    if (past[i] + own == best && IsEdge(p, q, distance, offRibs))
                    {
                        AddEdge(p, (int)offRibs);
                    }
                    else if (prunes && past[i] > best)
                    {
                        lastUse[p] = Math.Min(lastUse[p], here + least);
                    }
                }
            }

            _edgesOf[q + 1] = _edges;
            if (_isFixed[q])
            {
                count = 0; // no edge passes a fixed strip
            }

            if (best != long.MaxValue)
            {
                open[count++] = q;
                lastUse[q] = long.MaxValue;
            }
        }
    }

    private bool IsEdge(int p, int q, long distance, long offRibs) =>
        distance >= _run.LeastDistance * (offRibs + 1) || (offRibs == 0 && _isFixed[p] && _isFixed[q]);

    private void AddEdge(int from, int offRibs)
    {
        if (_edges == _from.Length)
        {
            Array.Resize(ref _from, 2 * _edges);
            Array.Resize(ref _offRibs, 2 * _edges);
        }

        _from[_edges] = from;
        _offRibs[_edges++] = offRibs;
    }

    private long SmallestLargest()
    {
        long[] largest = new long[_nodes];
        for (int q = 1; q < _nodes; q++)
        {
            largest[q] = long.MaxValue;
            for (int e = _edgesOf[q]; e < _edgesOf[q + 1]; e++)
            {
                largest[q] = Math.Min(largest[q], Math.Max(largest[_from[e]], LargestOf(_at[q] - _at[_from[e]], _offRibs[e] + 1)));
            }
        }

        return largest[_nodes - 1];
    }

    /// <summary>The edges of the paths with the least sum of squares, as a list of edges for each node they come from; -1 ends it.</summary>
    private (int[] FirstOut, int[] NextOut, int[] To) LeastSquares(long largestBay)
    {
        decimal[] squares = new decimal[_nodes];
        for (int q = 1; q < _nodes; q++)
        {
            squares[q] = decimal.MaxValue;
            for (int e = _edgesOf[q]; e < _edgesOf[q + 1]; e++)
            {
                if (Through(e, q) is { } sum && sum < squares[q])
                {
                    squares[q] = sum;
                }
            }
        }

        int[] firstOut = new int[_nodes], nextOut = new int[_edges], to = new int[_edges];
        bool[] leadsOn = new bool[_nodes];
        leadsOn[_nodes - 1] = true;
        for (int q = _nodes - 1; q >= 0; q--)
        {
            firstOut[q] = -1;
        }

        for (int q = _nodes - 1; q > 0; q--)
        {
            for (int e = _edgesOf[q]; leadsOn[q] && e < _edgesOf[q + 1]; e++)
            {
                if (Through(e, q) == squares[q])
                {
                    int p = _from[e];
                    (leadsOn[p], to[e], nextOut[e], firstOut[p]) = (true, q, firstOut[p], e);
                }
            }
        }

        return (firstOut, nextOut, to);

        decimal? Through(int e, int q)
        {
            int p = _from[e], bays = _offRibs[e] + 1;
            long distance = _at[q] - _at[p];
            return squares[p] == decimal.MaxValue || LargestOf(distance, bays) > largestBay ? null : squares[p] + SquaresOf(distance, bays);
        }
    }

    /// <summary>
    /// The leftmost of the best paths, strip by strip: all paths that start alike are followed until one goes farther left. All have
    /// as many strips between two fixed ones. A strip off ribs never sits at the middle of a free rib: it would count as on it.
    /// </summary>
    private List<(long Position, StripKind Kind)> Leftmost((int[] FirstOut, int[] NextOut, int[] To) best)
    {
        List<(long, StripKind)> strips = new(_nodes) { (_at[0], StripKind.Fixed) };
        List<(int Edge, int Bay)> alike = [], next = [];
        Follow(0);
        while (alike.Count > 0)
        {
            long leftmost = long.MaxValue;
            foreach ((int edge, int bay) in alike)
            {
                leftmost = Math.Min(leftmost, EndOf(edge, bay));
            }

            (alike, next) = (next, alike);
            alike.Clear();
            int node = -1;
            foreach ((int edge, int bay) in next)
            {
                if (EndOf(edge, bay) == leftmost)
                {
                    if (bay <= _offRibs[edge])
                    {
                        alike.Add((edge, bay + 1));
                    }
                    else if (node < 0)
                    {
                        node = best.To[edge];
                        Follow(node);
                    }
                }
            }

            strips.Add((leftmost, node < 0 ? StripKind.OffRib : _isFixed[node] ? StripKind.Fixed : StripKind.OnRib));
        }

        return strips;

        void Follow(int node)
        {
            for (int e = best.FirstOut[node]; e >= 0; e = best.NextOut[e])
            {
                alike.Add((e, 1));
            }
        }

        // The smaller bays come first.
        long EndOf(int edge, int bay)
        {
            int bays = _offRibs[edge] + 1;
            long from = _at[_from[edge]], distance = _at[best.To[edge]] - from;
            long small = distance / bays, firstLarger = bays - (distance % bays);
            return from + (bay * small) + Math.Max(0, bay - firstLarger);
        }
    }
}
