using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Slats;

/// <summary>The examples in the documentation: each region stands there word for word. Figures by hand beside each.</summary>
public sealed class SlatExamples
{
    [Fact]
    public void Spread_over_one_width()
    {
        #region example: SlatSpread.Spread
        SlatChoice ceiling = SlatSpread.Spread(Mm(1500), Mm(40), Mm(6), Mm(10));
        int slats = ceiling.Recommended!.Count;             // 31
        Length gap = ceiling.Recommended.Gaps[0];           // 8.667 mm: (1500 - 31 x 40)/30
        double cover = ceiling.Recommended.Coverages[0];    // 0.827
        #endregion
        Assert.Equal(31, slats); // 32: 220/31 = 7.097; 31: 260/30 = 8.667; 8 is the middle, so 31 is nearer by 0.667 to 0.903
        Assert.Equal(8.666667, gap.Millimeters);
        Assert.Equal(1240.0 / 1500, cover, 12);
    }

    [Fact]
    public void Spread_over_a_face_that_tapers()
    {
        #region example: SlatSpread.Spread run
        SlatRun ceiling = new(Mm(1516), Mm(40)) { Stations = [Mm(1448.5)] }; // front and rear, gaps of 6 to 10 mm
        SlatChoice choice = SlatSpread.Spread(ceiling);
        int slats = choice.Recommended!.Count;              // 31: 9.2 mm in front, 6.95 mm at the rear
        SlatSetOut rear = choice.Recommended.SetOut(1);
        Length third = rear.Marks[2].Mark;                  // 94 mm: 2 x 46.95 = 93.9, rounded once
        #endregion
        Assert.Equal(31, slats);
        Assert.Equal([9.2, 6.95], [choice.Recommended.Gaps[0].Millimeters, choice.Recommended.Gaps[1].Millimeters]); // 276/30, 208.5/30
        Assert.Equal(94, third.Millimeters);
    }

    /// <summary>asin(40/3000) + asin(8/3000) = 0.01333373 + 0.00266667 = 0.01600040 rad; 2 x 12 x sin of it = 0.3839932; 400/(1500 + 1499.8667) = 0.1333393.</summary>
    [Fact]
    public void Fit()
    {
        #region example: SlatCurve.Fit
        SlatFit slat = SlatCurve.Fit(Mm(1500), Mm(40), Mm(12), Mm(8)); // hollow to the room
        Length face = slat.GapAtFace;                       // 7.616 mm
        Length hollow = slat.Hollow;                        // 0.133 mm under the middle
        Angle bevel = slat.Bevel;                           // 0.917 degrees on each edge keep 8 mm at the face
        #endregion
        Assert.Equal(7.6160068, face.Millimeters, 1e-6);
        Assert.Equal(0.1333393, hollow.Millimeters, 1e-6);
        Assert.Equal(0.01600040, bevel.Radians, 1e-7);
    }

    [Fact]
    public void WidestSlat()
    {
        #region example: SlatCurve.WidestSlat
        Length? widest = SlatCurve.WidestSlat(Mm(3625), Mm(0.5)); // 120.412 mm
        #endregion
        Assert.Equal(120.411793, widest!.Value.Millimeters, 1e-3); // 2 sqrt(0.5 x 7249.5) = 2 sqrt(3624.75) = 120.4118
    }
}
