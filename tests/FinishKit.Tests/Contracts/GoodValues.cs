using System;
using System.Collections.Generic;
using System.Reflection;
using UnitsNet;
using static FinishKit.Measure;

namespace FinishKit.Tests.Contracts;

/// <summary>
/// An argument that is good for every parameter of the public surface: by its name where the name asks for something of its own,
/// else by its type. A parameter of a type that is not here fails the tests, so that a new public method is entered.
/// </summary>
internal static class GoodValues
{
    private static readonly FastenerJob s_job = new([Mm(12.7), Mm(15.875)], Behind.Metal, FastenerSeries.Brad18);

    private static readonly SheetGoods s_bendable = new("6.5 mm ply", Mm(6.5), Mm(6.4), "ply")
    {
        Bending = new PlywoodBending(Mm(6.4), Pressure.FromMegapascals(12737), Pressure.FromMegapascals(4763), Pressure.FromMegapascals(50.9), Pressure.FromMegapascals(29)),
    };

    private static readonly BeamSection s_section = new(Mm(89), Mm(12.7), Pressure.FromMegapascals(8900)) { BendingStrength = Pressure.FromMegapascals(65) };

    private static readonly Beam s_beam = new(s_section, [Mm(400)]) { Displacements = [Mm(0), Mm(1)] };
    private static readonly MeasuredEdge s_edge = EdgeCurve.Through([new(Mm(10), Mm(20)), new(Mm(300), Mm(40)), new(Mm(700), Mm(41)), new(Mm(1000), Mm(20))]);
    private static readonly SlatRun s_slats = new(Mm(1516), Mm(40)) { Stations = [Mm(1448.5)] };

    private static readonly NestingJob s_nesting = new([new SheetPart(Mm(1200), Mm(600), 3, mayTurn: false), new SheetPart(Mm(640), Mm(250), 2, mayTurn: true)], [new StockSheet(Mm(2440), Mm(1220), 38.50m)], SheetCutting.Sawn) { Offcuts = [new SheetOffcut(Mm(900), Mm(700))] };
    private static readonly JointJob s_joints = new([new JointRun(2, Mm(10), Mm(3600)) { Name = "a course" }, new JointRun(3, Mm(10), Mm(3600))], [Mm(600), Mm(1200), Mm(1800), Mm(2400), Mm(3000)], [new StockBoard(Mm(2438), 9.80m)]) { Offcuts = [new BoardOffcut(Mm(1300))] };

    private static readonly Dictionary<Type, Func<object>> s_byType = new()
    {
        [typeof(bool)] = static () => false,
        [typeof(double)] = static () => 0.5,
        [typeof(int)] = static () => 4,
        [typeof(string)] = static () => "some words",
        [typeof(object)] = static () => "an object",
        [typeof(Length)] = static () => Mm(15),
        [typeof(Angle)] = static () => Angle.FromDegrees(30),
        [typeof(Mass)] = static () => Mass.FromKilograms(12),
        [typeof(Force)] = static () => Force.FromNewtons(40),
        [typeof(Density)] = static () => Density.FromKilogramsPerCubicMeter(600),
        [typeof(Temperature)] = static () => Temperature.FromDegreesCelsius(20),
        [typeof(MoistureBalance)] = static () => EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(50)),
        [typeof(RelativeHumidity)] = static () => RelativeHumidity.FromPercent(50),
        [typeof(Pressure)] = static () => Pressure.FromMegapascals(0.1),
        [typeof(Area)] = static () => Area.FromSquareMillimeters(1000),
        [typeof(TolerancedLength)] = static () => TolerancedLength.PlusMinus(Mm(12), Mm(0.5)),
        [typeof(OvendrySpecificGravity)] = static () => new OvendrySpecificGravity(0.5),
        [typeof(SpecificGravityAt12)] = static () => new SpecificGravityAt12(0.5),
        [typeof(CharacteristicDensity)] = static () => new CharacteristicDensity(350),
        [typeof(Figure)] = static () => new Figure("c", 3, "mm"),
        [typeof(Source)] = static () => Source.Supplied("a test"),
        [typeof(Layer)] = static () => new Layer(Mm(12)),
        [typeof(Behind)] = static () => Behind.Wire(Mm(40)),
        [typeof(FastenerSeries)] = static () => FastenerSeries.Brad18,
        [typeof(WoodSpecies)] = static () => WoodSpecies.Named("ponderosa pine"),
        [typeof(SheetGoods)] = static () => SheetGoods.Birch15,
        [typeof(PlywoodBending)] = static () => new PlywoodBending(Mm(6.4), Pressure.FromMegapascals(12737), Pressure.FromMegapascals(4763), Pressure.FromMegapascals(50.9), Pressure.FromMegapascals(29)),
        [typeof(BeamSection)] = static () => s_section,
        [typeof(BayQuestion)] = static () => new BayQuestion(s_section),
        [typeof(BayLimit)] = static () => BoardSpan.LargestBay(s_section),
        [typeof(Beam)] = static () => s_beam,
        [typeof(BeamLoad)] = static () => BeamLoad.Point(Mm(100), Force.FromNewtons(20)),
        [typeof(IReadOnlyList<BeamLoad>)] = static () => new[] { BeamLoad.Point(Mm(100), Force.FromNewtons(20)), BeamLoad.Uniform(ForcePerLength.FromNewtonsPerMillimeter(0.1)) },
        [typeof(BeamResponse)] = static () => ContinuousBeam.UnderLoads(s_beam, [BeamLoad.Point(Mm(100), Force.FromNewtons(20))]),
        [typeof(BeamExtremes)] = static () => ContinuousBeam.UnderPointLoad(s_beam, Force.FromNewtons(20)),
        [typeof(ForcePerLength)] = static () => ForcePerLength.FromNewtonsPerMillimeter(0.1),
        [typeof(BoardProfile)] = static () => BoardProfile.TongueAndGroove(Mm(12.7), Mm(4), Mm(4)),
        [typeof(FastenerJob)] = static () => s_job,
        [typeof(FastenerCandidate)] = static () => FastenerLength.Evaluate(s_job, Mm(25.4)),
        [typeof(FastenerChoice)] = static () => FastenerLength.Choose(s_job),
        [typeof(Eurocode5Nail)] = static () => new Eurocode5Nail(new CharacteristicDensity(350), Mm(2.5), Mm(5), Mm(12), Mm(30)),
        [typeof(WithdrawalCapacity)] = static () => WithdrawalCapacity.Supplied(Force.FromNewtons(40)),
        [typeof(HungMass)] = static () => new HungMass(Mass.FromKilograms(12), WithdrawalCapacity.Supplied(Force.FromNewtons(40))),
        [typeof(MeasuredPoint)] = static () => new MeasuredPoint(Mm(400), Mm(30)),
        [typeof(FittedCircle)] = static () => CircleFit.Through([new(Mm(0), Mm(20)), new(Mm(300), Mm(40)), new(Mm(700), Mm(41)), new(Mm(1000), Mm(20))]),
        [typeof(IReadOnlyList<MeasuredPoint>)] = static () => new MeasuredPoint[] { new(Mm(10), Mm(20)), new(Mm(300), Mm(40)), new(Mm(700), Mm(41)), new(Mm(1000), Mm(20)) },
        [typeof(CircularArc)] = static () => Arc.FromChordAndRise(Mm(1000), Mm(25)),
        [typeof(TipClearance)] = static () => FastenerLength.TipClearance(Mm(28.575), Mm(25.4), Mm(0.5), Angle.FromDegrees(0)),
        [typeof(RetentionCount)] = static () => Retention.FastenersNeeded(Mass.FromKilograms(12), WithdrawalCapacity.Supplied(Force.FromNewtons(40))),
        [typeof(IReadOnlyList<Figure>)] = static () => new Figure[] { new("a", 1, "mm"), new("b", 2, "mm") },
        [typeof(IReadOnlyList<WorkingStep>)] = static () => new WorkingStep[] { new("sum", "a + b", "a + b", [new("a", 1, "mm"), new("b", 2, "mm")], new("c", 3, "mm"), Source.Supplied("a test")) },
        [typeof(IReadOnlyList<TolerancedLength>)] = static () => new TolerancedLength[] { Mm(12), Mm(15) },
        [typeof(IReadOnlyList<Layer>)] = static () => new Layer[] { Mm(12.7), Mm(15.875) },
        [typeof(IReadOnlyList<Length>)] = static () => new[] { Mm(20), Mm(30) },
        [typeof(IReadOnlyList<LengthTolerance>)] = static () => new LengthTolerance[] { new(Mm(25), Mm(0.5)), new(Mm(50), Mm(1)) },
        [typeof(IReadOnlyList<SheetGoods>)] = static () => new[] { SheetGoods.Birch15, SheetGoods.Birch18 },
        [typeof(IReadOnlyList<FastenerSeries>)] = static () => new[] { FastenerSeries.Pin23, FastenerSeries.Brad18 },
        [typeof(IReadOnlyList<FastenerCandidate>)] = static () => new[] { FastenerLength.Evaluate(s_job, Mm(25.4)) },
        [typeof(IReadOnlyList<Remedy>)] = static () => Array.Empty<Remedy>(),
        [typeof(IReadOnlyList<Finding>)] = static () => Array.Empty<Finding>(),
        [typeof(IReadOnlyList<DefaultUsed>)] = static () => Array.Empty<DefaultUsed>(),

        // Panels
        [typeof(BentSheet)] = static () => BentSheet.Of(s_bendable, BendGrain.AlongTheAxis),
        [typeof(BendRadius)] = static () => PanelBend.MinimumRadius(BentSheet.Of(s_bendable, BendGrain.AlongTheAxis)),
        [typeof(BendCase)] = static () => new BendCase(BentSheet.Of(s_bendable, BendGrain.AlongTheAxis), Mm(2216)) { Rows = [Mm(0), Mm(176), Mm(352)], BowAlong = Mm(57_800), Girth = Mm(352), Width = Mm(1200) },
        [typeof(HoldDownCase)] = static () => new HoldDownCase(BentSheet.Of(s_bendable, BendGrain.AlongTheAxis), Mm(2216), [Mm(0), Mm(176), Mm(352)], Mm(1200)) { Girth = Mm(352), FixingsPerRow = 6, FixingCapacity = Force.FromNewtons(60) },
        [typeof(BentStripCase)] = static () => new BentStripCase(s_bendable, Mm(3818), [Mm(0), Mm(758), Mm(1516)]),
        [typeof(PublishedBendingRadius)] = static () => PublishedBendingRadius.For(BendingRadiusSeries.SoftwoodPlywood, Mm(6.4), BendGrain.AlongTheAxis, BendCondition.DryCold)!,

        // Strips
        [typeof(RibLine)] = static () => new RibLine(Mm(480), Mm(25)),
        [typeof(StripRun)] = static () => new StripRun(Mm(3400), [Mm(20), Mm(3380)], Mm(475)) { Ribs = [new RibLine(Mm(480), Mm(25)), new RibLine(Mm(950), Mm(20))] },
        [typeof(PlacedStrip)] = static () => new PlacedStrip(Mm(480), StripKind.OnRib, 0),
        [typeof(StripLayout)] = static () => StripSpacing.Space(new StripRun(Mm(3400), [Mm(20), Mm(3380)], Mm(475))),
        [typeof(IReadOnlyList<RibLine>)] = static () => new[] { new RibLine(Mm(480), Mm(25)), new RibLine(Mm(950), Mm(20)) },
        [typeof(IReadOnlyList<PlacedStrip>)] = static () => new[] { new PlacedStrip(Mm(20), StripKind.Fixed, null), new PlacedStrip(Mm(480), StripKind.OnRib, 0) },
        [typeof(StripPart)] = static () => new StripPart(Mm(40), Mm(994)) { Count = 12 },
        [typeof(RippingJob)] = static () => new RippingJob(Mm(2500), Mm(1250), [new StripPart(Mm(40), Mm(994)) { Count = 12 }]),
        [typeof(RippingPlan)] = static () => StripRipping.Rip(new RippingJob(Mm(2500), Mm(1250), [new StripPart(Mm(40), Mm(994)) { Count = 12 }])),
        [typeof(IReadOnlyList<StripPart>)] = static () => new[] { new StripPart(Mm(40), Mm(994)) { Count = 12 }, new StripPart(Mm(70), Mm(2400)) },

        // Layout of a face
        [typeof(FaceOpening)] = static () => new FaceOpening(Mm(500), Mm(1400), Mm(230), Mm(610)),
        [typeof(FaceBreak)] = static () => new FaceBreak(Mm(700), UnitsNet.Angle.FromDegrees(9.5)),
        [typeof(FurnitureStop)] = static () => new FurnitureStop(Mm(2000), Mm(2600), Mm(100)),
        [typeof(ShellMember)] = static () => new ShellMember(Mm(480), Mm(50)) { From = Mm(0), To = Mm(900), Setback = Mm(2) },
        [typeof(FurringFace)] = static () => new FurringFace(Mm(3400), Mm(994), Mm(475))
        {
            Openings = [new FaceOpening(Mm(500), Mm(1400), Mm(230), Mm(610))],
            Breaks = [new FaceBreak(Mm(700), UnitsNet.Angle.FromDegrees(9.5))],
            Stops = [new FurnitureStop(Mm(2000), Mm(2600), Mm(100))],
            Ribs = [new ShellMember(Mm(480), Mm(50)), new ShellMember(Mm(1420), Mm(50))],
            Rails = [new ShellMember(Mm(200), Mm(40)), new ShellMember(Mm(700), Mm(80))],
            ButtJoints = [Mm(1700)],
        },
        [typeof(IReadOnlyList<FaceOpening>)] = static () => new[] { new FaceOpening(Mm(500), Mm(1400), Mm(230), Mm(610)) },
        [typeof(IReadOnlyList<FaceBreak>)] = static () => new[] { new FaceBreak(Mm(700), UnitsNet.Angle.FromDegrees(9.5)) },
        [typeof(IReadOnlyList<FurnitureStop>)] = static () => new[] { new FurnitureStop(Mm(2000), Mm(2600), Mm(100)) },
        [typeof(IReadOnlyList<ShellMember>)] = static () => new[] { new ShellMember(Mm(480), Mm(50)) { Setback = Mm(2) }, new ShellMember(Mm(700), Mm(50)) },
        [typeof(FurringPlan)] = static () => FurringLayout.LayOut(new FurringFace(Mm(3400), Mm(994), Mm(475))),

        // Slats
        [typeof(SlatRun)] = static () => s_slats,
        [typeof(SlatChoice)] = static () => SlatSpread.Spread(s_slats),
        [typeof(SlatCount)] = static () => SlatSpread.Spread(s_slats).Recommended!,
        [typeof(SlatSetOut)] = static () => SlatSpread.Spread(s_slats).Recommended!.SetOut(),
        [typeof(SlatMark)] = static () => SlatSpread.Spread(s_slats).Recommended!.SetOut().Marks[1],
        [typeof(SlatFit)] = static () => SlatCurve.Fit(Mm(3818), Mm(40), Mm(10), Mm(8)),

        // Joints
        [typeof(StockBoard)] = static () => new StockBoard(Mm(2438), 9.80m),
        [typeof(IReadOnlyList<StockBoard>)] = static () => new[] { new StockBoard(Mm(2438), 9.80m) },
        [typeof(BoardOffcut)] = static () => new BoardOffcut(Mm(1300)),
        [typeof(IReadOnlyList<BoardOffcut>)] = static () => new[] { new BoardOffcut(Mm(1300)) },
        [typeof(JointRun)] = static () => new JointRun(2, Mm(10), Mm(3600)) { Name = "a course" },
        [typeof(IReadOnlyList<JointRun>)] = static () => new[] { new JointRun(2, Mm(10), Mm(3600)), new JointRun(3, Mm(10), Mm(3600)) },
        [typeof(JointJob)] = static () => s_joints,
        [typeof(JointLayout)] = static () => BoardJoints.Choose(s_joints),
        // Cutting boards
        [typeof(decimal)] = static () => 9.80m,
        [typeof(System.Threading.CancellationToken)] = static () => System.Threading.CancellationToken.None,
        [typeof(IProgress<double>)] = static () => new Progress<double>(),
        [typeof(BoardPart)] = static () => new BoardPart(Mm(1820), 4) { Name = "course 3" },
        [typeof(StockBoard)] = static () => new StockBoard(Mm(2438), 9.80m) { Pack = 2, Available = 20 },
        [typeof(BoardOffcut)] = static () => new BoardOffcut(Mm(900)) { Count = 2 },
        [typeof(IReadOnlyList<BoardPart>)] = static () => new[] { new BoardPart(Mm(1820), 4), new BoardPart(Mm(640), 3) },
        [typeof(IReadOnlyList<StockBoard>)] = static () => new[] { new StockBoard(Mm(2438), 9.80m), new StockBoard(Mm(3048), 12.60m) },
        [typeof(IReadOnlyList<BoardOffcut>)] = static () => new[] { new BoardOffcut(Mm(900)) },
        [typeof(CuttingJob)] = static () => new CuttingJob([new BoardPart(Mm(1820), 4), new BoardPart(Mm(640), 3)], [new StockBoard(Mm(2438), 9.80m)]) { Offcuts = [new BoardOffcut(Mm(900))] },
        [typeof(CuttingPlan)] = static () => BoardCutting.Cut(new CuttingJob([new BoardPart(Mm(1820), 4), new BoardPart(Mm(640), 3)], [new StockBoard(Mm(2438), 9.80m)])),
        [typeof(EndCut)] = static () => EndCuts.Schedule((EndCutJob)Of(typeof(EndCutJob))).Courses[0],
        [typeof(RunEnd)] = static () => ((CoursePlan)Of(typeof(CoursePlan))).Runs()[0].EndsAt!,

        // Courses
        [typeof(BoardCover)] = static () => BoardCover.TongueAndGroove(Mm(97), Mm(8), Mm(1)),
        [typeof(CourseBreak)] = static () => CourseBreaks.Judge(Mm(89), Angle.FromDegrees(3.5)),
        [typeof(IReadOnlyList<CourseRule>)] = static () => new[] { CourseRule.WholeAtFoot, CourseRule.Balanced },
        [typeof(CourseFace)] = static () => new CourseFace(Mm(3400), Mm(994), BoardCover.TongueAndGroove(Mm(97), Mm(8), Mm(1)))
        {
            GirthAtFront = Mm(990),
            GirthAtRear = Mm(985),
            Openings = [new FaceOpening(Mm(500), Mm(1400), Mm(230), Mm(610))],
            Breaks = [new FaceBreak(Mm(700), UnitsNet.Angle.FromDegrees(9.5))],
            BandRules = [CourseRule.WholeAtFoot, CourseRule.Balanced],
            BreakLimit = UnitsNet.Angle.FromDegrees(5),
            SetOutError = Mm(2),
            LeastCourse = Mm(45),
        },
        [typeof(CoursePlan)] = static () => CourseLayout.LayOut(new CourseFace(Mm(3400), Mm(994), BoardCover.SquareEdged(Mm(89), Mm(0)))),
        // Shape of the shell
        [typeof(WallProfile)] = static () => ProfileBreaks.Find([new(Mm(860), Mm(7)), new(Mm(1060), Mm(14)), new(Mm(1500), Mm(56)), new(Mm(1840), Mm(147))]),
        [typeof(Direction)] = static () => new Direction(0, 1, 0),
        [typeof(CompoundSetting)] = static () => CompoundCut.OfSides(4, Angle.FromDegrees(45)),
        [typeof(SurfacePoint)] = static () => new SurfacePoint(Mm(400), Mm(300), Mm(30)),
        [typeof(IReadOnlyList<SurfacePoint>)] = static () => new SurfacePoint[] { new(Mm(10), Mm(10), Mm(20)), new(Mm(1000), Mm(10), Mm(22)), new(Mm(10), Mm(500), Mm(21)), new(Mm(1000), Mm(500), Mm(26)) },
        [typeof(PackedLine)] = static () => Flattening.Line([new(Mm(10), Mm(20)), new(Mm(300), Mm(40)), new(Mm(700), Mm(41))]),
        [typeof(PackedPlane)] = static () => Flattening.Plane([new(Mm(10), Mm(10), Mm(20)), new(Mm(1000), Mm(10), Mm(22)), new(Mm(10), Mm(500), Mm(21)), new(Mm(1000), Mm(500), Mm(26))]),
        // Edges and end cuts
        [typeof(MeasuredEdge)] = static () => s_edge,
        [typeof(EndCutJob)] = static () => new EndCutJob(s_edge, [Mm(100), Mm(189), Mm(278), Mm(367)], Mm(3300)) { ScribeTolerance = Mm(0.4), HiddenWidth = Mm(6) },
        // Nesting on sheets, and rolls
        [typeof(SheetPart)] = static () => new SheetPart(Mm(1200), Mm(600), 3, mayTurn: true) { Name = "upper wall" },
        [typeof(StockSheet)] = static () => new StockSheet(Mm(2440), Mm(1220), 38.50m) { Available = 20 },
        [typeof(SheetOffcut)] = static () => new SheetOffcut(Mm(900), Mm(700)) { Count = 2 },
        [typeof(IReadOnlyList<SheetPart>)] = static () => new[] { new SheetPart(Mm(1200), Mm(600), 3, mayTurn: false), new SheetPart(Mm(640), Mm(250), 2, mayTurn: true) },
        [typeof(IReadOnlyList<StockSheet>)] = static () => new[] { new StockSheet(Mm(2440), Mm(1220), 38.50m), new StockSheet(Mm(3050), Mm(1525), 61m) },
        [typeof(IReadOnlyList<SheetOffcut>)] = static () => new[] { new SheetOffcut(Mm(900), Mm(700)) },
        [typeof(NestingJob)] = static () => s_nesting,
        [typeof(NestingPlan)] = static () => SheetNesting.Nest(s_nesting),
        [typeof(RollPart)] = static () => new RollPart(Mm(1100), Mm(900), 2, mayTurn: false) { Name = "upper wall" },
        [typeof(IReadOnlyList<RollPart>)] = static () => new[] { new RollPart(Mm(1100), Mm(900), 2, mayTurn: false), new RollPart(Mm(700), Mm(480), 3, mayTurn: true) },
        [typeof(RollJob)] = static () => new RollJob([new RollPart(Mm(1100), Mm(900), 2, mayTurn: false)], Mm(1400)) { Selvedge = Mm(10), Between = Mm(5), SoldBy = Mm(100) },
        [typeof(RollPlan)] = static () => RollCutting.Cut(new RollJob([new RollPart(Mm(1100), Mm(900), 2, mayTurn: false)], Mm(1400))),
        [typeof(EndCutSchedule)] = static () => EndCuts.Schedule(new EndCutJob(s_edge, [Mm(100), Mm(189), Mm(278), Mm(367)], Mm(3300))),
        // Movement
        [typeof(DimensionalChangeCoefficient)] = static () => DimensionalChange.FromShrinkage(7.5),
        [typeof(WidthChange)] = static () => BoardMovement.OfWidth(Mm(140), DimensionalChange.FromShrinkage(7.5), 8, 12),
        [typeof(LengthMovement)] = static () => BoardMovement.AlongTheGrain(Mm(3400), 80, 9, 6),
        [typeof(BoardMovementJob)] = static () => new BoardMovementJob(BoardCover.TongueAndGroove(Mm(97), Mm(8), Mm(1)), DimensionalChange.FromShrinkage(7.5))
        {
            Boards = 11,
            FittingMoisture = 10,
            DriestMoisture = 7,
            WettestMoisture = 13,
            LeastGap = Mm(0.8),
            EndGap = Mm(2.5),
            LeastCovered = Mm(3),
        },
        [typeof(SeasonMovement)] = static () => BoardMovement.OverSeason(new BoardMovementJob(BoardCover.SquareEdged(Mm(89), Mm(1)), DimensionalChange.FromShrinkage(7.5))),

        // Wrapped panels
        [typeof(PanelWindow)] = static () => new PanelWindow(new FaceOpening(Mm(500), Mm(900), Mm(200), Mm(400))) { CornerRadius = Mm(70) },
        [typeof(IReadOnlyList<PanelWindow>)] = static () => new[] { new PanelWindow(new FaceOpening(Mm(500), Mm(900), Mm(200), Mm(400))) { CornerRadius = Mm(70) } },
        [typeof(WrapBuild)] = static () => new WrapBuild(Mm(6.5), Mm(0.9)) { FoamThickness = Mm(4), TurnUnder = Mm(30), Nap = NapDirection.TowardTop },
        [typeof(WrapJob)] = static () => new WrapJob(Mm(1200), Mm(600), new WrapBuild(Mm(6.5), Mm(0.9)) { FoamThickness = Mm(4), TurnUnder = Mm(30), Nap = NapDirection.TowardTop }) { Windows = [new PanelWindow(new FaceOpening(Mm(500), Mm(900), Mm(200), Mm(400))) { CornerRadius = Mm(70) }] },
        [typeof(WrappedPanel)] = static () => PanelWrap.Plan(new WrapJob(Mm(1806), Mm(500), new WrapBuild(Mm(6.5), Mm(0.9)))).Panels[0],
        [typeof(WrapPlan)] = static () => PanelWrap.Plan(new WrapJob(Mm(1806), Mm(500), new WrapBuild(Mm(6.5), Mm(0.9)) { Nap = NapDirection.TowardTop }) { Panels = 3 }),

        // Pattern, adhesive, staples, comparison of wrapped panels
        [typeof(TimeSpan)] = static () => TimeSpan.FromHours(3),
        [typeof(PatternJob)] = static () => new PatternJob(PanelWrap.Plan(new WrapJob(Mm(1806), Mm(500), new WrapBuild(Mm(6.5), Mm(0.9)) { Nap = NapDirection.TowardTop }) { Panels = 3 }), Mm(320), Mm(200)),
        [typeof(PatternLayout)] = static () => PatternMatch.Lay(new PatternJob(PanelWrap.Plan(new WrapJob(Mm(1806), Mm(500), new WrapBuild(Mm(6.5), Mm(0.9)) { Nap = NapDirection.TowardTop }) { Panels = 3 }), Mm(320), Mm(200))),
        [typeof(AdhesiveNeed)] = static () => PanelAdhesive.Needed(Area.FromSquareMeters(6.2)),
        [typeof(StapleJob)] = static () => new StapleJob([Mm(995), Mm(595)], TolerancedLength.PlusMinus(Mm(6.5), Mm(0.4)), Mm(5)) { UnderCrown = Mm(0.9) },
        [typeof(StaplePlan)] = static () => PanelStaples.SetOut(new StapleJob([Mm(995), Mm(595)], TolerancedLength.PlusMinus(Mm(6.5), Mm(0.4)), Mm(5))),
        [typeof(WrapChoice)] = static () => new WrapChoice(Area.FromSquareMeters(8), 30m, Area.FromSquareMeters(8), 18m, Area.FromSquareMeters(7), 6m) { Panels = 9 },
        [typeof(WrapVerdict)] = static () => WrapComparison.Compare(new WrapChoice(Area.FromSquareMeters(8), 30m, Area.FromSquareMeters(8), 18m, Area.FromSquareMeters(7), 6m) { Panels = 9 }),
        // Fixings into thin metal
        [typeof(SheetHold)] = static () => SheetPullOut.PullOut(Mm(1), Mm(4.2), Pressure.FromMegapascals(270)),
        [typeof(MetalScrewJob)] = static () => FixingSamples.Screw with
        {
            SetDepth = Mm(0.5),
            LengthTolerance = Mm(0.4),
            ThreadsBeyond = 2,
            Point = Mm(4),
            RequiredClearance = Mm(6),
            MetalStrength = Pressure.FromMegapascals(270),
            HeadHold = Force.FromNewtons(200),
            PilotHole = Mm(3.4),
        },
        [typeof(MetalScrewChoice)] = static () => MetalScrew.Choose(FixingSamples.Screw),
        [typeof(RivetNutSize)] = static () => FixingSamples.Nut,
        [typeof(RivetNutJob)] = static () => FixingSamples.NutJob with
        {
            Paint = Mm(0.2),
            MatingSheet = Mm(0.5),
            Flange = Mm(1),
            UnsetDepth = Mm(16),
            SetDepth = Mm(0.5),
            LengthTolerance = Mm(0.3),
            Engagement = 1.2,
            RequiredClearance = Mm(6),
            NutHold = Force.FromNewtons(300),
            Pitch = Mm(0.8),
        },
        [typeof(RivetNutFit)] = static () => RivetNut.Fit(FixingSamples.NutJob),
        [typeof(HoldDownResult)] = static () => HoldDown.OnArc((HoldDownCase)Of(typeof(HoldDownCase))),
        [typeof(PanelRow)] = static () => new PanelRow(Mm(20), ForcePerLength.FromNewtonsPerMillimeter(0.675)),
        [typeof(IReadOnlyList<PanelRow>)] = static () => FixingSamples.Fixings.Rows,
        [typeof(PanelFixingJob)] = static () => FixingSamples.Fixings with { Girth = Mm(420), HungMass = Mass.FromKilograms(3), Acceleration = 3, EdgeDistance = Mm(20), GreatestSpacing = Mm(200) },
        [typeof(PanelFixingPlan)] = static () => PanelFixings.Place(FixingSamples.Fixings),
        // Plywood by its plies
        [typeof(Veneer)] = static () => new Veneer(Mm(1.4), PlyDirection.Across) { Elasticity = Pressure.FromMegapascals(16_000), BendingStrength = Pressure.FromMegapascals(65) },
        [typeof(IReadOnlyList<Veneer>)] = static () => new[] { new Veneer(Mm(1.1), PlyDirection.Along), new Veneer(Mm(1.4), PlyDirection.Across), new Veneer(Mm(1.1), PlyDirection.Along) },
        [typeof(PlyLayUp)] = static () => PlyLayUp.Birch(Mm(6.4), 5) with { CrossRatio = 0.03, CrossStrength = Pressure.FromMegapascals(5) },
        [typeof(LayUpBending)] = static () => LayeredPly.InBending(PlyLayUp.Birch(Mm(6.4), 5)),
        // Bowed both ways
        [typeof(BowedPanel)] = static () => new BowedPanel(BentSheet.Of(s_bendable, BendGrain.AlongTheAxis), Mm(2216), Mm(57_800), Mm(352), Mm(3400)),
        [typeof(BowedPanelVerdict)] = static () => DoubleCurvature.Judge(new BowedPanel(BentSheet.Of(s_bendable, BendGrain.AlongTheAxis), Mm(2216), Mm(57_800), Mm(352), Mm(3400))),
        // Layers over a form
        [typeof(IReadOnlyList<BentSheet>)] = static () => new[] { BentSheet.Of(s_bendable, BendGrain.AlongTheAxis), BentSheet.Of(s_bendable, BendGrain.AlongTheAxis) },
        [typeof(LaminatedBend)] = static () => LaminatedBend.Of(BentSheet.Of(s_bendable, BendGrain.AlongTheAxis), 3, Mm(1500)) with { StretchRatio = 1.6 },
        [typeof(LayersOrSheet)] = static () => new LayersOrSheet(BentSheet.Of(s_bendable, BendGrain.AroundTheCurve), 2, BentSheet.Of(SheetGoods.Birch12, BendGrain.AroundTheCurve), Mm(3818)) { Rows = [Mm(0), Mm(758), Mm(1516)], StretchRatio = 0.77, Density = Density.FromKilogramsPerCubicMeter(680) },
        [typeof(LaminationResult)] = static () => Lamination.ToRadius(LaminatedBend.Of(BentSheet.Of(s_bendable, BendGrain.AlongTheAxis), 3, Mm(1500))),
        [typeof(LayersComparison)] = static () => Lamination.Compare(new LayersOrSheet(BentSheet.Of(s_bendable, BendGrain.AroundTheCurve), 2, BentSheet.Of(SheetGoods.Birch12, BendGrain.AroundTheCurve), Mm(3818))),
        // Kerfs
        [typeof(KerfedPanel)] = static () => new KerfedPanel(Mm(300), Angle.FromDegrees(90), TolerancedLength.PlusMinus(Mm(18), Mm(0.4)), Mm(3), Mm(3.2)) { DepthError = Mm(0.2), WebSheet = BentSheet.Of(s_bendable, BendGrain.AlongTheAxis) },
        [typeof(KerfPlan)] = static () => KerfBend.Plan(new KerfedPanel(Mm(300), Angle.FromDegrees(90), Mm(18), Mm(3), Mm(3.2))),
        [typeof(PanelJointLine)] = static () => new PanelJointLine(Mm(300), Mm(60)),
        [typeof(IReadOnlyList<PanelJointLine>)] = static () => new[] { new PanelJointLine(Mm(300), Mm(60)) },
        [typeof(PanelWall)] = static () => FixingSamples.Wall with
        {
            Grain = PanelGrainDirection.Either,
            Reveal = Mm(2),
            Landing = Mm(10),
            CornerDistance = Mm(40),
            LeastPanel = Mm(100),
            MostLength = Mm(2400),
            SquareMetreMass = Mass.FromKilograms(5),
            Effort = 100_000,
        },
        [typeof(PanelSplitPlan)] = static () => PanelSplit.Split(FixingSamples.Wall),
    };

    /// <summary>By method and parameter, where a value of the right type is not enough.</summary>
    private static readonly Dictionary<string, object> s_byName = new(StringComparer.Ordinal)
    {
        ["Arc.chord"] = Mm(300),
        ["BeamSection.sheet"] = SheetGoods.Birch15,
        ["BeamSection.elasticity"] = Pressure.FromMegapascals(9000),
        ["Arc.rise"] = Mm(20),
        ["Arc.radius"] = Mm(5000),
        ["Arc.arcLength"] = Mm(310),
        ["BoardProfile.tongue"] = (TolerancedLength)Mm(4),
        ["BoardProfile.backShoulder"] = (TolerancedLength)Mm(4),
        ["BoardProfile.overLap"] = (TolerancedLength)Mm(6),
        ["BoardProfile.underLap"] = (TolerancedLength)Mm(6),
        ["FastenerSeries.shank"] = Mm(1.2),
        ["FastenerSeries.name"] = "18 ga brad",
        ["FastenerSeries.number"] = 8,
        ["Layer.compressed"] = (TolerancedLength)Mm(1),
        ["LengthTolerance.deviation"] = Mm(0.5),
        ["Measure.text"] = "19 mm",
        ["Measure.inches"] = "5/8",
        ["PlywoodBending.elasticityAlong"] = Pressure.FromMegapascals(12737),
        ["PlywoodBending.elasticityAcross"] = Pressure.FromMegapascals(4763),
        ["PlywoodKind.name"] = PlywoodKind.All[0].Name,
        ["SheetGoods.name"] = "15 mm birch plywood sanded",
        ["SpeciesCombination.name"] = SpeciesCombination.All[0].Name,
        ["StrengthClass.name"] = StrengthClass.All[0].Name,
        ["TolerancedLength.least"] = Mm(14),
        ["TolerancedLength.greatest"] = Mm(15),
        ["TolerancedLength.lower"] = Mm(-0.5),
        ["TolerancedLength.upper"] = Mm(0.5),
        ["StripSpacing.runLength"] = Mm(1960),
        ["StripSpacing.largestBay"] = Mm(475),
        ["WorkingStep.formula"] = "a + b",
        ["WoodSpecies.Elasticity"] = Pressure.FromMegapascals(10000),
        ["WoodSpecies.BendingStrength"] = Pressure.FromMegapascals(70),
        ["WoodSpecies.RadialShrinkage"] = 4.0,
        ["WoodSpecies.TangentialShrinkage"] = 7.0,
        ["WoodSpecies.ShrinkageStart"] = 30.0,
        ["WoodSpecies.RadialMovement"] = 0.0015,
        ["WoodSpecies.TangentialMovement"] = 0.0025,
        ["WoodSpecies.name"] = WoodSpecies.All[0].Name,
        ["CharacteristicDensity.kilogramsPerCubicMetre"] = 350.0,
        ["FastenerLength.setDepth"] = Mm(1),
        ["Withdrawal.shank"] = Mm(2.5),
        ["Withdrawal.penetration"] = Mm(30),
        ["Withdrawal.pointPenetration"] = Mm(30),
        ["Withdrawal.threadDiameter"] = Mm(6),
        ["Withdrawal.threadPenetration"] = Mm(40),
        ["BentSheet.sheet"] = s_bendable,
        ["BentSheet.elasticity"] = Pressure.FromMegapascals(4763),
        ["BentSheet.bendingStrength"] = Pressure.FromMegapascals(29),
        ["BentSheet.girth"] = Mm(352),
        ["BentStripCase.sheet"] = s_bendable,
        ["BentStripCase.bowRadius"] = Mm(3818),
        ["BendCase.wallRadius"] = Mm(2216),
        ["HoldDownCase.wallRadius"] = Mm(2216),
        ["HoldDownCase.width"] = Mm(1200),
        ["HoldDown.wallRadius"] = Mm(2216),
        ["SlatSpread.width"] = Mm(1500),
        ["SlatSpread.slatWidth"] = Mm(40),
        ["SlatSpread.leastGap"] = Mm(6),
        ["SlatSpread.greatestGap"] = Mm(10),
        ["SlatCurve.radius"] = Mm(3818),
        ["SlatCount.radius"] = Mm(3818),
        ["SlatCount.station"] = 0,
        ["BoardJoints.progress"] = new Progress<double>(),
        ["BoardJoints.cancellation"] = System.Threading.CancellationToken.None,
        ["BoardCover.width"] = Mm(97),
        ["BoardCover.tongue"] = Mm(8),
        ["BoardCover.lap"] = Mm(8),
        ["BoardCover.gap"] = Mm(1),
        ["BoardCover.reveal"] = Mm(1),
        ["ProfileBreaks.penalty"] = Area.FromSquareMillimeters(4),
        ["ProfileBreaks.bands"] = 2,
        ["CompoundCut.axis"] = new Direction(-1, 0, 0),
        ["CompoundCut.otherFace"] = new Direction(1, 0, 0),
        ["CompoundCut.otherAxis"] = new Direction(0, -1, 0),
        ["WallProfile.height"] = Mm(1200),
        ["WallProfile.girth"] = Mm(300),
        ["WallProfile.distance"] = Mm(25.4),
        ["LaminatedBend.radius"] = Mm(1500),
        ["LayersOrSheet.wallRadius"] = Mm(3818),
        ["KerfedPanel.outerRadius"] = Mm(300),
        ["KerfedPanel.web"] = Mm(3),
        ["KerfedPanel.kerf"] = Mm(3.2),
        ["Veneer.plies"] = 5,
        ["Veneer.innerPly"] = Mm(1.4),
        ["PlyLayUp.plies"] = 5,
        ["PlyLayUp.elasticity"] = Pressure.FromMegapascals(17_500),
        ["PlyLayUp.bendingStrength"] = Pressure.FromMegapascals(70),
        ["EdgeCurve.upper"] = new MeasuredPoint(Mm(1000), Mm(60)),
        ["EquilibriumMoisture.moistureContent"] = 9.0,
        ["DimensionalChange.shrinkage"] = 7.5,
        ["DimensionalChange.shrinkageStart"] = 28.0,
        ["DimensionalChange.takenAt"] = 12.0,
        ["DimensionalChangeCoefficient.coefficient"] = 0.0025,
        ["BoardMovement.fromMoisture"] = 8.0,
        ["BoardMovement.toMoisture"] = 12.0,
        ["BoardMovement.warming"] = 40.0,
        ["PanelAdhesive.surfaces"] = 2,
        ["WrapJob.course"] = 0,
        ["PanelAdhesive.covered"] = Area.FromSquareMeters(4),
        ["SheetPullOut.sheet"] = Mm(1),
        ["SheetPullOut.diameter"] = Mm(4.2),
        ["SheetPullOut.head"] = Mm(9),
        ["SheetPullOut.strength"] = Pressure.FromMegapascals(270),
        ["MetalScrewJob.metal"] = (TolerancedLength)Mm(1),
        ["MetalScrewJob.pitch"] = Mm(1.4),
        ["RivetNutSize.thread"] = Mm(5),
        ["RivetNutSize.hole"] = Mm(7),
        ["RivetNutSize.leastGrip"] = Mm(0.5),
        ["RivetNutSize.mostGrip"] = Mm(3),
        ["RivetNutJob.metal"] = (TolerancedLength)Mm(1),
        ["RivetNutJob.threadFrom"] = Mm(5),
        ["RivetNutJob.threadTo"] = Mm(12),
        ["RivetNutJob.screws"] = new[] { Mm(16), Mm(20), Mm(25) },
        ["PanelFixingJob.width"] = Mm(1000),
        ["PanelWall.length"] = Mm(3400),
        ["PanelWall.girth"] = Mm(994),
        ["PanelWall.sheetLength"] = Mm(2440),
        ["PanelWall.sheetWidth"] = Mm(1220),
        ["PanelFixingJob.hold"] = Force.FromNewtons(100),
        ["CoursePlan.oneEnd"] = EndsOf((CoursePlan)Of(typeof(CoursePlan)), 3400, 0),
        ["CoursePlan.otherEnd"] = EndsOf((CoursePlan)Of(typeof(CoursePlan)), 10, 3400),
    };

    private static EndCutSchedule EndsOf(CoursePlan plan, double edge, double datum) =>
        EndCuts.Schedule(new EndCutJob(EdgeCurve.Straight(new(Mm(0), Mm(edge)), new(Mm(994), Mm(edge))), plan.Lines, Mm(datum)));

    internal static object Of(MethodBase method, ParameterInfo parameter)
    {
        Type type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        string name = method.DeclaringType!.Name + "." + (method.Name.StartsWith("set_", StringComparison.Ordinal) ? method.Name["set_".Length..] : parameter.Name);
        return s_byName.TryGetValue(name, out object? named) && type.IsInstanceOfType(named)
            ? named
            : Of(parameter.ParameterType);
    }

    internal static object Of(Type type)
    {
        Type value = Nullable.GetUnderlyingType(type) ?? type;
        if (value.IsEnum)
        {
            return Enum.GetValues(value).GetValue(0)!;
        }

        return s_byType.TryGetValue(value, out Func<object>? make)
            ? make()
            : throw new InvalidOperationException($"GoodValues has no good value of {type}: enter one, so that the table of bad input covers what takes it.");
    }

    /// <summary>An instance to call a public method on.</summary>
    internal static object? Target(MethodBase method) => method.IsStatic || method.IsConstructor ? null
        : method.IsSpecialName ? Fresh(method.DeclaringType!)
        : TargetOf(method.DeclaringType!);

    /// <summary>One to set members of: never a row of a table, which everybody shares.</summary>
    private static object Fresh(Type type) => type == typeof(FastenerSeries) ? new FastenerSeries("a series", FastenerKind.SmoothNail, Mm(1.2), [Mm(20), Mm(30)])
        : type == typeof(SheetGoods) ? new SheetGoods("a sheet", Mm(15), Mm(14.6), "a family")
        : type == typeof(WoodSpecies) ? new WoodSpecies("a species", true, new SpecificGravityAt12(0.5))
        : type == typeof(PlywoodBending) ? (PlywoodBending)s_byType[typeof(PlywoodBending)]()
        : type == typeof(Figure) ? new Figure("a-figure", 3, "mm")
        : throw new InvalidOperationException($"GoodValues has no fresh {type} to set members of: enter one.");

    private static object TargetOf(Type type) => type == typeof(Workings) ? FastenerLength.Choose(s_job).Explain()
        : type == typeof(Remedy) ? FastenerLength.ThinnestFurring(s_job, Mm(25.4))!
        : Of(type);
}
