using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>An edge as it is sawn: in every course the chord, and above the last course that has a line there straight on.</summary>
internal sealed class CourseEdge
{
    private readonly EndCut[] _cuts;

    internal CourseEdge(EndCutSchedule ends)
    {
        _cuts = new EndCut[ends.Courses.Count];
        foreach (EndCut cut in ends.Courses)
        {
            _cuts[cut.Course - 1] = cut;
        }

        IsAtRear = ends.IsEdgeAtRear;
    }

    internal bool IsAtRear { get; }

    internal EndCut Cut(int course) => _cuts[Math.Min(course, _cuts.Length) - 1];

    /// <summary>How far a point lies on the boards' side of the cut, in millimetres along the course.</summary>
    internal double Inside(int course, (double U, double V) point)
    {
        EndCut cut = Cut(course);
        double lower = Door.Millimetres(cut.LowerLine), from = Door.Millimetres(cut.OffsetAtLowerLine);
        double at = from + ((point.V - lower) * (Door.Millimetres(cut.OffsetAtUpperLine) - from) / (Door.Millimetres(cut.UpperLine) - lower));
        return IsAtRear ? at - point.U : point.U - at;
    }
}

/// <summary>What the edges leave of a piece.</summary>
internal sealed class RunPiece(CourseCut cut, (long Start, long End) left, (bool AtFront, bool AtRear) loses)
{
    internal CourseCut Cut { get; } = cut;

    internal long Start { get; } = left.Start;

    internal long End { get; } = left.End;

    /// <summary>Whether the edge at that end takes something of it.</summary>
    internal bool LosesAtFront { get; } = loses.AtFront;

    internal bool LosesAtRear { get; } = loses.AtRear;
}

/// <summary>A run on the way: from where to where, and the pieces that it is made of.</summary>
internal sealed class RunStretch(List<RunPiece> pieces)
{
    internal List<RunPiece> Pieces { get; } = pieces;

    internal long Start { get; set; }

    internal long End { get; set; }
}

/// <summary>Where along the van each course is boarded without a break, between openings, edges and the head.</summary>
internal sealed class CourseRuns(CoursePlan plan, CourseNumbers numbers, CourseEdge? front, CourseEdge? rear)
{
    /// <summary>Half a nanometre: less is rounding.</summary>
    private const double Noise = 5e-7;

    /// <summary>The runs of all courses, from the foot up, then from the front.</summary>
    internal List<JointRun> All()
    {
        List<JointRun> runs = [];
        for (int course = 1; course <= plan.Courses.Count; course++)
        {
            List<RunStretch> stretches = Stretches(course);
            for (int k = 0; k < stretches.Count; k++)
            {
                // A to Z, then AA to ZZ.
                string letter = stretches.Count > 1 ? new string((char)('A' + (k % 26)), 1 + (k / 26)) : string.Empty;
                RunStretch stretch = stretches[k];
                runs.Add(new JointRun(course, Door.Millimetres(Grid.Millimetres(stretch.Start)), Door.Millimetres(Grid.Millimetres(stretch.End)))
                {
                    Name = Print.Number(course) + letter,
                    StartsAt = EndOf(stretch, course, isRear: false),
                    EndsAt = EndOf(stretch, course, isRear: true),
                });
            }
        }

        return runs;
    }

    /// <summary>Pieces that touch along an edge are one board, notched or not. Boards that lie one above the other over the same stretch are one run.</summary>
    private List<RunStretch> Stretches(int course)
    {
        List<RunPiece> pieces = [];
        foreach (CoursePiece piece in plan.Courses[course - 1].Pieces)
        {
            if (Left(piece.Cut, course) is { } left)
            {
                pieces.Add(left);
            }
        }

        // Which pieces are one board: those that have a number in common.
        int[] board = new int[pieces.Count];
        for (int i = 0; i < board.Length; i++)
        {
            board[i] = i;
            for (int k = 0; k < i; k++)
            {
                if (board[k] != board[i] && (IsJoined(pieces[k].Cut, pieces[i].Cut, course) || IsJoined(pieces[i].Cut, pieces[k].Cut, course)))
                {
                    (int from, int to) = (board[i], board[k]);
                    for (int j = 0; j <= i; j++)
                    {
                        board[j] = board[j] == from ? to : board[j];
                    }
                }
            }
        }

        SortedDictionary<int, RunStretch> boards = [];
        for (int i = 0; i < board.Length; i++)
        {
            if (!boards.TryGetValue(board[i], out RunStretch? own))
            {
                boards[board[i]] = own = new RunStretch([]) { Start = long.MaxValue, End = long.MinValue };
            }

            own.Pieces.Add(pieces[i]);
            own.Start = Math.Min(own.Start, pieces[i].Start);
            own.End = Math.Max(own.End, pieces[i].End);
        }

        List<RunStretch> all = [.. boards.Values], stretches = [];
        all.Sort(static (one, other) => one.Start != other.Start ? one.Start.CompareTo(other.Start) : one.End.CompareTo(other.End));
        foreach (RunStretch stretch in all)
        {
            if (stretches.Count > 0 && stretches[stretches.Count - 1] is { } last && stretch.Start < last.End)
            {
                last.Pieces.AddRange(stretch.Pieces);
                last.End = Math.Max(last.End, stretch.End);
            }
            else
            {
                stretches.Add(stretch);
            }
        }

        return stretches;
    }

    /// <summary>What the edges leave of a piece; null for nothing.</summary>
    private RunPiece? Left(CourseCut cut, int course)
    {
        (double u0, double u1, double v0) = (Grid.Millimetres(cut.U0), Grid.Millimetres(cut.U1), Grid.Millimetres(cut.V0));
        List<(double U, double V)> shape = [(u0, v0), (u1, v0), (u1, Top(cut, course, isRear: true)), (u0, Top(cut, course, isRear: false))];
        bool losesAtFront = front is not null && Clip(ref shape, front, course), losesAtRear = rear is not null && Clip(ref shape, rear, course);
        double start = double.PositiveInfinity, end = double.NegativeInfinity;
        foreach ((double u, _) in shape)
        {
            start = Math.Min(start, u);
            end = Math.Max(end, u);
        }

        return start < end && Grid.Nanometres(start) < Grid.Nanometres(end) ? new RunPiece(cut, (Grid.Nanometres(start), Grid.Nanometres(end)), (losesAtFront, losesAtRear)) : null;
    }

    /// <summary>
    /// The upper edge of a piece at one of its ends. Courses touch for an end cut, so that a whole board goes on over the gap to the line above, or to the head.
    /// </summary>
    private double Top(CourseCut cut, int course, bool isRear)
    {
        long upper = plan.Courses[course - 1].Upper, top = isRear ? cut.V1AtRear : cut.V1AtFront;
        if (cut.V1AtFront == upper && cut.V1AtRear == upper)
        {
            (long line, long head) = (course < plan.Courses.Count ? plan.Courses[course].Lower : numbers.MostGirth, isRear ? numbers.Rear : numbers.Front);
            top = head < upper ? line : Math.Min(line, head);
        }

        return Grid.Millimetres(top);
    }

    /// <summary>Leaves of a convex shape what is on the boards' side of an edge; whether that takes anything of it.</summary>
    private static bool Clip(ref List<(double U, double V)> shape, CourseEdge edge, int course)
    {
        List<(double U, double V)> left = [];
        bool loses = false;
        for (int i = 0; i < shape.Count; i++)
        {
            (double U, double V) from = shape[i], to = shape[(i + 1) % shape.Count];
            double one = edge.Inside(course, from), other = edge.Inside(course, to);
            loses |= one < -Noise;
            if (one >= 0)
            {
                left.Add(from);
            }

            if ((one < 0 && other > 0) || (one > 0 && other < 0))
            {
                double share = one / (one - other);
                left.Add((from.U + (share * (to.U - from.U)), from.V + (share * (to.V - from.V))));
            }
        }

        shape = left;
        return loses;
    }

    /// <summary>Whether the one ends where the other starts, at heights that they have in common and that the edges leave.</summary>
    private bool IsJoined(CourseCut one, CourseCut next, int course)
    {
        long low = Math.Max(one.V0, next.V0), high = Math.Min(one.V1AtRear, next.V1AtFront);
        if (one.U1 != next.U0 || high <= low)
        {
            return false;
        }

        double u = Grid.Millimetres(one.U1);
        List<(double U, double V)> shared = [(u, Grid.Millimetres(low)), (u, Grid.Millimetres(high))];
        foreach (CourseEdge? edge in new[] { front, rear })
        {
            if (edge is not null)
            {
                Clip(ref shared, edge, course);
            }
        }

        double least = double.PositiveInfinity, most = double.NegativeInfinity;
        foreach ((_, double v) in shared)
        {
            least = Math.Min(least, v);
            most = Math.Max(most, v);
        }

        return most - least > Noise;
    }

    private RunEnd EndOf(RunStretch stretch, int course, bool isRear)
    {
        CourseEdge? edge = isRear ? rear : front;
        RunEndKind kind = RunEndKind.Head;
        bool loses = false;
        foreach (RunPiece piece in stretch.Pieces)
        {
            loses |= isRear ? piece.LosesAtRear : piece.LosesAtFront;
            if (kind != RunEndKind.Edge && (isRear ? piece.End == stretch.End : piece.Start == stretch.Start))
            {
                RunEndKind own = KindOf(piece, edge, course, isRear);
                kind = own == RunEndKind.Head ? kind : own;
            }
        }

        return new RunEnd(kind, edge is not null && (loses || kind == RunEndKind.Edge) ? edge.Cut(course) : null);
    }

    private RunEndKind KindOf(RunPiece piece, CourseEdge? edge, int course, bool isRear)
    {
        CourseCut cut = piece.Cut;
        long own = isRear ? cut.U1 : cut.U0, end = isRear ? piece.End : piece.Start, top = isRear ? cut.V1AtRear : cut.V1AtFront;
        double u = Grid.Millimetres(end);
        if (end != own || (edge is not null && edge.Inside(course, (u, Grid.Millimetres(cut.V0))) <= Noise && edge.Inside(course, (u, Top(cut, course, isRear))) <= Noise))
        {
            return RunEndKind.Edge;
        }

        if (top == cut.V0)
        {
            return RunEndKind.Head;
        }

        return end == (isRear ? numbers.Length : 0) ? RunEndKind.Face
            : Array.Exists(numbers.Openings, opening => (isRear ? opening.U0 : opening.U1) == end && opening.V0 < top && opening.V1 > cut.V0) ? RunEndKind.Opening
            : RunEndKind.Head;
    }
}
