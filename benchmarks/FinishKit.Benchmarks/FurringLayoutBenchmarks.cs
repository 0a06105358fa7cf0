using System;
using System.Collections.Generic;
using BenchmarkDotNet.Attributes;
using UnitsNet;
using static FinishKit.Measure;

namespace FinishKit.Benchmarks;

/// <summary>
/// Layout of a wall by size: ribs 300 to 600 mm apart, a window every 2 m or so, four rails. The size of 9 ribs is a wall of 4 m. The
/// baseline is the spacing alone, without trimmers, pieces, fixings and beams.
/// </summary>
[MemoryDiagnoser]
public class FurringLayoutBenchmarks
{
    private FurringFace _face = new(Mm(1000), Mm(994), Mm(475));
    private StripRun _run = new(Mm(1000), [Mm(0), Mm(1000)], Mm(475));

    /// <summary>Ribs of the wall.</summary>
    [Params(9, 90, 250)]
    public int Ribs { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        Random random = new(Ribs);
        List<ShellMember> ribs = [];
        List<RibLine> lines = [];
        List<FaceOpening> openings = [];
        List<Length> jambs = [Mm(20)];
        double u = 0;
        for (int i = 0; i < Ribs; i++)
        {
            u += Math.Round(300 + (150 * random.NextDouble()));
            ribs.Add(new ShellMember(Mm(u), Mm(50)));
            lines.Add(new RibLine(Mm(u), Mm(25)));
            if (i % 5 == 2)
            {
                openings.Add(new FaceOpening(Mm(u + 60), Mm(u + 560), Mm(230), Mm(610)));
                jambs.Add(Mm(u + 40));
                jambs.Add(Mm(u + 580));
            }
        }

        double end = u + 700;
        jambs.Add(Mm(end - 20));
        _run = new StripRun(Mm(end), jambs, Mm(475)) { Ribs = lines };
        _face = new FurringFace(Mm(end), Mm(994), Mm(475))
        {
            Ribs = ribs,
            Rails = [new(Mm(20), Mm(40)), new(Mm(200), Mm(40)), new(Mm(642), Mm(40)), new(Mm(974), Mm(40))],
            Openings = openings,
            Breaks = [new(Mm(200), Angle.FromDegrees(3.5)), new(Mm(642), Angle.FromDegrees(9.5))],
        };
    }

    [Benchmark(Baseline = true)]
    public int SpacingAlone() => StripSpacing.Space(_run).Strips.Count;

    [Benchmark]
    public int Layout() => FurringLayout.LayOut(_face).Pieces.Count;
}
