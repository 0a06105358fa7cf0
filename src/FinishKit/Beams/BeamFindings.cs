using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>What the answers of <see cref="ContinuousBeam"/> have in common: findings, figures, workings, text.</summary>
internal static class BeamFindings
{
    internal static bool IsOverstressed(in SectionStiffness section, double moment) => Math.Abs(moment) / section.Modulus > section.Allowed * (1 + 1e-12);

    internal static IReadOnlyList<Finding> All(in SectionStiffness section, double moment, double[] most, double[] least)
    {
        List<Finding> findings = [];
        double stress = Math.Abs(moment) / section.Modulus, hold = 0;
        if (IsOverstressed(section, moment))
        {
            findings.Add(new Finding(
                "beams-stress-over",
                Severity.Problem,
                $"The bending stress of {Print.Round(stress, 2)} MPa is more than the {Print.Round(section.Allowed, 2)} MPa allowed: a thicker or stronger section, or closer supports.",
                [new("stress", stress, "MPa"), new("stress-allowed", section.Allowed, "MPa")],
                Sources.Beam));
        }

        if (double.IsNaN(section.Allowed))
        {
            findings.Add(new Finding(
                "beams-strength-unknown",
                Severity.Caution,
                $"No bending strength is given, so the stress of {Print.Round(stress, 2)} MPa is not checked.",
                [new("stress", stress, "MPa")],
                Sources.Beam));
        }

        for (int i = 0; i < most.Length; i++)
        {
            hold = Math.Max(hold, Math.Max(-least[i], 0));
        }

        if (hold > 1e-9)
        {
            findings.Add(new Finding(
                "beams-support-holds",
                Severity.Note,
                $"A support has to hold the beam with up to {Print.Round(hold, 2)} N: its fasteners are pulled.",
                [new("pull", hold, "N")],
                Sources.Beam));
        }

        return Finding.GravestFirst(findings);
    }

    internal static Workings Explain(in SectionNumbers section, in SpanState sagSpan, BeamPlace sag, in SpanState momentSpan, BeamPlace worst)
    {
        Recorder trace = new();
        Solve(section, sagSpan, sag.Distance, momentSpan, worst.Distance, trace);
        return trace.ToWorkings("Greatest deflection and stress of a beam");
    }

    private static void Solve<TTrace>(in SectionNumbers section, in SpanState sagSpan, double sagPlace, in SpanState momentSpan, double momentPlace, TTrace trace)
        where TTrace : struct, ITrace
    {
        SectionStiffness numbers = section.Solve(trace);
        sagSpan.Sag(sagPlace, trace);
        double modulus = numbers.Modulus, elasticity = numbers.Elasticity, inertia = numbers.Inertia;
        double moment = momentSpan.Moment(momentPlace, trace);
        trace.Step("sigma", "stress", Math.Abs(moment) / modulus, "MPa", Sources.Beam);
        trace.Step("kappa", "curvature", moment / (elasticity * inertia), "1/mm", Sources.Beam);
    }

    internal static IReadOnlyList<Figure> Figures(in SectionStiffness section, BeamPlace sag, Length sagPlace, BeamPlace moment, Length momentPlace, double[] most, double[] least)
    {
        List<Figure> figures =
        [
            new("deflection", Grid.Snap(sag.Value), "mm"),
            new("deflection-place", sagPlace.Millimeters, "mm"),
            new("moment", moment.Value, "N mm"),
            new("stress", Math.Abs(moment.Value) / section.Modulus, "MPa"),
            new("stress-place", momentPlace.Millimeters, "mm"),
            new("curvature", moment.Value / section.Stiffness, "1/mm"),
        ];
        if (!double.IsNaN(section.Allowed))
        {
            figures.Add(new Figure("stress-allowed", section.Allowed, "MPa"));
        }

        double greatest = double.NegativeInfinity, smallest = double.PositiveInfinity;
        for (int i = 0; i < most.Length; i++)
        {
            greatest = Math.Max(greatest, most[i]);
            smallest = Math.Min(smallest, least[i]);
        }

        figures.Add(new Figure("greatest-reaction", greatest, "N"));
        figures.Add(new Figure("least-reaction", smallest, "N"));
        IReadOnlyList<Finding> findings = All(section, moment.Value, most, least);
        figures.Add(new Figure("worst-severity", findings.Count == 0 ? 0 : (int)findings[0].Severity, string.Empty));
        return figures;
    }

    internal static string Text(in SectionStiffness section, BeamPlace sag, Length sagPlace, BeamPlace moment, Length momentPlace) =>
        $"deflects {Print.Mm(Grid.Snap(sag.Value))} at {Print.Mm(sagPlace.Millimeters)}, stress {Print.Round(Math.Abs(moment.Value) / section.Modulus, 3)} MPa at {Print.Mm(momentPlace.Millimeters)}";
}
