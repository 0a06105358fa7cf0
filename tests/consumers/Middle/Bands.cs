using FinishKit;
using UnitsNet;

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

        /// <summary>Nominal clearance in millimetres of a nail through a board into furring on metal; every input is set in an object initialiser.</summary>
        public static double ClearanceInMillimetres(double board, double furring, double nail, double setDepth)
        {
            FastenerJob job = new FastenerJob
            {
                Layers = new[] { new Layer { Name = "board", Thickness = Measure.Mm(board) }, new Layer { Name = "furring", Thickness = Measure.Mm(furring), Holds = true } },
                Behind = new Behind { Kind = BehindKind.RibMetal, Distance = Measure.Mm(0) },
                Series = FastenerSeries.Brad18,
                SetDepth = Measure.Mm(setDepth),
                Count = 200,
            };
            return FastenerLength.Evaluate(job, Measure.Mm(nail)).Clearance.Millimeters;
        }

        /// <summary>Newtons by Eurocode 5 of a smooth nail under a load that is not permanent.</summary>
        public static double NailInNewtons(double density, double shank, double penetration)
        {
            Eurocode5Nail nail = new Eurocode5Nail
            {
                Density = new CharacteristicDensity(density),
                Shank = Measure.Mm(shank),
                HeadDiameter = Measure.Mm(6),
                HeadSideThickness = Measure.Mm(500),
                PointPenetration = Measure.Mm(penetration),
                PermanentLoad = false,
            };
            return Withdrawal.Eurocode5SmoothNail(nail).Force.Newtons;
        }

        /// <summary>Largest bay in millimetres of a board; every input is set in an object initialiser.</summary>
        public static double BayInMillimetres(double width, double thickness, double modulus)
        {
            BeamSection section = new BeamSection { Width = Measure.Mm(width), Thickness = Measure.Mm(thickness), Elasticity = Pressure.FromMegapascals(modulus), Grade = SectionGrade.KnottyBoard };
            return BoardSpan.LargestBay(new BayQuestion { Section = section, Surface = Surface.Wall, Spans = 2 }).LargestBay.Millimeters;
        }

        /// <summary>Strips on a run with one rib in its middle.</summary>
        public static int StripsOn(double length, double bay)
        {
            StripRun run = new StripRun
            {
                RunLength = Measure.Mm(length),
                FixedPositions = new[] { Measure.Mm(0), Measure.Mm(length) },
                LargestBay = Measure.Mm(bay),
                Ribs = new[] { new RibLine { Centre = Measure.Mm(length / 2), HalfWidth = Measure.Mm(20) } },
                Preference = StripPreference.OnRibs,
            };
            return StripSpacing.Space(run).Strips.Count;
        }
    }
}
