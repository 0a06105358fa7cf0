using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>What fastening takes when the caller gives nothing, each with its basis.</summary>
internal static class FastenerDefaults
{
    internal const double LeastBiteDiameters = 6;
    internal const double TargetBiteDiameters = 10;
    internal const double MarginalChance = 1e-4;
    internal const double HitsLimit = 0.1;

    internal static readonly TolerancedLength SetDepth = TolerancedLength.PlusMinus(Measure.Mm(1), Measure.Mm(0.5), DeviationScope.Each);

    internal static readonly Angle TongueAngle = new(45, AngleUnit.Degree);

    internal static readonly Source SetDepthSource = Source.CommonPractice("default-set-depth", "a pin or brad is set 1 mm deep, 0.5 mm either way");

    internal static readonly Source TongueAngleSource = Source.CommonPractice("default-tongue-angle", "a blind nail is driven at 45 degrees through a tongue, 40 to 50");

    internal static readonly Source ClearanceSource = Source.Judgement("default-tip-clearance", "worst-case clearance of the tip: metal of a rib 0.5 mm, outer skin 5 mm, wire, pipe or tank 10 mm");

    internal static readonly Source TargetBiteSource = Source.Judgement("default-target-bite", "10 shank diameters at nominal sizes");

    internal static readonly Source MarginalSource = Source.Judgement("default-marginal-chance", "a fastener is marginal at most at 1 chance in 10,000 of touching, and only toward the metal of a rib");

    internal static readonly Source HitsSource = Source.Judgement("default-hits-limit", "fewer than 0.1 hits expected on the whole job");

    internal static double Clearance(BehindKind behind) => behind switch
    {
        BehindKind.RibMetal => 0.5,
        BehindKind.OuterSkin => 5,
        _ => 10,
    };
}
