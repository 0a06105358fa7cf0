using System;
using System.Collections.Generic;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>
/// The one door between quantities and <c>double</c>: millimetres on the 1 nm grid, radians, newtons, kilograms. It refuses
/// what is not a number in its range and undefined units (which end the process inside UnitsNet 5). With a list, problems are
/// collected and NaN is handed on; without one, the first problem is thrown.
/// </summary>
internal static class Door
{
    internal static double Millimetres(Length length, string parameter, Allowed allowed, List<InputProblem>? problems)
    {
        double millimetres = Millimetres(length);
        return allowed.Holds(millimetres) ? millimetres : Refuse(length, millimetres, new Name(parameter), allowed, problems);
    }

    internal static double Millimetres(Length length, Name parameter, Allowed allowed, List<InputProblem>? problems)
    {
        double millimetres = Millimetres(length);
        return allowed.Holds(millimetres) ? millimetres : Refuse(length, millimetres, parameter, allowed, problems);
    }

    /// <summary>Millimetres on the grid; NaN where the unit is undefined.</summary>
    internal static double Millimetres(Length length) => length.Unit == LengthUnit.Millimeter
        ? Grid.Snap(length.Value)
        : Grid.Snap(MillimetresOfOtherUnit(length));

    internal static double Radians(Angle angle, string parameter, Allowed allowedDegrees, List<InputProblem>? problems)
    {
        double degrees = Degrees(angle);
        return allowedDegrees.Holds(degrees)
            ? (angle.Unit == AngleUnit.Radian ? angle.Value : degrees * (Math.PI / 180))
            : Refuse(degrees, parameter, allowedDegrees, problems);
    }

    /// <summary>Degrees; NaN where the unit is undefined.</summary>
    internal static double Degrees(Angle angle) => angle.Unit switch
    {
        AngleUnit.Degree => angle.Value,
        AngleUnit.Radian => angle.Value * (180 / Math.PI),
        _ => Array.IndexOf(Angle.Units, angle.Unit) < 0 ? double.NaN : IsEndless(angle.Value) ? Endless(angle.Value) : angle.Degrees,
    };

    internal static double Kilograms(Mass mass, string parameter, Allowed allowed, List<InputProblem>? problems)
    {
        double kilograms = Kilograms(mass);
        return allowed.Holds(kilograms) ? kilograms : Refuse(kilograms, parameter, allowed, problems);
    }

    /// <summary>Kilograms; NaN where the unit is undefined.</summary>
    internal static double Kilograms(Mass mass) => mass.Unit switch
    {
        MassUnit.Kilogram => mass.Value,
        _ => Array.IndexOf(Mass.Units, mass.Unit) < 0 ? double.NaN : IsEndless(mass.Value) ? Endless(mass.Value) : mass.Kilograms,
    };

    internal static double Newtons(Force force, string parameter, Allowed allowed, List<InputProblem>? problems) =>
        Newtons(force, new Name(parameter), allowed, problems);

    internal static double Newtons(Force force, Name parameter, Allowed allowed, List<InputProblem>? problems)
    {
        double newtons = Newtons(force);
        return allowed.Holds(newtons) ? newtons : Refuse(newtons, parameter.ToString(), allowed, problems);
    }

    /// <summary>Newtons; NaN where the unit is undefined.</summary>
    internal static double Newtons(Force force) => force.Unit switch
    {
        ForceUnit.Newton => force.Value,
        _ => Array.IndexOf(Force.Units, force.Unit) < 0 ? double.NaN : IsEndless(force.Value) ? Endless(force.Value) : force.Newtons,
    };

    internal static double KilogramsPerCubicMetre(Density density, string parameter, Allowed allowed, List<InputProblem>? problems)
    {
        double value = density.Unit switch
        {
            DensityUnit.KilogramPerCubicMeter => density.Value,
            _ => Array.IndexOf(Density.Units, density.Unit) < 0 ? double.NaN : IsEndless(density.Value) ? Endless(density.Value) : density.KilogramsPerCubicMeter,
        };
        return allowed.Holds(value) ? value : Refuse(value, parameter, allowed, problems);
    }

    internal static double Megapascals(Pressure pressure, string parameter, Allowed allowed, List<InputProblem>? problems) =>
        Megapascals(pressure, new Name(parameter), allowed, problems);

    internal static double Megapascals(Pressure pressure, Name parameter, Allowed allowed, List<InputProblem>? problems)
    {
        double value = Megapascals(pressure);
        return allowed.Holds(value) ? value : Refuse(value, parameter.ToString(), allowed, problems);
    }

    /// <summary>Megapascals; NaN where the unit is undefined.</summary>
    internal static double Megapascals(Pressure pressure) => pressure.Unit switch
    {
        PressureUnit.Megapascal => pressure.Value,
        _ => Array.IndexOf(Pressure.Units, pressure.Unit) < 0 ? double.NaN : IsEndless(pressure.Value) ? Endless(pressure.Value) : pressure.Megapascals,
    };

    internal static double SquareMillimetres(Area area, string parameter, Allowed allowed, List<InputProblem>? problems)
    {
        double value = SquareMillimetres(area);
        return allowed.Holds(value) ? value : Refuse(value, parameter, allowed, problems);
    }

    /// <summary>Square millimetres; NaN where the unit is undefined.</summary>
    internal static double SquareMillimetres(Area area) => area.Unit switch
    {
        AreaUnit.SquareMillimeter => area.Value,
        _ => Array.IndexOf(Area.Units, area.Unit) < 0 ? double.NaN : IsEndless(area.Value) ? Endless(area.Value) : area.SquareMillimeters,
    };

    internal static double NewtonsPerMillimetre(ForcePerLength load, Name parameter, Allowed allowed, List<InputProblem>? problems)
    {
        double value = NewtonsPerMillimetre(load);
        return allowed.Holds(value) ? value : Refuse(value, parameter.ToString(), allowed, problems);
    }

    /// <summary>Newtons per millimetre; NaN where the unit is undefined.</summary>
    internal static double NewtonsPerMillimetre(ForcePerLength load) => load.Unit switch
    {
        ForcePerLengthUnit.NewtonPerMillimeter => load.Value,
        _ => Array.IndexOf(ForcePerLength.Units, load.Unit) < 0 ? double.NaN : IsEndless(load.Value) ? Endless(load.Value) : load.NewtonsPerMillimeter,
    };

    internal static double Celsius(Temperature temperature, string parameter, Allowed allowed, List<InputProblem>? problems)
    {
        double value = temperature.Unit switch
        {
            TemperatureUnit.DegreeCelsius => temperature.Value,
            _ => Array.IndexOf(Temperature.Units, temperature.Unit) < 0 ? double.NaN : IsEndless(temperature.Value) ? Endless(temperature.Value) : temperature.DegreesCelsius,
        };
        return allowed.Holds(value) ? value : Refuse(value, parameter, allowed, problems);
    }

    internal static double Percent(RelativeHumidity humidity, string parameter, Allowed allowed, List<InputProblem>? problems)
    {
        double value = humidity.Unit switch
        {
            RelativeHumidityUnit.Percent => humidity.Value,
            _ => Array.IndexOf(RelativeHumidity.Units, humidity.Unit) < 0 ? double.NaN : IsEndless(humidity.Value) ? Endless(humidity.Value) : humidity.Percent,
        };
        return allowed.Holds(value) ? value : Refuse(value, parameter, allowed, problems);
    }

    internal static double Number(double value, string parameter, Allowed allowed, List<InputProblem>? problems) =>
        allowed.Holds(value) ? value : Refuse(value, parameter, allowed, problems);

    internal static double Number(double value, Name parameter, Allowed allowed, List<InputProblem>? problems) =>
        allowed.Holds(value) ? value : Refuse(value, parameter.ToString(), allowed, problems);

    /// <summary>Whether a range in millimetres ends beyond where it begins; else its end is reported.</summary>
    internal static bool Rises(double from, double to, Name end, List<InputProblem>? problems)
    {
        if (from >= to)
        {
            Report(new InputProblem(end.ToString(), Print.Number(to) + " mm", "more than where it begins, " + Print.Number(from) + " mm", isRange: true), problems);
        }

        return from < to;
    }

    internal static bool IsMissing(object? value, Name parameter, string allowed, List<InputProblem>? problems)
    {
        if (value is not null)
        {
            return false;
        }

        Report(new InputProblem(parameter.ToString(), InputProblem.MissingValue, allowed, isRange: false), problems);
        return true;
    }

    /// <summary>Hands a problem on: into the list where there is one, as an exception where not.</summary>
    internal static void Report(InputProblem problem, List<InputProblem>? problems)
    {
        if (problems is null)
        {
            throw problem.ToException();
        }

        problems.Add(problem);
    }

    internal static Length Millimetres(double millimetres) => new(millimetres, LengthUnit.Millimeter);

    internal static Force Newtons(double newtons) => new(newtons, ForceUnit.Newton);

    internal static Angle Radians(double radians) => new(radians, AngleUnit.Radian);

    /// <summary>Out of every range in any unit, and so large that changing the unit might overflow, which UnitsNet answers with an exception of its own.</summary>
    private static bool IsEndless(double value) => Math.Abs(value) > 1e200;

    private static double Endless(double value) => value > 0 ? double.PositiveInfinity : double.NegativeInfinity;

    private static double MillimetresOfOtherUnit(Length length) => length.Unit switch
    {
        LengthUnit.Inch => length.Value * 25.4,
        LengthUnit.Foot => length.Value * 304.8,
        LengthUnit.Meter => length.Value * 1000,
        LengthUnit.Centimeter => length.Value * 10,
        _ => Array.IndexOf(Length.Units, length.Unit) < 0 ? double.NaN : IsEndless(length.Value) ? Endless(length.Value) : length.Millimeters,
    };

    private static double Refuse(Length length, double millimetres, Name parameter, Allowed allowed, List<InputProblem>? problems)
    {
        bool undefined = Array.IndexOf(Length.Units, length.Unit) < 0;
        Report(
            undefined
                ? new InputProblem(parameter.ToString(), FormattableString.Invariant($"a length in the undefined unit {(int)length.Unit}"), allowed.ToString(), isRange: false)
                : new InputProblem(parameter.ToString(), Print.Number(millimetres) + " mm", allowed.ToString(), isRange: true),
            problems);
        return double.NaN;
    }

    private static double Refuse(double value, string parameter, Allowed allowed, List<InputProblem>? problems)
    {
        Report(
            double.IsNaN(value)
                ? new InputProblem(parameter, "not a number or in an undefined unit", allowed.ToString(), isRange: false)
                : new InputProblem(parameter, Print.Number(value) + allowed.Suffix, allowed.ToString(), isRange: true),
            problems);
        return double.NaN;
    }
}

/// <summary>A parameter's path, put together only when it is printed: <c>job.Layers[1].Thickness</c>.</summary>
internal readonly struct Name(string before, int index = -1, string after = "")
{
    private readonly string _more = string.Empty;

    private Name(string before, int index, string after, string more)
        : this(before, index, after) => _more = more;

    internal Name Then(string member) => new(before, index, after, _more + member);

    public override string ToString() => index < 0 ? before + after + _more : FormattableString.Invariant($"{before}[{index}]{after}{_more}");
}
