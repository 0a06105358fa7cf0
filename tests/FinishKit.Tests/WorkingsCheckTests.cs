using Xunit;
using Xunit.Sdk;

namespace FinishKit.Tests;

/// <summary>The check on workings must be able to fail, and must read formulas as people do.</summary>
public sealed class WorkingsCheckTests
{
    private static readonly Source s_source = Source.Derived("test", "test", "test");

    [Theory]
    [InlineData("1 / 2 + 3", 3.5)]
    [InlineData("2 * 3^2", 18)]
    [InlineData("-3^2", -9)]
    [InlineData("4^(-0.5)", 0.5)]
    [InlineData("(1 + 2)^2 / 3", 3)]
    [InlineData("20e-6 * 350^2", 2.45)]
    [InlineData("min(1, max(2, 3)) + abs(-2)", 3)]
    [InlineData("sqrt(16) + sin(0) + tan(0)", 4)]
    [InlineData("cos(pi) + asin(1) - acos(0) + 4 * atan(1) - pi", -1)]
    [InlineData("ceilratio(10, 5)", 2)]
    [InlineData("ceilratio(10.1, 5)", 3)]
    [InlineData("ceilratio(0.30000000000000004, 0.1)", 3)]
    [InlineData("Phi(0)", 0.5)]
    public void A_formula_has_the_value_a_person_gives_it(string formula, double expected) =>
        Assert.Equal(expected, WorkingsCheck.Evaluate(formula, []), 1e-12);

    [Theory]
    [InlineData("Phi(1)", 0.841344746068543)] // Abramowitz and Stegun table 26.1, from memory
    [InlineData("Phi(-3)", 0.00134989803163009)]
    [InlineData("Phi(5) - 1 + Phi(-5)", 0)]
    public void The_normal_distribution_is_the_tabled_one(string formula, double expected) =>
        Assert.Equal(expected, WorkingsCheck.Evaluate(formula, []), 1e-14);

    [Fact]
    public void Symbols_are_the_inputs() =>
        Assert.Equal(7, WorkingsCheck.Evaluate("a_1 + a_2 * in", [new("a_1", 1, "mm"), new("a_2", 2, "mm"), new("in", 3, string.Empty)]));

    [Fact]
    public void A_wrong_value_fails() =>
        Assert.Throws<TrueException>(() => WorkingsCheck.Recompute(Of(Given("a", 2), Step("b", "a * 2", 4.00001, new Figure("a", 2, "mm")))));

    [Fact]
    public void An_input_that_no_step_gave_fails() =>
        Assert.Throws<TrueException>(() => WorkingsCheck.Recompute(Of(Given("a", 2), Step("b", "a * 2", 6, new Figure("a", 3, "mm")))));

    [Fact]
    public void Workings_that_compute_nothing_fail() =>
        Assert.Throws<TrueException>(() => WorkingsCheck.Recompute(Of(Given("a", 2))));

    [Fact]
    public void A_right_value_passes() =>
        WorkingsCheck.Recompute(Of(Given("a", 2), Step("b", "a * 2", 4, new Figure("a", 2, "mm"))));

    private static Workings Of(params WorkingStep[] steps) => new("test", steps);

    private static WorkingStep Given(string name, double value) => new(name, name, name, [], new Figure(name, value, "mm"), s_source);

    private static WorkingStep Step(string name, string formula, double value, params Figure[] inputs) => new(name, formula, formula, inputs, new Figure(name, value, "mm"), s_source);
}
