using System;
using System.Linq;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;

namespace FinishKit.Tests.Geometry;

/// <summary>Compound cuts against published tables and hand-worked corners, and against what a joint must do: both ends lie in one plane, which holds the line where the faces meet.</summary>
public sealed class CompoundCutTests
{
    private static bool s_problem;

    public static TheoryData<int, double, double, double, string, string> Table()
    {
        TheoryData<int, double, double, double, string, string> data = [];
        foreach (var row in ReferenceTable.Read("tables-compound-angles.csv"))
        {
            data.Add((int)row.Number("sides"), row.Number("side_pitch_from_flat_deg"), row.Number("mitre_published"), row.Number("bevel_published"), row["tag"], row["source"]);
        }

        return data;
    }

    public static TheoryData<string, string, string> Checks() => new(
        from id in new[] { "A01", "A02", "A03", "H_4_45", "H_6_30", "H_8_45", "H_5_30" }
        let row = ReferenceTable.CheckValue(id)
        select (id, row["tag"], row["source"].Length > 0 ? row["source"] : "no publication: sin and tan"));

    [Fact]
    public void InCorner()
    {
        #region example: CompoundCut.InCorner
        CompoundSetting inside = CompoundCut.InCorner(Angle.FromDegrees(38), Angle.FromDegrees(90));
        double mitre = inside.Mitre.Degrees;                // 31.62
        double bevel = inside.Bevel.Degrees;                // 33.86
        #endregion
        Assert.Equal(31.62, mitre, 0.005); // sin 38° = 0.615661, its arc tangent 31.62°
        Assert.Equal(33.86, bevel, 0.005); // cos 38° cos 45° = 0.557206, its arc sine 33.86°
        Assert.Equal(180 - (2 * 33.86), inside.BetweenFaces.Degrees, 0.01);
    }

    [Fact]
    public void OfSides()
    {
        #region example: CompoundCut.OfSides
        CompoundSetting hopper = CompoundCut.OfSides(4, Angle.FromDegrees(45));
        double mitre = hopper.Mitre.Degrees;                // 35.26
        double bevel = hopper.Bevel.Degrees;                // 30
        #endregion
        Assert.Equal(35.26439, mitre, 5e-6); // atan(1/sqrt 2)
        Assert.Equal(30, bevel, 1e-12); // sin² 45° = 1/2
    }

    [Fact]
    public void Between()
    {
        #region example: CompoundCut.Between
        Direction wall = new(0, 1, 0), toJoint = new(-1, 0, 0), otherWall = new(1, 0, 0), otherToJoint = new(0, -1, 0);
        CompoundSetting upright = CompoundCut.Between(wall, toJoint, otherWall, otherToJoint);
        double mitre = upright.Mitre.Degrees;               // 0: flat on the walls of a square corner
        double bevel = upright.Bevel.Degrees;               // 45, the back longer
        #endregion
        Assert.Equal(0, mitre, 1e-12);
        Assert.Equal(45, bevel, 1e-12);
    }

    [Theory]
    [MemberData(nameof(Table))]
    public void A_hopper_of_the_saw_manuals(int sides, double pitch, double mitre, double bevel, string tag, string source)
    {
        CompoundSetting setting = CompoundCut.OfSides(sides, Angle.FromDegrees(pitch));
        Assert.Equal(mitre, setting.Mitre.Degrees, 0.005001); // printed to two decimals
        Assert.Equal(bevel, setting.Bevel.Degrees, 0.005001);
        Assert.Equal("CONFIRMED", tag); // read in copies of the manuals
        Assert.NotEmpty(source);
    }

    [Fact]
    public void The_table_is_whole() => Assert.Equal(41, Table().Count);

    /// <summary>Printed 23.56 in both manuals (check-values, section 16); tan M = tan(180°/7) cos 25° = 0.481575 · 0.906308 = 0.436455, so M is 23.58°. The misprint is not followed.</summary>
    [Fact]
    public void The_misprint_of_the_saw_manuals_is_not_followed()
    {
        double mitre = CompoundCut.OfSides(7, Angle.FromDegrees(25)).Mitre.Degrees;
        Assert.Equal(23.579, mitre, 0.0005);
        Assert.NotInRange(mitre, 23.555, 23.565);
    }

    [Theory]
    [MemberData(nameof(Checks))]
    public void A_row_of_the_check_values(string id, string tag, string source)
    {
        var row = ReferenceTable.CheckValue(id);
        Assert.Contains(tag, new[] { "CONFIRMED", "DERIVED" });
        Assert.NotEmpty(source);
        double[] inputs = [.. row["inputs"].Split(' ', ',').Select(static word => double.TryParse(word, System.Globalization.CultureInfo.InvariantCulture, out double number) ? number : double.NaN).Where(static number => !double.IsNaN(number))];
        CompoundSetting setting = id[0] == 'A'
            ? CompoundCut.InCorner(Angle.FromDegrees(inputs[0]), Angle.FromDegrees(inputs[1]))
            : CompoundCut.OfSides((int)inputs[0], Angle.FromDegrees(inputs[1]));
        double[] expected = [.. row["expected"].Split(" / ").Select(static word => double.Parse(word, System.Globalization.CultureInfo.InvariantCulture))];
        Assert.Equal(expected[0], setting.Mitre.Degrees, 0.005001); // printed to two decimals
        Assert.Equal(expected[1], setting.Bevel.Degrees, 0.005001);
    }

    /// <summary>DERIVED, check-values section 9: 38° in corners of 88° and 92°, 45° in 135° (the same as eight sides at 45°).</summary>
    [Theory]
    [InlineData(38, 88, 32.52, 34.53)]
    [InlineData(38, 92, 30.73, 33.19)]
    [InlineData(45, 135, 16.32, 15.70)]
    [InlineData(0, 90, 0, 45)] // flat on the wall: a plain bevel
    [InlineData(90, 90, 45, 0)] // flat on the ceiling: a plain mitre
    [InlineData(30, 180, 0, 0)] // a straight wall: square
    public void Corners_by_hand(double spring, double corner, double mitre, double bevel)
    {
        CompoundSetting inside = CompoundCut.InCorner(Angle.FromDegrees(spring), Angle.FromDegrees(corner)), outside = CompoundCut.InCorner(Angle.FromDegrees(spring), Angle.FromDegrees(360 - corner));
        Assert.Equal(mitre, inside.Mitre.Degrees, 0.005001);
        Assert.Equal(bevel, inside.Bevel.Degrees, 0.005001);
        Assert.Equal(-inside.Mitre.Degrees, outside.Mitre.Degrees, 1e-9);
        Assert.Equal(-inside.Bevel.Degrees, outside.Bevel.Degrees, 1e-9);
    }

    /// <summary>Two pieces put into a corner by rotation, then the whole van turned any way: the general form gives the corner's; the other piece has the mitre turned; so has a view of the backs, and the bevel too.</summary>
    [Property(MaxTest = 500)]
    public void The_general_form_agrees_with_the_corner(int seed)
    {
        Random random = new(seed);
        double spring = random.Next(6) switch { 0 => 0, 1 => 90, _ => random.NextDouble() * 90 }, corner = random.Next(8) == 0 ? 180 : 3 + (random.NextDouble() * 354);
        (Direction face, Direction axis, Direction otherFace, Direction otherAxis) = InWalls(spring, corner);
        CompoundSetting expected = CompoundCut.InCorner(Angle.FromDegrees(spring), Angle.FromDegrees(corner));
        Same(expected, CompoundCut.Between(face, axis, otherFace, otherAxis), 1);
        Func<Direction, Direction> turn = Rotation(random);
        CompoundSetting turned = CompoundCut.Between(turn(face), turn(axis), turn(otherFace), turn(otherAxis));
        Same(expected, turned, 1);
        Same(expected, CompoundCut.Between(turn(otherFace), turn(otherAxis), turn(face), turn(axis)), -1);
        CompoundSetting backs = CompoundCut.Between(turn(Less(face)), turn(axis), turn(Less(otherFace)), turn(otherAxis));
        Assert.Equal(-expected.Mitre.Degrees, backs.Mitre.Degrees, 1e-7);
        Assert.Equal(-expected.Bevel.Degrees, backs.Bevel.Degrees, 1e-7);

        // In a mirror the hand changes: the mitre turns, the bevel stays.
        Same(expected, CompoundCut.Between(Mirror(face), Mirror(axis), Mirror(otherFace), Mirror(otherAxis)), -1);
        WorkingsCheck.Recompute(turned.Explain());
        WorkingsCheck.Recompute(expected.Explain());
    }

    /// <summary>A hopper is a corner of 180° - 360°/n with a spring angle of 90° - P, and the general form gives it from its sides' own directions.</summary>
    [Property]
    public void A_hopper_is_a_corner_too(int seed)
    {
        Random random = new(seed);
        int sides = 3 + random.Next(40);
        double pitch = random.Next(4) == 0 ? 0 : 1 + (random.NextDouble() * 89);
        CompoundSetting hopper = CompoundCut.OfSides(sides, Angle.FromDegrees(pitch));
        Same(hopper, CompoundCut.InCorner(Angle.FromDegrees(90 - pitch), Angle.FromDegrees(180 - (360.0 / sides))), 1);

        // Side 0 runs along y at x = -1 and meets side 1, which is side 0 turned by 360°/n about the upright, at its end toward less y. Faces look to the middle and down. Seen
        // along side 0 to that end its outer edge, the longer one, is on the left; along side 1 it is on the right: so the sign is that of side 1.
        double p = pitch * Math.PI / 180, turn = 2 * Math.PI / sides;
        Direction face = new(Math.Sin(p), 0, -Math.Cos(p)), axis = new(0, -1, 0);
        Direction otherFace = new(face.X * Math.Cos(turn), face.X * Math.Sin(turn), face.Z), otherAxis = new(-Math.Sin(turn), Math.Cos(turn), 0);
        Same(hopper, CompoundCut.Between(otherFace, otherAxis, face, axis), 1);
        Same(hopper, CompoundCut.Between(face, axis, otherFace, otherAxis), -1);
        WorkingsCheck.Recompute(hopper.Explain());
    }

    /// <summary>Any two pieces, of unlike pitch too: the ends rebuilt from both settings face each other, the plane holds the line where the faces meet, and leans alike to both.</summary>
    [Property(MaxTest = 500)]
    public void Both_ends_lie_in_one_plane_through_the_line_where_the_faces_meet(int seed)
    {
        Random random = new(seed);
        int met = 0;
        for (int i = 0; i < 20; i++)
        {
            Direction face = Any(random), otherFace = Any(random), axis = Across(face, Any(random)), otherAxis = Across(otherFace, Any(random));
            if (CompoundCut.CheckBetween(face, axis, otherFace, otherAxis).Count > 0)
            {
                continue;
            }

            met++;
            Direction end = End(CompoundCut.Between(face, axis, otherFace, otherAxis), face, axis), otherEnd = End(CompoundCut.Between(otherFace, otherAxis, face, axis), otherFace, otherAxis);
            Assert.Equal(-1, Dot(end, otherEnd), 1e-9);
            Assert.Equal(0, Dot(end, Across(face, otherFace)), 1e-7);
            Assert.Equal(Dot(end, face), Dot(otherEnd, otherFace), 1e-7);
            Assert.True(Dot(end, axis) > 0);
        }

        Assert.True(met > 0);
    }

    [Fact]
    public void A_saw_that_does_not_reach_is_said()
    {
        // Square corners and flat frames meet the limits exactly: 45° of bevel, and 50° of mitre in a corner of 80°.
        Assert.Empty(CompoundCut.InCorner(Angle.FromDegrees(0), Angle.FromDegrees(90)).Findings);
        Assert.Empty(CompoundCut.InCorner(Angle.FromDegrees(90), Angle.FromDegrees(80)).Findings);
        Finding bevel = Assert.Single(CompoundCut.InCorner(Angle.FromDegrees(0), Angle.FromDegrees(89.99)).Findings);
        Assert.Equal(("geometry-cut-bevel-over", Severity.Caution), (bevel.Code, bevel.Severity));
        Assert.Equal(45.005, bevel.Values[0].Value, 1e-9);
        Assert.Equal("geometry-cut-mitre-over", Assert.Single(CompoundCut.InCorner(Angle.FromDegrees(90), Angle.FromDegrees(79.99)).Findings).Code);
        Assert.Equal("geometry-cut-mitre-over", Assert.Single(CompoundCut.InCorner(Angle.FromDegrees(90), Angle.FromDegrees(280.01)).Findings).Code);
    }

    [Fact]
    public void Directions_that_are_no_joint_are_refused_by_name()
    {
        Direction up = new(0, 0, 1), front = new(1, 0, 0), rear = new(-1, 0, 0), side = new(0, 1, 0);
        Assert.Equal(["face", "axis", "otherFace", "otherAxis"], CompoundCut.CheckBetween(default, new(double.NaN, 0, 1), new(0, double.PositiveInfinity, 0), new(2e6, 0, 0)).Select(static problem => problem.Parameter));

        // An axis out of its face by more than 0.1°: 0.002 in 1 is 0.115°, 0.0017 is 0.097°.
        Assert.Equal("axis", Assert.Single(CompoundCut.CheckBetween(up, new(1, 0, 0.002), up, rear)).Parameter);
        Assert.Empty(CompoundCut.CheckBetween(up, new(1, 0, 0.0017), up, rear));
        Assert.Equal(0, CompoundCut.Between(up, new(1, 0, 0.0017), up, rear).Mitre.Degrees, 1e-9);

        // Side by side, back to back, and from one side of the plane between.
        Assert.Equal("otherAxis", Assert.Single(CompoundCut.CheckBetween(up, front, up, front)).Parameter);
        Assert.Equal("otherAxis", Assert.Single(CompoundCut.CheckBetween(up, front, new(0, 0, -1), rear)).Parameter);
        Assert.Equal("otherAxis", Assert.Single(CompoundCut.CheckBetween(up, front, rear, side)).Parameter);
        Assert.Throws<ArgumentOutOfRangeException>(() => CompoundCut.Between(up, front, up, front));

        // In one plane at a right angle: a plain mitre of 45°.
        Assert.Equal((45.0, 0.0), (Math.Round(Math.Abs(CompoundCut.Between(up, front, up, side).Mitre.Degrees), 9), Math.Round(CompoundCut.Between(up, front, up, side).Bevel.Degrees, 9)));
    }

    /// <summary>A plain mitre seen from above: the piece runs to the front (x), the other comes from the left (runs to y less): the long point is on the right, away from where the other comes from.</summary>
    [Fact]
    public void The_mitre_is_positive_where_the_right_hand_edge_is_longer()
    {
        // Piece along x up to the joint at the origin, face up; y is to its left. The other lies along positive y and runs toward y less. Cut plane halves: x = -y, so at the right edge (y = -1) the piece ends at x = 1, at the left at x = -1.
        CompoundSetting setting = CompoundCut.Between(new(0, 0, 1), new(1, 0, 0), new(0, 0, 1), new(0, -1, 0));
        Assert.Equal(45, setting.Mitre.Degrees, 1e-9);
        Assert.Equal(-45, CompoundCut.Between(new(0, 0, 1), new(1, 0, 0), new(0, 0, 1), new(0, 1, 0)).Mitre.Degrees, 1e-9);
    }

    [Fact]
    public void Equal_settings_are_equal_however_they_came_about()
    {
        CompoundSetting corner = CompoundCut.InCorner(Angle.FromDegrees(45), Angle.FromDegrees(90)), hopper = CompoundCut.OfSides(4, Angle.FromDegrees(45)), outside = CompoundCut.InCorner(Angle.FromDegrees(45), Angle.FromDegrees(270));
        Assert.True(corner == hopper);
        Assert.Equal(corner.GetHashCode(), hopper.GetHashCode());
        Assert.True(corner != outside);
        Assert.Equal(default, CompoundCut.InCorner(Angle.FromDegrees(20), Angle.FromDegrees(180)));
        Assert.Equal(default(CompoundSetting).GetHashCode(), CompoundCut.InCorner(Angle.FromDegrees(20), Angle.FromDegrees(180)).GetHashCode());
    }

    [Fact]
    public void A_setting_allocates_nothing()
    {
        (Angle spring, Angle corner) = (Angle.FromDegrees(38), Angle.FromDegrees(60));
        (Direction face, Direction axis, Direction otherFace, Direction otherAxis) = InWalls(10, 60);
        AllocatesNothing(() => CompoundCut.InCorner(spring, corner).HasProblem);
        AllocatesNothing(() => CompoundCut.OfSides(3, spring).HasProblem);
        AllocatesNothing(() => CompoundCut.Between(face, axis, otherFace, otherAxis).HasProblem);
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

    private static void Same(CompoundSetting expected, CompoundSetting actual, int hand)
    {
        Assert.Equal(hand * expected.Mitre.Degrees, actual.Mitre.Degrees, 1e-7);
        Assert.Equal(expected.Bevel.Degrees, actual.Bevel.Degrees, 1e-7);
    }

    /// <summary>Two walls that meet at the origin, z up: one along x, its room at y above 0; the other turned by the corner. Each piece leans off its wall at its foot, so its face looks into the room and down.</summary>
    private static (Direction Face, Direction Axis, Direction OtherFace, Direction OtherAxis) InWalls(double springDegrees, double cornerDegrees)
    {
        double spring = springDegrees * Math.PI / 180, corner = cornerDegrees * Math.PI / 180;
        return (
            new(0, Math.Cos(spring), -Math.Sin(spring)), new(-1, 0, 0),
            new(Math.Cos(spring) * Math.Sin(corner), -Math.Cos(spring) * Math.Cos(corner), -Math.Sin(spring)), new(-Math.Cos(corner), -Math.Sin(corner), 0));
    }

    /// <summary>The normal of the cut end, from the setting alone: turned by the mitre from the axis toward the left, tilted by the bevel toward the face.</summary>
    private static Direction End(CompoundSetting setting, Direction face, Direction axis)
    {
        Direction left = Across(face, axis);
        (double m, double b) = (setting.Mitre.Radians, setting.Bevel.Radians);
        (double a, double l, double n) = (Math.Cos(b) * Math.Cos(m), Math.Cos(b) * Math.Sin(m), Math.Sin(b));
        return new((a * axis.X) + (l * left.X) + (n * face.X), (a * axis.Y) + (l * left.Y) + (n * face.Y), (a * axis.Z) + (l * left.Z) + (n * face.Z));
    }

    private static Direction Any(Random random)
    {
        double up = (random.NextDouble() * 2) - 1, round = random.NextDouble() * 2 * Math.PI, level = Math.Sqrt(1 - (up * up));
        return new(level * Math.Cos(round), level * Math.Sin(round), up);
    }

    private static Func<Direction, Direction> Rotation(Random random)
    {
        Direction x = Any(random), y = Across(x, Any(random)), z = Across(x, y);
        return at => new((at.X * x.X) + (at.Y * y.X) + (at.Z * z.X), (at.X * x.Y) + (at.Y * y.Y) + (at.Z * z.Y), (at.X * x.Z) + (at.Y * y.Z) + (at.Z * z.Z));
    }

    /// <summary>The cross product, of length 1.</summary>
    private static Direction Across(Direction one, Direction other)
    {
        Direction cross = new((one.Y * other.Z) - (one.Z * other.Y), (one.Z * other.X) - (one.X * other.Z), (one.X * other.Y) - (one.Y * other.X));
        double size = Math.Sqrt(Dot(cross, cross));
        return new(cross.X / size, cross.Y / size, cross.Z / size);
    }

    private static double Dot(Direction one, Direction other) => (one.X * other.X) + (one.Y * other.Y) + (one.Z * other.Z);

    private static Direction Less(Direction at) => new(-at.X, -at.Y, -at.Z);

    private static Direction Mirror(Direction at) => new(-at.X, at.Y, at.Z);
}
