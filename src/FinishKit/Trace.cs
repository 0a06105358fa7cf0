using System;
using System.Collections.Generic;
using System.Globalization;
using System.Runtime.CompilerServices;

namespace FinishKit;

/// <summary>
/// What a formula body is generic over: with <see cref="Silent"/> it is plain arithmetic (the calls vanish), with
/// <see cref="Recorder"/> the same body writes its workings. The formula that is printed is the source text of the argument
/// itself, so it cannot drift from the code.
/// </summary>
/// <remarks>
/// <c>name</c> is the local variable that receives the value: later formulas use it and are printed with its symbol.
/// A formula may use + - * /, parentheses, numbers, those locals, and the functions that <see cref="FormulaText"/> knows.
/// </remarks>
internal interface ITrace
{
    /// <summary>A value that was put in.</summary>
    void Given(string symbol, double value, string unit, Source source, int index = -1, string? meaning = null, [CallerArgumentExpression(nameof(value))] string name = "");

    /// <summary>A value that the formula computes. Returns it unchanged.</summary>
    double Step(string symbol, string name, double value, string unit, Source source, int index = -1, [CallerArgumentExpression(nameof(value))] string formula = "");
}

/// <summary>Records nothing and costs nothing.</summary>
internal readonly struct Silent : ITrace
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Given(string symbol, double value, string unit, Source source, int index, string? meaning, string name)
    {
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Step(string symbol, string name, double value, string unit, Source source, int index, string formula) => value;
}

/// <summary>Records every step.</summary>
internal readonly struct Recorder : ITrace
{
    private readonly List<WorkingStep> _steps;
    private readonly Dictionary<string, Figure> _known;

    public Recorder()
    {
        _steps = [];
        _known = new Dictionary<string, Figure>(StringComparer.Ordinal);
    }

    internal Workings ToWorkings(string title) => new(title, _steps);

    public void Given(string symbol, double value, string unit, Source source, int index, string? meaning, string name)
    {
        Figure figure = Record(symbol, index, name, value, unit);
        _steps.Add(new WorkingStep(meaning ?? Words(name), figure.Name, FormulaText.SymbolTex(figure.Name), [], figure, source));
    }

    public double Step(string symbol, string name, double value, string unit, Source source, int index, string formula)
    {
        FormulaText parsed = FormulaText.Parse(formula, _known);
        Figure figure = Record(symbol, index, name, value, unit);
        _steps.Add(new WorkingStep(Words(name), parsed.Text, parsed.Tex, parsed.Inputs, figure, source));
        return value;
    }

    private Figure Record(string symbol, int index, string name, double value, string unit)
    {
        Figure figure = new(index < 0 ? symbol : symbol + "_" + index.ToString(CultureInfo.InvariantCulture), value, unit);
        _known[name] = figure;
        return figure;
    }

    /// <summary><c>halfAngle</c> to <c>half angle</c>.</summary>
    private static string Words(string name)
    {
        System.Text.StringBuilder words = new();
        foreach (char c in name)
        {
            if (char.IsUpper(c))
            {
                words.Append(' ').Append(char.ToLowerInvariant(c));
            }
            else
            {
                words.Append(c);
            }
        }

        return words.ToString();
    }
}
