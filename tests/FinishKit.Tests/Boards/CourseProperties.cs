using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Boards;

/// <summary>What must hold for the courses of any face.</summary>
[Properties(MaxTest = 300, EndSize = 1_000_000)]
public sealed class CourseProperties
{
    [Property]
    public void Pieces_and_openings_fill_every_column(PositiveInt seed, bool tapers)
    {
        CourseFace face = new CourseTrial(seed.Get, tapers, gaps: false).Face;
        CoursePlan plan = CourseLayout.LayOut(face);
        long length = Nm(face.FaceLength);
        CoursePiece[] pieces = [.. plan.Courses.SelectMany(static course => course.Pieces)];
        long[] cuts = [.. pieces.SelectMany(static piece => new[] { Nm(piece.FromU), Nm(piece.ToU) }).Concat(face.Openings.SelectMany(static opening => new[] { Nm(opening.FromU), Nm(opening.ToU) })).Concat([0, length / 2, length]).Distinct().Order()];
        for (int i = 0; i + 1 < cuts.Length; i++)
        {
            long from = cuts[i], to = cuts[i + 1];
            if (to - from < 1000)
            {
                continue; // a sloping head meets a joint on the grid only: skip what lies between rounded places
            }

            decimal u = (from + to) / 2m;
            decimal covered = pieces.Where(piece => Nm(piece.FromU) <= from && to <= Nm(piece.ToU)).Sum(piece => WidthAt(piece, u));
            decimal open = face.Openings.Where(opening => Nm(opening.FromU) <= from && to <= Nm(opening.ToU)).Sum(static opening => Nm(opening.ToV) - Nm(opening.FromV));
            decimal girth = GirthAt(face, u);
            Assert.True(Math.Abs(girth - covered - open) <= (tapers ? 20 : 0), $"{seed}: at {u} pieces {covered} and openings {open} fill {girth}.");
        }
    }

    [Property]
    public void Pieces_do_not_overlap_and_lie_in_their_course(PositiveInt seed, bool tapers)
    {
        CoursePlan plan = CourseLayout.LayOut(new CourseTrial(seed.Get, tapers).Face);
        long narrowest = long.MaxValue;
        foreach (BoardCourse course in plan.Courses)
        {
            for (int i = 0; i < course.Pieces.Count; i++)
            {
                CoursePiece piece = course.Pieces[i];
                long top = Math.Max(Nm(piece.ToVAtFront), Nm(piece.ToVAtRear));
                Assert.True(piece.FromU.Millimeters < piece.ToU.Millimeters && Nm(piece.FromV) < top && Nm(course.LowerLine) <= Nm(piece.FromV) && top <= Nm(course.UpperLine));
                narrowest = Math.Min(narrowest, Nm(piece.LeastWidth));
                for (int other = 0; other < i; other++)
                {
                    CoursePiece before = course.Pieces[other];
                    Assert.True(before.ToU.Millimeters <= piece.FromU.Millimeters || Math.Max(Nm(before.ToVAtFront), Nm(before.ToVAtRear)) <= Nm(piece.FromV) || top <= Nm(before.FromV));
                }
            }
        }

        Assert.Equal(narrowest == long.MaxValue ? null : narrowest, plan.NarrowestPiece is { } least ? Nm(least) : (long?)null);
    }

    [Property]
    public void Lines_rise_and_courses_lie_between_them(PositiveInt seed, bool tapers)
    {
        Random random = new(seed.Get);
        CourseFace face = new CourseTrial(seed.Get, tapers).Face;
        long least = new[] { face.Girth, face.GirthAtFront ?? face.Girth, face.GirthAtRear ?? face.Girth }.Min(Nm);
        long[] heights = [.. Enumerable.Range(0, random.Next(0, 4)).Select(_ => 1 + (random.NextInt64(least - 1) / 1000 * 1000)).Distinct().Order()];
        face = face with { Breaks = [.. heights.Select(height => new FaceBreak(CourseTrial.At(height), Angle.FromDegrees(random.Next(-9, 10))))], Rule = (CourseRule)random.Next(4) };
        CoursePlan plan = CourseLayout.LayOut(face);
        Assert.Equal(plan.Courses.Count + 1, plan.Lines.Count);
        long cover = Nm(face.Board.Cover), whole = Nm(face.Board.Face), gap = Nm(face.Board.Gap);
        int ending = 0;
        for (int i = 0; i < plan.Courses.Count; i++)
        {
            BoardCourse course = plan.Courses[i];
            Assert.Equal(Nm(plan.Lines[i]), Nm(course.LowerLine));
            Assert.True(Nm(plan.Lines[i]) < Nm(plan.Lines[i + 1]) && Nm(course.UpperLine) <= Nm(plan.Lines[i + 1]));
            Assert.True(Nm(course.RipWidth) > 0 && Nm(course.RipWidth) <= whole);
            Assert.Equal(course.IsWhole, Nm(course.WidthAtFront) == whole && Nm(course.WidthHalfWay) == whole && Nm(course.WidthAtRear) == whole);
            bool last = i + 1 == plan.Courses.Count || plan.Courses[i + 1].Band != course.Band;
            ending += last ? 1 : 0;
            Assert.True(last || Nm(plan.Lines[i + 1]) - Nm(course.UpperLine) == gap);
            Assert.True(!last || Nm(plan.Bands[course.Band].ToV) - Nm(course.UpperLine) <= gap);
            Assert.True(course.IsCutBelow == (Nm(course.UpperLine) - whole < Nm(course.LowerLine) && !course.IsCutAbove) || course.IsCutAbove);
        }

        Assert.Equal(plan.Bands.Count, ending);
        Assert.Equal(1 + face.Breaks.Count(static line => Math.Abs(line.LeanChange.Degrees) > 4), plan.Bands.Count);
        Assert.All(plan.Bands, band => Assert.InRange(Nm(band.Offset), 0, cover - 1));
        WorkingsCheck.Recompute(plan.Explain());
    }

    [Property]
    public void A_face_upside_down_keeps_what_can_be_guaranteed(PositiveInt seed)
    {
        CourseFace face = new CourseTrial(seed.Get).Face;
        CoursePlan one = CourseLayout.LayOut(face), other = CourseLayout.LayOut(CourseTrial.Mirrored(face));
        Assert.Equal(Nm(one.Bands[0].BestGuaranteed), Nm(other.Bands[0].BestGuaranteed));

        // Whole boards at the foot of the one are whole boards at the head of the other, piece for piece.
        one = CourseLayout.LayOut(face with { Rule = CourseRule.WholeAtFoot });
        other = CourseLayout.LayOut(CourseTrial.Mirrored(face) with { Rule = CourseRule.WholeAtHead });
        Assert.Equal(Widths(one), Widths(other));
        Assert.Equal(Nm(one.Guaranteed), Nm(other.Guaranteed));
    }

    [Property]
    public void Front_and_rear_changed_about_change_nothing(PositiveInt seed, bool tapers)
    {
        CourseFace face = new CourseTrial(seed.Get, tapers).Face;
        CoursePlan one = CourseLayout.LayOut(face), other = CourseLayout.LayOut(CourseTrial.Turned(face));
        Assert.Equal(Nm(one.Bands[0].Offset), Nm(other.Bands[0].Offset));
        Assert.Equal(Nm(one.Guaranteed), Nm(other.Guaranteed));
        Assert.Equal(Widths(one), Widths(other));
        Assert.Equal(one.Courses.Select(static course => (Nm(course.WidthAtFront), Nm(course.WidthAtRear))), other.Courses.Select(static course => (Nm(course.WidthAtRear), Nm(course.WidthAtFront))));
        Assert.Equal(one.Findings.Select(static finding => finding.Code), other.Findings.Select(static finding => finding.Code));
    }

    [Property]
    public void Openings_moved_along_the_van_move_their_pieces(PositiveInt seed, PositiveInt by)
    {
        CourseFace face = new CourseTrial(seed.Get).Face;
        long shift = 100_000_000 + (by.Get * 12_345_000L % 3_000_000_000);
        CourseFace moved = face with
        {
            FaceLength = CourseTrial.At(Nm(face.FaceLength) + shift),
            Openings = [.. face.Openings.Select(opening => opening with { FromU = CourseTrial.At(Nm(opening.FromU) + shift), ToU = CourseTrial.At(Nm(opening.ToU) + shift) })],
        };

        // In front of the openings there is now a column without any, as there is beside them unless they fill the length.
        bool isBeside = face.Openings.Count == 0 || face.Openings.Min(static opening => opening.FromU.Millimeters) > 0 || face.Openings.Max(static opening => opening.ToU.Millimeters) < face.FaceLength.Millimeters;
        if (isBeside)
        {
            Assert.Equal(Nm(CourseLayout.LayOut(face).Bands[0].Offset), Nm(CourseLayout.LayOut(moved).Bands[0].Offset));
            Assert.Equal(Nm(CourseLayout.LayOut(face).Guaranteed), Nm(CourseLayout.LayOut(moved).Guaranteed));
        }
    }

    [Property]
    public void A_greater_error_never_guarantees_more(PositiveInt seed, bool tapers)
    {
        CourseTrial trial = new(seed.Get, tapers);
        long before = long.MaxValue;
        foreach (int micrometres in new[] { 0, trial.Random.Next(1, 2000), trial.Random.Next(2000, 9000), 20_000 })
        {
            long guaranteed = Nm(CourseLayout.LayOut(trial.Face with { SetOutError = Mm(micrometres / 1000.0) }).Bands[0].BestGuaranteed);
            Assert.True(guaranteed <= before, $"{seed}: {guaranteed} with {micrometres}, {before} with less.");
            before = guaranteed;
        }
    }

    /// <summary>Three times the size has three times the widths; on the grid of the greater there are places between.</summary>
    [Property]
    public void Three_times_the_size_keeps_three_times_as_much(PositiveInt seed, bool tapers)
    {
        CourseFace face = new CourseTrial(seed.Get, tapers).Face;
        CourseFace thrice = face with
        {
            FaceLength = Thrice(face.FaceLength),
            Girth = Thrice(face.Girth),
            GirthAtFront = face.GirthAtFront is { } front ? Thrice(front) : null,
            GirthAtRear = face.GirthAtRear is { } rear ? Thrice(rear) : null,
            Board = BoardCover.SquareEdged(Thrice(face.Board.Width), Thrice(face.Board.Gap)),
            SetOutError = Thrice(face.SetOutError!.Value),
            Openings = [.. face.Openings.Select(static opening => new FaceOpening(Thrice(opening.FromU), Thrice(opening.ToU), Thrice(opening.FromV), Thrice(opening.ToV)))],
        };
        long one = Nm(CourseLayout.LayOut(face).Bands[0].BestGuaranteed), three = Nm(CourseLayout.LayOut(thrice).Bands[0].BestGuaranteed);
        Assert.InRange(three, (3 * one) - (tapers ? 12 : 0), (3 * one) + (tapers ? 12 : 3)); // a sloping head is rounded to the grid at every cut
    }

    [Property]
    public void Inches_and_millimetres_meet(PositiveInt seed)
    {
        Random random = new(seed.Get);
        double girth = random.Next(640, 2600) / 64.0, width = random.Next(96, 400) / 64.0, sill = random.Next(64, 300) / 64.0;
        CoursePlan inches = CourseLayout.LayOut(new CourseFace(Inch(120), Inch(girth), BoardCover.SquareEdged(Inch(width), Mm(0))) { Openings = [new(Inch(20), Inch(50), Inch(sill), Inch(sill + 4))] });
        CoursePlan millimetres = CourseLayout.LayOut(new CourseFace(Mm(3048), Mm(girth * 25.4), BoardCover.SquareEdged(Mm(width * 25.4), Mm(0))) { Openings = [new(Mm(508), Mm(1270), Mm(sill * 25.4), Mm((sill + 4) * 25.4))] });
        Assert.Equal(inches.Lines.Select(Nm), millimetres.Lines.Select(Nm));
        Assert.Equal(inches.Figures(), millimetres.Figures());
        Assert.Equal(inches.Face, millimetres.Face);
    }

    /// <summary>As many of everything as is allowed: a thousand courses, a hundred openings and breaks, a head that tapers over it all.</summary>
    [Fact]
    public void The_largest_face_is_laid_out_without_delay()
    {
        FaceOpening[] openings = [.. Enumerable.Range(0, 100).Select(static i => new FaceOpening(Mm((i % 10 * 900) + (i / 10 * 13)), Mm((i % 10 * 900) + 400 + (i / 10 * 17)), Mm((i / 10 * 900) + 7.123), Mm((i / 10 * 900) + 701 + (i * 0.7))))];
        CourseFace face = new(Mm(10_000), Mm(9_500), BoardCover.SquareEdged(Mm(11), Mm(0.5))) { GirthAtFront = Mm(11_400), GirthAtRear = Mm(9_400), Openings = openings, SetOutError = Mm(0.01), Rule = CourseRule.BestOffset };
        Stopwatch watch = Stopwatch.StartNew();
        CoursePlan one = CourseLayout.LayOut(face);
        CoursePlan many = CourseLayout.LayOut(face with { Breaks = [.. Enumerable.Range(1, 100).Select(static i => new FaceBreak(Mm(i * 90), Angle.FromDegrees(5)))] });
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(60), $"{watch.Elapsed}");
        Assert.InRange(one.Courses.Count, 900, 1000);
        Assert.Equal(101, many.Bands.Count);
        Assert.InRange(one.Courses.Sum(static course => course.Pieces.Count), 1000, 100_000);
        Assert.Equal(one.Lines.Select(Nm), CourseLayout.LayOut(face).Lines.Select(Nm));
    }

    private static long Nm(Length length) => CourseOracle.Nm(length);

    private static Length Thrice(Length length) => CourseTrial.At(3 * Nm(length));

    private static IEnumerable<(long, long)> Widths(CoursePlan plan) => plan.Courses.SelectMany(static course => course.Pieces).Select(static piece => (Nm(piece.LeastWidth), Nm(piece.ToU) - Nm(piece.FromU))).Order();

    private static decimal WidthAt(CoursePiece piece, decimal u)
    {
        decimal share = (u - Nm(piece.FromU)) / (Nm(piece.ToU) - Nm(piece.FromU));
        return Nm(piece.ToVAtFront) + (share * (Nm(piece.ToVAtRear) - Nm(piece.ToVAtFront))) - Nm(piece.FromV);
    }

    private static decimal GirthAt(CourseFace face, decimal u)
    {
        long middle = Nm(face.Girth), front = face.GirthAtFront is { } f ? Nm(f) : middle, rear = face.GirthAtRear is { } r ? Nm(r) : middle;
        decimal share = u / Nm(face.FaceLength);
        return share <= 0.5m ? front + ((middle - front) * 2 * share) : middle + ((rear - middle) * ((2 * share) - 1));
    }
}
