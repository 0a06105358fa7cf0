namespace FinishKit;

/// <summary>What double curvature rests on, besides what a bent panel does.</summary>
internal static class DoubleDefaults
{
    internal static readonly Source EdgeStrain = Source.Derived("double-strain", "Strain across a flat strip laid on two curvatures", "a fibre y from the middle of a strip b wide has to differ from the middle's length by y²/(2 R1 R2); with no force over the strip the mean b²/(24 R1 R2) comes off: b²/(12 R1 R2) at the edges and half of it, of the other sign, at the middle; both the same way hollow (a bowl) squeezes the edges, one each way (a saddle) stretches them");
}
