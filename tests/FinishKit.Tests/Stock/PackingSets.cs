using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.Json;
using static FinishKit.Measure;

namespace FinishKit.Tests.Stock;

/// <summary>A cutting job of a set, in whole units of the set: a tenth of a millimetre where its boards would be too long for millimetres.</summary>
internal sealed record PackingInstance(string Set, string Name, int Kerf, int Best, bool IsBestProven, IReadOnlyList<(int Length, int Price)> Stock, IReadOnlyList<(int Length, int Count)> Items)
{
    internal bool IsMixed => Stock.Count > 1;

    internal int Pieces => Items.Sum(static item => item.Count);

    internal double Unit => Stock.Max(static board => board.Length) <= 20_000 ? 1 : 0.1;

    /// <summary>The job as the library takes it: nothing trimmed, the set's own saw cut, everything else by default.</summary>
    internal CuttingJob Job() => new(
        [.. Items.Select(item => new BoardPart(Mm(item.Length * Unit), item.Count))],
        [.. Stock.Select(board => new StockBoard(Mm(board.Length * Unit), board.Price))])
    {
        Kerf = Mm(Kerf * Unit),
        EndTrim = Mm(0),
    };
}

/// <summary>Sets of cutting jobs: the project's own beside the tests, the classic ones where somebody keeps them.</summary>
internal static class PackingSets
{
    internal const string Variable = "FINISHKIT_PACKING_SETS";

    /// <summary>Why the classic sets are not here.</summary>
    internal const string Missing = "The classic cutting sets are other people's data and not part of this repository. Name their folder in " + Variable + ", or keep them in shared/data/packing beside the repository.";

    internal static IReadOnlyList<PackingInstance> Van() => Read(Path.Combine(Repository.Root, "tests", "FinishKit.Tests", "Reference", "van1d-dev.jsonl"));

    internal static IReadOnlyList<PackingInstance> Classic(string folder, string set) => Read(Path.Combine(folder, set + ".jsonl"));

    /// <summary>Where the classic sets are, or null.</summary>
    internal static string? Folder()
    {
        if (Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } named)
        {
            return IsThere(named) ? named : null;
        }

        for (string? above = Repository.Root; above is not null; above = Path.GetDirectoryName(above))
        {
            string folder = Path.Combine(above, "shared", "data", "packing");
            if (IsThere(folder))
            {
                return folder;
            }
        }

        return null;
    }

    private static bool IsThere(string folder) => File.Exists(Path.Combine(folder, "1d-schwerin.jsonl"));

    private static List<PackingInstance> Read(string file)
    {
        List<PackingInstance> instances = [];
        foreach (string line in File.ReadLines(file).Where(static line => line.Length > 0))
        {
            using JsonDocument document = JsonDocument.Parse(line);
            JsonElement root = document.RootElement;
            bool isVan = root.TryGetProperty("stock", out JsonElement stock);
            instances.Add(new PackingInstance(
                root.GetProperty("set").GetString()!,
                root.GetProperty("name").GetString()!,
                isVan ? root.GetProperty("kerf").GetInt32() : 0,
                root.GetProperty("best").GetInt32(),
                root.GetProperty("status").GetString() == "optimal",
                isVan ? [.. stock.EnumerateArray().Select(static board => (board.GetProperty("length").GetInt32(), board.GetProperty("price").GetInt32()))] : [(root.GetProperty("capacity").GetInt32(), 1)],
                [.. root.GetProperty("items").EnumerateArray().Select(static item => (item[0].GetInt32(), item[1].GetInt32()))]));
        }

        return instances;
    }
}
