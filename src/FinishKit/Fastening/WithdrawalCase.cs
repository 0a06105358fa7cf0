namespace FinishKit;

/// <summary>Which formula gave a withdrawal capacity.</summary>
internal enum WithdrawalFormula
{
    Supplied = 0,
    NdsNail,
    NdsWoodScrew,
    NdsLagScrew,
    HandbookNail,
    HandbookWoodScrew,
    HandbookLagScrew,
    Eurocode5SmoothNail,
    Eurocode5Screw,
}

/// <summary>What came out, as plain numbers in N and mm; a capacity keeps the force and computes the rest once more when it is read.</summary>
internal readonly struct WithdrawalNumbers(double force, double perLength, double shortPenetrationFactor, double predrillingThickness)
{
    internal double Force { get; } = force;

    internal double PerLength { get; } = perLength;

    internal double ShortPenetrationFactor { get; } = shortPenetrationFactor;

    internal double PredrillingThickness { get; } = predrillingThickness;
}

/// <summary>
/// What a withdrawal capacity was asked for, as plain numbers in mm and rad: enough to compute it once more for its workings.
/// Zero stands for what was not given; no range of such a member contains it.
/// </summary>
internal readonly struct WithdrawalCase(WithdrawalFormula formula, double wood, double diameter, double penetration)
{
    internal WithdrawalFormula Formula { get; } = formula;

    /// <summary>Stands beside the formula so that the two share one word: a capacity is copied often.</summary>
    internal bool PermanentLoad { get; init; }

    /// <summary>Specific gravity, characteristic density in kg/m3, or the force in N that was supplied.</summary>
    internal double Wood { get; } = wood;

    internal double Diameter { get; } = diameter;

    internal double Penetration { get; } = penetration;

    internal double Angle { get; init; }

    internal double HeadDiameter { get; init; }

    internal double HeadSideThickness { get; init; }

    internal double HoldingThickness { get; init; }

    internal double Plywood { get; init; }

    internal bool Agrees(in WithdrawalCase other) => Formula == other.Formula
        && Wood.Equals(other.Wood)
        && Diameter.Equals(other.Diameter)
        && Penetration.Equals(other.Penetration)
        && Angle.Equals(other.Angle)
        && HeadDiameter.Equals(other.HeadDiameter)
        && HeadSideThickness.Equals(other.HeadSideThickness)
        && HoldingThickness.Equals(other.HoldingThickness)
        && PermanentLoad == other.PermanentLoad
        && Plywood.Equals(other.Plywood);
}
