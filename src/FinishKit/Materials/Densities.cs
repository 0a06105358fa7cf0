namespace FinishKit;

/// <summary>The ranges wood and plywood densities may lie in.</summary>
internal static class Densities
{
    internal static readonly Allowed SpecificGravity = new(0.1, 1.3, string.Empty);

    internal static readonly Allowed Density = new(100, 1300, "kg/m3");
}
