using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>A butt joint.</summary>
/// <remarks><see cref="BoardJoints.Choose"/> makes them.</remarks>
public sealed class ButtJoint
{
    internal ButtJoint(int strip, long position) => (Strip, PositionInNanometres) = (strip, position);

    /// <summary>Which of the job's strips it lies on, from 0.</summary>
    public int Strip { get; }

    /// <summary>Where it is along the wall: the strip's middle.</summary>
    public Length Position => CuttingPlan.Mm(PositionInNanometres);

    internal long PositionInNanometres { get; }

    /// <summary>Strip and position, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"strip {Print.Number(Strip)} at {Print.Mm(Grid.Millimetres(PositionInNanometres))}";
}

/// <summary>A run with its joints and pieces: the pieces add up to its length, less the gaps at its ends.</summary>
/// <remarks><see cref="BoardJoints.Choose"/> makes them.</remarks>
public sealed class JointedRun
{
    internal JointedRun(int run, int course, string name, long start, long end, IReadOnlyList<ButtJoint> joints, IReadOnlyList<long> pieces, int? fewest)
    {
        (Run, Course, Name, StartInNanometres, EndInNanometres) = (run, course, name, start, end);
        Joints = [.. joints];
        FewestJoints = fewest;
        PiecesInNanometres = [.. pieces];
        List<Length> lengths = [];
        foreach (long piece in pieces)
        {
            lengths.Add(CuttingPlan.Mm(piece));
        }

        Pieces = [.. lengths];
    }

    /// <summary>Which of the job's runs it is, from 0.</summary>
    public int Run { get; }

    /// <summary>Number of its course.</summary>
    public int Course { get; }

    /// <summary>What its pieces are called in the cutting plan: the job's name for it, or its course's number.</summary>
    public string Name { get; }

    /// <summary>Where its boards start: the run's start and the gap left there.</summary>
    public Length Start => CuttingPlan.Mm(StartInNanometres);

    /// <summary>Where its boards end: the run's end less the gap left there.</summary>
    public Length End => CuttingPlan.Mm(EndInNanometres);

    /// <summary>The joints from start to end; empty where it is one piece.</summary>
    public IReadOnlyList<ButtJoint> Joints { get; }

    /// <summary>Lengths of the pieces from start to end, one more than joints.</summary>
    public IReadOnlyList<Length> Pieces { get; }

    /// <summary>The fewest joints that strips, boards and shortest piece allow it by itself, 0 where one of the boards is long enough; null where it cannot be jointed on these strips.</summary>
    public int? FewestJoints { get; }

    internal long StartInNanometres { get; }

    internal long EndInNanometres { get; }

    internal IReadOnlyList<long> PiecesInNanometres { get; }

    /// <summary>Name and pieces, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        List<string> pieces = [];
        foreach (long piece in PiecesInNanometres)
        {
            pieces.Add(Print.Round(Grid.Millimetres(piece), 3));
        }

        return $"{Name}: {string.Join(" + ", pieces)} mm";
    }
}

/// <summary>The joints of every course and what is cut from which board: what <see cref="BoardJoints.Choose"/> answers.</summary>
/// <remarks><see cref="BoardJoints.Choose"/> makes one.</remarks>
public sealed class JointLayout
{
    private readonly double _usable;

    internal JointLayout(JointJob job, JointNumbers numbers, JointRules rules, IReadOnlyList<JointedRun> runs, CuttingPlan plan, decimal? least, long nodes, long? strip, long? board)
    {
        (Job, Cutting, LeastCost, Nodes) = (job, plan, least, nodes);
        Runs = [.. runs];
        StripToAdd = strip is { } place ? CuttingPlan.Mm(place) : null;
        BoardToBuy = board is { } usable ? CuttingPlan.Mm(usable + (2 * numbers.Cutting.Trim)) : null;
        _usable = Grid.Millimetres(numbers.Longest);
        SortedSet<int> strips = [];
        foreach (JointedRun run in runs)
        {
            Joints += run.Joints.Count;
            foreach (ButtJoint joint in run.Joints)
            {
                strips.Add(joint.Strip);
            }
        }

        JointStrips = [.. strips];
        List<DefaultUsed> defaults = [];
        if (job.Stagger is null)
        {
            defaults.Add(new DefaultUsed(new Figure("stagger", JointDefaults.Stagger, string.Empty), JointDefaults.StaggerSource));
        }

        if (job.ShortestPiece is null)
        {
            defaults.Add(new DefaultUsed(new Figure("shortest-piece", JointDefaults.ShortestPiece, "mm"), JointDefaults.ShortestPieceSource));
        }

        DefaultsUsed = [.. defaults, .. plan.DefaultsUsed];
        Findings = JointFindings.Of(this, numbers, rules);
    }

    /// <summary>The job.</summary>
    public JointJob Job { get; }

    /// <summary>Every run that takes a board, with its joints and pieces, in the job's order; runs under 1 mm without their gaps are left out and said in a finding.</summary>
    public IReadOnlyList<JointedRun> Runs { get; }

    /// <summary>The boards, what to cut from each, and what to buy. Its parts are the pieces of the runs, in the runs' order, named for them.</summary>
    public CuttingPlan Cutting { get; }

    /// <summary>How many joints there are.</summary>
    public int Joints { get; }

    /// <summary>Strips with a joint on them: those to make wide or double.</summary>
    public IReadOnlyList<int> JointStrips { get; }

    /// <summary>What the boards cost, in the job's currency.</summary>
    public decimal Cost => Cutting.Cost;

    /// <summary>No joints that keep what the job asks, nine a run at most, can be cut from boards that cost less: whichever runs are jointed and whichever are left whole. Null where none keep it, or where pieces are not cut.</summary>
    public decimal? LeastCost { get; }

    /// <summary>How much of the cost might be saved at most, 0 to 1. Null where there is no least cost.</summary>
    public double? Gap => LeastCost is { } least ? Cost == least ? 0 : (double)((Cost - least) / Cost) : null;

    /// <summary>Whether no joints that keep what the job asks, nine a run at most, cost less.</summary>
    public bool Proven => LeastCost == Cost;

    /// <summary>Where one strip more would make what is asked possible. Null where it is possible, or where no one strip was found to do it.</summary>
    public Length? StripToAdd { get; }

    /// <summary>Length of boards, as sold, 20 m at most, that would make what is asked possible. Null where it is possible, or where no boards up to that length were found to do it.</summary>
    public Length? BoardToBuy { get; }

    /// <summary>Nodes of search used, the cutting plan's included.</summary>
    public long Nodes { get; }

    /// <summary>What a person should know, gravest first; those of the cutting plan are among them.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>: what is asked cannot be kept, or pieces are not cut.</summary>
    public bool HasProblem => Findings.Count > 0 && Findings[0].Severity >= Severity.Problem;

    /// <summary>The defaults taken because the job gave no figure of its own.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    /// <summary>For each run, its length without the gaps at its ends, how many joints that asks for and how many it has.</summary>
    /// <returns>The workings; empty where there is no board.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        long gap = Grid.Nanometres(Door.Millimetres(Job.EndGap));
        for (int i = 0; i < Runs.Count && _usable > 0; i++)
        {
            BoardJoints.SolveFewest(Grid.Millimetres(Runs[i].EndInNanometres - Runs[i].StartInNanometres + (2 * gap)), Grid.Millimetres(gap), _usable, Runs[i].Joints.Count, i + 1, recorder);
        }

        return recorder.ToWorkings("Joints of the courses");
    }

    /// <summary>The layout as flat figures.</summary>
    /// <returns>The worst severity as the number of its enumeration (0 too where there is no finding), runs, joints, strips with joints, pieces, boards, cost and nodes; the shortest piece of a jointed run where there is one; where there is a least cost, that, the gap and whether it is proven (1 or 0).</returns>
    public IReadOnlyList<Figure> Figures()
    {
        int pieces = 0;
        long shortest = long.MaxValue;
        foreach (JointedRun run in Runs)
        {
            pieces += run.Pieces.Count;
            foreach (long piece in run.PiecesInNanometres)
            {
                shortest = run.Joints.Count > 0 && piece < shortest ? piece : shortest;
            }
        }

        List<Figure> figures =
        [
            new("worst-severity", Findings.Count == 0 ? 0 : (int)Findings[0].Severity, string.Empty),
            new("runs", Runs.Count, string.Empty),
            new("joints", Joints, string.Empty),
            new("joint-strips", JointStrips.Count, string.Empty),
            new("pieces", pieces, string.Empty),
            new("boards", Cutting.Boards.Count, string.Empty),
            new("cost", (double)Cost, string.Empty),
            new("nodes", Nodes, string.Empty),
        ];
        if (shortest < long.MaxValue)
        {
            figures.Add(new Figure("shortest-piece", Grid.Millimetres(shortest), "mm"));
        }

        if (LeastCost is { } least)
        {
            figures.Add(new Figure("least-cost", (double)least, string.Empty));
            figures.Add(new Figure("gap", Gap!.Value, string.Empty));
            figures.Add(new Figure("proven", Proven ? 1 : 0, string.Empty));
        }

        return [.. figures];
    }

    /// <summary>Joints, boards and cost, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Print.Number(Joints)} joints, {Print.Number(Cutting.Boards.Count)} boards, cost {CuttingPlan.Money(Cost)}{(HasProblem ? ", with a problem" : Proven ? ", proven least" : LeastCost is { } least ? $", {CuttingPlan.Money(least)} at least" : string.Empty)}";
}
