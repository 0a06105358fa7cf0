using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;

namespace FinishKit.Tests.Furring;

/// <summary>What must hold for every face. Outlines, areas and sums are worked here, from the faces and the pieces' public members.</summary>
[Properties(MaxTest = 300)]
public sealed class FurringLayoutProperties
{
    /// <summary>Along a straight strip: what openings with their trimmers, furniture, strips along breaks and leaning end strips leave is what its pieces have.</summary>
    [Property]
    public void Pieces_and_what_they_meet_add_up_to_the_height(DoNotSize<int> drawn)
    {
        int seed = drawn.Item;
        FurringFace face = new FurringTrial(seed).Face;
        FurringPlan plan = FurringLayout.LayOut(face);
        bool turned = face.Boards == BoardDirection.UpTheGirth;
        double length = face.FaceLength.Millimeters, girth = face.Girth.Millimeters;
        double[] front = [Or(face.FrontAtFoot, 0), Or(face.FrontAtHead, 0)], rear = [Or(face.RearAtFoot, length), Or(face.RearAtHead, length)];
        double total = 0;

        // Centre lines are on the grid: on a gentle slope that moves the place where two strips meet by more than a step.
        double gentleness = Math.Max(Gentle(front), Gentle(rear)), slack = 4e-6 + (2e-6 * gentleness);
        foreach (IGrouping<(double S, double Width), FurringPiece> line in plan.Pieces.Where(piece => IsUpright(piece, turned) && !IsLeaning(piece)).GroupBy(piece => (turned ? piece.StartV.Millimeters : piece.StartU.Millimeters, piece.Width.Millimeters)))
        {
            double low = line.Key.S - (line.Key.Width / 2), high = line.Key.S + (line.Key.Width / 2);
            List<(double From, double To)> met = [];
            foreach (FaceOpening o in face.Openings)
            {
                (double s0, double s1, double t0, double t1) = turned ? (Mm(o.FromV), Mm(o.ToV), Mm(o.FromU), Mm(o.ToU)) : (Mm(o.FromU), Mm(o.ToU), Mm(o.FromV), Mm(o.ToV));
                if (s0 < high - 1e-6 && low < s1 - 1e-6)
                {
                    met.Add((t0 - TrimmerAt(t0, -1), t1 + TrimmerAt(t1, 1)));
                }

                double TrimmerAt(double edge, int side) => plan.Pieces.Where(piece => piece.Role == StripRole.Trimmer && Across(piece) is var at && Math.Abs(at + (-side * piece.Width.Millimeters / 2) - edge) < 2e-6
                    && Start(piece) < s1 && End(piece) > s0).Select(static piece => piece.Width.Millimeters).FirstOrDefault();
                double Across(FurringPiece piece) => turned ? Mm(piece.StartU) : Mm(piece.StartV);
                double Start(FurringPiece piece) => turned ? Mm(piece.StartV) : Mm(piece.StartU);
                double End(FurringPiece piece) => turned ? Mm(piece.EndV) : Mm(piece.EndU);
            }

            foreach (FurnitureStop stop in face.Stops)
            {
                (double s0, double s1, double t0, double t1) = turned ? (0.0, Mm(stop.V), Mm(stop.FromU), Mm(stop.ToU)) : (Mm(stop.FromU), Mm(stop.ToU), 0.0, Mm(stop.V));
                if (s0 < high - 1e-6 && low < s1 - 1e-6)
                {
                    met.Add((t0, t1));
                }
            }

            double from = 0, to = girth;
            if (turned)
            {
                from = front[0] + ((front[1] - front[0]) * line.Key.S / girth);
                to = rear[0] + ((rear[1] - rear[0]) * line.Key.S / girth);
            }
            else
            {
                foreach (FurringPiece strip in plan.Pieces.Where(static piece => piece.Role == StripRole.Break))
                {
                    met.Add((Mm(strip.StartV) - (strip.Width.Millimeters / 2), Mm(strip.StartV) + (strip.Width.Millimeters / 2)));
                }

                // The inner side of a leaning end strip is a whole strip's width in, square to the edge.
                AddLeaning(front, low, 1);
                AddLeaning(rear, high, -1);
            }

            double left = 0, cursor = from;
            foreach ((double start, double end) in met.OrderBy(static range => range.From))
            {
                left += Math.Max(0, Math.Min(start, to) - cursor);
                cursor = Math.Min(to, Math.Max(cursor, end));
            }

            left += to - cursor;
            Assert.Equal(left, line.Sum(piece => turned ? Mm(piece.EndU) - Mm(piece.StartU) : Mm(piece.EndV) - Mm(piece.StartV)), slack);

            void AddLeaning(double[] edge, double side, int inward)
            {
                double slope = (edge[1] - edge[0]) / girth, inset = 40 * Math.Sqrt(1 + (slope * slope)) * inward;
                double over0 = (edge[0] + inset - side) * inward, over1 = (edge[1] + inset - side) * inward;
                if (slope != 0 && (over0 > 0 || over1 > 0))
                {
                    double meets = girth * over0 / (over0 - over1);
                    met.Add(over0 > 0 && over1 > 0 ? (0, girth) : over0 > 0 ? (0, meets) : (meets, girth));
                }
            }
        }

        foreach (FurringPiece piece in plan.Pieces)
        {
            total += piece.Length.Millimeters;
        }

        double Gentle(double[] edge) => edge[0] == edge[1] ? 0 : girth / Math.Abs(edge[1] - edge[0]);

        Assert.Equal(total, plan.RunningLength.Millimeters, 1e-4);
        Assert.Equal(total, (plan.UprightLength + plan.TrimmerLength + plan.BreakLength).Millimeters, 1e-4);
    }

    [Property]
    public void No_piece_lies_in_an_opening_and_none_overlap_in_silence(DoNotSize<int> drawn)
    {
        int seed = drawn.Item;
        FurringFace face = new FurringTrial(seed).Face;
        FurringPlan plan = FurringLayout.LayOut(face);
        (double, double)[][] outlines = [.. plan.Pieces.Select(FurringTrial.Outline)];
        Assert.All(outlines, outline => Assert.All(face.Openings, opening => Assert.InRange(FurringTrial.Area(outline, FurringTrial.Box(opening)), double.MinValue, 0.01)));
        HashSet<(int, int)> said = [.. plan.Findings.Where(static finding => finding.Code == "furring-strips-overlap").Select(static finding => ((int)finding.Values[0].Value, (int)finding.Values[1].Value))];
        for (int i = 0; i < outlines.Length; i++)
        {
            for (int j = i + 1; j < outlines.Length; j++)
            {
                double area = FurringTrial.Area(outlines[i], outlines[j]);
                Assert.True(area < 0.01 || said.Contains((i, j)), $"{plan.Pieces[i]} and {plan.Pieces[j]}: {area}");
                Assert.False(area <= 0 && said.Contains((i, j)) && plan.Pieces[i].StartAngle.Radians + plan.Pieces[j].StartAngle.Radians + plan.Pieces[i].EndAngle.Radians + plan.Pieces[j].EndAngle.Radians == 0, "an overlap that is none");
            }
        }
    }

    [Property]
    public void Every_opening_is_framed_or_a_finding_says_where_not(DoNotSize<int> drawn)
    {
        int seed = drawn.Item;
        FurringFace face = new FurringTrial(seed).Face;
        FurringPlan plan = FurringLayout.LayOut(face);
        foreach (FaceOpening opening in face.Openings)
        {
            for (int side = 0; side < 4; side++)
            {
                (double u, double v) = Middle(opening, side);
                bool said = plan.Findings.Any(finding => finding.Code == "furring-opening-unframed" && IsOn(opening, side, finding.Values[1].Value, finding.Values[2].Value));
                Assert.True(said || IsFramed(face, plan, opening, side), $"{opening}, side {side}");
            }
        }
    }

    /// <summary>Windows that keep three strips' width from each other, the edges and everything else: no overlap, nothing bare.</summary>
    [Property]
    public void Openings_that_keep_clear_are_framed_all_round_and_nothing_overlaps(DoNotSize<int> drawn)
    {
        int seed = drawn.Item;
        Random random = new(seed);
        BoardDirection boards = (BoardDirection)random.Next(2);
        List<FaceOpening> openings = [];
        int v = random.Next(120, 300), height = random.Next(80, 500);
        for (int u = random.Next(120, 300); u < 2800; u += random.Next(120, 500))
        {
            openings.Add(new FaceOpening(Mm(u), Mm(u += random.Next(80, 800)), Mm(v), Mm(v + height)));
            if (boards == BoardDirection.AlongTheVan)
            {
                (v, height) = (random.Next(120, 300), random.Next(80, 500)); // with boards up the girth whole strips beside one would meet those of the next
            }
        }

        FurringFace face = new(Mm(4000), Mm(1000), Mm(random.Next(300, 600))) { Openings = openings, Ribs = new FurringTrial(seed).Face.Ribs, Boards = boards };
        FurringPlan plan = FurringLayout.LayOut(face);
        Assert.DoesNotContain(plan.Findings, static finding => finding.Code is "furring-strips-overlap" or "furring-opening-unframed" or "furring-gap-narrow" or "furring-trimmer-narrowed");
        Assert.All(openings, opening => Assert.All(Enumerable.Range(0, 4), side => Assert.True(IsFramed(face, plan, opening, side))));
        Assert.Equal(openings.Sum(opening => 2 * (face.Boards == BoardDirection.UpTheGirth ? opening.ToV - opening.FromV : opening.ToU - opening.FromU).Millimeters), plan.TrimmerLength.Millimeters, 1e-6);
    }

    [Property]
    public void Bays_are_no_larger_than_allowed_where_strips_can_be_spaced(DoNotSize<int> drawn)
    {
        int seed = drawn.Item;
        FurringFace face = new FurringTrial(seed).Face;
        FurringPlan plan = FurringLayout.LayOut(face);
        Assert.True(plan.Spacing.IsFeasible ? plan.Spacing.Bays.All(bay => bay.Millimeters <= face.LargestBay.Millimeters) : plan.Findings.Any(static finding => finding.Code == "furring-bay-infeasible"));
        HashSet<double> lines = [.. plan.Pieces.Where(static piece => piece.Role == StripRole.Between).Select(piece => face.Boards == BoardDirection.UpTheGirth ? Mm(piece.StartV) : Mm(piece.StartU))];
        Assert.True(lines.IsSubsetOf(plan.Spacing.Strips.Where(static strip => strip.Kind != StripKind.Fixed).Select(static strip => strip.Position.Millimeters)));
    }

    [Property]
    public void Fixings_lie_on_their_piece_and_on_the_member_named(DoNotSize<int> drawn)
    {
        int seed = drawn.Item;
        FurringFace face = new FurringTrial(seed).Face;
        foreach (FurringPiece piece in FurringLayout.LayOut(face).Pieces)
        {
            (double, double)[] outline = FurringTrial.Outline(piece);
            double reach = piece.Width.Millimeters * Math.Max(Math.Tan(piece.StartAngle.Radians), Math.Tan(piece.EndAngle.Radians));
            foreach (ShellFixing fixing in piece.Fixings)
            {
                Assert.True((fixing.Rib is null) != (fixing.Rail is null));
                ShellMember member = fixing.Rib is { } rib ? face.Ribs[rib] : face.Rails[fixing.Rail!.Value];
                (double across, double along, double extent) = fixing.Rib is null ? (Mm(fixing.V), Mm(fixing.U), Mm(face.FaceLength)) : (Mm(fixing.U), Mm(fixing.V), Mm(face.Girth));
                Assert.InRange(Math.Abs(across - Mm(member.Centre)), 0, (Mm(member.Width) / 2) + 2e-6);
                Assert.InRange(along, Or(member.From, 0) - 2e-6, Or(member.To, extent) + 2e-6);
                Assert.True(Mm(piece.Length) < 2 * reach || FurringTrial.Holds(outline, Mm(fixing.U), Mm(fixing.V), reach + 2e-6), $"{piece}: {fixing}"); // a sliver has short points past each other
                Assert.Equal(Mm(member.Setback), Mm(fixing.Packer));
            }

            double spacing = Or(face.FixingSpacing, 250);
            foreach (IGrouping<(int?, int?), ShellFixing> row in piece.Fixings.GroupBy(static fixing => (fixing.Rib, fixing.Rail)))
            {
                Assert.All(row.Zip(row.Skip(1)), pair => Assert.InRange(Math.Abs(Mm(pair.First.U) - Mm(pair.Second.U)) + Math.Abs(Mm(pair.First.V) - Mm(pair.Second.V)), 0, spacing * 1.3));
                Assert.All(row.Zip(row.Skip(1)), pair => Assert.InRange(Math.Max(Math.Abs(Mm(pair.First.U) - Mm(pair.Second.U)), Math.Abs(Mm(pair.First.V) - Mm(pair.Second.V))), 0, spacing + 2e-6));
            }
        }
    }

    /// <summary>Of equally good spacings the leftmost is taken, which the mirror image of a face turns round: pieces are compared where the spacing mirrors.</summary>
    [Property]
    public void A_mirrored_face_has_the_mirrored_pieces(DoNotSize<int> drawn)
    {
        int seed = drawn.Item;
        FurringFace face = new FurringTrial(seed).Face;
        FurringPlan plan = FurringLayout.LayOut(face), mirrored = FurringLayout.LayOut(FurringTrial.Mirrored(face));
        double run = face.Boards == BoardDirection.UpTheGirth ? double.NaN : face.FaceLength.Millimeters;
        long[] there = [.. plan.Spacing.Strips.Select(strip => Nm(double.IsNaN(run) ? Mm(strip.Position) : run - Mm(strip.Position))).Order()];
        long[] here = [.. mirrored.Spacing.Strips.Select(strip => Nm(Mm(strip.Position)))];
        Assert.Equal(there.Length, here.Length);
        if (there.Zip(here).All(static pair => Math.Abs(pair.First - pair.Second) <= 1))
        {
            Assert.Equal(plan.UprightCount, mirrored.UprightCount);
            Assert.Equal(plan.Pieces.Count, mirrored.Pieces.Count);
            Assert.Equal(plan.RunningLength.Millimeters, mirrored.RunningLength.Millimeters, 1e-4);
            Assert.Equal(plan.TrimmerLength.Millimeters, mirrored.TrimmerLength.Millimeters, 1e-4);
            Assert.Equal(plan.BreakLength.Millimeters, mirrored.BreakLength.Millimeters, 1e-4);
            Assert.Equal(plan.Pieces.Select(static piece => Nm(Mm(piece.Length) / 1000)).Order(), mirrored.Pieces.Select(static piece => Nm(Mm(piece.Length) / 1000)).Order(), static (one, other) => Math.Abs(one - other) <= 1);
        }
    }

    [Property]
    public void A_transposed_face_with_the_other_boards_has_the_transposed_pieces(DoNotSize<int> drawn)
    {
        int seed = drawn.Item;
        FurringFace face = new FurringTrial(seed, plain: true).Face;
        FurringFace other = face with
        {
            FaceLength = face.Girth,
            Girth = face.FaceLength,
            Boards = 1 - face.Boards,
            Openings = [.. face.Openings.Select(static o => new FaceOpening(o.FromV, o.ToV, o.FromU, o.ToU))],
            Ribs = face.Rails,
            Rails = face.Ribs,
        };
        FurringPlan plan = FurringLayout.LayOut(face), transposed = FurringLayout.LayOut(other);
        Assert.Equal(
            plan.Pieces.Select(static p => (p.Role, Mm(p.StartU), Mm(p.StartV), Mm(p.EndU), Mm(p.EndV), Mm(p.Length), Mm(p.Width))),
            transposed.Pieces.Select(static p => (p.Role, Mm(p.StartV), Mm(p.StartU), Mm(p.EndV), Mm(p.EndU), Mm(p.Length), Mm(p.Width))));
        Assert.Equal(plan.Pieces.SelectMany(static p => p.Fixings).Select(static f => (Mm(f.U), Mm(f.V), f.Rib, f.Rail)), transposed.Pieces.SelectMany(static p => p.Fixings).Select(static f => (Mm(f.V), Mm(f.U), f.Rail, f.Rib)));
        Assert.Equal(plan.Findings.Select(static finding => finding.Code), transposed.Findings.Select(static finding => finding.Code));
    }

    /// <summary>64ths of an inch have six decimals in millimetres.</summary>
    [Property]
    public void Inches_lay_out_as_millimetres_do(DoNotSize<int> drawn)
    {
        int seed = drawn.Item;
        Random random = new(seed);
        int[] at = [random.Next(64, 3200), random.Next(64, 3200), random.Next(64, 1200), random.Next(64, 1200)];
        FurringFace[] faces = [.. new Func<int, Length>[] { static n => Mm(n * 25.4 / 64), static n => Length.FromInches(n / 64.0) }.Select(unit => new FurringFace(unit(6400), unit(2560), unit(1024))
        {
            Openings = [new FaceOpening(unit(at[0]), unit(at[0] + at[1]), unit(at[2]), unit(at[2] + at[3]))],
            Ribs = [new ShellMember(unit(at[1]), unit(128)), new ShellMember(unit(at[0]), unit(100))],
        })];
        Assert.Equal(FurringLayout.LayOut(faces[0]).Pieces.Select(static piece => piece.ToString()), FurringLayout.LayOut(faces[1]).Pieces.Select(static piece => piece.ToString()));
    }

    /// <summary>One that keeps three strips' width from every other. Where a gap is narrow a finding says so already.</summary>
    [Property]
    public void Adding_an_opening_far_off_takes_no_framing_from_the_others(DoNotSize<int> drawn)
    {
        int seed = drawn.Item;
        FurringFace face = new FurringTrial(seed).Face;
        if (face.Openings.Count < 2)
        {
            return;
        }

        FaceOpening added = face.Openings[^1];
        FurringFace before = face with { Openings = [.. face.Openings.Take(face.Openings.Count - 1)] };
        FurringPlan with = FurringLayout.LayOut(face), without = FurringLayout.LayOut(before);
        bool far = before.Openings.All(o => o.ToU + Mm(120.5) < added.FromU || added.ToU + Mm(120.5) < o.FromU);
        if (far && !with.Findings.Any(static finding => finding.Code == "furring-gap-narrow"))
        {
            Assert.All(before.Openings, opening => Assert.All(Enumerable.Range(0, 4), side => Assert.True(IsFramed(face, with, opening, side) || !IsFramed(before, without, opening, side))));
        }
    }

    [Property]
    public void Parts_have_every_piece_once(DoNotSize<int> drawn)
    {
        int seed = drawn.Item;
        FurringPlan plan = FurringLayout.LayOut(new FurringTrial(seed).Face);
        IEnumerable<(long, long)> parts = plan.Parts.SelectMany(static part => Enumerable.Repeat((Nm(Mm(part.Width)), Nm(Mm(part.Length))), part.Count));
        Assert.Equal(plan.Pieces.Where(static piece => Mm(piece.Width) >= 1 && Mm(piece.Length) >= 1).Select(static piece => (Nm(Mm(piece.Width)), Nm(Mm(piece.Length)))).Order(), parts.Order());
    }

    private static double Mm(Length length) => length.Millimeters;

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    private static double Or(Length? length, double other) => length is { } given ? given.Millimeters : other;

    private static long Nm(double millimetres) => (long)Math.Round(millimetres * 1e6);

    private static bool IsUpright(FurringPiece piece, bool turned) => piece.Role != StripRole.Trimmer && (piece.Role != StripRole.Break || turned);

    private static bool IsLeaning(FurringPiece piece) => Mm(piece.StartU) != Mm(piece.EndU) && Mm(piece.StartV) != Mm(piece.EndV);

    private static (double U, double V) Middle(FaceOpening opening, int side) => side switch
    {
        0 => (Mm(opening.FromU), (Mm(opening.FromV) + Mm(opening.ToV)) / 2),
        1 => (Mm(opening.ToU), (Mm(opening.FromV) + Mm(opening.ToV)) / 2),
        2 => ((Mm(opening.FromU) + Mm(opening.ToU)) / 2, Mm(opening.FromV)),
        _ => ((Mm(opening.FromU) + Mm(opening.ToU)) / 2, Mm(opening.ToV)),
    };

    private static bool IsOn(FaceOpening opening, int side, double u, double v) => side < 2
        ? u == Middle(opening, side).U && Mm(opening.FromV) <= v && v <= Mm(opening.ToV)
        : v == Middle(opening, side).V && Mm(opening.FromU) <= u && u <= Mm(opening.ToU);

    /// <summary>A hundred places along the side, a hundredth of a millimetre outward: each in a piece, another opening, furniture, or past the face.</summary>
    private static bool IsFramed(FurringFace face, FurringPlan plan, FaceOpening opening, int side)
    {
        (double, double)[][] outlines = [.. plan.Pieces.Select(FurringTrial.Outline), .. face.Openings.Where(other => !ReferenceEquals(other, opening)).Select(FurringTrial.Box), .. face.Stops.Select(static stop => FurringTrial.Box(Mm(stop.FromU) - 0.011, Mm(stop.ToU) + 0.011, 0, Mm(stop.V) + 0.011))];
        for (int i = 0; i < 100; i++)
        {
            double share = (i + 0.5) / 100, u = Mm(opening.FromU) + (share * Mm(opening.ToU - opening.FromU)), v = Mm(opening.FromV) + (share * Mm(opening.ToV - opening.FromV));
            (u, v) = side switch { 0 => (Mm(opening.FromU) - 0.01, v), 1 => (Mm(opening.ToU) + 0.01, v), 2 => (u, Mm(opening.FromV) - 0.01), _ => (u, Mm(opening.ToV) + 0.01) };
            if (u > 0 && v > 0 && u < Mm(face.FaceLength) && v < Mm(face.Girth) && !outlines.Any(outline => FurringTrial.Holds(outline, u, v, 0)))
            {
                return false;
            }
        }

        return true;
    }
}
