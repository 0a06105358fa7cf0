using System;

namespace FinishKit;

/// <summary>
/// The 1 nm grid that every length lies on, and floor and ceiling of ratios. 64ths of an inch have exactly six decimals in
/// millimetres, so snapping makes inch and millimetre input meet exactly. Comparison needs no tolerance after it.
/// </summary>
internal static class Grid
{
    private const double StepsPerMillimetre = 1e6;

    /// <summary>The nearest multiple of 1e-6 mm, half to even.</summary>
    internal static double Snap(double millimetres) => Math.Round(millimetres * StepsPerMillimetre) / StepsPerMillimetre;

    /// <summary>A length as a whole number of nanometres, half to even: what search calculators compute with.</summary>
    internal static long Nanometres(double millimetres) => (long)Math.Round(millimetres * StepsPerMillimetre);

    /// <summary>Whole nanometres as millimetres.</summary>
    internal static double Millimetres(long nanometres) => nanometres / StepsPerMillimetre;

    /// <summary>The least multiple of 1e-6 mm that is not below <paramref name="millimetres"/>; rounding noise of 1e-9 mm does not count.</summary>
    internal static double SnapUp(double millimetres) => Math.Ceiling((millimetres * StepsPerMillimetre) - 1e-3) / StepsPerMillimetre;

    /// <summary>The greatest multiple of 1e-6 mm that is not above <paramref name="millimetres"/>; rounding noise of 1e-9 mm does not count.</summary>
    internal static double SnapDown(double millimetres) => Math.Floor((millimetres * StepsPerMillimetre) + 1e-3) / StepsPerMillimetre;

    /// <summary>Ceiling of a ratio of computed amounts; a ratio within 1e-9 of a whole number is that number, so that a limit exactly met is met.</summary>
    internal static double CeilingOfRatio(double amount, double unit)
    {
        double ratio = amount / unit;
        double nearest = Math.Round(ratio);
        return Math.Abs(ratio - nearest) <= 1e-9 * Math.Max(1, nearest) ? nearest : Math.Ceiling(ratio);
    }

    /// <summary>The greatest length of which both are multiples; the other where one is 0.</summary>
    internal static long CommonDivisor(long one, long other)
    {
        while (other != 0)
        {
            (one, other) = (other, one % other);
        }

        return one;
    }
}
