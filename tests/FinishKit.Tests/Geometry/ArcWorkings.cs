using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Geometry;

/// <summary>Every step of an arc's workings, recomputed from what it prints.</summary>
public sealed class ArcWorkings
{
    [Theory]
    [InlineData(300, 2)]
    [InlineData(300, -2)]
    [InlineData(300, 0)]
    [InlineData(1000, 800)] // past a half circle
    [InlineData(0.5, 1e5)]
    public void Every_step_recomputes(double chord, double rise) =>
        WorkingsCheck.Recompute(Arc.FromChordAndRise(Mm(chord), Mm(rise)).Explain());
}
