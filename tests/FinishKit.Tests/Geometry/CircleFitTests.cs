using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Geometry;

/// <summary>The fit against known circles, an optimiser of another kind, simulation, and what any fit must do. No expected value is the program's own.</summary>
public sealed class CircleFitTests
{
    [Fact]
    public void Through()
    {
        #region example: CircleFit.Through
        FittedCircle bow = CircleFit.Through([new(Mm(0), Mm(20)), new(Mm(500), Mm(45)), new(Mm(1000), Mm(20))]);
        Length? radius = bow.Radius;                        // 5012.5 mm, hollow to the room
        Length? error = bow.RadiusStandardError;            // null: three points always lie on a circle
        #endregion
        Assert.Equal(5012.5, radius!.Value.Millimeters, 1e-5); // 1000²/(8 · 25) + 25/2, by hand
        Assert.Null(error);
        Assert.Equal(25, bow.OverChord.Rise.Millimeters, 1e-6);
        Assert.Equal(500, bow.Centre!.Value.Along.Millimeters, 1e-5);
        Assert.Equal(45 - 5012.5, bow.Centre!.Value.Offset.Millimeters, 1e-5);
        Assert.Equal("geometry-fit-three-points", Assert.Single(bow.Findings).Code);
    }

    public static TheoryData<double, double, double, double> Circles()
    {
        TheoryData<double, double, double, double> data = [];
        foreach (double radius in new[] { 30.0, 800, 5000, 40_000 })
        {
            foreach (double middle in new[] { 90.0, -90, 60, -120, 5 }) // degrees of the middle of the arc, seen from the centre: above 0 is outward
            {
                foreach (double half in new[] { 5.0, 40, 85, 150 })
                {
                    data.Add(radius, middle, half, 1234.5);
                }
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Circles))]
    public void Exact_points_give_their_circle(double radius, double middle, double half, double shift)
    {
        MeasuredPoint[] points = OnCircle(radius, middle, half, shift, 9);
        FittedCircle fit = CircleFit.Through(points);
        double sign = middle > 0 ? 1 : -1; // the middle of the arc is farther out than the centre: hollow

        // Points lie on the 1 nm grid: 1e-6 mm of rise is R²/(s R) of radius, s the rise over R.
        double rise = radius * (1 - Math.Cos(Math.Min(half, 90) * Math.PI / 180));
        double tolerance = 1e-5 + (1e-5 * radius / rise);
        Assert.Equal(sign * radius, fit.Radius!.Value.Millimeters, tolerance);
        Assert.Equal(shift, fit.Centre!.Value.Along.Millimeters, tolerance);
        Assert.Equal(-shift / 2, fit.Centre!.Value.Offset.Millimeters, tolerance);
        Assert.True(fit.RootMeanSquare.Millimeters <= 1e-6);
        Assert.True(fit.RadiusStandardError!.Value.Millimeters <= tolerance);
        WorkingsCheck.Recompute(fit.Explain());
    }

    [Theory]
    [InlineData(1, 3000, 20, 0.5)]
    [InlineData(2, 3000, -15, 1.5)]
    [InlineData(3, 500, 80, 2)]
    [InlineData(4, 900, 140, 3)]
    [InlineData(5, 8000, 6, 0.3)]
    [InlineData(6, 100, 170, 1)]
    public void Noisy_points_agree_with_a_pattern_search(int seed, double radius, double half, double noise)
    {
        MeasuredPoint[] points = Noisy(radius, half, noise, 12, new Random(seed));
        FittedCircle fit = CircleFit.Through(points);
        (double cx, double cy, double r) = Search(points, fit.Centre!.Value.Along.Millimeters, fit.Centre!.Value.Offset.Millimeters, Math.Abs(radius));
        double Sum(double x, double y, double size) => points.Sum(p => Math.Pow(Math.Sqrt(Math.Pow(p.Along.Millimeters - x, 2) + Math.Pow(p.Offset.Millimeters - y, 2)) - size, 2));
        double own = Sum(fit.Centre!.Value.Along.Millimeters, fit.Centre!.Value.Offset.Millimeters, Math.Abs(fit.Radius!.Value.Millimeters));
        Assert.True(own <= Sum(cx, cy, r) * (1 + 1e-9), $"{own} against {Sum(cx, cy, r)}");
        Assert.Equal(r, Math.Abs(fit.Radius!.Value.Millimeters), 2e-3 * r);
        Assert.Equal(Math.Sqrt(own / points.Length), fit.RootMeanSquare.Millimeters, 1e-6);
        if (Math.Abs(half) <= 140)
        {
            Assert.Equal(Math.Sign(half), Math.Sign(fit.Radius!.Value.Millimeters)); // points all round a circle have no room's side
        }

        WorkingsCheck.Recompute(fit.Explain());
    }

    [Fact]
    public void The_standard_error_is_what_the_radius_scatters_by()
    {
        // 2000 sets of the same 15 places with normal errors of 0.4 mm; the scatter of a standard deviation of 2000 is 1.6%.
        Random random = new(11);
        List<double> radii = [], errors = [];
        for (int i = 0; i < 2000; i++)
        {
            FittedCircle fit = CircleFit.Through(Noisy(2500, 12, 0.4, 15, random));
            radii.Add(fit.Radius!.Value.Millimeters);
            errors.Add(Math.Pow(fit.RadiusStandardError!.Value.Millimeters, 2));
        }

        double mean = radii.Average();
        double scatter = Math.Sqrt(radii.Sum(r => (r - mean) * (r - mean)) / (radii.Count - 1));
        Assert.Equal(scatter, Math.Sqrt(errors.Average()), 0.07 * scatter);
    }

    [Fact]
    public void The_fit_moves_turns_and_grows_with_the_points()
    {
        for (int seed = 0; seed < 40; seed++)
        {
            Random random = new(seed);
            MeasuredPoint[] points = Noisy(1500, seed % 2 == 0 ? 25 : -25, 0.8, 4 + (seed % 9), random);
            FittedCircle fit = CircleFit.Through(points);
            FittedCircle moved = CircleFit.Through([.. points.Select(p => new MeasuredPoint(Mm(p.Along.Millimeters + 4321), Mm(p.Offset.Millimeters - 987)))]);
            FittedCircle mirrored = CircleFit.Through([.. points.Reverse().Select(p => new MeasuredPoint(Mm(-p.Along.Millimeters), p.Offset))]);
            FittedCircle inside = CircleFit.Through([.. points.Select(p => new MeasuredPoint(p.Along, Mm(-p.Offset.Millimeters)))]);
            FittedCircle twice = CircleFit.Through([.. points.Select(p => new MeasuredPoint(Mm(2 * p.Along.Millimeters), Mm(2 * p.Offset.Millimeters)))]);
            double radius = fit.Radius!.Value.Millimeters, tolerance = 1e-6 * Math.Abs(radius);
            Assert.Equal(radius, moved.Radius!.Value.Millimeters, tolerance);
            Assert.Equal(fit.Centre!.Value.Along.Millimeters + 4321, moved.Centre!.Value.Along.Millimeters, tolerance);
            Assert.Equal(radius, mirrored.Radius!.Value.Millimeters, tolerance);
            Assert.Equal(-radius, inside.Radius!.Value.Millimeters, tolerance);
            Assert.Equal(2 * radius, twice.Radius!.Value.Millimeters, 2 * tolerance);
            Assert.Equal(2 * fit.RadiusStandardError!.Value.Millimeters, twice.RadiusStandardError!.Value.Millimeters, tolerance);
            Assert.All(fit.Residuals.Zip(inside.Residuals), pair => Assert.Equal(pair.First.Millimeters, -pair.Second.Millimeters, 2e-5));
            Assert.Equal(fit.Residuals.Max(r => Math.Abs(r.Millimeters)), Math.Abs(fit.Residuals[fit.FarthestPoint].Millimeters));
            Assert.Equal(fit.RootMeanSquare.Millimeters, Math.Sqrt(fit.Residuals.Average(r => r.Millimeters * r.Millimeters)), 2e-6);
        }
    }

    [Fact]
    public void A_residual_is_positive_away_from_the_room()
    {
        MeasuredPoint[] points = OnCircle(2000, 90, 15, 0, 9);
        points[4] = new MeasuredPoint(points[4].Along, Mm(points[4].Offset.Millimeters + 3));
        FittedCircle fit = CircleFit.Through(points);
        Assert.Equal(4, fit.FarthestPoint);
        Assert.True(fit.Residuals[4].Millimeters > 1);
        Finding off = Assert.Single(fit.Findings, finding => finding.Code == "geometry-fit-point-off");
        Assert.Equal(4, off.Values.Single(value => value.Name == "farthest-point").Value);

        points[4] = new MeasuredPoint(points[4].Along, Mm(points[4].Offset.Millimeters - 2.7)); // 0.3 mm left: within the reading
        Assert.DoesNotContain(CircleFit.Through(points).Findings, finding => finding.Code == "geometry-fit-point-off");
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0)]
    [InlineData(0.3, 0.7)]
    [InlineData(-2, 1)]
    public void Points_in_line_are_flat(double along, double offset)
    {
        FittedCircle fit = CircleFit.Through([.. Enumerable.Range(0, 7).Select(i => new MeasuredPoint(Mm(100 + (i * 50 * along)), Mm(-40 + (i * 50 * offset))))]);
        Assert.Null(fit.Radius);
        Assert.Null(fit.Centre);
        Assert.Equal(0, fit.Curvature.InverseMillimeters);
        Assert.Equal(0, fit.OverChord.Rise.Millimeters);
        Assert.Contains(fit.Findings, finding => finding.Code == "geometry-fit-flat");
        Assert.All(fit.Residuals, residual => Assert.Equal(0, residual.Millimeters, 2e-6));
        WorkingsCheck.Recompute(fit.Explain());
    }

    [Fact]
    public void Curvature_within_its_standard_error_is_flat()
    {
        // Offsets +1, -1, -1, +1, +1, -1, -1, +1 over equal steps have no quadratic part to speak of beside their scatter.
        double[] offsets = [1, -1, -1, 1.2, 1, -1, -1, 1];
        FittedCircle fit = CircleFit.Through([.. offsets.Select((offset, i) => new MeasuredPoint(Mm(200 * i), Mm(offset)))]);
        Assert.Null(fit.Radius);
        Assert.Null(fit.RadiusStandardError);
        Assert.Contains(fit.Findings, finding => finding.Code == "geometry-fit-flat");

        // The line of least distance: with a slope this small the same as that of least offset, by hand from the sums.
        double meanX = 700, meanY = offsets.Average();
        double slope = offsets.Select((y, i) => ((200 * i) - meanX) * (y - meanY)).Sum() / Enumerable.Range(0, 8).Sum(i => Math.Pow((200 * i) - meanX, 2));
        Assert.Equal(offsets[0] - (meanY - (slope * meanX)), fit.Residuals[0].Millimeters, 1e-4);
    }

    [Fact]
    public void An_uncertain_radius_is_told()
    {
        MeasuredPoint[] points = Noisy(5000, 4, 0.6, 6, new Random(5));
        FittedCircle fit = CircleFit.Through(points);
        if (fit.Radius is { } radius)
        {
            Assert.Equal(fit.RadiusStandardError!.Value.Millimeters > 0.1 * Math.Abs(radius.Millimeters), fit.Findings.Any(finding => finding.Code == "geometry-fit-radius-uncertain"));
        }

        Assert.Contains(CircleFit.Through([new(Mm(0), Mm(0)), new(Mm(300), Mm(3.5)), new(Mm(600), Mm(2.5)), new(Mm(1000), Mm(0.5))]).Findings, finding => finding.Code == "geometry-fit-radius-uncertain");
    }

    [Fact]
    public void Bad_points_are_refused_by_their_path()
    {
        MeasuredPoint a = new(Mm(0), Mm(0)), b = new(Mm(500), Mm(20)), c = new(Mm(1000), Mm(0));
        Assert.Throws<ArgumentNullException>(() => CircleFit.Through(null!));
        Assert.Equal("points", Assert.Throws<ArgumentOutOfRangeException>(() => CircleFit.Through([a, b])).ParamName);
        Assert.Equal("points", Assert.Throws<ArgumentOutOfRangeException>(() => CircleFit.Through([a, b, a, b, b])).ParamName);
        Assert.Equal("points[1].Offset", Assert.Throws<ArgumentOutOfRangeException>(() => CircleFit.Through([a, new(Mm(0), Mm(1e6 + 1)), c])).ParamName);
        Assert.Equal("points[2].Along", Assert.Throws<ArgumentException>(() => CircleFit.Through([a, b, new(new Length(1, (LengthUnit)999), Mm(0))])).ParamName);
        Assert.Equal(2, CircleFit.Check([new(Mm(2e6), Mm(-2e6)), b, c]).Count);
        Assert.NotNull(CircleFit.Through([a, b, c, b, b]).Radius); // doubles count twice, and are no trouble
        Assert.NotNull(CircleFit.Through([new(Mm(-1e6), Mm(1e6)), new(Mm(1e6), Mm(1e6)), new(Mm(0), Mm(-1e6))]).Radius);
        Assert.NotNull(CircleFit.Through([.. OnCircle(700, 90, 100, 0, 1000)]).Radius);
    }

    [Fact]
    public void Points_compare_by_place_in_any_unit()
    {
        MeasuredPoint inches = new(Inch(1), Inch(2)), millimetres = new(Mm(25.4), Mm(50.8));
        Assert.True(inches == millimetres);
        Assert.Equal(inches.GetHashCode(), millimetres.GetHashCode());
        Assert.True(inches != new MeasuredPoint(Mm(25.4), Mm(50.9)));
        Assert.Equal("(25.4 mm, 50.8 mm)", inches.ToString());
    }

    private static MeasuredPoint[] OnCircle(double radius, double middle, double half, double shift, int count) =>
        [.. Enumerable.Range(0, count).Select(i =>
        {
            double angle = (middle - half + (2 * half * i / (count - 1))) * Math.PI / 180;
            return new MeasuredPoint(Mm(shift + (radius * Math.Cos(angle))), Mm((-shift / 2) + (radius * Math.Sin(angle))));
        })];

    /// <summary>Points of a hollow arc (half-angle above 0) or a bulging one, with normal errors square to the circle and along the string.</summary>
    private static MeasuredPoint[] Noisy(double radius, double half, double noise, int count, Random random)
    {
        double Error() => noise * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        return [.. OnCircle(radius, half > 0 ? 90 : -90, Math.Abs(half), 0, count).Select(p => new MeasuredPoint(Mm(p.Along.Millimeters + Error()), Mm(p.Offset.Millimeters + Error())))];
    }

    /// <summary>Pattern search over the centre; the best radius for a centre is the mean distance.</summary>
    private static (double X, double Y, double R) Search(MeasuredPoint[] points, double startX, double startY, double reach)
    {
        double Radius(double x, double y) => points.Average(p => Math.Sqrt(Math.Pow(p.Along.Millimeters - x, 2) + Math.Pow(p.Offset.Millimeters - y, 2)));
        double Sum(double x, double y)
        {
            double r = Radius(x, y);
            return points.Sum(p => Math.Pow(Math.Sqrt(Math.Pow(p.Along.Millimeters - x, 2) + Math.Pow(p.Offset.Millimeters - y, 2)) - r, 2));
        }

        // Away from the answer first, so that the search has to find it by itself.
        double x = startX + (0.05 * reach), y = startY - (0.1 * reach), step = 0.1 * reach, best = Sum(x, y);
        while (step > 1e-7)
        {
            bool better = false;
            foreach ((double dx, double dy) in new[] { (1.0, 0.0), (-1, 0), (0, 1), (0, -1), (1, 1), (-1, -1), (1, -1), (-1, 1) })
            {
                double value = Sum(x + (dx * step), y + (dy * step));
                if (value < best)
                {
                    (x, y, best, better) = (x + (dx * step), y + (dy * step), value, true);
                }
            }

            step = better ? step : step / 2;
        }

        return (x, y, Radius(x, y));
    }
}
