using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Security.Cryptography;
using System.Text;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Boards;

/// <summary>
/// The same job gives the same plan, byte for byte, under every culture and in both builds of the library. The plans of two cultures are compared with each other. The builds never meet in one process: this class runs against each of
/// them, and what both are held to is one digest of the plan's whole text, kept here. It was printed by the program, and so proves no plan right, only that it is the same as in the other build and as before; whether a plan is
/// right is for other tests. Angles of a profile are held to a billionth of a degree, for an arc tangent may differ in its last digit from machine to machine; nothing is decided by one. Where a plan is changed on purpose, put the
/// digest that the failure prints.
/// </summary>
public sealed class SamePlanTests
{
    private static readonly Dictionary<string, (Func<string> Text, string Digest)> s_plans = new(StringComparer.Ordinal)
    {
        ["boards of one length"] = (static () => Cutting(new CuttingJob(Parts(60, 7), [new StockBoard(Mm(2438), 9.80m)])), "2CE38503C7496039"),
        ["boards of three lengths, packs and offcuts"] = (static () => Cutting(new CuttingJob(Parts(90, 11), [new StockBoard(Mm(2438), 9.80m), new StockBoard(Mm(3048), 12.60m) { Pack = 3 }, new StockBoard(Mm(3658), 14.95m) { Available = 12 }]) { Offcuts = [new BoardOffcut(Mm(1234.5)) { Count = 3 }] }), "F860053F5DAFC324"),
        ["boards without proof"] = (static () => Cutting(new CuttingJob(Parts(700, 3), [new StockBoard(Mm(2438), 9.80m), new StockBoard(Mm(3048.123), 12.61m)]) { Effort = 200_000 }), "EA503F5755427543"),
        ["courses"] = (static () => Courses(new CourseFace(Mm(3400.5), Mm(980), BoardCover.TongueAndGroove(Mm(97), Mm(8), Mm(1))) { GirthAtFront = Mm(994), GirthAtRear = Mm(970.123456), Openings = [new(Mm(500), Mm(1400), Mm(230), Mm(610)), new(Mm(1980), Mm(2680), Mm(230), Mm(610.5))], Breaks = [new(Mm(200), Angle.FromDegrees(3.5)), new(Mm(642), Angle.FromDegrees(9.5))] }), "8DDF3C966B833478"),
        ["end cuts"] = (static () => Text(EndCuts.Schedule(new EndCutJob(EdgeCurve.Through([new(Mm(0), Mm(3400)), new(Mm(200), Mm(3398)), new(Mm(400), Mm(3392)), new(Mm(600), Mm(3382)), new(Mm(800), Mm(3369)), new(Mm(994), Mm(3352))]), [.. Enumerable.Range(0, 11).Select(static i => Mm(89.5 * i))], Mm(20)) { HiddenWidth = Mm(8) })), "807F6CB98039D8A7"),
        ["joints of a wall that tapers"] = (static () => Joints(new JointJob(Courses(11), [.. Enumerable.Range(0, 10).Select(static i => Mm(35.25 + (i * 391.123456)))], [new StockBoard(Mm(1829), 7.40m), new StockBoard(Mm(2438), 9.80m), new StockBoard(Mm(3048), 13.60m)]) { EndGap = Mm(3), Offcuts = [new BoardOffcut(Mm(1234.5)) { Count = 2 }], Effort = 1_000_000 }, 100_000), "AEA6762B989F7176"),
        ["joints changed by lot"] = (static () => Joints(new JointJob([new JointRun(0, Mm(0), Mm(700)), .. Enumerable.Range(0, 7).Select(static i => new JointRun(i, Mm(i == 0 ? 1500 : 0), Mm(4013 - (29 * i))))], [.. new[] { 20, 414, 855, 1290, 1764, 2135, 2479, 2780, 3251, 3582, 4010 }.Select(static place => Mm(place))], [new StockBoard(Mm(1829), 7.40m), new StockBoard(Mm(2438), 9.80m), new StockBoard(Mm(3048), 13.60m)]), 1_000_000), "C55A4EC7BD9403DC"),
        ["joints where boards are few"] = (static () => Joints(new JointJob(Courses(8), [.. Enumerable.Range(1, 12).Select(static i => Mm(i * 257.5))], [new StockBoard(Mm(2438), 9.80m) { Available = 9 }, new StockBoard(Mm(1829), 7.10m) { Pack = 2 }]) { Stagger = 1, ShortestPiece = Mm(400), Effort = 2_000_000 }, 100_000), "BAE21B2CB18546DC"),
        ["joints of a sample of ways"] = (static () => Joints(new JointJob(Courses(5, 9000), [.. Enumerable.Range(1, 40).Select(static i => Mm(i * 221.7))], [new StockBoard(Mm(2438), 9.80m), new StockBoard(Mm(3048), 13.60m)]) { Effort = 300_000 }, 10_000), "7EE26698CC0DD750"),
        ["breaks of a profile"] = (static () => Profile(ProfileBreaks.Find([.. Stations(60)])), "94F260839DF5C0CE"),
        ["breaks of a profile, their number given"] = (static () => Profile(ProfileBreaks.Find([.. Stations(150)], bands: 7)), "B9F99B299315E1CB"),
        ["packers to a line"] = (static () => Packed(Flattening.Line([.. Stations(80)], FlatteningAim.LeastTotal, Mm(0.5), Mm(1.5)), Flattening.Line([.. Stations(80)], FlatteningAim.LeastGreatest)), "78489601D264777B"),
        ["packers to a plane"] = (static () => Packed(Flattening.Plane([.. Points(30)], FlatteningAim.LeastTotal, Mm(0.5), Mm(1.5)), Flattening.Plane([.. Points(30)], FlatteningAim.LeastGreatest)), "89A2EC4A89F27AB4"),
    };

    public static TheoryData<string> Plans() => [.. s_plans.Keys];

    [Theory]
    [MemberData(nameof(Plans))]
    public void A_plan_is_the_same_in_every_culture_and_every_build(string name)
    {
        (Func<string> text, string digest) = s_plans[name];
        string plan = Under(CultureInfo.InvariantCulture, text);
        Assert.True(plan.Length > 500);

        // Its decimal sign and its minus sign are others.
        Assert.Equal(plan, Under(new CultureInfo("ar-SA"), text));
        Assert.Equal(digest, Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(plan)))[..16]);
    }

    private static string Under(CultureInfo culture, Func<string> text)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = culture;
            return text();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    /// <summary>Lengths from a sequence of its own, so that no library decides about them.</summary>
    private static BoardPart[] Parts(int kinds, int step) => [.. Enumerable.Range(1, kinds).Select(i => new BoardPart(Mm(300 + (i * i * step * 37 % 20_021 / 11.0)), 1 + (i % 5)))];

    private static string Cutting(CuttingJob job) => Text(BoardCutting.Cut(job));

    /// <summary>Courses that get shorter, every third with an opening.</summary>
    private static JointRun[] Courses(int count, int length = 3400) => [.. Enumerable.Range(1, count).SelectMany(i =>
    {
        Length end = Mm(length - (i * i * 3 % 31) - (i * 7.3));
        return i % 3 == 0 ? new[] { new JointRun(i, Mm(0), Mm(700)), new JointRun(i, Mm(1500.5), end) } : [new JointRun(i, Mm(0), end)];
    })];

    /// <summary>Offsets up a wall with two breaks, uneven by a few millimetres.</summary>
    private static IEnumerable<MeasuredPoint> Stations(int count) => Enumerable.Range(0, count).Select(static i => new MeasuredPoint(Mm(i * 17.25), Mm(60 + (i > 12 ? (i - 12) * 0.9 : 0) + (i > 40 ? (i - 40) * 2.1 : 0) + (i * i * 37 % 101 / 64.0))));

    private static IEnumerable<SurfacePoint> Points(int count) => Enumerable.Range(0, count).Select(static i => new SurfacePoint(Mm(i % 6 * 400.5), Mm(i / 6 * 255.25), Mm(20 + (i * i * 37 % 101 / 16.0))));

    private static string Joints(JointJob job, long leastNodes)
    {
        JointLayout layout = BoardJoints.Choose(job);
        Assert.True(layout.Nodes > leastNodes, $"{layout.Nodes} nodes: no search to speak of");
        IEnumerable<string> runs = layout.Runs.Select(static run => $"{run.Run} {run} {string.Join(' ', run.Joints.Select(static joint => $"{joint.Strip.ToString(CultureInfo.InvariantCulture)} {Exact(joint.Position)}"))} {string.Join(' ', run.Pieces.Select(Exact))}");
        return string.Join('\n', [.. runs, Text(layout.Cutting), Said(layout.ToString(), layout.Figures(), layout.Findings)]);
    }

    private static string Profile(WallProfile wall)
    {
        IEnumerable<string> bands = wall.Bands.Select(static band => $"{band} {band.FirstStation.ToString(CultureInfo.InvariantCulture)} {band.FarthestStation.ToString(CultureInfo.InvariantCulture)} {Degrees(band.Lean)} {string.Join(' ', new[] { band.OffsetAtFoot, band.OffsetAtHead, band.RootMeanSquare, band.GreatestResidual, band.Girth }.Select(Exact))}");
        return string.Join('\n', [wall.ToString(), .. bands, .. wall.Breaks.Select(static at => $"{at} {Exact(at.Height)} {Exact(at.Girth)}"), .. wall.GirthAtStations.Select(Exact), .. wall.Findings.Select(static finding => finding.Message)]);
    }

    private static string Packed(string set, IReadOnlyList<PackedPoint> points, IReadOnlyList<Finding> findings) =>
        string.Join('\n', [set, .. points.Select(static point => $"{Exact(point.Packing)} {(point.Stocked is { } stocked ? Exact(stocked) : "-")}"), .. findings.Select(static finding => finding.Message)]);

    private static string Packed(params PackedLine[] lines) => string.Join('\n', lines.Select(static line => Packed(line.ToString(), line.Points, line.Findings)));

    private static string Packed(params PackedPlane[] planes) => string.Join('\n', planes.Select(static plane => Packed(plane.ToString(), plane.Points, plane.Findings)));

    private static string Text(CuttingPlan plan)
    {
        IEnumerable<string> boards = plan.Boards.Select(static board => $"{board} {board.SetUp} {board.Index} {string.Join(' ', board.Pieces.Select(static piece => $"{piece.Part.ToString(CultureInfo.InvariantCulture)} {Exact(piece.Start)}"))}");
        IEnumerable<string> valuations = plan.Valuations.Select(static proof => string.Join(' ', proof.Values.Concat(proof.MostOfStock).Concat(proof.MostOfOffcuts).Append(proof.Needed).Select(static value => value.ToString(CultureInfo.InvariantCulture))));
        return string.Join('\n', [.. boards, .. valuations, .. plan.Purchases.Select(static bought => bought.ToString()), Said(plan.ToString(), plan.Figures(), plan.Findings)]);
    }

    private static string Courses(CourseFace face)
    {
        CoursePlan plan = CourseLayout.LayOut(face);
        IEnumerable<string> pieces = plan.Courses.SelectMany(static course => course.Pieces.Select(piece => $"{course}: {string.Join(' ', new[] { piece.FromU, piece.ToU, piece.FromV, piece.ToVAtFront, piece.ToVAtRear }.Select(Exact))}"));
        return string.Join('\n', [.. plan.Bands.Select(static band => band.ToString()), .. pieces, Said(plan.ToString(), plan.Figures(), plan.Findings)]);
    }

    private static string Text(EndCutSchedule ends) => string.Join('\n', [.. ends.Courses.SelectMany(static cut => cut.Figures()).Select(static figure => figure.ToString()), Said(ends.ToString(), ends.Figures(), ends.Findings)]);

    private static string Said(string line, IReadOnlyList<Figure> figures, IReadOnlyList<Finding> findings) =>
        string.Join('\n', [line, .. figures.Select(static figure => figure.ToString()), .. findings.Select(static finding => finding.Message)]);

    private static string Degrees(Angle angle) => Math.Round(angle.Degrees, 9).ToString("R", CultureInfo.InvariantCulture);

    private static string Exact(Length length) => length.Millimeters.ToString("R", CultureInfo.InvariantCulture);
}
