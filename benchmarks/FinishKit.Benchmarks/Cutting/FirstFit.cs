using System;
using System.Collections.Generic;
using System.Linq;

namespace FinishKit.Benchmarks.Cutting;

/// <summary>
/// First fit decreasing on plain integers: what is quickly written by hand. With several kinds of boards each kind is tried as the one
/// that is opened, a board is then exchanged for the cheapest that its pieces fit on, and the cheapest of these plans is taken.
/// Boards and pieces are counted with one saw cut each.
/// </summary>
internal static class FirstFit
{
    /// <summary>The boards as kind and part of each piece.</summary>
    internal static List<(int Kind, List<int> Parts)> Pack(int[] sizes, int[] counts, int[] capacities, int[] prices)
    {
        int[] order = new int[sizes.Length];
        for (int i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        Array.Sort(order, (left, right) => sizes[right].CompareTo(sizes[left]));
        List<(int Kind, List<int> Parts)> best = [];
        long least = long.MaxValue;
        for (int opened = 0; opened < capacities.Length; opened++)
        {
            List<(int Kind, List<int> Parts)> boards = Pack(sizes, counts, capacities, prices, order, opened);
            long cost = boards.Sum(board => (long)prices[board.Kind]);
            if (cost < least)
            {
                (best, least) = (boards, cost);
            }
        }

        return best;
    }

    internal static int Cheapest(int[] capacities, int[] prices, int needed)
    {
        int cheapest = -1;
        for (int kind = 0; kind < capacities.Length; kind++)
        {
            if (capacities[kind] >= needed && (cheapest < 0 || prices[kind] < prices[cheapest]))
            {
                cheapest = kind;
            }
        }

        return cheapest;
    }

    private static List<(int Kind, List<int> Parts)> Pack(int[] sizes, int[] counts, int[] capacities, int[] prices, int[] order, int opened)
    {
        List<(int Kind, List<int> Parts)> boards = [];
        List<int> rooms = [];
        foreach (int part in order)
        {
            int at = 0;
            for (int n = 0; n < counts[part]; n++)
            {
                // What was full for one piece is full for the next of its length.
                while (at < rooms.Count && rooms[at] < sizes[part])
                {
                    at++;
                }

                if (at == rooms.Count)
                {
                    int kind = capacities[opened] >= sizes[part] ? opened : Cheapest(capacities, prices, sizes[part]);
                    boards.Add((kind, []));
                    rooms.Add(capacities[kind]);
                }

                boards[at].Parts.Add(part);
                rooms[at] -= sizes[part];
            }
        }

        for (int i = 0; i < boards.Count; i++)
        {
            boards[i] = (Cheapest(capacities, prices, capacities[boards[i].Kind] - rooms[i]), boards[i].Parts);
        }

        return boards;
    }
}
