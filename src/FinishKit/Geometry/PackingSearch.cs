using System;

namespace FinishKit;

/// <summary>
/// The exact search behind <see cref="Flattening"/>. Total and greatest packing of a tilt, once it is moved to touch, are convex and made of flat
/// pieces, so each is least at a corner between the pieces. For the total that is a line through two of the points, or a plane through three;
/// for the greatest also a plane along two pairs of them. All these tilts are tried; one that touches elsewhere does no harm.
/// </summary>
internal sealed class PackingSearch
{
    private readonly double[] _u, _v, _offset;
    private readonly FlatteningAim _aim;
    private double _key = double.PositiveInfinity, _second = double.PositiveInfinity;

    private PackingSearch(double[] u, double[] v, double[] offset, FlatteningAim aim) => (_u, _v, _offset, _aim) = (u, v, offset, aim);

    /// <summary>The two pairs of points that the tilt runs along; the first one alone on a line.</summary>
    internal (int From, int To) First { get; private set; }

    internal (int From, int To) Second { get; private set; }

    /// <summary>A point that it touches.</summary>
    internal int Touch { get; private set; }

    internal static PackingSearch Line(double[] along, double[] offset, FlatteningAim aim)
    {
        PackingSearch search = new(along, new double[along.Length], offset, aim);
        for (int i = 0; i < along.Length; i++)
        {
            for (int j = i + 1; j < along.Length; j++)
            {
                if (along[i] != along[j])
                {
                    search.Offer((offset[j] - offset[i]) / (along[j] - along[i]), 0, (i, j), (i, j));
                }
            }
        }

        return search;
    }

    internal static PackingSearch Plane(double[] u, double[] v, double[] offset, FlatteningAim aim)
    {
        PackingSearch search = new(u, v, offset, aim);
        int count = u.Length;
        for (int i = 0; i < count; i++)
        {
            for (int j = i + 1; j < count; j++)
            {
                for (int k = j + 1; k < count; k++)
                {
                    search.OfferAlong((i, j), (i, k));
                }
            }
        }

        for (int i = 0; i < count && aim == FlatteningAim.LeastGreatest; i++)
        {
            for (int j = i + 1; j < count; j++)
            {
                for (int k = i + 1; k < count; k++)
                {
                    for (int l = k + 1; l < count; l++)
                    {
                        if (k != j && l != j)
                        {
                            search.OfferAlong((i, j), (k, l));
                        }
                    }
                }
            }
        }

        return search;
    }

    private void OfferAlong((int From, int To) first, (int From, int To) second)
    {
        double firstU = _u[first.To] - _u[first.From], firstV = _v[first.To] - _v[first.From], firstRise = _offset[first.To] - _offset[first.From];
        double secondU = _u[second.To] - _u[second.From], secondV = _v[second.To] - _v[second.From], secondRise = _offset[second.To] - _offset[second.From];
        double area = (firstU * secondV) - (secondU * firstV);
        if (area != 0)
        {
            Offer(((firstRise * secondV) - (secondRise * firstV)) / area, ((firstU * secondRise) - (secondU * firstRise)) / area, first, second);
        }
    }

    private void Offer(double slopeU, double slopeV, (int From, int To) first, (int From, int To) second)
    {
        double low = double.PositiveInfinity, high = double.NegativeInfinity, sum = 0;
        double give = _aim == FlatteningAim.LeastGreatest ? _key + Allowed.OneStep : double.PositiveInfinity;
        int touch = 0;
        for (int i = 0; i < _u.Length; i++)
        {
            double gap = _offset[i] - (slopeU * (_u[i] - _u[0])) - (slopeV * (_v[i] - _v[0]));
            sum += gap;
            high = Math.Max(high, gap);
            if (gap < low)
            {
                (low, touch) = (gap, i);
            }

            if (high - low > give)
            {
                return;
            }
        }

        double total = Grid.Snap(sum - (_u.Length * low)), greatest = Grid.Snap(high - low);
        (double key, double other) = _aim == FlatteningAim.LeastGreatest ? (greatest, total) : (total, greatest);
        if (key < _key || (key == _key && other < _second))
        {
            (_key, _second, First, Second, Touch) = (key, other, first, second, touch);
        }
    }
}
