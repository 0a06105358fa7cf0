using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>A mass that fasteners hold by withdrawal: a ceiling board, a panel, a slat cassette.</summary>
public sealed record HungMass
{
    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="mass">The mass.</param>
    /// <param name="perFastener">What one fastener holds.</param>
    [SetsRequiredMembers]
    public HungMass(Mass mass, WithdrawalCapacity perFastener)
    {
        Mass = mass;
        PerFastener = perFastener;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="mass">The mass.</param>
    /// <param name="perFastener">What one fastener holds.</param>
    /// <param name="acceleration">See <see cref="Acceleration"/>.</param>
    /// <param name="designFactor">See <see cref="DesignFactor"/>.</param>
    /// <param name="permanentLoad">See <see cref="PermanentLoad"/>.</param>
    /// <param name="fasteners">See <see cref="Fasteners"/>.</param>
    /// <param name="runLength">See <see cref="RunLength"/>.</param>
    /// <param name="rows">See <see cref="Rows"/>.</param>
    /// <param name="adhesiveStrength">See <see cref="AdhesiveStrength"/>.</param>
    /// <param name="adhesiveArea">See <see cref="AdhesiveArea"/>.</param>
    [SetsRequiredMembers]
    public HungMass(
        Mass mass,
        WithdrawalCapacity perFastener,
        double? acceleration = null,
        double? designFactor = null,
        bool permanentLoad = true,
        int? fasteners = null,
        Length? runLength = null,
        int rows = 1,
        Pressure? adhesiveStrength = null,
        Area? adhesiveArea = null)
        : this(mass, perFastener)
    {
        Acceleration = acceleration;
        DesignFactor = designFactor;
        PermanentLoad = permanentLoad;
        Fasteners = fasteners;
        RunLength = runLength;
        Rows = rows;
        AdhesiveStrength = adhesiveStrength;
        AdhesiveArea = adhesiveArea;
    }

    /// <summary>Makes one by its members.</summary>
    public HungMass()
    {
    }

    /// <summary>The mass, 0 to 10,000 kg.</summary>
    public required Mass Mass { get; init; }

    /// <summary>What one fastener holds.</summary>
    public required WithdrawalCapacity PerFastener { get; init; }

    /// <summary>Acceleration in g along the fasteners, gravity included, more than 0 up to 100; null for 3 g, judgement: a rough road, not a crash.</summary>
    public double? Acceleration { get; init; }

    /// <summary>
    /// Factor that makes the capacity a design load, more than 0 up to 10; null for the default of its basis: NDS and supplied 1,
    /// Wood Handbook 1/5, Eurocode 5 0.6/1.3 (permanent load over material factor, from memory).
    /// </summary>
    public double? DesignFactor { get; init; }

    /// <summary>Whether the mass hangs there for good. True unless said otherwise, as for <see cref="Eurocode5Nail.PermanentLoad"/>. Eurocode 5 then gives a smooth nail nothing.</summary>
    public bool PermanentLoad { get; init; } = true;

    /// <summary>Fasteners there are, 1 to 1,000,000; null to ask how many it takes.</summary>
    public int? Fasteners { get; init; }

    /// <summary>Length along which they are spread, more than 0 up to 1 km; null leaves the spacing out.</summary>
    public Length? RunLength { get; init; }

    /// <summary>Rows they are set in along that length, 1 to 1000.</summary>
    public int Rows { get; init; } = 1;

    /// <summary>Pull that the adhesive holds and may be relied on for good, 0 to 100 MPa; null does not count it. Needs <see cref="AdhesiveArea"/>.</summary>
    public Pressure? AdhesiveStrength { get; init; }

    /// <summary>Area that is stuck, 0 to 100 m²; needs <see cref="AdhesiveStrength"/>.</summary>
    public Area? AdhesiveArea { get; init; }

    private (double, WithdrawalCapacity, double?, double?, bool, int?, double?, int, double?, double?) Key => (
        Door.Kilograms(Mass), PerFastener, Acceleration, DesignFactor, PermanentLoad, Fasteners, RunLength is { } run ? Door.Millimetres(run) : null, Rows,
        AdhesiveStrength is { } strength ? Door.Megapascals(strength) : null, AdhesiveArea is { } area ? Door.SquareMillimetres(area) : null);

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(HungMass? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Mass and capacity, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Door.Kilograms(Mass))} kg on fasteners of {PerFastener}";
}
