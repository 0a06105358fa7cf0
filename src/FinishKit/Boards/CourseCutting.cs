using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>A piece of a course in whole nanometres.</summary>
internal readonly struct CourseCut(long u0, long u1, long v0, long v1AtFront, long v1AtRear, bool isBetweenEdges)
{
    internal long U0 { get; } = u0;

    internal long U1 { get; } = u1;

    internal long V0 { get; } = v0;

    internal long V1AtFront { get; } = v1AtFront;

    internal long V1AtRear { get; } = v1AtRear;

    internal bool IsBetweenEdges { get; } = isBetweenEdges;

    internal long Least => Math.Min(V1AtFront, V1AtRear) - V0;

    /// <summary>Whether a piece goes on where another ends: same lower edge, and upper edges that are both level or lie on one slope.</summary>
    internal bool GoesOnIn(in CourseCut next, long halfWay) => U1 == next.U0 && V0 == next.V0 && V1AtRear == next.V1AtFront && IsBetweenEdges == next.IsBetweenEdges
        && (V1AtFront == V1AtRear ? next.V1AtFront == next.V1AtRear : next.V1AtFront != next.V1AtRear && U1 != halfWay);

    internal CourseCut With(in CourseCut next) => new(U0, next.U1, V0, V1AtFront, next.V1AtRear, IsBetweenEdges);
}

/// <summary>Cuts a course to what is free of a band.</summary>
internal static class CourseCutting
{
    /// <summary>The pieces of a course, by front, then from below.</summary>
    internal static CoursePiece[] Pieces(CourseBandNumbers band, (long Lower, long Upper) course, long gap, long halfWay)
    {
        List<CourseCut> pieces = [];
        int column = 0;
        foreach (CourseColumn stretch in band.Columns)
        {
            int before = column;
            column = pieces.Count;
            foreach (CourseFree free in stretch.Free)
            {
                // No board goes where there is no more room than a gap.
                if (Math.Max(free.ToAtFront, free.ToAtRear) - free.From <= gap)
                {
                    continue;
                }

                foreach (CourseCut cut in Cuts(stretch, free, course.Lower, course.Upper))
                {
                    int goesOn = pieces.FindIndex(before, piece => piece.GoesOnIn(cut, halfWay));
                    if (goesOn < 0)
                    {
                        pieces.Add(cut);
                    }
                    else
                    {
                        // It moves to the pieces of this column, where the next column looks for it.
                        CourseCut whole = pieces[goesOn].With(cut);
                        pieces.RemoveAt(goesOn);
                        column -= goesOn < column ? 1 : 0;
                        pieces.Add(whole);
                    }
                }
            }
        }

        pieces.Sort(static (one, other) => one.U0 != other.U0 ? one.U0.CompareTo(other.U0) : one.V0.CompareTo(other.V0));
        return [.. pieces.ConvertAll(static cut => new CoursePiece(cut))];
    }

    /// <summary>One piece, or under a slope up to three: where the course begins under it, where it is cut by it, where it is whole.</summary>
    private static IEnumerable<CourseCut> Cuts(CourseColumn stretch, CourseFree free, long lower, long upper)
    {
        long from = Math.Max(free.From, lower);
        if (from >= upper || from >= Math.Max(free.ToAtFront, free.ToAtRear))
        {
            yield break;
        }

        long u = stretch.From, head = free.ToAtFront;
        foreach (long level in free.ToAtRear > free.ToAtFront ? new[] { from, upper, free.ToAtRear } : [upper, from, free.ToAtRear])
        {
            bool isEnd = level == free.ToAtRear;
            if (!isEnd && (level <= Math.Min(free.ToAtFront, free.ToAtRear) || level >= Math.Max(free.ToAtFront, free.ToAtRear)))
            {
                continue;
            }

            long to = isEnd ? stretch.To : stretch.From + (long)Math.Round((decimal)(level - free.ToAtFront) * (stretch.To - stretch.From) / (free.ToAtRear - free.ToAtFront));
            if (to > u && Math.Max(head, level) > from)
            {
                yield return new CourseCut(u, to, from, Math.Max(from, Math.Min(head, upper)), Math.Max(from, Math.Min(level, upper)), free.From >= lower && Math.Max(free.ToAtFront, free.ToAtRear) <= upper);
            }

            if (isEnd)
            {
                yield break;
            }

            (u, head) = (to, level);
        }
    }
}
