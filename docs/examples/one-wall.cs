#:project ../../src/FinishKit/FinishKit.csproj

// One wall of a van and its ceiling, from what a builder measures to what the bench needs.
//
//   dotnet run docs/examples/one-wall.cs                      the demo van in one-wall.json beside this file
//   dotnet run docs/examples/one-wall.cs my-van.json          your own
//   dotnet run docs/examples/one-wall.cs --workings           every step of every answer, with what it rests on
//
// Read it from the top: what is measured (records), how it is read and checked (Survey), what is asked of the library
// (Answers, about two lines a calculator), what the bench gets (BenchSheet).
//
// A file that cannot be read as meant is refused whole: every mistake on standard error with its place, value and what is
// allowed, nothing computed, exit code 1. A problem of the design is an answer: it comes first on the sheet, exit code 0.
using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using System.Text.RegularExpressions;
using FinishKit;
using UnitsNet;
using static FinishKit.Measure;

return OneWall.Run(args);

/// <summary>The command line.</summary>
internal static class OneWall
{
    private const string Usage =
        """
        usage: dotnet run one-wall.cs [file.json] [--workings]
          file.json    what was measured; without it, one-wall.json beside the program
          --workings   print every step of every answer, with what it rests on

        """;

    internal static int Run(string[] args)
    {
        string[] files = [.. args.Where(static arg => !arg.StartsWith('-'))];
        string[] options = [.. args.Where(static arg => arg.StartsWith('-'))];
        if (options is ["--help"] or ["-h"])
        {
            Write(Console.OpenStandardOutput(), Usage);
            return 0;
        }

        if (files.Length > 1 || files.Contains(string.Empty) || options is not ([] or ["--workings"]))
        {
            string wrong = options is [] or ["--workings"] ? "one file, please" : "unknown option, or one given twice";
            Write(Console.OpenStandardError(), $"one-wall: {wrong}: {Survey.Quote(string.Join(' ', args))}\n{Usage}");
            return 1;
        }

        // The working directory is the caller's; the default file lies beside this program.
        string path = files.Length == 1 ? files[0] : Path.Combine((string?)AppContext.GetData("EntryPointFileDirectoryPath") ?? AppContext.BaseDirectory, "one-wall.json");
        Troubles troubles = new();
        Answers? answers = Survey.Read(path, troubles) is { } survey ? new Answers(survey, troubles) : null;
        if (answers is null || troubles.Any)
        {
            Write(Console.OpenStandardError(), $"one-wall: {Path.GetFileName(path)} cannot be read as meant; nothing was computed.\n{troubles}");
            return 1;
        }

        Write(Console.OpenStandardOutput(), new BenchSheet(answers).Text(options.Length > 0));
        return 0;
    }

    /// <summary>Bytes, not a console writer: the same UTF-8 under every culture and code page.</summary>
    private static void Write(Stream stream, string text)
    {
        using (stream)
        {
            stream.Write(Encoding.UTF8.GetBytes(text.ReplaceLineEndings("\n")));
        }
    }
}

// ---------------------------------------------------------------------------------------------------------------------------
// What is measured. u runs along the van, v up the girth from the furniture line. A Length stands as text with its unit.

internal sealed record Survey(string Van, [property: JsonPropertyName("survey")] string Revision, string UFrom, Wall Wall, Ceiling Ceiling, Finish Finish)
{
    private const int MostBytes = 1_000_000;

    /// <summary>The survey in a file; null where its members are not as meant.</summary>
    internal static Survey? Read(string path, Troubles troubles)
    {
        try
        {
            FileInfo file = new(path);
            if (!file.Exists || file.Length is 0 or > MostBytes)
            {
                troubles.Add(path, Directory.Exists(path) ? "is a folder, not a file" : !file.Exists ? "no such file" : file.Length == 0 ? "is empty" : "is larger than 1 MB");
                return null;
            }

            byte[] bytes = File.ReadAllBytes(path);
            using JsonDocument document = JsonDocument.Parse(bytes.AsMemory(bytes.AsSpan().StartsWith("\uFEFF"u8) ? 3 : 0), new JsonDocumentOptions { MaxDepth = 16 });
            return Inspect(document.RootElement, SurveyJson.Default.Survey, "$", troubles) ? document.RootElement.Deserialize(SurveyJson.Default.Survey) : null;
        }
        catch (JsonException exception)
        {
            string message = exception.Message;
            int place = message.IndexOf(" LineNumber:", StringComparison.Ordinal);
            troubles.Add(FormattableString.Invariant($"line {exception.LineNumber + 1}, byte {exception.BytePositionInLine + 1}"), "not JSON: " + (place < 0 ? message : message[..place]));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            troubles.Add(path, "cannot be read: " + exception.Message);
        }

        return null;
    }

    /// <summary>
    /// All mistakes of members and lengths at once, with their paths: a deserialiser stops at the first. What a record asks for
    /// is read off the generated metadata.
    /// </summary>
    /// <returns>Whether every member is there and of its kind; a length that cannot be read is a mistake of its own.</returns>
    private static bool Inspect(JsonElement element, JsonTypeInfo type, string path, Troubles troubles)
    {
        Type wanted = Nullable.GetUnderlyingType(type.Type) ?? type.Type;
        (bool isKind, string words) = wanted == typeof(Length) ? (element.ValueKind == JsonValueKind.String, "a length with its unit, as text: \"19 mm\", \"3/4 in\"")
            : wanted == typeof(string) ? (element.ValueKind == JsonValueKind.String, "text")
            : wanted == typeof(bool) ? (element.ValueKind is JsonValueKind.True or JsonValueKind.False, "true or false")
            : wanted == typeof(int) ? (element.ValueKind == JsonValueKind.Number && element.TryGetInt32(out _), "a whole number")
            : wanted == typeof(double) ? (element.ValueKind == JsonValueKind.Number && double.IsFinite(element.GetDouble()), "a number")
            : wanted.IsArray ? (element.ValueKind == JsonValueKind.Array && element.GetArrayLength() <= 100, "a list of at most 100")
            : (element.ValueKind == JsonValueKind.Object, "an object with " + string.Join(", ", type.Properties.Select(static member => member.Name)));
        if (!isKind)
        {
            string found = element.ValueKind is JsonValueKind.Object or JsonValueKind.Array ? "a" + (element.ValueKind == JsonValueKind.Array ? " list" : "n object") : Quote(element.GetRawText());
            troubles.Add(path, $"{found}; allowed is {words}");
            return false;
        }

        bool isReadable = true;
        if (wanted == typeof(Length))
        {
            troubles.Add(CheckLength(element.GetString()), path, ("text", path));
        }
        else if (wanted == typeof(string) && (element.GetString()!.Trim().Length is 0 or > 60 || element.GetString()!.Any(static c => char.IsControl(c) || char.IsSurrogate(c) || char.GetUnicodeCategory(c) is UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator)))
        {
            troubles.Add(path, $"{Quote(element.GetString()!)}; allowed are 1 to 60 plain characters");
        }
        else if (wanted.IsArray)
        {
            JsonTypeInfo entry = SurveyJson.Default.GetTypeInfo(wanted.GetElementType()!)!;
            for (int i = 0; i < element.GetArrayLength(); i++)
            {
                isReadable &= Inspect(element[i], entry, FormattableString.Invariant($"{path}[{i}]"), troubles);
            }
        }
        else if (element.ValueKind == JsonValueKind.Object)
        {
            HashSet<string> seen = [];
            foreach (JsonProperty member in element.EnumerateObject())
            {
                JsonPropertyInfo? known = type.Properties.FirstOrDefault(property => property.Name == member.Name);
                string place = known is null ? $"{path}[{Quote(member.Name)}]" : $"{path}.{known.Name}";
                if (known is null || !seen.Add(member.Name))
                {
                    troubles.Add(place, known is null ? "unknown member; allowed are " + string.Join(", ", type.Properties.Select(static property => property.Name)) : "given more than once");
                    isReadable = false;
                    continue;
                }

                isReadable &= Inspect(member.Value, SurveyJson.Default.GetTypeInfo(known.PropertyType)!, place, troubles);
            }

            foreach (JsonPropertyInfo missing in type.Properties.Where(property => property.IsRequired && !seen.Contains(property.Name)))
            {
                troubles.Add($"{path}.{missing.Name}", "missing");
                isReadable = false;
            }
        }

        return isReadable;
    }

    internal static string Quote(string text) => "\"" + string.Concat((text.Length <= 60 ? text : text[..60] + "...").Select(static c => char.IsControl(c) || char.IsSurrogate(c) || char.GetUnicodeCategory(c) == UnicodeCategory.Format ? '?' : c)).Trim('"') + "\"";

    /// <summary>The same survey with every u from the front; a mirrored file gives the same sheet.</summary>
    internal Survey FromFront() => !UFrom.Equals("rear", StringComparison.OrdinalIgnoreCase) ? this : this with
    {
        Wall = Wall with
        {
            Ribs = [.. Wall.Ribs.Select(rib => rib with { U = Less(Wall.Length, rib.U) })],
            Windows = [.. Wall.Windows.Select(window => window with { From = Less(Wall.Length, window.To), To = Less(Wall.Length, window.From) })],
        },
        Ceiling = Ceiling with
        {
            Bows = [.. Ceiling.Bows.Select(bow => Less(Ceiling.Length, bow))],
            Vent = Ceiling.Vent is { } vent ? vent with { From = Less(Ceiling.Length, vent.To), To = Less(Ceiling.Length, vent.From) } : null,
        },
    };

    /// <summary>On the grid of a nanometre, so that inches and millimetres meet.</summary>
    internal static Length Less(Length one, Length other) => Mm(Math.Round(one.Millimeters - other.Millimeters, 6));
}

internal sealed record Wall(string Side, Length Length, Length FurnitureLine, Band[] Bands, Bow UpperBandBow, Bow BowAlong, EdgeMark[] RearEdge, Rib[] Ribs, Rail[] Rails, Window[] Windows, Wire[] Wires);

/// <summary>A band of the wall, the lowest first: where it ends above the floor, its size up the girth, its lean, what is behind.</summary>
internal sealed record Band(Length Top, Length Girth, double LeanDegrees, Length Cavity);

/// <summary>A straightedge and the gap under its middle.</summary>
internal sealed record Bow(Length Chord, Length Rise);

/// <summary>How far the rear edge comes forward at a height.</summary>
internal sealed record EdgeMark(Length V, Length Forward);
internal sealed record Rib(Length U, Length Width);
internal sealed record Rail(Length V, Length Width);
internal sealed record Window(Length From, Length To, Length Bottom, Length Top, Length CornerRadius);

/// <summary>A wire along the van: where its middle runs, and between which depths behind the furring.</summary>
internal sealed record Wire(Length V, Length Diameter, Length DepthFrom, Length DepthTo);
internal sealed record Ceiling(Length Length, Bow Front, Bow Rear, Length[] Bows, Length Cavity, int FixingsPerStrip, Vent? Vent = null);
internal sealed record Vent(Length From, Length To, Length Width);
internal sealed record Finish(Boards Boards, Furring Furring, Nails Nails, Panel Panel, Slats Slats, double? BreakEndsCourseDegrees = null, Length? DepthError = null);
internal sealed record Boards(string Species, Length Width, Length Thickness);
internal sealed record Furring(string Sheet, Length Thickness, Length PlusMinus, Length SheetLength, Length SheetWidth, Length? StripWidth = null);
internal sealed record Nails(string Series, int Count);
internal sealed record Panel(string Sheet, int Rows);
internal sealed record Slats(string Species, Length Width, Length Thickness, Length GapLeast, Length GapMost);

/// <summary>Generated, because a single-file program has no reflection to serialise with.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.KebabCaseLower,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    AllowDuplicateProperties = false,
    Converters = [typeof(LengthJson)])]
[JsonSerializable(typeof(Survey))]
internal sealed partial class SurveyJson : JsonSerializerContext;

/// <summary>A length as people write it. One that cannot be read has been reported by then and stands as nothing.</summary>
internal sealed class LengthJson : JsonConverter<Length>
{
    public override Length Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        TryParseLength(reader.GetString(), out Length length) ? Survey.Less(length, Mm(0)) : default;

    public override void Write(Utf8JsonWriter writer, Length value, JsonSerializerOptions options) => writer.WriteStringValue(FormatMillimetres(value, 6));
}

/// <summary>Every mistake with its place in the file.</summary>
internal sealed class Troubles
{
    private const int MostShown = 100;
    private readonly List<(string Where, string What)> _all = [];

    internal bool Any => _all.Count > 0;

    internal void Add(string where, string what) => _all.Add((where, what));

    /// <summary>Problems as a Check method names them, put at their places in the file.</summary>
    internal void Add(IReadOnlyList<InputProblem> problems, string otherwise, params (string Parameter, string Path)[] places)
    {
        foreach (InputProblem problem in problems)
        {
            (string parameter, string path) = places.Where(place => problem.Parameter.StartsWith(place.Parameter, StringComparison.Ordinal)).OrderByDescending(static place => place.Parameter.Length).FirstOrDefault(("", otherwise));
            Add(path + problem.Parameter[parameter.Length..], $"{problem.Value}; allowed is {problem.Allowed}");
        }
    }

    internal bool At(string path) => _all.Exists(trouble => trouble.Where.StartsWith(path, StringComparison.Ordinal));

    internal void OneOf(string word, string path, IReadOnlyList<string> allowed)
    {
        if (!At(path) && !allowed.Contains(word, StringComparer.OrdinalIgnoreCase))
        {
            Add(path, $"{Survey.Quote(word)}; allowed are {string.Join(", ", allowed)}");
        }
    }

    public override string ToString() => string.Concat(_all.Take(MostShown).Select(static trouble => $"  {trouble.Where}: {trouble.What}\n"))
        + (_all.Count > MostShown ? FormattableString.Invariant($"  and {_all.Count - MostShown} more\n") : string.Empty);
}

// ---------------------------------------------------------------------------------------------------------------------------
// What is asked of the library. Each calculator checks its input first (Check..., nothing thrown), so that one refusal names
// every mistake of the file; then it answers.

internal sealed record Bend(BendVerdict Verdict, HoldDownResult Hold, RowsSearch Rows);

internal sealed class Answers
{
    private readonly Troubles _troubles;

    internal Answers(Survey survey, Troubles troubles)
    {
        _troubles = troubles;
        CheckSurvey(survey);
        Survey = survey.FromFront();
        (Wall wall, Ceiling ceiling, Finish finish) = (Survey.Wall, Survey.Ceiling, survey.Finish);

        // Radii, from a straightedge and the gap under it.
        UpperBow = ArcOf(wall.UpperBandBow, "$.wall.upper-band-bow");
        BowAlong = ArcOf(wall.BowAlong, "$.wall.bow-along");
        Front = ArcOf(ceiling.Front, "$.ceiling.front");
        Rear = ArcOf(ceiling.Rear, "$.ceiling.rear");

        // The largest bay that the boards take.
        Species = NamedWood(finish.Boards.Species, "$.finish.boards.species");
        Board = new BeamSection(finish.Boards.Width, finish.Boards.Thickness, Species?.Elasticity ?? default) { BendingStrength = Species?.BendingStrength, ElasticitySource = Species?.ElasticitySource, StrengthSource = Species?.BendingStrengthSource };
        Bay = Ask(() => BoardSpan.CheckLargestBay(Board), () => BoardSpan.LargestBay(Board), ("section.Width", "$.finish.boards.width"), ("section.Thickness", "$.finish.boards.thickness"), ("section", "$.finish.boards.species"));

        // The furring strips: ends, jambs, heads and sills, along the breaks that end a course, and between them on ribs.
        Sheet = NamedPly(finish.Furring.Sheet, "$.finish.furring.sheet");
        PlywoodBending? ply = Sheet?.Bending;
        FurringFace face = new(wall.Length, Girth, Bay.LargestBay)
        {
            RearAtFoot = Survey.Less(wall.Length, wall.RearEdge.FirstOrDefault()?.Forward ?? default),
            RearAtHead = Survey.Less(wall.Length, wall.RearEdge.LastOrDefault()?.Forward ?? default),
            Openings = [.. wall.Windows.Select(static window => new FaceOpening(window.From, window.To, window.Bottom, window.Top))],
            Breaks = [.. wall.Bands.Skip(1).Select((band, i) => new FaceBreak(FootOf(i + 1), Angle.FromDegrees(band.LeanDegrees - wall.Bands[i].LeanDegrees)))],
            Ribs = [.. Ribs(wall).Select(static rib => rib.Member)],
            Rails = [.. wall.Rails.Select(static rail => new ShellMember(rail.V, rail.Width))],
            StripSection = new BeamSection(StripWidth, ply?.MeanThickness ?? default, ply?.ElasticityAlong ?? default) { BendingStrength = ply?.StrengthAlong, Grade = SectionGrade.Plywood, ElasticitySource = ply?.Source, StrengthSource = ply?.Source },
            BreakLimit = finish.BreakEndsCourseDegrees is { } limit ? Angle.FromDegrees(limit) : null,
        };
        Furring = Ask(() => FurringLayout.Check(face), () => FurringLayout.LayOut(face), [("face.StripSection.Width", "$.finish.furring.strip-width"), ("face.StripSection", "$.finish.furring.sheet"), ("face.BreakLimit", "$.finish.break-ends-course-degrees"), ("face.Openings", "$.wall.windows"), ("face.Rails", "$.wall.rails"), ("face.Breaks", "$.wall.bands"), ("face.Ribs", "$.wall.ribs"), ("face", "$.wall"), ("", "$.finish.boards")]);

        // A board over the bays as they came out, under the same hand.
        Hand = Force.FromNewtons(Bay.DefaultsUsed.FirstOrDefault(static used => used.Figure.Name == "point-load")?.Figure.Value ?? 0);
        Beam board = new(Board, Furring?.Spacing.Bays ?? []);
        BoardAsSetOut = Furring is null ? null : Ask(() => ContinuousBeam.CheckUnderPointLoad(board, Hand), () => ContinuousBeam.UnderPointLoad(board, Hand), ("beam", "$.wall"), ("beam.Section", "$.finish.boards"));

        // The sheets to rip them from.
        RippingJob rip = new(finish.Furring.SheetLength, finish.Furring.SheetWidth, Furring?.Parts ?? []);
        Rip = Furring is null ? null : Ask(() => StripRipping.Check(rip), () => StripRipping.Rip(rip), ("job.SheetLength", "$.finish.furring.sheet-length"), ("job.SheetWidth", "$.finish.furring.sheet-width"));

        // The nail: on a rib, then the same nail between ribs and at the wires.
        FastenerSeries? series = Named(FastenerSeries.All, static entry => entry.Name, finish.Nails.Series, "$.finish.nails.series", static entry => entry.Kind != FastenerKind.WoodScrew);
        Layer furring = new(PlusMinus(finish.Furring.Thickness, finish.Furring.PlusMinus)) { Name = "furring", Sheet = Sheet };
        FastenerJob job = new([Layer.Board(finish.Boards.Thickness), furring], Behind.Metal, series ?? FastenerSeries.Finish16) { Count = finish.Nails.Count };
        (string, string)[] places = [("job.Layers[0]", "$.finish.boards.thickness"), ("job.Layers[1]", "$.finish.furring.thickness"), ("job.Count", "$.finish.nails.count"), ("job", "$.finish.nails"), ("", "$.finish.furring.plus-minus")];
        Nail = Ask(() => FastenerLength.Check(job), () => FastenerLength.Choose(job), places);
        BetweenRibs = [.. wall.Bands.Select((band, i) => Evaluate(Behind.Skin(PlusMinus(band.Cavity, DepthError)), FormattableString.Invariant($"$.wall.bands[{i}].cavity")))];
        AtWires = [.. wall.Wires.Select((wire, i) => Evaluate(Behind.Wire(PlusMinus(wire.DepthFrom, DepthError)), FormattableString.Invariant($"$.wall.wires[{i}].depth-from")))];

        // Thin ply on the upper band: both ways of the grain, and how many rows each would need.
        PanelSheet = NamedPly(finish.Panel.Sheet, "$.finish.panel.sheet");
        Between("$.finish.panel.rows", finish.Panel.Rows, 3, 12);
        Around = Bent(BendGrain.AroundTheCurve);
        Along = Bent(BendGrain.AlongTheAxis);

        // Strips bent over the ceiling's bow, at the tighter end: the furring's sheet, and the thinner ones of its kind.
        Between("$.ceiling.fixings-per-strip", ceiling.FixingsPerStrip, 3, 12);
        CircularArc tight = Math.Abs(Front.Curvature.InverseMillimeters) >= Math.Abs(Rear.Curvature.InverseMillimeters) ? Front : Rear;
        foreach (SheetGoods sheet in SheetGoods.All.Where(sheet => Sheet is not null && sheet.Family == Sheet.Family && sheet.Bending is not null && sheet.Nominal.Millimeters <= Sheet.Nominal.Millimeters).Reverse())
        {
            BentStripCase strip = new(sheet, tight.Radius, Troubled("$.ceiling") ? [] : BentSheet.EqualRows(tight.ArcLength, ceiling.FixingsPerStrip)) { Width = StripWidth };
            Bows.AddRange(Ask(() => BentStrip.Check(strip), () => BentStrip.Judge(strip), ("strip", "$.ceiling"), ("strip.Width", "$.finish.furring.strip-width")) is { } bent ? [bent] : []);
        }

        // How far apart the slats' strips may be: one slat alone carries the hand.
        WoodSpecies? wood = NamedWood(finish.Slats.Species, "$.finish.slats.species");
        BeamSection slat = new(finish.Slats.Width, finish.Slats.Thickness, wood?.Elasticity ?? default) { BendingStrength = wood?.BendingStrength, ElasticitySource = wood?.ElasticitySource, StrengthSource = wood?.BendingStrengthSource };
        SlatBay = Ask(() => BoardSpan.CheckLargestBay(slat, Surface.Ceiling), () => BoardSpan.LargestBay(slat, Surface.Ceiling), ("section.Width", "$.finish.slats.width"), ("section.Thickness", "$.finish.slats.thickness"), ("section", "$.finish.slats.species"));

        // Slats along the ceiling: one number for both ends, and what the curve does to their gaps.
        SlatRun slats = new(Front.ArcLength, finish.Slats.Width) { Stations = [Rear.ArcLength], LeastGap = finish.Slats.GapLeast, GreatestGap = finish.Slats.GapMost };
        Slats = Ask(() => SlatSpread.CheckSpread(slats), () => SlatSpread.Spread(slats), ("run.SlatWidth", "$.finish.slats.width"), ("run.LeastGap", "$.finish.slats.gap-least"), ("run.GreatestGap", "$.finish.slats.gap-most"), ("run", "$.ceiling"));
        SlatsInInches = Slats is null ? null : SlatSpread.Spread(slats with { RoundTo = SetOutStep.SixteenthInch });
        Fits = [.. new[] { Front, Rear }.Select((arc, station) => Fit(arc.Radius, station))];

        FastenerCandidate? Evaluate(Behind behind, string path) =>
            Ask(() => FastenerLength.Check(job with { Behind = behind }), () => Nail?.Chosen is { } nail ? FastenerLength.Evaluate(job with { Behind = behind }, nail.Length.Nominal) : null, [("job.Behind", path), .. places]);

        Bend? Bent(BendGrain grain)
        {
            if (PanelSheet is null || Troubled("$.finish.panel") || Troubled("$.wall"))
            {
                return null;
            }

            BentSheet sheet = BentSheet.Of(PanelSheet, grain);
            IReadOnlyList<Length> rows = BentSheet.EqualRows(wall.Bands[^1].Girth, finish.Panel.Rows);
            BendCase panel = new(sheet, UpperBow.Radius) { Rows = rows, BowAlong = BowAlong.Radius, Girth = wall.Bands[^1].Girth, Width = wall.Length };
            HoldDownCase held = new(sheet, UpperBow.Radius, rows, Mm(1000));
            return Ask(() => PanelBend.CheckJudge(panel), () => new Bend(PanelBend.Judge(panel), HoldDown.OnArc(held), HoldDown.LeastEqualRows(sheet, UpperBow.Radius)), ("panel", "$.wall.upper-band-bow"));
        }

        SlatFit? Fit(Length? radius, int station) => Slats?.Recommended is { } count
            ? Ask(() => SlatCurve.CheckFit(radius, finish.Slats.Width, finish.Slats.Thickness, count.Gaps[station]), () => count.OnCurve(radius, finish.Slats.Thickness, station), ("slatThickness", "$.finish.slats.thickness"), ("radius", "$.ceiling"))
            : null;
    }

    internal readonly Survey Survey;
    internal readonly CircularArc UpperBow, BowAlong, Front, Rear;
    internal readonly WoodSpecies? Species;
    internal readonly BeamSection Board;
    internal readonly BayLimit Bay, SlatBay;
    internal readonly FurringPlan? Furring;
    internal readonly Force Hand;
    internal readonly BeamExtremes? BoardAsSetOut;
    internal readonly RippingPlan? Rip;
    internal readonly SheetGoods? Sheet, PanelSheet;
    internal readonly FastenerChoice? Nail;
    internal readonly IReadOnlyList<FastenerCandidate?> BetweenRibs, AtWires;
    internal readonly Bend? Around, Along;
    internal readonly List<BentStripResult> Bows = [];
    internal readonly SlatChoice? Slats, SlatsInInches;
    internal readonly IReadOnlyList<SlatFit?> Fits;

    internal Length Girth => FootOf(Survey.Wall.Bands.Length);

    /// <summary>Where a band begins, up the girth; the girth for one more than there are.</summary>
    internal Length FootOf(int band) => Survey.Wall.Bands.Take(band).Aggregate(Mm(0), static (sum, below) => Survey.Less(sum, -below.Girth));

    /// <summary>The ribs as members of the shell, those that a window cuts in pieces above and below it.</summary>
    internal static IEnumerable<(Rib Rib, ShellMember Member)> Ribs(Wall wall)
    {
        foreach (Rib rib in wall.Ribs)
        {
            Length from = Mm(0);
            foreach (Window window in wall.Windows.Where(window => window.From.Millimeters < rib.U.Millimeters && rib.U.Millimeters < window.To.Millimeters).OrderBy(static window => window.Bottom.Millimeters))
            {
                yield return (rib, new ShellMember(rib.U, rib.Width) { From = from, To = window.Bottom });
                from = window.Top;
            }

            yield return (rib, new ShellMember(rib.U, rib.Width) { From = from });
        }
    }

    internal Length StripWidth => Survey.Finish.Furring.StripWidth ?? Mm(40);

    internal Length DepthError => Survey.Finish.DepthError ?? Mm(3);

    /// <summary>What the sheet takes of every answer beside its figures: findings, defaults, workings.</summary>
    internal IEnumerable<(string Of, IReadOnlyList<Finding> Findings, IReadOnlyList<DefaultUsed> Defaults, Workings Workings)> All()
    {
        yield return ("nail", Nail!.Findings, Nail.DefaultsUsed, Nail.Explain());
        foreach (FastenerCandidate there in BetweenRibs.Concat(AtWires).OfType<FastenerCandidate>())
        {
            yield return ("nail", there.Findings, [], there.Explain());
        }

        yield return ("bay", Bay.Findings, Bay.DefaultsUsed, Bay.Explain());
        yield return ("board", BoardAsSetOut!.Findings, BoardAsSetOut.DefaultsUsed, BoardAsSetOut.Explain());
        yield return ("strips", Furring!.Findings, Furring.DefaultsUsed, Furring.Explain());
        yield return ("strips", [], Furring.Spacing.DefaultsUsed, Furring.Spacing.Explain());
        yield return ("rip", Rip!.Findings, Rip.DefaultsUsed, Rip.Explain());
        yield return ("curve", UpperBow.Findings, [], UpperBow.Explain());
        (BendVerdict verdict, HoldDownResult hold, RowsSearch _) = Panel;
        yield return ("panel", verdict.Findings, verdict.DefaultsUsed, verdict.Explain());
        yield return ("panel", verdict.Follows ? hold.Findings : [], hold.DefaultsUsed, hold.Explain());
        yield return ("panel", [], [], (verdict == Along!.Verdict ? Around : Along)!.Verdict.Explain());
        yield return ("ceiling", [.. Front.Findings, .. Rear.Findings], [], Front.Explain());
        yield return ("ceiling", [], [], Rear.Explain());
        foreach (BentStripResult strip in Bows)
        {
            yield return ("ceiling", strip == Bows[0] ? strip.Findings : [], strip.DefaultsUsed, strip.Explain());
        }

        yield return ("slats", SlatBay.Findings, SlatBay.DefaultsUsed, SlatBay.Explain());
        yield return ("slats", Slats!.Findings, Slats.DefaultsUsed, Slats.Explain());
        foreach (SlatFit fit in Fits.OfType<SlatFit>())
        {
            yield return ("slats", fit.Findings, fit.DefaultsUsed, fit.Explain());
        }
    }

    /// <summary>The way of the grain to speak of: the one that follows; of two the one with more in hand.</summary>
    internal Bend Panel => new[] { Along!, Around! }.OrderByDescending(static bend => bend.Verdict.Follows).ThenByDescending(static bend => bend.Verdict.Margin ?? double.MaxValue).First();

    /// <summary>An answer, where what it rests on could be read and its check has nothing to say.</summary>
    /// <param name="check">The calculator's check.</param>
    /// <param name="answer">The calculator.</param>
    /// <param name="places">Its parameters, as its check names them, and where they stand in the file.</param>
    private T? Ask<T>(Func<IReadOnlyList<InputProblem>> check, Func<T> answer, params (string Parameter, string Path)[] places)
    {
        if (places.Any(place => Troubled(place.Path)))
        {
            return default;
        }

        IReadOnlyList<InputProblem> problems = check();
        _troubles.Add(problems, places[0].Path, places);
        return problems.Count == 0 ? answer() : default;
    }

    private bool Troubled(string path) => _troubles.At(path);

    private static TolerancedLength PlusMinus(Length nominal, Length deviation) => new(nominal, -deviation, deviation);

    private CircularArc ArcOf(Bow bow, string path) =>
        Ask(() => Arc.CheckFromChordAndRise(bow.Chord, bow.Rise), () => Arc.FromChordAndRise(bow.Chord, bow.Rise), ("chord", path + ".chord"), ("rise", path + ".rise"));

    private SheetGoods? NamedPly(string name, string path) => Named(SheetGoods.All, static sheet => sheet.Name, name, path, static sheet => sheet.Bending is { StrengthBasis: PlywoodStrengthBasis.Characteristic });

    private WoodSpecies? NamedWood(string name, string path) => Named(WoodSpecies.All, static wood => wood.Name, name, path, static wood => wood is { Elasticity: not null, BendingStrength: not null });

    private T? Named<T>(IReadOnlyList<T> all, Func<T, string> nameOf, string name, string path, Func<T, bool> serves)
        where T : class
    {
        List<T> serving = [.. all.Where(serves)];
        _troubles.OneOf(name, path, [.. serving.Select(nameOf)]);
        return serving.Find(entry => string.Equals(nameOf(entry), name, StringComparison.OrdinalIgnoreCase));
    }

    private void Between(string path, double value, double least, double most, string unit = "")
    {
        if (!Troubled(path) && (value < least || value > most))
        {
            _troubles.Add(path, FormattableString.Invariant($"{value}{unit}; allowed is {least} to {most}{unit}"));
        }
    }

    /// <summary>What no calculator asks: that all of it lies on one wall and one ceiling, and that heights, girths and leans belong together.</summary>
    private void CheckSurvey(Survey survey)
    {
        (Wall wall, Ceiling ceiling) = (survey.Wall, survey.Ceiling);
        _troubles.OneOf(survey.UFrom, "$.u-from", ["front", "rear"]);
        _troubles.OneOf(wall.Side, "$.wall.side", ["left", "right"]);

        // What cannot be read bounds nothing.
        double length = Troubled("$.wall.length") ? 1e5 : wall.Length.Millimeters, girth = Troubled("$.wall.bands") ? 1e5 : wall.Bands.Sum(static band => band.Girth.Millimeters), floor = wall.FurnitureLine.Millimeters;
        Between("$.wall.bands", wall.Bands.Length, 1, 10, " bands");
        Between("$.wall.rear-edge", wall.RearEdge.Length, 2, 50, " heights");
        Inside("$.wall.length", wall.Length, 500, 20_000);
        for (int i = 0; i < wall.Bands.Length; i++)
        {
            (Band band, string path) = (wall.Bands[i], FormattableString.Invariant($"$.wall.bands[{i}]"));
            Between(path + ".lean-degrees", band.LeanDegrees, -60, 60, " deg");
            Inside(path + ".girth", band.Girth, 20, 5000);
            double top = floor + (band.Girth.Millimeters * Math.Cos(band.LeanDegrees * Math.PI / 180));
            if (!Troubled(path) && !Troubled("$.wall.furniture-line"))
            {
                Inside(path + ".top", band.Top, Math.Floor(top - 5), Math.Ceiling(top + 5)); // girth and lean make the height, to what a tape and a level tell
            }

            floor = Troubled(path + ".top") ? top : band.Top.Millimeters;
        }

        Each(wall.Ribs, "$.wall.ribs", (rib, path) =>
        {
            Inside(path + ".u", rib.U, 0, length);
            Inside(path + ".width", rib.Width, 1, 500);
        });
        Each(wall.Rails, "$.wall.rails", (rail, path) =>
        {
            Inside(path + ".v", rail.V, 0, girth);
            Inside(path + ".width", rail.Width, 1, 500);
        });
        Each(wall.Windows, "$.wall.windows", (window, path) =>
        {
            Inside(path + ".from", window.From, 0, length);
            Inside(path + ".to", window.To, window.From.Millimeters + 1, length);
            Inside(path + ".bottom", window.Bottom, 0, girth);
            Inside(path + ".top", window.Top, window.Bottom.Millimeters + 1, girth);
        });
        for (int i = 0; i < wall.RearEdge.Length; i++)
        {
            double least = i == 0 ? 0 : wall.RearEdge[i - 1].V.Millimeters + 1;
            Inside(FormattableString.Invariant($"$.wall.rear-edge[{i}].v"), wall.RearEdge[i].V, i == wall.RearEdge.Length - 1 && girth < 1e5 ? girth : least, i == 0 ? 0 : girth);
            Inside(FormattableString.Invariant($"$.wall.rear-edge[{i}].forward"), wall.RearEdge[i].Forward, 0, length / 2);
        }

        Each(wall.Wires, "$.wall.wires", (wire, path) =>
        {
            Inside(path + ".v", wire.V, 0, girth);
            Inside(path + ".diameter", wire.Diameter, 1, 100);
            Inside(path + ".depth-to", wire.DepthTo, wire.DepthFrom.Millimeters, 1000);
        });
        foreach ((Bow bow, string path) in new[] { (ceiling.Front, "$.ceiling.front"), (ceiling.Rear, "$.ceiling.rear") })
        {
            Inside(path + ".chord", bow.Chord, 100, 5000);
            Inside(path + ".rise", bow.Rise, -bow.Chord.Millimeters / 4, bow.Chord.Millimeters / 4);
        }

        Each(ceiling.Bows, "$.ceiling.bows", (bow, path) => Inside(path, bow, 0, ceiling.Length.Millimeters));

        void Inside(string path, Length value, double least, double most) => Between(path, value.Millimeters, Math.Round(least, 6), Math.Round(most, 6), " mm");

        static void Each<T>(T[] list, string path, Action<T, string> look)
        {
            for (int i = 0; i < list.Length; i++)
            {
                look(list[i], FormattableString.Invariant($"{path}[{i}]"));
            }
        }
    }
}

// ---------------------------------------------------------------------------------------------------------------------------
// What the bench gets: problems first, then the sections in the order of the work. Places are given from one datum, never from
// piece to piece; millimetres and inches to 1/16, to 1/64 where a nail's tip or a gap asks for it.

internal sealed class BenchSheet(Answers answers)
{
    private const int Width = 98;

    /// <summary>How far a fixing stays from a wire to either side, unless measured: judgement, 25 to 50 mm.</summary>
    private const double WireSide = 30;

    private readonly StringBuilder _text = new();
    private readonly Survey _survey = answers.Survey;
    private readonly List<(string Of, Finding Finding)> _findings = [.. answers.All().SelectMany(static each => each.Findings.Select(finding => (each.Of, finding))).DistinctBy(static each => each.finding.Message)];

    internal string Text(bool workings)
    {
        PrintHead();
        PrintFindings();
        PrintNail();
        PrintBay();
        PrintStrips();
        PrintRip();
        PrintPanel();
        PrintCeiling();
        PrintSlats();
        PrintRest();
        if (workings)
        {
            Head("WORKINGS: every step, with what it rests on");
            foreach ((_, _, _, Workings steps) in answers.All())
            {
                _text.Append('\n').Append(steps.ToText());
            }
        }

        return _text.ToString();
    }

    private void PrintHead()
    {
        bool isLeft = string.Equals(_survey.Wall.Side, "left", StringComparison.OrdinalIgnoreCase);
        Line($"BENCH SHEET    {_survey.Van}    survey: {_survey.Revision}");
        Line(isLeft ? "LEFT WALL, seen from inside the van            rear  o - - - - - - - - - - - - ->  FRONT" : "RIGHT WALL, seen from inside the van           FRONT  <- - - - - - - - - - - - - o  rear");
        Row("datum", $"u = 0 at the front end of the wall, which is on your {(isLeft ? "right" : "left")}, and runs to the rear, {Tape(_survey.Wall.Length)} long; v = 0 at the furniture line, {Tape(_survey.Wall.FurnitureLine)} above the floor, and runs up along the surface. Left and right of the van are as the driver sits.");
        double v = 0;
        foreach (Band band in _survey.Wall.Bands)
        {
            Row("band", $"v {Tape(Mm(v))} to {Tape(Mm(v + band.Girth.Millimeters))}, up to {Tape(band.Top)} above the floor; leans in {Plain(band.LeanDegrees, 1)} deg; cavity {Tape(band.Cavity)}");
            v += band.Girth.Millimeters;
        }

        foreach (Window window in _survey.Wall.Windows.OrderBy(static window => window.From.Millimeters))
        {
            Row("window", $"u {Tape(window.From)} to {Tape(window.To)}, v {Tape(window.Bottom)} to {Tape(window.Top)}, corners R {Tape(window.CornerRadius)}");
        }

        double limit = _survey.Finish.BreakEndsCourseDegrees ?? answers.Furring!.DefaultsUsed.First(static used => used.Figure.Name == "break-limit").Figure.Value;
        foreach (FaceBreak line in answers.Furring!.Face.Breaks)
        {
            Row("break", $"v {Tape(line.V)}: the lean changes by {Plain(Math.Abs(line.LeanChange.Degrees), 1)} deg, {(Math.Abs(line.LeanChange.Degrees) > limit ? "ends a course: strips on both sides of it" : "courses run on through")} (over {Plain(limit, 1)} deg ends one)");
        }
    }

    /// <summary>Problems and cautions of every answer, before anything else; notes come last.</summary>
    private void PrintFindings()
    {
        List<string> overWires = [.. _survey.Wall.Wires.Select(OverWire).OfType<string>()];
        Head(overWires.Count > 0 || _findings.Exists(static each => each.Finding.Severity == Severity.Problem) ? "PROBLEMS: do not start before these are settled" : "PROBLEMS: none found in what was asked");
        foreach (string over in overWires)
        {
            Row("wire", over);
        }

        foreach ((string of, Finding finding) in _findings.Where(static each => each.Finding.Severity == Severity.Problem))
        {
            Row(of, Rounded(finding.Message));
        }

        Head("CAUTIONS");
        foreach ((string of, Finding finding) in _findings.Where(static each => each.Finding.Severity == Severity.Caution))
        {
            Row(of, Rounded(finding.Message));
        }

        if (answers.SlatBay.LargestBay.Millimeters < BowBay.Millimeters)
        {
            Row("slats", $"The bows are up to {Tape(BowBay)} apart, and one slat alone spans {TapeDown(answers.SlatBay.LargestBay)}: put strips between the bows too, or take thicker slats.");
        }

        Head("BEFORE ANYTHING IS DRIVEN");
        Row("find", "and mark wiring, gas, fuel and brake lines, tanks, airbags and seat-belt anchorages: this sheet knows only what was entered. Disconnect the battery.");
        Row("follow", "local codes, the vehicle maker's guidance for bodybuilders, and licensed practice for gas and electrics. Wear a mask: plywood and board dust; extract it at the tool.");
    }

    /// <summary>The strips' fixings that fall beside a wire: the library places them, and knows nothing of wires.</summary>
    private string? OverWire(Wire wire)
    {
        double side = (wire.Diameter.Millimeters / 2) + WireSide;
        string[] pieces = [.. answers.Furring!.Pieces.Select(static (piece, i) => (piece, Number: i + 1))
            .Where(each => each.piece.Fixings.Any(fixing => Math.Abs(fixing.V.Millimeters - wire.V.Millimeters) < side)).Select(static each => each.Number.ToString(CultureInfo.InvariantCulture))];
        return pieces.Length == 0 ? null : $"Strip {string.Join(", ", pieces)} is fixed to metal within {Tape(Mm(WireSide))} of the wire at v {Tape(wire.V)}: move the wire or shield it, or move those fixings.";
    }

    private void PrintNail()
    {
        FastenerChoice choice = answers.Nail!;
        Head($"NAIL, through the face of a board into furring on a rib: {choice.Job.Series.Name}");
        foreach (Layer layer in choice.Job.Layers)
        {
            Row(layer.Name, $"{Caliper(layer.Thickness.Nominal)}, counted as {Plain(layer.Thickness.Least.Millimeters, 2)} to {FormatMillimetres(layer.Thickness.Greatest, 2)}");
        }

        Row("take", choice.Chosen is { } nail ? $"{Exact(nail.Length.Nominal)}: {(nail.Tip == TipVerdict.Safe ? "safe" : "MARGINAL")} against the rib's metal, tip {Clear(nail.Clearance)}, in the worst case {Clear(nail.WorstClearance)}; bites {Down(nail.Bite)}, in the worst case {Down(nail.WorstBite)}, of {Caliper(nail.LeastBite)} asked" : "NO NAIL of this series");
        Row("job", choice.Chosen is { } driven ? $"{choice.Job.Count} nails: {Plain(driven.ExpectedHits, 4)} expected to touch" : "-");
        if (choice.NextLonger is { } next)
        {
            Row("not", $"{Exact(next.Length.Nominal)}: it {(next.Tip == TipVerdict.Reaches ? "reaches" : "is marginal against")} the rib's metal, tip {Clear(next.Clearance)}, in the worst case {Clear(next.WorstClearance)}");
        }

        foreach (Remedy remedy in choice.Remedies)
        {
            Row("or", Rounded(remedy.Text));
        }

        for (int i = 0; i < answers.BetweenRibs.Count; i++)
        {
            Row(i == 0 ? "no rib" : string.Empty, Behind(FormattableString.Invariant($"band {i + 1}, outer skin {Tape(_survey.Wall.Bands[i].Cavity)} behind the furring"), answers.BetweenRibs[i]));
        }

        for (int i = 0; i < answers.AtWires.Count; i++)
        {
            Wire wire = _survey.Wall.Wires[i];
            Row("wire", Behind($"near side {Tape(wire.DepthFrom)} behind the furring", answers.AtWires[i]));
            double side = (wire.Diameter.Millimeters / 2) + WireSide;
            Row("NO-GO", $"v {Tape(Mm(wire.V.Millimeters - side))} to {Tape(Mm(wire.V.Millimeters + side))}: no screw or rivet that reaches past the furring, along the whole wall");
        }

        string Behind(string what, FastenerCandidate? there) => there is null ? $"{what}: no nail chosen"
            : $"{what}: the same nail {(there.Tip == TipVerdict.Safe ? "is safe" : there.Tip == TipVerdict.Marginal ? "is MARGINAL" : "REACHES it or comes too near")}, tip {Clear(there.WorstClearance)} in the worst case, {Caliper(there.RequiredClearance)} asked";
    }

    private void PrintBay()
    {
        BayLimit bay = answers.Bay;
        Head("BAY: how far apart strips may be, centre to centre");
        Row("boards", $"{answers.Species!.Name}, knotty, {Caliper(answers.Board.Width)} x {Caliper(answers.Board.Thickness)}");
        Row("bay", $"up to {TapeDown(bay.LargestBay)}, governed by {(bay.Governs switch { BayGovernor.Deflection => "deflection", BayGovernor.Stress => "bending stress", _ => "the cap" })}"
            + $"; by deflection {TapeDown(bay.ByDeflection ?? bay.Cap)}, by bending stress {TapeDown(bay.ByStress ?? bay.Cap)}, cap {Tape(bay.Cap)}");
        Row("gives", $"{Caliper(bay.Deflection)} at that bay under {Plain(answers.Hand.Newtons, 0)} N, {Caliper(answers.BoardAsSetOut!.Deflection)} over the bays below; stress {Plain(answers.BoardAsSetOut.Stress.Megapascals, 1)} of {Plain(answers.BoardAsSetOut.AllowedStress?.Megapascals ?? 0, 1)} MPa allowed");
    }

    private void PrintStrips()
    {
        FurringPlan plan = answers.Furring!;
        Head($"FURRING STRIPS, {Tape(answers.StripWidth)} wide: centre lines in mm (in), all off u = 0 and v = 0");
        Line($"  {"no",-3} {"what",-8} {"u",-16} {"v from",-16} {"v to",-16} {"length",-16} fixed to; ends");
        for (int i = 0; i < plan.Pieces.Count; i++)
        {
            FurringPiece piece = plan.Pieces[i];
            bool isLevel = piece.StartV.Millimeters == piece.EndV.Millimeters;
            if (isLevel && i > 0 && plan.Pieces[i - 1].StartV.Millimeters != plan.Pieces[i - 1].EndV.Millimeters)
            {
                Line($"  {"no",-3} {"what",-8} {"v",-16} {"u from",-16} {"u to",-16} {"length",-16} fixed to; ends");
            }

            (Length at, Length from, Length to) = isLevel ? (piece.StartV, piece.StartU, piece.EndU) : (piece.StartU, piece.StartV, piece.EndV);
            string holds = piece.Fixings.Count == 0 ? "NO metal" : !isLevel && piece.BearsAlong is not null ? "rib" : piece.Fixings.All(static fixing => fixing.Rib is not null) ? "ribs" : "rails";
            double angle = Math.Max(piece.StartAngle.Degrees, piece.EndAngle.Degrees);
            Line($"  {i + 1,-3} {What(piece.Role),-8} {Pair(at),-16} {Pair(from),-16} {Pair(to),-16} {Pair(piece.Length),-16} {holds}{(angle > 0 ? $"; {Plain(angle, 1)} deg" : string.Empty)}");
            if (piece.Width.Millimeters < answers.StripWidth.Millimeters)
            {
                Row(string.Empty, $"ripped to {Tape(piece.Width)} wide, for the room there is");
            }
            else if (!isLevel && piece.StartU.Millimeters != piece.EndU.Millimeters)
            {
                Row(string.Empty, $"leans with the edge: at its head u {Tape(piece.EndU)}; length to the long point");
            }
        }

        Row("bays", $"largest {Tape(plan.Spacing.LargestBay)}; {plan.UprightCount} strips up the wall; {Plain(plan.RunningLength.Meters, 1)} m in all: {Plain(plan.UprightLength.Meters, 1)} up the wall, {Plain(plan.TrimmerLength.Meters, 1)} heads and sills, {Plain(plan.BreakLength.Meters, 1)} along breaks");
        EdgeMark[] edge = _survey.Wall.RearEdge;
        (EdgeMark mark, double off) = edge.Select(mark => (mark, edge[0].Forward.Millimeters + ((edge[^1].Forward.Millimeters - edge[0].Forward.Millimeters) * (mark.V.Millimeters - edge[0].V.Millimeters) / answers.Girth.Millimeters) - mark.Forward.Millimeters)).MaxBy(static each => Math.Abs(each.Item2));
        Row("edge", $"the rear strips are straight; the edge lies {Tape(Mm(Math.Abs(off)))} {(off >= 0 ? "behind" : "BEFORE")} the straight line at v {Tape(mark.V)}");
    }

    private static string What(StripRole role) => role switch
    {
        StripRole.End => "end",
        StripRole.Jamb => "jamb",
        StripRole.Joint => "joint",
        StripRole.Trimmer => "trimmer",
        StripRole.Break => "break",
        _ => "between",
    };

    private void PrintRip()
    {
        Furring stock = _survey.Finish.Furring;
        Head($"RIP from {answers.Sheet!.Name}, {Tape(stock.SheetLength)} x {Tape(stock.SheetWidth)}");
        if (answers.Rip!.Recommended is not { } way)
        {
            Row("rip", "NO strips: they are too wide for the sheet");
            return;
        }

        Row("sheets", $"{way.Sheets.Count}{(way.Proven ? string.Empty : $" (at least {way.LeastSheets})")}: {way.RippedStrips} strips {(way.Direction == RipDirection.AlongSheet ? "along" : "across")} the sheet, of {way.Yields.First(each => each.Width.Millimeters == answers.StripWidth.Millimeters).PerSheet} that a sheet gives");
        foreach (IGrouping<string, RippedStrip> same in way.Sheets.SelectMany(static sheet => sheet.Strips).GroupBy(static strip => $"{Pair(strip.Width)} wide: {string.Join(", ", strip.Pieces.Select(Pair))}"))
        {
            Row($"{same.Count()} of", same.Key);
        }
    }

    private void PrintPanel()
    {
        Band band = _survey.Wall.Bands[^1];
        Head($"THIN PLY ON THE UPPER BAND: {answers.PanelSheet!.Name}, {_survey.Finish.Panel.Rows} rows of fixings over {Tape(band.Girth)}");
        Row("curve", $"{Rise(_survey.Wall.UpperBandBow)}: {Radius(answers.UpperBow.Radius)}, from {Radius(answers.UpperBow.LeastRadius(Mm(0.5)))} to {Radius(answers.UpperBow.GreatestRadius(Mm(0.5)))} if the gap was read half a millimetre off");
        foreach ((string grain, (BendVerdict verdict, HoldDownResult hold, RowsSearch rows)) in new[] { ("face grain around the curve", answers.Around!), ("face grain along the van", answers.Along!) })
        {
            Row(verdict.Follows ? "YES" : "NO", $"{grain}: bent to {Radius(verdict.PeakRadius)} at its tightest, {RadiusUp(verdict.MinimumRadius)} allowed ({(verdict.Governs == BendBasis.ElasticLimit ? "elastic limit with its factor" : "published")}); least rows: {rows.Rows?.ToString(CultureInfo.InvariantCulture) ?? "none will do"}");
            if (verdict.Follows)
            {
                Row(string.Empty, $"rows at {string.Join(", ", hold.Rows.Select(static row => Tape(row.Position)))} up the band; the row that pulls most pulls {Plain(Math.Ceiling(hold.GreatestPull.Newtons), 0)} N a metre for good; stands off up to {Caliper(hold.StandOff)}");
            }
        }
    }

    private void PrintCeiling()
    {
        Ceiling ceiling = _survey.Ceiling;
        Head("CEILING STRIPS, bent across the bows");
        Row("front", $"{Rise(ceiling.Front)}: {Radius(answers.Front.Radius)}, {Tape(answers.Front.ArcLength)} round the curve");
        Row("rear", $"{Rise(ceiling.Rear)}: {Radius(answers.Rear.Radius)}, {Tape(answers.Rear.ArcLength)} round the curve");
        Row("bows", $"u {string.Join(", ", ceiling.Bows.OrderBy(static bow => bow.Millimeters).Select(static bow => Tape(bow)))}; fix {ceiling.FixingsPerStrip} times on each");
        if (ceiling.Vent is { } vent)
        {
            Row("vent", $"u {Tape(vent.From)} to {Tape(vent.To)}, {Tape(vent.Width)} wide: strips and slats stop round it; they are not set out there");
        }

        foreach (BentStripResult strip in answers.Bows)
        {
            Row(strip.Follows ? "YES" : "NO", $"{strip.Strip.Sheet.Name}: bent to {Radius(strip.PeakRadius)} at its tightest, {RadiusUp(strip.MinimumRadius)} allowed{(strip.Follows ? $"; a fixing pulls up to {Plain(Math.Ceiling(strip.GreatestPull.Newtons), 0)} N for good" : string.Empty)}");
        }

        foreach (BentStripRemedy remedy in answers.Bows.Take(1).SelectMany(static strip => strip.Remedies).Where(static remedy => remedy.Layers > 1))
        {
            Row("YES", $"{remedy.Layers} layers of {remedy.Sheet.Name}, {Caliper(remedy.Thickness)} together, bent one on another: {Radius(remedy.PeakRadius)} at the tightest, {RadiusUp(remedy.MinimumRadius)} allowed");
        }
    }

    private void PrintSlats()
    {
        SlatChoice slats = answers.Slats!;
        Head($"CEILING SLATS, {Caliper(_survey.Finish.Slats.Width)} x {Caliper(_survey.Finish.Slats.Thickness)}, along the van");
        if (slats.Recommended is not { } count || answers.SlatsInInches?.Recommended is not { } inches)
        {
            Row("slats", "NO number serves both ends: see the problems");
            return;
        }

        Row("strips", $"no further apart than {TapeDown(answers.SlatBay.LargestBay)}: one slat alone under a hand; the bows are up to {Tape(BowBay)} apart");
        foreach ((string end, int station) in new[] { ("front", 0), ("rear", 1) })
        {
            Row(end, $"{count.Count} slats, gap {Caliper(count.Gaps[station])} at the back, {Caliper(answers.Fits[station]!.Value.GapAtFace)} at the face; {Plain(count.Coverages[station] * 100, 0)}% covered");
        }

        Row("marks", "left edge of each slat from the van's left edge of the ceiling, round the curve, off one tape, mm (in):");
        Row("slat", $"{"front",-16} {"rear",-16} | slat  {"front",-16} rear");
        SlatSetOut[] all = [count.SetOut(0), count.SetOut(1), inches.SetOut(0), inches.SetOut(1)];
        int rows = (count.Count + 1) / 2;
        for (int i = 0; i < rows; i++)
        {
            string right = i + rows < count.Count ? FormattableString.Invariant($"| {i + rows + 1,-5} {Mark(i + rows)}") : string.Empty;
            Row(FormattableString.Invariant($"{i + 1}"), $"{Mark(i)} {right}".TrimEnd());
        }

        string Mark(int i) => $"{Both(i, 0),-16} {Both(i, 1),-16}";
        string Both(int i, int station) => Bare($"{FormatMillimetres(all[station].Marks[i].Mark, 0)} ({FormatInches(all[station + 2].Marks[i].Mark)})");
    }

    /// <summary>The widest distance between neighbouring bows.</summary>
    private Length BowBay
    {
        get
        {
            double[] bows = [.. _survey.Ceiling.Bows.Select(static bow => bow.Millimeters).Order()];
            return Mm(bows.Length < 2 ? 0 : bows.Skip(1).Zip(bows, static (right, left) => Math.Round(right - left, 6)).Max());
        }
    }

    private void PrintRest()
    {
        Head("NOTES");
        foreach ((string of, Finding finding) in _findings.Where(static each => each.Finding.Severity == Severity.Note))
        {
            Row(of, Rounded(finding.Message));
        }

        Head("DEFAULTS TAKEN, and what each rests on");
        foreach (IGrouping<string, DefaultUsed> same in answers.All().SelectMany(static each => each.Defaults).GroupBy(static used => used.Source.ToString()))
        {
            Row("-", $"{string.Join(", ", same.Select(static used => $"{used.Figure.Name.Replace('-', ' ')} {Plain(used.Figure.Value, 4)} {used.Figure.Unit}".TrimEnd()).Distinct())}: {same.Key}");
        }

        Row("-", $"unless the file says otherwise: strips {Tape(answers.StripWidth)} wide (common practice, no published source); depths of cavities and wires {Tape(answers.DepthError)} off either way, nothing within {Tape(Mm(WireSide))} to either side of a wire (default, judgement)");
    }

    // How the bench reads a length. Tape: whole millimetres and sixteenths. Caliper: tenths and sixty-fourths. What may not be
    // more than it says is rounded down, what may not be less up.
    private static string Tape(Length length) => $"{FormatMillimetres(length, 0)} ({FormatInches(length)})";

    private static string Pair(Length length) => Bare(Tape(length));

    /// <summary>Without units, for columns whose head names them.</summary>
    private static string Bare(string lengths) => lengths.Replace(" mm", string.Empty, StringComparison.Ordinal).Replace(" in", string.Empty, StringComparison.Ordinal);

    private static string TapeDown(Length length) => $"{FormatMillimetres(Floor(length, 1), 0)} ({FormatInches(Floor(length, 25.4 / 16))})";

    private static string Caliper(Length length) => $"{FormatMillimetres(length)} ({FormatInches(length, 64)})";

    private static string Exact(Length length) => $"{FormatMillimetres(length, 2)} ({FormatInches(length, 64)})";

    private static string Down(Length length) => $"{FormatMillimetres(Floor(length, 0.1))} ({FormatInches(Floor(length, 25.4 / 64), 64)})";

    private static string Clear(Length length) => length.Millimeters >= 0 ? $"{Down(length)} clear" : $"{Down(length)[1..].Replace("(-", "(", StringComparison.Ordinal)} PAST";

    private static Length Floor(Length length, double step) => Mm(Math.Floor((length.Millimeters / step) + 1e-6) * step);

    private static string Rise(Bow bow) => $"{Tape(bow.Rise)} under {Tape(bow.Chord)}";

    private static string Radius(Length? radius) => radius is { } r ? "R " + FormatMillimetres(r, 0) : "flat";

    private static string RadiusUp(Length radius) => "R " + FormatMillimetres(Mm(Math.Ceiling(radius.Millimeters - 1e-6)), 0);

    private static string Plain(double value, int decimals) => Math.Round((decimal)value, decimals, MidpointRounding.AwayFromZero).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);

    /// <summary>The library writes micrometres; a bench reads tenths, and whole millimetres of what is longer than a hand.</summary>
    private static string Rounded(string message) => Regex.Replace(message, @"(?<![\w.])(\d+\.\d+) mm", static match =>
        double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) is var value && value < 1 ? match.Value : Plain(value, value < 100 ? 1 : 0) + " mm", RegexOptions.CultureInvariant);

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
