using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Which way strips run on the sheet.</summary>
public enum RipDirection
{
    /// <summary>Along the side that is called the sheet's width: mostly across the face grain.</summary>
    AcrossSheet = 0,

    /// <summary>Along the side that is called the sheet's length: mostly along the face grain.</summary>
    AlongSheet = 1,
}

/// <summary>One strip ripped from a sheet, from end to end, and what is cut from it. Along the sheet: pieces + kerfs + trim + offcut = sheet.</summary>
/// <remarks><see cref="StripRipping.Rip"/> makes them.</remarks>
public sealed class RippedStrip
{
    private readonly long _width, _kerfs, _offcut;
    private readonly long[] _pieces;

    internal RippedStrip(long width, long[] pieces, long usable, long kerf)
    {
        (_width, _pieces) = (width, pieces);
        (_kerfs, _offcut) = StripRipping.Rest(usable, pieces, kerf);
    }

    /// <summary>Its width.</summary>
    public Length Width => RippingPlan.Mm(_width);

    /// <summary>The lengths cut from it, the longest first.</summary>
    public IReadOnlyList<Length> Pieces => [.. Array.ConvertAll(_pieces, RippingPlan.Mm)];

    /// <summary>What the cross cuts take, a rest narrower than a kerf included.</summary>
    public Length Kerfs => RippingPlan.Mm(_kerfs);

    /// <summary>Length that is left over.</summary>
    public Length Offcut => RippingPlan.Mm(_offcut);

    internal long WidthInNanometres => _width;

    internal long OffcutInNanometres => _offcut;

    /// <summary>Width and pieces, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Mm(Grid.Millimetres(_width))} wide, {Print.Number(_pieces.Length)} pieces, {Print.Mm(Grid.Millimetres(_offcut))} left";
}

/// <summary>One sheet and the strips ripped from it. Over the sheet: strips + kerfs + trim + offcut = sheet.</summary>
/// <remarks><see cref="StripRipping.Rip"/> makes them.</remarks>
public sealed class RippedSheet
{
    private readonly long _kerfs, _offcut;

    internal RippedSheet(IReadOnlyList<RippedStrip> strips, long usable, long kerf)
    {
        Strips = [.. strips];
        long[] widths = new long[strips.Count];
        for (int i = 0; i < widths.Length; i++)
        {
            widths[i] = strips[i].WidthInNanometres;
        }

        (_kerfs, _offcut) = StripRipping.Rest(usable, widths, kerf);
    }

    /// <summary>The strips, the widest first.</summary>
    public IReadOnlyList<RippedStrip> Strips { get; }

    /// <summary>What the rips take, a rest narrower than a kerf included.</summary>
    public Length Kerfs => RippingPlan.Mm(_kerfs);

    /// <summary>Width that is left over.</summary>
    public Length Offcut => RippingPlan.Mm(_offcut);

    internal long OffcutInNanometres => _offcut;

    /// <summary>How many strips and what is left, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Strips.Count)} strips, {Print.Mm(Grid.Millimetres(_offcut))} left";
}

/// <summary>How many strips of one width a whole sheet gives.</summary>
/// <remarks><see cref="StripRipping.Rip"/> makes them.</remarks>
public sealed class StripYield
{
    internal StripYield(long width, int perSheet, long offcut)
    {
        Width = RippingPlan.Mm(width);
        PerSheet = perSheet;
        Offcut = RippingPlan.Mm(offcut);
    }

    /// <summary>Width of the strips.</summary>
    public Length Width { get; }

    /// <summary>Strips of that width from a sheet ripped into nothing else; 0 where they are wider than the sheet.</summary>
    public int PerSheet { get; }

    /// <summary>Width that is then left over.</summary>
    public Length Offcut { get; }

    /// <summary>Width, number and offcut, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(PerSheet)} strips of {Print.Mm(Width.Millimeters)} a sheet, {Print.Mm(Offcut.Millimeters)} left";
}

/// <summary>What comes of ripping the sheets one way.</summary>
/// <remarks><see cref="StripRipping.Rip"/> makes them.</remarks>
public sealed class RippingWay
{
    internal RippingWay(RipDirection direction, IReadOnlyList<StripYield> yields, IReadOnlyList<RippedSheet> sheets, int leastSheets, int joints, int joined)
    {
        Direction = direction;
        Yields = [.. yields];
        Sheets = [.. sheets];
        LeastSheets = leastSheets;
        Joints = joints;
        JoinedStrips = joined;
        foreach (RippedSheet sheet in Sheets)
        {
            RippedStrips += sheet.Strips.Count;
        }
    }

    /// <summary>Which way the strips run.</summary>
    public RipDirection Direction { get; }

    /// <summary>Whether every strip is narrow enough for the sheet this way.</summary>
    public bool Fits => Sheets.Count > 0;

    /// <summary>For each width asked, in the order asked, what a whole sheet gives.</summary>
    public IReadOnlyList<StripYield> Yields { get; }

    /// <summary>The sheets with their strips; empty where a strip is too wide.</summary>
    public IReadOnlyList<RippedSheet> Sheets { get; }

    /// <summary>Sheets that any plan takes which rips sheets from end to end and then cuts to length; 0 where a strip is too wide.</summary>
    public int LeastSheets { get; }

    /// <summary>Whether no such plan takes fewer sheets.</summary>
    public bool Proven => Fits && Sheets.Count == LeastSheets;

    /// <summary>Strips ripped, from end to end of a sheet.</summary>
    public int RippedStrips { get; }

    /// <summary>Butt joints in strips that are longer than the sheet.</summary>
    public int Joints { get; }

    /// <summary>How many strips are longer than the sheet.</summary>
    public int JoinedStrips { get; }

    /// <summary>Direction, sheets and joints, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string way = Direction == RipDirection.AlongSheet ? "along the sheet" : "across the sheet";
        return Fits ? $"{way}: {Print.Number(Sheets.Count)} sheets, {Print.Number(LeastSheets)} at least, {Print.Number(RippedStrips)} strips, {Print.Number(Joints)} joints" : $"{way}: a strip is too wide";
    }
}

/// <summary>How many sheets strips take, ripped along and across them: what <see cref="StripRipping.Rip"/> answers.</summary>
/// <remarks><see cref="StripRipping.Rip"/> makes one.</remarks>
public sealed class RippingPlan
{
    private readonly RippingNumbers _numbers;

    internal RippingPlan(RippingJob job, RippingNumbers numbers, RippingWay along, RippingWay across)
    {
        _numbers = numbers;
        Job = job;
        Along = along;
        Across = across;
        Recommended = StripRipping.Better(along, across);
        Findings = RippingFindings.Of(numbers, along, across, Recommended);
        List<DefaultUsed> defaults = [];
        if (job.Trim is null)
        {
            defaults.Add(new DefaultUsed(new Figure("trim", RippingDefaults.Trim, "mm"), RippingDefaults.TrimSource));
        }

        if (job.Kerf is null)
        {
            defaults.Add(new DefaultUsed(new Figure("kerf", RippingDefaults.Kerf, "mm"), RippingDefaults.KerfSource));
        }

        DefaultsUsed = [.. defaults];
    }

    /// <summary>The job.</summary>
    public RippingJob Job { get; }

    /// <summary>Strips along the side called the sheet's length.</summary>
    public RippingWay Along { get; }

    /// <summary>Strips along its other side.</summary>
    public RippingWay Across { get; }

    /// <summary>The way with fewer joints; then fewer sheets; then fewer strips ripped; then along the sheet. Null where strips are too wide both ways.</summary>
    public RippingWay? Recommended { get; }

    /// <summary>What a person should know, gravest first.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: strips are too wide for the sheet both ways.</summary>
    public bool HasProblem => Recommended is null;

    /// <summary>The defaults taken because the job gave no figure of its own.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    /// <summary>How the number of strips a sheet and what is left over follow, for each width, the recommended way; along the sheet where there is none.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        RippingWay way = Recommended ?? Along;
        double side = Grid.Millimetres(way.Direction == RipDirection.AlongSheet ? _numbers.SheetWidth : _numbers.SheetLength);
        double trim = Grid.Millimetres(_numbers.Trim), kerf = Grid.Millimetres(_numbers.Kerf);
        for (int i = 0; i < way.Yields.Count; i++)
        {
            StripYield yield = way.Yields[i];
            StripRipping.SolveYield(side, trim, kerf, Door.Millimetres(yield.Width), yield.PerSheet, i + 1, recorder);
        }

        return recorder.ToWorkings("Strips from a sheet");
    }

    /// <summary>The plan as flat figures.</summary>
    /// <returns>Whether the strips fit (1 or 0), the worst severity as the number of its enumeration (0 too where there is no finding), sheets each way where they fit; of the recommended way whether it runs along the sheet (1 or 0), sheets, least sheets, whether proven (1 or 0), strips ripped, joints and the widest offcut.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures = [new("fits", Recommended is null ? 0 : 1, string.Empty), new("worst-severity", Findings.Count == 0 ? 0 : (int)Findings[0].Severity, string.Empty)];
        AddSheets("sheets-along", Along);
        AddSheets("sheets-across", Across);
        if (Recommended is { } way)
        {
            long widest = 0;
            foreach (RippedSheet sheet in way.Sheets)
            {
                widest = Math.Max(widest, sheet.OffcutInNanometres);
            }

            figures.Add(new("along", way.Direction == RipDirection.AlongSheet ? 1 : 0, string.Empty));
            figures.Add(new("sheets", way.Sheets.Count, string.Empty));
            figures.Add(new("least-sheets", way.LeastSheets, string.Empty));
            figures.Add(new("proven", way.Proven ? 1 : 0, string.Empty));
            figures.Add(new("ripped-strips", way.RippedStrips, string.Empty));
            figures.Add(new("joints", way.Joints, string.Empty));
            figures.Add(new("widest-offcut", Grid.Millimetres(widest), "mm"));
        }

        return [.. figures];

        void AddSheets(string name, RippingWay way)
        {
            if (way.Fits)
            {
                figures.Add(new Figure(name, way.Sheets.Count, string.Empty));
            }
        }
    }

    /// <summary>The recommended way in a line, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Recommended?.ToString() ?? Findings[0].Message;

    internal static Length Mm(long nanometres) => Door.Millimetres(Grid.Millimetres(nanometres));
}
