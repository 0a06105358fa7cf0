using System;
using System.Collections.Generic;
using FinishKit;
using UnitsNet;

namespace FinishKit.Consumers
{
    /// <summary>As <see cref="Checks"/>, for boards: what has a default is given by its name where a figure differs, in every input type that <see cref="Checks"/> makes without.</summary>
    internal static class BoardChecks
    {
        internal static void All()
        {
            WoodThatMoves();
            BoardsOverTheSeasons();
            CoursesRoundAWindow();
            TongueBehindAnEndCut();
            PiecesFromOffcuts();
        }

        private static void WoodThatMoves()
        {
            // By hand: 7.5/(100 x 30 - 7.5 x (30 - 10)) = 7.5/2850 = 1/380; started at 25 and taken green, 8/(100 x 25).
            DimensionalChangeCoefficient wood = DimensionalChange.FromShrinkage(7.5);
            Expect.Near("share for each percent, of a shrinkage", 1.0 / 380, wood.Value, 1e-12);
            Expect.Near("the same with a start of its own", 0.0032, DimensionalChange.FromShrinkage(8, shrinkageStart: 25, takenAt: 25).Value, 1e-12);

            // By hand: 190 x (12 - 8)/380, and back.
            WidthChange wetter = BoardMovement.OfWidth(Measure.Mm(190), wood, 8, 12);
            Expect.Near("a board swells, mm", 2, wetter.Change.Millimeters, 1e-6);
            Expect.Near("its width then, mm", 192, wetter.WidthAfter.Millimeters, 1e-6);
            Expect.Near("a board shrinks, mm", -2, BoardMovement.OfWidth(Measure.Mm(190), wood, 12, 8).Change.Millimeters, 1e-6);

            // By hand: 0.000012 x 3400 x 80; 0.000004 x 3400 x 80; 0.002 x 3400 x -3/30; the first less the two others.
            LengthMovement summer = BoardMovement.AlongTheGrain(Measure.Mm(3400), 80, 9, 6);
            Expect.Near("the shell grows, mm", 3.264, summer.SteelGrowth.Millimeters, 1e-6);
            Expect.Near("the boards by heat, mm", 1.088, summer.WoodGrowthByHeat.Millimeters, 1e-6);
            Expect.Near("and by drying, mm", -0.68, summer.WoodGrowthByMoisture.Millimeters, 1e-6);
            Expect.Near("so the ends open by, mm", 2.856, summer.EndsOpenBy.Millimeters, 1e-6);

            // Up to 30% is taken.
            IReadOnlyList<InputProblem> problems = BoardMovement.CheckOfWidth(Measure.Mm(190), wood, 8, 31);
            Expect.Same("a moisture that is refused", "toMoisture", problems.Count == 1 ? problems[0].Parameter : problems.Count + " problems");
        }

        private static void BoardsOverTheSeasons()
        {
            // By hand, at 1/380 a percent, fitted at 10, 7 to 13.8: a face of 97 - 8 = 89 closes by 89 x 3.8/380 = 0.89, more than the least of 0.5; the board
            // shrinks by 97 x 3/380 = 0.765789, which with the gap of 1 leaves 6.234211 of the tongue. Drier than 13.8 - 380/89 the gap of 1
            // closes; wetter than 7 + (8 - 1 - 3) x 380/97 less than 3 stays covered.
            SeasonMovement wall = BoardMovement.OverSeason(new BoardMovementJob(
                BoardCover.TongueAndGroove(Measure.Mm(97), Measure.Mm(8), Measure.Mm(1)), DimensionalChange.FromShrinkage(7.5),
                boards: 11, fittingMoisture: 10, driestMoisture: 7, wettestMoisture: 13.8, leastGap: Measure.Mm(0.5), endGap: Measure.Mm(2), leastCovered: Measure.Mm(3)));
            Expect.Near("gap to leave, mm", 0.89, wall.GapToLeave.Millimeters, 1e-6);
            Expect.Near("still covered when dry, mm", 6.234211, wall.StillCoveredWhenDry.Value.Millimeters, 1e-6);
            Expect.Near("eleven boards swell together by, mm", 9.79, wall.TotalSwelling.Millimeters, 1e-6);
            Expect.Near("driest fitting, percent", 13.8 - (380.0 / 89), wall.DriestFitting.Value, 1e-9);
            Expect.Near("wettest fitting, percent", 7 + (4 * 380.0 / 97), wall.WettestFitting.Value, 1e-9);
            Expect.Near("gap at the ends, mm", 2, wall.EndGap.Millimeters, 1e-9);
            Expect.True("nothing is wrong with it", !wall.HasProblem);

            // By hand: the default of 1 mm is more than 0.89.
            SeasonMovement usual = BoardMovement.OverSeason(new BoardMovementJob(
                BoardCover.TongueAndGroove(Measure.Mm(97), Measure.Mm(8), Measure.Mm(1)), DimensionalChange.FromShrinkage(7.5), fittingMoisture: 10, wettestMoisture: 13.8));
            Expect.Near("the usual gap, mm", 1, usual.GapToLeave.Millimeters, 1e-9);
        }

        private static void CoursesRoundAWindow()
        {
            // By hand: 356 = 4 x 89. A window over the second and third course parts them, so 1, 2A, 2B, 3A, 3B, 4. The rear edge comes 0.1 forward for every 1 up: the long
            // points are at the lower lines, 3400, 3400 - 8.9 and so on.
            CoursePlan courses = CourseLayout.LayOut(new CourseFace(
                Measure.Mm(3400), Measure.Mm(356), BoardCover.SquareEdged(Measure.Mm(89), Measure.Mm(0)),
                openings: new[] { new FaceOpening(Measure.Mm(500), Measure.Mm(1400), Measure.Mm(89), Measure.Mm(267)) },
                rule: CourseRule.WholeAtFoot, setOutError: Measure.Mm(0), leastCourse: Measure.Mm(30)));
            MeasuredEdge rear = EdgeCurve.Straight(new MeasuredPoint(Measure.Mm(0), Measure.Mm(3400)), new MeasuredPoint(Measure.Mm(356), Measure.Mm(3364.4)));
            EndCutSchedule ends = EndCuts.Schedule(new EndCutJob(rear, courses.Lines, Measure.Mm(0), order: FittingOrder.FromTop, underTrim: true, scribeTolerance: Measure.Mm(2)));
            Expect.Near("saw angle of every course, degrees", 5.7106, Math.Abs(ends.Courses[3].SawAngle.Degrees), 5e-5);
            IReadOnlyList<JointRun> runs = courses.Runs(ends);
            Expect.Same("runs round a window", "1 2A 2B 3A 3B 4", string.Join(" ", new List<JointRun>(runs).ConvertAll(run => run.Name)));
            Expect.Near("end of the part before the window, mm", 500, runs[1].End.Millimeters, 1e-6);
            Expect.Near("long point of the part behind it, mm", 3391.1, runs[2].End.Millimeters, 1e-6);
        }

        private static void TongueBehindAnEndCut()
        {
            // By hand: 10 in 100, so 6 of tongue above the face reach 0.6 beyond its long point.
            MeasuredEdge edge = EdgeCurve.Straight(new MeasuredPoint(Measure.Mm(0), Measure.Mm(1000)), new MeasuredPoint(Measure.Mm(120), Measure.Mm(1012)));
            EndCut cut = EndCuts.Schedule(new EndCutJob(edge, new[] { Measure.Mm(0), Measure.Mm(100) }, Measure.Mm(0), hiddenWidth: Measure.Mm(6))).Courses[0];
            Expect.Near("long point of the face, mm", 1010, cut.LongPoint.Millimeters, 1e-6);
            Expect.Near("and of the board, mm", 1010.6, cut.BoardLongPoint.Millimeters, 1e-6);
        }

        private static void PiecesFromOffcuts()
        {
            // By hand: offcuts are not trimmed, so two of 1000 give two of three; the third takes a board.
            CuttingPlan plan = BoardCutting.Cut(new CuttingJob(
                new[] { new BoardPart(Measure.Mm(1000), 3, name: "sill") }, new[] { new StockBoard(Measure.Mm(2438), 9.80m, pack: 1) }, offcuts: new[] { new BoardOffcut(Measure.Mm(1000), count: 2) }));
            Expect.True("one board bought beside two offcuts", plan.Cost == 9.80m && plan.Proven && plan.Boards.Count == 3 && plan.Boards[0].IsOffcut && plan.Boards[1].IsOffcut);
            Expect.Same("what the pieces are called", "sill", plan.Boards[2].Pieces[0].Name);
        }
    }
}
