using System;
using MathNet.Numerics;
using MathNet.Numerics.Integration;

namespace FinishKit;

/// <summary>The standard normal distribution. The only file that names MathNet.</summary>
internal static class Normal
{
    /// <summary>Share of a standard normal population below <paramref name="z"/>.</summary>
    internal static double Below(double z) => 0.5 * SpecialFunctions.Erfc(-z / Math.Sqrt(2));

    internal static double Density(double z) => Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);
}

/// <summary>Numerical integration with the same nodes on every machine.</summary>
internal static class Quadrature
{
    internal static double Integrate(Func<double, double> function, double from, double to) =>
        to <= from ? 0 : GaussKronrodRule.Integrate(function, from, to, out _, out _, 1e-10, 12, 15);
}
