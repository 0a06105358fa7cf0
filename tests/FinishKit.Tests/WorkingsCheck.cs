using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text;
using NCalc;
using Xunit;

namespace FinishKit.Tests;

/// <summary>
/// Recomputes workings with another program's evaluator: every step's printed formula with the step's own inputs must give the
/// step's value. The formula is read here afresh, not by the library's own reader.
/// </summary>
internal static class WorkingsCheck
{
    /// <summary>Everything a printed formula may call, and what the evaluator calls it.</summary>
    private static readonly Dictionary<string, string> s_functions = new(StringComparer.Ordinal)
    {
        ["sqrt"] = "Sqrt",
        ["abs"] = "Abs",
        ["min"] = "Min",
        ["max"] = "Max",
        ["sin"] = "Sin",
        ["cos"] = "Cos",
        ["tan"] = "Tan",
        ["asin"] = "Asin",
        ["acos"] = "Acos",
        ["atan"] = "Atan",
        ["Phi"] = "Phi",
        ["ceilratio"] = "ceilratio",
    };

    /// <summary>Recomputes every step, to a relative 1e-9; at least one step must be computed rather than given.</summary>
    internal static void Recompute(Workings workings)
    {
        Dictionary<string, Figure> soFar = new(StringComparer.Ordinal);
        int computed = 0;
        foreach (WorkingStep step in workings.Steps)
        {
            foreach (Figure input in step.Inputs)
            {
                Assert.True(soFar.TryGetValue(input.Name, out Figure before) && before == input, $"{workings.Title}: {input} goes into '{step}' and is no earlier step's value.");
            }

            if (step.IsGiven)
            {
                Assert.Empty(step.Inputs);
            }
            else
            {
                double again = Evaluate(step.Formula, step.Inputs);
                Assert.True(Agree(step.Value.Value, again), FormattableString.Invariant($"{workings.Title}: '{step}' recomputes to {again:R}, not {step.Value.Value:R}."));
                computed++;
            }

            soFar[step.Value.Name] = step.Value;
        }

        Assert.True(computed > 0, workings.Title + " computes nothing.");
    }

    /// <summary>The value of a printed formula.</summary>
    internal static double Evaluate(string formula, IReadOnlyList<Figure> inputs)
    {
        Expression expression = new(Rewrite(formula), CultureInfo.InvariantCulture);
        expression.Parameters["pi"] = Math.PI;
        foreach (Figure input in inputs)
        {
            expression.Parameters[input.Name] = input.Value;
        }

        expression.Functions["Phi"] = arguments => NormalBelow(Number(arguments.Evaluate(0)));
        expression.Functions["ceilratio"] = arguments => CeilingOfRatio(Number(arguments.Evaluate(0)), Number(arguments.Evaluate(1)));
        return Number(expression.Evaluate(TestContext.Current.CancellationToken));
    }

    private static bool Agree(double printed, double again) =>
        Math.Abs(printed - again) <= (1e-9 * Math.Max(Math.Abs(printed), Math.Abs(again))) + 1e-12;

    private static double Number(object? value) => Convert.ToDouble(value, CultureInfo.InvariantCulture);

    /// <summary>A whole number within a billionth counts as that number: the rule on <c>ceilratio</c>, written a second time.</summary>
    private static double CeilingOfRatio(double amount, double unit)
    {
        double ratio = amount / unit;
        double above = Math.Ceiling(ratio);
        return ratio - (above - 1) <= 1e-9 * Math.Max(1, above - 1) ? above - 1 : above;
    }

    /// <summary>The normal distribution by its own series near the middle and a continued fraction outside (Abramowitz and Stegun 26.2.11, 26.2.14).</summary>
    private static double NormalBelow(double z)
    {
        double x = Math.Abs(z), density = Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI);
        if (x < 4)
        {
            double term = x, sum = x;
            for (int n = 3; term > 1e-17 * sum; n += 2)
            {
                term *= x * x / n;
                sum += term;
            }

            return z < 0 ? 0.5 - (density * sum) : 0.5 + (density * sum);
        }

        double fraction = x;
        for (int n = 200; n > 0; n--)
        {
            fraction = x + (n / fraction);
        }

        return z < 0 ? density / fraction : 1 - (density / fraction);
    }

    /// <summary>A printed formula in the evaluator's spelling: names in brackets, functions by its names, <c>a^b</c> as <c>Pow(a, b)</c>.</summary>
    private static string Rewrite(string formula)
    {
        int at = 0;
        string text = Pieces(formula, ref at);
        Assert.True(at == formula.Length, $"'{formula}' cannot be read at {at.ToString(CultureInfo.InvariantCulture)}.");
        return text;
    }

    /// <summary>Reads up to the closing bracket or the end: operands, joined where a power stands between two, and operators as they are.</summary>
    private static string Pieces(string formula, ref int at)
    {
        List<string> pieces = [];
        while (at < formula.Length && formula[at] != ')')
        {
            char c = formula[at];
            if (c == ' ')
            {
                at++;
            }
            else if (c == '^')
            {
                at++;
                Assert.NotEmpty(pieces);
                pieces[^1] = "Pow(" + pieces[^1] + ", " + Operand(formula, ref at) + ")";
            }
            else if ("+-*/,".Contains(c, StringComparison.Ordinal))
            {
                pieces.Add(c.ToString());
                at++;
            }
            else
            {
                pieces.Add(Operand(formula, ref at));
            }
        }

        return string.Join(' ', pieces);
    }

    private static string Operand(string formula, ref int at)
    {
        if (formula[at] == '(')
        {
            return Bracket(formula, ref at);
        }

        int start = at;
        bool number = char.IsDigit(formula[at]);
        while (at < formula.Length && (char.IsLetterOrDigit(formula[at]) || formula[at] is '_' or '.' || (number && formula[at] == '-' && formula[at - 1] is 'e' or 'E')))
        {
            at++;
        }

        string word = formula[start..at];
        Assert.True(word.Length > 0, $"'{formula}' cannot be read at {at.ToString(CultureInfo.InvariantCulture)}.");
        if (number)
        {
            // Never as whole numbers: they would be divided and overflow as such.
            return word.AsSpan().IndexOfAny('.', 'e', 'E') < 0 ? word + ".0" : word;
        }

        if (at < formula.Length && formula[at] == '(')
        {
            Assert.True(s_functions.TryGetValue(word, out string? function), $"'{formula}' calls '{word}'.");
            return function + Bracket(formula, ref at);
        }

        return "[" + word + "]";
    }

    private static string Bracket(string formula, ref int at)
    {
        at++;
        StringBuilder text = new("(");
        text.Append(Pieces(formula, ref at));
        Assert.True(at < formula.Length, $"'{formula}' lacks a bracket.");
        at++;
        return text.Append(')').ToString();
    }
}
