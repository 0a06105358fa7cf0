using System;
using System.Collections.Generic;
using System.Globalization;
using UnitsNet;

namespace FinishKit;

/// <summary>Who shares a deviation.</summary>
public enum DeviationScope
{
    /// <summary>One sheet, one board, one box of nails: every fastener of the job meets the same deviation. Either none touches or whole rows do.</summary>
    Batch = 0,

    /// <summary>Each fastener has its own: set depth, a local gap.</summary>
    Each = 1,
}

/// <summary>
/// A length with its signed lower and upper deviation, and whether the deviation is shared by a batch or each piece's own.
/// A plain <see cref="Length"/> converts implicitly and has no deviation.
/// </summary>
/// <remarks>
/// The length as given is stored unchecked, so that a <c>Check</c> method can report it; the derived members check it. The
/// default value is exactly zero. Two values are equal when nominal and both deviations agree on the 1 nm grid, whatever their
/// units, and the deviations are shared alike.
/// </remarks>
public readonly struct TolerancedLength : IEquatable<TolerancedLength>
{
    private const string ScopeWords = "Batch or Each";

    private static readonly Allowed s_any = new(-1e9, 1e9, "mm");

    /// <summary>A deviation over a metre is a slip of the unit, whatever it is of.</summary>
    private static readonly Allowed s_deviation = new(-1e3, 1e3, "mm");

    /// <summary>Makes a length with deviations.</summary>
    /// <param name="nominal">The nominal length.</param>
    /// <param name="lower">Lower deviation, signed: -0.5 mm where the piece may be 0.5 mm under nominal; up to 1 m, as the upper one.</param>
    /// <param name="upper">Upper deviation, signed; not below <paramref name="lower"/>.</param>
    /// <param name="scope">Who shares the deviation.</param>
    public TolerancedLength(Length nominal, Length lower, Length upper, DeviationScope scope = DeviationScope.Batch)
    {
        Nominal = nominal;
        Lower = lower;
        Upper = upper;
        Scope = scope;
    }

    /// <summary>The nominal length.</summary>
    public Length Nominal { get; }

    /// <summary>Lower deviation, signed.</summary>
    public Length Lower { get; }

    /// <summary>Upper deviation, signed.</summary>
    public Length Upper { get; }

    /// <summary>Who shares the deviation.</summary>
    public DeviationScope Scope { get; }

    /// <summary>The least length: nominal plus lower deviation.</summary>
    /// <exception cref="ArgumentException">A length is in an undefined unit, or the lower deviation exceeds the upper.</exception>
    public Length Least => Door.Millimetres(Read().Least);

    /// <summary>The greatest length: nominal plus upper deviation.</summary>
    /// <exception cref="ArgumentException">A length is in an undefined unit, or the lower deviation exceeds the upper.</exception>
    public Length Greatest => Door.Millimetres(Read().Greatest);

    /// <summary>The middle of the tolerance: where root-sum-square takes the mean.</summary>
    /// <exception cref="ArgumentException">A length is in an undefined unit, or the lower deviation exceeds the upper.</exception>
    public Length Middle => Door.Millimetres(Read().Middle);

    /// <summary>Standard deviation: a sixth of the tolerance's width (the deviations are read as ±3 sigma).</summary>
    /// <exception cref="ArgumentException">A length is in an undefined unit, or the lower deviation exceeds the upper.</exception>
    public Length Sigma => Door.Millimetres(Read().Sigma);

    /// <summary>A length without deviation.</summary>
    /// <param name="length">The length.</param>
    public static implicit operator TolerancedLength(Length length) => FromLength(length);

    /// <summary>Whether two lengths and their deviations agree on the 1 nm grid.</summary>
    /// <param name="left">One length.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree.</returns>
    public static bool operator ==(TolerancedLength left, TolerancedLength right) => left.Equals(right);

    /// <summary>Whether two lengths or their deviations differ on the 1 nm grid.</summary>
    /// <param name="left">One length.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they differ.</returns>
    public static bool operator !=(TolerancedLength left, TolerancedLength right) => !left.Equals(right);

    /// <summary>A length without deviation.</summary>
    /// <param name="length">The length.</param>
    /// <returns>The same length with deviations of zero.</returns>
    public static TolerancedLength FromLength(Length length) => new(length, default, default);

    /// <summary>A length with equal deviations to both sides.</summary>
    /// <param name="nominal">The nominal length.</param>
    /// <param name="deviation">The deviation to each side [length], 0 to 1 m.</param>
    /// <param name="scope">Who shares the deviation.</param>
    /// <returns>nominal ± deviation.</returns>
    /// <exception cref="ArgumentException"><paramref name="deviation"/> is negative, over 1 m or in an undefined unit, or the scope is none.</exception>
    public static TolerancedLength PlusMinus(Length nominal, Length deviation, DeviationScope scope = DeviationScope.Batch)
    {
        double millimetres = Door.Millimetres(deviation, nameof(deviation), new Allowed(0, s_deviation.Most, "mm"), null);
        return new(nominal, Door.Millimetres(-millimetres), Door.Millimetres(millimetres), Named(scope));
    }

    /// <summary>A length known by its least and greatest value, its nominal in the middle unless given.</summary>
    /// <param name="least">The least length.</param>
    /// <param name="greatest">The greatest length.</param>
    /// <param name="scope">Who shares the deviation.</param>
    /// <returns>The length.</returns>
    /// <exception cref="ArgumentException">A length is over 1000 km or in an undefined unit, <paramref name="greatest"/> is below <paramref name="least"/> or more than 2 m above it, or the scope is none.</exception>
    public static TolerancedLength Between(Length least, Length greatest, DeviationScope scope = DeviationScope.Batch)
    {
        double low = Door.Millimetres(least, nameof(least), s_any, null);
        double high = Door.Millimetres(greatest, nameof(greatest), new Allowed(low, Math.Min(s_any.Most, low + (2 * s_deviation.Most)), "mm"), null);
        double middle = Grid.Snap((low + high) / 2);
        return new(Door.Millimetres(middle), Door.Millimetres(Grid.Snap(low - middle)), Door.Millimetres(Grid.Snap(high - middle)), Named(scope));
    }

    /// <summary>Adds lengths end to end, both ways of counting their deviations kept: worst case and root-sum-square.</summary>
    /// <param name="terms">One to 1000 lengths; a negative nominal is taken off.</param>
    /// <returns>The sum.</returns>
    /// <remarks>
    /// <para>Formula: worst case = sum of least, sum of greatest; mean = sum of middles; sigma = sqrt(sum of sigma²).</para>
    /// <para>Source: derived, sum of independent variances; a tolerance is read as ±3 sigma.</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="terms"/> is null.</exception>
    /// <exception cref="ArgumentException">There are no terms or more than 1000, or a term is in an undefined unit or has its deviations the wrong way round.</exception>
    public static TolerancedSum Sum(IReadOnlyList<TolerancedLength> terms)
    {
        Door.IsMissing(terms, new Name(nameof(terms)), "1 to 1000 lengths", null);
        if (terms.Count is < 1 or > 1000)
        {
            throw new InputProblem(nameof(terms), terms.Count + " lengths", "1 to 1000 lengths", isRange: true).ToException();
        }

        double nominal = 0, least = 0, greatest = 0, mean = 0, batch = 0, own = 0;
        for (int i = 0; i < terms.Count; i++)
        {
            Span term = terms[i].Read(new Name(nameof(terms), i), s_any, null);
            nominal += term.Nominal;
            least += term.Least;
            greatest += term.Greatest;
            mean += term.Middle;
            batch += term.BatchVariance;
            own += term.OwnVariance;
        }

        return new TolerancedSum(nominal, least, greatest, mean, Math.Sqrt(batch), Math.Sqrt(own));
    }

    /// <inheritdoc/>
    public bool Equals(TolerancedLength other) => Scope == other.Scope
        && Door.Millimetres(Nominal).Equals(Door.Millimetres(other.Nominal))
        && Door.Millimetres(Lower).Equals(Door.Millimetres(other.Lower))
        && Door.Millimetres(Upper).Equals(Door.Millimetres(other.Upper));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is TolerancedLength other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Door.Millimetres(Nominal).GetHashCode() * 397) ^ Door.Millimetres(Lower).GetHashCode() ^ (Door.Millimetres(Upper).GetHashCode() * 31));

    /// <summary>Nominal and deviations in millimetres, invariant: <c>15 mm +0.6/-0.8</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        double lower = Door.Millimetres(Lower), upper = Door.Millimetres(Upper);
        string text = Print.Mm(Door.Millimetres(Nominal));
        return lower == 0 && upper == 0 ? text : text + " " + DeviationWords(lower, upper);
    }

    /// <summary><c>± 0.5</c> or <c>+0.6/-0.8</c>.</summary>
    internal static string DeviationWords(double lower, double upper)
    {
        return lower == -upper ? "± " + Print.Round(upper, 3) : Signed(upper) + "/" + Signed(lower);

        static string Signed(double value) => (value < 0 ? "-" : "+") + Print.Round(Math.Abs(value), 3);
    }

    /// <summary>The numbers behind it, checked; the door for every calculator that takes one.</summary>
    internal Span Read(Name name, Allowed allowed, List<InputProblem>? problems)
    {
        double nominal = Door.Millimetres(Nominal, name, allowed, problems);
        double lower = Door.Millimetres(Lower, name.Then(".Lower"), s_deviation, problems);
        double upper = Door.Millimetres(Upper, name.Then(".Upper"), s_deviation, problems);
        if (lower > upper)
        {
            Door.Report(new InputProblem(name.Then(".Upper").ToString(), Print.Number(upper) + " mm", $"the lower deviation, {Print.Number(lower)} mm, or more", isRange: true), problems);
        }

        // An unknown scope would count in neither variance, and the chance of touching would come out as none.
        if (!IsNamed(Scope))
        {
            Report(Scope, name.Then(".Scope").ToString(), problems);
        }

        return new Span(nominal, lower, upper, Scope);
    }

    private static bool IsNamed(DeviationScope scope) => scope is DeviationScope.Batch or DeviationScope.Each;

    private static void Report(DeviationScope scope, string parameter, List<InputProblem>? problems) =>
        Door.Report(new InputProblem(parameter, ((int)scope).ToString(CultureInfo.InvariantCulture), ScopeWords, isRange: true), problems);

    private static DeviationScope Named(DeviationScope scope)
    {
        if (!IsNamed(scope))
        {
            Report(scope, nameof(scope), null);
        }

        return scope;
    }

    private Span Read() => Read(new Name(nameof(TolerancedLength)), s_any, null);

    /// <summary>A toleranced length as plain numbers in millimetres.</summary>
    internal readonly struct Span(double nominal, double lower, double upper, DeviationScope scope)
    {
        internal double Nominal { get; } = nominal;

        internal double Lower { get; } = lower;

        internal double Upper { get; } = upper;

        internal double Least => Grid.Snap(Nominal + Lower);

        internal double Greatest => Grid.Snap(Nominal + Upper);

        internal double Middle => Nominal + ((Lower + Upper) / 2);

        internal double Sigma => (Upper - Lower) / 6;

        internal DeviationScope Scope { get; } = scope;

        internal double BatchVariance => Scope == DeviationScope.Batch ? Sigma * Sigma : 0;

        internal double OwnVariance => Scope == DeviationScope.Each ? Sigma * Sigma : 0;
    }
}
