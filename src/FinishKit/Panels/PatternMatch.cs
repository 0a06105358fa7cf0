using System.Collections.Generic;

namespace FinishKit;

/// <summary>Where the pieces of a row of wrapped panels start in the cloth's pattern, so that it runs on across the joints, and what that costs in cloth.</summary>
public static class PatternMatch
{
    internal static readonly Source Matching = Source.Derived("wrap-pattern", "Pattern that runs on over a row of panels", "the pattern lies on the wall as if it were not cut; a piece starts in the repeat where its edge lies from the last motif line, and a piece cut after another waits for that place to come again");

    private static readonly Allowed s_repeat = new(0, 5000, "mm");
    private static readonly Allowed s_roll = new(10, 10_000, "mm");

    /// <summary>Lays the pieces of a row so that the pattern runs on.</summary>
    /// <param name="job">The row, the repeats, and what the pattern is centred on.</param>
    /// <returns>For each piece where it starts in the repeat, the extra length of cloth, and blocks of whole repeats.</returns>
    /// <remarks>
    /// <para>Formula: offset = place of the cloth's front or lower edge less the last motif line at or before it, the motif lines one repeat apart and one of them in the middle asked for; extra = what is skipped along the roll until the offset comes, pieces cut one after another front to rear; block = repeat times (offset + size over repeat, rounded up).</para>
    /// <para>Validity: a straight repeat, not a half drop; the cloth lies on the face unstretched, and the joints are passed over as if the pattern went on behind them. Up the panels (along them for a roll that runs so) every piece is centred on its middle.</para>
    /// <para>Source: wrap-pattern (derived).</para>
    /// </remarks>
    /// <exception cref="System.ArgumentNullException">The job or its plan is null.</exception>
    /// <exception cref="System.ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// WrapBuild build = new(Mm(6.5), Mm(1)) { Nap = NapDirection.TowardTop, Stretch = ClothStretch.BothWays };
    /// WrapPlan plan = PanelWrap.Plan(new WrapJob(Mm(1806), Mm(500), build) { Panels = 3 });
    /// PatternLayout layout = PatternMatch.Lay(new PatternJob(plan, Mm(320), Mm(200)));
    /// Length across = layout.Pieces[0].OffsetAcross;      // 55: its cloth starts 945 before the row's middle, five repeats are 1000
    /// Length extra = layout.Pieces[1].Extra;              // 56: a piece is 584 long, twice 320 is 640
    /// Length buy = layout.LengthInOrder;                  // 1892: 28 + 3 x 584 + 2 x 56
    /// </code></example>
    public static PatternLayout Lay(PatternJob job)
    {
        Read(job, nameof(job), null);
        return new PatternLayout(job);
    }

    /// <summary>All problems with a job; nothing is thrown.</summary>
    /// <param name="job">The job.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckLay(PatternJob job)
    {
        List<InputProblem> problems = [];
        Read(job, nameof(job), problems);
        return problems;
    }

    /// <summary>The one formula body for a piece one way, in millimetres: where it starts in the repeat and the whole repeats that hold it.</summary>
    internal static (double Offset, double Block) Solve<TTrace>(double start, double motif, double repeat, double size, double whole, int index, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("s", start, "mm", WrapDefaults.Sizes, index, "edge of the cloth, from the opening's edge");
        trace.Given("m", motif, "mm", Sources.Given, index, "middle that the pattern is centred on");
        trace.Given("a", size, "mm", WrapDefaults.Sizes, index, "size of the cloth");
        trace.Given("p", repeat, "mm", Sources.Given, index, "repeat");
        if (repeat == 0)
        {
            trace.Given("o", 0, "mm", Matching, index, "nothing to match");
            return (0, trace.Step("b", "block", size, "mm", Matching, index));
        }

        trace.Given("n", whole, string.Empty, Matching, index, "whole repeats from the middle to the edge, rounded down");
        double offset = trace.Step("o", nameof(offset), start - motif - (whole * repeat), "mm", Matching, index);
        double block = trace.Step("b", nameof(block), repeat * Grid.CeilingOfRatio(offset + size, repeat), "mm", Matching, index);
        return (offset, block);
    }

    private static void Read(PatternJob job, string path, List<InputProblem>? problems)
    {
        if (Door.IsMissing(job, new Name(path), "a job", problems))
        {
            return;
        }

        bool isPlanned = !Door.IsMissing(job.Plan, new Name(path + ".Plan"), "a row of panels", problems);
        Door.Millimetres(job.RepeatAlong, new Name(path + ".RepeatAlong"), s_repeat, problems);
        Door.Millimetres(job.RepeatAcross, new Name(path + ".RepeatAcross"), s_repeat, problems);
        if (isPlanned && job.CentredOnPanel is { } panel)
        {
            Door.Number(panel, path + ".CentredOnPanel", new Allowed(0, job.Plan.Panels.Count - 1, string.Empty), problems);
        }

        if (job.RollWidth is { } width)
        {
            Door.Millimetres(width, new Name(path + ".RollWidth"), s_roll, problems);
        }
    }
}
