using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>The moisture content that wood comes to in air of a temperature and humidity, and the humidity that holds it at a moisture content.</summary>
public static class EquilibriumMoisture
{
    internal static readonly Source Simpson = Source.Published("FPL-RN-0268", "Equilibrium moisture content of wood in outdoor locations in the United States and worldwide", "USDA Forest Service, Forest Products Laboratory", 1998, "equation in SI units", SourceReading.Copy, "equation as coded in ConSciR, R/calcEMC_wood.R; the title is from memory");

    /// <summary>Where the printed values lie that the equation was held against, 30 and 130 °F, in °C.</summary>
    internal const double Coldest = -10 / 9.0, Hottest = 490 / 9.0;

    private static readonly Allowed s_temperature = new(-2, 60, "°C");
    private static readonly Allowed s_humidity = new(0, 98, "%");
    private static readonly Allowed s_moisture = new(0, 20, "%");

    /// <summary>Moisture content of wood that has lain long enough in air.</summary>
    /// <param name="temperature">Temperature of the air [temperature], -2 to 60 °C.</param>
    /// <param name="relativeHumidity">Its relative humidity [relative humidity], 0 to 98%.</param>
    /// <returns>The balance of air and wood; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: M = 1800/W (K h/(1 - K h) + (K1 K h + 2 K1 K2 K² h²)/(1 + K1 K h + K1 K2 K² h²)), T in °C, h as a fraction.</para>
    /// <para>Validity: clear wood without coating, long enough in the same air, -2 to 60 °C and up to 98%; within 0.06 of the 100 printed values it was held against, which lie between -1.1 and 54.4 °C; beyond these it was held against one value only, at 60 °C and 55%, and a finding says so.</para>
    /// <para>Source: FPL-RN-0268 (read in a copy).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// MoistureBalance room = EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(21.1), RelativeHumidity.FromPercent(50));
    /// double moisture = room.MoistureContent;             // 9.2 percent
    /// </code></example>
    public static MoistureBalance InAir(Temperature temperature, RelativeHumidity relativeHumidity)
    {
        (double celsius, double humidity) = Read(temperature, relativeHumidity, null);
        return new MoistureBalance(celsius, humidity);
    }

    /// <summary>All problems with the input of <see cref="InAir(Temperature, RelativeHumidity)"/>; nothing is thrown.</summary>
    /// <param name="temperature">As there.</param>
    /// <param name="relativeHumidity">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckInAir(Temperature temperature, RelativeHumidity relativeHumidity)
    {
        List<InputProblem> problems = [];
        Read(temperature, relativeHumidity, problems);
        return problems;
    }

    /// <summary>The relative humidity that holds wood at a moisture content.</summary>
    /// <param name="temperature">Temperature of the air [temperature], -2 to 60 °C.</param>
    /// <param name="moistureContent">Moisture content in percent, 0 to 20.</param>
    /// <returns>The balance of air and wood; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: that of <see cref="InAir(Temperature, RelativeHumidity)"/>, solved for the humidity by halving an interval 60 times; none for ovendry wood.</para>
    /// <para>Validity: as there; moisture content only grows with humidity, so there is one answer.</para>
    /// <para>Source: FPL-RN-0268 (read in a copy).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit.</exception>
    /// <example><code>
    /// MoistureBalance store = EquilibriumMoisture.HoldingAt(Temperature.FromDegreesCelsius(21.1), 9);
    /// double humidity = store.RelativeHumidity.Percent;   // 48.6
    /// </code></example>
    public static MoistureBalance HoldingAt(Temperature temperature, double moistureContent)
    {
        (double celsius, double moisture) = Read(temperature, moistureContent, null);
        return new MoistureBalance(celsius, Humidity(celsius, moisture));
    }

    /// <summary>All problems with the input of <see cref="HoldingAt(Temperature, double)"/>; nothing is thrown.</summary>
    /// <param name="temperature">As there.</param>
    /// <param name="moistureContent">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckHoldingAt(Temperature temperature, double moistureContent)
    {
        List<InputProblem> problems = [];
        Read(temperature, moistureContent, problems);
        return problems;
    }

    /// <summary>The one formula body, for the numbers and for the workings.</summary>
    internal static double Solve<TTrace>(double celsius, double humidity, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("T", celsius, "°C", Sources.Given);
        trace.Given("RH", humidity, "%", Sources.Given);
        double h = trace.Step("h", nameof(h), humidity / 100, string.Empty, Simpson);
        double w = trace.Step("W", nameof(w), 349 + (1.29 * celsius) + (0.0135 * celsius * celsius), string.Empty, Simpson);
        double k = trace.Step("K", nameof(k), 0.805 + (0.000736 * celsius) - (0.00000273 * celsius * celsius), string.Empty, Simpson);
        double k1 = trace.Step("K1", nameof(k1), 6.27 - (0.00938 * celsius) - (0.000303 * celsius * celsius), string.Empty, Simpson);
        double k2 = trace.Step("K2", nameof(k2), 1.91 + (0.0407 * celsius) - (0.000293 * celsius * celsius), string.Empty, Simpson);
        double a = trace.Step("a", nameof(a), k * h, string.Empty, Simpson);
        double b = trace.Step("b", nameof(b), k1 * a, string.Empty, Simpson);
        double c = trace.Step("c", nameof(c), k1 * k2 * a * a, string.Empty, Simpson);
        double moisture = trace.Step("M", nameof(moisture), 1800 / w * ((a / (1 - a)) + ((b + (2 * c)) / (1 + b + c))), "%", Simpson);
        return moisture;
    }

    private static (double Celsius, double Humidity) Read(Temperature temperature, RelativeHumidity relativeHumidity, List<InputProblem>? problems) =>
        (Door.Celsius(temperature, nameof(temperature), s_temperature, problems), Door.Percent(relativeHumidity, nameof(relativeHumidity), s_humidity, problems));

    private static (double Celsius, double Moisture) Read(Temperature temperature, double moistureContent, List<InputProblem>? problems) =>
        (Door.Celsius(temperature, nameof(temperature), s_temperature, problems), Door.Number(moistureContent, nameof(moistureContent), s_moisture, problems));

    private static double Humidity(double celsius, double moisture)
    {
        // Halving comes near 0 and never to it; and dry air alone holds ovendry wood.
        if (moisture == 0)
        {
            return 0;
        }

        (double low, double high) = (0, s_humidity.Most);
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Solve(celsius, middle, default(Silent)) < moisture ? (middle, high) : (low, middle);
        }

        return high;
    }
}
