using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Whether a rivet nut suits the metal with its paint, and which machine screw goes into it without reaching what is behind.</summary>
/// <remarks>
/// A verdict holds for what was entered and at the tolerances entered; nothing else is known. Find and mark wiring, gas, fuel and
/// brake lines, tanks, airbags and glass before drilling, and follow local codes and the vehicle maker's guidance for bodybuilders.
/// </remarks>
public static class RivetNut
{
    private static readonly Allowed s_depth = new(0, 50, "mm");
    private static readonly Allowed s_paint = new(0, 5, "mm");
    private static readonly Allowed s_mating = new(0, 20, "mm");
    private static readonly Allowed s_flange = new(0, 10, "mm");
    private static readonly Allowed s_unset = new(0, 100, "mm");
    private static readonly Allowed s_tolerance = new(0, 10, "mm");
    private static readonly Allowed s_engagement = new(Allowed.OneStep, 5, string.Empty);
    private static readonly Allowed s_pitch = new(0.1, 10, "mm");
    private static readonly Allowed s_force = new(0, 1e6, "N");

    /// <summary>Whether the grip suits, and the shortest stocked screw that has thread enough and stays clear.</summary>
    /// <param name="job">Layers, metal, what is behind, nut, screws, and whatever differs from the defaults.</param>
    /// <returns>The grip, the screw, every length tried, findings.</returns>
    /// <remarks>
    /// <para>Formula: grip = metal + paint + mating sheet, in the worst case within the nut's; tip below the flange's face t = s + L - sum(layers); shared thread e = min(t, thread's end) - thread's start, in the worst case at least n diameters; clearance c = flange + metal + paint + mating sheet + g - t, and the same for the nut's end, set and, where its depth is given, before it is set. Pull that strips the nut's thread P_t = pi d_2 e/2 F_u/sqrt(3) with d_2 = d - 0.65 p; a third of it is counted.</para>
    /// <para>Validity: screw driven square, threaded over what it shares with the nut, and of the stronger metal. The thread's pull says nothing of the nut in the sheet, which often gives first. Where the thread lies in a set nut depends on the grip: the maker's figure at this grip.</para>
    /// <para>Source: metal-rivet-nut, metal-nut-thread (derived); RIVET-NUT-GRIP (read in a copy); defaults: common practice and judgement, each named in the result.</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">A required member is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// RivetNutSize maker = new("round M5", Mm(5), Mm(7), Mm(0.5), Mm(3));
    /// RivetNutJob job = new([new Layer(Mm(6.5)) { Name = "panel" }], Mm(1), Behind.Skin(Mm(30)), maker, Mm(5), Mm(12), [Mm(16), Mm(20), Mm(25)]) { Paint = Mm(0.2), Flange = Mm(1) };
    /// RivetNutFit fit = RivetNut.Fit(job);
    /// bool grips = fit.GripFits;                          // 1.2 mm is within 0.5 to 3
    /// double screw = fit.Chosen!.Length.Millimeters;      // 20: at worst its thread fills 5 to 12; 16 would share 4
    /// </code></example>
    public static RivetNutFit Fit(RivetNutJob job)
    {
        RivetNutNumbers numbers = Read(job, null)!;
        List<RivetNutScrew> tried = [];
        foreach (Length screw in job.Screws)
        {
            double length = Door.Millimetres(screw);
            tried.Add(new RivetNutScrew(numbers, length, Solve(numbers, length, default(Silent))));
        }

        return new RivetNutFit(job, numbers, tried);
    }

    /// <summary>All problems with a job; nothing is thrown.</summary>
    /// <param name="job">The job.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(RivetNutJob job)
    {
        List<InputProblem> problems = [];
        Read(job, problems);
        return problems;
    }

    /// <summary>The one formula body, for the numbers and for the workings: worst cases only.</summary>
    internal static RivetNutSum Solve<TTrace>(RivetNutNumbers job, double screw, TTrace trace)
        where TTrace : struct, ITrace
    {
        double thinGrip = job.LeastGrip, thickGrip = job.MostGrip, start = job.From, end = job.To, tolerance = job.Tolerance, flange = job.Flange;
        double thick = job.LayersMost, thin = job.LayersLeast, shallow = job.SetDepth.Least, deep = job.SetDepth.Greatest, near = job.Gap.Least;
        trace.Given("G_min", thinGrip, "mm", Sources.Given, meaning: "metal, paint and mating sheet at their thinnest");
        trace.Given("G_max", thickGrip, "mm", Sources.Given, meaning: "the same at their thickest");
        trace.Given("a", start, "mm", Sources.Given, meaning: "where the set nut's thread begins");
        trace.Given("z", end, "mm", Sources.Given, meaning: "where the set nut ends");
        trace.Given("f", flange, "mm", Sources.Given, meaning: "flange");
        trace.Given("L", screw, "mm", Sources.Given);
        trace.Given("l", tolerance, "mm", job.ToleranceSource, meaning: "tolerance of the length");
        trace.Given("s_min", shallow, "mm", job.SetDepthSource);
        trace.Given("s_max", deep, "mm", job.SetDepthSource);
        trace.Given("T_max", thick, "mm", MetalDefaults.NutSum, meaning: "layers, free and at their thickest");
        trace.Given("T_min", thin, "mm", MetalDefaults.NutSum, meaning: "layers, squeezed and at their thinnest");
        trace.Given("g_min", near, "mm", Sources.Given, meaning: "from the metal's back to what is behind");
        double shortTip = trace.Step("t_min", nameof(shortTip), shallow + screw - tolerance - thick, "mm", Sources.ToleranceSum);
        double longTip = trace.Step("t_max", nameof(longTip), deep + screw + tolerance - thin, "mm", Sources.ToleranceSum);
        double shared = trace.Step("e", nameof(shared), Math.Max(0, Math.Min(shortTip, end) - start), "mm", MetalDefaults.NutSum);
        double room = trace.Step("r", nameof(room), flange + thinGrip + near, "mm", MetalDefaults.NutSum);
        double clearance = trace.Step("c", nameof(clearance), room - Math.Max(longTip, end), "mm", MetalDefaults.NutSum);
        return new RivetNutSum(Grid.Snap(shared), Grid.Snap(clearance));
    }

    /// <summary>The one formula body of the thread: what it may be loaded with.</summary>
    internal static double SolveThread<TTrace>(double diameter, double pitch, double engaged, double strength, TTrace trace)
        where TTrace : struct, ITrace
    {
        double safety = MetalDefaults.SafetyFactor;
        trace.Given("d", diameter, "mm", Sources.Given, meaning: "thread");
        trace.Given("p", pitch, "mm", Sources.Given, meaning: "pitch");
        trace.Given("e_t", engaged, "mm", MetalDefaults.NutSum, meaning: "thread shared in the worst case");
        trace.Given("F_u", strength, "MPa", Sources.Given, meaning: "tensile strength of the nut");
        trace.Given("k", safety, string.Empty, MetalDefaults.NutThreadSafety, meaning: "safety factor");
        double middle = trace.Step("d_2", nameof(middle), diameter - (0.6495 * pitch), "mm", MetalDefaults.NutThread);
        double area = trace.Step("A_t", nameof(area), Math.PI * middle * engaged / 2, "mm2", MetalDefaults.NutThread);
        double strips = trace.Step("P_t", nameof(strips), area * strength / Math.Sqrt(3), "N", MetalDefaults.NutThread);
        return trace.Step("P_a", "what the thread may be loaded with", strips / safety, "N", MetalDefaults.NutThreadSafety);
    }

    private static RivetNutNumbers? Read(RivetNutJob job, List<InputProblem>? problems)
    {
        if (Door.IsMissing(job, new Name(nameof(job)), "a job", problems))
        {
            return null;
        }

        (TolerancedLength.Span[] through, TolerancedLength.Span[] free, _, string[] names) = StackNumbers.ReadLayers(job.Layers, "job.Layers", problems);
        TolerancedLength.Span metal = StackNumbers.ReadNotBelowZero(job.Metal, new Name("job.Metal"), MetalScrew.Metals, problems);
        TolerancedLength.Span gap = Door.IsMissing(job.Behind, new Name("job.Behind"), "what is behind the metal", problems) ? default : MetalScrew.ReadBehind(job.Behind, "job.Behind", problems);
        Door.IsMissing(job.Nut, new Name("job.Nut"), "a rivet nut", problems);
        double from = Door.Millimetres(job.ThreadFrom, "job.ThreadFrom", s_depth, problems), to = Door.Millimetres(job.ThreadTo, "job.ThreadTo", s_depth, problems);
        if (to <= from)
        {
            Door.Report(new InputProblem("job.ThreadTo", Print.Mm(to), $"more than ThreadFrom, {Print.Mm(from)}", isRange: true), problems);
        }

        ReadScrews(job.Screws, problems);
        TolerancedLength.Span paint = job.Paint is { } coat ? StackNumbers.ReadNotBelowZero(coat, new Name("job.Paint"), s_paint, problems) : default;
        TolerancedLength.Span mating = job.MatingSheet is { } sheet ? StackNumbers.ReadNotBelowZero(sheet, new Name("job.MatingSheet"), s_mating, problems) : default;
        double flange = Door.Millimetres(job.Flange, "job.Flange", s_flange, problems);
        double unset = job.UnsetDepth is { } depth ? Door.Millimetres(depth, "job.UnsetDepth", s_unset, problems) : double.NaN;
        if (unset < to)
        {
            Door.Report(new InputProblem("job.UnsetDepth", Print.Mm(unset), $"ThreadTo, {Print.Mm(to)}, or more: setting draws the nut together", isRange: true), problems);
        }

        TolerancedLength.Span set = StackNumbers.ReadNotBelowZero(job.SetDepth ?? MetalDefaults.SetDepth, new Name("job.SetDepth"), FastenerLength.SetDepths, problems);
        double tolerance = job.LengthTolerance is { } off ? Door.Millimetres(off, "job.LengthTolerance", s_tolerance, problems) : MetalDefaults.ScrewTolerance;
        double engagement = job.Engagement is { } n ? Door.Number(n, "job.Engagement", s_engagement, problems) : MetalDefaults.NutEngagement;
        double required = job.RequiredClearance is { } clearance ? Door.Millimetres(clearance, "job.RequiredClearance", StackNumbers.Clearances, problems) : FastenerDefaults.Clearance(job.Behind?.Kind ?? BehindKind.Wire);
        double hold = job.NutHold is { } force ? Door.Newtons(force, "job.NutHold", s_force, problems) : double.NaN;
        double pitch = ReadPitch(job, problems), strength = job.NutStrength is { } stuff ? SheetPullOut.Strength(stuff, "job.NutStrength", problems) : double.NaN;
        if (problems is { Count: > 0 })
        {
            return null;
        }

        double most = 0, least = 0;
        for (int i = 0; i < through.Length; i++)
        {
            most += free[i].Greatest;
            least += through[i].Least;
        }

        return new RivetNutNumbers
        {
            FirstName = names[0],
            FirstLeast = through[0].Least,
            LayersMost = Grid.Snap(most),
            LayersLeast = Grid.Snap(least),
            LeastGrip = Grid.Snap(metal.Least + paint.Least + mating.Least),
            Grip = Grid.Snap(metal.Nominal + paint.Nominal + mating.Nominal),
            MostGrip = Grid.Snap(metal.Greatest + paint.Greatest + mating.Greatest),
            Gap = gap,
            BehindKind = job.Behind!.Kind,
            BehindWords = job.Behind.Words,
            From = from,
            To = to,
            Flange = flange,
            Unset = unset,
            SetDepth = set,
            SetDepthSource = job.SetDepth is null ? MetalDefaults.SetDepthSource : Sources.Given,
            Tolerance = tolerance,
            ToleranceSource = job.LengthTolerance is null ? MetalDefaults.ScrewToleranceSource : Sources.Given,
            Needed = Grid.Snap(engagement * job.Nut.ThreadMm),
            Required = required,
            Hold = hold,
            Pitch = pitch,
            Strength = strength,
        };
    }

    private static double ReadPitch(RivetNutJob job, List<InputProblem>? problems)
    {
        if (job.NutStrength is not null && job.Pitch is null)
        {
            Door.Report(new InputProblem("job.Pitch", "not given", "the pitch of the thread, where NutStrength is given", isRange: false), problems);
        }

        double pitch = job.Pitch is { } given ? Door.Millimetres(given, "job.Pitch", s_pitch, problems) : double.NaN;
        if (job.Nut is { } nut && pitch >= nut.ThreadMm)
        {
            Door.Report(new InputProblem("job.Pitch", Print.Mm(pitch), $"less than the thread's diameter, {Print.Mm(nut.ThreadMm)}", isRange: true), problems);
        }

        return pitch;
    }

    private static void ReadScrews(IReadOnlyList<Length> screws, List<InputProblem>? problems)
    {
        if (Door.IsMissing(screws, new Name("job.Screws"), "1 to 200 lengths", problems))
        {
            return;
        }

        if (screws.Count is < 1 or > FastenerLength.MostListed)
        {
            Door.Report(new InputProblem("job.Screws", screws.Count + " lengths", "1 to 200 lengths", isRange: true), problems);
            return;
        }

        double before = 0;
        for (int i = 0; i < screws.Count; i++)
        {
            double length = Door.Millimetres(screws[i], new Name("job.Screws", i), FastenerLength.Fasteners, problems);
            if (length <= before)
            {
                Door.Report(new InputProblem(new Name("job.Screws", i).ToString(), Print.Mm(length), $"more than the one before, {Print.Mm(before)}", isRange: true), problems);
            }

            before = double.IsNaN(length) ? before : length;
        }
    }
}

/// <summary>A job as plain checked numbers in mm and N; NaN stands for what was not given.</summary>
internal sealed record RivetNutNumbers
{
    internal required string FirstName { get; init; }

    internal required double FirstLeast { get; init; }

    internal required double LayersMost { get; init; }

    internal required double LayersLeast { get; init; }

    internal required double LeastGrip { get; init; }

    internal required double Grip { get; init; }

    internal required double MostGrip { get; init; }

    internal required TolerancedLength.Span Gap { get; init; }

    internal required BehindKind BehindKind { get; init; }

    internal required string BehindWords { get; init; }

    internal required double From { get; init; }

    internal required double To { get; init; }

    internal required double Flange { get; init; }

    internal required double Unset { get; init; }

    internal required TolerancedLength.Span SetDepth { get; init; }

    internal required Source SetDepthSource { get; init; }

    internal required double Tolerance { get; init; }

    internal required Source ToleranceSource { get; init; }

    internal required double Needed { get; init; }

    internal required double Required { get; init; }

    internal required double Hold { get; init; }

    internal required double Pitch { get; init; }

    internal required double Strength { get; init; }

    internal bool HeadGoesThrough => SetDepth.Greatest >= FirstLeast;

    /// <summary>Room from the flange's face to what is behind, at its least.</summary>
    internal double Room => Grid.Snap(Flange + LeastGrip + Gap.Least);

    /// <summary>From the nut's end, before it is set, to what is behind; NaN where its depth was not given.</summary>
    internal double UnsetClearance => double.IsNaN(Unset) ? double.NaN : Grid.Snap(Room - Unset);
}

/// <summary>What the formula body computes for one screw.</summary>
internal readonly struct RivetNutSum(double shared, double clearance)
{
    internal double Shared { get; } = shared;

    internal double Clearance { get; } = clearance;
}
