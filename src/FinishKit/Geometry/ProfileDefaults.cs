namespace FinishKit;

/// <summary>What the bands of a measured profile take when the caller gives nothing, and when a finding speaks up; each with its basis.</summary>
internal static class ProfileDefaults
{
    /// <summary>Square millimetres that a further band must take off the sum of squares.</summary>
    internal const double Penalty = 4;

    internal const double MismatchLimit = 2, StationOffLimit = 2, SlightChange = 1;

    internal static readonly Source PenaltySource = Source.Judgement("default-profile-penalty", "a further band must take 4 mm² off the sum of squares, 1 to 25: as much as one station 2 mm off the line; readings good to a millimetre seldom do that by chance");

    internal static readonly Source Mismatch = Source.Judgement("default-profile-mismatch", "neighbouring bands that miss each other by more than 2 mm where they should meet are looked at again");

    internal static readonly Source StationOff = Source.Judgement("default-profile-off", "a station more than 2 mm off its band's line is a bow or a wrong reading");

    internal static readonly Source Bow = Source.Judgement("default-profile-bow", "bands that turn the same way are as likely one bow where an arc's squared residuals and one penalty are no more than theirs with one penalty each");

    internal static readonly Source Slight = Source.Judgement("default-profile-slight", "leans that differ by less than 1° are as likely a bow as a break");
}
