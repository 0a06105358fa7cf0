using System;
using System.Collections.Generic;
using System.Linq;
using Xunit;

namespace FinishKit.Tests.Boards;

/// <summary>The best offset against brute force from the definition: every offset on a 0.01 mm grid and all breakpoints.</summary>
public sealed class CourseBestOffsetTests
{
    private const long Step = 10_000;

    [Fact]
    public void The_best_offset_equals_brute_force_on_1000_faces()
    {
        int exact = 0, narrow = 0, knife = 0, hopeless = 0;
        for (int seed = 1; seed <= 1000; seed++)
        {
            CourseFace face = new CourseTrial(seed).Face;
            CourseOracle oracle = new(face);
            long error = CourseOracle.Nm(face.SetOutError!.Value), cover = CourseOracle.Nm(face.Board.Cover);
            CourseBand band = Assert.Single(CourseLayout.LayOut(face).Bands);
            long offset = CourseOracle.Nm(band.Offset);
            (long any, long movable) = oracle.Worst(offset, error);
            Assert.True(any == CourseOracle.Nm(band.Guaranteed), $"{seed}: offset {offset}, guaranteed {band.Guaranteed}, by definition {any}.");

            // The whole grid is looked up once, then the worst of each error is at its ends or at a jump.
            (long Any, long Movable)[] grid = [.. Enumerable.Range(0, (int)(cover / Step) + 1).Select(i => oracle.At(i * Step))];
            long best = -1, bestMovable = -1, bestAny = -1;
            foreach (long candidate in Promising(grid, movable).Concat(oracle.Breakpoints(error)))
            {
                (long candidateAny, long candidateMovable) = oracle.Worst(candidate, error);
                bestAny = Math.Max(bestAny, candidateAny);
                if (candidateMovable > bestMovable || (candidateMovable == bestMovable && candidate < best))
                {
                    (best, bestMovable) = (candidate, candidateMovable);
                }
            }

            if (bestMovable == 0)
            {
                hopeless++;
                continue;
            }

            Assert.True(bestMovable == movable, $"{seed}: offset {offset} keeps {movable}, {best} keeps {bestMovable}.");
            Assert.True(bestAny <= any, $"{seed}: {bestAny} can be had, {any} is had.");
            Assert.True(best >= offset, $"{seed}: {best} is as good as {offset}, and smaller.");
            exact++;
            narrow += any < movable ? 1 : 0;
            knife += error == 0 ? 1 : 0;
        }

        // What the cases are there for is among them.
        Assert.True(exact > 900 && narrow > 100 && knife > 100 && hopeless > 0, $"{exact} compared, {narrow} with narrow strips between edges, {knife} without error, {hopeless} where nothing can be promised.");
    }

    /// <summary>A head that tapers stands at every height between its ends.</summary>
    [Fact]
    public void The_best_offset_under_a_tapering_head_equals_brute_force()
    {
        int compared = 0, without = 0;
        for (int seed = 1; seed <= 300; seed++)
        {
            CourseFace face = new CourseTrial(seed, tapers: true).Face;
            CourseOracle oracle = new(face);
            long error = CourseOracle.Nm(face.SetOutError!.Value), cover = CourseOracle.Nm(face.Board.Cover);
            CourseBand band = Assert.Single(CourseLayout.LayOut(face).Bands);
            (long any, long movable) = oracle.Worst(CourseOracle.Nm(band.Offset), error);
            Assert.True(any == CourseOracle.Nm(band.Guaranteed), $"{seed}: {band}, by definition {any}.");
            long best = oracle.Breakpoints(error).Concat(Enumerable.Range(0, (int)(cover / 500_000)).Select(static i => i * 500_000L)).Max(candidate => oracle.Worst(candidate, error).Movable);
            if (best > 0)
            {
                Assert.True(best == movable, $"{seed}: {band} keeps {movable}, {best} can be had.");
                compared++;
            }
            else
            {
                without++;
            }
        }

        Assert.True(compared > 100 && without > 10, $"{compared} compared, {without} where a course runs out whatever the offset.");
    }

    [Theory]
    [InlineData(CourseRule.Balanced)]
    [InlineData(CourseRule.WholeAtFoot)]
    [InlineData(CourseRule.WholeAtHead)]
    public void What_any_rule_guarantees_is_the_worst_by_definition(CourseRule rule)
    {
        for (int seed = 1; seed <= 200; seed++)
        {
            CourseFace face = new CourseTrial(seed, tapers: seed % 2 == 0).Face with { Rule = rule };
            CourseOracle oracle = new(face);
            CoursePlan plan = CourseLayout.LayOut(face);
            long offset = CourseOracle.Nm(plan.Bands[0].Offset);
            Assert.Equal(oracle.Worst(offset, CourseOracle.Nm(face.SetOutError!.Value)).Any, CourseOracle.Nm(plan.Guaranteed));
            Assert.True(CourseOracle.Nm(plan.Bands[0].BestGuaranteed) >= CourseOracle.Nm(plan.Guaranteed) || CourseOracle.Nm(plan.Bands[0].BestGuaranteed) == 0);
        }
    }

    /// <summary>Offsets of the grid that are no worse than the one found where the set-out is exact: with an error they can only lose.</summary>
    private static IEnumerable<long> Promising((long Any, long Movable)[] grid, long found)
    {
        for (int i = 0; i < grid.Length - 1; i++)
        {
            if (grid[i].Movable >= found)
            {
                yield return i * Step;
            }
        }
    }
}
