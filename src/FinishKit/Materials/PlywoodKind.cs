using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>A kind of plywood with its density.</summary>
public sealed class PlywoodKind
{
    /// <summary>A kind of the caller's own.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="density">Mean density in use, 100 to 1300 kg/m3.</param>
    /// <param name="characteristicDensity">Characteristic density, or null where not known.</param>
    /// <param name="source">Where the figures are from; null: the caller's own.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException">A density is outside its range or in an undefined unit.</exception>
    public PlywoodKind(string name, Density density, CharacteristicDensity? characteristicDensity = null, Source? source = null)
    {
        Name = name ?? throw new ArgumentNullException(nameof(name));
        Density = Density.FromKilogramsPerCubicMeter(Door.KilogramsPerCubicMetre(density, nameof(density), Densities.Density, null));
        if (characteristicDensity is { } characteristic)
        {
            Door.Number(characteristic.KilogramsPerCubicMetre, nameof(characteristicDensity), Densities.Density, null);
        }

        CharacteristicDensity = characteristicDensity;
        Source = source ?? Sources.Given;
    }

    /// <summary>Every kind in the table.</summary>
    public static IReadOnlyList<PlywoodKind> All { get; } = MaterialTables.Read("plywood-kinds.csv", static row => new PlywoodKind(
        row["name"],
        Density.FromKilogramsPerCubicMeter(row.Number("density_kg_m3")),
        row.Has("characteristic_density_kg_m3") ? new CharacteristicDensity(row.Number("characteristic_density_kg_m3")) : null,
        row.Source()));

    /// <summary>The kind's name.</summary>
    public string Name { get; }

    /// <summary>Mean density in use.</summary>
    public Density Density { get; }

    /// <summary>Characteristic density, or null where not known.</summary>
    public CharacteristicDensity? CharacteristicDensity { get; }

    /// <summary>What the figures rest on.</summary>
    public Source Source { get; }

    /// <summary>The kind of a name, case aside.</summary>
    /// <param name="name">The name, as in <see cref="All"/>.</param>
    /// <returns>The kind.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException">No kind has that name; the message lists those there are.</exception>
    public static PlywoodKind Named(string name) => MaterialTables.Named(All, name, static kind => kind.Name);

    /// <summary>Name and density, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}, {Print.Number(Density.KilogramsPerCubicMeter)} kg/m3";
}
