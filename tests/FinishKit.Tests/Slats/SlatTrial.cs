using System;
using System.Diagnostics.CodeAnalysis;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using static FinishKit.Measure;

namespace FinishKit.Tests.Slats;

/// <summary>A run of slats, and slats on a curve, drawn from a seed: whole micrometres, with limits that are just met among them.</summary>
[SuppressMessage("Security", "CA5394", Justification = "Cases for tests, not secrets.")]
public sealed class SlatTrial
{
    private readonly int _seed;

    internal SlatTrial(int seed)
    {
        _seed = seed;
        Random random = new(seed);
        SlatWidth = Micrometres(random, 5, 60);
        Radius = Micrometres(random, 120, random.Next(2) == 0 ? 600 : 6000);
        Thickness = Micrometres(random, 1, 40);
        Gap = random.Next(8) == 0 ? 0 : Micrometres(random, 0, 20);
        Run = RunOf(random);
    }

    /// <summary>Slats of 5 to 60 mm, gaps of up to 16, a face for up to 40 of them, none to three more stations that taper by up to a fifth; both ends, both rules, both steps.</summary>
    public SlatRun Run { get; }

    public double Radius { get; }

    public double SlatWidth { get; }

    public double Thickness { get; }

    public double Gap { get; }

    public override string ToString() => $"seed {_seed}: {Run}, ends {Run.Ends}, {Run.Taper}, stations {string.Join(' ', Run.Stations!)}; radius {Radius}, {SlatWidth} x {Thickness}, gap {Gap}";

    private SlatRun RunOf(Random random)
    {
        double least = random.Next(64) / 8.0, greatest = least + (random.Next(4) == 0 ? 0 : random.Next(64) / 8.0);
        SlatEnds ends = random.Next(2) == 0 ? SlatEnds.Closed : SlatEnds.Open;
        int slats = 1 + random.Next(40), between = ends == SlatEnds.Closed ? slats - 1 : slats + 1;
        double face = random.Next(4) switch
        {
            0 => (slats * SlatWidth) + (between * least),
            1 => (slats * SlatWidth) + (between * greatest),
            2 => (slats * SlatWidth) + (between * (least + greatest) / 2),
            _ => Micrometres(random, 10, 2000),
        };
        face = Math.Max(face, 10);
        double taper = random.Next(3) switch { 0 => 0.2 * random.NextDouble(), 1 => 0.02 * random.NextDouble(), _ => 0 };
        int more = random.Next(4);
        return new SlatRun(Mm(face), Mm(SlatWidth))
        {
            LeastGap = Mm(least),
            GreatestGap = Mm(greatest),
            Ends = ends,
            Taper = random.Next(2) == 0 ? SlatTaper.VaryingGap : SlatTaper.EndSlatsTapered,
            RoundTo = random.Next(2) == 0 ? SetOutStep.WholeMillimetre : SetOutStep.SixteenthInch,
            Stations = [.. Enumerable.Range(1, more).Select(i => Mm(Math.Round(face * (1 - (taper * i / more)), 3)))],
        };
    }

    private static double Micrometres(Random random, int from, int to) => (double)random.Next(from * 1000, (to * 1000) + 1) / 1000;
}

/// <summary>Generators for properties.</summary>
public static class SlatArbitraries
{
    public static Arbitrary<SlatTrial> Trial() => Gen.Choose(0, 1_000_000_000).Select(static seed => new SlatTrial(seed)).ToArbitrary();
}
