using System;
using System.Collections.Generic;
using System.Linq;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests;

/// <summary>The README's example is compiled here, and its output is the real one.</summary>
public sealed class ReadmeTests
{
    [Fact]
    public void The_example_prints_what_the_readme_says()
    {
        Console.Lines.Clear();
        #region example: README
        // A 12.7 mm board over furring ripped from an 18 mm birch sheet that bears on a steel rib: which 18 gauge brad?
        var choice = FastenerLength.Choose([Mm(12.7), Layer.Furring(SheetGoods.Birch18)], Behind.Metal, FastenerSeries.Brad18);
        Console.WriteLine(choice.Chosen!.Length + ", clearance " + choice.Chosen.Clearance + ", worst case " + choice.Chosen.WorstClearance);
        Console.WriteLine(choice.NextLonger!.TipReason);

        // A sheet labelled 15 mm may be 14.2. What then?
        choice = FastenerLength.Choose([Mm(12.7), Layer.Furring(SheetGoods.Birch15)], Behind.Metal, FastenerSeries.Brad18);
        Console.WriteLine(choice.Findings[0].Message);
        foreach (var remedy in choice.Remedies)
            Console.WriteLine(remedy.Text);
        #endregion

        string[] blocks = Repository.Read("README.md").Split("```");
        string code = Assert.Single(blocks, block => block.StartsWith("csharp\n", StringComparison.Ordinal));
        string[] expected = [.. Documented("tests", "FinishKit.Tests", "ReadmeTests.cs")];
        Assert.Equal(expected, code["csharp\n".Length..].Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0 && !line.StartsWith("using ", StringComparison.Ordinal)));

        string output = Assert.Single(blocks, block => block.StartsWith("text\n", StringComparison.Ordinal));
        Assert.Equal(string.Join(" ", Console.Lines), string.Join(" ", output["text\n".Length..].Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0)));
    }

    private static IEnumerable<string> Documented(params string[] path) => Repository.Read(path).Split('\n').Select(line => line.Trim())
        .SkipWhile(line => !line.StartsWith("#region example: README", StringComparison.Ordinal)).Skip(1).TakeWhile(line => line != "#endregion").Where(line => line.Length > 0);

    /// <summary>Stands in for the console, so that the example reads as a program does.</summary>
    private static class Console
    {
        internal static List<string> Lines { get; } = [];

        internal static void WriteLine(string line) => Lines.Add(line);
    }
}
