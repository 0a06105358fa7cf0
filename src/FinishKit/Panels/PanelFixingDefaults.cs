namespace FinishKit;

/// <summary>What the fixings of a panel take when the caller gives nothing, each with its basis.</summary>
internal static class PanelFixingDefaults
{
    internal const double Spacing = 250;
    internal const double Edge = 25;
    internal const double LeastSpacing = 20;

    internal static readonly Source SpacingSource = Sources.FixingSpacing;

    internal static readonly Source EdgeSource = Source.Judgement("default-fixing-edge", "the outer fixings of a row sit 25 mm from the panel's edge, 15 to 40");

    internal static readonly Source LeastSpacingSource = Source.Judgement("fixing-least-spacing", "fixings nearer than 20 mm to each other are no answer in thin ply: stronger ones are");

    internal static readonly Source Share = Source.Derived("fixing-share", "Load of one fixing of a row", "each fixing holds the panel to half way to its neighbours, the outer ones to the edge: s inside, e + s/2 at the ends");

    internal static readonly Source Reaction = Source.Derived(
        "fixing-reaction",
        "Load of one fixing of a row under a stiff panel",
        "a beam over equal bays s that overhangs by e: the moment over fixing i is A (r^i + r^(n-1-i)) - q s2/12 with r = sqrt(3) - 2, and -q e2/2 at the ends; a reaction is half of the load of each bay and what the moments differ by over s");

    internal static readonly Source MassShare = Source.Derived(
        "fixing-mass-share",
        "Share of a row in a panel's mass",
        "each row holds the panel to half way to its neighbours, the outer ones to the edge, or what it carries as support of a beam over all rows, whichever is more; mass times acceleration in g times 9.80665 m/s2");
}
