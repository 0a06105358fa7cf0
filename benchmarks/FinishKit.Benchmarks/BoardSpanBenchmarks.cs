using System;
using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace FinishKit.Benchmarks;

/// <summary>Largest bay of a board, against the same arithmetic on double.</summary>
[MemoryDiagnoser]
public class BoardSpanBenchmarks
{
    private readonly ScalarInputs _width = new(31, 40, 200);
    private readonly ScalarInputs _thickness = new(32, 6, 22);
    private readonly BeamSection[] _sections = new BeamSection[ScalarInputs.Count];
    private readonly BeamSection[] _unknown = new BeamSection[ScalarInputs.Count];

    public BoardSpanBenchmarks()
    {
        for (int i = 0; i < _sections.Length; i++)
        {
            _sections[i] = new BeamSection(_width.Millimetres[i], _thickness.Millimetres[i], Pressure.FromMegapascals(8900)) { BendingStrength = Pressure.FromMegapascals(65) };
            _unknown[i] = _sections[i] with { BendingStrength = null };
        }
    }

    [Benchmark(Baseline = true)]
    public double Hand()
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            double b = _width.Plain[i], t = _thickness.Plain[i];
            double stiffness = 0.8 * 8900 * b * t * t * t / 12, modulus = b * t * t / 6;
            double byDeflection = Math.Min(Math.Pow(3 * stiffness / (0.015097 * 200), 1.0 / 3), Math.Sqrt(stiffness / (150 * 0.015097 * 200)));
            double byStress = 65.0 / 4 * modulus / (0.2074 * 200);
            sum += Math.Min(500, Math.Min(byDeflection, byStress));
        }

        return sum;
    }

    [Benchmark]
    public double Millimetres() => Sum(_sections);

    [Benchmark]
    public double MillimetresFindingUnread() => Sum(_unknown);

    private static double Sum(BeamSection[] sections)
    {
        double sum = 0;
        foreach (BeamSection section in sections)
        {
            sum += BoardSpan.LargestBay(section).LargestBay.Value;
        }

        return sum;
    }
}
