using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using FinishKit.Tests.Architecture;

namespace FinishKit.Tests.Contracts;

/// <summary>The documentation file that the compiler wrote beside the library, and the example regions of the tests.</summary>
internal static partial class Documentation
{
    private static readonly Dictionary<string, XElement> s_members = Read();

    internal static IEnumerable<XElement> Members => s_members.Values;

    /// <summary>Every example region of the compiled tests, by name: its lines, trimmed, without blank ones.</summary>
    internal static IReadOnlyDictionary<string, string[]> Regions { get; } = ReadRegions();

    internal static XElement? Of(MemberInfo member) => s_members.GetValueOrDefault(member is Type type ? DocumentationId.Of(type) : DocumentationId.Of(member)!);

    /// <summary>The text of an element with names of parameters and codes written out, white space joined.</summary>
    internal static string Text(XElement? element) => element is null
        ? string.Empty
        : Spaces().Replace(string.Concat(element.DescendantNodes().Select(static node => node switch
        {
            XText text => text.Value,
            XElement { IsEmpty: true } reference => ((string?)reference.Attribute("name") ?? (string?)reference.Attribute("cref") ?? (string?)reference.Attribute("langword"))?.Split('.')[^1],
            _ => string.Empty,
        })), " ").Trim();

    internal static string[] Paragraphs(XElement member) => [.. member.Elements("remarks").Elements("para").Select(Text)];

    internal static string[] Lines(string code) => [.. code.Split('\n').Select(static line => line.Trim()).Where(static line => line.Length > 0)];

    /// <summary>The numbers of a sentence in millimetres, newtons, kilograms or as they stand: <c>0 to 1 km</c> gives 0 and 1e6. A number without unit is read both ways.</summary>
    internal static IReadOnlySet<double> Numbers(string sentence)
    {
        HashSet<double> numbers = [];
        double later = 1;
        foreach (Match match in Number().Matches(sentence).Reverse())
        {
            double value = double.Parse(match.Groups["number"].Value.Replace(",", string.Empty, StringComparison.Ordinal), NumberStyles.Float, CultureInfo.InvariantCulture);
            double factor = match.Groups["unit"].Value switch
            {
                "m" => 1e3,
                "km" => 1e6,
                "MN" => 1e6,
                "m²" => 1e6,
                _ => 1,
            };
            later = match.Groups["unit"].Success && match.Groups["unit"].Length > 0 ? factor : later;
            numbers.Add(value * factor);
            numbers.Add(value * later);
        }

        return numbers;
    }

    private static Dictionary<string, XElement> Read()
    {
        string file = Path.ChangeExtension(PublicMembers.Library.Location, ".xml");
        return XDocument.Load(file, LoadOptions.PreserveWhitespace).Descendants("member").ToDictionary(static member => (string)member.Attribute("name")!, StringComparer.Ordinal);
    }

    private static Dictionary<string, string[]> ReadRegions()
    {
        Dictionary<string, string[]> regions = new(StringComparer.Ordinal);
        foreach (string file in Directory.EnumerateFiles(Path.Combine(Repository.Root, "tests", "FinishKit.Tests"), "*.cs", SearchOption.AllDirectories).Where(static file => !IsBuilt(file)))
        {
            foreach (Match match in Region().Matches(File.ReadAllText(file)))
            {
                regions.Add(match.Groups["name"].Value.Trim(), Lines(match.Groups["body"].Value));
            }
        }

        return regions;
    }

    private static bool IsBuilt(string file) => file.Replace('\\', '/') is var path && (path.Contains("/bin/", StringComparison.Ordinal) || path.Contains("/obj/", StringComparison.Ordinal));

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"(?<![\w.-])(?<number>-?\d[\d,]*(\.\d+)?)(\s?(?<unit>mm|km|m²|MN|m|N|kg|g)(?![\w/]))?")]
    private static partial Regex Number();

    [GeneratedRegex(@"^[ \t]*#region example: (?<name>[^\n]+)\n(?<body>.*?)^[ \t]*#endregion", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Region();
}
