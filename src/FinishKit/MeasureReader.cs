using System;
using System.Globalization;
using System.Text;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>
/// Reads one length from text, character by character: each character is looked at a bounded number of times and nothing depends
/// on culture. What could be read in two ways is refused with the reason.
/// </summary>
/// <remarks>
/// <code>
/// length   = [sign] number unit | [sign] whole feet [hyphen] number inches
/// number   = digits [ "." digits ] | "." digits | fraction | digits (space | "-") fraction
/// fraction = digits "/" digits | one of ½ ⅓ ⅔ ¼ ¾ ⅛ ⅜ ⅝ ⅞
/// </code>
/// </remarks>
internal sealed class MeasureReader
{
    internal const int MostCharacters = 100;

    internal const double MostMillimetres = 1e6;

    private const int MostDenominator = 1000;

    /// <summary>Whole numbers up to here, and powers of ten, are exact as double, so that their quotient is the nearest double.</summary>
    private const int ExactDigits = 15;

    private const string LengthWords = "a number and its unit (mm, cm, m, in, ft, ' or \"), such as 19 mm, 0.5 m, 3/4 in, 1-1/4\" or 5' 8-1/2\"";

    private const string NumberWords = "a number of inches without unit, such as 5/8, 1-1/4 or 0.75";

    private static readonly Allowed s_range = new(-MostMillimetres, MostMillimetres, "mm");

    private readonly string _text;
    private readonly string _words;
    private int _at;
    private string _refused = string.Empty;
    private string _allowed = string.Empty;
    private bool _isRange;

    private MeasureReader(string text, string words)
    {
        _text = text;
        _words = words;
    }

    private enum Unit
    {
        Millimetre,
        Centimetre,
        Metre,
        Inch,
        Foot,
    }

    private bool IsAtEnd => _at == _text.Length;

    private char Next => _at < _text.Length ? _text[_at] : '\0';

    /// <summary>Reads a number with its unit.</summary>
    /// <returns>The problem, or null if there is none.</returns>
    internal static InputProblem? ReadLength(string? text, string parameter, out Length length) =>
        Read(text, parameter, LengthWords, static reader => reader.ReadNumberAndUnit(), out length);

    /// <summary>Reads a number of inches that stands without unit.</summary>
    /// <returns>The problem, or null if there is none.</returns>
    internal static InputProblem? ReadInches(string? text, string parameter, out Length length) =>
        Read(text, parameter, NumberWords, static reader => reader.ReadNumberAlone(), out length);

    private static InputProblem? Read(string? text, string parameter, string words, Func<MeasureReader, Length?> read, out Length length)
    {
        length = default;
        if (text is null)
        {
            return new InputProblem(parameter, InputProblem.MissingValue, words, isRange: false);
        }

        if (text.Length > MostCharacters)
        {
            string begin = Quote(text.Substring(0, 20));
            return new InputProblem(
                parameter,
                FormattableString.Invariant($"{text.Length} characters long, beginning {begin}"),
                FormattableString.Invariant($"at most {MostCharacters} characters"),
                isRange: false);
        }

        MeasureReader reader = new(text.Trim(), words);
        if (read(reader) is not { } found)
        {
            return new InputProblem(parameter, Quote(text) + ", " + reader._refused, reader._allowed, reader._isRange);
        }

        length = found;
        return null;
    }

    private Length? ReadNumberAndUnit()
    {
        if (!ReadBeginning(out int sign) || !ReadNumber(out Number number) || !ReadUnit(out Unit unit))
        {
            return null;
        }

        bool isSpaced = SkipSpaces();
        if (IsAtEnd)
        {
            return unit switch
            {
                Unit.Inch => ToInches(sign, number, 1),
                Unit.Foot => ToInches(sign, number, 12),
                _ when number.IsFraction => Refuse("a fraction of a metric unit", "a fraction of inches or feet, or decimals: 1.5 mm"),
                Unit.Millimetre => ToMillimetres(sign, number, 1),
                Unit.Centimetre => ToMillimetres(sign, number, 10),
                _ => ToMillimetres(sign, number, 1000),
            };
        }

        return unit == Unit.Foot
            ? ReadInchesAfterFeet(sign, number, isSpaced)
            : Refuse($"with {Rest()} behind the unit", "one number with its unit, or feet and then inches");
    }

    private Length? ReadInchesAfterFeet(int sign, Number feet, bool isSpaced)
    {
        if (!feet.IsWhole)
        {
            return Refuse("inches behind feet that are not a whole number", "whole feet and then inches: 5' 6\", or feet alone: 5.5 ft");
        }

        if (IsHyphen(Next))
        {
            _at++;
            if (SkipSpaces() != isSpaced)
            {
                return Refuse("a hyphen with a space on one side only, which may be a minus", "feet and inches as 2'-4\", 2' - 4\" or 2' 4\"");
            }
        }

        if (!ReadNumber(out Number inches) || !ReadUnit(out Unit unit))
        {
            return null;
        }

        if (unit != Unit.Inch)
        {
            return Refuse("feet followed by something other than inches", "feet and then inches: 5' 8-1/2\"");
        }

        SkipSpaces();
        if (!IsAtEnd)
        {
            return Refuse($"with {Rest()} behind the inches", "feet and then inches: 5' 8-1/2\"");
        }

        return inches.IsImproper || inches.Top >= 12 * inches.Bottom
            ? Refuse(
                inches.IsImproper ? "a fraction of 1 or more behind a whole number" : "12 inches or more behind feet",
                "feet and then less than 12 inches, in them a fraction of less than 1: 6' 2\"")
            : ToInches(sign, new Number((feet.Top * 12 * inches.Bottom) + inches.Top, inches.Bottom), 1);
    }

    private Length? ReadNumberAlone()
    {
        if (!ReadBeginning(out int sign) || !ReadNumber(out Number number))
        {
            return null;
        }

        SkipSpaces();
        return IsAtEnd
            ? ToInches(sign, number, 1)
            : Refuse($"with {Rest()} behind the number", NumberWords + "; Measure.Parse reads numbers with a unit");
    }

    private Length? ToMillimetres(int sign, Number number, int factor)
    {
        double millimetres = Signed(sign, Grid.Snap(number.Top * factor / number.Bottom));
        return IsInRange(millimetres) ? new Length(millimetres, LengthUnit.Millimeter) : null;
    }

    private Length? ToInches(int sign, Number number, int factor)
    {
        double inches = Signed(sign, number.Top * factor / number.Bottom);
        return IsInRange(Grid.Snap(inches * 25.4)) ? new Length(inches, LengthUnit.Inch) : null;
    }

    /// <summary>Never -0.</summary>
    private static double Signed(int sign, double size) => size == 0 ? 0 : sign * size;

    private bool IsInRange(double millimetres)
    {
        if (s_range.Holds(millimetres))
        {
            return true;
        }

        Refuse($"{Print.Number(millimetres)} mm", s_range.ToString());
        _isRange = true;
        return false;
    }

    /// <summary>What concerns the whole text, then the sign.</summary>
    private bool ReadBeginning(out int sign)
    {
        sign = Next is '-' or '\u2212' ? -1 : 1;
        if (_text.Length == 0)
        {
            return RefuseFalse("empty", _words);
        }

        if (HasComma())
        {
            return RefuseFalse("with a comma, which may stand before decimals or between thousands", "a dot before decimals and nothing between thousands: 1.5 mm, 1500 mm");
        }

        if (Next is not ('-' or '\u2212' or '+'))
        {
            return true;
        }

        _at++;
        return !IsSpace(Next) || RefuseFalse("a space between sign and number", "a sign right before the number: -0.5 mm");
    }

    private bool ReadNumber(out Number number)
    {
        number = default;
        int start = _at;
        int digits = SkipDigits();
        if (Next == '.')
        {
            return ReadDecimals(start, digits, out number);
        }

        if (digits == 0)
        {
            return ReadVulgarFraction(out number)
                || RefuseFalse(IsAtEnd ? "no number at the end" : $"no number at {Rest()}", _words);
        }

        double whole = ToDouble(start, digits);
        if (IsSlash(Next))
        {
            return ReadDenominator(whole, out number);
        }

        // A whole number may have a fraction behind it: 1 1/4, 1-1/4, 1½. What else follows is left for the unit.
        int end = _at;
        if (IsHyphen(Next))
        {
            _at++;
        }
        else
        {
            SkipSpaces();
        }

        int top = _at;
        if (ReadVulgarFraction(out Number fraction))
        {
            number = fraction.PlusWhole(whole);
            return true;
        }

        int topDigits = SkipDigits();
        if (topDigits > 0 && IsSlash(Next))
        {
            if (!ReadDenominator(ToDouble(top, topDigits), out fraction))
            {
                return false;
            }

            number = fraction.PlusWhole(whole);
            return !fraction.IsImproper || RefuseFalse("a fraction of 1 or more behind a whole number", "a fraction of less than 1 behind a whole number: 1-1/8 in, or a fraction alone: 9/8 in");
        }

        _at = end;
        number = Number.OfWhole(whole);
        return true;
    }

    private bool ReadDecimals(int start, int wholeDigits, out Number number)
    {
        number = default;
        _at++;
        int decimals = SkipDigits();
        if (decimals == 0)
        {
            return RefuseFalse("a dot without decimals behind it", "digits on both sides of the dot: 0.75 in");
        }

        if (Next == '.')
        {
            return RefuseFalse("more than one dot in a number", "one dot, before the decimals: 1.5 mm");
        }

        if (IsSlash(Next))
        {
            return RefuseFalse("a fraction of decimals", "whole numbers above and below the slash: 3/4 in");
        }

        double bottom = 1;
        if (wholeDigits + decimals > ExactDigits)
        {
            number = new Number(ToDouble(start, _at - start), bottom);
            return true;
        }

        for (int i = 0; i < decimals; i++)
        {
            bottom *= 10;
        }

        number = new Number(ToDouble(_text.Substring(start, _at - start).Remove(wholeDigits, 1)), bottom);
        return true;
    }

    private bool ReadDenominator(double top, out Number number)
    {
        number = default;
        _at++;
        int start = _at;
        int digits = SkipDigits();
        double bottom = digits == 0 ? 0 : ToDouble(start, digits);
        if (bottom is < 1 or > MostDenominator)
        {
            return RefuseFalse(
                digits == 0 ? "no number below the slash" : $"a fraction over {Quote(_text.Substring(start, digits))}",
                FormattableString.Invariant($"a whole number from 1 to {MostDenominator} below the slash: 3/4 in"));
        }

        if (IsSlash(Next))
        {
            return RefuseFalse("two slashes in one fraction", "one number above and one below the slash: 3/4 in");
        }

        number = Number.OfFraction(top, bottom);
        return true;
    }

    private bool ReadVulgarFraction(out Number number)
    {
        number = Vulgar(Next);
        if (!number.IsFraction)
        {
            return false;
        }

        _at++;
        return true;
    }

    private bool ReadUnit(out Unit unit)
    {
        unit = default;
        SkipSpaces();
        if (IsAtEnd)
        {
            return RefuseFalse("a number without a unit", "a unit behind every number, mm or in: 19 mm, 3/4 in");
        }

        if (IsFootMark(Next) || IsInchMark(Next))
        {
            // Two foot marks are how a keyboard without typographic marks writes seconds, here inches.
            bool isDoubled = IsFootMark(Next) && _at + 1 < _text.Length && _text[_at + 1] == Next;
            unit = isDoubled || IsInchMark(Next) ? Unit.Inch : Unit.Foot;
            _at += isDoubled ? 2 : 1;
            return true;
        }

        int start = _at;
        while (char.IsLetter(Next))
        {
            _at++;
        }

        string word = _text.Substring(start, _at - start);
        if (word.Length == 0)
        {
            return RefuseUnit();
        }

        if (word is "M" or "Mm")
        {
            return RefuseFalse($"with the unit {word}, which may be meant as {(word == "M" ? "metres or millions" : "millimetres or megametres")}", "m or mm in small letters");
        }

        if (UnitOf(word) is not { } known)
        {
            return RefuseFalse(
                word is "e" or "E" && (IsDigit(Next) || Next is '+' or '-') ? "a number with an exponent" : $"with {Quote(word)} where a unit should stand",
                "a number written out, with one of the units mm, cm, m, in, inch, inches, ft, foot, feet, ' and \"");
        }

        unit = known;
        if (Next == '.' && word.Length == 2 && unit is Unit.Inch or Unit.Foot)
        {
            _at++; // in. and ft. are common abbreviations
        }

        return true;
    }

    private bool RefuseUnit()
    {
        if (IsHyphen(Next) || Next is '\u2013' or '\u2014' or '\u2212')
        {
            return RefuseFalse("a dash behind a number, which may be a minus or a range", "a hyphen between whole number and fraction without spaces, 1-1/4 in, or between feet and inches, 2'-4\"");
        }

        return IsDigit(Next) || Vulgar(Next).IsFraction
            ? RefuseFalse("two numbers in a row", "one number before each unit, nothing between thousands: 1500 mm, 1 1/4 in")
            : RefuseFalse($"with {Rest()} where a unit should stand", _words);
    }

    private static Unit? UnitOf(string word)
    {
        return Is("mm") ? Unit.Millimetre
            : Is("cm") ? Unit.Centimetre
            : Is("m") ? Unit.Metre
            : Is("in") || Is("inch") || Is("inches") ? Unit.Inch
            : Is("ft") || Is("foot") || Is("feet") ? Unit.Foot
            : null;

        bool Is(string name) => string.Equals(word, name, StringComparison.OrdinalIgnoreCase);
    }

    private static Number Vulgar(char c) => c switch
    {
        '½' => Number.OfFraction(1, 2),
        '⅓' => Number.OfFraction(1, 3),
        '⅔' => Number.OfFraction(2, 3),
        '¼' => Number.OfFraction(1, 4),
        '¾' => Number.OfFraction(3, 4),
        '⅛' => Number.OfFraction(1, 8),
        '⅜' => Number.OfFraction(3, 8),
        '⅝' => Number.OfFraction(5, 8),
        '⅞' => Number.OfFraction(7, 8),
        _ => default,
    };

    private static bool IsDigit(char c) => c is >= '0' and <= '9';

    private static bool IsSlash(char c) => c is '/' or '\u2044';

    private static bool IsHyphen(char c) => c is '-' or '\u2010' or '\u2011';

    /// <summary>Apostrophe, closing quotation mark, prime.</summary>
    private static bool IsFootMark(char c) => c is '\'' or '\u2019' or '\u2032';

    /// <summary>Quotation mark, closing quotation mark, double prime.</summary>
    private static bool IsInchMark(char c) => c is '"' or '\u201D' or '\u2033';

    /// <summary>Space, tab, no-break space, thin space, narrow no-break space.</summary>
    private static bool IsSpace(char c) => c is ' ' or '\t' or '\u00A0' or '\u2009' or '\u202F';

    private bool HasComma()
    {
        foreach (char c in _text)
        {
            if (c == ',')
            {
                return true;
            }
        }

        return false;
    }

    private bool SkipSpaces()
    {
        int start = _at;
        while (IsSpace(Next))
        {
            _at++;
        }

        return _at > start;
    }

    private int SkipDigits()
    {
        int start = _at;
        while (IsDigit(Next))
        {
            _at++;
        }

        return _at - start;
    }

    private double ToDouble(int start, int count) => ToDouble(_text.Substring(start, count));

    private static double ToDouble(string digits) => double.Parse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private Length? Refuse(string what, string allowed)
    {
        RefuseFalse(what, allowed);
        return null;
    }

    private bool RefuseFalse(string what, string allowed)
    {
        _refused = what;
        _allowed = allowed;
        return false;
    }

    private string Rest() => Quote(_text.Substring(_at));

    /// <summary>Text in quotation marks, with control characters and lone surrogates shown as a question mark, so that a message stays one plain line.</summary>
    private static string Quote(string text)
    {
        StringBuilder quoted = new("\u201C", text.Length + 2);
        foreach (char c in text)
        {
            quoted.Append(char.IsControl(c) || char.IsSurrogate(c) || char.GetUnicodeCategory(c) is UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator ? '?' : c);
        }

        return quoted.Append('\u201D').ToString();
    }

    /// <summary>A number as the quotient of two, each exact as double where the text allows it.</summary>
    private readonly struct Number(double top, double bottom)
    {
        internal double Top { get; } = top;

        internal double Bottom { get; } = bottom;

        internal bool IsWhole { get; private init; }

        internal bool IsFraction { get; private init; }

        /// <summary>A fraction of 1 or more without a whole number before it.</summary>
        internal bool IsImproper { get; private init; }

        internal static Number OfWhole(double whole) => new(whole, 1) { IsWhole = true };

        internal static Number OfFraction(double top, double bottom) => new(top, bottom) { IsFraction = true, IsImproper = top >= bottom };

        internal Number PlusWhole(double whole) => new((whole * Bottom) + Top, Bottom) { IsFraction = true };
    }
}
