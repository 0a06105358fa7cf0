using System.Collections.Generic;
using UnitsNet;
using static FinishKit.Measure;

namespace FinishKit.Tests.Contracts;

/// <summary>Results of what fixes panels to metal, plain ones and troubled ones.</summary>
internal static class FixingSamples
{
    internal static readonly FastenerSeries Tapping = new("tapping screw 4.2", FastenerKind.WoodScrew, Mm(4.2), [Mm(13), Mm(16), Mm(19), Mm(25)]);

    internal static readonly MetalScrewJob Screw = new([new Layer(Mm(6.5)) { Name = "panel" }], Mm(1), Behind.Skin(Mm(35)), Tapping, Mm(1.4));

    internal static readonly RivetNutSize Nut = new("round M5", Mm(5), Mm(7), Mm(0.5), Mm(3));

    internal static readonly RivetNutJob NutJob = new([new Layer(Mm(6.5)) { Name = "panel" }], Mm(1), Behind.Skin(Mm(30)), Nut, Mm(5), Mm(12), [Mm(16), Mm(20), Mm(25)]);

    internal static readonly PanelFixingJob Fixings = new(
        [new(Mm(0), ForcePerLength.FromNewtonsPerMillimeter(0)), new(Mm(200), ForcePerLength.FromNewtonsPerMillimeter(0.675)), new(Mm(400), ForcePerLength.FromNewtonsPerMillimeter(-0.1))], Mm(1000), Force.FromNewtons(100));

    internal static readonly PanelWall Wall = new(Mm(3400), Mm(994), Mm(2440), Mm(1220))
    {
        Openings = [new FaceOpening(Mm(500), Mm(1400), Mm(230), Mm(610))],
        Ribs = [new PanelJointLine(Mm(480), Mm(60)), new PanelJointLine(Mm(1420), Mm(60)), new PanelJointLine(Mm(2330), Mm(50))],
        Rails = [new PanelJointLine(Mm(642), Mm(40))],
    };

    internal static IEnumerable<(string Name, object Result)> Results()
    {
        yield return ("no sheet", default(SheetHold));
        yield return ("screw in a sheet", SheetPullOut.PullOut(Mm(0.75), Mm(4.8), Pressure.FromMegapascals(270.5)));
        yield return ("thick screw in a sheet", SheetPullOut.PullOut(Mm(0.75), Mm(8.5), Pressure.FromMegapascals(270.5)));
        yield return ("clip under a small head", SheetPullOut.PullOver(Mm(0.75), Mm(6.5), Pressure.FromMegapascals(270.5)));
        yield return ("clip under a washer", SheetPullOut.PullOver(Mm(0.75), Mm(16.5), Pressure.FromMegapascals(270.5)));
        MetalScrewJob[] jobs =
        [
            Screw,
            Screw with { MetalStrength = Pressure.FromMegapascals(270.5), Layers = [Mm(6.5), Layer.Void(Mm(8.5)), Layer.Compressible("tape", Mm(2.5), Mm(1))] },
            Screw with { MetalStrength = Pressure.FromMegapascals(270.5), HeadHold = Force.FromNewtons(120.5), PilotHole = Mm(3.2), Metal = TolerancedLength.PlusMinus(Mm(1.5), Mm(0.05)) },
            Screw with { Behind = Behind.Wire(TolerancedLength.PlusMinus(Mm(12.5), Mm(2))) },
            Screw with { Behind = Behind.Skin(Mm(13.7)), Screws = new FastenerSeries("long screw", FastenerKind.WoodScrew, Mm(4.2), [Mm(13), Mm(25)]) },
            Screw with { SetDepth = Mm(7), Pitch = Mm(1.8), ThreadsBeyond = 1.5, Point = Mm(2.5), RequiredClearance = Mm(1.5) },
        ];
        foreach (MetalScrewJob job in jobs)
        {
            yield return ($"metal screw {job}", MetalScrew.Choose(job));
        }

        RivetNutJob[] nuts =
        [
            NutJob,
            NutJob with { Nut = RivetNutSize.All[0] },
            NutJob with { Paint = TolerancedLength.PlusMinus(Mm(0.2), Mm(0.05)), MatingSheet = Mm(2.5), Nut = RivetNutSize.All[3] },
            NutJob with { Behind = Behind.Wire(Mm(12.5)), UnsetDepth = Mm(16.5), NutHold = Force.FromNewtons(250.5) },
            NutJob with { NutHold = Force.FromNewtons(4000), Pitch = Mm(0.8), NutStrength = Pressure.FromMegapascals(300.5) },
            NutJob with { SetDepth = Mm(6.5), Flange = Mm(0.8), LengthTolerance = Mm(0), Engagement = 0.8, RequiredClearance = Mm(1.5) },
        ];
        foreach (RivetNutJob nut in nuts)
        {
            yield return ($"rivet nut {nut}", RivetNut.Fit(nut));
        }

        PanelFixingJob[] panels =
        [
            Fixings,
            Fixings with { HungMass = Mass.FromKilograms(4.5), Girth = Mm(420.5) },
            Fixings with { Hold = Force.FromNewtons(5.5), HungMass = Mass.FromKilograms(4.5), Acceleration = 0.5 },
            Fixings with { Width = Mm(40.5), EdgeDistance = Mm(20.25), GreatestSpacing = Mm(120.5) },
            new([new(Mm(0), ForcePerLength.FromNewtonsPerMillimeter(0.015))], Mm(1200.5), Force.FromNewtons(45)) { HungMass = Mass.FromKilograms(1) },
        ];
        foreach (PanelFixingJob panel in panels)
        {
            yield return ($"fixings {panel}", PanelFixings.Place(panel));
        }

        PanelWall[] walls =
        [
            Wall,
            Wall with { SquareMetreMass = Mass.FromKilograms(4.55), MostMass = Mass.FromKilograms(6), MostLength = Mm(1700.5) },
            Wall with { SheetLength = Mm(700.5), SheetWidth = Mm(700) },
            Wall with { Rails = [new PanelJointLine(Mm(642.5), Mm(20)) { MustSplit = true }, new PanelJointLine(Mm(800), Mm(20))], Reveal = Mm(2.5), Grain = PanelGrainDirection.Either },
            Wall with { Openings = [new FaceOpening(Mm(1900), Mm(2000.5), Mm(0), Mm(994))], Landing = Mm(10), CornerDistance = Mm(30), LeastPanel = Mm(200) },
            Wall with { Openings = [new FaceOpening(Mm(1900), Mm(2000.5), Mm(20.5), Mm(900))] },
            Wall with { Ribs = [new PanelJointLine(Mm(1430.5), Mm(60)) { MustSplit = true }] },
            Wall with { SquareMetreMass = Mass.FromKilograms(4.55), MostMass = Mass.FromKilograms(4.5), Effort = 1000 },
        ];
        foreach (PanelWall wall in walls)
        {
            yield return ($"split {wall}", PanelSplit.Split(wall));
        }
    }
}
