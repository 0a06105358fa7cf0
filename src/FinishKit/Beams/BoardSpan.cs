using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>How far apart the supports of a board, strip or panel may be before it gives too much or breaks: the largest bay.</summary>
/// <remarks>
/// The section lies flat over equal bays, held both ways at each support, its ends not overhanging. The load is put where it does
/// most; one board carries it alone. Fasteners, furring and the shell behind are taken as rigid.
/// </remarks>
public static class BoardSpan
{
    /// <summary>The largest bay with all defaults.</summary>
    /// <param name="section">The board, strip or panel that spans.</param>
    /// <param name="surface">What it finishes: it decides the load.</param>
    /// <returns>The largest bay and what governs it; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: deflection k P L³/(E I) = least of limit and L/ratio, stress k_M P L/Z = stress allowed, each solved for L; the least of both and the cap.
    /// k = 0.015097 and k_M = 0.2074 for two equal spans with the load at its worst place.</para>
    /// <para>Validity: small deflections, thickness well under the bay; two spans, 200 N on a wall, 100 N on a ceiling, the smaller of 3 mm and a 150th
    /// of the bay, at most 500 mm. Without a strength the stress is not checked, with the finding <c>beams-strength-unknown</c>.</para>
    /// <para>Source: beams-three-moments (derived); default-point-load, default-deflection-limit, default-knotty-stiffness, default-bending-strength (judgement); default-bay-cap (common practice).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="section"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// BeamSection knotty = new(Mm(89), Mm(12.7), Pressure.FromMegapascals(8900)) { BendingStrength = Pressure.FromMegapascals(65) };
    /// BayLimit bay = BoardSpan.LargestBay(knotty);
    /// Length strips = bay.LargestBay;                     // 475.4 mm, by deflection
    /// </code></example>
    public static BayLimit LargestBay(BeamSection section, Surface surface = Surface.Wall)
    {
        BayCase given = BayCase.Read(section, surface, null);
        return new BayLimit(given, Solve(given, default(Silent)));
    }

    /// <summary>All problems with the input of <see cref="LargestBay(BeamSection, Surface)"/>; nothing is thrown.</summary>
    /// <param name="section">As there.</param>
    /// <param name="surface">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckLargestBay(BeamSection section, Surface surface = Surface.Wall)
    {
        List<InputProblem> problems = [];
        BayCase.Read(section, surface, problems);
        return problems;
    }

    /// <summary>The largest bay for loads, limits and a number of spans of one's own.</summary>
    /// <param name="question">The section, its loads and limits.</param>
    /// <returns>The largest bay and what governs it; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: point load: deflection k P L³/(E I), moment k_M P L; uniform load: k w L⁴/(E I), k_M w L²; each set equal to what is allowed
    /// and solved for L; the least of all and the cap.</para>
    /// <para>Validity: small deflections, thickness well under the bay, equal spans. The loads are checked one by one; where there are both, the finding
    /// <c>beams-loads-apart</c> says what they do together.</para>
    /// <para>Source: beams-three-moments (derived); default-point-load, default-deflection-limit, default-spans, default-knotty-stiffness, default-bending-strength (judgement); default-bay-cap (common practice).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="question"/> or its section is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// BeamSection strip = new(Mm(40), Mm(14.8), Pressure.FromMegapascals(10316)) { BendingStrength = Pressure.FromMegapascals(41.3), Grade = SectionGrade.Plywood };
    /// BayLimit bay = BoardSpan.LargestBay(new BayQuestion(strip) { Spans = 1 });
    /// Length between = bay.LargestBay;                    // 422.3 mm between rails
    /// BayGovernor why = bay.Governs;                      // Deflection
    /// </code></example>
    public static BayLimit LargestBay(BayQuestion question)
    {
        BayCase given = BayCase.Read(question, null);
        return new BayLimit(given, Solve(given, default(Silent)));
    }

    /// <summary>All problems with the input of <see cref="LargestBay(BayQuestion)"/>; nothing is thrown.</summary>
    /// <param name="question">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckLargestBay(BayQuestion question)
    {
        List<InputProblem> problems = [];
        BayCase.Read(question, problems);
        return problems;
    }

    /// <summary>The one formula body, for the numbers and for the workings.</summary>
    internal static BayNumbers Solve<TTrace>(in BayCase given, TTrace trace)
        where TTrace : struct, ITrace
    {
        SectionStiffness section = given.Section.Solve(trace);
        double elasticity = section.Elasticity, inertia = section.Inertia, modulus = section.Modulus, allowed = section.Allowed;
        double limit = given.Limit, ratio = given.Ratio;
        trace.Given("d_max", limit, "mm", double.IsNaN(given.LimitGiven) ? BeamDefaults.DeflectionSource : Sources.Given, meaning: "deflection allowed");
        trace.Given("r", ratio, string.Empty, double.IsNaN(given.RatioGiven) ? BeamDefaults.DeflectionSource : Sources.Given, meaning: "part of the span allowed");
        double spans = given.Spans;
        trace.Given("n", spans, string.Empty, given.SpansGiven == 0 ? BeamDefaults.SpansSource : Sources.Given, meaning: "equal spans it runs over");
        SpanCoefficients worst = SpanCoefficients.Of(given.Spans);

        double byDeflection = double.PositiveInfinity, byStress = double.IsNaN(allowed) ? double.NaN : double.PositiveInfinity;
        double pointLoad = given.Point;
        if (pointLoad > 0)
        {
            trace.Given("P", pointLoad, "N", given.PointIsDefault ? BeamDefaults.LoadSource : Sources.Given);
            double pointSag = worst.PointSag;
            trace.Given("k_P", pointSag, string.Empty, Sources.Beam, meaning: "deflection coefficient of a load at its worst place");
            double byLimit = trace.Step("L_Pd", nameof(byLimit), Math.Pow(limit * elasticity * inertia / (pointSag * pointLoad), 1.0 / 3), "mm", Sources.Beam);
            double byRatio = trace.Step("L_Pr", nameof(byRatio), Math.Sqrt(elasticity * inertia / (ratio * pointSag * pointLoad)), "mm", Sources.Beam);
            byDeflection = trace.Step("L_d", nameof(byDeflection), Math.Min(byLimit, byRatio), "mm", Sources.Beam);
            if (!double.IsNaN(allowed))
            {
                double pointMoment = worst.PointMoment;
                trace.Given("k_MP", pointMoment, string.Empty, Sources.Beam, meaning: "moment coefficient of a load at its worst place");
                byStress = trace.Step("L_s", nameof(byStress), allowed * modulus / (pointMoment * pointLoad), "mm", Sources.Beam);
            }
        }

        double uniformLoad = given.Uniform;
        if (uniformLoad > 0)
        {
            trace.Given("w", uniformLoad, "N/mm", Sources.Given);
            double uniformSag = worst.UniformSag;
            trace.Given("k_w", uniformSag, string.Empty, Sources.Beam, meaning: "deflection coefficient of a load over the worst set of spans");
            double byLimit = trace.Step("L_wd", nameof(byLimit), Math.Pow(limit * elasticity * inertia / (uniformSag * uniformLoad), 0.25), "mm", Sources.Beam);
            double byRatio = trace.Step("L_wr", nameof(byRatio), Math.Pow(elasticity * inertia / (ratio * uniformSag * uniformLoad), 1.0 / 3), "mm", Sources.Beam);
            double uniformLeast = trace.Step("L_w", nameof(uniformLeast), Math.Min(byLimit, byRatio), "mm", Sources.Beam);
            byDeflection = pointLoad > 0
                ? trace.Step("L_d", nameof(byDeflection), Math.Min(byDeflection, uniformLeast), "mm", Sources.Beam)
                : trace.Step("L_d", nameof(byDeflection), uniformLeast, "mm", Sources.Beam);
            if (!double.IsNaN(allowed))
            {
                double uniformMoment = worst.UniformMoment;
                trace.Given("k_Mw", uniformMoment, string.Empty, Sources.Beam, meaning: "moment coefficient of a load over the worst set of spans");
                double uniformStress = trace.Step("L_ws", nameof(uniformStress), Math.Sqrt(allowed * modulus / (uniformMoment * uniformLoad)), "mm", Sources.Beam);
                byStress = pointLoad > 0
                    ? trace.Step("L_s", nameof(byStress), Math.Min(byStress, uniformStress), "mm", Sources.Beam)
                    : trace.Step("L_s", nameof(byStress), uniformStress, "mm", Sources.Beam);
            }
        }

        double bay = given.Cap;
        trace.Given("L", bay, "mm", double.IsNaN(given.CapGiven) ? BeamDefaults.CapSource : Sources.Given, meaning: "cap on the bay");
        if (!double.IsInfinity(byDeflection))
        {
            bay = trace.Step("L", nameof(bay), Math.Min(bay, byDeflection), "mm", Sources.Beam);
        }

        if (!double.IsNaN(byStress) && !double.IsInfinity(byStress))
        {
            bay = trace.Step("L", nameof(bay), Math.Min(bay, byStress), "mm", Sources.Beam);
        }

        // Rounded down to the grid, so that the bay handed out keeps its limits.
        bay = Grid.SnapDown(bay);
        double stiffness = elasticity * inertia, uniform = uniformLoad > 0 ? uniformLoad : 0;
        double deflection = Math.Max(worst.PointSag * pointLoad * bay * bay * bay, worst.UniformSag * uniform * bay * bay * bay * bay) / stiffness;
        double stress = Math.Max(worst.PointMoment * pointLoad * bay, worst.UniformMoment * uniform * bay * bay) / modulus;
        return new BayNumbers(byDeflection, byStress, bay, deflection, stress, allowed);
    }
}
