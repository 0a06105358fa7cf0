namespace FinishKit;

/// <summary>What spans take when the caller gives nothing, each with its basis.</summary>
internal static class BeamDefaults
{
    internal const double WallLoad = 200;
    internal const double CeilingLoad = 100;
    internal const double DeflectionLimit = 3;
    internal const double DeflectionRatio = 150;
    internal const double BayCap = 500;
    internal const int Spans = 2;

    internal static readonly Source StiffnessSource = Source.Judgement("default-knotty-stiffness", "a knotty board keeps 0.8 of the stiffness of clear wood (0.7 to 1); clear boards and plywood all of it");

    internal static readonly Source StrengthSource = Source.Judgement("default-bending-strength", "stress allowed: a knotty board a quarter of the modulus of rupture of clear wood (a third to a fifth), a clear board a third, plywood half its characteristic strength");

    internal static readonly Source LoadSource = Source.Judgement("default-point-load", "a hand, an elbow or a knee: 200 N on a wall, 100 N on a ceiling (100 to 400)");

    internal static readonly Source DeflectionSource = Source.Judgement("default-deflection-limit", "the smaller of 3 mm (2 to 4) and a 150th of the span");

    internal static readonly Source CapSource = Source.CommonPractice("default-bay-cap", "no bay between strips over 500 mm, whatever the stiffness (400 to 600)");

    internal static readonly Source SpansSource = Source.Judgement("default-spans", "a board runs over two spans at least");
}
