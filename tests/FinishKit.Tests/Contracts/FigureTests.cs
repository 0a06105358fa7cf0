using System;
using System.Collections.Generic;
using System.Text.Json;
using Xunit;

namespace FinishKit.Tests.Contracts;

/// <summary>What a host stores of a result and reads back.</summary>
public sealed class FigureTests
{
    /// <summary>By members, as the serialiser of the platform does it without being told anything: no converter, no constructor named.</summary>
    [Fact]
    public void Figures_of_every_result_are_read_back_as_they_were_written()
    {
        int compared = 0;
        Assert.All(Samples.Results(), sample =>
        {
            Figure[] figures = [.. (IReadOnlyList<Figure>)sample.Result.GetType().GetMethod("Figures", [])!.Invoke(sample.Result, null)!];
            Assert.Equal(figures, JsonSerializer.Deserialize<Figure[]>(JsonSerializer.Serialize(figures)));
            compared += figures.Length;
        });
        Assert.True(compared > 1000, $"{compared} figures");
    }

    [Fact]
    public void Written_by_hand_it_reads_as_meant()
    {
        Assert.Equal(new Figure("length", 12.5, "mm"), JsonSerializer.Deserialize<Figure>("""{"Unit":"mm","Name":"length","Value":12.5}"""));
        Assert.Equal("""{"Name":"length","Value":12.5,"Unit":"mm"}""", JsonSerializer.Serialize(new Figure("length", 12.5, "mm")));
        Assert.Equal(new Figure("b", 1, "mm"), new Figure("a", 1, "mm") with { Name = "b" });
    }

    [Fact]
    public void Members_are_not_set_to_null()
    {
        Assert.Equal("Name", Assert.Throws<ArgumentNullException>(() => new Figure { Name = null! }).ParamName);
        Assert.Equal("Unit", Assert.Throws<ArgumentNullException>(() => new Figure { Unit = null! }).ParamName);
        Assert.Equal(string.Empty, default(Figure).Name);
    }
}
