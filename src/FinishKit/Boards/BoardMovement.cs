using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>How boards move with their moisture: how much wider or narrower they get, the gap to leave at a joint, and whether tongue or lap stays covered.</summary>
public static class BoardMovement
{
    internal const int MostBoards = 1000;

    private static readonly Allowed s_width = new(Allowed.OneStep, 1e5, "mm");
    private static readonly Allowed s_length = new(Allowed.OneStep, 1e5, "mm");
    private static readonly Allowed s_moisture = new(0, 30, "%");
    private static readonly Allowed s_warming = new(-150, 150, "K");
    private static readonly Allowed s_boards = new(1, MostBoards, string.Empty);
    private static readonly Allowed s_gap = new(0, 100, "mm");

    /// <summary>How much a width of wood changes between two moisture contents.</summary>
    /// <param name="width">Width across the grain [length] at the first moisture content, more than 0 up to 100 m.</param>
    /// <param name="coefficient">How much the wood moves; the default value, which is none, is refused.</param>
    /// <param name="fromMoisture">Moisture content before, in percent, 0 to 30.</param>
    /// <param name="toMoisture">Moisture content after, in percent, 0 to 30.</param>
    /// <returns>The change, positive where the wood swells; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: dW = W C (M2 - M1), W as given.</para>
    /// <para>Validity: moisture contents of 6 to 14%, for which the coefficients are printed; outside, the value comes with a finding. Free wood: what holds a board squeezes it instead.</para>
    /// <para>Source: FPL-GTR-190 (equation from memory, range read in a copy).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit, or there is no coefficient.</exception>
    /// <example><code>
    /// DimensionalChangeCoefficient pine = DimensionalChange.OfWood(WoodSpecies.Named("eastern white pine"), WoodGrain.Tangential);
    /// WidthChange wetter = BoardMovement.OfWidth(Mm(140), pine, 8, 12);
    /// Length change = wetter.Change;                      // 1.187 mm: 140 x 0.00212 x 4
    /// </code></example>
    public static WidthChange OfWidth(Length width, DimensionalChangeCoefficient coefficient, double fromMoisture, double toMoisture) => Read(width, coefficient, fromMoisture, toMoisture, null);

    /// <summary>All problems with the input of <see cref="OfWidth(Length, DimensionalChangeCoefficient, double, double)"/>; nothing is thrown.</summary>
    /// <param name="width">As there.</param>
    /// <param name="coefficient">As there.</param>
    /// <param name="fromMoisture">As there.</param>
    /// <param name="toMoisture">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckOfWidth(Length width, DimensionalChangeCoefficient coefficient, double fromMoisture, double toMoisture)
    {
        List<InputProblem> problems = [];
        Read(width, coefficient, fromMoisture, toMoisture, problems);
        return problems;
    }

    /// <summary>What boards side by side do over the seasons: swelling, shrinkage, the gap to leave, and what stays covered.</summary>
    /// <param name="job">Board, wood, moisture when fitted, and season.</param>
    /// <returns>The answer.</returns>
    /// <remarks>
    /// <para>Formula: swelling = W C (M_wet - M_fit), shrinkage = W C (M_fit - M_dry), W the whole width; a joint closes by F C (M_wet - M_fit) and opens by F C (M_fit - M_dry), F the face (width less tongue or lap).
    /// Gap to leave = greater of the least gap and what the joint closes. Still covered when dry = tongue or lap - gap - shrinkage. Driest fitting = M_wet - gap/(F C); wettest fitting = M_dry + (tongue or lap - gap - least covered)/(W C).</para>
    /// <para>Validity: as for one width. Each board is held at a place of its own, such as its nails; the groove is as deep as the tongue; all boards are at one moisture content. Where all of them push from one end, use what they move together.</para>
    /// <para>Source: FPL-GTR-190 (equation from memory, range read in a copy); movement-joint (derived); default-fitting-moisture, default-joint-gap, default-end-gap (common practice); default-season (judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="job"/> or its board is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit, or there is no coefficient; the parameter is named by its path.</exception>
    /// <example><code>
    /// DimensionalChangeCoefficient spruce = DimensionalChange.OfWood(WoodSpecies.Named("Engelmann spruce"), WoodGrain.Tangential);
    /// SeasonMovement wall = BoardMovement.OverSeason(new BoardMovementJob(BoardCover.TongueAndGroove(Mm(97), Mm(8), Mm(1)), spruce) { Boards = 11 });
    /// Length leave = wall.GapToLeave;                     // 1.545 mm: 89 x 0.00248 x (16 - 9), more than the usual 1 mm
    /// Length? held = wall.StillCoveredWhenDry;            // 6.278 mm of the tongue: 8 - 1 - 97 x 0.00248 x (9 - 6)
    /// double? driest = wall.DriestFitting;                // 11.5%: fitted drier than this, a gap of 1 mm closes
    /// </code></example>
    public static SeasonMovement OverSeason(BoardMovementJob job)
    {
        Door.IsMissing(job, new Name(nameof(job)), JobWords, null);
        return new SeasonMovement(job, Read(job, null));
    }

    /// <summary>All problems with the input of <see cref="OverSeason(BoardMovementJob)"/>; nothing is thrown.</summary>
    /// <param name="job">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckOverSeason(BoardMovementJob job)
    {
        List<InputProblem> problems = [];
        if (!Door.IsMissing(job, new Name(nameof(job)), JobWords, problems))
        {
            Read(job, problems);
        }

        return problems;
    }

    /// <summary>How a board and the steel shell move along the grain: steel grows with heat while wood dries and shrinks.</summary>
    /// <param name="length">Length along the grain [length], more than 0 up to 100 m.</param>
    /// <param name="warming">How much warmer both get, in kelvin, -150 to 150; negative where they cool.</param>
    /// <param name="fromMoisture">Moisture content before, in percent, 0 to 30.</param>
    /// <param name="toMoisture">Moisture content after, in percent, 0 to 30.</param>
    /// <returns>What each of them grows, and by how much the gaps at the ends open; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: steel = 0.000012 L dT; wood by heat = 0.000004 L dT; wood by moisture = 0.002 L (M2 - M1)/30; the end gaps open by steel less both.</para>
    /// <para>Validity: straight-grained wood; shell and boards at one temperature, the boards held near their middle. The moisture share takes the greater of the published 0.1 to 0.2%; wood near knots and of young trees moves several times as much.</para>
    /// <para>Source: EN-1991-1-5 (from memory); FPL-GTR-190 (heat from memory, moisture read in a copy); movement-ends (derived); default-end-gap (common practice).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// LengthMovement summer = BoardMovement.AlongTheGrain(Mm(3400), 80, 9, 6);
    /// Length shell = summer.SteelGrowth;                  // 3.264 mm
    /// Length heat = summer.WoodGrowthByHeat;              // 1.088 mm
    /// Length drying = summer.WoodGrowthByMoisture;        // -0.68 mm
    /// Length open = summer.EndsOpenBy;                    // 2.856 mm over both ends
    /// </code></example>
    public static LengthMovement AlongTheGrain(Length length, double warming, double fromMoisture, double toMoisture) => Read(length, warming, fromMoisture, toMoisture, null);

    /// <summary>All problems with the input of <see cref="AlongTheGrain(Length, double, double, double)"/>; nothing is thrown.</summary>
    /// <param name="length">As there.</param>
    /// <param name="warming">As there.</param>
    /// <param name="fromMoisture">As there.</param>
    /// <param name="toMoisture">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckAlongTheGrain(Length length, double warming, double fromMoisture, double toMoisture)
    {
        List<InputProblem> problems = [];
        Read(length, warming, fromMoisture, toMoisture, problems);
        return problems;
    }

    private const string JobWords = "boards and their wood";

    /// <summary>The one formula body of a width, for the numbers and for the workings.</summary>
    internal static double Solve<TTrace>(double width, in DimensionalChangeCoefficient wood, double before, double after, TTrace trace)
        where TTrace : struct, ITrace
    {
        double coefficient = wood.Value;
        trace.Given("W", width, "mm", Sources.Given);
        trace.Given("C", coefficient, "1/%", wood.Source, meaning: "dimensional change coefficient");
        trace.Given("M_1", before, "%", Sources.Given, meaning: "moisture content before");
        trace.Given("M_2", after, "%", Sources.Given, meaning: "moisture content after");
        double change = trace.Step("dW", nameof(change), width * coefficient * (after - before), "mm", MovementDefaults.Change);
        return change;
    }

    /// <summary>The one formula body of a season, for the numbers and for the workings.</summary>
    internal static SeasonNumbers Solve<TTrace>(in SeasonCase season, TTrace trace)
        where TTrace : struct, ITrace
    {
        double width = season.Width, hidden = season.Hidden, gap = season.Gap, coefficient = season.Coefficient.Value;
        double fitting = season.Fitting, driest = season.Driest, wettest = season.Wettest, leastGap = season.LeastGap, boards = season.Boards;
        trace.Given("W", width, "mm", Sources.Given, meaning: "width over all");
        trace.Given("h", hidden, "mm", Sources.Given, meaning: "tongue or lap");
        trace.Given("g", gap, "mm", Sources.Given, meaning: "gap left when fitted");
        trace.Given("C", coefficient, "1/%", season.Coefficient.Source, meaning: "dimensional change coefficient");
        trace.Given("M_fit", fitting, "%", season.FittingIsDefault ? MovementDefaults.Fitting : Sources.Given, meaning: "moisture content when fitted");
        trace.Given("M_dry", driest, "%", season.DriestIsDefault ? MovementDefaults.Season : Sources.Given, meaning: "moisture content at the dry end");
        trace.Given("M_wet", wettest, "%", season.WettestIsDefault ? MovementDefaults.Season : Sources.Given, meaning: "moisture content at the wet end");
        trace.Given("g_min", leastGap, "mm", season.LeastGapIsDefault ? MovementDefaults.Gap : Sources.Given, meaning: "least gap at a joint");
        trace.Given("n", boards, string.Empty, Sources.Given, meaning: "boards side by side");
        double face = trace.Step("F", nameof(face), width - hidden, "mm", MovementDefaults.Joint);
        double swelling = trace.Step("dW_wet", nameof(swelling), width * coefficient * (wettest - fitting), "mm", MovementDefaults.Change);
        double shrinkage = trace.Step("dW_dry", nameof(shrinkage), width * coefficient * (fitting - driest), "mm", MovementDefaults.Change);
        double jointCloses = trace.Step("dF_wet", nameof(jointCloses), face * coefficient * (wettest - fitting), "mm", MovementDefaults.Change);
        double jointOpens = trace.Step("dF_dry", nameof(jointOpens), face * coefficient * (fitting - driest), "mm", MovementDefaults.Change);
        double gapToLeave = trace.Step("g_leave", nameof(gapToLeave), Math.Max(leastGap, jointCloses), "mm", MovementDefaults.Joint);
        double gapWhenWet = trace.Step("g_wet", nameof(gapWhenWet), gap - jointCloses, "mm", MovementDefaults.Joint);
        double gapWhenDry = trace.Step("g_dry", nameof(gapWhenDry), gap + jointOpens, "mm", MovementDefaults.Joint);
        double covered = 0;
        if (hidden > 0)
        {
            covered = trace.Step("h_dry", nameof(covered), hidden - gap - shrinkage, "mm", MovementDefaults.Joint);
        }

        double totalSwelling = trace.Step("T_wet", nameof(totalSwelling), boards * jointCloses, "mm", MovementDefaults.Joint);
        double totalShrinkage = trace.Step("T_dry", nameof(totalShrinkage), boards * jointOpens, "mm", MovementDefaults.Joint);
        return new SeasonNumbers(swelling, shrinkage, jointCloses, gapToLeave, gapWhenWet, gapWhenDry, covered, totalSwelling, totalShrinkage);
    }

    /// <summary>The one formula body along the grain, for the numbers and for the workings.</summary>
    internal static LengthNumbers SolveLength<TTrace>(double length, double warming, double before, double after, TTrace trace)
        where TTrace : struct, ITrace
    {
        double steelRate = MovementDefaults.SteelGrowth, woodRate = MovementDefaults.WoodGrowth, lengthShrinkage = MovementDefaults.LengthShrinkage, shrinkageStart = MovementDefaults.ShrinkageStart;
        trace.Given("L", length, "mm", Sources.Given);
        trace.Given("dT", warming, "K", Sources.Given);
        trace.Given("M_1", before, "%", Sources.Given, meaning: "moisture content before");
        trace.Given("M_2", after, "%", Sources.Given, meaning: "moisture content after");
        trace.Given("alpha_steel", steelRate, "1/K", MovementDefaults.Steel, meaning: "growth of steel for each kelvin");
        trace.Given("alpha_wood", woodRate, "1/K", MovementDefaults.WoodHeat, meaning: "growth of wood along the grain for each kelvin");
        trace.Given("S_L", lengthShrinkage, string.Empty, MovementDefaults.LengthChange, meaning: "share that wood shrinks along the grain from green to ovendry");
        trace.Given("s", shrinkageStart, "%", MovementDefaults.LengthChange, meaning: "moisture content over which it does");
        double steel = trace.Step("dL_steel", nameof(steel), steelRate * length * warming, "mm", MovementDefaults.Steel);
        double heat = trace.Step("dL_heat", nameof(heat), woodRate * length * warming, "mm", MovementDefaults.WoodHeat);
        double moisture = trace.Step("dL_moisture", nameof(moisture), lengthShrinkage * length * (after - before) / shrinkageStart, "mm", MovementDefaults.LengthChange);
        double opening = trace.Step("o", nameof(opening), steel - heat - moisture, "mm", MovementDefaults.EndsOpen);
        return new LengthNumbers(steel, heat, moisture, opening);
    }

    /// <summary>The moisture contents that lie outside those the coefficients are printed for, or null.</summary>
    internal static Finding? OutsideRange(double least, double most)
    {
        return least >= MovementDefaults.LeastCovered && most <= MovementDefaults.MostCovered ? null : new Finding(
            "boards-movement-outside-range",
            Severity.Caution,
            $"Moisture contents of {Print.Round(least, 3)} to {Print.Round(most, 3)}% go beyond the {Print.Number(MovementDefaults.LeastCovered)} to {Print.Number(MovementDefaults.MostCovered)}% for which dimensional change coefficients are published: outside, the straight line is an estimate.",
            [new("least-moisture", least, "%"), new("greatest-moisture", most, "%"), new("coefficient-from", MovementDefaults.LeastCovered, "%"), new("coefficient-to", MovementDefaults.MostCovered, "%")],
            MovementDefaults.Range);
    }

    private static WidthChange Read(Length width, DimensionalChangeCoefficient coefficient, double fromMoisture, double toMoisture, List<InputProblem>? problems)
    {
        double w = Door.Millimetres(width, nameof(width), s_width, problems);
        CheckCoefficient(coefficient, nameof(coefficient), problems);
        double before = Door.Number(fromMoisture, nameof(fromMoisture), s_moisture, problems);
        double after = Door.Number(toMoisture, nameof(toMoisture), s_moisture, problems);
        return problems is { Count: > 0 } ? default : new WidthChange(w, coefficient, before, after);
    }

    private static LengthMovement Read(Length length, double warming, double fromMoisture, double toMoisture, List<InputProblem>? problems)
    {
        double l = Door.Millimetres(length, nameof(length), s_length, problems);
        double kelvin = Door.Number(warming, nameof(warming), s_warming, problems);
        double before = Door.Number(fromMoisture, nameof(fromMoisture), s_moisture, problems);
        double after = Door.Number(toMoisture, nameof(toMoisture), s_moisture, problems);
        return problems is { Count: > 0 } ? default : new LengthMovement(l, kelvin, before, after);
    }

    private static SeasonCase Read(BoardMovementJob job, List<InputProblem>? problems)
    {
        Door.IsMissing(job.Board, new Name("job.Board"), "a board", problems);
        CheckCoefficient(job.Coefficient, "job.Coefficient", problems);
        double boards = Door.Number(job.Boards, "job.Boards", s_boards, problems);
        double fitting = Moisture(job.FittingMoisture, "job.FittingMoisture", MovementDefaults.FittingMoisture, problems);
        double driest = Moisture(job.DriestMoisture, "job.DriestMoisture", MovementDefaults.DriestMoisture, problems);
        double wettest = Moisture(job.WettestMoisture, "job.WettestMoisture", MovementDefaults.WettestMoisture, problems);
        if (driest > wettest)
        {
            Door.Report(
                job.WettestMoisture is null
                    ? new InputProblem("job.DriestMoisture", Print.Number(driest) + " %", $"0 to {Print.Number(wettest)} %, the wet end of the season", isRange: true)
                    : new InputProblem("job.WettestMoisture", Print.Number(wettest) + " %", $"{Print.Number(driest)}, the dry end of the season, to 30 %", isRange: true),
                problems);
        }

        double leastGap = job.LeastGap is { } gap ? Door.Millimetres(gap, "job.LeastGap", s_gap, problems) : MovementDefaults.JointGap;
        double endGap = job.EndGap is { } end ? Door.Millimetres(end, "job.EndGap", s_gap, problems) : MovementDefaults.EndGap;
        double leastCovered = job.LeastCovered is { } covered ? Door.Millimetres(covered, "job.LeastCovered", s_gap, problems) : 0;
        return problems is { Count: > 0 } ? default : new SeasonCase(job, boards, fitting, driest, wettest, leastGap, endGap, leastCovered);
    }

    private static double Moisture(double? given, string parameter, double otherwise, List<InputProblem>? problems) =>
        given is { } moisture ? Door.Number(moisture, parameter, s_moisture, problems) : otherwise;

    private static void CheckCoefficient(in DimensionalChangeCoefficient coefficient, string parameter, List<InputProblem>? problems)
    {
        if (coefficient.IsNone)
        {
            Door.Report(new InputProblem(parameter, "no coefficient", $"one from {nameof(DimensionalChange)}, or a supplied one", isRange: false), problems);
        }
    }
}

/// <summary>A job as plain numbers in mm and percent.</summary>
internal readonly struct SeasonCase(BoardMovementJob job, double boards, double fitting, double driest, double wettest, double leastGap, double endGap, double leastCovered)
{
    internal DimensionalChangeCoefficient Coefficient { get; } = job.Coefficient;

    internal double Width { get; } = Door.Millimetres(job.Board.Width);

    internal double Hidden { get; } = Door.Millimetres(job.Board.Hidden);

    internal double Gap { get; } = job.Board.GapMm;

    internal double Boards { get; } = boards;

    internal double Fitting { get; } = fitting;

    internal double Driest { get; } = driest;

    internal double Wettest { get; } = wettest;

    internal double LeastGap { get; } = leastGap;

    internal double EndGap { get; } = endGap;

    internal double LeastCovered { get; } = leastCovered;

    internal bool FittingIsDefault { get; } = job.FittingMoisture is null;

    internal bool DriestIsDefault { get; } = job.DriestMoisture is null;

    internal bool WettestIsDefault { get; } = job.WettestMoisture is null;

    internal bool LeastGapIsDefault { get; } = job.LeastGap is null;

    internal bool EndGapIsDefault { get; } = job.EndGap is null;
}

/// <summary>What the formulas of a season give, in mm.</summary>
internal readonly struct SeasonNumbers(double swelling, double shrinkage, double jointCloses, double gapToLeave, double gapWhenWet, double gapWhenDry, double covered, double totalSwelling, double totalShrinkage)
{
    internal double Swelling { get; } = swelling;

    internal double Shrinkage { get; } = shrinkage;

    internal double JointCloses { get; } = jointCloses;

    internal double GapToLeave { get; } = gapToLeave;

    internal double GapWhenWet { get; } = gapWhenWet;

    internal double GapWhenDry { get; } = gapWhenDry;

    internal double Covered { get; } = covered;

    internal double TotalSwelling { get; } = totalSwelling;

    internal double TotalShrinkage { get; } = totalShrinkage;
}

/// <summary>What the formulas along the grain give, in mm.</summary>
internal readonly struct LengthNumbers(double steel, double heat, double moisture, double opening)
{
    internal double Steel { get; } = steel;

    internal double Heat { get; } = heat;

    internal double Moisture { get; } = moisture;

    internal double Opening { get; } = opening;
}
