using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>What the two answers of <see cref="Retention"/> have to say, and their defaults.</summary>
internal static class RetentionFindings
{
    /// <summary>What <see cref="Sources.RoadAcceleration"/> calls a rough road, in g.</summary>
    private const double LeastOfRoad = 2, MostOfRoad = 5;

    internal static Figure Acceleration(in RetentionCase given) => new("acceleration", given.Acceleration, "g");

    internal static Figure DesignFactor(in RetentionNumbers numbers) => new("design-factor", numbers.DesignFactor, string.Empty);

    /// <summary>Load on the fasteners and what makes it.</summary>
    internal static string Load(in RetentionCase given, in RetentionNumbers numbers)
    {
        string adhesive = given.HasAdhesive ? $", less {Print.Round(numbers.Adhesive, 2)} N on adhesive" : string.Empty;
        return $"{Print.Round(numbers.Carried, 2)} N ({Print.Number(given.Mass)} kg at {Print.Number(given.Acceleration)} g{adhesive})";
    }

    /// <summary>Design load of one fastener and what it rests on.</summary>
    internal static string Each(in RetentionCase given, in RetentionNumbers numbers)
    {
        string basis = WithdrawalFindings.Words(given.Basis);
        if (given.Refused)
        {
            basis = "Eurocode 5 under a permanent load";
        }
        else if (numbers.DesignFactor != 1)
        {
            basis = $"{Print.Round(numbers.DesignFactor, 4)} of {Print.Round(given.Capacity, 2)} N, {basis}";
        }

        return $"{Print.Round(numbers.Capacity, 2)} N each ({basis})";
    }

    internal static string Fasteners(double count) => Print.Number(count) + (count == 1 ? " fastener" : " fasteners");

    /// <summary>All there is to say, those of the capacity of one fastener included, gravest first.</summary>
    internal static IReadOnlyList<Finding> All(in WithdrawalCapacity one, in RetentionCase given, in RetentionNumbers numbers)
    {
        List<Finding> findings = [];
        if (given.Refused && !one.IsRefusedForPermanentLoad)
        {
            findings.Add(one.PermanentLoad());
        }

        AddNoCapacity(given, numbers, findings);
        AddShort(given, numbers, findings);
        AddUnderGravity(given, findings);
        AddAdhesive(given, numbers, findings);
        AddScrewGroup(given, numbers, findings);
        AddRoadOnly(given, findings);
        foreach (Finding finding in one.Findings)
        {
            if (!IsAnswered(finding.Code, given, numbers))
            {
                findings.Add(finding);
            }
        }

        return Finding.GravestFirst(findings);
    }

    internal static List<DefaultUsed> Defaults(in WithdrawalCapacity one, in RetentionCase given, in RetentionNumbers numbers)
    {
        List<DefaultUsed> defaults = [];
        if (given.AccelerationIsDefault)
        {
            defaults.Add(new DefaultUsed(Acceleration(given), Sources.RoadAcceleration));
        }

        if (double.IsNaN(given.DesignFactor))
        {
            defaults.Add(new DefaultUsed(DesignFactor(numbers), Retention.SourceOfDesignFactor(given.Basis)));
        }

        one.AddDefaults(defaults);
        return defaults;
    }

    /// <summary>
    /// Whether the answer has done already what the capacity's finding asks for: whoever read it here would do it twice. A factor of
    /// the caller's that takes nothing off has not.
    /// </summary>
    private static bool IsAnswered(string code, in RetentionCase given, in RetentionNumbers numbers) => code switch
    {
        WithdrawalFindings.UltimateNotDesign or WithdrawalFindings.CharacteristicNotDesign => given.Refused || numbers.DesignFactor < 1,
        WithdrawalFindings.ShortTermOnly => given.Refused,
        _ => false,
    };

    private static void AddNoCapacity(in RetentionCase given, in RetentionNumbers numbers, List<Finding> findings)
    {
        if (!double.IsNaN(numbers.Needed) || given.Refused)
        {
            return;
        }

        findings.Add(new Finding(
            "fastening-no-capacity",
            Severity.Problem,
            $"Fasteners of {Each(given, numbers)} cannot carry {Load(given, numbers)}: it would take more than a million.",
            [new("capacity", numbers.Capacity, "N"), new("carried-by-fasteners", numbers.Carried, "N")],
            Sources.RetentionCount));
    }

    private static void AddShort(in RetentionCase given, in RetentionNumbers numbers, List<Finding> findings)
    {
        double there = given.Fasteners, needed = numbers.Needed;
        if (there == 0 || double.IsNaN(needed) || there >= needed)
        {
            return;
        }

        findings.Add(new Finding(
            "fastening-retention-short",
            Severity.Problem,
            $"{Fasteners(there)} of {Each(given, numbers)} {(there == 1 ? "does" : "do")} not hold {Load(given, numbers)}: it takes {Print.Number(needed)}, {Print.Number(needed - there)} more.",
            [new("fasteners-given", there, string.Empty), new("fasteners-needed", needed, string.Empty), new("capacity", numbers.Capacity, "N"), new("carried-by-fasteners", numbers.Carried, "N")],
            Sources.RetentionCount));
    }

    private static void AddUnderGravity(in RetentionCase given, List<Finding> findings)
    {
        if (given.Acceleration >= 1)
        {
            return;
        }

        double standing = given.Mass * 9.80665;
        findings.Add(new Finding(
            "fastening-retention-under-gravity",
            Severity.Caution,
            $"{Print.Number(given.Acceleration)} g is less than gravity: {Print.Number(given.Mass)} kg that hang pull with {Print.Round(standing, 2)} N while the van stands still. Gravity is to be part of the acceleration, except where something else carries the mass.",
            [Acceleration(given), new("load-at-rest", standing, "N")],
            Sources.RetentionLoad));
    }

    private static void AddAdhesive(in RetentionCase given, in RetentionNumbers numbers, List<Finding> findings) => findings.Add(given.HasAdhesive
        ? new Finding(
            "fastening-adhesive-counted",
            Severity.Caution,
            $"The adhesive is counted for {Print.Round(numbers.Adhesive, 2)} N by the strength given. It must hold that for good, in heat, cold and damp, on every surface it sticks to; stiff adhesive and fasteners do not share a load evenly.",
            [new("adhesive-strength", given.AdhesiveStrength, "MPa"), new("adhesive-area", given.AdhesiveArea, "mm2"), new("adhesive-capacity", numbers.Adhesive, "N")],
            Sources.Given)
        : new Finding(
            "fastening-adhesive-not-counted",
            Severity.Note,
            "Adhesive is not counted: the fasteners are taken to hold the whole load. Give its strength and area where it may be relied on.",
            [],
            Sources.AdhesiveNotCounted));

    private static void AddScrewGroup(in RetentionCase given, in RetentionNumbers numbers, List<Finding> findings)
    {
        double screws = given.Fasteners == 0 ? numbers.Needed : given.Fasteners;
        if (!given.ScrewGroup || !(screws > 1))
        {
            return;
        }

        findings.Add(new Finding(
            "fastening-screw-group",
            Severity.Note,
            $"{Print.Number(screws)} screws count as {Print.Round(Math.Pow(screws, 0.9), 2)}: Eurocode 5 takes the power 0.9 of their number.",
            [new("fasteners", screws, string.Empty), new("effective-fasteners", Math.Pow(screws, 0.9), string.Empty)],
            Sources.Eurocode5));
    }

    private static void AddRoadOnly(in RetentionCase given, List<Finding> findings)
    {
        string what = given.Acceleration switch
        {
            < LeastOfRoad => "gravity included, is less than a rough road asks for (2 to 5 g, judgement)",
            <= MostOfRoad => "gravity included, stands for a rough road (2 to 5 g, judgement), not for a crash",
            _ => "gravity included, is more than a rough road asks for (2 to 5 g, judgement), but a crash is more than a steady pull shared evenly",
        };
        findings.Add(new Finding(
            "fastening-retention-road-only",
            Severity.Note,
            $"{Print.Number(given.Acceleration)} g, {(given.AccelerationIsDefault ? "the library's default, " : string.Empty)}{what}. Nothing here says what holds in a crash.",
            [Acceleration(given)],
            Sources.RoadAcceleration));
    }
}
