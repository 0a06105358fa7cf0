#:project ../../src/FinishKit/FinishKit.csproj

// Which nail goes through each stack of a van, holds, and stops short of what is behind it?
//
//   dotnet run docs/examples/which-nail.cs                      the stacks in which-nail.json beside this file
//   dotnet run docs/examples/which-nail.cs my-van.json          your own
//   dotnet run docs/examples/which-nail.cs --workings           every step of every choice, with what it rests on
//
// The answer goes to standard output. A file that cannot be read as meant is refused whole: every mistake on
// standard error with its place, nothing computed, exit code 1. A stack without a nail is an answer (exit code 0).
using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Text;
using System.Text.Json;
using FinishKit;
using UnitsNet;

return WhichNail.Run(args);

/// <summary>The command line.</summary>
internal static class WhichNail
{
    private const string Usage =
        """
        usage: dotnet run which-nail.cs [file.json] [--workings]
          file.json    the stacks of a van; without it, which-nail.json beside the program
          --workings   print every step of every choice, with what it rests on

        """;

    private const int MostTroublesShown = 100;

    internal static int Run(string[] args)
    {
        bool workings = false;
        string? path = null;
        foreach (string arg in args)
        {
            if (arg is "--help" or "-h")
            {
                Write(toError: false, Usage);
                return 0;
            }

            if (arg == "--workings" && !workings)
            {
                workings = true;
            }
            else if (arg.Length > 0 && arg[0] != '-' && path is null)
            {
                path = arg;
            }
            else
            {
                string what = arg.Length > 0 && arg[0] == '-' ? (arg == "--workings" ? "given twice" : "unknown option") : arg.Length == 0 ? "an empty argument" : "a second file";
                Write(toError: true, $"which-nail: {what}: {Words.Quote(arg)}\n{Usage}");
                return 1;
            }
        }

        // The working directory is the caller's; the default file lies beside this program.
        path ??= Path.Combine((string?)AppContext.GetData("EntryPointFileDirectoryPath") ?? AppContext.BaseDirectory, "which-nail.json");
        List<Trouble> troubles = [];
        Van? van = VanFile.Read(path, troubles);
        if (van is null || troubles.Count > 0)
        {
            StringBuilder text = new($"which-nail: {troubles.Count} {(troubles.Count == 1 ? "mistake" : "mistakes")} in {Path.GetFileName(path)}; nothing was computed.\n");
            for (int i = 0; i < troubles.Count && i < MostTroublesShown; i++)
            {
                text.Append(CultureInfo.InvariantCulture, $"  {troubles[i].Where}: {troubles[i].What}\n");
            }

            if (troubles.Count > MostTroublesShown)
            {
                text.Append(CultureInfo.InvariantCulture, $"  and {troubles.Count - MostTroublesShown} more\n");
            }

            Write(toError: true, text.ToString());
            return 1;
        }

        Write(toError: false, new BenchSheet(workings).Of(van));
        return 0;
    }

    /// <summary>Bytes, not a console writer: the same UTF-8 under every culture and code page.</summary>
    private static void Write(bool toError, string text)
    {
        if (OperatingSystem.IsWindows())
        {
            Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        }

        using Stream stream = toError ? Console.OpenStandardError() : Console.OpenStandardOutput();
        stream.Write(Encoding.UTF8.GetBytes(text.ReplaceLineEndings("\n")));
    }
}

/// <summary>One mistake in a file: where (JSON path, or line and column) and what.</summary>
internal sealed record Trouble(string Where, string What);

/// <summary>A van's stacks, ready to compute.</summary>
internal sealed record Van(string Name, IReadOnlyList<Stack> Stacks);

/// <summary>One stack. The board is null where the layers were given one by one.</summary>
internal sealed record Stack(string Name, FastenerJob Job, BoardProfile? Board, Nailing Nailing, bool CountIsDefault);

/// <summary>
/// Reads a file of stacks. Strict: an unknown, missing, duplicate or wrong-typed member is a mistake, and all mistakes of a
/// file are reported together.
/// </summary>
internal sealed class VanFile(List<Trouble> troubles)
{
    private const int MostBytes = 1_000_000;
    private const int MostStacks = 500;
    private const int LongestName = 60;
    private const int MostDeviation = 1000;

    private static readonly string[] s_shapes = ["square-edged", "tongue and groove", "shiplap"];
    private static readonly string[] s_kinds = ["board", "furring", "panel", "compressible", "void", "other"];

    private static readonly Dictionary<string, BehindKind> s_behind = new(StringComparer.Ordinal)
    {
        ["rib metal"] = BehindKind.RibMetal,
        ["outer skin"] = BehindKind.OuterSkin,
        ["wire"] = BehindKind.Wire,
        ["pipe"] = BehindKind.Pipe,
        ["tank"] = BehindKind.Tank,
    };

    private static readonly Dictionary<string, FastenerPreference> s_preferences = new(StringComparer.Ordinal)
    {
        ["shortest that holds"] = FastenerPreference.ShortestThatHolds,
        ["longest safe"] = FastenerPreference.LongestSafe,
    };

    private static readonly Dictionary<string, Nailing> s_nailings = new(StringComparer.Ordinal)
    {
        ["face"] = Nailing.Face,
        ["through tongue"] = Nailing.BlindThroughTongue,
        ["through under lap"] = Nailing.ThroughUnderLap,
        ["through both laps"] = Nailing.ThroughBothLaps,
    };

    /// <summary>Member of a job, as <see cref="FastenerLength.Check(FastenerJob)"/> names it, to its place in the file.</summary>
    private readonly Dictionary<string, string> _places = new(StringComparer.Ordinal);

    internal static Van? Read(string path, List<Trouble> troubles)
    {
        string file = Path.GetFileName(path);
        if (ReadBytes(path, file, troubles) is not { } bytes)
        {
            return null;
        }

        try
        {
            using JsonDocument document = JsonDocument.Parse(bytes, new JsonDocumentOptions { MaxDepth = 16 });
            return new VanFile(troubles).ReadVan(document.RootElement);
        }
        catch (JsonException exception)
        {
            string message = exception.Message;
            int place = message.IndexOf(" LineNumber:", StringComparison.Ordinal);
            troubles.Add(new(LineAndColumn(bytes.Span, exception.LineNumber ?? 0, exception.BytePositionInLine ?? 0), "not JSON: " + (place < 0 ? message : message[..place])));
            return null;
        }
    }

    private static ReadOnlyMemory<byte>? ReadBytes(string path, string file, List<Trouble> troubles)
    {
        byte[] buffer = new byte[MostBytes + 1];
        int length;
        try
        {
            using FileStream stream = File.OpenRead(path);
            length = stream.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
        }
        catch (Exception exception) when (exception is FileNotFoundException or DirectoryNotFoundException)
        {
            troubles.Add(new(path, "no such file"));
            return null;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            troubles.Add(new(path, Directory.Exists(path) ? "is a folder, not a file" : "cannot be read: " + exception.Message));
            return null;
        }

        ReadOnlyMemory<byte> bytes = buffer.AsMemory(0, length);
        if (length > MostBytes)
        {
            troubles.Add(new(file, "is larger than 1 MB (1,000,000 bytes)"));
            return null;
        }

        if (bytes.Span.StartsWith("\uFEFF"u8))
        {
            bytes = bytes[3..]; // a UTF-8 mark, as some editors write
        }

        if (bytes.IsEmpty || bytes.Span.IndexOfAnyExcept(" \t\r\n"u8) < 0)
        {
            troubles.Add(new(file, "is empty"));
            return null;
        }

        int bad = System.Text.Unicode.Utf8.IsValid(bytes.Span) ? -1 : FirstInvalid(bytes.Span);
        if (bad >= 0)
        {
            ReadOnlySpan<byte> before = bytes.Span[..bad];
            int lineStart = before.LastIndexOf((byte)'\n') + 1;
            troubles.Add(new(LineAndColumn(bytes.Span, before.Count((byte)'\n'), bad - lineStart), "not UTF-8; save the file as UTF-8"));
            return null;
        }

        return bytes;
    }

    private static int FirstInvalid(ReadOnlySpan<byte> bytes)
    {
        int at = 0;
        while (at < bytes.Length && Rune.DecodeFromUtf8(bytes[at..], out _, out int used) == System.Buffers.OperationStatus.Done)
        {
            at += used;
        }

        return at;
    }

    /// <summary>As an editor counts: both from 1, the column in characters.</summary>
    private static string LineAndColumn(ReadOnlySpan<byte> bytes, long line, long byteInLine)
    {
        int start = 0;
        for (long i = 0; i < line; i++)
        {
            int end = bytes[start..].IndexOf((byte)'\n');
            if (end < 0)
            {
                break;
            }

            start += end + 1;
        }

        int count = (int)Math.Min(byteInLine, bytes.Length - start);
        return string.Create(CultureInfo.InvariantCulture, $"line {line + 1}, column {Encoding.UTF8.GetCharCount(bytes.Slice(start, count)) + 1}");
    }

    private Van? ReadVan(JsonElement root)
    {
        if (Members(root, "$", ["van", "stacks"], []) is not { } members)
        {
            return null;
        }

        string name = members.TryGetValue("van", out JsonElement van) ? ReadName(van, "$.van") ?? string.Empty : string.Empty;
        List<Stack> stacks = [];
        if (members.TryGetValue("stacks", out JsonElement list) && Items(list, "$.stacks", "a list of stacks") is { } items)
        {
            if (items.Count is 0 or > MostStacks)
            {
                Add("$.stacks", $"{items.Count} stacks; allowed are 1 to {MostStacks}");
                return null;
            }

            for (int i = 0; i < items.Count; i++)
            {
                if (ReadStack(items[i], $"$.stacks[{i}]") is { } stack)
                {
                    stacks.Add(stack);
                }
            }
        }

        return new Van(name, stacks);
    }

    private Stack? ReadStack(JsonElement element, string path)
    {
        _places.Clear();
        int before = troubles.Count;
        if (Members(element, path, ["name", "layers", "behind", "fasteners"], ["board", "set", "driveAngle", "count", "requiredClearance", "leastBite", "targetBite", "preference"]) is not { } members)
        {
            return null;
        }

        string? name = members.TryGetValue("name", out JsonElement nameElement) ? ReadName(nameElement, path + ".name") : null;
        Behind? behind = members.TryGetValue("behind", out JsonElement behindElement) ? ReadBehind(behindElement, path + ".behind") : null;
        FastenerSeries? series = members.TryGetValue("fasteners", out JsonElement seriesElement) ? ReadSeries(seriesElement, path + ".fasteners") : null;
        TolerancedLength? set = members.TryGetValue("set", out JsonElement setElement) ? ReadSet(setElement, path + ".set") : null;
        Angle? angle = members.TryGetValue("driveAngle", out JsonElement angleElement) ? ReadAngle(angleElement, path + ".driveAngle") : null;
        int count = members.TryGetValue("count", out JsonElement countElement) ? ReadCount(countElement, path + ".count") : 1;
        Length? clearance = OptionalLength(members, path, "requiredClearance", "RequiredClearance");
        Length? least = OptionalLength(members, path, "leastBite", "LeastBite");
        Length? target = OptionalLength(members, path, "targetBite", "TargetBite");
        FastenerPreference preference = members.TryGetValue("preference", out JsonElement preferenceElement) ? ReadWord(preferenceElement, path + ".preference", s_preferences) ?? default : default;

        Nailing nailing = Nailing.Face;
        BoardProfile? board = members.TryGetValue("board", out JsonElement boardElement) ? ReadBoard(boardElement, path + ".board", out nailing) : null;
        List<Layer?> layers = [];
        IReadOnlyList<Layer> ofBoard = [];
        if (board is not null)
        {
            // How many layers the board brings, so that a problem with one below it is found in the file.
            try
            {
                ofBoard = board.Layers(nailing, Angle.FromDegrees(0));
            }
            catch (ArgumentException)
            {
                Add(path + ".board.nailing", $"a {board.Name} board cannot be nailed this way");
                board = null;
            }
        }

        for (int i = 0; i < ofBoard.Count; i++)
        {
            _places[$"job.Layers[{i}]"] = path + ".board";
        }

        if (members.TryGetValue("layers", out JsonElement layersElement) && Items(layersElement, path + ".layers", "a list of layers, outermost first") is { } items)
        {
            for (int i = 0; i < items.Count; i++)
            {
                layers.Add(ReadLayer(items[i], $"{path}.layers[{i}]", $"job.Layers[{ofBoard.Count + i}]"));
            }
        }

        _places["job.Layers"] = path + ".layers";
        _places["job.DriveAngle"] = path + ".driveAngle";
        _places["job.Count"] = path + ".count";

        // What could not be read is stood in for, so that the check still sees everything else of this stack.
        List<Layer> known = [];
        foreach (Layer? layer in layers)
        {
            known.Add(layer ?? Measure.Mm(10));
        }

        if (known.Count == 0 && board is null && troubles.Count > before)
        {
            known.Add(Measure.Mm(10));
        }

        FastenerJob job = new(known, behind ?? Behind.Metal, series ?? FastenerSeries.Brad18)
        {
            SetDepth = set,
            DriveAngle = angle ?? Angle.FromDegrees(0),
            RequiredClearance = clearance,
            LeastBite = least,
            TargetBite = target,
            Count = count,
            Preference = preference,
        };
        if (board is not null)
        {
            // An angle out of range would be thrown here; the check below reports it.
            job = angle is { } given && given.Degrees is < 0 or > 60
                ? job.ThroughBoard(board, nailing, Angle.FromDegrees(0)) with { DriveAngle = angle.Value }
                : job.ThroughBoard(board, nailing, angle);
        }

        foreach (InputProblem problem in FastenerLength.Check(job))
        {
            Add(PlaceOf(problem.Parameter, path), $"{problem.Value}; allowed is {problem.Allowed}");
        }

        return troubles.Count > before || name is null
            ? null
            : new Stack(name, job, board, nailing, !members.ContainsKey("count"));
    }

    private BoardProfile? ReadBoard(JsonElement element, string path, out Nailing nailing)
    {
        nailing = Nailing.Face;
        string? shape = Peek(element, "shape");
        string[] parts = shape switch
        {
            "tongue and groove" => ["tongue", "backShoulder"],
            "shiplap" => ["overLap", "underLap"],
            _ => [],
        };
        if (shape is { } word && Array.IndexOf(s_shapes, word) < 0)
        {
            Add(path + ".shape", $"{Words.Quote(word)} is not a shape; known are \"{string.Join("\", \"", s_shapes)}\"");
            return null;
        }

        if (Members(element, path, ["shape", "thickness", "nailing", .. parts], ["tolerance"]) is not { } members)
        {
            return null;
        }

        if (members.TryGetValue("shape", out JsonElement given))
        {
            Text(given, path + ".shape"); // reports one that is no string
        }

        if (members.TryGetValue("nailing", out JsonElement nailingElement))
        {
            nailing = ReadWord(nailingElement, path + ".nailing", s_nailings) ?? Nailing.Face;
        }

        TolerancedLength? thickness = ReadThickness(members, path, "board");
        List<Length> lengths = [];
        foreach (string part in parts)
        {
            if (members.TryGetValue(part, out JsonElement partElement) && ReadLength(partElement, $"{path}.{part}") is { } length)
            {
                lengths.Add(length);
            }
        }

        if (thickness is not { } whole || lengths.Count < parts.Length)
        {
            return null;
        }

        try
        {
            return shape switch
            {
                "tongue and groove" => BoardProfile.TongueAndGroove(whole, lengths[0], lengths[1]),
                "shiplap" => BoardProfile.Shiplap(whole, lengths[0], lengths[1]),
                _ => BoardProfile.SquareEdged(whole),
            };
        }
        catch (ArgumentException exception)
        {
            // The factory names its own parameter, which is the member; the check's words come before the runtime's.
            string parameter = exception.ParamName ?? "thickness";
            string message = exception.Message;
            int runtime = message.IndexOf(" (Parameter", StringComparison.Ordinal);
            Add(parameter.StartsWith("thickness", StringComparison.Ordinal) ? PlaceOf("board" + parameter["thickness".Length..], path) : $"{path}.{parameter}", runtime < 0 ? message : message[..runtime]);
            return null;
        }
    }

    private Layer? ReadLayer(JsonElement element, string path, string jobPath)
    {
        string? kind = Peek(element, "kind");
        if (kind is { } word && Array.IndexOf(s_kinds, word) < 0)
        {
            Add(path + ".kind", $"{Words.Quote(word)} is not a kind of layer; known are \"{string.Join("\", \"", s_kinds)}\"");
            return null;
        }

        bool sheet = element.ValueKind == JsonValueKind.Object && element.TryGetProperty("sheet", out _);
        Dictionary<string, JsonElement>? members = kind switch
        {
            "compressible" => Members(element, path, ["kind", "name", "free", "compressed"], []),
            "void" => Members(element, path, ["kind", "thickness"], ["name", "tolerance"]),
            "other" => Members(element, path, ["kind", "name", sheet ? "sheet" : "thickness"], sheet ? ["holds"] : ["tolerance", "holds"]),
            _ => Members(element, path, ["kind", sheet ? "sheet" : "thickness"], sheet ? ["name", "holds"] : ["name", "tolerance", "holds"]),
        };
        if (members is null)
        {
            return null;
        }

        if (members.TryGetValue("kind", out JsonElement given))
        {
            Text(given, path + ".kind"); // reports one that is no string
        }

        string? name = members.TryGetValue("name", out JsonElement nameElement) ? ReadName(nameElement, path + ".name") : kind;
        bool? holds = members.TryGetValue("holds", out JsonElement holdsElement) ? ReadTruth(holdsElement, path + ".holds") : null;
        _places[jobPath] = path;
        _places[jobPath + ".IsVoid"] = path + ".kind";
        _places[jobPath + ".Holds"] = path + ".holds";
        if (kind == "compressible")
        {
            Length? free = members.TryGetValue("free", out JsonElement freeElement) ? ReadLength(freeElement, path + ".free") : null;
            Length? compressed = members.TryGetValue("compressed", out JsonElement compressedElement) ? ReadLength(compressedElement, path + ".compressed") : null;
            _places[jobPath + ".Thickness"] = path + ".free";
            _places[jobPath + ".Compressed"] = path + ".compressed";
            return free is { } f && compressed is { } c && name is not null ? Layer.Compressible(name, f, c) : null;
        }

        if (sheet && kind != "void")
        {
            SheetGoods? goods = members.TryGetValue("sheet", out JsonElement sheetElement) ? ReadSheet(sheetElement, path + ".sheet") : null;
            return goods is null || name is null ? null : Layer.Panel(goods) with { Name = name, Holds = holds };
        }

        TolerancedLength? thickness = ReadThickness(members, path, jobPath + ".Thickness");
        return thickness is not { } t || name is null ? null : kind == "void" ? Layer.Void(t) with { Name = name } : new Layer(t) { Name = name, Holds = holds };
    }

    private Behind? ReadBehind(JsonElement element, string path)
    {
        // Furring that touches a rib has no distance to measure; anything in a cavity has one.
        bool onRib = Peek(element, "kind") == "rib metal" && !element.TryGetProperty("distance", out _);
        if (Members(element, path, onRib ? ["kind"] : ["kind", "distance"], onRib ? [] : ["error"]) is not { } members)
        {
            return null;
        }

        BehindKind? kind = members.TryGetValue("kind", out JsonElement word) ? ReadWord(word, path + ".kind", s_behind) : null;
        TolerancedLength? distance = onRib ? Measure.Mm(0) : ReadToleranced(members, path, "distance", "error", "job.Behind.Distance", DeviationScope.Batch);
        return kind is { } k && distance is { } d ? new Behind(k, d) : null;
    }

    /// <summary>How deep a head goes is each nail's own; everything else here is shared by a row.</summary>
    private TolerancedLength? ReadSet(JsonElement element, string path) =>
        Members(element, path, ["depth"], ["error"]) is { } members ? ReadToleranced(members, path, "depth", "error", "job.SetDepth", DeviationScope.Each) : null;

    private TolerancedLength? ReadThickness(Dictionary<string, JsonElement> members, string path, string jobPath) =>
        ReadToleranced(members, path, "thickness", "tolerance", jobPath, DeviationScope.Batch);

    private TolerancedLength? ReadToleranced(Dictionary<string, JsonElement> members, string path, string size, string deviation, string jobPath, DeviationScope scope)
    {
        Length? nominal = members.TryGetValue(size, out JsonElement element) ? ReadLength(element, $"{path}.{size}") : null;
        (Length Lower, Length Upper)? deviations = members.TryGetValue(deviation, out JsonElement deviationElement) ? ReadDeviation(deviationElement, $"{path}.{deviation}") : (Measure.Mm(0), Measure.Mm(0));
        bool asPair = deviationElement.ValueKind == JsonValueKind.Object;
        _places[jobPath] = $"{path}.{size}";
        _places[jobPath + ".Lower"] = $"{path}.{deviation}{(asPair ? ".lower" : string.Empty)}";
        _places[jobPath + ".Upper"] = $"{path}.{deviation}{(asPair ? ".upper" : string.Empty)}";
        // The check has no upper limit for these, and the sheet could not print them; a lower one that large is below 0 anyway.
        if (deviations is { } far && far.Upper.Millimeters > MostDeviation)
        {
            Add($"{path}.{deviation}", $"more than {MostDeviation} mm");
            return null;
        }

        return nominal is { } n && deviations is { } d ? new TolerancedLength(n, d.Lower, d.Upper, scope) : null;
    }

    /// <summary>"±0.5 mm" or { "lower": "-0.8 mm", "upper": "+0.6 mm" }.</summary>
    private (Length Lower, Length Upper)? ReadDeviation(JsonElement element, string path)
    {
        if (element.ValueKind == JsonValueKind.Object)
        {
            Dictionary<string, JsonElement> members = Members(element, path, ["lower", "upper"], [])!;
            Length? lower = members.TryGetValue("lower", out JsonElement low) ? ReadSigned(low, path + ".lower") : null;
            Length? upper = members.TryGetValue("upper", out JsonElement high) ? ReadSigned(high, path + ".upper") : null;
            return lower is { } l && upper is { } u ? (l, u) : null;
        }

        if (element.ValueKind != JsonValueKind.String)
        {
            Add(path, $"{Kind(element)} where a tolerance is wanted: \"±0.5 mm\", or \"lower\" and \"upper\"");
            return null;
        }

        if (Text(element, path) is not { } text)
        {
            return null;
        }

        string bare = text.Trim();
        string? sign = bare.StartsWith('±') ? "±" : bare.StartsWith("+/-", StringComparison.Ordinal) ? "+/-" : bare.StartsWith("+-", StringComparison.Ordinal) ? "+-" : null;
        if (sign is null)
        {
            Add(path, $"{Words.Quote(text)} is not a tolerance; write \"±0.5 mm\" or \"+/-0.5 mm\", or an object with \"lower\" and \"upper\"");
            return null;
        }

        if (ParseLength(bare[sign.Length..], text, path) is not { } size)
        {
            return null;
        }

        if (size.Millimeters < 0)
        {
            Add(path, $"{Words.Quote(text)} has two signs");
            return null;
        }

        return (Measure.Mm(-size.Millimeters), size);
    }

    private Length? ReadSigned(JsonElement element, string path)
    {
        if (Text(element, path) is not { } text)
        {
            return null;
        }

        string bare = text.Trim();
        if (bare.StartsWith('-') || bare.StartsWith('+'))
        {
            return ParseLength(bare[1..], text, path) is { } size ? Measure.Mm(bare[0] == '-' ? -size.Millimeters : size.Millimeters) : null;
        }

        return ParseLength(bare, text, path);
    }

    private Length? OptionalLength(Dictionary<string, JsonElement> members, string path, string member, string ofJob)
    {
        _places["job." + ofJob] = $"{path}.{member}";
        return members.TryGetValue(member, out JsonElement element) ? ReadLength(element, $"{path}.{member}") : null;
    }

    private Length? ReadLength(JsonElement element, string path) => Text(element, path, "a length with its unit, such as \"12.7 mm\" or \"1/2 in\"") is { } text ? ParseLength(text, text, path) : null;

    private Length? ParseLength(string text, string whole, string path)
    {
        if (Measure.TryParseLength(text, out Length length))
        {
            return length;
        }

        foreach (InputProblem problem in Measure.CheckLength(text))
        {
            Add(path, $"{Words.Quote(whole)} is not read as a length: {problem.Value}; allowed is {problem.Allowed}");
        }

        return null;
    }

    private Angle? ReadAngle(JsonElement element, string path)
    {
        if (Text(element, path, "an angle, such as \"45 deg\"") is not { } text)
        {
            return null;
        }

        string bare = text.Trim();
        foreach (string unit in (string[])["degrees", "deg", "°"])
        {
            if (bare.EndsWith(unit, StringComparison.Ordinal)
                && double.TryParse(bare[..^unit.Length].TrimEnd(), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out double degrees)
                && double.IsFinite(degrees))
            {
                return Angle.FromDegrees(degrees);
            }
        }

        Add(path, $"{Words.Quote(text)} is not an angle; write \"45 deg\" or \"45°\"");
        return null;
    }

    private int ReadCount(JsonElement element, string path)
    {
        if (element.ValueKind == JsonValueKind.Number && element.TryGetInt32(out int count))
        {
            return count;
        }

        Add(path, element.ValueKind == JsonValueKind.Number ? $"{Words.Short(element.GetRawText())} is not a whole number from 1 to 1000000" : $"{Kind(element)} where a whole number is wanted");
        return 1;
    }

    private bool? ReadTruth(JsonElement element, string path)
    {
        if (element.ValueKind is JsonValueKind.True or JsonValueKind.False)
        {
            return element.GetBoolean();
        }

        Add(path, $"{Kind(element)} where true or false is wanted");
        return null;
    }

    private T? ReadWord<T>(JsonElement element, string path, Dictionary<string, T> words)
        where T : struct
    {
        if (Text(element, path) is not { } text)
        {
            return null;
        }

        if (words.TryGetValue(text, out T value))
        {
            return value;
        }

        Add(path, $"{Words.Quote(text)} is not known; known are \"{string.Join("\", \"", words.Keys)}\"");
        return null;
    }

    private FastenerSeries? ReadSeries(JsonElement element, string path)
    {
        if (Text(element, path) is not { } text)
        {
            return null;
        }

        List<string> names = [];
        foreach (FastenerSeries series in FastenerSeries.All)
        {
            if (Words.Same(series.Name, text))
            {
                return series;
            }

            names.Add(series.Name);
        }

        Add(path, $"{Words.Quote(text)} is not a series in the tables; known are \"{string.Join("\", \"", names)}\"");
        return null;
    }

    private SheetGoods? ReadSheet(JsonElement element, string path)
    {
        if (Text(element, path) is not { } text)
        {
            return null;
        }

        // The table has many sheets: where the kind is known, say its sizes, else say the kinds.
        List<string> sizes = [], kinds = [];
        foreach (SheetGoods sheet in SheetGoods.All)
        {
            if (Words.Same(sheet.Name, text))
            {
                return sheet;
            }

            if (Words.Holds(text, sheet.Family))
            {
                sizes.Add(sheet.Name);
            }

            if (!kinds.Contains(sheet.Family))
            {
                kinds.Add(sheet.Family);
            }
        }

        string known = sizes.Count > 0 ? $"known are \"{string.Join("\", \"", sizes)}\"" : $"known are sizes of \"{string.Join("\", \"", kinds)}\", for example {Words.Quote(SheetGoods.Birch15.Name)}";
        Add(path, $"{Words.Quote(text)} is not a sheet in the tables; {known}; or measure it and give a thickness instead");
        return null;
    }

    private string? ReadName(JsonElement element, string path)
    {
        if (Text(element, path, "a name") is not { } text)
        {
            return null;
        }

        foreach (Rune rune in text.EnumerateRunes())
        {
            // A control or direction character could hide or reorder what is printed.
            if (Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator)
            {
                Add(path, $"{Words.Quote(text)} holds a character that does not print");
                return null;
            }
        }

        if (text.Trim().Length is 0 or > LongestName)
        {
            Add(path, $"{Words.Quote(text)} is not a name of 1 to {LongestName} characters");
            return null;
        }

        return text.Trim();
    }

    private string? Text(JsonElement element, string path, string wanted = "a string")
    {
        if (element.ValueKind != JsonValueKind.String)
        {
            Add(path, $"{Kind(element)} where {wanted} is wanted");
            return null;
        }

        try
        {
            return element.GetString();
        }
        catch (InvalidOperationException)
        {
            Add(path, "half a character (a lone surrogate)");
            return null;
        }
    }

    private List<JsonElement>? Items(JsonElement element, string path, string wanted)
    {
        if (element.ValueKind == JsonValueKind.Array)
        {
            return [.. element.EnumerateArray()];
        }

        Add(path, $"{Kind(element)} where {wanted} is wanted");
        return null;
    }

    private Dictionary<string, JsonElement>? Members(JsonElement element, string path, string[] required, string[] optional)
    {
        string[] known = [.. required, .. optional];
        if (element.ValueKind != JsonValueKind.Object)
        {
            Add(path, $"{Kind(element)} where an object with \"{string.Join("\", \"", required)}\" is wanted");
            return null;
        }

        Dictionary<string, JsonElement> members = new(StringComparer.Ordinal);
        foreach (JsonProperty property in element.EnumerateObject())
        {
            string name = NameOf(property);
            if (Array.IndexOf(known, name) < 0)
            {
                Add(path + Words.Step(name), $"unknown member; known here are \"{string.Join("\", \"", known)}\"");
            }
            else if (!members.TryAdd(name, property.Value))
            {
                Add(path + Words.Step(name), "given more than once");
            }
        }

        foreach (string name in required)
        {
            if (!members.ContainsKey(name))
            {
                Add(path + Words.Step(name), "missing");
            }
        }

        return members;
    }

    private static string NameOf(JsonProperty property)
    {
        try
        {
            return property.Name;
        }
        catch (InvalidOperationException)
        {
            return "\uFFFD"; // a lone surrogate: no known name has one
        }
    }

    /// <summary>The nearest place in the file for a path of the check: <c>job.Layers[1].Thickness.Lower</c>.</summary>
    private string PlaceOf(string parameter, string path)
    {
        string at = parameter;
        while (!_places.ContainsKey(at))
        {
            int dot = at.LastIndexOf('.');
            if (dot < 0)
            {
                return path;
            }

            at = at[..dot];
        }

        return _places[at];
    }

    private void Add(string where, string what) => troubles.Add(new(where, what));

    /// <summary>The member that decides which others there are; null where it is missing or no string, which is reported with the others.</summary>
    private static string? Peek(JsonElement element, string name)
    {
        try
        {
            return element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out JsonElement member) && member.ValueKind == JsonValueKind.String ? member.GetString() : null;
        }
        catch (InvalidOperationException)
        {
            return null; // a lone surrogate
        }
    }

    private static string Kind(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a string",
        JsonValueKind.Number => "the number " + Words.Short(element.GetRawText()),
        JsonValueKind.True => "true",
        JsonValueKind.False => "false",
        _ => "null",
    };
}

/// <summary>What is printed: for each stack the nail first, then what speaks against it, then how it comes about.</summary>
internal sealed class BenchSheet(bool workings)
{
    private const int Width = 98;
    private const string Rule = "--------------------------------------------------------------------------------------------------";

    private readonly StringBuilder _text = new();
    private readonly List<Source> _sources = [];

    internal string Of(Van van)
    {
        List<FastenerChoice> choices = [];
        foreach (Stack stack in van.Stacks)
        {
            choices.Add(FastenerLength.Choose(stack.Job));
        }

        List<Finding> everywhere = NotesOfEvery(choices);
        _text.Append(CultureInfo.InvariantCulture, $"WHICH NAIL: {van.Name}\n\n");
        foreach (Finding note in everywhere)
        {
            Wrap(string.Empty, note.Message);
        }

        _text.Append('\n');
        int series = 0;
        foreach (Stack stack in van.Stacks)
        {
            series = Math.Max(series, stack.Job.Series.Name.Length);
        }

        for (int i = 0; i < choices.Count; i++)
        {
            string nail = choices[i].Chosen is { } chosen ? Words.Nail(chosen.Length.Nominal) : "-";
            Wrap(string.Create(CultureInfo.InvariantCulture, $"{i + 1,4}  {Verdict(choices[i]),-8}  {nail,-19}  {choices[i].Job.Series.Name.PadRight(series)}  "), van.Stacks[i].Name);
        }

        for (int i = 0; i < choices.Count; i++)
        {
            Print(i + 1, van.Stacks[i], choices[i], everywhere);
        }

        PrintSources(choices[0].TableEdition);
        PrintCount(choices);
        return _text.ToString();
    }

    private void Print(int number, Stack stack, FastenerChoice choice, List<Finding> everywhere)
    {
        FastenerJob job = choice.Job;
        string behind = new Behind(job.Behind.Kind, Measure.Mm(0)).ToString();
        _text.Append(CultureInfo.InvariantCulture, $"\n{Rule}\n{number}. {stack.Name}\n\n");
        Wrap("  >>> ", choice.Chosen switch
        {
            null => "NO NAIL",
            { } nail => $"{Words.Nail(nail.Length.Nominal)} {job.Series.Name}",
        });
        Wrap("      ", choice.Chosen switch
        {
            null => $"No stocked {job.Series.Name} may be driven toward {behind}.",
            { Tip: TipVerdict.Safe } => $"SAFE against {behind}, with every size below at its worst.",
            _ => $"MARGINAL toward {behind}, not safe: read the cautions.",
        });
        _text.Append('\n');

        PrintFindings(choice, everywhere);
        PrintStack(job, behind);
        PrintDriving(stack, choice);
        if (choice.Chosen is { } chosen)
        {
            PrintFigures(chosen, job);
            PrintNextLonger(choice, behind);
        }
        else
        {
            PrintRefused(choice, behind);
        }

        foreach (Remedy remedy in choice.Remedies)
        {
            Row("remedy", Words.Of(remedy, behind));
        }

        PrintDefaults(choice);
        if (workings)
        {
            PrintWorkings(choice);
        }
    }

    private void PrintFindings(FastenerChoice choice, List<Finding> everywhere)
    {
        bool any = false;
        for (Severity severity = Severity.Problem; severity >= Severity.Note; severity--)
        {
            foreach (Finding finding in choice.Findings)
            {
                if (finding.Severity == severity && !everywhere.Exists(note => note.Code == finding.Code))
                {
                    Row(severity == Severity.Note ? "note" : severity == Severity.Caution ? "CAUTION" : "PROBLEM", finding.Message);
                    any = true;
                }
            }
        }

        if (any)
        {
            _text.Append('\n');
        }
    }

    /// <summary>The layer that holds where the file does not say: the last that is neither a void nor gives.</summary>
    private static int LastSolid(FastenerJob job)
    {
        int last = job.Layers.Count - 1;
        while (last >= 0 && (job.Layers[last].IsVoid || job.Layers[last].Compressed is not null))
        {
            last--;
        }

        return last;
    }

    private void PrintStack(FastenerJob job, string behind)
    {
        int widest = 0;
        foreach (Layer layer in job.Layers)
        {
            widest = Math.Max(widest, layer.Name.Length);
        }

        widest = Math.Min(widest, 24);
        for (int i = 0; i < job.Layers.Count; i++)
        {
            Layer layer = job.Layers[i];
            string holds = (layer.Holds ?? (i == LastSolid(job))) ? ", holds" : string.Empty;
            string size = layer.Compressed is { } compressed
                ? $"{Words.Size(layer.Thickness.Nominal)} free, {Words.Size(compressed.Nominal)} squeezed"
                : Words.Toleranced(layer.Thickness);
            string sheet = layer.Sheet is { } goods ? $", {goods.Name}" : string.Empty;
            Row(i == 0 ? "stack" : string.Empty, $"{layer.Name.PadRight(widest)}  {size}{sheet}{holds}");
            if (layer.Sheet is { } from)
            {
                Rests(from.Source);
            }
        }

        Row(string.Empty, job.Behind.Distance == default
            ? $"then {behind}, touching"
            : $"then {behind} at {Words.Toleranced(job.Behind.Distance)}");
    }

    private void PrintDriving(Stack stack, FastenerChoice choice)
    {
        FastenerJob job = choice.Job;
        string way = stack.Board is null ? string.Empty : $"{stack.Board.Name} board, {Words.Of(stack.Nailing)}; ";
        string angle = job.DriveAngle.Degrees == 0 ? "square" : Words.Plain(job.DriveAngle.Degrees, 1) + " degrees from square";
        TolerancedLength? set = job.SetDepth;
        string depth = set is { } given ? $"head set {Words.Toleranced(given)}" : $"set by default ({DefaultSetDepth(choice)})";
        Row("driven", $"{way}{angle}, {depth}; {Words.Count(job)}{(stack.CountIsDefault ? " (no count given)" : string.Empty)}");
        Rests(job.Series.Source);
        Rests(job.Series.LengthsSource);
        if (job.Series.ToleranceSource is { } tolerance)
        {
            Rests(tolerance);
        }
    }

    /// <summary>The rule behind the default, with its tolerance, in the library's words.</summary>
    private static string DefaultSetDepth(FastenerChoice choice)
    {
        foreach (DefaultUsed used in choice.DefaultsUsed)
        {
            if (used.Figure.Name == "set-depth")
            {
                return used.Source.Title;
            }
        }

        return "as by default";
    }

    private void PrintFigures(FastenerCandidate nail, FastenerJob job)
    {
        Row(Words.Piece(job.Series), $"{Words.Toleranced(nail.Length)}, tip {Measure.FormatMillimetres(nail.TipDepth)} below the face");
        Row("clearance", $"{Words.Down(nail.Clearance)} at nominal sizes, {Words.Down(nail.WorstClearance)} in the worst case; {Words.Asked(nail.RequiredClearance)} asked");
        Row("bite", $"{Words.Down(nail.Bite)} at nominal sizes, {Words.Down(nail.WorstBite)} in the worst case; at least {Words.Asked(nail.LeastBite)}, aim {Words.Asked(nail.TargetBite)}");
        if (nail.Tip != TipVerdict.Safe)
        {
            Row("hits", $"{Words.Chance(nail.ExpectedHits)} expected over {Words.Count(job)}; chance of one or more {Words.Chance(nail.AnyHitChance)}");
        }
    }

    private void PrintNextLonger(FastenerChoice choice, string behind)
    {
        Row("longer", choice.NextLonger switch
        {
            null => "none is stocked",
            { Tip: TipVerdict.Safe } longer => $"{Words.Nail(longer.Length.Nominal)} is not needed: safe too, {Words.Clear(longer.WorstClearance)} in the worst case, but this one holds",
            { } longer => $"{Words.Nail(longer.Length.Nominal)} is refused: {Words.WhyNot(longer, behind)}",
        });
    }

    private void PrintRefused(FastenerChoice choice, string behind)
    {
        for (int i = 0; i < choice.Candidates.Count; i++)
        {
            FastenerCandidate candidate = choice.Candidates[i];
            Row(i == 0 ? "refused" : string.Empty, $"{Words.Nail(candidate.Length.Nominal)}: {Words.WhyNot(candidate, behind)}");

            // Longer ones only reach further.
            if (candidate.Tip == TipVerdict.Reaches && candidate.Hold == BiteVerdict.Bites)
            {
                break;
            }
        }
    }

    private void PrintDefaults(FastenerChoice choice)
    {
        List<string> used = [];
        foreach (DefaultUsed taken in choice.DefaultsUsed)
        {
            Rests(taken.Source);
            Figure figure = taken.Figure;
            used.Add($"{figure.Name.Replace('-', ' ')} {Words.Plain(figure.Value, 4)}{(figure.Unit.Length == 0 ? string.Empty : " " + figure.Unit)}");
        }

        Row("defaults", used.Count == 0 ? "none" : string.Join("; ", used));
    }

    private void PrintWorkings(FastenerChoice choice)
    {
        Workings steps = choice.Explain();
        _text.Append(CultureInfo.InvariantCulture, $"\n  Workings: {steps.Title}\n");
        foreach (WorkingStep step in steps.Steps)
        {
            Wrap("    ", step.ToString(), more: 4);
            Rests(step.Source);
        }
    }

    private void PrintSources(string edition)
    {
        _text.Append(CultureInfo.InvariantCulture, $"\n{Rule}\nWhat the figures rest on (material tables, edition {edition})\n\n");
        foreach (Source source in _sources)
        {
            Wrap("  ", $"[{source.Id}] {source}", more: 2);
        }

        _text.Append('\n');
        Wrap(string.Empty, "Clearances and bites are rounded down, 0.1 mm and 1/64 inch; a minus is past what is behind. ~ marks an inch size rounded to 1/64.");
    }

    private void PrintCount(List<FastenerChoice> choices)
    {
        int safe = 0, marginal = 0;
        foreach (FastenerChoice choice in choices)
        {
            safe += choice.Chosen is { Tip: TipVerdict.Safe } ? 1 : 0;
            marginal += choice.Chosen is { Tip: TipVerdict.Marginal } ? 1 : 0;
        }

        _text.Append(CultureInfo.InvariantCulture, $"\n{choices.Count} {(choices.Count == 1 ? "stack" : "stacks")}: {safe} safe, {marginal} marginal, {choices.Count - safe - marginal} without a nail.\n");
    }

    private static string Verdict(FastenerChoice choice) =>
        choice.Chosen is null ? "NO NAIL" : choice.Chosen.Tip == TipVerdict.Safe ? "safe" : "MARGINAL";

    /// <summary>The notes that every stack has: said once, on top.</summary>
    private static List<Finding> NotesOfEvery(List<FastenerChoice> choices)
    {
        List<Finding> notes = [];
        foreach (Finding finding in choices[0].Findings)
        {
            if (finding.Severity == Severity.Note && finding.Values.Count == 0
                && choices.TrueForAll(choice => HasNote(choice, finding)))
            {
                notes.Add(finding);
            }
        }

        return notes;

        static bool HasNote(FastenerChoice choice, Finding note)
        {
            foreach (Finding finding in choice.Findings)
            {
                if (finding.Code == note.Code && finding.Message == note.Message)
                {
                    return true;
                }
            }

            return false;
        }
    }

    private void Rests(Source source)
    {
        string words = source.ToString();
        if (!_sources.Exists(known => known.Id == source.Id && known.ToString() == words))
        {
            _sources.Add(source);
        }
    }

    private void Row(string label, string text) => Wrap($"  {label,-11}", text);

    /// <summary>A line, broken at spaces where it is too wide; what follows is indented as far as the lead, or further.</summary>
    private void Wrap(string lead, string text, int more = 0)
    {
        string rest = text;
        string start = lead;
        while (start.Length + rest.Length > Width)
        {
            int room = Width - start.Length;
            int cut = rest.LastIndexOf(' ', room);
            if (cut <= 0)
            {
                cut = rest.IndexOf(' ', room);
                if (cut < 0)
                {
                    break;
                }
            }

            _text.Append(start).Append(rest.AsSpan(0, cut).TrimEnd()).Append('\n');
            rest = rest[(cut + 1)..];
            start = new string(' ', lead.Length + more);
        }

        _text.Append(start).Append(rest).Append('\n');
    }
}

/// <summary>Lengths and words as a bench wants them.</summary>
internal static class Words
{
    private const double Sixtyfourth = 25.4 / 64;

    /// <summary>A stocked length is a name: exact, in both units.</summary>
    internal static string Nail(Length length) => $"{Measure.FormatMillimetres(length, 3)} ({Inches(length)})";

    /// <summary>A thickness as a caliper reads it.</summary>
    internal static string Size(Length length) => $"{Measure.FormatMillimetres(length, 2)} ({Inches(length)})";

    internal static string Toleranced(TolerancedLength length) => length.Least.Millimeters == length.Greatest.Millimeters
        ? $"{Size(length.Nominal)}, taken as exact"
        : $"{Size(length.Nominal)}, {Range(length)}";

    internal static string Range(TolerancedLength length) => $"{Plain(length.Least.Millimeters, 2)} to {Measure.FormatMillimetres(length.Greatest, 2)}";

    /// <summary>A clearance or bite: never shown as more than it is.</summary>
    internal static string Down(Length length)
    {
        double parts = Math.Floor((length.Millimeters / Sixtyfourth) + 1e-6);
        return $"{Measure.FormatMillimetres(Measure.Mm((double)(Math.Floor((decimal)length.Millimeters * 10) / 10)))} ({Measure.FormatInches(Measure.Mm(parts * Sixtyfourth), 64)})";
    }

    /// <summary>What is needed, or how far past: never shown as less than it is.</summary>
    internal static string Up(Length length) => Measure.FormatMillimetres(Measure.Mm((double)(Math.Ceiling((decimal)length.Millimeters * 10) / 10)));

    /// <summary>A clearance or bite that is asked, as it was given.</summary>
    internal static string Asked(Length length) => Measure.FormatMillimetres(length, 2);

    internal static string Chance(double value) => value == 0 ? "0" : value < 1e-6 ? "under 0.000001" : ((decimal)double.Parse(value.ToString("G2", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)).ToString("0.#######", CultureInfo.InvariantCulture);

    internal static string Plain(double value, int decimals) => Math.Round((decimal)value, decimals, MidpointRounding.AwayFromZero).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);

    internal static string Piece(FastenerSeries series) => series.Kind == FastenerKind.WoodScrew ? "screw" : "nail";

    internal static string Count(FastenerJob job) => $"{job.Count.ToString(CultureInfo.InvariantCulture)} {Piece(job.Series)}{(job.Count == 1 ? string.Empty : "s")}";

    internal static string Of(Nailing nailing) => nailing switch
    {
        Nailing.Face => "through the face",
        Nailing.BlindThroughTongue => "blind through the tongue",
        Nailing.ThroughUnderLap => "through the under lap",
        _ => "through both laps",
    };

    /// <summary>Why a length may not be driven: against what, by how much, and whether it would hold.</summary>
    internal static string WhyNot(FastenerCandidate candidate, string behind)
    {
        List<string> reasons = [];
        if (candidate.Tip != TipVerdict.Safe)
        {
            string verb = candidate.Tip == TipVerdict.Marginal ? "is marginal toward" : candidate.WorstClearance.Millimeters > 0 ? "comes too near" : "reaches";
            reasons.Add($"it {verb} {behind}, {Clear(candidate.Clearance)} at nominal sizes, {Clear(candidate.WorstClearance)} in the worst case, {Asked(candidate.RequiredClearance)} asked");
        }

        if (candidate.Hold != BiteVerdict.Bites)
        {
            reasons.Add($"it bites {Down(candidate.WorstBite)} in the worst case, {Asked(candidate.LeastBite)} asked");
        }

        if (candidate.HeadGoesThrough)
        {
            reasons.Add("its head may go through the first layer");
        }

        return string.Join("; ", reasons);
    }

    /// <summary>Each remedy holds in the worst case: the library offers no other.</summary>
    internal static string Of(Remedy remedy, string behind) => remedy switch
    {
        FurringRemedy furring => $"make what holds thicker: from {Up(furring.Least)}, {Nail(furring.Fastener)} is safe against {behind}"
            + (furring.Sheet is { } sheet ? $"; take {sheet.Name}, actually {Range(sheet.Thickness)}" : "; no sheet of its kind is that thick"),
        DriveAngleRemedy lean => $"drive at {Plain(lean.Angle.Degrees, 0)} degrees from square: {Nail(lean.Fastener)} is safe against {behind} and bites {Down(lean.Outcome.WorstBite)} in the worst case; its tip lies {Up(lean.Outcome.SideShift)} to the side, where the same rib must still be",
        SeriesRemedy other => $"take a thinner series: {other.Series.Name} {Nail(other.Fastener)} is safe against {behind}, {Down(other.Outcome.WorstClearance)} clear, and bites {Down(other.Outcome.WorstBite)} in the worst case; it holds less",
        _ => remedy.Text,
    };

    /// <summary>Same words, whatever their case and order, and whatever the commas: <c>sanded birch plywood 15 mm</c>.</summary>
    internal static bool Same(string name, string text) => Split(name).Count == Split(text).Count && Holds(text, name);

    /// <summary>Whether a text has every word of another, as often.</summary>
    internal static bool Holds(string text, string words)
    {
        List<string> left = Split(text);
        return Split(words).TrueForAll(left.Remove);
    }

    internal static string Quote(string text)
    {
        StringBuilder quoted = new("\"");
        foreach (char c in Short(text))
        {
            quoted.Append(char.IsControl(c) || char.GetUnicodeCategory(c) is UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
                ? string.Create(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}")
                : c.ToString());
        }

        return quoted.Append('"').ToString();
    }

    internal static string Short(string text) => text.Length <= 60 ? text : text[..60] + "...";

    /// <summary>One step of a JSON path.</summary>
    internal static string Step(string name)
    {
        foreach (char c in name)
        {
            if (!char.IsAsciiLetterOrDigit(c) && c != '_')
            {
                return $"[{Quote(name)}]";
            }
        }

        return name.Length == 0 ? "[\"\"]" : "." + Short(name);
    }

    internal static string Clear(Length clearance) => clearance.Millimeters < 0 ? $"{Up(Measure.Mm(-clearance.Millimeters))} past" : $"{Down(clearance)} clear";

    private static List<string> Split(string text) => [.. text.ToUpperInvariant().Split([' ', ','], StringSplitOptions.RemoveEmptyEntries)];

    /// <summary>To the nearest 64th; ~ where that is not the exact size.</summary>
    private static string Inches(Length length)
    {
        double parts = length.Millimeters / Sixtyfourth;
        return (Math.Abs(parts - Math.Round(parts)) > 1e-4 ? "~" : string.Empty) + Measure.FormatInches(length, 64);
    }
}
