using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using Mono.Cecil;
using Xunit;

namespace FinishKit.Tests.Architecture;

/// <summary>A host that moves from one build of the library to the other finds the same types and members.</summary>
public sealed class PublicSurfaceTests
{
    private const string InitMarker = "System.Runtime.CompilerServices.IsExternalInit";

    [Fact]
    public void Both_builds_have_the_same_public_surface()
    {
        using AssemblyDefinition modern = TwoBuilds.Read("net10.0");
        using AssemblyDefinition standard = TwoBuilds.Read("netstandard2.0");
        IReadOnlyList<string> expected = PublicSurface.Of(modern);
        Assert.Contains(expected, static line => line.StartsWith("FinishKit.Arc: method", StringComparison.Ordinal) && line.Contains("FromChordAndRise", StringComparison.Ordinal));
        IReadOnlyList<string> actual = PublicSurface.Of(standard);
        string[] differences =
        [
            .. expected.Except(actual, StringComparer.Ordinal).Select(static line => "net10.0 only: " + line),
            .. actual.Except(expected, StringComparer.Ordinal).Select(static line => "netstandard2.0 only: " + line),
        ];
        Assert.True(differences.Length == 0, string.Join("\n", differences));
    }

    [Fact]
    public void A_difference_in_surface_is_seen()
    {
        // Two types that differ in one member, in a default value, in an init accessor: what the test above must not overlook.
        using AssemblyDefinition tests = AssemblyDefinition.ReadAssembly(typeof(PublicSurfaceTests).Assembly.Location);
        string[] left = Lines(tests, nameof(SurfaceFixtureLeft)), right = Lines(tests, nameof(SurfaceFixtureRight));
        Assert.Equal(3, left.Except(right, StringComparer.Ordinal).Count());
        Assert.Equal(2, right.Except(left, StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Every_public_type_is_in_the_one_namespace()
    {
        using AssemblyDefinition library = AssemblyDefinition.ReadAssembly(typeof(Arc).Assembly.Location);
        Assert.All(library.MainModule.Types.Where(static type => type.IsPublic), static type => Assert.Equal("FinishKit", type.Namespace));
    }

    [Fact]
    public void Init_marker_leads_to_the_framework_where_the_framework_has_one()
    {
        // An assembly compiled against the netstandard2.0 build names [FinishKit]IsExternalInit in every init accessor it calls.
        Assembly library = typeof(Arc).Assembly;
        Type? marker = library.GetType(InitMarker);
#if NETSTANDARD_BUILD
        Assert.Same(library, marker!.Assembly);
        Assert.False(marker.IsVisible);
        Assert.DoesNotContain(library.GetForwardedTypes(), static type => type.FullName == InitMarker);
#else
        Assert.Same(typeof(object).Assembly.GetType(InitMarker), marker);
        Assert.Contains(library.GetForwardedTypes(), static type => type.FullName == InitMarker);
#endif
    }

    private static string[] Lines(AssemblyDefinition assembly, string type) =>
    [
        .. PublicSurface.Of(assembly)
            .Where(line => line.StartsWith("FinishKit.Tests.Architecture." + type + ":", StringComparison.Ordinal))
            .Select(line => line.Replace(type, "Fixture", StringComparison.Ordinal)),
    ];
}
