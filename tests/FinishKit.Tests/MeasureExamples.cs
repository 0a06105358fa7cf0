using System.Collections.Generic;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests;

/// <summary>The examples in the documentation of <see cref="Measure"/>: each region stands there word for word.</summary>
public sealed class MeasureExamples
{
    [Fact]
    public void MmExample()
    {
        #region example: Measure.Mm
        Length board = Mm(12.7);
        #endregion
        Assert.Equal(12.7, board.Millimeters);
    }

    [Fact]
    public void InchExample()
    {
        #region example: Measure.Inch
        Length board = Inch(0.5);                           // 12.7 mm
        #endregion
        Assert.Equal(12.7, Door.Millimetres(board));
    }

    [Fact]
    public void InchTextExample()
    {
        #region example: Measure.Inch.text
        Length ply = Inch("5/8");                           // 15.875 mm
        Length brad = Inch("1-1/4");                        // 31.75 mm
        #endregion
        Assert.Equal(15.875, Door.Millimetres(ply));
        Assert.Equal(31.75, Door.Millimetres(brad));
    }

    [Fact]
    public void FeetExample()
    {
        #region example: Measure.Feet
        Length height = Feet(5, 8.5);                       // 68.5 in, 1739.9 mm
        Length under = Feet(-2, -4);                        // -28 in
        #endregion
        Assert.Equal(68.5, height.Inches);
        Assert.Equal(1739.9, Door.Millimetres(height));
        Assert.Equal(-28, under.Inches);
    }

    [Fact]
    public void ParseExample()
    {
        #region example: Measure.ParseLength
        Length ply = ParseLength("3/4 in");                       // 19.05 mm
        Length gap = ParseLength("-0.5 mm");                      // -0.5 mm
        Length girth = ParseLength("5' 8-1/2\"");                 // 68.5 in, 1739.9 mm
        Length strip = ParseLength("2'-4\"");                     // 28 in: the hyphen is no minus
        #endregion
        Assert.Equal(19.05, Door.Millimetres(ply));
        Assert.Equal(-0.5, gap.Millimeters);
        Assert.Equal(68.5, girth.Inches);
        Assert.Equal(1739.9, Door.Millimetres(girth));
        Assert.Equal(28, strip.Inches);
    }

    [Fact]
    public void TryParseExample()
    {
        #region example: Measure.TryParseLength
        bool isRead = TryParseLength("1-1/4 in", out Length thick); // true, 31.75 mm
        bool isGuessed = TryParseLength("1,5 mm", out _);         // false: 1.5 or 15?
        #endregion
        Assert.True(isRead);
        Assert.Equal(31.75, Door.Millimetres(thick));
        Assert.False(isGuessed);
    }

    [Fact]
    public void CheckExample()
    {
        #region example: Measure.CheckLength
        IReadOnlyList<InputProblem> problems = CheckLength("19");
        string why = problems[0].Message; // text is “19”, a number without a unit; allowed is a unit behind every number, mm or in: 19 mm, 3/4 in.
        #endregion
        Assert.Single(problems);
        Assert.Equal("text is “19”, a number without a unit; allowed is a unit behind every number, mm or in: 19 mm, 3/4 in.", why);
    }

    [Fact]
    public void FormatMillimetresExample()
    {
        #region example: Measure.FormatMillimetres
        string ply = FormatMillimetres(Inch("3/4"));        // 19.1 mm
        string exact = FormatMillimetres(Inch("3/4"), 2);   // 19.05 mm
        #endregion
        Assert.Equal("19.1 mm", ply);
        Assert.Equal("19.05 mm", exact);
    }

    [Fact]
    public void FormatDecimalInchesExample()
    {
        #region example: Measure.FormatDecimalInches
        string ply = FormatDecimalInches(Mm(18));           // 0.709 in
        #endregion
        Assert.Equal("0.709 in", ply);
    }

    [Fact]
    public void FormatInchesExample()
    {
        #region example: Measure.FormatInches
        string board = FormatInches(Mm(400));               // 15-3/4 in
        string rough = FormatInches(Mm(400), 2);            // 15-1/2 in
        #endregion
        Assert.Equal("15-3/4 in", board);
        Assert.Equal("15-1/2 in", rough);
    }

    [Fact]
    public void FormatFeetAndInchesExample()
    {
        #region example: Measure.FormatFeetAndInches
        string girth = FormatFeetAndInches(Mm(1740));       // 5' 8-1/2"
        string full = FormatFeetAndInches(Inch(47.99));     // 4' 0", never 3' 12"
        #endregion
        Assert.Equal("5' 8-1/2\"", girth);
        Assert.Equal("4' 0\"", full);
    }
}
