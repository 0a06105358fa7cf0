using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>What would let slats fill a face where no number of them does as asked: the number that comes nearest, and what it takes.</summary>
public sealed class SlatRemedy
{
    internal SlatRemedy(SlatNumbers run, SlatCount nearest, int? countWithEndSlatsTapered)
    {
        Nearest = nearest;
        CountWithEndSlatsTapered = countWithEndSlatsTapered;
        (double least, double greatest) = nearest.GapRange;
        if (least >= 0 && nearest.EndSlatRange.Least > 0)
        {
            LeastGap = Door.Millimetres(Math.Min(Grid.SnapDown(least), SlatNumbers.Millimetres(run.LeastGap, 1)));
            GreatestGap = Door.Millimetres(Math.Max(Grid.SnapUp(greatest), SlatNumbers.Millimetres(run.GreatestGap, 1)));
        }

        (long narrowest, long widest) = run.SlatWidthsFor(nearest.Count);
        if (narrowest <= widest)
        {
            LeastSlatWidth = Door.Millimetres(SlatNumbers.Millimetres(narrowest, 1));
            GreatestSlatWidth = Door.Millimetres(SlatNumbers.Millimetres(widest, 1));
        }
    }

    /// <summary>The number, up to one more than lie side by side, whose gap is least out of the range at the station where it is worst; of two alike the fewer.</summary>
    public SlatCount Nearest { get; }

    /// <summary>Least gap of a range, wide enough for the one asked, in which that number serves; null where no range does.</summary>
    public Length? LeastGap { get; }

    /// <summary>Greatest gap of that range; null where no range does.</summary>
    public Length? GreatestGap { get; }

    /// <summary>Narrowest slat of which that number serves every station at the gaps asked; null where no width does.</summary>
    public Length? LeastSlatWidth { get; }

    /// <summary>Widest such slat; null where no width does.</summary>
    public Length? GreatestSlatWidth { get; }

    /// <summary>How many serve every station if both end slats are ripped to a taper; null where that was asked already, the face does not taper, or it is no cure.</summary>
    public int? CountWithEndSlatsTapered { get; }

    /// <summary>The remedy in words, invariant.</summary>
    public string Text
    {
        get
        {
            List<string> ways = [];
            if (LeastSlatWidth is { } narrowest && GreatestSlatWidth is { } widest)
            {
                // Printed to the micrometre, inward: what is read serves too. A range narrower than that is printed as it is.
                double from = Math.Ceiling((Door.Millimetres(narrowest) * 1000) - 1e-6) / 1000, to = Math.Floor((Door.Millimetres(widest) * 1000) + 1e-6) / 1000;
                ways.Add(from <= to
                    ? $"{Nearest.Count} slats of {Print.Number(from)} to {Print.Mm(to)} serve at the gaps asked"
                    : $"{Nearest.Count} slats of {Print.Number(Door.Millimetres(narrowest))} to {Print.Number(Door.Millimetres(widest))} mm serve at the gaps asked");
            }

            if (LeastGap is { } least && GreatestGap is { } greatest)
            {
                ways.Add($"a gap of {Print.Number(Math.Floor((Door.Millimetres(least) * 1000) + 1e-6) / 1000)} to {Print.MmUp(Door.Millimetres(greatest))} takes {Nearest.Count} of the slats given");
            }

            if (CountWithEndSlatsTapered is { } count)
            {
                ways.Add($"with both end slats tapered {count} slats serve every station");
            }

            string text = string.Join("; ", ways);
            return text.Length == 0 ? "Neither another gap nor another slat width lets that number serve." : char.ToUpperInvariant(text[0]) + text.Substring(1) + ".";
        }
    }

    /// <summary>The remedy as flat figures.</summary>
    /// <returns>The nearest number, its least and greatest gap over the stations; the range of gaps and of slat widths and the number with end slats tapered, where there are such.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        (double least, double greatest) = Nearest.GapRange;
        List<Figure> figures = [new("nearest-count", Nearest.Count, string.Empty), new("nearest-least-gap", Grid.Snap(least), "mm"), new("nearest-greatest-gap", Grid.Snap(greatest), "mm")];
        Add(figures, "remedy-least-gap", LeastGap);
        Add(figures, "remedy-greatest-gap", GreatestGap);
        Add(figures, "remedy-least-slat-width", LeastSlatWidth);
        Add(figures, "remedy-greatest-slat-width", GreatestSlatWidth);
        if (CountWithEndSlatsTapered is { } count)
        {
            figures.Add(new Figure("count-with-end-slats-tapered", count, string.Empty));
        }

        return figures;
    }

    /// <summary>The same as <see cref="Text"/>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Text;

    private static void Add(List<Figure> figures, string name, Length? length)
    {
        if (length is { } given)
        {
            figures.Add(new Figure(name, Door.Millimetres(given), "mm"));
        }
    }
}
