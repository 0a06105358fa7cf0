namespace FinishKit;

/// <summary>What splitting a wall takes when the caller gives nothing, each with its basis.</summary>
internal static class PanelSplitDefaults
{
    internal const double Reveal = 1.5;
    internal const double Landing = 15;
    internal const double CornerDistance = 50;
    internal const double LeastPanel = 150;
    internal const int Effort = 20_000_000;

    internal static readonly Source RevealSource = WrapDefaults.RevealSource;

    internal static readonly Source LandingSource = Source.Judgement("default-panel-landing", "each of two panels that meet lies on 15 mm of metal, 12 to 25: room for a fixing");

    internal static readonly Source CornerSource = Source.Judgement("default-panel-corner", "a joint runs along an opening's edge or stays 50 mm off it: a narrower tongue of ply beside the opening breaks");

    internal static readonly Source LeastSource = Source.Judgement("default-least-panel", "no panel is narrower or lower than 150 mm, unless the wall is");

    internal static readonly Source Split = Source.Derived("wall-split", "Fewest panels of a wall", "level joints run through; every joint can be pushed to the front or down until it stands at an end of its metal, of what openings leave of it or of what they cover, at the least size from the joint before or a sheet's size from the one behind, and no panel is added by it: those places suffice for the fewest; what is best above one does not depend on what lies below it, nor what is best behind an upright joint on what lies before it, so shortest paths over the places, one inside the other, leave no split out; each panel and half the reveal round it take no more than a sheet larger by the reveal, and together they cover the wall, larger by it too, but for openings as much larger");
}
