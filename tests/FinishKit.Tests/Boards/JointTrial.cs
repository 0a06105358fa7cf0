using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static FinishKit.Measure;

namespace FinishKit.Tests.Boards;

/// <summary>Random jobs of jointing, and an independent answer to small ones: every set of strips for every run, every plan for every set of pieces.</summary>
internal static class JointTrial
{
    internal static long Nm(Length length) => (long)Math.Round(length.Millimeters * 1e6);

    /// <summary>A few courses over a few strips, on whole millimetres so small that cutting is a puzzle; some with an opening, two kinds of boards, few boards or offcuts.</summary>
    internal static JointJob Small(Random random)
    {
        int courses = random.Next(1, 4), length = random.Next(60, 131), at = random.Next(-20, 21);
        List<JointRun> runs = [];
        for (int c = 0; c < courses; c++)
        {
            int end = at + length - random.Next(0, 8);
            int number = c + (random.Next(8) == 0 ? 10 : 0);
            if (random.Next(4) == 0)
            {
                int gap = random.Next(at + 15, end - 15);
                runs.Add(new JointRun(number, Mm(at), Mm(gap)));
                runs.Add(new JointRun(number, Mm(Math.Min(end - 2, gap + random.Next(0, 10))), Mm(end)));
            }
            else
            {
                runs.Add(new JointRun(number, Mm(at), Mm(end)));
            }
        }

        List<Length> strips = [];
        for (int place = at + random.Next(1, 18); place < at + length + 5; place += random.Next(14, 34))
        {
            strips.Add(Mm(place));
        }

        // Boards enough of a kind, or of all kinds a few, so that some jobs cannot be cut at all and others in a few ways only.
        bool areFew = random.Next(4) == 0;
        List<StockBoard> stock = [new StockBoard(Mm(random.Next(40, 75)), random.Next(3, 12)) { Available = areFew ? random.Next(1, 6) : null }];
        if (random.Next(2) == 0)
        {
            stock.Add(new StockBoard(Mm(random.Next(30, 140)), random.Next(3, 16)) { Available = areFew || random.Next(3) == 0 ? random.Next(0, 4) : null, Pack = random.Next(4) == 0 ? 2 : 1 });
        }

        return new JointJob(runs, strips, stock)
        {
            Offcuts = random.Next(4) == 0 ? [new BoardOffcut(Mm(random.Next(20, 60))) { Count = random.Next(1, 3) }] : null,
            Stagger = random.Next(0, 4),
            ShortestPiece = Mm(random.Next(5, 21)),
            Kerf = Mm(random.Next(0, 3)),
            EndTrim = Mm(random.Next(0, 3)),
            LeastOffcut = Mm(10),
            Effort = 2_000_000,
        };
    }

    /// <summary>One course that can be divided in thousands of ways, beside it perhaps a short one: more ways than are looked at, not more than an oracle can try.</summary>
    internal static JointJob Many(Random random)
    {
        int count = random.Next(12, 14);
        List<Length> strips = [];
        int place = 0;
        for (int i = 0; i < count; i++)
        {
            strips.Add(Mm(place += random.Next(5, 10)));
        }

        int end = place + random.Next(5, 10);
        List<JointRun> runs = [new JointRun(1, Mm(0), Mm(end))];
        if (random.Next(2) == 0)
        {
            runs.Add(new JointRun(2, Mm(0), Mm(random.Next(15, 22))));
        }

        List<StockBoard> stock = [new StockBoard(Mm(random.Next(25, 60)), random.Next(3, 12)), new StockBoard(Mm(random.Next(10, 40)), random.Next(2, 9))];
        return new JointJob(runs, strips, stock)
        {
            Stagger = random.Next(0, 3),
            ShortestPiece = Mm(random.Next(3, 6)),
            Kerf = Mm(random.Next(0, 3)),
            EndTrim = Mm(0),
            LeastOffcut = Mm(10),
            Effort = 400_000,
        };
    }

    /// <summary>A van-like wall: courses of one length with a rear edge that tapers, strips at about half a metre.</summary>
    internal static JointJob Wall(Random random)
    {
        int courses = random.Next(4, 14), length = random.Next(2600, 4300), taper = random.Next(0, 30), gap = random.Next(0, courses);
        List<JointRun> runs = [];
        for (int c = 0; c < courses; c++)
        {
            int end = length - (c * taper);
            if (Math.Abs(c - gap) < 2 && random.Next(2) == 0)
            {
                runs.Add(new JointRun(c, Mm(0), Mm(700)));
                runs.Add(new JointRun(c, Mm(1500), Mm(end)));
            }
            else
            {
                runs.Add(new JointRun(c, Mm(0), Mm(end)));
            }
        }

        List<Length> strips = [];
        for (int place = 20; place < length; place += random.Next(300, 480))
        {
            strips.Add(Mm(place));
        }

        StockBoard[] stock = random.Next(2) == 0 ? [new StockBoard(Mm(2438), 9.80m)] : [new StockBoard(Mm(1829), 7.40m), new StockBoard(Mm(2438), 9.80m), new StockBoard(Mm(3048), 13.60m)];
        return new JointJob(runs, strips, stock);
    }

    /// <summary>
    /// The least cost over all choices that the job allows, by its own words alone; null where some pieces cannot be cut whatever is chosen;
    /// <paramref name="isAllowed"/> is false where no choice keeps the rules.
    /// </summary>
    internal static decimal? BruteForce(JointJob job, out bool isAllowed, out int choices)
    {
        long trim = Nm(job.EndTrim ?? Mm(15)), kerf = Nm(job.Kerf ?? Mm(2.8)), shortest = Nm(job.ShortestPiece ?? Mm(600));
        int stagger = job.Stagger ?? 2;
        List<Kind> kinds = [.. job.Stock.Select(board => new Kind(Nm(board.Length) - (2 * trim), board.Price, board.Pack, (board.Available ?? 100_000) / board.Pack * board.Pack))];
        kinds.AddRange((job.Offcuts ?? []).Select(static offcut => new Kind(Nm(offcut.Length), 0, 1, offcut.Count)));
        kinds.RemoveAll(static kind => kind.Available == 0);
        isAllowed = false;
        choices = 0;
        if (kinds.Count == 0)
        {
            return null;
        }

        long longest = kinds.Max(static kind => kind.Usable);
        int runCount = job.Runs.Count;
        long[] strips = [.. job.Strips.Select(Nm)];
        List<List<int[]>> ways = [.. job.Runs.Select(run => WaysOf(run, strips, longest, shortest))];

        // Every set of pieces once: what was not cheaper then is not cheaper now.
        HashSet<string> known = new(StringComparer.Ordinal);
        decimal? best = null;
        int[][] chosen = new int[runCount][];
        int tried = 0;
        Choose(0);
        isAllowed = tried > 0;
        choices = tried;
        return best;

        void Choose(int run)
        {
            if (run == runCount)
            {
                tried++;
                long[] pieces = [.. Enumerable.Range(0, runCount).SelectMany(i => Pieces(job.Runs[i], chosen[i], strips)).OrderDescending()];
                if (known.Add(string.Join(' ', pieces)))
                {
                    best = Cheaper(pieces, kinds, kerf, best);
                }

                return;
            }

            foreach (int[] way in ways[run])
            {
                bool isFar = true;
                for (int other = 0; other < run && isFar; other++)
                {
                    isFar = Math.Abs(job.Runs[other].Course - job.Runs[run].Course) != 1 || way.All(one => chosen[other].All(two => Math.Abs(one - two) >= stagger));
                }

                if (isFar)
                {
                    chosen[run] = way;
                    Choose(run + 1);
                }
            }
        }
    }

    internal static IEnumerable<long> Pieces(JointRun run, IEnumerable<int> joints, long[] strips)
    {
        long from = Nm(run.Start);
        foreach (int strip in joints)
        {
            yield return strips[strip] - from;
            from = strips[strip];
        }

        yield return Nm(run.End) - from;
    }

    /// <summary>Whole where a board is that long; or up to nine joints on strips within the run, no piece shorter than the shortest nor longer than the longest board.</summary>
    private static List<int[]> WaysOf(JointRun run, long[] strips, long longest, long shortest)
    {
        List<int[]> all = [];
        for (int set = 0; set < 1 << strips.Length; set++)
        {
            int[] joints = [.. Enumerable.Range(0, strips.Length).Where(i => (set >> i & 1) != 0)];
            long[] pieces = [.. Pieces(run, joints, strips)];
            if (joints.Length <= 9 && pieces.All(piece => piece > 0 && piece <= longest) && (joints.Length == 0 || pieces.All(piece => piece >= shortest)))
            {
                all.Add(joints);
            }
        }

        return all;
    }

    /// <summary>
    /// The least cost where it is less than what is known already. Piece by piece, the longest first: into every board begun that differs, or a
    /// new one of each kind. Given up where what lies before must cost as much as is known: no board gives length for less than its price by its length.
    /// </summary>
    private static decimal? Cheaper(long[] pieces, List<Kind> kinds, long kerf, decimal? best)
    {
        List<(int Kind, long Room)> boards = [];
        int[] used = new int[kinds.Count];
        decimal rate = kinds.Where(static kind => kind.Price > 0).Min(kind => kind.Price / (kind.Pack * (kind.Usable + kerf)));
        Lay(0, pieces.Sum(piece => piece + kerf));
        return best;

        decimal Cost() => Enumerable.Range(0, used.Length).Sum(i => kinds[i].Price * ((used[i] + kinds[i].Pack - 1) / kinds[i].Pack));

        // A board begun has room for a piece where the piece, without the kerf after it, is no longer.
        void Lay(int piece, long toCome)
        {
            decimal cost = Cost();
            long unused = Enumerable.Range(0, used.Length).Sum(i => ((kinds[i].Price == 0 ? kinds[i].Available : (used[i] + kinds[i].Pack - 1) / kinds[i].Pack * kinds[i].Pack) - used[i]) * (kinds[i].Usable + kerf));
            long free = boards.Sum(board => Math.Max(0, board.Room + kerf)) + unused;
            if (cost >= best || cost + (Math.Max(0, toCome - free) * rate) >= best)
            {
                return;
            }

            if (piece == pieces.Length)
            {
                best = cost;
                return;
            }

            HashSet<(int, long)> tried = [];
            for (int i = 0; i < boards.Count; i++)
            {
                (int kind, long room) = boards[i];
                if (room >= pieces[piece] && tried.Add((kind, room)))
                {
                    boards[i] = (kind, room - pieces[piece] - kerf);
                    Lay(piece + 1, toCome - pieces[piece] - kerf);
                    boards[i] = (kind, room);
                }
            }

            for (int kind = 0; kind < used.Length; kind++)
            {
                if (used[kind] < kinds[kind].Available && kinds[kind].Usable >= pieces[piece])
                {
                    used[kind]++;
                    boards.Add((kind, kinds[kind].Usable - pieces[piece] - kerf));
                    Lay(piece + 1, toCome - pieces[piece] - kerf);
                    boards.RemoveAt(boards.Count - 1);
                    used[kind]--;
                }
            }
        }
    }

    private sealed record Kind(long Usable, decimal Price, int Pack, int Available);
}
