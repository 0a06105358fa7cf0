using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace FinishKit.Benchmarks;

/// <summary>Tightest radius of a sheet, against the same arithmetic on double.</summary>
[MemoryDiagnoser]
public class BentSheetBenchmarks
{
    private readonly ScalarInputs _thickness = new(61, 3, 18);
    private readonly BentSheet[] _sheets = new BentSheet[ScalarInputs.Count];

    public BentSheetBenchmarks()
    {
        for (int i = 0; i < _sheets.Length; i++)
        {
            _sheets[i] = new BentSheet(_thickness.Millimetres[i], Pressure.FromMegapascals(12737), Pressure.FromMegapascals(50.9));
        }
    }

    [Benchmark(Baseline = true)]
    public double Hand()
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            sum += 2 * 12737 * _thickness.Plain[i] / (2 * 50.9);
        }

        return sum;
    }

    [Benchmark]
    public double MinimumRadius()
    {
        double sum = 0;
        foreach (BentSheet sheet in _sheets)
        {
            sum += PanelBend.MinimumRadius(sheet).Minimum.Value;
        }

        return sum;
    }
}
