namespace FinishKit;

/// <summary>The range a number must lie in, both ends met, with the words for the message.</summary>
internal sealed class Allowed(double least, double most, string unit, string? words = null)
{
    /// <summary>One step of the length grid: for lengths, "more than 0" is "at least one step".</summary>
    internal const double OneStep = 1e-6;

    internal double Least { get; } = least;

    internal double Most { get; } = most;

    internal string Unit { get; } = unit;

    internal bool Holds(double value) => value >= Least && value <= Most;

    internal string Suffix => Unit.Length == 0 ? string.Empty : " " + Unit;

    public override string ToString() => words
        ?? (Least == OneStep ? $"more than 0{Suffix}, up to {Print.Number(Most)}{Suffix}" : $"{Print.Number(Least)} to {Print.Number(Most)}{Suffix}");
}
