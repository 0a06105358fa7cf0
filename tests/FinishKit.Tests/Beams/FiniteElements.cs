using System;
using System.Collections.Generic;
using System.Linq;

namespace FinishKit.Tests.Beams;

/// <summary>
/// The independent way to bend a beam: cubic beam elements, stiffness matrix, prescribed displacements at the supports, elimination
/// with pivots. Exact at its nodes for loads at nodes and for uniform loads; every point load gets a node.
/// </summary>
internal sealed class FiniteElements
{
    private readonly double[] _nodes;
    private readonly double[] _solution;
    private readonly double[] _forces;
    private readonly int[] _supports;

    internal FiniteElements(double[] spans, double stiffness, double[]? displacements, double[] uniform, (int Span, double Distance, double Load)[] points, int elements = 10)
    {
        double[] starts = new double[spans.Length + 1];
        for (int i = 0; i < spans.Length; i++)
        {
            starts[i + 1] = starts[i] + spans[i];
        }

        SortedSet<double> nodes = [.. starts];
        for (int i = 0; i < spans.Length; i++)
        {
            nodes.UnionWith(Enumerable.Range(1, elements - 1).Select(j => starts[i] + (spans[i] * j / elements)));
        }

        nodes.UnionWith(points.Select(point => starts[point.Span] + point.Distance));
        _nodes = [.. nodes];
        _supports = [.. starts.Select(start => Array.IndexOf(_nodes, start))];
        int size = 2 * _nodes.Length;
        double[][] matrix = [.. Enumerable.Range(0, size).Select(_ => new double[size])];
        double[] load = new double[size];
        for (int e = 0; e + 1 < _nodes.Length; e++)
        {
            double h = _nodes[e + 1] - _nodes[e], k = stiffness / (h * h * h);
            double[][] own = [[12, 6 * h, -12, 6 * h], [6 * h, 4 * h * h, -6 * h, 2 * h * h], [-12, -6 * h, 12, -6 * h], [6 * h, 2 * h * h, -6 * h, 4 * h * h]];
            int span = Math.Min(spans.Length - 1, Array.FindLastIndex(starts, start => start <= _nodes[e]));
            double q = uniform[span];
            double[] spread = [q * h / 2, q * h * h / 12, q * h / 2, -q * h * h / 12];
            for (int r = 0; r < 4; r++)
            {
                load[(2 * e) + r] += spread[r];
                for (int c = 0; c < 4; c++)
                {
                    matrix[(2 * e) + r][(2 * e) + c] += k * own[r][c];
                }
            }
        }

        foreach ((int span, double distance, double force) in points)
        {
            load[2 * Array.IndexOf(_nodes, starts[span] + distance)] += force;
        }

        double[][] free = [.. matrix.Select(static row => (double[])row.Clone())];
        double[] right = (double[])load.Clone();
        for (int s = 0; s < _supports.Length; s++)
        {
            int row = 2 * _supports[s];
            for (int c = 0; c < size; c++)
            {
                free[row][c] = c == row ? 1 : 0;
            }

            right[row] = displacements?[s] ?? 0;
        }

        _solution = Solve(free, right);
        _forces = [.. _supports.Select(node => load[2 * node] - Enumerable.Range(0, size).Sum(c => matrix[2 * node][c] * _solution[c]))];
    }

    /// <summary>What each support pushes back with.</summary>
    internal double[] Reactions => _forces;

    /// <summary>Node, distance from the first support, and deflection.</summary>
    internal IEnumerable<(double Place, double Deflection)> Deflections => _nodes.Select((node, i) => (node, _solution[2 * i]));

    private static double[] Solve(double[][] matrix, double[] right)
    {
        int n = right.Length;
        for (int column = 0; column < n; column++)
        {
            int pivot = Enumerable.Range(column, n - column).MaxBy(row => Math.Abs(matrix[row][column]));
            (matrix[column], matrix[pivot]) = (matrix[pivot], matrix[column]);
            (right[column], right[pivot]) = (right[pivot], right[column]);
            for (int row = column + 1; row < n; row++)
            {
                double factor = matrix[row][column] / matrix[column][column];
                if (factor != 0)
                {
                    for (int c = column; c < n; c++)
                    {
                        matrix[row][c] -= factor * matrix[column][c];
                    }

                    right[row] -= factor * right[column];
                }
            }
        }

        for (int row = n - 1; row >= 0; row--)
        {
            for (int c = row + 1; c < n; c++)
            {
                right[row] -= matrix[row][c] * right[c];
            }

            right[row] /= matrix[row][row];
        }

        return right;
    }
}
