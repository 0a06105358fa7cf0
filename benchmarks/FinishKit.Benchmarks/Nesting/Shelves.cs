using System.Collections.Generic;
using System.Linq;

namespace FinishKit.Benchmarks.Nesting;

/// <summary>First-fit decreasing height on shelves: what a person does with a pencil, and the start that the general solver is given.</summary>
internal static class Shelves
{
    /// <summary>For each rectangle its sheet, place and whether it is turned; in kerf-inflated units.</summary>
    internal static List<(int Sheet, long X, long Y, bool Turned)> Pack(IReadOnlyList<(long W, long H, bool Turns)> items, long width, long height)
    {
        (int Sheet, long X, long Y, bool Turned)[] places = new (int, long, long, bool)[items.Count];
        List<(int Sheet, long Y, long H, long Used)> shelves = [];
        List<long> tops = [];
        bool[] turned = [.. items.Select(item => item.W > width || item.H > height || (item.Turns && item.H > item.W && item.H <= width && item.W <= height))];
        long W(int i) => turned[i] ? items[i].H : items[i].W;
        long H(int i) => turned[i] ? items[i].W : items[i].H;
        foreach (int i in Enumerable.Range(0, items.Count).OrderByDescending(H).ThenByDescending(W))
        {
            int at = shelves.FindIndex(shelf => shelf.H >= H(i) && shelf.Used + W(i) <= width);
            if (at < 0)
            {
                int sheet = tops.FindIndex(top => top + H(i) <= height);
                if (sheet < 0)
                {
                    sheet = tops.Count;
                    tops.Add(0);
                }

                at = shelves.Count;
                shelves.Add((sheet, tops[sheet], H(i), 0));
                tops[sheet] += H(i);
            }

            places[i] = (shelves[at].Sheet, shelves[at].Used, shelves[at].Y, turned[i]);
            shelves[at] = shelves[at] with { Used = shelves[at].Used + W(i) };
        }

        return [.. places];
    }
}
