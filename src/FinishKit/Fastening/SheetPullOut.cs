using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>What pull along its axis a tapping screw holds in thin steel sheet, and what a steel sheet under its head holds.</summary>
/// <remarks>The screw itself, the ply under the head, pulls across the screw, repeated loads and a crash are not in it.</remarks>
public static class SheetPullOut
{
    /// <summary>The largest head or washer that counts.</summary>
    internal const double MostHead = 12.7;

    private static readonly Allowed s_sheet = new(Allowed.OneStep, 10, "mm");
    private static readonly Allowed s_diameter = new(Allowed.OneStep, 20, "mm");
    private static readonly Allowed s_head = new(Allowed.OneStep, 100, "mm");
    private static readonly Allowed s_strength = new(1, 2000, "MPa");

    /// <summary>The pull that draws a tapping screw out of the sheet that its thread is in.</summary>
    /// <param name="sheet">Thickness of the bare sheet, without paint or zinc [length], more than 0 up to 10 mm.</param>
    /// <param name="diameter">Nominal diameter of the screw, over its thread [length], more than 0 up to 20 mm.</param>
    /// <param name="strength">Tensile strength of the sheet [pressure], 1 to 2000 MPa.</param>
    /// <returns>The nominal and the allowable pull; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: P = 0.85 t d F_u; allowable P/3.</para>
    /// <para>Validity: steel sheet, a full thread through all of it; screws of 2.03 to 6.35 mm, else the value with the finding <c>fastening-sheet-screw-size</c>; screws three diameters apart and one and a half from an edge.</para>
    /// <para>Source: AISI-S100 (read in a copy).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is in an undefined unit.</exception>
    /// <example><code>
    /// SheetHold screw = SheetPullOut.PullOut(Mm(1), Mm(4.2), Pressure.FromMegapascals(270));
    /// Force draws = screw.Nominal;                        // 963.9 N: 0.85 · 1 · 4.2 · 270
    /// Force allowed = screw.Allowable;                    // 321.3 N, a third
    /// </code></example>
    public static SheetHold PullOut(Length sheet, Length diameter, Pressure strength) => Read(isPullOver: false, sheet, diameter, strength, null);

    /// <summary>All problems with the input of <see cref="PullOut(Length, Length, Pressure)"/>; nothing is thrown.</summary>
    /// <param name="sheet">As there.</param>
    /// <param name="diameter">As there.</param>
    /// <param name="strength">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckPullOut(Length sheet, Length diameter, Pressure strength)
    {
        List<InputProblem> problems = [];
        Read(isPullOver: false, sheet, diameter, strength, problems);
        return problems;
    }

    /// <summary>The pull at which a steel sheet under a screw's head, a clip or a strap, comes over the head.</summary>
    /// <param name="sheet">Thickness of the bare sheet under the head [length], more than 0 up to 10 mm.</param>
    /// <param name="head">Diameter of the head, or of its washer where that is larger [length], more than 0 up to 100 mm.</param>
    /// <param name="strength">Tensile strength of that sheet [pressure], 1 to 2000 MPa.</param>
    /// <returns>The nominal and the allowable pull; nothing is allocated.</returns>
    /// <remarks>
    /// <para>Formula: P = 1.5 t d_w F_u, d_w at most 12.7 mm; allowable P/3.</para>
    /// <para>Validity: steel under the head: not plywood. A head under 7.94 mm: the value with the finding <c>fastening-sheet-head-size</c>.</para>
    /// <para>Source: AISI-S100 (read in a copy).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">A value is in an undefined unit.</exception>
    /// <example><code>
    /// SheetHold clip = SheetPullOut.PullOver(Mm(1), Mm(10), Pressure.FromMegapascals(270));
    /// Force allowed = clip.Allowable;                     // 1350 N: 1.5 · 1 · 10 · 270/3
    /// </code></example>
    public static SheetHold PullOver(Length sheet, Length head, Pressure strength) => Read(isPullOver: true, sheet, head, strength, null);

    /// <summary>All problems with the input of <see cref="PullOver(Length, Length, Pressure)"/>; nothing is thrown.</summary>
    /// <param name="sheet">As there.</param>
    /// <param name="head">As there.</param>
    /// <param name="strength">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckPullOver(Length sheet, Length head, Pressure strength)
    {
        List<InputProblem> problems = [];
        Read(isPullOver: true, sheet, head, strength, problems);
        return problems;
    }

    /// <summary>The one formula body, for the numbers and for the workings.</summary>
    internal static (double Nominal, double Allowable) Solve<TTrace>(bool isPullOver, double sheet, double diameter, double strength, TTrace trace)
        where TTrace : struct, ITrace
    {
        double pull, allowable, safety = MetalDefaults.SafetyFactor;
        trace.Given("t", sheet, "mm", Sources.Given, meaning: "bare sheet");
        trace.Given(isPullOver ? "d_h" : "d", diameter, "mm", Sources.Given, meaning: isPullOver ? "head or washer" : "screw over its thread");
        trace.Given("F_u", strength, "MPa", Sources.Given, meaning: "tensile strength of the sheet");
        trace.Given("k", safety, string.Empty, MetalDefaults.Aisi, meaning: "safety factor");
        if (isPullOver)
        {
            double counted = trace.Step("d_w", nameof(counted), Math.Min(diameter, 12.7), "mm", MetalDefaults.Aisi);
            pull = trace.Step("P", nameof(pull), 1.5 * sheet * counted * strength, "N", MetalDefaults.Aisi);
        }
        else
        {
            pull = trace.Step("P", nameof(pull), 0.85 * sheet * diameter * strength, "N", MetalDefaults.Aisi);
        }

        allowable = trace.Step("P_a", nameof(allowable), pull / safety, "N", MetalDefaults.Aisi);
        return (pull, allowable);
    }

    internal static double Strength(Pressure strength, string parameter, List<InputProblem>? problems) => Door.Megapascals(strength, parameter, s_strength, problems);

    private static SheetHold Read(bool isPullOver, Length sheet, Length diameter, Pressure strength, List<InputProblem>? problems)
    {
        double t = Door.Millimetres(sheet, nameof(sheet), s_sheet, problems);
        double d = isPullOver ? Door.Millimetres(diameter, "head", s_head, problems) : Door.Millimetres(diameter, nameof(diameter), s_diameter, problems);
        double f = Strength(strength, nameof(strength), problems);
        return problems is { Count: > 0 } ? default : new SheetHold(isPullOver, t, d, f);
    }
}
