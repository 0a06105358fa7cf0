namespace FinishKit;

/// <summary>When a finding about a cut speaks up, with its basis.</summary>
internal static class CutDefaults
{
    internal const double SawTurns = 50, SawTilts = 45;

    internal static readonly Source SawReach = Source.CommonPractice("default-saw-reach", "a mitre saw turns to 50°, 45 to 60, and tilts to 45°, 45 to 48");
}
