using System.Collections.Generic;

namespace FinishKit;

/// <summary>A <see cref="BayQuestion"/> as plain numbers; NaN for what was left to the default or is not there.</summary>
internal readonly struct BayCase(SectionNumbers section)
{
    private const string QuestionWords = "a section that spans";

    private static readonly Allowed s_load = new(0, 100_000, "N");
    private static readonly Allowed s_uniform = new(0, 1000, "N/mm");
    private static readonly Allowed s_spans = new(1, SpanCoefficients.MostSpans, string.Empty);
    private static readonly Allowed s_limit = new(Allowed.OneStep, 1000, "mm");
    private static readonly Allowed s_ratio = new(1, 10_000, string.Empty);
    private static readonly Allowed s_cap = new(Allowed.OneStep, 1e5, "mm");

    internal SectionNumbers Section { get; } = section;

    internal Surface Surface { get; init; }

    internal double PointGiven { get; init; }

    internal double Uniform { get; init; }

    internal int SpansGiven { get; init; }

    internal double LimitGiven { get; init; }

    internal double RatioGiven { get; init; }

    internal double CapGiven { get; init; }

    internal bool PointIsDefault => double.IsNaN(PointGiven);

    internal double Point => !PointIsDefault ? PointGiven : Surface == Surface.Ceiling ? BeamDefaults.CeilingLoad : BeamDefaults.WallLoad;

    internal int Spans => SpansGiven == 0 ? BeamDefaults.Spans : SpansGiven;

    internal double Limit => double.IsNaN(LimitGiven) ? BeamDefaults.DeflectionLimit : LimitGiven;

    internal double Ratio => double.IsNaN(RatioGiven) ? BeamDefaults.DeflectionRatio : RatioGiven;

    internal double Cap => double.IsNaN(CapGiven) ? BeamDefaults.BayCap : CapGiven;

    internal static BayCase Read(BeamSection section, Surface surface, List<InputProblem>? problems)
    {
        CheckSurface(surface, nameof(surface), problems);
        return new BayCase(ReadSection(section, new Name(nameof(section)), problems))
        {
            Surface = surface,
            PointGiven = double.NaN,
            Uniform = double.NaN,
            LimitGiven = double.NaN,
            RatioGiven = double.NaN,
            CapGiven = double.NaN,
        };
    }

    internal static BayCase Read(BayQuestion question, List<InputProblem>? problems)
    {
        if (Door.IsMissing(question, new Name(nameof(question)), QuestionWords, problems))
        {
            return default;
        }

        SectionNumbers section = ReadSection(question.Section, new Name("question.Section"), problems);
        CheckSurface(question.Surface, "question.Surface", problems);
        return new BayCase(section)
        {
            Surface = question.Surface,
            PointGiven = question.PointLoad is { } point ? Door.Newtons(point, "question.PointLoad", s_load, problems) : double.NaN,
            Uniform = question.UniformLoad is { } uniform ? Door.NewtonsPerMillimetre(uniform, new Name("question.UniformLoad"), s_uniform, problems) : double.NaN,
            SpansGiven = question.Spans is { } spans && !double.IsNaN(Door.Number(spans, "question.Spans", s_spans, problems)) ? spans : 0,
            LimitGiven = question.DeflectionLimit is { } limit ? Door.Millimetres(limit, "question.DeflectionLimit", s_limit, problems) : double.NaN,
            RatioGiven = question.DeflectionRatio is { } ratio ? Door.Number(ratio, "question.DeflectionRatio", s_ratio, problems) : double.NaN,
            CapGiven = question.Cap is { } cap ? Door.Millimetres(cap, "question.Cap", s_cap, problems) : double.NaN,
        };
    }

    /// <summary>The same over a single span.</summary>
    internal BayCase OverOneSpan() => new(Section)
    {
        Surface = Surface,
        PointGiven = PointGiven,
        Uniform = Uniform,
        SpansGiven = 1,
        LimitGiven = LimitGiven,
        RatioGiven = RatioGiven,
        CapGiven = CapGiven,
    };

    private static SectionNumbers ReadSection(BeamSection section, Name name, List<InputProblem>? problems) =>
        Door.IsMissing(section, name, "width, thickness and modulus of elasticity", problems) ? default : section.Read(name, problems);

    private static void CheckSurface(Surface surface, string parameter, List<InputProblem>? problems)
    {
        if (surface is not (Surface.Wall or Surface.Ceiling))
        {
            Door.Report(new InputProblem(parameter, Print.Number((int)surface), "Wall or Ceiling", isRange: true), problems);
        }
    }
}

/// <summary>Largest bays by each limit, as plain numbers. Infinite where the limit never governs, NaN where it cannot be told.</summary>
internal readonly struct BayNumbers(double byDeflection, double byStress, double bay, double deflection, double stress, double allowed)
{
    internal double ByDeflection { get; } = byDeflection;

    internal double ByStress { get; } = byStress;

    internal double Bay { get; } = bay;

    internal double Deflection { get; } = deflection;

    internal double Stress { get; } = stress;

    internal double Allowed { get; } = allowed;
}
