using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Geometry;

/// <summary>
/// Packers against hand-worked rows, a search of another kind, and the conditions that make a least a least. For the total: the mean of all places lies among the places
/// touched (else tilting about it would help). For the greatest: the places touched and the places farthest off cannot be parted by a line (else tilting about that would help).
/// </summary>
public sealed class FlatteningTests
{
    [Fact]
    public void Line()
    {
        #region example: Flattening.Line
        PackedLine rail = Flattening.Line([new(Mm(0), Mm(20)), new(Mm(400), Mm(26)), new(Mm(800), Mm(24)), new(Mm(1200), Mm(26))], packerStep: Mm(1.5));
        Length atFirstRib = rail.Points[1].Packing;         // 4 mm: 26 - 22, the line goes from 20 to 26
        Length made = rail.Points[1].Stocked!.Value;        // 4.5 mm: three packers
        Length total = rail.Total;                          // 4 mm: the other three touch
        #endregion
        Assert.Equal(4, atFirstRib.Millimeters, 1e-6);
        Assert.Equal(4.5, made.Millimeters);
        Assert.Equal(4, total.Millimeters, 1e-6);
        Assert.Equal([true, false, true, true], rail.Points.Select(static point => point.Touches));
        Assert.Equal(0.5, rail.Points[1].Proud!.Value.Millimeters, 1e-6);
        Assert.Equal(["geometry-packers-stand-proud", "geometry-packers-lengthen-stack"], rail.Findings.Select(static finding => finding.Code));
        Assert.Equal(23, rail.OffsetAt(Mm(600)).Millimeters, 1e-6);
        Assert.Equal(Math.Atan(0.005) * 180 / Math.PI, rail.Slope.Degrees, 1e-9);
    }

    [Fact]
    public void Plane()
    {
        #region example: Flattening.Plane
        PackedPlane face = Flattening.Plane([new(Mm(0), Mm(0), Mm(20)), new(Mm(1000), Mm(0), Mm(22)), new(Mm(0), Mm(500), Mm(21)), new(Mm(1000), Mm(500), Mm(26))]);
        Length corner = face.Points[3].Packing;             // 3 mm: 26 - (20 + 2 + 1), the other three touch
        Length reference = face.OffsetAt(Mm(500), Mm(250)); // 21.5 mm
        #endregion
        Assert.Equal(3, corner.Millimeters, 1e-6);
        Assert.Equal(21.5, reference.Millimeters, 1e-6);
        Assert.Equal([true, true, true, false], face.Points.Select(static point => point.Touches));
        Assert.Equal(Math.Atan(0.002) * 180 / Math.PI, face.SlopeU.Degrees, 1e-9);
        Assert.Equal(Math.Atan(0.002) * 180 / Math.PI, face.SlopeV.Degrees, 1e-9);
    }

    /// <summary>
    /// 0, 10, 0, 0 at 0, 100, 200, 300: the level line packs 10 at 100 alone. Whatever the slope, the chord from (0, 0) to (300, 0) lies 10 below (100, 10), so no line has less than 10 there.
    /// 0, 0, 0, 9 at the same places: least total level, total 9, greatest 9. Least greatest: along (0, 0) and (300, 9): slope 0.03, gaps 0, -3, -6, 0:
    /// moved to touch at 200 6, 3, 0, 6: greatest 6, total 15.
    /// </summary>
    [Fact]
    public void Two_aims_by_hand()
    {
        MeasuredPoint[] flat = Row((0, 0), (100, 10), (200, 0), (300, 0));
        Assert.Equal((10.0, 10.0), (Flattening.Line(flat).Total.Millimeters, Flattening.Line(flat, FlatteningAim.LeastGreatest).Greatest.Millimeters));
        Assert.Equal(10, Flattening.Line(flat, FlatteningAim.LeastGreatest).Total.Millimeters);
        MeasuredPoint[] kicked = Row((0, 0), (100, 0), (200, 0), (300, 9));
        PackedLine total = Flattening.Line(kicked), greatest = Flattening.Line(kicked, FlatteningAim.LeastGreatest);
        Assert.Equal([0, 0, 0, 9.0], Packings(total.Points));
        Assert.Equal([6, 3, 0, 6.0], Packings(greatest.Points).Select(static packing => Math.Round(packing, 6)));
        Assert.Equal((15.0, 6.0), (greatest.Total.Millimeters, greatest.Greatest.Millimeters));

        // 2 mm under every point: everything moves by as much, and what touches still does.
        PackedLine padded = Flattening.Line(kicked, FlatteningAim.LeastGreatest, Mm(2), Mm(1.5));
        Assert.Equal([8, 5, 2, 8.0], Packings(padded.Points).Select(static packing => Math.Round(packing, 6)));
        Assert.Equal([9, 6, 3, 9.0], padded.Points.Select(static point => point.Stocked!.Value.Millimeters));
        Assert.Equal([false, false, true, false], padded.Points.Select(static point => point.Touches));
        Assert.Equal(1, padded.Findings.First(static finding => finding.Code == "geometry-packers-stand-proud").Values[1].Value, 1e-6);
        Assert.Equal(-2, padded.OffsetAt(Mm(200)).Millimeters - greatest.OffsetAt(Mm(200)).Millimeters, 1e-6);
    }

    /// <summary>Twisted corners 0, 0, 0, 8 of a square: one plane through three has 8 on the fourth, or the plane along both diagonals: level along one, 0 to 8 along the other, so 4 at two corners and 0 at the others.</summary>
    [Fact]
    public void A_twisted_face_by_hand()
    {
        SurfacePoint[] twisted = Face((0, 0, 0), (1000, 0, 0), (0, 1000, 0), (1000, 1000, 8));
        PackedPlane total = Flattening.Plane(twisted), greatest = Flattening.Plane(twisted, FlatteningAim.LeastGreatest);
        Assert.Equal(8, total.Total.Millimeters, 1e-6);
        Assert.Equal(4, greatest.Greatest.Millimeters, 1e-6);
        Assert.Equal([4, 0, 0, 4.0], Packings(greatest.Points).Select(static packing => Math.Round(packing, 6)));
    }

    [Fact]
    public void Packers_are_rounded_up_once_and_thick_ones_are_said()
    {
        // 12 exactly is not more than 12, in packers of 3; 12.000001 makes 15.
        MeasuredPoint[] row = Row((0, 0), (100, 12), (200, 0));
        PackedLine exact = Flattening.Line(row, packerStep: Mm(3));
        Assert.Equal(12, exact.Points[1].Stocked!.Value.Millimeters);
        Assert.Equal(["geometry-packers-lengthen-stack"], exact.Findings.Select(static finding => finding.Code));
        PackedLine over = Flattening.Line(Row((0, 0), (100, 12.000001), (200, 0)), packerStep: Mm(3));
        Assert.Equal(15, over.Points[1].Stocked!.Value.Millimeters);
        Assert.Equal(2.999999, over.Points[1].Proud!.Value.Millimeters, 1e-9);
        Assert.Equal(["geometry-packers-thick", "geometry-packers-stand-proud", "geometry-packers-lengthen-stack"], over.Findings.Select(static finding => finding.Code));
        Assert.Null(Flattening.Line(row).Points[1].Stocked);
        Assert.Null(Flattening.Line(row).Points[1].Proud);
        Assert.Empty(Flattening.Line(Row((0, 3), (100, 7))).Findings);
    }

    /// <summary>1000 tan 8° = 140.54. A limit exactly met is met: the slopes are put in a hair to either side. In a plane both slopes count: 100 and 100 in 1000 are atan 0.1414 = 8.05°, each alone 5.71°.</summary>
    [Fact]
    public void A_line_too_far_off_the_string_is_said()
    {
        double eight = 1000 * Math.Tan(8 * Math.PI / 180);
        Assert.DoesNotContain(Flattening.Line(Row((0, 0), (500, (eight / 2) + 5), (1000, eight - 0.001))).Findings, static finding => finding.Code == "geometry-packers-steep");
        foreach (int sign in new[] { 1, -1 })
        {
            PackedLine steep = Flattening.Line(Row((0, 0), (500, (sign * eight / 2) + 5), (1000, sign * (eight + 0.001))));
            Finding said = Assert.Single(steep.Findings, static finding => finding.Code == "geometry-packers-steep");
            Assert.Equal(Severity.Caution, said.Severity);
            Assert.Contains("1% thinner", said.Message, StringComparison.Ordinal); // cos 8° = 0.9903
        }

        Assert.DoesNotContain(Flattening.Line(Row((0, 0), (1000, 500))).Findings, static finding => finding.Code == "geometry-packers-steep"); // no packer
        SurfacePoint[] both = Face((0, 0, 0), (1000, 0, 100), (0, 1000, 100), (1000, 1000, 205)), one = Face((0, 0, 0), (1000, 0, 100), (0, 1000, 0), (1000, 1000, 105));
        Assert.Contains(Flattening.Plane(both).Findings, static finding => finding.Code == "geometry-packers-steep");
        Assert.DoesNotContain(Flattening.Plane(one).Findings, static finding => finding.Code == "geometry-packers-steep");
    }

    /// <summary>Against golden-section search over the slope, which knows nothing of pairs; and against the conditions of a least.</summary>
    [Property]
    public void A_line_is_least(int seed)
    {
        Random random = new(seed);
        (double S, double X)[] row = [.. Enumerable.Range(0, random.Next(2, 20)).Select(i => (random.Next(0, 40) + (100.0 * i), random.Next(0, 2) == 0 ? random.Next(0, 4) : Math.Round(random.NextDouble() * 30, 6)))];
        foreach (FlatteningAim aim in new[] { FlatteningAim.LeastTotal, FlatteningAim.LeastGreatest })
        {
            PackedLine line = Flattening.Line(Row(row), aim);
            double[] packings = Packings(line.Points);
            double found = aim == FlatteningAim.LeastTotal ? packings.Sum() : packings.Max();
            Assert.Equal(GoldenSection(slope => Objective([.. row.Select(at => at.X - (slope * at.S))], aim), -1, 1), found, 1e-4);
            Assert.All(packings, static packing => Assert.True(packing >= 0));
            for (int i = 0; i < row.Length; i++)
            {
                Assert.Equal(row[i].X - line.OffsetAt(Mm(row[i].S)).Millimeters, packings[i], 2e-6);
            }

            double[] touched = [.. row.Where((_, i) => line.Points[i].Touches).Select(static at => at.S)];
            double[] others = aim == FlatteningAim.LeastTotal ? [row.Average(static at => at.S)] : [.. row.Where((_, i) => packings[i] >= packings.Max() - 2e-6).Select(static at => at.S)];
            Assert.True(touched.Min() <= others.Max() + 1e-9 && others.Min() <= touched.Max() + 1e-9);
            WorkingsCheck.Recompute(line.Explain());
        }
    }

    /// <summary>The conditions of a least, in the plane: no direction parts the touched places from the mean, or from the farthest. Grids with equal offsets are among the cases.</summary>
    [Property(MaxTest = 300)]
    public void A_plane_is_least(int seed)
    {
        Random random = new(seed);
        bool isGrid = random.Next(2) == 0;
        (double U, double V, double X)[] face = isGrid
            ? [.. Enumerable.Range(0, 12).Select(i => (i % 4 * 400.0, i / 4 * 300.0, (double)random.Next(0, 5)))]
            : [.. Enumerable.Range(0, random.Next(4, 16)).Select(_ => ((double)random.Next(0, 3000), (double)random.Next(0, 1000), Math.Round(random.NextDouble() * 20, 3)))];
        foreach (FlatteningAim aim in new[] { FlatteningAim.LeastTotal, FlatteningAim.LeastGreatest })
        {
            PackedPlane plane = Flattening.Plane(Face(face), aim);
            double[] packings = Packings(plane.Points);
            Assert.All(packings, static packing => Assert.True(packing >= 0));
            for (int i = 0; i < face.Length; i++)
            {
                Assert.Equal(face[i].X - plane.OffsetAt(Mm(face[i].U), Mm(face[i].V)).Millimeters, packings[i], 2e-6);
            }

            (double, double)[] touched = [.. face.Where((_, i) => packings[i] <= 2e-6).Select(static at => (at.U, at.V))];
            (double, double)[] others = aim == FlatteningAim.LeastTotal
                ? [(face.Average(static at => at.U), face.Average(static at => at.V))]
                : [.. face.Where((_, i) => packings[i] >= packings.Max() - 2e-6).Select(static at => (at.U, at.V))];
            Assert.False(ArePartedByALine(touched, others), $"{seed}, {aim}");
            Assert.Equal(packings.Sum(), plane.Total.Millimeters, 1e-4);
            Assert.Equal(packings.Max(), plane.Greatest.Millimeters);
            WorkingsCheck.Recompute(plane.Explain());
        }
    }

    /// <summary>Mirrored, shifted or tilted as a whole, the packing stays; each aim is better by its own measure.</summary>
    [Property]
    public void Packing_does_not_depend_on_how_the_string_hangs(int seed)
    {
        Random random = new(seed);
        (double S, double X)[] row = [.. Enumerable.Range(0, random.Next(3, 30)).Select(i => (100.0 * i, random.Next(0, 20_000) / 1000.0))];
        double tilt = random.Next(-200, 200) / 1000.0;
        foreach (FlatteningAim aim in new[] { FlatteningAim.LeastTotal, FlatteningAim.LeastGreatest })
        {
            PackedLine plain = Flattening.Line(Row(row), aim);
            PackedLine tilted = Flattening.Line(Row([.. row.Select(at => (at.S, 700 + at.X + (tilt * at.S)))]), aim), mirrored = Flattening.Line(Row([.. row.Reverse().Select(static at => (-at.S, at.X))]), aim);
            Assert.Equal(plain.Total.Millimeters, tilted.Total.Millimeters, 1e-5);
            Assert.Equal(plain.Greatest.Millimeters, mirrored.Greatest.Millimeters, 1e-5);
        }

        Assert.True(Flattening.Line(Row(row)).Total.Millimeters <= Flattening.Line(Row(row), FlatteningAim.LeastGreatest).Total.Millimeters + 1e-5);
        Assert.True(Flattening.Line(Row(row), FlatteningAim.LeastGreatest).Greatest.Millimeters <= Flattening.Line(Row(row)).Greatest.Millimeters + 1e-5);

        // Points of one row of a face, twice: the plane does as well as the line on each.
        PackedPlane two = Flattening.Plane(Face([.. row.Take(25).SelectMany(static at => new[] { (at.S, 0.0, at.X), (at.S, 500, at.X) })]));
        Assert.Equal(2 * Flattening.Line(Row([.. row.Take(25)])).Total.Millimeters, two.Total.Millimeters, 1e-4);
    }

    [Fact]
    public void Points_on_one_line_are_no_face()
    {
        SurfacePoint[] row = Face((0, 0, 1), (500, 250, 5), (1000, 500, 2), (250, 125.5, 9));
        InputProblem problem = Assert.Single(Flattening.CheckPlane(row));
        Assert.Equal("points", problem.Parameter);
        Assert.Contains("for a row of points ask for the line", problem.Message, StringComparison.Ordinal);
        Assert.Equal("points", Assert.Throws<ArgumentException>(() => Flattening.Plane(row)).ParamName);
        Assert.Empty(Flattening.CheckPlane([.. row, new SurfacePoint(Mm(0), Mm(500), Mm(0))]));
        Assert.NotEmpty(Flattening.CheckPlane(Face((0, 0, 0), (1000, 0, 0), (500, 0.999, 0))));
        Assert.Empty(Flattening.CheckPlane(Face((0, 0, 0), (1000, 0, 0), (500, 1, 0))));
        Assert.Equal("points", Assert.Single(Flattening.CheckLine(Row((7, 0), (7.999, 1), (7, 2)))).Parameter);
        Assert.Empty(Flattening.CheckLine(Row((7, 0), (8, 1), (7, 2))));
        Assert.Equal(["points[1].Along", "points[1].Offset", "aim", "leastPacking", "packerStep"], Flattening.CheckLine(Row((0, 0), (2e5, 2e5)), (FlatteningAim)7, Mm(-1), Mm(0)).Select(static p => p.Parameter));
    }

    /// <summary>The most points there may be, for the aim that tries most.</summary>
    [Fact]
    public void The_most_points_are_done_in_time()
    {
        Random random = new(3);
        PackedPlane plane = Flattening.Plane(Face([.. Enumerable.Range(0, 60).Select(i => (i % 12 * 280.0, i / 12 * 240.0, Math.Round(random.NextDouble() * 15, 2)))]), FlatteningAim.LeastGreatest);
        Assert.Equal(60, plane.Points.Count);
        Assert.InRange(plane.Greatest.Millimeters, 1, 15);
    }

    private static double[] Packings(IReadOnlyList<PackedPoint> points) => [.. points.Select(static point => point.Packing.Millimeters)];

    private static MeasuredPoint[] Row(params (double Along, double Offset)[] points) => [.. points.Select(static at => new MeasuredPoint(Mm(at.Along), Mm(at.Offset)))];

    private static SurfacePoint[] Face(params (double U, double V, double Offset)[] points) => [.. points.Select(static at => new SurfacePoint(Mm(at.U), Mm(at.V), Mm(at.Offset)))];

    private static double Objective(double[] gaps, FlatteningAim aim) => aim == FlatteningAim.LeastTotal ? gaps.Sum() - (gaps.Length * gaps.Min()) : gaps.Max() - gaps.Min();

    private static double GoldenSection(Func<double, double> value, double low, double high)
    {
        double ratio = (Math.Sqrt(5) - 1) / 2;
        for (int i = 0; i < 100; i++)
        {
            double width = ratio * (high - low);
            (low, high) = value(high - width) <= value(low + width) ? (low, low + width) : (high - width, high);
        }

        return value((low + high) / 2);
    }

    /// <summary>Whether some line has all of one set strictly on one side and all of the other on the other: it would lie along a pair of points of one set, or square to one between the two; the directions of all pairs and their squares are tried.</summary>
    private static bool ArePartedByALine((double U, double V)[] one, (double U, double V)[] other)
    {
        (double U, double V)[] all = [.. one, .. other];
        foreach ((double U, double V) from in all)
        {
            foreach ((double U, double V) to in all)
            {
                (double U, double V) along = (to.U - from.U, to.V - from.V);
                foreach ((double U, double V) normal in new[] { along, (-along.V, along.U) })
                {
                    double size = Math.Sqrt((normal.U * normal.U) + (normal.V * normal.V));
                    if (size > 0 && one.Max(at => ((at.U * normal.U) + (at.V * normal.V)) / size) < other.Min(at => ((at.U * normal.U) + (at.V * normal.V)) / size) - 1e-6)
                    {
                        return true;
                    }
                }
            }
        }

        return false;
    }
}
