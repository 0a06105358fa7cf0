using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>
/// Which nail, brad or screw goes through a stack of layers, holds, and still stops short of what is behind: the rib's metal, the
/// outer skin, a wire, a pipe, a tank.
/// </summary>
/// <remarks>
/// A verdict holds for what was entered and at the tolerances entered; nothing else is known. Find and mark wiring, gas, fuel and
/// brake lines, tanks and airbags before driving anything, and follow local codes and the vehicle maker's guidance for bodybuilders.
/// </remarks>
public static class FastenerLength
{
    internal const int MostLayers = 20;
    internal const int MostListed = 200;

    internal static readonly Allowed DriveAngles = new(0, 60, "deg");

    internal static readonly Allowed Thicknesses = new(Allowed.OneStep, 1000, "mm");
    internal static readonly Allowed SetDepths = new(0, 20, "mm");
    internal static readonly Allowed Fasteners = new(Allowed.OneStep, 500, "mm");
    private static readonly Allowed s_depth = new(0, 1e4, "mm");

    /// <summary>The stocked fastener for a stack, with every default.</summary>
    /// <param name="layers">Outermost first, from the surface where the head seats; 1 to 20. A plain length is a solid layer. The last one holds.</param>
    /// <param name="behind">What is behind the last layer.</param>
    /// <param name="series">The fasteners to choose from.</param>
    /// <returns>The choice, every candidate with its figures, findings and remedies.</returns>
    /// <remarks>
    /// <para>Formula: clearance c = sum(t) + g - (s + L cos theta); bite p = shank inside holding layers along its axis. Chosen is the shortest length that is safe (worst-case c at least the clearance asked) and reaches the target bite; if none, the longest that is safe and bites (worst-case p at least the least bite); if none, the same among the marginal.</para>
    /// <para>Validity: straight shank, flat layers, drive angle up to 60°; a fastener that bends or follows the grain is not covered.</para>
    /// <para>Source: fastening-stack (derived); defaults: common practice and judgement, each named in the result.</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">An argument, or a layer, is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// FastenerChoice choice = FastenerLength.Choose([Mm(12.7), Inch("5/8")], Behind.Metal, FastenerSeries.Brad18);
    /// string nail = choice.Chosen!.Length.ToString();     // 25.4 mm ± 0.794
    /// double clearance = choice.Chosen.Clearance.Millimeters; // 2.175
    /// string next = choice.NextLonger!.TipReason;         // 31.75 mm reaches the metal of a rib: ...
    /// </code></example>
    public static FastenerChoice Choose(IReadOnlyList<Layer> layers, Behind behind, FastenerSeries series) =>
        Choose(new FastenerJob(layers, behind, series), string.Empty);

    /// <summary>The stocked fastener for a job.</summary>
    /// <param name="job">The job: layers, what is behind, series, and whatever differs from the defaults.</param>
    /// <returns>The choice, every candidate with its figures, findings and remedies.</returns>
    /// <remarks>
    /// <para>Formula: clearance c = sum(t) + g - (s + L cos theta); bite p = shank inside holding layers along its axis. Chosen is the shortest length that is safe (worst-case c at least the clearance asked) and reaches the target bite; if none, the longest that is safe and bites (worst-case p at least the least bite); if none, the same among the marginal.</para>
    /// <para>Validity: straight shank, flat layers, drive angle up to 60°; a fastener that bends or follows the grain is not covered.</para>
    /// <para>Source: fastening-stack and fastening-job (derived), tolerance-sum (derived); defaults: common practice and judgement, each named in the result.</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">A required member is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// FastenerJob job = new([Mm(12.7), Layer.Furring(SheetGoods.Birch12)], Behind.Metal, FastenerSeries.Brad18) { Count = 200 };
    /// FastenerChoice choice = FastenerLength.Choose(job);
    /// foreach (Remedy remedy in choice.Remedies)
    /// {
    ///     log.Add(remedy.Text);
    /// }
    /// </code></example>
    public static FastenerChoice Choose(FastenerJob job) => Choose(job, nameof(job));

    /// <summary>All problems with the input of <see cref="Choose(IReadOnlyList{Layer}, Behind, FastenerSeries)"/>; nothing is thrown.</summary>
    /// <param name="layers">As there.</param>
    /// <param name="behind">As there.</param>
    /// <param name="series">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(IReadOnlyList<Layer> layers, Behind behind, FastenerSeries series)
    {
        List<InputProblem> problems = [];
        StackNumbers.Read(new FastenerJob(layers, behind, series), string.Empty, problems);
        return problems;
    }

    /// <summary>All problems with a job; nothing is thrown.</summary>
    /// <param name="job">The job.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(FastenerJob job)
    {
        List<InputProblem> problems = [];
        StackNumbers.Read(job, nameof(job), problems);
        return problems;
    }

    /// <summary>One length tried against a job, stocked or not.</summary>
    /// <param name="job">The job; its series gives shank and length tolerance.</param>
    /// <param name="fastener">The length [length], more than 0 up to 500 mm.</param>
    /// <returns>Every figure and the verdicts.</returns>
    /// <remarks>
    /// <para>Formula: clearance c = sum(t) + g - (s + L cos theta); bite p = shank inside holding layers along its axis; worst case: every tolerance against you, separately for each.</para>
    /// <para>Validity: straight shank, flat layers, drive angle up to 60°.</para>
    /// <para>Source: fastening-stack (derived), tolerance-sum (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">A required member is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// FastenerJob job = new([Mm(12.7), Mm(15.875)], Behind.Metal, FastenerSeries.Brad18) { SetDepth = Mm(0.5) };
    /// FastenerCandidate nail = FastenerLength.Evaluate(job, Mm(25.4));
    /// double clearance = nail.Clearance.Millimeters;      // 2.675
    /// TipVerdict verdict = nail.Tip;                      // Safe
    /// </code></example>
    public static FastenerCandidate Evaluate(FastenerJob job, Length fastener)
    {
        StackNumbers stack = StackNumbers.Read(job, nameof(job), null)!;
        Door.Millimetres(fastener, nameof(fastener), Fasteners, null);
        return Try(stack, job.Series.WithTolerance(fastener));
    }

    /// <summary>All problems with the input of <see cref="Evaluate"/>, <see cref="ThinnestFurring"/> and <see cref="LeastDriveAngle"/>; nothing is thrown.</summary>
    /// <param name="job">As there.</param>
    /// <param name="fastener">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(FastenerJob job, Length fastener)
    {
        List<InputProblem> problems = [];
        StackNumbers.Read(job, nameof(job), problems);
        Door.Millimetres(fastener, nameof(fastener), Fasteners, problems);
        return problems;
    }

    /// <summary>How far a tip stops short, at exact sizes: the plain sum without tolerances or verdict.</summary>
    /// <param name="depthBehind">From the surface where the head seats to what is behind [length], 0 to 10 m.</param>
    /// <param name="fastener">Length of the fastener [length], more than 0 up to 500 mm.</param>
    /// <param name="setDepth">How deep the head is set [length], 0 to 20 mm.</param>
    /// <param name="driveAngle">Angle from the face normal [angle], 0° to 60°.</param>
    /// <returns>Tip depth and clearance; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: d = s + L cos theta; c = T - d.</para>
    /// <para>Validity: exact sizes only; it is not a verdict. Use <see cref="Evaluate"/> for one, with tolerances.</para>
    /// <para>Source: fastening-stack (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit.</exception>
    /// <example><code>
    /// TipClearance tip = FastenerLength.TipClearance(Mm(28.575), Mm(25.4), Mm(0.5), Angle.FromDegrees(0));
    /// double clearance = tip.Clearance.Millimeters;       // 2.675
    /// </code></example>
    public static TipClearance TipClearance(Length depthBehind, Length fastener, Length setDepth, Angle driveAngle)
    {
        double depth = Door.Millimetres(depthBehind, nameof(depthBehind), s_depth, null);
        double length = Door.Millimetres(fastener, nameof(fastener), Fasteners, null);
        double set = Door.Millimetres(setDepth, nameof(setDepth), SetDepths, null);
        double angle = Door.Radians(driveAngle, nameof(driveAngle), DriveAngles, null);
        return SolveTip(depth, length, set, angle, default(Silent));
    }

    /// <summary>All problems with the input of <see cref="TipClearance"/>; nothing is thrown.</summary>
    /// <param name="depthBehind">As there.</param>
    /// <param name="fastener">As there.</param>
    /// <param name="setDepth">As there.</param>
    /// <param name="driveAngle">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckTipClearance(Length depthBehind, Length fastener, Length setDepth, Angle driveAngle)
    {
        List<InputProblem> problems = [];
        Door.Millimetres(depthBehind, nameof(depthBehind), s_depth, problems);
        Door.Millimetres(fastener, nameof(fastener), Fasteners, problems);
        Door.Millimetres(setDepth, nameof(setDepth), SetDepths, problems);
        Door.Radians(driveAngle, nameof(driveAngle), DriveAngles, problems);
        return problems;
    }

    /// <summary>The longest fastener that stays safe, stocked or not.</summary>
    /// <param name="job">The job.</param>
    /// <returns>Greatest actual length whose worst case just keeps the clearance asked and does not touch, rounded down to the 1 nm grid; null if none over 0 does.</returns>
    /// <remarks>
    /// <para>Formula: L = (sum(t_min) + g_min - s_max - required)/cos theta.</para>
    /// <para>Validity: an actual length: subtract the upper length tolerance of the box for a label.</para>
    /// <para>Source: fastening-stack (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">A required member is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// FastenerJob job = new([Mm(12.7), Mm(15.875)], Behind.Metal, FastenerSeries.Brad18) { SetDepth = Mm(0.5) };
    /// Length? longest = FastenerLength.LongestSafe(job);  // 27.575 mm = 28.575 - 0.5 - 0.5
    /// </code></example>
    public static Length? LongestSafe(FastenerJob job)
    {
        StackNumbers stack = StackNumbers.Read(job, nameof(job), null)!;
        double longest = Grid.SnapDown((stack.LeastDepth - stack.SetDepth.Greatest - Math.Max(stack.Required, Allowed.OneStep)) / Math.Cos(stack.Angle));
        return longest > 0 ? Door.Millimetres(longest) : null;
    }

    /// <summary>The thinnest furring at which a named length is safe and bites, exact and as the next sheet at its actual size.</summary>
    /// <param name="job">The job; the last layer that holds is the furring.</param>
    /// <param name="fastener">The length [length], more than 0 up to 500 mm.</param>
    /// <returns>The remedy; null where no layer holds, more than 1 m would be needed, or no thickness lets the length bite. Thinner than given where that is enough.</returns>
    /// <remarks>
    /// <para>Formula: t = t_given + required - worst-case clearance, or more where the bite needs it; a sheet does where its least actual thickness does.</para>
    /// <para>Validity: the furring does not compress.</para>
    /// <para>Source: fastening-stack (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">A required member is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// FastenerJob job = new([Mm(12.7), Mm(12.7)], Behind.Metal, FastenerSeries.Brad18) { SetDepth = Mm(0.5) };
    /// FurringRemedy thicker = FastenerLength.ThinnestFurring(job, Mm(25.4))!;
    /// double least = thicker.Least.Millimeters;           // 14.49375 = 12.7 + 0.5 - (-0.5 - 0.79375)
    /// string sheet = thicker.Sheet!.Name;                 // 18 mm birch plywood sanded: a 15 mm sheet may be 14.2
    /// </code></example>
    public static FurringRemedy? ThinnestFurring(FastenerJob job, Length fastener)
    {
        StackNumbers stack = StackNumbers.Read(job, nameof(job), null)!;
        Door.Millimetres(fastener, nameof(fastener), Fasteners, null);
        return FastenerRemedies.Furring(job, stack, job.Series.WithTolerance(fastener));
    }

    /// <summary>The least angle from square at which a named length is safe.</summary>
    /// <param name="job">The job; its own drive angle is not considered.</param>
    /// <param name="fastener">The length [length], more than 0 up to 500 mm.</param>
    /// <returns>The remedy; null where 60° does not do, and toward anything but the metal of a rib: the tip moves to the side, where nobody measured.</returns>
    /// <remarks>
    /// <para>Formula: cos theta = (sum(t_min) + g_min - s_max - required)/L_max.</para>
    /// <para>Validity: 0° to 60°; the head must seat and the point enter at that angle.</para>
    /// <para>Source: fastening-stack (derived).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">A required member is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// FastenerJob job = new([Mm(12.7), Mm(12.7)], Behind.Metal, FastenerSeries.Brad18) { SetDepth = Mm(0.5) };
    /// DriveAngleRemedy lean = FastenerLength.LeastDriveAngle(job, Mm(25.4))!;
    /// double degrees = lean.Least.Degrees;                // 21.33: acos((25.4 - 0.5 - 0.5)/26.19375)
    /// Angle toSet = lean.Angle;                           // 22 degrees
    /// </code></example>
    public static DriveAngleRemedy? LeastDriveAngle(FastenerJob job, Length fastener)
    {
        StackNumbers stack = StackNumbers.Read(job, nameof(job), null)!;
        Door.Millimetres(fastener, nameof(fastener), Fasteners, null);
        return FastenerRemedies.DriveAngle(stack, job.Series.WithTolerance(fastener));
    }

    /// <summary>Chance of one hit or more over a job, batch deviations shared by all.</summary>
    internal static double ChanceOfAny(double mean, double batchSigma, double ownSigma, int count)
    {
        if (ownSigma == 0)
        {
            return batchSigma == 0 ? (Grid.Snap(mean) <= 0 ? 1 : 0) : Normal.Below(-mean / batchSigma);
        }

        if (batchSigma == 0)
        {
            return AnyOf(Normal.Below(-mean / ownSigma));
        }

        // The integrand falls from the density to nothing over a few own sigmas around the batch deviation at which about one
        // fastener is expected to touch: split there, so that the quadrature cannot step over it.
        double width = 8 * ownSigma / batchSigma;
        double edge = (-mean + (ownSigma * Math.Sqrt(2 * Math.Log(count + 1.0)))) / batchSigma;
        double sum = 0, from = -9;
        foreach (double to in new[] { edge - width, edge, edge + width, 9 })
        {
            double end = Math.Min(9, Math.Max(from, to));
            sum += Quadrature.Integrate(z => Normal.Density(z) * AnyOf(Normal.Below(-(mean + (batchSigma * z)) / ownSigma)), from, end);
            from = end;
        }

        return Math.Min(1, sum);

        double AnyOf(double chance) => chance >= 1 ? 1 : -Expm1(count * Log1p(-chance));
    }

    /// <summary>The one formula body of the plain sum.</summary>
    internal static TipClearance SolveTip<TTrace>(double depthBehind, double fastener, double setDepth, double angle, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("T", depthBehind, "mm", Sources.Given);
        trace.Given("L", fastener, "mm", Sources.Given);
        trace.Given("s", setDepth, "mm", Sources.Given);
        trace.Given("theta", angle, "rad", Sources.Given, meaning: "drive angle from the face normal");
        double tipDepth = trace.Step("d", nameof(tipDepth), setDepth + (fastener * Math.Cos(angle)), "mm", Sources.FastenerStack);
        double clearance = trace.Step("c", nameof(clearance), depthBehind - tipDepth, "mm", Sources.FastenerStack);
        return new TipClearance(depthBehind, fastener, setDepth, angle, tipDepth, clearance);
    }

    /// <summary>The one formula body of a candidate, for the numbers and for the workings.</summary>
    internal static TipNumbers Solve<TTrace>(StackNumbers stack, TolerancedLength.Span length, TTrace trace)
        where TTrace : struct, ITrace
    {
        // Nominal sizes.
        double angle = stack.Angle, setDepth = stack.SetDepth.Nominal, fastener = length.Nominal, gap = stack.Gap.Nominal, through = 0;
        trace.Given("theta", angle, "rad", Sources.Given, meaning: "drive angle from the face normal");
        trace.Given("s", setDepth, "mm", stack.SetDepthSource);
        trace.Given("L", fastener, "mm", stack.FastenerSource);
        trace.Given("g", gap, "mm", Sources.Given, meaning: "from the last layer to what is behind");
        trace.Given("T", through, "mm", Sources.FastenerStack, 0, "nothing passed yet");
        for (int i = 0; i < stack.Through.Length; i++)
        {
            double thickness = stack.Through[i].Nominal;
            trace.Given("t", thickness, "mm", stack.LayerSources[i], i + 1, stack.Names[i]);
            through = trace.Step("T", nameof(through), through + thickness, "mm", Sources.FastenerStack, i + 1);
        }

        double tipDepth = trace.Step("d", nameof(tipDepth), setDepth + (fastener * Math.Cos(angle)), "mm", Sources.FastenerStack);
        double clearance = trace.Step("c", nameof(clearance), through + gap - tipDepth, "mm", Sources.FastenerStack);

        // Worst case: every tolerance against you.
        double setDeepest = stack.SetDepth.Greatest, longest = length.Greatest, gapLeast = stack.Gap.Least, throughLeast = 0;
        trace.Given("s_max", setDeepest, "mm", stack.SetDepthSource, meaning: "deepest set");
        trace.Given("L_max", longest, "mm", stack.FastenerSource, meaning: "longest fastener");
        trace.Given("g_min", gapLeast, "mm", Sources.Given, meaning: "least gap");
        trace.Given("T_min", throughLeast, "mm", Sources.FastenerStack, 0, "nothing passed yet");
        for (int i = 0; i < stack.Through.Length; i++)
        {
            double thinnest = stack.Through[i].Least;
            trace.Given("t_min", thinnest, "mm", stack.LayerSources[i], i + 1, stack.Names[i]);
            throughLeast = trace.Step("T_min", nameof(throughLeast), throughLeast + thinnest, "mm", Sources.FastenerStack, i + 1);
        }

        double worstClearance = trace.Step("c_min", nameof(worstClearance), throughLeast + gapLeast - (setDeepest + (longest * Math.Cos(angle))), "mm", Sources.ToleranceSum);

        // Root-sum-square: mean at the middle of each tolerance; variances of the batch and of each fastener kept apart.
        double mean = clearance, batchVariance = 0, ownVariance = 0;
        trace.Given("m", mean, "mm", Sources.ToleranceSum, 0, "mean clearance, from nominal");
        trace.Given("v_b", batchVariance, "mm2", Sources.ToleranceSum, 0, "variance shared by the batch");
        trace.Given("v_o", ownVariance, "mm2", Sources.ToleranceSum, 0, "variance of each fastener's own");
        int terms = stack.Through.Length + 3;
        for (int i = 0; i < terms; i++)
        {
            (TolerancedLength.Span term, double share, string name, Source source) = i < stack.Through.Length ? (stack.Through[i], 1.0, stack.Names[i], stack.LayerSources[i])
                : i == terms - 3 ? (stack.Gap, 1.0, "gap", Sources.Given)
                : i == terms - 2 ? (stack.SetDepth, -1.0, "set depth", stack.SetDepthSource)
                : (length, -Math.Cos(angle), "fastener", stack.FastenerSource);
            if (term.Lower == 0 && term.Upper == 0)
            {
                continue;
            }

            double lower = term.Lower, upper = term.Upper;
            trace.Given("k", share, string.Empty, Sources.FastenerStack, i + 1, name);
            trace.Given("t_lo", lower, "mm", source, i + 1, name);
            trace.Given("t_hi", upper, "mm", source, i + 1, name);
            mean = trace.Step("m", nameof(mean), mean + (share * (lower + upper) / 2), "mm", Sources.ToleranceSum, i + 1);
            if (term.Scope == DeviationScope.Batch)
            {
                batchVariance = trace.Step("v_b", nameof(batchVariance), batchVariance + Math.Pow(share * (upper - lower) / 6, 2), "mm2", Sources.ToleranceSum, i + 1);
            }
            else
            {
                ownVariance = trace.Step("v_o", nameof(ownVariance), ownVariance + Math.Pow(share * (upper - lower) / 6, 2), "mm2", Sources.ToleranceSum, i + 1);
            }
        }

        double sigma = trace.Step("sigma", nameof(sigma), Math.Sqrt(batchVariance + ownVariance), "mm", Sources.ToleranceSum);
        double touchChance = 0;
        if (sigma > 0)
        {
            touchChance = trace.Step("P", nameof(touchChance), Normal.Below(-mean / sigma), string.Empty, Sources.ToleranceSum);
        }
        else
        {
            // Without spread there is nothing to weigh: touching counts as touching.
            touchChance = Grid.Snap(mean) <= 0 ? 1 : 0;
            trace.Given("P", touchChance, string.Empty, Sources.ToleranceSum, meaning: "1 where the tip touches, 0 where not: no spread");
        }

        double count = stack.Count;
        trace.Given("n", count, string.Empty, Sources.Given, meaning: "fasteners on the job");
        double expectedHits = trace.Step("h", nameof(expectedHits), count * touchChance, string.Empty, Sources.JobHits);

        // Bite, at nominal sizes and with every tolerance against you. A deeper set helps a fastener reach and shortens what a first holding layer grips, so both ends are tried.
        double bite = SolveBite(stack, fastener, setDepth, angle, worst: false, trace);
        double shortest = length.Least;
        double shallow = SolveBite(stack, shortest, stack.SetDepth.Least, angle, worst: true, trace);
        double deep = SolveBite(stack, shortest, stack.SetDepth.Greatest, angle, worst: true, trace);
        trace.Given("p_a", shallow, "mm", Sources.FastenerStack, meaning: "worst bite at the shallowest set");
        trace.Given("p_b", deep, "mm", Sources.FastenerStack, meaning: "worst bite at the deepest set");
        double worstBite = trace.Step("p_min", nameof(worstBite), Math.Min(shallow, deep), "mm", Sources.ToleranceSum);
        return new TipNumbers(tipDepth, clearance, worstClearance, mean, batchVariance, ownVariance, touchChance, bite, worstBite);
    }

    private static double SolveBite<TTrace>(StackNumbers stack, double fastener, double setDepth, double angle, bool worst, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("L", fastener, "mm", stack.FastenerSource, meaning: worst ? "shortest fastener" : "fastener");
        trace.Given("s", setDepth, "mm", stack.SetDepthSource);
        double tipDepth = trace.Step("d", nameof(tipDepth), setDepth + (fastener * Math.Cos(angle)), "mm", Sources.FastenerStack);
        double far = 0, bite = 0;
        trace.Given("z", far, "mm", Sources.FastenerStack, 0, "the surface");
        trace.Given("p", bite, "mm", Sources.FastenerStack, 0, "no bite yet");
        for (int i = 0; i < stack.Free.Length; i++)
        {
            double thickness = !worst ? stack.Free[i].Nominal : stack.Holds[i] ? stack.Free[i].Least : stack.Free[i].Greatest;
            trace.Given("t", thickness, "mm", stack.LayerSources[i], i + 1, stack.Names[i]);
            far = trace.Step("z", nameof(far), far + thickness, "mm", Sources.FastenerStack, i + 1);
            if (stack.Holds[i])
            {
                bite = trace.Step("p", nameof(bite), bite + (Math.Max(0, Math.Min(tipDepth, far) - Math.Max(setDepth, far - thickness)) / Math.Cos(angle)), "mm", Sources.FastenerStack, i + 1);
            }
        }

        return bite;
    }

    internal static FastenerCandidate Try(StackNumbers stack, TolerancedLength fastener)
    {
        TolerancedLength.Span span = fastener.Read(new Name(nameof(fastener)), Fasteners, null);
        return new FastenerCandidate(stack, fastener, span, Solve(stack, span, default(Silent)));
    }

    private static FastenerChoice Choose(FastenerJob job, string path)
    {
        StackNumbers stack = StackNumbers.Read(job, path, null)!;
        List<FastenerCandidate> candidates = TryAll(stack, job.Series);
        FastenerCandidate? chosen = stack.HeadGoesThrough ? null
            : Pick(candidates, TipVerdict.Safe, job.Preference)
            ?? (job.Preference == FastenerPreference.LongestSafe ? null : Pick(candidates, TipVerdict.Marginal, job.Preference));
        List<Remedy> remedies = stack.HeadGoesThrough || chosen is { Tip: TipVerdict.Safe } ? [] : FastenerRemedies.For(job, stack, chosen);
        return new FastenerChoice(job, candidates, chosen, remedies, FastenerFindings.Of(job, stack, candidates, chosen, LabelTrap(job, stack, candidates)), DefaultsOf(job));
    }

    internal static List<FastenerCandidate> TryAll(StackNumbers stack, FastenerSeries series)
    {
        List<FastenerCandidate> candidates = [];
        foreach (Length length in series.Lengths)
        {
            candidates.Add(Try(stack, series.WithTolerance(length)));
        }

        return candidates;
    }

    /// <summary>Candidates come shortest first. A longer one bites at least as much, so the shortest that reaches the target comes before any other that does.</summary>
    internal static FastenerCandidate? Pick(List<FastenerCandidate> candidates, TipVerdict tip, FastenerPreference preference)
    {
        FastenerCandidate? longest = null;
        foreach (FastenerCandidate candidate in candidates)
        {
            if (candidate.Tip != tip || candidate.Hold != BiteVerdict.Bites)
            {
                continue;
            }

            if (preference == FastenerPreference.ShortestThatHolds && candidate.ReachesTarget)
            {
                return candidate;
            }

            longest = candidate;
        }

        return longest;
    }

    /// <summary>The length that the sheets' labels would have chosen, where it is not safe as the sheets really are; else null.</summary>
    private static FastenerCandidate? LabelTrap(FastenerJob job, StackNumbers stack, List<FastenerCandidate> candidates)
    {
        if (!stack.HasLabelOffSize(job.Layers))
        {
            return null;
        }

        List<FastenerCandidate> labelled = TryAll(stack.WithLabels(job.Layers), job.Series);
        int picked = Pick(labelled, TipVerdict.Safe, job.Preference) is { } pick ? labelled.IndexOf(pick) : -1;
        return picked >= 0 && candidates[picked].Tip != TipVerdict.Safe ? candidates[picked] : null;
    }

    private static List<DefaultUsed> DefaultsOf(FastenerJob job)
    {
        List<DefaultUsed> used = [];
        double shank = Door.Millimetres(job.Series.Shank);
        Add(job.SetDepth is null, new("set-depth", 1, "mm"), FastenerDefaults.SetDepthSource);
        Add(job.SetDepth is null, new("set-depth-deviation", 0.5, "mm"), FastenerDefaults.SetDepthSource);
        Add(job.DriveAngleIsDefault, new("drive-angle", 45, "deg"), FastenerDefaults.TongueAngleSource);
        Add(job.RequiredClearance is null, new("required-clearance", FastenerDefaults.Clearance(job.Behind.Kind), "mm"), FastenerDefaults.ClearanceSource);
        Add(job.LeastBite is null, new("least-bite", Grid.Snap(FastenerDefaults.LeastBiteDiameters * shank), "mm"), Sources.NdsMinimumPenetration);
        Add(job.TargetBite is null, new("target-bite", Grid.Snap(FastenerDefaults.TargetBiteDiameters * shank), "mm"), FastenerDefaults.TargetBiteSource);
        Add(job.MarginalChance is null, new("marginal-chance", FastenerDefaults.MarginalChance, string.Empty), FastenerDefaults.MarginalSource);
        Add(job.HitsLimit is null, new("hits-limit", FastenerDefaults.HitsLimit, string.Empty), FastenerDefaults.HitsSource);
        return used;

        void Add(bool taken, Figure figure, Source source)
        {
            if (taken)
            {
                used.Add(new DefaultUsed(figure, source));
            }
        }
    }

    /// <summary>exp(x) - 1 without loss near 0; x is never positive here.</summary>
    private static double Expm1(double x) => Math.Abs(x) < 1e-5 ? x * (1 + (x / 2)) : Math.Exp(x) - 1;

    /// <summary>log(1 + x) without loss near 0.</summary>
    private static double Log1p(double x) => Math.Abs(x) < 1e-4 ? x * (1 - (x / 2) + (x * x / 3)) : Math.Log(1 + x);
}
