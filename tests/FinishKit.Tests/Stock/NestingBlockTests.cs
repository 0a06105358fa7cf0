using System;
using System.Collections.Generic;
using System.Linq;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Stock;

/// <summary>Sheets that were cut apart from edge to edge: with hardly any waste their pieces must be found to come from so many sheets.</summary>
public class NestingBlockTests(ITestOutputHelper output)
{
    private const int Kerf = 3;

    /// <param name="trim">Up to so many millimetres less of each side than was cut.</param>
    /// <param name="turns">Pieces come turned, and may be.</param>
    /// <param name="same">The sheets are cut alike, so that there are several of each piece.</param>
    [Theory]
    [InlineData(SheetCutting.Sawn, 0, false, false)]
    [InlineData(SheetCutting.Sawn, 2, true, false)]
    [InlineData(SheetCutting.Sawn, 2, true, true)]
    [InlineData(SheetCutting.Routed, 2, true, false)]
    [InlineData(SheetCutting.Routed, 2, true, true)]
    public void What_was_cut_from_full_sheets_goes_on_them_again(SheetCutting cutting, int trim, bool turns, bool same)
    {
        Random random = new(29);
        int found = 0, tried = 16;
        for (int trial = 0; trial < tried; trial++)
        {
            int sheets = random.Next(2, 6);
            List<SheetPart> parts = [];
            List<(int Length, int Width)> cut = [];
            for (int sheet = 0; sheet < sheets; sheet++)
            {
                if (!same || sheet % 2 == 0)
                {
                    cut = Cut(random, random.Next(6, 10));
                }

                foreach ((int length, int width) in cut)
                {
                    (int a, int b) = same ? (length - trim, width - trim) : (length - random.Next(trim + 1), width - random.Next(trim + 1));
                    parts.Add(turns && random.Next(2) == 0 ? new SheetPart(Mm(b), Mm(a), 1, turns) : new SheetPart(Mm(a), Mm(b), 1, turns));
                }
            }

            NestingPlan plan = SheetNesting.Nest(new NestingJob(parts, [new StockSheet(Mm(2440), Mm(1220), 38m)], cutting) { Kerf = Mm(Kerf), Trim = Mm(0), Effort = 40_000_000 });
            NestingCheck.Holds(plan);
            Assert.True(plan.Sheets.Count >= sheets, "Fewer sheets than the area asks for.");
            found += plan.Sheets.Count == sheets ? 1 : 0;
        }

        output.WriteLine($"{found} of {tried}");
        Assert.True(found >= tried - 1, $"{found} of {tried}");
    }

    /// <summary>Sought on one sheet and on two more than are needed: no sheet is empty, and where fewer will do there are fewer.</summary>
    [Fact]
    public void A_sheet_to_spare_is_not_used_empty()
    {
        int found = 0, fewer = 0;
        foreach (NestingInstance instance in NestingSets.Van())
        {
            for (int more = 1; more <= 2; more++)
            {
                SheetKinds kinds = new([.. instance.Items.Select(item => (long)item.Length + instance.Kerf)], [.. instance.Items.Select(item => (long)item.Width + instance.Kerf)], [.. instance.Items.Select(static item => item.MayTurn)], [.. instance.Items.Select(static item => item.Count)]);
                SheetBlockSearch search = new(kinds, instance.Length + instance.Kerf, instance.Width + instance.Kerf, instance.Best + more, true, new CuttingEffort(2_000_000, null, TestContext.Current.CancellationToken));
                if (search.Find(2_000_000) is not { } sheets)
                {
                    continue;
                }

                found++;
                fewer += sheets.Count < instance.Best + more ? 1 : 0;
                Assert.All(sheets, static sheet => Assert.NotEmpty(sheet.Places));
                Assert.True(sheets.Count <= instance.Best + more, instance.Name);
                Assert.Equal(kinds.Count, Enumerable.Range(0, kinds.Kinds).Select(kind => sheets.Sum(sheet => sheet.Places.Count(place => place.Kind == kind))));
            }
        }

        output.WriteLine($"{found} found, {fewer} on fewer sheets");
        Assert.True(found > 100 && fewer > 10, $"{found}, {fewer}");
    }

    /// <summary>A sheet cut in two again and again, the largest piece first.</summary>
    private static List<(int Length, int Width)> Cut(Random random, int pieces)
    {
        List<(int Length, int Width)> cut = [(2440, 1220)];
        while (cut.Count < pieces)
        {
            int at = Enumerable.Range(0, cut.Count).MaxBy(i => cut[i].Length * cut[i].Width);
            (int length, int width) = cut[at];
            cut.RemoveAt(at);
            bool across = length > 1.5 * width || (width < 1.5 * length && random.Next(2) == 0);
            int whole = across ? length : width, one = random.Next(whole / 4, (3 * whole / 4) + 1), other = whole - one - Kerf;
            cut.AddRange(across ? [(one, width), (other, width)] : [(length, one), (length, other)]);
        }

        return cut;
    }
}
