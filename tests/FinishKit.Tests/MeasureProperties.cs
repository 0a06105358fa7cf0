using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.RegularExpressions;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests;

/// <summary>What must hold for every length and every text.</summary>
[Properties(Arbitrary = [typeof(MeasureArbitraries)], MaxTest = 2000)]
public sealed class MeasureProperties
{
    private const long NanometresPerInch = 25_400_000;

    private static readonly int[] s_denominators = [1, 2, 4, 8, 16, 32, 64];

    /// <summary>1/64 in is 396,875 nm, so every 64th of an inch is a whole number of nanometres and six decimals of an inch hold it.</summary>
    [Property]
    public void Whole_64ths_come_back_exactly_from_every_form(SixtyFourths parts)
    {
        Length length = Inch(parts.Count / 64.0);
        long expected = parts.Count * 396_875L;
        Assert.Equal(expected, Nanometres(ParseLength(FormatInches(length, 64))));
        Assert.Equal(expected, Nanometres(ParseLength(FormatFeetAndInches(length, 64))));
        Assert.Equal(expected, Nanometres(ParseLength(FormatDecimalInches(length, 6))));
        Assert.Equal(expected, Nanometres(ParseLength(FormatMillimetres(length, 6))));
        Assert.Equal(parts.Count / 64.0, ParseLength(FormatFeetAndInches(length, 64)).Inches);
    }

    [Property]
    public void Whole_micrometres_come_back_exactly_from_millimetres(Micrometres micrometres)
    {
        Length length = Mm(micrometres.Count / 1000.0);
        Assert.Equal(micrometres.Count * 1000L, Nanometres(ParseLength(FormatMillimetres(length, 3))));
        Assert.Equal(micrometres.Count / 1000.0, ParseLength(FormatMillimetres(length, 3)).Millimeters);
    }

    /// <summary>At most half a step off; where exactly half, the greater size.</summary>
    [Property]
    public void What_is_written_in_inches_is_the_nearest_fraction(Micrometres micrometres)
    {
        Length length = Mm(micrometres.Count / 1000.0);
        foreach (int denominator in s_denominators)
        {
            IsNearest(length, ParseLength(FormatInches(length, denominator)), denominator);
            IsNearest(length, ParseLength(FormatFeetAndInches(length, denominator)), denominator);
        }

        for (int decimals = 0, steps = 1; decimals <= 4; decimals++, steps *= 10)
        {
            IsNearest(length, ParseLength(FormatDecimalInches(length, decimals)), steps);
        }
    }

    /// <summary>Odd halves of a step: the ties, which drawing at random would hardly meet.</summary>
    [Property]
    public void A_tie_goes_away_from_zero(SixtyFourths parts)
    {
        // (2 n + 1)/64 in lies in the middle between n/32 and (n + 1)/32.
        int size = Math.Abs(parts.Count) % 1_000_000;
        string expected = FormatInches(Inch((size + 1) / 32.0), 32);
        Assert.Equal(expected, FormatInches(Inch(((2 * size) + 1) / 64.0), 32));
        Assert.Equal("-" + expected, FormatInches(Inch(((-2 * size) - 1) / 64.0), 32));
    }

    [Property]
    public void A_negative_length_is_the_positive_with_a_minus(Micrometres micrometres)
    {
        Length positive = Mm(Math.Abs(micrometres.Count) / 1000.0), negative = Mm(-Math.Abs(micrometres.Count) / 1000.0);
        foreach (int denominator in s_denominators)
        {
            IsMirrored(FormatInches(positive, denominator), FormatInches(negative, denominator));
            IsMirrored(FormatFeetAndInches(positive, denominator), FormatFeetAndInches(negative, denominator));
        }

        for (int decimals = 0; decimals <= 6; decimals++)
        {
            IsMirrored(FormatMillimetres(positive, decimals), FormatMillimetres(negative, decimals));
            IsMirrored(FormatDecimalInches(positive, decimals), FormatDecimalInches(negative, decimals));
        }
    }

    [Property]
    public void Fractions_are_reduced_and_inches_stay_under_twelve(Micrometres micrometres)
    {
        Length length = Mm(micrometres.Count / 1000.0);
        foreach (int denominator in s_denominators)
        {
            Match feet = Regex.Match(FormatFeetAndInches(length, denominator), "^-?(?:(?<feet>[1-9][0-9]*)' (?<inches>[0-9]|1[01])(?:-(?<top>[0-9]+)/(?<bottom>[0-9]+))?|(?<inches>[0-9]|1[01])|(?:(?<inches>[1-9]|1[01])-)?(?<top>[0-9]+)/(?<bottom>[0-9]+))\"$");
            Assert.True(feet.Success, FormatFeetAndInches(length, denominator));
            IsReduced(feet, denominator);
            Match inches = Regex.Match(FormatInches(length, denominator), "^-?(?:[0-9]+|(?:[1-9][0-9]*-)?(?<top>[0-9]+)/(?<bottom>[0-9]+)) in$");
            Assert.True(inches.Success, FormatInches(length, denominator));
            IsReduced(inches, denominator);
        }
    }

    [Property]
    public void Reading_parsing_and_checking_agree_on_any_text(string? text) => Agree(text);

    /// <summary>Pieces of real lengths in any order: these reach every corner of the reader.</summary>
    [Property(MaxTest = 20_000)]
    public void Reading_parsing_and_checking_agree_on_pieces_of_lengths(Pieces pieces) => Agree(pieces.Text);

    private static void Agree(string? text)
    {
        IReadOnlyList<InputProblem> problems = CheckLength(text);
        bool isRead = TryParseLength(text, out Length tried);
        Assert.Equal(isRead, problems.Count == 0);
        if (isRead)
        {
            Length parsed = ParseLength(text!);
            Assert.Equal((parsed.Unit, parsed.Value), (tried.Unit, tried.Value));
            Assert.InRange(Door.Millimetres(parsed), -1e6, 1e6);
            return;
        }

        Assert.Equal(default, tried.Value);
        ArgumentException thrown = Assert.ThrowsAny<ArgumentException>(() => ParseLength(text!));
        Assert.Equal(problems[0].ToException().GetType(), thrown.GetType());
        Assert.Equal(problems[0].ToException().Message, thrown.Message);
        Assert.Equal(text is null, problems[0].IsMissing);
        InchAgrees(text);
    }

    /// <summary>A number that Inch reads, Parse reads with "in" behind it, and to the same length.</summary>
    private static void InchAgrees(string? text)
    {
        Length inch;
        try
        {
            inch = Inch(text!);
        }
        catch (ArgumentException refused)
        {
            Assert.Equal("inches", refused.ParamName);
            return;
        }

        Assert.Equal(inch.Value, ParseLength(text!.Trim() + " in").Value);
    }

    private static long Nanometres(Length length) => (long)Math.Round(Door.Millimetres(length) * 1e6);

    /// <summary>
    /// What is read back lies on the 1 nm grid, half a nanometre off its fraction at most: where a step is no whole number of nanometres
    /// (decimal inches), that half is allowed for.
    /// </summary>
    private static void IsNearest(Length length, Length read, int steps)
    {
        long off = Math.Abs(Nanometres(length) - Nanometres(read));
        Assert.True(2 * off * steps <= NanometresPerInch + steps, $"{Nanometres(length)} nm read back as {Nanometres(read)} nm at 1/{steps} in");
    }

    private static void IsMirrored(string positive, string negative)
    {
        Assert.Equal(positive.Any(static c => c is >= '1' and <= '9') ? "-" + positive : positive, negative);
        Assert.False(positive.StartsWith('-'));
    }

    private static void IsReduced(Match match, int denominator)
    {
        if (!match.Groups["top"].Success)
        {
            return;
        }

        int top = int.Parse(match.Groups["top"].Value, System.Globalization.CultureInfo.InvariantCulture);
        int bottom = int.Parse(match.Groups["bottom"].Value, System.Globalization.CultureInfo.InvariantCulture);
        Assert.True(top % 2 == 1 && top < bottom && bottom <= denominator && denominator % bottom == 0, match.Value);
    }

    /// <summary>A whole number of 64ths of an inch.</summary>
    public sealed record SixtyFourths(int Count);

    /// <summary>A whole number of micrometres.</summary>
    public sealed record Micrometres(int Count);

    /// <summary>Text put together from pieces of lengths.</summary>
    public sealed record Pieces(string Text);

    public static class MeasureArbitraries
    {
        private static readonly string[] s_pieces =
        [
            "0", "1", "5", "8", "12", "64", "3/4", "1/2", "9/8", ".", ".5", "/", "-", "-", "+", " ", " ", " ", "'", "'", "\"", "\"", " in", " ft", "mm", "cm", "m", "M", "Mm",
            "½", "⅝", "′", "″", ",", "e", "1000000", "in.", "\u2212", "\u2013", "\0", "\n", "NaN",
        ];

        public static Arbitrary<SixtyFourths> SixtyFourths() =>
            Gen.OneOf(Gen.Choose(-2000, 2000), Gen.Choose(-2_000_000, 2_000_000)).Select(static count => new SixtyFourths(count)).ToArbitrary();

        public static Arbitrary<Micrometres> Micrometres() =>
            Gen.OneOf(Gen.Choose(-50_000, 50_000), Gen.Choose(-10_000_000, 10_000_000), Gen.Choose(-999_999_000, 999_999_000)).Select(static count => new Micrometres(count)).ToArbitrary();

        public static Arbitrary<Pieces> Pieces() =>
            Gen.Choose(1, 7).SelectMany(static count => Gen.Elements(s_pieces).ListOf(count)).Select(static pieces => new Pieces(string.Concat(pieces))).ToArbitrary();
    }
}
