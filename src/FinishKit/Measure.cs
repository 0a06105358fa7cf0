using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>Reading and writing lengths as people write them.</summary>
public static class Measure
{
    /// <summary>A length in millimetres.</summary>
    /// <param name="millimetres">The number of millimetres.</param>
    /// <returns>The length.</returns>
    public static Length Mm(double millimetres) => new(millimetres, LengthUnit.Millimeter);

    /// <summary>A length in inches.</summary>
    /// <param name="inches">The number of inches.</param>
    /// <returns>The length.</returns>
    public static Length Inch(double inches) => new(inches, LengthUnit.Inch);
}
