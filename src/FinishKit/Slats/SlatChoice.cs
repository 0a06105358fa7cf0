using System.Collections.Generic;

namespace FinishKit;

/// <summary>Every number of slats that fills a face, and the one recommended. <see cref="SlatSpread.Spread(SlatRun)"/> makes one.</summary>
public sealed class SlatChoice
{
    private readonly SlatNumbers _numbers;

    internal SlatChoice(SlatNumbers numbers, List<SlatCount> counts, SlatCount? recommended, SlatRemedy? remedy)
    {
        _numbers = numbers;
        Counts = [.. counts];
        Recommended = recommended;
        Remedy = remedy;
    }

    /// <summary>The run.</summary>
    public SlatRun Run => _numbers.Run;

    /// <summary>Every number whose gap is in the range at one station or another, fewest first; <see cref="SlatCount.ServesEveryStation"/> tells which serve all.</summary>
    public IReadOnlyList<SlatCount> Counts { get; }

    /// <summary>The one to take: in the range at every station; then gap nearest the middle of the range; then fewer slats. Null where none serves: then <see cref="Remedy"/> says what would.</summary>
    public SlatCount? Recommended { get; }

    /// <summary>What would help; null where a number is recommended.</summary>
    public SlatRemedy? Remedy { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: no number serves.</summary>
    public bool HasProblem => Recommended is null;

    /// <summary>What a person should know, gravest first; put together on reading.</summary>
    /// <remarks>Codes: <c>slats-none-fits</c>, <c>slats-taper-too-much</c>, <c>slats-end-slat-narrow</c>, <c>slats-end-slat-wide</c>, <c>slats-look-behind</c>.</remarks>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            List<Finding> findings = [];
            AddNone(findings);
            AddEndSlats(findings);
            findings.Add(new Finding(
                "slats-look-behind",
                Severity.Note,
                "The figures know only widths and gaps: find wiring and pipes before fixing, keep lamps and their heat off the slats, choose fasteners by the whole stack, and ask whether the lining must pass a test of flammability where the vehicle is used.",
                []));
            return Finding.GravestFirst(findings);
        }
    }

    /// <summary>The defaults taken because the run gave no figure of its own.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed
    {
        get
        {
            List<DefaultUsed> used = [];
            if (Run.LeastGap is null)
            {
                used.Add(new DefaultUsed(new Figure("least-gap", SlatDefaults.LeastGap, "mm"), SlatDefaults.Gap));
            }

            if (Run.GreatestGap is null)
            {
                used.Add(new DefaultUsed(new Figure("greatest-gap", SlatDefaults.GreatestGap, "mm"), SlatDefaults.Gap));
            }

            return [.. used];
        }
    }

    /// <summary>The number to speak of: the one recommended, else the nearest.</summary>
    private SlatCount Shown => Recommended ?? Remedy!.Nearest;

    /// <summary>How gap and coverage follow at every station, for the number recommended, else for the nearest.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        for (int station = 0; station < _numbers.Stations; station++)
        {
            SlatSpread.Solve(_numbers, Shown.Count, station, recorder);
        }

        return recorder.ToWorkings($"{Shown.Count} slats over a face");
    }

    /// <summary>The choice as flat figures.</summary>
    /// <returns>Whether a number is recommended (1 or 0), the worst severity as the number of its enumeration, how many numbers serve every station; then for the number recommended,
    /// else the nearest, slats, least and greatest gap, coverage and end slat over the stations; where none serves the remedy too.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        int serving = 0;
        foreach (SlatCount count in Counts)
        {
            serving += count.ServesEveryStation ? 1 : 0;
        }

        List<Figure> figures =
        [
            new("chosen", Recommended is null ? 0 : 1, string.Empty),
            new("worst-severity", (int)Findings[0].Severity, string.Empty),
            new("numbers-that-serve", serving, string.Empty),
            new("slats", Shown.Count, string.Empty),
        ];
        Add(figures, "gap", Shown.GapRange, "mm");
        Add(figures, "coverage", Shown.CoverageRange, string.Empty);
        Add(figures, "end-slat", Shown.EndSlatRange, "mm");
        figures.AddRange(Remedy?.Figures() ?? []);
        return figures;
    }

    /// <summary>The number recommended, or that there is none, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Recommended?.ToString() ?? $"none. {Findings[0].Message}";

    private static void Add(List<Figure> figures, string name, (double Least, double Greatest) range, string unit)
    {
        figures.Add(new Figure("least-" + name, Grid.Snap(range.Least), unit));
        figures.Add(new Figure("greatest-" + name, Grid.Snap(range.Greatest), unit));
    }

    private void AddNone(List<Finding> findings)
    {
        if (Remedy is not { } remedy)
        {
            return;
        }

        if (remedy.Nearest.EndSlatRange.Least <= 0)
        {
            findings.Add(new Finding(
                "slats-taper-too-much",
                Severity.Problem,
                $"The face is so much narrower at one station that end slats of {Print.Mm(SlatNumbers.Millimetres(_numbers.Slat, 1))} would taper to nothing: by {Print.Mm((SlatNumbers.Millimetres(_numbers.Widest, 1) - SlatNumbers.Millimetres(_numbers.Narrowest, 1)) / 2)} on each side. {remedy.Text}",
                remedy.Figures(),
                Sources.SlatSpread));
            return;
        }

        string where = _numbers.Stations > 1 ? " at every station" : string.Empty;
        findings.Add(new Finding(
            "slats-none-fits",
            Severity.Problem,
            $"No number of slats keeps a gap of {Print.Number(SlatNumbers.Millimetres(_numbers.LeastGap, 1))} to {Print.Mm(SlatNumbers.Millimetres(_numbers.GreatestGap, 1))}{where}. Nearest are {remedy.Nearest.Count}: {remedy.Nearest.GapWords}. {remedy.Text}",
            remedy.Figures(),
            Sources.SlatSpread));
    }

    private void AddEndSlats(List<Finding> findings)
    {
        if (Recommended is null || !_numbers.Tapered || _numbers.Stations == 1)
        {
            return;
        }

        double slat = SlatNumbers.Millimetres(_numbers.Slat, 1);
        (double least, double greatest) = Recommended.EndSlatRange;
        Figure[] values = [new("least-end-slat", Grid.Snap(least), "mm"), new("greatest-end-slat", Grid.Snap(greatest), "mm"), new("slat-width", slat, "mm")];
        if (least < SlatDefaults.NarrowEndSlat * slat)
        {
            findings.Add(new Finding(
                "slats-end-slat-narrow", Severity.Caution, $"Both end slats taper to {Print.Mm(least)}, less than half of {Print.Mm(slat)}: they will look like slivers.", values, SlatDefaults.EndSlat));
        }

        if (Grid.Snap(greatest) > slat)
        {
            findings.Add(new Finding(
                "slats-end-slat-wide", Severity.Note, $"Both end slats are {Print.Mm(greatest)} where the face is widest: rip them from stock wider than {Print.Mm(slat)}.", values, Sources.SlatSpread));
        }
    }
}
