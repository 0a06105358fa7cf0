using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static FinishKit.Measure;

namespace FinishKit.Tests.Furring;

/// <summary>A random run of the size of a van's wall, in whole micrometres: fixed strips, ribs, some of them at the edge of a bay or on a fixed strip.</summary>
internal sealed class StripTrial
{
    private readonly Random _random;

    internal StripTrial(int seed, int mostRibs = 14)
    {
        _random = new Random(seed);
        int length = _random.Next(500, 6000) * 1000, bay = _random.Next(60, 700) * 1000;
        List<int> strips = [_random.Next(0, 40_000), length - _random.Next(0, 40_000)];
        for (int more = _random.Next(0, 5); more > 0; more--)
        {
            strips.Add(_random.Next(strips[0], strips[1]));
        }

        List<(int, int)> ribs = [];
        for (int more = _random.Next(0, mostRibs); more > 0; more--)
        {
            int at = _random.Next(4) switch
            {
                0 => strips[0] + (bay * _random.Next(1, 6)),
                1 => strips[_random.Next(strips.Count)] + _random.Next(-30_000, 30_000),
                _ => _random.Next(-50_000, length + 50_000),
            };
            ribs.Add((at, _random.Next(10, 31) * 1000));
        }

        Run = new StripRun(Um(length), [.. strips.Select(Um)], Um(bay))
        {
            Ribs = [.. ribs.Select(static rib => new RibLine(Um(rib.Item1), Um(rib.Item2)))],
            LeastDistance = _random.Next(3) == 0 ? Um(_random.Next(20, 500) * 1000) : null,
            Preference = (StripPreference)_random.Next(2),
        };
    }

    internal StripRun Run { get; }

    internal RibLine AnotherRib => new(Um(_random.Next(0, 6_000_000)), Mm(20));

    internal static long Nm(Length length) => (long)Math.Round(length.Millimeters * 1e6);

    internal static (int Chosen, int OffRibs, long Largest, decimal Squares) Scores(StripLayout layout) =>
        (layout.ChosenCount, layout.OffRibCount, Nm(layout.LargestBay), layout.Bays.Sum(static bay => (decimal)Nm(bay) * Nm(bay)));

    /// <summary>The run with every place along it changed.</summary>
    internal static StripRun Moved(StripRun run, Func<long, long> move) => run with
    {
        FixedPositions = [.. run.FixedPositions.Select(strip => At(move(Nm(strip))))],
        Ribs = [.. run.Ribs.Select(rib => rib with { Centre = At(move(Nm(rib.Centre))) })],
    };

    internal static Length At(long nanometres) => Mm(nanometres / 1e6);

    private static Length Um(int micrometres) => Mm(micrometres / 1000.0);
}
