namespace FinishKit;

/// <summary>What edge curves take when the caller gives nothing, and what they rest on.</summary>
internal static class EdgeDefaults
{
    internal const double DifferenceLimit = 1;

    internal static readonly Source DifferenceLimitSource = Source.Judgement("default-edge-difference", "curves through the same points may differ by 1 mm, what a tape is read to; where they differ by more, measure once more");

    internal static readonly Source Curve = Source.Derived("edge-curve", "Curve through points measured along an edge", "a cubic on each piece from its ends and slopes; slopes by the weighted harmonic mean of the neighbouring chords (shape-preserving), or such that the curvature is continuous and nothing at the ends (natural)");

    internal static readonly Source Exact = Source.Derived("edge-exact", "Straight edge, and edge on an arc", "on a circle the sine of the angle to the plumb line changes evenly with height");
}
