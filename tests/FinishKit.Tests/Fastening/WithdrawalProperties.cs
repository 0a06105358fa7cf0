using System;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>What holds for every wood, shank and depth. Values are whole micrometres and thousandths, so that edges are met exactly.</summary>
public sealed class WithdrawalProperties
{
    [Property]
    public bool A_nail_holds_in_proportion_to_its_depth(PositiveInt gravity, PositiveInt shank, PositiveInt depth, PositiveInt times)
    {
        (OvendrySpecificGravity g, Length d, double p, int k) = (Gravity(gravity), Shank(shank), Depth(depth) / 10, 1 + (times.Get % 10));
        double one = Withdrawal.NdsNail(g, d, Mm(p)).Force.Newtons, all = Withdrawal.NdsNail(g, d, Mm(k * p)).Force.Newtons;
        SpecificGravityAt12 at12 = new(g.Value);
        double oneTest = Withdrawal.HandbookNail(at12, d, Mm(p)).Force.Newtons, allTest = Withdrawal.HandbookNail(at12, d, Mm(k * p)).Force.Newtons;
        return Near(k * one, all) && Near(k * oneTest, allTest);
    }

    [Property]
    public bool A_nail_holds_in_proportion_to_its_thickness(PositiveInt gravity, PositiveInt shank, PositiveInt depth, PositiveInt times)
    {
        (OvendrySpecificGravity g, double d, Length p, int k) = (Gravity(gravity), Micrometres(shank, 2000), Mm(Depth(depth)), 1 + (times.Get % 10));
        SpecificGravityAt12 at12 = new(g.Value);
        return Near(k * Withdrawal.NdsNail(g, Mm(d), p).Force.Newtons, Withdrawal.NdsNail(g, Mm(k * d), p).Force.Newtons)
            && Near(k * Withdrawal.HandbookNail(at12, Mm(d), p).Force.Newtons, Withdrawal.HandbookNail(at12, Mm(k * d), p).Force.Newtons);
    }

    [Property]
    public bool Denser_wood_holds_more_by_every_method(PositiveInt gravity, PositiveInt shank, PositiveInt depth)
    {
        (double g, Length d, Length p) = (0.1 + (gravity.Get % 1199 / 1000.0), Shank(shank), Mm(Depth(depth)));
        double more = g + 0.001;
        Angle across = Angle.FromDegrees(90);
        return Withdrawal.NdsNail(new(g), d, p).Force.Newtons < Withdrawal.NdsNail(new(more), d, p).Force.Newtons
            && Withdrawal.NdsWoodScrew(new(g), d, p).Force.Newtons < Withdrawal.NdsWoodScrew(new(more), d, p).Force.Newtons
            && Withdrawal.NdsLagScrew(new(g), d, p).Force.Newtons < Withdrawal.NdsLagScrew(new(more), d, p).Force.Newtons
            && Withdrawal.HandbookNail(new(g), d, p).Force.Newtons < Withdrawal.HandbookNail(new(more), d, p).Force.Newtons
            && Withdrawal.HandbookWoodScrew(new(g), d, p).Force.Newtons < Withdrawal.HandbookWoodScrew(new(more), d, p).Force.Newtons
            && Withdrawal.HandbookLagScrew(new(g), d, p).Force.Newtons < Withdrawal.HandbookLagScrew(new(more), d, p).Force.Newtons
            && Withdrawal.Eurocode5Screw(new(1000 * g), d, p, across).Force.Newtons < Withdrawal.Eurocode5Screw(new(1000 * more), d, p, across).Force.Newtons
            && (Withdrawal.Eurocode5SmoothNail(new(1000 * g), d, p) is var nail && (nail.HasProblem || nail.Force.Newtons < Withdrawal.Eurocode5SmoothNail(new(1000 * more), d, p).Force.Newtons));
    }

    [Property]
    public bool Inches_and_millimetres_give_one_answer(PositiveInt gravity, PositiveInt shank64ths, PositiveInt depth64ths)
    {
        (int d, int p) = (1 + (shank64ths.Get % 50), depth64ths.Get % 1200);
        WithdrawalCapacity inch = Withdrawal.NdsNail(Gravity(gravity), Length.FromInches(d / 64.0), Length.FromInches(p / 64.0));
        WithdrawalCapacity millimetre = Withdrawal.NdsNail(Gravity(gravity), Mm(d * 25.4 / 64), Mm(p * 25.4 / 64));
        return inch == millimetre && inch.Force.Newtons.Equals(millimetre.Force.Newtons) && inch.Findings.Count == millimetre.Findings.Count;
    }

    [Property]
    public bool Six_diameters_exactly_met_are_met(PositiveInt gravity, PositiveInt shank, int past)
    {
        // The edge itself, one grid step under it and over it, and anything near.
        double d = Micrometres(shank, 20_000), offset = (past % 3) * 1e-6;
        bool word = Withdrawal.NdsNail(Gravity(gravity), Mm(d), Mm(Math.Max(0, (6 * d) + offset))).Findings.Count > 0;
        return word == (offset < 0);
    }

    [Property]
    public bool Eurocode5_gives_a_smooth_nail_nothing_up_to_eight_diameters(PositiveInt shank, PositiveInt share)
    {
        double d = Micrometres(shank, 20_000);
        WithdrawalCapacity nail = Withdrawal.Eurocode5SmoothNail(new(350), Mm(d), Mm(8 * d * (share.Get % 1001) / 1000));
        return nail.Force.Newtons == 0 && nail.HasProblem;
    }

    [Property]
    public bool Eurocode5_does_not_jump_at_eight_or_twelve_diameters(PositiveInt shank, PositiveInt density)
    {
        double d = 1 + Micrometres(shank, 19_000);
        CharacteristicDensity rho = new(100 + (density.Get % 1200));
        double At(double diameters, double step) => Withdrawal.Eurocode5SmoothNail(rho, Mm(d), Mm((diameters * d) + step)).Force.Newtons;
        double whole = At(12, 0);
        return Math.Abs(At(8, 1e-6) - At(8, -1e-6)) <= 2e-6 * whole && Math.Abs(At(12, 1e-6) - At(12, -1e-6)) <= 2e-6 * whole;
    }

    [Property]
    public bool Eurocode5_deeper_never_holds_less(PositiveInt shank, PositiveInt depth)
    {
        (double d, double p) = (Micrometres(shank, 20_000), Depth(depth));
        Eurocode5Nail nail = new(new(350), Mm(d), Mm(2 * d), Mm(12), Mm(p)) { PermanentLoad = false };
        return Withdrawal.Eurocode5SmoothNail(nail).Force.Newtons <= Withdrawal.Eurocode5SmoothNail(nail with { PointPenetration = Mm(Math.Min(500, p + 0.5)) }).Force.Newtons + 1e-9;
    }

    [Property]
    public bool The_answer_is_reported_as_a_problem_exactly_when_a_finding_is(PositiveInt shank, PositiveInt depth, bool permanent)
    {
        WithdrawalCapacity nail = Withdrawal.Eurocode5SmoothNail(new Eurocode5Nail(new(350), Shank(shank), Mm(40), Mm(12), Mm(Depth(depth))) { PermanentLoad = permanent });
        bool problem = false;
        foreach (Finding finding in nail.Findings)
        {
            problem |= finding.Severity == Severity.Problem;
        }

        return nail.HasProblem == problem;
    }

    private static OvendrySpecificGravity Gravity(PositiveInt thousandths) => new(0.1 + (thousandths.Get % 1201 / 1000.0));

    private static Length Shank(PositiveInt micrometres) => Mm(Micrometres(micrometres, 20_000));

    private static double Depth(PositiveInt hundredths) => (1 + (hundredths.Get % 50_000)) / 100.0;

    private static double Micrometres(PositiveInt micrometres, int most) => (1 + (micrometres.Get * 37L % most)) / 1000.0;

    private static bool Near(double a, double b) => Math.Abs(a - b) <= 1e-9 * Math.Max(Math.Abs(a), Math.Abs(b));
}
