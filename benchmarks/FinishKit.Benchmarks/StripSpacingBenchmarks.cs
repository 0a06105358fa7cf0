using System;
using System.Collections.Generic;
using BenchmarkDotNet.Attributes;
using UnitsNet;
using static FinishKit.Measure;

namespace FinishKit.Benchmarks;

/// <summary>
/// Exact strip spacing by size: ribs 300 to 600 mm apart, a jamb every 2 m or so. The baseline is what a person does without the
/// library: a strip on every rib and equal division of what is left, which is not the best there is.
/// </summary>
[MemoryDiagnoser]
public class StripSpacingBenchmarks
{
    private StripRun _onRibs = new(Mm(1000), [Mm(0), Mm(1000)], Mm(475));
    private StripRun _fewest = new(Mm(1000), [Mm(0), Mm(1000)], Mm(475));
    private double[] _ribs = [];
    private double _end;

    /// <summary>Ribs of the run; 9 is a face of 4 m.</summary>
    [Params(9, 90, 900)]
    public int Ribs { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        Random random = new(Ribs);
        List<RibLine> ribs = [];
        List<Length> jambs = [Mm(20)];
        _ribs = new double[Ribs];
        double u = 0;
        for (int i = 0; i < Ribs; i++)
        {
            u += Math.Round(300 + (300 * random.NextDouble()));
            _ribs[i] = u;
            ribs.Add(new RibLine(Mm(u), Mm(25)));
            if (i % 4 == 2)
            {
                jambs.Add(Mm(u + 140));
            }
        }

        _end = u + 400;
        jambs.Add(Mm(_end - 20));
        _onRibs = new StripRun(Mm(_end), jambs, Mm(475)) { Ribs = ribs };
        _fewest = _onRibs with { Preference = StripPreference.FewestStrips };
    }

    [Benchmark(Baseline = true)]
    public int EveryRib()
    {
        int strips = 0;
        double before = 0;
        foreach (double rib in _ribs)
        {
            strips += (int)Math.Ceiling((rib - before) / 475);
            before = rib;
        }

        return strips + (int)Math.Ceiling((_end - before) / 475);
    }

    [Benchmark]
    public int OnRibs() => StripSpacing.Space(_onRibs).Strips.Count;

    [Benchmark]
    public int FewestStrips() => StripSpacing.Space(_fewest).Strips.Count;
}
