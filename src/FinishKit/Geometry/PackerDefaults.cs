namespace FinishKit;

/// <summary>When a finding about packers speaks up, with its basis.</summary>
internal static class PackerDefaults
{
    internal const double Thick = 12;

    /// <summary>Degrees.</summary>
    internal const double Steep = 8;

    internal static readonly Source SteepSource = Source.Judgement("default-packer-steep", "packings are measured along the offset; square to the line a packer is thinner by 1 - cos of its slope, 1% at 8°, and beyond that the string is hung anew");

    internal static readonly Source ThickSource = Source.Judgement("default-packer-thick", "packers of more than 12 mm tip and let the fastener bend: a strip of furring stands better there");
}
