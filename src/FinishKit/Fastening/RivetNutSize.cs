using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>One rivet nut: thread, hole, and the grip that it takes. Makers differ: the maker's own sheet comes before any row here.</summary>
public sealed class RivetNutSize
{
    private static readonly Allowed s_thread = new(1, 20, "mm");
    private static readonly Allowed s_hole = new(1, 40, "mm");
    private static readonly Allowed s_grip = new(0, 20, "mm");

    /// <summary>A rivet nut of the caller's own, from its maker's sheet.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="thread">Nominal diameter of its thread [length], 1 to 20 mm.</param>
    /// <param name="hole">Hole for it, across flats for a hexagonal body [length], 1 to 40 mm, more than the thread.</param>
    /// <param name="leastGrip">The least it clamps, paint and all [length], 0 to 20 mm.</param>
    /// <param name="mostGrip">The most it clamps, paint and all [length], 0 to 20 mm, no less than the least.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit.</exception>
    public RivetNutSize(string name, Length thread, Length hole, Length leastGrip, Length mostGrip)
        : this(name, Door.Millimetres(thread, nameof(thread), s_thread, null), Door.Millimetres(hole, nameof(hole), s_hole, null), Door.Millimetres(leastGrip, nameof(leastGrip), s_grip, null), Door.Millimetres(mostGrip, nameof(mostGrip), s_grip, null), Sources.Given)
    {
        if (ThreadMm >= Door.Millimetres(hole))
        {
            throw new InputProblem(nameof(hole), Print.Mm(Door.Millimetres(hole)), $"more than the thread, {Print.Mm(ThreadMm)}", isRange: true).ToException();
        }

        if (MostGripMm < LeastGripMm)
        {
            throw new InputProblem(nameof(mostGrip), Print.Mm(MostGripMm), $"the least grip, {Print.Mm(LeastGripMm)}, or more", isRange: true).ToException();
        }
    }

    private RivetNutSize(string name, double thread, double hole, double leastGrip, double mostGrip, Source source)
    {
        Name = name ?? throw new ArgumentNullException(nameof(name));
        ThreadMm = thread;
        Hole = Door.Millimetres(hole);
        LeastGripMm = leastGrip;
        MostGripMm = mostGrip;
        Source = source;
    }

    /// <summary>The rows of the library: one read in a copy, the others from memory, each saying so in its <see cref="Source"/>.</summary>
    public static IReadOnlyList<RivetNutSize> All { get; } =
    [
        new("hex M3", 3, 5.6, 0.5, 1.5, MetalDefaults.HexNut),
        new("round M4", 4, 6, 0.5, 2, MetalDefaults.RoundNuts),
        new("round M4 long", 4, 6, 2, 3.5, MetalDefaults.RoundNuts),
        new("round M5", 5, 7, 0.5, 3, MetalDefaults.RoundNuts),
        new("round M5 long", 5, 7, 3, 5.5, MetalDefaults.RoundNuts),
        new("round M6", 6, 9, 0.5, 3, MetalDefaults.RoundNuts),
        new("round M6 long", 6, 9, 3, 5.5, MetalDefaults.RoundNuts),
        new("round M8", 8, 11, 0.5, 3, MetalDefaults.RoundNuts),
        new("round M8 long", 8, 11, 3, 5.5, MetalDefaults.RoundNuts),
    ];

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>Nominal diameter of its thread.</summary>
    public Length Thread => Door.Millimetres(ThreadMm);

    /// <summary>Hole for it; across flats for a hexagonal body.</summary>
    public Length Hole { get; }

    /// <summary>The least it clamps, paint and all.</summary>
    public Length LeastGrip => Door.Millimetres(LeastGripMm);

    /// <summary>The most it clamps, paint and all.</summary>
    public Length MostGrip => Door.Millimetres(MostGripMm);

    /// <summary>What the row rests on.</summary>
    public Source Source { get; }

    internal double ThreadMm { get; }

    internal double LeastGripMm { get; }

    internal double MostGripMm { get; }

    /// <summary>Name, hole and grip, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}, hole {Print.Mm(Door.Millimetres(Hole))}, grip {Print.Number(LeastGripMm)} to {Print.Mm(MostGripMm)}";
}
