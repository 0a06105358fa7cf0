using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>
/// The offset of a band's joints that is best against every edge, exactly. In whole nanometres: the lower edges of the boards lie at
/// foot + offset + k times the cover; each board shows its face and ends one gap below the next.
/// </summary>
/// <remarks>
/// All boards over an edge behave as one: whether every piece is at least t wide depends on where the edge lies between two
/// joints, so for a given t each edge forbids an arc of offsets, and what is left begins at 0 or where an arc ends. The greatest t that
/// leaves anything is found by halving: thirty times for any face.
/// </remarks>
internal sealed class CourseOffset
{
    private readonly Span[] _spans;
    private readonly long _foot, _cover, _gap;

    /// <param name="band">The band.</param>
    /// <param name="cover">Joint to joint.</param>
    /// <param name="gap">The gap of a joint.</param>
    internal CourseOffset(CourseBandNumbers band, long cover, long gap)
        : this(Spans(band, gap, atEndsOnly: false), band.Foot, cover, gap)
    {
    }

    private CourseOffset(Span[] spans, long foot, long cover, long gap)
    {
        _spans = spans;
        _foot = foot;
        _cover = cover;
        _gap = gap;
    }

    /// <summary>Whether there is room for a board anywhere.</summary>
    internal bool HasPieces => _spans.Length > 0;

    private long Face => _cover - _gap;

    /// <summary>
    /// The best offset, 0 up to one cover. Where nothing can be promised under the error along the whole of a tapering head, its ends alone count;
    /// where that helps nothing either, the set-out is taken as exact.
    /// </summary>
    internal static long Best(CourseBandNumbers band, long cover, long gap, long error)
    {
        CourseOffset whole = new(band, cover, gap), ends = new(Spans(band, gap, atEndsOnly: true), band.Foot, cover, gap);
        return whole.Best(error) ?? ends.Best(error) ?? ends.Best(0) ?? 0;
    }

    /// <summary>The narrowest piece there may be while the set-out is off by up to the error either way; 0 where a joint may come to lie just beside an edge, and where there is no piece.</summary>
    internal long Narrowest(long offset, long error)
    {
        long narrowest = HasPieces ? Face : 0;
        foreach (Span span in _spans)
        {
            long fromBelow = Modulo(_foot + offset - error - span.From), fromAbove = Modulo(span.To + _gap - _foot - offset - error);
            narrowest = Math.Min(Math.Min(narrowest, span.Height), Math.Min(Piece(fromBelow, 2 * error), Piece(fromAbove, (2 * error) + span.Taper)));
        }

        return narrowest;
    }

    /// <summary>
    /// The same over those pieces that another offset would change: what is cut by edges on both sides is left out, and so is what a whole board
    /// that is set to foot or head on purpose might leave there.
    /// </summary>
    internal long NarrowestMovable(long offset, long error, long? setToFoot, long? setToHead) => Greatest(Face, width => IsGood(offset, width, error, setToFoot, setToHead));

    private static Span[] Spans(CourseBandNumbers band, long gap, bool atEndsOnly)
    {
        HashSet<(long, long, long)> seen = [];
        List<Span> spans = [];
        foreach (CourseColumn column in band.Columns)
        {
            foreach (CourseFree free in column.Free)
            {
                if (atEndsOnly)
                {
                    Add(free.From, free.ToAtFront, 0);
                    Add(free.From, free.ToAtRear, 0);
                }
                else
                {
                    Add(free.From, free.To, free.Taper);
                }
            }
        }

        return [.. spans];

        // No board goes where there is no more room than a gap.
        void Add(long from, long to, long taper)
        {
            if (to + taper - from > gap && seen.Add((from, to, taper)))
            {
                spans.Add(new Span(from, to, taper));
            }
        }
    }

    /// <summary>The greatest width for which something holds that holds for every narrower one; 0 where it holds for none.</summary>
    private static long Greatest(long most, Func<long, bool> holds)
    {
        long least = 0;
        while (least < most)
        {
            long middle = least + ((most - least + 1) / 2);
            if (holds(middle))
            {
                least = middle;
            }
            else
            {
                most = middle - 1;
            }
        }

        return least;
    }

    private long? Best(long error)
    {
        long width = Greatest(Face, wanted => First(wanted, error) is not null);
        return width == 0 ? null : First(width, error);
    }

    /// <summary>The smallest offset that leaves no movable piece under a width: 0, or where an arc of forbidden offsets ends.</summary>
    private long? First(long width, long error)
    {
        SortedSet<long> ends = [0];
        foreach (Span span in _spans)
        {
            ends.Add(Modulo(span.From + _gap + width + error - _foot));
            ends.Add(Modulo(span.To + span.Taper + error - _foot));
            ends.Add(Modulo(span.To + span.Taper + _gap + error - _foot));
        }

        foreach (long offset in ends)
        {
            if (IsGood(offset, width, error))
            {
                return offset;
            }
        }

        return null;
    }

    /// <summary>Whether every piece that is not cut by edges on both sides is at least so wide, wherever within the error the joints lie. What is narrower than that between its edges must stay in one piece.</summary>
    private bool IsGood(long offset, long width, long error, long? setToFoot = null, long? setToHead = null)
    {
        foreach (Span span in _spans)
        {
            long fromBelow = Modulo(_foot + offset - error - span.From);
            bool countsBelow = span.From != setToFoot, countsAbove = span.To + span.Taper != setToHead;
            if (span.Height < width && !(countsBelow && countsAbove))
            {
                continue; // one piece, set to its edge
            }

            if (span.Height < width)
            {
                long next = fromBelow == 0 ? _cover : fromBelow;
                if (next < span.Height + span.Taper + _gap || next + (2 * error) > _cover)
                {
                    return false;
                }
            }
            else if ((countsBelow && Piece(fromBelow, 2 * error) < width) || (countsAbove && Piece(Modulo(span.To + _gap - _foot - offset - error), (2 * error) + span.Taper) < width))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>
    /// The narrowest piece between an edge and the joint on its other side, while that joint lies so far away, with the gap, or up to a
    /// range further. Within the gap there is no piece, and a whole board beyond.
    /// </summary>
    private long Piece(long away, long range) => away <= _gap
        ? (away + range <= _gap ? Face : 0)
        : (away + range <= _cover + _gap ? away - _gap : 0);

    private long Modulo(long value)
    {
        long rest = value % _cover;
        return rest < 0 ? rest + _cover : rest;
    }

    private readonly struct Span(long from, long to, long taper)
    {
        internal long From { get; } = from;

        internal long To { get; } = to;

        internal long Taper { get; } = taper;

        internal long Height => Math.Max(0, To - From);
    }
}
