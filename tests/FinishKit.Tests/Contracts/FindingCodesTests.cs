using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;
using Xunit;

namespace FinishKit.Tests.Contracts;

/// <summary>The codes of findings in the source and on docs/findings.md, held against each other: a code is a promise to hosts.</summary>
public sealed partial class FindingCodesTests
{
    private static readonly string s_source = Path.Combine(Repository.Root, "src", "FinishKit");

    /// <summary>Areas are folders. Ids of sources are written the same way, in files of their own.</summary>
    private static readonly string[] s_areas = [.. Directory.GetDirectories(s_source).Select(static folder => Path.GetFileName(folder)).Where(static folder => char.IsUpper(folder[0]))];

    private static readonly Match[] s_constants = [.. Files().SelectMany(static file => Constant().Matches(File.ReadAllText(file))).Where(static constant => IsCode(constant.Groups["code"].Value))];

    private static readonly (string Area, string Code, string Severity)[] s_inSource = [.. InSource()];

    private static readonly Dictionary<string, (string Severity, string Meaning)> s_listed = Repository.Read("docs", "findings.md").Split('\n')
        .Where(static line => line.StartsWith("| `", StringComparison.Ordinal)).Select(static line => line.Split('|'))
        .ToDictionary(static cells => cells[1].Trim().Trim('`'), static cells => (cells[2].Trim(), cells[3].Trim()), StringComparer.Ordinal);

    [Fact]
    public void Every_code_is_listed_and_every_listed_code_exists() =>
        Assert.Equal(s_inSource.Select(static found => found.Code).Distinct().Order(StringComparer.Ordinal), s_listed.Keys.Order(StringComparer.Ordinal));

    [Fact]
    public void A_listed_code_has_the_severity_of_the_source_and_a_meaning() => Assert.All(s_inSource, static found =>
    {
        Assert.True(s_listed[found.Code].Severity == found.Severity, $"{found.Code} is {found.Severity} in the source, {s_listed[found.Code].Severity} on the page.");
        Assert.True(s_listed[found.Code].Meaning.Length > 20, found.Code);
    });

    [Fact]
    public void A_code_is_kebab_case_and_starts_with_its_area() => Assert.All(s_inSource, static found =>
    {
        Assert.Matches("^[a-z]+(-[a-z0-9]+)+$", found.Code);
        Assert.StartsWith(found.Area.ToLowerInvariant() + "-", found.Code, StringComparison.Ordinal);
    });

    /// <summary>Whatever a finding is made with is one of the codes that were found: none hides behind a variable.</summary>
    [Fact]
    public void Every_finding_in_the_source_starts_with_a_literal_code()
    {
        int made = 0;
        foreach (string file in Files())
        {
            foreach (Match match in Made().Matches(Text(file)))
            {
                made++;
                Assert.True(s_inSource.Any(found => match.Groups["first"].Value.Contains("\"" + found.Code + "\"", StringComparison.Ordinal)), $"{Path.GetFileName(file)}: {match.Value}");
            }
        }

        Assert.True(made > 20, $"{made} findings only.");
    }

    /// <summary>Codes in remarks and pages exist.</summary>
    [Fact]
    public void Documentation_names_no_code_that_does_not_exist()
    {
        string[] sources = [.. Repository.Read("docs", "sources.md").Split('\n').Where(static line => line.StartsWith("| ", StringComparison.Ordinal)).Select(static line => line.Split('|')[1].Trim())];
        IEnumerable<string> remarks = Documentation.Members.SelectMany(static member => member.Descendants("c")).Select(static code => code.Value);
        IEnumerable<string> pages = Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs"), "*.md").SelectMany(static file => Backticks().Matches(File.ReadAllText(file))).Select(static match => match.Groups[1].Value);
        Assert.Empty(remarks.Concat(pages).Where(IsCode).Except(s_listed.Keys, StringComparer.Ordinal).Except(sources, StringComparer.Ordinal));
    }

    private static IEnumerable<(string Area, string Code, string Severity)> InSource()
    {
        foreach (string file in Files())
        {
            string text = Text(file);
            foreach (Match match in Literal().Matches(text).Where(static match => IsCode(match.Groups[1].Value)))
            {
                Match severity = Severities().Match(text, match.Index);
                yield return (Path.GetFileName(Path.GetDirectoryName(file)!), match.Groups[1].Value, severity.Success && severity.Index - match.Index < 200 ? severity.Groups[1].Value : "none");
            }
        }
    }

    /// <summary>A source file with the constants that stand for codes written out.</summary>
    private static string Text(string file)
    {
        string text = File.ReadAllText(file);
        foreach (Match constant in s_constants)
        {
            text = Regex.Replace(text.Replace(constant.Value, string.Empty, StringComparison.Ordinal), $@"(\b\w+\.)?\b{constant.Groups["name"].Value}\b(?=,)", "\"" + constant.Groups["code"].Value + "\"");
        }

        return text;
    }

    private static bool IsCode(string text) => CodeLike().IsMatch(text) && s_areas.Any(area => text.StartsWith(area.ToLowerInvariant() + "-", StringComparison.Ordinal));

    private static IEnumerable<string> Files() => s_areas.SelectMany(static area => Directory.EnumerateFiles(Path.Combine(s_source, area), "*.cs"));

    [GeneratedRegex("\"([^\"\\n]+)\"")]
    private static partial Regex Literal();

    [GeneratedRegex("const string (?<name>\\w+) = \"(?<code>[^\"]+)\";")]
    private static partial Regex Constant();

    [GeneratedRegex("`([^`\\n]+)`")]
    private static partial Regex Backticks();

    [GeneratedRegex("^[a-z]+(-[a-z0-9]+)+$")]
    private static partial Regex CodeLike();

    [GeneratedRegex(@"Severity\.(Note|Caution|Problem)")]
    private static partial Regex Severities();

    /// <summary>A finding made: by name, or by the target's type as a method that returns one does. Up to the first comma.</summary>
    [GeneratedRegex(@"(new Finding\(|static Finding \w+\([^)]*\) => new\()(?<first>[^,]*),")]
    private static partial Regex Made();
}
