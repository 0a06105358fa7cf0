using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>A rivet nut in thin metal and the machine screw into it: what <see cref="RivetNut.Fit(RivetNutJob)"/> needs to know.</summary>
/// <remarks>Nothing is checked here: <see cref="RivetNut.Check(RivetNutJob)"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record RivetNutJob
{
    private readonly IReadOnlyList<Layer> _layers = [];
    private readonly IReadOnlyList<Length> _screws = [];

    /// <summary>Makes one by its members.</summary>
    public RivetNutJob()
    {
    }

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="layers">What the screw passes before the nut's flange, outermost first.</param>
    /// <param name="metal">Thickness of the metal.</param>
    /// <param name="behind">What is behind the metal.</param>
    /// <param name="nut">The nut.</param>
    /// <param name="threadFrom">Depth at which the set nut's thread begins.</param>
    /// <param name="threadTo">Depth at which it ends.</param>
    /// <param name="screws">Stocked lengths of machine screw.</param>
    [SetsRequiredMembers]
    public RivetNutJob(IReadOnlyList<Layer> layers, TolerancedLength metal, Behind behind, RivetNutSize nut, Length threadFrom, Length threadTo, IReadOnlyList<Length> screws)
    {
        Layers = layers;
        Metal = metal;
        Behind = behind;
        Nut = nut;
        ThreadFrom = threadFrom;
        ThreadTo = threadTo;
        Screws = screws;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="layers">What the screw passes before the nut's flange, outermost first.</param>
    /// <param name="metal">Thickness of the metal.</param>
    /// <param name="behind">What is behind the metal.</param>
    /// <param name="nut">The nut.</param>
    /// <param name="threadFrom">Depth at which the set nut's thread begins.</param>
    /// <param name="threadTo">Depth at which it ends.</param>
    /// <param name="screws">Stocked lengths of machine screw.</param>
    /// <param name="paint">See <see cref="Paint"/>.</param>
    /// <param name="matingSheet">See <see cref="MatingSheet"/>.</param>
    /// <param name="flange">See <see cref="Flange"/>.</param>
    /// <param name="unsetDepth">See <see cref="UnsetDepth"/>.</param>
    /// <param name="setDepth">See <see cref="SetDepth"/>.</param>
    /// <param name="lengthTolerance">See <see cref="LengthTolerance"/>.</param>
    /// <param name="engagement">See <see cref="Engagement"/>.</param>
    /// <param name="requiredClearance">See <see cref="RequiredClearance"/>.</param>
    /// <param name="nutHold">See <see cref="NutHold"/>.</param>
    /// <param name="pitch">See <see cref="Pitch"/>.</param>
    /// <param name="nutStrength">See <see cref="NutStrength"/>.</param>
    [SetsRequiredMembers]
    public RivetNutJob(
        IReadOnlyList<Layer> layers,
        TolerancedLength metal,
        Behind behind,
        RivetNutSize nut,
        Length threadFrom,
        Length threadTo,
        IReadOnlyList<Length> screws,
        TolerancedLength? paint = null,
        TolerancedLength? matingSheet = null,
        Length flange = default,
        Length? unsetDepth = null,
        TolerancedLength? setDepth = null,
        Length? lengthTolerance = null,
        double? engagement = null,
        Length? requiredClearance = null,
        Force? nutHold = null,
        Length? pitch = null,
        Pressure? nutStrength = null)
        : this(layers, metal, behind, nut, threadFrom, threadTo, screws)
    {
        Paint = paint;
        MatingSheet = matingSheet;
        Flange = flange;
        UnsetDepth = unsetDepth;
        SetDepth = setDepth;
        LengthTolerance = lengthTolerance;
        Engagement = engagement;
        RequiredClearance = requiredClearance;
        NutHold = nutHold;
        Pitch = pitch;
        NutStrength = nutStrength;
    }

    /// <summary>What the screw passes before the nut's flange, outermost first; 1 to 20. The first is no void.</summary>
    public required IReadOnlyList<Layer> Layers
    {
        get => _layers;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _layers = Lists.Keep(value, FastenerLength.MostLayers);
    }

    /// <summary>Thickness of the bare metal that the nut is set in, more than 0 up to 10 mm.</summary>
    public required TolerancedLength Metal { get; init; }

    /// <summary>What is behind the metal, and how far from its back.</summary>
    public required Behind Behind { get; init; }

    /// <summary>The nut.</summary>
    public required RivetNutSize Nut { get; init; }

    /// <summary>Depth at which the set nut's thread begins, from the outer face of its flange, 0 to 50 mm: the maker's, set at this grip.</summary>
    public required Length ThreadFrom { get; init; }

    /// <summary>Depth at which the set nut ends, from the outer face of its flange, more than <see cref="ThreadFrom"/> up to 50 mm.</summary>
    public required Length ThreadTo { get; init; }

    /// <summary>Stocked lengths of machine screw, from the plane of the face that the head seats in to the tip; 1 to 200, rising, each more than 0 up to 500 mm.</summary>
    public required IReadOnlyList<Length> Screws { get => _screws; init => _screws = Lists.Keep(value, FastenerLength.MostListed); }

    /// <summary>Paint on the metal, both sides together, 0 to 5 mm; null where there is none.</summary>
    public TolerancedLength? Paint { get; init; }

    /// <summary>Another sheet or bracket that the nut clamps with the metal, 0 to 20 mm; null where there is none.</summary>
    public TolerancedLength? MatingSheet { get; init; }

    /// <summary>Thickness of the nut's flange, which stands on the metal and holds the panel off it, 0 to 10 mm. Default 0: let into the panel's back.</summary>
    public Length Flange { get; init; }

    /// <summary>Depth of the nut before it is set, from the outer face of its flange, <see cref="ThreadTo"/> to 100 mm; null leaves out whether it goes in, with a finding where other than metal is behind.</summary>
    public Length? UnsetDepth { get; init; }

    /// <summary>How deep the head is set, 0 to 20 mm. Default 0.5 ± 0.5 mm, each screw its own (common practice).</summary>
    public TolerancedLength? SetDepth { get; init; }

    /// <summary>Tolerance of the screws' length, either way, 0 to 10 mm. Default 0.5 mm (judgement).</summary>
    public Length? LengthTolerance { get; init; }

    /// <summary>Thread diameters that screw and nut must share in the worst case, more than 0 up to 5. Default 1 (common practice).</summary>
    public double? Engagement { get; init; }

    /// <summary>Clearance of tip and nut that the worst case must keep, 0 to 100 mm. Default by what is behind: metal of a rib 0.5, outer skin 5, wire, pipe or tank 10 mm (judgement).</summary>
    public Length? RequiredClearance { get; init; }

    /// <summary>What one nut may be loaded with along its axis in this metal, 0 to 1 MN: the maker's or a trial's; null where not known.</summary>
    public Force? NutHold { get; init; }

    /// <summary>Pitch of the thread, 0.1 to 10 mm and less than its diameter; needed with <see cref="NutStrength"/>.</summary>
    public Length? Pitch { get; init; }

    /// <summary>Tensile strength of what the nut is made of, its maker's, 1 to 2000 MPa: not that of the screw. It tells what strips the thread, and needs <see cref="Pitch"/>; null leaves that out.</summary>
    public Pressure? NutStrength { get; init; }

    private (TolerancedLength, Behind, RivetNutSize, double, double, TolerancedLength?, TolerancedLength?) Key => (
        Metal, Behind, Nut, Door.Millimetres(ThreadFrom), Door.Millimetres(ThreadTo), Paint, MatingSheet);

    private (double?, double?) Thread => (Mm(Pitch), NutStrength is { } strength ? Door.Megapascals(strength) : null);

    private (double, double?, TolerancedLength?, double?, double?, double?, double?) More => (
        Door.Millimetres(Flange), Mm(UnsetDepth), SetDepth, Mm(LengthTolerance), Engagement, Mm(RequiredClearance), NutHold is { } force ? Door.Newtons(force) : null);

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(RivetNutJob? other) => other is not null && Key.Equals(other.Key) && More.Equals(other.More) && Thread.Equals(other.Thread)
        && Lists.Same(Layers, other.Layers, FastenerLength.MostLayers, Equals) && Lists.Same(Screws, other.Screws, FastenerLength.MostListed);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((((Key.GetHashCode() * 397) ^ More.GetHashCode()) * 397) ^ Thread.GetHashCode());

    /// <summary>Nut, metal and what is behind, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Nut?.Name} rivet nut in {Metal} of metal; behind: {Behind}";

    private static double? Mm(Length? length) => length is { } given ? Door.Millimetres(given) : null;
}
