using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// The linear program behind every bound: can parts be cut from so many boards of each kind, if patterns may be cut in fractions? It
/// finds the least theta such that theta times the boards are enough, by column generation: minimise theta subject to
/// sum(count x times) at least the demand of each size and sum(times) over a kind's patterns at most theta x boards. Its dual values
/// prove what cannot be: see <see cref="PartValues"/>.
/// </summary>
internal sealed class PatternProgram
{
    private const double Tolerance = 1e-9;
    private const double Scale = 1L << 44;

    private readonly CuttingProblem _problem;
    private readonly CuttingEffort _effort;
    private readonly PatternPricing _pricing;
    private readonly List<CuttingPattern> _pool;
    private readonly int[] _sizeRow, _kindRow;
    private readonly int[] _demand, _boards;
    private readonly int _rows, _sizes;
    private readonly double[][] _inverse;
    private readonly double[] _level, _column;
    private readonly CuttingPattern?[] _basis;
    private int _thetaRow;

    // Of the pool of patterns found so far those that fit are used again; new ones are added.
    internal PatternProgram(CuttingProblem problem, int[] demand, int[] boards, List<CuttingPattern> pool, PatternPricing pricing, CuttingEffort effort)
    {
        (_problem, _demand, _boards, _pool, _pricing, _effort) = (problem, demand, boards, pool, pricing, effort);
        _sizeRow = new int[demand.Length];
        _kindRow = new int[boards.Length];
        for (int i = 0; i < demand.Length; i++)
        {
            _sizeRow[i] = demand[i] > 0 ? _rows++ : -1;
        }

        _sizes = _rows;
        for (int kind = 0; kind < boards.Length; kind++)
        {
            _kindRow[kind] = boards[kind] > 0 ? _rows++ : -1;
        }

        _inverse = new double[_rows][];
        _level = new double[_rows];
        _column = new double[_rows];
        _basis = new CuttingPattern?[_rows];
    }

    /// <summary>Values that prove that the boards are too few, where they are.</summary>
    internal PartValues? TooFew { get; private set; }

    /// <summary>The last values found where the boards may be enough, true for every kind of board.</summary>
    internal PartValues? Values { get; private set; }

    /// <summary>False where the effort was spent before anything was known.</summary>
    internal bool Solve(bool toTheEnd = false)
    {
        if (!Start())
        {
            return true;
        }

        long[] values = new long[_demand.Length], floors = new long[_boards.Length], most = new long[_boards.Length];
        for (int pivots = 0; ; pivots++)
        {
            bool isOld = pivots % 150 == 149;
            if (!_effort.TrySpend(1 + ((long)_rows * _rows / 64) + (isOld ? (long)_rows * _rows * _rows / 64 : 0)))
            {
                return false;
            }

            if (isOld)
            {
                Refresh();
            }

            double[] dual = _inverse[_thetaRow];
            if (!toTheEnd && _level[_thetaRow] <= 1 + 1e-11)
            {
                return true;
            }

            if (EnterSlack(dual) || EnterKnown(dual))
            {
                continue;
            }

            for (int i = 0; i < _demand.Length; i++)
            {
                values[i] = _sizeRow[i] >= 0 ? Math.Max(0, (long)(dual[_sizeRow[i]] * Scale)) : 0;
            }

            _pricing.Prepare(values, _demand);
            bool isNew = false, isExact = true;
            CuttingPattern? entering = null;
            double least = 0;
            for (int kind = 0; kind < _boards.Length; kind++)
            {
                if (_kindRow[kind] < 0)
                {
                    continue;
                }

                floors[kind] = Math.Max(0, (long)(-dual[_kindRow[kind]] * Scale));
                long? priced = _pricing.Best(_problem.Capacity[kind], floors[kind], out int[]? counts, false);
                if (priced is null && counts is null)
                {
                    return false;
                }

                isExact &= priced is not null;
                long best = priced ?? Worth(counts!, values);
                most[kind] = best;
                if (counts is null || best <= floors[kind] + Math.Max(16, floors[kind] * 1e-9))
                {
                    continue;
                }

                CuttingPattern pattern = CuttingPattern.Of(kind, counts);
                _pool.Add(pattern);
                isNew = true;
                double reduced = (floors[kind] - best) / Scale;
                if (reduced < least)
                {
                    (least, entering) = (reduced, pattern);
                }
            }

            if ((isExact && Prove(values, most, !isNew)) || !isNew)
            {
                return true;
            }

            if (!Enter(entering!))
            {
                return true;
            }
        }
    }

    /// <summary>Patterns and how often, where the boards are enough.</summary>
    internal List<(CuttingPattern Pattern, double Times)> Solution()
    {
        List<(CuttingPattern, double)> used = [];
        for (int row = 0; row < _rows; row++)
        {
            if (_basis[row] is { } pattern && pattern.Sizes.Length > 0 && _level[row] > Tolerance)
            {
                used.Add((pattern, _level[row]));
            }
        }

        return used;
    }

    private static long Worth(int[] counts, long[] values)
    {
        long worth = 0;
        for (int i = 0; i < counts.Length; i++)
        {
            worth += counts[i] * values[i];
        }

        return worth;
    }

    /// <summary>Whether the values show that the boards do not hold the parts; kinds of which there is no board are valued too.</summary>
    private bool Prove(long[] values, long[] most, bool isLast)
    {
        long held = 0, needed = 0;
        for (int i = 0; i < values.Length; i++)
        {
            needed += values[i] * _demand[i];
        }

        for (int kind = 0; kind < _boards.Length; kind++)
        {
            held += _boards[kind] * most[kind];
        }

        bool isEnough = needed <= held;
        if (isEnough && !isLast)
        {
            return false;
        }

        for (int kind = 0; kind < _boards.Length; kind++)
        {
            if (_boards[kind] == 0)
            {
                most[kind] = _pricing.Best(_problem.Capacity[kind], 0, out _) ?? long.MaxValue / (1 << 14);
            }
        }

        PartValues proof = new((long[])values.Clone(), (long[])most.Clone(), _demand);
        (TooFew, Values) = isEnough ? (null, proof) : (proof, Values);
        return !isEnough;
    }

    /// <summary>A basis of patterns with one size each; false where a size fits no board there is.</summary>
    private bool Start()
    {
        double[] load = new double[_boards.Length];
        int[] kindOf = new int[_demand.Length], countOf = new int[_demand.Length];
        for (int i = 0; i < _demand.Length; i++)
        {
            if (_sizeRow[i] < 0)
            {
                continue;
            }

            int best = -1;
            for (int kind = 0; kind < _boards.Length; kind++)
            {
                if (_boards[kind] > 0 && _problem.Capacity[kind] >= _problem.Sizes[i] && (best < 0 || load[kind] / _boards[kind] < load[best] / _boards[best]))
                {
                    best = kind;
                }
            }

            if (best < 0)
            {
                long[] values = new long[_demand.Length], most = new long[_boards.Length];
                values[i] = 1;
                for (int kind = 0; kind < _boards.Length; kind++)
                {
                    most[kind] = Math.Min(_demand[i], _problem.Capacity[kind] / _problem.Sizes[i]);
                }

                TooFew = new PartValues(values, most, _demand);
                return false;
            }

            kindOf[i] = best;
            countOf[i] = (int)Math.Min(_demand[i], _problem.Capacity[best] / _problem.Sizes[i]);
            load[best] += (double)_demand[i] / countOf[i];
        }

        int fullest = -1;
        for (int kind = 0; kind < _boards.Length; kind++)
        {
            if (_boards[kind] > 0 && (fullest < 0 || load[kind] / _boards[kind] > load[fullest] / _boards[fullest]))
            {
                fullest = kind;
            }
        }

        for (int row = 0; row < _rows; row++)
        {
            _inverse[row] = new double[_rows];
        }

        int theta = _kindRow[fullest];
        double boards = _boards[fullest];
        for (int i = 0; i < _demand.Length; i++)
        {
            int row = _sizeRow[i];
            if (row < 0)
            {
                continue;
            }

            _inverse[row][row] = 1.0 / countOf[i];
            _basis[row] = new CuttingPattern(kindOf[i], [i], [countOf[i]]);
            if (kindOf[i] == fullest)
            {
                for (int kind = 0; kind < _boards.Length; kind++)
                {
                    if (_kindRow[kind] >= 0)
                    {
                        _inverse[_kindRow[kind]][row] = (kind == fullest ? 1 : _boards[kind]) / (boards * countOf[i]);
                    }
                }
            }
            else
            {
                _inverse[_kindRow[kindOf[i]]][row] = -1.0 / countOf[i];
            }
        }

        for (int kind = 0; kind < _boards.Length; kind++)
        {
            int row = _kindRow[kind];
            if (row >= 0)
            {
                _inverse[row][row] = 1;
                _inverse[row][theta] = kind == fullest ? -1 / boards : -_boards[kind] / boards;
            }
        }

        _thetaRow = theta;
        Levels();
        return true;
    }

    private void Levels()
    {
        for (int row = 0; row < _rows; row++)
        {
            double level = 0;
            double[] own = _inverse[row];
            for (int i = 0; i < _demand.Length; i++)
            {
                if (_sizeRow[i] >= 0)
                {
                    level += own[_sizeRow[i]] * _demand[i];
                }
            }

            _level[row] = Math.Max(0, level);
        }
    }

    /// <summary>Enters what is over of a size, or a board of a kind left whole.</summary>
    private bool EnterSlack(double[] dual)
    {
        int best = -1;
        double least = -1e-10;
        for (int row = 0; row < _rows; row++)
        {
            double reduced = row < _sizes ? dual[row] : -dual[row];
            if (reduced < least)
            {
                (least, best) = (reduced, row);
            }
        }

        if (best < 0)
        {
            return false;
        }

        double sign = best < _sizes ? -1 : 1;
        for (int row = 0; row < _rows; row++)
        {
            _column[row] = sign * _inverse[row][best];
        }

        return Pivot(best < _sizes ? new CuttingPattern(-1, [], []) { Surplus = best } : new CuttingPattern(-2, [], []) { Surplus = best });
    }

    private bool EnterKnown(double[] dual)
    {
        if (!_effort.TrySpend(_pool.Count / 8))
        {
            return false;
        }

        CuttingPattern? best = null;
        double least = -1e-9;
        foreach (CuttingPattern pattern in _pool)
        {
            int kindRow = _kindRow[pattern.Kind];
            if (kindRow < 0)
            {
                continue;
            }

            double reduced = -dual[kindRow];
            for (int i = 0; i < pattern.Sizes.Length; i++)
            {
                int size = pattern.Sizes[i];
                if (_demand[size] < pattern.Counts[i])
                {
                    reduced = 0;
                    break;
                }

                reduced -= pattern.Counts[i] * dual[_sizeRow[size]];
            }

            if (reduced < least * Math.Max(1e-3, -dual[kindRow]))
            {
                (least, best) = (reduced / Math.Max(1e-3, -dual[kindRow]), pattern);
            }
        }

        return best is not null && Enter(best);
    }

    private bool Enter(CuttingPattern pattern)
    {
        int kindRow = _kindRow[pattern.Kind];
        for (int row = 0; row < _rows; row++)
        {
            double[] own = _inverse[row];
            double sum = own[kindRow];
            for (int i = 0; i < pattern.Sizes.Length; i++)
            {
                sum += pattern.Counts[i] * own[_sizeRow[pattern.Sizes[i]]];
            }

            _column[row] = sum;
        }

        return Pivot(pattern);
    }

    private bool Pivot(CuttingPattern entering)
    {
        int leaving = BasisStep.Enter(_column, _inverse, _level, 1e-12, _thetaRow);
        if (leaving < 0)
        {
            return false;
        }

        _basis[leaving] = entering;
        return true;
    }

    /// <summary>Inverts the basis anew: rounding has added up.</summary>
    private void Refresh()
    {
        double[][] basis = new double[_rows][];
        for (int row = 0; row < _rows; row++)
        {
            basis[row] = new double[2 * _rows];
            basis[row][_rows + row] = 1;
        }

        for (int column = 0; column < _rows; column++)
        {
            if (column == _thetaRow)
            {
                for (int kind = 0; kind < _boards.Length; kind++)
                {
                    if (_kindRow[kind] >= 0)
                    {
                        basis[_kindRow[kind]][column] = -_boards[kind];
                    }
                }
            }
            else if (_basis[column] is not { } pattern)
            {
                basis[column][column] = 1;
            }
            else if (pattern.Kind < 0)
            {
                basis[pattern.Surplus][column] = pattern.Kind == -1 ? -1 : 1;
            }
            else
            {
                basis[_kindRow[pattern.Kind]][column] = 1;
                for (int i = 0; i < pattern.Sizes.Length; i++)
                {
                    basis[_sizeRow[pattern.Sizes[i]]][column] = pattern.Counts[i];
                }
            }
        }

        for (int column = 0; column < _rows; column++)
        {
            int pivot = column;
            for (int row = column + 1; row < _rows; row++)
            {
                if (Math.Abs(basis[row][column]) > Math.Abs(basis[pivot][column]))
                {
                    pivot = row;
                }
            }

            if (Math.Abs(basis[pivot][column]) < 1e-11)
            {
                return;
            }

            (basis[column], basis[pivot]) = (basis[pivot], basis[column]);
            double[] own = basis[column];
            double scale = own[column];
            for (int i = column; i < own.Length; i++)
            {
                own[i] /= scale;
            }

            for (int row = 0; row < _rows; row++)
            {
                double factor = basis[row][column];
                if (row != column && factor != 0)
                {
                    double[] other = basis[row];
                    for (int i = column; i < own.Length; i++)
                    {
                        other[i] -= factor * own[i];
                    }
                }
            }
        }

        for (int row = 0; row < _rows; row++)
        {
            Array.Copy(basis[row], _rows, _inverse[row], 0, _rows);
        }

        Levels();
    }
}
