using System.Collections.Generic;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>How many fasteners hold a hung mass, whether those that are there do, and how far apart they sit: what <see cref="Retention.FastenersNeeded(HungMass)"/> answers.</summary>
/// <remarks><see cref="Retention.FastenersNeeded(HungMass)"/> makes one.</remarks>
public sealed class RetentionResult
{
    private readonly RetentionCase _case;
    private readonly RetentionNumbers _numbers;
    private readonly double _spacing;
    private readonly int _perRow;

    internal RetentionResult(WithdrawalCapacity one, in RetentionCase given, in RetentionNumbers numbers, double run, int rows)
    {
        PerFastener = one;
        _case = given;
        _numbers = numbers;
        double fasteners = given.Fasteners == 0 ? numbers.Needed : given.Fasteners;
        _perRow = fasteners > 0 ? (int)Grid.CeilingOfRatio(fasteners, rows) : 0;
        _spacing = _perRow > 0 ? run / _perRow : double.NaN;
        Findings = RetentionFindings.All(one, given, numbers);
        DefaultsUsed = RetentionFindings.Defaults(one, given, numbers);
        HasProblem = false;
        foreach (Finding finding in Findings)
        {
            HasProblem |= finding.Severity >= Severity.Problem;
        }
    }

    /// <summary>What one fastener holds, as it was given.</summary>
    public WithdrawalCapacity PerFastener { get; }

    /// <summary>The hung mass.</summary>
    public Mass Mass => new(_case.Mass, MassUnit.Kilogram);

    /// <summary>The acceleration in g, gravity included.</summary>
    public double Acceleration => _case.Acceleration;

    /// <summary>The load of the mass at the acceleration.</summary>
    public Force Load => new(_numbers.Load, ForceUnit.Newton);

    /// <summary>What the adhesive takes of it; zero unless its strength was given.</summary>
    public Force AdhesiveCapacity => new(_numbers.Adhesive, ForceUnit.Newton);

    /// <summary>What is left to the fasteners.</summary>
    public Force CarriedByFasteners => new(_numbers.Carried, ForceUnit.Newton);

    /// <summary>The factor that made the capacity of one fastener a design load.</summary>
    public double DesignFactor => _numbers.DesignFactor;

    /// <summary>What one fastener may be loaded with; zero where Eurocode 5 refuses it.</summary>
    public Force DesignCapacity => new(_numbers.Capacity, ForceUnit.Newton);

    /// <summary>Fasteners it takes; null where no practical number holds it.</summary>
    public int? FastenersNeeded => double.IsNaN(_numbers.Needed) ? null : (int)_numbers.Needed;

    /// <summary>Fasteners there are; null where that was the question.</summary>
    public int? FastenersGiven => _case.Fasteners == 0 ? null : _case.Fasteners;

    /// <summary>Whether the fasteners there are, or so many as it takes, hold <see cref="CarriedByFasteners"/> at <see cref="DesignCapacity"/> each: on the road, not in a crash.</summary>
    public bool Holds => FastenersNeeded is { } needed && (_case.Fasteners == 0 || _case.Fasteners >= needed);

    /// <summary>Mass over the fasteners there are, or else the fasteners it takes; null where there are none.</summary>
    public Mass? MassPerFastener => Counted > 0 ? new Mass(_case.Mass / Counted, MassUnit.Kilogram) : null;

    /// <summary>Load on the fasteners over what they hold, those there are or else those it takes; null where they hold nothing.</summary>
    public double? Utilisation => double.IsNaN(_numbers.Utilisation) ? null : _numbers.Utilisation;

    /// <summary>Fasteners in a row, the last row perhaps fewer; null where there are none.</summary>
    public int? FastenersPerRow => _perRow == 0 ? null : _perRow;

    /// <summary>Distance between fasteners of a row, with half of it at each end; null without a run or fasteners. Strength alone: boards and sheets may ask for closer.</summary>
    public Length? Spacing => double.IsNaN(_spacing) ? null : Door.Millimetres(Grid.SnapDown(_spacing));

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem { get; }

    /// <summary>What a person should know about the answer, gravest first, those of the capacity of one fastener included.</summary>
    /// <remarks>
    /// Codes of its own: <c>fastening-retention-short</c>, <c>fastening-no-capacity</c>, <c>fastening-eurocode5-permanent-load</c>,
    /// <c>fastening-adhesive-not-counted</c>, <c>fastening-adhesive-counted</c>, <c>fastening-screw-group</c>, <c>fastening-retention-under-gravity</c>, <c>fastening-retention-road-only</c>.
    /// Where a design factor under 1 was applied, what the capacity says about not being a design value is left out: it has been dealt with.
    /// </remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The defaults that the answer rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    private double Counted => _case.Fasteners == 0 ? _numbers.Needed : _case.Fasteners;

    /// <summary>How the answer comes about, step by step. How one fastener's capacity does, its own <see cref="WithdrawalCapacity.Explain"/> says.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        Retention.Solve(_case, recorder);
        return recorder.ToWorkings("Fasteners that hold a hung mass");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Mass, acceleration, load, adhesive, load on the fasteners, design factor and capacity; counts, mass per fastener, utilisation and spacing where there are such.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures =
        [
            new("mass", _case.Mass, "kg"),
            RetentionFindings.Acceleration(_case),
            new("load", _numbers.Load, "N"),
            new("adhesive-capacity", _numbers.Adhesive, "N"),
            new("carried-by-fasteners", _numbers.Carried, "N"),
            RetentionFindings.DesignFactor(_numbers),
            new("capacity", _numbers.Capacity, "N"),
        ];
        Add("fasteners-needed", FastenersNeeded, string.Empty);
        Add("fasteners-given", FastenersGiven, string.Empty);
        Add("mass-per-fastener", MassPerFastener?.Kilograms, "kg");
        Add("utilisation", Utilisation, string.Empty);
        Add("fasteners-per-row", FastenersPerRow, string.Empty);
        Add("spacing", Spacing?.Millimeters, "mm");
        return figures;

        void Add(string name, double? value, string unit)
        {
            if (value is { } number)
            {
                figures.Add(new Figure(name, number, unit));
            }
        }
    }

    /// <summary>Load, capacity with its basis, count and verdict, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string load = $"{RetentionFindings.Load(_case, _numbers)} on fasteners of {RetentionFindings.Each(_case, _numbers)}: ";
        string needed = FastenersNeeded is { } count ? Print.Number(count) + " needed" : "no number of them holds it";
        return load + needed + (FastenersGiven is { } given ? $", {Print.Number(given)} there: {(Holds ? "holds" : "does not hold")}" : string.Empty);
    }
}
