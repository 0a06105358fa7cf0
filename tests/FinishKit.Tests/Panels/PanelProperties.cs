using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;
using static FinishKit.Measure;

namespace FinishKit.Tests.Panels;

/// <summary>What holds for every sheet, radius and set of rows. Rows a millimetre apart and rows of one bay are among those generated.</summary>
public sealed class PanelProperties
{
    [Property]
    public bool The_least_radius_grows_with_thickness_and_stiffness_and_falls_with_strength(PositiveInt tenths, PositiveInt modulus, PositiveInt strength)
    {
        (double t, double e, double f) = ((1 + (tenths.Get % 500)) / 10.0, 100 + (modulus.Get % 20_000), (5 + (strength.Get % 1000)) / 10.0);
        double radius = PanelBend.MinimumRadius(Sheet(t, e, f)).Minimum.Millimeters;
        return Near(PanelBend.MinimumRadius(Sheet(2 * t, e, f)).Minimum.Millimeters, 2 * radius) && Near(PanelBend.MinimumRadius(Sheet(t, 3 * e, f)).Minimum.Millimeters, 3 * radius)
            && Near(PanelBend.MinimumRadius(Sheet(t, e, 2 * f)).Minimum.Millimeters, radius / 2) && Near(PanelBend.MinimumRadius(Sheet(t, e, f) with { Factor = 3 }).Minimum.Millimeters, 1.5 * radius);
    }

    [Property]
    public bool Forces_and_their_moments_are_in_balance(PositiveInt radius, NonEmptyArray<PositiveInt> bays, bool bulging)
    {
        double[] rows = Rows(bays.Get);
        IReadOnlyList<RowPull> pulls = HoldDown.OnArc(Case(rows, Radius(radius, bulging))).Rows;
        double size = pulls.Max(static row => Math.Abs(row.Pull.Newtons)), length = rows[^1] - rows[0];
        return Math.Abs(pulls.Sum(static row => row.Pull.Newtons)) <= 1e-7 * size && Math.Abs(pulls.Sum(row => row.Pull.Newtons * (row.Position.Millimeters - rows[0]))) <= 1e-7 * size * length;
    }

    [Property]
    public bool No_rows_bend_a_sheet_more_than_half_as_tight_again(PositiveInt radius, NonEmptyArray<PositiveInt> bays)
    {
        double[] rows = Rows(bays.Get);
        HoldDownResult held = HoldDown.OnArc(Case(rows, Radius(radius, false)));
        return rows.Length == 2 ? held.CurvatureRatio == 0
            : held.CurvatureRatio is > 1 - 1e-9 and < 1.5 + 1e-9 && (rows.Length != 3 || Math.Abs(held.CurvatureRatio - 1.5) < 1e-9)
                && Near(held.PeakRadius!.Value.Millimeters, held.MiddleRadius!.Value.Millimeters / held.CurvatureRatio);
    }

    [Property]
    public bool Mirrored_rows_have_mirrored_pulls(PositiveInt radius, NonEmptyArray<PositiveInt> bays)
    {
        double[] rows = Rows(bays.Get);
        HoldDownResult one = HoldDown.OnArc(Case(rows, Radius(radius, false))), mirrored = HoldDown.OnArc(Case([.. rows.Reverse().Select(row => Math.Round(rows[^1] - row, 6))], Radius(radius, false)));
        double size = one.Rows.Max(static row => Math.Abs(row.Pull.Newtons));
        return one.Rows.Zip(mirrored.Rows.Reverse(), (a, b) => Math.Abs(a.Pull.Newtons - b.Pull.Newtons) <= 1e-7 * size).All(static same => same)
            && Near(one.CurvatureRatio, mirrored.CurvatureRatio) && Math.Abs(one.StandOff.Millimeters - mirrored.StandOff.Millimeters) <= 2e-6 + (1e-7 * one.StandOff.Millimeters);
    }

    [Property]
    public bool A_tighter_wall_pulls_more_and_stiffness_in_proportion(PositiveInt radius, NonEmptyArray<PositiveInt> bays)
    {
        double[] rows = Rows(bays.Get);
        double r = Radius(radius, false);
        HoldDownResult wide = HoldDown.OnArc(Case(rows, r)), tight = HoldDown.OnArc(Case(rows, r * 0.75)), stiff = HoldDown.OnArc(Case(rows, r) with { Sheet = Sheet(6, 10_000, 30) });
        return rows.Length == 2 ? wide.GreatestPull.Newtons == 0
            : tight.GreatestPull.Newtons > wide.GreatestPull.Newtons && tight.StandOff.Millimeters >= wide.StandOff.Millimeters && Near(stiff.GreatestPull.Newtons, 2 * wide.GreatestPull.Newtons);
    }

    [Property]
    public bool Another_solver_gives_the_same_pulls(PositiveInt radius, NonEmptyArray<PositiveInt> bays)
    {
        // Up to five bays that differ at most by ten: the oracle's own system gets ill beyond that.
        double[] rows = Rows([.. bays.Get.Take(5)], 10, 100);
        SplineOracle oracle = new(rows);
        double r = Radius(radius, false) - 3;
        HoldDownResult held = HoldDown.OnArc(Case(rows, r + 3));
        double size = held.Rows.Max(static row => Math.Abs(row.Pull.Newtons)) + 1e-9;
        return Enumerable.Range(0, rows.Length).All(i => Math.Abs((oracle.Force(i) * 90_000 / r * 500) - held.Rows[i].Pull.Newtons) <= 1e-5 * size);
    }

    [Property]
    public bool Inches_and_millimetres_give_the_same(PositiveInt sixteenths, PositiveInt inches)
    {
        double[] rows = [0, 1 + (sixteenths.Get % 400), 2 + (2 * (sixteenths.Get % 400))];
        double r = 20 + (inches.Get % 500);
        HoldDownResult metric = HoldDown.OnArc(new HoldDownCase(Sheet(6.35, 5000, 30), Mm(r * 25.4), [.. rows.Select(static row => Mm(row * 25.4))], Mm(508)));
        HoldDownResult imperial = HoldDown.OnArc(new HoldDownCase(new BentSheet(Length.FromInches(0.25), Pressure.FromGigapascals(5), Pressure.FromMegapascals(30)), Length.FromInches(r), [.. rows.Select(static row => Length.FromInches(row))], Length.FromInches(20)));
        return metric.Panel.Equals(imperial.Panel) && metric.Panel.GetHashCode() == imperial.Panel.GetHashCode() && metric.Figures().SequenceEqual(imperial.Figures());
    }

    [Property]
    public bool On_a_bulging_surface_more_pull_lifts_less(PositiveInt radius, PositiveInt newtons)
    {
        HoldDownCase panel = Case([0, 400, 800], Radius(radius, true)) with { Backing = SheetBacking.AllOver };
        double pull = (1 + (newtons.Get % 100_000)) / 10.0;
        HoldDownResult less = HoldDown.OnArc(panel with { EdgePull = Force.FromNewtons(pull) }), more = HoldDown.OnArc(panel with { EdgePull = Force.FromNewtons(2 * pull) });
        return more.StandOff.Millimeters < less.StandOff.Millimeters && less.CurvatureRatio is > 0 and <= 1 && more.LiftedLength!.Value.Millimeters <= less.LiftedLength!.Value.Millimeters;
    }

    private static double Radius(PositiveInt radius, bool bulging) => (bulging ? -1 : 1) * (200 + (radius.Get * 37 % 20_000));

    private static double[] Rows(PositiveInt[] bays, int spread = 2000, double least = 1)
    {
        List<double> rows = [0];
        foreach (PositiveInt bay in bays.Take(20))
        {
            rows.Add(rows[^1] + least + (bay.Get * 97 % spread));
        }

        return [.. rows];
    }

    private static HoldDownCase Case(double[] rows, double radius) => new(Sheet(6, 5000, 30), Mm(radius), [.. rows.Select(static row => Mm(row))], Mm(500));

    private static BentSheet Sheet(double t, double e, double f) => new(Mm(t), Pressure.FromMegapascals(e), Pressure.FromMegapascals(f));

    private static bool Near(double a, double b) => Math.Abs(a - b) <= 2e-6 + (1e-9 * Math.Max(Math.Abs(a), Math.Abs(b)));
}
