using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// Something a person should know about a design: a normal part of a result, never an exception. Tests and hosts look at
/// <see cref="Code"/> and <see cref="Values"/>; <see cref="Message"/> is for reading.
/// </summary>
public sealed class Finding
{
    /// <summary>Makes a finding.</summary>
    /// <param name="code">The stable code: kebab case, the calculator's area first. Listed in the documentation.</param>
    /// <param name="severity">How much it matters.</param>
    /// <param name="message">A full sentence with figures and units, invariant English.</param>
    /// <param name="values">The figures behind the sentence; may be empty.</param>
    /// <param name="source">What the finding rests on, or null.</param>
    /// <exception cref="ArgumentNullException"><paramref name="code"/>, <paramref name="message"/> or <paramref name="values"/> is null.</exception>
    public Finding(string code, Severity severity, string message, IReadOnlyList<Figure> values, Source? source = null)
    {
        Code = code ?? throw new ArgumentNullException(nameof(code));
        Severity = severity;
        Message = message ?? throw new ArgumentNullException(nameof(message));
        Values = values ?? throw new ArgumentNullException(nameof(values));
        Source = source;
    }

    /// <summary>The stable code, for example <c>fastening-none-safe</c>. Its meaning never changes.</summary>
    public string Code { get; }

    /// <summary>How much it matters.</summary>
    public Severity Severity { get; }

    /// <summary>A full sentence with figures and units, invariant English.</summary>
    public string Message { get; }

    /// <summary>The figures behind the sentence.</summary>
    public IReadOnlyList<Figure> Values { get; }

    /// <summary>What the finding rests on, or null.</summary>
    public Source? Source { get; }

    /// <summary>Problems, then cautions, then notes; those of one severity stay as they were. The list cannot be cast back and changed.</summary>
    internal static IReadOnlyList<Finding> GravestFirst(List<Finding> findings)
    {
        List<Finding> sorted = new(findings.Count);
        for (Severity severity = Severity.Problem; severity >= Severity.Note; severity--)
        {
            sorted.AddRange(findings.FindAll(finding => finding.Severity == severity));
        }

        return [.. sorted];
    }

    /// <summary>Severity, code and message on one line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Severity} {Code}: {Message}";
}
