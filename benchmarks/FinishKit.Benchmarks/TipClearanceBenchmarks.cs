using System;
using BenchmarkDotNet.Attributes;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit.Benchmarks;

/// <summary>Clearance of a tip at an angle, against the same arithmetic on double.</summary>
[MemoryDiagnoser]
public class TipClearanceBenchmarks
{
    private readonly ScalarInputs _depth = new(3, 20, 40);
    private readonly ScalarInputs _length = new(4, 15, 50);
    private readonly ScalarInputs _set = new(5, 0, 2);
    private readonly ScalarInputs _degrees = new(6, 0, 60);
    private readonly Angle[] _angles = new Angle[ScalarInputs.Count];

    public TipClearanceBenchmarks() => _angles = Array.ConvertAll(_degrees.Plain, static d => new Angle(d, AngleUnit.Degree));

    [Benchmark(Baseline = true)]
    public double Hand()
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            double angle = _degrees.Plain[i] * (Math.PI / 180);
            double tip = _set.Plain[i] + (_length.Plain[i] * Math.Cos(angle));
            sum += tip + (_depth.Plain[i] - tip);
        }

        return sum;
    }

    [Benchmark]
    public double Millimetres() => Sum(_depth.Millimetres, _length.Millimetres, _set.Millimetres);

    [Benchmark]
    public double Inches() => Sum(_depth.Inches, _length.Inches, _set.Inches);

    private double Sum(Length[] depths, Length[] lengths, Length[] sets)
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            TipClearance tip = FastenerLength.TipClearance(depths[i], lengths[i], sets[i], _angles[i]);
            sum += tip.TipDepth.Value + tip.Clearance.Value;
        }

        return sum;
    }
}
