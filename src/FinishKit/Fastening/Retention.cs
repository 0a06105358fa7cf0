using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>How many fasteners hold a hung mass by withdrawal, on the road.</summary>
/// <remarks>
/// The load is taken along the fasteners and shared evenly. Forces across them, a crash, and what hangs on the board besides
/// its own mass are not in it. What must hold in a crash (seats, belts, beds that carry people) is not a question for nails in plywood.
/// </remarks>
public static class Retention
{
    /// <summary>Acceleration in any direction where the caller gives none, in g.</summary>
    internal const double RoadAcceleration = 3;

    /// <summary>More fasteners than this are no answer.</summary>
    internal const int MostFasteners = 1_000_000;

    private const string HungWords = "a mass with the capacity of one fastener";

    private static readonly Allowed s_mass = new(0, 10_000, "kg");
    private static readonly Allowed s_acceleration = new(Allowed.OneStep, 100, "g");
    private static readonly Allowed s_designFactor = new(Allowed.OneStep, 10, string.Empty);
    private static readonly Allowed s_fasteners = new(1, MostFasteners, string.Empty);
    private static readonly Allowed s_rows = new(1, 1000, string.Empty);
    private static readonly Allowed s_run = new(Allowed.OneStep, 1e6, "mm");
    private static readonly Allowed s_strength = new(0, 100, "MPa");
    private static readonly Allowed s_area = new(0, 1e8, "mm2");

    /// <summary>How many fasteners hold a mass that hangs for good.</summary>
    /// <param name="mass">The hung mass [mass], 0 to 10,000 kg.</param>
    /// <param name="perFastener">What one fastener holds along its axis; <see cref="WithdrawalCapacity.Supplied(Force)"/> of a force that may be put on.</param>
    /// <param name="acceleration">Acceleration in g along the fasteners, gravity included, more than 0 up to 100; null for 3 g, judgement: a rough road, not a crash.</param>
    /// <returns>The count; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: N = m a · 9.80665 m/s²; one fastener holds F k; n = N/(F k), rounded up; a ratio within 1e-9 of a whole number is that
    /// number. For screws by Eurocode 5 n^0.9 of them count. The design factor k is the default of the capacity's basis: NDS and supplied 1,
    /// Wood Handbook 1/5, Eurocode 5 0.6/1.3.</para>
    /// <para>Validity: load along the fasteners, shared evenly; adhesive is not counted. The mass hangs for good: smooth nails by Eurocode 5
    /// hold nothing, with the finding <c>fastening-eurocode5-permanent-load</c>, a problem. A capacity of 0, or over a million fasteners: no
    /// count, with the finding <c>fastening-no-capacity</c>, a problem. For anything else ask with a <see cref="HungMass"/>.</para>
    /// <para>Source: retention-load, retention-count (derived); retention-acceleration (default, judgement); design factors FPL-093 and
    /// NDS-2018 (read in a copy), EN-1995-1-1 (from memory).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// WithdrawalCapacity one = WithdrawalCapacity.Supplied(Force.FromNewtons(40));
    /// RetentionCount board = Retention.FastenersNeeded(Mass.FromKilograms(12), one);
    /// Force load = board.Load;                            // 353.04 N: 12 kg at 3 g
    /// int? brads = board.Fasteners;                       // 9
    /// </code></example>
    public static RetentionCount FastenersNeeded(Mass mass, WithdrawalCapacity perFastener, double? acceleration = null)
    {
        (double m, double a) = Read(mass, acceleration, null);
        return new RetentionCount(perFastener, m, a, acceleration is null);
    }

    /// <summary>All problems with the input of <see cref="FastenersNeeded(Mass, WithdrawalCapacity, double?)"/>; nothing is thrown.</summary>
    /// <param name="mass">As there.</param>
    /// <param name="perFastener">As there; it has been checked where it was made.</param>
    /// <param name="acceleration">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckFastenersNeeded(Mass mass, WithdrawalCapacity perFastener, double? acceleration = null)
    {
        List<InputProblem> problems = [];
        Read(mass, acceleration, problems);
        return problems;
    }

    /// <summary>How many fasteners hold a mass, whether those that are there do, and how far apart they sit.</summary>
    /// <param name="hung">The mass and its fasteners.</param>
    /// <returns>The answer, with the defaults it rests on.</returns>
    /// <remarks>
    /// <para>Formula: N = m a · 9.80665 m/s²; one fastener holds F k; n = (N - adhesive)/(F k), rounded up; for screws by Eurocode 5
    /// n^0.9 of them count. Spacing is the run over the fasteners of a row, half of it at each end.</para>
    /// <para>Validity: load along the fasteners, shared evenly. Less than 1 g: <c>fastening-retention-under-gravity</c>, a caution. Smooth nails under a permanent load by Eurocode 5: capacity 0, with the
    /// finding <c>fastening-eurocode5-permanent-load</c>, a problem. Load factors of Eurocode 5 are not applied: put them into the acceleration.</para>
    /// <para>Source: retention-load, retention-count (derived); retention-acceleration (default, judgement); design factors FPL-093 and
    /// NDS-2018 (read in a copy), EN-1995-1-1 (from memory).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="hung"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit, or adhesive has strength without area or area without strength.</exception>
    /// <example><code>
    /// WithdrawalCapacity brad = Withdrawal.NdsNail(new OvendrySpecificGravity(0.5), Mm(1.6), Mm(12)).InPlywood();
    /// RetentionResult board = Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(2), brad) { RunLength = Mm(3000) });
    /// int? brads = board.FastenersNeeded;                 // 3 of 25.84 N for 58.84 N
    /// Length? spacing = board.Spacing;                    // 1000 mm by strength alone
    /// </code></example>
    public static RetentionResult FastenersNeeded(HungMass hung)
    {
        Door.IsMissing(hung, new Name(nameof(hung)), HungWords, null);
        RetentionCase given = Read(hung, out double run, null);
        return new RetentionResult(hung.PerFastener, given, Solve(given, default(Silent)), run, hung.Rows);
    }

    /// <summary>All problems with the input of <see cref="FastenersNeeded(HungMass)"/>; nothing is thrown.</summary>
    /// <param name="hung">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckFastenersNeeded(HungMass hung)
    {
        List<InputProblem> problems = [];
        if (!Door.IsMissing(hung, new Name(nameof(hung)), HungWords, problems))
        {
            Read(hung, out _, problems);
        }

        return problems;
    }

    /// <summary>The one formula body, for the numbers and for the workings.</summary>
    internal static RetentionNumbers Solve<TTrace>(in RetentionCase given, TTrace trace)
        where TTrace : struct, ITrace
    {
        double mass = given.Mass, acceleration = given.Acceleration;
        trace.Given("m", mass, "kg", Sources.Given);
        trace.Given("a", acceleration, "g", given.AccelerationIsDefault ? Sources.RoadAcceleration : Sources.Given);
        double pull = trace.Step("N", nameof(pull), mass * acceleration * 9.80665, "N", Sources.RetentionLoad);

        double capacity = given.Capacity;
        trace.Given("F", capacity, "N", SourceOfCapacity(given.Basis), meaning: "capacity of one fastener");
        double designFactor = DesignFactor(given, trace);
        capacity = given.Refused
            ? trace.Step("F_d", nameof(capacity), 0, "N", Sources.Eurocode5)
            : trace.Step("F_d", nameof(capacity), capacity * designFactor, "N", Sources.RetentionCount);

        double load = pull, adhesive = 0;
        if (given.HasAdhesive)
        {
            double adhesiveStrength = given.AdhesiveStrength, adhesiveArea = given.AdhesiveArea;
            trace.Given("f_adh", adhesiveStrength, "MPa", Sources.Given);
            trace.Given("A_adh", adhesiveArea, "mm2", Sources.Given);
            adhesive = trace.Step("N_adh", nameof(adhesive), adhesiveStrength * adhesiveArea, "N", Sources.RetentionCount);
            pull = trace.Step("N_f", nameof(pull), Math.Max(0, pull - adhesive), "N", Sources.RetentionCount);
        }

        double needed = Needed(given, pull, capacity, trace);
        double fasteners = needed;
        if (given.Fasteners != 0)
        {
            fasteners = given.Fasteners;
            trace.Given("n_there", fasteners, string.Empty, Sources.Given, meaning: "fasteners there are");
        }

        double utilisation = pull == 0 ? 0 : double.NaN;
        if (pull > 0 && capacity > 0 && fasteners > 0)
        {
            utilisation = given.ScrewGroup
                ? trace.Step("U", nameof(utilisation), pull / (Math.Pow(fasteners, 0.9) * capacity), string.Empty, Sources.Eurocode5)
                : trace.Step("U", nameof(utilisation), pull / (fasteners * capacity), string.Empty, Sources.RetentionCount);
        }

        return new RetentionNumbers(load, pull, adhesive, designFactor, capacity, needed, utilisation);
    }

    private static double DesignFactor<TTrace>(in RetentionCase given, TTrace trace)
        where TTrace : struct, ITrace
    {
        double designFactor = given.DesignFactor;
        if (!double.IsNaN(designFactor))
        {
            trace.Given("k_des", designFactor, string.Empty, Sources.Given);
            return designFactor;
        }

        Source source = SourceOfDesignFactor(given.Basis);
        return given.Basis switch
        {
            WithdrawalBasis.HandbookAverageUltimate => trace.Step("k_des", nameof(designFactor), 1380.0 / 6900, string.Empty, source),
            WithdrawalBasis.Eurocode5Characteristic => trace.Step("k_des", nameof(designFactor), 0.6 / 1.3, string.Empty, source),
            _ => trace.Step("k_des", nameof(designFactor), 1, string.Empty, source),
        };
    }

    internal static Source SourceOfDesignFactor(WithdrawalBasis basis) => basis switch
    {
        WithdrawalBasis.HandbookAverageUltimate => Sources.NailUltimate,
        WithdrawalBasis.Eurocode5Characteristic => Sources.Eurocode5FromMemory,
        _ => Sources.RetentionDesignFactor,
    };

    private static Source SourceOfCapacity(WithdrawalBasis basis) => basis switch
    {
        WithdrawalBasis.NdsReferenceDesign => Sources.Nds,
        WithdrawalBasis.HandbookAverageUltimate => Sources.WoodHandbook,
        WithdrawalBasis.Eurocode5Characteristic => Sources.Eurocode5,
        _ => Sources.Given,
    };

    /// <summary>Fasteners that carry the pull; NaN where no practical number does.</summary>
    private static double Needed<TTrace>(in RetentionCase given, double pull, double capacity, TTrace trace)
        where TTrace : struct, ITrace
    {
        double fasteners;
        if (pull == 0)
        {
            return trace.Step("n", nameof(fasteners), 0, string.Empty, Sources.RetentionCount);
        }

        if (pull > capacity * MostFasteners * (1 + 1e-9))
        {
            return double.NaN;
        }

        fasteners = given.ScrewGroup
            ? trace.Step("n", nameof(fasteners), Grid.CeilingOfRatio(Math.Pow(pull / capacity, 1 / 0.9), 1), string.Empty, Sources.Eurocode5)
            : trace.Step("n", nameof(fasteners), Grid.CeilingOfRatio(pull, capacity), string.Empty, Sources.RetentionCount);
        return fasteners <= MostFasteners ? fasteners : double.NaN;
    }

    /// <summary>The case of a mass that hangs for good, with nothing but a capacity against it.</summary>
    internal static RetentionCase CaseOf(in WithdrawalCapacity one, double mass, double acceleration, bool accelerationIsDefault) => new(mass, acceleration, one.Newtons)
    {
        AccelerationIsDefault = accelerationIsDefault,
        Basis = one.Basis,
        DesignFactor = double.NaN,
        Refused = one.IsSmoothNailByEurocode5,
        ScrewGroup = one.IsScrewByEurocode5,
    };

    private static (double Mass, double Acceleration) Read(Mass mass, double? acceleration, List<InputProblem>? problems)
    {
        double m = Door.Kilograms(mass, nameof(mass), s_mass, problems);
        return (m, acceleration is { } g ? Door.Number(g, nameof(acceleration), s_acceleration, problems) : RoadAcceleration);
    }

    private static RetentionCase Read(HungMass hung, out double run, List<InputProblem>? problems)
    {
        double m = Door.Kilograms(hung.Mass, "hung.Mass", s_mass, problems);
        double a = hung.Acceleration is { } g ? Door.Number(g, "hung.Acceleration", s_acceleration, problems) : RoadAcceleration;
        double factor = hung.DesignFactor is { } k ? Door.Number(k, "hung.DesignFactor", s_designFactor, problems) : double.NaN;
        int fasteners = hung.Fasteners is { } n && !double.IsNaN(Door.Number(n, "hung.Fasteners", s_fasteners, problems)) ? n : 0;
        run = hung.RunLength is { } length ? Door.Millimetres(length, "hung.RunLength", s_run, problems) : double.NaN;
        Door.Number(hung.Rows, "hung.Rows", s_rows, problems);
        double strength = hung.AdhesiveStrength is { } pressure ? Door.Megapascals(pressure, "hung.AdhesiveStrength", s_strength, problems) : 0;
        double area = hung.AdhesiveArea is { } stuck ? Door.SquareMillimetres(stuck, "hung.AdhesiveArea", s_area, problems) : 0;
        if (hung.AdhesiveStrength.HasValue != hung.AdhesiveArea.HasValue)
        {
            string missing = hung.AdhesiveStrength.HasValue ? "hung.AdhesiveArea" : "hung.AdhesiveStrength";
            Door.Report(new InputProblem(missing, "not given", "strength and area together, or neither", isRange: false), problems);
        }

        WithdrawalCapacity one = hung.PerFastener;
        return new RetentionCase(m, a, one.Newtons)
        {
            AccelerationIsDefault = hung.Acceleration is null,
            Basis = one.Basis,
            DesignFactor = factor,
            Refused = one.IsRefusedForPermanentLoad || (one.IsSmoothNailByEurocode5 && hung.PermanentLoad),
            ScrewGroup = one.IsScrewByEurocode5,
            Fasteners = fasteners,
            AdhesiveStrength = strength,
            AdhesiveArea = area,
            HasAdhesive = hung.AdhesiveStrength.HasValue,
        };
    }
}
