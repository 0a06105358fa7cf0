#if !NETSTANDARD_BUILD // the program is built on the net10.0 library only
using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.RegularExpressions;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Examples;

/// <summary>The program docs/examples/which-nail.cs as a person runs it: built once, then started with files.</summary>
public sealed class WhichNailTests(WhichNailProgram program) : IClassFixture<WhichNailProgram>
{
    private const string Rule = "--------------------------------------------------------------------------------------------------";

    private static readonly SheetGoods s_ps1 = SheetGoods.All.Single(static sheet => sheet.Name.StartsWith("23/32 in ", StringComparison.Ordinal) && sheet.Name.Contains("PS 1", StringComparison.Ordinal));

    // The stacks of which-nail.json, typed from it a second time.
    private static readonly (string Name, FastenerJob Job, string Driven)[] s_demo =
    [
        ("Lower wall boards on a rib",
            new([Layer.Board(Mm(12.7)), new(TolerancedLength.PlusMinus(Mm(15.1), Mm(0.5))) { Name = "furring, as measured" }], Behind.Metal, FastenerSeries.Brad18) { Count = 200 },
            "square, set by default (a pin or brad is set 1 mm deep, 0.5 mm either way); 200 nails"),
        ("The same boards on 12 mm furring",
            new([Layer.Board(Mm(12.7)), Layer.Furring(SheetGoods.Birch12)], Behind.Metal, FastenerSeries.Brad18) { Count = 200 },
            "square, set by default (a pin or brad is set 1 mm deep, 0.5 mm either way); 200 nails"),
        ("Ceiling boards on a bow, tape between furring and metal",
            new(
                [
                    Layer.Board(TolerancedLength.PlusMinus(Mm(10), Mm(0.3))),
                    new(new TolerancedLength(Mm(14), Mm(-0.4), Mm(0.3))) { Name = "furring" },
                    Layer.Compressible("butyl tape", Mm(2), Mm(0.8)),
                ],
                Behind.Metal,
                FastenerSeries.Brad18)
            { SetDepth = TolerancedLength.PlusMinus(Mm(1), Mm(0.5), DeviationScope.Each), Count = 120 },
            "square, head set 1 mm (~3/64 in), 0.5 to 1.5 mm; 120 nails"),
        ("Wall boards nailed blind through the tongue",
            new FastenerJob([Layer.Furring(SheetGoods.Birch15)], Behind.Metal, FastenerSeries.Brad18) { Count = 150 }
                .ThroughBoard(BoardProfile.TongueAndGroove(Mm(12.7), Mm(4), Mm(4)), Nailing.BlindThroughTongue, Angle.FromDegrees(45)),
            "tongue-and-groove board, blind through the tongue; 45 degrees from square, set by default (a pin or brad is set 1 mm deep, 0.5 mm either way); 150 nails"),
        ("Upper wall between ribs, outer skin 35 mm behind",
            new([Layer.Board(TolerancedLength.PlusMinus(Inch("1/2"), Inch("1/64"))), Layer.Furring(SheetGoods.Birch15)], Behind.Skin(TolerancedLength.PlusMinus(Mm(35), Mm(3))), FastenerSeries.Brad18) { Count = 60 },
            "square, set by default (a pin or brad is set 1 mm deep, 0.5 mm either way); 60 nails"),
        ("Wall over an 8 mm wire, its near side 20 mm behind",
            new([Layer.Board(Mm(12.7)), Layer.Furring(SheetGoods.Birch15)], Behind.Wire(TolerancedLength.PlusMinus(Mm(20), Mm(3))), FastenerSeries.Brad18) { Count = 4 },
            "square, set by default (a pin or brad is set 1 mm deep, 0.5 mm either way); 4 nails"),
        ("Wide boards on inch furring, packed off the rib",
            new(
                [Layer.Board(TolerancedLength.PlusMinus(Inch("3/4"), Inch("1/64"))), Layer.Furring(TolerancedLength.PlusMinus(Inch("3/4"), Inch("1/32")))],
                Behind.MetalAt(TolerancedLength.PlusMinus(Inch("1/16"), Inch("1/32"))),
                FastenerSeries.Finish16)
            { Count = 80 },
            "square, set by default (a pin or brad is set 1 mm deep, 0.5 mm either way); 80 nails"),
        ("Thin boards on inch plywood",
            new([Layer.Board(TolerancedLength.PlusMinus(Inch("3/8"), Inch("1/64"))), Layer.Furring(s_ps1)], Behind.Metal, FastenerSeries.Brad18) { Count = 90 },
            "square, set by default (a pin or brad is set 1 mm deep, 0.5 mm either way); 90 nails"),
    ];

    public static TheoryData<string, string, string[]> BrokenFiles() => new()
    {
        { "empty file", string.Empty, ["input.json", "is empty"] },
        { "blank file", " \r\n\t", ["input.json", "is empty"] },
        { "truncated", Good[..Good.IndexOf("\"behind\"", StringComparison.Ordinal)], ["line 7, column ", "not JSON"] },
        { "a comma too many", Good.Replace("\"count\": 3", "\"count\": 3,", StringComparison.Ordinal), ["line 12, column 5", "not JSON"] },
        { "a comment", "// mine\n" + Good, ["line 1, column 1", "not JSON"] },
        { "a list instead of a van", "[]", ["$: a list", "\"van\", \"stacks\""] },
        { "null instead of a stack", """{ "van": "V", "stacks": [null] }""", ["$.stacks[0]: null where an object"] },
        { "no stacks", """{ "van": "V", "stacks": [] }""", ["$.stacks: 0 stacks", "1 to 500"] },
        { "too many stacks", $$"""{ "van": "V", "stacks": [{{string.Join(',', Enumerable.Repeat("{}", 501))}}] }""", ["$.stacks: 501 stacks", "1 to 500"] },
        { "file too large", Good + new string(' ', 1_000_000), ["input.json", "larger than 1 MB"] },
        { "unknown member", With("\"count\": 3", "\"cuont\": 3"), ["$.stacks[0].cuont: unknown member", "\"count\""] },
        { "unknown member of a layer", With("\"thickness\": \"12.7 mm\"", "\"thickness\": \"12.7 mm\", \"colour\": \"oak\""), ["$.stacks[0].layers[0].colour: unknown member"] },
        { "member in other case", With("\"count\"", "\"Count\""), ["$.stacks[0].Count: unknown member"] },
        { "missing member", With("\"fasteners\": \"18 ga brad\",", string.Empty), ["$.stacks[0].fasteners: missing"] },
        { "missing thickness", With("\"thickness\": \"12.7 mm\"", "\"name\": \"board\""), ["$.stacks[0].layers[0].thickness: missing"] },
        { "duplicate member", With("\"count\": 3", "\"count\": 3, \"count\": 4"), ["$.stacks[0].count: given more than once"] },
        { "wrong type of a length", With("\"12.7 mm\"", "12.7"), ["$.stacks[0].layers[0].thickness: the number 12.7", "a length with its unit"] },
        { "wrong type of a count", With("\"count\": 3", "\"count\": \"3\""), ["$.stacks[0].count: a string where a whole number"] },
        { "wrong type of layers", With("\"layers\": [", "\"layers\": 5, \"x\": ["), ["$.stacks[0].layers: the number 5", "$.stacks[0].x: unknown member"] },
        { "decimal comma", With("\"12.7 mm\"", "\"1,5 mm\""), ["$.stacks[0].layers[0].thickness: \"1,5 mm\"", "comma"] },
        { "no unit", With("\"12.7 mm\"", "\"12.7\""), ["$.stacks[0].layers[0].thickness: \"12.7\"", "unit"] },
        { "no length at all", With("\"12.7 mm\"", "\"thick\""), ["$.stacks[0].layers[0].thickness: \"thick\" is not read as a length"] },
        { "negative thickness", With("\"12.7 mm\"", "\"-12.7 mm\""), ["$.stacks[0].layers[0].thickness: -12.7 mm; allowed is more than 0 mm"] },
        { "zero thickness", With("\"12.7 mm\"", "\"0 mm\""), ["$.stacks[0].layers[0].thickness: 0 mm; allowed is more than 0 mm"] },
        { "tolerance without sign", With("\"12.7 mm\"", "\"12.7 mm\", \"tolerance\": \"0.5 mm\""), ["$.stacks[0].layers[0].tolerance: \"0.5 mm\" is not a tolerance"] },
        { "tolerance with two signs", With("\"12.7 mm\"", "\"12.7 mm\", \"tolerance\": \"±-0.5 mm\""), ["$.stacks[0].layers[0].tolerance: \"±-0.5 mm\""] },
        { "deviations the wrong way round", With("\"12.7 mm\"", "\"12.7 mm\", \"tolerance\": { \"lower\": \"0.5 mm\", \"upper\": \"-0.5 mm\" }"), ["$.stacks[0].layers[0].tolerance.upper: -0.5 mm", "0.5 mm, or more"] },
        { "tolerance larger than the layer", With("\"12.7 mm\"", "\"12.7 mm\", \"tolerance\": \"±13 mm\""), ["$.stacks[0].layers[0].tolerance: -13 mm"] },
        { "tolerance of a kilometre", With("\"12.7 mm\"", "\"12.7 mm\", \"tolerance\": { \"lower\": \"0 mm\", \"upper\": \"999 m\" }"), ["$.stacks[0].layers[0].tolerance: more than 1000 mm"] },
        { "board with deviations the wrong way round", With("\"count\": 3", $"\"count\": 3, \"board\": {Tongue.Replace("\"12.7 mm\"", "\"12.7 mm\", \"tolerance\": { \"lower\": \"1 mm\", \"upper\": \"-1 mm\" }", StringComparison.Ordinal)}"), ["$.stacks[0].board.tolerance.upper: ", "-1 mm"] },
        { "unknown series", With("18 ga brad", "40 ga brad"), ["$.stacks[0].fasteners: \"40 ga brad\"", "\"18 ga brad\""] },
        { "unknown sheet", With("\"thickness\": \"18 mm\"", "\"sheet\": \"17 mm birch plywood, sanded\""), ["$.stacks[0].layers[1].sheet: \"17 mm birch plywood, sanded\"", SheetGoods.Birch15.Name] },
        { "sheet with a word too many", With("\"thickness\": \"18 mm\"", "\"sheet\": \"15 mm birch plywood, sanded twice\""), ["$.stacks[0].layers[1].sheet: \"15 mm birch plywood, sanded twice\" is not a sheet"] },
        { "sheet of an unknown kind", With("\"thickness\": \"18 mm\"", "\"sheet\": \"15 mm fir\""), ["$.stacks[0].layers[1].sheet: \"15 mm fir\"", SheetGoods.Birch15.Family, s_ps1.Family] },
        { "sheet and tolerance", With("\"thickness\": \"18 mm\"", "\"sheet\": \"15 mm birch plywood, sanded\", \"tolerance\": \"±1 mm\""), ["$.stacks[0].layers[1].tolerance: unknown member"] },
        { "unknown kind", With("\"furring\"", "\"batten\""), ["$.stacks[0].layers[1].kind: \"batten\"", "\"furring\""] },
        { "kind is a number", With("\"furring\"", "7"), ["$.stacks[0].layers[1].kind: the number 7"] },
        { "unknown thing behind", With("rib metal", "metal"), ["$.stacks[0].behind.kind: \"metal\"", "\"rib metal\""] },
        { "skin without distance", With("rib metal", "outer skin"), ["$.stacks[0].behind.distance: missing"] },
        { "empty layers", WithLayers(string.Empty), ["$.stacks[0].layers: 0 layers; allowed is 1 to 20 layers"] },
        { "21 layers", WithLayers(string.Join(',', Enumerable.Repeat("""{ "kind": "panel", "thickness": "1 mm" }""", 21))), ["$.stacks[0].layers: 21 layers; allowed is 1 to 20 layers"] },
        { "void first", WithLayers("""{ "kind": "void", "thickness": "5 mm" }, { "kind": "furring", "thickness": "18 mm" }"""), ["$.stacks[0].layers[0].kind: true", "the head seats on it"] },
        { "compressed thicker than free", WithLayers("""{ "kind": "board", "thickness": "9 mm", "holds": true }, { "kind": "compressible", "name": "tape", "free": "1 mm", "compressed": "2 mm" }"""), ["$.stacks[0].layers[1].compressed: 2 mm", "at most the free thickness, 1 mm"] },
        { "drive angle of 75 degrees", With("\"count\": 3", "\"count\": 3, \"driveAngle\": \"75 deg\""), ["$.stacks[0].driveAngle: 75 deg; allowed is 0 to 60 deg"] },
        { "drive angle of 75 degrees through a tongue", With("\"count\": 3", $"\"count\": 3, \"driveAngle\": \"75°\", \"board\": {Tongue}"), ["$.stacks[0].driveAngle: 75 deg; allowed is 0 to 60 deg"] },
        { "drive angle without unit", With("\"count\": 3", "\"count\": 3, \"driveAngle\": \"45\""), ["$.stacks[0].driveAngle: \"45\" is not an angle"] },
        { "tongue thicker than the board", With("\"count\": 3", $"\"count\": 3, \"board\": {Tongue.Replace("\"4 mm\"", "\"7 mm\"", StringComparison.Ordinal)}"), ["$.stacks[0].board.backShoulder", "7 mm"] },
        { "a way of nailing the board has not", With("\"count\": 3", $"\"count\": 3, \"board\": {Tongue.Replace("through tongue", "through both laps", StringComparison.Ordinal)}"), ["$.stacks[0].board.nailing: a tongue-and-groove board cannot"] },
        { "board without shape", With("\"count\": 3", "\"count\": 3, \"board\": { \"thickness\": \"9 mm\", \"nailing\": \"face\" }"), ["$.stacks[0].board.shape: missing"] },
        { "count 0", With("\"count\": 3", "\"count\": 0"), ["$.stacks[0].count: 0; allowed is 1 to 1000000"] },
        { "count of a half", With("\"count\": 3", "\"count\": 2.5"), ["$.stacks[0].count: 2.5 is not a whole number"] },
        { "set too deep", With("\"count\": 3", "\"count\": 3, \"set\": { \"depth\": \"21 mm\" }"), ["$.stacks[0].set.depth: 21 mm; allowed is 0 to 20 mm"] },
        { "name that would clear the screen", With("\"name\": \"S\"", "\"name\": \"S\\u001b[2J\""), ["$.stacks[0].name: \"S\\u001b[2J\" holds a character that does not print"] },
        { "half a character", With("\"name\": \"S\"", "\"name\": \"\\ud800\""), ["$.stacks[0].name: half a character"] },
        { "half a character in a member's name", With("\"count\"", "\"\\ud800\""), ["$.stacks[0][\"\uFFFD\"]: unknown member"] },
        { "nested too deep", new string('[', 100) + new string(']', 100), ["line 1, column ", "not JSON"] },
    };

    /// <summary>A good file of one stack; every broken one is this with one thing changed.</summary>
    private const string Good =
        """
        {
          "van": "V",
          "stacks": [
            {
              "name": "S",
              "layers": [ { "kind": "board", "thickness": "12.7 mm" }, { "kind": "furring", "thickness": "18 mm" } ],
              "behind": {
                "kind": "rib metal"
              },
              "fasteners": "18 ga brad",
              "count": 3
            }
          ]
        }
        """;

    private const string Tongue = """{ "shape": "tongue and groove", "thickness": "12.7 mm", "tongue": "4 mm", "backShoulder": "4 mm", "nailing": "through tongue" }""";

    [Fact]
    public void The_example_runs_and_every_printed_figure_is_the_librarys()
    {
        Run run = program.Start();
        Assert.Equal(string.Empty, run.Error);
        Assert.Equal(0, run.ExitCode);
        string[] parts = run.Output.Split("\n" + Rule + "\n");
        Assert.Equal(s_demo.Length + 2, parts.Length); // what comes first, the stacks, what the figures rest on
        for (int i = 0; i < s_demo.Length; i++)
        {
            (string name, FastenerJob job, string driven) = s_demo[i];
            FastenerChoice choice = FastenerLength.Choose(job);
            OnlyExpectedFigures(parts[i + 1], Expected(i + 1, name, choice, driven));
            string nail = choice.Chosen is { } chosen ? Exact(chosen.Length.Nominal) : "-";
            Assert.Contains($" {i + 1} {Verdict(choice)} {nail} {job.Series.Name} {name}", Unwrapped(parts[0]), StringComparison.Ordinal);
        }

        int safe = s_demo.Count(static demo => FastenerLength.Choose(demo.Job).Chosen?.Tip == TipVerdict.Safe);
        int marginal = s_demo.Count(static demo => FastenerLength.Choose(demo.Job).Chosen?.Tip == TipVerdict.Marginal);
        Assert.EndsWith($"\n{s_demo.Length} stacks: {safe} safe, {marginal} marginal, {s_demo.Length - safe - marginal} without a nail.\n", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_member_of_a_file_reaches_the_library()
    {
        Run run = program.StartOn(
            """
            { "van": "V", "stacks": [ {
              "name": "S",
              "board": { "shape": "shiplap", "thickness": "18 mm", "tolerance": "±0.2 mm", "overLap": "5 mm", "underLap": "4 mm", "nailing": "through both laps" },
              "layers": [
                { "kind": "panel", "name": "lining", "sheet": "Sanded birch  plywood, 12 MM" },
                { "kind": "void", "thickness": "3 mm", "tolerance": "+-1 mm" },
                { "kind": "furring", "thickness": "18 mm", "holds": true },
                { "kind": "other", "name": "mat", "thickness": "2 mm", "holds": false } ],
              "behind": { "kind": "pipe", "distance": "1 in", "error": { "lower": "-1/8 in", "upper": "1/4 in" } },
              "fasteners": "18 ga brad", "set": { "depth": "0.5 mm", "error": "±0.25 mm" }, "driveAngle": "30°", "count": 7,
              "requiredClearance": "12 mm", "leastBite": "9 mm", "targetBite": "11 mm", "preference": "longest safe" } ] }
            """);
        Assert.Equal((0, string.Empty), (run.ExitCode, run.Error));
        FastenerJob job = new FastenerJob(
            [
                Layer.Panel(SheetGoods.Birch12) with { Name = "lining" },
                Layer.Void(TolerancedLength.PlusMinus(Mm(3), Mm(1))),
                Layer.Furring(Mm(18)) with { Holds = true },
                new(Mm(2)) { Name = "mat", Holds = false },
            ],
            Behind.Pipe(new TolerancedLength(Inch(1), Inch(-0.125), Inch(0.25))),
            FastenerSeries.Brad18)
        {
            SetDepth = TolerancedLength.PlusMinus(Mm(0.5), Mm(0.25), DeviationScope.Each),
            Count = 7,
            RequiredClearance = Mm(12),
            LeastBite = Mm(9),
            TargetBite = Mm(11),
            Preference = FastenerPreference.LongestSafe,
        }.ThroughBoard(BoardProfile.Shiplap(TolerancedLength.PlusMinus(Mm(18), Mm(0.2)), Mm(5), Mm(4)), Nailing.ThroughBothLaps, Angle.FromDegrees(30));
        FastenerChoice choice = FastenerLength.Choose(job);

        // With the other preference a shorter one would do, so the preference counts.
        Assert.True(FastenerLength.Choose(job with { Preference = FastenerPreference.ShortestThatHolds }).Chosen!.Length.Nominal.Millimeters < choice.Chosen!.Length.Nominal.Millimeters);
        OnlyExpectedFigures(
            run.Output.Split("\n" + Rule + "\n")[1],
            Expected(1, "S", choice, "shiplap board, through both laps; 30 degrees from square, head set 0.5 mm (~1/64 in), 0.25 to 0.75 mm; 7 nails"));
    }

    [Fact]
    public void The_example_shows_a_safe_a_marginal_and_a_refused_stack_and_fits_the_page()
    {
        string output = program.Start().Output;
        Assert.Contains("SAFE against a wire", output, StringComparison.Ordinal);
        Assert.Contains("SAFE against the outer skin", output, StringComparison.Ordinal);
        Assert.Contains("MARGINAL toward the metal of a rib, not safe", output, StringComparison.Ordinal);
        Assert.Contains(">>> NO NAIL", output, StringComparison.Ordinal);
        Assert.All(output.Split('\n'), static line => Assert.True(line.Length <= 98, line));
        Assert.All(output.Split('\n'), static line => Assert.Equal(line.TrimEnd(), line));
    }

    [Fact]
    public void A_problem_stands_between_the_verdict_and_the_stack()
    {
        string stack = program.Start().Output.Split("\n" + Rule + "\n")[2];
        int verdict = stack.IndexOf(">>> NO NAIL", StringComparison.Ordinal), problem = stack.IndexOf("  PROBLEM  ", StringComparison.Ordinal), sizes = stack.IndexOf("\n  stack  ", StringComparison.Ordinal);
        Assert.True(verdict > 0 && verdict < problem && problem < sizes);
    }

    [Fact]
    public void Figures_worked_by_hand_stand_in_the_output()
    {
        string[] parts = program.Start().Output.Split("\n" + Rule + "\n");

        // 18 ga brads up to 1 in are 1/32 in (0.79375) long or short. Set 1 ± 0.5.
        string rib = Unwrapped(parts[1]);
        Assert.Contains("clearance 1.4 mm ", rib, StringComparison.Ordinal);           // 12.7 + 15.1 - (1 + 25.4)
        Assert.Contains(", -0.4 mm (-1/64 in) in the worst case; 0.5 mm asked", rib, StringComparison.Ordinal); // 12.7 + 14.6 - (1.5 + 26.19375) = -0.39375, down
        Assert.Contains("bite 13.7 mm ", rib, StringComparison.Ordinal);               // 1 + 25.4 - 12.7
        Assert.Contains(", 12.4 mm (31/64 in) in the worst case; at least 7.5 mm", rib, StringComparison.Ordinal); // 0.5 + 24.60625 - 12.7 = 12.40625; 6 x 1.25 = 7.5

        // sigma² = (1/6)² + (1/6)² + (1.5875/6)² = 0.1255599; 1.4/0.3543443 = 3.95096; the normal tail there is 3.8919e-5 (from a table of erfc); times 200 is 0.00778.
        Assert.Contains("hits 0.0078 expected over 200 nails", rib, StringComparison.Ordinal);
        Assert.Contains("make what holds thicker: from 16 mm, 25.4 mm (1 in) is safe", rib, StringComparison.Ordinal); // 15.1 + 0.5 + 0.39375 = 15.99375, up
        Assert.Contains("drive at 16 degrees from square", rib, StringComparison.Ordinal); // acos((12.7 + 14.6 - 1.5 - 0.5)/26.19375) = acos(0.965879) = 15.01 degrees, up
        Assert.Contains("5 mm past at nominal sizes, 7.6 mm past", rib, StringComparison.Ordinal); // 32.75 - 27.8 = 4.95, up; 1.5 + 31.75 + 1.5875 - 27.3 = 7.5375, up

        string ceiling = Unwrapped(parts[3]);
        Assert.Contains("clearance 4.7 mm (11/64 in)", ceiling, StringComparison.Ordinal); // 10 + 14 + 0.8 - (1 + 19.05) = 4.75, down; 4.75/0.396875 = 11.97
        Assert.Contains(", 2.7 mm (3/32 in) in the worst case", ceiling, StringComparison.Ordinal); // 9.7 + 13.6 + 0.8 - (1.5 + 19.84375) = 2.75625
        Assert.Contains("bite 10 mm (25/64 in) at nominal sizes, 8.4 mm", ceiling, StringComparison.Ordinal); // 20.05 - 10 = 10.05; 0.5 + 18.25625 - 10.3 = 8.45625

        string inch = Unwrapped(parts[7]);
        Assert.Contains("clearance 6.9 mm ", inch, StringComparison.Ordinal);          // 19.05 + 19.05 + 1.5875 - 32.75 = 6.9375
        Assert.Contains(", 2.8 mm (7/64 in) in the worst case", inch, StringComparison.Ordinal); // 18.653125 + 18.25625 + 0.79375 - (1.5 + 33.3375) = 2.865625
        Assert.Contains("13.7 mm (17/32 in) at nominal sizes, 11.2 mm (7/16 in)", inch, StringComparison.Ordinal); // 32.75 - 19.05 = 13.7; 0.5 + 30.1625 - 19.446875 = 11.215625
    }

    [Fact]
    public void Workings_print_every_step_with_its_source()
    {
        Run run = program.Start("--workings");
        Assert.Equal((0, string.Empty), (run.ExitCode, run.Error));
        string[] parts = run.Output.Split("\n" + Rule + "\n");
        string sources = Unwrapped(parts[^1]);
        for (int i = 0; i < s_demo.Length; i++)
        {
            Workings workings = FastenerLength.Choose(s_demo[i].Job).Explain();
            string text = Unwrapped(parts[i + 1]);
            int at = text.IndexOf("Workings: " + Unwrapped(workings.Title), StringComparison.Ordinal);
            foreach (WorkingStep step in workings.Steps)
            {
                string line = Unwrapped(step.ToString());
                at = text.IndexOf(line, at, StringComparison.Ordinal); // in order
                Assert.True(at >= 0, line);
                Assert.Contains($"[{step.Source.Id}] {Unwrapped(step.Source.ToString())}", sources, StringComparison.Ordinal);
            }
        }

        // Recomputed here from the printed numbers: 12.7 + 14.6 - (1.5 + 26.19375); 200 x 3.8919e-5.
        string first = Unwrapped(parts[1]);
        Assert.Contains("= 27.3 + 0 - (1.5 + 26.19375 * cos(0)) = -0.39375 mm (worst clearance) [tolerance-sum]", first, StringComparison.Ordinal);
        Assert.Contains("= 1 + 25.4 * cos(0) = 26.4 mm (tip depth) [fastening-stack]", first, StringComparison.Ordinal);
        Match hits = Regex.Match(first, @"h = n \* P = (\S+) \* (\S+) = (\S+) \(expected hits\) \[fastening-job\]");
        Assert.Equal(double.Parse(hits.Groups[3].Value, CultureInfo.InvariantCulture), double.Parse(hits.Groups[1].Value, CultureInfo.InvariantCulture) * double.Parse(hits.Groups[2].Value, CultureInfo.InvariantCulture), 1e-9);
        Assert.StartsWith(Unwrapped(parts[1][..parts[1].IndexOf("  Workings:", StringComparison.Ordinal)]), Unwrapped(program.Start().Output.Split("\n" + Rule + "\n")[1]), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(BrokenFiles))]
    public void A_broken_file_is_refused_whole_with_what_and_where(string name, string content, string[] says)
    {
        _ = name;
        Refused(program.StartOn(content), says);
    }

    [Fact]
    public void A_good_file_is_taken()
    {
        Run run = program.StartOn(Good);
        Assert.Equal((0, string.Empty), (run.ExitCode, run.Error));
        Assert.EndsWith("\n1 stack: 1 safe, 0 marginal, 0 without a nail.\n", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_not_there_is_named()
    {
        string path = Path.Combine(program.Folder, "not-there.json");
        Refused(program.Start(path), [path, "no such file"]);
        Refused(program.Start(program.Folder), [program.Folder, "is a folder"]);
    }

    [Fact]
    public void A_mark_before_utf8_is_taken_and_other_encodings_are_refused()
    {
        Assert.Equal(0, program.StartOn([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Good)]).ExitCode);
        Refused(program.StartOn([.. Encoding.UTF8.GetBytes(Good[..Good.IndexOf("\"S\"", StringComparison.Ordinal)]), (byte)'"', 0xE4]), ["line 5, column 16", "not UTF-8"]);
        Refused(program.StartOn([0xFF, 0xFE, .. Encoding.Unicode.GetBytes(Good)]), ["line 1, column 1", "not UTF-8"]);
    }

    [Fact]
    public void All_mistakes_of_a_file_are_listed_together()
    {
        string two = Good.Replace("\"12.7 mm\"", "\"1,5 mm\"", StringComparison.Ordinal)
            .Replace("\"18 mm\"", "\"-18 mm\"", StringComparison.Ordinal)
            .Replace("18 ga brad", "no brad", StringComparison.Ordinal)
            .Replace("\"count\": 3", "\"count\": 0, \"extra\": 1", StringComparison.Ordinal);
        Refused(
            program.StartOn(two),
            ["5 mistakes in input.json", "$.stacks[0].layers[0].thickness", "$.stacks[0].layers[1].thickness", "$.stacks[0].fasteners", "$.stacks[0].count", "$.stacks[0].extra"]);
    }

    [Fact]
    public void A_flood_of_mistakes_is_counted_and_cut()
    {
        string many = $$"""{ "van": "V", "stacks": [{{string.Join(',', Enumerable.Repeat("{}", 100))}}] }""";
        Run run = program.StartOn(many);
        Refused(run, ["400 mistakes", "and 300 more"]);
        Assert.Equal(102, run.Error.TrimEnd('\n').Split('\n').Length);
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
        Assert.Contains("usage: dotnet run which-nail.cs [file.json] [--workings]", run.Error, StringComparison.Ordinal);
        Assert.Contains($"\"{args[^1]}\"", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Inches_and_millimetres_give_the_same_sheet()
    {
        string inches = WithLayers("""{ "kind": "board", "thickness": "1/2 in", "tolerance": "±1/64 in" }, { "kind": "furring", "thickness": "3/4 in", "tolerance": { "lower": "-1/32 in", "upper": "1/64 in" } }""");
        string millimetres = WithLayers("""{ "kind": "board", "thickness": "12.7 mm", "tolerance": "+/-0.396875 mm" }, { "kind": "furring", "thickness": "19.05 mm", "tolerance": { "lower": "-0.79375 mm", "upper": "+0.396875 mm" } }""");
        Run one = program.StartOn(inches), other = program.StartOn(millimetres);
        Assert.Equal((0, string.Empty), (one.ExitCode, one.Error));
        Assert.Equal(one.Output, other.Output);
        Assert.Contains("19.05 mm (3/4 in), 18.26 to 19.45 mm", one.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("de_DE.UTF-8", "0")]
    [InlineData("tr_TR.UTF-8", "0")]
    [InlineData("ar_SA.UTF-8", "0")]
    [InlineData("C", "1")]
    public void Folder_and_culture_change_no_byte(string language, string invariant)
    {
        Run plain = program.Start("--workings");
        Run elsewhere = program.StartIn(
            Path.GetTempPath(),
            new() { ["LANG"] = language, ["LC_ALL"] = language, ["DOTNET_SYSTEM_GLOBALIZATION_INVARIANT"] = invariant, ["DOTNET_SYSTEM_GLOBALIZATION_PREDEFINED_CULTURES_ONLY"] = "0" },
            "--workings");
        Assert.Equal((0, string.Empty), (elsewhere.ExitCode, elsewhere.Error));
        Assert.Equal(plain.Bytes, elsewhere.Bytes);
    }

    /// <summary>Takes out everything that is expected; a figure left over is one that no call answers for.</summary>
    private static void OnlyExpectedFigures(string part, List<string> expected)
    {
        string text = Unwrapped(part);
        foreach (string fragment in expected.Select(Unwrapped).OrderByDescending(static fragment => fragment.Length))
        {
            Assert.Contains(fragment, text, StringComparison.Ordinal);
            text = text.Replace(fragment, " ", StringComparison.Ordinal);
        }

        Assert.DoesNotMatch("[0-9]", text);
    }

    private static string With(string old, string changed)
    {
        Assert.Contains(old, Good, StringComparison.Ordinal);
        return Good.Replace(old, changed, StringComparison.Ordinal);
    }

    private static string WithLayers(string layers) =>
        With("""{ "kind": "board", "thickness": "12.7 mm" }, { "kind": "furring", "thickness": "18 mm" }""", layers);

    private static void Refused(Run run, string[] says)
    {
        Assert.Equal((1, string.Empty), (run.ExitCode, run.Output));
        Assert.All(says, word => Assert.Contains(word, run.Error, StringComparison.Ordinal));
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal); // no stack trace
    }

    private static string Unwrapped(string text) => Regex.Replace(text, @"\s+", " ").Trim();

    private static string Verdict(FastenerChoice choice) => choice.Chosen switch { null => "NO NAIL", { Tip: TipVerdict.Safe } => "safe", _ => "MARGINAL" };

    /// <summary>Every line with a figure, written from what the public calls answer.</summary>
    private static List<string> Expected(int number, string name, FastenerChoice choice, string driven)
    {
        FastenerJob job = choice.Job;
        List<string> lines = [$"{number}. {name}", "driven " + driven];
        foreach (Finding finding in choice.Findings)
        {
            if (finding.Code != "fastening-look-behind") // said once, on top
            {
                string label = finding.Severity == Severity.Note ? "note" : finding.Severity.ToString().ToUpperInvariant();
                lines.Add($"{label} {finding.Message}");
            }
        }

        foreach (Layer layer in job.Layers)
        {
            string size = layer.Compressed is { } compressed ? $"{Caliper(layer.Thickness.Nominal)} free, {Caliper(compressed.Nominal)} squeezed" : WithRange(layer.Thickness);
            lines.Add($"{layer.Name} {size}{(layer.Sheet is null ? string.Empty : ", " + layer.Sheet.Name)}{(layer.Holds == true || (layer.Holds is null && ReferenceEquals(layer, job.Layers.Last(static one => one is { IsVoid: false, Compressed: null }))) ? ", holds" : string.Empty)}");
        }

        lines.Add(job.Behind.Distance == default ? "touching" : $" at {WithRange(job.Behind.Distance)}");
        if (choice.Chosen is { } nail)
        {
            lines.Add($">>> {Exact(nail.Length.Nominal)} {job.Series.Name}");
            lines.Add($"nail {WithRange(nail.Length)}, tip {FormatMillimetres(nail.TipDepth)} below the face");
            lines.Add($"clearance {Down(nail.Clearance)} at nominal sizes, {Down(nail.WorstClearance)} in the worst case; {FormatMillimetres(nail.RequiredClearance, 2)} asked");
            lines.Add($"bite {Down(nail.Bite)} at nominal sizes, {Down(nail.WorstBite)} in the worst case; at least {FormatMillimetres(nail.LeastBite, 2)}, aim {FormatMillimetres(nail.TargetBite, 2)}");
            if (nail.Tip == TipVerdict.Marginal)
            {
                lines.Add($"hits {TwoDigits(nail.ExpectedHits)} expected over {job.Count} nails; chance of one or more {TwoDigits(nail.AnyHitChance)}");
            }

            lines.Add(choice.NextLonger switch
            {
                null => "longer none is stocked",
                { Tip: TipVerdict.Safe } longer => $"longer {Exact(longer.Length.Nominal)} is not needed: safe too, {Clear(longer.WorstClearance)} in the worst case",
                { } longer => $"longer {Exact(longer.Length.Nominal)} is refused: it ",
            });
            if (choice.NextLonger is { Tip: not TipVerdict.Safe } refused)
            {
                lines.Add(Misses(refused));
            }
        }
        else
        {
            lines.Add($"No stocked {job.Series.Name} may be driven toward");
            foreach (FastenerCandidate candidate in choice.Candidates)
            {
                lines.Add($"{Exact(candidate.Length.Nominal)}: it ");
                if (candidate.Tip != TipVerdict.Safe)
                {
                    lines.Add(Misses(candidate));
                }

                if (candidate.Hold == BiteVerdict.TooLittle)
                {
                    lines.Add($"bites {Down(candidate.WorstBite)} in the worst case, {FormatMillimetres(candidate.LeastBite, 2)} asked");
                }

                if (candidate.Tip == TipVerdict.Reaches && candidate.Hold == BiteVerdict.Bites)
                {
                    break;
                }
            }
        }

        foreach (Remedy remedy in choice.Remedies)
        {
            lines.Add(remedy switch
            {
                FurringRemedy furring => $"remedy make what holds thicker: from {Up(furring.Least)}, {Exact(furring.Fastener)} is safe against the metal of a rib; take {furring.Sheet!.Name}, actually {RangeOf(furring.Sheet.Thickness)}",
                DriveAngleRemedy lean => $"remedy drive at {lean.Angle.Degrees.ToString(CultureInfo.InvariantCulture)} degrees from square: {Exact(lean.Fastener)} is safe against the metal of a rib and bites {Down(lean.Outcome.WorstBite)} in the worst case; its tip lies {Up(lean.Outcome.SideShift)} to the side, where the same rib must still be",
                _ => $"remedy take a thinner series: {((SeriesRemedy)remedy).Series.Name} {Exact(remedy.Fastener)} is safe against the metal of a rib, {Down(remedy.Outcome.WorstClearance)} clear, and bites {Down(remedy.Outcome.WorstBite)} in the worst case; it holds less",
            });
        }

        lines.Add("defaults " + string.Join("; ", choice.DefaultsUsed.Select(static used => $"{used.Figure.Name.Replace('-', ' ')} {used.Figure.Value.ToString("0.####", CultureInfo.InvariantCulture)} {used.Figure.Unit}".TrimEnd())));
        return lines;
    }

    private static string Misses(FastenerCandidate candidate) =>
        $", {Clear(candidate.Clearance)} at nominal sizes, {Clear(candidate.WorstClearance)} in the worst case, {FormatMillimetres(candidate.RequiredClearance, 2)} asked";

    private static string Clear(Length clearance) => clearance.Millimeters < 0 ? $"{Up(Mm(-clearance.Millimeters))} past" : $"{Down(clearance)} clear";

    private static string Exact(Length length) => $"{FormatMillimetres(length, 3)} ({Inches(length)})";

    private static string Caliper(Length length) => $"{FormatMillimetres(length, 2)} ({Inches(length)})";

    private static string WithRange(TolerancedLength length) => length.Lower.Millimeters == 0 && length.Upper.Millimeters == 0 ? $"{Caliper(length.Nominal)}, taken as exact" : $"{Caliper(length.Nominal)}, {RangeOf(length)}";

    private static string RangeOf(TolerancedLength length) => $"{FormatMillimetres(length.Least, 2).Replace(" mm", string.Empty, StringComparison.Ordinal)} to {FormatMillimetres(length.Greatest, 2)}";

    private static string Inches(Length length) => (Nanometres(length) * 64 % 25_400_000 == 0 ? string.Empty : "~") + FormatInches(length, 64);

    // Whole nanometres, so that rounding here owes nothing to the program's.
    private static long Nanometres(Length length) => (long)Math.Round(length.Millimeters * 1e6);

    private static string Down(Length length) =>
        $"{(Floor(Nanometres(length), 100_000) / 10m).ToString(CultureInfo.InvariantCulture)} mm ({FormatInches(Inch(Floor(Nanometres(length) * 64, 25_400_000) / 64.0), 64)})".Replace(".0 mm", " mm", StringComparison.Ordinal);

    private static string Up(Length length) => $"{(-Floor(-Nanometres(length), 100_000) / 10m).ToString(CultureInfo.InvariantCulture)} mm";

    private static long Floor(long value, long step) => (value / step) - (value % step < 0 ? 1 : 0);

    /// <summary>Two significant digits, for numbers from 0.0001 to 0.99.</summary>
    private static string TwoDigits(double value)
    {
        int decimals = 1 - (int)Math.Floor(Math.Log10(value));
        return Math.Round(value, decimals).ToString(CultureInfo.InvariantCulture);
    }
}

/// <summary>The program, built once.</summary>
public sealed class WhichNailProgram() : ExampleProgram("which-nail");
#endif
