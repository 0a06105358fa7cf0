using System.Diagnostics.CodeAnalysis;

namespace FinishKit;

/// <summary>What the tip of a fastener would meet beyond the last layer. The value 0 is none of the harmless ones.</summary>
public enum BehindKind
{
    /// <summary>An electric cable or loom.</summary>
    Wire = 0,

    /// <summary>A gas, fuel, brake, water or refrigerant line.</summary>
    Pipe = 1,

    /// <summary>A tank or cylinder.</summary>
    Tank = 2,

    /// <summary>The vehicle's outer skin: a dimple or a hole shows and rusts.</summary>
    OuterSkin = 3,

    /// <summary>The pressed-steel metal of a rib or rail. The only thing toward which a marginal fastener is ever accepted.</summary>
    RibMetal = 4,
}

/// <summary>What is behind the last layer, and how far.</summary>
/// <remarks>Nothing is checked here; the calculator checks it. Two values are equal when kind and distance are.</remarks>
public sealed record Behind
{
    /// <summary>An empty value for an object initialiser.</summary>
    public Behind()
    {
    }

    /// <summary>Something at a distance behind the last layer.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="distance">From the back of the last layer to it, with its measuring error.</param>
    [SetsRequiredMembers]
    public Behind(BehindKind kind, TolerancedLength distance)
    {
        Kind = kind;
        Distance = distance;
    }

    /// <summary>Metal of a rib that the last layer bears on: distance 0.</summary>
    public static Behind Metal { get; } = new(BehindKind.RibMetal, Measure.Mm(0));

    /// <summary>What it is.</summary>
    public required BehindKind Kind { get; init; }

    /// <summary>From the back of the last layer to it, 0 to 1 m.</summary>
    public required TolerancedLength Distance { get; init; }

    /// <summary>Metal of a rib behind a gap.</summary>
    /// <param name="gap">The gap between the last layer and the metal.</param>
    /// <returns>The value.</returns>
    public static Behind MetalAt(TolerancedLength gap) => new(BehindKind.RibMetal, gap);

    /// <summary>A cavity with the outer skin at its far side.</summary>
    /// <param name="depth">Depth of the cavity behind the last layer.</param>
    /// <returns>The value.</returns>
    public static Behind Skin(TolerancedLength depth) => new(BehindKind.OuterSkin, depth);

    /// <summary>A cavity with a cable in it.</summary>
    /// <param name="depth">From the back of the last layer to the near side of the cable.</param>
    /// <returns>The value.</returns>
    public static Behind Wire(TolerancedLength depth) => new(BehindKind.Wire, depth);

    /// <summary>A cavity with a pipe or line in it.</summary>
    /// <param name="depth">From the back of the last layer to the near side of the pipe.</param>
    /// <returns>The value.</returns>
    public static Behind Pipe(TolerancedLength depth) => new(BehindKind.Pipe, depth);

    /// <summary>A cavity with a tank in it.</summary>
    /// <param name="depth">From the back of the last layer to the near side of the tank.</param>
    /// <returns>The value.</returns>
    public static Behind Tank(TolerancedLength depth) => new(BehindKind.Tank, depth);

    /// <summary>What it is and how far, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Distance == default ? Words : $"{Words} {Distance} behind";

    /// <summary>What it is, as a sentence needs it.</summary>
    internal string Words => Kind switch
    {
        BehindKind.RibMetal => "the metal of a rib",
        BehindKind.OuterSkin => "the outer skin",
        BehindKind.Wire => "a wire",
        BehindKind.Pipe => "a pipe",
        _ => "a tank",
    };
}
