using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>Which stocked length to take where more than one would do.</summary>
public enum FastenerPreference
{
    /// <summary>The shortest that is safe and reaches the target bite; if none does, the longest that is safe and bites.</summary>
    ShortestThatHolds = 0,

    /// <summary>The longest that is safe and bites.</summary>
    LongestSafe = 1,
}

/// <summary>
/// One fastener driven many times through the same stack: what <see cref="FastenerLength"/> needs to know. Only layers, what is
/// behind and the series are required; everything else has a default that the result names.
/// </summary>
/// <remarks>
/// Nothing is checked here: <see cref="FastenerLength.Check(FastenerJob)"/> reports all problems, and the calculating methods throw
/// the first. Two jobs are equal only if they hold the same lists; compare members where you mean more.
/// </remarks>
public sealed record FastenerJob
{
    private readonly IReadOnlyList<Layer> _layers = [];

    /// <summary>An empty job for an object initialiser.</summary>
    public FastenerJob()
    {
    }

    /// <summary>A job with every default.</summary>
    /// <param name="layers">Outermost first, from the surface where the head seats.</param>
    /// <param name="behind">What is behind the last layer.</param>
    /// <param name="series">The fasteners to choose from.</param>
    [SetsRequiredMembers]
    public FastenerJob(IReadOnlyList<Layer> layers, Behind behind, FastenerSeries series)
    {
        Layers = layers;
        Behind = behind;
        Series = series;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="layers">Outermost first, from the surface where the head seats.</param>
    /// <param name="behind">What is behind the last layer.</param>
    /// <param name="series">The fasteners to choose from.</param>
    /// <param name="setDepth">See <see cref="SetDepth"/>.</param>
    /// <param name="driveAngle">See <see cref="DriveAngle"/>.</param>
    /// <param name="requiredClearance">See <see cref="RequiredClearance"/>.</param>
    /// <param name="leastBite">See <see cref="LeastBite"/>.</param>
    /// <param name="targetBite">See <see cref="TargetBite"/>.</param>
    /// <param name="count">See <see cref="Count"/>.</param>
    /// <param name="marginalChance">See <see cref="MarginalChance"/>.</param>
    /// <param name="hitsLimit">See <see cref="HitsLimit"/>.</param>
    /// <param name="preference">See <see cref="Preference"/>.</param>
    /// <param name="sheets">See <see cref="Sheets"/>.</param>
    /// <param name="otherSeries">See <see cref="OtherSeries"/>.</param>
    [SetsRequiredMembers]
    public FastenerJob(
        IReadOnlyList<Layer> layers,
        Behind behind,
        FastenerSeries series,
        TolerancedLength? setDepth = null,
        Angle driveAngle = default,
        Length? requiredClearance = null,
        Length? leastBite = null,
        Length? targetBite = null,
        int count = 1,
        double? marginalChance = null,
        double? hitsLimit = null,
        FastenerPreference preference = FastenerPreference.ShortestThatHolds,
        IReadOnlyList<SheetGoods>? sheets = null,
        IReadOnlyList<FastenerSeries>? otherSeries = null)
        : this(layers, behind, series)
    {
        SetDepth = setDepth;
        DriveAngle = driveAngle;
        RequiredClearance = requiredClearance;
        LeastBite = leastBite;
        TargetBite = targetBite;
        Count = count;
        MarginalChance = marginalChance;
        HitsLimit = hitsLimit;
        Preference = preference;
        Sheets = sheets;
        OtherSeries = otherSeries;
    }

    /// <summary>The layers, outermost first, from the surface where the head seats; 1 to 20. The first is no void.</summary>
    public required IReadOnlyList<Layer> Layers
    {
        get => _layers;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _layers = Lists.Keep(value, FastenerLength.MostLayers);
    }

    /// <summary>What is behind the last layer.</summary>
    public required Behind Behind { get; init; }

    /// <summary>The fasteners to choose from.</summary>
    public required FastenerSeries Series { get; init; }

    /// <summary>How deep the head is set below the surface, along the face normal, 0 to 20 mm. Default 1 ± 0.5 mm, each fastener its own (common practice).</summary>
    public TolerancedLength? SetDepth { get; init; }

    /// <summary>Angle of the fastener from the face normal, 0° to 60°. Default 0.</summary>
    public Angle DriveAngle { get; init; }

    /// <summary>Clearance that the worst case must keep, 0 to 100 mm. Default by what is behind: metal of a rib 0.5, outer skin 5, wire, pipe or tank 10 mm (judgement).</summary>
    public Length? RequiredClearance { get; init; }

    /// <summary>Least bite that the worst case must keep, 0 to 500 mm. Default 6 shank diameters (NDS).</summary>
    public Length? LeastBite { get; init; }

    /// <summary>Bite to aim for at nominal sizes, 0 to 500 mm. Default 10 shank diameters (judgement).</summary>
    public Length? TargetBite { get; init; }

    /// <summary>How many such fasteners the job has, 1 to 1,000,000. Default 1.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Greatest chance of touching, per fastener, that may still be called marginal, 0 to 0.01. Default 1 in 10,000 (judgement).</summary>
    public double? MarginalChance { get; init; }

    /// <summary>Hits expected on the whole job above which there is a caution, 0 to 1,000. Default 0.1 (judgement).</summary>
    public double? HitsLimit { get; init; }

    /// <summary>Which length to take where more than one would do.</summary>
    public FastenerPreference Preference { get; init; }

    /// <summary>Sheets that furring could be ripped from, at most 200, for the remedy. Default: the family of the furring's own sheet, else birch plywood.</summary>
    public IReadOnlyList<SheetGoods>? Sheets { get; init; }

    /// <summary>Other series to look in for a remedy, at most 200; thinner ones of the same kind count, headless ones only in place of headless ones. Default: <see cref="FastenerSeries.All"/>.</summary>
    public IReadOnlyList<FastenerSeries>? OtherSeries { get; init; }

    /// <summary>Whether the drive angle is the default for the way of nailing.</summary>
    internal bool DriveAngleIsDefault { get; init; }

    /// <summary>The same job with a board of a known profile over its layers.</summary>
    /// <param name="board">The board.</param>
    /// <param name="way">Where the fastener goes through it.</param>
    /// <param name="driveAngle">Angle from the face normal [angle], 0° to 60°; null: 45° through a tongue (common practice), else 0.</param>
    /// <returns>The job with the board's layers outermost and the drive angle set.</returns>
    /// <exception cref="System.ArgumentNullException"><paramref name="board"/> is null.</exception>
    /// <exception cref="System.ArgumentException">The board has no such place, or the angle is outside its range or in an undefined unit.</exception>
    /// <example><code>
    /// BoardProfile board = BoardProfile.TongueAndGroove(Mm(12.7), Mm(4), Mm(4));
    /// FastenerJob job = new FastenerJob([Layer.Furring(SheetGoods.Birch15)], Behind.Metal, FastenerSeries.Brad18).ThroughBoard(board, Nailing.BlindThroughTongue);
    /// Angle angle = job.DriveAngle;                       // 45 degrees: the default through a tongue
    /// </code></example>
    public FastenerJob ThroughBoard(BoardProfile board, Nailing way, Angle? driveAngle = null)
    {
        Door.IsMissing(board, new Name(nameof(board)), "a board profile", null);
        Angle angle = driveAngle ?? (way == Nailing.BlindThroughTongue ? FastenerDefaults.TongueAngle : default);
        IReadOnlyList<Layer> over = board.Layers(way, angle);

        // Layers that a check will refuse anyway are not touched.
        IReadOnlyList<Layer> layers = Layers is null || Layers.Count > FastenerLength.MostLayers ? Layers! : [.. over, .. Layers];
        return this with { Layers = layers, DriveAngle = angle, DriveAngleIsDefault = driveAngle is null && way == Nailing.BlindThroughTongue };
    }

    private (Behind, FastenerSeries, TolerancedLength?, double, double?, double?, double?, int, double?, double?, FastenerPreference) Key => (
        Behind, Series, SetDepth, Door.Degrees(DriveAngle), RequiredClearance is { } clearance ? Door.Millimetres(clearance) : null, LeastBite is { } least ? Door.Millimetres(least) : null,
        TargetBite is { } target ? Door.Millimetres(target) : null, Count, MarginalChance, HitsLimit, Preference);

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(FastenerJob? other) => other is not null && Key.Equals(other.Key)
        && Lists.Same(Layers, other.Layers, FastenerLength.MostListed, Equals) && Lists.Same(Sheets, other.Sheets, FastenerLength.MostListed, Equals) && Lists.Same(OtherSeries, other.OtherSeries, FastenerLength.MostListed, Equals);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Series, layers and what is behind, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Series?.Name} through {LayersInWords}; behind: {Behind}";

    /// <summary>More layers than any job may have are counted, not listed: the list may claim any number.</summary>
    private string LayersInWords => Layers is { Count: > FastenerLength.MostLayers } many ? many.Count + " layers" : string.Join(", ", (IEnumerable<Layer>?)Layers ?? []);
}
