using System.Collections.Generic;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>The examples in the documentation: each region stands there word for word. Expected values by hand, beside each.</summary>
public sealed class FastenerExamples
{
    [Fact]
    public void ChooseForLayers()
    {
        #region example: FastenerLength.Choose(layers)
        FastenerChoice choice = FastenerLength.Choose([Mm(12.7), Inch("5/8")], Behind.Metal, FastenerSeries.Brad18);
        string nail = choice.Chosen!.Length.ToString();     // 25.4 mm ± 0.794
        double clearance = choice.Chosen.Clearance.Millimeters; // 2.175
        string next = choice.NextLonger!.TipReason;         // 31.75 mm reaches the metal of a rib: ...
        #endregion
        Assert.Equal("25.4 mm ± 0.794", nail); // 1/32 in = 0.79375
        Assert.Equal(2.175, clearance); // 12.7 + 15.875 - 1 - 25.4
        Assert.StartsWith("31.75 mm reaches the metal of a rib: ", next, System.StringComparison.Ordinal);
    }

    [Fact]
    public void ChooseForJob()
    {
        List<string> log = [];
        #region example: FastenerLength.Choose(job)
        FastenerJob job = new([Mm(12.7), Layer.Furring(SheetGoods.Birch12)], Behind.Metal, FastenerSeries.Brad18) { Count = 200 };
        FastenerChoice choice = FastenerLength.Choose(job);
        foreach (Remedy remedy in choice.Remedies)
        {
            log.Add(remedy.Text);
        }
        #endregion
        Assert.NotEmpty(log);
        Assert.Equal(choice.Remedies.Count, log.Count);
    }

    [Fact]
    public void Evaluate()
    {
        #region example: FastenerLength.Evaluate
        FastenerJob job = new([Mm(12.7), Mm(15.875)], Behind.Metal, FastenerSeries.Brad18) { SetDepth = Mm(0.5) };
        FastenerCandidate nail = FastenerLength.Evaluate(job, Mm(25.4));
        double clearance = nail.Clearance.Millimeters;      // 2.675
        TipVerdict verdict = nail.Tip;                      // Safe
        #endregion
        Assert.Equal(2.675, clearance);
        Assert.Equal(TipVerdict.Safe, verdict);
    }

    [Fact]
    public void TipClearance()
    {
        #region example: FastenerLength.TipClearance
        TipClearance tip = FastenerLength.TipClearance(Mm(28.575), Mm(25.4), Mm(0.5), Angle.FromDegrees(0));
        double clearance = tip.Clearance.Millimeters;       // 2.675
        #endregion
        Assert.Equal(2.675, clearance);
    }

    [Fact]
    public void LongestSafe()
    {
        #region example: FastenerLength.LongestSafe
        FastenerJob job = new([Mm(12.7), Mm(15.875)], Behind.Metal, FastenerSeries.Brad18) { SetDepth = Mm(0.5) };
        Length? longest = FastenerLength.LongestSafe(job);  // 27.575 mm = 28.575 - 0.5 - 0.5
        #endregion
        Assert.Equal(27.575, longest!.Value.Millimeters);
    }

    [Fact]
    public void ThinnestFurring()
    {
        #region example: FastenerLength.ThinnestFurring
        FastenerJob job = new([Mm(12.7), Mm(12.7)], Behind.Metal, FastenerSeries.Brad18) { SetDepth = Mm(0.5) };
        FurringRemedy thicker = FastenerLength.ThinnestFurring(job, Mm(25.4))!;
        double least = thicker.Least.Millimeters;           // 14.49375 = 12.7 + 0.5 - (-0.5 - 0.79375)
        string sheet = thicker.Sheet!.Name;                 // 18 mm birch plywood sanded: a 15 mm sheet may be 14.2
        #endregion
        Assert.Equal(14.49375, least);
        Assert.Equal(SheetGoods.Birch18.Name, sheet);
        Assert.Equal("18 mm birch plywood sanded", sheet);
        Assert.Equal(14.2, SheetGoods.Birch15.Thickness.Least.Millimeters);
    }

    [Fact]
    public void LeastDriveAngle()
    {
        #region example: FastenerLength.LeastDriveAngle
        FastenerJob job = new([Mm(12.7), Mm(12.7)], Behind.Metal, FastenerSeries.Brad18) { SetDepth = Mm(0.5) };
        DriveAngleRemedy lean = FastenerLength.LeastDriveAngle(job, Mm(25.4))!;
        double degrees = lean.Least.Degrees;                // 21.33: acos((25.4 - 0.5 - 0.5)/26.19375)
        Angle toSet = lean.Angle;                           // 22 degrees
        #endregion
        Assert.Equal(22, toSet.Degrees);
        Assert.Equal(21.327004, degrees, 5e-7); // 21.32700353 by a script, rounded up to a millionth
    }

    [Fact]
    public void Layers()
    {
        #region example: BoardProfile.Layers
        BoardProfile board = BoardProfile.TongueAndGroove(Mm(12.7), Mm(4), Mm(4));
        IReadOnlyList<Layer> layers = board.Layers(Nailing.BlindThroughTongue, Angle.FromDegrees(45)); // tongue 4 mm, shoulder 4 mm
        #endregion
        Assert.Equal(["tongue 4 mm", "back shoulder 4 mm"], [layers[0].ToString(), layers[1].ToString()]);
    }

    [Fact]
    public void ThroughBoard()
    {
        #region example: FastenerJob.ThroughBoard
        BoardProfile board = BoardProfile.TongueAndGroove(Mm(12.7), Mm(4), Mm(4));
        FastenerJob job = new FastenerJob([Layer.Furring(SheetGoods.Birch15)], Behind.Metal, FastenerSeries.Brad18).ThroughBoard(board, Nailing.BlindThroughTongue);
        Angle angle = job.DriveAngle;                       // 45 degrees: the default through a tongue
        #endregion
        Assert.Equal(45, angle.Degrees);
    }
}
