using System;
using System.Collections;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit.Tests.Contracts;

/// <summary>One hostile value: what it is called, and where in the parameter the trouble sits (<c>.Layers[0].Thickness</c>).</summary>
internal sealed record Hostile(string Name, object? Value, string Path = "", bool MayBeNull = false);

/// <summary>What a careless or malicious host hands in, by type. For input records every init member is varied in turn.</summary>
internal static class HostileValues
{
    private static readonly Dictionary<Type, Hostile[]> s_numbers = new()
    {
        [typeof(double)] = [new("NaN", double.NaN), new("+infinity", double.PositiveInfinity), new("-infinity", double.NegativeInfinity), new("0", 0.0), new("-1", -1.0), new("10^9", 1e9), new("1e308", 1e308)],
        [typeof(int)] = [new("int.MinValue", int.MinValue), new("-1", -1), new("0", 0), new("10^9", 1_000_000_000), new("int.MaxValue", int.MaxValue)],
        [typeof(decimal)] = [new("decimal.MinValue", decimal.MinValue), new("-1", -1m), new("0", 0m), new("10^9", 1e9m), new("a millionth", 0.000001m), new("decimal.MaxValue", decimal.MaxValue)],
        [typeof(System.Threading.CancellationToken)] = [],
        [typeof(TimeSpan)] = [new("default", default(TimeSpan)), new("-1", TimeSpan.FromHours(-1)), new("least", TimeSpan.MinValue), new("most", TimeSpan.MaxValue)],
        [typeof(IProgress<double>)] = [],
        [typeof(string)] = [new("empty", string.Empty), new("100,000 brackets", new string('(', 100_000))],
        [typeof(bool)] = [],
        [typeof(object)] = [],
        [typeof(Length)] = Quantities<Length, LengthUnit>(static (value, unit) => new(value, unit), LengthUnit.Millimeter, LengthUnit.Kilometer),
        [typeof(Angle)] = Quantities<Angle, AngleUnit>(static (value, unit) => new(value, unit), AngleUnit.Degree, AngleUnit.Revolution),
        [typeof(Mass)] = Quantities<Mass, MassUnit>(static (value, unit) => new(value, unit), MassUnit.Kilogram, MassUnit.Tonne),
        [typeof(Force)] = Quantities<Force, ForceUnit>(static (value, unit) => new(value, unit), ForceUnit.Newton, ForceUnit.Meganewton),
        [typeof(Density)] = Quantities<Density, DensityUnit>(static (value, unit) => new(value, unit), DensityUnit.KilogramPerCubicMeter, DensityUnit.TonnePerCubicMeter),
        [typeof(Temperature)] = Quantities<Temperature, TemperatureUnit>(static (value, unit) => new(value, unit), TemperatureUnit.DegreeCelsius, TemperatureUnit.Kelvin),
        [typeof(RelativeHumidity)] = Quantities<RelativeHumidity, RelativeHumidityUnit>(static (value, unit) => new(value, unit), RelativeHumidityUnit.Percent, RelativeHumidityUnit.Percent),
        [typeof(Pressure)] = Quantities<Pressure, PressureUnit>(static (value, unit) => new(value, unit), PressureUnit.Megapascal, PressureUnit.Gigapascal),
        [typeof(ForcePerLength)] = Quantities<ForcePerLength, ForcePerLengthUnit>(static (value, unit) => new(value, unit), ForcePerLengthUnit.NewtonPerMillimeter, ForcePerLengthUnit.MeganewtonPerMeter),
        [typeof(Area)] = Quantities<Area, AreaUnit>(static (value, unit) => new(value, unit), AreaUnit.SquareMillimeter, AreaUnit.SquareKilometer),
    };

    internal static IEnumerable<Hostile> Of(ParameterInfo parameter) => Of(parameter.ParameterType, PublicMembers.IsNullable(parameter));

    private static IEnumerable<Hostile> Of(Type type, bool isNullable)
    {
        if (!type.IsValueType || Nullable.GetUnderlyingType(type) is not null)
        {
            yield return new Hostile("null", null, MayBeNull: isNullable);
        }

        foreach (Hostile hostile in OfValue(Nullable.GetUnderlyingType(type) ?? type))
        {
            yield return hostile;
        }
    }

    private static IEnumerable<Hostile> OfValue(Type type)
    {
        if (s_numbers.TryGetValue(type, out Hostile[]? numbers))
        {
            return numbers;
        }

        if (type.IsEnum)
        {
            return [new("undefined 999", Enum.ToObject(type, 999)), new("undefined -1", Enum.ToObject(type, -1))];
        }

        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>))
        {
            return Lists(type.GetGenericArguments()[0]);
        }

        if (type == typeof(TolerancedLength))
        {
            return Toleranced();
        }

        if (type.IsValueType)
        {
            return StructsOf(type);
        }

        return PublicMembers.IsRecord(type) ? Varied(type) : [];
    }

    private static Hostile[] Quantities<TQuantity, TUnit>(Func<double, TUnit, TQuantity> make, TUnit unit, TUnit large)
        where TQuantity : struct
        where TUnit : struct, Enum =>
    [
        new("default", default(TQuantity)),
        new("-1", make(-1, unit)),
        new("10^9", make(1e9, unit)),
        new("1e308 of a large unit", make(1e308, large)),
        new("-1e308 of a large unit", make(-1e308, large)),
        new("undefined unit", make(1, (TUnit)Enum.ToObject(typeof(TUnit), 999))),
        new("unit 0", make(1, (TUnit)Enum.ToObject(typeof(TUnit), 0))),
    ];

    private static IEnumerable<Hostile> Toleranced()
    {
        Length ten = new(10, LengthUnit.Millimeter);
        foreach (Hostile nominal in s_numbers[typeof(Length)])
        {
            yield return new Hostile(nominal.Name, (TolerancedLength)(Length)nominal.Value!);
            if (nominal.Name.StartsWith('-') || nominal.Name == "default")
            {
                continue;
            }

            yield return new Hostile("deviations of " + nominal.Name, new TolerancedLength(ten, (Length)nominal.Value!, (Length)nominal.Value!));
        }

        yield return new Hostile("deviations crossed", new TolerancedLength(ten, ten, default));
        yield return new Hostile("scope 999", new TolerancedLength(ten, default, ten, (DeviationScope)999));
        yield return new Hostile("scope -1", new TolerancedLength(ten, default, ten, (DeviationScope)(-1)));
    }

    private static IEnumerable<Hostile> StructsOf(Type type)
    {
        yield return new Hostile("default", Activator.CreateInstance(type));
        if (type.GetConstructor([typeof(double)]) is not { } fromNumber)
        {
            yield break;
        }

        foreach (Hostile number in s_numbers[typeof(double)])
        {
            yield return new Hostile(number.Name, fromNumber.Invoke([number.Value]));
        }
    }

    private static IEnumerable<Hostile> Lists(Type element)
    {
        Array good = ((IEnumerable)GoodValues.Of(typeof(IReadOnlyList<>).MakeGenericType(element))).Cast<object>().ToArray();
        object? first = good.Length > 0 ? good.GetValue(0) : null;
        yield return new Hostile("empty", Array.CreateInstance(element, 0));
        yield return new Hostile("10^9 items", Activator.CreateInstance(typeof(EndlessList<>).MakeGenericType(element), first));
        Array many = Array.CreateInstance(element, 1001);
        for (int i = 0; i < many.Length; i++)
        {
            many.SetValue(first, i);
        }

        yield return new Hostile("1001 items", many);
        foreach (Hostile item in Of(element, isNullable: false))
        {
            Array list = Array.CreateInstance(element, Math.Max(1, good.Length));
            Array.Copy(good, list, good.Length);
            list.SetValue(item.Value, 0);
            yield return new Hostile("[0] " + item.Name, list, "[0]" + item.Path, item.MayBeNull);
        }
    }

    private static IEnumerable<Hostile> Varied(Type record)
    {
        object good = GoodValues.Of(record);
        foreach (PropertyInfo member in PublicMembers.InitMembers(record))
        {
            foreach (Hostile hostile in Of(member.PropertyType, PublicMembers.IsNullable(member)))
            {
                object copy = record.GetMethod("<Clone>$")!.Invoke(good, null)!;
                member.SetMethod!.Invoke(copy, BindingFlags.DoNotWrapExceptions, null, [hostile.Value], null);
                yield return new Hostile(member.Name + " " + hostile.Name, copy, "." + member.Name + hostile.Path, hostile.MayBeNull);
            }
        }
    }

    /// <summary>Claims a thousand million items and gives out a few: walking it through would never end, so that fails.</summary>
    private sealed class EndlessList<T>(T item) : IReadOnlyList<T>
    {
        public int Count => 1_000_000_000;

        public T this[int index] => index < 3 ? item : throw new InvalidOperationException("The endless list was read past its third item.");

        public IEnumerator<T> GetEnumerator()
        {
            for (int i = 0; i < 3; i++)
            {
                yield return item;
            }

            throw new InvalidOperationException("The endless list was walked through.");
        }

        IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
    }
}
