using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>Where every furring strip of a face goes, round its openings and breaks, what it bears on and where it is fixed.</summary>
public static class FurringLayout
{
    internal static BeamSection DefaultSection { get; } = BeamSection.OfPlywood(Door.Millimetres(FurringDefaults.Width), SheetGoods.Birch15, SpanGrain.AlongTheSpan);

    /// <summary>The strips of a face.</summary>
    /// <param name="face">The face: extents, openings, breaks, furniture, ribs and rails, largest bay, and whatever differs from the defaults.</param>
    /// <returns>Every piece with its ends, bearing and fixings, totals, and findings.</returns>
    /// <remarks>
    /// <para>Formula: strips at both ends (centre line half a strip in), beside every opening and at butt joints are fixed; those between them are spaced exactly. Head and sill trimmers lie between the jambs; strips along breaks that end a course; strips are cut where they meet these. A piece between supports is a continuous beam under the point load at its worst place.</para>
    /// <para>Validity: a face laid flat; straight edges; strips that are not bent round a bow. Ends that butt against a trimmer, a jamb or a strip along a break count as supported there.</para>
    /// <para>Source: furring-layout, furring-spacing, beams-three-moments (derived); default-strip-section, default-fixing-spacing, default-joint-strip (common practice); default-break-limit, default-point-load, default-deflection-limit (judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The face, a list or an entry is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// FurringFace wall = new(Mm(3400), Mm(994), Mm(475))
    /// {
    ///     Openings = [new(Mm(500), Mm(1400), Mm(230), Mm(610))],
    ///     Ribs = [new(Mm(480), Mm(50)), new(Mm(1420), Mm(50)), new(Mm(1960), Mm(50)), new(Mm(2700), Mm(50))],
    ///     Rails = [new(Mm(20), Mm(40)), new(Mm(200), Mm(40)), new(Mm(642), Mm(40)), new(Mm(974), Mm(40))],
    /// };
    /// FurringPlan plan = FurringLayout.LayOut(wall);
    /// int strips = plan.UprightCount;                     // 9 strips up the girth
    /// double trimmers = plan.TrimmerLength.Millimeters;   // 1800: head and sill, 900 each
    /// </code></example>
    public static FurringPlan LayOut(FurringFace face)
    {
        FaceNumbers numbers = FaceNumbers.Read(face, nameof(face), null)!;
        return new FaceSetOut(numbers, face.BreakStrips).Plan(face);
    }

    /// <summary>All problems with a face; nothing is thrown.</summary>
    /// <param name="face">The face.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(FurringFace face)
    {
        List<InputProblem> problems = [];
        FaceNumbers.Read(face, nameof(face), problems);
        return problems;
    }
}
