using System.Text;
using BenchmarkDotNet.Attributes;
using Protocolist.Reading;
using YamlDotNet.Core;

namespace Protocolist.Benchmarks;

/// <summary>A document of about 10 kB: the YAML library's bare events, and our tree that knows its places.</summary>
[MemoryDiagnoser]
public class ReadingBenchmarks
{
    private static readonly SourceText Document = Invented(10_000);

    [Benchmark(Baseline = true)]
    public int EventsOnly()
    {
        var parser = new Parser(new Scanner(new StringReader(Document.Text), skipComments: true));
        var events = 0;
        while (parser.MoveNext()) events++;
        return events;
    }

    [Benchmark]
    public object? Tree() => DocumentReader.Read(Document).Value;

    private static SourceText Invented(int characters)
    {
        var text = new StringBuilder("format: 1\nprotocol: invented\nstages:\n");
        for (var i = 0; text.Length < characters; i++)
        {
            text.Append("  - stage: inject\n    id: inject-").Append(i).Append("\n    dose: 100 mL/kg * specimen.mass\n")
                .Append("    sites: {abdomen: 5 to 10 mL, thigh: 5 to 10 mL, other: 2 to 5 mL}\n    note: \"wear gloves, and open the window\"\n");
        }

        return new("invented.yaml", text.ToString());
    }
}
