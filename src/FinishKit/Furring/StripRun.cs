using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>What a set of strips is to be good at first.</summary>
public enum StripPreference
{
    /// <summary>As few strips off the ribs as can be; then as few strips as can be.</summary>
    OnRibs = 0,

    /// <summary>As few strips as can be; then as many of them on ribs as can be.</summary>
    FewestStrips = 1,
}

/// <summary>A rib that a strip may be fixed to: where its middle lies, and how far from there a strip still bears on it.</summary>
public sealed record RibLine
{
    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="centre">Its middle along the run.</param>
    /// <param name="halfWidth">How far from its middle a strip's centre line still bears on it.</param>
    [SetsRequiredMembers]
    public RibLine(Length centre, Length halfWidth)
    {
        Centre = centre;
        HalfWidth = halfWidth;
    }

    /// <summary>Makes one by its members.</summary>
    public RibLine()
    {
    }

    /// <summary>Its middle along the run, from where the run starts, -1 km to 1 km: a strip that is chosen for the rib sits there. A rib past the ends of the run is passed over.</summary>
    public required Length Centre { get; init; }

    /// <summary>How far from its middle a strip's centre line still bears on it, 0 to 1 m. It only tells whether a strip placed for another reason bears on the rib.</summary>
    public required Length HalfWidth { get; init; }

    private (double, double) Key => (Door.Millimetres(Centre), Door.Millimetres(HalfWidth));

    /// <summary>Whether both members are of equal amount, whatever their units.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(RibLine? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Middle and half-width, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"rib at {Print.Number(Door.Millimetres(Centre))} mm ± {Print.Number(Door.Millimetres(HalfWidth))} mm";
}

/// <summary>
/// A run over which strips are to be spaced: what <see cref="StripSpacing"/> needs to know. Positions are those of the strips'
/// centre lines, measured from where the run starts; bays are centre to centre.
/// </summary>
/// <remarks>
/// Nothing is checked here: <see cref="StripSpacing.Check(StripRun)"/> reports all problems, and the calculating method throws the first.
/// </remarks>
public sealed record StripRun
{
    private readonly IReadOnlyList<Length> _fixedPositions = [];
    private readonly IReadOnlyList<RibLine> _ribs = [];

    /// <summary>An empty run for an object initialiser.</summary>
    public StripRun()
    {
    }

    /// <summary>A run without ribs and with every default.</summary>
    /// <param name="runLength">Its length.</param>
    /// <param name="fixedPositions">Strips that are there whatever else: ends, jambs, butt joints.</param>
    /// <param name="largestBay">Largest distance between neighbouring strips.</param>
    [SetsRequiredMembers]
    public StripRun(Length runLength, IReadOnlyList<Length> fixedPositions, Length largestBay)
    {
        RunLength = runLength;
        FixedPositions = fixedPositions;
        LargestBay = largestBay;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="runLength">Its length.</param>
    /// <param name="fixedPositions">Strips that are there whatever else: ends, jambs, butt joints.</param>
    /// <param name="largestBay">Largest distance between neighbouring strips.</param>
    /// <param name="ribs">See <see cref="Ribs"/>. Null for none.</param>
    /// <param name="leastDistance">See <see cref="LeastDistance"/>.</param>
    /// <param name="preference">See <see cref="Preference"/>.</param>
    [SetsRequiredMembers]
    public StripRun(
        Length runLength,
        IReadOnlyList<Length> fixedPositions,
        Length largestBay,
        IReadOnlyList<RibLine>? ribs = null,
        Length? leastDistance = null,
        StripPreference preference = StripPreference.OnRibs)
        : this(runLength, fixedPositions, largestBay)
    {
        Ribs = ribs ?? [];
        LeastDistance = leastDistance;
        Preference = preference;
    }

    /// <summary>Its length, more than 0 up to 1 km.</summary>
    public required Length RunLength { get; init; }

    /// <summary>
    /// Centre lines of the strips that are there whatever else: both ends, jambs, butt joints; 2 to 1000, each within the run, in any
    /// order. The first and the last are the ends of what is spaced.
    /// </summary>
    public required IReadOnlyList<Length> FixedPositions
    {
        get => _fixedPositions;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _fixedPositions = Lists.Keep(value, StripSpacing.MostListed);
    }

    /// <summary>Largest distance between neighbouring strips, centre to centre, more than 0 up to 1 km and no less than a ten-thousandth of the run; exactly met is met.</summary>
    public required Length LargestBay { get; init; }

    /// <summary>The ribs, at most 1000, in any order. Default: none.</summary>
    public IReadOnlyList<RibLine> Ribs
    {
        get => _ribs;
        init => _ribs = Lists.Keep(value, StripSpacing.MostListed);
    }

    /// <summary>Least distance between neighbouring strips of which at least one is chosen, centre to centre, more than 0 up to 1 km. Default 40 mm, a strip's width (common practice).</summary>
    public Length? LeastDistance { get; init; }

    /// <summary>What the strips are to be good at first.</summary>
    public StripPreference Preference { get; init; }

    private (double, double, double?, StripPreference) Key => (
        Door.Millimetres(RunLength), Door.Millimetres(LargestBay), LeastDistance is { } least ? Door.Millimetres(least) : null, Preference);

    /// <summary>Whether every member is of equal amount, whatever its unit, and the lists hold the same in the same order.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(StripRun? other) => other is not null && Key.Equals(other.Key)
        && Lists.Same(FixedPositions, other.FixedPositions, StripSpacing.MostListed)
        && Lists.Same(Ribs, other.Ribs, StripSpacing.MostListed, Equals);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Length, largest bay, and how many fixed strips and ribs there are, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"run of {Print.Number(Door.Millimetres(RunLength))} mm, bays up to {Print.Number(Door.Millimetres(LargestBay))} mm, {Print.Number(FixedPositions?.Count ?? 0)} fixed strips, {Print.Number(Ribs?.Count ?? 0)} ribs";
}
