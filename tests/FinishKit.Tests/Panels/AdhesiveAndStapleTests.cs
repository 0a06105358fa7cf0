using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Panels;

/// <summary>Adhesive and staples of wrapped panels.</summary>
[Properties(MaxTest = 300, EndSize = 1_000_000)]
public sealed class AdhesiveAndStapleTests
{
    private static readonly StapleJob s_job = new([Mm(995), Mm(995), Mm(595), Mm(595)], TolerancedLength.PlusMinus(Mm(6.5), Mm(0.4)), Mm(6)) { UnderCrown = Mm(1) };

    private static bool s_problem;

    [Fact]
    public void Needed()
    {
        #region example: PanelAdhesive.Needed
        AdhesiveNeed need = PanelAdhesive.Needed(Area.FromSquareMeters(6.2), Area.FromSquareMeters(4));
        double cans = need.Containers;                      // 3.1: 6.2 x 2 surfaces over 4
        int buy = need.ToBuy;                               // 4
        #endregion
        Assert.Equal(3.1, cans, 1e-12);
        Assert.Equal(4, buy);
        Assert.Equal(12.4, need.Coated.SquareMeters, 1e-12);
        Assert.Equal("panels-adhesive-vapour", Assert.Single(need.Findings).Code);
        Assert.Equal(Severity.Caution, need.Findings[0].Severity);
        WorkingsCheck.Recompute(need.Explain());
    }

    [Fact]
    public void Whole_cans_are_whole_cans_and_the_default_is_named()
    {
        Assert.Equal(3, PanelAdhesive.Needed(Area.FromSquareMeters(6), Area.FromSquareMeters(4)).ToBuy); // 12 over 4
        Assert.Equal(4, PanelAdhesive.Needed(Area.FromSquareMillimeters(6_000_001), Area.FromSquareMeters(4)).ToBuy);
        AdhesiveNeed need = PanelAdhesive.Needed(Area.FromSquareMeters(5), coats: 2, surfaces: 1);
        Assert.Equal(2, need.Containers); // 5 x 1 x 2 over 5
        Assert.Equal(SourceKind.CommonPractice, Assert.Single(need.DefaultsUsed).Source.Kind);
        Assert.Equal(["panels-adhesive-vapour", "panels-adhesive-litres", "panels-adhesive-one-surface"], need.Findings.Select(static finding => finding.Code));
        AdhesiveNeed none = PanelAdhesive.Needed(Area.FromSquareMeters(0));
        Assert.Equal((0, 0), (none.Containers, none.ToBuy));
        Assert.Empty(none.Findings);
    }

    [Fact]
    public void Adhesive_problems_are_reported_at_once() => Assert.Equal(
        ["bonded", "covered", "coats", "surfaces"],
        PanelAdhesive.CheckNeeded(Area.FromSquareMeters(-1), new Area(1, (AreaUnit)999), 0, 3).Select(static problem => problem.Parameter));

    /// <summary>4 mm² for 4 m² is a slip of the unit: 6.2 m² would take three million cans. At the least that is taken, a square decimetre, the most is 500 x 2 x 10 over 0.01: a million.</summary>
    [Fact]
    public void What_a_container_covers_is_a_square_decimetre_or_more()
    {
        Assert.Equal(["covered"], PanelAdhesive.CheckNeeded(Area.FromSquareMeters(6.2), Area.FromSquareMillimeters(4)).Select(static problem => problem.Parameter));
        Assert.Equal(["covered"], PanelAdhesive.CheckNeeded(Area.FromSquareMeters(500), Area.FromSquareMillimeters(9_999.999), 10).Select(static problem => problem.Parameter));
        Assert.Equal(1_000_000, PanelAdhesive.Needed(Area.FromSquareMeters(500), Area.FromSquareMillimeters(10_000), 10).ToBuy);
    }

    /// <summary>The default is what a litre coats, so its answer is in litres; of the caller's containers only the caller knows what they hold.</summary>
    [Fact]
    public void With_the_default_coverage_the_answer_is_in_litres()
    {
        AdhesiveNeed litres = PanelAdhesive.Needed(Area.FromSquareMeters(6.2)), cans = PanelAdhesive.Needed(Area.FromSquareMeters(6.2), Area.FromSquareMeters(5));
        Assert.Equal("2.48 litres of adhesive for 6.2 m², 3 to buy", litres.ToString()); // 12.4 over 5
        Assert.Equal("2.48 containers of adhesive for 6.2 m², 3 to buy", cans.ToString());
        Assert.Equal(["l", "l"], litres.Figures().Where(static figure => figure.Name is "containers" or "to-buy").Select(static figure => figure.Unit));
        Assert.Equal([string.Empty, string.Empty], cans.Figures().Where(static figure => figure.Name is "containers" or "to-buy").Select(static figure => figure.Unit));
        Assert.Equal(Severity.Note, litres.Findings.Single(static finding => finding.Code == "panels-adhesive-litres").Severity);
        Assert.DoesNotContain(cans.Findings, static finding => finding.Code == "panels-adhesive-litres");
        Assert.Equal("default-adhesive-coverage", litres.Explain().Steps.Single(static step => step.Value.Name == "K").Source.Id);
        Assert.Equal("l", litres.Explain().Steps.Single(static step => step.Value.Name == "n").Value.Unit);
        WorkingsCheck.Recompute(litres.Explain());
    }

    [Fact]
    public void Answers_compare_by_what_they_were_asked()
    {
        AdhesiveNeed one = PanelAdhesive.Needed(Area.FromSquareMeters(5), Area.FromSquareMeters(4));
        Assert.True(one == PanelAdhesive.Needed(Area.FromSquareMillimeters(5e6), Area.FromSquareMeters(4)));
        Assert.True(one != PanelAdhesive.Needed(Area.FromSquareMeters(5), Area.FromSquareMeters(4), 2));
        Assert.Equal("2.5 containers of adhesive for 5 m², 3 to buy", one.ToString());
    }

    [Fact]
    public void Adhesive_allocates_nothing()
    {
        (Area bonded, Area covered) = (Area.FromSquareMillimeters(5e6), Area.FromSquareMillimeters(4e6));
        for (int i = 0; i < 64; i++)
        {
            s_problem = PanelAdhesive.Needed(bonded, covered).HasProblem;
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1024; i++)
        {
            s_problem |= PanelAdhesive.Needed(bonded, covered, 2).HasProblem;
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    /// <summary>By hand: 995/40 = 24.9: 25 at 39.8; 595/40 = 14.9: 15. The thinnest ply is 6.1, the leg goes 6 - 1 = 5 deep, 1.1 are left; 6.1 - 1.5 + 1 = 5.6 is the longest.</summary>
    [Fact]
    public void SetOut()
    {
        #region example: PanelStaples.SetOut
        StapleJob job = new([Mm(995), Mm(995), Mm(595), Mm(595)], TolerancedLength.PlusMinus(Mm(6.5), Mm(0.4)), Mm(6)) { UnderCrown = Mm(1) };
        StaplePlan plan = PanelStaples.SetOut(job);
        int staples = plan.Count;                           // 80: 25 along each side of 995, 15 along each of 595
        Length left = plan.LeftBeforePoint;                 // 1.1: 6.1 at the thinnest less 6 - 1, and 1.5 are asked
        Length longest = plan.LongestLeg!.Value;            // 5.6
        #endregion
        Assert.Equal((80, 1.1, 5.6), (staples, left.Millimeters, longest.Millimeters));
        Assert.Equal([25, 25, 15, 15], plan.Edges.Select(static edge => edge.Count));
        Assert.Equal(39.8, plan.Edges[0].Distance.Millimeters);
        Assert.Equal("panels-staple-near-face", plan.Findings[0].Code);
        Assert.Contains(new Figure("worst-severity", 2, string.Empty), plan.Figures()); // a host that keeps figures only sees it
        Assert.Equal(["staple-spacing", "margin", "least-bite"], plan.DefaultsUsed.Select(static used => used.Figure.Name));
        WorkingsCheck.Recompute(plan.Explain());
    }

    [Fact]
    public void Limits_exactly_met_are_met()
    {
        Assert.False(PanelStaples.SetOut(s_job with { Leg = Mm(5.6) }).HasProblem);
        Assert.True(PanelStaples.SetOut(s_job with { Leg = Mm(5.600001) }).HasProblem);
        Assert.Equal("panels-staple-through", PanelStaples.SetOut(s_job with { Leg = Mm(7.1) }).Findings[0].Code); // the point at the face
        Assert.Equal("panels-staple-near-face", PanelStaples.SetOut(s_job with { Leg = Mm(7.099999) }).Findings[0].Code);
        Assert.Equal("panels-staple-through", PanelStaples.SetOut(s_job with { Leg = Mm(7.1), Margin = Mm(0) }).Findings[0].Code);
        Assert.Equal(["panels-staple-not-counted"], PanelStaples.SetOut(s_job with { Leg = Mm(5) }).Findings.Select(static finding => finding.Code)); // 4 deep
        Assert.Equal("panels-staple-short", PanelStaples.SetOut(s_job with { Leg = Mm(4.999999) }).Findings[0].Code);
        Assert.Equal(25, PanelStaples.SetOut(s_job with { Edges = [Mm(1000)] }).Count);
        Assert.Equal(26, PanelStaples.SetOut(s_job with { Edges = [Mm(1000.00001)] }).Count);
    }

    /// <summary>5.5 - 1.5 = 4 is just the least bite; thinner ply takes no staple.</summary>
    [Fact]
    public void In_thin_ply_only_glue_will_do()
    {
        Assert.Equal(5, PanelStaples.SetOut(s_job with { PlyThickness = Mm(5.5) }).LongestLeg!.Value.Millimeters);
        StaplePlan thin = PanelStaples.SetOut(s_job with { PlyThickness = Mm(5.499999), Leg = Mm(4) });
        Assert.Null(thin.LongestLeg);
        Assert.Contains("glue only", thin.Findings[0].Message, StringComparison.Ordinal);
    }

    /// <summary>Legs of 4 without anything under the crown go 4 deep, just the least bite; 2.5 of cloth and foam would leave 1.5. That it was not counted is said.</summary>
    [Fact]
    public void What_lies_under_the_crown_is_not_nothing_in_silence()
    {
        StapleJob job = s_job with { Leg = Mm(4), UnderCrown = null };
        StaplePlan plan = PanelStaples.SetOut(job);
        Finding note = plan.Findings.Single(static finding => finding.Code == "panels-staple-under-crown-unknown");
        Assert.Equal(Severity.Note, note.Severity);
        Assert.Equal(0, note.Values.Single(static value => value.Name == "most-under-crown").Value); // 4 - 4
        Assert.Equal(("under-crown", 0), plan.DefaultsUsed.Where(static used => used.Figure.Name == "under-crown").Select(static used => (used.Figure.Name, used.Figure.Value)).Single());
        Assert.Equal(1, PanelStaples.SetOut(job with { Leg = Mm(5) }).Findings.Single(static finding => finding.Code == "panels-staple-under-crown-unknown").Values[^1].Value);
        Assert.DoesNotContain(PanelStaples.SetOut(job with { UnderCrown = Mm(0) }).Findings, static finding => finding.Code == "panels-staple-under-crown-unknown");
        StaplePlan told = PanelStaples.SetOut(job with { UnderCrown = Mm(2.5) });
        Assert.Equal(1.5, told.Depth.Millimeters);
        Assert.Equal(["panels-staple-short", "panels-staple-not-counted"], told.Findings.Select(static finding => finding.Code));
        Assert.DoesNotContain(told.DefaultsUsed, static used => used.Figure.Name == "under-crown");
        WorkingsCheck.Recompute(plan.Explain());

        // What a wrapped panel has there: 1 of cloth, and the foam of 3 that came with it, squeezed to half.
        WrapBuild build = new(Mm(6.5), Mm(1));
        Assert.Equal(1, PanelWrap.Plan(new WrapJob(Mm(1000), Mm(600), build with { Top = EdgeWrap.FoamRound })).UnderCrown.Millimeters);
        WrapPlan separate = PanelWrap.Plan(new WrapJob(Mm(1000), Mm(600), build)), backed = PanelWrap.Plan(new WrapJob(Mm(1000), Mm(600), build with { IsFoamBacked = true }));
        Assert.Equal((1, 0), (separate.UnderCrown.Millimeters, separate.FoamUnderCrown.Millimeters));
        Assert.Equal((1, 1.5), (backed.UnderCrown.Millimeters, backed.FoamUnderCrown.Millimeters));
    }

    /// <summary>
    /// A driven crown squeezes foam to nothing. Foam-backed cloth, 1 and 3 squeezed to 1.5, birch 6.0 at the thinnest: legs of 7 go 7 - 1 = 6 deep and come through; with the foam counted for the face 1.5 would
    /// be left. The longest is 6.0 - 1.5 + 1 = 5.5; it bites 5.5 - 2.5 = 3 where the foam stays, which is short of 4: glue only, unless 3 are enough.
    /// </summary>
    [Fact]
    public void Foam_under_the_crown_counts_for_the_bite_and_not_for_the_face()
    {
        WrapPlan backed = PanelWrap.Plan(new WrapJob(Mm(1000), Mm(600), new WrapBuild(Mm(6.4), Mm(1)) { IsFoamBacked = true }));
        StapleJob job = new(backed.WrappedEdges, TolerancedLength.PlusMinus(Mm(6.4), Mm(0.4)), Mm(7)) { UnderCrown = backed.UnderCrown, FoamUnderCrown = backed.FoamUnderCrown };
        StaplePlan seven = PanelStaples.SetOut(job);
        Assert.True(seven.HasProblem);
        Assert.Equal("panels-staple-through", seven.Findings[0].Code);
        Assert.Equal((6, 4.5, 0), (seven.Depth.Millimeters, seven.LeastDepth.Millimeters, seven.LeftBeforePoint.Millimeters));
        Assert.Null(seven.LongestLeg);
        StaplePlan enough = PanelStaples.SetOut(job with { Leg = Mm(5.5), LeastBite = Mm(3) });
        Assert.Equal((5.5, 3, 1.5), (enough.LongestLeg!.Value.Millimeters, enough.LeastDepth.Millimeters, enough.LeftBeforePoint.Millimeters));
        Assert.Equal(["panels-staple-not-counted"], enough.Findings.Select(static finding => finding.Code));
        Assert.True(PanelStaples.SetOut(job with { Leg = Mm(5.500001), LeastBite = Mm(3) }).HasProblem);
        StaplePlan held = PanelStaples.SetOut(job with { Leg = Mm(5.5) });
        Assert.False(held.HasProblem);
        Assert.Contains("glue only", held.Findings.Single(static finding => finding.Code == "panels-staple-short").Message, StringComparison.Ordinal);
        Assert.NotEqual(job, job with { FoamUnderCrown = null });
        Assert.Equal(["job.FoamUnderCrown"], PanelStaples.CheckSetOut(job with { FoamUnderCrown = Mm(-1) }).Select(static problem => problem.Parameter));
        WorkingsCheck.Recompute(seven.Explain());
    }

    [Fact]
    public void Staple_problems_are_reported_at_once()
    {
        StapleJob bad = new([Mm(995), Mm(0)], Mm(0.5), Mm(51)) { UnderCrown = Mm(-1), Spacing = Mm(4), Margin = Mm(21), LeastBite = Mm(-1) };
        Assert.Equal(["job.Edges[1]", "job.PlyThickness", "job.Leg", "job.UnderCrown", "job.Spacing", "job.Margin", "job.LeastBite"], PanelStaples.CheckSetOut(bad).Select(static problem => problem.Parameter));
        Assert.Equal(["job.Edges"], PanelStaples.CheckSetOut(s_job with { Edges = [] }).Select(static problem => problem.Parameter));
        Assert.Equal(["job.PlyThickness.Lower"], PanelStaples.CheckSetOut(s_job with { PlyThickness = new TolerancedLength(Mm(6), Mm(-6), Mm(0)) }).Select(static problem => problem.Parameter));
    }

    /// <summary>Staples are put down one by one: none further apart than asked, and one fewer would be.</summary>
    [Property]
    public void Staples_are_as_few_as_keep_the_distance(PositiveInt seed)
    {
        Random random = new(seed.Get);
        double spacing = random.Next(5, 200), edge = random.Next(3) == 0 ? spacing * random.Next(1, 30) : Math.Round(1 + (random.NextDouble() * 3000), 6);
        StapledEdge set = PanelStaples.SetOut(s_job with { Edges = [Mm(edge)], Spacing = Mm(spacing) }).Edges[0];
        Assert.True(edge / set.Count <= spacing + 1e-9);
        Assert.True(set.Count == 1 || edge / (set.Count - 1) > spacing);
        Assert.Equal(edge, set.Count * set.Distance.Millimeters, 1e-3);
    }
}
