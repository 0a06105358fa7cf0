using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>Which stocked fastener fits a job, and why not the others.</summary>
public sealed class FastenerChoice
{
    /// <summary>Makes a result; hosts may build their own for tests.</summary>
    /// <param name="job">The job.</param>
    /// <param name="candidates">Every stocked length tried, shortest first.</param>
    /// <param name="chosen">The one chosen, or null.</param>
    /// <param name="remedies">What would help; empty where nothing needs to.</param>
    /// <param name="findings">What a person should know, gravest first.</param>
    /// <param name="defaultsUsed">The defaults taken.</param>
    /// <exception cref="ArgumentNullException">An argument other than <paramref name="chosen"/> is null.</exception>
    public FastenerChoice(
        FastenerJob job, IReadOnlyList<FastenerCandidate> candidates, FastenerCandidate? chosen, IReadOnlyList<Remedy> remedies, IReadOnlyList<Finding> findings, IReadOnlyList<DefaultUsed> defaultsUsed)
    {
        Job = job ?? throw new ArgumentNullException(nameof(job));
        Candidates = candidates ?? throw new ArgumentNullException(nameof(candidates));
        Chosen = chosen;
        Remedies = remedies ?? throw new ArgumentNullException(nameof(remedies));
        Findings = findings ?? throw new ArgumentNullException(nameof(findings));
        DefaultsUsed = defaultsUsed ?? throw new ArgumentNullException(nameof(defaultsUsed));
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
    public bool HasProblem
    {
        get
        {
            foreach (Finding finding in Findings)
            {
                if (finding.Severity >= Severity.Problem)
                {
                    return true;
                }
            }

            return false;
        }
    }

    /// <summary>The defaults taken because the job gave no figure of its own.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    /// <summary>The edition of the material tables.</summary>
    public string TableEdition { get; } = MaterialTables.Edition;

    /// <summary>How the chosen length's figures follow; of the shortest length where none was chosen.</summary>
    /// <returns>The workings; without steps where no length was tried.</returns>
    public Workings Explain() => (Chosen ?? (Candidates.Count > 0 ? Candidates[0] : null))?.Explain() ?? new Workings("No fastener tried", []);

    /// <summary>The choice as flat figures.</summary>
    /// <returns>The chosen candidate's figures; empty where none was chosen.</returns>
    public IReadOnlyList<Figure> Figures() => Chosen?.Figures() ?? [];

    /// <summary>The choice in a line, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string chosen = Chosen?.ToString() ?? (Findings.Count > 0 ? "none. " + Findings[0].Message : "none.");
        return $"{Job.Series?.Name}: {chosen}";
    }
}
