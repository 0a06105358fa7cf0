using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// The cheapest way to cut parts from boards. Two questions in turn: which boards, so that every proof so far allows them, at the least
/// cost; and can the parts be cut from these? A proof that they cannot is a set of <see cref="PartValues"/>, or an exhausted search; the
/// boards it rules out are not asked about again.
/// </summary>
internal sealed class CuttingSearch
{
    private const int MostSimpleProofs = 12;
    private const int MostOpen = 20;

    /// <summary>The linear program takes the square of its rows to keep and their cube to solve.</summary>
    private const int MostRows = 600;

    private readonly CuttingProblem _problem;
    private readonly CuttingEffort _effort;
    private readonly BoardFilling _filling;
    private readonly PatternPricing _pricing;
    private readonly List<CuttingPattern> _pool = [];
    private readonly List<PartValues> _proofs = [];
    private readonly List<int[]> _tooFew = [], _open = [];
    private long _openCost = long.MaxValue;
    private List<CuttingPattern> _part = [];
    private int[] _uncut;
    private bool _isFilled;

    internal CuttingSearch(CuttingProblem problem, CuttingEffort effort)
    {
        (_problem, _effort) = (problem, effort);
        _filling = new BoardFilling(problem, effort);
        _pricing = new PatternPricing(problem.Sizes, effort);
        _uncut = (int[])problem.Demand.Clone();
    }

    /// <summary>The best plan; null where none was found.</summary>
    internal List<CuttingPattern>? Plan { get; private set; }

    internal long Cost { get; private set; } = long.MaxValue;

    /// <summary>No plan costs less.</summary>
    internal long LeastCost { get; private set; }

    internal IReadOnlyList<PartValues> Proofs => _proofs;

    /// <summary>Boards that a search through every way of cutting showed to be too few.</summary>
    internal IReadOnlyList<int[]> Exhausted => _tooFew;

    internal void Run()
    {
        AddSimpleProofs();
        FirstPlans();
        while (true)
        {
            BoardChoice choice = new(_problem, _proofs, _tooFew, _open, Cost, _effort);
            int[]? boards = choice.Find();
            LeastCost = Math.Min(_openCost, choice.Least);
            if (boards is null || _effort.IsSpent || !Decide(boards))
            {
                return;
            }
        }
    }

    /// <summary>Where not all parts can be cut: as much as goes on the boards there are, the greatest first.</summary>
    internal List<CuttingPattern> AsMuchAsThereIs(out int[] uncut)
    {
        if (!_isFilled)
        {
            List<CuttingPattern> plan = _filling.FillOneByOne(_problem.Demand, Most(), true, out int[] rest);
            KeepPart(plan, rest);
        }

        uncut = _uncut;
        _filling.Cheapen(_part);
        return _part;
    }

    private int[] Most()
    {
        int[] most = new int[_problem.Kinds];
        for (int kind = 0; kind < most.Length; kind++)
        {
            most[kind] = _problem.MostBoards(kind);
        }

        return most;
    }

    /// <summary>A plan that leaves pieces, kept where it leaves less than others do.</summary>
    private void KeepPart(List<CuttingPattern> plan, int[] rest)
    {
        if (Length(rest) < Length(_uncut))
        {
            (_part, _uncut) = (plan, rest);
        }

        decimal Length(int[] counts)
        {
            decimal length = 0;
            for (int i = 0; i < counts.Length; i++)
            {
                length += counts[i] * (decimal)_problem.Sizes[i];
            }

            return length;
        }
    }

    /// <summary>Values that need no search: the length of the parts; one for each part of a size and over, which a board holds only so many of; and for a single kind of board those of <see cref="PairValues"/>.</summary>
    private void AddSimpleProofs()
    {
        int kinds = _problem.Kinds;
        List<(PartValues Proof, double Cost)> proofs = [];
        Add(_problem.Sizes, _problem.Capacity);

        // The others where they leave enough for a first plan.
        long[] most = new long[kinds];
        long nodes = (long)_problem.Sizes.Length * (_problem.Sizes.Length + kinds) / 16;
        int sizes = nodes <= _effort.Left - _problem.FirstPlanNodes ? _problem.Sizes.Length : 0;
        _effort.Spend(sizes == 0 ? 0 : nodes);
        for (int size = 0; size < sizes; size++)
        {
            // Only where a board stops holding one more: the least size that still goes so many times.
            bool tells = false;
            for (int kind = 0; kind < kinds; kind++)
            {
                most[kind] = _problem.Capacity[kind] / _problem.Sizes[size];
                tells |= size == _problem.Sizes.Length - 1 || _problem.Capacity[kind] / _problem.Sizes[size + 1] > most[kind];
            }

            if (!tells)
            {
                continue;
            }

            long[] values = new long[_problem.Sizes.Length];
            for (int i = 0; i <= size; i++)
            {
                values[i] = 1;
            }

            Add(values, (long[])most.Clone());
            if (kinds == 1 && 2 * _problem.Sizes[size] <= _problem.Capacity[0])
            {
                Add(PairValues(size), _problem.Capacity);
            }
        }

        foreach ((PartValues proof, double _) in proofs)
        {
            _proofs.Add(proof);
        }

        // The strongest few, the first of equal ones: with one kind of board the strongest says all that the others do.
        void Add(long[] values, long[] held)
        {
            PartValues proof = new(values, held, _problem.Demand);
            double cost = ToPay(proof);
            int at = proofs.Count;
            while (at > 0 && proofs[at - 1].Cost < cost)
            {
                at--;
            }

            proofs.Insert(at, (proof, cost));
            if (proofs.Count > (kinds == 1 ? 1 : MostSimpleProofs))
            {
                proofs.RemoveAt(proofs.Count - 1);
            }
        }
    }

    /// <summary>What is to be paid for a value, packs and boards broken: what is on hand holds some of it for nothing, and tells nothing of the price of the rest.</summary>
    private double ToPay(PartValues proof)
    {
        double lacking = proof.Needed, rate = double.PositiveInfinity;
        for (int kind = 0; kind < _problem.Kinds; kind++)
        {
            if (_problem.Price[kind] == 0)
            {
                lacking -= (double)_problem.MostBoards(kind) * proof.Most[kind];
            }
            else if (proof.Most[kind] > 0)
            {
                rate = Math.Min(rate, (double)_problem.Price[kind] / _problem.Pack[kind] / proof.Most[kind]);
            }
        }

        return lacking <= 0 ? 0 : rate * lacking;
    }

    /// <summary>
    /// One kind of board C and a least length a up to half of it: a part over C - a is worth C, one of a or more its length, smaller ones
    /// nothing. A board holds C at most, for beside a part over C - a there is no room for one of a.
    /// </summary>
    private long[] PairValues(int size)
    {
        long capacity = _problem.Capacity[0], least = _problem.Sizes[size];
        long[] values = new long[_problem.Sizes.Length];
        for (int i = 0; i <= size; i++)
        {
            values[i] = _problem.Sizes[i] > capacity - least ? capacity : _problem.Sizes[i];
        }

        return values;
    }

    private void FirstPlans()
    {
        int[] most = Most(), rest;
        bool isOneKind = _problem.Kinds == 1;

        // The cheap way first with one kind of board, and where the effort may end before the other way does.
        bool isCheapFirst = isOneKind || _filling.MostNodes + _problem.FirstPlanNodes > _effort.Left;
        if (isCheapFirst)
        {
            KeepWhole(_filling.FirstPlan(_problem.Demand, most, out rest), rest);
        }

        if (isOneKind)
        {
            if (new BoardChoice(_problem, _proofs, _tooFew, _open, Cost, _effort).Find() is null)
            {
                return;
            }
        }

        KeepWhole(_filling.FillOneByOne(_problem.Demand, most, true, out rest, !isCheapFirst), rest);
        _isFilled = true;
        if (!isOneKind)
        {
            for (int kind = 0; kind < most.Length; kind++)
            {
                int[] only = new int[most.Length];
                for (int other = 0; other < most.Length; other++)
                {
                    only[other] = other == kind || _problem.Price[other] == 0 ? most[other] : 0;
                }

                Keep(_filling.BestFit(_problem.Demand, only, true));
            }
        }
    }

    private void KeepWhole(List<CuttingPattern> plan, int[] rest)
    {
        if (IsNothing(rest))
        {
            Keep(plan);
        }
        else
        {
            KeepPart(plan, rest);
        }
    }

    private static bool IsNothing(int[] rest)
    {
        foreach (int count in rest)
        {
            if (count > 0)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Keeps a plan that costs less than the best, as it is or on cheaper boards: with packs either may cost less.</summary>
    private void Keep(List<CuttingPattern>? plan)
    {
        if (plan is null)
        {
            return;
        }

        AddToPool(plan);
        KeepCheaper(plan);
        List<CuttingPattern> other = [.. plan];
        _filling.Cheapen(other);
        KeepCheaper(other);
    }

    private void KeepCheaper(List<CuttingPattern> plan)
    {
        int[] boards = new int[_problem.Kinds];
        foreach (CuttingPattern pattern in plan)
        {
            boards[pattern.Kind]++;
        }

        long cost = _problem.CostOf(boards);
        if (cost < Cost)
        {
            (Plan, Cost) = (plan, cost);
        }
    }

    private void AddToPool(List<CuttingPattern> plan)
    {
        foreach (CuttingPattern pattern in plan)
        {
            if (_pool.Count == 0 || CuttingPattern.Compare(pattern, _pool[_pool.Count - 1]) != 0)
            {
                _pool.Add(pattern);
            }
        }
    }

    /// <summary>Whether the parts can be cut from the boards; false where the effort was spent first.</summary>
    private bool Decide(int[] boards)
    {
        if (_problem.Sizes.Length + _problem.Kinds > MostRows)
        {
            return FillOnly(boards);
        }

        PatternProgram program = new(_problem, _problem.Demand, boards, _pool, _pricing, _effort);
        if (!program.Solve())
        {
            return false;
        }

        if (program.TooFew is { } proof)
        {
            _proofs.Add(proof);
            return true;
        }

        for (int misses = 0; misses <= 2; misses++)
        {
            if (Dive(_problem.Demand, boards, misses, misses == 0 ? program : null) is { } plan)
            {
                Keep(plan);
                return true;
            }
        }

        program = new(_problem, _problem.Demand, boards, _pool, _pricing, _effort);
        if (!program.Solve(true) || program.Values is null)
        {
            return false;
        }

        // Short searches and wider dives in turn, each longer than the one before.
        long nodes = 100_000;
        for (int round = 0; round < 4; round++, nodes *= 6)
        {
            CuttingExhaustion exhaustion = new(_problem, boards, [program.Values, .. _proofs], _effort);
            switch (exhaustion.Search(nodes))
            {
                case true:
                    Keep(exhaustion.Plan);
                    return true;
                case false:
                    // What the search left out by these values it left out rightly: they belong to the proof.
                    _proofs.Add(program.Values);
                    _tooFew.Add(boards);
                    return true;
                default:
                    break;
            }

            if (Dive(_problem.Demand, boards, 3 + round, null) is { } plan)
            {
                Keep(plan);
                return true;
            }
        }

        LeaveOpen(boards);
        return !_effort.IsSpent;
    }

    private void LeaveOpen(int[] boards)
    {
        _open.Add(boards);
        _openCost = Math.Min(_openCost, _problem.CostOf(boards));
    }

    /// <summary>For jobs too large for the linear program: if the boards cannot be filled without looking back, they stay an open question; few such are asked.</summary>
    private bool FillOnly(int[] boards)
    {
        if (_filling.BestFit(_problem.Demand, boards, false) is { } fitted)
        {
            Keep(fitted);
            return true;
        }

        List<CuttingPattern> filled = _filling.FillOneByOne(_problem.Demand, boards, false, out int[] rest);
        if (IsNothing(rest))
        {
            Keep(filled);
            return true;
        }

        LeaveOpen(boards);
        return _open.Count < MostOpen && !_effort.IsSpent;
    }

    /// <summary>Rounds the linear program's answer step by step: whole boards first, then the pattern nearest to a whole one, and solves the rest anew.</summary>
    private List<CuttingPattern>? Dive(int[] demand, int[] boards, int misses, PatternProgram? solved)
    {
        if (IsNothing(demand))
        {
            return [];
        }

        if (_filling.BestFit(demand, boards, false) is { } fitted)
        {
            return fitted;
        }

        List<CuttingPattern> filled = _filling.FillOneByOne(demand, boards, false, out int[] rest);
        if (IsNothing(rest))
        {
            return filled;
        }

        if (solved is null)
        {
            solved = new PatternProgram(_problem, demand, boards, _pool, _pricing, _effort);
            if (!solved.Solve())
            {
                return null;
            }
        }

        if (solved.TooFew is not null)
        {
            return null;
        }

        List<(CuttingPattern Pattern, double Times)> solution = solved.Solution();
        solution.Sort(static (left, right) => left.Times != right.Times ? right.Times.CompareTo(left.Times) : CuttingPattern.Compare(left.Pattern, right.Pattern));
        List<CuttingPattern> whole = [];
        int[] demandLeft = (int[])demand.Clone(), boardsLeft = (int[])boards.Clone();
        bool tookWhole = false;
        foreach ((CuttingPattern pattern, double times) in solution)
        {
            for (int k = 1; k <= times + 1e-7; k++)
            {
                if (boardsLeft[pattern.Kind] > 0 && pattern.Fits(demandLeft))
                {
                    Take(pattern, demandLeft, boardsLeft);
                    whole.Add(pattern);
                    tookWhole = true;
                }
            }
        }

        List<(CuttingPattern Pattern, double Part)> parts = [];
        foreach ((CuttingPattern pattern, double times) in solution)
        {
            double part = times - Math.Floor(times + 1e-7);
            if (part > 1e-7 && boardsLeft[pattern.Kind] > 0 && pattern.Fits(demandLeft))
            {
                parts.Add((pattern, part));
            }
        }

        parts.Sort(static (left, right) => left.Part != right.Part ? right.Part.CompareTo(left.Part) : CuttingPattern.Compare(left.Pattern, right.Pattern));
        if (parts.Count == 0)
        {
            if (!tookWhole || Dive(demandLeft, boardsLeft, misses, null) is not { } more)
            {
                return null;
            }

            whole.AddRange(more);
            return whole;
        }

        // Many at once first: where that leaves no way, one at a time.
        int many = parts.Count / 6;
        if (many > 1)
        {
            int[] demandThen = (int[])demandLeft.Clone(), boardsThen = (int[])boardsLeft.Clone();
            List<CuttingPattern> taken = [];
            for (int i = 0; i < parts.Count && taken.Count < many; i++)
            {
                if (boardsThen[parts[i].Pattern.Kind] > 0 && parts[i].Pattern.Fits(demandThen))
                {
                    Take(parts[i].Pattern, demandThen, boardsThen);
                    taken.Add(parts[i].Pattern);
                }
            }

            if (Dive(demandThen, boardsThen, misses, null) is { } more)
            {
                whole.AddRange(taken);
                whole.AddRange(more);
                return whole;
            }
        }

        for (int choice = 0; choice <= misses && choice < parts.Count && !_effort.IsSpent; choice++)
        {
            int[] demandThen = (int[])demandLeft.Clone(), boardsThen = (int[])boardsLeft.Clone();
            Take(parts[choice].Pattern, demandThen, boardsThen);
            if (Dive(demandThen, boardsThen, misses - choice, null) is { } more)
            {
                whole.Add(parts[choice].Pattern);
                whole.AddRange(more);
                return whole;
            }
        }

        return null;
    }

    private static void Take(CuttingPattern pattern, int[] demand, int[] boards)
    {
        boards[pattern.Kind]--;
        pattern.TakeFrom(demand);
    }
}
