using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using UnitsNet;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>
/// A random small job and a fastener with a tolerance of its own. Sizes lie near each other, so that tips end on either side of what
/// is behind. The head stays in the first layer at every tolerance; all figures are whole micrometres.
/// </summary>
public sealed class FastenerTrial
{
    private readonly Random _random;

    public FastenerTrial(int seed)
    {
        Seed = seed;
        _random = new Random(seed);
        List<Layer> layers = [new Layer(Toleranced(3000, 15000, 800)) { Holds = Maybe(4) ? true : Maybe(8) ? false : null }];
        int more = _random.Next(0, 4);
        for (int i = 0; i < more; i++)
        {
            layers.Add(Another());
        }

        FastenerSeries[] series = [.. FastenerSeries.Nails];
        int total = 0;
        foreach (Layer layer in layers)
        {
            total += (int)Math.Round((layer.Compressed ?? layer.Thickness).Nominal.Millimeters * 1000);
        }

        BehindKind kind = Maybe(2) ? BehindKind.RibMetal : (BehindKind)_random.Next(0, 5);
        int gap = Maybe(2) ? 0 : _random.Next(500, 12000);
        Job = new FastenerJob(layers, new Behind(kind, gap == 0 ? Mm(0) : Around(gap, 500)), series[_random.Next(series.Length)])
        {
            SetDepth = Maybe(4) ? null : Around(_random.Next(0, 1500), 600),
            DriveAngle = Angle.FromDegrees(new[] { 0, 0, 0, 15, 30, 45, 60, _random.Next(0, 6000) / 100.0 }[_random.Next(8)]),
            RequiredClearance = Maybe(3) ? null : Mm(_random.Next(0, 3000) / 1000.0),
            LeastBite = Maybe(2) ? null : Mm(_random.Next(0, 9000) / 1000.0),
            TargetBite = Maybe(2) ? null : Mm(_random.Next(0, 20000) / 1000.0),
            MarginalChance = Maybe(2) ? null : _random.Next(0, 100) / 1e4,
            Count = _random.Next(1, 2000),
            Preference = Maybe(3) ? FastenerPreference.LongestSafe : FastenerPreference.ShortestThatHolds,
        };
        int length = (int)((total + gap) / Math.Cos(Job.DriveAngle.Degrees * Math.PI / 180)) + _random.Next(-9000, 3000);
        Fastener = Around(Math.Max(length, 2000), 1600);
    }

    public int Seed { get; }

    public FastenerJob Job { get; }

    public TolerancedLength Fastener { get; }

    internal FastenerCandidate Candidate => Try(Job, Fastener);

    /// <summary>One length with a tolerance of the test's own, whatever the series' table says.</summary>
    internal static FastenerCandidate Try(FastenerJob job, TolerancedLength fastener) => FastenerLength.Try(StackNumbers.Read(job, "job", null)!, fastener);

    /// <summary>As said; where nothing is said, only the last of the layers that are neither void nor give.</summary>
    internal static bool Holds(FastenerJob job, int layer) =>
        job.Layers[layer].Holds ?? (Solid(job.Layers[layer]) && !job.Layers.Skip(layer + 1).Any(Solid));

    /// <summary>The last layer that holds, or -1.</summary>
    internal static int Furring(FastenerJob job)
    {
        int furring = job.Layers.Count - 1;
        while (furring >= 0 && !Holds(job, furring))
        {
            furring--;
        }

        return furring;
    }

    private static bool Solid(Layer layer) => !layer.IsVoid && layer.Compressed is null;

    internal static FastenerJob WithLayer(FastenerJob job, int index, Layer layer)
    {
        Layer[] layers = [.. job.Layers];

        // What holds stays as it was, whatever the place in the list says.
        for (int i = 0; i < layers.Length; i++)
        {
            layers[i] = (i == index ? layer : layers[i]) with { Holds = Holds(job, i) };
        }

        return job with { Layers = layers };
    }

    internal static FastenerJob WithFurring(FastenerJob job, TolerancedLength thickness) =>
        WithLayer(job, Furring(job), job.Layers[Furring(job)] with { Thickness = thickness, Compressed = null });

    internal static TolerancedLength Shifted(TolerancedLength length, double millimetres) =>
        new(Mm(Math.Round(length.Nominal.Millimeters + millimetres, 6)), length.Lower, length.Upper, length.Scope);

    internal static FastenerJob WithGap(FastenerJob job, double more) => job with { Behind = job.Behind with { Distance = Shifted(job.Behind.Distance, more) } };

    public override string ToString() =>
        $"seed {Seed}: {Job}; set {Job.SetDepth}, angle {Door.Degrees(Job.DriveAngle)}, required {Job.RequiredClearance?.Millimeters}, fastener {Fastener}; holds {string.Join(",", Enumerable.Range(0, Job.Layers.Count).Select(i => Holds(Job, i)))}";

    private Layer Another()
    {
        TolerancedLength thickness = Toleranced(500, 15000, 800);
        return _random.Next(6) switch
        {
            0 => Layer.Void(thickness),
            1 => Layer.Compressible("mat", thickness, Mm(Math.Floor(thickness.Least.Millimeters * 500) / 1000)),
            2 => new Layer(thickness) { Compressed = Mm(Math.Floor(thickness.Least.Millimeters * 800) / 1000) }, // gives, and nothing is said: it does not hold
            3 => new Layer(thickness) { Holds = true },
            _ => new Layer(thickness),
        };
    }

    private bool Maybe(int oneIn) => _random.Next(oneIn) == 0;

    private TolerancedLength Toleranced(int least, int most, int deviation) => Around(_random.Next(least, most), deviation);

    /// <summary>A length with none, even or uneven deviations that do not take it below 0.</summary>
    private TolerancedLength Around(int micrometres, int deviation)
    {
        int lower = Maybe(3) ? 0 : -_random.Next(0, Math.Min(deviation, micrometres) + 1);
        int upper = Maybe(3) ? -lower : _random.Next(0, deviation + 1);
        return new TolerancedLength(Mm(micrometres / 1000.0), Mm(lower / 1000.0), Mm(upper / 1000.0), Maybe(2) ? DeviationScope.Each : DeviationScope.Batch);
    }
}

/// <summary>Generators for properties.</summary>
public static class FastenerArbitraries
{
    public static Arbitrary<FastenerTrial> Trial() => Gen.Choose(0, 1_000_000_000).Select(static seed => new FastenerTrial(seed)).ToArbitrary();
}
