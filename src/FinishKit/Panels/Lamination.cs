using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>Thin layers glued over a form: how far they spring back, which form to make, how tight they go; and thin layers against one thick sheet.</summary>
public static class Lamination
{
    internal static readonly Allowed Count = new(1, LaminatedBend.MostLayers, "layers");
    internal static readonly Allowed AnyDensity = new(double.MinValue, double.MaxValue, "kg/m3");

    private const string CaseWords = "layers over a form";
    private const string ChoiceWords = "layers and a sheet to compare";

    private static readonly Allowed s_radius = new(Allowed.OneStep, 1e6, "mm");
    private static readonly Allowed s_ratio = new(0.05, 20, string.Empty);
    private static readonly Allowed s_more = new(2, LaminatedBend.MostLayers, "layers");
    private static readonly BentSheetNames s_layer = new("choice.Layer"), s_sheet = new("choice.Sheet");

    /// <summary>The form that gives a wanted radius.</summary>
    /// <param name="bend">The layers, and the radius that they are to have when they come off the form.</param>
    /// <returns>The form's radius, the spring-back, and whether each layer takes the form.</returns>
    /// <remarks>
    /// <para>Formula: spring-back s = sum of E_i t_i³/12 over E I of all layers glued, 1/n² for n equal ones, 1/(1 + r (n² - 1)) where a layer is r times as stiff in stretching as in bending;
    /// R_form = R (1 - s); r is 1 unless given. A layer takes the form where its own radius on it, R_form less half the whole and plus its middle, is no less than its least one, F E t/(2 f) or a published one.</para>
    /// <para>Validity: layers that were flat, bent elastically and glued without slip; radii large against the thickness; no creep, no moisture from the glue. In the glued layers the stress
    /// may be up to an eighth greater than it was on the form, which the factor on the radius takes up.</para>
    /// <para>Source: spring-back, bend-elastic (derived); CAMBER-LOST (read in a copy) for 1/n²; default-bend-factor, default-bend-factor-allowable, default-stretch-ratio (default, judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="bend"/>, its list or a layer is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or there are too few or too many layers.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit, or the grain is undefined.</exception>
    /// <example><code>
    /// BentSheet thin = new(Mm(3), Pressure.FromMegapascals(12000), Pressure.FromMegapascals(60));
    /// LaminationResult arch = Lamination.ToRadius(LaminatedBend.Of(thin, 4, Mm(800)));
    /// Length? form = arch.FormRadius;                     // 750 mm: 4 layers give back a sixteenth
    /// bool takesIt = arch.Passes;                         // true: 600 mm are allowed, the inner layer takes 745.5
    /// </code></example>
    public static LaminationResult ToRadius(LaminatedBend bend)
    {
        Door.IsMissing(bend, new Name(nameof(bend)), CaseWords, null);
        return new LaminationResult(bend, Read(bend, null)!, false);
    }

    /// <summary>All problems with the input of <see cref="ToRadius(LaminatedBend)"/>; nothing is thrown.</summary>
    /// <param name="bend">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckToRadius(LaminatedBend bend) => Check(bend);

    /// <summary>The radius that comes off a form: the inverse of <see cref="ToRadius(LaminatedBend)"/>.</summary>
    /// <param name="bend">The layers, and the radius that they have on the form.</param>
    /// <returns>The radius off the form, the spring-back, and whether each layer takes the form.</returns>
    /// <remarks>
    /// <para>Formula: R = R_form/(1 - s); the rest as there.</para>
    /// <para>Validity: as there.</para>
    /// <para>Source: spring-back, bend-elastic (derived); CAMBER-LOST (read in a copy) for 1/n²; default-bend-factor, default-bend-factor-allowable, default-stretch-ratio (default, judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="bend"/>, its list or a layer is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or there are too few or too many layers.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit, or the grain is undefined.</exception>
    /// <example><code>
    /// BentSheet veneer = new(Mm(3), Pressure.FromMegapascals(12000), Pressure.FromMegapascals(60));
    /// LaminationResult off = Lamination.OnForm(LaminatedBend.Of(veneer, 2, Mm(900)));
    /// Length? radius = off.Radius;                        // 1200 mm: two layers give back a quarter of the curvature
    /// </code></example>
    public static LaminationResult OnForm(LaminatedBend bend)
    {
        Door.IsMissing(bend, new Name(nameof(bend)), CaseWords, null);
        return new LaminationResult(bend, Read(bend, null)!, true);
    }

    /// <summary>All problems with the input of <see cref="OnForm(LaminatedBend)"/>; nothing is thrown.</summary>
    /// <param name="bend">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckOnForm(LaminatedBend bend) => Check(bend);

    /// <summary>Thin layers, each bent on the one behind it, against one thick sheet on the same surface.</summary>
    /// <param name="choice">Layer, number, sheet and surface.</param>
    /// <returns>Thickness, stiffness, mass and least radius of both, and which of them follows.</returns>
    /// <remarks>
    /// <para>Formula: each layer is judged as a sheet of its own, R_min = F E t/(2 f), on a surface nearer the centre by the layers behind it; loose layers are n E t³/12 stiff, glued ones
    /// 1 + r (n² - 1) times that, r 1 unless given.</para>
    /// <para>Validity: as for a bent sheet: dry, three rows at least, bays up to 0.4 of the radius. Loose layers slide on each other; glued ones hold as one only after the glue has cured, and of plywood only as far as r is known.</para>
    /// <para>Source: bend-elastic, bend-hold-down, bend-worst-rows, bend-stiffness, spring-back (derived); default-bend-factor, default-bend-factor-allowable, default-stretch-ratio (default, judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="choice"/> or one of its sheets is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is not a number or in an undefined unit, or the grain is undefined.</exception>
    /// <example><code>
    /// BentSheet six = new(Mm(6.4), Pressure.FromMegapascals(12737), Pressure.FromMegapascals(50.9));
    /// BentSheet twelve = new(Mm(12), Pressure.FromMegapascals(10719), Pressure.FromMegapascals(42.9));
    /// LayersComparison two = Lamination.Compare(new LayersOrSheet(six, 2, twelve, Mm(3818)) { Rows = BentSheet.EqualRows(Mm(1516), 3) });
    /// bool layersFollow = two.LayersFollow;               // true: 1602 mm are allowed, 2539 taken
    /// bool sheetFollows = two.SheetFollows;               // false: 2998 mm are allowed, 2541 taken
    /// </code></example>
    public static LayersComparison Compare(LayersOrSheet choice)
    {
        Door.IsMissing(choice, new Name(nameof(choice)), ChoiceWords, null);
        return new LayersComparison(choice, Read(choice, null));
    }

    /// <summary>All problems with the input of <see cref="Compare(LayersOrSheet)"/>; nothing is thrown.</summary>
    /// <param name="choice">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckCompare(LayersOrSheet choice)
    {
        List<InputProblem> problems = [];
        if (!Door.IsMissing(choice, new Name(nameof(choice)), ChoiceWords, problems))
        {
            Read(choice, problems);
        }

        return problems;
    }

    /// <summary>The one formula body, for the numbers and for the workings: from the radius given to the other one, and each layer on the form.</summary>
    internal static LaminationNumbers Solve<TTrace>(LaminationQuestion question, bool isForm, TTrace trace)
        where TTrace : struct, ITrace
    {
        BendLimit[] layers = question.Layers;
        double springBack = SpringBack(question, trace), radius = question.Radius, whole = 0;
        foreach (BendLimit layer in layers)
        {
            whole += layer.Thickness;
        }

        // All of it springs back, but for the last bits of the sums.
        double form = double.NaN, final = double.NaN;
        bool isFlat = layers.Length == 1 || 1 - springBack < 1e-12;
        trace.Given("R_0", radius, "mm", Sources.Given, meaning: isForm ? "radius on the form, to the middle" : "radius that is wanted, to the middle");
        if (isForm)
        {
            form = trace.Step("R_form", nameof(form), radius, "mm", LaminationDefaults.SpringBack);
            final = isFlat ? double.NaN : trace.Step("R_off", nameof(final), radius / (1 - springBack), "mm", LaminationDefaults.SpringBack);
        }
        else if (!isFlat)
        {
            form = trace.Step("R_form", nameof(form), radius * (1 - springBack), "mm", LaminationDefaults.SpringBack);
            final = trace.Step("R_off", nameof(final), radius, "mm", LaminationDefaults.SpringBack);
        }

        int governs = 0;
        double least = 0, margin = double.PositiveInfinity, place = 0;
        for (int i = 0; i < layers.Length; i++)
        {
            double inside = (whole / 2) - place - (layers[i].Thickness / 2), own = layers[i].Minimum + inside;
            place += layers[i].Thickness;
            if (i == 0 || own > least * (1 + 1e-12))
            {
                (governs, least) = (i, own);
            }

            margin = double.IsNaN(form) ? double.NaN : Math.Min(margin, Grid.Snap(form - inside) - Grid.Snap(layers[i].Minimum));
        }

        // The layer that allows least is worked out in full.
        double minimum = BendQuestion.SolveMinimum(layers[governs], trace), offset = least - layers[governs].Minimum, smallestForm, layerRadius = double.NaN;
        trace.Given("o", offset, "mm", LaminationDefaults.SpringBack, meaning: "how far the layer's middle lies inside the middle of all");
        trace.Given("R_min", minimum, "mm", Sources.BendElastic, meaning: "the tightest that the layer takes, to its middle");
        smallestForm = trace.Step("R_least", nameof(smallestForm), minimum + offset, "mm", LaminationDefaults.SpringBack);
        if (!double.IsNaN(form))
        {
            layerRadius = trace.Step("R_l", nameof(layerRadius), form - offset, "mm", LaminationDefaults.SpringBack);
        }

        return new LaminationNumbers(springBack, whole, form, final, smallestForm, governs, layerRadius, minimum) { Passes = margin >= 0, IsFlat = isFlat };
    }

    /// <summary>Share of the curvature that is lost.</summary>
    internal static double SpringBack<TTrace>(LaminationQuestion question, TTrace trace)
        where TTrace : struct, ITrace
    {
        BendLimit[] layers = question.Layers;
        double count = layers.Length, stretchRatio = question.StretchRatio, springBack;
        bool isEqual = true;
        foreach (BendLimit layer in layers)
        {
            isEqual &= layer.Thickness.Equals(layers[0].Thickness) && layer.Elasticity.Equals(layers[0].Elasticity);
        }

        trace.Given("r", stretchRatio, string.Empty, question.RatioIsDefault ? LaminationDefaults.StretchRatio : Sources.Given, meaning: "stiffness of a layer in stretching over that in bending");
        if (isEqual)
        {
            trace.Given("n", count, string.Empty, Sources.Given, meaning: "equal layers");
            springBack = trace.Step("s", nameof(springBack), 1 / (1 + (stretchRatio * ((count * count) - 1))), string.Empty, LaminationDefaults.SpringBack);
            return springBack;
        }

        double place = 0, alone = 0, stretch = 0, first = 0, second = 0;
        trace.Given("z", place, "mm", LaminationDefaults.SpringBack, meaning: "the inner face");
        trace.Given("B", alone, "N mm", LaminationDefaults.SpringBack, meaning: "sum of E t³/12");
        trace.Given("A", stretch, "N/mm", LaminationDefaults.SpringBack, meaning: "sum of E t");
        trace.Given("S", first, "N", LaminationDefaults.SpringBack, meaning: "sum of E t z");
        trace.Given("J", second, "N mm", LaminationDefaults.SpringBack, meaning: "sum of E t z²");
        for (int i = 0; i < layers.Length; i++)
        {
            double thickness = layers[i].Thickness, elasticity = layers[i].Elasticity, middle;
            trace.Given("t", thickness, "mm", layers[i].Source, i);
            trace.Given("E", elasticity, "MPa", layers[i].Source, i);
            middle = trace.Step("m", nameof(middle), place + (thickness / 2), "mm", LaminationDefaults.SpringBack, i);
            alone = trace.Step("B", nameof(alone), alone + (elasticity * thickness * thickness * thickness / 12), "N mm", LaminationDefaults.SpringBack, i);
            stretch = trace.Step("A", nameof(stretch), stretch + (elasticity * thickness), "N/mm", LaminationDefaults.SpringBack, i);
            first = trace.Step("S", nameof(first), first + (elasticity * thickness * middle), "N", LaminationDefaults.SpringBack, i);
            second = trace.Step("J", nameof(second), second + (elasticity * thickness * middle * middle), "N mm", LaminationDefaults.SpringBack, i);
            place = trace.Step("z", nameof(place), place + thickness, "mm", LaminationDefaults.SpringBack, i);
        }

        springBack = trace.Step("s", nameof(springBack), alone / (alone + (stretchRatio * (second - (first * first / stretch)))), string.Empty, LaminationDefaults.SpringBack);
        return springBack;
    }

    private static List<InputProblem> Check(LaminatedBend bend)
    {
        List<InputProblem> problems = [];
        if (!Door.IsMissing(bend, new Name(nameof(bend)), CaseWords, problems))
        {
            Read(bend, problems);
        }

        return problems;
    }

    private static LaminationQuestion? Read(LaminatedBend bend, List<InputProblem>? problems)
    {
        double radius = Door.Millimetres(bend.Radius, "bend.Radius", s_radius, problems);
        double ratio = bend.StretchRatio is { } given ? Door.Number(given, "bend.StretchRatio", s_ratio, problems) : 1;
        if (Door.IsMissing(bend.Layers, new Name("bend.Layers"), "a list of layers", problems))
        {
            return null;
        }

        if (!Count.Holds(bend.Layers.Count))
        {
            Door.Report(new InputProblem("bend.Layers", Print.Number(bend.Layers.Count) + " layers", Count.ToString(), isRange: true), problems);
            return null;
        }

        BendLimit[] layers = new BendLimit[bend.Layers.Count];
        bool isPlywood = false;
        for (int i = 0; i < layers.Length; i++)
        {
            layers[i] = BendLimit.Read(bend.Layers[i], new BentSheetNames(FormattableString.Invariant($"bend.Layers[{i}]")), problems);
            isPlywood |= bend.Layers[i]?.Goods is not null;
        }

        return new LaminationQuestion(layers, radius, ratio, bend.StretchRatio is null, isPlywood);
    }

    private static ComparisonQuestion Read(LayersOrSheet choice, List<InputProblem>? problems)
    {
        BendLimit layer = BendLimit.Read(choice.Layer, s_layer, problems), sheet = BendLimit.Read(choice.Sheet, s_sheet, problems);
        double count = Door.Number(choice.Layers, "choice.Layers", s_more, problems);
        double wall = BendLimit.ReadWall(choice.WallRadius, Math.Max(sheet.Thickness, count * layer.Thickness), "choice.WallRadius", problems);
        double[]? positions = choice.Rows is null ? null : ArcRows.Read(choice.Rows, "choice.Rows", problems);
        double ratio = choice.StretchRatio is { } given ? Door.Number(given, "choice.StretchRatio", s_ratio, problems) : 1;
        double density = choice.Density is { } dense ? Door.KilogramsPerCubicMetre(dense, "choice.Density", Densities.Density, problems) : double.NaN;
        ArcRows? rows = positions is null ? null : new ArcRows(positions);
        (double curvature, Source source) = ArcRows.RatioOf(rows, wall < 0, SheetBacking.StripsAtRows);

        // On a hollow surface the layer nearest the room is bent most, on a bulging one the one at the back.
        double behind = wall > 0 ? wall - ((count - 1) * layer.Thickness) : wall;
        return new ComparisonQuestion(new BendQuestion(layer, behind, curvature, source), new BendQuestion(sheet, wall, curvature, source), count, rows, ratio, density)
        {
            RatioIsDefault = choice.StretchRatio is null,
            RatioIsUnknown = choice.StretchRatio is null && choice.Layer?.Goods is not null,
        };
    }
}

/// <summary>Layers over a form as plain numbers.</summary>
internal sealed class LaminationQuestion(BendLimit[] layers, double radius, double stretchRatio, bool ratioIsDefault, bool isPlywood)
{
    internal BendLimit[] Layers { get; } = layers;

    internal double Radius { get; } = radius;

    internal double StretchRatio { get; } = stretchRatio;

    internal bool RatioIsDefault { get; } = ratioIsDefault;

    /// <summary>Whether a layer is plywood and nothing was said about its stiffness in stretching.</summary>
    internal bool RatioIsUnknown { get; } = ratioIsDefault && isPlywood;
}

/// <summary>What came out, in mm; NaN for a radius that there is none of.</summary>
internal readonly struct LaminationNumbers(double springBack, double thickness, double form, double final, double smallestForm, int governs, double layerRadius, double layerMinimum)
{
    internal double SpringBack { get; } = springBack;

    internal double Thickness { get; } = thickness;

    internal double Form { get; } = form;

    internal double Final { get; } = final;

    internal double SmallestForm { get; } = smallestForm;

    /// <summary>The layer that asks for the largest form.</summary>
    internal int Governs { get; } = governs;

    internal double LayerRadius { get; } = layerRadius;

    internal double LayerMinimum { get; } = layerMinimum;

    internal bool Passes { get; init; }

    /// <summary>Whether everything springs back.</summary>
    internal bool IsFlat { get; init; }
}

/// <summary>Layers and a sheet on one surface, as plain numbers.</summary>
internal readonly struct ComparisonQuestion(in BendQuestion layer, in BendQuestion sheet, double count, ArcRows? rows, double stretchRatio, double density)
{
    /// <summary>The layer that is bent most.</summary>
    internal BendQuestion Layer { get; } = layer;

    internal BendQuestion Sheet { get; } = sheet;

    internal double Count { get; } = count;

    internal ArcRows? Rows { get; } = rows;

    internal double Density { get; } = density;

    internal bool RatioIsDefault { get; init; }

    /// <summary>Whether the layers are plywood and nothing was said about their stiffness in stretching.</summary>
    internal bool RatioIsUnknown { get; init; }

    internal double Thickness => Count * Layer.Limit.Thickness;

    internal ArcReach Reach => new(Rows?.LongestBay ?? double.NaN, Rows?.End ?? double.NaN, Math.Min(Layer.Solve(default(Silent)).Middle, Sheet.Solve(default(Silent)).Middle));

    /// <summary>Stiffness of loose and of glued layers over that of the sheet.</summary>
    internal (double Loose, double Glued) Solve<TTrace>(TTrace trace)
        where TTrace : struct, ITrace
    {
        double n = Count, layerStiffness = Layer.Limit.Stiffness, sheetStiffness = Sheet.Limit.Stiffness, ratio = stretchRatio, loose, glued;
        trace.Given("n", n, string.Empty, Sources.Given, meaning: "layers");
        trace.Given("B_l", layerStiffness, "N mm", Sources.SheetStiffness, meaning: "E t³/12 of a layer");
        trace.Given("B_s", sheetStiffness, "N mm", Sources.SheetStiffness, meaning: "E t³/12 of the sheet");
        trace.Given("r", ratio, string.Empty, RatioIsDefault ? LaminationDefaults.StretchRatio : Sources.Given, meaning: "stiffness of a layer in stretching over that in bending");
        loose = trace.Step("q_l", nameof(loose), n * layerStiffness / sheetStiffness, string.Empty, Sources.SheetStiffness);
        glued = trace.Step("q_g", nameof(glued), loose * (1 + (ratio * ((n * n) - 1))), string.Empty, LaminationDefaults.SpringBack);
        return (loose, glued);
    }
}
