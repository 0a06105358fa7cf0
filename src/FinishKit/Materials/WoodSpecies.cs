using System;
using System.Collections.Generic;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>
/// A wood species: specific gravity, stiffness, strength, shrinkage and movement as the Wood Handbook has them. Each group of
/// figures has a source of its own, which says how it was read.
/// </summary>
public sealed class WoodSpecies
{
    private static readonly Allowed s_modulus = new(1, 100_000, "MPa");
    private static readonly Allowed s_strength = new(0.1, 1000, "MPa");
    private static readonly Allowed s_shrinkage = new(0, 30, "%");
    private static readonly Allowed s_start = new(10, 60, "%");
    private static readonly Allowed s_movement = new(0, 0.02, string.Empty);

    private readonly Pressure? _elasticity, _bendingStrength;
    private readonly double? _radialShrinkage, _tangentialShrinkage, _shrinkageStart, _radialMovement, _tangentialMovement;

    /// <summary>A species of the caller's own.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="isHardwood">Whether it is a hardwood.</param>
    /// <param name="specificGravity">Ovendry mass over volume at 12% moisture content, 0.1 to 1.3.</param>
    /// <param name="source">Where the figure is from; null: the caller's own.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The specific gravity is outside its range.</exception>
    public WoodSpecies(string name, bool isHardwood, SpecificGravityAt12 specificGravity, Source? source = null)
    {
        Name = name ?? throw new ArgumentNullException(nameof(name));
        IsHardwood = isHardwood;
        Door.Number(specificGravity.Value, nameof(specificGravity), Densities.SpecificGravity, null);
        SpecificGravity = specificGravity;
        Source = source ?? Sources.Given;
    }

    /// <summary>Every species in the table.</summary>
    public static IReadOnlyList<WoodSpecies> All { get; } = MaterialTables.Read("wood-species.csv", static row =>
        new WoodSpecies(row["name"], row["group"] == "hardwood", new SpecificGravityAt12(row.Number("specific_gravity_12")), row.Source())
        {
            Elasticity = Megapascals(row, "elasticity_mpa"),
            ElasticitySource = Strength(row["elasticity_tag"]),
            BendingStrength = Megapascals(row, "strength_mpa"),
            BendingStrengthSource = Strength(row["strength_tag"]),
            RadialShrinkage = row.Number("shrinkage_radial"),
            TangentialShrinkage = row.Number("shrinkage_tangential"),
            ShrinkageSource = row["shrinkage_tag"] == "copy" ? MaterialSources.Shrinkage : MaterialSources.ShrinkageFromMemory,
            ShrinkageStart = row.Number("shrinkage_start"),
            RadialMovement = row.Number("movement_radial"),
            TangentialMovement = row.Number("movement_tangential"),
            MovementSource = row["movement_tag"] == "copy" ? MaterialSources.Movement : MaterialSources.MovementFromMemory,
        });

    /// <summary>The species' common name.</summary>
    public string Name { get; }

    /// <summary>Whether it is a hardwood (broad-leaved).</summary>
    public bool IsHardwood { get; }

    /// <summary>Ovendry mass over volume at 12% moisture content.</summary>
    public SpecificGravityAt12 SpecificGravity { get; }

    /// <summary>Density at 12% moisture content: 1120 kg/m3 times the specific gravity.</summary>
    public Density Density => SpecificGravity.ToDensity();

    /// <summary>What the specific gravity rests on.</summary>
    public Source Source { get; }

    /// <summary>Mean modulus of elasticity in bending along the grain at 12% moisture content [pressure], 1 to 100,000 MPa, or null where none is known.</summary>
    /// <exception cref="ArgumentException">The figure is outside its range or in an undefined unit.</exception>
    public Pressure? Elasticity
    {
        get => _elasticity;
        init
        {
            if (value is { } pressure)
            {
                Door.Megapascals(pressure, nameof(Elasticity), s_modulus, null);
            }

            _elasticity = value;
        }
    }

    /// <summary>What the modulus rests on, or null where nothing is said.</summary>
    public Source? ElasticitySource { get; init; }

    /// <summary>Mean modulus of rupture of small clear pieces at 12% moisture content: a mean of what broke, not a design value [pressure], 0.1 to 1000 MPa, or null where none is known.</summary>
    /// <exception cref="ArgumentException">The figure is outside its range or in an undefined unit.</exception>
    public Pressure? BendingStrength
    {
        get => _bendingStrength;
        init
        {
            if (value is { } pressure)
            {
                Door.Megapascals(pressure, nameof(BendingStrength), s_strength, null);
            }

            _bendingStrength = value;
        }
    }

    /// <summary>What the strength rests on, or null where nothing is said.</summary>
    public Source? BendingStrengthSource { get; init; }

    /// <summary>Radial shrinkage from green to ovendry, percent of the green size, 0 to 30, or null where none is known.</summary>
    /// <exception cref="ArgumentException">The number is outside its range.</exception>
    public double? RadialShrinkage
    {
        get => _radialShrinkage;
        init
        {
            if (value is { } number)
            {
                Door.Number(number, nameof(RadialShrinkage), s_shrinkage, null);
            }

            _radialShrinkage = value;
        }
    }

    /// <summary>Tangential shrinkage from green to ovendry, percent of the green size, 0 to 30, or null where none is known.</summary>
    /// <exception cref="ArgumentException">The number is outside its range.</exception>
    public double? TangentialShrinkage
    {
        get => _tangentialShrinkage;
        init
        {
            if (value is { } number)
            {
                Door.Number(number, nameof(TangentialShrinkage), s_shrinkage, null);
            }

            _tangentialShrinkage = value;
        }
    }

    /// <summary>What both shrinkages rest on, or null where nothing is said.</summary>
    public Source? ShrinkageSource { get; init; }

    /// <summary>Moisture content at which shrinkage starts, percent, 10 to 60, or null where none is known. The figures of the table are from memory, whatever the tag of the shrinkage.</summary>
    /// <exception cref="ArgumentException">The number is outside its range.</exception>
    public double? ShrinkageStart
    {
        get => _shrinkageStart;
        init
        {
            if (value is { } number)
            {
                Door.Number(number, nameof(ShrinkageStart), s_start, null);
            }

            _shrinkageStart = value;
        }
    }

    /// <summary>Radial change of size per percent of moisture content, as a share of the size, for 6 to 14% moisture content, 0 to 0.02, or null where none is known.</summary>
    /// <exception cref="ArgumentException">The number is outside its range.</exception>
    public double? RadialMovement
    {
        get => _radialMovement;
        init
        {
            if (value is { } number)
            {
                Door.Number(number, nameof(RadialMovement), s_movement, null);
            }

            _radialMovement = value;
        }
    }

    /// <summary>Tangential change of size per percent of moisture content, as a share of the size, for 6 to 14% moisture content, 0 to 0.02, or null where none is known.</summary>
    /// <exception cref="ArgumentException">The number is outside its range.</exception>
    public double? TangentialMovement
    {
        get => _tangentialMovement;
        init
        {
            if (value is { } number)
            {
                Door.Number(number, nameof(TangentialMovement), s_movement, null);
            }

            _tangentialMovement = value;
        }
    }

    /// <summary>What both movements rest on, or null where nothing is said.</summary>
    public Source? MovementSource { get; init; }

    /// <summary>The species of a name, case aside.</summary>
    /// <param name="name">The name, as in <see cref="All"/>.</param>
    /// <returns>The species.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException">No species has that name; the message lists those there are.</exception>
    public static WoodSpecies Named(string name) => MaterialTables.Named(All, name, static species => species.Name);

    /// <summary>Name and specific gravity, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}, specific gravity {SpecificGravity} at 12%";

    private static Pressure? Megapascals(TableRow row, string column) => row.Has(column) ? new Pressure(row.Number(column), PressureUnit.Megapascal) : null;

    private static Source? Strength(string tag) => tag switch
    {
        "page" => MaterialSources.StrengthOnThePage,
        "copy" => MaterialSources.Strength,
        "memory" => MaterialSources.StrengthFromMemory,
        "" => null,
        _ => throw new InvalidOperationException($"wood-species.csv: unknown tag '{tag}'."),
    };
}
