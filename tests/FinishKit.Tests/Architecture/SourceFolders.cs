using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;
using Mono.Cecil;
using Mono.Cecil.Cil;

namespace FinishKit.Tests.Architecture;

/// <summary>
/// The folder of src/FinishKit that a type of the library was written in: from the debug symbols of its methods, and for types
/// without code (enums, interfaces) from the source file that declares the name.
/// </summary>
internal sealed class SourceFolders
{
    private const string Marker = "/src/FinishKit/";

    private readonly Dictionary<string, SortedSet<string>> _declared = new(StringComparer.Ordinal);

    internal SourceFolders()
    {
        string root = Path.Combine(Repository.Root, "src", "FinishKit");
        foreach (string file in Directory.EnumerateFiles(root, "*.cs", SearchOption.AllDirectories))
        {
            string relative = Path.GetRelativePath(root, file).Replace('\\', '/');
            if (relative.StartsWith("obj/", StringComparison.Ordinal) || relative.StartsWith("bin/", StringComparison.Ordinal))
            {
                continue;
            }

            foreach (Match match in Regex.Matches(File.ReadAllText(file), @"^[^/\r\n""]*?\b(?:class|struct|interface|enum|record|delegate\s+[^(\r\n]*?)\s+(?<name>[A-Za-z_][A-Za-z0-9_]*)\s*(?=[<(:;{\r\n]|where\b)", RegexOptions.Multiline))
            {
                string name = match.Groups["name"].Value;
                if (!_declared.TryGetValue(name, out SortedSet<string>? folders))
                {
                    _declared[name] = folders = new SortedSet<string>(StringComparer.Ordinal);
                }

                folders.Add(FolderOf(relative));
            }
        }
    }

    /// <summary>The folder; several joined by <c>+</c> where a type is spread over them, <c>?</c> where none is found.</summary>
    internal string Of(TypeDefinition outermost)
    {
        SortedSet<string> folders = new(StringComparer.Ordinal);
        foreach (SequencePoint point in Floors.WithNested(outermost)
            .SelectMany(static type => type.Methods)
            .Where(static method => method.HasBody)
            .SelectMany(static method => method.DebugInformation.SequencePoints)
            .Where(static point => !point.IsHidden))
        {
            // The path starts with the build machine's folder, or with /_/ in a deterministic build.
            string path = point.Document.Url.Replace('\\', '/');
            int start = path.LastIndexOf(Marker, StringComparison.Ordinal);
            folders.Add(start < 0 ? "?" : FolderOf(path[(start + Marker.Length)..]));
        }

        if (folders.Count == 0 && _declared.TryGetValue(outermost.Name.Split('`')[0], out SortedSet<string>? declared))
        {
            folders = declared;
        }

        return folders.Count == 0 ? "?" : string.Join("+", folders);
    }

    private static string FolderOf(string relativePath)
    {
        int slash = relativePath.IndexOf('/', StringComparison.Ordinal);
        return slash < 0 ? Floors.Root : relativePath[..slash];
    }
}
