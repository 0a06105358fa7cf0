using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit.Tests.Furring;

/// <summary>A run of a few nanometres: so short that every arrangement of strips on the grid can be written out.</summary>
internal sealed record SmallRun(int Length, int[] Fixed, (int Centre, int Half)[] Ribs, int LargestBay, int LeastDistance)
{
    internal static SmallRun Random(Random random)
    {
        // The greater the least distance, the longer a run may be before its arrangements are too many.
        int least = random.Next(1, 8), length = random.Next(10, 1 + (least switch
        {
            1 => 12,
            2 => 20,
            3 => 26,
            4 => 32,
            _ => 40,
        }));
        List<int> strips = [random.Next(0, 3), length - random.Next(0, 3)];
        for (int more = random.Next(0, 3); more > 0; more--)
        {
            strips.Add(random.Next(strips[0], strips[1] + 1));
        }

        (int, int)[] ribs = [.. Enumerable.Range(0, random.Next(0, 7)).Select(_ => (random.Next(-2, length + 3), random.Next(0, 3)))];
        return new SmallRun(length, [.. strips], ribs, random.Next(Math.Max(2, least - 1), (2 * least) + 6), least);
    }

    internal StripRun ToRun(StripPreference preference) => new(Nm(Length), [.. Fixed.Select(Nm)], Nm(LargestBay))
    {
        Ribs = [.. Ribs.Select(static rib => new RibLine(Nm(rib.Centre), Nm(rib.Half)))],
        LeastDistance = Nm(LeastDistance),
        Preference = preference,
    };

    internal static Length Nm(int nanometres) => new(nanometres / 1e6, LengthUnit.Millimeter);

    internal static int Nm(Length length) => (int)Math.Round(length.Millimeters * 1e6);

    public override string ToString() =>
        $"{Length} nm, fixed {string.Join(" ", Fixed)}, ribs {string.Join(" ", Ribs)}, S {LargestBay}, m {LeastDistance}";
}

/// <summary>
/// Every arrangement of strips, tried: the rules as they are written, with no thought given to speed. A strip at the middle of a
/// free rib is tried both as a strip for that rib and as one that only happens to be there.
/// </summary>
internal sealed class StripOracle
{
    private readonly SmallRun _run;
    private readonly int[] _fixed;
    private readonly HashSet<int> _free;
    private readonly List<(int At, StripKind Kind)> _strips = [];
    private readonly List<Arrangement> _all = [];

    private StripOracle(SmallRun run)
    {
        _run = run;
        _fixed = [.. run.Fixed.Order()];
        _free = [.. run.Ribs.Where(rib => !_fixed.Any(strip => Math.Abs(strip - rib.Centre) <= rib.Half)).Select(static rib => rib.Centre)];
    }

    internal static IReadOnlyList<Arrangement> All(SmallRun run)
    {
        StripOracle oracle = new(run);
        oracle._strips.Add((oracle._fixed[0], StripKind.Fixed));
        oracle.GoOn(1);
        return oracle._all;
    }

    internal static Arrangement Best(IReadOnlyList<Arrangement> all, StripPreference preference)
    {
        Arrangement best = all[0];
        foreach (Arrangement next in all)
        {
            best = Compare(next, best, preference) < 0 ? next : best;
        }

        return best;
    }

    internal static int FirstCriterion(Arrangement strips, StripPreference preference) => preference == StripPreference.OnRibs ? strips.OffRibs : strips.Chosen;

    private static int Compare(Arrangement left, Arrangement right, StripPreference preference)
    {
        int order = FirstCriterion(left, preference).CompareTo(FirstCriterion(right, preference));
        order = order != 0 ? order : preference == StripPreference.OnRibs ? left.Chosen.CompareTo(right.Chosen) : right.OnRibs.CompareTo(left.OnRibs);
        order = order != 0 ? order : left.Largest.CompareTo(right.Largest);
        order = order != 0 ? order : left.Squares.CompareTo(right.Squares);
        for (int i = 0; order == 0 && i < left.Strips.Length; i++)
        {
            order = left.Strips[i].At.CompareTo(right.Strips[i].At);
        }

        return order;
    }

    private void GoOn(int nextFixed)
    {
        if (nextFixed == _fixed.Length)
        {
            _all.Add(new Arrangement([.. _strips]));
            return;
        }

        (int here, StripKind kind) = _strips[^1];
        int end = _fixed[nextFixed];
        if (end - here <= _run.LargestBay && (kind == StripKind.Fixed || end - here >= _run.LeastDistance))
        {
            Try(end, StripKind.Fixed, nextFixed + 1);
        }

        for (int at = here + _run.LeastDistance; at <= here + _run.LargestBay && at + _run.LeastDistance <= end; at++)
        {
            Try(at, StripKind.OffRib, nextFixed);
            if (_free.Contains(at))
            {
                Try(at, StripKind.OnRib, nextFixed);
            }
        }
    }

    private void Try(int at, StripKind kind, int nextFixed)
    {
        _strips.Add((at, kind));
        GoOn(nextFixed);
        _strips.RemoveAt(_strips.Count - 1);
    }

    internal sealed class Arrangement((int At, StripKind Kind)[] strips)
    {
        internal (int At, StripKind Kind)[] Strips => strips;

        internal int OffRibs { get; } = strips.Count(static strip => strip.Kind == StripKind.OffRib);

        internal int OnRibs { get; } = strips.Count(static strip => strip.Kind == StripKind.OnRib);

        internal int Chosen => OffRibs + OnRibs;

        internal int Largest { get; } = Enumerable.Range(1, strips.Length - 1).Max(i => strips[i].At - strips[i - 1].At);

        internal int Squares { get; } = Enumerable.Range(1, strips.Length - 1).Sum(i => (strips[i].At - strips[i - 1].At) * (strips[i].At - strips[i - 1].At));
    }
}
