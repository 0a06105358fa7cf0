namespace FinishKit;

/// <summary>What jointing courses takes when the caller gives nothing, each with its basis.</summary>
internal static class JointDefaults
{
    internal const int Stagger = 2;
    internal const double ShortestPiece = 600;
    internal const double StripWidth = 70;
    internal const int Effort = 20_000_000;

    internal static readonly Source StaggerSource = Source.CommonPractice("default-joint-stagger", "butt joints of neighbouring courses are two strips apart, one to three");

    internal static readonly Source ShortestPieceSource = Source.CommonPractice("default-shortest-piece", "a piece of a jointed course is 600 mm long or longer, 400 to 800 mm");

    internal static readonly Source StripSource = Source.CommonPractice("default-joint-strip", "where boards butt a strip is 70 mm wide, 60 to 90");
}
