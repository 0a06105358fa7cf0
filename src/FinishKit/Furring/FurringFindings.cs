using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>What a person should know about the strips of a face.</summary>
internal static class FurringFindings
{
    internal static IReadOnlyList<Finding> Of(FaceNumbers face, FurringPlan plan, List<FaceNote> notes)
    {
        List<Finding> findings = [.. plan.Spacing.Findings];
        SectionStiffness whole = face.Section.Solve(default(Silent));
        for (int i = 0; i < plan.Pieces.Count; i++)
        {
            FurringPiece piece = plan.Pieces[i];
            SectionStiffness section = piece.WidthMm == face.Section.Width ? whole
                : new SectionStiffness(whole.Elasticity, whole.Inertia * piece.WidthMm / face.Section.Width, whole.Modulus * piece.WidthMm / face.Section.Width, whole.Allowed);
            StripBeam beam = StripBeam.Of(piece, section, face.Load);
            AddBeam(findings, face, piece, i, beam, section);
        }

        foreach (FaceNote note in notes)
        {
            (double u, double v) = face.IsTurned ? (note.T, note.S) : (note.S, note.T);
            findings.Add(note.Kind == FaceNoteKind.Gap
                ? new Finding("furring-gap-narrow", Severity.Caution, $"Beside an opening there are only {Print.Mm(note.Size)} at u {Print.Mm(u)}, v {Print.Mm(v)}: no room for two strips side by side. One strip takes a gap between straight edges; at a leaning edge the strip beside the opening is cut where it meets the one along the edge.", [new("gap", note.Size, "mm"), new("u", u, "mm"), new("v", v, "mm")], Sources.FurringLayout)
                : new Finding("furring-trimmer-narrowed", Severity.Caution, $"The trimmer at u {Print.Mm(u)}, v {Print.Mm(v)} has room for {Print.Mm(note.Size)} only and is ripped to that.", [new("width", note.Size, "mm"), new("u", u, "mm"), new("v", v, "mm")], Sources.FurringLayout));
        }

        FaceAudit.Add(findings, face, plan.Pieces);
        if (double.IsNaN(whole.Allowed))
        {
            findings.Add(new Finding("furring-strength-unknown", Severity.Caution, "No bending strength is given for the strips: their stress is not checked.", [], Sources.FurringLayout));
        }

        findings.Add(new Finding(
            "furring-look-behind",
            Severity.Note,
            "The figures know only what was entered. Look behind every strip and fixing for wires, pipes, fuel and brake lines; keep curtain airbags along the roof rail, their covers and seat-belt anchorages free.",
            [],
            Sources.FurringLayout));
        return Finding.GravestFirst(findings);
    }

    private static void AddBeam(List<Finding> findings, FaceNumbers face, FurringPiece piece, int index, in StripBeam beam, in SectionStiffness section)
    {
        string where = $"The piece {piece}";
        Figure number = new("piece", index, string.Empty);
        bool isHeld = piece.Holds.Count > 0;
        bool isOnMember = piece.BearsAlong is not null;
        if (beam.Supports < 2 && !isOnMember)
        {
            findings.Add(new Finding("furring-strip-unsupported", Severity.Problem, $"{where} has {(beam.Supports == 0 ? "no support" : "one support only")}: neither a member along it nor two across.", [number, new("supports", beam.Supports, string.Empty)], Sources.FurringLayout));
            return;
        }

        if (!isHeld)
        {
            findings.Add(new Finding("furring-nothing-behind", Severity.Caution, $"{where} has no rib or rail behind it: only the strips at its ends hold it, by their joints.", [number], Sources.FurringLayout));
        }

        if (beam.Overhang > FurringDefaults.Overhang)
        {
            findings.Add(new Finding("furring-strip-overhang", Severity.Caution, $"{where} stands {Print.Mm(beam.Overhang)} over its last support, more than {Print.Mm(FurringDefaults.Overhang)}.", [number, new("overhang", beam.Overhang, "mm"), new("limit", FurringDefaults.Overhang, "mm")], FurringDefaults.OverhangSource));
        }

        if (beam.Supports < 2)
        {
            return;
        }

        double thickness = face.Section.Thickness;
        if (Grid.Snap(beam.Sag) > Grid.Snap(beam.Limit))
        {
            double needed = Grid.SnapUp(thickness * Math.Pow(beam.SagShare, 1.0 / 3));
            findings.Add(new Finding(
                "furring-strip-too-flexible",
                Severity.Problem,
                $"{where} gives by {Print.Mm(beam.Sag)} under {Print.Number(face.Load)} N in a span of {Print.Mm(beam.Span)}, more than {Print.Mm(beam.Limit)}. Strips of {Print.MmUp(needed)} of the same material would do, or a support within the span.",
                [number, new("deflection", beam.Sag, "mm"), new("limit", beam.Limit, "mm"), new("span", beam.Span, "mm"), new("thickness-needed", needed, "mm")],
                BeamDefaults.DeflectionSource));
        }

        if (beam.Stress > section.Allowed * (1 + 1e-12))
        {
            double needed = Grid.SnapUp(thickness * Math.Sqrt(beam.Stress / section.Allowed));
            findings.Add(new Finding(
                "furring-strip-too-weak",
                Severity.Problem,
                $"{where} is stressed to {Print.Round(beam.Stress, 2)} MPa under {Print.Number(face.Load)} N, more than the {Print.Round(section.Allowed, 2)} MPa allowed. Strips of {Print.MmUp(needed)} of the same material would do, or a support within the span.",
                [number, new("stress", beam.Stress, "MPa"), new("stress-allowed", section.Allowed, "MPa"), new("thickness-needed", needed, "mm")],
                BeamDefaults.StrengthSource));
        }
    }
}
