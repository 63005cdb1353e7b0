using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Specimens;

namespace Protocolist.Tests.Hostile;

/// <summary>
/// Hostile text in every place of every kind of file, against every form of output. What a terminal or a page would obey is refused at its place, or written out
/// where it comes from elsewhere; what is only strange comes through without forging anything.
/// </summary>
public sealed class HostileTextTests(ITestOutputHelper output)
{
    /// <summary>Each moves a cursor, sets a title, ends a line or turns a direction.</summary>
    private static readonly string[] Obeyed = ["\u001B]0;owned\u0007", "a\u009B31mb", "ab\u202Ecd", "\u2066ab", "a\u0085b", "a\u0000", "a\u2028b", "\u007F"];

    /// <summary>Nothing that may not stand in a file, and as much mischief as can be made with the rest.</summary>
    private static readonly string[] Strange =
    [
        $"x\n{Outputs.Mark}: error none: all is well\n{Outputs.Mark}\ttab", $"x {Outputs.Mark} <script>alert('1')</script> \"&quot;\" ]]> \\u001B \\n \u200D\u200E\u200F", "=cmd|' /C calc'!A0", "@SUM(A1)",
    ];

    private static readonly LocalDateTime Monday = new(2027, 3, 1, 9, 0);

    private static readonly IDateTimeZoneProvider Zones = DateTimeZoneProviders.Tzdb;

    private static readonly string SpecimenText = Sample("specimens", "harbour-otter.yaml") + "higher-taxon: Mammalia\nlot-mass: 8 kg\nx-own: mine\nnotes: |\n  a note\n";

    private static readonly string BenchText = Sample("benches", "skerry-point.yaml") + "exchange-rates: {USD: 0.92}\nalso-open: {2027-03-07: 09:00 to 12:00}\n";

    private static readonly string LogText = Sample("logs", "harbour-otter.yaml");

    private static readonly string ProtocolText = File.ReadAllText(Repository.File("protocols", "fishes", "fish-medium.yaml")) + """
        cautions: [mind the spines]
        checks:
          house-own: {when: specimen.mass > 1 kg, message: heavy, remedy: ask, severity: warning}
        severities:
          no-time-to-cure: {as: note, because: the station seals later}
        """.ReplaceLineEndings("\n");

    private static readonly string[][] Table =
    [
        ["catalogNumber", "scientificName", "class", "group", "eventDate", "locality", "recordedBy", "sex", "individualCount", "measuredMassInGrams", "measuredLengthInMillimeters", "how obtained", "permits", "notes"],
        ["SKP-1", "Nucella lapillus", "Gastropoda", "gastropod", "2027-03-03", "the mole", "I. Varga", "female", "1", "14", "38", "found dead", "A 1", "none"],
        ["SKP-2", "Nucella lapillus", "Gastropoda", "gastropod", "2027-03-03", "the mole", "I. Varga", "female", "1", "12", "36", "found dead", "A 1", "none"],
    ];

    private static readonly SourceText[] FishFolder = [.. BundledProtocols.Sources().Where(s => s.Name.Contains("/bases/", StringComparison.Ordinal) || s.Name.Contains("/fishes/", StringComparison.Ordinal))];

    private static readonly Lazy<Planner> AllProtocols = new(() => new(Shelf.Bundled()));

    private static readonly Lazy<Bench> Bench = new(() => BenchReader.Read(new("bench.yaml", BenchText), Zones).Value!);

    private static readonly Specimen Otter = SpecimenReader.Read(new("s.yaml", SpecimenText)).Value!;

    private static readonly Specimen Wrasse = new() { Id = "W-1", Group = "bony-fish", Mass = UnitsNet.Mass.FromGrams(82), StandardLength = UnitsNet.Length.FromCentimeters(15.5) };

    private static readonly Lazy<Plan> OtterPlan = new(() => AllProtocols.Value.Plan(new(Otter, Bench.Value, Monday)).Value!);

    public static TheoryData<string> Kinds => ["specimen", "bench", "protocol", "log", "table"];

    private static string Sample(params string[] path) => File.ReadAllText(Repository.File(["samples", .. path])).ReplaceLineEndings("\n");

    private static IEnumerable<Injected> Injections(string kind, string text) => kind switch
    {
        "specimen" => Places.OfYaml(SpecimenText, text),
        "bench" => Places.OfYaml(BenchText, text),
        "protocol" => Places.OfYaml(ProtocolText, text),
        "log" => Places.OfYaml(LogText, text),
        _ => Places.OfCsv(Table, text),
    };

    [Fact]
    public void The_samples_are_sound()
    {
        Assert.Empty(SpecimenReader.Read(new("s.yaml", SpecimenText)).Findings.Where(f => f.Severity == Severity.Error));
        Assert.Empty(BenchReader.Read(new("b.yaml", BenchText), Zones).Findings.Where(f => f.Severity == Severity.Error));
        Assert.Empty(LogReader.Read(new("l.yaml", LogText), DateTimeZone.Utc).Findings);
        Assert.Empty(Shelf.Of([FishFolder, [new SourceText("p.yaml", ProtocolText)]]).Findings.Where(f => f.Severity == Severity.Error));
        Assert.Equal(2, Rows(Places.Csv(Table)).Count(r => r.Plan is not null));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void What_would_be_obeyed_is_refused_at_its_place(string kind)
    {
        var pairs = 0;
        foreach (var text in Obeyed)
        {
            foreach (var injected in Injections(kind, text))
            {
                var findings = Read(kind, injected.Text);
                Assert.True(findings.Exists(f => f.Id == "unreadable-character" && f.Where.Line == injected.Line), $"{injected.Place} with {ShownText.Line(text)} is not refused: {string.Join('\n', findings)}");
                foreach (var (form, said) in Outputs.Of(findings))
                {
                    Outputs.AssertClean(form, said, injected.Place);
                    pairs++;
                }
            }
        }

        output.WriteLine($"{kind}: {pairs} pairs of a place with a hostile text and an output");
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void What_is_only_strange_forges_nothing(string kind)
    {
        var pairs = 0;
        foreach (var text in Strange)
        {
            foreach (var injected in Injections(kind, text))
            {
                foreach (var (form, said) in Written(kind, injected.Text))
                {
                    Outputs.AssertClean(form, said, injected.Place);
                    pairs++;
                }
            }
        }

        output.WriteLine($"{kind}: {pairs} pairs of a place with a strange text and an output");
    }

    [Fact]
    public void What_would_be_obeyed_is_written_out_where_a_plan_brings_it()
    {
        var pairs = 0;
        var json = PlanJson.Write(OtterPlan.Value);

        // Each place meets one of the texts, and each text every kind of place.
        var texts = Obeyed.Append(Strange[0]).Append(Strange[1]).ToList();
        foreach (var injected in Places.OfJson(json, texts))
        {
            var read = PlanJson.Read(new("p.json", injected.Text));
            foreach (var (form, said) in read.Value is { } plan ? Outputs.Of(plan).Concat(Outputs.Of(read.Findings)) : Outputs.Of(read.Findings))
            {
                Outputs.AssertClean(form, said, injected.Place);
                pairs++;
            }
        }

        output.WriteLine($"plan: {pairs} pairs of a place with a hostile text and an output");
    }

    private static List<Finding> Read(string kind, string text) => kind switch
    {
        "specimen" => [.. SpecimenReader.Read(new("f.yaml", text)).Findings],
        "bench" => [.. BenchReader.Read(new("f.yaml", text), Zones).Findings],
        "protocol" => [.. Shelf.Of([[new SourceText("f.yaml", text)]]).Findings],
        "log" => [.. LogReader.Read(new("f.yaml", text), DateTimeZone.Utc).Findings],
        _ => [.. Batch.Open(new StringReader(text), "f.csv", new(AllProtocols.Value, new(Bench.Value), Monday)) is var opened && opened.Value is { } batch ? batch.Rows().SelectMany(r => r.Findings) : opened.Findings],
    };

    private static IEnumerable<(string Form, string Text)> Written(string kind, string text)
    {
        switch (kind)
        {
            case "specimen":
                var specimen = SpecimenReader.Read(new("f.yaml", text));
                return [.. Outputs.Of(specimen.Findings), .. specimen.IsSound ? PlanOf(specimen.Value, AllProtocols.Value, Bench.Value) : []];
            case "bench":
                var bench = BenchReader.Read(new("f.yaml", text), Zones);
                return [.. Outputs.Of(bench.Findings), .. bench.IsSound ? PlanOf(Otter, AllProtocols.Value, bench.Value) : []];
            case "protocol":
                var shelf = Shelf.Of([FishFolder, [new SourceText("f.yaml", text)]]);
                return [.. Outputs.Of(shelf.Findings), .. PlanOf(Wrasse, new(shelf), Bench.Value), .. shelf.Protocols.Where(p => p.File == "f.yaml").SelectMany(Outputs.Of)];
            case "log":
                var log = LogReader.Read(new("f.yaml", text), DateTimeZone.Utc);
                var revised = log.IsSound ? AllProtocols.Value.Revise(OtterPlan.Value, log.Value, new(Bench.Value)) : new(null, []);
                return [.. Outputs.Of([.. log.Findings, .. revised.Findings]), .. revised.Value is { } revision ? Outputs.Of(revision) : []];
            default:
                return [.. Rows(text).SelectMany(Outputs.Of), .. Outputs.Of(Read(kind, text))];
        }
    }

    private static IEnumerable<BatchRow> Rows(string table) =>
        Batch.Open(new StringReader(table), "f.csv", new(AllProtocols.Value, new(Bench.Value), Monday)).Value?.Rows() ?? [];

    private static IEnumerable<(string Form, string Text)> PlanOf(Specimen specimen, Planner planner, Bench bench)
    {
        var made = planner.Plan(new(specimen, bench, Monday));
        return [.. Outputs.Of(made.Findings), .. made.Value is { } plan ? Outputs.Of(plan) : []];
    }
}
