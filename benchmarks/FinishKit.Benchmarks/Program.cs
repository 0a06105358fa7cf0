using BenchmarkDotNet.Running;
using FinishKit.Benchmarks;
using FinishKit.Benchmarks.Cutting;

if (args is ["cutting", .. string[] rest])
{
    CuttingComparison.Run(rest);
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(ArcBenchmarks).Assembly).Run(args);
