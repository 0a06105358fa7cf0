namespace FinishKit;

/// <summary>What sawing sheets takes when the caller gives nothing, each with its basis.</summary>
internal static class NestingDefaults
{
    internal const double Trim = 5;
    internal const double Kerf = 2.4;
    internal const double LeastOffcutLength = 400;
    internal const double LeastOffcutWidth = 100;
    internal const double LeastLongAtTheSaw = 300;
    internal const double LeastWideAtTheSaw = 100;
    internal const int Effort = 200_000_000;

    internal static readonly Source TrimSource = Source.CommonPractice("default-sheet-trim", "5 mm are trimmed off each edge of a sheet, the kerf included, 3 to 10 mm");

    internal static readonly Source KerfSource = Source.CommonPractice("default-rip-kerf", "a rip cut takes 2.4 mm, 1.8 to 3.2 mm");

    internal static readonly Source SmallAtTheSawSource = Source.Judgement("default-small-at-the-saw", "wood on a saw that is shorter than 300 mm or narrower than 100 mm, or 100 mm between fence and blade, brings the hands too near");

    internal static readonly Source LeastOffcutSource = Source.Judgement("default-least-sheet-offcut", "a piece left of a sheet is worth keeping from 400 mm long and 100 mm wide");
}
