using System;
using System.Collections.Generic;
using System.Globalization;
using UnitsNet;

namespace FinishKit;

/// <summary>Which tapping screw fixes a panel to thin metal: enough full thread beyond the metal, and the tip short of what is behind it.</summary>
/// <remarks>
/// A verdict holds for what was entered and at the tolerances entered; nothing else is known. Find and mark wiring, gas, fuel and
/// brake lines, tanks, airbags and glass before drilling, and follow local codes and the vehicle maker's guidance for bodybuilders.
/// </remarks>
public static class MetalScrew
{
    internal static readonly Allowed Metals = new(Allowed.OneStep, 10, "mm");
    internal static readonly Allowed Pitches = new(0.1, 10, "mm");
    private static readonly Allowed s_threads = new(0, 20, string.Empty);
    private static readonly Allowed s_tolerance = new(0, 10, "mm");
    private static readonly Allowed s_point = new(0, 50, "mm");
    private static readonly Allowed s_force = new(0, 1e6, "N");
    private static readonly Allowed s_hole = new(Allowed.OneStep, 20, "mm");

    /// <summary>The shortest stocked screw that holds in the metal and stays clear.</summary>
    /// <param name="job">Layers, metal, what is behind, screws, and whatever differs from the defaults.</param>
    /// <returns>The choice, every length tried, what the metal holds, findings.</returns>
    /// <remarks>
    /// <para>Formula: tip depth d = s + L; beyond the metal b = d - sum(t) - m; clearance c = sum(t) + m + g - d. Chosen is the shortest length whose worst-case b is at least n pitches and the point, and whose worst-case c is at least the clearance asked. Hold: 0.85 m d F_u/3 at the least thickness of metal, or what the head holds where that is less.</para>
    /// <para>Validity: a screw threaded all along, driven square; flat layers. A marginal tip is never accepted. A length without a tolerance is up to 0.8 mm off to 19 mm, 1.3 to 38, 1.5 above.</para>
    /// <para>Source: metal-screw-stack (derived); AISI-S100, SCREW-DRILLS (read in a copy); TAPPING-SCREW-LENGTH (from memory); defaults: common practice and judgement, each named in the result.</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">A required member is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// FastenerSeries screws = new("tapping screw 4.2", FastenerKind.WoodScrew, Mm(4.2), [Mm(13), Mm(16), Mm(19), Mm(25)]);
    /// MetalScrewJob job = new([new Layer(Mm(6.5)) { Name = "panel" }], Mm(1), Behind.Skin(Mm(35)), screws, Mm(1.4)) { MetalStrength = Pressure.FromMegapascals(270) };
    /// MetalScrewChoice choice = MetalScrew.Choose(job);
    /// double length = choice.Chosen!.Length.Nominal.Millimeters; // 19: 10.7 beyond at worst, where 3 pitches and the point are 8.4; 16 might be 15.2
    /// Force? hold = choice.Hold;                          // 321.3 N: 0.85 · 1 · 4.2 · 270/3
    /// Length? drill = choice.PilotHole;                   // 3.454 mm
    /// </code></example>
    public static MetalScrewChoice Choose(MetalScrewJob job)
    {
        MetalScrewNumbers numbers = Read(job, null)!;
        List<MetalScrewLength> tried = [];
        foreach (Length length in job.Screws.Lengths)
        {
            TolerancedLength screw = numbers.TolerancedBySeries ? job.Screws.WithTolerance(length) : TolerancedLength.PlusMinus(length, Door.Millimetres(numbers.ToleranceOf(Door.Millimetres(length))));
            TolerancedLength.Span span = screw.Read(new Name(nameof(length)), FastenerLength.Fasteners, null);
            tried.Add(new MetalScrewLength(numbers, screw, span, Solve(numbers, span, default(Silent))));
        }

        return new MetalScrewChoice(job, numbers, tried);
    }

    /// <summary>All problems with a job; nothing is thrown.</summary>
    /// <param name="job">The job.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(MetalScrewJob job)
    {
        List<InputProblem> problems = [];
        Read(job, problems);
        return problems;
    }

    /// <summary>The one formula body, for the numbers and for the workings.</summary>
    internal static MetalScrewSum Solve<TTrace>(MetalScrewNumbers job, TolerancedLength.Span length, TTrace trace)
        where TTrace : struct, ITrace
    {
        double pitch = job.Pitch, threads = job.Threads, point = job.Point;
        trace.Given("p", pitch, "mm", Sources.Given, meaning: "pitch");
        trace.Given("n", threads, string.Empty, job.ThreadsSource, meaning: "pitches to pass beyond the metal");
        trace.Given("l_p", point, "mm", job.PointSource, meaning: "point without full thread");
        double needed = trace.Step("b_0", nameof(needed), (threads * pitch) + point, "mm", MetalDefaults.ScrewSum);

        // Nominal sizes: what gives is squeezed for the clearance and free for the thread.
        double squeezed = Sum(job, job.Through, static span => span.Nominal, "T", trace);
        double free = Sum(job, job.Free, static span => span.Nominal, "T_f", trace);
        double fastener = length.Nominal, setDepth = job.SetDepth.Nominal, metal = job.Metal.Nominal, gap = job.Gap.Nominal;
        trace.Given("L", fastener, "mm", job.LengthSource);
        trace.Given("s", setDepth, "mm", job.SetDepthSource);
        trace.Given("m", metal, "mm", Sources.Given, meaning: "metal");
        trace.Given("g", gap, "mm", Sources.Given, meaning: "from the metal's back to what is behind");
        trace.Given("T", squeezed, "mm", MetalDefaults.ScrewSum, meaning: "layers, squeezed");
        trace.Given("T_f", free, "mm", MetalDefaults.ScrewSum, meaning: "layers, free");
        double tipDepth = trace.Step("d", nameof(tipDepth), setDepth + fastener, "mm", MetalDefaults.ScrewSum);
        double beyond = trace.Step("b", nameof(beyond), tipDepth - free - metal, "mm", MetalDefaults.ScrewSum);
        double clearance = trace.Step("c", nameof(clearance), squeezed + metal + gap - tipDepth, "mm", MetalDefaults.ScrewSum);

        // Worst case: every tolerance against you, separately for thread and for clearance.
        double thick = Sum(job, job.Free, static span => span.Greatest, "T_max", trace);
        double thin = Sum(job, job.Through, static span => span.Least, "T_min", trace);
        double shortest = length.Least, longest = length.Greatest, shallow = job.SetDepth.Least, deep = job.SetDepth.Greatest;
        double metalThick = job.Metal.Greatest, metalThin = job.Metal.Least, near = job.Gap.Least;
        trace.Given("L_min", shortest, "mm", job.LengthSource);
        trace.Given("L_max", longest, "mm", job.LengthSource);
        trace.Given("s_min", shallow, "mm", job.SetDepthSource);
        trace.Given("s_max", deep, "mm", job.SetDepthSource);
        trace.Given("m_max", metalThick, "mm", Sources.Given);
        trace.Given("m_min", metalThin, "mm", Sources.Given);
        trace.Given("g_min", near, "mm", Sources.Given);
        trace.Given("T_max", thick, "mm", MetalDefaults.ScrewSum);
        trace.Given("T_min", thin, "mm", MetalDefaults.ScrewSum);
        double worstBeyond = trace.Step("b_min", nameof(worstBeyond), shallow + shortest - thick - metalThick, "mm", Sources.ToleranceSum);
        double worstClearance = trace.Step("c_min", nameof(worstClearance), thin + metalThin + near - deep - longest, "mm", Sources.ToleranceSum);
        return new MetalScrewSum(Grid.Snap(tipDepth), Grid.Snap(beyond), Grid.Snap(worstBeyond), Grid.Snap(clearance), Grid.Snap(worstClearance));
    }

    private static double Sum<TTrace>(MetalScrewNumbers job, TolerancedLength.Span[] layers, Func<TolerancedLength.Span, double> size, string symbol, TTrace trace)
        where TTrace : struct, ITrace
    {
        double sum = 0;
        trace.Given(symbol, sum, "mm", MetalDefaults.ScrewSum, 0, "nothing passed yet");
        for (int i = 0; i < layers.Length; i++)
        {
            double thickness = size(layers[i]);
            trace.Given("t", thickness, "mm", job.LayerSources[i], i + 1, job.Names[i]);
            sum = trace.Step(symbol, nameof(sum), sum + thickness, "mm", MetalDefaults.ScrewSum, i + 1);
        }

        return sum;
    }

    private static MetalScrewNumbers? Read(MetalScrewJob job, List<InputProblem>? problems)
    {
        if (Door.IsMissing(job, new Name(nameof(job)), "a job", problems))
        {
            return null;
        }

        (TolerancedLength.Span[] through, TolerancedLength.Span[] free, _, string[] names) = StackNumbers.ReadLayers(job.Layers, "job.Layers", problems);
        TolerancedLength.Span metal = StackNumbers.ReadNotBelowZero(job.Metal, new Name("job.Metal"), Metals, problems);
        TolerancedLength.Span gap = default;
        if (!Door.IsMissing(job.Behind, new Name("job.Behind"), "what is behind the metal", problems))
        {
            gap = ReadBehind(job.Behind, "job.Behind", problems);
        }

        double diameter = double.NaN;
        if (!Door.IsMissing(job.Screws, new Name("job.Screws"), "a series of screws", problems))
        {
            diameter = Door.Millimetres(job.Screws.Shank);
            if (job.Screws.Kind == FastenerKind.SmoothNail)
            {
                Door.Report(new InputProblem("job.Screws.Kind", nameof(FastenerKind.SmoothNail), "a kind with a thread: " + nameof(FastenerKind.WoodScrew), isRange: true), problems);
            }
        }

        double pitch = Door.Millimetres(job.Pitch, "job.Pitch", Pitches, problems);
        TolerancedLength.Span set = StackNumbers.ReadNotBelowZero(job.SetDepth ?? MetalDefaults.SetDepth, new Name("job.SetDepth"), FastenerLength.SetDepths, problems);
        double threads = job.ThreadsBeyond is { } n ? Door.Number(n, "job.ThreadsBeyond", s_threads, problems) : MetalDefaults.ThreadsBeyond;
        double point = job.Point is { } tip ? Door.Millimetres(tip, "job.Point", s_point, problems) : Grid.Snap(MetalDefaults.PointDiameters * diameter);
        double required = job.RequiredClearance is { } clearance ? Door.Millimetres(clearance, "job.RequiredClearance", StackNumbers.Clearances, problems) : FastenerDefaults.Clearance(job.Behind?.Kind ?? BehindKind.Wire);
        double strength = job.MetalStrength is { } pressure ? SheetPullOut.Strength(pressure, "job.MetalStrength", problems) : double.NaN;
        if (job.MetalStrength is not null && metal.Nominal > 0 && metal.Least == 0)
        {
            Door.Report(new InputProblem("job.Metal.Lower", Print.Number(metal.Lower) + " mm", "so little that the thinnest metal has some thickness, where its strength is given", isRange: true), problems);
        }

        double tolerance = job.LengthTolerance is { } off ? Door.Millimetres(off, "job.LengthTolerance", s_tolerance, problems) : double.NaN;
        double head = job.HeadHold is { } force ? Door.Newtons(force, "job.HeadHold", s_force, problems) : double.NaN;
        double hole = job.PilotHole is { } drill ? Door.Millimetres(drill, "job.PilotHole", s_hole, problems) : double.NaN;
        if (problems is { Count: > 0 })
        {
            return null;
        }

        return new MetalScrewNumbers
        {
            Names = names,
            Through = through,
            Free = free,
            LayerSources = StackNumbers.SourcesOf(job.Layers),
            Metal = metal,
            Gap = gap,
            BehindWords = job.Behind!.Words,
            SetDepth = set,
            SetDepthSource = job.SetDepth is null ? MetalDefaults.SetDepthSource : Sources.Given,
            LengthSource = job.LengthTolerance is not null ? Sources.Given : job.Screws.Tolerances.Count > 0 ? job.Screws.ToleranceSource : MetalDefaults.TappingLength,
            Tolerance = tolerance,
            TolerancedBySeries = job.LengthTolerance is null && job.Screws.Tolerances.Count > 0,
            Diameter = diameter,
            Pitch = pitch,
            Threads = threads,
            ThreadsSource = job.ThreadsBeyond is null ? MetalDefaults.ThreadsSource : Sources.Given,
            Point = point,
            PointSource = job.Point is null ? MetalDefaults.PointSource : Sources.Given,
            Required = required,
            Strength = strength,
            Head = head,
            PilotHole = double.IsNaN(hole) ? MetalDefaults.Drill(diameter, pitch) : hole,
        };
    }

    internal static TolerancedLength.Span ReadBehind(Behind behind, string path, List<InputProblem>? problems)
    {
        if (behind.Kind is < BehindKind.Wire or > BehindKind.RibMetal)
        {
            Door.Report(new InputProblem(path + ".Kind", ((int)behind.Kind).ToString(CultureInfo.InvariantCulture), "a named kind", isRange: true), problems);
        }

        return StackNumbers.ReadNotBelowZero(behind.Distance, new Name(path + ".Distance"), StackNumbers.Distances, problems);
    }
}

/// <summary>A job as plain checked numbers in mm, MPa and N; NaN stands for what was not given.</summary>
internal sealed record MetalScrewNumbers
{
    internal required string[] Names { get; init; }

    /// <summary>For clearance: layers that give squeezed.</summary>
    internal required TolerancedLength.Span[] Through { get; init; }

    /// <summary>For thread: layers that give free.</summary>
    internal required TolerancedLength.Span[] Free { get; init; }

    internal required Source[] LayerSources { get; init; }

    internal required TolerancedLength.Span Metal { get; init; }

    internal required TolerancedLength.Span Gap { get; init; }

    internal required string BehindWords { get; init; }

    internal required TolerancedLength.Span SetDepth { get; init; }

    internal required Source SetDepthSource { get; init; }

    internal required Source LengthSource { get; init; }

    internal required double Tolerance { get; init; }

    internal required bool TolerancedBySeries { get; init; }

    internal required double Diameter { get; init; }

    internal required double Pitch { get; init; }

    internal required double Threads { get; init; }

    internal required Source ThreadsSource { get; init; }

    internal required double Point { get; init; }

    internal required Source PointSource { get; init; }

    internal required double Required { get; init; }

    internal required double Strength { get; init; }

    internal required double Head { get; init; }

    internal required double PilotHole { get; init; }

    /// <summary>Of a length where the series has no tolerance of its own, or another was given.</summary>
    internal double ToleranceOf(double length) => double.IsNaN(Tolerance) ? MetalDefaults.TappingTolerance(length) : Tolerance;

    internal double NeededBeyond => Grid.Snap((Threads * Pitch) + Point);

    internal bool HeadGoesThrough => SetDepth.Greatest >= Through[0].Least;

    /// <summary>The greatest actual length that keeps the clearance in the worst case.</summary>
    internal double LongestClear
    {
        get
        {
            double depth = Metal.Least + Gap.Least - SetDepth.Greatest - Math.Max(Required, Allowed.OneStep);
            foreach (TolerancedLength.Span layer in Through)
            {
                depth += layer.Least;
            }

            return Grid.Snap(depth);
        }
    }

    /// <summary>The least actual length that has the thread in the worst case.</summary>
    internal double ShortestThatHolds
    {
        get
        {
            double depth = Metal.Greatest - SetDepth.Least + NeededBeyond;
            foreach (TolerancedLength.Span layer in Free)
            {
                depth += layer.Greatest;
            }

            return Grid.Snap(depth);
        }
    }
}

/// <summary>What the formula body computes for one length.</summary>
internal readonly struct MetalScrewSum(double tipDepth, double beyond, double worstBeyond, double clearance, double worstClearance)
{
    internal double TipDepth { get; } = tipDepth;

    internal double Beyond { get; } = beyond;

    internal double WorstBeyond { get; } = worstBeyond;

    internal double Clearance { get; } = clearance;

    internal double WorstClearance { get; } = worstClearance;
}
