using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Geometry;

/// <summary>Edges by hand, and what is refused. No expected value is the program's own.</summary>
public sealed class EdgeCurveTests
{
    /// <summary>The demo van's rear edge: it comes forward toward the top. Its front is at u 0.</summary>
    internal static readonly MeasuredPoint[] DemoRear =
        [new(Mm(0), Mm(3400)), new(Mm(200), Mm(3398)), new(Mm(400), Mm(3392)), new(Mm(600), Mm(3382)), new(Mm(800), Mm(3369)), new(Mm(994), Mm(3352))];

    /// <summary>The slope in the middle is the harmonic mean of -0.02 and -0.0575: -0.0296774; at the top (3 (-0.0575) + 0.02)/2 = -0.07625. Half way up the upper piece that is 3380.5 + 400 (0.07625 - 0.0296774)/8.</summary>
    [Fact]
    public void Through()
    {
        #region example: EdgeCurve.Through
        MeasuredEdge rear = EdgeCurve.Through([new(Mm(0), Mm(3400)), new(Mm(400), Mm(3392)), new(Mm(800), Mm(3369))]);
        Length offset = rear.OffsetAt(Mm(600));             // 3382.829 mm
        Length doubt = rear.GreatestDifference!.Value;      // 2.35 mm, so there is a finding:
        Length also = rear.GreatestDifferenceAt!.Value; // measure at 581.036 mm too
        #endregion
        Assert.Equal(3382.828629, offset.Millimeters, 1e-6);
        Assert.Equal(2.350319, doubt.Millimeters, 1e-6); // sampled each 0.01 mm by a script of its own, as is the height
        Assert.Equal(581.04, also.Millimeters, 0.011);
        Finding finding = Assert.Single(rear.Findings);
        Assert.Equal("geometry-edge-curves-differ", finding.Code);
        Assert.Contains("between the heights 400 and 800 mm", finding.Message, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(also.Millimeters, finding.Values.Single(static value => value.Name == "measure-at").Value);
        Assert.Equal(rear.OffsetAt(also).Millimeters, finding.Values.Single(static value => value.Name == "shape-preserving-offset").Value, 1e-6);
        Assert.Equal("difference-limit 1 mm (curves through the same points may differ by 1 mm, what a tape is read to; where they differ by more, measure once more (default, judgement))", Assert.Single(rear.DefaultsUsed).ToString());
    }

    [Fact]
    public void Straight()
    {
        #region example: EdgeCurve.Straight
        MeasuredEdge jamb = EdgeCurve.Straight(new(Mm(0), Mm(1400)), new(Mm(900), Mm(1415.75)));
        Angle lean = jamb.SlopeAt(Mm(450));                 // 1.003°: 15.75 in 900
        #endregion
        Assert.Equal(1.0026, lean.Degrees, 0.0001); // atan 0.0175 = 0.0175 - 0.0175³/3 = 0.01749821 rad
        Assert.Equal(1407.875, jamb.OffsetAt(Mm(450)).Millimeters);
        Assert.Null(jamb.Radius);
        Assert.Null(jamb.Fit);
        Assert.Null(jamb.GreatestDifference);
        Assert.Empty(jamb.Findings);
        Assert.Empty(jamb.DefaultsUsed);
    }

    /// <summary>Chord² = 994² + 48² = 990,340; R = 990,340/94 + 5.875. The offset in the middle by the centre, in fifty digits, by a script of its own.</summary>
    [Fact]
    public void OnArc()
    {
        #region example: EdgeCurve.OnArc
        MeasuredEdge pillar = EdgeCurve.OnArc(new(Mm(0), Mm(3400)), new(Mm(994), Mm(3352)), Mm(11.75));
        Length? radius = pillar.Radius;                     // 10,541.407 mm
        Length middle = pillar.OffsetAt(Mm(497));           // 3387.764 mm
        #endregion
        Assert.Equal(10541.406915, radius!.Value.Millimeters, 1e-6);
        Assert.Equal(3387.763676639890, pillar.At(497), 1e-9);
        Assert.Equal(3387.763677, middle.Millimeters, 1e-6);
    }

    /// <summary>The demo van's edge: curves of it differ by 0.58 mm at most, at 893 mm, by a script that samples each tenth of a millimetre. Below what a tape is read to.</summary>
    [Fact]
    public void The_demo_vans_rear_edge_was_measured_at_enough_heights()
    {
        MeasuredEdge rear = EdgeCurve.Through(DemoRear);
        Assert.Equal(0.584695, rear.GreatestDifference!.Value.Millimeters, 1e-5);
        Assert.Equal(893.4, rear.GreatestDifferenceAt!.Value.Millimeters, 0.06);
        Assert.Empty(rear.Findings);
        Assert.Contains(EdgeCurve.Through(DemoRear, differenceLimit: Mm(0.58)).Findings, static finding => finding.Code == "geometry-edge-curves-differ");
    }

    /// <summary>By hand: with equal steps h and rises 4, 0 the shape-preserving slopes are 6/h at the lower end ((3·4 - 0)/2), 0 in the middle and 0 at the top.</summary>
    [Fact]
    public void A_bow_that_levels_out_stays_level()
    {
        MeasuredPoint[] points = [new(Mm(0), Mm(0)), new(Mm(100), Mm(4)), new(Mm(200), Mm(4))];
        MeasuredEdge edge = EdgeCurve.Through(points, EdgeFit.ShapePreserving);
        Assert.Equal(4, edge.OffsetAt(Mm(150)).Millimeters);
        Assert.Equal(0.06, Math.Tan(edge.SlopeAt(Mm(0)).Radians), 1e-12);
        Assert.Equal(2 + (100 * 0.06 / 8), edge.OffsetAt(Mm(50)).Millimeters, 1e-6); // Hermite at the middle: the mean, and h (m_a - m_b)/8

        // Natural by hand: m_1 = (d_1 + d_2)/2 = 0.02, m_2 = (0 - 0.02)/2 = -0.01: in the middle of the upper piece 4 + 100 · 0.03/8.
        Assert.Equal(4.375, EdgeCurve.Through(points, EdgeFit.NaturalCubic).OffsetAt(Mm(150)).Millimeters, 1e-6);
    }

    /// <summary>
    /// How much a shape-preserving edge flattens a bow whose middle was not measured: both points beside the middle lie equally far out, so it is level between them, and on a parabola measured at n equal steps
    /// they lie 1/(n - 1)² of the bow short of its middle. 4% at six points; 11% at four, 2% at eight; nothing where the middle was measured.
    /// </summary>
    [Theory]
    [InlineData(4, 1.0 / 9)]
    [InlineData(6, 1.0 / 25)]
    [InlineData(8, 1.0 / 49)]
    [InlineData(5, 0)]
    [InlineData(7, 0)]
    public void A_symmetric_bow_is_flattened_at_an_even_number_of_points(int count, double share)
    {
        MeasuredPoint[] points = [.. Enumerable.Range(0, count).Select(i => (double)i / (count - 1)).Select(static at => new MeasuredPoint(Mm(1000 * at), Mm(100 * at * (1 - at))))];
        MeasuredEdge edge = EdgeCurve.Through(points, EdgeFit.ShapePreserving);
        Assert.Equal(25 * (1 - share), edge.OffsetAt(Mm(500)).Millimeters, 1e-5);
    }

    [Fact]
    public void Two_points_are_straight_whatever_the_fit()
    {
        MeasuredPoint[] points = [new(Mm(0), Mm(10)), new(Mm(300), Mm(40))];
        foreach (EdgeFit fit in new[] { EdgeFit.Linear, EdgeFit.ShapePreserving, EdgeFit.NaturalCubic })
        {
            MeasuredEdge edge = EdgeCurve.Through(points, fit);
            Assert.Equal(20, edge.OffsetAt(Mm(100)).Millimeters, 1e-6);
            Assert.Equal(0, edge.GreatestDifference!.Value.Millimeters);
            Assert.Null(edge.GreatestDifferenceAt);
            Finding note = Assert.Single(edge.Findings);
            Assert.Equal(("geometry-edge-two-points", Severity.Note), (note.Code, note.Severity));
            Assert.Equal(150, note.Values.Single(static value => value.Name == "measure-at").Value);
            WorkingsCheck.Recompute(edge.Explain());
        }
    }

    [Fact]
    public void At_a_corner_the_slope_is_that_of_the_piece_above()
    {
        MeasuredEdge edge = EdgeCurve.Through([new(Mm(0), Mm(0)), new(Mm(100), Mm(10)), new(Mm(200), Mm(0))], EdgeFit.Linear);
        Assert.Equal(0.1, Math.Tan(edge.SlopeAt(Mm(99.999999)).Radians), 1e-12);
        Assert.Equal(-0.1, Math.Tan(edge.SlopeAt(Mm(100)).Radians), 1e-12);
        Assert.Equal(-0.1, Math.Tan(edge.SlopeAt(Mm(200)).Radians), 1e-12);
    }

    /// <summary>Exactly met is met; a step of the grid more is a finding.</summary>
    [Fact]
    public void The_limit_of_the_difference_exactly_met_is_met()
    {
        MeasuredPoint[] points = [new(Mm(0), Mm(0)), new(Mm(100), Mm(10)), new(Mm(200), Mm(0))];
        double difference = EdgeCurve.Through(points).GreatestDifference!.Value.Millimeters;
        Assert.Empty(EdgeCurve.Through(points, differenceLimit: Mm(difference)).Findings);
        Finding finding = Assert.Single(EdgeCurve.Through(points, differenceLimit: Mm(difference - 1e-6)).Findings);
        Assert.Equal(SourceKind.Supplied, finding.Source!.Kind);
        Assert.Empty(EdgeCurve.Through(points, differenceLimit: Mm(5)).DefaultsUsed);
    }

    [Theory]
    [InlineData(-0.000001)]
    [InlineData(994.000001)]
    [InlineData(double.MaxValue)]
    public void Nothing_is_extrapolated(double height)
    {
        foreach (MeasuredEdge edge in new[] { EdgeCurve.Through(DemoRear), EdgeCurve.Straight(DemoRear[0], DemoRear[^1]), EdgeCurve.OnArc(DemoRear[0], DemoRear[^1], Mm(11)) })
        {
            Length beyond = new(height, LengthUnit.Millimeter);
            ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => edge.OffsetAt(beyond));
            Assert.Equal("height", refused.ParamName);
            Assert.Contains("0 to 994 mm", refused.Message, StringComparison.Ordinal);
            Assert.Equal("height", Assert.Throws<ArgumentOutOfRangeException>(() => edge.SlopeAt(beyond)).ParamName);
            Assert.Equal(3400, edge.OffsetAt(edge.Lowest).Millimeters, 1e-6);
            Assert.Equal(3352, edge.OffsetAt(edge.Highest).Millimeters, 1e-6);
        }
    }

    public static TheoryData<double[], string, string> Refused() => new()
    {
        { [0, 0], "points", "1 points" },
        { [0, 1, 100, 2, 0, 3], "points[2].Along", "points[0] is at 0 mm" },
        { [100, 1, 0, 2, 99.000001, 3], "points[2].Along", "points[0] is at 100 mm" },
        { [0, 1, 1e7, 2], "points[1].Along", "-1000000 to 1000000 mm" },
        { [0, 1, 100, -1e7], "points[1].Offset", "-1000000 to 1000000 mm" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void Points_are_refused_by_name(double[] numbers, string parameter, string allowed)
    {
        MeasuredPoint[] points = [.. numbers.Chunk(2).Select(static pair => new MeasuredPoint(Mm(pair[0]), Mm(pair[1])))];
        InputProblem problem = EdgeCurve.CheckThrough(points)[0];
        Assert.Equal(parameter, problem.Parameter);
        Assert.Contains(allowed, problem.Message, StringComparison.Ordinal);
        Assert.Equal(parameter, Assert.ThrowsAny<ArgumentException>(() => EdgeCurve.Through(points)).ParamName);
    }

    [Fact]
    public void All_problems_come_at_once()
    {
        IReadOnlyList<InputProblem> problems = EdgeCurve.CheckThrough([new(Mm(0), new Length(1, (LengthUnit)999)), new(Mm(0.5), Mm(0)), new(Mm(1e7), Mm(0))], (EdgeFit)7, Mm(-1));
        Assert.Equal(["points[0].Offset", "points[2].Along", "points[1].Along", "fit", "differenceLimit"], problems.Select(static problem => problem.Parameter));
        Assert.Empty(EdgeCurve.CheckThrough([new(Mm(100), Mm(0)), new(Mm(99), Mm(0))])); // 1 mm apart, in any order
        Assert.Equal("points", Assert.Single(EdgeCurve.CheckThrough([.. Enumerable.Range(0, 201).Select(static i => new MeasuredPoint(Mm(2 * i), Mm(0)))])).Parameter);
        Assert.Empty(EdgeCurve.CheckThrough([.. Enumerable.Range(0, 200).Select(static i => new MeasuredPoint(Mm(2 * i), Mm(0)))]));
    }

    /// <summary>By hand: the lean at the ends is the chord's plus the half-angle. Upright chord of 1000: 500 tan(44.5°) = 491.35. Chord at 45°, 1414.214 long, half-angle 44°: 707.107 tan(22°) = 285.69.</summary>
    [Theory]
    [InlineData(0, 491.3, true)]
    [InlineData(0, 491.4, false)]
    [InlineData(0, -491.3, true)]
    [InlineData(0, -491.4, false)]
    [InlineData(1000, 285.6, true)]
    [InlineData(1000, 285.8, false)]
    [InlineData(-1000, -285.8, false)]
    public void An_arc_may_not_lean_a_quarter_turn(double across, double rise, bool isTaken)
    {
        IReadOnlyList<InputProblem> problems = EdgeCurve.CheckOnArc(new(Mm(0), Mm(0)), new(Mm(1000), Mm(across)), Mm(rise));
        Assert.Equal(isTaken ? [] : ["rise"], problems.Select(static problem => problem.Parameter));
    }

    [Fact]
    public void Ends_of_a_straight_edge_are_refused_by_name()
    {
        IReadOnlyList<InputProblem> problems = EdgeCurve.CheckStraight(new(Mm(1e7), Mm(0)), new(Mm(0), Mm(-1e7)));
        Assert.Equal(["lower.Along", "upper.Offset"], problems.Select(static problem => problem.Parameter));
        Assert.Equal("upper.Along", Assert.Throws<ArgumentOutOfRangeException>(() => EdgeCurve.Straight(new(Mm(0), Mm(0)), new(Mm(0.999999), Mm(0)))).ParamName);
        Assert.Empty(EdgeCurve.CheckStraight(new(Mm(0), Mm(0)), new(Mm(1), Mm(0))));
    }

    /// <summary>Nearly along the courses, a kilometre in a millimetre: still exact.</summary>
    [Fact]
    public void A_straight_edge_may_lean_as_far_as_it_likes()
    {
        MeasuredEdge edge = EdgeCurve.Straight(new(Mm(0), Mm(0)), new(Mm(1), Mm(1e6)));
        Assert.Equal(250_000, edge.OffsetAt(Mm(0.25)).Millimeters);
        Assert.Equal(90 - (180 / Math.PI * 1e-6), edge.SlopeAt(Mm(0.5)).Degrees, 1e-12);
    }

    /// <summary>An arc too flat to tell from a straight edge is still exact: a nanometre of rise.</summary>
    [Fact]
    public void A_hair_of_rise_is_a_hair_of_bow()
    {
        MeasuredEdge hair = EdgeCurve.OnArc(new(Mm(0), Mm(0)), new(Mm(1000), Mm(0)), Mm(1e-6));
        Assert.Equal(1e-6, hair.At(500), 1e-15);
        Assert.Equal(0.75e-6, hair.At(250), 1e-12); // a parabola: 4 · 1/4 · 3/4
    }

    [Fact]
    public void An_edge_says_what_it_is()
    {
        Assert.StartsWith("edge from 0 to 994 mm, shape-preserving, through 6 points; curves differ by up to 0.585 mm", EdgeCurve.Through(DemoRear).ToString(), StringComparison.Ordinal);
        Assert.Equal("edge from 0 to 994 mm, straight", EdgeCurve.Straight(DemoRear[0], DemoRear[^1]).ToString());
        Assert.Equal("edge from 0 to 994 mm, arc of radius 10541.407 mm", EdgeCurve.OnArc(DemoRear[0], DemoRear[^1], Mm(11.75)).ToString());
        Assert.Equal(EdgeFit.ShapePreserving, EdgeCurve.Through(DemoRear).Fit);
        Assert.Equal(["points", "fit", "lowest", "highest", "offset-at-lowest", "offset-at-highest", "greatest-difference", "greatest-difference-at"], EdgeCurve.Through(DemoRear).Figures().Select(static figure => figure.Name));
    }
}
