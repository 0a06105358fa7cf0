using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>
/// Where furring strips go between those that are there anyway, so that no bay is larger than the boards allow and strips land on ribs.
/// </summary>
public static class StripSpacing
{
    internal const int MostListed = 1000;

    /// <summary>The best places for the strips of a run with every default: as few off the ribs as can be.</summary>
    /// <param name="runLength">Length of the run [length], more than 0 up to 1000000 mm.</param>
    /// <param name="fixedPositions">Strips that are there whatever else, ends, jambs, butt joints: 2 to 1000, within the run.</param>
    /// <param name="largestBay">Largest distance between neighbouring strips [length], more than 0 up to 1000000 mm; exactly met is met.</param>
    /// <param name="ribs">Ribs that a strip may be fixed to, at most 1000; empty for none.</param>
    /// <returns>Every strip with the rib it bears on, the bays, and findings; without chosen strips where none will do.</returns>
    /// <remarks>
    /// <para>Formula: as for a <see cref="StripRun"/>.</para>
    /// <para>Validity: as there.</para>
    /// <para>Source: furring-spacing (derived); default-strip-distance (common practice).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">A list or a rib is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// StripLayout wall = StripSpacing.Space(Mm(1960), [Mm(20), Mm(1940)], Mm(475), [new(Mm(480), Mm(25)), new(Mm(950), Mm(20))]);
    /// int chosen = wall.ChosenCount;                      // 4: on both ribs, and two between 950 and 1940
    /// </code></example>
    public static StripLayout Space(Length runLength, IReadOnlyList<Length> fixedPositions, Length largestBay, IReadOnlyList<RibLine> ribs) =>
        Space(new StripRun(runLength, fixedPositions, largestBay) { Ribs = ribs }, string.Empty);

    /// <summary>All problems with the input of <see cref="Space(Length, IReadOnlyList{Length}, Length, IReadOnlyList{RibLine})"/>; nothing is thrown.</summary>
    /// <param name="runLength">As there.</param>
    /// <param name="fixedPositions">As there.</param>
    /// <param name="largestBay">As there.</param>
    /// <param name="ribs">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(Length runLength, IReadOnlyList<Length> fixedPositions, Length largestBay, IReadOnlyList<RibLine> ribs)
    {
        List<InputProblem> problems = [];
        StripNumbers.Read(new StripRun(runLength, fixedPositions, largestBay) { Ribs = ribs }, string.Empty, problems);
        return problems;
    }

    /// <summary>The best places for the strips of a run, exactly: no arrangement on whole nanometres is better.</summary>
    /// <param name="run">The run: fixed strips, largest bay, ribs, and whatever differs from the defaults.</param>
    /// <returns>Every strip with the rib it bears on, the bays, and findings; without chosen strips where none will do.</returns>
    /// <remarks>
    /// <para>Formula: least in this order: strips off ribs, then strips chosen (or strips chosen, then strips off ribs: <see cref="StripPreference.FewestStrips"/>); the largest bay; the sum of squared bays; then leftmost. Between two ribs or fixed strips a distance d apart, ceiling(d/S) - 1 strips spread equally.</para>
    /// <para>Validity: straight parallel strips; a strip for a rib sits at its middle, one strip a rib, and a rib on which a fixed strip bears takes no other. The largest bay is the caller's: it follows from the boards' span.</para>
    /// <para>Source: furring-spacing (derived); default-strip-distance (common practice).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The run, a list or a rib is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// RibLine[] ribs = [new(Mm(480), Mm(25)), new(Mm(950), Mm(20))];
    /// StripLayout layout = StripSpacing.Space(new StripRun(Mm(1960), [Mm(20), Mm(1420), Mm(1940)], Mm(475)) { Ribs = ribs });
    /// int strips = layout.Strips.Count;                   // 6: at 20, on the ribs at 480 and 950, at 1420, off ribs at 1680, at 1940
    /// double bay = layout.LargestBay.Millimeters;         // 470
    /// </code></example>
    public static StripLayout Space(StripRun run) => Space(run, nameof(run));

    /// <summary>All problems with a run; nothing is thrown.</summary>
    /// <param name="run">The run.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(StripRun run)
    {
        List<InputProblem> problems = [];
        StripNumbers.Read(run, nameof(run), problems);
        return problems;
    }

    private static StripLayout Space(StripRun run, string name)
    {
        StripNumbers numbers = StripNumbers.Read(run, name, null)!;
        bool feasible = StripSolver.IsFeasible(numbers);
        long? smallest = feasible ? null : StripSolver.SmallestLargestBay(numbers);
        PlacedStrip[] strips = feasible
            ? Place(numbers, StripSolver.Solve(numbers, run.Preference))
            : Array.ConvertAll(numbers.Fixed, position => Place(numbers, position, StripKind.Fixed));
        List<DefaultUsed> defaults = run.LeastDistance is null ? [new(new Figure("least-distance", StripDefaults.LeastDistance, "mm"), StripDefaults.LeastDistanceSource)] : [];
        return new StripLayout(run, strips, smallest is { } bay ? Door.Millimetres(Grid.Millimetres(bay)) : null, StripFindings.Of(numbers, strips, smallest), defaults);
    }

    private static PlacedStrip[] Place(StripNumbers run, List<(long Position, StripKind Kind)> chosen)
    {
        PlacedStrip[] strips = new PlacedStrip[chosen.Count];
        for (int i = 0; i < strips.Length; i++)
        {
            strips[i] = Place(run, chosen[i].Position, chosen[i].Kind);
        }

        return strips;
    }

    private static PlacedStrip Place(StripNumbers run, long position, StripKind kind) => new(Door.Millimetres(Grid.Millimetres(position)), kind, run.BearsOn(position));
}
