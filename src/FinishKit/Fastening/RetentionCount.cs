using System;
using System.Collections.Generic;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>
/// How many fasteners hold a mass: what <see cref="Retention.FastenersNeeded(Mass, Force, double?)"/> answers. The default value
/// is no mass on no fasteners.
/// </summary>
public readonly struct RetentionCount : IEquatable<RetentionCount>
{
    private readonly RetentionCase _case;
    private readonly RetentionNumbers _numbers;

    internal RetentionCount(in RetentionCase given, in RetentionNumbers numbers)
    {
        _case = given;
        _numbers = numbers;
    }

    /// <summary>The hung mass.</summary>
    public Mass Mass => new(_case.Mass, MassUnit.Kilogram);

    /// <summary>The acceleration in g, gravity included.</summary>
    public double Acceleration => _case.Acceleration;

    /// <summary>What one fastener may be loaded with.</summary>
    public Force CapacityPerFastener => new(_case.Capacity, ForceUnit.Newton);

    /// <summary>The load of the mass at the acceleration.</summary>
    public Force Load => new(_numbers.Load, ForceUnit.Newton);

    /// <summary>Fasteners it takes; null where no practical number holds it.</summary>
    public int? Fasteners => double.IsNaN(_numbers.Needed) ? null : (int)_numbers.Needed;

    /// <summary>Mass that each of them holds; null where there are none.</summary>
    public Mass? MassPerFastener => _numbers.Needed > 0 ? new Mass(_case.Mass / _numbers.Needed, MassUnit.Kilogram) : null;

    /// <summary>Load over what so many fasteners hold, at most 1 (to within the 1e-9 by which a ratio counts as whole); null where no practical number holds it.</summary>
    public double? Utilisation => double.IsNaN(_numbers.Utilisation) ? null : _numbers.Utilisation;

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem => double.IsNaN(_numbers.Needed);

    /// <summary>What a person should know about the answer; put together on reading.</summary>
    /// <remarks>Codes: <c>fastening-no-capacity</c>, <c>fastening-retention-road-only</c>, <c>fastening-adhesive-not-counted</c>.</remarks>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            List<Finding> findings = [];
            if (_case.Acceleration == 0)
            {
                return findings;
            }

            RetentionFindings.AddNoCapacity(_case, _numbers, findings);
            RetentionFindings.AddRoadOnly(_case, findings);
            RetentionFindings.AddAdhesiveNotCounted(findings);
            return findings;
        }
    }

    /// <summary>The defaults that the answer rests on; put together on reading.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed =>
        _case.AccelerationIsDefault ? [new DefaultUsed(RetentionFindings.Acceleration(_case), Sources.RoadAcceleration)] : [];

    /// <summary>Whether mass, acceleration and capacity agree.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree.</returns>
    public static bool operator ==(RetentionCount left, RetentionCount right) => left.Equals(right);

    /// <summary>Whether mass, acceleration or capacity differ.</summary>
    /// <param name="left">One answer.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if one differs.</returns>
    public static bool operator !=(RetentionCount left, RetentionCount right) => !left.Equals(right);

    /// <summary>How the count comes about, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        Retention.Solve(_case, recorder);
        return recorder.ToWorkings("Fasteners that hold a mass");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Mass, acceleration, capacity, load; fasteners, mass per fastener and utilisation where there are such.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures = [new("mass", _case.Mass, "kg"), RetentionFindings.Acceleration(_case), new("capacity", _case.Capacity, "N"), new("load", _numbers.Load, "N")];
        if (Fasteners is { } fasteners)
        {
            figures.Add(new Figure("fasteners-needed", fasteners, string.Empty));
        }

        if (MassPerFastener is { } share)
        {
            figures.Add(new Figure("mass-per-fastener", share.Kilograms, "kg"));
        }

        if (Utilisation is { } utilisation)
        {
            figures.Add(new Figure("utilisation", utilisation, string.Empty));
        }

        return figures;
    }

    /// <inheritdoc/>
    public bool Equals(RetentionCount other) => _case.Mass.Equals(other._case.Mass)
        && _case.Acceleration.Equals(other._case.Acceleration)
        && _case.AccelerationIsDefault == other._case.AccelerationIsDefault
        && _case.Capacity.Equals(other._case.Capacity);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is RetentionCount other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((((_case.Mass.GetHashCode() * 397) ^ _case.Acceleration.GetHashCode()) * 397) ^ _case.Capacity.GetHashCode());

    /// <summary>Load, capacity and count, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Fasteners is { } fasteners
        ? $"{Print.Round(_numbers.Load, 2)} N on {Print.Number(fasteners)} fasteners of {Print.Round(_case.Capacity, 2)} N"
        : $"{Print.Round(_numbers.Load, 2)} N, which fasteners of {Print.Round(_case.Capacity, 2)} N do not hold";
}
