using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>An opening, or an area of a wall, that a row of wrapped panels fills: what <see cref="PanelWrap"/> needs to know.</summary>
/// <remarks>Nothing is checked here: <see cref="PanelWrap.CheckPlan"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record WrapJob
{
    private readonly IReadOnlyList<PanelWindow>? _windows;

    /// <summary>An empty job for an object initialiser.</summary>
    public WrapJob()
    {
    }

    /// <summary>A job of one panel without a window.</summary>
    /// <param name="openingWidth">Width of the opening, along the van.</param>
    /// <param name="openingHeight">Its height, up the girth.</param>
    /// <param name="build">What the panels are made of.</param>
    [SetsRequiredMembers]
    public WrapJob(Length openingWidth, Length openingHeight, WrapBuild build)
    {
        OpeningWidth = openingWidth;
        OpeningHeight = openingHeight;
        Build = build;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="openingWidth">Width of the opening, along the van.</param>
    /// <param name="openingHeight">Its height, up the girth.</param>
    /// <param name="build">What the panels are made of.</param>
    /// <param name="panels">See <see cref="Panels"/>.</param>
    /// <param name="windows">See <see cref="Windows"/>.</param>
    [SetsRequiredMembers]
    public WrapJob(Length openingWidth, Length openingHeight, WrapBuild build, int panels = 1, IReadOnlyList<PanelWindow>? windows = null)
        : this(openingWidth, openingHeight, build)
    {
        Panels = panels;
        Windows = windows;
    }

    /// <summary>Width of the opening, along the van, 20 mm to 50 m; so wide that each panel has 10 mm of ply or more.</summary>
    public required Length OpeningWidth { get; init; }

    /// <summary>Its height, up the girth, 20 mm to 50 m; so high that there are 10 mm of ply or more.</summary>
    public required Length OpeningHeight { get; init; }

    /// <summary>What the panels are made of.</summary>
    public required WrapBuild Build { get; init; }

    /// <summary>Panels in the row, which share the width equally, 1 to 200.</summary>
    public int Panels { get; init; } = 1;

    /// <summary>Windows in the panels, 0 to 100; null for none.</summary>
    public IReadOnlyList<PanelWindow>? Windows
    {
        get => _windows;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _windows = value is null ? null : Lists.Keep(value, PanelWrap.MostWindows);
    }

    private (double, double, WrapBuild?, int) Key => (Door.Millimetres(OpeningWidth), Door.Millimetres(OpeningHeight), Build, Panels);

    /// <summary>Whether every member is of equal amount, whatever its unit, and the windows are the same in the same order.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(WrapJob? other) => other is not null
        && Key.Equals(other.Key)
        && ((Windows is null && other.Windows is null) || Lists.Same(Windows, other.Windows, PanelWrap.MostWindows, Equals));

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Panels, opening and windows, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Number(Panels)} wrapped panels in {Print.Number(Door.Millimetres(OpeningWidth))} x {Print.Mm(Door.Millimetres(OpeningHeight))}, {Print.Number(Windows?.Count ?? 0)} windows";
}
