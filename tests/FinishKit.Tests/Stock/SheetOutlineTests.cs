using System;
using System.Linq;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Stock;

/// <summary>Outlines of many corners, and such as meet by a hair or miss by one.</summary>
public sealed class SheetOutlineTests
{
    /// <summary>500 kinds of 200 corners are 100,000; one corner more is too many, and an outline that is refused by its own count is not counted.</summary>
    [Fact]
    public void Corners_are_limited_in_all_and_looked_at_in_time()
    {
        SheetPart[] parts = [.. Enumerable.Repeat(Comb(200), 500)];
        NestingJob job = new(parts, [new StockSheet(Mm(2440), Mm(1220), 38m)], SheetCutting.Sawn);
        System.Diagnostics.Stopwatch clock = System.Diagnostics.Stopwatch.StartNew();
        Assert.Empty(SheetNesting.Check(job));
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(10), $"{clock.Elapsed}");
        TestContext.Current.TestOutputHelper?.WriteLine($"{clock.Elapsed}");
        InputProblem problem = Assert.Single(SheetNesting.Check(job with { Parts = [.. parts, Comb(4)] }));
        Assert.Equal(("job.Parts", "100004 corners", true), (problem.Parameter, problem.Value, problem.IsRange));
        Assert.Equal(["job.Parts[500].Outline"], SheetNesting.Check(job with { Parts = [.. parts, Comb(202)] }).Select(static each => each.Parameter));
    }

    /// <summary>
    /// In nanometres from (0, 0) to (b, b - 1), b = 10,000,000,000, goes a side; the corner (b - 1, b - 2) is right of it: the determinant is
    /// b (b - 2) - (b - 1)(b - 1) = -1. On the side, at (0, 0) itself, it would meet it. Twenty digits are more than a double has.
    /// </summary>
    [Fact]
    public void A_corner_beside_a_side_by_the_least_there_is_does_not_meet_it()
    {
        MeasuredPoint[] outline = [At(0, 0), At(10_000, 9999.999999), At(10_000, 5000), At(9999.999999, 9999.999998), At(5000, 0)];
        NestingJob job = new([new SheetPart(Mm(10_000), Mm(9999.999999), 1, mayTurn: false) { Outline = outline }], [new StockSheet(Mm(2440), Mm(1220), 38m)], SheetCutting.Sawn);
        Assert.Empty(SheetNesting.Check(job));

        // A nanometre higher it lies left of the side, and the outline crosses itself.
        outline[3] = At(9999.999999, 9999.999999);
        Assert.Equal(["job.Parts[0].Outline"], SheetNesting.Check(job with { Parts = [job.Parts[0] with { Outline = outline }] }).Select(static problem => problem.Parameter));
    }

    /// <summary>A corner on another side, a side on another, a corner twice: each meets.</summary>
    [Theory]
    [InlineData("0,0 100,0 100,80 50,0 0,80", false)]
    [InlineData("0,0 100,0 100,80 50,0.000001 0,80", true)]
    [InlineData("0,0 60,0 60,40 20,40 20,20 60,20 60,0 100,0 100,80 0,80", false)]
    [InlineData("0,0 100,0 100,0 100,80 0,80", false)]
    [InlineData("0,0 50,0 100,0 100,80 0,80", true)]
    [InlineData("0,80 100,80 100,0 0,0", true)]
    public void Sides_meet_only_at_their_corner(string corners, bool isGood)
    {
        MeasuredPoint[] outline = [.. corners.Split(' ').Select(static corner => corner.Split(',')).Select(static at => At(double.Parse(at[0], System.Globalization.CultureInfo.InvariantCulture), double.Parse(at[1], System.Globalization.CultureInfo.InvariantCulture)))];
        NestingJob job = new([new SheetPart(Mm(100), Mm(80), 1, mayTurn: false) { Outline = outline }], [new StockSheet(Mm(2440), Mm(1220), 38m)], SheetCutting.Sawn);
        Assert.Equal(isGood, SheetNesting.Check(job).Count == 0);
    }

    /// <summary>Teeth along one side of 1000 x 300: an even number of corners.</summary>
    private static SheetPart Comb(int corners)
    {
        double step = 1000.0 / (corners - 3);
        return new SheetPart(Mm(1000), Mm(300), 1, mayTurn: false)
        {
            Outline = [At(0, 0), At(1000, 0), At(1000, 300), .. Enumerable.Range(1, corners - 4).Select(i => At(1000 - (i * step), i % 2 == 1 ? 150 : 299)), At(0, 300)],
        };
    }

    private static MeasuredPoint At(double along, double across) => new(Mm(along), Mm(across));
}
