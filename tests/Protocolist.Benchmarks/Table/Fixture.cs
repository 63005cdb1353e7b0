using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Specimens;

namespace Protocolist.Benchmarks.Table;

/// <summary>What is measured on: frozen copies that lie with the benchmarks, so that a sample may change and figures stay comparable.</summary>
internal static partial class Fixture
{
    public static readonly LocalDateTime Start = new(2027, 3, 1, 9, 0);

    [GeneratedRegex(@"^(\d+(?:\.\d+)?)( .*)$")]
    private static partial Regex Amount { get; }

    [GeneratedRegex(@"^examples:.*\n(?:(?:[ #].*)?\n)*", RegexOptions.Multiline)]
    private static partial Regex ExamplesBlock { get; }

    [GeneratedRegex(@"^extends: *(\S+)", RegexOptions.Multiline)]
    private static partial Regex Extends { get; }

    [GeneratedRegex(@"^protocol: *(\S+)", RegexOptions.Multiline)]
    private static partial Regex Name { get; }

    public static Specimen LargeMammal { get; } = SpecimenReader.Read(Read("large-mammal.yaml")).Value!;

    /// <summary>Small enough that many baths of it need no purchase.</summary>
    public static Specimen SmallMammal { get; } = LargeMammal with { Mass = UnitsNet.Mass.FromGrams(20), HeadBodyLength = null, TotalLength = null, Girth = null };

    public static Bench Bench { get; } = BenchReader.Read(Read("bench.yaml"), DateTimeZoneProviders.Tzdb).Value!;

    /// <summary>The bench with the opening hours of two years worked out.</summary>
    public static PreparedBench Prepared { get; } = new(Bench, new DateInterval(Start.Date, Start.Date.PlusYears(2)));

    /// <summary>The bundled protocols as texts.</summary>
    public static ImmutableArray<SourceText> Protocols { get; } =
    [
        .. Directory.EnumerateFiles(PlanBenchmarks.Repository("protocols"), "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .Select(PlanBenchmarks.Source),
    ];

    /// <summary>The same without their worked examples.</summary>
    public static ImmutableArray<SourceText> WithoutExamples(ImmutableArray<SourceText> protocols) =>
        [.. protocols.Select(p => new SourceText(p.Name, ExamplesBlock.Replace(p.Text, "")))];

    /// <summary>One in so many of the protocols, with all that they extend.</summary>
    public static ImmutableArray<SourceText> OneIn(int share)
    {
        var byName = Protocols.ToDictionary(p => Name.Match(p.Text).Groups[1].Value, StringComparer.Ordinal);
        var some = byName.Keys.Order(StringComparer.Ordinal).Where((n, i) => i % share == 0 || n == "mammal-large");
        var taken = new SortedSet<string>(some, StringComparer.Ordinal);
        for (var more = taken.ToList(); more.Count > 0;)
            more = [.. more.Select(n => Extends.Match(byName[n].Text)).Where(m => m.Success && taken.Add(m.Groups[1].Value)).Select(m => m.Groups[1].Value)];
        return [.. taken.Select(n => byName[n])];
    }

    /// <summary>A table of specimens of all kinds, each a little larger or smaller than the kind's own example. The same at every run.</summary>
    public static IEnumerable<string> Rows(int count)
    {
        var kinds = File.ReadAllLines(PathOf("kinds.csv"));
        yield return "specimen,found-on,where,how-obtained,collected-by," + kinds[0];
        for (var i = 0; i < count; i++)
        {
            var kind = kinds[1 + (int)(i * 7919L % (kinds.Length - 1))];
            var factor = 0.97 + (0.06 * (i * 2654435761L % 1000) / 1000);
            var cells = kind.Split(',').Select((c, at) => Scaled(c, kinds[0].Split(',')[at], factor));
            yield return string.Create(CultureInfo.InvariantCulture, $"T-{i},2027-02-27,an invented shore,found dead,A. Nobody,{string.Join(',', cells)}");
        }
    }

    /// <summary>A protocol of so many stages in a chain.</summary>
    public static SourceText Chain(int stages)
    {
        var text = new StringBuilder("format: 1\nprotocol: chain\nrevision: 1\ntitle: A chain\nfor: {group: mammal}\nstages:\n");
        text.Append("  - {stage: immerse, id: fix, fluid: neutral buffered formalin 10 %, ratio: 5, last: 10 d}\n");
        for (var i = 0; i < stages; i += 2)
        {
            text.Append(CultureInfo.InvariantCulture, $"  - {{stage: bath, id: bath-{i}, fluid: ethanol 70 %vol, ratio: 3, last: 1 d}}\n");
            text.Append(CultureInfo.InvariantCulture, $"  - {{stage: task, id: task-{i}, how: Look at it.}}\n");
        }

        text.Append("  - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}\n  - {stage: label, id: label, fields: [number]}\n");
        text.Append("  - {stage: seal, id: seal, closure: tape}\n");
        return new("chain.yaml", text.ToString());
    }

    private static string PathOf(string name) => PlanBenchmarks.Repository("tests", "Protocolist.Benchmarks", "Fixture", name);

    private static SourceText Read(string name) => new(name, File.ReadAllText(PathOf(name)));

    private static string Scaled(string cell, string column, double factor)
    {
        if (!Amount.IsMatch(cell)) return cell;
        var (number, unit) = (Amount.Match(cell).Groups[1].Value, Amount.Match(cell).Groups[2].Value);
        var by = column.Contains("mass", StringComparison.Ordinal) || column.Contains("volume", StringComparison.Ordinal) ? factor * factor * factor : factor;
        return (double.Parse(number, CultureInfo.InvariantCulture) * by).ToString("G5", CultureInfo.InvariantCulture) + unit;
    }
}
