#pragma warning disable CA1822 // instance members on purpose

namespace FinishKit.Tests.Architecture;

/// <summary>One of two types that a comparison of surfaces must tell apart.</summary>
public sealed class SurfaceFixtureLeft
{
    public int Depth { get; init; }

    public void Extra()
    {
    }

    public int Sum(int a, int b = 1) => a + b;
}

/// <summary>The other.</summary>
public sealed class SurfaceFixtureRight
{
    public int Depth { get; set; }

    public int Sum(int a, int b = 2) => a + b;
}
