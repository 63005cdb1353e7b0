using BenchmarkDotNet.Attributes;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Plans;
using Protocolist.Specimens;
using YamlDotNet.Core;

namespace Protocolist.Benchmarks;

/// <summary>The main job: one plan, and the shelf that it is made from, against bare YAML parsing of the same bytes.</summary>
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private readonly SourceText[] protocols = [.. Directory.EnumerateFiles(Repository("protocols"), "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(Source)];

    private Planner planner = null!;
    private PlanRequest otter = null!;
    private Plan plan = null!;

    [GlobalSetup]
    public void Setup()
    {
        var specimen = SpecimenReader.Read(Source(Repository("samples", "specimens", "harbour-otter.yaml"))).Value!;
        var bench = BenchReader.Read(Source(Repository("samples", "benches", "skerry-point.yaml")), DateTimeZoneProviders.Tzdb).Value!;
        planner = new(Shelf.Bundled());
        otter = new(specimen, bench, new LocalDateTime(2027, 3, 1, 9, 0));
        plan = planner.Plan(otter).Value!;
    }

    [Benchmark]
    public object One_plan() => planner.Plan(otter);

    [Benchmark]
    public void One_plan_as_json() => PlanJson.Write(plan, Stream.Null);

    [Benchmark]
    public object Load_the_shelf() => Shelf.Of([protocols]);

    [Benchmark]
    public object Check_the_shelf() => FileCheck.Run(protocols, DateTimeZoneProviders.Tzdb);

    /// <summary>The events alone: nothing kept, nothing checked.</summary>
    [Benchmark(Baseline = true)]
    public int Parse_the_same_bytes_as_bare_yaml()
    {
        var events = 0;
        foreach (var protocol in protocols)
        {
            var parser = new Parser(new StringReader(protocol.Text));
            while (parser.MoveNext()) events++;
        }

        return events;
    }

    internal static SourceText Source(string path) => new(path, File.ReadAllText(path));

    internal static string Repository(params string[] path)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Protocolist.sln"))) folder = folder.Parent ?? throw new InvalidOperationException("The benchmarks run outside the repository.");
        return Path.Combine([folder.FullName, .. path]);
    }
}
