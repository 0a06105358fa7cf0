using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>What lines and planes with packers have in common: the packers and what is to be said about them.</summary>
internal sealed class PackerSet
{
    private readonly double? _step;
    private readonly int _thickest;
    private readonly double _proud;

    internal PackerSet(double[] packings, double total, double least, double? step)
    {
        _step = step;
        List<PackedPoint> points = new(packings.Length);
        for (int i = 0; i < packings.Length; i++)
        {
            PackedPoint point = new(packings[i], least, step);
            points.Add(point);
            _thickest = point.Millimetres > points[_thickest].Millimetres ? i : _thickest;
            _proud = Math.Max(_proud, point.ProudMillimetres);
            Touching += point.Touches ? 1 : 0;
        }

        Points = [.. points];
        Total = Math.Max(0, Grid.Snap(total));
    }

    internal IReadOnlyList<PackedPoint> Points { get; }

    internal int Touching { get; }

    internal double Total { get; }

    internal double Greatest => Points[_thickest].Millimetres;

    /// <param name="slope">How line or plane runs to what it was measured from, radians.</param>
    internal IReadOnlyList<Finding> Findings(double slope)
    {
        List<Finding> findings = [];
        double stocked = Points[_thickest].StockedMillimetres;
        if (stocked > PackerDefaults.Thick)
        {
            findings.Add(new Finding(
                "geometry-packers-thick",
                Severity.Caution,
                $"Point {Print.Number(_thickest)} (counted from 0) takes {Print.Mm(stocked)} of packing, more than {Print.Number(PackerDefaults.Thick)} mm: packers that thick tip and let the fastener bend. Fur it out with a strip, or measure the points that the line touches once more.",
                [new("point", _thickest, string.Empty), new("packing", stocked, "mm"), new("limit", PackerDefaults.Thick, "mm")],
                PackerDefaults.ThickSource));
        }

        double steep = Math.Abs(slope) * (180 / Math.PI);
        if (stocked > 0 && steep > PackerDefaults.Steep + 1e-9)
        {
            findings.Add(new Finding(
                "geometry-packers-steep",
                Severity.Caution,
                $"What the furring follows runs at {Print.Round(steep, 2)}° to the string or reference, more than {Print.Number(PackerDefaults.Steep)}°: square to it packers are {Print.Round(100 * (1 - Math.Cos(slope)), 1)}% thinner than said here. Hang the string nearer to the line and measure again.",
                [new("slope", steep, "deg"), new("limit", PackerDefaults.Steep, "deg")],
                PackerDefaults.SteepSource));
        }

        if (_proud > 0)
        {
            findings.Add(new Finding(
                "geometry-packers-stand-proud",
                Severity.Note,
                $"Packers in steps of {Print.Mm(_step!.Value)} leave the furring up to {Print.Mm(_proud)} off the true line, toward the room.",
                [new("packer-step", _step!.Value, "mm"), new("greatest-proud", _proud, "mm")],
                Sources.Packers));
        }

        if (stocked > 0)
        {
            findings.Add(new Finding(
                "geometry-packers-lengthen-stack",
                Severity.Note,
                $"Packers belong to what a fastener goes through: up to {Print.Mm(stocked)} more here. Choose its length by the whole stack at each thickness, and look behind before driving it.",
                [new("packing", stocked, "mm")],
                Sources.Packers));
        }

        return Finding.GravestFirst(findings);
    }

    internal void AddTo(List<Figure> figures)
    {
        figures.Add(new Figure("points", Points.Count, string.Empty));
        figures.Add(new Figure("touching", Touching, string.Empty));
        figures.Add(new Figure("total-packing", Total, "mm"));
        figures.Add(new Figure("greatest-packing", Greatest, "mm"));
        figures.Add(new Figure("thickest-point", _thickest, string.Empty));
        if (_step is not null)
        {
            figures.Add(new Figure("greatest-proud", _proud, "mm"));
        }
    }

    public override string ToString() => $"total {Print.Mm(Total)}, greatest {Print.Mm(Greatest)}, {Print.Number(Touching)} of {Print.Number(Points.Count)} touch";
}
