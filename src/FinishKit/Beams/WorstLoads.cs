using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>The worst a moving point load, or a uniform load on any set of spans, can do to a beam.</summary>
internal static class WorstLoads
{
    private const int Samples = 48;
    private const int GoldenSteps = 90;

    /// <summary>A point load anywhere on the beam.</summary>
    internal static PointExtremes Point(double[] spans, double stiffness, double[]? displacements, double load)
    {
        BeamLine still = new(spans, stiffness, displacements);
        bool isDisplaced = still.GreatestMoment().Value != 0;
        LoadedSpan[] loaded = LoadedSpan.All(spans);
        BeamPlace sag = still.GreatestSag(), moment = still.GreatestMoment();

        // Over the first support a load does nothing: it stands there where it can only relieve.
        double sagLoad = 0, momentLoad = 0;
        int sagSpan = 0, momentSpan = 0;
        for (int i = 0; i < spans.Length; i++)
        {
            SpanWorst worst = InSpan(still.Span(i), loaded[i], spans[i], stiffness, i, load, isDisplaced);
            if (Math.Abs(worst.Sag.Value) > Math.Abs(sag.Value))
            {
                (sag, sagLoad, sagSpan) = (worst.Sag, worst.SagLoad, i);
            }

            if (Math.Abs(worst.Moment.Value) > Math.Abs(moment.Value))
            {
                (moment, momentLoad, momentSpan) = (worst.Moment, worst.Moment.Distance, i);
            }
        }

        // A load moves a span it is not in by the moment at the end of its own span alone: most where that moment is greatest.
        for (int span = 0; isDisplaced && span < spans.Length; span++)
        {
            foreach (double at in new[] { WorstForLeft(spans, loaded, span, load), WorstForRight(spans, loaded, span, load) })
            {
                BeamPlace worst = new BeamLine(spans, stiffness, displacements, null, [new PointOnSpan(span, at, load)]).GreatestSag();
                if (Math.Abs(worst.Value) > Math.Abs(sag.Value))
                {
                    (sag, sagLoad, sagSpan) = (worst, at, span);
                }
            }
        }

        WorstSupport(spans, still, loaded, load, ref moment, ref momentLoad, ref momentSpan);
        (double[] most, double[] least) = Reactions(spans, still, load);
        return new PointExtremes(sag, sagSpan, sagLoad, moment, momentSpan, momentLoad, most, least);
    }

    /// <summary>A point load anywhere in one span: what it does there, besides what bends the span already.</summary>
    internal static SpanWorst InSpan(SpanState before, LoadedSpan loaded, double length, double stiffness, int span, double load, bool isDisplaced)
    {
        PointOnSpan[] one = new PointOnSpan[1];
        double sagLoad = Worst(a => Math.Abs(SagOf(a).Value), length), momentLoad = Worst(a => Math.Abs(With(a).Moment(a)), length);

        // The moment at a place is worst with the load there.
        return new SpanWorst(SagOf(sagLoad), sagLoad, new BeamPlace(span, momentLoad, With(momentLoad).Moment(momentLoad)));

        // A beam that is straight before it is loaded deflects most under the load itself: its influence function is positive
        // definite, so no value off the diagonal exceeds the greatest on it. One that is bent already may deflect most elsewhere.
        BeamPlace SagOf(double a)
        {
            SpanState state = With(a);
            return isDisplaced ? BeamPlace.Greater(state.GreatestSag(span, 0, a), state.GreatestSag(span, a, length)) : new BeamPlace(span, a, state.Sag(a));
        }

        SpanState With(double a)
        {
            one[0] = new PointOnSpan(span, a, load);
            (double left, double right) = loaded.EndMoments(a, load);
            return new SpanState(length, stiffness, 0, one, span)
            {
                LeftMoment = before.LeftMoment + left,
                RightMoment = before.RightMoment + right,
                LeftDisplacement = before.LeftDisplacement,
                RightDisplacement = before.RightDisplacement,
            };
        }
    }

    /// <summary>The greatest moment, without sign, over the supports beside a span with a point load anywhere in it, on a straight beam.</summary>
    internal static double OverSupports(double[] spans, LoadedSpan[] loaded, int span, double load) => Math.Max(
        Math.Abs(loaded[span].EndMoments(WorstForLeft(spans, loaded, span, load), load).Left),
        Math.Abs(loaded[span].EndMoments(WorstForRight(spans, loaded, span, load), load).Right));

    /// <summary>A uniform load on whatever set of spans is worst, another set for each answer.</summary>
    internal static UniformExtremes Uniform(double[] spans, double stiffness, double[]? displacements, double load)
    {
        int count = spans.Length;
        BeamLine still = new(spans, stiffness, displacements);
        BeamLine[] alone = new BeamLine[count];
        for (int i = 0; i < count; i++)
        {
            double[] uniform = new double[count];
            uniform[i] = load;
            alone[i] = new BeamLine(spans, stiffness, null, uniform);
        }

        BeamPlace sag = still.GreatestSag(), moment = still.GreatestMoment();
        bool[] sagSet = new bool[count], momentSet = new bool[count];
        for (int span = 0; span < count; span++)
        {
            // The load of another span bends this one wholly to one side: its end moments differ in sign, and the smaller is at most half the greater.
            for (int side = 1; side >= -1; side -= 2)
            {
                bool[] set = new bool[count];
                double[] uniform = new double[count];
                for (int i = 0; i < count; i++)
                {
                    set[i] = side * alone[i].Span(span).Sag(spans[span] / 2) > 0;
                    uniform[i] = set[i] ? load : 0;
                }

                BeamPlace worst = new BeamLine(spans, stiffness, displacements, uniform).Span(span).GreatestSag(span, 0, spans[span]);
                if (Math.Abs(worst.Value) > Math.Abs(sag.Value))
                {
                    (sag, sagSet) = (worst, set);
                }
            }

            Sagging(span, spans, still, alone, ref moment, ref momentSet);
        }

        double[] most = [.. still.Reactions], least = [.. still.Reactions];
        for (int support = 0; support <= count; support++)
        {
            for (int side = 1; side >= -1; side -= 2)
            {
                double sum = still.Moments[support];
                bool[] set = new bool[count];
                for (int i = 0; i < count; i++)
                {
                    double part = alone[i].Moments[support];
                    set[i] = side * part > 0;
                    sum += set[i] ? part : 0;
                }

                if (Math.Abs(sum) > Math.Abs(moment.Value))
                {
                    (moment, momentSet) = (At(support, spans, sum), set);
                }
            }

            foreach (BeamLine beam in alone)
            {
                double part = beam.Reactions[support];
                most[support] += Math.Max(0, part);
                least[support] += Math.Min(0, part);
            }
        }

        return new UniformExtremes(sag, sagSet, moment, momentSet, most, least);
    }

    private static BeamPlace At(int support, double[] spans, double value) => support < spans.Length ? new BeamPlace(support, 0, value) : new BeamPlace(support - 1, spans[support - 1], value);

    /// <summary>
    /// The greatest sagging moment inside a span: its own load gives a parabola, every other span a straight line of which only the
    /// part that adds is taken. Between the places where those lines change sign the sum is one parabola.
    /// </summary>
    private static void Sagging(int span, double[] spans, BeamLine still, BeamLine[] alone, ref BeamPlace moment, ref bool[] momentSet)
    {
        double length = spans[span];
        List<double> places = [0, length];
        for (int i = 0; i < alone.Length; i++)
        {
            double left = alone[i].Moments[span], right = alone[i].Moments[span + 1];
            if (i != span && left * right < 0)
            {
                places.Add(length * left / (left - right));
            }
        }

        places.Sort();
        double sign = 1;
        for (int pass = 0; pass < 2; pass++, sign = -1)
        {
            for (int piece = 1; piece < places.Count; piece++)
            {
                double from = places[piece - 1], to = places[piece], middle = (from + to) / 2;
                bool[] set = new bool[alone.Length];
                double atFrom = still.Span(span).Moment(from), atMiddle = still.Span(span).Moment(middle), atTo = still.Span(span).Moment(to);
                for (int i = 0; i < alone.Length; i++)
                {
                    SpanState state = alone[i].Span(span);
                    set[i] = sign * state.Moment(middle) > 0;
                    if (set[i])
                    {
                        atFrom += state.Moment(from);
                        atMiddle += state.Moment(middle);
                        atTo += state.Moment(to);
                    }
                }

                double bow = (2 * atMiddle) - atFrom - atTo, share = bow == 0 ? 0.5 : 0.5 + ((atTo - atFrom) / (4 * bow));
                share = Math.Min(1, Math.Max(0, share));
                double value = atFrom + (share * (atTo - atFrom)) + (2 * bow * share * (1 - share));
                if (Math.Abs(value) > Math.Abs(moment.Value))
                {
                    (moment, momentSet) = (new BeamPlace(span, from + (share * (to - from)), value), set);
                }
            }
        }
    }

    private static double WorstForLeft(double[] spans, LoadedSpan[] loaded, int span, double load) => Worst(a => Math.Abs(loaded[span].EndMoments(a, load).Left), spans[span]);

    private static double WorstForRight(double[] spans, LoadedSpan[] loaded, int span, double load) => Worst(a => Math.Abs(loaded[span].EndMoments(a, load).Right), spans[span]);

    /// <summary>Moments over the supports: the load in a span beside gives the most of one sign, spans further on carry over with changing sign.</summary>
    private static void WorstSupport(double[] spans, BeamLine still, LoadedSpan[] loaded, double load, ref BeamPlace moment, ref double momentLoad, ref int momentSpan)
    {
        int count = spans.Length;
        for (int span = 0; span < count; span++)
        {
            double atLeft = WorstForLeft(spans, loaded, span, load), atRight = WorstForRight(spans, loaded, span, load);
            double carried = loaded[span].EndMoments(atLeft, load).Left;
            for (int support = span; support > 0 && carried != 0; support--)
            {
                Take(support, carried, atLeft, ref moment, ref momentLoad, ref momentSpan);
                carried *= -loaded[support - 1].CarryLeft;
            }

            carried = loaded[span].EndMoments(atRight, load).Right;
            for (int support = span + 1; support < count && carried != 0; support++)
            {
                Take(support, carried, atRight, ref moment, ref momentLoad, ref momentSpan);
                carried *= -loaded[support].CarryRight;
            }

            void Take(int support, double part, double at, ref BeamPlace worst, ref double place, ref int worstSpan)
            {
                double sum = still.Moments[support] + part;
                if (Math.Abs(sum) > Math.Abs(worst.Value))
                {
                    (worst, place, worstSpan) = (At(support, spans, sum), at, span);
                }
            }
        }
    }

    /// <summary>The influence line of a reaction is the shape of the beam when that support is lowered by one.</summary>
    private static (double[] Most, double[] Least) Reactions(double[] spans, BeamLine still, double load)
    {
        double[] most = new double[spans.Length + 1], least = new double[spans.Length + 1];
        for (int support = 0; support <= spans.Length; support++)
        {
            double[] lowered = new double[spans.Length + 1];
            lowered[support] = 1;
            BeamLine shape = new(spans, 1, lowered);
            double up = 0, down = 0;
            for (int span = 0; span < spans.Length; span++)
            {
                SpanState state = shape.Span(span);
                double slope = (state.LeftDisplacement - state.RightDisplacement) / state.Length;
                (double first, double second, double third) = state.Level(0, state.Length, slope);
                foreach (double x in new[] { 0, state.Length, first, second, third })
                {
                    if (!double.IsNaN(x))
                    {
                        up = Math.Max(up, load * state.Deflection(x));
                        down = Math.Min(down, load * state.Deflection(x));
                    }
                }
            }

            most[support] = still.Reactions[support] + up;
            least[support] = still.Reactions[support] + down;
        }

        return (most, least);
    }

    /// <summary>Where a function of the load's place in a span is greatest: the best of evenly spread places, then golden section about it.</summary>
    private static double Worst(Func<double, double> size, double length)
    {
        int best = 1;
        double most = double.NegativeInfinity;
        for (int i = 1; i < Samples; i++)
        {
            double value = size(length * i / Samples);
            if (value > most)
            {
                (best, most) = (i, value);
            }
        }

        const double Ratio = 0.6180339887498949;
        double low = length * (best - 1) / Samples, high = length * (best + 1) / Samples;
        double one = high - (Ratio * (high - low)), other = low + (Ratio * (high - low));
        double atOne = size(one), atOther = size(other);
        for (int i = 0; i < GoldenSteps && one < other; i++)
        {
            if (atOne >= atOther)
            {
                (high, other, atOther) = (other, one, atOne);
                one = high - (Ratio * (high - low));
                atOne = size(one);
            }
            else
            {
                (low, one, atOne) = (one, other, atOther);
                other = low + (Ratio * (high - low));
                atOther = size(other);
            }
        }

        return (low + high) / 2;
    }
}

/// <summary>What a load in one span does to the moments at its ends, the rest of the beam unloaded, and how much of a moment the next support takes over.</summary>
internal readonly struct LoadedSpan(double length, double leftDiagonal, double rightDiagonal)
{
    /// <summary>Share of the moment at this span's right support that its left one takes over, with the other sign; 0 where the left one is the beam's end.</summary>
    internal double CarryLeft => double.IsInfinity(leftDiagonal) ? 0 : length / leftDiagonal;

    /// <summary>Share of the moment at this span's left support that its right one takes over, with the other sign.</summary>
    internal double CarryRight => double.IsInfinity(rightDiagonal) ? 0 : length / rightDiagonal;

    internal static LoadedSpan[] All(double[] spans)
    {
        int count = spans.Length;
        double[] left = new double[count], right = new double[count];
        for (int i = 0; i < count; i++)
        {
            left[i] = i == 0 ? double.PositiveInfinity : (2 * (spans[i - 1] + spans[i])) - (spans[i - 1] * spans[i - 1] / left[i - 1]);
        }

        for (int i = count - 1; i >= 0; i--)
        {
            right[i] = i == count - 1 ? double.PositiveInfinity : (2 * (spans[i] + spans[i + 1])) - (spans[i + 1] * spans[i + 1] / right[i + 1]);
        }

        LoadedSpan[] all = new LoadedSpan[count];
        for (int i = 0; i < count; i++)
        {
            all[i] = new LoadedSpan(spans[i], left[i], right[i]);
        }

        return all;
    }

    /// <summary>Moments at the ends of the span with a load in it, at a distance from its left support.</summary>
    internal (double Left, double Right) EndMoments(double a, double load)
    {
        double b = length - a;
        double atLeft = load * a * b * (length + b) / length, atRight = load * a * b * (length + a) / length;
        if (double.IsInfinity(leftDiagonal))
        {
            return (0, double.IsInfinity(rightDiagonal) ? 0 : -atRight / rightDiagonal);
        }

        if (double.IsInfinity(rightDiagonal))
        {
            return (-atLeft / leftDiagonal, 0);
        }

        double determinant = (leftDiagonal * rightDiagonal) - (length * length);
        return (-((rightDiagonal * atLeft) - (length * atRight)) / determinant, -((leftDiagonal * atRight) - (length * atLeft)) / determinant);
    }
}

/// <summary>The worst of a point load in one span: the sag with the place of the load, and the moment, whose place is that of the load.</summary>
internal readonly struct SpanWorst(BeamPlace sag, double sagLoad, BeamPlace moment)
{
    internal BeamPlace Sag { get; } = sag;

    internal double SagLoad { get; } = sagLoad;

    internal BeamPlace Moment { get; } = moment;
}

/// <summary>The worst of a point load: each answer with the span and the place of the load that gives it.</summary>
internal sealed class PointExtremes(BeamPlace sag, int sagSpan, double sagLoad, BeamPlace moment, int momentSpan, double momentLoad, double[] most, double[] least)
{
    internal BeamPlace Sag { get; } = sag;

    internal int SagSpan { get; } = sagSpan;

    internal double SagLoad { get; } = sagLoad;

    internal BeamPlace Moment { get; } = moment;

    internal int MomentSpan { get; } = momentSpan;

    internal double MomentLoad { get; } = momentLoad;

    internal double[] Most { get; } = most;

    internal double[] Least { get; } = least;
}

/// <summary>The worst of a uniform load: each answer with the set of spans that gives it.</summary>
internal sealed class UniformExtremes(BeamPlace sag, bool[] sagSet, BeamPlace moment, bool[] momentSet, double[] most, double[] least)
{
    internal BeamPlace Sag { get; } = sag;

    internal bool[] SagSet { get; } = sagSet;

    internal BeamPlace Moment { get; } = moment;

    internal bool[] MomentSet { get; } = momentSet;

    internal double[] Most { get; } = most;

    internal double[] Least { get; } = least;
}
