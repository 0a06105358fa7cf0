using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using Xunit;

namespace FinishKit.Tests;

/// <summary>docs/sources.md and the library's sources, held against each other.</summary>
public sealed class SourcesTests
{
    private static readonly Source[] s_sources = [.. typeof(Source).Assembly.GetTypes()
        .SelectMany(type => type.GetFields(BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public | BindingFlags.DeclaredOnly))
        .Where(field => field.FieldType == typeof(Source)).Select(field => (Source)field.GetValue(null)!)];

    private static readonly string[] s_listed = [.. Repository.Read("docs", "sources.md").Split('\n')
        .Where(line => line.StartsWith("| ", StringComparison.Ordinal) && !line.StartsWith("| id ", StringComparison.Ordinal)).Select(line => line.Split('|')[1].Trim())];

    [Fact]
    public void Every_source_is_listed_and_every_listed_one_exists()
    {
        Assert.NotEmpty(s_sources);
        Assert.Equal(s_sources.Select(s => s.Id).Distinct().Order(StringComparer.Ordinal), s_listed.Distinct().Order(StringComparer.Ordinal));
    }

    /// <summary>A publication has a row for each place in it that was read; nothing else has more than one.</summary>
    [Fact]
    public void Nothing_is_listed_twice()
    {
        string[] rows = [.. Repository.Read("docs", "sources.md").Split('\n').Where(static line => line.StartsWith("| ", StringComparison.Ordinal) && !line.StartsWith("| id ", StringComparison.Ordinal)).Select(static line => line.Trim())];
        Assert.True(rows.Length > 100, $"{rows.Length} rows only.");
        Assert.Empty(rows.GroupBy(static row => row).Where(static group => group.Count() > 1).Select(static group => group.Key));
        HashSet<string> published = [.. s_sources.Where(static source => source.Kind == SourceKind.Published).Select(static source => source.Id)];
        Assert.Empty(s_listed.GroupBy(static id => id).Where(group => group.Count() > 1 && !published.Contains(group.Key)).Select(static group => group.Key));
    }

    [Fact]
    public void A_published_source_says_who_where_and_how_it_was_read() => Assert.All(s_sources.Where(s => s.Kind == SourceKind.Published), source =>
    {
        Assert.NotNull(source.Publisher);
        Assert.NotNull(source.Place);
        Assert.NotEqual(SourceReading.NotPublished, source.Reading);
    });

    [Fact]
    public void A_derived_source_carries_its_derivation() => Assert.All(s_sources.Where(s => s.Kind == SourceKind.Derived), source => Assert.False(string.IsNullOrEmpty(source.Note)));

    [Fact]
    public void What_is_from_memory_says_so() => Assert.All(s_sources.Where(s => s.Reading == SourceReading.Memory), source => Assert.EndsWith("(from memory)", source.ToString(), StringComparison.Ordinal));

    [Fact]
    public void An_id_means_one_publication() => Assert.All(s_sources.GroupBy(s => s.Id), group => Assert.Single(group.Select(s => s.Title + s.Publisher + s.Year).Distinct()));

    [Fact]
    public void Every_row_of_every_table_has_a_source()
    {
        IEnumerable<Source> rows = [.. WoodSpecies.All.Select(x => x.Source), .. SpeciesCombination.All.Select(x => x.Source), .. StrengthClass.All.Select(x => x.Source), .. PlywoodKind.All.Select(x => x.Source), .. SheetGoods.All.Select(x => x.Source), .. FastenerSeries.All.SelectMany(x => new[] { x.Source, x.LengthsSource, x.ToleranceSource })];
        Assert.All(rows, source => Assert.Contains(source.Id, s_listed));
        Assert.DoesNotContain(rows, source => source.Kind == SourceKind.Supplied);
    }
}
