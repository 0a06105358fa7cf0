using System;
using System.Collections.Generic;
using FinishKit;
using UnitsNet;

namespace FinishKit.Consumers
{
    /// <summary>
    /// The numbers that every consumer checks, written as a C# 7.3 host writes them: constructors and plain parameters.
    /// One method a calculator; a new calculator adds its own and calls it from <see cref="All"/>.
    /// </summary>
    internal static class Checks
    {
        internal static void All()
        {
            ArcFromChordAndRise();
            InputIsRefused();
            TolerancesAddUp();
            WhichNail();
            BadRowsDoNotStopTheBatch();
            Withdrawals();
            WhatHasADefaultIsSetByName();
            LengthsAsPeopleWriteThem();
            BoardSpans();
            StripsAndSlats();
            BentSheets();
            CirclesThroughPoints();
            BoardsCutAndJointed();
            CoursesAndTheirEnds();
            MeasuredWalls();
            CompoundCuts();
            WoodInAir();
            BoardChecks.All();
            PanelChecks.All();
        }

        private static void WhichNail()
        {
            // By hand, common practice: 12.7 + 15.875 - (0.5 + 25.4) = 2.675; into 12.7 mm furring -0.5.
            FastenerJob job = new FastenerJob(new Layer[] { Measure.Mm(12.7), Measure.Mm(15.875) }, Behind.Metal, FastenerSeries.Brad18);
            FastenerCandidate nail = FastenerLength.Evaluate(job, Measure.Mm(25.4));

            // The default set is 1 mm: 12.7 + 15.875 - 26.4 = 2.175; worst case less 0.5 of set and 1/32 in of length.
            Expect.Near("clearance of 25.4 mm through 12.7 and 15.875 mm, mm", 2.175, nail.Clearance.Millimeters, 1e-6);
            Expect.Near("the same in the worst case, mm", 2.175 - 0.5 - 0.79375, nail.WorstClearance.Millimeters, 1e-6);
            Expect.True("it is safe and may be driven", nail.Tip == TipVerdict.Safe && nail.MayBeDriven);

            FastenerChoice choice = FastenerLength.Choose(new Layer[] { Layer.Board(Measure.Mm(12.7)), Layer.Furring(SheetGoods.Birch18) }, Behind.Metal, FastenerSeries.Brad18);
            Expect.Near("the nail chosen, mm", 25.4, choice.Chosen.Length.Nominal.Millimeters, 1e-6);
            Expect.True("the next longer one reaches", choice.NextLonger.Tip == TipVerdict.Reaches);

            FastenerChoice none = FastenerLength.Choose(new Layer[] { Measure.Mm(12.7), Measure.Mm(12.7) }, Behind.Metal, FastenerSeries.Brad18);
            Expect.True("none fits 12.7 mm furring, and a remedy is named", none.Chosen == null && none.HasProblem && none.Remedies.Count > 0);
        }

        private static void BadRowsDoNotStopTheBatch()
        {
            IReadOnlyList<InputProblem> problems = FastenerLength.Check(new FastenerJob(new Layer[] { Measure.Mm(-1), null }, null, FastenerSeries.Brad18));
            Expect.Same("all problems of a bad row", "job.Layers[0].Thickness job.Layers[1] job.Behind", string.Join(" ", new List<InputProblem>(problems).ConvertAll(p => p.Parameter)));
        }

        private static void Withdrawals()
        {
            // By hand: 1380 psi = 9.514765 N/mm2; 9.514765 * 0.5^2.5 * 1.6 * 30 = 80.735 N.
            Expect.Near("NDS nail, N", 80.735, Withdrawal.NdsNail(new OvendrySpecificGravity(0.5), Measure.Mm(1.6), Measure.Mm(30)).Force.Newtons, 0.001);
            RetentionCount hung = Retention.FastenersNeeded(Mass.FromKilograms(12), WithdrawalCapacity.Supplied(Force.FromNewtons(40)));

            // By hand: 12 * 3 * 9.80665 = 353.0394 N; over 40 N that is 8.83.
            Expect.True("nine fasteners hold 12 kg", hung.Fasteners == 9);
        }

        private static void WhatHasADefaultIsSetByName()
        {
            // By hand: without kerf and trim two of 1219 are 2438, one board; with the defaults they would be two.
            CuttingPlan plan = BoardCutting.Cut(new CuttingJob(
                new[] { new BoardPart(Measure.Mm(1219), 2) }, new[] { new StockBoard(Measure.Mm(2438), 9.80m, available: 5) }, kerf: Measure.Mm(0), endTrim: Measure.Mm(0)));
            Expect.Near("boards without kerf and trim", 1, plan.Boards.Count, 0);

            // By hand: 2410 less 3 at both ends is 2404.
            JointLayout joints = BoardJoints.Choose(new JointJob(
                new[] { new JointRun(1, Measure.Mm(0), Measure.Mm(2410), name: "under the window") }, new Length[0], new[] { new StockBoard(Measure.Mm(2438), 9.80m) }, endGap: Measure.Mm(3)));
            Expect.Near("a course between its gaps, mm", 2404, joints.Runs[0].Pieces[0].Millimeters, 1e-9);
            Expect.Same("its name", "under the window", joints.Runs[0].Name);
        }

        private static void LengthsAsPeopleWriteThem()
        {
            Expect.Near("3/4 in, mm", 19.05, Measure.ParseLength("3/4 in").Millimeters, 1e-9);
            Expect.True("1,5 mm is not guessed", !Measure.TryParseLength("1,5 mm", out Length _));
        }

        private static void ArcFromChordAndRise()
        {
            // By hand: R = 300 * 300 / (8 * 2) + 2 / 2 = 5625 + 1 = 5626.
            CircularArc arc = Arc.FromChordAndRise(Measure.Mm(300), Measure.Mm(2));
            Expect.Near("radius of 300 mm with 2 mm under it, mm", 5626, arc.Radius.Value.Millimeters, 1e-6);

            // By hand: 12 in with 0.5 in, R = 12 * 12 / (8 * 0.5) + 0.25 = 36.25 in = 920.75 mm.
            CircularArc inches = Arc.FromChordAndRise(Length.FromInches(12), Length.FromInches(0.5));
            Expect.Near("radius of 12 in with 1/2 in under it, mm", 920.75, inches.Radius.Value.Millimeters, 1e-6);

            CircularArc flat = Arc.FromChordAndRise(Measure.Mm(300), Measure.Mm(0));
            Expect.True("a flat surface has no radius", !flat.Radius.HasValue);
            Expect.Same("a shallow reading is a finding", "geometry-radius-uncertain", arc.Findings.Count == 1 ? arc.Findings[0].Code : "none");
            Expect.True("the workings print the radius", arc.Explain().ToText().IndexOf("5626", StringComparison.Ordinal) >= 0);
        }

        private static void BoardSpans()
        {
            // By hand: I = 89 * 12.7^3 / 12 = 15192; 0.015097 * 200 * L^3 = 3 * 0.8 * 8900 * 15192 gives L = 475.4.
            BeamSection board = new BeamSection(Measure.Mm(89), Measure.Mm(12.7), Pressure.FromMegapascals(8900));
            BayLimit bay = BoardSpan.LargestBay(board);
            Expect.Near("largest bay of a knotty board, mm", 475.4, bay.LargestBay.Millimeters, 0.05);
            Expect.Same("deflection governs", "Deflection", bay.Governs.ToString());

            // By hand: P L^3 / (48 E I) with E I = 0.8 * 8900 * 15192 = 1.08168e8: 100 * 400^3 / (48 * 1.08168e8) = 1.2326.
            BeamExtremes pushed = ContinuousBeam.UnderPointLoad(new Beam(board, new[] { Measure.Mm(400) }), Force.FromNewtons(100));
            Expect.Near("simple span under 100 N, mm", 1.2326, pushed.Deflection.Millimeters, 0.0001);
        }

        private static void StripsAndSlats()
        {
            // By hand: ends at 20 and 1940; ribs at 480 and 950 leave 460 and 470; 950 to 1940 is 990, two strips between of 330 each.
            RibLine[] ribs = { new RibLine(Measure.Mm(480), Measure.Mm(25)), new RibLine(Measure.Mm(950), Measure.Mm(20)) };
            StripLayout strips = StripSpacing.Space(Measure.Mm(1960), new[] { Measure.Mm(20), Measure.Mm(1940) }, Measure.Mm(475), ribs);
            Expect.Near("strips of a short wall", 6, strips.Strips.Count, 0);
            Expect.Near("first strip on a rib, mm", 480, strips.Strips[1].Position.Millimeters, 1e-9);

            // By hand: 31 slats of 40 on 1516: (1516 - 1240)/30 = 9.2.
            SlatChoice slats = SlatSpread.Spread(Measure.Mm(1516), Measure.Mm(40), Measure.Mm(9), Measure.Mm(10));
            Expect.Near("slats", 31, slats.Recommended.Count, 0);
            Expect.Near("gap, mm", 9.2, slats.Recommended.Gaps[0].Millimeters, 1e-6);
        }

        private static void BentSheets()
        {
            // By hand: 2 * 5000 * 6 / (2 * 30) = 1000.
            BentSheet sheet = new BentSheet(Measure.Mm(6), Pressure.FromMegapascals(5000), Pressure.FromMegapascals(30));
            Expect.Near("tightest radius of a sheet, mm", 1000, PanelBend.MinimumRadius(sheet).Minimum.Millimeters, 1e-6);

            // By hand: three rows on 2003 at the back, 2000 at the middle: 2000 / 1.5 = 1333.3.
            HoldDownResult held = HoldDown.OnArc(new HoldDownCase(sheet, Measure.Mm(2003), BentSheet.EqualRows(Measure.Mm(400), 3), Measure.Mm(1000)));
            Expect.Near("peak radius of three rows, mm", 1333.333, held.PeakRadius.Value.Millimeters, 0.001);
        }

        private static void CirclesThroughPoints()
        {
            // By hand: chord 1000 and rise 25: 1000 * 1000 / (8 * 25) + 25 / 2 = 5012.5.
            FittedCircle bow = CircleFit.Through(new[]
            {
                new MeasuredPoint(Measure.Mm(0), Measure.Mm(20)), new MeasuredPoint(Measure.Mm(500), Measure.Mm(45)), new MeasuredPoint(Measure.Mm(1000), Measure.Mm(20)),
            });
            Expect.Near("radius through three points, mm", 5012.5, bow.Radius.Value.Millimeters, 1e-3);
        }

        private static void BoardsCutAndJointed()
        {
            // By hand: 2408 of 2438 can be used; 1820 and 560 from each of four boards, 2380 and a kerf of 2.8, and 3 x 560 from a fifth. Four hold 9632 mm, the pieces are 11,200.
            CuttingPlan plan = BoardCutting.Cut(new CuttingJob(
                new[] { new BoardPart(Measure.Mm(1820), 4), new BoardPart(Measure.Mm(560), 7) }, new[] { new StockBoard(Measure.Mm(2438), 9.80m) }));
            Expect.Near("boards bought", 5, plan.Purchases[0].BoardsBought, 0);
            Expect.True("49.00 is proven the least", plan.Cost == 49m && plan.Proven && !plan.HasProblem);
            Expect.Near("left of a board, less its last kerf, mm", 2408 - 2382.8 - 2.8, plan.Boards[0].Offcut.Millimeters, 1e-6);

            // By hand: 3600 from boards of which 2408 can be used takes two, whichever strip from 1200 to 2400 the joint is on.
            JointLayout joints = BoardJoints.Choose(new JointJob(
                new[] { new JointRun(1, Measure.Mm(0), Measure.Mm(3600)) }, new[] { Measure.Mm(600), Measure.Mm(1200), Measure.Mm(1800), Measure.Mm(2400), Measure.Mm(3000) }, new[] { new StockBoard(Measure.Mm(2438), 9.80m) }));
            Expect.True("a jointed course of two boards", joints.Cost == 19.60m && !joints.HasProblem);
        }

        private static void CoursesAndTheirEnds()
        {
            // By hand: 994 = 10 x 89 + 104, two ends of 52; 3 mm off they keep 49.
            CoursePlan courses = CourseLayout.LayOut(new CourseFace(Measure.Mm(3400), Measure.Mm(994), BoardCover.SquareEdged(Measure.Mm(89), Measure.Mm(0))));
            Expect.Near("courses of a plain wall", 12, courses.Courses.Count, 0);
            Expect.Near("the narrowest, mm", 52, courses.NarrowestPiece.Value.Millimeters, 1e-9);
            Expect.Near("and with the set-out off, mm", 49, courses.Guaranteed.Millimeters, 1e-9);

            // By hand: half of 9.5 degrees; 44.5 tan 1.75 degrees = 1.3596.
            Expect.Near("bevel in a hollow, degrees", 4.75, CourseBreaks.Judge(Measure.Mm(89), Angle.FromDegrees(9.5)).Bevel.Degrees, 1e-9);
            Expect.Near("a board over a break stands off, mm", 1.3596, CourseBreaks.Judge(Measure.Mm(89), Angle.FromDegrees(3.5)).StandOff.Millimeters, 1e-4);

            // By hand: 10 in 100 is atan 0.1 = 5.7106 degrees, the long point at the upper line.
            MeasuredEdge edge = EdgeCurve.Straight(new MeasuredPoint(Measure.Mm(0), Measure.Mm(1000)), new MeasuredPoint(Measure.Mm(100), Measure.Mm(1010)));
            EndCutSchedule ends = EndCuts.Schedule(new EndCutJob(edge, new[] { Measure.Mm(0), Measure.Mm(100) }, Measure.Mm(0)));
            Expect.Near("angle of an end cut, degrees", 5.7106, ends.Courses[0].SawAngle.Degrees, 5e-5);
            Expect.Near("its long point, mm", 1010, ends.Courses[0].LongPoint.Millimeters, 1e-6);
            Expect.Near("half way up the edge, mm", 1005, edge.OffsetAt(Measure.Mm(50)).Millimeters, 1e-6);
        }

        private static void MeasuredWalls()
        {
            // By hand: plumb up to 200, then 10 in 100 toward the room.
            WallProfile wall = ProfileBreaks.Find(new[]
            {
                new MeasuredPoint(Measure.Mm(0), Measure.Mm(50)), new MeasuredPoint(Measure.Mm(100), Measure.Mm(50)), new MeasuredPoint(Measure.Mm(200), Measure.Mm(50)),
                new MeasuredPoint(Measure.Mm(300), Measure.Mm(40)), new MeasuredPoint(Measure.Mm(400), Measure.Mm(30)),
            });
            Expect.Near("height of a break, mm", 200, wall.Breaks[0].Height.Millimeters, 1e-9);
            Expect.Near("lean above it, degrees", 5.7106, wall.Bands[1].Lean.Degrees, 5e-5);

            // By hand: the line from 20 to 26 passes 22 and 24.
            PackedLine rail = Flattening.Line(new[]
            {
                new MeasuredPoint(Measure.Mm(0), Measure.Mm(20)), new MeasuredPoint(Measure.Mm(400), Measure.Mm(26)), new MeasuredPoint(Measure.Mm(800), Measure.Mm(24)), new MeasuredPoint(Measure.Mm(1200), Measure.Mm(26)),
            });
            Expect.Near("packing at a rib, mm", 4, rail.Points[1].Packing.Millimeters, 1e-6);

            // By hand: three corners on the plane 20 + 2 + 1, the fourth 3 farther.
            PackedPlane face = Flattening.Plane(new[]
            {
                new SurfacePoint(Measure.Mm(0), Measure.Mm(0), Measure.Mm(20)), new SurfacePoint(Measure.Mm(1000), Measure.Mm(0), Measure.Mm(22)),
                new SurfacePoint(Measure.Mm(0), Measure.Mm(500), Measure.Mm(21)), new SurfacePoint(Measure.Mm(1000), Measure.Mm(500), Measure.Mm(26)),
            });
            Expect.Near("packing of a corner, mm", 3, face.Points[3].Packing.Millimeters, 1e-6);
        }

        private static void CompoundCuts()
        {
            // By hand: sin b = cos 38 cos 45 = 0.5572, tan m = sin 38 / tan 45 = 0.6157.
            CompoundSetting cut = CompoundCut.InCorner(Angle.FromDegrees(38), Angle.FromDegrees(90));
            Expect.Near("bevel of a sprung moulding, degrees", 33.86, cut.Bevel.Degrees, 0.005);
            Expect.Near("its mitre, degrees", 31.62, cut.Mitre.Degrees, 0.005);
        }

        private static void WoodInAir()
        {
            // The printed table (FPL-RN-0268): 9.2% at 70 °F and 50%.
            Expect.Near("moisture of wood in a room, %", 9.2, EquilibriumMoisture.InAir(Temperature.FromDegreesFahrenheit(70), RelativeHumidity.FromPercent(50)).MoistureContent, 0.06);
            Expect.Near("humidity that holds ovendry wood, %", 0, EquilibriumMoisture.HoldingAt(Temperature.FromDegreesCelsius(20), 0).RelativeHumidity.Percent, 0);
        }

        private static void InputIsRefused()
        {
            IReadOnlyList<InputProblem> problems = Arc.CheckFromChordAndRise(Measure.Mm(-1), Measure.Mm(2));
            Expect.Same("Check names the parameter", "chord", problems.Count == 1 ? problems[0].Parameter : "none");
            string thrown = "nothing";
            try
            {
                Arc.FromChordAndRise(Measure.Mm(-1), Measure.Mm(2));
            }
            catch (ArgumentOutOfRangeException e)
            {
                thrown = e.ParamName;
            }

            Expect.Same("the method throws for it", "chord", thrown);
        }

        private static void TolerancesAddUp()
        {
            // By hand: 12.7 + 15 = 27.7; worst case 12.7 - 0.5 + 15 - 0.8 = 26.4.
            TolerancedSum sum = TolerancedLength.Sum(new[]
            {
                TolerancedLength.PlusMinus(Measure.Mm(12.7), Measure.Mm(0.5)),
                new TolerancedLength(Measure.Mm(15), Measure.Mm(-0.8), Measure.Mm(0.6)),
            });
            Expect.Near("nominal of two layers, mm", 27.7, sum.Nominal.Millimeters, 1e-6);
            Expect.Near("least of two layers, mm", 26.4, sum.WorstLeast.Millimeters, 1e-6);
        }
    }
}
