using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using Xunit;

namespace FinishKit.Tests.Materials;

/// <summary>Equilibrium moisture content.</summary>
public sealed class EquilibriumMoistureTests
{
    private static bool s_seen;

    public static TheoryData<double, double, double, string> Table()
    {
        TheoryData<double, double, double, string> data = [];
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("tables-emc.csv"))
        {
            data.Add(row.Number("T_F"), row.Number("RH_pct"), row.Number("EMC_table_pct"), row["tag"] + ": " + row["source"]);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Table))]
    public void The_printed_table_is_met(double fahrenheit, double humidity, double printed, string source)
    {
        double moisture = EquilibriumMoisture.InAir(Temperature.FromDegreesFahrenheit(fahrenheit), RelativeHumidity.FromPercent(humidity)).MoistureContent;
        Assert.True(Math.Abs(printed - moisture) <= 0.06, FormattableString.Invariant($"{moisture}, not {printed} ({source})"));
    }

    [Fact]
    public void InAir()
    {
        #region example: EquilibriumMoisture.InAir
        MoistureBalance room = EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(21.1), RelativeHumidity.FromPercent(50));
        double moisture = room.MoistureContent;             // 9.2 percent
        #endregion
        Assert.Equal(9.242, moisture, 1e-3); // E_70_50, CONFIRMED in a copy
        WorkingsCheck.Recompute(room.Explain());
    }

    /// <summary>Nothing holds ovendry wood but dry air: exactly 0, in figures too, and in either unit of temperature.</summary>
    [Fact]
    public void Ovendry_wood_is_held_by_dry_air()
    {
        for (double t = -2; t <= 60; t += 15.5)
        {
            MoistureBalance dry = EquilibriumMoisture.HoldingAt(Temperature.FromDegreesCelsius(t), 0);
            Assert.Equal((0, 0), (dry.RelativeHumidity.Percent, dry.MoistureContent));
            Assert.All(dry.Figures().Where(static figure => figure.Name != "temperature"), static figure => Assert.Equal(0, figure.Value));
        }
    }

    /// <summary>The printed values lie from 30 to 130 °F; a limit exactly met is met, in either unit.</summary>
    [Theory]
    [InlineData(30, 0)]
    [InlineData(130, 0)]
    [InlineData(29.99, 1)]
    [InlineData(130.01, 1)]
    public void Outside_the_printed_values_a_note_says_so(double fahrenheit, int notes)
    {
        foreach (Temperature temperature in new[] { Temperature.FromDegreesFahrenheit(fahrenheit), Temperature.FromDegreesCelsius((fahrenheit - 32) / 1.8), Temperature.FromKelvins(((fahrenheit - 32) / 1.8) + 273.15) })
        {
            IReadOnlyList<Finding> findings = EquilibriumMoisture.InAir(temperature, RelativeHumidity.FromPercent(50)).Findings;
            Assert.Equal(notes, findings.Count);
            Assert.All(findings, static finding => Assert.Equal(("materials-moisture-outside-table", Severity.Note), (finding.Code, finding.Severity)));
        }
    }

    [Fact]
    public void HoldingAt()
    {
        #region example: EquilibriumMoisture.HoldingAt
        MoistureBalance store = EquilibriumMoisture.HoldingAt(Temperature.FromDegreesCelsius(21.1), 9);
        double humidity = store.RelativeHumidity.Percent;   // 48.6
        #endregion
        Assert.Equal(9, store.MoistureContent, 1e-9);
        Assert.InRange(humidity, 48, 50); // between the printed 9.2 at 50% and 8.4 at 45%
    }

    [Fact]
    public void Moisture_grows_with_humidity_and_the_inverse_comes_back()
    {
        for (double t = -2; t <= 60; t += 2)
        {
            double before = -1;
            for (double rh = 0; rh <= 85; rh += 5)
            {
                MoistureBalance there = EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(t), RelativeHumidity.FromPercent(rh));
                Assert.True(there.MoistureContent > before);
                before = there.MoistureContent;
                Assert.Equal(rh, EquilibriumMoisture.HoldingAt(Temperature.FromDegreesCelsius(t), before).RelativeHumidity.Percent, 1e-9);
            }
        }
    }

    [Theory]
    [InlineData("E_30_50", 30, 50)]
    [InlineData("E_40_65", 40, 65)]
    [InlineData("E_70_50", 70, 50)]
    [InlineData("E_70_65", 70, 65)]
    [InlineData("E_70_80", 70, 80)]
    [InlineData("E_100_30", 100, 30)]
    [InlineData("E_100_50", 100, 50)]
    [InlineData("E_130_20", 130, 20)]
    public void The_rows_of_the_check_values_are_met(string id, double fahrenheit, double humidity)
    {
        // CONFIRMED: equation and table, both read in copies. The rows give the equation to three decimals.
        IReadOnlyDictionary<string, string> row = ReferenceTable.CheckValue(id);
        Assert.Equal("CONFIRMED", row["tag"]);
        Assert.StartsWith(FormattableString.Invariant($"{fahrenheit} F ("), row["inputs"], StringComparison.Ordinal);
        Assert.EndsWith(FormattableString.Invariant($", {humidity}% RH"), row["inputs"], StringComparison.Ordinal);
        double moisture = EquilibriumMoisture.InAir(Temperature.FromDegreesFahrenheit(fahrenheit), RelativeHumidity.FromPercent(humidity)).MoistureContent;
        Assert.Equal(row.Number("expected"), moisture, 5.001e-4);
    }

    [Fact]
    public void E_wiki_is_met_at_the_hot_end_of_the_range_in_either_unit()
    {
        IReadOnlyDictionary<string, string> row = ReferenceTable.CheckValue("E_wiki"); // CONFIRMED in a copy: published 8.4; 140 F is 60 °C
        Assert.Equal("CONFIRMED", row["tag"]);
        Assert.Equal(row.Number("expected"), EquilibriumMoisture.InAir(Temperature.FromDegreesFahrenheit(140), RelativeHumidity.FromPercent(55)).MoistureContent, 5.001e-3);
        Assert.Equal(row.Number("expected"), EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(60), RelativeHumidity.FromPercent(55)).MoistureContent, 5.001e-3);
    }

    [Fact]
    public void Every_E_row_is_tested() => Assert.Equal(9, ReferenceTable.Read("check-values.csv").Count(static row => row["calculator"] == "EMC"));

    [Fact]
    public void It_allocates_nothing()
    {
        (Temperature celsius, Temperature kelvin) = (Temperature.FromDegreesCelsius(21.1), Temperature.FromKelvins(294));
        EquilibriumMoisture.InAir(kelvin, RelativeHumidity.FromPercent(50));
        AllocatesNothing(() => EquilibriumMoisture.InAir(celsius, RelativeHumidity.FromPercent(50)).HasProblem);
        AllocatesNothing(() => EquilibriumMoisture.InAir(celsius, RelativeHumidity.FromPercent(50)).MoistureContent > 10);
        AllocatesNothing(() => EquilibriumMoisture.HoldingAt(celsius, 9).RelativeHumidity.Percent > 60);
    }

    [Fact]
    public void All_problems_are_reported_at_once()
    {
        Assert.Equal(["temperature", "relativeHumidity"], EquilibriumMoisture.CheckInAir(Temperature.FromDegreesCelsius(60.5), RelativeHumidity.FromPercent(98.5)).Select(static problem => problem.Parameter));
        Assert.Equal(["temperature", "moistureContent"], EquilibriumMoisture.CheckHoldingAt(Temperature.FromDegreesCelsius(-2.5), 20.5).Select(static problem => problem.Parameter));
        Assert.Equal(["temperature", "relativeHumidity"], EquilibriumMoisture.CheckInAir(new Temperature(20, (UnitsNet.Units.TemperatureUnit)999), new RelativeHumidity(50, (UnitsNet.Units.RelativeHumidityUnit)999)).Select(static problem => problem.Parameter));
        Assert.Empty(EquilibriumMoisture.CheckInAir(Temperature.FromDegreesCelsius(60), RelativeHumidity.FromPercent(98)));
        Assert.Empty(EquilibriumMoisture.CheckHoldingAt(Temperature.FromDegreesCelsius(-2), 20));
        Assert.Equal("temperature", Assert.Throws<ArgumentOutOfRangeException>(() => EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(60.5), RelativeHumidity.FromPercent(98.5))).ParamName);
    }

    [Fact]
    public void Answers_compare_by_air_and_wood()
    {
        MoistureBalance one = EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(50));
        Assert.True(one == EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(50)));
        Assert.False(one != EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(50)));
        Assert.True(one.Equals((object)EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(50))));
        Assert.Equal(one.GetHashCode(), EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(50)).GetHashCode());
        Assert.True(one != EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(21), RelativeHumidity.FromPercent(50)));
        Assert.True(one != EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(51)));
        Assert.False(one.Equals("air"));
        Assert.Equal("wood in air of 20 °C and 50% comes to 9.271%", one.ToString()); // 9.27114 by another program, from the equation
    }

    private static void AllocatesNothing(Func<bool> question)
    {
        for (int i = 0; i < 64; i++)
        {
            s_seen = question();
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1024; i++)
        {
            s_seen |= question();
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
