using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>What the rows of the tables rest on. Each id is listed in docs/sources.md; a test compares the two.</summary>
internal static class MaterialSources
{
    internal static readonly Source WoodHandbookTables = Source.Published("FPL-GTR-190", "Wood Handbook: Wood as an Engineering Material", "USDA Forest Service, Forest Products Laboratory", 2010, "tables 5-3 to 5-5", SourceReading.Copy, "table 5-3a in a page copy at issuu.com; other rows in secondary lists that agree with it; the rest from memory, row by row");

    internal static readonly Source NdsSpecificGravity = Source.Published("NDS-2018-12.3.3A", "National Design Specification for Wood Construction", "American Wood Council", 2018, "table 12.3.3A", SourceReading.Copy, "as transcribed in the open finite-element library xc");

    internal static readonly Source NdsSupplementDensity = Source.Published("NDS-SUPPLEMENT", "NDS Supplement: Design Values for Wood Construction", "American Wood Council", 2018, "section 3.1.3, density", SourceReading.Memory, "density = 62.4 G/(1 + 0.009 G m) (1 + m/100) lb/ft3, m in percent");

    internal static readonly Source StrengthClasses = Source.Published("EN-338", "Structural timber: strength classes, EN 338", "CEN", null, "characteristic density", SourceReading.Copy, "C24 in the open CoupledBeams code, C18 at eurocode.us");

    internal static readonly Source FinnishPlywood = Source.Published("HFP-2007", "Handbook of Finnish Plywood", "Finnish Forest Industries Federation", 2007, "densities of birch plywood", SourceReading.Memory, "mean 680, characteristic 630 kg/m3");

    internal static readonly Source TimberFrame = Source.Published("TRADA-TFC", "Timber Frame Construction", "TRADA", null, "appendix 2", SourceReading.Copy, "in a scanned copy at scribd.com 577634913");

    internal static readonly Source ResidentialDensities = Source.Published("RES-DENSITY", "Residential densities", "civilengineeringbible.com", null, "plywood and OSB 36 lb/ft3; wood at 10% moisture 1.1 G 62.4 lb/ft3", SourceReading.Copy);

    internal static readonly Source Ps1 = Source.Published("PS-1-19", "Voluntary Product Standard PS 1-19, Structural Plywood", "NIST", 2019, "performance categories, unsanded", SourceReading.Copy, "limits read at apawood-europe.org: 1/32 in up to 13/16 in, 5% above");

    internal static readonly Source Ps1Sanded = Source.Derived("PS-1-19-SANDED", "PS 1-19, sanded plywood", "1/64 in to each side up to 3/4 in, 3% above; the rule read at apawood-europe.org, which quotes PS 1-19");

    internal static readonly Source En315 = Source.Published("EN-315", "Plywood: tolerances for dimensions, EN 315", "CEN", null, "thickness", SourceReading.Copy, "the form read in a copy of GB/T 9846 at plywoodsupplier.cn; that EN 315 uses it, and the lower limit of unsanded sheets, from memory");

    internal static readonly Source BirchMill = Source.Published("BIRCH-MILL", "Size tables of birch plywood", "plyterra.com and nestplywood.com", null, "thickness limits", SourceReading.Copy);

    internal static readonly Source BirchMill9 = Source.Derived("BIRCH-MILL-9", "Upper limit of 9 mm unsanded birch plywood", "the mill table prints +0.1, which its neighbours contradict; the EN 315 form gives +1.07, cut to +1.0 as the mill cuts the others");

    internal static readonly Source MetricSoldByInch = Source.CommonPractice("METRIC-AS-INCH", "plywood made at 5.2, 6, 9, 12, 15, 18 or 25 mm is sold under the inch label above it");

    internal static readonly Source FastenerSizes = Source.Published("FASTENER-SIZES", "Fastener sizes", "mytoolkit.co.uk, help article 50", null, "wire of 23, 21, 18, 16 and 15 gauge", SourceReading.Copy, "inch figures for 21 and 15 gauge elsewhere differ by 4%");

    internal static readonly Source WoodScrewSizes = Source.Published("WOOD-SCREW-SIZES", "Wood screw table; ASME B18.6.1", "albanycountyfasteners.com", null, "shank diameters and lengths", SourceReading.Copy, "heads at altak.cn and paradisearticle.com; root diameters of NDS appendix L and the heads of #12 and #14 from memory");

    internal static readonly Source StockedLengths = Source.CommonPractice("STOCKED-LENGTHS", "lengths that shops keep: quarter-inch steps and a few between");

    internal static readonly Source NailLength = Source.Published("ASTM-F1667", "Standard Specification for Driven Fasteners, F1667", "ASTM International", null, "length tolerance", SourceReading.Memory, "low confidence: 1/32 in to 1 in, 1/16 in to 2-1/2 in, 3/32 in above; the text was not at hand");

    internal static readonly Source ScrewLength = Source.Judgement("SCREW-LENGTH", "wood screws keep the length tolerance of nails; no source was read");

    internal static readonly Source StrengthOnThePage = Source.Published("FPL-GTR-190", "Wood Handbook: Wood as an Engineering Material", "USDA Forest Service, Forest Products Laboratory", 2010, "table 5-3a, metric", SourceReading.Copy, "the table itself read on the page, in a page copy at issuu.com");

    internal static readonly Source Strength = Source.Published("FPL-GTR-190", "Wood Handbook: Wood as an Engineering Material", "USDA Forest Service, Forest Products Laboratory", 2010, "tables 5-3a and 5-3b", SourceReading.Copy, "in secondary lists of strengths that agree with the table as remembered");

    internal static readonly Source StrengthFromMemory = Source.Published("FPL-GTR-190", "Wood Handbook: Wood as an Engineering Material", "USDA Forest Service, Forest Products Laboratory", 2010, "table 5-3a", SourceReading.Memory);

    internal static readonly Source Shrinkage = Source.Published("FPL-GTR-190", "Wood Handbook: Wood as an Engineering Material", "USDA Forest Service, Forest Products Laboratory", 2010, "table 4-3", SourceReading.Copy, "in a page copy, issuhub 5801");

    internal static readonly Source ShrinkageFromMemory = Source.Published("FPL-GTR-190", "Wood Handbook: Wood as an Engineering Material", "USDA Forest Service, Forest Products Laboratory", 2010, "table 4-3", SourceReading.Memory);

    internal static readonly Source Movement = Source.Published("FPL-GTR-190", "Wood Handbook: Wood as an Engineering Material", "USDA Forest Service, Forest Products Laboratory", 2010, "table 13-5", SourceReading.Copy, "in a page copy, issuhub 5801; for 6 to 14% moisture content");

    internal static readonly Source MovementFromMemory = Source.Published("FPL-GTR-190", "Wood Handbook: Wood as an Engineering Material", "USDA Forest Service, Forest Products Laboratory", 2010, "table 13-5", SourceReading.Memory, "every one follows from the shrinkage by C = S/(3000 - 20 S), or C = S/(2200 - 12 S) where shrinkage starts at 22%");

    internal static readonly Source BirchBending = Source.Published("HFP-2007", "Handbook of Finnish Plywood", "Finnish Forest Industries Federation", 2007, "chapter 3, birch plywood, bending", SourceReading.Memory, "a layered beam gives the same figures: plies of 17500 and 70 MPa, inner plies 1.4 mm, faces making up the mean thickness");

    internal static readonly Source SoftwoodBending = Source.Published("APA-D510", "Panel Design Specification, form D510", "APA - The Engineered Wood Association", 2012, "tables 4A and 4B, 3-ply plywood, dry, by span rating", SourceReading.Memory, "stiffness E = 12 EI/(b t3) and strength f = 6 FbS/(b t2) on the nominal thickness; ALLOWABLE design values, a safety factor is in them: do not divide again");

    internal static readonly Source SoftwoodRadii = Source.Published("APA-BEND", "Minimum bending radii of plywood, form TT-003A", "APA - The Engineered Wood Association", null, "dry, mill-run panels", SourceReading.Copy, "at concreteconstruction.net and on the concrete-form page of apawood-europe.org, which says Douglas-fir without overlay");

    internal static readonly Source AircraftRadii = Source.Published("FAA-43-13-1B", "Acceptable Methods, Techniques, and Practices: Aircraft Inspection and Repair, AC 43.13-1B", "Federal Aviation Administration", null, "minimum bend radii of aircraft plywood", SourceReading.Copy, "at engineersedge.com, where the heads of the columns are scrambled: which column is which is inferred from stiffness");

    /// <summary>Every source a table row may name.</summary>
    internal static IReadOnlyDictionary<string, Source> ById { get; } = Catalogue();

    private static Dictionary<string, Source> Catalogue()
    {
        Dictionary<string, Source> byId = new(StringComparer.Ordinal);
        foreach (Source source in new[]
        {
            WoodHandbookTables, NdsSpecificGravity, NdsSupplementDensity, StrengthClasses, FinnishPlywood, TimberFrame, ResidentialDensities, Ps1, Ps1Sanded,
            En315, BirchMill, BirchMill9, MetricSoldByInch, FastenerSizes, WoodScrewSizes, StockedLengths, NailLength, ScrewLength, SoftwoodBending, SoftwoodRadii, AircraftRadii,
        })
        {
            byId.Add(source.Id, source);
        }

        return byId;
    }
}
