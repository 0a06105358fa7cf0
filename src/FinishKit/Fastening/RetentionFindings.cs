using System.Collections.Generic;

namespace FinishKit;

/// <summary>What the two answers of <see cref="Retention"/> have to say in common.</summary>
internal static class RetentionFindings
{
    /// <summary>Up to here an acceleration is one of the road; a caller who gives more means something else.</summary>
    private const double MostOfRoad = 5;

    private const string AccelerationName = "acceleration";

    internal static Figure Acceleration(in RetentionCase given) => new(AccelerationName, given.Acceleration, "g");

    internal static void AddNoCapacity(in RetentionCase given, in RetentionNumbers numbers, List<Finding> findings)
    {
        if (!double.IsNaN(numbers.Needed) || given.Refused)
        {
            return;
        }

        findings.Add(new Finding(
            "fastening-no-capacity",
            Severity.Problem,
            $"Fasteners that hold {Print.Number(numbers.Capacity)} N each cannot carry {Print.Round(numbers.Carried, 2)} N: it would take more than a million.",
            [new("capacity", numbers.Capacity, "N"), new("carried-by-fasteners", numbers.Carried, "N")],
            Sources.RetentionCount));
    }

    internal static void AddRoadOnly(in RetentionCase given, List<Finding> findings)
    {
        if (given.Acceleration > MostOfRoad)
        {
            return;
        }

        string whose = given.AccelerationIsDefault ? ", the library's default," : string.Empty;
        findings.Add(new Finding(
            "fastening-retention-road-only",
            Severity.Note,
            $"{Print.Number(given.Acceleration)} g{whose} stands for a rough road, gravity included, not for a crash. Nothing here says what holds in a crash.",
            [Acceleration(given)],
            Sources.RoadAcceleration));
    }

    internal static void AddAdhesiveNotCounted(List<Finding> findings) => findings.Add(new Finding(
        "fastening-adhesive-not-counted",
        Severity.Note,
        "Adhesive is not counted: the fasteners are taken to hold the whole load. Give its strength and area where it may be relied on.",
        [],
        Sources.AdhesiveNotCounted));
}
