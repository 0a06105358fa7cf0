using UnitsNet;

namespace FinishKit;

/// <summary>One length of tapping screw tried against one job.</summary>
public sealed class MetalScrewLength
{
    private readonly MetalScrewNumbers _job;
    private readonly MetalScrewSum _sum;

    internal MetalScrewLength(MetalScrewNumbers job, TolerancedLength length, TolerancedLength.Span span, in MetalScrewSum sum)
    {
        _job = job;
        _sum = sum;
        Length = length;
        Span = span;
    }

    /// <summary>The length with its tolerance.</summary>
    public TolerancedLength Length { get; }

    /// <summary>Depth of the tip below the face at nominal sizes.</summary>
    public Length TipDepth => Door.Millimetres(_sum.TipDepth);

    /// <summary>From the metal's back to the tip at nominal sizes, point included; negative where the tip does not pass the metal.</summary>
    public Length BeyondMetal => Door.Millimetres(_sum.Beyond);

    /// <summary>The same with every tolerance against you.</summary>
    public Length WorstBeyondMetal => Door.Millimetres(_sum.WorstBeyond);

    /// <summary>From the tip to what is behind at nominal sizes; negative where it is past it.</summary>
    public Length Clearance => Door.Millimetres(_sum.Clearance);

    /// <summary>The same with every tolerance against you.</summary>
    public Length WorstClearance => Door.Millimetres(_sum.WorstClearance);

    /// <summary>Whether in the worst case the pitches of full thread asked, and the point, are beyond the metal.</summary>
    public bool ThreadHolds => _sum.WorstBeyond >= _job.NeededBeyond;

    /// <summary>Whether in the worst case the tip keeps the clearance asked and does not touch what is behind.</summary>
    public bool StaysClear => _sum.WorstClearance >= _job.Required && _sum.WorstClearance > 0;

    /// <summary>Both, and the head stays on the panel.</summary>
    public bool MayBeDriven => ThreadHolds && StaysClear && !_job.HeadGoesThrough;

    internal TolerancedLength.Span Span { get; }

    /// <summary>Length and the two verdicts, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Mm(Span.Nominal)} screw: {Print.Mm(_sum.WorstBeyond)} beyond the metal in the worst case, {Print.Mm(_job.NeededBeyond)} asked: {(ThreadHolds ? "holds" : "too short")}; {Print.Mm(_sum.WorstClearance)} clear of {_job.BehindWords} in the worst case, {Print.Mm(_job.Required)} asked: {(StaysClear ? "stays clear" : "comes too near")}";
}
