namespace FinishKit;

/// <summary>What fixings into thin metal take when the caller gives nothing, and what they rest on.</summary>
internal static class MetalDefaults
{
    internal const double ThreadsBeyond = 3;
    internal const double PointDiameters = 1;
    internal const double SafetyFactor = 3;
    internal const double NutEngagement = 1;
    internal const double ScrewTolerance = 0.5;

    internal static readonly TolerancedLength SetDepth = TolerancedLength.PlusMinus(Measure.Mm(0.5), Measure.Mm(0.5), DeviationScope.Each);

    internal static readonly Source SetDepthSource = Source.CommonPractice("default-screw-set", "the head of a screw sits flush to 1 mm under the face: 0.5 mm, 0.5 mm either way");

    internal static readonly Source ThreadsSource = Source.CommonPractice("default-threads-beyond", "a screw into metal shows at least three pitches of thread beyond it");

    internal static readonly Source PointSource = Source.Judgement("default-screw-point", "the point of a screw has no full thread over a length of one diameter");

    internal static readonly Source TappingLength = Source.Published(
        "TAPPING-SCREW-LENGTH", "Cross-recessed pan head tapping screws, ISO 7049", "International Organization for Standardization", 2011, "least and greatest length", SourceReading.Memory,
        "0.8 mm either way up to 19 mm, 1.3 up to 38, 1.5 above; the text was not at hand");

    internal static readonly Source ThreadAllAlong = Source.CommonPractice("metal-thread-all-along", "a tapping screw is threaded all along; about a third of a wood screw, under its head, is smooth");

    internal static readonly Source ScrewSum = Source.Derived("metal-screw-stack", "Screw through a stack into metal", "the tip lies the set depth plus the length below the surface; what it passes the metal's back by, less the point, is full thread");

    internal static readonly Source ThinSheet = Source.CommonPractice("metal-thin-for-thread", "sheet thinner than one pitch holds less than a whole turn of thread: screws strip there, so tighten by hand or use a rivet nut");

    internal static readonly Source BareMetal = Source.CommonPractice("metal-bare-edges", "swarf and bare edges of holes rust: catch and vacuum the swarf, prime the edge before the fixing goes in");

    internal static readonly Source Aisi = Source.Published(
        "AISI-S100", "North American Specification for the Design of Cold-Formed Steel Structural Members, S100", "American Iron and Steel Institute", 2007, "E4.4, screws in tension", SourceReading.Copy,
        "the allowable loads 0.85/3 t d Fu and 1.5/3 t d Fu in a notes page of a permit at lfportal.everettwa.gov 1550732; tables of such loads at 1596364 (ESR-1976) and in a framing maker's table agree; limits of screw and head at civilengineeringx.com");

    internal static readonly Source AisiReview = Source.Published(
        "AISI-RP19-1", "Research report RP19-1, review of S100-16 for screws in shear and tension", "American Iron and Steel Institute", 2019, "abstract", SourceReading.Copy,
        "at scholarsmine.mst.edu ccfss-aisi-spec 233; the year is inferred from the report's number");

    internal static readonly Source Drills = Source.Published(
        "SCREW-DRILLS", "AB hole sizes", "eaglefastener.net", null, "recommended drill sizes, types AB and B, light metals", SourceReading.Copy,
        "the page does not say for which thickness of sheet");

    internal static readonly Source NutSum = Source.Derived("metal-rivet-nut", "Screw in a rivet nut", "depths count from the outer face of the flange; screw and nut share what both reach of the thread, and the deeper of tip and nut is what comes near");

    internal static readonly Source NutEngagementSource = Source.CommonPractice("default-nut-engagement", "a machine screw shares at least one diameter of thread with its nut");

    internal static readonly Source ScrewToleranceSource = Source.Judgement("default-screw-tolerance", "a machine screw is up to 0.5 mm longer or shorter than its label");

    internal static readonly Source NutThread = Source.Derived("metal-nut-thread", "Pull that strips the thread of a nut", "half of the cylinder at the pitch diameter is the nut's, and it strips farther out, where more than half is: with the play of a common fit and the spread of a thin wall, both reckoned from memory for M4 to M8, that still gives no less; in shear a ductile metal bears its tensile strength over the root of three");

    internal static readonly Source NutThreadSafety = Source.Judgement("default-nut-thread-share", "a thread is loaded with a third of what strips it, as screws in sheet metal are");

    internal static readonly Source NutGrip = Source.Published("RIVET-NUT-GRIP", "A complete guide to rivet nut grip ranges", "dh-hardware.com", 2026, "what the grip includes", SourceReading.Copy, "paint and mating part count");

    internal static readonly Source HexNut = Source.Published("RIVET-NUT-HEX", "Hex rivet nut hole size chart", "rivetfix.com", null, "row M3", SourceReading.Copy, "one row, whose digits run together on the page: hole 5.6 mm across flats, grip 0.5 to 1.5 mm");

    internal static readonly Source RoundNuts = Source.Published("RIVET-NUT-ROUND", "Catalogue values of round rivet nuts", "several makers", null, "holes and grips of M4 to M8", SourceReading.Memory, "typical values; makers differ");

    /// <summary>What a tapping screw may be longer or shorter by than its label.</summary>
    internal static double TappingTolerance(double length) => length <= 19 ? 0.8 : length <= 38 ? 1.3 : 1.5;

    /// <summary>Diameter, threads per inch and drill of tapping screws of types AB and B, in inches: number 4 to 1/4.</summary>
    private static readonly (double Diameter, double Threads, double Drill)[] s_drills =
    [
        (0.112, 24, 0.0960), (0.125, 20, 0.1065), (0.138, 20, 0.1160), (0.151, 19, 0.1285), (0.164, 18, 0.1360), (0.190, 16, 0.1590), (0.216, 14, 0.1820), (0.250, 14, 0.2090),
    ];

    /// <summary>The drill for a tapping screw within a tenth of a millimetre of a listed diameter and pitch; NaN where none is.</summary>
    internal static double Drill(double diameter, double pitch)
    {
        foreach ((double listed, double threads, double drill) in s_drills)
        {
            if (System.Math.Abs((listed * 25.4) - diameter) <= 0.1 && System.Math.Abs((25.4 / threads) - pitch) <= 0.1)
            {
                return Grid.Snap(drill * 25.4);
            }
        }

        return double.NaN;
    }
}
