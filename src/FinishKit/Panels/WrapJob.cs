using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>An opening, or an area of a wall, that a row of wrapped panels fills: what <see cref="PanelWrap"/> needs to know.</summary>
/// <remarks>Nothing is checked here: <see cref="PanelWrap.CheckPlan"/> reports all problems, and the calculating method throws the first.</remarks>
public sealed record WrapJob
{
    private readonly IReadOnlyList<PanelWindow>? _windows;
    private readonly IReadOnlyList<Length>? _joints;

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
    /// <param name="joints">See <see cref="Joints"/>.</param>
    [SetsRequiredMembers]
    public WrapJob(Length openingWidth, Length openingHeight, WrapBuild build, int panels = 1, IReadOnlyList<PanelWindow>? windows = null, IReadOnlyList<Length>? joints = null)
        : this(openingWidth, openingHeight, build)
    {
        Panels = panels;
        Windows = windows;
        Joints = joints;
    }

    /// <summary>Width of the opening, along the van, 20 mm to 50 m; so wide that each panel has 10 mm of ply or more.</summary>
    public required Length OpeningWidth { get; init; }

    /// <summary>Its height, up the girth, 20 mm to 50 m; so high that there are 10 mm of ply or more.</summary>
    public required Length OpeningHeight { get; init; }

    /// <summary>What the panels are made of.</summary>
    public required WrapBuild Build { get; init; }

    /// <summary>Panels in the row, which share the width equally, 1 to 200; with <see cref="Joints"/> as many as these make, or 1 as it is.</summary>
    public int Panels { get; init; } = 1;

    /// <summary>Middles of the joints between panels that are not equally wide, from the front of the opening, 0 to 199, ascending; each panel must have 10 mm of ply or more. Null: the panels share the width equally.</summary>
    public IReadOnlyList<Length>? Joints
    {
        get => _joints;

        // As for the windows.
        init => _joints = value is null ? null : Lists.Keep(value, PanelWrap.MostPanels - 1);
    }

    /// <summary>Windows in the panels, 0 to 100; null for none.</summary>
    public IReadOnlyList<PanelWindow>? Windows
    {
        get => _windows;

        // A hostile list is kept as it is, not copied: the check refuses it by its count.
        init => _windows = value is null ? null : Lists.Keep(value, PanelWrap.MostWindows);
    }

    /// <summary>A course of a wall that was split into panels, with the joints and openings that it has.</summary>
    /// <param name="split">The wall, split.</param>
    /// <param name="build">What the panels are made of; the joint between them is the split's reveal, and edges along a level joint are treated as at joints.</param>
    /// <param name="course">Which course, from 0 at the foot.</param>
    /// <returns>The job: the edge gap is left at the wall's edges, the split's own reveal at its joints. Openings become windows with square corners.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="split"/> or <paramref name="build"/> is null.</exception>
    /// <exception cref="ArgumentException">The wall was not split, or has no such course.</exception>
    public static WrapJob From(PanelSplitPlan split, WrapBuild build, int course = 0)
    {
        Door.IsMissing(split, new Name(nameof(split)), "a wall split into panels", null);
        Door.IsMissing(build, new Name(nameof(build)), "what the panels are made of", null);
        if (!split.IsSplit)
        {
            Door.Report(new InputProblem(nameof(split), "a wall without a split", "a wall that was split into panels", isRange: false), null);
        }

        PanelWall wall = split.Wall;
        List<double> levels = [0];
        foreach (PanelJoint joint in split.Joints)
        {
            if (!joint.IsUpright)
            {
                levels.Add(Door.Millimetres(joint.Place));
            }
        }

        levels.Sort();
        Door.Number(course, nameof(course), new Allowed(0, levels.Count - 1, string.Empty), null);
        bool isFoot = course == 0, isHead = course == levels.Count - 1;
        long reveal = Grid.Nanometres(wall.Reveal is { } given ? Door.Millimetres(given) : PanelSplitDefaults.Reveal), half = reveal / 2;
        long gap = Grid.Nanometres(build.EdgeGap is { } edge ? Door.Millimetres(edge) : WrapDefaults.Reveal);

        // The wrap leaves its gap at every edge of an opening; at a level joint the split has left the reveal already.
        long foot = isFoot ? 0 : Grid.Nanometres(levels[course]) + reveal - half, bottom = isFoot ? 0 : foot - gap;
        long top = isHead ? Grid.Nanometres(Door.Millimetres(wall.Girth)) : Grid.Nanometres(levels[course + 1]) - half + gap;
        List<Length> joints = [];
        foreach (PanelJoint joint in split.Joints)
        {
            if (joint.IsUpright && Grid.Nanometres(Door.Millimetres(joint.From)) == foot)
            {
                joints.Add(joint.Place);
            }
        }

        List<PanelWindow> windows = [];
        foreach (FaceOpening opening in wall.Openings)
        {
            long from = Grid.Nanometres(Door.Millimetres(opening.FromV)), to = Grid.Nanometres(Door.Millimetres(opening.ToV));
            if (to > bottom && from < top)
            {
                // What reaches below the course is cut at its edge: no panel of it holds the window, and the plan says so.
                windows.Add(new PanelWindow(new FaceOpening(opening.FromU, opening.ToU, WrapPlan.Mm(Math.Max(0, from - bottom)), WrapPlan.Mm(to - bottom))));
            }
        }

        return new WrapJob(wall.Length, WrapPlan.Mm(top - bottom), build with
        {
            Joint = wall.Reveal ?? (build.Joint is null ? null : WrapPlan.Mm(reveal)),
            Bottom = isFoot ? build.Bottom : build.AtJoints,
            Top = isHead ? build.Top : build.AtJoints,
        })
        { Joints = joints, Windows = windows };
    }

    private (double, double, WrapBuild?, int) Key => (Door.Millimetres(OpeningWidth), Door.Millimetres(OpeningHeight), Build, Panels);

    /// <summary>Whether every member is of equal amount, whatever its unit, and joints and windows are the same in the same order.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(WrapJob? other) => other is not null
        && Key.Equals(other.Key)
        && Lists.Same(Joints, other.Joints, PanelWrap.MostPanels - 1)
        && ((Windows is null && other.Windows is null) || Lists.Same(Windows, other.Windows, PanelWrap.MostWindows, Equals));

    /// <inheritdoc/>
    public override int GetHashCode() => Key.GetHashCode();

    /// <summary>Panels, opening and windows, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Number(Joints is { } joints ? joints.Count + 1 : Panels)} wrapped panels in {Print.Number(Door.Millimetres(OpeningWidth))} x {Print.Mm(Door.Millimetres(OpeningHeight))}, {Print.Number(Windows?.Count ?? 0)} windows";
}
