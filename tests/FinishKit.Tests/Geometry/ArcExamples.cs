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
}
