using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>A straight line over measured points with a packer at each: what <see cref="Flattening"/> answers for a row of them.</summary>
public sealed class PackedLine
{
    private static readonly Allowed s_place = new(-1e5, 1e5, "mm");

    private readonly double[] _along, _offset;
    private readonly PackingSearch _search;
    private readonly double _least, _slope;
    private readonly PackerSet _packers;

    internal PackedLine(double[] along, double[] offset, PackingSearch search, FlatteningAim aim, double least, double? step)
    {
        (_along, _offset, _search, Aim, _least) = (along, offset, search, aim, least);
        double[] packings = new double[along.Length];
        (_slope, double total) = Solve(packings, default(Silent));
        _packers = new PackerSet(packings, total, least, step);
        Findings = _packers.Findings(Math.Atan(_slope));
    }

    /// <summary>What was kept least.</summary>
    public FlatteningAim Aim { get; }

    /// <summary>The packer at each point, in the order given.</summary>
    public IReadOnlyList<PackedPoint> Points => _packers.Points;

    /// <summary>How the line runs to the string: positive where it goes away from the room as the place along grows.</summary>
    public Angle Slope => Door.Radians(Math.Atan(_slope));

    /// <summary>All packings together, before rounding up to packers.</summary>
    public Length Total => Door.Millimetres(_packers.Total);

    /// <summary>The greatest packing, before rounding up to packers.</summary>
    public Length Greatest => Door.Millimetres(_packers.Greatest);

    /// <summary>What should be known about the packers, gravest first.</summary>
    /// <remarks>Codes: <c>geometry-packers-thick</c>, <c>geometry-packers-steep</c>, <c>geometry-packers-stand-proud</c>, <c>geometry-packers-lengthen-stack</c>.</remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem => Findings.Count > 0 && Findings[0].Severity >= Severity.Problem;

    /// <summary>Offset of the line at a place, outward from the string: where the back of the furring is to be.</summary>
    /// <param name="along">Place along the string [length], -100 m to 100 m.</param>
    /// <returns>The offset.</returns>
    /// <exception cref="ArgumentException">The place is outside its range or in an undefined unit.</exception>
    public Length OffsetAt(Length along)
    {
        double place = Door.Millimetres(along, nameof(along), s_place, null);
        return Door.Millimetres(Grid.Snap(_offset[_search.Touch] - _least + (_slope * (place - _along[_search.Touch]))));
    }

    /// <summary>How the packings follow from the line, step by step. Which two points give its slope is a search.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        Solve(new double[_along.Length], recorder);
        return recorder.ToWorkings("Packers under a straight line");
    }

    /// <summary>The line as flat figures.</summary>
    /// <returns>Slope in degrees, points, how many touch, total and greatest packing, the point of the greatest; with a packer step how far the furring stands proud at most.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures = [new("slope", Slope.Degrees, "deg")];
        _packers.AddTo(figures);
        return figures;
    }

    /// <summary>Total, greatest and how many touch, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => "line: " + _packers;

    /// <summary>The one formula body, for the numbers and for the workings.</summary>
    private (double Slope, double Total) Solve<TTrace>(double[] packings, TTrace trace)
        where TTrace : struct, ITrace
    {
        double s1 = _along[_search.First.From], s2 = _along[_search.First.To], x1 = _offset[_search.First.From], x2 = _offset[_search.First.To];
        trace.Given("s_1", s1, "mm", Sources.Given, meaning: "place of one of the two points that give the slope");
        trace.Given("x_1", x1, "mm", Sources.Given, meaning: "its offset");
        trace.Given("s_2", s2, "mm", Sources.Given, meaning: "place of the other");
        trace.Given("x_2", x2, "mm", Sources.Given, meaning: "its offset");
        double slope = trace.Step("b", nameof(slope), (x2 - x1) / (s2 - s1), string.Empty, Sources.Packers);
        double touchAlong = _along[_search.Touch], touchOffset = _offset[_search.Touch], least = _least, total = 0, greatest = 0;
        trace.Given("s_touch", touchAlong, "mm", Sources.Given, meaning: "place of a point that the line touches");
        trace.Given("x_touch", touchOffset, "mm", Sources.Given, meaning: "its offset");
        trace.Given("p_least", least, "mm", Sources.Given, meaning: "least packing");
        trace.Given("T", total, "mm", Sources.Packers, meaning: "nothing yet in the total");
        trace.Given("G", greatest, "mm", Sources.Packers, meaning: "nothing yet for the greatest");
        for (int i = 0; i < packings.Length; i++)
        {
            double place = _along[i], offset = _offset[i];
            trace.Given("s_at", place, "mm", Sources.Given, i, "place");
            trace.Given("x_at", offset, "mm", Sources.Given, i, "offset");
            double packing = trace.Step("p", nameof(packing), offset - touchOffset - (slope * (place - touchAlong)) + least, "mm", Sources.Packers, i);
            total = trace.Step("T", nameof(total), total + packing, "mm", Sources.Packers, i);
            greatest = trace.Step("G", nameof(greatest), Math.Max(greatest, packing), "mm", Sources.Packers, i);
            packings[i] = packing;
        }

        return (slope, total);
    }
}
