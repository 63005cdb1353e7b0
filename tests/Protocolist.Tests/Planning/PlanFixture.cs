using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Tests.Planning;

/// <summary>Small specimens, benches and protocols for tests of the passes.</summary>
internal static class PlanFixture
{
    public static readonly LocalDateTime Monday = new(2027, 3, 1, 9, 0);

    public static Specimen Mammal(string mass) => Read($"""
        format: 1
        specimen: X-1
        group: mammal
        mass: {mass}
        found-on: 2027-02-28
        where: an invented shore
        how-obtained: found dead
        collected-by: A. Nobody
        """);

    public static Specimen Read(string yaml)
    {
        var read = SpecimenReader.Read(new("specimen.yaml", yaml));
        Assert.True(read.IsSound, string.Join('\n', read.Findings));
        return read.Value;
    }

    public static Bench Bench(string yaml)
    {
        var read = BenchReader.Read(new("bench.yaml", "format: 1\nbench: b\n" + yaml), DateTimeZoneProviders.Tzdb);
        Assert.True(read.IsSound, string.Join('\n', read.Findings));
        return read.Value;
    }

    /// <summary>A shelf of protocols, each given by its id, its class and its stages.</summary>
    public static Shelf Shelf(params (string Id, string For, string Text)[] protocols)
    {
        var shelf = Protocolist.Shelf.Of([[.. protocols.Select(p => new SourceText($"{p.Id}.yaml", $"format: 1\nprotocol: {p.Id}\nrevision: 1\ntitle: {p.Id}\nfor: {p.For}\n{p.Text}"))]]);
        Assert.True(shelf.Findings.All(f => f.Severity != Severity.Error), string.Join('\n', shelf.Findings));
        return shelf;
    }

    public const string Fix = "stages:\n  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h to 48 h}\n";

    public static Checked<Plan> Plan(Specimen specimen, Shelf shelf, string bench = "zone: UTC\n", LocalDateTime? start = null, params (string Name, string Option)[] choices) =>
        new Planner(shelf).Plan(new(specimen, Bench(bench), start ?? Monday) { Choices = choices.ToImmutableSortedDictionary(c => c.Name, c => c.Option, StringComparer.Ordinal) });

    /// <summary>The plan of the sample otter at the sample bench.</summary>
    public static Plan Otter(params (string Name, string Option)[] choices)
    {
        var specimen = SpecimenReader.Read(Sample("specimens/harbour-otter.yaml")).Value!;
        return new Planner(Protocolist.Shelf.Bundled()).Plan(new(specimen, SampleBench(), Monday) { Choices = choices.ToImmutableSortedDictionary(c => c.Name, c => c.Option, StringComparer.Ordinal) }).Value!;
    }

    /// <summary>The sample bench, read anew.</summary>
    public static Bench SampleBench() => BenchReader.Read(Sample("benches/skerry-point.yaml"), DateTimeZoneProviders.Tzdb).Value!;

    private static SourceText Sample(string path) => new(path, File.ReadAllText(Repository.File(["samples", .. path.Split('/')])));
}
