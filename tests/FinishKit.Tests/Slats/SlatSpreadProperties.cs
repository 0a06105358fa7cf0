using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using FsCheck.Xunit;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Slats;

/// <summary>
/// What any spread must do, against an oracle of its own that tries every number, in fractions of whole numbers of any size.
/// </summary>
[Properties(Arbitrary = [typeof(SlatArbitraries)])]
public sealed class SlatSpreadProperties
{
    [Property(MaxTest = 500)]
    public void Every_number_that_fits_is_found_and_the_best_is_recommended(SlatTrial trial)
    {
        SlatRun run = trial.Run;
        Oracle oracle = new(run);
        SlatChoice choice = SlatSpread.Spread(run);
        Assert.Equal(oracle.InRange, choice.Counts.Select(static count => count.Count));
        Assert.Equal(oracle.Serving, choice.Counts.Where(static count => count.ServesEveryStation).Select(static count => count.Count));
        Assert.Equal(oracle.Recommended, choice.Recommended?.Count);
        Assert.Equal(choice.Recommended is null, choice.HasProblem);
        if (choice.Remedy is { } remedy)
        {
            Assert.Equal(oracle.Nearest, remedy.Nearest.Count);
        }
    }

    [Property(MaxTest = 500)]
    public void Slats_and_gaps_fill_the_width_exactly_and_marks_never_drift(SlatTrial trial)
    {
        SlatRun run = trial.Run;
        Oracle oracle = new(run);
        double half = (run.RoundTo == SetOutStep.SixteenthInch ? 1.5875 : 1) / 2;
        foreach (SlatCount count in SlatSpread.Spread(run).Counts)
        {
            for (int station = 0; station < oracle.Widths.Length; station++)
            {
                if (count.Gaps[station].Millimeters < 0 || count.EndSlats[station].Millimeters <= 0)
                {
                    int there = station;
                    Assert.Equal("station", Assert.Throws<ArgumentOutOfRangeException>(() => count.SetOut(there)).ParamName);
                    continue;
                }

                SlatSetOut setOut = count.SetOut(station);
                Assert.Equal(count.Count, setOut.Marks.Count);
                double worst = 0;
                for (int i = 0; i < count.Count; i++)
                {
                    (BigInteger place, BigInteger over) = oracle.LeftEdge(count.Count, station, i);
                    Assert.Equal(Millimetres(place, over), setOut.Marks[i].Exact.Millimeters, 1.5e-6);
                    BigInteger step = run.RoundTo == SetOutStep.SixteenthInch ? 1_587_500 : 1_000_000;
                    BigInteger steps = BigInteger.Divide((2 * place) + (over * step), 2 * over * step); // places are never negative
                    Assert.Equal((double)(steps * step) / 1e6, setOut.Marks[i].Mark.Millimeters);
                    worst = Math.Max(worst, Math.Abs(Millimetres((steps * step * over) - place, over)));
                }

                Assert.Equal(worst, setOut.GreatestError.Millimeters, 1.5e-6);
                Assert.True(setOut.GreatestError.Millimeters <= half);

                // The last slat, and the gap behind it where the ends are open, end at the width.
                double end = setOut.Marks[^1].Exact.Millimeters + count.EndSlats[station].Millimeters + (run.Ends == SlatEnds.Open ? count.Gaps[station].Millimeters : 0);
                Assert.Equal(oracle.Widths[station].Millimetres(), end, 3e-6);
            }
        }
    }

    /// <summary>The left edges of one face are the right edges of its mirror image.</summary>
    [Property]
    public void The_mirrored_set_out_is_the_mirror_image(SlatTrial trial)
    {
        SlatRun run = trial.Run;
        foreach (SlatCount count in SlatSpread.Spread(run).Counts.Where(static count => count.ServesEveryStation))
        {
            SlatSetOut setOut = count.SetOut();
            for (int i = 0; i < count.Count; i++)
            {
                bool isEnd = i == 0 || i == count.Count - 1;
                double right = setOut.Marks[i].Exact.Millimeters + (isEnd ? count.EndSlats[0] : run.SlatWidth).Millimeters;
                Assert.Equal(setOut.Width.Millimeters - right, setOut.Marks[count.Count - 1 - i].Exact.Millimeters, 4e-6);
            }
        }
    }

    [Property]
    public void Twice_every_length_is_the_same_number_and_twice_the_gap(SlatTrial trial)
    {
        SlatRun run = trial.Run;
        SlatRun twice = run with
        {
            Width = Mm(2 * run.Width.Millimeters),
            SlatWidth = Mm(2 * run.SlatWidth.Millimeters),
            LeastGap = Mm(2 * run.LeastGap!.Value.Millimeters),
            GreatestGap = Mm(2 * run.GreatestGap!.Value.Millimeters),
            Stations = [.. run.Stations!.Select(static station => Mm(2 * station.Millimeters))],
        };
        SlatChoice one = SlatSpread.Spread(run), two = SlatSpread.Spread(twice);
        Assert.Equal(one.Counts.Select(static count => count.Count), two.Counts.Select(static count => count.Count));
        Assert.Equal(one.Recommended?.Count, two.Recommended?.Count);
        foreach ((SlatCount small, SlatCount large) in one.Counts.Zip(two.Counts))
        {
            Assert.Equal(2 * small.Gaps[0].Millimeters, large.Gaps[0].Millimeters, 1.5e-6);
            Assert.Equal(small.Coverages[0], large.Coverages[0], 12);
        }
    }

    [Property]
    public void More_slats_have_less_between_them(SlatTrial trial)
    {
        SlatChoice choice = SlatSpread.Spread(trial.Run);
        foreach ((SlatCount fewer, SlatCount more) in choice.Counts.Zip(choice.Counts.Skip(1)))
        {
            Assert.True(fewer.Count < more.Count);
            Assert.All(fewer.Gaps.Zip(more.Gaps), static pair => Assert.True(pair.First.Millimeters > pair.Second.Millimeters));
            Assert.All(fewer.Coverages.Zip(more.Coverages), static pair => Assert.True(pair.First < pair.Second));
        }
    }

    [Property]
    public void Inches_and_millimetres_give_the_same_spread(SlatTrial trial)
    {
        (int w, int s, int g) = (640 + (int)trial.Radius, 16 + (int)trial.SlatWidth, (int)trial.Gap);
        SlatChoice inches = SlatSpread.Spread(Sixtyfourths(w), Sixtyfourths(s), Sixtyfourths(g), Sixtyfourths(g + 16));
        SlatChoice millimetres = SlatSpread.Spread(Mm(25.4 * w / 64), Mm(25.4 * s / 64), Mm(25.4 * g / 64), Mm(25.4 * (g + 16) / 64));
        Assert.Equal(millimetres.Run, inches.Run);
        Assert.Equal(millimetres.Figures(), inches.Figures());
        Assert.Equal(millimetres.Recommended?.SetOut().Marks, inches.Recommended?.SetOut().Marks);

        static Length Sixtyfourths(int count) => new(count / 64.0, LengthUnit.Inch);
    }

    /// <summary>A remedy that is taken cures; a nanometre past a slat width it does not.</summary>
    [Property(MaxTest = 300)]
    public void Every_remedy_cures(SlatTrial trial)
    {
        SlatRun run = trial.Run;
        if (SlatSpread.Spread(run).Remedy is not { } remedy)
        {
            return;
        }

        int nearest = remedy.Nearest.Count;
        if (remedy.LeastGap is { } least)
        {
            Assert.True(Serves(run with { LeastGap = least, GreatestGap = remedy.GreatestGap }, nearest));
        }

        if (remedy.LeastSlatWidth is { } narrowest && remedy.GreatestSlatWidth is { } widest)
        {
            Assert.True(Serves(run with { SlatWidth = narrowest }, nearest));
            Assert.True(Serves(run with { SlatWidth = widest }, nearest));
            Assert.True(narrowest.Millimeters <= 5 || !Serves(run with { SlatWidth = Mm(narrowest.Millimeters - 1e-6) }, nearest));
            Assert.True(widest.Millimeters >= 1000 || !Serves(run with { SlatWidth = Mm(widest.Millimeters + 1e-6) }, nearest));
        }

        if (remedy.CountWithEndSlatsTapered is { } tapered)
        {
            Assert.Equal(tapered, SlatSpread.Spread(run with { Taper = SlatTaper.EndSlatsTapered }).Recommended?.Count);
        }

        static bool Serves(SlatRun changed, int slats) => SlatSpread.Spread(changed).Counts.Any(count => count.Count == slats && count.ServesEveryStation);
    }

    private static double Millimetres(BigInteger amount, BigInteger over) => (double)amount / (double)over / 1e6;

    /// <summary>Every number from one up to more than go in, in whole nanometres over whole numbers.</summary>
    private sealed class Oracle
    {
        private readonly BigInteger _slat, _least, _greatest, _sum;
        private readonly bool _closed, _tapered;

        internal Oracle(SlatRun run)
        {
            Widths = [.. run.Stations!.Prepend(run.Width).Select(static width => Nanometres(width))];
            _slat = Nanometres(run.SlatWidth);
            _least = Nanometres(run.LeastGap!.Value);
            _greatest = Nanometres(run.GreatestGap!.Value);
            _closed = run.Ends == SlatEnds.Closed;
            _tapered = run.Taper == SlatTaper.EndSlatsTapered;
            _sum = Widths.Aggregate(BigInteger.Zero, static (sum, width) => sum + width);
            int fewest = _closed || _tapered ? 2 : 1, most = (int)(Widths.Max() / _slat) + 3;
            int[] tried = [.. Enumerable.Range(fewest, Math.Max(1, most - fewest + 1))];
            InRange = [.. tried.Where(slats => Stations.Any(station => Fits(slats, station)))];
            Serving = [.. tried.Where(slats => Stations.All(station => Fits(slats, station)))];
            Recommended = Serving.Count == 0 ? null : Best(Serving, gap => BigInteger.Abs((2 * gap.Amount) - (gap.Over * (_least + _greatest))));
            Nearest = Best(tried.Where(slats => slats == fewest || slats <= (Widths.Max() / _slat) + 1), gap => BigInteger.Max(0, BigInteger.Max((gap.Over * _least) - gap.Amount, gap.Amount - (gap.Over * _greatest))));
        }

        internal BigInteger[] Widths { get; }

        internal IReadOnlyList<int> InRange { get; }

        internal IReadOnlyList<int> Serving { get; }

        internal int? Recommended { get; }

        internal int Nearest { get; }

        private IEnumerable<int> Stations => Enumerable.Range(0, Widths.Length);

        /// <summary>Walked slat by slat from the left end.</summary>
        internal (BigInteger Place, BigInteger Over) LeftEdge(int slats, int station, int slat)
        {
            (BigInteger gap, BigInteger over) = Gap(slats, station);
            over *= 2;
            gap *= 2;
            BigInteger end = EndSlat(slats, station, over), at = _closed ? 0 : gap;
            for (int i = 0; i < slat; i++)
            {
                at += (i == 0 ? end : over * _slat) + gap;
            }

            return (at, over);
        }

        private (BigInteger Amount, BigInteger Over) Gap(int slats, int station)
        {
            int count = Widths.Length, between = _closed ? slats - 1 : slats + 1;
            return ((_tapered ? _sum : Widths[station] * count) - (slats * _slat * count), count * between);
        }

        private BigInteger EndSlat(int slats, int station, BigInteger over) =>
            (over * _slat) + (_tapered ? over / (2 * Widths.Length) * ((Widths.Length * Widths[station]) - _sum) : 0);

        private bool Fits(int slats, int station)
        {
            (BigInteger gap, BigInteger over) = Gap(slats, station);
            return gap >= over * _least && gap <= over * _greatest && EndSlat(slats, station, 2 * over) > 0;
        }

        private int Best(IEnumerable<int> numbers, Func<(BigInteger Amount, BigInteger Over), BigInteger> measure)
        {
            (int Slats, BigInteger Amount, BigInteger Over)? best = null;
            foreach (int slats in numbers)
            {
                BigInteger over = Gap(slats, 0).Over, amount = Stations.Max(station => measure(Gap(slats, station)));
                if (best is not { } so || amount * so.Over < so.Amount * over)
                {
                    best = (slats, amount, over);
                }
            }

            return best!.Value.Slats;
        }

        private static BigInteger Nanometres(Length length) => (BigInteger)Math.Round(length.Millimeters * 1e6);
    }
}

internal static class WholeNanometres
{
    internal static double Millimetres(this BigInteger nanometres) => (double)nanometres / 1e6;
}
