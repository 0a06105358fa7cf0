using System;
using BenchmarkDotNet.Attributes;
using UnitsNet;
using static FinishKit.Measure;

namespace FinishKit.Benchmarks;

/// <summary>Slats on a hollow curve: turn, hollow under the slat, gap at the face, against the same arithmetic on double.</summary>
[MemoryDiagnoser]
public class SlatBenchmarks
{
    private readonly ScalarInputs _radius = new(51, 500, 5000);
    private readonly ScalarInputs _width = new(52, 20, 60);

    [Benchmark(Baseline = true)]
    public double Hand()
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            double r = _radius.Plain[i], w = _width.Plain[i];
            double turn = (2 * Math.Asin(w / (2 * r))) + (2 * Math.Asin(8 / (2 * r)));
            double hollow = w * w / 4 / (r + Math.Sqrt((r * r) - (w * w / 4)));
            sum += turn + hollow + 8 - (2 * 10 * Math.Sin(turn / 2));
        }

        return sum;
    }

    [Benchmark]
    public double Millimetres() => Sum(_radius.Millimetres, _width.Millimetres);

    [Benchmark]
    public double Inches() => Sum(_radius.Inches, _width.Inches);

    private static double Sum(Length[] radii, Length[] widths)
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            SlatFit fit = SlatCurve.Fit(radii[i], widths[i], Mm(10), Mm(8));
            sum += fit.Turn.Value + fit.Hollow.Value + fit.GapAtFace.Value;
        }

        return sum;
    }
}
