using System.Collections.Generic;
using UnitsNet;
using static FinishKit.Measure;

namespace FinishKit.Tests.Contracts;

/// <summary>Results of what fixes panels to metal, plain ones and troubled ones.</summary>
internal static class FixingSamples
{
    internal static readonly FastenerSeries Tapping = new("tapping screw 4.2", FastenerKind.WoodScrew, Mm(4.2), [Mm(13), Mm(16), Mm(19), Mm(25)]);

    internal static readonly MetalScrewJob Screw = new([new Layer(Mm(6.5)) { Name = "panel" }], Mm(1), Behind.Skin(Mm(35)), Tapping, Mm(1.4));

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
    }
}
