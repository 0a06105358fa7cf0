using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>The cheapest boards that hold every value asked of them, by going through packs of each kind, the dearest kind first.</summary>
internal sealed class BoardChoice
{
    private const int MostNodes = 3_000_000;

    private readonly CuttingProblem _problem;
    private readonly IReadOnlyList<PartValues> _proofs;
    private readonly IReadOnlyList<int[]> _tooFew, _open;
    private readonly CuttingEffort _effort;
    private readonly List<int> _kinds = [];
    private readonly int[] _boards;
    private readonly long[] _lacking;
    private readonly double[][] _rates;
    private readonly long _below;
    private long _least;
    private long _nodes, _mostNodes;
    private bool _isCut;
    private int[]? _best;

    internal BoardChoice(CuttingProblem problem, IReadOnlyList<PartValues> proofs, IReadOnlyList<int[]> tooFew, IReadOnlyList<int[]> open, long below, CuttingEffort effort)
    {
        (_problem, _proofs, _tooFew, _open, _below, _effort) = (problem, proofs, tooFew, open, below, effort);
        _boards = new int[problem.Kinds];
        _lacking = new long[proofs.Count];
        for (int kind = 0; kind < problem.Kinds; kind++)
        {
            if (problem.Price[kind] == 0)
            {
                _boards[kind] = problem.MostBoards(kind);
            }
            else
            {
                _kinds.Add(kind);
            }
        }

        _kinds.Sort((left, right) => problem.Price[left] != problem.Price[right] ? problem.Price[right].CompareTo(problem.Price[left]) : left.CompareTo(right));
        for (int k = 0; k < proofs.Count; k++)
        {
            _lacking[k] = proofs[k].Needed;
            for (int kind = 0; kind < problem.Kinds; kind++)
            {
                _lacking[k] -= _boards[kind] * proofs[k].Most[kind];
            }
        }

        // The least cost of a value with the kinds from a place on.
        _rates = new double[_kinds.Count + 1][];
        _rates[_kinds.Count] = new double[proofs.Count];
        for (int k = 0; k < proofs.Count; k++)
        {
            _rates[_kinds.Count][k] = double.PositiveInfinity;
        }

        for (int at = _kinds.Count - 1; at >= 0; at--)
        {
            _rates[at] = new double[proofs.Count];
            int kind = _kinds[at];
            for (int k = 0; k < proofs.Count; k++)
            {
                double rate = proofs[k].Most[kind] == 0 ? double.PositiveInfinity : problem.Price[kind] / ((double)problem.Pack[kind] * proofs[k].Most[kind]);
                _rates[at][k] = Math.Min(_rates[at + 1][k], rate);
            }
        }
    }

    /// <summary>No boards that do cost less.</summary>
    internal long Least { get; private set; }

    /// <summary>Null where none cost less than the given plan.</summary>
    internal int[]? Find()
    {
        _least = _below;
        _mostNodes = Math.Min(MostNodes, _effort.Left / 4);
        Choose(0, 0);
        _effort.Spend(_nodes);
        Least = _isCut ? Math.Min(_least, FromRates()) : _least;
        return _best;
    }

    /// <summary>What any one value asks for costs so much, with packs broken.</summary>
    private long FromRates()
    {
        double cost = 0;
        for (int k = 0; k < _proofs.Count; k++)
        {
            cost = Math.Max(cost, _lacking[k] <= 0 ? 0 : _lacking[k] * _rates[0][k] * (1 - 1e-12));
        }

        return cost >= long.MaxValue ? long.MaxValue : (long)Math.Ceiling(cost - 1e-9);
    }

    private void Choose(int at, long cost)
    {
        if (!Count(1) || cost >= _least)
        {
            return;
        }

        if (at == _kinds.Count)
        {
            if (IsEnough() && !IsRuledOut())
            {
                (_least, _best) = (cost, (int[])_boards.Clone());
            }

            return;
        }

        int kind = _kinds[at], pack = _problem.Pack[kind];
        int mostPacks = _problem.MostPacks(kind);
        int first = 0;
        if (at == _kinds.Count - 1)
        {
            // The last kind makes up what lacks.
            for (int k = 0; k < _proofs.Count; k++)
            {
                if (_lacking[k] > 0)
                {
                    long held = pack * _proofs[k].Most[kind];
                    if (held == 0)
                    {
                        return;
                    }

                    first = (int)Math.Max(first, Math.Min(int.MaxValue, (_lacking[k] + held - 1) / held));
                }
            }
        }

        for (int packs = first; packs <= mostPacks; packs++)
        {
            long now = cost + (packs * _problem.Price[kind]);
            if (!Count(1 + (_proofs.Count / 8)) || now >= _least)
            {
                break;
            }

            _boards[kind] = packs * pack;
            bool isEnough = true, canBe = true;
            for (int k = 0; k < _proofs.Count; k++)
            {
                long lacking = _lacking[k] - (_boards[kind] * _proofs[k].Most[kind]);
                isEnough &= lacking <= 0;
                canBe &= lacking <= 0 || now + (lacking * _rates[at + 1][k] * (1 - 1e-12)) < _least;
            }

            if (canBe)
            {
                for (int k = 0; k < _proofs.Count; k++)
                {
                    _lacking[k] -= _boards[kind] * _proofs[k].Most[kind];
                }

                Choose(at + 1, now);
                for (int k = 0; k < _proofs.Count; k++)
                {
                    _lacking[k] += _boards[kind] * _proofs[k].Most[kind];
                }
            }
        }

        _boards[kind] = 0;
    }

    /// <summary>False where that would be more nodes than are allowed.</summary>
    private bool Count(long nodes)
    {
        _isCut |= _nodes + nodes > _mostNodes;
        _nodes += _isCut ? 0 : nodes;
        return !_isCut;
    }

    private bool IsEnough()
    {
        foreach (long lacking in _lacking)
        {
            if (lacking > 0)
            {
                return false;
            }
        }

        return true;
    }

    private bool IsRuledOut()
    {
        foreach (int[] few in _tooFew)
        {
            bool isNoMore = true;
            for (int kind = 0; kind < few.Length; kind++)
            {
                isNoMore &= _boards[kind] <= few[kind];
            }

            if (isNoMore)
            {
                return true;
            }
        }

        foreach (int[] open in _open)
        {
            bool isSame = true;
            for (int kind = 0; kind < open.Length; kind++)
            {
                isSame &= _boards[kind] == open[kind];
            }

            if (isSame)
            {
                return true;
            }
        }

        return false;
    }
}
