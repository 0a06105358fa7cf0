using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>One row of fixings of a panel: where it is, and what the bent panel pulls there.</summary>
public sealed record PanelRow
{
    /// <summary>Makes one by its members.</summary>
    public PanelRow()
    {
    }

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="position">From the panel's edge, square to the row.</param>
    /// <param name="pull">Pull per length of row.</param>
    [SetsRequiredMembers]
    public PanelRow(Length position, ForcePerLength pull)
    {
        Position = position;
        Pull = pull;
    }

    /// <summary>From the panel's edge, square to the row, 0 to 100 m.</summary>
    public required Length Position { get; init; }

    /// <summary>What the panel pulls there per length of row, -1000 to 1000 N/mm; zero or less where it only bears.</summary>
    public required ForcePerLength Pull { get; init; }

    private (double, double) Key => (Door.Millimetres(Position), Door.NewtonsPerMillimetre(Pull));

    /// <summary>Whether both are of equal amount, whatever their unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(PanelRow? other) => other is not null && Key.Equals(other.Key);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Position and pull, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"row at {Print.Mm(Door.Millimetres(Position))}, {Print.Number(Door.NewtonsPerMillimetre(Pull))} N/mm";
}

/// <summary>Fixings of a panel in rows: what <see cref="PanelFixings.Place(PanelFixingJob)"/> needs to know.</summary>
/// <remarks>Nothing is checked here: <see cref="PanelFixings.Check(PanelFixingJob)"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record PanelFixingJob
{
    private readonly IReadOnlyList<PanelRow> _rows = [];

    /// <summary>Makes one by its members.</summary>
    public PanelFixingJob()
    {
    }

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="rows">The rows, in order.</param>
    /// <param name="width">Length of the rows: the panel's size along them.</param>
    /// <param name="hold">What one fixing may be loaded with.</param>
    [SetsRequiredMembers]
    public PanelFixingJob(IReadOnlyList<PanelRow> rows, Length width, Force hold)
    {
        Rows = rows;
        Width = width;
        Hold = hold;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="rows">The rows, in order.</param>
    /// <param name="width">Length of the rows: the panel's size along them.</param>
    /// <param name="hold">What one fixing may be loaded with.</param>
    /// <param name="girth">See <see cref="Girth"/>.</param>
    /// <param name="hungMass">See <see cref="HungMass"/>.</param>
    /// <param name="acceleration">See <see cref="Acceleration"/>.</param>
    /// <param name="edgeDistance">See <see cref="EdgeDistance"/>.</param>
    /// <param name="greatestSpacing">See <see cref="GreatestSpacing"/>.</param>
    [SetsRequiredMembers]
    public PanelFixingJob(
        IReadOnlyList<PanelRow> rows,
        Length width,
        Force hold,
        Length? girth = null,
        Mass? hungMass = null,
        double? acceleration = null,
        Length? edgeDistance = null,
        Length? greatestSpacing = null)
        : this(rows, width, hold)
    {
        Girth = girth;
        HungMass = hungMass;
        Acceleration = acceleration;
        EdgeDistance = edgeDistance;
        GreatestSpacing = greatestSpacing;
    }

    /// <summary>The rows, 1 to 50, ascending, at least 1 mm apart.</summary>
    public required IReadOnlyList<PanelRow> Rows
    {
        get => _rows;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _rows = Lists.Keep(value, ArcRows.MostRows);
    }

    /// <summary>Length of the rows: the panel's size along them, 1 mm to 100 m.</summary>
    public required Length Width { get; init; }

    /// <summary>What one fixing may be loaded with along its axis for good, the lesser of metal and head, more than 0 up to 1 MN.</summary>
    public required Force Hold { get; init; }

    /// <summary>The panel's size square to the rows, up to 100 m, from the last row on; null: it ends at its last row.</summary>
    public Length? Girth { get; init; }

    /// <summary>Mass that hangs on the fixings, the panel's own and what it carries, 0 to 10,000 kg; null for none.</summary>
    public Mass? HungMass { get; init; }

    /// <summary>Acceleration in g along the fixings, gravity included, more than 0 up to 100; null for 3 g, judgement: a rough road, not a crash.</summary>
    public double? Acceleration { get; init; }

    /// <summary>From the panel's edge to the outer fixings of a row, 0 to 1 m and no more than <see cref="GreatestSpacing"/>, which one alone in the middle may not overhang by more than either; null for 25 mm (judgement).</summary>
    public Length? EdgeDistance { get; init; }

    /// <summary>Largest distance between fixings of a row, whatever they hold, 40 mm to 10 m; null for 250 mm (common practice). No two are set nearer than 20 mm (judgement).</summary>
    public Length? GreatestSpacing { get; init; }

    /// <summary>The rows of a panel held to an arc, with its width and girth.</summary>
    /// <param name="held">What holds the sheet to the arc.</param>
    /// <param name="hold">What one fixing may be loaded with [force], more than 0 up to 1 MN.</param>
    /// <returns>The job.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="held"/> is null.</exception>
    public static PanelFixingJob From(HoldDownResult held, Force hold)
    {
        Door.IsMissing(held, new Name(nameof(held)), "a sheet held to an arc", null);
        PanelRow[] rows = new PanelRow[held.Rows.Count];
        for (int i = 0; i < rows.Length; i++)
        {
            rows[i] = new PanelRow(held.Rows[i].Position, held.Rows[i].PullPerWidth);
        }

        return new PanelFixingJob(rows, held.Panel.Width, hold) { Girth = held.Panel.Girth };
    }

    private (double, double, double?, double?, double?, double?, double?) Key => (
        Door.Millimetres(Width), Door.Newtons(Hold), Mm(Girth), HungMass is { } mass ? Door.Kilograms(mass) : null, Acceleration, Mm(EdgeDistance), Mm(GreatestSpacing));

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(PanelFixingJob? other) => other is not null && Key.Equals(other.Key) && Lists.Same(Rows, other.Rows, ArcRows.MostRows, Equals);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Rows, width and hold, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Rows?.Count ?? 0)} rows over {Print.Mm(Door.Millimetres(Width))}, {Print.Number(Door.Newtons(Hold))} N a fixing";

    private static double? Mm(Length? length) => length is { } given ? Door.Millimetres(given) : null;
}
