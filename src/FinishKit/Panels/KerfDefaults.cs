namespace FinishKit;

/// <summary>What kerf bending rests on, and what it takes when the caller gives nothing.</summary>
internal static class KerfDefaults
{
    internal const double DepthError = 0.3;
    internal const double LeastWeb = 1;
    internal const double GreatestWeb = 3;
    internal const double LeastRib = 3;

    internal static readonly Source Geometry = Source.Derived("kerf-geometry", "Sheet bent by kerfs on its inside", "each kerf turns about a hinge at its bottom until its sides meet, by 2 atan(k/(2 d)); the hinges lie the web inside the outer face, along a line that keeps its length; the web bent evenly over the kerf would turn by k/d, which is a little more");

    internal static readonly Source WebSource = Source.CommonPractice("default-kerf-web", "1 to 3 mm are left under a kerf, or one face ply");

    internal static readonly Source DepthErrorSource = Source.Judgement("default-kerf-depth-error", "a depth stop, the bed and a bowed sheet hold the depth of a kerf to 0.3 mm, 0.2 to 0.5");

    internal static readonly Source RibSource = Source.Judgement("default-kerf-rib", "wood of less than 3 mm between two kerfs breaks off while it is cut");

    internal static readonly Source InsideSource = Source.Published("KERF-INSIDE", "Curving plywood forms", "concreteconstruction.net", null, "kerfs go on the inside of the curve", SourceReading.Copy);
}
