using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Whether a tip stays clear of what is behind. A forgotten value is the worst one.</summary>
public enum TipVerdict
{
    /// <summary>The tip is to be taken as reaching what is behind.</summary>
    Reaches = 0,

    /// <summary>The worst case falls short of the clearance asked, but at nominal sizes the tip stays clear, the chance of touching is within the limit, and only a rib's metal is behind.</summary>
    Marginal = 1,

    /// <summary>The worst case, every tolerance against you, keeps the clearance asked, and does not touch.</summary>
    Safe = 2,
}

/// <summary>Whether a fastener holds deep enough. A forgotten value is the worse one.</summary>
public enum BiteVerdict
{
    /// <summary>The worst case falls short of the least bite.</summary>
    TooLittle = 0,

    /// <summary>The worst case keeps the least bite.</summary>
    Bites = 1,
}

/// <summary>One fastener length tried against one job: every figure a person would ask about, and the two verdicts.</summary>
public sealed class FastenerCandidate
{
    private readonly StackNumbers _stack;
    private readonly TolerancedLength.Span _span;
    private readonly TipNumbers _numbers;

    internal FastenerCandidate(StackNumbers stack, TolerancedLength length, TolerancedLength.Span span, TipNumbers numbers)
    {
        _stack = stack;
        _span = span;
        _numbers = numbers;
        Length = length;
    }

    /// <summary>The fastener's length with the tolerance of its box.</summary>
    public TolerancedLength Length { get; }

    /// <summary>What is behind.</summary>
    public BehindKind Behind => _stack.Behind;

    /// <summary>Depth of the tip along the face normal at nominal sizes.</summary>
    public Length TipDepth => Door.Millimetres(_numbers.TipDepth);

    /// <summary>Clearance at nominal sizes, compressible layers squeezed; negative where the tip would be past what is behind.</summary>
    public Length Clearance => Door.Millimetres(_numbers.Clearance);

    /// <summary>Clearance with every tolerance against you.</summary>
    public Length WorstClearance => Door.Millimetres(_numbers.WorstClearance);

    /// <summary>Clearance by root-sum-square: the mean less three standard deviations.</summary>
    public Length RootSumSquareClearance => Door.Millimetres(_numbers.RootSumSquareClearance);

    /// <summary>Clearance that the worst case must keep to be safe.</summary>
    public Length RequiredClearance => Door.Millimetres(_stack.Required);

    /// <summary>Chance that this fastener's tip touches, by root-sum-square.</summary>
    public double TouchChance => _numbers.TouchChance;

    /// <summary>Hits to expect over the job: count times chance, whatever the fasteners share.</summary>
    public double ExpectedHits => _stack.Count * _numbers.TouchChance;

    /// <summary>Chance of one hit or more over the job. Shared tolerances make it smaller than the expected hits: whole rows touch or none does.</summary>
    public double AnyHitChance => FastenerLength.ChanceOfAny(_numbers.Mean, Math.Sqrt(_numbers.BatchVariance), Math.Sqrt(_numbers.OwnVariance), _stack.Count);

    /// <summary>Shank inside holding layers along its axis, tip included, at nominal sizes, compressible layers free.</summary>
    public Length Bite => Door.Millimetres(_numbers.Bite);

    /// <summary>Bite with every tolerance against you.</summary>
    public Length WorstBite => Door.Millimetres(_numbers.WorstBite);

    /// <summary><see cref="WorstBite"/> over the shank's diameter.</summary>
    public double WorstBiteDiameters => _numbers.WorstBite / _stack.Shank;

    /// <summary>Bite that the worst case must keep.</summary>
    public Length LeastBite => Door.Millimetres(_stack.LeastBite);

    /// <summary>Bite to aim for at nominal sizes.</summary>
    public Length TargetBite => Door.Millimetres(_stack.TargetBite);

    /// <summary>Whether the nominal bite reaches the target.</summary>
    public bool ReachesTarget => _numbers.Bite >= _stack.TargetBite;

    /// <summary>Whether the tip stays clear.</summary>
    public TipVerdict Tip => _numbers.WorstClearance >= _stack.Required && _numbers.WorstClearance > 0
        ? TipVerdict.Safe
        : _stack.Behind == BehindKind.RibMetal && _numbers.Clearance >= 0 && _numbers.TouchChance <= _stack.MarginalChance
            ? TipVerdict.Marginal
            : TipVerdict.Reaches;

    /// <summary>Whether it holds deep enough. In nothing that holds it never does, whatever bite is asked.</summary>
    public BiteVerdict Hold => _stack.Furring >= 0 && _numbers.WorstBite >= _stack.LeastBite ? BiteVerdict.Bites : BiteVerdict.TooLittle;

    internal string BehindWords => _stack.BehindWords;

    internal string FurringName => _stack.Furring < 0 ? "furring" : _stack.Names[_stack.Furring];

    /// <summary>Whether the head, at its deepest, may go through the first layer. Then the figures mean nothing and nothing is to be driven.</summary>
    public bool HeadGoesThrough => _stack.HeadGoesThrough;

    /// <summary>The three verdicts in one: safe or marginal, deep enough, and the head stays on the first layer.</summary>
    public bool MayBeDriven => Tip >= TipVerdict.Marginal && Hold == BiteVerdict.Bites && !HeadGoesThrough;

    /// <summary>How far the tip lies to the side of the head: L sin theta. What is behind must be the same there.</summary>
    public Length SideShift => Door.Millimetres(Grid.Snap(_span.Nominal * Math.Sin(_stack.Angle)));

    /// <summary>What a person should know about this length, gravest first.</summary>
    public IReadOnlyList<Finding> Findings => FastenerFindings.Of(_stack, this);

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: the same as not <see cref="MayBeDriven"/>.</summary>
    public bool HasProblem => !MayBeDriven;

    /// <summary>Why the tip verdict is what it is, against what and at which tolerance, in a sentence.</summary>
    public string TipReason
    {
        get
        {
            string worst = _numbers.WorstClearance >= 0
                ? $"in the worst case it stays {Print.Mm(_numbers.WorstClearance)} clear"
                : $"in the worst case it is {Print.Mm(-_numbers.WorstClearance)} past";
            string nominal = _numbers.Clearance >= 0 ? $"{Print.Mm(_numbers.Clearance)} clear" : $"{Print.Mm(-_numbers.Clearance)} past";
            string verdict = Tip switch
            {
                TipVerdict.Safe => $"is safe against {_stack.BehindWords}",
                TipVerdict.Marginal => $"is marginal against {_stack.BehindWords}",
                _ => _numbers.WorstClearance > 0 ? $"comes too near {_stack.BehindWords}" : $"reaches {_stack.BehindWords}",
            };
            return $"{Print.Mm(_span.Nominal)} {verdict}: {nominal} at nominal sizes, {worst} ({_stack.Tolerances(_span)}); {Print.Mm(_stack.Required)} asked, chance of touching {Print.Small(_numbers.TouchChance)}.";
        }
    }

    /// <summary>How the figures follow, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        FastenerLength.Solve(_stack, _span, recorder);
        return recorder.ToWorkings($"{Print.Mm(_span.Nominal)} fastener against {_stack.BehindWords}");
    }

    /// <summary>The candidate as flat figures.</summary>
    /// <returns>Verdicts as the numbers of their enumerations, then shank, length, tip depth, clearances, chances, bites; in mm or plain numbers. Always the same names.</returns>
    public IReadOnlyList<Figure> Figures() =>
    [
        new("may-be-driven", MayBeDriven ? 1 : 0, string.Empty),
        new("tip-verdict", (int)Tip, string.Empty),
        new("bite-verdict", (int)Hold, string.Empty),
        new("count", _stack.Count, string.Empty),
        new("shank", _stack.Shank, "mm"),
        new("length", _span.Nominal, "mm"),
        new("side-shift", Door.Millimetres(SideShift), "mm"),
        new("tip-depth", _numbers.TipDepth, "mm"),
        new("clearance", _numbers.Clearance, "mm"),
        new("worst-clearance", _numbers.WorstClearance, "mm"),
        new("root-sum-square-clearance", _numbers.RootSumSquareClearance, "mm"),
        new("required-clearance", _stack.Required, "mm"),
        new("touch-chance", TouchChance, string.Empty),
        new("expected-hits", ExpectedHits, string.Empty),
        new("any-hit-chance", AnyHitChance, string.Empty),
        new("bite", _numbers.Bite, "mm"),
        new("worst-bite", _numbers.WorstBite, "mm"),
        new("least-bite", _stack.LeastBite, "mm"),
        new("target-bite", _stack.TargetBite, "mm"),
    ];

    /// <summary>Length, verdicts and the figures behind them, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{TipReason} Bite {Print.Mm(_numbers.Bite)}, worst case {Print.Mm(_numbers.WorstBite)}; {Print.Mm(_stack.LeastBite)} asked: {(Hold == BiteVerdict.Bites ? "bites" : "too little")}.";
}
