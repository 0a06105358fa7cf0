using System;
using System.Runtime.CompilerServices;
using FinishKit.Consumers;

internal static class Program
{
    private static int Main()
    {
        Expect.True("compiled to native code", !RuntimeFeature.IsDynamicCodeSupported);
        Checks.All();
        return Expect.ExitCode();
    }
}
