using System;
using System.IO;

namespace FinishKit.Tests;

/// <summary>Where the working tree is, for tests that read documentation and tables.</summary>
internal static class Repository
{
    internal static string Root { get; } = FindRoot();

    internal static string Read(params string[] path) => File.ReadAllText(Path.Combine([Root, .. path]));

    private static string FindRoot()
    {
        // From the test binary upwards: source paths are rewritten in a deterministic build.
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "FinishKit.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new DirectoryNotFoundException("FinishKit.sln was not found above the test binaries.");
    }
}
