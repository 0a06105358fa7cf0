using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>
/// A sheet as it is sold: its label, and the thickness it really has. Sheets mostly run under their label; calculators count the
/// actual thickness.
/// </summary>
public sealed class SheetGoods
{
    private static readonly Allowed s_thickness = new(Allowed.OneStep, 200, "mm");
    private static readonly Allowed s_plies = new(1, 100, string.Empty);
    private static readonly Allowed s_formRange = new(3, 50, "mm");
    private static readonly Dictionary<string, PlywoodBending> s_bending = PlywoodBending.BySheet();

    private readonly int? _plies;
    private readonly Source _source = Sources.Given;

    /// <summary>A sheet of the caller's own.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="nominal">Thickness on the label [length], more than 0 up to 200 mm.</param>
    /// <param name="thickness">Actual thickness with its limits [length], more than 0 up to 200 mm.</param>
    /// <param name="family">Sheets that a shop would take in place of each other share a family.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> or <paramref name="family"/> is null.</exception>
    /// <exception cref="ArgumentException">A length is outside its range or in an undefined unit.</exception>
    public SheetGoods(string name, Length nominal, TolerancedLength thickness, string family)
    {
        Name = name ?? throw new ArgumentNullException(nameof(name));
        Door.Millimetres(nominal, nameof(nominal), s_thickness, null);
        TolerancedLength.Span span = thickness.Read(new Name(nameof(thickness)), s_thickness, null);
        if (span.Least <= 0)
        {
            throw new InputProblem(nameof(thickness), Print.Number(span.Least) + " mm at its least", s_thickness.ToString(), isRange: true).ToException();
        }

        Nominal = nominal;
        Thickness = thickness;
        Family = family ?? throw new ArgumentNullException(nameof(family));
    }

    /// <summary>Every sheet in the table.</summary>
    public static IReadOnlyList<SheetGoods> All { get; } = MaterialTables.Read("sheet-goods.csv", static row => new SheetGoods(
        row["name"],
        TableRow.Length(row["label"]),
        TolerancedLength.Between(TableRow.Length(row["least"] + " " + row["unit"]), TableRow.Length(row["greatest"] + " " + row["unit"])),
        row["family"])
    {
        Plies = row.Has("plies") ? (int)row.Number("plies") : null,
        Source = row.Source(),
        Bending = s_bending.TryGetValue(row["name"], out PlywoodBending? bending) ? bending : null,
    });

    /// <summary>Birch plywood, sanded, 4 to 30 mm: limits as birch mills state them.</summary>
    public static IReadOnlyList<SheetGoods> Birch { get; } = OfFamily("birch plywood sanded");

    /// <summary>Birch plywood, unsanded, 4 to 30 mm.</summary>
    public static IReadOnlyList<SheetGoods> BirchUnsanded { get; } = OfFamily("birch plywood unsanded");

    /// <summary>Softwood plywood to PS 1, unsanded, touch-sanded or overlaid, 1/4 to 1-1/4 in.</summary>
    public static IReadOnlyList<SheetGoods> Ps1Unsanded { get; } = OfFamily("plywood PS 1 unsanded");

    /// <summary>Softwood plywood to PS 1, sanded, 1/4 to 3/4 in.</summary>
    public static IReadOnlyList<SheetGoods> Ps1Sanded { get; } = OfFamily("plywood PS 1 sanded");

    /// <summary>Plywood made in millimetres and sold under an inch label; no tolerance of its own.</summary>
    public static IReadOnlyList<SheetGoods> MetricSoldByInch { get; } = OfFamily("metric plywood sold by the inch");

    /// <summary>Birch plywood of 4 mm, sanded.</summary>
    public static SheetGoods Birch4 { get; } = Named("4 mm birch plywood sanded");

    /// <summary>Birch plywood of 6.5 mm, sanded.</summary>
    public static SheetGoods Birch6 { get; } = Named("6.5 mm birch plywood sanded");

    /// <summary>Birch plywood of 9 mm, sanded.</summary>
    public static SheetGoods Birch9 { get; } = Named("9 mm birch plywood sanded");

    /// <summary>Birch plywood of 12 mm, sanded.</summary>
    public static SheetGoods Birch12 { get; } = Named("12 mm birch plywood sanded");

    /// <summary>Birch plywood of 15 mm, sanded.</summary>
    public static SheetGoods Birch15 { get; } = Named("15 mm birch plywood sanded");

    /// <summary>Birch plywood of 18 mm, sanded.</summary>
    public static SheetGoods Birch18 { get; } = Named("18 mm birch plywood sanded");

    /// <summary>Birch plywood of 21 mm, sanded.</summary>
    public static SheetGoods Birch21 { get; } = Named("21 mm birch plywood sanded");

    /// <summary>Birch plywood of 24 mm, sanded.</summary>
    public static SheetGoods Birch24 { get; } = Named("24 mm birch plywood sanded");

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>Thickness on the label.</summary>
    public Length Nominal { get; }

    /// <summary>Actual thickness: the middle of the limits, with the deviations to them; shared by everything cut from one sheet.</summary>
    public TolerancedLength Thickness { get; }

    /// <summary>Sheets that a shop would take in place of each other share a family.</summary>
    public string Family { get; }

    /// <summary>Number of plies, 1 to 100, or null.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public int? Plies
    {
        get => _plies;
        init
        {
            if (value is { } count)
            {
                Door.Number(count, nameof(Plies), s_plies, null);
            }

            _plies = value;
        }
    }

    /// <summary>
    /// Stiffness and strength in bending by direction, or null where none is known. In the table: sanded birch plywood (characteristic
    /// strengths) and five unsanded PS 1 thicknesses taken as 3-ply (allowable strengths); see <see cref="PlywoodBending.StrengthBasis"/>.
    /// </summary>
    public PlywoodBending? Bending { get; init; }

    /// <summary>What the figures rest on.</summary>
    /// <exception cref="ArgumentNullException">The source is null.</exception>
    public Source Source
    {
        get => _source;
        init => _source = value ?? throw new ArgumentNullException(nameof(Source));
    }

    /// <summary>The sheet of a name, case aside.</summary>
    /// <param name="name">The name, as in <see cref="All"/>.</param>
    /// <returns>The sheet.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException">No sheet has that name; the message lists those there are.</exception>
    public static SheetGoods Named(string name) => MaterialTables.Named(All, name, static sheet => sheet.Name);

    /// <summary>A plywood sheet of any label by the form of EN 315.</summary>
    /// <param name="nominal">Thickness on the label [length], 3 to 50 mm.</param>
    /// <param name="sanded">Whether it is sanded.</param>
    /// <returns>The sheet.</returns>
    /// <remarks>
    /// <para>Formula: from t - (0.4 + 0.03 t) to t + (0.2 + 0.03 t) where sanded, to t + (0.8 + 0.03 t) where not; mm.</para>
    /// <para>Source: EN-315 (the form read in a copy of GB/T 9846; that EN 315 uses it, and the lower limit of unsanded sheets, from memory).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">The length is outside its range or in an undefined unit.</exception>
    public static SheetGoods En315(Length nominal, bool sanded)
    {
        double t = Door.Millimetres(nominal, nameof(nominal), s_formRange, null);
        string finish = sanded ? "sanded" : "unsanded";
        return new SheetGoods(
            $"{Print.Number(t)} mm plywood EN 315 {finish}",
            nominal,
            TolerancedLength.Between(Door.Millimetres(Grid.Snap(t - (0.4 + (0.03 * t)))), Door.Millimetres(Grid.Snap(t + (sanded ? 0.2 : 0.8) + (0.03 * t)))),
            "plywood EN 315 " + finish)
        {
            Source = MaterialSources.En315.At(MaterialSources.En315.Place, SourceReading.Memory),
        };
    }

    /// <summary>Name and actual thickness, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}, actually {Thickness}";

    private static IReadOnlyList<SheetGoods> OfFamily(string family)
    {
        List<SheetGoods> sheets = [];
        foreach (SheetGoods sheet in All)
        {
            if (sheet.Family == family)
            {
                sheets.Add(sheet);
            }
        }

        return [.. sheets];
    }
}
