using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>Which stocked fastener fits a job, and why not the others.</summary>
public sealed class FastenerChoice
{
    private const string ListWords = "at most 200 entries";

    /// <summary>Makes a result; hosts may build their own for tests.</summary>
    /// <param name="job">The job.</param>
    /// <param name="candidates">Every stocked length tried, shortest first.</param>
    /// <param name="chosen">The one chosen, or null.</param>
    /// <param name="remedies">What would help; empty where nothing needs to.</param>
    /// <param name="findings">What a person should know, gravest first.</param>
    /// <param name="defaultsUsed">The defaults taken.</param>
    /// <exception cref="ArgumentNullException">An argument other than <paramref name="chosen"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A list has more than 200 entries.</exception>
    public FastenerChoice(
        FastenerJob job, IReadOnlyList<FastenerCandidate> candidates, FastenerCandidate? chosen, IReadOnlyList<Remedy> remedies, IReadOnlyList<Finding> findings, IReadOnlyList<DefaultUsed> defaultsUsed)
    {
        Job = job ?? throw new ArgumentNullException(nameof(job));
        Candidates = Copy(candidates, nameof(candidates));
        Chosen = chosen;
        Remedies = Copy(remedies, nameof(remedies));
        Findings = Copy(findings, nameof(findings));
        DefaultsUsed = Copy(defaultsUsed, nameof(defaultsUsed));
    }

    /// <summary>The job.</summary>
    public FastenerJob Job { get; }

    /// <summary>The length chosen, or null: no stocked length may be driven. Then <see cref="Findings"/> says why and <see cref="Remedies"/> what helps.</summary>
    public FastenerCandidate? Chosen { get; }

    /// <summary>Every stocked length with its figures and verdicts, shortest first.</summary>
    public IReadOnlyList<FastenerCandidate> Candidates { get; }

    /// <summary>The next stocked length up from the one chosen, or null.</summary>
    public FastenerCandidate? NextLonger
    {
        get
        {
            for (int i = 0; i + 1 < Candidates.Count; i++)
            {
                if (ReferenceEquals(Candidates[i], Chosen))
                {
                    return Candidates[i + 1];
                }
            }

            return null;
        }
    }

    /// <summary>What would make a length safe: thicker furring, an angle, another series. Empty where a safe length was chosen.</summary>
    public IReadOnlyList<Remedy> Remedies { get; }

    /// <summary>What a person should know, gravest first.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem => WorstSeverity == Severity.Problem;

    /// <summary>The defaults taken because the job gave no figure of its own.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    /// <summary>The edition of the material tables.</summary>
    public string TableEdition { get; } = MaterialTables.Edition;

    private Severity WorstSeverity
    {
        get
        {
            Severity worst = Severity.Note;
            foreach (Finding finding in Findings)
            {
                worst = finding.Severity > worst ? finding.Severity : worst;
            }

            return worst;
        }
    }

    /// <summary>The length to speak of: the one chosen; else the longest safe one; else the shortest; null where none was tried.</summary>
    private FastenerCandidate? Shown
    {
        get
        {
            FastenerCandidate? shown = Candidates.Count > 0 ? Candidates[0] : null;
            foreach (FastenerCandidate candidate in Candidates)
            {
                shown = candidate.Tip == TipVerdict.Safe ? candidate : shown;
            }

            return Chosen ?? shown;
        }
    }

    /// <summary>How the chosen length's figures follow; where none was chosen, those of the longest safe length, else of the shortest.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain() => Shown?.Explain() ?? new Workings("No length was tried", []);

    /// <summary>The choice as flat figures, never empty.</summary>
    /// <returns>Whether one was chosen (1 or 0), the worst severity as the number of its enumeration, how many were tried; then the figures of the
    /// length chosen, or where none was, of the longest safe length, else of the shortest.</returns>
    public IReadOnlyList<Figure> Figures() =>
    [
        new("chosen", Chosen is null ? 0 : 1, string.Empty),
        new("worst-severity", (int)WorstSeverity, string.Empty),
        new("candidates", Candidates.Count, string.Empty),
        .. Shown?.Figures() ?? [],
    ];

    /// <summary>The choice in a line, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Chosen is null ? $"{Job.Series?.Name}: none. {(Findings.Count > 0 ? Findings[0].Message : string.Empty)}" : $"{Job.Series?.Name}: {Chosen}";

    /// <summary>A list may claim any number; none of these holds more than a series has lengths.</summary>
    private static IReadOnlyList<T> Copy<T>(IReadOnlyList<T> list, string parameter)
    {
        Door.IsMissing(list, new Name(parameter), ListWords, null);
        if (list.Count > FastenerLength.MostListed)
        {
            Door.Report(new InputProblem(parameter, list.Count + " entries", ListWords, isRange: true), null);
        }

        return [.. list];
    }
}
