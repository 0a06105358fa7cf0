using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>How a run of slats starts and ends.</summary>
public enum SlatEnds
{
    /// <summary>A slat at each end: one gap fewer than slats.</summary>
    Closed = 0,

    /// <summary>A gap at each end: one gap more than slats.</summary>
    Open = 1,
}

/// <summary>How slats run out on a face whose width changes along them.</summary>
public enum SlatTaper
{
    /// <summary>Every slat keeps its width; the gap changes along the face.</summary>
    VaryingGap = 0,

    /// <summary>The gap is the mean one all along, and both end slats are ripped to an equal taper.</summary>
    EndSlatsTapered = 1,
}

/// <summary>What set-out marks are rounded to.</summary>
public enum SetOutStep
{
    /// <summary>1 mm.</summary>
    WholeMillimetre = 0,

    /// <summary>1/16 in.</summary>
    SixteenthInch = 1,
}

/// <summary>Slats side by side across a face: what <see cref="SlatSpread"/> needs to know.</summary>
/// <remarks>Nothing is checked here: <see cref="SlatSpread.CheckSpread(SlatRun)"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record SlatRun
{
    private readonly IReadOnlyList<Length>? _stations;

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="width">Width to fill at the first station.</param>
    /// <param name="slatWidth">Width of a slat.</param>
    [SetsRequiredMembers]
    public SlatRun(Length width, Length slatWidth)
    {
        Width = width;
        SlatWidth = slatWidth;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="width">Width to fill at the first station.</param>
    /// <param name="slatWidth">Width of a slat.</param>
    /// <param name="leastGap">See <see cref="LeastGap"/>.</param>
    /// <param name="greatestGap">See <see cref="GreatestGap"/>.</param>
    /// <param name="ends">See <see cref="Ends"/>.</param>
    /// <param name="stations">See <see cref="Stations"/>.</param>
    /// <param name="taper">See <see cref="Taper"/>.</param>
    /// <param name="roundTo">See <see cref="RoundTo"/>.</param>
    [SetsRequiredMembers]
    public SlatRun(
        Length width,
        Length slatWidth,
        Length? leastGap = null,
        Length? greatestGap = null,
        SlatEnds ends = SlatEnds.Closed,
        IReadOnlyList<Length>? stations = null,
        SlatTaper taper = SlatTaper.VaryingGap,
        SetOutStep roundTo = SetOutStep.WholeMillimetre)
        : this(width, slatWidth)
    {
        LeastGap = leastGap;
        GreatestGap = greatestGap;
        Ends = ends;
        Stations = stations;
        Taper = taper;
        RoundTo = roundTo;
    }

    /// <summary>Makes one by its members.</summary>
    public SlatRun()
    {
    }

    /// <summary>Width to fill at the first station, square to the slats, more than 0 up to 100 m; on a curve the length along the battens' surface.</summary>
    public required Length Width { get; init; }

    /// <summary>Width of a slat, 5 mm to 1 m.</summary>
    public required Length SlatWidth { get; init; }

    /// <summary>Least gap, 0 to 1 m; null for 6 mm, common practice.</summary>
    public Length? LeastGap { get; init; }

    /// <summary>Greatest gap, from the least up to 1 m; null for 10 mm, common practice.</summary>
    public Length? GreatestGap { get; init; }

    /// <summary>A slat at each end, or a gap at each end. A slat unless said.</summary>
    public SlatEnds Ends { get; init; }

    /// <summary>Widths at further stations along the slats, at most 50, where the face tapers; null or empty where it does not.</summary>
    public IReadOnlyList<Length>? Stations
    {
        get => _stations;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _stations = Lists.Keep(value, SlatSpread.MostStations);
    }

    /// <summary>What gives way where the face tapers. The gap unless said.</summary>
    public SlatTaper Taper { get; init; }

    /// <summary>What set-out marks are rounded to. Whole millimetres unless said.</summary>
    public SetOutStep RoundTo { get; init; }

    private (double, double, double?, double?, SlatEnds, SlatTaper, SetOutStep, int) Key => (
        Door.Millimetres(Width), Door.Millimetres(SlatWidth), LeastGap is { } least ? Door.Millimetres(least) : null, GreatestGap is { } greatest ? Door.Millimetres(greatest) : null,
        Ends, Taper, RoundTo, Stations?.Count ?? 0);

    /// <summary>Whether every member is of equal amount, whatever its unit. No stations and an empty list of them are the same.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(SlatRun? other) => other is not null && Key.Equals(other.Key) && SameStations(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Slats, width and gaps, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string gaps = $"{Print.Number(LeastGap is { } least ? Door.Millimetres(least) : SlatDefaults.LeastGap)} to {Print.Mm(GreatestGap is { } greatest ? Door.Millimetres(greatest) : SlatDefaults.GreatestGap)}";
        string stations = Stations is { Count: > 0 } more ? $" and at {more.Count} more stations" : string.Empty;
        return $"slats of {Print.Mm(Door.Millimetres(SlatWidth))} over {Print.Mm(Door.Millimetres(Width))}{stations}, gaps of {gaps}";
    }

    private bool SameStations(SlatRun other)
    {
        int count = Stations?.Count ?? 0;
        if (count > SlatSpread.MostStations)
        {
            return ReferenceEquals(Stations, other.Stations);
        }

        for (int i = 0; i < count; i++)
        {
            if (!Door.Millimetres(Stations![i]).Equals(Door.Millimetres(other.Stations![i])))
            {
                return false;
            }
        }

        return true;
    }
}
