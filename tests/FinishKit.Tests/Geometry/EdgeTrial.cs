using System;
using System.Diagnostics.CodeAnalysis;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using static FinishKit.Measure;

namespace FinishKit.Tests.Geometry;

/// <summary>Points along an edge, drawn from a seed, in whole micrometres: 2 to 12, spread evenly or not, on a bow, rising, with level stretches, or up and down.</summary>
[SuppressMessage("Security", "CA5394", Justification = "Cases for tests, not secrets.")]
public sealed class EdgeTrial
{
    internal EdgeTrial(int seed)
    {
        Seed = seed;
        Random random = new(seed);
        int count = random.Next(6) == 0 ? 2 : random.Next(3, 13);
        Heights = new double[count];
        Offsets = new double[count];
        double height = random.Next(-500_000, 500_000) / 1000.0, offset = random.Next(-4_000_000, 4_000_000) / 1000.0;
        bool isEven = random.Next(3) == 0;
        double step = random.Next(20_000, 300_000) / 1000.0;
        for (int i = 0; i < count; i++)
        {
            Heights[i] = Math.Round(height, 3);
            height += isEven ? step : random.Next(8) == 0 ? 1 : random.Next(1_000, 400_000) / 1000.0;
        }

        Shape = random.Next(4);
        double span = Heights[^1] - Heights[0], rise = random.Next(-60_000, 60_000) / 1000.0;
        double direction = random.Next(2) == 0 ? 1 : -1, at = offset;
        for (int i = 0; i < count; i++)
        {
            double share = (Heights[i] - Heights[0]) / span;
            at += Shape switch
            {
                1 => direction * random.Next(0, 30_000) / 1000.0, // one way
                2 => direction * (random.Next(2) == 0 ? 0 : random.Next(0, 30_000) / 1000.0), // one way, with level stretches
                _ => random.Next(-30_000, 30_001) / 1000.0, // up and down
            };
            Offsets[i] = Math.Round(Shape == 0 ? offset + (4 * rise * share * (1 - share)) : at, 3);
        }

        Fit = (EdgeFit)random.Next(3);
        More = random;
    }

    public int Seed { get; }

    public double[] Heights { get; }

    public double[] Offsets { get; }

    public EdgeFit Fit { get; }

    /// <summary>0 a bow, 1 one way, 2 one way with level stretches, 3 up and down.</summary>
    public int Shape { get; }

    public MeasuredPoint[] Points => PointsOf(Heights, Offsets);

    /// <summary>For what a test draws on top.</summary>
    internal Random More { get; }

    internal static MeasuredPoint[] PointsOf(double[] heights, double[] offsets) => [.. heights.Zip(offsets, static (v, u) => new MeasuredPoint(Mm(v), Mm(u)))];

    internal double SomeHeight() => Heights[0] + ((Heights[^1] - Heights[0]) * More.NextDouble());

    public override string ToString() => $"seed {Seed}, shape {Shape}, {Fit}: " + string.Join(' ', Points.Select(static point => point.ToString()));
}

/// <summary>Generators for properties.</summary>
public static class EdgeArbitraries
{
    public static Arbitrary<EdgeTrial> Trial() => Gen.Choose(0, 1_000_000_000).Select(static seed => new EdgeTrial(seed)).ToArbitrary();
}
