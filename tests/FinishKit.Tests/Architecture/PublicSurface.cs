using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Mono.Cecil;

namespace FinishKit.Tests.Architecture;

/// <summary>What a host can compile or link against, a line a type or member.</summary>
internal static class PublicSurface
{
    internal static IReadOnlyList<string> Of(AssemblyDefinition assembly)
    {
        SortedSet<string> lines = new(StringComparer.Ordinal);
        foreach (TypeDefinition type in assembly.MainModule.Types.SelectMany(Floors.WithNested).Where(IsVisible))
        {
            lines.Add(TypeLine(type));
            foreach (FieldDefinition field in type.Fields.Where(static field => field.IsPublic || field.IsFamily || field.IsFamilyOrAssembly))
            {
                string constant = field.HasConstant ? " = " + Value(field.Constant) : string.Empty;
                lines.Add($"{type.FullName}: field {Words(field.CustomAttributes)}{field.Attributes} {field.FullName}{constant}");
            }

            foreach (PropertyDefinition property in type.Properties.Where(static property => IsVisible(property.GetMethod) || IsVisible(property.SetMethod)))
            {
                lines.Add($"{type.FullName}: property {Words(property.CustomAttributes)}{property.FullName}");
            }

            foreach (EventDefinition happening in type.Events.Where(static happening => IsVisible(happening.AddMethod)))
            {
                lines.Add($"{type.FullName}: event {Words(happening.CustomAttributes)}{happening.FullName}");
            }

            foreach (MethodDefinition method in type.Methods.Where(IsVisible))
            {
                IEnumerable<string> parameters = method.Parameters.Select(static parameter =>
                    $"{Words(parameter.CustomAttributes)}{parameter.Attributes & ~ParameterAttributes.HasDefault} {parameter.Name}{(parameter.HasConstant ? " = " + Value(parameter.Constant) : string.Empty)}");
                lines.Add($"{type.FullName}: method {Words(method.CustomAttributes)}{method.Attributes} {method.FullName} ({string.Join(", ", parameters)}){Generics(method.GenericParameters)}");
            }
        }

        return [.. lines];
    }

    private static string TypeLine(TypeDefinition type)
    {
        string interfaces = string.Join(", ", type.Interfaces.Select(static implemented => implemented.InterfaceType.FullName).Order(StringComparer.Ordinal));
        return $"{type.FullName}: type {Words(type.CustomAttributes)}{type.Attributes & ~TypeAttributes.BeforeFieldInit} : {type.BaseType?.FullName}, {interfaces}{Generics(type.GenericParameters)}";
    }

    private static bool IsVisible(TypeDefinition type) =>
        type.IsPublic || ((type.IsNestedPublic || type.IsNestedFamily || type.IsNestedFamilyOrAssembly) && IsVisible(type.DeclaringType));

    private static bool IsVisible(MethodDefinition? method) => method is not null && (method.IsPublic || method.IsFamily || method.IsFamilyOrAssembly);

    /// <summary>Attributes that change what a host's compiler does; those for nullable annotations and the like are encoded differently in each build.</summary>
    private static string Words(IEnumerable<CustomAttribute> attributes)
    {
        string[] names =
        [
            .. attributes.Select(static attribute => attribute.AttributeType.Name)
                .Where(static name => name is "ObsoleteAttribute" or "RequiredMemberAttribute" or "SetsRequiredMembersAttribute" or "ParamArrayAttribute"
                    or "FlagsAttribute" or "EditorBrowsableAttribute" or "IsReadOnlyAttribute" or "ExtensionAttribute")
                .Order(StringComparer.Ordinal),
        ];
        return names.Length == 0 ? string.Empty : "[" + string.Join(", ", names) + "] ";
    }

    private static string Generics(IEnumerable<GenericParameter> parameters) => string.Concat(parameters.Select(static parameter =>
        $" <{parameter.Name} {parameter.Attributes} : {string.Join(", ", parameter.Constraints.Select(static constraint => constraint.ConstraintType.FullName).Order(StringComparer.Ordinal))}>"));

    private static string Value(object? constant) => Convert.ToString(constant, CultureInfo.InvariantCulture) ?? "null";
}
