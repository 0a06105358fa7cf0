using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using UnitsNet;
using UnitsNet.Units;
using static FinishKit.Measure;

namespace FinishKit.Tests.Contracts;

/// <summary>Results of every calculator, plain ones and troubled ones, and all the text they give.</summary>
internal static class Samples
{
    internal static IEnumerable<(string Name, object Result)> Results()
    {
        yield return ("hollow arc", Arc.FromChordAndRise(Mm(1000), Mm(12.345)));
        yield return ("flat arc", Arc.FromChordAndRise(Mm(1000), Mm(0)));
        yield return ("uncertain arc", Arc.FromChordAndRise(Inch(12), Mm(-2.5)));
        yield return ("tiny arc", Arc.FromChordAndRise(Mm(1), Mm(0.6)));
        yield return ("tiny circle past its half", Arc.FromChordAndRise(Mm(0.5), Mm(1.5)));
        yield return ("arc of no length", default(CircularArc));
        yield return ("arc by radius", Arc.FromChordAndRadius(Mm(300), Mm(5000), pastHalfCircle: true));
        yield return ("arc by length", Arc.FromChordAndArcLength(Mm(300), Mm(310), bulging: true));

        (double Along, double Offset)[] wall = [(0, 20.1), (250.5, 39.0), (500, 44.9), (750, 39.2), (1000, 20)];
        MeasuredPoint[] bow = [.. wall.Select(static point => new MeasuredPoint(Mm(point.Along), Mm(point.Offset)))];
        yield return ("fitted bow", CircleFit.Through(bow));
        yield return ("fitted bulge", CircleFit.Through([.. wall.Select(static point => new MeasuredPoint(Mm(point.Along), Mm(-point.Offset)))]));
        yield return ("three points", CircleFit.Through(bow[..3]));
        yield return ("fitted line", CircleFit.Through([new(Mm(0), Mm(1.5)), new(Mm(1000), Mm(3.5)), new(Mm(2000), Mm(5.5)), new(Mm(3000), Mm(7.5))]));
        yield return ("flat within its scatter", CircleFit.Through([new(Mm(0), Mm(1.5)), new(Mm(1000), Mm(2.5)), new(Mm(2000), Mm(0.5)), new(Mm(3000), Mm(1.6))]));
        yield return ("uncertain circle", CircleFit.Through([new(Mm(0), Mm(0)), new(Mm(300), Mm(3.5)), new(Mm(600), Mm(2.5)), new(Mm(1000), Mm(0.5))]));
        yield return ("one point off", CircleFit.Through([.. bow, new(Mm(100), Mm(29.1)), new(Mm(900), Mm(52.5)), new(Mm(600), Mm(43.9))]));

        FastenerJob safe = new([Layer.Board(Mm(12.7)), Layer.Furring(SheetGoods.Birch15)], Behind.Metal, FastenerSeries.Brad18) { Count = 1234 };
        FastenerJob[] jobs =
        [
            safe,
            safe with { Behind = Behind.Wire(TolerancedLength.PlusMinus(Mm(40.5), Mm(5))), HitsLimit = 0 },
            safe with { Layers = [Mm(4), Mm(4)] },
            safe with { Layers = [Mm(12.7), Mm(12.7)], SetDepth = Mm(0.5) },
            safe with { Layers = [Mm(12.7), Inch("1/2")], SetDepth = Mm(0.5), LeastBite = Mm(30) },
            safe with { Layers = [Mm(1), Mm(30)], SetDepth = Mm(2.5) },
            safe with { Layers = [new Layer(Mm(12.7)) { Holds = false }, Layer.Void(Mm(20))], LeastBite = Mm(0), TargetBite = Mm(0) },
            safe with { Layers = [Mm(12.7), Layer.Compressible("tape", Mm(2.25), Mm(0.75)), Mm(12.7)], DriveAngle = Angle.FromDegrees(20.5), MarginalChance = 0.01, RequiredClearance = Mm(1.5) },
            safe with { Layers = [Mm(12.7), Mm(13.5)], SetDepth = new TolerancedLength(Mm(0.5), Mm(-0.1), Mm(0.3), DeviationScope.Each) },
        ];
        for (int i = 0; i < jobs.Length; i++)
        {
            FastenerChoice choice = FastenerLength.Choose(jobs[i]);
            yield return ($"choice {i}", choice);
            foreach (FastenerCandidate candidate in choice.Candidates)
            {
                yield return ($"candidate {i} {candidate.Length}", candidate);
            }

            if (FastenerLength.ThinnestFurring(jobs[i], Mm(25.4)) is { } furring)
            {
                yield return ($"furring {i}", furring);
            }

            if (FastenerLength.LeastDriveAngle(jobs[i], Mm(25.4)) is { } lean)
            {
                yield return ($"lean {i}", lean);
            }
        }

        yield return ("tip clear", FastenerLength.TipClearance(Mm(28.575), Mm(25.4), Mm(0.5), Angle.FromDegrees(12.5)));
        yield return ("tip past", FastenerLength.TipClearance(Mm(20), Mm(25.4), Mm(0.5), Angle.FromDegrees(0)));
        yield return ("no tip", default(TipClearance));

        OvendrySpecificGravity oven = new(0.49);
        SpecificGravityAt12 at12 = new(0.42);
        CharacteristicDensity density = new(350.5);
        Eurocode5Nail nail = new(density, Mm(2.5), Mm(5.5), Mm(12.5), Mm(27.5)) { HoldingThickness = Mm(15) };
        WithdrawalCapacity[] capacities =
        [
            Withdrawal.NdsNail(oven, Mm(1.25), Mm(12.5)),
            Withdrawal.NdsNail(oven, Mm(1.25), Mm(3.5)),
            Withdrawal.NdsWoodScrew(oven, Mm(4.1), Mm(25.5)),
            Withdrawal.NdsLagScrew(oven, Mm(6.35), Mm(40.5)).InPlywood(),
            Withdrawal.HandbookNail(at12, Mm(1.6), Mm(25.5)),
            Withdrawal.HandbookWoodScrew(at12, Mm(4.1), Mm(25.5)),
            Withdrawal.HandbookLagScrew(at12, Mm(6.35), Mm(40.5)).InPlywood(0.75),
            Withdrawal.Eurocode5SmoothNail(density, Mm(2.5), Mm(25)),
            Withdrawal.Eurocode5SmoothNail(density, Mm(2.5), Mm(12.5)),
            Withdrawal.Eurocode5SmoothNail(nail),
            Withdrawal.Eurocode5SmoothNail(nail with { PermanentLoad = true }),
            Withdrawal.Eurocode5Screw(density, Mm(4.5), Mm(20.5), Angle.FromDegrees(22.5)),
            Withdrawal.Eurocode5Screw(density, Mm(6), Mm(40), Angle.FromDegrees(90)),
            WithdrawalCapacity.Supplied(Force.FromNewtons(41.5)),
            default,
        ];
        for (int i = 0; i < capacities.Length; i++)
        {
            yield return ($"capacity {i}", capacities[i]);
            HungMass hung = new(Mass.FromKilograms(12.5), capacities[i]) { RunLength = Mm(2500.5) };
            yield return ($"hung {i}", Retention.FastenersNeeded(hung));
            yield return ($"hung by one {i}", Retention.FastenersNeeded(hung with { Fasteners = 1, Acceleration = 6.5, DesignFactor = 0.55 }));
            yield return ($"glued {i}", Retention.FastenersNeeded(hung with { AdhesiveStrength = Pressure.FromMegapascals(0.05), AdhesiveArea = Area.FromSquareCentimeters(12.5), Rows = 3 }));
        }

        yield return ("count", Retention.FastenersNeeded(Mass.FromKilograms(12.5), WithdrawalCapacity.Supplied(Force.FromNewtons(41.5))));
        yield return ("count of none", Retention.FastenersNeeded(Mass.FromKilograms(12.5), WithdrawalCapacity.Supplied(Force.FromNewtons(0)), 0.5));
        yield return ("count of nothing", default(RetentionCount));

        BeamSection board = new(Mm(89), Mm(12.7), Pressure.FromMegapascals(8900)) { BendingStrength = Pressure.FromMegapascals(65) };
        yield return ("bay of a board", BoardSpan.LargestBay(board));
        yield return ("bay under a ceiling", BoardSpan.LargestBay(board with { BendingStrength = null }, Surface.Ceiling));
        yield return ("bay of a thin board", BoardSpan.LargestBay(new BayQuestion(board with { Thickness = Mm(1.5) }) { UniformLoad = ForcePerLength.FromNewtonsPerMillimeter(0.25), Spans = 3 }));
        yield return ("bay without load", BoardSpan.LargestBay(new BayQuestion(board) { PointLoad = Force.FromNewtons(0) }));
        yield return ("no bay", default(BayLimit));
        Beam beam = new(board, [Mm(400.5), Mm(500), Mm(300)]);
        foreach (Beam each in new[] { beam, beam with { Section = board with { Thickness = Mm(6.5) }, Displacements = [Mm(0), Mm(2.5), Mm(-1.5), Mm(0)] }, new Beam(board with { BendingStrength = null }, [Mm(450)]) })
        {
            yield return ("beam " + each, ContinuousBeam.UnderLoads(each, [BeamLoad.Point(Mm(100.5), Force.FromNewtons(220.5)), BeamLoad.UniformOnSpan(0, ForcePerLength.FromNewtonsPerMillimeter(0.15))]));
            yield return ("pushed " + each, ContinuousBeam.UnderPointLoad(each, Force.FromNewtons(200.5)));
            yield return ("leaned on " + each, ContinuousBeam.UnderUniformLoad(each, ForcePerLength.FromNewtonsPerMillimeter(-0.15)));
        }

        foreach ((string Name, object Result) sample in Bent())
        {
            yield return sample;
        }

        foreach ((string Name, object Result) sample in FixingSamples.Results())
        {
            yield return sample;
        }
    }

    private static IEnumerable<(string Name, object Result)> Bent()
    {
        SheetGoods ply = new("6.5 mm ply", Mm(6.5), Mm(6.4), "ply")
        {
            Bending = new PlywoodBending(Mm(6.4), Pressure.FromMegapascals(12737), Pressure.FromMegapascals(4763), Pressure.FromMegapascals(50.9), Pressure.FromMegapascals(29)),
        };
        SheetGoods thin = new("3.5 mm ply", Mm(3.5), Mm(3.2), "ply")
        {
            Bending = new PlywoodBending(Mm(3.2), Pressure.FromMegapascals(16471), Pressure.FromMegapascals(1029), Pressure.FromMegapascals(65.9), Pressure.FromMegapascals(10.6)),
        };
        BentSheet plain = new(Mm(6.4), Pressure.FromMegapascals(12737.5), Pressure.FromMegapascals(50.9));
        BentSheet[] sheets =
        [
            BentSheet.Of(ply, BendGrain.AroundTheCurve),
            BentSheet.Of(ply, BendGrain.AlongTheAxis) with { Factor = 1.25 },
            plain with { PublishedRadius = Mm(1524.5), StrengthBasis = PlywoodStrengthBasis.AllowableDesign },
            plain with { PublishedRadius = Mm(609.6), PublishedSource = Source.Published("X-1", "A table", "A publisher", 2000, "table 1", SourceReading.Copy) },
        ];
        IReadOnlyList<Length>?[] rows = [null, BentSheet.EqualRows(Mm(352.5), 2), BentSheet.EqualRows(Mm(352.5), 3), BentSheet.EqualRows(Mm(2100), 5), [Mm(20), Mm(100.5), Mm(300), Mm(352.5)]];
        Length?[] radii = [null, Mm(2216), Mm(-2216.5), Mm(900)];
        yield return ("no bend", default(BendRadius));
        foreach (BentSheet sheet in sheets)
        {
            yield return ($"radius of {sheet}", PanelBend.MinimumRadius(sheet));
            foreach (Length? radius in radii)
            {
                yield return ($"rows for {sheet}", HoldDown.LeastEqualRows(sheet, radius));
                foreach (IReadOnlyList<Length>? at in rows)
                {
                    BendCase panel = new(sheet, radius) { Rows = at };
                    yield return ($"bend {panel}", PanelBend.Judge(panel));
                    yield return ($"double {panel}", PanelBend.Judge(panel with { BowAlong = Mm(-1500.5), Girth = Mm(352.5), Width = Mm(1200), Backing = SheetBacking.AllOver }));
                    if (at is not null)
                    {
                        HoldDownCase held = new(sheet, radius, at, Mm(1200.5)) { Girth = Mm(2200) };
                        yield return ($"held {held}", HoldDown.OnArc(held));
                        if (radius is { Millimeters: > 0 })
                        {
                            continue;
                        }

                        yield return ($"held all over {held}", HoldDown.OnArc(held with { Backing = SheetBacking.AllOver, FixingsPerRow = 2, FixingCapacity = Force.FromNewtons(10.5) }));
                        yield return ($"held by a pull {held}", HoldDown.OnArc(held with { Backing = SheetBacking.AllOver, EdgePull = Force.FromNewtons(55.5), FixingCapacity = Force.FromNewtons(1e-6) }));
                    }
                }
            }
        }

        foreach (Length? radius in radii)
        {
            foreach (IReadOnlyList<Length> at in rows.OfType<IReadOnlyList<Length>>())
            {
                BentStripCase strip = new(ply, radius, at) { Alternatives = [ply, thin, SheetGoods.Birch15] };
                yield return ($"strip {strip}", BentStrip.Judge(strip));
                yield return ($"strip with fixings {strip}", BentStrip.Judge(strip with { FixingsPerPlace = 2, FixingCapacity = Force.FromNewtons(5.5) }));
                yield return ($"strip with weak fixings {strip}", BentStrip.Judge(strip with { FixingCapacity = Force.FromNewtons(1e-6) }));
                yield return ($"strip by default {strip}", BentStrip.Judge(strip with { Alternatives = null, Grain = BendGrain.AlongTheAxis, Factor = 1.4, Width = Mm(62.5) }));
            }
        }
        // Strips
        StripRun run = new(Mm(3400.5), [Mm(20), Mm(480.25), Mm(500), Mm(1980.125), Mm(3380.5)], Mm(475.5)) { Ribs = [new(Mm(480), Mm(25)), new(Mm(950.75), Mm(20)), new(Mm(1420), Mm(25)), new(Mm(2330), Mm(20))] };
        yield return ("strips", StripSpacing.Space(run));
        yield return ("fewest strips", StripSpacing.Space(run with { Preference = StripPreference.FewestStrips, LeastDistance = Mm(60.5) }));
        yield return ("strips on no rib", StripSpacing.Space(run with { Ribs = [new(Mm(-1234.5), Mm(20))] }));
        yield return ("no strips", StripSpacing.Space(run with { LeastDistance = Mm(1234.5) }));
        yield return ("strips at one place", StripSpacing.Space(new StripRun(Mm(1), [Mm(0.5), Mm(0.5)], Mm(1))));

        // Layout of a face
        FurringFace furred = new(Mm(3400.5), Mm(994), Mm(475.5)) { Openings = [new(Mm(500), Mm(1400), Mm(230), Mm(610.5)), new(Mm(1450), Mm(1800), Mm(230), Mm(610))], Breaks = [new(Mm(642.5), UnitsNet.Angle.FromDegrees(9.5))], Ribs = [new(Mm(480), Mm(50)) { Setback = Mm(1234.5 / 1000) }], Rails = [new(Mm(200), Mm(40)), new(Mm(900), Mm(40))], RearAtHead = Mm(3352.5) };
        yield return ("a face", FurringLayout.LayOut(furred));
        yield return ("a face on nothing", FurringLayout.LayOut(furred with { Ribs = [], Rails = [], StripSection = new BeamSection(Mm(40), Mm(9.5), UnitsNet.Pressure.FromMegapascals(9000)) }));
        yield return ("a face of thin strips", FurringLayout.LayOut(furred with { Boards = BoardDirection.UpTheGirth, Ribs = [new(Mm(100), Mm(50)), new(Mm(3300), Mm(50))], StripSection = new BeamSection(Mm(40), Mm(9.5), UnitsNet.Pressure.FromMegapascals(9000)) { BendingStrength = UnitsNet.Pressure.FromMegapascals(50) } }));

        RippingJob ripped = new(Mm(2500.5), Mm(1250), [new StripPart(Mm(40.5), Mm(994)) { Count = 1234 }, new StripPart(Mm(70), Mm(3380.5)) { Count = 2 }]);
        yield return ("ripped strips", StripRipping.Rip(ripped));
        yield return ("ripped wide strips", StripRipping.Rip(ripped with { Parts = [new StripPart(Mm(1300.5), Mm(900))], Kerf = Mm(0), Trim = Mm(0) }));
        yield return ("ripped too wide", StripRipping.Rip(ripped with { Parts = [new StripPart(Mm(2600.5), Mm(900))] }));
        StripPart[] parts = [new(Mm(1200), Mm(1275)) { Count = 6 }, new(Mm(1200), Mm(675)) { Count = 6 }, new(Mm(1200), Mm(650)) { Count = 6 }, new(Mm(1200), Mm(575)) { Count = 12 }];
        yield return ("ripped without proof", StripRipping.Rip(ripped with { SheetLength = Mm(2510), Parts = parts, Kerf = Mm(0) }));
        CuttingJob cut = new([new BoardPart(Mm(1820.5), 4) { Name = "course 3" }, new BoardPart(Mm(640), 30), new BoardPart(Mm(2380.25), 2)], [new StockBoard(Mm(2438), 9.85m), new StockBoard(Mm(3048), 12.6m) { Pack = 4, Available = 9 }]) { Offcuts = [new BoardOffcut(Mm(1234.5))] };
        yield return ("cut boards", BoardCutting.Cut(cut));
        yield return ("cut boards that are too few", BoardCutting.Cut(cut with { Stock = [new StockBoard(Mm(2438), 9.85m) { Available = 3 }], Kerf = Mm(0) }));
        yield return ("cut boards that are too short", BoardCutting.Cut(cut with { Stock = [new StockBoard(Mm(1000), 0m)], Offcuts = null, EndTrim = Mm(0.5) }));
        BoardPart[] tight = [new BoardPart(Mm(1204.5), 1234), new BoardPart(Mm(803), 1), .. Enumerable.Range(0, 700).Select(static i => new BoardPart(Mm(400.5 + i), 1))];
        yield return ("cut boards without proof", BoardCutting.Cut(cut with { Parts = tight, Effort = 1000 }));
        // Nesting on sheets, and rolls
        NestingJob nested = new([new SheetPart(Mm(1200.5), Mm(600), 5, mayTurn: false) { Name = "upper wall" }, new SheetPart(Mm(350), Mm(1100.25), 3, mayTurn: true) { Outline = [new(Mm(0), Mm(0)), new(Mm(350), Mm(0)), new(Mm(175.5), Mm(1100.25)), new(Mm(0), Mm(1100.25))] }], [new StockSheet(Mm(2440), Mm(1220), 38.5m), new StockSheet(Mm(3050), Mm(1525.5), 1234.5m) { Available = 9 }], SheetCutting.Sawn) { Offcuts = [new SheetOffcut(Mm(1234.5), Mm(700))], Effort = 100_000 };
        yield return ("nested sheets", SheetNesting.Nest(nested));
        yield return ("nested sheets, routed", SheetNesting.Nest(nested with { Cutting = SheetCutting.Routed, Kerf = Mm(6.5) }));
        yield return ("nested sheets that are too few", SheetNesting.Nest(nested with { Stock = [new StockSheet(Mm(2440), Mm(1220), 38.5m) { Available = 1 }], Kerf = Mm(0) }));
        yield return ("nested sheets that are too small", SheetNesting.Nest(nested with { Stock = [new StockSheet(Mm(1000.5), Mm(500), 0m)], Offcuts = null, Trim = Mm(0.5) }));
        yield return ("nested turned pieces", SheetNesting.Nest(nested with { Parts = [new SheetPart(Mm(350.5), Mm(2000), 2, mayTurn: true)] }));
        SheetPart[] nestedTight = [.. Enumerable.Range(0, 60).Select(static i => new SheetPart(Mm(500.5 + (7 * i)), Mm(400.25 + (5 * i)), 3, mayTurn: true))];
        yield return ("nested sheets without proof", SheetNesting.Nest(nested with { Parts = nestedTight, Effort = 1000 }));
        RollJob rolled = new([new RollPart(Mm(1100.5), Mm(900), 2, mayTurn: false), new RollPart(Mm(700), Mm(480.25), 3, mayTurn: true) { Name = "a door" }], Mm(1400.5)) { Effort = 10_000 };
        yield return ("a roll", RollCutting.Cut(rolled));
        yield return ("a roll sold by the metre", RollCutting.Cut(rolled with { Selvedge = Mm(10.5), Between = Mm(5), SoldBy = Mm(1000) }));
        yield return ("a roll with a piece too wide", RollCutting.Cut(rolled with { Parts = [.. rolled.Parts, new RollPart(Mm(300.5), Mm(1500), 2, mayTurn: false) { Name = "a headliner" }] }));
        yield return ("a roll too narrow", RollCutting.Cut(rolled with { Parts = [new RollPart(Mm(1500.5), Mm(1500), 2, mayTurn: true)] }));
        yield return ("a roll with turned pieces", RollCutting.Cut(rolled with { Parts = [new RollPart(Mm(300.5), Mm(1500), 2, mayTurn: true)] }));
        yield return ("a roll without proof", RollCutting.Cut(rolled with { Parts = [.. Enumerable.Range(0, 40).Select(static i => new RollPart(Mm(300.5 + (7 * i)), Mm(400.25 + (5 * i)), 2, mayTurn: true))], Effort = 1000 }));
        SlatRun slats = new(Mm(1516), Mm(40)) { Stations = [Mm(1448.5)] };
        SlatRun[] runs =
        [
            slats,
            slats with { Stations = null, LeastGap = Mm(6.25), GreatestGap = Mm(8.5), RoundTo = SetOutStep.SixteenthInch },
            slats with { Stations = [Mm(1500.5), Mm(1480), Mm(1448.5)], Ends = SlatEnds.Open },
            slats with { Stations = [Mm(1200.5)] },
            slats with { Stations = [Mm(1200.5)], Taper = SlatTaper.EndSlatsTapered },
            slats with { Stations = [Mm(1455.5)], Taper = SlatTaper.EndSlatsTapered },
            slats with { Stations = [Mm(1200.5), Mm(1300)], Width = Mm(50) },
            slats with { Width = Mm(30.5), Stations = null, LeastGap = Mm(0), GreatestGap = Mm(0) },
            slats with { Width = Mm(1500.001), Stations = [], LeastGap = Mm(8.5), GreatestGap = Mm(8.5) },
        ];
        for (int i = 0; i < runs.Length; i++)
        {
            yield return ($"slats {i}", SlatSpread.Spread(runs[i]));
        }

        yield return ("slats by plain lengths", SlatSpread.Spread(Mm(1500.5), Mm(40), Mm(6.5), Mm(9.5)));
        yield return ("slats on a hollow", SlatCurve.Fit(Mm(3817.5), Mm(40), Mm(10.5), Mm(7.25)));
        yield return ("slats on a bulge", SlatCurve.Fit(Mm(-817.5), Mm(40), Mm(10.5), Mm(9.75)));
        yield return ("slats on a flat face", SlatCurve.Fit(null, Mm(40), Mm(10.5), Mm(7.25)));
        yield return ("slats that close", SlatCurve.Fit(Mm(400.5), Mm(40), Mm(60), Mm(6)));
        yield return ("slats that meet before the face", SlatCurve.Fit(Mm(50.5), Mm(40), Mm(60), Mm(6)));
        yield return ("no slat", default(SlatFit));

        // Joints
        JointJob joints = new([new(1, Mm(0), Mm(3600.5)), new(2, Mm(0), Mm(3600)), new(4, Mm(0), Mm(450.5)) { Name = "under the window" }], [Mm(600), Mm(1200.5), Mm(1800), Mm(2400), Mm(3000)], [new StockBoard(Mm(2438.5), 1234.5m)]);
        yield return ("joints", BoardJoints.Choose(joints));
        yield return ("joints without strips", BoardJoints.Choose(joints with { Strips = [Mm(1200.5)] }));
        yield return ("joints too close", BoardJoints.Choose(joints with { Stagger = 3, Effort = 1000 }));
        yield return ("joints of short pieces", BoardJoints.Choose(joints with { ShortestPiece = Mm(1900.5), Stagger = 0 }));
        yield return ("joints of no boards", BoardJoints.Choose(joints with { Stock = [new StockBoard(Mm(2438.5), 1m) { Available = 0 }] }));
        yield return ("a sample of joints", BoardJoints.Choose(new JointJob([new(1, Mm(0), Mm(20_000))], [.. Enumerable.Range(1, 60).Select(static i => Mm(i * 320.5))], [new StockBoard(Mm(5000.5), 1234.5m)]) { Effort = 1000 }));
        // Courses
        yield return ("a board over a break", CourseBreaks.Judge(Mm(1234.5 / 10), Angle.FromDegrees(3.25)));
        yield return ("a board over a ridge", CourseBreaks.Judge(Mm(89.5), Angle.FromDegrees(-3.25), Angle.FromDegrees(3.5)));
        yield return ("a break that ends a course", CourseBreaks.Judge(Mm(89.5), Angle.FromDegrees(9.5)));
        yield return ("no break", default(CourseBreak));
        yield return ("air and wood", EquilibriumMoisture.InAir(UnitsNet.Temperature.FromDegreesCelsius(20.5), UnitsNet.RelativeHumidity.FromPercent(50.5)));
        yield return ("hot air", EquilibriumMoisture.InAir(UnitsNet.Temperature.FromDegreesCelsius(59.5), UnitsNet.RelativeHumidity.FromPercent(12.5)));
        yield return ("dry air", default(MoistureBalance));
        CourseFace boarded = new(Mm(3400.5), Mm(994), BoardCover.SquareEdged(Mm(89.5), Mm(0.5)))
        {
            Openings = [new(Mm(500), Mm(1400), Mm(230), Mm(610.5)), new(Mm(1980), Mm(2680), Mm(230), Mm(610.5))],
            Breaks = [new(Mm(200.5), UnitsNet.Angle.FromDegrees(3.5)), new(Mm(642.5), UnitsNet.Angle.FromDegrees(9.5))],
        };
        yield return ("courses", CourseLayout.LayOut(boarded));
        yield return ("courses with slivers", CourseLayout.LayOut(boarded with { Rule = CourseRule.WholeAtFoot, RunThroughBreaks = true, SetOutError = Mm(1.5) }));
        yield return ("courses from the head", CourseLayout.LayOut(boarded with { Rule = CourseRule.WholeAtHead, BreakLimit = UnitsNet.Angle.FromDegrees(3.25) }));
        yield return ("balanced courses", CourseLayout.LayOut(boarded with { BandRules = [CourseRule.Balanced, CourseRule.WholeAtFoot] }));
        yield return ("courses that run out", CourseLayout.LayOut(boarded with { GirthAtFront = Mm(1234.5), GirthAtRear = Mm(901.5), LeastCourse = Mm(50.5) }));
        yield return ("courses of openings alone", CourseLayout.LayOut(new CourseFace(Mm(1000.5), Mm(500), BoardCover.SquareEdged(Mm(89), Mm(0))) { Openings = [new(Mm(0), Mm(1000.5), Mm(0), Mm(500))] }));
        foreach ((string Name, object Result) sample in ShapeSamples.Results())
        {
            yield return sample;
        }
        // Edges and end cuts
        MeasuredPoint[] rear = [new(Mm(0), Mm(3400)), new(Mm(200), Mm(3398)), new(Mm(400), Mm(3392)), new(Mm(600), Mm(3382)), new(Mm(800), Mm(3369)), new(Mm(994), Mm(3352))];
        MeasuredEdge[] edges =
        [
            .. new[] { EdgeFit.Linear, EdgeFit.ShapePreserving, EdgeFit.NaturalCubic }.Select(fit => EdgeCurve.Through(rear, fit)),
            EdgeCurve.Through([rear[0], rear[3], rear[5]], EdgeFit.NaturalCubic, Mm(1.25)),
            EdgeCurve.Through([rear[0], rear[5]]),
            EdgeCurve.Straight(rear[0], rear[5]),
            EdgeCurve.OnArc(rear[0], rear[5], Mm(11.75)),
            EdgeCurve.OnArc(rear[0], rear[5], Mm(-311.75)),
        ];
        Length[] courses = [Mm(0), Mm(135.5), Mm(271), Mm(400), Mm(900.5), Mm(994)];
        foreach (MeasuredEdge edge in edges)
        {
            yield return ($"{edge}", edge);
            yield return ($"courses at the {edge}", EndCuts.Schedule(new EndCutJob(edge, courses, Mm(12.5))));
            yield return ($"courses under a trim at the {edge}", EndCuts.Schedule(new EndCutJob(edge, courses, Mm(4000)) { UnderTrim = true, Order = FittingOrder.FromTop, HiddenWidth = Mm(6.5) }));
        }

        yield return ("a cut that runs out", EndCuts.Schedule(new EndCutJob(EdgeCurve.Straight(new(Mm(0), Mm(120.5)), new(Mm(100), Mm(0.5))), [Mm(0), Mm(99.5)], Mm(0)) { HiddenWidth = Mm(6.5) }));
        yield return ("an edge over the datum", EndCuts.Schedule(new EndCutJob(EdgeCurve.Through([new(Mm(0), Mm(100.5)), new(Mm(50), Mm(-50.25)), new(Mm(100), Mm(100))], EdgeFit.Linear), [Mm(0), Mm(99.5)], Mm(0))));
        yield return ("courses beside bare strips", CourseLayout.LayOut(boarded with { Openings = [], Breaks = [new(Mm(0.25), UnitsNet.Angle.FromDegrees(9.5)), new(Mm(642.5), UnitsNet.Angle.FromDegrees(-9.5))] }));
        yield return ("a bowed wall", ProfileBreaks.Find([new(Mm(0), Mm(0)), new(Mm(100), Mm(6)), new(Mm(200.5), Mm(8.25)), new(Mm(300), Mm(6)), new(Mm(400), Mm(0))]));
        yield return ("a steep rail", Flattening.Line([new(Mm(0), Mm(0)), new(Mm(500), Mm(112.5)), new(Mm(1000), Mm(200.5))]));
        yield return ("boards on hand", BoardCutting.Cut(cut with { Stock = [new StockBoard(Mm(2438), 0m) { Available = 1234 }] }));
        foreach ((string Name, object Result) sample in PanelsByHand())
        {
            yield return sample;
        }

        yield return ("cuts to scribe", EndCuts.Schedule(new EndCutJob(edges[0], [Mm(0), Mm(300.5), Mm(994)], Mm(0)) { ScribeTolerance = Mm(0.25) }));
        // Movement
        DimensionalChangeCoefficient[] woods =
        [
            DimensionalChange.OfWood(WoodSpecies.Named("Engelmann spruce")),
            DimensionalChange.OfWood(WoodSpecies.Named("white ash"), WoodGrain.Radial),
            DimensionalChange.OfWood(new WoodSpecies("a species", true, new SpecificGravityAt12(0.5)) { TangentialShrinkage = 7.5 }, WoodGrain.Tangential),
            DimensionalChange.FromShrinkage(7.75),
            DimensionalChange.FromShrinkage(5.5, 22.5, 12.5),
            DimensionalChangeCoefficient.Supplied(0.00345),
        ];
        yield return ("no coefficient", default(DimensionalChangeCoefficient));
        yield return ("no width", default(WidthChange));
        yield return ("no length", default(LengthMovement));
        yield return ("a long hot summer", BoardMovement.AlongTheGrain(Mm(3400.5), 79.5, 9.5, 6.25));
        yield return ("a long wet winter", BoardMovement.AlongTheGrain(Mm(12345.5), -45.5, 6.5, 16.25));
        foreach (DimensionalChangeCoefficient moving in woods)
        {
            BoardMovementJob wall = new(BoardCover.TongueAndGroove(Mm(97.5), Mm(8.5), Mm(0.5)), moving) { Boards = 12 };
            yield return ($"coefficient {moving}", moving);
            yield return ($"width {moving}", BoardMovement.OfWidth(Mm(1234.5), moving, 9.5, 16.25));
            yield return ($"drying width {moving}", BoardMovement.OfWidth(Mm(1234.5), moving, 12.5, 8.25));
            yield return ($"season {moving}", BoardMovement.OverSeason(wall));
            yield return ($"square-edged season {moving}", BoardMovement.OverSeason(wall with { Board = BoardCover.SquareEdged(Mm(89.5), Mm(2.5)), EndGap = Mm(2.5), LeastGap = Mm(0.75) }));
            yield return ($"season of wet boards {moving}", BoardMovement.OverSeason(wall with { FittingMoisture = 18.5, DriestMoisture = 4.5, WettestMoisture = 14.25, LeastCovered = Mm(7.5) }));
            yield return ($"season of short tongues {moving}", BoardMovement.OverSeason(wall with { Board = BoardCover.Shiplap(Mm(297.5), Mm(2.5), Mm(1.5)), FittingMoisture = 14.5 }));
            yield return ($"season of dry boards {moving}", BoardMovement.OverSeason(wall with { FittingMoisture = 5.5 }));
        }

        // Wrapped panels
        WrapBuild wrapped = new(Mm(6.5), Mm(0.95)) { Nap = NapDirection.TowardRear, Stretch = ClothStretch.None };
        WrapJob row = new(Mm(2406.5), Mm(600.25), wrapped) { Panels = 3, Windows = [new PanelWindow(new FaceOpening(Mm(100), Mm(500.5), Mm(200), Mm(400))) { CornerRadius = Mm(70.5) }, new PanelWindow(new FaceOpening(Mm(900), Mm(1012.5), Mm(200), Mm(260)))] };
        yield return ("wrapped panels", PanelWrap.Plan(row));
        yield return ("foam round and raw edges", PanelWrap.Plan(row with { Build = new WrapBuild(Mm(6.5), Mm(0.95)) { Front = EdgeWrap.FoamRound, Rear = EdgeWrap.Unwrapped, AtJoints = EdgeWrap.Unwrapped, AtWindows = EdgeWrap.FoamRound } }));
        yield return ("foam-backed cloth, windows astray", PanelWrap.Plan(row with { Build = wrapped with { IsFoamBacked = true, FoamThickness = Mm(5.5) }, Windows = [new PanelWindow(new FaceOpening(Mm(700), Mm(900.5), Mm(200), Mm(400))), new PanelWindow(new FaceOpening(Mm(100), Mm(112.5), Mm(200), Mm(400)))] }));
        yield return ("raw windows", PanelWrap.Plan(row with { Build = wrapped with { AtWindows = EdgeWrap.Unwrapped, FoamThickness = Mm(0) } }));
        yield return ("a slit, a tongue between windows, windows that meet", PanelWrap.Plan(row with
        {
            Build = new WrapBuild(Mm(6.5), Mm(0.95)) { Nap = NapDirection.TowardTop, Stretch = ClothStretch.AcrossRoll },
            Windows = [new PanelWindow(new FaceOpening(Mm(100), Mm(300.5), Mm(200), Mm(260.25))), new PanelWindow(new FaceOpening(Mm(310.25), Mm(400), Mm(200), Mm(400))), new PanelWindow(new FaceOpening(Mm(401.5), Mm(600), Mm(200), Mm(400)))],
        }));
        yield return ("panels between joints", PanelWrap.Plan(row with { Panels = 1, Joints = [Mm(600.5), Mm(1400)] }));
        yield return ("from plies", PanelWrap.FromPly([Mm(600.5), Mm(40.25)], Mm(400), wrapped));
        yield return ("a pattern", PatternMatch.Lay(new PatternJob(PanelWrap.Plan(row), Mm(320.5), Mm(1234.5)) { CentredOnPanel = 1, RollWidth = Mm(1370) }));
        yield return ("a pattern on a narrow roll", PatternMatch.Lay(new PatternJob(PanelWrap.Plan(row with { Build = new WrapBuild(Mm(6.5), Mm(0.95)) }), Mm(0), Mm(64.25)) { RollWidth = Mm(700.5) }));
        yield return ("adhesive", PanelAdhesive.Needed(UnitsNet.Area.FromSquareMeters(1234.5 / 10), surfaces: 1));
        yield return ("adhesive in cans", PanelAdhesive.Needed(UnitsNet.Area.FromSquareMeters(12.5), UnitsNet.Area.FromSquareMeters(3.25)));
        yield return ("no adhesive", default(AdhesiveNeed));
        StapleJob stapled = new([Mm(1234.5), Mm(595.25)], TolerancedLength.PlusMinus(Mm(6.5), Mm(0.45)), Mm(5.5));
        yield return ("staples", PanelStaples.SetOut(stapled));
        yield return ("long staples", PanelStaples.SetOut(stapled with { Leg = Mm(8.5), UnderCrown = Mm(0.95) }));
        yield return ("short staples", PanelStaples.SetOut(stapled with { Leg = Mm(3.5) }));
        yield return ("staples in thin ply", PanelStaples.SetOut(stapled with { PlyThickness = Mm(4.5), Leg = Mm(3.5) }));
        WrapChoice backed = new(UnitsNet.Area.FromSquareMeters(8.5), 1234.5m, UnitsNet.Area.FromSquareMeters(8.5), 1018.25m, UnitsNet.Area.FromSquareMeters(7.5), 60.5m) { Panels = 9 };
        yield return ("two ways of wrapping", WrapComparison.Compare(backed));
        yield return ("one way at every rate", WrapComparison.Compare(backed with { BackedHours = System.TimeSpan.FromHours(12.5), BackedPrice = 5000.5m, SeparateHours = System.TimeSpan.FromHours(1.5) }));
        yield return ("equal materials", WrapComparison.Compare(backed with { BackedPrice = 0m, ClothPrice = 0m, FoamPrice = 0m, SeparateHours = System.TimeSpan.FromHours(1.5) }));
        yield return ("nothing against nothing", default(WrapVerdict));
    }

    /// <summary>Plywood by its plies.</summary>
    private static IEnumerable<(string Name, object Result)> PanelsByHand()
    {
        PlyLayUp birch = PlyLayUp.Birch(Mm(6.4), 5);
        yield return ("birch by its plies", LayeredPly.InBending(birch));
        yield return ("plies that count across", LayeredPly.InBending(birch with { CrossRatio = 0.035, StrengthBasis = PlywoodStrengthBasis.AllowableDesign }));
        yield return ("plies out of balance", LayeredPly.InBending(birch with { Veneers = [new Veneer(Mm(1.15), PlyDirection.Across), new Veneer(Mm(2.5), PlyDirection.Along)], CrossRatio = 0.035, CrossStrength = Pressure.FromMegapascals(4.5) }));
        BentSheet three = new(Mm(3.2), Pressure.FromMegapascals(12_000.5), Pressure.FromMegapascals(60.5)), six = BentSheet.Of(SheetGoods.Birch6, BendGrain.AroundTheCurve);
        foreach (LaminatedBend bend in new[]
        {
            LaminatedBend.Of(three, 4, Mm(800.5)),
            LaminatedBend.Of(three, 1, Mm(800.5)),
            LaminatedBend.Of(six, 3, Mm(1500.5)),
            LaminatedBend.Of(six with { Factor = 1.25, PublishedRadius = Mm(1524.5) }, 2, Mm(900)) with { StretchRatio = 0.75 },
            new LaminatedBend([three, six, three with { StrengthBasis = PlywoodStrengthBasis.AllowableDesign }], Mm(5.5)) { StretchRatio = 0.85 },
        })
        {
            yield return ($"to a radius: {bend}", Lamination.ToRadius(bend));
            yield return ($"on a form: {bend}", Lamination.OnForm(bend));
        }

        foreach (Length? wall in new Length?[] { null, Mm(3818.5), Mm(-3000.5), Mm(900.5), Mm(14_000) })
        {
            LayersOrSheet choice = new(six, 2, BentSheet.Of(SheetGoods.Birch12, BendGrain.AroundTheCurve), wall);
            yield return ($"compared: {choice}", Lamination.Compare(choice));
            yield return ($"compared over rows: {choice}", Lamination.Compare(choice with { Rows = BentSheet.EqualRows(Mm(1516.5), 3), Density = Density.FromKilogramsPerCubicMeter(680.5), StretchRatio = 0.75 }));
            yield return ($"compared over two rows: {choice}", Lamination.Compare(choice with { Rows = BentSheet.EqualRows(Mm(1516.5), 2), Layer = six with { Thickness = Mm(20.5), Factor = 1.25 } }));
        }

        foreach (BentSheet sheet in new[] { three, six })
        {
            yield return ($"bowl of {sheet}", DoubleCurvature.Judge(new BowedPanel(sheet, Mm(2216.5), Mm(57_800), Mm(352.5), Mm(3400))));
            yield return ($"tight bowl of {sheet}", DoubleCurvature.Judge(new BowedPanel(sheet, Mm(-1216.5), Mm(-2800), Mm(1352.5), Mm(600.5))));
            yield return ($"saddle of {sheet}", DoubleCurvature.Judge(new BowedPanel(sheet, Mm(1216.5), Mm(-2800), Mm(1352.5), Mm(600.5))));
        }

        KerfedPanel corner = new(Mm(300.5), Angle.FromDegrees(90.5), Mm(18), Mm(3), Mm(3.2));
        yield return ("kerfs", KerfBend.Plan(corner));
        yield return ("kerfs with a web that strains", KerfBend.Plan(corner with { Thickness = TolerancedLength.PlusMinus(Mm(18), Mm(0.45)), DepthError = Mm(0.25), WebSheet = new BentSheet(Mm(1.4), Pressure.FromMegapascals(17500), Pressure.FromMegapascals(70)) }));
        yield return ("kerfs that may cut through", KerfBend.Plan(corner with { Web = Mm(0.5), DepthError = Mm(2.5) }));
        yield return ("kerfs without wood between", KerfBend.Plan(corner with { OuterRadius = Mm(18.5), Kerf = Mm(12.5), Bend = Angle.FromDegrees(70.5) }));
        yield return ("kerfs close together", KerfBend.Plan(corner with { OuterRadius = Mm(30.5) }));

        yield return ("plies one way", LayeredPly.InBending(birch with { Veneers = [new Veneer(Mm(1.15), PlyDirection.Along)] }));
    }

    internal static IEnumerable<string> Texts()
    {
        foreach ((string name, object result) in Results())
        {
            yield return name + ": " + result;
            Type type = result.GetType();
            foreach (object figure in (IEnumerable<Figure>)type.GetMethod("Figures", [])!.Invoke(result, null)!)
            {
                yield return name + ": " + figure;
            }

            Workings workings = (Workings)type.GetMethod("Explain", [])!.Invoke(result, null)!;
            yield return workings.ToText();
            yield return workings.ToMarkdown();
            foreach (Finding finding in (IEnumerable<Finding>)type.GetProperty("Findings")!.GetValue(result)!)
            {
                yield return name + ": " + finding;
                foreach (Figure value in finding.Values)
                {
                    yield return value.ToString();
                }
            }

            if (type.GetProperty("DefaultsUsed")?.GetValue(result) is IEnumerable<DefaultUsed> defaults)
            {
                foreach (DefaultUsed used in defaults)
                {
                    yield return used.ToString();
                }
            }
        }

        foreach (object given in Inputs())
        {
            yield return given.ToString()!;
        }

        // Problems too are written without regard to the culture.
        foreach (InputProblem problem in FastenerLength.CheckTipClearance(Mm(-1234.5), Mm(1234567.5), new Length(1.5, (LengthUnit)999), Angle.FromDegrees(61.5)))
        {
            yield return problem.Message;
        }

        yield return FormatMillimetres(Mm(1234.56), 2) + FormatInches(Mm(1234.5)) + FormatFeetAndInches(Mm(-1234.5)) + FormatDecimalInches(Mm(1234.5));
        yield return ParseLength("1234.5 MM").Millimeters.ToString("R", System.Globalization.CultureInfo.InvariantCulture);
    }

    /// <summary>Every table row and every other public value that prints.</summary>
    private static IEnumerable<object> Inputs()
    {
        foreach (PropertyInfo property in PublicMembers.Types.SelectMany(static type => type.GetProperties(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)))
        {
            object value = property.GetValue(null)!;
            foreach (object item in value is IEnumerable<object> list ? list : [value])
            {
                yield return item;
            }
        }

        foreach (Type record in PublicMembers.InputRecords)
        {
            yield return GoodValues.Of(record);
        }

        yield return TolerancedLength.Sum([Mm(12.7), TolerancedLength.PlusMinus(Mm(15.1), Mm(0.25))]);
        yield return new OvendrySpecificGravity(0.545);
        yield return new SpecificGravityAt12(0.545);
        yield return new CharacteristicDensity(350.25);
        yield return BoardProfile.TongueAndGroove(Mm(12.7), Mm(4.5), Mm(4.5));
        yield return BoardCover.TongueAndGroove(Mm(97.5), Mm(8.5), Mm(1.5));
    }
}
