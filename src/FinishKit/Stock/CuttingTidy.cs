using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// Of plans that take the same boards, one that wastes less, and of those one with fewer set-ups: what two boards hold is shared anew
/// where that leaves a longer offcut, a pattern is repeated as often as the parts allow where the rest still goes on the boards left,
/// and what two boards hold is shared in equal halves.
/// Steps that help are kept; that no better plan exists is not claimed.
/// </summary>
internal sealed class CuttingTidy
{
    private const int MostPairNodes = 2000;
    private const int MostPairs = 4000;
    private const int MostTrials = 60;

    /// <summary>Tidying takes about as much as the search at most, and this much where that was short.</summary>
    private const int LeastNodes = 20_000;

    private const int MostNodes = 500_000;

    private readonly CuttingProblem _problem;
    private readonly BoardFilling _filling;
    private readonly CuttingEffort _effort;
    private readonly BoardKind[] _kinds;
    private readonly long[] _lengths;
    private readonly long _kerf, _least, _until;

    // Lengths: each size with a kerf, in nanometres. Least: the shortest offcut worth keeping.
    internal CuttingTidy(CuttingProblem problem, BoardKind[] kinds, long[] lengths, long kerf, long least, CuttingEffort effort)
    {
        (_problem, _kinds, _lengths, _kerf, _least, _effort) = (problem, kinds, lengths, kerf, least, effort);
        _filling = new BoardFilling(problem, effort);
        _until = effort.Used + Math.Min(MostNodes, LeastNodes + effort.Used);
    }

    private bool IsEnough => _effort.IsSpent || _effort.Used > _until;

    /// <summary>What the saw leaves of a remainder, if it is worth keeping.</summary>
    internal static long Kept(long remainder, long kerf, long least) => remainder - kerf >= least ? remainder - kerf : 0;

    internal List<CuttingPattern> Tidy(List<CuttingPattern> plan)
    {
        List<CuttingPattern> best = SharePairs(plan);
        return Halve(Repeat(best));
    }

    private static int SetUps(List<CuttingPattern> plan)
    {
        HashSet<string> different = new(StringComparer.Ordinal);
        foreach (CuttingPattern pattern in plan)
        {
            different.Add(pattern.Key());
        }

        return different.Count;
    }

    private long Waste(List<CuttingPattern> plan)
    {
        long waste = 0;
        foreach (CuttingPattern pattern in plan)
        {
            waste += Waste(pattern);
        }

        return waste;
    }

    /// <summary>Board less pieces and less the offcut kept.</summary>
    private long Waste(int kind, long held, int pieces)
    {
        BoardKind board = _kinds[kind];
        return board.Length - (held - (pieces * _kerf)) - Kept(board.Usable + _kerf - held, _kerf, _least);
    }

    private List<CuttingPattern> SharePairs(List<CuttingPattern> plan)
    {
        List<CuttingPattern> best = [.. plan];
        List<long> rooms = best.ConvertAll(Room);
        int pairs = 0;
        bool isBetter = true;
        while (isBetter)
        {
            isBetter = false;
            for (int i = 0; i < best.Count && !isBetter && _effort.TrySpend((best.Count - i) / 64); i++)
            {
                for (int k = i + 1; k < best.Count && !isBetter && pairs < MostPairs && !IsEnough; k++)
                {
                    long first = rooms[i], second = rooms[k];
                    if (Kept(first + second, _kerf, _least) <= Kept(first, _kerf, _least) + Kept(second, _kerf, _least))
                    {
                        continue;
                    }

                    pairs++;
                    if (Share(best[i], best[k]) is { } shared)
                    {
                        (best[i], rooms[i]) = (shared.First, Room(shared.First));
                        (best[k], rooms[k]) = (shared.Second, Room(shared.Second));
                        isBetter = true;
                        if (shared.Second.Pieces == 0)
                        {
                            best.RemoveAt(k);
                            rooms.RemoveAt(k);
                        }

                        if (shared.First.Pieces == 0)
                        {
                            best.RemoveAt(i);
                            rooms.RemoveAt(i);
                        }
                    }
                }
            }
        }

        return best;
    }

    private long Room(CuttingPattern pattern) => _kinds[pattern.Kind].Usable + _kerf - pattern.Length(_lengths);

    /// <summary>What both hold, shared so that the two together waste less; null where no way was found.</summary>
    private (CuttingPattern First, CuttingPattern Second)? Share(CuttingPattern first, CuttingPattern second)
    {
        int[] all = new int[_lengths.Length], own = new int[_lengths.Length];
        int pieces = first.Pieces + second.Pieces;
        long nodes = 0, most = Math.Min(MostPairNodes, _effort.Left);
        first.AddTo(all);
        second.AddTo(all);

        long held = first.Length(_lengths) + second.Length(_lengths);
        long least = Waste(first.Kind, first.Length(_lengths), first.Pieces) + Waste(second.Kind, second.Length(_lengths), second.Pieces);
        int[]? best = null;
        Try(0, 0, 0);
        _effort.Spend(nodes);
        if (best is null)
        {
            return null;
        }

        int[] rest = new int[all.Length];
        for (int i = 0; i < rest.Length; i++)
        {
            rest[i] = all[i] - best[i];
        }

        return (CuttingPattern.Of(first.Kind, best), CuttingPattern.Of(second.Kind, rest));

        void Try(int size, long taken, int count)
        {
            if (nodes >= most)
            {
                return;
            }

            nodes++;

            while (size < all.Length && all[size] == 0)
            {
                size++;
            }

            if (size == all.Length)
            {
                if (held - taken <= _kinds[second.Kind].Usable + _kerf)
                {
                    long waste = (count == 0 ? 0 : Waste(first.Kind, taken, count)) + (count == pieces ? 0 : Waste(second.Kind, held - taken, pieces - count));
                    if (waste < least)
                    {
                        (least, best) = (waste, (int[])own.Clone());
                    }
                }

                return;
            }

            long room = _kinds[first.Kind].Usable + _kerf - taken;
            for (int many = (int)Math.Min(all[size], room / _lengths[size]); many >= 0; many--)
            {
                own[size] = many;
                Try(size + 1, taken + (many * _lengths[size]), count + many);
            }

            own[size] = 0;
        }
    }

    /// <summary>Two patterns of one kind made alike, as often as both are there: where that wastes less, or no more with a set-up less. Over and over until nothing helps.</summary>
    private List<CuttingPattern> Halve(List<CuttingPattern> plan)
    {
        CuttingShapes shapes = new(plan, Waste);
        bool isBetter = true;
        while (isBetter)
        {
            isBetter = false;

            // A step leaves what is before it as it was: the next goes on from there, and what was passed over comes again in the next round.
            for (int i = 0; i < shapes.Different.Count;)
            {
                if (IsEnough || !_effort.TrySpend((shapes.Different.Count - i) / 16))
                {
                    return shapes.Plan();
                }

                if (!Halved(shapes, i))
                {
                    i++;
                    continue;
                }

                isBetter = true;
                if (!_effort.TrySpend(shapes.Boards / 16))
                {
                    return shapes.Plan();
                }
            }
        }

        return shapes.Plan();
    }

    /// <summary>Whether a pattern was made like one after it.</summary>
    private bool Halved(CuttingShapes shapes, int at)
    {
        CuttingShape first = shapes.Different[at];
        for (int k = at + 1; k < shapes.Different.Count; k++)
        {
            CuttingShape second = shapes.Different[k];
            if (second.Parity != first.Parity)
            {
                continue;
            }

            if (IsEnough || !_effort.TrySpend(1))
            {
                return false;
            }

            CuttingPattern half = first.Pattern.Half(second.Pattern)!;
            long waste = (2 * Waste(half)) - first.Waste - second.Waste;
            if (waste > 0)
            {
                continue;
            }

            CuttingShape alike = shapes.Of(half);
            int fewer = (first.Times == second.Times ? 2 : 1) - (alike.Times > 0 ? 0 : 1);
            if (waste < 0 || fewer > 0)
            {
                shapes.MakeAlike(first, second, alike);
                return true;
            }
        }

        return false;
    }

    private long Waste(CuttingPattern pattern) => Waste(pattern.Kind, pattern.Length(_lengths), pattern.Pieces);

    private List<CuttingPattern> Repeat(List<CuttingPattern> plan)
    {
        // What the plan holds: all of the demand, unless boards were too few.
        int[] demand = new int[_lengths.Length], boards = new int[_problem.Kinds];
        foreach (CuttingPattern pattern in plan)
        {
            boards[pattern.Kind]++;
            pattern.AddTo(demand);
        }

        List<CuttingPattern> best = plan, settled = [];
        long waste = Waste(plan);
        int setUps = SetUps(plan), trials = 0;
        HashSet<string> done = new(StringComparer.Ordinal);
        while (trials < MostTrials && !IsEnough)
        {
            // The pattern that could be repeated most, of those not looked at.
            CuttingPattern? next = null;
            int most = 1;
            foreach (CuttingPattern pattern in best)
            {
                int times = pattern.TimesIn(demand, boards);
                if (times > most && !done.Contains(pattern.Key()))
                {
                    (most, next) = (times, pattern);
                }
            }

            if (next is null)
            {
                break;
            }

            trials++;
            done.Add(next.Key());
            List<CuttingPattern> trial = [.. settled];
            int[] demandLeft = (int[])demand.Clone(), boardsLeft = (int[])boards.Clone();
            for (int i = 0; i < most; i++)
            {
                trial.Add(next);
                next.TakeFrom(demandLeft);
                boardsLeft[next.Kind]--;
            }

            int repeated = trial.Count;
            if (_filling.BestFit(demandLeft, boardsLeft, true) is not { } rest)
            {
                rest = _filling.FillOneByOne(demandLeft, boardsLeft, false, out int[] uncut);
                if (Array.Exists(uncut, static count => count > 0))
                {
                    continue;
                }
            }

            trial.AddRange(rest);
            long trialWaste = Waste(trial);
            int trialSetUps = SetUps(trial);
            if (trialWaste < waste || (trialWaste == waste && trialSetUps < setUps))
            {
                (best, waste, setUps) = (trial, trialWaste, trialSetUps);
                settled = trial.GetRange(0, repeated);
                (demand, boards) = (demandLeft, boardsLeft);
            }
        }

        return best;
    }
}

/// <summary>A pattern of a plan with what is asked of it over and over.</summary>
internal sealed class CuttingShape(CuttingPattern pattern, int parity, long waste)
{
    internal CuttingPattern Pattern { get; } = pattern;

    /// <summary>The same for two patterns of one kind that together hold an even number of every size.</summary>
    internal int Parity { get; } = parity;

    internal long Waste { get; } = waste;

    /// <summary>On how many boards it is.</summary>
    internal int Times { get; set; }
}

/// <summary>The patterns of a plan, each kept once.</summary>
internal sealed class CuttingShapes
{
    private readonly Func<CuttingPattern, long> _waste;
    private readonly Dictionary<string, CuttingShape> _shapes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _parities = new(StringComparer.Ordinal);
    private readonly List<CuttingShape> _boards = [];

    internal CuttingShapes(List<CuttingPattern> plan, Func<CuttingPattern, long> waste)
    {
        _waste = waste;
        foreach (CuttingPattern pattern in plan)
        {
            _boards.Add(Of(pattern));
        }

        Count();
    }

    /// <summary>Each once, in the order of the boards.</summary>
    internal List<CuttingShape> Different { get; } = [];

    internal int Boards => _boards.Count;

    internal List<CuttingPattern> Plan() => _boards.ConvertAll(static shape => shape.Pattern);

    internal CuttingShape Of(CuttingPattern pattern)
    {
        string key = pattern.Key();
        if (!_shapes.TryGetValue(key, out CuttingShape? shape))
        {
            string odd = pattern.OddKey();
            if (!_parities.TryGetValue(odd, out int parity))
            {
                parity = _parities.Count;
                _parities.Add(odd, parity);
            }

            shape = new CuttingShape(pattern, parity, _waste(pattern));
            _shapes.Add(key, shape);
        }

        return shape;
    }

    /// <summary>As many boards of two patterns as there are of both become boards of a third.</summary>
    internal void MakeAlike(CuttingShape first, CuttingShape second, CuttingShape alike)
    {
        int firsts = Math.Min(first.Times, second.Times), seconds = firsts;
        for (int i = 0; i < _boards.Count; i++)
        {
            if ((_boards[i] == first && firsts-- > 0) || (_boards[i] == second && seconds-- > 0))
            {
                _boards[i] = alike;
            }
        }

        Count();
    }

    private void Count()
    {
        Different.ForEach(static shape => shape.Times = 0);
        Different.Clear();
        foreach (CuttingShape shape in _boards)
        {
            if (shape.Times++ == 0)
            {
                Different.Add(shape);
            }
        }
    }
}
