using System;

namespace FinishKit;

/// <summary>
/// One thing that makes an input impossible, as every <c>Check</c> method reports it: which parameter, what was given, what is
/// allowed. The calculating method throws the first of them as an exception.
/// </summary>
public sealed class InputProblem
{
    /// <summary>Makes a problem.</summary>
    /// <param name="parameter">The path of the parameter, for example <c>job.Layers[1].Thickness</c>.</param>
    /// <param name="value">What was given, with its unit; <c>null</c> as a word where nothing was.</param>
    /// <param name="allowed">What is allowed, as words.</param>
    /// <param name="isRange">Whether the value is of the right kind but outside its range.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public InputProblem(string parameter, string value, string allowed, bool isRange)
    {
        Parameter = parameter ?? throw new ArgumentNullException(nameof(parameter));
        Value = value ?? throw new ArgumentNullException(nameof(value));
        Allowed = allowed ?? throw new ArgumentNullException(nameof(allowed));
        IsRange = isRange;
    }

    /// <summary>The path of the parameter, for example <c>job.Layers[1].Thickness</c>.</summary>
    public string Parameter { get; }

    /// <summary>What was given, with its unit.</summary>
    public string Value { get; }

    /// <summary>What is allowed, as words.</summary>
    public string Allowed { get; }

    /// <summary>Whether the value is of the right kind but outside its range.</summary>
    public bool IsRange { get; }

    /// <summary>Whether nothing was given where something is needed.</summary>
    public bool IsMissing => Value == MissingValue;

    /// <summary>One sentence that names the parameter, the value and what is allowed.</summary>
    public string Message => $"{Parameter} is {Value}; allowed is {Allowed}.";

    internal const string MissingValue = "null";

    /// <summary>The exception that the calculating method throws for this problem.</summary>
    /// <returns>An <see cref="ArgumentNullException"/>, <see cref="ArgumentOutOfRangeException"/> or <see cref="ArgumentException"/> that names the parameter.</returns>
    public ArgumentException ToException() => this switch
    {
        { IsMissing: true } => new ArgumentNullException(Parameter, Message),
        { IsRange: true } => new ArgumentOutOfRangeException(Parameter, Message),
        _ => new ArgumentException(Message, Parameter),
    };

    /// <summary>The same as <see cref="Message"/>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Message;
}
