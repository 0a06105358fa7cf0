namespace FinishKit;

/// <summary>What laminating rests on.</summary>
internal static class LaminationDefaults
{
    internal static readonly Source SpringBack = Source.Derived("spring-back", "What a glued lamination springs back by", "each layer alone wants to go straight with its own stiffness, the whole holds with that of all layers glued: the curvature lost is the first over the second, 1/n² for n equal layers of one stuff");

    internal static readonly Source CamberRule = Source.Published("CAMBER-LOST", "Laminated beams: camber lost y = x/n²", "forum.woodenboat.com", null, "topic 141333", SourceReading.Copy, "a builders' rule: 3 in of camber in 4 layers lose 3/16 in, in 8 layers 3/64 in; one woodworker's page on spring-back calls all such formulas unreliable");

    internal static readonly Source StretchRatio = Source.Judgement("default-stretch-ratio", "a layer is taken to be as stiff in stretching as in bending, which holds for solid wood and veneer; plywood differs: 6.5 mm birch has 0.77 with its grain around the curve and 1.61 along the axis");

    internal static DefaultUsed StretchRatioUsed => new(new Figure("stretch-ratio", 1, string.Empty), StretchRatio);

    internal static readonly Source Glue = Source.CommonPractice("lamination-glue", "laminations are glued with a rigid glue that does not creep, and stay on the form until it has cured");
}
