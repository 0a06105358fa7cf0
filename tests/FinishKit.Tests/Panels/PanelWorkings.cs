using System.Linq;
using FinishKit.Tests.Contracts;
using Xunit;

namespace FinishKit.Tests.Panels;

/// <summary>Every sample of a bent sheet or strip, recomputed from its printed steps.</summary>
public sealed class PanelWorkings
{
    [Fact]
    public void Workings_recompute()
    {
        object[] results = [.. Samples.Results().Select(static sample => sample.Result).Where(static result => result is BendRadius or BendVerdict or HoldDownResult or RowsSearch or BentStripResult)];
        Assert.True(results.Length > 200, $"{results.Length} samples only.");
        foreach (object result in results.Where(static result => !result.Equals(default(BendRadius))))
        {
            WorkingsCheck.Recompute((Workings)result.GetType().GetMethod("Explain")!.Invoke(result, null)!);
        }
    }
}
