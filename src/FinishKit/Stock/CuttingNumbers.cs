using System;
using System.Collections.Generic;
using System.Globalization;

namespace FinishKit;

/// <summary>A job of cutting in whole nanometres and whole ten-thousandths of the currency.</summary>
internal sealed class CuttingNumbers
{
    internal const long PriceSteps = 10_000;

    private const long OneMillimetre = 1_000_000;
    private const decimal MostPrice = 1_000_000;

    internal const double LongestBoard = 20_000;

    private static readonly Allowed s_part = new(1, 20_000, "mm");
    private static readonly Allowed s_board = new(10, LongestBoard, "mm");
    private static readonly Allowed s_trim = new(0, 500, "mm");
    private static readonly Allowed s_kerf = new(0, 20, "mm");
    private static readonly Allowed s_count = new(1, BoardCutting.MostPieces, string.Empty);
    private static readonly Allowed s_pack = new(1, 1000, string.Empty);
    private static readonly Allowed s_available = new(0, BoardCutting.MostPieces, string.Empty);
    private static readonly Allowed s_effort = new(1, 2_000_000_000, string.Empty);

    private CuttingNumbers(CuttingJob job, double kerf, double trim, double least)
    {
        (Kerf, Trim, LeastOffcut) = (Grid.Nanometres(kerf), Grid.Nanometres(trim), Grid.Nanometres(least));
        Effort = job.Effort ?? CuttingDefaults.Effort;
        Parts = new (long, int)[job.Parts.Count];
        for (int i = 0; i < Parts.Length; i++)
        {
            Parts[i] = (Grid.Nanometres(Door.Millimetres(job.Parts[i].Length)), job.Parts[i].Count);
        }

        int stock = job.Stock.Count, offcuts = job.Offcuts?.Count ?? 0;
        Boards = new BoardKind[stock + offcuts];
        for (int i = 0; i < stock; i++)
        {
            StockBoard board = job.Stock[i];
            Boards[i] = new BoardKind(Grid.Nanometres(Door.Millimetres(board.Length)), Trim, (long)(board.Price * PriceSteps), board.Pack, board.Available ?? int.MaxValue);
        }

        for (int i = 0; i < offcuts; i++)
        {
            BoardOffcut offcut = job.Offcuts![i];
            Boards[stock + i] = new BoardKind(Grid.Nanometres(Door.Millimetres(offcut.Length)), 0, 0, 1, offcut.Count);
        }

        StockKinds = stock;
    }

    internal (long Length, int Count)[] Parts { get; }

    /// <summary>The bought kinds in the job's order, then the offcuts.</summary>
    internal BoardKind[] Boards { get; }

    internal int StockKinds { get; }

    internal long Kerf { get; }

    internal long Trim { get; }

    internal long LeastOffcut { get; }

    internal int Effort { get; }

    /// <summary>Null where there is a problem.</summary>
    internal static CuttingNumbers? Read(CuttingJob job, string path, List<InputProblem>? problems)
    {
        if (Door.IsMissing(job, new Name(path), "a job", problems))
        {
            return null;
        }

        int before = problems?.Count ?? 0;
        ReadParts(job, path, problems);
        double shortest = ReadStock(job, path, problems);
        ReadOffcuts(job, path, problems);
        double kerf = job.Kerf is { } cut ? Door.Millimetres(cut, new Name(path + ".Kerf"), s_kerf, problems) : CuttingDefaults.Kerf;
        double trim = job.EndTrim is { } own ? Door.Millimetres(own, new Name(path + ".EndTrim"), s_trim, problems) : CuttingDefaults.EndTrim;
        double least = job.LeastOffcut is { } kept ? Door.Millimetres(kept, new Name(path + ".LeastOffcut"), s_part, problems) : CuttingDefaults.LeastOffcut;
        if (job.Effort is { } effort)
        {
            Door.Number(effort, path + ".Effort", s_effort, problems);
        }

        if (!double.IsNaN(trim + shortest) && Grid.Nanometres(shortest) - (2 * Grid.Nanometres(trim)) < OneMillimetre)
        {
            Door.Report(new InputProblem(path + ".EndTrim", Print.Number(trim) + " mm", "so little that 1 mm or more of every board is left", isRange: true), problems);
        }

        return (problems?.Count ?? 0) > before ? null : new CuttingNumbers(job, kerf, trim, least);
    }

    private static void ReadParts(CuttingJob job, string path, List<InputProblem>? problems)
    {
        string name = path + ".Parts";
        const string Words = "1 to 2000 kinds of pieces";
        if (IsNoList(job.Parts, name, 1, BoardCutting.MostParts, Words, problems))
        {
            return;
        }

        long pieces = 0;
        for (int i = 0; i < job.Parts.Count; i++)
        {
            BoardPart part = job.Parts[i];
            Name at = new(name, i);
            if (Door.IsMissing(part, at, "pieces of a kind", problems))
            {
                continue;
            }

            Door.Millimetres(part.Length, at.Then(".Length"), s_part, problems);
            Door.Number(part.Count, at.Then(".Count").ToString(), s_count, problems);
            if (part.Name is { Length: > BoardCutting.LongestName } text)
            {
                Door.Report(new InputProblem(at.Then(".Name").ToString(), Print.Number(text.Length) + " characters", "at most 100 characters", isRange: true), problems);
            }

            pieces += part.Count;
        }

        if (pieces > BoardCutting.MostPieces)
        {
            Door.Report(new InputProblem(name, Print.Number(pieces) + " pieces", "at most 10,000 pieces", isRange: true), problems);
        }
    }

    /// <summary>The shortest board, or not a number.</summary>
    private static double ReadStock(CuttingJob job, string path, List<InputProblem>? problems)
    {
        string name = path + ".Stock";
        const string Words = "1 to 20 kinds of boards";
        if (IsNoList(job.Stock, name, 1, BoardCutting.MostStock, Words, problems))
        {
            return double.NaN;
        }

        double shortest = double.PositiveInfinity;
        for (int i = 0; i < job.Stock.Count; i++)
        {
            StockBoard board = job.Stock[i];
            Name at = new(name, i);
            if (Door.IsMissing(board, at, "boards of a kind", problems))
            {
                shortest = double.NaN;
                continue;
            }

            // Not a number stays: what is wrong already is not said twice.
            shortest = Math.Min(shortest, Door.Millimetres(board.Length, at.Then(".Length"), s_board, problems));
            Door.Number(board.Pack, at.Then(".Pack").ToString(), s_pack, problems);
            if (board.Available is { } available)
            {
                Door.Number(available, at.Then(".Available").ToString(), s_available, problems);
            }

            ReadPrice(board.Price, at, problems);
        }

        return shortest;
    }

    private static void ReadOffcuts(CuttingJob job, string path, List<InputProblem>? problems)
    {
        string name = path + ".Offcuts";
        if (job.Offcuts is null || IsNoList(job.Offcuts, name, 0, BoardCutting.MostOffcuts, "at most 100 kinds of offcuts", problems))
        {
            return;
        }

        for (int i = 0; i < job.Offcuts.Count; i++)
        {
            BoardOffcut offcut = job.Offcuts[i];
            Name at = new(name, i);
            if (!Door.IsMissing(offcut, at, "offcuts of a length", problems))
            {
                Door.Millimetres(offcut.Length, at.Then(".Length"), s_board, problems);
                Door.Number(offcut.Count, at.Then(".Count").ToString(), s_pack, problems);
            }
        }
    }

    internal static void ReadPrice(decimal price, Name at, List<InputProblem>? problems)
    {
        if (price < 0 || price > MostPrice || price * PriceSteps != decimal.Truncate(price * PriceSteps))
        {
            Door.Report(new InputProblem(at.Then(".Price").ToString(), Unrounded(price), "0 to 1,000,000 with at most four decimals", isRange: true), problems);
        }
    }

    /// <summary>To the last decimal there is: rounded, what is refused would read like what is allowed.</summary>
    internal static string Unrounded(decimal amount) => amount.ToString("0.00##########################", CultureInfo.InvariantCulture);

    internal static bool IsNoList<T>(IReadOnlyList<T> list, string name, int least, int most, string words, List<InputProblem>? problems)
    {
        if (Door.IsMissing(list, new Name(name), words, problems))
        {
            return true;
        }

        if (list.Count >= least && list.Count <= most)
        {
            return false;
        }

        Door.Report(new InputProblem(name, Print.Number(list.Count) + " kinds", words, isRange: true), problems);
        return true;
    }
}

/// <summary>Boards of one kind, bought or on hand, in whole nanometres.</summary>
internal readonly struct BoardKind
{
    internal BoardKind(long length, long trim, long price, int pack, int available) => (Length, Trim, Price, Pack, Available) = (length, trim, price, pack, available);

    internal long Length { get; }

    /// <summary>Off each end.</summary>
    internal long Trim { get; }

    internal long Price { get; }

    internal int Pack { get; }

    internal int Available { get; }

    internal long Usable => Length - (2 * Trim);
}
