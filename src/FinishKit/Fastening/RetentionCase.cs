namespace FinishKit;

/// <summary>What retention was asked for, as plain numbers in kg, g, N and mm. NaN stands for what was not given.</summary>
internal readonly struct RetentionCase(double mass, double acceleration, double capacity)
{
    internal double Mass { get; } = mass;

    internal double Acceleration { get; } = acceleration;

    internal bool AccelerationIsDefault { get; init; }

    /// <summary>Capacity of one fastener in N, of whatever basis.</summary>
    internal double Capacity { get; } = capacity;

    internal WithdrawalBasis Basis { get; init; }

    /// <summary>The caller's own; NaN for the default of the basis.</summary>
    internal double DesignFactor { get; init; }

    /// <summary>Smooth nails under permanent load by Eurocode 5.</summary>
    internal bool Refused { get; init; }

    /// <summary>Eurocode 5: a group of screws holds as much as n^0.9 of them.</summary>
    internal bool ScrewGroup { get; init; }

    /// <summary>Fasteners there are, or 0.</summary>
    internal int Fasteners { get; init; }

    internal double AdhesiveStrength { get; init; }

    internal double AdhesiveArea { get; init; }

    internal bool HasAdhesive { get; init; }
}

/// <summary>What came out, as plain numbers. NaN stands for what there is none of.</summary>
internal readonly struct RetentionNumbers(double load, double carried, double adhesive, double designFactor, double capacity, double needed, double utilisation)
{
    /// <summary>Load of the mass.</summary>
    internal double Load { get; } = load;

    /// <summary>What of it is left to the fasteners.</summary>
    internal double Carried { get; } = carried;

    internal double Adhesive { get; } = adhesive;

    internal double DesignFactor { get; } = designFactor;

    /// <summary>Design capacity of one fastener.</summary>
    internal double Capacity { get; } = capacity;

    internal double Needed { get; } = needed;

    internal double Utilisation { get; } = utilisation;
}
