using System;
using System.Collections.Generic;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>What holds a bay down to its length.</summary>
public enum BayGovernor
{
    /// <summary>The deflection allowed.</summary>
    Deflection = 0,

    /// <summary>The bending stress allowed.</summary>
    Stress = 1,

    /// <summary>The cap on the bay, whatever the stiffness.</summary>
    Cap = 2,
}

/// <summary>The largest bay of a board, strip or panel, and what governs it: what <see cref="BoardSpan"/> answers. Bays are rounded down to the 1 nm grid.</summary>
public readonly struct BayLimit : IEquatable<BayLimit>
{
    /// <summary>A bay under this is no design.</summary>
    private const double Impractical = 100;

    private readonly BayCase _given;
    private readonly BayNumbers _numbers;

    internal BayLimit(in BayCase given, in BayNumbers numbers)
    {
        _given = given;
        _numbers = numbers;
    }

    /// <summary>The largest bay: the least of the limits and the cap.</summary>
    public Length LargestBay => Door.Millimetres(_numbers.Bay);

    /// <summary>The largest bay by deflection alone; null where there is no load.</summary>
    public Length? ByDeflection => Bay(_numbers.ByDeflection);

    /// <summary>The largest bay by bending stress alone; null where there is no load or the strength is not known.</summary>
    public Length? ByStress => Bay(_numbers.ByStress);

    /// <summary>The cap on the bay.</summary>
    public Length Cap => Door.Millimetres(_given.Section.Width == 0 ? 0 : _given.Cap);

    /// <summary>What governs; deflection before stress before the cap where they are equal.</summary>
    public BayGovernor Governs => Grid.SnapDown(_numbers.ByDeflection) <= _numbers.Bay ? BayGovernor.Deflection
        : Grid.SnapDown(_numbers.ByStress) <= _numbers.Bay ? BayGovernor.Stress
        : BayGovernor.Cap;

    /// <summary>Deflection at the largest bay under the worse of the loads.</summary>
    public Length Deflection => Door.Millimetres(Grid.Snap(_numbers.Deflection));

    /// <summary>Bending stress at the largest bay under the worse of the loads.</summary>
    public Pressure Stress => new(_numbers.Stress, PressureUnit.Megapascal);

    /// <summary>Bending stress allowed; null where the strength is not known.</summary>
    public Pressure? AllowedStress => double.IsNaN(_numbers.Allowed) || _given.Section.Width == 0 ? null : new Pressure(_numbers.Allowed, PressureUnit.Megapascal);

    /// <summary>What to know, gravest first.</summary>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            List<Finding> findings = [];
            if (_given.Section.Width == 0)
            {
                return findings;
            }

            if (_numbers.Bay < Impractical)
            {
                findings.Add(new Finding(
                    "beams-bay-impractical",
                    Severity.Problem,
                    $"The largest bay is {Print.Mm(_numbers.Bay)}, less than {Print.Mm(Impractical)}: the section is too weak or too flexible for the load, or the cap is set too low.",
                    [new("largest-bay", _numbers.Bay, "mm")],
                    Sources.Beam));
            }

            if (double.IsNaN(_given.Section.Strength))
            {
                findings.Add(new Finding(
                    "beams-strength-unknown",
                    Severity.Caution,
                    $"No bending strength is given, so the stress of {Print.Round(_numbers.Stress, 2)} MPa is not checked: the bay is checked against deflection and the cap only.",
                    [new("stress", _numbers.Stress, "MPa")],
                    Sources.Beam));
            }

            AddTogether(findings);
            AddOneSpan(findings);
            findings.Add(new Finding(
                "beams-one-carries",
                Severity.Note,
                "One board carries the load alone, held both ways at each support; what neighbours take over through a tongue is not counted, and fasteners and furring are taken as rigid.",
                [],
                Sources.Beam));
            return Finding.GravestFirst(findings);
        }
    }

    /// <summary>Whether a finding is a problem.</summary>
    public bool HasProblem => _given.Section.Width != 0 && _numbers.Bay < Impractical;

    /// <summary>The defaults it rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed
    {
        get
        {
            List<DefaultUsed> defaults = [];
            if (_given.Section.Width == 0)
            {
                return defaults;
            }

            _given.Section.AddDefaults(defaults);
            Add(_given.PointIsDefault, new Figure("point-load", _given.Point, "N"), BeamDefaults.LoadSource);
            Add(_given.SpansGiven == 0, new Figure("spans", _given.Spans, string.Empty), BeamDefaults.SpansSource);
            Add(double.IsNaN(_given.LimitGiven), new Figure("deflection-limit", _given.Limit, "mm"), BeamDefaults.DeflectionSource);
            Add(double.IsNaN(_given.RatioGiven), new Figure("deflection-ratio", _given.Ratio, string.Empty), BeamDefaults.DeflectionSource);
            Add(double.IsNaN(_given.CapGiven), new Figure("cap", _given.Cap, "mm"), BeamDefaults.CapSource);
            return defaults;

            void Add(bool isDefault, Figure figure, Source source)
            {
                if (isDefault)
                {
                    defaults.Add(new DefaultUsed(figure, source));
                }
            }
        }
    }

    /// <summary>Whether two answers are of equal bays, deflection and stress.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if so.</returns>
    public static bool operator ==(BayLimit left, BayLimit right) => left.Equals(right);

    /// <summary>Whether two answers differ.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if so.</returns>
    public static bool operator !=(BayLimit left, BayLimit right) => !left.Equals(right);

    /// <summary>How the bays follow, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        if (_given.Section.Width != 0)
        {
            BoardSpan.Solve(_given, recorder);
        }

        return recorder.ToWorkings("Largest bay");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Largest bay, by deflection, by stress (each absent where it does not apply), cap, deflection and stress at the largest bay, stress allowed, worst severity of the findings.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures = [new("largest-bay", _numbers.Bay, "mm")];
        Add("bay-by-deflection", ByDeflection);
        Add("bay-by-stress", ByStress);
        figures.Add(new Figure("cap", Cap.Millimeters, "mm"));
        figures.Add(new Figure("deflection", Deflection.Millimeters, "mm"));
        figures.Add(new Figure("stress", _numbers.Stress, "MPa"));
        if (AllowedStress is { } allowed)
        {
            figures.Add(new Figure("stress-allowed", allowed.Megapascals, "MPa"));
        }

        if (_given.Section.Width != 0)
        {
            figures.Add(new Figure("worst-severity", (int)Findings[0].Severity, string.Empty));
        }

        return figures;

        void Add(string name, Length? bay)
        {
            if (bay is { } length)
            {
                figures.Add(new Figure(name, length.Millimeters, "mm"));
            }
        }
    }

    /// <inheritdoc/>
    public bool Equals(BayLimit other) => _numbers.Bay.Equals(other._numbers.Bay)
        && Grid.Snap(_numbers.ByDeflection).Equals(Grid.Snap(other._numbers.ByDeflection))
        && Grid.Snap(_numbers.ByStress).Equals(Grid.Snap(other._numbers.ByStress))
        && Cap.Value.Equals(other.Cap.Value)
        && _numbers.Deflection.Equals(other._numbers.Deflection)
        && _numbers.Stress.Equals(other._numbers.Stress);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is BayLimit other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((_numbers.Bay.GetHashCode() * 397) ^ _numbers.Stress.GetHashCode());

    /// <summary>The largest bay and what governs it, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"bay up to {Print.Mm(_numbers.Bay)}, governed by {Governs switch { BayGovernor.Deflection => "deflection", BayGovernor.Stress => "stress", _ => "the cap" }}";

    private Length? Bay(double bay) => double.IsNaN(bay) || double.IsInfinity(bay) || _given.Section.Width == 0 ? null : Door.Millimetres(Grid.SnapDown(bay));

    /// <summary>Each load alone keeps the limits; both at once may not.</summary>
    private void AddTogether(List<Finding> findings)
    {
        if (!(_given.Point > 0) || !(_given.Uniform > 0))
        {
            return;
        }

        SpanCoefficients worst = SpanCoefficients.Of(_given.Spans);
        SectionStiffness section = _given.Section.Solve(default(Silent));
        double bay = _numbers.Bay, cube = bay * bay * bay;
        double deflection = ((worst.PointSag * _given.Point * cube) + (worst.UniformSag * _given.Uniform * cube * bay)) / section.Stiffness;
        double stress = ((worst.PointMoment * _given.Point * bay) + (worst.UniformMoment * _given.Uniform * bay * bay)) / section.Modulus;
        findings.Add(new Finding(
            "beams-loads-apart",
            Severity.Caution,
            $"The point load and the uniform load are checked one by one. Acting together at {Print.Mm(bay)} they deflect up to {Print.Round(deflection, 2)} mm, {Print.Round(Math.Min(_given.Limit, bay / _given.Ratio), 2)} mm allowed, with a stress of up to {Print.Round(stress, 2)} MPa: where they do act together, take a smaller bay.",
            [new("deflection-together", deflection, "mm"), new("stress-together", stress, "MPa")],
            Sources.Beam));
    }

    /// <summary>A piece that reaches over one bay only has nothing beyond its supports to hold it straight.</summary>
    private void AddOneSpan(List<Finding> findings)
    {
        if (_given.Spans == 1 || (!(_given.Point > 0) && !(_given.Uniform > 0)))
        {
            return;
        }

        BayNumbers alone = BoardSpan.Solve(_given.OverOneSpan(), default(Silent));
        if (alone.Bay < _numbers.Bay)
        {
            findings.Add(new Finding(
                "beams-piece-over-one-bay",
                Severity.Caution,
                $"This is for boards over {Print.Number(_given.Spans)} bays or more. A piece that reaches over one bay only, beside a window say, may span {Print.Mm(Grid.Snap(alone.Bay))}.",
                [new("largest-single-bay", alone.Bay, "mm")],
                Sources.Beam));
        }
    }
}
