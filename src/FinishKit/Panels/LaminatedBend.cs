using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>Thin layers glued one on another over a form: what <see cref="Lamination"/> needs to know.</summary>
/// <remarks>Nothing is checked here: the Check methods of <see cref="Lamination"/> report all problems, and the calculating methods throw the first.</remarks>
public sealed record LaminatedBend
{
    internal const int MostLayers = 50;

    private readonly IReadOnlyList<BentSheet> _layers = null!;

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="layers">The layers, from the inside of the curve outward.</param>
    /// <param name="radius">The radius that is given, to the middle of all layers.</param>
    [SetsRequiredMembers]
    public LaminatedBend(IReadOnlyList<BentSheet> layers, Length radius)
    {
        Layers = layers;
        Radius = radius;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="layers">The layers, from the inside of the curve outward.</param>
    /// <param name="radius">The radius that is given, to the middle of all layers.</param>
    /// <param name="stretchRatio">See <see cref="StretchRatio"/>.</param>
    [SetsRequiredMembers]
    public LaminatedBend(IReadOnlyList<BentSheet> layers, Length radius, double? stretchRatio = null)
        : this(layers, radius)
    {
        StretchRatio = stretchRatio;
    }

    /// <summary>Makes one by its members.</summary>
    public LaminatedBend()
    {
    }

    /// <summary>The layers, from the inside of the curve outward, each with the figures of the direction around the curve: 1 to 50.</summary>
    public required IReadOnlyList<BentSheet> Layers
    {
        get => _layers;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _layers = Lists.Keep(value, MostLayers);
    }

    /// <summary>The radius that is given, to the middle of all layers, more than 0 up to 1 km: the wanted one or the form's.</summary>
    public required Length Radius { get; init; }

    /// <summary>
    /// Stiffness of a layer in stretching over that in bending, 0.05 to 20; null for 1, which is right for solid wood and veneer. Of plywood the two differ: <see cref="LayUpBending"/> has both.
    /// </summary>
    public double? StretchRatio { get; init; }

    private (double, double?) Key => (Door.Millimetres(Radius), StretchRatio);

    /// <summary>So many layers of one sheet.</summary>
    /// <param name="layer">The sheet of each layer, with the figures of the direction around the curve.</param>
    /// <param name="layers">How many, 1 to 50.</param>
    /// <param name="radius">The radius that is given, to the middle of all layers [length].</param>
    /// <returns>The layers and the radius, not checked yet but for the number.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="layers"/> is outside its range.</exception>
    public static LaminatedBend Of(BentSheet layer, int layers, Length radius)
    {
        Door.Number(layers, nameof(layers), Lamination.Count, null);
        BentSheet[] all = new BentSheet[layers];
        for (int i = 0; i < layers; i++)
        {
            all[i] = layer;
        }

        return new LaminatedBend(all, radius);
    }

    /// <summary>Whether every layer and figure is of equal amount, whatever its unit.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(LaminatedBend? other) => other is not null && Key.Equals(other.Key) && Lists.Same(Layers, other.Layers, MostLayers, static (one, same) => Equals(one, same));

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Number of layers and radius, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Layers?.Count ?? 0)} layers, radius {Print.Mm(Door.Millimetres(Radius))}";
}
