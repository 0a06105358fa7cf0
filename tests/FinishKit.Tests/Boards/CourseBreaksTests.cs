using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Boards;

/// <summary>Boards across breaks.</summary>
[Properties(MaxTest = 500, EndSize = 1_000_000)]
public sealed class CourseBreaksTests
{
    private static bool s_problem;

    [Fact]
    public void Judge()
    {
        #region example: CourseBreaks.Judge
        CourseBreak lower = CourseBreaks.Judge(Mm(89), Angle.FromDegrees(3.5));
        bool ends = lower.EndsCourse;                       // false: up to 4 degrees a board runs over it
        Length standOff = lower.StandOff;                   // 1.36 mm
        CourseBreak upper = CourseBreaks.Judge(Mm(135), Angle.FromDegrees(9.5));
        Angle bevel = upper.Bevel;                          // the course ends, its edge bevelled by 4.75 degrees
        #endregion
        Assert.False(ends);
        Assert.Equal(1.3595980, standOff.Millimeters, 5e-7); // 44.5 · tan 1.75°, tan 1.75° = 0.0305527633 by another program
        Assert.True(upper.EndsCourse);
        Assert.Equal(4.75, bevel.Degrees, 1e-12);
        Assert.Equal(5.6, upper.StandOff.Millimeters, 0.05); // 67.5 · tan 4.75°, printed to a tenth
        Assert.Equal(0, lower.Bevel.Degrees);
    }

    [Fact]
    public void A_limit_exactly_met_does_not_end_the_course_in_any_unit()
    {
        Assert.False(CourseBreaks.Judge(Mm(89), Angle.FromDegrees(4)).EndsCourse);
        Assert.False(CourseBreaks.Judge(Mm(89), Angle.FromRadians(4 * Math.PI / 180)).EndsCourse);
        Assert.True(CourseBreaks.Judge(Mm(89), Angle.FromDegrees(4.000001)).EndsCourse);
        Assert.True(CourseBreaks.Judge(Mm(89), Angle.FromDegrees(-4.000001)).EndsCourse);
        Assert.True(CourseBreaks.Judge(Mm(89), Angle.FromDegrees(3.5), Angle.FromDegrees(3)).EndsCourse);
        Assert.False(CourseBreaks.Judge(Mm(89), Angle.FromDegrees(3.5), Angle.FromDegrees(3.5)).EndsCourse);
        Assert.True(CourseBreaks.Judge(Mm(89), Angle.FromDegrees(0.001), Angle.FromDegrees(0)).EndsCourse);
        Assert.False(CourseBreaks.Judge(Mm(89), Angle.FromDegrees(0), Angle.FromDegrees(0)).EndsCourse);
    }

    /// <summary>In a hollow the back of a board 12.7 thick is wider by 12.7 tan 4.75° = 1.055 than its face; on a ridge the face is. By the corner of two offset lines, not with a tangent.</summary>
    [Theory]
    [InlineData(9.5, 4.75, "a break of 9.5° ends the course, bevel 4.75°")]
    [InlineData(-9.5, -4.75, "a break of -9.5° ends the course, bevel -4.75°")]
    public void A_bevel_has_the_sign_of_the_break(double change, double bevel, string words)
    {
        CourseBreak at = CourseBreaks.Judge(Mm(89), Angle.FromDegrees(change));
        Assert.Equal(bevel, at.Bevel.Degrees, 1e-12);
        Assert.Equal(bevel, at.Figures().Single(static figure => figure.Name == "bevel").Value, 1e-12);
        Assert.Equal(words, at.ToString());

        // Faces: the line y = 0 for x < 0, and from the corner on one that turns by the change toward the room (y > 0). Backs: both 12.7 to the other side. They meet at x.
        double turn = change * Math.PI / 180, t = 12.7, x = t * (1 - Math.Cos(turn)) / Math.Sin(turn);
        Assert.Equal(x, t * Math.Tan(at.Bevel.Radians), 1e-9);
        Assert.Equal(Math.Sign(change) * 1.0553, x, 5e-5);
        WorkingsCheck.Recompute(at.Explain());
    }

    [Fact]
    public void Below_the_limit_the_stand_off_is_a_finding_above_it_the_bevel_is_the_answer()
    {
        Finding over = Assert.Single(CourseBreaks.Judge(Mm(89), Angle.FromDegrees(-3.5)).Findings);
        Assert.Equal("boards-break-stands-off", over.Code);
        Assert.Equal(1.359598, over.Values.Single(static value => value.Name == "stand-off").Value, 5e-7);
        Assert.Contains("at each edge", over.Message, StringComparison.Ordinal);
        Assert.Contains("at the middle", CourseBreaks.Judge(Mm(89), Angle.FromDegrees(3.5)).Findings[0].Message, StringComparison.Ordinal);
        Assert.Empty(CourseBreaks.Judge(Mm(89), Angle.FromDegrees(9.5)).Findings);
        Assert.Empty(CourseBreaks.Judge(Mm(89), Angle.FromDegrees(0)).Findings);
    }

    [Fact]
    public void The_default_limit_is_named_as_judgement()
    {
        DefaultUsed used = Assert.Single(CourseBreaks.Judge(Mm(89), Angle.FromDegrees(3.5)).DefaultsUsed);
        Assert.Equal(new Figure("break-limit", 4, "deg"), used.Figure);
        Assert.Equal(SourceKind.Judgement, used.Source.Kind);
        Assert.Empty(CourseBreaks.Judge(Mm(89), Angle.FromDegrees(3.5), Angle.FromDegrees(4)).DefaultsUsed);
    }

    /// <summary>
    /// Another way round: a straight board is laid over two lines that turn by delta, its ends on them as far from the break either way, and
    /// the distance from the break to the board is measured with coordinates, not with a tangent.
    /// </summary>
    [Property]
    public void Stand_off_agrees_with_coordinates(PositiveInt seed)
    {
        Random random = new(seed.Get);
        double width = 1 + (random.NextDouble() * 300), degrees = random.Next(5) == 0 ? 89.999 : random.NextDouble() * 30;
        double turn = degrees * Math.PI / 180;

        // The break is the origin; one band runs to the left, the other leans up by the turn. Find the arm that makes the chord as wide as the board.
        double chord = Math.Sqrt(Math.Pow(1 + Math.Cos(turn), 2) + Math.Pow(Math.Sin(turn), 2)), arm = width / chord;
        (double x, double y) left = (-arm, 0), right = (arm * Math.Cos(turn), arm * Math.Sin(turn));
        double away = Math.Abs((left.x * right.y) - (left.y * right.x)) / width;
        Assert.Equal(away, CourseBreaks.Judge(Mm(width), Angle.FromDegrees(degrees)).StandOff.Millimeters, 1e-5);
    }

    [Property]
    public void Sign_and_units_do_not_matter_and_twice_the_width_stands_off_twice(PositiveInt seed)
    {
        Random random = new(seed.Get);
        double inches = random.Next(1, 640) / 64.0, degrees = random.NextDouble() * 45;
        CourseBreak one = CourseBreaks.Judge(Inch(inches), Angle.FromDegrees(degrees));
        Assert.Equal(one, CourseBreaks.Judge(Mm(inches * 25.4), Angle.FromDegrees(degrees)));
        Assert.Equal(one.StandOff.Millimeters, CourseBreaks.Judge(Inch(inches), Angle.FromDegrees(-degrees)).StandOff.Millimeters);
        Assert.Equal(one.StandOff.Millimeters, CourseBreaks.Judge(Inch(inches), Angle.FromRadians(degrees * Math.PI / 180)).StandOff.Millimeters, 2e-6);
        Assert.Equal(2 * one.StandOff.Millimeters, CourseBreaks.Judge(Inch(2 * inches), Angle.FromDegrees(degrees)).StandOff.Millimeters, 2e-6);
        WorkingsCheck.Recompute(one.Explain());
    }

    [Fact]
    public void It_allocates_nothing()
    {
        (Length width, Angle little, Angle much, Angle limit) = (Mm(89), Angle.FromDegrees(3.5), Angle.FromDegrees(9.5), Angle.FromDegrees(5));
        AllocatesNothing(() => CourseBreaks.Judge(width, little).HasProblem);
        AllocatesNothing(() => CourseBreaks.Judge(width, much).EndsCourse);
        AllocatesNothing(() => CourseBreaks.Judge(width, much, limit).StandOff.Value > 1);
    }

    [Fact]
    public void All_problems_are_reported_at_once()
    {
        Assert.Equal(["boardWidth", "leanChange", "limit"], CourseBreaks.Check(Mm(0), Angle.FromDegrees(91), Angle.FromDegrees(-1)).Select(static problem => problem.Parameter));
        Assert.Equal("boardWidth", Assert.Throws<ArgumentOutOfRangeException>(() => CourseBreaks.Judge(Mm(0), Angle.FromDegrees(91))).ParamName);
    }

    [Fact]
    public void Answers_compare_by_what_they_were_asked()
    {
        CourseBreak one = CourseBreaks.Judge(Mm(89), Angle.FromDegrees(3.5));
        Assert.True(one == CourseBreaks.Judge(Mm(89), Angle.FromDegrees(3.5)));
        Assert.True(one != CourseBreaks.Judge(Mm(89), Angle.FromDegrees(3.5), Angle.FromDegrees(4)));
        Assert.True(one != CourseBreaks.Judge(Mm(88), Angle.FromDegrees(3.5)));
        Assert.Equal("a board of 89 mm over a break of 3.5° stands off 1.36 mm", one.ToString());
        Assert.Equal("a break of 9.5° ends the course, bevel 4.75°", CourseBreaks.Judge(Mm(89), Angle.FromDegrees(9.5)).ToString());
    }

    private static void AllocatesNothing(Func<bool> question)
    {
        for (int i = 0; i < 64; i++)
        {
            s_problem = question();
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1024; i++)
        {
            s_problem |= question();
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
