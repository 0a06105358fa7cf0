namespace FinishKit;

/// <summary>What ripping takes when the caller gives nothing: as any other sawing of sheets.</summary>
internal static class RippingDefaults
{
    internal const double Trim = NestingDefaults.Trim;
    internal const double Kerf = NestingDefaults.Kerf;

    internal static readonly Source TrimSource = NestingDefaults.TrimSource;

    internal static readonly Source KerfSource = NestingDefaults.KerfSource;
}
