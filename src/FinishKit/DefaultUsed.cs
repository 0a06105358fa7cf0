using System;

namespace FinishKit;

/// <summary>A default that a result rests on because the caller gave no figure of their own.</summary>
public sealed class DefaultUsed
{
    /// <summary>Makes the record of a default.</summary>
    /// <param name="figure">The default's name, number and unit.</param>
    /// <param name="source">What it rests on.</param>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public DefaultUsed(Figure figure, Source source)
    {
        Figure = figure;
        Source = source ?? throw new ArgumentNullException(nameof(source));
    }

    /// <summary>The default's name, number and unit.</summary>
    public Figure Figure { get; }

    /// <summary>What it rests on.</summary>
    public Source Source { get; }

    /// <summary>The figure and its basis on one line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Figure} ({Source})";
}
