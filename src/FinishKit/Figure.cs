using System;
using System.Globalization;

namespace FinishKit;

/// <summary>
/// One named number with its unit: the flat currency of findings, results and workings, so that a host can store, compare
/// and localise without parsing prose.
/// </summary>
/// <remarks>
/// Names are kebab case and stable. Units are <c>mm</c>, <c>N</c>, <c>N/mm</c>, <c>MPa</c>, <c>kg</c>, <c>kg/m3</c>,
/// <c>deg</c>, <c>rad</c>, <c>1/mm</c>, or empty for a plain number. The default value has an empty name, 0 and an empty unit.
/// The members can be set by an initialiser, so that what reads objects by their members (System.Text.Json does) reads a figure back as it was written.
/// </remarks>
public readonly struct Figure : IEquatable<Figure>
{
    private readonly string? _name;
    private readonly string? _unit;

    /// <summary>Makes a figure.</summary>
    /// <param name="name">What the number is, kebab case, for example <c>worst-clearance</c>.</param>
    /// <param name="value">The number, in <paramref name="unit"/>.</param>
    /// <param name="unit">The unit's symbol; empty for a plain number.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> or <paramref name="unit"/> is null.</exception>
    public Figure(string name, double value, string unit)
    {
        _name = name ?? throw new ArgumentNullException(nameof(name));
        _unit = unit ?? throw new ArgumentNullException(nameof(unit));
        Value = value;
    }

    /// <summary>What the number is, kebab case.</summary>
    /// <exception cref="ArgumentNullException">Set to null.</exception>
    public string Name
    {
        get => _name ?? string.Empty;
        init => _name = value ?? throw new ArgumentNullException(nameof(Name));
    }

    /// <summary>The number, in <see cref="Unit"/>.</summary>
    public double Value { get; init; }

    /// <summary>The unit's symbol; empty for a plain number.</summary>
    /// <exception cref="ArgumentNullException">Set to null.</exception>
    public string Unit
    {
        get => _unit ?? string.Empty;
        init => _unit = value ?? throw new ArgumentNullException(nameof(Unit));
    }

    /// <summary>Whether two figures have the same name, number and unit.</summary>
    /// <param name="left">One figure.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if name, number and unit are equal.</returns>
    public static bool operator ==(Figure left, Figure right) => left.Equals(right);

    /// <summary>Whether two figures differ in name, number or unit.</summary>
    /// <param name="left">One figure.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if name, number or unit differ.</returns>
    public static bool operator !=(Figure left, Figure right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(Figure other) => Name == other.Name && Value.Equals(other.Value) && Unit == other.Unit;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Figure other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((((StringComparer.Ordinal.GetHashCode(Name) * 397) ^ Value.GetHashCode()) * 397) ^ StringComparer.Ordinal.GetHashCode(Unit));

    /// <summary>Name, number and unit, in the invariant culture: <c>worst-clearance 1.25 mm</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Format(CultureInfo.InvariantCulture, Unit.Length == 0 ? "{0} {1}" : "{0} {1} {2}", Name, Print.Number(Value), Unit);
}
