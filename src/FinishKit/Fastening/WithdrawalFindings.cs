using System.Collections.Generic;

namespace FinishKit;

/// <summary>What findings on withdrawal and on retention share: their order, codes that both need, and names for a basis.</summary>
internal static class WithdrawalFindings
{
    internal const string UltimateNotDesign = "fastening-ultimate-not-design";
    internal const string CharacteristicNotDesign = "fastening-characteristic-not-design";
    internal const string ShortTermOnly = "fastening-eurocode5-short-term-only";

    /// <summary>Problems, then cautions, then notes; those of one severity stay as they were.</summary>
    internal static List<Finding> GravestFirst(List<Finding> findings)
    {
        List<Finding> sorted = new(findings.Count);
        for (Severity severity = Severity.Problem; severity >= Severity.Note; severity--)
        {
            foreach (Finding finding in findings)
            {
                if (finding.Severity == severity)
                {
                    sorted.Add(finding);
                }
            }
        }

        return sorted;
    }

    internal static string Words(WithdrawalBasis basis) => basis switch
    {
        WithdrawalBasis.NdsReferenceDesign => "NDS reference design value",
        WithdrawalBasis.HandbookAverageUltimate => "Wood Handbook average ultimate",
        WithdrawalBasis.Eurocode5Characteristic => "Eurocode 5 characteristic value",
        _ => "supplied",
    };
}
