using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>How much adhesive the bonds of wrapped panels take.</summary>
public static class PanelAdhesive
{
    private static readonly Allowed s_bonded = new(0, 500_000_000, "mm²");
    private static readonly Allowed s_covered = new(10_000, 500_000_000, "mm²");
    private static readonly Allowed s_coats = new(1, 10, string.Empty);
    private static readonly Allowed s_surfaces = new(1, 2, string.Empty);

    /// <summary>Litres for a bond, or cans and whatever else the coverage is of.</summary>
    /// <param name="bonded">Area of the bond [area], 0 to 500 m²; see <see cref="WrapPlan.BondedArea"/>.</param>
    /// <param name="covered">What a can, or another container that is bought whole, coats once [area], one surface, 0.01 m² to 500 m². Null for the 5 m² of a litre (common practice): then the answer is in litres.</param>
    /// <param name="coats">Coats on each surface, 1 to 10.</param>
    /// <param name="surfaces">Surfaces coated, 1 to 2: contact adhesive wants both.</param>
    /// <returns>Containers used and to buy, litres where no coverage was given; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: containers = bond x surfaces x coats / coverage; to buy: rounded up.</para>
    /// <para>Validity: overspray and what stays in the can are in the coverage or not at all. A makers' figure "for a bond" with both surfaces coated is half of what is asked here.</para>
    /// <para>Source: wrap-adhesive (derived); default-adhesive-coverage (common practice).</para>
    /// </remarks>
    /// <exception cref="System.ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="System.ArgumentException">An area is in an undefined unit.</exception>
    /// <example><code>
    /// AdhesiveNeed need = PanelAdhesive.Needed(Area.FromSquareMeters(6.2), Area.FromSquareMeters(4));
    /// double cans = need.Containers;                      // 3.1: 6.2 x 2 surfaces over 4
    /// int buy = need.ToBuy;                               // 4
    /// </code></example>
    public static AdhesiveNeed Needed(Area bonded, Area? covered = null, int coats = 1, int surfaces = 2) => Read(bonded, covered, coats, surfaces, null);

    /// <summary>All problems with the input of <see cref="Needed"/>; nothing is thrown.</summary>
    /// <param name="bonded">As there.</param>
    /// <param name="covered">As there.</param>
    /// <param name="coats">As there.</param>
    /// <param name="surfaces">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckNeeded(Area bonded, Area? covered = null, int coats = 1, int surfaces = 2)
    {
        List<InputProblem> problems = [];
        Read(bonded, covered, coats, surfaces, problems);
        return problems;
    }

    /// <summary>The one formula body, for the numbers and for the workings.</summary>
    internal static double Solve<TTrace>(double bonded, double covered, double coats, double surfaces, bool isLitre, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("A", bonded, "mm2", Sources.Given, meaning: "area of the bond");
        trace.Given("K", covered, "mm2", isLitre ? AdhesiveDefaults.CoverageSource : Sources.Given, meaning: isLitre ? "what a litre coats once" : "what a container coats once");
        trace.Given("c", coats, string.Empty, Sources.Given, meaning: "coats on each surface");
        trace.Given("s", surfaces, string.Empty, Sources.Given, meaning: "surfaces coated");
        double coated = trace.Step("Q", nameof(coated), bonded * surfaces * coats, "mm2", AdhesiveDefaults.Quantity);
        return covered == 0 ? 0 : trace.Step("n", isLitre ? "litres" : "containers", coated / covered, isLitre ? AdhesiveDefaults.Litre : string.Empty, AdhesiveDefaults.Quantity);
    }

    private static AdhesiveNeed Read(Area bonded, Area? covered, int coats, int surfaces, List<InputProblem>? problems)
    {
        double bond = Door.SquareMillimetres(bonded, nameof(bonded), s_bonded, problems);
        double cover = covered is { } given ? Door.SquareMillimetres(given, nameof(covered), s_covered, problems) : AdhesiveDefaults.Covered;
        Door.Number(coats, nameof(coats), s_coats, problems);
        Door.Number(surfaces, nameof(surfaces), s_surfaces, problems);
        return problems is { Count: > 0 } ? default : new AdhesiveNeed(bond, cover, coats, surfaces, covered is null);
    }
}
