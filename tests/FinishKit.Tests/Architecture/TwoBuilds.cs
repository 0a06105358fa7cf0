using System;
using System.IO;
using Mono.Cecil;

namespace FinishKit.Tests.Architecture;

/// <summary>The two builds of the library, from the bin folder of its own project, in the configuration of this test.</summary>
internal static class TwoBuilds
{
    internal static AssemblyDefinition Read(string targetFramework)
    {
        string configuration = new DirectoryInfo(AppContext.BaseDirectory).Parent!.Name;
        string path = Path.Combine(Repository.Root, "src", "FinishKit", "bin", configuration, targetFramework, "FinishKit.dll");
        return File.Exists(path)
            ? AssemblyDefinition.ReadAssembly(path)
            : throw new FileNotFoundException("Build the whole solution first: this test compares both builds of the library.", path);
    }
}
