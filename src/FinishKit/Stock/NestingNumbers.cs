using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>A job of nesting in whole nanometres and whole ten-thousandths of the currency.</summary>
internal sealed class NestingNumbers
{
    private const long OneMillimetre = 1_000_000;

    private static readonly Allowed s_part = new(1, 10_000, "mm");
    private static readonly Allowed s_sheet = new(10, 10_000, "mm");
    private static readonly Allowed s_trim = new(0, 200, "mm");
    private static readonly Allowed s_kerf = new(0, 20, "mm");
    private static readonly Allowed s_count = new(1, SheetNesting.MostPieces, string.Empty);
    private static readonly Allowed s_available = new(0, SheetNesting.MostPieces, string.Empty);
    private static readonly Allowed s_offcuts = new(1, 1000, string.Empty);
    private static readonly Allowed s_effort = new(1, 2_000_000_000, string.Empty);

    private NestingNumbers(NestingJob job, double kerf, double trim, double leastLength, double leastWidth)
    {
        (Kerf, Trim) = (Grid.Nanometres(kerf), Grid.Nanometres(trim));
        (LeastLength, LeastWidth) = (Grid.Nanometres(leastLength), Grid.Nanometres(leastWidth));
        Effort = job.Effort ?? NestingDefaults.Effort;
        IsSawn = job.Cutting == SheetCutting.Sawn;
        Parts = new SheetPartNumbers[job.Parts.Count];
        for (int i = 0; i < Parts.Length; i++)
        {
            SheetPart part = job.Parts[i];
            double length = Door.Millimetres(part.Length), width = Door.Millimetres(part.Width);
            Parts[i] = new SheetPartNumbers(Grid.Nanometres(length), Grid.Nanometres(width), part.Count, part.MayTurn, part.Outline is { } outline ? SheetOutline.Area(outline) : Grid.Snap(length) * Grid.Snap(width));
        }

        int stock = job.Stock.Count, offcuts = job.Offcuts?.Count ?? 0;
        Sheets = new SheetKind[stock + offcuts];
        for (int i = 0; i < stock; i++)
        {
            StockSheet sheet = job.Stock[i];
            Sheets[i] = new SheetKind(
                Grid.Nanometres(Door.Millimetres(sheet.Length)),
                Grid.Nanometres(Door.Millimetres(sheet.Width)),
                Trim,
                (long)(sheet.Price * CuttingNumbers.PriceSteps),
                sheet.Available ?? int.MaxValue);
        }

        for (int i = 0; i < offcuts; i++)
        {
            SheetOffcut offcut = job.Offcuts![i];
            Sheets[stock + i] = new SheetKind(Grid.Nanometres(Door.Millimetres(offcut.Length)), Grid.Nanometres(Door.Millimetres(offcut.Width)), 0, 0, offcut.Count);
        }

        StockKinds = stock;
    }

    internal SheetPartNumbers[] Parts { get; }

    /// <summary>The bought kinds in the job's order, then the offcuts.</summary>
    internal SheetKind[] Sheets { get; }

    internal int StockKinds { get; }

    internal long Kerf { get; }

    internal long Trim { get; }

    internal long LeastLength { get; }

    internal long LeastWidth { get; }

    internal int Effort { get; }

    internal bool IsSawn { get; }

    internal bool IsWorthKeeping(long length, long width) => Math.Max(length, width) >= LeastLength && Math.Min(length, width) >= LeastWidth;

    /// <summary>Null where there is a problem.</summary>
    internal static NestingNumbers? Read(NestingJob job, string path, List<InputProblem>? problems)
    {
        if (Door.IsMissing(job, new Name(path), "a job", problems))
        {
            return null;
        }

        int before = problems?.Count ?? 0;
        ReadParts(job, path, problems);
        double least = ReadStock(job, path, problems);
        ReadOffcuts(job, path, problems);
        if (job.Cutting is not (SheetCutting.Sawn or SheetCutting.Routed))
        {
            Door.Report(new InputProblem(path + ".Cutting", Print.Number((int)job.Cutting), "Sawn or Routed", isRange: true), problems);
        }

        double kerf = job.Kerf is { } cut ? Door.Millimetres(cut, new Name(path + ".Kerf"), s_kerf, problems) : NestingDefaults.Kerf;
        if (job.Kerf is null && job.Cutting == SheetCutting.Routed)
        {
            // A saw's kerf is no default for a bit: with one of 6 mm it would cut 3.6 mm into the neighbour.
            Door.Report(new InputProblem(path + ".Kerf", InputProblem.MissingValue, "0 to 20 mm where a router cuts: the width of its path, which has no default", isRange: false), problems);
        }

        double trim = job.Trim is { } own ? Door.Millimetres(own, new Name(path + ".Trim"), s_trim, problems) : NestingDefaults.Trim;
        double length = job.LeastOffcutLength is { } longer ? Door.Millimetres(longer, new Name(path + ".LeastOffcutLength"), s_part, problems) : NestingDefaults.LeastOffcutLength;
        double width = job.LeastOffcutWidth is { } shorter ? Door.Millimetres(shorter, new Name(path + ".LeastOffcutWidth"), s_part, problems) : NestingDefaults.LeastOffcutWidth;
        if (job.Effort is { } effort)
        {
            Door.Number(effort, path + ".Effort", s_effort, problems);
        }

        if (!double.IsNaN(trim + least) && Grid.Nanometres(least) - (2 * Grid.Nanometres(trim)) < OneMillimetre)
        {
            Door.Report(new InputProblem(path + ".Trim", Print.Number(trim) + " mm", "so little that 1 mm or more of every sheet is left", isRange: true), problems);
        }

        return (problems?.Count ?? 0) > before ? null : new NestingNumbers(job, kerf, trim, length, width);
    }

    private static void ReadParts(NestingJob job, string path, List<InputProblem>? problems)
    {
        string name = path + ".Parts";
        if (CuttingNumbers.IsNoList(job.Parts, name, 1, SheetNesting.MostParts, "1 to 2000 kinds of pieces", problems))
        {
            return;
        }

        long pieces = 0, corners = 0;
        for (int i = 0; i < job.Parts.Count; i++)
        {
            SheetPart part = job.Parts[i];
            Name at = new(name, i);
            if (Door.IsMissing(part, at, "pieces of a kind", problems))
            {
                continue;
            }

            double length = Door.Millimetres(part.Length, at.Then(".Length"), s_part, problems);
            double width = Door.Millimetres(part.Width, at.Then(".Width"), s_part, problems);
            Door.Number(part.Count, at.Then(".Count").ToString(), s_count, problems);
            if (part.Outline is { } outline)
            {
                // Once there are too many no more are looked at: each takes its square in time.
                corners += outline.Count is >= 3 and <= SheetOutline.MostCorners ? outline.Count : 0;
                if (corners <= SheetNesting.MostCorners)
                {
                    SheetOutline.Check(outline, length, width, at.Then(".Outline"), problems);
                }
            }

            if (part.Name is { Length: > SheetNesting.LongestName } text)
            {
                Door.Report(new InputProblem(at.Then(".Name").ToString(), Print.Number(text.Length) + " characters", "at most 100 characters", isRange: true), problems);
            }

            pieces += part.Count;
        }

        if (corners > SheetNesting.MostCorners)
        {
            Door.Report(new InputProblem(name, Print.Number(corners) + " corners", "at most 100,000 corners of all outlines", isRange: true), problems);
        }

        if (pieces > SheetNesting.MostPieces)
        {
            Door.Report(new InputProblem(name, Print.Number(pieces) + " pieces", "at most 10,000 pieces", isRange: true), problems);
        }
    }

    /// <summary>The least side of a sheet, or not a number.</summary>
    private static double ReadStock(NestingJob job, string path, List<InputProblem>? problems)
    {
        string name = path + ".Stock";
        if (CuttingNumbers.IsNoList(job.Stock, name, 1, SheetNesting.MostStock, "1 to 20 kinds of sheets", problems))
        {
            return double.NaN;
        }

        double least = double.PositiveInfinity;
        for (int i = 0; i < job.Stock.Count; i++)
        {
            StockSheet sheet = job.Stock[i];
            Name at = new(name, i);
            if (Door.IsMissing(sheet, at, "sheets of a kind", problems))
            {
                least = double.NaN;
                continue;
            }

            // Not a number stays: what is wrong already is not said twice.
            least = Math.Min(least, Door.Millimetres(sheet.Length, at.Then(".Length"), s_sheet, problems));
            least = Math.Min(least, Door.Millimetres(sheet.Width, at.Then(".Width"), s_sheet, problems));
            if (sheet.Available is { } available)
            {
                Door.Number(available, at.Then(".Available").ToString(), s_available, problems);
            }

            CuttingNumbers.ReadPrice(sheet.Price, at, problems);
        }

        return least;
    }

    private static void ReadOffcuts(NestingJob job, string path, List<InputProblem>? problems)
    {
        string name = path + ".Offcuts";
        if (job.Offcuts is null || CuttingNumbers.IsNoList(job.Offcuts, name, 0, SheetNesting.MostOffcuts, "at most 100 kinds of offcuts", problems))
        {
            return;
        }

        for (int i = 0; i < job.Offcuts.Count; i++)
        {
            SheetOffcut offcut = job.Offcuts[i];
            Name at = new(name, i);
            if (!Door.IsMissing(offcut, at, "offcuts of a size", problems))
            {
                Door.Millimetres(offcut.Length, at.Then(".Length"), s_sheet, problems);
                Door.Millimetres(offcut.Width, at.Then(".Width"), s_sheet, problems);
                Door.Number(offcut.Count, at.Then(".Count").ToString(), s_offcuts, problems);
            }
        }
    }
}

/// <summary>Pieces of one kind in whole nanometres; the area in mm2.</summary>
internal readonly struct SheetPartNumbers
{
    internal SheetPartNumbers(long length, long width, int count, bool mayTurn, double area) => (Length, Width, Count, MayTurn, Area) = (length, width, count, mayTurn, area);

    internal long Length { get; }

    internal long Width { get; }

    internal int Count { get; }

    internal bool MayTurn { get; }

    internal double Area { get; }
}

/// <summary>Sheets of one kind, bought or on hand, in whole nanometres.</summary>
internal readonly struct SheetKind
{
    internal SheetKind(long length, long width, long trim, long price, int available) => (Length, Width, Trim, Price, Available) = (length, width, trim, price, available);

    internal long Length { get; }

    internal long Width { get; }

    /// <summary>Off each edge.</summary>
    internal long Trim { get; }

    internal long Price { get; }

    internal int Available { get; }

    internal long UsableLength => Length - (2 * Trim);

    internal long UsableWidth => Width - (2 * Trim);
}
