using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Contracts;

/// <summary>What the three kinds of caller write: a program that embeds one calculator, a notebook, an estimating system.</summary>
public sealed class SnippetTests
{
    /// <summary>
    /// A 15 mm birch sheet may be 14.2: a 1 in brad may be 26.194, and 12.7 + 14.2 - 1.5 - 26.194 is below 0; a 3/4 in brad may be
    /// 18.256 and then holds 0.5 + 18.256 - 12.7 = 6.056, and 7.5 are asked. An 18 mm sheet may be 17.1: 2.106 are left, 0.5 asked.
    /// </summary>
    [Fact]
    public void Embedding_one_calculator_takes_a_line_and_its_answer_two()
    {
        List<TolerancedLength> order = [];
        List<(string Code, Severity Severity, IReadOnlyList<Figure> Values)> shown = [];

        var r = FastenerLength.Choose([Layer.Board(Mm(12.7)), Layer.Furring(SheetGoods.Birch15)], Behind.Metal, FastenerSeries.Brad18);
        if (r.Chosen is { } nail)
        {
            order.Add(nail.Length);
        }

        foreach (var f in r.Findings)
        {
            shown.Add((f.Code, f.Severity, f.Values));
        }

        Assert.Empty(order);
        Assert.True(r.HasProblem);
        Assert.Equal(("fastening-none-bites", Severity.Problem), (shown[0].Code, shown[0].Severity));
        Assert.Contains(new Figure("worst-bite", 6.05625, "mm"), shown[0].Values);
        Assert.Contains(shown, static finding => finding is { Code: "fastening-look-behind", Severity: Severity.Note });

        var thicker = FastenerLength.Choose([Layer.Board(Mm(12.7)), Layer.Furring(SheetGoods.Birch18)], Behind.Metal, FastenerSeries.Brad18);
        Assert.Equal("25.4 mm ± 0.794", thicker.Chosen?.Length.ToString());
        Assert.Equal(2.10625, thicker.Chosen!.WorstClearance.Millimeters);
        Assert.False(thicker.HasProblem);
    }

    [Fact]
    public void A_notebook_cell_is_one_expression()
    {
        object cell = FastenerLength.Choose([Mm(12.7), Inch("5/8")], Behind.Metal, FastenerSeries.Brad18);

        // 12.7 + 15.875 - 1 - 25.4 = 2.175 at nominal; 0.5 of setting and 0.794 of length less in the worst case.
        Assert.StartsWith("18 ga brad: 25.4 mm is safe against the metal of a rib: 2.175 mm clear at nominal sizes, in the worst case it stays 0.881 mm clear;", cell.ToString(), System.StringComparison.Ordinal);
    }

    [Fact]
    public void A_collection_expression_of_lengths_is_a_list_of_layers()
    {
        IReadOnlyList<Layer> stack = [Mm(12.7), Inch("5/8")];
        Assert.Equal([12.7, 15.875], stack.Select(static layer => layer.Thickness.Nominal.Inches * 25.4).Select(static mm => System.Math.Round(mm, 6)));
    }

    [Fact]
    public void A_bad_row_does_not_stop_a_batch()
    {
        (string Id, IReadOnlyList<Layer> Stack)[] rows =
        [
            ("wall", [Mm(12.7), Inch("5/8")]),
            ("no furring given", []),
            ("thickness lost and unit lost", [Mm(-3), new Length(1, (UnitsNet.Units.LengthUnit)999)]),
            ("ceiling", [Mm(9), Mm(18)]),
            ("no nail fits", [Mm(4), Mm(4)]),
        ];
        Dictionary<string, IReadOnlyList<Figure>> saved = [];
        Dictionary<string, IReadOnlyList<InputProblem>> refused = [];
        foreach (var row in rows)
        {
            var problems = FastenerLength.Check(row.Stack, Behind.Metal, FastenerSeries.Brad18);
            if (problems.Count == 0)
            {
                saved.Add(row.Id, FastenerLength.Choose(row.Stack, Behind.Metal, FastenerSeries.Brad18).Figures());
            }
            else
            {
                refused.Add(row.Id, problems);
            }
        }

        Assert.Equal(["wall", "ceiling", "no nail fits"], saved.Keys);
        Assert.Equal(["layers"], refused["no furring given"].Select(static problem => problem.Parameter));
        Assert.Equal(["layers[0].Thickness", "layers[1].Thickness"], refused["thickness lost and unit lost"].Select(static problem => problem.Parameter).Distinct());
        Assert.Equal(new Figure("clearance", 2.175, "mm"), saved["wall"].Single(static figure => figure.Name == "clearance"));
        Assert.Empty(saved["no nail fits"]); // a design, not an input: no figures of a choice, and the findings say why
        Assert.All(saved.Values.SelectMany(static figures => figures), static figure => Assert.True(double.IsFinite(figure.Value) && figure.Name.Length > 0));
    }
}
