using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>The most value that a board of a kind can hold, of pieces that some choice of joints has.</summary>
internal sealed class JointPricing
{
    private const int Cells = 8192;
    private const long MostNodes = 300_000;

    /// <summary>Beside the search a table, which takes so much at most.</summary>
    private const long MostTableNodes = 2_500_000;

    private readonly CuttingProblem _problem;
    private readonly CuttingEffort _effort;
    private readonly System.Threading.CancellationToken _cancellation;

    internal JointPricing(CuttingProblem problem, CuttingEffort effort, System.Threading.CancellationToken cancellation) => (_problem, _effort, _cancellation) = (problem, effort, cancellation);

    /// <summary>No board of the kind holds more; the counts are those of a valuable filling, mostly of the best. Null where the effort was spent first.</summary>
    internal long? Most(int kind, long[] values, out int[]? counts)
    {
        long capacity = _problem.Capacity[kind];
        int[] demand = new int[values.Length];
        for (int i = 0; i < demand.Length; i++)
        {
            demand[i] = (int)Math.Min(_problem.Demand[i], capacity / _problem.Sizes[i]);
        }

        CuttingEffort own = new(Math.Min(MostNodes + MostTableNodes, _effort.Left - 1), null, _cancellation);
        PatternPricing pricing = new(_problem.Sizes, own, MostNodes);
        pricing.Prepare(values, demand);
        long? most = pricing.Best(capacity, 0, out counts, false);
        if (most is null)
        {
            int[]? found = counts;
            most = pricing.Best(capacity, 0, out counts);
            counts ??= found;
        }

        return !_effort.TrySpend(own.Used + 1) ? null : most ?? Coarse(capacity, values, demand);
    }

    /// <summary>Sizes and board rounded down to a coarse grid: whatever goes on the board goes on that one too.</summary>
    private long? Coarse(long capacity, long[] values, int[] demand)
    {
        long grid = (capacity / Cells) + 1, extra = 0;
        long[] most = new long[(capacity / grid) + 1];
        if (!_effort.TrySpend(values.Length * (long)most.Length / 16))
        {
            return null;
        }

        for (int i = 0; i < values.Length; i++)
        {
            long size = _problem.Sizes[i] / grid;
            if (size == 0)
            {
                extra += demand[i] * values[i];
                continue;
            }

            for (long room = size; demand[i] > 0 && room < most.Length; room++)
            {
                most[room] = Math.Max(most[room], most[room - size] + values[i]);
            }
        }

        long best = 0;
        foreach (long value in most)
        {
            best = Math.Max(best, value);
        }

        return best + extra;
    }
}

/// <summary>
/// The linear program over joints and boards at once: choices of joints and patterns may both be taken in fractions. Minimise the price of
/// the boards, subject to pieces cut being no fewer than pieces chosen, of each size; of each chain of neighbouring courses (or of each run,
/// where not all ways are looked at) one choice in all; boards within what there is. Columns of both kinds are made as they are wanted. Its dual values are the values of pieces that
/// prove most; the proof itself is reckoned anew in whole numbers, so that nothing rests on the rounding here.
/// </summary>
internal sealed class JointProgram
{
    private const double Scale = 1L << 40;
    private const double Dear = 1.2;
    private const int MostPivots = 12_000;

    private readonly JointChoices _choices;
    private readonly CuttingProblem _problem;
    private readonly JointPricing _pricing;
    private readonly CuttingEffort _effort;
    private readonly List<Column> _columns = [];
    private readonly double[] _cost, _dear;
    private readonly int[] _limitRow, _partRow;
    private readonly int _rows, _sizes;
    private readonly double[][] _inverse;
    private readonly double[] _level, _dual, _entering;
    private readonly Column[] _basis;
    private int _pivots;
    private bool _isDone;

    /// <param name="choices">The choices.</param>
    /// <param name="problem">All sizes and boards.</param>
    /// <param name="pricing">What a board can hold.</param>
    /// <param name="first">A choice to begin with.</param>
    /// <param name="boards">Null for the least price of boards; or boards that are given, and what is asked is the least length that they do not hold.</param>
    /// <param name="effort">Counts.</param>
    internal JointProgram(JointChoices choices, CuttingProblem problem, JointPricing pricing, int[] first, int[]? boards, CuttingEffort effort)
    {
        (_choices, _problem, _pricing, _effort) = (choices, problem, pricing, effort);
        _sizes = _rows = problem.Sizes.Length;
        _limitRow = new int[problem.Kinds];
        _cost = new double[problem.Kinds];
        double dearest = 1;
        for (int kind = 0; kind < problem.Kinds; kind++)
        {
            _cost[kind] = (double)problem.Price[kind] / problem.Pack[kind];
            dearest = Math.Max(dearest, _cost[kind]);
            _limitRow[kind] = boards is not null || problem.Limit[kind] < problem.Pieces ? _rows++ : -1;
        }

        _partRow = new int[choices.Parts];
        for (int part = 0; part < _partRow.Length; part++)
        {
            _partRow[part] = _rows++;
        }

        for (int kind = 0; kind < problem.Kinds; kind++)
        {
            _cost[kind] = boards is null ? _cost[kind] / dearest : 0;
        }

        _dear = Array.ConvertAll(problem.Sizes, size => boards is null ? Dear : (double)size / problem.Sizes[0]);

        _inverse = new double[_rows][];
        (_level, _dual, _entering) = (new double[_rows], new double[_rows], new double[_rows]);
        _basis = new Column[_rows];
        Start(first, boards);
    }

    /// <summary>Values of the next round with what boards hold of them and what every choice needs, and the cheapest choice by them; false at the end, of the effort too.</summary>
    internal bool Next(out PartValues? proof, out int[]? choice)
    {
        (proof, choice) = (null, null);
        while (!_isDone && _pivots < MostPivots && _effort.TrySpend(1 + ((long)_rows * _rows / 64) + (_columns.Count / 8)))
        {
            Duals();
            if (EnterKnown())
            {
                continue;
            }

            long[] values = new long[_sizes], most = new long[_problem.Kinds];
            for (int i = 0; i < _sizes; i++)
            {
                values[i] = Math.Max(0, (long)(_dual[i] * Scale));
            }

            bool isNew = false;
            for (int kind = 0; kind < most.Length; kind++)
            {
                if (_pricing.Most(kind, values, out int[]? counts) is not { } own)
                {
                    return false;
                }

                most[kind] = own;
                isNew |= counts is not null && Add(kind, counts);
            }

            if (_choices.ToGo(values, _effort) is not { } toGo || _choices.Cheapest(toGo, _effort) is not { } cheapest || _choices.Needed(values, toGo, _effort, out int[][]? parts) is not { } needed)
            {
                return false;
            }

            choice = cheapest;
            proof = new PartValues(values, most, needed);
            isNew |= parts is not null && Add(parts);
            _isDone = !isNew;
            return true;
        }

        return false;
    }

    /// <summary>Fillings of boards, as counts of every size.</summary>
    internal List<(int Kind, int[] Counts)> Patterns { get; } = [];

    /// <summary>Ways of dividing parts.</summary>
    internal List<(int Part, int[] Sizes)> Divisions { get; } = [];

    /// <summary>What another program found.</summary>
    internal void AddAll(JointProgram other)
    {
        foreach ((int kind, int[] counts) in other.Patterns)
        {
            _columns.Add(PatternOf(kind, counts));
        }

        foreach ((int part, int[] sizes) in other.Divisions)
        {
            _columns.Add(PartOf(part, sizes));
        }
    }

    /// <summary>Fillings of boards that are known already.</summary>
    internal void Add(CuttingPattern pattern, int[] sizes)
    {
        int[] counts = new int[_sizes];
        for (int i = 0; i < pattern.Sizes.Length; i++)
        {
            counts[sizes[pattern.Sizes[i]]] = pattern.Counts[i];
        }

        _columns.Add(PatternOf(pattern.Kind, counts));
        Patterns.Add((pattern.Kind, counts));
    }

    /// <summary>Every piece from a board of its own that costs more than any there is; what a chain does not ask for is over.</summary>
    private void Start(int[] first, int[]? boards)
    {
        int[] demand = _choices.Demand(first);
        for (int row = 0; row < _rows; row++)
        {
            _inverse[row] = new double[_rows];
            _inverse[row][row] = 1;
            _basis[row] = new Column([row], [1], 0);
        }

        double[] right = new double[_rows];
        for (int i = 0; i < _sizes; i++)
        {
            // Each a little over nothing, and none as much as another: no step is then of length 0.
            right[i] = -1e-7 * (1 + (i * 7 % 31));
            _basis[i] = demand[i] > 0 ? new Column([i], [1], _dear[i]) : new Column([i], [-1], 0);
            _inverse[i][i] = 1 / _basis[i].Entries[0];
        }

        for (int kind = 0; kind < _limitRow.Length; kind++)
        {
            if (_limitRow[kind] >= 0)
            {
                right[_limitRow[kind]] = (boards is not null ? boards[kind] : _problem.Limit[kind] / _problem.Pack[kind] * _problem.Pack[kind]) + 1e-7;
            }
        }

        int[][] parts = _choices.PartsOf(first);
        for (int part = 0; part < _partRow.Length; part++)
        {
            int row = _partRow[part];
            right[row] = 1;
            Column column = PartOf(part, parts[part]);
            _basis[row] = column;
            _columns.Add(column);
            for (int k = 0; k < column.Rows.Length; k++)
            {
                if (column.Rows[k] < _sizes)
                {
                    _inverse[column.Rows[k]][row] = -column.Entries[k] * _inverse[column.Rows[k]][column.Rows[k]];
                }
            }
        }

        for (int row = 0; row < _rows; row++)
        {
            for (int k = 0; k < _rows; k++)
            {
                _level[row] += _inverse[row][k] * right[k];
            }

            _level[row] = Math.Max(0, _level[row]);
        }
    }

    private void Duals()
    {
        Array.Clear(_dual, 0, _rows);
        for (int row = 0; row < _rows; row++)
        {
            double cost = _basis[row].Cost;
            if (cost != 0)
            {
                double[] own = _inverse[row];
                for (int i = 0; i < _rows; i++)
                {
                    _dual[i] += cost * own[i];
                }
            }
        }
    }

    private bool EnterKnown()
    {
        Column? best = null;
        double least = -1e-9;
        foreach (Column column in _columns)
        {
            double reduced = column.Reduced(_dual);
            if (reduced < least)
            {
                (least, best) = (reduced, column);
            }
        }

        for (int row = 0; row < _partRow[0]; row++)
        {
            double reduced = row < _sizes ? _dual[row] : -_dual[row];
            if (reduced < least)
            {
                (least, best) = (reduced, new Column([row], [row < _sizes ? -1 : 1], 0));
            }
        }

        return best is not null && Enter(best);
    }

    private bool Enter(Column column)
    {
        for (int row = 0; row < _rows; row++)
        {
            double[] own = _inverse[row];
            double sum = 0;
            for (int k = 0; k < column.Rows.Length; k++)
            {
                sum += column.Entries[k] * own[column.Rows[k]];
            }

            _entering[row] = sum;
        }

        _pivots++;
        if (!_effort.TrySpend((long)_rows * _rows / 32))
        {
            return false;
        }

        int leaving = BasisStep.Enter(_entering, _inverse, _level, 1e-13);
        if (leaving < 0)
        {
            return false;
        }

        _basis[leaving] = column;
        return _pivots < MostPivots;
    }

    private bool Add(int kind, int[] counts)
    {
        Column column = PatternOf(kind, counts);
        bool isBetter = column.Reduced(_dual) < -1e-7;
        if (isBetter)
        {
            _columns.Add(column);
            Patterns.Add((kind, (int[])counts.Clone()));
        }

        return isBetter;
    }

    private bool Add(int[][] parts)
    {
        bool isBetter = false;
        for (int part = 0; part < _partRow.Length; part++)
        {
            Column column = PartOf(part, parts[part]);
            if (column.Reduced(_dual) < -1e-7)
            {
                _columns.Add(column);
                Divisions.Add((part, parts[part]));
                isBetter = true;
            }
        }

        return isBetter;
    }

    private Column PatternOf(int kind, int[] counts)
    {
        List<int> rows = [];
        List<double> entries = [];
        for (int i = 0; i < counts.Length; i++)
        {
            if (counts[i] > 0)
            {
                rows.Add(i);
                entries.Add(counts[i]);
            }
        }

        if (_limitRow[kind] >= 0)
        {
            rows.Add(_limitRow[kind]);
            entries.Add(1);
        }

        return new Column([.. rows], [.. entries], _cost[kind]);
    }

    private Column PartOf(int part, int[] sizes)
    {
        SortedDictionary<int, int> counts = [];
        foreach (int size in sizes)
        {
            counts.TryGetValue(size, out int before);
            counts[size] = before + 1;
        }

        List<int> rows = [];
        List<double> entries = [];
        foreach (KeyValuePair<int, int> count in counts)
        {
            rows.Add(count.Key);
            entries.Add(-count.Value);
        }

        rows.Add(_partRow[part]);
        entries.Add(1);
        return new Column([.. rows], [.. entries], 0);
    }

    private sealed class Column(int[] rows, double[] entries, double cost)
    {
        internal int[] Rows { get; } = rows;

        internal double[] Entries { get; } = entries;

        internal double Cost { get; } = cost;

        internal double Reduced(double[] dual)
        {
            double reduced = Cost;
            for (int k = 0; k < Rows.Length; k++)
            {
                reduced -= Entries[k] * dual[Rows[k]];
            }

            return reduced;
        }
    }
}
