using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>One span of a <see cref="BeamLine"/> with the moments and displacements at its ends. Places are distances from its left support.</summary>
internal readonly struct SpanState(double length, double stiffness, double uniform, PointOnSpan[] points, int span)
{
    private const int Halvings = 200;

    internal double Length => length;

    internal double LeftMoment { get; init; }

    internal double RightMoment { get; init; }

    internal double LeftDisplacement { get; init; }

    internal double RightDisplacement { get; init; }

    /// <summary>Deflection from the line the beam had before anything was displaced or loaded.</summary>
    internal double Deflection(double x) => LeftDisplacement + ((RightDisplacement - LeftDisplacement) * x / length) + Sag(x);

    /// <summary>How far the beam stands off the straight line between the span's two supports.</summary>
    internal double Sag(double x) => Sag(x, default(Silent));

    /// <summary>The one formula body of the sag, for the numbers and for the workings.</summary>
    internal double Sag<TTrace>(double x, TTrace trace)
        where TTrace : struct, ITrace
    {
        double left = LeftMoment, right = RightMoment;
        GiveSpan(left, right, x, trace);
        double rest = trace.Step("x_r", nameof(rest), length - x, "mm", Sources.Beam);
        double sum = trace.Step("S_M", nameof(sum), x * rest * ((left * (length + rest)) + (right * (length + x))) / (6 * length), "N mm3", Sources.Beam);
        if (uniform != 0)
        {
            trace.Given("w", uniform, "N/mm", Sources.Given);
            sum = trace.Step("S_w", nameof(sum), sum + (uniform * x * rest * ((length * length) + (x * rest)) / 24), "N mm3", Sources.Beam);
        }

        int index = 0;
        foreach (PointOnSpan point in points)
        {
            if (point.Span == span)
            {
                double load = point.Load, a = point.Distance;
                trace.Given("P", load, "N", Sources.Given, ++index);
                trace.Given("a", a, "mm", Sources.Given, index);
                double b = trace.Step("b", nameof(b), length - a, "mm", Sources.Beam, index);
                sum = x <= a
                    ? trace.Step("S_P", nameof(sum), sum + (load * b * x * ((length * length) - (b * b) - (x * x)) / (6 * length)), "N mm3", Sources.Beam, index)
                    : trace.Step("S_P", nameof(sum), sum + (load * a * rest * ((length * length) - (a * a) - (rest * rest)) / (6 * length)), "N mm3", Sources.Beam, index);
            }
        }

        trace.Given("EI", stiffness, "N mm2", Sources.Beam, meaning: "stiffness");
        return trace.Step("d", "deflection", sum / stiffness, "mm", Sources.Beam);
    }

    internal double Moment(double x) => Moment(x, default(Silent));

    /// <summary>The one formula body of the moment, for the numbers and for the workings.</summary>
    internal double Moment<TTrace>(double x, TTrace trace)
        where TTrace : struct, ITrace
    {
        double left = LeftMoment, right = RightMoment;
        GiveSpan(left, right, x, trace);
        double rest = trace.Step("x_r", nameof(rest), length - x, "mm", Sources.Beam);
        double moment = trace.Step("M", nameof(moment), ((left * rest) + (right * x)) / length, "N mm", Sources.Beam);
        if (uniform != 0)
        {
            trace.Given("w", uniform, "N/mm", Sources.Given);
            moment = trace.Step("M_w", nameof(moment), moment + (uniform * x * rest / 2), "N mm", Sources.Beam);
        }

        int index = 0;
        foreach (PointOnSpan point in points)
        {
            if (point.Span == span)
            {
                double load = point.Load, a = point.Distance;
                trace.Given("P", load, "N", Sources.Given, ++index);
                trace.Given("a", a, "mm", Sources.Given, index);
                moment = x <= a
                    ? trace.Step("M_P", nameof(moment), moment + (load * (length - a) * x / length), "N mm", Sources.Beam, index)
                    : trace.Step("M_P", nameof(moment), moment + (load * a * rest / length), "N mm", Sources.Beam, index);
            }
        }

        return moment;
    }

    /// <summary>Slope of <see cref="Sag"/>.</summary>
    internal double Slope(double x)
    {
        double rest = length - x;
        double square = length * length;
        double slope = ((LeftMoment * ((2 * square) - (6 * length * x) + (3 * x * x))) + (RightMoment * (square - (3 * x * x)))) / (6 * length);
        slope += uniform * ((square * length) - (6 * length * x * x) + (4 * x * x * x)) / 24;
        foreach (PointOnSpan point in points)
        {
            if (point.Span == span)
            {
                double a = point.Distance, b = length - a;
                slope += x <= a
                    ? point.Load * b * (square - (b * b) - (3 * x * x)) / (6 * length)
                    : -point.Load * a * (square - (a * a) - (3 * rest * rest)) / (6 * length);
            }
        }

        return slope / stiffness;
    }

    /// <summary>The places of the point loads in order, and the right support: between them the moment is one parabola.</summary>
    internal List<double> Breaks()
    {
        List<double> breaks = [];
        foreach (PointOnSpan point in points)
        {
            if (point.Span == span)
            {
                breaks.Add(point.Distance);
            }
        }

        breaks.Add(length);
        breaks.Sort();
        return breaks;
    }

    /// <summary>The greatest moment between two breaks, of either sign.</summary>
    internal BeamPlace GreatestMoment(int place, double from, double to)
    {
        BeamPlace worst = BeamPlace.Greater(new BeamPlace(place, from, Moment(from)), new BeamPlace(place, to, Moment(to)));
        if (uniform == 0 || to <= from)
        {
            return worst;
        }

        // A parabola through its ends and its middle; its top lies where the chord's slope is that of the parabola.
        double top = ((from + to) / 2) + ((Moment(to) - Moment(from)) / ((to - from) * uniform));
        return top > from && top < to ? BeamPlace.Greater(worst, new BeamPlace(place, top, Moment(top))) : worst;
    }

    /// <summary>The greatest sag between two breaks, of either sign.</summary>
    internal BeamPlace GreatestSag(int place, double from, double to)
    {
        BeamPlace worst = BeamPlace.Greater(new BeamPlace(place, from, Sag(from)), new BeamPlace(place, to, Sag(to)));
        (double first, double second, double third) = Level(from, to, 0);
        worst = At(worst, place, first);
        worst = At(worst, place, second);
        return At(worst, place, third);
    }

    /// <summary>
    /// Where between two breaks the slope of the sag has a value; NaN for those there are not. Between zeros of the moment the slope
    /// only rises or only falls, so each of the three pieces holds one place at most.
    /// </summary>
    internal (double First, double Second, double Third) Level(double from, double to, double slope)
    {
        (double first, double second) = ZerosOfMoment(from, to);
        return (PlaceOfSlope(from, first, slope), PlaceOfSlope(first, second, slope), PlaceOfSlope(second, to, slope));
    }

    private void GiveSpan<TTrace>(double left, double right, double x, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("L", length, "mm", Sources.Given, meaning: "span");
        trace.Given("M_1", left, "N mm", Sources.Beam, meaning: "moment over the support before, from the three-moment equations");
        trace.Given("M_2", right, "N mm", Sources.Beam, meaning: "moment over the support after, from the three-moment equations");
        trace.Given("x", x, "mm", Sources.Beam, meaning: "place in the span");
    }

    private BeamPlace At(BeamPlace worst, int place, double x) => double.IsNaN(x) ? worst : BeamPlace.Greater(worst, new BeamPlace(place, x, Sag(x)));

    private (double First, double Second) ZerosOfMoment(double from, double to)
    {
        double start = Moment(from), end = Moment(to), width = to - from;
        if (width <= 0)
        {
            return (to, to);
        }

        // M(from + z width) = start + z (end - start) + q width² z (1 - z)/2
        double bow = uniform * width * width / 2, b = end - start + bow;
        if (bow == 0)
        {
            double only = b == 0 ? 1 : Inside(-start / b);
            return (from + (only * width), to);
        }

        double root = (b * b) + (4 * bow * start);
        if (root <= 0)
        {
            return (to, to);
        }

        root = Math.Sqrt(root);
        double one = Inside((b - root) / (2 * bow)), other = Inside((b + root) / (2 * bow));
        return (from + (Math.Min(one, other) * width), from + (Math.Max(one, other) * width));
    }

    private static double Inside(double share) => share > 0 && share < 1 ? share : 1;

    private double PlaceOfSlope(double left, double right, double slope)
    {
        if (!(right > left))
        {
            return double.NaN;
        }

        double low = left, high = right;
        bool rises = Slope(low) < slope;
        if (rises == (Slope(high) < slope))
        {
            return double.NaN;
        }

        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            if (middle <= low || middle >= high)
            {
                break;
            }

            if ((Slope(middle) < slope) == rises)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }
}
