using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Geometry;

/// <summary>What any edge must do, against curves computed in another way.</summary>
[Properties(Arbitrary = [typeof(EdgeArbitraries)])]
public sealed class EdgeCurveProperties
{
    private static readonly EdgeFit[] s_fits = [EdgeFit.Linear, EdgeFit.ShapePreserving, EdgeFit.NaturalCubic];

    /// <summary>The trials are not all of one kind.</summary>
    [Fact]
    public void Trials_are_of_every_kind()
    {
        EdgeTrial[] trials = [.. Enumerable.Range(0, 400).Select(static seed => new EdgeTrial(seed))];
        Assert.All(Enumerable.Range(0, 4), shape => Assert.True(trials.Count(trial => trial.Shape == shape) > 60));
        Assert.All(s_fits, fit => Assert.True(trials.Count(trial => trial.Fit == fit) > 80));
        Assert.True(trials.Count(static trial => trial.Heights.Length == 2) > 30);
        Assert.True(trials.Count(static trial => trial.Heights.Zip(trial.Heights.Skip(1), static (a, b) => b - a).Any(static step => Math.Abs(step - 1) < 1e-6)) > 100); // as near as allowed
        Assert.True(trials.Count(static trial => trial.Offsets.Zip(trial.Offsets.Skip(1), static (a, b) => b - a).Any(static step => step == 0)) > 50);
        Assert.True(trials.Count(static trial => EdgeCurve.Through(trial.Points).Findings.Any(static finding => finding.Code == "geometry-edge-curves-differ")) is > 40 and < 360);
    }

    [Property(MaxTest = 300)]
    public void Every_curve_goes_through_every_point(EdgeTrial trial)
    {
        foreach (EdgeFit fit in s_fits)
        {
            MeasuredEdge edge = EdgeCurve.Through(trial.Points, fit);
            Assert.All(trial.Points, point => Assert.Equal(point.Offset.Millimeters, edge.OffsetAt(point.Along).Millimeters, 1.1e-6));
            Assert.Equal(trial.Points, edge.Points);
        }
    }

    [Property(MaxTest = 300)]
    public void Every_curve_agrees_with_one_computed_in_another_way(EdgeTrial trial)
    {
        foreach (EdgeFit fit in s_fits)
        {
            MeasuredEdge edge = EdgeCurve.Through(trial.Points, fit);
            Func<double, double> oracle = EdgeOracle.Curve(trial.Heights, trial.Offsets, fit);
            for (int i = 0; i < 20; i++)
            {
                double height = trial.SomeHeight();
                Assert.Equal(oracle(height), edge.At(height), 1e-8);
                double step = 1e-3 * (trial.Heights[1] - trial.Heights[0]);
                if (fit != EdgeFit.Linear && height > trial.Heights[0] + step && height < trial.Heights[^1] - step)
                {
                    // Slope against a difference; the curve is smooth, its second derivative within a piece is bounded by its chords.
                    double small = 1e-5;
                    double slope = Math.Tan(edge.SlopeAt(Mm(height)).Radians);
                    Assert.Equal((edge.At(height + small) - edge.At(height - small)) / (2 * small), slope, 1e-2 * Math.Max(1, Math.Abs(slope)));
                }
            }
        }
    }

    [Property(MaxTest = 300)]
    public void The_shape_preserving_curve_never_swings_past_its_points(EdgeTrial trial)
    {
        MeasuredEdge edge = EdgeCurve.Through(trial.Points, EdgeFit.ShapePreserving);
        for (int i = 0; i + 1 < trial.Heights.Length; i++)
        {
            double from = trial.Heights[i], to = trial.Heights[i + 1], direction = Math.Sign(trial.Offsets[i + 1] - trial.Offsets[i]), before = edge.At(from);
            for (int k = 1; k <= 50; k++)
            {
                double at = edge.At(Math.Min(to, from + ((to - from) * k / 50)));
                Assert.True((at - before) * direction >= -1e-9, $"{from} to {to}: {before} then {at}");
                if (direction == 0)
                {
                    Assert.Equal(before, at, 1e-9);
                }

                before = at;
            }
        }
    }

    [Property(MaxTest = 300)]
    public void The_greatest_difference_is_that_of_a_fine_sampling(EdgeTrial trial)
    {
        MeasuredEdge edge = EdgeCurve.Through(trial.Points, trial.Fit);
        Func<double, double>[] curves = [.. s_fits.Select(fit => EdgeOracle.Curve(trial.Heights, trial.Offsets, fit))];
        double Difference(double height) => curves.Max(curve => curve(height)) - curves.Min(curve => curve(height));
        double sampled = 0;
        for (int i = 0; i + 1 < trial.Heights.Length; i++)
        {
            for (int k = 0; k <= 400; k++)
            {
                sampled = Math.Max(sampled, Difference(Math.Min(trial.Heights[i + 1], trial.Heights[i] + ((trial.Heights[i + 1] - trial.Heights[i]) * k / 400))));
            }
        }

        double found = edge.GreatestDifference!.Value.Millimeters;
        Assert.True(found >= sampled - 1e-6, $"{found} < {sampled}");
        Assert.Equal(sampled, found, 1e-6 + (1e-3 * sampled));
        if (edge.GreatestDifferenceAt is { } height)
        {
            Assert.Equal(found, Difference(height.Millimeters), 1e-5 * Math.Max(1, found));
        }
        else
        {
            Assert.Equal(0, found);
        }

        Assert.Equal(found > 1, edge.Findings.Any(static finding => finding.Code == "geometry-edge-curves-differ"));
        Workings workings = edge.Explain();
        WorkingsCheck.Recompute(workings);
        Assert.Equal(found, workings.Steps[^1].Value.Value, 1e-6); // explained is the height where they differ most
    }

    [Property(MaxTest = 200)]
    public void The_edge_follows_its_points_when_they_are_moved_mirrored_scaled_or_shuffled(EdgeTrial trial)
    {
        MeasuredEdge edge = EdgeCurve.Through(trial.Points, trial.Fit);
        MeasuredEdge moved = EdgeCurve.Through(EdgeTrial.PointsOf([.. trial.Heights.Select(static v => v + 123.456)], [.. trial.Offsets.Select(static u => u - 789.012)]), trial.Fit);
        MeasuredEdge aside = EdgeCurve.Through(EdgeTrial.PointsOf(trial.Heights, [.. trial.Offsets.Select(static u => -u)]), trial.Fit);
        MeasuredEdge down = EdgeCurve.Through(EdgeTrial.PointsOf([.. trial.Heights.Select(static v => -v)], trial.Offsets), trial.Fit);
        MeasuredEdge twice = EdgeCurve.Through(EdgeTrial.PointsOf([.. trial.Heights.Select(static v => 2 * v)], [.. trial.Offsets.Select(static u => 2 * u)]), trial.Fit);
        MeasuredPoint[] points = trial.Points;
        trial.More.Shuffle(points);
        MeasuredEdge shuffled = EdgeCurve.Through(points, trial.Fit);
        for (int i = 0; i < 10; i++)
        {
            double height = Math.Round(trial.SomeHeight(), 3), offset = edge.OffsetAt(Mm(height)).Millimeters;
            Assert.Equal(offset - 789.012, moved.OffsetAt(Mm(height + 123.456)).Millimeters, 1.1e-6);
            Assert.Equal(-offset, aside.OffsetAt(Mm(height)).Millimeters, 1.1e-6);
            Assert.Equal(offset, down.OffsetAt(Mm(-height)).Millimeters, 1.1e-6);
            Assert.Equal(2 * offset, twice.OffsetAt(Mm(2 * height)).Millimeters, 2.2e-6);
            Assert.Equal(offset, shuffled.OffsetAt(Mm(height)).Millimeters);
            Assert.Equal(-edge.SlopeAt(Mm(height)).Radians, aside.SlopeAt(Mm(height)).Radians, 1e-9);
        }

        double difference = edge.GreatestDifference!.Value.Millimeters;
        Assert.All(new[] { moved, aside, down, shuffled }, other => Assert.Equal(difference, other.GreatestDifference!.Value.Millimeters, 3e-6));
        Assert.Equal(2 * difference, twice.GreatestDifference!.Value.Millimeters, 4e-6);
    }

    /// <summary>64ths of an inch lie on the grid, so that it makes no difference at all in which unit they come.</summary>
    [Property(MaxTest = 100)]
    public void Inches_and_millimetres_give_one_edge(EdgeTrial trial)
    {
        List<MeasuredPoint> inches = [], millimetres = [];
        for (int i = 0; i < trial.Heights.Length; i++)
        {
            double height = Math.Round(trial.Heights[i] * 64 / 25.4) + (4 * i), offset = Math.Round(trial.Offsets[i] * 64 / 25.4);
            inches.Add(new MeasuredPoint(Inch(height / 64), Inch(offset / 64)));
            millimetres.Add(new MeasuredPoint(Mm(height * 396_875 / 1e6), Mm(offset * 396_875 / 1e6)));
        }

        MeasuredEdge one = EdgeCurve.Through(inches, trial.Fit), other = EdgeCurve.Through(millimetres, trial.Fit);
        Assert.Equal(one.Figures(), other.Figures());
        Length height1 = one.Points[1].Along;
        Assert.Equal(one.OffsetAt(height1).Millimeters, other.OffsetAt(height1).Millimeters);
    }

    /// <summary>Straight edges and arcs against two-point form and centre, to a billionth of a millimetre.</summary>
    [Property(MaxTest = 300)]
    public void Straight_edges_and_arcs_are_exact(EdgeTrial trial)
    {
        double va = trial.Heights[0], vb = Math.Max(trial.Heights[^1], va + 50), ua = trial.Offsets[0], ub = trial.Offsets[^1];
        MeasuredPoint lower = new(Mm(va), Mm(ua)), upper = new(Mm(vb), Mm(ub));
        MeasuredEdge straight = EdgeCurve.Straight(lower, upper);
        double chord = Math.Sqrt(((vb - va) * (vb - va)) + ((ub - ua) * (ub - ua)));
        double half = (trial.More.Next(2) == 0 ? 1 : -1) * (0.001 + (0.8 * trial.More.NextDouble())); // half the turn, rad
        double lean = Math.Atan2(ub - ua, vb - va);
        half *= Math.Min(1, (1.5 - Math.Abs(lean)) / 0.801);
        double rise = Math.Round(chord / 2 * Math.Tan(half / 2), 6);
        MeasuredEdge arc = EdgeCurve.OnArc(lower, upper, Mm(rise));
        (double radius, Func<double, double> circle) = EdgeOracle.Circle(va, ua, vb, ub, rise);
        Assert.Equal(radius, arc.Radius!.Value.Millimeters, (1e-9 * Math.Abs(radius)) + 1e-6);
        for (int i = 0; i <= 20; i++)
        {
            double height = va + ((vb - va) * i / 20);
            double exact = (double)((((decimal)ua * ((decimal)vb - (decimal)height)) + ((decimal)ub * ((decimal)height - (decimal)va))) / ((decimal)vb - (decimal)va));
            Assert.Equal(exact, straight.At(height), 1e-9);
            Assert.Equal(lean, straight.SlopeAt(Mm(height)).Radians, 1e-12);
            Assert.Equal(circle(height), arc.At(height), 1e-9 + (1e-13 * Math.Abs(radius))); // the circle's own rounding grows with its radius
        }

        WorkingsCheck.Recompute(straight.Explain());
        WorkingsCheck.Recompute(arc.Explain());
    }
}
