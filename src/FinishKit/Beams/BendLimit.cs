using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>The parameter paths of a <see cref="BentSheet"/>, made once: reading one allocates nothing.</summary>
internal sealed class BentSheetNames(string root)
{
    internal string Root { get; } = root;

    internal string Thickness { get; } = root + "." + nameof(BentSheet.Thickness);

    internal string Elasticity { get; } = root + "." + nameof(BentSheet.Elasticity);

    internal string BendingStrength { get; } = root + "." + nameof(BentSheet.BendingStrength);

    internal string StrengthBasis { get; } = root + "." + nameof(BentSheet.StrengthBasis);

    internal string Factor { get; } = root + "." + nameof(BentSheet.Factor);

    internal string PublishedRadius { get; } = root + "." + nameof(BentSheet.PublishedRadius);

    internal string Grain { get; } = root + "." + nameof(BentSheet.Grain);
}

/// <summary>A <see cref="BentSheet"/> as plain numbers in mm and MPa; NaN stands for what was not given.</summary>
internal readonly struct BendLimit
{
    internal const double DefaultFactor = 2;

    /// <summary>The least factor that <see cref="Sources.BendFactor"/> calls usual.</summary>
    internal const double LeastUsualFactor = 1.5;

    private const string SheetWords = "a bent sheet";

    private static readonly Allowed s_thickness = new(Allowed.OneStep, 200, "mm");
    private static readonly Allowed s_modulus = new(1, 100_000, "MPa");
    private static readonly Allowed s_strength = new(0.1, 1000, "MPa");
    private static readonly Allowed s_factor = new(1, 10, string.Empty);
    private static readonly Allowed s_published = new(Allowed.OneStep, 1e6, "mm");
    private static readonly Allowed s_wall = new(-1e6, 1e6, "mm");

    internal double Thickness { get; private init; }

    internal double Elasticity { get; private init; }

    internal double Strength { get; private init; }

    internal double Factor { get; private init; }

    internal bool FactorIsDefault { get; private init; }

    /// <summary>Whether the strength is an allowable one, with a factor in it already.</summary>
    internal bool IsAllowable { get; private init; }

    internal Source FactorSource => !FactorIsDefault ? Sources.Given : IsAllowable ? Sources.BendFactorOfAllowable : Sources.BendFactor;

    internal DefaultUsed DefaultFactorUsed => new(new Figure("bend-factor", Factor, string.Empty), FactorSource);

    /// <summary>Whether the factor is under the usual one of a characteristic strength.</summary>
    internal bool FactorIsLow => !IsAllowable && Factor < LeastUsualFactor;

    internal double Published { get; private init; }

    internal Source PublishedSource { get; private init; }

    internal Source Source { get; private init; }

    /// <summary>A published radius is of one grain: it says nothing about the other way.</summary>
    internal BendLimit WithoutPublished() => this with { Published = double.NaN, PublishedSource = Sources.Given };

    /// <summary>E I per mm of width.</summary>
    internal double Stiffness => Elasticity * Thickness * Thickness * Thickness / 12;

    /// <summary>The elastic limit alone.</summary>
    internal double Elastic => Factor * Elasticity * Thickness / (2 * Strength);

    internal double Minimum => double.IsNaN(Published) ? Elastic : Math.Max(Elastic, Published);

    internal BendBasis Basis => Published > Elastic ? BendBasis.PublishedRadius : BendBasis.ElasticLimit;

    internal static BendLimit Read(BentSheet? sheet, BentSheetNames names, List<InputProblem>? problems)
    {
        if (sheet is null)
        {
            Door.IsMissing(sheet, new Name(names.Root), SheetWords, problems);
            return new BendLimit { Thickness = double.NaN, Published = double.NaN, Source = Sources.Given, PublishedSource = Sources.Given };
        }

        if (sheet.Grain is { } grain)
        {
            CheckGrain(grain, names.Grain, problems);
        }

        if (sheet.StrengthBasis is not (PlywoodStrengthBasis.Characteristic or PlywoodStrengthBasis.AllowableDesign))
        {
            Door.Report(new InputProblem(names.StrengthBasis, FormattableString.Invariant($"the undefined basis {(int)sheet.StrengthBasis}"), "Characteristic or AllowableDesign", isRange: false), problems);
        }

        bool allowable = sheet.StrengthBasis == PlywoodStrengthBasis.AllowableDesign;
        return new BendLimit
        {
            IsAllowable = allowable,
            Thickness = Door.Millimetres(sheet.Thickness, names.Thickness, s_thickness, problems),
            Elasticity = Door.Megapascals(sheet.Elasticity, names.Elasticity, s_modulus, problems),
            Strength = Door.Megapascals(sheet.BendingStrength, names.BendingStrength, s_strength, problems),
            Factor = sheet.Factor is { } factor ? ReadFactor(factor, names.Factor, problems) : allowable ? 1 : DefaultFactor,
            FactorIsDefault = sheet.Factor is null,
            Published = sheet.PublishedRadius is { } radius ? Door.Millimetres(radius, names.PublishedRadius, s_published, problems) : double.NaN,
            PublishedSource = sheet.PublishedSource ?? Sources.Given,
            Source = sheet.Source ?? Sources.Given,
        };
    }

    /// <summary>Radius of the surface at the sheet's back, signed, positive where hollow to the room; NaN where flat.</summary>
    internal static double ReadWall(Length? radius, double thickness, string name, List<InputProblem>? problems)
    {
        if (radius is not { } given)
        {
            return double.NaN;
        }

        double r = Door.Millimetres(given, name, s_wall, problems);
        if (r == 0)
        {
            Door.Report(new InputProblem(name, "0 mm", "-1000000 to 1000000 mm, not 0; null for a flat surface", isRange: true), problems);
        }
        else if (r > 0 && r <= thickness)
        {
            Door.Report(new InputProblem(name, Print.Number(r) + " mm", $"more than the sheet's thickness, {Print.Number(thickness)} mm, where hollow", isRange: true), problems);
        }

        return r;
    }

    internal static double ReadFactor(double factor, string name, List<InputProblem>? problems) => Door.Number(factor, name, s_factor, problems);

    internal static void CheckGrain(BendGrain grain, string name, List<InputProblem>? problems)
    {
        if (grain is not (BendGrain.AroundTheCurve or BendGrain.AlongTheAxis))
        {
            Door.Report(new InputProblem(name, FormattableString.Invariant($"the undefined grain {(int)grain}"), "AroundTheCurve or AlongTheAxis", isRange: false), problems);
        }
    }

    internal static void CheckBacking(SheetBacking backing, string name, List<InputProblem>? problems)
    {
        if (backing is not (SheetBacking.StripsAtRows or SheetBacking.AllOver))
        {
            Door.Report(new InputProblem(name, FormattableString.Invariant($"the undefined backing {(int)backing}"), "StripsAtRows or AllOver", isRange: false), problems);
        }
    }

    /// <summary>Which way the face grain runs, to follow a sheet's name.</summary>
    internal static string GrainWords(BendGrain? grain) => grain switch
    {
        BendGrain.AroundTheCurve => ", face grain around the curve",
        BendGrain.AlongTheAxis => ", face grain along the axis",
        _ => string.Empty,
    };
}

/// <summary>A sheet on a curved surface, as plain numbers.</summary>
internal readonly struct BendQuestion(in BendLimit limit, double wall, double ratio, Source ratioSource)
{
    internal BendLimit Limit { get; } = limit;

    /// <summary>Radius at the sheet's back, signed; NaN where flat.</summary>
    internal double Wall { get; } = wall;

    /// <summary>Greatest curvature of the sheet over that of the arc through its middle.</summary>
    internal double Ratio { get; } = ratio;

    internal Source RatioSource { get; } = ratioSource;

    internal bool IsFlat => double.IsNaN(Wall);

    internal bool Bulges => Wall < 0;

    internal BendQuestion With(in BendLimit other) => new(other, Wall, Ratio, RatioSource);

    /// <summary>The one formula body, for the numbers and for the workings.</summary>
    internal BendNumbers Solve<TTrace>(TTrace trace)
        where TTrace : struct, ITrace
    {
        double minimum = SolveMinimum(Limit, trace);
        if (IsFlat)
        {
            return new BendNumbers(Limit.Elastic, minimum, double.NaN, double.NaN);
        }

        double radius = Math.Abs(Wall), thickness = Limit.Thickness, middle, peak;
        trace.Given("R", radius, "mm", Sources.Given, meaning: Bulges ? "radius at the sheet's back, bulging into the room" : "radius at the sheet's back, hollow to the room");
        middle = Bulges
            ? trace.Step("R_m", nameof(middle), radius + (thickness / 2), "mm", Sources.BendElastic)
            : trace.Step("R_m", nameof(middle), radius - (thickness / 2), "mm", Sources.BendElastic);
        if (Ratio <= 0)
        {
            return new BendNumbers(Limit.Elastic, minimum, middle, double.NaN) { IsHeld = false };
        }

        double ratio = Ratio;
        trace.Given("k", ratio, string.Empty, RatioSource, meaning: "greatest curvature over that of the arc");
        peak = trace.Step("R_peak", nameof(peak), middle / ratio, "mm", Sources.HoldDownRows);
        trace.Step("q", "margin", peak / minimum, string.Empty, Sources.BendElastic);
        return new BendNumbers(Limit.Elastic, minimum, middle, peak);
    }

    internal static double SolveMinimum<TTrace>(in BendLimit limit, TTrace trace)
        where TTrace : struct, ITrace
    {
        double factor = limit.Factor, elasticity = limit.Elasticity, thickness = limit.Thickness, strength = limit.Strength, elasticRadius;
        trace.Given("F", factor, string.Empty, limit.FactorSource, meaning: "factor on the elastic radius");
        trace.Given("E", elasticity, "MPa", limit.Source);
        trace.Given("t", thickness, "mm", limit.Source);
        trace.Given("f", strength, "MPa", limit.Source, meaning: limit.IsAllowable ? "allowable bending strength" : "characteristic bending strength");
        elasticRadius = trace.Step("R_el", nameof(elasticRadius), factor * elasticity * thickness / (2 * strength), "mm", Sources.BendElastic);
        double minimum;
        if (double.IsNaN(limit.Published))
        {
            minimum = trace.Step("R_min", nameof(minimum), elasticRadius, "mm", Sources.BendElastic);
            return minimum;
        }

        double published = limit.Published;
        trace.Given("R_pub", published, "mm", limit.PublishedSource, meaning: "published minimum radius");
        minimum = trace.Step("R_min", nameof(minimum), Math.Max(elasticRadius, published), "mm", Sources.BendElastic);
        return minimum;
    }
}

/// <summary>What came out, in mm. NaN stands for what there is none of: a flat surface, a sheet that is not bent.</summary>
internal readonly struct BendNumbers(double elastic, double minimum, double middle, double peak)
{
    /// <summary>Whether anything holds the sheet to its surface: false where it stays straight on a curved one.</summary>
    internal bool IsHeld { get; init; } = true;

    internal double Elastic { get; } = elastic;

    internal double Minimum { get; } = minimum;

    internal double Middle { get; } = middle;

    internal double Peak { get; } = peak;

    /// <summary>A limit exactly met is met, on the grid. What nothing holds to a curve does not follow it.</summary>
    internal bool Passes => IsHeld && !IsTooTight;

    internal bool IsTooTight => !double.IsNaN(Peak) && Grid.Snap(Peak) < Grid.Snap(Minimum);

    internal double Margin => Peak / Minimum;
}

/// <summary>How far a sheet reaches round its arc: the longest bay and the girth against the radius of its middle. NaN stands for what is not known or does not matter.</summary>
internal readonly struct ArcReach(double bay, double girth, double middle)
{
    internal double Share => bay / middle;

    /// <summary>Whether a bay is longer than the radius, or the sheet goes round more than half a circle: nothing of small rise is left.</summary>
    internal bool IsOutside => BayIsTooLong || GirthIsTooLong;

    private bool BayIsTooLong => !double.IsNaN(Share) && Grid.Snap(bay) > Grid.Snap(middle);

    private bool GirthIsTooLong => !double.IsNaN(girth / middle) && Grid.Snap(girth) > Grid.Snap(Math.PI * middle);

    internal bool IsNotShallow => !IsOutside && Share > ArcRows.GreatestShare + 1e-9;

    internal string Message => IsNotShallow
        ? $"A bay of {Print.Mm(bay)} is {Print.Round(Share, 3)} of the radius. Up to 0.4 the small-rise formula is within 1% in curvature and 6.5% in pull for three rows; how far it is off beyond is not known."
        : (BayIsTooLong ? $"A bay of {Print.Mm(bay)} is longer than the radius of the arc, {Print.Mm(middle)}" : $"{Print.Mm(girth)} go more than half round a circle of {Print.Mm(middle)} radius")
            + ": the formulas are for small rise and say nothing there. Put rows nearer, or judge a part of the curve.";

    internal Figure[] Values => IsNotShallow ? [new("longest-bay", bay, "mm"), new("bay-over-radius", Share, string.Empty)]
        : BayIsTooLong ? [new("longest-bay", bay, "mm"), new("middle-radius", middle, "mm")]
        : [new("girth", girth, "mm"), new("middle-radius", middle, "mm")];
}
