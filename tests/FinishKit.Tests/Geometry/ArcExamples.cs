using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Geometry;

/// <summary>The examples in the documentation: each region stands there word for word.</summary>
public sealed class ArcExamples
{
    [Fact]
    public void FromChordAndRise()
    {
        #region example: Arc.FromChordAndRise
        CircularArc band = Arc.FromChordAndRise(Mm(300), Mm(2));
        Length? radius = band.Radius;                       // 5626 mm
        Length? least = band.LeastRadius(Mm(0.5));          // 4501.25 mm: half a millimetre more rise
        Length? most = band.GreatestRadius(Mm(0.5));        // 7500.75 mm: half a millimetre less
        Length edge = band.StraightedgeFor(Mm(0.5), 0.1)!.Value; // 497.206 mm holds the radius within 10%
        #endregion
        Assert.Equal(5626, radius!.Value.Millimeters);
        Assert.Equal(4501.25, least!.Value.Millimeters);
        Assert.Equal(7500.75, most!.Value.Millimeters);
        Assert.Equal(497.206, edge.Millimeters, 0.0005);
    }

    [Fact]
    public void FromChordAndRadius()
    {
        #region example: Arc.FromChordAndRadius
        CircularArc bow = Arc.FromChordAndRadius(Mm(1000), Mm(5012.5));
        Length gap = bow.Rise;                              // 25 mm
        #endregion
        Assert.Equal(25, gap.Millimeters, 1e-6); // 1000²/(8 · 25) + 25/2 = 5012.5
    }

    [Fact]
    public void FromRiseAndRadius()
    {
        #region example: Arc.FromRiseAndRadius
        CircularArc bow = Arc.FromRiseAndRadius(Mm(50), Mm(3625));
        Length straightedge = bow.Chord;                    // 1200 mm
        #endregion
        Assert.Equal(1200, straightedge.Millimeters, 1e-6); // 2 sqrt(50 · 7200) = 1200
    }

    [Fact]
    public void FromChordAndHalfAngle()
    {
        #region example: Arc.FromChordAndHalfAngle
        CircularArc half = Arc.FromChordAndHalfAngle(Mm(2000), Angle.FromDegrees(90));
        Length? radius = half.Radius;                       // 1000 mm: a half circle
        #endregion
        Assert.Equal(1000, radius!.Value.Millimeters, 1e-6);
    }

    [Fact]
    public void FromChordAndArcLength()
    {
        #region example: Arc.FromChordAndArcLength
        CircularArc bow = Arc.FromChordAndArcLength(Mm(2000), Mm(3141.592654));
        Length gap = bow.Rise;                              // 1000 mm: a half circle
        #endregion
        Assert.Equal(1000, gap.Millimeters, 1e-5); // half the circumference of radius 1000, to ten digits
    }

    [Fact]
    public void FromRadiusAndArcLength()
    {
        #region example: Arc.FromRadiusAndArcLength
        CircularArc band = Arc.FromRadiusAndArcLength(Mm(2216), Mm(352));
        Length chord = band.Chord;                          // 351.63 mm
        #endregion
        Assert.Equal(351.63005, chord.Millimeters, 5e-6); // 2 · 2216 · sin(352/4432), by a calculator
    }
}
