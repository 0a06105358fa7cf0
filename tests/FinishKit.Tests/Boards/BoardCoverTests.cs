using System;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Boards;

/// <summary>What boards cover, worked by hand.</summary>
public sealed class BoardCoverTests
{
    [Fact]
    public void TongueAndGroove()
    {
        #region example: BoardCover.TongueAndGroove
        BoardCover board = BoardCover.TongueAndGroove(Mm(97), Mm(8), Mm(1));
        Length shows = board.Face;                          // 89 mm
        Length cover = board.Cover;                         // 90 mm from joint to joint
        Length held = board.StillCovered;                   // 7 mm of tongue in the groove
        #endregion
        Assert.Equal(89, shows.Millimeters); // 97 - 8
        Assert.Equal(90, cover.Millimeters); // 89 + 1
        Assert.Equal(7, held.Millimeters); // 8 - 1
        Assert.Equal(81, board.SquaredFirstFace.Millimeters); // 89 - 8, the groove ripped off
        Assert.Equal(8, board.LostAtLast.Millimeters);
        Assert.Equal(97, board.Width.Millimeters);
        Assert.Equal(8, board.Hidden.Millimeters);
        Assert.Equal(1, board.Gap.Millimeters);
    }

    [Fact]
    public void A_shiplap_board_covers_its_width_less_the_lap_and_the_reveal()
    {
        BoardCover board = BoardCover.Shiplap(Mm(145), Inch("3/8"), Mm(3));
        Assert.Equal(135.475, board.Face.Millimeters); // 145 - 9.525
        Assert.Equal(138.475, board.Cover.Millimeters); // + 3
        Assert.Equal(6.525, board.StillCovered.Millimeters);
        Assert.Equal("shiplap", board.Name);
    }

    [Fact]
    public void A_square_edged_board_covers_width_and_gap_and_loses_nothing()
    {
        BoardCover board = BoardCover.SquareEdged(Mm(89), Mm(2));
        Assert.Equal(89, board.Face.Millimeters);
        Assert.Equal(91, board.Cover.Millimeters);
        Assert.Equal(89, board.SquaredFirstFace.Millimeters);
        Assert.Equal(0, board.LostAtLast.Millimeters);
        Assert.Equal(0, board.StillCovered.Millimeters);
        Assert.Equal(0, board.Hidden.Millimeters);
    }

    [Fact]
    public void Profiles_are_equal_by_amount_and_kind()
    {
        BoardCover board = BoardCover.TongueAndGroove(Inch(4), Inch("1/4"), Mm(0));
        Assert.Equal(board, BoardCover.TongueAndGroove(Mm(101.6), Mm(6.35), Mm(0)));
        Assert.Equal(board.GetHashCode(), BoardCover.TongueAndGroove(Mm(101.6), Mm(6.35), Mm(0)).GetHashCode());
        Assert.NotEqual(board, BoardCover.Shiplap(Mm(101.6), Mm(6.35), Mm(0)));
        Assert.NotEqual(board, BoardCover.TongueAndGroove(Mm(101.6), Mm(6.35), Mm(1)));
        Assert.False(board.Equals(null));
        Assert.False(board.Equals("a board"));
        Assert.Equal("tongue-and-groove board of 101.6 mm, face 95.25 mm, cover 95.25 mm", board.ToString());
    }

    [Theory]
    [InlineData(9.999999, 3, 0, "width")]
    [InlineData(1000.000001, 3, 0, "width")]
    [InlineData(89, 0, 0, "tongue")]
    [InlineData(89, 44.5, 0, "tongue")]
    [InlineData(89, 8, -0.000001, "gap")]
    [InlineData(89, 8, 8, "gap")]
    public void Impossible_tongues_are_refused(double width, double tongue, double gap, string parameter) =>
        Assert.Equal(parameter, Assert.ThrowsAny<ArgumentException>(() => BoardCover.TongueAndGroove(Mm(width), Mm(tongue), Mm(gap))).ParamName);

    [Fact]
    public void Limits_just_kept_are_taken()
    {
        Assert.Equal(0.000001, BoardCover.TongueAndGroove(Mm(89), Mm(44.499999), Mm(0)).SquaredFirstFace.Millimeters - 0.000001, 6);
        Assert.Equal(0.000001, BoardCover.Shiplap(Mm(89), Mm(8), Mm(7.999999)).StillCovered.Millimeters);
        Assert.Equal("gap", Assert.ThrowsAny<ArgumentException>(() => BoardCover.SquareEdged(Mm(50), Mm(50))).ParamName);
        Assert.Equal("reveal", Assert.ThrowsAny<ArgumentException>(() => BoardCover.Shiplap(Mm(89), Mm(8), Mm(8))).ParamName);
    }
}
