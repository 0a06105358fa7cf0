using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Reflection;
using UnitsNet;
using UnitsNet.Units;

namespace FinishKit;

/// <summary>
/// Reads the embedded tables: one readable comma-separated file each, comments after <c># </c>, a header row, no quotes. Strict: a
/// malformed table is a bug of the library, and a test reads every row.
/// </summary>
internal static class MaterialTables
{
    /// <summary>The edition that results repeat. Changes whenever a row does.</summary>
    internal const string Edition = "2026-11";

    internal static IReadOnlyList<T> Read<T>(string table, Func<TableRow, T> make)
    {
        List<T> rows = [];
        using Stream stream = typeof(MaterialTables).GetTypeInfo().Assembly.GetManifestResourceStream(table)
            ?? throw new InvalidOperationException($"The table {table} is not embedded.");
        using StreamReader reader = new(stream);
        string[]? header = null;
        while (reader.ReadLine() is { } line)
        {
            if (line.Length == 0 || line.StartsWith("# ", StringComparison.Ordinal))
            {
                continue;
            }

            string[] cells = line.Split(',');
            if (header is null)
            {
                header = cells;
            }
            else if (cells.Length != header.Length)
            {
                throw new InvalidOperationException($"{table}: '{line}' has {cells.Length} cells, not {header.Length}.");
            }
            else
            {
                rows.Add(make(new TableRow(table, header, cells)));
            }
        }

        return [.. rows]; // a copy that cannot be cast back to a list and changed
    }

    /// <summary>The entry of a name, or a clear refusal that lists what there is.</summary>
    internal static T Named<T>(IReadOnlyList<T> all, string name, Func<T, string> nameOf)
        where T : class
    {
        Door.IsMissing(name, new Name(nameof(name)), "a name in the table", null);
        return Find(all, name, nameOf) ?? throw new InputProblem(nameof(name), "'" + Shorten(name) + "'", "one of: " + string.Join("; ", Names(all, nameOf)), isRange: false).ToException();
    }

    internal static T? Find<T>(IReadOnlyList<T> all, string? name, Func<T, string> nameOf)
        where T : class
    {
        foreach (T entry in all)
        {
            if (string.Equals(nameOf(entry), name, StringComparison.OrdinalIgnoreCase))
            {
                return entry;
            }
        }

        return null;
    }

    private static List<string> Names<T>(IReadOnlyList<T> all, Func<T, string> nameOf)
    {
        List<string> names = [];
        foreach (T entry in all)
        {
            names.Add(nameOf(entry));
        }

        return names;
    }

    private static string Shorten(string text) => text.Length <= 60 ? text : text.Remove(57) + "...";
}

/// <summary>One row of a table.</summary>
internal sealed class TableRow(string table, string[] header, string[] cells)
{
    internal string this[string column] => cells[Array.IndexOf(header, column) is >= 0 and int at ? at : throw new InvalidOperationException($"{table} has no column {column}.")];

    internal double Number(string column) => double.Parse(this[column], NumberStyles.Float, CultureInfo.InvariantCulture);

    internal bool Has(string column) => this[column].Length > 0;

    /// <summary>A length in inches, decimal or a fraction: <c>1-1/4</c>.</summary>
    internal static Length Inches(string text)
    {
        double inches = 0;
        foreach (string part in text.Split('-'))
        {
            string[] fraction = part.Split('/');
            double number = double.Parse(fraction[0], NumberStyles.Float, CultureInfo.InvariantCulture);
            inches += fraction.Length == 1 ? number : number / double.Parse(fraction[1], NumberStyles.Float, CultureInfo.InvariantCulture);
        }

        return new Length(inches, LengthUnit.Inch);
    }

    /// <summary>A length with its unit behind it: <c>15 mm</c>, <c>19/32 in</c>.</summary>
    internal static Length Length(string text)
    {
        string[] parts = text.Split(' ');
        return parts[1] == "in" ? Inches(parts[0]) : Measure.Mm(double.Parse(parts[0], NumberStyles.Float, CultureInfo.InvariantCulture));
    }

    /// <summary>What the row rests on: the source it names, read as its tag says. A tag never claims more than the source's own entry.</summary>
    internal Source Source()
    {
        Source source = MaterialSources.ById[this["source"]];
        return this["tag"] switch
        {
            "copy" => source.At(source.Place, SourceReading.Copy),
            "memory" => source.At(source.Place, SourceReading.Memory),
            "derived" when source.Kind == SourceKind.Derived => source,
            "common-practice" when source.Kind == SourceKind.CommonPractice => source,
            "judgement" when source.Kind == SourceKind.Judgement => source,
            string tag => throw new InvalidOperationException($"{table}: the tag '{tag}' does not fit the source {source.Id}."),
        };
    }
}
