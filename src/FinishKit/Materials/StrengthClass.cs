using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>A strength class of structural timber with its characteristic density.</summary>
public sealed class StrengthClass
{
    /// <summary>A class of the caller's own.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="density">Characteristic density, 100 to 1300 kg/m3.</param>
    /// <param name="source">Where the figure is from; null: the caller's own.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The density is outside its range.</exception>
    public StrengthClass(string name, CharacteristicDensity density, Source? source = null)
    {
        Name = name ?? throw new ArgumentNullException(nameof(name));
        Door.Number(density.KilogramsPerCubicMetre, nameof(density), Densities.Density, null);
        Density = density;
        Source = source ?? Sources.Given;
    }

    /// <summary>Every class in the table.</summary>
    public static IReadOnlyList<StrengthClass> All { get; } = MaterialTables.Read("strength-classes.csv", static row =>
        new StrengthClass(row["name"], new CharacteristicDensity(row.Number("characteristic_density_kg_m3")), row.Source()));

    /// <summary>The class's name.</summary>
    public string Name { get; }

    /// <summary>The characteristic density.</summary>
    public CharacteristicDensity Density { get; }

    /// <summary>What the figure rests on.</summary>
    public Source Source { get; }

    /// <summary>The class of a name, case aside.</summary>
    /// <param name="name">The name, as in <see cref="All"/>.</param>
    /// <returns>The class.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException">No class has that name; the message lists those there are.</exception>
    public static StrengthClass Named(string name) => MaterialTables.Named(All, name, static entry => entry.Name);

    /// <summary>Name and density, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}, characteristic density {Density}";
}
