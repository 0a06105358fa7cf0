using System.Linq;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Stock;

/// <summary>Furring strips and panels of one thickness from the same sheets.</summary>
public sealed class StripsOnPanelSheets
{
    // By hand: of 2440 x 1220 less 5 at each edge, 2430 x 1210, four panels of 1000 x 560 take 2 x 1000 + 2.4 = 2002.4 by
    // 2 x 560 + 2.4 = 1122.4. Beside them, past a kerf, 425.2 x 1210 are left: strips 40 wide lie across it, ten of them take
    // 10 x 40 + 9 x 2.4 = 421.6, and 1150 is less than 1210. On a sheet of their own the strips cost a second sheet.
    [Theory]
    [InlineData(SheetCutting.Sawn)]
    [InlineData(SheetCutting.Routed)]
    public void Strips_go_beside_the_panels(SheetCutting cutting)
    {
        StripPart strips = new(Mm(40), Mm(1150)) { Count = 10 };
        SheetPart panels = new(Mm(1000), Mm(560), 4, mayTurn: false);
        SheetPart asParts = new(strips.Length, strips.Width, strips.Count, mayTurn: true) { Name = "strip" };
        StockSheet sheet = new(Mm(2440), Mm(1220), 40m);

        NestingPlan together = SheetNesting.Nest(new NestingJob([panels, asParts], [sheet], cutting) { Kerf = Mm(2.4) });
        NestingPlan apart = SheetNesting.Nest(new NestingJob([panels], [sheet], cutting) { Kerf = Mm(2.4) });
        RippingPlan ripped = StripRipping.Rip(new RippingJob(sheet.Length, sheet.Width, [strips]));

        NestedSheet only = Assert.Single(together.Sheets);
        Assert.Equal(2, apart.Sheets.Count + ripped.Recommended!.Sheets.Count);
        Assert.Equal(10, only.Pieces.Count(static piece => piece.Name == "strip"));
    }

    // An L of 600 x 400 without its corner of 350 x 250: 240,000 - 87,500 = 152,500 mm2.
    [Fact]
    public void A_piece_that_is_no_rectangle_keeps_its_area_and_outline()
    {
        MeasuredPoint[] outline = [At(0, 0), At(600, 0), At(600, 150), At(250, 150), At(250, 400), At(0, 400)];
        SheetPart part = new(Mm(600), Mm(400), 1, mayTurn: true) { Outline = outline };
        NestingJob job = new([part], [new StockSheet(Mm(410), Mm(610), 1m)], SheetCutting.Sawn);

        NestingPlan plan = SheetNesting.Nest(job);

        Assert.Equal(152_500, plan.PiecesArea.SquareMillimeters, 6);
        NestedPiece piece = plan.Sheets[0].Pieces[0];
        Assert.True(piece.IsTurned);

        // A quarter to the left about the sheet's corner, and 5 mm in: (x, y) goes to (5 + 400 - y, 5 + x).
        Assert.Equal([At(405, 5), At(405, 605), At(255, 605), At(255, 255), At(5, 255), At(5, 5)], piece.Corners());
        Assert.Equal(["job.Parts[0].Outline"], SheetNesting.Check(job with { Parts = [part with { Outline = [At(0, 0), At(600, 400), At(600, 0), At(0, 400)] }] }).Select(static problem => problem.Parameter));
        Assert.Equal(["job.Parts[0].Outline"], SheetNesting.Check(job with { Parts = [part with { Outline = [At(0, 0), At(590, 0), At(590, 400), At(0, 400)] }] }).Select(static problem => problem.Parameter));
        Assert.Equal(["job.Parts[0].Outline"], SheetNesting.Check(job with { Parts = [part with { Outline = [At(0, 0), At(600, 0), At(300, 0), At(600, 400), At(0, 400)] }] }).Select(static problem => problem.Parameter));
        Assert.Equal(["job.Parts[0].Outline"], SheetNesting.Check(job with { Parts = [part with { Outline = [At(0, 0), At(600, 400)] }] }).Select(static problem => problem.Parameter));
        Assert.Equal(["job.Parts[0].Outline[1].Along"], SheetNesting.Check(job with { Parts = [part with { Outline = [At(0, 0), At(600.1, 0), At(0, 400)] }] }).Select(static problem => problem.Parameter));
    }

    private static MeasuredPoint At(double along, double across) => new(Mm(along), Mm(across));
}
