using UnitsNet;

namespace FinishKit;

/// <summary>What fixings into thin metal take when the caller gives nothing, and what they rest on.</summary>
internal static class MetalDefaults
{
    internal const double ThreadsBeyond = 3;
    internal const double PointDiameters = 1;
    internal const double SafetyFactor = 3;

    internal static readonly TolerancedLength SetDepth = TolerancedLength.PlusMinus(Measure.Mm(0.5), Measure.Mm(0.5), DeviationScope.Each);

    internal static readonly Source SetDepthSource = Source.CommonPractice("default-screw-set", "the head of a screw sits flush to 1 mm under the face: 0.5 mm, 0.5 mm either way");

    internal static readonly Source ThreadsSource = Source.CommonPractice("default-threads-beyond", "a screw into metal shows at least three pitches of thread beyond it");

    internal static readonly Source PointSource = Source.Judgement("default-screw-point", "the point of a screw has no full thread over a length of one diameter");

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
