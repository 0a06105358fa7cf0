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

        // By hand, common practice: 12.7 + 15.875 - (0.5 + 25.4).
        Expect.Near("clearance through the add-in, mm", 2.675, Bands.ClearanceInMillimetres(12.7, 15.875, 25.4, 0.5), 1e-6);

        // W52, derived: 20e-6 * 350^2 = 2.45; 2.45 * 2.5 * 25 = 153.125; at 10 d half of it.
        Expect.Near("Eurocode 5 nail through the add-in, N", 76.5625, Bands.NailInNewtons(350, 2.5, 25), 1e-9);
        // By hand: 475.4, see the check of spans. 1000 at 475 takes two strips between the ends; with one of them on the rib in the middle it would take three.
        Expect.Near("largest bay through the add-in, mm", 475.4, Bands.BayInMillimetres(89, 12.7, 8900), 0.05);
        Expect.Near("strips through the add-in", 4, Bands.StripsOn(1000, 475), 0);

        // By hand: an offcut gives one of six pieces, and 2 x 1000 and a kerf of 3 fill a board.
        Expect.Near("boards through the add-in", 3, Bands.BoardsFor(1000, 6, 2003), 0);

        // By hand: 3600 from boards of 2400 takes two.
        Expect.True("a jointed course through the add-in", Bands.JointedCourse(3600, 900, 2400, 9.80m) == 19.60m);

        // By hand: 994 = 11 x 89 + 15; atan 0.1.
        Expect.Near("last course through the add-in, mm", 15, Bands.LastCourseInMillimetres(994, 89), 1e-9);
        Expect.Near("end cut through the add-in, degrees", 5.7106, Bands.EndCutInDegrees(1000, 1010), 5e-5);
        Checks.All();
        return Expect.ExitCode();
    }
}
