#if !NETSTANDARD_BUILD // the program is built on the net10.0 library only
using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;
using System.Threading;
using System.Threading.Tasks;
using Xunit;

namespace FinishKit.Tests.Examples;

/// <summary>The program docs/examples/one-wall.cs as a person runs it: built once, then started with files.</summary>
public sealed class OneWallTests(OneWallProgram program) : IClassFixture<OneWallProgram>
{
    private static readonly string s_demo = File.ReadAllText(Path.Combine(Repository.Root, "docs", "examples", "one-wall.json"));

    public static TheoryData<string, string, string, string[]> BrokenFiles() => new()
    {
        { "decimal comma", "\"thickness\": \"12.7 mm\"", "\"thickness\": \"12,7 mm\"", ["$.finish.boards.thickness: “12,7 mm”", "comma"] },
        { "no unit", "\"girth\": \"442 mm\"", "\"girth\": \"442\"", ["$.wall.bands[1].girth: “442”, a number without a unit"] },
        { "a number for a length", "\"cavity\": \"55 mm\"", "\"cavity\": 55", ["$.wall.bands[0].cavity: \"55\"; allowed is a length with its unit"] },
        { "a fraction of a metric unit", "\"u\": \"480 mm\"", "\"u\": \"1/2 mm\"", ["$.wall.ribs[1].u: “1/2 mm”, a fraction of a metric unit"] },
        { "unknown member", "\"rows\": 3", "\"rows\": 3, \"colour\": \"oak\"", ["$.finish.panel[\"colour\"]: unknown member; allowed are sheet, rows"] },
        { "missing member", "\"series\": \"16 ga finish nail\", ", "", ["$.finish.nails.series: missing"] },
        { "member twice", "\"rows\": 3", "\"rows\": 3, \"rows\": 4", ["$.finish.panel.rows: given more than once"] },
        { "member in other case", "\"side\"", "\"Side\"", ["$.wall[\"Side\"]: unknown member", "$.wall.side: missing"] },
        { "null", "\"species\": \"ponderosa pine\", \"width\": \"89 mm\"", "\"species\": null, \"width\": \"89 mm\"", ["$.finish.boards.species: \"null\"; allowed is text"] },
        { "a list for an object", "\"front\": { \"chord\": \"1506 mm\", \"rise\": \"75 mm\" }", "\"front\": []", ["$.ceiling.front: a list; allowed is an object with chord, rise"] },
        { "a half for a whole number", "\"count\": 200", "\"count\": 2.5", ["$.finish.nails.count: \"2.5\"; allowed is a whole number"] },
        { "a side that no van has", "\"side\": \"left\"", "\"side\": \"top\"", ["$.wall.side: \"top\"; allowed are left, right"] },
        { "neither end", "\"u-from\": \"front\"", "\"u-from\": \"middle\"", ["$.u-from: \"middle\"; allowed are front, rear"] },
        { "unknown wood", "\"species\": \"ponderosa pine\", \"width\": \"89 mm\"", "\"species\": \"balsa of mine\", \"width\": \"89 mm\"", ["$.finish.boards.species: \"balsa of mine\"; allowed are", "ponderosa pine"] },
        { "unknown sheet", "\"15 mm birch plywood sanded\"", "\"15 mm fir\"", ["$.finish.furring.sheet: \"15 mm fir\"; allowed are", "12 mm birch plywood sanded"] },
        { "unknown nails", "16 ga finish nail", "16 ga wish nail", ["$.finish.nails.series: \"16 ga wish nail\"; allowed are", "18 ga brad"] },
        { "board of no thickness", "\"thickness\": \"12.7 mm\"", "\"thickness\": \"0 mm\"", ["$.finish.boards.thickness: 0 mm; allowed is more than 0 mm"] },
        { "no nails", "\"count\": 200", "\"count\": 0", ["$.finish.nails.count: 0; allowed is 1 to 1000000"] },
        { "furring thinner than its tolerance", "\"plus-minus\": \"0.5 mm\"", "\"plus-minus\": \"16 mm\"", ["$.finish.furring.thickness"] },
        { "two rows", "\"rows\": 3", "\"rows\": 2", ["$.finish.panel.rows: 2; allowed is 3 to 12"] },
        { "a lean past reason", "\"lean-degrees\": 5.5", "\"lean-degrees\": 95", ["$.wall.bands[1].lean-degrees: 95 deg; allowed is -60 to 60 deg"] },
        { "height, girth and lean of two walls", "\"top\": \"1500 mm\"", "\"top\": \"1520 mm\"", ["$.wall.bands[1].top: 1520 mm; allowed is 1494.", " to 1504."] }, // 1060 + 442 cos 5.5° = 1499.965
        { "a window that ends before it begins", "\"from\": \"500 mm\", \"to\": \"1400 mm\"", "\"from\": \"1400 mm\", \"to\": \"500 mm\"", ["$.wall.windows[0].to: 500 mm; allowed is 1401 to 3400 mm"] },
        { "a window over the top", "\"top\": \"610 mm\", \"corner-radius\": \"70 mm\" },", "\"top\": \"1610 mm\", \"corner-radius\": \"70 mm\" },", ["$.wall.windows[0].top: 1610 mm; allowed is 231 to 994 mm"] },
        { "a rib behind the van", "\"u\": \"3060 mm\"", "\"u\": \"3460 mm\"", ["$.wall.ribs[7].u: 3460 mm; allowed is 0 to 3400 mm"] },
        { "a wire off the wall", "\"v\": \"660 mm\"", "\"v\": \"1660 mm\"", ["$.wall.wires[0].v: 1660 mm; allowed is 0 to 994 mm"] },
        { "a wire behind itself", "\"depth-to\": \"35 mm\"", "\"depth-to\": \"15 mm\"", ["$.wall.wires[0].depth-to: 15 mm; allowed is 20 to 1000 mm"] },
        { "a rear edge that stops short", "\"v\": \"994 mm\", \"forward\": \"48 mm\"", "\"v\": \"900 mm\", \"forward\": \"48 mm\"", ["$.wall.rear-edge[5].v: 900 mm; allowed is 994 to 994 mm"] },
        { "gaps the wrong way round", "\"gap-least\": \"6 mm\"", "\"gap-least\": \"12 mm\"", ["$.finish.slats.gap-most: 10 mm; allowed is 12 to 1000 mm"] },
        { "slats of a millimetre", "\"width\": \"40 mm\", \"thickness\": \"10 mm\"", "\"width\": \"1 mm\", \"thickness\": \"10 mm\"", ["$.finish.slats.width: 1 mm; allowed is 5 to 1000 mm"] },
        { "a name that would clear the screen", "\"Demo van, long, high roof\"", "\"S\\u001b[2J\"", ["$.van: \"S?[2J\"; allowed are 1 to 60 plain characters"] },
        { "no comma", "\"wall\": {", "\"wall\" {", ["line 5, byte ", "not JSON"] },
    };

    [Theory]
    [MemberData(nameof(BrokenFiles))]
    public void A_broken_file_is_refused_whole_with_what_and_where(string name, string old, string changed, string[] says)
    {
        Assert.Contains(old, s_demo, StringComparison.Ordinal);
        int at = s_demo.IndexOf(old, StringComparison.Ordinal);
        Run run = program.StartOn(s_demo[..at] + changed + s_demo[(at + old.Length)..]);
        Refused(run, says);
        Assert.True(name.Contains("other case", StringComparison.Ordinal) || run.Error.TrimEnd('\n').Split('\n').Length == 2, run.Error); // one mistake is one line, not five
    }

    [Fact]
    public void All_mistakes_of_lengths_members_and_calculators_come_together()
    {
        string broken = s_demo.Replace("\"thickness\": \"12.7 mm\"", "\"thickness\": \"12,7 mm\"", StringComparison.Ordinal)
            .Replace("\"count\": 200", "\"count\": 0", StringComparison.Ordinal)
            .Replace("\"u\": \"480 mm\"", "\"u\": \"480\"", StringComparison.Ordinal)
            .Replace("\"gap-least\": \"6 mm\"", "\"gap-least\": \"12 mm\"", StringComparison.Ordinal)
            .Replace("\"side\": \"left\"", "\"side\": \"top\"", StringComparison.Ordinal)
            .Replace("\"rise\": \"7 mm\"", "\"rise\": \"2000 m\"", StringComparison.Ordinal);
        Run run = program.StartOn(broken);
        Refused(run, ["$.finish.boards.thickness: ", "$.wall.ribs[1].u: ", "$.finish.slats.gap-most: ", "$.wall.side: ", "$.wall.upper-band-bow.rise: "]);
        Assert.Equal(6, run.Error.TrimEnd('\n').Split('\n').Length); // the nails cannot be counted before the board is known
    }

    [Fact]
    public void A_file_that_is_not_there_is_empty_or_a_folder_is_named()
    {
        string path = Path.Combine(program.Folder, "not-there.json");
        Refused(program.Start(path), [path, "no such file"]);
        Refused(program.Start(program.Folder), [program.Folder, "is a folder"]);
        Refused(program.StartOn(string.Empty), ["is empty"]);
        Refused(program.StartOn(s_demo + new string(' ', 1_000_000)), ["larger than 1 MB"]);
        Refused(program.StartOn(new string('[', 100) + new string(']', 100)), ["not JSON"]);
    }

    [Theory]
    [InlineData("--wrokings")]
    [InlineData("-x")]
    [InlineData("a.json", "b.json")]
    [InlineData("--workings", "--workings")]
    [InlineData("")]
    public void A_call_that_is_not_understood_gets_the_usage(params string[] args)
    {
        Run run = program.Start(args);
        Assert.Equal((1, string.Empty), (run.ExitCode, run.Output));
        Assert.Contains("usage: dotnet run one-wall.cs [file.json] [--workings]", run.Error, StringComparison.Ordinal);
        Assert.Contains($"\"{string.Join(' ', args)}\"", run.Error, StringComparison.Ordinal);
    }

    private static void Refused(Run run, string[] says)
    {
        Assert.Equal((1, string.Empty), (run.ExitCode, run.Output));
        Assert.All(says, word => Assert.Contains(word, run.Error, StringComparison.Ordinal));
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal); // no stack trace
    }

    private static string Unwrapped(string text) => Regex.Replace(text, @"\s+", " ").Trim();
}

/// <summary>Builds the program once and starts it.</summary>
public sealed class OneWallProgram : IDisposable
{
    private readonly string _dll;

    public OneWallProgram()
    {
        Folder = Directory.CreateTempSubdirectory("one-wall-").FullName;
        string configuration = AppContext.BaseDirectory.Contains($"{Path.DirectorySeparatorChar}Release{Path.DirectorySeparatorChar}", StringComparison.Ordinal) ? "Release" : "Debug";
        string output = Path.Combine(Folder, "program");
        Run build = Execute(Repository.Root, [], TimeSpan.FromMinutes(5), "build", Path.Combine(Repository.Root, "docs", "examples", "one-wall.cs"), "-c", configuration, "-o", output, "--disable-build-servers", "-v", "q");
        Assert.True(build.ExitCode == 0, build.Output + build.Error);
        _dll = Path.Combine(output, "one-wall.dll");
    }

    /// <summary>A folder for the files of the tests, gone afterwards.</summary>
    public string Folder { get; }

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    internal Run Start(params string[] args) => StartIn(Folder, [], args);

    internal Run StartIn(string folder, Dictionary<string, string> environment, params string[] args) => Execute(folder, environment, TimeSpan.FromMinutes(1), [_dll, .. args]);

    internal Run StartOn(string content, params string[] options)
    {
        string path = Path.Combine(Directory.CreateDirectory(Path.Combine(Folder, Guid.NewGuid().ToString("N"))).FullName, "mine.json");
        File.WriteAllText(path, content);
        return Start([path, .. options]);
    }

    private static Run Execute(string folder, Dictionary<string, string> environment, TimeSpan atMost, params string[] args)
    {
        ProcessStartInfo start = new("dotnet") { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true, RedirectStandardInput = true };
        foreach (string arg in args)
        {
            start.ArgumentList.Add(arg);
        }

        // A test host started by the build hands its own build settings down.
        foreach (string name in start.Environment.Keys.Where(static name => name.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase)).ToList())
        {
            start.Environment.Remove(name);
        }

        foreach ((string name, string value) in environment)
        {
            start.Environment[name] = value;
        }

        using Process process = Process.Start(start)!;
        process.StandardInput.Close();
        using CancellationTokenSource limit = new(atMost);
        using CancellationTokenRegistration kill = limit.Token.Register(() => process.Kill(entireProcessTree: true));
        using MemoryStream output = new();
        Task<string> error = process.StandardError.ReadToEndAsync();
        process.StandardOutput.BaseStream.CopyTo(output);
        process.WaitForExit();
        return new Run(process.ExitCode, output.ToArray(), error.GetAwaiter().GetResult());
    }
}
#endif
