using System.Collections.Generic;

namespace FinishKit;

/// <summary>Staples along the turned-under edges of wrapped panels: how many, and whether a leg stays inside the ply.</summary>
public static class PanelStaples
{
    internal const int MostEdges = 1000;

    private static readonly Allowed s_edge = new(1, 50_000, "mm");
    private static readonly Allowed s_ply = new(1, 50, "mm");
    private static readonly Allowed s_leg = new(1, 50, "mm");
    private static readonly Allowed s_under = new(0, 50, "mm");
    private static readonly Allowed s_spacing = new(5, 500, "mm");
    private static readonly Allowed s_margin = new(0, 20, "mm");

    /// <summary>Sets staples out along edges and checks their legs.</summary>
    /// <param name="job">Edges, ply, legs, and whatever differs from the defaults.</param>
    /// <returns>Staples of each edge, the ply left before the point in the worst case, and the longest leg that will do.</returns>
    /// <remarks>
    /// <para>Formula: staples = edge over the greatest distance, rounded up, each in the middle of its part; depth = leg - cloth under the crown; left before the point = least ply - depth; least depth = depth - foam under the crown, which a driven crown may squeeze to nothing; longest leg = least ply - margin + cloth under the crown. Where the least ply less the margin and the foam is under the least bite no leg will do, and the edge is glued only.</para>
    /// <para>Validity: staples driven square from the back, the crown on the cloth. Tolerance of the legs is not counted, nor a crown driven into the ply; the ply's is, at its thinnest.</para>
    /// <para>Source: wrap-staples (derived); default-staple-spacing (common practice); default-staple-margin, default-staple-bite, default-under-crown (judgement).</para>
    /// </remarks>
    /// <exception cref="System.ArgumentNullException">The job or its list is null.</exception>
    /// <exception cref="System.ArgumentException">A value is outside its range or in an undefined unit; the parameter is named by its path.</exception>
    /// <example><code>
    /// StapleJob job = new([Mm(995), Mm(995), Mm(595), Mm(595)], TolerancedLength.PlusMinus(Mm(6.5), Mm(0.4)), Mm(6)) { UnderCrown = Mm(1) };
    /// StaplePlan plan = PanelStaples.SetOut(job);
    /// int staples = plan.Count;                           // 80: 25 along each side of 995, 15 along each of 595
    /// Length left = plan.LeftBeforePoint;                 // 1.1: 6.1 at the thinnest less 6 - 1, and 1.5 are asked
    /// Length longest = plan.LongestLeg!.Value;            // 5.6
    /// </code></example>
    public static StaplePlan SetOut(StapleJob job)
    {
        StapleNumbers numbers = Read(job, nameof(job), null)!;
        return new StaplePlan(job, numbers);
    }

    /// <summary>All problems with a job; nothing is thrown.</summary>
    /// <param name="job">The job.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> CheckSetOut(StapleJob job)
    {
        List<InputProblem> problems = [];
        Read(job, nameof(job), problems);
        return problems;
    }

    /// <summary>The one formula body for a leg.</summary>
    internal static (double Depth, double Left, double LeastDepth, double Longest) SolveLeg<TTrace>(StapleNumbers job, TTrace trace)
        where TTrace : struct, ITrace
    {
        double ply = job.LeastPly, leg = job.Leg, under = job.Under, foam = job.Foam, margin = job.Margin;
        trace.Given("t", ply, "mm", Sources.Given, meaning: "ply at its thinnest");
        trace.Given("l", leg, "mm", Sources.Given, meaning: "leg");
        trace.Given("u", under, "mm", job.UnderSource, meaning: "under the crown, without foam");
        trace.Given("f", foam, "mm", Sources.Given, meaning: "foam under the crown: none is left for the face, all of it for the bite");
        trace.Given("m", margin, "mm", job.MarginSource, meaning: "ply to be kept before the point");
        double depth = trace.Step("d", nameof(depth), leg - under, "mm", AdhesiveDefaults.Staples);
        double left = trace.Step("r", nameof(left), ply - depth, "mm", AdhesiveDefaults.Staples);
        double leastDepth = trace.Step("d_f", nameof(leastDepth), depth - foam, "mm", AdhesiveDefaults.Staples);
        double longest = trace.Step("L", nameof(longest), ply - margin + under, "mm", AdhesiveDefaults.Staples);
        return (Grid.Snap(depth), Grid.Snap(left), Grid.Snap(leastDepth), Grid.Snap(longest));
    }

    /// <summary>The one formula body for an edge.</summary>
    internal static (double Count, double Distance) SolveEdge<TTrace>(double edge, double spacing, int index, TTrace trace)
        where TTrace : struct, ITrace
    {
        trace.Given("e", edge, "mm", Sources.Given, index, "edge");
        trace.Given("p", spacing, "mm", Sources.Given, meaning: "greatest distance of staples");
        double count = trace.Step("n", nameof(count), Grid.CeilingOfRatio(edge, spacing), string.Empty, AdhesiveDefaults.Staples, index);
        double distance = trace.Step("a", nameof(distance), edge / count, "mm", AdhesiveDefaults.Staples, index);
        return (count, distance);
    }

    private static StapleNumbers? Read(StapleJob job, string path, List<InputProblem>? problems)
    {
        if (Door.IsMissing(job, new Name(path), "a job", problems))
        {
            return null;
        }

        int before = problems?.Count ?? 0;
        const string Words = "1 to 1000 edges";
        double[] edges = [];
        if (!Door.IsMissing(job.Edges, new Name(path + ".Edges"), Words, problems))
        {
            if (job.Edges.Count is < 1 or > MostEdges)
            {
                Door.Report(new InputProblem(path + ".Edges", Print.Number(job.Edges.Count) + " edges", Words, isRange: true), problems);
            }
            else
            {
                edges = new double[job.Edges.Count];
                for (int i = 0; i < edges.Length; i++)
                {
                    edges[i] = Door.Millimetres(job.Edges[i], new Name(path + ".Edges", i), s_edge, problems);
                }
            }
        }

        Name thickness = new(path + ".PlyThickness");
        TolerancedLength.Span ply = job.PlyThickness.Read(thickness, s_ply, problems);
        if ((problems?.Count ?? 0) == before && ply.Least <= 0)
        {
            Door.Report(new InputProblem(thickness.Then(".Lower").ToString(), Print.Number(ply.Lower) + " mm", "so little that the thinnest ply has some thickness", isRange: true), problems);
        }

        double leg = Door.Millimetres(job.Leg, new Name(path + ".Leg"), s_leg, problems);
        double under = job.UnderCrown is { } layer ? Door.Millimetres(layer, new Name(path + ".UnderCrown"), s_under, problems) : 0;
        double foam = job.FoamUnderCrown is { } soft ? Door.Millimetres(soft, new Name(path + ".FoamUnderCrown"), s_under, problems) : 0;
        double spacing = job.Spacing is { } distance ? Door.Millimetres(distance, new Name(path + ".Spacing"), s_spacing, problems) : AdhesiveDefaults.StapleSpacing;
        double margin = job.Margin is { } kept ? Door.Millimetres(kept, new Name(path + ".Margin"), s_margin, problems) : AdhesiveDefaults.Margin;
        double bite = job.LeastBite is { } depth ? Door.Millimetres(depth, new Name(path + ".LeastBite"), s_under, problems) : AdhesiveDefaults.LeastBite;
        return (problems?.Count ?? 0) > before ? null : new StapleNumbers { Edges = edges, LeastPly = ply.Least, Leg = leg, Under = under, Foam = foam, UnderSource = job.UnderCrown is null ? AdhesiveDefaults.CrownSource : Sources.Given, MarginSource = job.Margin is null ? AdhesiveDefaults.MarginSource : Sources.Given, Spacing = spacing, Margin = margin, LeastBite = bite };
    }
}

/// <summary>A job of stapling in millimetres.</summary>
internal sealed class StapleNumbers
{
    internal double[] Edges { get; init; } = [];

    internal double LeastPly { get; init; }

    internal double Leg { get; init; }

    internal double Under { get; init; }

    internal double Foam { get; init; }

    internal Source UnderSource { get; init; } = Sources.Given;

    internal Source MarginSource { get; init; } = Sources.Given;

    internal double Spacing { get; init; }

    internal double Margin { get; init; }

    internal double LeastBite { get; init; }
}
