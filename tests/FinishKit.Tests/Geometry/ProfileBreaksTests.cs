using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using FsCheck.Xunit;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Geometry;

/// <summary>Bands against hand-worked walls, and against every choice of breaks tried one by one with whole-number sums.</summary>
public sealed class ProfileBreaksTests
{
    [Fact]
    public void Find()
    {
        #region example: ProfileBreaks.Find
        WallProfile wall = ProfileBreaks.Find([new(Mm(0), Mm(50)), new(Mm(100), Mm(50)), new(Mm(200), Mm(50)), new(Mm(300), Mm(40)), new(Mm(400), Mm(30))]);
        Length breakAt = wall.Breaks[0].Height;             // 200 mm
        double lean = wall.Bands[1].Lean.Degrees;           // 5.711°: atan(20/200), toward the room
        Length girth = wall.GirthAt(Mm(400));               // 400.998 mm: 200 + sqrt(200² + 20²)
        #endregion
        Assert.Equal(200, breakAt.Millimeters);
        Assert.Equal(5.7106, lean, 5e-5); // atan 0.1 = 0.0996687 rad
        Assert.Equal(400.997512, girth.Millimeters, 1e-6); // sqrt(40400) = 200.9975124
        Assert.Equal(0, wall.SumOfSquares.SquareMillimeters, 1e-12);
        Assert.Equal(8, wall.Objective.SquareMillimeters, 1e-9); // two bands at 4 mm²
        Assert.Equal("penalty", Assert.Single(wall.DefaultsUsed).Figure.Name);
    }

    /// <summary>
    /// Five stations 0, 0, 3, 0, 0 every 100 mm. One band: mean 0.6, no slope, sum of squares 9 - 9/5 = 7.2, with 4 a band 11.2. Two bands, break at 200:
    /// 0, 0, 3 has residuals 0.5, -1, 0.5, so 1.5, twice 3; with 8 it is 11, which is less.
    /// </summary>
    [Fact]
    public void Sums_by_hand()
    {
        MeasuredPoint[] stations = Wall((0, 0), (100, 0), (200, 3), (300, 0), (400, 0));
        WallProfile two = ProfileBreaks.Find(stations);
        Assert.Equal(2, two.Bands.Count);
        Assert.Equal(3, two.SumOfSquares.SquareMillimeters, 1e-9);
        Assert.Equal(11, two.Objective.SquareMillimeters, 1e-9);
        Assert.Equal(Math.Sqrt(0.5), two.RootMeanSquare.Millimeters, 1e-6); // 3 over six residuals

        // At 4.2 both come to 11.4: fewer bands.
        WallProfile one = ProfileBreaks.Find(stations, Area.FromSquareMillimeters(4.2));
        Assert.Single(one.Bands);
        Assert.Equal(7.2, one.SumOfSquares.SquareMillimeters, 1e-9);
        Assert.Equal(2.4, one.Bands[0].GreatestResidual.Millimeters, 1e-6);
        Assert.Equal(2, one.Bands[0].FarthestStation);
        Assert.Empty(one.DefaultsUsed);
        Assert.Equal(2, ProfileBreaks.Find(stations, Area.FromSquareMillimeters(4.199)).Bands.Count);
    }

    /// <summary>0, 0, 3 has slope 3/200 and middle 1: at 200 the line is at 2.5; 3, 0, 0 the same from above. Lines meet there; leans -0.859° and 0.859°.</summary>
    [Fact]
    public void Leans_changes_and_mismatches_by_hand()
    {
        WallProfile wall = ProfileBreaks.Find(Wall((0, 0), (100, 0), (200, 3), (300, 1), (400, 0)), bands: 2);

        // 3, 1, 0: mean 4/3, slope -3/200; at 200 it is 4/3 + 1.5 = 2.8333.
        ProfileBreak at = Assert.Single(wall.Breaks);
        Assert.Equal((2, 200.0), (at.Station, at.Height.Millimeters));
        Assert.Equal(1 / 3.0, at.Mismatch.Millimeters, 1e-6);
        Assert.Equal(2 * Math.Atan(0.015) * 180 / Math.PI, at.LeanChange.Degrees, 1e-9);
        Assert.Equal(200 + (1 / 3.0 / 0.03), at.LinesMeetAt!.Value.Millimeters, 1e-6); // 1/3 mm at a slope of 0.03: 11.1 mm higher
        Assert.Equal(-Math.Atan(0.015) * 180 / Math.PI, wall.Bands[0].Lean.Degrees, 1e-9);
        Assert.Equal(2.5, wall.Bands[0].OffsetAtHead.Millimeters, 1e-6);
        Assert.Equal(2.833333, wall.Bands[1].OffsetAtFoot.Millimeters, 1e-6);
        Assert.Equal((0, 2, 2, 4), (wall.Bands[0].FirstStation, wall.Bands[0].LastStation, wall.Bands[1].FirstStation, wall.Bands[1].LastStation));
    }

    /// <summary>The demo van's half-widths 893, 886, 844, 753 at 860, 1060, 1500, 1840, measured every 20 mm: atan(7/200) = 2.005°, atan(42/440) = 5.453°, atan(91/340) = 14.984°. Girths 200.12, 442.00, 351.97.</summary>
    [Fact]
    public void The_demo_vans_wall()
    {
        (double, double)[] corners = [(860, 893), (1060, 886), (1500, 844), (1840, 753)];
        List<MeasuredPoint> stations = [];
        for (double height = 860; height <= 1840; height += 20)
        {
            int i = height < 1060 ? 0 : height < 1500 ? 1 : 2;
            ((double h0, double w0), (double h1, double w1)) = (corners[i], corners[i + 1]);
            stations.Add(new MeasuredPoint(Mm(height), Mm(w0 + ((height - h0) / (h1 - h0) * (w1 - w0)))));
        }

        WallProfile wall = ProfileBreaks.Find(stations);
        Assert.Equal([1060, 1500], wall.Breaks.Select(static at => at.Height.Millimeters));
        Assert.Equal([2.005, 5.453, 14.984], wall.Bands.Select(static band => Math.Round(band.Lean.Degrees, 3)));
        Assert.Equal([200.12, 442.0, 351.97], wall.Bands.Select(static band => Math.Round(band.Girth.Millimeters, 2)));
        Assert.Equal(["geometry-profile-break-place"], wall.Findings.Select(static finding => finding.Code));
        Assert.Equal(wall.Girth, wall.GirthAtStations[^1]);
    }

    /// <summary>
    /// The demo van with the bow of its upper band, 7 mm over the chord, stations every 50 mm, read to the millimetre, with noise of up to half a millimetre or none. However it is cut, every break of the
    /// upper band but its foot is spurious, and the finding reaches from there to the head; the true breaks are none of it. Without the bow nothing is said of it.
    /// </summary>
    [Theory]
    [InlineData(7, 0)]
    [InlineData(7, 0.5)]
    [InlineData(-7, 0)]
    [InlineData(0, 0)]
    [InlineData(0, 0.5)]
    public void A_bowed_band_is_told_from_breaks(double bow, double noise)
    {
        int cut = 0;
        for (int seed = 0; seed < (noise > 0 ? 20 : 1); seed++)
        {
            Random random = new(seed);
            WallProfile wall = ProfileBreaks.Find(DemoVan(50, bow, () => noise * ((2 * random.NextDouble()) - 1)));
            cut += wall.Breaks.Count > 2 ? 1 : 0;
            Finding[] said = [.. wall.Findings.Where(static finding => finding.Code == "geometry-profile-bow")];
            if (bow == 0)
            {
                // The true break at 1500 lies between stations, and noise may cut off a short band below it: an arc is as good there, but never over the upper band.
                Assert.All(said, static finding => Assert.True(Value(finding, "to-height") < 1840));
                continue;
            }

            Finding found = Assert.Single(said);
            Assert.Equal(Severity.Caution, found.Severity);
            Assert.InRange(Value(found, "from-height"), 1460, 1560); // 1500 lies between stations
            Assert.Equal(1840, Value(found, "to-height"));
            Assert.InRange(Value(found, "bands"), 2, 3);
            Assert.True(Value(found, "arc-squares") < 2, found.Message); // seven readings rounded to 1 mm: 8/12, and as much of noise
        }

        Assert.True(bow == 0 || cut > 0, "The bow is never cut into bands.");

        static double Value(Finding finding, string name) => finding.Values.Single(value => value.Name == name).Value;
    }

    /// <summary>
    /// 0, 6, 8, 6, 0 every 100 mm is a parabola. By hand, one band: mean 4, no slope, 16 + 4 + 16 + 4 + 16 = 56. Two, broken in the middle: 0, 6, 8 leaves 8/3 (residuals -2/3, 4/3, -2/3), twice 16/3: with 8 it is 13.33, and
    /// the arc 4. Where the caller says that there are two bands they are two.
    /// </summary>
    [Fact]
    public void An_arc_by_hand()
    {
        MeasuredPoint[] stations = Wall((0, 0), (100, 6), (200, 8), (300, 6), (400, 0));
        Finding bow = Assert.Single(ProfileBreaks.Find(stations).Findings, static finding => finding.Code == "geometry-profile-bow");
        Assert.Equal([0, 400, 2], bow.Values.Take(3).Select(static value => value.Value));
        Assert.Equal(0, bow.Values[3].Value, 1e-9);
        Assert.Equal(16 / 3.0, bow.Values[4].Value, 1e-9);
        Assert.DoesNotContain(ProfileBreaks.Find(stations, bands: 2).Findings, static finding => finding.Code == "geometry-profile-bow");

        // 0, 0, 0, -10, -20: the same by hand leaves 40/7 of the parabola, and with its 4 that is more than 8.
        Assert.DoesNotContain(ProfileBreaks.Find(Wall((0, 0), (100, 0), (200, 0), (300, -10), (400, -20))).Findings, static finding => finding.Code == "geometry-profile-bow");

        // Bands that turn one way and then the other are no bow, and four stations tell nothing.
        Assert.DoesNotContain(ProfileBreaks.Find(Wall((0, 0), (100, 0), (200, 9), (300, 9), (400, 9)), Area.FromSquareMillimeters(0.1)).Findings, static finding => finding.Code == "geometry-profile-bow");
        Assert.DoesNotContain(ProfileBreaks.Find(Wall((0, 0), (100, 6), (200, 6), (300, 0)), Area.FromSquareMillimeters(0.1)).Findings, static finding => finding.Code == "geometry-profile-bow");
    }

    /// <summary>A straight wall costs nothing in one band, and no rounding makes it two, far from the origin too.</summary>
    [Fact]
    public void Ties_go_to_fewer_bands_then_to_the_lowest_break()
    {
        MeasuredPoint[] straight = [.. Enumerable.Range(0, 50).Select(static i => new MeasuredPoint(Mm(9000 + (7.3 * i)), Mm(9000 - (1.7 * i))))];
        Assert.Single(ProfileBreaks.Find(straight, Area.FromSquareMillimeters(1e-6)).Bands);

        // Cut in two or three it costs nothing wherever it is cut: the lowest.
        Assert.Equal([1], ProfileBreaks.Find(straight, bands: 2).Breaks.Select(static at => at.Station));
        Assert.Equal([1, 2], ProfileBreaks.Find(straight, bands: 3).Breaks.Select(static at => at.Station));

        // A step, 0 0 0 9 9 9: breaks at 2 and 3, exactly. With two bands every break is as good: at 1 it leaves 0 0 9 9 9, 97.2 - 27²/10 = 24.3; at 2
        // 0 9 9 9, 60.75 - 13.5²/5 = 24.3; at 3 and 4 the same upside down. The lowest.
        MeasuredPoint[] step = Wall((0, 0), (100, 0), (200, 0), (300, 9), (400, 9), (500, 9));
        Assert.Equal([2, 3], ProfileBreaks.Find(step, Area.FromSquareMillimeters(1)).Breaks.Select(static at => at.Station));
        Assert.Equal([1], ProfileBreaks.Find(step, bands: 2).Breaks.Select(static at => at.Station));
    }

    /// <summary>Every subset of inner stations as breaks; sums as ratios of whole numbers; the penalty near the size of the sums, so that all numbers of bands occur.</summary>
    [Fact]
    public void Equals_every_choice_tried_one_by_one()
    {
        Random random = new(4711);
        int[] seen = new int[10];
        int ties = 0;
        for (int round = 0; round < 1500; round++)
        {
            int count = random.Next(2, 10);
            (int Height, int Offset)[] stations = new (int, int)[count];
            for (int i = 0, height = random.Next(-500, 500); i < count; i++, height += round % 3 != 1 ? 10 : random.Next(1, 60))
            {
                stations[i] = (height, random.Next(0, round % 2 == 0 ? 3 : 40));
            }

            int penalty = random.Next(1, round % 2 == 0 ? 6 : 200);
            MeasuredPoint[] measured = [.. stations.Select(static at => new MeasuredPoint(Mm(at.Height), Mm(at.Offset)))];
            (long best, int[] breaks, bool isTied) = Exhaustive(stations, 1_000_000L * penalty, null);
            WallProfile found = ProfileBreaks.Find(measured, Area.FromSquareMillimeters(penalty));
            Assert.Equal(breaks, found.Breaks.Select(static at => at.Station));
            Assert.Equal(best / 1e6, found.Objective.SquareMillimeters, 1e-5);
            seen[found.Bands.Count]++;
            ties += isTied ? 1 : 0;

            int bands = random.Next(1, count);
            (long least, int[] exactly, bool isEven) = Exhaustive(stations, 0, bands);
            WallProfile cut = ProfileBreaks.Find(measured, bands: bands);
            Assert.Equal(exactly, cut.Breaks.Select(static at => at.Station));
            ties += isEven ? 1 : 0;
            Assert.Equal(least / 1e6, cut.SumOfSquares.SquareMillimeters, 1e-5);
        }

        Assert.All(seen[1..6], static number => Assert.True(number > 20));
        Assert.True(ties > 20, $"{ties} ties only.");
    }

    /// <summary>Upside down and mirrored the least is the same; shifted or tilted as a whole too.</summary>
    [Property]
    public void The_least_does_not_depend_on_where_the_plumb_line_hangs(int seed)
    {
        Random random = new(seed);
        (double H, double X)[] stations = [.. Enumerable.Range(0, random.Next(2, 40)).Select(i => ((50.0 * i) + random.Next(0, 40), Math.Round(random.NextDouble() * 30, 3)))];
        double shift = random.Next(-3000, 3000), tilt = random.Next(-100, 100) / 1000.0;
        double plain = ProfileBreaks.Find(Wall(stations)).Objective.SquareMillimeters;
        double top = stations[^1].H;
        Assert.Equal(plain, ProfileBreaks.Find(Wall([.. stations.Reverse().Select(at => (top - at.H, at.X))])).Objective.SquareMillimeters, 1e-4);
        Assert.Equal(plain, ProfileBreaks.Find(Wall([.. stations.Select(static at => (at.H, -at.X))])).Objective.SquareMillimeters, 1e-4);
        Assert.Equal(plain, ProfileBreaks.Find(Wall([.. stations.Select(at => (at.H, at.X + shift + (tilt * at.H)))])).Objective.SquareMillimeters, 1e-4);
    }

    /// <summary>
    /// Plumb for 200, then 0.1 in for each 1 up: tan(delta/2) = (sqrt 1.01 - 1)/0.1 = 0.0498756, of 20 in front 0.997512 on either side.
    /// </summary>
    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(100, 100, 100)]
    [InlineData(199, 199, 199)]
    [InlineData(199.5, 199.002488, 199.5)] // in the corner; before the ridge
    [InlineData(200, 199.002488, 200.997512)]
    [InlineData(200.5, 199.002488, 202.495025)]
    [InlineData(201, 199.004975, 202.995025)]
    [InlineData(400.997512, 399.002487, 402.992537)]
    public void In_front_of_the_wall_a_hollow_turns_sooner_and_a_ridge_later(double girth, double hollow, double ridge)
    {
        WallProfile inward = ProfileBreaks.Find(Wall((0, 50), (100, 50), (200, 50), (300, 40), (400, 30))), outward = ProfileBreaks.Find(Wall((0, 50), (100, 50), (200, 50), (300, 60), (400, 70)));
        Assert.Equal(hollow, inward.GirthInFront(Mm(girth), Mm(20)).Millimeters, 2e-6);
        Assert.Equal(ridge, outward.GirthInFront(Mm(girth), Mm(20)).Millimeters, 2e-6);
        Assert.Equal(girth, inward.GirthInFront(Mm(girth), Mm(0)).Millimeters);
        Assert.Equal(girth, ProfileBreaks.Find(Wall((0, 50), (200, 50), (401, 50))).GirthInFront(Mm(girth), Mm(20)).Millimeters); // no break
    }

    /// <summary>A turn of 45 degrees over a band of 50: at 50/tan 22.5 = 120.71 in front nothing is left of it.</summary>
    [Fact]
    public void So_far_in_front_that_a_band_is_gone_is_refused()
    {
        WallProfile wall = ProfileBreaks.Find(Wall((0, 200), (25, 200), (50, 200), (125, 125), (200, 50)), bands: 2);
        Assert.Equal(0.001, wall.GirthInFront(Mm(50), Mm((50 - 0.001) / Math.Tan(Math.PI / 8))).Millimeters, 2e-6);
        ArgumentException refused = Assert.ThrowsAny<ArgumentException>(() => wall.GirthInFront(Mm(50), Mm(120.72)));
        Assert.Equal("distance", refused.ParamName);
        Assert.Contains("something of band 0, 50 mm wide", refused.Message, StringComparison.Ordinal);
        Assert.Equal("girth", Assert.ThrowsAny<ArgumentException>(() => wall.GirthInFront(Mm(263), Mm(1))).ParamName); // 50 + 150 sqrt 2 = 262.1
        Assert.Equal("distance", Assert.ThrowsAny<ArgumentException>(() => wall.GirthInFront(Mm(50), Mm(1000.001))).ParamName);
    }

    /// <summary>Each band moved square to itself, and the lines met again, with vectors.</summary>
    [Fact]
    public void Girths_in_front_are_those_of_the_bands_moved_and_met_again()
    {
        Random random = new(7);
        for (int trial = 0; trial < 100; trial++)
        {
            int bands = random.Next(2, 5);
            double[] slopes = [.. Enumerable.Range(0, bands).Select(i => ((i % 2) * 0.3) + (random.Next(-15, 16) / 100.0))]; // toward the room for each 1 up, by turns
            List<(double H, double X)> stations = [(0, 900)], corners = [(0, 900)];
            foreach (double slope in slopes)
            {
                for (int step = random.Next(3, 6); step > 0; step--)
                {
                    stations.Add((stations[^1].H + 80, stations[^1].X - (80 * slope)));
                }

                corners.Add(stations[^1]);
            }

            WallProfile wall = ProfileBreaks.Find(Wall([.. stations]), bands: bands);
            Assert.Equal(corners.Skip(1).SkipLast(1).Select(static corner => corner.H), wall.Breaks.Select(static at => at.Height.Millimeters));
            double distance = random.Next(0, 60);

            // The line of a band: (sin, cos) of its lean is its way up, (-cos, sin) in (h, x) would point away; toward the room is less x.
            List<(double H, double X)> moved = [Moved(corners[0], slopes[0])];
            for (int i = 1; i < bands; i++)
            {
                ((double h1, double x1), (double h2, double x2)) = (Moved(corners[i], slopes[i - 1]), Moved(corners[i], slopes[i]));
                double h = (x1 - x2 + (slopes[i - 1] * h1) - (slopes[i] * h2)) / (slopes[i - 1] - slopes[i]);
                moved.Add((h, x1 - (slopes[i - 1] * (h - h1))));
            }

            moved.Add(Moved(corners[^1], slopes[^1]));
            double sum = 0;
            for (int i = 1; i <= bands; i++)
            {
                sum += Math.Sqrt(Math.Pow(moved[i].H - moved[i - 1].H, 2) + Math.Pow(moved[i].X - moved[i - 1].X, 2));
                Assert.Equal(sum, wall.GirthInFront(i < bands ? wall.Breaks[i - 1].Girth : wall.Girth, Mm(distance)).Millimeters, 1e-4);
            }

            (double H, double X) Moved((double H, double X) at, double slope) => (at.H - (distance * slope / Math.Sqrt(1 + (slope * slope))), at.X - (distance / Math.Sqrt(1 + (slope * slope))));
        }
    }

    [Property]
    public void Girth_and_height_are_each_others_way_back(int seed)
    {
        Random random = new(seed);
        WallProfile wall = ProfileBreaks.Find(Wall([.. Enumerable.Range(0, 12).Select(i => ((50.0 * i) + random.Next(0, 40), (double)random.Next(0, 30)))]));
        double low = wall.Bands[0].FromHeight.Millimeters, high = wall.Bands[^1].ToHeight.Millimeters;
        double height = low + (random.NextDouble() * (high - low));
        Assert.Equal(height, wall.HeightAt(wall.GirthAt(Mm(height))).Millimeters, 3e-6);
        Assert.Equal(0, wall.GirthAt(Mm(low)).Millimeters);
        Assert.Equal(wall.Girth.Millimeters, wall.GirthAt(Mm(high)).Millimeters);
        Assert.Equal(high, wall.HeightAt(wall.Girth).Millimeters, 2e-6);
        Assert.True(wall.Girth.Millimeters >= high - low);
        Assert.Throws<ArgumentOutOfRangeException>(() => wall.GirthAt(Mm(high + 0.001)));
        Assert.Throws<ArgumentOutOfRangeException>(() => wall.HeightAt(Mm(-0.001)));
        WorkingsCheck.Recompute(wall.Explain());
    }

    [Theory]
    [InlineData(2, false)] // a limit exactly met is met
    [InlineData(2.001, true)]
    public void A_step_is_a_mismatch(double step, bool isFound)
    {
        // A wall that steps by so much above the shared station: two exact lines would need the station twice. 0 0 0 | s s s with the break at 200: below 0 at 200;
        // above 0, s, s: mean 2 s/3, slope s/200, foot 2 s/3 - s/2 = s/6. So a step of 12 gives 2.
        WallProfile wall = ProfileBreaks.Find(Wall((0, 0), (100, 0), (200, 0), (300, 6 * step), (400, 6 * step)), bands: 2);
        Assert.Equal(2, wall.Breaks[0].Station);
        Assert.Equal(step, wall.Breaks[0].Mismatch.Millimeters, 1e-6);
        Assert.Equal(isFound, wall.Findings.Any(static finding => finding.Code == "geometry-profile-mismatch"));
    }

    [Fact]
    public void Findings_speak_up_at_their_limits()
    {
        // One band of 0, 0, s, 0, 0: the middle is 0.8 s off.
        Assert.DoesNotContain(ProfileBreaks.Find(Wall((0, 0), (100, 0), (200, 2.5), (300, 0), (400, 0)), bands: 1).Findings, static finding => finding.Code == "geometry-profile-station-off");
        Finding off = Assert.Single(ProfileBreaks.Find(Wall((0, 0), (100, 0), (200, 2.51), (300, 0), (400, 0)), bands: 1).Findings);
        Assert.Equal(("geometry-profile-station-off", Severity.Caution), (off.Code, off.Severity));
        Assert.Equal(2.008, off.Values.Single(static figure => figure.Name == "residual").Value, 1e-6);

        Assert.Equal(["geometry-profile-two-stations"], ProfileBreaks.Find(Wall((0, 0), (100, 3))).Findings.Select(static finding => finding.Code));

        // 1 in 100 is 0.573°, 2 in 100 is 1.146°.
        Assert.Contains(ProfileBreaks.Find(Wall((0, 0), (100, 0), (200, 0), (300, 1), (400, 2)), bands: 2).Findings, static finding => finding.Code == "geometry-profile-slight-change");
        WallProfile clear = ProfileBreaks.Find(Wall((0, 0), (100, 0), (200, 0), (310, 2.2), (400, 4)), bands: 2);
        Assert.Equal(110, Assert.Single(clear.Findings).Values.Single(static figure => figure.Name == "greatest-distance").Value);
    }

    [Fact]
    public void What_is_not_a_wall_is_refused_by_name()
    {
        Assert.Equal("stations[2].Along", Assert.Single(ProfileBreaks.Check(Wall((0, 0), (10, 0), (10.999, 0), (20, 0)))).Parameter);
        Assert.Empty(ProfileBreaks.Check(Wall((0, 0), (10, 0), (11, 0), (20, 0))));
        Assert.Equal("bands", Assert.Single(ProfileBreaks.Check(Wall((0, 0), (10, 0), (20, 0)), bands: 3)).Parameter);
        Assert.Empty(ProfileBreaks.Check(Wall((0, 0), (10, 0), (20, 0)), bands: 2));
        Assert.Equal(["stations[0].Offset", "stations[1].Along", "penalty", "bands"], ProfileBreaks.Check(Wall((0, 20_000), (-1, 0)), Area.FromSquareMillimeters(0), 21).Select(static problem => problem.Parameter));
    }

    /// <summary>A thousand stations are done in one go.</summary>
    [Fact]
    public void The_most_stations_there_may_be()
    {
        Random random = new(5);
        MeasuredPoint[] stations = [.. Enumerable.Range(0, 1000).Select(i => new MeasuredPoint(Mm(i * 2), Mm(random.Next(0, 20) + (i > 400 ? (i - 400) / 10.0 : 0))))];
        Assert.True(ProfileBreaks.Find(stations).Bands.Count > 1);
        Assert.Equal(20, ProfileBreaks.Find(stations, bands: 20).Bands.Count);
    }

    /// <summary>Half-widths 893, 886, 844, 753 at 860, 1060, 1500, 1840, the last band bowed (positive is away from the room), read to the millimetre.</summary>
    private static MeasuredPoint[] DemoVan(double step, double bow, Func<double> noise)
    {
        (double Height, double Width)[] corners = [(860, 893), (1060, 886), (1500, 844), (1840, 753)];
        List<MeasuredPoint> stations = [];
        for (double height = 860; ; height = Math.Min(1840, height + step))
        {
            int i = height < 1060 ? 0 : height < 1500 ? 1 : 2;
            double share = (height - corners[i].Height) / (corners[i + 1].Height - corners[i].Height);
            double width = corners[i].Width + (share * (corners[i + 1].Width - corners[i].Width)) + (i == 2 ? bow * 4 * share * (1 - share) : 0);
            stations.Add(new MeasuredPoint(Mm(height), Mm(Math.Round(width + noise()))));
            if (height >= 1840)
            {
                return [.. stations];
            }
        }
    }

    private static MeasuredPoint[] Wall(params (double Height, double Offset)[] stations) => [.. stations.Select(static at => new MeasuredPoint(Mm(at.Height), Mm(at.Offset)))];

    /// <summary>Every subset of the inner stations: least cost in millionths of mm², its breaks by the rule for ties, and whether there was one.</summary>
    private static (long Cost, int[] Breaks, bool IsTied) Exhaustive((int Height, int Offset)[] stations, long penalty, int? bands)
    {
        int inner = stations.Length - 2;
        (long Cost, int[] Breaks)? best = null;
        bool isTied = false;
        for (int chosen = 0; chosen < 1 << inner; chosen++)
        {
            int[] breaks = [.. Enumerable.Range(1, inner).Where(i => (chosen & (1 << (i - 1))) != 0)];
            if (bands is { } wanted && breaks.Length + 1 != wanted)
            {
                continue;
            }

            int[] ends = [0, .. breaks, stations.Length - 1];
            long cost = penalty * (breaks.Length + 1);
            for (int band = 0; band + 1 < ends.Length; band++)
            {
                cost += Squares(stations[ends[band]..(ends[band + 1] + 1)]);
            }

            isTied = best is { } before && (cost < before.Cost ? false : isTied || cost == before.Cost);
            if (best is not { } least || cost < least.Cost || (cost == least.Cost && Before(breaks, least.Breaks)))
            {
                best = (cost, breaks);
            }
        }

        return (best!.Value.Cost, best.Value.Breaks, isTied);
    }

    private static bool Before(int[] one, int[] other) => one.Length != other.Length
        ? one.Length < other.Length
        : one.Zip(other).FirstOrDefault(static pair => pair.First != pair.Second) is var (first, second) && first < second;

    /// <summary>Residual sum of squares as a ratio of whole numbers, in millionths of mm²: sums times n, so that nothing is divided before the end.</summary>
    private static long Squares((int Height, int Offset)[] band)
    {
        BigInteger n = band.Length, h = 0, x = 0, hh = 0, hx = 0, xx = 0;
        foreach ((int height, int offset) in band)
        {
            h += height;
            x += offset;
            hh += (BigInteger)height * height;
            hx += (BigInteger)height * offset;
            xx += (BigInteger)offset * offset;
        }

        // n Sxx = A, n Shx = B, n Shh = C; residual = (A - B²/C)/n.
        BigInteger a = (n * xx) - (x * x), b = (n * hx) - (h * x), c = (n * hh) - (h * h);
        BigInteger top = ((a * c) - (b * b)) * 1_000_000, under = n * c;
        return (long)(((2 * top) + under) / (2 * under));
    }
}
