using UnitsNet;

namespace FinishKit;

/// <summary>The packer at one point of a surface that is furred flat.</summary>
public sealed class PackedPoint
{
    internal PackedPoint(double packing, double least, double? step)
    {
        Millimetres = System.Math.Max(0, Grid.Snap(packing));
        Touches = Millimetres <= least;
        StockedMillimetres = step is { } size ? Grid.Snap(Grid.CeilingOfRatio(Millimetres, size) * size) : Millimetres;
        HasStock = step is not null;
    }

    /// <summary>From the surface to the line or plane, square to the string or the reference: the least packing where it touches.</summary>
    public Length Packing => Door.Millimetres(Millimetres);

    /// <summary>Whether it needs no more than the least packing.</summary>
    public bool Touches { get; }

    /// <summary>The packing made up of whole packers, rounded up; null where no step is given.</summary>
    public Length? Stocked => HasStock ? Door.Millimetres(StockedMillimetres) : null;

    /// <summary>How far the furring then stands off the line toward the room: less than a step; null where no step is given.</summary>
    public Length? Proud => HasStock ? Door.Millimetres(ProudMillimetres) : null;

    internal double Millimetres { get; }

    internal double StockedMillimetres { get; }

    internal double ProudMillimetres => System.Math.Max(0, Grid.Snap(StockedMillimetres - Millimetres));

    private bool HasStock { get; }

    /// <summary>The packing, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => HasStock ? $"{Print.Mm(Millimetres)}, packers of {Print.Mm(StockedMillimetres)}" : Print.Mm(Millimetres);
}
