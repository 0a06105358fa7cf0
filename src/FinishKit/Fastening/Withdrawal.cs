using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>
/// What force along its axis a nail or screw holds in wood, by three published methods, each by name and with its own figure
/// for the wood.
/// </summary>
/// <remarks>
/// <para>The methods answer different questions and their values must not be compared as they stand: the NDS gives an allowable
/// load (normal duration), the Wood Handbook an average of ultimate loads, Eurocode 5 a characteristic load.
/// <see cref="WithdrawalCapacity.Basis"/> says which.</para>
/// <para>All are for fasteners driven into side grain of solid wood, dry and staying dry. For plywood see
/// <see cref="WithdrawalCapacity.InPlywood(double)"/>. Not applied, because they are known here from memory only: the NDS factor
/// 0.67 on toe-nails, 0.25 on nails in wood whose moisture crosses 19% in service, and those for load duration. The NDS does not permit nails in
/// withdrawal from end grain, and says screws should not be.</para>
/// </remarks>
public static class Withdrawal
{
    private const string NailWords = "a nail with its members";

    private static readonly Allowed s_shank = new(Allowed.OneStep, 20, "mm");
    private static readonly Allowed s_length = new(0, 500, "mm");
    private static readonly Allowed s_someLength = new(Allowed.OneStep, 500, "mm");
    private static readonly Allowed s_angle = new(0, 90, "deg");
    private static readonly Allowed s_screws = new(1, 10_000, string.Empty);

    /// <summary>The allowable load of a smooth nail or brad by the NDS.</summary>
    /// <param name="specificGravity">Ovendry mass over ovendry volume, 0.1 to 1.3.</param>
    /// <param name="shank">Diameter of the shank [length], more than 0 up to 20 mm.</param>
    /// <param name="penetration">Length of shank in the holding member, tip included [length], 0 to 500 mm.</param>
    /// <returns>The capacity; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: W = 1380 G^(5/2) D lb per inch, G ovendry, D in inches; here F = k G^(5/2) D p in N and mm with k = 1380 psi =
    /// 1380 · 4.4482216152605/25.4² = 9.514765 MPa, computed from the exact pound and inch and not rounded.</para>
    /// <para>Validity: side grain, load of normal duration. Penetration under 6 D: the value with the finding <c>fastening-nds-penetration-short</c>.</para>
    /// <para>Source: NDS-2018 12.2 (read in a copy).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// WithdrawalCapacity brad = Withdrawal.NdsNail(new OvendrySpecificGravity(0.5), Mm(1.6), Mm(30));
    /// Force hold = brad.Force;                            // 80.74 N allowable
    /// double diameters = brad.PenetrationInDiameters!.Value; // 18.75, of which the NDS asks 6
    /// </code></example>
    public static WithdrawalCapacity NdsNail(OvendrySpecificGravity specificGravity, Length shank, Length penetration) =>
        new(ReadSpecificGravity(WithdrawalFormula.NdsNail, specificGravity.Value, shank, penetration, nameof(penetration), null));

    /// <summary>All problems with the input of <see cref="NdsNail(OvendrySpecificGravity, Length, Length)"/>; nothing is thrown.</summary>
    /// <param name="specificGravity">As there.</param>
    /// <param name="shank">As there.</param>
    /// <param name="penetration">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckNdsNail(OvendrySpecificGravity specificGravity, Length shank, Length penetration) =>
        CheckSpecificGravity(specificGravity.Value, shank, penetration, nameof(penetration));

    /// <summary>The allowable load of a wood screw by the NDS.</summary>
    /// <param name="specificGravity">Ovendry mass over ovendry volume, 0.1 to 1.3.</param>
    /// <param name="shank">Diameter of the unthreaded shank, the screw's nominal diameter [length], more than 0 up to 20 mm.</param>
    /// <param name="threadPenetration">Length of thread in the holding member, tip included [length], 0 to 500 mm.</param>
    /// <returns>The capacity; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: W = 2850 G² D lb per inch of thread, G ovendry, D in inches; here F = k G² D p in N and mm with k = 2850 psi =
    /// 19.65006 MPa, computed from the exact pound and inch and not rounded.</para>
    /// <para>Validity: side grain, load of normal duration. Thread under 6 D: the value with the finding <c>fastening-nds-penetration-short</c>.</para>
    /// <para>Source: NDS-2018 12.2 (read in a copy).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// WithdrawalCapacity screw = Withdrawal.NdsWoodScrew(new OvendrySpecificGravity(0.5), Mm(4), Mm(25));
    /// Force hold = screw.Force;                           // 491.3 N allowable
    /// </code></example>
    public static WithdrawalCapacity NdsWoodScrew(OvendrySpecificGravity specificGravity, Length shank, Length threadPenetration) =>
        new(ReadSpecificGravity(WithdrawalFormula.NdsWoodScrew, specificGravity.Value, shank, threadPenetration, nameof(threadPenetration), null));

    /// <summary>All problems with the input of <see cref="NdsWoodScrew(OvendrySpecificGravity, Length, Length)"/>; nothing is thrown.</summary>
    /// <param name="specificGravity">As there.</param>
    /// <param name="shank">As there.</param>
    /// <param name="threadPenetration">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckNdsWoodScrew(OvendrySpecificGravity specificGravity, Length shank, Length threadPenetration) =>
        CheckSpecificGravity(specificGravity.Value, shank, threadPenetration, nameof(threadPenetration));

    /// <summary>The allowable load of a lag screw by the NDS.</summary>
    /// <param name="specificGravity">Ovendry mass over ovendry volume, 0.1 to 1.3.</param>
    /// <param name="shank">Diameter of the unthreaded shank, the screw's nominal diameter [length], more than 0 up to 20 mm.</param>
    /// <param name="threadPenetration">Length of thread in the holding member, tip <b>not</b> included [length], 0 to 500 mm.</param>
    /// <returns>The capacity; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: W = 1800 G^(3/2) D^(3/4) lb per inch of thread, G ovendry, D in inches; here F = k G^(3/2) D^(3/4) p in N and mm with
    /// k = 1800 · 4.4482216152605/25.4^1.75 = 27.86121 N/mm^1.75, computed from the exact pound and inch and not rounded.</para>
    /// <para>Validity: side grain, load of normal duration. Thread under 4 D: the value with the finding <c>fastening-nds-penetration-short</c>.</para>
    /// <para>Source: NDS-2018 12.2 (read in a copy).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// WithdrawalCapacity lag = Withdrawal.NdsLagScrew(new OvendrySpecificGravity(0.55), Mm(12.7), Mm(55.5625));
    /// Force hold = lag.Force;                             // 4247.94 N allowable
    /// </code></example>
    public static WithdrawalCapacity NdsLagScrew(OvendrySpecificGravity specificGravity, Length shank, Length threadPenetration) =>
        new(ReadSpecificGravity(WithdrawalFormula.NdsLagScrew, specificGravity.Value, shank, threadPenetration, nameof(threadPenetration), null));

    /// <summary>All problems with the input of <see cref="NdsLagScrew(OvendrySpecificGravity, Length, Length)"/>; nothing is thrown.</summary>
    /// <param name="specificGravity">As there.</param>
    /// <param name="shank">As there.</param>
    /// <param name="threadPenetration">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckNdsLagScrew(OvendrySpecificGravity specificGravity, Length shank, Length threadPenetration) =>
        CheckSpecificGravity(specificGravity.Value, shank, threadPenetration, nameof(threadPenetration));

    /// <summary>The average ultimate load of a smooth nail by the Wood Handbook: what pulled it out in tests, not what to load it with.</summary>
    /// <param name="specificGravity">Ovendry mass over volume at 12% moisture content, 0.1 to 1.3.</param>
    /// <param name="shank">Diameter of the shank [length], more than 0 up to 20 mm.</param>
    /// <param name="penetration">Length of shank in the holding member, tip included [length], 0 to 500 mm.</param>
    /// <returns>The capacity, with the finding <c>fastening-ultimate-not-design</c>; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: F = 54.12 G^(5/2) D L in N and mm, G at 12% (in pounds and inches 7850 G^(5/2) D L).</para>
    /// <para>Validity: side grain, pulled soon after driving; smooth nails lose hold with time and with changes of moisture.</para>
    /// <para>Source: FPL-GTR-282 chapter 8 (read in a copy).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// WithdrawalCapacity test = Withdrawal.HandbookNail(new SpecificGravityAt12(0.4), Mm(1.6), Mm(25));
    /// Force pulledOut = test.Force;                       // 219.1 N on average, a design load is about a fifth
    /// </code></example>
    public static WithdrawalCapacity HandbookNail(SpecificGravityAt12 specificGravity, Length shank, Length penetration) =>
        new(ReadSpecificGravity(WithdrawalFormula.HandbookNail, specificGravity.Value, shank, penetration, nameof(penetration), null));

    /// <summary>All problems with the input of <see cref="HandbookNail(SpecificGravityAt12, Length, Length)"/>; nothing is thrown.</summary>
    /// <param name="specificGravity">As there.</param>
    /// <param name="shank">As there.</param>
    /// <param name="penetration">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckHandbookNail(SpecificGravityAt12 specificGravity, Length shank, Length penetration) =>
        CheckSpecificGravity(specificGravity.Value, shank, penetration, nameof(penetration));

    /// <summary>The average ultimate load of a wood screw by the Wood Handbook: what pulled it out in tests, not what to load it with.</summary>
    /// <param name="specificGravity">Ovendry mass over volume at 12% moisture content, 0.1 to 1.3.</param>
    /// <param name="shank">Diameter of the shank [length], more than 0 up to 20 mm.</param>
    /// <param name="threadPenetration">Length of thread in the holding member [length], 0 to 500 mm.</param>
    /// <returns>The capacity, with the finding <c>fastening-ultimate-not-design</c>; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: F = 108.25 G² D L in N and mm, G at 12% (in pounds and inches 15 700 G² D L).</para>
    /// <para>Validity: side grain.</para>
    /// <para>Source: FPL-GTR-282 chapter 8 (read in a copy).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// WithdrawalCapacity test = Withdrawal.HandbookWoodScrew(new SpecificGravityAt12(0.4), Mm(4.17), Mm(20));
    /// Force pulledOut = test.Force;                       // 1444 N on average
    /// </code></example>
    public static WithdrawalCapacity HandbookWoodScrew(SpecificGravityAt12 specificGravity, Length shank, Length threadPenetration) =>
        new(ReadSpecificGravity(WithdrawalFormula.HandbookWoodScrew, specificGravity.Value, shank, threadPenetration, nameof(threadPenetration), null));

    /// <summary>All problems with the input of <see cref="HandbookWoodScrew(SpecificGravityAt12, Length, Length)"/>; nothing is thrown.</summary>
    /// <param name="specificGravity">As there.</param>
    /// <param name="shank">As there.</param>
    /// <param name="threadPenetration">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckHandbookWoodScrew(SpecificGravityAt12 specificGravity, Length shank, Length threadPenetration) =>
        CheckSpecificGravity(specificGravity.Value, shank, threadPenetration, nameof(threadPenetration));

    /// <summary>The average ultimate load of a lag screw by the Wood Handbook: what pulled it out in tests, not what to load it with.</summary>
    /// <param name="specificGravity">Ovendry mass over volume at 12% moisture content, 0.1 to 1.3.</param>
    /// <param name="shank">Diameter of the shank [length], more than 0 up to 20 mm.</param>
    /// <param name="threadPenetration">Length of thread in the holding member [length], 0 to 500 mm.</param>
    /// <returns>The capacity, with the finding <c>fastening-ultimate-not-design</c>; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: F = 125.4 G^(3/2) D^(3/4) L in N and mm, G at 12% (in pounds and inches 8100 G^(3/2) D^(3/4) L).</para>
    /// <para>Validity: side grain.</para>
    /// <para>Source: FPL-GTR-282 chapter 8 (read in a copy).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// WithdrawalCapacity test = Withdrawal.HandbookLagScrew(new SpecificGravityAt12(0.49), Mm(16), Mm(10));
    /// Force pulledOut = test.Force;                       // 3440.98 N on average
    /// </code></example>
    public static WithdrawalCapacity HandbookLagScrew(SpecificGravityAt12 specificGravity, Length shank, Length threadPenetration) =>
        new(ReadSpecificGravity(WithdrawalFormula.HandbookLagScrew, specificGravity.Value, shank, threadPenetration, nameof(threadPenetration), null));

    /// <summary>All problems with the input of <see cref="HandbookLagScrew(SpecificGravityAt12, Length, Length)"/>; nothing is thrown.</summary>
    /// <param name="specificGravity">As there.</param>
    /// <param name="shank">As there.</param>
    /// <param name="threadPenetration">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckHandbookLagScrew(SpecificGravityAt12 specificGravity, Length shank, Length threadPenetration) =>
        CheckSpecificGravity(specificGravity.Value, shank, threadPenetration, nameof(threadPenetration));

    /// <summary>The characteristic withdrawal of a smooth nail's point side by Eurocode 5, for a short-term load only.</summary>
    /// <param name="density">Characteristic density of the holding member [density], 100 to 1300 kg/m3.</param>
    /// <param name="shank">Diameter of the shank [length], more than 0 up to 20 mm.</param>
    /// <param name="pointPenetration">Length of shank in the holding member, tip included [length], 0 to 500 mm.</param>
    /// <returns>The capacity; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: F = k f d t with f = 20e-6 rho² N/mm², and k = t/(4 d) - 2 held between 0 and 1: nothing at 8 d, all at 12 d.</para>
    /// <para>Validity: side grain; the head side is not asked about (see <see cref="Eurocode5SmoothNail(Eurocode5Nail)"/>). At 8 d and less:
    /// zero with the finding <c>fastening-eurocode5-penetration-none</c>, a problem; under 12 d: <c>fastening-eurocode5-penetration-short</c>.
    /// Always <c>fastening-eurocode5-short-term-only</c>, a caution: a smooth nail must not carry a permanent load along its axis, as a
    /// board hung under a ceiling is. The capacity is computed as if it need not; <see cref="Retention"/> refuses it for a mass that hangs for good.</para>
    /// <para>Source: EN-1995-1-1 8.3.2 (read in a copy).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// WithdrawalCapacity nail = Withdrawal.Eurocode5SmoothNail(new CharacteristicDensity(350), Mm(2.5), Mm(25));
    /// Force hold = nail.Force;                            // 76.56 N characteristic
    /// double kept = nail.ShortPenetrationFactor;          // 0.5: the point is 10 diameters deep
    /// </code></example>
    public static WithdrawalCapacity Eurocode5SmoothNail(CharacteristicDensity density, Length shank, Length pointPenetration) =>
        new(ReadDensity(WithdrawalFormula.Eurocode5SmoothNail, density, shank, nameof(shank), pointPenetration, nameof(pointPenetration), s_length, null));

    /// <summary>All problems with the input of <see cref="Eurocode5SmoothNail(CharacteristicDensity, Length, Length)"/>; nothing is thrown.</summary>
    /// <param name="density">As there.</param>
    /// <param name="shank">As there.</param>
    /// <param name="pointPenetration">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckEurocode5SmoothNail(CharacteristicDensity density, Length shank, Length pointPenetration)
    {
        List<InputProblem> problems = [];
        ReadDensity(WithdrawalFormula.Eurocode5SmoothNail, density, shank, nameof(shank), pointPenetration, nameof(pointPenetration), s_length, problems);
        return problems;
    }

    /// <summary>The characteristic withdrawal of a smooth nail by Eurocode 5, point and head side, permanent load or not.</summary>
    /// <param name="nail">The nail and its members.</param>
    /// <returns>The capacity.</returns>
    /// <remarks>
    /// <para>Formula: F = k min(f d t_pen; f d t + f_head d_h²) with f = 20e-6 rho², f_head = 70e-6 rho² N/mm², and k = t_pen/(4 d) - 2 held
    /// between 0 and 1, on the whole of it. Predrill where a member is thinner than max(7 d; (13 d - 30) rho/400).</para>
    /// <para>Validity: as for the point side alone. A permanent load, the default: zero with the finding <c>fastening-eurocode5-permanent-load</c>, a
    /// problem. A member too thin to nail without predrilling: <c>fastening-eurocode5-predrill</c>.</para>
    /// <para>Source: EN-1995-1-1 8.3.1.2, 8.3.2 (read in a copy).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="nail"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// Eurocode5Nail ceiling = new(new CharacteristicDensity(350), Mm(2.5), Mm(5), Mm(12), Mm(30));
    /// bool refused = Withdrawal.Eurocode5SmoothNail(ceiling).HasProblem; // true: no smooth nail for a permanent load, the default
    /// Force gust = Withdrawal.Eurocode5SmoothNail(ceiling with { PermanentLoad = false }).Force; // 183.75 N
    /// </code></example>
    public static WithdrawalCapacity Eurocode5SmoothNail(Eurocode5Nail nail)
    {
        Door.IsMissing(nail, new Name(nameof(nail)), NailWords, null);
        return new WithdrawalCapacity(Read(nail, null));
    }

    /// <summary>All problems with the input of <see cref="Eurocode5SmoothNail(Eurocode5Nail)"/>; nothing is thrown.</summary>
    /// <param name="nail">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckEurocode5SmoothNail(Eurocode5Nail nail)
    {
        List<InputProblem> problems = [];
        if (!Door.IsMissing(nail, new Name(nameof(nail)), NailWords, problems))
        {
            Read(nail, problems);
        }

        return problems;
    }

    /// <summary>The characteristic withdrawal of one screw by Eurocode 5.</summary>
    /// <param name="density">Characteristic density of the holding member [density], 100 to 1300 kg/m3.</param>
    /// <param name="threadDiameter">Outer diameter of the thread [length], more than 0 up to 20 mm.</param>
    /// <param name="threadPenetration">Length of thread in the holding member [length], more than 0 up to 500 mm.</param>
    /// <param name="angleToGrain">Angle between the screw's axis and the grain [angle], 0 to 90°; 90° in side grain.</param>
    /// <returns>The capacity; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: F = f d l k_d/(1.2 cos² a + sin² a) with f = 0.52 d^(-1/2) l^(-1/10) rho^(4/5) N/mm² and k_d = d/8, at most 1. For a group
    /// see <see cref="Eurocode5EffectiveScrews(int)"/>.</para>
    /// <para>Validity: threads of 6 to 12 mm; outside it the value with the finding <c>fastening-eurocode5-screw-diameter</c>. Thread under 6 d, or
    /// less than 30° to the grain: <c>fastening-eurocode5-screw-penetration-short</c>, <c>fastening-eurocode5-screw-angle</c> (both limits from memory).</para>
    /// <para>Source: EN-1995-1-1 8.7.2 (read in a copy).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// WithdrawalCapacity screw = Withdrawal.Eurocode5Screw(new CharacteristicDensity(350), Mm(6), Mm(40), Angle.FromDegrees(90));
    /// Force hold = screw.Force;                           // 2865.8 N characteristic
    /// </code></example>
    public static WithdrawalCapacity Eurocode5Screw(CharacteristicDensity density, Length threadDiameter, Length threadPenetration, Angle angleToGrain) =>
        new(ReadScrew(density, threadDiameter, threadPenetration, angleToGrain, null));

    /// <summary>All problems with the input of <see cref="Eurocode5Screw(CharacteristicDensity, Length, Length, Angle)"/>; nothing is thrown.</summary>
    /// <param name="density">As there.</param>
    /// <param name="threadDiameter">As there.</param>
    /// <param name="threadPenetration">As there.</param>
    /// <param name="angleToGrain">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckEurocode5Screw(CharacteristicDensity density, Length threadDiameter, Length threadPenetration, Angle angleToGrain)
    {
        List<InputProblem> problems = [];
        ReadScrew(density, threadDiameter, threadPenetration, angleToGrain, problems);
        return problems;
    }

    /// <summary>How many times the capacity of one screw a group of screws has by Eurocode 5.</summary>
    /// <param name="screws">Screws in the group, 1 to 10,000.</param>
    /// <returns>The effective number, a plain number that is seldom whole.</returns>
    /// <remarks>
    /// <para>Formula: n_ef = n^0.9.</para>
    /// <para>Validity: screws that share a load along their axes.</para>
    /// <para>Source: EN-1995-1-1 8.7.2 (read in a copy).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="screws"/> is outside its range.</exception>
    /// <example><code>
    /// double four = Withdrawal.Eurocode5EffectiveScrews(4); // 3.482: four screws hold as much as three and a half
    /// </code></example>
    public static double Eurocode5EffectiveScrews(int screws) => Math.Pow(Door.Number(screws, nameof(screws), s_screws, null), 0.9);

    /// <summary>All problems with the input of <see cref="Eurocode5EffectiveScrews(int)"/>; nothing is thrown.</summary>
    /// <param name="screws">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckEurocode5EffectiveScrews(int screws)
    {
        List<InputProblem> problems = [];
        Door.Number(screws, nameof(screws), s_screws, problems);
        return problems;
    }

    /// <summary>The one formula body, for the numbers and for the workings.</summary>
    internal static WithdrawalNumbers Solve<TTrace>(in WithdrawalCase given, TTrace trace)
        where TTrace : struct, ITrace => given.Formula switch
        {
            WithdrawalFormula.Supplied => SolveSupplied(given, trace),
            WithdrawalFormula.Eurocode5SmoothNail => SolveEurocode5Nail(given, trace),
            WithdrawalFormula.Eurocode5Screw => SolveEurocode5Screw(given, trace),
            _ => SolveSpecificGravity(given, trace),
        };

    private static WithdrawalNumbers SolveSupplied<TTrace>(in WithdrawalCase given, TTrace trace)
        where TTrace : struct, ITrace
    {
        double force = given.Wood;
        trace.Given("F", force, "N", Sources.Given);
        if (given.Plywood != 0)
        {
            double plywood = given.Plywood;
            trace.Given("k_ply", plywood, string.Empty, WithdrawalCapacity.SourceOfPlywood(plywood), meaning: "plywood against solid wood");
            force = trace.Step("F_ply", nameof(force), force * plywood, "N", Sources.WithdrawalSum);
        }

        return new WithdrawalNumbers(force, 0, 1, 0);
    }

    private static WithdrawalNumbers SolveSpecificGravity<TTrace>(in WithdrawalCase given, TTrace trace)
        where TTrace : struct, ITrace
    {
        double specificGravity = given.Wood, diameter = given.Diameter, penetration = given.Penetration;
        trace.Given("G", specificGravity, string.Empty, Sources.Given);
        trace.Given("D", diameter, "mm", Sources.Given);
        trace.Given("p", penetration, "mm", Sources.Given);
        double forcePerLength = given.Formula switch
        {
            WithdrawalFormula.NdsNail => NdsNail(specificGravity, diameter, trace),
            WithdrawalFormula.NdsWoodScrew => NdsWoodScrew(specificGravity, diameter, trace),
            WithdrawalFormula.NdsLagScrew => NdsLagScrew(specificGravity, diameter, trace),
            WithdrawalFormula.HandbookNail => trace.Step("W", nameof(forcePerLength), 54.12 * Math.Pow(specificGravity, 2.5) * diameter, "N/mm", Sources.WoodHandbook),
            WithdrawalFormula.HandbookWoodScrew => trace.Step("W", nameof(forcePerLength), 108.25 * specificGravity * specificGravity * diameter, "N/mm", Sources.WoodHandbook),
            _ => trace.Step("W", nameof(forcePerLength), 125.4 * Math.Pow(specificGravity, 1.5) * Math.Pow(diameter, 0.75), "N/mm", Sources.WoodHandbook),
        };
        forcePerLength = InPlywood(given, forcePerLength, trace);
        double force = trace.Step("F", nameof(force), forcePerLength * penetration, "N", Sources.WithdrawalSum);
        return new WithdrawalNumbers(force, forcePerLength, 1, 0);
    }

    private static double NdsNail<TTrace>(double specificGravity, double diameter, TTrace trace)
        where TTrace : struct, ITrace
    {
        double coefficient = trace.Step("k", nameof(coefficient), 1380 * 4.4482216152605 / (25.4 * 25.4), "MPa", Sources.NdsInSi);
        return trace.Step("W", "forcePerLength", coefficient * Math.Pow(specificGravity, 2.5) * diameter, "N/mm", Sources.Nds);
    }

    private static double NdsWoodScrew<TTrace>(double specificGravity, double diameter, TTrace trace)
        where TTrace : struct, ITrace
    {
        double coefficient = trace.Step("k", nameof(coefficient), 2850 * 4.4482216152605 / (25.4 * 25.4), "MPa", Sources.NdsInSi);
        return trace.Step("W", "forcePerLength", coefficient * specificGravity * specificGravity * diameter, "N/mm", Sources.Nds);
    }

    private static double NdsLagScrew<TTrace>(double specificGravity, double diameter, TTrace trace)
        where TTrace : struct, ITrace
    {
        double coefficient = trace.Step("k", nameof(coefficient), 1800 * 4.4482216152605 / Math.Pow(25.4, 1.75), "N/mm^1.75", Sources.NdsInSi);
        return trace.Step("W", "forcePerLength", coefficient * Math.Pow(specificGravity, 1.5) * Math.Pow(diameter, 0.75), "N/mm", Sources.Nds);
    }

    private static WithdrawalNumbers SolveEurocode5Nail<TTrace>(in WithdrawalCase given, TTrace trace)
        where TTrace : struct, ITrace
    {
        double density = given.Wood, diameter = given.Diameter, penetration = given.Penetration;
        trace.Given("rho_k", density, "kg/m3", Sources.Given);
        trace.Given("d", diameter, "mm", Sources.Given);
        trace.Given("t_pen", penetration, "mm", Sources.Given);
        double predrillingThickness = trace.Step("t_pre", nameof(predrillingThickness), Math.Max(7 * diameter, ((13 * diameter) - 30) * density / 400), "mm", Sources.Eurocode5Predrill);
        double strength = trace.Step("f_ax", nameof(strength), 0.00002 * density * density, "MPa", Sources.Eurocode5);
        double forcePerLength = trace.Step("W", nameof(forcePerLength), strength * diameter, "N/mm", Sources.Eurocode5);
        forcePerLength = InPlywood(given, forcePerLength, trace);
        double axial = trace.Step("F_pen", nameof(axial), forcePerLength * penetration, "N", Sources.Eurocode5);
        if (given.HeadDiameter != 0)
        {
            // Plywood holds the point; the head side is held as before.
            double headDiameter = given.HeadDiameter, thickness = given.HeadSideThickness;
            trace.Given("d_h", headDiameter, "mm", Sources.Given);
            trace.Given("t", thickness, "mm", Sources.Given, meaning: "head side thickness");
            double headStrength = trace.Step("f_head", nameof(headStrength), 0.00007 * density * density, "MPa", Sources.Eurocode5);
            double headSide = trace.Step("F_head", nameof(headSide), (strength * diameter * thickness) + (headStrength * headDiameter * headDiameter), "N", Sources.Eurocode5);
            axial = trace.Step("F_ax", nameof(axial), Math.Min(axial, headSide), "N", Sources.Eurocode5);
        }

        // Exactly 0 at 8 d: scaling by 8 and 4 loses no bit.
        double shortPenetrationFactor = trace.Step("k_pen", nameof(shortPenetrationFactor), Math.Max(0, Math.Min(1, (penetration / (4 * diameter)) - 2)), string.Empty, Sources.Eurocode5);
        double force = given.PermanentLoad
            ? trace.Step("F", nameof(force), 0, "N", Sources.Eurocode5)
            : trace.Step("F", nameof(force), shortPenetrationFactor * axial, "N", Sources.Eurocode5);
        return new WithdrawalNumbers(force, forcePerLength, shortPenetrationFactor, predrillingThickness);
    }

    private static WithdrawalNumbers SolveEurocode5Screw<TTrace>(in WithdrawalCase given, TTrace trace)
        where TTrace : struct, ITrace
    {
        double density = given.Wood, diameter = given.Diameter, penetration = given.Penetration, angle = given.Angle;
        trace.Given("rho_k", density, "kg/m3", Sources.Given);
        trace.Given("d", diameter, "mm", Sources.Given);
        trace.Given("l_ef", penetration, "mm", Sources.Given);
        trace.Given("alpha", angle, "rad", Sources.Given, meaning: "angle to the grain");
        double strength = trace.Step("f_ax", nameof(strength), 0.52 * Math.Pow(diameter, -0.5) * Math.Pow(penetration, -0.1) * Math.Pow(density, 0.8), "MPa", Sources.Eurocode5);
        double diameterFactor = trace.Step("k_d", nameof(diameterFactor), Math.Min(diameter / 8, 1), string.Empty, Sources.Eurocode5);
        double grainAngleFactor = trace.Step("k_a", nameof(grainAngleFactor), (1.2 * Math.Pow(Math.Cos(angle), 2)) + Math.Pow(Math.Sin(angle), 2), string.Empty, Sources.Eurocode5);
        double forcePerLength = trace.Step("W", nameof(forcePerLength), strength * diameter * diameterFactor / grainAngleFactor, "N/mm", Sources.Eurocode5);
        forcePerLength = InPlywood(given, forcePerLength, trace);
        double force = trace.Step("F", nameof(force), forcePerLength * penetration, "N", Sources.Eurocode5);
        return new WithdrawalNumbers(force, forcePerLength, 1, 0);
    }

    private static double InPlywood<TTrace>(in WithdrawalCase given, double forcePerLength, TTrace trace)
        where TTrace : struct, ITrace
    {
        if (given.Plywood == 0)
        {
            return forcePerLength;
        }

        double plywood = given.Plywood;
        trace.Given("k_ply", plywood, string.Empty, WithdrawalCapacity.SourceOfPlywood(plywood), meaning: "plywood against solid wood");
        return trace.Step("W_ply", nameof(forcePerLength), forcePerLength * plywood, "N/mm", Sources.WithdrawalSum);
    }

    private static WithdrawalCase ReadSpecificGravity(WithdrawalFormula formula, double specificGravity, Length shank, Length penetration, string penetrationName, List<InputProblem>? problems)
    {
        double g = Door.Number(specificGravity, nameof(specificGravity), Densities.SpecificGravity, problems);
        double d = Door.Millimetres(shank, nameof(shank), s_shank, problems);
        double p = Door.Millimetres(penetration, penetrationName, s_length, problems);
        return new WithdrawalCase(formula, g, d, p);
    }

    private static List<InputProblem> CheckSpecificGravity(double specificGravity, Length shank, Length penetration, string penetrationName)
    {
        List<InputProblem> problems = [];
        ReadSpecificGravity(WithdrawalFormula.NdsNail, specificGravity, shank, penetration, penetrationName, problems);
        return problems;
    }

    private static WithdrawalCase ReadDensity(
        WithdrawalFormula formula, CharacteristicDensity density, Length diameter, string diameterName, Length penetration, string penetrationName, Allowed penetrationAllowed, List<InputProblem>? problems)
    {
        double rho = Door.Number(density.KilogramsPerCubicMetre, nameof(density), Densities.Density, problems);
        double d = Door.Millimetres(diameter, diameterName, s_shank, problems);
        double p = Door.Millimetres(penetration, penetrationName, penetrationAllowed, problems);
        return new WithdrawalCase(formula, rho, d, p);
    }

    private static WithdrawalCase ReadScrew(CharacteristicDensity density, Length threadDiameter, Length threadPenetration, Angle angleToGrain, List<InputProblem>? problems)
    {
        WithdrawalCase screw = ReadDensity(WithdrawalFormula.Eurocode5Screw, density, threadDiameter, nameof(threadDiameter), threadPenetration, nameof(threadPenetration), s_someLength, problems);
        return screw with { Angle = Door.Radians(angleToGrain, nameof(angleToGrain), s_angle, problems) };
    }

    private static WithdrawalCase Read(Eurocode5Nail nail, List<InputProblem>? problems)
    {
        double rho = Door.Number(nail.Density.KilogramsPerCubicMetre, "nail.Density", Densities.Density, problems);
        double d = Door.Millimetres(nail.Shank, "nail.Shank", s_shank, problems);
        double head = Door.Millimetres(nail.HeadDiameter, "nail.HeadDiameter", new Allowed(double.IsNaN(d) ? Allowed.OneStep : d, 60, "mm"), problems);
        double thickness = Door.Millimetres(nail.HeadSideThickness, "nail.HeadSideThickness", s_length, problems);
        double p = Door.Millimetres(nail.PointPenetration, "nail.PointPenetration", s_length, problems);
        double holding = nail.HoldingThickness is { } given ? Door.Millimetres(given, "nail.HoldingThickness", s_someLength, problems) : 0;
        return new WithdrawalCase(WithdrawalFormula.Eurocode5SmoothNail, rho, d, p)
        {
            HeadDiameter = head,
            HeadSideThickness = thickness,
            HoldingThickness = holding,
            PermanentLoad = nail.PermanentLoad,
        };
    }
}
