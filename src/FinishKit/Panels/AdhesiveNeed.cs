using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>Adhesive for a bond: what <see cref="PanelAdhesive.Needed"/> answers. The default value is a bond of nothing.</summary>
public readonly struct AdhesiveNeed : IEquatable<AdhesiveNeed>
{
    private readonly double _bonded, _covered, _containers;
    private readonly int _coats, _surfaces;
    private readonly bool _coverIsDefault;

    internal AdhesiveNeed(double bonded, double covered, int coats, int surfaces, bool coverIsDefault)
    {
        (_bonded, _covered, _coats, _surfaces, _coverIsDefault) = (bonded, covered, coats, surfaces, coverIsDefault);
        _containers = PanelAdhesive.Solve(bonded, covered, coats, surfaces, coverIsDefault, default(Silent));
    }

    /// <summary>Area of the bond.</summary>
    public Area Bonded => new(_bonded, AreaUnit.SquareMillimeter);

    /// <summary>Area of all coats on all surfaces.</summary>
    public Area Coated => new(_bonded * _surfaces * _coats, AreaUnit.SquareMillimeter);

    /// <summary>Containers used up; litres where no coverage was given.</summary>
    public double Containers => _containers;

    /// <summary>Containers to buy, whole ones; litres where no coverage was given.</summary>
    public int ToBuy => (int)Grid.CeilingOfRatio(_containers, 1);

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: never, for a quantity.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "Every result has it; a later finding may be a problem.")]
    public bool HasProblem => false;

    /// <summary>What a person should know; put together on reading.</summary>
    /// <remarks>Codes: <c>panels-adhesive-vapour</c>, <c>panels-adhesive-litres</c>, <c>panels-adhesive-one-surface</c>.</remarks>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            if (_bonded == 0)
            {
                return [];
            }

            Finding vapour = new(
                "panels-adhesive-vapour",
                Severity.Caution,
                "Vapour of solvent adhesive burns and makes ill, and is heavier than air, so that it gathers in a closed van: doors open and a fan on, no flame, heater or pilot light, a mask for organic vapour, and time for it to leave before the van is slept in. Read the adhesive's safety data sheet, and ask there too whether it holds at the heat under a roof.",
                [],
                AdhesiveDefaults.Vapour);
            List<Finding> findings = [vapour];
            if (_coverIsDefault)
            {
                findings.Add(new Finding(
                    "panels-adhesive-litres",
                    Severity.Note,
                    $"No coverage was given, so the answer is in litres, at {Print.Round(_covered / 1e6, 3)} m² a litre: it is not a number of cans. Give what a can coats to have cans.",
                    [new("covered", _covered, "mm2"), new("litres", _containers, AdhesiveDefaults.Litre)],
                    AdhesiveDefaults.CoverageSource));
            }

            if (_surfaces != 2)
            {
                findings.Add(new Finding("panels-adhesive-one-surface", Severity.Note, "One surface is coated: contact adhesive wants both, adhesives made for one say so.", []));
            }

            return findings.AsReadOnly();
        }
    }

    /// <summary>The coverage where none was given; put together on reading.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed => _coverIsDefault ? [new DefaultUsed(new Figure("covered", _covered, "mm2"), AdhesiveDefaults.CoverageSource)] : [];

    private string Unit => _coverIsDefault ? AdhesiveDefaults.Litre : string.Empty;

    private (double, double, int, int, bool) Key => (_bonded, _covered, _coats, _surfaces, _coverIsDefault);

    /// <summary>Whether bond, coverage, coats and surfaces agree.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree.</returns>
    public static bool operator ==(AdhesiveNeed left, AdhesiveNeed right) => left.Equals(right);

    /// <summary>Whether bond, coverage, coats or surfaces differ.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if one differs.</returns>
    public static bool operator !=(AdhesiveNeed left, AdhesiveNeed right) => !left.Equals(right);

    /// <summary>How the containers follow, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        PanelAdhesive.Solve(_bonded, _covered, _coats, _surfaces, _coverIsDefault, recorder);
        return recorder.ToWorkings("Adhesive for a bond");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Bond, coverage, coats, surfaces, containers used and to buy, in litres where no coverage was given.</returns>
    public IReadOnlyList<Figure> Figures() =>
    [
        new("bonded", _bonded, "mm2"),
        new("covered", _covered, "mm2"),
        new("coats", _coats, string.Empty),
        new("surfaces", _surfaces, string.Empty),
        new("containers", _containers, Unit),
        new("to-buy", ToBuy, Unit),
    ];

    /// <inheritdoc/>
    public bool Equals(AdhesiveNeed other) => Key.Equals(other.Key);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is AdhesiveNeed other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Containers, or litres, and bond, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Round(_containers, 3)} {(_coverIsDefault ? "litres" : "containers")} of adhesive for {Print.Round(_bonded / 1e6, 3)} m², {Print.Number(ToBuy)} to buy";
}
