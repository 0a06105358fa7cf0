using System;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit.Benchmarks;

/// <summary>1,024 varied inputs, the same in millimetres, in inches, and as plain numbers.</summary>
internal sealed class ScalarInputs
{
    internal const int Count = 1024;

    internal ScalarInputs(int seed, double least, double most)
    {
        Random random = new(seed);
        for (int i = 0; i < Count; i++)
        {
            // Whole micrometres: no number is special.
            Plain[i] = Math.Round((least + ((most - least) * random.NextDouble())) * 1000) / 1000;
            Millimetres[i] = new Length(Plain[i], LengthUnit.Millimeter);
            Inches[i] = new Length(Plain[i] / 25.4, LengthUnit.Inch);
        }
    }

    internal double[] Plain { get; } = new double[Count];

    internal Length[] Millimetres { get; } = new Length[Count];

    internal Length[] Inches { get; } = new Length[Count];
}
