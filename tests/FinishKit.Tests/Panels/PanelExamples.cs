using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Panels;

/// <summary>The examples in the documentation: each region stands there word for word.</summary>
public sealed class PanelExamples
{
    [Fact]
    public void MinimumRadius()
    {
        #region example: PanelBend.MinimumRadius
        BentSheet stiff = new(Mm(6.4), Pressure.FromMegapascals(12737), Pressure.FromMegapascals(50.9)) { Grain = BendGrain.AroundTheCurve };
        Length least = PanelBend.MinimumRadius(stiff).Minimum; // 1601.509 mm: twice the 800.754 at which one in twenty breaks
        #endregion
        Assert.Equal(1601.509, least.Millimeters, 0.0005); // 2 · 12737 · 6.4/(2 · 50.9)
        Assert.Equal(800.754, PanelBend.MinimumRadius(stiff with { Factor = 1 }).Minimum.Millimeters, 0.0005);
    }

    [Fact]
    public void Judge()
    {
        #region example: PanelBend.Judge
        BentSheet easy = new(Mm(6.4), Pressure.FromMegapascals(4763), Pressure.FromMegapascals(29)) { Grain = BendGrain.AlongTheAxis };
        BendVerdict band = PanelBend.Judge(new BendCase(easy, Mm(2216)) { Rows = BentSheet.EqualRows(Mm(352), 3) });
        Length? peak = band.PeakRadius;                     // 1475.2 mm: (2216 - 3.2)/1.5
        bool follows = band.Follows;                        // true: 1051.145 mm are allowed
        #endregion
        Assert.Equal(1475.2, peak!.Value.Millimeters, 1e-6);
        Assert.True(follows);
        Assert.Equal(1051.145, band.MinimumRadius.Millimeters, 0.0005); // 4763 · 6.4/29
    }

    [Fact]
    public void OnArc()
    {
        #region example: HoldDown.OnArc
        BentSheet sheet = new(Mm(6), Pressure.FromMegapascals(5000), Pressure.FromMegapascals(30));
        HoldDownResult band = HoldDown.OnArc(new HoldDownCase(sheet, Mm(2003), BentSheet.EqualRows(Mm(400), 3), Mm(1000)));
        Length? peak = band.PeakRadius;                     // 1333.333 mm: 2000 at the middle over 1.5
        Force pull = band.GreatestPull;                     // 675 N over 1 m: 3 E I/(R a) = 3 · 90000/(2000 · 200) N/mm
        Length off = band.StandOff;                         // 0.741 mm into the room: 200²/(27 · 2000)
        #endregion
        Assert.Equal(1333.333333, peak!.Value.Millimeters, 1e-6);
        Assert.Equal(675, pull.Newtons, 1e-9);
        Assert.Equal(0.740741, off.Millimeters, 1e-6);
    }

    [Fact]
    public void LeastEqualRows()
    {
        #region example: HoldDown.LeastEqualRows
        BentSheet stiff = new(Mm(6.4), Pressure.FromMegapascals(12737), Pressure.FromMegapascals(50.9));
        int? rows = HoldDown.LeastEqualRows(stiff, Mm(2216)).Rows; // 4: (2216 - 3.2)/1.2 = 1844 passes 1602, 1475 with three does not
        #endregion
        Assert.Equal(4, rows);
        Assert.Equal(1844, HoldDown.LeastEqualRows(stiff, Mm(2216)).Tried[1].PeakRadius!.Value.Millimeters, 1e-6);
    }
}
