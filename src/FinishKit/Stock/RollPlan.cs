using System;
using System.Collections.Generic;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>A piece on a roll.</summary>
/// <remarks><see cref="RollCutting.Cut"/> makes them.</remarks>
public sealed class RollPiece
{
    internal RollPiece(int part, string? name, bool isTurned, in SheetRegion region)
    {
        (Part, Name, IsTurned) = (part, name, isTurned);
        (FromEdge, FromEnd) = (CuttingPlan.Mm(region.Left), CuttingPlan.Mm(region.Bottom));
        (Across, Along) = (CuttingPlan.Mm(region.Length), CuttingPlan.Mm(region.Width));
    }

    /// <summary>Which of the job's parts it is, from 0.</summary>
    public int Part { get; }

    /// <summary>What the job calls it, or null.</summary>
    public string? Name { get; }

    /// <summary>Whether it lies turned by a quarter.</summary>
    public bool IsTurned { get; }

    /// <summary>From the roll's left edge, selvedge included, to where the piece starts.</summary>
    public Length FromEdge { get; }

    /// <summary>From the roll's end to where the piece starts.</summary>
    public Length FromEnd { get; }

    /// <summary>Its size across the roll, as it lies.</summary>
    public Length Across { get; }

    /// <summary>Its size along the roll, as it lies.</summary>
    public Length Along { get; }

    /// <summary>Size, place and name, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Round(Door.Millimetres(Along), 3)} along x {Print.Mm(Door.Millimetres(Across))} across, {Print.Round(Door.Millimetres(FromEnd), 3)} from the end and {Print.Round(Door.Millimetres(FromEdge), 3)} from the edge{(IsTurned ? ", turned" : string.Empty)}{(Name is null ? string.Empty : " " + Name)}";
}

/// <summary>Pieces of a job that do not go across the roll.</summary>
/// <remarks><see cref="RollCutting.Cut"/> makes them.</remarks>
public sealed class TooWidePart
{
    internal TooWidePart(int part, RollPart from) => (Part, Name, Count, Along, Across, Size) = (part, from.Name, from.Count, from.Along, from.Across, SizeOf(from));

    /// <summary>Which of the job's parts they are, from 0.</summary>
    public int Part { get; }

    /// <summary>What the job calls them, or null.</summary>
    public string? Name { get; }

    /// <summary>How many.</summary>
    public int Count { get; }

    /// <summary>Along the roll, as the job gives it.</summary>
    public Length Along { get; }

    /// <summary>Across the roll, as the job gives it.</summary>
    public Length Across { get; }

    /// <summary>Along x across and name: what a message calls them.</summary>
    internal string Size { get; }

    /// <summary>Count, size and name, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Count)} of {Size} not cut";

    private static string SizeOf(RollPart part) => $"{Print.Number(Door.Millimetres(part.Along))} along x {Print.Number(Door.Millimetres(part.Across))} mm across{(part.MayTurn ? " either way" : string.Empty)}{(part.Name is null ? string.Empty : " " + part.Name)}";
}

/// <summary>Length of a roll to buy and what lies where on it: what <see cref="RollCutting.Cut"/> answers.</summary>
/// <remarks><see cref="RollCutting.Cut"/> makes one.</remarks>
public sealed class RollPlan
{
    private const int MostNamed = 3;

    private readonly double _width, _pieces;
    private readonly long _length, _least;

    internal RollPlan(RollJob job, RollNumbers numbers, CuttingEffort effort)
    {
        Job = job;
        List<int> cut = [];
        List<TooWidePart> tooWide = [];
        for (int i = 0; i < numbers.Parts.Length; i++)
        {
            if (numbers.Goes(numbers.Parts[i]))
            {
                cut.Add(i);
                _pieces += numbers.Parts[i].Count * numbers.Parts[i].Area;
            }
            else
            {
                tooWide.Add(new TooWidePart(i, job.Parts[i]));
            }
        }

        TooWide = [.. tooWide];
        (Pieces, _length, _least) = cut.Count == 0 ? ([], 0, 0) : Lay(job, numbers, [.. cut], effort);
        _width = Grid.Millimetres(numbers.Width);
        Length = CuttingPlan.Mm(_length);
        LeastLength = CuttingPlan.Mm(_least);
        LengthToBuy = CuttingPlan.Mm(numbers.SoldBy == 0 ? _length : (_length + numbers.SoldBy - 1) / numbers.SoldBy * numbers.SoldBy);
        Nodes = effort.Used;
        Findings = Find(numbers);
    }

    /// <summary>The job.</summary>
    public RollJob Job { get; }

    /// <summary>The pieces that are cut, from the roll's end on.</summary>
    public IReadOnlyList<RollPiece> Pieces { get; }

    /// <summary>Pieces that do not go across the roll, turned where they may be: they are not cut. Empty where all are.</summary>
    public IReadOnlyList<TooWidePart> TooWide { get; }

    /// <summary>Length of the roll that the pieces take; 0 where none goes across.</summary>
    public Length Length { get; }

    /// <summary>No layout of the pieces that are cut takes less.</summary>
    public Length LeastLength { get; }

    /// <summary>Length to buy: that taken, rounded up to what the roll is sold by.</summary>
    public Length LengthToBuy { get; }

    /// <summary>How much of the length might be saved at most, 0 to 1.</summary>
    public double Gap => _length == _least ? 0 : (_length - _least) / (double)_length;

    /// <summary>Whether all pieces are cut and no layout of them takes less.</summary>
    public bool Proven => _length == _least && TooWide.Count == 0;

    /// <summary>Area of all pieces that are cut.</summary>
    public Area PiecesArea => new(_pieces, AreaUnit.SquareMillimeter);

    /// <summary>Part of the length taken, selvedges included, that ends in pieces, 0 to 1.</summary>
    public double Used => RollCutting.SolveUse(Grid.Millimetres(_length), _width, _pieces, default(Silent));

    /// <summary>Steps of search used.</summary>
    public long Nodes { get; }

    /// <summary>What a person should know, gravest first.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: pieces do not go across the roll.</summary>
    public bool HasProblem => TooWide.Count > 0;

    /// <summary>How much of the cloth is used.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        RollCutting.SolveUse(Grid.Millimetres(_length), _width, _pieces, recorder);
        return recorder.ToWorkings("Use of the roll");
    }

    /// <summary>The plan as flat figures.</summary>
    /// <returns>The worst severity as the number of its enumeration (0 too where there is no finding), pieces cut, pieces that do not go across, length, least length, length to buy, gap, whether it is proven (1 or 0), part used, and steps.</returns>
    public IReadOnlyList<Figure> Figures() =>
    [
        new("worst-severity", Findings.Count == 0 ? 0 : (int)Findings[0].Severity, string.Empty),
        new("pieces", Pieces.Count, string.Empty),
        new("too-wide", CountTooWide(), string.Empty),
        new("length", Grid.Millimetres(_length), "mm"),
        new("least-length", Grid.Millimetres(_least), "mm"),
        new("length-to-buy", Door.Millimetres(LengthToBuy), "mm"),
        new("gap", Gap, string.Empty),
        new("proven", Proven ? 1 : 0, string.Empty),
        new("used", Used, string.Empty),
        new("nodes", Nodes, string.Empty),
    ];

    /// <summary>Length and whether it is proven, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Mm(Grid.Millimetres(_length))} of the roll{(HasProblem ? ", not all pieces cut" : Proven ? ", proven least" : $", {Print.Mm(Grid.Millimetres(_least))} at least")}";

    private static (IReadOnlyList<RollPiece> Pieces, long Length, long Least) Lay(RollJob job, RollNumbers numbers, int[] cut, CuttingEffort effort)
    {
        SheetPartNumbers[] parts = Array.ConvertAll(cut, i => numbers.Parts[i]);
        long step = 0;
        foreach (SheetPartNumbers part in parts)
        {
            step = Grid.CommonDivisor(Grid.CommonDivisor(step, part.Length + numbers.Between), part.Width + numbers.Between);
        }

        SheetKinds kinds = new(
            Array.ConvertAll(parts, part => (part.Length + numbers.Between) / step),
            Array.ConvertAll(parts, part => (part.Width + numbers.Between) / step),
            Array.ConvertAll(parts, static part => part.MayTurn && part.Length != part.Width),
            Array.ConvertAll(parts, static part => part.Count));
        SheetStrip strip = new(kinds, (numbers.Usable + numbers.Between) / step, effort);
        strip.Run();
        List<RollPiece> pieces = [];
        strip.Best.Places.Sort(static (one, other) => one.Y != other.Y ? one.Y.CompareTo(other.Y) : one.X.CompareTo(other.X));
        foreach (SheetPlace place in strip.Best.Places)
        {
            SheetPartNumbers part = parts[place.Kind];
            int of = cut[place.Kind];
            long x = numbers.Selvedge + (place.X * step), y = place.Y * step;
            pieces.Add(new RollPiece(of, job.Parts[of].Name, place.Turned, new SheetRegion(x, y, x + (place.Turned ? part.Width : part.Length), y + (place.Turned ? part.Length : part.Width))));
        }

        return ([.. pieces], (strip.Length * step) - numbers.Between, (strip.Least * step) - numbers.Between);
    }

    private int CountTooWide()
    {
        int count = 0;
        foreach (TooWidePart part in TooWide)
        {
            count += part.Count;
        }

        return count;
    }

    private Finding NotAcross(RollNumbers numbers)
    {
        int count = CountTooWide();
        List<string> named = [];
        for (int i = 0; i < TooWide.Count && i < MostNamed; i++)
        {
            named.Add(TooWide[i].Size);
        }

        // Turning helps what is locked and goes across by its other side.
        bool mayHelp = false;
        foreach (TooWidePart part in TooWide)
        {
            mayHelp |= !Job.Parts[part.Part].MayTurn && numbers.Parts[part.Part].Width <= numbers.Usable;
        }

        string words = string.Join(", ", named) + (TooWide.Count > MostNamed ? " and more" : string.Empty), them = count == 1 ? "it" : "them";
        return new Finding(
            "stock-roll-too-wide",
            Severity.Problem,
            $"{Print.Number(count)} {(count == 1 ? "piece does" : "pieces do")} not go across the {Print.Number(Grid.Millimetres(numbers.Usable))} mm of the roll that can be used, and {(count == 1 ? "is" : "are")} not cut: {words}. Join {them} with a seam, {(mayHelp ? $"let {them} turn where nap and stretch allow it, or buy" : "or buy")} a wider roll.",
            [new("pieces", count, string.Empty), new("usable", Grid.Millimetres(numbers.Usable), "mm")],
            Sources.SheetNesting);
    }

    private IReadOnlyList<Finding> Find(RollNumbers numbers)
    {
        List<Finding> findings = [];
        if (HasProblem)
        {
            findings.Add(NotAcross(numbers));
        }

        if (_length != _least)
        {
            findings.Add(new Finding(
                "stock-roll-not-proven",
                Severity.Note,
                $"{Print.Mm(Grid.Millimetres(_length))} are taken; that no layout takes less is not proven, {Print.Mm(Grid.Millimetres(_least))} is the least it could be.",
                [new("length", Grid.Millimetres(_length), "mm"), new("least-length", Grid.Millimetres(_least), "mm")],
                Sources.SheetNesting));
        }

        int turned = 0;
        foreach (RollPiece piece in Pieces)
        {
            turned += piece.IsTurned ? 1 : 0;
        }

        if (turned > 0)
        {
            findings.Add(new Finding(
                "stock-roll-piece-turned",
                Severity.Note,
                $"{Print.Number(turned)} {(turned == 1 ? "piece lies" : "pieces lie")} across the roll, as the job allows. Cloth with a nap or a sheen looks a different shade there, and what stretches does so the other way: mark such pieces with an arrow; foam and film without a direction do not mind.",
                [new("pieces", turned, string.Empty)]));
        }

        if (numbers.SoldBy == 0)
        {
            findings.Add(new Finding(
                "stock-roll-no-spare",
                Severity.Note,
                "The length is what the pieces take, to the millimetre. An end that is not cut square, a flaw in the cloth or a wrong cut needs more: add some, or say what the roll is sold by.",
                []));
        }

        return Finding.GravestFirst(findings);
    }
}
