using System;

namespace FinishKit;

/// <summary>The least-squares line of one band.</summary>
internal sealed class ProfileLine
{
    private readonly double _meanHeight, _meanOffset, _spread, _product;

    internal ProfileLine(double[] heights, double[] offsets, int first, int last)
    {
        (First, Last, FromHeight, ToHeight) = (first, last, heights[first], heights[last]);
        int count = last - first + 1;
        for (int i = first; i <= last; i++)
        {
            _meanHeight += heights[i] / count;
            _meanOffset += offsets[i] / count;
        }

        for (int i = first; i <= last; i++)
        {
            double rise = heights[i] - _meanHeight;
            _spread += rise * rise;
            _product += rise * (offsets[i] - _meanOffset);
        }

        (Slope, Lean, Foot, Head) = Solve(default(Silent), 0);
        for (int i = first; i <= last; i++)
        {
            double residual = offsets[i] - (_meanOffset + (Slope * (heights[i] - _meanHeight)));
            Squares += residual * residual;
            if (i == first || Grid.Snap(Math.Abs(residual)) > Grid.Snap(Math.Abs(GreatestResidual)))
            {
                (GreatestResidual, Farthest) = (residual, i);
            }
        }

        RootMeanSquare = Math.Sqrt(Squares / count);
    }

    internal int First { get; }

    internal int Last { get; }

    internal double FromHeight { get; }

    internal double ToHeight { get; }

    /// <summary>Offset per height.</summary>
    internal double Slope { get; }

    /// <summary>Radians, positive toward the room going up.</summary>
    internal double Lean { get; }

    internal double LeanDegrees => Lean * (180 / Math.PI);

    internal double Foot { get; }

    internal double Head { get; }

    internal double Squares { get; }

    internal double RootMeanSquare { get; }

    internal double GreatestResidual { get; }

    internal int Farthest { get; }

    /// <summary>The one formula body, for the numbers and for the workings.</summary>
    internal (double Slope, double Lean, double Foot, double Head) Solve<TTrace>(TTrace trace, int band)
        where TTrace : struct, ITrace
    {
        double spread = _spread, product = _product, meanHeight = _meanHeight, meanOffset = _meanOffset, fromHeight = FromHeight, toHeight = ToHeight;
        trace.Given("S_hh", spread, "mm2", Sources.ProfileBreaks, band, "sum of squared heights from their mean");
        trace.Given("S_hx", product, "mm2", Sources.ProfileBreaks, band, "sum of heights times offsets, both from their means");
        trace.Given("h_mean", meanHeight, "mm", Sources.ProfileBreaks, band, "mean height of the band's stations");
        trace.Given("x_mean", meanOffset, "mm", Sources.ProfileBreaks, band, "mean offset of the band's stations");
        trace.Given("h_foot", fromHeight, "mm", Sources.Given, band, "height of the band's foot");
        trace.Given("h_head", toHeight, "mm", Sources.Given, band, "height of the band's head");
        double slope = trace.Step("b", nameof(slope), product / spread, string.Empty, Sources.ProfileBreaks, band);
        double lean = trace.Step("phi", nameof(lean), Math.Atan(-slope), "rad", Sources.ProfileBreaks, band);
        double foot = trace.Step("x_foot", nameof(foot), meanOffset + (slope * (fromHeight - meanHeight)), "mm", Sources.ProfileBreaks, band);
        double head = trace.Step("x_head", nameof(head), meanOffset + (slope * (toHeight - meanHeight)), "mm", Sources.ProfileBreaks, band);
        trace.Step("phi_deg", "leanInDegrees", lean * 180 / Math.PI, "deg", Sources.ProfileBreaks, band);
        return (slope, lean, foot, head);
    }
}
