using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static FinishKit.Measure;

namespace FinishKit.Tests.Contracts;

/// <summary>Results of what tells the shape of the shell: profile breaks, packers, compound cuts.</summary>
internal static class ShapeSamples
{
    internal static IEnumerable<(string Name, object Result)> Results()
    {
        MeasuredPoint[] wall = [.. new[] { (860.5, 7.0), (960, 10.25), (1060, 14), (1160, 23.5), (1260, 33), (1500, 56), (1600.5, 83), (1840, 147) }.Select(static at => new MeasuredPoint(Mm(at.Item1), Mm(at.Item2)))];
        yield return ("wall in bands", ProfileBreaks.Find(wall));
        yield return ("wall in one band", ProfileBreaks.Find(wall, bands: 1));
        yield return ("wall in as many bands as there can be", ProfileBreaks.Find(wall, Area.FromSquareMillimeters(0.125), wall.Length - 1));
        yield return ("wall that steps", ProfileBreaks.Find([.. wall.Take(4), .. wall.Skip(4).Select(static at => new MeasuredPoint(at.Along, Mm(at.Offset.Millimeters + 12.5)))], Area.FromSquareMillimeters(1.5)));
        yield return ("two stations", ProfileBreaks.Find(wall[..2]));

        yield return ("packed line", Flattening.Line(wall));
        yield return ("packed line with packers", Flattening.Line(wall, FlatteningAim.LeastGreatest, Mm(1.25), Mm(1.5)));
        yield return ("line without packers", Flattening.Line(wall[..2]));
        SurfacePoint[] face = [.. Enumerable.Range(0, 12).Select(static i => new SurfacePoint(Mm(i % 4 * 480.5), Mm(i / 4 * 300), Mm(20 + (i * 5 % 7 * 1.125))))];
        yield return ("packed plane", Flattening.Plane(face));
        yield return ("packed plane with packers", Flattening.Plane(face, FlatteningAim.LeastGreatest, Mm(0.25), Mm(2)));
        yield return ("plane with thick packers", Flattening.Plane([.. face, new SurfacePoint(Mm(700), Mm(250.5), Mm(45))]));

        yield return ("cut in a corner", CompoundCut.InCorner(Angle.FromDegrees(38.5), Angle.FromDegrees(91.25)));
        yield return ("cut outside a corner", CompoundCut.InCorner(Angle.FromDegrees(52), Angle.FromDegrees(270)));
        yield return ("cut beyond a saw", CompoundCut.InCorner(Angle.FromDegrees(0), Angle.FromDegrees(60)));
        yield return ("cut beyond a saw's turn", CompoundCut.OfSides(3, Angle.FromDegrees(12.5)));
        yield return ("cut of a hopper", CompoundCut.OfSides(7, Angle.FromDegrees(25)));
        yield return ("cut by directions", CompoundCut.Between(new(0.25, 0.5, -0.75), new(3, 0, 1), new(1.5, 0.5, -0.75), new(-0.5, 1.5, 0)));
        yield return ("cut in one plane", CompoundCut.Between(new(0, 0, 2), new(1, 0, 0), new(0, 0, 1), new(-1, 1.5, 0)));
        yield return ("square cut", default(CompoundSetting));
    }
}
