using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Where the lean of a wall changes, from offsets measured up it: the straight bands, their leans, and the breaks between them.</summary>
/// <remarks>
/// Stations are read off a plumb line (or a straight batten) on the room's side: height along it, and outward from it to the wall. A lean is
/// positive where the wall comes toward the room going up, that is where the offset gets less.
/// </remarks>
public static class ProfileBreaks
{
    internal const int MostStations = 1000;

    /// <summary>Stations closer than this tell no lean: half a millimetre of reading error on one is 27°.</summary>
    private const double LeastStep = 1;

    private static readonly Allowed s_count = new(2, MostStations, "stations");
    private static readonly Allowed s_place = new(-1e4, 1e4, "mm");
    private static readonly Allowed s_penalty = new(Allowed.OneStep, 1e4, "mm²");
    private static readonly Allowed s_bands = new(1, 20, "bands");

    /// <summary>The bands and breaks with the least sum of squared residuals plus a penalty for every band: no other choice of breaks does better.</summary>
    /// <param name="stations">The stations from the foot up, 2 to 1000, each at least 1 mm above the one before; heights and offsets within -10 m to 10 m.</param>
    /// <param name="penalty">What a further band must take off the sum of squares [area], more than 0 up to 10,000 mm²; null for 4 mm², judgement.</param>
    /// <param name="bands">So many bands, 1 to 20 and fewer than the stations; null to let the penalty decide. Where given, the penalty decides nothing.</param>
    /// <returns>The profile: bands with their leans, breaks, girths.</returns>
    /// <remarks>
    /// <para>Formula: least over all breaks of sum (x - a - b h)² + c m; bands share the station at a break, and each line is the least-squares one of its band's own stations; lean = atan(-b).
    /// Compared in whole millionths of a square millimetre a band; of equals fewer bands, then the lowest first break, and so on up.</para>
    /// <para>Validity: breaks at stations only, two stations a band at least. Neighbouring lines need not meet: the mismatch is reported. A wall that bows is cut into bands too; unless their number was given, <c>geometry-profile-bow</c> says where an arc does as well.</para>
    /// <para>Source: geometry-profile-breaks (derived), geometry-girth (derived); default-profile-penalty (judgement).</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are too few or too many stations, one is outside the range or not above the one before, or the penalty or the number of bands is outside its range.</exception>
    /// <exception cref="ArgumentException">A quantity is in an undefined unit.</exception>
    /// <example><code>
    /// WallProfile wall = ProfileBreaks.Find([new(Mm(0), Mm(50)), new(Mm(100), Mm(50)), new(Mm(200), Mm(50)), new(Mm(300), Mm(40)), new(Mm(400), Mm(30))]);
    /// Length breakAt = wall.Breaks[0].Height;             // 200 mm
    /// double lean = wall.Bands[1].Lean.Degrees;           // 5.711°: atan(20/200), toward the room
    /// Length girth = wall.GirthAt(Mm(400));               // 400.998 mm: 200 + sqrt(200² + 20²)
    /// </code></example>
    public static WallProfile Find(IReadOnlyList<MeasuredPoint> stations, Area? penalty = null, int? bands = null)
    {
        (double[] heights, double[] offsets, double each) = Read(stations, penalty, bands, null);
        int[] ends = bands is { } count ? ProfileSearch.Least(heights, offsets, count) : ProfileSearch.Least(heights, offsets, ProfileSearch.Steps(each));
        return new WallProfile(heights, offsets, ends, each, penalty is null && bands is null, bands is not null);
    }

    /// <summary>All problems with the input of <see cref="Find(IReadOnlyList{MeasuredPoint}, Area?, int?)"/>; nothing is thrown.</summary>
    /// <param name="stations">As there.</param>
    /// <param name="penalty">As there.</param>
    /// <param name="bands">As there.</param>
    /// <returns>The problems; empty if there are none.</returns>
    public static IReadOnlyList<InputProblem> Check(IReadOnlyList<MeasuredPoint> stations, Area? penalty = null, int? bands = null)
    {
        List<InputProblem> problems = [];
        Read(stations, penalty, bands, problems);
        return problems;
    }

    private static (double[] Heights, double[] Offsets, double Penalty) Read(IReadOnlyList<MeasuredPoint> stations, Area? penalty, int? bands, List<InputProblem>? problems)
    {
        (double[] heights, double[] offsets) = ReadStations(stations, problems);
        double each = penalty is { } given ? Door.SquareMillimetres(given, nameof(penalty), s_penalty, problems) : ProfileDefaults.Penalty;
        if (bands is { } count && Door.Number(count, nameof(bands), s_bands, problems) >= heights.Length && heights.Length > 0)
        {
            Door.Report(new InputProblem(nameof(bands), Print.Number(count) + " bands", $"fewer than the {Print.Number(heights.Length)} stations", isRange: true), problems);
        }

        return (heights, offsets, each);
    }

    private static (double[] Heights, double[] Offsets) ReadStations(IReadOnlyList<MeasuredPoint> stations, List<InputProblem>? problems)
    {
        if (Door.IsMissing(stations, new Name(nameof(stations)), "a list of stations", problems))
        {
            return ([], []);
        }

        int count = stations.Count;
        if (!s_count.Holds(count))
        {
            Door.Report(new InputProblem(nameof(stations), Print.Number(count) + " stations", s_count.ToString(), isRange: true), problems);
            return ([], []);
        }

        double[] heights = new double[count], offsets = new double[count];
        for (int i = 0; i < count; i++)
        {
            heights[i] = Door.Millimetres(stations[i].Along, new Name(nameof(stations), i, ".Along"), s_place, problems);
            offsets[i] = Door.Millimetres(stations[i].Offset, new Name(nameof(stations), i, ".Offset"), s_place, problems);
            if (i > 0 && Grid.Snap(heights[i] - heights[i - 1]) < LeastStep)
            {
                Door.Report(
                    new InputProblem(new Name(nameof(stations), i, ".Along").ToString(), Print.Mm(heights[i]), $"{Print.Number(LeastStep)} mm or more above the station before, at {Print.Mm(heights[i - 1])}", isRange: true),
                    problems);
            }
        }

        return (heights, offsets);
    }
}
