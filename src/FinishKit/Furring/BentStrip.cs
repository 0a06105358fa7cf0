using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>Whether a furring strip bends round a bow, what its fixings pull, and what to take where it does not bend.</summary>
/// <remarks>A strip is a narrow sheet: the same limits and the same rows on an arc as for panels, over the strip's width.</remarks>
public static class BentStrip
{
    internal const int MostAlternatives = 200;
    internal const double DefaultWidth = 40;

    private const int MostLayers = 20;
    private const string CaseWords = "a strip with its bow and fixings";

    private static readonly Allowed s_width = new(1, 1000, "mm");
    private static readonly Allowed s_fixings = new(1, 10_000, string.Empty);
    private static readonly Allowed s_force = new(1e-6, 1e6, "N");
    private static readonly BentSheetNames s_sheet = new("strip.Sheet");

    /// <summary>Whether a strip follows a bow, by the radius at its most bent place.</summary>
    /// <param name="strip">Sheet, bow and fixings.</param>
    /// <returns>The verdict, with what to take instead where it does not follow.</returns>
    /// <remarks>
    /// <para>Formula: peak radius (R - t/2)/k on a hollow bow, (|R| + t/2)/k on a bulging one, k the greatest curvature ratio of the rows; it must
    /// be no less than F E t/(2 f). Pull per fixing from E t³/12 times the width. In layers, each is bent alone on the one behind it and must pass
    /// alone; as many as come nearest to the strip's thickness, 2 to 20.</para>
    /// <para>Validity: dry; three fixings at least, at one true circle, bays up to 0.4 of the radius (beyond, the error is not known; over the radius itself, or over half a
    /// circle, nothing follows); layers slide on each other until they are bent.</para>
    /// <para>Source: bend-elastic, bend-hold-down, bend-stiffness (derived); default-bend-factor, default-bend-factor-allowable (default, judgement); default-strip-width (common practice).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="strip"/>, its sheet, the sheet's bending figures, its rows or an alternative is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit, or the grain is undefined.</exception>
    /// <example><code>
    /// PlywoodBending figures = new(Mm(14.8), Pressure.FromMegapascals(10316), Pressure.FromMegapascals(7184), Pressure.FromMegapascals(41.3), Pressure.FromMegapascals(33.8));
    /// SheetGoods ply = new("15 mm ply", Mm(15), Mm(14.8), "ply") { Bending = figures };
    /// BentStripResult strip = BentStrip.Judge(new BentStripCase(ply, Mm(3818), BentSheet.EqualRows(Mm(1516), 3)));
    /// Length? peak = strip.PeakRadius;                    // 2540.4 mm: (3818 - 7.4)/1.5
    /// bool follows = strip.Follows;                       // false: 3696.775 mm are allowed
    /// </code></example>
    public static BentStripResult Judge(BentStripCase strip)
    {
        Door.IsMissing(strip, new Name(nameof(strip)), CaseWords, null);
        (BendLimit limit, double wall, ArcRows? rows, HeldStrip held) = Read(strip, null);
        BendQuestion question = new(limit, wall, rows!.Ratio, Sources.HoldDownRows);
        BendNumbers numbers = question.Solve(default(Silent));
        ArcReach reach = new(rows.LongestBay, rows.End, numbers.Middle);

        // Where the fixings are at fault no other sheet helps.
        return new BentStripResult(strip, question, rows, held, reach, numbers.IsTooTight && !reach.IsOutside ? Remedies(strip, question) : []);
    }

    /// <summary>All problems with the input of <see cref="Judge(BentStripCase)"/>; nothing is thrown.</summary>
    /// <param name="strip">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(BentStripCase strip)
    {
        List<InputProblem> problems = [];
        if (!Door.IsMissing(strip, new Name(nameof(strip)), CaseWords, problems))
        {
            Read(strip, problems);
        }

        return problems;
    }

    /// <summary>The question of one layer of a sheet, the n-th from the back.</summary>
    internal static BendQuestion Layer(SheetGoods sheet, BendGrain grain, double? factor, in BendQuestion strip, int layer)
    {
        BendLimit limit = BendLimit.Read(BentSheet.Of(sheet, grain) with { Factor = factor }, s_sheet, null);
        return new BendQuestion(limit, strip.Wall - ((layer - 1) * limit.Thickness), strip.Ratio, strip.RatioSource);
    }

    private static List<BentStripRemedy> Remedies(BentStripCase strip, in BendQuestion question)
    {
        List<BentStripRemedy> remedies = [];
        BendGrain turned = strip.Grain == BendGrain.AroundTheCurve ? BendGrain.AlongTheAxis : BendGrain.AroundTheCurve;
        AddIfPasses(strip.Sheet, turned, 1);
        SheetGoods? thickest = null;
        IReadOnlyList<SheetGoods> sheets = strip.Alternatives ?? SheetGoods.Birch;
        foreach (SheetGoods sheet in sheets)
        {
            if (Passes(sheet, 1) && (thickest is null || Thickness(sheet) > Thickness(thickest)))
            {
                thickest = sheet;
            }
        }

        if (thickest is not null)
        {
            AddIfPasses(thickest, strip.Grain, 1);
        }

        foreach (SheetGoods sheet in sheets)
        {
            if (sheet.Bending is not null)
            {
                double layers = Math.Max(2, Math.Floor((question.Limit.Thickness / Thickness(sheet)) + 0.5));
                if (layers <= MostLayers)
                {
                    AddIfPasses(sheet, strip.Grain, (int)layers);
                }
            }
        }

        return remedies;

        static double Thickness(SheetGoods sheet) => Door.Millimetres(sheet.Bending!.MeanThickness);

        bool Passes(SheetGoods sheet, int layers) => Passing(strip, sheet, strip.Grain, layers) is not null;

        void AddIfPasses(SheetGoods sheet, BendGrain grain, int layers)
        {
            if (Passing(strip, sheet, grain, layers) is { } found)
            {
                remedies.Add(found);
            }
        }
    }

    /// <summary>A remedy whose every layer passes, or null. On a hollow bow the layer nearest the room is bent most, on a bulging one the one at the back.</summary>
    private static BentStripRemedy? Passing(BentStripCase strip, SheetGoods sheet, BendGrain grain, int layers)
    {
        if (sheet.Bending is null)
        {
            return null;
        }

        (BendLimit limit, double wall, ArcRows? rows, _) = Read(strip, null);
        BendQuestion bow = new(limit, wall, rows!.Ratio, Sources.HoldDownRows);
        BendQuestion tightest = Layer(sheet, grain, strip.Factor, bow, wall > 0 ? layers : 1);
        return !(tightest.Wall > 0) && wall > 0 ? null
            : tightest.Solve(default(Silent)) is { Passes: true } numbers && numbers.Middle > 0 ? new BentStripRemedy(sheet, grain, layers, tightest.Limit.Thickness, numbers)
            : null;
    }

    private static (BendLimit Limit, double Wall, ArcRows? Rows, HeldStrip Held) Read(BentStripCase strip, List<InputProblem>? problems)
    {
        BendLimit limit = default;
        bool known = !Door.IsMissing(strip.Sheet, new Name("strip.Sheet"), "a sheet", problems)
            && !Door.IsMissing(strip.Sheet.Bending, new Name("strip.Sheet").Then(".Bending"), "bending figures of the sheet", problems);
        int before = problems?.Count ?? 0;
        BendLimit.CheckGrain(strip.Grain, "strip.Grain", problems);
        double? factor = strip.Factor is { } given ? BendLimit.ReadFactor(given, "strip.Factor", problems) : null;
        if (known && (problems?.Count ?? 0) == before)
        {
            limit = BendLimit.Read(BentSheet.Of(strip.Sheet, strip.Grain) with { Factor = factor }, s_sheet, problems);
        }

        double wall = BendLimit.ReadWall(strip.BowRadius, limit.Thickness, "strip.BowRadius", problems);
        double[]? positions = ArcRows.Read(strip.Rows, "strip.Rows", problems);
        double width = strip.Width is { } wide ? Door.Millimetres(wide, "strip.Width", s_width, problems) : DefaultWidth;
        int fixings = strip.FixingsPerPlace is { } n && !double.IsNaN(Door.Number(n, "strip.FixingsPerPlace", s_fixings, problems)) ? n : 0;
        double capacity = strip.FixingCapacity is { } force ? Door.Newtons(force, "strip.FixingCapacity", s_force, problems) : double.NaN;
        ReadAlternatives(strip.Alternatives, problems);
        return (limit, wall, positions is null ? null : new ArcRows(positions), new HeldStrip(width, fixings, capacity));
    }

    private static void ReadAlternatives(IReadOnlyList<SheetGoods>? sheets, List<InputProblem>? problems)
    {
        if (sheets is null)
        {
            return;
        }

        if (sheets.Count > MostAlternatives)
        {
            Door.Report(new InputProblem("strip.Alternatives", FormattableString.Invariant($"a list of {sheets.Count}"), "at most 200 sheets", isRange: true), problems);
            return;
        }

        for (int i = 0; i < sheets.Count; i++)
        {
            Door.IsMissing(sheets[i], new Name("strip.Alternatives", i), "a sheet", problems);
        }
    }
}

/// <summary>Width of a strip in mm, fixings at a place (0 where not given) and what one holds in N (NaN where not known).</summary>
internal readonly struct HeldStrip(double width, int fixings, double capacity)
{
    internal double Width { get; } = width;

    internal int Fixings { get; } = fixings;

    internal double Capacity { get; } = capacity;
}
