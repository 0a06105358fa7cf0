using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace FinishKit.Tests.Contracts;

/// <summary>The public surface of the library, as the contract tests go through it.</summary>
internal static class PublicMembers
{
    internal const BindingFlags Declared = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly NullabilityInfoContext s_nullability = new();

    internal static Assembly Library { get; } = typeof(Arc).Assembly;

    internal static Type[] Types { get; } = Library.GetExportedTypes();

    /// <summary>Static classes named for a question. <see cref="Measure"/> reads and writes; it answers nothing.</summary>
    internal static Type[] Calculators { get; } = [.. Types.Where(static type => type is { IsClass: true, IsAbstract: true, IsSealed: true } && type != typeof(Measure))];

    internal static Type[] InputRecords { get; } = [.. Types.Where(IsRecord)];

    /// <summary>Public methods of the calculators that compute: everything but the Check methods.</summary>
    internal static MethodInfo[] Calculations { get; } =
        [.. Calculators.SelectMany(static type => type.GetMethods(Declared)).Where(static method => !IsCheck(method))];

    /// <summary>What a calculation hands out, a nullable or a list opened.</summary>
    internal static Type[] ResultTypes { get; } =
        [.. Calculations.Select(static method => Nullable.GetUnderlyingType(method.ReturnType) ?? method.ReturnType).Where(static type => type.Assembly == Library).Distinct()];

    /// <summary>Public constructors, methods, operators and checking init accessors: what takes arguments.</summary>
    internal static MethodBase[] WithArguments { get; } =
    [
        .. Types.Where(static type => !type.IsEnum).SelectMany(static type => type.GetConstructors().Cast<MethodBase>().Concat(type.GetMethods(Declared).Where(static method => !IsAccessor(method))))
            .Where(static method => method.GetParameters().Any(static parameter => !parameter.IsOut)),
    ];

    internal static bool IsRecord(Type type) => type.GetMethod("<Clone>$") is not null;

    internal static bool IsCheck(MethodInfo method) => method.ReturnType == typeof(IReadOnlyList<InputProblem>);

    internal static bool IsWrittenByTheCompiler(MemberInfo member) => member.IsDefined(typeof(CompilerGeneratedAttribute), false);

    internal static bool IsNullable(ParameterInfo parameter)
    {
        lock (s_nullability)
        {
            return s_nullability.Create(parameter).WriteState == NullabilityState.Nullable;
        }
    }

    internal static bool IsNullable(PropertyInfo property)
    {
        lock (s_nullability)
        {
            return s_nullability.Create(property).WriteState == NullabilityState.Nullable;
        }
    }

    internal static IEnumerable<PropertyInfo> InitMembers(Type record) => record.GetProperties(Declared).Where(static property => property.SetMethod is { IsPublic: true });

    /// <summary><c>Arc.FromChordAndRise(Length chord, Length rise)</c>, <c>new Layer(TolerancedLength thickness)</c>.</summary>
    internal static string Name(MethodBase method)
    {
        string parameters = string.Join(", ", method.GetParameters().Select(static parameter => Short(parameter.ParameterType) + " " + parameter.Name));
        return (method.IsConstructor ? "new " + method.DeclaringType!.Name : method.DeclaringType!.Name + "." + method.Name) + "(" + parameters + ")";
    }

    private static string Short(Type type)
    {
        if (Nullable.GetUnderlyingType(type) is { } value)
        {
            return Short(value) + "?";
        }

        return type.IsGenericType ? type.Name[..type.Name.IndexOf('`', StringComparison.Ordinal)] + "<" + string.Join(", ", type.GetGenericArguments().Select(Short)) + ">" : type.Name;
    }

    /// <summary>Accessors take no arguments of their own, except init accessors of classes that check at once; those of records are varied as members.</summary>
    private static bool IsAccessor(MethodInfo method) =>
        method.IsSpecialName && !method.Name.StartsWith("op_", StringComparison.Ordinal) && (!method.Name.StartsWith("set_", StringComparison.Ordinal) || IsRecord(method.DeclaringType!));
}
