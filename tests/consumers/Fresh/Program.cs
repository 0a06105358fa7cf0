using System.Reflection;
using System.Runtime.Versioning;
using FinishKit;
using FinishKit.Consumers;
using static FinishKit.Measure;

Expect.Same(
    "build of the library in use",
    ".NETCoreApp,Version=v10.0",
    typeof(Arc).Assembly.GetCustomAttribute<TargetFrameworkAttribute>()!.FrameworkName);

// By hand: 1000² / (8 * 25) + 25 / 2 = 5000 + 12.5.
var bow = Arc.FromChordAndRise(Mm(1000), Mm(25));
Expect.Near("radius of 1000 mm with 25 mm under it, mm", 5012.5, bow.Radius!.Value.Millimeters, 1e-6);
Console.WriteLine(bow.Explain());
return Expect.ExitCode();
