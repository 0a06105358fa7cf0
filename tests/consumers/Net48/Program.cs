using System;
using System.Reflection;
using System.Runtime.Versioning;
using FinishKit;
using FinishKit.Consumers;

internal static class Program
{
    private static int Main()
    {
        TargetFrameworkAttribute built = typeof(Arc).Assembly.GetCustomAttribute<TargetFrameworkAttribute>();
        Expect.Same("build of the library in use", ".NETStandard,Version=v2.0", built.FrameworkName);
        Console.WriteLine("  runtime " + Environment.Version);
        Checks.All();
        return Expect.ExitCode();
    }
}
