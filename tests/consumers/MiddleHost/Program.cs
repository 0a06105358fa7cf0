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

        // By hand: (97 - 8) x 0.0025 x (14 - 10).
        Expect.Near("gap through the add-in, mm", 0.89, Bands.GapInMillimetres(97, 8, 0.0025, 10, 14), 1e-6);

        // By hand: an offcut gives one triangle, 2 x 500 and a kerf of 3 fill a sheet.
        Expect.True("triangles through the add-in", PanelBands.Triangles(500, 3, 12.50m) == 12.50m);

        // By hand: 3 x 800 and 2 between them twice, by the 100; 2 x 700 + 2 is more than 1400 less two selvedges of 10.
        Expect.Near("roll through the add-in, mm", 2500, PanelBands.RollInMillimetres(800, 700, 1400, 100), 1e-9);

        // By hand: (1806 - 2 x 1.5 - 2 x 1.5)/3 = 600; less 1 + 2 at the front and 1 at the joint.
        Expect.Near("ply through the add-in, mm", 596, PanelBands.FirstPlyInMillimetres(1806, 503), 1e-9);

        // By hand: cloth of 598 + 2 x (4 + 6.5 + 40) = 699 starts 349.5 before the panel's middle, two repeats of 200 are 400.
        Expect.Near("pattern through the add-in, mm", 50.5, PanelBands.PatternInMillimetres(1806, 503, 200), 1e-9);

        // By hand: joint on the rib, half a reveal of 2 less: 1.699 x 0.8 - 0.9 x 0.38 = 1.0172 m2 of 6 kg.
        Expect.Near("a panel's mass through the add-in, kg", 6.1032, PanelBands.FrontPanelInKilograms(1700), 1e-9);

        // By hand: 12 x 9.80665/2 = 58.84 N on each row of 1000, three fixings 450 apart. The middle one holds 0.45 of it where
        // the panel gives way; as a beam over three supports with 50 beyond the outer ones, moments -q 50^2/2 there and (-q 450^2/2 + q 50^2)/4 between, 0.554167 of it.
        Expect.Near("a fixing through the add-in, N", 32.607111, PanelBands.FixingInNewtons(1000, 12), 1e-6);

        // By hand: 13,500 x (26 + 0.1)/27.
        Expect.Near("three plies through the add-in, MPa", 13050, PanelBands.ThreePlyInMegapascals(13500, 0.1), 1e-6);

        // By hand: see the check of kerfs, of layers, of two curves and of screws; 2 x 3 over 6.
        Expect.Near("kerfs through the add-in", 8, PanelBands.KerfsOf(300, 18, 3, 3.2), 0);
        Expect.Near("form through the add-in, mm", 800, PanelBands.FormInMillimetres(900), 1e-6);
        Expect.Near("mass of two layers through the add-in", 1, PanelBands.LayersMass(3, 6), 1e-9);
        Expect.Near("share taken through the add-in", 4.0 / 9, PanelBands.ShareOnBowl(2000, 50000, 400), 1e-9);
        Expect.Near("screw in metal through the add-in, N", 321.3, PanelBands.ScrewInNewtons(1, 270), 1e-9);

        // By hand: 1 + 0.2 + 1; 995/50 = 19.9; 8 x 30 + 1 = 241 less 8 x 18 + 7 x 6 + 15 = 201, over 3 hours.
        Expect.Near("grip through the add-in, mm", 2.2, PanelBands.GripInMillimetres(1, 0.2, 1), 1e-9);
        Expect.Near("staples through the add-in", 20, PanelBands.StaplesAlong(995, 50), 0);
        Expect.True("break-even through the add-in", PanelBands.BreakEven(30m, 18m) == 13.3333m);
        Checks.All();
        return Expect.ExitCode();
    }
}
