using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>How stiff and how strong a sheet of plywood is in bending, by the direction of its face grain, from its lay-up.</summary>
/// <remarks>For a sheet whose table is not at hand. What comes out goes into the bending calculators as any sheet of a table does.</remarks>
public static class LayeredPly
{
    internal static readonly Allowed PlyThickness = new(Allowed.OneStep, 50, "mm");

    private const string CaseWords = "a lay-up of plies";

    private static readonly Allowed s_count = new(1, PlyLayUp.MostVeneers, "plies");
    private static readonly Allowed s_modulus = new(1, 100_000, "MPa");
    private static readonly Allowed s_strength = new(0.1, 1000, "MPa");
    private static readonly Allowed s_ratio = new(0, 1, string.Empty);

    /// <summary>Stiffness and strength in bending along and across the face grain.</summary>
    /// <param name="layUp">The plies and their figures.</param>
    /// <returns>Stiffness and strength of each direction, and the sheet's figures for the calculators that bend it.</returns>
    /// <remarks>
    /// <para>Formula: with z from the axis where the sum of E_i t_i z_i is none, E I = sum of E_i t_i (t_i²/12 + z_i²); E = 12 E I/t³, in stretching sum of E_i t_i over t; the sheet takes the
    /// curvature k = least of f_i/(E_i y_i), y_i the farther face of the ply from that axis, and f = 6 E I k/t². E_i is the ply's own with its grain and the cross ratio times it across.</para>
    /// <para>Validity: glued plies without voids, elastic; thicknesses as they are in the finished sheet. Shear between the plies is left out: spans, or bays of a bent sheet, of
    /// 30 thicknesses and more.</para>
    /// <para>Source: lay-up-bending (derived); default-ply-cross (default, judgement); birch-plies (from memory) for the plies of birch.</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="layUp"/>, its list or a ply is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range, or there are too few or too many plies.</exception>
    /// <exception cref="ArgumentException">A figure is not a number or in an undefined unit, or a direction or basis is undefined.</exception>
    /// <example><code>
    /// LayUpBending ply = LayeredPly.InBending(PlyLayUp.Birch(Mm(6.4), 5));
    /// Pressure stiff = ply.ElasticityAlong;               // 12737 MPa with the face grain, 4763 across it
    /// BentSheet easy = BentSheet.Of(ply.ToSheet("my ply"), BendGrain.AlongTheAxis);
    /// Length least = PanelBend.MinimumRadius(easy).Minimum; // 1050 mm
    /// </code></example>
    public static LayUpBending InBending(PlyLayUp layUp)
    {
        Door.IsMissing(layUp, new Name(nameof(layUp)), CaseWords, null);
        return new LayUpBending(layUp, Read(layUp, null)!);
    }

    /// <summary>All problems with the input of <see cref="InBending(PlyLayUp)"/>; nothing is thrown.</summary>
    /// <param name="layUp">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckInBending(PlyLayUp layUp)
    {
        List<InputProblem> problems = [];
        if (!Door.IsMissing(layUp, new Name(nameof(layUp)), CaseWords, problems))
        {
            Read(layUp, problems);
        }

        return problems;
    }

    /// <summary>The one formula body of a direction, for the numbers and for the workings. NaN stands for what no ply gives.</summary>
    internal static LayUpNumbers Solve<TTrace>(PlyNumbers[] plies, double crossRatio, bool along, Source source, TTrace trace)
        where TTrace : struct, ITrace
    {
        double place = 0, stretch = 0, moment = 0, second = 0;
        trace.Given("r", crossRatio, string.Empty, source, meaning: "stiffness of a ply across its grain over that along it");
        trace.Given("z", place, "mm", LayUpSources.Layers, meaning: "the first face");
        trace.Given("A", stretch, "N/mm", LayUpSources.Layers, meaning: "sum of E t");
        trace.Given("S", moment, "N", LayUpSources.Layers, meaning: "sum of E t z");
        trace.Given("J", second, "N mm", LayUpSources.Layers, meaning: "sum of E t (t²/12 + z²) from the first face");
        for (int i = 0; i < plies.Length; i++)
        {
            double thickness = plies[i].Thickness, plyElasticity = plies[i].Elasticity, elasticity, middle;
            trace.Given("t", thickness, "mm", source, i, "thickness of a ply");
            trace.Given("E0", plyElasticity, "MPa", source, i, "of the ply, with its grain");
            elasticity = plies[i].IsAlong == along
                ? trace.Step("E", nameof(elasticity), plyElasticity, "MPa", LayUpSources.Layers, i)
                : trace.Step("E", nameof(elasticity), crossRatio * plyElasticity, "MPa", LayUpSources.Layers, i);
            middle = trace.Step("m", nameof(middle), place + (thickness / 2), "mm", LayUpSources.Layers, i);
            stretch = trace.Step("A", nameof(stretch), stretch + (elasticity * thickness), "N/mm", LayUpSources.Layers, i);
            moment = trace.Step("S", nameof(moment), moment + (elasticity * thickness * middle), "N", LayUpSources.Layers, i);
            second = trace.Step("J", nameof(second), second + (elasticity * thickness * ((thickness * thickness / 12) + (middle * middle))), "N mm", LayUpSources.Layers, i);
            place = trace.Step("z", nameof(place), place + thickness, "mm", LayUpSources.Layers, i);
        }

        if (stretch <= 0)
        {
            return new LayUpNumbers(place, double.NaN, 0, double.NaN, -1, 0);
        }

        double axis, stiffness, sheetElasticity, stretchElasticity, curvature = double.NaN, sheetStrength = double.NaN;
        axis = trace.Step("z_n", nameof(axis), moment / stretch, "mm", LayUpSources.Layers);
        stiffness = trace.Step("EI", nameof(stiffness), second - (stretch * axis * axis), "N mm", LayUpSources.Layers);
        sheetElasticity = trace.Step(along ? "E_along" : "E_across", nameof(sheetElasticity), 12 * stiffness / (place * place * place), "MPa", LayUpSources.Layers);
        stretchElasticity = trace.Step(along ? "E_s_along" : "E_s_across", nameof(stretchElasticity), stretch / place, "MPa", LayUpSources.Layers);
        int weakest = -1;
        double lower = 0;
        for (int i = 0; i < plies.Length; i++)
        {
            double upper = lower + plies[i].Thickness;
            double elasticity = plies[i].Elasticity * (plies[i].IsAlong == along ? 1 : crossRatio), strength = plies[i].IsAlong == along ? plies[i].Strength : plies[i].CrossStrength;
            if (elasticity > 0 && !double.IsNaN(strength))
            {
                trace.Given("a", lower, "mm", LayUpSources.Layers, i, "where the ply begins");
                trace.Given("b", upper, "mm", LayUpSources.Layers, i, "where the ply ends");
                trace.Given("E", elasticity, "MPa", source, i, "of the ply in this direction");
                trace.Given("f", strength, "MPa", source, i, "of the ply in this direction");
                double farthest, own;
                farthest = trace.Step("y", nameof(farthest), Math.Max(Math.Abs(lower - axis), Math.Abs(upper - axis)), "mm", LayUpSources.Layers, i);
                own = trace.Step("kappa", nameof(own), strength / (elasticity * farthest), "1/mm", LayUpSources.Layers, i);
                if (weakest < 0 || own < curvature * (1 - 1e-12))
                {
                    weakest = i;
                    curvature = trace.Step("kappa", nameof(curvature), own, "1/mm", LayUpSources.Layers);
                }
            }

            lower = upper;
        }

        if (weakest >= 0)
        {
            sheetStrength = trace.Step(along ? "f_along" : "f_across", nameof(sheetStrength), 6 * stiffness * curvature / (place * place), "MPa", LayUpSources.Layers);
        }

        return new LayUpNumbers(place, axis, sheetElasticity, sheetStrength, weakest, stretchElasticity);
    }

    private static LayUpQuestion? Read(PlyLayUp layUp, List<InputProblem>? problems)
    {
        int before = problems?.Count ?? 0;
        double elasticity = Door.Megapascals(layUp.Elasticity, "layUp.Elasticity", s_modulus, problems);
        double strength = Door.Megapascals(layUp.BendingStrength, "layUp.BendingStrength", s_strength, problems);
        if (layUp.StrengthBasis is not (PlywoodStrengthBasis.Characteristic or PlywoodStrengthBasis.AllowableDesign))
        {
            Door.Report(new InputProblem("layUp.StrengthBasis", FormattableString.Invariant($"the undefined basis {(int)layUp.StrengthBasis}"), "Characteristic or AllowableDesign", isRange: false), problems);
        }

        double ratio = layUp.CrossRatio is { } given ? Door.Number(given, "layUp.CrossRatio", s_ratio, problems) : 0;
        double cross = layUp.CrossStrength is { } across ? Door.Megapascals(across, "layUp.CrossStrength", s_strength, problems) : double.NaN;
        if (Door.IsMissing(layUp.Veneers, new Name("layUp.Veneers"), "a list of plies", problems))
        {
            return null;
        }

        int count = layUp.Veneers.Count;
        if (!s_count.Holds(count))
        {
            Door.Report(new InputProblem("layUp.Veneers", Print.Number(count) + " plies", s_count.ToString(), isRange: true), problems);
            return null;
        }

        PlyNumbers[] plies = new PlyNumbers[count];
        double sheet = 0;
        for (int i = 0; i < count; i++)
        {
            Name name = new("layUp.Veneers", i);
            Veneer veneer = layUp.Veneers[i];
            if (Door.IsMissing(veneer, name, "a ply", problems))
            {
                continue;
            }

            double thickness = Door.Millimetres(veneer.Thickness, name.Then(".Thickness"), PlyThickness, problems);
            if (veneer.Direction is not (PlyDirection.Along or PlyDirection.Across))
            {
                Door.Report(new InputProblem(name.Then(".Direction").ToString(), FormattableString.Invariant($"the undefined direction {(int)veneer.Direction}"), "Along or Across", isRange: false), problems);
            }

            plies[i] = new PlyNumbers(
                thickness,
                veneer.Direction == PlyDirection.Along,
                veneer.Elasticity is { } own ? Door.Megapascals(own, name.Then(".Elasticity"), s_modulus, problems) : elasticity,
                veneer.BendingStrength is { } its ? Door.Megapascals(its, name.Then(".BendingStrength"), s_strength, problems) : strength,
                cross);
            sheet = Grid.Snap(sheet + thickness);
        }

        if (sheet > 200)
        {
            Door.Report(new InputProblem("layUp.Veneers", Print.Number(sheet) + " mm together", "plies of up to 200 mm together", isRange: true), problems);
        }

        return (problems?.Count ?? 0) > before ? null : new LayUpQuestion(plies, ratio, layUp.CrossRatio is null, layUp.Source ?? Sources.Given);
    }
}

/// <summary>One ply in mm and MPa; NaN for a strength across the grain that is not known.</summary>
internal readonly struct PlyNumbers(double thickness, bool isAlong, double elasticity, double strength, double crossStrength)
{
    internal double Thickness { get; } = thickness;

    internal bool IsAlong { get; } = isAlong;

    internal double Elasticity { get; } = elasticity;

    internal double Strength { get; } = strength;

    internal double CrossStrength { get; } = crossStrength;

    internal bool IsAs(in PlyNumbers other) => Thickness.Equals(other.Thickness) && IsAlong == other.IsAlong && Elasticity.Equals(other.Elasticity) && Strength.Equals(other.Strength);
}

/// <summary>A lay-up as plain numbers.</summary>
internal sealed class LayUpQuestion(PlyNumbers[] plies, double crossRatio, bool ratioIsDefault, Source source)
{
    internal bool RatioIsDefault { get; } = ratioIsDefault;

    internal double CrossRatio { get; } = crossRatio;

    internal bool FacesAreAlong => plies[0].IsAlong && plies[plies.Length - 1].IsAlong;

    internal bool CrossStrengthIsMissing => CrossRatio > 0 && double.IsNaN(plies[0].CrossStrength);

    /// <summary>Whether the lay-up is its own mirror image about the middle of the sheet.</summary>
    internal bool IsBalanced
    {
        get
        {
            for (int i = 0; i < plies.Length / 2; i++)
            {
                if (!plies[i].IsAs(plies[plies.Length - 1 - i]))
                {
                    return false;
                }
            }

            return true;
        }
    }

    internal LayUpNumbers Solve<TTrace>(bool along, TTrace trace)
        where TTrace : struct, ITrace => LayeredPly.Solve(plies, CrossRatio, along, source, trace);
}

/// <summary>What came out for one direction, in mm and MPa.</summary>
internal readonly struct LayUpNumbers(double thickness, double axis, double elasticity, double strength, int weakest, double stretchElasticity)
{
    internal double Thickness { get; } = thickness;

    /// <summary>Where the neutral axis lies, from the first face; NaN where no ply counts.</summary>
    internal double Axis { get; } = axis;

    internal double Elasticity { get; } = elasticity;

    internal double Strength { get; } = strength;

    /// <summary>The ply that reaches its strength first; -1 where none is known.</summary>
    internal int Weakest { get; } = weakest;

    internal double StretchElasticity { get; } = stretchElasticity;

    /// <summary>Whether the figures are within what the calculators that bend sheets take.</summary>
    internal bool IsUsable => Elasticity >= 1 && Strength >= 0.1;
}
