using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>A section, its loads and its limits: how far apart may its supports be?</summary>
public sealed record BayQuestion
{
    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="section">The board, strip or panel.</param>
    [SetsRequiredMembers]
    public BayQuestion(BeamSection section) => Section = section;

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="section">The board, strip or panel.</param>
    /// <param name="surface">See <see cref="Surface"/>.</param>
    /// <param name="pointLoad">See <see cref="PointLoad"/>.</param>
    /// <param name="uniformLoad">See <see cref="UniformLoad"/>.</param>
    /// <param name="spans">See <see cref="Spans"/>.</param>
    /// <param name="deflectionLimit">See <see cref="DeflectionLimit"/>.</param>
    /// <param name="deflectionRatio">See <see cref="DeflectionRatio"/>.</param>
    /// <param name="cap">See <see cref="Cap"/>.</param>
    [SetsRequiredMembers]
    public BayQuestion(
        BeamSection section,
        Surface surface = Surface.Wall,
        Force? pointLoad = null,
        ForcePerLength? uniformLoad = null,
        int? spans = null,
        Length? deflectionLimit = null,
        double? deflectionRatio = null,
        Length? cap = null)
        : this(section)
    {
        Surface = surface;
        PointLoad = pointLoad;
        UniformLoad = uniformLoad;
        Spans = spans;
        DeflectionLimit = deflectionLimit;
        DeflectionRatio = deflectionRatio;
        Cap = cap;
    }

    /// <summary>Makes one by its members.</summary>
    public BayQuestion()
    {
    }

    /// <summary>The board, strip or panel that spans. It carries the load alone: what neighbours take over through a tongue is not counted.</summary>
    public required BeamSection Section { get; init; }

    /// <summary>What it finishes.</summary>
    public Surface Surface { get; init; }

    /// <summary>A load at its worst place, 0 to 100,000 N; null for 200 N on a wall and 100 N on a ceiling (judgement: a hand, an elbow, a knee).</summary>
    public Force? PointLoad { get; init; }

    /// <summary>A load over the worst set of spans, 0 to 1000 N/mm; null for none. It is checked apart from the point load, not on top of it.</summary>
    public ForcePerLength? UniformLoad { get; init; }

    /// <summary>Equal spans that it runs over, 1 to 20; null for 2 (judgement).</summary>
    public int? Spans { get; init; }

    /// <summary>Deflection allowed, more than 0 up to 1 m; null for 3 mm (judgement).</summary>
    public Length? DeflectionLimit { get; init; }

    /// <summary>Deflection allowed as a part of the span: the number the span is divided by, 1 to 10,000; null for 150 (judgement). The smaller of the two limits counts.</summary>
    public double? DeflectionRatio { get; init; }

    /// <summary>No bay beyond this, whatever the stiffness, more than 0 up to 100 m; null for 500 mm (common practice).</summary>
    public Length? Cap { get; init; }

    private (BeamSection, Surface, double?, double?, int?, double?, double?, double?) Key => (
        Section, Surface, PointLoad is { } point ? Door.Newtons(point) : null, UniformLoad is { } uniform ? Door.NewtonsPerMillimetre(uniform) : null, Spans,
        DeflectionLimit is { } limit ? Door.Millimetres(limit) : null, DeflectionRatio, Cap is { } cap ? Door.Millimetres(cap) : null);

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(BayQuestion? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>The section and what it finishes, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Section}, {(Surface == Surface.Ceiling ? "ceiling" : "wall")}";
}
