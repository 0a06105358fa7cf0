using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// A run of slats in whole nanometres. Gaps and end slats are kept as whole numbers over <see cref="Over"/>, so that what fits
/// and where a mark falls is exact.
/// </summary>
internal sealed class SlatNumbers
{
    private const double NanometresPerMillimetre = 1e6;

    private static readonly Allowed s_width = new(Allowed.OneStep, 1e5, "mm");
    private static readonly Allowed s_slat = new(5, 1000, "mm");
    private static readonly Allowed s_gap = new(0, 1000, "mm");

    private readonly long[] _widths;
    private readonly long _sum;

    private SlatNumbers(SlatRun run, long[] widths, long slat, long leastGap, long greatestGap)
    {
        Run = run;
        _widths = widths;
        Slat = slat;
        LeastGap = leastGap;
        GreatestGap = greatestGap;
        foreach (long width in widths)
        {
            _sum += width;
        }
    }

    internal SlatRun Run { get; }

    internal long Slat { get; }

    internal long LeastGap { get; }

    internal long GreatestGap { get; }

    internal int Stations => _widths.Length;

    internal bool Closed => Run.Ends == SlatEnds.Closed;

    internal bool Tapered => Run.Taper == SlatTaper.EndSlatsTapered;

    internal long Step => Run.RoundTo == SetOutStep.SixteenthInch ? 1_587_500 : 1_000_000;

    /// <summary>Both ends need a slat of their own where they are closed or tapered.</summary>
    internal int FewestSlats => Closed || Tapered ? 2 : 1;

    internal long Narrowest => Extreme(Math.Min);

    internal long Widest => Extreme(Math.Max);

    internal static SlatNumbers? Read(SlatRun run, string path, List<InputProblem>? problems)
    {
        string before = path.Length == 0 ? string.Empty : path + ".";
        double width = Door.Millimetres(run.Width, before + Member(path, nameof(run.Width)), s_width, problems);
        double slat = Door.Millimetres(run.SlatWidth, before + Member(path, nameof(run.SlatWidth)), s_slat, problems);
        double least = run.LeastGap is { } g1 ? Door.Millimetres(g1, before + Member(path, nameof(run.LeastGap)), s_gap, problems) : SlatDefaults.LeastGap;
        double greatest = run.GreatestGap is { } g2 ? Door.Millimetres(g2, before + Member(path, nameof(run.GreatestGap)), s_gap, problems) : SlatDefaults.GreatestGap;
        if (greatest < least)
        {
            // Where only the least gap was given it is that one which does not fit.
            bool isLeast = run.GreatestGap is null;
            Door.Report(
                new InputProblem(
                    before + Member(path, isLeast ? nameof(run.LeastGap) : nameof(run.GreatestGap)),
                    Print.Number(isLeast ? least : greatest) + " mm",
                    isLeast ? $"at most the greatest gap, {Print.Number(greatest)} mm unless given" : $"the least gap, {Print.Number(least)} mm, or more",
                    isRange: true),
                problems);
        }

        Choice(run.Ends, SlatEnds.Closed, SlatEnds.Open, before + nameof(run.Ends), problems);
        Choice(run.Taper, SlatTaper.VaryingGap, SlatTaper.EndSlatsTapered, before + nameof(run.Taper), problems);
        Choice(run.RoundTo, SetOutStep.WholeMillimetre, SetOutStep.SixteenthInch, before + nameof(run.RoundTo), problems);
        long[] widths = ReadStations(run, before + nameof(run.Stations), problems);
        if (problems is { Count: > 0 })
        {
            return null;
        }

        widths[0] = Whole(width);
        return new SlatNumbers(run, widths, Whole(slat), Whole(least), Whole(greatest));
    }

    internal double WidthAt(int station) => _widths[station] / NanometresPerMillimetre;

    internal double Sum => _sum / NanometresPerMillimetre;

    internal int Gaps(int slats) => Closed ? slats - 1 : slats + 1;

    /// <summary>What gaps, end slats and positions are whole numbers over.</summary>
    internal long Over(int slats) => 2L * Stations * Gaps(slats);

    internal long Gap(int slats, int station) => Tapered ? 2 * (_sum - (Stations * slats * Slat)) : 2 * Stations * (_widths[station] - (slats * Slat));

    internal long EndSlat(int slats, int station) => (Over(slats) * Slat) + (Tapered ? Gaps(slats) * ((Stations * _widths[station]) - _sum) : 0);

    /// <summary>The left edge of a slat, from the left end of the face at that station.</summary>
    internal long LeftEdge(int slats, int station, int slat)
    {
        long gap = Gap(slats, station), first = Closed ? 0 : gap;
        return slat == 0 ? first : first + EndSlat(slats, station) + gap + ((slat - 1) * ((Over(slats) * Slat) + gap));
    }

    internal bool Fits(int slats, int station) => Outside(this, slats, station) == 0 && EndSlat(slats, station) > 0;

    /// <summary>How far the gap is out of the range.</summary>
    internal static long Outside(SlatNumbers run, int slats, int station)
    {
        long gap = run.Gap(slats, station), over = run.Over(slats);
        return Math.Max(0, Math.Max((over * run.LeastGap) - gap, gap - (over * run.GreatestGap)));
    }

    /// <summary>How far twice the gap is from twice the middle of the range.</summary>
    internal static long OffMiddle(SlatNumbers run, int slats, int station) => Math.Abs((2 * run.Gap(slats, station)) - (run.Over(slats) * (run.LeastGap + run.GreatestGap)));

    /// <summary>Widths of slat at which so many serve every station, in nanometres; the least is above the greatest where none does.</summary>
    internal (long Least, long Greatest) SlatWidthsFor(int slats)
    {
        // In units of a nanometre over the number of stations: with tapered ends the mean width counts.
        long widest = Tapered ? _sum : Stations * Widest, narrowest = Tapered ? _sum : Stations * Narrowest;
        long least = CeilingOf(widest - (Stations * Gaps(slats) * GreatestGap), (long)Stations * slats);
        long greatest = FloorOf(narrowest - (Stations * Gaps(slats) * LeastGap), (long)Stations * slats);
        if (Tapered)
        {
            least = Math.Max(least, FloorOf(_sum - (Stations * Narrowest), 2L * Stations) + 1);
        }

        return (Math.Max(least, Whole(s_slat.Least)), Math.Min(greatest, Whole(s_slat.Most)));
    }

    /// <summary>Slats whose gap lies in the range at one station or another lie between these two, both counted.</summary>
    internal (int Fewest, int Most) CountsInRange()
    {
        // Closed: n (w + g) = W + g. Open: n (w + g) = W - g.
        long sign = Closed ? 1 : -1;
        long fewest = CeilingOf(Narrowest + (sign * GreatestGap), Slat + GreatestGap), most = FloorOf(Widest + (sign * LeastGap), Slat + LeastGap);
        return ((int)Math.Max(fewest, FewestSlats), (int)most);
    }

    internal static double Millimetres(long nanometres, long over) => nanometres / (double)over / NanometresPerMillimetre;

    internal static long FloorOf(long amount, long unit) => amount >= 0 ? amount / unit : -((unit - 1 - amount) / unit);

    internal static long CeilingOf(long amount, long unit) => -FloorOf(-amount, unit);

    private static long Whole(double millimetres) => (long)Math.Round(millimetres * NanometresPerMillimetre);

    /// <summary>A member of the record, or the parameter of the same name where there is no record.</summary>
    private static string Member(string path, string name) => path.Length == 0 ? char.ToLowerInvariant(name[0]) + name.Substring(1) : name;

    private static void Choice<TEnum>(TEnum value, TEnum first, TEnum second, string parameter, List<InputProblem>? problems)
        where TEnum : struct, Enum
    {
        if (!value.Equals(first) && !value.Equals(second))
        {
            Door.Report(new InputProblem(parameter, value.ToString("D"), $"{first} or {second}", isRange: true), problems);
        }
    }

    private static long[] ReadStations(SlatRun run, string parameter, List<InputProblem>? problems)
    {
        int count = run.Stations?.Count ?? 0;
        if (count > SlatSpread.MostStations)
        {
            Door.Report(new InputProblem(parameter, $"{count} stations", $"at most {SlatSpread.MostStations} stations", isRange: true), problems);
            count = 0;
        }

        long[] widths = new long[count + 1];
        for (int i = 0; i < count; i++)
        {
            double width = Door.Millimetres(run.Stations![i], new Name(parameter, i), s_width, problems);
            widths[i + 1] = double.IsNaN(width) ? 0 : Whole(width);
        }

        return widths;
    }

    private long Extreme(Func<long, long, long> pick)
    {
        long extreme = _widths[0];
        foreach (long width in _widths)
        {
            extreme = pick(extreme, width);
        }

        return extreme;
    }
}
