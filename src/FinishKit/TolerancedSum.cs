using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>The sum of toleranced lengths, with its deviations counted in both ways.</summary>
public sealed class TolerancedSum
{
    internal TolerancedSum(double nominal, double least, double greatest, double mean, double batchSigma, double ownSigma)
    {
        Nominal = Door.Millimetres(Grid.Snap(nominal));
        WorstLeast = Door.Millimetres(Grid.Snap(least));
        WorstGreatest = Door.Millimetres(Grid.Snap(greatest));
        Mean = Door.Millimetres(Grid.Snap(mean));
        BatchSigma = Door.Millimetres(Grid.Snap(batchSigma));
        OwnSigma = Door.Millimetres(Grid.Snap(ownSigma));
        double sigma = Math.Sqrt((batchSigma * batchSigma) + (ownSigma * ownSigma));
        Sigma = Door.Millimetres(Grid.Snap(sigma));
        RootSumSquareLeast = Door.Millimetres(Grid.Snap(mean - (3 * sigma)));
        RootSumSquareGreatest = Door.Millimetres(Grid.Snap(mean + (3 * sigma)));
    }

    /// <summary>Sum of the nominal lengths.</summary>
    public Length Nominal { get; }

    /// <summary>Every deviation at its lower end.</summary>
    public Length WorstLeast { get; }

    /// <summary>Every deviation at its upper end.</summary>
    public Length WorstGreatest { get; }

    /// <summary>Sum of the middles of the tolerances.</summary>
    public Length Mean { get; }

    /// <summary>Standard deviation of the sum.</summary>
    public Length Sigma { get; }

    /// <summary>The part of <see cref="Sigma"/> that a whole batch shares.</summary>
    public Length BatchSigma { get; }

    /// <summary>The part of <see cref="Sigma"/> that each piece has to itself.</summary>
    public Length OwnSigma { get; }

    /// <summary>Mean less three sigma.</summary>
    public Length RootSumSquareLeast { get; }

    /// <summary>Mean plus three sigma.</summary>
    public Length RootSumSquareGreatest { get; }

    /// <summary>The sum as flat figures.</summary>
    /// <returns>Eight figures in mm: nominal, worst case, mean, sigmas, root-sum-square.</returns>
    public IReadOnlyList<Figure> Figures() =>
    [
        new("nominal", Nominal.Millimeters, "mm"),
        new("worst-least", WorstLeast.Millimeters, "mm"),
        new("worst-greatest", WorstGreatest.Millimeters, "mm"),
        new("mean", Mean.Millimeters, "mm"),
        new("batch-sigma", BatchSigma.Millimeters, "mm"),
        new("own-sigma", OwnSigma.Millimeters, "mm"),
        new("root-sum-square-least", RootSumSquareLeast.Millimeters, "mm"),
        new("root-sum-square-greatest", RootSumSquareGreatest.Millimeters, "mm"),
    ];

    /// <summary>Nominal, worst case and root-sum-square in millimetres, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Mm(Nominal.Millimeters)}, worst case {Print.Mm(WorstLeast.Millimeters)} to {Print.Mm(WorstGreatest.Millimeters)}, root-sum-square {Print.Mm(RootSumSquareLeast.Millimeters)} to {Print.Mm(RootSumSquareGreatest.Millimeters)}";
}
