using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>The bands, breaks and girths of a measured wall: what <see cref="ProfileBreaks"/> answers.</summary>
public sealed class WallProfile
{
    private static readonly Allowed s_distance = new(0, 1000, "mm");

    private readonly double[] _heights, _girths;
    private readonly double _squares, _penalty;
    private readonly bool _isDefaultPenalty;
    private readonly int _readings;

    internal WallProfile(double[] heights, double[] offsets, int[] ends, double penalty, bool isDefaultPenalty, bool isCountGiven)
    {
        _heights = heights;
        _penalty = penalty;
        _isDefaultPenalty = isDefaultPenalty;
        _girths = new double[heights.Length];
        List<Length> girths = new(heights.Length) { Door.Millimetres(0) };
        for (int i = 1; i < heights.Length; i++)
        {
            double rise = heights[i] - heights[i - 1], outward = offsets[i] - offsets[i - 1];
            _girths[i] = _girths[i - 1] + Math.Sqrt((rise * rise) + (outward * outward));
            girths.Add(Door.Millimetres(Grid.Snap(_girths[i])));
        }

        List<ProfileBand> bands = new(ends.Length - 1);
        List<ProfileBreak> breaks = new(ends.Length);
        for (int band = 0; band + 1 < ends.Length; band++)
        {
            int first = ends[band], last = ends[band + 1];
            ProfileLine line = new(heights, offsets, first, last);
            _squares += line.Squares;
            _readings += last - first + 1;
            if (band > 0)
            {
                breaks.Add(new ProfileBreak(bands[band - 1].Line, line, _girths[first], Math.Max(heights[first] - heights[first - 1], heights[first + 1] - heights[first])));
            }

            bands.Add(new ProfileBand(line, _girths[first], _girths[last]));
        }

        GirthAtStations = [.. girths];
        Bands = [.. bands];
        Breaks = [.. breaks];
        Findings = Finding.GravestFirst(Find(isCountGiven ? [] : ProfileBow.Find(heights, offsets, Bands, Breaks, penalty)));
    }

    /// <summary>The bands from the foot up, one at least.</summary>
    public IReadOnlyList<ProfileBand> Bands { get; }

    /// <summary>The breaks between them from the foot up, one fewer than the bands.</summary>
    public IReadOnlyList<ProfileBreak> Breaks { get; }

    /// <summary>Girth at each station in the order given, straight from station to station; 0 at the first.</summary>
    public IReadOnlyList<Length> GirthAtStations { get; }

    /// <summary>Girth of the whole profile.</summary>
    public Length Girth => GirthAtStations[GirthAtStations.Count - 1];

    /// <summary>Sum of squared residuals over the bands; a station at a break counts in both.</summary>
    public Area SumOfSquares => new(_squares, UnitsNet.Units.AreaUnit.SquareMillimeter);

    /// <summary>The penalty of a band.</summary>
    public Area Penalty => new(_penalty, UnitsNet.Units.AreaUnit.SquareMillimeter);

    /// <summary>What was made least: sum of squares plus the penalty of every band.</summary>
    public Area Objective => new(_squares + (_penalty * Bands.Count), UnitsNet.Units.AreaUnit.SquareMillimeter);

    /// <summary>Root of the mean squared residual; a station at a break counts in both bands.</summary>
    public Length RootMeanSquare => Door.Millimetres(Grid.Snap(Math.Sqrt(_squares / _readings)));

    /// <summary>What should be known about the profile, gravest first.</summary>
    /// <remarks>Codes: <c>geometry-profile-mismatch</c>, <c>geometry-profile-station-off</c>, <c>geometry-profile-bow</c>, <c>geometry-profile-two-stations</c>, <c>geometry-profile-slight-change</c>, <c>geometry-profile-break-place</c>.</remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem => Findings.Count > 0 && Findings[0].Severity >= Severity.Problem;

    /// <summary>The penalty, where it was not given and decided.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed => _isDefaultPenalty ? [new DefaultUsed(new Figure("penalty", _penalty, "mm2"), ProfileDefaults.PenaltySource)] : [];

    /// <summary>Girth from the first station up to a height, straight from station to station.</summary>
    /// <param name="height">Height [length], from the first station to the last.</param>
    /// <returns>The girth.</returns>
    /// <exception cref="ArgumentException">The height is outside the stations or in an undefined unit.</exception>
    public Length GirthAt(Length height) =>
        Door.Millimetres(Grid.Snap(Between(Door.Millimetres(height, nameof(height), new Allowed(_heights[0], _heights[_heights.Length - 1], "mm"), null), _heights, _girths)));

    /// <summary>The height at a girth: the way back.</summary>
    /// <param name="girth">Girth from the first station [length], from 0 to that of the last.</param>
    /// <returns>The height.</returns>
    /// <exception cref="ArgumentException">The girth is outside the profile or in an undefined unit.</exception>
    public Length HeightAt(Length girth) =>
        Door.Millimetres(Grid.Snap(Between(Door.Millimetres(girth, nameof(girth), new Allowed(0, Grid.Snap(_girths[_girths.Length - 1]), "mm"), null), _girths, _heights)));

    /// <summary>
    /// The girth at which a place of the wall lies on a surface in front of it, such as the faces of the boards: a hollow turns sooner there, a ridge later. <see cref="CourseFace"/> is asked for heights over the faces.
    /// </summary>
    /// <param name="girth">Girth of the place on the wall [length], from 0 to that of the last station.</param>
    /// <param name="distance">From the wall to the surface, square to it toward the room [length], 0 to 1 m, and so little that it leaves something of every band.</param>
    /// <returns>
    /// The girth over that surface from its foot, square before the wall's: less 2 t tan(delta/2) for each break of change delta below, t the distance; at a break itself half of that. What of the wall lies nearer to a hollow than
    /// t tan(delta/2) lies at the break; over a ridge the surface is as much longer on either side.
    /// </returns>
    /// <remarks>Bands are taken as flat. A band that bows by a turn of phi in all, from its foot to its head, takes t phi more where it is hollow to the room, and as much less where it bulges into it: 5 degrees at 25.4 mm are 2.2 mm. Nothing of it is in the answer.</remarks>
    /// <exception cref="ArgumentException">The girth is outside the profile, the distance outside its range or too much for a band, or one of them in an undefined unit.</exception>
    public Length GirthInFront(Length girth, Length distance)
    {
        double place = Door.Millimetres(girth, nameof(girth), new Allowed(0, Grid.Snap(_girths[_girths.Length - 1]), "mm"), null);
        double away = Door.Millimetres(distance, nameof(distance), s_distance, null);
        double front = place, before = 0, takenBefore = 0;
        for (int i = 0; i <= Breaks.Count; i++)
        {
            bool isHead = i == Breaks.Count;
            double at = isHead ? _girths[_girths.Length - 1] : Door.Millimetres(Breaks[i].Girth);
            double takes = isHead ? 0 : away * Math.Tan(Breaks[i].Change * (Math.PI / 360));
            if (at - before - takenBefore - takes <= 0)
            {
                throw new InputProblem(nameof(distance), Print.Number(away) + " mm", $"so little that the breaks beside it leave something of band {Print.Number(i)}, {Print.Mm(Grid.Snap(at - before))} wide", isRange: true).ToException();
            }

            double above = Grid.Snap(place - at);
            front -= takes > 0 ? Math.Min(Math.Max(above + takes, 0), 2 * takes) : above > 0 ? 2 * takes : above == 0 ? takes : 0;
            (before, takenBefore) = (at, takes);
        }

        return Door.Millimetres(Grid.Snap(front));
    }

    /// <summary>How the leans, the mismatches and what was made least follow from each band's stations, step by step. Which stations a band has is a search.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        Work(recorder);
        return recorder.ToWorkings("Bands of a measured profile");
    }

    /// <summary>The profile as flat figures.</summary>
    /// <returns>Stations, bands, sum of squares, penalty, objective, root mean square, girth, least and greatest lean; where there are breaks the greatest change of lean and the greatest mismatch, each by size with its sign.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        double least = double.MaxValue, greatest = double.MinValue, change = 0, mismatch = 0;
        foreach (ProfileBand band in Bands)
        {
            least = Math.Min(least, band.Line.LeanDegrees);
            greatest = Math.Max(greatest, band.Line.LeanDegrees);
        }

        foreach (ProfileBreak at in Breaks)
        {
            change = Math.Abs(at.Change) > Math.Abs(change) ? at.Change : change;
            mismatch = Math.Abs(at.Gap) > Math.Abs(mismatch) ? at.Gap : mismatch;
        }

        List<Figure> figures =
        [
            new("stations", _heights.Length, string.Empty), new("bands", Bands.Count, string.Empty), new("sum-of-squares", _squares, "mm2"), new("penalty", _penalty, "mm2"),
            new("objective", _squares + (_penalty * Bands.Count), "mm2"), new("root-mean-square", RootMeanSquare.Value, "mm"), new("girth", Girth.Value, "mm"), new("least-lean", least, "deg"), new("greatest-lean", greatest, "deg"),
        ];
        if (Breaks.Count > 0)
        {
            figures.Add(new Figure("greatest-lean-change", change, "deg"));
            figures.Add(new Figure("greatest-mismatch", Grid.Snap(mismatch), "mm"));
        }

        return figures;
    }

    /// <summary>The bands with their leans, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Bands.Count)} bands: " + string.Join("; ", Bands);

    /// <summary>Straight between the two neighbours in a list that rises.</summary>
    private static double Between(double at, double[] from, double[] to)
    {
        int i = Array.BinarySearch(from, at);
        if (i >= 0)
        {
            return to[i];
        }

        i = Math.Min(Math.Max(~i, 1), from.Length - 1); // a girth is handed out on the grid, so the last one may come back a step beyond
        return to[i - 1] + ((at - from[i - 1]) / (from[i] - from[i - 1]) * (to[i] - to[i - 1]));
    }

    private void Work<TTrace>(TTrace trace)
        where TTrace : struct, ITrace
    {
        double headBelow = 0, leanBelow = 0;
        for (int band = 0; band < Bands.Count; band++)
        {
            (_, double lean, double foot, double head) = Bands[band].Line.Solve(trace, band);
            if (band > 0)
            {
                trace.Given("x_below", headBelow, "mm", Sources.ProfileBreaks, band, "offset of the line below at the break");
                trace.Given("phi_below", leanBelow, "rad", Sources.ProfileBreaks, band, "lean of the band below");
                trace.Step("m", "mismatch", foot - headBelow, "mm", Sources.ProfileBreaks, band);
                trace.Step("delta", "change", lean - leanBelow, "rad", Sources.ProfileBreaks, band);
            }

            (headBelow, leanBelow) = (head, lean);
        }

        double squares = _squares, penalty = _penalty, bands = Bands.Count, readings = _readings;
        trace.Given("Q", squares, "mm2", Sources.ProfileBreaks, meaning: "least sum of squared residuals");
        trace.Given("c", penalty, "mm2", _isDefaultPenalty ? ProfileDefaults.PenaltySource : Sources.Given, meaning: "penalty of a band");
        trace.Given("n_bands", bands, string.Empty, Sources.ProfileBreaks, meaning: "bands");
        trace.Given("n", readings, string.Empty, Sources.ProfileBreaks, meaning: "residuals: stations, those at breaks twice");
        trace.Step("J", "objective", squares + (penalty * bands), "mm2", Sources.ProfileBreaks);
        trace.Step("e_rms", "rootMeanSquare", Math.Sqrt(squares / readings), "mm", Sources.ProfileBreaks);
    }

    private List<Finding> Find(List<ProfileBow> bows)
    {
        List<Finding> findings = [];
        foreach (ProfileBow bow in bows)
        {
            double from = Bands[bow.First].Line.FromHeight, to = Bands[bow.Last].Line.ToHeight;
            int bands = bow.Last - bow.First + 1;
            findings.Add(new Finding(
                "geometry-profile-bow",
                Severity.Caution,
                $"From {Print.Mm(from)} to {Print.Mm(to)} one arc fits as well as the {Print.Number(bands)} bands there (squares of {Print.Round(bow.ArcSquares, 2)} mm² against {Print.Round(bow.BandSquares, 2)} mm²): the wall may bow rather than break {(bands == 2 ? "between them" : "where they meet")}. Fit a circle to these stations, and end no course at such a break before it is looked at.",
                [new("from-height", from, "mm"), new("to-height", to, "mm"), new("bands", bands, string.Empty), new("arc-squares", bow.ArcSquares, "mm2"), new("band-squares", bow.BandSquares, "mm2"), new("penalty", _penalty, "mm2")],
                ProfileDefaults.Bow));
        }

        double within = 0;
        for (int i = 0; i < Breaks.Count; i++)
        {
            ProfileBreak at = Breaks[i];
            double height = at.Height.Value;
            within = Math.Max(within, at.Within);
            if (Grid.Snap(Math.Abs(at.Gap)) > ProfileDefaults.MismatchLimit)
            {
                findings.Add(new Finding(
                    "geometry-profile-mismatch",
                    Severity.Caution,
                    $"At {Print.Mm(height)} the bands below and above miss each other by {Print.Mm(Math.Abs(at.Gap))}, more than {Print.Number(ProfileDefaults.MismatchLimit)} mm. The break lies elsewhere, a reading there is wrong, or the wall steps: measure around it again.",
                    [new("height", height, "mm"), new("mismatch", at.Gap, "mm"), new("limit", ProfileDefaults.MismatchLimit, "mm")],
                    ProfileDefaults.Mismatch));
            }

            if (Math.Abs(at.Change) < ProfileDefaults.SlightChange)
            {
                findings.Add(new Finding(
                    "geometry-profile-slight-change",
                    Severity.Note,
                    $"At {Print.Mm(height)} the lean changes by {Print.Round(at.Change, 2)}° only: the wall may bow there rather than break. A circle through its stations tells.",
                    [new("height", height, "mm"), new("lean-change", at.Change, "deg"), new("limit", ProfileDefaults.SlightChange, "deg")],
                    ProfileDefaults.Slight));
            }
        }

        foreach (ProfileBand band in Bands)
        {
            if (band.Stations == 2)
            {
                findings.Add(new Finding(
                    "geometry-profile-two-stations",
                    Severity.Caution,
                    $"The band from {Print.Mm(band.Line.FromHeight)} to {Print.Mm(band.Line.ToHeight)} has two stations only: a line goes through any two, so nothing tells whether it is straight or well measured. Measure one between.",
                    [new("from-height", band.Line.FromHeight, "mm"), new("to-height", band.Line.ToHeight, "mm")],
                    Sources.ProfileBreaks));
            }
            else if (Grid.Snap(Math.Abs(band.Line.GreatestResidual)) > ProfileDefaults.StationOffLimit)
            {
                findings.Add(new Finding(
                    "geometry-profile-station-off",
                    Severity.Caution,
                    $"Station {Print.Number(band.FarthestStation)} (counted from 0), at {Print.Mm(_heights[band.FarthestStation])}, lies {Print.Mm(Math.Abs(band.Line.GreatestResidual))} off its band's line, more than {Print.Number(ProfileDefaults.StationOffLimit)} mm: the band bows, or the reading is wrong.",
                    [new("station", band.FarthestStation, string.Empty), new("height", _heights[band.FarthestStation], "mm"), new("residual", band.Line.GreatestResidual, "mm"), new("limit", ProfileDefaults.StationOffLimit, "mm")],
                    ProfileDefaults.StationOff));
            }
        }

        if (Breaks.Count > 0)
        {
            findings.Add(new Finding(
                "geometry-profile-break-place",
                Severity.Note,
                $"Breaks are looked for at stations only: a real one may lie anywhere up to the next station, {Print.Mm(within)} off at most. Measure closer around a break that decides where a course ends.",
                [new("breaks", Breaks.Count, string.Empty), new("greatest-distance", within, "mm")],
                Sources.ProfileBreaks));
        }

        return findings;
    }
}
