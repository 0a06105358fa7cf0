using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Furring;

/// <summary>Ripping worked by hand, findings, refused input, and what holds for every job.</summary>
public sealed class StripRippingTests
{
    private static readonly Dictionary<string, (RippingJob Job, string[] Paths)> s_bad = new(StringComparer.Ordinal)
    {
        ["sheet too small"] = (Good() with { SheetLength = Mm(9.999999) }, ["job.SheetLength"]),
        ["sheet too large"] = (Good() with { SheetWidth = Mm(20000.000001) }, ["job.SheetWidth"]),
        ["sheet in an undefined unit"] = (Good() with { SheetWidth = new Length(1, (LengthUnit)999) }, ["job.SheetWidth"]),
        ["no parts"] = (Good() with { Parts = [] }, ["job.Parts"]),
        ["parts null"] = (Good() with { Parts = null! }, ["job.Parts"]),
        ["201 parts"] = (Good() with { Parts = [.. Enumerable.Repeat(new StripPart(Mm(40), Mm(100)), 201)] }, ["job.Parts"]),
        ["a part null"] = (Good() with { Parts = [null!] }, ["job.Parts[0]"]),
        ["strip too narrow"] = (Good() with { Parts = [new StripPart(Mm(0.999999), Mm(100))] }, ["job.Parts[0].Width"]),
        ["strip too short"] = (Good() with { Parts = [new StripPart(Mm(40), Mm(0.999999))] }, ["job.Parts[0].Length"]),
        ["no strips of a kind"] = (Good() with { Parts = [new StripPart(Mm(40), Mm(100)) { Count = 0 }] }, ["job.Parts[0].Count"]),
        ["5001 strips"] = (Good() with { Parts = [new StripPart(Mm(40), Mm(100)) { Count = 5000 }, new StripPart(Mm(40), Mm(100))] }, ["job.Parts"]),
        ["trim negative"] = (Good() with { Trim = Mm(-0.000001) }, ["job.Trim"]),
        ["trim takes the sheet"] = (Good() with { SheetWidth = Mm(100), Trim = Mm(49.6) }, ["job.Trim"]),
        ["kerf too wide"] = (Good() with { Kerf = Mm(20.000001) }, ["job.Kerf"]),
        ["all at once"] = (new RippingJob(Mm(1), Mm(1), [new StripPart(Mm(0), Mm(0)) { Count = -1 }]) { Trim = Mm(-1), Kerf = Mm(-1) },
            ["job.SheetLength", "job.SheetWidth", "job.Parts[0].Width", "job.Parts[0].Length", "job.Parts[0].Count", "job.Trim", "job.Kerf"]),
    };

    public static TheoryData<string> BadJobs() => [.. s_bad.Keys];

    [Theory]
    [MemberData(nameof(BadJobs))]
    public void Bad_input_is_named_by_its_path(string name)
    {
        (RippingJob job, string[] paths) = s_bad[name];
        Assert.Equal(paths, StripRipping.Check(job).Select(static problem => problem.Parameter));
        Assert.Equal(paths[0], Assert.ThrowsAny<ArgumentException>(() => StripRipping.Rip(job)).ParamName);
    }

    [Fact]
    public void Rip()
    {
        #region example: StripRipping.Rip
        RippingJob job = new(Mm(2500), Mm(1250), [new StripPart(Mm(40), Mm(994)) { Count = 60 }]);
        RippingPlan plan = StripRipping.Rip(job);
        int along = plan.Along.Yields[0].PerSheet;          // 29: 29 x 40 + 28 x 2.4 = 1227.2 of 1240
        int across = plan.Across.Yields[0].PerSheet;        // 58 strips of 1240, one piece from each
        int sheets = plan.Recommended!.Sheets.Count;        // 2: along the sheet two pieces from each of 30 strips
        #endregion
        Assert.Equal((29, 58, 2), (along, across, sheets));

        // Along: 1240 - 1227.2 = 12.8 are left, a kerf off that is 10.4. Across: 2490 - (58 x 40 + 57 x 2.4 = 2456.8) - 2.4 = 30.8.
        Assert.Equal(10.4, plan.Along.Yields[0].Offcut.Millimeters);
        Assert.Equal(30.8, plan.Across.Yields[0].Offcut.Millimeters);

        // Two of 994 and a kerf are 1990.4 of 2490: 499.6 are left, a kerf off that is 497.2. A third would not go in: 30 strips, 29 of one sheet.
        Assert.Equal(RipDirection.AlongSheet, plan.Recommended.Direction);
        Assert.Equal((30, 60), (plan.Along.RippedStrips, plan.Across.RippedStrips));
        Assert.Equal([29, 1], plan.Along.Sheets.Select(static sheet => sheet.Strips.Count));
        Assert.Equal(497.2, plan.Along.Sheets[0].Strips[0].Offcut.Millimeters);
        Assert.True(plan.Along.Proven);
        Assert.Equal([new Figure("trim", 5, "mm"), new Figure("kerf", 2.4, "mm")], plan.DefaultsUsed.Select(static used => used.Figure));
        Assert.Empty(plan.Findings);
    }

    /// <summary>Three strips of 40 and two kerfs are 124.8; 10 of trim: 134.8. A nanometre less leaves two, and 124.799999 - 82.4 - 2.4 of offcut.</summary>
    [Fact]
    public void A_width_exactly_met_is_met_and_a_nanometre_less_is_not()
    {
        Assert.Equal(3, Yield(134.8).PerSheet);
        Assert.Equal(0, Yield(134.8).Offcut.Millimeters);
        Assert.Equal(2, Yield(134.799999).PerSheet);
        Assert.Equal(39.999999, Yield(134.799999).Offcut.Millimeters);

        static StripYield Yield(double width) => StripRipping.Rip(Good() with { SheetWidth = Mm(width) }).Along.Yields[0];
    }

    /// <summary>Two strips and a kerf are 82.4. A remainder of exactly a kerf is lost; a nanometre more is offcut.</summary>
    [Fact]
    public void A_remainder_up_to_a_kerf_is_lost()
    {
        Assert.Equal((4.8, 0.0), Left(94.8));
        Assert.Equal((4.8, 0.000001), Left(94.800001));
        Assert.Equal((3.4, 0.0), Left(93.4));
        Assert.Equal((2.4, 0.0), Left(92.4));

        static (double, double) Left(double width)
        {
            RippedSheet sheet = StripRipping.Rip(Good() with { SheetWidth = Mm(width), Parts = [new StripPart(Mm(40), Mm(1000)) { Count = 4 }] }).Along.Sheets[0];
            Assert.Equal(2, sheet.Strips.Count);
            return (sheet.Kerfs.Millimeters, sheet.Offcut.Millimeters);
        }
    }

    /// <summary>3380 from 2490 is 2490 and 890, one joint; from 1240 it is 1240, 1240 and 900, two. Fewer joints are better.</summary>
    [Fact]
    public void A_strip_longer_than_the_sheet_is_joined()
    {
        RippingPlan plan = StripRipping.Rip(Good() with { Parts = [new StripPart(Mm(40), Mm(3380)) { Count = 2 }] });
        Assert.Equal((2, 4, 2), (plan.Along.Joints, plan.Across.Joints, plan.Along.JoinedStrips));
        Assert.Equal(RipDirection.AlongSheet, plan.Recommended!.Direction);
        Assert.Equal([2490, 2490, 890, 890.0], plan.Along.Sheets[0].Strips.SelectMany(static strip => strip.Pieces).Select(static piece => piece.Millimeters).OrderDescending());
        Finding joints = Assert.Single(plan.Findings);
        Assert.Equal(("furring-strip-joints", Severity.Caution), (joints.Code, joints.Severity));
        Assert.Contains(new Figure("joints", 2, string.Empty), joints.Values);

        // Exactly as long as the sheet lets it be: none.
        Assert.Equal(0, StripRipping.Rip(Good() with { Parts = [new StripPart(Mm(40), Mm(2490))] }).Along.Joints);
        Assert.Equal(1, StripRipping.Rip(Good() with { Parts = [new StripPart(Mm(40), Mm(2490.000001))] }).Along.Joints);
    }

    [Fact]
    public void A_strip_too_wide_is_a_note_one_way_and_a_problem_both()
    {
        RippingPlan one = StripRipping.Rip(Good() with { Parts = [new StripPart(Mm(1240.000001), Mm(1000))] });
        Assert.False(one.Along.Fits);
        Assert.Equal(RipDirection.AcrossSheet, one.Recommended!.Direction);
        Assert.Equal(["furring-one-way-only", "furring-ripped-across"], one.Findings.Select(static finding => finding.Code));
        Assert.True(StripRipping.Rip(Good() with { Parts = [new StripPart(Mm(1240), Mm(1000))] }).Along.Fits);
        RippingPlan none = StripRipping.Rip(Good() with { Parts = [new StripPart(Mm(2490.000001), Mm(1000))] });
        Assert.True(none.HasProblem);
        Assert.Null(none.Recommended);
        Assert.Equal("furring-strip-too-wide", Assert.Single(none.Findings).Code);
    }

    /// <summary>
    /// Six of 51, 27 and 26 and twelve of 23 fill nine strips of 100: six of 51 + 26 + 23, three of 27 + 27 + 23 + 23, 900 in all. First fit lays
    /// 27 to each 51, which leaves 22, then 26 by threes (22 left) and 23 by fours: 6 + 2 + 3 = 11.
    /// </summary>
    [Fact]
    public void A_plan_that_is_not_the_best_says_so()
    {
        StripPart[] parts = [new(Mm(60), Mm(510)) { Count = 6 }, new(Mm(60), Mm(270)) { Count = 6 }, new(Mm(60), Mm(260)) { Count = 6 }, new(Mm(60), Mm(230)) { Count = 12 }];
        RippingPlan plan = StripRipping.Rip(new RippingJob(Mm(1000), Mm(100), parts) { Kerf = Mm(0), Trim = Mm(0) });
        Assert.Equal((11, 9, false), (plan.Along.Sheets.Count, plan.Along.LeastSheets, plan.Along.Proven));
        Assert.Equal(RipDirection.AlongSheet, plan.Recommended!.Direction);
        Finding open = Assert.Single(plan.Findings);
        Assert.Equal(("furring-sheets-not-proven", Severity.Note), (open.Code, open.Severity));
    }

    [Fact]
    public void Jobs_are_equal_by_amount()
    {
        RippingJob metres = new(Length.FromMeters(2.5), Length.FromMeters(1.25), [new StripPart(Length.FromCentimeters(4), Length.FromMeters(1)) { Count = 3 }]);
        RippingJob millimetres = new(Mm(2500), Mm(1250), [new StripPart(Mm(40), Mm(1000)) { Count = 3 }]);
        Assert.Equal(millimetres, metres);
        Assert.Equal(millimetres.GetHashCode(), metres.GetHashCode());
        Assert.NotEqual(millimetres, metres with { Parts = [new StripPart(Mm(40), Mm(1000)) { Count = 4 }] });
        Assert.NotEqual(millimetres, metres with { Kerf = Mm(2.4) });
    }

    /// <summary>Nothing is lost or made: across the sheet and along each strip all adds up to the nanometre, and every piece asked is cut.</summary>
    [Property(MaxTest = 400)]
    public void Strips_kerfs_trim_and_offcut_are_the_sheet(PositiveInt seed)
    {
        RippingJob job = Random(new Random(seed.Get), 400);
        RippingPlan plan = StripRipping.Rip(job);
        foreach (RippingWay way in new[] { plan.Along, plan.Across })
        {
            (long along, long across) = way.Direction == RipDirection.AlongSheet ? (Nm(job.SheetLength), Nm(job.SheetWidth)) : (Nm(job.SheetWidth), Nm(job.SheetLength));
            Assert.All(way.Sheets, sheet => Assert.Equal(across, (2 * Nm(job.Trim!.Value)) + Nm(sheet.Kerfs) + Nm(sheet.Offcut) + sheet.Strips.Sum(static strip => Nm(strip.Width))));
            Assert.All(way.Sheets.SelectMany(static sheet => sheet.Strips), strip => Assert.Equal(along, (2 * Nm(job.Trim!.Value)) + Nm(strip.Kerfs) + Nm(strip.Offcut) + strip.Pieces.Sum(Nm)));
            Assert.All(way.Sheets, sheet => Assert.True(Nm(sheet.Kerfs) >= (sheet.Strips.Count - 1) * Nm(job.Kerf!.Value) && Nm(sheet.Kerfs) <= sheet.Strips.Count * Nm(job.Kerf!.Value)));
            if (way.Fits)
            {
                ILookup<long, long> cut = way.Sheets.SelectMany(static sheet => sheet.Strips).ToLookup(static strip => Nm(strip.Width), static strip => strip.Pieces.Sum(Nm));
                foreach (IGrouping<long, StripPart> width in job.Parts.GroupBy(static part => Nm(part.Width)))
                {
                    Assert.Equal(width.Sum(static part => part.Count * Nm(part.Length)), cut[width.Key].Sum());
                }
            }
        }
    }

    [Property(MaxTest = 400)]
    public void A_whole_sheet_gives_as_many_as_fit_and_not_one_more(PositiveInt seed)
    {
        RippingJob job = Random(new Random(seed.Get), 400);
        RippingPlan plan = StripRipping.Rip(job);
        foreach ((RippingWay way, Length side) in new[] { (plan.Along, job.SheetWidth), (plan.Across, job.SheetLength) })
        {
            long usable = Nm(side) - (2 * Nm(job.Trim!.Value)), kerf = Nm(job.Kerf!.Value);
            Assert.All(way.Yields, yield =>
            {
                long width = Nm(yield.Width), n = yield.PerSheet;
                Assert.True(n == 0 || (n * width) + ((n - 1) * kerf) <= usable);
                Assert.True(((n + 1) * width) + (n * kerf) > usable);
                Assert.Equal(Math.Max(0, usable - (n == 0 ? 0 : (n * width) + ((n - 1) * kerf)) - kerf), Nm(yield.Offcut));
            });
        }

        WorkingsCheck.Recompute(plan.Explain());
    }

    /// <summary>On small jobs every way of laying pieces into strips and strips onto sheets is tried.</summary>
    [Fact]
    public void The_sheets_lie_between_the_bound_and_no_worse_than_proven()
    {
        Random random = new(20261125);
        int proven = 0, open = 0, boundBelow = 0;
        for (int i = 0; i < 400; i++)
        {
            RippingJob job = i % 2 == 0 ? Random(random, 8) : OneStripASheet(random);
            RippingWay way = StripRipping.Rip(job).Along;
            if (!way.Fits)
            {
                continue;
            }

            long usable = Nm(job.SheetLength) - (2 * Nm(job.Trim!.Value)), across = Nm(job.SheetWidth) - (2 * Nm(job.Trim!.Value)), kerf = Nm(job.Kerf!.Value);
            List<long> strips = [];
            foreach (IGrouping<long, StripPart> width in job.Parts.GroupBy(static part => Nm(part.Width)))
            {
                long[] pieces = [.. width.SelectMany(part => Enumerable.Repeat(part, part.Count)).SelectMany(part => Divide(Nm(part.Length), usable))];
                strips.AddRange(Enumerable.Repeat(width.Key, FewestBins(pieces, usable, kerf)));
            }

            int fewest = FewestBins([.. strips], across, kerf);
            Assert.InRange(fewest, way.LeastSheets, way.Sheets.Count);
            proven += way.Proven ? 1 : 0;
            open += way.Proven ? 0 : 1;
            boundBelow += way.LeastSheets < fewest ? 1 : 0;
        }

        Assert.True(proven > 200 && open > 10 && boundBelow > 10, $"{proven} proven, {open} open, {boundBelow} with the bound below the fewest.");
    }

    private static IEnumerable<long> Divide(long length, long usable)
    {
        for (; length > usable; length -= usable)
        {
            yield return usable;
        }

        yield return length;
    }

    /// <summary>Every way: each piece into each bin begun, or a new one.</summary>
    private static int FewestBins(long[] pieces, long size, long kerf)
    {
        int best = pieces.Length;
        Lay(0, []);
        return best;

        void Lay(int piece, List<long> bins)
        {
            if (bins.Count >= best)
            {
                return;
            }

            if (piece == pieces.Length)
            {
                best = bins.Count;
                return;
            }

            for (int bin = 0; bin < bins.Count; bin++)
            {
                if (bins[bin] + kerf + pieces[piece] <= size)
                {
                    bins[bin] += kerf + pieces[piece];
                    Lay(piece + 1, bins);
                    bins[bin] -= kerf + pieces[piece];
                }
            }

            bins.Add(pieces[piece]);
            Lay(piece + 1, bins);
            bins.RemoveAt(bins.Count - 1);
        }
    }

    /// <summary>Strips of which a sheet gives one, and up to ten pieces of a fifth to three fifths of its length: so that laying them badly takes a sheet more.</summary>
    private static RippingJob OneStripASheet(Random random)
    {
        StripPart[] parts = [.. Enumerable.Range(0, random.Next(5, 11)).Select(_ => new StripPart(Mm(60), Mm(random.Next(20, 61))))];
        return new RippingJob(Mm(100), Mm(100), parts) { Trim = Mm(0), Kerf = Mm(random.Next(0, 2)) };
    }

    /// <summary>Sizes in whole micrometres; some strips and pieces exactly fill the sheet.</summary>
    private static RippingJob Random(Random random, int mostPieces)
    {
        int trim = random.Next(0, 10) * 1000, kerf = random.Next(0, 40) * 100, length = random.Next(600, 2600) * 1000, width = random.Next(200, 1300) * 1000;
        List<StripPart> parts = [];
        int kinds = random.Next(1, 4), usable = length - (2 * trim);
        for (int i = 0; i < kinds; i++)
        {
            int fits = random.Next(1, 5);
            int part = random.Next(3) == 0 ? (usable - ((fits - 1) * kerf)) / fits : random.Next(100_000, mostPieces > 10 ? 3_000_000 : usable);
            int strip = random.Next(3) == 0 ? ((width - (2 * trim)) - ((fits - 1) * kerf)) / fits : random.Next(20_000, 160_000);
            parts.Add(new StripPart(Um(strip), Um(part)) { Count = random.Next(1, 1 + (mostPieces / kinds)) });
        }

        return new RippingJob(Um(length), Um(width), parts) { Trim = Um(trim), Kerf = Um(kerf) };

        static Length Um(int micrometres) => Mm(micrometres / 1000.0);
    }

    private static RippingJob Good() => new(Mm(2500), Mm(1250), [new StripPart(Mm(40), Mm(1000))]);

    private static long Nm(Length length) => StripTrial.Nm(length);
}
