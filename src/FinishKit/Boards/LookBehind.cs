namespace FinishKit;

/// <summary>What no plan of boards knows, said with every one of them.</summary>
internal static class LookBehind
{
    internal static Finding Note => new(
        "boards-look-behind",
        Severity.Note,
        "The figures know only lengths, widths and heights: find wiring, pipes, fuel and brake lines, airbags and belt anchorages before fixing, choose fasteners by the whole stack, and keep clear of the saw's dust.",
        []);
}
