#if !NETSTANDARD_BUILD // the programs are built on the net10.0 library only
using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.IO;
using System.Linq;
using System.Text;
using System.Threading;
using System.Threading.Tasks;
using Xunit;

namespace FinishKit.Tests.Examples;

/// <summary>What one start of the program gave.</summary>
public sealed record Run(int ExitCode, byte[] Bytes, string Error)
{
    public string Output => Encoding.UTF8.GetString(Bytes);
}

/// <summary>A program of docs/examples, built once and started as a person starts it.</summary>
public abstract class ExampleProgram : IDisposable
{
    private readonly string _dll;

    protected ExampleProgram(string name)
    {
        Folder = Directory.CreateTempSubdirectory(name + "-").FullName;
        string configuration = AppContext.BaseDirectory.Contains($"{Path.DirectorySeparatorChar}Release{Path.DirectorySeparatorChar}", StringComparison.Ordinal) ? "Release" : "Debug";
        string output = Path.Combine(Folder, "program");
        Run build = Execute(Repository.Root, [], TimeSpan.FromMinutes(5), "build", Path.Combine(Repository.Root, "docs", "examples", name + ".cs"), "-c", configuration, "-o", output, "--disable-build-servers", "-v", "q");
        Assert.True(build.ExitCode == 0, build.Output + build.Error);
        _dll = Path.Combine(output, name + ".dll");
    }

    /// <summary>A folder for the files of the tests, gone afterwards.</summary>
    public string Folder { get; }

    public void Dispose()
    {
        Dispose(disposing: true);
        GC.SuppressFinalize(this);
    }

    internal Run Start(params string[] args) => StartIn(Folder, [], args);

    internal Run StartIn(string folder, Dictionary<string, string> environment, params string[] args) => Execute(folder, environment, TimeSpan.FromMinutes(1), [_dll, .. args]);

    internal Run StartOn(string content, params string[] options) => StartOn(Encoding.UTF8.GetBytes(content), options);

    internal Run StartOn(byte[] content, params string[] options)
    {
        string path = Path.Combine(Directory.CreateDirectory(Path.Combine(Folder, Guid.NewGuid().ToString("N"))).FullName, "input.json");
        File.WriteAllBytes(path, content);
        return Start([path, .. options]);
    }

    protected virtual void Dispose(bool disposing) => Directory.Delete(Folder, recursive: true);

    private static Run Execute(string folder, Dictionary<string, string> environment, TimeSpan atMost, params string[] args)
    {
        ProcessStartInfo start = new("dotnet") { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true, RedirectStandardInput = true };
        foreach (string arg in args)
        {
            start.ArgumentList.Add(arg);
        }

        // A test host started by the build hands its own build settings down.
        foreach (string name in start.Environment.Keys.Where(static name => name.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase)).ToList())
        {
            start.Environment.Remove(name);
        }

        foreach ((string name, string value) in environment)
        {
            start.Environment[name] = value;
        }

        using Process process = Process.Start(start)!;
        process.StandardInput.Close();
        using CancellationTokenSource limit = new(atMost);
        using CancellationTokenRegistration kill = limit.Token.Register(() => process.Kill(entireProcessTree: true));
        using MemoryStream output = new();
        Task<string> error = process.StandardError.ReadToEndAsync();
        process.StandardOutput.BaseStream.CopyTo(output);
        process.WaitForExit();
        return new Run(process.ExitCode, output.ToArray(), error.GetAwaiter().GetResult());
    }
}
#endif
