using System;
using System.Collections.Generic;
using System.Linq;

namespace FinishKit.Tests.Boards;

/// <summary>
/// A face without breaks that end a course, judged by the definition alone: lay every board at a set-out x, take the openings and what lies past foot and
/// head away, and look at what is left, column by column. Whole nanometres; a piece of one nanometre stands for one as narrow as you like, and
/// counts as nothing wide.
/// </summary>
internal sealed class CourseOracle
{
    private readonly long _cover, _gap;
    private readonly List<(long From, long Low, long High)> _stretches = [];
    private readonly SortedSet<long> _jumps = [];

    internal CourseOracle(CourseFace face)
    {
        (_cover, _gap) = (Nm(face.Board.Cover), Nm(face.Board.Gap));
        long length = Nm(face.FaceLength), middle = Nm(face.Girth);
        long front = face.GirthAtFront is { } atFront ? Nm(atFront) : middle, rear = face.GirthAtRear is { } atRear ? Nm(atRear) : middle;
        long[] cuts = [.. face.Openings.SelectMany(static opening => new[] { Nm(opening.FromU), Nm(opening.ToU) }).Concat([0, length / 2, length]).Distinct().Order()];
        for (int i = 0; i + 1 < cuts.Length; i++)
        {
            long at = 0;
            foreach (FaceOpening opening in face.Openings.Where(opening => Nm(opening.FromU) <= cuts[i] && cuts[i + 1] <= Nm(opening.ToU)).OrderBy(static opening => opening.FromV.Millimeters))
            {
                Add(at, Nm(opening.FromV), Nm(opening.FromV));
                at = Nm(opening.ToV);
            }

            (long left, long right) = (Head(cuts[i]), Head(cuts[i + 1]));
            Add(at, Math.Min(left, right), Math.Max(left, right));
        }

        long Head(long u)
        {
            decimal share = (decimal)u / length;
            return (long)Math.Round(share <= 0.5m ? front + ((middle - front) * 2 * share) : middle + ((rear - middle) * ((2 * share) - 1)));
        }

        void Add(long from, long low, long high)
        {
            if (high - from > _gap && !_stretches.Contains((from, low, high)))
            {
                _stretches.Add((from, low, high));
                foreach (long edge in new[] { from, low, high })
                {
                    _jumps.Add(Mod(edge));
                    _jumps.Add(Mod(edge + _gap));
                }
            }
        }
    }

    internal int Stretches => _stretches.Count;

    internal IEnumerable<(long From, long Low, long High)> All => _stretches;

    /// <summary>Offsets worth a look: where the worst of an error begins or ends, and half way between edges, where two pieces are equal.</summary>
    internal IEnumerable<long> Breakpoints(long error)
    {
        foreach (long jump in _jumps)
        {
            foreach (long beside in new[] { -1L, 0, 1 })
            {
                yield return Mod(jump + error + beside);
                yield return Mod(jump - error + beside);
                yield return Mod(jump + beside);
            }

            foreach (long other in _jumps)
            {
                yield return Mod((jump + other) / 2);
                yield return Mod((jump + other + _cover) / 2);
                yield return Mod((jump + other + 1) / 2);
                yield return Mod((jump + other + _cover + 1) / 2);
            }
        }
    }

    /// <summary>The narrowest piece, and the narrowest that does not fill all between two edges, over the whole error.</summary>
    internal (long Any, long Movable) Worst(long offset, long error)
    {
        (long any, long movable) = At(offset - error);
        Take(At(offset + error));
        foreach (long jump in _jumps)
        {
            // The places of this jump within the error, one cover apart.
            for (long place = offset - error - 1 + Mod(jump - (offset - error - 1)); place <= offset + error + 1; place += _cover)
            {
                for (long beside = place - 1; beside <= place + 1; beside++)
                {
                    if (beside >= offset - error && beside <= offset + error)
                    {
                        Take(At(beside));
                    }
                }
            }
        }

        return (any <= 1 ? 0 : any, movable <= 1 ? 0 : movable);

        void Take((long Any, long Movable) other) => (any, movable) = (Math.Min(any, other.Any), Math.Min(movable, other.Movable));
    }

    /// <summary>The same at one set-out.</summary>
    internal (long Any, long Movable) At(long setOut)
    {
        if (_stretches.Count == 0)
        {
            return (0, 0); // no piece, nothing to promise
        }

        long any = _cover - _gap, movable = any;
        foreach ((long from, long low, long high) in _stretches)
        {
            Lay(from, low, setOut, ref any, ref movable);
            if (low == high)
            {
                continue;
            }

            // A head that slopes stands at every height between: look at its ends, and where it passes a board's edge.
            Lay(from, high, setOut, ref any, ref movable);
            for (long edge = low + Mod(setOut - low); edge <= high + _cover; edge += _cover)
            {
                foreach (long height in new[] { edge - 1, edge, edge + 1, edge - _gap - 1, edge - _gap, edge - _gap + 1 })
                {
                    // Within a gap there is no board, so that only pieces over the gap count.
                    if (height > low && height < high)
                    {
                        Lay(from, height, setOut, ref any, ref movable);
                    }
                }
            }
        }

        return (any, movable);
    }

    internal static long Nm(UnitsNet.Length length) => (long)Math.Round(length.Millimeters * 1e6);

    private void Lay(long from, long to, long setOut, ref long any, ref long movable)
    {
        if (to - from < 1)
        {
            any = Math.Min(any, 0);
            return;
        }

        for (long board = from - _cover + Mod(setOut - from); board < to; board += _cover)
        {
            long bottom = Math.Max(board, from), top = Math.Min(board + _cover - _gap, to), width = top - bottom;
            if (width > 0)
            {
                any = Math.Min(any, width);
                movable = width == to - from ? movable : Math.Min(movable, width);
            }
        }
    }

    private long Mod(long value) => ((value % _cover) + _cover) % _cover;
}
