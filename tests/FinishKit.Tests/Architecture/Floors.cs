using System;
using System.Collections.Generic;
using System.Linq;
using Mono.Cecil;
using Mono.Cecil.Cil;

namespace FinishKit.Tests.Architecture;

/// <summary>
/// Which folder may see which: a folder sees itself and every folder on a lower floor; folders on one floor do not see each
/// other. Read from the compiled code, so that using directives and aliases do not matter. Constants and <c>nameof</c> leave
/// no trace there and are not seen.
/// </summary>
internal static class Floors
{
    internal const string Root = "";

    /// <summary>The folders of src/FinishKit, from the ground up. Polyfills stand in for the framework and count as root.</summary>
    internal static readonly IReadOnlyDictionary<string, int> Library = new Dictionary<string, int>(StringComparer.Ordinal)
    {
        [Root] = 0,
        ["Polyfills"] = 0,
        ["Geometry"] = 1,
        ["Materials"] = 1,
        ["Beams"] = 2,
        ["Fastening"] = 2,
        ["Stock"] = 2,
        ["Furring"] = 3,
        ["Boards"] = 3,
        ["Slats"] = 3,
        ["Panels"] = 3,
        ["Estimating"] = 4,
    };

    /// <summary>
    /// References that the floors forbid, one line each, sorted: <c>From (folder) -> To (folder)</c>; and types whose folder is not on the plan.
    /// </summary>
    /// <param name="types">The outermost types to look at; references to other types do not count.</param>
    /// <param name="folderOf">The folder of an outermost type.</param>
    /// <param name="floors">The floor of each folder.</param>
    /// <param name="allowed">References that are let through, written as the lines are.</param>
    internal static IReadOnlyList<string> Violations(
        IReadOnlyCollection<TypeDefinition> types,
        Func<TypeDefinition, string> folderOf,
        IReadOnlyDictionary<string, int> floors,
        IReadOnlyCollection<string> allowed)
    {
        Dictionary<string, string> folders = types.ToDictionary(static type => type.FullName, folderOf, StringComparer.Ordinal);
        SortedSet<string> lines = new(StringComparer.Ordinal);
        foreach (TypeDefinition type in types)
        {
            string from = folders[type.FullName];
            if (!floors.TryGetValue(from, out int floor))
            {
                lines.Add($"{type.FullName} is in the folder '{from}', which is on no floor");
                continue;
            }

            foreach (string name in References(type))
            {
                if (name == type.FullName || !folders.TryGetValue(name, out string? to) || !floors.TryGetValue(to, out int below))
                {
                    continue;
                }

                string line = $"{type.FullName} ({Shown(from)}) -> {name} ({Shown(to)})";
                bool sameHouse = to == from || (floor == 0 && below == 0);
                if (!sameHouse && below >= floor && !allowed.Contains(line))
                {
                    lines.Add(line);
                }
            }
        }

        return [.. lines];
    }

    /// <summary>Full names of the outermost types that a type and its nested types name anywhere.</summary>
    internal static IReadOnlyCollection<string> References(TypeDefinition outermost)
    {
        Collector found = new();
        foreach (TypeDefinition type in WithNested(outermost))
        {
            found.Add(type.BaseType);
            found.Add(type.CustomAttributes);
            found.Add(type.GenericParameters);
            foreach (InterfaceImplementation implemented in type.Interfaces)
            {
                found.Add(implemented.InterfaceType);
            }

            foreach (FieldDefinition field in type.Fields)
            {
                found.Add(field.FieldType);
                found.Add(field.CustomAttributes);
            }

            foreach (PropertyDefinition property in type.Properties)
            {
                found.Add(property.PropertyType);
                found.Add(property.CustomAttributes);
            }

            foreach (EventDefinition happening in type.Events)
            {
                found.Add(happening.EventType);
                found.Add(happening.CustomAttributes);
            }

            foreach (MethodDefinition method in type.Methods)
            {
                found.Add(method);
                found.Add(method.CustomAttributes);
                found.Add(method.MethodReturnType.CustomAttributes);
                found.Add(method.GenericParameters);
                foreach (ParameterDefinition parameter in method.Parameters)
                {
                    found.Add(parameter.CustomAttributes);
                }

                if (method.HasBody)
                {
                    found.Add(method.Body);
                }
            }
        }

        return found.Names;
    }

    internal static IEnumerable<TypeDefinition> WithNested(TypeDefinition type) =>
        type.NestedTypes.SelectMany(WithNested).Prepend(type);

    private static string Shown(string folder) => folder.Length == 0 ? "root" : folder;

    private sealed class Collector
    {
        private readonly SortedSet<string> _names = new(StringComparer.Ordinal);

        internal IReadOnlyCollection<string> Names => _names;

        internal void Add(TypeReference? type)
        {
            switch (type)
            {
                case null or GenericParameter:
                    return;
                case GenericInstanceType generic:
                    foreach (TypeReference argument in generic.GenericArguments)
                    {
                        Add(argument);
                    }

                    break;
                case IModifierType modified:
                    Add(modified.ModifierType);
                    break;
                case FunctionPointerType pointer:
                    Add(pointer.ReturnType);
                    foreach (ParameterDefinition parameter in pointer.Parameters)
                    {
                        Add(parameter.ParameterType);
                    }

                    return;
            }

            if (type is TypeSpecification wrapped)
            {
                Add(wrapped.ElementType);
                return;
            }

            TypeReference outermost = type;
            while (outermost.DeclaringType is { } declaring)
            {
                outermost = declaring;
            }

            _names.Add(outermost.FullName);
        }

        internal void Add(MethodReference method)
        {
            Add(method.DeclaringType);
            Add(method.ReturnType);
            foreach (ParameterDefinition parameter in method.Parameters)
            {
                Add(parameter.ParameterType);
            }

            if (method is GenericInstanceMethod generic)
            {
                foreach (TypeReference argument in generic.GenericArguments)
                {
                    Add(argument);
                }
            }
        }

        internal void Add(MethodBody body)
        {
            foreach (VariableDefinition local in body.Variables)
            {
                Add(local.VariableType);
            }

            foreach (ExceptionHandler handler in body.ExceptionHandlers)
            {
                Add(handler.CatchType);
            }

            foreach (Instruction instruction in body.Instructions)
            {
                switch (instruction.Operand)
                {
                    case MethodReference method:
                        Add(method);
                        break;
                    case FieldReference field:
                        Add(field.DeclaringType);
                        Add(field.FieldType);
                        break;
                    case TypeReference type:
                        Add(type);
                        break;
                }
            }
        }

        internal void Add(IEnumerable<CustomAttribute> attributes)
        {
            foreach (CustomAttribute attribute in attributes)
            {
                Add(attribute.AttributeType);
                foreach (CustomAttributeArgument argument in attribute.ConstructorArguments
                    .Concat(attribute.Properties.Select(static named => named.Argument))
                    .Concat(attribute.Fields.Select(static named => named.Argument)))
                {
                    Add(argument);
                }
            }
        }

        internal void Add(IEnumerable<GenericParameter> parameters)
        {
            foreach (GenericParameterConstraint constraint in parameters.SelectMany(static parameter => parameter.Constraints))
            {
                Add(constraint.ConstraintType);
            }
        }

        private void Add(CustomAttributeArgument argument)
        {
            Add(argument.Type);
            switch (argument.Value)
            {
                case TypeReference type:
                    Add(type);
                    break;
                case CustomAttributeArgument boxed:
                    Add(boxed);
                    break;
                case CustomAttributeArgument[] list:
                    foreach (CustomAttributeArgument item in list)
                    {
                        Add(item);
                    }

                    break;
            }
        }
    }
}
