using System;
using System.Collections.Generic;
using System.Linq;
using Mono.Cecil;
using Mono.Cecil.Cil;
using Xunit;

namespace FinishKit.Tests.Architecture;

/// <summary>
/// No text of the library follows the thread's culture. Analyzers see calls of ToString; what they do not see is a number put
/// straight into an interpolated or joined string, so that is looked for in the compiled code.
/// </summary>
public sealed class CultureTests
{
    private static readonly HashSet<string> s_followCulture = new(StringComparer.Ordinal)
    {
        "System.Double", "System.Single", "System.Decimal", "System.DateTime", "System.DateTimeOffset",
    };

    [Fact]
    public void No_number_is_formatted_in_the_threads_culture()
    {
        using AssemblyDefinition library = TwoBuilds.Read("net10.0");
        string[] found = [.. library.MainModule.Types.SelectMany(Floors.WithNested).SelectMany(CultureDependent)];
        Assert.True(found.Length == 0, string.Join("\n", found));
    }

    [Theory]
    [InlineData(nameof(Fixture.Interpolated), 1)]
    [InlineData(nameof(Fixture.InterpolatedWithFormat), 1)]
    [InlineData(nameof(Fixture.Joined), 1)]
    [InlineData(nameof(Fixture.Quantity), 1)]
    [InlineData(nameof(Fixture.Invariant), 0)]
    [InlineData(nameof(Fixture.Words), 0)]
    public void The_search_finds_what_it_should(string method, int expected)
    {
        using AssemblyDefinition tests = AssemblyDefinition.ReadAssembly(typeof(CultureTests).Assembly.Location);
        TypeDefinition fixture = tests.MainModule.GetType("FinishKit.Tests.Architecture.CultureTests/Fixture");
        Assert.Equal(expected, CultureDependent(fixture).Count(line => line.Contains("::" + method + "(", StringComparison.Ordinal)));
    }

    private static IEnumerable<string> CultureDependent(TypeDefinition type) =>
        from method in type.Methods
        where method.HasBody

        // A record's own PrintMembers: every record here has a ToString of its own that does not call it.
        where method.Name != "PrintMembers" || ToStringCalls(type, method)
        from instruction in method.Body.Instructions
        where instruction.Operand is MethodReference called && IsCultureDependent(called, instruction.Previous)
        select $"{method.FullName} calls {((MethodReference)instruction.Operand).FullName}";

    private static bool ToStringCalls(TypeDefinition type, MethodDefinition printMembers) =>
        type.Methods.Single(m => m.Name == "ToString" && m.Parameters.Count == 0).Body.Instructions.Any(i => i.Operand is MethodReference called && called.Name == printMembers.Name);

    private static bool IsCultureDependent(MethodReference called, Instruction? before) => called.Name switch
    {
        "AppendFormatted" => called is GenericInstanceMethod formatted && Follows(formatted.GenericArguments[0]),
        "ToString" when called.Parameters.Count == 0 => Follows(called.DeclaringType)
            || (before is { OpCode.Code: Code.Constrained, Operand: TypeReference constrained } && Follows(constrained)),
        _ => false,
    };

    private static bool Follows(TypeReference type) => s_followCulture.Contains(type.FullName)
        || type.Namespace == "UnitsNet"
        || (type is GenericInstanceType { Name: "Nullable`1" } nullable && Follows(nullable.GenericArguments[0]));

#pragma warning disable CA1305 // the point of the fixture
    private static class Fixture
    {
        internal static string Interpolated(double value) => $"{value} mm";

        internal static string InterpolatedWithFormat(double? value) => $"{value:0.0} mm";

        internal static string Joined(double value) => value + " mm";

        internal static string Quantity(UnitsNet.Length value) => $"{value}";

        internal static string Invariant(double value) => FormattableString.Invariant($"{value} mm");

        internal static string Words(string value, int count) => $"{value} {count}";
    }
#pragma warning restore CA1305
}
