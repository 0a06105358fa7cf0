using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>Air and wood in balance: what <see cref="EquilibriumMoisture"/> answers. The default value is wood at 0 °C in dry air.</summary>
public readonly struct MoistureBalance : IEquatable<MoistureBalance>
{
    private readonly double _celsius, _humidity, _moisture;

    internal MoistureBalance(double celsius, double humidity)
    {
        _celsius = celsius;
        _humidity = humidity;
        _moisture = EquilibriumMoisture.Solve(celsius, humidity, default(Silent));
    }

    /// <summary>Temperature of the air.</summary>
    public Temperature Temperature => new(_celsius, TemperatureUnit.DegreeCelsius);

    /// <summary>Relative humidity of the air.</summary>
    public RelativeHumidity RelativeHumidity => new(_humidity, RelativeHumidityUnit.Percent);

    /// <summary>Moisture content of the wood in percent of its ovendry mass.</summary>
    public double MoistureContent => _moisture;

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: never, for a balance.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "Every result has it; a later finding may be a problem.")]
    public bool HasProblem => false;

    /// <summary>Whether the temperature lies outside the values that the equation was held against; put together on reading.</summary>
    /// <remarks>Codes: <c>materials-moisture-outside-table</c>.</remarks>
    public IReadOnlyList<Finding> Findings => IsWithinTable ? [] :
    [
        new Finding(
            "materials-moisture-outside-table",
            Severity.Note,
            $"{Print.Round(_celsius, 3)} °C lies outside {Print.Round(EquilibriumMoisture.Coldest, 1)} to {Print.Round(EquilibriumMoisture.Hottest, 1)} °C, where the equation was held against printed values: measure the wood's moisture where it decides.",
            [new("temperature", _celsius, "°C"), new("coldest", EquilibriumMoisture.Coldest, "°C"), new("hottest", EquilibriumMoisture.Hottest, "°C")],
            EquilibriumMoisture.Simpson),
    ];

    /// <summary>A billionth of a degree is the noise of changing units.</summary>
    private bool IsWithinTable => _celsius >= EquilibriumMoisture.Coldest - 1e-9 && _celsius <= EquilibriumMoisture.Hottest + 1e-9;

    /// <summary>Whether temperature and humidity agree.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree.</returns>
    public static bool operator ==(MoistureBalance left, MoistureBalance right) => left.Equals(right);

    /// <summary>Whether temperature or humidity differ.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if one differs.</returns>
    public static bool operator !=(MoistureBalance left, MoistureBalance right) => !left.Equals(right);

    /// <summary>How the moisture content follows, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        EquilibriumMoisture.Solve(_celsius, _humidity, recorder);
        return recorder.ToWorkings("Equilibrium moisture content");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Temperature in °C, relative humidity and moisture content in percent.</returns>
    public IReadOnlyList<Figure> Figures() =>
    [
        new("temperature", _celsius, "°C"),
        new("relative-humidity", _humidity, "%"),
        new("moisture-content", _moisture, "%"),
    ];

    /// <inheritdoc/>
    public bool Equals(MoistureBalance other) => (_celsius, _humidity).Equals((other._celsius, other._humidity));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is MoistureBalance other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (_celsius, _humidity).GetHashCode();

    /// <summary>Air and wood, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"wood in air of {Print.Round(_celsius, 3)} °C and {Print.Round(_humidity, 3)}% comes to {Print.Round(_moisture, 3)}%";
}
