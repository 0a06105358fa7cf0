using System;
using System.Linq;

namespace FinishKit.Tests.Panels;

/// <summary>
/// The sheet once more, another way: shape u = c + d s + sum of P max(0, s - s_i)³/6 over the rows, through the arc at every row, forces and
/// their moments in balance. Stiffness 1, arc of curvature 1, hollow: u outward as a lens s (L - s)/2. Solved by elimination with pivots.
/// </summary>
internal sealed class SplineOracle
{
    private readonly double[] _rows, _unknowns;

    internal SplineOracle(double[] rows)
    {
        _rows = rows;
        int n = rows.Length;
        double[][] system = [.. Enumerable.Range(0, n + 2).Select(_ => new double[n + 3])];
        for (int i = 0; i < n; i++)
        {
            system[i][n] = 1;
            system[i][n + 1] = rows[i];
            for (int j = 0; j < i; j++)
            {
                system[i][j] = Math.Pow(rows[i] - rows[j], 3) / 6;
            }

            system[i][n + 2] = Arc(rows[i]);
            system[n][i] = 1;
            system[n + 1][i] = rows[i];
        }

        _unknowns = Solve(system);
    }

    /// <summary>Force on the sheet at a row, outward.</summary>
    internal double Force(int row) => _unknowns[row];

    /// <summary>Curvature outward-bowing, over that of the arc.</summary>
    internal double Curvature(double s) => -_rows.Select((row, i) => s > row ? _unknowns[i] * (s - row) : 0).Sum();

    internal double Departure(double s) => _unknowns[^2] + (_unknowns[^1] * s) + _rows.Select((row, i) => s > row ? _unknowns[i] * Math.Pow(s - row, 3) / 6 : 0).Sum() - Arc(s);

    internal static double[] Solve(double[][] system)
    {
        int n = system.Length;
        for (int column = 0; column < n; column++)
        {
            int pivot = Enumerable.Range(column, n - column).MaxBy(row => Math.Abs(system[row][column]));
            (system[column], system[pivot]) = (system[pivot], system[column]);
            for (int row = 0; row < n; row++)
            {
                double share = row == column ? 0 : system[row][column] / system[column][column];
                for (int k = column; k <= n && share != 0; k++)
                {
                    system[row][k] -= share * system[column][k];
                }
            }
        }

        return [.. Enumerable.Range(0, n).Select(row => system[row][n] / system[row][row])];
    }

    private double Arc(double s) => (s - _rows[0]) * (_rows[^1] - s) / 2;
}
