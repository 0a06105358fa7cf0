using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>A piece as a beam under a point load at its worst place.</summary>
internal readonly struct StripBeam
{
    private const int Samples = 24;
    private const int Refinements = 40;

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
            double worst = Sagging(loaded[i], length, load, WorstPlace(loaded[i], length, load, Sagging)) / section.Stiffness;
            if (worst / allowed > share)
            {
                (share, sag, limit, span) = (worst / allowed, worst, allowed, length);
            }

            moment = Math.Max(moment, Bending(loaded[i], length, load, WorstPlace(loaded[i], length, load, Bending)));
        }

        return new StripBeam(share, sag, limit, moment / section.Modulus, span, at.Count, overhang);
    }

    /// <summary>Deflection under the load times E I: on a straight beam no other place deflects more.</summary>
    private static double Sagging(LoadedSpan span, double length, double load, double a)
    {
        double b = length - a;
        (double left, double right) = span.EndMoments(a, load);
        return ((load * a * a * b * b / 3) + (a * b * ((left * (length + b)) + (right * (length + a))) / 6)) / length;
    }

    /// <summary>The greatest moment with the load there: under it, or over a support beside it.</summary>
    private static double Bending(LoadedSpan span, double length, double load, double a)
    {
        double b = length - a;
        (double left, double right) = span.EndMoments(a, load);
        double under = ((load * a * b) + (left * b) + (right * a)) / length;
        return Math.Max(under, Math.Max(-left, -right));
    }

    private static double WorstPlace(LoadedSpan span, double length, double load, Func<LoadedSpan, double, double, double, double> size)
    {
        int best = 1;
        double most = double.NegativeInfinity;
        for (int i = 1; i < Samples; i++)
        {
            double value = size(span, length, load, length * i / Samples);
            if (value > most)
            {
                (best, most) = (i, value);
            }
        }

        double low = length * (best - 1) / Samples, high = length * (best + 1) / Samples;
        for (int i = 0; i < Refinements; i++)
        {
            double third = (high - low) / 3, one = low + third, other = high - third;
            if (size(span, length, load, one) >= size(span, length, load, other))
            {
                high = other;
            }
            else
            {
                low = one;
            }
        }

        return (low + high) / 2;
    }
}
