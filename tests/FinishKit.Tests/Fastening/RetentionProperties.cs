using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;

namespace FinishKit.Tests.Fastening;

/// <summary>What holds for every mass and capacity. Exact multiples are built in: they are the edge that rounding gets wrong.</summary>
public sealed class RetentionProperties
{
    private const double G = 9.80665;

    [Property]
    public bool The_count_is_the_least_that_holds(PositiveInt grams, PositiveInt millinewtons, PositiveInt tenths)
    {
        (double mass, double capacity, double g) = (grams.Get * 97L % 10_000_000 / 1000.0, (1000 + (millinewtons.Get * 89L % 1_000_000)) / 1000.0, (1 + (tenths.Get % 1000)) / 10.0);
        int n = Retention.FastenersNeeded(Mass.FromKilograms(mass), Supplied(capacity), g).Fasteners ?? 0;
        double load = mass * g * G;
        return load == 0 ? n == 0 : n * capacity >= load * (1 - 2e-9) && (n - 1) * capacity < load;
    }

    [Property]
    public bool A_load_of_exactly_n_capacities_takes_n(PositiveInt count, PositiveInt grams, PositiveInt tenths)
    {
        // The mass is n times what one fastener holds: the ratio is n but for the last bits.
        (int n, double each, double g) = (1 + (count.Get % 500), (1 + (grams.Get % 20_000)) / 1000.0, (1 + (tenths.Get % 100)) / 10.0);
        RetentionCount answer = Retention.FastenersNeeded(Mass.FromKilograms(n * each), Supplied(each * g * G), g);
        return answer.Fasteners == n && Math.Abs(answer.Utilisation!.Value - 1) < 1e-9;
    }

    [Property]
    public bool More_mass_never_takes_fewer(PositiveInt grams, PositiveInt more, PositiveInt millinewtons)
    {
        (double mass, double capacity) = (grams.Get % 5_000_000 / 1000.0, (1000 + (millinewtons.Get * 89L % 1_000_000)) / 1000.0);
        double heavier = mass + (more.Get % 5_000_000 / 1000.0);
        return Retention.FastenersNeeded(Mass.FromKilograms(mass), Supplied(capacity)).Fasteners <= Retention.FastenersNeeded(Mass.FromKilograms(heavier), Supplied(capacity)).Fasteners;
    }

    [Property]
    public bool The_long_question_agrees_with_the_short_one(PositiveInt grams, PositiveInt millinewtons)
    {
        (Mass mass, WithdrawalCapacity capacity) = (Mass.FromKilograms(grams.Get % 5_000_000 / 1000.0), Supplied((1000 + (millinewtons.Get * 89L % 1_000_000)) / 1000.0));
        RetentionResult answer = Retention.FastenersNeeded(new HungMass(mass, capacity));
        return answer.FastenersNeeded == Retention.FastenersNeeded(mass, capacity).Fasteners && answer.Holds;
    }

    [Property]
    public bool So_many_as_it_takes_hold_and_one_fewer_does_not(PositiveInt kilograms, bool screws)
    {
        WithdrawalCapacity one = screws
            ? Withdrawal.Eurocode5Screw(new CharacteristicDensity(350), Measure.Mm(6), Measure.Mm(40), Angle.FromDegrees(90))
            : Withdrawal.NdsNail(new(0.5), Measure.Mm(1.6), Measure.Mm(30));
        HungMass hung = new(Mass.FromKilograms(10 + (kilograms.Get % 5000)), one);
        int needed = Retention.FastenersNeeded(hung).FastenersNeeded ?? 0;
        RetentionResult enough = Retention.FastenersNeeded(hung with { Fasteners = needed });
        bool fewer = needed == 1 || Retention.FastenersNeeded(hung with { Fasteners = needed - 1 }) is { Holds: false, HasProblem: true, Utilisation: > 1 };
        return enough.Holds && !enough.HasProblem && enough.Utilisation <= 1 + 1e-9 && fewer;
    }

    [Property]
    public bool Both_questions_say_the_same_of_every_capacity_and_gravest_first(PositiveInt method, PositiveInt grams, PositiveInt depth, PositiveInt tenths)
    {
        (Mass mass, double g, Length p) = (Mass.FromKilograms(grams.Get * 97L % 1_000_000 / 1000.0), (1 + (tenths.Get % 100)) / 10.0, Measure.Mm((1 + (depth.Get * 37L % 4000)) / 100.0));
        WithdrawalCapacity one = (method.Get % 6) switch
        {
            0 => Withdrawal.NdsNail(new(0.5), Measure.Mm(1.6), p),
            1 => Withdrawal.HandbookNail(new(0.5), Measure.Mm(1.6), p).InPlywood(),
            2 => Withdrawal.Eurocode5SmoothNail(new CharacteristicDensity(350), Measure.Mm(1.6), p),
            3 => Withdrawal.Eurocode5SmoothNail(new Eurocode5Nail(new(350), Measure.Mm(1.6), Measure.Mm(3), Measure.Mm(9), p)),
            4 => Withdrawal.Eurocode5Screw(new(350), Measure.Mm(4), p, Angle.FromDegrees(20)),
            _ => Supplied(depth.Get % 50),
        };
        RetentionCount count = Retention.FastenersNeeded(mass, one, g);
        RetentionResult result = Retention.FastenersNeeded(new HungMass(mass, one) { Acceleration = g });
        bool gravestFirst = result.Findings.Zip(result.Findings.Skip(1), (a, b) => a.Severity >= b.Severity).All(x => x) && one.Findings.Zip(one.Findings.Skip(1), (a, b) => a.Severity >= b.Severity).All(x => x);
        return gravestFirst && count.Fasteners == result.FastenersNeeded && count.Findings.Select(f => f.ToString()).SequenceEqual(result.Findings.Select(f => f.ToString()))
            && count.HasProblem == result.HasProblem && result.HasProblem == result.Findings.Any(f => f.Severity == Severity.Problem)
            && one.HasProblem == one.Findings.Any(f => f.Severity == Severity.Problem)
            && count.DesignFactor.Equals(result.DesignFactor) && count.DesignCapacity.Newtons.Equals(result.DesignCapacity.Newtons) && count.Utilisation.Equals(result.Utilisation);
    }

    private static WithdrawalCapacity Supplied(double newtons) => WithdrawalCapacity.Supplied(Force.FromNewtons(newtons));
}
