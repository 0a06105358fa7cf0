using System;

namespace FinishKit;

/// <summary>One step of the simplex method on a basis that is kept as its inverse: what <see cref="PatternProgram"/> and the program over joints have in common.</summary>
internal static class BasisStep
{
    private const double Tolerance = 1e-9;

    /// <summary>Puts a column into the basis.</summary>
    /// <param name="column">The column, by the inverse.</param>
    /// <param name="inverse">Becomes that of the new basis.</param>
    /// <param name="level">Becomes that of the new basis.</param>
    /// <param name="tie">Ratios no farther apart are alike; of these the row with the greatest entry leaves.</param>
    /// <param name="kept">A row that never leaves; -1 for none.</param>
    /// <returns>The row whose column it takes the place of; -1 where no level limits it, and nothing is done.</returns>
    internal static int Enter(double[] column, double[][] inverse, double[] level, double tie, int kept = -1)
    {
        int leaving = -1;
        double step = double.PositiveInfinity;
        for (int row = 0; row < column.Length; row++)
        {
            if (column[row] <= Tolerance || row == kept)
            {
                continue;
            }

            double ratio = level[row] / column[row];
            if (ratio < step - tie || (ratio <= step + tie && (leaving < 0 || column[row] > column[leaving])))
            {
                step = Math.Min(step, ratio);
                leaving = row;
            }
        }

        if (leaving < 0)
        {
            return -1;
        }

        double pivot = column[leaving];
        double[] pivotRow = inverse[leaving];
        for (int i = 0; i < pivotRow.Length; i++)
        {
            pivotRow[i] /= pivot;
        }

        step = level[leaving] / pivot;
        for (int row = 0; row < column.Length; row++)
        {
            double factor = column[row];
            if (row == leaving || factor == 0)
            {
                continue;
            }

            double[] own = inverse[row];
            for (int i = 0; i < own.Length; i++)
            {
                own[i] -= factor * pivotRow[i];
            }

            level[row] = Math.Max(0, level[row] - (factor * step));
        }

        level[leaving] = step;
        return leaving;
    }
}
