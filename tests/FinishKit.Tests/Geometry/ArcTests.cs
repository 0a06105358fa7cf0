using System;
using FsCheck.Xunit;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Geometry;

/// <summary>Arc against hand-worked values, and the properties any circle must have. Inputs are whole micrometres or 64ths of an inch.</summary>
public sealed class ArcTests
{
    [Theory]
    [InlineData(1200, 50, 3625.000, 1205.548)] // G_1200_50, DERIVED: R = c²/(8 s) + s/2
    [InlineData(1500, 100, 2862.500, 1517.715)] // DERIVED, as the rest
    [InlineData(1800, 150, 2775.000, 1833.150)]
    [InlineData(1000, 25, 5012.500, 1001.666)]
    public void Circle_of_the_reference_table(double chord, double rise, double radius, double arcLength)
    {
        CircularArc arc = Arc.FromChordAndRise(Mm(chord), Mm(rise));
        Assert.Equal(radius, arc.Radius!.Value.Millimeters, 0.0005);
        Assert.Equal(arcLength, arc.ArcLength.Millimeters, 0.0005);
    }

    [Fact]
    public void G_1200_50_is_the_row_of_the_reference_file()
    {
        Assert.Equal("3625.000 / 1205.548", ReferenceTable.CheckValue("G_1200_50")["expected"]);
        Assert.Equal("DERIVED", ReferenceTable.CheckValue("G_1200_50")["tag"]);
    }

    [Theory]
    [InlineData(352, 7, 2216, 2069, 2386)] // the demo van's upper band: 352²/56 + 3.5 = 2216.07; at 7.5 2068.8, at 6.5 2386.0
    [InlineData(300, 2, 5626, 4501, 7501)]
    public void Radius_and_its_range_by_hand(double chord, double rise, double radius, double least, double greatest)
    {
        CircularArc arc = Arc.FromChordAndRise(Mm(chord), Mm(rise));
        Assert.Equal(radius, arc.Radius!.Value.Millimeters, 0.5);
        Assert.Equal(least, arc.LeastRadius(Mm(0.5))!.Value.Millimeters, 0.5);
        Assert.Equal(greatest, arc.GreatestRadius(Mm(0.5))!.Value.Millimeters, 0.5);
    }

    [Theory]
    [InlineData(1506, 75, 3818, 1516)] // the demo van's ceiling in front: 1506²/600 + 37.5 = 3817.6; arc 1515.9
    [InlineData(3400, 25, 57800, 3400.5)] // its bow along: 3400²/200 + 12.5 = 57,812.5
    public void The_demo_vans_curves(double chord, double rise, double radius, double arcLength)
    {
        CircularArc arc = Arc.FromChordAndRise(Mm(chord), Mm(rise));
        Assert.InRange(arc.Radius!.Value.Millimeters, radius - 20, radius + 20); // as the demo van rounds it
        Assert.Equal(arcLength, arc.ArcLength.Millimeters, 0.6);
    }

    [Fact]
    public void A_half_circle_and_past_it()
    {
        // Half: c = 2 R, s = R, half-angle 90°, length pi R. Past it: R 1000 and s 1500, c = 2 sqrt(1500 · 500) = 1732.051, half-angle 120°.
        CircularArc half = Arc.FromChordAndRise(Mm(2000), Mm(1000));
        Assert.Equal(90, half.HalfAngle.Degrees, 1e-9);
        Assert.Equal(Math.PI * 1000, half.ArcLength.Millimeters, 1e-5);
        Assert.False(half.IsPastHalfCircle);
        CircularArc past = Arc.FromRiseAndRadius(Mm(1500), Mm(1000));
        Assert.Equal(1732.050808, past.Chord.Millimeters, 1e-6);
        Assert.Equal(120, past.HalfAngle.Degrees, 1e-9);
        Assert.True(past.IsPastHalfCircle);

        // The radius of a longer arc grows with the rise, so half a millimetre less is the tighter circle there.
        Assert.True(past.LeastRadius(Mm(0.5))!.Value.Millimeters < 1000);
        Assert.True(past.GreatestRadius(Mm(0.5))!.Value.Millimeters > 1000);
        Assert.Equal(1000, half.LeastRadius(Mm(0.5))!.Value.Millimeters, 1e-6); // none is tighter than the half circle
    }

    [Fact]
    public void Flat_has_no_radius_and_no_curvature()
    {
        CircularArc flat = Arc.FromChordAndRise(Mm(300), Mm(0));
        Assert.Null(flat.Radius);
        Assert.Equal(0, flat.Curvature.Value);
        Assert.Equal(300, flat.ArcLength.Millimeters);
        Assert.Null(flat.GreatestRadius(Mm(0.5)));
        Assert.Null(flat.StraightedgeFor(Mm(0.5), 0.1));
        Assert.All(flat.Figures(), figure => Assert.False(double.IsNaN(figure.Value) || double.IsInfinity(figure.Value)));
    }

    [Property]
    public void A_bulge_is_a_hollow_with_the_signs_turned(uint chord, uint rise)
    {
        (Length c, Length s) = Measured(chord, rise);
        CircularArc hollow = Arc.FromChordAndRise(c, s), bulge = Arc.FromChordAndRise(c, Mm(-s.Millimeters));
        Assert.Equal(hollow.Radius!.Value.Millimeters, -bulge.Radius!.Value.Millimeters);
        Assert.Equal(hollow.HalfAngle.Radians, -bulge.HalfAngle.Radians);
        Assert.Equal(hollow.ArcLength, bulge.ArcLength);
        Assert.Equal(hollow.LeastRadius(Mm(0.5))!.Value.Millimeters, -bulge.LeastRadius(Mm(0.5))!.Value.Millimeters);
    }

    [Property]
    public void Twice_the_chord_and_rise_is_twice_the_circle(uint chord, uint rise)
    {
        (Length c, Length s) = Measured(chord, rise);
        CircularArc one = Arc.FromChordAndRise(c, s), two = Arc.FromChordAndRise(Mm(2 * c.Millimeters), Mm(2 * s.Millimeters));
        Close(2 * one.Radius!.Value.Millimeters, two.Radius!.Value.Millimeters);
        Close(2 * one.ArcLength.Millimeters, two.ArcLength.Millimeters);
        Close(one.HalfAngle.Radians, two.HalfAngle.Radians);
    }

    [Property]
    public void Inches_and_millimetres_give_the_same_arc(ushort chord, ushort rise)
    {
        int c = chord + 64, s = 1 + (rise % c);
        CircularArc inches = Arc.FromChordAndRise(new Length(c / 64.0, LengthUnit.Inch), new Length(s / 64.0, LengthUnit.Inch));
        CircularArc millimetres = Arc.FromChordAndRise(Mm(25.4 * c / 64), Mm(25.4 * s / 64));
        Assert.Equal(millimetres, inches);
        Assert.Equal(millimetres.Radius!.Value.Millimeters, inches.Radius!.Value.Millimeters);
    }

    [Property]
    public void A_greater_rise_is_a_tighter_circle_up_to_the_half_circle(uint chord, uint rise)
    {
        (Length c, Length s) = Measured(chord, rise);
        double more = Math.Min(s.Millimeters + 0.001, c.Millimeters / 2);
        if (more > s.Millimeters)
        {
            CircularArc shallow = Arc.FromChordAndRise(c, s), deep = Arc.FromChordAndRise(c, Mm(more));
            Assert.True(shallow.Radius!.Value.Millimeters >= deep.Radius!.Value.Millimeters);
            Assert.True(shallow.ArcLength.Millimeters <= deep.ArcLength.Millimeters);
            Assert.True(shallow.HalfAngle.Radians < deep.HalfAngle.Radians);
        }
    }

    [Property]
    public void Every_way_back_leads_to_the_same_arc(uint chord, uint rise)
    {
        (Length c, Length s) = Measured(chord, rise);
        CircularArc arc = Arc.FromChordAndRise(c, s);
        Length radius = arc.Radius!.Value;
        Assert.Equal(s.Millimeters, Arc.FromChordAndRadius(c, radius, arc.IsPastHalfCircle).Rise.Millimeters, 1e-4 + (1e-6 * radius.Millimeters / c.Millimeters));
        Assert.Equal(c.Millimeters, Arc.FromRiseAndRadius(s, radius).Chord.Millimeters, 1e-4 * (1 + (c.Millimeters / s.Millimeters * 1e-3)));
        Close(s.Millimeters, Arc.FromChordAndHalfAngle(c, arc.HalfAngle).Rise.Millimeters, 1e-6);

        // Tape and straightedge: a nanometre of arc length counts for much of a shallow rise, by the derivative 16 s/(3 c).
        double slope = 16 * s.Millimeters / (3 * c.Millimeters);
        Assert.Equal(s.Millimeters, Arc.FromChordAndArcLength(c, arc.ArcLength).Rise.Millimeters, 1e-5 + (1e-5 / slope));
        Assert.Equal(c.Millimeters, Arc.FromRadiusAndArcLength(radius, arc.ArcLength).Chord.Millimeters, 1e-5);
    }

    [Property]
    public void The_arc_is_longer_than_its_chord_and_shorter_than_its_two_straight_halves_for_shallow_ones(uint chord, uint rise)
    {
        (Length c, Length s) = Measured(chord, rise);
        CircularArc arc = Arc.FromChordAndRise(c, s);
        double halves = 2 * Math.Sqrt((c.Millimeters * c.Millimeters / 4) + (s.Millimeters * s.Millimeters));
        Assert.True(arc.ArcLength.Millimeters >= c.Millimeters - 1e-6);
        Assert.True(arc.ArcLength.Millimeters >= halves - 1e-6); // the chords of the halves are shorter than the arcs of the halves
        Assert.True(arc.ArcLength.Millimeters <= Math.PI / 2 * halves + 1e-6 || arc.IsPastHalfCircle);
    }

    [Property]
    public void The_straightedge_named_holds_the_radius_and_a_hair_shorter_does_not(uint radiusSeed)
    {
        double radius = 500 + (radiusSeed % 20_000_000 / 1000.0);
        CircularArc any = Arc.FromChordAndRadius(Mm(radius / 10), Mm(radius));
        if (any.StraightedgeFor(Mm(0.5), 0.1) is { } straightedge)
        {
            CircularArc there = Arc.FromChordAndRadius(straightedge, any.Radius!.Value);
            Assert.True(there.GreatestRadius(Mm(0.5))!.Value.Millimeters <= 1.1 * there.Radius!.Value.Millimeters + 1e-3);
            Assert.True(there.LeastRadius(Mm(0.5))!.Value.Millimeters >= 0.9 * there.Radius.Value.Millimeters - 1e-3);
            CircularArc shorter = Arc.FromChordAndRadius(Mm(straightedge.Millimeters - 0.1), any.Radius.Value);
            Assert.True(shorter.GreatestRadius(Mm(0.5))!.Value.Millimeters > 1.1 * shorter.Radius!.Value.Millimeters);
        }
    }

    [Fact]
    public void Each_check_names_what_is_wrong()
    {
        Assert.Equal("chord", Assert.Single(Arc.CheckFromChordAndRadius(Mm(2001), Mm(1000))).Parameter); // more than twice the radius
        Assert.Empty(Arc.CheckFromChordAndRadius(Mm(2000), Mm(1000)));
        Assert.Equal("rise", Assert.Single(Arc.CheckFromRiseAndRadius(Mm(-10), Mm(1000))).Parameter); // of the other sign
        Assert.Equal("rise", Assert.Single(Arc.CheckFromRiseAndRadius(Mm(2000), Mm(1000))).Parameter);
        Assert.Equal("arcLength", Assert.Single(Arc.CheckFromChordAndArcLength(Mm(1000), Mm(999))).Parameter);
        Assert.Equal("arcLength", Assert.Single(Arc.CheckFromRadiusAndArcLength(Mm(100), Mm(630))).Parameter);
        Assert.Equal("halfAngle", Assert.Single(Arc.CheckFromChordAndHalfAngle(Mm(100), Angle.FromDegrees(180))).Parameter);
        Assert.Equal("radius", Assert.Single(Arc.CheckFromChordAndRadius(Mm(100), Mm(0)), problem => problem.Parameter == "radius").Parameter);
    }

    [Fact]
    public void Nothing_is_allocated_also_where_a_finding_is_not_read()
    {
        Length[] chords = new Length[1024], rises = new Length[1024];
        for (int i = 0; i < 1024; i++)
        {
            chords[i] = Mm(200 + i);
            rises[i] = Mm(0.6 + (i / 400.0)); // most have a finding
        }

        double Sum()
        {
            double sum = 0;
            for (int i = 0; i < 1024; i++)
            {
                CircularArc arc = Arc.FromChordAndRise(chords[i], rises[i]);
                sum += arc.Radius!.Value.Value + arc.ArcLength.Value + (arc.HasProblem ? 1 : 0);
            }

            return sum;
        }

        double expected = Sum();
        long before = GC.GetAllocatedBytesForCurrentThread();
        double again = Sum();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.Equal(expected, again);
    }

    /// <summary>Chord 50 to 3,050 mm, rise 1 µm to twice the chord, both whole micrometres; half of the rises under a tenth of the chord.</summary>
    private static (Length Chord, Length Rise) Measured(uint chord, uint rise)
    {
        double c = 50 + (chord % 3_000_000 / 1000.0);
        double most = rise % 2 == 0 ? c / 10 : 2 * c;
        double s = Math.Max(0.001, Math.Round(most * (rise % 99_991 / 99_991.0) * 1000) / 1000);
        return (Mm(c), Mm(s));
    }

    private static void Close(double expected, double actual, double relative = 1e-9) => Assert.Equal(expected, actual, 1e-6 + (relative * Math.Abs(expected)));
}
