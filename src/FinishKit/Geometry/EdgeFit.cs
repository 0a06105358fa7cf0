namespace FinishKit;

/// <summary>How an edge runs between the heights at which it was measured. Every one goes through all the points.</summary>
public enum EdgeFit
{
    /// <summary>Straight from point to point, with a corner at each: the chord of whatever bow there is.</summary>
    Linear = 0,

    /// <summary>
    /// Piecewise cubic that keeps the shape of the points (PCHIP): it never swings past them, has no corners, and is flat at a point that lies farther out than both its neighbours.
    /// </summary>
    ShapePreserving = 1,

    /// <summary>Natural cubic spline, the line of a thin batten held at the points: the smoothest, for an edge known to be one even bow. It may swing past the points, and is straight at both ends.</summary>
    NaturalCubic = 2,
}
