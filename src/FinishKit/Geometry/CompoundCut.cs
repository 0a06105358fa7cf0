using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>How a saw is set for the end of a piece that leans in a corner: how far it turns (mitre) and how far it tilts (bevel), the piece lying flat.</summary>
/// <remarks>
/// Both angles are measured from square. The bevel is positive where the back comes out longer than the face, as in an inside corner. The mitre is
/// positive where the edge on the wall comes out longer, as there; for directions in space where the right-hand edge does, looking along the piece toward the joint with its face up.
/// </remarks>
public static class CompoundCut
{
    private const double Degree = Math.PI / 180;

    /// <summary>Degrees within which an axis lies in its face, and two faces in one plane.</summary>
    private const double Flat = 0.1;

    private static readonly Allowed s_spring = new(0, 90, "deg");
    private static readonly Allowed s_corner = new(1, 359, "deg");
    private static readonly Allowed s_pitch = new(0, 90, "deg");
    private static readonly Allowed s_sides = new(3, 100, "sides");
    private static readonly Allowed s_component = new(-1e6, 1e6, string.Empty);

    /// <summary>A piece that leans off the wall, meeting its like in a corner of two walls.</summary>
    /// <param name="spring">Angle between the piece's back and the wall [angle], 0° to 90°: 0° flat on the wall, 90° flat on the ceiling.</param>
    /// <param name="corner">Angle of the corner on the room's side [angle], 1° to 359°: under 180° an inside corner, over it an outside one; 90° and 270° are the square ones.</param>
    /// <returns>The setting; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: M = atan(sin S/tan(C/2)); B = asin(cos S cos(C/2)).</para>
    /// <para>Validity: two pieces of one spring angle, cut in the plane that halves the corner. An outside corner turns both signs.</para>
    /// <para>Source: geometry-compound-cut (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">An angle is outside its range or in an undefined unit.</exception>
    /// <example><code>
    /// CompoundSetting inside = CompoundCut.InCorner(Angle.FromDegrees(38), Angle.FromDegrees(90));
    /// double mitre = inside.Mitre.Degrees;                // 31.62
    /// double bevel = inside.Bevel.Degrees;                // 33.86
    /// </code></example>
    public static CompoundSetting InCorner(Angle spring, Angle corner)
    {
        double springDegrees = Door.Number(Door.Degrees(spring), nameof(spring), s_spring, null), cornerDegrees = Door.Number(Door.Degrees(corner), nameof(corner), s_corner, null);
        (double mitre, double bevel) = SolveCorner(springDegrees, cornerDegrees, default(Silent));
        return new CompoundSetting(mitre, bevel, springDegrees, cornerDegrees);
    }

    /// <summary>All problems with the input of <see cref="InCorner(Angle, Angle)"/>; nothing is thrown.</summary>
    /// <param name="spring">As there.</param>
    /// <param name="corner">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckInCorner(Angle spring, Angle corner)
    {
        List<InputProblem> problems = [];
        Door.Number(Door.Degrees(spring), nameof(spring), s_spring, problems);
        Door.Number(Door.Degrees(corner), nameof(corner), s_corner, problems);
        return problems;
    }

    /// <summary>The sides of a regular hopper, or of a frame round a vent whose sides slope.</summary>
    /// <param name="sides">How many sides, 3 to 100.</param>
    /// <param name="pitch">How steep each side stands [angle], 0° to 90°: 0° a flat frame, 90° an upright box.</param>
    /// <returns>The setting; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: tan M = tan(180°/n) cos P; sin B = sin(180°/n) sin P.</para>
    /// <para>Validity: equal sides of one pitch. The same as a spring angle of 90° - P in corners of 180° - 360°/n.</para>
    /// <para>Source: geometry-compound-cut (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit.</exception>
    /// <example><code>
    /// CompoundSetting hopper = CompoundCut.OfSides(4, Angle.FromDegrees(45));
    /// double mitre = hopper.Mitre.Degrees;                // 35.26
    /// double bevel = hopper.Bevel.Degrees;                // 30
    /// </code></example>
    public static CompoundSetting OfSides(int sides, Angle pitch)
    {
        double count = Door.Number(sides, nameof(sides), s_sides, null), pitchDegrees = Door.Number(Door.Degrees(pitch), nameof(pitch), s_pitch, null);
        (double mitre, double bevel) = SolveSides(count, pitchDegrees, default(Silent));
        return new CompoundSetting(mitre, bevel, sides, pitchDegrees);
    }

    /// <summary>All problems with the input of <see cref="OfSides(int, Angle)"/>; nothing is thrown.</summary>
    /// <param name="sides">As there.</param>
    /// <param name="pitch">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckOfSides(int sides, Angle pitch)
    {
        List<InputProblem> problems = [];
        Door.Number(sides, nameof(sides), s_sides, problems);
        Door.Number(Door.Degrees(pitch), nameof(pitch), s_pitch, problems);
        return problems;
    }

    /// <summary>A piece that meets another, both given by their faces and the way they run; the cut lies in the plane that halves the angle between the faces.</summary>
    /// <param name="face">Square out of the piece's face, toward the room; three numbers from -1000000 to 1000000, not all 0.</param>
    /// <param name="axis">Along the piece toward the joint, square to its face within 0.1°; what it is off is taken out.</param>
    /// <param name="otherFace">The same of the piece it meets; toward the same room.</param>
    /// <param name="otherAxis">The same of the piece it meets, toward the joint.</param>
    /// <returns>The setting for the first piece; nothing is allocated. Ask the other way round for the other: like pieces have the mitre with its sign turned.</returns>
    /// <remarks>
    /// <para>Formula: m = n1 - n2, in one plane a1 - a2, turned off the end; l = n1 x a1; tan M = m·l/m·a1; sin B = m·n1/|m|.</para>
    /// <para>Validity: pieces that come to the joint from either side of the halving plane, at 1° to it or more. Faces within 0.1° of each other are one plane. Pieces of unlike pitch meet face to face, but their edges need not.</para>
    /// <para>Source: geometry-compound-cut (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">A direction is none, an axis is not in its face, or the pieces do not meet at their ends.</exception>
    /// <example><code>
    /// Direction wall = new(0, 1, 0), toJoint = new(-1, 0, 0), otherWall = new(1, 0, 0), otherToJoint = new(0, -1, 0);
    /// CompoundSetting upright = CompoundCut.Between(wall, toJoint, otherWall, otherToJoint);
    /// double mitre = upright.Mitre.Degrees;               // 0: flat on the walls of a square corner
    /// double bevel = upright.Bevel.Degrees;               // 45, the back longer
    /// </code></example>
    public static CompoundSetting Between(Direction face, Direction axis, Direction otherFace, Direction otherAxis)
    {
        JoinedPieces pieces = ReadBetween(face, axis, otherFace, otherAxis, null);
        (double mitre, double bevel) = SolveBetween(pieces, default(Silent));
        return new CompoundSetting(mitre, bevel, pieces);
    }

    /// <summary>All problems with the input of <see cref="Between(Direction, Direction, Direction, Direction)"/>; nothing is thrown.</summary>
    /// <param name="face">As there.</param>
    /// <param name="axis">As there.</param>
    /// <param name="otherFace">As there.</param>
    /// <param name="otherAxis">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckBetween(Direction face, Direction axis, Direction otherFace, Direction otherAxis)
    {
        List<InputProblem> problems = [];
        ReadBetween(face, axis, otherFace, otherAxis, problems);
        return problems;
    }

    /// <summary>The one formula body of a leaning piece in a corner.</summary>
    internal static (double Mitre, double Bevel) SolveCorner<TTrace>(double springDegrees, double cornerDegrees, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("S_deg", springDegrees, "deg", Sources.Given, meaning: "spring angle, from the wall");
        trace.Given("C_deg", cornerDegrees, "deg", Sources.Given, meaning: "corner, on the room's side");
        double spring = trace.Step("S", nameof(spring), springDegrees * Math.PI / 180, "rad", Sources.CompoundCut);
        double corner = trace.Step("C", nameof(corner), cornerDegrees * Math.PI / 180, "rad", Sources.CompoundCut);
        double mitre = trace.Step("M", nameof(mitre), Math.Atan(Math.Sin(spring) / Math.Tan(corner / 2)), "rad", Sources.CompoundCut);
        double bevel = trace.Step("B", nameof(bevel), Math.Asin(Math.Cos(spring) * Math.Cos(corner / 2)), "rad", Sources.CompoundCut);
        return InDegrees(mitre, bevel, trace);
    }

    /// <summary>The one formula body of a hopper's side.</summary>
    internal static (double Mitre, double Bevel) SolveSides<TTrace>(double sides, double pitchDegrees, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("n", sides, string.Empty, Sources.Given, meaning: "number of sides");
        trace.Given("P_deg", pitchDegrees, "deg", Sources.Given, meaning: "pitch of a side, from flat");
        double pitch = trace.Step("P", nameof(pitch), pitchDegrees * Math.PI / 180, "rad", Sources.CompoundCut);
        double turn = trace.Step("T", nameof(turn), Math.PI / sides, "rad", Sources.CompoundCut);
        double mitre = trace.Step("M", nameof(mitre), Math.Atan(Math.Tan(turn) * Math.Cos(pitch)), "rad", Sources.CompoundCut);
        double bevel = trace.Step("B", nameof(bevel), Math.Asin(Math.Sin(turn) * Math.Sin(pitch)), "rad", Sources.CompoundCut);
        return InDegrees(mitre, bevel, trace);
    }

    /// <summary>The one formula body of two pieces by their directions.</summary>
    internal static (double Mitre, double Bevel) SolveBetween<TTrace>(in JoinedPieces pieces, TTrace trace)
        where TTrace : struct, ITrace
    {
        double faceX = pieces.Face.X, faceY = pieces.Face.Y, faceZ = pieces.Face.Z, axisX = pieces.Axis.X, axisY = pieces.Axis.Y, axisZ = pieces.Axis.Z;
        double otherX = pieces.Other.X, otherY = pieces.Other.Y, otherZ = pieces.Other.Z;
        trace.Given("n_x", faceX, string.Empty, Sources.Given, meaning: "out of the piece's face, of length 1, first axis");
        trace.Given("n_y", faceY, string.Empty, Sources.Given, meaning: "second axis");
        trace.Given("n_z", faceZ, string.Empty, Sources.Given, meaning: "third axis");
        trace.Given("a_x", axisX, string.Empty, Sources.Given, meaning: "along the piece to the joint, of length 1, first axis");
        trace.Given("a_y", axisY, string.Empty, Sources.Given, meaning: "second axis");
        trace.Given("a_z", axisZ, string.Empty, Sources.Given, meaning: "third axis");
        string otherIs = pieces.AreOnePlane ? "along the other piece to the joint (the faces lie in one plane), first axis" : "out of the other piece's face, first axis";
        trace.Given("o_x", otherX, string.Empty, Sources.Given, meaning: otherIs);
        trace.Given("o_y", otherY, string.Empty, Sources.Given, meaning: "second axis");
        trace.Given("o_z", otherZ, string.Empty, Sources.Given, meaning: "third axis");

        // Across the plane that halves the corner: from one face's normal to the other's; in one plane from one axis to the other.
        (double cutX, double cutY, double cutZ) = pieces.AreOnePlane
            ? (trace.Step("m_x", nameof(cutX), axisX - otherX, string.Empty, Sources.CompoundCut), trace.Step("m_y", nameof(cutY), axisY - otherY, string.Empty, Sources.CompoundCut), trace.Step("m_z", nameof(cutZ), axisZ - otherZ, string.Empty, Sources.CompoundCut))
            : (trace.Step("m_x", nameof(cutX), faceX - otherX, string.Empty, Sources.CompoundCut), trace.Step("m_y", nameof(cutY), faceY - otherY, string.Empty, Sources.CompoundCut), trace.Step("m_z", nameof(cutZ), faceZ - otherZ, string.Empty, Sources.CompoundCut));
        double side = (cutX * axisX) + (cutY * axisY) + (cutZ * axisZ) < 0 ? -1 : 1;
        trace.Given("t", side, string.Empty, Sources.CompoundCut, meaning: "sign that turns m off the end");
        double size = trace.Step("m", nameof(size), side * Math.Sqrt((cutX * cutX) + (cutY * cutY) + (cutZ * cutZ)), string.Empty, Sources.CompoundCut);
        double along = trace.Step("c_a", nameof(along), ((cutX * axisX) + (cutY * axisY) + (cutZ * axisZ)) / size, string.Empty, Sources.CompoundCut);
        double outward = trace.Step("c_n", nameof(outward), ((cutX * faceX) + (cutY * faceY) + (cutZ * faceZ)) / size, string.Empty, Sources.CompoundCut);
        double leftX = trace.Step("l_x", nameof(leftX), (faceY * axisZ) - (faceZ * axisY), string.Empty, Sources.CompoundCut);
        double leftY = trace.Step("l_y", nameof(leftY), (faceZ * axisX) - (faceX * axisZ), string.Empty, Sources.CompoundCut);
        double leftZ = trace.Step("l_z", nameof(leftZ), (faceX * axisY) - (faceY * axisX), string.Empty, Sources.CompoundCut);
        double across = trace.Step("c_l", nameof(across), ((cutX * leftX) + (cutY * leftY) + (cutZ * leftZ)) / size, string.Empty, Sources.CompoundCut);
        double mitre = trace.Step("M", nameof(mitre), Math.Atan(across / along), "rad", Sources.CompoundCut);
        double bevel = trace.Step("B", nameof(bevel), Math.Asin(Math.Max(-1, Math.Min(1, outward))), "rad", Sources.CompoundCut);
        return InDegrees(mitre, bevel, trace);
    }

    private static (double Mitre, double Bevel) InDegrees<TTrace>(double mitre, double bevel, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Step("M_deg", "mitreInDegrees", mitre * 180 / Math.PI, "deg", Sources.CompoundCut);
        trace.Step("B_deg", "bevelInDegrees", bevel * 180 / Math.PI, "deg", Sources.CompoundCut);
        return (mitre, bevel);
    }

    private static JoinedPieces ReadBetween(Direction face, Direction axis, Direction otherFace, Direction otherAxis, List<InputProblem>? problems)
    {
        bool isRead = IsDirection(face, nameof(face), problems) & IsDirection(axis, nameof(axis), problems) & IsDirection(otherFace, nameof(otherFace), problems) & IsDirection(otherAxis, nameof(otherAxis), problems);
        if (!isRead)
        {
            return default;
        }

        (Direction out1, Direction out2) = (face.Unit(), otherFace.Unit());
        Direction along1 = InFace(axis.Unit(), out1, nameof(axis), problems), along2 = InFace(otherAxis.Unit(), out2, nameof(otherAxis), problems);
        bool areOnePlane = out1.Plus(-1, out2).Size < Flat * Degree;
        Direction cut = areOnePlane ? along1.Plus(-1, along2) : out1.Plus(-1, out2);
        double reach1 = cut.Dot(along1) / cut.Size, reach2 = cut.Dot(along2) / cut.Size, least = Math.Sin(Degree);
        if (!(Math.Abs(reach1) >= least && Math.Abs(reach2) >= least && reach1 * reach2 < 0))
        {
            Door.Report(
                new InputProblem(nameof(otherAxis), otherAxis.ToString(), "an axis that runs to the joint from the other side of the plane that halves the faces, at 1° to it or more, as the first does from its side", isRange: true), problems);
        }

        return new JoinedPieces(out1, along1, areOnePlane ? along2 : out2, areOnePlane);
    }

    private static bool IsDirection(Direction direction, string parameter, List<InputProblem>? problems)
    {
        if (s_component.Holds(direction.X) && s_component.Holds(direction.Y) && s_component.Holds(direction.Z) && direction.Size >= 1e-6)
        {
            return true;
        }

        Door.Report(new InputProblem(parameter, direction.ToString(), "three numbers from -1000000 to 1000000, not all 0", isRange: true), problems);
        return false;
    }

    /// <summary>The axis with what it is off its face taken out.</summary>
    private static Direction InFace(Direction axis, Direction face, string parameter, List<InputProblem>? problems)
    {
        double off = axis.Dot(face);
        if (Math.Abs(off) > Math.Sin(Flat * Degree))
        {
            Door.Report(new InputProblem(parameter, $"{Print.Round(Math.Asin(Math.Max(-1, Math.Min(1, off))) / Degree, 3)}° off its face", $"in its face within {Print.Number(Flat)}°", isRange: true), problems);
        }

        return axis.Plus(-off, face).Unit();
    }
}
