using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>A tapping screw through a panel into thin metal: what <see cref="MetalScrew.Choose(MetalScrewJob)"/> needs to know.</summary>
/// <remarks>Nothing is checked here: <see cref="MetalScrew.Check(MetalScrewJob)"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record MetalScrewJob
{
    private readonly IReadOnlyList<Layer> _layers = [];

    /// <summary>Makes one by its members.</summary>
    public MetalScrewJob()
    {
    }

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="layers">What the screw passes before the metal, outermost first.</param>
    /// <param name="metal">Thickness of the metal.</param>
    /// <param name="behind">What is behind the metal.</param>
    /// <param name="screws">Diameter over the thread, and stocked lengths.</param>
    /// <param name="pitch">Pitch of the thread.</param>
    [SetsRequiredMembers]
    public MetalScrewJob(IReadOnlyList<Layer> layers, TolerancedLength metal, Behind behind, FastenerSeries screws, Length pitch)
    {
        Layers = layers;
        Metal = metal;
        Behind = behind;
        Screws = screws;
        Pitch = pitch;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="layers">What the screw passes before the metal, outermost first.</param>
    /// <param name="metal">Thickness of the metal.</param>
    /// <param name="behind">What is behind the metal.</param>
    /// <param name="screws">Diameter over the thread, and stocked lengths.</param>
    /// <param name="pitch">Pitch of the thread.</param>
    /// <param name="setDepth">See <see cref="SetDepth"/>.</param>
    /// <param name="threadsBeyond">See <see cref="ThreadsBeyond"/>.</param>
    /// <param name="point">See <see cref="Point"/>.</param>
    /// <param name="requiredClearance">See <see cref="RequiredClearance"/>.</param>
    /// <param name="metalStrength">See <see cref="MetalStrength"/>.</param>
    /// <param name="headHold">See <see cref="HeadHold"/>.</param>
    /// <param name="pilotHole">See <see cref="PilotHole"/>.</param>
    /// <param name="lengthTolerance">See <see cref="LengthTolerance"/>.</param>
    [SetsRequiredMembers]
    public MetalScrewJob(
        IReadOnlyList<Layer> layers,
        TolerancedLength metal,
        Behind behind,
        FastenerSeries screws,
        Length pitch,
        TolerancedLength? setDepth = null,
        double? threadsBeyond = null,
        Length? point = null,
        Length? requiredClearance = null,
        Pressure? metalStrength = null,
        Force? headHold = null,
        Length? pilotHole = null,
        Length? lengthTolerance = null)
        : this(layers, metal, behind, screws, pitch)
    {
        SetDepth = setDepth;
        ThreadsBeyond = threadsBeyond;
        Point = point;
        RequiredClearance = requiredClearance;
        MetalStrength = metalStrength;
        HeadHold = headHold;
        PilotHole = pilotHole;
        LengthTolerance = lengthTolerance;
    }

    /// <summary>What the screw passes before the metal, outermost first: panel, furring, a void; 1 to 20. The first is no void.</summary>
    public required IReadOnlyList<Layer> Layers
    {
        get => _layers;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _layers = Lists.Keep(value, FastenerLength.MostLayers);
    }

    /// <summary>Thickness of the metal, more than 0 up to 10 mm; where <see cref="MetalStrength"/> is given bare, without paint, and more than 0 at its least too.</summary>
    public required TolerancedLength Metal { get; init; }

    /// <summary>What is behind the metal, and how far from its back.</summary>
    public required Behind Behind { get; init; }

    /// <summary>
    /// The screws: shank is the diameter over the thread; lengths from the plane of the face that the head seats in to the tip. Threaded all along;
    /// nails are refused, and screws that are part-threaded, as the table's wood screws are, come with a finding.
    /// </summary>
    public required FastenerSeries Screws { get; init; }

    /// <summary>Pitch of the thread, 0.1 to 10 mm.</summary>
    public required Length Pitch { get; init; }

    /// <summary>How deep the head is set, 0 to 20 mm. Default 0.5 ± 0.5 mm, each screw its own (common practice).</summary>
    public TolerancedLength? SetDepth { get; init; }

    /// <summary>Tolerance of the screws' length, either way, 0 to 10 mm. Default that of the series; where it has none, 0.8 mm up to 19 mm of length, 1.3 up to 38, 1.5 above (from memory).</summary>
    public Length? LengthTolerance { get; init; }

    /// <summary>Pitches of full thread to pass beyond the metal in the worst case, 0 to 20. Default 3 (common practice).</summary>
    public double? ThreadsBeyond { get; init; }

    /// <summary>Length of the point without full thread, 0 to 50 mm. Default one diameter (judgement).</summary>
    public Length? Point { get; init; }

    /// <summary>Clearance of the tip that the worst case must keep, 0 to 100 mm. Default by what is behind: metal of a rib 0.5, outer skin 5, wire, pipe or tank 10 mm (judgement).</summary>
    public Length? RequiredClearance { get; init; }

    /// <summary>Tensile strength of the metal, 1 to 2000 MPa; null leaves its hold out.</summary>
    public Pressure? MetalStrength { get; init; }

    /// <summary>What the head may be loaded with before it pulls into or through the panel, 0 to 1 MN; null where not known.</summary>
    public Force? HeadHold { get; init; }

    /// <summary>Drill for the pilot hole, more than 0 up to 20 mm; null for a published one where the screw is listed.</summary>
    public Length? PilotHole { get; init; }

    private (TolerancedLength, Behind, FastenerSeries, double, TolerancedLength?, double?, double?) Key => (
        Metal, Behind, Screws, Door.Millimetres(Pitch), SetDepth, ThreadsBeyond, Mm(Point));

    private (double?, double?, double?, double?, double?) More => (
        Mm(LengthTolerance), Mm(RequiredClearance), MetalStrength is { } strength ? Door.Megapascals(strength) : null, HeadHold is { } head ? Door.Newtons(head) : null, Mm(PilotHole));

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(MetalScrewJob? other) => other is not null && Key.Equals(other.Key) && More.Equals(other.More) && Lists.Same(Layers, other.Layers, FastenerLength.MostLayers, Equals);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Key.GetHashCode() * 397) ^ More.GetHashCode());

    /// <summary>Screws, layers and metal, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Screws?.Name} through {Print.Number(Layers?.Count ?? 0)} layers into {Metal} of metal; behind: {Behind}";

    private static double? Mm(Length? length) => length is { } given ? Door.Millimetres(given) : null;
}
