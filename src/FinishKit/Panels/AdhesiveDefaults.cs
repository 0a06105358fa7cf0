namespace FinishKit;

/// <summary>What glue and staples of wrapped panels take when the caller gives nothing, each with its basis.</summary>
internal static class AdhesiveDefaults
{
    /// <summary>mm² of one surface, one coat.</summary>
    internal const double Covered = 5_000_000;

    /// <summary>Unit of the answer where the default coverage is taken.</summary>
    internal const string Litre = "l";

    internal const double StapleSpacing = 40;
    internal const double Margin = 1.5;
    internal const double LeastBite = 4;

    internal static readonly Source CoverageSource = Source.CommonPractice("default-adhesive-coverage", "a litre of contact adhesive coats 5 m² of one surface once, 4 to 6: 2 to 3 m² bonded with both coated");

    internal static readonly Source SpacingSource = Source.CommonPractice("default-staple-spacing", "staples along a turned-under edge are 40 mm apart at most, 25 to 50");

    internal static readonly Source MarginSource = Source.Judgement("default-staple-margin", "1.5 mm of ply are kept before a staple's point, 1 to 2, so that the face does not show it");

    internal static readonly Source BiteSource = Source.Judgement("default-staple-bite", "a staple that holds cloth goes 4 mm into the ply or more, 3 to 6");

    internal static readonly Source CrownSource = Source.Judgement("default-under-crown", "a staple's crown is taken to lie on the ply where nothing is said of what lies under it: the careful side for the face, not for the hold");

    internal static readonly Source Quantity = Source.Derived("wrap-adhesive", "Adhesive for a bond", "area of the bond times surfaces coated times coats, over what a container coats once");

    internal static readonly Source Staples = Source.Derived("wrap-staples", "Staples along an edge", "as many equal parts as keep the distance, a staple in the middle of each; a leg goes as deep as it is long less what lies under the crown");

    internal static readonly Source Vapour = Source.CommonPractice("wrap-vapour", "solvent adhesive is used with the doors open and a fan on, pilot lights and heaters off, until the smell is gone");
}
