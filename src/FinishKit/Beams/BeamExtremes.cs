using System;
using System.Collections.Generic;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>The worst that a load does to a beam wherever it stands: what <see cref="ContinuousBeam"/> answers for a moving load. Each answer has its own worst place.</summary>
public sealed class BeamExtremes
{
    private readonly SectionNumbers _section;
    private readonly SectionStiffness _stiffness;
    private readonly double[] _spans;
    private readonly double[] _starts;
    private readonly BeamPlace _sag;
    private readonly BeamPlace _moment;
    private readonly double[] _most;
    private readonly double[] _least;
    private readonly SpanState _sagState;
    private readonly SpanState _momentState;

    internal BeamExtremes(in SectionNumbers section, double[] spans, PointExtremes worst, double load, double[]? displacements)
        : this(section, spans, worst.Sag, worst.Moment, worst.Most, worst.Least)
    {
        DeflectionLoad = Load(worst.SagSpan, worst.SagLoad);
        StressLoad = Load(worst.MomentSpan, worst.MomentLoad);
        _sagState = new BeamLine(spans, _stiffness.Stiffness, displacements, null, [new PointOnSpan(worst.SagSpan, worst.SagLoad, load)]).Span(_sag.Span);
        _momentState = new BeamLine(spans, _stiffness.Stiffness, displacements, null, [new PointOnSpan(worst.MomentSpan, worst.MomentLoad, load)]).Span(_moment.Span);
    }

    internal BeamExtremes(in SectionNumbers section, double[] spans, UniformExtremes worst, double load, double[]? displacements)
        : this(section, spans, worst.Sag, worst.Moment, worst.Most, worst.Least)
    {
        DeflectionSpans = Loaded(worst.SagSet);
        StressSpans = Loaded(worst.MomentSet);
        _sagState = new BeamLine(spans, _stiffness.Stiffness, displacements, Spread(worst.SagSet, load)).Span(_sag.Span);
        _momentState = new BeamLine(spans, _stiffness.Stiffness, displacements, Spread(worst.MomentSet, load)).Span(_moment.Span);
    }

    private BeamExtremes(in SectionNumbers section, double[] spans, BeamPlace sag, BeamPlace moment, double[] most, double[] least)
    {
        _section = section;
        _stiffness = section.Solve(default(Silent));
        _spans = spans;
        _starts = BeamResponse.Starts(spans);
        _sag = sag;
        _moment = moment;
        _most = most;
        _least = least;
        DeflectionSpans = StressSpans = [];
        GreatestReactions = [.. Array.ConvertAll(most, static reaction => new Force(reaction, ForceUnit.Newton))];
        LeastReactions = [.. Array.ConvertAll(least, static reaction => new Force(reaction, ForceUnit.Newton))];
    }

    /// <summary>Greatest deflection from the straight line between the supports of its span, with its sign.</summary>
    public Length Deflection => Door.Millimetres(Grid.Snap(_sag.Value));

    /// <summary>Where it is, from the first support.</summary>
    public Length DeflectionPlace => BeamResponse.Place(_starts, _sag);

    /// <summary>Where the point load stands for it, from the first support; null for a uniform load.</summary>
    public Length? DeflectionLoad { get; }

    /// <summary>The spans that the uniform load covers for it, 0 for the first; empty for a point load.</summary>
    public IReadOnlyList<int> DeflectionSpans { get; }

    /// <summary>Greatest bending stress, without sign.</summary>
    public Pressure Stress => new(Math.Abs(_moment.Value) / _stiffness.Modulus, PressureUnit.Megapascal);

    /// <summary>Where it is, from the first support.</summary>
    public Length StressPlace => BeamResponse.Place(_starts, _moment);

    /// <summary>Where the point load stands for it, from the first support; null for a uniform load.</summary>
    public Length? StressLoad { get; }

    /// <summary>The spans that the uniform load covers for it, 0 for the first; empty for a point load.</summary>
    public IReadOnlyList<int> StressSpans { get; }

    /// <summary>Bending stress allowed; null where the strength is not known.</summary>
    public Pressure? AllowedStress => double.IsNaN(_stiffness.Allowed) ? null : new Pressure(_stiffness.Allowed, PressureUnit.Megapascal);

    /// <summary>Greatest curvature, with its sign; at the place of the greatest stress.</summary>
    public ReciprocalLength Curvature => new(_moment.Value / _stiffness.Stiffness, ReciprocalLengthUnit.InverseMillimeter);

    /// <summary>The most that each support has to push back, in order.</summary>
    public IReadOnlyList<Force> GreatestReactions { get; }

    /// <summary>The least that each support has to push back, in order; negative where it has to hold by that much.</summary>
    public IReadOnlyList<Force> LeastReactions { get; }

    /// <summary>What to know, gravest first.</summary>
    public IReadOnlyList<Finding> Findings => BeamFindings.All(_stiffness, _moment.Value, _most, _least);

    /// <summary>Whether a finding is a problem.</summary>
    public bool HasProblem => BeamFindings.IsOverstressed(_stiffness, _moment.Value);

    /// <summary>The defaults it rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed
    {
        get
        {
            List<DefaultUsed> defaults = [];
            _section.AddDefaults(defaults);
            return defaults;
        }
    }

    /// <summary>How the greatest deflection and stress follow from the moments over the supports, the load where each is worst.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain() => BeamFindings.Explain(_section, _sagState, _sag, _momentState, _moment);

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Deflection, stress and curvature with their places, stress allowed, greatest and least reaction, worst severity of the findings (0 where there is none).</returns>
    public IReadOnlyList<Figure> Figures() => BeamFindings.Figures(_stiffness, _sag, DeflectionPlace, _moment, StressPlace, _most, _least);

    /// <summary>Deflection and stress with their places, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => BeamFindings.Text(_stiffness, _sag, DeflectionPlace, _moment, StressPlace);

    private static IReadOnlyList<int> Loaded(bool[] set)
    {
        List<int> spans = [];
        for (int i = 0; i < set.Length; i++)
        {
            if (set[i])
            {
                spans.Add(i);
            }
        }

        return [.. spans];
    }

    private static double[] Spread(bool[] set, double load) => Array.ConvertAll(set, loaded => loaded ? load : 0);

    private Length Load(int span, double distance) => Door.Millimetres(Grid.Snap(_starts[span] + Math.Min(_spans[span], distance)));
}
