using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static FinishKit.Measure;

namespace FinishKit.Tests.Boards;

/// <summary>A random face of the size of a van's wall, in whole micrometres: openings that touch foot or head, edges on joints, narrow bands between edges.</summary>
internal sealed class CourseTrial
{
    private readonly Random _random;

    internal CourseTrial(int seed, bool tapers = false, bool gaps = true)
    {
        _random = new Random(seed);
        int face = _random.Next(30, 150) * 1000, gap = gaps && _random.Next(3) == 0 ? _random.Next(1, 40) * 100 : 0, cover = face + gap;
        int length = 2 * _random.Next(1000, 2500) * 1000;
        int girth = _random.Next(5) == 0 ? (cover * _random.Next(1, 8)) - gap : _random.Next(20_000, 1_100_000);
        int front = girth, rear = girth;
        if (tapers)
        {
            front = Math.Max(15_000, girth + _random.Next(-40_000, 40_000));
            rear = _random.Next(3) == 0 ? girth : Math.Max(15_000, girth + _random.Next(-90_000, 40_000));
        }

        List<FaceOpening> openings = [];
        int least = Math.Min(girth, Math.Min(front, rear));
        for (int more = _random.Next(0, 4); more > 0; more--)
        {
            int u0 = _random.Next(0, length - 200_000), u1 = u0 + _random.Next(100_000, 200_000 + ((length - u0 - 200_000) / 2));
            int v0 = _random.Next(4) switch
            {
                0 => 0,
                1 => Math.Min(least - 2000, cover * _random.Next(0, 5)),
                _ => _random.Next(0, least - 1000),
            };
            int v1 = _random.Next(5) switch
            {
                0 => least,
                1 => Math.Max(v0 + 1000, least - _random.Next(1, 60_000)),
                _ => v0 + _random.Next(500, Math.Max(501, least - v0)),
            };
            FaceOpening opening = new(Um(u0), Um(u1), Um(v0), Um(Math.Min(v1, least)));
            if (v1 > v0 && openings.TrueForAll(other => !Overlap(opening, other)))
            {
                openings.Add(opening);
            }
        }

        Face = new CourseFace(Um(length), Um(girth), BoardCover.SquareEdged(Um(face), Um(gap)))
        {
            GirthAtFront = tapers ? Um(front) : null,
            GirthAtRear = tapers ? Um(rear) : null,
            Openings = [.. openings],
            SetOutError = Um(_random.Next(4) switch
            {
                0 => 0,
                1 => _random.Next(0, 12_000),
                _ => 3000,
            }),
        };
    }

    internal CourseFace Face { get; }

    internal Random Random => _random;

    internal static Length At(long nanometres) => Mm(nanometres / 1e6);

    /// <summary>The face with every length changed up the girth.</summary>
    internal static CourseFace Mirrored(CourseFace face)
    {
        long head = CourseOracle.Nm(face.Girth);
        return face with { Openings = [.. face.Openings.Select(opening => opening with { FromV = At(head - CourseOracle.Nm(opening.ToV)), ToV = At(head - CourseOracle.Nm(opening.FromV)) })] };
    }

    /// <summary>Front and rear changed about.</summary>
    internal static CourseFace Turned(CourseFace face)
    {
        long length = CourseOracle.Nm(face.FaceLength);
        return face with
        {
            GirthAtFront = face.GirthAtRear,
            GirthAtRear = face.GirthAtFront,
            Openings = [.. face.Openings.Select(opening => opening with { FromU = At(length - CourseOracle.Nm(opening.ToU)), ToU = At(length - CourseOracle.Nm(opening.FromU)) })],
        };
    }

    private static bool Overlap(FaceOpening one, FaceOpening other) =>
        one.FromU.Millimeters < other.ToU.Millimeters && other.FromU.Millimeters < one.ToU.Millimeters && one.FromV.Millimeters < other.ToV.Millimeters && other.FromV.Millimeters < one.ToV.Millimeters;

    private static Length Um(int micrometres) => Mm(micrometres / 1000.0);
}
