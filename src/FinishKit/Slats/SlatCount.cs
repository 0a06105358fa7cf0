using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>A number of slats, with the gap, the coverage and the set-out that it makes at each station.</summary>
public sealed class SlatCount
{
    internal SlatCount(SlatNumbers run, int count, bool servesEveryStation)
    {
        Run = run;
        Count = count;
        ServesEveryStation = servesEveryStation;
    }

    internal SlatNumbers Run { get; }

    /// <summary>Slats.</summary>
    public int Count { get; }

    /// <summary>Whether the gap is in the range at every station, not only at some.</summary>
    public bool ServesEveryStation { get; }

    /// <summary>The gap at each station, the first width first. Negative where so many slats do not go in at all.</summary>
    public IReadOnlyList<Length> Gaps => AtEachStation(static numbers => Door.Millimetres(Grid.Snap(numbers.Gap)));

    /// <summary>Slats over width at each station.</summary>
    public IReadOnlyList<double> Coverages => AtEachStation(static numbers => numbers.Coverage);

    /// <summary>Width of each of the two end slats at each station: that of the others unless they are tapered.</summary>
    public IReadOnlyList<Length> EndSlats => AtEachStation(static numbers => Door.Millimetres(Grid.Snap(numbers.EndSlat)));

    internal (double Least, double Greatest) GapRange => Range(static numbers => numbers.Gap);

    internal (double Least, double Greatest) EndSlatRange => Range(static numbers => numbers.EndSlat);

    internal (double Least, double Greatest) CoverageRange => Range(static numbers => numbers.Coverage);

    /// <summary>Where the slats go at a station, each mark rounded once from its exact place so that errors never add up.</summary>
    /// <param name="station">The station, 0 for the first width, up to the last of the run's stations.</param>
    /// <returns>A mark for the left edge of every slat.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such station, or so many slats do not go in there.</exception>
    public SlatSetOut SetOut(int station = 0) => new(Run, Count, Checked(station));

    /// <summary>How these slats sit on battens that follow a curve at a station: the gap there is the one at the back.</summary>
    /// <param name="radius">Radius of the battens' surface [length], positive where hollow to the room, at least slat and gap together, -1 km to 1 km; null where flat.</param>
    /// <param name="slatThickness">Thickness of a slat [length], more than 0 up to 1 m.</param>
    /// <param name="station">The station, 0 for the first width, up to the last of the run's stations.</param>
    /// <returns>How they sit; the gap at the face is held against the run's own range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, there is no such station, or so many slats do not go in there.</exception>
    /// <exception cref="ArgumentException">A length is in an undefined unit.</exception>
    public SlatFit OnCurve(Length? radius, Length slatThickness, int station = 0)
    {
        double gap = Grid.Snap(NumbersAt(Checked(station)).Gap);
        return SlatCurve.Fit(radius, SlatNumbers.Millimetres(Run.Slat, 1), slatThickness, gap, (SlatNumbers.Millimetres(Run.LeastGap, 1), SlatNumbers.Millimetres(Run.GreatestGap, 1)));
    }

    /// <summary>Slats and gaps, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Count} slats of {Print.Mm(SlatNumbers.Millimetres(Run.Slat, 1))}, gaps of {GapWords}";

    /// <summary>One gap; two by name of their stations; of more the range.</summary>
    internal string GapWords
    {
        get
        {
            (double least, double greatest) = GapRange;
            return Run.Tapered || Run.Stations == 1 ? Print.Mm(least)
                : Run.Stations == 2 ? $"{Print.Mm(NumbersAt(0).Gap)} at the first station and {Print.Mm(NumbersAt(1).Gap)} at the second"
                : $"{Print.Mm(least)} to {Print.Mm(greatest)}";
        }
    }

    private (double Gap, double EndSlat, double Coverage) NumbersAt(int station) => SlatSpread.Solve(Run, Count, station, default(Silent));

    private int Checked(int station)
    {
        Door.Number(station, nameof(station), new Allowed(0, Run.Stations - 1, string.Empty), null);
        if (Run.Gap(Count, station) < 0 || Run.EndSlat(Count, station) <= 0)
        {
            (double gap, double endSlat, _) = NumbersAt(station);
            Door.Report(new InputProblem(nameof(station), $"{station}, where {Count} slats have gaps of {Print.Mm(gap)} and end slats of {Print.Mm(endSlat)}", "a station where the slats go in", isRange: true), null);
        }

        return station;
    }

    private IReadOnlyList<T> AtEachStation<T>(Func<(double Gap, double EndSlat, double Coverage), T> read)
    {
        List<T> all = new(Run.Stations);
        for (int station = 0; station < Run.Stations; station++)
        {
            all.Add(read(NumbersAt(station)));
        }

        return [.. all];
    }

    private (double Least, double Greatest) Range(Func<(double Gap, double EndSlat, double Coverage), double> read)
    {
        double least = double.MaxValue, greatest = double.MinValue;
        foreach (double value in AtEachStation(read))
        {
            least = Math.Min(least, value);
            greatest = Math.Max(greatest, value);
        }

        return (least, greatest);
    }
}
