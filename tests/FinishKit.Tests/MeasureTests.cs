using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests;

/// <summary>Reading and writing lengths, each row worked by hand (1 in = 25.4 mm exactly, 1 ft = 12 in).</summary>
public sealed class MeasureTests
{
    /// <summary>Text, its own unit (mm or in), the number in that unit, and the millimetres.</summary>
    public static TheoryData<string, LengthUnit, double, double> Readable { get; } = new()
    {
        { "19 mm", LengthUnit.Millimeter, 19, 19 },
        { "19mm", LengthUnit.Millimeter, 19, 19 },
        { "19 MM", LengthUnit.Millimeter, 19, 19 },
        { "0 mm", LengthUnit.Millimeter, 0, 0 },
        { "+0.5 mm", LengthUnit.Millimeter, 0.5, 0.5 },
        { "-0.5 mm", LengthUnit.Millimeter, -0.5, -0.5 },
        { "\u22120.5 mm", LengthUnit.Millimeter, -0.5, -0.5 },
        { ".5 mm", LengthUnit.Millimeter, 0.5, 0.5 },
        { "  12.7 mm \r\n", LengthUnit.Millimeter, 12.7, 12.7 },
        { "12.7\u00A0mm", LengthUnit.Millimeter, 12.7, 12.7 },
        { "12.7\u202Fmm", LengthUnit.Millimeter, 12.7, 12.7 },
        { "12.7\u2009mm", LengthUnit.Millimeter, 12.7, 12.7 },
        { "12.7\tmm", LengthUnit.Millimeter, 12.7, 12.7 },
        { "0.000001 mm", LengthUnit.Millimeter, 1e-6, 1e-6 },
        { "0.0000014 mm", LengthUnit.Millimeter, 1e-6, 1e-6 }, // to the 1 nm grid
        { "19.0500000000000000000000000001 mm", LengthUnit.Millimeter, 19.05, 19.05 },
        { "1000000 mm", LengthUnit.Millimeter, 1000000, 1000000 },
        { "000019 mm", LengthUnit.Millimeter, 19, 19 },
        { "1.9 cm", LengthUnit.Millimeter, 19, 19 },
        { "0.07 cm", LengthUnit.Millimeter, 0.7, 0.7 },
        { "0.5 m", LengthUnit.Millimeter, 500, 500 },
        { "1.005 m", LengthUnit.Millimeter, 1005, 1005 },
        { "5 m", LengthUnit.Millimeter, 5000, 5000 },
        { "3/4 in", LengthUnit.Inch, 0.75, 19.05 },
        { "3/4in", LengthUnit.Inch, 0.75, 19.05 },
        { "3/4\"", LengthUnit.Inch, 0.75, 19.05 },
        { "3\u20444 in", LengthUnit.Inch, 0.75, 19.05 }, // fraction slash
        { "3/4''", LengthUnit.Inch, 0.75, 19.05 },
        { "3/4\u2033", LengthUnit.Inch, 0.75, 19.05 },
        { "3/4\u2032\u2032", LengthUnit.Inch, 0.75, 19.05 },
        { "3/4\u201D", LengthUnit.Inch, 0.75, 19.05 },
        { "3/4 In", LengthUnit.Inch, 0.75, 19.05 },
        { "3/4 in.", LengthUnit.Inch, 0.75, 19.05 },
        { "3/4 inch", LengthUnit.Inch, 0.75, 19.05 },
        { "3/4 INCHES", LengthUnit.Inch, 0.75, 19.05 },
        { "0.75 in", LengthUnit.Inch, 0.75, 19.05 },
        { ".75\"", LengthUnit.Inch, 0.75, 19.05 },
        { "1-1/4 in", LengthUnit.Inch, 1.25, 31.75 },
        { "1\u20101/4 in", LengthUnit.Inch, 1.25, 31.75 }, // hyphen
        { "1\u20111/4 in", LengthUnit.Inch, 1.25, 31.75 }, // no-break hyphen
        { "1 1/4\"", LengthUnit.Inch, 1.25, 31.75 },
        { "1   1/4  \"", LengthUnit.Inch, 1.25, 31.75 },
        { "-1-1/4 in", LengthUnit.Inch, -1.25, -31.75 },
        { "9/8 in", LengthUnit.Inch, 1.125, 28.575 },
        { "8/8 in", LengthUnit.Inch, 1, 25.4 },
        { "1/64 in", LengthUnit.Inch, 0.015625, 0.396875 },
        { "63/64 in", LengthUnit.Inch, 0.984375, 25.003125 }, // 25.4 - 0.396875
        { "1/1000 in", LengthUnit.Inch, 0.001, 0.0254 },
        { "1/3 in", LengthUnit.Inch, 1.0 / 3, 8.466667 }, // 8.4666666...
        { "\u00BD in", LengthUnit.Inch, 0.5, 12.7 },
        { "\u2153 in", LengthUnit.Inch, 1.0 / 3, 8.466667 },
        { "\u2154 in", LengthUnit.Inch, 2.0 / 3, 16.933333 }, // 16.9333333...
        { "\u00BC in", LengthUnit.Inch, 0.25, 6.35 },
        { "\u00BE\"", LengthUnit.Inch, 0.75, 19.05 },
        { "\u215B\"", LengthUnit.Inch, 0.125, 3.175 },
        { "\u215C\"", LengthUnit.Inch, 0.375, 9.525 },
        { "\u215D\"", LengthUnit.Inch, 0.625, 15.875 },
        { "\u215E\"", LengthUnit.Inch, 0.875, 22.225 },
        { "1\u00BD\"", LengthUnit.Inch, 1.5, 38.1 },
        { "1 \u00BD\"", LengthUnit.Inch, 1.5, 38.1 },
        { "1-\u00BD\"", LengthUnit.Inch, 1.5, 38.1 },
        { "30 in", LengthUnit.Inch, 30, 762 }, // inches alone may be 12 or more
        { "94.52706955539223 in", LengthUnit.Inch, 94.52706955539223, 2400.987567 }, // a double's own digits come back to the last; 25.4 times it is 2400.987566706962642
        { "5 ft", LengthUnit.Inch, 60, 1524 },
        { "1 foot", LengthUnit.Inch, 12, 304.8 },
        { "8 Feet", LengthUnit.Inch, 96, 2438.4 },
        { "8'", LengthUnit.Inch, 96, 2438.4 },
        { "5.5 ft", LengthUnit.Inch, 66, 1676.4 },
        { "0.1 ft", LengthUnit.Inch, 1.2, 30.48 },
        { "1/2 ft", LengthUnit.Inch, 6, 152.4 },
        { "5-1/2'", LengthUnit.Inch, 66, 1676.4 },
        { "5' 8-1/2\"", LengthUnit.Inch, 68.5, 1739.9 },
        { "5' 8 1/2\"", LengthUnit.Inch, 68.5, 1739.9 },
        { "5' 8\u00BD\"", LengthUnit.Inch, 68.5, 1739.9 },
        { "5'8\"", LengthUnit.Inch, 68, 1727.2 },
        { "5'8.5\"", LengthUnit.Inch, 68.5, 1739.9 },
        { "5'8''", LengthUnit.Inch, 68, 1727.2 },
        { "5 ' 8 \"", LengthUnit.Inch, 68, 1727.2 },
        { "5\u2032 8\u2033", LengthUnit.Inch, 68, 1727.2 },
        { "5\u2019 8\u201D", LengthUnit.Inch, 68, 1727.2 },
        { "5 ft 8 in", LengthUnit.Inch, 68, 1727.2 },
        { "5ft8in", LengthUnit.Inch, 68, 1727.2 },
        { "5 ft. 8 in.", LengthUnit.Inch, 68, 1727.2 },
        { "2 ft 4 in", LengthUnit.Inch, 28, 711.2 },
        { "2'-4\"", LengthUnit.Inch, 28, 711.2 },
        { "2' - 4\"", LengthUnit.Inch, 28, 711.2 },
        { "2 ft-4-1/2 in", LengthUnit.Inch, 28.5, 723.9 },
        { "-2' 4-1/2\"", LengthUnit.Inch, -28.5, -723.9 },
        { "0' 8\"", LengthUnit.Inch, 8, 203.2 },
        { "5' 0\"", LengthUnit.Inch, 60, 1524 },
        { "5' 1/2\"", LengthUnit.Inch, 60.5, 1536.7 },
        { "5' 11-63/64\"", LengthUnit.Inch, 71.984375, 1828.403125 }, // 72 in = 1828.8, less 0.396875
    };

    /// <summary>Text, and the words the message must have: what was read, and what is allowed.</summary>
    public static TheoryData<string, string, string> Unreadable { get; } = new()
    {
        { "", "empty", "19 mm" },
        { "   ", "empty", "19 mm" },
        { "19", "a number without a unit", "mm or in" },
        { "3/4", "a number without a unit", "mm or in" },
        { "5' 8", "a number without a unit", "mm or in" },
        { "mm", "no number at “mm”", "19 mm" },
        { "-", "no number at the end", "19 mm" },
        { "--5 mm", "no number at “-5 mm”", "19 mm" },
        { "- 5 mm", "a space between sign and number", "-0.5 mm" },
        { "1,5 mm", "with a comma", "1.5 mm" },
        { "1.234,5 mm", "with a comma", "1.5 mm" },
        { "1,234 mm", "with a comma", "1500 mm" },
        { "1 234 mm", "two numbers in a row", "1500 mm" },
        { "1\u00A0234 mm", "two numbers in a row", "1500 mm" },
        { "1'234 mm", "something other than inches", "5' 8-1/2\"" },
        { "1.234.5 mm", "more than one dot", "1.5 mm" },
        { "5. mm", "a dot without decimals", "0.75 in" },
        { ". mm", "a dot without decimals", "0.75 in" },
        { "3/0 in", "a fraction over “0”", "from 1 to 1000" },
        { "3/1001 in", "a fraction over “1001”", "from 1 to 1000" },
        { "3/ in", "no number below the slash", "from 1 to 1000" },
        { "3 / 4 in", "with “/ 4 in” where a unit should stand", "3/4 in" },
        { "/4 in", "no number at “/4 in”", "3/4 in" },
        { "5/4/3", "two slashes", "3/4 in" },
        { "1.5/2 in", "a fraction of decimals", "3/4 in" },
        { "1/2.5 in", "with “.5 in” where a unit should stand", "3/4 in" },
        { "1.5 1/4 in", "two numbers in a row", "1 1/4 in" },
        { "1/2 1/4 in", "two numbers in a row", "1 1/4 in" },
        { "\u00BD\u00BD in", "two numbers in a row", "1 1/4 in" },
        { "1 9/8 in", "a fraction of 1 or more behind a whole number", "9/8 in" },
        { "1-8/8\"", "a fraction of 1 or more behind a whole number", "less than 1" },
        { "5' 9/8\"", "a fraction of 1 or more behind a whole number", "less than 1" },
        { "5' 8-9/8\"", "a fraction of 1 or more behind a whole number", "less than 1" },
        { "5' 14\"", "12 inches or more behind feet", "less than 12 inches" },
        { "5' 12\"", "12 inches or more behind feet", "less than 12 inches" },
        { "5' 12.5\"", "12 inches or more behind feet", "less than 12 inches" },
        { "5.5' 3\"", "not a whole number", "5.5 ft" },
        { "1/2 ft 3 in", "not a whole number", "5.5 ft" },
        { "2' -4\"", "a hyphen with a space on one side only", "2'-4\"" },
        { "2'- 4\"", "a hyphen with a space on one side only", "2'-4\"" },
        { "2'\u20134\"", "no number at “\u20134\"”", "5' 8-1/2\"" },
        { "5 ft 8 mm", "something other than inches", "5' 8-1/2\"" },
        { "5 ft 8 ft", "something other than inches", "5' 8-1/2\"" },
        { "5' 8\" 2\"", "with “2\"” behind the inches", "5' 8-1/2\"" },
        { "8\" 5'", "with “5'” behind the unit", "feet and then inches" },
        { "1 m 20 cm", "with “20 cm” behind the unit", "one number with its unit" },
        { "5 mm - 3 mm", "with “- 3 mm” behind the unit", "one number with its unit" },
        { "3/4 inch.", "with “.” behind the unit", "one number with its unit" },
        { "5'\u2032", "no number at “\u2032”", "5' 8-1/2\"" }, // only two equal marks stand for inches
        { "5 mm.", "with “.” behind the unit", "one number with its unit" },
        { "3-5 mm", "a dash behind a number", "1-1/4 in" },
        { "1 - 1/4 in", "a dash behind a number", "1-1/4 in" },
        { "1\u20131/4 in", "a dash behind a number", "1-1/4 in" },
        { "3/4-1/2 in", "a dash behind a number", "1-1/4 in" },
        { "3/4 mm", "a fraction of a metric unit", "1.5 mm" },
        { "\u00BD m", "a fraction of a metric unit", "1.5 mm" },
        { "1 M", "with the unit M,", "small letters" },
        { "5 Mm", "with the unit Mm,", "small letters" },
        { "5 km", "with “km” where a unit should stand", "mm, cm, m, in" },
        { "5 \u00B5m", "with “\u00B5m” where a unit should stand", "mm, cm, m, in" },
        { "5 mil", "with “mil” where a unit should stand", "mm, cm, m, in" },
        { "5 \u0130N", "with “\u0130N” where a unit should stand", "mm, cm, m, in" },
        { "5 \u0131n", "with “\u0131n” where a unit should stand", "mm, cm, m, in" },
        { "1e3 mm", "an exponent", "written out" },
        { "1E-3 mm", "an exponent", "written out" },
        { "NaN mm", "no number at “NaN mm”", "19 mm" },
        { "Infinity mm", "no number at “Infinity mm”", "19 mm" },
        { "-\u221E mm", "no number at “\u221E mm”", "19 mm" },
        { "\u0661\u0669 mm", "no number at", "19 mm" }, // digits of another script
        { "0x19 mm", "with “x” where a unit should stand", "mm, cm, m, in" },
        { "5\n6 mm", "with “?6 mm” where a unit should stand", "19 mm" },
        { "5\0mm", "with “?mm” where a unit should stand", "19 mm" },
        { "\u202E5 mm", "text is “?5 mm”", "19 mm" }, // a mark that turns the text round
        { "5 \uD83D", "with “?” where a unit should stand", "19 mm" }, // half a character
    };

    public static TheoryData<string> FarTexts { get; } =
    [
        "1000000.000001 mm", "-1000000.000001 mm", "1001 m", "39371 in", "3281 ft", "3280' 11\"", "99999999999999999999999999999999999999999999999999 mm",
    ];

    [Theory]
    [MemberData(nameof(Readable))]
    public void Reads_what_people_write(string text, LengthUnit unit, double number, double millimetres)
    {
        Length length = ParseLength(text);
        Assert.Equal(unit, length.Unit);
        Assert.Equal(number, length.Value);
        Assert.Equal(millimetres, Door.Millimetres(length));
        Assert.True(TryParseLength(text, out Length tried));
        Assert.Equal((unit, number), (tried.Unit, tried.Value));
        Assert.Empty(CheckLength(text));
    }

    [Theory]
    [MemberData(nameof(Unreadable))]
    public void Refuses_what_is_no_length_or_two(string text, string read, string allowed)
    {
        InputProblem problem = Assert.Single(CheckLength(text));
        Assert.Equal("text", problem.Parameter);
        Assert.Contains(read, problem.Message, StringComparison.Ordinal);
        Assert.Contains(allowed, problem.Allowed, StringComparison.Ordinal);
        Assert.DoesNotContain(problem.Message, static c => char.IsControl(c) || char.IsSurrogate(c));
        ArgumentException thrown = Assert.Throws<ArgumentException>(() => ParseLength(text));
        Assert.Equal("text", thrown.ParamName);
        Assert.StartsWith(problem.Message, thrown.Message, StringComparison.Ordinal);
        Assert.False(TryParseLength(text, out Length length));
        Assert.Equal(0, length.Value);
    }

    [Theory]
    [MemberData(nameof(FarTexts))]
    public void Refuses_more_than_a_kilometre(string text)
    {
        InputProblem problem = Assert.Single(CheckLength(text));
        Assert.True(problem.IsRange);
        Assert.Equal("-1000000 to 1000000 mm", problem.Allowed);
        Assert.Equal("text", Assert.Throws<ArgumentOutOfRangeException>(() => ParseLength(text)).ParamName);
        Assert.False(TryParseLength(text, out _));
    }

    [Fact]
    public void A_range_message_gives_the_text_and_its_millimetres() =>
        Assert.Equal("text is “-1001 m”, -1001000 mm; allowed is -1000000 to 1000000 mm.", CheckLength("-1001 m")[0].Message);

    [Fact]
    public void Null_is_refused_as_missing()
    {
        Assert.True(Assert.Single(CheckLength(null)).IsMissing);
        Assert.Equal("text", Assert.Throws<ArgumentNullException>(() => ParseLength(null!)).ParamName);
        Assert.Equal("inches", Assert.Throws<ArgumentNullException>(() => Inch(null!)).ParamName);
        Assert.False(TryParseLength(null, out _));
    }

    [Fact]
    public void The_word_null_is_not_taken_for_a_missing_text()
    {
        Assert.False(Assert.Single(CheckLength("null")).IsMissing);
        Assert.Throws<ArgumentException>(() => ParseLength("null"));
    }

    [Fact]
    public void A_hundred_characters_are_read_and_one_more_is_not()
    {
        Assert.Equal(1, ParseLength("1 mm".PadLeft(100, '0')).Value);
        InputProblem problem = Assert.Single(CheckLength("1 mm".PadLeft(101, '0')));
        Assert.Equal("text is 101 characters long, beginning “00000000000000000000”; allowed is at most 100 characters.", problem.Message);
        Assert.Throws<ArgumentException>(() => ParseLength(new string('1', 1_000_000)));
    }

    [Fact]
    public void Minus_zero_is_zero()
    {
        Assert.False(double.IsNegative(ParseLength("-0 mm").Value));
        Assert.False(double.IsNegative(ParseLength("-0' 0\"").Value));
    }

    [Theory]
    [InlineData("5/8", 0.625)]
    [InlineData("1 1/4", 1.25)]
    [InlineData("1-1/4", 1.25)]
    [InlineData("1\u00BC", 1.25)]
    [InlineData("0.75", 0.75)]
    [InlineData(" -12 ", -12)]
    [InlineData("9/8", 1.125)]
    public void Inch_reads_a_number_without_unit(string text, double inches)
    {
        Assert.Equal(LengthUnit.Inch, Inch(text).Unit);
        Assert.Equal(inches, Inch(text).Value);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("5/8 in", "with “in” behind the number")]
    [InlineData("5/8\"", "with “\"” behind the number")]
    [InlineData("16 mm", "with “mm” behind the number")]
    [InlineData("1,5", "with a comma")]
    [InlineData("1 9/8", "a fraction of 1 or more")]
    [InlineData("1-2", "with “-2” behind the number")]
    [InlineData("1 2", "with “2” behind the number")]
    [InlineData("5/0", "a fraction over")]
    [InlineData("1e3", "with “e3” behind the number")]
    [InlineData("five", "no number at “five”")]
    public void Inch_refuses_units_and_what_can_be_read_in_two_ways(string text, string read)
    {
        ArgumentException thrown = Assert.Throws<ArgumentException>(() => Inch(text));
        Assert.Equal("inches", thrown.ParamName);
        Assert.Contains(read, thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Inch_refuses_more_than_a_kilometre() =>
        Assert.Equal("inches", Assert.Throws<ArgumentOutOfRangeException>(() => Inch("39371")).ParamName);

    [Fact]
    public void Numbers_keep_their_unit()
    {
        Assert.Equal((LengthUnit.Millimeter, 19.05), (Mm(19.05).Unit, Mm(19.05).Value));
        Assert.Equal((LengthUnit.Inch, 0.75), (Inch(0.75).Unit, Inch(0.75).Value));
        Assert.Equal((LengthUnit.Inch, 68.5), (Feet(5, 8.5).Unit, Feet(5, 8.5).Value));
        Assert.Equal((LengthUnit.Inch, 66), (Feet(5.5).Unit, Feet(5.5).Value));
        Assert.Equal((LengthUnit.Inch, -68), (Feet(-5, -8).Unit, Feet(-5, -8).Value));
        Assert.Equal(-8, Feet(0, -8).Value);
        Assert.Equal(-60, Feet(-5, 0).Value);
        Assert.Equal(74, Feet(5, 14).Value);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(1.1e300)]
    public void Numbers_that_are_none_are_refused_by_name(double number)
    {
        Assert.Equal("millimetres", Assert.ThrowsAny<ArgumentException>(() => Mm(number)).ParamName);
        Assert.Equal("inches", Assert.ThrowsAny<ArgumentException>(() => Inch(number)).ParamName);
        Assert.Equal("feet", Assert.ThrowsAny<ArgumentException>(() => Feet(number)).ParamName);
        Assert.Equal("inches", Assert.ThrowsAny<ArgumentException>(() => Feet(1, number)).ParamName);
    }

    [Theory]
    [InlineData(-5, 8)]
    [InlineData(5, -8)]
    public void Feet_and_inches_of_two_signs_are_refused(double feet, double inches) =>
        Assert.Equal("inches", Assert.Throws<ArgumentOutOfRangeException>(() => Feet(feet, inches)).ParamName);

    [Theory]
    [InlineData(19, 1, "19 mm")]
    [InlineData(19.05, 1, "19.1 mm")]
    [InlineData(-19.05, 1, "-19.1 mm")]
    [InlineData(19.05, 2, "19.05 mm")]
    [InlineData(19.049999, 1, "19 mm")]
    [InlineData(0, 1, "0 mm")]
    [InlineData(0.05, 1, "0.1 mm")]
    [InlineData(0.049999, 1, "0 mm")]
    [InlineData(-0.05, 1, "-0.1 mm")]
    [InlineData(-0.04, 1, "0 mm")]
    [InlineData(2.5, 0, "3 mm")]
    [InlineData(-2.5, 0, "-3 mm")]
    [InlineData(10, 0, "10 mm")]
    [InlineData(2.675, 2, "2.68 mm")] // the double lies below 2.675
    [InlineData(1.005, 2, "1.01 mm")] // the double lies below 1.005
    [InlineData(9.99, 1, "10 mm")]
    [InlineData(1234.5, 1, "1234.5 mm")]
    [InlineData(0.000001, 6, "0.000001 mm")]
    [InlineData(-999999, 6, "-999999 mm")]
    public void Writes_millimetres(double millimetres, int decimals, string expected) => Assert.Equal(expected, FormatMillimetres(Mm(millimetres), decimals));

    [Theory]
    [InlineData(19.05, 3, "0.75 in")]
    [InlineData(18, 3, "0.709 in")] // 0.70866...
    [InlineData(-18, 3, "-0.709 in")]
    [InlineData(25.4, 3, "1 in")]
    [InlineData(0, 3, "0 in")]
    [InlineData(0.0127, 3, "0.001 in")] // exactly half a thousandth
    [InlineData(-0.0127, 3, "-0.001 in")]
    [InlineData(0.012699, 3, "0 in")]
    [InlineData(-0.012699, 3, "0 in")]
    [InlineData(12.7, 0, "1 in")]
    [InlineData(0.396875, 6, "0.015625 in")]
    [InlineData(999999, 6, "39370.03937 in")] // 39370.0393700787...
    public void Writes_decimal_inches(double millimetres, int decimals, string expected) => Assert.Equal(expected, FormatDecimalInches(Mm(millimetres), decimals));

    [Theory]
    [InlineData(400, 16, "15-3/4 in")] // 251.97 sixteenths: 252
    [InlineData(400, 2, "15-1/2 in")] // 31.5 - 0.004 halves: 31
    [InlineData(400, 1, "16 in")] // 15.748
    [InlineData(400, 64, "15-3/4 in")] // 1007.87 sixty-fourths: 1008 = 15 x 64 + 48
    [InlineData(0, 16, "0 in")]
    [InlineData(12.7, 16, "1/2 in")]
    [InlineData(-12.7, 16, "-1/2 in")]
    [InlineData(-31.75, 16, "-1-1/4 in")]
    [InlineData(0.79375, 16, "1/16 in")] // 1/32: half of a sixteenth, away from zero
    [InlineData(-0.79375, 16, "-1/16 in")]
    [InlineData(0.793749, 16, "0 in")]
    [InlineData(-0.793749, 16, "0 in")]
    [InlineData(2.38125, 16, "1/8 in")] // 3/32
    [InlineData(25.2, 16, "1 in")] // 15.87 sixteenths
    [InlineData(0.396875, 64, "1/64 in")]
    [InlineData(762, 16, "30 in")]
    public void Writes_inches_to_a_fraction(double millimetres, int denominator, string expected) => Assert.Equal(expected, FormatInches(Mm(millimetres), denominator));

    [Theory]
    [InlineData(68.5, 16, "5' 8-1/2\"")]
    [InlineData(-28.5, 16, "-2' 4-1/2\"")]
    [InlineData(47.99, 16, "4' 0\"")]
    [InlineData(47.5, 1, "4' 0\"")]
    [InlineData(-47.99, 16, "-4' 0\"")]
    [InlineData(11.97, 16, "1' 0\"")] // 191.52 sixteenths: 192
    [InlineData(60, 16, "5' 0\"")]
    [InlineData(60.5, 16, "5' 0-1/2\"")]
    [InlineData(-60.5, 16, "-5' 0-1/2\"")]
    [InlineData(61, 16, "5' 1\"")]
    [InlineData(8.5, 16, "8-1/2\"")]
    [InlineData(0.5, 16, "1/2\"")]
    [InlineData(-0.25, 16, "-1/4\"")]
    [InlineData(-2.5, 16, "-2-1/2\"")]
    [InlineData(0, 16, "0\"")]
    [InlineData(-0.01, 16, "0\"")]
    [InlineData(71.984375, 64, "5' 11-63/64\"")]
    [InlineData(71.984375, 32, "6' 0\"")] // 31.5 thirty-seconds: away from zero
    public void Writes_feet_and_inches(double inches, int denominator, string expected) => Assert.Equal(expected, FormatFeetAndInches(Inch(inches), denominator));

    [Fact]
    public void The_denominator_is_sixteen_and_decimals_one_or_three_unless_said()
    {
        Assert.Equal("1/16 in", FormatInches(Inch("3/64")));
        Assert.Equal("1/16\"", FormatFeetAndInches(Inch("3/64")));
        Assert.Equal("1.2 mm", FormatMillimetres(Inch("3/64"))); // 1.190625
        Assert.Equal("0.047 in", FormatDecimalInches(Inch("3/64"))); // 0.046875
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-16)]
    [InlineData(3)]
    [InlineData(12)]
    [InlineData(128)]
    [InlineData(int.MinValue)]
    [InlineData(int.MaxValue)]
    public void Other_denominators_are_refused(int denominator)
    {
        ArgumentOutOfRangeException thrown = Assert.Throws<ArgumentOutOfRangeException>(() => FormatInches(Mm(1), denominator));
        Assert.Equal("denominator", thrown.ParamName);
        Assert.Contains("1, 2, 4, 8, 16, 32 or 64", thrown.Message, StringComparison.Ordinal);
        Assert.Equal("denominator", Assert.Throws<ArgumentOutOfRangeException>(() => FormatFeetAndInches(Mm(1), denominator)).ParamName);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(7)]
    public void Other_decimals_are_refused(int decimals)
    {
        ArgumentOutOfRangeException thrown = Assert.Throws<ArgumentOutOfRangeException>(() => FormatMillimetres(Mm(1), decimals));
        Assert.Equal("decimals", thrown.ParamName);
        Assert.Contains("0 to 6", thrown.Message, StringComparison.Ordinal);
        Assert.Equal("decimals", Assert.Throws<ArgumentOutOfRangeException>(() => FormatDecimalInches(Mm(1), decimals)).ParamName);
    }

    [Theory]
    [InlineData(999999.000001)]
    [InlineData(-999999.000001)]
    [InlineData(1e300)]
    public void Lengths_that_could_not_be_read_again_are_not_written(double millimetres)
    {
        foreach (Func<Length, string> format in Formats())
        {
            Assert.Equal("length", Assert.Throws<ArgumentOutOfRangeException>(() => format(Mm(millimetres))).ParamName);
        }
    }

    /// <summary>An undefined unit ends the process inside UnitsNet, so this run would die and not only fail.</summary>
    [Fact]
    public void Lengths_in_an_undefined_unit_are_refused()
    {
        foreach (Func<Length, string> format in Formats())
        {
            Assert.Equal("length", Assert.Throws<ArgumentException>(() => format(new Length(1, (LengthUnit)999))).ParamName);
        }
    }

    [Fact]
    public void Other_units_are_written_too()
    {
        Assert.Equal("19.1 mm", FormatMillimetres(new Length(0.01905, LengthUnit.Meter)));
        Assert.Equal("3/4 in", FormatInches(new Length(1.905, LengthUnit.Centimeter)));
        Assert.Equal("3' 0\"", FormatFeetAndInches(new Length(1, LengthUnit.Yard)));
        Assert.Equal("0 in", FormatDecimalInches(default));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("fr-FR")]
    [InlineData("tr-TR")]
    [InlineData("sv-SE")]
    [InlineData("ar-SA")]
    public void The_threads_culture_changes_nothing(string culture)
    {
        string[] expected = Everything();
        string[] found = InCulture(culture, Everything);
        Assert.Equal(expected, found);
        Assert.Contains("-0.5 mm", found);
    }

    private static IEnumerable<Func<Length, string>> Formats() =>
        [static length => FormatMillimetres(length), static length => FormatDecimalInches(length), static length => FormatInches(length), static length => FormatFeetAndInches(length)];

    /// <summary>Every row of the tables, read, written and refused, as invariant text.</summary>
    private static string[] Everything()
    {
        IEnumerable<string> texts = Readable.Select(static row => row.Data.Item1)
            .Concat(Unreadable.Select(static row => row.Data.Item1))
            .Concat(FarTexts.Select(static row => row.Data));
        return
        [
            .. texts.SelectMany(static text => TryParseLength(text, out Length length) && Math.Abs(Door.Millimetres(length)) < 999_999
                ? Formats().Select(format => format(length)).Append(length.Value.ToString("R", CultureInfo.InvariantCulture))
                : CheckLength(text).Select(static problem => problem.Message)),
        ];
    }

    private static T InCulture<T>(string culture, Func<T> run)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            return run();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
