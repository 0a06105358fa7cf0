using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>The choices a job allows; where it allows none, those that depart least from what it asks, and what would help.</summary>
internal sealed class JointRules
{
    /// <summary>1 mm: nothing shorter is cut.</summary>
    internal const long LeastPiece = 1_000_000;

    private const long MostWork = 60_000_000;

    private JointRules(RunSplits?[] ways, JointChoices choices, int stagger, bool areKept) => (Ways, Choices, Stagger, AreKept) = (ways, choices, stagger, areKept);

    /// <summary>For each run; null where it cannot be jointed on these strips at all, whatever its pieces.</summary>
    internal RunSplits?[] Ways { get; }

    internal JointChoices Choices { get; }

    /// <summary>The stagger that can be kept.</summary>
    internal int Stagger { get; }

    /// <summary>Whether all that is asked is kept.</summary>
    internal bool AreKept { get; }

    internal static JointRules Find(JointNumbers job, CuttingEffort effort)
    {
        RunSplits?[] ways = new RunSplits?[job.Runs.Length];
        bool areKept = true;
        for (int i = 0; i < ways.Length; i++)
        {
            (int _, long start, long end) = job.Runs[i];
            RunSplits own = new(start, end, job.Strips, job.Longest, job.Shortest);
            areKept &= own.Count > 0;
            ways[i] = own.Count > 0 ? own : WithShorterPieces(job, start, end);
        }

        // At a stagger of 0 every choice goes, and what goes at one goes at every lower one.
        JointChoices? choices = null;
        int low = -1, high = job.Stagger;
        while (low < high)
        {
            int stagger = choices is null && high == job.Stagger && low < 0 ? high : (low + high + 1) / 2;
            JointChoices own = JointChoices.Of(job, ways, job.Strips, stagger);
            if (Goes(own, effort))
            {
                (choices, low) = (own, stagger);
            }
            else
            {
                high = stagger - 1;
            }
        }

        return new JointRules(ways, choices!, low, areKept && low == job.Stagger);
    }

    /// <summary>The place of one strip more that makes what is asked possible, in the middle of the widest stretch found where it may be; null where none was found.</summary>
    internal long? StripToAdd(JointNumbers job, CuttingEffort effort)
    {
        if (job.Strips.Length == BoardJoints.MostStrips)
        {
            return null;
        }

        SortedSet<long> bounds = [];
        bool isSmall = job.Runs.Length * job.Strips.Length <= 4000;
        foreach ((int _, long start, long end) in job.Runs)
        {
            if (end - start <= job.Longest)
            {
                continue;
            }

            Around(start, start, end);
            Around(end, start, end);
            for (int i = 0; i < job.Strips.Length && isSmall; i++)
            {
                Around(job.Strips[i], start, end);
            }
        }

        List<long> sorted = [.. bounds];
        List<(long Width, long Place)> places = [];
        for (int i = 0; i < sorted.Count; i++)
        {
            places.Add((0, sorted[i]));
            if (i > 0)
            {
                // To whole millimetres where there is one.
                long middle = (sorted[i - 1] + sorted[i]) / 2, whole = middle / 1_000_000 * 1_000_000;
                places.Add((sorted[i] - sorted[i - 1], whole > sorted[i - 1] ? whole : middle));
            }
        }

        places.Sort(static (left, right) => left.Width != right.Width ? right.Width.CompareTo(left.Width) : left.Place.CompareTo(right.Place));
        long tries = Tries(job);
        foreach ((long _, long place) in places)
        {
            int at = Array.BinarySearch(job.Strips, place);
            if (at >= 0)
            {
                continue;
            }

            if (--tries < 0)
            {
                return null;
            }

            List<long> strips = [.. job.Strips];
            strips.Insert(~at, place);
            if (Allows(job, [.. strips], job.Longest, effort))
            {
                return place;
            }
        }

        return null;

        void Around(long place, long start, long end)
        {
            foreach (long far in new[] { job.Longest, job.Shortest, 0 })
            {
                foreach (long bound in new[] { place - far, place + far })
                {
                    if (bound > start && bound < end)
                    {
                        bounds.Add(bound);
                    }
                }
            }
        }
    }

    /// <summary>A usable length of boards, as many as it takes, that makes what is asked possible: as short as was found; null where none of those that are sold was.</summary>
    internal long? BoardToBuy(JointNumbers job, CuttingEffort effort)
    {
        SortedSet<long> lengths = [];
        bool isSmall = job.Runs.Length * (long)job.Strips.Length * job.Strips.Length <= 400_000;
        foreach ((int _, long start, long end) in job.Runs)
        {
            List<long> places = [start];
            foreach (long strip in job.Strips)
            {
                if (isSmall && strip > start && strip < end)
                {
                    places.Add(strip);
                }
            }

            places.Add(end);
            for (int i = 0; i < places.Count; i++)
            {
                for (int k = i + 1; k < places.Count; k++)
                {
                    if (places[k] - places[i] > job.Longest)
                    {
                        lengths.Add(places[k] - places[i]);
                    }
                }
            }
        }

        // Boards as long as the longest run need no joints; where there are none so long, the longest that there may be are asked about.
        List<long> sorted = [.. lengths];
        long most = Grid.Nanometres(CuttingNumbers.LongestBoard) - (2 * job.Cutting.Trim);
        int within = sorted.FindLastIndex(length => length <= most) + 1;
        bool isKnown = within == sorted.Count;
        sorted.RemoveRange(within, sorted.Count - within);
        if (sorted.Count == 0 || (!isKnown && !Allows(job, job.Strips, sorted[within - 1], effort)))
        {
            return null;
        }

        int low = 0, high = sorted.Count - 1;
        for (long tries = Tries(job); low < high && tries > 0; tries--)
        {
            int middle = (low + high) / 2;
            bool allows = Allows(job, job.Strips, sorted[middle], effort);
            (low, high) = allows ? (low, middle) : (middle + 1, high);
        }

        return sorted[high];
    }

    private static bool Allows(JointNumbers job, long[] strips, long longest, CuttingEffort effort)
    {
        RunSplits?[] ways = new RunSplits?[job.Runs.Length];
        for (int i = 0; i < ways.Length; i++)
        {
            ways[i] = new RunSplits(job.Runs[i].Start, job.Runs[i].End, strips, longest, job.Shortest);
            if (ways[i]!.Count == 0)
            {
                return false;
            }
        }

        return Goes(JointChoices.Of(job, ways, strips, job.Stagger), effort);
    }

    private static bool Goes(JointChoices choices, CuttingEffort effort) =>
        choices.Cheapest(choices.ToGo(new long[choices.Sizes.Length], effort), effort) is not null;

    /// <summary>The ways with the longest shortest piece that strips and boards allow.</summary>
    private static RunSplits? WithShorterPieces(JointNumbers job, long start, long end)
    {
        RunSplits? best = new(start, end, job.Strips, job.Longest, LeastPiece);
        if (best.Count == 0)
        {
            return null;
        }

        List<long> lengths = [];
        List<long> places = [start, .. Array.FindAll(job.Strips, strip => strip > start && strip < end), end];
        for (int i = 0; i < places.Count; i++)
        {
            for (int k = i + 1; k < places.Count; k++)
            {
                if (places[k] - places[i] < job.Shortest)
                {
                    lengths.Add(places[k] - places[i]);
                }
            }
        }

        List<long> sorted = lengths;
        sorted.Sort();
        for (int low = 0, high = sorted.Count - 1; low <= high;)
        {
            int middle = (low + high) / 2;
            RunSplits own = new(start, end, job.Strips, job.Longest, sorted[middle]);
            best = own.Count > 0 ? own : best;
            (low, high) = own.Count > 0 ? (middle + 1, high) : (low, middle - 1);
        }

        return best;
    }

    private long Tries(JointNumbers job)
    {
        long work = (job.Runs.Length * (job.Strips.Length + 2L) * (job.Strips.Length + 2L) * 5) + (Choices.Splits * 50L) + (Choices.Splits * (long)Choices.Splits / Choices.Courses.Count);
        return Math.Min(200, Math.Max(1, MostWork / work));
    }
}
