using System;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>
/// One layer that a fastener meets: board, furring, tape, mat, a void. A plain <see cref="Length"/> or <see cref="TolerancedLength"/>
/// converts implicitly to a solid layer of that thickness.
/// </summary>
/// <remarks>Nothing is checked here; the calculator that takes the layers checks them all. Two layers are equal when all members are.</remarks>
public sealed record Layer
{
    /// <summary>An empty layer for an object initialiser; <see cref="Thickness"/> is required.</summary>
    public Layer()
    {
    }

    /// <summary>A solid layer.</summary>
    /// <param name="thickness">Its thickness as it is, with its tolerance; not its label.</param>
    [SetsRequiredMembers]
    public Layer(TolerancedLength thickness) => Thickness = thickness;

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="thickness">Its thickness as it is, with its tolerance; not its label.</param>
    /// <param name="name">See <see cref="Name"/>.</param>
    /// <param name="compressed">See <see cref="Compressed"/>.</param>
    /// <param name="holds">See <see cref="Holds"/>.</param>
    /// <param name="isVoid">See <see cref="IsVoid"/>.</param>
    /// <param name="sheet">See <see cref="Sheet"/>.</param>
    [SetsRequiredMembers]
    public Layer(TolerancedLength thickness, string name = "layer", TolerancedLength? compressed = null, bool? holds = null, bool isVoid = false, SheetGoods? sheet = null)
        : this(thickness)
    {
        Name = name;
        Compressed = compressed;
        Holds = holds;
        IsVoid = isVoid;
        Sheet = sheet;
    }

    /// <summary>What the layer is, for messages.</summary>
    public string Name { get; init; } = "layer";

    /// <summary>Thickness as it is, more than 0 up to 1 m. For a compressible layer, its free thickness.</summary>
    public required TolerancedLength Thickness { get; init; }

    /// <summary>Thickness when squeezed; null for a layer that does not give. For clearance this is the one against you, for bite the free one.</summary>
    public TolerancedLength? Compressed { get; init; }

    /// <summary>Whether the layer holds the fastener. Null: the last layer that is neither a void nor gives holds, the others do not. A layer that gives cannot hold.</summary>
    public bool? Holds { get; init; }

    /// <summary>Whether there is nothing there: the fastener crosses it, the head cannot seat on it and it cannot hold.</summary>
    public bool IsVoid { get; init; }

    /// <summary>The sheet the layer is cut from, or null. Its label is compared with its actual thickness, and remedies look in its family first.</summary>
    public SheetGoods? Sheet { get; init; }

    /// <summary>A solid layer without tolerance.</summary>
    /// <param name="thickness">Its thickness.</param>
    public static implicit operator Layer(Length thickness) => FromLength(thickness);

    /// <summary>A solid layer.</summary>
    /// <param name="thickness">Its thickness and tolerance.</param>
    public static implicit operator Layer(TolerancedLength thickness) => FromTolerancedLength(thickness);

    /// <summary>A solid layer without tolerance.</summary>
    /// <param name="thickness">Its thickness.</param>
    /// <returns>The layer.</returns>
    public static Layer FromLength(Length thickness) => new(thickness);

    /// <summary>A solid layer.</summary>
    /// <param name="thickness">Its thickness and tolerance.</param>
    /// <returns>The layer.</returns>
    public static Layer FromTolerancedLength(TolerancedLength thickness) => new(thickness);

    /// <summary>A board.</summary>
    /// <param name="thickness">Its thickness and tolerance.</param>
    /// <returns>A solid layer named "board".</returns>
    public static Layer Board(TolerancedLength thickness) => new(thickness) { Name = "board" };

    /// <summary>A furring strip of a measured thickness.</summary>
    /// <param name="thickness">Its thickness and tolerance.</param>
    /// <returns>A solid layer named "furring".</returns>
    public static Layer Furring(TolerancedLength thickness) => new(thickness) { Name = "furring" };

    /// <summary>A furring strip ripped from a sheet.</summary>
    /// <param name="sheet">The sheet; its actual thickness and tolerance count, not its label.</param>
    /// <returns>A solid layer named "furring".</returns>
    /// <exception cref="ArgumentNullException"><paramref name="sheet"/> is null.</exception>
    public static Layer Furring(SheetGoods sheet) => FromSheet("furring", sheet);

    /// <summary>A panel cut from a sheet.</summary>
    /// <param name="sheet">The sheet; its actual thickness and tolerance count, not its label.</param>
    /// <returns>A solid layer named "panel".</returns>
    /// <exception cref="ArgumentNullException"><paramref name="sheet"/> is null.</exception>
    public static Layer Panel(SheetGoods sheet) => FromSheet("panel", sheet);

    /// <summary>A layer that gives: tape, mat, a bead of adhesive.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="free">Its free thickness.</param>
    /// <param name="compressed">Its thickness when squeezed; not more than free.</param>
    /// <returns>A layer that does not hold.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    public static Layer Compressible(string name, TolerancedLength free, TolerancedLength compressed) =>
        new(free) { Name = name ?? throw new ArgumentNullException(nameof(name)), Compressed = compressed, Holds = false };

    /// <summary>A void that the fastener crosses.</summary>
    /// <param name="depth">Its depth.</param>
    /// <returns>A layer that does not hold.</returns>
    public static Layer Void(TolerancedLength depth) => new(depth) { Name = "void", IsVoid = true, Holds = false };

    /// <summary>Name and thickness, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Compressed is { } compressed ? $"{Name} {Thickness}, squeezed {compressed}" : $"{Name} {Thickness}";

    private static Layer FromSheet(string name, SheetGoods sheet) =>
        new((sheet ?? throw new ArgumentNullException(nameof(sheet))).Thickness) { Name = name, Sheet = sheet };
}
