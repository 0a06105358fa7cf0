using System;
using System.Linq;
using FsCheck.Xunit;
using UnitsNet;
using UnitsNet.Units;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Slats;

/// <summary>Slats on a curve against the reference values, and against slats drawn by coordinates. Inputs are whole micrometres or 64ths of an inch.</summary>
[Properties(Arbitrary = [typeof(SlatArbitraries)])]
public sealed class SlatCurveTests
{
    [Fact]
    public void Row_G10_of_the_reference_file()
    {
        var row = ReferenceTable.CheckValue("G10"); // DERIVED: R - sqrt(R² - w²/4), R 1500, w 100
        Assert.Equal("DERIVED", row["tag"]);
        Assert.Equal("R=1500 w=100 flat slat", row["inputs"]);
        Assert.Equal(row.Number("expected"), SlatCurve.Fit(Mm(1500), Mm(100), Mm(18), Mm(8)).Hollow.Millimeters, 1e-4);
    }

    /// <summary>The reference page, section 6, derived: R - sqrt(R² - w²/4).</summary>
    [Theory]
    [InlineData(1000, 50, 0.3125)]
    [InlineData(1500, 100, 0.8336)]
    [InlineData(1500, 40, 0.1333)]
    [InlineData(2000, 89, 0.4951)]
    public void Hollow_under_a_slat(double radius, double width, double hollow) =>
        Assert.Equal(hollow, SlatCurve.Fit(Mm(radius), Mm(width), Mm(12), Mm(8)).Hollow.Millimeters, 5.1e-5);

    /// <summary>The reference page, section 6, derived: slats touching (no gap) and tangent at their middle turn by 2 atan(w/2R) and open by 2 t sin(turn/2).</summary>
    [Theory]
    [InlineData(1500, 40, 12, 1.5278, 0.3200)]
    [InlineData(1500, 100, 18, 3.8183, 1.1993)]
    [InlineData(2000, 89, 19, 2.5492, 0.8453)]
    public void Turn_and_opening_on_a_bulge(double radius, double width, double thickness, double turn, double opening)
    {
        SlatFit slats = SlatCurve.Fit(Mm(-radius), Mm(width), Mm(thickness), Mm(0));
        Assert.Equal(turn, slats.Turn.Degrees, 5.1e-5);
        Assert.Equal(turn / 2, slats.Bevel.Degrees, 2.6e-5);
        Assert.Equal(opening, slats.GapAtFace.Millimeters, 5.1e-5);
    }

    [Fact]
    public void A_flat_face_turns_nothing()
    {
        SlatFit flat = SlatCurve.Fit(null, Mm(40), Mm(10), Mm(8));
        Assert.Null(flat.Radius);
        Assert.Equal((0, 0, 0, 0, 8, 40), (flat.Turn.Degrees, flat.Bevel.Degrees, flat.Hollow.Millimeters, flat.Rock.Millimeters, flat.GapAtFace.Millimeters, flat.BevelledFaceWidth!.Value.Millimeters));
        Assert.Empty(flat.Findings);
    }

    /// <summary>
    /// Two slats drawn on the circle: from each slat's middle, its own axes, its four corners. Hollow: the middle of the back lies
    /// sqrt(R² - w²/4) from the centre and the face nearer to it; bulge: at R, and the face further from it. The turn is found by
    /// bisection on the distance of the back edges, not by the formula.
    /// </summary>
    [Property(MaxTest = 500)]
    public void Slats_drawn_by_coordinates_have_these_gaps(SlatTrial trial)
    {
        (double r, double w, double t, double g) = (trial.Radius, trial.SlatWidth, trial.Thickness, trial.Gap);
        foreach (double signed in new[] { r, -r })
        {
            SlatFit slats = SlatCurve.Fit(Mm(signed), Mm(w), Mm(t), Mm(g));
            double middle = signed > 0 ? Math.Sqrt((r * r) - (w * w / 4)) : r, face = signed > 0 ? middle - t : middle + t;
            double low = 0, high = 1.5;
            for (int i = 0; i < 100; i++)
            {
                double turn = (low + high) / 2;
                (low, high) = Signed(turn, middle, w) < g ? (turn, high) : (low, turn);
            }

            Assert.Equal(low, slats.Turn.Radians, 1e-9);
            Assert.Equal(Signed(low, face, w), slats.GapAtFace.Millimeters, 3e-6);

            // The edges on the circle, or how far they are from it; the middle on it, or how far it is.
            double edge = Math.Sqrt((middle * middle) + (w * w / 4));
            Assert.Equal(r - middle, slats.Hollow.Millimeters, 2e-6);
            Assert.Equal(edge - r, slats.Rock.Millimeters, 2e-6);

            // Bevelled slats keep the gap: their face edges, moved to the new width.
            double faceWidth = slats.BevelledFaceWidth?.Millimeters ?? double.NaN;
            Assert.True(double.IsNaN(faceWidth) || Math.Abs(Signed(low, face, faceWidth) - g) < 5e-6);
        }
    }

    /// <summary>Distance between the right edge of a slat and the left edge of the next, both at a distance from the centre, the first turned half the turn to the left; negative where they have passed each other.</summary>
    private static double Signed(double turn, double distance, double width)
    {
        (double Across, double Out) Corner(double lean, double side) =>
            ((distance * Math.Sin(lean)) + (side * Math.Cos(lean)), (distance * Math.Cos(lean)) - (side * Math.Sin(lean)));
        (double Across, double Out) left = Corner(-turn / 2, width / 2), right = Corner(turn / 2, -width / 2);
        Assert.Equal(left.Out, right.Out, 1e-9); // the two lie side by side: all of the distance is across
        return right.Across - left.Across;
    }

    [Property]
    public void The_widest_slat_stands_off_just_so_much(SlatTrial trial)
    {
        double r = trial.Radius, h = trial.Thickness / 8;
        foreach (double signed in new[] { r, -r })
        {
            double width = SlatCurve.WidestSlat(Mm(signed), Mm(h))!.Value.Millimeters;
            if (width is >= 5 and <= 1000 && width <= r)
            {
                SlatFit slat = SlatCurve.Fit(Mm(signed), Mm(width), Mm(10), Mm(0));
                double stands = slat.Hollow.Millimeters + slat.Rock.Millimeters;
                Assert.Equal(h, stands, 2e-6);
                Assert.True(stands <= h + 1e-6);
            }
        }
    }

    /// <summary>Gentler and gentler, both ways: hollow, rock and turn go to nothing and the gap at the face to the one at the back, without noise.</summary>
    [Fact]
    public void A_gentle_curve_is_nearly_flat()
    {
        double last = 1;
        foreach (double radius in new[] { 1e3, 1e4, 1e5, 1e6 })
        {
            SlatFit hollow = SlatCurve.Fit(Mm(radius), Mm(40), Mm(10), Mm(8)), bulge = SlatCurve.Fit(Mm(-radius), Mm(40), Mm(10), Mm(8));
            Assert.Equal(200 / radius, hollow.Hollow.Millimeters, 1e-6 + (2e-4 * 200 / radius)); // w²/8R
            Assert.Equal(200 / radius, bulge.Rock.Millimeters, 1e-6 + (2e-4 * 200 / radius));
            Assert.Equal(8 - (480 / radius), hollow.GapAtFace.Millimeters, 2e-4 * 480 / radius); // t (w + g)/R
            Assert.Equal(8 + (480 / radius), bulge.GapAtFace.Millimeters, 1e-3 * 480 / radius);
            Assert.True(hollow.Turn.Radians < last);
            last = hollow.Turn.Radians;
        }

        Assert.Equal(0.0002, SlatCurve.Fit(Mm(1e6), Mm(40), Mm(10), Mm(8)).Hollow.Millimeters); // 1600/8e6, which R - sqrt(R² - 400) loses
    }

    [Property]
    public void Twice_every_length_turns_as_much(SlatTrial trial)
    {
        (double r, double w, double t, double g) = (trial.Radius, trial.SlatWidth, trial.Thickness, trial.Gap);
        foreach (double signed in new[] { r, -r })
        {
            SlatFit one = SlatCurve.Fit(Mm(signed), Mm(w), Mm(t), Mm(g)), two = SlatCurve.Fit(Mm(2 * signed), Mm(2 * w), Mm(2 * t), Mm(2 * g));
            Assert.Equal(one.Turn.Radians, two.Turn.Radians, 1e-12);
            Assert.Equal(2 * one.GapAtFace.Millimeters, two.GapAtFace.Millimeters, 2e-6);
            Assert.Equal(2 * (one.Hollow.Millimeters + one.Rock.Millimeters), two.Hollow.Millimeters + two.Rock.Millimeters, 2e-6);
        }
    }

    [Property]
    public void Inches_and_millimetres_sit_the_same(SlatTrial trial)
    {
        (int r, int w, int t, int g) = (1024 + (int)trial.Radius, 16 + (int)trial.SlatWidth, (int)trial.Thickness, (int)trial.Gap);
        SlatFit inches = SlatCurve.Fit(Sixtyfourths(r), Sixtyfourths(w), Sixtyfourths(t), Sixtyfourths(g));
        SlatFit millimetres = SlatCurve.Fit(Mm(25.4 * r / 64), Mm(25.4 * w / 64), Mm(25.4 * t / 64), Mm(25.4 * g / 64));
        Assert.True(millimetres == inches);
        Assert.Equal(millimetres.GetHashCode(), inches.GetHashCode());
        Assert.Equal(millimetres.Figures(), inches.Figures());

        static Length Sixtyfourths(int count) => new(count / 64.0, LengthUnit.Inch);
    }

    /// <summary>R 50, slats 40 wide and 60 thick, 6 apart: half the turn is asin(0.4) + asin(0.06) = 0.4716, and 40 - 120 tan of it is under 0: no bevel. Without a gap no thickness helps.</summary>
    [Fact]
    public void A_closed_face_names_only_cures_that_exist()
    {
        Finding deep = SlatCurve.Fit(Mm(50), Mm(40), Mm(60), Mm(6)).Findings[0], touching = SlatCurve.Fit(Mm(1500), Mm(40), Mm(12), Mm(0)).Findings[0], neither = SlatCurve.Fit(Mm(50), Mm(40), Mm(60), Mm(0)).Findings[0];
        Assert.Equal((false, true), (Names(deep, "bevel"), Names(deep, "closing-thickness")));
        Assert.DoesNotContain("bevel", deep.Message, StringComparison.Ordinal);
        Assert.Equal((true, false), (Names(touching, "bevel"), Names(touching, "closing-thickness")));
        Assert.DoesNotContain("thinner", touching.Message, StringComparison.Ordinal);
        Assert.Equal((false, false), (Names(neither, "bevel"), Names(neither, "closing-thickness")));

        static bool Names(Finding finding, string name) => finding.Values.Any(value => value.Name == name);
    }

    /// <summary>asin(40/800) + asin(6/800) = 0.0500209 + 0.0075001 = 0.0575209; sin of it 0.0574892; 60 thick: 6 - 120 x 0.0574892 = -0.89870; it closes at 3/0.0574892 = 52.1837.</summary>
    [Fact]
    public void Thick_slats_on_a_hollow_close_at_the_face()
    {
        SlatFit closed = SlatCurve.Fit(Mm(400), Mm(40), Mm(60), Mm(6));
        Finding finding = Assert.Single(closed.Findings);
        Assert.True(closed.HasProblem);
        Assert.Equal(("slats-face-closed", Severity.Problem), (finding.Code, finding.Severity));
        Assert.Equal(-0.8987, closed.GapAtFace.Millimeters, 1e-4);
        double thickness = finding.Values.Single(static value => value.Name == "closing-thickness").Value;
        Assert.Equal(52.1837, thickness, 1e-3);
        Assert.False(SlatCurve.Fit(Mm(400), Mm(40), Mm(thickness - 2e-5), Mm(6)).HasProblem);
        Assert.True(SlatCurve.Fit(Mm(400), Mm(40), Mm(thickness), Mm(6)).HasProblem); // just closed is closed
        Assert.False(SlatCurve.Fit(Mm(-400), Mm(40), Mm(60), Mm(6)).HasProblem); // a bulge opens
        Assert.False(SlatCurve.Fit(null, Mm(40), Mm(60), Mm(0)).HasProblem); // slats edge to edge on a flat face are meant
    }

    [Fact]
    public void A_gap_at_the_face_out_of_the_range_is_a_caution()
    {
        Finding wide = Assert.Single(SlatCurve.Fit(Mm(-500), Mm(40), Mm(20), Mm(9)).Findings); // 9 + 40 sin(0.049) = 10.96
        Assert.Equal(("slats-face-gap-out-of-range", Severity.Caution), (wide.Code, wide.Severity));
        Assert.Single(SlatCurve.Fit(Mm(1500), Mm(40), Mm(12), Mm(6)).Findings); // 5.63
        Assert.Empty(SlatCurve.Fit(null, Mm(40), Mm(12), Mm(6)).Findings); // exactly 6

        // A run's own range counts where there is one: (1000 - 840)/20 = 8 at the back, 7.616 at the face.
        SlatCount slats = SlatSpread.Spread(Mm(1000), Mm(40), Mm(7.7), Mm(9)).Recommended!;
        Finding narrow = Assert.Single(slats.OnCurve(Mm(1500), Mm(12)).Findings);
        Assert.Contains(new Figure("least-gap", 7.7, "mm"), narrow.Values);
        Assert.Empty(slats.OnCurve(Mm(1500), Mm(12)).DefaultsUsed);
        Assert.Equal(2, SlatCurve.Fit(Mm(1500), Mm(40), Mm(12), Mm(6)).DefaultsUsed.Count);
    }

    /// <summary>The bevel of half the turn takes t tan(turn/2) off each edge; where that is more than half the slat there is no face left.</summary>
    [Fact]
    public void Bevels_that_meet_leave_no_face() => Assert.Null(SlatCurve.Fit(Mm(50), Mm(40), Mm(60), Mm(6)).BevelledFaceWidth);

    [Fact]
    public void Each_check_names_what_is_wrong()
    {
        Assert.Equal(["slatWidth", "slatThickness", "gap", "radius"], SlatCurve.CheckFit(Mm(0), Mm(4), Mm(0), Mm(-1)).Select(static problem => problem.Parameter));
        Assert.Equal("radius", Assert.Single(SlatCurve.CheckFit(Mm(47.999999), Mm(40), Mm(10), Mm(8))).Parameter);
        Assert.Empty(SlatCurve.CheckFit(Mm(-48), Mm(40), Mm(10), Mm(8)));
        Assert.Equal("radius", Assert.Single(SlatCurve.CheckWidestSlat(Mm(10), Mm(10))).Parameter);
        Assert.Empty(SlatCurve.CheckWidestSlat(Mm(-10), Mm(9.999999)));
        Assert.Null(SlatCurve.WidestSlat(null, Mm(1)));
    }

    [Theory]
    [InlineData(3818.0)]
    [InlineData(-3818.0)]
    [InlineData(60.0)]
    [InlineData(null)]
    public void Every_step_of_the_fit_recomputes(double? radius) =>
        WorkingsCheck.Recompute(SlatCurve.Fit(radius is { } r ? Mm(r) : null, Mm(40), Mm(10), Mm(8)).Explain());

    [Theory]
    [InlineData(SlatEnds.Closed, SlatTaper.VaryingGap)]
    [InlineData(SlatEnds.Open, SlatTaper.VaryingGap)]
    [InlineData(SlatEnds.Closed, SlatTaper.EndSlatsTapered)]
    [InlineData(SlatEnds.Open, SlatTaper.EndSlatsTapered)]
    public void Every_step_of_the_spread_recomputes(SlatEnds ends, SlatTaper taper)
    {
        SlatRun run = new(Mm(1516), Mm(40)) { Stations = [Mm(1500), Mm(1448.5)], Ends = ends, Taper = taper };
        WorkingsCheck.Recompute(SlatSpread.Spread(run).Explain());
        WorkingsCheck.Recompute(SlatSpread.Spread(run with { Stations = null }).Explain());
        WorkingsCheck.Recompute(SlatSpread.Spread(run with { Width = Mm(50), Stations = null }).Explain());
    }

    [Fact]
    public void Nothing_is_allocated_also_where_a_finding_is_not_read()
    {
        Length[] radii = [.. Enumerable.Range(0, 512).Select(static i => Mm(200 + (10 * i))), .. Enumerable.Range(0, 512).Select(static i => Mm(-200 - (10 * i)))];
        (Length width, Length thickness, Length gap) = (Mm(40), Mm(30), Mm(6));
        double Sum()
        {
            double sum = 0;
            foreach (Length radius in radii)
            {
                SlatFit fit = SlatCurve.Fit(radius, width, thickness, gap);
                sum += fit.GapAtFace.Value + fit.Turn.Value + (fit.HasProblem ? 1 : 0) + SlatCurve.WidestSlat(radius, thickness)!.Value.Value;
            }

            return sum;
        }

        double expected = Sum();
        long before = GC.GetAllocatedBytesForCurrentThread();
        double again = Sum();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.Equal(expected, again);
    }
}
