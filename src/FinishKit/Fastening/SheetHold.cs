using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>What thin steel sheet holds of a screw's pull: what <see cref="SheetPullOut"/> answers. The default value is no screw in no sheet, which holds nothing.</summary>
public readonly struct SheetHold : IEquatable<SheetHold>
{
    private readonly bool _isPullOver;
    private readonly double _sheet, _diameter, _strength, _nominal, _allowable;

    internal SheetHold(bool isPullOver, double sheet, double diameter, double strength)
    {
        _isPullOver = isPullOver;
        _sheet = sheet;
        _diameter = diameter;
        _strength = strength;
        (_nominal, _allowable) = SheetPullOut.Solve(isPullOver, sheet, diameter, strength, default(Silent));
    }

    /// <summary>Whether the sheet is the one under the head; else it is the one that the thread is in.</summary>
    public bool IsPullOver => _isPullOver;

    /// <summary>Thickness of the bare sheet.</summary>
    public Length Sheet => Door.Millimetres(_sheet);

    /// <summary>Diameter of the screw over its thread, or of the head or washer.</summary>
    public Length Diameter => Door.Millimetres(_diameter);

    /// <summary>Tensile strength of the sheet.</summary>
    public Pressure Strength => new(_strength, PressureUnit.Megapascal);

    /// <summary>The nominal strength: about what fails it in a test. Not a load to put on.</summary>
    public Force Nominal => Door.Newtons(_nominal);

    /// <summary>The load that may be put on: the nominal strength over <see cref="SafetyFactor"/>.</summary>
    public Force Allowable => Door.Newtons(_allowable);

    /// <summary>The safety factor of the source, 3.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "Part of every answer; another method may have another.")]
    public double SafetyFactor => MetalDefaults.SafetyFactor;

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: never, here.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "Every result has it; a later finding may be a problem.")]
    public bool HasProblem => false;

    /// <summary>What a person should know, gravest first; put together on reading.</summary>
    /// <remarks>Codes: <c>fastening-sheet-screw-size</c>, <c>fastening-sheet-head-size</c>, <c>fastening-sheet-head-counted</c>, <c>fastening-sheet-steady-pull</c>.</remarks>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            List<Finding> findings = [];
            if (!_isPullOver && _diameter is < 2.03 or > 6.35)
            {
                findings.Add(new Finding("fastening-sheet-screw-size", Severity.Caution, $"A screw of {Print.Mm(_diameter)} is outside the 2.03 to 6.35 mm that the formula was made for.", [new("diameter", _diameter, "mm")], MetalDefaults.Aisi));
            }

            if (_isPullOver && _diameter < 7.94)
            {
                findings.Add(new Finding("fastening-sheet-head-size", Severity.Caution, $"A head of {Print.Mm(_diameter)} is less than the 7.94 mm that a screw in tension is to have: put a washer under it.", [new("head", _diameter, "mm")], MetalDefaults.Aisi));
            }

            if (_isPullOver && _diameter > SheetPullOut.MostHead)
            {
                findings.Add(new Finding("fastening-sheet-head-counted", Severity.Note, $"Of a head of {Print.Mm(_diameter)} only {Print.Mm(SheetPullOut.MostHead)} count.", [new("head", _diameter, "mm"), new("head-counted", SheetPullOut.MostHead, "mm")], MetalDefaults.Aisi));
            }

            findings.Add(new Finding(
                "fastening-sheet-steady-pull",
                Severity.Note,
                "The figure is for a steady pull along the screw in sound steel; loads that come and go, rust and a stripped hole hold less. A later review of tests asks for a correction to the pull-out formula, which is not applied here.",
                [new("nominal", _nominal, "N"), new("allowable", _allowable, "N")],
                MetalDefaults.AisiReview));
            return Finding.GravestFirst(findings);
        }
    }

    internal double AllowableNewtons => _allowable;

    private (bool, double, double, double) Key => (_isPullOver, _sheet, _diameter, _strength);

    /// <summary>Whether question and figures agree.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree.</returns>
    public static bool operator ==(SheetHold left, SheetHold right) => left.Equals(right);

    /// <summary>Whether question or a figure differs.</summary>
    /// <param name="left">One value.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if one differs.</returns>
    public static bool operator !=(SheetHold left, SheetHold right) => !left.Equals(right);

    /// <summary>How the pull follows, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        SheetPullOut.Solve(_isPullOver, _sheet, _diameter, _strength, recorder);
        return recorder.ToWorkings(_isPullOver ? "Pull that brings a sheet over a screw's head" : "Pull that draws a screw out of a sheet");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Whether it is the sheet under the head (1 or 0), sheet, diameter, strength, nominal and allowable pull, safety factor.</returns>
    public IReadOnlyList<Figure> Figures() =>
    [
        new("pull-over", _isPullOver ? 1 : 0, string.Empty),
        new("sheet", _sheet, "mm"),
        new("diameter", _diameter, "mm"),
        new("strength", _strength, "MPa"),
        new("nominal", _nominal, "N"),
        new("safety-factor", SafetyFactor, string.Empty),
        new("allowable", _allowable, "N"),
    ];

    /// <inheritdoc/>
    public bool Equals(SheetHold other) => Key.Equals(other.Key);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is SheetHold other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Allowable and nominal pull, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Mm(_sheet)} sheet {(_isPullOver ? "under a head of" : "around a screw of")} {Print.Mm(_diameter)}: {Print.Round(_allowable, 2)} N allowable, {Print.Round(_nominal, 2)} N nominal";
}
