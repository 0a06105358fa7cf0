using System;

namespace FinishKit;

/// <summary>
/// A beam of one stiffness that passes over pinned supports which hold both ways and may be displaced; its ends do not overhang.
/// Solved by the three-moment equations. An overhang may be put in as the moment that it brings over its support.
/// </summary>
/// <remarks>
/// Signs: loads, deflections and displacements of supports are positive one way (for a wall: outward, from the room to the shell);
/// a moment is positive where it bows the beam that way between its supports (sagging); a reaction is positive where the support
/// pushes back against a positive load, negative where it has to hold the beam. Spans and places in mm, loads in N and N/mm,
/// moments in N mm, stiffness E I in N mm².
/// </remarks>
internal sealed class BeamLine
{
    private readonly double[] _spans;
    private readonly double[] _displacements;
    private readonly double[] _uniform;
    private readonly PointOnSpan[] _points;

    /// <summary>Solves the beam.</summary>
    /// <param name="spans">At least one span, each more than 0.</param>
    /// <param name="stiffness">E I.</param>
    /// <param name="displacements">Displacement of each support, one more than the spans; null for none.</param>
    /// <param name="uniform">Load per length of each span; null for none.</param>
    /// <param name="points">Point loads; null for none.</param>
    /// <param name="ends">Moment over the first and the last support, sagging positive; what pushes on an overhang adds to their reactions besides.</param>
    internal BeamLine(double[] spans, double stiffness, double[]? displacements = null, double[]? uniform = null, PointOnSpan[]? points = null, (double First, double Last) ends = default)
    {
        _spans = spans;
        _displacements = displacements ?? new double[spans.Length + 1];
        _uniform = uniform ?? new double[spans.Length];
        _points = points ?? [];
        Stiffness = stiffness;
        Moments = SupportMoments(ends.First, ends.Last);
        Reactions = SupportReactions();
    }

    internal double Stiffness { get; }

    internal int SpanCount => _spans.Length;

    /// <summary>Moment over each support; over the two ends as given, else 0.</summary>
    internal double[] Moments { get; }

    /// <summary>Reaction of each support, positive where it pushes back, negative where it holds.</summary>
    internal double[] Reactions { get; }

    internal SpanState Span(int span) => new(_spans[span], Stiffness, _uniform[span], _points, span)
    {
        LeftMoment = Moments[span],
        RightMoment = Moments[span + 1],
        LeftDisplacement = _displacements[span],
        RightDisplacement = _displacements[span + 1],
    };

    /// <summary>The place where the beam stands off furthest from the straight line between the two supports of its span.</summary>
    internal BeamPlace GreatestSag()
    {
        BeamPlace worst = default;
        for (int span = 0; span < _spans.Length; span++)
        {
            SpanState state = Span(span);
            double from = 0;
            foreach (double to in state.Breaks())
            {
                worst = BeamPlace.Greater(worst, state.GreatestSag(span, from, to));
                from = to;
            }
        }

        return worst;
    }

    /// <summary>The place of the greatest moment, of either sign.</summary>
    internal BeamPlace GreatestMoment()
    {
        BeamPlace worst = default;
        for (int span = 0; span < _spans.Length; span++)
        {
            SpanState state = Span(span);
            double from = 0;
            foreach (double to in state.Breaks())
            {
                worst = BeamPlace.Greater(worst, state.GreatestMoment(span, from, to));
                from = to;
            }
        }

        return worst;
    }

    /// <summary>The tridiagonal system of the inner supports, by elimination: diagonally dominant, so no pivot is needed.</summary>
    private double[] SupportMoments(double first, double last)
    {
        int inner = _spans.Length - 1;
        double[] moments = new double[_spans.Length + 1];
        moments[0] = first;
        moments[_spans.Length] = last;
        double[] above = new double[Math.Max(1, inner)];
        double[] right = new double[Math.Max(1, inner)];
        for (int i = 0; i < inner; i++)
        {
            double before = _spans[i], after = _spans[i + 1];
            double bend = ((_displacements[i + 1] - _displacements[i]) / before) + ((_displacements[i + 1] - _displacements[i + 2]) / after);
            double load = -((_uniform[i] * before * before * before) + (_uniform[i + 1] * after * after * after)) / 4;
            double diagonal = 2 * (before + after), value = load + (6 * Stiffness * bend);
            foreach (PointOnSpan point in _points)
            {
                if (point.Span == i)
                {
                    value -= point.Load * point.Distance * ((before * before) - (point.Distance * point.Distance)) / before;
                }
                else if (point.Span == i + 1)
                {
                    double rest = after - point.Distance;
                    value -= point.Load * rest * ((after * after) - (rest * rest)) / after;
                }
            }

            if (i > 0)
            {
                diagonal -= before * above[i - 1];
                value -= before * right[i - 1];
            }
            else
            {
                value -= before * first;
            }

            above[i] = after / diagonal;
            right[i] = value / diagonal;
        }

        for (int i = inner - 1; i >= 0; i--)
        {
            moments[i + 1] = right[i] - (above[i] * moments[i + 2]);
        }

        return moments;
    }

    private double[] SupportReactions()
    {
        double[] reactions = new double[_spans.Length + 1];
        for (int span = 0; span < _spans.Length; span++)
        {
            double length = _spans[span], half = _uniform[span] * length / 2, turn = (Moments[span + 1] - Moments[span]) / length;
            reactions[span] += half + turn;
            reactions[span + 1] += half - turn;
        }

        foreach (PointOnSpan point in _points)
        {
            double length = _spans[point.Span];
            reactions[point.Span] += point.Load * (length - point.Distance) / length;
            reactions[point.Span + 1] += point.Load * point.Distance / length;
        }

        return reactions;
    }
}

/// <summary>A point load on a span, at a distance from the span's left support.</summary>
internal readonly struct PointOnSpan(int span, double distance, double load)
{
    internal int Span { get; } = span;

    internal double Distance { get; } = distance;

    internal double Load { get; } = load;
}

/// <summary>A value of a beam and where it is: span, and distance from the span's left support.</summary>
internal readonly struct BeamPlace(int span, double distance, double value)
{
    internal int Span { get; } = span;

    internal double Distance { get; } = distance;

    internal double Value { get; } = value;

    /// <summary>The one whose value is greater in size; the first where they are equal.</summary>
    internal static BeamPlace Greater(BeamPlace one, BeamPlace other) => Math.Abs(other.Value) > Math.Abs(one.Value) ? other : one;
}
