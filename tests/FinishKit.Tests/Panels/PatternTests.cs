using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Panels;

/// <summary>Patterns over a row, worked by hand and against cloth that is walked along in steps.</summary>
[Properties(MaxTest = 300, EndSize = 1_000_000)]
public sealed class PatternTests
{
    private static readonly WrapBuild s_build = new(Mm(6.5), Mm(1)) { Nap = NapDirection.TowardTop, Stretch = ClothStretch.BothWays };

    private static readonly WrapPlan s_row = PanelWrap.Plan(new WrapJob(Mm(1806), Mm(500), s_build) { Panels = 3 });

    private static readonly PatternJob s_job = new(s_row, Mm(320), Mm(200));

    /// <summary>
    /// By hand: the cloth starts at 2.5 - 44.5 = -42, the row's middle is at 903: -945, and -945 + 5 x 200 = 55. The next panels lie 601.5 and 1203 further:
    /// -343.5 + 400 = 56.5 and 258 - 200 = 58. Up: -42 - 250 = -292, and + 320 = 28.
    /// </summary>
    [Fact]
    public void Lay()
    {
        #region example: PatternMatch.Lay
        WrapBuild build = new(Mm(6.5), Mm(1)) { Nap = NapDirection.TowardTop, Stretch = ClothStretch.BothWays };
        WrapPlan plan = PanelWrap.Plan(new WrapJob(Mm(1806), Mm(500), build) { Panels = 3 });
        PatternLayout layout = PatternMatch.Lay(new PatternJob(plan, Mm(320), Mm(200)));
        Length across = layout.Pieces[0].OffsetAcross;      // 55: its cloth starts 945 before the row's middle, five repeats are 1000
        Length extra = layout.Pieces[1].Extra;              // 56: a piece is 584 long, twice 320 is 640
        Length buy = layout.LengthInOrder;                  // 1892: 28 + 3 x 584 + 2 x 56
        #endregion
        Assert.Equal((55, 56, 1892), (across.Millimeters, extra.Millimeters, buy.Millimeters));
        Assert.Equal([55, 56.5, 58], layout.Pieces.Select(static piece => piece.OffsetAcross.Millimeters));
        Assert.All(layout.Pieces, static piece => Assert.Equal(28, piece.OffsetAlong.Millimeters));
        Assert.Equal((1752, 140), (layout.LengthWithoutPattern.Millimeters, layout.Waste.Millimeters));
        Assert.Equal([800, 800, 800], layout.Blocks.Select(static block => block.Across.Millimeters)); // 55 + 687 = 742 in four repeats
        Assert.Equal([640, 640, 640], layout.Blocks.Select(static block => block.Along.Millimeters)); // 28 + 584 = 612 in two
        Assert.All(layout.Blocks, static block => Assert.False(block.IsTurnable));
        Assert.Equal(["panels-pattern-extra"], layout.Findings.Select(static finding => finding.Code));
        Assert.Contains(new Figure("worst-severity", 0, string.Empty), layout.Figures());
        Assert.Contains(new Figure("worst-severity", 2, string.Empty), PatternMatch.Lay(new PatternJob(plan, Mm(320), Mm(200)) { RollWidth = Mm(600) }).Figures()); // a piece is 687 across
        WorkingsCheck.Recompute(layout.Explain());
    }

    /// <summary>Centred on the first panel, whose middle is at 301.5: -343.5 + 400 = 56.5. With the roll along the row the axes change places.</summary>
    [Fact]
    public void Centre_and_direction()
    {
        PatternLayout first = PatternMatch.Lay(s_job with { CentredOnPanel = 0 });
        Assert.Equal([56.5, 58, 59.5], first.Pieces.Select(static piece => piece.OffsetAcross.Millimeters));
        PatternLayout middle = PatternMatch.Lay(s_job with { CentredOnPanel = 1 });
        Assert.Equal([55, 56.5, 58], middle.Pieces.Select(static piece => piece.OffsetAcross.Millimeters));
        PatternLayout turned = PatternMatch.Lay(new PatternJob(PanelWrap.Plan(new WrapJob(Mm(1806), Mm(500), s_build with { Nap = NapDirection.TowardRear }) { Panels = 3 }), Mm(200), Mm(320)));
        Assert.Equal([55, 56.5, 58], turned.Pieces.Select(static piece => piece.OffsetAlong.Millimeters));
        Assert.All(turned.Pieces, static piece => Assert.Equal(28, piece.OffsetAcross.Millimeters));

        // 687 long: 55 + 687 = 742, the next begins at 800 + 56.5; that ends at 1543.5, the last begins at 1600 + 58.
        Assert.Equal([55, 114.5, 114.5], turned.Pieces.Select(static piece => piece.Extra.Millimeters));
    }

    /// <summary>A cloth without a nap that stretches more across the roll is laid with the roll along the van, so that it stretches up the panels: as with the nap toward the rear.</summary>
    [Fact]
    public void The_pattern_lies_as_the_pieces_do()
    {
        PatternLayout turned = PatternMatch.Lay(new PatternJob(PanelWrap.Plan(new WrapJob(Mm(1806), Mm(500), s_build with { Nap = NapDirection.None, Stretch = ClothStretch.AcrossRoll }) { Panels = 3 }), Mm(200), Mm(320)));
        Assert.Equal([687, 687, 687], turned.Pieces.Select(static piece => piece.Piece.Along.Millimeters));
        Assert.Equal([55, 56.5, 58], turned.Pieces.Select(static piece => piece.OffsetAlong.Millimeters));
        Assert.All(turned.Pieces, static piece => Assert.Equal(28, piece.OffsetAcross.Millimeters));
        Assert.Contains("along the van", turned.Findings.Single(static finding => finding.Code == "panels-pattern-no-arrow").Message, StringComparison.Ordinal);
    }

    /// <summary>The widest needs 58 + 687 = 745 from the selvedge: a roll exactly so wide will do.</summary>
    [Fact]
    public void The_roll_must_hold_the_piece_from_the_start_of_a_repeat()
    {
        Assert.False(PatternMatch.Lay(s_job with { RollWidth = Mm(745) }).HasProblem);
        PatternLayout narrow = PatternMatch.Lay(s_job with { RollWidth = Mm(744.999999) });
        Assert.True(narrow.HasProblem);
        Assert.Equal("panels-pattern-wider-than-roll", narrow.Findings[0].Code);
        Assert.Equal(745, narrow.Findings[0].Values[0].Value);
    }

    [Fact]
    public void Nothing_to_match_takes_nothing_and_a_cloth_without_arrow_is_named()
    {
        PatternLayout plain = PatternMatch.Lay(s_job with { RepeatAlong = Mm(0), RepeatAcross = Mm(0) });
        Assert.Equal(0, plain.Waste.Millimeters);
        Assert.Empty(plain.Findings);
        Assert.Equal(s_row.ClothPieces.Select(static piece => piece.Along.Millimeters), plain.Blocks.Select(static block => block.Along.Millimeters));
        WrapPlan unknown = PanelWrap.Plan(new WrapJob(Mm(1806), Mm(500), new WrapBuild(Mm(6.5), Mm(1))));
        Assert.Equal("panels-pattern-no-arrow", PatternMatch.Lay(new PatternJob(unknown, Mm(0), Mm(64))).Findings[0].Code);
    }

    [Fact]
    public void All_problems_are_reported_at_once()
    {
        Assert.Equal(["job.RepeatAlong", "job.RepeatAcross", "job.CentredOnPanel", "job.RollWidth"], PatternMatch.CheckLay(new PatternJob(s_row, Mm(-1), Mm(5001)) { CentredOnPanel = 3, RollWidth = Mm(9) }).Select(static problem => problem.Parameter));
        Assert.Equal(["job.Plan"], PatternMatch.CheckLay(new PatternJob(null!, Mm(1), Mm(1)) { CentredOnPanel = 3 }).Select(static problem => problem.Parameter));
        Assert.Equal("job.CentredOnPanel", Assert.Throws<ArgumentOutOfRangeException>(() => PatternMatch.Lay(s_job with { CentredOnPanel = -1 })).ParamName);
    }

    /// <summary>
    /// The wall is walked: a motif line at the row's middle and every repeat from there. From a piece's front edge, stepping back, the first line met
    /// is as far away as the offset says; the cloth is laid out from those offsets, and no two pieces overlap on the roll.
    /// </summary>
    [Property]
    public void The_pattern_runs_on_over_the_joints(PositiveInt seed)
    {
        Random random = new(seed.Get);
        int panels = random.Next(1, 7);
        double width = Math.Round(panels * (200 + (random.NextDouble() * 800)), 6), joint = random.Next(0, 40) / 8.0, repeatAcross = Math.Round(20 + (random.NextDouble() * 600), 6), repeatAlong = Math.Round(20 + (random.NextDouble() * 600), 6);
        WrapBuild build = s_build with { Joint = Mm(joint), Front = (EdgeWrap)random.Next(3), AtJoints = (EdgeWrap)random.Next(3) };
        WrapPlan plan = PanelWrap.Plan(new WrapJob(Mm(width), Mm(600), build) { Panels = panels });
        PatternLayout layout = PatternMatch.Lay(new PatternJob(plan, Mm(repeatAlong), Mm(repeatAcross)));
        double end = 0;
        for (int i = 0; i < panels; i++)
        {
            // Edges from the finished panel outward: half of what cloth adds beyond it on either side, by the edge's own reach.
            EdgeWrap edge = i == 0 ? build.Front : build.AtJoints;
            double squeezed = edge == EdgeWrap.FoamRound ? 1.5 : 0;
            double front = plan.Panels[i].Start.Millimeters + (edge == EdgeWrap.Unwrapped ? 0 : 1 + squeezed - (squeezed + 3 + 6.5 + squeezed + 35));
            double line = width / 2;
            while (line > front)
            {
                line -= repeatAcross;
            }

            while (line + repeatAcross <= front)
            {
                line += repeatAcross;
            }

            double off = layout.Pieces[i].OffsetAcross.Millimeters - (front - line);
            Assert.True(Math.Abs(off) < 1e-5 || Math.Abs(Math.Abs(off) - repeatAcross) < 1e-5, $"{layout.Pieces[i]}: {front - line}");
            Assert.InRange(layout.Pieces[i].OffsetAcross.Millimeters, 0, repeatAcross);

            double start = end + layout.Pieces[i].Extra.Millimeters, into = (start - layout.Pieces[i].OffsetAlong.Millimeters) / repeatAlong;
            Assert.Equal(Math.Round(into), into, 1e-6);
            Assert.InRange(layout.Pieces[i].Extra.Millimeters, 0, repeatAlong);
            end = start + layout.Pieces[i].Piece.Along.Millimeters;
            Assert.True(layout.Blocks[i].Along.Millimeters >= layout.Pieces[i].OffsetAlong.Millimeters + layout.Pieces[i].Piece.Along.Millimeters - 1e-6);
            Assert.True(layout.Blocks[i].Along.Millimeters - repeatAlong < layout.Pieces[i].OffsetAlong.Millimeters + layout.Pieces[i].Piece.Along.Millimeters);
        }

        Assert.Equal(end, layout.LengthInOrder.Millimeters, 1e-5);
        Assert.Equal(layout.LengthInOrder.Millimeters, layout.LengthWithoutPattern.Millimeters + layout.Waste.Millimeters, 1e-6);
        WorkingsCheck.Recompute(layout.Explain());
    }

    /// <summary>Seen in a mirror, what a piece starts with it ends with.</summary>
    [Property]
    public void A_mirrored_row_has_the_mirrored_pattern(PositiveInt seed)
    {
        Random random = new(seed.Get);
        int panels = random.Next(1, 6);
        double width = 3 + ((panels - 1) * 1.5) + (panels * random.Next(200, 900)), repeat = random.Next(20, 700);
        WrapBuild build = s_build with { Front = (EdgeWrap)random.Next(3), Rear = (EdgeWrap)random.Next(3) };
        PatternLayout one = PatternMatch.Lay(new PatternJob(PanelWrap.Plan(new WrapJob(Mm(width), Mm(600), build) { Panels = panels }), Mm(100), Mm(repeat)));
        PatternLayout other = PatternMatch.Lay(new PatternJob(PanelWrap.Plan(new WrapJob(Mm(width), Mm(600), build with { Front = build.Rear, Rear = build.Front }) { Panels = panels }), Mm(100), Mm(repeat)));
        for (int i = 0; i < panels; i++)
        {
            double sum = (one.Pieces[i].OffsetAcross.Millimeters + one.Pieces[i].Piece.Across.Millimeters + other.Pieces[panels - 1 - i].OffsetAcross.Millimeters) / repeat;
            Assert.Equal(Math.Round(sum), sum, 1e-6);
        }
    }
}
