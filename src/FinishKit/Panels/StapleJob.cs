using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>Edges of cloth to be stapled to the back of ply: what <see cref="PanelStaples"/> needs to know.</summary>
/// <remarks>Nothing is checked here: <see cref="PanelStaples.CheckSetOut"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record StapleJob
{
    private readonly IReadOnlyList<Length> _edges = [];

    /// <summary>An empty job for an object initialiser.</summary>
    public StapleJob()
    {
    }

    /// <summary>A job with every default.</summary>
    /// <param name="edges">Lengths of the edges.</param>
    /// <param name="plyThickness">Thickness of the ply with its tolerance.</param>
    /// <param name="leg">Length of the staple's legs.</param>
    [SetsRequiredMembers]
    public StapleJob(IReadOnlyList<Length> edges, TolerancedLength plyThickness, Length leg)
    {
        Edges = edges;
        PlyThickness = plyThickness;
        Leg = leg;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="edges">Lengths of the edges.</param>
    /// <param name="plyThickness">Thickness of the ply with its tolerance.</param>
    /// <param name="leg">Length of the staple's legs.</param>
    /// <param name="underCrown">See <see cref="UnderCrown"/>.</param>
    /// <param name="spacing">See <see cref="Spacing"/>.</param>
    /// <param name="margin">See <see cref="Margin"/>.</param>
    /// <param name="leastBite">See <see cref="LeastBite"/>.</param>
    /// <param name="foamUnderCrown">See <see cref="FoamUnderCrown"/>.</param>
    [SetsRequiredMembers]
    public StapleJob(
        IReadOnlyList<Length> edges,
        TolerancedLength plyThickness,
        Length leg,
        Length? underCrown = null,
        Length? spacing = null,
        Length? margin = null,
        Length? leastBite = null,
        Length? foamUnderCrown = null)
        : this(edges, plyThickness, leg)
    {
        UnderCrown = underCrown;
        Spacing = spacing;
        Margin = margin;
        LeastBite = leastBite;
        FoamUnderCrown = foamUnderCrown;
    }

    /// <summary>Lengths of the edges, 1 mm to 50 m each, 1 to 1000; see <see cref="WrapPlan.WrappedEdges"/>.</summary>
    public required IReadOnlyList<Length> Edges
    {
        get => _edges;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _edges = Lists.Keep(value, PanelStaples.MostEdges);
    }

    /// <summary>Thickness of the ply, 1 to 50 mm, with its tolerance: the thinnest counts.</summary>
    public required TolerancedLength PlyThickness { get; init; }

    /// <summary>Length of the staple's legs, 1 to 50 mm.</summary>
    public required Length Leg { get; init; }

    /// <summary>What surely stays between the staple's crown and the ply: the cloth, without foam, 0 to 50 mm; see <see cref="WrapPlan.UnderCrown"/>. Null counts as nothing, with a finding: the careful side for the face, not for the bite.</summary>
    public Length? UnderCrown { get; init; }

    /// <summary>Foam under the crown beside that, as thick as it may stay there, 0 to 50 mm; see <see cref="WrapPlan.FoamUnderCrown"/>. A driven crown may squeeze it to nothing, so it counts for the bite only, never for the face. Null for none.</summary>
    public Length? FoamUnderCrown { get; init; }

    /// <summary>Distance of staples at most, 5 to 500 mm. Default 40 mm (common practice).</summary>
    public Length? Spacing { get; init; }

    /// <summary>Ply to be kept before the point, 0 to 20 mm. Default 1.5 mm (judgement).</summary>
    public Length? Margin { get; init; }

    /// <summary>Least depth in the ply, 0 to 50 mm. Default 4 mm (judgement).</summary>
    public Length? LeastBite { get; init; }

    private (TolerancedLength, double, double?, double?, double?, double?, double?) Key => (PlyThickness, Door.Millimetres(Leg), Mm(UnderCrown), Mm(FoamUnderCrown), Mm(Spacing), Mm(Margin), Mm(LeastBite));

    /// <summary>Whether every member is of equal amount, whatever its unit, and the edges are the same in the same order.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(StapleJob? other) => other is not null && Key.Equals(other.Key) && Lists.Same(Edges, other.Edges, PanelStaples.MostEdges);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Edges, leg and ply, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"staples of {Print.Mm(Door.Millimetres(Leg))} along {Print.Number(Edges?.Count ?? 0)} edges";

    private static double? Mm(Length? length) => length is { } given ? Door.Millimetres(given) : null;
}
