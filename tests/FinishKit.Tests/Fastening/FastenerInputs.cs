using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>Impossible input: which parameter is named, all at once in a check, the first as an exception.</summary>
public sealed class FastenerInputs
{
    /// <summary>A bad job by name, and the paths that a check must name, in order. Below the paths start with <c>job.</c>; the plain overload writes <c>layers</c>, <c>behind</c>, <c>series</c>.</summary>
    private static readonly Dictionary<string, (FastenerJob Job, string[] Paths)> s_bad = new(StringComparer.Ordinal)
    {
        ["no layers"] = (Good() with { Layers = [] }, ["Layers"]),
        ["21 layers"] = (Good() with { Layers = [.. Enumerable.Repeat<Layer>(Mm(1), 21)] }, ["Layers"]),
        ["a hostile list"] = (Good() with { Layers = new EndlessList() }, ["Layers"]),
        ["layers null"] = (Good() with { Layers = null! }, ["Layers"]),
        ["a layer null"] = (Good() with { Layers = [Mm(12), null!, Mm(15)] }, ["Layers[1]"]),
        ["thickness 0"] = (Good() with { Layers = [Mm(12), Mm(0)] }, ["Layers[1].Thickness"]),
        ["thickness under half a nanometre"] = (Good() with { Layers = [Mm(12), Mm(4e-7)] }, ["Layers[1].Thickness"]),
        ["thickness negative"] = (Good() with { Layers = [Mm(-12), Mm(15)] }, ["Layers[0].Thickness"]),
        ["thickness over a metre"] = (Good() with { Layers = [Mm(12), Mm(1000.000001)] }, ["Layers[1].Thickness"]),
        ["thickness undefined unit"] = (Good() with { Layers = [Undefined, Mm(15)] }, ["Layers[0].Thickness"]),
        ["deviation undefined unit"] = (Good() with { Layers = [new TolerancedLength(Mm(12), Undefined, Mm(1)), Mm(15)] }, ["Layers[0].Thickness.Lower"]),
        ["upper deviation undefined unit"] = (Good() with { Layers = [new TolerancedLength(Mm(12), Mm(0), Undefined), Mm(15)] }, ["Layers[0].Thickness.Upper"]),
        ["deviations the wrong way round"] = (Good() with { Layers = [new TolerancedLength(Mm(12), Mm(1), Mm(-1)), Mm(15)] }, ["Layers[0].Thickness.Upper"]),
        ["least thickness below 0"] = (Good() with { Layers = [TolerancedLength.PlusMinus(Mm(1), Mm(1.000001)), Mm(15)] }, ["Layers[0].Thickness.Lower"]),
        ["compressed more than free"] = (Good() with { Layers = [Mm(12), Layer.Compressible("mat", Mm(3), Mm(3.000001)), Mm(15)] }, ["Layers[1].Compressed"]),
        ["least compressed more than least free"] = (Good() with { Layers = [Mm(12), Layer.Compressible("mat", TolerancedLength.PlusMinus(Mm(3), Mm(1)), Mm(2.000001)), Mm(15)] }, ["Layers[1].Compressed"]),
        ["a layer that gives and holds"] = (Good() with { Layers = [Mm(12), Layer.Compressible("mat", Mm(3), Mm(1)) with { Holds = true }, Mm(15)] }, ["Layers[1].Holds"]),
        ["compressed negative"] = (Good() with { Layers = [Mm(12), Layer.Compressible("mat", Mm(3), Mm(-1)), Mm(15)] }, ["Layers[1].Compressed"]),
        ["compressed undefined unit"] = (Good() with { Layers = [Mm(12), Layer.Compressible("mat", Mm(3), Undefined), Mm(15)] }, ["Layers[1].Compressed"]),
        ["least compressed below 0"] = (Good() with { Layers = [Mm(12), Layer.Compressible("mat", Mm(3), TolerancedLength.PlusMinus(Mm(1), Mm(2))), Mm(15)] }, ["Layers[1].Compressed.Lower"]),
        ["a void first"] = (Good() with { Layers = [Layer.Void(Mm(12)), Mm(15)] }, ["Layers[0].IsVoid"]),
        ["a void that holds"] = (Good() with { Layers = [Mm(12), Layer.Void(Mm(15)) with { Holds = true }] }, ["Layers[1].Holds"]),
        ["behind null"] = (Good() with { Behind = null! }, ["Behind"]),
        ["distance negative"] = (Good() with { Behind = Behind.Skin(Mm(-1)) }, ["Behind.Distance"]),
        ["distance over a metre"] = (Good() with { Behind = Behind.Skin(Mm(1001)) }, ["Behind.Distance"]),
        ["least distance below 0"] = (Good() with { Behind = Behind.Skin(TolerancedLength.PlusMinus(Mm(1), Mm(3))) }, ["Behind.Distance.Lower"]),
        ["distance undefined unit"] = (Good() with { Behind = Behind.Wire(Undefined) }, ["Behind.Distance"]),
        ["kind not named"] = (Good() with { Behind = new Behind((BehindKind)7, Mm(1)) }, ["Behind.Kind"]),
        ["kind below the named"] = (Good() with { Behind = new Behind((BehindKind)(-1), Mm(1)) }, ["Behind.Kind"]),
        ["series null"] = (Good() with { Series = null! }, ["Series"]),
        ["set depth negative"] = (Good() with { SetDepth = Mm(-0.1) }, ["SetDepth"]),
        ["set depth over 20"] = (Good() with { SetDepth = Mm(20.000001) }, ["SetDepth"]),
        ["least set depth below 0"] = (Good() with { SetDepth = TolerancedLength.PlusMinus(Mm(0.5), Mm(0.6)) }, ["SetDepth.Lower"]),
        ["set depth undefined unit"] = (Good() with { SetDepth = (TolerancedLength)Undefined }, ["SetDepth"]),
        ["drive angle negative"] = (Good() with { DriveAngle = Angle.FromDegrees(-0.001) }, ["DriveAngle"]),
        ["drive angle over 60"] = (Good() with { DriveAngle = Angle.FromDegrees(60.001) }, ["DriveAngle"]),
        ["drive angle undefined unit"] = (Good() with { DriveAngle = new Angle(1, (AngleUnit)999) }, ["DriveAngle"]),
        ["clearance negative"] = (Good() with { RequiredClearance = Mm(-0.1) }, ["RequiredClearance"]),
        ["clearance over 100"] = (Good() with { RequiredClearance = Mm(100.1) }, ["RequiredClearance"]),
        ["clearance undefined unit"] = (Good() with { RequiredClearance = Undefined }, ["RequiredClearance"]),
        ["least bite negative"] = (Good() with { LeastBite = Mm(-1) }, ["LeastBite"]),
        ["least bite undefined unit"] = (Good() with { LeastBite = Undefined }, ["LeastBite"]),
        ["target bite over 500"] = (Good() with { TargetBite = Mm(501) }, ["TargetBite"]),
        ["target bite undefined unit"] = (Good() with { TargetBite = Undefined }, ["TargetBite"]),
        ["count 0"] = (Good() with { Count = 0 }, ["Count"]),
        ["count over a million"] = (Good() with { Count = 1_000_001 }, ["Count"]),
        ["chance NaN"] = (Good() with { MarginalChance = double.NaN }, ["MarginalChance"]),
        ["chance over a hundredth"] = (Good() with { MarginalChance = 0.0101 }, ["MarginalChance"]),
        ["chance negative"] = (Good() with { MarginalChance = -1e-9 }, ["MarginalChance"]),
        ["hits negative"] = (Good() with { HitsLimit = -0.1 }, ["HitsLimit"]),
        ["hits infinite"] = (Good() with { HitsLimit = double.PositiveInfinity }, ["HitsLimit"]),
        ["a sheet null"] = (Good() with { Sheets = [SheetGoods.Birch12, null!] }, ["Sheets[1]"]),
        ["201 sheets"] = (Good() with { Sheets = [.. Enumerable.Repeat(SheetGoods.Birch12, 201)] }, ["Sheets"]),
        ["a series null"] = (Good() with { OtherSeries = [null!] }, ["OtherSeries[0]"]),
        ["201 series"] = (Good() with { OtherSeries = [.. Enumerable.Repeat(FastenerSeries.Pin23, 201)] }, ["OtherSeries"]),
        ["preference not named"] = (Good() with { Preference = (FastenerPreference)5 }, ["Preference"]),
        ["everything at once"] = (
            new FastenerJob([Mm(0), null!, Layer.Void(Undefined) with { Holds = true }], null!, null!)
            {
                SetDepth = (TolerancedLength)Undefined,
                DriveAngle = new Angle(1, (AngleUnit)999),
                RequiredClearance = Undefined,
                LeastBite = Mm(-1),
                TargetBite = Mm(-1),
                Count = -5,
                MarginalChance = 1,
                HitsLimit = double.NaN,
                Sheets = [null!],
                OtherSeries = [null!],
                Preference = (FastenerPreference)(-1),
            },
            ["Layers[0].Thickness", "Layers[1]", "Layers[2].Thickness", "Layers[2].Holds", "Behind", "Series", "SetDepth", "DriveAngle", "RequiredClearance", "LeastBite", "TargetBite", "Count", "MarginalChance", "HitsLimit", "Sheets[0]", "OtherSeries[0]", "Preference"]),
    };

    private static Length Undefined => new(1, (LengthUnit)999);

    public static TheoryData<string> Bad() => [.. s_bad.Keys];

    [Theory]
    [MemberData(nameof(Bad))]
    public void Check_names_every_problem_in_order_and_throws_nothing(string name)
    {
        (FastenerJob job, string[] paths) = s_bad[name];
        IReadOnlyList<InputProblem> problems = FastenerLength.Check(job);
        Assert.Equal(paths.Select(static path => "job." + path), problems.Select(static problem => problem.Parameter));
        Assert.All(problems, static problem => Assert.True(problem.Message.Contains(problem.Value, StringComparison.Ordinal) && problem.Allowed.Length > 0));
        Assert.Equal([.. paths.Select(static path => "job." + path), "fastener"], FastenerLength.Check(job, Undefined).Select(static problem => problem.Parameter));
    }

    [Theory]
    [MemberData(nameof(Bad))]
    public void Every_calculating_method_throws_the_first_problem(string name)
    {
        FastenerJob job = s_bad[name].Job;
        InputProblem first = FastenerLength.Check(job)[0];
        foreach (Action calculation in new Action[]
        {
            () => FastenerLength.Choose(job),
            () => FastenerLength.Evaluate(job, Undefined),
            () => FastenerLength.LongestSafe(job),
            () => FastenerLength.ThinnestFurring(job, Undefined),
            () => FastenerLength.LeastDriveAngle(job, Undefined),
        })
        {
            ArgumentException thrown = Assert.ThrowsAny<ArgumentException>(calculation);
            Assert.Equal(first.Parameter, thrown.ParamName);
            Assert.Equal(first.ToException().GetType(), thrown.GetType());
            Assert.StartsWith(first.Message, thrown.Message, StringComparison.Ordinal);
        }
    }

    /// <summary>The plain overload writes its own parameters, for what it takes.</summary>
    [Theory]
    [MemberData(nameof(Bad))]
    public void The_plain_overload_names_its_own_parameters(string name)
    {
        (FastenerJob job, string[] paths) = s_bad[name];
        string[] expected = [.. paths.Where(static path => path.StartsWith("Layers", StringComparison.Ordinal) || path.StartsWith("Behind", StringComparison.Ordinal) || path == "Series").Select(static path => char.ToLowerInvariant(path[0]) + path[1..])];
        Assert.Equal(expected, FastenerLength.Check(job.Layers, job.Behind, job.Series).Select(static problem => problem.Parameter));
        if (expected.Length > 0)
        {
            Assert.Equal(expected[0], Assert.ThrowsAny<ArgumentException>(() => FastenerLength.Choose(job.Layers, job.Behind, job.Series)).ParamName);
        }
    }

    [Fact]
    public void No_job_is_one_problem()
    {
        Assert.Equal("job", Assert.Single(FastenerLength.Check(null!)).Parameter);
        Assert.Equal("job", Assert.Throws<ArgumentNullException>(() => FastenerLength.Choose(null!)).ParamName);
        Assert.Equal(["job", "fastener"], FastenerLength.Check(null!, Mm(0)).Select(static problem => problem.Parameter));
        Assert.Equal("job", Assert.Throws<ArgumentNullException>(() => FastenerLength.Evaluate(null!, Mm(25))).ParamName);
    }

    public static TheoryData<double> BadFasteners() => [0, -1, 4e-7, 500.000001];

    [Theory]
    [MemberData(nameof(BadFasteners))]
    public void A_fastener_outside_its_range_is_named(double millimetres)
    {
        Length fastener = Mm(millimetres);
        Assert.Equal("fastener", Assert.Single(FastenerLength.Check(Good(), fastener)).Parameter);
        Assert.Equal("fastener", Assert.Throws<ArgumentOutOfRangeException>(() => FastenerLength.Evaluate(Good(), fastener)).ParamName);
        Assert.Equal("fastener", Assert.Throws<ArgumentOutOfRangeException>(() => FastenerLength.ThinnestFurring(Good(), fastener)).ParamName);
        Assert.Equal("fastener", Assert.Throws<ArgumentOutOfRangeException>(() => FastenerLength.LeastDriveAngle(Good(), fastener)).ParamName);
    }

    [Fact]
    public void Both_ends_of_every_range_are_allowed()
    {
        FastenerJob least = new([Mm(1e-6), Mm(1e-6)], Behind.Metal, FastenerSeries.Brad18)
        {
            SetDepth = Mm(0),
            RequiredClearance = Mm(0),
            LeastBite = Mm(0),
            TargetBite = Mm(0),
            Count = 1,
            MarginalChance = 0,
            HitsLimit = 0,
            Sheets = [],
            OtherSeries = [],
        };
        FastenerJob most = new([.. Enumerable.Repeat<Layer>(Mm(1000), 20)], Behind.Tank(Mm(1000)), FastenerSeries.Brad18)
        {
            SetDepth = Mm(20),
            DriveAngle = Angle.FromDegrees(60),
            RequiredClearance = Mm(100),
            LeastBite = Mm(500),
            TargetBite = Mm(500),
            Count = 1_000_000,
            MarginalChance = 0.01,
            HitsLimit = 1000,
            Sheets = [.. Enumerable.Repeat(SheetGoods.Birch12, 200)],
            OtherSeries = [.. Enumerable.Repeat(FastenerSeries.Pin23, 200)],
        };
        Assert.Empty(FastenerLength.Check(least));
        Assert.Empty(FastenerLength.Check(most));
        Assert.Empty(FastenerLength.Check(least, Mm(1e-6)));
        Assert.Empty(FastenerLength.Check(most, Mm(500)));
        Assert.Empty(FastenerLength.Check(Good() with { Layers = [Mm(12), Layer.Compressible("mat", TolerancedLength.PlusMinus(Mm(3), Mm(1)), Mm(2)), Mm(15)] }));
        Assert.Empty(FastenerLength.Check(most with { DriveAngle = Angle.FromRadians(Math.PI / 3) }));
        FastenerLength.Choose(least);
        FastenerLength.Choose(most);
        FastenerLength.Evaluate(least, Mm(1e-6));
        FastenerLength.Evaluate(most, Mm(500));
    }

    [Fact]
    public void The_plain_sum_names_what_is_wrong_all_at_once()
    {
        Length good = Mm(10);
        Angle square = Angle.FromDegrees(0), lost = new(1, (AngleUnit)999);
        Assert.Empty(FastenerLength.CheckTipClearance(Mm(0), Mm(1e-6), Mm(0), square));
        Assert.Empty(FastenerLength.CheckTipClearance(Mm(1e4), Mm(500), Mm(20), Angle.FromDegrees(60)));
        Assert.Equal(["depthBehind", "fastener", "setDepth", "driveAngle"], FastenerLength.CheckTipClearance(Undefined, Undefined, Undefined, lost).Select(static problem => problem.Parameter));
        Assert.Equal(["depthBehind", "fastener", "setDepth", "driveAngle"], FastenerLength.CheckTipClearance(Mm(-1e-6), Mm(0), Mm(20.000001), Angle.FromDegrees(-1)).Select(static problem => problem.Parameter));
        Assert.Equal("depthBehind", Assert.ThrowsAny<ArgumentException>(() => FastenerLength.TipClearance(Undefined, good, good, square)).ParamName);
        Assert.Equal("fastener", Assert.ThrowsAny<ArgumentException>(() => FastenerLength.TipClearance(good, Undefined, good, square)).ParamName);
        Assert.Equal("setDepth", Assert.ThrowsAny<ArgumentException>(() => FastenerLength.TipClearance(good, good, Undefined, square)).ParamName);
        Assert.Equal("driveAngle", Assert.ThrowsAny<ArgumentException>(() => FastenerLength.TipClearance(good, good, good, lost)).ParamName);
    }

    /// <summary>Reading an undefined unit through the quantities library ends the process, uncatchably: printing and comparing must not do it either.</summary>
    [Fact]
    public void Undefined_units_are_printed_and_compared_without_harm()
    {
        Layer layer = Undefined, same = Undefined;
        Behind behind = Behind.Wire(Undefined);
        FastenerJob job = new([layer], behind, FastenerSeries.Brad18) { SetDepth = (TolerancedLength)Undefined, DriveAngle = new Angle(1, (AngleUnit)999), RequiredClearance = Undefined };
        Assert.Equal(layer, same);
        Assert.Equal(layer.GetHashCode(), same.GetHashCode());
        Assert.Equal(behind, Behind.Wire(Undefined));
        Assert.NotEmpty(layer.ToString());
        Assert.NotEmpty(behind.ToString());
        Assert.NotEmpty(job.ToString());
        Assert.NotEmpty((job with { Layers = null!, Behind = null!, Series = null! }).ToString());
    }

    private static FastenerJob Good() => new([Mm(12), Mm(15)], Behind.Metal, FastenerSeries.Brad18);

    /// <summary>Claims two thousand million layers; reading one is a failure.</summary>
    private sealed class EndlessList : IReadOnlyList<Layer>
    {
        public int Count => int.MaxValue;

        public Layer this[int index] => throw new InvalidOperationException("read");

        public IEnumerator<Layer> GetEnumerator() => throw new InvalidOperationException("read");

        System.Collections.IEnumerator System.Collections.IEnumerable.GetEnumerator() => GetEnumerator();
    }
}
