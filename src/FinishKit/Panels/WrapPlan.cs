using System;
using System.Collections.Generic;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>A piece of cloth or foam to be cut from a roll.</summary>
/// <remarks><see cref="PanelWrap.Plan"/> makes them.</remarks>
public sealed class CoverPiece
{
    internal CoverPiece(string name, long across, long along, NapDirection arrow, bool isTurnable)
    {
        (Name, AcrossNm, AlongNm, Arrow, IsTurnable) = (name, across, along, arrow, isTurnable);
    }

    /// <summary>What it is for.</summary>
    public string Name { get; }

    /// <summary>Its size across the roll.</summary>
    public Length Across => WrapPlan.Mm(AcrossNm);

    /// <summary>Its size along the roll.</summary>
    public Length Along => WrapPlan.Mm(AlongNm);

    /// <summary>The arrow to mark on its back: where the nap, or the roll's arrow, points on the hung panel. Unknown: mark which end is up, and lay all pieces alike.</summary>
    public NapDirection Arrow { get; }

    /// <summary>Whether it may be laid on the roll a quarter turned: the material looks and stretches the same both ways.</summary>
    public bool IsTurnable { get; }

    /// <summary>The piece for <see cref="RollCutting"/>, with its name; turned only where it may be.</summary>
    /// <returns>The piece, once.</returns>
    public RollPart ToRollPart() => new(Along, Across, 1, IsTurnable) { Name = Name };

    internal long AcrossNm { get; }

    internal long AlongNm { get; }

    /// <summary>Name and size, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Name}: {Print.Number(Grid.Millimetres(AcrossNm))} across x {Print.Mm(Grid.Millimetres(AlongNm))} along the roll{(IsTurnable ? ", may be turned" : string.Empty)}";
}

/// <summary>A window in a panel: what is cut out of ply, foam and cloth.</summary>
/// <remarks><see cref="PanelWrap.Plan"/> makes them.</remarks>
public sealed class WindowCutOut
{
    internal WindowCutOut(int window, WindowCuts cuts, long plyFromFront, long plyFromBottom, long clothFromFront, long clothFromBottom)
    {
        Window = window;
        Cuts = cuts;
        (FromFrontNm, FromBottomNm) = (plyFromFront, plyFromBottom);
        ClothFromFront = WrapPlan.Mm(clothFromFront);
        ClothFromBottom = WrapPlan.Mm(clothFromBottom);
    }

    /// <summary>The window's place in the job's list, from 0.</summary>
    public int Window { get; }

    /// <summary>From the ply's front edge to the cut-out.</summary>
    public Length PlyFromFront => WrapPlan.Mm(FromFrontNm);

    /// <summary>From the ply's lower edge to the cut-out.</summary>
    public Length PlyFromBottom => WrapPlan.Mm(FromBottomNm);

    /// <summary>Width of the cut-out in the ply.</summary>
    public Length PlyWidth => WrapPlan.Mm(Cuts.PlyWidth);

    /// <summary>Its height.</summary>
    public Length PlyHeight => WrapPlan.Mm(Cuts.PlyHeight);

    /// <summary>Radius of its corners, which runs parallel to the corner that is seen.</summary>
    public Length PlyRadius => WrapPlan.Mm(Cuts.PlyRadius);

    /// <summary>Width of the opening in the foam; 0 where no foam of its own is cut.</summary>
    public Length FoamWidth => WrapPlan.Mm(Cuts.FoamWidth);

    /// <summary>Its height; 0 where no foam of its own is cut.</summary>
    public Length FoamHeight => WrapPlan.Mm(Cuts.FoamHeight);

    /// <summary>From the cloth's front edge to the piece that is cut out of it.</summary>
    public Length ClothFromFront { get; }

    /// <summary>From the cloth's lower edge to it.</summary>
    public Length ClothFromBottom { get; }

    /// <summary>Width of the piece cut out of the cloth; 0 where it is an upright slit.</summary>
    public Length ClothWidth => WrapPlan.Mm(Cuts.ClothWidth);

    /// <summary>Its height; 0 where it is a level slit. A slit ends as far from the ends of the ply's cut-out as from its long edges.</summary>
    public Length ClothHeight => WrapPlan.Mm(Cuts.ClothHeight);

    /// <summary>Cloth that comes to lie on the back all round the window, up to the turn-under; negative by what lacks where it does not get there.</summary>
    public Length Strip => WrapPlan.Mm(Cuts.Strip);

    /// <summary>Length of the relief cut at 45° in each corner, outward from the corner of what is cut out of the cloth (the end of a slit) toward the ply's corner; 0 where none is needed.</summary>
    public Length ReliefCut => WrapPlan.Mm(Cuts.Relief);

    /// <summary>Relief cuts in each corner, spread over its round, the middle one at 45°.</summary>
    public int ReliefCutsPerCorner => Cuts.ReliefsPerCorner;

    internal WindowCuts Cuts { get; }

    /// <summary>From the ply's front edge to the cut-out in it.</summary>
    internal long FromFrontNm { get; }

    internal long ToFrontNm => FromFrontNm + Cuts.PlyWidth;

    /// <summary>From the ply's lower edge to the cut-out in it.</summary>
    internal long FromBottomNm { get; }

    internal long ToBottomNm => FromBottomNm + Cuts.PlyHeight;

    /// <summary>Cut-outs of ply and cloth, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"window {Print.Number(Window)}: ply {Print.Number(Grid.Millimetres(Cuts.PlyWidth))} x {Print.Mm(Grid.Millimetres(Cuts.PlyHeight))}, cloth {Print.Number(Grid.Millimetres(Cuts.ClothWidth))} x {Print.Mm(Grid.Millimetres(Cuts.ClothHeight))}";
}

/// <summary>One panel of the row.</summary>
/// <remarks><see cref="PanelWrap.Plan"/> makes them.</remarks>
public sealed class WrappedPanel
{
    internal WrappedPanel(int index, long start, long finished, SideNumbers sides, long height, SideNumbers upright, IReadOnlyList<WindowCutOut> windows, long? cornerCut)
    {
        (Index, StartNm, FinishedNm, Sides, HeightNm, Upright, Windows) = (index, start, finished, sides, height, upright, [.. windows]);
        CornerCut = cornerCut is { } leg ? WrapPlan.Mm(leg) : null;
    }

    /// <summary>Its place in the row, from 0 at the front.</summary>
    public int Index { get; }

    /// <summary>From the front of the opening to its finished front edge.</summary>
    public Length Start => WrapPlan.Mm(StartNm);

    /// <summary>Width of the finished panel.</summary>
    public Length FinishedWidth => WrapPlan.Mm(FinishedNm);

    /// <summary>Height of the finished panel.</summary>
    public Length FinishedHeight => WrapPlan.Mm(HeightNm);

    /// <summary>Width of its ply.</summary>
    public Length PlyWidth => WrapPlan.Mm(Sides.Ply);

    /// <summary>Height of its ply.</summary>
    public Length PlyHeight => WrapPlan.Mm(Upright.Ply);

    /// <summary>Width of its foam as cut; 0 where there is none.</summary>
    public Length FoamWidth => WrapPlan.Mm(Sides.Foam);

    /// <summary>Height of its foam as cut; 0 where there is none.</summary>
    public Length FoamHeight => WrapPlan.Mm(Upright.Foam);

    /// <summary>Width of its cloth as cut.</summary>
    public Length ClothWidth => WrapPlan.Mm(Sides.Cloth);

    /// <summary>Height of its cloth as cut.</summary>
    public Length ClothHeight => WrapPlan.Mm(Upright.Cloth);

    /// <summary>Legs of the triangle to cut off the cloth at a corner that is not pleated: the same for every corner, the least that one allows. Null where no corner is wrapped on both sides.</summary>
    public Length? CornerCut { get; }

    /// <summary>Windows in it.</summary>
    public IReadOnlyList<WindowCutOut> Windows { get; }

    internal long StartNm { get; }

    internal long FinishedNm { get; }

    internal long HeightNm { get; }

    internal SideNumbers Sides { get; }

    internal SideNumbers Upright { get; }

    /// <summary>Its ply as a piece for <see cref="SheetNesting"/>, named as its cloth and foam are: panel 1 is at the front. Its windows are cut out of the rectangle afterwards.</summary>
    /// <param name="grain">Which way the sheet's grain runs on the panel: along the van is along its width, up the girth along its height; either: it may be turned.</param>
    /// <returns>The piece, once.</returns>
    /// <exception cref="ArgumentException"><paramref name="grain"/> is undefined.</exception>
    public SheetPart ToSheetPart(PanelGrainDirection grain)
    {
        if (grain is not (PanelGrainDirection.AlongU or PanelGrainDirection.AlongV or PanelGrainDirection.Either))
        {
            Door.Report(new InputProblem(nameof(grain), Print.Number((int)grain), "along u, along v or either", isRange: true), null);
        }

        bool isUpright = grain == PanelGrainDirection.AlongV;
        return new SheetPart(isUpright ? PlyHeight : PlyWidth, isUpright ? PlyWidth : PlyHeight, 1, grain == PanelGrainDirection.Either) { Name = "panel " + Print.Number(Index + 1) };
    }

    /// <summary>Its place from 1 at the front, finished size, ply and cloth, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"panel {Print.Number(Index + 1)}: finished {Size(FinishedNm, HeightNm)}, ply {Size(Sides.Ply, Upright.Ply)}, cloth {Size(Sides.Cloth, Upright.Cloth)}";

    private static string Size(long width, long height) => $"{Print.Number(Grid.Millimetres(width))} x {Print.Mm(Grid.Millimetres(height))}";
}

/// <summary>A row of wrapped panels: what <see cref="PanelWrap.Plan"/> and <see cref="PanelWrap.FromPly"/> answer.</summary>
public sealed class WrapPlan
{
    private readonly WrapNumbers _numbers;

    internal WrapPlan(WrapNumbers numbers)
    {
        _numbers = numbers;
        WrapMake make = numbers.Make;
        Build = make.Build;
        SideNumbers upright = numbers.Upright;
        List<WrappedPanel> panels = [];
        List<int> astray = [.. Counted(numbers.Windows.Length)];
        long gap = Grid.Nanometres(make.Gap), start = gap;
        for (int i = 0; i < numbers.Finished.Length; i++)
        {
            SideNumbers sides = numbers.Sides(i);
            long plyU = start + sides.FirstGrowth, plyV = gap + upright.FirstGrowth;
            List<WindowCutOut> windows = [];
            for (int k = 0; k < numbers.Windows.Length; k++)
            {
                WindowNumbers window = numbers.Windows[k];
                WindowCuts cuts = PanelWrap.SolveWindow(make, window, default(Silent));
                long u = Grid.Nanometres(window.FromU) - cuts.Growth - plyU, v = Grid.Nanometres(window.FromV) - cuts.Growth - plyV;
                if (u <= 0 || v <= 0 || u + cuts.PlyWidth >= sides.Ply || v + cuts.PlyHeight >= upright.Ply)
                {
                    continue;
                }

                astray.Remove(k);
                long insetU = (cuts.PlyWidth - cuts.ClothWidth) / 2, insetV = (cuts.PlyHeight - cuts.ClothHeight) / 2;
                windows.Add(new WindowCutOut(k, cuts, u, v, u + sides.FirstReach + insetU, v + upright.FirstReach + insetV));
            }

            panels.Add(new WrappedPanel(i, start, numbers.Finished[i], sides, numbers.Height, upright, windows, CornerCutOf(numbers, i, sides, upright)));
            start += numbers.Finished[i] + Grid.Nanometres(make.Joint);
        }

        Panels = [.. panels];
        ClothPieces = [.. Pieces(isCloth: true)];
        FoamPieces = [.. Pieces(isCloth: false)];
        Findings = WrapFindings.Of(this, numbers, astray);
        DefaultsUsed = Defaults(numbers);
    }

    /// <summary>What the panels are made of.</summary>
    public WrapBuild Build { get; }

    /// <summary>Width of the opening: finished widths, joints and the two gaps.</summary>
    public Length OpeningWidth => Mm(_numbers.OpeningWidth);

    /// <summary>Height of the opening: finished height and the two gaps.</summary>
    public Length OpeningHeight => Mm(_numbers.OpeningHeight);

    /// <summary>The panels, front to rear.</summary>
    public IReadOnlyList<WrappedPanel> Panels { get; }

    /// <summary>The pieces of cloth, one a panel, front to rear.</summary>
    public IReadOnlyList<CoverPiece> ClothPieces { get; }

    /// <summary>The pieces of foam, one a panel; none where there is no foam or the cloth brings it.</summary>
    public IReadOnlyList<CoverPiece> FoamPieces { get; }

    /// <summary>Area that is seen: finished faces less their windows.</summary>
    public Area FaceArea => new(Sum(static panel => (Grid.Millimetres(panel.FinishedNm) * Grid.Millimetres(panel.HeightNm)) - WindowArea(panel)), AreaUnit.SquareMillimeter);

    /// <summary>Area of the cloth as cut, rectangles, windows not taken off.</summary>
    public Area ClothArea => new(Sum(static panel => Grid.Millimetres(panel.Sides.Cloth) * Grid.Millimetres(panel.Upright.Cloth)), AreaUnit.SquareMillimeter);

    /// <summary>Area of the foam as cut, rectangles, windows not taken off.</summary>
    public Area FoamArea => new(Sum(static panel => Grid.Millimetres(panel.Sides.Foam) * Grid.Millimetres(panel.Upright.Foam)), AreaUnit.SquareMillimeter);

    /// <summary>Area of bonds: foam to ply and cloth to what is under it, turn-unders included, windows not taken off. An upper figure for the adhesive.</summary>
    public Area BondedArea => new(Door.SquareMillimetres(ClothArea) + Door.SquareMillimetres(FoamArea), AreaUnit.SquareMillimeter);

    /// <summary>Lengths of the edges of ply round which cloth goes, windows included: what is stapled or glued on the back.</summary>
    public IReadOnlyList<Length> WrappedEdges => [.. Edges().ConvertAll(Mm)];

    /// <summary>What a person should know, gravest first.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>What lies between a staple's crown and the ply on the back: the cloth, without the foam of foam-backed cloth. For <see cref="StapleJob.UnderCrown"/>.</summary>
    public Length UnderCrown => Door.Millimetres(Grid.Snap(_numbers.Make.Cloth));

    /// <summary>The foam that foam-backed cloth brings with it there, squeezed; zero without. For <see cref="StapleJob.FoamUnderCrown"/>.</summary>
    public Length FoamUnderCrown => Door.Millimetres(Grid.Snap(Build.IsFoamBacked ? _numbers.Make.Squeezed : 0));

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: a window that no panel can hold, or whose edges the cloth does not reach round, or two with no ply between.</summary>
    public bool HasProblem => Findings[0].Severity >= Severity.Problem;

    /// <summary>The defaults taken because the build gave no figure of its own.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    internal WrapNumbers Numbers => _numbers;

    /// <summary>How the sizes of the first panel and the cuts of the first window follow, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        WrapMake make = _numbers.Make;
        bool isPly = _numbers.IsFromPly;
        double width = isPly ? Grid.Millimetres(Panels[0].Sides.Ply)
            : _numbers.FirstJoint is { } middle ? PanelWrap.SolveFirst(make, middle, recorder)
            : PanelWrap.SolveShare(make, Grid.Millimetres(_numbers.OpeningWidth), Panels.Count, recorder);
        PanelWrap.SolveSide(make, width, isPly, _numbers.FrontOf(0), _numbers.RearOf(0), 0, recorder);
        if (isPly)
        {
            PanelWrap.SolveOpening(make, _numbers.Finished, recorder);
        }

        double height = isPly ? Grid.Millimetres(_numbers.Upright.Ply) : PanelWrap.SolveHeight(make, Grid.Millimetres(_numbers.OpeningHeight), recorder);
        PanelWrap.SolveSide(make, height, isPly, make.Build.Bottom, make.Build.Top, 2, recorder);
        if (isPly)
        {
            PanelWrap.SolveOpeningHeight(make, Grid.Millimetres(_numbers.Height), recorder);
        }

        foreach ((long u, long v) in CornerReaches(_numbers, 0, Panels[0].Sides, Panels[0].Upright))
        {
            PanelWrap.SolveCorner(make, Grid.Millimetres(u), Grid.Millimetres(v), recorder);
            break;
        }

        if (_numbers.Windows.Length > 0)
        {
            PanelWrap.SolveWindow(make, _numbers.Windows[0], recorder);
        }

        return recorder.ToWorkings("Wrapped panel");
    }

    /// <summary>The plan as flat figures.</summary>
    /// <returns>Panels, opening, the first panel's finished size, ply, foam and cloth, areas, windows held, and the worst severity as the number of its enumeration.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        WrappedPanel first = Panels[0];
        int windows = 0;
        foreach (WrappedPanel panel in Panels)
        {
            windows += panel.Windows.Count;
        }

        return
        [
            new("panels", Panels.Count, string.Empty),
            new("opening-width", Grid.Millimetres(_numbers.OpeningWidth), "mm"),
            new("opening-height", Grid.Millimetres(_numbers.OpeningHeight), "mm"),
            new("finished-width", Grid.Millimetres(first.FinishedNm), "mm"),
            new("finished-height", Grid.Millimetres(first.HeightNm), "mm"),
            new("ply-width", Grid.Millimetres(first.Sides.Ply), "mm"),
            new("ply-height", Grid.Millimetres(first.Upright.Ply), "mm"),
            new("foam-width", Grid.Millimetres(first.Sides.Foam), "mm"),
            new("foam-height", Grid.Millimetres(first.Upright.Foam), "mm"),
            new("cloth-width", Grid.Millimetres(first.Sides.Cloth), "mm"),
            new("cloth-height", Grid.Millimetres(first.Upright.Cloth), "mm"),
            new("face-area", Door.SquareMillimetres(FaceArea), "mm2"),
            new("cloth-area", Door.SquareMillimetres(ClothArea), "mm2"),
            new("foam-area", Door.SquareMillimetres(FoamArea), "mm2"),
            new("windows", windows, string.Empty),
            new("worst-severity", (int)Findings[0].Severity, string.Empty),
        ];
    }

    /// <summary>Panels and the first one's sizes, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Panels.Count)} wrapped panels; {Panels[0]}";

    internal static Length Mm(long nanometres) => Door.Millimetres(Grid.Millimetres(nanometres));

    /// <summary>Reaches on both sides of each wrapped corner of a panel.</summary>
    internal static List<(long U, long V)> CornerReaches(WrapNumbers numbers, int panel, SideNumbers sides, SideNumbers upright)
    {
        List<(long, long)> corners = [];
        foreach ((EdgeWrap u, long reachU) in new[] { (numbers.FrontOf(panel), sides.FirstReach), (numbers.RearOf(panel), sides.LastReach) })
        {
            foreach ((EdgeWrap v, long reachV) in new[] { (numbers.Make.Build.Bottom, upright.FirstReach), (numbers.Make.Build.Top, upright.LastReach) })
            {
                if (u != EdgeWrap.Unwrapped && v != EdgeWrap.Unwrapped)
                {
                    corners.Add((reachU, reachV));
                }
            }
        }

        return corners;
    }

    private static long? CornerCutOf(WrapNumbers numbers, int panel, SideNumbers sides, SideNumbers upright)
    {
        long? least = null;
        foreach ((long u, long v) in CornerReaches(numbers, panel, sides, upright))
        {
            long leg = PanelWrap.SolveCorner(numbers.Make, Grid.Millimetres(u), Grid.Millimetres(v), default(Silent));
            least = least is { } other ? Math.Min(other, leg) : leg;
        }

        return least;
    }

    private static IEnumerable<int> Counted(int count)
    {
        for (int i = 0; i < count; i++)
        {
            yield return i;
        }
    }

    private static double WindowArea(WrappedPanel panel)
    {
        double area = 0;
        foreach (WindowCutOut window in panel.Windows)
        {
            // As seen: the cut-out less what its edges add; the corners' rounds taken off.
            double width = Grid.Millimetres(window.Cuts.PlyWidth - (2 * window.Cuts.Growth)), height = Grid.Millimetres(window.Cuts.PlyHeight - (2 * window.Cuts.Growth));
            double radius = Grid.Millimetres(window.Cuts.PlyRadius - window.Cuts.Growth);
            area += (width * height) - ((4 - Math.PI) * radius * radius);
        }

        return area;
    }

    /// <summary>Only what a size rests on: a joint where panels meet, squeezed foam where foam goes round an edge.</summary>
    private static IReadOnlyList<DefaultUsed> Defaults(WrapNumbers numbers)
    {
        WrapMake make = numbers.Make;
        WrapBuild build = make.Build;
        bool hasJoints = numbers.Finished.Length > 1, isWrapped = false, isFoamRound = false;
        Look(build.Front);
        Look(build.Rear);
        Look(build.Top);
        Look(build.Bottom);
        Look(hasJoints ? build.AtJoints : EdgeWrap.Unwrapped);
        Look(numbers.Windows.Length > 0 ? build.AtWindows : EdgeWrap.Unwrapped);
        List<DefaultUsed> defaults = [];
        Add(build.FoamThickness, "foam-thickness", make.Foam, WrapDefaults.FoamSource);
        Add(isFoamRound && make.Foam > 0 ? build.SqueezedFoam : default(Length), "squeezed-foam", make.Squeezed, WrapDefaults.SqueezedSource);
        Add(isWrapped ? build.TurnUnder : default(Length), "turn-under", make.TurnUnder, WrapDefaults.TurnUnderSource);
        Add(build.EdgeGap, "edge-gap", make.Gap, WrapDefaults.GapSource);
        Add(hasJoints ? build.Joint : default(Length), "joint", make.Joint, WrapDefaults.RevealSource);
        return [.. defaults];

        void Look(EdgeWrap wrap)
        {
            isWrapped |= wrap != EdgeWrap.Unwrapped;
            isFoamRound |= make.IsFoamRound(wrap);
        }

        void Add(Length? given, string name, double value, Source source)
        {
            if (given is null)
            {
                defaults.Add(new DefaultUsed(new Figure(name, value, "mm"), source));
            }
        }
    }

    private double Sum(Func<WrappedPanel, double> area)
    {
        double sum = 0;
        foreach (WrappedPanel panel in Panels)
        {
            sum += area(panel);
        }

        return sum;
    }

    private IEnumerable<CoverPiece> Pieces(bool isCloth)
    {
        bool runsAlong = Build.RunsAlong;
        bool isTurnable = !isCloth || (Build.Nap == NapDirection.None && Build.Stretch is ClothStretch.BothWays or ClothStretch.None);
        foreach (WrappedPanel panel in Panels)
        {
            long width = isCloth ? panel.Sides.Cloth : panel.Sides.Foam, height = isCloth ? panel.Upright.Cloth : panel.Upright.Foam;
            if (width > 0 && height > 0)
            {
                string name = (isCloth ? "cloth " : "foam ") + Print.Number(panel.Index + 1);
                yield return isCloth && runsAlong ? new CoverPiece(name, height, width, Build.Nap, isTurnable) : new CoverPiece(name, width, height, isCloth ? Build.Nap : NapDirection.None, isTurnable);
            }
        }
    }

    private List<long> Edges()
    {
        List<long> edges = [];
        foreach (WrappedPanel panel in Panels)
        {
            Add(_numbers.FrontOf(panel.Index), panel.Upright.Ply);
            Add(_numbers.RearOf(panel.Index), panel.Upright.Ply);
            Add(Build.Bottom, panel.Sides.Ply);
            Add(Build.Top, panel.Sides.Ply);
            foreach (WindowCutOut window in panel.Windows)
            {
                for (int i = 0; i < 2; i++)
                {
                    Add(Build.AtWindows, window.Cuts.PlyHeight);
                    Add(Build.AtWindows, window.Cuts.PlyWidth);
                }
            }
        }

        return edges;

        void Add(EdgeWrap wrap, long length)
        {
            if (wrap != EdgeWrap.Unwrapped)
            {
                edges.Add(length);
            }
        }
    }
}
