using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using UnitsNet;
using Xunit;

namespace FinishKit.Tests.Contracts;

/// <summary>
/// The documentation says what the code does. Read from the compiled documentation: every public member is documented; every
/// calculation has its formula, validity, source, units, ranges, exceptions and an example that is compiled and run.
/// </summary>
public sealed partial class DocumentationTests
{
    private static readonly Dictionary<Type, string> s_units = new()
    {
        [typeof(Length)] = "[length]",
        [typeof(TolerancedLength)] = "[length]",
        [typeof(Angle)] = "[angle]",
        [typeof(Mass)] = "[mass]",
        [typeof(Force)] = "[force]",
        [typeof(Temperature)] = "[temperature]",
        [typeof(RelativeHumidity)] = "[relative humidity]",
        [typeof(Pressure)] = "[pressure]",
        [typeof(Area)] = "[area]",
        [typeof(Density)] = "[density]",
        [typeof(ForcePerLength)] = "[force per length]",
        [typeof(CharacteristicDensity)] = "[density]",
    };

    private static readonly string[] s_sources = [.. Repository.Read("docs", "sources.md").Split('\n')
        .Where(static line => line.StartsWith("| ", StringComparison.Ordinal)).Select(static line => line.Split('|')[1].Trim()).Where(static id => id != "id")];

    private static readonly Dictionary<string, MethodInfo> s_calculations = PublicMembers.Calculations.ToDictionary(PublicMembers.Name, StringComparer.Ordinal);

    public static TheoryData<string> Calculations() => [.. s_calculations.Keys];

    [Fact]
    public void Every_public_type_and_member_is_documented()
    {
        IEnumerable<MemberInfo> members = PublicMembers.Types.SelectMany(static type => type.GetMembers(PublicMembers.Declared).Where(static member => IsOwn(member)).Prepend(type));
        string[] silent = [.. members.Where(static member => !IsDocumented(Documentation.Of(member))).Select(static member => $"{member.DeclaringType?.Name}.{member.Name}")];
        Assert.True(silent.Length == 0, string.Join("\n", silent));
    }

    [Fact]
    public void Every_parameter_and_result_is_documented()
    {
        IEnumerable<string> silent =
            from method in PublicMembers.Types.Where(static type => !type.IsEnum).SelectMany(static type => type.GetMembers(PublicMembers.Declared)).OfType<MethodBase>().Where(IsOwn)
            let member = Documentation.Of(method)
            where member is not null && member.Element("inheritdoc") is null
            from missing in method.GetParameters().Where(parameter => Documentation.Text(Param(member, parameter)).Length < 3).Select(static parameter => parameter.Name)
                .Concat(method is MethodInfo info && info.ReturnType != typeof(void) && info.Name is not ("op_Implicit" or "ToString") && Documentation.Text(member.Element("returns")).Length < 3 ? ["returns"] : [])
            select $"{PublicMembers.Name(method)}: {missing}";
        Assert.Empty(silent);
    }

    [Theory]
    [MemberData(nameof(Calculations))]
    public void A_calculation_says_formula_validity_and_source(string name)
    {
        XElement member = Documentation.Of(s_calculations[name])!;
        string[] paragraphs = Documentation.Paragraphs(member);
        foreach (string heading in new[] { "Formula: ", "Validity: ", "Source: " })
        {
            Assert.Single(paragraphs, paragraph => paragraph.StartsWith(heading, StringComparison.Ordinal) && paragraph.Length > heading.Length + 5);
        }

        string source = paragraphs.Single(static paragraph => paragraph.StartsWith("Source: ", StringComparison.Ordinal));
        string[] ids = [.. Word().Matches(source).Select(static match => match.Value).Where(s_sources.Contains)];
        Assert.True(ids.Length > 0, $"{source} names no id of docs/sources.md.");

        // Words that look like an id must be one.
        Assert.Empty(IdLike().Matches(source).Select(static match => match.Value).Except(s_sources, StringComparer.Ordinal));
        Assert.Contains("(", source, StringComparison.Ordinal); // derived, read in a copy, from memory, judgement
    }

    [Theory]
    [MemberData(nameof(Calculations))]
    public void A_calculation_names_the_unit_and_range_of_every_parameter(string name)
    {
        MethodInfo method = s_calculations[name];
        XElement member = Documentation.Of(method)!;
        foreach (ParameterInfo parameter in method.GetParameters())
        {
            string text = Documentation.Text(Param(member, parameter));
            Type type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
            if (type.Namespace == "UnitsNet" || s_units.ContainsKey(type))
            {
                Assert.Contains(s_units[type], text, StringComparison.Ordinal);
            }

            IReadOnlySet<double> written = Documentation.Numbers(text);
            foreach (Match range in BadInputTable.AllowedBy(method, parameter).Select(static allowed => Range().Match(allowed)).Where(static match => match.Success))
            {
                foreach (string bound in new[] { "least", "most" })
                {
                    double number = range.Groups[bound].Success ? double.Parse(range.Groups[bound].Value, System.Globalization.CultureInfo.InvariantCulture) : 0;
                    Assert.True(
                        written.Contains(number) || written.Contains(Math.Abs(number)),
                        $"{name}: allowed is '{range.Value}', the documentation of {parameter.Name} says '{text}'.");
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Calculations))]
    public void A_calculation_names_the_exceptions_it_throws(string name)
    {
        MethodInfo method = s_calculations[name];
        string[] documented = [.. Documentation.Of(method)!.Elements("exception").Select(static exception => ((string)exception.Attribute("cref")!)[2..])];
        IReadOnlySet<Type> thrown = BadInputTable.ThrownBy(method);
        Assert.All(thrown, type => Assert.True(
            documented.Contains(type.FullName) || documented.Contains(typeof(ArgumentException).FullName), $"{name} throws {type.Name} and documents {string.Join(", ", documented)}."));

        // Cancelling is no input that is bad: a search that can be cancelled says so, and its own tests cancel it.
        bool canBeCancelled = method.GetParameters().Any(static parameter => parameter.ParameterType == typeof(System.Threading.CancellationToken));
        Assert.Equal(canBeCancelled, documented.Contains(typeof(OperationCanceledException).FullName));
        Assert.All(documented.Where(static text => text != typeof(OperationCanceledException).FullName), text => Assert.True(
            thrown.Any(type => type.FullName == text || type.BaseType!.FullName == text), $"{name} documents {text}; no row of the table of bad input throws it."));
    }

    [Theory]
    [MemberData(nameof(Calculations))]
    public void A_calculation_has_an_example(string name) => Assert.NotNull(Documentation.Of(s_calculations[name])!.Element("example")?.Element("code"));

    [Fact]
    public void Every_example_is_a_region_of_a_compiled_test_and_every_region_is_an_example()
    {
        List<string[]> examples = [.. Documentation.Members.Elements("example").Elements("code").Select(static code => Documentation.Lines(code.Value))];
        string[] unknown = [.. examples.Where(static example => !Documentation.Regions.Values.Any(region => region.SequenceEqual(example))).Select(static example => string.Join("\n", example))];
        Assert.True(unknown.Length == 0, "No region says:\n" + string.Join("\n\n", unknown));
        Assert.Equal(["README"], Documentation.Regions.Where(region => !examples.Any(example => example.SequenceEqual(region.Value))).Select(static region => region.Key)); // the README has a test of its own
        Assert.True(examples.Count > 30, "The documentation has lost its examples.");
    }

    [Theory]
    [InlineData("Chord [length], more than 0 up to 1 km.", 0, 1e6)]
    [InlineData("Its depth, 0 to 10 m.", 0, 1e4)]
    [InlineData("Between -179° and 179°.", -179, 179)]
    [InlineData("The mass, 0 to 10,000 kg.", 0, 10_000)]
    [InlineData("What it holds, 0 to 1 MN; 3 g or NDS-2018.", 0, 1e6)]
    public void Numbers_are_read_with_their_units(string text, double least, double most)
    {
        Assert.Contains(least, Documentation.Numbers(text));
        Assert.Contains(most, Documentation.Numbers(text));
        Assert.DoesNotContain(2018, Documentation.Numbers(text));
    }

    private static XElement? Param(XElement member, ParameterInfo parameter) => member.Elements("param").FirstOrDefault(param => (string?)param.Attribute("name") == parameter.Name);

    private static bool IsDocumented(XElement? member) => member is not null && (member.Element("inheritdoc") is not null || Documentation.Text(member.Element("summary")).Length > 3);

    /// <summary>Written by a person: not an accessor, not what the compiler adds to records and enums.</summary>
    private static bool IsOwn(MemberInfo member) => !PublicMembers.IsWrittenByTheCompiler(member)
        && member is not MethodInfo { IsSpecialName: true, Name: not ("op_Implicit" or "op_Explicit" or "op_Equality" or "op_Inequality") } and not FieldInfo { Name: "value__" };

    [GeneratedRegex(@"[A-Za-z][\w.-]*\w")]
    private static partial Regex Word();

    /// <summary>An id as derived ones are written, or a publication's: with a hyphen and all small letters, or capitals with digits.</summary>
    [GeneratedRegex(@"\b((geometry|materials|beams|fastening|stock|furring|boards|panels|slats|retention|withdrawal|tolerance|default)-[a-z-]+|[A-Z]+(-[A-Z]+)*-\d[\d.-]*\d)\b")]
    private static partial Regex IdLike();

    [GeneratedRegex(@"^(?:more than 0(?: \S+)?, up to|(?<least>-?[\d.]+) to) (?<most>-?[\d.]+)(?: \S+)?$")]
    private static partial Regex Range();
}
