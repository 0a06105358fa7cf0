using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>How a saw is set for a compound cut: what <see cref="CompoundCut"/> answers. The default value is a square cut.</summary>
public readonly struct CompoundSetting : IEquatable<CompoundSetting>
{
    private const double Degree = Math.PI / 180;

    private readonly Form _form;
    private readonly double _mitre, _bevel, _lean, _straightLess;
    private readonly int _sides;
    private readonly JoinedPieces _pieces;

    internal CompoundSetting(double mitre, double bevel, double spring, double corner)
    {
        this = default;
        (_form, _mitre, _bevel, _lean, _straightLess) = (Form.Corner, mitre, bevel, spring, 180 - corner);
    }

    internal CompoundSetting(double mitre, double bevel, int sides, double pitch)
    {
        this = default;
        (_form, _mitre, _bevel, _sides, _lean) = (Form.Sides, mitre, bevel, sides, pitch);
    }

    internal CompoundSetting(double mitre, double bevel, JoinedPieces pieces)
    {
        this = default;
        (_form, _mitre, _bevel, _pieces) = (Form.Between, mitre, bevel, pieces);
    }

    private enum Form
    {
        Corner,
        Sides,
        Between,
    }

    /// <summary>How far the saw turns from square; which sign is which is said at <see cref="CompoundCut"/>.</summary>
    public Angle Mitre => Door.Radians(_mitre);

    /// <summary>How far the blade tilts from square to the face: positive where the back comes out longer than the face.</summary>
    public Angle Bevel => Door.Radians(_bevel);

    /// <summary>Angle between the two faces on the room's side: under 180° in an inside corner, over it on an outside one.</summary>
    public Angle BetweenFaces => Door.Radians(Math.PI - (2 * _bevel));

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: never, for a setting.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "Every result has it; a later finding may be a problem.")]
    public bool HasProblem => false;

    /// <summary>Where a usual saw does not reach; put together on reading.</summary>
    /// <remarks>Codes: <c>geometry-cut-mitre-over</c>, <c>geometry-cut-bevel-over</c>.</remarks>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            List<Finding> findings = [];
            double mitre = MitreDegrees, bevel = BevelDegrees;
            if (Math.Abs(mitre) > CutDefaults.SawTurns)
            {
                findings.Add(new Finding(
                    "geometry-cut-mitre-over",
                    Severity.Caution,
                    $"The cut is {Print.Round(Math.Abs(mitre), 2)}° from square, more than the {Print.Number(CutDefaults.SawTurns)}° that a mitre saw usually turns: cut it with a jig that holds the piece, never by hand-holding it.",
                    [new("mitre", mitre, "deg"), new("limit", CutDefaults.SawTurns, "deg")],
                    CutDefaults.SawReach));
            }

            if (Math.Abs(bevel) > CutDefaults.SawTilts)
            {
                findings.Add(new Finding(
                    "geometry-cut-bevel-over",
                    Severity.Caution,
                    $"The blade tilts by {Print.Round(Math.Abs(bevel), 2)}°, more than the {Print.Number(CutDefaults.SawTilts)}° that a saw usually does: stand the piece on its edge or end against a fence, or plane the rest.",
                    [new("bevel", bevel, "deg"), new("limit", CutDefaults.SawTilts, "deg")],
                    CutDefaults.SawReach));
            }

            return findings;
        }
    }

    // Plus 0: a rounded -0 is 0, so that equal settings have equal hashes on every framework.
    private double MitreDegrees => Math.Round(_mitre / Degree, 10) + 0.0;

    private double BevelDegrees => Math.Round(_bevel / Degree, 10) + 0.0;

    /// <summary>Whether both angles agree.</summary>
    /// <param name="left">One setting.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree to ten decimals of a degree.</returns>
    public static bool operator ==(CompoundSetting left, CompoundSetting right) => left.Equals(right);

    /// <summary>Whether an angle differs.</summary>
    /// <param name="left">One setting.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they differ within ten decimals of a degree.</returns>
    public static bool operator !=(CompoundSetting left, CompoundSetting right) => !left.Equals(right);

    /// <summary>How both angles follow, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        switch (_form)
        {
            case Form.Sides:
                CompoundCut.SolveSides(_sides, _lean, recorder);
                break;
            case Form.Between:
                CompoundCut.SolveBetween(_pieces, recorder);
                break;
            default:
                CompoundCut.SolveCorner(_lean, 180 - _straightLess, recorder);
                break;
        }

        return recorder.ToWorkings("Compound cut");
    }

    /// <summary>The setting as flat figures.</summary>
    /// <returns>Mitre, bevel and the angle between the faces, in degrees.</returns>
    public IReadOnlyList<Figure> Figures() => [new("mitre", MitreDegrees, "deg"), new("bevel", BevelDegrees, "deg"), new("between-faces", 180 - (2 * BevelDegrees), "deg")];

    /// <inheritdoc/>
    public bool Equals(CompoundSetting other) => MitreDegrees.Equals(other.MitreDegrees) && BevelDegrees.Equals(other.BevelDegrees);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CompoundSetting other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((MitreDegrees.GetHashCode() * 397) ^ BevelDegrees.GetHashCode());

    /// <summary>Both angles to the hundredth of a degree, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"mitre {Print.Round(MitreDegrees, 2)}°, bevel {Print.Round(BevelDegrees, 2)}°";
}
