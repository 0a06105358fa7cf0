using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Foam-backed cloth against separate foam: materials, hours, and the labour rate at which they cost the same.</summary>
public static class WrapComparison
{
    internal static readonly Source BreakEven = Source.Derived("wrap-break-even", "Labour rate at which two ways cost the same", "materials plus rate times hours, set equal");

    internal static readonly Source HoursSource = Source.Judgement("default-wrap-hours", "wrapping a panel takes 45 minutes with foam-backed cloth (30 to 75) and 65 with foam glued on and trimmed first (45 to 100)");

    private const decimal MostMoney = 100_000;

    private static readonly Allowed s_area = new(0, 500_000_000, "mm²");
    private static readonly Allowed s_panels = new(1, 1000, string.Empty);

    /// <summary>Compares the two ways.</summary>
    /// <param name="choice">Areas, prices, and hours where they are known.</param>
    /// <returns>Materials and hours of both, which is cheaper at which labour rate; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: materials = area x price + extras; rate = (M backed - M separate)/(H separate - H backed). Where one way takes no more of either and less of one it is cheaper at every rate above 0, and there is no rate to name unless the materials cost the same: then it is 0.</para>
    /// <para>Validity: whole amounts of money and time for the same panels; materials and the rate are rounded to a ten-thousandth at the end, half away from zero.</para>
    /// <para>Source: wrap-break-even (derived); default-wrap-hours (judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="choice"/> is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// WrapChoice choice = new(Area.FromSquareMeters(8), 30m, Area.FromSquareMeters(8), 18m, Area.FromSquareMeters(7), 6m) { Panels = 9, SeparateExtras = 14m };
    /// WrapVerdict verdict = WrapComparison.Compare(choice);
    /// decimal backed = verdict.BackedMaterials;           // 240
    /// decimal separate = verdict.SeparateMaterials;       // 200: 144 + 42 + 14
    /// decimal? rate = verdict.BreakEvenRate;              // 13.3333: 40 for 3 hours, 9 x 20 minutes
    /// WrapAdvantage above = verdict.CheaperAbove;         // foam-backed cloth
    /// </code></example>
    public static WrapVerdict Compare(WrapChoice choice)
    {
        Read(choice, nameof(choice), null);
        return new WrapVerdict(choice);
    }

    /// <summary>All problems with a choice; nothing is thrown.</summary>
    /// <param name="choice">The choice.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckCompare(WrapChoice choice)
    {
        List<InputProblem> problems = [];
        Read(choice, nameof(choice), problems);
        return problems;
    }

    /// <summary>The one formula body for the materials.</summary>
    internal static (double Backed, double Separate) SolveMaterials<TTrace>(in WrapAmounts amounts, TTrace trace)
        where TTrace : struct, ITrace
    {
        double backedArea = amounts.BackedArea, backedPrice = amounts.BackedPrice, clothArea = amounts.ClothArea, clothPrice = amounts.ClothPrice;
        double foamArea = amounts.FoamArea, foamPrice = amounts.FoamPrice, backedExtras = amounts.BackedExtras, separateExtras = amounts.SeparateExtras;
        trace.Given("A_b", backedArea, "m2", Sources.Given, meaning: "foam-backed cloth");
        trace.Given("p_b", backedPrice, "1/m2", Sources.Given, meaning: "its price");
        trace.Given("x_b", backedExtras, string.Empty, Sources.Given, meaning: "what else it takes");
        trace.Given("A_c", clothArea, "m2", Sources.Given, meaning: "cloth without foam");
        trace.Given("p_c", clothPrice, "1/m2", Sources.Given, meaning: "its price");
        trace.Given("A_f", foamArea, "m2", Sources.Given, meaning: "foam");
        trace.Given("p_f", foamPrice, "1/m2", Sources.Given, meaning: "its price");
        trace.Given("x_s", separateExtras, string.Empty, Sources.Given, meaning: "what else they take");
        double backed = trace.Step("M_b", nameof(backed), (backedArea * backedPrice) + backedExtras, string.Empty, BreakEven);
        double separate = trace.Step("M_s", nameof(separate), (clothArea * clothPrice) + (foamArea * foamPrice) + separateExtras, string.Empty, BreakEven);
        return (backed, separate);
    }

    /// <summary>The one formula body for the rate, where the hours differ.</summary>
    internal static double SolveRate<TTrace>(double backed, double separate, double backedHours, double separateHours, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("M_b", backed, string.Empty, BreakEven, meaning: "materials with foam-backed cloth, rounded");
        trace.Given("M_s", separate, string.Empty, BreakEven, meaning: "materials with separate foam, rounded");
        trace.Given("H_b", backedHours, "h", Sources.Given, meaning: "hours with foam-backed cloth");
        trace.Given("H_s", separateHours, "h", Sources.Given, meaning: "hours with separate foam");
        return trace.Step("r", "rate", (backed - separate) / (separateHours - backedHours), "1/h", BreakEven);
    }

    private static void Read(WrapChoice choice, string path, List<InputProblem>? problems)
    {
        if (Door.IsMissing(choice, new Name(path), "a choice", problems))
        {
            return;
        }

        ReadArea(choice.BackedArea, path, ".BackedArea", problems);
        ReadMoney(choice.BackedPrice, path, ".BackedPrice", problems);
        ReadArea(choice.ClothArea, path, ".ClothArea", problems);
        ReadMoney(choice.ClothPrice, path, ".ClothPrice", problems);
        ReadArea(choice.FoamArea, path, ".FoamArea", problems);
        ReadMoney(choice.FoamPrice, path, ".FoamPrice", problems);
        ReadMoney(choice.BackedExtras, path, ".BackedExtras", problems);
        ReadMoney(choice.SeparateExtras, path, ".SeparateExtras", problems);
        if (!s_panels.Holds(choice.Panels))
        {
            Door.Number(choice.Panels, path + ".Panels", s_panels, problems);
        }

        ReadHours(choice.BackedHours, path, ".BackedHours", problems);
        ReadHours(choice.SeparateHours, path, ".SeparateHours", problems);
    }

    // Paths are put together only for what is refused: a comparison allocates nothing.
    private static void ReadArea(Area area, string path, string member, List<InputProblem>? problems)
    {
        if (!s_area.Holds(Door.SquareMillimetres(area)))
        {
            Door.SquareMillimetres(area, path + member, s_area, problems);
        }
    }

    private static void ReadMoney(decimal amount, string path, string member, List<InputProblem>? problems)
    {
        if (amount < 0 || amount > MostMoney || amount * 10_000 != decimal.Truncate(amount * 10_000))
        {
            Door.Report(new InputProblem(path + member, CuttingPlan.Money(amount), "0 to 100,000 with at most four decimals", isRange: true), problems);
        }
    }

    private static void ReadHours(TimeSpan? hours, string path, string member, List<InputProblem>? problems)
    {
        if (hours is { } given && (given < TimeSpan.Zero || given > TimeSpan.FromHours(10_000)))
        {
            Door.Report(new InputProblem(path + member, Print.Number(given.TotalHours) + " h", "0 to 10,000 h", isRange: true), problems);
        }
    }
}

/// <summary>A choice in square metres and units of money.</summary>
internal readonly struct WrapAmounts(WrapChoice choice)
{
    internal double BackedArea { get; } = Door.SquareMillimetres(choice.BackedArea) / 1e6;

    internal double BackedPrice { get; } = (double)choice.BackedPrice;

    internal double ClothArea { get; } = Door.SquareMillimetres(choice.ClothArea) / 1e6;

    internal double ClothPrice { get; } = (double)choice.ClothPrice;

    internal double FoamArea { get; } = Door.SquareMillimetres(choice.FoamArea) / 1e6;

    internal double FoamPrice { get; } = (double)choice.FoamPrice;

    internal double BackedExtras { get; } = (double)choice.BackedExtras;

    internal double SeparateExtras { get; } = (double)choice.SeparateExtras;
}
