#pragma warning disable xUnit1051 // the calls are the two-line ones that a host writes; a test of its own cancels
using System;
using System.Collections.Generic;
using System.Linq;
using FinishKit.Tests.Stock;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Boards;

/// <summary>What holds for every job: against every choice tried one by one, conservation, the mirror, one strip more, hostile sizes.</summary>
public sealed class JointProperties
{
    [Fact]
    public void A_proven_cost_is_that_of_all_choices_tried_and_the_bound_is_never_above_it()
    {
        Random random = new(20261125);
        int asked = 0, proven = 0, none = 0, uncut = 0, few = 0, chosen = 0, stretched = 0, open = 0;
        for (int i = 0; i < 300; i++)
        {
            JointJob job = JointTrial.Small(random);
            decimal? best = JointTrial.BruteForce(job, out bool isAllowed, out int choices);
            JointLayout layout = BoardJoints.Choose(job);
            Audit(layout);
            bool isNone = layout.Findings.Any(static finding => finding.Code == "boards-joint-none");
            Assert.True(isNone != isAllowed, $"case {i}: {choices} choices, {layout}");
            if (!isAllowed)
            {
                none++;
                continue;
            }

            // With less effort the bound comes from other proofs; it holds as well.
            foreach (int effort in new[] { 1000, 10_000, 60_000 })
            {
                JointLayout quick = BoardJoints.Choose(job with { Effort = effort });
                Assert.True(quick.LeastCost is null || (quick.LeastCost <= best && best <= quick.Cost), $"case {i}, effort {effort}: {quick}, best {best}");
                Assert.True(best is not null || quick.LeastCost is null, $"case {i}, effort {effort}: {quick}");
                open += quick.LeastCost is not null && !quick.Proven ? 1 : 0;
            }

            if (layout.LeastCost is not { } least)
            {
                // Too few boards, whatever is chosen.
                uncut++;
                Assert.NotEmpty(layout.Cutting.Uncut);
                Assert.True(best is null, $"case {i}: {layout}, but {best} can be cut");
                continue;
            }

            asked++;
            Assert.NotNull(best);
            Assert.Empty(layout.Cutting.Uncut);
            Assert.True(least <= best, $"case {i}: bound {least}, best of {choices} choices {best}");
            Assert.True(layout.Cost >= best, $"case {i}: cost {layout.Cost}, best of {choices} choices {best}");
            chosen += choices > 1 ? 1 : 0;
            few += job.Stock.All(static board => board.Available is not null) ? 1 : 0;
            stretched += layout.Joints > layout.Runs.Sum(static run => run.FewestJoints) ? 1 : 0;
            if (layout.Proven)
            {
                proven++;
                Assert.True(best == layout.Cost, $"case {i}: {layout}, best of {choices} choices {best}");
            }
        }

        Assert.True(asked > 150 && none > 20 && chosen > 80 && stretched > 30 && few > 15 && uncut > 10 && open > 15 && proven >= 0.97 * asked, $"{asked} asked, {chosen} with a choice, {few} with few boards, {proven} proven, {stretched} with more joints than the fewest, {none} without joints, {uncut} without boards, {open} open with less effort.");
    }

    /// <summary>Whatever could be done before can be done still.</summary>
    [Fact]
    public void One_more_kind_of_board_never_costs_more()
    {
        Random random = new(4267);
        int compared = 0, saved = 0;
        for (int i = 0; i < 250; i++)
        {
            bool isWall = i % 25 == 0;
            JointJob job = isWall ? JointTrial.Wall(random) : JointTrial.Small(random);
            StockBoard more = isWall ? new StockBoard(Mm(random.Next(1500, 4600)), random.Next(600, 2500) / 100m) : new StockBoard(Mm(random.Next(25, 140)), random.Next(3, 16));
            JointLayout before = BoardJoints.Choose(job);
            JointLayout after = BoardJoints.Choose(job with { Stock = [.. job.Stock, more] });
            if (before.LeastCost is null)
            {
                continue;
            }

            compared++;
            Assert.True(after.LeastCost <= before.Cost, $"case {i}: {before}, and with {more} {after}");
            Assert.True(after.Cost <= before.Cost, $"case {i}: {before}, and with {more} {after}");
            saved += after.Cost < before.Cost ? 1 : 0;
        }

        Assert.True(compared > 120 && saved > 20, $"{compared} compared, {saved} saved by a kind more.");
    }

    /// <summary>What is not looked at may be cheaper than what is: the bound is below it all the same.</summary>
    [Fact]
    public void A_sample_states_no_bound_above_what_was_not_looked_at()
    {
        Random random = new(13);
        int sampled = 0, proven = 0;
        for (int i = 0; i < 40; i++)
        {
            JointJob job = JointTrial.Many(random);
            JointLayout layout = BoardJoints.Choose(job);
            Audit(layout);
            if (!layout.Findings.Any(static finding => finding.Code == "boards-joint-sample") || layout.LeastCost is null)
            {
                continue;
            }

            sampled++;
            proven += layout.Proven ? 1 : 0;
            decimal? best = JointTrial.BruteForce(job, out bool _, out int choices);
            Assert.True(layout.LeastCost <= best && best <= layout.Cost, $"case {i}: {layout}, best of {choices} choices {best}");
        }

        Assert.True(sampled > 20 && proven > 5, $"{sampled} sampled, {proven} of them proven.");
    }

    [Fact]
    public void Walls_are_mostly_proven_and_the_same_in_the_mirror_and_again()
    {
        Random random = new(1849);
        int proven = 0, both = 0, good = 0;
        double worst = 0;
        for (int i = 0; i < 16; i++)
        {
            JointJob job = JointTrial.Wall(random) with { Effort = 4_000_000 };
            JointLayout layout = BoardJoints.Choose(job);
            Audit(layout);
            if (i % 6 == 0)
            {
                Assert.Equal(Written(layout), Written(BoardJoints.Choose(job)));
            }

            good += layout.LeastCost is null ? 0 : 1;
            proven += layout.Proven ? 1 : 0;
            worst = Math.Max(worst, layout.Gap ?? 0);
            JointLayout mirror = BoardJoints.Choose(Mirrored(job));
            Assert.Equal(layout.LeastCost is null, mirror.LeastCost is null);
            if (layout.Proven && mirror.Proven)
            {
                both++;
                Assert.Equal(layout.Cost, mirror.Cost);
            }
            else if (layout.LeastCost is not null)
            {
                Assert.True(layout.LeastCost <= mirror.Cost && mirror.LeastCost <= layout.Cost);
            }
        }

        Assert.True(good > 8 && proven >= 0.8 * good && worst <= 0.03, $"{good} good, {proven} proven, {both} both ways, worst gap {worst}.");
    }

    /// <summary>A strip more lets joints be where they were, further apart in number if anything.</summary>
    [Fact]
    public void A_strip_more_never_costs()
    {
        Random random = new(7);
        int compared = 0, saved = 0;
        for (int i = 0; i < 200; i++)
        {
            JointJob job = JointTrial.Small(random);
            long place = (random.Next(-20, 130) * 1_000_000L) + 500_000;
            JointLayout before = BoardJoints.Choose(job);
            JointLayout after = BoardJoints.Choose(job with { Strips = [.. job.Strips.Append(Mm(place / 1e6)).OrderBy(static strip => strip.Millimeters)] });
            if (before.LeastCost is null)
            {
                continue;
            }

            compared++;
            Assert.True(after.LeastCost <= before.Cost, $"case {i}");
            Assert.True(!after.Proven || after.Cost <= before.Cost, $"case {i}");
            saved += after.Cost < before.Cost ? 1 : 0;
        }

        Assert.True(compared > 100 && saved > 2, $"{compared} compared, {saved} saved by a strip.");
    }

    [Fact]
    public void Hostile_sizes_end_within_their_effort()
    {
        Random random = new(99);
        Length[] strips = [.. Enumerable.Range(1, 200).Select(i => Mm((i * 99.5) + (random.Next(1_000_000) / 1e6)))];
        JointRun[] runs = [.. Enumerable.Range(0, 200).Select(i => new JointRun(i, Mm(random.Next(1_000_000) / 1e6), Mm(19_000.5 + (random.Next(1_000_000) / 1e6))))];
        JointJob job = new(runs, strips, [new StockBoard(Mm(2438), 9.80m), new StockBoard(Mm(3048), 13.60m)]) { Effort = 1000 };
        JointLayout layout = BoardJoints.Choose(job);
        Audit(layout);
        Assert.Contains(layout.Findings, static finding => finding.Code == "boards-joint-sample");
        Assert.True(layout.LeastCost > 0 && layout.Cost < 1.3m * layout.LeastCost, layout.ToString());
        Audit(BoardJoints.Choose(job with { Effort = 60_000 }));

        // No way at all: the remedies are looked for within limits.
        Audit(BoardJoints.Choose(job with { Stagger = 20, ShortestPiece = Mm(2000) }));
        Audit(BoardJoints.Choose(job with { Stock = [new StockBoard(Mm(100), 1)], EndTrim = Mm(0) }));
        Audit(BoardJoints.Choose(job with { Stock = [.. Enumerable.Range(0, 20).Select(static i => new StockBoard(Mm(2438 + (i * 0.123457)), 9.8000m + (i * 0.0007m)) { Pack = 1 + i })], Offcuts = [.. Enumerable.Range(0, 100).Select(static i => new BoardOffcut(Mm(500.000001 + (i * 7.3))) { Count = 1 + i })] }));
    }

    internal static string Written(JointLayout layout) => string.Join('\n', [layout.ToString(), .. layout.Runs.Select(static run => run + " " + string.Join(", ", run.Joints)), .. layout.Cutting.Boards.Select(static board => board.ToString()), .. layout.Figures().Select(static figure => figure.ToString()), .. layout.Findings.Select(static finding => finding.ToString())]);

    private static JointJob Mirrored(JointJob job) => job with
    {
        Runs = [.. job.Runs.Select(static run => run with { Start = Mm(-run.End.Millimeters), End = Mm(-run.Start.Millimeters) })],
        Strips = [.. job.Strips.Reverse().Select(static strip => Mm(-strip.Millimeters))],
    };

    /// <summary>The layout against the job alone: nothing lost, and what is not kept is said.</summary>
    private static void Audit(JointLayout layout)
    {
        JointJob job = layout.Job;
        int stagger = job.Stagger ?? 2;
        long shortest = JointTrial.Nm(job.ShortestPiece ?? Mm(600));
        HashSet<string> codes = [.. layout.Findings.Select(static finding => finding.Code)];
        Assert.Equal(job.Runs.Count, layout.Runs.Count);
        List<long> pieces = [];
        bool isShort = false, isClose = false;
        for (int i = 0; i < job.Runs.Count; i++)
        {
            JointedRun run = layout.Runs[i];
            Assert.Equal((i, job.Runs[i].Course), (run.Run, run.Course));
            Assert.All(run.Joints, joint => Assert.Equal(JointTrial.Nm(job.Strips[joint.Strip]), JointTrial.Nm(joint.Position)));
            Assert.Equal(JointTrial.Pieces(job.Runs[i], run.Joints.Select(static joint => joint.Strip), [.. job.Strips.Select(JointTrial.Nm)]), run.Pieces.Select(JointTrial.Nm));
            Assert.Equal(JointTrial.Nm(job.Runs[i].End) - JointTrial.Nm(job.Runs[i].Start), run.Pieces.Sum(JointTrial.Nm));
            Assert.All(run.Pieces, static piece => Assert.True(JointTrial.Nm(piece) > 0));
            pieces.AddRange(run.Pieces.Select(JointTrial.Nm));
            isShort |= run.Joints.Count > 0 && run.Pieces.Any(piece => JointTrial.Nm(piece) < shortest);
            Assert.True(run.FewestJoints is null || run.Joints.Count >= run.FewestJoints);
            foreach (JointedRun other in layout.Runs.Where(other => other.Course == run.Course + 1))
            {
                isClose |= run.Joints.Any(one => other.Joints.Any(two => Math.Abs(one.Strip - two.Strip) < stagger));
            }
        }

        Assert.Equal(isShort, codes.Contains("boards-joint-piece-short"));
        Assert.Equal(isClose, codes.Contains("boards-joint-close"));
        Assert.True(!(isShort || isClose) || codes.Contains("boards-joint-none"));

        // The plan's parts are the pieces, and each is on a board or said not to be.
        Assert.Equal(pieces, layout.Cutting.Job.Parts.Select(static part => JointTrial.Nm(part.Length)));
        int[] cut = new int[pieces.Count];
        foreach (CutPiece piece in layout.Cutting.Boards.SelectMany(static board => board.Pieces))
        {
            cut[piece.Part]++;
            Assert.Equal(pieces[piece.Part], JointTrial.Nm(piece.Length));
        }

        foreach (UncutPart part in layout.Cutting.Uncut)
        {
            cut[part.Part] += part.Count;
        }

        Assert.All(cut, static count => Assert.Equal(1, count));
        Assert.True(layout.LeastCost is null || layout.LeastCost <= layout.Cost);

        // A quarter of the effort, 1000 at least, is for the plan, which takes no more but for a first one.
        int effort = job.Effort ?? 20_000_000, share = Math.Max(1000, effort / 4);
        Assert.InRange(layout.Nodes - layout.Cutting.Nodes, 0, effort - share);
        Assert.Equal(share, layout.Cutting.Job.Effort);
        Assert.InRange(layout.Cutting.Nodes, 0, CuttingCheck.MostNodes(layout.Cutting.Job));
        Assert.Equal(layout.HasProblem, layout.Findings.Any(static finding => finding.Severity == Severity.Problem));
        WorkingsCheck.Recompute(layout.Explain());
    }
}
