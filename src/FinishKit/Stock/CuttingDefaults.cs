namespace FinishKit;

/// <summary>What cutting boards takes when the caller gives nothing, each with its basis.</summary>
internal static class CuttingDefaults
{
    internal const double Kerf = 2.8;
    internal const double EndTrim = 15;
    internal const double LeastOffcut = 400;
    internal const double Spare = 0.1;
    internal const int Effort = 100_000_000;

    internal static readonly Source KerfSource = Source.CommonPractice("default-mitre-kerf", "a mitre saw takes 2.8 mm, 1.8 to 3.2 mm");

    internal static readonly Source EndTrimSource = Source.CommonPractice("default-end-trim", "15 mm are trimmed off each end of a new board, the kerf included, 10 to 25 mm");

    internal static readonly Source LeastOffcutSource = Source.CommonPractice("default-least-offcut", "an offcut of 400 mm or more is worth keeping, 300 to 600 mm");

    internal static readonly Source SpareSource = Source.CommonPractice("default-spare-boards", "a tenth more boards are bought than the plan takes, a twentieth to three twentieths");
}
