using System;
using System.Collections.Generic;
using System.Threading;

namespace FinishKit;

/// <summary>
/// Joints and boards together. A first choice is cut; the linear program gives values of pieces, with them a bound and further choices;
/// one course at a time is changed as long as that helps; and last a search through all choices that the values found do not rule out.
/// </summary>
internal sealed class JointSearch
{
    /// <summary>The linear program takes the square of its rows.</summary>
    private const int MostRows = 500;
    private const int MostProofs = 8;
    private const int MostKept = 50_000;
    private const int MostCuts = 60;
    private const int MostUndecided = 20;

    /// <summary>Boards among which a piece is placed at most, one by one.</summary>
    private const int MostPlaces = 400;

    private readonly JointChoices _choices;
    private readonly CuttingProblem _problem;
    private readonly JointPricing _pricing;
    private readonly CuttingEffort _effort, _before;
    private readonly BoardKind[] _boards;
    private readonly long _all, _kerf;
    private readonly CancellationToken _cancellation;
    private readonly List<PartValues> _proofs = [];
    private readonly List<long[][]> _toGo = [];
    private readonly List<(CuttingPattern Pattern, int[] Sizes)> _fillings = [];

    /// <summary>Demands that were asked about, and a cost below which they cannot be cut.</summary>
    private readonly Dictionary<string, long> _asked = new(StringComparer.Ordinal);
    private readonly List<long> _held = [];

    /// <summary>Proofs that rule out boards which the others allow.</summary>
    private readonly List<PartValues> _cuts = [];
    private readonly List<int[]> _undecided = [];
    private JointProgram? _program;
    private long _heldFor = -1, _searchUntil, _undecidedCost = long.MaxValue;
    private ulong _draw = 1849;
    private bool _isOpen;

    // Before: what a first choice and the length that all need take, which is done whatever the effort.
    internal JointSearch(JointChoices choices, CuttingNumbers job, long all, CuttingEffort before, IProgress<double>? progress, CancellationToken cancellation)
    {
        (_choices, _boards, _kerf, _all, _cancellation) = (choices, job.Boards, job.Kerf, all, cancellation);
        _effort = new CuttingEffort(all, progress, cancellation);
        Money = 0;
        foreach (BoardKind board in _boards)
        {
            Money = Grid.CommonDivisor(Money, board.Price);
        }

        Money = Math.Max(1, Money);

        // Where not all sizes are known, they share no step that is known either.
        _problem = choices.AreSizesKnown ? ProblemOf(choices.Sizes, choices.MostDemand()) : ProblemOf(choices.Sizes, choices.MostDemand(), 1);
        _pricing = new JointPricing(_problem, _effort, cancellation);
        _before = before;
        Best = choices.Cheapest(choices.ToGo(new long[choices.Sizes.Length], before), before) ?? throw new InvalidOperationException("No choice.");
    }

    internal int[] Best { get; private set; }

    /// <summary>In steps of <see cref="Money"/>; the greatest number where no way was found to cut all pieces.</summary>
    internal long Cost { get; private set; } = long.MaxValue;

    /// <summary>No choice of joints costs less.</summary>
    internal long LeastCost { get; private set; }

    internal long Money { get; }

    internal long Nodes => _effort.Used;

    internal void Run()
    {
        if (_choices.Sizes.Length == 0)
        {
            Cost = LeastCost = 0;
            return;
        }

        // Length alone, and one for each joint, so that of equal choices one with few joints is first.
        long[] values = Array.ConvertAll(_problem.Sizes, static size => size + 1);
        Best = _choices.Cheapest(_choices.ToGo(values, _before), _before)!;
        AddLengthProof();
        Ask(Best);
        Bound();
        if (LeastCost < Cost && _choices.AreSizesKnown && _problem.Sizes.Length + _problem.Kinds + _choices.Parts <= MostRows)
        {
            SolveProgram();
        }

        if (LeastCost < Cost)
        {
            Improve((int[])Best.Clone(), 3 * (_all / 5));
            Bound();
        }

        // A short look whether all choices can be gone through; then boards by boards; then what is left.
        if (LeastCost < Cost)
        {
            SearchAll(_effort.Used + (_all / 10));
        }

        if (LeastCost < Cost)
        {
            SettleBoards(4 * (_all / 5));
        }

        if (LeastCost < Cost)
        {
            SearchAll(_all);
        }

        Straighten();
    }

    private CuttingProblem ProblemOf(long[] sizes, int[] demand)
    {
        long step = 0;
        foreach (long size in sizes)
        {
            step = Grid.CommonDivisor(step, size);
        }

        return ProblemOf(sizes, demand, Math.Max(1, step));
    }

    private CuttingProblem ProblemOf(long[] sizes, int[] demand, long step)
    {
        return new CuttingProblem(
            Array.ConvertAll(sizes, size => size / step),
            demand,
            Array.ConvertAll(_boards, board => (board.Usable + _kerf) / step),
            Array.ConvertAll(_boards, board => board.Price / Money),
            Array.ConvertAll(_boards, static board => board.Pack),
            Array.ConvertAll(_boards, static board => board.Available));
    }

    /// <summary>The sizes a choice has, as a problem of their own.</summary>
    private CuttingProblem ProblemOf(int[] demand, out int[] sizes)
    {
        List<int> own = [];
        for (int i = 0; i < demand.Length; i++)
        {
            if (demand[i] > 0)
            {
                own.Add(i);
            }
        }

        sizes = [.. own];
        return ProblemOf(Array.ConvertAll(sizes, size => _choices.Sizes[size]), Array.ConvertAll(sizes, size => demand[size]));
    }

    private static string Key(int[] demand)
    {
        System.Text.StringBuilder key = new();
        for (int i = 0; i < demand.Length; i++)
        {
            if (demand[i] > 0)
            {
                key.Append((char)(i & 0x7fff)).Append((char)(i >> 15)).Append((char)demand[i]);
            }
        }

        return key.ToString();
    }

    private void Bound()
    {
        BoardChoice choice = new(_problem, _proofs, [], [], Cost, _effort);
        choice.Find();
        LeastCost = Math.Min(Cost, Math.Max(LeastCost, choice.Least));
    }

    /// <summary>
    /// The cheapest boards that every proof allows, again and again: either a linear program rules them out and gives a proof more, or joints
    /// are looked for that just these boards can hold; where none are found, these boards stay undecided, and dearer ones are looked at.
    /// </summary>
    private void SettleBoards(long until)
    {
        int[] start = (int[])Best.Clone();
        while (LeastCost < Cost && !IsOver(until) && _undecided.Count < MostUndecided)
        {
            BoardChoice choice = new(_problem, [.. _proofs, .. _cuts], [], _undecided, Cost, _effort);
            int[]? boards = choice.Find();
            LeastCost = Math.Min(Cost, Math.Max(LeastCost, Math.Min(_undecidedCost, choice.Least)));
            if (boards is null)
            {
                return;
            }

            if (IsRuledOut(boards))
            {
                continue;
            }

            long before = Cost;
            FillBoards(boards, start, Math.Min(until, _effort.Used + (_all / 12)));
            if (Cost == before)
            {
                _undecided.Add(boards);
                _undecidedCost = Math.Min(_undecidedCost, _problem.CostOf(boards));
            }
        }
    }

    private bool IsRuledOut(int[] boards)
    {
        if (_program is null || _cuts.Count >= MostCuts)
        {
            return false;
        }

        JointProgram program = new(_choices, _problem, _pricing, Best, boards, _effort);
        program.AddAll(_program);
        while (program.Next(out PartValues? proof, out int[]? _))
        {
            decimal held = 0;
            for (int kind = 0; kind < boards.Length; kind++)
            {
                held += (decimal)boards[kind] * proof!.Most[kind];
            }

            if (held < proof!.Needed)
            {
                _cuts.Add(proof);
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// Looks for joints whose pieces go on given boards. One course after another is changed by lot, with a neighbour where it must; what leaves
    /// more over is taken too, less and less of it. The lot is the same on every machine.
    /// </summary>
    private void FillBoards(int[] boards, int[] start, long until)
    {
        List<long> empty = [];
        for (int kind = 0; kind < boards.Length && empty.Count <= MostPlaces; kind++)
        {
            for (int i = 0; i < boards[kind] && empty.Count <= MostPlaces; i++)
            {
                empty.Add(_problem.Capacity[kind]);
            }
        }

        if (empty.Count > MostPlaces)
        {
            return;
        }

        long[] rooms = new long[empty.Count];
        int[] choice = (int[])start.Clone(), demand = _choices.Demand(choice);
        long began = _effort.Used, span = Math.Max(1, until - began);
        double widest = 0.2 * _problem.Sizes[0], now = Over(demand, empty, rooms), least = double.PositiveInfinity;
        while (!IsOver(until))
        {
            int[] next = (int[])choice.Clone();
            if (!Change(next))
            {
                _effort.TrySpend(4);
                continue;
            }

            int[] changed = _choices.Demand(next);
            double over = Over(changed, empty, rooms);
            if (_effort.IsSpent)
            {
                return;
            }

            if (over < least || over <= 1.2 * least)
            {
                least = Math.Min(least, over);
                if (over == 0 || IsHeld(changed, boards))
                {
                    Settle(next, boards);
                    return;
                }
            }

            double width = widest * (1 - ((_effort.Used - began) / (double)span));
            if (over <= now + (width * Draw(1024) / 1024))
            {
                (choice, now) = (next, over);
            }
        }
    }

    /// <summary>Pieces that go on boards of a cost: the cost is that, or less where the search for a cutting plan finds one.</summary>
    private void Settle(int[] choice, int[] boards)
    {
        Ask(choice);
        long cost = _problem.CostOf(boards);
        if (cost < Cost)
        {
            (Best, Cost) = ((int[])choice.Clone(), cost);
        }
    }

    private bool IsOver(long until) => _effort.IsSpent || _effort.Used >= until;

    private int Draw(int below)
    {
        _draw = unchecked((_draw * 6364136223846793005UL) + 1442695040888963407UL);
        return (int)((_draw >> 33) % (ulong)below);
    }

    /// <summary>Another way for a course, and for its neighbours where theirs do not go with it; false where none was drawn.</summary>
    private bool Change(int[] choice)
    {
        int course = Draw(choice.Length);
        JointSplit[] splits = _choices.Courses[course].Splits;
        if (splits.Length == 1)
        {
            return false;
        }

        choice[course] = Draw(splits.Length);
        return Follow(course - 1) && Follow(course + 1);

        bool Follow(int neighbour)
        {
            if (neighbour < 0 || neighbour == choice.Length)
            {
                return true;
            }

            for (int tries = 0; tries < 6; tries++)
            {
                if (_choices.Goes(choice, neighbour, choice[neighbour]))
                {
                    return true;
                }

                choice[neighbour] = Draw(_choices.Courses[neighbour].Splits.Length);
            }

            return _choices.Goes(choice, neighbour, choice[neighbour]);
        }
    }

    /// <summary>Length that is over where each piece, the greatest first, is laid on the board that it fills most.</summary>
    private double Over(int[] demand, List<long> empty, long[] rooms)
    {
        empty.CopyTo(rooms);
        double over = 0;
        long pieces = 0;
        foreach (int count in demand)
        {
            pieces += count;
        }

        if (!_effort.TrySpend(1 + ((demand.Length + (pieces * rooms.Length)) / 16)))
        {
            return double.PositiveInfinity;
        }

        for (int size = 0; size < demand.Length; size++)
        {
            long length = _problem.Sizes[size];
            for (int piece = 0; piece < demand[size]; piece++)
            {
                int best = -1;
                for (int i = 0; i < rooms.Length; i++)
                {
                    best = rooms[i] >= length && (best < 0 || rooms[i] < rooms[best]) ? i : best;
                }

                if (best < 0)
                {
                    over += length;
                }
                else
                {
                    rooms[best] -= length;
                }
            }
        }

        return over;
    }

    /// <summary>Whether boards, each filled as well as it can be, hold all pieces.</summary>
    private bool IsHeld(int[] demand, int[] boards)
    {
        CuttingProblem problem = ProblemOf(demand, out _);
        new BoardFilling(problem, _effort).FillOneByOne(problem.Demand, boards, false, out int[] rest);
        return Array.TrueForAll(rest, static count => count == 0);
    }

    /// <summary>Every length is worth what it is: that needs no list of sizes.</summary>
    private void AddLengthProof()
    {
        long[][] toGo = _choices.ToGo(_problem.Sizes, _before)!;
        long needed = _choices.AreSizesKnown ? _choices.Needed(_problem.Sizes, toGo, _before, out int[][]? _)!.Value : _choices.NeededLength();
        Keep(new PartValues(_problem.Sizes, _problem.Capacity, needed), toGo);
    }

    /// <summary>Values for what boards hold, kept where they prove more than others do.</summary>
    private void AddProof(long[] values, long[] most)
    {
        if (_choices.ToGo(values, _effort) is { } toGo && _choices.Needed(values, toGo, _effort, out int[][]? _) is { } needed)
        {
            Keep(new PartValues(values, most, needed), toGo);
        }
    }

    private void Keep(PartValues proof, long[][]? toGo)
    {
        double cost = Rate(proof);
        int at = _proofs.Count;
        while (at > 0 && Rate(_proofs[at - 1]) < cost)
        {
            at--;
        }

        toGo ??= at < MostProofs ? _choices.ToGo(proof.Values, _effort) : null;
        if (at >= MostProofs || toGo is null)
        {
            return;
        }

        _heldFor = -1;
        _proofs.Insert(at, proof);
        _toGo.Insert(at, toGo);
        if (_proofs.Count > MostProofs)
        {
            _proofs.RemoveAt(MostProofs);
            _toGo.RemoveAt(MostProofs);
        }
    }

    /// <summary>What is to be paid for what is needed of a value, packs and boards broken.</summary>
    private double Rate(PartValues proof)
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
                rate = Math.Min(rate, _problem.Price[kind] / ((double)_problem.Pack[kind] * proof.Most[kind]));
            }
        }

        return lacking <= 0 ? 0 : lacking * rate;
    }

    /// <summary>The most of a value that boards hold which cost less than the best plan; a little more where packs are broken.</summary>
    private long Held(PartValues proof)
    {
        // Without a plan, all boards that there are.
        long money = Cost == long.MaxValue ? long.MaxValue / 2 : Cost - 1;
        double held = 0;
        List<int> priced = [];
        for (int kind = 0; kind < _problem.Kinds; kind++)
        {
            if (_problem.Price[kind] == 0)
            {
                held += (double)_problem.MostBoards(kind) * proof.Most[kind];
            }
            else
            {
                priced.Add(kind);
            }
        }

        if (priced.Count == 1)
        {
            int kind = priced[0];
            held += (double)Math.Min(_problem.MostPacks(kind), money / _problem.Price[kind]) * _problem.Pack[kind] * proof.Most[kind];
        }
        else
        {
            priced.Sort((left, right) => Worth(left) != Worth(right) ? Worth(right).CompareTo(Worth(left)) : left.CompareTo(right));
            double left = money;
            foreach (int kind in priced)
            {
                double packs = Math.Min(_problem.MostPacks(kind), left / _problem.Price[kind]);
                held += packs * _problem.Pack[kind] * proof.Most[kind];
                left -= packs * _problem.Price[kind];
            }
        }

        // Rounded up: what is held must not seem less.
        held = Math.Ceiling(held * (1 + 1e-14)) + 1;
        return held >= JointChoices.None ? JointChoices.None - 1 : (long)held;

        double Worth(int kind) => (double)_problem.Pack[kind] * proof.Most[kind] / _problem.Price[kind];
    }

    /// <summary>A plan for a choice made without looking back: its cost, and how much room its boards leave in one place.</summary>
    private (long Cost, double Spread) Fill(int[] demand)
    {
        CuttingProblem problem = ProblemOf(demand, out _);
        BoardFilling filling = new(problem, _effort);
        int[] most = new int[problem.Kinds];
        for (int kind = 0; kind < most.Length; kind++)
        {
            most[kind] = problem.MostBoards(kind);
        }

        (long Cost, double Spread) best = (long.MaxValue, 0);
        if (problem.Kinds == 1)
        {
            Take(filling.BestFit(problem.Demand, most, true));
            return best;
        }

        List<CuttingPattern> plan = filling.FillOneByOne(problem.Demand, most, true, out int[] rest);
        int left = 0;
        foreach (int count in rest)
        {
            left += count;
        }

        best = (long.MaxValue, left);
        Take(left == 0 ? plan : null);
        for (int kind = 0; kind < most.Length; kind++)
        {
            if (problem.Price[kind] > 0)
            {
                int[] only = new int[most.Length];
                for (int other = 0; other < most.Length; other++)
                {
                    only[other] = other == kind || problem.Price[other] == 0 ? most[other] : 0;
                }

                Take(filling.BestFit(problem.Demand, only, true));
            }
        }

        return best;

        void Take(List<CuttingPattern>? taken)
        {
            if (taken is null)
            {
                return;
            }

            filling.Cheapen(taken);
            int[] boards = new int[problem.Kinds];
            double spread = 0;
            foreach (CuttingPattern pattern in taken)
            {
                boards[pattern.Kind]++;
                double room = (problem.Capacity[pattern.Kind] - pattern.Length(problem.Sizes)) / (double)problem.Capacity[pattern.Kind];
                spread -= room * room;
            }

            long cost = problem.CostOf(boards);
            if (cost < best.Cost || (cost == best.Cost && spread < best.Spread))
            {
                best = (cost, spread);
            }
        }
    }

    /// <summary>The least cost of cutting a choice, by the search for cutting plans with a part of the effort; whether nothing below the best is left in it.</summary>
    private bool Ask(int[] choice)
    {
        int[] demand = _choices.Demand(choice);
        string key = Key(demand);
        if (_asked.TryGetValue(key, out long least))
        {
            return least >= Cost;
        }

        CuttingProblem problem = ProblemOf(demand, out int[] sizes);
        long most = Math.Max(Math.Max(1000, _all / 10), problem.FirstPlanNodes);
        if (_effort.Left <= problem.FirstPlanNodes)
        {
            return false;
        }

        CuttingEffort own = new(Math.Min(most, _effort.Left - 1), null, _cancellation);
        CuttingSearch search = new(problem, own);
        search.Run();
        _effort.Spend(own.Used + 1);
        if (search.Plan is { } plan)
        {
            if (search.Cost < Cost)
            {
                (Best, Cost) = ((int[])choice.Clone(), search.Cost);
            }

            foreach (CuttingPattern pattern in plan)
            {
                _fillings.Add((pattern, sizes));
            }
        }

        if (_asked.Count < MostKept)
        {
            _asked[key] = search.LeastCost;
        }

        if (search.Cost > Cost && search.LeastCost >= Cost && search.Proofs.Count > 0)
        {
            Lift(search.Proofs[search.Proofs.Count - 1], sizes);
        }

        return search.LeastCost >= Cost;
    }

    /// <summary>What ruled out one choice may rule out others: sizes it does not have are worth what the next smaller one is.</summary>
    private void Lift(PartValues proof, int[] sizes)
    {
        if (!_choices.AreSizesKnown || _problem.Sizes.Length > MostRows)
        {
            return;
        }

        long[] values = new long[_problem.Sizes.Length];
        for (int i = values.Length - 1, at = sizes.Length - 1; i >= 0; i--)
        {
            values[i] = i + 1 < values.Length ? values[i + 1] : 0;
            if (at >= 0 && sizes[at] == i)
            {
                values[i] = proof.Values[at--];
            }
        }

        long[] most = new long[_problem.Kinds];
        for (int kind = 0; kind < most.Length; kind++)
        {
            if (_pricing.Most(kind, values, out _) is not { } own)
            {
                return;
            }

            most[kind] = own;
        }

        AddProof(values, most);
    }

    private void SolveProgram()
    {
        JointProgram program = _program = new(_choices, _problem, _pricing, Best, null, _effort);
        foreach ((CuttingPattern pattern, int[] sizes) in _fillings)
        {
            program.Add(pattern, sizes);
        }

        double strongest = 0;
        int[]? promising = null;
        (long Cost, double Spread) least = (long.MaxValue, double.PositiveInfinity);
        while (!IsOver(_all / 2) && program.Next(out PartValues? proof, out int[]? choice))
        {
            double cost = Rate(proof!);
            if (cost > strongest)
            {
                strongest = cost;
                Keep(proof!, null);
            }

            if (choice is null)
            {
                continue;
            }

            (long Cost, double Spread) fill = Fill(_choices.Demand(choice));
            if (fill.Cost < Cost)
            {
                Ask(choice);
            }

            if (fill.Cost < least.Cost || (fill.Cost == least.Cost && fill.Spread < least.Spread))
            {
                (least, promising) = (fill, choice);
            }

            if (strongest > Cost - 1 || _problem.Kinds == 1)
            {
                Bound();
                if (LeastCost >= Cost)
                {
                    return;
                }
            }
        }

        Bound();
        if (promising is not null && LeastCost < Cost)
        {
            Ask(promising);
            Improve(promising, 3 * (_all / 5));
        }
    }

    /// <summary>One course after the other: the way that fills boards best beside the others, as long as there is a better one.</summary>
    private void Improve(int[] choice, long until)
    {
        if (IsOver(until))
        {
            return;
        }

        int[] demand = _choices.Demand(choice);
        (long Cost, double Spread) now = Fill(demand);
        bool isBetter = true;
        while (isBetter && LeastCost < Cost)
        {
            isBetter = false;
            for (int c = 0; c < choice.Length && LeastCost < Cost; c++)
            {
                int was = choice[c], best = was;
                JointSplit[] splits = _choices.Courses[c].Splits;
                Change(c, was, -1);
                for (int s = 0; s < splits.Length; s++)
                {
                    if (s == was || !_choices.Goes(choice, c, s))
                    {
                        continue;
                    }

                    if (IsOver(until))
                    {
                        return;
                    }

                    Change(c, s, 1);
                    (long Cost, double Spread) fill = Fill(demand);
                    if (fill.Cost < now.Cost || (fill.Cost == now.Cost && fill.Spread < now.Spread - 1e-9))
                    {
                        (now, best) = (fill, s);
                        if (fill.Cost < Cost)
                        {
                            int[] better = (int[])choice.Clone();
                            better[c] = s;
                            Ask(better);
                        }
                    }

                    Change(c, s, -1);
                }

                Change(c, best, 1);
                choice[c] = best;
                isBetter |= best != was;
            }
        }

        Ask(choice);

        void Change(int c, int s, int by)
        {
            foreach (int size in _choices.Courses[c].Splits[s].Sizes)
            {
                demand[size] += by;
            }
        }
    }

    /// <summary>Every choice whose values boards cheaper than the best plan can hold, in order of value. What it goes through to the end is proven.</summary>
    private void SearchAll(long until)
    {
        _searchUntil = until;
        _isOpen = _choices.IsSample;
        Descend(0, new int[_choices.Courses.Count]);
        if (!_isOpen)
        {
            LeastCost = Cost;
        }
    }

    private void Descend(int course, int[] choice)
    {
        if (IsOver(_searchUntil))
        {
            _isOpen = true;
            return;
        }

        if (course == choice.Length)
        {
            _isOpen |= !Ask(choice);
            return;
        }

        JointCourse own = _choices.Courses[course];
        List<int> order = [];
        for (int s = 0; s < own.Splits.Length; s++)
        {
            if (!own.IsLinked || own.Splits[s].GoesWith(_choices.Courses[course - 1].Splits[choice[course - 1]]))
            {
                order.Add(s);
            }
        }

        long[] first = _toGo[0][course];
        order.Sort((left, right) => first[left] != first[right] ? first[left].CompareTo(first[right]) : left.CompareTo(right));
        if (!_effort.TrySpend(1 + own.Splits.Length + (order.Count * 2)))
        {
            _isOpen = true;
            return;
        }

        foreach (int s in order)
        {
            if (IsOver(_searchUntil))
            {
                _isOpen = true;
                return;
            }

            if (!CanBe(s))
            {
                continue;
            }

            choice[course] = s;
            Descend(course + 1, choice);
        }

        // Proofs may have come in meanwhile: the value so far is reckoned for each.
        bool CanBe(int s)
        {
            if (_heldFor != Cost)
            {
                _heldFor = Cost;
                _held.Clear();
                _held.AddRange(_proofs.ConvertAll(Held));
            }

            for (int k = 0; k < _proofs.Count; k++)
            {
                long value = _toGo[k][course][s];
                if (value >= JointChoices.None)
                {
                    return false;
                }

                for (int c = 0; c < course; c++)
                {
                    foreach (int size in _choices.Courses[c].Splits[choice[c]].Sizes)
                    {
                        value += _proofs[k].Values[size];
                    }
                }

                if (value > _held[k])
                {
                    return false;
                }
            }

            bool isCounted = _effort.TrySpend(_proofs.Count * (course + 1));
            _isOpen |= !isCounted;
            return isCounted;
        }
    }

    /// <summary>With the cost as it is, fewer joints where that can be had by changing one course.</summary>
    private void Straighten()
    {
        if (Cost == long.MaxValue)
        {
            return;
        }

        // Once a neighbour is straight another may be.
        for (bool isFewer = true; isFewer;)
        {
            isFewer = false;
            for (int c = 0; c < Best.Length; c++)
            {
                JointSplit[] splits = _choices.Courses[c].Splits;
                for (int s = 0; s < splits.Length && !_effort.IsSpent; s++)
                {
                    if (splits[s].Joints >= splits[Best[c]].Joints || !_choices.Goes(Best, c, s))
                    {
                        continue;
                    }

                    int[] fewer = (int[])Best.Clone();
                    fewer[c] = s;
                    if (Fill(_choices.Demand(fewer)).Cost <= Cost)
                    {
                        Best = fewer;
                        isFewer = true;
                    }
                }
            }
        }
    }
}
