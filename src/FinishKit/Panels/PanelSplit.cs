using System;
using System.Collections.Generic;
using System.Globalization;
using System.Threading;
using UnitsNet;

namespace FinishKit;

/// <summary>How a wall splits into the fewest panels that fit the sheet, can be handled, and meet only where there is metal to fix them to.</summary>
public static class PanelSplit
{
    private static readonly Allowed s_size = new(10, 2e4, "mm");
    private static readonly Allowed s_metal = new(0, 1000, "mm");
    private static readonly Allowed s_reveal = new(0, 50, "mm");
    private static readonly Allowed s_landing = new(0, 200, "mm");
    private static readonly Allowed s_corner = new(0, 1000, "mm");
    private static readonly Allowed s_least = new(0, 2000, "mm");
    private static readonly Allowed s_mass = new(0.01, 1000, "kg");
    private static readonly Allowed s_effort = new(1000, 2_000_000_000, string.Empty);

    /// <summary>The fewest panels; among such splits the most even.</summary>
    /// <param name="wall">The wall, its openings, metal and sheet, and whatever differs from the defaults.</param>
    /// <param name="progress">Told now and then how much of the effort is used, 0 to 1; null for nobody.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>Panels, joints and findings; without panels where no split will do, or none was found within the effort.</returns>
    /// <remarks>
    /// <para>Formula: least in this order: panels; joints that lie neither at the middle of their metal nor along an opening's edge; the sum of squared widths and heights. Level joints run through from end to end; upright ones from level joint to level joint, in each course of panels where they suit it. A joint lies within its metal so that both panels land on it: |place - middle| at most metal/2 - landing - reveal/2, and off the edges of openings that it passes by the corner distance, or along one; where panels must part, at the middle whatever is near. Two shortest paths over places of joints, one inside the other: first those of rows of panels as large as can be, so that something is in hand; then middles and edges of openings; and if those do not reach the bound by area, all that can spare a panel. Where the effort ends early, the best of what was gone through stands: it may be one of rows, whose joints need not lie at middles, nor its panels be even.</para>
    /// <para>Validity: rectangular wall, developed flat; panels are rectangles with openings cut out, and the whole rectangle must fit the sheet. What lies wholly in an opening is no panel. <see cref="PanelSplitPlan.Proven"/> says whether fewer panels are ruled out among splits whose level joints run through; that they are the most even holds of the places tried. Level joints that stop at an upright one are not looked at: where those would serve, fewer panels may be possible.</para>
    /// <para>Source: wall-split (derived); default-joint-reveal (common practice); default-panel-landing, default-panel-corner, default-least-panel (judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The wall, a list or a member of one is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <exception cref="OperationCanceledException">The search was cancelled; no part of a split is returned.</exception>
    /// <example><code>
    /// PanelWall wall = new(Mm(3400), Mm(800), Mm(2440), Mm(1220)) { Ribs = [new(Mm(950), Mm(60)), new(Mm(1700), Mm(60)), new(Mm(2330), Mm(60))] };
    /// PanelSplitPlan plan = PanelSplit.Split(wall);
    /// int panels = plan.Panels.Count;                     // 2, meeting on the rib at 1700, which is more even than 950 or 2330
    /// double width = plan.Panels[0].Width.Millimeters;    // 1699.25: half the reveal less
    /// </code></example>
    public static PanelSplitPlan Split(PanelWall wall, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        PanelSplitNumbers numbers = Read(wall, null)!;
        cancellation.ThrowIfCancellationRequested();
        PanelSplitPlan plan = new(wall, numbers, new CuttingEffort(numbers.Effort, progress, cancellation));
        progress?.Report(1);
        return plan;
    }

    /// <summary>All problems with a wall; nothing is thrown.</summary>
    /// <param name="wall">The wall.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(PanelWall wall)
    {
        List<InputProblem> problems = [];
        Read(wall, problems);
        return problems;
    }

    /// <summary>The one formula body of the bound: panels that the net area asks for whatever the joints.</summary>
    internal static double Bound<TTrace>(PanelSplitNumbers wall, double panels, TTrace trace)
        where TTrace : struct, ITrace
    {
        double length = wall.Length / 1e6, girth = wall.Girth / 1e6, reveal = wall.Reveal / 1e6, openings = wall.OpeningArea, along = wall.SheetLength / 1e6, across = wall.SheetWidth / 1e6;
        trace.Given("W", length, "mm", Sources.Given);
        trace.Given("H", girth, "mm", Sources.Given);
        trace.Given("r", reveal, "mm", Sources.Given, meaning: "reveal");
        trace.Given("A_o", openings, "mm2", Sources.Given, meaning: "openings, each larger by the reveal each way");
        trace.Given("l", along, "mm", Sources.Given, meaning: "sheet along its grain");
        trace.Given("w", across, "mm", Sources.Given, meaning: "sheet across its grain");
        double net = trace.Step("A", nameof(net), Math.Max(0, ((length + reveal) * (girth + reveal)) - openings), "mm2", PanelSplitDefaults.Split);
        double bound = trace.Step("n_A", nameof(bound), Grid.CeilingOfRatio(net, (along + reveal) * (across + reveal)), string.Empty, PanelSplitDefaults.Split);
        trace.Given("n", panels, string.Empty, PanelSplitDefaults.Split, meaning: "fewest panels over the choices of joints, 0 where none will do");
        return bound;
    }

    private static PanelSplitNumbers? Read(PanelWall wall, List<InputProblem>? problems)
    {
        if (Door.IsMissing(wall, new Name(nameof(wall)), "a wall", problems))
        {
            return null;
        }

        double length = Door.Millimetres(wall.Length, "wall.Length", s_size, problems), girth = Door.Millimetres(wall.Girth, "wall.Girth", s_size, problems);
        double along = Door.Millimetres(wall.SheetLength, "wall.SheetLength", s_size, problems), across = Door.Millimetres(wall.SheetWidth, "wall.SheetWidth", s_size, problems);
        if (wall.Grain is not (PanelGrainDirection.AlongU or PanelGrainDirection.AlongV or PanelGrainDirection.Either))
        {
            Door.Report(new InputProblem("wall.Grain", ((int)wall.Grain).ToString(CultureInfo.InvariantCulture), "a named direction", isRange: true), problems);
        }

        List<PanelBox> openings = ReadOpenings(wall.Openings, length, girth, problems);
        List<PanelLine> ribs = ReadLines(wall.Ribs, "wall.Ribs", length, problems), rails = ReadLines(wall.Rails, "wall.Rails", girth, problems);
        double reveal = Or(wall.Reveal, "wall.Reveal", s_reveal, PanelSplitDefaults.Reveal, problems);
        double landing = Or(wall.Landing, "wall.Landing", s_landing, PanelSplitDefaults.Landing, problems);
        double corner = Or(wall.CornerDistance, "wall.CornerDistance", s_corner, PanelSplitDefaults.CornerDistance, problems);
        double least = Or(wall.LeastPanel, "wall.LeastPanel", s_least, PanelSplitDefaults.LeastPanel, problems);
        double most = Or(wall.MostLength, "wall.MostLength", s_size, 2e4, problems);
        double areal = wall.SquareMetreMass is { } each ? Door.Kilograms(each, "wall.SquareMetreMass", s_mass, problems) : double.NaN;
        double mass = wall.MostMass is { } heavy ? Door.Kilograms(heavy, "wall.MostMass", s_mass, problems) : double.NaN;
        if (wall.MostMass is not null && wall.SquareMetreMass is null)
        {
            Door.Report(new InputProblem("wall.SquareMetreMass", "not given", "the mass of a square metre, where MostMass is given", isRange: false), problems);
        }

        if (wall.Effort is { } effort)
        {
            Door.Number(effort, "wall.Effort", s_effort, problems);
        }

        return problems is { Count: > 0 } ? null : new PanelSplitNumbers
        {
            Length = Grid.Nanometres(length),
            Girth = Grid.Nanometres(girth),
            SheetLength = Grid.Nanometres(along),
            SheetWidth = Grid.Nanometres(across),
            Grain = wall.Grain,
            Openings = [.. openings],
            Ribs = [.. ribs],
            Rails = [.. rails],
            Reveal = Grid.Nanometres(reveal),
            Landing = Grid.Nanometres(landing),
            Corner = Grid.Nanometres(corner),
            Least = Grid.Nanometres(least),
            Most = Grid.Nanometres(most),
            ArealMass = areal,
            MostMass = mass,
            Effort = wall.Effort ?? PanelSplitDefaults.Effort,
        };
    }

    private static double Or(Length? given, string name, Allowed allowed, double otherwise, List<InputProblem>? problems) =>
        given is { } length ? Door.Millimetres(length, name, allowed, problems) : otherwise;

    private static bool IsCounted<T>(IReadOnlyList<T>? list, string name, int most, string words, List<InputProblem>? problems)
    {
        if (Door.IsMissing(list, new Name(name), words, problems))
        {
            return false;
        }

        if (list!.Count > most)
        {
            Door.Report(new InputProblem(name, list.Count + " entries", words, isRange: true), problems);
            return false;
        }

        return true;
    }

    private static List<PanelLine> ReadLines(IReadOnlyList<PanelJointLine> lines, string name, double size, List<InputProblem>? problems)
    {
        List<PanelLine> read = [];
        if (!IsCounted(lines, name, PanelWall.MostLines, "at most 50 lines", problems))
        {
            return read;
        }

        Allowed within = new(0, double.IsNaN(size) ? 2e4 : size, "mm");
        for (int i = 0; i < lines.Count; i++)
        {
            Name at = new(name, i);
            if (!Door.IsMissing(lines[i], at, "a line", problems))
            {
                double position = Door.Millimetres(lines[i].Position, at.Then(".Position"), within, problems), metal = Door.Millimetres(lines[i].MetalWidth, at.Then(".MetalWidth"), s_metal, problems);
                if (!double.IsNaN(position + metal))
                {
                    read.Add(new PanelLine(Grid.Nanometres(position), Grid.Nanometres(metal), lines[i].MustSplit));
                }
            }
        }

        return read;
    }

    private static List<PanelBox> ReadOpenings(IReadOnlyList<FaceOpening> openings, double length, double girth, List<InputProblem>? problems)
    {
        List<PanelBox> read = [];
        if (!IsCounted(openings, "wall.Openings", PanelWall.MostOpenings, "at most 20 openings", problems))
        {
            return read;
        }

        Allowed u = new(0, double.IsNaN(length) ? 2e4 : length, "mm"), v = new(0, double.IsNaN(girth) ? 2e4 : girth, "mm");
        for (int i = 0; i < openings.Count; i++)
        {
            Name at = new("wall.Openings", i);
            if (FaceOpening.Read(openings[i], at, u, v, problems) is not { } opening)
            {
                continue;
            }

            PanelBox box = new(Grid.Nanometres(opening.U0), Grid.Nanometres(opening.U1), Grid.Nanometres(opening.V0), Grid.Nanometres(opening.V1));
            if (read.Exists(other => !other.Cut(box).IsEmpty))
            {
                Door.Report(new InputProblem(at.ToString(), openings[i].ToString(), "over no other opening", isRange: true), problems);
            }

            read.Add(box);
        }

        return read;
    }
}

/// <summary>A line of metal in whole nanometres.</summary>
internal readonly record struct PanelLine(long Position, long Metal, bool MustSplit);

/// <summary>A rectangle in whole nanometres.</summary>
internal readonly record struct PanelBox(long U0, long U1, long V0, long V1)
{
    internal bool IsEmpty => U1 <= U0 || V1 <= V0;

    /// <summary>In mm2; 0 where empty.</summary>
    internal double Area => IsEmpty ? 0 : (U1 - U0) / 1e6 * ((V1 - V0) / 1e6);

    internal PanelBox Cut(PanelBox other) => new(Math.Max(U0, other.U0), Math.Min(U1, other.U1), Math.Max(V0, other.V0), Math.Min(V1, other.V1));
}

/// <summary>A wall in whole nanometres; NaN stands for what was not given.</summary>
internal sealed record PanelSplitNumbers
{
    internal required long Length { get; init; }

    internal required long Girth { get; init; }

    internal required long SheetLength { get; init; }

    internal required long SheetWidth { get; init; }

    internal required PanelGrainDirection Grain { get; init; }

    internal required PanelBox[] Openings { get; init; }

    internal required PanelLine[] Ribs { get; init; }

    internal required PanelLine[] Rails { get; init; }

    internal required long Reveal { get; init; }

    internal required long Landing { get; init; }

    internal required long Corner { get; init; }

    internal required long Least { get; init; }

    internal required long Most { get; init; }

    internal required double ArealMass { get; init; }

    internal required double MostMass { get; init; }

    internal required int Effort { get; init; }

    internal double OpeningArea
    {
        get
        {
            double area = 0;
            foreach (PanelBox opening in Openings)
            {
                area += (opening.U1 - opening.U0 + Reveal) / 1e6 * ((opening.V1 - opening.V0 + Reveal) / 1e6);
            }

            return area;
        }
    }

    /// <summary>How far a joint may lie from the middle of its metal; negative where the metal is too narrow for two panels.</summary>
    internal long Slack(PanelLine line) => (line.Metal / 2) - Landing - ((Reveal + 1) / 2);

    /// <summary>The rectangle between joints, half the reveal taken off at each.</summary>
    internal PanelBox Between(long u0, long u1, long v0, long v1)
    {
        long before = Reveal / 2, after = Reveal - before;
        return new PanelBox(u0 == 0 ? 0 : u0 + after, u1 == Length ? u1 : u1 - before, v0 == 0 ? 0 : v0 + after, v1 == Girth ? v1 : v1 - before);
    }

    /// <summary>In mm2, and 0 only where nothing is left: square nanometres are whole numbers of up to 21 digits, which decimal holds.</summary>
    internal double NetArea(PanelBox panel)
    {
        decimal area = Whole(panel);
        foreach (PanelBox opening in Openings)
        {
            area -= Whole(opening.Cut(panel));
        }

        return (double)(area / 1_000_000_000_000m);

        static decimal Whole(PanelBox box) => box.IsEmpty ? 0 : (decimal)(box.U1 - box.U0) * (box.V1 - box.V0);
    }

    /// <summary>Net area of the heaviest panel that can be handled; infinity where none is given.</summary>
    internal double HeaviestArea() => double.IsNaN(MostMass) ? double.PositiveInfinity : MostMass * (1 + 1e-12) / ArealMass * 1e6;

    /// <summary>Greatest widths of panels: one for each way that the grain may run.</summary>
    internal long[] Widths() => Grain switch
    {
        PanelGrainDirection.AlongU => [Math.Min(SheetLength, Most)],
        PanelGrainDirection.AlongV => [Math.Min(SheetWidth, Most)],
        _ => [Math.Min(SheetLength, Most), Math.Min(SheetWidth, Most)],
    };

    /// <summary>Greatest heights of panels: one for each way that the grain may run.</summary>
    internal long[] Heights() => Grain switch
    {
        PanelGrainDirection.AlongU => [Math.Min(SheetWidth, Most)],
        PanelGrainDirection.AlongV => [Math.Min(SheetLength, Most)],
        _ => [Math.Min(SheetLength, Most), Math.Min(SheetWidth, Most)],
    };

    /// <summary>Greatest width of a panel that high; negative where none fits.</summary>
    internal long WidthFor(long height)
    {
        long along = Grain != PanelGrainDirection.AlongV && height <= SheetWidth ? SheetLength : -1, across = Grain != PanelGrainDirection.AlongU && height <= SheetLength ? SheetWidth : -1;
        return height <= Most ? Math.Min(Most, Math.Max(along, across)) : -1;
    }

    /// <summary>Whether no two openings leave a post or strip between them that a gap would swallow: what a joint leaves of such is no panel, and the places tried are not all then.</summary>
    internal bool HasNoThinPost()
    {
        for (int i = 0; i < Openings.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                PanelBox both = Openings[i].Cut(Openings[j]);
                if (IsThin(both.U0 - both.U1) || IsThin(both.V0 - both.V1))
                {
                    return false;
                }
            }
        }

        return true;

        bool IsThin(long gap) => gap > 0 && gap <= Reveal;
    }

    /// <summary>Whether a panel fits the sheet with its grain along u, or along v, whichever is wanted; null where it does not.</summary>
    internal bool? GrainAlongU(long width, long height) =>
        Grain != PanelGrainDirection.AlongV && width <= SheetLength && height <= SheetWidth ? true
        : Grain != PanelGrainDirection.AlongU && height <= SheetLength && width <= SheetWidth ? false
        : null;
}
