using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.Json;
using static FinishKit.Measure;

namespace FinishKit.Tests.Stock;

/// <summary>A nesting job of a set with sheets of one size; small units of a set are taken as centimetres.</summary>
internal sealed record NestingInstance(string Name, int Length, int Width, int Kerf, int Best, int Least, IReadOnlyList<(int Length, int Width, int Count, bool MayTurn)> Items)
{
    internal int Pieces => Items.Sum(static item => item.Count);

    private double Unit => Length < 100 ? 10 : 1;

    /// <summary>The job as the library takes it: nothing trimmed, the set's own saw cut, a sheet costs 1.</summary>
    internal NestingJob Job(SheetCutting cutting) => new(
        [.. Items.Select(item => new SheetPart(Mm(item.Length * Unit), Mm(item.Width * Unit), item.Count, item.MayTurn))],
        [new StockSheet(Mm(Length * Unit), Mm(Width * Unit), 1)],
        cutting)
    {
        Kerf = Mm(Kerf * Unit),
        Trim = Mm(0),
    };

    /// <summary>Piece by piece, each with its kerf.</summary>
    internal IReadOnlyList<(long Length, long Width, bool MayTurn)> Inflated() =>
        [.. Items.SelectMany(item => Enumerable.Repeat(((long)item.Length + Kerf, (long)item.Width + Kerf, item.MayTurn), item.Count))];
}

/// <summary>A strip of given width whose least length is known.</summary>
internal sealed record StripInstance(string Name, int Width, double Best, IReadOnlyList<(int Across, int Along, int Count)> Items)
{
    internal RollJob Job(bool mayTurn) => new([.. Items.Select(item => new RollPart(Mm(item.Along), Mm(item.Across), item.Count, mayTurn))], Mm(Width));

    /// <summary>How much longer than the least, as a part of it.</summary>
    internal double Gap(RollPlan plan) => (plan.Length.Millimeters - Best) / Best;
}

/// <summary>Sets of nesting jobs: the project's own beside the tests, the classic ones where somebody keeps them (<see cref="PackingSets.Folder"/>).</summary>
internal static class NestingSets
{
    internal static IReadOnlyList<NestingInstance> Van() => [.. Read(Path.Combine(Repository.Root, "tests", "FinishKit.Tests", "Reference", "van2d-dev.jsonl")).Select(static root =>
    {
        JsonElement sheet = root.GetProperty("sheet");
        return new NestingInstance(
            root.GetProperty("name").GetString()!,
            sheet.GetProperty("w").GetInt32(),
            sheet.GetProperty("h").GetInt32(),
            root.GetProperty("kerf").GetInt32(),
            root.GetProperty("best").GetInt32(),
            root.GetProperty("lb").GetInt32(),
            [.. root.GetProperty("items").EnumerateArray().Select(static item => (item.GetProperty("w").GetInt32(), item.GetProperty("h").GetInt32(), item.GetProperty("qty").GetInt32(), item.GetProperty("rotate").GetBoolean()))]);
    })];

    /// <summary>Each as it lies, and with every piece free to turn.</summary>
    internal static IReadOnlyList<(NestingInstance Fixed, NestingInstance Turning)> BinPacking(string folder) =>
        [.. Read(Path.Combine(folder, "2d-bp-bwmv.jsonl")).Select(static root => (Of(root, "oriented", false), Of(root, "rotation", true)))];

    internal static IReadOnlyList<StripInstance> Strips(string folder, string set) => [.. Read(Path.Combine(folder, set + ".jsonl")).Select(static root => new StripInstance(
        root.GetProperty("name").GetString()!,
        root.GetProperty("W").GetInt32(),
        root.GetProperty("best_height").GetDouble(),
        [.. root.GetProperty("items").EnumerateArray().Select(static item => (item[0].GetInt32(), item[1].GetInt32(), item[2].GetInt32()))]))];

    private static NestingInstance Of(JsonElement root, string best, bool mayTurn) => new(
        root.GetProperty("name").GetString()!,
        root.GetProperty("W").GetInt32(),
        root.GetProperty("H").GetInt32(),
        0,
        root.GetProperty("best_" + best).GetInt32(),
        root.GetProperty("lb_" + best).GetInt32(),
        [.. root.GetProperty("items").EnumerateArray().Select(item => (item[0].GetInt32(), item[1].GetInt32(), item[2].GetInt32(), mayTurn))]);

    private static IEnumerable<JsonElement> Read(string file)
    {
        foreach (string line in File.ReadLines(file).Where(static line => line.Length > 0))
        {
            using JsonDocument document = JsonDocument.Parse(line);
            yield return document.RootElement.Clone();
        }
    }
}
