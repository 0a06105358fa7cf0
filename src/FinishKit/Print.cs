using System;
using System.Globalization;

namespace FinishKit;

/// <summary>Numbers and lengths in messages: invariant, no more digits than mean something.</summary>
internal static class Print
{
    /// <summary>A number to ten significant digits, without exponent where it can be helped.</summary>
    internal static string Number(double value)
    {
        if (value == 0)
        {
            return "0"; // never "-0"
        }

        double size = Math.Abs(value);
        return size is >= 1e-4 and < 1e10
            ? ((decimal)value).ToString("0.##########", CultureInfo.InvariantCulture) is var fixedPoint && fixedPoint.Length <= 12
                ? fixedPoint
                : value.ToString("G10", CultureInfo.InvariantCulture)
            : value.ToString("G10", CultureInfo.InvariantCulture);
    }

    /// <summary>Millimetres to the micrometre, for reading: <c>2.675 mm</c>.</summary>
    internal static string Mm(double millimetres) => Round(millimetres, 3) + " mm";

    /// <summary>Millimetres rounded up to the micrometre: for the least size that is still enough.</summary>
    internal static string MmUp(double millimetres) => Mm(Math.Ceiling((millimetres * 1000) - 1e-6) / 1000);

    /// <summary>A number to at most so many decimals, half away from zero.</summary>
    internal static string Round(double value, int decimals)
    {
        double rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return rounded == 0 ? "0" : rounded.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    /// <summary>A probability or small count, three significant digits: <c>0.0078</c>, <c>3.9E-05</c>.</summary>
    internal static string Small(double value) => value.ToString("G3", CultureInfo.InvariantCulture);
}
