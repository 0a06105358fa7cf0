using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>The examples in the documentation: each region stands there word for word. Expected values by a script of their own, from the printed formulas.</summary>
public sealed class WithdrawalExamples
{
    [Fact]
    public void NdsNail()
    {
        #region example: Withdrawal.NdsNail
        WithdrawalCapacity brad = Withdrawal.NdsNail(new OvendrySpecificGravity(0.5), Mm(1.6), Mm(30));
        Force hold = brad.Force;                            // 80.74 N allowable
        double diameters = brad.PenetrationInDiameters!.Value; // 18.75, of which the NDS asks 6
        #endregion
        Assert.Equal(80.74, hold.Newtons, 0.005);
        Assert.Equal(18.75, diameters, 1e-12);
    }

    [Fact]
    public void NdsWoodScrew()
    {
        #region example: Withdrawal.NdsWoodScrew
        WithdrawalCapacity screw = Withdrawal.NdsWoodScrew(new OvendrySpecificGravity(0.5), Mm(4), Mm(25));
        Force hold = screw.Force;                           // 491.3 N allowable
        #endregion
        Assert.Equal(491.3, hold.Newtons, 0.05);
    }

    [Fact]
    public void NdsLagScrew()
    {
        #region example: Withdrawal.NdsLagScrew
        WithdrawalCapacity lag = Withdrawal.NdsLagScrew(new OvendrySpecificGravity(0.55), Mm(12.7), Mm(55.5625));
        Force hold = lag.Force;                             // 4247.94 N allowable
        #endregion
        Assert.Equal(4247.94, hold.Newtons, 0.005);
    }

    [Fact]
    public void HandbookNail()
    {
        #region example: Withdrawal.HandbookNail
        WithdrawalCapacity test = Withdrawal.HandbookNail(new SpecificGravityAt12(0.4), Mm(1.6), Mm(25));
        Force pulledOut = test.Force;                       // 219.1 N on average, a design load is about a fifth
        #endregion
        Assert.Equal(219.1, pulledOut.Newtons, 0.05);
    }

    [Fact]
    public void HandbookWoodScrew()
    {
        #region example: Withdrawal.HandbookWoodScrew
        WithdrawalCapacity test = Withdrawal.HandbookWoodScrew(new SpecificGravityAt12(0.4), Mm(4.17), Mm(20));
        Force pulledOut = test.Force;                       // 1444 N on average
        #endregion
        Assert.Equal(1444, pulledOut.Newtons, 0.5);
    }

    [Fact]
    public void HandbookLagScrew()
    {
        #region example: Withdrawal.HandbookLagScrew
        WithdrawalCapacity test = Withdrawal.HandbookLagScrew(new SpecificGravityAt12(0.49), Mm(16), Mm(10));
        Force pulledOut = test.Force;                       // 3440.98 N on average
        #endregion
        Assert.Equal(3440.976, pulledOut.Newtons, 1e-9); // 125.4 · 0.49^1.5 · 16^0.75 · 10 = 125.4 · 0.343 · 8 · 10
    }

    [Fact]
    public void Eurocode5SmoothNail()
    {
        #region example: Withdrawal.Eurocode5SmoothNail
        WithdrawalCapacity nail = Withdrawal.Eurocode5SmoothNail(new CharacteristicDensity(350), Mm(2.5), Mm(25));
        Force hold = nail.Force;                            // 76.56 N characteristic
        double kept = nail.ShortPenetrationFactor;          // 0.5: the point is 10 diameters deep
        #endregion
        Assert.Equal(76.56, hold.Newtons, 0.005);
        Assert.Equal(0.5, kept, 1e-12);
    }

    [Fact]
    public void Eurocode5SmoothNailWithItsMembers()
    {
        #region example: Withdrawal.Eurocode5SmoothNail.members
        Eurocode5Nail ceiling = new(new CharacteristicDensity(350), Mm(2.5), Mm(5), Mm(12), Mm(30));
        bool refused = Withdrawal.Eurocode5SmoothNail(ceiling).HasProblem; // true: no smooth nail for a permanent load, the default
        Force gust = Withdrawal.Eurocode5SmoothNail(ceiling with { PermanentLoad = false }).Force; // 183.75 N
        #endregion
        Assert.True(refused);
        Assert.Equal(183.75, gust.Newtons, 1e-9);
    }

    [Fact]
    public void Eurocode5Screw()
    {
        #region example: Withdrawal.Eurocode5Screw
        WithdrawalCapacity screw = Withdrawal.Eurocode5Screw(new CharacteristicDensity(350), Mm(6), Mm(40), Angle.FromDegrees(90));
        Force hold = screw.Force;                           // 2865.8 N characteristic
        #endregion
        Assert.Equal(2865.8, hold.Newtons, 0.05);
    }

    [Fact]
    public void Eurocode5EffectiveScrews()
    {
        #region example: Withdrawal.Eurocode5EffectiveScrews
        double four = Withdrawal.Eurocode5EffectiveScrews(4); // 3.482: four screws hold as much as three and a half
        #endregion
        Assert.Equal(3.482, four, 0.0005);
    }

    [Fact]
    public void InPlywood()
    {
        #region example: WithdrawalCapacity.InPlywood
        WithdrawalCapacity solid = Withdrawal.NdsNail(new OvendrySpecificGravity(0.5), Mm(1.6), Mm(30));
        Force inPly = solid.InPlywood().Force;              // 64.59 N: 0.8 of 80.74
        #endregion
        Assert.Equal(64.59, inPly.Newtons, 0.005);
    }
}
