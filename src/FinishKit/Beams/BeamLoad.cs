using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>A load on a beam: at a point, or spread over its whole length or over one span. Stored as given; the calculator checks it.</summary>
public sealed class BeamLoad
{
    private const int EverySpan = -1;

    private static readonly Allowed s_force = new(-100_000, 100_000, "N");
    private static readonly Allowed s_uniform = new(-1000, 1000, "N/mm");

    private readonly bool _isPoint;
    private readonly Length _place;
    private readonly Force _force;
    private readonly ForcePerLength _spread;
    private readonly int _span;

    private BeamLoad(bool isPoint, Length place, Force force, ForcePerLength spread, int span)
    {
        _isPoint = isPoint;
        _place = place;
        _force = force;
        _spread = spread;
        _span = span;
    }

    /// <summary>A load at a point.</summary>
    /// <param name="place">Where, from the first support [length], 0 to the last support.</param>
    /// <param name="force">The load [force], -100,000 to 100,000 N.</param>
    /// <returns>The load.</returns>
    public static BeamLoad Point(Length place, Force force) => new(true, place, force, default, EverySpan);

    /// <summary>A load spread evenly over the whole beam.</summary>
    /// <param name="load">The load [force per length], -1000 to 1000 N/mm.</param>
    /// <returns>The load.</returns>
    public static BeamLoad Uniform(ForcePerLength load) => new(false, default, default, load, EverySpan);

    /// <summary>A load spread evenly over one span.</summary>
    /// <param name="span">The span, 0 for the first.</param>
    /// <param name="load">The load [force per length], -1000 to 1000 N/mm.</param>
    /// <returns>The load.</returns>
    public static BeamLoad UniformOnSpan(int span, ForcePerLength load) => new(false, default, default, load, span < 0 ? int.MinValue : span);

    /// <summary>The load and where it is, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => _isPoint
        ? $"{Print.Number(Door.Newtons(_force))} N at {Print.Mm(Door.Millimetres(_place))}"
        : $"{Print.Number(Door.NewtonsPerMillimetre(_spread))} N/mm on {(_span == EverySpan ? "every span" : "span " + Print.Number(_span))}";

    /// <summary>Adds the load to those of the spans.</summary>
    internal void AddTo(double[] spans, double[] uniform, List<PointOnSpan> points, Name name, List<InputProblem>? problems)
    {
        if (_isPoint)
        {
            AddPoint(spans, points, name, problems);
            return;
        }

        double load = Door.NewtonsPerMillimetre(_spread, name, s_uniform, problems);
        if (_span != EverySpan && (_span < 0 || _span >= spans.Length))
        {
            Door.Report(new InputProblem(name.ToString(), "span " + Print.Number(_span), $"span 0 to {Print.Number(spans.Length - 1)}", isRange: true), problems);
            return;
        }

        for (int i = 0; i < uniform.Length; i++)
        {
            uniform[i] += _span == EverySpan || _span == i ? load : 0;
        }
    }

    private void AddPoint(double[] spans, List<PointOnSpan> points, Name name, List<InputProblem>? problems)
    {
        double length = 0;
        foreach (double span in spans)
        {
            length += span;
        }

        double force = Door.Newtons(_force, name, s_force, problems);
        if (double.IsNaN(length))
        {
            return;
        }

        double place = Door.Millimetres(_place, name, new Allowed(0, Grid.Snap(length), "mm"), problems);
        double start = 0;
        for (int i = 0; i < spans.Length; i++)
        {
            if (place <= start + spans[i] || i == spans.Length - 1)
            {
                points.Add(new PointOnSpan(i, Math.Min(spans[i], Math.Max(0, place - start)), force));
                return;
            }

            start += spans[i];
        }
    }
}
