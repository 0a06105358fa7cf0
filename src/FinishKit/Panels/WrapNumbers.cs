using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>The make of wrapped panels in millimetres, checked.</summary>
internal sealed class WrapMake
{
    private static readonly Allowed s_ply = new(1, 50, "mm");
    private static readonly Allowed s_cloth = new(Allowed.OneStep, 10, "mm");
    private static readonly Allowed s_foam = new(0, 50, "mm");
    private static readonly Allowed s_turn = new(10, 500, "mm");
    private static readonly Allowed s_gap = new(0, 100, "mm");

    private WrapMake(WrapBuild build, double ply, double cloth, double foam, double squeezed) => (Build, Ply, Cloth, Foam, Squeezed) = (build, ply, cloth, foam, squeezed);

    internal WrapBuild Build { get; }

    internal double Ply { get; }

    internal double Cloth { get; }

    internal double Foam { get; }

    internal double Squeezed { get; }

    internal double TurnUnder { get; private set; }

    internal double Gap { get; private set; }

    internal double Joint { get; private set; }

    /// <summary>Whether foam is cut from a roll of its own.</summary>
    internal bool HasFoamOfItsOwn => !Build.IsFoamBacked && Foam > 0;

    internal Source FoamSource => Build.FoamThickness is null ? WrapDefaults.FoamSource : Sources.Given;

    internal Source SqueezedSource => Build.SqueezedFoam is null ? WrapDefaults.SqueezedSource : Sources.Given;

    internal Source TurnUnderSource => Build.TurnUnder is null ? WrapDefaults.TurnUnderSource : Sources.Given;

    internal Source GapSource => Build.EdgeGap is null ? WrapDefaults.GapSource : Sources.Given;

    internal Source JointSource => Build.Joint is null ? WrapDefaults.RevealSource : Sources.Given;

    internal static WrapMake? Read(WrapBuild build, string path, List<InputProblem>? problems)
    {
        if (Door.IsMissing(build, new Name(path), "what the panels are made of", problems))
        {
            return null;
        }

        int before = problems?.Count ?? 0;
        double ply = Door.Millimetres(build.PlyThickness, new Name(path + ".PlyThickness"), s_ply, problems);
        double cloth = Door.Millimetres(build.ClothThickness, new Name(path + ".ClothThickness"), s_cloth, problems);
        double foam = build.FoamThickness is { } thick ? Door.Millimetres(thick, new Name(path + ".FoamThickness"), s_foam, problems) : WrapDefaults.Foam;
        double squeezed = build.SqueezedFoam is { } thin ? Door.Millimetres(thin, new Name(path + ".SqueezedFoam"), s_foam, problems) : Grid.Snap(foam * WrapDefaults.SqueezedShare);
        if (squeezed > foam)
        {
            Door.Report(new InputProblem(path + ".SqueezedFoam", Print.Number(squeezed) + " mm", $"at most the foam's thickness, {Print.Number(foam)} mm", isRange: true), problems);
        }

        double turn = build.TurnUnder is { } under ? Door.Millimetres(under, new Name(path + ".TurnUnder"), s_turn, problems) : WrapDefaults.TurnUnder;
        double gap = build.EdgeGap is { } edge ? Door.Millimetres(edge, new Name(path + ".EdgeGap"), s_gap, problems) : WrapDefaults.Reveal;
        double joint = build.Joint is { } between ? Door.Millimetres(between, new Name(path + ".Joint"), s_gap, problems) : WrapDefaults.Reveal;
        CheckEdge(build.Front, path + ".Front", problems);
        CheckEdge(build.Rear, path + ".Rear", problems);
        CheckEdge(build.Top, path + ".Top", problems);
        CheckEdge(build.Bottom, path + ".Bottom", problems);
        CheckEdge(build.AtJoints, path + ".AtJoints", problems);
        CheckEdge(build.AtWindows, path + ".AtWindows", problems);
        if (build.Nap is < NapDirection.Unknown or > NapDirection.None)
        {
            Door.Report(new InputProblem(path + ".Nap", Print.Number((int)build.Nap), "a direction of NapDirection", isRange: true), problems);
        }

        if (build.Stretch is < ClothStretch.Unknown or > ClothStretch.None)
        {
            Door.Report(new InputProblem(path + ".Stretch", Print.Number((int)build.Stretch), "a stretch of ClothStretch", isRange: true), problems);
        }

        return (problems?.Count ?? 0) > before ? null : new WrapMake(build, ply, cloth, foam, squeezed) { TurnUnder = turn, Gap = gap, Joint = joint };
    }

    /// <summary>Whether foam goes round an edge: foam-backed cloth takes it round wherever it goes itself.</summary>
    internal bool IsFoamRound(EdgeWrap wrap) => wrap == EdgeWrap.FoamRound || (wrap == EdgeWrap.FoamTrimmed && Build.IsFoamBacked);

    private static void CheckEdge(EdgeWrap wrap, string path, List<InputProblem>? problems)
    {
        if (wrap is < EdgeWrap.Unwrapped or > EdgeWrap.FoamRound)
        {
            Door.Report(new InputProblem(path, Print.Number((int)wrap), "a treatment of EdgeWrap", isRange: true), problems);
        }
    }
}

/// <summary>Wrapped panels in whole nanometres: finished sizes, and windows from the opening's front and lower edge.</summary>
internal sealed class WrapNumbers
{
    /// <summary>Least ply of a panel either way.</summary>
    internal const long LeastPly = 10_000_000;

    private const string Wide = "so wide that each panel has 10 mm of ply or more", High = "so high that there are 10 mm of ply or more";

    private static readonly Allowed s_opening = new(20, 50_000, "mm");
    private static readonly Allowed s_ply = new(10, 50_000, "mm");
    private static readonly Allowed s_panels = new(1, PanelWrap.MostPanels, string.Empty);
    private static readonly Allowed s_place = new(0, 50_000, "mm");
    private static readonly Allowed s_radius = new(0, 25_000, "mm");

    private WrapNumbers(WrapMake make, long[] finished, long height, WindowNumbers[] windows) => (Make, Finished, Height, Windows) = (make, finished, height, windows);

    /// <summary>Whether plies were given, not an opening.</summary>
    internal bool IsFromPly { get; private init; }

    /// <summary>Middle of the first joint where joints were given and there is one, in millimetres.</summary>
    internal double? FirstJoint { get; private init; }

    internal WrapMake Make { get; }

    /// <summary>Finished widths, front to rear.</summary>
    internal long[] Finished { get; }

    internal long Height { get; }

    internal WindowNumbers[] Windows { get; }

    internal long OpeningWidth => Grid.Nanometres(PanelWrap.SolveOpening(Make, Finished, default(Silent)));

    internal long OpeningHeight => Grid.Nanometres(PanelWrap.SolveOpeningHeight(Make, Grid.Millimetres(Height), default(Silent)));

    /// <summary>Null where there is a problem.</summary>
    internal static WrapNumbers? Read(WrapJob job, string path, List<InputProblem>? problems)
    {
        if (Door.IsMissing(job, new Name(path), "a job", problems))
        {
            return null;
        }

        int before = problems?.Count ?? 0;
        double width = Door.Millimetres(job.OpeningWidth, new Name(path + ".OpeningWidth"), s_opening, problems);
        double height = Door.Millimetres(job.OpeningHeight, new Name(path + ".OpeningHeight"), s_opening, problems);
        WrapMake? make = WrapMake.Read(job.Build, path + ".Build", problems);
        Door.Number(job.Panels, path + ".Panels", s_panels, problems);
        long[]? joints = ReadJoints(job, path, problems);
        WindowNumbers[] windows = ReadWindows(job, path, problems);
        if ((problems?.Count ?? 0) > before)
        {
            return null;
        }

        long gap = Grid.Nanometres(make!.Gap), joint = Grid.Nanometres(make.Joint);
        long[] finished = joints is null ? Shared(Grid.Nanometres(width) - (2 * gap) - ((job.Panels - 1) * joint), job.Panels) : Between(joints, Grid.Nanometres(width), gap, joint);
        WrapNumbers numbers = new(make, finished, Grid.Nanometres(height) - (2 * gap), windows) { FirstJoint = joints is { Length: > 0 } ? Grid.Millimetres(joints[0]) : null };
        for (int i = 0; i < finished.Length; i++)
        {
            if (finished[i] < LeastPly || numbers.Sides(i).Ply < LeastPly)
            {
                if (joints is { Length: > 0 })
                {
                    int at = Math.Min(i, joints.Length - 1);
                    Door.Report(new InputProblem(new Name(path + ".Joints", at).ToString(), Print.Number(Grid.Millimetres(joints[at])) + " mm", "so far from the joints and edges beside it that each panel has 10 mm of ply or more", isRange: true), problems);
                }
                else
                {
                    Door.Report(new InputProblem(path + ".OpeningWidth", Print.Number(width) + " mm", Wide, isRange: true), problems);
                }

                break;
            }
        }

        if (numbers.Height < LeastPly || numbers.Upright.Ply < LeastPly)
        {
            Door.Report(new InputProblem(path + ".OpeningHeight", Print.Number(height) + " mm", High, isRange: true), problems);
        }

        return (problems?.Count ?? 0) > before ? null : numbers;
    }

    /// <summary>The same from plies that are there. Null where there is a problem.</summary>
    internal static WrapNumbers? Read(IReadOnlyList<Length> plyWidths, Length plyHeight, WrapBuild build, List<InputProblem>? problems)
    {
        int before = problems?.Count ?? 0;
        const string Words = "1 to 200 widths";
        double[] widths = [];
        if (!Door.IsMissing(plyWidths, new Name(nameof(plyWidths)), Words, problems))
        {
            if (plyWidths.Count is < 1 or > PanelWrap.MostPanels)
            {
                Door.Report(new InputProblem(nameof(plyWidths), Print.Number(plyWidths.Count) + " widths", Words, isRange: true), problems);
            }
            else
            {
                widths = new double[plyWidths.Count];
                for (int i = 0; i < widths.Length; i++)
                {
                    widths[i] = Door.Millimetres(plyWidths[i], new Name(nameof(plyWidths), i), s_ply, problems);
                }
            }
        }

        double height = Door.Millimetres(plyHeight, nameof(plyHeight), s_ply, problems);
        WrapMake? make = WrapMake.Read(build, nameof(build), problems);
        if ((problems?.Count ?? 0) > before)
        {
            return null;
        }

        WrapNumbers numbers = new(make!, new long[widths.Length], 0, []);
        long[] finished = new long[widths.Length];
        for (int i = 0; i < widths.Length; i++)
        {
            finished[i] = PanelWrap.SolveSide(make!, widths[i], isPly: true, numbers.FrontOf(i), numbers.RearOf(i), 0, default(Silent)).Finished;
        }

        long high = PanelWrap.SolveSide(make!, height, isPly: true, make!.Build.Bottom, make.Build.Top, 2, default(Silent)).Finished;
        return new WrapNumbers(make, finished, high, []) { IsFromPly = true };
    }

    internal EdgeWrap FrontOf(int panel) => panel == 0 ? Make.Build.Front : Make.Build.AtJoints;

    internal EdgeWrap RearOf(int panel) => panel == Finished.Length - 1 ? Make.Build.Rear : Make.Build.AtJoints;

    /// <summary>Sizes of a panel along the row.</summary>
    internal SideNumbers Sides(int panel) => PanelWrap.SolveSide(Make, Grid.Millimetres(Finished[panel]), isPly: false, FrontOf(panel), RearOf(panel), 0, default(Silent));

    /// <summary>Sizes up the panels, the same for all.</summary>
    internal SideNumbers Upright => PanelWrap.SolveSide(Make, Grid.Millimetres(Height), isPly: false, Make.Build.Bottom, Make.Build.Top, 2, default(Silent));

    /// <summary>Equal widths; the row adds up to the nanometre.</summary>
    private static long[] Shared(long width, int panels)
    {
        long[] finished = new long[panels];
        for (int i = 0; i < panels; i++)
        {
            finished[i] = (width * (i + 1) / panels) - (width * i / panels);
        }

        return finished;
    }

    /// <summary>Widths between joints given by their middles, half a joint taken off at each; of an odd nanometre the panel behind has the less.</summary>
    private static long[] Between(long[] joints, long width, long gap, long joint)
    {
        long[] finished = new long[joints.Length + 1];
        long from = gap;
        for (int i = 0; i < joints.Length; i++)
        {
            long to = joints[i] - (joint / 2);
            finished[i] = to - from;
            from = to + joint;
        }

        finished[joints.Length] = width - gap - from;
        return finished;
    }

    private static long[]? ReadJoints(WrapJob job, string path, List<InputProblem>? problems)
    {
        if (job.Joints is null)
        {
            return null;
        }

        string name = path + ".Joints";
        if (job.Joints.Count >= PanelWrap.MostPanels)
        {
            Door.Report(new InputProblem(name, Print.Number(job.Joints.Count) + " joints", "0 to 199 joints", isRange: true), problems);
            return null;
        }

        if (job.Panels != 1 && job.Panels != job.Joints.Count + 1)
        {
            Door.Report(new InputProblem(path + ".Panels", Print.Number(job.Panels), $"{Print.Number(job.Joints.Count + 1)}, as the joints make, or 1", isRange: true), problems);
        }

        long[] joints = new long[job.Joints.Count];
        for (int i = 0; i < joints.Length; i++)
        {
            joints[i] = Grid.Nanometres(Door.Millimetres(job.Joints[i], new Name(name, i), s_place, problems));
        }

        return joints;
    }

    private static WindowNumbers[] ReadWindows(WrapJob job, string path, List<InputProblem>? problems)
    {
        if (job.Windows is null)
        {
            return [];
        }

        string name = path + ".Windows";
        if (job.Windows.Count > PanelWrap.MostWindows)
        {
            Door.Report(new InputProblem(name, Print.Number(job.Windows.Count) + " windows", "0 to 100 windows", isRange: true), problems);
            return [];
        }

        WindowNumbers[] windows = new WindowNumbers[job.Windows.Count];
        List<WindowNumbers> read = [];
        for (int i = 0; i < windows.Length; i++)
        {
            PanelWindow window = job.Windows[i];
            Name at = new(name, i);
            if (Door.IsMissing(window, at, "a window", problems) || Door.IsMissing(window.Opening, at.Then(".Opening"), "where it is", problems))
            {
                continue;
            }

            int before = problems?.Count ?? 0;
            FaceOpening opening = window.Opening;
            double fromU = Door.Millimetres(opening.FromU, at.Then(".Opening.FromU"), s_place, problems);
            double toU = Door.Millimetres(opening.ToU, at.Then(".Opening.ToU"), s_place, problems);
            double fromV = Door.Millimetres(opening.FromV, at.Then(".Opening.FromV"), s_place, problems);
            double toV = Door.Millimetres(opening.ToV, at.Then(".Opening.ToV"), s_place, problems);
            double radius = Door.Millimetres(window.CornerRadius, at.Then(".CornerRadius"), s_radius, problems);
            if (Grid.Snap(toU - fromU) < 1)
            {
                Door.Report(new InputProblem(at.Then(".Opening.ToU").ToString(), Print.Number(toU) + " mm", "1 mm or more behind its front", isRange: true), problems);
            }

            if (Grid.Snap(toV - fromV) < 1)
            {
                Door.Report(new InputProblem(at.Then(".Opening.ToV").ToString(), Print.Number(toV) + " mm", "1 mm or more above its lower edge", isRange: true), problems);
            }

            if (Math.Min(toU - fromU, toV - fromV) is var shorter && shorter >= 1 && Grid.Snap(2 * radius) > Grid.Snap(shorter))
            {
                Door.Report(new InputProblem(at.Then(".CornerRadius").ToString(), Print.Number(radius) + " mm", $"at most half of its shorter side, {Print.Number(Grid.Snap(shorter / 2))} mm", isRange: true), problems);
            }

            windows[i] = new WindowNumbers(fromU, toU, fromV, toV, radius);
            if ((problems?.Count ?? 0) == before)
            {
                if (read.Exists(windows[i].IsOver))
                {
                    Door.Report(new InputProblem(at.ToString(), window.ToString(), "over no other window", isRange: true), problems);
                }

                read.Add(windows[i]);
            }
        }

        return windows;
    }
}

/// <summary>A window as it is seen, in millimetres.</summary>
internal readonly struct WindowNumbers(double fromU, double toU, double fromV, double toV, double radius)
{
    internal double FromU { get; } = fromU;

    internal double ToU { get; } = toU;

    internal double FromV { get; } = fromV;

    internal double ToV { get; } = toV;

    internal double Radius { get; } = radius;

    /// <summary>Whether the rectangles lie over each other; edges that touch do not.</summary>
    internal bool IsOver(WindowNumbers other) => FromU < other.ToU && other.FromU < ToU && FromV < other.ToV && other.FromV < ToV;
}

/// <summary>Sizes across a panel one way, and what its two edges add, in whole nanometres.</summary>
internal readonly struct SideNumbers
{
    internal long Finished { get; init; }

    internal long Ply { get; init; }

    internal long Foam { get; init; }

    internal long Cloth { get; init; }

    /// <summary>What cloth and foam add outside the ply, at the front or lower edge.</summary>
    internal long FirstGrowth { get; init; }

    internal long FirstReach { get; init; }

    internal long LastReach { get; init; }
}

/// <summary>A window's cuts in whole nanometres.</summary>
internal readonly struct WindowCuts
{
    internal long PlyWidth { get; init; }

    internal long PlyHeight { get; init; }

    internal long Growth { get; init; }

    internal long PlyRadius { get; init; }

    internal long FoamWidth { get; init; }

    internal long FoamHeight { get; init; }

    internal long ClothWidth { get; init; }

    internal long ClothHeight { get; init; }

    /// <summary>Cloth that can be had on the back, up to the turn-under; 0 or less where it does not get there.</summary>
    internal long Strip { get; init; }

    /// <summary>Cloth that lies on the back all round.</summary>
    internal long Turned => IsWrapped ? Math.Max(0, Strip) : 0;

    internal long Relief { get; init; }

    internal int ReliefsPerCorner { get; init; }

    internal bool IsWrapped { get; init; }
}
