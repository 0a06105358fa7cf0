namespace FinishKit;

/// <summary>What slats take when the caller gives nothing, each with its basis.</summary>
internal static class SlatDefaults
{
    internal const double LeastGap = 6, GreatestGap = 10;

    /// <summary>Share of a slat's width under which an end slat is called narrow.</summary>
    internal const double NarrowEndSlat = 0.5;

    internal static readonly Source Gap = Source.CommonPractice("default-slat-gap", "gaps of 6 to 10 mm between slats, 4 to 15");

    internal static readonly Source EndSlat = Source.Judgement("default-end-slat", "an end slat narrower than half a slat looks like a sliver");
}
