namespace FinishKit;

/// <summary>What kind of load a <see cref="WithdrawalCapacity"/> is. Loads of different kinds must not be compared as they stand. Values may be added.</summary>
public enum WithdrawalBasis
{
    /// <summary>The caller's own figure, taken for a load that may be put on.</summary>
    Supplied = 0,

    /// <summary>Reference design value of the NDS: allowable, load of normal duration.</summary>
    NdsReferenceDesign = 1,

    /// <summary>Average of ultimate loads in tests, Wood Handbook: half of the fasteners hold less. Not a design value.</summary>
    HandbookAverageUltimate = 2,

    /// <summary>Characteristic load of Eurocode 5, which nineteen of twenty exceed; the design value is lower by k_mod/gamma_M.</summary>
    Eurocode5Characteristic = 3,
}
