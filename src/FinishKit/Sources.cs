namespace FinishKit;

/// <summary>What the library's own formulas and defaults rest on. Each id is listed in docs/sources.md; a test compares the two.</summary>
internal static class Sources
{
    internal static readonly Source Given = Source.Supplied("the caller's figure");

    internal static readonly Source Circle = Source.Derived("geometry-circle", "Circle through the ends and the top of an arc", "Pythagoras on half the chord and the radius less the rise");

    internal static readonly Source ReadingError = Source.CommonPractice("reading-error", "a gap under a straightedge is read to half a millimetre");

    internal static readonly Source ToleranceSum = Source.Derived("tolerance-sum", "Sum of toleranced lengths", "worst case adds deviations; variances of independent terms add; a tolerance is read as plus and minus three sigma");

    internal static readonly Source FastenerStack = Source.Derived("fastening-stack", "Fastener in a stack of layers", "the tip lies the set depth plus length times cosine of the drive angle below the surface");

    internal static readonly Source JobHits = Source.Derived("fastening-job", "Hits over a job", "expected hits add up whatever is shared; the chance of any hit is the mean, over the batch deviation, of one less the chance that every fastener misses");

    internal static readonly Source Nds = Source.Published("NDS-2018", "National Design Specification for Wood Construction", "American Wood Council", 2018, "12.2", SourceReading.Copy, "equations as transcribed in the open finite-element library xc and quoted at engineeringtoolbox.com d_1814 and d_1815");

    internal static readonly Source NdsMinimumPenetration = Source.Published("NDS-2018", "National Design Specification for Wood Construction", "American Wood Council", 2018, "minimum penetration 6 D", SourceReading.Copy, "answer at awc.org, May 2006; 6 D including the tip");

    internal static readonly Source WoodHandbook = Source.Published("FPL-GTR-282", "Wood Handbook: Wood as an Engineering Material", "USDA Forest Service, Forest Products Laboratory", 2021, "chapter 8", SourceReading.Copy, "coefficients 54.12, 108.25 and 125.4 as quoted in an open source file");

    internal static readonly Source Eurocode5 = Source.Published("EN-1995-1-1", "Eurocode 5: Design of timber structures, EN 1995-1-1", "CEN", 2004, "8.3.2, 8.7.2", SourceReading.Copy, "equations 8.24 to 8.26 and 8.38 to 8.40 as coded in the open NODEMaple library; the rule on permanent load at eurocode.us");
}
