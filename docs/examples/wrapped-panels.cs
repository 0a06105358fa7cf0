#:project ../../src/FinishKit/FinishKit.csproj

// The upper walls of a van in cloth-wrapped plywood, from measured arcs to cut lists, sheet layouts and length of cloth.
//
//   dotnet run docs/examples/wrapped-panels.cs                      the demo van in wrapped-panels.json beside this file
//   dotnet run docs/examples/wrapped-panels.cs my-van.json          your own
//   dotnet run docs/examples/wrapped-panels.cs --workings           every step of every answer, with what it rests on
//
// Read it from the middle: Answers holds every call of the library, in the order of the work. Above it is how the file is
// read (Survey), below it what the bench gets (PanelSheet).
//
// A file that cannot be read as meant is refused: every mistake on standard error with its place, value and what is allowed,
// exit code 1. A problem of the design is an answer: it comes first on the sheet, exit code 0.
using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using FinishKit;
using UnitsNet;
using static FinishKit.Measure;

return WrappedPanels.Run(args);

/// <summary>The command line.</summary>
internal static class WrappedPanels
{
    private const string Usage = "usage: dotnet run wrapped-panels.cs [file.json] [--workings]\n";

    internal static int Run(string[] args)
    {
        string[] files = [.. args.Where(static arg => !arg.StartsWith('-'))], options = [.. args.Where(static arg => arg.StartsWith('-'))];
        if (options is ["--help"] or ["-h"])
        {
            return Write(Console.OpenStandardOutput(), Usage, 0);
        }

        if (files.Length > 1 || files.Contains(string.Empty) || options is not ([] or ["--workings"]))
        {
            return Write(Console.OpenStandardError(), $"wrapped-panels: not understood: {Entry.Quote(string.Join(' ', args))}\n{Usage}", 1);
        }

        // The working directory is the caller's; the default file lies beside this program.
        string path = files.Length == 1 ? files[0] : Path.Combine((string?)AppContext.GetData("EntryPointFileDirectoryPath") ?? AppContext.BaseDirectory, "wrapped-panels.json");
        List<string> troubles = [];
        Survey? survey = Entry.Read(path, static file => new Survey(file), troubles);
        Answers? answers = troubles.Count > 0 || survey is null ? null : new Answers(survey, troubles);
        return answers is null || troubles.Count > 0
            ? Write(Console.OpenStandardError(), $"wrapped-panels: {Path.GetFileName(path)} cannot be read as meant; nothing was computed.\n{string.Concat(troubles.Take(100).Select(static trouble => $"  {trouble}\n"))}", 1)
            : Write(Console.OpenStandardOutput(), new PanelSheet(answers).Text(options.Length > 0), 0);
    }

    /// <summary>Bytes, not a console writer: the same UTF-8 under every culture and code page.</summary>
    private static int Write(Stream stream, string text, int exitCode)
    {
        using (stream)
        {
            stream.Write(Encoding.UTF8.GetBytes(text.ReplaceLineEndings("\n")));
        }

        return exitCode;
    }
}

// ---------------------------------------------------------------------------------------------------------------------------
// What is measured. The band that is panelled is the same on every wall: u runs from its front to the rear, v up the girth
// from its lower edge. Depths are counted outward from the back of the metal.

internal sealed class Survey
{
    /// <summary>In the order of <see cref="NapDirection"/> and <see cref="ClothStretch"/>.</summary>
    internal static readonly string[] NapWords = ["unknown", "toward top", "toward bottom", "toward front", "toward rear", "none"], StretchWords = ["unknown", "along the roll", "across the roll", "both ways", "none"];

    internal readonly string Van, Revision;
    internal readonly Band Band;
    internal readonly Wall[] Walls;
    internal readonly Metal Metal;
    internal readonly Panels Panels;
    internal readonly WrapBuild Build;
    internal readonly (Roll Cloth, Roll Foam, Roll Backed) Rolls;
    internal readonly (double Covers, int Coats, decimal Price) Adhesive;
    internal readonly Length StapleLeg;

    internal Survey(Entry file)
    {
        (Van, Revision) = (file.Text("van"), file.Text("survey"));
        Band = file.Object("band", static band => new Band(
            band.Length("length", 500, 20_000),
            band.Object("rear-edge", static edge => (edge.Length("foot", 0, 1000), edge.Length("head", 0, 1000))),
            band.List("arcs-across", 1, 20, static arc => (arc.Length("u", 0, 20_000), Points(arc, "points"))),
            Points(band, "arc-along"),
            band.List("ribs", 0, 50, static rib => (rib.Length("u", 0, 20_000), rib.Length("width", 5, 500))),
            band.List("rows", 2, 20, static row => row.Length("v", 0, 5000)),
            band.List("wires", 0, 20, static wire => (wire.Length("v", -500, 5000), wire.Length("diameter", 1, 100), wire.Length("depth", 0, 500)))))!;
        Walls = file.List("walls", 1, 2, static wall => new Wall(wall.Text("side", "left", "right"), wall.List("openings", 0, 20, static opening =>
        {
            (Length from, Length bottom) = (opening.Length("from", 0, 20_000), opening.Length("bottom", 0, 5000));
            Length to = opening.Length("to", from.Millimeters + 1, 20_000), top = opening.Length("top", bottom.Millimeters + 1, 5000);
            double shorter = Math.Min(to.Millimeters - from.Millimeters, top.Millimeters - bottom.Millimeters);
            return new PanelWindow(new FaceOpening(from, to, bottom, top)) { CornerRadius = opening.Length("corner-radius", 0, shorter > 0 ? shorter / 2 : 500) };
        })));
        (Length Diameter, Length Pitch, Length[] Lengths) screws = file.Object("screws", static screws => (screws.Length("diameter", 2, 10), screws.Length("pitch", 0.3, 5), screws.List("lengths", 1, 30, static screw => screw.Length("length", 5, 200)).DistinctBy(static length => length.Millimeters).OrderBy(static length => length.Millimeters).ToArray()));
        Metal = file.Object("metal", metal => new Metal(metal.Length("thickness", 0.4, 5), metal.Number("strength-mpa", 100, 1000, " MPa"), metal.Length("skin-behind", 0, 500), screws.Diameter, screws.Pitch, screws.Lengths))!;
        Panels = file.Object("panels", static panels =>
        {
            string sheet = panels.Text("sheet", [.. Goods.Select(static each => each.Name)]);
            SheetGoods? goods = Array.Find(Goods, each => each.Name == sheet); // what cannot be read bounds nothing
            return new Panels(
                goods!,
                panels.Length("measured", goods?.Thickness.Least.Millimeters ?? 1, goods?.Thickness.Greatest.Millimeters ?? 50),
                panels.Length("longest", 200, 10_000),
                panels.Number("kg-per-m2", 0.5, 50, " kg"),
                panels.Number("heaviest-kg", 0.5, 100, " kg"),
                panels.Length("trim", 0, 100),
                panels.List("sheets", 1, 10, static sheet => new StockSheet(sheet.Length("length", 300, 10_000), sheet.Length("width", 300, 10_000), (decimal)sheet.Number("price", 0, 100_000))),
                panels.List("offcuts", 0, 50, static offcut => new SheetOffcut(offcut.Length("length", 50, 10_000), offcut.Length("width", 50, 10_000))));
        })!;
        Build = file.Object("wrap", wrap => new WrapBuild(Panels?.Measured ?? default, wrap.Length("cloth", 0.2, 10))
        {
            FoamThickness = wrap.Length("foam", 0.5, 20),
            TurnUnder = wrap.Length("turn-under", 10, 200),
            Joint = wrap.Length("joint", 0.5, 10),
            IsFoamBacked = wrap.Text("foam-comes", "separate", "on the cloth") == "on the cloth",
            Nap = (NapDirection)Math.Max(0, Array.IndexOf(NapWords, wrap.Text("nap", NapWords))),
            Stretch = (ClothStretch)Math.Max(0, Array.IndexOf(StretchWords, wrap.Text("stretch", StretchWords))),
        })!;
        Rolls = file.Object("rolls", static rolls => (rolls.Object("cloth", OneRoll)!, rolls.Object("foam", OneRoll)!, rolls.Object("foam-backed", OneRoll)!));
        Adhesive = file.Object("adhesive", static glue => (glue.Number("litre-covers-m2", 0.5, 20, " m²"), glue.Whole("coats", 1, 5), (decimal)glue.Number("price-per-litre", 0, 1000)));
        StapleLeg = file.Object("staples", static staples => staples.Length("leg", 2, 30));
    }

    /// <summary>Sheets whose stiffness and strength are known both ways.</summary>
    private static readonly SheetGoods[] Goods = [.. SheetGoods.All.Where(static goods => goods.Bending is not null)];

    /// <summary>A straightedge across the hollow, and the gap under it.</summary>
    private static MeasuredPoint[] Points(Entry of, string name) => of.List(name, 3, 50, static point => new MeasuredPoint(point.Length("at", 0, 20_000), point.Length("gap", -1000, 1000)));

    private static Roll OneRoll(Entry roll) => new(roll.Length("width", 100, 5000), roll.Length("selvedge", 0, 100), roll.Length("sold-by", 1, 10_000), (decimal)roll.Number("price-per-m2", 0, 10_000));
}

/// <summary>Rows are the lines of metal along the van that panels are fixed to: a rail, or a strip on the ribs.</summary>
internal sealed record Band(Length Length, (Length Foot, Length Head) RearEdge, (Length U, MeasuredPoint[] Points)[] Arcs, MeasuredPoint[] Along, (Length U, Length Width)[] Ribs, Length[] Rows, (Length V, Length Diameter, Length Depth)[] Wires);
internal sealed record Wall(string Side, PanelWindow[] Openings);
internal sealed record Metal(Length Thickness, double Strength, Length Skin, Length Diameter, Length Pitch, Length[] Lengths);
internal sealed record Panels(SheetGoods Goods, Length Measured, Length Longest, double SquareMetre, double Heaviest, Length Trim, StockSheet[] Sheets, SheetOffcut[] Offcuts);
internal sealed record Roll(Length Width, Length Selvedge, Length SoldBy, decimal Price);

/// <summary>
/// An object of the file. Each member is asked for by its name, with what is allowed; every mistake is reported with its place,
/// and so is what nobody asks for.
/// </summary>
internal sealed class Entry(JsonElement json, string path, List<string> troubles)
{
    private readonly List<string> _asked = [];

    internal static T? Read<T>(string file, Func<Entry, T> read, List<string> troubles)
    {
        try
        {
            FileInfo info = new(file);
            if (info.Exists && info.Length is > 0 and <= 1_000_000)
            {
                using JsonDocument document = JsonDocument.Parse(File.ReadAllText(file), new JsonDocumentOptions { MaxDepth = 16 });
                return new Entry(document.RootElement, "$", troubles).Whole(read);
            }

            troubles.Add(file + (Directory.Exists(file) ? ": is a folder, not a file" : !info.Exists ? ": no such file" : info.Length == 0 ? ": is empty" : ": is larger than 1 MB"));
        }
        catch (JsonException exception)
        {
            troubles.Add(FormattableString.Invariant($"line {exception.LineNumber + 1}, byte {exception.BytePositionInLine + 1}: not JSON: ") + exception.Message.Split(" LineNumber:")[0]);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException or InvalidOperationException)
        {
            troubles.Add($"{file}: cannot be read: {exception.Message}");
        }

        return default;
    }

    internal string Text(string name, params string[] allowed)
    {
        string text = Member(name, JsonValueKind.String, "text")?.GetString() ?? string.Empty;
        bool isPlain = text.Trim().Length is > 0 and <= 60 && !text.Any(static c => char.IsControl(c) || char.IsSurrogate(c) || char.GetUnicodeCategory(c) is UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator);
        if (!At(name) && (allowed.Length > 0 ? !allowed.Contains(text) : !isPlain))
        {
            Wrong(name, Quote(text), allowed.Length > 0 ? string.Join(", ", allowed) : "1 to 60 plain characters");
        }

        return text;
    }

    internal double Number(string name, double least, double most, string unit = "")
    {
        double number = Member(name, JsonValueKind.Number, "a number")?.GetDouble() ?? least;
        if (!(number >= least && number <= most))
        {
            Wrong(name, FormattableString.Invariant($"{number}{unit}"), FormattableString.Invariant($"{least} to {most}{unit}"));
        }

        return number;
    }

    internal int Whole(string name, int least, int most)
    {
        double number = Number(name, least, most);
        if (!At(name) && number != Math.Floor(number))
        {
            Wrong(name, FormattableString.Invariant($"{number}"), FormattableString.Invariant($"a whole number, {least} to {most}"));
        }

        return (int)number;
    }

    internal Length Length(string name, double least, double most)
    {
        if (Member(name, JsonValueKind.String, "a length with its unit, as text: \"19 mm\", \"3/4 in\"")?.GetString() is not { } text)
        {
            return default;
        }

        if (!TryParseLength(text, out Length length))
        {
            InputProblem problem = CheckLength(text)[0];
            Wrong(name, problem.Value, problem.Allowed);
            return default;
        }

        length = Mm(Math.Round(length.Millimeters, 6)); // on the grid of a nanometre, so that inches and millimetres meet
        if (length.Millimeters < least || length.Millimeters > most)
        {
            Wrong(name, text, FormattableString.Invariant($"{least} to {most} mm"));
        }

        return length;
    }

    internal T? Object<T>(string name, Func<Entry, T> read) => Member(name, JsonValueKind.Object, "an object") is { } member ? new Entry(member, $"{path}.{name}", troubles).Whole(read) : default;

    internal T[] List<T>(string name, int least, int most, Func<Entry, T> read)
    {
        JsonElement[] entries = [.. Member(name, JsonValueKind.Array, "a list")?.EnumerateArray() ?? default];
        if (!At(name) && (entries.Length < least || entries.Length > most))
        {
            Wrong(name, FormattableString.Invariant($"{entries.Length} entries"), FormattableString.Invariant($"{least} to {most} entries"));
        }

        return [.. entries.Take(most).Select((entry, i) => new Entry(entry, FormattableString.Invariant($"{path}.{name}[{i}]"), troubles).Whole(read)!)];
    }

    internal static string Quote(string text) => "\"" + string.Concat((text.Length <= 60 ? text : text[..60] + "...").Select(static c => char.IsControl(c) || char.IsSurrogate(c) || char.GetUnicodeCategory(c) == UnicodeCategory.Format ? '?' : c)).Trim('"') + "\"";

    private T? Whole<T>(Func<Entry, T> read)
    {
        if (json.ValueKind != JsonValueKind.Object)
        {
            troubles.Add($"{path}: {Quote(json.GetRawText())}; allowed is an object");
            return default;
        }

        T value = read(this);
        foreach (IGrouping<string, JsonProperty> member in json.EnumerateObject().GroupBy(static member => member.Name).Where(member => member.Count() > 1 || !_asked.Contains(member.Key)))
        {
            troubles.Add(_asked.Contains(member.Key) ? $"{path}.{member.Key}: given more than once" : $"{path}[{Quote(member.Key)}]: unknown member; allowed are {string.Join(", ", _asked)}");
        }

        return value;
    }

    private JsonElement? Member(string name, JsonValueKind kind, string words)
    {
        _asked.Add(name);
        if (!json.TryGetProperty(name, out JsonElement member))
        {
            troubles.Add($"{path}.{name}: missing; allowed is {words}");
            return null;
        }

        if (member.ValueKind == kind)
        {
            return member;
        }

        Wrong(name, Quote(member.GetRawText()), words);
        return null;
    }

    private bool At(string name) => troubles.Exists(trouble => trouble.StartsWith($"{path}.{name}:", StringComparison.Ordinal));

    private void Wrong(string name, string value, string allowed) => troubles.Add($"{path}.{name}: {value}; allowed is {allowed}");
}

// ---------------------------------------------------------------------------------------------------------------------------
// What is asked of the library, in the order of the work. Each calculator checks its input first (Check..., nothing thrown),
// so that a mistake of the file is named by its place; then it answers.

/// <summary>One panel: where the opening that it fills starts, how much less it is at one end of its rear edge, both ways of wrapping it, what holds it to the arc.</summary>
internal sealed record Piece(string Name, Length From, Length Taper, WrapPlan Separate, WrapPlan Backed, HoldDownResult Held, PanelFixingPlan Fixings)
{
    internal WrapPlan Made(Survey survey) => survey.Build.IsFoamBacked ? Backed : Separate;
}

internal sealed class Answers
{
    private const double WireSide = 30, DepthError = 3; // judgement: beside a wire 25 to 50 mm; cavities and wires are known to 3 mm
    private readonly List<string> _troubles;

    internal Answers(Survey survey, List<string> troubles)
    {
        (Survey, _troubles) = (survey, troubles);
        (Band band, Panels panels, Metal metal) = (survey.Band, survey.Panels, survey.Metal);

        if (survey.Walls.DistinctBy(static wall => wall.Side).Count() < survey.Walls.Length)
        {
            troubles.Add($"$.walls: {survey.Walls[0].Side} twice; allowed is each side once");
        }

        // Circles through what was measured: the tightest counts for the bend, the shortest girth for the sizes.
        Across = [.. band.Arcs.Select((arc, i) => Ask(() => CircleFit.Check(arc.Points), () => CircleFit.Through(arc.Points), ("points", $"$.band.arcs-across[{i}].points"))!)];
        Along = Ask(() => CircleFit.Check(band.Along), () => CircleFit.Through(band.Along), ("points", "$.band.arc-along"))!;
        if (troubles.Count > 0)
        {
            return;
        }

        Tightest = Across.MaxBy(static fit => Math.Abs(fit.Curvature.InverseMillimeters))!;
        Girth = Mm(Math.Floor(Across.Min(static fit => fit.OverChord.ArcLength.Millimeters)));
        for (int i = 0; i < band.Rows.Length; i++)
        {
            double least = i == 0 ? 5 : band.Rows[i - 1].Millimeters + 20, most = Girth.Millimeters - 5;
            if (band.Rows[i].Millimeters < least || band.Rows[i].Millimeters > most)
            {
                troubles.Add(FormattableString.Invariant($"$.band.rows[{i}].v: {band.Rows[i].Millimeters} mm; allowed is {least} to {most} mm"));
            }
        }

        // What wrapping takes off a ply at each edge, from one panel of the greatest size; then whether that ply bends, by its grain.
        WrapBuild separate = survey.Build with { IsFoamBacked = false, EdgeGap = survey.Build.Joint }, backed = separate with { IsFoamBacked = true };
        WrapJob largest = new(panels.Longest, Girth, survey.Build.IsFoamBacked ? backed : separate);
        WrapPlan? trial = Ask(() => PanelWrap.CheckPlan(largest), () => PanelWrap.Plan(largest), ("job.OpeningHeight", "$.band.arcs-across: girth"), ("job.Build", "$.wrap"), ("job", "$.panels.longest"));
        if (trial is null || troubles.Count > 0)
        {
            return;
        }

        WrappedPanel one = trial.Panels[0];
        EdgeOff = Mm((Girth.Millimeters - one.PlyHeight.Millimeters) / 2);
        Rows = [.. band.Rows.Select(row => Less(row, EdgeOff))];
        Bends = [.. new[] { BendGrain.AroundTheCurve, BendGrain.AlongTheAxis }.Select(grain => PanelBend.Judge(new BendCase(BentSheet.Of(panels.Goods, grain), Tightest.Radius) { Rows = Rows, BowAlong = Along.Radius, Girth = one.PlyHeight, Width = one.PlyWidth }))];
        Least = [.. Bends.Select(bend => HoldDown.LeastEqualRows(bend.Panel.Sheet, Tightest.Radius))];
        IsAlong = Bends[1].Follows || !Bends[0].Follows;
        BentSheet sheet = Bends[IsAlong ? 1 : 0].Panel.Sheet;
        Double = Tightest.Radius is { } around && Along.Radius is { } along ? DoubleCurvature.Judge(new BowedPanel(sheet, around, along, one.PlyHeight, one.PlyWidth)) : null;

        // The screw of each row by what is behind it there, a washer on the cloth, and what one holds in the metal.
        Layer[] layers = [Layer.Compressible("cloth and foam", Mm(survey.Build.ClothThickness.Millimeters + survey.Build.FoamThickness!.Value.Millimeters), survey.Build.ClothThickness), Layer.Panel(panels.Goods)];
        FastenerSeries stocked = new($"{FormatMillimetres(metal.Diameter)} tapping screw", FastenerKind.WoodScrew, metal.Diameter, metal.Lengths);
        Screws = [.. band.Rows.Select(Near).Distinct().Select(behind => new MetalScrewJob(layers, metal.Thickness, behind, stocked, metal.Pitch) { MetalStrength = Pressure.FromMegapascals(metal.Strength), SetDepth = Mm(0) })
            .Select(job => Ask(() => MetalScrew.Check(job), () => MetalScrew.Choose(job), ("job.Screws.Lengths", "$.screws.lengths"), ("job", "$.screws"))!)];

        // Panels of each wall between joints on ribs: on the longest sheet, in reach of the hands, and no wider than the cloth goes across its roll.
        StockSheet longest = panels.Sheets.MaxBy(sheet => (IsAlong ? sheet.Length : sheet.Width).Millimeters)!;
        double more = one.FinishedWidth.Millimeters - one.PlyWidth.Millimeters - (2 * panels.Trim.Millimeters), turned = one.ClothWidth.Millimeters - one.FinishedWidth.Millimeters;
        bool isAcross = one.ClothWidth.Equals(trial.ClothPieces[0].Across, Mm(0)) && !trial.ClothPieces[0].IsTurnable;
        double widest = isAcross ? new[] { survey.Rolls.Cloth, survey.Rolls.Backed }.Min(static roll => roll.Width.Millimeters - (2 * roll.Selvedge.Millimeters)) - turned : double.MaxValue;
        Length end = Less(band.Length, Mm(Math.Min(band.RearEdge.Foot.Millimeters, band.RearEdge.Head.Millimeters)));
        Splits = [.. survey.Walls.Select(wall => new PanelWall(end, Girth, Mm(longest.Length.Millimeters + more), Mm(longest.Width.Millimeters + more))
        {
            Grain = IsAlong ? PanelGrainDirection.AlongU : PanelGrainDirection.AlongV,
            Ribs = [.. band.Ribs.Select(static rib => new PanelJointLine(rib.U, rib.Width))],
            Openings = [.. wall.Openings.Select(static window => window.Opening)],
            Reveal = survey.Build.Joint,
            MostLength = Mm(Math.Min(panels.Longest.Millimeters, widest)),
            SquareMetreMass = Mass.FromKilograms(panels.SquareMetre),
            MostMass = Mass.FromKilograms(panels.Heaviest),
        }).Select((wall, i) => Ask(() => PanelSplit.Check(wall), () => PanelSplit.Split(wall), ("wall.Openings", $"$.walls[{i}].openings"), ("wall.Ribs", "$.band.ribs"), ("wall.Length", "$.band.length"), ("wall.MostLength", "$.panels.longest, or rolls"), ("wall", "$.panels.sheets: "))!)];
        if (troubles.Count > 0 || Splits.Any(static split => !split.IsSplit))
        {
            return;
        }

        // Each panel: cut sizes both ways of wrapping, what holds it to the arc, its fixings. The wrap leaves its gap at each edge of an opening, the split has done so at joints.
        Pieces = [.. Splits.Zip(survey.Walls).SelectMany(pair => pair.First.Panels.Select((panel, i) =>
        {
            Length gap = survey.Build.Joint!.Value, from = i == 0 ? panel.FromU : Less(panel.FromU, gap), to = i == pair.First.Panels.Count - 1 ? panel.ToU : Less(panel.ToU, -gap);
            WrapJob job = new(Less(to, from), Girth, separate)
            {
                Windows = [.. pair.Second.Openings.Where(each => each.Opening.ToU.Millimeters > from.Millimeters && each.Opening.FromU.Millimeters < to.Millimeters)
                    .Select(each => each with { Opening = new FaceOpening(Less(each.Opening.FromU, from), Less(each.Opening.ToU, from), each.Opening.FromV, each.Opening.ToV) })],
            };
            return Ask(() => PanelWrap.CheckPlan(job), () => PanelWrap.Plan(job), ("job.Windows", $"$.walls[{Array.IndexOf(survey.Walls, pair.Second)}].openings"), ("job", "$.panels")) is not { } plan ? null!
                : Hold($"{(pair.Second.Side == "left" ? "L" : "R")}{i + 1}", from, plan, PanelWrap.Plan(job with { Build = backed }), Mm(i < pair.First.Panels.Count - 1 ? 0 : Math.Abs(band.RearEdge.Foot.Millimeters - band.RearEdge.Head.Millimeters)));
        }))];
        if (troubles.Count > 0)
        {
            return;
        }

        // Ply on sheets, sawn; cloth and foam on rolls, both ways of wrapping.
        NestingJob nesting = new([.. Pieces.Select(Part)], panels.Sheets, SheetCutting.Sawn) { Offcuts = panels.Offcuts, Trim = panels.Trim };
        Nesting = Ask(() => SheetNesting.Check(nesting), () => SheetNesting.Nest(nesting), ("job.Stock", "$.panels.sheets"), ("job.Offcuts", "$.panels.offcuts"), ("job", "$.panels.trim"));
        Cloth = OnRoll("cloth", survey.Rolls.Cloth, static piece => piece.Separate.ClothPieces[0]);
        Foam = OnRoll("foam", survey.Rolls.Foam, static piece => piece.Separate.FoamPieces[0]);
        Backed = OnRoll("foam-backed", survey.Rolls.Backed, static piece => piece.Backed.ClothPieces[0]);

        // Glue and staples, and the two ways against each other.
        StapleJob staples = new([.. Pieces.SelectMany(piece => piece.Made(survey).WrappedEdges)], panels.Goods.Thickness, survey.StapleLeg) { UnderCrown = Pieces[0].Made(survey).UnderCrown, FoamUnderCrown = Pieces[0].Made(survey).FoamUnderCrown };
        Staples = Ask(() => PanelStaples.CheckSetOut(staples), () => PanelStaples.SetOut(staples), ("job.Leg", "$.staples.leg"), ("job", "$.staples"));
        if (Nesting is null || Cloth is null || Foam is null || Backed is null || Staples is null)
        {
            return;
        }

        (GlueSeparate, GlueBacked) = (Glue(static piece => piece.Separate), Glue(static piece => piece.Backed));
        Comparison = WrapComparison.Compare(new WrapChoice(Bought(Backed), survey.Rolls.Backed.Price, Bought(Cloth), survey.Rolls.Cloth.Price, Bought(Foam), survey.Rolls.Foam.Price)
        { Panels = Pieces.Length, BackedExtras = GlueBacked.ToBuy * survey.Adhesive.Price, SeparateExtras = GlueSeparate.ToBuy * survey.Adhesive.Price });

        Piece Hold(string name, Length from, WrapPlan plan, WrapPlan other, Length taper)
        {
            WrappedPanel panel = (survey.Build.IsFoamBacked ? other : plan).Panels[0]; // on a slanted end the rows are as long as the shorter edge
            Force capacity = Screws[0].Hold!.Value;
            HoldDownResult held = HoldDown.OnArc(new HoldDownCase(sheet, Tightest.Radius, Rows, Less(panel.PlyWidth, taper)) { Girth = panel.PlyHeight, FixingCapacity = capacity });
            return new Piece(name, from, taper, plan, other, held, PanelFixings.Place(PanelFixingJob.From(held, capacity) with { HungMass = Mass.FromKilograms(panels.SquareMetre * plan.FaceArea.SquareMeters) }));
        }

        AdhesiveNeed Glue(Func<Piece, WrapPlan> way) => PanelAdhesive.Needed(Area.FromSquareMillimeters(Pieces!.Sum(piece => way(piece).BondedArea.SquareMillimeters)), Area.FromSquareMeters(survey.Adhesive.Covers), survey.Adhesive.Coats);
    }

    internal readonly Survey Survey;
    internal readonly FittedCircle[] Across;
    internal readonly FittedCircle Along;
    internal readonly FittedCircle? Tightest;
    internal readonly Length Girth, EdgeOff;
    internal readonly Length[] Rows = [];
    internal readonly BendVerdict[] Bends = [];
    internal readonly RowsSearch[] Least = [];
    internal readonly bool IsAlong;
    internal readonly BowedPanelVerdict? Double;
    internal readonly MetalScrewChoice[] Screws = [];
    internal readonly PanelSplitPlan[] Splits = [];
    internal readonly Piece[] Pieces = [];
    internal readonly NestingPlan? Nesting;
    internal readonly RollPlan? Cloth, Foam, Backed;
    internal readonly AdhesiveNeed GlueSeparate, GlueBacked;
    internal readonly StaplePlan? Staples;
    internal readonly WrapVerdict Comparison;

    /// <summary>What the sheet takes of every answer beside its figures. Of panels held alike the one that pulls most speaks.</summary>
    internal IEnumerable<(string Of, IReadOnlyList<Finding> Findings, IReadOnlyList<DefaultUsed> Defaults, Workings Workings)> All() =>
    [
        .. Across.Append(Along).Select(static fit => ("arcs", fit.Findings, (IReadOnlyList<DefaultUsed>)[], fit.Explain())),
        ("bend", Bends[IsAlong ? 1 : 0].Findings, Bends[IsAlong ? 1 : 0].DefaultsUsed, Bends[IsAlong ? 1 : 0].Explain()),
        .. new[] { Double }.OfType<BowedPanelVerdict>().Select(static both => ("bend", both.Findings, both.DefaultsUsed, both.Explain())),
        .. Splits.Select(static split => ("panels", split.Findings, split.DefaultsUsed, split.Explain())),
        .. Screws.Select(static screw => ("screws", screw.Findings, screw.DefaultsUsed, screw.Explain())),
        .. Nesting is null ? [] : Made(),
    ];

    internal AdhesiveNeed Glue => Survey.Build.IsFoamBacked ? GlueBacked : GlueSeparate;

    internal (string Name, RollPlan Roll)[] Rolls => Survey.Build.IsFoamBacked ? [("foam-backed cloth", Backed!)] : [("cloth", Cloth!), ("foam", Foam!)];

    /// <summary>Where no fixing may reach past the metal: beside a wire.</summary>
    internal static (double From, double To) Beside((Length V, Length Diameter, Length Depth) wire) => (wire.V.Millimeters - (wire.Diameter.Millimeters / 2) - WireSide, wire.V.Millimeters + (wire.Diameter.Millimeters / 2) + WireSide);

    /// <summary>On the grid of a nanometre.</summary>
    internal static Length Less(Length one, Length other) => Mm(Math.Round(one.Millimeters - other.Millimeters, 6));

    private static Area Bought(RollPlan roll) => roll.LengthToBuy * roll.Job.Width;

    /// <summary>What is behind the metal of a row: the nearest wire beside it, else the outer skin.</summary>
    private Behind Near(Length row)
    {
        Length[] wires = [.. Survey.Band.Wires.Where(wire => Beside(wire) is var (from, to) && row.Millimeters > from && row.Millimeters < to).Select(static wire => wire.Depth).Order()];
        return wires.Length > 0 ? Behind.Wire(TolerancedLength.PlusMinus(wires[0], Mm(DepthError))) : Behind.Skin(TolerancedLength.PlusMinus(Survey.Metal.Skin, Mm(DepthError)));
    }

    private IEnumerable<(string Of, IReadOnlyList<Finding> Findings, IReadOnlyList<DefaultUsed> Defaults, Workings Workings)> Made()
    {
        HoldDownResult held = Pieces.MaxBy(static piece => piece.Held.GreatestPull.Newtons)!.Held;
        yield return ("bend", held.Findings, held.DefaultsUsed, held.Explain());
        foreach (Piece piece in Pieces)
        {
            WrapPlan made = piece.Made(Survey);
            yield return (piece.Name, piece.Fixings.Findings, piece.Fixings.DefaultsUsed, piece.Fixings.Explain());
            yield return (piece.Name, made.Findings, made.DefaultsUsed, made.Explain());
        }

        yield return ("sheets", Nesting!.Findings, Nesting.DefaultsUsed, Nesting.Explain());
        foreach ((string of, RollPlan roll) in Rolls)
        {
            yield return (of, roll.Findings, [], roll.Explain());
        }

        yield return ("glue", Glue.Findings, Glue.DefaultsUsed, Glue.Explain());
        yield return ("staples", Staples!.Findings, Staples.DefaultsUsed, Staples.Explain());
        yield return ("hours", Comparison.Findings, Comparison.DefaultsUsed, Comparison.Explain());
    }

    /// <summary>Whether a panel's front lies at its far end on the sheet: seen from inside, good face up, the front is on the right of the left wall and on the left of the right.</summary>
    internal bool IsFrontFar(string panel) => panel.StartsWith('L') == IsAlong;

    /// <summary>A ply as the saw gets it, good face up, its grain along the sheet's, its foot toward the sheet's corner. The corners: front and rear at the foot, rear and front at the head.</summary>
    private SheetPart Part(Piece piece)
    {
        WrappedPanel panel = piece.Made(Survey).Panels[0];
        (Length u, Length v, Length less) = (panel.PlyWidth, panel.PlyHeight, Less(panel.PlyWidth, piece.Taper));
        bool isHead = Survey.Band.RearEdge.Head.Millimeters > Survey.Band.RearEdge.Foot.Millimeters;
        (Length U, Length V)[] corners = [(Mm(0), Mm(0)), (isHead ? u : less, Mm(0)), (isHead ? less : u, v), (Mm(0), v)];
        return new SheetPart(IsAlong ? u : v, IsAlong ? v : u, 1, mayTurn: false)
        {
            Name = piece.Name,
            Outline = piece.Taper.Millimeters > 0 ? [.. corners.Select(corner => (U: IsFrontFar(piece.Name) ? Less(u, corner.U) : corner.U, corner.V)).Select(corner => IsAlong ? new MeasuredPoint(corner.U, corner.V) : new MeasuredPoint(corner.V, corner.U))] : null,
        };
    }

    private RollPlan? OnRoll(string name, Roll roll, Func<Piece, CoverPiece> of)
    {
        RollPart[] parts = [.. Pieces.Select(piece => (piece.Name, Cover: of(piece))).Select(static piece => new RollPart(piece.Cover.Along, piece.Cover.Across, 1, piece.Cover.IsTurnable) { Name = piece.Name })];
        double usable = roll.Width.Millimeters - (2 * roll.Selvedge.Millimeters), needed = parts.Max(static part => part.MayTurn ? Math.Min(part.Along.Millimeters, part.Across.Millimeters) : part.Across.Millimeters);
        if (usable < needed)
        {
            _troubles.Add(FormattableString.Invariant($"$.rolls.{name}.width: {roll.Width.Millimeters} mm, {usable} mm without its selvedges; allowed is {needed} mm or more without them, the widest piece"));
            return null;
        }

        RollJob job = new(parts, roll.Width) { Selvedge = roll.Selvedge, SoldBy = roll.SoldBy };
        return Ask(() => RollCutting.Check(job), () => RollCutting.Cut(job), ("job", $"$.rolls.{name}"));
    }

    /// <summary>An answer, where its check has nothing to say; else what it says, at its places in the file.</summary>
    private T? Ask<T>(Func<IReadOnlyList<InputProblem>> check, Func<T> answer, params (string Parameter, string Path)[] places)
        where T : class
    {
        IReadOnlyList<InputProblem> problems = check();
        foreach (InputProblem problem in problems)
        {
            (string parameter, string path) = places.First(place => problem.Parameter.StartsWith(place.Parameter, StringComparison.Ordinal));
            string member = Regex.Replace(problem.Parameter[parameter.Length..], @"\w+$", static name => name.Value switch { "Along" => "at", "Offset" => "gap", "FromU" => "from", "ToU" => "to", "FromV" => "bottom", "ToV" => "top", "Position" => "u", "MetalWidth" => "width", "CornerRadius" => "corner-radius", "Length" => "length", "Width" => "width", "Price" => "price", _ => name.Value });
            string trouble = $"{path}{member}: {problem.Value}; allowed is {problem.Allowed}";
            _troubles.AddRange(_troubles.Contains(trouble) ? [] : [trouble]); // what both walls share is named once
        }

        return problems.Count == 0 ? answer() : null;
    }
}

// ---------------------------------------------------------------------------------------------------------------------------
// What the bench gets: problems first, then the sections in the order of the work; millimetres and inches to 1/16, cut sizes
// to 1/64. Places are given from one datum, never from piece to piece.

internal sealed class PanelSheet(Answers answers)
{
    private const int Width = 98;

    private readonly StringBuilder _text = new();
    private readonly Survey _survey = answers.Survey;
    private readonly (string Of, Finding Finding)[] _findings = [.. answers.All().SelectMany(static each => each.Findings.Select(finding => (each.Of, finding)))
        .GroupBy(static each => each.finding.Message).Select(static same => (same.DistinctBy(static each => each.Of).Count() > 1 ? "panels" : same.First().Of, same.First().finding))];

    internal string Text(bool workings)
    {
        PrintHead();
        PrintFindings();
        PrintBend();
        if (answers.Nesting is { } sheets)
        {
            PrintPanels();
            PrintFixings();
            PrintSheets(sheets);
            PrintRolls(answers.Comparison);
        }

        PrintRest();
        foreach (Workings steps in workings ? answers.All().Select(static each => each.Workings) : [])
        {
            _text.Append('\n').Append(steps.ToText());
        }

        return _text.ToString();
    }

    private void PrintHead()
    {
        Line($"PANEL SHEET    {_survey.Van}    survey: {_survey.Revision}");
        foreach (Wall wall in _survey.Walls)
        {
            Line(wall.Side == "left" ? "LEFT WALL, panels L, seen from inside          rear  o - - - - - - - - - - - - ->  FRONT" : "RIGHT WALL, panels R, seen from inside         FRONT  <- - - - - - - - - - - - - o  rear");
        }

        Row("datum", $"u = 0 at the front end of the band and runs to the rear, {Tape(_survey.Band.Length)} long; v = 0 at the band's lower edge and runs up along the surface to {Tape(answers.Girth)}. Left and right of the van are as the driver sits.");
        Row("made of", $"{_survey.Panels.Goods.Name}, measured {Fine(_survey.Panels.Measured)}; foam of {Fine(_survey.Build.FoamThickness!.Value)} {(_survey.Build.IsFoamBacked ? "bonded to the cloth" : "glued on first, trimmed flush with the ply")}; cloth of {Fine(_survey.Build.ClothThickness)}");
        foreach ((Wall wall, PanelWindow hole) in _survey.Walls.SelectMany(static wall => wall.Openings.Select(hole => (wall, hole))))
        {
            Row("opening", $"{wall.Side} wall: u {Tape(hole.Opening.FromU)} to {Tape(hole.Opening.ToU)}, v {Tape(hole.Opening.FromV)} to {Tape(hole.Opening.ToV)}, corners R {Tape(hole.CornerRadius)}");
        }
    }

    private void PrintFindings()
    {
        Head(_findings.Any(static each => each.Finding.Severity == Severity.Problem) ? "PROBLEMS: do not start before these are settled" : "PROBLEMS: none found in what was asked");
        PrintAll(Severity.Problem);
        Head("CAUTIONS");
        PrintAll(Severity.Caution);
        foreach ((Length v, Length diameter, Length depth) wire in _survey.Band.Wires)
        {
            (double from, double to) = Answers.Beside(wire);
            Row("wire", $"at v {Tape(wire.v)}, {Tape(wire.depth)} behind the metal: NO fixing from v {Tape(Mm(from))} to {Tape(Mm(to))}");
        }

        Head("BEFORE ANYTHING IS CUT OR DRILLED");
        Row("find", "and mark wiring, gas, fuel and brake lines, tanks, airbags and seat-belt anchorages, in the pillars too: this sheet knows only what was entered. Nothing goes over an airbag or across the way it opens.");
        Row("saw", "Guards on, both sides of the cut supported, hands clear; eyes, ears and lungs protected. A bent panel springs: clamp it or have a second pair of hands before the first screw goes in or out.");
    }

    private void PrintAll(Severity severity)
    {
        foreach ((string of, Finding finding) in _findings.Where(each => each.Finding.Severity == severity))
        {
            Row(of, Rounded(finding.Message));
        }
    }

    private void PrintBend()
    {
        Head("ARCS AND BEND");
        foreach ((FittedCircle fit, Length u) in answers.Across.Zip(_survey.Band.Arcs, static (fit, arc) => (fit, arc.U)))
        {
            Row("across", $"at u {Tape(u)}: {Circle(fit)}");
        }

        Row("along", Circle(answers.Along));
        foreach ((BendVerdict bend, RowsSearch least) in answers.Bends.Zip(answers.Least))
        {
            Row(bend.Follows ? "YES" : "NO", $"face grain {(bend.Panel.Sheet.Grain == BendGrain.AlongTheAxis ? "along the van" : "up the wall, around the curve")}: {(bend.PeakRadius is { } peak ? $"bent to R {Whole(peak)} at its tightest" : "stays straight")}, R {Up(bend.MinimumRadius)} or more is allowed; {(least.Rows is { } rows ? $"{rows} rows at equal distances are the least that serve" : "no number of rows serves")}");
        }

        if (answers.Double is { } both)
        {
            Row("both", $"ways at once: {Plain(100 * both.Share, 0)}% of what a flat sheet takes; up to {Floor(both.LargestShorterSide)} high it would take these curves");
        }
    }

    private void PrintPanels()
    {
        Head("PANELS: cut sizes in mm (in), width along the van by height; face up");
        foreach ((PanelSplitPlan split, Wall wall) in answers.Splits.Zip(_survey.Walls))
        {
            Row(wall.Side, $"{(split.Joints.Count == 0 ? "one panel" : $"joints on ribs at u {string.Join(", ", split.Joints.Select(static joint => Tape(joint.Place)))}: no fewer panels fit sheet, hands and roll")}; the heaviest is {Plain(split.Panels.Max(static panel => panel.Mass!.Value.Kilograms), 1)} kg");
        }

        Line($"  {"panel",-8} {"what",-9} {"width",-18} {"height",-18} note");
        foreach (IGrouping<string, Piece> same in answers.Pieces.GroupBy(piece => string.Join('\n', Block(piece, piece.Made(_survey).Panels[0]))))
        {
            string label = Names(same);
            foreach (string line in same.Key.Split('\n'))
            {
                Row(label, line);
                label = string.Empty;
            }
        }

        Row("corners", $"cut {Tape(answers.Pieces[0].Made(_survey).Panels[0].CornerCut ?? default)} off both ways at each corner of the cloth that is not pleated");
    }

    /// <summary>A panel's lines; panels with the same lines stand together.</summary>
    private IEnumerable<string> Block(Piece piece, WrappedPanel panel)
    {
        yield return Size("finished", panel.FinishedWidth, panel.FinishedHeight, $"u {Pair(Sum(piece.From, panel.Start))} to {Pair(Sum(piece.From, panel.Start, panel.FinishedWidth))}");
        yield return Size("ply", panel.PlyWidth, panel.PlyHeight, $"face grain along the {(answers.IsAlong ? "width" : "height")}");
        if (panel.FoamWidth.Millimeters > 0)
        {
            yield return Size("foam", panel.FoamWidth, panel.FoamHeight, "flush with the ply");
        }

        yield return Size("cloth", panel.ClothWidth, panel.ClothHeight, "the ply in its middle");
        foreach (WindowCutOut hole in panel.Windows)
        {
            yield return $"hole in the ply{(panel.FoamWidth.Millimeters > 0 ? " and foam" : string.Empty)}: {Fine(hole.PlyWidth)} by {Fine(hole.PlyHeight)}, corners R {Fine(hole.PlyRadius)}; {Fine(hole.PlyFromFront)} from the front, {Fine(hole.PlyFromBottom)} up";
            yield return $"hole in the cloth: {Fine(hole.ClothWidth)} by {Fine(hole.ClothHeight)}; {Fine(hole.ClothFromFront)} from the front, {Fine(hole.ClothFromBottom)} up; {hole.ReliefCutsPerCorner} relief cuts in each corner, the middle one {Fine(hole.ReliefCut)}";
        }

        if (piece.Taper.Millimeters > 0)
        {
            yield return $"rear edge on the slant: each width is {Tape(piece.Taper)} less at the {(_survey.Band.RearEdge.Head.Millimeters > _survey.Band.RearEdge.Foot.Millimeters ? "head" : "foot")}";
        }

        static string Size(string what, Length width, Length height, string note) => $"{what,-9} {Cut(width),-18} {Cut(height),-18} {note}";
    }

    private void PrintFixings()
    {
        Head("FIXINGS: places along each row from the ply's front edge, in mm (in)");
        foreach (MetalScrewChoice screw in answers.Screws)
        {
            string behind = screw.Job.Behind.Kind == BehindKind.Wire ? "the wire" : "the outer skin";
            Row("screw", screw.Chosen is { } chosen ? $"{screw.Job.Screws.Name}, {FormatMillimetres(chosen.Length.Nominal)} long, a washer under its head; its tip stays {Floor(chosen.WorstClearance)} or more from {behind}{(screw.PilotHole is { } hole ? $"; drill {Fine(hole)} in the metal" : string.Empty)}" : $"NONE of these lengths serves where {behind} is behind");
        }

        Row("holds", $"{Plain(answers.Screws[0].Hold!.Value.Newtons, 0)} N a screw for good in the metal; the sheet pulls {Plain(answers.Pieces[0].Held.Rows.Max(static row => row.PullPerWidth.NewtonsPerMeter), 0)} N a metre at the row that pulls most, and stands off up to {Fine(answers.Pieces[0].Held.StandOff)} between rows");
        Row("rows", $"need metal all along, a rail or a strip on the ribs: at v {string.Join(", ", _survey.Band.Rows.Select(Tape))}, which is {string.Join(", ", answers.Rows.Select(static row => Fine(row)))} up the ply");
        foreach (IGrouping<string, Piece> same in answers.Pieces.GroupBy(static piece => string.Join("; ", piece.Fixings.Rows.GroupBy(static row => string.Join(", ", row.Positions.Select(Pair)))
            .Select(static rows => $"{rows.Count()} row{(rows.Count() > 1 ? "s" : string.Empty)} of {rows.First().Positions.Count}: {rows.Key}; up to {Plain(Math.Ceiling(rows.Max(static row => row.GreatestLoad.Newtons)), 0)} N each"))))
        {
            Row(Names(same), same.Key);
        }

        // Fixings are placed by loads alone: those that fall in an opening, or nearer to it than a washer, are named.
        foreach ((Piece piece, WindowCutOut hole) in answers.Pieces.SelectMany(piece => piece.Made(_survey).Panels[0].Windows.Select(hole => (piece, hole))))
        {
            foreach (PanelFixingRow row in piece.Fixings.Rows.Where(row => Falls(row.Position, hole.PlyFromBottom, hole.PlyHeight)))
            {
                string[] at = [.. row.Positions.Where(place => Falls(place, hole.PlyFromFront, hole.PlyWidth)).Select(Tape)];
                Row(piece.Name, $"row v {Tape(Sum(row.Position, answers.EdgeOff))} runs through the opening: {(at.Length > 0 ? $"move the fixing at {string.Join(", ", at)}, and " : string.Empty)}put one on each side of it, {Tape(Mm(15))} from its edge");
            }
        }
    }

    private static bool Falls(Length at, Length from, Length size) => at.Millimeters > from.Millimeters - 15 && at.Millimeters < from.Millimeters + size.Millimeters + 15;

    private void PrintSheets(NestingPlan plan)
    {
        Head("PLY: sheets to buy, pieces, cuts in order; mm (in) off the sheet's corner, length along its grain");
        foreach (SheetPurchase buy in plan.Purchases)
        {
            Row("buy", $"{buy.Count} of {Tape(buy.Sheet.Length)} along the grain by {Tape(buy.Sheet.Width)}: {Money(buy.Cost)}");
        }

        Row("cost", plan.Proven ? $"{Money(plan.Cost)}: no other layout costs less (proven)" : $"{Money(plan.Cost)}{(plan.LeastCost is { } least ? $", {Money(least)} at least: that nothing cheaper exists is not proven" : string.Empty)}");
        (string near, string far) = answers.IsFrontFar("L") ? ("R", "L") : ("L", "R");
        Row("lie", $"good face up, the sheet's corner at the lower left: the front {(answers.IsAlong ? "end" : "side")} of a panel {far} is far from the corner, of a panel {near} near it, and its foot is toward the near {(answers.IsAlong ? "side" : "end")}");
        foreach ((NestedSheet sheet, int i) in plan.Sheets.Select(static (sheet, i) => (sheet, i)))
        {
            Line($"  {(sheet.IsOffcut ? "offcut" : "sheet"),-6} {i + 1}: {Pair(sheet.Length)} by {Pair(sheet.Width)}\n  {"piece",-8} {"length",-18} {"width",-18} {"from the end",-18} {"from the side",-18} front");
            foreach (NestedPiece piece in sheet.Pieces)
            {
                Line($"  {piece.Name,-8} {Cut(piece.Length),-18} {Cut(piece.Width),-18} {Cut(piece.Along),-18} {Cut(piece.Across),-18} {(answers.IsFrontFar(piece.Name!) ? "far" : "near")}");
            }

            foreach ((string? name, IReadOnlyList<MeasuredPoint> corners) in sheet.Pieces.Where(piece => plan.Job.Parts[piece.Part].Outline is not null).Select(static piece => (piece.Name, piece.Corners())))
            {
                Row(name!, $"rear edge on the slant: from {Cut(corners[1].Along)}, {Cut(corners[1].Offset)} to {Cut(corners[2].Along)}, {Cut(corners[2].Offset)}");
            }

            Line($"  {"cut",-3} {"way",-16} {"set to",-18} {"it lies at",-18} {"from",-16} to");
            foreach (SheetCut cut in sheet.Cuts)
            {
                Line($"  {cut.Number,-3} {(cut.IsTrim ? "trim, " : string.Empty) + (cut.IsAlongLength ? "rip" : "crosscut"),-16} {Cut(cut.Size),-18} {Cut(cut.Position),-18} {Pair(cut.Start),-16} {Pair(cut.End)}");
            }

            foreach (SheetRemnant left in sheet.Kept)
            {
                Row("keep", $"{Tape(left.Length)} by {Tape(left.Width)}");
            }
        }
    }

    private void PrintRolls(in WrapVerdict two)
    {
        Head("CLOTH AND FOAM: places on the roll in mm (in), off its end and its left edge");
        foreach ((string name, RollPlan roll) in answers.Rolls)
        {
            Row("buy", $"{Tape(roll.LengthToBuy)} of {name}, {Tape(roll.Job.Width)} wide; the pieces take {Tape(roll.Length)}{(roll.Proven ? ", and no layout takes less" : $", {Tape(roll.LeastLength)} at least")}; {Plain(100 * roll.Used, 0)}% ends in pieces");
            Line($"  {"piece",-8} {"along the roll",-18} {"across",-18} {"off the end",-18} off the edge");
            foreach (RollPiece piece in roll.Pieces)
            {
                Line($"  {piece.Name,-8} {Pair(piece.Along),-18} {Pair(piece.Across),-18} {Pair(piece.FromEnd),-18} {Pair(piece.FromEdge)}{(piece.IsTurned ? ", turned" : string.Empty)}");
            }
        }

        Row("arrow", _survey.Build.Nap is NapDirection.None or NapDirection.Unknown ? "mark on the back of every piece of cloth which end is up" : $"mark on the back of every piece of cloth an arrow along the roll, as the roll's own points: {Survey.NapWords[(int)_survey.Build.Nap].Replace(" ", " the ", StringComparison.Ordinal)} on the wall");
        Row("glue", $"{Plain(answers.Glue.Containers, 2)} litres, {answers.Glue.ToBuy} to buy, for {Plain(answers.Glue.Bonded.SquareMeters, 2)} m² of bond, both faces coated: {Money(answers.Glue.ToBuy * _survey.Adhesive.Price)}");
        Row("staples", $"{answers.Staples!.Count} with legs of {Fine(_survey.StapleLeg)}: {Fine(answers.Staples.Depth)} deep, {Fine(answers.Staples.LeftBeforePoint)} of the thinnest ply before the point; {(answers.Staples.LongestLeg is { } longest ? $"legs up to {Fine(longest)} will do" : "no leg will do: glue only")}");
        Head("FOAM-BACKED CLOTH OR SEPARATE FOAM");
        Row("backed", $"materials {Money(two.BackedMaterials)}, {Plain(two.BackedHours.TotalHours, 1)} hours: {Tape(answers.Backed!.LengthToBuy)} to buy, {answers.GlueBacked.ToBuy} litres");
        Row("separate", $"materials {Money(two.SeparateMaterials)}, {Plain(two.SeparateHours.TotalHours, 1)} hours: {Tape(answers.Cloth!.LengthToBuy)} of cloth, {Tape(answers.Foam!.LengthToBuy)} of foam, {answers.GlueSeparate.ToBuy} litres");
        Row("so", two.BreakEvenRate is { } rate ? $"both cost the same where an hour is worth {Money(rate)}: above that {Way(two.CheaperAbove)} is cheaper, below it {Way(two.CheaperBelow)}" : $"{Way(two.CheaperAbove)} is cheaper whatever an hour is worth");
    }

    private void PrintRest()
    {
        Head("NOTES");
        PrintAll(Severity.Note);
        Head("DEFAULTS TAKEN, and what each rests on");
        foreach (IGrouping<string, DefaultUsed> same in answers.All().SelectMany(static each => each.Defaults).GroupBy(static used => used.Source.ToString()))
        {
            Row("-", $"{string.Join(", ", same.Select(static used => $"{used.Figure.Name.Replace('-', ' ')} {Plain(used.Figure.Value, 4)} {used.Figure.Unit}".TrimEnd()).Distinct())}: {same.Key}");
        }

        Row("-", $"nothing within {Tape(Mm(30))} to either side of a wire; depths behind the metal {Tape(Mm(3))} off either way (default, judgement)");
    }

    private static string Circle(FittedCircle fit) => fit.Radius is { } radius ? $"R {Whole(Mm(Math.Abs(radius.Millimeters)))}{(radius.Millimeters < 0 ? ", bulging into the room" : string.Empty)}{(fit.RadiusStandardError is { } error ? $", give or take {Whole(error)}" : string.Empty)}; {Fine(Mm(Math.Abs(fit.OverChord.Rise.Millimeters)))} under {Tape(fit.OverChord.Chord)}, {Tape(fit.OverChord.ArcLength)} round the curve" : "flat, as far as the readings tell";

    private static string Names(IEnumerable<Piece> pieces) => string.Join(",", pieces.Select(static piece => piece.Name));

    private static string Way(WrapAdvantage way) => way switch { WrapAdvantage.FoamBacked => "foam-backed cloth", WrapAdvantage.SeparateFoam => "separate foam", _ => "neither" };

    private static Length Sum(params Length[] lengths) => Mm(Math.Round(lengths.Sum(static length => length.Millimeters), 6));

    private static string Tape(Length length) => $"{FormatMillimetres(length, 0)} ({FormatInches(length)})";

    /// <summary>Without units, for columns whose head names them.</summary>
    private static string Pair(Length length) => Regex.Replace(Tape(length), " (mm|in)", string.Empty);

    private static string Cut(Length length) => Regex.Replace($"{FormatMillimetres(length)} ({FormatInches(length, 64)})", " (mm|in)", string.Empty);

    private static string Fine(Length length) => FormatMillimetres(length, 1);

    private static string Whole(Length length) => FormatMillimetres(length, 0);

    private static string Up(Length length) => FormatMillimetres(Mm(Math.Ceiling(Math.Round(length.Millimeters, 6))), 0);

    private static string Floor(Length length) => FormatMillimetres(Mm(Math.Floor(Math.Round(length.Millimeters, 6))), 0);

    private static string Money(decimal amount) => amount.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Plain(double value, int decimals) => Math.Round((decimal)value, decimals, MidpointRounding.AwayFromZero).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);

    /// <summary>The library writes micrometres; a bench reads tenths, and whole millimetres of what is longer than a hand.</summary>
    private static string Rounded(string message) => Regex.Replace(message, @"(?<![\w.])(\d+\.\d+) (mm|N)\b", static match =>
        double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) is var value && value < 1 ? match.Value : $"{Plain(value, value < 100 ? 1 : 0)} {match.Groups[2].Value}", RegexOptions.CultureInvariant);

    private void Head(string text) => Line($"\n{text}\n{new string('-', Width)}");

    private void Line(string text) => _text.Append(text).Append('\n');

    /// <summary>A label and its text, broken at spaces where it is too wide.</summary>
    private void Row(string label, string text)
    {
        string lead = $"  {label,-8} ";
        while (lead.Length + text.Length > Width && text.LastIndexOf(' ', Width - lead.Length) is > 0 and int cut)
        {
            Line(lead + text[..cut]);
            (lead, text) = (new string(' ', 11), text[(cut + 1)..]);
        }

        Line(lead + text);
    }
}
