namespace FinishKit;

/// <summary>What the spacing of strips takes when the caller gives nothing, with its basis.</summary>
internal static class StripDefaults
{
    internal const double LeastDistance = 40;

    internal static readonly Source LeastDistanceSource = Source.CommonPractice("default-strip-distance", "neighbouring strips lie at least a strip's width apart, centre to centre: 40 mm");
}
