namespace FinishKit;

/// <summary>What findings on withdrawal and on retention share: codes that both need, and names for a basis.</summary>
internal static class WithdrawalFindings
{
    internal const string UltimateNotDesign = "fastening-ultimate-not-design";
    internal const string CharacteristicNotDesign = "fastening-characteristic-not-design";
    internal const string ShortTermOnly = "fastening-eurocode5-short-term-only";

    internal static string Words(WithdrawalBasis basis) => basis switch
    {
        WithdrawalBasis.NdsReferenceDesign => "NDS reference design value",
        WithdrawalBasis.HandbookAverageUltimate => "Wood Handbook average ultimate",
        WithdrawalBasis.Eurocode5Characteristic => "Eurocode 5 characteristic value",
        _ => "supplied",
    };
}
