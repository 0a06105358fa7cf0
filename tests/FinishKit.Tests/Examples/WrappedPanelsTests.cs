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

/// <summary>The program docs/examples/wrapped-panels.cs as a person runs it: built once, then started with files.</summary>
public sealed class WrappedPanelsTests(WrappedPanelsProgram program) : IClassFixture<WrappedPanelsProgram>
{
    private static readonly string s_demo = File.ReadAllText(Path.Combine(Repository.Root, "docs", "examples", "wrapped-panels.json"));

    public static TheoryData<string, string, string, string> BrokenFiles() => new()
    {
        { "decimal comma", "\"gap\": \"5.2 mm\"", "\"gap\": \"5,2 mm\"", "$.band.arcs-across[1].points[1].gap: “5,2 mm”, with a comma" },
        { "no unit", "\"gap\": \"5.2 mm\"", "\"gap\": \"5.2\"", "$.band.arcs-across[1].points[1].gap: “5.2”, a number without a unit" },
        { "a number for a length", "\"longest\": \"1450 mm\"", "\"longest\": 1450", "$.panels.longest: \"1450\"; allowed is a length with its unit" },
        { "a short band", "\"length\": \"3400 mm\"", "\"length\": \"340 mm\"", "$.band.length: 340 mm; allowed is 500 to 20000 mm" },
        { "lead for steel", "\"strength-mpa\": 270", "\"strength-mpa\": 27", "$.metal.strength-mpa: 27 MPa; allowed is 100 to 1000 MPa" },
        { "a ply of another label", "\"measured\": \"6.4 mm\"", "\"measured\": \"9 mm\"", "$.panels.measured: 9 mm; allowed is 6 to 6.9 mm" },
        { "an unknown ply", "6.5 mm birch plywood sanded", "6.5 mm poplar", "$.panels.sheet: \"6.5 mm poplar\"; allowed is 3/8 in plywood PS 1 unsanded" },
        { "a nap that no cloth has", "\"nap\": \"toward bottom\"", "\"nap\": \"down\"", "$.wrap.nap: \"down\"; allowed is unknown, toward top, toward bottom, toward front, toward rear, none" },
        { "foam from nowhere", "\"foam-comes\": \"separate\"", "\"foam-comes\": \"loose\"", "$.wrap.foam-comes: \"loose\"; allowed is separate, on the cloth" },
        { "a row off the band", "\"v\": \"332 mm\"", "\"v\": \"350 mm\"", "$.band.rows[2].v: 350 mm; allowed is 216 to 347 mm" }, // 196 + 20; 352 - 5
        { "rows on each other", "\"v\": \"196 mm\"", "\"v\": \"70 mm\"", "$.band.rows[1].v: 70 mm; allowed is 80 to 347 mm" },
        { "two points for an arc", "{ \"at\": \"0 mm\", \"gap\": \"0 mm\" }, { \"at\": \"850 mm\", \"gap\": \"19 mm\" }, { \"at\": \"1700 mm\", \"gap\": \"25 mm\" },", string.Empty, "$.band.arc-along: 2 entries; allowed is 3 to 50 entries" },
        { "a side that no van has", "\"side\": \"right\"", "\"side\": \"roof\"", "$.walls[1].side: \"roof\"; allowed is left, right" },
        { "one side twice", "\"side\": \"right\"", "\"side\": \"left\"", "$.walls: left twice; allowed is each side once" },
        { "an opening that ends before it begins", "\"to\": \"2620 mm\"", "\"to\": \"2400 mm\"", "$.walls[0].openings[0].to: 2400 mm; allowed is 2441 to 20000 mm" },
        { "an opening over the head", "\"top\": \"250 mm\"", "\"top\": \"450 mm\"", "$.walls[0].openings[0].top: 450 mm; allowed is 0 to 352 mm" },
        { "rounder than round", "\"corner-radius\": \"12 mm\"", "\"corner-radius\": \"80 mm\"", "$.walls[0].openings[0].corner-radius: 80 mm; allowed is 0 to 70 mm" }, // half of 250 - 110
        { "a rib behind the band", "\"u\": \"3370 mm\"", "\"u\": \"3400 mm\"", "$.band.ribs[8].u: 3400 mm; allowed is 0 to 3379 mm" }, // 3400 - 21
        { "sold by nothing", "\"sold-by\": \"100 mm\"", "\"sold-by\": \"0 mm\"", "$.rolls.cloth.sold-by: 0 mm; allowed is 1 to 10000 mm" },
        { "foam too narrow for any piece", "\"foam\": { \"width\": \"1500 mm\"", "\"foam\": { \"width\": \"300 mm\"", "$.rolls.foam.width: 300 mm, 300 mm without its selvedges; allowed is 347 mm or more" },
        { "a sheet for nothing and less", "\"price\": 38", "\"price\": -38", "$.panels.sheets[0].price: -38; allowed is 0 to 100000" },
        { "a price finer than money", "\"price\": 38", "\"price\": 38.00001", "$.panels.sheets[0].price: 38.00001; allowed is 0 to 1,000,000 with at most four decimals" },
        { "no sheets", "{ \"length\": \"1525 mm\", \"width\": \"1525 mm\", \"price\": 38 }, { \"length\": \"2500 mm\", \"width\": \"1250 mm\", \"price\": 52 }", string.Empty, "$.panels.sheets: 0 entries; allowed is 1 to 10 entries" },
        { "half a coat", "\"coats\": 1", "\"coats\": 1.5", "$.adhesive.coats: 1.5; allowed is a whole number, 1 to 5" },
        { "a staple without legs", "\"leg\": \"5 mm\"", "\"leg\": \"1 mm\"", "$.staples.leg: 1 mm; allowed is 2 to 30 mm" },
        { "unknown member", "\"leg\": \"5 mm\"", "\"leg\": \"5 mm\", \"colour\": \"black\"", "$.staples[\"colour\"]: unknown member; allowed are leg" },
        { "missing member", "\"turn-under\": \"35 mm\", ", string.Empty, "$.wrap.turn-under: missing; allowed is a length with its unit" },
        { "member twice", "\"coats\": 1", "\"coats\": 1, \"coats\": 2", "$.adhesive.coats: given more than once" },
        { "a name that would clear the screen", "\"Demo van, long, high roof\"", "\"S\\u001b[2J\"", "$.van: \"S?[2J\"; allowed is 1 to 60 plain characters" },
        { "no colon", "\"walls\": [", "\"walls\" [", "not JSON" },
    };

    [Theory]
    [MemberData(nameof(BrokenFiles))]
    public void A_broken_file_is_refused_whole_with_what_and_where(string name, string old, string changed, string says)
    {
        Run run = program.StartOn(Changed((old, changed)));
        Refused(run, says);
        Assert.True(run.Error.TrimEnd('\n').Split('\n').Length == 2, name + run.Error); // one mistake is one line, not five
    }

    [Fact]
    public void All_mistakes_of_a_file_come_together() => Refused(
        program.StartOn(Changed(("\"gap\": \"5.2 mm\"", "\"gap\": \"5.2\""), ("\"strength-mpa\": 270", "\"strength-mpa\": 27"), ("\"side\": \"right\"", "\"side\": \"roof\""), ("\"coats\": 1", "\"coats\": 1.5"))),
        "$.band.arcs-across[1].points[1].gap: ",
        "$.metal.strength-mpa: ",
        "$.walls[1].side: ",
        "$.adhesive.coats: ");

    [Fact]
    public void A_file_that_is_not_there_is_empty_or_a_folder_is_named()
    {
        string path = Path.Combine(program.Folder, "not-there.json");
        Refused(program.Start(path), path, "no such file");
        Refused(program.Start(program.Folder), program.Folder, "is a folder");
        Refused(program.StartOn(string.Empty), "is empty");
        Refused(program.StartOn("[]"), "$: \"[]\"; allowed is an object");
        Run run = program.Start("--wrokings");
        Assert.Equal((1, string.Empty), (run.ExitCode, run.Output));
        Assert.Contains("usage: dotnet run wrapped-panels.cs [file.json] [--workings]", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_demo_van_comes_out_and_every_printed_figure_is_the_librarys()
    {
        Assert.Equal((0, string.Empty), (program.Demo.ExitCode, program.Demo.Error));
        string text = Unwrapped(program.Demo.Output);
        foreach (string fragment in Expected().Select(Unwrapped).Distinct().OrderByDescending(static fragment => fragment.Length))
        {
            Assert.Contains(fragment, text, StringComparison.Ordinal);
            text = text.Replace(fragment, " ", StringComparison.Ordinal);
        }

        // A figure left over is one that no call answers for; the datum's are those of u = 0 and v = 0.
        Assert.DoesNotMatch("[0-9]", text.Replace("datum u = 0 at", string.Empty, StringComparison.Ordinal).Replace("v = 0 at the", string.Empty, StringComparison.Ordinal));
    }

    [Fact]
    public void Figures_worked_by_hand_stand_on_the_sheet()
    {
        string sheet = Unwrapped(program.Demo.Output);

        // 352²/(8 x 7) + 7/2 = 2216.1; the sheet's middle is half of 6.4 further in, and three rows bend it half as tight again: (2216 - 3.2)/1.5 = 1475
        Says("at u 1690 mm (66-9/16 in): R 2216 mm");
        Says("face grain along the van: bent to R 1475 mm at its tightest");

        // Birch 6.5 mm (6.4): with the grain E 12737, f 50.9: 2 x 12737 x 6.4/(2 x 50.9) = 1601.5; across E 4763, f 29.0: 2 x 4763 x 6.4/(2 x 29) = 1051.1; both are rounded up
        Says("NO face grain up the wall, around the curve: bent to R 1475 mm at its tightest, R 1602 mm");
        Says("YES face grain along the van: bent to R 1475 mm at its tightest, R 1052 mm");

        // 3400²/(8 x 25) = 57,800 from the middle alone; b = 347: b²/(8 R) = 6.79 and 0.26; their product over 6.4²/4 = 10.24 is 0.173, the stretch against a tenth of the strength
        // is the greater: E b²/(12 R1 R2) = 12737 x 347²/(12 x 2216 x 57,814) = 0.9976 of 50.9/10: 19.6%
        Says("both ways at once: 20% of what a flat sheet takes");

        // The joint at 950 leaves 1.5: L1 from 1.5 to 949.25; ply less 1 of cloth an edge; cloth + 2 x (3 + 6.4 + 35) = 88.8; 352 - 3 - 2 = 347
        Says("L1,R1 finished 947.8 (37-5/16) 349 (13-47/64)");
        Says("ply 945.8 (37-15/64) 347 (13-21/32)");
        Says("cloth 1034.6 (40-47/64) 435.8 (17-5/32)"); // 945.75 + 88.8; 347 + 88.8

        Says("left joints on ribs at u 950 mm (37-3/8 in), 2330 mm (91-3/4 in): no fewer panels fit sheet, hands and roll; the heaviest is 2.4 kg"); // 3379 in two would be 1690, the roll takes 1393; 5 x 1.3785 x 0.352

        // The opening 180 x 140 at u 2440, v 110: the ply's is 1 larger at each edge; L3's ply begins at 2330.75 + 1: 2440 - 1 - 2331.75 = 107.25; 110 - 1 - 2.5 = 106.5; cloth 182 - 88.8 = 93.2
        Says("hole in the ply and foam: 182 mm by 142 mm, corners R 13 mm; 107.3 mm from the front, 106.5 mm up");
        Says("hole in the cloth: 93.2 mm by 53.2 mm");

        // 0.85 x 1 x 4.2 x 270/3 = 321.3 N; 3 pitches of 1.41 and a point of 4.2 are 8.43 beyond 4 + 6.9 + 1 at most: 20.33. A 22 may be 1.3 short, 20.7, and will do; a 19
        // will not. Or it is 1.3 long: its tip stays 1 + 6 + 1 + 34 - 3 - 23.3 = 15.7 off, rounded down
        Says("4.2 mm tapping screw, 22 mm long, a washer under its head; its tip stays 15 mm or more from the outer skin");
        Assert.Equal(15.7, Van.Screw.Chosen!.WorstClearance.Millimeters, 1e-9);
        Says("321 N a screw for good in the metal");

        // One sheet: 2500 - 10 holds 1376.5 + 2.4 + 1044.75 = 2423.65; three strips of 347 and kerfs are 1045.8 of 1240
        Says("buy 1 of 2500 mm (98-7/16 in) along the grain by 1250 mm (49-3/16 in): 52.00");
        Says("52.00: no other layout costs less (proven)");
        Says("6 crosscut 2423.7 (95-27/64)");

        // Face up the front of a left panel is on the right, away from the sheet's corner, that of a right panel toward it: mirror images of each other
        Says("good face up, the sheet's corner at the lower left: the front end of a panel L is far from the corner, of a panel R near it, and its foot is toward the near side");
        Assert.Matches(@"L3 1044\.8 \S+ 347 \S+ \S+ \S+ \S+ \S+ far", sheet);
        Assert.Matches(@"R3 1044\.8 \S+ 347 \S+ \S+ \S+ \S+ \S+ near", sheet);
        Assert.All(Van.Nesting.Sheets.SelectMany(static each => each.Pieces).Where(static piece => piece.Name is "L3" or "R3"), piece => Says(Slant(piece)));

        // Six pieces, each wider than half of the roll, one behind another: 6 x 435.8 = 2614.8
        Says("2700 mm (106-5/16 in) of cloth, 1500 mm (59-1/16 in) wide; the pieces take 2615 mm (102-15/16 in), and no layout takes less");

        // Staples: 5 less 1 of cloth under the crown; 6.0 - 4; longest 6.0 - 1.5 + 1
        Says("4 mm deep, 2 mm of the thinnest ply before the point; legs up to 5.5 mm will do");

        // 2.7 x 1.5 x 30 + 2 x 16 = 153.50; 2.7 x 1.5 x 18 + 2.0 x 1.5 x 6 + 3 x 16 = 138.90; 14.60 for 6 x 20 minutes
        Says("backed materials 153.50, 4.5 hours");
        Says("separate materials 138.90, 6.5 hours");
        Says("both cost the same where an hour is worth 7.30");

        void Says(string words) => Assert.Contains(words, sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void The_sheet_starts_with_datum_and_revision_fits_the_page_and_keeps_its_order()
    {
        string output = program.Demo.Output;
        string[] lines = output.Split('\n');
        Assert.StartsWith("PANEL SHEET", lines[0], StringComparison.Ordinal);
        Assert.EndsWith("survey: revision 1", lines[0], StringComparison.Ordinal);
        Assert.Matches("^LEFT WALL, panels L, seen from inside .* rear .*>  FRONT$", lines[1]);
        Assert.Matches("^RIGHT WALL, panels R, seen from inside .*FRONT  <.* rear$", lines[2]);
        int[] order = [.. new[] { "\nPROBLEMS: none", "\nCAUTIONS", "\nBEFORE ANYTHING", "\nARCS AND BEND", "\nPANELS: ", "\nFIXINGS", "\nPLY: ", "\nCLOTH AND FOAM", "\nFOAM-BACKED", "\nNOTES", "\nDEFAULTS" }.Select(head => output.IndexOf(head, StringComparison.Ordinal))];
        Assert.Equal(order.Order(), order);
        Assert.True(order[0] > 0);
        Assert.All(lines, static line => Assert.True(line.Length <= 98 && line == line.TrimEnd(), line));
    }

    [Fact]
    public void Cautions_name_fire_vapour_the_wire_what_is_behind_and_the_spring_of_the_panel()
    {
        string output = program.Demo.Output;
        string cautions = Unwrapped(output[output.IndexOf("\nCAUTIONS", StringComparison.Ordinal)..output.IndexOf("\nARCS", StringComparison.Ordinal)]);
        string[] words = ["Cloth, foam and adhesive burn", "Vapour of solvent adhesive burns", "NO fixing from v -16 mm (-5/8 in) to 52 mm", "airbags", "springs flat", "strips easily"]; // 18 -/+ (4 + 30)
        Assert.All(words, word => Assert.Contains(word, cautions, StringComparison.Ordinal));
    }

    [Fact]
    public void A_row_over_the_wire_is_a_problem_and_it_stands_on_top()
    {
        string sheet = Unwrapped(program.StartOn(Changed(("\"v\": \"60 mm\"", "\"v\": \"20 mm\""))).Output);
        Assert.Matches("PROBLEMS: do not start before these are settled -+ screws No stocked screw passes the metal by .* stays 10 mm clear of a wire .* CAUTIONS", sheet);
        Assert.Contains("screw NONE of these lengths serves where the wire is behind", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fixing_in_an_opening_is_named()
    {
        // L3: rows of 1044.75 - 27 = 1017.75, 25 from the ends, five: (1017.75 - 50)/4 = 241.9 apart, so one at 266.9, and the opening is from 107.25 to 289.25
        Assert.Contains("L3 row v 196 mm (7-11/16 in) runs through the opening: move the fixing at 267 mm (10-1/2 in)", Unwrapped(program.Demo.Output), StringComparison.Ordinal);
        string shut = Unwrapped(program.StartOn(Regex.Replace(s_demo, "\"openings\": \\[ \\{[^]]*\\]", "\"openings\": []")).Output);
        Assert.DoesNotContain("through the opening", shut, StringComparison.Ordinal);
        Assert.Contains("L3,R3 finished", shut, StringComparison.Ordinal); // nothing tells them apart any more
    }

    [Fact]
    public void Where_no_split_will_do_the_sheet_says_so_and_stops_before_cut_sizes()
    {
        Run run = program.StartOn(Changed(("\"longest\": \"1450 mm\"", "\"longest\": \"250 mm\"")));
        Assert.Equal((0, string.Empty), (run.ExitCode, run.Error));
        Assert.Matches("PROBLEMS: do not start .* panels No joints on the metal given split the wall", Unwrapped(run.Output));
        Assert.Contains("\nARCS AND BEND", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("\nPANELS", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tighter_hollow_bends_neither_way_and_is_a_problem()
    {
        // 14 and 10.5 under 352: R 1113 by the middle alone, 1114 by all five; (1114 - 3.2)/1.5 = 741
        string sheet = Unwrapped(program.StartOn(Changed(("\"gap\": \"5.2 mm\"", "\"gap\": \"10.5 mm\""), ("\"gap\": \"7 mm\"", "\"gap\": \"14 mm\""), ("\"gap\": \"5.3 mm\"", "\"gap\": \"10.5 mm\""))).Output);
        Assert.Matches("PROBLEMS: do not start .* bend 6.5 mm birch plywood sanded, face grain along the axis, is bent to 741 mm", sheet);
        Assert.DoesNotMatch("YES face grain", sheet);
    }

    [Fact]
    public void A_flat_band_stays_straight_and_a_bulging_one_is_said_to_bulge()
    {
        int along = s_demo.IndexOf("\"arc-along\"", StringComparison.Ordinal);
        Run flat = program.StartOn(Regex.Replace(s_demo[..along], "\"gap\": \"[^\"]*\"", "\"gap\": \"0 mm\"") + s_demo[along..]);
        Assert.Equal((0, string.Empty), (flat.ExitCode, flat.Error));
        Assert.Contains("YES face grain along the van: stays straight, R 1052 mm or more is allowed", Unwrapped(flat.Output), StringComparison.Ordinal);
        string bulging = Unwrapped(program.StartOn(Regex.Replace(s_demo[..along], "\"gap\": \"([1-9])", "\"gap\": \"-$1") + s_demo[along..]).Output);
        Assert.Contains("R 2216 mm, bulging into the room", bulging, StringComparison.Ordinal);
        Assert.Contains("bent to R 1480 mm at its tightest", bulging, StringComparison.Ordinal); // its middle lies outside: (2216 + 3.2)/1.5
    }

    [Fact]
    public void Foam_on_the_cloth_goes_round_the_edge_and_there_are_no_pieces_of_foam()
    {
        string sheet = Unwrapped(program.StartOn(Changed(("\"foam-comes\": \"separate\"", "\"foam-comes\": \"on the cloth\""))).Output);
        Assert.Contains("ply 942.8 (37-7/64) 344 (13-35/64)", sheet, StringComparison.Ordinal); // 947.75 - 2 x (1 + 1.5); 349 - 5
        Assert.Contains("of foam-backed cloth, 1500 mm", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("foam 942", sheet, StringComparison.Ordinal);
        Assert.Contains("4 mm deep, 2 mm of the thinnest ply before the point; no leg will do: glue only", sheet, StringComparison.Ordinal); // 1 of cloth under the crown, and 1.5 of foam that may be squeezed to nothing: 5 - 1; 6.0 - 4; 6.0 - 1.5 - 1.5 is no bite of 4
        Assert.Contains("backed materials 153.50, 4.5 hours", sheet, StringComparison.Ordinal); // the comparison is the same whichever is made
    }

    [Fact]
    public void In_inches_the_sheet_is_the_same_to_the_byte()
    {
        // Eight decimals of an inch are a quarter of a nanometre, so that each length comes back to its own.
        string inches = Regex.Replace(s_demo, "\"([0-9.]+) mm\"", static match => $"\"{(decimal.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) / 25.4m).ToString("0.00000000", CultureInfo.InvariantCulture)} in\"");
        Run run = program.StartOn(inches, "--workings");
        Assert.Equal((0, string.Empty), (run.ExitCode, run.Error));
        Assert.Equal(program.Explained.Output, run.Output);
    }

    [Theory]
    [InlineData("de_DE.UTF-8", "0")]
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
        Assert.StartsWith(program.Demo.Output, program.Explained.Output, StringComparison.Ordinal);
        Workings[] all =
        [
            .. Van.Across.Append(Van.Along).Select(static fit => fit.Explain()), Van.Easy.Explain(), Van.Both.Explain(), .. Van.Splits.Select(static split => split.Explain()), Van.Screw.Explain(), Van.Held[1].Explain(),
            .. Van.Fixings.Select(static plan => plan.Explain()), .. Van.Separate.Select(static plan => plan.Explain()), Van.Nesting.Explain(), Van.Cloth.Explain(), Van.Foam.Explain(), Van.Glue.Explain(), Van.Staples.Explain(), Van.Comparison.Explain(),
        ];
        Assert.All(all, workings => Assert.Contains(workings.ToText(), program.Explained.Output, StringComparison.Ordinal));
    }

    private static string Changed(params (string Old, string Changed)[] changes)
    {
        string text = s_demo;
        foreach ((string from, string to) in changes)
        {
            int at = text.IndexOf(from, StringComparison.Ordinal);
            Assert.True(at >= 0, from);
            text = text[..at] + to + text[(at + from.Length)..];
        }

        return text;
    }

    /// <summary>The demo van, typed a second time, and what the public calls answer. Panels: L1, L2, L3, R1, R2, R3, from joints on the ribs at 950 and 2330.</summary>
    private static class Van
    {
        internal static readonly string[] Names = ["L1", "L2", "L3", "R1", "R2", "R3"];
        internal static readonly double[] From = [0, 949.25, 2329.25, 0, 949.25, 2329.25];
        internal static readonly FittedCircle[] Across =
        [
            Fit((0, 0), (88, 5), (176, 6.8), (264, 5.1), (352, 0)), Fit((0, 0), (88, 5.2), (176, 7), (264, 5.3), (352, 0)), Fit((0, 0), (88, 5.1), (176, 6.9), (264, 5.1), (352, 0)),
        ];
        internal static readonly FittedCircle Along = Fit((0, 0), (850, 19), (1700, 25), (2550, 18.5), (3400, 0));
        internal static readonly BendVerdict Stiff = Bend(BendGrain.AroundTheCurve), Easy = Bend(BendGrain.AlongTheAxis);
        internal static readonly BowedPanelVerdict Both = DoubleCurvature.Judge(new BowedPanel(Easy.Panel.Sheet, Across[1].Radius!.Value, Along.Radius!.Value, Mm(347), Mm(1445)));
        internal static readonly PanelSplitPlan[] Splits = [Split(new FaceOpening(Mm(2440), Mm(2620), Mm(110), Mm(250))), Split()];
        internal static readonly MetalScrewChoice Screw = MetalScrew.Choose(new MetalScrewJob(
            [Layer.Compressible("cloth and foam", Mm(4), Mm(1)), Layer.Panel(SheetGoods.Birch6)],
            Mm(1),
            Behind.Skin(TolerancedLength.PlusMinus(Mm(34), Mm(3))),
            new FastenerSeries("4.2 mm tapping screw", FastenerKind.WoodScrew, Mm(4.2), [Mm(13), Mm(16), Mm(19), Mm(22), Mm(25)]),
            Mm(1.41))
        { MetalStrength = Pressure.FromMegapascals(270), SetDepth = Mm(0) });
        internal static readonly WrapPlan[] Separate = [.. Enumerable.Range(0, 6).Select(static i => Wrap(i, false))], Backed = [.. Enumerable.Range(0, 6).Select(static i => Wrap(i, true))];
        internal static readonly HoldDownResult[] Held = [.. Enumerable.Range(0, 6).Select(static i => HoldDown.OnArc(new HoldDownCase(Easy.Panel.Sheet, Across[1].Radius, Rows, Mm(new[] { 945.75, 1376.5, 1017.75 }[i % 3])) { Girth = Mm(347), FixingCapacity = Screw.Hold }))];
        internal static readonly PanelFixingPlan[] Fixings = [.. Enumerable.Range(0, 6).Select(static i => PanelFixings.Place(PanelFixingJob.From(Held[i], Screw.Hold!.Value) with { HungMass = Mass.FromKilograms(5 * Separate[i].FaceArea.SquareMeters) }))];
        internal static readonly NestingPlan Nesting = SheetNesting.Nest(new NestingJob(
            [.. Enumerable.Range(0, 6).Select(static i => new SheetPart(Separate[i].Panels[0].PlyWidth, Mm(347), 1, mayTurn: false)
            {
                Name = Names[i],

                // Good face up: from inside, the rear is on the left of the left wall and on the right of the right.
                Outline = i switch { 2 => Points((1044.75, 0), (0, 0), (27, 347), (1044.75, 347)), 5 => Points((0, 0), (1044.75, 0), (1017.75, 347), (0, 347)), _ => null },
            })],
            [new StockSheet(Mm(1525), Mm(1525), 38), new StockSheet(Mm(2500), Mm(1250), 52)],
            SheetCutting.Sawn)
        { Trim = Mm(5), Offcuts = [] });
        internal static readonly RollPlan Cloth = Roll(static i => Separate[i].ClothPieces[0], 10, 100), Foam = Roll(static i => Separate[i].FoamPieces[0], 0, 500), FoamBacked = Roll(static i => Backed[i].ClothPieces[0], 10, 100);
        internal static readonly AdhesiveNeed Glue = Litres(Separate), GlueBacked = Litres(Backed);
        internal static readonly StaplePlan Staples = PanelStaples.SetOut(new StapleJob([.. Separate.SelectMany(static plan => plan.WrappedEdges)], SheetGoods.Birch6.Thickness, Mm(5)) { UnderCrown = Mm(1) });
        internal static readonly WrapVerdict Comparison = WrapComparison.Compare(new WrapChoice(Bought(FoamBacked), 30, Bought(Cloth), 18, Bought(Foam), 6) { Panels = 6, BackedExtras = 16 * GlueBacked.ToBuy, SeparateExtras = 16 * Glue.ToBuy });

        private static Length[] Rows => [Mm(57.5), Mm(193.5), Mm(329.5)]; // 60, 196, 332 less the gap of 1.5 and the cloth of 1

        private static BendVerdict Bend(BendGrain grain) => PanelBend.Judge(new BendCase(BentSheet.Of(SheetGoods.Birch6, grain), Across[1].Radius) { Rows = Rows, BowAlong = Along.Radius, Girth = Mm(347), Width = Mm(1445) });

        private static PanelSplitPlan Split(params FaceOpening[] openings) => PanelSplit.Split(new PanelWall(Mm(3379), Mm(352), Mm(2492), Mm(1242)) // 10 of trim less, 2 of cloth more
        {
            Ribs = [.. new (double U, double Width)[] { (30, 60), (480, 50), (950, 40), (1420, 50), (1960, 50), (2330, 40), (2700, 50), (3060, 40), (3370, 60) }.Select(static rib => new PanelJointLine(Mm(rib.U), Mm(rib.Width)))],
            Openings = openings,
            Grain = PanelGrainDirection.AlongU,
            Reveal = Mm(1.5),
            MostLength = Mm(1393.2), // 1480 of the roll less 86.8 that the cloth is wider than the panel; in reach of the hands are 1450
            SquareMetreMass = Mass.FromKilograms(5),
            MostMass = Mass.FromKilograms(6),
        });

        private static WrapPlan Wrap(int i, bool isBacked) => PanelWrap.Plan(new WrapJob(Mm(new[] { 950.75, 1381.5, 1049.75 }[i % 3]), Mm(352), new WrapBuild(Mm(6.4), Mm(1))
        {
            FoamThickness = Mm(3),
            TurnUnder = Mm(35),
            Joint = Mm(1.5),
            EdgeGap = Mm(1.5),
            IsFoamBacked = isBacked,
            Nap = NapDirection.TowardBottom,
            Stretch = ClothStretch.BothWays,
        })
        { Windows = i == 2 ? [new PanelWindow(new FaceOpening(Mm(110.75), Mm(290.75), Mm(110), Mm(250))) { CornerRadius = Mm(12) }] : [] });

        private static RollPlan Roll(Func<int, CoverPiece> of, double selvedge, double sold) => RollCutting.Cut(new RollJob(
            [.. Enumerable.Range(0, 6).Select(i => new RollPart(of(i).Along, of(i).Across, 1, of(i).IsTurnable) { Name = Names[i] })], Mm(1500))
        { Selvedge = Mm(selvedge), SoldBy = Mm(sold) });

        private static AdhesiveNeed Litres(WrapPlan[] plans) => PanelAdhesive.Needed(Area.FromSquareMillimeters(plans.Sum(static plan => plan.BondedArea.SquareMillimeters)), Area.FromSquareMeters(5));

        private static Area Bought(RollPlan roll) => Area.FromSquareMeters(roll.LengthToBuy.Meters * 1.5);

        private static FittedCircle Fit(params (double Along, double Offset)[] points) => CircleFit.Through(Points(points));

        private static MeasuredPoint[] Points(params (double Along, double Offset)[] points) => [.. points.Select(static point => new MeasuredPoint(Mm(point.Along), Mm(point.Offset)))];
    }

    /// <summary>Every piece of the sheet that holds a figure, put together from what the public calls answer.</summary>
    private static List<string> Expected()
    {
        WrapVerdict two = Van.Comparison;
        MetalScrewChoice screw = Van.Screw;
        Assert.Equal([0, 950.75, 2330.75], Van.Splits[0].Panels.Select(static panel => panel.FromU.Millimeters));
        List<string> rows =
        [
            "survey: revision 1",
            $"runs to the rear, {Tape(3400)} long; v = 0 at the band's lower edge and runs up along the surface to {Tape(352)}",
            "6.5 mm birch plywood sanded, measured 6.4 mm; foam of 3 mm glued on first, trimmed flush with the ply; cloth of 1 mm",
            $"left wall: u {Tape(2440)} to {Tape(2620)}, v {Tape(110)} to {Tape(250)}, corners R {Tape(12)}",
            $"at v {Tape(18)}, {Tape(19)} behind the metal: NO fixing from v {Tape(-16)} to {Tape(52)}",
            .. Van.Across.Zip([30, 1690, 3340], static (fit, u) => $"at u {Tape(u)}: {Circle(fit)}"),
            "along " + Circle(Van.Along),
            Bent("NO face grain up the wall, around the curve", Van.Stiff),
            Bent("YES face grain along the van", Van.Easy),
            $"both ways at once: {Decimal(100 * Van.Both.Share, 0)}% of what a flat sheet takes; up to {Down(Van.Both.LargestShorterSide)} high",
            .. Van.Splits.Zip(["left", "right"], static (split, side) => $"{side} joints on ribs at u {string.Join(", ", split.Joints.Select(static joint => Tape(joint.Place.Millimeters)))}: no fewer panels fit sheet, hands and roll; the heaviest is {Decimal(split.Panels.Max(static panel => panel.Mass!.Value.Kilograms), 1)} kg"),
            .. Enumerable.Range(0, 6).SelectMany(static i => Sizes(i)),
            .. Van.Separate[2].Panels[0].Windows.SelectMany(static hole => new[]
            {
                $"hole in the ply and foam: {Fine(hole.PlyWidth)} by {Fine(hole.PlyHeight)}, corners R {Fine(hole.PlyRadius)}; {Fine(hole.PlyFromFront)} from the front, {Fine(hole.PlyFromBottom)} up",
                $"hole in the cloth: {Fine(hole.ClothWidth)} by {Fine(hole.ClothHeight)}; {Fine(hole.ClothFromFront)} from the front, {Fine(hole.ClothFromBottom)} up; {hole.ReliefCutsPerCorner} relief cuts in each corner, the middle one {Fine(hole.ReliefCut)}",
            }),
            $"each width is {Tape(27)} less at the head",
            $"cut {Tape(Van.Separate[0].Panels[0].CornerCut!.Value.Millimeters)} off both ways at each corner",
            $"4.2 mm tapping screw, {FormatMillimetres(screw.Chosen!.Length.Nominal)} long, a washer under its head; its tip stays {Down(screw.Chosen.WorstClearance)} or more from the outer skin; drill {Fine(screw.PilotHole!.Value)} in the metal",
            $"{Decimal(screw.Hold!.Value.Newtons, 0)} N a screw for good in the metal; the sheet pulls {Decimal(Van.Held[0].Rows.Max(static row => row.PullPerWidth.NewtonsPerMeter), 0)} N a metre at the row that pulls most, and stands off up to {Fine(Van.Held[0].StandOff)} between rows",
            $"at v {Tape(60)}, {Tape(196)}, {Tape(332)}, which is 57.5 mm, 193.5 mm, 329.5 mm up the ply",
            .. Van.Fixings.Take(3).Select(static (plan, i) => $"L{i + 1},R{i + 1} 3 rows of {plan.Rows[0].Positions.Count}: {string.Join(", ", plan.Rows[0].Positions.Select(Pair))}; up to {Math.Ceiling(plan.Rows.Max(static row => row.GreatestLoad.Newtons))} N each"),
            $"L3 row v {Tape(196)} runs through the opening: move the fixing at {Tape(Van.Fixings[2].Rows[1].Positions[1].Millimeters)}, and put one on each side of it, {Tape(15)} from its edge",
            .. Van.Nesting.Purchases.Select(static buy => $"{buy.Count} of {Tape(buy.Sheet.Length.Millimeters)} along the grain by {Tape(buy.Sheet.Width.Millimeters)}: {Money(buy.Cost)}"),
            $"{Money(Van.Nesting.LeastCost!.Value)}: no other layout costs less (proven)",
            .. Van.Nesting.Sheets.Select(static (sheet, i) => $"sheet {i + 1}: {Pair(sheet.Length)} by {Pair(sheet.Width)}"),
            .. Van.Nesting.Sheets.SelectMany(static sheet => sheet.Pieces).Select(static piece => $"{piece.Name} {Cut(piece.Length)} {Cut(piece.Width)} {Cut(piece.Along)} {Cut(piece.Across)} {(piece.Name![0] == 'L' ? "far" : "near")}"),
            .. Van.Nesting.Sheets.SelectMany(static sheet => sheet.Pieces).Where(static piece => piece.Name is "L3" or "R3").Select(static piece => Slant(piece)),
            .. Van.Nesting.Sheets.SelectMany(static sheet => sheet.Cuts).Select(static cut => $"{cut.Number} {(cut.IsTrim ? "trim, " : string.Empty)}{(cut.IsAlongLength ? "rip" : "crosscut")} {Cut(cut.Size)} {Cut(cut.Position)} {Pair(cut.Start)} {Pair(cut.End)}"),
            .. Van.Nesting.Sheets.SelectMany(static sheet => sheet.Kept).Select(static left => $"keep {Tape(left.Length.Millimeters)} by {Tape(left.Width.Millimeters)}"),
            .. new[] { (Name: "cloth", Roll: Van.Cloth), (Name: "foam", Roll: Van.Foam) }.SelectMany(static of => of.Roll.Pieces
                .Select(static piece => $"{piece.Name} {Pair(piece.Along)} {Pair(piece.Across)} {Pair(piece.FromEnd)} {Pair(piece.FromEdge)}{(piece.IsTurned ? ", turned" : string.Empty)}")
                .Append($"{Tape(of.Roll.LengthToBuy.Millimeters)} of {of.Name}, {Tape(1500)} wide; the pieces take {Tape(of.Roll.Length.Millimeters)}{(of.Roll.Proven ? ", and no layout takes less" : $", {Tape(of.Roll.LeastLength.Millimeters)} at least")}; {Decimal(100 * of.Roll.Used, 0)}% ends")),
            $"{Decimal(Van.Glue.Containers, 2)} litres, {Van.Glue.ToBuy} to buy, for {Decimal(Van.Glue.Bonded.SquareMeters, 2)} m² of bond, both faces coated: {Money(16 * Van.Glue.ToBuy)}",
            $"{Van.Staples.Count} with legs of 5 mm: {Fine(Van.Staples.Depth)} deep, {Fine(Van.Staples.LeftBeforePoint)} of the thinnest ply before the point; legs up to {Fine(Van.Staples.LongestLeg!.Value)} will do",
            $"materials {Money(two.BackedMaterials)}, {Decimal(two.BackedHours.TotalHours, 1)} hours: {Tape(Van.FoamBacked.LengthToBuy.Millimeters)} to buy, {Van.GlueBacked.ToBuy} litres",
            $"materials {Money(two.SeparateMaterials)}, {Decimal(two.SeparateHours.TotalHours, 1)} hours: {Tape(Van.Cloth.LengthToBuy.Millimeters)} of cloth, {Tape(Van.Foam.LengthToBuy.Millimeters)} of foam, {Van.Glue.ToBuy} litres",
            $"both cost the same where an hour is worth {Money(two.BreakEvenRate!.Value)}: above that foam-backed cloth is cheaper, below it separate foam",
            $"nothing within {Tape(30)} to either side of a wire; depths behind the metal {Tape(3)} off either way",
            .. All().SelectMany(static each => each.Findings).Select(static finding => Bench(finding.Message)),
            .. All().SelectMany(static each => each.Defaults).GroupBy(static used => used.Source.ToString())
                .Select(static same => $"- {string.Join(", ", same.Select(static used => $"{used.Figure.Name.Replace("-", " ", StringComparison.Ordinal)} {Decimal(used.Figure.Value, 4)} {used.Figure.Unit}".Trim()).Distinct())}: {same.Key}"),
        ];
        return rows;
    }

    /// <summary>1044.75 at the foot, 27 less at the head, 347 high; the rear is at the sheet's end on the left wall, away from it on the right.</summary>
    private static string Slant(NestedPiece piece)
    {
        bool isLeft = piece.Name == "L3";
        (double along, double across) = (piece.Along.Millimeters, piece.Across.Millimeters);
        return $"{piece.Name} rear edge on the slant: from {Cut(Mm(along + (isLeft ? 0 : 1044.75)))}, {Cut(Mm(across))} to {Cut(Mm(along + (isLeft ? 27 : 1017.75)))}, {Cut(Mm(across + 347))}";
    }

    private static string Bent(string words, BendVerdict bend) =>
        $"{words}: bent to R {Whole(bend.PeakRadius!.Value)} at its tightest, R {Up(bend.MinimumRadius)} or more is allowed; {HoldDown.LeastEqualRows(bend.Panel.Sheet, Van.Across[1].Radius).Rows} rows at equal distances are the least that serve";

    private static IEnumerable<string> Sizes(int i)
    {
        if (i is 3 or 4)
        {
            yield break; // the same lines as on the left
        }

        WrappedPanel panel = Van.Separate[i].Panels[0];
        string name = i switch { 0 or 1 => $"L{i + 1},R{i + 1} ", 2 => "L3 ", 5 => "R3 ", _ => string.Empty };
        double front = Van.From[i] + 1.5;
        yield return $"{name}finished {Cut(panel.FinishedWidth)} {Cut(panel.FinishedHeight)} u {Pair(Mm(front))} to {Pair(Mm(front + panel.FinishedWidth.Millimeters))}";
        yield return $"ply {Cut(panel.PlyWidth)} {Cut(panel.PlyHeight)} face grain along the width";
        yield return $"foam {Cut(panel.FoamWidth)} {Cut(panel.FoamHeight)} flush with the ply";
        yield return $"cloth {Cut(panel.ClothWidth)} {Cut(panel.ClothHeight)} the ply in its middle";
    }

    /// <summary>Findings and defaults of everything that was asked. Of panels held alike the widest speaks.</summary>
    private static IEnumerable<(IReadOnlyList<Finding> Findings, IReadOnlyList<DefaultUsed> Defaults)> All() =>
    [
        .. Van.Across.Append(Van.Along).Select(static fit => (fit.Findings, (IReadOnlyList<DefaultUsed>)[])),
        (Van.Easy.Findings, Van.Easy.DefaultsUsed), (Van.Both.Findings, Van.Both.DefaultsUsed), .. Van.Splits.Select(static split => (split.Findings, split.DefaultsUsed)), (Van.Screw.Findings, Van.Screw.DefaultsUsed), (Van.Held[1].Findings, Van.Held[1].DefaultsUsed),
        .. Van.Fixings.Select(static plan => (plan.Findings, plan.DefaultsUsed)), .. Van.Separate.Select(static plan => (plan.Findings, plan.DefaultsUsed)), (Van.Nesting.Findings, Van.Nesting.DefaultsUsed), (Van.Cloth.Findings, []), (Van.Foam.Findings, []),
        (Van.Glue.Findings, Van.Glue.DefaultsUsed), (Van.Staples.Findings, Van.Staples.DefaultsUsed), (Van.Comparison.Findings, Van.Comparison.DefaultsUsed),
    ];

    private static string Circle(FittedCircle fit) => $"R {Whole(fit.Radius!.Value)}, give or take {Whole(fit.RadiusStandardError!.Value)}; {Fine(fit.OverChord.Rise)} under {Tape(fit.OverChord.Chord.Millimeters)}, {Tape(fit.OverChord.ArcLength.Millimeters)} round the curve";

    private static string Tape(double millimetres) => $"{FormatMillimetres(Mm(millimetres), 0)} ({FormatInches(Mm(millimetres), 16)})";

    private static string Pair(Length length) => $"{FormatMillimetres(length, 0)[..^3]} ({FormatInches(length, 16)[..^3]})";

    private static string Cut(Length length) => $"{FormatMillimetres(length, 1)[..^3]} ({FormatInches(length, 64)[..^3]})";

    private static string Fine(Length length) => Decimal(length.Millimeters, 1) + " mm";

    private static string Whole(Length length) => Decimal(length.Millimeters, 0) + " mm";

    private static string Up(Length length) => $"{Math.Ceiling((decimal)length.Millimeters)} mm";

    private static string Down(Length length) => $"{Math.Floor((decimal)length.Millimeters)} mm";

    private static string Money(decimal amount) => amount.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Decimal(double value, int decimals) => Math.Round((decimal)value, decimals, MidpointRounding.AwayFromZero).ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>A message as the bench reads it: tenths from one on, whole figures from a hundred.</summary>
    private static string Bench(string message) => Regex.Replace(message, @"(?<![\w.])([0-9]+\.[0-9]+) (mm|N)\b", static match =>
        decimal.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) switch { < 1 => match.Value, < 100 and var tenths => $"{Decimal((double)tenths, 1)} {match.Groups[2].Value}", var whole => $"{Decimal((double)whole, 0)} {match.Groups[2].Value}" });

    private static void Refused(Run run, params string[] says)
    {
        Assert.Equal((1, string.Empty), (run.ExitCode, run.Output));
        Assert.All(says, word => Assert.Contains(word, run.Error, StringComparison.Ordinal));
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal); // no stack trace
    }

    private static string Unwrapped(string text) => Regex.Replace(text, @"\s+", " ").Trim();
}

/// <summary>The program, built once.</summary>
public sealed class WrappedPanelsProgram() : ExampleProgram("wrapped-panels")
{
    private Run? _demo, _explained;

    /// <summary>The demo van's sheet, from one start.</summary>
    internal Run Demo => _demo ??= Start();

    /// <summary>The same with its workings.</summary>
    internal Run Explained => _explained ??= Start("--workings");
}
#endif
