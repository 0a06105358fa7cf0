using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static FinishKit.Measure;

namespace FinishKit.Tests.Furring;

/// <summary>A face drawn from a seed: every feature over its whole range, edges that meet built in. Also outlines and areas, worked apart from the library.</summary>
internal sealed class FurringTrial
{
    private readonly Random _random;

    internal FurringTrial(int seed, bool plain = false)
    {
        _random = new Random(seed);
        int length = At(800, 4000), girth = At(500, 1400);
        bool turned = _random.Next(2) == 0;
        List<FaceOpening> openings = [];
        for (int i = _random.Next(5); i > 0; i--)
        {
            int u0 = Edge(length - 60, openings.SelectMany(static o => new[] { o.FromU, o.ToU })), v0 = Edge(girth - 60, openings.SelectMany(static o => new[] { o.FromV, o.ToV }));
            int u1 = Math.Min(length, u0 + At(50, 1000)), v1 = Math.Min(girth, v0 + At(50, 600));
            if (!openings.Exists(o => Int(o.FromU) < u1 && u0 < Int(o.ToU) && Int(o.FromV) < v1 && v0 < Int(o.ToV)))
            {
                openings.Add(new FaceOpening(Mm(u0), Mm(u1), Mm(v0), Mm(v1)));
            }
        }

        Face = new FurringFace(Mm(length), Mm(girth), Mm(At(150, 900)))
        {
            Boards = turned ? BoardDirection.UpTheGirth : BoardDirection.AlongTheVan,
            Openings = openings,
            Ribs = Members(_random.Next(10), length, girth),
            Rails = Members(_random.Next(5), girth, length),
            ButtJoints = [.. Enumerable.Range(0, _random.Next(3)).Select(_ => Mm(At(0, turned ? girth : length)))],
            Joint = (JointStrip)_random.Next(2),
            Preference = (StripPreference)_random.Next(2),
            FixingSpacing = _random.Next(2) == 0 ? null : Mm(At(60, 400)),
            LeastDistance = _random.Next(3) == 0 ? Mm(At(40, 80)) : null,
        };
        if (!plain)
        {
            Face = Face with
            {
                BreakStrips = (BreakStrips)_random.Next(4),
                Breaks = [.. Enumerable.Range(0, _random.Next(4)).Select(_ => openings.Count > 0 && _random.Next(4) == 0 ? Int(openings[0].ToV) : At(1, girth)).Distinct().Select(at => new FaceBreak(Mm(Math.Max(1, at)), Angle.FromDegrees(_random.Next(10))))],
                Stops = [.. Enumerable.Range(0, _random.Next(3)).Select(_ => At(0, length - 50)).Select(u => new FurnitureStop(Mm(u), Mm(u + 50), Mm(At(1, girth / 2))))],
                FrontAtFoot = Lean(0),
                FrontAtHead = Lean(0),
                RearAtFoot = Lean(length),
                RearAtHead = Lean(length),
            };
        }
    }

    internal FurringFace Face { get; }

    internal static double Area((double U, double V)[] one, (double U, double V)[] other)
    {
        List<(double U, double V)> left = [.. one];
        for (int i = 0; i < other.Length && left.Count > 0; i++)
        {
            (double u0, double v0) = other[i];
            (double u1, double v1) = other[(i + 1) % other.Length];
            List<(double U, double V)> kept = [];
            for (int j = 0; j < left.Count; j++)
            {
                (double U, double V) a = left[j], b = left[(j + 1) % left.Count];
                double inA = ((u1 - u0) * (a.V - v0)) - ((v1 - v0) * (a.U - u0)), inB = ((u1 - u0) * (b.V - v0)) - ((v1 - v0) * (b.U - u0));
                if (inA >= 0)
                {
                    kept.Add(a);
                }

                if (inA >= 0 != inB >= 0)
                {
                    kept.Add((a.U + ((b.U - a.U) * inA / (inA - inB)), a.V + ((b.V - a.V) * inA / (inA - inB))));
                }
            }

            left = kept;
        }

        double twice = 0;
        for (int i = 0; i < left.Count; i++)
        {
            (double U, double V) a = left[i], b = left[(i + 1) % left.Count];
            twice += (a.U * b.V) - (b.U * a.V);
        }

        return twice / 2;
    }

    internal static (double U, double V)[] Box(double u0, double u1, double v0, double v1) => [(u0, v0), (u1, v0), (u1, v1), (u0, v1)];

    internal static (double U, double V)[] Box(FaceOpening o) => Box(o.FromU.Millimeters, o.ToU.Millimeters, o.FromV.Millimeters, o.ToV.Millimeters);

    /// <summary>A piece counter-clockwise; one cut to a leaning edge only up to its short points.</summary>
    internal static (double U, double V)[] Outline(FurringPiece piece)
    {
        double u0 = piece.StartU.Millimeters, v0 = piece.StartV.Millimeters, u1 = piece.EndU.Millimeters, v1 = piece.EndV.Millimeters, half = piece.Width.Millimeters / 2;
        double start = half * Math.Tan(piece.StartAngle.Radians), end = half * Math.Tan(piece.EndAngle.Radians);
        if (v0 == v1)
        {
            return Box(u0 + start, u1 - end, v0 - half, v0 + half);
        }

        if (u0 == u1)
        {
            return Box(u0 - half, u0 + half, v0 + start, v1 - end);
        }

        half /= Math.Cos(Math.Atan((u1 - u0) / (v1 - v0)));
        return [(u0 - half, v0), (u0 + half, v0), (u1 + half, v1), (u1 - half, v1)];
    }

    internal static bool Holds((double U, double V)[] outline, double u, double v, double slack)
    {
        for (int i = 0; i < outline.Length; i++)
        {
            (double u0, double v0) = outline[i];
            (double u1, double v1) = outline[(i + 1) % outline.Length];
            double length = Math.Sqrt(((u1 - u0) * (u1 - u0)) + ((v1 - v0) * (v1 - v0)));
            if ((((u1 - u0) * (v - v0)) - ((v1 - v0) * (u - u0))) / length < -slack)
            {
                return false;
            }
        }

        return true;
    }

    internal static FurringFace Mirrored(FurringFace face)
    {
        Length length = face.FaceLength;
        return face with
        {
            Openings = [.. face.Openings.Select(o => new FaceOpening(length - o.ToU, length - o.FromU, o.FromV, o.ToV))],
            Stops = [.. face.Stops.Select(stop => new FurnitureStop(length - stop.ToU, length - stop.FromU, stop.V))],
            Ribs = [.. face.Ribs.Select(rib => rib with { Centre = length - rib.Centre })],
            Rails = [.. face.Rails.Select(rail => rail with { From = length - (rail.To ?? length), To = length - (rail.From ?? Mm(0)) })],
            ButtJoints = face.Boards == BoardDirection.UpTheGirth ? face.ButtJoints : [.. face.ButtJoints.Select(at => length - at)],
            FrontAtFoot = length - (face.RearAtFoot ?? length),
            FrontAtHead = length - (face.RearAtHead ?? length),
            RearAtFoot = length - (face.FrontAtFoot ?? Mm(0)),
            RearAtHead = length - (face.FrontAtHead ?? Mm(0)),
        };
    }

    private static int Int(Length length) => (int)length.Millimeters;

    private int At(int from, int to) => _random.Next(from, to + 1);

    /// <summary>Anywhere, at the edge of the face, or near an edge that is there.</summary>
    private int Edge(int most, IEnumerable<Length> there)
    {
        int[] edges = [0, .. there.Select(Int)];
        return _random.Next(3) == 0 ? Math.Max(0, Math.Min(most, edges[_random.Next(edges.Length)] + (_random.Next(2) == 0 ? 0 : At(-90, 90)))) : At(0, most);
    }

    private Length? Lean(int edge) => _random.Next(3) == 0 ? Mm(Math.Abs(edge - At(0, 120))) : null;

    private ShellMember[] Members(int count, int extent, int run) => [.. Enumerable.Range(0, count).Select(_ => new ShellMember(Mm(At(-20, extent + 20)), Mm(At(20, 80)))
    {
        From = _random.Next(3) == 0 ? Mm(At(0, run / 2)) : null,
        To = _random.Next(3) == 0 ? Mm(At(run / 2, run)) : null,
        Setback = Mm(At(0, 5)),
    })];
}
