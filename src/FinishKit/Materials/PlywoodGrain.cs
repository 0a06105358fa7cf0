namespace FinishKit;

/// <summary>Which way the face grain of a plywood sheet runs where the sheet is bent round a curve, named by what it does there.</summary>
public enum BendGrain
{
    /// <summary>The face grain runs around the curve: it is bent with it. The stiff way.</summary>
    AroundTheCurve = 0,

    /// <summary>The face grain runs along the axis of the curve and stays straight. The easy way.</summary>
    AlongTheAxis = 1,
}

/// <summary>Which way the face grain of a plywood strip or panel runs where it spans between supports.</summary>
public enum SpanGrain
{
    /// <summary>The face grain runs across the span. The weak way.</summary>
    AcrossTheSpan = 0,

    /// <summary>The face grain runs along the span. The strong way.</summary>
    AlongTheSpan = 1,
}
