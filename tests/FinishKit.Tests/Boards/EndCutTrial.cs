using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using System.Linq;
using FinishKit.Tests.Geometry;
using FsCheck;
using FsCheck.Fluent;
using UnitsNet;
using static FinishKit.Measure;

namespace FinishKit.Tests.Boards;

/// <summary>Courses at an edge, drawn from a seed: 1 to 12 of them, even or not, some lines at the points of the edge; the edge at either end; either order; tongue or none.</summary>
[SuppressMessage("Security", "CA5394", Justification = "Cases for tests, not secrets.")]
public sealed class EndCutTrial
{
    internal EndCutTrial(int seed)
    {
        Edge = new EdgeTrial(seed);
        Random random = new(seed ^ 0x2545);
        double lowest = Edge.Heights[0], highest = Edge.Heights[^1];
        SortedSet<double> lines = [];
        int count = random.Next(2, 14);
        for (int i = 0; i < count; i++)
        {
            double line = random.Next(4) == 0 ? Edge.Heights[random.Next(Edge.Heights.Length)] : Math.Round(lowest + ((highest - lowest) * random.NextDouble()), 3);
            if (line >= lowest && line <= highest && lines.All(other => Math.Abs(other - line) >= 1))
            {
                lines.Add(line);
            }
        }

        if (lines.Count < 2)
        {
            lines = [lowest, highest];
        }

        Lines = [.. lines];
        IsAtRear = random.Next(2) == 0;
        double reach = Edge.Offsets.Max(Math.Abs) + 2000;
        Datum = IsAtRear ? -reach : reach; // the natural cubic may swing far past points that are near each other
        Order = random.Next(2) == 0 ? FittingOrder.FromBottom : FittingOrder.FromTop;
        Hidden = random.Next(2) == 0 ? 0 : random.Next(1, 20_000) / 1000.0;
        Tolerance = random.Next(3) switch { 0 => 0, 1 => 0.5, _ => random.Next(0, 5_000) / 1000.0 };
    }

    public EdgeTrial Edge { get; }

    public double[] Lines { get; }

    public bool IsAtRear { get; }

    public double Datum { get; }

    public FittingOrder Order { get; }

    public double Hidden { get; }

    public double Tolerance { get; }

    internal MeasuredEdge Measured => EdgeCurve.Through(Edge.Points, Edge.Fit);

    internal EndCutJob Job => JobOn(Measured);

    internal EndCutJob JobOn(MeasuredEdge edge) => new(edge, [.. Lines.Select(static line => Mm(line))], Mm(Datum)) { Order = Order, HiddenWidth = Mm(Hidden), ScribeTolerance = Mm(Tolerance) };

    public override string ToString() => $"{Edge}; lines {string.Join(' ', Lines)}, datum {Datum}, {Order}, hidden {Hidden}, tolerance {Tolerance}";
}

/// <summary>Generators for properties.</summary>
public static class EndCutArbitraries
{
    public static Arbitrary<EndCutTrial> Trial() => Gen.Choose(0, 1_000_000_000).Select(static seed => new EndCutTrial(seed)).Where(static trial => EndCuts.Check(trial.Job).Count == 0).ToArbitrary();
}
