using System;
using BenchmarkDotNet.Attributes;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit.Benchmarks;

/// <summary>How many fasteners hold a mass, against the same arithmetic on double.</summary>
[MemoryDiagnoser]
public class RetentionBenchmarks
{
    private readonly ScalarInputs _kilograms = new(15, 0.5, 40);
    private readonly ScalarInputs _newtons = new(16, 20, 400);
    private readonly Mass[] _masses;
    private readonly WithdrawalCapacity[] _capacities;

    public RetentionBenchmarks()
    {
        _masses = Array.ConvertAll(_kilograms.Plain, static kilograms => new Mass(kilograms, MassUnit.Kilogram));
        _capacities = Array.ConvertAll(_newtons.Plain, static newtons => WithdrawalCapacity.Supplied(new Force(newtons, ForceUnit.Newton)));
    }

    [Benchmark(Baseline = true)]
    public double Hand()
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            double load = _kilograms.Plain[i] * 3 * 9.80665;
            double ratio = load / _newtons.Plain[i], nearest = Math.Round(ratio);
            sum += load + (Math.Abs(ratio - nearest) <= 1e-9 * Math.Max(1, nearest) ? nearest : Math.Ceiling(ratio));
        }

        return sum;
    }

    [Benchmark]
    public double Quantities()
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            RetentionCount count = Retention.FastenersNeeded(_masses[i], _capacities[i]);
            sum += count.Load.Value + count.Fasteners!.Value;
        }

        return sum;
    }
}
