using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>Layers, what is behind, board profiles, the job and the result as values.</summary>
public sealed class FasteningInputTypes
{
    private static readonly Angle s_square = Angle.FromDegrees(0);

    [Fact]
    public void A_plain_length_is_a_solid_layer()
    {
        Layer layer = Mm(12.7), toleranced = TolerancedLength.PlusMinus(Mm(12.7), Mm(0.3));
        Assert.Equal(new Layer(Mm(12.7)), layer);
        Assert.Equal(Layer.FromLength(Mm(12.7)), layer);
        Assert.Equal(Layer.FromTolerancedLength(TolerancedLength.PlusMinus(Mm(12.7), Mm(0.3))), toleranced);
        Assert.Equal(new Layer { Thickness = Length.FromInches(0.5) }, layer);
        Assert.NotEqual(layer, toleranced);
        Assert.Null(layer.Holds);
        Assert.Null(layer.Compressed);
        Assert.False(layer.IsVoid);
        Assert.Equal("layer 12.7 mm", layer.ToString());
    }

    [Fact]
    public void Named_layers_carry_their_names_and_what_they_do()
    {
        Assert.Equal("board 12.7 mm", Layer.Board(Mm(12.7)).ToString());
        Assert.Equal("furring 15 mm ± 0.5", Layer.Furring(TolerancedLength.PlusMinus(Mm(15), Mm(0.5))).ToString());
        Layer strip = Layer.Furring(SheetGoods.Birch15), panel = Layer.Panel(SheetGoods.Birch12);
        Assert.Equal(("furring", SheetGoods.Birch15, SheetGoods.Birch15.Thickness), (strip.Name, strip.Sheet, strip.Thickness));
        Assert.Equal(("panel", SheetGoods.Birch12, SheetGoods.Birch12.Thickness), (panel.Name, panel.Sheet, panel.Thickness));
        Layer mat = Layer.Compressible("mat", Mm(3), Mm(1)), space = Layer.Void(Mm(4));
        Assert.Equal("mat 3 mm, squeezed 1 mm", mat.ToString());
        Assert.False(mat.Holds);
        Assert.True(space.IsVoid);
        Assert.False(space.Holds);
        Assert.Throws<ArgumentNullException>(() => Layer.Furring((SheetGoods)null!));
        Assert.Throws<ArgumentNullException>(() => Layer.Panel(null!));
        Assert.Throws<ArgumentNullException>(() => Layer.Compressible(null!, Mm(3), Mm(1)));
    }

    [Fact]
    public void Behind_says_what_and_how_far()
    {
        Assert.Equal("the metal of a rib", Behind.Metal.ToString());
        Assert.Equal("the metal of a rib 4 mm behind", Behind.MetalAt(Mm(4)).ToString());
        Assert.Equal("the outer skin 45 mm ± 3 behind", Behind.Skin(TolerancedLength.PlusMinus(Mm(45), Mm(3))).ToString());
        Assert.Equal((BehindKind.Wire, BehindKind.Pipe, BehindKind.Tank), (Behind.Wire(Mm(1)).Kind, Behind.Pipe(Mm(1)).Kind, Behind.Tank(Mm(1)).Kind));
        Assert.Equal("a wire 1 mm behind", Behind.Wire(Mm(1)).ToString());
        Assert.Equal("a pipe 1 mm behind", Behind.Pipe(Mm(1)).ToString());
        Assert.Equal("a tank 1 mm behind", Behind.Tank(Mm(1)).ToString());
        Assert.Equal(Behind.Metal, new Behind { Kind = BehindKind.RibMetal, Distance = Length.FromInches(0) });
        Assert.NotEqual(Behind.Wire(Mm(1)), Behind.Pipe(Mm(1)));
        Assert.NotEqual(Behind.Wire(Mm(1)), Behind.Wire(Mm(1.000001)));
    }

    [Fact]
    public void A_profile_gives_the_layers_of_each_way_of_nailing()
    {
        BoardProfile plain = BoardProfile.SquareEdged(Mm(12)), tongue = BoardProfile.TongueAndGroove(Mm(12.7), Mm(4), Mm(5)), lap = BoardProfile.Shiplap(Mm(12), Mm(5), Mm(6));
        Assert.Equal(["board 12 mm"], Texts(plain, Nailing.Face, 0));
        Assert.Equal(["board 12.7 mm"], Texts(tongue, Nailing.Face, 30));
        Assert.Equal(["tongue 4 mm", "back shoulder 5 mm"], Texts(tongue, Nailing.BlindThroughTongue, 45));
        Assert.Equal(["tongue 4 mm", "void 5 mm"], Texts(tongue, Nailing.BlindThroughTongue, 0));
        Assert.True(tongue.Layers(Nailing.BlindThroughTongue, s_square)[1].IsVoid);
        Assert.False(tongue.Layers(Nailing.BlindThroughTongue, Angle.FromDegrees(0.01))[1].IsVoid);
        Assert.Equal(["under lap 6 mm"], Texts(lap, Nailing.ThroughUnderLap, 0));
        Assert.Equal(["over lap 5 mm", "under lap 6 mm"], Texts(lap, Nailing.ThroughBothLaps, 0));
        Assert.Equal("tongue-and-groove board 12.7 mm", tongue.ToString());

        static IEnumerable<string> Texts(BoardProfile profile, Nailing way, double degrees) => profile.Layers(way, Angle.FromDegrees(degrees)).Select(static layer => layer.ToString());
    }

    [Fact]
    public void A_profile_has_no_way_of_nailing_that_its_edges_do_not_give()
    {
        BoardProfile plain = BoardProfile.SquareEdged(Mm(12)), tongue = BoardProfile.TongueAndGroove(Mm(12), Mm(4), Mm(4)), lap = BoardProfile.Shiplap(Mm(12), Mm(6), Mm(6));
        foreach ((BoardProfile profile, Nailing way) in new[]
        {
            (plain, Nailing.BlindThroughTongue), (plain, Nailing.ThroughUnderLap), (plain, Nailing.ThroughBothLaps), (tongue, Nailing.ThroughUnderLap), (tongue, Nailing.ThroughBothLaps), (lap, Nailing.BlindThroughTongue), (plain, (Nailing)9),
        })
        {
            Assert.Equal("way", Assert.Throws<ArgumentException>(() => profile.Layers(way, s_square)).ParamName);
        }

        Assert.Equal("driveAngle", Assert.Throws<ArgumentOutOfRangeException>(() => plain.Layers(Nailing.Face, Angle.FromDegrees(61))).ParamName);
        Assert.Equal("driveAngle", Assert.Throws<ArgumentException>(() => plain.Layers(Nailing.Face, new Angle(1, (AngleUnit)999))).ParamName);
    }

    /// <summary>Tongue and shoulder leave something of the thickness; two lips may take all of it.</summary>
    [Fact]
    public void A_profile_is_no_thicker_in_parts_than_whole()
    {
        Length lost = new(1, (LengthUnit)999);
        Assert.Equal("backShoulder", Assert.Throws<ArgumentOutOfRangeException>(() => BoardProfile.TongueAndGroove(Mm(12), Mm(4), Mm(8))).ParamName);
        Assert.NotNull(BoardProfile.TongueAndGroove(Mm(12), Mm(4), Mm(7.999999)));
        Assert.Equal("underLap", Assert.Throws<ArgumentOutOfRangeException>(() => BoardProfile.Shiplap(Mm(12), Mm(6), Mm(6.000001))).ParamName);
        Assert.NotNull(BoardProfile.Shiplap(Mm(12), Mm(6), Mm(6)));
        Assert.NotNull(BoardProfile.Shiplap(Mm(0.3), Mm(0.1), Mm(0.2))); // 0.1 + 0.2 on the grid, not in floating point
        Assert.Equal("thickness", Assert.Throws<ArgumentException>(() => BoardProfile.SquareEdged(lost)).ParamName);
        Assert.Equal("thickness", Assert.Throws<ArgumentOutOfRangeException>(() => BoardProfile.SquareEdged(Mm(200.000001))).ParamName);
        Assert.Equal("tongue", Assert.Throws<ArgumentException>(() => BoardProfile.TongueAndGroove(Mm(12), lost, Mm(4))).ParamName);
        Assert.Equal("backShoulder", Assert.Throws<ArgumentException>(() => BoardProfile.TongueAndGroove(Mm(12), Mm(4), lost)).ParamName);
        Assert.Equal("overLap", Assert.Throws<ArgumentException>(() => BoardProfile.Shiplap(Mm(12), lost, Mm(4))).ParamName);
        Assert.Equal("underLap", Assert.Throws<ArgumentException>(() => BoardProfile.Shiplap(Mm(12), Mm(4), lost)).ParamName);
    }

    [Fact]
    public void A_job_through_a_board_takes_its_layers_and_the_angle_of_its_nailing()
    {
        BoardProfile tongue = BoardProfile.TongueAndGroove(Mm(12.7), Mm(4), Mm(4));
        FastenerJob Job(Nailing way, Angle? angle) => new FastenerJob([Mm(15)], Behind.Metal, FastenerSeries.Brad18).ThroughBoard(tongue, way, angle);
        Assert.Equal(3, Job(Nailing.BlindThroughTongue, null).Layers.Count);
        Assert.Equal(45, Job(Nailing.BlindThroughTongue, null).DriveAngle.Degrees);
        Assert.Equal(50, Job(Nailing.BlindThroughTongue, Angle.FromDegrees(50)).DriveAngle.Degrees);
        Assert.True(Job(Nailing.BlindThroughTongue, s_square).Layers[1].IsVoid);
        Assert.Equal(0, Job(Nailing.Face, null).DriveAngle.Value);
        Assert.Equal("driveAngle", Assert.Throws<ArgumentOutOfRangeException>(() => Job(Nailing.Face, Angle.FromDegrees(70))).ParamName);
    }

    [Fact]
    public void A_job_keeps_its_own_copy_of_the_layers()
    {
        Layer[] layers = [Mm(12.7), Mm(15)];
        FastenerJob job = new(layers, Behind.Metal, FastenerSeries.Brad18), other = new() { Layers = layers, Behind = Behind.Metal, Series = FastenerSeries.Brad18 };
        layers[1] = Mm(1);
        Assert.Equal("layer 15 mm", job.Layers[1].ToString());
        Assert.Equal("layer 15 mm", other.Layers[1].ToString());
        Assert.Equal(FastenerSeries.Brad18.Name + " through layer 12.7 mm, layer 15 mm; behind: the metal of a rib", job.ToString());
    }

    [Fact]
    public void The_last_solid_layer_holds_unless_something_else_is_said()
    {
        // Tip at 1 + 25.4 = 26.4: in the last layer 26.4 - 22.7 = 3.7; with the middle one besides, 10 more; with the first, 12.7 - 1 of it.
        FastenerJob Job(bool? first, bool? middle, bool? last) => new([new Layer(Mm(12.7)) { Holds = first }, new Layer(Mm(10)) { Holds = middle }, new Layer(Mm(10)) { Holds = last }], Behind.Metal, FastenerSeries.Brad18);
        double Bite(FastenerJob job) => FastenerLength.Evaluate(job, Mm(25.4)).Bite.Millimeters;
        Assert.Equal(3.7, Bite(Job(null, null, null)), 1e-9);
        Assert.Equal(13.7, Bite(Job(null, true, null)), 1e-9);
        Assert.Equal(10, Bite(Job(null, true, false)), 1e-9);
        Assert.Equal(25.4, Bite(Job(true, true, true)), 1e-9);
        Assert.Equal(11.7, Bite(Job(true, null, false)), 1e-9);

        // A void, a tape, or both last do not hold: what is before them does. 26.4 - 12.7 = 13.7, of which the furring has 10.
        Assert.Equal(11.7, Bite(new FastenerJob([Mm(12.7), Layer.Void(Mm(20))], Behind.Metal, FastenerSeries.Brad18)), 1e-9);
        foreach (Layer[] after in new Layer[][] { [Layer.Void(Mm(4))], [Layer.Compressible("tape", Mm(1), Mm(0.2))], [new Layer(Mm(1)) { Compressed = Mm(0.2) }], [Layer.Compressible("tape", Mm(1), Mm(0.2)), Layer.Void(Mm(4))] })
        {
            Assert.Equal(10, Bite(new FastenerJob([Mm(12.7), Layer.Furring(Mm(10)), .. after], Behind.MetalAt(Mm(50)), FastenerSeries.Brad18)), 1e-9);
        }

        // Said to be no holder, the last solid one is not replaced by the one before.
        Assert.Equal(0, Bite(Job(null, null, false)));
    }

    [Fact]
    public void Clearances_compare_by_their_numbers()
    {
        TipClearance one = FastenerLength.TipClearance(Mm(25.4), Mm(19.05), Mm(0.5), s_square);
        TipClearance same = FastenerLength.TipClearance(Length.FromInches(1), Length.FromInches(0.75), Mm(0.5), Angle.FromRadians(0));
        TipClearance other = FastenerLength.TipClearance(Mm(25.400001), Mm(19.05), Mm(0.5), s_square);
        Assert.True(one == same);
        Assert.True(one.Equals((object)same));
        Assert.Equal(one.GetHashCode(), same.GetHashCode());
        Assert.True(one != other);
        Assert.False(one.Equals(null));
        Assert.Equal("clearance 5.85 mm, tip 19.55 mm deep", one.ToString());
        Assert.Equal([new Figure("tip-depth", 19.55, "mm"), new Figure("clearance", 5.85, "mm")], one.Figures());
    }

    [Fact]
    public void A_host_can_build_a_choice_of_its_own()
    {
        FastenerJob job = new([Mm(12.7), Mm(15.875)], Behind.Metal, FastenerSeries.Brad18);
        FastenerCandidate first = FastenerLength.Evaluate(job, Mm(19.05)), second = FastenerLength.Evaluate(job, Mm(25.4));
        FastenerChoice choice = new(job, [first, second], first, [], [], []);
        Assert.Same(second, choice.NextLonger);
        Assert.False(choice.HasProblem);
        Assert.Null(new FastenerChoice(job, [first, second], second, [], [], []).NextLonger);
        Assert.True(new FastenerChoice(job, [first], null, [], [new Finding("test", Severity.Problem, "Test.", [])], []).HasProblem);
        Assert.False(new FastenerChoice(job, [first], null, [], [new Finding("test", Severity.Caution, "Test.", [])], []).HasProblem);
        Assert.NotEmpty(choice.TableEdition);
        Assert.Equal("job", Assert.Throws<ArgumentNullException>(() => new FastenerChoice(null!, [], null, [], [], [])).ParamName);
        Assert.Equal("candidates", Assert.Throws<ArgumentNullException>(() => new FastenerChoice(job, null!, null, [], [], [])).ParamName);
        Assert.Equal("remedies", Assert.Throws<ArgumentNullException>(() => new FastenerChoice(job, [], null, null!, [], [])).ParamName);
        Assert.Equal("findings", Assert.Throws<ArgumentNullException>(() => new FastenerChoice(job, [], null, [], null!, [])).ParamName);
        Assert.Equal("defaultsUsed", Assert.Throws<ArgumentNullException>(() => new FastenerChoice(job, [], null, [], [], null!)).ParamName);
        Assert.Equal("outcome", Assert.Throws<ArgumentNullException>(() => new FurringRemedy(Mm(25), Mm(15), null, null!)).ParamName);
        Assert.Equal("series", Assert.Throws<ArgumentNullException>(() => new SeriesRemedy(Mm(25), null!, first)).ParamName);
        Assert.Equal("outcome", Assert.Throws<ArgumentNullException>(() => new DriveAngleRemedy(Mm(25), s_square, s_square, null!)).ParamName);
        Assert.Contains("none of the sheets looked at", new FurringRemedy(Mm(25), Mm(15), null, first).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Texts_are_the_same_in_every_culture()
    {
        FastenerJob job = new([Mm(12.7), TolerancedLength.PlusMinus(Mm(15.1), Mm(0.5))], Behind.MetalAt(Mm(0.25)), FastenerSeries.Brad18) { Count = 12345 };
        string Texts()
        {
            FastenerChoice choice = FastenerLength.Choose(job with { HitsLimit = 0 });
            return string.Join('\n', [job.ToString(), choice.ToString(), choice.Explain().ToMarkdown(), choice.Explain().ToText(), .. choice.Findings.Select(static finding => finding.ToString()), .. choice.Remedies.Select(static remedy => remedy.Text), .. choice.Candidates.Select(static candidate => candidate.ToString()), .. choice.DefaultsUsed.Select(static used => used.ToString())]);
        }

        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
            string invariant = Texts();
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal(invariant, Texts());
            CultureInfo.CurrentCulture = new CultureInfo("ar-SA");
            Assert.Equal(invariant, Texts());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
