using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>The strips of a face: what <see cref="FurringLayout.LayOut"/> answers.</summary>
public sealed class FurringPlan
{
    private readonly FaceNumbers _numbers;
    private readonly List<FaceNote> _notes;
    private IReadOnlyList<Finding>? _findings;

    internal FurringPlan(FurringFace face, FaceNumbers numbers, StripLayout spacing, FurringPiece[] pieces, List<FaceNote> notes, int uprights)
    {
        Face = face;
        _numbers = numbers;
        _notes = notes;
        Spacing = spacing;
        Pieces = [.. pieces];
        UprightCount = uprights;
        double upright = 0, trimmers = 0, breaks = 0;
        foreach (FurringPiece piece in pieces)
        {
            upright += piece.IsAcross ? 0 : piece.LengthMm;
            trimmers += piece.Role == StripRole.Trimmer ? piece.LengthMm : 0;
            breaks += piece.IsAcross && piece.Role == StripRole.Break ? piece.LengthMm : 0;
        }

        UprightLength = Door.Millimetres(Grid.Snap(upright));
        TrimmerLength = Door.Millimetres(Grid.Snap(trimmers));
        BreakLength = Door.Millimetres(Grid.Snap(breaks));
        RunningLength = Door.Millimetres(Grid.Snap(Solve(default(Silent))));
    }

    /// <summary>The face.</summary>
    public FurringFace Face { get; }

    /// <summary>How the strips across the boards are spaced; positions run along the boards.</summary>
    public StripLayout Spacing { get; }

    /// <summary>Every piece: strips across the boards in order, each from its start on; then trimmers by opening, sill before head; then strips along breaks.</summary>
    public IReadOnlyList<FurringPiece> Pieces { get; }

    /// <summary>How many strips lie across the boards, however many pieces each is cut into.</summary>
    public int UprightCount { get; }

    /// <summary>Running length of the strips across the boards.</summary>
    public Length UprightLength { get; }

    /// <summary>Running length of heads and sills.</summary>
    public Length TrimmerLength { get; }

    /// <summary>Running length of strips along breaks that lie along the boards.</summary>
    public Length BreakLength { get; }

    /// <summary>Running length of all pieces.</summary>
    public Length RunningLength { get; }

    /// <summary>The pieces by width and length, wide ones first, for ripping; those under 1 mm are left out.</summary>
    public IReadOnlyList<StripPart> Parts
    {
        get
        {
            Dictionary<(double Width, double Length), int> counts = [];
            foreach (FurringPiece piece in Pieces)
            {
                if (piece.WidthMm >= 1 && piece.LengthMm >= 1)
                {
                    (double, double) key = (piece.WidthMm, piece.LengthMm);
                    counts[key] = counts.TryGetValue(key, out int count) ? count + 1 : 1;
                }
            }

            List<(double Width, double Length)> keys = [.. counts.Keys];
            keys.Sort(static (one, other) => one.Width != other.Width ? other.Width.CompareTo(one.Width) : other.Length.CompareTo(one.Length));
            return [.. keys.ConvertAll(key => new StripPart(Door.Millimetres(key.Width), Door.Millimetres(key.Length)) { Count = counts[key] })];
        }
    }

    /// <summary>What to know, gravest first; the strips are checked as beams when this is first read.</summary>
    public IReadOnlyList<Finding> Findings => _findings ??= FurringFindings.Of(_numbers, this, _notes);

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem
    {
        get
        {
            foreach (Finding finding in Findings)
            {
                if (finding.Severity >= Severity.Problem)
                {
                    return true;
                }
            }

            return false;
        }
    }

    /// <summary>The defaults it rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed
    {
        get
        {
            List<DefaultUsed> defaults = [];
            Add(Face.StripSection is null, "strip-width", _numbers.Width, "mm", FurringDefaults.SectionSource);
            Add(Face.ButtJoints.Count > 0 && Face.Joint == JointStrip.Wide && Face.JointWidth is null, "joint-width", _numbers.JointWidth, "mm", FurringDefaults.JointSource);
            Add(Face.FixingSpacing is null, "fixing-spacing", _numbers.FixingSpacing, "mm", FurringDefaults.FixingSource);
            Add(true, "fixing-end", FurringDefaults.EndDistance, "mm", FurringDefaults.EndSource);
            Add(true, "overhang", FurringDefaults.Overhang, "mm", FurringDefaults.OverhangSource);
            Add(Face.LeastDistance is null, "least-distance", _numbers.LeastDistance, "mm", FurringDefaults.DistanceSource);
            Add(Face.Breaks.Count > 0 && Face.BreakLimit is null, "break-limit", BreakRule.Default, "°", BreakRule.Source);
            Add(Face.PointLoad is null, "point-load", _numbers.Load, "N", BeamDefaults.LoadSource);
            Add(true, "deflection-limit", BeamDefaults.DeflectionLimit, "mm", BeamDefaults.DeflectionSource);
            _numbers.Section.AddDefaults(defaults);
            return [.. defaults];

            void Add(bool isDefault, string name, double value, string unit, Source source)
            {
                if (isDefault)
                {
                    defaults.Add(new DefaultUsed(new Figure(name, value, unit), source));
                }
            }
        }
    }

    /// <summary>How the running length adds up.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        Solve(recorder);
        return recorder.ToWorkings("Running length of furring strips");
    }

    /// <summary>The plan as flat figures.</summary>
    /// <returns>Counts and running lengths.</returns>
    public IReadOnlyList<Figure> Figures() =>
    [
        new("strips", UprightCount, string.Empty),
        new("pieces", Pieces.Count, string.Empty),
        new("upright-length", UprightLength.Millimeters, "mm"),
        new("trimmer-length", TrimmerLength.Millimeters, "mm"),
        new("break-length", BreakLength.Millimeters, "mm"),
        new("running-length", RunningLength.Millimeters, "mm"),
    ];

    /// <summary>Counts and running length in a line, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(UprightCount)} strips, {Print.Number(Pieces.Count)} pieces, {Print.Mm(RunningLength.Millimeters)} in all";

    private double Solve<TTrace>(TTrace trace)
        where TTrace : struct, ITrace
    {
        double total = 0;
        trace.Given("L", total, "mm", Sources.FurringLayout, 0, "no piece yet");
        for (int i = 0; i < Pieces.Count; i++)
        {
            double piece = Pieces[i].LengthMm;
            trace.Given("l", piece, "mm", Sources.FurringLayout, i + 1, "length of the piece");
            total = trace.Step("L", nameof(total), total + piece, "mm", Sources.FurringLayout, i + 1);
        }

        return total;
    }
}
