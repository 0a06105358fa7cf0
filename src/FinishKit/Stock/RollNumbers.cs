using System.Collections.Generic;

namespace FinishKit;

/// <summary>A job of cutting from a roll in whole nanometres.</summary>
internal sealed class RollNumbers
{
    internal const int DefaultEffort = 50_000_000;

    private const long OneMillimetre = 1_000_000;

    private static readonly Allowed s_part = new(1, 20_000, "mm");
    private static readonly Allowed s_width = new(10, 20_000, "mm");
    private static readonly Allowed s_selvedge = new(0, 200, "mm");
    private static readonly Allowed s_between = new(0, 100, "mm");
    private static readonly Allowed s_sold = new(1, 10_000, "mm");
    private static readonly Allowed s_count = new(1, 1000, string.Empty);
    private static readonly Allowed s_effort = new(1, 2_000_000_000, string.Empty);

    private RollNumbers(RollJob job, double width, double selvedge, double between, double sold)
    {
        (Width, Selvedge, Between, SoldBy) = (Grid.Nanometres(width), Grid.Nanometres(selvedge), Grid.Nanometres(between), Grid.Nanometres(sold));
        Effort = job.Effort ?? DefaultEffort;
        Parts = new SheetPartNumbers[job.Parts.Count];
        for (int i = 0; i < Parts.Length; i++)
        {
            RollPart part = job.Parts[i];
            double along = Grid.Snap(Door.Millimetres(part.Along)), across = Grid.Snap(Door.Millimetres(part.Across));
            Parts[i] = new SheetPartNumbers(Grid.Nanometres(across), Grid.Nanometres(along), part.Count, part.MayTurn, along * across);
        }
    }

    /// <summary>Their length is across the roll.</summary>
    internal SheetPartNumbers[] Parts { get; }

    internal long Width { get; }

    internal long Selvedge { get; }

    internal long Between { get; }

    internal long SoldBy { get; }

    internal int Effort { get; }

    internal long Usable => Width - (2 * Selvedge);

    /// <summary>Whether a piece goes across the roll, turned where it may be.</summary>
    internal bool Goes(in SheetPartNumbers part) => part.Length <= Usable || (part.MayTurn && part.Width <= Usable);

    /// <summary>Null where there is a problem.</summary>
    internal static RollNumbers? Read(RollJob job, string path, List<InputProblem>? problems)
    {
        if (Door.IsMissing(job, new Name(path), "a job", problems))
        {
            return null;
        }

        int before = problems?.Count ?? 0;
        double width = Door.Millimetres(job.Width, new Name(path + ".Width"), s_width, problems);
        double selvedge = job.Selvedge is { } edge ? Door.Millimetres(edge, new Name(path + ".Selvedge"), s_selvedge, problems) : 0;
        double between = job.Between is { } room ? Door.Millimetres(room, new Name(path + ".Between"), s_between, problems) : 0;
        double sold = job.SoldBy is { } by ? Door.Millimetres(by, new Name(path + ".SoldBy"), s_sold, problems) : 0;
        if (job.Effort is { } effort)
        {
            Door.Number(effort, path + ".Effort", s_effort, problems);
        }

        double usable = Grid.Millimetres(Grid.Nanometres(width) - (2 * Grid.Nanometres(selvedge)));
        if (!double.IsNaN(width + selvedge) && Grid.Nanometres(usable) < OneMillimetre)
        {
            Door.Report(new InputProblem(path + ".Selvedge", Print.Number(selvedge) + " mm", "so little that 1 mm or more of the roll's width is left", isRange: true), problems);
        }

        ReadParts(job, path, problems);
        return (problems?.Count ?? 0) > before ? null : new RollNumbers(job, width, selvedge, between, sold);
    }

    private static void ReadParts(RollJob job, string path, List<InputProblem>? problems)
    {
        string name = path + ".Parts";
        if (CuttingNumbers.IsNoList(job.Parts, name, 1, RollCutting.MostParts, "1 to 500 kinds of pieces", problems))
        {
            return;
        }

        long pieces = 0;
        for (int i = 0; i < job.Parts.Count; i++)
        {
            RollPart part = job.Parts[i];
            Name at = new(name, i);
            if (Door.IsMissing(part, at, "pieces of a kind", problems))
            {
                continue;
            }

            Door.Millimetres(part.Along, at.Then(".Along"), s_part, problems);
            Door.Millimetres(part.Across, at.Then(".Across"), s_part, problems);
            Door.Number(part.Count, at.Then(".Count").ToString(), s_count, problems);
            if (part.Name is { Length: > RollCutting.LongestName } text)
            {
                Door.Report(new InputProblem(at.Then(".Name").ToString(), Print.Number(text.Length) + " characters", "at most 100 characters", isRange: true), problems);
            }

            pieces += part.Count;
        }

        if (pieces > RollCutting.MostPieces)
        {
            Door.Report(new InputProblem(name, Print.Number(pieces) + " pieces", "at most 10000 pieces", isRange: true), problems);
        }
    }
}
