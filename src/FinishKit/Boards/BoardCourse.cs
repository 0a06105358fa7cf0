using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>What is left of a course between openings and edges: a rectangle, or under a tapering head a piece whose upper edge slopes.</summary>
public sealed class CoursePiece
{
    internal CoursePiece(CourseCut cut)
    {
        Cut = cut;
    }

    /// <summary>Its front, along the van.</summary>
    public Length FromU => Mm(Cut.U0);

    /// <summary>Its rear, along the van.</summary>
    public Length ToU => Mm(Cut.U1);

    /// <summary>Its lower face edge, up the girth.</summary>
    public Length FromV => Mm(Cut.V0);

    /// <summary>Its upper face edge at its front.</summary>
    public Length ToVAtFront => Mm(Cut.V1AtFront);

    /// <summary>Its upper face edge at its rear.</summary>
    public Length ToVAtRear => Mm(Cut.V1AtRear);

    /// <summary>Its width where it is narrowest.</summary>
    public Length LeastWidth => Mm(Cut.Least);

    /// <summary>Its width where it is widest.</summary>
    public Length GreatestWidth => Mm(Math.Max(Cut.V1AtFront, Cut.V1AtRear) - Cut.V0);

    /// <summary>Whether it is cut by an edge below and by one above, so that no other offset of the joints changes its width.</summary>
    public bool IsBetweenEdges => Cut.IsBetweenEdges;

    internal CourseCut Cut { get; }

    /// <summary>Where it lies, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"u {Print.Number(Grid.Millimetres(Cut.U0))} to {Print.Mm(Grid.Millimetres(Cut.U1))}, v {Print.Number(Grid.Millimetres(Cut.V0))} to {Print.Mm(Grid.Millimetres(Math.Max(Cut.V1AtFront, Cut.V1AtRear)))}, {Print.Mm(Grid.Millimetres(Cut.Least))} wide{(Cut.V1AtFront == Cut.V1AtRear ? string.Empty : " at least")}";

    private static Length Mm(long nanometres) => Door.Millimetres(Grid.Millimetres(nanometres));
}

/// <summary>A course: a row of boards along the van, with the width to rip.</summary>
public sealed class BoardCourse
{
    private readonly long _lower, _upper, _front, _middle, _rear;

    internal BoardCourse(int band, (long Lower, long Upper) edges, (long Front, long Middle, long Rear) widths, (bool Below, bool Above) cut, (double Below, double Above) bevel, CoursePiece[] pieces, bool isTapered)
    {
        Band = band;
        (_lower, _upper) = edges;
        (_front, _middle, _rear) = widths;
        (IsCutBelow, IsCutAbove) = cut;
        BevelBelow = new Angle(bevel.Below, UnitsNet.Units.AngleUnit.Degree);
        BevelAbove = new Angle(bevel.Above, UnitsNet.Units.AngleUnit.Degree);
        Pieces = [.. pieces];
        IsTapered = isTapered;
    }

    /// <summary>Which band it belongs to, from 0 at the foot.</summary>
    public int Band { get; }

    /// <summary>Its lower face edge, up the girth.</summary>
    public Length LowerLine => Mm(_lower);

    /// <summary>Its upper face edge, up the girth; under a tapering head where that is highest.</summary>
    public Length UpperLine => Mm(_upper);

    /// <summary>Width of its face at the front, openings left aside; 0 where it does not reach there.</summary>
    public Length WidthAtFront => Mm(_front);

    /// <summary>Width of its face half way along.</summary>
    public Length WidthHalfWay => Mm(_middle);

    /// <summary>Width of its face at the rear.</summary>
    public Length WidthAtRear => Mm(_rear);

    /// <summary>
    /// Width to rip the board to before any taper is cut: its face where it is widest. Where a bevel is positive the back is wider than the face: rip wider by the thickness times
    /// tan(bevel) at each such edge.
    /// </summary>
    public Length RipWidth => Mm(_upper - _lower);

    /// <summary>Whether its face is that of a whole board all along.</summary>
    public bool IsWhole => !IsCutBelow && !IsCutAbove;

    /// <summary>Whether its width changes along the van.</summary>
    public bool IsTapered { get; }

    /// <summary>Whether its lower face edge is ripped: groove or lap go with it.</summary>
    public bool IsCutBelow { get; }

    /// <summary>Whether its upper face edge is ripped, somewhere along the van.</summary>
    public bool IsCutAbove { get; }

    /// <summary>Bevel of its lower edge from square, half the change of lean where it starts at a break that ends a course; else 0. Positive in a hollow, where the back is wider than the face; negative on a ridge.</summary>
    public Angle BevelBelow { get; }

    /// <summary>Bevel of its upper edge from square, half the change of lean where it ends at such a break; else 0. Signed as <see cref="BevelBelow"/>.</summary>
    public Angle BevelAbove { get; }

    /// <summary>What is left of it beside, above and below openings: by front, then from below. Empty where openings take it all.</summary>
    public IReadOnlyList<CoursePiece> Pieces { get; }

    internal long Lower => _lower;

    internal long Upper => _upper;

    /// <summary>Lines, width, and whether it is whole, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string cut = IsWhole ? "whole" : IsCutBelow && IsCutAbove ? "cut on both edges" : IsCutBelow ? "cut below" : "cut above";
        return $"{Print.Number(Grid.Millimetres(_lower))} to {Print.Mm(Grid.Millimetres(_upper))}, {Print.Mm(Grid.Millimetres(_upper - _lower))}, {cut}{(IsTapered ? ", tapered" : string.Empty)}";
    }

    private static Length Mm(long nanometres) => Door.Millimetres(Grid.Millimetres(nanometres));
}

/// <summary>A band: what lies between breaks that end a course, or foot or head, and how its courses are set out.</summary>
public sealed class CourseBand
{
    internal CourseBand(CourseBandNumbers numbers, CourseRule rule, (long Offset, long Narrowest) chosen, (long Offset, long Narrowest) best)
    {
        Numbers = numbers;
        Rule = rule;
        OffsetNm = chosen.Offset;
        FromV = Mm(numbers.Foot);
        ToV = Mm(numbers.MostHead);
        Offset = Mm(chosen.Offset);
        Guaranteed = Mm(chosen.Narrowest);
        BestOffset = Mm(best.Offset);
        BestGuaranteed = Mm(best.Narrowest);
    }

    /// <summary>Its foot, up the girth.</summary>
    public Length FromV { get; }

    /// <summary>Its head; where it tapers, where that is highest.</summary>
    public Length ToV { get; }

    /// <summary>Where its courses start.</summary>
    public CourseRule Rule { get; }

    /// <summary>From its foot to the first lower edge of a board that lies there or above, 0 up to one cover. 0: a whole board at the foot.</summary>
    public Length Offset { get; }

    /// <summary>
    /// The narrowest piece there may be while the set-out is off by up to the error either way; 0 where a joint may come to lie just beside an edge, where a tapered course runs
    /// out to nothing, and where no board goes at all.
    /// </summary>
    public Length Guaranteed { get; }

    /// <summary>The offset of <see cref="CourseRule.BestOffset"/>, whatever the rule.</summary>
    public Length BestOffset { get; }

    /// <summary>What that offset guarantees: the best that can be had in this band.</summary>
    public Length BestGuaranteed { get; }

    internal CourseBandNumbers Numbers { get; }

    internal long OffsetNm { get; }

    /// <summary>Whether there is room for a board anywhere in it.</summary>
    internal bool HasPieces { get; init; }

    /// <summary>As <see cref="Guaranteed"/>, over the pieces that another offset would change, and not at an edge that a whole board is set to on purpose.</summary>
    internal long Movable { get; init; }

    /// <summary>Range, rule and offset, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string rule = Rule switch
        {
            CourseRule.Balanced => "balanced",
            CourseRule.WholeAtFoot => "whole at the foot",
            CourseRule.WholeAtHead => "whole at the head",
            _ => "best offset",
        };
        return $"{Print.Number(FromV.Millimeters)} to {Print.Mm(ToV.Millimeters)}, {rule}, offset {Print.Mm(Offset.Millimeters)}, {(HasPieces ? "at least " + Print.Mm(Guaranteed.Millimeters) : "no piece")}";
    }

    private static Length Mm(long nanometres) => Door.Millimetres(Grid.Millimetres(nanometres));
}
