using System;
using System.Collections.Generic;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>How a beam bends under loads as given: what <see cref="ContinuousBeam.UnderLoads(Beam, IReadOnlyList{BeamLoad})"/> answers.</summary>
public sealed class BeamResponse
{
    private readonly SectionNumbers _section;
    private readonly SectionStiffness _stiffness;
    private readonly double[] _starts;
    private readonly BeamLine _line;
    private readonly BeamPlace _sag;
    private readonly BeamPlace _moment;

    internal BeamResponse(in SectionNumbers section, double[] spans, BeamLine line)
    {
        _section = section;
        _stiffness = section.Solve(default(Silent));
        _starts = Starts(spans);
        _line = line;
        _sag = line.GreatestSag();
        _moment = line.GreatestMoment();
        Reactions = [.. Array.ConvertAll(line.Reactions, static reaction => new Force(reaction, ForceUnit.Newton))];
    }

    /// <summary>Greatest deflection from the straight line between the supports of its span, with its sign.</summary>
    public Length Deflection => Door.Millimetres(Grid.Snap(_sag.Value));

    /// <summary>Where it is, from the first support.</summary>
    public Length DeflectionPlace => Place(_starts, _sag);

    /// <summary>Greatest bending stress, without sign.</summary>
    public Pressure Stress => new(Math.Abs(_moment.Value) / _stiffness.Modulus, PressureUnit.Megapascal);

    /// <summary>Where it is, from the first support.</summary>
    public Length StressPlace => Place(_starts, _moment);

    /// <summary>Bending stress allowed; null where the strength is not known.</summary>
    public Pressure? AllowedStress => double.IsNaN(_stiffness.Allowed) ? null : new Pressure(_stiffness.Allowed, PressureUnit.Megapascal);

    /// <summary>Greatest curvature, with its sign; at the place of the greatest stress.</summary>
    public ReciprocalLength Curvature => new(_moment.Value / _stiffness.Stiffness, ReciprocalLengthUnit.InverseMillimeter);

    /// <summary>What each support gives, in order: positive where it pushes back against a positive load, negative where it has to hold.</summary>
    public IReadOnlyList<Force> Reactions { get; }

    /// <summary>What to know, gravest first.</summary>
    public IReadOnlyList<Finding> Findings => BeamFindings.All(_stiffness, _moment.Value, _line.Reactions, _line.Reactions);

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

    /// <summary>Deflection at a place from the line that the beam had before anything was displaced or loaded.</summary>
    /// <param name="place">The place, from the first support [length], 0 to the last support.</param>
    /// <returns>The deflection, with its sign.</returns>
    /// <exception cref="ArgumentException">The place is off the beam or in an undefined unit.</exception>
    public Length DeflectionAt(Length place)
    {
        (int span, double distance) = At(place, nameof(place));
        return Door.Millimetres(Grid.Snap(_line.Span(span).Deflection(distance)));
    }

    /// <summary>Curvature at a place.</summary>
    /// <param name="place">The place, from the first support [length], 0 to the last support.</param>
    /// <returns>The curvature, with its sign.</returns>
    /// <exception cref="ArgumentException">The place is off the beam or in an undefined unit.</exception>
    public ReciprocalLength CurvatureAt(Length place)
    {
        (int span, double distance) = At(place, nameof(place));
        return new ReciprocalLength(_line.Span(span).Moment(distance) / _stiffness.Stiffness, ReciprocalLengthUnit.InverseMillimeter);
    }

    /// <summary>How the greatest deflection and stress follow from the moments over the supports.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain() => BeamFindings.Explain(_section, _line.Span(_sag.Span), _sag, _line.Span(_moment.Span), _moment);

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Deflection, stress and curvature with their places, stress allowed, greatest and least reaction, worst severity of the findings (0 where there is none).</returns>
    public IReadOnlyList<Figure> Figures() => BeamFindings.Figures(_stiffness, _sag, Place(_starts, _sag), _moment, Place(_starts, _moment), _line.Reactions, _line.Reactions);

    /// <summary>Deflection and stress with their places, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => BeamFindings.Text(_stiffness, _sag, Place(_starts, _sag), _moment, Place(_starts, _moment));

    /// <summary>Where each span starts, and the end.</summary>
    internal static double[] Starts(double[] spans)
    {
        double[] starts = new double[spans.Length + 1];
        for (int i = 0; i < spans.Length; i++)
        {
            starts[i + 1] = Grid.Snap(starts[i] + spans[i]);
        }

        return starts;
    }

    internal static Length Place(double[] starts, BeamPlace place) => Door.Millimetres(Grid.Snap(starts[place.Span] + place.Distance));

    private (int Span, double Distance) At(Length place, string parameter)
    {
        double x = Door.Millimetres(place, parameter, new Allowed(0, _starts[_starts.Length - 1], "mm"), null);
        int span = 0;
        while (span < _starts.Length - 2 && x > _starts[span + 1])
        {
            span++;
        }

        return (span, x - _starts[span]);
    }
}
