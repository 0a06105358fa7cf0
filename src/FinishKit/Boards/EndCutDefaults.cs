namespace FinishKit;

/// <summary>What end cuts take when the caller gives nothing, and what they rest on.</summary>
internal static class EndCutDefaults
{
    internal const double ScribeTolerance = 0.5, ScribeToleranceUnderTrim = 2;

    internal static readonly Source Tolerance = Source.CommonPractice("default-scribe-tolerance", "a straight end may leave a gap of 0.5 mm where it is seen (0.3 to 1), 2 mm under a trim (2 to 5); more is scribed");

    internal static readonly Source EndCut = Source.Derived("end-cut-chord", "Straight end cut on the chord of an edge", "the chord joins the edge at the two lines of the course; gap and wood in the way are the edge's greatest distances from it to either side, square to the cut, at its ends or where it runs parallel to the chord");
}
