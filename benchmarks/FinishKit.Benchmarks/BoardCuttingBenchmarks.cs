using System;
using System.Collections.Generic;
using BenchmarkDotNet.Attributes;
using FinishKit.Benchmarks.Cutting;
using static FinishKit.Measure;

namespace FinishKit.Benchmarks;

/// <summary>
/// A cutting plan by size, from boards of one length and of three priced lengths. The baseline is first fit decreasing on plain integers,
/// which proves nothing and is not always best.
/// </summary>
[MemoryDiagnoser]
public class BoardCuttingBenchmarks
{
    private const int Kerf = 3;

    private readonly int[] _boards = [2438 + Kerf, 3048 + Kerf, 3658 + Kerf], _prices = [980, 1240, 1450];
    private int[] _sizes = [], _counts = [];
    private CuttingJob _oneLength = new([], []), _threeLengths = new([], []);

    /// <summary>Pieces of the job, of a fifth as many lengths and at most 40; 20 are one side of a van, 100 all of it.</summary>
    [Params(20, 100, 1000)]
    public int Pieces { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        Random random = new(Pieces);
        int lengths = Math.Min(40, Pieces / 5);
        _sizes = new int[lengths];
        _counts = new int[lengths];
        for (int i = 0; i < Pieces; i++)
        {
            _counts[i % lengths]++;
        }

        List<BoardPart> parts = [];
        for (int i = 0; i < lengths; i++)
        {
            int length = random.Next(250, 2400);
            _sizes[i] = length + Kerf;
            parts.Add(new BoardPart(Mm(length), _counts[i]));
        }

        _oneLength = new CuttingJob(parts, [new StockBoard(Mm(2438), 9.80m)]) { Kerf = Mm(Kerf), EndTrim = Mm(0) };
        _threeLengths = new CuttingJob(parts, [new StockBoard(Mm(2438), 9.80m), new StockBoard(Mm(3048), 12.40m), new StockBoard(Mm(3658), 14.50m)]) { Kerf = Mm(Kerf), EndTrim = Mm(0) };
    }

    [Benchmark(Baseline = true)]
    public int FirstFitThreeLengths() => FirstFit.Pack(_sizes, _counts, _boards, _prices).Count;

    [Benchmark]
    public int OneLength() => BoardCutting.Cut(_oneLength).Boards.Count;

    [Benchmark]
    public int ThreeLengths() => BoardCutting.Cut(_threeLengths).Boards.Count;
}
