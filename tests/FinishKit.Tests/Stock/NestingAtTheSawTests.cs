using System;
using System.Linq;
using Xunit;
using static FinishKit.Measure;
using static FinishKit.Tests.Stock.NestingTests;

namespace FinishKit.Tests.Stock;

/// <summary>What a nesting plan says to the person at the saw or router, and what it refuses to guess.</summary>
public sealed class NestingAtTheSawTests
{
    /// <summary>
    /// Four of 20 x 15, one above the other: 4 x 15 + 3 x 2.4 = 67.2. The first cut takes 20 off the trimmed sheet, the second 67.2 off that strip of
    /// 20 x 1210, three part what is 20 x 67.2: five whose wood is narrower than 100, or that set a fence to less.
    /// </summary>
    [Fact]
    public void Small_wood_on_the_saw_is_cautioned_about_and_its_cuts_read_apart()
    {
        NestingPlan plan = SheetNesting.Nest(new NestingJob([Part(20, 15, 4)], [Sheet(2440, 1220, 38m)], SheetCutting.Sawn));
        NestingCheck.Holds(plan);
        Finding small = plan.Findings[0];
        Assert.Equal(("stock-small-at-the-saw", Severity.Caution), (small.Code, small.Severity));
        Assert.Equal([("cuts", 5, string.Empty), ("least-long", 300, "mm"), ("least-wide", 100, "mm")], small.Values.Select(static value => (value.Name, value.Value, value.Unit)));
        Assert.Contains("push", small.Message, StringComparison.Ordinal);

        // The strips end at 5 + 15, then 17.4 further each: 20, 37.4, 54.8.
        Assert.Equal(
            ["7: cut along, set to 15 mm, at 20 mm, from 5 to 25 mm", "8: cut along, set to 15 mm, at 37.4 mm, from 5 to 25 mm", "9: cut along, set to 15 mm, at 54.8 mm, from 5 to 25 mm"],
            plan.Sheets[0].Cuts.Skip(6).Select(static cut => cut.ToString()));
        Assert.Equal("1: trim along, set to 2.6 mm, at 2.6 mm, from 0 to 2440 mm", plan.Sheets[0].Cuts[0].ToString());
        string saw = plan.Findings.Single(static finding => finding.Code == "stock-sheet-cutting").Message;
        Assert.Contains("Trim along a rail", saw, StringComparison.Ordinal);
    }

    /// <summary>One crosscut at 200 of wood of 300 x 100 meets both limits; a nanometre less of either does not, nor does one that sets a stop to less than 100.</summary>
    [Theory]
    [InlineData(300, 100, 200, false)]
    [InlineData(299.999999, 100, 200, true)]
    [InlineData(300, 99.999999, 200, true)]
    [InlineData(300, 100, 100, false)]
    [InlineData(300, 100, 99.999999, true)]
    public void A_limit_exactly_met_is_met(double length, double width, double part, bool isSmall)
    {
        NestingPlan plan = SheetNesting.Nest(new NestingJob([Part(part, width)], [Sheet(length, width, 1m)], SheetCutting.Sawn) { Kerf = Mm(0), Trim = Mm(0) });
        Assert.Single(plan.Sheets[0].Cuts);
        Assert.Equal(isSmall, plan.Findings.Any(static finding => finding.Code == "stock-small-at-the-saw"));
    }

    /// <summary>A bit cuts its own width: a saw's 2.4 would let a bit of 6 cut 3.6 into the neighbour. There is no default for it.</summary>
    [Fact]
    public void A_routed_job_has_to_give_its_kerf()
    {
        NestingJob job = new([Part(500, 300, 4)], [Sheet(2440, 1220, 38m)], SheetCutting.Routed);
        InputProblem problem = Assert.Single(SheetNesting.Check(job));
        Assert.Equal(("job.Kerf", true), (problem.Parameter, problem.IsMissing));
        Assert.Equal("job.Kerf", Assert.Throws<ArgumentNullException>(() => SheetNesting.Nest(job)).ParamName);
        NestingPlan plan = SheetNesting.Nest(job with { Kerf = Mm(6) });
        NestingCheck.Holds(plan);
        Assert.DoesNotContain("kerf", plan.DefaultsUsed.Select(static used => used.Figure.Name));
        Assert.Empty(SheetNesting.Check(job with { Cutting = SheetCutting.Sawn }));
    }

    /// <summary>What was given is said as it was given, not rounded to what would be allowed.</summary>
    [Theory]
    [InlineData("38.00001")]
    [InlineData("-0.000001")]
    [InlineData("1000000.0001")]
    [InlineData("79228162514264337593543950335.00")]
    public void A_refused_price_is_said_to_its_last_decimal(string price)
    {
        InputProblem problem = Assert.Single(SheetNesting.Check(new NestingJob([Part(500, 300)], [Sheet(2440, 1220, decimal.Parse(price, System.Globalization.CultureInfo.InvariantCulture))], SheetCutting.Sawn)));
        Assert.Equal(("job.Stock[0].Price", price), (problem.Parameter, problem.Value));
    }

    /// <summary>Sheets of which none is to be had, and an offcut: what is said of a job without bought sheets.</summary>
    [Fact]
    public void Offcuts_alone_are_a_job_with_a_sheet_that_is_not_to_be_had()
    {
        NestingPlan plan = SheetNesting.Nest(new NestingJob([Part(500, 300)], [Sheet(2440, 1220, 0m) with { Available = 0 }], SheetCutting.Sawn) { Offcuts = [new SheetOffcut(Mm(500), Mm(300))] });
        NestingCheck.Holds(plan);
        Assert.Equal((true, 0m, false), (Assert.Single(plan.Sheets).IsOffcut, plan.Cost, plan.HasProblem));
    }
}
