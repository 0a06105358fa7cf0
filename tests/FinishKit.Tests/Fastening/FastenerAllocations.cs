using System;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Fastening;

/// <summary>The plain sum allocates nothing, also where a finding exists that nobody reads.</summary>
public sealed class FastenerAllocations
{
    [Fact]
    public void The_plain_sum_allocates_nothing()
    {
        const int Inputs = 1024;
        Length[] depths = new Length[Inputs], nails = new Length[Inputs], sets = new Length[Inputs];
        Angle[] angles = new Angle[Inputs];
        for (int i = 0; i < Inputs; i++)
        {
            depths[i] = i % 2 == 0 ? Mm(10 + (i / 64.0)) : Length.FromInches((400 + i) / 1024.0);
            nails[i] = i % 3 == 0 ? Mm(15 + (i % 36)) : Length.FromInches((20 + (i % 44)) / 32.0);
            sets[i] = Mm(i % 5 * 0.25);
            angles[i] = Angle.FromDegrees(i % 61);
        }

        int touching = Run(); // once before counting, so that what the runtime builds on first use does not count
        for (int i = 0; i < 30; i++)
        {
            Run();
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        int again = Run();
        long after = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(0, after - before);
        Assert.Equal(touching, again);
        Assert.InRange(touching, 100, 900); // findings exist, and do not everywhere

        int Run()
        {
            int count = 0;
            for (int i = 0; i < Inputs; i++)
            {
                TipClearance tip = FastenerLength.TipClearance(depths[i], nails[i], sets[i], angles[i]);
                count += tip.HasProblem && tip.Clearance.Value <= 0 ? 1 : 0;
            }

            return count;
        }
    }
}
