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
/// The same job gives the same plan, byte for byte, in both builds of the library: this class runs against each of them, and what they are held to is one digest of the plan's whole text, kept here. A digest says that the
/// builds agree with each other and with what was before; whether a plan is right is for other tests. Where a plan is changed on purpose, put the digest that the failure prints.
/// </summary>
public sealed class SamePlanTests
{
    private static readonly Dictionary<string, (Func<string> Text, string Digest)> s_plans = new(StringComparer.Ordinal)
    {
        ["boards of one length"] = (static () => Cutting(new CuttingJob(Parts(60, 7), [new StockBoard(Mm(2438), 9.80m)])), "1374438B80D1E1F6"),
        ["boards of three lengths, packs and offcuts"] = (static () => Cutting(new CuttingJob(Parts(90, 11), [new StockBoard(Mm(2438), 9.80m), new StockBoard(Mm(3048), 12.60m) { Pack = 3 }, new StockBoard(Mm(3658), 14.95m) { Available = 12 }]) { Offcuts = [new BoardOffcut(Mm(1234.5)) { Count = 3 }] }), "43016F101C95EBF2"),
        ["boards without proof"] = (static () => Cutting(new CuttingJob(Parts(700, 3), [new StockBoard(Mm(2438), 9.80m), new StockBoard(Mm(3048.123), 12.61m)]) { Effort = 200_000 }), "FD519BEFEB74AAC9"),
        ["courses"] = (static () => Courses(new CourseFace(Mm(3400.5), Mm(980), BoardCover.TongueAndGroove(Mm(97), Mm(8), Mm(1))) { GirthAtFront = Mm(994), GirthAtRear = Mm(970.123456), Openings = [new(Mm(500), Mm(1400), Mm(230), Mm(610)), new(Mm(1980), Mm(2680), Mm(230), Mm(610.5))], Breaks = [new(Mm(200), Angle.FromDegrees(3.5)), new(Mm(642), Angle.FromDegrees(9.5))] }), "8DDF3C966B833478"),
        ["end cuts"] = (static () => Text(EndCuts.Schedule(new EndCutJob(EdgeCurve.Through([new(Mm(0), Mm(3400)), new(Mm(200), Mm(3398)), new(Mm(400), Mm(3392)), new(Mm(600), Mm(3382)), new(Mm(800), Mm(3369)), new(Mm(994), Mm(3352))]), [.. Enumerable.Range(0, 11).Select(static i => Mm(89.5 * i))], Mm(20)) { HiddenWidth = Mm(8) })), "807F6CB98039D8A7"),
    };

    public static TheoryData<string> Plans() => [.. s_plans.Keys];

    [Theory]
    [MemberData(nameof(Plans))]
    public void A_plan_is_the_same_in_every_build(string name)
    {
        (Func<string> text, string digest) = s_plans[name];
        string plan = text();
        Assert.True(plan.Length > 500);
        Assert.Equal(digest, Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(plan)))[..16]);
    }

    /// <summary>Lengths from a sequence of its own, so that no library decides about them.</summary>
    private static BoardPart[] Parts(int kinds, int step) => [.. Enumerable.Range(1, kinds).Select(i => new BoardPart(Mm(300 + (i * i * step * 37 % 20_021 / 11.0)), 1 + (i % 5)))];

    private static string Cutting(CuttingJob job)
    {
        CuttingPlan plan = BoardCutting.Cut(job);
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

    private static string Exact(Length length) => length.Millimeters.ToString("R", CultureInfo.InvariantCulture);
}
