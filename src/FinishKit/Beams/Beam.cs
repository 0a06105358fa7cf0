using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace FinishKit;

/// <summary>A section that passes over supports: its spans one after the other, and how far each support is off the line.</summary>
/// <remarks>Supports hold both ways; the ends do not overhang. Places along the beam are measured from the first support.</remarks>
public sealed record Beam
{
    internal const int MostSpans = 100;

    private const string DisplacementWords = "none, or one for each support: one more than the spans";

    private static readonly Allowed s_span = new(Allowed.OneStep, 1e5, "mm");
    private static readonly Allowed s_displacement = new(-1e4, 1e4, "mm");

    private readonly IReadOnlyList<Length> _spans = [];
    private readonly IReadOnlyList<Length> _displacements = [];

    /// <summary>Makes one with all that has no default.</summary>
    /// <param name="section">The section.</param>
    /// <param name="spans">Distances between supports, in order.</param>
    [SetsRequiredMembers]
    public Beam(BeamSection section, IReadOnlyList<Length> spans)
    {
        Section = section;
        Spans = spans;
    }

    /// <summary>Makes one with whatever differs from its default, each member by its name: for languages that cannot set init members.</summary>
    /// <param name="section">The section.</param>
    /// <param name="spans">Distances between supports, in order.</param>
    /// <param name="displacements">See <see cref="Displacements"/>. Null for none.</param>
    [SetsRequiredMembers]
    public Beam(BeamSection section, IReadOnlyList<Length> spans, IReadOnlyList<Length>? displacements = null)
        : this(section, spans)
    {
        Displacements = displacements ?? [];
    }

    /// <summary>Makes one by its members.</summary>
    public Beam()
    {
    }

    /// <summary>The section.</summary>
    public required BeamSection Section { get; init; }

    /// <summary>Distances between supports, in order, 1 to 100 of them, each more than 0 up to 100 m.</summary>
    public required IReadOnlyList<Length> Spans { get => _spans; init => _spans = Lists.Keep(value, MostSpans + 1); }

    /// <summary>How far each support is off the straight line, positive the way positive loads push, -10 to 10 m; empty for none, else one more than the spans.</summary>
    public IReadOnlyList<Length> Displacements { get => _displacements; init => _displacements = Lists.Keep(value, MostSpans + 1); }

    /// <summary>Whether section, spans and displacements are of equal amount, whatever their units.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True if so.</returns>
    public bool Equals(Beam? other) => other is not null && Equals(Section, other.Section) && Lists.Same(Spans, other.Spans, MostSpans + 1) && Lists.Same(Displacements, other.Displacements, MostSpans + 1);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked(((Section?.GetHashCode() ?? 0) * 397) ^ (Spans?.Count ?? 0));

    /// <summary>The section and its spans, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Section}, {Spans?.Count ?? 0} {(Spans?.Count == 1 ? "span" : "spans")}";

    internal (SectionNumbers Section, double[] Spans, double[]? Displacements) Read(string name, List<InputProblem>? problems)
    {
        SectionNumbers section = Door.IsMissing(Section, new Name(name + ".Section"), "width, thickness and modulus of elasticity", problems) ? default : Section.Read(new Name(name + ".Section"), problems);
        double[] spans = Lengths(Spans, name + ".Spans", s_span, 1, MostSpans, "1 to 100 spans", problems);
        double[] displacements = Lengths(Displacements, name + ".Displacements", s_displacement, 0, MostSpans + 1, DisplacementWords, problems);
        if (displacements.Length != 0 && spans.Length != 0 && displacements.Length != spans.Length + 1)
        {
            Door.Report(new InputProblem(name + ".Displacements", Print.Number(displacements.Length) + " lengths", DisplacementWords, isRange: true), problems);
        }

        return (section, spans, displacements.Length == 0 ? null : displacements);
    }

    private static double[] Lengths(IReadOnlyList<Length> lengths, string name, Allowed allowed, int least, int most, string words, List<InputProblem>? problems)
    {
        if (Door.IsMissing(lengths, new Name(name), words, problems))
        {
            return [];
        }

        if (lengths.Count < least || lengths.Count > most)
        {
            Door.Report(new InputProblem(name, Print.Number(lengths.Count) + " lengths", words, isRange: true), problems);
            return [];
        }

        double[] numbers = new double[lengths.Count];
        for (int i = 0; i < numbers.Length; i++)
        {
            numbers[i] = Door.Millimetres(lengths[i], new Name(name, i), allowed, problems);
        }

        return numbers;
    }
}
