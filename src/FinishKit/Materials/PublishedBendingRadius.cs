using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Which published table of bending radii.</summary>
public enum BendingRadiusSeries
{
    /// <summary>Softwood plywood as it comes from the mill, bent dry.</summary>
    SoftwoodPlywood = 0,

    /// <summary>Thin plywood of aircraft grade, 3 and 5 plies.</summary>
    AircraftPlywood = 1,
}

/// <summary>In what state a sheet is bent.</summary>
public enum BendCondition
{
    /// <summary>Dry and cold, about 10% moisture content.</summary>
    DryCold = 0,

    /// <summary>Soaked in hot water, then bent over a cold form.</summary>
    HotSoaked = 1,
}

/// <summary>
/// A least radius that somebody has published for a bent plywood sheet. It is for the
/// plywood of its series and no other; it says nothing about how a bent sheet springs back or how it must be held.
/// </summary>
public sealed class PublishedBendingRadius
{
    private static readonly Allowed s_thickness = new(Allowed.OneStep, 200, "mm");
    private static readonly Allowed s_plies = new(1, 100, string.Empty);

    private PublishedBendingRadius(TableRow row)
    {
        Series = row["series"] switch { "softwood" => BendingRadiusSeries.SoftwoodPlywood, "aircraft" => BendingRadiusSeries.AircraftPlywood, _ => throw Unknown(row["series"]) };
        Thickness = TableRow.Length(row["thickness"]);
        Plies = row.Has("plies") ? (int)row.Number("plies") : null;
        Grain = row["grain"] switch { "around" => BendGrain.AroundTheCurve, "axis" => BendGrain.AlongTheAxis, _ => throw Unknown(row["grain"]) };
        Condition = row["condition"] switch { "dry" => BendCondition.DryCold, "hot-soaked" => BendCondition.HotSoaked, _ => throw Unknown(row["condition"]) };
        Radius = TableRow.Length(row["radius"]);
        Source = row.Source();
    }

    /// <summary>Every row of the tables.</summary>
    public static IReadOnlyList<PublishedBendingRadius> All { get; } = MaterialTables.Read("bending-radii.csv", static row => new PublishedBendingRadius(row));

    /// <summary>The table the row is from.</summary>
    public BendingRadiusSeries Series { get; }

    /// <summary>Thickness of the sheet, nominal.</summary>
    public Length Thickness { get; }

    /// <summary>Number of plies, or null where the table does not say.</summary>
    public int? Plies { get; }

    /// <summary>
    /// Which way the face grain runs. A bend "across the face grain" leaves the grain straight: along the axis. A bend axis at 90 degrees
    /// to the face grain bends it: around the curve. The aircraft column for 0 to 45 degrees stands under along the axis.
    /// </summary>
    public BendGrain Grain { get; }

    /// <summary>In what state the sheet is bent.</summary>
    public BendCondition Condition { get; }

    /// <summary>The least radius published.</summary>
    public Length Radius { get; }

    /// <summary>What the row rests on.</summary>
    public Source Source { get; }

    /// <summary>
    /// The row for a sheet: its own thickness, or the next thicker one of the table; nothing is interpolated. Where the table has rows by number of plies and none is
    /// said, the next row of each number is looked up, and the one of the greatest radius is taken.
    /// </summary>
    /// <param name="series">The table.</param>
    /// <param name="thickness">Thickness of the sheet [length], more than 0 up to 200 mm.</param>
    /// <param name="grain">Which way the face grain runs.</param>
    /// <param name="condition">In what state the sheet is bent.</param>
    /// <param name="plies">Number of plies, 1 to 100; null where not known. Rows for any number of plies serve whatever is said.</param>
    /// <returns>The row; null where the sheet is thicker than the table goes or the table has no such condition or number of plies.</returns>
    /// <exception cref="ArgumentException">The thickness or the number of plies is outside its range, the thickness in an undefined unit, or a choice is undefined.</exception>
    public static PublishedBendingRadius? For(BendingRadiusSeries series, Length thickness, BendGrain grain, BendCondition condition, int? plies = null)
    {
        Refuse(series is BendingRadiusSeries.SoftwoodPlywood or BendingRadiusSeries.AircraftPlywood, nameof(series), (int)series, "softwood or aircraft plywood");
        double sheet = Door.Millimetres(thickness, nameof(thickness), s_thickness, null);
        Refuse(grain is BendGrain.AroundTheCurve or BendGrain.AlongTheAxis, nameof(grain), (int)grain, "around the curve or along the axis");
        Refuse(condition is BendCondition.DryCold or BendCondition.HotSoaked, nameof(condition), (int)condition, "dry and cold or hot-soaked");
        if (plies is { } number)
        {
            Door.Number(number, nameof(plies), s_plies, null);
        }

        List<PublishedBendingRadius> next = [];
        foreach (PublishedBendingRadius row in All)
        {
            if (row.Series == series && row.Grain == grain && row.Condition == condition && Door.Millimetres(row.Thickness) >= sheet && (plies is null || row.Plies is null || row.Plies == plies))
            {
                int kind = next.FindIndex(other => other.Plies == row.Plies);
                if (kind < 0)
                {
                    next.Add(row);
                }
                else if (Door.Millimetres(row.Thickness) < Door.Millimetres(next[kind].Thickness))
                {
                    next[kind] = row;
                }
            }
        }

        PublishedBendingRadius? greatest = null;
        foreach (PublishedBendingRadius row in next)
        {
            greatest = greatest is null || Door.Millimetres(row.Radius) > Door.Millimetres(greatest.Radius) ? row : greatest;
        }

        return greatest;
    }

    /// <summary>Series, thickness, grain, condition and radius, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{(Series == BendingRadiusSeries.SoftwoodPlywood ? "softwood" : "aircraft")} plywood {Print.Mm(Door.Millimetres(Thickness))}, face grain {(Grain == BendGrain.AroundTheCurve ? "around the curve" : "along the axis")}, {(Condition == BendCondition.DryCold ? "dry" : "hot-soaked")}: radius {Print.Mm(Door.Millimetres(Radius))}";

    private static void Refuse(bool isDefined, string parameter, int value, string allowed)
    {
        if (!isDefined)
        {
            throw new InputProblem(parameter, FormattableString.Invariant($"the undefined value {value}"), allowed, isRange: false).ToException();
        }
    }

    private static InvalidOperationException Unknown(string word) => new($"bending-radii.csv: unknown word '{word}'.");
}
