using System;
using System.Collections.Generic;
using System.Text;

namespace FinishKit;

/// <summary>One step of a calculation: a formula, the numbers put in, the value that comes out, and what the formula rests on.</summary>
public sealed class WorkingStep
{
    /// <summary>Makes a step.</summary>
    /// <param name="meaning">What the value is, in words.</param>
    /// <param name="formula">The formula in plain text with the step's symbols; equal to the symbol itself where the value was given.</param>
    /// <param name="formulaTex">The same formula in TeX.</param>
    /// <param name="inputs">The numbers put in, named by symbol.</param>
    /// <param name="value">The value that comes out, named by symbol.</param>
    /// <param name="source">What the formula, or the given value, rests on.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="formula"/> cannot be read: then its numbers could not be put in.</exception>
    public WorkingStep(string meaning, string formula, string formulaTex, IReadOnlyList<Figure> inputs, Figure value, Source source)
    {
        Meaning = meaning ?? throw new ArgumentNullException(nameof(meaning));
        Formula = formula ?? throw new ArgumentNullException(nameof(formula));
        FormulaTex = formulaTex ?? throw new ArgumentNullException(nameof(formulaTex));
        Inputs = inputs ?? throw new ArgumentNullException(nameof(inputs));
        Value = value;
        Source = source ?? throw new ArgumentNullException(nameof(source));
        if (!IsGiven && !FormulaText.IsReadable(formula))
        {
            throw new InputProblem(nameof(formula), "no formula that can be read", "numbers and symbols with + - * / ^, brackets and functions, up to 1000 characters", isRange: false).ToException();
        }
    }

    /// <summary>What the value is, in words.</summary>
    public string Meaning { get; }

    /// <summary>The formula in plain text; equal to the symbol itself where the value was given.</summary>
    public string Formula { get; }

    /// <summary>The formula in TeX.</summary>
    public string FormulaTex { get; }

    /// <summary>The numbers put in, named by symbol. Empty where the value was given.</summary>
    public IReadOnlyList<Figure> Inputs { get; }

    /// <summary>The value that comes out, named by symbol.</summary>
    public Figure Value { get; }

    /// <summary>What the formula, or the given value, rests on.</summary>
    public Source Source { get; }

    /// <summary>Whether the value was put in rather than computed.</summary>
    public bool IsGiven => Formula == Value.Name;

    /// <summary>The step on one line: symbol, formula, numbers, value, meaning, the source's id.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string value = Print.Number(Value.Value) + (Value.Unit.Length == 0 ? string.Empty : " " + Value.Unit);
        return IsGiven
            ? $"{Value.Name} = {value}  ({Meaning}) [{Source.Id}]"
            : $"{Value.Name} = {Formula} = {FormulaText.PutIn(Formula, Inputs)} = {value}  ({Meaning}) [{Source.Id}]";
    }
}

/// <summary>How an engineering result came about: the ordered steps, as text and as Markdown with TeX.</summary>
public sealed class Workings
{
    /// <summary>Makes workings.</summary>
    /// <param name="title">What was computed.</param>
    /// <param name="steps">The steps in order.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public Workings(string title, IReadOnlyList<WorkingStep> steps)
    {
        Title = title ?? throw new ArgumentNullException(nameof(title));
        Steps = steps ?? throw new ArgumentNullException(nameof(steps));
    }

    /// <summary>What was computed.</summary>
    public string Title { get; }

    /// <summary>The steps in order.</summary>
    public IReadOnlyList<WorkingStep> Steps { get; }

    /// <summary>The sources of the steps, each once, in order of first use.</summary>
    /// <returns>The sources.</returns>
    public IReadOnlyList<Source> Sources()
    {
        List<Source> sources = [];
        foreach (WorkingStep step in Steps)
        {
            if (!sources.Exists(source => source.ToString() == step.Source.ToString()))
            {
                sources.Add(step.Source);
            }
        }

        return sources;
    }

    /// <summary>Plain text, a line a step; then the sources.</summary>
    /// <returns>The text; lines end with a line feed.</returns>
    public string ToText()
    {
        StringBuilder text = new StringBuilder(Title).Append('\n');
        foreach (WorkingStep step in Steps)
        {
            text.Append("  ").Append(step).Append('\n');
        }

        text.Append("  Sources:\n");
        foreach (Source source in Sources())
        {
            text.Append("    ").Append(source.Id).Append(": ").Append(source).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Markdown with TeX formulas between dollar signs.</summary>
    /// <returns>The text; lines end with a line feed.</returns>
    public string ToMarkdown()
    {
        StringBuilder text = new StringBuilder("### ").Append(Title).Append("\n\n");
        foreach (WorkingStep step in Steps)
        {
            text.Append("- ").Append(step.Meaning).Append(": $").Append(FormulaText.SymbolTex(step.Value.Name));
            if (!step.IsGiven)
            {
                text.Append(" = ").Append(step.FormulaTex).Append(" = ").Append(FormulaText.PutInTex(step.Formula, step.Inputs));
            }

            text.Append(" = ").Append(FormulaText.NumberTex(step.Value.Value));
            if (step.Value.Unit.Length > 0)
            {
                text.Append("\\ \\mathrm{").Append(FormulaText.UnitTex(step.Value.Unit)).Append('}');
            }

            text.Append("$ [").Append(step.Source.Id).Append("]\n");
        }

        text.Append("\nSources:\n\n");
        foreach (Source source in Sources())
        {
            text.Append("- ").Append(source.Id).Append(": ").Append(source).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>The same as <see cref="ToText"/>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => ToText();
}
