using System;
using UnitsNet;

namespace FinishKit;

/// <summary>Stiffness and strength of a plywood sheet in bending, by the direction of its face grain, with the thickness they are worked with.</summary>
public sealed class PlywoodBending
{
    private static readonly Allowed s_thickness = new(Allowed.OneStep, 200, "mm");
    private static readonly Allowed s_modulus = new(1, 100_000, "MPa");
    private static readonly Allowed s_strength = new(0.1, 1000, "MPa");

    /// <summary>The figures of a sheet.</summary>
    /// <param name="meanThickness">Thickness that the figures belong to [length], more than 0 up to 200 mm.</param>
    /// <param name="elasticityAlong">Mean modulus of elasticity in bending, face grain along the span or around the curve [pressure], 1 to 100,000 MPa.</param>
    /// <param name="elasticityAcross">The same, face grain across the span or along the axis of the curve [pressure], 1 to 100,000 MPa.</param>
    /// <param name="strengthAlong">Characteristic bending strength, face grain along the span or around the curve [pressure], 0.1 to 1000 MPa.</param>
    /// <param name="strengthAcross">The same, face grain across the span or along the axis of the curve [pressure], 0.1 to 1000 MPa.</param>
    /// <param name="source">Where the figures are from; null: the caller's own.</param>
    /// <exception cref="ArgumentException">A figure is outside its range or in an undefined unit.</exception>
    public PlywoodBending(Length meanThickness, Pressure elasticityAlong, Pressure elasticityAcross, Pressure strengthAlong, Pressure strengthAcross, Source? source = null)
    {
        Door.Millimetres(meanThickness, nameof(meanThickness), s_thickness, null);
        Door.Megapascals(elasticityAlong, nameof(elasticityAlong), s_modulus, null);
        Door.Megapascals(elasticityAcross, nameof(elasticityAcross), s_modulus, null);
        Door.Megapascals(strengthAlong, nameof(strengthAlong), s_strength, null);
        Door.Megapascals(strengthAcross, nameof(strengthAcross), s_strength, null);
        MeanThickness = meanThickness;
        ElasticityAlong = elasticityAlong;
        ElasticityAcross = elasticityAcross;
        StrengthAlong = strengthAlong;
        StrengthAcross = strengthAcross;
        Source = source ?? Sources.Given;
    }

    /// <summary>Thickness that the figures belong to.</summary>
    public Length MeanThickness { get; }

    /// <summary>Mean modulus of elasticity in bending, face grain along the span or around the curve.</summary>
    public Pressure ElasticityAlong { get; }

    /// <summary>Mean modulus of elasticity in bending, face grain across the span or along the axis of the curve.</summary>
    public Pressure ElasticityAcross { get; }

    /// <summary>Characteristic bending strength, face grain along the span or around the curve.</summary>
    public Pressure StrengthAlong { get; }

    /// <summary>Characteristic bending strength, face grain across the span or along the axis of the curve.</summary>
    public Pressure StrengthAcross { get; }

    /// <summary>What the figures rest on.</summary>
    public Source Source { get; }

    /// <summary>Thickness, moduli and strengths, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Mm(Door.Millimetres(MeanThickness))}, E {Print.Number(Door.Megapascals(ElasticityAlong))} / {Print.Number(Door.Megapascals(ElasticityAcross))} MPa, f {Print.Number(Door.Megapascals(StrengthAlong))} / {Print.Number(Door.Megapascals(StrengthAcross))} MPa along / across the face grain";
}
