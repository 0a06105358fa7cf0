using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;

namespace FinishKit.Tests;

/// <summary>Reads the reference tables: comma separated, with quotes. See Reference/README.md for what they are.</summary>
internal static class ReferenceTable
{
    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> Read(string file)
    {
        string[] lines = Repository.Read("tests", "FinishKit.Tests", "Reference", file).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        string[] header = Cells(lines[0]);
        return [.. lines.Skip(1).Select(line => Cells(line).Zip(header).ToDictionary(pair => pair.Second, pair => pair.First))];
    }

    /// <summary>The single cell of <c>check-values.csv</c> with this id.</summary>
    internal static IReadOnlyDictionary<string, string> CheckValue(string id) => Read("check-values.csv").Single(row => row["id"] == id);

    internal static double Number(this IReadOnlyDictionary<string, string> row, string column) => double.Parse(row[column], CultureInfo.InvariantCulture);

    private static string[] Cells(string line)
    {
        List<string> cells = [];
        StringBuilder cell = new();
        bool quoted = false;
        foreach (char c in line)
        {
            if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else
            {
                cell.Append(c);
            }
        }

        cells.Add(cell.ToString());
        return [.. cells];
    }
}
