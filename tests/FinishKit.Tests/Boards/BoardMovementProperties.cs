using System;
using FsCheck;
using FsCheck.Xunit;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Boards;

/// <summary>Movement against boards laid out by their coordinates, and the laws it must keep.</summary>
[Properties(MaxTest = 400, EndSize = 1_000_000)]
public sealed class BoardMovementProperties
{
    private const double Close = 2.1e-6; // the 1 nm grid on both sides

    /// <summary>Two neighbours nailed one cover apart, each scaled about its own nail; edges and tongue are then measured where they lie.</summary>
    [Property]
    public void A_season_agrees_with_boards_laid_out_by_their_coordinates(PositiveInt seed)
    {
        (BoardMovementJob job, Random random) = Draw(seed.Get);
        (double width, double hidden, double gap) = (job.Board.Width.Millimeters, job.Board.Hidden.Millimeters, job.Board.Gap.Millimeters);
        double cover = width - hidden + gap, nail = random.NextDouble() * width, c = job.Coefficient.Value, fit = job.FittingMoisture!.Value;
        (double Gap, double Covered, double Width, double Face) At(double moisture)
        {
            double scale = 1 + (c * (moisture - fit));
            double tip = (width - nail) * scale, shoulder = tip - (hidden * scale), left = cover - (nail * scale);
            return (left - shoulder, tip - left, width * scale, (width - hidden) * scale);
        }

        SeasonMovement season = BoardMovement.OverSeason(job);
        (var wet, var dry) = (At(job.WettestMoisture!.Value), At(job.DriestMoisture!.Value));
        Assert.Equal(wet.Gap, season.GapWhenWet.Millimeters, Close);
        Assert.Equal(dry.Gap, season.GapWhenDry.Millimeters, Close);
        Assert.Equal(wet.Width - width, season.Swelling.Millimeters, Close);
        Assert.Equal(width - dry.Width, season.Shrinkage.Millimeters, Close);
        Assert.Equal(job.Boards * (wet.Face - (width - hidden)), season.TotalSwelling.Millimeters, 1e-5);
        Assert.Equal(job.Boards * (width - hidden - dry.Face), season.TotalShrinkage.Millimeters, 1e-5);
        if (hidden > 0)
        {
            Assert.Equal(dry.Covered, season.StillCoveredWhenDry!.Value.Millimeters, Close);
        }
        else
        {
            Assert.Null(season.StillCoveredWhenDry);
        }

        WorkingsCheck.Recompute(season.Explain());
    }

    [Property]
    public void The_gap_to_leave_does_not_close_and_one_step_less_does_where_swelling_asks(PositiveInt seed)
    {
        (BoardMovementJob job, _) = Draw(seed.Get);
        double leave = BoardMovement.OverSeason(job).GapToLeave.Millimeters;
        double width = job.Board.Face.Millimeters;
        BoardMovementJob left = job with { Board = BoardCover.SquareEdged(Mm(width), Mm(leave)) };
        Assert.True(BoardMovement.OverSeason(left).GapWhenWet.Millimeters >= 0);
        if (leave > job.LeastGap!.Value.Millimeters + 1e-5)
        {
            Assert.True(BoardMovement.OverSeason(left with { Board = BoardCover.SquareEdged(Mm(width), Mm(leave - 2e-6)) }).GapWhenWet.Millimeters < 0);
        }
        else
        {
            Assert.Equal(job.LeastGap.Value.Millimeters, leave, 1e-5);
        }
    }

    [Property]
    public void Fitted_at_the_driest_the_joint_just_closes_and_at_the_wettest_the_tongue_just_keeps_its_cover(PositiveInt seed)
    {
        (BoardMovementJob job, _) = Draw(seed.Get);
        SeasonMovement season = BoardMovement.OverSeason(job);
        if (season.DriestFitting is { } driest)
        {
            Assert.InRange(driest, 0, job.WettestMoisture!.Value);
            SeasonMovement then = BoardMovement.OverSeason(job with { FittingMoisture = driest });
            Assert.Equal(0, then.GapWhenWet.Millimeters, Close);
            Assert.Equal(Math.Max(job.LeastGap!.Value.Millimeters, job.Board.Gap.Millimeters), then.GapToLeave.Millimeters, Close);
        }

        if (season.WettestFitting is { } wettest and >= 0)
        {
            Assert.Equal(job.LeastCovered!.Value.Millimeters, BoardMovement.OverSeason(job with { FittingMoisture = wettest }).StillCoveredWhenDry!.Value.Millimeters, Close);
        }
    }

    [Fact]
    public void The_cases_drawn_hold_both_limits_and_both_kinds_of_board()
    {
        int driest = 0, wettest = 0, square = 0, closes = 0, comesOut = 0;
        for (int seed = 1; seed <= 400; seed++)
        {
            SeasonMovement season = BoardMovement.OverSeason(Draw(seed * 2477).Job);
            driest += season.DriestFitting is null ? 0 : 1;
            wettest += season.WettestFitting is null ? 0 : 1;
            square += season.StillCoveredWhenDry is null ? 1 : 0;
            closes += season.GapWhenWet.Millimeters < 0 ? 1 : 0;
            comesOut += season.HasProblem ? 1 : 0;
        }

        Assert.All(new[] { driest, wettest, square, closes, comesOut }, static count => Assert.InRange(count, 20, 380));
    }

    [Property]
    public void A_change_is_linear_in_width_and_moisture_and_turns_its_sign_with_them(PositiveInt seed)
    {
        Random random = new(seed.Get);
        double width = 1 + random.Next(2000), from = random.NextDouble() * 30, to = random.NextDouble() * 30, middle = (from + to) / 2;
        DimensionalChangeCoefficient wood = DimensionalChangeCoefficient.Supplied(random.Next(5) == 0 ? 0 : random.NextDouble() * 0.02);
        double Change(double w, double before, double after) => BoardMovement.OfWidth(Mm(w), wood, before, after).Change.Millimeters;
        double change = Change(width, from, to);
        Assert.Equal(-change, Change(width, to, from), 1e-9);
        Assert.Equal(3 * change, Change(3 * width, from, to), 4e-6);
        Assert.Equal(change, Change(width, from, middle) + Change(width, middle, to), 4e-6);
        Assert.True(change == 0 || change > 0 == to > from);
        Assert.True(Change(width + 1, from, to) * Math.Sign(change) >= change * Math.Sign(change));
        Assert.Equal(0, Change(width, from, from));
        WorkingsCheck.Recompute(BoardMovement.OfWidth(Mm(width), wood, from, to).Explain());
    }

    [Property]
    public void More_of_anything_that_moves_asks_for_no_smaller_gap(PositiveInt seed)
    {
        (BoardMovementJob job, Random random) = Draw(seed.Get);
        double gap = BoardMovement.OverSeason(job).GapToLeave.Millimeters;
        double more = Math.Min(30, job.WettestMoisture!.Value + random.NextDouble());
        Assert.True(BoardMovement.OverSeason(job with { WettestMoisture = more }).GapToLeave.Millimeters >= gap);
        Assert.True(BoardMovement.OverSeason(job with { FittingMoisture = job.FittingMoisture!.Value * random.NextDouble() }).GapToLeave.Millimeters >= gap);
        double less = BoardMovement.OverSeason(job with { DriestMoisture = job.DriestMoisture!.Value * random.NextDouble() }).StillCoveredWhenDry?.Millimeters ?? 0;
        Assert.True(less <= (BoardMovement.OverSeason(job).StillCoveredWhenDry?.Millimeters ?? 0));
    }

    [Property]
    public void Along_the_grain_everything_is_linear_and_cooling_and_wetting_turn_it_round(PositiveInt seed)
    {
        Random random = new(seed.Get);
        double length = 1 + random.Next(10_000), warming = random.Next(-150, 151), from = random.NextDouble() * 30, to = random.NextDouble() * 30;
        LengthMovement one = BoardMovement.AlongTheGrain(Mm(length), warming, from, to), back = BoardMovement.AlongTheGrain(Mm(length), -warming, to, from);
        Assert.Equal(one.EndsOpenBy.Millimeters, -back.EndsOpenBy.Millimeters, 1e-9);
        Assert.Equal(length * ((8 * warming) - (2000 * (to - from) / 30)) / 1e6, one.EndsOpenBy.Millimeters, Close); // 12 - 4 millionths per kelvin, 2000 over 30%
        WorkingsCheck.Recompute(one.Explain());
    }

    private static (BoardMovementJob Job, Random Random) Draw(int seed)
    {
        Random random = new(seed);
        double width = 20 + random.Next(280), hidden = 1 + random.Next(9), gap = Math.Round(random.NextDouble() * random.Next(1, 5), 3);
        double driest = random.Next(0, 12), wettest = driest + random.Next(0, 18), fitting = random.Next(4) == 0 ? random.Next(0, 31) : driest + (random.NextDouble() * (wettest - driest));
        BoardCover board = random.Next(3) == 0 || gap >= hidden ? BoardCover.SquareEdged(Mm(width), Mm(gap))
            : random.Next(2) == 0 ? BoardCover.Shiplap(Mm(width), Mm(hidden), Mm(gap))
            : BoardCover.TongueAndGroove(Mm(width), Mm(hidden), Mm(gap));
        DimensionalChangeCoefficient wood = DimensionalChangeCoefficient.Supplied(random.Next(20) == 0 ? 0 : random.Next(1, 60) / 10_000.0);
        return (new BoardMovementJob(board, wood)
        {
            Boards = 1 + random.Next(40),
            FittingMoisture = fitting,
            DriestMoisture = driest,
            WettestMoisture = wettest,
            LeastGap = Mm(Math.Round(random.NextDouble() * 2, 2)),
            LeastCovered = Mm(Math.Round(random.NextDouble() * random.Next(0, 4), 2)),
        }, random);
    }
}
