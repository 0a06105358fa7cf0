namespace FinishKit;

/// <summary>What a bending strength of plywood is, so that nobody divides it by a safety factor twice, or never.</summary>
public enum PlywoodStrengthBasis
{
    /// <summary>What 95 of 100 sheets are stronger than. No safety factor is in it; nor is the time a load lasts.</summary>
    Characteristic = 0,

    /// <summary>Allowable design value: a safety factor is in it already, for a load of normal duration and dry use.</summary>
    AllowableDesign = 1,
}
