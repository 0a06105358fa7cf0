namespace FinishKit;

/// <summary>When a finding about packers speaks up, with its basis.</summary>
internal static class PackerDefaults
{
    internal const double Thick = 12;

    internal static readonly Source ThickSource = Source.Judgement("default-packer-thick", "packers of more than 12 mm tip and let the fastener bend: a strip of furring stands better there");
}
