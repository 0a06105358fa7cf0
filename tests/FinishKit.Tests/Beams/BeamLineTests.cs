using System;
using System.Linq;
using Xunit;

namespace FinishKit.Tests.Beams;

/// <summary>The solver beneath everything that spans, against published coefficients and against statics.</summary>
public sealed class BeamLineTests
{
    /// <summary>check-values.md, section 8: coefficient of w L^4/(E I), its place, and the greatest moment over a support.</summary>
    [Theory]
    [InlineData("1 1 1", "1", 0.0130208, 0.5, 0, "simple span (from memory, universal)")]
    [InlineData("1 1", "1 1", 0.005416, 0.4215, -0.125, "two spans (read in a copy, CERM 15th ed. prints 0.00541 at 0.4215)")]
    [InlineData("1 1 1", "1 1 1", 0.006884, 0.4460, -0.100, "three spans (read in a copy, prints 0.0069 at 0.446)")]
    [InlineData("1 1 1", "1 1 0", 0.005900, 0.4305, -0.1167, "three spans, two loaded (read in a copy, prints 0.0059 at 0.430)")]
    [InlineData("1 1 1", "1 0 1", 0.009917, 0.479, -0.050, "three spans, outer ones loaded (from memory, 0.0099)")]
    [InlineData("1 1 1 1", "1 1 1 1", 0.006460, 0.440, -0.107, "four spans (from memory, 0.0065)")]
    [InlineData("1 1 1 1 1", "1 1 1 1 1", 0.006572, 0.4414, -0.105, "five spans (derived)")]
    public void Uniform_loads_give_the_published_coefficients(string spans, string loads, double coefficient, double place, double support, string source)
    {
        double[] uniform = Numbers(loads);
        BeamLine beam = new([.. Numbers(spans).Take(uniform.Length)], 1, null, uniform);
        BeamPlace sag = beam.GreatestSag();
        double fromEnd = sag.Span == 0 ? sag.Distance : 1 - sag.Distance; // either end, the beam is symmetrical
        Assert.True(Math.Abs(sag.Value - coefficient) < 1.0e-6, $"{source}: {sag.Value}");
        Assert.True(Math.Abs(fromEnd - place) < 6e-4, $"{source}: {sag.Distance}");
        Assert.True(Math.Abs(beam.Moments.Min() - support) < 6e-4, $"{source}: {beam.Moments.Min()}");
    }

    [Fact]
    public void A_sunken_middle_support_carries_nothing_when_it_sinks_as_far_as_the_simple_span()
    {
        // Two spans of 1 as one of 2: 5/384 w (2)^4 = 80/384; there the middle reaction vanishes.
        BeamLine beam = new([1, 1], 1, [0, 80.0 / 384, 0], [1, 1]);
        Assert.Equal(0, beam.Reactions[1], 12);
        Assert.Equal(0.5, beam.Moments[1], 12); // w (2)²/8
        Assert.Equal(80.0 / 384, beam.Span(0).Deflection(1), 12);
    }

    private static double[] Numbers(string text) => [.. text.Split(' ').Select(static number => double.Parse(number, System.Globalization.CultureInfo.InvariantCulture))];
}
