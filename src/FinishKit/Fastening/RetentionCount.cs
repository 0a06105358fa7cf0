using System;
using System.Collections.Generic;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>
/// How many fasteners hold a mass that hangs for good: what <see cref="Retention.FastenersNeeded(Mass, WithdrawalCapacity, double?)"/>
/// answers. The default value is no mass on no fasteners.
/// </summary>
/// <remarks><see cref="Retention.FastenersNeeded(Mass, WithdrawalCapacity, double?)"/> makes one.</remarks>
public readonly struct RetentionCount : IEquatable<RetentionCount>
{
    // What was asked, load and count: whatever else is read is computed once more, so that little is copied.
    private readonly WithdrawalCapacity _one;
    private readonly double _mass, _acceleration, _load, _needed;
    private readonly bool _accelerationIsDefault;

    internal RetentionCount(in WithdrawalCapacity one, double mass, double acceleration, bool accelerationIsDefault)
    {
        _one = one;
        _mass = mass;
        _acceleration = acceleration;
        _accelerationIsDefault = accelerationIsDefault;
        RetentionNumbers numbers = Retention.Solve(Retention.CaseOf(one, mass, acceleration, accelerationIsDefault), default(Silent));
        _load = numbers.Load;
        _needed = numbers.Needed;
    }

    /// <summary>What one fastener holds, as it was given.</summary>
    public WithdrawalCapacity PerFastener => _one;

    /// <summary>The hung mass.</summary>
    public Mass Mass => new(_mass, MassUnit.Kilogram);

    /// <summary>The acceleration in g, gravity included.</summary>
    public double Acceleration => _acceleration;

    /// <summary>The load of the mass at the acceleration.</summary>
    public Force Load => new(_load, ForceUnit.Newton);

    /// <summary>The factor that made the capacity of one fastener a design load: the default of its basis.</summary>
    public double DesignFactor => Numbers.DesignFactor;

    /// <summary>What one fastener may be loaded with; zero where Eurocode 5 refuses it.</summary>
    public Force DesignCapacity => new(Numbers.Capacity, ForceUnit.Newton);

    /// <summary>Fasteners it takes; null where no practical number holds it.</summary>
    public int? Fasteners => double.IsNaN(_needed) ? null : (int)_needed;

    /// <summary>Mass that each of them holds; null where there are none.</summary>
    public Mass? MassPerFastener => _needed > 0 ? new Mass(_mass / _needed, MassUnit.Kilogram) : null;

    /// <summary>Load over what so many fasteners hold, at most 1 (to within the 1e-9 by which a ratio counts as whole); null where no practical number holds it.</summary>
    public double? Utilisation => Numbers.Utilisation is var share && double.IsNaN(share) ? null : share;

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem => double.IsNaN(_needed) || (_acceleration != 0 && (_one.IsSmoothNailByEurocode5 || _one.HasProblem));

    /// <summary>What a person should know about the answer, gravest first, those of the capacity of one fastener included; put together on reading.</summary>
    /// <remarks>
    /// Codes of its own: <c>fastening-no-capacity</c>, <c>fastening-eurocode5-permanent-load</c>, <c>fastening-retention-under-gravity</c>,
    /// <c>fastening-adhesive-not-counted</c>, <c>fastening-screw-group</c>, <c>fastening-retention-road-only</c>. Where a design factor under 1
    /// was applied, what the capacity says about not being a design value is left out: it has been dealt with.
    /// </remarks>
    public IReadOnlyList<Finding> Findings => _acceleration == 0 ? [] : RetentionFindings.All(_one, Case, Numbers);

    /// <summary>The defaults that the answer rests on; put together on reading.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed => _acceleration == 0 ? [] : RetentionFindings.Defaults(_one, Case, Numbers);

    private RetentionCase Case => Retention.CaseOf(_one, _mass, _acceleration, _accelerationIsDefault);

    private RetentionNumbers Numbers => Retention.Solve(Case, default(Silent));

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
        Retention.Solve(Case, recorder);
        return recorder.ToWorkings("Fasteners that hold a mass");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Mass, acceleration, load, design factor and capacity; fasteners, mass per fastener and utilisation where there are such.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        RetentionNumbers numbers = Numbers;
        List<Figure> figures = [new("mass", _mass, "kg"), RetentionFindings.Acceleration(Case), new("load", _load, "N"), RetentionFindings.DesignFactor(numbers), new("capacity", numbers.Capacity, "N")];
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
    public bool Equals(RetentionCount other) => _mass.Equals(other._mass)
        && _acceleration.Equals(other._acceleration)
        && _accelerationIsDefault == other._accelerationIsDefault
        && _one.Equals(other._one);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is RetentionCount other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((((_mass.GetHashCode() * 397) ^ _acceleration.GetHashCode()) * 397) ^ _one.GetHashCode());

    /// <summary>Load, count and capacity with its basis, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        (RetentionCase given, RetentionNumbers numbers) = (Case, Numbers);
        string load = RetentionFindings.Load(given, numbers), each = RetentionFindings.Each(given, numbers);
        return Fasteners is { } fasteners ? $"{load} on {RetentionFindings.Fasteners(fasteners)} of {each}" : $"{load}, which fasteners of {each} do not hold";
    }
}
