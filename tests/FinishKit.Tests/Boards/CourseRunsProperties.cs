using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Boards;

/// <summary>The runs of random faces against the definition: what of a course lies under the head, beside openings and within the edges as they are sawn, looked at place by place.</summary>
public sealed class CourseRunsProperties
{
    private const double Beside = 0.01;

    [Fact]
    public void Runs_cover_what_is_boarded_and_nothing_else()
    {
        int samples = 0, ends = 0, corners = 0, inParts = 0, split = 0;
        Dictionary<(RunEndKind, bool), int> kinds = [];
        for (int seed = 1; seed <= 400; seed++)
        {
            RunTrial trial = new(seed);
            CoursePlan plan = CourseLayout.LayOut(trial.Face);
            EndCutSchedule? front = trial.Schedule(plan, isRear: false), rear = trial.Schedule(plan, isRear: true);
            JointRun[] all = [.. plan.Runs(rear, front)];
            RunOracle oracle = new(trial.Face, plan.Lines, front, rear);
            Assert.Equal(all.OrderBy(static run => run.Course).ThenBy(static run => run.Start.Millimeters), all);
            for (int course = 1; course <= plan.Courses.Count; course++)
            {
                JointRun[] runs = [.. all.Where(run => run.Course == course)];
                Assert.All(runs, static run => Assert.True(run.Start.Millimeters < run.End.Millimeters));
                Assert.All(runs.Skip(1).Zip(runs), pair => Assert.True(pair.Second.End.Millimeters <= pair.First.Start.Millimeters, $"{seed}: {pair.Second}, {pair.First}"));

                // A whole board's upper corner is taken at the line above, past the gap of its joint: the run may be so much longer than its face.
                double over = oracle.OverTheGap(course), step = trial.Length / 397.3, covered = 0;
                for (double u = 0.31 * step; u < trial.Length; u += step)
                {
                    bool isBoarded = oracle.Height(course, u) > 0, isInRun = runs.Any(run => run.Start.Millimeters < u && u < run.End.Millimeters);
                    bool isNearEnd = runs.Any(run => Math.Abs(run.Start.Millimeters - u) <= over + 1e-3 || Math.Abs(run.End.Millimeters - u) <= over + 1e-3);
                    Assert.True(isBoarded == isInRun || isNearEnd, $"{seed}, course {course}, u {u}: boarded {isBoarded}, in a run {isInRun}");
                    covered += isBoarded ? step : 0;
                    samples++;
                }

                Assert.Equal(covered, runs.Sum(static run => run.End.Millimeters - run.Start.Millimeters), (2 * step * (runs.Length + 1)) + over);
                inParts += runs.Length > 1 ? 1 : 0;
                split += runs.Skip(1).Zip(runs).Count(static pair => pair.First.Start.Millimeters == pair.Second.End.Millimeters);
                foreach ((JointRun run, bool isRear) in runs.SelectMany(static run => new[] { (run, false), (run, true) }))
                {
                    (double end, int outward) = isRear ? (run.End.Millimeters, 1) : (run.Start.Millimeters, -1);
                    RunEnd at = (isRear ? run.EndsAt : run.StartsAt)!;
                    double inside = end - (outward * (Beside + over)), outside = end + (outward * Beside);
                    bool isLong = run.End.Millimeters - run.Start.Millimeters > 2 * (Beside + over);
                    Assert.True(!isLong || oracle.Height(course, inside) > 0, $"{seed}, {run}: nothing just within {end}");
                    bool isNext = runs.Any(other => other != run && other.Start.Millimeters < outside && outside < other.End.Millimeters);
                    Assert.True(isNext || oracle.Height(course, outside) == 0, $"{seed}, {run}: more just beyond {end}");

                    // What it lies at.
                    EndCutSchedule? schedule = isRear ? rear : front;
                    bool isKind = at.Kind switch
                    {
                        RunEndKind.Edge => schedule is not null && oracle.Height(course, outside, noEdges: true) > 0,
                        RunEndKind.Head => !isLong || oracle.Height(course, inside, noEdges: true) < 0.5 * (Beside + over),
                        RunEndKind.Opening => trial.Face.Openings.Any(opening => (isRear ? opening.FromU : opening.ToU).Millimeters == end),
                        _ => end == (isRear ? trial.Length : 0),
                    };
                    Assert.True(isKind || (at.Kind == RunEndKind.Edge && oracle.IsAtCut(course, end, isRear)), $"{seed}, {run}, {(isRear ? "rear" : "front")}: {at}");
                    bool takes = Enumerable.Range(0, 200).Select(i => end - (outward * (0.005 + (0.5 * i)))).Any(u => u > run.Start.Millimeters && u < run.End.Millimeters && oracle.TakenBy(course, u, isRear) > 1e-3);
                    Assert.True(at.Cut is not null || !takes, $"{seed}, {run}, {(isRear ? "rear" : "front")}: {at}, though the edge takes a corner");
                    Assert.True(at.Cut is null || at.Cut.Course == Math.Min(course, schedule!.Courses.Count), $"{seed}, {run}: {at.Cut}");
                    kinds[(at.Kind, at.Cut is not null)] = kinds.GetValueOrDefault((at.Kind, at.Cut is not null)) + 1;
                    corners += takes && at.Kind != RunEndKind.Edge ? 1 : 0;
                    ends++;
                }
            }
        }

        // The cases that matter were met.
        Assert.True(samples > 500_000 && ends > 4000, $"{samples} samples, {ends} ends");
        Assert.True(corners > 30 && inParts > 200 && split > 0, $"{corners} corners, {inParts} courses in parts, {split} boards that touch");
        foreach ((RunEndKind, bool) kind in new[] { (RunEndKind.Edge, true), (RunEndKind.Head, false), (RunEndKind.Opening, false), (RunEndKind.Opening, true), (RunEndKind.Face, false), (RunEndKind.Face, true) })
        {
            Assert.True(kinds.GetValueOrDefault(kind) > 5, $"{kind}: {kinds.GetValueOrDefault(kind)}");
        }
    }

    [Fact]
    public void Front_and_rear_changed_about_change_the_runs_about()
    {
        for (int seed = 1; seed <= 300; seed++)
        {
            RunTrial trial = new(seed), turned = trial.Turned();
            CoursePlan one = CourseLayout.LayOut(trial.Face), other = CourseLayout.LayOut(turned.Face);
            Assert.Equal(one.LinesAtFront, other.LinesAtRear);
            Assert.Equal(one.LinesAtRear, other.LinesAtFront);
            JointRun[] runs = [.. one.Runs(trial.Schedule(one, isRear: false), trial.Schedule(one, isRear: true))];
            JointRun[] mirror = [.. other.Runs(turned.Schedule(other, isRear: false), turned.Schedule(other, isRear: true)).OrderBy(static run => run.Course).ThenByDescending(static run => run.End.Millimeters)];
            Assert.Equal(runs.Select(static run => run.Course), mirror.Select(static run => run.Course));
            foreach ((JointRun run, JointRun image) in runs.Zip(mirror))
            {
                // A sloping head is rounded to the nanometre at every column, which moves a tip by as much as its slope is flat.
                Assert.Equal(run.Start.Millimeters, trial.Length - image.End.Millimeters, 1e-3);
                Assert.Equal(run.End.Millimeters, trial.Length - image.Start.Millimeters, 1e-3);
                Assert.Equal((run.StartsAt!.Kind, run.StartsAt.Cut?.Course, run.EndsAt!.Kind, run.EndsAt.Cut?.Course), (image.EndsAt!.Kind, image.EndsAt.Cut?.Course, image.StartsAt!.Kind, image.StartsAt.Cut?.Course));

                // Offsets to the nanometre, over courses of a millimetre or more.
                Assert.Equal(run.EndsAt.Cut?.SawAngle.Degrees ?? 0, image.StartsAt.Cut?.SawAngle.Degrees ?? 0, 1e-3);
            }
        }
    }

    /// <summary>A face with openings, a head that may taper either way, and an edge at either end or both.</summary>
    private sealed class RunTrial
    {
        private readonly MeasuredEdge? _front, _rear;

        internal RunTrial(int seed)
        {
            Random random = new(seed);
            Length = 2 * random.Next(800, 1800);
            int cover = random.Next(50, 140), gap = random.Next(0, 3), middle = 10 * random.Next(20, 60);
            bool tapers = random.Next(3) > 0;
            int front = tapers ? Math.Max(100, middle + (10 * random.Next(-16, 10))) : middle, rear = tapers && random.Next(4) > 0 ? Math.Max(100, middle + (10 * random.Next(-16, 10))) : tapers ? middle : front;
            List<FaceOpening> openings = [];
            for (int more = random.Next(0, 6); more > 0; more--)
            {
                // Some to the very ends, some with edges in common, some touching foot or head; no strip is left that is narrower than a gap.
                int[] places = [0, (int)Length, (int)Length - random.Next(1, 60), random.Next(1, 60), .. openings.SelectMany(static opening => new[] { (int)opening.FromU.Millimeters, (int)opening.ToU.Millimeters })];
                int[] heights = [0, .. openings.SelectMany(static opening => new[] { (int)opening.FromV.Millimeters, (int)opening.ToV.Millimeters })];
                int u0 = random.Next(2) == 0 ? places[random.Next(places.Length)] : random.Next(0, (int)Length), u1 = random.Next(2) == 0 ? places[random.Next(places.Length)] : random.Next(0, (int)Length);
                int v0 = random.Next(2) == 0 ? heights[random.Next(heights.Length)] : 10 * random.Next(0, middle / 10), v1 = random.Next(4) == 0 ? middle : v0 + (10 * random.Next(1, 25));
                if (openings.Count == 0 && random.Next(3) > 0)
                {
                    (u0, u1) = random.Next(2) == 0 ? (0, random.Next(5, 60)) : ((int)Length - random.Next(5, 60), (int)Length); // a jamb that a leaning edge may cross
                }

                (u0, u1) = (Math.Min(u0, u1), Math.Max(u0, u1));
                double head = new[] { u0, u1, Length / 2 }.Where(u => u >= u0 && u <= u1).Select(u => u <= Length / 2 ? front + ((middle - front) * 2 * u / Length) : middle + ((rear - middle) * ((2 * u / Length) - 1))).DefaultIfEmpty(0).Min();
                v1 = tapers ? Math.Min(v1, (int)(head - 10) / 10 * 10) : Math.Min(v1, middle);
                FaceOpening opening = new(Mm(u0), Mm(u1), Mm(v0), Mm(v1));
                if (u1 - u0 >= 5 && v1 - v0 >= 10 && openings.TrueForAll(other => u1 <= other.FromU.Millimeters || other.ToU.Millimeters <= u0 || v1 <= other.FromV.Millimeters || other.ToV.Millimeters <= v0))
                {
                    openings.Add(opening);
                }
            }

            Face = new CourseFace(Mm(Length), Mm(middle), gap == 0 ? BoardCover.SquareEdged(Mm(cover), Mm(0)) : BoardCover.TongueAndGroove(Mm(cover + 9), Mm(9), Mm(gap)))
            {
                GirthAtFront = Mm(front),
                GirthAtRear = Mm(rear),
                Openings = openings,
                Rule = (CourseRule)random.Next(4),
            };
            _front = random.Next(3) == 0 ? null : Edge(front, 0, 1);
            _rear = random.Next(4) == 0 ? null : Edge(rear, Length, -1);

            // Leaning in or out, straight, bowed or through points, now and then beyond the face.
            MeasuredEdge Edge(double height, double from, int inward)
            {
                double foot = random.Next(3) == 0 ? 0 : random.Next(-10, 50), head = foot + random.Next(-40, 90), bow = random.Next(-12, 12);
                return random.Next(3) switch
                {
                    0 => EdgeCurve.Straight(new(Mm(0), Mm(from + (inward * foot))), new(Mm(height), Mm(from + (inward * head)))),
                    1 => EdgeCurve.OnArc(new(Mm(0), Mm(from + (inward * foot))), new(Mm(height), Mm(from + (inward * head))), Mm(-inward * bow)),
                    _ => EdgeCurve.Through([new(Mm(0), Mm(from + (inward * foot))), new(Mm(height / 2), Mm(from + (inward * (((foot + head) / 2) + bow)))), new(Mm(height), Mm(from + (inward * head)))]),
                };
            }
        }

        private RunTrial(RunTrial other)
        {
            Length = other.Length;
            Face = CourseTrial.Turned(other.Face);
            _front = Mirror(other._rear);
            _rear = Mirror(other._front);

            // Every line of either end is a point of the mirror image, and between lines an end cut knows nothing.
            MeasuredEdge? Mirror(MeasuredEdge? edge)
            {
                if (edge is null)
                {
                    return null;
                }

                CoursePlan plan = CourseLayout.LayOut(other.Face);
                IReadOnlyList<Length> lines = ReferenceEquals(edge, other._rear) ? plan.LinesAtRear : plan.LinesAtFront;
                return EdgeCurve.Through([.. lines.Select(line => new MeasuredPoint(line, CourseTrial.At(CourseOracle.Nm(Mm(Length)) - CourseOracle.Nm(edge.OffsetAt(line)))))], EdgeFit.Linear);
            }
        }

        internal double Length { get; }

        internal CourseFace Face { get; }

        internal RunTrial Turned() => new(this);

        internal EndCutSchedule? Schedule(CoursePlan plan, bool isRear) => (isRear ? _rear : _front) is not { } edge ? null
            : EndCuts.Schedule(new EndCutJob(edge, isRear ? plan.LinesAtRear : plan.LinesAtFront, Mm(Length / 2)) { Order = plan.Courses.Count % 2 == 0 ? FittingOrder.FromTop : FittingOrder.FromBottom });
    }

    /// <summary>The definition, in plain numbers: at a place along the van what is free of a course under the head, beside openings, and on the boards' side of the chords.</summary>
    private sealed class RunOracle(CourseFace face, IReadOnlyList<Length> lines, EndCutSchedule? front, EndCutSchedule? rear)
    {
        private readonly double _length = face.FaceLength.Millimeters, _gap = face.Board.Gap.Millimeters, _cover = face.Board.Cover.Millimeters;

        /// <summary>How far a board's corner may lie past its face where the cut goes on over the gap to the line above.</summary>
        internal double OverTheGap(int course) => new[] { front, rear }.Max(schedule => schedule is null ? 0 : _gap * Math.Abs(Chord(schedule, course).Slope));

        /// <summary>Total of the free heights at a place.</summary>
        internal double Height(int course, double u, bool noEdges = false) => Free(course, u).Sum(free => noEdges ? free.To - free.From : Within(course, u, free, front, rear));

        /// <summary>What the edge at one end takes at a place.</summary>
        internal double TakenBy(int course, double u, bool isRear) => Free(course, u).Sum(free => free.To - free.From - (isRear ? Within(course, u, free, null, rear) : Within(course, u, free, front, null)));

        /// <summary>Whether the long point of what is free just within a place lies there.</summary>
        internal bool IsAtCut(int course, double u, bool isRear)
        {
            (double at, double lower, double slope) = Chord((isRear ? rear : front)!, course);
            double least = Free(course, u - (isRear ? Beside : -Beside)).SelectMany(static free => new[] { free.From, free.To }).Min(v => Math.Abs(at + (slope * (v - lower)) - u));
            return least <= 2 * Beside;
        }

        private IEnumerable<(double From, double To)> Free(int course, double u)
        {
            double head = Girth(u), from = lines[course - 1].Millimeters, top = lines[course].Millimeters;
            if (u <= 0 || u >= _length)
            {
                yield break;
            }

            // What shows of a board, below the gap of the joint above it; the last has no line above, but is no wider than a board.
            double to = Math.Min(head, course < lines.Count - 1 ? top - _gap : course > 1 ? Math.Min(top, from + _cover - _gap) : top);
            foreach (FaceOpening opening in face.Openings.Where(opening => opening.FromU.Millimeters < u && u < opening.ToU.Millimeters).OrderBy(static opening => opening.FromV.Millimeters))
            {
                if (opening.ToV.Millimeters <= from || opening.FromV.Millimeters >= to)
                {
                    continue;
                }

                if (opening.FromV.Millimeters > from)
                {
                    yield return (from, opening.FromV.Millimeters);
                }

                from = opening.ToV.Millimeters;
            }

            if (from < to)
            {
                yield return (from, to);
            }
        }

        private double Girth(double u)
        {
            double middle = face.Girth.Millimeters, front = face.GirthAtFront?.Millimeters ?? middle, rear = face.GirthAtRear?.Millimeters ?? middle;
            return u <= _length / 2 ? front + ((middle - front) * 2 * u / _length) : rear + ((middle - rear) * 2 * (_length - u) / _length);
        }

        private static double Within(int course, double u, (double From, double To) free, EndCutSchedule? atFront, EndCutSchedule? atRear)
        {
            (double low, double high) = free;
            foreach ((EndCutSchedule? schedule, int side) in new[] { (atFront, -1), (atRear, 1) })
            {
                if (schedule is null)
                {
                    continue;
                }

                // On the boards' side: side * (chord - u) >= 0, which is a half-line of heights.
                (double at, double lower, double slope) = Chord(schedule, course);
                double share = side * slope, here = side * (at - u);
                if (share == 0)
                {
                    high = here >= 0 ? high : low;
                }
                else if (share > 0)
                {
                    low = Math.Max(low, lower - (here / share));
                }
                else
                {
                    high = Math.Min(high, lower - (here / share));
                }
            }

            return Math.Max(0, high - low);
        }

        /// <summary>The chord of the course, or of the highest that has one: offset at a height, that height, and slope.</summary>
        private static (double At, double Lower, double Slope) Chord(EndCutSchedule schedule, int course)
        {
            EndCut cut = schedule.Courses.OrderBy(static each => each.Course).ElementAt(Math.Min(course, schedule.Courses.Count) - 1);
            (double low, double high) = (cut.LowerLine.Millimeters, cut.UpperLine.Millimeters);
            (double from, double to) = (schedule.Job.Edge.OffsetAt(cut.LowerLine).Millimeters, schedule.Job.Edge.OffsetAt(cut.UpperLine).Millimeters);
            return (from, low, (to - from) / (high - low));
        }
    }
}
