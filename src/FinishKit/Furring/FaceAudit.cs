using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>What no rule of the setting-out rules out: pieces over each other, and sides of openings without a strip.</summary>
internal static class FaceAudit
{
    /// <summary>Two roundings to the grid.</summary>
    private const double Slack = 3 * Allowed.OneStep;

    internal static void Add(List<Finding> findings, FaceNumbers face, IReadOnlyList<FurringPiece> pieces)
    {
        AddOverlaps(findings, face, pieces);
        foreach (FaceBox opening in face.Openings)
        {
            AddSide(findings, face, pieces, opening, 0);
            AddSide(findings, face, pieces, opening, 1);
            AddSide(findings, face, pieces, opening, 2);
            AddSide(findings, face, pieces, opening, 3);
        }
    }

    /// <summary>Sorted by where they begin across the strips, each is held against those that begin before it ends.</summary>
    private static void AddOverlaps(List<Finding> findings, FaceNumbers face, IReadOnlyList<FurringPiece> pieces)
    {
        (double S, double T)[][] corners = new (double, double)[pieces.Count][];
        double[] low = new double[pieces.Count], high = new double[pieces.Count];
        int[] order = new int[pieces.Count];
        for (int i = 0; i < order.Length; i++)
        {
            corners[i] = pieces[i].Corners();
            (low[i], high[i], order[i]) = (double.MaxValue, double.MinValue, i);
            foreach ((double s, _) in corners[i])
            {
                (low[i], high[i]) = (Math.Min(low[i], s), Math.Max(high[i], s));
            }
        }

        Array.Sort((double[])low.Clone(), order);
        for (int i = 0; i < order.Length; i++)
        {
            for (int j = i + 1; j < order.Length && low[order[j]] < high[order[i]] - Slack; j++)
            {
                int one = Math.Min(order[i], order[j]), other = Math.Max(order[i], order[j]);
                double depth = Depth(corners[one], corners[other]);
                if (depth > Slack)
                {
                    findings.Add(new Finding("furring-strips-overlap", Severity.Caution, $"The pieces {pieces[one]}, and {pieces[other]}, overlap by {Print.Mm(depth)}: cut one at the other, or put one wider strip in the place of both.", [new("piece", one, string.Empty), new("other-piece", other, string.Empty), new("overlap", Grid.Snap(depth), "mm")], Sources.FurringLayout));
                }
            }
        }
    }

    /// <summary>How deep two convex outlines lie in each other: the least over the directions square to their sides; 0 or less if they do not.</summary>
    private static double Depth((double S, double T)[] one, (double S, double T)[] other)
    {
        double depth = double.MaxValue;
        for (int i = 0; i < 8 && depth > 0; i++)
        {
            (double S, double T)[] of = i < 4 ? one : other;
            (double s0, double t0) = of[i % 4];
            (double s1, double t1) = of[(i + 1) % 4];
            double length = Math.Sqrt(((s1 - s0) * (s1 - s0)) + ((t1 - t0) * (t1 - t0)));
            if (length > 0)
            {
                (double low0, double high0) = Along(one, (t0 - t1) / length, (s1 - s0) / length);
                (double low1, double high1) = Along(other, (t0 - t1) / length, (s1 - s0) / length);
                depth = Math.Min(depth, Math.Min(high0, high1) - Math.Max(low0, low1));
            }
        }

        return depth;
    }

    private static (double Low, double High) Along((double S, double T)[] corners, double s, double t)
    {
        double low = double.MaxValue, high = double.MinValue;
        foreach ((double atS, double atT) in corners)
        {
            double at = (atS * s) + (atT * t);
            (low, high) = (Math.Min(low, at), Math.Max(high, at));
        }

        return (low, high);
    }

    /// <summary>How much of a side has neither a strip along it nor another opening, furniture or the edge of the face.</summary>
    private static void AddSide(List<Finding> findings, FaceNumbers face, IReadOnlyList<FurringPiece> pieces, in FaceBox opening, int side)
    {
        bool isUpright = side < 2;
        double edge = side switch { 0 => opening.S0, 1 => opening.S1, 2 => opening.T0, _ => opening.T1 };
        double from = isUpright ? opening.T0 : opening.S0, to = isUpright ? opening.T1 : opening.S1;
        if (edge <= 0 || edge >= (isUpright ? face.S : face.T))
        {
            return;
        }

        List<(double From, double To)> covered = [];
        int outward = side is 0 or 2 ? -1 : 1;
        foreach (FurringPiece piece in pieces)
        {
            if (piece.IsLeaning)
            {
                continue;
            }

            // An end cut to a leaning edge counts up to its short point.
            double half = piece.WidthMm / 2, start = half * Math.Tan(piece.StartAngle.Radians), end = half * Math.Tan(piece.EndAngle.Radians);
            FaceBox box = piece.IsAcross ? new FaceBox(piece.S0 + start, piece.S1 - end, piece.T0 - half, piece.T0 + half) : new FaceBox(piece.S0 - half, piece.S0 + half, piece.T0 + start, piece.T1 - end);
            Cover(box);
        }

        foreach (FaceBox other in face.Openings)
        {
            Cover(other);
        }

        foreach (FaceBox stop in face.Stops)
        {
            if (isUpright ? stop.S0 <= edge && edge <= stop.S1 : stop.T0 <= edge && edge <= stop.T1)
            {
                covered.Add(isUpright ? (stop.T0, stop.T1) : (stop.S0, stop.S1));
            }
        }

        covered.Sort(static (one, other) => one.From.CompareTo(other.From));
        double cursor = from, bare = 0, place = 0;
        foreach ((double start, double end) in covered)
        {
            Leave(Math.Min(start, to));
            cursor = Math.Max(cursor, end);
        }

        Leave(to);
        if (bare > 0)
        {
            (double s, double t) = isUpright ? (edge, place) : (place, edge);
            (double u, double v) = face.IsTurned ? (t, s) : (s, t);
            findings.Add(new Finding("furring-opening-unframed", Severity.Caution, $"Along the side of the opening at u {Print.Mm(u)}, v {Print.Mm(v)}, {Print.Mm(bare)} have no strip right beside them: the finish stands free there.", [new("bare", Grid.Snap(bare), "mm"), new("u", Grid.Snap(u), "mm"), new("v", Grid.Snap(v), "mm")], Sources.FurringLayout));
        }

        void Cover(in FaceBox box)
        {
            double near = side switch { 0 => box.S1, 1 => box.S0, 2 => box.T1, _ => box.T0 }, far = side switch { 0 => box.S0, 1 => box.S1, 2 => box.T0, _ => box.T1 };
            if (Math.Abs(near - edge) <= Slack && (far - edge) * outward > 0)
            {
                covered.Add(isUpright ? (box.T0, box.T1) : (box.S0, box.S1));
            }
        }

        void Leave(double until)
        {
            if (until - cursor > Slack)
            {
                (bare, place) = (bare + until - cursor, (cursor + until) / 2);
            }
        }
    }
}
