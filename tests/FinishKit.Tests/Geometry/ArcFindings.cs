using System.Linq;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Geometry;

/// <summary>What half a millimetre of reading does to an arc, said only where a rise was read; and what makes two arcs equal. Figures by hand beside each.</summary>
public sealed class ArcFindings
{
    /// <summary>300 and 2: R = 90000/16 + 1 = 5626; at 2.5 of rise 4501.25, at 1.5 7500.75, which is over 1.1 x 5626.</summary>
    [Fact]
    public void A_rise_that_was_read_is_uncertain()
    {
        Finding finding = Assert.Single(Arc.FromChordAndRise(Mm(300), Mm(2)).Findings);
        Assert.Equal(("geometry-radius-uncertain", Severity.Caution), (finding.Code, finding.Severity));
        Assert.Equal(["radius", "rise-error", "least-radius", "greatest-radius", "straightedge"], finding.Values.Select(static figure => figure.Name));
        Assert.Equal([5626, 0.5, 4501.25, 7500.75], finding.Values.Take(4).Select(static figure => figure.Value));
        Assert.Equal(497.206, finding.Values[4].Value, 0.0005);
    }

    /// <summary>0 and exactly half a millimetre may be flat; R at 0.5 is 22500.25, at 1 it is 11250.5. A nanometre more than half may not be.</summary>
    [Fact]
    public void A_rise_within_the_reading_may_be_flat()
    {
        foreach ((double rise, double least) in new[] { (0, 22500.25), (0.5, 11250.5), (-0.5, -11250.5) })
        {
            Finding finding = Assert.Single(Arc.FromChordAndRise(Mm(300), Mm(rise)).Findings);
            Assert.Equal(("geometry-flat-within-reading", Severity.Caution), (finding.Code, finding.Severity));
            Assert.Equal([rise, 300, 0.5, least], finding.Values.Select(static figure => figure.Value));
        }

        Assert.Equal("geometry-radius-uncertain", Assert.Single(Arc.FromChordAndRise(Mm(300), Mm(0.500001)).Findings).Code);
    }

    /// <summary>The same arc by its radius, angle or length: nothing was read off a straightedge.</summary>
    [Fact]
    public void An_arc_that_was_not_read_has_no_findings()
    {
        CircularArc read = Arc.FromChordAndRise(Mm(300), Mm(2));
        CircularArc[] known =
        [
            Arc.FromChordAndRadius(read.Chord, read.Radius!.Value), Arc.FromRiseAndRadius(read.Rise, read.Radius!.Value), Arc.FromChordAndHalfAngle(read.Chord, read.HalfAngle),
            Arc.FromChordAndArcLength(read.Chord, read.ArcLength), Arc.FromRadiusAndArcLength(read.Radius!.Value, read.ArcLength), Arc.FromChordAndHalfAngle(Mm(300), Angle.FromDegrees(0)), default,
        ];
        Assert.NotEmpty(read.Findings);
        Assert.All(known, static arc => Assert.Empty(arc.Findings));
    }

    /// <summary>Half a circle of 2 mm: at 0.5 of rise R = 1.25, over 1.1; and the rise that holds it, 0.5 (2.2 + 0.5)/(2 (0.1 + 0.5)) = 1.125, is over R: no straightedge does.</summary>
    [Fact]
    public void A_circle_too_small_for_any_straightedge_gives_no_figure_for_one()
    {
        Finding finding = Assert.Single(Arc.FromChordAndRise(Mm(2), Mm(1)).Findings);
        Assert.Contains("No straightedge holds it within 10%", finding.Message, System.StringComparison.Ordinal);
        Assert.Equal(["radius", "rise-error", "least-radius", "greatest-radius"], finding.Values.Select(static figure => figure.Name));
        Assert.Equal([1, 0.5, 1, 1.25], finding.Values.Select(static figure => figure.Value));
    }

    /// <summary>From micrometres to a metre, both signs and none.</summary>
    [Property(MaxTest = 2000)]
    public void No_finding_has_a_value_that_is_no_number(ushort chord, short rise, byte scale)
    {
        double size = System.Math.Pow(10, -(scale % 5));
        CircularArc arc = Arc.FromChordAndRise(Mm((chord + 1) * size), Mm(rise * size));
        Assert.All(arc.Findings.SelectMany(static finding => finding.Values), static figure => Assert.True(double.IsFinite(figure.Value), figure.Name));
        Assert.All(arc.Findings, static finding => Assert.DoesNotContain("NaN", finding.Message, System.StringComparison.Ordinal));
    }

    /// <summary>1 mm of chord on a circle of 1 km rises 1.25e-7 mm, on one of 0.9 km 1.39e-7: both 0 on the grid, and yet two arcs.</summary>
    [Fact]
    public void Arcs_of_different_radius_are_not_equal()
    {
        CircularArc wide = Arc.FromChordAndRadius(Mm(1), Mm(1e6)), tighter = Arc.FromChordAndRadius(Mm(1), Mm(9e5)), same = Arc.FromChordAndRadius(Length.FromMeters(0.001), Length.FromMeters(1000));
        Assert.Equal((wide.Chord.Millimeters, wide.Rise.Millimeters), (tighter.Chord.Millimeters, tighter.Rise.Millimeters));
        Assert.True(wide != tighter);
        Assert.False(wide.Equals(tighter));
        Assert.True(wide == same);
        Assert.Equal(wide.GetHashCode(), same.GetHashCode());
    }
}
