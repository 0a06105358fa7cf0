namespace FinishKit;

/// <summary>What courses take when the caller gives nothing, each with its basis.</summary>
internal static class CourseDefaults
{
    internal const double LeastCourse = 40;
    internal const double SetOutError = 3;

    internal static readonly Source LeastSource = Source.CommonPractice("default-least-course", "no course narrower than the greater of 40 mm and a third of the cover; a third to half");

    internal static readonly Source ErrorSource = Source.Judgement("default-set-out-error", "a set-out is off by up to 3 mm, 2 to 5");
}
