using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>One change that would make a named fastener length safe, as typed values and in words.</summary>
public abstract class Remedy
{
    private protected Remedy(Length fastener, FastenerCandidate outcome)
    {
        Fastener = fastener;
        Outcome = outcome ?? throw new ArgumentNullException(nameof(outcome));
    }

    /// <summary>The fastener length that the change makes safe.</summary>
    public Length Fastener { get; }

    /// <summary>That length tried against the changed job.</summary>
    public FastenerCandidate Outcome { get; }

    /// <summary>The change in a sentence, invariant.</summary>
    public abstract string Text { get; }

    /// <summary>What a person should know about the length once the change is made: the findings of <see cref="Outcome"/>.</summary>
    public IReadOnlyList<Finding> Findings => Outcome.Findings;

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: the length is safe then, but may bite too little.</summary>
    public bool HasProblem => Outcome.HasProblem;

    /// <summary>How the figures of that length follow once the change is made.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain() => Outcome.Explain();

    /// <summary>The change as flat figures.</summary>
    /// <returns>The figures.</returns>
    public abstract IReadOnlyList<Figure> Figures();

    /// <summary>The same as <see cref="Text"/>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Text;
}

/// <summary>Thicker furring.</summary>
public sealed class FurringRemedy : Remedy
{
    /// <summary>Makes a remedy.</summary>
    /// <param name="fastener">The fastener length that it makes safe.</param>
    /// <param name="least">Thinnest furring that does, its own tolerance as the furring given.</param>
    /// <param name="sheet">The thinnest stocked sheet whose actual size does, or null.</param>
    /// <param name="outcome">The length tried with the sheet, or with the thinnest furring where there is no sheet.</param>
    /// <exception cref="ArgumentNullException"><paramref name="outcome"/> is null.</exception>
    public FurringRemedy(Length fastener, Length least, SheetGoods? sheet, FastenerCandidate outcome)
        : base(fastener, outcome)
    {
        Least = least;
        Sheet = sheet;
    }

    /// <summary>Nominal thickness of the thinnest furring that does, at the tolerance of the furring given; rounded up to the 1 nm grid.</summary>
    public Length Least { get; }

    /// <summary>The thinnest stocked sheet whose least actual thickness does, or null.</summary>
    public SheetGoods? Sheet { get; }

    /// <inheritdoc/>
    public override string Text => $"Furring of {Print.Mm(Door.Millimetres(Least))} or more at the tolerance of the furring given makes {Print.Mm(Door.Millimetres(Fastener))} fasteners safe"
        + (Sheet is null ? "; no stocked sheet is that thick." : $"; the next stocked sheet is {Sheet.Name}, actually {Sheet.Thickness}.");

    /// <inheritdoc/>
    public override IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures = [new("fastener", Door.Millimetres(Fastener), "mm"), new("least-furring", Door.Millimetres(Least), "mm")];
        if (Sheet is not null)
        {
            figures.Add(new Figure("sheet-label", Door.Millimetres(Sheet.Nominal), "mm"));
            figures.Add(new Figure("sheet-actual", Door.Millimetres(Sheet.Thickness.Nominal), "mm"));
        }

        return figures;
    }
}

/// <summary>Driving at an angle.</summary>
public sealed class DriveAngleRemedy : Remedy
{
    /// <summary>Makes a remedy.</summary>
    /// <param name="fastener">The fastener length that it makes safe.</param>
    /// <param name="angle">The least angle from the face normal that does.</param>
    /// <param name="outcome">The length tried at that angle.</param>
    /// <exception cref="ArgumentNullException"><paramref name="outcome"/> is null.</exception>
    public DriveAngleRemedy(Length fastener, Angle angle, FastenerCandidate outcome)
        : base(fastener, outcome) => Angle = angle;

    /// <summary>The least angle from the face normal that does, rounded up to a millionth of a degree.</summary>
    public Angle Angle { get; }

    /// <inheritdoc/>
    public override string Text => $"Driven at {Print.Round(Math.Ceiling(Door.Degrees(Angle)), 0)} degrees or more from square, {Print.Mm(Door.Millimetres(Fastener))} fasteners are safe (bite {Print.Mm(Door.Millimetres(Outcome.WorstBite))} in the worst case).";

    /// <inheritdoc/>
    public override IReadOnlyList<Figure> Figures() => [new("fastener", Door.Millimetres(Fastener), "mm"), new("drive-angle", Door.Degrees(Angle), "deg")];
}

/// <summary>Another series.</summary>
public sealed class SeriesRemedy : Remedy
{
    /// <summary>Makes a remedy.</summary>
    /// <param name="fastener">The length in the other series that is safe and bites.</param>
    /// <param name="series">The other series.</param>
    /// <param name="outcome">That length tried against the job.</param>
    /// <exception cref="ArgumentNullException"><paramref name="series"/> or <paramref name="outcome"/> is null.</exception>
    public SeriesRemedy(Length fastener, FastenerSeries series, FastenerCandidate outcome)
        : base(fastener, outcome) => Series = series ?? throw new ArgumentNullException(nameof(series));

    /// <summary>The other series.</summary>
    public FastenerSeries Series { get; }

    /// <inheritdoc/>
    public override string Text => $"{Series.Name} comes in {Print.Mm(Door.Millimetres(Fastener))}, which is safe and bites {Print.Mm(Door.Millimetres(Outcome.WorstBite))} in the worst case.";

    /// <inheritdoc/>
    public override IReadOnlyList<Figure> Figures() => [new("fastener", Door.Millimetres(Fastener), "mm"), new("shank", Door.Millimetres(Series.Shank), "mm")];
}
