using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Boards;

/// <summary>How boards move, against published examples and figures worked by hand.</summary>
public sealed class BoardMovementTests
{
    private static bool s_seen;

    private static readonly DimensionalChangeCoefficient s_spruce = DimensionalChange.OfWood(WoodSpecies.Named("Engelmann spruce"), WoodGrain.Tangential);

    [Fact]
    public void OfWidth()
    {
        #region example: BoardMovement.OfWidth
        DimensionalChangeCoefficient pine = DimensionalChange.OfWood(WoodSpecies.Named("eastern white pine"), WoodGrain.Tangential);
        WidthChange wetter = BoardMovement.OfWidth(Mm(140), pine, 8, 12);
        Length change = wetter.Change;                      // 1.187 mm: 140 x 0.00212 x 4
        #endregion
        Assert.Equal(1.187, change.Millimeters, 5.001e-4); // DERIVED, check-values.md section 7.1
        Assert.Equal(141.1872, wetter.WidthAfter.Millimeters, 1e-9);
        Assert.Empty(wetter.Findings);
        WorkingsCheck.Recompute(wetter.Explain());
    }

    [Fact]
    public void OverSeason()
    {
        #region example: BoardMovement.OverSeason
        DimensionalChangeCoefficient spruce = DimensionalChange.OfWood(WoodSpecies.Named("Engelmann spruce"), WoodGrain.Tangential);
        SeasonMovement wall = BoardMovement.OverSeason(new BoardMovementJob(BoardCover.TongueAndGroove(Mm(97), Mm(8), Mm(1)), spruce) { Boards = 11 });
        Length leave = wall.GapToLeave;                     // 1.545 mm: 89 x 0.00248 x (16 - 9), more than the usual 1 mm
        Length? held = wall.StillCoveredWhenDry;            // 6.278 mm of the tongue: 8 - 1 - 97 x 0.00248 x (9 - 6)
        double? driest = wall.DriestFitting;                // 11.5%: fitted drier than this, a gap of 1 mm closes
        #endregion
        Assert.Equal(1.54504, leave.Millimeters, 1e-9); // all by hand from 0.00248
        Assert.Equal(6.27832, held!.Value.Millimeters, 1e-9);
        Assert.Equal(11.4693729, driest!.Value, 1e-6); // 16 - 1/0.22072
        Assert.Null(wall.WettestFitting); // 6 + 7/0.24056 = 35.1
        Assert.Equal(1.68392, wall.Swelling.Millimeters, 1e-9); // 97 x 0.00248 x 7
        Assert.Equal(0.72168, wall.Shrinkage.Millimeters, 1e-9);
        Assert.Equal(-0.54504, wall.GapWhenWet.Millimeters, 1e-9);
        Assert.Equal(1.66216, wall.GapWhenDry.Millimeters, 1e-9);
        Assert.Equal(16.99544, wall.TotalSwelling.Millimeters, 1e-9); // 11 x 1.54504
        Assert.Equal(7.28376, wall.TotalShrinkage.Millimeters, 1e-9);
        Assert.Equal(3, wall.EndGap.Millimeters);
        Assert.Equal((9.0, 6.0, 16.0), (wall.FittingMoisture, wall.DriestMoisture, wall.WettestMoisture));
        WorkingsCheck.Recompute(wall.Explain());
    }

    [Fact]
    public void AlongTheGrain()
    {
        #region example: BoardMovement.AlongTheGrain
        LengthMovement summer = BoardMovement.AlongTheGrain(Mm(3400), 80, 9, 6);
        Length shell = summer.SteelGrowth;                  // 3.264 mm
        Length heat = summer.WoodGrowthByHeat;              // 1.088 mm
        Length drying = summer.WoodGrowthByMoisture;        // -0.68 mm
        Length open = summer.EndsOpenBy;                    // 2.856 mm over both ends
        #endregion
        Assert.Equal(3.264, shell.Millimeters, 1e-9); // 12 x 3.4 x 0.08
        Assert.Equal(1.088, heat.Millimeters, 1e-9); // 4 x 3.4 x 0.08
        Assert.Equal(-0.68, drying.Millimeters, 1e-9); // 6.8 x 3/30
        Assert.Equal(2.856, open.Millimeters, 1e-9);
        Assert.Equal("boards-movement-ends-open", Assert.Single(summer.Findings).Code);
        WorkingsCheck.Recompute(summer.Explain());
    }

    [Fact]
    public void M01_white_fir()
    {
        // MEMORY: Wood Handbook's worked example, 0.067 in, metric 1.705 mm.
        IReadOnlyDictionary<string, string> row = Row("M01", "MEMORY");
        DimensionalChangeCoefficient fir = DimensionalChange.OfWood(WoodSpecies.Named("white fir"), WoodGrain.Tangential);
        Assert.Equal(row.Number("expected"), BoardMovement.OfWidth(Inch(9.15), fir, 8, 11).Change.Inches, 1e-4);
        Assert.Equal(1.705, BoardMovement.OfWidth(Mm(232), fir, 8, 11).Change.Millimeters, 5.001e-4);
    }

    [Fact]
    public void M02_mesquite()
    {
        // CONFIRMED: 5 in, 6 to 9%, 0.00129.
        IReadOnlyDictionary<string, string> row = Row("M02", "CONFIRMED");
        Assert.Equal(row.Number("expected"), BoardMovement.OfWidth(Inch(5), DimensionalChangeCoefficient.Supplied(0.00129), 6, 9).Change.Inches, 1e-7);
    }

    [Fact]
    public void M03_red_oak_by_total_shrinkage_over_28_percent()
    {
        // CONFIRMED, another method: S/28 of the green size. That is a coefficient whose size is taken where shrinkage starts.
        IReadOnlyDictionary<string, string> row = Row("M03", "CONFIRMED");
        Assert.Equal(-row.Number("expected"), BoardMovement.OfWidth(Inch(2.25), DimensionalChange.FromShrinkage(8.6, 28, 28), 8, 5).Change.Inches, 5.001e-6);
        DimensionalChangeCoefficient group = DimensionalChange.OfWood(WoodSpecies.Named("northern red oak"), WoodGrain.Tangential);
        Assert.Equal(-0.0249, BoardMovement.OfWidth(Inch(2.25), group, 8, 5).Change.Inches, 5.001e-5); // "C_T method gives 0.0249"
    }

    [Fact]
    public void Every_M_row_is_tested() => Assert.Equal(["M01", "M02", "M03"], ReferenceTable.Read("check-values.csv").Where(static row => row["calculator"] == "movement" && row["id"].StartsWith("M0", StringComparison.Ordinal)).Select(static row => row["id"]));

    [Fact]
    public void Western_redcedar_of_89_mm_from_7_to_13_percent()
    {
        // DERIVED: 1.250 mm.
        DimensionalChangeCoefficient cedar = DimensionalChange.OfWood(WoodSpecies.Named("western red cedar"), WoodGrain.Tangential);
        Assert.Equal(1.250, BoardMovement.OfWidth(Mm(89), cedar, 7, 13).Change.Millimeters, 5.001e-4);
    }

    [Fact]
    public void The_greater_of_the_default_gap_and_the_swelling_is_left()
    {
        BoardMovementJob job = new(BoardCover.SquareEdged(Mm(89), Mm(1)), s_spruce);
        Assert.Equal(1, BoardMovement.OverSeason(job with { WettestMoisture = 13.5 }).GapToLeave.Millimeters); // 89 x 0.00248 x 4.5 = 0.993
        Assert.Equal(1.10360, BoardMovement.OverSeason(job with { WettestMoisture = 14 }).GapToLeave.Millimeters, 1e-9);
        Assert.Equal(1.5, BoardMovement.OverSeason(job with { WettestMoisture = 14, LeastGap = Mm(1.5) }).GapToLeave.Millimeters);
        Assert.Equal(1, BoardMovement.OverSeason(job with { FittingMoisture = 18 }).GapToLeave.Millimeters); // it only shrinks
        Assert.Null(BoardMovement.OverSeason(job).StillCoveredWhenDry);
        Assert.Null(BoardMovement.OverSeason(job).WettestFitting);
    }

    [Fact]
    public void A_joint_that_just_closes_is_not_closed_tight()
    {
        BoardMovementJob job = new(BoardCover.SquareEdged(Mm(100), Mm(1.4)), DimensionalChangeCoefficient.Supplied(0.002)); // 100 x 0.002 x 7 = 1.4
        Assert.Equal(0, BoardMovement.OverSeason(job).GapWhenWet.Millimeters);
        Assert.DoesNotContain("boards-movement-joint-closes", Codes(job));
        BoardMovementJob tight = job with { Board = BoardCover.SquareEdged(Mm(100), Mm(1.399999)) };
        Finding closes = Assert.Single(BoardMovement.OverSeason(tight).Findings, static finding => finding.Code == "boards-movement-joint-closes");
        Assert.Equal(1.4, closes.Values.Single(static value => value.Name == "gap-to-leave").Value);
        Assert.Equal(-0.000001, closes.Values.Single(static value => value.Name == "gap-when-wet").Value);
        Assert.Contains("boards-movement-joint-closes", Codes(job with { Board = BoardCover.SquareEdged(Mm(100), Mm(0)) })); // pushed tight
    }

    [Fact]
    public void A_tongue_that_comes_out_is_a_problem_and_one_that_just_keeps_its_least_cover_is_not()
    {
        // 100 x 0.002 x 3 = 0.6 mm of shrinkage
        BoardMovementJob job = new(BoardCover.TongueAndGroove(Mm(100), Mm(2), Mm(1)), DimensionalChangeCoefficient.Supplied(0.002));
        Assert.Equal(0.4, BoardMovement.OverSeason(job).StillCoveredWhenDry!.Value.Millimeters);
        Assert.False(BoardMovement.OverSeason(job).HasProblem);
        Assert.False(BoardMovement.OverSeason(job with { LeastCovered = Mm(0.4) }).HasProblem);
        SeasonMovement less = BoardMovement.OverSeason(job with { LeastCovered = Mm(0.400001) });
        Assert.Equal("boards-movement-tongue-out", less.Findings[0].Code);
        Assert.True(less.HasProblem);
        Assert.Contains("0.4 mm of tongue or lap stays covered", less.Findings[0].Message, StringComparison.Ordinal);
        SeasonMovement out1 = BoardMovement.OverSeason(job with { Board = BoardCover.Shiplap(Mm(100), Mm(1.6), Mm(1)) });
        Assert.Equal(0, out1.StillCoveredWhenDry!.Value.Millimeters);
        Assert.True(out1.HasProblem); // at nothing it is out, though nothing was asked
        Assert.Contains("comes out", out1.Findings[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Moisture_outside_the_published_range_and_boards_fitted_outside_the_season_are_found()
    {
        BoardMovementJob job = new(BoardCover.SquareEdged(Mm(89), Mm(3)), s_spruce) { DriestMoisture = 6, WettestMoisture = 14 };
        Assert.Equal(["boards-movement-cups", "boards-movement-ends"], Codes(job));
        Assert.Contains("boards-movement-outside-range", Codes(job with { WettestMoisture = 14.1 }));
        Assert.Contains("boards-movement-outside-range", Codes(job with { DriestMoisture = 5.9 }));
        Assert.Contains("boards-movement-outside-range", Codes(job with { FittingMoisture = 15 }));
        Assert.Contains("boards-movement-fitted-outside-season", Codes(job with { FittingMoisture = 15 }));
        Assert.Contains("boards-movement-fitted-outside-season", Codes(job with { FittingMoisture = 5 }));
        Assert.DoesNotContain("boards-movement-fitted-outside-season", Codes(job with { FittingMoisture = 14 }));
        Assert.Equal("boards-movement-outside-range", Assert.Single(BoardMovement.OfWidth(Mm(89), s_spruce, 14, 5.9).Findings).Code);
        Assert.Empty(BoardMovement.OfWidth(Mm(89), s_spruce, 14, 6).Findings);
    }

    [Fact]
    public void Quarter_sawn_boards_do_not_cup_and_unknown_grain_is_said()
    {
        WoodSpecies spruce = WoodSpecies.Named("Engelmann spruce");
        BoardMovementJob job = new(BoardCover.SquareEdged(Mm(89), Mm(3)), DimensionalChange.OfWood(spruce, WoodGrain.Radial));
        Assert.DoesNotContain("boards-movement-cups", Codes(job));
        Assert.DoesNotContain("materials-grain-unknown", Codes(job));
        BoardMovementJob unknown = job with { Coefficient = DimensionalChange.OfWood(spruce) };
        Assert.Contains("boards-movement-cups", Codes(unknown));
        Assert.Contains("materials-grain-unknown", Codes(unknown));
        Assert.Contains(BoardMovement.OverSeason(unknown).DefaultsUsed, static used => used.Source.Id == "default-grain");
        Assert.Equal(BoardMovement.OverSeason(job with { Coefficient = s_spruce }).Swelling.Millimeters, BoardMovement.OverSeason(unknown).Swelling.Millimeters);
    }

    [Fact]
    public void Defaults_are_named_with_their_basis_and_those_given_are_not()
    {
        BoardMovementJob job = new(BoardCover.SquareEdged(Mm(89), Mm(3)), s_spruce);
        Assert.Equal(
            ["fitting-moisture 9 % CommonPractice", "driest-moisture 6 % Judgement", "wettest-moisture 16 % Judgement", "least-gap 1 mm CommonPractice", "end-gap 3 mm CommonPractice"],
            BoardMovement.OverSeason(job).DefaultsUsed.Select(static used => $"{used.Figure} {used.Source.Kind}"));
        Assert.Empty(BoardMovement.OverSeason(job with { FittingMoisture = 9, DriestMoisture = 6, WettestMoisture = 16, LeastGap = Mm(1), EndGap = Mm(3) }).DefaultsUsed);
    }

    [Fact]
    public void The_ends_close_where_boards_get_wet_in_the_cold()
    {
        // 10 m: steel -4.8, wood by heat -1.6, by moisture 20 x 7/30 = 4.667: the ends close by 7.867.
        LengthMovement winter = BoardMovement.AlongTheGrain(Mm(10_000), -40, 9, 16);
        Assert.Equal(-4.8 + 1.6 - (14 / 3.0), winter.EndsOpenBy.Millimeters, 1e-6);
        Assert.Equal("boards-movement-ends-close", Assert.Single(winter.Findings).Code);
        Assert.Empty(BoardMovement.AlongTheGrain(Mm(7500), -40, 9, 16).Findings); // 5.9 mm: within two gaps of 3
        Assert.Equal("boards-movement-ends-close", Assert.Single(BoardMovement.AlongTheGrain(Mm(7628), -40, 9, 16).Findings).Code); // 6.0007
        Assert.Empty(BoardMovement.AlongTheGrain(Mm(7500), 0, 9, 9).Findings);
        Assert.Equal("default-end-gap", Assert.Single(winter.DefaultsUsed).Source.Id);
    }

    [Fact]
    public void All_problems_are_reported_at_once()
    {
        Assert.Equal(["width", "coefficient", "fromMoisture", "toMoisture"], BoardMovement.CheckOfWidth(Mm(0), default, -1, 31).Select(static problem => problem.Parameter));
        Assert.Equal(["length", "warming", "fromMoisture", "toMoisture"], BoardMovement.CheckAlongTheGrain(Mm(0), 151, -1, 31).Select(static problem => problem.Parameter));
        BoardMovementJob bad = new(null!, default) { Boards = 0, FittingMoisture = 31, DriestMoisture = 12, WettestMoisture = 11, LeastGap = Mm(-1), EndGap = Mm(101), LeastCovered = Mm(-1) };
        Assert.Equal(
            ["job.Board", "job.Coefficient", "job.Boards", "job.FittingMoisture", "job.WettestMoisture", "job.LeastGap", "job.EndGap", "job.LeastCovered"],
            BoardMovement.CheckOverSeason(bad).Select(static problem => problem.Parameter));
        Assert.Equal("job.DriestMoisture", Assert.Single(BoardMovement.CheckOverSeason(new(BoardCover.SquareEdged(Mm(89), Mm(1)), s_spruce) { DriestMoisture = 17 })).Parameter);
        Assert.Equal("job.Boards", Assert.Single(BoardMovement.CheckOverSeason(new(BoardCover.SquareEdged(Mm(89), Mm(1)), s_spruce) { Boards = 1001 })).Parameter);
    }

    [Fact]
    public void Answers_and_jobs_compare_by_what_they_were_asked()
    {
        WidthChange one = BoardMovement.OfWidth(Inch(4), s_spruce, 8, 12);
        Assert.True(one == BoardMovement.OfWidth(Mm(101.6), s_spruce, 8, 12));
        Assert.Equal(one.GetHashCode(), BoardMovement.OfWidth(Mm(101.6), s_spruce, 8, 12).GetHashCode());
        Assert.True(one != BoardMovement.OfWidth(Mm(101.6), s_spruce, 8, 11));
        Assert.True(one != BoardMovement.OfWidth(Mm(101.6), s_spruce, 7, 12));
        Assert.True(one != BoardMovement.OfWidth(Mm(101.6), DimensionalChangeCoefficient.Supplied(0.00248), 8, 12));
        Assert.Equal("101.6 mm of wood from 8 to 12% swells by 1.008 mm", one.ToString()); // 101.6 x 0.00248 x 4 = 1.007872
        LengthMovement along = BoardMovement.AlongTheGrain(Inch(40), 10, 8, 12);
        Assert.True(along == BoardMovement.AlongTheGrain(Mm(1016), 10, 8, 12));
        Assert.Equal(along.GetHashCode(), BoardMovement.AlongTheGrain(Mm(1016), 10, 8, 12).GetHashCode());
        Assert.True(along != BoardMovement.AlongTheGrain(Mm(1016), 11, 8, 12));
        Assert.True(along != BoardMovement.AlongTheGrain(Mm(1016), 10, 8, 11));
        BoardMovementJob job = new(BoardCover.SquareEdged(Inch(4), Mm(1)), s_spruce) { LeastGap = Inch(0.125) };
        Assert.Equal(job, new BoardMovementJob(BoardCover.SquareEdged(Mm(101.6), Mm(1)), s_spruce) { LeastGap = Mm(3.175) });
        Assert.Equal(job.GetHashCode(), (job with { LeastGap = Mm(3.175) }).GetHashCode());
        Assert.NotEqual(job, job with { Boards = 2 });
        Assert.NotEqual(job, job with { FittingMoisture = 9 });
        Assert.NotEqual(job, job with { DriestMoisture = 6 });
        Assert.NotEqual(job, job with { WettestMoisture = 16 });
        Assert.NotEqual(job, job with { EndGap = Mm(3) });
        Assert.NotEqual(job, job with { LeastCovered = Mm(0) });
        Assert.NotEqual(job, job with { Coefficient = DimensionalChangeCoefficient.Supplied(0.00248) });
    }

    [Fact]
    public void The_scalar_answers_allocate_nothing()
    {
        (Length width, DimensionalChangeCoefficient spruce) = (Mm(89), s_spruce);
        AllocatesNothing(() => BoardMovement.OfWidth(width, spruce, 8, 12).Change.Value > 1);
        AllocatesNothing(() => BoardMovement.OfWidth(width, spruce, 4, 18).HasProblem);
        AllocatesNothing(() => BoardMovement.AlongTheGrain(width, 80, 9, 6).EndsOpenBy.Value > 1);
        AllocatesNothing(() => BoardMovement.AlongTheGrain(width, -150, 9, 30).HasProblem);
    }

    private static IReadOnlyDictionary<string, string> Row(string id, string tag)
    {
        IReadOnlyDictionary<string, string> row = ReferenceTable.CheckValue(id);
        Assert.Equal(tag, row["tag"]);
        Assert.Equal("dD in", row["output"]);
        return row;
    }

    private static IEnumerable<string> Codes(BoardMovementJob job) => BoardMovement.OverSeason(job).Findings.Select(static finding => finding.Code);

    private static void AllocatesNothing(Func<bool> question)
    {
        for (int i = 0; i < 64; i++)
        {
            s_seen = question();
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1024; i++)
        {
            s_seen |= question();
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
