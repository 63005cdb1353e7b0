using BenchmarkDotNet.Attributes;
using Protocolist.Planning.Provisioning.Purchasing;

namespace Protocolist.Benchmarks;

/// <summary>Six pack sizes for 200 L: wanted below 1 ms.</summary>
[MemoryDiagnoser]
public class PurchasingBenchmarks
{
    /// <summary>1, 2.5, 5, 10, 25 and 200 L in microlitres; the prices are invented.</summary>
    private readonly SizeAndCost[] round =
        [new(1_000_000, 900), new(2_500_000, 1900), new(5_000_000, 3000), new(10_000_000, 5500), new(25_000_000, 12_000), new(200_000_000, 99_000)];

    /// <summary>Sizes in whole millilitres that share no divisor, of nearly the same unit price: neither the divisor nor the period helps.</summary>
    private readonly SizeAndCost[] awkward =
        [new(118_000, 121), new(533_000, 541), new(1_243_000, 1251), new(3_785_000, 3790), new(18_927_000, 18_931), new(199_999_000, 200_000)];

    [Benchmark]
    public object? Round_sizes_in_microlitres() => PackCover.Cheapest(round, 199_500_001);

    [Benchmark]
    public object? Awkward_sizes_in_millilitres() => PackCover.Cheapest(awkward, 199_998_500);
}
