using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>Thin layers in place of one thick sheet: what <see cref="Lamination.Compare(LayersOrSheet)"/> holds against each other.</summary>
/// <remarks>Nothing is checked here: <see cref="Lamination.CheckCompare(LayersOrSheet)"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record LayersOrSheet
{
    private readonly IReadOnlyList<Length>? _rows;

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="layer">The sheet of a layer.</param>
    /// <param name="layers">How many of them.</param>
    /// <param name="sheet">The one thick sheet.</param>
    /// <param name="wallRadius">Radius of the surface at the back of either; null where flat.</param>
    [SetsRequiredMembers]
    public LayersOrSheet(BentSheet layer, int layers, BentSheet sheet, Length? wallRadius)
    {
        Layer = layer;
        Layers = layers;
        Sheet = sheet;
        WallRadius = wallRadius;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="layer">The sheet of a layer.</param>
    /// <param name="layers">How many of them.</param>
    /// <param name="sheet">The one thick sheet.</param>
    /// <param name="wallRadius">Radius of the surface at the back of either; null where flat.</param>
    /// <param name="rows">See <see cref="Rows"/>.</param>
    /// <param name="stretchRatio">See <see cref="StretchRatio"/>.</param>
    /// <param name="density">See <see cref="Density"/>.</param>
    [SetsRequiredMembers]
    public LayersOrSheet(BentSheet layer, int layers, BentSheet sheet, Length? wallRadius, IReadOnlyList<Length>? rows = null, double? stretchRatio = null, Density? density = null)
        : this(layer, layers, sheet, wallRadius)
    {
        Rows = rows;
        StretchRatio = stretchRatio;
        Density = density;
    }

    /// <summary>Makes one by its members.</summary>
    public LayersOrSheet()
    {
    }

    /// <summary>The sheet of a layer, with the figures of the direction around the curve.</summary>
    public required BentSheet Layer { get; init; }

    /// <summary>How many layers, 2 to 50, each bent on the one behind it.</summary>
    public required int Layers { get; init; }

    /// <summary>The one thick sheet, with the figures of the direction around the curve.</summary>
    public required BentSheet Sheet { get; init; }

    /// <summary>Radius of the surface at the back of either: positive where hollow to the room (more than either is thick), negative where it bulges into it, -1 km to 1 km, not 0; null where flat.</summary>
    public required Length? WallRadius { get; init; }

    /// <summary>Positions of the rows of fixings, as for <see cref="BendCase.Rows"/>: 2 to 50, ascending, at least 1 mm apart, 0 to 100 m; null: taken as the worst there are.</summary>
    public IReadOnlyList<Length>? Rows
    {
        get => _rows;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _rows = value is null ? null : Lists.Keep(value, ArcRows.MostRows);
    }

    /// <summary>Stiffness of a layer in stretching over that in bending, 0.05 to 20; null for 1, which is right for solid wood and veneer; counts where the layers are glued. Of plywood the two differ: <see cref="LayUpBending"/> has both.</summary>
    public double? StretchRatio { get; init; }

    /// <summary>Density of both, 100 to 1300 kg/m3; null leaves masses out.</summary>
    public Density? Density { get; init; }

    private (BentSheet, int, BentSheet, double?, double?, double?) Key =>
        (Layer, Layers, Sheet, WallRadius is { } radius ? Door.Millimetres(radius) : null, StretchRatio, Density is { } density ? Door.KilogramsPerCubicMetre(density, nameof(Density), Lamination.AnyDensity, []) : null);

    /// <summary>Whether every member is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(LayersOrSheet? other) => other is not null && Key.Equals(other.Key) && Lists.Same(Rows, other.Rows, ArcRows.MostRows);

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Both sheets and the surface, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Layers)} layers of {Layer} or one of {Sheet} on {PanelFindings.Surface(WallRadius is { } radius ? Door.Millimetres(radius) : double.NaN)}";
}
