using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>A plane over measured points of a face with a packer at each: what <see cref="Flattening"/> answers for a face.</summary>
public sealed class PackedPlane
{
    private static readonly Allowed s_place = new(-1e5, 1e5, "mm");

    private readonly double[] _u, _v, _offset;
    private readonly PackingSearch _search;
    private readonly double _least, _slopeU, _slopeV;
    private readonly PackerSet _packers;

    internal PackedPlane(double[] u, double[] v, double[] offset, PackingSearch search, FlatteningAim aim, double least, double? step)
    {
        (_u, _v, _offset, _search, Aim, _least) = (u, v, offset, search, aim, least);
        double[] packings = new double[u.Length];
        (_slopeU, _slopeV, double total) = Solve(packings, default(Silent));
        _packers = new PackerSet(packings, total, least, step);
        Findings = _packers.Findings(Math.Atan(Math.Sqrt((_slopeU * _slopeU) + (_slopeV * _slopeV))));
    }

    /// <summary>What was kept least.</summary>
    public FlatteningAim Aim { get; }

    /// <summary>The packer at each point, in the order given.</summary>
    public IReadOnlyList<PackedPoint> Points => _packers.Points;

    /// <summary>How the plane runs along u: positive where it goes away from the room as u grows.</summary>
    public Angle SlopeU => Door.Radians(Math.Atan(_slopeU));

    /// <summary>How the plane runs along v: positive where it goes away from the room as v grows.</summary>
    public Angle SlopeV => Door.Radians(Math.Atan(_slopeV));

    /// <summary>All packings together, before rounding up to packers.</summary>
    public Length Total => Door.Millimetres(_packers.Total);

    /// <summary>The greatest packing, before rounding up to packers.</summary>
    public Length Greatest => Door.Millimetres(_packers.Greatest);

    /// <summary>What should be known about the packers, gravest first.</summary>
    /// <remarks>Codes: <c>geometry-packers-thick</c>, <c>geometry-packers-steep</c>, <c>geometry-packers-stand-proud</c>, <c>geometry-packers-lengthen-stack</c>.</remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem => Findings.Count > 0 && Findings[0].Severity >= Severity.Problem;

    /// <summary>Offset of the plane at a place, outward from the reference: where the back of the furring is to be.</summary>
    /// <param name="u">Along the van [length], -100 m to 100 m.</param>
    /// <param name="v">Up the girth [length], -100 m to 100 m.</param>
    /// <returns>The offset.</returns>
    /// <exception cref="ArgumentException">A place is outside its range or in an undefined unit.</exception>
    public Length OffsetAt(Length u, Length v)
    {
        double atU = Door.Millimetres(u, nameof(u), s_place, null), atV = Door.Millimetres(v, nameof(v), s_place, null);
        return Door.Millimetres(Grid.Snap(_offset[_search.Touch] - _least + (_slopeU * (atU - _u[_search.Touch])) + (_slopeV * (atV - _v[_search.Touch]))));
    }

    /// <summary>How the packings follow from the plane, step by step. Which points give its tilt is a search.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        Solve(new double[_u.Length], recorder);
        return recorder.ToWorkings("Packers under a plane");
    }

    /// <summary>The plane as flat figures.</summary>
    /// <returns>Both slopes in degrees, points, how many touch, total and greatest packing, the point of the greatest; with a packer step how far the furring stands proud at most.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures = [new("slope-along", SlopeU.Degrees, "deg"), new("slope-up", SlopeV.Degrees, "deg")];
        _packers.AddTo(figures);
        return figures;
    }

    /// <summary>Total, greatest and how many touch, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => "plane: " + _packers;

    /// <summary>The one formula body, for the numbers and for the workings.</summary>
    private (double SlopeU, double SlopeV, double Total) Solve<TTrace>(double[] packings, TTrace trace)
        where TTrace : struct, ITrace
    {
        ((int from, int to), (int otherFrom, int otherTo)) = (_search.First, _search.Second);
        double u1 = _u[to] - _u[from], v1 = _v[to] - _v[from], x1 = _offset[to] - _offset[from];
        double u2 = _u[otherTo] - _u[otherFrom], v2 = _v[otherTo] - _v[otherFrom], x2 = _offset[otherTo] - _offset[otherFrom];
        trace.Given("u_1", u1, "mm", Sources.Given, meaning: "along u from one point to another that give the tilt");
        trace.Given("v_1", v1, "mm", Sources.Given, meaning: "the same along v");
        trace.Given("x_1", x1, "mm", Sources.Given, meaning: "the same in offset");
        trace.Given("u_2", u2, "mm", Sources.Given, meaning: "along u between the second pair");
        trace.Given("v_2", v2, "mm", Sources.Given, meaning: "the same along v");
        trace.Given("x_2", x2, "mm", Sources.Given, meaning: "the same in offset");
        double slopeU = trace.Step("a", nameof(slopeU), ((x1 * v2) - (x2 * v1)) / ((u1 * v2) - (u2 * v1)), string.Empty, Sources.Packers);
        double slopeV = trace.Step("b", nameof(slopeV), ((u1 * x2) - (u2 * x1)) / ((u1 * v2) - (u2 * v1)), string.Empty, Sources.Packers);
        double touchU = _u[_search.Touch], touchV = _v[_search.Touch], touchOffset = _offset[_search.Touch], least = _least, total = 0, greatest = 0;
        trace.Given("u_touch", touchU, "mm", Sources.Given, meaning: "place along u of a point that the plane touches");
        trace.Given("v_touch", touchV, "mm", Sources.Given, meaning: "its place along v");
        trace.Given("x_touch", touchOffset, "mm", Sources.Given, meaning: "its offset");
        trace.Given("p_least", least, "mm", Sources.Given, meaning: "least packing");
        trace.Given("T", total, "mm", Sources.Packers, meaning: "nothing yet in the total");
        trace.Given("G", greatest, "mm", Sources.Packers, meaning: "nothing yet for the greatest");
        for (int i = 0; i < packings.Length; i++)
        {
            double u = _u[i], v = _v[i], offset = _offset[i];
            trace.Given("u_at", u, "mm", Sources.Given, i, "place along u");
            trace.Given("v_at", v, "mm", Sources.Given, i, "place along v");
            trace.Given("x_at", offset, "mm", Sources.Given, i, "offset");
            double packing = trace.Step("p", nameof(packing), offset - touchOffset - (slopeU * (u - touchU)) - (slopeV * (v - touchV)) + least, "mm", Sources.Packers, i);
            total = trace.Step("T", nameof(total), total + packing, "mm", Sources.Packers, i);
            greatest = trace.Step("G", nameof(greatest), Math.Max(greatest, packing), "mm", Sources.Packers, i);
            packings[i] = packing;
        }

        return (slopeU, slopeV, total);
    }
}
