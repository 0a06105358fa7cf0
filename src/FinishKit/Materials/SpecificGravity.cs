using System;
using UnitsNet;

namespace FinishKit;

// Three figures that all get called "the density of the wood" and must not be mixed: at equal numbers a nail's computed hold
// differs by a quarter and more. Each is a type of its own, so that handing one to a formula made for another does not compile.

/// <summary>Specific gravity as the NDS and FPL-093 mean it: ovendry mass over <b>ovendry volume</b>, against water.</summary>
/// <remarks>The greatest of the three numbers for one wood, since wood is smallest when ovendry. Table 12.3.3A of the NDS lists it by species combination.</remarks>
public readonly struct OvendrySpecificGravity : IEquatable<OvendrySpecificGravity>
{
    private readonly double _value;

    /// <summary>Takes a number as it is; the calculator that uses it checks the range, 0.1 to 1.3.</summary>
    /// <param name="value">The specific gravity, a plain number.</param>
    public OvendrySpecificGravity(double value) => _value = value;

    /// <summary>The specific gravity, a plain number.</summary>
    public double Value => _value;

    /// <summary>Whether two values are equal.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if equal.</returns>
    public static bool operator ==(OvendrySpecificGravity left, OvendrySpecificGravity right) => left.Equals(right);

    /// <summary>Whether two values differ.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they differ.</returns>
    public static bool operator !=(OvendrySpecificGravity left, OvendrySpecificGravity right) => !left.Equals(right);

    /// <summary>The specific gravity of wood of a known density at 12% moisture content.</summary>
    /// <param name="density">Mass and volume both at 12% moisture content [density], 100 to 1300 kg/m3.</param>
    /// <returns>The specific gravity on ovendry volume.</returns>
    /// <remarks>
    /// <para>Formula: G = x/(1 - 0.108 x) with x = rho/1120.</para>
    /// <para>Source: NDS-SUPPLEMENT (from memory): rho = 1000 G/(1 + 0.009 G m) (1 + m/100) kg/m3 with m = 12.</para>
    /// </remarks>
    /// <exception cref="ArgumentException">The density is outside its range or in an undefined unit.</exception>
    public static OvendrySpecificGravity FromDensityAt12(Density density)
    {
        double x = Door.KilogramsPerCubicMetre(density, nameof(density), Densities.Density, null) / 1120;
        return new(x / (1 - (0.108 * x)));
    }

    /// <summary>Density at a moisture content.</summary>
    /// <param name="moistureContent">Moisture content in percent of the ovendry mass, 0 to 30.</param>
    /// <returns>The density, mass and volume both moist.</returns>
    /// <remarks>
    /// <para>Formula: rho = 1000 G/(1 + 0.009 G m) (1 + m/100) kg/m3.</para>
    /// <para>Source: NDS-SUPPLEMENT (from memory).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">The specific gravity or the moisture content is outside its range.</exception>
    public Density ToDensity(double moistureContent)
    {
        double g = Door.Number(_value, nameof(OvendrySpecificGravity), Densities.SpecificGravity, null);
        double m = Door.Number(moistureContent, nameof(moistureContent), new Allowed(0, 30, "%"), null);
        return Density.FromKilogramsPerCubicMeter(1000 * g / (1 + (0.009 * g * m)) * (1 + (m / 100)));
    }

    /// <inheritdoc/>
    public bool Equals(OvendrySpecificGravity other) => _value.Equals(other._value);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is OvendrySpecificGravity other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => _value.GetHashCode();

    /// <summary>The number, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Print.Number(_value);
}

/// <summary>Specific gravity as the Wood Handbook means it: ovendry mass over the <b>volume at 12% moisture content</b>, against water.</summary>
/// <remarks>Tables 5-3 to 5-5 of the Wood Handbook list it by species.</remarks>
public readonly struct SpecificGravityAt12 : IEquatable<SpecificGravityAt12>
{
    private readonly double _value;

    /// <summary>Takes a number as it is; the calculator that uses it checks the range, 0.1 to 1.3.</summary>
    /// <param name="value">The specific gravity, a plain number.</param>
    public SpecificGravityAt12(double value) => _value = value;

    /// <summary>The specific gravity, a plain number.</summary>
    public double Value => _value;

    /// <summary>Whether two values are equal.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if equal.</returns>
    public static bool operator ==(SpecificGravityAt12 left, SpecificGravityAt12 right) => left.Equals(right);

    /// <summary>Whether two values differ.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they differ.</returns>
    public static bool operator !=(SpecificGravityAt12 left, SpecificGravityAt12 right) => !left.Equals(right);

    /// <summary>The specific gravity of wood of a known density at 12% moisture content.</summary>
    /// <param name="density">Mass and volume both at 12% moisture content [density], 100 to 1300 kg/m3.</param>
    /// <returns>The specific gravity on the volume at 12%.</returns>
    /// <remarks>
    /// <para>Formula: G = rho/1120.</para>
    /// <para>Source: derived: 12% of water on the ovendry mass, on the same volume.</para>
    /// </remarks>
    /// <exception cref="ArgumentException">The density is outside its range or in an undefined unit.</exception>
    public static SpecificGravityAt12 FromDensity(Density density) =>
        new(Door.KilogramsPerCubicMetre(density, nameof(density), Densities.Density, null) / 1120);

    /// <summary>Density at a moisture content near 12%.</summary>
    /// <param name="moistureContent">Moisture content in percent of the ovendry mass, 0 to 30.</param>
    /// <returns>The density; the volume is kept at that of 12%.</returns>
    /// <remarks>
    /// <para>Formula: rho = 1000 G (1 + m/100) kg/m3; 1120 G at 12%.</para>
    /// <para>Source: derived: water on the ovendry mass, on the volume at 12%.</para>
    /// </remarks>
    /// <exception cref="ArgumentException">The specific gravity or the moisture content is outside its range.</exception>
    public Density ToDensity(double moistureContent = 12)
    {
        double g = Door.Number(_value, nameof(SpecificGravityAt12), Densities.SpecificGravity, null);
        double m = Door.Number(moistureContent, nameof(moistureContent), new Allowed(0, 30, "%"), null);
        return Density.FromKilogramsPerCubicMeter(1000 * g * (1 + (m / 100)));
    }

    /// <inheritdoc/>
    public bool Equals(SpecificGravityAt12 other) => _value.Equals(other._value);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is SpecificGravityAt12 other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => _value.GetHashCode();

    /// <summary>The number, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Print.Number(_value);
}

/// <summary>Density as Eurocode 5 means it: the <b>characteristic</b> (5th percentile) density at 12% moisture content, mass and volume both moist.</summary>
/// <remarks>EN 338 lists it by strength class: 350 kg/m3 for C24. It is lower than the mean density.</remarks>
public readonly struct CharacteristicDensity : IEquatable<CharacteristicDensity>
{
    private readonly double _kilogramsPerCubicMetre;

    /// <summary>Takes a number as it is; the calculator that uses it checks the range, 100 to 1300 kg/m3.</summary>
    /// <param name="kilogramsPerCubicMetre">The characteristic density in kg/m3.</param>
    public CharacteristicDensity(double kilogramsPerCubicMetre) => _kilogramsPerCubicMetre = kilogramsPerCubicMetre;

    /// <summary>The characteristic density.</summary>
    /// <exception cref="ArgumentException">The number given was NaN or infinite.</exception>
    public Density Value => Density.FromKilogramsPerCubicMeter(_kilogramsPerCubicMetre);

    internal double KilogramsPerCubicMetre => _kilogramsPerCubicMetre;

    /// <summary>Whether two values are equal.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if equal.</returns>
    public static bool operator ==(CharacteristicDensity left, CharacteristicDensity right) => left.Equals(right);

    /// <summary>Whether two values differ.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they differ.</returns>
    public static bool operator !=(CharacteristicDensity left, CharacteristicDensity right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(CharacteristicDensity other) => _kilogramsPerCubicMetre.Equals(other._kilogramsPerCubicMetre);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CharacteristicDensity other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => _kilogramsPerCubicMetre.GetHashCode();

    /// <summary>The number with its unit, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Print.Number(_kilogramsPerCubicMetre) + " kg/m3";
}
