using BenchmarkDotNet.Running;
using FinishKit.Benchmarks;
using FinishKit.Benchmarks.Cutting;
using FinishKit.Benchmarks.Nesting;

if (args is ["cutting", .. string[] rest])
{
    CuttingComparison.Run(rest);
    return;
}

if (args is ["nesting", .. string[] others])
{
    NestingComparison.Run(others);
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(ArcBenchmarks).Assembly).Run(args);
