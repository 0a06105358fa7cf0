using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>How many fixings hold a panel, and where along each row they go.</summary>
/// <remarks>The pull of each row comes from <see cref="HoldDown"/>; what one fixing holds from <see cref="MetalScrew"/>, a maker, or a trial.</remarks>
public static class PanelFixings
{
    private static readonly Allowed s_size = new(1, 1e5, "mm");
    private static readonly Allowed s_position = new(0, 1e5, "mm");
    private static readonly Allowed s_pull = new(-1000, 1000, "N/mm");
    private static readonly Allowed s_hold = new(1e-6, 1e6, "N");
    private static readonly Allowed s_mass = new(0, 10_000, "kg");
    private static readonly Allowed s_acceleration = new(Allowed.OneStep, 100, "g");
    private static readonly Allowed s_edge = new(0, 1000, "mm");

    // Twice the least spacing: rows divided evenly by it keep the least too.
    private static readonly Allowed s_spacing = new(2 * PanelFixingDefaults.LeastSpacing, 1e4, "mm");

    /// <summary>The fewest fixings of each row that hold it within the spacing asked, and their places.</summary>
    /// <param name="job">Rows, width, hold, and whatever differs from the defaults.</param>
    /// <returns>Every row with its fixings, and findings.</returns>
    /// <remarks>
    /// <para>Formula: load per length q = max(0, pull) + m a 9.80665 (share of the girth)/W; n fixings at e, e + s, ..., W - e with s = (W - 2 e)/(n - 1); an inner one holds q s, an outer one q (e + s/2), or its reaction as a support of a beam where that is more: with A = q (s²/12 - e²/2)/(1 + r^(n-1)) and r = sqrt(3) - 2, q (e + s/2) + A (r + r^(n-2) - 1 - r^(n-1))/s at the ends, q s - 6 A (r^i + r^(n-1-i))/s inside. The share of a row is the greater of the same two, over the girth. n is the least with all of it at most the hold and s at most the cap; two at least, one in the middle where W - 2 e is under 20 mm.</para>
    /// <para>Validity: load even along the row and steady; fixings in one line that do not yield, under a panel of any stiffness: one that gives way shares to half way, a stiff one as a beam of one section. A fixing that stands proud of its neighbours, or yields less, takes more than is stated. The mass hangs square to the panel, as under a ceiling. A row that only bears is still fixed at the cap's spacing, and its pressing is not counted against the mass.</para>
    /// <para>Source: fixing-share, fixing-reaction, fixing-mass-share (derived); retention-acceleration, default-fixing-edge, fixing-least-spacing (default, judgement); default-fixing-spacing (common practice).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The job, its rows or a row is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// PanelRow[] rows = [new(Mm(0), ForcePerLength.FromNewtonsPerMillimeter(0)), new(Mm(200), ForcePerLength.FromNewtonsPerMillimeter(0.675)), new(Mm(400), ForcePerLength.FromNewtonsPerMillimeter(0))];
    /// PanelFixingPlan plan = PanelFixings.Place(new PanelFixingJob(rows, Mm(1000), Force.FromNewtons(100)));
    /// int middle = plan.Rows[1].Positions.Count;          // 9: 950/8 = 118.75 mm apart, 88.0 N on the second; of 8 it would hold 101.4
    /// int edge = plan.Rows[0].Positions.Count;            // 5: nothing pulls, 237.5 mm apart under the cap of 250
    /// </code></example>
    public static PanelFixingPlan Place(PanelFixingJob job)
    {
        PanelFixingNumbers numbers = Read(job, null)!;
        PanelFixingRow[] rows = new PanelFixingRow[numbers.Positions.Length];
        for (int i = 0; i < rows.Length; i++)
        {
            rows[i] = Fix(numbers, i);
        }

        return new PanelFixingPlan(job, numbers, rows);
    }

    /// <summary>All problems with a job; nothing is thrown.</summary>
    /// <param name="job">The job.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(PanelFixingJob job)
    {
        List<InputProblem> problems = [];
        Read(job, problems);
        return problems;
    }

    /// <summary>The one formula body of a row: what it holds per length, and what its hardest-worked fixing holds at a count.</summary>
    internal static (double PerLength, double Spacing, double Greatest) Solve<TTrace>(PanelFixingNumbers job, int row, int count, TTrace trace)
        where TTrace : struct, ITrace
    {
        double pull = job.Pulls[row], width = job.Width, edge = job.Edge, hold = job.Hold, mass = job.Mass, acceleration = job.Acceleration, share = job.Share(row), fixings = count;
        trace.Given("p", pull, "N/mm", Sources.Given, meaning: "pull of the row per length");
        trace.Given("W", width, "mm", Sources.Given);
        trace.Given("F", hold, "N", Sources.Given, meaning: "what one fixing may be loaded with");
        double perLength = trace.Step("q", nameof(perLength), Math.Max(0, pull), "N/mm", PanelFixingDefaults.Share);
        if (mass > 0)
        {
            trace.Given("m", mass, "kg", Sources.Given);
            trace.Given("a", acceleration, "g", job.AccelerationIsDefault ? Sources.RoadAcceleration : Sources.Given);
            trace.Given("k", share, string.Empty, PanelFixingDefaults.MassShare, meaning: "share of the row in the mass");
            perLength = trace.Step("q", nameof(perLength), perLength + (mass * acceleration * 9.80665 * share / width), "N/mm", PanelFixingDefaults.MassShare);
        }

        trace.Given("n", fixings, string.Empty, PanelFixingDefaults.Share, meaning: "fixings in the row");
        if (count == 1)
        {
            return (perLength, 0, trace.Step("F_n", "greatest", perLength * width, "N", PanelFixingDefaults.Share));
        }

        trace.Given("e", edge, "mm", job.EdgeIsDefault ? PanelFixingDefaults.EdgeSource : Sources.Given, meaning: "from the edge to the outer fixings");
        double spacing = trace.Step("s", nameof(spacing), (width - (2 * edge)) / (fixings - 1), "mm", PanelFixingDefaults.Share);
        double outer = trace.Step("F_e", nameof(outer), perLength * (edge + (spacing / 2)), "N", PanelFixingDefaults.Share);
        if (count == 2)
        {
            return (perLength, spacing, outer);
        }

        double inner = trace.Step("F_i", nameof(inner), perLength * spacing, "N", PanelFixingDefaults.Share);

        // The same load on a beam over all fixings. Moments die out from fixing to fixing by r, changing sign: the second holds most
        // where the ends overhang little, the first or the third where they overhang much.
        double ratio = Math.Sqrt(3) - 2;
        trace.Given("r", ratio, string.Empty, PanelFixingDefaults.Reaction, meaning: "of a moment to the one before, sqrt(3) - 2");
        double wave = trace.Step("A", nameof(wave), perLength * ((spacing * spacing / 12) - (edge * edge / 2)) / (1 + Math.Pow(ratio, fixings - 1)), "N mm", PanelFixingDefaults.Reaction);
        double first = trace.Step("R_1", nameof(first), outer + (wave * (ratio + Math.Pow(ratio, fixings - 2) - 1 - Math.Pow(ratio, fixings - 1)) / spacing), "N", PanelFixingDefaults.Reaction);
        double second = trace.Step("R_2", nameof(second), inner - (6 * wave * (ratio + Math.Pow(ratio, fixings - 2)) / spacing), "N", PanelFixingDefaults.Reaction);
        double most = trace.Step("F_n", nameof(most), Math.Max(Math.Max(outer, inner), Math.Max(first, second)), "N", PanelFixingDefaults.Reaction);
        if (count > 3)
        {
            double third = trace.Step("R_3", nameof(third), inner - (6 * wave * (Math.Pow(ratio, 2) + Math.Pow(ratio, fixings - 3)) / spacing), "N", PanelFixingDefaults.Reaction);
            most = trace.Step("F_n", nameof(most), Math.Max(most, third), "N", PanelFixingDefaults.Reaction);
        }

        return (perLength, spacing, most);
    }

    private static PanelFixingRow Fix(PanelFixingNumbers job, int row)
    {
        double run = job.Run;
        (double perLength, _, double alone) = Solve(job, row, 1, default(Silent));
        if (run < PanelFixingDefaults.LeastSpacing)
        {
            return new PanelFixingRow(job, row, perLength, 1, alone <= job.Hold * (1 + 1e-9), isByStrength: false);
        }

        // Counted up, not halved: with more of them an outer fixing may hold more, for what overhangs pries over a shorter bay. 5001 at the most.
        int bySpacing = (int)Math.Max(2, Grid.CeilingOfRatio(run, job.Cap) + 1);
        int most = (int)(Math.Floor((run / PanelFixingDefaults.LeastSpacing) + 1e-9) + 1);
        for (int count = bySpacing; count <= most; count++)
        {
            if (Holds(job, row, count))
            {
                return new PanelFixingRow(job, row, perLength, count, holds: true, isByStrength: count > bySpacing);
            }
        }

        return new PanelFixingRow(job, row, perLength, bySpacing, holds: false, isByStrength: true);
    }

    private static bool Holds(PanelFixingNumbers job, int row, int count) => Solve(job, row, count, default(Silent)).Greatest <= job.Hold * (1 + 1e-9);

    private static PanelFixingNumbers? Read(PanelFixingJob job, List<InputProblem>? problems)
    {
        if (Door.IsMissing(job, new Name(nameof(job)), "a panel with its rows", problems))
        {
            return null;
        }

        double[] positions = [], pulls = [];
        if (!Door.IsMissing(job.Rows, new Name("job.Rows"), "1 to 50 rows", problems))
        {
            if (job.Rows.Count is < 1 or > ArcRows.MostRows)
            {
                Door.Report(new InputProblem("job.Rows", job.Rows.Count + " rows", "1 to 50 rows", isRange: true), problems);
            }
            else
            {
                (positions, pulls) = ReadRows(job.Rows, problems);
            }
        }

        double width = Door.Millimetres(job.Width, "job.Width", s_size, problems);
        double hold = Door.Newtons(job.Hold, "job.Hold", s_hold, problems);
        double last = positions.Length > 0 ? positions[positions.Length - 1] : 0;
        double girth = job.Girth is { } around ? Door.Millimetres(around, "job.Girth", s_size, problems) : last;
        if (girth < last)
        {
            Door.Report(new InputProblem("job.Girth", Print.Mm(girth), $"at least the position of the last row, {Print.Mm(last)}", isRange: true), problems);
        }

        double mass = job.HungMass is { } hung ? Door.Kilograms(hung, "job.HungMass", s_mass, problems) : 0;
        double acceleration = job.Acceleration is { } g ? Door.Number(g, "job.Acceleration", s_acceleration, problems) : Retention.RoadAcceleration;
        double edge = job.EdgeDistance is { } off ? Door.Millimetres(off, "job.EdgeDistance", s_edge, problems) : PanelFixingDefaults.Edge;
        double cap = job.GreatestSpacing is { } most ? Door.Millimetres(most, "job.GreatestSpacing", s_spacing, problems) : PanelFixingDefaults.Spacing;

        // What overhangs hangs as free as what is between two fixings, and from one side only.
        if (edge > cap)
        {
            Door.Report(new InputProblem("job.EdgeDistance", Print.Mm(edge), $"at most the greatest spacing, {Print.Mm(cap)}", isRange: true), problems);
        }
        else if (Grid.Snap(width - (2 * edge)) < PanelFixingDefaults.LeastSpacing && width > 2 * cap)
        {
            Door.Report(new InputProblem("job.EdgeDistance", Print.Mm(edge), $"so little that two fixings go in a row: one alone overhangs by {Print.Mm(Grid.Snap(width / 2))}, more than the greatest spacing, {Print.Mm(cap)}", isRange: true), problems);
        }

        return problems is { Count: > 0 } ? null : new PanelFixingNumbers(positions, pulls, width, girth, hold)
        {
            Mass = mass,
            Acceleration = acceleration,
            AccelerationIsDefault = job.Acceleration is null,
            Edge = edge,
            EdgeIsDefault = job.EdgeDistance is null,
            Cap = cap,
        };
    }

    private static (double[] Positions, double[] Pulls) ReadRows(IReadOnlyList<PanelRow> rows, List<InputProblem>? problems)
    {
        double[] positions = new double[rows.Count], pulls = new double[rows.Count];
        for (int i = 0; i < rows.Count; i++)
        {
            Name name = new("job.Rows", i);
            if (Door.IsMissing(rows[i], name, "a row", problems))
            {
                continue;
            }

            positions[i] = Door.Millimetres(rows[i].Position, name.Then(".Position"), s_position, problems);
            pulls[i] = Door.NewtonsPerMillimetre(rows[i].Pull, name.Then(".Pull"), s_pull, problems);
            if (i > 0 && positions[i] < positions[i - 1] + 1)
            {
                Door.Report(new InputProblem(name.Then(".Position").ToString(), Print.Mm(positions[i]), $"1 mm or more past the row before, {Print.Mm(positions[i - 1])}", isRange: true), problems);
            }
        }

        return (positions, pulls);
    }
}

/// <summary>A job as plain checked numbers in mm, N and kg.</summary>
internal sealed class PanelFixingNumbers(double[] positions, double[] pulls, double width, double girth, double hold)
{
    private readonly double[] _shares = SharesOf(positions, girth);

    internal double[] Positions { get; } = positions;

    internal double[] Pulls { get; } = pulls;

    internal double Width { get; } = width;

    internal double Hold { get; } = hold;

    internal double Mass { get; init; }

    internal double Acceleration { get; init; }

    internal bool AccelerationIsDefault { get; init; }

    internal double Edge { get; init; }

    internal bool EdgeIsDefault { get; init; }

    internal double Cap { get; init; }

    /// <summary>Run between the outer places of a row; negative where the edges leave none.</summary>
    internal double Run => Grid.Snap(Width - (2 * Edge));

    /// <summary>What a row carries of the mass: to half way to its neighbours, or as support of a beam over all rows, the greater. Together they may come to more than 1.</summary>
    internal double Share(int row) => _shares[row];

    private static double[] SharesOf(double[] positions, double girth)
    {
        if (positions.Length < 2)
        {
            return [1];
        }

        double[] shares = new double[positions.Length], bays = new double[positions.Length - 1], load = new double[positions.Length - 1];
        for (int i = 0; i < bays.Length; i++)
        {
            bays[i] = positions[i + 1] - positions[i];
            load[i] = 1;
        }

        int last = positions.Length - 1;
        double before = positions[0], after = girth - positions[last];
        double[] reactions = new BeamLine(bays, 1, uniform: load, ends: (-before * before / 2, -after * after / 2)).Reactions;
        reactions[0] += before;
        reactions[last] += after;
        for (int i = 0; i < shares.Length; i++)
        {
            double from = i == 0 ? 0 : (positions[i - 1] + positions[i]) / 2, to = i == last ? girth : (positions[i] + positions[i + 1]) / 2;
            shares[i] = Math.Max(to - from, reactions[i]) / girth;
        }

        return shares;
    }
}
