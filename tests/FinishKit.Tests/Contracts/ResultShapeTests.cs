using System;
using System.Collections;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Runtime.Loader;
using Xunit;

namespace FinishKit.Tests.Contracts;

/// <summary>The shape that every result and input has, and that what they print depends on nothing but the input.</summary>
public sealed class ResultShapeTests
{
    private static readonly string[] s_cultures = ["de-DE", "ar-SA", "tr-TR", "fa-IR", "fr-FR"];

    public static TheoryData<Type> Results() => [.. PublicMembers.ResultTypes];

    public static TheoryData<Type> Records() => [.. PublicMembers.InputRecords];

    public static TheoryData<Type> RecordsWithOptionalMembers() => [.. PublicMembers.InputRecords.Where(static type => PublicMembers.InitMembers(type).Count() > Constructors(type)[0].GetParameters().Length)];

    [Fact]
    public void The_results_are_found() => Assert.Superset(
        new HashSet<Type> { typeof(CircularArc), typeof(FastenerChoice), typeof(FastenerCandidate), typeof(TipClearance), typeof(FurringRemedy), typeof(WithdrawalCapacity), typeof(RetentionCount), typeof(RetentionResult) },
        PublicMembers.ResultTypes.ToHashSet());

    [Theory]
    [MemberData(nameof(Results))]
    public void A_result_is_a_sealed_class_or_a_readonly_struct_that_compares_by_hand(Type type)
    {
        Assert.False(PublicMembers.IsRecord(type), "A record prints and compares quantities wrongly.");
        if (type.IsValueType)
        {
            Assert.Contains(type.CustomAttributes, static attribute => attribute.AttributeType.Name == "IsReadOnlyAttribute");
            Assert.True(typeof(IEquatable<>).MakeGenericType(type).IsAssignableFrom(type));
            Assert.NotNull(type.GetMethod("op_Equality"));
            Assert.NotNull(type.GetMethod("op_Inequality"));
            Assert.Equal(type, type.GetMethod("GetHashCode")!.DeclaringType);
        }
        else
        {
            Assert.True(type.IsSealed);
        }

        Assert.All(type.GetProperties(), static property => Assert.Null(property.SetMethod));
        Assert.NotEqual(typeof(object), type.GetMethod(nameof(ToString), [])!.DeclaringType);
        Assert.NotEqual(typeof(ValueType), type.GetMethod(nameof(ToString), [])!.DeclaringType);
    }

    [Theory]
    [MemberData(nameof(Results))]
    public void A_result_has_findings_figures_and_workings(Type type)
    {
        Assert.Equal(typeof(IReadOnlyList<Finding>), type.GetProperty("Findings")?.PropertyType);
        Assert.Equal(typeof(bool), type.GetProperty("HasProblem")?.PropertyType);
        Assert.Equal(typeof(IReadOnlyList<Figure>), type.GetMethod("Figures", [])?.ReturnType);
        Assert.Equal(typeof(Workings), type.GetMethod("Explain", [])?.ReturnType);
    }

    /// <summary>So that hosts can build fakes.</summary>
    [Theory]
    [MemberData(nameof(Results))]
    public void A_result_can_be_made_by_a_host(Type type) => Assert.True(
        type.GetConstructors().Length > 0 || PublicMembers.Types.SelectMany(static made => made.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Any(method => (Nullable.GetUnderlyingType(method.ReturnType) ?? method.ReturnType) == type && !method.IsSpecialName));

    [Fact]
    public void A_problem_among_the_findings_is_a_problem_of_the_result() => Assert.All(Samples.Results(), static sample =>
    {
        var findings = (IReadOnlyList<Finding>)sample.Result.GetType().GetProperty("Findings")!.GetValue(sample.Result)!;
        bool hasProblem = (bool)sample.Result.GetType().GetProperty("HasProblem")!.GetValue(sample.Result)!;
        Assert.True(hasProblem == findings.Any(static finding => finding.Severity >= Severity.Problem), $"{sample.Name}: {hasProblem}, {string.Join(" ", findings.Select(static finding => finding.Code))}");
    });

    [Fact]
    public void Figures_are_finite_named_once_and_have_units() => Assert.All(Samples.Results(), static sample =>
    {
        var findings = (IReadOnlyList<Finding>)sample.Result.GetType().GetProperty("Findings")!.GetValue(sample.Result)!;
        var figures = (IReadOnlyList<Figure>)sample.Result.GetType().GetMethod("Figures", [])!.Invoke(sample.Result, null)!;
        foreach (IReadOnlyList<Figure> list in findings.Select(static finding => finding.Values).Append(figures))
        {
            Assert.Equal(list.Count, list.Select(static figure => figure.Name).Distinct().Count());
            Assert.All(list, figure => Assert.True(double.IsFinite(figure.Value), $"{sample.Name}: {figure}"));
            Assert.All(list, static figure => Assert.Matches("^[a-z]+(-[a-z]+)*$", figure.Name));
        }

        Assert.All(findings, static finding => Assert.EndsWith(".", finding.Message, StringComparison.Ordinal));
    });

    [Fact]
    public void The_samples_cover_every_result_type() => Assert.Equal(
        PublicMembers.ResultTypes.Select(static type => type.Name).Order(StringComparer.Ordinal), Samples.Results().Select(static sample => sample.Result.GetType().Name).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Texts_and_figures_are_the_same_in_every_culture_and_every_time()
    {
        string[] expected = [.. Samples.Texts()];
        Assert.True(expected.Length > 100, $"{expected.Length} texts only.");
        Assert.Equal(expected, Samples.Texts());
        CultureInfo culture = CultureInfo.CurrentCulture, ui = CultureInfo.CurrentUICulture;
        try
        {
            foreach (string name in s_cultures)
            {
                CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = new CultureInfo(name);
                Assert.NotEqual("1.5-i", string.Format(CultureInfo.CurrentCulture, "{0}-{1}", 1.5, "I".ToLower(CultureInfo.CurrentCulture))); // the culture differs
                Assert.Equal(expected, Samples.Texts());
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
            CultureInfo.CurrentUICulture = ui;
        }
    }

    [Theory]
    [MemberData(nameof(Records))]
    public void An_input_record_can_be_built_by_members_and_by_constructor(Type type)
    {
        Assert.True(type.IsSealed);
        Assert.NotNull(type.GetConstructor([]));
        PropertyInfo[] required = [.. PublicMembers.InitMembers(type).Where(static property => property.CustomAttributes.Any(static attribute => attribute.AttributeType.Name == "RequiredMemberAttribute"))];
        Assert.NotEmpty(required);
        Assert.All(PublicMembers.InitMembers(type), static property => Assert.Contains(property.SetMethod!.ReturnParameter.GetRequiredCustomModifiers(), static modifier => modifier.Name == "IsExternalInit"));

        // One constructor of the required members alone, and where there are others a second one that takes these too: the required in front as in the first, each of the others optional.
        PropertyInfo[] optional = [.. PublicMembers.InitMembers(type).Except(required)];
        ParameterInfo[][] constructors = [.. Constructors(type).Select(static constructor => constructor.GetParameters())];
        Assert.Equal(optional.Length > 0 ? 2 : 1, constructors.Length);
        Assert.Equal(Members(required), Taken(constructors[0]));
        Assert.All(constructors[0], static parameter => Assert.False(parameter.IsOptional));
        if (optional.Length > 0)
        {
            Assert.Equal(constructors[0].Select(static parameter => (parameter.Name, parameter.ParameterType)), constructors[1].Take(required.Length).Select(static parameter => (parameter.Name, parameter.ParameterType)));
            Assert.Equal(Members(optional), Taken(constructors[1].Skip(required.Length)));
            Assert.Equal(constructors[1].Skip(required.Length), constructors[1].Where(static parameter => parameter.IsOptional));
        }

        Assert.Equal(type, type.GetMethod(nameof(ToString), [])!.DeclaringType);
        Assert.False(PublicMembers.IsWrittenByTheCompiler(type.GetMethod(nameof(ToString), [])!), "A record's own ToString follows the thread's culture.");
    }

    /// <summary>C# 7.3 and VB cannot set init members: a constructor sets what it is given at its own member and leaves the others at their defaults.</summary>
    [Theory]
    [MemberData(nameof(RecordsWithOptionalMembers))]
    public void Every_optional_member_can_be_set_without_an_init_accessor(Type type)
    {
        ConstructorInfo[] constructors = Constructors(type);
        PropertyInfo[] members = [.. PublicMembers.InitMembers(type)];
        ParameterInfo[] parameters = constructors[1].GetParameters();
        object good = GoodValues.Of(type);
        object?[] omitted = [.. parameters.Select(parameter => parameter.IsOptional ? parameter.DefaultValue : Member(parameter).GetValue(good))];
        object plain = constructors[0].Invoke([.. omitted.Take(constructors[0].GetParameters().Length)]);
        Holds(constructors[1].Invoke(omitted), plain, null, null);
        foreach (ParameterInfo parameter in parameters.Where(static parameter => parameter.IsOptional))
        {
            object? given = Other(parameter, Member(parameter).GetValue(plain));
            object?[] arguments = [.. omitted];
            arguments[parameter.Position] = given;
            Holds(constructors[1].Invoke(arguments), plain, Member(parameter), given);
        }

        PropertyInfo Member(ParameterInfo parameter) => members.Single(member => string.Equals(member.Name, parameter.Name, StringComparison.OrdinalIgnoreCase));

        void Holds(object made, object others, PropertyInfo? set, object? given) => Assert.All(members, member => Assert.True(
            Same(member == set ? given : member.GetValue(others), member.GetValue(made)), $"{type.Name} with {set?.Name ?? "nothing"} given: {member.Name} is {member.GetValue(made)}."));
    }

    [Fact]
    public void Nothing_public_can_be_changed_by_one_host_for_all()
    {
        foreach (Type type in PublicMembers.Types)
        {
            Assert.Equal("FinishKit", type.Namespace);
            Assert.All(type.GetFields(PublicMembers.Declared).Where(field => !(type.IsEnum && field.Name == "value__")), field => Assert.True(field.IsLiteral, $"{type.Name}.{field.Name} is a public field."));
            foreach (PropertyInfo property in type.GetProperties(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
            {
                Assert.True(property.SetMethod is null, $"{type.Name}.{property.Name} can be set.");
                object? value = property.GetValue(null);
                Assert.False(value is Array or IList { IsReadOnly: false }, $"{type.Name}.{property.Name} hands out a list that a host can change by a cast: {value?.GetType().Name}.");
            }
        }
    }

    /// <summary>A static member that reads one that is not yet set gives null, and only in the order that nobody tried.</summary>
    [Fact]
    public void Each_type_can_be_the_first_one_used()
    {
        string location = PublicMembers.Library.Location;
        string[] names = [.. PublicMembers.Library.GetTypes().Where(static type => type is { TypeInitializer: not null, ContainsGenericParameters: false }).Select(static type => type.FullName!)];
        Assert.True(names.Length > 10, $"{names.Length} types only.");
        foreach (string name in names)
        {
            AssemblyLoadContext fresh = new(name, isCollectible: true);
            try
            {
                Assembly library = fresh.LoadFromAssemblyPath(location);
                Assert.NotSame(PublicMembers.Library, library);
                Type type = library.GetType(name, throwOnError: true)!;
                Exception? thrown = Record.Exception(() => RuntimeHelpers.RunClassConstructor(type.TypeHandle));
                Assert.True(thrown is null, $"{name} first: {thrown}");
                Assert.All(type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly).Where(static field => field.IsInitOnly && !field.FieldType.IsValueType), field => Assert.True(field.GetValue(null) is not null, $"{name}.{field.Name} is null when {name} is used first."));
            }
            finally
            {
                fresh.Unload();
            }
        }

        Assert.True(File.Exists(location));
    }

    /// <summary>Those that set all required members, the shortest first.</summary>
    private static ConstructorInfo[] Constructors(Type record) =>
        [.. record.GetConstructors().Where(static constructor => constructor.CustomAttributes.Any(static attribute => attribute.AttributeType.Name == "SetsRequiredMembersAttribute")).OrderBy(static constructor => constructor.GetParameters().Length)];

    private static IEnumerable<(string, Type)> Members(IEnumerable<PropertyInfo> members) =>
        members.Select(static member => (member.Name.ToUpperInvariant(), member.PropertyType)).OrderBy(static member => member.Item1, StringComparer.Ordinal);

    private static IEnumerable<(string, Type)> Taken(IEnumerable<ParameterInfo> parameters) =>
        parameters.Select(static parameter => (parameter.Name!.ToUpperInvariant(), parameter.ParameterType)).OrderBy(static member => member.Item1, StringComparer.Ordinal);

    /// <summary>A good value that is not the default.</summary>
    private static object Other(ParameterInfo parameter, object? usual)
    {
        Type type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        object other = type == typeof(bool) ? usual is not true : type.IsEnum ? Enum.GetValues(type).Cast<object>().First(value => !value.Equals(usual)) : GoodValues.Of((MethodBase)parameter.Member, parameter);
        Assert.False(Same(usual, other), $"{parameter.Member.DeclaringType!.Name}.{parameter.Name}: the good value is the default, which shows nothing.");
        return other;
    }

    private static bool Same(object? expected, object? actual) =>
        expected is IEnumerable and not string && actual is IEnumerable and not string ? ((IEnumerable)expected).Cast<object>().SequenceEqual(((IEnumerable)actual).Cast<object>()) : Equals(expected, actual);
}
