using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Beams;

/// <summary>The examples in the documentation: each region stands there word for word.</summary>
public sealed class BeamExamples
{
    [Fact]
    public void LargestBay_of_a_board()
    {
        #region example: BoardSpan.LargestBay
        BeamSection knotty = new(Mm(89), Mm(12.7), Pressure.FromMegapascals(8900)) { BendingStrength = Pressure.FromMegapascals(65) };
        BayLimit bay = BoardSpan.LargestBay(knotty);
        Length strips = bay.LargestBay;                     // 475.4 mm, by deflection
        #endregion

        // I = 89 · 12.7³/12 = 15,192; E = 7120; 0.015097 · 200 L³ = 3 · 7120 · 15,192 gives L³ = 1.07471e8, L = 475.4
        Assert.Equal(475.4, strips.Millimeters, 0.05);
        Assert.Equal(BayGovernor.Deflection, bay.Governs);
    }

    [Fact]
    public void LargestBay_of_a_question()
    {
        #region example: BoardSpan.LargestBay(BayQuestion)
        BeamSection strip = new(Mm(40), Mm(14.8), Pressure.FromMegapascals(10316)) { BendingStrength = Pressure.FromMegapascals(41.3), Grade = SectionGrade.Plywood };
        BayLimit bay = BoardSpan.LargestBay(new BayQuestion(strip) { Spans = 1 });
        Length between = bay.LargestBay;                    // 422.3 mm between rails
        BayGovernor why = bay.Governs;                      // Deflection
        #endregion

        // I = 40 · 14.8³/12 = 10,806; L³/(48 · E I) · 200 = L/150: L = sqrt(48 · 10316 · 10,806/(200 · 150)) = 422.3; for 3 mm 431.3
        Assert.Equal(422.3, between.Millimeters, 0.5);
        Assert.Equal(BayGovernor.Deflection, why);
    }

    [Fact]
    public void UnderLoads()
    {
        #region example: ContinuousBeam.UnderLoads
        Beam board = new(new BeamSection(Mm(100), Mm(12), Pressure.FromMegapascals(8900)) { Grade = SectionGrade.ClearBoard }, [Mm(400), Mm(400)]);
        BeamResponse hung = ContinuousBeam.UnderLoads(board, [BeamLoad.Uniform(ForcePerLength.FromNewtonsPerMillimeter(0.005272))]);
        Length sag = hung.Deflection;                       // 0.0057 mm under its own weight
        Force middle = hung.Reactions[1];                   // 2.636 N: 5/8 of the load of both spans
        #endregion
        Assert.Equal(0.0057, sag.Millimeters, 0.00005); // check-values.md, section 8 (derived)
        Assert.Equal(2.636, middle.Newtons, 1e-9); // 1.25 w L = 1.25 · 0.005272 · 400
    }

    [Fact]
    public void UnderPointLoad()
    {
        #region example: ContinuousBeam.UnderPointLoad
        Beam board = new(new BeamSection(Mm(89), Mm(12.7), Pressure.FromMegapascals(8900)), [Mm(475), Mm(475)]);
        BeamExtremes pushed = ContinuousBeam.UnderPointLoad(board, Force.FromNewtons(200));
        Length give = pushed.Deflection;                    // 2.992 mm
        Length worst = pushed.DeflectionLoad!.Value;        // 222.6 mm from the first support: 0.4687 of the span
        #endregion
        Assert.Equal(0.015097 * 200 * 475 * 475 * 475 / (7120 * 15192.4), give.Millimeters, 0.0005);
        Assert.Equal(0.4687 * 475, worst.Millimeters, 0.05);
    }

    [Fact]
    public void UnderUniformLoad()
    {
        #region example: ContinuousBeam.UnderUniformLoad
        Beam board = new(new BeamSection(Mm(100), Mm(10), Pressure.FromMegapascals(10000)) { Grade = SectionGrade.ClearBoard }, [Mm(500), Mm(500), Mm(500)]);
        BeamExtremes leaned = ContinuousBeam.UnderUniformLoad(board, ForcePerLength.FromNewtonsPerMillimeter(0.1));
        Length give = leaned.Deflection;                    // 0.7438 mm with the outer spans loaded
        #endregion
        Assert.Equal(0.009917 * 0.1 * 500 * 500 * 500 * 500 / (10000 * 8333.333), give.Millimeters, 0.0001);
        Assert.Equal([0, 2], leaned.DeflectionSpans);
    }
}
