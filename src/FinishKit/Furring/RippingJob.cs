using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>Strips of one width and length that are to be cut from sheets.</summary>
public sealed record StripPart
{
    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="width">Width of the strips.</param>
    /// <param name="length">Length of each.</param>
    [SetsRequiredMembers]
    public StripPart(Length width, Length length)
    {
        Width = width;
        Length = length;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="width">Width of the strips.</param>
    /// <param name="length">Length of each.</param>
    /// <param name="count">See <see cref="Count"/>.</param>
    [SetsRequiredMembers]
    public StripPart(Length width, Length length, int count = 1)
        : this(width, length)
    {
        Count = count;
    }

    /// <summary>Makes one by its members.</summary>
    public StripPart()
    {
    }

    /// <summary>Width of the strips, 1 mm to 20 m.</summary>
    public required Length Width { get; init; }

    /// <summary>Length of each, 1 mm to 1 km. One longer than the sheet is joined from pieces.</summary>
    public required Length Length { get; init; }

    /// <summary>How many, 1 to 5000.</summary>
    public int Count { get; init; } = 1;

    private (double, double, int) Key => (Door.Millimetres(Width), Door.Millimetres(Length), Count);

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(StripPart? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Count, width and length, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Count)} strips of {Print.Number(Door.Millimetres(Width))} x {Print.Number(Door.Millimetres(Length))} mm";
}

/// <summary>Strips to be ripped from sheets of one size: what <see cref="StripRipping"/> needs to know.</summary>
/// <remarks>
/// Nothing is checked here: <see cref="StripRipping.Check"/> reports all problems, and the calculating method throws the first.
/// </remarks>
public sealed record RippingJob
{
    private readonly IReadOnlyList<StripPart> _parts = [];

    /// <summary>An empty job for an object initialiser.</summary>
    public RippingJob()
    {
    }

    /// <summary>A job with every default.</summary>
    /// <param name="sheetLength">The sheet's longer side, along which its face grain runs.</param>
    /// <param name="sheetWidth">Its shorter side.</param>
    /// <param name="parts">The strips.</param>
    [SetsRequiredMembers]
    public RippingJob(Length sheetLength, Length sheetWidth, IReadOnlyList<StripPart> parts)
    {
        SheetLength = sheetLength;
        SheetWidth = sheetWidth;
        Parts = parts;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="sheetLength">The sheet's longer side, along which its face grain runs.</param>
    /// <param name="sheetWidth">Its shorter side.</param>
    /// <param name="parts">The strips.</param>
    /// <param name="trim">See <see cref="Trim"/>.</param>
    /// <param name="kerf">See <see cref="Kerf"/>.</param>
    [SetsRequiredMembers]
    public RippingJob(Length sheetLength, Length sheetWidth, IReadOnlyList<StripPart> parts, Length? trim = null, Length? kerf = null)
        : this(sheetLength, sheetWidth, parts)
    {
        Trim = trim;
        Kerf = kerf;
    }

    /// <summary>The sheet's side that is called its length, 10 mm to 20 m. Mostly the longer, with the face grain along it.</summary>
    public required Length SheetLength { get; init; }

    /// <summary>The sheet's other side, 10 mm to 20 m.</summary>
    public required Length SheetWidth { get; init; }

    /// <summary>The strips, 1 to 200 kinds; at most 5000 pieces once those longer than the sheet are divided.</summary>
    public required IReadOnlyList<StripPart> Parts
    {
        get => _parts;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _parts = Lists.Keep(value, StripRipping.MostParts);
    }

    /// <summary>What is cut off each of the four edges first, its kerf included, 0 to 500 mm, so that at least 1 mm is left each way. Default 5 mm (common practice).</summary>
    public Length? Trim { get; init; }

    /// <summary>Width of the saw cut, 0 to 20 mm. Default 2.4 mm (common practice).</summary>
    public Length? Kerf { get; init; }

    private (double, double, double?, double?) Key => (
        Door.Millimetres(SheetLength), Door.Millimetres(SheetWidth), Trim is { } trim ? Door.Millimetres(trim) : null, Kerf is { } kerf ? Door.Millimetres(kerf) : null);

    /// <summary>Whether every member is of equal amount, whatever its unit, and the strips are the same in the same order.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(RippingJob? other)
    {
        if (other is null || !Key.Equals(other.Key))
        {
            return false;
        }

        if (Parts is null || other.Parts is null || Parts.Count != other.Parts.Count || Parts.Count > StripRipping.MostParts)
        {
            return ReferenceEquals(Parts, other.Parts);
        }

        for (int i = 0; i < Parts.Count; i++)
        {
            if (!Equals(Parts[i], other.Parts[i]))
            {
                return false;
            }
        }

        return true;
    }

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>The sheet and how many kinds of strips, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Number(Parts?.Count ?? 0)} kinds of strips from sheets of {Print.Number(Door.Millimetres(SheetLength))} x {Print.Number(Door.Millimetres(SheetWidth))} mm";
}
