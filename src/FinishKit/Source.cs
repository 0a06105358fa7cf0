using System;
using System.Globalization;

namespace FinishKit;

/// <summary>What kind of thing a figure rests on.</summary>
public enum SourceKind
{
    /// <summary>A publication: standard, handbook, paper, table.</summary>
    Published = 0,

    /// <summary>Statics, geometry or arithmetic; the derivation is in <see cref="Source.Note"/>.</summary>
    Derived = 1,

    /// <summary>A rule of the trade without a published source.</summary>
    CommonPractice = 2,

    /// <summary>A stated default, chosen by judgement; override it where you know better.</summary>
    Judgement = 3,

    /// <summary>The caller's own figure.</summary>
    Supplied = 4,
}

/// <summary>How a published figure was read when it was entered.</summary>
public enum SourceReading
{
    /// <summary>Not a published figure.</summary>
    NotPublished = 0,

    /// <summary>Read in the publication itself.</summary>
    Original = 1,

    /// <summary>Read in a copy or in a work that quotes the publication; <see cref="Source.Note"/> names it.</summary>
    Copy = 2,

    /// <summary>From memory: the publication was not at hand. Check it before you rely on it.</summary>
    Memory = 3,
}

/// <summary>
/// What a figure rests on. Every default constant and every table row in the library has one; the list is on the sources page.
/// </summary>
public sealed class Source
{
    private Source(SourceKind kind, string id, string title, string? publisher, int? year, string? place, SourceReading reading, string? note)
    {
        Kind = kind;
        Id = id ?? throw new ArgumentNullException(nameof(id));
        Title = title ?? throw new ArgumentNullException(nameof(title));
        Publisher = publisher;
        Year = year;
        Place = place;
        Reading = reading;
        Note = note;
    }

    /// <summary>What kind of thing it is.</summary>
    public SourceKind Kind { get; }

    /// <summary>A short stable name, for example <c>NDS-2018</c>; the sources page lists it.</summary>
    public string Id { get; }

    /// <summary>Title of the publication, or the rule in words.</summary>
    public string Title { get; }

    /// <summary>Publisher, or null.</summary>
    public string? Publisher { get; }

    /// <summary>Year, or null.</summary>
    public int? Year { get; }

    /// <summary>Table, equation or page, or null.</summary>
    public string? Place { get; }

    /// <summary>How the publication was read when the figure was entered.</summary>
    public SourceReading Reading { get; }

    /// <summary>The derivation in a line, the copy that was read, or another remark; or null.</summary>
    public string? Note { get; }

    /// <summary>A figure from a publication.</summary>
    /// <param name="id">Short stable name.</param>
    /// <param name="title">Title.</param>
    /// <param name="publisher">Publisher.</param>
    /// <param name="year">Year, or null where unknown.</param>
    /// <param name="place">Table, equation or page.</param>
    /// <param name="reading">How it was read.</param>
    /// <param name="note">The copy that was read, or another remark.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> or <paramref name="title"/> is null.</exception>
    public static Source Published(string id, string title, string? publisher, int? year, string? place, SourceReading reading, string? note = null) =>
        new(SourceKind.Published, id, title, publisher, year, place, reading, note);

    /// <summary>A figure from statics, geometry or arithmetic.</summary>
    /// <param name="id">Short stable name.</param>
    /// <param name="title">What is derived.</param>
    /// <param name="derivation">The derivation in one line.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Source Derived(string id, string title, string derivation) =>
        new(SourceKind.Derived, id, title, null, null, null, SourceReading.NotPublished, derivation ?? throw new ArgumentNullException(nameof(derivation)));

    /// <summary>A rule of the trade without a published source.</summary>
    /// <param name="id">Short stable name.</param>
    /// <param name="rule">The rule in words.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Source CommonPractice(string id, string rule) =>
        new(SourceKind.CommonPractice, id, rule ?? throw new ArgumentNullException(nameof(rule)), null, null, null, SourceReading.NotPublished, null);

    /// <summary>A stated default, chosen by judgement.</summary>
    /// <param name="id">Short stable name.</param>
    /// <param name="reason">The default and why.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Source Judgement(string id, string reason) =>
        new(SourceKind.Judgement, id, reason ?? throw new ArgumentNullException(nameof(reason)), null, null, null, SourceReading.NotPublished, null);

    /// <summary>The caller's own figure.</summary>
    /// <param name="what">Where the caller has it from, in words.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="what"/> is null.</exception>
    public static Source Supplied(string what) =>
        new(SourceKind.Supplied, "supplied", what ?? throw new ArgumentNullException(nameof(what)), null, null, null, SourceReading.NotPublished, null);

    internal Source At(string? place, SourceReading reading) => new(Kind, Id, Title, Publisher, Year, place, reading, Note);

    /// <summary>One line: id, title, publisher, year, place, and how it was read.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        string basis = Kind switch
        {
            SourceKind.Published => Reading switch
            {
                SourceReading.Memory => "from memory",
                SourceReading.Copy => "read in a copy",
                _ => "published",
            },
            SourceKind.Derived => "derived",
            SourceKind.CommonPractice => "common practice, no published source",
            SourceKind.Judgement => "default, judgement",
            _ => "supplied by the caller",
        };
        string text = Title;
        if (Publisher is not null)
        {
            text += ", " + Publisher;
        }

        if (Year is { } year)
        {
            text += ", " + year.ToString(CultureInfo.InvariantCulture);
        }

        if (Place is not null)
        {
            text += ", " + Place;
        }

        if (Kind == SourceKind.Derived && Note is not null)
        {
            text += ": " + Note;
        }

        return $"{text} ({basis})";
    }
}
