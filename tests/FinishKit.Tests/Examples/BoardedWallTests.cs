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

/// <summary>The program docs/examples/boarded-wall.cs as a person runs it: built once, then started with files.</summary>
public sealed class BoardedWallTests(BoardedWallProgram program) : IClassFixture<BoardedWallProgram>
{
    private static readonly string s_demo = File.ReadAllText(Path.Combine(Repository.Root, "docs", "examples", "boarded-wall.json"));

    public static TheoryData<string, string, string, string[]> BrokenFiles() => new()
    {
        { "decimal comma", "\"width\": \"97 mm\"", "\"width\": \"97,5 mm\"", ["$.boards.width: “97,5 mm”", "comma"] },
        { "no unit", "\"tongue\": \"9 mm\"", "\"tongue\": \"9\"", ["$.boards.tongue: “9”, a number without a unit"] },
        { "a number for a length", "\"length\": \"3400 mm\"", "\"length\": 3400", ["$.length: \"3400\"; allowed is a length with its unit"] },
        { "a fraction of a metric unit", "{ \"u\": \"480 mm\" }", "{ \"u\": \"1/2 mm\" }", ["$.strips[1].u: “1/2 mm”, a fraction of a metric unit"] },
        { "unknown member", "\"gap\": \"1 mm\"", "\"gap\": \"1 mm\", \"colour\": \"oak\"", ["$.boards[\"colour\"]: unknown member; allowed are width, tongue, species, thickness, gap, end-gap, stock, offcuts"] },
        { "missing member", "\"under-trim\": false,", "", ["$.edge.under-trim: missing; allowed is true or false"] },
        { "member twice", "\"gap\": \"1 mm\"", "\"gap\": \"1 mm\", \"gap\": \"2 mm\"", ["$.boards.gap: given more than once"] },
        { "null", "\"species\": \"ponderosa pine\"", "\"species\": null", ["$.boards.species: \"null\"; allowed is text"] },
        { "text for yes or no", "\"under-trim\": false", "\"under-trim\": \"no\"", ["$.edge.under-trim: \"no\"; allowed is true or false"] },
        { "an object for a list", "\"wires\": [\n    { \"v\": \"660 mm\", \"diameter\": \"8 mm\" }\n  ]", "\"wires\": {}", ["$.wires: \"{}\"; allowed is a list"] },
        { "a length for a strip", "{ \"u\": \"950 mm\" }", "\"950 mm\"", ["$.strips[2]: \"950 mm\"; allowed is an object"] },
        { "a side that no van has", "\"side\": \"left\"", "\"side\": \"top\"", ["$.side: \"top\"; allowed is left, right"] },
        { "an edge in the middle", "\"end\": \"rear\"", "\"end\": \"middle\"", ["$.edge.end: \"middle\"; allowed is front, rear"] },
        { "unknown wood", "ponderosa pine", "balsa of mine", ["$.boards.species: \"balsa of mine\"; allowed is", "ponderosa pine"] },
        { "a tongue as wide as its board", "\"tongue\": \"9 mm\"", "\"tongue\": \"60 mm\"", ["$.boards.tongue: 60 mm; allowed is 2 to 47.5 mm"] }, // half of 97, less 1
        { "a board as thin as paper", "\"thickness\": \"12.7 mm\"", "\"thickness\": \"0.5 mm\"", ["$.boards.thickness: 0.5 mm; allowed is 3 to 100 mm"] },
        { "a gap wider than the tongue", "\"gap\": \"1 mm\"", "\"gap\": \"9 mm\"", ["$.boards.gap: 9 mm; allowed is 0 to 8 mm"] },
        { "a wall of a foot", "\"length\": \"3400 mm\"", "\"length\": \"1 ft\"", ["$.length: 1 ft; allowed is 500 to 20000 mm"] },
        { "a board for nothing and less", "\"price\": 9.80", "\"price\": -1", ["$.boards.stock[0].price: -1; allowed is 0 to 100000"] },
        { "no boards to buy", "{ \"length\": \"2438 mm\", \"price\": 9.80 }", "", ["$.boards.stock: 0 entries; allowed is 1 to 20 entries"] },
        { "air wetter than wet", "\"humidity\": 71", "\"humidity\": 101", ["$.air.wettest.humidity: 101; allowed is 0 to 98"] },
        { "seasons the wrong way round", "\"humidity\": 31", "\"humidity\": 90", ["$.air", "allowed is"] },
        { "a window that ends before it begins", "\"from\": \"500 mm\", \"to\": \"1400 mm\"", "\"from\": \"1400 mm\", \"to\": \"500 mm\"", ["$.windows[0].to: 500 mm; allowed is 1401 to 20000 mm"] },
        { "a window over the head", "\"top\": \"610 mm\"", "\"top\": \"1610 mm\"", ["$.windows[0].top: 1610 mm; allowed is", "994 mm"] },
        { "a window behind the wall", "\"to\": \"2680 mm\"", "\"to\": \"3680 mm\"", ["$.windows[1].to: 3680 mm; allowed is 0 to 3400 mm"] },
        { "a window over a window", "\"from\": \"1980 mm\"", "\"from\": \"1300 mm\"", ["$.windows[1]: u 1300 to 2680 mm", "over no other opening"] },
        { "a station below the one before", "{ \"height\": \"910 mm\"", "{ \"height\": \"810 mm\"", ["$.profile[1].height: 810 mm; allowed is"] },
        { "an edge that stops short", "{ \"v\": \"994 mm\"", "{ \"v\": \"900 mm\"", ["$.edge.marks: v 0 to 900 mm; allowed is 0 or less to 994 mm or more"] },
        { "two marks at one height", "{ \"v\": \"800 mm\"", "{ \"v\": \"600 mm\"", ["$.edge.marks[4].v: 600 mm; allowed is a height 1 mm or more from every other"] },
        { "strips out of order", "{ \"u\": \"1420 mm\" }", "{ \"u\": \"420 mm\" }", ["$.strips[3]: 420 mm; allowed is beyond the strip before it, at 950 mm"] },
        { "a name that would clear the screen", "\"Demo van, long, high roof\"", "\"S\\u001b[2J\"", ["$.van: \"S?[2J\"; allowed is 1 to 60 plain characters"] },
        { "half a character", "\"Demo van, long, high roof\"", "\"\\ud800\"", ["cannot be read"] },
        { "no comma", "\"windows\": [", "\"windows\" [", ["line ", ", byte ", "not JSON"] },
    };

    [Theory]
    [MemberData(nameof(BrokenFiles))]
    public void A_broken_file_is_refused_whole_with_what_and_where(string name, string old, string changed, string[] says)
    {
        Assert.Contains(old, s_demo, StringComparison.Ordinal);
        int at = s_demo.IndexOf(old, StringComparison.Ordinal);
        Run run = program.StartOn(s_demo[..at] + changed + s_demo[(at + old.Length)..]);
        Refused(run, says);
        Assert.True(run.Error.TrimEnd('\n').Split('\n').Length == 2 || name == "seasons the wrong way round", run.Error); // one mistake is one line, not five
    }

    [Fact]
    public void All_mistakes_of_a_file_come_together()
    {
        string broken = Changed("\"width\": \"97 mm\"", "\"width\": \"97,5 mm\"", ("\"u\": \"480 mm\"", "\"u\": \"480\""), ("\"side\": \"left\"", "\"side\": \"top\""), ("\"price\": 9.80", "\"price\": \"dear\""));
        Run run = program.StartOn(broken);
        Refused(run, ["$.boards.width: ", "$.strips[1].u: ", "$.side: ", "$.boards.stock[0].price: "]);
        run = program.StartOn(Changed("{ \"u\": \"1420 mm\" }", "{ \"u\": \"420 mm\" }", ("{ \"v\": \"800 mm\"", "{ \"v\": \"600 mm\""), ("\"top\": \"610 mm\"", "\"top\": \"1610 mm\"")));
        Refused(run, ["$.edge.marks[4].v: ", "$.windows[0].top: "]); // strips are asked about once there are courses to joint
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
        Refused(program.StartOn("[]"), ["$: \"[]\"; allowed is an object"]);
    }

    [Theory]
    [InlineData("--wrokings")]
    [InlineData("a.json", "b.json")]
    [InlineData("--workings", "--workings")]
    [InlineData("")]
    public void A_call_that_is_not_understood_gets_the_usage(params string[] args)
    {
        Run run = program.Start(args);
        Assert.Equal((1, string.Empty), (run.ExitCode, run.Output));
        Assert.Contains("usage: dotnet run boarded-wall.cs [file.json] [--workings]", run.Error, StringComparison.Ordinal);
        Assert.Contains($"\"{string.Join(' ', args)}\"", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_demo_wall_comes_out_and_every_printed_figure_is_the_librarys()
    {
        Run run = program.Demo;
        Assert.Equal((0, string.Empty), (run.ExitCode, run.Error));
        string text = Unwrapped(run.Output);
        foreach (string fragment in Expected().Select(Unwrapped).Distinct().OrderByDescending(static fragment => fragment.Length))
        {
            Assert.Contains(fragment, text, StringComparison.Ordinal);
            text = text.Replace(fragment, " ", StringComparison.Ordinal);
        }

        // A figure left over is one that no call answers for; the one number of a column's head is that of u = 0 and v = 0.
        Assert.DoesNotMatch("[0-9]", text.Replace("v off v = 0, u off u = 0", string.Empty, StringComparison.Ordinal).Replace("u = 0 at the", string.Empty, StringComparison.Ordinal).Replace("v = 0 at the", string.Empty, StringComparison.Ordinal));
    }

    [Fact]
    public void Figures_worked_by_hand_stand_on_the_sheet()
    {
        string sheet = Unwrapped(program.Demo.Output);

        // 20 °C, 50%: W 380.2, K 0.818628, K1 5.9612, K2 2.6068; a 0.409314: 0.69295 + (2.44000 + 2 x 2.60350)/(1 + 2.44000 + 2.60350) = 1.95828; x 1800/380.2 = 9.271
        Says("in air of 20 C and 50% humidity the wood comes to 9.3% moisture");

        // 25 °C, 31%: W 389.69, a 0.254725: 0.341787 + 1.011615 = 1.353402; x 1800/389.69 = 6.251. 15 °C, 71%: W 371.39, a 0.578952: 1.375027 + 1.419841; x 1800/371.39 = 13.546
        Says("in air of 25 C and 31% humidity the wood comes to 6.3% moisture");
        Says("in air of 15 C and 71% humidity the wood comes to 13.5% moisture");

        // 97 x 0.00216 x (13.546 - 9.271) = 0.896; x (9.271 - 6.251) = 0.633
        Says("swells by 0.9 mm to the wet end, shrinks by 0.63 mm to the dry end");

        // Face 88: closes by 88 x 0.00216 x 4.275 = 0.8125, opens by 0.5740. 1 - 0.8125; 1 + 0.574; 9 - 1 - 0.633
        Says("1 mm asked, 1 mm left: 0.19 mm when wet, 1.57 mm when dry, with 7.37 mm of the tongue of 9 mm still covered");
        Says("no drier than 8.3%, or the joints close; however wet"); // 13.546 - 1/(88 x 0.00216) = 8.285; 6.251 + 8/(97 x 0.00216) = 44 is more than wood takes up from air

        // Lean of the bands from the readings: atan(42/440) = 5.45, atan(91/340) = 14.98; half of 9.53. Stand-off 44 tan(3.52/2) = 1.35
        Says("v 642 mm (25-1/4 in): the lean changes by 9.5 deg, ends a course: bevel both edges 4.8 deg, a hollow: the backs of the boards are the wider");
        Says("boards run over it and stand off up to 1.4 mm (3/64 in)");
        Says("runs up along the surface to 994 mm (39-1/8 in)"); // sqrt(200² + 7²) + sqrt(440² + 42²) + sqrt(340² + 91²) = 200.1 + 442.0 + 352.0

        // Modulo 89 the sill lies at 52. A joint there may fall below it by 3: 55 keeps off. 55 + 89 = 144; 144 + 88 = 232; 230 - 144 = 86; 55 + 6 x 89 = 589; 642 - 610 = 32
        Says("3 144 (5-11/16) 232 (9-1/8) 88 (3-7/16) whole notch u 500 (19-11/16) to 1400 (55-1/8): 86 (3-3/8) stays below v 230 (9-1/16)");
        // Half of 9.504 is 4.752, its tangent 0.0831: the back is 12.7 x 0.0831 = 1.06 wider. Course 8 loses its tongue; 9 keeps it, 42 + 9 + 1.06; of 1 the lower 34 of 97 go.
        Says("1 0 (0) 54 (2-1/8) 54 (2-1/8) 63 (2-31/64) lower edge 2 55");
        Says("9 642 (25-1/4) 684 (26-15/16) 42 (1-5/8) 52.1 (2-3/64) lower edge bevel the lower edge 4.8 deg from square, so that the back is the wider 10 685");
        Says("9, 1 of 2 2327 (91-5/8) 52.1 (2-3/64) square");
        Says("8 589 (23-3/16) 642 (25-1/4) 53 (2-1/16) 54.1 (2-1/8) upper edge bevel the upper edge 4.8 deg from square, so that the back is the wider notch u 500 (19-11/16) to 1400 (55-1/8): 32 (1-1/4) stays above v 610 (24)");

        // Marks 2, 8, 18 at 200, 400, 600: slopes of the chords 0.01, 0.03, 0.05, 0.065; at the marks their harmonic means 0.015, 0.0375, 0.0565217.
        // v 233: 2 + 0.015 x 33 + 0.0001125 x 33² - 1.875e-7 x 33³ = 2.6108; v 322: 5.1640; v 411: 8 + 0.0375 x 11 + 9.239e-5 x 121 = 8.4235.
        // (5.1640 - 2.6108)/89 = 0.028688, 1.643°; (8.4235 - 5.1640)/89 = 0.036624, 2.097°; 0.454° more.
        Says("4 1.6 0.7 below 3397 (133-3/4) 3395 (133-5/8) 0.14 mm");
        Says("5 2.1 0.5 below 3395 (133-5/8) 3392 (133-1/2) 0.04 mm");

        // 3400 - 2.6108 - 3 - (2680 + 3) = 711.39; 2330 - 3 = 2327, and 3400 - 3 - 2330 = 1067 less what the edge comes in; 230 - 3 ... 1980 - 1400 - 6 = 574
        Says("4C 711 (28) whole 1.6 deg, long below");
        Says("2, 1 of 2 2327 (91-5/8) whole square");
        Says("4B 574 (22-5/8) whole square");
        Says("buy 16 of 2438 mm (96 in): 156.80"); // 16 x 9.80
        Says("NO fastener from v 626 mm (24-5/8 in) to 694 mm (27-5/16 in)"); // 660 -/+ (4 + 30)

        void Says(string words) => Assert.Contains(words, sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_builder_expects_of_this_wall_comes_out()
    {
        string output = program.Demo.Output;
        (double Saw, double? Change)[] ends = [.. Regex.Matches(output, @"(?m)^  \d+ +([0-9.]+) +([0-9.]+|-) +below .* mm$").Select(static row => (Value(row, 1), row.Groups[2].Value == "-" ? (double?)null : Value(row, 2)))];
        Assert.Equal(13, ends.Length);

        // Common practice: neighbouring courses differ by about half a degree. Whole courses of 89 on R 10,300 to 10,600: 0.48 to 0.50; readings to the millimetre scatter.
        double[] whole = [.. new[] { 3, 4, 5, 6, 7, 11, 12 }.Select(course => ends[course - 1].Change!.Value)];
        Assert.InRange(whole.Average(), 0.4, 0.6);
        Assert.All(whole, static change => Assert.InRange(change, 0.2, 0.8));
        Assert.Equal(ends[^1].Saw - ends[0].Saw, ends.Skip(1).Sum(static end => end.Change!.Value), 0.6); // each is rounded to a tenth

        // Net area 3400 x 994 less two windows and the taper is 2.75 m², of 5.06 m² that take 23.3 boards: 12.7, and ripped courses and short lengths take more.
        double area = ((3400 * 994.0) - (1600 * 380) - (994 * 17)) / 1e6;
        Match bought = Regex.Match(output, @"(?m)^  buy +(\d+) of 2438 mm");
        Assert.InRange(Value(bought, 1), 23.3 * area / 5.06, 1.4 * 23.3 * area / 5.06);

        // Sixteen are proven by length alone: 2438 - 2 x 15 = 2408 of a board can be used, 1210 of the offcut, and fifteen do not hold all the pieces.
        double pieces = Regex.Matches(output, @"(?m)^.{25}(?:\d+[ABC]|\d+, \d of \d) +(\d+) \(").Sum(static row => Value(row, 1));
        Assert.InRange(pieces, (15 * 2408) + 1210 + 30, (16 * 2408) + 1210); // 30: every length is rounded to the millimetre
        Assert.Contains("156.80: no other joints and no other boards cost less (proven)", output, StringComparison.Ordinal);

        // Joints on strips; those of neighbouring courses two strips apart.
        List<double> strips = [20, 480, 950, 1420, 1690, 1960, 2330, 2700, 3060, 3380];
        int[] joints = [.. Regex.Matches(output, @"(?m)^  (\d+) +u .*joint at (\d+) ").Select(row => strips.IndexOf(Value(row, 2)))];
        Assert.Equal(9, joints.Length);
        Assert.All(joints, static strip => Assert.True(strip >= 0));
        Assert.All(new[] { (0, 1), (1, 2), (3, 4), (4, 5), (5, 6), (6, 7), (7, 8) }, pair => Assert.True(Math.Abs(joints[pair.Item1] - joints[pair.Item2]) >= 2)); // courses 1-3 and 8-13
    }

    [Fact]
    public void The_sheet_starts_with_datum_side_arrow_and_revision_fits_the_page_and_buries_no_problem()
    {
        string output = program.Demo.Output;
        string[] lines = output.Split('\n');
        Assert.StartsWith("BOARD SHEET", lines[0], StringComparison.Ordinal);
        Assert.EndsWith("survey: revision 1", lines[0], StringComparison.Ordinal);
        Assert.Matches("^LEFT WALL, seen from inside the van .* rear .*>  FRONT$", lines[1]);
        int[] order = [.. new[] { "\nPROBLEMS: none", "\nCAUTIONS", "\nBEFORE ANYTHING", "\nMOVEMENT", "\nCOURSES", "\nEND CUTS", "\nJOINTS", "\nBUY AND CUT", "\nNOTES", "\nDEFAULTS" }.Select(head => output.IndexOf(head, StringComparison.Ordinal))];
        Assert.Equal(order.Order(), order);
        Assert.True(order[0] > 0);
        Assert.All(lines, static line => Assert.True(line.Length <= 98 && line == line.TrimEnd(), line));
    }

    [Fact]
    public void On_a_right_wall_the_front_is_on_the_left_hand_and_no_figure_changes()
    {
        string left = program.Demo.Output, right = program.StartOn(Changed("\"side\": \"left\"", "\"side\": \"right\"")).Output;
        Assert.Matches("^RIGHT WALL, seen from inside the van .*FRONT  <.* rear$", right.Split('\n')[1]);
        Assert.Contains("which is on your left", Unwrapped(right), StringComparison.Ordinal);
        left = Unwrapped(left[left.IndexOf("\nPROBLEMS", StringComparison.Ordinal)..]);
        right = Unwrapped(right[right.IndexOf("\nPROBLEMS", StringComparison.Ordinal)..]);
        Assert.Contains("its rear end is on your left,", left, StringComparison.Ordinal); // as on the wall: who looks at a left wall has the front on the right hand
        Assert.Equal(left.Replace("its rear end is on your left,", "its rear end is on your right,", StringComparison.Ordinal), right);
    }

    [Fact]
    public void With_the_edge_at_the_front_everything_is_the_mirror_image()
    {
        string mirrored = Changed("\"end\": \"rear\"", "\"end\": \"front\"");
        string windows = "\"windows\": [\n    { \"from\": \"720 mm\", \"to\": \"1420 mm\", \"bottom\": \"230 mm\", \"top\": \"610 mm\" },\n    { \"from\": \"2000 mm\", \"to\": \"2900 mm\", \"bottom\": \"230 mm\", \"top\": \"610 mm\" }\n  ]"; // 3400 - 2680, 3400 - 1980; 3400 - 1400, 3400 - 500
        mirrored = Regex.Replace(mirrored, "\"windows\": \\[[^]]*\\]", windows);
        mirrored = Regex.Replace(mirrored, "\"strips\": \\[[^]]*\\]", "\"strips\": [" + string.Join(", ", new[] { 20, 340, 700, 1070, 1440, 1710, 1980, 2450, 2920, 3380 }.Select(static u => $"{{ \"u\": \"{u} mm\" }}")) + "]");
        Run run = program.StartOn(mirrored);
        Assert.Equal((0, string.Empty), (run.ExitCode, run.Error));
        string rear = program.Demo.Output, front = run.Output;
        Assert.Contains("square   ends at the rear; at the front cut to the edge", front, StringComparison.Ordinal);
        Assert.Contains("its front end is on your right,", front, StringComparison.Ordinal);
        Assert.Equal(Section(rear, "MOVEMENT"), Section(front, "MOVEMENT"));
        Assert.Equal(Regex.Replace(Section(rear, "COURSES"), "u .*:", "u"), Regex.Replace(Section(front, "COURSES"), "u .*:", "u"));

        // Saw angle, change, long point and gap belong to the board; the edge lies at 3400 less.
        string[] ends = Section(rear, "END CUTS").Split('\n'), mirror = Section(front, "END CUTS").Split('\n');
        Regex row = new(@"^(  \d+ +\S+ +\S+ +below +)(\d+) \S+ +(\d+) \S+( +\S+ mm)$");
        Assert.Equal(13, ends.Count(row.IsMatch));
        foreach ((Match one, Match other) in ends.Zip(mirror, (one, other) => (row.Match(one), row.Match(other))))
        {
            Assert.Equal((one.Success, one.Groups[1].Value, one.Groups[4].Value.Trim()), (other.Success, other.Groups[1].Value, other.Groups[4].Value.Trim()));
            Assert.True(!one.Success || (Value(one, 2) + Value(other, 2) == 3400 && Value(one, 3) + Value(other, 3) == 3400), one.Value + other.Value);
        }

        // The same runs from the other side; as many boards for the same money. Of equally cheap joints the mirror image may take others.
        Regex run3 = new(@"(?m)^  (\d+)([ABC]?) +u (\d+) .*? to (\d+) ");
        HashSet<(string, double, double)> runs = [.. run3.Matches(rear).Select(static match => (match.Groups[1].Value, 3400 - Value(match, 4), 3400 - Value(match, 3)))];
        Assert.Equal(21, runs.Count); // 9 courses, and 4 in three parts
        Assert.Equal(runs, run3.Matches(front).Select(static match => (match.Groups[1].Value, Value(match, 3), Value(match, 4))).ToHashSet());
        Assert.Contains("16 of 2438 mm (96 in): 156.80\n  cost     156.80: no other joints", front, StringComparison.Ordinal);
        Assert.Equal(13, Regex.Count(front, "deg, long below")); // one piece of every course is cut to the edge
        Assert.Equal(13, Regex.Count(rear, "deg, long below"));
        Assert.Equal(4, Regex.Count(front, @"\dA +\d+ .* deg, long below")); // beside the windows it is the part at the front

        string Section(string sheet, string head) => sheet[sheet.IndexOf("---\n", sheet.IndexOf("\n" + head, StringComparison.Ordinal), StringComparison.Ordinal)..].Split("\n\n")[0];
    }

    [Fact]
    public void In_inches_the_sheet_is_the_same_to_the_byte()
    {
        // Eight decimals of an inch are a quarter of a nanometre, so that each length comes back to its own.
        string inches = Regex.Replace(s_demo, "\"([0-9.]+) mm\"", static match => $"\"{(decimal.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) / 25.4m).ToString("0.00000000", CultureInfo.InvariantCulture)} in\"");
        Assert.Contains("\"length\": \"133.85826772 in\"", inches, StringComparison.Ordinal); // 3400/25.4
        Run one = program.Explained, two = program.StartOn(inches, "--workings");
        Assert.Equal((0, string.Empty), (two.ExitCode, two.Error));
        Assert.Equal(one.Output, two.Output);
        Assert.Equal(one.Bytes, two.Bytes);
    }

    [Theory]
    [InlineData("de_DE.UTF-8", "0")]
    [InlineData("tr_TR.UTF-8", "0")]
    [InlineData("C", "1")]
    public void Folder_and_culture_change_no_byte(string language, string invariant)
    {
        Run elsewhere = program.StartIn(
            Path.GetTempPath(),
            new() { ["LANG"] = language, ["LC_ALL"] = language, ["DOTNET_SYSTEM_GLOBALIZATION_INVARIANT"] = invariant, ["DOTNET_SYSTEM_GLOBALIZATION_PREDEFINED_CULTURES_ONLY"] = "0" },
            "--workings");
        Assert.Equal((0, string.Empty), (elsewhere.ExitCode, elsewhere.Error));
        Assert.Equal(program.Explained.Bytes, elsewhere.Bytes);
    }

    [Fact]
    public void Workings_print_every_step_with_its_source()
    {
        Run run = program.Explained;
        Assert.Equal((0, string.Empty), (run.ExitCode, run.Error));
        Assert.StartsWith(program.Demo.Output, run.Output, StringComparison.Ordinal);
        Workings[] all = [Wall.Fitted.Explain(), Wall.Driest.Explain(), Wall.Wettest.Explain(), Wall.Movement.Explain(), Wall.Profile.Explain(), Wall.Courses.Explain(), Wall.Edge.Explain(), Wall.Ends.Explain(), Wall.Joints.Explain(), Wall.Joints.Cutting.Explain()];
        Assert.All(all, workings => Assert.Contains(workings.ToText(), run.Output, StringComparison.Ordinal));
    }

    [Fact]
    public void Without_strips_long_courses_are_a_problem_and_it_stands_on_top()
    {
        string sheet = program.StartOn(Regex.Replace(s_demo, "\"strips\": \\[[^]]*\\]", "\"strips\": []")).Output;
        string problems = sheet[sheet.IndexOf("\nPROBLEMS: do not start before", StringComparison.Ordinal)..sheet.IndexOf("\nCAUTIONS", StringComparison.Ordinal)];
        Assert.Contains("9 runs have no strips in reach", Unwrapped(problems), StringComparison.Ordinal); // courses 1 to 3 and 8 to 13
        Assert.Contains("9 pieces are longer than any board allows", Unwrapped(problems), StringComparison.Ordinal);
        Assert.DoesNotContain("(proven)", sheet, StringComparison.Ordinal);
        Assert.Contains(": NOT all that is asked, see the problems", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void A_further_kind_of_board_makes_nothing_dearer()
    {
        string sheet = Unwrapped(program.StartOn(Changed("\"price\": 9.80 }", "\"price\": 9.80 }, { \"length\": \"3048 mm\", \"price\": 13.10 }")).Output);
        Match cost = Regex.Match(sheet, @"cost (\d+\.\d+)");
        Assert.True(cost.Success && Value(cost, 1) <= 156.80, sheet);
    }

    [Fact]
    public void An_end_that_a_straight_cut_does_not_serve_is_scribed_unless_a_trim_covers_it()
    {
        // A kink of 8 mm at v 600 lies inside course 8 (589 to 642): seen, it needs a scribe.
        string kinked = Changed("{ \"v\": \"600 mm\", \"in\": \"18 mm\" }", "{ \"v\": \"600 mm\", \"in\": \"18 mm\" },\n      { \"v\": \"612 mm\", \"in\": \"22 mm\" }");
        string seen = program.StartOn(kinked).Output, covered = program.StartOn(kinked.Replace("\"under-trim\": false", "\"under-trim\": true", StringComparison.Ordinal)).Output;
        Assert.Matches(@"(?m)^  8 .*; (SCRIBE|move the cut -?[0-9.]+ mm in)$", seen);
        Assert.DoesNotMatch(@"(?m)^  8 .*; ", covered);

        // An edge that goes back again at the head is hollow: a straight cut leaves wood, where a bow leaves a gap.
        string hollow = program.StartOn(Changed("{ \"v\": \"994 mm\", \"in\": \"48 mm\" }", "{ \"v\": \"994 mm\", \"in\": \"32 mm\" }")).Output;
        Assert.Matches(@"(?m)^  1[0-3] .* mm, [0-9.]+ mm wood in the way", hollow);
    }

    /// <summary>With the faces 25.4 before what was measured: hollows of 3.52 and 9.50 degrees take 25.4 x tan 1.762 = 0.78 and 25.4 x tan 4.752 = 2.11 off either side.</summary>
    [Fact]
    public void What_was_measured_behind_the_boards_is_taken_to_their_faces()
    {
        string sheet = Unwrapped(program.StartOn(Changed("\"faces\": \"0 mm\"", "\"faces\": \"25.4 mm\"")).Output);
        Says("measured 25.4 mm (1 in) behind the faces of the boards");
        Says("runs up along the surface to 988 mm"); // 994.1 - 1.56 - 4.22
        Says("break v 199 mm"); // 200.1 - 0.78
        Says("break v 638 mm"); // 642.1 - 1.56 - 2.11
        Says("v 228 mm (9 in) to 608 mm (23-15/16 in)"); // 230 - 1.56, 610 - 1.56
        Says("wire at v 654 mm"); // 660 - 1.56 - 4.22
        Refused(program.StartOn(Changed("\"faces\": \"0 mm\"", "\"faces\": \"201 mm\"")), ["$.faces: 201 mm; allowed is 0 to 200 mm"]);

        void Says(string words) => Assert.Contains(words, sheet, StringComparison.Ordinal);
    }

    /// <summary>A third window from 3385 to the rear. At the lines of course 7, 500 and 589, the edge is 12.52 and 17.38 in (0.0375 and 9.239e-5, -1.495e-7 from v 400): 3387.48 and 3382.62.</summary>
    [Fact]
    public void A_jamb_that_the_edge_crosses_within_a_course_is_square_with_a_corner_off()
    {
        string sheet = Unwrapped(program.StartOn(Changed("\"bottom\": \"230 mm\", \"top\": \"610 mm\" }\n  ]", "\"bottom\": \"230 mm\", \"top\": \"610 mm\" },\n    { \"from\": \"3385 mm\", \"to\": \"3400 mm\", \"bottom\": \"230 mm\", \"top\": \"610 mm\" }\n  ]")).Output);
        Assert.Contains("7C 699 (27-1/2) whole square, corner 3.1 deg", sheet, StringComparison.Ordinal); // 3385 - 3 - 2683; atan(4.854/89)
        Assert.Equal(3, Regex.Count(sheet, @"[456]C 699 \(27-1/2\) whole square(?!,)"));
        Assert.Equal(1, Regex.Count(sheet, "square, corner"));
        Assert.Contains("corner the edge crosses the jamb within the course", sheet, StringComparison.Ordinal);
        Assert.Equal(9, Regex.Count(sheet, "deg, long below")); // courses 4 to 7 end at the jamb
        Assert.DoesNotContain("corner the edge", Unwrapped(program.Demo.Output), StringComparison.Ordinal);
    }

    /// <summary>Leaning 15 degrees below 1350, and 1.4 above: the faces of the boards that meet there are the wider, and the rip width is that of the face.</summary>
    [Fact]
    public void A_ridge_says_in_words_that_the_face_is_the_wider_and_adds_nothing_to_the_rip_width()
    {
        string profile = "\"profile\": [" + string.Join(", ", new[] { (860, 193), (1000, 155), (1200, 102), (1350, 62), (1500, 58), (1660, 54), (1840, 50) }.Select(static at => $"{{ \"height\": \"{at.Item1} mm\", \"out\": \"{at.Item2} mm\" }}")) + "]";
        Run run = program.StartOn(Regex.Replace(Changed("{ \"v\": \"994 mm\"", "{ \"v\": \"1000 mm\""), "\"profile\": \\[[^]]*\\]", profile));
        Assert.Equal((0, string.Empty), (run.ExitCode, run.Error));
        Assert.Matches(@"ends a course: bevel both edges 6\.\d deg, a ridge: their faces are the wider", Unwrapped(run.Output));
        Assert.DoesNotMatch(@"bevel [a-z ]*-\d", Unwrapped(run.Output));

        // 145.07 + 206.90 + 155.24 = 507.2 up to the break. In a hollow it would be 12.7 x tan 6.8, 1.5, more.
        Match below = Regex.Match(run.Output, @"(?m)^  \d+ +\S+ \(\S+\) +507 \(\S+\) +(\d+) \(\S+\) +([\d.]+) \(\S+\) +upper edge\n +bevel the upper edge 6\.\d deg from square, so that the face is the wider$");
        Assert.True(below.Success, run.Output);
        Assert.InRange(Value(below, 2) - Value(below, 1), -0.5, 0.5);
    }

    /// <summary>
    /// The hollow of 9.5 degrees at 642 takes 25.4 tan 4.75 = 2.1 off each side: 641 and 643 both come to lie at it. 640.9 is 1.2 before it and 643 0.9 beyond, so 643 is left out; two marks typed at one height are still refused.
    /// </summary>
    [Fact]
    public void Of_two_marks_that_come_to_lie_at_a_hollow_one_stands_for_both()
    {
        (string, string) faces = ("\"faces\": \"0 mm\"", "\"faces\": \"25.4 mm\"");
        const string Mark = "{ \"v\": \"600 mm\", \"in\": \"18 mm\" }";
        Run run = program.StartOn(Changed(Mark, Mark + ", { \"v\": \"640.9 mm\", \"in\": \"20.3 mm\" }, { \"v\": \"643 mm\", \"in\": \"20.4 mm\" }", faces));
        Assert.Equal((0, string.Empty), (run.ExitCode, run.Error));
        Assert.Contains("mark at v 643 mm (25-5/16 in) of the wall left out: over the faces it lies at the break", Unwrapped(run.Output), StringComparison.Ordinal);
        Assert.Single(Regex.Matches(run.Output, "left out"));

        // The edge is the same as without it, and another without the one that stands.
        string other = program.StartOn(Changed(Mark, Mark + ", { \"v\": \"640.9 mm\", \"in\": \"20.3 mm\" }", faces)).Output;
        Assert.Equal(Regex.Replace(Section(run.Output), "(?s)  mark .*?\n  no ", "  no "), Section(other));
        Assert.NotEqual(Section(other), Section(program.StartOn(Changed(Mark, Mark + ", { \"v\": \"643 mm\", \"in\": \"20.4 mm\" }", faces)).Output));

        Refused(program.StartOn(Changed(Mark, Mark + ", { \"v\": \"600.5 mm\", \"in\": \"18 mm\" }", faces)), ["$.edge.marks[4].v: 600.5 mm; allowed is a height 1 mm or more from every other"]);
        Refused(program.StartOn(Changed("\"bottom\": \"230 mm\", \"top\": \"610 mm\"", "\"bottom\": \"641 mm\", \"top\": \"643 mm\"", faces)), ["$.windows[0]: v 641 to 643 mm, which the hollow beside it leaves nothing of"]);

        static string Section(string sheet) => sheet[sheet.IndexOf("\nEND CUTS", StringComparison.Ordinal)..sheet.IndexOf("\nJOINTS", StringComparison.Ordinal)];
    }

    /// <summary>
    /// From 1500 up 198 in over 285: a lean of 34.79, 29.34 more than below, and a band of 347. The joint that leaves most at foot and head lies 85 up, a face of 84; with the tongue of 9 and 25.4 tan 14.67 = 6.65 its back would be 99.65 of
    /// a board of 97.
    /// </summary>
    [Fact]
    public void A_saw_is_not_set_wider_than_the_board()
    {
        string profile = "\"profile\": [" + string.Join(", ", new[] { (860, 193.0), (910, 191), (960, 190), (1010, 188), (1060, 186), (1120, 180), (1180, 174), (1240, 169), (1300, 163), (1360, 157), (1430, 150), (1500, 144), (1557, 104.4), (1614, 64.8), (1671, 25.2), (1728, -14.4), (1785, -54) }
            .Select(static at => string.Create(CultureInfo.InvariantCulture, $"{{ \"height\": \"{at.Item1} mm\", \"out\": \"{at.Item2} mm\" }}"))) + "]";
        Run run = program.StartOn(Regex.Replace(Changed("\"thickness\": \"12.7 mm\"", "\"thickness\": \"25.4 mm\""), "\"profile\": \\[[^]]*\\]", profile));
        Assert.Equal((0, string.Empty), (run.ExitCode, run.Error));
        Assert.Contains("9 642 (25-1/4) 726 (28-9/16) 84 (3-5/16) whole lower edge bevel the lower edge 14.7 deg from square, so that the back is the wider the board is no wider: so bevelled, its face comes out 2.6 mm (7/64 in) narrower than that", Unwrapped(run.Output), StringComparison.Ordinal);
        Assert.Single(Regex.Matches(Unwrapped(run.Output), "the board is no wider"));
        Assert.Matches(@"(?m)^ .* 9, 1 of 2 +\d+ \([^)]*\) +whole ", run.Output);
    }

    [Fact]
    public void Boards_that_swell_more_than_their_gap_are_a_caution_with_the_gap_to_leave()
    {
        string sheet = Unwrapped(program.StartOn(Changed("\"gap\": \"1 mm\"", "\"gap\": \"0.5 mm\"")).Output);
        Assert.Contains("1 mm asked, 0.5 mm left: -0.3", sheet, StringComparison.Ordinal); // 0.5 - 88.5... the face is 97 - 9 = 88: 0.5 - 0.8125
        Assert.Contains("movement At 13.546% the gap of 0.5 mm is closed", sheet, StringComparison.Ordinal);
    }

    private static string Changed(string old, string changed, params (string Old, string Changed)[] more)
    {
        string text = s_demo;
        foreach ((string from, string to) in more.Prepend((old, changed)))
        {
            int at = text.IndexOf(from, StringComparison.Ordinal);
            Assert.True(at >= 0, from);
            text = text[..at] + to + text[(at + from.Length)..];
        }

        return text;
    }

    /// <summary>The demo wall, typed a second time, and what the public calls answer.</summary>
    private static class Wall
    {
        internal static readonly BoardCover Board = BoardCover.TongueAndGroove(Mm(97), Mm(9), Mm(1));
        internal static readonly MoistureBalance Fitted = EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(50));
        internal static readonly MoistureBalance Driest = EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(25), RelativeHumidity.FromPercent(31));
        internal static readonly MoistureBalance Wettest = EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(15), RelativeHumidity.FromPercent(71));
        internal static readonly SeasonMovement Movement = BoardMovement.OverSeason(new BoardMovementJob(Board, DimensionalChange.OfWood(WoodSpecies.Named("ponderosa pine")))
        {
            FittingMoisture = Fitted.MoistureContent,
            DriestMoisture = Driest.MoistureContent,
            WettestMoisture = Wettest.MoistureContent,
            EndGap = Mm(3),
        });
        internal static readonly WallProfile Profile = ProfileBreaks.Find(Points(
            (860, 193), (910, 191), (960, 190), (1010, 188), (1060, 186), (1120, 180), (1180, 174), (1240, 169), (1300, 163), (1360, 157), (1430, 150), (1500, 144), (1560, 128), (1630, 109), (1700, 90), (1770, 72), (1840, 53)));
        internal static readonly CoursePlan Courses = CourseLayout.LayOut(new CourseFace(Mm(3400), Mm(994), Board)
        {
            Openings = [new(Mm(500), Mm(1400), Mm(230), Mm(610)), new(Mm(1980), Mm(2680), Mm(230), Mm(610))],
            Breaks = [new(Mm(200), Profile.Breaks[0].LeanChange), new(Mm(642), Profile.Breaks[1].LeanChange)],
        });
        internal static readonly MeasuredEdge Edge = EdgeCurve.Through(Points((0, 3400), (200, 3398), (400, 3392), (600, 3382), (800, 3369), (994, 3352)));
        internal static readonly EndCutSchedule Ends = EndCuts.Schedule(new EndCutJob(Edge, Courses.Lines, Mm(0)) { HiddenWidth = Mm(8) }); // of the tongue of 9 the gap takes 1
        internal static readonly JointLayout Joints = BoardJoints.Choose(new JointJob(
            [.. Enumerable.Range(1, 13).SelectMany(Runs)],
            [Mm(20), Mm(480), Mm(950), Mm(1420), Mm(1690), Mm(1960), Mm(2330), Mm(2700), Mm(3060), Mm(3380)],
            [new StockBoard(Mm(2438), 9.80m)])
        { Offcuts = [new BoardOffcut(Mm(1210))], EndGap = Mm(3) });

        /// <summary>Courses 4 to 7 lie between sill and head of the windows and are interrupted by them; the job leaves 3 mm at every end.</summary>
        private static JointRun[] Runs(int course)
        {
            Length end = Ends.Courses[course - 1].LongPoint;
            return course is >= 4 and <= 7
                ? [new(course, Mm(0), Mm(500)) { Name = course + "A" }, new(course, Mm(1400), Mm(1980)) { Name = course + "B" }, new(course, Mm(2680), end) { Name = course + "C" }]
                : [new(course, Mm(0), end) { Name = course.ToString(CultureInfo.InvariantCulture) }];
        }

        private static MeasuredPoint[] Points(params (double Along, double Offset)[] points) => [.. points.Select(static point => new MeasuredPoint(Mm(point.Along), Mm(point.Offset)))];
    }

    /// <summary>Every piece of the sheet that holds a figure, put together from what the public calls answer.</summary>
    private static List<string> Expected()
    {
        SeasonMovement moves = Wall.Movement;
        CuttingPlan plan = Wall.Joints.Cutting;
        List<string> rows =
        [
            "survey: revision 1",
            $"runs to the rear, {Tape(3400)} long; v = 0 at the foot of the boards, and runs up along the surface to {Tape(994)}",
            $"ponderosa pine, {Caliper(97)} with a tongue of {Caliper(9)}, tongue up; a joint every {Caliper(89)}, of which {Caliper(1)} is its gap",
            "at the rear cut to the edge; 3 mm are left at each end",
            $"u {Tape(500)} to {Tape(1400)}, v {Tape(230)} to {Tape(610)}",
            $"u {Tape(1980)} to {Tape(2680)}, v {Tape(230)} to {Tape(610)}",
            $"v {Tape(200)}: the lean changes by {Decimal(Wall.Profile.Breaks[0].LeanChange.Degrees, 1)} deg, boards run over it and stand off up to {Caliper(CourseBreaks.Judge(Mm(88), Wall.Profile.Breaks[0].LeanChange).StandOff.Millimeters)}",
            $"v {Tape(642)}: the lean changes by {Decimal(Wall.Profile.Breaks[1].LeanChange.Degrees, 1)} deg, ends a course: bevel both edges {Decimal(CourseBreaks.Judge(Mm(88), Wall.Profile.Breaks[1].LeanChange).Bevel.Degrees, 1)} deg",
            $"at v {Tape(660)}, behind course 8, 9, 10: NO fastener from v {Tape(626)} to {Tape(694)}", // 589-642, 642-684 and 685-773 lie over 626 to 694
            $"fitted in air of 20 C and 50% humidity the wood comes to {Decimal(Wall.Fitted.MoistureContent, 1)}% moisture",
            $"driest in air of 25 C and 31% humidity the wood comes to {Decimal(Wall.Driest.MoistureContent, 1)}% moisture",
            $"wettest in air of 15 C and 71% humidity the wood comes to {Decimal(Wall.Wettest.MoistureContent, 1)}% moisture",
            $"swells by {Fine(moves.Swelling)} to the wet end, shrinks by {Fine(moves.Shrinkage)} to the dry end",
            $"{Fine(moves.GapToLeave)} asked, 1 mm left: {Fine(moves.GapWhenWet)} when wet, {Fine(moves.GapWhenDry)} when dry, with {Fine(moves.StillCoveredWhenDry!.Value)} of the tongue of 9 mm still covered",
            $"no drier than {Decimal(moves.DriestFitting!.Value, 1)}%",
            .. Wall.Courses.Courses.Select(static (course, i) => $"{i + 1} {Pair(course.LowerLine)} {Pair(course.UpperLine)} {Pair(course.RipWidth)} {RipTo(course)}"),
            .. Wall.Courses.Courses.SelectMany(static course => course.Pieces.Where(piece => piece.LeastWidth.Millimeters < course.RipWidth.Millimeters)
                .Select(piece => $"notch u {Pair(piece.FromU)} to {Pair(piece.ToU)}: {Pair(piece.LeastWidth)} stays {(piece.FromV.Millimeters > course.LowerLine.Millimeters ? $"above v {Pair(piece.FromV)}" : $"below v {Pair(piece.ToVAtRear)}")}")),
            $"across the wider side of a board of {Caliper(12.7)}",
            $"bevel the upper edge {Decimal(Wall.Courses.Courses[7].BevelAbove.Degrees, 1)} deg",
            $"bevel the lower edge {Decimal(Wall.Courses.Courses[8].BevelBelow.Degrees, 1)} deg",
            .. Wall.Courses.Bands.Select(static band => $"v {Tape(band.FromV.Millimeters)} to {Tape(band.ToV.Millimeters)}: first joint {Tape(band.Offset.Millimeters)} above its foot; no piece under {Tape(band.Guaranteed.Millimeters)} though the set-out be 3 mm off"),
            "boards stop 3 mm short",
            .. Wall.Ends.Courses.Select(static cut => $"{cut.Course} {Decimal(Math.Abs(cut.SawAngle.Degrees), 1)} {(cut.Change is { } change ? Decimal(Math.Abs(change.Degrees), 1) : "-")} below {Pair(cut.LengthAtLowerLine)} {Pair(cut.LengthAtUpperLine)} {Fine(cut.GapLeft)}"),
            $"between the marks it is known to {Fine(Wall.Edge.GreatestDifference!.Value)}, least at v {Tape(Wall.Edge.GreatestDifferenceAt!.Value.Millimeters)}",
            .. Wall.Joints.Runs.Select(static run => $"{run.Name} u {Pair(run.Start)} to {Pair(run.End)}, {(run.Joints.Count == 0 ? "one piece" : $"joint at {Pair(run.Joints[0].Position)}")}"),
            .. plan.Purchases.Select(static buy => $"{buy.BoardsBought} of {Tape(buy.Length.Millimeters)}: {buy.Cost.ToString("0.00", CultureInfo.InvariantCulture)}"),
            $"{plan.LeastCost!.Value.ToString("0.00", CultureInfo.InvariantCulture)}: no other joints and no other boards cost less (proven)",
            $"{Tape(plan.KeptOffcuts.Millimeters)} of offcuts worth keeping; {Tape(plan.Waste.Millimeters)} of trim, kerfs and short ends",
            .. plan.Boards.SelectMany(static (board, i) => board.Pieces.Select((piece, place) => (place > 0 ? string.Empty : $"{i + 1} {(board.IsOffcut ? "offcut 1210" : Pair(board.Length))} ") + Piece(piece))),
            $"nothing within {Tape(30)} to either side of a wire",
            .. Findings().Select(static finding => Bench(finding.Message)),
            .. new[] { moves.DefaultsUsed, Wall.Profile.DefaultsUsed, Wall.Courses.DefaultsUsed, Wall.Ends.DefaultsUsed, Wall.Joints.DefaultsUsed }.SelectMany(static defaults => defaults).GroupBy(static used => used.Source.ToString())
                .Select(static same => $"- {string.Join(", ", same.Select(static used => $"{used.Figure.Name.Replace("-", " ", StringComparison.Ordinal)} {Decimal(used.Figure.Value, 4)} {used.Figure.Unit}".Trim()).Distinct())}: {same.Key}"),
        ];
        Assert.Equal(21, Wall.Joints.Runs.Count);
        Assert.All(Wall.Joints.Runs, static run => Assert.InRange(run.Joints.Count, 0, 1));
        return rows;
    }

    private static Finding[] Findings() => [.. Wall.Movement.Findings, .. Wall.Profile.Findings, .. Wall.Courses.Findings, .. Wall.Ends.Findings, .. Wall.Joints.Findings];

    /// <summary>A piece as the saw gets it, found by its name: which run, which of its pieces, ripped how wide, cut how.</summary>
    private static string Piece(CutPiece piece)
    {
        Match name = Regex.Match(piece.Name!, @"^(\d+)([ABC]?)(?:, piece (\d))?$");
        int course = (int)Value(name, 1);
        JointedRun run = Wall.Joints.Runs.Single(each => each.Name == name.Groups[1].Value + name.Groups[2].Value);
        bool isRearmost = name.Groups[2].Value is "" or "C" && (!name.Groups[3].Success || name.Groups[3].Value == "2");
        string of = name.Groups[3].Success ? $"{run.Name}, {name.Groups[3].Value} of 2" : run.Name;
        BoardCourse row = Wall.Courses.Courses[course - 1];
        return $"{of} {Pair(piece.Length)} {RipTo(row)} {(isRearmost ? $"{Decimal(-Wall.Ends.Courses[course - 1].SawAngle.Degrees, 1)} deg, long below" : "square")}";
    }

    /// <summary>Tongue of 9 where the upper edge is left; at the hollow 12.7 times the tangent of the bevel.</summary>
    private static string RipTo(BoardCourse row) => row.IsWhole ? "whole"
        : Caliper(row.RipWidth.Millimeters + (row.IsCutAbove ? 0 : 9) + (12.7 * Math.Tan((row.BevelBelow.Degrees + row.BevelAbove.Degrees) * Math.PI / 180))).Replace(" mm", string.Empty, StringComparison.Ordinal).Replace(" in", string.Empty, StringComparison.Ordinal);

    private static string Tape(double millimetres) => $"{FormatMillimetres(Mm(millimetres), 0)} ({FormatInches(Mm(millimetres), 16)})";

    private static string Pair(Length length) => $"{FormatMillimetres(length, 0)[..^3]} ({FormatInches(length, 16)[..^3]})";

    private static string Caliper(double millimetres) => $"{FormatMillimetres(Mm(millimetres), 1)} ({FormatInches(Mm(millimetres), 64)})";

    private static string Fine(Length length) => Decimal(length.Millimeters, 2) + " mm";

    private static string Decimal(double value, int decimals) => Math.Round((decimal)value, decimals, MidpointRounding.AwayFromZero).ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>A message as the bench reads it: tenths from a millimetre on, whole millimetres from a hundred.</summary>
    private static string Bench(string message) => Regex.Replace(message, @"[0-9]+\.[0-9]+ mm", static match =>
        decimal.Parse(match.Value[..^3], CultureInfo.InvariantCulture) switch { < 1 => match.Value, < 100 and var tenths => Decimal((double)tenths, 1) + " mm", var whole => Decimal((double)whole, 0) + " mm" });

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
public sealed class BoardedWallProgram() : ExampleProgram("boarded-wall")
{
    private Run? _demo, _explained;

    /// <summary>The demo wall's sheet, from one start.</summary>
    internal Run Demo => _demo ??= Start();

    /// <summary>The same with its workings.</summary>
    internal Run Explained => _explained ??= Start("--workings");
}
#endif
