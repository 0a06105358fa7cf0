#:project ../../src/FinishKit/FinishKit.csproj

// A boarded side wall whose one end leans and bows, from what a builder measures to what the saw needs.
//
//   dotnet run docs/examples/boarded-wall.cs                      the demo wall in boarded-wall.json beside this file
//   dotnet run docs/examples/boarded-wall.cs my-wall.json         your own
//   dotnet run docs/examples/boarded-wall.cs --workings           every step of every answer, with what it rests on
//
// Read it from the middle: Answers holds every call of the library, in the order of the work. Above it is how the file is
// read (Survey), below it what the bench gets (BoardSheet). Where strips stand and which nail is right: one-wall.cs.
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

return BoardedWall.Run(args);

/// <summary>The command line.</summary>
internal static class BoardedWall
{
    private const string Usage = "usage: dotnet run boarded-wall.cs [file.json] [--workings]\n";

    internal static int Run(string[] args)
    {
        string[] files = [.. args.Where(static arg => !arg.StartsWith('-'))], options = [.. args.Where(static arg => arg.StartsWith('-'))];
        if (options is ["--help"] or ["-h"])
        {
            return Write(Console.OpenStandardOutput(), Usage, 0);
        }

        if (files.Length > 1 || files.Contains(string.Empty) || options is not ([] or ["--workings"]))
        {
            return Write(Console.OpenStandardError(), $"boarded-wall: not understood: {Entry.Quote(string.Join(' ', args))}\n{Usage}", 1);
        }

        // The working directory is the caller's; the default file lies beside this program.
        string path = files.Length == 1 ? files[0] : Path.Combine((string?)AppContext.GetData("EntryPointFileDirectoryPath") ?? AppContext.BaseDirectory, "boarded-wall.json");
        List<string> troubles = [];
        Survey? survey = Entry.Read(path, static file => new Survey(file), troubles);
        Answers? answers = troubles.Count > 0 || survey is null ? null : new Answers(survey, troubles);
        return answers is null || troubles.Count > 0
            ? Write(Console.OpenStandardError(), $"boarded-wall: {Path.GetFileName(path)} cannot be read as meant; nothing was computed.\n{string.Concat(troubles.Take(100).Select(static trouble => $"  {trouble}\n"))}", 1)
            : Write(Console.OpenStandardOutput(), new BoardSheet(answers).Text(options.Length > 0), 0);
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
// What is measured. u runs along the van from the front, v up the girth from the foot of the boards.

internal sealed class Survey(Entry file)
{
    internal readonly string Van = file.Text("van");
    internal readonly string Revision = file.Text("survey");
    internal readonly string Side = file.Text("side", "left", "right");
    internal readonly Length Length = file.Length("length", 500, 20_000);

    /// <summary>A plumb line on the room's side: height above the floor, and from the line outward to the wall.</summary>
    internal readonly MeasuredPoint[] Profile = file.List("profile", 2, 100, static at => new MeasuredPoint(at.Length("height", 0, 5000), at.Length("out", -2000, 2000)));

    /// <summary>From what was measured to where the faces of the boards will be, square to the wall; 0 where it was measured to there.</summary>
    internal readonly Length Faces = file.Length("faces", 0, 200);

    /// <summary>Which end leans, and how far it comes in from that end at a height.</summary>
    internal readonly (string End, bool UnderTrim, MeasuredPoint[] Marks) Edge = file.Object("edge", static edge =>
        (edge.Text("end", "front", "rear"), edge.Flag("under-trim"), edge.List("marks", 2, 50, static mark => new MeasuredPoint(mark.Length("v", 0, 5000), mark.Length("in", 0, 5000)))));
    internal readonly FaceOpening[] Windows = file.List("windows", 0, 20, static window =>
    {
        (Length from, Length bottom) = (window.Length("from", 0, 20_000), window.Length("bottom", 0, 5000));
        return new FaceOpening(from, window.Length("to", from.Millimeters + 1, 20_000), bottom, window.Length("top", bottom.Millimeters + 1, 5000));
    });

    /// <summary>The middles of the strips on which boards may butt.</summary>
    internal readonly Length[] Strips = file.List("strips", 0, 100, static strip => strip.Length("u", 0, 20_000));
    internal readonly (Length V, Length Diameter)[] Wires = file.List("wires", 0, 20, static wire => (wire.Length("v", 0, 5000), wire.Length("diameter", 1, 100)));
    internal readonly Boards Boards = file.Object("boards", static boards =>
    {
        Length width = boards.Length("width", 20, 500), tongue = boards.Length("tongue", 2, width.Millimeters > 0 ? (width.Millimeters / 2) - 1 : 250); // what cannot be read bounds nothing
        return new Boards(
            boards.Text("species", [.. WoodSpecies.All.Where(static wood => DimensionalChange.CheckOfWood(wood).Count == 0).Select(static wood => wood.Name)]),
            width,
            tongue,
            boards.Length("thickness", 3, 100),
            boards.Length("gap", 0, tongue.Millimeters > 0 ? tongue.Millimeters - 1 : 250),
            boards.Length("end-gap", 0, 20),
            boards.List("stock", 1, 20, static board => new StockBoard(board.Length("length", 200, 20_000), (decimal)board.Number("price", 0, 100_000))),
            boards.List("offcuts", 0, 100, static offcut => new BoardOffcut(offcut.Length("length", 10, 20_000))));
    })!;

    /// <summary>The air that the boards lie in before they are fitted, and the driest and wettest of the year in the van, by their means over some weeks.</summary>
    internal readonly ((double Celsius, double Humidity) Fitted, (double Celsius, double Humidity) Driest, (double Celsius, double Humidity) Wettest) Air =
        file.Object("air", static air => (air.Object("fitted", OneAir), air.Object("driest", OneAir), air.Object("wettest", OneAir)));

    private static (double Celsius, double Humidity) OneAir(Entry air) => (air.Number("celsius", -2, 60), air.Number("humidity", 0, 98));
}

internal sealed record Boards(string Species, Length Width, Length Tongue, Length Thickness, Length Gap, Length EndGap, StockBoard[] Stock, BoardOffcut[] Offcuts);

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

    internal bool Flag(string name) => Member(name, JsonValueKind.True, "true or false")?.GetBoolean() ?? false;

    internal double Number(string name, double least, double most)
    {
        double number = Member(name, JsonValueKind.Number, "a number")?.GetDouble() ?? least;
        if (!(number >= least && number <= most))
        {
            Wrong(name, FormattableString.Invariant($"{number}"), FormattableString.Invariant($"{least} to {most}"));
        }

        return number;
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

        if (member.ValueKind == kind || (kind == JsonValueKind.True && member.ValueKind == JsonValueKind.False))
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

internal sealed class Answers
{
    private readonly List<string> _troubles;

    internal Answers(Survey survey, List<string> troubles)
    {
        (Survey, _troubles) = (survey, troubles);
        Boards boards = survey.Boards;
        bool isRear = survey.Edge.End == "rear";

        // Movement: moisture from the air, what a board does between dry and wet, and whether gap and tongue serve.
        Board = BoardCover.TongueAndGroove(boards.Width, boards.Tongue, boards.Gap);
        (Fitted, Driest, Wettest) = (Wood(survey.Air.Fitted), Wood(survey.Air.Driest), Wood(survey.Air.Wettest));
        BoardMovementJob season = new(Board, DimensionalChange.OfWood(WoodSpecies.Named(boards.Species)))
        {
            FittingMoisture = Fitted.MoistureContent,
            DriestMoisture = Driest.MoistureContent,
            WettestMoisture = Wettest.MoistureContent,
            EndGap = boards.EndGap,
        };
        Movement = Ask(() => BoardMovement.CheckOverSeason(season), () => BoardMovement.OverSeason(season), ("job", "$.air"));

        // Bands and breaks from the plumb line; girths to the millimetre that a tape reads.
        Profile = Ask(() => ProfileBreaks.Check(survey.Profile), () => ProfileBreaks.Find(survey.Profile), ("stations", "$.profile"));

        // The courses lie over the faces of the boards, which may stand before what was measured: every height up the wall moves with them.
        try
        {
            Girth = Whole(AtFaces(Profile?.Girth ?? default));
        }
        catch (ArgumentException exception)
        {
            troubles.Add($"$.faces: {exception.Message}");
            return;
        }

        Windows = [.. survey.Windows.Select(window => window with { FromV = AtFaces(window.FromV), ToV = AtFaces(window.ToV) })];
        foreach ((FaceOpening window, int i) in Windows.Select(static (window, i) => (window, i)).Where(static each => each.window.ToV.Millimeters - each.window.FromV.Millimeters < 1))
        {
            troubles.Add(FormattableString.Invariant($"$.windows[{i}]: v {survey.Windows[i].FromV.Millimeters} to {survey.Windows[i].ToV.Millimeters} mm, which the hollow beside it leaves nothing of; allowed is a window that over the faces of the boards is 1 mm high or more"));
        }

        if (troubles.Count > 0)
        {
            return;
        }

        Wires = [.. survey.Wires.Select(wire => (AtFaces(wire.V), wire.Diameter))];

        // Courses: where the joints fall against foot, head, windows, and breaks that end a course.
        CourseFace face = new(survey.Length, Girth, Board) { Openings = Windows, Breaks = [.. (Profile?.Breaks ?? []).Select(at => new FaceBreak(Whole(AtFaces(at.Girth)), at.LeanChange))] };
        Courses = Profile is null ? null : Ask(() => CourseLayout.Check(face), () => CourseLayout.LayOut(face), ("face.Openings", "$.windows"), ("face.FaceLength", "$.length"), ("face.Board", "$.boards"), ("face", "$.profile"));

        // The edge through its marks, and every course's end on it. The square ends of the boards are at the other end.
        MeasuredPoint[] typed = [.. survey.Edge.Marks.Select(mark => new MeasuredPoint(mark.Along, isRear ? survey.Length - mark.Offset : mark.Offset))];
        MeasuredPoint[] marks = Ask(() => EdgeCurve.CheckThrough(typed), () => EdgeCurve.Through(typed), ("points", "$.edge.marks")) is null ? [] : MarksAtFaces(typed);
        Edge = marks.Length == 0 ? null : Ask(() => EdgeCurve.CheckThrough(marks), () => EdgeCurve.Through(marks), ("points", "$.edge.marks"));
        if (Courses is not null && Edge is not null && (Edge.Lowest.Millimeters > 0 || Edge.Highest.Millimeters < Girth.Millimeters))
        {
            troubles.Add(FormattableString.Invariant($"$.edge.marks: v {Edge.Lowest.Millimeters} to {Edge.Highest.Millimeters} mm; allowed is 0 or less to {Girth.Millimeters} mm or more, the girth of the profile"));
        }

        if (Courses is null || Edge is null || troubles.Count > 0)
        {
            return;
        }

        EndCutJob ends = new(Edge, isRear ? Courses.LinesAtRear : Courses.LinesAtFront, isRear ? default : survey.Length) { HiddenWidth = Board.StillCovered, UnderTrim = survey.Edge.UnderTrim };
        Ends = Ask(() => EndCuts.Check(ends), () => EndCuts.Schedule(ends), ("job", "$.edge"));

        // Joints on strips, boards to buy and cuts, in one question: each course in parts between windows, up to the edge, less the gaps at the ends.
        JointJob joints = new(Courses.Runs(Ends), survey.Strips, boards.Stock) { Offcuts = boards.Offcuts, EndGap = boards.EndGap };
        Joints = Ends is null ? null : Ask(() => BoardJoints.Check(joints), () => BoardJoints.Choose(joints), ("job.Strips", "$.strips"), ("job.Stock", "$.boards.stock"), ("job.Offcuts", "$.boards.offcuts"), ("job", "$.windows"));
    }

    internal readonly Survey Survey;
    internal readonly MoistureBalance Fitted, Driest, Wettest;
    internal readonly BoardCover Board;
    internal readonly SeasonMovement? Movement;
    internal readonly WallProfile? Profile;
    internal readonly Length Girth;
    internal readonly FaceOpening[] Windows = [];
    internal readonly (Length V, Length Diameter)[] Wires = [];
    internal readonly CoursePlan? Courses;

    /// <summary>Marks of the edge that another stands for: v as measured.</summary>
    internal readonly List<Length> LeftOut = [];
    internal readonly MeasuredEdge? Edge;
    internal readonly EndCutSchedule? Ends;
    internal readonly JointLayout? Joints;

    /// <summary>What the sheet takes of every answer beside its figures.</summary>
    internal IEnumerable<(string Of, IReadOnlyList<Finding> Findings, IReadOnlyList<DefaultUsed> Defaults, Workings[] Workings)> All() =>
    [
        ("movement", Movement!.Findings, Movement.DefaultsUsed, [Fitted.Explain(), Driest.Explain(), Wettest.Explain(), Movement.Explain()]),
        ("profile", Profile!.Findings, Profile.DefaultsUsed, [Profile.Explain()]),
        ("courses", Courses!.Findings, Courses.DefaultsUsed, [Courses.Explain()]),
        ("ends", Ends!.Findings, Ends.DefaultsUsed, [Edge!.Explain(), Ends.Explain()]),
        ("boards", Joints!.Findings, Joints.DefaultsUsed, [Joints.Explain(), Joints.Cutting.Explain()]),
    ];

    /// <summary>A height up the measured wall, over the faces; above the profile as far from its head as on the wall.</summary>
    private Length AtFaces(Length v)
    {
        double over = Profile is null ? 0 : Math.Max(0, v.Millimeters - Profile.Girth.Millimeters);
        return Profile is null ? v : Mm(Math.Round(Profile.GirthInFront(Mm(v.Millimeters - over), Survey.Faces).Millimeters + over, 6));
    }

    /// <summary>The marks over the faces. What of the wall lies next to a hollow lies at the break there: of marks that so come to one height the one farther from the hollow stands.</summary>
    private MeasuredPoint[] MarksAtFaces(MeasuredPoint[] typed)
    {
        List<(MeasuredPoint Typed, MeasuredPoint At)> kept = [];
        foreach (MeasuredPoint mark in typed.OrderBy(static mark => mark.Along.Millimeters))
        {
            MeasuredPoint at = new(AtFaces(mark.Along), mark.Offset);
            bool isOne = kept.Count > 0 && at.Along.Millimeters - kept[^1].At.Along.Millimeters < 1, isFarther = isOne && FromBreak(mark) > FromBreak(kept[^1].Typed);
            if (isOne)
            {
                LeftOut.Add((isFarther ? kept[^1].Typed : mark).Along);
            }

            if (isFarther)
            {
                kept.RemoveAt(kept.Count - 1);
            }

            if (isFarther || !isOne)
            {
                kept.Add((mark, at));
            }
        }

        return [.. kept.Select(static mark => mark.At)];

        double FromBreak(MeasuredPoint mark) => (Profile?.Breaks ?? []).Select(at => Math.Abs(at.Girth.Millimeters - mark.Along.Millimeters)).DefaultIfEmpty().Min();
    }

    private static MoistureBalance Wood((double Celsius, double Humidity) air) => EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(air.Celsius), RelativeHumidity.FromPercent(air.Humidity));

    private static Length Whole(Length length) => Mm(Math.Round(length.Millimeters, MidpointRounding.AwayFromZero));

    /// <summary>An answer, where its check has nothing to say; else what it says, at its places in the file.</summary>
    private T? Ask<T>(Func<IReadOnlyList<InputProblem>> check, Func<T> answer, params (string Parameter, string Path)[] places)
        where T : class
    {
        IReadOnlyList<InputProblem> problems = check();
        foreach (InputProblem problem in problems)
        {
            (string parameter, string path) = places.First(place => problem.Parameter.StartsWith(place.Parameter, StringComparison.Ordinal));
            string member = Regex.Replace(problem.Parameter[parameter.Length..], @"\w+$", name => name.Value switch { "FromU" => "from", "ToU" => "to", "FromV" => "bottom", "ToV" => "top", "Along" => path == "$.profile" ? "height" : "v", "Length" => "length", "Price" => "price", _ => name.Value });
            _troubles.Add($"{path}{member}: {problem.Value}; allowed is {problem.Allowed}");
        }

        return problems.Count == 0 ? answer() : null;
    }
}

// ---------------------------------------------------------------------------------------------------------------------------
// What the bench gets: problems first, then the sections in the order of the work; millimetres and inches to 1/16, to 1/64
// where a gap asks for it. Places are given from one datum, never from piece to piece.

internal sealed class BoardSheet(Answers answers)
{
    private const int Width = 98;

    /// <summary>How far a fixing stays from a wire to either side, unless measured: judgement, 25 to 50 mm.</summary>
    private const double WireSide = 30;

    private readonly StringBuilder _text = new();
    private readonly Survey _survey = answers.Survey;
    private readonly CoursePlan _courses = answers.Courses!;
    private readonly EndCutSchedule _ends = answers.Ends!;
    private readonly JointLayout _joints = answers.Joints!;
    private readonly List<(string Of, Finding Finding)> _findings = [.. answers.All().SelectMany(static each => each.Findings.Select(finding => (each.Of, finding))).DistinctBy(static each => each.finding.Message)];

    internal string Text(bool workings)
    {
        PrintHead();
        PrintFindings();
        PrintMovement();
        PrintCourses();
        PrintEnds();
        PrintJoints();
        PrintCuts();
        PrintRest();
        foreach (Workings steps in workings ? answers.All().SelectMany(static each => each.Workings) : [])
        {
            _text.Append('\n').Append(steps.ToText());
        }

        return _text.ToString();
    }

    private void PrintHead()
    {
        bool isLeft = _survey.Side == "left", isRear = _ends.IsEdgeAtRear;
        Line($"BOARD SHEET    {_survey.Van}    survey: {_survey.Revision}");
        Line(isLeft ? "LEFT WALL, seen from inside the van            rear  o - - - - - - - - - - - - ->  FRONT" : "RIGHT WALL, seen from inside the van           FRONT  <- - - - - - - - - - - - - o  rear");
        Row("datum", $"u = 0 at the front end of the wall, which is on your {(isLeft ? "right" : "left")}, and runs to the rear, {Tape(_survey.Length)} long; v = 0 at the foot of the boards, and runs up along the surface to {Tape(answers.Girth)}. Left and right of the van are as the driver sits.");
        Row("boards", $"{_survey.Boards.Species}, {Caliper(answers.Board.Width)} with a tongue of {Caliper(answers.Board.Hidden)}, tongue up; a joint every {Caliper(answers.Board.Cover)}, of which {Caliper(answers.Board.Gap)} is its gap");
        Row("square", $"ends at the {(isRear ? "front" : "rear")}; at the {(isRear ? "rear" : "front")} cut to the edge; {Fine(_survey.Boards.EndGap)} are left at each end of a course");
        Row("measured", _survey.Faces.Millimeters == 0 ? "to where the faces of the boards will be, v along the wall" : $"{Caliper(_survey.Faces)} behind the faces of the boards; every v of this sheet is over the faces");
        foreach (FaceOpening window in answers.Windows)
        {
            Row("window", $"u {Tape(window.FromU)} to {Tape(window.ToU)}, v {Tape(window.FromV)} to {Tape(window.ToV)}");
        }

        foreach ((CourseBreak line, Length v) in _courses.Breaks.Zip(_courses.Face.Breaks, static (line, at) => (line, at.V)))
        {
            Row("break", $"v {Tape(v)}: the lean changes by {Plain(line.LeanChange.Degrees, 1)} deg, {(line.EndsCourse ? $"ends a course: bevel both edges {Plain(Math.Abs(line.Bevel.Degrees), 1)} deg, {(line.Bevel.Degrees > 0 ? "a hollow: the backs of the boards are the wider" : "a ridge: their faces are the wider")}" : $"boards run over it and stand off up to {Caliper(line.StandOff)}")}");
        }
    }

    /// <summary>Problems and cautions of every answer, before anything else; notes come last.</summary>
    private void PrintFindings()
    {
        Head(_findings.Exists(static each => each.Finding.Severity == Severity.Problem) ? "PROBLEMS: do not start before these are settled" : "PROBLEMS: none found in what was asked");
        PrintAll(Severity.Problem);
        Head("CAUTIONS");
        PrintAll(Severity.Caution);
        foreach ((Length v, Length diameter) in answers.Wires)
        {
            double side = (diameter.Millimeters / 2) + WireSide;
            IEnumerable<int> over = Enumerable.Range(1, _courses.Courses.Count).Where(i => _courses.Courses[i - 1].LowerLine.Millimeters < v.Millimeters + side && _courses.Courses[i - 1].UpperLine.Millimeters > v.Millimeters - side);
            Row("wire", $"at v {Tape(v)}, behind course {string.Join(", ", over)}: NO fastener from v {Tape(Mm(v.Millimeters - side))} to {Tape(Mm(v.Millimeters + side))} that reaches past the furring.");
        }

        Head("BEFORE ANYTHING IS CUT OR DRIVEN");
        Row("find", "and mark wiring, gas, fuel and brake lines, tanks, airbags and seat-belt anchorages, in the pillars too: this sheet knows only what was entered. Choose the nail by the whole stack.");
        Row("saw", "Guards on, work clamped, hands clear; eyes, ears and lungs protected: extract the dust at the saw. Cut the first board of each kind long and try it on the wall.");
    }

    private void PrintAll(Severity severity)
    {
        foreach ((string of, Finding finding) in _findings.Where(each => each.Finding.Severity == severity))
        {
            Row(of, Rounded(finding.Message));
        }
    }

    private void PrintMovement()
    {
        SeasonMovement moves = answers.Movement!;
        Head("MOVEMENT: what a board does over the year");
        foreach ((string when, MoistureBalance air) in new[] { ("fitted", answers.Fitted), ("driest", answers.Driest), ("wettest", answers.Wettest) })
        {
            Row(when, $"in air of {Plain(air.Temperature.DegreesCelsius, 1)} C and {Plain(air.RelativeHumidity.Percent, 1)}% humidity the wood comes to {Plain(air.MoistureContent, 1)}% moisture");
        }

        Row("board", $"swells by {Fine(moves.Swelling)} to the wet end, shrinks by {Fine(moves.Shrinkage)} to the dry end");
        Row("joint", $"{Fine(moves.GapToLeave)} asked, {Fine(answers.Board.Gap)} left: {Fine(moves.GapWhenWet)} when wet, {Fine(moves.GapWhenDry)} when dry, with {Fine(moves.StillCoveredWhenDry ?? default)} of the tongue of {Fine(answers.Board.Hidden)} still covered");
        Row("fit", $"{(moves.DriestFitting is { } driest ? $"no drier than {Plain(driest, 1)}%, or the joints close" : "however dry the boards are, the joints stay open")}; {(moves.WettestFitting is { } wettest ? $"no wetter than {Plain(wettest, 1)}%, or the tongues come out" : "however wet, the tongues stay covered")}");
    }

    /// <summary>
    /// The width to set on the saw, across the wider side of the board: its face, the tongue where that stays, and in a hollow what a bevel adds at the back. On a ridge the face is the wider.
    /// </summary>
    private string RipTo(BoardCourse course)
    {
        if (course.IsWhole && course.BevelBelow.Degrees == 0 && course.BevelAbove.Degrees == 0)
        {
            return "whole";
        }

        // A back cannot be wider than its board: then the board stays whole, and the bevel takes it off the face.
        return TooWide(course) > 0 ? "whole" : Regex.Replace(Caliper(Mm(Back(course))), " (mm|in)", string.Empty);
    }

    /// <summary>Across the wider side.</summary>
    private double Back(BoardCourse course)
    {
        double tongue = course.IsCutAbove || course.BevelAbove.Degrees != 0 ? 0 : answers.Board.Hidden.Millimeters;
        return course.RipWidth.Millimeters + tongue + Wider(course.BevelBelow) + Wider(course.BevelAbove);

        double Wider(Angle bevel) => _survey.Boards.Thickness.Millimeters * Math.Tan(Math.Max(0, bevel.Radians));
    }

    /// <summary>By how much the board is too narrow for a bevelled back.</summary>
    private double TooWide(BoardCourse course) => Math.Max(0, Math.Round(Back(course) - answers.Board.Width.Millimeters, 6));

    private void PrintBevel(string edge, Angle bevel)
    {
        if (bevel.Degrees != 0)
        {
            Row(string.Empty, $"bevel the {edge} edge {Plain(Math.Abs(bevel.Degrees), 1)} deg from square, so that the {(bevel.Degrees > 0 ? "back" : "face")} is the wider");
        }
    }

    private void PrintCourses()
    {
        Head("COURSES from the foot up, face in mm (in): v off v = 0, u off u = 0");
        Row("rip to", $"what the saw is set to: across the wider side of a board of {Caliper(_survey.Boards.Thickness)}, with its tongue where that stays");
        Line($"  {"no",-4} {"v from",-17} {"v to",-17} {"face",-17} {"rip to",-17} cut off");
        for (int i = 0; i < _courses.Courses.Count; i++)
        {
            BoardCourse course = _courses.Courses[i];
            string cut = course.IsCutBelow && course.IsCutAbove ? "both edges" : course.IsCutBelow ? "lower edge" : course.IsCutAbove ? "upper edge" : string.Empty;
            Line($"  {i + 1,-4} {Pair(course.LowerLine),-17} {Pair(course.UpperLine),-17} {Pair(course.RipWidth),-17} {RipTo(course),-17} {cut}".TrimEnd());
            PrintBevel("lower", course.BevelBelow);
            PrintBevel("upper", course.BevelAbove);
            if (TooWide(course) > 0)
            {
                Row(string.Empty, $"the board is no wider: so bevelled, its face comes out {Caliper(Mm(TooWide(course)))} narrower than that");
            }

            foreach (CoursePiece piece in course.Pieces.Where(piece => piece.GreatestWidth.Millimeters < course.RipWidth.Millimeters))
            {
                bool isAbove = piece.FromV.Millimeters > course.LowerLine.Millimeters;
                Row(string.Empty, $"notch u {Pair(piece.FromU)} to {Pair(piece.ToU)}: {Pair(piece.LeastWidth)} stays {(isAbove ? "above v " + Pair(piece.FromV) : "below v " + Pair(piece.ToVAtFront))}");
            }
        }

        foreach (CourseBand band in _courses.Bands)
        {
            Row("band", $"v {Tape(band.FromV)} to {Tape(band.ToV)}: first joint {Tape(band.Offset)} above its foot; no piece under {Tape(band.Guaranteed)} though the set-out be {Fine(Mm(_courses.Figures().First(static figure => figure.Name == "set-out-error").Value))} off");
        }
    }

    private void PrintEnds()
    {
        Head($"END CUTS at the {_survey.Edge.End}: angles from square; u of the edge itself in mm (in), boards stop {Fine(_survey.Boards.EndGap)} short");
        Row("lay", $"a board face up with its tongue away from you: its {_survey.Edge.End} end is on your {(_survey.Side == "left" == _ends.IsEdgeAtRear ? "left" : "right")}, and a long point below is toward you");
        foreach (Length v in answers.LeftOut)
        {
            Row("mark", $"at v {Tape(v)} of the wall left out: over the faces it lies at the break, and so does one farther from it, which stands for both");
        }

        Line($"  {"no",-4} {"saw deg",-8} {"change",-7} {"long point",-11} {"u at lower line",-17} {"u at upper line",-17} gap left");
        foreach (EndCut cut in _ends.Courses)
        {
            string scribe = !cut.NeedsScribe ? string.Empty : cut.ServesSetBack ? $"; move the cut {Fine(cut.SetBack)} in" : "; SCRIBE";
            Line($"  {cut.Course,-4} {Plain(Math.Abs(cut.SawAngle.Degrees), 1),-8} {(cut.Change is { } change ? Plain(Math.Abs(change.Degrees), 1) : "-"),-7} {(cut.LongPointAt is not { } at ? "square" : at.Millimeters == cut.LowerLine.Millimeters ? "below" : "above"),-11} {Pair(cut.OffsetAtLowerLine),-17} {Pair(cut.OffsetAtUpperLine),-17} {Fine(cut.GapLeft)}{(cut.WoodInTheWay.Millimeters < 0.005 ? string.Empty : $", {Fine(cut.WoodInTheWay)} wood in the way")}{scribe}");
        }

        if (answers.Edge!.GreatestDifferenceAt is { } doubt)
        {
            Row("edge", $"between the marks it is known to {Fine(answers.Edge.GreatestDifference!.Value)}, least at v {Tape(doubt)}");
        }
    }

    private void PrintJoints()
    {
        Head("JOINTS on strips, u in mm (in); A, B, C: the parts of a course between windows, from the front");
        foreach (JointedRun run in _joints.Runs)
        {
            Row(run.Name, $"u {Pair(run.Start)} to {Pair(run.End)}{(run.Joints.Count == 0 ? ", one piece" : ", joint at " + string.Join(" and ", run.Joints.Select(static joint => Pair(joint.Position))))}");
        }
    }

    private void PrintCuts()
    {
        CuttingPlan plan = _joints.Cutting;
        Head("BUY AND CUT: mm (in), long point to long point, longest first");
        foreach (BoardPurchase buy in plan.Purchases)
        {
            Row("buy", $"{buy.BoardsBought} of {Tape(buy.Length)}: {Money(buy.Cost)}");
        }

        string proof = _joints.Proven ? ": no other joints and no other boards cost less (proven)" : _joints.LeastCost is { } least ? $", {Money(least)} at least: that nothing cheaper exists is not proven" : ": NOT all that is asked, see the problems";
        Row("cost", Money(_joints.Cost) + proof);
        Row("left", $"{Tape(plan.KeptOffcuts)} of offcuts worth keeping; {Tape(plan.Waste)} of trim, kerfs and short ends");
        (JointedRun Run, int Piece)[] parts = [.. _joints.Runs.SelectMany(static run => run.Pieces.Select((_, piece) => (run, piece)))];
        bool hasCorner = false;
        Line($"  {"no",-4} {"board",-17} {"piece",-12} {"length",-17} {"rip to",-17} end at the edge");
        for (int i = 0; i < plan.Boards.Count; i++)
        {
            CutBoard board = plan.Boards[i];
            string of = board.IsOffcut ? "offcut " + FormatMillimetres(board.Length, 0)[..^3] : Pair(board.Length);
            foreach (CutPiece piece in board.Pieces)
            {
                (JointedRun run, int index) = parts[piece.Part];
                BoardCourse course = _courses.Courses[run.Course - 1];
                JointRun wall = _joints.Job.Runs[run.Run];
                RunEnd? at = index != (_ends.IsEdgeAtRear ? run.Joints.Count : 0) ? null : _ends.IsEdgeAtRear ? wall.EndsAt : wall.StartsAt;
                string end = at?.Cut is not { } cut ? "square"
                    : at.Kind == RunEndKind.Edge ? $"{Plain(Math.Abs(cut.SawAngle.Degrees), 1)} deg, long {(cut.SawAngle.Degrees < 0 ? "below" : "above")}"
                    : $"square, corner {Plain(Math.Abs(cut.SawAngle.Degrees), 1)} deg";
                hasCorner |= at is { Cut: not null, Kind: not RunEndKind.Edge };
                bool isFirst = ReferenceEquals(piece, board.Pieces[0]);
                Line($"  {(isFirst ? $"{i + 1}" : string.Empty),-4} {(isFirst ? of : string.Empty),-17} {(run.Pieces.Count == 1 ? run.Name : $"{run.Name}, {index + 1} of {run.Pieces.Count}"),-12} {Pair(piece.Length),-17} {RipTo(course),-17} {end}");
            }
        }

        if (hasCorner)
        {
            Row("corner", "the edge crosses the jamb within the course: cut the end square, mark the edge on it by the two u of END CUTS, and take off the corner that stands past it");
        }
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

        Row("-", $"nothing within {Tape(Mm(WireSide))} to either side of a wire (default, judgement)");
    }

    private static string Tape(Length length) => $"{FormatMillimetres(length, 0)} ({FormatInches(length)})";

    /// <summary>Without units, for columns whose head names them.</summary>
    private static string Pair(Length length) => Regex.Replace(Tape(length), " (mm|in)", string.Empty);

    private static string Caliper(Length length) => $"{FormatMillimetres(length)} ({FormatInches(length, 64)})";

    private static string Fine(Length length) => FormatMillimetres(length, 2);

    private static string Money(decimal amount) => amount.ToString("0.00##", CultureInfo.InvariantCulture);

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
