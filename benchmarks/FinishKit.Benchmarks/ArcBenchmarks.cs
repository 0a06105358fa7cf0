using System;
using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace FinishKit.Benchmarks;

/// <summary>Arc from chord and rise: radius, half-angle and arc length, against the same arithmetic on double.</summary>
[MemoryDiagnoser]
public class ArcBenchmarks
{
    private readonly ScalarInputs _chord = new(1, 200, 2000);
    private readonly ScalarInputs _rise = new(2, 1, 100);
    private readonly ScalarInputs _shortChord = new(7, 200, 400);
    private readonly ScalarInputs _lowRise = new(8, 0.6, 3);

    [Benchmark(Baseline = true)]
    public double Hand()
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            double c = _chord.Plain[i], s = _rise.Plain[i];
            double radius = (c * c / (8 * s)) + (s / 2);
            double halfAngle = 2 * Math.Atan(2 * s / c);
            sum += radius + halfAngle + (2 * radius * halfAngle);
        }

        return sum;
    }

    [Benchmark]
    public double Millimetres() => Sum(_chord.Millimetres, _rise.Millimetres);

    [Benchmark]
    public double Inches() => Sum(_chord.Inches, _rise.Inches);

    [Benchmark]
    public double MillimetresFindingUnread() => Sum(_shortChord.Millimetres, _lowRise.Millimetres); // under 5.5 mm of rise there is a finding; nobody reads it

    private static double Sum(Length[] chords, Length[] rises)
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            CircularArc arc = Arc.FromChordAndRise(chords[i], rises[i]);
            sum += arc.Radius!.Value.Value + arc.HalfAngle.Value + arc.ArcLength.Value;
        }

        return sum;
    }
}
