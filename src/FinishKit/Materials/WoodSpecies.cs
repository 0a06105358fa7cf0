using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>A wood species with the Wood Handbook's specific gravity. More columns come with the calculators that need them.</summary>
public sealed class WoodSpecies
{
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
        new WoodSpecies(row["name"], row["group"] == "hardwood", new SpecificGravityAt12(row.Number("specific_gravity_12")), row.Source()));

    /// <summary>The species' common name.</summary>
    public string Name { get; }

    /// <summary>Whether it is a hardwood (broad-leaved).</summary>
    public bool IsHardwood { get; }

    /// <summary>Ovendry mass over volume at 12% moisture content.</summary>
    public SpecificGravityAt12 SpecificGravity { get; }

    /// <summary>Density at 12% moisture content: 1120 kg/m3 times the specific gravity.</summary>
    public Density Density => SpecificGravity.ToDensity();

    /// <summary>What the figure rests on.</summary>
    public Source Source { get; }

    /// <summary>The species of a name, case aside.</summary>
    /// <param name="name">The name, as in <see cref="All"/>.</param>
    /// <returns>The species.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException">No species has that name; the message lists those there are.</exception>
    public static WoodSpecies Named(string name) => MaterialTables.Named(All, name, static species => species.Name);

    /// <summary>Name and specific gravity, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}, specific gravity {SpecificGravity} at 12%";
}
