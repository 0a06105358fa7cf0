using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// All rectangles on sheets that cost as little as can be found, then on as few sheets: first plans sheet by sheet, then again and again
/// a few sheets emptied and filled anew in a slightly different order, kept where it is no worse. Fuller sheets beside emptier ones count
/// as better, so that in the end one is empty. Where there are too few sheets as little area as can be found is left over.
/// </summary>
internal sealed class SheetSearch
{
    /// <summary>Dearer than any job: stands for a ten-thousandth of the area that there is no sheet for.</summary>
    private const long Missing = 100_000_000_000_000;

    private const int Tries = 5;

    /// <summary>What the first plan may take beyond the effort.</summary>
    private const long FirstPlan = 50_000_000;

    /// <summary>What a filling takes whatever it looks at, in rectangles looked at.</summary>
    private const int FillSteps = 100;

    /// <summary>What is spent at most on fewer sheets where the cost of several sizes is proven (one size, whose cost is its count, searches on), or where it is proven that there are too few sheets.</summary>
    private const long LastSteps = 5_000_000, ShortSteps = 20_000_000;

    /// <summary>Orders that are tried at random to get onto a smaller sheet what lies on a larger one.</summary>
    private const int Refills = 100;

    /// <summary>Ways to choose sheets that are tried alone, at most.</summary>
    private const int MostChoices = 8;

    /// <summary>Waste, as a part of a plan's sheets, up to which tight layouts are sought by going through them.</summary>
    private const double TightWaste = 0.04;

    /// <summary>And where there are few pieces: so many, for so much waste.</summary>
    private const int FewPieces = 25;

    private const double FewWaste = 0.25;

    /// <summary>Waste up to which emptying and filling anew hardly ever gets there.</summary>
    private const double LittleWaste = 0.015;

    private const int MostTightPieces = 200;

    private readonly SheetKinds _kinds;
    private readonly SheetSizes _sizes;
    private readonly bool _sawn;
    private readonly CuttingEffort _effort;
    private readonly SheetFilling _filling;
    private readonly SheetSawing _sawing;
    private readonly int[][] _orders;
    private readonly int[] _used, _work, _limit;
    private readonly bool[] _straight, _turnFirst, _isOpen;
    private readonly int _missing;
    private readonly double _area;
    private readonly long _end;
    private bool _prefersOne = true;
    private RepeatableChance _chance = new(0x9E3779B97F4A7C15);
    private long _steps, _stop, _leastCost = long.MaxValue, _lastStop = long.MaxValue;
    private int _leastSheets, _open;

    internal SheetSearch(SheetKinds kinds, SheetSizes sizes, bool sawn, CuttingEffort effort)
    {
        (_kinds, _sizes, _sawn, _effort) = (kinds, sizes, sawn, effort);
        _filling = new SheetFilling(kinds, kinds.Pieces);
        _sawing = new SheetSawing(kinds);
        _orders = kinds.Orders();
        _missing = sizes.Count;
        _end = effort.Used + effort.Left + FirstPlan;
        _used = new int[sizes.Count];
        (_straight, _turnFirst) = (new bool[kinds.Kinds], new bool[kinds.Kinds]);
        _work = new int[kinds.Kinds];
        _isOpen = new bool[sizes.Count];
        _limit = (int[])sizes.Limit.Clone();
        for (int kind = 0; kind < kinds.Kinds; kind++)
        {
            _area += kinds.Count[kind] * kinds.Area[kind];
        }
    }

    /// <summary>The best plan; a sheet of a size beyond the last holds, anyhow, what there is no sheet for.</summary>
    internal List<FilledSheet> Best { get; private set; } = [];

    /// <summary>What the best plan costs, sheets that are missing included.</summary>
    internal long Cost { get; private set; } = long.MaxValue;

    internal bool IsShort => Best.Exists(sheet => sheet.Size == _missing);

    private int Rules => _sawn ? SheetSawing.Styles : 3;

    private bool IsSpent => _effort.Used >= _stop;

    private bool IsDone => Cost <= _leastCost && Best.Count <= _leastSheets && !IsShort;

    /// <summary>Searches until the plan costs no more and has no more sheets than can be, or the effort is spent.</summary>
    /// <param name="leastCost">No plan costs less; the greatest number where no plan holds everything.</param>
    /// <param name="leastSheets">No plan that costs so much has fewer sheets.</param>
    internal void Run(long leastCost, int leastSheets)
    {
        (_leastCost, _leastSheets) = (leastCost, leastSheets);

        // A part is left for the last aim.
        _stop = _effort.Used + _effort.Left - (_effort.Left / 16);
        if (leastCost == long.MaxValue)
        {
            _stop = Math.Min(_stop, _effort.Used + ShortSteps);
        }

        Open(static _ => true);
        if (_sizes.Count == 1 && _limit[0] < _kinds.Pieces && leastSheets <= _limit[0])
        {
            RunWithoutLimit();
            return;
        }

        if (First() is not { } plan || IsDone)
        {
            return;
        }

        if (_sizes.Count == 1)
        {
            ImproveInTurn(plan);
            return;
        }

        // What many kinds of sheets offer is not always better chosen than what few do: those alone, too.
        Improve(plan, _effort.Used + ((_stop - _effort.Used) / 8));
        List<bool[]> choices = Choices();
        long each = (_stop - _effort.Used) / (1 + choices.Count);
        foreach (bool[] choice in choices)
        {
            Open(size => choice[size]);
            long until = _effort.Used + each;
            if (!IsDone && !IsSpent && First() is { } own && own[own.Count - 1].Size != _missing)
            {
                Improve(own, until);
            }
        }

        Open(static _ => true);
        Improve([.. Best], _stop);
    }

    /// <summary>Few enough sheets are found sooner as if there were more of them; where they are not, as much as can be on those there are.</summary>
    private void RunWithoutLimit()
    {
        (int limit, long stop) = (_limit[0], _stop);
        _limit[0] = int.MaxValue;
        _stop = _effort.Used + ((stop - _effort.Used) / 2);
        if (First() is { } plan && !IsDone)
        {
            ImproveInTurn(plan);
        }

        (_limit[0], _stop) = (limit, stop);
        if (Best.Count > limit)
        {
            (Best, Cost) = ([], long.MaxValue);
            First();
        }

        if (!IsDone)
        {
            ImproveInTurn([.. Best]);
        }
    }

    private void Open(Func<int, bool> isOpen)
    {
        _open = 0;
        for (int size = 0; size < _isOpen.Length; size++)
        {
            _isOpen[size] = isOpen(size);
            _open += _isOpen[size] ? 1 : 0;
        }
    }

    /// <summary>All that cost something, and each of these alone: those first that cost least for their area, then in the job's order.</summary>
    private List<bool[]> Choices()
    {
        List<bool[]> choices = [];
        int bought = 0;
        for (int size = 0; size < _sizes.Count; size++)
        {
            bought += _sizes.Price[size] > 0 ? 1 : 0;
        }

        if (bought > 0 && bought < _sizes.Count)
        {
            choices.Add(Array.ConvertAll(_sizes.Price, static price => price > 0));
        }

        double[] rate = new double[_sizes.Count];
        for (int size = 0; size < rate.Length; size++)
        {
            rate[size] = _sizes.Price[size] / SheetArea(size);
        }

        foreach (int size in SheetKinds.By(Array.ConvertAll(rate, static each => -each)))
        {
            if (_sizes.Price[size] > 0 && bought > 1 && choices.Count < MostChoices)
            {
                bool[] alone = new bool[_sizes.Count];
                alone[size] = true;
                choices.Add(alone);
            }
        }

        return choices;
    }

    /// <summary>The best of the plans from every order and rule on the sheets that are open; null where the effort ends before there is one.</summary>
    private List<FilledSheet>? First()
    {
        List<FilledSheet>? best = null;
        foreach (int[] order in _orders)
        {
            for (int rule = 0; rule < Rules; rule++)
            {
                Array.Copy(_kinds.Count, _work, _work.Length);
                Array.Clear(_used, 0, _used.Length);
                _prefersOne = _sizes.Count == 1 || !_prefersOne;
                List<FilledSheet>? plan = Pack(order, rule, [], best is null ? long.MaxValue : CostOf(best), int.MaxValue);
                if (plan is not null && (best is null || IsBetter(plan, best)))
                {
                    best = plan;
                    if (Best.Count == 0 || IsBetter(plan, Best))
                    {
                        (Best, Cost) = ([.. plan], CostOf(plan));
                    }
                }

                if (IsDone || IsSpent)
                {
                    return best;
                }
            }
        }

        return best;
    }

    /// <summary>Sheets of one size: turn by turn with a search for layouts that waste little, each turn longer than the one before.</summary>
    private void ImproveInTurn(List<FilledSheet> plan)
    {
        SheetTightSearch? tight = null;
        SheetBlockSearch? blocks = null;
        int sought = 0;
        for (long steps = 4_000_000; !IsDone && !IsSpent; steps *= 2)
        {
            Improve(plan, Math.Min(_stop, _effort.Used + steps));
            int sheets = IsShort ? _limit[0] : Best.Count - 1;
            double room = (double)_sizes.Width[0] * _sizes.Height[0] * sheets;
            if (IsDone || IsSpent || _kinds.Pieces > MostTightPieces || sheets < _leastSheets || room * (1 - (_kinds.Pieces <= FewPieces ? FewWaste : TightWaste)) > _area)
            {
                continue;
            }

            if (blocks is null || sought != sheets)
            {
                blocks = new SheetBlockSearch(_kinds, _sizes.Width[0], _sizes.Height[0], sheets, _sawn, _effort);
                tight = _sawn ? null : new SheetTightSearch(_kinds, _sizes.Width[0], _sizes.Height[0], sheets, _effort);
                sought = sheets;
            }

            List<FilledSheet>? found = blocks.Find(Math.Min(_stop, _effort.Used + (4 * steps)));
            found ??= tight?.Find(Math.Min(_stop, _effort.Used + (steps * (room * (1 - LittleWaste) > _area ? 2 : 8))));
            if (found is not null)
            {
                (Best, Cost) = (found, CostOf(found));
                plan = [.. found];
            }
        }
    }

    /// <summary>Each sheet exchanged for the smallest one that is to be had, costs no more and was found to hold the same.</summary>
    internal void TakeSmaller()
    {
        int[] used = new int[_sizes.Count + 1];
        foreach (FilledSheet sheet in Best)
        {
            used[sheet.Size]++;
        }

        // What one sheet sets free another may take: the area only ever gets less.
        bool isChanged = _sizes.Count > 1;
        long until = _effort.Used + (_effort.Left / 2);
        double[] less = new double[_sizes.Count];
        for (int size = 0; size < less.Length; size++)
        {
            less[size] = -SheetArea(size);
        }

        int[] smallest = SheetKinds.By(less);
        while (isChanged)
        {
            isChanged = false;
            for (int i = 0; i < Best.Count; i++)
            {
                FilledSheet sheet = Best[i];
                foreach (int size in smallest)
                {
                    if (sheet.Size == _missing || SheetArea(size) >= SheetArea(sheet.Size))
                    {
                        break;
                    }

                    // Cheaper ones cannot do where the cost is proven.
                    bool isCheapEnough = Cost <= _leastCost ? _sizes.Price[size] == _sizes.Price[sheet.Size] : _sizes.Price[size] <= _sizes.Price[sheet.Size];
                    if (isCheapEnough && used[size] < _limit[size] && sheet.Area <= SheetArea(size) && _effort.Used < until && Refill(sheet, size, until) is { } smaller)
                    {
                        used[sheet.Size]--;
                        used[size]++;
                        (Best[i], isChanged) = (smaller, true);
                        break;
                    }
                }
            }
        }

        Cost = CostOf(Best);
    }

    /// <summary>What lies on a sheet on one of another size, as it lies or filled anew by every order and rule; null where that is not found.</summary>
    private FilledSheet? Refill(FilledSheet sheet, int size, long until)
    {
        long width = _sizes.Width[size], height = _sizes.Height[size];
        _effort.Spend(1 + ((2 * sheet.Places.Count) + _kinds.Kinds) / 16);
        if (Reach(sheet, true) <= height && Reach(sheet, false) <= width)
        {
            FilledSheet same = new() { Area = sheet.Area, Size = size };
            same.Places.AddRange(sheet.Places);
            return same;
        }

        int[] pool = PoolOf([sheet]);
        (_filling.TurnFirst, _sawing.TurnFirst) = (_straight, _straight);
        for (int t = 0; t < (_orders.Length * Rules) + Refills && _effort.Used < until; t++)
        {
            int[] order = _orders[t % _orders.Length];
            int rule = t / _orders.Length % Rules;
            if (t >= _orders.Length * Rules)
            {
                Turn(pool);
                rule = _chance.Below(Rules);
                order = Shuffled(order, pool);
            }

            Array.Copy(pool, _work, pool.Length);
            FilledSheet again = Fill(order, rule, width, height);
            if (again.Places.Count == sheet.Places.Count)
            {
                again.Size = size;
                return again;
            }
        }

        return null;
    }

    /// <summary>The emptiest sheet filled anew, so that what is left of it is one piece as large as can be found.</summary>
    internal void Gather()
    {
        int at = Emptiest(Best, false);
        if (at < 0)
        {
            return;
        }

        FilledSheet sheet = Best[at];

        long width = _sizes.Width[sheet.Size], height = _sizes.Height[sheet.Size];
        (long across, FilledSheet low) = Squeeze(sheet, width, height, true);
        (long along, FilledSheet narrow) = Squeeze(sheet, width, height, false);
        FilledSheet best = (double)(height - across) * width >= (double)(width - along) * height ? low : narrow;
        Best[at] = best;
    }

    private (long Used, FilledSheet Sheet) Squeeze(FilledSheet sheet, long width, long height, bool isHeight)
    {
        long used = Reach(sheet, isHeight);
        FilledSheet best = sheet;
        int[] pool = PoolOf([sheet]);
        int failed = 0;
        while (failed < 40 && !_effort.IsSpent)
        {
            Array.Copy(pool, _work, pool.Length);
            Turn(pool);
            FilledSheet again = Fill(Shuffled(_orders[_chance.Below(_orders.Length)], pool), _chance.Below(Rules), isHeight ? width : used - 1, isHeight ? used - 1 : height);
            if (again.Places.Count == sheet.Places.Count)
            {
                again.Size = sheet.Size;
                (best, used, failed) = (again, Reach(again, isHeight), 0);
            }
            else
            {
                failed++;
            }
        }

        return (used, best);
    }

    private long Reach(FilledSheet sheet, bool isHeight)
    {
        long reach = 0;
        foreach (SheetPlace place in sheet.Places)
        {
            reach = Math.Max(reach, isHeight ? place.Y + _kinds.HeightOf(place) : place.X + _kinds.WidthOf(place));
        }

        return reach;
    }

    private bool IsBetter(List<FilledSheet> plan, List<FilledSheet> other)
    {
        long cost = CostOf(plan), before = CostOf(other);
        return cost != before ? cost < before : plan.Count != other.Count ? plan.Count < other.Count : Squares(plan) > Squares(other);
    }

    private long CostOf(List<FilledSheet> plan)
    {
        long cost = 0;
        foreach (FilledSheet sheet in plan)
        {
            cost += PriceOf(sheet);
        }

        return cost;
    }

    private long PriceOf(FilledSheet sheet) => sheet.Size == _missing ? Missing * (long)Math.Ceiling(10_000 * (sheet.Area / _area)) : _sizes.Price[sheet.Size];

    private double SheetArea(int size) => (double)_sizes.Width[size] * _sizes.Height[size];

    private double Squares(List<FilledSheet> plan)
    {
        double sum = 0;
        foreach (FilledSheet sheet in plan)
        {
            sum += sheet.Size == _missing ? 0 : sheet.Area * (sheet.Area / SheetArea(sheet.Size));
        }

        return sum;
    }

    private FilledSheet Fill(int[] order, int rule, long width, long height)
    {
        FilledSheet sheet = _sawn ? _sawing.Fill(_work, order, rule, width, height) : _filling.Fill(_work, order, (FillRule)rule, width, height);
        long steps = _filling.Steps + _sawing.Steps;
        _effort.Spend(steps - _steps + FillSteps);
        _steps = steps;
        return sheet;
    }

    /// <summary>The pool that is in the work array on sheets; null where that costs more, or takes more of them, than given.</summary>
    private List<FilledSheet>? Pack(int[] order, int rule, List<int> sizes, long most, int mostSheets)
    {
        int left = 0;
        foreach (int count in _work)
        {
            left += count;
        }

        int[] used = (int[])_used.Clone();
        List<FilledSheet> plan = [];
        long cost = 0;
        while (left > 0)
        {
            if (plan.Count >= mostSheets || cost > most || (Best.Count > 0 && _effort.IsSpent))
            {
                return null;
            }

            FilledSheet? sheet = null;
            if (plan.Count < sizes.Count)
            {
                int size = sizes[plan.Count];

                // An earlier sheet may have become one of this size: then there may be none left.
                if (used[size] < _limit[size])
                {
                    sheet = Fill(order, rule, _sizes.Width[size], _sizes.Height[size]);
                    sheet.Size = size;
                    if (sheet.Places.Count == 0)
                    {
                        sheet = null;
                    }
                }
            }

            sheet ??= FillCheapest(order, rule, used, left) ?? Rest();
            left -= sheet.Places.Count;
            cost += PriceOf(sheet);
            if (sheet.Size != _missing)
            {
                used[sheet.Size]++;
            }

            plan.Add(sheet);
        }

        return cost > most ? null : plan;
    }

    /// <summary>What is left in the pool, on no sheet.</summary>
    private FilledSheet Rest()
    {
        FilledSheet rest = new() { Size = _missing };
        for (int kind = 0; kind < _work.Length; kind++)
        {
            rest.Area += _work[kind] * _kinds.Area[kind];
            for (; _work[kind] > 0; _work[kind]--)
            {
                rest.Places.Add(new SheetPlace(kind, false, 0, 0));
            }
        }

        return rest;
    }

    /// <summary>The next sheet, of the size that costs least for the area it holds; of those that hold all the rest the cheapest, every other time. Null where there is none.</summary>
    private FilledSheet? FillCheapest(int[] order, int rule, int[] used, int left)
    {
        FilledSheet? best = null;
        bool bestHoldsAll = false;
        double bestRate = 0;
        int[]? bestPool = null;
        int[] pool = (int[])_work.Clone();
        int open = 0;
        for (int size = 0; size < _sizes.Count; size++)
        {
            open += _isOpen[size] && used[size] < _limit[size] ? 1 : 0;
        }

        for (int size = 0; size < _sizes.Count; size++)
        {
            if (!_isOpen[size] || used[size] >= _limit[size])
            {
                continue;
            }

            // Long past the effort, before there is a first plan: any sheet will do.
            if (best is not null && _effort.Used > _end)
            {
                break;
            }

            Array.Copy(pool, _work, pool.Length);
            FilledSheet sheet = Fill(order, rule, _sizes.Width[size], _sizes.Height[size]);
            sheet.Size = size;
            if (sheet.Places.Count == 0)
            {
                continue;
            }

            bool holdsAll = sheet.Places.Count == left;

            // Of what costs nothing the sheet that is filled best.
            double rate = _sizes.Price[size] == 0 ? -sheet.Area / ((double)_sizes.Width[size] * _sizes.Height[size]) : holdsAll && _prefersOne ? _sizes.Price[size] : _sizes.Price[size] / sheet.Area;
            if (best is null || (_prefersOne && holdsAll && !bestHoldsAll) || ((!_prefersOne || holdsAll == bestHoldsAll) && (rate < bestRate || (rate == bestRate && SheetArea(size) < SheetArea(best.Size)))))
            {
                (best, bestHoldsAll, bestRate) = (sheet, holdsAll, rate);
                if (open > 1)
                {
                    bestPool = (int[])_work.Clone();
                }
            }
        }

        if (bestPool is not null)
        {
            Array.Copy(bestPool, _work, bestPool.Length);
        }

        return best;
    }

    private void Improve(List<FilledSheet> plan, long until)
    {
        while (_effort.Used < until)
        {
            if (_sizes.Count > 1 && Cost <= _leastCost && !IsShort)
            {
                // Only fewer sheets remain to be won: that is worth a little.
                _lastStop = Math.Min(_lastStop, _effort.Used + Math.Min(_effort.Left / 8, LastSteps));
                if (_effort.Used >= _lastStop)
                {
                    return;
                }
            }

            // What is looked at beside the filling itself.
            _effort.Spend((plan.Count + (4 * _kinds.Kinds)) / 16);
            List<int> chosen = Choose(plan);
            List<FilledSheet> old = chosen.ConvertAll(i => plan[i]);
            int[] pool = PoolOf(old);
            Array.Clear(_used, 0, _used.Length);
            for (int i = 0; i < plan.Count; i++)
            {
                if (plan[i].Size != _missing && !chosen.Contains(i))
                {
                    _used[plan[i].Size]++;
                }
            }

            List<FilledSheet>? best = null;
            long oldCost = CostOf(old);
            for (int t = 0; t < Tries; t++)
            {
                Array.Copy(pool, _work, pool.Length);
                Turn(pool);
                _prefersOne = _chance.Below(2) == 0;
                List<int> sizes = old.ConvertAll(static sheet => sheet.Size);
                sizes.Remove(_missing);
                Shuffle(sizes);
                if (_sizes.Count > 1 && _chance.Below(3) == 0)
                {
                    sizes.Clear();
                }

                List<FilledSheet>? again = Pack(Shuffled(_orders[_chance.Below(_orders.Length)], pool), _chance.Below(Rules), sizes, oldCost, old.Count + (_sizes.Count > 1 || IsShort ? 1 : 0));
                if (again is not null && !IsBetter(best ?? old, again))
                {
                    best = again;
                }
            }

            if (best is null)
            {
                continue;
            }

            chosen.Sort();
            for (int i = chosen.Count - 1; i >= 0; i--)
            {
                plan.RemoveAt(chosen[i]);
            }

            plan.AddRange(best);
            long cost = CostOf(plan);
            if (cost < Cost || (cost == Cost && plan.Count < Best.Count))
            {
                (Best, Cost) = ([.. plan], cost);
                if (IsDone)
                {
                    return;
                }
            }
            else if (cost == Cost && plan.Count == Best.Count && Squares(plan) > Squares(Best))
            {
                Best = [.. plan];
            }
        }
    }

    /// <summary>Now and then some kinds are tried turned first: pieces that go both ways would never be laid turned else.</summary>
    private void Turn(int[] pool)
    {
        bool[] turnFirst = _straight;
        if (_chance.Below(8) == 0)
        {
            turnFirst = _turnFirst;
            int most = 1 + _chance.Below(2);
            for (int kind = 0; kind < pool.Length; kind++)
            {
                turnFirst[kind] = _kinds.Turns[kind] && pool[kind] > 0 && _chance.Below(2) < most;
            }
        }

        (_filling.TurnFirst, _sawing.TurnFirst) = (turnFirst, turnFirst);
    }

    /// <summary>Two or three sheets, the emptiest often among them; one alone may go on a cheaper one.</summary>
    private List<int> Choose(List<FilledSheet> plan)
    {
        int least = _open > 1 && !IsShort ? 1 : 2;
        int take = Math.Min(plan.Count, least + _chance.Below(_open > 1 ? 3 : 2));
        List<int> chosen = [];
        while (chosen.Count < take)
        {
            int at = chosen.Count == 0 && _chance.Below(2) == 0 ? Emptiest(plan, true) : _chance.Below(plan.Count);
            if (!chosen.Contains(at))
            {
                chosen.Add(at);
            }
        }

        return chosen;
    }

    private int[] PoolOf(List<FilledSheet> sheets)
    {
        int[] pool = new int[_kinds.Kinds];
        foreach (FilledSheet sheet in sheets)
        {
            foreach (SheetPlace place in sheet.Places)
            {
                pool[place.Kind]++;
            }
        }

        return pool;
    }

    /// <summary>The sheet with most of its area free; what there is no sheet for before any, or left out.</summary>
    private int Emptiest(List<FilledSheet> plan, bool countsMissing)
    {
        int at = -1;
        double most = -1;
        for (int i = 0; i < plan.Count; i++)
        {
            double free = plan[i].Size == _missing ? (countsMissing ? double.MaxValue : -1) : SheetArea(plan[i].Size) - plan[i].Area;
            (at, most) = free > most ? (i, free) : (at, most);
        }

        return at;
    }

    /// <summary>An order roughly like another, of the kinds in the pool.</summary>
    private int[] Shuffled(int[] order, int[] pool)
    {
        int count = 0;
        foreach (int kind in order)
        {
            count += pool[kind] > 0 ? 1 : 0;
        }

        int[] kinds = new int[count];
        int at = 0;
        foreach (int kind in order)
        {
            if (pool[kind] > 0)
            {
                kinds[at++] = kind;
            }
        }

        int swaps = _chance.Below(1 + count);
        for (int i = 0; i < swaps; i++)
        {
            int a = _chance.Below(count), b = _chance.Below(count);
            (kinds[a], kinds[b]) = (kinds[b], kinds[a]);
        }

        return kinds;
    }

    private void Shuffle(List<int> list)
    {
        for (int i = list.Count - 1; i > 0; i--)
        {
            int other = _chance.Below(i + 1);
            (list[i], list[other]) = (list[other], list[i]);
        }
    }
}
