namespace FinishKit;

/// <summary>What the layout of a face takes when the caller gives nothing, each with its basis.</summary>
internal static class FurringDefaults
{
    internal const double Width = 40;
    internal const double JointWidth = 70;
    internal const double FixingSpacing = 250;
    internal const double EndDistance = 25;
    internal const double Overhang = 100;

    internal static readonly Source SectionSource = Source.CommonPractice("default-strip-section", "a furring strip is 40 mm wide (35 to 60), of 15 mm (9 to 18) birch plywood, face grain along it");

    internal static readonly Source JointSource = Source.CommonPractice("default-joint-strip", "where boards butt a strip is 70 mm wide, 60 to 90");

    internal static readonly Source FixingSource = Sources.FixingSpacing;

    internal static readonly Source EndSource = Source.CommonPractice("default-fixing-end", "a fixing keeps 25 mm from the end of a strip, 20 to 40");

    internal static readonly Source OverhangSource = Source.Judgement("default-strip-overhang", "a strip may stand over its last support by 100 mm, 60 to 150");

    internal static readonly Source DistanceSource = Source.CommonPractice("default-strip-clear", "strips do not overlap: the least distance is half of the two widths");
}
