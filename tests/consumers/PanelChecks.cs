using System;
using System.Collections.Generic;
using FinishKit;
using UnitsNet;

namespace FinishKit.Consumers
{
    /// <summary>
    /// As <see cref="Checks"/>, for panels: sheets and rolls, wrap, split, fixings, bends. Constructors only, so every optional figure is
    /// the library's default; the add-in sets the others in object initialisers.
    /// </summary>
    internal static class PanelChecks
    {
        internal static void All()
        {
            SawnSheets();
            RoutedSheets();
            NestingInputIsRefused();
            PiecesOnARoll();
            WrappedPanels();
            PatternOnAPanel();
            WallsIntoPanels();
            FixingsOfAPanel();
            PlyFromItsPlies();
            Kerfs();
            GluedLayers();
            BowedBothWays();
            ScrewsIntoMetal();
            PullOfThinSheet();
            RivetNuts();
            AdhesiveAndStaples();
            FoamBackedOrSeparate();
        }

        private static void SawnSheets()
        {
            // By hand: 5 mm off each edge leave 2430 x 1210; 2 x 1200 + 2.4 = 2402.4 and 2 x 600 + 2.4 = 1202.4, so four go on a sheet and the
            // fifth on another. One sheet is not enough: 5 x 0.72 m2 = 3.6, a sheet has 2.94.
            NestingPlan plan = SheetNesting.Nest(new NestingJob(
                new[] { new SheetPart(Measure.Mm(1200), Measure.Mm(600), 5, false) }, new[] { new StockSheet(Measure.Mm(2440), Measure.Mm(1220), 40.00m) }, SheetCutting.Sawn));
            Expect.Near("sheets for five panels", 2, plan.Sheets.Count, 0);
            Expect.True("80.00 is proven the least", plan.Cost == 80m && plan.Proven && plan.LeastSheets == 2 && !plan.HasProblem);
            Expect.Near("pieces on the fuller sheet", 4, plan.Sheets[0].Pieces.Count, 0);

            // By hand: four trims, the end that is left, the strip that is left, the middle along, and each half across: nine.
            Expect.Near("cuts of the fuller sheet", 9, plan.Sheets[0].Cuts.Count, 0);
            bool inOrder = true;
            for (int i = 0; i < plan.Sheets[0].Cuts.Count; i++)
            {
                inOrder = inOrder && plan.Sheets[0].Cuts[i].Number == i + 1 && plan.Sheets[0].Cuts[i].IsTrim == i < 4;
            }

            Expect.True("numbered from 1, the four trims first", inOrder);

            // 2 x 2440 x 1220 = 5,953,600; 5 x 720,000.
            Expect.Near("area of the sheets, mm2", 5953600, plan.SheetsArea.SquareMillimeters, 1e-3);
            Expect.Near("area of the pieces, mm2", 3600000, plan.PiecesArea.SquareMillimeters, 1e-3);
            Expect.Near("pieces, kept and waste make up the sheets, mm2", 5953600, plan.PiecesArea.SquareMillimeters + plan.KeptArea.SquareMillimeters + plan.Waste.SquareMillimeters, 1e-3);
        }

        private static void RoutedSheets()
        {
            // By hand: 600 + 2.4 + 400 = 1002.4 is what 1012.4 leaves when 5 are off each edge, so four pieces lie round a gap in the middle. No cut
            // from edge to edge parts them: a part that holds a piece of 600 leaves 400 beside it, and what is 400 wide holds one piece, not
            // two; three do not go in 602. So a router needs one sheet, a saw would need two.
            NestingPlan plan = SheetNesting.Nest(new NestingJob(
                new[]
                {
                    new SheetPart(Measure.Mm(600), Measure.Mm(400), 1, false), new SheetPart(Measure.Mm(400), Measure.Mm(600), 1, false),
                    new SheetPart(Measure.Mm(600), Measure.Mm(398), 1, false), new SheetPart(Measure.Mm(398), Measure.Mm(600), 1, false),
                },
                new[] { new StockSheet(Measure.Mm(1012.4), Measure.Mm(1012.4), 25.50m) },
                SheetCutting.Routed,
                kerf: Measure.Mm(2.4)));
            Expect.True("four round a gap, 25.50 proven the least", plan.Sheets.Count == 1 && plan.Cost == 25.50m && plan.Proven);
            Expect.True("a router has no cuts in order", plan.Sheets[0].Cuts.Count == 0);
        }

        private static void NestingInputIsRefused()
        {
            IReadOnlyList<InputProblem> problems = SheetNesting.Check(new NestingJob(
                new[] { new SheetPart(Measure.Mm(-1), Measure.Mm(600), 0, false), null }, new[] { new StockSheet(Measure.Mm(2440), Measure.Mm(1220), -1m) }, SheetCutting.Sawn));
            Expect.Same("all problems of a bad row", "job.Parts[0].Length job.Parts[0].Count job.Parts[1] job.Stock[0].Price", string.Join(" ", new List<InputProblem>(problems).ConvertAll(p => p.Parameter)));

            // By hand: 2500 is more than the 2430 that trimming leaves: no exception, a plan with a problem.
            NestingPlan tooLong = SheetNesting.Nest(new NestingJob(
                new[] { new SheetPart(Measure.Mm(2500), Measure.Mm(300), 1, false) }, new[] { new StockSheet(Measure.Mm(2440), Measure.Mm(1220), 40m) }, SheetCutting.Sawn));
            Expect.True("a piece longer than every sheet is a finding", tooLong.HasProblem && tooLong.Findings[0].Code == "stock-part-too-large" && tooLong.Unplaced[0].IsTooLarge && !tooLong.LeastCost.HasValue);
        }

        private static void PiecesOnARoll()
        {
            // By hand: 700 is more than half of 1370, so the three lie one behind the other: 3 x 800 = 2400. Beside them 670 are left for 600: 2 x 1150 = 2300.
            RollPlan plan = RollCutting.Cut(new RollJob(
                new[] { new RollPart(Measure.Mm(800), Measure.Mm(700), 3, false), new RollPart(Measure.Mm(1150), Measure.Mm(600), 2, false) }, Measure.Mm(1370)));
            Expect.Near("length of roll, mm", 2400, plan.Length.Millimeters, 1e-6);
            Expect.True("proven the least", plan.Proven && plan.Gap == 0);

            // 3 x 800 x 700 + 2 x 1150 x 600 = 3,060,000 of 2400 x 1370 = 3,288,000.
            Expect.Near("part of it that is used", 3060000.0 / 3288000.0, plan.Used, 1e-9);
        }

        private static void WrappedPanels()
        {
            // By hand: a gap of 1.5 all round leaves 1197 x 497; 1 of cloth at each edge, the foam trimmed flush: ply of 1195 x 495; round each edge
            // 3 of foam, 6.5 of ply and 35 turned under: 1195 + 2 x 44.5 = 1284 and 584. Foam as the ply.
            WrapPlan plan = PanelWrap.Plan(new WrapJob(Measure.Mm(1200), Measure.Mm(500), new WrapBuild(Measure.Mm(6.5), Measure.Mm(1))));
            WrappedPanel panel = plan.Panels[0];
            Expect.Near("ply of a wrapped panel, mm", 1195, panel.PlyWidth.Millimeters, 1e-6);
            Expect.Near("its height, mm", 495, panel.PlyHeight.Millimeters, 1e-6);
            Expect.Near("its cloth, mm", 1284, panel.ClothWidth.Millimeters, 1e-6);
            Expect.Near("its height, mm", 584, panel.ClothHeight.Millimeters, 1e-6);
            Expect.Near("its foam, mm", 1195, panel.FoamWidth.Millimeters, 1e-6);

            // And back: two plies of 600 are 602 each finished; 2 x 602 + 1.5 between + 2 x 1.5.
            WrapPlan suits = PanelWrap.FromPly(new[] { Measure.Mm(600), Measure.Mm(600) }, Measure.Mm(400), new WrapBuild(Measure.Mm(6.5), Measure.Mm(1)));
            Expect.Near("opening that two plies suit, mm", 1208.5, suits.OpeningWidth.Millimeters, 1e-6);
        }

        private static void PatternOnAPanel()
        {
            // By hand: cloth of 1284 x 584 starts 642 and 292 before the middle; repeats of 200 across: 800 - 642 = 158; of 320 along: 320 - 292 = 28.
            // One piece from the start of a repeat takes 28 + 584; whole repeats: 158 + 1284 in 8 x 200, 28 + 584 in 2 x 320.
            WrapPlan plan = PanelWrap.Plan(new WrapJob(Measure.Mm(1200), Measure.Mm(500), new WrapBuild(Measure.Mm(6.5), Measure.Mm(1))));
            PatternLayout layout = PatternMatch.Lay(new PatternJob(plan, Measure.Mm(320), Measure.Mm(200)));
            Expect.Near("into the repeat across, mm", 158, layout.Pieces[0].OffsetAcross.Millimeters, 1e-6);
            Expect.Near("into the repeat along, mm", 28, layout.Pieces[0].OffsetAlong.Millimeters, 1e-6);
            Expect.Near("length with the pattern, mm", 612, layout.LengthInOrder.Millimeters, 1e-6);
            Expect.Near("block across, mm", 1600, layout.Blocks[0].Across.Millimeters, 1e-6);
            Expect.Near("block along, mm", 640, layout.Blocks[0].Along.Millimeters, 1e-6);
        }

        private static void WallsIntoPanels()
        {
            PanelSplitPlan one = PanelSplit.Split(new PanelWall(Measure.Mm(2000), Measure.Mm(800), Measure.Mm(2440), Measure.Mm(1220)));
            Expect.True("a wall that a sheet covers is one panel", one.IsSplit && one.Panels.Count == 1 && one.Joints.Count == 0);
            Expect.Near("as wide as the wall, mm", 2000, one.Panels[0].Width.Millimeters, 1e-6);

            // By hand: 3400 x 800 = 2.72 m2, under the 2.9768 of a sheet: one panel by area, but it is longer than the sheet, and there is no metal to part it on.
            PanelSplitPlan none = PanelSplit.Split(new PanelWall(Measure.Mm(3400), Measure.Mm(800), Measure.Mm(2440), Measure.Mm(1220)));
            Expect.True("without metal a longer one is refused", !none.IsSplit && none.HasProblem && none.Panels.Count == 0 && none.LeastByArea == 1);
        }

        private static void FixingsOfAPanel()
        {
            // By hand: 25 in from each end leave 950. The middle row pulls 0.5 N/mm. Six bays of 158.33 would bring 79.17 N to each fixing if the panel gave way between
            // them; as a beam over seven supports (three-moment equations, solved apart from the library) it brings 88.23 N to the second, too much for 80. Over eight,
            // 135.71 apart, the second holds 75.088. Nothing pulls at the edges: 250 apart at most, 950/250 = 3.8, four bays and five fixings.
            PanelRow[] rows =
            {
                new PanelRow(Measure.Mm(0), ForcePerLength.FromNewtonsPerMillimeter(0)), new PanelRow(Measure.Mm(200), ForcePerLength.FromNewtonsPerMillimeter(0.5)),
                new PanelRow(Measure.Mm(400), ForcePerLength.FromNewtonsPerMillimeter(0)),
            };
            PanelFixingPlan plan = PanelFixings.Place(new PanelFixingJob(rows, Measure.Mm(1000), Force.FromNewtons(80)));
            Expect.Near("fixings of a panel", 18, plan.Count, 0);
            Expect.Near("apart in the middle row, mm", 135.714286, plan.Rows[1].Spacing.Value.Millimeters, 1e-6);
            Expect.Near("on the second of them, N", 75.088028, plan.Rows[1].GreatestLoad.Newtons, 1e-6);
            Expect.True("they hold", plan.Holds && plan.Rows[1].IsByStrength && !plan.Rows[0].IsByStrength);

            // By hand: 3 E I/(R a) per width with E I = 5000 x 6^3/12 = 90,000 (see the check of bent sheets): 3 x 90,000/(2000 x 200) = 0.675 N/mm at the middle row.
            BentSheet sheet = new BentSheet(Measure.Mm(6), Pressure.FromMegapascals(5000), Pressure.FromMegapascals(30));
            HoldDownResult held = HoldDown.OnArc(new HoldDownCase(sheet, Measure.Mm(2003), BentSheet.EqualRows(Measure.Mm(400), 3), Measure.Mm(1000)));
            PanelFixingJob job = PanelFixingJob.From(held, Force.FromNewtons(100));
            Expect.Near("pull of a bent panel at its middle row, N/mm", 0.675, job.Rows[1].Pull.NewtonsPerMillimeter, 1e-9);

            // As above: the second of eight holds 101.4 N of it, of nine 88.0.
            Expect.Near("fixings there", 9, PanelFixings.Place(job).Rows[1].Positions.Count, 0);
        }

        private static void PlyFromItsPlies()
        {
            // By hand: three equal plies, those across the bend count nothing. Along: 1 - 1/27 of 13,500; across: 1/27 of it.
            Veneer[] plies = { new Veneer(Measure.Mm(1.5), PlyDirection.Along), new Veneer(Measure.Mm(1.5), PlyDirection.Across), new Veneer(Measure.Mm(1.5), PlyDirection.Along) };
            LayUpBending ply = LayeredPly.InBending(new PlyLayUp(plies, Pressure.FromMegapascals(13500), Pressure.FromMegapascals(60)));
            Expect.Near("stiffness along, MPa", 13000, ply.ElasticityAlong.Megapascals, 1e-6);
            Expect.Near("stiffness across, MPa", 500, ply.ElasticityAcross.Megapascals, 1e-6);

            // The outer face reaches 60 MPa first along: f = 60 x 26/27; across it is the face of the middle ply, at a third: 60 x (1/27) x 3.
            Expect.Near("strength along, MPa", 57.777778, ply.StrengthAlong.Value.Megapascals, 1e-6);
            Expect.Near("strength across, MPa", 6.666667, ply.StrengthAcross.Value.Megapascals, 1e-6);
        }

        private static void Kerfs()
        {
            // By hand: 15 deep and 3.2 wide closes at 2 atan(1.6/15) = 12.177 degrees; 90/12.177 = 7.39: eight. The bend takes pi/2 x (300 - 3) = 466.527, an eighth is 58.316.
            KerfPlan plan = KerfBend.Plan(new KerfedPanel(Measure.Mm(300), Angle.FromDegrees(90), Measure.Mm(18), Measure.Mm(3), Measure.Mm(3.2)));
            Expect.Near("kerfs", 8, plan.Kerfs, 0);
            Expect.Near("their depth, mm", 15, plan.Depth.Millimeters, 1e-6);
            Expect.Near("from one to the next, mm", 58.316, plan.Spacing.Millimeters, 0.0005);
        }

        private static void GluedLayers()
        {
            // By hand: three equal layers give back a ninth of the curvature: 900 x 8/9 = 800.
            BentSheet layer = new BentSheet(Measure.Mm(3), Pressure.FromMegapascals(12000), Pressure.FromMegapascals(60));
            LaminationResult arch = Lamination.ToRadius(LaminatedBend.Of(layer, 3, Measure.Mm(900)));
            Expect.Near("form to aim for, mm", 800, arch.FormRadius.Value.Millimeters, 1e-6);
            Expect.Near("and off it again, mm", 900, Lamination.OnForm(LaminatedBend.Of(layer, 3, Measure.Mm(800))).Radius.Value.Millimeters, 1e-6);

            // E t/f = 12000 x 3/60 = 600 (twice the breaking E t/(2 f)) at a layer's middle; the inner one is 3 nearer the centre than the middle of all.
            Expect.Near("tightest form, mm", 603, arch.SmallestFormRadius.Millimeters, 1e-5);

            // Two loose of 6 against one of 12: 2/8 of its stiffness; glued as much.
            BentSheet thick = new BentSheet(Measure.Mm(6), Pressure.FromMegapascals(12000), Pressure.FromMegapascals(60));
            LayersComparison two = Lamination.Compare(new LayersOrSheet(layer, 2, thick, Measure.Mm(1500)));
            Expect.Near("stiffness of two loose layers", 0.25, two.LooseStiffnessRatio, 1e-9);
            Expect.Near("of two glued", 1, two.GluedStiffnessRatio, 1e-9);
        }

        private static void BowedBothWays()
        {
            // By hand, b = 400, R = 2000 and 50,000, t = 6: b^4/(16 R1 R2 t^2) = 2.56e10/5.76e10 = 4/9; the stretch is 10 x 5000 b^2/(12 x 30 R1 R2) = 2/9.
            // Strain at the edges b^2/(12 R1 R2) = 1/7500, squeezed in a bowl; b may grow to (5.76e10)^(1/4) = 489.898; R2 may shrink to 2.56e10/(16 x 2000 x 36) = 22,222.2.
            BentSheet sheet = new BentSheet(Measure.Mm(6), Pressure.FromMegapascals(5000), Pressure.FromMegapascals(30));
            BowedPanelVerdict bowl = DoubleCurvature.Judge(new BowedPanel(sheet, Measure.Mm(2000), Measure.Mm(50000), Measure.Mm(400), Measure.Mm(3000)));
            Expect.Near("share taken", 4.0 / 9, bowl.Share, 1e-9);
            Expect.Near("strain at the edges", -1.0 / 7500, bowl.EdgeStrain, 1e-12);
            Expect.Near("widest that is taken, mm", 489.898, bowl.LargestShorterSide.Millimeters, 0.0005);
            Expect.Near("tightest the other way, mm", 22222.222, bowl.SmallestAlong.Millimeters, 0.0005);
            Expect.True("it passes, a bowl", bowl.Passes && bowl.IsBowl);
        }

        private static void ScrewsIntoMetal()
        {
            // By hand: three pitches and a point of a diameter are 4.2 + 4.2 = 8.4. A length of up to 19 mm may be 0.8 less: 16 mm reach 16 - 0.8 - 6.5 - 1 = 7.7 beyond
            // when flush, 19 mm 10.7.
            FastenerSeries screws = new FastenerSeries("tapping screw 4.2", FastenerKind.WoodScrew, Measure.Mm(4.2), new[] { Measure.Mm(13), Measure.Mm(16), Measure.Mm(19), Measure.Mm(25) });
            MetalScrewChoice choice = MetalScrew.Choose(new MetalScrewJob(new Layer[] { Measure.Mm(6.5) }, Measure.Mm(1), Behind.Skin(Measure.Mm(35)), screws, Measure.Mm(1.4)));
            Expect.Near("screw into 1 mm of metal, mm", 19, choice.Chosen.Length.Nominal.Millimeters, 1e-6);
            Expect.Near("needed beyond the metal, mm", 8.4, choice.NeededBeyondMetal.Millimeters, 1e-6);
            Expect.True("its hold is not known without the metal's strength", !choice.Hold.HasValue);
        }

        private static void PullOfThinSheet()
        {
            // By hand: 0.85 x 1 x 4.2 x 270 = 963.9, a third of it 321.3; 1.5 x 1 x 10 x 270 = 4050, a third 1350.
            Expect.Near("pull-out of a screw, N", 321.3, SheetPullOut.PullOut(Measure.Mm(1), Measure.Mm(4.2), Pressure.FromMegapascals(270)).Allowable.Newtons, 1e-9);
            Expect.Near("pull-over of a clip, N", 1350, SheetPullOut.PullOver(Measure.Mm(1), Measure.Mm(10), Pressure.FromMegapascals(270)).Allowable.Newtons, 1e-9);
        }

        private static void RivetNuts()
        {
            // By hand: beyond the panel at worst 16 - 0.5 - 6.5 = 9 and 20 - 0.5 - 6.5 = 13; thread from 5 to 12: 4 and 7 shared, 5 needed. The longest reach of 20 is
            // 20 + 0.5 + 1 - 6.5 = 15 of the 1 + 30 that there are: 16 clear.
            RivetNutSize nut = new RivetNutSize("round M5", Measure.Mm(5), Measure.Mm(7), Measure.Mm(0.5), Measure.Mm(3));
            RivetNutFit fit = RivetNut.Fit(new RivetNutJob(new Layer[] { Measure.Mm(6.5) }, Measure.Mm(1), Behind.Skin(Measure.Mm(30)), nut, Measure.Mm(5), Measure.Mm(12), new[] { Measure.Mm(16), Measure.Mm(20), Measure.Mm(25) }));
            Expect.True("it grips", fit.GripFits);
            Expect.Near("machine screw for it, mm", 20, fit.Chosen.Length.Millimeters, 1e-6);
            Expect.Near("thread shared, mm", 7, fit.Chosen.WorstEngagement.Millimeters, 1e-6);
            Expect.Near("clear of the skin, mm", 16, fit.Chosen.WorstClearance.Millimeters, 1e-6);
        }

        private static void AdhesiveAndStaples()
        {
            // By hand: 6.2 m2 on both sides over 4 m2 a can.
            AdhesiveNeed need = PanelAdhesive.Needed(Area.FromSquareMeters(6.2), Area.FromSquareMeters(4));
            Expect.Near("cans", 3.1, need.Containers, 1e-9);
            Expect.Near("cans to buy", 4, need.ToBuy, 0);

            // By hand: 995/40 = 24.9 and 595/40 = 14.9: 25 and 15. A leg of 4 mm in ply of 6.1 at the thinnest leaves 2.1; the longest keeps 1.5: 4.6.
            StaplePlan staples = PanelStaples.SetOut(new StapleJob(new[] { Measure.Mm(995), Measure.Mm(995), Measure.Mm(595), Measure.Mm(595) }, TolerancedLength.PlusMinus(Measure.Mm(6.5), Measure.Mm(0.4)), Measure.Mm(4)));
            Expect.Near("staples", 80, staples.Count, 0);
            Expect.Near("ply before the point, mm", 2.1, staples.LeftBeforePoint.Millimeters, 1e-6);
            Expect.Near("longest leg, mm", 4.6, staples.LongestLeg.Value.Millimeters, 1e-6);
        }

        private static void FoamBackedOrSeparate()
        {
            // By hand: 8 x 30 = 240 against 8 x 18 + 7 x 6 = 186: 54 for the 20 minutes of one panel, 162 an hour.
            WrapVerdict verdict = WrapComparison.Compare(new WrapChoice(Area.FromSquareMeters(8), 30m, Area.FromSquareMeters(8), 18m, Area.FromSquareMeters(7), 6m));
            Expect.True("materials", verdict.BackedMaterials == 240m && verdict.SeparateMaterials == 186m);
            Expect.True("break-even rate and what is cheaper above it", verdict.BreakEvenRate == 162m && verdict.CheaperAbove == WrapAdvantage.FoamBacked && verdict.CheaperBelow == WrapAdvantage.SeparateFoam);
        }
    }
}
