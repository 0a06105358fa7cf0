using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>A species combination as the NDS groups wood for design, with its assigned specific gravity.</summary>
public sealed class SpeciesCombination
{
    /// <summary>A combination of the caller's own.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="specificGravity">Ovendry mass over ovendry volume, 0.1 to 1.3.</param>
    /// <param name="source">Where the figure is from; null: the caller's own.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The specific gravity is outside its range.</exception>
    public SpeciesCombination(string name, OvendrySpecificGravity specificGravity, Source? source = null)
    {
        Name = name ?? throw new ArgumentNullException(nameof(name));
        Door.Number(specificGravity.Value, nameof(specificGravity), Densities.SpecificGravity, null);
        SpecificGravity = specificGravity;
        Source = source ?? Sources.Given;
    }

    /// <summary>Every combination in the table.</summary>
    public static IReadOnlyList<SpeciesCombination> All { get; } = MaterialTables.Read("species-combinations.csv", static row =>
        new SpeciesCombination(row["name"], new OvendrySpecificGravity(row.Number("specific_gravity_ovendry")), row.Source()));

    /// <summary>The combination's name.</summary>
    public string Name { get; }

    /// <summary>Ovendry mass over ovendry volume.</summary>
    public OvendrySpecificGravity SpecificGravity { get; }

    /// <summary>What the figure rests on.</summary>
    public Source Source { get; }

    /// <summary>The combination of a name, case aside.</summary>
    /// <param name="name">The name, as in <see cref="All"/>.</param>
    /// <returns>The combination.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException">No combination has that name; the message lists those there are.</exception>
    public static SpeciesCombination Named(string name) => MaterialTables.Named(All, name, static combination => combination.Name);

    /// <summary>Name and specific gravity, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}, specific gravity {SpecificGravity} ovendry";
}
