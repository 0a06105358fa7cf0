using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Reflection;
using System.Threading;
using MathNet.Numerics;
using Mono.Cecil;
using UnitsNet;
using Xunit;

namespace FinishKit.Tests.Architecture;

/// <summary>
/// The list of banned symbols bites: every id on it names something that exists (a misspelt id bans nothing, and nobody is
/// told), and every quantity that the library touches has all its traps on it.
/// </summary>
public sealed class BannedSymbolsTests
{
    private static readonly string[] s_ids = [.. Lines().Select(static line => line.Split(';')[0])];

    /// <summary>Assemblies whose members the list may name; the framework's by one type each.</summary>
    private static readonly Type[] s_named =
    [
        typeof(DateTime), typeof(DateTimeOffset), typeof(TimeProvider), typeof(System.Diagnostics.Stopwatch), typeof(Guid), typeof(Random), typeof(CultureInfo), typeof(Thread),
        typeof(Environment), typeof(Console), typeof(System.IO.File), typeof(System.IO.Directory), typeof(System.IO.Path), typeof(System.IO.FileInfo), typeof(System.IO.DirectoryInfo),
        typeof(System.IO.FileStream), typeof(AppContext),
    ];

    [Fact]
    public void Every_id_names_something()
    {
        HashSet<string> known = new(StringComparer.Ordinal);
        foreach (Type type in typeof(Length).Assembly.GetExportedTypes().Concat(typeof(FindRoots).Assembly.GetExportedTypes()).Concat(s_named))
        {
            known.Add(DocumentationId.Of(type));
            known.UnionWith(DocumentationId.OfMembers(type));
        }

        string[] unknown = [.. s_ids.Where(id => !known.Contains(id))];
        Assert.True(unknown.Length == 0, "These name nothing: " + string.Join("\n", unknown));
    }

    [Fact]
    public void Every_id_stands_once_and_says_what_to_do_instead()
    {
        Assert.Equal(s_ids.Length, s_ids.Distinct(StringComparer.Ordinal).Count());
        Assert.All(Lines(), static line => Assert.Matches("^[MPTF]:[^ ]+; [^ ].+\\.$", line));
    }

    [Fact]
    public void Every_quantity_the_library_touches_has_its_traps_banned()
    {
        using AssemblyDefinition library = AssemblyDefinition.ReadAssembly(typeof(Arc).Assembly.Location);
        Type[] quantities =
        [
            .. library.MainModule.GetTypeReferences()
                .Where(static type => type.Namespace == "UnitsNet")
                .Select(static type => typeof(Length).Assembly.GetType(type.FullName)!)
                .Where(static type => type is { IsValueType: true } && typeof(IQuantity).IsAssignableFrom(type)),
        ];
        Assert.Contains(typeof(Length), quantities);
        string[] missing = [.. quantities.SelectMany(Traps).Except(s_ids, StringComparer.Ordinal)];
        Assert.True(missing.Length == 0, "Add to BannedSymbols.txt:\n" + string.Join("\n", missing));
    }

    /// <summary>Arithmetic, comparison, equality, parsing and printing of a quantity: what style and the door replace.</summary>
    private static IEnumerable<string> Traps(Type quantity) => quantity
        .GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
        .Where(static member => member.Name.StartsWith("op_", StringComparison.Ordinal)
            || member.Name.Contains("Parse", StringComparison.Ordinal)
            || member.Name.Contains("FeetInches", StringComparison.Ordinal)
            || member.Name is "Equals" or "CompareTo" or "GetHashCode" or "ToString" or "Zero")
        .Where(static member => member is not MethodInfo { IsSpecialName: true } accessor || !accessor.Name.StartsWith("get_", StringComparison.Ordinal))
        .Select(static member => DocumentationId.Of(member)!);

    private static IEnumerable<string> Lines() => Repository.Read("src", "FinishKit", "BannedSymbols.txt")
        .Split('\n')
        .Where(static line => line.Length > 0 && !line.StartsWith("//", StringComparison.Ordinal));
}
