using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Where one slat's left edge goes, from the left end of the face.</summary>
public readonly struct SlatMark : IEquatable<SlatMark>
{
    private readonly double _exact, _mark;

    internal SlatMark(double exact, double mark)
    {
        _exact = exact;
        _mark = mark;
    }

    /// <summary>Its exact place.</summary>
    public Length Exact => Door.Millimetres(Grid.Snap(_exact));

    /// <summary>The mark to set out: the exact place rounded once, half away from the left end.</summary>
    public Length Mark => Door.Millimetres(_mark);

    /// <summary>Whether place and mark agree.</summary>
    /// <param name="left">One mark.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they agree on the 1 nm grid.</returns>
    public static bool operator ==(SlatMark left, SlatMark right) => left.Equals(right);

    /// <summary>Whether place or mark differ.</summary>
    /// <param name="left">One mark.</param>
    /// <param name="right">The other.</param>
    /// <returns>True if they differ on the 1 nm grid.</returns>
    public static bool operator !=(SlatMark left, SlatMark right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(SlatMark other) => Grid.Snap(_exact).Equals(Grid.Snap(other._exact)) && _mark.Equals(other._mark);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is SlatMark other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Grid.Snap(_exact).GetHashCode() * 397) ^ _mark.GetHashCode());

    /// <summary>Mark and exact place, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(_mark)} mm (exactly {Print.Mm(_exact)})";
}

/// <summary>The set-out of slats at one station: read every mark off one tape from the left end of the face, never from slat to slat.</summary>
public sealed class SlatSetOut
{
    internal SlatSetOut(SlatNumbers run, int count, int station)
    {
        long over = run.Over(count), step = run.Step, worst = 0;
        List<SlatMark> marks = new(count);
        for (int slat = 0; slat < count; slat++)
        {
            long left = run.LeftEdge(count, station, slat);
            long mark = SlatNumbers.FloorOf((2 * left) + (over * step), 2 * over * step) * step;
            worst = Math.Max(worst, Math.Abs((mark * over) - left));
            marks.Add(new SlatMark(SlatNumbers.Millimetres(left, over), SlatNumbers.Millimetres(mark, 1)));
        }

        Width = Door.Millimetres(run.WidthAt(station));
        Marks = [.. marks];
        GreatestError = Door.Millimetres(Grid.Snap(SlatNumbers.Millimetres(worst, over)));
    }

    /// <summary>Width of the face at the station.</summary>
    public Length Width { get; }

    /// <summary>The left edge of every slat, from the left end of the face, in order.</summary>
    public IReadOnlyList<SlatMark> Marks { get; }

    /// <summary>How far the mark that was rounded most is from its exact place: at most half a step.</summary>
    public Length GreatestError { get; }

    /// <summary>Every mark, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        List<string> marks = [];
        foreach (SlatMark mark in Marks)
        {
            marks.Add(Print.Number(Door.Millimetres(mark.Mark)));
        }

        return $"left edges from the left end, mm: {string.Join(", ", marks)}";
    }
}
