#if !NETSTANDARD_BUILD // the program is built on the net10.0 library only
using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

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
        { "height, girth and lean of two walls", "\"top\": \"1500 mm\"", "\"top\": \"1520 mm\"", ["$.wall.bands[1].top: 1520 mm; allowed is 1494 to 1505 mm"] }, // 1060 + 442 cos 5.5° = 1499.965, 5 either way, outward
        { "a window that ends before it begins", "\"from\": \"500 mm\", \"to\": \"1400 mm\"", "\"from\": \"1400 mm\", \"to\": \"500 mm\"", ["$.wall.windows[0].to: 500 mm; allowed is 1401 to 3400 mm"] },
        { "a window over the top", "\"top\": \"610 mm\", \"corner-radius\": \"70 mm\" },", "\"top\": \"1610 mm\", \"corner-radius\": \"70 mm\" },", ["$.wall.windows[0].top: 1610 mm; allowed is 231 to 994 mm"] },
        { "a rib behind the van", "\"u\": \"3060 mm\"", "\"u\": \"3460 mm\"", ["$.wall.ribs[7].u: 3460 mm; allowed is 0 to 3400 mm"] },
        { "a rib of no width", "\"width\": \"60 mm\" },", "\"width\": \"0 mm\" },", ["$.wall.ribs[0].width: 0 mm; allowed is 1 to 500 mm"] },
        { "a window over a window", "\"from\": \"1980 mm\"", "\"from\": \"1300 mm\"", ["$.wall.windows[1]: u 1300 to 2680 mm", "over no other opening"] },
        { "a wire off the wall", "\"v\": \"660 mm\"", "\"v\": \"1660 mm\"", ["$.wall.wires[0].v: 1660 mm; allowed is 0 to 994 mm"] },
        { "a wire behind itself", "\"depth-to\": \"35 mm\"", "\"depth-to\": \"15 mm\"", ["$.wall.wires[0].depth-to: 15 mm; allowed is 20 to 1000 mm"] },
        { "a rear edge that stops short", "\"v\": \"994 mm\", \"forward\": \"48 mm\"", "\"v\": \"900 mm\", \"forward\": \"48 mm\"", ["$.wall.rear-edge[5].v: 900 mm; allowed is 994 to 994 mm"] },
        { "gaps the wrong way round", "\"gap-least\": \"6 mm\"", "\"gap-least\": \"12 mm\"", ["$.finish.slats.gap-most: 10 mm; allowed is the least gap, 12 mm, or more"] },
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

    [Fact]
    public void The_demo_van_comes_out_and_every_printed_figure_is_the_librarys()
    {
        Run run = program.Start();
        Assert.Equal((0, string.Empty), (run.ExitCode, run.Error));
        string text = Unwrapped(run.Output);
        foreach (string fragment in Expected().Select(Unwrapped).OrderByDescending(static fragment => fragment.Length))
        {
            Assert.Contains(fragment, text, StringComparison.Ordinal);
            text = text.Replace(fragment, " ", StringComparison.Ordinal);
        }

        // A figure left over is one that no call answers for.
        Assert.DoesNotMatch("[0-9]", text);
    }

    [Fact]
    public void The_sheet_starts_with_datum_side_arrow_and_revision_and_buries_no_problem()
    {
        string output = program.Start().Output;
        string[] lines = output.Split('\n');
        Assert.StartsWith("BENCH SHEET", lines[0], StringComparison.Ordinal);
        Assert.EndsWith("survey: revision 1", lines[0], StringComparison.Ordinal);
        Assert.Matches("^LEFT WALL, seen from inside the van .* rear .*>  FRONT$", lines[1]); // the front of a left wall is on the right hand of a person who looks at it
        Assert.Contains("which is on your right", Unwrapped(output), StringComparison.Ordinal);
        int[] order = [.. new[] { "\nPROBLEMS: do not start", "\nCAUTIONS", "\nBEFORE ANYTHING", "\nNAIL", "\nBAY", "\nFURRING STRIPS", "\nRIP", "\nTHIN PLY", "\nCEILING STRIPS", "\nCEILING SLATS", "\nNOTES", "\nDEFAULTS" }.Select(head => output.IndexOf(head, StringComparison.Ordinal))];
        Assert.Equal(order.Order(), order);
        Assert.True(order[0] > 0);
        Assert.All(lines, static line => Assert.True(line.Length <= 98 && line == line.TrimEnd(), line));
    }

    [Fact]
    public void On_a_right_wall_the_front_is_on_the_left_hand_and_no_figure_changes()
    {
        string left = program.Start().Output, right = program.StartOn(s_demo.Replace("\"side\": \"left\"", "\"side\": \"right\"", StringComparison.Ordinal)).Output;
        Assert.Matches("^RIGHT WALL, seen from inside the van .*FRONT  <.* rear$", right.Split('\n')[1]);
        Assert.Contains("which is on your left", Unwrapped(right), StringComparison.Ordinal);
        Assert.Equal(Unwrapped(left[left.IndexOf("\nPROBLEMS", StringComparison.Ordinal)..]), Unwrapped(right[right.IndexOf("\nPROBLEMS", StringComparison.Ordinal)..]));
    }

    [Fact]
    public void Figures_worked_by_hand_stand_on_the_sheet()
    {
        string sheet = Unwrapped(program.Start().Output);

        // 12.7 + 15.1 - (1 + 25.4) = 1.4; 12.7 + 14.6 - (1.5 + 26.19375) = -0.39375; 1 + 25.4 - 12.7 = 13.7; 0.5 + 24.60625 - 12.7 = 12.40625; 6 x 1.6 = 9.6
        Says("25.4 mm (1 in): MARGINAL against the rib's metal, tip 1.4 mm (3/64 in) clear, in the worst case 0.4 mm (1/64 in) PAST; bites 13.7 mm (17/32 in), in the worst case 12.4 mm (31/64 in), of 9.6 mm (3/8 in) asked");

        // sigma² = (1/6)² + (1/6)² + (1.5875/6)² = 0.1255599; 1.4/0.3543443 = 3.95096; the normal tail there is 3.8919e-5 (from a table of erfc); times 200 is 0.00778.
        Says("200 nails: 0.0078 expected to touch");
        Says("31.75 mm (1-1/4 in): it reaches the rib's metal, tip 5 mm (13/64 in) PAST"); // 1 + 31.75 - 27.8 = 4.95, up
        Says("outer skin 35 mm (1-3/8 in) behind the furring: the same nail is safe, tip 31.6 mm"); // 35 - 3 - 0.39375 = 31.60625
        Says("near side 20 mm (13/16 in) behind the furring: the same nail is safe, tip 16.6 mm"); // 20 - 3 - 0.39375
        Says("v 626 mm (24-5/8 in) to 694 mm (27-5/16 in)"); // 660 -/+ (4 + 30)

        // E 0.8 x 8900 = 7120, I = 89 x 12.7³/12 = 15192.2; bay = (3 E I/(0.015097 x 200))^(1/3) = 475.4; Z = 89 x 12.7²/6 = 2392.5, 65/4 x Z/(0.2074 x 200) = 937.3
        Says("up to 475 mm (18-11/16 in), governed by deflection");
        Says("by bending stress 937 mm");

        // Between 1420 and 1960 there is no rib: the middle, 1690. Ten strips. Bays 460, 470, 470, 270, 270, 370, 370, 360, 320.
        Says("9 between 1690 (66-9/16) 0 (0) 602 (23-11/16) 602 (23-11/16) rails");
        Says("largest 470 mm (18-1/2 in); 10 strips up the wall");

        // Up the wall: 8 x (602 + 312) + 2 x (190 + 312) less what stands in for the leaning pair, see the pieces; heads and sills 2 x (900 + 700) = 3.2 m.
        Says("3.2 heads and sills");
        Says("the edge lies 11 mm (7/16 in) behind the straight line at v 400 mm"); // 48 x 400/994 = 19.3; less 8

        // 1515 = 1525 - 2 x 5; 35 x 40 + 34 x 2.4 = 1481.6
        Says("of 35 that a sheet gives");

        // R = 352²/56 + 3.5 = 2216.07; (2216.07 - 3.2)/1.5 = 1475.2; 2 x 12737 x 6.4/(2 x 50.9) = 1601.5; 2 x 4763 x 6.4/(2 x 29) = 1051.1; four rows peak at (R - 3.2)/1.2 = 1844
        Says("7 mm (1/4 in) under 352 mm (13-7/8 in): R 2216 mm, from R 2069 mm to R 2386 mm");
        Says("NO face grain around the curve: bent to R 1475 mm at its tightest, R 1602 mm allowed (elastic limit with its factor); least rows: 4");
        Says("YES face grain along the van: bent to R 1475 mm at its tightest, R 1052 mm allowed (elastic limit with its factor); least rows: 3");

        // R = 1506²/600 + 37.5 = 3817.6; arc 2 R 2 atan(150/1506) = 1515.9; (3817.6 - 7.4)/1.5 = 2540.1; 10316 x 14.8/41.3 = 3696.8; 10719 x 12/42.9 = 2998.3; 11395 x 9.2/45.6 = 2299.0
        Says("75 mm (2-15/16 in) under 1506 mm (59-5/16 in): R 3818 mm, 1516 mm (59-11/16 in) round the curve");
        Says("NO 15 mm birch plywood sanded: bent to R 2540 mm at its tightest, R 3697 mm allowed");
        Says("NO 12 mm birch plywood sanded: bent to R 2541 mm at its tightest, R 2999 mm allowed");
        Says("YES 9 mm birch plywood sanded: bent to R 2542 mm at its tightest, R 2299 mm allowed");
        Says("YES 2 layers of 6.5 mm birch plywood sanded");

        // (1515.94 - 31 x 40)/30 = 9.198; (1448.55 - 1240)/30 = 6.952; at the face 20 sin(turn/2), turn 49.2/3817.6: 0.129 less; 31 x 40/1515.94 = 0.818
        Says("front 31 slats, gap 9.2 mm (23/64 in) at the back, 9.1 mm (23/64 in) at the face; 82% covered");
        Says("rear 31 slats, gap 7 mm (9/32 in) at the back, 6.8 mm (17/64 in) at the face; 86% covered");
        Says("3 98 (3-7/8) 94 (3-11/16)"); // 2 x 49.198 = 98.4; 2 x 46.952 = 93.9

        void Says(string words) => Assert.Contains(words, sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Measured_from_the_rear_the_sheet_is_the_same_to_the_byte()
    {
        string rear = s_demo.Replace("\"u-from\": \"front\"", "\"u-from\": \"rear\"", StringComparison.Ordinal);
        rear = Regex.Replace(rear, "\"u\": \"(\\d+) mm\"", static match => $"\"u\": \"{3400 - Whole(match, 1)} mm\"");
        rear = Regex.Replace(rear, "\"from\": \"(\\d+) mm\", \"to\": \"(\\d+) mm\", \"(bottom|width)\"", static match =>
            (match.Groups[3].Value == "width" ? 3300 : 3400) is var length ? $"\"from\": \"{length - Whole(match, 2)} mm\", \"to\": \"{length - Whole(match, 1)} mm\", \"{match.Groups[3].Value}\"" : string.Empty);
        rear = Regex.Replace(rear, "\"bows\": \\[.*\\]", static match => Regex.Replace(match.Value, "(\\d+) mm", static bow => $"{3300 - Whole(bow, 1)} mm"));
        Assert.Contains("\"u\": \"3370 mm\", \"width\": \"60 mm\"", rear, StringComparison.Ordinal); // 3400 - 30
        Assert.Contains("\"from\": \"2000 mm\", \"to\": \"2900 mm\"", rear, StringComparison.Ordinal); // 3400 - 1400, 3400 - 500
        Assert.Contains("\"from\": \"1400 mm\", \"to\": \"1800 mm\"", rear, StringComparison.Ordinal); // 3300 - 1900, 3300 - 1500
        SameSheet(rear);
        SameSheet(rear.Replace("\"rear\",", "\"Rear\",", StringComparison.Ordinal)); // a word is a word in any case, and never half understood
    }

    [Fact]
    public void A_nail_that_comes_near_a_wire_is_a_problem_and_stands_on_top()
    {
        Run run = program.StartOn(Changed("\"depth-from\": \"20 mm\"", "\"depth-from\": \"12 mm\"")); // 12 - 3 - 0.394 = 8.6, of 10 asked
        Assert.Equal((0, string.Empty), (run.ExitCode, run.Error));
        string problems = run.Output[run.Output.IndexOf("\nPROBLEMS", StringComparison.Ordinal)..run.Output.IndexOf("\nCAUTIONS", StringComparison.Ordinal)];
        Assert.Contains("a wire", problems, StringComparison.Ordinal);
        Assert.Contains("near side 12 mm (1/2 in) behind the furring: the same nail REACHES it or comes too near, tip 8.6 mm (21/64 in) clear in the worst case", Unwrapped(run.Output), StringComparison.Ordinal);
    }

    [Fact]
    public void Slats_that_serve_one_end_only_are_a_problem_and_are_not_set_out()
    {
        Run run = program.StartOn(Changed("\"gap-least\": \"6 mm\"", "\"gap-least\": \"8 mm\""));
        Assert.Equal((0, string.Empty), (run.ExitCode, run.Error));
        Assert.Contains("slats", run.Output[run.Output.IndexOf("\nPROBLEMS", StringComparison.Ordinal)..run.Output.IndexOf("\nCAUTIONS", StringComparison.Ordinal)], StringComparison.Ordinal);
        Assert.Contains("NO number serves both ends: see the problems", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("left edge of each slat", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_van_without_a_problem_says_so()
    {
        // No wire, and a ceiling of R 14 m over which 15 mm strips bend.
        string sheet = program.StartOn(Changed("\"rise\": \"75 mm\"", "\"rise\": \"20 mm\"").Replace("\"rise\": \"68 mm\"", "\"rise\": \"20 mm\"", StringComparison.Ordinal)
            .Replace("{ \"v\": \"660 mm\", \"diameter\": \"8 mm\", \"depth-from\": \"20 mm\", \"depth-to\": \"35 mm\" }", string.Empty, StringComparison.Ordinal)).Output;
        Assert.Contains("\nPROBLEMS: none found in what was asked\n", sheet, StringComparison.Ordinal);
        Assert.Contains("\n  YES      15 mm birch plywood sanded", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("wire at", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void What_may_be_left_out_counts_where_it_is_given()
    {
        string sheet = Unwrapped(program.StartOn(Changed("\"sheet-width\": \"1525 mm\"", "\"sheet-width\": \"1525 mm\", \"strip-width\": \"50 mm\"")
            .Replace("\"finish\": {", "\"finish\": { \"break-ends-course-degrees\": 12, \"depth-error\": \"6 mm\",", StringComparison.Ordinal)
            .Replace("\"vent\": { \"from\": \"1500 mm\", \"to\": \"1900 mm\", \"width\": \"400 mm\" },", string.Empty, StringComparison.Ordinal)).Output);
        Assert.Contains("9.5 deg, courses run on through (over 12 deg ends one)", sheet, StringComparison.Ordinal);
        Assert.Contains("1 end 25 (1) 0 (0) 994 (39-1/8) 994 (39-1/8) rib", sheet, StringComparison.Ordinal);
        Assert.Contains("tip 13.6 mm (17/32 in) clear in the worst case, 10 mm", sheet, StringComparison.Ordinal); // 20 - 6 - 0.394
        Assert.DoesNotContain("vent u", sheet, StringComparison.Ordinal);
    }

    private static string Changed(string old, string changed)
    {
        Assert.Contains(old, s_demo, StringComparison.Ordinal);
        return s_demo.Replace(old, changed, StringComparison.Ordinal);
    }

    [Fact]
    public void In_inches_the_sheet_is_the_same_to_the_byte()
    {
        // Eight decimals of an inch are a quarter of a nanometre, so that each length comes back to its own.
        string inches = Regex.Replace(s_demo, "\"([0-9.]+) mm\"", static match => $"\"{(decimal.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) / 25.4m).ToString("0.00000000", CultureInfo.InvariantCulture)} in\"");
        Assert.Contains("\"length\": \"133.85826772 in\"", inches, StringComparison.Ordinal); // 3400/25.4
        SameSheet(inches);
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

    [Fact]
    public void Workings_print_every_step_with_its_source()
    {
        Run run = program.Start("--workings");
        Assert.Equal((0, string.Empty), (run.ExitCode, run.Error));
        Assert.StartsWith(program.Start().Output, run.Output, StringComparison.Ordinal);
        foreach (Workings workings in Answers().Select(static answer => answer.Workings))
        {
            Assert.Contains(workings.ToText(), run.Output, StringComparison.Ordinal);
        }

        // Recomputed from the printed numbers: 2 layers of calculators, hand to bay and curve to sheet.
        Assert.Contains(" = 27.3 + 0 - (1.5 + 26.19375 * cos(0)) = -0.39375 mm  (worst clearance) [tolerance-sum]", run.Output, StringComparison.Ordinal);
        Assert.Contains("g_1 = (W_1 - n * w) / m = (1515.940481 - 31 * 40) / 30 = 9.1980160333 mm  (gap) [slats-spread]", run.Output, StringComparison.Ordinal);
        Match peak = Regex.Match(run.Output, @"R_peak = R_m / k = (\S+) / (\S+) = (\S+) mm  \(peak\) \[bend-hold-down\]");
        Assert.Equal(Value(peak, 3), Value(peak, 1) / Value(peak, 2), 1e-6);
        Match bay = Regex.Match(run.Output, @"L_Pd = \S+ .* = \((\S+) \* (\S+) \* (\S+) / \((\S+) \* (\S+)\)\)\^\(1\.0 / 3\) = (\S+) mm");
        Assert.Equal(Value(bay, 6), Math.Cbrt(Value(bay, 1) * Value(bay, 2) * Value(bay, 3) / (Value(bay, 4) * Value(bay, 5))), 1e-6);
    }

    /// <summary>The demo van, typed a second time, and what the public calls answer.</summary>
    private static class Van
    {
        internal static readonly Length[] Ribs = [Mm(30), Mm(480), Mm(950), Mm(1420), Mm(1960), Mm(2330), Mm(2700), Mm(3060), Mm(3370)];
        internal static readonly double[] RibWidths = [60, 50, 40, 50, 50, 40, 50, 40, 60];
        internal static readonly CircularArc Upper = Arc.FromChordAndRise(Mm(352), Mm(7));
        internal static readonly CircularArc Along = Arc.FromChordAndRise(Mm(3400), Mm(25));
        internal static readonly CircularArc Front = Arc.FromChordAndRise(Mm(1506), Mm(75));
        internal static readonly CircularArc Rear = Arc.FromChordAndRise(Mm(1440), Mm(68));
        internal static readonly BeamSection Board = BeamSection.OfBoard(Mm(89), Mm(12.7), WoodSpecies.Named("ponderosa pine"));
        internal static readonly BayLimit Bay = BoardSpan.LargestBay(Board);
        internal static readonly BayLimit SlatBay = BoardSpan.LargestBay(BeamSection.OfBoard(Mm(40), Mm(10), WoodSpecies.Named("ponderosa pine")), Surface.Ceiling);
        internal static readonly FurringPlan Furring = FurringLayout.LayOut(new FurringFace(Mm(3400), Mm(994), Bay.LargestBay)
        {
            RearAtFoot = Mm(3400),
            RearAtHead = Mm(3352),
            Openings = [new(Mm(500), Mm(1400), Mm(230), Mm(610)), new(Mm(1980), Mm(2680), Mm(230), Mm(610))],
            Breaks = [new(Mm(200), Angle.FromDegrees(3.5)), new(Mm(642), Angle.FromDegrees(9.5))],
            Ribs = [.. Ribs.SelectMany(Cut)],
            Rails = [new(Mm(0), Mm(40)), new(Mm(200), Mm(40)), new(Mm(642), Mm(40)), new(Mm(994), Mm(40))],
            StripSection = BeamSection.OfPlywood(Mm(40), SheetGoods.Birch15, SpanGrain.AlongTheSpan),
        });
        internal static readonly BeamExtremes SetOut = ContinuousBeam.UnderPointLoad(new Beam(Board, Furring.Spacing.Bays), Force.FromNewtons(200));
        internal static readonly RippingPlan Rip = StripRipping.Rip(new RippingJob(Mm(1525), Mm(1525), Furring.Parts));
        internal static readonly FastenerJob Job = new([Layer.Board(Mm(12.7)), new(TolerancedLength.PlusMinus(Mm(15.1), Mm(0.5))) { Name = "furring", Sheet = SheetGoods.Birch15 }], Behind.Metal, FastenerSeries.Finish16) { Count = 200 };
        internal static readonly FastenerChoice Nail = FastenerLength.Choose(Job);
        internal static readonly FastenerCandidate[] Skins = [.. new double[] { 55, 45, 35 }.Select(static depth => FastenerLength.Evaluate(Job with { Behind = Behind.Skin(TolerancedLength.PlusMinus(Mm(depth), Mm(3))) }, Mm(25.4)))];
        internal static readonly FastenerCandidate Wire = FastenerLength.Evaluate(Job with { Behind = Behind.Wire(TolerancedLength.PlusMinus(Mm(20), Mm(3))) }, Mm(25.4));
        internal static readonly BendVerdict Stiff = Judge(BendGrain.AroundTheCurve);
        internal static readonly BendVerdict Easy = Judge(BendGrain.AlongTheAxis);
        internal static readonly HoldDownResult Held = HoldDown.OnArc(new HoldDownCase(BentSheet.Of(SheetGoods.Birch6, BendGrain.AlongTheAxis), Upper.Radius, [Mm(0), Mm(176), Mm(352)], Mm(1000)));
        internal static readonly BentStripResult[] Bows = [.. new[] { SheetGoods.Birch15, SheetGoods.Birch12, SheetGoods.Birch9, SheetGoods.Birch6, SheetGoods.Birch4 }
            .Select(static sheet => BentStrip.Judge(new BentStripCase(sheet, Front.Radius, BentSheet.EqualRows(Front.ArcLength, 3)) { Width = Mm(40) }))];
        internal static readonly SlatRun Run = new(Front.ArcLength, Mm(40)) { Stations = [Rear.ArcLength], LeastGap = Mm(6), GreatestGap = Mm(10) };
        internal static readonly SlatChoice Slats = SlatSpread.Spread(Run);
        internal static readonly SlatFit FrontFit = Slats.Recommended!.OnCurve(Front.Radius, Mm(10), 0);
        internal static readonly SlatFit RearFit = Slats.Recommended!.OnCurve(Rear.Radius, Mm(10), 1);

        private static BendVerdict Judge(BendGrain grain) =>
            PanelBend.Judge(new BendCase(BentSheet.Of(SheetGoods.Birch6, grain), Upper.Radius) { Rows = [Mm(0), Mm(176), Mm(352)], BowAlong = Along.Radius, Girth = Mm(352), Width = Mm(3400) });

        /// <summary>The ribs at 950 and 2330 pass behind windows.</summary>
        private static IEnumerable<ShellMember> Cut(Length rib, int i) => rib.Millimeters is 950 or 2330
            ? [new(rib, Mm(RibWidths[i])) { From = Mm(0), To = Mm(230) }, new(rib, Mm(RibWidths[i])) { From = Mm(610) }]
            : [new(rib, Mm(RibWidths[i])) { From = Mm(0) }];
    }

    /// <summary>What the sheet takes of every answer; where one has no defaults of its own there is none.</summary>
    private static List<(IReadOnlyList<Finding> Findings, IReadOnlyList<DefaultUsed> Defaults, Workings Workings)> Answers() =>
    [
        (Van.Nail.Findings, Van.Nail.DefaultsUsed, Van.Nail.Explain()),
        .. Van.Skins.Append(Van.Wire).Select(static there => (there.Findings, (IReadOnlyList<DefaultUsed>)[], there.Explain())),
        (Van.Bay.Findings, Van.Bay.DefaultsUsed, Van.Bay.Explain()),
        (Van.SetOut.Findings, Van.SetOut.DefaultsUsed, Van.SetOut.Explain()),
        (Van.Furring.Findings, Van.Furring.DefaultsUsed, Van.Furring.Explain()),
        ([], Van.Furring.Spacing.DefaultsUsed, Van.Furring.Spacing.Explain()),
        (Van.Rip.Findings, Van.Rip.DefaultsUsed, Van.Rip.Explain()),
        (Van.Upper.Findings, [], Van.Upper.Explain()),
        (Van.Front.Findings, [], Van.Front.Explain()),
        (Van.Rear.Findings, [], Van.Rear.Explain()),
        (Van.Easy.Findings, Van.Easy.DefaultsUsed, Van.Easy.Explain()),
        ([], [], Van.Stiff.Explain()), // not taken, so its problem is none of the design
        (Van.Held.Findings, Van.Held.DefaultsUsed, Van.Held.Explain()),
        (Van.Bows[0].Findings, Van.Bows[0].DefaultsUsed, Van.Bows[0].Explain()),
        .. Van.Bows.Skip(1).Select(static bow => ((IReadOnlyList<Finding>)[], bow.DefaultsUsed, bow.Explain())),
        (Van.SlatBay.Findings, Van.SlatBay.DefaultsUsed, Van.SlatBay.Explain()),
        (Van.Slats.Findings, Van.Slats.DefaultsUsed, Van.Slats.Explain()),
        (Van.FrontFit.Findings, Van.FrontFit.DefaultsUsed, Van.FrontFit.Explain()),
        (Van.RearFit.Findings, Van.RearFit.DefaultsUsed, Van.RearFit.Explain()),
    ];

    /// <summary>Every row with a figure, written from what the public calls answer and from the survey as typed above.</summary>
    private static List<string> Expected()
    {
        FastenerCandidate nail = Van.Nail.Chosen!, next = Van.Nail.NextLonger!;
        SlatCount slats = Van.Slats.Recommended!;
        SlatSetOut[] marks = [slats.SetOut(0), slats.SetOut(1)];
        SlatCount inches = SlatSpread.Spread(Van.Run with { RoundTo = SetOutStep.SixteenthInch }).Recommended!;
        SlatSetOut[] inchMarks = [inches.SetOut(0), inches.SetOut(1)];
        RippingWay way = Van.Rip.Recommended!;
        List<string> rows =
        [
            "survey: revision 1",
            $"u = 0 at the front end of the wall, which is on your right, and runs to the rear, {Tape(3400)} long; v = 0 at the furniture line, {Tape(860)} above the floor",
            $"v {Tape(0)} to {Tape(200)}, up to {Tape(1060)} above the floor; leans in 2 deg; cavity {Tape(55)}",
            $"v {Tape(200)} to {Tape(642)}, up to {Tape(1500)} above the floor; leans in 5.5 deg; cavity {Tape(45)}",
            $"v {Tape(642)} to {Tape(994)}, up to {Tape(1840)} above the floor; leans in 15 deg; cavity {Tape(35)}",
            $"window u {Tape(500)} to {Tape(1400)}, v {Tape(230)} to {Tape(610)}, corners R {Tape(70)}",
            $"window u {Tape(1980)} to {Tape(2680)}, v {Tape(230)} to {Tape(610)}, corners R {Tape(70)}",
            $"break v {Tape(200)}: the lean changes by 3.5 deg, courses run on through (over 4 deg ends one)",
            $"break v {Tape(642)}: the lean changes by 9.5 deg, ends a course: strips on both sides of it (over 4 deg ends one)",
            $"Strip 28 is fixed to metal within {Tape(30)} of the wire at v {Tape(660)}",
            $"The bows are up to {Tape(480)} apart, and one slat alone spans {Floor(Van.SlatBay.LargestBay)}",
            "into furring on a rib: 16 ga finish nail",
            $"board {Caliper(Mm(12.7))}, counted as 12.7 to 12.7 mm",
            $"furring {Caliper(Mm(15.1))}, counted as 14.6 to 15.6 mm",
            $"take {Exact(nail.Length.Nominal)}: MARGINAL against the rib's metal, tip {Clear(nail.Clearance)}, in the worst case {Clear(nail.WorstClearance)}; bites {Down(nail.Bite)}, in the worst case {Down(nail.WorstBite)}, of {Caliper(nail.LeastBite)} asked",
            $"200 nails: {Math.Round(nail.ExpectedHits, 4).ToString(CultureInfo.InvariantCulture)} expected to touch",
            $"not {Exact(next.Length.Nominal)}: it reaches the rib's metal, tip {Clear(next.Clearance)}, in the worst case {Clear(next.WorstClearance)}",
            .. Van.Nail.Remedies.Select(static remedy => "or " + Bench(remedy.Text)),
            .. Van.Skins.Select(static (skin, i) => $"band {i + 1}, outer skin {Tape(55 - (10 * i))} behind the furring: the same nail is safe, tip {Clear(skin.WorstClearance)} in the worst case, {Caliper(skin.RequiredClearance)} asked"),
            $"near side {Tape(20)} behind the furring: the same nail is safe, tip {Clear(Van.Wire.WorstClearance)} in the worst case, {Caliper(Van.Wire.RequiredClearance)} asked",
            $"NO-GO v {Tape(626)} to {Tape(694)}: no screw",
            $"ponderosa pine, knotty, {Caliper(Mm(89))} x {Caliper(Mm(12.7))}",
            $"up to {Floor(Van.Bay.LargestBay)}, governed by deflection; by deflection {Floor(Van.Bay.ByDeflection!.Value)}, by bending stress {Floor(Van.Bay.ByStress!.Value)}, cap {Tape(500)}",
            $"gives {Caliper(Van.Bay.Deflection)} at that bay under 200 N, {Caliper(Van.SetOut.Deflection)} over the bays below; stress {Decimal(Van.SetOut.Stress.Megapascals, 1)} of {Decimal(Van.SetOut.AllowedStress!.Value.Megapascals, 1)} MPa allowed",
            $"FURRING STRIPS, {Tape(40)} wide: centre lines in mm (in), all off u = 0 and v = 0",
            .. Van.Furring.Pieces.Select(Piece),
            $"largest {Tape(Van.Furring.Spacing.LargestBay)}; 10 strips up the wall; {Metres(Van.Furring.RunningLength)} m in all: {Metres(Van.Furring.UprightLength)} up the wall, {Metres(Van.Furring.TrimmerLength)} heads and sills, {Metres(Van.Furring.BreakLength)} along breaks",
            $"the edge lies {Tape(Mm((48 * 400 / 994.0) - 8))} behind the straight line at v {Tape(400)}",
            $"RIP from 15 mm birch plywood sanded, {Tape(1525)} x {Tape(1525)}",
            $"sheets {way.Sheets.Count}: {way.RippedStrips} strips along the sheet, of {way.Yields.Single(static each => each.Width.Millimeters == 40).PerSheet} that a sheet gives",
            .. way.Sheets.SelectMany(static sheet => sheet.Strips).Select(static strip => $"{Pair(strip.Width)} wide: {string.Join(", ", strip.Pieces.Select(Pair))}").GroupBy(static strip => strip).Select(static same => $"{same.Count()} of {same.Key}"),
            $"6.5 mm birch plywood sanded, 3 rows of fixings over {Tape(352)}",
            $"{Tape(7)} under {Tape(352)}: R {Whole(Van.Upper.Radius)}, from R {Whole(Van.Upper.LeastRadius(Mm(0.5)))} to R {Whole(Van.Upper.GreatestRadius(Mm(0.5)))} if",
            $"NO face grain around the curve: bent to R {Whole(Van.Stiff.PeakRadius)} at its tightest, R {Up(Van.Stiff.MinimumRadius)} allowed (elastic limit with its factor); least rows: {HoldDown.LeastEqualRows(BentSheet.Of(SheetGoods.Birch6, BendGrain.AroundTheCurve), Van.Upper.Radius).Rows}",
            $"YES face grain along the van: bent to R {Whole(Van.Easy.PeakRadius)} at its tightest, R {Up(Van.Easy.MinimumRadius)} allowed (elastic limit with its factor); least rows: {HoldDown.LeastEqualRows(BentSheet.Of(SheetGoods.Birch6, BendGrain.AlongTheAxis), Van.Upper.Radius).Rows}",
            $"rows at {Tape(0)}, {Tape(176)}, {Tape(352)} up the band; the row that pulls most pulls {Math.Ceiling(Van.Held.GreatestPull.Newtons)} N a metre for good; stands off up to {Caliper(Van.Held.StandOff)}",
            $"front {Tape(75)} under {Tape(1506)}: R {Whole(Van.Front.Radius)}, {Tape(Van.Front.ArcLength)} round the curve",
            $"rear {Tape(68)} under {Tape(1440)}: R {Whole(Van.Rear.Radius)}, {Tape(Van.Rear.ArcLength)} round the curve",
            $"bows u {string.Join(", ", new double[] { 40, 520, 1000, 1480, 1920, 2400, 2860, 3260 }.Select(Tape))}; fix 3 times on each",
            $"vent u {Tape(1500)} to {Tape(1900)}, {Tape(400)} wide",
            .. Van.Bows.Select(static bow => $"{(bow.Follows ? "YES" : "NO")} {bow.Strip.Sheet.Name}: bent to R {Whole(bow.PeakRadius)} at its tightest, R {Up(bow.MinimumRadius)} allowed{(bow.Follows ? $"; a fixing pulls up to {Math.Ceiling(bow.GreatestPull.Newtons)} N for good" : string.Empty)}"),
            .. Van.Bows[0].Remedies.Where(static remedy => remedy.Layers > 1).Select(static remedy => $"YES {remedy.Layers} layers of {remedy.Sheet.Name}, {Caliper(remedy.Thickness)} together, bent one on another: R {Whole(remedy.PeakRadius)} at the tightest, R {Up(remedy.MinimumRadius)} allowed"),
            $"CEILING SLATS, {Caliper(Mm(40))} x {Caliper(Mm(10))}, along the van",
            $"no further apart than {Floor(Van.SlatBay.LargestBay)}: one slat alone under a hand; the bows are up to {Tape(480)} apart",
            $"front {slats.Count} slats, gap {Caliper(slats.Gaps[0])} at the back, {Caliper(Van.FrontFit.GapAtFace)} at the face; {Decimal(100 * slats.Coverages[0], 0)}% covered",
            $"rear {slats.Count} slats, gap {Caliper(slats.Gaps[1])} at the back, {Caliper(Van.RearFit.GapAtFace)} at the face; {Decimal(100 * slats.Coverages[1], 0)}% covered",
            .. Enumerable.Range(0, 16).Select(i => i + 16 < slats.Count ? $"{i + 1} {Mark(i)} | {i + 17} {Mark(i + 16)}" : $"{i + 1} {Mark(i)}"),
            $"strips {Tape(40)} wide (common practice, no published source); depths of cavities and wires {Tape(3)} off either way, nothing within {Tape(30)} to either side of a wire",
            .. Answers().SelectMany(static answer => answer.Findings).Select(static finding => Bench(finding.Message)),
            .. Answers().SelectMany(static answer => answer.Defaults).GroupBy(static used => used.Source.ToString())
                .Select(static same => $"- {string.Join(", ", same.Select(static used => $"{used.Figure.Name.Replace("-", " ", StringComparison.Ordinal)} {Decimal(used.Figure.Value, 4)} {used.Figure.Unit}".Trim()).Distinct())}: {same.Key}"),
        ];
        return [.. rows.Distinct()];

        string Mark(int i) => $"{Whole(marks[0].Marks[i].Mark)[..^3]} ({FormatInches(inchMarks[0].Marks[i].Mark)[..^3]}) {Whole(marks[1].Marks[i].Mark)[..^3]} ({FormatInches(inchMarks[1].Marks[i].Mark)[..^3]})"
            .Replace(" mm", string.Empty, StringComparison.Ordinal).Replace(" in", string.Empty, StringComparison.Ordinal);
    }

    private static string Piece(FurringPiece piece, int i)
    {
        bool isLevel = piece.Role is StripRole.Trimmer or StripRole.Break;
        string holds = !isLevel && piece.BearsAlong is not null ? "rib" : "rails";
        string angle = piece.EndAngle.Degrees > 0 ? $"; {Decimal(piece.EndAngle.Degrees, 1)} deg" : string.Empty;
        string more = piece.Width.Millimeters < 40 ? $" ripped to {Tape(piece.Width)} wide" : !isLevel && angle.Length > 0 ? $" leans with the edge: at its head u {Tape(piece.EndU)}" : string.Empty;
        return isLevel
            ? $"{i + 1} {(piece.Role == StripRole.Break ? "break" : "trimmer")} {Pair(piece.StartV)} {Pair(piece.StartU)} {Pair(piece.EndU)} {Pair(piece.Length)} {holds}{angle}{more}"
            : $"{i + 1} {(piece.Role == StripRole.End ? "end" : piece.Role == StripRole.Jamb ? "jamb" : "between")} {Pair(piece.StartU)} {Pair(piece.StartV)} {Pair(piece.EndV)} {Pair(piece.Length)} {holds}{angle}{more}";
    }

    private void SameSheet(string other)
    {
        Run one = program.Start("--workings"), two = program.StartOn(other, "--workings");
        Assert.Equal((0, string.Empty), (two.ExitCode, two.Error));
        Assert.Equal(one.Output, two.Output);
        Assert.Equal(one.Bytes, two.Bytes);
    }

    private static string Tape(double millimetres) => Tape(Mm(millimetres));

    private static string Tape(Length length) => $"{FormatMillimetres(length, 0)} ({FormatInches(length, 16)})";

    private static string Pair(Length length) => $"{FormatMillimetres(length, 0)[..^3]} ({FormatInches(length, 16)[..^3]})";

    private static string Caliper(Length length) => $"{FormatMillimetres(length, 1)} ({FormatInches(length, 64)})";

    private static string Exact(Length length) => $"{FormatMillimetres(length, 3)} ({FormatInches(length, 64)})";

    // Whole nanometres, so that rounding here owes nothing to the program's.
    private static long Nanometres(Length length) => (long)Math.Round(length.Millimeters * 1e6);

    private static long Floor(long value, long step) => (value / step) - (value % step < 0 ? 1 : 0);

    private static string Floor(Length length) => $"{Floor(Nanometres(length), 1_000_000)} mm ({FormatInches(Inch(Floor(Nanometres(length) * 16, 25_400_000) / 16.0))})";

    private static string Down(Length length) =>
        $"{(Floor(Nanometres(length), 100_000) / 10m).ToString("0.#", CultureInfo.InvariantCulture)} mm ({FormatInches(Inch(Floor(Nanometres(length) * 64, 25_400_000) / 64.0), 64)})";

    private static string Clear(Length length) => length.Millimeters >= 0 ? $"{Down(length)} clear" : $"{Down(length).TrimStart('-').Replace("(-", "(", StringComparison.Ordinal)} PAST";

    private static string Whole(Length? length) => FormatMillimetres(length!.Value, 0);

    private static string Up(Length length) => $"{-Floor(-Nanometres(length), 1_000_000)} mm";

    private static string Metres(Length length) => Decimal(length.Millimeters / 1000, 1);

    private static string Decimal(double value, int decimals) => Math.Round((decimal)value, decimals, MidpointRounding.AwayFromZero).ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>A message as the bench reads it: tenths from a millimetre on, whole millimetres from a hundred.</summary>
    private static string Bench(string message) => Regex.Replace(message, @"[0-9]+\.[0-9]+ mm", static match =>
        decimal.Parse(match.Value[..^3], CultureInfo.InvariantCulture) switch { < 1 => match.Value, < 100 and var tenths => Decimal((double)tenths, 1) + " mm", var whole => Decimal((double)whole, 0) + " mm" });

    private static int Whole(Match match, int group) => int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    private static double Value(Match match, int group) => double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    private static void Refused(Run run, string[] says)
    {
        Assert.Equal((1, string.Empty), (run.ExitCode, run.Output));
        Assert.All(says, word => Assert.Contains(word, run.Error, StringComparison.Ordinal));
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal); // no stack trace
    }

    private static string Unwrapped(string text) => Regex.Replace(text, @"\s+", " ").Trim();
}

/// <summary>The program, built once.</summary>
public sealed class OneWallProgram() : ExampleProgram("one-wall");
#endif
