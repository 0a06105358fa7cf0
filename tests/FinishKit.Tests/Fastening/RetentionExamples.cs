using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>The examples in the documentation: each region stands there word for word. Expected values by a script of their own.</summary>
public sealed class RetentionExamples
{
    [Fact]
    public void FastenersNeeded()
    {
        #region example: Retention.FastenersNeeded
        WithdrawalCapacity one = WithdrawalCapacity.Supplied(Force.FromNewtons(40));
        RetentionCount board = Retention.FastenersNeeded(Mass.FromKilograms(12), one);
        Force load = board.Load;                            // 353.04 N: 12 kg at 3 g
        int? brads = board.Fasteners;                       // 9
        #endregion
        Assert.Equal(353.0394, load.Newtons, 1e-9); // 12 · 3 · 9.80665
        Assert.Equal(9, brads); // 353.0394/40 = 8.83
    }

    [Fact]
    public void FastenersNeededForAHungMass()
    {
        #region example: Retention.FastenersNeeded.HungMass
        WithdrawalCapacity brad = Withdrawal.NdsNail(new OvendrySpecificGravity(0.5), Mm(1.6), Mm(12)).InPlywood();
        RetentionResult board = Retention.FastenersNeeded(new HungMass(Mass.FromKilograms(2), brad) { RunLength = Mm(3000) });
        int? brads = board.FastenersNeeded;                 // 3 of 25.84 N for 58.84 N
        Length? spacing = board.Spacing;                    // 1000 mm by strength alone
        #endregion
        Assert.Equal(3, brads); // 58.8399/25.8353 = 2.28
        Assert.Equal(25.84, board.DesignCapacity.Newtons, 0.005);
        Assert.Equal(58.84, board.Load.Newtons, 0.005);
        Assert.Equal(1000, spacing!.Value.Millimeters);
    }
}
