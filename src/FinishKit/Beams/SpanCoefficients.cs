using System;

namespace FinishKit;

/// <summary>The worst of equal spans, as plain numbers: deflection = k P L³/(E I) or k w L⁴/(E I), moment = k P L or k w L².</summary>
internal readonly struct SpanCoefficients(double pointSag, double pointMoment, double uniformSag, double uniformMoment)
{
    /// <summary>Past this many equal spans nothing changes in the first nine digits.</summary>
    internal const int MostSpans = 20;

    private static readonly SpanCoefficients[] s_byCount = Compute();

    internal double PointSag { get; } = pointSag;

    internal double PointMoment { get; } = pointMoment;

    internal double UniformSag { get; } = uniformSag;

    internal double UniformMoment { get; } = uniformMoment;

    internal static SpanCoefficients Of(int spans) => s_byCount[spans - 1];

    private static SpanCoefficients[] Compute()
    {
        SpanCoefficients[] all = new SpanCoefficients[MostSpans];
        for (int count = 1; count <= MostSpans; count++)
        {
            double[] spans = new double[count];
            for (int i = 0; i < count; i++)
            {
                spans[i] = 1;
            }

            PointExtremes point = WorstLoads.Point(spans, 1, null, 1);
            UniformExtremes uniform = WorstLoads.Uniform(spans, 1, null, 1);
            all[count - 1] = new SpanCoefficients(point.Sag.Value, Math.Abs(point.Moment.Value), uniform.Sag.Value, Math.Abs(uniform.Moment.Value));
        }

        return all;
    }
}
