using System;
using System.Reflection;
using System.Runtime.Versioning;
using FinishKit;
using FinishKit.Consumers;
using FinishKit.Consumers.Middle;

internal static class Program
{
    private static int Main()
    {
        Assembly library = typeof(Arc).Assembly;
        Expect.Same("build of the library in use", ".NETCoreApp,Version=v10.0", library.GetCustomAttribute<TargetFrameworkAttribute>().FrameworkName);
        Expect.Same("build of the add-in", ".NETStandard,Version=v2.0", typeof(Bands).Assembly.GetCustomAttribute<TargetFrameworkAttribute>().FrameworkName);

        // What an init accessor's signature in the add-in asks for. It must be the framework's own type, or the accessor is not found.
        Type marker = library.GetType("System.Runtime.CompilerServices.IsExternalInit");
        Expect.True("IsExternalInit leads to the framework", marker == typeof(System.Runtime.CompilerServices.IsExternalInit));

        // By hand: 300² / 16 + 1.
        Expect.Near("radius through the add-in, mm", 5626, Bands.RadiusInMillimetres(300, 2), 1e-6);
        Checks.All();
        return Expect.ExitCode();
    }
}
