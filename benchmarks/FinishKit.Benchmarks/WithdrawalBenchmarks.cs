using System;
using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace FinishKit.Benchmarks;

/// <summary>Withdrawal of nails and screws by three methods, each against the same arithmetic on double.</summary>
[MemoryDiagnoser]
[GroupBenchmarksBy(BenchmarkDotNet.Configs.BenchmarkLogicalGroupRule.ByCategory)]
[CategoriesColumn]
public class WithdrawalBenchmarks
{
    private readonly ScalarInputs _gravity = new(9, 0.31, 0.73);
    private readonly ScalarInputs _density = new(10, 280, 500);
    private readonly ScalarInputs _shank = new(11, 0.6, 4.2);
    private readonly ScalarInputs _penetration = new(12, 10, 60);
    private readonly ScalarInputs _screw = new(13, 6, 12);
    private readonly ScalarInputs _shallow = new(14, 1, 3);

    [BenchmarkCategory("NDS nail"), Benchmark(Baseline = true)]
    public double NdsNailHand()
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            sum += 9.514765 * Math.Pow(_gravity.Plain[i], 2.5) * _shank.Plain[i] * _penetration.Plain[i];
        }

        return sum;
    }

    [BenchmarkCategory("NDS nail"), Benchmark]
    public double NdsNailMillimetres() => NdsNail(_shank.Millimetres, _penetration.Millimetres);

    [BenchmarkCategory("NDS nail"), Benchmark]
    public double NdsNailInches() => NdsNail(_shank.Inches, _penetration.Inches);

    [BenchmarkCategory("NDS nail"), Benchmark]
    public double NdsNailFindingUnread() => NdsNail(_shank.Millimetres, _shallow.Millimetres); // under 6 diameters there is a finding; nobody reads it

    [BenchmarkCategory("NDS wood screw"), Benchmark(Baseline = true)]
    public double NdsScrewHand()
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            sum += 19.65006 * _gravity.Plain[i] * _gravity.Plain[i] * _shank.Plain[i] * _penetration.Plain[i];
        }

        return sum;
    }

    [BenchmarkCategory("NDS wood screw"), Benchmark]
    public double NdsScrewMillimetres()
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            sum += Withdrawal.NdsWoodScrew(new OvendrySpecificGravity(_gravity.Plain[i]), _shank.Millimetres[i], _penetration.Millimetres[i]).Force.Value;
        }

        return sum;
    }

    [BenchmarkCategory("NDS wood screw"), Benchmark]
    public double NdsScrewInches()
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            sum += Withdrawal.NdsWoodScrew(new OvendrySpecificGravity(_gravity.Plain[i]), _shank.Inches[i], _penetration.Inches[i]).Force.Value;
        }

        return sum;
    }

    [BenchmarkCategory("Handbook nail"), Benchmark(Baseline = true)]
    public double HandbookNailHand()
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            sum += 54.12 * Math.Pow(_gravity.Plain[i], 2.5) * _shank.Plain[i] * _penetration.Plain[i];
        }

        return sum;
    }

    [BenchmarkCategory("Handbook nail"), Benchmark]
    public double HandbookNailMillimetres() => HandbookNail(_shank.Millimetres, _penetration.Millimetres);

    [BenchmarkCategory("Handbook nail"), Benchmark]
    public double HandbookNailInches() => HandbookNail(_shank.Inches, _penetration.Inches);

    [BenchmarkCategory("Eurocode 5 nail"), Benchmark(Baseline = true)]
    public double EurocodeNailHand()
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            double rho = _density.Plain[i], d = _shank.Plain[i], t = _penetration.Plain[i];
            double factor = Math.Min(1, Math.Max(0, (t / (4 * d)) - 2));
            sum += 20e-6 * rho * rho * d * t * factor;
        }

        return sum;
    }

    [BenchmarkCategory("Eurocode 5 nail"), Benchmark]
    public double EurocodeNailMillimetres() => EurocodeNail(_shank.Millimetres, _penetration.Millimetres);

    [BenchmarkCategory("Eurocode 5 nail"), Benchmark]
    public double EurocodeNailInches() => EurocodeNail(_shank.Inches, _penetration.Inches);

    [BenchmarkCategory("Eurocode 5 screw"), Benchmark(Baseline = true)]
    public double EurocodeScrewHand()
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            double rho = _density.Plain[i], d = _screw.Plain[i], l = _penetration.Plain[i];
            double strength = 0.52 * Math.Pow(d, -0.5) * Math.Pow(l, -0.1) * Math.Pow(rho, 0.8);
            double cosine = Math.Cos(Math.PI / 2), sine = Math.Sin(Math.PI / 2);
            sum += strength * d * l * Math.Min(d / 8, 1) / ((1.2 * cosine * cosine) + (sine * sine));
        }

        return sum;
    }

    [BenchmarkCategory("Eurocode 5 screw"), Benchmark]
    public double EurocodeScrewMillimetres() => EurocodeScrew(_screw.Millimetres, _penetration.Millimetres);

    [BenchmarkCategory("Eurocode 5 screw"), Benchmark]
    public double EurocodeScrewInches() => EurocodeScrew(_screw.Inches, _penetration.Inches);

    private double NdsNail(Length[] shanks, Length[] penetrations)
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            sum += Withdrawal.NdsNail(new OvendrySpecificGravity(_gravity.Plain[i]), shanks[i], penetrations[i]).Force.Value;
        }

        return sum;
    }

    private double HandbookNail(Length[] shanks, Length[] penetrations)
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            sum += Withdrawal.HandbookNail(new SpecificGravityAt12(_gravity.Plain[i]), shanks[i], penetrations[i]).Force.Value;
        }

        return sum;
    }

    private double EurocodeNail(Length[] shanks, Length[] penetrations)
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            sum += Withdrawal.Eurocode5SmoothNail(new CharacteristicDensity(_density.Plain[i]), shanks[i], penetrations[i]).Force.Value;
        }

        return sum;
    }

    private double EurocodeScrew(Length[] threads, Length[] penetrations)
    {
        double sum = 0;
        for (int i = 0; i < ScalarInputs.Count; i++)
        {
            sum += Withdrawal.Eurocode5Screw(new CharacteristicDensity(_density.Plain[i]), threads[i], penetrations[i], new Angle(90, UnitsNet.Units.AngleUnit.Degree)).Force.Value;
        }

        return sum;
    }
}
