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

        /// <summary>Boards to buy for pieces of one length, one of which an offcut of that length gives.</summary>
        public static int BoardsFor(double piece, int count, double board)
        {
            CuttingJob job = new CuttingJob
            {
                Parts = new[] { new BoardPart { Length = Measure.Mm(piece), Count = count, Name = "course 1" } },
                Stock = new[] { new StockBoard { Length = Measure.Mm(board), Price = 9.80m, Pack = 1, Available = 100 } },
                Offcuts = new[] { new BoardOffcut { Length = Measure.Mm(piece), Count = 1 } },
                Kerf = Measure.Mm(3),
                EndTrim = Measure.Mm(0),
            };
            return BoardCutting.Cut(job).Purchases[0].BoardsBought;
        }

        /// <summary>Cost of a jointed course on strips a fixed distance apart.</summary>
        public static decimal JointedCourse(double length, double strip, double board, decimal price)
        {
            JointJob job = new JointJob
            {
                Runs = new[] { new JointRun { Course = 1, Start = Measure.Mm(0), End = Measure.Mm(length), Name = "under the window" } },
                Strips = new[] { Measure.Mm(strip), Measure.Mm(2 * strip), Measure.Mm(3 * strip) },
                Stock = new[] { new StockBoard { Length = Measure.Mm(board), Price = price } },
                EndTrim = Measure.Mm(0),
            };
            return BoardJoints.Choose(job).Cost;
        }

        /// <summary>Width in millimetres of the last course over whole ones from the foot.</summary>
        public static double LastCourseInMillimetres(double girth, double board)
        {
            CourseFace face = new CourseFace
            {
                FaceLength = Measure.Mm(3400),
                Girth = Measure.Mm(girth),
                Board = BoardCover.SquareEdged(Measure.Mm(board), Measure.Mm(0)),
                Rule = CourseRule.WholeAtFoot,
                Openings = new[] { new FaceOpening { FromU = Measure.Mm(500), ToU = Measure.Mm(1400), FromV = Measure.Mm(230), ToV = Measure.Mm(610) } },
                Breaks = new[] { new FaceBreak { V = Measure.Mm(200), LeanChange = Angle.FromDegrees(3.5) } },
            };
            CoursePlan plan = CourseLayout.LayOut(face);
            return plan.Courses[plan.Courses.Count - 1].RipWidth.Millimeters;
        }

        /// <summary>Angle in degrees of the end cut of one course of 100 mm on a straight edge.</summary>
        public static double EndCutInDegrees(double lower, double upper)
        {
            EndCutJob job = new EndCutJob
            {
                Edge = EdgeCurve.Straight(new MeasuredPoint(Measure.Mm(0), Measure.Mm(lower)), new MeasuredPoint(Measure.Mm(100), Measure.Mm(upper))),
                CourseLines = new[] { Measure.Mm(0), Measure.Mm(100) },
                Datum = Measure.Mm(0),
                HiddenWidth = Measure.Mm(6),
                UnderTrim = true,
            };
            return EndCuts.Schedule(job).Courses[0].SawAngle.Degrees;
        }

        /// <summary>Gap in millimetres to leave at each joint of tongue-and-groove boards; every input is set in an object initialiser.</summary>
        public static double GapInMillimetres(double width, double tongue, double coefficient, double fitting, double wettest)
        {
            BoardMovementJob job = new BoardMovementJob
            {
                Board = BoardCover.TongueAndGroove(Measure.Mm(width), Measure.Mm(tongue), Measure.Mm(1)),
                Coefficient = DimensionalChangeCoefficient.Supplied(coefficient),
                Boards = 11,
                FittingMoisture = fitting,
                DriestMoisture = 6,
                WettestMoisture = wettest,
                LeastGap = Measure.Mm(0.5),
                EndGap = Measure.Mm(3),
                LeastCovered = Measure.Mm(2),
            };
            return BoardMovement.OverSeason(job).GapToLeave.Millimeters;
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
