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

/// <summary>Length of a roll to buy and what lies where on it: what <see cref="RollCutting.Cut"/> answers.</summary>
/// <remarks><see cref="RollCutting.Cut"/> makes one.</remarks>
public sealed class RollPlan
{
    private readonly double _width, _pieces;
    private readonly long _length, _least;

    internal RollPlan(RollJob job, RollNumbers numbers, CuttingEffort effort)
    {
        Job = job;
        long step = 0;
        foreach (SheetPartNumbers part in numbers.Parts)
        {
            step = Grid.CommonDivisor(Grid.CommonDivisor(step, part.Length + numbers.Between), part.Width + numbers.Between);
            _pieces += part.Count * part.Area;
        }

        SheetKinds kinds = new(
            Array.ConvertAll(numbers.Parts, part => (part.Length + numbers.Between) / step),
            Array.ConvertAll(numbers.Parts, part => (part.Width + numbers.Between) / step),
            Array.ConvertAll(numbers.Parts, static part => part.MayTurn && part.Length != part.Width),
            Array.ConvertAll(numbers.Parts, static part => part.Count));
        SheetStrip strip = new(kinds, (numbers.Usable + numbers.Between) / step, effort);
        strip.Run();
        List<RollPiece> pieces = [];
        strip.Best.Places.Sort(static (one, other) => one.Y != other.Y ? one.Y.CompareTo(other.Y) : one.X.CompareTo(other.X));
        foreach (SheetPlace place in strip.Best.Places)
        {
            SheetPartNumbers part = numbers.Parts[place.Kind];
            long x = numbers.Selvedge + (place.X * step), y = place.Y * step;
            pieces.Add(new RollPiece(place.Kind, job.Parts[place.Kind].Name, place.Turned, new SheetRegion(x, y, x + (place.Turned ? part.Width : part.Length), y + (place.Turned ? part.Length : part.Width))));
        }

        Pieces = [.. pieces];
        _length = (strip.Length * step) - numbers.Between;
        _least = (strip.Least * step) - numbers.Between;
        _width = Grid.Millimetres(numbers.Width);
        Length = CuttingPlan.Mm(_length);
        LeastLength = CuttingPlan.Mm(_least);
        LengthToBuy = CuttingPlan.Mm(numbers.SoldBy == 0 ? _length : (_length + numbers.SoldBy - 1) / numbers.SoldBy * numbers.SoldBy);
        Nodes = effort.Used;
        Findings = Find(numbers);
    }

    /// <summary>The job.</summary>
    public RollJob Job { get; }

    /// <summary>The pieces, from the roll's end on.</summary>
    public IReadOnlyList<RollPiece> Pieces { get; }

    /// <summary>Length of the roll that the pieces take.</summary>
    public Length Length { get; }

    /// <summary>No layout takes less.</summary>
    public Length LeastLength { get; }

    /// <summary>Length to buy: that taken, rounded up to what the roll is sold by.</summary>
    public Length LengthToBuy { get; }

    /// <summary>How much of the length might be saved at most, 0 to 1.</summary>
    public double Gap => (_length - _least) / (double)_length;

    /// <summary>Whether no layout takes less.</summary>
    public bool Proven => _length == _least;

    /// <summary>Area of all pieces.</summary>
    public Area PiecesArea => new(_pieces, AreaUnit.SquareMillimeter);

    /// <summary>Part of the length taken, selvedges included, that ends in pieces, 0 to 1.</summary>
    public double Used => RollCutting.SolveUse(Grid.Millimetres(_length), _width, _pieces, default(Silent));

    /// <summary>Steps of search used.</summary>
    public long Nodes { get; }

    /// <summary>What a person should know, gravest first.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>; never, a piece that does not go across is refused.</summary>
    public bool HasProblem => Findings.Count > 0 && Findings[0].Severity == Severity.Problem;

    /// <summary>How much of the cloth is used.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        RollCutting.SolveUse(Grid.Millimetres(_length), _width, _pieces, recorder);
        return recorder.ToWorkings("Use of the roll");
    }

    /// <summary>The plan as flat figures.</summary>
    /// <returns>The worst severity as the number of its enumeration (0 too where there is no finding), pieces, length, least length, length to buy, gap, whether it is proven (1 or 0), part used, and steps.</returns>
    public IReadOnlyList<Figure> Figures() =>
    [
        new("worst-severity", Findings.Count == 0 ? 0 : (int)Findings[0].Severity, string.Empty),
        new("pieces", Pieces.Count, string.Empty),
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
    public override string ToString() => $"{Print.Mm(Grid.Millimetres(_length))} of the roll{(Proven ? ", proven least" : $", {Print.Mm(Grid.Millimetres(_least))} at least")}";

    private IReadOnlyList<Finding> Find(RollNumbers numbers)
    {
        List<Finding> findings = [];
        if (!Proven)
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
