using BenchmarkDotNet.Running;

BenchmarkSwitcher.FromAssembly(typeof(FinishKit.Benchmarks.ArcBenchmarks).Assembly).Run(args);
