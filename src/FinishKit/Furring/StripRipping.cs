using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>How many sheets it takes to rip furring strips from, along the sheet and across it, and what is left over.</summary>
public static class StripRipping
{
    internal const int MostParts = 200;
    internal const int MostPieces = 5000;

    /// <summary>A plan for ripping strips and cutting them to length, both ways.</summary>
    /// <param name="job">The sheet, the strips, and whatever differs from the defaults.</param>
    /// <returns>Both ways with every sheet, strip and piece, the better one, and findings.</returns>
    /// <remarks>
    /// <para>Formula: n strips of width w take n w + (n - 1) k of the usable width, the sheet less two trims; of a remainder a kerf is lost, and what is over is offcut. Pieces are laid into strips and strips onto sheets by first fit, the longest or widest first; a lower bound (pieces over half a bin, what does not fit beside them, how many of the smallest fit in one) says whether fewer sheets might do.</para>
    /// <para>Validity: sheets ripped from end to end, then cut to length. A strip longer than the sheet is made of whole lengths and a rest, butt-jointed.</para>
    /// <para>Source: furring-ripping (derived); default-sheet-trim and default-rip-kerf (common practice).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The job, its list or an entry is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// RippingJob job = new(Mm(2500), Mm(1250), [new StripPart(Mm(40), Mm(994)) { Count = 60 }]);
    /// RippingPlan plan = StripRipping.Rip(job);
    /// int along = plan.Along.Yields[0].PerSheet;          // 29: 29 x 40 + 28 x 2.4 = 1227.2 of 1240
    /// int across = plan.Across.Yields[0].PerSheet;        // 58 strips of 1240, one piece from each
    /// int sheets = plan.Recommended!.Sheets.Count;        // 2: along the sheet two pieces from each of 30 strips
    /// </code></example>
    public static RippingPlan Rip(RippingJob job)
    {
        RippingNumbers numbers = RippingNumbers.Read(job, nameof(job), null)!;
        return new RippingPlan(job, numbers, Plan(numbers, RipDirection.AlongSheet), Plan(numbers, RipDirection.AcrossSheet));
    }

    /// <summary>All problems with a job; nothing is thrown.</summary>
    /// <param name="job">The job.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(RippingJob job)
    {
        List<InputProblem> problems = [];
        RippingNumbers.Read(job, nameof(job), problems);
        return problems;
    }

    /// <summary>What the saw takes and what is left over of a usable size from which pieces are cut. A remainder of a kerf or less goes into the last cut.</summary>
    internal static (long Kerfs, long Offcut) Rest(long usable, long[] pieces, long kerf)
    {
        long kerfs = (pieces.Length - 1) * kerf, remainder = usable - kerfs;
        foreach (long piece in pieces)
        {
            remainder -= piece;
        }

        return remainder <= kerf ? (kerfs + remainder, 0) : (kerfs + kerf, remainder - kerf);
    }

    internal static RippingWay? Better(RippingWay along, RippingWay across)
    {
        if (!along.Fits || !across.Fits)
        {
            return along.Fits ? along : across.Fits ? across : null;
        }

        int order = across.Joints.CompareTo(along.Joints);
        order = order != 0 ? order : across.Sheets.Count.CompareTo(along.Sheets.Count);
        order = order != 0 ? order : across.RippedStrips.CompareTo(along.RippedStrips);
        return order < 0 ? across : along;
    }

    /// <summary>The one formula body: what a sheet's width gives and leaves.</summary>
    internal static double SolveYield<TTrace>(double side, double trim, double kerf, double width, double strips, int index, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("S", side, "mm", Sources.Given, meaning: "side of the sheet across the strips");
        trace.Given("t", trim, "mm", Sources.Given, meaning: "trim of an edge");
        trace.Given("k", kerf, "mm", Sources.Given);
        double usable = trace.Step("U", nameof(usable), side - (2 * trim), "mm", Sources.StripRipping);
        trace.Given("w", width, "mm", Sources.Given, index, "width of a strip");
        trace.Given("n", strips, string.Empty, Sources.StripRipping, index, "most strips that do not take more than the usable width");
        double used = trace.Step("u", nameof(used), Math.Max(0, (strips * width) + ((strips - 1) * kerf)), "mm", Sources.StripRipping, index);
        double remainder = trace.Step("r", nameof(remainder), usable - used, "mm", Sources.StripRipping, index);
        return trace.Step("o", "offcut", Math.Max(0, remainder - kerf), "mm", Sources.StripRipping, index);
    }

    private static RippingWay Plan(RippingNumbers job, RipDirection direction)
    {
        bool isAlong = direction == RipDirection.AlongSheet;
        long usableLength = (isAlong ? job.SheetLength : job.SheetWidth) - (2 * job.Trim), usableWidth = (isAlong ? job.SheetWidth : job.SheetLength) - (2 * job.Trim);

        // Pieces by width, in the order in which the widths are asked.
        List<long> widths = [];
        List<List<long>> pieces = [];
        int joints = 0, joined = 0;
        foreach ((long width, long length, int count) in job.Parts)
        {
            int at = widths.IndexOf(width);
            if (at < 0)
            {
                at = widths.Count;
                widths.Add(width);
                pieces.Add([]);
            }

            long parts = RippingNumbers.PiecesOf(length, usableLength);
            joints += count * (int)(parts - 1);
            joined += parts > 1 ? count : 0;
            for (int i = 0; i < count; i++)
            {
                for (long part = 1; part < parts; part++)
                {
                    pieces[at].Add(usableLength);
                }

                pieces[at].Add(length - ((parts - 1) * usableLength));
            }
        }

        List<StripYield> yields = [];
        bool fits = true;
        double side = Grid.Millimetres(isAlong ? job.SheetWidth : job.SheetLength), trim = Grid.Millimetres(job.Trim), kerf = Grid.Millimetres(job.Kerf);
        for (int i = 0; i < widths.Count; i++)
        {
            long width = widths[i];
            int perSheet = (int)((usableWidth + job.Kerf) / (width + job.Kerf));
            yields.Add(new StripYield(width, perSheet, Grid.Nanometres(SolveYield(side, trim, kerf, Grid.Millimetres(width), perSheet, i + 1, default(Silent)))));
            fits &= perSheet > 0;
        }

        if (!fits)
        {
            return new RippingWay(direction, yields, [], 0, joints, joined);
        }

        List<RippedStrip> strips = [];
        List<long> stripWidths = [], leastWidths = [];
        for (int i = 0; i < widths.Count; i++)
        {
            List<long> own = pieces[i];
            foreach (List<int> strip in BinFill.FirstFitDecreasing(own, usableLength, job.Kerf))
            {
                strips.Add(new RippedStrip(widths[i], [.. strip.ConvertAll(piece => own[piece])], usableLength, job.Kerf));
                stripWidths.Add(widths[i]);
            }

            for (int least = BinFill.LeastBins(own, usableLength, job.Kerf); least > 0; least--)
            {
                leastWidths.Add(widths[i]);
            }
        }

        List<RippedSheet> sheets = BinFill.FirstFitDecreasing(stripWidths, usableWidth, job.Kerf)
            .ConvertAll(sheet => new RippedSheet(sheet.ConvertAll(strip => strips[strip]), usableWidth, job.Kerf));
        return new RippingWay(direction, yields, sheets, BinFill.LeastBins(leastWidths, usableWidth, job.Kerf), joints, joined);
    }
}
