using System;
using System.Collections.Generic;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>One panel of a wall.</summary>
public sealed class WallPanel
{
    internal WallPanel(PanelSplitNumbers wall, PanelBox box, double net)
    {
        Box = box;
        NetMm = net;
        KilogramsOrNaN = net * wall.ArealMass / 1e6;
        GrainAlongU = wall.GrainAlongU(box.U1 - box.U0, box.V1 - box.V0) == true;
        List<FaceOpening> cutOuts = [];
        List<PanelBox> cuts = [];
        foreach (PanelBox opening in wall.Openings)
        {
            PanelBox cut = opening.Cut(box);
            if (!cut.IsEmpty)
            {
                cutOuts.Add(new FaceOpening(Mm(cut.U0), Mm(cut.U1), Mm(cut.V0), Mm(cut.V1)));
                cuts.Add(cut);
            }
        }

        CutOuts = [.. cutOuts];
        CutBoxes = [.. cuts];
        FallsApart = Pieces(box, cuts) > 1;
    }

    /// <summary>Its front edge, along u.</summary>
    public Length FromU => Mm(Box.U0);

    /// <summary>Its rear edge.</summary>
    public Length ToU => Mm(Box.U1);

    /// <summary>Its lower edge, along v.</summary>
    public Length FromV => Mm(Box.V0);

    /// <summary>Its upper edge.</summary>
    public Length ToV => Mm(Box.V1);

    /// <summary>Its size along u.</summary>
    public Length Width => Mm(Box.U1 - Box.U0);

    /// <summary>Its size along v.</summary>
    public Length Height => Mm(Box.V1 - Box.V0);

    /// <summary>What openings cut out of it, in the wall's coordinates.</summary>
    public IReadOnlyList<FaceOpening> CutOuts { get; }

    /// <summary>Its area less what is cut out.</summary>
    public Area NetArea => new(NetMm, AreaUnit.SquareMillimeter);

    /// <summary>Its mass, openings cut out; null without the mass of a square metre.</summary>
    public Mass? Mass => double.IsNaN(KilogramsOrNaN) ? null : new Mass(KilogramsOrNaN, MassUnit.Kilogram);

    /// <summary>Whether the sheet's grain runs along u in it; else along v.</summary>
    public bool GrainAlongU { get; }

    internal bool FallsApart { get; }

    internal PanelBox[] CutBoxes { get; }

    internal PanelBox Box { get; }

    internal double NetMm { get; }

    internal double KilogramsOrNaN { get; }

    /// <summary>Its ranges, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"panel u {Print.Number(Box.U0 / 1e6)} to {Print.Mm(Box.U1 / 1e6)}, v {Print.Number(Box.V0 / 1e6)} to {Print.Mm(Box.V1 / 1e6)}";

    /// <summary>Pieces that openings leave of a panel: patches between their edges that hang together by more than a corner.</summary>
    private static int Pieces(PanelBox box, List<PanelBox> cuts)
    {
        SortedSet<long> us = [box.U0, box.U1], vs = [box.V0, box.V1];
        foreach (PanelBox cut in cuts)
        {
            us.UnionWith([cut.U0, cut.U1]);
            vs.UnionWith([cut.V0, cut.V1]);
        }

        long[] u = [.. us], v = [.. vs];
        int rows = v.Length - 1;
        bool[] taken = new bool[(u.Length - 1) * rows];
        for (int i = 0; i < u.Length - 1; i++)
        {
            for (int j = 0; j < v.Length - 1; j++)
            {
                PanelBox patch = new(u[i], u[i + 1], v[j], v[j + 1]);
                taken[(i * rows) + j] = cuts.Exists(cut => !cut.Cut(patch).IsEmpty);
            }
        }

        int pieces = 0;
        Stack<(int I, int J)> open = new();
        for (int i = 0; i < u.Length - 1; i++)
        {
            for (int j = 0; j < v.Length - 1; j++)
            {
                pieces += taken[(i * rows) + j] ? 0 : 1;
                Take(i, j);
                while (open.Count > 0)
                {
                    (int a, int b) = open.Pop();
                    Take(a - 1, b);
                    Take(a + 1, b);
                    Take(a, b - 1);
                    Take(a, b + 1);
                }
            }
        }

        return pieces;

        void Take(int i, int j)
        {
            if (i >= 0 && j >= 0 && i < u.Length - 1 && j < v.Length - 1 && !taken[(i * rows) + j])
            {
                taken[(i * rows) + j] = true;
                open.Push((i, j));
            }
        }
    }

    private static Length Mm(long nanometres) => Door.Millimetres(Grid.Millimetres(nanometres));
}

/// <summary>One joint between panels.</summary>
public sealed class PanelJoint
{
    internal PanelJoint(bool isUpright, long place, long from, long to)
    {
        IsUpright = isUpright;
        (Place, From, To) = (Door.Millimetres(Grid.Millimetres(place)), Door.Millimetres(Grid.Millimetres(from)), Door.Millimetres(Grid.Millimetres(to)));
    }

    /// <summary>Whether it is upright; else it is level.</summary>
    public bool IsUpright { get; }

    /// <summary>Middle of its gap: u of an upright joint, v of a level one.</summary>
    public Length Place { get; }

    /// <summary>Where it begins, along the other way; openings that it crosses are not taken out.</summary>
    public Length From { get; }

    /// <summary>Where it ends.</summary>
    public Length To { get; }

    /// <summary>Place and run, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{(IsUpright ? "upright joint at u" : "level joint at v")} {Print.Mm(Door.Millimetres(Place))}, {Print.Number(Door.Millimetres(From))} to {Print.Mm(Door.Millimetres(To))}";
}

/// <summary>A wall split into panels: what <see cref="PanelSplit.Split"/> answers.</summary>
/// <remarks><see cref="PanelSplit.Split"/> makes one.</remarks>
public sealed class PanelSplitPlan
{
    private readonly PanelSplitNumbers _wall;

    internal PanelSplitPlan(PanelWall wall, PanelSplitNumbers numbers, CuttingEffort effort)
    {
        Wall = wall;
        _wall = numbers;

        // A quarter is left for what stands in the way, where there is no split.
        PanelSplitAnswer answer = PanelSplitSearch.Solve(numbers, effort, effort.Left - (effort.Left / 4));
        List<WallPanel> panels = [];
        List<PanelJoint> joints = [];
        if (answer.Split is { } found)
        {
            for (int course = 0; course < found.Uprights.Count; course++)
            {
                long v0 = found.Levels[course], v1 = found.Levels[course + 1];
                List<long> uprights = found.Uprights[course];
                if (v1 < numbers.Girth)
                {
                    joints.Add(new PanelJoint(isUpright: false, v1, 0, numbers.Length));
                }

                for (int i = 0; i + 1 < uprights.Count; i++)
                {
                    PanelBox box = numbers.Between(uprights[i], uprights[i + 1], v0, v1);
                    double net = numbers.NetArea(box);
                    if (net > 0)
                    {
                        panels.Add(new WallPanel(numbers, box, net));
                    }

                    if (i > 0)
                    {
                        PanelBox course1 = numbers.Between(0, numbers.Length, v0, v1);
                        joints.Add(new PanelJoint(isUpright: true, uprights[i], course1.V0, course1.V1));
                    }
                }
            }
        }

        Panels = [.. panels];
        Joints = [.. joints];
        IsSplit = answer.Split is not null;
        Proven = answer.Proven;
        Findings = PanelSplitFindings.Of(this, numbers, answer.IsCutShort, effort);
        Nodes = effort.Used;
        DefaultsUsed = PanelSplitFindings.Defaults(wall);
    }

    /// <summary>The wall.</summary>
    public PanelWall Wall { get; }

    /// <summary>Whether a split was found.</summary>
    public bool IsSplit { get; }

    /// <summary>
    /// Whether it is proven that no other split whose level joints run through has fewer panels, or where none was found, that there is none.
    /// So it is where no mass bounds panels, openings leave no post or strip between them as narrow as the reveal or narrower, and the places of joints that
    /// can matter are not more than are tried (150 for upright joints, 60 for level ones) and were gone through within the effort; else where the number is that of
    /// <see cref="LeastByArea"/>, or where the bound on mass costs no panel.
    /// </summary>
    public bool Proven { get; }

    /// <summary>Steps of search used.</summary>
    public long Nodes { get; }

    /// <summary>Panels that the area asks for, whatever the joints: fewer there cannot be.</summary>
    public int LeastByArea => (int)PanelSplit.Bound(_wall, Panels.Count, default(Silent));

    /// <summary>The panels, course by course from the foot, front to rear; none where no split will do.</summary>
    public IReadOnlyList<WallPanel> Panels { get; }

    /// <summary>The joints between them.</summary>
    public IReadOnlyList<PanelJoint> Joints { get; }

    /// <summary>Net area of all panels.</summary>
    public Area NetArea
    {
        get
        {
            double area = 0;
            foreach (WallPanel panel in Panels)
            {
                area += panel.NetMm;
            }

            return new Area(area, AreaUnit.SquareMillimeter);
        }
    }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem => Findings[0].Severity == Severity.Problem;

    /// <summary>What a person should know, gravest first.</summary>
    /// <remarks>Codes: <c>panels-split-none</c>, <c>panels-split-falls-apart</c>, <c>panels-split-tongue</c>, <c>panels-split-forced-off-metal</c>, <c>panels-split-forced-by-opening</c>, <c>panels-split-not-proven</c>, <c>panels-split-narrow-metal</c>, <c>panels-split-look-behind</c>.</remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The defaults that the answer rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    /// <summary>The wall's net area with its gaps, the sheet, and the number found.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        PanelSplit.Bound(_wall, Panels.Count, recorder);
        return recorder.ToWorkings("Wall split into panels");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Whether a split was found (1 or 0), whether it is proven (1 or 0), the worst severity, panels, how few the area allows, joints, net area, the greatest panel's sizes, steps, and the greatest mass where known.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        double width = 0, height = 0, mass = double.NaN;
        foreach (WallPanel panel in Panels)
        {
            width = Math.Max(width, Door.Millimetres(panel.Width));
            height = Math.Max(height, Door.Millimetres(panel.Height));
            mass = double.IsNaN(mass) ? panel.KilogramsOrNaN : Math.Max(mass, panel.KilogramsOrNaN);
        }

        List<Figure> figures =
        [
            new("is-split", IsSplit ? 1 : 0, string.Empty),
            new("proven", Proven ? 1 : 0, string.Empty),
            PanelFindings.Worst(Findings),
            new("panels", Panels.Count, string.Empty),
            new("least-by-area", LeastByArea, string.Empty),
            new("joints", Joints.Count, string.Empty),
            new("net-area", Door.SquareMillimetres(NetArea), "mm2"),
            new("greatest-width", width, "mm"),
            new("greatest-height", height, "mm"),
            new("nodes", Nodes, string.Empty),
        ];
        PanelFindings.AddFigure(figures, "greatest-mass", mass, "kg");
        return figures;
    }

    /// <summary>Panels and joints, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => IsSplit ? $"{Print.Number(Panels.Count)} panels, {Print.Number(Joints.Count)} joints" : "no split: " + Findings[0].Message;
}
