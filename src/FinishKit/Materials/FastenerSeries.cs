using System;
using System.Collections.Generic;
using System.Globalization;
using UnitsNet;

namespace FinishKit;

/// <summary>What kind of fastener a series is.</summary>
public enum FastenerKind
{
    /// <summary>A pin, brad or nail with a smooth shank.</summary>
    SmoothNail = 0,

    /// <summary>A wood screw.</summary>
    WoodScrew = 1,
}

/// <summary>The length tolerance of fasteners up to a length, to each side; a box of fasteners shares it.</summary>
public sealed class LengthTolerance
{
    private static readonly Allowed s_upTo = new(Allowed.OneStep, 1000, "mm");
    private static readonly Allowed s_deviation = new(0, 20, "mm");

    /// <summary>Makes a tolerance.</summary>
    /// <param name="upTo">It holds for lengths up to this one, this one included [length], more than 0 up to 1 m.</param>
    /// <param name="deviation">Deviation to each side [length], 0 to 20 mm.</param>
    /// <exception cref="ArgumentException">A length is outside its range or in an undefined unit.</exception>
    public LengthTolerance(Length upTo, Length deviation)
    {
        Door.Millimetres(upTo, nameof(upTo), s_upTo, null);
        Door.Millimetres(deviation, nameof(deviation), s_deviation, null);
        UpTo = upTo;
        Deviation = deviation;
    }

    /// <summary>It holds for lengths up to this one, this one included.</summary>
    public Length UpTo { get; }

    /// <summary>Deviation to each side.</summary>
    public Length Deviation { get; }
}

/// <summary>One gauge of fastener with its shank and the lengths it is stocked in.</summary>
public sealed class FastenerSeries
{
    private const int MostLengths = 200;

    private static readonly Allowed s_shank = new(Allowed.OneStep, 20, "mm");
    private static readonly Allowed s_length = new(Allowed.OneStep, 500, "mm");
    private static readonly Allowed s_head = new(Allowed.OneStep, 60, "mm");

    private readonly IReadOnlyList<LengthTolerance> _tolerances = [];
    private readonly Length? _headDiameter, _rootDiameter;
    private readonly Source _source = Sources.Given;

    /// <summary>A series of the caller's own.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="shank">Shank diameter [length], more than 0 up to 20 mm.</param>
    /// <param name="lengths">Stocked lengths [length], 1 to 200, rising, each more than 0 up to 500 mm. Copied.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> or <paramref name="lengths"/> is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range, in an undefined unit or out of order.</exception>
    public FastenerSeries(string name, FastenerKind kind, Length shank, IReadOnlyList<Length> lengths)
    {
        Name = name ?? throw new ArgumentNullException(nameof(name));
        if (kind is not (FastenerKind.SmoothNail or FastenerKind.WoodScrew))
        {
            throw new InputProblem(nameof(kind), ((int)kind).ToString(CultureInfo.InvariantCulture), "a named kind", isRange: true).ToException();
        }

        Kind = kind;
        Door.Millimetres(shank, nameof(shank), s_shank, null);
        Shank = shank;
        Door.IsMissing(lengths, new Name(nameof(lengths)), "1 to 200 lengths", null);
        Count(lengths.Count, 1, nameof(lengths), "1 to 200 lengths");
        Lengths = [.. lengths];
        Rising(Lengths, nameof(lengths), s_length);
    }

    /// <summary>Every series in the table: nails thinnest first, then screws.</summary>
    public static IReadOnlyList<FastenerSeries> All { get; } = ReadAll();

    /// <summary>Pins, brads and finish nails, thinnest first.</summary>
    public static IReadOnlyList<FastenerSeries> Nails { get; } = [.. System.Linq.Enumerable.Where(All, static series => series.Kind == FastenerKind.SmoothNail)];

    /// <summary>Wood screws, thinnest first.</summary>
    public static IReadOnlyList<FastenerSeries> WoodScrews { get; } = [.. System.Linq.Enumerable.Where(All, static series => series.Kind == FastenerKind.WoodScrew)];

    /// <summary>23 gauge headless pins, 0.64 mm.</summary>
    public static FastenerSeries Pin23 { get; } = Named("23 ga headless pin");

    /// <summary>21 gauge pins, 0.84 mm.</summary>
    public static FastenerSeries Pin21 { get; } = Named("21 ga pin");

    /// <summary>18 gauge brads, 1.25 mm.</summary>
    public static FastenerSeries Brad18 { get; } = Named("18 ga brad");

    /// <summary>16 gauge straight finish nails, 1.6 mm.</summary>
    public static FastenerSeries Finish16 { get; } = Named("16 ga finish nail");

    /// <summary>15 gauge angled finish nails, 1.9 mm.</summary>
    public static FastenerSeries Finish15 { get; } = Named("15 ga angled finish nail");

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>Gauge or number as the trade says it, for example <c>18</c> or <c>#8</c>; empty for a series of the caller's own.</summary>
    public string Gauge { get; private init; } = string.Empty;

    /// <summary>What it is.</summary>
    public FastenerKind Kind { get; }

    /// <summary>Shank diameter.</summary>
    public Length Shank { get; }

    /// <summary>Stocked lengths, shortest first.</summary>
    public IReadOnlyList<Length> Lengths { get; }

    /// <summary>Length tolerances, at most 200, rising by their lengths; the last also holds above. Empty: none is known, and lengths are taken as exact where the calculator has no default of its own, as that of screws into metal has. Copied.</summary>
    /// <exception cref="ArgumentException">A tolerance is null or out of order, or there are too many.</exception>
    public IReadOnlyList<LengthTolerance> Tolerances
    {
        get => _tolerances;
        init
        {
            Door.IsMissing(value, new Name(nameof(Tolerances)), "at most 200 tolerances", null);
            Count(value.Count, 0, nameof(Tolerances), "at most 200 tolerances");
            _tolerances = [.. value];
            Length[] upTo = new Length[_tolerances.Count];
            for (int i = 0; i < upTo.Length; i++)
            {
                Door.IsMissing(_tolerances[i], new Name(nameof(Tolerances), i), "a tolerance", null);
                upTo[i] = _tolerances[i].UpTo;
            }

            Rising(upTo, nameof(Tolerances), s_length);
        }
    }

    /// <summary>Head diameter, more than 0 up to 60 mm, or null where not known.</summary>
    /// <exception cref="ArgumentException">The diameter is outside its range or in an undefined unit.</exception>
    public Length? HeadDiameter
    {
        get => _headDiameter;
        init => _headDiameter = Checked(value, nameof(HeadDiameter));
    }

    /// <summary>Root diameter of a screw's thread, more than 0 up to 60 mm, or null.</summary>
    /// <exception cref="ArgumentException">The diameter is outside its range or in an undefined unit.</exception>
    public Length? RootDiameter
    {
        get => _rootDiameter;
        init => _rootDiameter = Checked(value, nameof(RootDiameter));
    }

    /// <summary>Whether it has no head to hold a board with.</summary>
    public bool IsHeadless { get; init; }

    /// <summary>Whether a part of the shank under the head has no thread, of a wood screw about a third (common practice). False: threaded up to the head as tapping screws are, or a nail. The table's wood screws are part-threaded.</summary>
    public bool IsPartThreaded { get; init; }

    /// <summary>What shank and head rest on.</summary>
    /// <exception cref="ArgumentNullException">The source is null.</exception>
    public Source Source
    {
        get => _source;
        init => _source = value ?? throw new ArgumentNullException(nameof(Source));
    }

    /// <summary>What the stocked lengths rest on.</summary>
    public Source LengthsSource { get; private init; } = Sources.Given;

    /// <summary>What the length tolerances rest on.</summary>
    public Source ToleranceSource { get; private init; } = Sources.Given;

    /// <summary>The series of a name, case aside.</summary>
    /// <param name="name">The name, as in <see cref="All"/>.</param>
    /// <returns>The series.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException">No series has that name; the message lists those there are.</exception>
    public static FastenerSeries Named(string name) => MaterialTables.Named(All, name, static series => series.Name);

    /// <summary>Wood screws of a number.</summary>
    /// <param name="number">4, 5, 6, 7, 8, 9, 10, 12 or 14.</param>
    /// <returns>The series.</returns>
    /// <exception cref="ArgumentException">The table has no such number; the message lists the series there are.</exception>
    public static FastenerSeries WoodScrew(int number)
    {
        string name = "#" + number.ToString(CultureInfo.InvariantCulture) + " wood screw";
        return MaterialTables.Find(WoodScrews, name, static series => series.Name)
            ?? throw new InputProblem(nameof(number), number.ToString(CultureInfo.InvariantCulture), "4, 5, 6, 7, 8, 9, 10, 12 or 14", isRange: true).ToException();
    }

    /// <summary>A length with the tolerance that a box of this series has at that length.</summary>
    /// <param name="length">The length [length], more than 0 up to 500 mm; stocked or not.</param>
    /// <returns>The length with its deviations, shared by the box; without a deviation where the series has no tolerances.</returns>
    /// <exception cref="ArgumentException">The length is outside its range or in an undefined unit.</exception>
    public TolerancedLength WithTolerance(Length length)
    {
        double millimetres = Door.Millimetres(length, nameof(length), s_length, null);
        foreach (LengthTolerance tolerance in Tolerances)
        {
            if (millimetres <= Door.Millimetres(tolerance.UpTo) || ReferenceEquals(tolerance, Tolerances[Tolerances.Count - 1]))
            {
                return TolerancedLength.PlusMinus(length, tolerance.Deviation);
            }
        }

        return length;
    }

    /// <summary>Name and shank, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}, shank {Print.Mm(Door.Millimetres(Shank))}";

    private static IReadOnlyList<FastenerSeries> ReadAll()
    {
        IReadOnlyList<(string Kind, LengthTolerance Tolerance, Source Source)> tolerances = MaterialTables.Read("fastener-length-tolerances.csv", static row =>
            (row["kind"], new LengthTolerance(TableRow.Inches(row["up_to_in"]), TableRow.Inches(row["deviation_in"])), row.Source()));
        return MaterialTables.Read("fastener-series.csv", row =>
        {
            List<(string Kind, LengthTolerance Tolerance, Source Source)> own = [.. System.Linq.Enumerable.Where(tolerances, entry => entry.Kind == row["kind"])];
            return new FastenerSeries(
                row["name"],
                row["kind"] == "wood-screw" ? FastenerKind.WoodScrew : FastenerKind.SmoothNail,
                Measure.Mm(row.Number("shank_mm")),
                Array.ConvertAll(row["lengths_in"].Split(';'), TableRow.Inches))
            {
                Gauge = row["gauge"],
                IsHeadless = row["head"] == "none",
                IsPartThreaded = row["kind"] == "wood-screw",
                Tolerances = own.ConvertAll(static entry => entry.Tolerance),
                HeadDiameter = row.Has("head_in") ? TableRow.Inches(row["head_in"]) : null,
                RootDiameter = row.Has("root_in") ? TableRow.Inches(row["root_in"]) : null,
                Source = row.Source(),
                LengthsSource = MaterialSources.StockedLengths,
                ToleranceSource = own[0].Source,
            };
        });
    }

    private static void Count(int count, int least, string parameter, string allowed)
    {
        if (count < least || count > MostLengths)
        {
            throw new InputProblem(parameter, count.ToString(CultureInfo.InvariantCulture) + " entries", allowed, isRange: true).ToException();
        }
    }

    private static void Rising(IReadOnlyList<Length> lengths, string parameter, Allowed allowed)
    {
        double before = 0;
        for (int i = 0; i < lengths.Count; i++)
        {
            double millimetres = Door.Millimetres(lengths[i], new Name(parameter, i), allowed, null);
            if (millimetres <= before)
            {
                throw new InputProblem(new Name(parameter, i).ToString(), Print.Mm(millimetres), $"more than the one before, {Print.Mm(before)}", isRange: true).ToException();
            }

            before = millimetres;
        }
    }

    private static Length? Checked(Length? diameter, string parameter)
    {
        if (diameter is { } given)
        {
            Door.Millimetres(given, parameter, s_head, null);
        }

        return diameter;
    }
}
