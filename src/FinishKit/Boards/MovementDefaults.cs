namespace FinishKit;

/// <summary>What the movement of boards takes when the caller gives nothing, and what it rests on.</summary>
internal static class MovementDefaults
{
    internal const double FittingMoisture = 9, DriestMoisture = 6, WettestMoisture = 16, JointGap = 1, EndGap = 3;

    /// <summary>Percent moisture content between which the coefficients are printed.</summary>
    internal const double LeastCovered = 6, MostCovered = 14;

    internal const double SteelGrowth = 0.000012, WoodGrowth = 0.000004, LengthShrinkage = 0.002, ShrinkageStart = 30;

    internal static readonly Source Fitting = Source.CommonPractice("default-fitting-moisture", "boards are at 9% moisture content when they are fitted, 8 to 12");

    internal static readonly Source Season = Source.Judgement("default-season", "over the seasons the boards of a van go from 6 to 16% moisture content (4 to 18)");

    internal static readonly Source Gap = Source.CommonPractice("default-joint-gap", "1 mm is left between neighbouring boards, 0.5 to 2; more where the swelling asks for it");

    internal static readonly Source Ends = Source.CommonPractice("default-end-gap", "3 mm are left at each end of a board, 2 to 5");

    internal static readonly Source Change = Source.Published("FPL-GTR-190", "Wood Handbook: Wood as an Engineering Material", "USDA Forest Service, Forest Products Laboratory", 2010, "equation 13-2: change = size x coefficient x change of moisture content", SourceReading.Memory, "that the coefficients are for 6 to 14% was read in a copy");

    internal static readonly Source Range = Source.Published("FPL-GTR-190", "Wood Handbook: Wood as an Engineering Material", "USDA Forest Service, Forest Products Laboratory", 2010, "heading of table 13-5: coefficients for 6 to 14% moisture content", SourceReading.Copy, "in a page copy, issuhub 5801");

    internal static readonly Source Joint = Source.Derived("movement-joint", "Joint between boards that move", "each board is held at a place of its own, so a joint changes by what one face changes; of tongue or lap the joint takes what the face loses, and the tongue itself shrinks: together what the whole width loses");

    internal static readonly Source EndsOpen = Source.Derived("movement-ends", "Gaps at the ends of a board in a steel shell", "both gaps together open by what the shell grows more than the board");

    internal static readonly Source Cupping = Source.CommonPractice("movement-cupping", "a flat-sawn board that dries turns hollow on the side that was nearer the bark, one that gets wet on the other");

    internal static readonly Source Steel = Source.Published("EN-1991-1-5", "Eurocode 1: Actions on structures, thermal actions, EN 1991-1-5", "CEN", 2003, "annex C: structural steel 0.000012 per kelvin", SourceReading.Memory, "other tables have 0.0000117 to 0.000012");

    internal static readonly Source WoodHeat = Source.Published("FPL-GTR-190", "Wood Handbook: Wood as an Engineering Material", "USDA Forest Service, Forest Products Laboratory", 2010, "chapter 4: thermal expansion along the grain of ovendry wood 0.0000031 to 0.0000045 per kelvin", SourceReading.Memory, "0.000004 is taken");

    internal static readonly Source LengthChange = Source.Published("FPL-GTR-190", "Wood Handbook: Wood as an Engineering Material", "USDA Forest Service, Forest Products Laboratory", 2010, "page 4-5: shrinkage along the grain 0.1 to 0.2% from green to ovendry", SourceReading.Copy, "as quoted at awc.org and eng-tips.com 349646; the greater is taken, over 30% of moisture content");
}
