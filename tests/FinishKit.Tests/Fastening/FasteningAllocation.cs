using System;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>The scalar answers allocate nothing, also where a finding exists and is not read.</summary>
public sealed class FasteningAllocation
{
    private static bool s_problem;

    [Fact]
    public void Withdrawal_allocates_nothing()
    {
        OvendrySpecificGravity ovendry = new(0.5);
        SpecificGravityAt12 at12 = new(0.5);
        CharacteristicDensity rho = new(350);
        (Length shank, Length deep, Length shallow, Angle across) = (Mm(1.6), Mm(30), Mm(5), Angle.FromDegrees(90));
        AllocatesNothing(() => Withdrawal.NdsNail(ovendry, shank, deep).HasProblem);
        AllocatesNothing(() => Withdrawal.NdsNail(ovendry, shank, shallow).HasProblem);
        AllocatesNothing(() => Withdrawal.NdsWoodScrew(ovendry, shank, deep).HasProblem);
        AllocatesNothing(() => Withdrawal.NdsLagScrew(ovendry, shank, deep).HasProblem);
        AllocatesNothing(() => Withdrawal.HandbookNail(at12, shank, deep).HasProblem);
        AllocatesNothing(() => Withdrawal.HandbookWoodScrew(at12, shank, deep).HasProblem);
        AllocatesNothing(() => Withdrawal.HandbookLagScrew(at12, shank, deep).HasProblem);
        AllocatesNothing(() => Withdrawal.Eurocode5SmoothNail(rho, shank, deep).HasProblem);
        AllocatesNothing(() => Withdrawal.Eurocode5SmoothNail(rho, shank, shallow).HasProblem);
        AllocatesNothing(() => Withdrawal.Eurocode5Screw(rho, shank, deep, across).HasProblem);
        AllocatesNothing(() => Withdrawal.NdsNail(ovendry, shank, deep).InPlywood().HasProblem);
        AllocatesNothing(() => WithdrawalCapacity.Supplied(Force.FromNewtons(50)).HasProblem);
        AllocatesNothing(() => Withdrawal.Eurocode5EffectiveScrews(4) > 4);
    }

    [Fact]
    public void Retention_of_a_mass_allocates_nothing()
    {
        (Mass mass, WithdrawalCapacity capacity, WithdrawalCapacity none) = (Mass.FromKilograms(12), WithdrawalCapacity.Supplied(Force.FromNewtons(40)), default);
        WithdrawalCapacity smooth = Withdrawal.Eurocode5SmoothNail(new CharacteristicDensity(350), Mm(1.6), Mm(25)), test = Withdrawal.HandbookNail(new SpecificGravityAt12(0.5), Mm(1.6), Mm(25));
        AllocatesNothing(() => Retention.FastenersNeeded(mass, capacity).HasProblem);
        AllocatesNothing(() => Retention.FastenersNeeded(mass, capacity, 4).HasProblem);
        AllocatesNothing(() => Retention.FastenersNeeded(mass, none).HasProblem);
        AllocatesNothing(() => Retention.FastenersNeeded(mass, smooth).HasProblem);
        AllocatesNothing(() => Retention.FastenersNeeded(mass, test).HasProblem);
    }

    private static void AllocatesNothing(Func<bool> question)
    {
        for (int i = 0; i < 64; i++)
        {
            s_problem = question();
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1024; i++)
        {
            s_problem |= question();
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
