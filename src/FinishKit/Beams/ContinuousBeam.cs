using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>
/// How a board, strip or panel bends over any number of supports, equally far apart or not, on one line or not: under loads as
/// given, under a point load at its worst place, under a uniform load on the worst set of spans.
/// </summary>
/// <remarks>
/// Loads, deflections and displaced supports are positive one way: for a wall, from the room to the shell. A reaction is positive
/// where the support pushes back against a positive load, negative where it has to hold the beam. Deflection is counted from the
/// straight line between the two supports of the span. A positive curvature or stress belongs to a span that gives way to a positive load.
/// </remarks>
public static class ContinuousBeam
{
    /// <summary>More loads than this on one beam are no design.</summary>
    private const int MostLoads = 1000;

    private const string BeamWords = "a section and its spans";
    private const string LoadWords = "0 to 1000 loads";

    private static readonly Allowed s_force = new(-100_000, 100_000, "N");
    private static readonly Allowed s_uniform = new(-1000, 1000, "N/mm");

    /// <summary>Deflection, stress and reactions under loads as given.</summary>
    /// <param name="beam">The section, its spans and displaced supports.</param>
    /// <param name="loads">The loads, all at once, 0 to 1000 of them; with none only the displaced supports bend it.</param>
    /// <returns>How it bends.</returns>
    /// <remarks>
    /// <para>Formula: over each inner support l M₋ + 2 (l + r) M + r M₊ = -load terms + 6 E I ((y - y₋)/l + (y - y₊)/r); deflection and moment in each span
    /// from the moments at its ends and its loads; stress M/Z; curvature M/(E I).</para>
    /// <para>Validity: small deflections, one section throughout, supports that hold both ways, ends that do not overhang; shear deflection is left out.</para>
    /// <para>Source: beams-three-moments (derived); default-knotty-stiffness, default-bending-strength (judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">An argument or a member of it is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// Beam board = new(new BeamSection(Mm(100), Mm(12), Pressure.FromMegapascals(8900)) { Grade = SectionGrade.ClearBoard }, [Mm(400), Mm(400)]);
    /// BeamResponse hung = ContinuousBeam.UnderLoads(board, [BeamLoad.Uniform(ForcePerLength.FromNewtonsPerMillimeter(0.005272))]);
    /// Length sag = hung.Deflection;                       // 0.0057 mm under its own weight
    /// Force middle = hung.Reactions[1];                   // 2.636 N: 5/8 of the load of both spans
    /// </code></example>
    public static BeamResponse UnderLoads(Beam beam, IReadOnlyList<BeamLoad> loads)
    {
        BeamLine line = Read(beam, loads, out SectionNumbers section, out double[] spans, null)!;
        return new BeamResponse(section, spans, line);
    }

    /// <summary>All problems with the input of <see cref="UnderLoads(Beam, IReadOnlyList{BeamLoad})"/>; nothing is thrown.</summary>
    /// <param name="beam">As there.</param>
    /// <param name="loads">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckUnderLoads(Beam beam, IReadOnlyList<BeamLoad> loads)
    {
        List<InputProblem> problems = [];
        Read(beam, loads, out _, out _, problems);
        return problems;
    }

    /// <summary>Deflection, stress and reactions under a point load, each with the load where it is worst.</summary>
    /// <param name="beam">The section, its spans and displaced supports.</param>
    /// <param name="load">The load [force], -100,000 to 100,000 N.</param>
    /// <returns>The worst of each, and where the load is then.</returns>
    /// <remarks>
    /// <para>Formula: as under given loads, greatest over the place of the load; the deflection of a straight beam is greatest under the load itself,
    /// moments in a span under the load, moments over a support with the load in a span beside it, reactions by their influence lines.</para>
    /// <para>Validity: as under given loads; where supports are displaced, the worst place for the deflection is searched at 47 places a span and refined about the best.</para>
    /// <para>Source: beams-three-moments (derived); default-knotty-stiffness, default-bending-strength (judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="beam"/> or a member of it is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// Beam board = new(new BeamSection(Mm(89), Mm(12.7), Pressure.FromMegapascals(8900)), [Mm(475), Mm(475)]);
    /// BeamExtremes pushed = ContinuousBeam.UnderPointLoad(board, Force.FromNewtons(200));
    /// Length give = pushed.Deflection;                    // 2.992 mm
    /// Length worst = pushed.DeflectionLoad!.Value;        // 222.6 mm from the first support: 0.4687 of the span
    /// </code></example>
    public static BeamExtremes UnderPointLoad(Beam beam, Force load)
    {
        (SectionNumbers section, double[] spans, double[]? displacements) = Read(beam, null);
        double force = Door.Newtons(load, nameof(load), s_force, null);
        return new BeamExtremes(section, spans, WorstLoads.Point(spans, section.Solve(default(Silent)).Stiffness, displacements, force), force, displacements);
    }

    /// <summary>All problems with the input of <see cref="UnderPointLoad(Beam, Force)"/>; nothing is thrown.</summary>
    /// <param name="beam">As there.</param>
    /// <param name="load">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckUnderPointLoad(Beam beam, Force load)
    {
        List<InputProblem> problems = [];
        Read(beam, problems);
        Door.Newtons(load, nameof(load), s_force, problems);
        return problems;
    }

    /// <summary>Deflection, stress and reactions under a uniform load, each with the load on the set of spans where it is worst.</summary>
    /// <param name="beam">The section, its spans and displaced supports.</param>
    /// <param name="load">The load [force per length], -1000 to 1000 N/mm.</param>
    /// <returns>The worst of each, and which spans are loaded then.</returns>
    /// <remarks>
    /// <para>Formula: as under given loads, spans loaded or not so that each answer is greatest: three equal spans deflect 0.00992 w L⁴/(E I) with the
    /// outer two loaded, not the 0.00688 of all three.</para>
    /// <para>Validity: as under given loads; a span is loaded over its whole length or not at all.</para>
    /// <para>Source: beams-three-moments (derived); default-knotty-stiffness, default-bending-strength (judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="beam"/> or a member of it is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// Beam board = new(new BeamSection(Mm(100), Mm(10), Pressure.FromMegapascals(10000)) { Grade = SectionGrade.ClearBoard }, [Mm(500), Mm(500), Mm(500)]);
    /// BeamExtremes leaned = ContinuousBeam.UnderUniformLoad(board, ForcePerLength.FromNewtonsPerMillimeter(0.1));
    /// Length give = leaned.Deflection;                    // 0.7438 mm with the outer spans loaded
    /// </code></example>
    public static BeamExtremes UnderUniformLoad(Beam beam, ForcePerLength load)
    {
        (SectionNumbers section, double[] spans, double[]? displacements) = Read(beam, null);
        double spread = Door.NewtonsPerMillimetre(load, new Name(nameof(load)), s_uniform, null);
        return new BeamExtremes(section, spans, WorstLoads.Uniform(spans, section.Solve(default(Silent)).Stiffness, displacements, spread), spread, displacements);
    }

    /// <summary>All problems with the input of <see cref="UnderUniformLoad(Beam, ForcePerLength)"/>; nothing is thrown.</summary>
    /// <param name="beam">As there.</param>
    /// <param name="load">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckUnderUniformLoad(Beam beam, ForcePerLength load)
    {
        List<InputProblem> problems = [];
        Read(beam, problems);
        Door.NewtonsPerMillimetre(load, new Name(nameof(load)), s_uniform, problems);
        return problems;
    }

    private static (SectionNumbers Section, double[] Spans, double[]? Displacements) Read(Beam beam, List<InputProblem>? problems) =>
        Door.IsMissing(beam, new Name(nameof(beam)), BeamWords, problems) ? (default, [], null) : beam.Read(nameof(beam), problems);

    private static BeamLine? Read(Beam beam, IReadOnlyList<BeamLoad> loads, out SectionNumbers section, out double[] spans, List<InputProblem>? problems)
    {
        (section, spans, double[]? displacements) = Read(beam, problems);
        if (Door.IsMissing(loads, new Name(nameof(loads)), LoadWords, problems))
        {
            return null;
        }

        if (loads.Count > MostLoads)
        {
            Door.Report(new InputProblem(nameof(loads), Print.Number(loads.Count) + " loads", LoadWords, isRange: true), problems);
            return null;
        }

        double[] uniform = new double[spans.Length];
        List<PointOnSpan> points = [];
        for (int i = 0; i < loads.Count; i++)
        {
            Name name = new(nameof(loads), i);
            if (!Door.IsMissing(loads[i], name, "a load", problems) && spans.Length != 0)
            {
                loads[i].AddTo(spans, uniform, points, name, problems);
            }
        }

        return problems is null ? new BeamLine(spans, section.Solve(default(Silent)).Stiffness, displacements, uniform, [.. points]) : null;
    }
}
