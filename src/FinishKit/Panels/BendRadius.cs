using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>The tightest radius a sheet may be bent to: what <see cref="PanelBend.MinimumRadius(BentSheet)"/> answers. The default value is no sheet and radius 0.</summary>
public readonly struct BendRadius : IEquatable<BendRadius>
{
    private readonly BendLimit _limit;

    internal BendRadius(in BendLimit limit) => _limit = limit;

    /// <summary>Radius at which the bending strength, divided by the factor, is reached; to the sheet's middle.</summary>
    public Length Elastic => Door.Millimetres(Grid.Snap(IsNone ? 0 : _limit.Elastic));

    /// <summary>The published minimum radius that was given, or null.</summary>
    public Length? Published => IsNone || double.IsNaN(_limit.Published) ? null : Door.Millimetres(_limit.Published);

    /// <summary>The greater of the two: the radius that must not be undercut anywhere.</summary>
    public Length Minimum => Door.Millimetres(Grid.Snap(IsNone ? 0 : _limit.Minimum));

    /// <summary>Which of the two that is.</summary>
    public BendBasis Governs => _limit.Basis;

    /// <summary>The factor on the elastic radius.</summary>
    public double Factor => _limit.Factor;

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: never, for a radius alone.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "Every result has it; a later finding may be a problem.")]
    public bool HasProblem => false;

    /// <summary>What a person should know, gravest first; put together on reading.</summary>
    /// <remarks>Codes: <c>panels-bend-factor-low</c>, <c>panels-published-condition</c>, <c>panels-allowable-strength</c>, <c>panels-bend-dry</c>.</remarks>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            if (IsNone)
            {
                return [];
            }

            List<Finding> findings = [];
            PanelFindings.AddLimit(_limit, findings);
            return Finding.GravestFirst(findings);
        }
    }

    /// <summary>The defaults that the radius rests on; put together on reading.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed => _limit.FactorIsDefault ? [_limit.DefaultFactorUsed] : [];

    private bool IsNone => _limit.Thickness == 0;

    /// <summary>Whether thickness, stiffness, strength, factor and published radius agree.</summary>
    /// <param name="left">One radius.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree.</returns>
    public static bool operator ==(BendRadius left, BendRadius right) => left.Equals(right);

    /// <summary>Whether thickness, stiffness, strength, factor or published radius differ.</summary>
    /// <param name="left">One radius.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if one differs.</returns>
    public static bool operator !=(BendRadius left, BendRadius right) => !left.Equals(right);

    /// <summary>How the radius comes about, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        if (!IsNone)
        {
            BendQuestion.SolveMinimum(_limit, recorder);
        }

        return recorder.ToWorkings("Tightest radius of a sheet");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Elastic radius, published radius where there is one, minimum radius, factor and the worst severity as the number of its enumeration.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures = [new("elastic-radius", Door.Millimetres(Elastic), "mm"), new("minimum-radius", Door.Millimetres(Minimum), "mm"), new("bend-factor", Factor, string.Empty), PanelFindings.Worst(Findings)];
        if (Published is { } published)
        {
            figures.Insert(1, new Figure("published-radius", Door.Millimetres(published), "mm"));
        }

        return figures;
    }

    /// <inheritdoc/>
    public bool Equals(BendRadius other) => _limit.Thickness.Equals(other._limit.Thickness) && _limit.Elasticity.Equals(other._limit.Elasticity)
        && _limit.Strength.Equals(other._limit.Strength) && _limit.Factor.Equals(other._limit.Factor) && _limit.Published.Equals(other._limit.Published);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is BendRadius other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((((_limit.Thickness.GetHashCode() * 397) ^ _limit.Elasticity.GetHashCode()) * 397) ^ _limit.Strength.GetHashCode());

    /// <summary>Radius and basis, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => IsNone
        ? "no sheet"
        : $"no tighter than {Print.MmUp(_limit.Minimum)} to the middle ({PanelFindings.Words(_limit)})";
}
