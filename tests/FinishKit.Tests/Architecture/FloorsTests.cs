using System;
using System.Collections.Generic;
using System.Linq;
using Mono.Cecil;
using Xunit;

namespace FinishKit.Tests.Architecture;

/// <summary>The floors of the library, and fixtures in this assembly that prove that the check can fail.</summary>
public sealed class FloorsTests
{
    /// <summary>References that break the rule and are let through, written as the test prints them, each with its reason beside it. None so far.</summary>
    private static readonly string[] s_allowed = [];

    private static readonly SourceFolders s_folders = new();

    [Fact]
    public void No_folder_of_the_library_sees_its_own_floor_or_a_higher_one()
    {
        using AssemblyDefinition library = Read(typeof(Arc));
        IReadOnlyList<string> violations = Floors.Violations(Written(library), s_folders.Of, Floors.Library, s_allowed);
        Assert.True(violations.Count == 0, string.Join("\n", violations));
    }

    [Fact]
    public void Every_type_of_the_library_is_found_in_its_folder()
    {
        using AssemblyDefinition library = Read(typeof(Arc));
        Dictionary<string, string> folders = Written(library).ToDictionary(static type => type.FullName, s_folders.Of, StringComparer.Ordinal);
        Assert.Equal("Geometry", folders["FinishKit.Arc"]);
        Assert.Equal("Geometry", folders["FinishKit.CircularArc"]);
        Assert.Equal("Materials", folders["FinishKit.CharacteristicDensity"]);
        Assert.Equal(Floors.Root, folders["FinishKit.TolerancedLength"]);

        // No code, so no debug symbols: found by name.
        Assert.Equal(Floors.Root, folders["FinishKit.Severity"]);
        Assert.Equal(Floors.Root, folders["FinishKit.ITrace"]);
        Assert.DoesNotContain(folders, static entry => entry.Value.Contains('?', StringComparison.Ordinal) || entry.Value.Contains('+', StringComparison.Ordinal));
    }

    [Fact]
    public void References_down_are_seen()
    {
        using AssemblyDefinition library = Read(typeof(Arc));
        TypeDefinition arc = library.MainModule.GetType("FinishKit.Arc");
        Assert.Superset(new HashSet<string> { "FinishKit.Door", "FinishKit.Sources", "FinishKit.InputProblem", "FinishKit.ITrace" }, Floors.References(arc).ToHashSet());
    }

    [Fact]
    public void Every_allowed_reference_is_still_needed()
    {
        using AssemblyDefinition library = Read(typeof(Arc));
        IReadOnlyList<string> all = Floors.Violations(Written(library), s_folders.Of, Floors.Library, []);
        Assert.All(s_allowed, line => Assert.Contains(line, all));
    }

    [Theory]
    [InlineData("Call", "Geometry.Call (Geometry) -> Fastening.Upstairs (Fastening)")]
    [InlineData("Signature", "Geometry.Signature (Geometry) -> Fastening.Upstairs (Fastening)")]
    [InlineData("Field", "Geometry.Field (Geometry) -> Fastening.Upstairs (Fastening)")]
    [InlineData("BaseType", "Geometry.BaseType (Geometry) -> Fastening.Upstairs (Fastening)")]
    [InlineData("Marked", "Geometry.Marked (Geometry) -> Fastening.MarkAttribute (Fastening)")]
    [InlineData("MarkedByType", "Geometry.MarkedByType (Geometry) -> Fastening.Upstairs (Fastening)")]
    [InlineData("GenericArgument", "Geometry.GenericArgument (Geometry) -> Fastening.Upstairs (Fastening)")]
    [InlineData("Constraint", "Geometry.Constraint`1 (Geometry) -> Fastening.Upstairs (Fastening)")]
    [InlineData("Lambda", "Geometry.Lambda (Geometry) -> Fastening.Upstairs (Fastening)")]
    [InlineData("Neighbour", "Geometry.Neighbour (Geometry) -> Materials.Beside (Materials)")]
    [InlineData("FromTheGround", "FromTheGround (root) -> Materials.Beside (Materials)")]
    [InlineData("Shed", "Attic.Shed is in the folder 'Attic', which is on no floor")]
    public void A_forbidden_reference_is_reported(string type, string expected)
    {
        string line = Assert.Single(InFixture([]), found => found.StartsWith(expected.Split(' ')[0] + " ", StringComparison.Ordinal));
        Assert.Equal(expected, line);
        Assert.Contains(type, expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_else_in_the_fixture_is_reported() => Assert.Equal(12, InFixture([]).Count);

    [Fact]
    public void An_allowed_reference_is_not_reported()
    {
        const string Line = "Geometry.Call (Geometry) -> Fastening.Upstairs (Fastening)";
        Assert.DoesNotContain(Line, InFixture([Fixture + Line.Replace("-> ", "-> " + Fixture, StringComparison.Ordinal)]));
    }

    private const string Fixture = "FinishKit.Tests.Architecture.Fixture.";

    private static List<string> InFixture(IReadOnlyCollection<string> allowed)
    {
        using AssemblyDefinition tests = Read(typeof(FloorsTests));
        List<TypeDefinition> types = [.. tests.MainModule.Types.Where(static type => (type.Namespace + ".").StartsWith(Fixture, StringComparison.Ordinal))];
        return [.. Floors.Violations(types, static type => (type.Namespace + ".")[Fixture.Length..].TrimEnd('.'), Floors.Library, allowed)
            .Select(static line => line.Replace(Fixture, string.Empty, StringComparison.Ordinal))];
    }

    private static AssemblyDefinition Read(Type type) => AssemblyDefinition.ReadAssembly(type.Assembly.Location, new ReaderParameters { ReadSymbols = true });

    /// <summary>The outermost types that a person wrote: the compiler's own have no folder.</summary>
    private static List<TypeDefinition> Written(AssemblyDefinition assembly) =>
    [
        .. assembly.MainModule.Types.Where(static type => !type.Name.Contains('<', StringComparison.Ordinal)
            && !type.CustomAttributes.Any(static attribute => attribute.AttributeType.Name == "CompilerGeneratedAttribute")),
    ];
}
