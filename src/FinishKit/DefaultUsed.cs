using System;

namespace FinishKit;

/// <summary>A default that a result rests on because the caller gave nothing: the figure and what it rests on.</summary>
public sealed class DefaultUsed
{
    /// <summary>Makes one.</summary>
    /// <param name="figure">The default, named as the results' figures are.</param>
    /// <param name="source">What it rests on.</param>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public DefaultUsed(Figure figure, Source source)
    {
        Figure = figure;
        Source = source ?? throw new ArgumentNullException(nameof(source));
    }

    /// <summary>What the default is for, kebab case: the figure's name.</summary>
    public string Name => Figure.Name;

    /// <summary>The default with its unit.</summary>
    public Figure Figure { get; }

    /// <summary>What it rests on.</summary>
    public Source Source { get; }

    /// <summary>Figure and source on one line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Figure}  ({Source})";
}
