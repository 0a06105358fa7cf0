using System;
using System.Collections.Generic;
using System.Linq;

namespace FinishKit.Tests.Stock;

/// <summary>
/// A plan's proof, checked without the search: what a board can hold by a dynamic programme over whole lengths, the cheapest boards by
/// trying numbers of each kind, and boards searched in vain by a search of its own.
/// </summary>
internal sealed class CuttingProof
{
    private const long MostSteps = 2_000_000;

    private readonly PackingInstance _instance;
    private readonly List<Valuation> _valuations = [];
    private readonly List<string> _faults = [], _unsettled = [];

    internal CuttingProof(PackingInstance instance, CuttingPlan plan)
        : this(instance, [.. plan.Valuations.Select(static claim => (claim.Values, claim.MostOfStock, claim.Needed))], plan.SearchedInVain)
    {
    }

    internal CuttingProof(PackingInstance instance, IReadOnlyList<(IReadOnlyList<long> Values, IReadOnlyList<long> Most, long Needed)> claims, IReadOnlyList<IReadOnlyList<int>> searched)
    {
        _instance = instance;
        for (int k = 0; k < claims.Count; k++)
        {
            (IReadOnlyList<long> values, IReadOnlyList<long> most, long needed) = claims[k];
            if (values.Count != instance.Items.Count || most.Count != instance.Stock.Count || values.Any(static value => value < 0))
            {
                _faults.Add($"valuation {k} is not one of these parts and boards");
                continue;
            }

            if (instance.Items.Select((item, i) => item.Count * values[i]).Sum() != needed)
            {
                _faults.Add($"valuation {k}: the parts are not worth {needed}");
            }

            long[] held = MostHeld(values);
            for (int kind = 0; kind < most.Count; kind++)
            {
                long own = held[Capacity(kind)];
                if (own > most[kind])
                {
                    _faults.Add($"valuation {k}: a board of kind {kind} can hold {own}, more than {most[kind]}");
                }
            }

            _valuations.Add(new Valuation(values, most, needed));
        }

        foreach (IReadOnlyList<int> boards in searched)
        {
            if (IsWithin(_faults, boards))
            {
                switch (CanBeCut(boards))
                {
                    case true:
                        _faults.Add($"the parts can be cut from {string.Join(" + ", boards)} boards");
                        break;
                    case null:
                        _unsettled.Add($"whether the parts can be cut from {string.Join(" + ", boards)} boards");
                        break;
                    default:
                        break;
                }
            }
        }

        LeastCost = Cheapest(searched);
    }

    /// <summary>What the proof says that is not so; empty for a sound one.</summary>
    internal IReadOnlyList<string> Faults => _faults;

    /// <summary>What this check's own search did not find out either way.</summary>
    internal IReadOnlyList<string> Unsettled => _unsettled;

    /// <summary>The cheapest boards that hold every value and were not searched in vain.</summary>
    internal long LeastCost { get; }

    private bool IsWithin(List<string> faults, IReadOnlyList<int> boards)
    {
        if (boards.Count == _instance.Stock.Count)
        {
            return true;
        }

        faults.Add("boards searched in vain are not of these kinds");
        return false;
    }

    private int Capacity(int kind) => _instance.Stock[kind].Length + _instance.Kerf;

    private int Size(int part) => _instance.Items[part].Length + _instance.Kerf;

    /// <summary>For every room the most value that parts can have in it, no more of each than asked for.</summary>
    private long[] MostHeld(IReadOnlyList<long> values)
    {
        long[] held = new long[Enumerable.Range(0, _instance.Stock.Count).Max(Capacity) + 1];
        for (int part = 0; part < _instance.Items.Count; part++)
        {
            AddTo(held, values[part], part);
        }

        return held;
    }

    /// <summary>A part with its count, as bundles of 1, 2, 4 ... pieces, which make up every number to the count.</summary>
    private void AddTo(long[] held, long value, int part)
    {
        for (int bundle = 1, left = _instance.Items[part].Count; left > 0; bundle *= 2)
        {
            int taken = Math.Min(bundle, left);
            left -= taken;
            long size = (long)taken * Size(part), worth = taken * value;
            for (long room = held.Length - 1; room >= size; room--)
            {
                held[room] = Math.Max(held[room], held[room - size] + worth);
            }
        }
    }

    private long Cheapest(IReadOnlyList<IReadOnlyList<int>> searched)
    {
        int[] boards = new int[_instance.Stock.Count];
        long least = long.MaxValue;
        Try(0, 0);
        return least;

        void Try(int kind, long cost)
        {
            if (kind < boards.Length - 1)
            {
                // More boards of a kind than there are pieces never help.
                for (boards[kind] = 0; boards[kind] <= _instance.Pieces && cost + ((long)boards[kind] * _instance.Stock[kind].Price) < least; boards[kind]++)
                {
                    Try(kind + 1, cost + ((long)boards[kind] * _instance.Stock[kind].Price));
                }

                boards[kind] = 0;
                return;
            }

            for (boards[kind] = 0; boards[kind] <= _instance.Pieces; boards[kind]++)
            {
                if (_valuations.TrueForAll(valuation => valuation.Over(boards) >= 0) && !searched.Any(vain => boards.Select((count, i) => count <= vain[i]).All(static less => less)))
                {
                    least = Math.Min(least, cost + ((long)boards[kind] * _instance.Stock[kind].Price));
                    break;
                }
            }
        }
    }

    /// <summary>
    /// Whether the parts can be cut from so many boards of each kind: the longest piece left lies on some board; that board has no room
    /// for another piece that is left (one could be moved there); and all boards together waste no more value than they have over.
    /// Null where that takes too long.
    /// </summary>
    private bool? CanBeCut(IReadOnlyList<int> available)
    {
        int[] order = [.. Enumerable.Range(0, _instance.Items.Count).OrderByDescending(Size)];
        int[] left = [.. order.Select(part => _instance.Items[part].Count)], boards = [.. available];
        List<Valuation> valuations = [.. _valuations, Plain()];
        long[] over = [.. valuations.Select(valuation => valuation.Over(available))];

        // What the parts from a place on can be worth in a room at most.
        long[][][] most = [.. valuations.Select(valuation => Suffixes(valuation.Values, order))];
        HashSet<string> failed = new(StringComparer.Ordinal);
        long steps = 0;
        return over.Any(static value => value < 0) ? false : Place();

        bool? Place()
        {
            int first = Array.FindIndex(left, static count => count > 0);
            if (first < 0)
            {
                return true;
            }

            string key = string.Join(',', left) + ';' + string.Join(',', boards);
            if (failed.Contains(key))
            {
                return false;
            }

            for (int kind = 0; kind < boards.Length; kind++)
            {
                if (boards[kind] > 0 && Capacity(kind) >= Size(order[first]))
                {
                    boards[kind]--;
                    left[first]--;
                    bool? found = Fill(first, Capacity(kind) - Size(order[first]), int.MaxValue, [.. valuations.Select(valuation => valuation.Most[kind] - valuation.Values[order[first]])]);
                    left[first]++;
                    boards[kind]++;
                    if (found != false)
                    {
                        return found;
                    }
                }
            }

            failed.Add(key);
            return false;
        }

        // The rest of a board from a part on, the smallest part left over being "spare"; lacking is what the board wastes if nothing is added.
        bool? Fill(int at, long room, int spare, long[] lacking)
        {
            if (++steps > MostSteps)
            {
                return null;
            }

            for (int k = 0; k < lacking.Length; k++)
            {
                if (lacking[k] - most[k][at][room] > over[k])
                {
                    return false;
                }
            }

            if (at == order.Length)
            {
                if (room >= spare)
                {
                    return false;
                }

                for (int k = 0; k < over.Length; k++)
                {
                    over[k] -= lacking[k];
                }

                bool? found = Place();
                for (int k = 0; k < over.Length; k++)
                {
                    over[k] += lacking[k];
                }

                return found;
            }

            int size = Size(order[at]), count = (int)Math.Min(left[at], room / size), all = left[at];
            bool? answer = false;
            for (int taken = count; taken >= 0 && answer == false; taken--)
            {
                left[at] = all - taken;
                long[] next = [.. lacking.Select((value, k) => value - (taken * valuations[k].Values[order[at]]))];
                answer = Fill(at + 1, room - ((long)taken * size), left[at] > 0 ? size : spare, next);
            }

            left[at] = all;
            return answer;
        }
    }

    /// <summary>Length itself as a value: always sound.</summary>
    private Valuation Plain() => new(
        [.. Enumerable.Range(0, _instance.Items.Count).Select(part => (long)Size(part))],
        [.. Enumerable.Range(0, _instance.Stock.Count).Select(kind => (long)Capacity(kind))],
        _instance.Items.Select((item, part) => (long)item.Count * Size(part)).Sum());

    private long[][] Suffixes(IReadOnlyList<long> values, int[] order)
    {
        long[][] most = new long[order.Length + 1][];
        most[order.Length] = new long[Enumerable.Range(0, _instance.Stock.Count).Max(Capacity) + 1];
        for (int at = order.Length - 1; at >= 0; at--)
        {
            most[at] = [.. most[at + 1]];
            AddTo(most[at], values[order[at]], order[at]);
        }

        return most;
    }

    private sealed record Valuation(IReadOnlyList<long> Values, IReadOnlyList<long> Most, long Needed)
    {
        internal long Over(IReadOnlyList<int> boards) => Most.Select((most, kind) => most * boards[kind]).Sum() - Needed;
    }
}
