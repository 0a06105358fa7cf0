using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>How many slats fill a width with equal gaps: every number that does, the one to take, and where each slat goes.</summary>
public static class SlatSpread
{
    internal const int MostStations = 50;

    private const string RunWords = "a run of slats";

    /// <summary>Slats over one width, with a slat at each end.</summary>
    /// <param name="width">Width to fill [length], square to the slats, more than 0 up to 100 m.</param>
    /// <param name="slatWidth">Width of a slat [length], 5 mm to 1 m.</param>
    /// <param name="leastGap">Least gap [length], 0 to 1 m.</param>
    /// <param name="greatestGap">Greatest gap [length], from the least gap, 0 or more, up to 1 m.</param>
    /// <returns>Every number of slats whose gap is in the range, and the one recommended.</returns>
    /// <remarks>
    /// <para>Formula: g = (W - n w)/(n - 1); coverage n w/W. Recommended: gap nearest the middle of the range; then fewer slats. Decided on whole nanometres, exactly.</para>
    /// <para>Validity: slats of one width; on a curve the width is the length along the battens' surface.</para>
    /// <para>Source: slats-spread (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    /// <exception cref="ArgumentException">A length is in an undefined unit.</exception>
    /// <example><code>
    /// SlatChoice ceiling = SlatSpread.Spread(Mm(1500), Mm(40), Mm(6), Mm(10));
    /// int slats = ceiling.Recommended!.Count;             // 31
    /// Length gap = ceiling.Recommended.Gaps[0];           // 8.667 mm: (1500 - 31 x 40)/30
    /// double cover = ceiling.Recommended.Coverages[0];    // 0.827
    /// </code></example>
    public static SlatChoice Spread(Length width, Length slatWidth, Length leastGap, Length greatestGap) =>
        Choose(SlatNumbers.Read(Run(width, slatWidth, leastGap, greatestGap), string.Empty, null)!);

    /// <summary>All problems with the input of <see cref="Spread(Length, Length, Length, Length)"/>; nothing is thrown.</summary>
    /// <param name="width">As there.</param>
    /// <param name="slatWidth">As there.</param>
    /// <param name="leastGap">As there.</param>
    /// <param name="greatestGap">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckSpread(Length width, Length slatWidth, Length leastGap, Length greatestGap)
    {
        List<InputProblem> problems = [];
        SlatNumbers.Read(Run(width, slatWidth, leastGap, greatestGap), string.Empty, problems);
        return problems;
    }

    /// <summary>Slats over a face, which may taper.</summary>
    /// <param name="run">Widths, slats, gaps and ends.</param>
    /// <returns>Every number of slats whose gap is in the range at one station or another, and the one recommended.</returns>
    /// <remarks>
    /// <para>Formula: g = (W - n w)/m at each station, with m = n - 1 gaps where the ends are closed, n + 1 where open; with end slats tapered
    /// g = (mean W - n w)/m at every station, and an end slat is w + (W - mean W)/2. Coverage is slats over width. Recommended: in the
    /// range at every station; then gap nearest the middle of the range (the station furthest from it decides); then fewer slats. Decided on whole nanometres, exactly.</para>
    /// <para>Validity: slats of one width, stations along straight edges or close enough; the mean is of the stations as given.</para>
    /// <para>Source: slats-spread (derived); default-slat-gap (common practice), default-end-slat (judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="run"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A length is in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// SlatRun ceiling = new(Mm(1516), Mm(40)) { Stations = [Mm(1448.5)] }; // front and rear, gaps of 6 to 10 mm
    /// SlatChoice choice = SlatSpread.Spread(ceiling);
    /// int slats = choice.Recommended!.Count;              // 31: 9.2 mm in front, 6.95 mm at the rear
    /// SlatSetOut rear = choice.Recommended.SetOut(1);
    /// Length third = rear.Marks[2].Mark;                  // 94 mm: 2 x 46.95 = 93.9, rounded once
    /// </code></example>
    public static SlatChoice Spread(SlatRun run)
    {
        Door.IsMissing(run, new Name(nameof(run)), RunWords, null);
        return Choose(SlatNumbers.Read(run, nameof(run), null)!);
    }

    /// <summary>All problems with a run; nothing is thrown.</summary>
    /// <param name="run">The run.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckSpread(SlatRun run)
    {
        List<InputProblem> problems = [];
        if (!Door.IsMissing(run, new Name(nameof(run)), RunWords, problems))
        {
            SlatNumbers.Read(run, nameof(run), problems);
        }

        return problems;
    }

    /// <summary>The one formula body for gap, end slat and coverage at a station, for the numbers and for the workings.</summary>
    internal static (double Gap, double EndSlat, double Coverage) Solve<TTrace>(SlatNumbers run, int slats, int station, TTrace trace)
        where TTrace : struct, ITrace
    {
        double width = run.WidthAt(station), slat = SlatNumbers.Millimetres(run.Slat, 1), count = slats;
        int index = run.Stations == 1 ? -1 : station + 1;
        trace.Given("W", width, "mm", Sources.Given, index, "width to fill");
        trace.Given("w", slat, "mm", Sources.Given, meaning: "width of a slat");
        trace.Given("n", count, string.Empty, Sources.Given, meaning: "slats");
        double gaps;
        gaps = run.Closed
            ? trace.Step("m", nameof(gaps), count - 1, string.Empty, Sources.SlatSpread)
            : trace.Step("m", nameof(gaps), count + 1, string.Empty, Sources.SlatSpread);
        if (!run.Tapered)
        {
            double gap = trace.Step("g", nameof(gap), (width - (count * slat)) / gaps, "mm", Sources.SlatSpread, index);
            double coverage = trace.Step("k", nameof(coverage), count * slat / width, string.Empty, Sources.SlatSpread, index);
            return (gap, slat, coverage);
        }

        double sum = run.Sum, stations = run.Stations;
        trace.Given("W_sum", sum, "mm", Sources.Given, meaning: "sum of the widths at all stations");
        trace.Given("s", stations, string.Empty, Sources.Given, meaning: "stations");
        double meanWidth = trace.Step("W_mean", nameof(meanWidth), sum / stations, "mm", Sources.SlatSpread);
        double meanGap = trace.Step("g", nameof(meanGap), (meanWidth - (count * slat)) / gaps, "mm", Sources.SlatSpread);
        double endSlat = trace.Step("w_end", nameof(endSlat), slat + ((width - meanWidth) / 2), "mm", Sources.SlatSpread, index);
        double covered = trace.Step("k", nameof(covered), (((count - 2) * slat) + (2 * endSlat)) / width, string.Empty, Sources.SlatSpread, index);
        return (meanGap, endSlat, covered);
    }

    private static SlatRun Run(Length width, Length slatWidth, Length leastGap, Length greatestGap) =>
        new(width, slatWidth) { LeastGap = leastGap, GreatestGap = greatestGap };

    private static SlatChoice Choose(SlatNumbers run)
    {
        List<SlatCount> counts = [];
        SlatCount? recommended = null;
        (int fewest, int most) = run.CountsInRange();
        for (int slats = fewest; slats <= most; slats++)
        {
            int served = StationsServed(run, slats);
            if (served == 0)
            {
                continue;
            }

            SlatCount count = new(run, slats, served == run.Stations);
            counts.Add(count);
            if (count.ServesEveryStation && (recommended is null || IsLess(run, SlatNumbers.OffMiddle, slats, recommended.Count)))
            {
                recommended = count;
            }
        }

        return new SlatChoice(run, counts, recommended, recommended is null ? Remedy(run) : null);
    }

    private static int StationsServed(SlatNumbers run, int slats)
    {
        int served = 0;
        for (int station = 0; station < run.Stations; station++)
        {
            served += run.Fits(slats, station) ? 1 : 0;
        }

        return served;
    }

    /// <summary>The number that comes nearest, and what would let it, or another, serve.</summary>
    private static SlatRemedy Remedy(SlatNumbers run)
    {
        int nearest = run.FewestSlats;
        long most = SlatNumbers.FloorOf(run.Widest, run.Slat) + 1;
        for (int slats = nearest + 1; slats <= most; slats++)
        {
            if (IsLess(run, SlatNumbers.Outside, slats, nearest))
            {
                nearest = slats;
            }
        }

        int? tapered = null;
        if (!run.Tapered && run.Stations > 1)
        {
            tapered = Spread(run.Run with { Taper = SlatTaper.EndSlatsTapered }).Recommended?.Count;
        }

        return new SlatRemedy(run, new SlatCount(run, nearest, false), tapered);
    }

    /// <summary>Whether a measure, taken at the station where it is greatest, is less for one number of slats than for another.</summary>
    private static bool IsLess(SlatNumbers run, Func<SlatNumbers, int, int, long> measure, int slats, int than)
    {
        long Greatest(int count)
        {
            long greatest = 0;
            for (int station = 0; station < run.Stations; station++)
            {
                greatest = Math.Max(greatest, measure(run, count, station));
            }

            return greatest;
        }

        // A decimal holds these products exactly; a long may not.
        return (decimal)Greatest(slats) * run.Over(than) < (decimal)Greatest(than) * run.Over(slats);
    }
}
