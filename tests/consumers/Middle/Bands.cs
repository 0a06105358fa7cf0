using FinishKit;

namespace FinishKit.Consumers.Middle
{
    /// <summary>What an add-in does with the library, one method a calculator, with object initialisers wherever the input type has init members.</summary>
    public static class Bands
    {
        /// <summary>Radius in millimetres of a band with a known gap under a straightedge.</summary>
        public static double RadiusInMillimetres(double straightedge, double gap)
        {
            return Arc.FromChordAndRise(Measure.Mm(straightedge), Measure.Mm(gap)).Radius.Value.Millimeters;
        }
    }
}
