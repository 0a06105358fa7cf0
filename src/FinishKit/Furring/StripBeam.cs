using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>A piece as a beam under a point load at its worst place.</summary>
internal readonly struct StripBeam
{
    private StripBeam(double sagShare, double sag, double limit, double stress, double span, int supports, double overhang)
    {
        SagShare = sagShare;
        Sag = sag;
        Limit = limit;
        Stress = stress;
        Span = span;
        Supports = supports;
        Overhang = overhang;
    }

    /// <summary>Greatest ratio of deflection to the limit of its span, and the two.</summary>
    internal double SagShare { get; }

    internal double Sag { get; }

    internal double Limit { get; }

    internal double Stress { get; }

    internal double Span { get; }

    internal int Supports { get; }

    internal double Overhang { get; }

    /// <summary>Fixings and ends that land are the supports, sorted, those nearer than 1 mm to the one before left out.</summary>
    internal static StripBeam Of(FurringPiece piece, in SectionStiffness section, double load)
    {
        List<double> at = [];
        if (piece.StartLands)
        {
            at.Add(0);
        }

        foreach (Hold hold in piece.Holds)
        {
            if (at.Count == 0 || hold.At - at[at.Count - 1] >= 1)
            {
                at.Add(hold.At);
            }
        }

        double run = piece.Run;
        if (piece.EndLands && (at.Count == 0 || run - at[at.Count - 1] >= 1))
        {
            at.Add(run);
        }

        double overhang = at.Count == 0 ? run : Grid.Snap(Math.Max(at[0], run - at[at.Count - 1]));
        if (at.Count < 2)
        {
            return new StripBeam(0, 0, 0, 0, run, at.Count, overhang);
        }

        double[] spans = new double[at.Count - 1];
        for (int i = 0; i < spans.Length; i++)
        {
            spans[i] = at[i + 1] - at[i];
        }

        LoadedSpan[] loaded = LoadedSpan.All(spans);
        double share = -1, sag = 0, limit = 0, moment = 0, span = 0;
        for (int i = 0; i < spans.Length; i++)
        {
            double length = spans[i], allowed = Math.Min(BeamDefaults.DeflectionLimit, length / BeamDefaults.DeflectionRatio);
            SpanWorst worst = WorstLoads.InSpan(default, loaded[i], length, section.Stiffness, i, load, isDisplaced: false);
            if (worst.Sag.Value / allowed > share)
            {
                (share, sag, limit, span) = (worst.Sag.Value / allowed, worst.Sag.Value, allowed, length);
            }

            moment = Math.Max(moment, Math.Max(worst.Moment.Value, WorstLoads.OverSupports(spans, loaded, i, load)));
        }

        return new StripBeam(share, sag, limit, moment / section.Modulus, span, at.Count, overhang);
    }
}
