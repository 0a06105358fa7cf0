using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Text;

namespace FinishKit.Tests.Architecture;

/// <summary>Documentation ids of types and members, as the list of banned symbols writes them.</summary>
internal static class DocumentationId
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    internal static string Of(Type type) => "T:" + Name(type);

    internal static IEnumerable<string> OfMembers(Type type) => type.GetMembers(Declared).Select(Of).OfType<string>();

    internal static string? Of(MemberInfo member) => member switch
    {
        MethodBase method => "M:" + Name(member.DeclaringType!) + "." + MethodName(method) + Parameters(method),
        PropertyInfo property => "P:" + Name(member.DeclaringType!) + "." + property.Name,
        FieldInfo field => "F:" + Name(member.DeclaringType!) + "." + field.Name,
        _ => null,
    };

    private static string MethodName(MethodBase method) =>
        method.IsConstructor ? "#ctor" : method.Name + (method.IsGenericMethod ? "``" + method.GetGenericArguments().Length : string.Empty);

    private static string Parameters(MethodBase method)
    {
        ParameterInfo[] parameters = method.GetParameters();
        string text = parameters.Length == 0 ? string.Empty : "(" + string.Join(",", parameters.Select(static parameter => Reference(parameter.ParameterType))) + ")";
        return method is MethodInfo { Name: "op_Implicit" or "op_Explicit" } conversion ? text + "~" + Reference(conversion.ReturnType) : text;
    }

    private static string Name(Type type) => type.FullName!.Replace('+', '.');

    private static string Reference(Type type)
    {
        if (type.IsByRef)
        {
            return Reference(type.GetElementType()!) + "@";
        }

        if (type.IsArray)
        {
            return Reference(type.GetElementType()!) + (type.GetArrayRank() == 1 ? "[]" : "[" + string.Join(",", Enumerable.Repeat("0:", type.GetArrayRank())) + "]");
        }

        if (type.IsGenericParameter)
        {
            return (type.DeclaringMethod is null ? "`" : "``") + type.GenericParameterPosition;
        }

        if (!type.IsGenericType)
        {
            return Name(type);
        }

        StringBuilder text = new(Name(type.GetGenericTypeDefinition()));
        text.Length = text.ToString().LastIndexOf('`');
        return text.Append('{').AppendJoin(',', type.GetGenericArguments().Select(Reference)).Append('}').ToString();
    }
}
