using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>What is free of a band between two edges, over a stretch along the van; its upper edge slopes where it is a tapering head.</summary>
internal readonly struct CourseFree(long from, long toAtFront, long toAtRear)
{
    internal long From { get; } = from;

    internal long ToAtFront { get; } = toAtFront;

    internal long ToAtRear { get; } = toAtRear;

    internal long To => Math.Min(ToAtFront, ToAtRear);

    /// <summary>By how much the upper edge rises from where it is lowest.</summary>
    internal long Taper => Math.Abs(ToAtFront - ToAtRear);
}

/// <summary>A stretch along the van over which the same openings lie.</summary>
internal sealed class CourseColumn(long from, long to, CourseFree[] free)
{
    internal long From { get; } = from;

    internal long To { get; } = to;

    /// <summary>From the foot up.</summary>
    internal CourseFree[] Free { get; } = free;
}

/// <summary>A band between two breaks that end a course, or foot or head, cut into columns.</summary>
internal sealed class CourseBandNumbers
{
    internal CourseBandNumbers(CourseNumbers face, long foot, long? breakAtHead)
    {
        Foot = foot;
        Head = breakAtHead ?? face.LeastGirth;
        MostHead = breakAtHead ?? face.MostGirth;
        MiddleHead = breakAtHead ?? face.Middle;
        bool tapers = breakAtHead is null && face.IsTapered;
        List<CourseOpening> openings = [];
        SortedSet<long> cuts = [0, face.Length];
        foreach (CourseOpening opening in face.Openings)
        {
            if (opening.V0 < MostHead && opening.V1 > Foot)
            {
                openings.Add(opening);
                cuts.Add(opening.U0);
                cuts.Add(opening.U1);
            }
        }

        if (tapers)
        {
            cuts.Add(face.HalfWay);
        }

        List<CourseColumn> columns = [];
        long? before = null;
        foreach (long cut in cuts)
        {
            if (before is { } from)
            {
                columns.Add(Column(from, cut, openings, breakAtHead ?? face.GirthAt(from), breakAtHead ?? face.GirthAt(cut)));
            }

            before = cut;
        }

        Columns = [.. columns];
    }

    internal long Foot { get; }

    /// <summary>Where the head is lowest.</summary>
    internal long Head { get; }

    /// <summary>Where the head is highest.</summary>
    internal long MostHead { get; }

    /// <summary>The head half way along.</summary>
    internal long MiddleHead { get; }

    internal CourseColumn[] Columns { get; }

    /// <summary>The openings come by their lower edges, and none lies over another.</summary>
    private CourseColumn Column(long from, long to, List<CourseOpening> openings, long headAtFront, long headAtRear)
    {
        List<CourseFree> free = [];
        long at = Foot;
        foreach (CourseOpening opening in openings)
        {
            if (opening.U0 <= from && opening.U1 >= to)
            {
                if (opening.V0 > at)
                {
                    free.Add(new CourseFree(at, opening.V0, opening.V0));
                }

                at = Math.Max(at, opening.V1);
            }
        }

        if (Math.Max(headAtFront, headAtRear) > at)
        {
            free.Add(new CourseFree(at, headAtFront, headAtRear));
        }

        return new CourseColumn(from, to, [.. free]);
    }
}
