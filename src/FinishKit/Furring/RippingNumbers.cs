using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>A job of ripping in whole nanometres.</summary>
internal sealed class RippingNumbers
{
    private const long OneMillimetre = 1_000_000;

    private static readonly Allowed s_sheet = new(10, 20_000, "mm");
    private static readonly Allowed s_width = new(1, 20_000, "mm");
    private static readonly Allowed s_length = new(1, 1e6, "mm");
    private static readonly Allowed s_trim = new(0, 500, "mm");
    private static readonly Allowed s_kerf = new(0, 20, "mm");
    private static readonly Allowed s_count = new(1, StripRipping.MostPieces, string.Empty);

    private RippingNumbers(long sheetLength, long sheetWidth, long trim, long kerf, (long Width, long Length, int Count)[] parts) =>
        (SheetLength, SheetWidth, Trim, Kerf, Parts) = (sheetLength, sheetWidth, trim, kerf, parts);

    internal long SheetLength { get; }

    internal long SheetWidth { get; }

    internal long Trim { get; }

    internal long Kerf { get; }

    internal (long Width, long Length, int Count)[] Parts { get; }

    /// <summary>Pieces that a strip is joined from: as few as can be.</summary>
    internal static long PiecesOf(long length, long usable) => (length + usable - 1) / usable;

    /// <summary>Null where there is a problem.</summary>
    internal static RippingNumbers? Read(RippingJob job, string path, List<InputProblem>? problems)
    {
        if (Door.IsMissing(job, new Name(path), "a job", problems))
        {
            return null;
        }

        int before = problems?.Count ?? 0;
        double sheetLength = Door.Millimetres(job.SheetLength, new Name(path + ".SheetLength"), s_sheet, problems);
        double sheetWidth = Door.Millimetres(job.SheetWidth, new Name(path + ".SheetWidth"), s_sheet, problems);
        (long, long, int)[] parts = ReadParts(job, path, problems);
        double trim = job.Trim is { } own ? Door.Millimetres(own, new Name(path + ".Trim"), s_trim, problems) : RippingDefaults.Trim;
        double kerf = job.Kerf is { } cut ? Door.Millimetres(cut, new Name(path + ".Kerf"), s_kerf, problems) : RippingDefaults.Kerf;
        if ((problems?.Count ?? 0) > before)
        {
            return null;
        }

        RippingNumbers numbers = new(Grid.Nanometres(sheetLength), Grid.Nanometres(sheetWidth), Grid.Nanometres(trim), Grid.Nanometres(kerf), parts);
        return numbers.HasRoom(path, trim, problems) && numbers.IsOfSize(path, problems) ? numbers : null;
    }

    private static (long Width, long Length, int Count)[] ReadParts(RippingJob job, string path, List<InputProblem>? problems)
    {
        string name = path + ".Parts";
        const string Words = "1 to 200 kinds of strips";
        if (Door.IsMissing(job.Parts, new Name(name), Words, problems))
        {
            return [];
        }

        int count = job.Parts.Count;
        if (count is < 1 or > StripRipping.MostParts)
        {
            Door.Report(new InputProblem(name, Print.Number(count) + " kinds", Words, isRange: true), problems);
            return [];
        }

        var parts = new (long, long, int)[count];
        for (int i = 0; i < count; i++)
        {
            StripPart part = job.Parts[i];
            Name at = new(name, i);
            if (Door.IsMissing(part, at, "strips of a kind", problems))
            {
                continue;
            }

            double width = Door.Millimetres(part.Width, at.Then(".Width"), s_width, problems);
            double length = Door.Millimetres(part.Length, at.Then(".Length"), s_length, problems);
            Door.Number(part.Count, at.Then(".Count").ToString(), s_count, problems);
            parts[i] = double.IsNaN(width) || double.IsNaN(length) ? default : (Grid.Nanometres(width), Grid.Nanometres(length), part.Count);
        }

        return parts;
    }

    private bool HasRoom(string path, double trim, List<InputProblem>? problems)
    {
        if (Math.Min(SheetLength, SheetWidth) - (2 * Trim) >= OneMillimetre)
        {
            return true;
        }

        Door.Report(new InputProblem(path + ".Trim", Print.Number(trim) + " mm", "so little that 1 mm or more of the sheet is left each way", isRange: true), problems);
        return false;
    }

    private bool IsOfSize(string path, List<InputProblem>? problems)
    {
        long shorter = Math.Min(SheetLength, SheetWidth) - (2 * Trim), pieces = 0;
        foreach ((long _, long length, int count) in Parts)
        {
            pieces += count * PiecesOf(length, shorter);
        }

        if (pieces <= StripRipping.MostPieces)
        {
            return true;
        }

        Door.Report(new InputProblem(path + ".Parts", Print.Number(pieces) + " pieces", "at most 5000 pieces, those longer than the sheet's shorter side divided", isRange: true), problems);
        return false;
    }
}
