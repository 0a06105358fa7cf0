using System;
using System.Collections.Generic;
using System.Globalization;
using UnitsNet;

namespace FinishKit;

/// <summary>A piece on a board.</summary>
/// <remarks><see cref="BoardCutting.Cut"/> makes them.</remarks>
public sealed class CutPiece
{
    internal CutPiece(int part, string? name, long start, long length)
    {
        (Part, Name) = (part, name);
        (Start, Length) = (CuttingPlan.Mm(start), CuttingPlan.Mm(length));
    }

    /// <summary>Which of the job's parts it is, from 0.</summary>
    public int Part { get; }

    /// <summary>What the job calls it, or null.</summary>
    public string? Name { get; }

    /// <summary>From the board's end as bought to where the piece starts.</summary>
    public Length Start { get; }

    /// <summary>Its length.</summary>
    public Length Length { get; }

    /// <summary>Length and name, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Mm(Door.Millimetres(Length))}{(Name is null ? string.Empty : " " + Name)}";
}

/// <summary>One board and what is cut from it, in the order of the cuts: trim + pieces + kerfs + offcut + trim = board.</summary>
/// <remarks><see cref="BoardCutting.Cut"/> makes them.</remarks>
public sealed class CutBoard
{
    internal CutBoard(BoardKind board, bool isOffcut, int index, int setUp, IReadOnlyList<CutPiece> pieces, long held, long kerf, long least)
    {
        (IsOffcut, Index, SetUp, Pieces) = (isOffcut, index, setUp, [.. pieces]);
        long remainder = board.Usable - held - ((pieces.Count - 1) * kerf);
        LengthInNanometres = board.Length;
        HeldInNanometres = held;
        KerfsInNanometres = ((pieces.Count - 1) * kerf) + Math.Min(kerf, remainder);
        OffcutInNanometres = Math.Max(0, remainder - kerf);
        TrimInNanometres = 2 * board.Trim;
        IsOffcutKept = OffcutInNanometres >= least;
        RemainderInNanometres = remainder;
    }

    /// <summary>Whether it is an offcut that was on hand.</summary>
    public bool IsOffcut { get; }

    /// <summary>Which of the job's boards, or of its offcuts, it is, from 0.</summary>
    public int Index { get; }

    /// <summary>Boards with one number are cut alike, with the stops left where they are. From 1.</summary>
    public int SetUp { get; }

    /// <summary>Its length before anything is cut.</summary>
    public Length Length => CuttingPlan.Mm(LengthInNanometres);

    /// <summary>The pieces from one end to the other, the longest first.</summary>
    public IReadOnlyList<CutPiece> Pieces { get; }

    /// <summary>What is trimmed off both ends together.</summary>
    public Length Trim => CuttingPlan.Mm(TrimInNanometres);

    /// <summary>What the cuts between and behind pieces take; a remainder of a kerf or less goes into the last.</summary>
    public Length Kerfs => CuttingPlan.Mm(KerfsInNanometres);

    /// <summary>Length that is left over behind the last cut.</summary>
    public Length Offcut => CuttingPlan.Mm(OffcutInNanometres);

    /// <summary>Whether what is left over is long enough to keep.</summary>
    public bool IsOffcutKept { get; }

    internal long LengthInNanometres { get; }

    internal long HeldInNanometres { get; }

    internal long TrimInNanometres { get; }

    internal long KerfsInNanometres { get; }

    internal long OffcutInNanometres { get; }

    internal long RemainderInNanometres { get; }

    internal long KeptInNanometres => IsOffcutKept ? OffcutInNanometres : 0;

    /// <summary>The board and its pieces, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        List<string> pieces = [];
        foreach (CutPiece piece in Pieces)
        {
            pieces.Add(Print.Round(Door.Millimetres(piece.Length), 3));
        }

        return $"{(IsOffcut ? "offcut" : "board")} of {Print.Mm(Grid.Millimetres(LengthInNanometres))}: {string.Join(" + ", pieces)}, {Print.Mm(Grid.Millimetres(OffcutInNanometres))} left";
    }
}

/// <summary>What to buy of one kind of board.</summary>
/// <remarks><see cref="BoardCutting.Cut"/> makes them.</remarks>
public sealed class BoardPurchase
{
    internal BoardPurchase(int stock, StockBoard board, int used)
    {
        (Stock, Length, BoardsUsed) = (stock, CuttingPlan.Mm(Grid.Nanometres(Door.Millimetres(board.Length))), used);
        Packs = (used + board.Pack - 1) / board.Pack;
        BoardsBought = Packs * board.Pack;
        Cost = Packs * board.Price;
    }

    /// <summary>Which of the job's boards it is, from 0.</summary>
    public int Stock { get; }

    /// <summary>Length as sold.</summary>
    public Length Length { get; }

    /// <summary>Boards that the plan cuts.</summary>
    public int BoardsUsed { get; }

    /// <summary>Boards in the packs bought.</summary>
    public int BoardsBought { get; }

    /// <summary>Packs bought; boards where they are sold singly.</summary>
    public int Packs { get; }

    /// <summary>What they cost, in the job's currency.</summary>
    public decimal Cost { get; }

    /// <summary>Count, length and cost, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(BoardsBought)} boards of {Print.Mm(Door.Millimetres(Length))}: {CuttingPlan.Money(Cost)}";
}

/// <summary>Pieces that the plan does not cut.</summary>
/// <remarks><see cref="BoardCutting.Cut"/> makes them.</remarks>
public sealed class UncutPart
{
    internal UncutPart(int part, int count, long length, bool isTooLong) => (Part, Count, Length, IsTooLong) = (part, count, CuttingPlan.Mm(length), isTooLong);

    /// <summary>Which of the job's parts they are, from 0.</summary>
    public int Part { get; }

    /// <summary>How many.</summary>
    public int Count { get; }

    /// <summary>Length of each.</summary>
    public Length Length { get; }

    /// <summary>Whether they are longer than every board; else there are too few boards.</summary>
    public bool IsTooLong { get; }

    /// <summary>Count and length, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Count)} of {Print.Mm(Door.Millimetres(Length))} not cut";
}

/// <summary>
/// A proof that boards or sheets do not suffice: a value for each part, and the most value that one board or sheet of each kind can hold,
/// whatever is cut from it. Those that hold less value than all parts have cannot give them. Anybody can check it without the search: no
/// way of filling one, with no more of a part than is asked for, is worth more than is said here.
/// </summary>
/// <remarks><see cref="BoardCutting.Cut"/> and <see cref="SheetNesting.Nest"/> make them.</remarks>
public sealed class PartValuation
{
    internal PartValuation(IReadOnlyList<long> values, IReadOnlyList<long> mostOfStock, IReadOnlyList<long> mostOfOffcuts, long needed) =>
        (Values, MostOfStock, MostOfOffcuts, Needed) = ([.. values], [.. mostOfStock], [.. mostOfOffcuts], needed);

    /// <summary>What one piece of each of the job's parts is worth; 0 for one that is too large for every board or sheet.</summary>
    public IReadOnlyList<long> Values { get; }

    /// <summary>The most that one board or sheet of each kind can hold, in the job's order.</summary>
    public IReadOnlyList<long> MostOfStock { get; }

    /// <summary>The most that one offcut of each kind can hold, in the job's order.</summary>
    public IReadOnlyList<long> MostOfOffcuts { get; }

    /// <summary>What all pieces are worth together.</summary>
    public long Needed { get; }

    /// <summary>What is needed, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"boards that hold {Needed.ToString(CultureInfo.InvariantCulture)} in value";
}

/// <summary>Boards to buy, what to cut from each, and how sure it is that nothing cheaper exists: what <see cref="BoardCutting.Cut"/> answers.</summary>
/// <remarks><see cref="BoardCutting.Cut"/> makes one.</remarks>
public sealed class CuttingPlan
{
    private readonly long _length, _trim, _pieces, _kerfs, _kept;

    internal CuttingPlan(CuttingJob job, CuttingNumbers numbers, CuttingSolution solution)
    {
        Job = job;
        (Boards, Uncut) = Lay(job, numbers, solution);
        int[] used = new int[numbers.StockKinds];
        foreach (CutBoard board in Boards)
        {
            if (!board.IsOffcut)
            {
                used[board.Index]++;
            }

            SetUps = Math.Max(SetUps, board.SetUp);
            _length += board.LengthInNanometres;
            _trim += board.TrimInNanometres;
            _pieces += board.HeldInNanometres;
            _kerfs += board.KerfsInNanometres;
            _kept += board.KeptInNanometres;
        }

        List<BoardPurchase> purchases = [];
        for (int i = 0; i < used.Length; i++)
        {
            if (used[i] > 0 && job.Stock[i].Price > 0)
            {
                purchases.Add(new BoardPurchase(i, job.Stock[i], used[i]));
                Cost += purchases[purchases.Count - 1].Cost;
            }
        }

        Purchases = [.. purchases];
        LeastCost = Uncut.Count == 0 && solution.LeastCost is { } least ? (decimal)least / CuttingNumbers.PriceSteps : null;
        Nodes = solution.Nodes;
        List<PartValuation> valuations = [];
        foreach (PartValues proof in solution.Proofs)
        {
            long[] values = new long[numbers.Parts.Length];
            for (int i = 0; i < values.Length; i++)
            {
                values[i] = solution.IsTooLong[i] ? 0 : proof.Values[solution.Lengths.IndexOf(numbers.Parts[i].Length)];
            }

            valuations.Add(new PartValuation(values, new ArraySegment<long>(proof.Most, 0, numbers.StockKinds), new ArraySegment<long>(proof.Most, numbers.StockKinds, proof.Most.Length - numbers.StockKinds), proof.Needed));
        }

        Valuations = [.. valuations];
        List<IReadOnlyList<int>> searched = [];
        foreach (int[] boards in solution.Exhausted)
        {
            searched.Add([.. new ArraySegment<int>(boards, 0, numbers.StockKinds)]);
        }

        SearchedInVain = [.. searched];
        List<DefaultUsed> defaults = [];
        if (job.Kerf is null)
        {
            defaults.Add(new DefaultUsed(new Figure("kerf", CuttingDefaults.Kerf, "mm"), CuttingDefaults.KerfSource));
        }

        if (job.EndTrim is null)
        {
            defaults.Add(new DefaultUsed(new Figure("end-trim", CuttingDefaults.EndTrim, "mm"), CuttingDefaults.EndTrimSource));
        }

        if (job.LeastOffcut is null)
        {
            defaults.Add(new DefaultUsed(new Figure("least-offcut", CuttingDefaults.LeastOffcut, "mm"), CuttingDefaults.LeastOffcutSource));
        }

        DefaultsUsed = [.. defaults];
        Findings = CuttingFindings.Of(this, numbers);
    }

    /// <summary>The job.</summary>
    public CuttingJob Job { get; }

    /// <summary>The boards in the order in which to cut them: offcuts on hand first, boards that are cut alike one after the other.</summary>
    public IReadOnlyList<CutBoard> Boards { get; }

    /// <summary>What to buy, in the order of the job's boards; kinds of which nothing is bought, and those of price 0, which are on hand, are left out.</summary>
    public IReadOnlyList<BoardPurchase> Purchases { get; }

    /// <summary>Pieces that are not cut: too long for every board, or too few boards. Empty where all are.</summary>
    public IReadOnlyList<UncutPart> Uncut { get; }

    /// <summary>What the boards cost, in the job's currency.</summary>
    public decimal Cost { get; }

    /// <summary>No plan for all pieces costs less, in the job's currency. Null where pieces are not cut: there is no such plan then, or none was found.</summary>
    public decimal? LeastCost { get; }

    /// <summary>How much of the cost might be saved at most, 0 to 1. Null where pieces are not cut.</summary>
    public double? Gap => LeastCost is { } least ? Cost == least ? 0 : (double)((Cost - least) / Cost) : null;

    /// <summary>Whether every piece is cut and no plan costs less.</summary>
    public bool Proven => LeastCost == Cost;

    /// <summary>How often the stops are set: different ways of cutting a board of a kind.</summary>
    public int SetUps { get; }

    /// <summary>Length of boards taken that ends neither in a piece nor in an offcut worth keeping: trim, kerfs and short offcuts.</summary>
    public Length Waste => Mm(WasteInNanometres);

    /// <summary>Length of all offcuts worth keeping.</summary>
    public Length KeptOffcuts => Mm(_kept);

    /// <summary>Length of all pieces cut.</summary>
    public Length PiecesLength => Mm(_pieces);

    /// <summary>Length of all boards taken, offcuts on hand included.</summary>
    public Length BoardsLength => Mm(_length);

    /// <summary>Nodes of search used.</summary>
    public long Nodes { get; }

    /// <summary>What the least cost rests on, together with <see cref="SearchedInVain"/>: boards that hold the value of all parts, by every one of these, cost at least <see cref="LeastCost"/>.</summary>
    public IReadOnlyList<PartValuation> Valuations { get; }

    /// <summary>Boards of each kind (with all offcuts) from which the pieces cannot be cut, shown by going through every way; mostly empty.</summary>
    public IReadOnlyList<IReadOnlyList<int>> SearchedInVain { get; }

    /// <summary>What a person should know, gravest first.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: pieces are not cut.</summary>
    public bool HasProblem => Uncut.Count > 0;

    /// <summary>The defaults taken because the job gave no figure of its own.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    internal long WasteInNanometres => _length - _pieces - _kept;

    /// <summary>What becomes of the boards' length.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        BoardCutting.SolveLengths(Grid.Millimetres(_length), Grid.Millimetres(_trim), Grid.Millimetres(_pieces), Grid.Millimetres(_kerfs), Grid.Millimetres(_kept), recorder);
        return recorder.ToWorkings("Length of the boards");
    }

    /// <summary>The plan as flat figures.</summary>
    /// <returns>The worst severity as the number of its enumeration (0 too where there is no finding), boards, boards bought, cost, pieces not cut, set-ups, waste, offcuts kept and nodes; where every piece is cut the least cost, the gap and whether it is proven (1 or 0).</returns>
    public IReadOnlyList<Figure> Figures()
    {
        int bought = 0, uncut = 0;
        foreach (BoardPurchase purchase in Purchases)
        {
            bought += purchase.BoardsBought;
        }

        foreach (UncutPart part in Uncut)
        {
            uncut += part.Count;
        }

        List<Figure> figures =
        [
            new("worst-severity", Findings.Count == 0 ? 0 : (int)Findings[0].Severity, string.Empty),
            new("boards", Boards.Count, string.Empty),
            new("bought", bought, string.Empty),
            new("cost", (double)Cost, string.Empty),
            new("uncut", uncut, string.Empty),
            new("set-ups", SetUps, string.Empty),
            new("waste", Grid.Millimetres(WasteInNanometres), "mm"),
            new("kept-offcuts", Grid.Millimetres(_kept), "mm"),
            new("nodes", Nodes, string.Empty),
        ];
        if (LeastCost is { } least)
        {
            figures.Add(new Figure("least-cost", (double)least, string.Empty));
            figures.Add(new Figure("gap", Gap!.Value, string.Empty));
            figures.Add(new Figure("proven", Proven ? 1 : 0, string.Empty));
        }

        return [.. figures];
    }

    /// <summary>Boards, cost and whether it is proven, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string end = HasProblem ? ", not all pieces cut" : Proven ? ", proven least" : $", {Money(LeastCost ?? 0)} at least";
        return $"{Print.Number(Boards.Count)} boards, cost {Money(Cost)}{end}";
    }

    internal static Length Mm(long nanometres) => Door.Millimetres(Grid.Millimetres(nanometres));

    internal static string Money(decimal amount) => amount.ToString("0.00##", CultureInfo.InvariantCulture);

    private static (IReadOnlyList<CutBoard> Boards, IReadOnlyList<UncutPart> Uncut) Lay(CuttingJob job, CuttingNumbers numbers, CuttingSolution solution)
    {
        // Offcuts on hand first, then the bought kinds; what is cut alike together, the longest piece first.
        List<CuttingPattern> patterns = [.. solution.Patterns];
        int stock = numbers.StockKinds;
        patterns.Sort((left, right) => (left.Kind < stock) != (right.Kind < stock) ? (left.Kind < stock).CompareTo(right.Kind < stock) : CuttingPattern.Compare(left, right));

        // The parts of each length in the job's order: the first boards get the first parts.
        int[] left = Array.ConvertAll(numbers.Parts, static part => part.Count);
        Dictionary<long, int> next = [];
        List<CutBoard> boards = [];
        int setUp = 0;
        for (int i = 0; i < patterns.Count; i++)
        {
            CuttingPattern pattern = patterns[i];
            setUp += i == 0 || CuttingPattern.Compare(patterns[i - 1], pattern) != 0 ? 1 : 0;
            BoardKind board = numbers.Boards[pattern.Kind];
            List<CutPiece> pieces = [];
            long at = board.Trim, held = 0;
            for (int k = 0; k < pattern.Sizes.Length; k++)
            {
                long length = solution.Lengths[pattern.Sizes[k]];
                for (int count = 0; count < pattern.Counts[k]; count++)
                {
                    int part = Take(length);
                    pieces.Add(new CutPiece(part, job.Parts[part].Name, at, length));
                    at += length + numbers.Kerf;
                    held += length;
                }
            }

            bool isOffcut = pattern.Kind >= stock;
            boards.Add(new CutBoard(board, isOffcut, isOffcut ? pattern.Kind - stock : pattern.Kind, setUp, pieces, held, numbers.Kerf, numbers.LeastOffcut));
        }

        List<UncutPart> uncut = [];
        for (int i = 0; i < left.Length; i++)
        {
            if (left[i] > 0)
            {
                uncut.Add(new UncutPart(i, left[i], numbers.Parts[i].Length, solution.IsTooLong[i]));
            }
        }

        return ([.. boards], [.. uncut]);

        int Take(long length)
        {
            next.TryGetValue(length, out int part);
            while (numbers.Parts[part].Length != length || left[part] == 0)
            {
                part++;
            }

            next[length] = part;
            left[part]--;
            return part;
        }
    }
}
