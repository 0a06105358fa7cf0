using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>Reading and writing lengths as people write them, the same in every culture, refusing what can be read in two ways.</summary>
/// <remarks>
/// <para>Metric input gives a length in millimetres, inches and feet a length in inches, so that people see their own unit.</para>
/// <para>Writing rounds on whole nanometres, half away from zero, so that there is no 3' 12" and no -0. What is written can be read again.</para>
/// </remarks>
public static class Measure
{
    /// <summary>Far beyond any length, but still finite when multiplied up to the 1 nm grid.</summary>
    private const double MostNumber = 1e300;

    private const long NanometresPerMillimetre = 1_000_000;

    private const long NanometresPerInch = 25_400_000;

    private const int MostDenominator = 64;

    private const int MostDecimals = 6;

    private static readonly Allowed s_millimetres = new(-MostNumber, MostNumber, "mm");
    private static readonly Allowed s_inches = new(-MostNumber, MostNumber, "in");
    private static readonly Allowed s_feet = new(-MostNumber, MostNumber, "ft");

    /// <summary>A millimetre less than <see cref="ParseLength"/> reads, so that rounding up stays readable.</summary>
    private static readonly Allowed s_written = new(1 - MeasureReader.MostMillimetres, MeasureReader.MostMillimetres - 1, "mm");

    /// <summary>A length in millimetres.</summary>
    /// <param name="millimetres">The number of millimetres.</param>
    /// <returns>The length, in millimetres.</returns>
    /// <exception cref="ArgumentException"><paramref name="millimetres"/> is not a finite number (or beyond 1E+300).</exception>
    /// <example><code>
    /// Length board = Mm(12.7);
    /// </code></example>
    public static Length Mm(double millimetres) => new(Door.Number(millimetres, nameof(millimetres), s_millimetres, null), LengthUnit.Millimeter);

    /// <summary>A length in inches.</summary>
    /// <param name="inches">The number of inches.</param>
    /// <returns>The length, in inches.</returns>
    /// <exception cref="ArgumentException"><paramref name="inches"/> is not a finite number (or beyond 1E+300).</exception>
    /// <example><code>
    /// Length board = Inch(0.5);                           // 12.7 mm
    /// </code></example>
    public static Length Inch(double inches) => new(Door.Number(inches, nameof(inches), s_inches, null), LengthUnit.Inch);

    /// <summary>A length in inches, from a number as written on a drawing: <c>5/8</c>, <c>1 1/4</c>, <c>1-1/4</c>, <c>0.75</c>.</summary>
    /// <param name="inches">The number, without unit; read as <see cref="ParseLength"/> reads the number before <c>in</c>.</param>
    /// <returns>The length, in inches.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="inches"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is more than 1,000,000 mm from 0.</exception>
    /// <exception cref="ArgumentException"><paramref name="inches"/> is no such number, has a unit, or can be read in two ways.</exception>
    /// <example><code>
    /// Length ply = Inch("5/8");                           // 15.875 mm
    /// Length brad = Inch("1-1/4");                        // 31.75 mm
    /// </code></example>
    public static Length Inch(string inches) => MeasureReader.ReadInches(inches, nameof(inches), out Length length) is { } problem
        ? throw problem.ToException()
        : length;

    /// <summary>A length in feet and inches.</summary>
    /// <param name="feet">The number of feet.</param>
    /// <param name="inches">The number of inches on top, of the same sign as the feet; may be 12 or more.</param>
    /// <returns>The length, in inches.</returns>
    /// <exception cref="ArgumentOutOfRangeException">One number is negative and the other positive: minus 5 feet and 8 inches can be meant in two ways.</exception>
    /// <exception cref="ArgumentException">A number is not finite (or beyond 1E+300).</exception>
    /// <example><code>
    /// Length height = Feet(5, 8.5);                       // 68.5 in, 1739.9 mm
    /// Length under = Feet(-2, -4);                        // -28 in
    /// </code></example>
    public static Length Feet(double feet, double inches = 0)
    {
        double wholes = Door.Number(feet, nameof(feet), s_feet, null);
        double rest = Door.Number(inches, nameof(inches), s_inches, null);
        if ((wholes < 0 && rest > 0) || (wholes > 0 && rest < 0))
        {
            Door.Report(new InputProblem(nameof(inches), Print.Number(rest) + " in", $"a number of the same sign as the feet, {Print.Number(wholes)} ft", isRange: true), null);
        }

        return new Length((wholes * 12) + rest, LengthUnit.Inch);
    }

    /// <summary>Reads a length as people write it.</summary>
    /// <param name="text">
    /// A number with its unit, up to 100 characters: <c>19 mm</c>, <c>1.9 cm</c>, <c>0.5 m</c>, <c>3/4 in</c>, <c>1-1/4"</c>, <c>1 1/4"</c>,
    /// <c>¾"</c>, <c>0.75 in</c>, <c>5' 8-1/2"</c>, <c>2'-4"</c>, <c>5 ft 8 in</c>; up to 1,000,000 mm from 0.
    /// </param>
    /// <returns>The length: in millimetres (on the 1 nm grid) for mm, cm and m; in inches for inches and feet.</returns>
    /// <remarks>
    /// <para>Units: mm, cm, m, in, inch, inches, ft, foot, feet, in small or capital letters, and ' and " also as typographic marks; <c>in.</c> and <c>ft.</c> may have their dot; '' stands for ".</para>
    /// <para>A hyphen joins a whole number and its fraction, or feet and inches; only a sign before the number makes the length negative, and then all of it: <c>-2' 4"</c> is -28 in.</para>
    /// <para>
    /// Refused because it can be read in two ways or is likely a slip: a number without unit, a comma, a gap between digits, the units M and Mm, a fraction of a metric unit, a fraction
    /// of 1 or more behind a whole number (9/8 in alone is 1.125 in), 12 inches or more behind feet, inches behind broken feet, a hyphen with a space on one side, a range, an exponent.
    /// </para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is more than 1,000,000 mm from 0.</exception>
    /// <exception cref="ArgumentException"><paramref name="text"/> is no length or can be read in two ways; the message says why, and what is allowed.</exception>
    /// <example><code>
    /// Length ply = ParseLength("3/4 in");                       // 19.05 mm
    /// Length gap = ParseLength("-0.5 mm");                      // -0.5 mm
    /// Length girth = ParseLength("5' 8-1/2\"");                 // 68.5 in, 1739.9 mm
    /// Length strip = ParseLength("2'-4\"");                     // 28 in: the hyphen is no minus
    /// </code></example>
    public static Length ParseLength(string text) => MeasureReader.ReadLength(text, nameof(text), out Length length) is { } problem
        ? throw problem.ToException()
        : length;

    /// <summary>Reads a length as <see cref="ParseLength"/> does, without throwing.</summary>
    /// <param name="text">As there; may be null.</param>
    /// <param name="length">The length as <see cref="ParseLength"/> returns it; the default where the answer is no.</param>
    /// <returns>Whether <paramref name="text"/> was read; if not, <see cref="CheckLength"/> says why.</returns>
    /// <example><code>
    /// bool isRead = TryParseLength("1-1/4 in", out Length thick); // true, 31.75 mm
    /// bool isGuessed = TryParseLength("1,5 mm", out _);         // false: 1.5 or 15?
    /// </code></example>
    public static bool TryParseLength([NotNullWhen(true)] string? text, out Length length) => MeasureReader.ReadLength(text, nameof(text), out length) is null;

    /// <summary>What is wrong with the input of <see cref="ParseLength"/>; nothing is thrown.</summary>
    /// <param name="text">As there; may be null.</param>
    /// <returns>The first problem, as a list of one; empty if there is none.</returns>
    /// <example><code>
    /// IReadOnlyList&lt;InputProblem&gt; problems = CheckLength("19");
    /// string why = problems[0].Message; // text is “19”, a number without a unit; allowed is a unit behind every number, mm or in: 19 mm, 3/4 in.
    /// </code></example>
    public static IReadOnlyList<InputProblem> CheckLength(string? text) => MeasureReader.ReadLength(text, nameof(text), out _) is { } problem ? [problem] : [];

    /// <summary>Writes a length in millimetres: <c>19.1 mm</c>.</summary>
    /// <param name="length">The length [length], up to 999,999 mm from 0.</param>
    /// <param name="decimals">The most decimals, 0 to 6; zeros at the end are left out.</param>
    /// <returns>The nearest such number (half away from zero) and <c>mm</c>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <exception cref="ArgumentException"><paramref name="length"/> is in an undefined unit.</exception>
    /// <example><code>
    /// string ply = FormatMillimetres(Inch("3/4"));        // 19.1 mm
    /// string exact = FormatMillimetres(Inch("3/4"), 2);   // 19.05 mm
    /// </code></example>
    public static string FormatMillimetres(Length length, int decimals = 1) =>
        WriteDecimals(ReadNanometres(length), decimals, NanometresPerMillimetre) + " mm";

    /// <summary>Writes a length in decimal inches: <c>0.75 in</c>.</summary>
    /// <param name="length">The length [length], up to 999,999 mm from 0.</param>
    /// <param name="decimals">The most decimals, 0 to 6; zeros at the end are left out.</param>
    /// <returns>The nearest such number (half away from zero) and <c>in</c>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <exception cref="ArgumentException"><paramref name="length"/> is in an undefined unit.</exception>
    /// <example><code>
    /// string ply = FormatDecimalInches(Mm(18));           // 0.709 in
    /// </code></example>
    public static string FormatDecimalInches(Length length, int decimals = 3) =>
        WriteDecimals(ReadNanometres(length), decimals, NanometresPerInch) + " in";

    /// <summary>Writes a length in inches and a reduced fraction: <c>15-3/4 in</c>.</summary>
    /// <param name="length">The length [length], up to 999,999 mm from 0.</param>
    /// <param name="denominator">The finest fraction: 1, 2, 4, 8, 16, 32 or 64.</param>
    /// <returns>The nearest such fraction (half away from zero) and <c>in</c>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <exception cref="ArgumentException"><paramref name="length"/> is in an undefined unit.</exception>
    /// <example><code>
    /// string board = FormatInches(Mm(400));               // 15-3/4 in
    /// string rough = FormatInches(Mm(400), 2);            // 15-1/2 in
    /// </code></example>
    public static string FormatInches(Length length, int denominator = 16)
    {
        long parts = ReadParts(length, denominator);
        return (parts < 0 ? "-" : string.Empty) + WriteFraction(Math.Abs(parts), denominator) + " in";
    }

    /// <summary>Writes a length in feet, inches and a reduced fraction: <c>5' 8-1/2"</c>; under a foot in inches only: <c>8-1/2"</c>.</summary>
    /// <param name="length">The length [length], up to 999,999 mm from 0.</param>
    /// <param name="denominator">The finest fraction of an inch: 1, 2, 4, 8, 16, 32 or 64.</param>
    /// <returns>The nearest such fraction (half away from zero), with the inches written even if they are 0: <c>5' 0"</c>, <c>5' 0-1/2"</c>. A minus is for the whole length: <c>-2' 4-1/2"</c>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <exception cref="ArgumentException"><paramref name="length"/> is in an undefined unit.</exception>
    /// <example><code>
    /// string girth = FormatFeetAndInches(Mm(1740));       // 5' 8-1/2"
    /// string full = FormatFeetAndInches(Inch(47.99));     // 4' 0", never 3' 12"
    /// </code></example>
    public static string FormatFeetAndInches(Length length, int denominator = 16)
    {
        long parts = ReadParts(length, denominator);
        long partsPerFoot = 12L * denominator;
        long feet = Math.Abs(parts) / partsPerFoot, rest = Math.Abs(parts) % partsPerFoot;
        string sign = parts < 0 ? "-" : string.Empty;
        return feet == 0
            ? sign + WriteFraction(rest, denominator) + "\""
            // 5' 1/2" could be taken for five and a half feet, so the 0 is written.
            : sign + Digits(feet) + "' " + (rest > 0 && rest < denominator ? "0-" : string.Empty) + WriteFraction(rest, denominator) + "\"";
    }

    private static long ReadNanometres(Length length) =>
        (long)Math.Round(Door.Millimetres(length, nameof(length), s_written, null) * NanometresPerMillimetre);

    /// <summary>The length in whole parts of an inch.</summary>
    private static long ReadParts(Length length, int denominator)
    {
        long nanometres = ReadNanometres(length);
        if (denominator is < 1 or > MostDenominator || (denominator & (denominator - 1)) != 0)
        {
            Door.Report(new InputProblem(nameof(denominator), Digits(denominator), "1, 2, 4, 8, 16, 32 or 64", isRange: true), null);
        }

        return RoundRatio(nanometres * denominator, NanometresPerInch);
    }

    private static string WriteDecimals(long nanometres, int decimals, long nanometresPerUnit)
    {
        if (decimals is < 0 or > MostDecimals)
        {
            Door.Report(new InputProblem(nameof(decimals), Digits(decimals), FormattableString.Invariant($"0 to {MostDecimals}"), isRange: true), null);
        }

        long steps = 1;
        for (int i = 0; i < decimals; i++)
        {
            steps *= 10;
        }

        // Up to 1e12 nm times 1e6 steps, doubled for rounding: 2e18, below the 9.2e18 a long holds.
        long rounded = RoundRatio(nanometres * steps, nanometresPerUnit);
        string fraction = Digits(Math.Abs(rounded) % steps).PadLeft(decimals, '0').TrimEnd('0');
        return (rounded < 0 ? "-" : string.Empty) + Digits(Math.Abs(rounded) / steps) + (fraction.Length == 0 ? string.Empty : "." + fraction);
    }

    private static string WriteFraction(long parts, long denominator)
    {
        long whole = parts / denominator, top = parts % denominator;
        if (top == 0)
        {
            return Digits(whole);
        }

        while (top % 2 == 0)
        {
            top /= 2;
            denominator /= 2;
        }

        return (whole == 0 ? string.Empty : Digits(whole) + "-") + Digits(top) + "/" + Digits(denominator);
    }

    /// <summary>The nearest whole number to a ratio, half away from zero.</summary>
    private static long RoundRatio(long amount, long unit)
    {
        long size = ((2 * Math.Abs(amount)) + unit) / (2 * unit);
        return amount < 0 ? -size : size;
    }

    private static string Digits(long number) => number.ToString(CultureInfo.InvariantCulture);
}
