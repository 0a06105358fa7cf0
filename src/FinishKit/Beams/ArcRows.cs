using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>
/// A sheet, flat by nature, held to an arc at rows: a beam on supports displaced to the arc. Solved once for stiffness 1 and a hollow
/// arc of curvature 1; moments, forces and departures scale with both.
/// </summary>
/// <remarks>
/// Small rise, in coordinates along the sheet: the departure w from the arc has w'' = curvature of the arc - M/(E I). Departures are
/// positive toward the shell (past the arc), negative into the room; for a bulging arc the sign turns.
/// </remarks>
internal sealed class ArcRows
{
    /// <summary>A bay of this share of the radius is where the small-rise formula is about 1% off.</summary>
    internal const double GreatestShare = 0.4;

    /// <summary>No rows of any spacing bend a sheet more than this share over the arc; see <see cref="Sources.WorstRows"/>.</summary>
    internal const double WorstRatio = 1.5;

    internal static readonly Allowed Girth = new(1, 1e5, "mm");
    internal static readonly Allowed Count = new(2, MostRows, string.Empty);

    internal const int MostRows = 50;

    private static readonly Allowed s_position = new(0, 1e5, "mm");

    private readonly BeamLine _beam;
    private readonly double[] _positions;

    internal ArcRows(double[] positions)
    {
        _positions = positions;
        double[] spans = new double[positions.Length - 1], arc = new double[positions.Length];
        double start = positions[0], end = positions[positions.Length - 1];
        for (int i = 0; i < positions.Length; i++)
        {
            arc[i] = (positions[i] - start) * (end - positions[i]) / 2;
            if (i > 0)
            {
                spans[i - 1] = positions[i] - positions[i - 1];
            }
        }

        _beam = new BeamLine(spans, 1, arc);
        PeakRow = 0;
        for (int i = 1; i < positions.Length - 1; i++)
        {
            // Equal but for the last bits is equal: the first of a symmetrical pair.
            if (Moment(i) > Moment(PeakRow) * (1 + 1e-12))
            {
                PeakRow = i;
            }
        }
    }

    internal int RowCount => _positions.Length;

    /// <summary>The row of greatest curvature: between rows it only falls off.</summary>
    internal int PeakRow { get; }

    /// <summary>Greatest curvature over that of the arc; 0 where two rows leave the sheet straight.</summary>
    internal double Ratio => Moment(PeakRow);

    internal double LongestBay
    {
        get
        {
            double longest = 0;
            for (int i = 1; i < _positions.Length; i++)
            {
                longest = Math.Max(longest, Span(i - 1));
            }

            return longest;
        }
    }

    /// <summary>Where the sheet ends if nothing else is said.</summary>
    internal double End => _positions[_positions.Length - 1];

    internal double Position(int row) => _positions[row];

    internal double Span(int bay) => _positions[bay + 1] - _positions[bay];

    /// <summary>Moment over a row for stiffness and curvature 1: curvature there over that of the arc.</summary>
    internal double Moment(int row) => _beam.Moments[row];

    /// <summary>Pull toward the shell at a row of a hollow arc, for stiffness and curvature 1; negative where the row bears. Noise is none.</summary>
    internal double Pull(int row)
    {
        double pull = -_beam.Reactions[row];
        return Math.Abs(pull) * LongestBay < 1e-9 ? 0 : pull;
    }

    /// <summary>The furthest departures of a bay from the arc: into the room (0 or less) and past it (0 or more), for curvature 1.</summary>
    internal (BeamPlace Room, BeamPlace Past) Departures(int bay)
    {
        SpanState state = new(Span(bay), 1, 0, [], bay) { LeftMoment = Moment(bay) - 1, RightMoment = Moment(bay + 1) - 1 };
        (double first, double second, double third) = state.Level(0, state.Length, 0);
        BeamPlace room = new(bay, 0, 0), past = room;
        foreach (double x in new[] { first, second, third })
        {
            if (!double.IsNaN(x))
            {
                double sag = state.Sag(x);
                room = sag < room.Value ? new BeamPlace(bay, x, sag) : room;
                past = sag > past.Value ? new BeamPlace(bay, x, sag) : past;
            }
        }

        return (room, past);
    }

    /// <summary>How far a free edge a distance beyond an outer row runs past the arc, for curvature 1: the sheet goes straight on there.</summary>
    internal double Overhang(bool first, double distance)
    {
        int bay = first ? 0 : RowCount - 2;
        SpanState state = new(Span(bay), 1, 0, [], bay) { LeftMoment = Moment(bay) - 1, RightMoment = Moment(bay + 1) - 1 };
        double slope = first ? -state.Slope(0) : state.Slope(state.Length);
        return (slope * distance) + (distance * distance / 2);
    }

    /// <summary>Positions of rows; null where a problem was reported. The list is not walked where its count is refused.</summary>
    internal static double[]? Read(IReadOnlyList<Length>? rows, string name, List<InputProblem>? problems)
    {
        if (rows is null)
        {
            Door.IsMissing(rows, new Name(name), "2 to 50 positions of rows, ascending", problems);
            return null;
        }

        if (rows.Count is < 2 or > MostRows)
        {
            Door.Report(new InputProblem(name, FormattableString.Invariant($"a list of {rows.Count}"), "2 to 50 positions of rows, ascending", isRange: true), problems);
            return null;
        }

        double[] positions = new double[rows.Count];
        bool good = true;
        for (int i = 0; i < positions.Length; i++)
        {
            positions[i] = Door.Millimetres(rows[i], new Name(name, i), s_position, problems);
            good &= !double.IsNaN(positions[i]);
            if (i > 0 && positions[i] < Grid.Snap(positions[i - 1] + 1))
            {
                Door.Report(new InputProblem(new Name(name, i).ToString(), Print.Number(positions[i]) + " mm", $"at least 1 mm beyond the row before, at {Print.Number(positions[i - 1])} mm", isRange: true), problems);
                good = false;
            }
        }

        return good ? positions : null;
    }

    /// <summary>
    /// Greatest curvature over that of the arc, and what it rests on. A bulging surface under the whole sheet bends it as itself;
    /// a hollow one behind the whole sheet keeps it tangent at each inner row, which bends it as the worst rows do; rows unknown are taken for the worst.
    /// </summary>
    internal static (double Ratio, Source Source) RatioOf(ArcRows? rows, bool bulges, SheetBacking backing) =>
        bulges && backing == SheetBacking.AllOver ? (1, Sources.EdgeLift)
        : rows is null ? (WorstRatio, Sources.WorstRows)
        : rows.RowCount > 2 && backing == SheetBacking.AllOver ? (WorstRatio, Sources.BackedHollow)
        : (rows.Ratio, Sources.HoldDownRows);
}

/// <summary>One row of fixings of a bent sheet: where it is and what it has to hold.</summary>
public sealed class RowPull
{
    internal RowPull(double position, double newtonsPerMillimetre, double width, double capacity, int fixings)
    {
        PositionMm = position;
        Newtons = newtonsPerMillimetre * width;
        Position = Door.Millimetres(position);
        PullPerWidth = new ForcePerLength(newtonsPerMillimetre, UnitsNet.Units.ForcePerLengthUnit.NewtonPerMillimeter);
        OnlyBears = newtonsPerMillimetre <= 0;
        if (OnlyBears)
        {
            FixingsNeeded = 0;
            return;
        }

        if (fixings > 0)
        {
            PullPerFixing = Door.Newtons(Newtons / fixings);
        }

        // A hundred thousand fixings in a row are no answer.
        if (capacity > 0 && Grid.CeilingOfRatio(Newtons, capacity) is var needed && needed <= 1e5)
        {
            FixingsNeeded = (int)needed;
        }
    }

    /// <summary>Position from the sheet's edge, on the flat sheet.</summary>
    public Length Position { get; }

    /// <summary>What the row's fixings pull toward the shell over the whole width; zero or negative where the row only bears.</summary>
    public Force Pull => Door.Newtons(Newtons);

    /// <summary>The same per width.</summary>
    public ForcePerLength PullPerWidth { get; }

    /// <summary>Whether the row needs no fixing to hold the curve: the sheet presses on it, or nothing does.</summary>
    public bool OnlyBears { get; }

    /// <summary>Pull of one of the fixings given, the row's shared evenly: an inner one of a row has more; null where none were given or the row only bears.</summary>
    public Force? PullPerFixing { get; }

    /// <summary>Fixings it takes at the least at the capacity given, the pull shared evenly; 0 where the row only bears; null without a capacity or where no practical number holds.</summary>
    public int? FixingsNeeded { get; }

    internal double PositionMm { get; }

    internal double Newtons { get; }

    /// <summary>Position and pull, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => OnlyBears
        ? $"row at {Print.Mm(PositionMm)}: bears with {Print.Round(-Newtons, 2)} N"
        : $"row at {Print.Mm(PositionMm)}: pulls {Print.Round(Newtons, 2)} N";
}
