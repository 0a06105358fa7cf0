using System;
using System.Collections.Generic;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>A piece on a sheet.</summary>
/// <remarks><see cref="SheetNesting.Nest"/> makes them.</remarks>
public sealed class NestedPiece
{
    private readonly SheetPart _part;

    internal NestedPiece(int part, SheetPart from, bool isTurned, in SheetRegion region)
    {
        (Part, Name, IsTurned, _part) = (part, from.Name, isTurned, from);
        (Along, Across) = (CuttingPlan.Mm(region.Left), CuttingPlan.Mm(region.Bottom));
        (Length, Width) = (CuttingPlan.Mm(region.Length), CuttingPlan.Mm(region.Width));
    }

    /// <summary>Which of the job's parts it is, from 0.</summary>
    public int Part { get; }

    /// <summary>What the job calls it, or null.</summary>
    public string? Name { get; }

    /// <summary>Whether it lies turned by a quarter: its grain across the sheet's.</summary>
    public bool IsTurned { get; }

    /// <summary>From the corner of the sheet as bought, along the sheet's length, to where the piece starts.</summary>
    public Length Along { get; }

    /// <summary>From the same corner, across the sheet's length, to where the piece starts.</summary>
    public Length Across { get; }

    /// <summary>Its size along the sheet's length, as it lies.</summary>
    public Length Length { get; }

    /// <summary>Its size across the sheet's length, as it lies.</summary>
    public Length Width { get; }

    /// <summary>Its corners as it lies: how far along the sheet's length and how far across from the corner of the sheet as bought. A piece that is turned is turned to the left, never over.</summary>
    /// <returns>The corners, of a rectangle the four, else those of the part's outline in their order.</returns>
    public IReadOnlyList<MeasuredPoint> Corners()
    {
        double length = Door.Millimetres(_part.Length), width = Door.Millimetres(_part.Width);
        IReadOnlyList<MeasuredPoint> corners = _part.Outline
            ?? [At(0, 0), At(length, 0), At(length, width), At(0, width)];
        double along = Door.Millimetres(Along), across = Door.Millimetres(Across);
        List<MeasuredPoint> placed = [];
        foreach (MeasuredPoint corner in corners)
        {
            double x = Door.Millimetres(corner.Along), y = Door.Millimetres(corner.Offset);
            placed.Add(IsTurned ? At(along + width - y, across + x) : At(along + x, across + y));
        }

        return [.. placed];

        static MeasuredPoint At(double x, double y) => new(Door.Millimetres(Grid.Snap(x)), Door.Millimetres(Grid.Snap(y)));
    }

    /// <summary>Size, place and name, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Round(Door.Millimetres(Length), 3)} x {Print.Mm(Door.Millimetres(Width))} at {Print.Round(Door.Millimetres(Along), 3)}, {Print.Round(Door.Millimetres(Across), 3)}{(IsTurned ? " turned" : string.Empty)}{(Name is null ? string.Empty : " " + Name)}";
}

/// <summary>A cut of the saw, from one edge to the other of what is being cut.</summary>
/// <remarks><see cref="SheetNesting.Nest"/> makes them.</remarks>
public sealed class SheetCut
{
    internal SheetCut(int number, bool isAlongLength, bool isTrim, long position, long start, long end, long size)
    {
        (Number, IsAlongLength, IsTrim) = (number, isAlongLength, isTrim);
        (Position, Start, End, Size) = (CuttingPlan.Mm(position), CuttingPlan.Mm(start), CuttingPlan.Mm(end), CuttingPlan.Mm(size));
    }

    /// <summary>Its place in the order, from 1.</summary>
    public int Number { get; }

    /// <summary>Whether it runs along the sheet's length (a rip cut); else across.</summary>
    public bool IsAlongLength { get; }

    /// <summary>Whether it takes an edge off the sheet as bought.</summary>
    public bool IsTrim { get; }

    /// <summary>From the edge of the sheet as bought, square to the cut, to the side of the cut that is nearer to that edge. Where less than a kerf comes off, to the edge of what is being cut.</summary>
    public Length Position { get; }

    /// <summary>From the sheet's corner, along the cut, to where it starts.</summary>
    public Length Start { get; }

    /// <summary>From the sheet's corner, along the cut, to where it ends.</summary>
    public Length End { get; }

    /// <summary>Of what is being cut, from the edge toward the sheet's corner to the cut: what fence, stop or rail is set to. Of a trim it may be the strip that comes off: that is measured along a rail, or the sheet runs along the fence and the strip comes off beyond the blade.</summary>
    public Length Size { get; }

    /// <summary>Number, direction, what fence, stop or rail is set to, and place, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Number(Number)}: {(IsTrim ? "trim" : "cut")} {(IsAlongLength ? "along" : "across")}, set to {Print.Mm(Door.Millimetres(Size))}, at {Print.Mm(Door.Millimetres(Position))}, from {Print.Round(Door.Millimetres(Start), 3)} to {Print.Mm(Door.Millimetres(End))}";
}

/// <summary>A rectangle of a sheet on which no piece lies.</summary>
/// <remarks><see cref="SheetNesting.Nest"/> makes them.</remarks>
public sealed class SheetRemnant
{
    internal SheetRemnant(in SheetRegion region)
    {
        (Along, Across) = (CuttingPlan.Mm(region.Left), CuttingPlan.Mm(region.Bottom));
        (Length, Width) = (CuttingPlan.Mm(region.Length), CuttingPlan.Mm(region.Width));
    }

    /// <summary>From the corner of the sheet as bought, along the sheet's length, to where it starts.</summary>
    public Length Along { get; }

    /// <summary>From the same corner, across the sheet's length, to where it starts.</summary>
    public Length Across { get; }

    /// <summary>Along the sheet's length.</summary>
    public Length Length { get; }

    /// <summary>Across the sheet's length.</summary>
    public Length Width { get; }

    /// <summary>Size and place, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Round(Door.Millimetres(Length), 3)} x {Print.Mm(Door.Millimetres(Width))} left at {Print.Round(Door.Millimetres(Along), 3)}, {Print.Round(Door.Millimetres(Across), 3)}";
}

/// <summary>One sheet and what is cut from it.</summary>
/// <remarks><see cref="SheetNesting.Nest"/> makes them.</remarks>
public sealed class NestedSheet
{
    internal NestedSheet(in SheetKind sheet, bool isOffcut, int index, IReadOnlyList<NestedPiece> pieces, IReadOnlyList<SheetCut> cuts, IReadOnlyList<SheetRemnant> kept)
    {
        (IsOffcut, Index, Pieces, Cuts, Kept) = (isOffcut, index, pieces, cuts, kept);
        (Length, Width) = (CuttingPlan.Mm(sheet.Length), CuttingPlan.Mm(sheet.Width));
    }

    /// <summary>Whether it is an offcut that was on hand.</summary>
    public bool IsOffcut { get; }

    /// <summary>Which of the job's sheets, or of its offcuts, it is, from 0.</summary>
    public int Index { get; }

    /// <summary>Along its grain, before anything is cut.</summary>
    public Length Length { get; }

    /// <summary>Across its grain, before anything is cut.</summary>
    public Length Width { get; }

    /// <summary>The pieces, from one long edge to the other.</summary>
    public IReadOnlyList<NestedPiece> Pieces { get; }

    /// <summary>The cuts in their order, trimming first; empty where a router cuts.</summary>
    public IReadOnlyList<SheetCut> Cuts { get; }

    /// <summary>What is left over and large enough to keep, the largest first. Where a router cuts three at most: the largest there is, then the largest of what is left beside it, and so once more.</summary>
    public IReadOnlyList<SheetRemnant> Kept { get; }

    /// <summary>Size and how many pieces, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{(IsOffcut ? "offcut" : "sheet")} of {Print.Round(Door.Millimetres(Length), 3)} x {Print.Mm(Door.Millimetres(Width))}: {Print.Number(Pieces.Count)} pieces, {Print.Number(Cuts.Count)} cuts";
}

/// <summary>What to buy of one kind of sheet.</summary>
/// <remarks><see cref="SheetNesting.Nest"/> makes them.</remarks>
public sealed class SheetPurchase
{
    internal SheetPurchase(int stock, StockSheet sheet, int count) => (Stock, Sheet, Count, Cost) = (stock, sheet, count, count * sheet.Price);

    /// <summary>Which of the job's sheets it is, from 0.</summary>
    public int Stock { get; }

    /// <summary>The kind of sheet.</summary>
    public StockSheet Sheet { get; }

    /// <summary>How many.</summary>
    public int Count { get; }

    /// <summary>What they cost, in the job's currency.</summary>
    public decimal Cost { get; }

    /// <summary>Count and cost, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Count)} of {Sheet}: {CuttingPlan.Money(Cost)}";
}

/// <summary>Pieces that no sheet is found for.</summary>
/// <remarks><see cref="SheetNesting.Nest"/> makes them.</remarks>
public sealed class UnplacedPart
{
    internal UnplacedPart(int part, SheetPart from, int count, bool isTooLarge) => (Part, Name, Size, Count, IsTooLarge) = (part, from.Name, SizeOf(from), count, isTooLarge);

    /// <summary>Which of the job's parts they are, from 0.</summary>
    public int Part { get; }

    /// <summary>What the job calls them, or null.</summary>
    public string? Name { get; }

    /// <summary>How many.</summary>
    public int Count { get; }

    /// <summary>Whether no sheet is large enough for one; else there are too few sheets.</summary>
    public bool IsTooLarge { get; }

    /// <summary>Length x width and name: what a message calls them.</summary>
    internal string Size { get; }

    /// <summary>Count, size and name, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Count)} of {Size} on no sheet";

    private static string SizeOf(SheetPart part) => $"{Print.Round(Door.Millimetres(part.Length), 3)} x {Print.Mm(Door.Millimetres(part.Width))}{(part.Name is null ? string.Empty : " " + part.Name)}";
}

/// <summary>Sheets to buy, what to cut from each, and how sure it is that nothing cheaper exists: what <see cref="SheetNesting.Nest"/> answers.</summary>
/// <remarks><see cref="SheetNesting.Nest"/> makes one.</remarks>
public sealed class NestingPlan
{
    private readonly double _sheets, _pieces, _kept;

    internal NestingPlan(NestingJob job, NestingNumbers numbers, SheetSolution solution)
    {
        Job = job;
        (Sheets, Unplaced, int smallCuts) = Lay(job, numbers, solution);
        int[] used = new int[numbers.StockKinds];
        foreach (NestedSheet sheet in Sheets)
        {
            if (!sheet.IsOffcut)
            {
                used[sheet.Index]++;
            }

            _sheets += AreaOf(sheet.Length, sheet.Width);
            foreach (NestedPiece piece in sheet.Pieces)
            {
                _pieces += numbers.Parts[piece.Part].Area;
            }

            foreach (SheetRemnant remnant in sheet.Kept)
            {
                _kept += AreaOf(remnant.Length, remnant.Width);
            }
        }

        List<SheetPurchase> purchases = [];
        for (int i = 0; i < used.Length; i++)
        {
            if (used[i] > 0 && job.Stock[i].Price > 0)
            {
                purchases.Add(new SheetPurchase(i, job.Stock[i], used[i]));
                Cost += purchases[purchases.Count - 1].Cost;
            }
        }

        Purchases = [.. purchases];
        LeastCost = solution.LeastCost is { } least ? (decimal)least / CuttingNumbers.PriceSteps : null;
        LeastSheets = solution.LeastSheets;
        Nodes = solution.Nodes;
        List<PartValuation> valuations = [];
        foreach (PartValues proof in solution.Proofs)
        {
            long[] values = new long[numbers.Parts.Length];
            for (int kind = 0; kind < solution.PartsOf.Length; kind++)
            {
                foreach (int part in solution.PartsOf[kind])
                {
                    values[part] = proof.Values[kind];
                }
            }

            valuations.Add(new PartValuation(values, new ArraySegment<long>(proof.Most, 0, numbers.StockKinds), new ArraySegment<long>(proof.Most, numbers.StockKinds, proof.Most.Length - numbers.StockKinds), proof.Needed));
        }

        Valuations = [.. valuations];
        DefaultsUsed = Defaults(job);
        Findings = NestingFindings.Of(this, numbers, smallCuts);
    }

    /// <summary>The job.</summary>
    public NestingJob Job { get; }

    /// <summary>The sheets: offcuts on hand first, then each kind in the job's order, the fullest first.</summary>
    public IReadOnlyList<NestedSheet> Sheets { get; }

    /// <summary>What to buy, in the order of the job's sheets; kinds of which nothing is bought, and sheets that cost nothing, are left out.</summary>
    public IReadOnlyList<SheetPurchase> Purchases { get; }

    /// <summary>Pieces on no sheet: too large for every one, or too few sheets. Empty where all are placed.</summary>
    public IReadOnlyList<UnplacedPart> Unplaced { get; }

    /// <summary>What the sheets cost, in the job's currency.</summary>
    public decimal Cost { get; }

    /// <summary>No layout of all pieces costs less, in the job's currency. Null where pieces are on no sheet.</summary>
    public decimal? LeastCost { get; }

    /// <summary>No layout of all pieces has fewer sheets, offcuts counted. Null where pieces are on no sheet.</summary>
    public int? LeastSheets { get; }

    /// <summary>How much of the cost might be saved at most, 0 to 1. Null where pieces are on no sheet.</summary>
    public double? Gap => LeastCost is { } least ? Cost == least ? 0 : (double)((Cost - least) / Cost) : null;

    /// <summary>Whether all pieces are placed and no layout of them costs less.</summary>
    public bool Proven => LeastCost == Cost;

    /// <summary>Area of all sheets taken, offcuts on hand included.</summary>
    public Area SheetsArea => Square(_sheets);

    /// <summary>Area of all pieces placed.</summary>
    public Area PiecesArea => Square(_pieces);

    /// <summary>Area of what is left over and worth keeping.</summary>
    public Area KeptArea => Square(_kept);

    /// <summary>Area of the sheets that is neither piece nor worth keeping: trim, kerfs, small remnants and what lies beside pieces that are no rectangles.</summary>
    public Area Waste => Square(_sheets - _pieces - _kept);

    /// <summary>Steps of search used.</summary>
    public long Nodes { get; }

    /// <summary>What the least cost rests on: sheets that hold the value of all pieces, by every one of these, cost at least <see cref="LeastCost"/>. The first is the area.</summary>
    public IReadOnlyList<PartValuation> Valuations { get; }

    /// <summary>What a person should know, gravest first.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: pieces are on no sheet.</summary>
    public bool HasProblem => Unplaced.Count > 0;

    /// <summary>The defaults taken because the job gave no figure of its own.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    /// <summary>What becomes of the sheets' area.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        SheetNesting.SolveAreas(_sheets, _pieces, _kept, recorder);
        return recorder.ToWorkings("Area of the sheets");
    }

    /// <summary>The plan as flat figures.</summary>
    /// <returns>The worst severity as the number of its enumeration (0 too where there is no finding), sheets, sheets bought, cost, pieces not placed, cuts, areas and steps; where all pieces are placed the least cost, the gap and whether it is proven (1 or 0).</returns>
    public IReadOnlyList<Figure> Figures()
    {
        int bought = 0, unplaced = 0, cuts = 0;
        foreach (SheetPurchase purchase in Purchases)
        {
            bought += purchase.Count;
        }

        foreach (UnplacedPart part in Unplaced)
        {
            unplaced += part.Count;
        }

        foreach (NestedSheet sheet in Sheets)
        {
            cuts += sheet.Cuts.Count;
        }

        List<Figure> figures =
        [
            new("worst-severity", Findings.Count == 0 ? 0 : (int)Findings[0].Severity, string.Empty),
            new("sheets", Sheets.Count, string.Empty),
            new("bought", bought, string.Empty),
            new("cost", (double)Cost, string.Empty),
            new("unplaced", unplaced, string.Empty),
            new("cuts", cuts, string.Empty),
            new("sheets-area", _sheets, "mm2"),
            new("pieces-area", _pieces, "mm2"),
            new("kept-area", _kept, "mm2"),
            new("waste", _sheets - _pieces - _kept, "mm2"),
            new("nodes", Nodes, string.Empty),
        ];
        if (LeastCost is { } least)
        {
            figures.Add(new Figure("least-cost", (double)least, string.Empty));
            figures.Add(new Figure("least-sheets", LeastSheets!.Value, string.Empty));
            figures.Add(new Figure("gap", Gap!.Value, string.Empty));
            figures.Add(new Figure("proven", Proven ? 1 : 0, string.Empty));
        }

        return [.. figures];
    }

    /// <summary>Sheets, cost and whether it is proven, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string end = HasProblem ? ", not all pieces placed" : Proven ? ", proven least" : $", {CuttingPlan.Money(LeastCost ?? 0)} at least";
        return $"{Print.Number(Sheets.Count)} sheets, cost {CuttingPlan.Money(Cost)}{end}";
    }

    private static double AreaOf(Length length, Length width) => Door.Millimetres(length) * Door.Millimetres(width);

    private static Area Square(double squareMillimetres) => new(squareMillimetres, AreaUnit.SquareMillimeter);

    private static IReadOnlyList<DefaultUsed> Defaults(NestingJob job)
    {
        List<DefaultUsed> defaults = [];
        if (job.Cutting == SheetCutting.Sawn)
        {
            Add(job.Kerf, "kerf", NestingDefaults.Kerf, NestingDefaults.KerfSource);
        }

        Add(job.Trim, "trim", NestingDefaults.Trim, NestingDefaults.TrimSource);
        Add(job.LeastOffcutLength, "least-offcut-length", NestingDefaults.LeastOffcutLength, NestingDefaults.LeastOffcutSource);
        Add(job.LeastOffcutWidth, "least-offcut-width", NestingDefaults.LeastOffcutWidth, NestingDefaults.LeastOffcutSource);
        return [.. defaults];

        void Add(Length? own, string name, double value, Source source)
        {
            if (own is null)
            {
                defaults.Add(new DefaultUsed(new Figure(name, value, "mm"), source));
            }
        }
    }

    private static (IReadOnlyList<NestedSheet> Sheets, IReadOnlyList<UnplacedPart> Unplaced, int SmallCuts) Lay(NestingJob job, NestingNumbers numbers, SheetSolution solution)
    {
        int stock = numbers.StockKinds;
        List<FilledSheet> filled = [.. solution.Sheets];
        int[] place = new int[filled.Count];
        for (int i = 0; i < place.Length; i++)
        {
            place[i] = i;
        }

        // Offcuts on hand first, the fullest first, those found first before equal ones.
        Array.Sort(place, (left, right) =>
        {
            FilledSheet one = filled[left], other = filled[right];
            int order = (one.Size < stock).CompareTo(other.Size < stock);
            order = order != 0 ? order : one.Size.CompareTo(other.Size);
            order = order != 0 ? order : other.Area.CompareTo(one.Area);
            return order != 0 ? order : left.CompareTo(right);
        });

        // The parts of each size in the job's order: the first sheets get the first parts.
        int[] left = Array.ConvertAll(numbers.Parts, static part => part.Count);
        int[] next = new int[solution.PartsOf.Length];
        List<NestedSheet> sheets = [];
        int small = 0;
        foreach (int at in place)
        {
            FilledSheet sheet = filled[at];
            SheetKind kind = numbers.Sheets[sheet.Size];
            sheet.Places.Sort(static (one, other) => one.Y != other.Y ? one.Y.CompareTo(other.Y) : one.X.CompareTo(other.X));
            List<NestedPiece> pieces = [];
            List<SheetRegion> regions = [];
            foreach (SheetPlace spot in sheet.Places)
            {
                int part = Take(spot.Kind);
                long x = kind.Trim + (spot.X * solution.Step), y = kind.Trim + (spot.Y * solution.Step);
                long length = spot.Turned ? numbers.Parts[part].Width : numbers.Parts[part].Length;
                long width = spot.Turned ? numbers.Parts[part].Length : numbers.Parts[part].Width;
                pieces.Add(new NestedPiece(part, job.Parts[part], spot.Turned, new SheetRegion(x, y, x + length, y + width)));
                regions.Add(new SheetRegion(x, y, x + length + numbers.Kerf, y + width + numbers.Kerf));
            }

            List<SheetCut> cuts = [];
            List<SheetRegion> remnants;
            if (numbers.IsSawn)
            {
                SheetCuts sequence = SheetCuts.Of(kind, regions, numbers.Kerf);
                (cuts, remnants) = (sequence.Cuts, sequence.Left);
                small += sequence.Small;
            }
            else
            {
                remnants = SheetGaps.Of(kind, regions, numbers.Kerf, numbers.IsWorthKeeping);
            }

            List<SheetRegion> kept = remnants.FindAll(region => numbers.IsWorthKeeping(region.Length, region.Width));
            kept.Sort(static (one, other) => ((double)other.Length * other.Width).CompareTo((double)one.Length * one.Width) is var order && order != 0 ? order : one.Left != other.Left ? one.Left.CompareTo(other.Left) : one.Bottom.CompareTo(other.Bottom));
            bool isOffcut = sheet.Size >= stock;
            sheets.Add(new NestedSheet(kind, isOffcut, isOffcut ? sheet.Size - stock : sheet.Size, [.. pieces], [.. cuts], [.. kept.ConvertAll(static region => new SheetRemnant(region))]));
        }

        List<UnplacedPart> unplaced = [];
        for (int i = 0; i < left.Length; i++)
        {
            if (left[i] > 0)
            {
                unplaced.Add(new UnplacedPart(i, job.Parts[i], left[i], solution.IsTooLarge[i]));
            }
        }

        return ([.. sheets], [.. unplaced], small);

        int Take(int kind)
        {
            List<int> parts = solution.PartsOf[kind];
            while (left[parts[next[kind]]] == 0)
            {
                next[kind]++;
            }

            int part = parts[next[kind]];
            left[part]--;
            return part;
        }
    }
}
