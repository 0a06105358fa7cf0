using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>What holds a sheet to an arc: what <see cref="HoldDown.OnArc(HoldDownCase)"/> answers.</summary>
/// <remarks><see cref="HoldDown.OnArc(HoldDownCase)"/> makes one.</remarks>
public sealed class HoldDownResult
{
    private readonly HeldSheet _held;
    private readonly BendQuestion _question;
    private readonly BendNumbers _numbers;
    private readonly EdgeNumbers _edge;
    private readonly BeamPlace _room, _past;
    private readonly double _ratio, _overhang;
    private readonly int _pullRow;

    internal HoldDownResult(HoldDownCase panel, in HeldSheet held)
    {
        Panel = panel;
        _held = held;
        ArcRows rows = held.Rows;
        double scale = held.IsFlat ? 0 : held.Limit.Stiffness / held.Middle * (held.Wall < 0 ? -1 : 1);
        if (held.OnBulge)
        {
            _edge = held.Edge(default(Silent));
            _ratio = _edge.Ratio;
            _question = new BendQuestion(held.Limit, held.Wall, _ratio, Sources.EdgeLift);
        }
        else
        {
            _ratio = held.IsFlat ? 0 : rows.Ratio;
            _question = new BendQuestion(held.Limit, held.Wall, _ratio, Sources.HoldDownRows);
        }

        RowPull[] pulls = new RowPull[rows.RowCount];
        for (int i = 0; i < pulls.Length; i++)
        {
            bool edge = i == 0 || i == pulls.Length - 1;
            double pull = held.OnBulge ? (edge ? _edge.Pull : 0) : scale * rows.Pull(i);
            pulls[i] = new RowPull(rows.Position(i), pull, held.Width, held.Capacity, held.Fixings);
            _pullRow = pulls[i].Newtons > pulls[_pullRow].Newtons * (1 + 1e-12) ? i : _pullRow;
        }

        Rows = [.. pulls];
        for (int bay = 0; bay < pulls.Length - 1 && !held.IsFlat && !held.OnBulge; bay++)
        {
            (BeamPlace room, BeamPlace past) = rows.Departures(bay);
            if (held.Wall < 0)
            {
                (room, past) = (new BeamPlace(bay, past.Distance, -past.Value), new BeamPlace(bay, room.Distance, -room.Value));
            }

            // Equal but for the last bits is equal: the first of a symmetrical pair.
            _room = room.Value < _room.Value * (1 + 1e-9) ? room : _room;
            _past = past.Value > _past.Value * (1 + 1e-9) ? past : _past;
        }

        _overhang = Overhang(held);
        _numbers = _question.Solve(default(Silent));
        Findings = PanelFindings.OfHoldDown(this, held, _question, _numbers, _edge, _overhang);
        DefaultsUsed = Defaults(held);
    }

    /// <summary>What was asked.</summary>
    public HoldDownCase Panel { get; }

    /// <summary>Every row with its pull, in order.</summary>
    public IReadOnlyList<RowPull> Rows { get; }

    /// <summary>The greatest pull of a row over the whole width; zero where none pulls.</summary>
    public Force GreatestPull => Door.Newtons(Math.Max(0, Rows[_pullRow].Newtons));

    /// <summary>Where it is, from the sheet's edge; null where no row pulls.</summary>
    public Length? GreatestPullAt => Rows[_pullRow].OnlyBears ? null : Rows[_pullRow].Position;

    /// <summary>
    /// The fewest fixings of the row that needs most, at the capacity given, its pull shared evenly; laid out, inner ones have more and it may take more: <see cref="PanelFixings"/> places them. 0 where no row
    /// pulls; null without a capacity or where no practical number holds.
    /// </summary>
    public int? FixingsNeededPerRow => Rows[_pullRow].FixingsNeeded;

    /// <summary>Greatest curvature of the sheet over that of the arc; 0 where the surface is flat or two rows leave the sheet straight.</summary>
    public double CurvatureRatio => _ratio;

    /// <summary>Greatest curvature of the sheet, without sign; 0 where it stays straight.</summary>
    public ReciprocalLength GreatestCurvature => ReciprocalLength.FromInverseMillimeters(double.IsNaN(_numbers.Peak) ? 0 : 1 / _numbers.Peak);

    /// <summary>The row where it is, the first of equal ones; the middle between the edges on a bulging surface under the whole sheet; null where the sheet stays straight.</summary>
    public Length? GreatestCurvatureAt => double.IsNaN(_numbers.Peak) ? null
        : Door.Millimetres(Grid.Snap(_held.OnBulge ? _held.Rows.Position(0) + _held.Half : _held.Rows.Position(_held.Rows.PeakRow)));

    /// <summary>One over the greatest curvature: the radius, to the sheet's middle, that must pass the sheet's minimum. Null where the sheet stays straight.</summary>
    public Length? PeakRadius => Mm(_numbers.Peak);

    /// <summary>Radius of the arc through the sheet's middle, without sign; null where the surface is flat.</summary>
    public Length? MiddleRadius => Mm(_numbers.Middle);

    /// <summary>The radius that the sheet must not undercut, elastic or published, the greater.</summary>
    public Length MinimumRadius => Door.Millimetres(Grid.Snap(_numbers.Minimum));

    /// <summary>Whether the peak radius is no less than the minimum radius, and the rows hold the sheet to the arc within the reach of the formula.</summary>
    public bool Follows => _numbers.Passes && !_held.Reach(_edge).IsOutside;

    /// <summary>How far the sheet stands off the arc into the room at most: between rows, or at an outer row on a bulging surface under the whole sheet. Beyond the outer rows see <see cref="EdgeOffArc"/>.</summary>
    public Length StandOff => Door.Millimetres(Grid.Snap(_held.OnBulge ? _edge.Lift : -_room.Value / Radius));

    /// <summary>Where that is, from the sheet's edge; null where it stands off nowhere.</summary>
    public Length? StandOffAt => _held.OnBulge ? (_edge.Lift > 0 ? Rows[0].Position : null) : At(_room);

    /// <summary>How far an edge beyond an outer row leaves the arc, outward where the wall is hollow, into the room where it bulges; 0 where none is beyond.</summary>
    public Length EdgeOffArc => Door.Millimetres(Grid.Snap(Math.Max(0, _overhang)));

    /// <summary>How far the sheet passes the arc toward the shell at most, between rows; needs that much room behind it.</summary>
    public Length PastArc => Door.Millimetres(Grid.Snap(_past.Value / Radius));

    /// <summary>Where that is, from the sheet's edge; null where it passes the arc nowhere.</summary>
    public Length? PastArcAt => At(_past);

    /// <summary>Length at each edge that lifts off a bulging surface under the whole sheet; null elsewhere.</summary>
    public Length? LiftedLength => _held.OnBulge ? Door.Millimetres(Grid.Snap(_edge.Length)) : null;

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

    /// <summary>What a person should know about the answer, gravest first.</summary>
    /// <remarks>
    /// Codes: <c>panels-bend-too-tight</c>, <c>panels-fixings-pull-out</c>, <c>panels-not-held</c>, <c>panels-bay-too-long</c>, <c>panels-past-arc</c>, <c>panels-overhang</c>,
    /// <c>panels-bay-not-shallow</c>, <c>panels-fixing-capacity-unknown</c>, <c>panels-fixings-shared</c>, <c>panels-springs-back</c>, <c>panels-bend-factor-low</c>, <c>panels-row-only-bears</c>,
    /// <c>panels-stands-off</c>, <c>panels-edge-lifts</c>, <c>panels-published-condition</c>, <c>panels-allowable-strength</c>, <c>panels-bend-dry</c>, <c>panels-look-behind</c>, <c>panels-cutting-dust</c>.
    /// </remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The defaults that the answer rests on.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed { get; }

    private double Radius => _held.IsFlat ? 1 : _held.Middle;

    /// <summary>How the peak radius, the greatest pull and the furthest stand-off come about, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        if (_held.OnBulge)
        {
            _held.Edge(recorder);
        }
        else if (!_held.IsFlat)
        {
            _held.ExplainRows(recorder, _pullRow, -_room.Value >= _past.Value ? _room : _past);
        }

        _question.Solve(recorder);
        return recorder.ToWorkings("Sheet held to an arc");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Follows (1 or 0), the worst severity as the number of its enumeration, rows, rows that pull, greatest pull, curvature ratio, radii, stand-off, passing the arc, edge off the arc, fixings.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        int pulling = 0;
        foreach (RowPull row in Rows)
        {
            pulling += row.OnlyBears ? 0 : 1;
        }

        List<Figure> figures =
        [
            new("follows", Follows ? 1 : 0, string.Empty),
            PanelFindings.Worst(Findings),
            new("rows", Rows.Count, string.Empty),
            new("rows-pulling", pulling, string.Empty),
            new("greatest-pull", Math.Max(0, Rows[_pullRow].Newtons), "N"),
            new("curvature-ratio", _ratio, string.Empty),
            new("minimum-radius", Door.Millimetres(MinimumRadius), "mm"),
            new("stand-off", Door.Millimetres(StandOff), "mm"),
            new("past-arc", Door.Millimetres(PastArc), "mm"),
            new("edge-off-arc", Door.Millimetres(EdgeOffArc), "mm"),
        ];
        PanelFindings.AddFigure(figures, "middle-radius", _numbers.Middle, "mm");
        PanelFindings.AddFigure(figures, "peak-radius", _numbers.Peak, "mm");
        PanelFindings.AddFigure(figures, "lifted-length", _held.OnBulge ? _edge.Length : double.NaN, "mm");
        PanelFindings.AddFigure(figures, "fixings-needed", FixingsNeededPerRow ?? double.NaN, string.Empty);
        return figures;
    }

    /// <summary>Pull, peak radius and verdict, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => double.IsNaN(_numbers.Peak)
        ? $"{PanelFindings.SheetWords(Panel.Sheet)} stays straight: nothing holds it to an arc"
        : $"{PanelFindings.SheetWords(Panel.Sheet)} in {Print.Number(Rows.Count)} rows: peaks at {Print.Mm(_numbers.Peak)}, {(Follows ? "allowed" : "too tight: allowed")} is {Print.MmUp(_numbers.Minimum)}; a row pulls up to {Print.Round(Math.Max(0, Rows[_pullRow].Newtons), 2)} N";

    private static Length? Mm(double millimetres) => double.IsNaN(millimetres) ? null : Door.Millimetres(Grid.Snap(millimetres));

    private static IReadOnlyList<DefaultUsed> Defaults(in HeldSheet held)
    {
        List<DefaultUsed> defaults = [];
        if (held.Limit.FactorIsDefault)
        {
            defaults.Add(held.Limit.DefaultFactorUsed);
        }

        if (held.OnBulge && held.LiftIsDefault)
        {
            defaults.Add(new DefaultUsed(new Figure("edge-lift", HoldDown.DefaultEdgeLift, "mm"), Sources.EdgeLiftLimit));
        }

        return [.. defaults];
    }

    /// <summary>The greater of what runs past the arc beyond an outer row on a hollow surface, or lifts off a bulging one; 0 where nothing overhangs.</summary>
    private double Overhang(in HeldSheet held)
    {
        if (held.IsFlat)
        {
            return 0;
        }

        double before = held.Rows.Position(0), after = double.IsNaN(held.Girth) ? 0 : held.Girth - held.Rows.Position(held.Rows.RowCount - 1);
        if (held.OnBulge)
        {
            double beyond = Math.Max(before, after);
            return beyond > 0 ? _edge.Beyond(beyond, held.Middle) : 0;
        }

        return Math.Max(before > 0 ? held.Rows.Overhang(first: true, before) : 0, after > 0 ? held.Rows.Overhang(first: false, after) : 0) / held.Middle;
    }

    private Length? At(BeamPlace place) => place.Value == 0 ? null : Door.Millimetres(Grid.Snap(_held.Rows.Position(place.Span) + place.Distance));
}
