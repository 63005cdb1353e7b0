using BenchmarkDotNet.Attributes;
using NodaTime;
using Protocolist.Protocols;
using YamlDotNet.Core;

namespace Protocolist.Benchmarks;

/// <summary>Loading and checking the bundled shelf against the floor: the bare events of the YAML parser over the same text.</summary>
/// <remarks>Warmed up at length: the first dozens of runs measure the compiler rather than the reading.</remarks>
[MemoryDiagnoser]
[WarmupCount(80)]
public class ShelfBenchmarks
{
    private readonly SourceText[] _sources = [.. BundledProtocols.Sources()];

    [Benchmark(Baseline = true)]
    public int YamlEvents()
    {
        var events = 0;
        foreach (var source in _sources)
        {
            var parser = new Parser(new StringReader(source.Text));
            while (parser.MoveNext()) events++;
        }

        return events;
    }

    [Benchmark]
    public int Load() => Shelf.Of([_sources]).Protocols.Length;

    [Benchmark]
    public int LoadAndCheck() => FileCheck.Over([], _sources, DateTimeZoneProviders.Tzdb, strict: true).Length;
}
