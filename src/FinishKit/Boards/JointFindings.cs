using System;
using System.Collections.Generic;

namespace FinishKit;

/// <summary>What a person should know about joints.</summary>
internal static class JointFindings
{
    private const int MostNamed = 10;

    internal static IReadOnlyList<Finding> Of(JointLayout layout, JointNumbers job, JointRules rules)
    {
        List<Finding> findings = [];
        if (!rules.AreKept)
        {
            findings.Add(None(layout, job, rules));
        }

        AddBare(layout, job, findings);
        AddClose(layout, job, findings);
        AddShort(layout, job, findings);
        if (layout.LeastCost is { } least && !layout.Proven)
        {
            findings.Add(new Finding(
                "boards-joint-cost-not-proven",
                Severity.Note,
                $"Joints and boards cost {CuttingPlan.Money(layout.Cost)}; that no other joints cost less is not proven, {CuttingPlan.Money(least)} is the least it could be, {Print.Round(100 * layout.Gap!.Value, 2)}% less.",
                [new("cost", (double)layout.Cost, string.Empty), new("least-cost", (double)least, string.Empty), new("gap", layout.Gap!.Value, string.Empty)],
                Sources.BoardJoints));
        }

        if (rules.Choices.IsSample)
        {
            findings.Add(new Finding(
                "boards-joint-sample",
                Severity.Note,
                $"A course can be divided in more ways than are looked at: {Print.Number(rules.Choices.Splits)} over all courses were, those with the fewest joints first. What the boards cost at least is for all of them.",
                [new("ways", rules.Choices.Splits, string.Empty)]));
        }

        if (layout.Joints > 0)
        {
            List<string> places = [];
            foreach (int strip in layout.JointStrips)
            {
                places.Add(places.Count < MostNamed ? Print.Round(Grid.Millimetres(job.Strips[strip]), 3) : "...");
                if (places.Count > MostNamed)
                {
                    break;
                }
            }

            findings.Add(new Finding(
                "boards-joint-strip-wide",
                Severity.Note,
                $"Boards butt on {(layout.JointStrips.Count == 1 ? "the strip" : $"{Print.Number(layout.JointStrips.Count)} strips,")} at {string.Join(", ", places)} mm: make {(layout.JointStrips.Count == 1 ? "it" : "each")} {Print.Number(JointDefaults.StripWidth)} mm wide or double, so that both ends can be nailed without splitting.",
                [new("joints", layout.Joints, string.Empty), new("strips", layout.JointStrips.Count, string.Empty), new("width", JointDefaults.StripWidth, "mm")],
                JointDefaults.StripSource));
        }

        findings.Add(LookBehind.Note);

        // What the plan has to say is said here too, so that nobody has to look in two places.
        findings.AddRange(layout.Cutting.Findings);
        return Finding.GravestFirst(findings);
    }

    private static Finding None(JointLayout layout, JointNumbers job, JointRules rules)
    {
        // A run that is left whole has nothing to be shortened.
        int undivided = 0, manyJoints = 0, shortened = 0;
        for (int i = 0; i < rules.Ways.Length; i++)
        {
            RunSplits asked = new(job.Runs[i].Start, job.Runs[i].End, job.Strips, job.Longest, job.Shortest);
            bool isMany = asked.AreJointsTooFew() || (rules.Ways[i] is null && new RunSplits(job.Runs[i].Start, job.Runs[i].End, job.Strips, job.Longest, JointRules.LeastPiece).AreJointsTooFew());
            manyJoints += isMany ? 1 : 0;
            undivided += rules.Ways[i] is null && !isMany ? 1 : 0;
            shortened += rules.Ways[i] is not null && asked.Count == 0 && !isMany ? 1 : 0;
        }

        List<string> wrong = [];
        string usable = Print.Mm(Grid.Millimetres(job.Longest));
        if (job.Longest == 0)
        {
            (undivided, manyJoints) = (job.Runs.Length, 0);
            wrong.Add("no board is to be had, of no kind a whole pack");
        }
        else if (undivided > 0)
        {
            wrong.Add($"{Print.Number(undivided)} {(undivided == 1 ? "run has" : "runs have")} no strips in reach: no pieces of 1 mm to {usable}, which is what can be used of the longest board, end on strips");
        }

        if (manyJoints > 0)
        {
            wrong.Add($"{Print.Number(manyJoints)} {(manyJoints == 1 ? "run takes" : "runs take")} more than {Print.Number(BoardJoints.MostJoints)} joints, the most that are looked at, where {usable} of the longest board can be used");
        }

        if (shortened > 0)
        {
            wrong.Add($"{Print.Number(shortened)} {(shortened == 1 ? "run has" : "runs have")} no joint without a piece under {Print.Mm(Grid.Millimetres(job.Shortest))}");
        }

        if (rules.Stagger < job.Stagger)
        {
            wrong.Add($"joints of neighbouring courses cannot all be {Print.Number(job.Stagger)} strips apart, {(rules.Stagger == 0 ? "some fall on one strip" : Print.Number(rules.Stagger) + " can be kept")}");
        }

        List<Figure> values = [new("undivided", undivided, string.Empty), new("over-most-joints", manyJoints, string.Empty), new("shortened", shortened, string.Empty), new("stagger-kept", rules.Stagger, string.Empty), new("usable", Grid.Millimetres(job.Longest), "mm")];
        List<string> remedies = [];
        if (layout.StripToAdd is { } strip)
        {
            values.Add(new Figure("strip-to-add", Door.Millimetres(strip), "mm"));
            remedies.Add($"a strip more at {Print.Mm(Door.Millimetres(strip))}");
        }

        if (layout.BoardToBuy is { } board)
        {
            values.Add(new Figure("board-to-buy", Door.Millimetres(board), "mm"));
            remedies.Add($"boards of {Print.MmUp(Door.Millimetres(board))}");
        }

        string longer = layout.BoardToBuy is null ? $"; no boards of {Print.Mm(CuttingNumbers.LongestBoard)} or less were found to do" : string.Empty;
        string remedy = (remedies.Count == 0 ? "Move or add strips, or ask for less" : $"What would do: {string.Join(", or ", remedies)}") + longer;
        return new Finding(
            "boards-joint-none",
            Severity.Problem,
            $"No joints keep what is asked{(rules.Choices.IsSample ? ", of those that were looked at" : string.Empty)}: {string.Join("; ", wrong)}. {remedy}.",
            values,
            Sources.BoardJoints);
    }

    /// <summary>Slivers beside a window or at an edge.</summary>
    private static void AddBare(JointLayout layout, JointNumbers job, List<Finding> findings)
    {
        if (job.Bare.Length == 0)
        {
            return;
        }

        List<string> places = [];
        double widest = 0;
        foreach (int run in job.Bare)
        {
            double start = Door.Millimetres(layout.Job.Runs[run].Start), end = Door.Millimetres(layout.Job.Runs[run].End);
            widest = Math.Max(widest, end - start);
            if (places.Count <= MostNamed)
            {
                places.Add(places.Count < MostNamed ? $"{BoardJoints.NameOf(layout.Job, run)} from {Print.Round(start, 3)} to {Print.Round(end, 3)} mm" : "...");
            }
        }

        double gap = Door.Millimetres(layout.Job.EndGap);
        findings.Add(new Finding(
            "boards-joint-run-bare",
            Severity.Caution,
            $"{Print.Number(job.Bare.Length)} {(job.Bare.Length == 1 ? "run takes" : "runs take")} no board, because less than 1 mm is left{(gap > 0 ? $" once {Print.Mm(gap)} are taken off at both ends" : " of it")}: {string.Join("; ", places)}. Nothing is cut for {(job.Bare.Length == 1 ? "it" : "them")}: cover {(job.Bare.Length == 1 ? "it" : "them")} with a trim, or leave {(job.Bare.Length == 1 ? "it" : "them")} bare.",
            [new("runs", job.Bare.Length, string.Empty), new("widest", Grid.Snap(widest), "mm"), new("end-gap", gap, "mm")],
            Sources.BoardJoints));
    }

    /// <summary>Looked for in the layout as it came out, whatever was meant.</summary>
    private static void AddClose(JointLayout layout, JointNumbers job, List<Finding> findings)
    {
        int close = 0, nearest = int.MaxValue;
        Dictionary<int, List<int>> byCourse = [];
        foreach (JointedRun run in layout.Runs)
        {
            if (!byCourse.TryGetValue(run.Course, out List<int>? own))
            {
                byCourse[run.Course] = own = [];
            }

            foreach (ButtJoint joint in run.Joints)
            {
                own.Add(joint.Strip);
            }
        }

        foreach (KeyValuePair<int, List<int>> course in byCourse)
        {
            if (!byCourse.TryGetValue(course.Key + 1, out List<int>? next))
            {
                continue;
            }

            foreach (int strip in course.Value)
            {
                foreach (int other in next)
                {
                    close += Math.Abs(strip - other) < job.Stagger ? 1 : 0;
                    nearest = Math.Min(nearest, Math.Abs(strip - other));
                }
            }
        }

        if (close > 0)
        {
            findings.Add(new Finding(
                "boards-joint-close",
                Severity.Caution,
                $"{Print.Number(close)} {(close == 1 ? "pair" : "pairs")} of joints in neighbouring courses {(close == 1 ? "is" : "are")} closer than {Print.Number(job.Stagger)} {(job.Stagger == 1 ? "strip" : "strips")}, the nearest {Print.Number(nearest)} apart.",
                [new("pairs", close, string.Empty), new("nearest", nearest, string.Empty), new("stagger", job.Stagger, string.Empty)],
                layout.Job.Stagger is null ? JointDefaults.StaggerSource : Sources.Given));
        }
    }

    private static void AddShort(JointLayout layout, JointNumbers job, List<Finding> findings)
    {
        int pieces = 0, runs = 0;
        long shortest = long.MaxValue, shortestRun = long.MaxValue;
        foreach (JointedRun run in layout.Runs)
        {
            foreach (long piece in run.PiecesInNanometres)
            {
                if (piece >= job.Shortest)
                {
                    continue;
                }

                if (run.Joints.Count > 0)
                {
                    pieces++;
                    shortest = Math.Min(shortest, piece);
                }
                else
                {
                    runs++;
                    shortestRun = Math.Min(shortestRun, piece);
                }
            }
        }

        Source source = layout.Job.ShortestPiece is null ? JointDefaults.ShortestPieceSource : Sources.Given;
        if (pieces > 0)
        {
            findings.Add(new Finding(
                "boards-joint-piece-short",
                Severity.Caution,
                $"{Print.Number(pieces)} {(pieces == 1 ? "piece" : "pieces")} of jointed courses {(pieces == 1 ? "is" : "are")} shorter than {Print.Mm(Grid.Millimetres(job.Shortest))}, the shortest {Print.Mm(Grid.Millimetres(shortest))}.",
                [new("pieces", pieces, string.Empty), new("shortest", Grid.Millimetres(shortest), "mm"), new("asked", Grid.Millimetres(job.Shortest), "mm")],
                source));
        }

        if (runs > 0)
        {
            findings.Add(new Finding(
                "boards-joint-run-short",
                Severity.Note,
                $"{Print.Number(runs)} {(runs == 1 ? "run is" : "runs are")} shorter than the shortest piece of {Print.Mm(Grid.Millimetres(job.Shortest))} to begin with, the shortest {Print.Mm(Grid.Millimetres(shortestRun))}: one piece as it is. See that it bears on two strips.",
                [new("runs", runs, string.Empty), new("shortest", Grid.Millimetres(shortestRun), "mm")],
                source));
        }
    }
}
