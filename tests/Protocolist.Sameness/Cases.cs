using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using NodaTime;
using NodaTime.Text;
using Protocolist.Protocols;
using Protocolist.Reading;
using Protocolist.Testing;
using YamlDotNet.RepresentationModel;

namespace Protocolist.Sameness;

/// <summary>
/// Writes the cases once: samples, the worked examples of the bundled protocols, logs, ways, and generated specimens on generated benches.
/// Afterwards the file is what counts, and a change of generators or protocols does not matter to it.
/// </summary>
internal static class Cases
{
    private const int Seed = 20270301;
    private const int Generated = 10_000;
    private const int Benches = 60;
    private const int Chunk = 250;

    private static readonly LocalDateTimePattern Minute = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm");

    /// <summary>Before and after a change of clocks, in an open week and in a closed one of the sample bench.</summary>
    private static readonly string[] Starts = ["2027-03-01T09:00", "2027-03-26T16:30", "2027-10-29T17:45", "2028-02-28T07:00"];

    public static void Write(string repository, string folder)
    {
        var (specimens, logs) = (Read(repository, "specimens"), Read(repository, "logs"));
        Keep(folder, "benches", Read(repository, "benches"));
        Keep(folder, "house", Read(repository, "house"));
        SourceText bare = new("bare.yaml", "format: 1\nbench: bare\nzone: Atlantic/Azores\n");
        var drawnBenches = BenchGenerator.Valid.Generator.Sample(Benches, new Rnd(Seed), 50);
        var generated = drawnBenches.Select((b, i) => new SourceText($"generated-{i:00}.yaml", b.Text)).ToList();
        Keep(folder, "benches", [bare, .. generated]);

        var drawn = Drawn(Shelf.Bundled(), Read(repository, "benches")[0], bare, generated);
        Case.WriteAll(
            Path.Combine(folder, "cases.jsonl"),
            [
                new("check", Ask.Check), .. Samples(repository, specimens, logs), .. Faulty(specimens, logs), .. Examples(repository),
                .. drawn.Select(d => d.Asked), .. Logged(drawn), .. Ways(drawn),
            ]);
    }

    private static IEnumerable<Case> Samples(string repository, List<SourceText> specimens, List<SourceText> logs)
    {
        foreach (var specimen in specimens)
        {
            var name = Path.GetFileNameWithoutExtension(specimen.Name);
            foreach (var bench in (string[])["skerry-point.yaml", "bare.yaml", ""])
            {
                var asked = new Case($"compare/{name}/{bench}", Ask.Compare) { Specimen = specimen.Text, Bench = bench };
                yield return asked;
                foreach (var start in Starts)
                {
                    yield return asked with { Key = $"sample/{name}/{bench}/{start}/bundled", Ask = Ask.Plan, Start = start };
                    yield return asked with { Key = $"sample/{name}/{bench}/{start}/house", Ask = Ask.Plan, Start = start, House = true };
                }

                // The wrasse was found two days later.
                var begun = name == "pool-wrasse" ? "2027-03-03T09:00" : Starts[0];
                if (logs.Find(l => l.Name == specimen.Name) is { } log)
                    yield return asked with { Key = $"log/{name}/{bench}", Ask = Ask.Revise, Start = begun, Logs = [log.Text, log.Text] };
            }
        }

        foreach (var table in Directory.EnumerateFiles(Path.Combine(repository, "samples", "batches"), "*.csv"))
            foreach (var bench in (string[])["skerry-point.yaml", "bare.yaml", ""])
                yield return new($"batch/{Path.GetFileName(table)}/{bench}", Ask.Batch) { Specimen = File.ReadAllText(table), Bench = bench };
    }

    /// <summary>What cannot be planned, or only with errors: the findings are then all there is.</summary>
    private static IEnumerable<Case> Faulty(List<SourceText> specimens, List<SourceText> logs)
    {
        (string Name, string Lines)[] bodies =
        [
            ("too-heavy", "group: mammal\nmass: 20000 kg\n"),
            ("too-light", "group: mammal\nmass: 1 mg\n"),
            ("unmeasured", "group: bony-fish\n"),
            ("unknown-group", "group: mamal\nmass: 7 kg\n"),
            ("by-scientific-name", "scientific-name: Lutra lutra\nmass: 7 kg\n"),
            ("contradicting", "group: mammal\nmass: 7 kg\nhead-body-length: 12 cm\n"),
            ("lot", "group: gastropod\nlot-mass: 900 g\ncount: 60\nlength: 38 mm\n"),
            ("nameless", "group: mammal\nmass: 7 kg\n"),
            ("frozen", "group: mammal\nmass: 7 kg\nhead-body-length: 75 cm\ncondition: frozen\n"),
            ("bloated", "group: bony-fish\nmass: 82 g\nstandard-length: 15.5 cm\ncondition: bloated\n"),
            ("for-tissue", "group: bony-fish\nmass: 82 g\nstandard-length: 15.5 cm\nintended-use: tissue-for-dna-first\n"),
            ("bad-yaml", "group: [mammal\n"),
            ("bad-quantity", "group: mammal\nmass: 7 kgg\n"),
        ];
        foreach (var (name, lines) in bodies)
            foreach (var bench in (string[])["skerry-point.yaml", ""])
                yield return new($"faulty/{name}/{bench}", Ask.Plan) { Specimen = "format: 1\nspecimen: X-1\n" + lines, Bench = bench };

        var otter = new Case("", Ask.Plan) { Specimen = specimens.Find(s => s.Name == "harbour-otter.yaml")!.Text, Bench = "skerry-point.yaml" };
        yield return otter with { Key = "faulty/choice", Choose = new() { ["keeping"] = "vodka", ["keping"] = "ethanol" } };
        yield return otter with { Key = "faulty/vessel", Vessels = new() { ["house"] = "jar-100000", ["nowhere"] = "tub-90" } };
        yield return otter with { Key = "faulty/vessel-too-small", Vessels = new() { ["house"] = "jar-4" } };
        yield return otter with { Key = "faulty/supply", Supplies = new() { ["neutral buffered formalin 10 %"] = "gin", ["rum"] = "gin" } };
        yield return otter with { Key = "faulty/too-soon", By = "2027-03-03" };
        yield return otter with { Key = "faulty/long-ago", Start = "1907-03-01T09:00" };
        yield return otter with { Key = "faulty/far-off", Start = "2199-03-01T09:00" };
        var log = logs.Find(l => l.Name == "harbour-otter.yaml")!.Text;
        (string Name, string Was, string Now)[] slips =
        [
            ("other-specimen", "log: SKP-2027-014", "log: SKP-2027-015"),
            ("unknown-step", "step: slits", "step: slots"),
            ("back-in-time", "begun: 2027-03-01T13:45", "begun: 2027-02-01T13:45"),
            ("sour", "ph: 6.8", "ph: 4.1"),
            ("weak", "readings: {ph: 6.8}", "readings: {density: 999 kg/m3}"),
            ("bloated", "signs: [soft]", "signs: [bloated, floating, bloody]"),
            ("skipped", "done: 2027-03-01T11:00", "skipped: no time"),
        ];
        foreach (var (name, was, now) in slips)
            yield return otter with { Key = $"faulty/log-{name}", Ask = Ask.Revise, Logs = [log.Replace(was, now, StringComparison.Ordinal)] };
    }

    /// <summary>A worked example is a specimen of its protocol's class; whichever protocol serves it plans it.</summary>
    private static IEnumerable<Case> Examples(string repository)
    {
        var shelf = Shelf.Bundled();
        var files = Directory.EnumerateFiles(Path.Combine(repository, "protocols"), "*.yaml", SearchOption.AllDirectories);
        foreach (var file in files.Order(StringComparer.Ordinal))
        {
            var yaml = new YamlStream();
            yaml.Load(new StringReader(File.ReadAllText(file)));
            var root = (YamlMappingNode)yaml.Documents[0].RootNode;
            if (!root.Children.TryGetValue("examples", out var listed)) continue;
            var id = root["protocol"].ToString();
            var number = 0;
            foreach (var example in ((YamlSequenceNode)listed).Cast<YamlMappingNode>())
            {
                number++;
                var fields = Pairs(example, "specimen");
                var group = fields.ContainsKey("group") ? "" : $"group: {shelf.Find(id)!.Class.Group}\n";
                var specimen = $"format: 1\nspecimen: {id}-{number}\n{group}{string.Concat(fields.Select(f => $"{f.Key}: {f.Value}\n"))}";
                foreach (var bench in (string[])["skerry-point.yaml", "bare.yaml", ""])
                    yield return new($"example/{id}/{number}/{bench}", Ask.Plan) { Specimen = specimen, Bench = bench, Choose = new(Pairs(example, "choose")) };
            }
        }
    }

    private static Dictionary<string, string> Pairs(YamlMappingNode node, string key) =>
        node.Children.TryGetValue(key, out var pairs) ? ((YamlMappingNode)pairs).ToDictionary(p => p.Key.ToString(), p => p.Value.ToString()) : [];

    /// <summary>Three in ten on the sample bench, one on a bare one, the others on generated ones; one in twenty has a day to be ready by.</summary>
    private static List<(Case Asked, PlanCase Drawn)> Drawn(Shelf shelf, SourceText sample, SourceText bare, List<SourceText> generated)
    {
        var benches = Gen.Frequency((3, Gen.Constant(sample)), (1, Gen.Constant(bare)), (6, Gen.Elements<SourceText>(generated))).Select(FileSketch.Of);
        var cases = PlanCases.Over(shelf, Arb.From(benches)).Generator;
        var chunks = new PlanCase[Generated / Chunk][];
        Parallel.For(0, chunks.Length, i => chunks[i] = cases.Sample(Chunk, new Rnd((ulong)(Seed + i)), 50));
        return [.. chunks.SelectMany(c => c).Select((c, i) => (Asked(c, i), c))];
    }

    private static Case Asked(PlanCase drawn, int number) => new($"generated/{number:00000}", Ask.Plan)
    {
        Specimen = drawn.SpecimenFile.Text,
        Bench = drawn.BenchFile.Name,
        Start = Minute.Format(drawn.Request.Start),
        By = number % 20 == 0 ? LocalDatePattern.Iso.Format(drawn.Request.Start.Date.PlusDays(20 + (number * 7 % 300))) : "",
        Choose = new(drawn.Request.Choices.ToDictionary()),
    };

    /// <summary>What may really happen to some of the generated plans: a log of the first days, and a longer one that begins with it.</summary>
    private static IEnumerable<Case> Logged(List<(Case Asked, PlanCase Drawn)> drawn)
    {
        var number = 0;
        foreach (var (asked, made) in drawn.Where(d => d.Asked.By.Length == 0 && d.Drawn.Made.Value is { Startable: true, Start: not null }).Take(600))
        {
            var rnd = new Rnd((ulong)(Seed + number++));
            var first = LogGenerator.Of(made.Made.Value!).Sample(1, rnd, 50)[0];
            var whole = LogGenerator.After(made.Made.Value!, first).Sample(1, rnd, 50)[0];
            yield return asked with { Key = $"logged/{asked.Key}", Ask = Ask.Revise, Logs = [first.Text, whole.Text] };
        }
    }

    /// <summary>Some of the ways that the planner could have gone and did not: vessels and stock insisted on.</summary>
    private static IEnumerable<Case> Ways(List<(Case Asked, PlanCase Drawn)> drawn)
    {
        foreach (var (asked, made) in drawn.Where(d => d.Drawn.Made.Value is not null && d.Asked.By.Length == 0).Where((_, i) => i % 150 == 0))
        {
            var number = 0;
            foreach (var way in made.Planner.Compare(made.Request).Value?.Ways.Where(w => !w.Wishes.IsEmpty()).Take(5) ?? [])
            {
                yield return asked with
                {
                    Key = $"way/{asked.Key}/{number++}",
                    Choose = new(way.Choices.ToDictionary()),
                    Vessels = new(way.Wishes.Vessels.ToDictionary()),
                    Supplies = new(way.Wishes.Supplies.ToDictionary()),
                };
            }

            yield return asked with { Key = $"compare/{asked.Key}", Ask = Ask.Compare };
        }
    }

    private static List<SourceText> Read(string repository, string folder) =>
        [
            .. Directory.EnumerateFiles(Path.Combine(repository, "samples", folder), "*.yaml").Order(StringComparer.Ordinal)
                .Select(f => new SourceText(Path.GetFileName(f), File.ReadAllText(f))),
        ];

    private static void Keep(string folder, string room, IEnumerable<SourceText> files)
    {
        Directory.CreateDirectory(Path.Combine(folder, room));
        foreach (var file in files) File.WriteAllText(Path.Combine(folder, room, file.Name), file.Text);
    }
}
