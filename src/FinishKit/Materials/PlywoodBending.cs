using System;
using System.Collections.Generic;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>Stiffness and strength of a plywood sheet in bending, by the direction of its face grain, with the thickness they are worked with.</summary>
/// <remarks>
/// What the strengths mean is <see cref="StrengthBasis"/>: a characteristic strength still has to be divided by a safety factor, an
/// allowable one has it in it already.
/// </remarks>
public sealed class PlywoodBending
{
    private readonly PlywoodStrengthBasis _strengthBasis;

    private static readonly Allowed s_thickness = new(Allowed.OneStep, 200, "mm");
    private static readonly Allowed s_modulus = new(1, 100_000, "MPa");
    private static readonly Allowed s_strength = new(0.1, 1000, "MPa");

    /// <summary>The figures of a sheet.</summary>
    /// <param name="meanThickness">Thickness that the figures belong to [length], more than 0 up to 200 mm.</param>
    /// <param name="elasticityAlong">Mean modulus of elasticity in bending, face grain along the span or around the curve [pressure], 1 to 100,000 MPa.</param>
    /// <param name="elasticityAcross">The same, face grain across the span or along the axis of the curve [pressure], 1 to 100,000 MPa.</param>
    /// <param name="strengthAlong">Bending strength, characteristic unless <see cref="StrengthBasis"/> says otherwise, face grain along the span or around the curve [pressure], 0.1 to 1000 MPa.</param>
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

    /// <summary>Bending strength, characteristic unless <see cref="StrengthBasis"/> says otherwise, face grain along the span or around the curve.</summary>
    public Pressure StrengthAlong { get; }

    /// <summary>Bending strength, characteristic unless <see cref="StrengthBasis"/> says otherwise, face grain across the span or along the axis of the curve.</summary>
    public Pressure StrengthAcross { get; }

    /// <summary>Whether the strengths are characteristic (the default) or allowable.</summary>
    /// <exception cref="ArgumentException">The value is undefined.</exception>
    public PlywoodStrengthBasis StrengthBasis
    {
        get => _strengthBasis;
        init => _strengthBasis = value is PlywoodStrengthBasis.Characteristic or PlywoodStrengthBasis.AllowableDesign
            ? value
            : throw new InputProblem(nameof(StrengthBasis), FormattableString.Invariant($"the undefined value {(int)value}"), "characteristic or allowable design", isRange: false).ToException();
    }

    /// <summary>What the figures rest on.</summary>
    public Source Source { get; }

    /// <summary>Thickness, moduli and strengths, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Mm(Door.Millimetres(MeanThickness))}, E {Print.Number(Door.Megapascals(ElasticityAlong))} / {Print.Number(Door.Megapascals(ElasticityAcross))} MPa, f {Print.Number(Door.Megapascals(StrengthAlong))} / {Print.Number(Door.Megapascals(StrengthAcross))} MPa{(StrengthBasis == PlywoodStrengthBasis.AllowableDesign ? " allowable" : string.Empty)} along / across the face grain";

    /// <summary>The figures of the sheets in the table, by the name of the sheet.</summary>
    internal static Dictionary<string, PlywoodBending> BySheet()
    {
        Dictionary<string, PlywoodBending> bySheet = new(StringComparer.Ordinal);
        foreach (KeyValuePair<string, PlywoodBending> row in MaterialTables.Read("plywood-bending.csv", static row => new KeyValuePair<string, PlywoodBending>(row["sheet"], OfRow(row))))
        {
            bySheet.Add(row.Key, row.Value);
        }

        return bySheet;
    }

    private static PlywoodBending OfRow(TableRow row) => new(
        TableRow.Length(row["thickness"]), Megapascals(row, "elasticity_along"), Megapascals(row, "elasticity_across"), Megapascals(row, "strength_along"), Megapascals(row, "strength_across"),
        row["source"] == MaterialSources.BirchBending.Id ? MaterialSources.BirchBending : row.Source())
    {
        StrengthBasis = row["basis"] == "allowable" ? PlywoodStrengthBasis.AllowableDesign : PlywoodStrengthBasis.Characteristic,
    };

    private static Pressure Megapascals(TableRow row, string column) => new(row.Number(column), PressureUnit.Megapascal);
}
