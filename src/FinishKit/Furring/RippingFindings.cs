using System.Collections.Generic;

namespace FinishKit;

/// <summary>What a person should know about a plan of ripping.</summary>
internal static class RippingFindings
{
    internal static IReadOnlyList<Finding> Of(RippingNumbers job, RippingWay along, RippingWay across, RippingWay? recommended)
    {
        List<Finding> findings = [];
        if (recommended is not { } way)
        {
            long widest = 0;
            foreach ((long width, long _, int _) in job.Parts)
            {
                widest = System.Math.Max(widest, width);
            }

            double asked = Grid.Millimetres(widest), usable = Grid.Millimetres(System.Math.Max(job.SheetLength, job.SheetWidth) - (2 * job.Trim));
            findings.Add(new Finding(
                "furring-strip-too-wide",
                Severity.Problem,
                $"Strips of {Print.Mm(asked)} are too wide for the sheet, of which {Print.Mm(usable)} can be used the longer way.",
                [new("width", asked, "mm"), new("usable", usable, "mm")],
                Sources.StripRipping));
            return Finding.GravestFirst(findings);
        }

        if (way.Joints > 0)
        {
            findings.Add(new Finding(
                "furring-strip-joints",
                Severity.Caution,
                $"{(way.JoinedStrips == 1 ? "One strip is" : $"{Print.Number(way.JoinedStrips)} strips are")} longer than the sheet lets them be and {(way.JoinedStrips == 1 ? "takes" : "take")} {Print.Number(way.Joints)} butt {(way.Joints == 1 ? "joint" : "joints")}: put each where the strip is backed, or join with a plate.",
                [new("strips", way.JoinedStrips, string.Empty), new("joints", way.Joints, string.Empty)],
                Sources.StripRipping));
        }

        if (!along.Fits || !across.Fits)
        {
            findings.Add(new Finding("furring-one-way-only", Severity.Note, $"A strip is too wide to be ripped {(along.Fits ? "across" : "along")} the sheet.", [], Sources.StripRipping));
        }

        if (way.Direction == RipDirection.AcrossSheet)
        {
            findings.Add(new Finding(
                "furring-ripped-across",
                Severity.Note,
                "The strips run across the sheet's length. Where its face grain runs along that, as it mostly does, they are less stiff than strips along it: check their span with the stiffness across.",
                []));
        }

        if (!way.Proven)
        {
            findings.Add(new Finding(
                "furring-sheets-not-proven",
                Severity.Note,
                $"The plan takes {Print.Number(way.Sheets.Count)} sheets; that fewer would not do is not proven, {Print.Number(way.LeastSheets)} are needed at least.",
                [new("sheets", way.Sheets.Count, string.Empty), new("least-sheets", way.LeastSheets, string.Empty)],
                Sources.StripRipping));
        }

        return Finding.GravestFirst(findings);
    }
}
