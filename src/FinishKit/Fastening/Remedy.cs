using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>One change that would make a named fastener length safe and deep enough, as typed values and in words.</summary>
public abstract class Remedy
{
    private static readonly Allowed s_fastener = new(Allowed.OneStep, 500, "mm");

    private protected Remedy(Length fastener, FastenerCandidate outcome)
    {
        Door.Millimetres(fastener, nameof(fastener), s_fastener, null);
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

    /// <summary>Against what, for the sentence.</summary>
    private protected string Against => $"safe against {Outcome.BehindWords} in the worst case";

    private protected string FastenerWords => Print.Mm(Door.Millimetres(Fastener));

    /// <summary>The change as flat figures.</summary>
    /// <returns>The figures.</returns>
    public abstract IReadOnlyList<Figure> Figures();

    /// <summary>The same as <see cref="Text"/>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Text;
}

/// <summary>Thicker furring: the last layer that holds.</summary>
public sealed class FurringRemedy : Remedy
{
    private static readonly Allowed s_thickness = new(Allowed.OneStep, 1000, "mm");

    /// <summary>Makes a remedy.</summary>
    /// <param name="fastener">The fastener length that it makes safe [length], more than 0 up to 500 mm.</param>
    /// <param name="least">Thinnest furring that does, its own tolerance as the furring given [length], more than 0 up to 1 m.</param>
    /// <param name="sheet">The thinnest sheet whose actual size does, or null.</param>
    /// <param name="outcome">The length tried with the sheet, or with the thinnest furring where there is no sheet.</param>
    /// <exception cref="ArgumentNullException"><paramref name="outcome"/> is null.</exception>
    /// <exception cref="ArgumentException">A length is outside its range or in an undefined unit.</exception>
    public FurringRemedy(Length fastener, Length least, SheetGoods? sheet, FastenerCandidate outcome)
        : base(fastener, outcome)
    {
        Door.Millimetres(least, nameof(least), s_thickness, null);
        Least = least;
        Sheet = sheet;
    }

    /// <summary>Nominal thickness of the thinnest furring that does, at the tolerance of the furring given; rounded up to the 1 nm grid.</summary>
    public Length Least { get; }

    /// <summary>The thinnest sheet of those looked at whose least actual thickness does, or null.</summary>
    public SheetGoods? Sheet { get; }

    /// <inheritdoc/>
    public override string Text => $"With {Outcome.FurringName} of {Print.MmUp(Door.Millimetres(Least))} or more, at the tolerance of the one given, {FastenerWords} fasteners are {Against}"
        + (Sheet is null ? "; none of the sheets looked at is that thick." : $"; the next sheet is {Sheet.Name}, actually {Sheet.Thickness}.");

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

/// <summary>Driving at an angle, toward the metal of a rib that is wide enough for it.</summary>
public sealed class DriveAngleRemedy : Remedy
{
    private static readonly Allowed s_angle = new(0, 60, "deg");

    /// <summary>Makes a remedy.</summary>
    /// <param name="fastener">The fastener length that it makes safe [length], more than 0 up to 500 mm.</param>
    /// <param name="least">The least angle from the face normal that does [angle], 0° to 60°.</param>
    /// <param name="angle">The angle to set: the next whole degree [angle], 0° to 60°.</param>
    /// <param name="outcome">The length tried at <paramref name="angle"/>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="outcome"/> is null.</exception>
    /// <exception cref="ArgumentException">A value is outside its range or in an undefined unit.</exception>
    public DriveAngleRemedy(Length fastener, Angle least, Angle angle, FastenerCandidate outcome)
        : base(fastener, outcome)
    {
        Door.Radians(least, nameof(least), s_angle, null);
        Door.Radians(angle, nameof(angle), s_angle, null);
        Least = least;
        Angle = angle;
    }

    /// <summary>The least angle from the face normal that does, rounded up to a millionth of a degree.</summary>
    public Angle Least { get; }

    /// <summary>The angle to set: the next whole degree from <see cref="Least"/>.</summary>
    public Angle Angle { get; }

    /// <inheritdoc/>
    public override string Text => Door.Degrees(Angle) == 0
        ? $"Driven square, {FastenerWords} fasteners are {Against}."
        : $"Driven at {Print.Round(Door.Degrees(Angle), 0)} degrees from square, {FastenerWords} fasteners are {Against} and bite {Print.Mm(Door.Millimetres(Outcome.WorstBite))}; the tip lies {Print.Mm(Door.Millimetres(Outcome.SideShift))} to the side, where the same rib must still be.";

    /// <inheritdoc/>
    public override IReadOnlyList<Figure> Figures() =>
        [new("fastener", Door.Millimetres(Fastener), "mm"), new("least-drive-angle", Door.Degrees(Least), "deg"), new("drive-angle", Door.Degrees(Angle), "deg"), new("side-shift", Door.Millimetres(Outcome.SideShift), "mm")];
}

/// <summary>A thinner series that comes shorter. It holds less: fewer or thinner fasteners carry less.</summary>
public sealed class SeriesRemedy : Remedy
{
    /// <summary>Makes a remedy.</summary>
    /// <param name="fastener">The length in the other series that is safe and bites [length], more than 0 up to 500 mm.</param>
    /// <param name="series">The other series.</param>
    /// <param name="outcome">That length tried against the job.</param>
    /// <exception cref="ArgumentNullException"><paramref name="series"/> or <paramref name="outcome"/> is null.</exception>
    /// <exception cref="ArgumentException">The length is outside its range or in an undefined unit.</exception>
    public SeriesRemedy(Length fastener, FastenerSeries series, FastenerCandidate outcome)
        : base(fastener, outcome) => Series = series ?? throw new ArgumentNullException(nameof(series));

    /// <summary>The other series.</summary>
    public FastenerSeries Series { get; }

    /// <inheritdoc/>
    public override string Text => $"{Series.Name} comes in {FastenerWords}, which is {Against} and bites {Print.Mm(Door.Millimetres(Outcome.WorstBite))}; a {Print.Mm(Door.Millimetres(Series.Shank))} shank holds less.";

    /// <inheritdoc/>
    public override IReadOnlyList<Figure> Figures() => [new("fastener", Door.Millimetres(Fastener), "mm"), new("shank", Door.Millimetres(Series.Shank), "mm")];
}
